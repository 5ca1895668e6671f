# %% [markdown]
# # Sealant film: exercise
#
# <div class="twoshaft-if-missing">If no forms appear below: press <b>Run</b>, then <b>Run All Cells</b>.</div>
#
# Nine tasks about the film between two faces. Take about an hour. Every answer is saved as you give it; you can stop and come back.
#
# Two parts are **must-pass**: getting a face ready and closing it (tasks 1 and 9), and the film that you lay yourself (task 5).
#
# *Invented unit, for teaching. On a real unit the maker's manual, the safety data sheets, local codes and licensed practice decide.*

# %% tags=["setup"]
from twoshaft.jobsheet import open_sheet
from twoshaft.jobsheet.film_entries import read_entries
from twoshaft.models.film import Work
from twoshaft.plots.film_laid import laid_map
from twoshaft.plots.tables import given_table

sheet = open_sheet("sealant-film")
given, unit = sheet.given, sheet.unit

# %% tags=["reference"]
from twoshaft.jobsheet.film_entries import read_entries
from twoshaft.models import film
from twoshaft.questions import bank_of
from twoshaft.readings.sealant_film.amounts import closing_time, with_change
from twoshaft.units.quantities import Q
from twoshaft_grader.marking import Slip, reasons, ref, settled

lesson, bank = "06-sealant-film#", bank_of("sealant-film")

# %% [markdown] tags=["task"]
# ## 1. Get ready
#
# Tick everything that you do before any sealant touches the face. Then decide what to do in the situation below. **You must get the situation right to pass.** *5 points.*

# %% tags=["rig"]
given_table("The situation", ["what you see"], [(given.prepare.scene.story,)])

# %% tags=["form"]
sheet.form(
    "prepare",
    sheet.choices("prepare-ticks", "What do you do before any sealant touches the face?",
                  options=given.prepare.options),
    sheet.choice("prepare-scene", "What do you do in the situation above?",
                 options=given.prepare.scene.options),
)

# %% tags=["reference"]
helps = {"scrape", "cloth", "straightedge", "blind", "lay-out", "air"}
why_not = {
    "disc": "An abrasive disc takes metal off: the face is no longer flat, and the grit goes into bearings.",
    "oil": "Sealant holds on clean, dry metal only; oil leaves a path.",
    "blow": "Compressed air drives dirt into the bearings and into eyes.",
    "bare-hand": "A bare hand leaves grease on the cleaned face.",
    "thin": "Thinned sealant runs out of the gap and shrinks as the solvent leaves.",
    "lump": "A lump is pressed inwards; a deep score is dressed or the part renewed.",
    "skin": "Skin does not stick to the other face: everything else is ready before the film is laid.",
}

# %% tags=["reference"]
ticked = given.prepare.options
ref("prepare-ticks", helps & {option.id for option in ticked}, weight=3, outcome="ready-face",
    lesson=lesson + "clean-dry-flat",
    slips=reasons([*bank.lists["work"], *bank.lists["habits"]], helps, why_not, shown=ticked))

# %% tags=["reference"]
heat = {
    "quick": "You hope to be quicker than the vapour, but it forms as you wipe, and the hot nozzle lights it.",
    "cloth": "A cloth uses less, but a damp cloth gives off the vapour that catches fire.",
    "more": "Warm air dries quickly; on fresh solvent the hot-air gun is what lights it.",
    "window": "Fresh air helps against breathing it in, but it does not cool the nozzle that lights the vapour.",
}
vapour = {
    "mask": "A dust mask feels like protection, but it stops dust only: vapour goes straight through.",
    "turns": "Turns share the harm out, but each of you still breathes in all of it for ten minutes.",
    "door": "That is kind to the others, but it leaves you with even less fresh air.",
    "fast": "You want it over with, but more solvent means more vapour in the same room.",
}

