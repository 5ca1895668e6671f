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
from dataclasses import replace

from twoshaft.jobsheet import has_one_meaning, read_quantity
from twoshaft.models import lifting, order
from twoshaft.questions import bank_of
from twoshaft.readings.course_and_safety.safety import FOLLOWS, SLIP
from twoshaft.readings.course_and_safety.scene import hazards_seen
from twoshaft.safety import load_jobs, load_safety
from twoshaft.units.quantities import Q
from twoshaft_grader.marking import Slip, line_reasons, missed, reasons, ref

safety, bank = load_safety(), bank_of("course-and-safety")
lesson = "00-course-and-safety"

# %% [markdown] tags=["task"]
# ## 1. How your work is kept and marked
#
# Say what is still to be done in each of four cases.
#
# Then work out the points of the sheet in the table, in which every field depends on the one before it. *5 points.*

# %% tags=["rig"]
given_table("A sheet as it was marked", ["field", "points", "what became of it"],
            given.course.chain)

# %% tags=["form"]
sheet.form(
    "course",
    sheet.each("course-cases", "What do you do in each case?",
               lines=given.course.cases.lines, options=given.course.cases.answers),
    sheet.number("course-points", "How many points does the sheet in the table get?", whole=True),
)

# %% tags=["reference"]
NEXT = {"saved-before": "done", "only-looked": "done", "window-before": "done",
        "saved-after": "hand", "no-receipt": "hand", "window-after": "hand",
        "stranger": "sign", "back": "sign", "greeted": "sign",
        "two-lengths": "write", "bare": "write", "unread": "write"}
why = {"done": "The receipt is later than the last answer that was saved: all of it is handed in.",
       "hand": "Saved is not handed in: what was saved after the last receipt, or without one, is not marked.",
       "sign": "The laptop does not know who types: what you answer now goes to the name at the top.",
       "write": "What can be meant in two ways is not guessed. Left as it is, the answer counts as missing."}

# %% tags=["reference"]
cases = given.course.cases
ref("course-cases", {one.id: NEXT[one.id] for one in cases.lines}, outcome="use-the-course", weight=3,
    shows="whose-work", lesson=f"{lesson}#your-work-is-yours",
    slips=line_reasons(bank.lists["course_cases"], cases.answers, NEXT,
                       {id: why[do] for id, do in NEXT.items()}, shown=cases.lines))

# %% tags=["reference"]
chain = given.course.chain
own_slip = sum(field.points for field in chain if field.became == SLIP)
follow = sum(field.points for field in chain if field.became == FOLLOWS)
total = sum(field.points for field in chain)
ref(
    "course-points", total - own_slip, outcome="use-the-course", weight=2, shows="charged-once",
    lesson=f"{lesson}#how-a-mark-comes-about",
    slips=[
        Slip(total - own_slip - follow, 0,
             "Fields that only follow from the mistake are right on your own figures; it costs marks once."),
        Slip(total, 0, "The mistake itself costs the points of its own field."),
    ],
)

# %% tags=["mark"] task="course" points=5

# %% [markdown] tags=["task"]
# ## 2. Which figures can be meant in two ways?
#
# Somebody writes these figures on a card; what each is for stands beside it. Tick every one that can be meant in two ways, or is of another kind.
#
# Judge only what is written: a form that knows what is asked may still take it. *3 points.*

# %% tags=["form"]
sheet.form(
    "forms",
    sheet.choices("forms-asked", "Which of these can be meant in two ways, or are of another kind?", options=given.forms.options),
)

# %% tags=["reference"]
clear = {
    "decimal-comma": "with one figure after it, a comma can only be the decimal comma.",
    "feet-first": "feet and pounds together are a torque, whichever stands first.",
    "mixed": "the gap shows that the fraction comes on top of the whole turns.",
    "half": "½ is a half, however it is typed.",
    "nought": "after a nought at the front, a comma can only be the decimal comma.",
    "no-gap": "a gap that is missing before the unit changes nothing.",
    "micro": "u is what people type for µ, and µm are micrometres.",
    "fraction": "a fraction of an inch is a figure like any other.",
    "thousands": "the gap parts off the thousands, so the comma is the decimal comma.",
    "degrees": "deg is short for degrees, and means the same as the sign °.",
    "minus": "the minus stands in front, and after a nought a comma is the decimal comma.",
    "inch-pounds": "pounds of force and inches together are a torque.",
}

