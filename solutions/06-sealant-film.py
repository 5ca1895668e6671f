# %% [markdown]
# # Sealant film: exercise
#
# <div class="twoshaft-if-missing">If no forms appear below: press <b>Run</b>, then <b>Run All Cells</b>.</div>
#
# Nine tasks about the film between two faces. Take about an hour. Every answer is saved as you give it; you can stop and come back.
#
# Getting a face ready, the film that you lay yourself, and what you do afterwards are **must-pass** (tasks 1, 5 and 9). In tasks 2, 3, 4, 6, 7 and 8 one question decides: each says so.
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
from twoshaft.readings.sealant_film.questions import SOON_HOURS
from twoshaft.units.quantities import Q
from twoshaft_grader.marking import Slip, line_reasons, ref

lesson, bank = "06-sealant-film#", bank_of("sealant-film")

# %% [markdown] tags=["task"]
# ## 1. Get ready
#
# Four faces that somebody calls ready, and four situations with solvent and sealant. **All eight must be right to pass.** *8 points.*

# %% tags=["form"]
sheet.form(
    "prepare",
    sheet.each("prepare-face", "What comes next for each face?",
               lines=given.prepare.face.lines, options=given.prepare.face.answers),
    sheet.each("prepare-danger", "What do you do in each situation?",
               lines=given.prepare.danger.lines, options=given.prepare.danger.answers),
)

# %% tags=["reference"]
FACE = {"even": "lay", "shallow": "lay", "untouched": "lay", "touched": "clean", "remnant": "clean", "grey": "clean",
        "shines": "dry", "oil": "dry", "water": "dry", "bowed": "true", "score": "true", "burr": "true"}
why = {
    "even": "Light under a straightedge looks bad, but the blade is within what is allowed: more work only costs time.",
    "shallow": "A score looks like a path, but this one is less than the sealant bridges: the film fills it.",
    "untouched": "To wipe once more seems safer, but it is clean, dry and untouched; each further wipe can leave lint.",
    "touched": "It looks as clean as before, but a bare hand leaves grease, and on grease the film does not hold.",
    "remnant": "The shine seems to be metal, but new sealant does not hold on old film, and the old film keeps the faces apart.",
    "grey": "After so many wipes it seems clean, but the cloth shows that dirt is left: each grain is a path for the oil.",
}

# %% tags=["reference"]
why |= {
    "shines": "Solvent dries by itself, but a film laid on wet solvent is thinned, and does not hold there.",
    "oil": "The faces are clean, so the oil in the hole is easily forgotten; the bolt shuts it in, and it can split the case.",
    "water": "It was wiped, but what creeps out runs under the film, and in a blind hole it stops the bolt.",
    "bowed": "A film fills gaps, but this gap is wider than allowed: there the film breaks, and it leaks.",
    "score": "More sealant seems to fill it, but the score is deeper than the sealant bridges: there the film leaks.",
    "burr": "Clean and dry it looks ready, but the burrs hold the faces apart: the gap is wide everywhere else.",
}
ref("prepare-face", {one.id: FACE[one.id] for one in given.prepare.face.lines}, outcome="ready-face",
    shows="clean-and-dry", must_pass=True, lesson=lesson + "clean-dry-flat",
    slips=line_reasons(bank.lists["face"], given.prepare.face.answers, FACE, why, shown=given.prepare.face.lines))

# %% tags=["reference"]
DANGER = {"cold": "go", "roller": "go", "scraper": "go", "hot": "heat", "oven": "heat", "grinder": "heat",
          "room": "air", "pit": "air", "dizzy": "air", "finger": "gloves", "torn": "gloves", "store": "gloves",
          "eye": "water", "skin": "water", "sleeve": "water"}