# %% tags=["reference"]
eye = {
    "wait": "It hurts little, so waiting seems safe, but it goes on harming the eye for as long as it is in it.",
    "rub": "You would wipe it off a hand, but on an eye a cloth scratches and spreads it.",
    "solvent": "Solvent takes sealant off metal; in an eye it does more harm than the sealant.",
    "blink": "Tears wash out dust, but they are far too little for this, and every second counts.",
}
fingers = {
    "thinner": "It takes everything off, your skin's own grease too, and carries the sealant deeper in.",
    "cure": "It peels off later, but until then it works on your skin, which can become allergic for good.",
    "finish": "The clock does run, but a minute at the tap is less than an allergy that stays; the film can be laid anew.",
    "cream": "Cream protects clean skin; over sealant it only shuts the sealant in.",
}

# %% tags=["reference"]
spray = {
    "turn": "The sparks fly away, but the vapour spreads to them along bench and floor.",
    "screen": "Cardboard stops sparks in one direction; vapour creeps round it, and it burns.",
    "short": "A minute seems little, but the first spark is enough.",
    "goggles": "They protect the eyes from chips, and nobody from a fire.",
}
act, slips = settled(bank.questions["danger"], given.prepare.scene, {
    "heat": "away", "vapour": "stop", "eye": "rinse", "skin": "wash", "spray": "halt",
}, heat | vapour | eye | fingers | spray)
ref("prepare-scene", act, weight=2, outcome="ready-face", must_pass=True,
    lesson=lesson + "before-you-start", slips=slips)

# %% tags=["mark"] task="prepare" points=5

# %% [markdown] tags=["task"]
# ## 2. Choose the sealant
#
# Three joints, and two sealants on the shelf. For each joint choose the sealant together with the reason. The minutes count from the first sealant to the closed joint. *6 points.*

# %% tags=["rig"]
given_table("On the shelf", ["sealant", "bridges up to, mm", "may lie open, min"],
            [(s.name, s.largest_gap_mm, s.open_minutes) for s in unit.faces.sealants
             if s.id in given.joints.sealants])

# %% tags=["rig"]
given_table("The joints", ["joint", "what it is", "largest gap, mm", "work takes, min"],
            [(n, j.what, j.gap_mm, j.minutes) for n, j in enumerate(given.joints.joints, 1)])

# %% tags=["form"]
sheet.form("joints", *[
    sheet.choice(f"joint-{n}", f"Joint {n}: which sealant, and why?", options=given.joints.options)
    for n, _ in enumerate(given.joints.joints, 1)
])

# %% tags=["reference"]
told = {
    "anaerobic": "It is the handy one, but gap, stiffness or time bars it here: it would not cure, or it would break or skin over.",
    "moisture-gap": "It fills wide gaps, but the width of this gap bars neither or both: then this is not the reason.",
    "moisture-flexes": "It stays elastic, but nothing flexes in this joint: both parts are thick, rigid metal.",
    "moisture-time": "It is the usual second choice, but it gives no more time here: hold the minutes against both.",
    "neither-gap": "A wide gap looks hopeless, but one of the two bridges this gap.",
    "neither-time": "The work seems long, but one of the two stays open long enough.",
}
slow, quick = (unit.faces.sealant_by_id(id) for id in given.joints.sealants)

# %% tags=["reference"]
for n, joint in enumerate(given.joints.joints, 1):
    facts = dict(gap=Q(joint.gap_mm, "mm"), minutes=joint.minutes, rigid=joint.rigid)
    against_slow, against_quick = film.bars(slow, **facts), film.bars(quick, **facts)
    both = set(against_slow) & set(against_quick)
    best = ({"anaerobic"} if not against_slow
            else {f"moisture-{bar}" for bar in against_slow} if not against_quick
            else {f"neither-{bar}" for bar in both})
    ref(f"joint-{n}", best, outcome="choose-sealant", lesson=lesson + "which-sealant",
        slips=reasons(bank.lists["which"], best, told))

# %% tags=["mark"] task="joints" points=6

# %% [markdown] tags=["task"]
# ## 3. From bead to film
#
# A bead is laid beside an oil way and pressed to the width of the face. Work out the film that it makes before any of it is pushed out, what is left over on the length given when the gap is full, and the lump inside: take half of what is left over as a half round along the edge, π *r*² / 2 = volume per length.
#
# Then decide. *11 points.*