# %% tags=["reference"]
double = {
    "three-after-comma": "to one reader it is the decimal comma, to another it parts off the thousands.",
    "milli-or-metre": "mN are millinewtons, a force; or newtons and metres were meant.",
    "capitals": "NM are nautical miles too; newton metres are written N·m.",
    "mil": "to one reader a mil is a thousandth of an inch, to another a millimetre.",
    "bare": "no unit stands beside it, and it may be millimetres or inches.",
    "nano": "nm are nanometres, a length; newton metres are written N·m.",
    "dash": "to one reader one dash means feet, to another minutes of an angle.",
    "per-pound": "feet for each pound are no torque; foot-pounds are written without a slash.",
    "two-points": "nobody knows which of two points is the decimal point.",
    "energy": "joules are work; a torque is another kind, and is written N·m.",
    "mass": "kilograms say how heavy it is; a force is written in newtons.",
    "micro-what": "u alone says millionths, and not of what.",
}

# %% tags=["reference"]
written = given.forms.written
unclear = {id for id, one in written.items() if not has_one_meaning(one.text, one.unit)}
ref(
    "forms-asked", unclear, outcome="write-figures", shows="two-meanings",
    lesson=f"{lesson}#figures-the-way-you-write-them",
    slips=reasons(given.forms.options, unclear, {
        id: f"“{one.text}” looks odd, but it has one meaning only: {clear[one.way]}"
        for id, one in written.items() if id not in unclear
    }) + missed(given.forms.options, unclear, {
        id: f"“{one.text}” belongs here: {double[one.way]}" for id, one in written.items() if id in unclear
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
where = f"{lesson}#figures-the-way-you-write-them"
ref(
    "figures-scale", Q(scale, ""), outcome="write-figures", shows="convert", weight=3, lesson=where,
    tolerance={"absolute": Q(0.5, "")}, slips=[
        Slip(Q(figures.torque_nm, ""), 0,
             "That is the figure in N·m; set on a scale in lbf·ft it overtightens by a third."),
        Slip(Q(scale * 12, ""), 0.25, "That is the figure in lbf·in; a foot has twelve inches."),
        Slip(Q(figures.torque_nm ** 2 / scale, ""), 0,
             "You converted the wrong way round: one lbf·ft is more than one N·m, so the figure in lbf·ft is smaller."),
    ],
)

# %% tags=["reference"]
shim, foil = Q(figures.shim_mm, "mm"), Q(figures.foil_thou, "thou")
spacer = read_quantity(f"{figures.spacer_in} in", "in")
ref(
    "figures-stack", (shim + foil + spacer).to("mm"), outcome="write-figures", shows="convert", weight=3,
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
    "figures-angle", (turned + more).to("degree"), outcome="write-figures", shows="convert", weight=2, lesson=where,
    tolerance=Q(0.5, "degree"),
    slips=[
        Slip((run_on + more).to("degree"), 0.25,
             f"{figures.turns} is one turn and {part} of a turn, not {whole}{part} of a turn."),
        Slip(turned.to("degree"), 0.25, "Add the second turn of the wrench."),
    ],
)

# %% tags=["reference"]
jug, takes = Q(figures.jug_ml, "mL"), Q(figures.oil_l, "L")
poured = (figures.jugs * jug).to("L")
ref("figures-oil", takes - poured, outcome="write-figures", shows="convert", weight=2,
    tolerance=Q(0.012, "L"), lesson=where, slips=[Slip(poured, 0.25, "That is what is in; the question asks for what is missing.")])

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
    shows="every-hazard",
    lesson=f"{lesson}#look-round-first",
    slips=[Slip(place.id, 0, f"{place.name}: {place.because}")
           for place in safety.places if place.id not in found] + missed(given.picture.options, found, {
        place.id: f"{place.name}: {found[place.id].what} {found[place.id].why}" for place in safety.places if place.id in found}),
)

# %% tags=["mark"] task="picture" points=7

# %% [markdown] tags=["task"]
# ## 5. What do you do?
#
# Other days in the same workshop. Its rule: first bring clear anybody who can get hurt at this moment. If something needs no repair, put it right yourself.
#
# If it is broken, or if nobody knows what it is, take it out of use and report it. **To pass, leave nothing as it is that can hurt somebody, and choose what the rule asks for.** More care where nothing is wrong costs marks, but does not fail you. Last, cases on a hoist; every line about them must be right. *10 points.*

# %% tags=["form"]
from twoshaft.plots.hung_case import HungPicture

sheet.form(
    "acts",
    sheet.each("acts-do", "What do you do at each of these places?",
               lines=given.acts.lines, options=given.acts.answers),
    sheet.picture("acts-hoist", "Cases on a hoist, each with its centre of mass: which one is it?",
                  lines=given.acts.asked, pictures={one.letter: HungPicture(one) for one in given.acts.hung}),
)

# %% tags=["reference"]
ACT = {"press-shut": "go", "gear-handle": "go", "hot-marked": "go", "oven-clear": "go",
       "press-hand": "stop", "gear-finger": "stop", "air-sleeve": "stop", "clip-open": "stop",
       "press-open": "mend", "hot-alone": "mend", "oven-cloths": "mend", "oil-floor": "mend",
       "press-torn": "report", "air-leak": "report", "bottle": "report"}
at_place = {
    "press-shut": "The guard stands between the work and the face, and both hands are outside: it may be pressed on.",
    "press-hand": "The ram does not stop for a hand, and a tilted ring gives its force back in an instant. First the hand comes out.",
    "press-open": "Nobody is in danger at rest, and the guard is whole: close it. If you leave it, it stands open under load as well.",
    "press-torn": "A guard without its hinge does not stay shut under load. That is a repair: no job goes on this press.",
}

# %% tags=["reference"]
at_place |= {
    "gear-handle": "Both hands are on the handle; no finger is where the teeth could draw it in.",
    "gear-finger": "However slowly they turn, the teeth draw in what they have caught, before the hand that turns feels it.",
    "hot-marked": "The plate warns everybody who comes, and the gloves lie where they are needed.",
    "hot-alone": "Hot metal looks like cold metal: the next person picks it up with bare fingers. Plate and gloves are at hand.",
    "oven-clear": "Nothing that burns stands near the heat.",
    "oven-cloths": "Nothing burns yet, because the oven is cold. When it is switched on, oily cloths on it catch fire; their bin is there.",
    "air-sleeve": "Air goes through a sleeve and a skin. It takes a second, so the gun comes down at once.",
    "air-leak": "A split hose whips when it bursts. Tape does not hold the pressure, so shut the air off and report the hose.",
    "clip-open": "The ring is a spring, and flies off like a shot. It is half open now: the person has to stop before anything else is done.",
    "oil-floor": "Nobody slips while nobody is there. If you leave it, the next person slips, perhaps with a shaft in their arms; absorbent is at hand.",
    "bottle": "Only a label says what a clear liquid is. If somebody labels it by guess or pours it away, it harms somebody later.",
}

# %% tags=["reference"]
placed = line_reasons(bank.lists["acts"], given.acts.answers, ACT, at_place, shown=given.acts.lines)
ref("acts-do", {one.id: ACT[one.id] for one in given.acts.lines}, outcome="act-safely", must_pass=True, weight=3,
    shows="first-things", lesson=f"{lesson}#look-round-first",
    slips=[replace(one, safe=ACT[one.value[0]] == "go") for one in placed])

# %% tags=["reference"]
HANGS = {(): "lift", ("sling",): "sling", ("place",): "place", ("sling", "place"): "both"}
HELD = {"lift": "Its sling is whole and marked for more than the case, the hook is above the centre of mass, and nobody is beneath: it may go on.",
        "sling": "It hangs straight and nobody is beneath, which looks good; but its sling is marked for less, or frayed: it parts, and the case falls.",
        "place": "Its sling is strong and whole, which looks good; but it tips when it leaves the trolley, or falls on the person beneath.",
        "both": "Neither is right here: look at sling and marks, and at hook, centre of mass and floor."}
is_so = {one.letter: HANGS[lifting.hung_faults(one)] for one in given.acts.hung}
hoisted = {key: letter for letter, key in is_so.items() if key != "both"}
ref("acts-hoist", hoisted, outcome="act-safely", must_pass=True, shows="first-things", weight=2, lesson=f"{lesson}#look-round-first",
    slips=line_reasons(given.acts.asked, [(letter, "") for letter in is_so], hoisted, {}, {letter: HELD[key] for letter, key in is_so.items()}))

# %% tags=["mark"] task="acts" points=10

# %% [markdown] tags=["task"]
# ## 6. What comes first?
#
# These are steps of one dangerous job, out of order; some others are left out. Put them in an order in which nobody can get hurt. Several orders are right.
#
# **No step may stand before one that safety asks for first.** *7 points.*

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
    shows="safe-steps",
    lesson=f"{lesson}#what-comes-first",
)

# %% tags=["mark"] task="first" points=7

# %% [markdown] tags=["task"]
# ## 7. Eye protection
#
# The workshop's rule: glasses with side shields protect against what is struck or springs, closed goggles against what splashes or is blown.
#
# Sunglasses and reading glasses that are open at the sides are no eye protection. People who stand near need the same protection as those who work.
#
# **To pass, leave no eye without the protection that it needs.** *8 points.*

# %% tags=["form"]
sheet.form(
    "eyes",
    sheet.each("eyes-do", "What is to be done before each of these jobs goes on?",
               lines=given.eyes.lines, options=given.eyes.answers),
)

# %% tags=["reference"]
WORN = {"pin-both": "go", "clip-screen": "go", "wash-goggles": "go", "air-goggles": "go",
        "pin-collar": "own", "clip-brow": "own", "wash-few": "own", "air-soon": "own",
        "pin-drift": "other", "clip-watcher": "other", "wash-beside": "other", "air-end": "other",
        "pin-reading": "kind", "clip-sun": "kind", "wash-glasses": "kind", "air-glasses": "kind"}
eyes = {
    "pin-collar": "Glasses on a collar stop no chip, and a chip can fly at the first blow.",
    "clip-brow": "The ring leaves the pliers while you look closely, and the glasses sit on your brow.",
    "wash-few": "The bristles flick solvent with the first stroke as with the last.",
    "air-soon": "Grit comes back in the first instant; a second of air is enough.",
    "pin-drift": "You are protected. But the workmate's face at the drift is nearer to the chips than yours.",
    "clip-watcher": "You are protected. A ring that flies off the pliers can hit anybody near, and the learner looks straight at it.",
    "wash-beside": "You are protected. The bristles flick solvent sideways, into the bare eyes beside you.",
    "air-end": "You are protected. What you blow in comes out at the other end, and somebody looks into it.",
}

# %% tags=["reference"]
eyes |= {
    "pin-reading": "Reading glasses feel like protection. They are open at the sides, and may break under a chip.",
    "clip-sun": "Sunglasses feel like protection. They are open at the sides, where a ring comes back off a wall.",
    "wash-glasses": "Side shields stop what flies straight; solvent runs and drips in round their edge.",
    "air-glasses": "Side shields stop what flies straight; blown grit drifts in behind them.",
}
eyes |= {id: "Everybody here, at work or near it, wears the kind that fits this job."
         for id, do in WORN.items() if do == "go"}
worn = line_reasons(bank.lists["eyes"], given.eyes.answers, WORN, eyes, shown=given.eyes.lines)
ref("eyes-do", {one.id: WORN[one.id] for one in given.eyes.lines}, outcome="protect-eyes", must_pass=True,
    shows="every-job", lesson=f"{lesson}#the-usual-cautions-and-why",
    slips=[replace(one, safe=WORN[one.value[0]] == "go") for one in worn])

# %% tags=["mark"] task="eyes" points=8

# %% [markdown] tags=["task"]
# ## 8. Why?
#
# Each of these was stopped. Every reason in the list is true somewhere. Choose for each line the reason that belongs to it. *6 points.*

# %% tags=["form"]
sheet.form(
    "why",
    sheet.each("why-stopped", "Why was each of these stopped?",
               lines=given.why.lines, options=given.why.answers),
)

# %% tags=["reference"]
CAUSE = {"press-tilt": "force", "puller": "force", "clip-face": "force",
         "steel-hammer": "splinter", "steel-drift": "splinter", "two-hammers": "splinter",
         "finger": "drawn", "rag": "drawn", "glove": "drawn", "can": "burns", "cloths": "burns", "spray": "burns",
         "hot-ring": "unseen", "bottle": "unseen", "cans": "unseen",
         "far-out": "back", "twisted": "back", "low-down": "back"}
told = {"force": "Here something is bent or pressed out of line and holds force; think of the moment when it slips.",
        "splinter": "Here steel meets steel as hard as itself; think of what gives way when neither can be dented.",
        "drawn": "Here something turns with a hand or a cloth at it; think of where the turning takes what it touches.",
        "burns": "Here something that gives off vapour is near heat; think of what the vapour does there.",
        "unseen": "Here the next person has nothing to go by; think of what they see and what they then do.",
        "back": "Here the load is light enough for the arms; think of what holds it up when it is far out or turned."}
ref("why-stopped", {one.id: CAUSE[one.id] for one in given.why.lines}, outcome="know-the-why", shows="own-reason",
    lesson=f"{lesson}#the-usual-cautions-and-why",
    slips=line_reasons(bank.lists["why"], given.why.answers, CAUSE,
                       {id: told[do] for id, do in CAUSE.items()}, shown=given.why.lines))

# %% tags=["mark"] task="why" points=6

# %% [markdown] tags=["task"]
# ## 9. May it be lifted by hand?
#
# Work out the limit and the lifting index of the lift in the table, to two decimals. The limit is 23 kg × reach × height × travel × twist × frequency × grip:
#
# reach = 25 ÷ H · height = 1 − 0.003 × |V − 75| · travel = 0.82 + 4.5 ÷ D · twist = 1 − 0.0032 × A · index = load ÷ limit
#
# Then think of four changes, of which only one can be made: H to 25 cm, V to 75 cm, D to 25 cm, or A to 0. The grip multiplier stays as it is.
#
# Last, say what you do with this load, and with four others. A table takes what it is marked for, and no more. An early mistake costs marks once. **To pass, do not decide for less care than a load needs.** *20 points.*

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
    sheet.number("lift-best", "To what does the best of the four changes raise the limit?", "kg"),
    sheet.each("lift-decision", "What do you do with each load?", options=given.lift.answers, lines=[
        ("own", f"{given.lift.load.capitalize()}, {given.lift.mass_kg:g} kg, as worked out above; "
                f"the table is marked {given.lift.table_kg} kg."),
        *((one.id, one.said) for one in given.lift.others),
    ]),
)

