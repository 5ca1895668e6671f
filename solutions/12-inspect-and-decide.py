# %% [markdown]
# # Inspect and decide: exercise
#
# <div class="twoshaft-if-missing">If no forms appear below: press <b>Run</b>, then <b>Run All Cells</b>.</div>
#
# Eleven tasks about worn parts: damage in pictures, readings against limits, and what becomes of each part. Take about an hour.
#
# Every answer is saved as you give it; you can stop and come back.
#
# Write numbers the way you are used to, with their unit where there is one.
#
# *Invented unit, for teaching. On a real unit the maker's manual, local codes and licensed practice decide.*

# %% tags=["setup"]
from twoshaft.jobsheet import open_sheet
from twoshaft.plots.damage import dog_picture, lettered
from twoshaft.plots.tables import given_table

sheet = open_sheet("inspect-and-decide")
given, unit = sheet.given, sheet.unit

# %% tags=["reference"]
from twoshaft.models import inspect
from twoshaft.models.order import OrderTask
from twoshaft.questions import bank_of
from twoshaft.units.quantities import Q
from twoshaft_grader.marking import Slip, line_reasons, ref

bank, section = bank_of("inspect-and-decide"), unit.inspect
lesson, fine = "12-inspect-and-decide", {"absolute": Q(0.006, "mm")}

# %% tags=["reference"]
RACES = {
    "fatigue": "Look for holes with sharp cracked edges where the load was: the metal broke out from below.",
    "adhesive": "Look for metal that was dragged in the rolling direction: torn patches, rough to the nail.",
    "abrasive": "Look for a track that is dull all round, with a step at its edge: fine grit ground it away.",
    "current": "Look for fine bars close together all round: sparks jumped at each ball as it turned.",
    "moisture": "Look for dark etched patches, beside the track too: water reaches where no ball runs.",
    "false": "Look for hollows as far apart as the balls, red-brown round them, with no edge: it shook at rest.",
    "overload": "Look for dents as far apart as the balls, with an edge that stands up: a force pressed the balls in.",
    "particles": "Look for small dents of all sizes, anywhere in the track: chips were rolled over.",
}

# %% tags=["reference"]
FLANKS = {
    "macropitting": "Look for holes below the pitch line: the skin of the tooth was tired and broke out.",
    "micropitting": "Look for a frosted grey band that the nail does not find: pits too small to see.",
    "scuffing": "Look for a crowd of scores near root and tip, none at the pitch line: there nothing slides.",
    "scratching": "Look for a few single scores that cross the pitch line: grits went through.",
    "indentation": "Look for a few dents with an edge that stands up: something hard was in the mesh.",
    "bending": "Look for a smooth break with lines like those of a tide: the crack grew for a long time.",
    "overload-break": "Look for a break that is grainy all over: it broke at once.",
}

# %% [markdown] tags=["task"]
# ## 1. Tracks of bearings
#
# Each picture shows part of a bearing's track, unrolled; the balls ran from left to right, and the scale is in millimetres. The names are those of ISO 15243.
#
# *8 points.*

# %% tags=["form"]
from twoshaft.plots.damage import race_picture

races = given.races
shown = {one.letter: race_picture(one.marks) for one in races.pictures}
sheet.form("races",
    sheet.picture("races-which", "Which picture shows it?", lines=races.names, pictures=shown),
    sheet.each("races-came", "How did the damage in these pictures come about?", lines=races.letters, options=races.causes))

# %% tags=["reference"]
races, where = given.races, f"{lesson}#six-groups-of-damage"
kind = {one.letter: inspect.race_damage(one.marks) for one in races.pictures}
letter = {damage: at for at, damage in kind.items()}
which = {one.id: letter[one.id] for one in races.names}
ref("races-which", which, weight=1, outcome="name-bearing-damage", shows="race-names", lesson=where,
    slips=line_reasons(races.names, [(at, "") for at in kind], which, {one.id: RACES[one.id] for one in races.names}))
came = {one.id: kind[one.id] for one in races.letters}
ref("races-came", came, weight=1.5, outcome="name-bearing-damage", shows="race-causes", lesson=where,
    slips=line_reasons(races.letters, races.causes, came, {at: RACES[damage] for at, damage in came.items()}))