# %% tags=["rig"]
bead = given.bead
given_table(f"The bead{bead.source}", ["what", "mm"],
            [("diameter of the bead", bead.diameter_mm), ("width that it is pressed to", bead.width_mm),
             ("largest gap of the bolted face", bead.gap_mm), ("length to reckon with", bead.along_mm),
             ("largest lump that the oil way bears (radius)", bead.bound_mm)])

# %% tags=["form"]
sheet.form(
    "bead",
    sheet.number("bead-film", "How thick a film does the bead make?", "mm"),
    sheet.number("bead-over", "How much is left over on the length given?", "mm³"),
    sheet.number("bead-lump", "What radius has the half round inside?", "mm"),
    sheet.choice("bead-verdict", "Can this bead be used here?", options=[
        ["fits", "Yes: it fills the gap, and the lump is small enough"],
        ["lump", "No: it fills the gap, but the lump is too large"],
        ["thin", "No: it does not fill the gap"],
        ["both", "No: it does not fill the gap, and the lump is too large"]]),
    sheet.choice("bead-nozzle", "Which of these beads would you use instead, or again?",
                 options=[[f"d{round(10 * d):02d}", f"{d:g} mm"] for d in given.bead.nozzles_mm]),
)

# %% tags=["reference"]
bead = given.bead
d, w, gap = (Q(mm, "mm") for mm in (bead.diameter_mm, bead.width_mm, bead.gap_mm))
along, bound = Q(bead.along_mm, "mm"), Q(bead.bound_mm, "mm")
laid = ref(
    "bead-film", film.bead_to_film(d, w), outcome="size-film", weight=2, tolerance=0.03,
    lesson=lesson + "how-thick-is-enough-three-lines-of-arithmetic",
    slips=[Slip(4 * film.bead_to_film(d, w), 0.3, "You took the diameter for the radius: the bead got four times as large."),
           Slip(d**2 / w, 0.3, "You took the bead as square; it is round, so π/4 belongs to it.")],
)
over = ref(
    "bead-over", film.surplus(laid, gap, w, along), outcome="size-film", weight=2, tolerance=0.03,
    lesson=lesson + "how-thick-is-enough-three-lines-of-arithmetic",
    slips=[Slip(film.surplus(laid, Q(0, "mm"), w, along), 0.3, "This is all of the bead; what fills the gap is not left over.")],
)

# %% tags=["reference"]
lump = ref(
    "bead-lump", film.half_round(over / 2, along), outcome="size-film", weight=2, tolerance=0.03,
    lesson=lesson + "how-thick-is-enough-three-lines-of-arithmetic",
    slips=[Slip(film.half_round(over, along), 0.5, "Only about half of it comes out on the oil side."),
           Slip(film.half_round(over / 4, along), 0.5, "This is a full round; along an edge it lies as a half round.")],
)
full, large = laid >= gap, lump > bound

# %% tags=["reference"]
verdict = ("lump" if large else "fits") if full else ("both" if large else "thin")
wrong = {
    "fits": "It looks ample on the face; hold film and lump against the two limits: one of them is not kept.",
    "lump": "More comes out than you would like, but hold your lump and your film against the two limits again.",
    "thin": "Pressed flat a bead looks thin; hold the film that it makes against the largest gap.",
    "both": "A bead that does not fill the gap leaves nothing over for a lump; look at both figures again.",
}
ref("bead-verdict", verdict, outcome="size-film", weight=1.5, lesson=lesson + "a-film-not-a-bead",
    slips=[Slip(id, 0, text) for id, text in wrong.items() if id != verdict])

