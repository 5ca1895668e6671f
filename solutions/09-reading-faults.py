# %% [markdown]
# # Reading faults backwards: exercise
#
# <div class="twoshaft-if-missing">If no forms appear below: press <b>Run</b>, then <b>Run All Cells</b>.</div>
#
# Eleven tasks about working back from what a check shows to what was built wrongly. Take about an hour.
#
# Every answer is saved as you give it; you can stop and come back.
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
from twoshaft.units.sections.order import RuleKind
from twoshaft_grader.marking import Slip, line_reasons, ref

bank = bank_of("reading-faults")
where = "09-reading-faults"

# %% [markdown] tags=["task"]
# ## 1. What is done with this unit?
#
# Finished units, due to be fitted today, each with one of its checks. Say what you do, case by case; then what some faults would do on the road.
#
# **You must get every line of both questions right to pass.** *10 points.*

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
ONCE = "A check that passes once and fails once has failed: some part in there can move."
ALL_DONE = "It was made in full, as the card asks, and it passed each time: nothing speaks against the unit."

# %% tags=["reference"]
ref("stop-cases", {id: DO[id] for id in labels(given.stop.cases)}, outcome="stop-unsafe", must_pass=True, weight=5,
    lesson=at_lesson, shows=("tagged", "never-sometimes"),
    slips=line_reasons(bank.lists["cases"], bank.lists["do"], DO, {
        "jumps": "It jumps out sometimes, so it has failed. The yard is a road as well: the fault shows when somebody is in the way.",
        "slips-by": "Once is enough: the next time may be on the road, at speed. " + ONCE,
        "both-in": "Force hides the fault for a while, and may have bent sound parts. " + ONCE,
        "later": "The passes after it do not wipe out the failure, even if the unit is wanted today. " + ONCE,
        "fewer": "It never failed, but it was tried less often than the card asks: the rest is not known yet.",
        "held": "Half the figure comes from the wheel that was held: the way of counting is at fault, not the unit.",
        "shorter": "It stayed in, but for less time than the card asks: what happens after that is not known yet.",
        "rag": "The rag took part of the pull, so the figure says nothing about the unit, good or bad.",
        **dict.fromkeys(("stays", "stops", "single", "counted"), ALL_DONE),
    }, shown=given.stop.cases))

# %% tags=["reference"]
ROAD = {"lockout": "lock", "two-at-once": "lock", "gears-held": "rolls",
        "reverse": "lock", "hard": "lock", "second": "lock", "pin": "lock",
        "comes-out": "rolls", "lets-go": "rolls", "no-spring": "rolls", "fork": "rolls",
        "stiff": "nobody", "whine": "nobody", "scratch": "nobody", "initials": "nobody"}
TO_REVERSE = "Reverse goes in while the vehicle moves forward: the gears would have to turn both ways at once, and the wheels lock."
TWO = "Two gears at once would turn one shaft at two speeds: the shaft locks, and the wheels with it."
OUT = "No gear is in any more: the wheels turn freely, and the engine neither drives nor brakes the vehicle."
own_kinds = [(kind, kind) for kind in ("lockout", "two-at-once", "gears-held")]

# %% tags=["reference"]
ref("stop-road", {id: ROAD[id] for id in labels(given.stop.found)}, outcome="stop-unsafe", must_pass=True, weight=5,
    lesson=at_lesson, shows="on-the-road", slips=line_reasons([*own_kinds, *bank.lists["found"]], bank.lists["road"], ROAD, {
        **dict.fromkeys(("lockout", "reverse", "hard"), TO_REVERSE),
        **dict.fromkeys(("two-at-once", "second", "pin"), TWO),
        **dict.fromkeys(("gears-held", "comes-out", "lets-go", "no-spring", "fork"), OUT),
        "stiff": "It has to be repaired. But the gear goes in fully, stays in and comes out: the driver feels it, and nobody is hurt.",
        "whine": "A sound calls for a look, and the look was taken: teeth, bearings and preload are within the card.",
        "scratch": "A scratch where nothing seals, screws or hangs does nothing to the gears.",
        "initials": "A gap in the record is to be filled today; the gear itself stays in.",
    }, shown=given.stop.found))

