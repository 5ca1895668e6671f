# %% [markdown]
# # Gear train and checks: exercise
#
# <div class="twoshaft-if-missing">If no forms appear below: press <b>Run</b>, then <b>Run All Cells</b>.</div>
#
# Eleven tasks about ratios, counted turns, locked shafts, synchroniser rings, the differential, the speed drive and the last checks. Take about an hour and a quarter.
#
# Every answer is saved as you give it; you can stop and come back.
#
# Write numbers the way you are used to, with their unit where there is one.
#
# *Invented unit, for teaching. On a real unit the maker's manual, local codes and licensed practice decide.*

# %% tags=["setup"]
from twoshaft.jobsheet import open_sheet
from twoshaft.plots.tables import given_table
from twoshaft.rigs import closed_gears

sheet = open_sheet("gear-train-and-checks")
given, unit = sheet.given, sheet.unit

# %% tags=["reference"]
import math
from fractions import Fraction

from twoshaft.models import geartrain, order, shape
from twoshaft.questions import bank_of
from twoshaft.readings.gear_train_and_checks.own_figures import as_counted
from twoshaft.records import labels
from twoshaft.units.quantities import Q
from twoshaft_grader.marking import Slip, line_reasons, missed, reasons, ref

bank, train = bank_of("gear-train-and-checks"), unit.gear_train
rings = {one.id: one for one in train.synchronisers}
ONE, BOTH = "one output, the other held", "both outputs, averaged"
pinion, HELD = train.driven_from, geartrain.ways_of_counting(train)[0]
lesson, near = "08-gear-train-and-checks", {"relative": 0.006}

# %% [markdown] tags=["task"]
# ## 1. Along the path
#
# Work out the ratios of your forward gear from its teeth, then look at reverse.
#
# Give ratios as plain numbers with three figures: turns of the driving side for one turn of the driven side. *7 points.*

# %% tags=["rig"]
path = given.path
given_table(f"The gears along the path{path.source}", ["mesh", "driving, teeth", "driven, teeth"],
            [*path.wheels, *((f"Reverse: {row.words.lower()}", row.driving, row.driven) for row in path.back)])

# %% tags=["form"]
path = given.path
gear, reverse = path.gear.name.lower(), path.reverse.name.lower()
last = "ring gear" if unit.gear_train.differential else "output shaft"
total = [sheet.number("path-total", f"Ratio of {gear} with the final drive, input shaft to ring gear", "")]
sheet.form(
    "path",
    sheet.number("path-ratio", f"Ratio of {gear}, input shaft to output shaft", ""),
    *(total if unit.gear_train.final_drive else []),
    sheet.number("path-back", f"Ratio of {reverse}, input shaft to output shaft (without a sign)", ""),
    sheet.each("path-way", f"Which way does the {last} turn, and the last gear of other rows?",
               lines=[("gear", f"{gear}: the {last} turns"), ("reverse", f"{reverse}: the {last} turns"),
                      *((row.id, row.text) for row in path.chains)], options=path.ways),
)

# %% tags=["reference"]
path = given.path
gear, reverse, where = path.gear.id, path.reverse.id, f"{lesson}#along-the-path"
counted = as_counted(train, path)
own = float(abs(geartrain.ratio(counted, gear, to=pinion)))
total = geartrain.ratio(counted, gear)
final = float(abs(total)) / own
own = ref("path-ratio", Q(own, ""), weight=1.5, outcome="gear-ratios", shows="along-the-path", tolerance=near, lesson=where, slips=[
    Slip(Q(1 / own, ""), 0.4, "This is upside down: driven teeth go on top, driving teeth below."),
    *([Slip(Q(own * final, ""), 0.4, "The final drive is in it already; this field stops at the output shaft.")] if train.final_drive else [])])
if train.final_drive:
    ref("path-total", own * final, weight=0.7, outcome="gear-ratios", shows="along-the-path", tolerance=near, lesson=where, slips=[
        Slip(own + final, 0, "Ratios along a path multiply; they do not add."),
        Slip(own / final, 0.3, "You divided where the path multiplies: the ring gear is the slower one."),
        Slip(Q(final, ""), 0, "This is the final drive alone; the gear's own ratio goes with it.")])

# %% tags=["reference"]
ways = {True: "same", False: "other"}
turned = {"gear": ways[geartrain.ratio(counted, gear) > 0], "reverse": ways[geartrain.ratio(counted, reverse) > 0]}
turned |= {row.id: ways[len(row.teeth) % 2 == 1] for row in path.chains}
meshes = {"same": "The number of meshes is even: each pair of meshes turns it round and back again.",
          "other": "The number of meshes is odd, and each one turns it round, so it ends up turned."}
ref("path-way", turned, weight=3, outcome="gear-ratios", lesson=where, shows="direction",
    slips=line_reasons([(id, "") for id in turned], path.ways, turned,
                       {id: meshes[way] for id, way in turned.items()}))

# %% tags=["reference"]
first, second = (Q(row.driven / row.driving, "") for row in path.back)
ref("path-back", Q(float(abs(geartrain.ratio(counted, reverse, to=pinion))), ""), tolerance=near,
    weight=0.8, outcome="gear-ratios", shows="along-the-path", lesson=where, slips=[
        Slip(first, 0.2, "This is the first mesh alone; the idler drives another gear."),
        Slip(second, 0.2, "This is the second mesh alone; the input drives the idler first.")])