# %% tags=["mark"] task="races" points=8

# %% [markdown] tags=["task"]
# ## 2. Teeth of gears
#
# Each picture shows one tooth on its flank, drawn larger than it is: tip above, root below, the pitch line between. The names are those of ISO 10825-1. *10 points.*

# %% tags=["form"]
from twoshaft.plots.damage import flank_picture

flanks = given.flanks
seen = {one.letter: flank_picture(one.marks) for one in flanks.pictures}
sheet.form(
    "flanks",
    sheet.picture("flanks-which", "Which picture shows it?", lines=flanks.names, pictures=seen),
    sheet.each("flanks-came", "How did the damage in these pictures come about?", lines=flanks.letters, options=flanks.causes),
    sheet.number("flanks-pit", "In the picture with holes in the flank: length of the largest hole along the tooth", "mm"),
)

# %% tags=["reference"]
flanks, where = given.flanks, f"{lesson}#teeth-of-gears"
kind = {one.letter: inspect.flank_damage(one.marks) for one in flanks.pictures}
letter = {damage: at for at, damage in kind.items()}
which_tooth = {one.id: letter[one.id] for one in flanks.names}
ref("flanks-which", which_tooth, weight=1.5, outcome="name-gear-damage", shows="flank-names", lesson=where,
    slips=line_reasons(flanks.names, [(at, "") for at in kind], which_tooth, {one.id: FLANKS[one.id] for one in flanks.names}))
tooth_came = {one.id: kind[one.id] for one in flanks.letters}
ref("flanks-came", tooth_came, weight=1.5, outcome="name-gear-damage", shows="flank-causes", lesson=where,
    slips=line_reasons(flanks.letters, flanks.causes, tooth_came, {at: FLANKS[damage] for at, damage in tooth_came.items()}))

# %% tags=["reference"]
(pitted,) = (one for one in flanks.pictures if kind[one.letter] == "macropitting")
longest = max(pitted.marks, key=lambda one: one.long_mm)
ref("flanks-pit", Q(longest.long_mm, "mm"), weight=0.6,
    outcome="name-gear-damage", shows="flank-names", tolerance={"absolute": Q(0.3, "mm")}, lesson=where, slips=[
        Slip(Q(longest.x_mm + longest.long_mm / 2, "mm"), 0, "This is where the hole ends on the scale; take off where it begins.")])

# %% tags=["mark"] task="flanks" points=10

# %% [markdown] tags=["task"]
# ## 3. Dog teeth
#
# Four gears, four dog teeth of each, seen from the side. Where a point is worn, a flat is left; a scale stands over it, five marks to a millimetre.
#
# A gear is used again when its widest flat is below the limit by more than the uncertainty of the reading, and no corner is broken off. **Every line of the second question must be right to pass.** *9 points.*

# %% tags=["rig"]
lettered((one.letter, dog_picture(one.flats_mm, one.chips_mm, one.begins_mm)) for one in given.dogs.gears)

# %% tags=["rig"]
given_table("Of this unit", ["what", "mm"],
            [("widest flat allowed", f"{unit.inspect.dogs.flat_most_mm:g}"),
             ("uncertainty of a flat that is read on the scale", f"{unit.inspect.dogs.unsure_mm:g}")])

# %% tags=["form"]
dogs = given.dogs
sheet.form("dogs",
    sheet.number("dogs-flat", f"The widest flat of gear {dogs.gears[0].letter}", "mm"),
    sheet.each("dogs-do", "What becomes of each gear?",
               lines=[(one.letter, f"Gear {one.letter}") for one in dogs.gears], options=dogs.answers))

# %% tags=["reference"]
dogs, limit, where = given.dogs, section.dogs, f"{lesson}#dog-teeth"
first = dogs.gears[0]
widest = max(range(len(first.flats_mm)), key=first.flats_mm.__getitem__)
ref("dogs-flat", Q(first.flats_mm[widest], "mm"), weight=1,
    outcome="judge-dog-teeth", shows="dogs-decide", tolerance={"absolute": Q(0.11, "mm")}, lesson=where, slips=[
        Slip(Q(first.flats_mm[widest] + first.begins_mm[widest], "mm"), 0, "This is where the flat ends on its scale; take off where it begins.")])