# %% tags=["mark"] task="stop" points=10

# %% [markdown] tags=["task"]
# ## 2. What the driver says
#
# Units that came back. First: the driver has just told you this, and nothing has been checked yet. Which check comes first?
#
# It should be able to show what the driver felt, in the fewest minutes. *7 points.*

# %% tags=["form"]
first = given.driver.first
sheet.form("driver", sheet.each("driver-first", "Which check comes first?", lines=first.lines, options=first.answers))

# %% tags=["reference"]
at_lesson, first = f"{where}#from-symptom-to-fault", given.driver.first
FIRST = {"lifts": "hands", "straight": "hands", "middle": "hands",
         "faster": "count", "lever-in": "count", "slower": "count",
         "stops": "cord", "hot": "cord", "heavy": "cord",
         "drops": "oil", "low": "oil", "topped": "oil"}

# %% tags=["reference"]
WHY_FIRST = {
    "lifts": "A gear that comes out when the pull is gone is not held: feel its detent before you look further.",
    "straight": "Something should have stopped the lever there: try the lockout, it takes a few minutes.",
    "middle": "The lever itself came back, so nothing holds it: that is felt by hand.",
    "faster": "One gear alone has another ratio: the turns show it against the teeth.",
    "lever-in": "The lever is where it should be, so lever and detent are not the trouble: turn it, and see what turns.",
    "slower": "Less engine speed for the same road speed is another ratio, in this gear alone: count it.",
    "stops": "It turns heavily with no gear in, and no oil is missing: the pull in neutral shows how much.",
    "hot": "Heat in every gear with the oil at its mark: the bearings may be set too tight, and the cord shows it.",
    "heavy": "Nothing has changed in the gears, and it turns heavily in neutral: that is what the cord measures.",
    "drops": "Nothing but oil is complained of: watch where it comes out before you touch a bolt.",
    "low": "The heat comes with missing oil: first find where it went. The pull would be read on dry bearings.",
    "topped": "It drives as it should and loses oil: nothing but watching shows where.",
}

# %% tags=["reference"]
ref("driver-first", {one.id: FIRST[one.id] for one in first.lines}, outcome="explain-symptom", weight=7,
    lesson=at_lesson, shows="from-words", slips=line_reasons(bank.lists["first"], first.answers, FIRST, WHY_FIRST, shown=first.lines))

# %% tags=["mark"] task="driver" points=7

# %% [markdown] tags=["task"]
# ## 3. What explains it?
#
# The record of some checks of a unit in which **one** thing is wrong. Which of six assembly faults can it be?
#
# It must explain all that was seen, what failed and what passed. *6 points.*

# %% tags=["rig"]
given_table("As written down", ["check", "what it shows"], [(row.name, row.words) for row in given.explain.record])

# %% tags=["form"]
sheet.form(
    "explain",
    sheet.each("explain-all", "Can it be this one alone?",
               lines=[(one.id, one.text) for one in given.explain.suspects], options=given.explain.answers),
)

# %% tags=["reference"]
observed = {row.check: row.key for row in given.explain.record}
names = {row.check: row.name for row in given.explain.record}
six = [one.id for one in given.explain.suspects]
table, can, why = faults.outcome_table(unit), {}, {}
for one in six:
    other = [check for check, key in observed.items() if table.outcome((one,), check).key != key]
    can[one] = "cannot" if other else "can"
    why[one] = (f"With it this line would read otherwise: {names[other[0]]}." if other
                else "Every line reads as it would with this one, those that passed as well.")
ref("explain-all", can, outcome="explain-symptom", weight=6, lesson=f"{where}#from-symptom-to-fault",
    shows="passed-and-failed", slips=line_reasons([(id, "") for id in can], given.explain.answers, can, why))

# %% tags=["mark"] task="explain" points=6

# %% [markdown] tags=["task"]
# ## 4. Which check next, and what does it cost?
#
# **Exactly one** of four assembly faults is in the unit. Look up in the lesson's picture what the checks show with each.
#
# A check tells two suspects apart when it comes out differently for each. *22 points.*

# %% tags=["rig"]
given_table("One of these is in the unit", ["letter", "assembly fault"], [(one.letter, one.name) for one in given.search.suspects])

