# %% [markdown]
# # Strip, mark, clean: exercise
#
# <div class="twoshaft-if-missing">If no forms appear below: press <b>Run</b>, then <b>Run All Cells</b>.</div>
#
# Ten tasks about taking a unit apart: the order, what is read before it is lost, the oil, marks, cleaning, and what is thrown away. Take about an hour.
#
# Every answer is saved as you give it; you can stop and come back.
#
# Write numbers the way you are used to, with their unit where there is one.
#
# *Invented unit, for teaching. On a real unit the maker's manual, local codes and licensed practice decide.*

# %% tags=["setup"]
from twoshaft.jobsheet import open_sheet
from twoshaft.plots.tables import given_table

sheet = open_sheet("strip-mark-clean")
given, unit = sheet.given, sheet.unit

# %% tags=["reference"]
from twoshaft.models import shape, strip
from twoshaft.models.order import OrderTask
from twoshaft.questions import bank_of
from twoshaft.readings.scenes import held_in
from twoshaft.units.quantities import Q
from twoshaft_grader.marking import Slip, line_reasons, ref

bank, whole = bank_of("strip-mark-clean"), strip.strip_task(unit)
bare = OrderTask.from_unit(strip.strip_unit(unit, readings=False))
lesson, fine = "11-strip-mark-clean", {"absolute": Q(0.006, "mm")}

# %% [markdown] tags=["task"]
# ## 1. Take it apart
#
# Put steps of taking apart, and readings among them, in an order that works. Then say what can come off next from a unit that is half apart.
#
# Where your unit is drawn, point at what is in the way. The picture may be turned: front and rear, or above and below, may be the other way round. *14 points.*

# %% tags=["rig"]
given_table("A unit half apart", ["step", "state"], [(step.name, step.words) for step in given.apart.state])

# %% tags=["form"]
from twoshaft.plots.unit_scene import ScenePicture, put_in

apart = given.apart
sheet.form(
    "apart",
    sheet.order("strip-order", "Put these steps in an order that works for taking apart", steps=apart.start),
    sheet.each("strip-next", "The unit is as the table says. What about each of these steps?",
               lines=apart.lines, options=apart.answers),
    *([sheet.point("strip-half", "Another unit, half apart. Point at a part that must come off before this step",
                   lines=apart.half.lines, picture=ScenePicture(unit, apart.half.scene))] if apart.half else []),
)

# %% tags=["reference"]
apart, where = given.apart, f"{lesson}#the-same-rules-backwards"
ref("strip-order", strip.strip_task(unit, tuple(apart.operations)), weight=3, outcome="strip-in-order", shows="in-the-way", lesson=where)
offered = [one.id for one in apart.answers if one.id != "now"]
waits = {line.id: [s for s in offered if (s, line.id) in bare.pairs] for line in apart.lines}
next_off = {id: some[0] if some else "now" for id, some in waits.items()}
why = {id: f"“{bare.label(id)}” waits for “{bare.label(to)}”: that must be off first." if to != "now" else
       f"Nothing stands in the way of “{bare.label(id)}” any more." for id, to in next_off.items()}
ref("strip-next", next_off, weight=1, outcome="strip-in-order", shows="off-next", lesson=where,
    slips=line_reasons(apart.lines, apart.answers, next_off, why))

# %% tags=["reference"]
if apart.half:
    parts = {step: set(shape.step_parts(unit, bare.members[bare.number[step]])) for step in bare.steps}
    needed, why = {}, {}
    for id, _ in apart.half.lines:
        first = {part for i, step in enumerate(bare.steps) if bare.before[bare.number[id]] >> i & 1 for part in parts[step]}
        needed[id] = {spot.id for spot in apart.half.scene.spots if spot.text in first - parts[id]}
        why[id] = {spot.id: "This part is what the step takes away; look for what still holds or covers it." if spot.text in parts[id] else
                   "The step can be done with this part in place: look for what lies in its way." for spot in apart.half.scene.spots
                   if spot.id not in needed[id]}
    ref("strip-half", needed, weight=1, outcome="strip-in-order", shows="in-the-way", lesson=where,
        slips=line_reasons(apart.half.lines, [(spot.id, "") for spot in apart.half.scene.spots], needed, why))