# %% tags=["reference"]
lift = given.lift
asked = lifting.Lift.measured(lift.sizes())
parts = asked.multipliers()
where, near = f"{lesson}#may-i-lift-this", {"absolute": 0.006}
reach_cm, height_cm, travel_cm = lift.reach_cm, lift.height_cm, lift.travel_cm
reach = ref("lift-reach", parts["reach"], outcome="judge-a-lift", shows="limit-and-index", weight=2, tolerance=near,
            lesson=where, slips=[Slip(reach_cm / 25, 0, "This is upside down: the further out the load, the less you may lift.")])
height = ref(
    "lift-height", parts["height"], outcome="judge-a-lift", shows="limit-and-index", weight=2, tolerance=near, lesson=where,
    slips=[Slip(1 - 0.003 * height_cm, 0.25, "It is the distance from 75 cm that counts.")])

# %% tags=["reference"]
travel = ref(
    "lift-travel", parts["travel"], outcome="judge-a-lift", shows="limit-and-index", weight=2, tolerance=near, lesson=where,
    slips=[Slip(0.82 + 4.5 / (height_cm + travel_cm), 0.25,
                "D is the travel from start to end, not the height of the end.")])
twist = ref(
    "lift-twist", parts["twist"], outcome="judge-a-lift", shows="limit-and-index", weight=2, tolerance=near, lesson=where,
    slips=[Slip(1 - 0.032 * lift.twist_deg, 0.25, "0.0032 for each degree, not 0.032.")])