why = {
    "cold": "A hot-air gun beside solvent makes you think of fire, but it is cold, and all else is in order.",
    "roller": "Sealant makes you careful, but gloves, goggles and moving air are there: if you wait, the clock runs on.",
    "scraper": "A scraper can slip, but plastic and away from the hand it is the right way to do it.",
    "hot": "A damp cloth seems harmless, but its vapour forms as you wipe, and a nozzle stays hot for long: the vapour catches fire.",
    "oven": "It has stood for a while, but it is still warm: the cleaner's vapour can catch fire, or turn to poison gas.",
    "grinder": "It is some steps away, but vapour creeps along the floor to the sparks, and burns back to the case.",
    "room": "Gloves and goggles are on, but nothing moves the air: you breathe in all that evaporates.",
}

# %% tags=["reference"]
why |= {
    "pit": "It seems roomy, but the vapour is heavier than air and fills the pit: you can faint down there.",
    "dizzy": "It seems to pass, but a light head is the first sign: you have breathed in so much that you can faint.",
    "finger": "It is quick and even, but the sealant can make the skin allergic for life, from one day to the next.",
    "torn": "It is only the thumb, but sealant under a glove stays on the skin for as long as the glove is on.",
    "store": "The clock is a reason to hurry, but a film can be laid anew; an allergy from bare hands stays.",
    "eye": "It does not hurt, so waiting seems safe. Rinse for a quarter of an hour and get medical help: it harms all the while.",
    "skin": "It is not much, and the film seems to come first. Soap and water take it off now; later it is in the skin.",
    "sleeve": "It dries by itself, but under the glove it stays and takes the grease out of the skin. Take the glove off and wash.",
}
ref("prepare-danger", {one.id: DANGER[one.id] for one in given.prepare.danger.lines}, outcome="ready-face",
    shows="solvent", must_pass=True, lesson=lesson + "before-you-start",
    slips=line_reasons(bank.lists["danger"], given.prepare.danger.answers, DANGER, why,
                       shown=given.prepare.danger.lines))

# %% tags=["mark"] task="prepare" points=8

# %% [markdown] tags=["task"]
# ## 2. Choose the sealant
#
# Four joints, and two sealants on the shelf. For each joint choose the sealant together with the reason. The minutes count from the first sealant to the closed joint.
#
# **Each joint must be right for the outcome.** *6 points.*

# %% tags=["rig"]
given_table("On the shelf", ["sealant", "bridges up to, mm", "may lie open, min"],
            [(s.name, s.largest_gap_mm, s.open_minutes) for s in unit.faces.sealants
             if s.id in given.joints.sealants])

# %% tags=["form"]
sheet.form(
    "joints",
    sheet.each("joints-which", "Which sealant for each joint, and why?", options=given.joints.options,
               lines=[(f"joint-{n}", joint.text) for n, joint in enumerate(given.joints.joints, 1)]),
)

# %% tags=["reference"]
told = {
    "anaerobic": "It is handy, but gap, stiffness or time rules it out here: it would not cure, would break, or would lie open too long.",
    "moisture-gap": "It fills wide gaps, but this gap is narrow enough for both sealants or too wide for both: so the gap is not the reason.",
    "moisture-flexes": "It stays elastic, but nothing flexes in this joint: both parts are thick, rigid metal.",
    "moisture-time": "It is the usual second choice, but it gives no more time here: compare the minutes with both.",
    "neither-gap": "A wide gap looks hopeless, but one of the two bridges this gap.",
    "neither-time": "The work seems long, but one of the two stays open long enough.",
}
slow, quick = (unit.faces.sealant_by_id(id) for id in given.joints.sealants)

# %% tags=["reference"]
best = {}
for n, joint in enumerate(given.joints.joints, 1):
    facts = dict(gap=Q(joint.gap_mm, "mm"), minutes=joint.minutes, rigid=joint.rigid)
    against_slow, against_quick = film.bars(slow, **facts), film.bars(quick, **facts)
    both = set(against_slow) & set(against_quick)
    best[f"joint-{n}"] = ({"anaerobic"} if not against_slow
                          else {f"moisture-{bar}" for bar in against_slow} if not against_quick
                          else {f"neither-{bar}" for bar in both})