# %% tags=["mark"] task="apart" points=14

# %% [markdown] tags=["task"]
# ## 2. Read it before it is lost
#
# The table shows how far a unit is apart. Say of each reading whether it can be taken. Then say what has to be read before the next step.
#
# **Every line of the first question must be right to pass.** *9 points.*

# %% tags=["rig"]
given_table("How far the unit is apart", ["step", "state"], [(step.name, step.words) for step in given.lost.state])

# %% tags=["rig"]
given_table("Readings that stand on the sheet already", ["reading"], [(name,) for name in given.lost.written])

# %% tags=["form"]
lost = given.lost
sheet.form(
    "lost",
    sheet.each("lost-when", "If none of these readings were taken yet: what would you do about each?",
               lines=lost.readings, options=lost.when),
    sheet.each("lost-first", "You want to do this next. What do you have to read first? "
               "What stands on the sheet already need not be read again.", lines=lost.nexts, options=lost.firsts),
)

# %% tags=["reference"]
lost, where = given.lost, f"{lesson}#read-before-it-is-lost"
off = {step.id for step in lost.state if step.off}
when = {one.id: strip.reading_state(whole, one.id, off) for one in lost.readings}
told = {"now": "Nothing lies over it, and all that it needs is still in place.",
        "covered": "Something still lies over it: look for a step that is not done yet.",
        "lost": "A part that it needs is off: what you would read now belongs to another unit."}
ref("lost-when", when, weight=2, outcome="read-before-lost", shows="still-readable", must_pass=True, lesson=where,
    slips=line_reasons(lost.readings, lost.when, when, {id: told[state] for id, state in when.items()}))

# %% tags=["reference"]
open_ones = [one.id for one in lost.firsts if one.id != "nothing"]
ends = {one.id: [r for r in open_ones if one.id in strip.lost_with(whole, r)] for one in lost.nexts}
first = {id: next((r for r in some if r not in lost.taken), "nothing") for id, some in ends.items()}
why = {id: f"This step takes away what “{whole.label(r)}” needs, and that is not written down yet." if r != "nothing" else
       "The readings that this step makes impossible stand on the sheet already, or there are none." for id, r in first.items()}
ref("lost-first", first, weight=1, outcome="read-before-lost", shows="first-read", lesson=where,
    slips=line_reasons(lost.nexts, lost.firsts, first, why))

# %% tags=["mark"] task="lost" points=9

# %% [markdown] tags=["task"]
# ## 3. What was read, worked out
#
# You read an end float and a backlash before the parts came off. The dial for the backlash stood on an arm. A thicker shim takes end float away here.
#
# *14 points.*

# %% tags=["rig"]
worked = given.worked
given_table("Your readings", ["what", "mm"],
            [("dial, shaft pushed in", f"{worked.pushed_mm:.2f}"), ("dial, shaft pulled out", f"{worked.pulled_mm:.2f}"),
             ("shim that was in", f"{worked.fitted_mm:.2f}"), ("end float that is wanted", f"{worked.wanted_mm:.2f}"),
             ("travel at the dial, four places of the gear", ", ".join(f"{one:.2f}" for one in worked.places_mm)),
             ("radius of the dial's arm", f"{worked.arm_mm:g}"), ("pitch radius of the gear", f"{worked.pitch_mm:g}")])

# %% tags=["form"]
worked = given.worked
sheet.form(
    "worked",
    sheet.number("worked-float", "End float of the shaft", "mm"),
    sheet.number("worked-shim", "Shim that gives the end float that is wanted", "mm"),
    sheet.number("worked-mean", "Travel at the dial, mean of the four places", "mm"),
    sheet.number("worked-backlash", "Backlash at the teeth, mean of the four places", "mm"),
    sheet.each("worked-says", "Readings of other units. What does each say?",
               lines=[(one.id, one.text) for one in worked.others], options=worked.verdicts),
)