# %% tags=["reference"]
films = {size: film.bead_to_film(Q(size, "mm"), w) for size in bead.nozzles_mm}
lumps = {size: film.half_round(film.surplus(t, gap, w, along) / 2, along) for size, t in films.items()}
small = {f"d{round(10 * size):02d}" for size in films if films[size] < gap}
fat = {f"d{round(10 * size):02d}" for size in films if lumps[size] > bound}
every = {f"d{round(10 * size):02d}" for size in films}
ref("bead-nozzle", every - small - fat, outcome="size-film", weight=1.5, lesson=lesson + "a-film-not-a-bead",
    slips=[Slip(small, 0, "This bead does not fill the largest gap: the oil finds it."),
           Slip(fat, 0, "This bead puts a lump inside that is larger than the oil way bears.")])

# %% tags=["mark"] task="bead" points=11

# %% [markdown] tags=["task"]
# ## 4. Against the clock
#
# This is how the work went, in this order. The clock runs from the first touch of sealant until all bolts are run down by hand; then the face counts as closed. Work out how old the first of the film is by then, how many minutes lie between that and the limit, and what has to be done. *6 points.*

# %% tags=["rig"]
clock = given.clock
given_table(f"How it went; the film may lie open for {clock.limit_minutes:g} minutes{clock.source}",
            ["step", "took, min"], [(step.text, step.minutes) for step in clock.rows])

# %% tags=["form"]
sheet.form(
    "clock",
    sheet.number("clock-age", "How old is the first of the film when the face is closed?", "min"),
    sheet.number("clock-left", "How many minutes lie between that and the limit?", "min"),
    sheet.choice("clock-do", "What has to be done about the film?", options=given.clock.options),
)

# %% tags=["reference"]
clock = given.clock
took = {one.kind: sum(step.minutes for step in clock.rows if step.kind == one.kind) for one in clock.rows}
counted = Q(clock.age_minutes, "min")
first = next(step.minutes for step in clock.rows if step.kind == "lay")
age = ref(
    "clock-age", counted, outcome="sealant-clock", weight=2, tolerance={"absolute": Q(0.1, "min")},
    lesson=lesson + "the-clock",
    slips=[Slip(counted + Q(took["before"], "min"), 0.5, "The clock starts with the first sealant, not with getting ready."),
           Slip(counted + Q(took["tighten"], "min"), 0.5, "The face is closed when all bolts are run down; tightening comes after."),
           Slip(counted - Q(took["between"], "min"), 0, "Breaks count too: the film ages while nobody works on it."),
           Slip(counted - Q(first, "min"), 0.5, "The first of the film ages while the rest is laid.")],
)

# %% tags=["reference"]
limit = Q(clock.limit_minutes, "min")
ref("clock-left", abs(limit - age), outcome="sealant-clock", tolerance={"absolute": Q(0.1, "min")},
    lesson=lesson + "the-clock")
do = "close" if age <= limit else "renew"
patch = ("A patch leaves the skin where it is: skin neither sticks nor flows." if do == "renew"
         else "Lifting it tears the film and lets air in: lifted means open.")
ref("clock-do", do, outcome="sealant-clock", weight=2, lesson=lesson + "the-clock",
    slips=reasons(bank.lists["aged"], do, {
        ("recoat", "wet"): patch,
        "harder": "More torque seems to press it tight, but no clamp makes a skin flow, and it harms the thread.",
        "close": "It still looks wet, but the first of the film is older than the sheet allows: it has a skin.",
        "renew": "Being careful is right, but this film is within its time: a new one costs time for nothing.",
    }))

# %% tags=["mark"] task="clock" points=6

# %% [markdown] tags=["task"]
# ## 5. Lay the film
#
# Lay the sealant on this face. Choose tool, size, place and side, and press the button; or draw on the picture. Wiping a stretch takes off what lies on it.
#
# The work goes at the pace of the table, one pass after the other, and the clock starts with the first sealant. Your film is closed by the computer when it is marked. Done means: it **seals**, it is closed **in time**, **no lump** larger than the table allows comes near an oil way, and **no blind hole** (drawn filled) takes too much. **You must get this right to pass.**
#
# Work out first what the clock says: how old the first sealant is when the face is closed, if all stretches are done once by finger, and if they are done once with a bead. *14 points.*

