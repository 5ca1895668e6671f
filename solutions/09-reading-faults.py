# %% [markdown]
# # Reading faults backwards: exercise
#
# <div class="twoshaft-if-missing">If no forms appear below: press <b>Run</b>, then <b>Run All Cells</b>.</div>
#
# Eleven tasks about working back from what a check shows to what was built wrongly. Take about an hour. Every answer is saved as you give it; you can stop and come back.
#
# *Invented unit, for teaching. On a real unit the maker's manual, local codes and licensed practice decide.*

# %% tags=["setup"]
from twoshaft.jobsheet import open_sheet
from twoshaft.plots.tables import given_table
from twoshaft.rigs import own_checks

sheet = open_sheet("reading-faults")
given, unit = sheet.given, sheet.unit

# %% tags=["reference"]
from twoshaft.models import faults, geartrain
from twoshaft.questions import bank_of
from twoshaft.records import labels
from twoshaft.units.quantities import Q
from twoshaft_grader.marking import Slip, line_reasons, reasons, ref

bank = bank_of("reading-faults")
where = "09-reading-faults"

# %% [markdown] tags=["task"]
# ## 1. What is done with this unit?
#
# Finished units, due to be fitted today, each with one of its checks. Say what you do, case by case; then what some faults would do on the road. **You must get every line of both questions right to pass.** *10 points.*

# %% tags=["form"]
sheet.form(
    "stop",
    sheet.each("stop-cases", "What do you do in each case?", lines=given.stop.cases, options=given.stop.do),
    sheet.each("stop-road", "If it were fitted all the same: what would each do on the road?",
               lines=given.stop.found, options=given.stop.road),
)

# %% tags=["reference"]
at_lesson = f"{where}#before-you-start"
DO = {"jumps": "tag", "slips-by": "tag", "both-in": "tag", "later": "tag",
      "fewer": "again", "held": "again", "shorter": "again", "rag": "again",
      "stays": "go", "stops": "go", "single": "go", "counted": "go"}
ONCE = "A check that passes once and fails once has failed: something in there lies where it likes."
ALL_DONE = "It was made in full, as the card asks, and it passed each time: nothing speaks against the unit."

# %% tags=["reference"]
ref("stop-cases", {id: DO[id] for id in labels(given.stop.cases)}, outcome="stop-unsafe", must_pass=True, weight=5,
    lesson=at_lesson,
    slips=line_reasons(bank.lists["cases"], bank.lists["do"], DO, {
        "jumps": "It jumps out sometimes, so it has failed. The yard is a road as well: the fault shows when somebody is in the way.",
        "slips-by": "Once is enough: the next time may be on the road, at speed. " + ONCE,
        "both-in": "Force hides the fault for a while, and may have bent sound parts. " + ONCE,
        "later": "The passes after it do not wipe out the failure, however much the unit is wanted. " + ONCE,
        "fewer": "It never failed, but it was tried less often than the card asks: the rest is not known yet.",
        "held": "Half the figure comes from the wheel that was held: the way of counting is at fault, not the unit.",
        "shorter": "It stayed in, but for less time than the card asks: what happens after that is not known yet.",
        "rag": "The rag took part of the pull, so the figure says nothing of the unit, good or bad.",
        **dict.fromkeys(("stays", "stops", "single", "counted"), ALL_DONE),
    }, shown=given.stop.cases))

# %% tags=["reference"]
ROAD = {"lockout": "lock", "two-at-once": "lock", "gears-held": "rolls",
        "reverse": "lock", "hard": "lock", "second": "lock", "pin": "lock",
        "comes-out": "rolls", "lets-go": "rolls", "no-spring": "rolls", "fork": "rolls",
        "stiff": "nobody", "whine": "nobody", "scratch": "nobody", "initials": "nobody"}
TO_REVERSE = "Reverse goes in while the car moves forward: gears that want to turn both ways stop the wheels dead."
TWO = "Two gears at once ask two speeds of one shaft: it stops, and the wheels with it."
OUT = "No gear is in any more: the wheels turn freely, and the engine neither drives nor brakes the car."
own_kinds = [(kind, kind) for kind in ("lockout", "two-at-once", "gears-held")]