# %% tags=["rig"]
given_table("Checks that you can make", ["no.", "check", "minutes"], [(c.number, c.name, c.minutes) for c in given.search.checks])

# %% tags=["form"]
s = given.search
letter = {one.id: one.letter for one in s.suspects}
sheet.form(
    "search",
    sheet.each("search-shows", "With which of the four does the check not pass?",
               lines=[(c.id, f"check {c.number}") for c in s.checks], options=s.fails),
    sheet.each("search-apart", "Two are left. Which check tells them apart in the fewest minutes?", lines=s.pairs, options=s.tellers),
    sheet.each("search-left", "Some checks were made. Which of the four are left?",
               lines=[(one.id, one.text) for one in s.findings], options=s.left),
    *[sheet.number(f"search-minutes-{n}", f"{letter[route.wrong]} is what is wrong. You make the checks in the order {route.words} "
                   "and stop as soon as only one suspect is left. How long does it take?", "min")
      for n, route in enumerate(s.routes, 1)],
)

# %% tags=["reference"]
s, at_lesson = given.search, f"{where}#what-a-check-is-worth"
four = [one.id for one in s.suspects]
letter = {one.id: one.letter for one in s.suspects}
key = {(one, c.id): table.outcome((one,), c.id).key for one in four for c in s.checks}
failing = {c.id: [one for one in four if key[one, c.id] != faults.PASSES] for c in s.checks}
shows = {id: failed[0] if len(failed) == 1 else "more" if failed else "none" for id, failed in failing.items()}
told = {id: "It shows the same with all four, so it shows nothing here." if not failed
        else "Look along its column in the picture: which of the four have a mark there?" for id, failed in failing.items()}
ref("search-shows", shows, outcome="weigh-check", weight=6, lesson=at_lesson, shows="tells-nothing",
    slips=line_reasons([(id, "") for id in shows], s.fails, shows, told))

# %% tags=["reference"]
minutes, apart, told = {c.id: c.minutes for c in s.checks}, {}, {}
for pair in labels(s.pairs):
    one, other = pair.split("+")
    telling = [id for id in minutes if key[one, id] != key[other, id]]
    least = min((minutes[id] for id in telling), default=0)
    apart[pair] = {id for id in telling if minutes[id] == least} or {"none"}
    told[pair] = {id: "It tells them apart, but another does so in fewer minutes." if id in telling
                  else "At least one of the five comes out differently for each." if id == "none"
                  else "It shows the same with both: its minutes are wasted."
                  for id in [*minutes, "none"] if id not in apart[pair]}
ref("search-apart", apart, outcome="weigh-check", weight=5, lesson=at_lesson, shows="tells-apart",
    slips=line_reasons(s.pairs, s.tellers, apart, told))

# %% tags=["reference"]
at_lesson, left, told = f"{where}#what-a-plan-costs", {}, {}
for one in s.findings:
    fit = [m for m in four if all(key[m, c] == faults.PASSES for c in one.passed)
           and all(key[m, c] != faults.PASSES for c in one.failed)]
    left[one.id] = fit[0] if len(fit) == 1 else "more"
    told[one.id] = ("One alone fits: cross out those that would have failed what passed, or passed what failed." if len(fit) == 1
                    else "More than one fits what was seen: none of these checks tells them apart.")
ref("search-left", left, outcome="cost-search", weight=5, lesson=at_lesson, shows="what-is-left",
    slips=line_reasons([(id, "") for id in left], s.left, left, told))

# %% tags=["reference"]
for n, route in enumerate(s.routes, 1):
    ref(f"search-minutes-{n}", faults.minutes_spent(unit, route.checks, [(m,) for m in four], (route.wrong,)),
        outcome="cost-search", weight=3, tolerance={"absolute": Q(0.1, "min")}, lesson=at_lesson, shows="plan-cost",
        slips=[Slip(Q(sum(minutes[c] for c in route.checks), "min"), 0.25,
                    "You do not need all of them: stop when one suspect is left."),
               Slip(Q(minutes[route.checks[0]], "min"), 0, "After this check more than one suspect is still left.")])

# %% tags=["mark"] task="search" points=22