ref("joints-which", best, outcome="choose-sealant", shows=("gap-and-time", "no-sealant"), must_pass=True,
    lesson=lesson + "which-sealant",
    slips=line_reasons([(id, "") for id in best], given.joints.options, best, {}, anywhere=told))

# %% tags=["mark"] task="joints" points=6

# %% [markdown] tags=["task"]
# ## 3. From bead to film
#
# A bead is laid beside an oil gallery and pressed to the width of the face.
#
# Work out the film that it makes before any of it is pushed out. Then work out what is left over, on the length given, when the gap is full. Last comes the lump inside: take half of what is left over as a half round along the edge. Its area is 1.57 × radius × radius.
#
# Then decide about this bead, and about three others that were tried on a spare piece as wide as the face. **Each bead must be right for the outcome.** *11 points.*

# %% tags=["rig"]
bead = given.bead
given_table(f"The bead{bead.source}", ["what", "mm"],
            [("diameter of the bead", bead.diameter_mm), ("width that it is pressed to", bead.width_mm),
             ("largest gap of the bolted face", bead.gap_mm), ("length to reckon with", bead.along_mm),
             ("largest lump that is safe there (radius)", bead.bound_mm)])

# %% tags=["form"]
bead = given.bead
sheet.form(
    "bead",
    sheet.number("bead-film", "How thick a film does the bead make?", "mm"),
    sheet.number("bead-over", "How much is left over on the length given?", "mm³"),
    sheet.number("bead-lump", "What radius has the half round inside?", "mm"),
    sheet.each("bead-verdict", "What does each bead do here?", options=bead.does,
               lines=[("own", f"the bead of the table, {bead.diameter_mm:g} mm"),
                      *((f"trial-{n}", text) for n, text in enumerate(bead.trials, 1))]),
)

# %% tags=["reference"]
bead = given.bead
d, w, gap = (Q(mm, "mm") for mm in (bead.diameter_mm, bead.width_mm, bead.gap_mm))
along, bound = Q(bead.along_mm, "mm"), Q(bead.bound_mm, "mm")
laid = ref(
    "bead-film", film.bead_to_film(d, w), outcome="size-film", shows="largest-gap", weight=2, tolerance=0.03,
    lesson=lesson + "work-out-how-thick",
    slips=[Slip(4 * film.bead_to_film(d, w), 0.3, "You took the diameter for the radius: the bead got four times as large."),
           Slip(d**2 / w, 0.3, "You took the bead as square; it is round, so π/4 belongs to it.")],
)
over = ref(
    "bead-over", film.surplus(laid, gap, w, along), outcome="size-film", shows="surplus", weight=2, tolerance=0.03,
    lesson=lesson + "work-out-how-thick",
    slips=[Slip(film.surplus(laid, Q(0, "mm"), w, along), 0.3, "This is all of the bead; what fills the gap is not left over.")],
)

# %% tags=["reference"]
lump = ref(
    "bead-lump", film.half_round(over / 2, along), outcome="size-film", shows="surplus", weight=2, tolerance=0.03,
    lesson=lesson + "work-out-how-thick",
    slips=[Slip(film.half_round(over, along), 0.5, "Only about half of it comes out on the oil side."),
           Slip(film.half_round(over / 4, along), 0.5, "This is a full round; along an edge it lies as a half round.")],
)

# %% tags=["reference"]
does = {"own": "thin" if laid < gap else "fat" if lump > bound else "fits"}
for n, size in enumerate(bead.trials_mm, 1):
    made = film.bead_to_film(Q(size, "mm"), w)
    inside = film.half_round(film.surplus(made, gap, w, along) / 2, along)
    does[f"trial-{n}"] = "thin" if made < gap else "fat" if inside > bound else "fits"
