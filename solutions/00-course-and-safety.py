# %% [markdown]
# # How the course works, and bench safety: exercise
#
# <div class="twoshaft-if-missing">If no forms appear below: press <b>Run</b>, then <b>Run All Cells</b>.</div>
#
# Nine tasks. Take about 50 minutes. Every answer is saved as you give it; you can stop and come back.
#
# Some items are **must-pass**: they concern safety, and no marks elsewhere make up for them.
#
# *Invented unit and invented workshop, for teaching. On a real job the maker's manual, local codes and licensed practice decide.*

# %% tags=["setup"]
from twoshaft.jobsheet import open_sheet
from twoshaft.plots.tables import given_table
from twoshaft.rigs import hazard_picture

sheet = open_sheet("course-and-safety")
given, unit = sheet.given, sheet.unit

# %% tags=["reference"]
from twoshaft.jobsheet import has_one_meaning, read_quantity
from twoshaft.models import lifting, order
from twoshaft.readings.course_and_safety.figures import READ
from twoshaft.readings.course_and_safety.lifting import changes
from twoshaft.readings.course_and_safety.safety import FOLLOWS, SLIP
from twoshaft.readings.course_and_safety.scene import hazards_seen
from twoshaft.safety import load_jobs, load_safety
from twoshaft.units.quantities import Q
from twoshaft_grader.marking import Slip, reasons, ref

safety = load_safety()

# %% [markdown] tags=["task"]
# ## 1. How your work is kept and marked
#
# Tick every sentence that is true of this course. Then work out the points of the sheet in the table, in which every field hangs on the one before it. *5 points.*

# %% tags=["rig"]
given_table("A sheet as it was marked", ["field", "points", "what became of it"],
            given.course.chain)

# %% tags=["form"]
sheet.form(
    "course",
    sheet.choices("course-true", "Which of these are true of this course?",
                  options=given.course.options),
    sheet.number("course-points", "How many points does the sheet in the table get?", whole=True),
)

# %% tags=["reference"]
facts = {fact.id: fact for fact in safety.facts}
told = given.course.options
true = {id for id, text in told if text == facts[id].right}
where = "00-course-and-safety#how-a-mark-comes-about"
ref("course-true", true, outcome="use-the-course", weight=3, lesson=where,
    slips=reasons(told, true, {id: facts[id].why for id, _ in told}))
chain = given.course.chain
own_slip = sum(field.points for field in chain if field.became == SLIP)
follow = sum(field.points for field in chain if field.became == FOLLOWS)
total = sum(field.points for field in chain)

# %% tags=["reference"]
ref(
    "course-points", total - own_slip, outcome="use-the-course", weight=2, lesson=where,
    slips=[
        Slip(total - own_slip - follow, 0,
             "Fields that only follow from the slip are right on your own figures; it is charged once."),
        Slip(total, 0, "The slip itself costs the points of its own field."),
    ],
)

# %% tags=["mark"] task="course" points=5

# %% [markdown] tags=["task"]
# ## 2. Which figures can be meant in two ways?
#
# Somebody writes these figures on a card, for the kind that is named. Tick every one that can be meant in two ways, or is of another kind. Judge the writing: a field that knows what is asked may take more than paper can. *3 points.*

# %% tags=["form"]
sheet.form(
    "forms",
    sheet.choices("forms-asked", "Which of these can be meant in two ways, or are of another kind?", options=given.forms.options),
)

# %% tags=["reference"]
clear = reasons([(text, kind) for text, _, kind in READ], [], {
    "18,5 kN": "with one figure after it, a comma can only be the decimal comma.",
    "13 ft lb": "feet and pounds together are a torque, whichever stands first.",
    "1 1/4 turn": "the gap before 1/4 shows that it is one and a quarter.",
    "½ turn": "½ is a half, however it is typed.",
    "0,049 in": "after a nought at the front, a comma can only be the decimal comma.",
    "12.5N·m": "a gap that is missing before the unit changes nothing.",
    "40 um": "u is what people type for µ, and µm are micrometres.",
    "1/16 in": "a fraction of an inch is a figure like any other.",
    "1 234,5 N": "the gap parts off the thousands, so the comma is the decimal comma.",
    "90 deg": "deg is short for degrees, as the sign is.",
    "-0,05 mm": "the minus stands in front, and after a nought a comma is the decimal comma.",
    "250 lbf in": "pounds of force and inches together are a torque.",
})