# %% tags=["mark"] task="path" points=7

# %% [markdown] tags=["task"]
# ## 2. Turns to count
#
# You are going to count turns in another gear. First the right wheel is held: how far must the input shaft turn? Then both wheels are free, and turn unevenly.
#
# *6 points.*

# %% tags=["rig"]
count = given.count
given_table(f"{count.gear.name}{count.source}", ["mesh", "driving, teeth", "driven, teeth"], count.wheels)

# %% tags=["form"]
count = given.count
sheet.form(
    "count",
    sheet.number("count-total", f"Ratio of {count.gear.name.lower()} with the final drive", ""),
    sheet.number("count-held", f"The right wheel is held, the left wheel is to turn {count.held_turns} times. "
                 "How many turns of the input shaft?", "turn"),
    sheet.number("count-free", f"Both are free. The left wheel made {count.left_turns:g} turns, the right one "
                 f"{count.right_turns:g}. How many turns of the input shaft?", "turn"),
)

# %% tags=["reference"]
count, where = given.count, f"{lesson}#count-turns-in-turns-out"
id, counted = count.gear.id, as_counted(train, count)
total = ref("count-total", Q(float(abs(geartrain.ratio(counted, id))), ""), outcome="count-turns", shows="held-or-free",
            tolerance=near, lesson=f"{lesson}#along-the-path")
per = total.m / float(abs(geartrain.ratio(counted, id)))  # the learner's own ratio, if there is one
held = per * abs(geartrain.count_turns(counted, id, count.held_turns, ONE).exact)
mean = (count.left_turns + count.right_turns) / 2
free = per * abs(geartrain.count_turns(counted, id, mean, BOTH).exact)
ref("count-held", Q(float(held), "turn"), weight=2, outcome="count-turns", shows="held-or-free", lesson=where,
    tolerance={"absolute": Q(train.least_count_turns / 2, "turn"), "relative": 0.006}, slips=[
        Slip(Q(2 * float(held), "turn"), 0.4, "With one wheel held the other turns twice for one turn of the ring gear."),
        Slip(Q(4 * float(held), "turn"), 0.2, "The held wheel makes the other turn faster, not slower; go through it again.")])

# %% tags=["reference"]
ref("count-free", Q(float(free), "turn"), weight=2, outcome="count-turns", shows="held-or-free", lesson=where,
    tolerance={"absolute": Q(train.least_count_turns / 2, "turn"), "relative": 0.006}, slips=[
        Slip(Q(2 * float(free), "turn"), 0.4, "You took the sum of both wheels; the ring gear makes their average."),
        Slip(Q(total.m * count.left_turns, "turn"), 0.2, "This follows the left wheel alone; the right one turned too."),
        Slip(Q(total.m * count.right_turns, "turn"), 0.2, "This follows the right wheel alone; the left one turned too.")])

# %% tags=["mark"] task="count" points=6

# %% [markdown] tags=["task"]
# ## 3. Which gear is in?
#
# The unit is closed and one gear is engaged.
#
# Hold a wheel and turn the other one (without a differential: turn the output shaft), and count the strokes and marks of the input shaft. Each stroke is a whole turn; read the rest at the pointer to the nearest mark. Then name the gear. Where your unit is drawn, point at gears in its section: front and rear, or above and below, may be the other way round. *5 points.*

# %% tags=["rig"]
closed_gears(unit, given.which.inside)

# %% tags=["rig"]
finals = [mesh for mesh in unit.gear_train.meshes if mesh.id == unit.gear_train.final_drive]
given_table("Teeth of this unit", ["gear", "driving shaft to driven shaft"],
            [*given.which.wheels, *(("Final drive", f"{final.driving.teeth} drives {final.driven.teeth}") for final in finals)])

# %% tags=["form"]
from twoshaft.plots.unit_scene import look_pictures, near_picture

which = given.which
turned = "the left wheel, the right wheel held" if unit.gear_train.differential else "the output shaft"
sheet.form(
    "which",
    sheet.number("which-count", f"Turns of the input shaft for two turns of {turned} (without a sign)", "turn"),
    sheet.choice("which-way", "Which way does the input shaft turn?", options=which.ways),
    sheet.choice("which-gear", "Which gear is in?", options=which.gears),
    *([sheet.point("which-where", "Your unit in section. Point at these; the teeth are in the table",
                   lines=which.where.lines, picture=near_picture(unit, which.where.near))] if which.where else []),
)

# %% tags=["reference"]
which, where = given.which, f"{lesson}#what-a-count-can-tell"
total = Fraction(*which.inside)
inside = next(gear.id for gear in train.gears if geartrain.ratio(train, gear.id) == total)
counted = geartrain.count_turns(train, inside, 2, HELD)
seen = ref("which-count", Q(float(abs(counted.exact)), "turn"), weight=2.2, outcome="name-gear", shows="whole-turns", lesson=where,
           tolerance={"absolute": Q(0.52 * train.least_count_turns, "turn")}, slips=[
               *([Slip(Q(float(2 * abs(counted.exact)), "turn"), 0.3,
                       "This is for two turns of the ring gear; with one wheel held, it makes only half of the other's turns.")]
                 if train.differential else []),
               Slip(Q(float(abs(counted.exact) / 2), "turn"), 0.3, "This is for one turn of the wheel; the question is about two.")])