# %% [markdown] tags=["task"]
# ## 5. One or two?
#
# The records of four units, **all** final checks made; only those that failed are shown. How many things are wrong in each?
#
# Then a unit that has two of six suspects in it: which of them explains which check? *10 points.*

# %% tags=["rig"]
given_table("Four units; every other check passed", ["unit", "failed", "what it shows"],
            [(one.letter, row.name, row.words) for one in given.two.units for row in one.record])

# %% tags=["rig"]
given_table("Suspects of the last unit", ["letter", "assembly fault"], [(one.letter, one.name) for one in given.two.suspects])

# %% tags=["form"]
sheet.form(
    "two",
    sheet.each("two-how", "How many assembly faults does each unit have?",
               lines=[(one.letter.lower(), f"unit {one.letter}") for one in given.two.units], options=given.two.how),
    sheet.each("two-which", "The last unit. Two of the suspects are in it, and every check not named passed. What explains each?",
               lines=[(row.check, f"{row.name}: {row.words}") for row in given.two.record],
               options=[(one.id, one.letter) for one in given.two.suspects]),
)

# %% tags=["reference"]
at_lesson, passing = f"{where}#two-faults-at-once", dict.fromkeys(table.checks, faults.PASSES)
how, told = {}, {}
words = {"one": "Look for one that shows all of it and nothing else: there is just one.",
         "several": "More than one shows exactly this alone, and no check tells them apart.",
         "two": "None shows all of it: each of the failed checks has an assembly fault of its own."}
for one in given.two.units:
    singles = faults.explain(unit, passing | {row.check: row.key for row in one.record}).singles
    how[one.letter.lower()] = said = "two" if not singles else "one" if len(singles) == 1 else "several"
    told[one.letter.lower()] = words[said]
ref("two-how", how, outcome="two-faults", weight=5, lesson=at_lesson, shows="only-where-needed",
    slips=line_reasons([(id, "") for id in how], given.two.how, how, told))

# %% tags=["reference"]
observed = passing | {row.check: row.key for row in given.two.record}
offered = {one.id for one in given.two.suspects}
(pair,) = [two for two in faults.explain(unit, observed).doubles if set(two) <= offered]
which, told = {}, {}
for row in given.two.record:
    (which[row.check],) = (one for one in pair if table.outcome((one,), row.check).key == row.key)
    told[row.check] = {one: "It shows this line, but it would show elsewhere too, or leave the rest open."
                       if table.outcome((one,), row.check).key == row.key else "With this one the line would read otherwise."
                       for one in offered - {which[row.check]}}
ref("two-which", which, outcome="two-faults", weight=5, lesson=at_lesson, shows="each-its-own",
    slips=line_reasons([(id, "") for id in which], [(one, "") for one in offered], which, told))

# %% tags=["mark"] task="two" points=10

# %% [markdown] tags=["task"]
# ## 6. What no check shows
#
# There are assembly faults that show exactly the same in every check, and some that show in none. You have time for some checks only.
#
# Where your unit is drawn: four units of its kind were opened at the same place. See which is built how; two may be alike. *9 points.*

# %% tags=["rig"]
given_table("Assembly faults", ["letter", "assembly fault"], [(one.letter, one.name) for one in given.alike.suspects])

# %% tags=["rig"]
given_table("Checks of today", ["check"], [(one.name,) for one in given.alike.today])

# %% tags=["form"]
from twoshaft.plots.unit_scene import look_pictures

sheet.form(
    "alike",
    sheet.each("alike-tell", "It is one of the two. What shows which?", lines=given.alike.pairs, options=given.alike.tell),
    sheet.each("alike-sure", "What makes sure that this one is not in the unit?", lines=given.alike.asked, options=given.alike.sure),
    *([sheet.picture("alike-looks", "Opened at one place, from a side of your own: which unit is it? Where two fit, either is right",
                     lines=given.alike.built, pictures=look_pictures(unit, given.alike.looks))] if given.alike.looks else []),
)