# %% tags=["reference"]
worked, where = given.worked, f"{lesson}#work-it-out-at-once"
play = ref("worked-float", Q(worked.pulled_mm - worked.pushed_mm, "mm"), weight=1, outcome="work-out-readings",
           shows="float-and-shim", tolerance=fine, lesson=where, slips=[
               Slip(Q(worked.pulled_mm + worked.pushed_mm, "mm"), 0, "The float is the difference of both readings; where the dial begins does not matter."),
               Slip(Q(worked.pulled_mm, "mm"), 0, "This is where the dial ended; take off where it began.")])
fitted, wanted = Q(worked.fitted_mm, "mm"), Q(worked.wanted_mm, "mm")
ref("worked-shim", strip.shim_from_float(fitted, play, wanted), weight=1.5, outcome="work-out-readings",
    shows="float-and-shim", tolerance=fine, lesson=where, slips=[
        Slip(fitted - play + wanted, 0.2, "This shim gives more float, not less: what is free has to be filled."),
        Slip(fitted + play, 0.4, "This shim takes all float away; leave the float that is wanted."),
        Slip(play - wanted, 0.2, "This is how much thicker the shim must be; add the shim that was in.")])

# %% tags=["reference"]
mean = ref("worked-mean", Q(sum(worked.places_mm) / 4, "mm"), weight=0.7, outcome="work-out-readings", shows="backlash-at-teeth",
           tolerance=fine, lesson=where, slips=[
               Slip(Q(sum(worked.places_mm), "mm"), 0.3, "This is the sum of the four; divide it by four."),
               Slip(Q(max(worked.places_mm), "mm"), 0, "This is the largest of the four, not their mean.")])
arm, pitch = Q(worked.arm_mm, "mm"), Q(worked.pitch_mm, "mm")
ref("worked-backlash", strip.backlash_at(mean, arm, pitch), weight=1.8, outcome="work-out-readings", shows="backlash-at-teeth",
    tolerance=fine, lesson=where, slips=[
        Slip(strip.backlash_at(mean, pitch, arm), 0.2, "This is upside down: the teeth lie nearer to the axis than the dial, and travel less."),
        Slip(1 * mean, 0.2, "This is the travel at the dial; at the teeth it is less, by the ratio of the radii.")])

# %% tags=["reference"]
says, why = {}, {}
for one in worked.others:
    beyond = max(one.mm - one.high_mm, one.low_mm - one.mm)
    says[one.id] = "again" if abs(beyond) <= one.unsure_mm + 1e-9 else "outside" if beyond > 0 else "inside"
    why[one.id] = {"again": "The limit lies within the uncertainty of the reading: it decides nothing either way.",
                   "outside": "It is beyond a limit by more than its uncertainty: the part or its shim is in question.",
                   "inside": "It lies inside both limits by more than its uncertainty: write it down and go on."}[says[one.id]]
ref("worked-says", says, weight=2, outcome="work-out-readings", shows="against-limits", lesson=where,
    slips=line_reasons([(id, "") for id in says], worked.verdicts, says, why))

# %% tags=["mark"] task="worked" points=14

# %% [markdown] tags=["task"]
# ## 4. How much oil was in?
#
# The oil was drained into a measuring jug while it was warm.
#
# Work out how much it is when cold, and how much was missing. Then judge other units, all measured cold. *10 points.*