way = ref("which-way", ways[counted.same_way], weight=0.5, outcome="name-gear", shows="gear-named", lesson=where, slips=[
    Slip("either", 0, "Teeth in mesh leave no choice. Turn one way only and watch both marks."),
    Slip(ways[not counted.same_way], 0, "Watch both marks from the same side while you turn one way only.")])

# %% tags=["reference"]
signed = seen.m_as("turn") * (-1 if way == "other" else 1)
likely = geartrain.nearest_gear(train, signed, 2, HELD)
near_it = abs(float(geartrain.count_turns(train, likely, 2, HELD).exact) - signed) < 2 * train.least_count_turns
found = likely if near_it else inside  # a count that fits no gear leads nowhere
ref("which-gear", found, weight=1.8, outcome="name-gear", shows="gear-named", lesson=where, slips=[
    Slip(gear.id, 0, "The size is near, but this gear turns the other way round."
         if geartrain.count_turns(train, gear.id, 1, HELD).same_way != (signed > 0)
         else "Work out what this gear would count in this way, and compare.")
    for gear in train.gears if gear.id not in (found, inside)])

# %% tags=["reference"]
if which.where:
    scene = which.where.near.scene
    wheels = {(one.solid.mesh, one.solid.side): one.solid.id for one in shape.view_of(unit, scene.view).drawn if one.solid.kind == "gear"}
    at = {f"{gear.id}-{side}": scene.letter(wheels[gear.engages[0], side]) for gear in train.gears for side in ("driving", "driven")
          if f"{gear.id}-{side}" in labels(which.where.lines)}
    mates = {key: "Another gear meshes here. Low gears have a small gear on the input shaft and a large one on the output shaft; compare the teeth."
             for key in at}
    ref("which-where", at, weight=1.5, outcome="gear-ratios", shows="along-the-path", lesson=f"{lesson}#along-the-path",
        slips=line_reasons(which.where.lines, [(spot.id, "") for spot in scene.spots], at, mates))

# %% tags=["mark"] task="which" points=5

# %% [markdown] tags=["task"]
# ## 4. What the count cannot tell
#
# Somebody reads only coarse parts of a turn.
#
# A reading may be off by half a least count either way. So two gears are safely told apart only if their counts differ by two least counts, or if they turn opposite ways.
#
# A gear fits a reading if it turns the same way, and its count lies within one least count of the reading. *8 points.*

# %% tags=["rig"]
apart = given.apart
given_table(f"Counted: {apart.turns} turn{'s' if apart.turns > 1 else ''}, {apart.counted}; "
            f"read to {apart.step_words}",
            ["gear", f"input turns for one turn of the {'ring gear' if unit.gear_train.differential else 'output shaft'}"], apart.totals)

# %% tags=["form"]
apart = given.apart
sheet.form(
    "apart",
    sheet.each("apart-says", f"Somebody counted: {apart.counted}. What does each reading say?",
               lines=[(one.id, one.text) for one in apart.readings], options=apart.answers),
    sheet.number("apart-turns", f"Counted and read in the same way: how many whole turns of the output are enough to "
                 f"tell {apart.asked.words.lower()} apart?", whole=True),
)

# %% tags=["reference"]
apart, where = given.apart, f"{lesson}#what-a-count-can-tell"
how = (apart.counted, apart.step_turns)
says, told = {}, {}
for one in apart.readings:
    counts = {gear.id: geartrain.count_turns(train, gear.id, one.output_turns, apart.counted).exact
              for gear in train.gears}
    fits = [id for id, turns in counts.items() if (turns > 0) == (one.input_turns > 0)
            and abs(float(turns) - one.input_turns) < one.step_turns]
    says[one.id] = fits[0] if len(fits) == 1 else "more" if fits else "again"
    told[one.id] = ("This reading fits one gear alone: work out what each would count." if len(fits) == 1 else
                    "More than one gear lies within one least count of it: more turns tell them apart." if fits else
                    "No gear lies within one least count of it: the count or the direction is off.")

# %% tags=["reference"]
ref("apart-says", says, weight=4, outcome="count-limits", lesson=where, shows=("two-counts", "more-turns"),
    slips=line_reasons([(id, "") for id in says], apart.answers, says, told))
few = int(geartrain.tells_apart(train, apart.asked.one, apart.asked.other, *how))
ref("apart-turns", few, weight=1.5, outcome="count-limits", shows="two-counts", lesson=where, slips=[
    Slip(few - 1, 0.2, "This falls just short of two least counts; the next whole turn gets there.")])

# %% tags=["mark"] task="apart" points=8

# %% [markdown] tags=["task"]
# ## 5. Hold the shafts
#
# The shaft nuts are due, and the shafts must not turn. The last question is about other benches. **It must be right to pass, in every line.** *9 points.*