# %% tags=["reference"]
ref("stop-road", {id: ROAD[id] for id in labels(given.stop.found)}, outcome="stop-unsafe", must_pass=True, weight=5,
    lesson=at_lesson, slips=line_reasons([*own_kinds, *bank.lists["found"]], bank.lists["road"], ROAD, {
        **dict.fromkeys(("lockout", "reverse", "hard"), TO_REVERSE),
        **dict.fromkeys(("two-at-once", "second", "pin"), TWO),
        **dict.fromkeys(("gears-held", "comes-out", "lets-go", "no-spring", "fork"), OUT),
        "stiff": "It is to be mended, but the gear goes in, stays in and comes out: the driver feels it and is not hurt.",
        "whine": "A sound calls for a look, and the teeth were looked at: they are sound, and the gear stays in.",
        "scratch": "A scratch where nothing seals, screws or hangs does nothing to the gears.",
        "initials": "A gap in the record is to be filled today; the gear itself stays in.",
    }, shown=given.stop.found))

# %% tags=["mark"] task="stop" points=10

# %% [markdown] tags=["task"]
# ## 2. What explains it?
#
# The record of some checks of a unit in which **one** thing is wrong. Tick every misbuild that explains all of it, what failed and what passed. *6 points.*

# %% tags=["rig"]
given_table("As written down", ["check", "what it shows"], [(row.name, row.words) for row in given.explain.record])

# %% tags=["form"]
sheet.form(
    "explain",
    sheet.choices("explain-all", "Which of these explain the whole record?", options=given.explain.options),
)

# %% tags=["reference"]
observed = {row.check: row.key for row in given.explain.record}
offered = [key for key, _ in given.explain.options]
fits = set(faults.explain(unit, observed, among=[(key,) for key in offered]).singles)
ref("explain-all", fits, outcome="explain-symptom", lesson=f"{where}#from-symptom-to-misbuild",
    slips=[*(Slip({key}, 1 / len(fits), "It explains the record, but it is not the only one that does.") for key in fits),
           *(Slip(key, 0, f"With one that you ticked, some line would read otherwise: “{name}”.")
             for key, name in given.explain.options if key not in fits)])

# %% tags=["mark"] task="explain" points=6

# %% [markdown] tags=["task"]
# ## 3. Which check next?
#
# **Exactly one** of five misbuilds is in the unit. “Often” says in how many of 1000 units each is met. Work out how likely one of them is now, and how likely a check is to fail; then choose the check that tells most **for its minutes**. *13 points.*

# %% tags=["rig"]
n = given.next
given_table("One of these is in the unit", ["letter", "misbuild", "often, in 1000"], [(row.letter, row.name, row.often) for row in n.suspects])

# %% tags=["rig"]
given_table("What each check would show", ["check", "minutes", "shows"], [(row.name, row.minutes, row.shows) for row in n.checks])

# %% tags=["form"]
n = given.next
letter = next(row.letter for row in n.suspects if row.id == n.asked)
named = next(row.name for row in n.checks if row.id == n.asked_check)
sheet.form(
    "next",
    sheet.number("next-chance", f"How likely is it now that {letter} is what is wrong?", "%"),
    sheet.number("next-fails", f"How likely is it that this check does not pass: {named}?", "%"),
    sheet.choice("next-best", "Which check do you make next?", options=[(row.id, row.name) for row in n.checks]),
)

# %% tags=["reference"]
n, at_lesson = given.next, f"{where}#what-a-check-is-worth"
five = [(row.id,) for row in n.suspects]
found = faults.explain(unit, {}, among=five)
chance = dict(zip(found.sets, (100 * c for c in found.chances)))
mine = Q(chance[n.asked,], "percent")
ref("next-chance", mine, outcome="weigh-check", weight=4, tolerance={"absolute": Q(0.6, "percent")}, lesson=at_lesson,
    slips=[Slip(Q(100 / len(five), "percent"), 0.25, "They are not all met equally often; weigh them by it."),
           Slip(Q(unit.faults.misbuild_by_id(n.asked).often_per_1000 / 10, "percent"), 0.25,
                "That is how often it is met in any unit; here one of the five is in for certain.")])