# %% tags=["rig"]
drained, oil = given.oil, unit.strip.oil
given_table("The oil of your unit", ["what", "value"],
            [("in the jug, litres", f"{drained.jug_litre:.2f}"), ("temperature in the jug, °C", f"{drained.jug_c:g}"),
             ("right filling, litres, cold", f"{oil.capacity_litre:g}"), ("clings to walls and gears, litres", f"{oil.stays_litre:g}"),
             ("cold means, °C", f"{oil.reference_c:g}"), ("growth of the oil for each kelvin, part of its volume", f"{oil.expansion_per_k:g}"),
             ("uncertainty of all this, litres", f"{oil.unsure_litre:g}")])

# %% tags=["form"]
drained = given.oil
sheet.form(
    "oil",
    sheet.number("oil-cold", "How much is the oil in the jug when it is cold?", "l"),
    sheet.number("oil-missing", "How much of the right filling was missing? Write a minus if there was too much.", "l"),
    sheet.each("oil-says", f"Other units, all with an uncertainty of {unit.strip.oil.unsure_litre:g} l. What does each say?",
               lines=[(one.id, one.text) for one in drained.others], options=drained.levels),
)

# %% tags=["reference"]
drained, oil, where = given.oil, unit.strip.oil, f"{lesson}#what-the-oil-shows"
jug, warm, half = Q(drained.jug_litre, "l"), Q(drained.jug_c, "degC"), {"absolute": Q(0.006, "l")}
less = strip.litres_at(oil, jug, warm)
cold = ref("oil-cold", less, weight=1.5, outcome="read-drained-oil", shows="how-much", tolerance=half, lesson=where, slips=[
    Slip(2 * jug - less, 0.3, "Warm oil takes more room: cold it is less than the jug shows."),
    Slip(Q(drained.jug_litre / (1 + oil.expansion_per_k * drained.jug_c), "l"), 0.4,
         "Count the kelvins from cold to warm, not from zero.")])
full, stays = Q(oil.capacity_litre, "l"), Q(oil.stays_litre, "l")
ref("oil-missing", full - stays - cold, weight=1.5, outcome="read-drained-oil", shows="how-much", tolerance=half, lesson=where, slips=[
    Slip(full - cold, 0.3, "The oil that clings inside was in the unit too; it is not missing."),
    Slip(cold - full + stays, 0.3, "The size is right; missing oil counts as plus, too much as minus."),
    Slip(full - stays - jug, 0.3, "Take the cold litres: the right filling is stated for cold oil.")])

# %% tags=["reference"]
says, why = {}, {}
for one in drained.others:
    gap = one.capacity_litre - one.stays_litre - one.drained_litre
    says[one.id] = "right" if abs(gap) <= oil.unsure_litre else "short" if gap > 0 else "over"
    why[one.id] = {"right": "Drained and clinging oil together come to the filling, within the uncertainty.",
                   "short": "Drained and clinging oil come to less than the filling, by more than the uncertainty: look for the leak.",
                   "over": "Drained and clinging oil come to more than the filling, by more than the uncertainty: it foams and is pressed out."}[says[one.id]]
ref("oil-says", says, weight=2, outcome="read-drained-oil", shows="how-much", lesson=where,
    slips=line_reasons([(id, "") for id in says], drained.levels, says, why))

# %% tags=["mark"] task="oil" points=10

# %% [markdown] tags=["task"]
# ## 5. Where the chips are
#
# The table gives the time in which chips of one size sink through the whole depth of the oil.
#
# If the oil stood for less than a tenth of the time that a size needs, nearly all chips of that size still float. If it stood for the whole time, none of them do. *8 points.*

# %% tags=["rig"]
chips = given.chips
given_table("The oil at rest", ["what", "value"],
            [("temperature of the oil, °C", f"{chips.oil_c:g}"), (f"chips of {chips.known_um} µm sink through it in, minutes", f"{chips.known_minutes:g}")])

# %% tags=["form"]
chips = given.chips
sheet.form(
    "chips",
    sheet.number("chips-time", f"Time in which chips of {chips.asked_um} µm sink through it", "min"),
    sheet.each("chips-where", "Where are these chips, in the same oil at the same temperature?",
               lines=[(one.id, one.text) for one in chips.rested], options=chips.places),
)