# %% tags=["rig"]
given_table("Sleeves of this unit", ["synchroniser", "serves"], given.lock.sleeves)

# %% tags=["rig"]
given_table("Five other units: two pairs of gears in each, driving to driven teeth", ["unit", "teeth"],
            [(card.letter, card.words) for card in given.lock.cards.sets])

# %% tags=["form"]
lock = given.lock
a, b = (gear.name.lower() for gear in lock.engaged)
other = [sheet.number("lock-other", f"Engaged are {a} and {b}. The left wheel is turned {lock.left_turns:g} turns forward "
                      "by hand. How far does the right wheel turn? Backward is minus.", "turn")]
sheet.form(
    "lock",
    sheet.choices("lock-pairs", "Which of these pairs can you engage at once to hold the shafts?", options=lock.pairs),
    *(other if unit.gear_train.differential else []),
    sheet.choice("lock-equal", "In which unit would the two gears hold nothing?",
                 options=[[card.letter.lower(), f"Unit {card.letter}: {card.words}"] for card in lock.cards.sets]),
    sheet.each("lock-first", "The socket is on the nut. What comes next?",
               lines=lock.first.lines, options=lock.first.answers),
)

# %% tags=["reference"]
lock, where = given.lock, f"{lesson}#pairs-that-hold-the-shafts"
holds = {key for key, pair in lock.keys.items() if not geartrain.one_sleeve(train, pair)
         and train.input in geartrain.freedom(train, pair).locked}
ref("lock-pairs", holds, weight=0.7, outcome="lock-train", shows="two-sleeves", lesson=where, slips=[
    Slip(key, 0, "One sleeve serves both gears of a pair that you ticked; it can be in one only.")
    for key in lock.keys if key not in holds]
    + missed(lock.pairs, holds, "“{name}” hold the shafts: each has a sleeve of its own, and two ratios at once let nothing turn."))

# %% tags=["reference"]
engaged, bevel = [gear.id for gear in lock.engaged], train.differential
left = Q(lock.left_turns, "turn")
if bevel:
    case = geartrain.turned_by_hand(train, engaged, by=bevel.left)[bevel.case]
    right = geartrain.other_output(Q(float(case), "turn"), left)
    ref("lock-other", right, weight=1.5, outcome="lock-train", shows="still-turn", lesson=f"{lesson}#the-differential-by-hand",
        tolerance={"absolute": Q(0.01, "turn")}, slips=[
            Slip(Q(0, "turn"), 0, "Only the ring gear is held; the wheels turn against each other."),
            Slip(-right, 0.4, "The size is right. With the ring gear held, what one wheel gains the other loses."),
            Slip(2 * right, 0.2, "It would be double with one wheel held; here the ring gear is held.")])

# %% tags=["reference"]
two = lock.cards.gears
equal = set()
for card in lock.cards.sets:
    other = train
    for mesh, teeth in zip(lock.cards.meshes, card.meshes):
        other = geartrain.with_wheel(other, mesh, "driving", teeth.driving)
        other = geartrain.with_wheel(other, mesh, "driven", teeth.driven)
    if train.input in geartrain.freedom(other, two).free:
        equal.add(card.letter.lower())
ref("lock-equal", equal, weight=1.5, outcome="lock-train", shows="two-sleeves", lesson=where, slips=[
    Slip(card.letter.lower(), 0, "These ratios are close, but not equal; the shafts would be held. Divide them out.")
    for card in lock.cards.sets if card.letter.lower() not in equal])

# %% tags=["reference"]
FIRST = {"held": "pull", "tried": "pull", "second": "pull", "just-in": "try", "said": "try", "changed": "try",
         "wheel": "clear", "flange": "clear", "guide": "clear", "alone": "engage", "turns": "engage", "out": "engage"}
why = {"pull": "The lock was tried by hand and all hands are clear: nothing is left to be done first.",
       "try": "Nobody has tried this lock. A sleeve that is not fully in lets go under the bar, with hands in the train.",
       "clear": "With the lock in, the wheels still turn against each other, and pull in what lies near them.",
       "engage": "The input shaft is not held: under the bar it turns, and the bar with it."}
ref("lock-first", {one.id: FIRST[one.id] for one in lock.first.lines}, weight=3, outcome="safe-turning",
    must_pass=True, lesson=where, shows="try-the-lock",
    slips=line_reasons(bank.lists["lock_first"], lock.first.answers, FIRST,
                       {id: why[do] for id, do in FIRST.items()}, shown=lock.first.lines))

# %% tags=["mark"] task="lock" points=9

# %% [markdown] tags=["task"]
# ## 6. Play of a side gear
#
# The dial indicator stands on a side gear. You push the gear inwards and read, then pull it outwards and read. A washer is in already. *4 points.*

# %% tags=["rig"]
play = given.play
low, high = play.limits_mm
given_table(f"{play.side.capitalize()} side gear{play.source}", ["what", "mm"],
            [("dial, gear pushed inwards", f"{play.inwards_mm:.2f}"), ("dial, gear pulled outwards", f"{play.outwards_mm:.2f}"),
             ("washer fitted", f"{play.fitted_mm:.2f}"), ("play allowed, from", f"{low:.2f}"),
             ("play allowed, to", f"{high:.2f}"), ("uncertainty of the play read, either way", f"{play.doubt_mm:.2f}")])