# %% tags=["reference"]
do, why = {}, {}
DOGS = {"use": "Its widest flat stays inside the limit by more than the uncertainty, and all corners are there.",
        "renew": "Its widest flat is beyond the limit by more than the uncertainty: the points of sleeve and gear meet, and it grates.",
        "again": "Its widest flat lies nearer to the limit than the uncertainty: the scale proves nothing either way.",
        "broken": "A corner is broken off: what is left of the point steers the sleeve to one side, whatever the flats are."}
for gear in dogs.gears:
    proves = inspect.verdict(Q(max(gear.flats_mm), "mm"), Q(limit.flat_most_mm, "mm"), Q(limit.unsure_mm, "mm"), least=False)
    do[gear.letter] = "renew" if any(gear.chips_mm) else {"good": "use", "bad": "renew", "again": "again"}[proves]
    why[gear.letter] = DOGS["broken" if any(gear.chips_mm) else do[gear.letter]]
ref("dogs-do", do, weight=2, outcome="judge-dog-teeth", shows="dogs-decide", must_pass=True, lesson=where,
    slips=line_reasons([(id, "") for id in do], dogs.answers, do, why))

# %% tags=["mark"] task="dogs" points=9

# %% [markdown] tags=["task"]
# ## 4. What a reading proves
#
# You read one size four times. Work out how far its mean must keep off the limit, with a guard band of 1.65 standard uncertainties of the mean.
#
# Then judge means of other parts in the same way. **Every line of the last question must be right to pass.** *12 points.*

# %% tags=["rig"]
guard = given.guard
given_table(guard.what, ["what", "mm"],
            [("readings", ", ".join(f"{one:g}" for one in guard.readings_mm)),
             ("smallest size allowed" if guard.least else "largest size allowed", f"{guard.limit_mm:g}"),
             ("standard uncertainty of one reading", f"{guard.tool_mm:g}")])

# %% tags=["form"]
guard = given.guard
sheet.form(
    "guard",
    sheet.number("guard-mean", "Mean of the readings", "mm"),
    sheet.number("guard-u", "Standard uncertainty of the mean", "mm"),
    sheet.number("guard-band", "Guard band", "mm"),
    sheet.number("guard-edge", "Size from which on the part is proven good", "mm"),
    sheet.each("guard-do", "Other parts. What does each mean prove, and what do you do?",
               lines=[(one.id, one.text) for one in guard.others], options=guard.answers),
)

# %% tags=["reference"]
guard, where = given.guard, f"{lesson}#what-a-reading-proves"
count, tight = len(guard.readings_mm), {"relative": 0.01, "absolute": Q(0.0003, "mm")}
ref("guard-mean", Q(sum(guard.readings_mm) / count, "mm"), weight=0.7, outcome="decide-by-guard",
    shows="band-worked", tolerance={"absolute": Q(max(guard.tool_mm / 4, 0.0006), "mm")}, lesson=where, slips=[
        Slip(Q(sum(guard.readings_mm), "mm"), 0.3, "This is the sum; divide it by the number of readings.")])
tool, bound = Q(guard.tool_mm, "mm"), Q(guard.limit_mm, "mm")
unsure = ref("guard-u", inspect.mean_uncertainty(tool, count), weight=1,
    outcome="decide-by-guard", shows="band-worked", tolerance=tight, lesson=where, slips=[
        Slip(tool, 0.2, "This is one reading; the mean of four is surer."),
        Slip(tool / count, 0.3, "Four readings make it half as large, not a quarter.")])
band = ref("guard-band", inspect.guard_band(unsure), weight=1,
    outcome="decide-by-guard", shows="band-worked", tolerance=tight, lesson=where, slips=[
        Slip(2 * unsure, 0.4, "Two standard uncertainties guard both sides; here one side is enough, with 1.65.")])