ref("bead-verdict", does, outcome="size-film", shows=("largest-gap", "surplus"), weight=5, must_pass=True,
    lesson=lesson + "how-much-sealant", slips=line_reasons([(id, "") for id in does], bead.does, does, {}, anywhere={
        "thin": "Pressed flat, a bead looks very thin, but this film is thicker than the largest gap: more only makes lumps.",
        "fits": "It looks like plenty on the face, but one limit is not kept: a film thinner than the gap leaks, a lump above "
                "what is safe goes into the oil gallery.",
        "fat": "More comes out than one would like, but the lump inside is below what is safe: a smaller bead is no gain.",
    }))

# %% tags=["mark"] task="bead" points=11

# %% [markdown] tags=["task"]
# ## 4. Against the clock
#
# This is how the work went, in this order.
#
# The clock runs from the first touch of sealant until all bolts are run down by hand; then the face counts as closed. Work out how old the first sealant is by then, and how many minutes lie between that and the limit. Then decide about this film and three others. **Each film must be right for the outcome.** *8 points.*

# %% tags=["rig"]
clock = given.clock
given_table(f"How it went; the film may lie open for {clock.limit_minutes:g} minutes{clock.source}",
            ["step", "took, min"], [(step.text, step.minutes) for step in clock.rows])

# %% tags=["form"]
sheet.form(
    "clock",
    sheet.number("clock-age", "How old is the first sealant when the face is closed?", "min"),
    sheet.number("clock-left", "How many minutes lie between that and the limit?", "min"),
    sheet.each("clock-do", "What do you do about each film?", options=given.clock.do,
               lines=[("own", "the film of the table, now closed"),
                      *((f"film-{n}", other.text) for n, other in enumerate(given.clock.others, 1))]),
)

# %% tags=["reference"]
clock = given.clock
took = {one.kind: sum(step.minutes for step in clock.rows if step.kind == one.kind) for one in clock.rows}
counted = Q(clock.age_minutes, "min")
first = next(step.minutes for step in clock.rows if step.kind == "lay")
age = ref(
    "clock-age", counted, outcome="sealant-clock", shows="from-first-on", weight=2, tolerance={"absolute": Q(0.1, "min")},
    lesson=lesson + "the-clock",
    slips=[Slip(counted + Q(took["before"], "min"), 0.5, "The clock starts with the first sealant, not with getting ready."),
           Slip(counted + Q(took["tighten"], "min"), 0.5, "The face is closed when all bolts are run down; tightening comes after."),
           Slip(counted - Q(took["between"], "min"), 0, "Breaks count too: the film ages while nobody works on it."),
           Slip(counted - Q(first, "min"), 0.5, "The first sealant ages while the rest is laid.")],
)

# %% tags=["reference"]
limit = Q(clock.limit_minutes, "min")
ref("clock-left", abs(limit - age), outcome="sealant-clock", shows="from-first-on", weight=0.5,
    tolerance={"absolute": Q(0.1, "min")}, lesson=lesson + "the-clock",
    slips=[Slip(abs(limit - age) + Q(took["before"], "min"), 0.5, "The clock starts with the first sealant, not with getting ready.")])

# %% tags=["reference"]
ripe = {"own": "go" if age <= limit else "renew"}
for n, other in enumerate(clock.others, 1):
    in_time = other.age_minutes <= other.limit
    ripe[f"film-{n}"] = "go" if in_time else "renew" if other.laid else "prepare"
ref("clock-do", ripe, outcome="sealant-clock", shows="renewed", weight=4, must_pass=True, lesson=lesson + "the-clock",
    slips=line_reasons([(id, "") for id in ripe], clock.do, ripe, {}, anywhere={
        "go": "It still looks wet, or seems quickly laid. But breaks count too, and by the last bolt it is too old: its skin does not stick.",
        "renew": "Wiping off is right only for a film that is too old. Add all minutes up to the last bolt, breaks too: it is in time, or nothing is laid yet.",
        "prepare": "Getting ready is never wrong, but here the sealant is laid, or the whole work fits into its time: waiting only makes it older.",
    }))