# %% tags=["reference"]
chips, where = given.chips, f"{lesson}#where-the-chips-are"
times = chips.known_um / chips.asked_um
ref("chips-time", Q(chips.known_minutes * times**2, "min"), weight=1, outcome="read-drained-oil", shows="where-chips-lie",
    tolerance={"relative": 0.01}, lesson=where, slips=[
        Slip(Q(chips.known_minutes * times, "min"), 0.3, "Half the size takes four times as long: square the ratio of the sizes."),
        Slip(Q(chips.known_minutes / times**2, "min"), 0.2, "Small chips sink slower, so their time is longer.")])
found, why = {}, {}
for one in chips.rested:
    share = one.minutes / (chips.known_minutes * (chips.known_um / one.size_um) ** 2)
    found[one.id] = "floor" if share >= 1 else "oil" if share < 0.1 else "both"
    why[one.id] = {"floor": "The oil was at rest for longer than this size needs: these chips are not in the pan, they lie on the floor.",
                   "both": "The oil was at rest for a good part of the time that this size needs, but not for all of it.",
                   "oil": "The oil was at rest for less than a tenth of the time that this size needs: look for these chips in the pan."}[found[one.id]]
ref("chips-where", found, weight=1.5, outcome="read-drained-oil", shows="where-chips-lie", lesson=where,
    slips=line_reasons([(id, "") for id in found], chips.places, found, why))

# %% tags=["mark"] task="chips" points=8

# %% [markdown] tags=["task"]
# ## 6. Magnet, pan and old film
#
# Say what each find means, and what the old film shows. *10 points.*

# %% tags=["form"]
found = given.found
sheet.form(
    "found",
    sheet.each("found-debris", "What does each find mean?", lines=found.debris.lines, options=found.debris.answers),
    sheet.each("found-film", "What does the old film show at each place?", lines=found.film.lines, options=found.film.answers),
)

# %% tags=["reference"]
found, where = given.found, f"{lesson}#magnet-pan-and-old-film"
DEBRIS = {"paste": "wear", "fuzz": "wear", "sludge": "wear", "shimmer": "ring", "flakes": "ring", "dust": "ring",
          "chip": "broken", "rods": "broken", "scales": "broken", "worms": "foreign", "grains": "foreign", "milky": "foreign"}
MEANS = {"wear": "Fine, soft and drawn by the magnet: this is what teeth and rollers lose in ordinary running.",
         "ring": "Yellow and left by the magnet: brass, and the synchroniser rings are the brass parts that rub.",
         "broken": "Large, hard and drawn by the magnet, with a shape of its own: find the part before it goes round again.",
         "foreign": "No part of the unit is made of this: look for the way in, and at what it did."}
ref("found-debris", {one.id: DEBRIS[one.id] for one in found.debris.lines}, outcome="read-what-is-found", lesson=where, shows="debris",
    slips=line_reasons(bank.lists["debris"], found.debris.answers, DEBRIS, {id: MEANS[to] for id, to in DEBRIS.items()}, shown=found.debris.lines))

# %% tags=["reference"]
FILM = {"skin": "oily", "glass": "oily", "lifts": "oily", "roll": "much", "plug": "much", "strips": "much",
        "track": "gap", "ring-bare": "gap", "break": "gap", "both-faces": "good", "dusty": "good", "rim": "good"}
SHOWS = {"oily": "The film is whole and does not hold on one face: it was laid on oil, which its back still shows.",
         "much": "Film stands where no joint is: it was squeezed in there, and pieces break off into the oil.",
         "gap": "Bare metal leads from the inside to the outside: there the oil went, whatever the rest looks like.",
         "good": "It clings to both faces all round and the outside is dry: lay the next film in the same way."}
ref("found-film", {one.id: FILM[one.id] for one in found.film.lines}, outcome="read-what-is-found", lesson=where, shows="old-film",
    slips=line_reasons(bank.lists["film"], found.film.answers, FILM, {id: SHOWS[to] for id, to in FILM.items()}, shown=found.film.lines))