# %% tags=["reference"]
plain = {slip.value: slip.sentence for slip in clear}
written = given.forms.written
unclear = {id for id, (text, kind) in written.items() if not has_one_meaning(text, kind)}
ref(
    "forms-asked", unclear, outcome="write-figures",
    lesson="00-course-and-safety#figures-the-way-you-write-them",
    slips=reasons(given.forms.options, unclear, {
        id: f"“{text}” looks odd, but it has one meaning only: {plain[text]}"
        for id, (text, _) in written.items() if id not in unclear
    }),
)

# %% tags=["mark"] task="forms" points=3

# %% [markdown] tags=["task"]
# ## 3. The same figure on another scale
#
# Four small jobs with figures as they come. Where no unit stands beside the field, type the plain figure that the scale shows. *12 points.*

# %% tags=["rig"]
figures = given.figures
given_table("What is given", ["job", "figures"], [
    ("torque", f"the page says {figures.torque_nm} N·m; the scale of the wrench is in lbf·ft, "
               "with a mark at every whole one"),
    ("stack", f"a shim of {figures.shim_mm:g} mm, a foil of {figures.foil_thou} thou "
              f"(thousandths of an inch) and a spacer of {figures.spacer_in} in"),
    ("angle", f"the screw is turned {figures.turns} turn, and then {figures.degrees}° more"),
    ("oil", f"the unit takes {figures.oil_l:g} L; {figures.jugs} jugs of "
            f"{figures.jug_ml} mL each are in"),
])

# %% tags=["form"]
sheet.form(
    "figures",
    sheet.number("figures-scale", "Torque: at which figure of its scale do you set the wrench?", ""),
    sheet.number("figures-stack", "Stack: how thick is it?", "mm"),
    sheet.number("figures-angle", "Angle: how far is the screw turned in all?", "°"),
    sheet.number("figures-oil", "Oil: how much is still missing?", "L"),
)

# %% tags=["reference"]
figures = given.figures
scale = Q(figures.torque_nm, "N*m").m_as("lbf*ft")
where = "00-course-and-safety#figures-the-way-you-write-them"
ref(
    "figures-scale", Q(scale, ""), outcome="write-figures", weight=3, lesson=where,
    tolerance={"absolute": Q(0.5, "")}, slips=[
        Slip(Q(figures.torque_nm, ""), 0,
             "That is the figure in N·m; set on a scale in lbf·ft it overtightens by a third."),
        Slip(Q(scale * 12, ""), 0.25, "That is the figure in lbf·in; a foot has twelve inches."),
        Slip(Q(figures.torque_nm ** 2 / scale, ""), 0,
             "Converted the wrong way round: one lbf·ft is more than one N·m, so the figure falls."),
    ],
)

# %% tags=["reference"]
shim, foil = Q(figures.shim_mm, "mm"), Q(figures.foil_thou, "thou")
spacer = read_quantity(f"{figures.spacer_in} in", "in")
ref(
    "figures-stack", (shim + foil + spacer).to("mm"), outcome="write-figures", weight=3,
    tolerance=Q(0.012, "mm"), lesson=where,
    slips=[
        Slip(shim + spacer + Q(figures.foil_thou / 100, "mm"), 0.25,
             "A thou is a thousandth of an inch, 0.0254 mm, not a hundredth of a millimetre."),
        Slip(shim + foil + Q(spacer.magnitude * 10, "mm"), 0.25,
             "An inch is 25.4 mm, not a centimetre."),
        Slip(shim + foil, 0.25, "The spacer is left out."),
    ],
)