# %% tags=["reference"]
at_lesson, today = f"{where}#what-no-check-tells-apart", {one.id for one in given.alike.today}
tell, told = {}, {}
for pair in labels(given.alike.pairs):
    one, other = pair.split("+")
    telling = {c for c in table.checks if table.outcome((one,), c) != table.outcome((other,), c)}
    tell[pair] = "today" if telling & today else "another" if telling else "no"
    told[pair] = {"today": "One of today's checks comes out differently for each.",
                  "another": "Today's checks show the same with both, but one of the others does not.",
                  "no": "The two show the same in every check there is."}[tell[pair]]
ref("alike-tell", tell, outcome="know-limits", weight=5, lesson=at_lesson, shows="alike",
    slips=line_reasons(given.alike.pairs, given.alike.tell, tell, told))

# %% tags=["reference"]
silent = {one for group in faults.indistinguishable(unit) if group.silent for one in group.misbuilds}
sure = {id: faults.part_of(unit, id) if id in silent else "check" for id in labels(given.alike.asked)}
seen = {"check": "A final check shows this one, so it can be found on the finished unit.",
        "shift": "No final check shows a small part that is missing: it is counted while its bore is open.",
        "joint": "The wrench clicks all the same, so no check shows it: look at the thread before the bolt goes in.",
        "order": "No final check asks for it: the record has to say that it was done."}
ref("alike-sure", sure, outcome="know-limits", weight=4, lesson=at_lesson, shows="while-seen",
    slips=line_reasons(given.alike.asked, given.alike.sure, sure, {id: seen[by] for id, by in sure.items()}))

# %% tags=["reference"]
from twoshaft.models import shape
from twoshaft.readings.scenes import lies_in

BUILT = {"right": "In this one something lies the wrong way round or is not there: compare the four part by part.",
         "turned": "Nothing is turned over in this one: compare lips, cones, bosses and bevels with the part beside them.",
         "missing": "Nothing is left out in this one: look for a groove, a bore or a gap that nothing fills."}
if given.alike.looks:
    built = shape.built_how(unit, {look.letter: (look.near.scene.view, lies_in(look.near.scene)) for look in given.alike.looks})
    ref("alike-looks", built, outcome="explain-symptom", weight=3, lesson=f"{where}#from-symptom-to-fault", shows="in-section",
        slips=line_reasons(given.alike.built, [(look.letter, "") for look in given.alike.looks], built, BUILT))

# %% tags=["mark"] task="alike" points=9

# %% [markdown] tags=["task"]
# ## 7. A fault, or a false count?
#
# Another unit, with the teeth of the table. Work out what the input shaft should turn.
#
# Then four colleagues each say that they counted as the table says. What do you make of each count? *11 points.*

# %% tags=["rig"]
c = given.count
how = "both wheels, and the average taken" if unit.gear_train.differential else "the output shaft"
given_table(f"Counted in {c.gear.name.lower()}", ["what", "value"],
            [*((f"{row.words}: teeth that drive, teeth driven", f"{row.driving}, {row.driven}") for row in c.wheels),
             ("what is counted", how), ("smallest part of a turn that is read", f"{c.step:g}")])

# %% tags=["form"]
c, bevel = given.count, unit.gear_train.differential
last, turned = ("ring gear", "the wheels") if bevel else ("output shaft", "the output shaft")
sheet.form(
    "count",
    sheet.number("count-ratio", f"How many turns of the input shaft make one turn of the {last}?", ""),
    sheet.number("count-turns", f"{turned.capitalize()} turn{'' if bevel else 's'} {c.turns:g} times{', on average' if bevel else ''}. How many are counted at the input shaft?", "turn"),
    sheet.each("count-says", "What do you make of each count?",
               lines=[(one.id, one.text(turned)) for one in c.counts], options=c.says),
)

# %% tags=["reference"]
c, at_lesson, train = given.count, f"{where}#when-the-check-is-wrong", unit.gear_train
meshes = [*next(gear for gear in train.gears if gear.id == c.gear.id).engages, *filter(None, [train.final_drive])]
for mesh, row in zip(meshes, c.wheels, strict=True):
    for side in ("driving", "driven"):
        train = geartrain.with_wheel(train, mesh, side, getattr(row, side))