# %% tags=["reference"]
passing = faults.explain(unit, {n.asked_check: faults.PASSES}, among=five).sets
fails = Q(100 - sum(chance[one] for one in passing), "percent")
ref("next-fails", fails, outcome="weigh-check", weight=4, tolerance={"absolute": Q(0.6, "percent")}, lesson=at_lesson,
    slips=[Slip(Q(100, "percent") - fails, 0.5, "That is how likely it is to pass."),
           Slip(Q(100 * (5 - len(passing)) / 5, "percent"), 0.25,
                "You counted the suspects; weigh each by how often it is met.")])

# %% tags=["reference"]
ranked = faults.next_check(unit, {}, among=five)
tells = {one.check: one for one in ranked}
most = max(ranked, key=lambda one: one.bits).check
ref("next-best", ranked[0].check, outcome="weigh-check", weight=5, lesson=at_lesson,
    slips=[Slip(row.id, 0, "All five show the same in it, so it tells nothing." if row.id not in tells
                else "It tells most, but it takes long; look at what a minute of it tells." if row.id == most
                else "Another check tells more for each of its minutes.")
           for row in n.checks if row.id != ranked[0].check])

# %% tags=["mark"] task="next" points=13

# %% [markdown] tags=["task"]
# ## 4. Which checks are worth nothing now?
#
# Four misbuilds are left; **one** of them is in the unit. Tick every check that cannot tell you anything more about which. *5 points.*

# %% tags=["rig"]
given_table("What is left", ["misbuild"], [(name,) for _, name in given.dead.suspects])

# %% tags=["form"]
sheet.form(
    "dead",
    sheet.choices("dead-which", "Which of these tell nothing more?", options=given.dead.checks),
)

# %% tags=["reference"]
left = [(key,) for key, _ in given.dead.suspects]
telling = {one.check for one in faults.next_check(unit, {}, among=left)}
ref("dead-which", {key for key, _ in given.dead.checks if key not in telling},
    outcome="weigh-check", lesson=f"{where}#what-a-check-is-worth",
    slips=[Slip(key, 0, f"With one of the four it reads otherwise than with another: “{name}”.")
           for key, name in given.dead.checks if key in telling])

# %% tags=["mark"] task="dead" points=5

# %% [markdown] tags=["task"]
# ## 5. What does a plan cost?
#
# Again **exactly one** of the four is in the unit. You make the checks of a plan one after the other and stop as soon as only one suspect is left. What does each plan take **on average**? *15 points.*

# %% tags=["rig"]
p = given.plan
given_table("One of these is in the unit", ["letter", "misbuild", "often, in 1000"], [(row.letter, row.name, row.often) for row in p.suspects])

# %% tags=["rig"]
given_table("The checks", ["no.", "check", "minutes", "shows"], [(row.number, row.name, row.minutes, row.shows) for row in p.checks])

# %% tags=["form"]
p = given.plan
first, second = p.plans
sheet.form(
    "plan",
    sheet.number("plan-first", f"On average: {first.text}", "min"),
    sheet.number("plan-second", f"On average: {second.text}", "min"),
    sheet.choice("plan-best", "Which order takes least on average?", options=p.options),
)

# %% tags=["reference"]
p, at_lesson = given.plan, f"{where}#what-a-plan-costs"
four = [(row.id,) for row in p.suspects]
minutes = {row.id: row.minutes for row in p.checks}
for name, one_plan in zip(("plan-first", "plan-second"), p.plans):
    plan = one_plan.id.split("+")
    even = sum((faults.minutes_spent(unit, plan, four, one) for one in four), Q(0.0, "min")) / 4
    ref(name, faults.expected_minutes(unit, plan, four), outcome="cost-search", weight=5,
        tolerance={"absolute": Q(0.1, "min")}, lesson=at_lesson,
        slips=[Slip(Q(sum(minutes[c] for c in plan), "min"), 0.25, "You do not always need all three: stop when one suspect is left."),
               Slip(even, 0.5, "Right if all four were met equally often; weigh them by how often they are.")])