# %% tags=["rig"]
lay = given.lay
given_table(f"This face, today{lay.source}", ["what", "value"], [
    ("largest gap of the bolted face", f"{lay.gap_mm:g} mm"),
    ("width of a film by finger", f"{unit.faces.face_by_id(lay.face).film_width_mm:g} mm"),
    ("largest lump near an oil way (radius)", f"{min(lay.lumps_mm.values()):g} mm"),
    ("a blind hole takes at most", f"{lay.blind_mm3:g} mm³"),
    ("the film may lie open for", f"{lay.minutes:g} min"),
    ("a film by finger takes", f"{lay.pace.film:g} min for 100 mm"),
    ("a bead takes", f"{lay.pace.bead:g} min for 100 mm"),
    ("wiping takes", f"{lay.pace.wipe:g} min for 100 mm"),
    ("from the last pass to the closed face", f"{lay.pace.close:g} min"),
    ("all stretches together are", f"{Work.of(unit, lay.job).length_mm:.0f} mm long")])

# %% tags=["form"]
sheet.form(
    "lay",
    sheet.number("lay-by-finger", "All stretches once by finger: how old is the first sealant then?", "min"),
    sheet.number("lay-by-bead", "All stretches once with a bead: how old is the first sealant then?", "min"),
    sheet.film("lay-film", "Lay the film", given.lay.job),
)

# %% tags=["reference"]
work = film.Work.of(unit, given.lay.job)
closing = Q(work.pace.close, "min")
by_finger, by_bead = (Q(work.minutes_taken(work.everywhere(hand, 1.0)), "min")
                      for hand in (film.Hand.FILM, film.Hand.BEAD))
for name, minutes, swapped in (("lay-by-finger", by_finger, by_bead), ("lay-by-bead", by_bead, by_finger)):
    ref(name, minutes, outcome="sealant-clock", weight=3, tolerance={"absolute": Q(0.1, "min")},
        lesson=lesson + "the-clock",
        slips=[Slip(minutes - closing, 0.3, "The face is not closed with the last pass: what follows it counts too."),
               Slip(swapped, 0, "This is the pace of the other tool.")])
ref("lay-film", work, outcome="lay-film", weight=8, must_pass=True, lesson=lesson + "a-film-not-a-bead")

# %% tags=["mark"] task="lay" points=14

# %% [markdown] tags=["task"]
# ## 6. Round the bolts
#
# A thin bead was laid once round the face. The table says on which side it passes some of the bolt holes, and where each hole leads. Tick the holes through which oil gets out. Then answer the question about a blind hole. *5 points.*

# %% tags=["rig"]
sides = {"inside": "on the oil side", "outside": "on the outer side", "middle": "straight across", "round": "all round"}
given_table("The bead at the bolts", ["hole", "the hole is", "the bead passes"],
            [(hole.name, hole.leads, sides[hole.side]) for hole in given.holes.rows])

# %% tags=["form"]
sheet.form(
    "holes",
    sheet.choices("holes-leak", "Through which of these holes does oil get out?",
                  options=given.holes.options),
    sheet.choice("holes-blind", given.holes.scene.story, options=given.holes.scene.options),
)

# %% tags=["reference"]
holes = given.holes
face = film.Work.of(unit, holes.job).face
passed = {id: film.Side(side) for id, side in holes.sides.items()}
through = film.leaking_holes(film.Land.of(face), passed, Q(holes.pressed_mm, "mm"))
say = {"outside": "Oil may stand in a hole; it gets out only where the hole leads out.",
       "middle": "The bead crosses this hole, but the oil finds no way from it to the outside.",
       "inside": "On the oil side of a hole the bead keeps the oil away from it.",
       "round": "All round a hole it is sealed on both sides."}
ref("holes-leak", set(through), outcome="seal-holes", weight=3, lesson=lesson + "round-every-bolt-hole",
    slips=[Slip(hole.id, 0, say[hole.side]) for hole in holes.rows if hole.id not in through])