total = abs(float(geartrain.ratio(train, c.gear.id)))
gear, *final = (row.driven / row.driving for row in c.wheels)
ratio = ref("count-ratio", total, outcome="doubt-reading", weight=3, tolerance=0.006, lesson=at_lesson, shows="should-read",
            slips=[Slip(1 / total, 0.25, "The other way round: divide the driven teeth by those that drive."),
                   *(Slip(gear, 0.25, "The final drive belongs to it as well.") for _ in final),
                   *(Slip(gear + one, 0, "One pair after the other: multiply, do not add.") for one in final)])
ref("count-turns", Q(ratio * c.turns, "turn"), outcome="doubt-reading", weight=3, shows="should-read",
    tolerance={"absolute": Q(c.step, "turn")}, lesson=at_lesson,
    slips=[*([Slip(Q(ratio * c.turns / 2, "turn"), 0.25, "That is for one wheel with the other held.")] if train.differential else []),
           Slip(Q(c.turns / ratio, "turn"), 0, "That divides by the ratio: multiply what is counted by it.")])

# %% tags=["reference"]
ways = {"right": "both outputs, averaged", "held": "one output, the other held"} if train.differential else {"right": "the output shaft"}
says = {}
for one in c.counts:
    near = [way for way, words in ways.items()
            if abs(abs(geartrain.count_turns(train, c.gear.id, one.turns, words).seen) - one.seen) < 2 * c.step]
    says[one.id] = near[0] if near else "wheel"
words = {"right": "Work out what it should be: this count is just that.",
         "held": "It is half of what it should be, so one wheel did not turn; the gears are not at fault.",
         "wheel": "It is neither what it should be nor half of it: no way of counting gives that, a gear with other teeth does."}
ref("count-says", says, outcome="doubt-reading", weight=5, lesson=at_lesson, shows="misleads",
    slips=line_reasons([(id, "") for id in says], c.says, says, {id: words[said] for id, said in says.items()}))

# %% tags=["mark"] task="count" points=11

# %% [markdown] tags=["task"]
# ## 8. A fault, or a false pull?
#
# Closed units are pulled round in neutral on a cord. The pull that the other shaft needs was read before, for this drum.
#
# The limits are for the pair of bearings alone. A pull that lies nearer to a limit than its uncertainty is read again.
#
# Last, say what the way in which a pull was taken does to the reading. *14 points.*

# %% tags=["rig"]
k = given.cord
given_table(f"{k.name}: the pull", ["what", "value"],
            [("first reading: the scale shows", f"{k.readings[0].shown_n:g} N"), (f"of which: {k.other.lower()}", f"{k.readings[0].alone_n:g} N"),
             ("radius of the drum", f"{k.drum_mm:g} mm"), ("limits of the pull for this pair", f"{k.low_n} to {k.high_n} N"),
             ("uncertainty of a reading", f"{k.doubt_n:g} N either way")])

# %% tags=["form"]
k = given.cord
sheet.form(
    "cord",
    sheet.number("cord-rest", "First reading: which pull does this pair take alone?", "N"),
    sheet.number("cord-torque", "How large is the turning torque?", "N·m"),
    sheet.each("cord-says", "What do you make of each reading?", lines=[(one.id, one.text) for one in k.readings], options=k.says),
    sheet.each("cord-false", "Each line says how a pull was taken. What does that do to the reading?", lines=k.taken.lines, options=k.taken.answers),
)

# %% tags=["reference"]
k, at_lesson = given.cord, f"{where}#when-the-pull-is-wrong"
shown, alone, drum = Q(k.readings[0].shown_n, "N"), Q(k.readings[0].alone_n, "N"), Q(k.drum_mm, "mm")
rest = ref("cord-rest", shown - alone, outcome="doubt-reading", weight=3, tolerance={"absolute": Q(0.6, "N")}, lesson=at_lesson,
           shows="should-read", slips=[
               Slip(shown, 0.25, "The other shaft turns too; take off what it needs."),
               Slip(shown + alone, 0, "The other shaft is in the pull already: take it off, do not add it.")])
ref("cord-torque", (rest * drum).to("N*m"), outcome="doubt-reading", weight=3, tolerance=0.015, lesson=at_lesson,
    shows="should-read", slips=[
        Slip((rest * drum * 2).to("N*m"), 0.25, "The cord pulls at the drum's radius, not at its diameter."),
        Slip((shown * drum).to("N*m"), 0.25, "That is the torque of all that turns; only this pair is asked for.")])