# %% tags=["form"]
play = given.play
sheet.form(
    "play",
    sheet.number("play-read", "How much play is there?", "mm"),
    sheet.choice("play-verdict", "What does that mean?", options=play.verdicts),
    sheet.choice("play-washer", "Which washer brings the play surely within its limits, with the uncertainty taken into account?",
                 options=play.washers),
    sheet.each("play-when", "Other differentials: what do you do about this play?",
               lines=play.when.lines, options=play.when.answers),
)

# %% tags=["reference"]
play, where = given.play, f"{lesson}#play-of-the-side-gears"
low, high = play.limits_mm
section = train.differential.side_gear_play.model_copy(update={"play_mm": (low, high)})
fitted, doubt = Q(play.fitted_mm, "mm"), Q(play.doubt_mm, "mm")
read = ref("play-read", Q(play.outwards_mm - play.inwards_mm, "mm"), weight=1.1, outcome="side-gear-play", shows="before-closing",
           lesson=where, tolerance={"absolute": Q(0.005, "mm")}, slips=[
               Slip(Q(play.outwards_mm, "mm"), 0, "This is one reading; play is the difference of both."),
               Slip(Q(play.inwards_mm, "mm"), 0, "This is one reading; play is the difference of both.")])

# %% tags=["reference"]
mm = read.m_as("mm")
verdict = "too-much" if mm > high else "too-little" if mm < low else "right"
ref("play-verdict", verdict, weight=0.7, outcome="side-gear-play", shows="within-limits", lesson=where, slips=reasons(play.verdicts, verdict, {
    "right": "You feel that the gear moves freely, so it seems right. Compare the play with both limits: left so, the gear knocks or binds.",
    "too-much": "The play does not lie above the upper limit; a thicker washer would take away what is needed.",
    "much-thinner": "A thinner washer leaves more play, not less.",
    "too-little": "The play does not lie below the lower limit; a thinner washer would leave too much.",
    "little-thicker": "A thicker washer takes play away; it does not give any.",
}))

# %% tags=["reference"]
thick = {f"{one:.2f}".replace(".", "-"): one for one in section.washers_mm}
sure = geartrain.right_washers(section, read, fitted, doubt)
after = {key: geartrain.play_with_washer(read, fitted, Q(one, "mm")).m_as("mm") for key, one in thick.items()}
ref("play-washer", {key for key, one in thick.items() if one in sure}, weight=1.2, outcome="side-gear-play", shows="within-limits",
    lesson=where, slips=[
        Slip(key, 0.2 if low <= then <= high else 0,
             "The play may come out right, but the uncertainty of your reading can carry it past a limit." if low <= then <= high
             else "There would still be too much play; a thicker washer takes play away." if then > high
             else "There would be too little play, or the washer would not go in at all.")
        for key, then in after.items() if thick[key] not in sure])

# %% tags=["reference"]
WHEN = {"pin-loose": "now", "pushed": "now", "no-bearing": "now", "no-shaft": "further", "one-gear": "further",
        "no-washer": "further", "pin-home": "back", "bearings": "back", "closed": "back"}
why = {"now": "All that makes the play is in, and pin and bearings do not close it off yet.",
       "further": "A part that makes the play is still missing, so the dial shows something else.",
       "back": "If a wrong play is closed in, it goes on the road. So take it apart; a pin that was driven home is renewed."}
ref("play-when", {one.id: WHEN[one.id] for one in play.when.lines}, weight=1.5, outcome="side-gear-play",
    lesson=where, shows="before-closing",
    slips=line_reasons(bank.lists["when"], play.when.answers, WHEN,
                       {id: why[do] for id, do in WHEN.items()}, shown=play.when.lines))

# %% tags=["mark"] task="play" points=4

# %% [markdown] tags=["task"]
# ## 7. Ring gaps under the feeler
#
# You press each ring home on its cone and try blades at three places. The table shows the thickest blade that goes in.
#
# The last question is about other rings too. **It must be right to pass, in every line.** *9 points.*

# %% tags=["rig"]
gap = given.gap
given_table(f"Ring gaps, mm{gap.source}", ["ring", "place 1", "place 2", "place 3", "new", "least"],
            [(gap.ring.name, *(f"{mm:.2f}" for mm in gap.readings_mm), f"{gap.ring.new_mm:.2f}",
              f"{gap.ring.least_mm:.2f}")])

# %% tags=["form"]
gap = given.gap
first = gap.ring.name.lower()
sheet.form(
    "gap",
    sheet.number("gap-counts", f"Which gap counts for the {first}?", "mm"),
    sheet.number("gap-wear", f"Its cone has a half angle of {gap.ring.half_angle_deg:g}°. How much has it worn, "
                 "square to its face, since it was new?", "mm"),
    sheet.each("gap-decide", "What do you do with each ring? Gaps in mm, read in the same way.",
               lines=[("own", f"the {first} of the table"),
                      *((f"ring-{n}", ring.text) for n, ring in enumerate(gap.others, 1))], options=gap.decide),
)