# %% tags=["reference"]
toward = 1 if guard.least else -1
ref("guard-edge", bound + toward * band, weight=1, outcome="decide-by-guard", shows="band-worked",
    tolerance={"absolute": Q(max(guard.tool_mm / 10, 0.0006), "mm")}, lesson=where, slips=[
        Slip(bound - toward * band, 0.2, "This lies beyond the limit: from here on the part is proven bad."),
        Slip(1 * bound, 0, "At the limit itself every second part is bad.")])

# %% tags=["reference"]
PROVES = {"use": "It lies on the good side of the limit by more than the guard band: nothing speaks against it.",
          "renew": "It is beyond the limit by more than the guard band: used again, it brings the unit back.",
          "again": "It is nearer to the limit than the guard band: read it more often or with a better tool."}
proven = {}
for one in guard.others:
    reach = inspect.guard_band(Q(one.u_mm, "mm"))
    proves = inspect.verdict(Q(one.mean_mm, "mm"), Q(one.limit_mm, "mm"), reach, one.least)
    proven[one.id] = {"good": "use", "bad": "renew", "again": "again"}[proves]
ref("guard-do", proven, weight=3, outcome="decide-by-guard", shows="proven", must_pass=True, lesson=where,
    slips=line_reasons([(id, "") for id in proven], guard.answers, proven, {id: PROVES[to] for id, to in proven.items()}))

# %% tags=["mark"] task="guard" points=12

# %% [markdown] tags=["task"]
# ## 5. What it costs to be wrong
#
# A reading lies near its limit, which is the smallest size allowed.
#
# The second table gives the chance that the part is bad, by how many standard uncertainties the reading lies inside. Then decide cases. A sure measurement costs its hours, and the part is renewed only if it is bad. *11 points.*

# %% tags=["rig"]
cost = given.cost
given_table("Your part", ["what", "value"],
            [("mean of the readings, mm", f"{cost.mean_mm:.4f}"),
             ("smallest size allowed, mm", f"{cost.limit_mm:.2f}"),
             ("standard uncertainty of the mean, mm", f"{cost.u_mm:.3f}"),
             ("renewing the part, hours", f"{cost.renew_h:g}"),
             ("stripping the unit again, hours", f"{cost.again_h:g}")])

# %% tags=["rig"]
given_table("Chance that a part is bad", ["reading inside its limit by so many standard uncertainties", "chance, %"],
            [("0", 50),
             ("0.5", 30.9),
             ("1", 15.9),
             ("1.5", 6.7),
             ("2", 2.3),
             ("2.5", 0.6),
             ("3", 0.1)])

# %% tags=["form"]
cost = given.cost
sheet.form(
    "cost",
    sheet.number("cost-inside", "By how many standard uncertainties does your reading lie inside?", ""),
    sheet.number("cost-bad", "Chance that your part is bad", "%"),
    sheet.number("cost-use", "What using it again costs on average", "h"),
    sheet.number("cost-even", "Chance of a bad part above which renewing is cheaper than using it", "%"),
    sheet.each("cost-do", "Other parts. What is the cheapest on average?",
               lines=[(one.id, one.text) for one in cost.cases], options=cost.answers),
)

# %% tags=["reference"]
cost, where = given.cost, f"{lesson}#what-it-costs-to-be-wrong"
mean, bound, u = Q(cost.mean_mm, "mm"), Q(cost.limit_mm, "mm"), Q(cost.u_mm, "mm")
times = ref("cost-inside", (cost.mean_mm - cost.limit_mm) / cost.u_mm, weight=0.7, outcome="weigh-errors", shows="cost-worked",
    tolerance={"relative": 0.02}, lesson=where, slips=[])
bad = ref("cost-bad", Q(100 * inspect.chance_beyond(bound + times * u, bound, u, least=True), "percent"), weight=0.8,
          outcome="weigh-errors", shows="cost-worked", tolerance={"relative": 0.04}, lesson=where, slips=[
              Slip(Q(100 * (1 - inspect.chance_beyond(mean, bound, u, least=True)), "percent"), 0.2, "This is the chance that the part is good.")])