# %% tags=["mark"] task="clock" points=8

# %% [markdown] tags=["task"]
# ## 5. Lay the film
#
# Lay the sealant on this face. Choose tool, size, place and side, and press the button; or draw on the picture. Wiping a stretch takes off what lies on it.
#
# The work goes at the pace of the table, one pass after the other, and the clock starts with the first sealant. Your film is closed by the computer when it is marked. Done means: it **seals**, it is closed **in time**, **no lump** larger than the table allows comes near an oil gallery, and **no blind hole** (drawn filled) takes too much. **You must get this right to pass.**
#
# Work out first what the clock says. How old is the first sealant when the face is closed, if all stretches are done once by roller? How old, if they are done once with a bead? *14 points.*

# %% tags=["rig"]
lay = given.lay
given_table(f"This face, today{lay.source}", ["what", "value"], [
    ("largest gap of the bolted face", f"{lay.gap_mm:g} mm"),
    ("width of a film by roller", f"{unit.faces.face_by_id(lay.face).film_width_mm:g} mm"),
    ("largest lump near an oil gallery (radius)", f"{min(lay.lumps_mm.values()):g} mm"),
    ("a blind hole takes at most", f"{lay.blind_mm3:g} mm³"),
    ("the film may lie open for", f"{lay.minutes:g} min"),
    ("a film by roller takes", f"{lay.pace.film:g} min for 100 mm"),
    ("a bead takes", f"{lay.pace.bead:g} min for 100 mm"),
    ("wiping takes", f"{lay.pace.wipe:g} min for 100 mm"),
    ("from the last pass to the closed face", f"{lay.pace.close:g} min"),
    ("all stretches together are", f"{Work.of(unit, lay.job).length_mm:.0f} mm long")])

# %% tags=["form"]
sheet.form(
    "lay",
    sheet.number("lay-by-roller", "All stretches once by roller: how old is the first sealant then?", "min"),
    sheet.number("lay-by-bead", "All stretches once with a bead: how old is the first sealant then?", "min"),
    sheet.film("lay-film", "Lay the film", given.lay.job),
)

# %% tags=["reference"]
work = film.Work.of(unit, given.lay.job)
closing = Q(work.pace.close, "min")
by_roller, by_bead = (Q(work.minutes_taken(work.everywhere(hand, 1.0)), "min")
                      for hand in (film.Hand.FILM, film.Hand.BEAD))
for name, minutes, swapped in (("lay-by-roller", by_roller, by_bead), ("lay-by-bead", by_bead, by_roller)):
    ref(name, minutes, outcome="sealant-clock", shows="from-first-on", weight=3, tolerance={"absolute": Q(0.1, "min")},
        lesson=lesson + "the-clock",
        slips=[Slip(minutes - closing, 0.3, "The face is not closed with the last pass: what follows it counts too."),
               Slip(swapped, 0, "This is the pace of the other tool.")])
ref("lay-film", work, outcome="lay-film", shows=("no-leak", "no-lump"), weight=8, must_pass=True, lesson=lesson + "how-much-sealant")

# %% tags=["mark"] task="lay" points=14

# %% [markdown] tags=["task"]
# ## 6. Round the bolts
#
# A thin bead was laid once round the face. The picture shows it from the coated side, turned, with letters of your own at some of the bolt holes.
#
# For each line point at a hole of which it is true. Then decide about four holes with beads beside them; the case is not yet down. **Each of the four must be right for the outcome.** *7 points.*

# %% tags=["form"]
from twoshaft.plots.bead_pointed import BeadPicture

sheet.form(
    "holes",
    sheet.point("holes-leak", "Of which hole is it true? Where several fit, each of them is right",
                lines=given.holes.asked, picture=BeadPicture(unit, given.holes)),
    sheet.each("holes-blind", "What do you do before the case comes down?",
               lines=given.holes.blind.lines, options=given.holes.blind.answers),
)