# %% tags=["mark"] task="found" points=10

# %% [markdown] tags=["task"]
# ## 7. Mark it and lay it out
#
# Parts that are about to come off, or lie on the bench. **Every line of the first question must be right to pass.**
#
# Where your unit is drawn: nobody laid out these parts as they came off. Put each back where it lay, and the right way round. *8 points.*

# %% tags=["form"]
marks = given.marks
sheet.form(
    "marks",
    sheet.each("marks-do", "What do you do in each case?", lines=marks.lines, options=marks.answers),
    *([sheet.put("marks-back", "Your unit from a side of your own. Put these parts back as they lay", **put_in(unit, marks.back))] if marks.back else []),
)

# %% tags=["reference"]
MARKS = {"hub": "mark", "caps": "mark", "sleeve": "mark", "shims": "bag", "springs": "bag", "rings": "bag",
         "uneven": "off", "dowels": "off", "lines": "off", "punch": "other", "scriber": "other", "chalk": "other"}
MARKED = {"mark": "It goes together in several ways and nothing shows which: once apart, nobody can say how it ran.",
          "bag": "The parts look alike and belong to different places: on one heap nobody can sort them again.",
          "off": "It goes together one way only, or its marks are there already: one more only confuses.",
          "other": "This mark harms the part or comes off in the wash: take a paint pen where nothing runs or seals, or a tag."}
ref("marks-do", {one.id: MARKS[one.id] for one in given.marks.lines}, weight=3, outcome="mark-and-lay-out", must_pass=True, shows="right-mark",
    lesson=f"{lesson}#mark-it-lay-it-out", slips=line_reasons(bank.lists["marks"], given.marks.answers, MARKS,
                                                             {id: MARKED[to] for id, to in MARKS.items()}, shown=given.marks.lines))

# %% tags=["reference"]
if marks.back:
    places, back, why = {one.letter: (one.z_mm, one.height_mm) for one in marks.back.places}, {}, {}
    for part, held in held_in(marks.back).items():
        letter, ways = shape.where_put(unit, marks.back.near.scene.view, held, places)
        back[part] = {f"{letter}-{way}" for way in ways}
        why[part] = {f"{at}-{way}": "It lies in its place, but turned over: look at its lip, boss, bevel or wide end, and at what it works on."
                     if at == letter else "It belongs elsewhere: look for the shaft and the seat that its bore and its rim fit."
                     for at in places for way in "12" if f"{at}-{way}" not in back[part]}
    ref("marks-back", back, weight=1, outcome="mark-and-lay-out", shows="right-mark", lesson=f"{lesson}#mark-it-lay-it-out",
        slips=line_reasons(marks.back.lines, [(f"{at}-{way}", "") for at in places for way in "12"], back, why))

# %% tags=["mark"] task="marks" points=8

# %% [markdown] tags=["task"]
# ## 8. Clean without harm
#
# Four jobs at the wash bench. **Every line must be right to pass.** *8 points.*

# %% tags=["form"]
sheet.form("clean", sheet.each("clean-do", "What do you do in each case?", lines=given.clean.lines, options=given.clean.answers))

# %% tags=["reference"]
CLEAN = {"plastic": "go", "drains": "go", "nylon": "go", "steel": "tool", "disc": "tool", "wire": "tool",
         "spin": "air", "hands": "air", "gallery": "air", "petrol": "bath", "trough": "bath", "caustic": "bath"}
CLEANED = {"go": "The tool is softer than the part and the cleaner suits it: stopping here only costs time.",
           "tool": "Steel and grit cut the face: each scratch is a path for oil, and the grit ends up in the bearings.",
           "air": "Air spins dry rollers to pieces and drives solvent through skin and into eyes: let it drain, wipe, or brush.",
           "bath": "This cleaner burns, or eats the part: by its data sheet take one that suits the material and the room."}