ref("cost-use", Q(cost.again_h, "hour") * bad.m_as(""), weight=1,
    outcome="weigh-errors", shows="cost-worked", tolerance={"relative": 0.04}, lesson=where, slips=[
        Slip(Q(cost.renew_h, "hour") * bad.m_as(""), 0.2, "A bad part that is used costs a second strip-down, not only the part.")])
renew, again = Q(cost.renew_h, "hour"), Q(cost.again_h, "hour")
ref("cost-even", Q(100 * inspect.break_even(renew, again), "percent"), weight=1, outcome="weigh-errors", shows="cost-worked",
    tolerance={"relative": 0.02}, lesson=where, slips=[
        Slip(Q(100 * cost.renew_h / (cost.again_h + cost.renew_h), "percent"), 0.4,
             "Renewing costs its hours in every case, so divide by the strip-down alone.")])

# %% tags=["reference"]
cheapest, why = {}, {}
for one in cost.cases:
    ways = inspect.ways_cost(one.bad_percent / 100, one.renew_h, one.again_h, one.look_h)
    cheapest[one.id] = min(ways, key=ways.get)
    why[one.id] = f"On average using it costs {ways['use']:.1f} h, renewing {ways['renew']:.1f} h, measuring first {ways['again']:.1f} h."
ref("cost-do", cheapest, weight=2.5, outcome="weigh-errors", shows="cheapest", lesson=where,
    slips=line_reasons([(id, "") for id in cheapest], cost.answers, cheapest, why))

# %% tags=["mark"] task="cost" points=11

# %% [markdown] tags=["task"]
# ## 6. End float and circlip
#
# The circlip sets the end float of a gear. Take the thickness that brings the float nearest to the middle of what is allowed.
#
# **Every line of the last question must be right to pass.** *11 points.*

# %% tags=["rig"]
clip = given.clip
given_table(f"Your gear: {clip.what}", ["what", "mm"],
            [("end float found", f"{clip.float_mm:.2f}"),
             ("circlip that was in", f"{clip.fitted_mm:.2f}"),
             ("end float allowed", f"{clip.allowed_mm[0]:.2f} to {clip.allowed_mm[1]:.2f}"),
             ("circlips of the set", ", ".join(f"{one:.2f}" for one in clip.set_mm))])

# %% tags=["form"]
clip = given.clip
sheet.form(
    "clip",
    sheet.number("clip-ideal", "Thickness that would give the middle of the end float allowed", "mm"),
    sheet.number("clip-taken", "Circlip that you take from the set", "mm"),
    sheet.number("clip-then", "End float with it", "mm"),
    sheet.each("clip-do", f"Other gears, with a set of {clip.others_set_mm[0]:.2f} to {clip.others_set_mm[-1]:.2f} mm in steps of 0.05 mm. Which circlip goes in?",
               lines=[(one.id, one.text) for one in clip.others], options=clip.answers),
)

# %% tags=["reference"]
clip, where = given.clip, f"{lesson}#end-float-and-circlip"
middle, fitted = Q(sum(clip.allowed_mm) / 2, "mm"), Q(clip.fitted_mm, "mm")
play = Q(clip.float_mm, "mm")
ideal = ref("clip-ideal", fitted + play - middle, weight=1,
    outcome="set-gear-float", shows="clip-worked", tolerance=fine, lesson=where, slips=[
    Slip(fitted - play + middle, 0.2, "This one changes the float in the wrong direction: a thicker circlip takes float away."),
    Slip(fitted + play, 0.3, "This one takes all float away; the gear then runs hot on its face.")])
taken = ref("clip-taken", Q(min(clip.set_mm, key=lambda one: abs(one - ideal.m_as("mm"))), "mm"), weight=1,
    outcome="set-gear-float",
    shows="clip-worked", tolerance=fine, lesson=where, slips=[])
ref("clip-then", inspect.float_with(play, fitted, taken), weight=1,
    outcome="set-gear-float", shows="clip-worked", tolerance=fine, lesson=where, slips=[
        Slip(play + taken - fitted, 0.2, "A thicker circlip takes float away, a thinner one gives it.")])