# %% tags=["reference"]
holes = given.holes
face = film.Work.of(unit, holes.job).face
passed = {id: film.Side(side) for id, side in holes.sides.items()}
through = film.leaking_holes(film.Land.of(face), passed, Q(holes.pressed_mm, "mm"))
at = {row.letter: "leaks" if row.id in through else "stands" if passed[row.id] is film.Side.OUTSIDE
      else "kept" if row.id in holes.open_holes else "dry" for row in holes.rows}
SO = {"leaks": "It looks closed off, but the oil reaches this hole past the bead and finds a way out of it: it drips there.",
      "stands": "The bead runs outside this hole, so oil gets into it; but it is closed at its end, and the oil finds no way out.",
      "kept": "The bead keeps the oil from this hole, so it stays tight, although it leads out.",
      "dry": "The bead keeps the oil from this hole, and it is closed at its end: nothing gets in and nothing out."}
point_at = {kind: {letter for letter, is_so in at.items() if is_so == kind} for kind in SO}
ref("holes-leak", point_at, outcome="seal-holes", shows="oil-side", weight=3, lesson=lesson + "round-every-bolt-hole",
    slips=line_reasons(holes.asked, [(letter, "") for letter in at], point_at, {}, {letter: SO[is_so] for letter, is_so in at.items()}))

# %% tags=["reference"]
BLIND = {"beside-dry": "go", "ring-open": "go", "open-ends": "go", "oil": "dry", "solvent": "dry", "water": "dry",
         "over": "off", "rim": "off", "hangs": "off", "ring-blind": "air", "closed-ends": "air", "dowel": "air"}
piston = "A little sealant in a thread seems to seal it, but shut in under the bolt, it is pressed as by a piston: the case can split."
why = {
    "beside-dry": "A blind hole makes one careful, but it is dry, and the bead keeps the oil away from it.",
    "ring-open": "A closed ring is wrong round a blind hole; this one leads out, so the air gets away and both sides are sealed.",
    "open-ends": "Two beads can shut air in, but between these the air has a way out at either end.",
    "oil": "Oil on a thread seems to help, but it cannot get away: the bolt does not clamp, and the case can split.",
    "solvent": "It seems that it will dry; but under the bead and the bolt it cannot, and it stops the bolt as oil does.",
    "water": "Water is thin, but the bolt cannot press it away: the torque comes up, and the joint stays loose.",
}

# %% tags=["reference"]
why |= {
    "over": piston, "rim": piston, "hangs": piston,
    "ring-blind": "A closed ring looks like the best seal, but the air in it has no way out, and pushes a path through it.",
    "closed-ends": "Two beads seem twice as tight, but the air between them is pressed, and pushes a path through one.",
    "dowel": "Round a dowel it looks neat, but the air shut in has no way out, and pushes the sealant away.",
}
ref("holes-blind", {one.id: BLIND[one.id] for one in holes.blind.lines}, outcome="seal-holes", shows="blind-holes",
    weight=4, must_pass=True, lesson=lesson + "blind-holes-shut-things-in",
    slips=line_reasons(bank.lists["blind"], holes.blind.answers, BLIND, why, shown=holes.blind.lines))

# %% tags=["mark"] task="holes" points=7

# %% [markdown] tags=["task"]
# ## 7. Judge somebody's film
#
# Somebody laid this film, stretch by stretch, and the face was then closed.
#
# Two things are wrong. On one stretch the oil gets out. On another, more comes out inside than is safe for the oil gallery nearby. Table and picture show where. Say of four stretches how they are; both are among them. **Each must be right for the outcome.** *6 points.*

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
    sheet.each("fault-stretches", "How is the film on each of these stretches?",
               lines=given.fault.asked, options=given.fault.says),
)

# %% tags=["reference"]
fault = given.fault
work = film.Work.of(unit, fault.job)
closed = work.close_film(work.lay(read_entries(fault.entries, work.face), fault.minutes_laid),
                         fault.closed_minute)