# %% tags=["reference"]
gap, where = given.gap, f"{lesson}#the-synchroniser-ring"
one, angle = gap.ring, Q(gap.ring.half_angle_deg, "degree")
new, blade, readings = Q(one.new_mm, "mm"), Q(gap.blade_mm, "mm"), gap.readings_mm
counts = ref("gap-counts", Q(min(readings), "mm"), weight=1.5, outcome="judge-ring", shows="narrowest", lesson=where,
             tolerance={"absolute": Q(0.005, "mm")}, slips=[
                 Slip(Q(sum(readings) / len(readings), "mm"), 0.3, "An average hides the narrow place, and there the ring touches first."),
                 Slip(Q(max(readings), "mm"), 0, "This is the widest place; the ring touches first where it is narrowest.")])
lost = new - counts
ref("gap-wear", geartrain.wear_from_gap(new, counts, angle), weight=1.5, outcome="judge-ring", shows="narrowest", lesson=where,
    tolerance={"relative": 0.015, "rounding": Q(0.001, "mm")}, slips=[
        Slip(lost, 0.3, "This is the gap that was lost; on a slim cone far less wear does that."),
        Slip(lost / math.sin(angle.m_as("rad")), 0.2, "You divided by the sine; the wear is smaller than the gap it costs.")])

# %% tags=["reference"]
SAYS = {"worn": "renew", "good": "use-again", "tilted": "keys", "away": "hub"}
decided = {"own": "renew" if min(readings) < one.least_mm else "use-again"}  # of the ring itself, however it was read
for n, other in enumerate(gap.others, 1):
    gaps = [Q(mm, "mm") for mm in other.readings_mm]
    decided[f"ring-{n}"] = SAYS[geartrain.gap_says(rings[other.id], gaps, blade)]
why = {"renew": "The narrowest place is below the least gap: the cone is worn, and soon the ring no longer brakes.",
       "use-again": "All three places lie near each other, between least and new: a new ring would gain nothing.",
       "keys": "One side is wide and the other narrow: the ring is tilted, as on a key that rests on its land.",
       "hub": "All round the gap is wider than that of a new ring. So dirt or a burr keeps it off its cone, or it is the ring of another gear."}
ref("gap-decide", decided, weight=4, outcome="judge-ring", must_pass=True, lesson=where, shows="narrowest",
    slips=line_reasons([(id, "") for id in decided], gap.decide, decided,
                       {id: why[do] for id, do in decided.items()}))

# %% tags=["mark"] task="gap" points=9

# %% [markdown] tags=["task"]
# ## 8. What a ring can do
#
# The fork presses the ring on its cone. Then the unit gets oil of another kind. The fourth question is about parts that are about to go in.
#
# **It must be right to pass, in every line.**
#
# Where your unit is drawn: the same place of four units. See which is built how; two may be alike. *9 points.*

# %% tags=["rig"]
cone = given.cone
given_table(cone.ring.name, ["what", "value"],
            [("force along the shaft, N", cone.force_n), ("mean diameter of the cone, mm", cone.ring.mean_diameter_mm),
             ("half angle of the cone, °", cone.ring.half_angle_deg), ("friction with the right oil", cone.ring.friction),
             ("friction with the other oil", cone.wrong_friction)])

# %% tags=["form"]
cone = given.cone
sheet.form(
    "cone",
    sheet.number("cone-torque", "Cone torque with the right oil", "N·m"),
    sheet.number("cone-other", "Cone torque with the other oil", "N·m"),
    sheet.number("cone-times", "How many times as long does the same change of speed take with the other oil?", ""),
    sheet.each("cone-fit", "Parts are about to go in. What do you do with each?",
               lines=cone.fit.lines, options=cone.fit.answers),
    *([sheet.picture("cone-looks", "One place of four units, from a side of your own: which unit is it? Where two fit, either is right",
                     lines=cone.built, pictures=look_pictures(unit, cone.looks))] if cone.looks else []),
)

# %% tags=["reference"]
cone, where = given.cone, f"{lesson}#what-makes-a-ring-grip"
about = cone.ring
force, size = Q(cone.force_n, "N"), Q(about.mean_diameter_mm, "mm")
angle = Q(about.half_angle_deg, "degree")
torques = [geartrain.cone_torque(force, mu, size, angle) for mu in (about.friction, cone.wrong_friction)]
for field, torque, mu in zip(("cone-torque", "cone-other"), torques, (about.friction, cone.wrong_friction)):
    flat = (force * mu * size / 2).to("N*m")
    ref(field, torque, weight=1.5, outcome="judge-ring", shows="cone-torque", tolerance={"relative": 0.01}, lesson=where, slips=[
        Slip(2 * torque, 0.4, "The friction works at half the diameter, the radius of the cone."),
        Slip(flat, 0.3, "This is for a flat ring; a slim cone presses much harder, so divide by the sine of its half angle."),
        Slip(2 * flat, 0.1, "Two things are missing: the radius in place of the diameter, and the sine of the half angle.")])