ref("clean-do", {one.id: CLEAN[one.id] for one in given.clean.lines}, outcome="clean-without-harm", must_pass=True, shows="tool-and-cleaner",
    lesson=f"{lesson}#clean-without-harm", slips=line_reasons(bank.lists["clean"], given.clean.answers, CLEAN,
                                                             {id: CLEANED[to] for id, to in CLEAN.items()}, shown=given.clean.lines))

# %% tags=["mark"] task="clean" points=8

# %% [markdown] tags=["task"]
# ## 9. Scrap, measure or keep
#
# Parts that came off. **Every line must be right to pass.** *8 points.*

# %% tags=["form"]
sheet.form("discard", sheet.each("discard-do", "What becomes of each part?", lines=given.discard.lines, options=given.discard.answers))

# %% tags=["reference"]
DISCARD = {"seal": "new", "spring-pin": "new", "nut": "new", "pull-outer": "new", "pads": "look", "pull-inner": "look",
           "teeth": "look", "ring-wear": "look", "shim": "place", "washer": "place", "cup": "place", "cap": "place"}
BECOMES = {"new": "It does its work once, or was harmed as it came off, however good it looks: fitted again it lets go on the road.",
           "look": "Nobody can see whether it is good: wear has a limit, and a measured part is neither wasted nor trusted blindly.",
           "place": "It fits this one place and no other: mixed up with its like, it changes a setting that was right."}
ref("discard-do", {one.id: DISCARD[one.id] for one in given.discard.lines}, outcome="scrap-on-principle", must_pass=True,
    shows="scrap-measure-keep", lesson=f"{lesson}#thrown-away-on-principle",
    slips=line_reasons(bank.lists["discard"], given.discard.answers, DISCARD,
                       {id: BECOMES[to] for id, to in DISCARD.items()}, shown=given.discard.lines))

# %% tags=["mark"] task="discard" points=8

# %% [markdown] tags=["task"]
# ## 10. Nobody is hurt
#
# Four situations while a unit is stripped. **Every line must be right to pass.** *8 points.*

# %% tags=["rig"]
given_table("Of this unit", ["what", "value"], [("the oil is drained below, °C", f"{unit.strip.oil.drain_below_c:g}")])

# %% tags=["form"]
sheet.form("safe", sheet.each("safe-do", "What do you do in each situation?", lines=given.safe.lines, options=given.safe.answers))

# %% tags=["reference"]
SAFE = {"road": "cool", "gloves": "cool", "plate-hot": "cool", "plug": "eyes", "ring": "eyes", "struck": "eyes", "edge": "lift",
        "under": "lift", "oily": "lift", "heater": "fumes", "closed": "fumes", "grinder": "fumes", "warm": "go", "hangs": "go", "hood": "go"}
ACTS = {"go": "It is cool, held, covered and aired: there is nothing to stop.",
        "cool": "Oil and metal this hot scald through a thin glove before you let go; waiting costs nothing.",
        "eyes": "A spring or a struck part flies off faster than you can blink, at anybody who stands near.",
        "lift": "An oily edge slips, and what hangs can fall: a hoist at its points, and nobody below or between.",
        "fumes": "Solvent vapour burns at a spark or a hot face, and dulls you before you notice: no heat, open the door."}
ref("safe-do", {one.id: SAFE[one.id] for one in given.safe.lines}, outcome="strip-safely", must_pass=True, shows="hot-sprung-heavy",
    lesson=f"{lesson}#before-you-start", slips=line_reasons(bank.lists["safe"], given.safe.answers, SAFE,
                                                           {id: ACTS[to] for id, to in SAFE.items()}, shown=given.safe.lines))

# %% tags=["mark"] task="safe" points=8

# %% [markdown]
# ## Done?
#
# Go back to **start-here** and press **Hand in**. You get a receipt. You can hand in again until the due date; the last one counts.