((leaking, state),) = closed.leaks
lumpy = {place for _, place in closed.endangered}
reason = {film.State.EMPTY: "thin", film.State.OILY: "soiled", film.State.DIRTY: "soiled",
          film.State.SKINNED: "old"}[state]
is_ = {id: reason if id == leaking else "fat" if id in lumpy else "fine" for id, _ in fault.asked}

# %% tags=["reference"]
why = {
    "fine": "At a glance it looks like the others. Compare its film with its gap and its minute with the clock. See what lies under it, "
            "and whether an oil gallery is near: one of these is not right.",
    "thin": "Too little is the first thing to think of, but here the film is thicker than the gap.",
    "soiled": "Oil and dirt are common, but table and picture show none on this stretch.",
    "old": "A late closing is easy to suspect, but this stretch was closed within the time of its sheet.",
    "fat": "It may be thick, but no oil gallery lies near it, or what comes out there is below what is safe.",
}
ref("fault-stretches", is_, outcome="judge-film", shows="stretch-by-stretch", must_pass=True,
    lesson=lesson + "how-much-sealant", slips=line_reasons(fault.asked, fault.says, is_, {}, anywhere=why))

# %% tags=["mark"] task="fault" points=6

# %% [markdown] tags=["task"]
# ## 8. What comes out at the edge
#
# Six faces were closed a few minutes ago. Outside you see what came out; inside lies about as much.
#
# The scale shows its radius in mm, the words below up to which radius it is safe. Find out which is which. **Each must be right for the outcome.** *6 points.*

# %% tags=["form"]
from twoshaft.plots.edge_seen import EdgePicture

sheet.form(
    "edge",
    sheet.picture("edge-do", "The edge of each face, from outside and cut across: which one is it?",
                  lines=given.edge.asked, pictures={one.letter: EdgePicture(one) for one in given.edge.seen}),
)

# %% tags=["reference"]
EDGE = {(): "wipe", ("bare",): "more", ("fat",): "less", ("bare", "fat"): "both"}
CAME = {"wipe": "It came out everywhere, and its radius is below what is safe: opened again, a good film is torn.",
        "more": "Most of the edge looks right, but where nothing came out nothing shows that the gap is full: there it leaks.",
        "less": "It looks well sealed, and it is; but the lump inside is above what is safe: it comes loose and starves a bearing.",
        "both": "Neither is right here: nothing came out over a stretch, and what came out is above what is safe."}
came = {one.letter: EDGE[film.edge_faults(one)] for one in given.edge.seen}
found = {key: letter for letter, key in came.items() if key != "both"}
ref("edge-do", found, outcome="size-film", shows="squeezed-out", must_pass=True, lesson=lesson + "what-comes-out-at-the-edge",
    slips=line_reasons(given.edge.asked, [(letter, "") for letter in came], found, {}, {letter: CAME[key] for letter, key in came.items()}))

# %% tags=["mark"] task="edge" points=6

# %% [markdown] tags=["task"]
# ## 9. Closed, and then?
#
# First decide what to do about what happened.
#
# Then work out how many hours a face still has to wait for its oil. Last, say when the oil may go into this case and into three others. **You must get every line of both decisions right to pass.** *9 points.*

# %% tags=["rig"]
after = given.after
given_table(f"A case, well closed{after.source}", ["what", "value"], [
    ("the sheet asks for, at 20 °C", f"{after.cure_hours:g} h"),
    ("in this workshop it takes", "as long as on the sheet" if after.cold_factor == 1
     else f"{after.cold_factor:g} times as long, since it is cold"),
    ("closed since", f"{after.waited_hours:g} h")])

# %% tags=["form"]
sheet.form(
    "after",
    sheet.each("after-mishap", "What do you do about what happened?",
               lines=given.after.mishap.lines, options=given.after.mishap.answers),
    sheet.number("after-wait", "How many hours are still to wait for the oil? 0 if none.", "h"),
    sheet.each("after-oil", "When may oil go into each case?", options=given.after.oil,
               lines=[("own", "the case of the table"),
                      *((f"case-{n}", other.text) for n, other in enumerate(given.after.others, 1))]),
)