# %% tags=["reference"]
job = (Q(0.01, "kg*m**2"), Q(100, "rad/s"))  # any change of speed: the ratio of times does not depend on it
times = [geartrain.synchronising_time(*job, torque) for torque in torques]
ratio = (times[1] / times[0]).to("").m
ref("cone-times", Q(ratio, ""), weight=2, outcome="judge-ring", shows="cone-torque", tolerance={"relative": 0.015}, lesson=where, slips=[
    Slip(Q(1 / ratio, ""), 0.3, "Less torque takes longer, not shorter: divide the other way round."),
    Slip(Q(ratio - 1, ""), 0.4, "This is how much longer; the question is how many times as long.")])

# %% tags=["reference"]
FITTED = {"own-cone": "fit", "keys-slots": "fit", "sleeve-free": "fit", "keys-lands": "turn", "hub-boss": "turn",
          "sleeve-groove": "turn", "new-dry": "soak", "washed": "soak", "wiped": "soak",
          "other-cone": "own", "evened": "own", "sticks": "own"}
why = {"fit": "It is soaked or moves freely, lies the right way round, and is where it ran.",
       "turn": "This way round it stands off its mate: the ring tilts, or the sleeve does not reach its gear.",
       "soak": "A dry ring scores its cone in the first changes, and is worn before it has bedded in.",
       "own": "Used parts have bedded in on each other; on another mate they touch in places only, and stick."}
ref("cone-fit", {one.id: FITTED[one.id] for one in cone.fit.lines}, weight=3, outcome="fit-synchroniser",
    must_pass=True, lesson=f"{lesson}#which-way-round", shows="right-way-round",
    slips=line_reasons(bank.lists["fit"], cone.fit.answers, FITTED,
                       {id: why[do] for id, do in FITTED.items()}, shown=cone.fit.lines))

# %% tags=["reference"]
from twoshaft.readings.scenes import lies_in

BUILT = {"right": "In this one something lies the wrong way round or is not there: compare the four part by part.",
         "turned": "Nothing is turned over in this one: compare bosses, cones, bevels and collars with the part beside them.",
         "missing": "Nothing is left out in this one: look for a groove, a bore or a gap that nothing fills."}
if cone.looks:
    built = shape.built_how(unit, {look.letter: (look.near.scene.view, lies_in(look.near.scene)) for look in cone.looks})
    ref("cone-looks", built, weight=2, outcome="fit-synchroniser", shows="right-way-round", lesson=f"{lesson}#which-way-round",
        slips=line_reasons(cone.built, [(look.letter, "") for look in cone.looks], built, BUILT))

# %% tags=["mark"] task="cone" points=9

# %% [markdown] tags=["task"]
# ## 9. Road speed and speed drive
#
# First the speed on the road. Then you turn both wheels together by hand and count the turns of the speed pinion. *8 points.*

# %% tags=["rig"]
speed = given.speed
given_table(f"What is known{speed.source}", ["what", "value"],
            [(f"ratio of {speed.gear.name.lower()} with the final drive", speed.total), ("input shaft, r/min", speed.input_rpm),
             ("rolling radius of the tyre, mm", speed.radius_mm), ("speed-drive gear on the differential, teeth", speed.drive.driving),
             ("right pinion, teeth", speed.drive.driven), ("turns of both wheels", speed.wheel_turns),
             ("turns counted at the pinion", f"{speed.counted_turns:g}"), ("least count, turns", speed.step_turns)])

# %% tags=["form"]
speed = given.speed
sheet.form(
    "speed",
    sheet.number("speed-road", f"Road speed in {speed.gear.name.lower()}", "km/h"),
    sheet.number("speed-turns", f"Turns of the right pinion for {speed.wheel_turns} turns of both wheels", "turn"),
    sheet.choice("speed-pinion", "Which pinion has been fitted?", options=speed.pinions),
    sheet.number("speed-shows", "What does the speedometer show at the road speed that you worked out, going by the count?",
                 "km/h"),
    sheet.choice("speed-shown", "What does the speedometer show on the road?", options=speed.shown),
)

# %% tags=["reference"]
speed, where = given.speed, f"{lesson}#road-speed-and-speed-drive"
true = geartrain.road_speed(train, speed.gear.id, Q(speed.input_rpm, "rpm"))
final = float(abs(geartrain.ratio(train, speed.gear.id)) / abs(geartrain.ratio(train, speed.gear.id, to=pinion)))
road = ref("speed-road", 1 * true, weight=2, outcome="speed-drive", shows="how-far-off", tolerance={"relative": 0.01}, lesson=where, slips=[
    Slip(true * final, 0.3, "The final drive is missing: the wheels turn slower than the output shaft."),
    Slip(true / (2 * math.pi), 0.3, "For each turn the wheel rolls its circumference, not its radius."),
    Slip(2 * true, 0.3, "The diameter went in where the radius belongs: the circumference is 2π times the radius.")])
way = Q(speed.wheel_turns * 2 * math.pi * train.rolling_radius_mm, "mm")
wanted = ref("speed-turns", geartrain.speed_drive_turns(train, way), weight=2, outcome="speed-drive", shows="how-far-off", lesson=where,
             tolerance={"absolute": Q(train.least_count_turns / 2, "turn")}, slips=[
                 Slip(Q(speed.wheel_turns * speed.drive.driven / speed.drive.driving, "turn"), 0.3,
                      "This is upside down: more driving teeth turn the pinion faster.")])