# %% tags=["reference"]
oil_in = {
    "squeezes": "Oil creeps through many threads, but not in the moment in which the bolt is turned home.",
    "clamps": "Oil does lower the friction, but here the bolt stands on shut-in oil and presses on no face.",
    "loosens": "Oil is blamed for loose bolts, but first comes the pressure of the shut-in oil: it can split the case.",
    "seals": "Oil in a thread keeps nothing back, and shut in under the bolt it cannot get away.",
}
bead_over = {
    "short": "A little bead is indeed lost in the hole, but what harms is that it is shut in under the bolt.",
    "glue": "A bolt with sealant on it comes out with more force; the pressure under it as it goes in does the harm.",
    "cure": "How it cures in the hole does not matter: the bolt presses on it long before.",
    "none": "Sealant under the head can seal; in the hole it is shut in, and the bolt pushes it like a piston.",
}

# %% tags=["reference"]
ring = {
    "best": "A closed ring seals a hole that is open to the air; over a blind one it shuts air in.",
    "suck": "Nothing sucks there: the shut-in air is pressed and pushes the sealant away.",
    "skin": "Air makes a skin within minutes, not at once; the harm comes as the case goes down.",
    "thick": "The bolts close the case in any case; the shut-in air pushes a way through the sealant.",
}
shut_in, slips = settled(bank.questions["blind"], holes.scene, {
    "oil-in": "locks", "bead-over": "piston", "ring": "air",
}, oil_in | bead_over | ring)
ref("holes-blind", shut_in, outcome="seal-holes", weight=2, lesson=lesson + "round-every-bolt-hole",
    slips=slips)

# %% tags=["mark"] task="holes" points=5

# %% [markdown] tags=["task"]
# ## 7. Judge somebody's film
#
# Somebody laid this film, stretch by stretch, and the face was then closed. Two things are wrong: on one stretch the oil gets out, and on one stretch more comes out inside than the oil way nearby bears. Find both. *6 points.*

# %% tags=["rig"]
fault = given.fault
given_table(f"Closed at minute {fault.closed_minute:g}; the film may lie open for {fault.minutes:g} minutes",
            ["stretch", "laid", "at minute", "largest gap there, mm", "face under it"],
            [(row.name, row.film, row.minute, row.gap_mm, row.under) for row in fault.rows])

# %% tags=["rig"]
work = Work.of(unit, given.fault.job)
laid_map(work, read_entries(given.fault.entries, work.face), "The film as it was laid")

# %% tags=["form"]
sheet.form(
    "fault",
    sheet.choice("fault-leak", "On which stretch does the oil get out?", options=given.fault.options),
    sheet.choice("fault-why", "Why does it get out there?", options=given.fault.reasons),
    sheet.choice("fault-lump", "Which stretch puts too much near an oil way?",
                 options=given.fault.options),
)

# %% tags=["reference"]
fault = given.fault
work = film.Work.of(unit, fault.job)
closed = work.close_film(work.lay(read_entries(fault.entries, work.face), fault.minutes_laid),
                         fault.closed_minute)
((leaking, state),) = closed.leaks
lumpy = {place for _, place in closed.endangered}
fine = {option.id for option in fault.options} - lumpy - {leaking}
where = lesson + "a-film-not-a-bead"

# %% tags=["reference"]
seals = "This stretch seals; what is wrong with it goes inside."
whole = "Here the film is thicker than the gap, on clean metal, and in time."
ref("fault-leak", {leaking}, outcome="judge-film", weight=2, lesson=where,
    slips=[Slip(lumpy, 0, seals), Slip(fine, 0, whole)])
reason = {film.State.EMPTY: "thin", film.State.OILY: "oil", film.State.DIRTY: "dirt",
          film.State.SKINNED: "old"}[state]
ref("fault-why", {reason}, outcome="judge-film", weight=2, lesson=lesson + "clean-dry-flat",
    slips=reasons(bank.lists["why_out"], reason, {
        "thin": "Too little is the first thing to think of, but here the film is thicker than the gap.",
        "oil": "Oil under a film is common, but the table and the picture show none on this stretch.",
        "dirt": "Dirt under a film is common, but the table and the picture show none on this stretch.",
        "old": "A late closing is easy to suspect, but this stretch was closed within the time of its sheet.",
        "air": "Two beads can shut air in, but here one film was laid, and nothing shows air on this stretch.",
        "wide": "The gap is the widest thing in the table, but this sealant bridges far more than that.",
    }))