# %% tags=["reference"]
turned, more = read_quantity(f"{figures.turns} turn", "turn"), Q(figures.degrees, "degree")
whole, part = figures.turns.split()
run_on = read_quantity(f"{whole}{part} turn", "turn")
ref(
    "figures-angle", (turned + more).to("degree"), outcome="write-figures", weight=2, lesson=where,
    tolerance=Q(0.5, "degree"),
    slips=[
        Slip((run_on + more).to("degree"), 0.25,
             f"{figures.turns} is one turn and {part} of a turn, not {whole}{part} of a turn."),
        Slip(turned.to("degree"), 0.25, "The second turn of the wrench comes on top."),
    ],
)

# %% tags=["reference"]
jug, takes = Q(figures.jug_ml, "mL"), Q(figures.oil_l, "L")
poured = (figures.jugs * jug).to("L")
ref("figures-oil", takes - poured, outcome="write-figures", weight=2, tolerance=Q(0.012, "L"),
    lesson=where, slips=[Slip(poured, 0.25, "That is what is in; asked is what is missing.")])

# %% tags=["mark"] task="figures" points=12

# %% [markdown] tags=["task"]
# ## 4. Look round
#
# This is the workshop as you find it this morning. Look at every place. Then tick every place at which somebody could get hurt as things stand. *7 points.*

# %% tags=["rig"]
hazard_picture(given.picture.views, looking_only=True)

# %% tags=["form"]
sheet.form(
    "picture",
    sheet.choices("picture-hazards", "At which places could somebody get hurt?",
                  options=given.picture.options),
)

# %% tags=["reference"]
found = hazards_seen(safety, given.picture.views)
ref(
    "picture-hazards",
    set(found),
    outcome="spot-hazards",
    lesson="00-course-and-safety#look-round-first",
    slips=[Slip(place.id, 0, f"{place.name}: {place.because}")
           for place in safety.places if place.id not in found],
)

# %% tags=["mark"] task="picture" points=7

# %% [markdown] tags=["task"]
# ## 5. What do you do?
#
# Another day in the same workshop. At three places something is wrong. For each, choose the safe act and the reason for it. **You must get the acts right to pass**, where a life or an eye hangs on them. *9 points.*

# %% tags=["rig"]
given_table("What you see", ["place", "what can be seen"],
            [(danger.place.text, danger.seen) for danger in given.acts.places])

# %% tags=["form"]
sheet.form("acts", *[
    field
    for n, danger in enumerate(given.acts.places, 1)
    for field in (
        sheet.choice(f"acts-{n}-act", f"{danger.place.text}: what do you do?", options=danger.acts),
        sheet.choice(f"acts-{n}-why", f"{danger.place.text}: why?", options=danger.whys),
    )
])

# %% tags=["reference"]
hazards = safety.hazard_by_id
by_seen = {hazard.seen: hazard for hazard in hazards.values()}
useless = {f"{id}-{k}": wrong.because
           for id, hazard in hazards.items() for k, wrong in enumerate(hazard.wrong, 1)}

# %% tags=["reference"]
where = "00-course-and-safety#look-round-first"
for n, danger in enumerate(given.acts.places, 1):
    hazard = by_seen[danger.seen]
    here = f"What you see here leads to something else: {hazard.what}"
    acts = {id: useless.get(id) or f"A good act, but against another danger: {hazards[id].what} {here}"
            for id, _ in danger.acts}
    whys = {id: f"True, but it is why there is another danger: {hazards[id].what} {here}"
            for id, _ in danger.whys}
    ref(f"acts-{n}-act", hazard.id, outcome="act-safely", weight=2, must_pass=hazard.must_pass,
        slips=reasons(danger.acts, hazard.id, acts), lesson=where)
    ref(f"acts-{n}-why", hazard.id, outcome="know-the-why",
        slips=reasons(danger.whys, hazard.id, whys), lesson=where)

# %% tags=["mark"] task="acts" points=9

# %% [markdown] tags=["task"]
# ## 6. What comes first?
#
# These are the steps of one dangerous job, out of order. Put them in an order in which nobody can get hurt. Several orders are right. **No step may stand before one that safety asks for first.** *7 points.*

# %% tags=["form"]
sheet.form(
    "first",
    sheet.order("first-order", f"{given.first.job}: put these steps in a safe order",
                steps=given.first.start),
)