# %% tags=["reference"]
counted, (driving, driven) = speed.counted_turns, speed.drive
teeth = round(driven * wanted.m_as("turn") / counted)
if abs(teeth - driven) > 3:  # no such pinion: the count stands for itself
    teeth = round(speed.wheel_turns * driving / counted)
why = {str(2 * driven - teeth): "The number of teeth is off by as much, but the other way: more teeth turn a pinion slower.",
       str(driven): "The count is further off than the least count explains."}
ref("speed-pinion", {str(teeth)}, weight=0.8, outcome="speed-drive", shows="how-far-off", lesson=where, slips=[
    Slip(id, 0, why.get(id, "This pinion would have made another number of turns: work out the count for its teeth."))
    for id in labels(speed.pinions) if id != str(teeth)])

# %% tags=["reference"]
shows = road * counted / wanted.m_as("turn")
ref("speed-shows", shows, weight=2, outcome="speed-drive", shows="how-far-off", lesson=where, tolerance={"relative": 0.01}, slips=[
    Slip(road, 0.2, "This is the true speed; the speedometer goes by the turns of the pinion that is fitted."),
    Slip(road * wanted.m_as("turn") / counted, 0.3, "This is off the other way: a pinion that turns less shows less.")])

# %% tags=["reference"]
off = counted - wanted.m_as("turn")
shown = "right" if abs(off) < speed.step_turns else "low" if off < 0 else "high"
ref("speed-shown", shown, outcome="speed-drive", shows="how-far-off", lesson=where, slips=reasons(speed.shown, shown, {
    "low": "Fewer turns of the pinion show a lower speed; compare your count with the right one.",
    "high": "More turns of the pinion show a higher speed; compare your count with the right one.",
    "right": "The speedometer only knows the turns of its pinion.",
    ("low-first", "high-first"): "The drive sits on the differential, so every gear is off by the same part.",
}))

# %% tags=["mark"] task="speed" points=8

# %% [markdown] tags=["task"]
# ## 10. The last checks in order
#
# Put the last checks, and the steps beside them, in an order that works.
#
# Each check must come early enough to correct what it finds, and late enough to mean something.
#
# Then say why one step of a pair comes before the other. *8 points.*

# %% tags=["form"]
last = given.final
sheet.form(
    "final",
    sheet.order("final-order", "Put these steps in a workable order", steps=last.start),
    sheet.choice("final-why", f"Why does “{last.pair.earlier.name}” come before “{last.pair.later.name}”?",
                 options=last.pair.options),
)

# %% tags=["reference"]
last, where = given.final, f"{lesson}#the-last-checks-in-order"
ref("final-order", order.OrderTask.from_unit(unit, last.operations), weight=3, outcome="order-checks", shows="late-and-early-enough", lesson=where)
whole = order.OrderTask.from_unit(unit)
pair = last.pair
between = order.reasons_between(whole, pair.earlier.id, pair.later.id)
fitting = {rule for reason in between for rule in reason.rules}
ref("final-why", fitting, outcome="order-checks", shows="late-and-early-enough", lesson=where, slips=[
    Slip(rule, 0, "True, but it is the reason for another pair of steps.")
    for rule in labels(pair.options) if rule not in fitting])

# %% tags=["mark"] task="final" points=8

# %% [markdown] tags=["task"]
# ## 11. Hands, tools and loads
#
# Four situations. **Each of them must be right to pass.** *8 points.*

# %% tags=["form"]
sheet.form(
    "hands",
    sheet.each("hands-do", "What do you do in each situation?",
               lines=given.hands.lines, options=given.hands.answers),
)

# %% tags=["reference"]
SAFE = {"by-tool": "go", "eye": "go", "drains": "go", "wipes": "hands", "sleeve": "hands", "gloves": "hands",
        "drill": "power", "impact": "power", "air": "power", "shaft": "lift", "rope": "lift", "alone": "lift"}
LIFTED = "Shafts, covers and ropes are not made to lift by, and one person is too weak: the unit slips, and falls on feet."
POWER = "A power tool or air does not stop when a hand is caught. It spins the train and dry bearings, and throws chips."
DRAWN_IN = "Slow gears draw in a finger or a glove as surely as fast ones; see every hand first."
CALM = "It is turned by hand or lifted by its points, and nobody's hands are near: there is nothing to stop."
why = {id: {"go": CALM, "hands": DRAWN_IN, "power": POWER, "lift": LIFTED}[do] for id, do in SAFE.items()}

# %% tags=["reference"]
ref("hands-do", {one.id: SAFE[one.id] for one in given.hands.lines}, outcome="safe-turning", must_pass=True,
    lesson=f"{lesson}#before-you-start", shows=("by-hand", "lifting-points"),
    slips=line_reasons(bank.lists["hands"], given.hands.answers, SAFE, why, shown=given.hands.lines))

# %% tags=["mark"] task="hands" points=8

# %% [markdown]
# ## Done?
#
# Go back to **start-here** and press **Hand in**. You get a receipt. You can hand in again until the due date; the last one counts.