# %% tags=["reference"]
rest = (height, travel, twist, parts["frequency"], parts["grip"])
limit = ref(
    "lift-limit", lifting.weight_limit(reach, *rest), outcome="judge-a-lift", shows="limit-and-index", weight=3,
    tolerance=0.025, lesson=where,
    slips=[
        Slip(lifting.weight_limit(*rest), 0.25, "You left out the reach, which counts most."),
        Slip(Q(lift.mass_kg, "kg") * lifting.weight_limit(reach, *rest) / Q(23, "kg"), 0.25,
             "The multipliers belong to the 23 kg, not to the load."),
    ],
)
load = Q(lift.mass_kg, "kg")
index = ref("lift-index", lifting.lifting_index(load, limit), outcome="judge-a-lift", shows="limit-and-index", weight=3,
            tolerance=0.025, lesson=where,
            slips=[Slip((limit / load).m_as(""), 0, "This is upside down: divide the load by the limit."),
                   Slip(lift.mass_kg / 23, 0, "You divided by 23 kg, the limit of the easiest lift; divide by the limit of this lift.")])

# %% tags=["reference"]
eased = {"reach": reach, "height": height, "travel": travel, "twist": twist}
kilos = {name: lifting.weight_limit(*(part for other, part in eased.items() if other != name),
                                    parts["frequency"], parts["grip"]) for name in eased}