# %% tags=["reference"]
best = "+".join(faults.quickest_plan(unit, [row.id for row in p.checks], four))
short = "+".join(sorted(minutes, key=minutes.get))
long = "+".join(sorted(minutes, key=minutes.get, reverse=True))
said = {short: "The shortest check first is not yet the best: ask how often each one ends the search.",
        long: "That begins with the longest check, and you pay for it every time."}
ref("plan-best", best, outcome="cost-search", weight=5, lesson=at_lesson,
    slips=[Slip(key, 0, said.get(key, "Weigh each check's chance of ending the search against its minutes."))
           for key, _ in p.options if key != best])

# %% tags=["mark"] task="plan" points=15

# %% [markdown] tags=["task"]
# ## 6. Two at once
#
# The record of another unit. No single misbuild explains it. Which pair does? Then: how often are the two misbuilds of the second table in one unit, if neither has to do with the other? *10 points.*

# %% tags=["rig"]
given_table("As written down", ["check", "what it shows"], [(row.name, row.words) for row in given.two.record])

# %% tags=["rig"]
given_table("How often each is met alone", ["misbuild", "in 1000 units"], [(row.name, row.often) for row in given.two.often])

# %% tags=["form"]
sheet.form(
    "two",
    sheet.choice("two-pair", "Which pair explains the whole record?", options=given.two.pairs),
    sheet.choice("two-why", "Why do you look for two here, and not for one?", options=given.two.why),
    sheet.number("two-often", "In how many of a million units are both misbuilds of the table?", whole=True),
)

# %% tags=["reference"]
observed, at_lesson = {row.check: row.key for row in given.two.record}, f"{where}#two-faults-at-once"
fitting = {"+".join(pair) for pair in faults.explain(unit, observed).doubles}
offered = {key for key, _ in given.two.pairs}
ref("two-pair", fitting & offered, outcome="two-faults", weight=4, lesson=at_lesson,
    slips=[Slip(key, 0, "One of the two fits; the other would show elsewhere, or leave a failed check unexplained.")
           for key in offered - fitting])
ref("two-why", "none-alone", outcome="two-faults", weight=2, lesson=at_lesson, slips=reasons(given.two.why, "none-alone", {
    "likelier": "Two are much rarer than one; look for two only when one does not do.",
    "two-failed": "One misbuild can fail two checks; look first for one that does.",
    "safer": "Whoever always looks for two has a list that no check empties.",
    "hides": "Sometimes it does, but then fewer checks fail, not more.",
}))