# %% tags=["reference"]
ref(
    "first-order",
    order.OrderTask.from_unit(load_jobs(), given.first.operations),
    outcome="act-safely",
    must_pass=True,
    lesson="00-course-and-safety#what-comes-first",
)

# %% tags=["mark"] task="first" points=7

# %% [markdown] tags=["task"]
# ## 7. Eye protection
#
# Tick every job for which eye protection is worn, and no other. Many workshops ask for it all day long; here it is asked where something is struck, springs, is under load or sprays. **To pass, leave none of them out.** A tick too many costs marks, but does not fail you. *5 points.*

# %% tags=["form"]
sheet.form(
    "eyes",
    sheet.choices("eyes-jobs", "For which of these do you put eye protection on?",
                  options=given.eyes.options),
)

# %% tags=["reference"]
jobs = {job.id: job for job in safety.jobs}
ref(
    "eyes-jobs",
    {id for id, _ in given.eyes.options if jobs[id].eyes},
    outcome="protect-eyes",
    must_pass=True,
    lesson="00-course-and-safety#the-usual-cautions-and-why",
    slips=[Slip(id, 0, f"{jobs[id].name}: {jobs[id].why}", safe=True)
           for id, _ in given.eyes.options if not jobs[id].eyes],
)

# %% tags=["mark"] task="eyes" points=5

# %% [markdown] tags=["task"]
# ## 8. Why?
#
# Three cautions. All the reasons are true; choose for each caution the one that is *its* reason. *6 points.*

# %% tags=["form"]
sheet.form("why", *[
    sheet.choice(f"why-{n}", f"“{one.caution.text}” Why?", options=one.options)
    for n, one in enumerate(given.why.cautions, 1)
])

# %% tags=["reference"]
cautions = safety.caution_by_id
for n, one in enumerate(given.why.cautions, 1):
    ref(
        f"why-{n}", one.caution.id, outcome="know-the-why",
        lesson="00-course-and-safety#the-usual-cautions-and-why",
        slips=reasons(one.options, one.caution.id, {
            id: f"True, but it is why you should: {cautions[id].text}" for id, _ in one.options
        }),
    )

# %% tags=["mark"] task="why" points=6

# %% [markdown] tags=["task"]
# ## 9. May it be lifted by hand?
#
# Work out the limit and the lifting index, to two decimals, and decide. The limit is 23 kg × reach × height × travel × twist × frequency × grip:
#
# reach = 25 ÷ H · height = 1 − 0.003 × |V − 75| · travel = 0.82 + 4.5 ÷ D · twist = 1 − 0.0032 × A · index = load ÷ limit
#
# An early slip is charged once. **To pass, do not decide for less care than the lift needs.** *20 points.*

# %% tags=["rig"]
lift = given.lift
given_table(f"The lift: {lift.load}", ["what", "figure"], lift.rows)

# %% tags=["form"]
sheet.form(
    "lift",
    sheet.number("lift-reach", "Reach multiplier", ""),
    sheet.number("lift-height", "Height multiplier", ""),
    sheet.number("lift-travel", "Travel multiplier", ""),
    sheet.number("lift-twist", "Twist multiplier", ""),
    sheet.number("lift-limit", "Recommended weight limit", "kg"),
    sheet.number("lift-index", "Lifting index", ""),
    sheet.choice("lift-decision", "What do you do?", options=given.lift.decisions),
    sheet.choice("lift-reason", "What decides that?", options=given.lift.reasons),
    sheet.choice("lift-change", "Which one change would raise the limit most?",
                 options=given.lift.changes),
)

# %% tags=["reference"]
lift = given.lift
asked = lifting.Lift.measured(lift.sizes())
parts = asked.multipliers()
where, near = "00-course-and-safety#may-i-lift-this", {"absolute": 0.006}
reach_cm, height_cm, travel_cm = lift.reach_cm, lift.height_cm, lift.travel_cm
reach = ref("lift-reach", parts["reach"], outcome="judge-a-lift", weight=2, tolerance=near,
            lesson=where, slips=[Slip(reach_cm / 25, 0, "Upside down: further out leaves less.")])