# %% tags=["reference"]
MISHAP = {"fetched": "go", "covered": "go", "lamp": "go", "slid": "renew", "lifted": "renew", "dust": "renew", "drops": "renew",
          "lump": "find", "washer": "find", "scrap": "find", "roll": "outside", "smear": "outside", "drip": "outside"}
lost = "It seems harmless that it is lost. But in the case the oil carries it to a gallery or a gear, long before the first oil change."
why = {
    "fetched": "After a wait you no longer trust the film, but it is clean, and within its time: a new one costs time for nothing.",
    "covered": "Dust is bad for an open film; this one is covered and its bolts are home, so no dust reaches it.",
    "lamp": "A look seems like a mishap too, but nobody lifted anything: the film was never opened.",
    "slid": "It looks as if sliding spread the film; it dragged part of it over the edges and left lumps inside.",
    "lifted": "It is still wet, but once it was lifted, the film is torn and has taken in air; what was squeezed out is missing.",
    "dust": "Paste seems to take dust up, but each grain in it is a path, and most of them cannot be seen.",
    "drops": "A few drops look like nothing, but the film does not hold on oil, and a wipe smears it along the face.",
}

# %% tags=["reference"]
after = given.after
why |= {
    "lump": lost, "washer": lost, "scrap": lost,
    "roll": "It looks untidy, but outside it harms nobody: the film itself is whole, and opening it would tear it.",
    "smear": "Sealant where none belongs looks like a fault, but it lies outside, and the closed film is untouched.",
    "drip": "It is not where it belongs, but it lies outside and off the film: wiped off, nothing of it is left.",
}
ref("after-mishap", {one.id: MISHAP[one.id] for one in after.mishap.lines}, weight=4, outcome="close-and-cure",
    shows="never-mended", must_pass=True, lesson=lesson + "down-once-straight",
    slips=line_reasons(bank.lists["mishap"], after.mishap.answers, MISHAP, why, shown=after.mishap.lines))

# %% tags=["reference"]
waits = {"own": after.needed_hours - after.waited_hours}
waits |= {f"case-{n}": other.needed_hours - other.waited_hours for n, other in enumerate(after.others, 1)}
more = Q(max(0.0, waits["own"]), "h")
warm = Q(max(0.0, after.cure_hours - after.waited_hours), "h")
ref("after-wait", more, outcome="close-and-cure", shows="cured", steps=1 + (after.cold_factor != 1), tolerance={"absolute": Q(0.2, "h")},
    lesson=lesson + "oil-only-when-it-has-cured",
    slips=[Slip(warm, 0.3, "In the cold it takes longer than the sheet says for 20 °C.")] if warm != more else [])

# %% tags=["reference"]
fill = {line: "now" if hours <= 0 else "soon" if hours <= SOON_HOURS else "later" for line, hours in waits.items()}
ref("after-oil", fill, weight=4, outcome="close-and-cure", shows="cured", must_pass=True,
    lesson=lesson + "oil-only-when-it-has-cured",
    slips=line_reasons([(id, "") for id in fill], after.oil, fill, {}, anywhere={
        "now": "Outside it has a skin, and it seems tight; inside the hours are not up, and oil lifts or washes out the paste.",
        "soon": "It seems nearly done. Take the hours that the sealant needs in this workshop, less those that have passed. "
                "Too early, oil washes the film out; too late, the bay stands idle.",
        "later": "Overnight seems safest, but the hours of the sheet at this temperature are up, or nearly: the case stands waiting for no reason.",
    }))

# %% tags=["mark"] task="after" points=9

# %% [markdown]
# ## Done?
#
# Go back to **start-here** and press **Hand in**. You get a receipt. You can hand in again until the due date; the last one counts.