# %% tags=["reference"]
goes_in, why, ends = {}, {}, (clip.others_set_mm[0], clip.others_set_mm[-1])
for one in clip.others:
    play, was = Q(one.float_mm, "mm"), Q(one.fitted_mm, "mm")
    least = inspect.float_with(play, was, Q(ends[1], "mm")).m
    inside = one.low_mm <= one.float_mm <= one.high_mm
    goes_in[one.id] = "same" if inside else "thinner" if one.float_mm < one.low_mm else "thicker" if least <= one.high_mm else "none"
    why[one.id] = {"same": "The float lies inside what is allowed: leave what is right as it is.",
                   "thicker": "There is too much float, and a thicker one of the set takes it away.",
                   "thinner": "There is too little float, and a thinner one of the set gives it back.",
                   "none": f"With the thickest of the set {least:.2f} mm are left: a face is worn, find it before you close."}[goes_in[one.id]]
ref("clip-do", goes_in, weight=3, outcome="set-gear-float", shows="clip-decide", must_pass=True, lesson=where,
    slips=line_reasons([(id, "") for id in goes_in], clip.answers, goes_in, why))

# %% tags=["mark"] task="clip" points=11

# %% [markdown] tags=["task"]
# ## 7. Where rings and needles sat
#
# A ring that crept has worn its seat or itself. Work out how loose your own ring is, and the play of a gear on its needles.
#
# Then say what is done with other rings. **Every line of the last question must be right to pass.** *10 points.*

# %% tags=["rig"]
seats = given.seats
given_table(
    f"Your ring: {seats.what}; and a gear on needles",
    ["what", "mm"],
    [("bore, three directions", ", ".join(f"{one:.3f}" for one in seats.bores_mm)),
     ("ring", f"{seats.ring_mm:.3f}"),
     ("bore of the gear", f"{seats.gear_bore_mm:.3f}"),
     ("shaft under the needles", f"{seats.shaft_mm:.3f}"),
     ("a needle", f"{seats.needle_mm:.3f}")],
)

# %% tags=["form"]
seats = given.seats
sheet.form(
    "seats",
    sheet.number("seats-loose", "Mean bore less the ring", "mm"),
    sheet.number("seats-needles", "Play of the gear on its needles, on the diameter", "mm"),
    sheet.each("seats-do", "Other rings that had crept a little. What is done?",
               lines=[(one.id, one.text) for one in seats.others], options=seats.answers)
)

# %% tags=["reference"]
seats, where, close = given.seats, f"{lesson}#where-rings-sat", {"absolute": Q(0.0011, "mm")}
ref("seats-loose", Q(sum(seats.bores_mm) / 3 - seats.ring_mm, "mm"), weight=1,
    outcome="judge-seats", shows="seat-worked", tolerance=close, lesson=where, slips=[
        Slip(Q(max(seats.bores_mm) - seats.ring_mm, "mm"), 0.4, "This is the largest of the three directions, not their mean.")])
gear_bore, shaft, needle = (Q(one, "mm") for one in (seats.gear_bore_mm, seats.shaft_mm, seats.needle_mm))
ref("seats-needles", inspect.needle_play(gear_bore, shaft, needle), weight=1,
    outcome="judge-seats", shows="seat-worked", tolerance=close, lesson=where, slips=[
        Slip(gear_bore - shaft - needle, 0.2, "A needle stands on either side of the shaft: take it off twice.")])

# %% tags=["reference"]
seat_do, why = {}, {}
for one in seats.others:
    small, wide = one.ring_mm < one.ring_least_mm, one.bore_mm > one.bore_most_mm
    seat_do[one.id] = "ring" if small else "bore" if wide else "use"
    why[one.id] = {"use": "Ring and bore both lie inside what is allowed: nothing is worn out.",
                   "ring": "The ring is smaller than allowed, the bore is not larger: a new bearing sits tight again.",
                   "bore": "The bore is larger than allowed: a new bearing creeps in it as the old one did."}[seat_do[one.id]]
ref("seats-do", seat_do, weight=2, outcome="judge-seats", shows="seat-decide", must_pass=True, lesson=where,
    slips=line_reasons([(id, "") for id in seat_do], seats.answers, seat_do, why))