# %% tags=["reference"]
open_one = "This stretch is the one that leaks; look for the one with too much."
little = "What comes out of this stretch is small, or far from any oil way."
ref("fault-lump", lumpy, outcome="judge-film", weight=2, lesson=where,
    slips=[Slip({leaking}, 0, open_one), Slip(fine, 0, little)])

# %% tags=["mark"] task="fault" points=6

# %% [markdown] tags=["task"]
# ## 8. How long does it flow?
#
# All bolts are run down by hand, and the paste flows. Work out how long it takes to get from the film at the start to the gap at the end, as a long strip:
#
# *t* = *µ L B*³ / (2 *F*) × (1/*h₂*² − 1/*h₁*²)
#
# Put everything into metres, newtons and pascal-seconds first. Then say which change shortens it most. *7 points.*

# %% tags=["rig"]
strip = given.closing
given_table("The strip", ["what", "value"], [
    ("viscosity µ", f"{strip.viscosity_pa_s:g} Pa·s"), ("length L", f"{strip.length_mm:g} mm"),
    ("width B", f"{strip.width_mm:g} mm"), ("clamp F of all bolts, by hand", f"{strip.clamp_kn:g} kN"),
    ("film at the start h₁", f"{strip.start_mm:g} mm"), ("gap at the end h₂", f"{strip.end_mm:g} mm")])

# %% tags=["form"]
sheet.form(
    "closing",
    sheet.number("closing-time", "How long does it take?", "s"),
    sheet.choice("closing-change", "Which change shortens it most?",
                 options=[[change.id, change.text] for change in given.closing.changes]),
)

# %% tags=["reference"]
strip = given.closing
right_time = closing_time(strip)
ratio = (strip.end_mm / strip.start_mm) ** 2
ref("closing-time", right_time, outcome="closing-time", weight=4, tolerance=0.03,
    lesson=lesson + "how-long-the-paste-takes-to-flow",
    slips=[Slip(2 * right_time, 0.5, "The 2 below the line is missing."),
           Slip(right_time / (1 - ratio), 0.7, "You left out the film at the start; it makes a small difference, but it is in the formula."),
           Slip(right_time * (1 + ratio) / (1 - ratio), 0.5, "The two terms are subtracted, not added.")])

# %% tags=["reference"]
times = {change.id: closing_time(with_change(strip, change)) for change in strip.changes}
most = min(times, key=times.get)
does = {
    "clamp": "More clamp is the first thing one thinks of, but the force stands in the formula as it is: another does more.",
    "viscosity": "Warming is easy, but the viscosity stands in the formula as it is: another change does more.",
    "width": "The width counts with its third power, but its factor is so near 1 that another change does more.",
    "end": "The end gap counts with its square, but put its factor in: another change does more.",
    "start": "A thinner film at the start seems to save the most, but the first part flows in no time: almost nothing changes.",
}
ref("closing-change", most, outcome="closing-time", weight=2,
    lesson=lesson + "how-long-the-paste-takes-to-flow",
    slips=[Slip(id, 0, does[id]) for id in times if id != most])

# %% tags=["mark"] task="closing" points=7

# %% [markdown] tags=["task"]
# ## 9. Closed, and then?
#
# First decide what to do about what happened. Then work out how many hours the face still has to wait for its oil, and say whether oil may go in now. **You must get both decisions right to pass.** *5 points.*

# %% tags=["rig"]
given_table("What happened", ["what you see"], [(given.after.mishap.story,)])

# %% tags=["rig"]
after = given.after
given_table(f"Another case, well closed{after.source}", ["what", "value"], [
    ("the sheet asks for, at 20 °C", f"{after.cure_hours:g} h"),
    ("in this workshop it takes", "as long as on the sheet" if after.cold_factor == 1
     else f"{after.cold_factor:g} times as long, since it is cold"),
    ("closed since", f"{after.waited_hours:g} h")])