# %% tags=["reference"]
says = {}
for one in k.readings:
    pair = one.shown_n - one.alone_n
    says[one.id] = ("again" if min(abs(pair - k.low_n), abs(pair - k.high_n)) < k.doubt_n
                    else "light" if pair < k.low_n else "heavy" if pair > k.high_n else "inside")
words = {"light": "Without the other shaft, the pull lies below the lower limit by more than its uncertainty.",
         "inside": "Without the other shaft, the pull lies between the limits, and clear of both.",
         "heavy": "Without the other shaft, the pull lies above the upper limit by more than its uncertainty.",
         "again": "Without the other shaft, the pull lies nearer to a limit than its uncertainty."}
ref("cord-says", says, outcome="doubt-reading", weight=4, lesson=at_lesson, shows="should-read",
    slips=line_reasons([(id, "") for id in says], k.says, says, {id: words[said] for id, said in says.items()}))

# %% tags=["reference"]
TAKEN = {"seals-in": "more", "jerk": "more", "small-drum": "more", "above": "more",
         "loose": "less", "big-drum": "less", "twice": "less", "below": "less",
         "own-drum": "same", "once": "same", "seals-out": "same", "zero": "same"}
AS_ASKED = "It was taken as the card asks, and nothing is added or left out."
WHY_TAKEN = {
    "seals-in": "New seals rub more than the bearings do, and their pull is counted with the pair's.",
    "jerk": "It takes more to start a shaft than to keep it turning; the first jerk is not the pull.",
    "small-drum": "On a smaller drum the same torque needs more pull than the card expects.",
    "above": "What the scale showed before is counted with the pull.",
    "loose": "A loose case does not hold the rings, so part of the preload is missing.",
    "big-drum": "On a larger drum the same torque needs less pull than the card expects.",
    "twice": "Taken off twice, part of the pair's own pull is gone as well.",
    "below": "The scale begins under zero, so what it shows is too little by that much.",
    **dict.fromkeys(("own-drum", "once", "seals-out", "zero"), AS_ASKED),
}

# %% tags=["reference"]
ref("cord-false", {one.id: TAKEN[one.id] for one in k.taken.lines}, outcome="doubt-reading", weight=4, lesson=at_lesson,
    shows="misleads", slips=line_reasons(bank.lists["taken"], k.taken.answers, TAKEN, WHY_TAKEN, shown=k.taken.lines))

# %% tags=["mark"] task="cord" points=14

# %% [markdown] tags=["task"]
# ## 9. Your unit on the bench
#
# A unit of your own, in which one or two things are wrong. Make the checks that you want; the clock counts their minutes, but no mark depends on it.
#
# Then say what is wrong in it. *7 points.*

# %% tags=["rig"]
own_checks(given.own)

# %% tags=["rig"]
given_table("Suspects", ["letter", "assembly fault"], [(one.letter, one.name) for one in given.own.suspects])

# %% tags=["form"]
sheet.form(
    "own",
    sheet.choice("own-says", "What do you write on the card? “One of them” means that no check tells them apart.", options=given.own.says),
)

# %% tags=["reference"]
observed, at_lesson = {row.check: row.key for row in given.own.record}, f"{where}#the-fault-board"
letter = {one.id: one.letter for one in given.own.suspects}
found = faults.explain(unit, observed)
fewest = min(len(one) for one in found.least)
least = [one for one in found.least if len(one) == fewest and set(one) <= set(letter)]
form = "two" if fewest == 2 else "alike" if len(least) > 1 else "one"
right = f"{form}-{''.join(sorted(letter[one] for chosen in least for one in chosen))}"
words = {"one": "This one alone does not explain every failed check, or would show in a check that passed.",
         "two": "Two are not needed, or one of these two would show otherwise: look for the fewest that explain everything.",
         "alike": "Not every one of these shows all that was seen and nothing else."}
if form == "alike":
    words["one"] = "Look for others that show the same in every check, before you settle on one."
ref("own-says", right, outcome="explain-symptom", weight=7, lesson=at_lesson, shows="fewest",
    slips=[Slip(id, 0, words[id.partition("-")[0]]) for id in labels(given.own.says) if id != right])