# %% tags=["mark"] task="seats" points=10

# %% [markdown] tags=["task"]
# ## 8. The shaft where its seal runs
#
# **Every line of the last question must be right to pass.** *7 points.*

# %% tags=["rig"]
given_table(
    "Shafts where the lip runs",
    ["what", "mm"],
    [
        ("your shaft, diameter beside the groove", f"{given.seal.beside_mm:.2f}"),
        ("your shaft, diameter in the groove", f"{given.seal.groove_mm:.2f}"),
        ("a new lip seals over a groove as deep as", f"{unit.inspect.seal.groove_most_mm:g}"),
        ("a repair sleeve bridges a groove as deep as", f"{unit.inspect.seal.sleeve_most_mm:g}"),
    ],
)

# %% tags=["form"]
seal = given.seal
sheet.form("seal",
    sheet.number("seal-depth", "Depth of the groove in your shaft", "mm"),
    sheet.each("seal-do", "Other shafts. What is done with each?",
               lines=[(one.id, one.text) for one in seal.others], options=seal.answers))

# %% tags=["reference"]
seal, where = given.seal, f"{lesson}#the-shaft-at-the-seal"
beside, within = Q(seal.beside_mm, "mm"), Q(seal.groove_mm, "mm")
ref("seal-depth", inspect.groove_depth(beside, within), weight=1, outcome="judge-seats", shows="seat-worked",
    tolerance={"absolute": Q(0.003, "mm")}, lesson=where, slips=[
        Slip(beside - within, 0.2, "This is what the diameter lost; on one side it is half of that.")])
seal_do, why = {}, {}
for one in seal.others:
    depth = inspect.groove_depth(Q(one.beside_mm, "mm"), Q(one.groove_mm, "mm")).m
    seal_do[one.id] = "lip" if depth <= section.seal.groove_most_mm + 1e-9 else "sleeve" if depth <= section.seal.sleeve_most_mm + 1e-9 else "shaft"
    why[one.id] = f"Half of what the diameter lost is {depth:.3f} mm; " + {"lip": "a new lip seals over that.",
                   "sleeve": "a new lip leaks there, a repair sleeve bridges it.",
                   "shaft": "no sleeve bridges that, and under a sleeve the seal would leak again."}[seal_do[one.id]]
ref("seal-do", seal_do, weight=2, outcome="judge-seats", shows="seal-decide", must_pass=True, lesson=where,
    slips=line_reasons([(id, "") for id in seal_do], seal.answers, seal_do, why))

# %% tags=["mark"] task="seal" points=7

# %% [markdown] tags=["task"]
# ## 9. Repair a thread
#
# A thread in the case is stripped and gets a wire insert. Some of the steps are left out. Several orders are right. *6 points.*

# %% tags=["form"]
sheet.form("thread", sheet.order("thread-order", "Put these steps in an order that works", steps=given.thread.start))

# %% tags=["reference"]
ref("thread-order", OrderTask.from_unit(inspect.load_repairs(), given.thread.operations),
    outcome="repair-thread", shows="thread-steps", lesson=f"{lesson}#repair-a-thread")

# %% tags=["mark"] task="thread" points=6

# %% [markdown] tags=["task"]
# ## 10. What becomes of each part
#
# Four parts on the bench, each as its line says. Then four worn parts of the shift, drawn beside a scale in millimetres.
#
# The two pads of a fork may differ by 0.5 mm. If they differ by more, find the cause. If a piece is missing, find the piece. **Every line of both questions must be right to pass.** *12 points.*

# %% tags=["rig"]
from twoshaft.models.inspect import WORN_LIMITS_MM, worn_of
from twoshaft.plots.worn import worn_picture

lettered((one.letter, worn_picture(worn_of(one.part, one.wears, one.wear_mm, one.at_mm))) for one in given.parts.pictures)

# %% tags=["rig"]
WORN_LIMITS = {"sleeve": "flat on a tooth of a sleeve, at most", "hub": "notch in a spline of a hub, at most",
               "key": "ridge of a key, at least", "fork": "pad of a fork, at least", "spring": "length of a detent spring, at least"}