# %% tags=["form"]
sheet.form(
    "after",
    sheet.choice("after-mishap", "What do you do about what happened?",
                 options=given.after.mishap.options),
    sheet.number("after-wait", "How many hours are still to wait for the oil? 0 if none.", "h"),
    sheet.choice("after-oil", "May oil go into the other case now?", options=given.after.oil),
)

# %% tags=["reference"]
slid = {
    "leave": "It looks as if sliding spread the film; it dragged part of it over the edges and left lumps inside.",
    "outside": "A bead outside hides the leak for a while; the oil pushes it off, and the lumps inside stay.",
    "tighten": "Clamp presses lumps flat, but inwards, to the oil galleries, and thin places stay thin.",
    "touch-up": "Only the thin places seem to need some, but once lifted the whole film is torn and takes in air.",
}
lifted = {
    "back": "It is still wet, but once lifted the film is torn and takes in air; what was squeezed out is missing.",
    "strings": "The strings are what you see; between them the film has holes that close on air.",
    "double": "More seems safer, but two films are too thick: air stays between them, and lumps go inside.",
    "turn": "Speed does not bring back what was squeezed out, and bolts pulled one by one tilt the case.",
}

# %% tags=["reference"]
dust = {
    "blow": "The air line is at hand, but it blows dust into the film and the bearings, and ripples the film.",
    "cover": "A second film hides the dust; it stays in there as a path for the oil.",
    "close": "Paste does take dust up, but each grain in it is a path, and most of them cannot be seen.",
    "pick": "You get the grains that you see; most of them are too small for that.",
}
inside = {
    "filter": "A filter holds what reaches it; the lump sticks in an oil gallery before that.",
    "oil": "Hot oil thins grease, but it dissolves no cured sealant.",
    "drain": "The lump moves as soon as the oil does, long before the first oil change.",
    "magnet": "A magnet holds steel; sealant passes it.",
}

# %% tags=["reference"]
after = given.after
todo, slips = settled(bank.questions["mishap"], after.mishap, {
    "slid": "renew", "lifted": "renew", "dust": "renew", "inside": "find",
}, slid | lifted | dust | inside)
ref("after-mishap", todo, weight=2, outcome="close-and-cure", must_pass=True,
    lesson=lesson + "down-once-straight", slips=slips)

# %% tags=["reference"]
sheet_says = unit.faces.sealant_by_id(after.sealant).model_copy(
    update={"cure_hours": after.needed_hours})
more = Q(max(0.0, sheet_says.cure_hours - after.waited_hours), "h")
warm = Q(max(0.0, after.cure_hours - after.waited_hours), "h")
ref("after-wait", more, outcome="close-and-cure", tolerance={"absolute": Q(0.2, "h")},
    lesson=lesson + "oil-only-when-it-has-cured",
    slips=[Slip(warm, 0.3, "In the cold it takes longer than the sheet says for 20 °C.")] if warm != more else [])
may = "cured" if film.ready_for_oil(sheet_says, Q(after.waited_hours, "h")) else "paste"

# %% tags=["reference"]
ref("after-oil", may, weight=2, outcome="close-and-cure", must_pass=True,
    lesson=lesson + "oil-only-when-it-has-cured",
    slips=reasons(bank.lists["oil"], may, {
        "cured": "On the sheet's figure alone it may seem so; at this temperature its hours have not passed.",
        "skin": "The skin outside is what you can touch; inside the joint it is still paste for hours.",
        "pressure": "The case has no pressure, but oil also creeps and washes: it lifts what is still paste.",
        "paste": "Waiting is never wrong for the seal, but the hours of the sheet at this temperature have passed.",
        "never": "Driving without oil to be safe ruins the bearings within minutes.",
    }))

# %% tags=["mark"] task="after" points=5

# %% [markdown]
# ## Done?
#
# Go back to **start-here** and press **Hand in**. You get a receipt. You can hand in again until the due date; the last one counts.