best = max(kilos, key=kilos.get)
change = {"reach": "H at 25 cm", "height": "V at 75 cm", "travel": "D at 25 cm", "twist": "no twist"}
ref("lift-best", kilos[best], outcome="judge-a-lift", shows="best-change", weight=3, tolerance=0.025, lesson=where,
    slips=[Slip(kilo, 0.25, f"That is the limit with {change[name]}; another change does more.")
           for name, kilo in kilos.items() if name != best])

# %% tags=["reference"]
CARE = "Safe, but more than the lift asks for: it is below the limit by hand."
HEAVY = "Load divided by limit comes out above 1: you can lift it off the floor, but the lower back carries more than it can bear for long."
right, why = {"own": "table" if index > lifting.RAISED else "alone"}, {}
for load in lift.others:
    by_hand, borne = load.mass_kg <= load.limit_kg, load.mass_kg <= load.table_kg
    right[load.id] = "weigh" if not load.mass_kg else "alone" if by_hand else "table" if borne else "stronger"
for id, do in right.items():
    why[id] = {
        "alone": {"table": CARE, "stronger": CARE, "weigh": "What it weighs is known; compare it with the limit by hand."},
        "table": {"alone": HEAVY, "stronger": "Compare its weight with the mark on the table: this one takes it.",
                  "weigh": "What it weighs is known; compare it with the limit by hand and the mark on the table."},
        "stronger": {"alone": HEAVY, "table": "It weighs more than the table is marked for: the table tips or gives way, and the load falls.",
                     "weigh": "What it weighs is known; compare it with the mark on the table."},
        "weigh": "Nobody knows what it weighs, so no limit and no mark says anything yet; a guess ends in a hurt back or a fallen load.",
    }[do]

# %% tags=["reference"]
lines = [("own", ""), *((load.id, load.name) for load in lift.others)]
ref("lift-decision", right, outcome="judge-a-lift", shows="lifting-aid", weight=5, must_pass=True, lesson=where,
    slips=[replace(one, safe=one.sentence == CARE)
           for one in line_reasons(lines, lift.answers, right, why)])

# %% tags=["mark"] task="lift" points=20

# %% [markdown]
# ## Done?
#
# Go back to **start-here** and press **Hand in**. You get a receipt. You can hand in again until the due date; the last one counts.