given_table("Limits, invented for teaching", ["what", "mm"],
            [(words, f"{WORN_LIMITS_MM[part]:g}") for part, words in WORN_LIMITS.items()])

# %% tags=["form"]
sheet.form("parts",
    sheet.each("parts-do", "What do you do with each part on the bench?", lines=given.parts.lines, options=given.parts.answers),
    sheet.each("parts-worn", "What do you do with each part in the pictures?", lines=given.parts.drawn, options=given.parts.drawn_answers))

# %% tags=["reference"]
PARTS = {"ring-grooves": "use", "pad-even": "use", "spring-length": "use", "key-ridge": "use", "rib": "use",
         "ring-grip": "renew", "pad-slides": "renew", "sleeve-splines": "renew", "fork-plate": "renew",
         "dowel-edge": "dress", "first-turn": "dress", "spline-edge": "dress",
         "pad-page": "again", "dark-teeth": "again", "shaft-wash": "again", "key-read": "again"}
BECOMES = {"use": "It is inside its limit, or its flaw does no harm: a new part would be no better.",
           "renew": "It is worn out or bent: bending it back, or hoping, does not make it sound again.",
           "dress": "Only raised metal is in the way: a fine stone or a file takes it off, and the part is as before.",
           "again": "What is known does not decide: get the limit, clean it, let it cool, or read it better."}
ref("parts-do", {one.id: PARTS[one.id] for one in given.parts.lines}, outcome="use-or-renew", must_pass=True, shows="part-by-part",
    lesson=f"{lesson}#part-by-part", slips=line_reasons(bank.lists["parts"], given.parts.answers, PARTS,
                                                       {id: BECOMES[to] for id, to in PARTS.items()}, shown=given.parts.lines))

# %% tags=["reference"]
worn = {one.letter: inspect.worn_of(one.part, one.wears, one.wear_mm, one.at_mm) for one in given.parts.pictures}
fate = {letter: inspect.becomes(one) for letter, one in worn.items()}
said = {letter: inspect.judged(one)[1] for letter, one in worn.items()}
because = {letter: f"On the scale and by the table: {words}." for letter, words in said.items()}
ref("parts-worn", fate, outcome="use-or-renew", must_pass=True, shows="worn-part", lesson=f"{lesson}#keys-and-fork-pads",
    slips=line_reasons(given.parts.drawn, given.parts.drawn_answers, fate, because))

# %% tags=["mark"] task="parts" points=12

# %% [markdown] tags=["task"]
# ## 11. Nobody is hurt
#
# Four situations while parts are inspected. **Every line must be right to pass.** *8 points.*

# %% tags=["form"]
sheet.form("safe", sheet.each("safe-do", "What do you do in each situation?", lines=given.safe.lines, options=given.safe.answers))

# %% tags=["reference"]
SAFE = {"tap": "eyes", "plug": "eyes", "pin": "eyes", "spin-air": "still", "chips-air": "still",
        "dry-spin": "still", "hold": "clear", "glove": "clear", "sleeve-cuff": "clear", "lamp": "go", "clamped-case": "go", "oiled-bearing": "go"}
ACTS = {
    "go": "Nothing flies, falls or catches here: there is nothing to stop.",
    "eyes": "Chips, springs and struck parts fly off faster than you can blink, at anybody who stands near.",
    "still": "Air throws chips and rollers at faces; a dry bearing cuts its track as it spins.",
    "clear": "The drill takes along what it catches: a loose case, a glove, a cuff, and the hand in it.",
}
ref("safe-do", {one.id: SAFE[one.id] for one in given.safe.lines},
    outcome="inspect-safely", must_pass=True, shows="drill-spring-air", lesson=f"{lesson}#before-you-start",
    slips=line_reasons(bank.lists["safe"], given.safe.answers, SAFE, {id: ACTS[to] for id, to in SAFE.items()}, shown=given.safe.lines))

# %% tags=["mark"] task="safe" points=8

# %% [markdown]
# ## Done?
#
# Go back to **start-here** and press **Hand in**. You get a receipt. You can hand in again until the due date; the last one counts.