height = ref(
    "lift-height", parts["height"], outcome="judge-a-lift", weight=2, tolerance=near, lesson=where,
    slips=[Slip(1 - 0.003 * height_cm, 0.25, "It is the distance from 75 cm that counts.")])

# %% tags=["reference"]
travel = ref(
    "lift-travel", parts["travel"], outcome="judge-a-lift", weight=2, tolerance=near, lesson=where,
    slips=[Slip(0.82 + 4.5 / (height_cm + travel_cm), 0.25,
                "D is the way from start to end, not the height of the end.")])
twist = ref(
    "lift-twist", parts["twist"], outcome="judge-a-lift", weight=2, tolerance=near, lesson=where,
    slips=[Slip(1 - 0.032 * lift.twist_deg, 0.25, "0.0032 for each degree, not 0.032.")])

# %% tags=["reference"]
rest = (height, travel, twist, parts["frequency"], parts["grip"])
limit = ref(
    "lift-limit", lifting.weight_limit(reach, *rest), outcome="judge-a-lift", weight=3,
    tolerance=0.025, lesson=where,
    slips=[
        Slip(lifting.weight_limit(*rest), 0.25, "The reach is left out, which counts most."),
        Slip(Q(lift.mass_kg, "kg") * lifting.weight_limit(reach, *rest) / Q(23, "kg"), 0.25,
             "The multipliers belong to the 23 kg, not to the load."),
    ],
)
load = Q(lift.mass_kg, "kg")
index = ref("lift-index", lifting.lifting_index(load, limit), outcome="judge-a-lift", weight=3,
            tolerance=0.025, lesson=where,
            slips=[Slip((limit / load).m_as(""), 0, "Upside down: load divided by limit."),
                   Slip(lift.mass_kg / 23, 0, "That is the load against the easiest lift.")])

# %% tags=["reference"]
heavy = index > lifting.RAISED
careful = [Slip("aid", 0.5, "Safe, but more than the index asks for.", safe=True)]
decided = ref(
    "lift-decision", "aid" if heavy else "alone", outcome="judge-a-lift", weight=2, must_pass=True,
    lesson=where,
    slips=[*([] if heavy else careful), *reasons(lift.decisions, {"aid"} if heavy else {"aid", "alone"}, {
        "alone": "It comes off the floor, but above 1 the lower back carries more than it can bear for long.",
        "two": "Two people share a load badly: when one slips, the other has it all. "
               "The index has to be worked out for each.",
        "quick": "It is over sooner, but a jerk loads the back more than the weight does.",
    })],
)

# %% tags=["reference"]
ref("lift-reason", "above" if heavy else "below", outcome="know-the-why", weight=3, lesson=where,
    slips=reasons(lift.reasons, "above" if heavy else "below", {
        "above": "Load divided by limit comes out at 1 or less: whoever takes it for more fetches a hoist for nothing.",
        "below": "Load divided by limit comes out above 1: whoever takes it for less lifts more than the back can bear.",
        "light": "23 kg holds for the easiest lift only; the multipliers take from it.",
        "feel": "What hurts the back far out does not feel heavy in the arms.",
        "posture": "Good posture helps, but the reach is still there, and it loads the back just the same.",
        "habit": "That it went well before does not change the load on the back: harm adds up lift by lift.",
    }))

# %% tags=["reference"]
kilos = {id: lifting.Lift.measured(sizes).limit() for id, sizes in changes(lift.sizes()).items()}
best = max(kilos, key=kilos.get)
now = asked.limit().m_as("kg")
more = {id: f"That takes the limit from {now:.1f} kg to {kilo.m_as('kg'):.1f} kg; another change does more."
        for id, kilo in kilos.items()}
ref("lift-change", best, outcome="judge-a-lift", weight=3, lesson=where,
    slips=reasons(lift.changes, best, more | {
        "fast": "Faster means more jerk; the equation holds for smooth lifts only.",
        "belt": "A belt feels firm, but the equation has no part for it: it does not raise the limit.",
    }))

# %% tags=["mark"] task="lift" points=20

# %% [markdown]
# ## Done?
#
# Go back to **start-here** and press **Hand in**. You get a receipt. You can hand in again until the due date; the last one counts.