# %% tags=["reference"]
pair = [row.id for row in given.two.often]
both = round(1e6 * faults.met_together(unit, pair))
added = round(1e6 * sum(faults.met_together(unit, [one]) for one in pair))
ref("two-often", both, outcome="two-faults", weight=4, lesson=at_lesson,
    slips=[Slip(added, 0, "Adding gives how often at least one of them is met; for both, multiply the shares."),
           Slip(added // 1000, 0, "Adding gives how often at least one of them is met; for both, multiply the shares.")])

# %% tags=["mark"] task="two" points=10

# %% [markdown] tags=["task"]
# ## 7. What no check tells
#
# There are misbuilds that show exactly the same in every check, and some that show in none. *9 points.*

# %% tags=["form"]
sheet.form(
    "alike",
    sheet.choice("alike-pair", "Which pair can no check tell apart?", options=given.alike.pairs),
    sheet.choice("alike-strip", "What has to be taken apart to see which of the two it is?", options=given.alike.strip),
    sheet.choice("silent-which", "Which of these does no check show at all?", options=given.silent.options),
    sheet.choice("silent-sure", "What makes sure that this one is not in the unit?", options=given.silent.sure),
)

# %% tags=["reference"]
at_lesson, groups = f"{where}#what-no-check-tells-apart", faults.indistinguishable(unit)
same = {key for key, _ in given.alike.pairs
        if any(set(key.split("+")) <= set(group.misbuilds) for group in groups)}
mine = ref("alike-pair", same, outcome="know-limits", weight=3, lesson=at_lesson,
    slips=[Slip(key, 0, "Some check shows one of these two and not the other, or shows them in another way.")
           for key, _ in given.alike.pairs if key not in same])
parts = {faults.part_of(unit, one) for key in mine for one in key.split("+")}
ref("alike-strip", parts, outcome="know-limits", weight=2, lesson=at_lesson,
    slips=reasons(given.alike.strip, parts, {
        "shift": "Spring, plate and pin are easily looked at, but neither of the two is about them.",
        "setting": "The shim and the seat of the ring tell of the setting, and neither of the two is about that.",
        "joint": "Bolts and faces are quickly reached, but neither of the two leaves anything to see on them.",
        "train": "The teeth can be counted, and with both of the two they are the same.",
    }))

# %% tags=["reference"]
silent = {one for group in groups if group.silent for one in group.misbuilds}
(unseen,) = {key for key, _ in given.silent.options} & silent
mine = ref("silent-which", unseen, outcome="know-limits", weight=2, lesson=at_lesson,
    slips=[Slip(key, 0, "At least one check fails with this one in the unit.")
           for key, _ in given.silent.options if key != unseen])
kind = faults.part_of(unit, mine)
ref("silent-sure", kind, outcome="know-limits", weight=2, lesson=at_lesson,
    slips=reasons(given.silent.sure, kind, {
        ("shift", "joint", "order"): "That makes sure of another part, not of this one.",
        "cold": "No final check shows it, warm or cold.",
        "drive": "It may be quiet for a long time on the road.",
        "paint": "Paint says that the wrench clicked; it clicks with this one too.",
    }))

# %% tags=["mark"] task="alike" points=9

# %% [markdown] tags=["task"]
# ## 8. A fault, or a false count?
#
# A colleague says: “I counted both wheels and took the average.” Work out what the input shaft should have turned, and judge. *12 points.*

# %% tags=["rig"]
c = given.count
given_table(f"Counted in {c.gear.name.lower()}", ["what", "value"],
            [*((f"{row.words}: teeth that drive, teeth driven", f"{row.driving}, {row.driven}") for row in c.wheels),
             ("turns of the wheels, as told", f"{c.turns:g}"), ("turns of the input shaft, counted", f"{c.seen:g}"),
             ("smallest part of a turn that is read", f"{c.step:g}")])

# %% tags=["form"]
sheet.form(
    "count",
    sheet.number("count-ratio", "How many turns of the input shaft make one turn of the ring gear?", ""),
    sheet.number("count-turns", "How many should have been counted at the input shaft?", "turn"),
    sheet.choice("count-says", "What do you make of the count?", options=given.count.says),
)

# %% tags=["reference"]
c, at_lesson, train = given.count, f"{where}#when-the-check-is-wrong", unit.gear_train
total = abs(float(geartrain.ratio(train, c.gear.id)))
gear, final = (row.driven / row.driving for row in c.wheels)
ratio = ref("count-ratio", total, outcome="doubt-reading", weight=4, tolerance=0.006, lesson=at_lesson,
            slips=[Slip(1 / total, 0.25, "The other way round: divide the driven teeth by those that drive."),
                   Slip(gear, 0.25, "The final drive belongs to it as well."),
                   Slip(gear + final, 0, "One pair after the other: multiply, do not add.")])
turns = ref("count-turns", Q(ratio * c.turns, "turn"), outcome="doubt-reading", weight=4,
            tolerance={"absolute": Q(c.step, "turn")}, lesson=at_lesson,
            slips=[Slip(Q(ratio * c.turns / 2, "turn"), 0.25, "That is for one wheel with the other held."),
                   Slip(Q(c.turns / ratio, "turn"), 0, "The input shaft turns faster than the wheels here, not slower.")])

# %% tags=["reference"]
counted = {way: abs(geartrain.count_turns(train, c.gear.id, c.turns, words).seen) for way, words in
           {"right": "both outputs, averaged", "held": "one output, the other held"}.items()}
near = [way for way, seen in counted.items() if abs(seen - c.seen) < 2 * c.step]
judged = near[0] if near else "wheel"
words = {"right": "Put your figure beside the count once more: they are too far apart.",
         "held": "With one wheel held the count would be half; is it?",
         "wheel": "A way of counting explains the figure; nothing need be wrong inside.",
         "slip": "There is no clutch on the bench; the shafts are in mesh.", "sign": "The direction was not in question."}
ref("count-says", judged, outcome="doubt-reading", weight=4, lesson=at_lesson,
    slips=reasons(c.says, judged, words))

# %% tags=["mark"] task="count" points=12

# %% [markdown] tags=["task"]
# ## 9. A fault, or a false pull?
#
# The closed unit is pulled round in neutral on a cord. What the other shaft takes of the pull was read before, reckoned for this drum. Is this pair set right? The limits are for the pair alone. *13 points.*

# %% tags=["rig"]
k = given.cord
given_table(f"{k.name}: the pull", ["what", "value"],
            [("the scale shows", f"{k.shown_n:g} N"), (f"of which: {k.other.lower()}", f"{k.alone_n:g} N"),
             ("radius of the drum", f"{k.drum_mm:g} mm"), ("limits of the pull for this pair", f"{k.low_n} to {k.high_n} N"),
             ("doubt of the reading", f"{k.doubt_n:g} N"), ("another time, another unit", k.false.text)])

# %% tags=["form"]
sheet.form(
    "cord",
    sheet.number("cord-rest", "Which pull does this pair take alone?", "N"),
    sheet.number("cord-torque", "Which turning torque is that?", "N·m"),
    sheet.choice("cord-says", "What do you make of it?", options=given.cord.says),
    sheet.choice("cord-false", f"Another time it turned out: “{given.cord.false.text}”. What did that do to the reading?",
                 options=given.cord.false_says),
)

# %% tags=["reference"]
k, at_lesson = given.cord, f"{where}#when-the-check-is-wrong"
shown, alone, drum = Q(k.shown_n, "N"), Q(k.alone_n, "N"), Q(k.drum_mm, "mm")
rest = ref("cord-rest", shown - alone, outcome="doubt-reading", weight=4, tolerance={"absolute": Q(0.6, "N")}, lesson=at_lesson,
           slips=[Slip(shown, 0.25, "The other shaft turns too; take off what it needs."),
                  Slip(shown + alone, 0, "The other shaft is in the pull already: take it off, do not add it.")])
ref("cord-torque", (rest * drum).to("N*m"), outcome="doubt-reading", weight=5, tolerance=0.015, lesson=at_lesson,
    slips=[Slip((rest * drum * 2).to("N*m"), 0.25, "The cord pulls at the drum's radius, not at its diameter."),
           Slip((shown * drum).to("N*m"), 0.25, "That is the torque of all that turns; only this pair is asked for.")])

# %% tags=["reference"]
low, high, doubt = (Q(n, "N") for n in (k.low_n, k.high_n, k.doubt_n))
judged = "light" if rest < low - doubt else "heavy" if rest > high + doubt else "inside"
words = {"light": "The pull does not lie below the lower limit.", "inside": "The pull lies outside the limits by more than its doubt.",
         "heavy": "The pull does not lie above the upper limit.", "nothing": "It can: what the other shaft takes was read before."}
ref("cord-says", judged, outcome="doubt-reading", weight=2, lesson=at_lesson,
    slips=reasons(k.says, judged, words))

# %% tags=["reference"]
effect = faults.FALSE_PULLS[k.false.id].seems
ref("cord-false", effect, outcome="doubt-reading", weight=2, lesson=at_lesson,
    slips=reasons(k.false_says, effect, {
        "more": "Then the scale would have to pull more than the bearings ask for; here part of their pull is missing.",
        "less": "Then part of the bearings' pull would have to be missing; here the scale is pulled harder than that.",
        "same": "The scale shows all that is pulled: ask what it pulls besides the bearings, or what is missing.",
        "scatter": "Chance goes both ways; this goes one way each time it is done.",
    }))

# %% tags=["mark"] task="cord" points=13

# %% [markdown] tags=["task"]
# ## 10. Your unit on the bench
#
# A unit of your own, in which one or two things are wrong. Make the checks that you want; the clock counts their minutes, but no mark depends on it. Then say what is in there. *10 points.*

# %% tags=["rig"]
own_checks(given.own)

# %% tags=["form"]
sheet.form(
    "own",
    sheet.choices("own-which", "Tick every misbuild that explains it: alone, or as one of two where it takes two.", options=given.own.options),
    sheet.choice("own-says", "How far do the checks take you?", options=given.own.says),
)

# %% tags=["reference"]
observed, at_lesson = {row.check: row.key for row in given.own.record}, f"{where}#the-fault-board"
offered = {key for key, _ in given.own.options}
found = faults.explain(unit, observed)
fewest = min(len(one) for one in found.least)
least = [one for one in found.least if len(one) == fewest and set(one) <= offered]
parts = {one for chosen in least for one in chosen}
ref("own-which", parts, outcome="explain-symptom", weight=6, lesson=at_lesson,
    slips=[Slip(key, 0, f"One that you ticked would show in a check that passed, or not show where one failed: “{name}”.")
           for key, name in given.own.options if key not in parts])

# %% tags=["reference"]
says = "two" if fewest == 2 else "alike" if len(least) > 1 else "one"
words = {"one": "Count what explains everything: it is not just one misbuild.",
         "alike": "Look for two that show the same in every check; there are none here.",
         "two": "A misbuild alone explains it; two are not needed.",
         "none": "At least one check does not pass.", "more": "All the checks that there are have been on offer."}
ref("own-says", says, outcome="know-limits", weight=4, lesson=at_lesson, slips=reasons(given.own.says, says, words))

# %% tags=["mark"] task="own" points=10

# %% [markdown] tags=["task"]
# ## 11. Done in the wrong order
#
# These steps were done in this order, and one check among them is worth nothing for it. *6 points.*

# %% tags=["rig"]
given_table("In the order in which they were done", ["no.", "step"],
            [(n, step.text) for n, step in enumerate(given.blind.steps, 1)])

# %% tags=["form"]
sheet.form(
    "blind",
    sheet.choice("blind-which", "Which step has to be made again?", options=given.blind.steps),
    sheet.choice("blind-why", "Why is it worth nothing as it was done?", options=given.blind.reasons),
)

# %% tags=["reference"]
at_lesson, asked = f"{where}#the-order-of-the-checks", set(labels(given.blind.reasons))
at = {step.id: n for n, step in enumerate(given.blind.steps)}
broken = [rule for rule in unit.rules if rule.id in asked and rule.earlier in at and rule.later in at
          and at[rule.later] < at[rule.earlier]]
finals = {step for check in unit.faults.checks for step in check.operations}
spoilt = {step for rule in broken for step in (rule.earlier, rule.later) if step in finals}
ref("blind-which", spoilt, outcome="check-order", weight=3, lesson=at_lesson,
    slips=[Slip(key, 0, "What came before and after this step does it no harm.") for key in at if key not in spoilt])
right = {rule.id for rule in broken}
ref("blind-why", right, outcome="check-order", weight=3, lesson=at_lesson,
    slips=[Slip(key, 0, "True in itself, but this was in order here.") for key in asked - right])

# %% tags=["mark"] task="blind" points=6

# %% [markdown]
# ## Done?
#
# Go back to **start-here** and press **Hand in**. You get a receipt. You can hand in again until the due date; the last one counts.