# %% tags=["mark"] task="own" points=7

# %% [markdown] tags=["task"]
# ## 10. Done in the wrong order
#
# Some steps of a build, and pairs of them in the order in which they were done. Does this order make a check worth nothing?
#
# Say what has to be made again. *6 points.*

# %% tags=["rig"]
given_table("Steps", ["letter", "step"], [(one.letter, one.name) for one in given.blind.steps])

# %% tags=["form"]
sheet.form(
    "blind",
    sheet.each("blind-again", "What has to be made again?", lines=[(one.id, one.text) for one in given.blind.done],
               options=given.blind.again),
)

# %% tags=["reference"]
blinding = {(rule.earlier, rule.later): rule.reason for rule in unit.rules if rule.kind is RuleKind.BLINDS and rule.earlier}
finals = {step for check in unit.faults.checks for step in check.operations}
again, told = {}, {}
for one in given.blind.done:
    reason = blinding.get((one.second, one.first))
    again[one.id] = "none" if reason is None else "first" if one.first in finals else "second"
    told[one.id] = reason or "In this order the check finds what it needs, and nothing spoils it afterwards."
ref("blind-again", again, outcome="check-order", weight=6, lesson=f"{where}#the-order-of-the-checks", shows="made-again",
    slips=line_reasons([(id, "") for id in again], given.blind.again, again, told))

# %% tags=["mark"] task="blind" points=6

# %% [markdown] tags=["task"]
# ## 11. Opened and drawn
#
# Two units, each drawn in section, from a side that was chosen for you. In each, **one** thing was built wrongly.
#
# Press its letter, or choose it from the list.
#
# Front and rear, above and below may be swapped. Some letters stand where nothing is: all may be well there, or something is missing. Where a part stands off its seat, the gap is drawn larger than it is. *7 points.*

# %% tags=["form"]
from twoshaft.plots.unit_scene import ScenePicture

sheet.form(
    "opened",
    *[sheet.point(f"opened-{n}", f"Unit {one.letter}", picture=ScenePicture(unit, one.scene, one.open, one.window_mm),
                  lines=[["wrong", "What is wrong in it"]]) for n, one in enumerate(given.opened.units, 1)],
    sheet.each("opened-how", "How is it wrong?", lines=given.opened.lines, options=given.opened.how),
)

# %% tags=["reference"]
from math import dist

from twoshaft.models import shape
from twoshaft.readings.scenes import lies_in

at_lesson, how = f"{where}#from-symptom-to-fault", {}
LOOK = {"turned": "One thing lies the wrong way round: compare each lip, cone, boss and collar with the part that it works on.",
        "missing": "One thing is not there: look for a groove, a bore or a gap that nothing fills.",
        "off": "One thing is not down on its seat: look for a gap behind a ring or under a head."}

# %% tags=["reference"]
for n, one in enumerate(given.opened.units, 1):
    wrong, seen = shape.what_is_wrong(unit, one.scene.view, lies_in(one.scene)), shape.places_seen(unit, one.scene.view)
    (how[one.letter],) = set(wrong.values())
    letters = {spot.id for spot in one.scene.spots if spot.text in wrong}
    letters |= {at.letter for at in one.open for part in wrong if part in seen and dist((at.z_mm, at.height_mm), seen[part]) < 1}
    ref(f"opened-{n}", {"wrong": letters}, outcome="explain-symptom", weight=2.5, lesson=at_lesson, shows="in-section", slips=line_reasons(
        [("wrong", "")], [(at, "") for at in "ABCDEFGHIJ"], {"wrong": letters}, {"wrong": LOOK[how[one.letter]]}))

# %% tags=["reference"]
ref("opened-how", how, outcome="explain-symptom", weight=2, lesson=at_lesson, shows="in-section",
    slips=line_reasons(given.opened.lines, given.opened.how, how, {letter: LOOK[found] for letter, found in how.items()}))

# %% tags=["mark"] task="opened" points=7

# %% [markdown]
# ## Done?
#
# Go back to **start-here** and press **Hand in**. You get a receipt. You can hand in again until the due date; the last one counts.
