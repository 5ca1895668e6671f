# %% [markdown]
# # Reading faults backwards
#
# <div class="twoshaft-if-missing">If no pictures appear below: press <b>Run</b>, then <b>Run All Cells</b>.</div>
#
# **After this lesson you can**
#
# - work back from what a check shows to every assembly fault that explains it
# - go from the driver's words to a check, and from its result to a part
# - choose the check that separates the suspects in the fewest minutes
# - say what a search leaves and costs
# - recognise two faults at once
# - say which faults no check can tell apart
# - question a check before you question the unit
#
# **Time:** 30 to 40 minutes. **What passing proves:** that you search for a fault with a plan, and that no unit leaves your bench on a guess.
#
# *Invented unit, for teaching. On a real unit the maker's manual, local codes and licensed practice decide.*

# %% tags=["setup"]
from twoshaft.models import faults, geartrain
from twoshaft.plots.faults import fault_board
from twoshaft.plots.tables import given_table
from twoshaft.practice import open_lesson
from twoshaft.rigs import fault_board_rig

lesson = open_lesson("reading-faults")
unit = lesson.unit
table, section = faults.outcome_table(unit), unit.faults
name = {one.id: one.name for one in (*section.misbuilds, *section.checks)}
kinds = {check.kind: check.id for check in reversed(section.checks)}

# %% [markdown]
# ## From earlier lessons

# %% tags=["rig"]
lesson.asked_again()

# %% [markdown]
# ## Before you start
#
# - **Some faults stop the work at once:** a lockout that fails, even if only sometimes; two gears that go in together; a gear that does not stay in. On the road they lock the wheels or leave the driver without drive. Tag the unit, write down what you saw, and let nobody fit it.
# - **Never drive to find out.** Find the fault on the bench, where it can hurt nobody.
# - **A check that passes once and fails once has failed.** Some part in there can move.
# - Turn gears **by hand only**, fingers out of the teeth. Say so before you turn while somebody else has a hand in the case.
# - Before you open a unit again, **drain** its oil. Wear **eye protection** when springs and balls come out.
#
# On this page nothing can break. Try things.

# %% [markdown]
# ## From fault to symptom
#
# An **assembly fault** is something that was put together wrongly. The picture has one row for each assembly fault of this unit and one column for each final check. Each square is computed: the models of gate, bearings, bolts, film and gears run with that fault in them.
#
# The names at the side are the short names of the unit file.

# %% tags=["predict"]
lesson.predict("silent-and-alike")

# %% tags=["then"]
fault_board(unit)

# %% [markdown] tags=["then"]
# Look for rows that are empty, and for rows that are equal, letter by letter. They decide how far any search can go.
#
# Then look along the columns. Where a column has many marks, as that of the leaks, one symptom has several causes.

# %% [markdown] needs="cord-of-two"
# ## From symptom to fault
#
# Reading backwards means: which rows show **exactly** what was seen? What **passed** counts as much as what failed. If a fault would have failed a check, and that check passed, the fault is not there.

# %% tags=["predict"]
neutral = next(check for check in section.checks if check.kind == "cord" and check.and_support)
seen = {neutral.id: next(o.key for o in table.outcomes[table.column(neutral.id)] if o.key.startswith("heavy"))}
lesson.predict("heavy-pull", right=str(len(faults.explain(unit, seen).singles)))

# %% [markdown] tags=["then"]
# And what does it change when you know that no end float was felt?

# %% tags=["then"]
more = {**seen, **{kinds[kind]: faults.PASSES for kind in ("end-float", "click") if kind in kinds}}
rows = [(text, " · ".join(name[one] for one in faults.explain(unit, what).singles))
        for text, what in (("pull in neutral too heavy", seen), ("the same; no float felt, all bolts click", more))]
given_table("What explains it alone", ["seen", "assembly faults"], rows)

# %% [markdown] tags=["then"]
# Compare the two rows. Where they are the same, the two further checks showed nothing new, because none of these faults shows in the float or under the wrench. A check that cannot separate the suspects costs its minutes and gives nothing.

# %% [markdown]
# ## The fault board
#
# Now search yourself. Enter what each check showed. The board lists the faults that explain all of it, as few as possible. It orders the further checks by what a **minute** of each is worth.
#
# **Try:** the direct shift that must be stopped is not stopped. Take it back. Then: oil came out, but nobody noted where. Which check would you make next?

# %% tags=["rig"]
fault_board_rig(unit)

# %% [markdown]
# After the failed lockout several faults are left, and no further check splits them. After “it leaks” more faults are left. If you also note **where** it leaks, fewer remain.
#
# If a bolt of a sealed joint turns before the click, **stop**. The cured sealant tears when the bolt turns further. Open the joint and seal it again.

# %% [markdown]
# ## How likely each suspect is
#
# A suspect that is found often in units is likelier. Its share is **how often it is found, divided by the sum of these figures for all suspects that are left**.

# %% tags=["predict"]
lesson.predict("share-of-two")

# %% tags=["then"]
usual = ("lockout", "gears-held", "cord", "two-at-once", "turns", "ring-gap")
known = [kinds[kind] for kind in ("click", *usual) if kind in kinds]
last, *checks = faults.checks_apart(unit, known, 4)
suspects = faults.suspects_for(unit, [*checks, last])
left = faults.explain(unit, {}, among=suspects)
given_table("Four suspects; one of them is in the unit", ["assembly fault", "found in 1000 units", "share now, %"],
            [(name[one[0]], section.misbuild_by_id(one[0]).often_per_1000, f"{100 * chance:.0f}")
             for one, chance in zip(left.sets, left.chances)])

# %% [markdown] tags=["then"]
# The chance that a check fails is the sum of the shares of the suspects that fail it.

# %% [markdown]
# ## What a check is worth
#
# A check is worth something only if it can come out in more than one way. The measure is the **bit**: one bit halves what is left.

# %% tags=["predict"]
lesson.predict("nine-of-ten")

# %% tags=["then"]
given_table("What is told, by how likely a check is to fail", ["chance of failing", "told, bit", "bit a minute, if it takes 4 min"],
            [(f"{odds:.0%}", f"{faults.told(odds):.2f}", f"{faults.told(odds) / 4:.3f}") for odds in (0.5, 0.7, 0.8, 0.9, 0.95, 1.0)])

# %% [markdown] tags=["then"]
# A check is worth most when both results are **equally likely**. A check that fails in nine units of ten is worth less than half a bit. A check that fails in every unit is worth nothing.

# %% [markdown]
# ## The next check
#
# Two checks can separate the same suspects. Then compare their minutes.

# %% tags=["predict"]
lesson.predict("short-or-long")

# %% tags=["then"]
given_table("Checks on the four suspects", ["check", "minutes", "worth, bit", "bit a minute"],
            [(name[one.check], one.minutes, f"{one.bits:.2f}", f"{one.bits_per_minute:.3f}")
             for one in faults.next_check(unit, {}, among=suspects)])

# %% [markdown] tags=["then"]
# The long check at the end of the list finds its suspect as surely as a short one, but each minute of it is worth less. Checks that are not in the list are worth **nothing now**, because they show the same for all four suspects.
#
# **At the bench:** when two suspects are left, make the quickest check that shows a difference between them.

# %% [markdown]
# ## What a plan costs
#
# A plan is an order of checks. You stop as soon as one suspect is left, so the minutes depend on which suspect it is. For the average: **multiply the share of each suspect by the minutes until it is found; then add up**.

# %% tags=["predict"]
lesson.predict("which-first")

# %% tags=["then"]
plans = [checks, [checks[1], checks[0], checks[2]], faults.quickest_plan(unit, checks, suspects)]
given_table("Three checks for the same four suspects", ["order", "average, min", *(one[0].replace("-", " ") for one in suspects)],
            [(", then ".join(plan).replace("-", " "), f"{faults.expected_minutes(unit, plan, suspects).m_as('min'):.1f}",
              *(f"{faults.minutes_spent(unit, plan, suspects, one).m_as('min'):g}" for one in suspects)) for plan in plans])

# %% [markdown] tags=["then"]
# The right-hand columns are the minutes until each suspect is known. No check finds the last suspect, so it is known only when all three checks are made.
#
# **Which check first?** Divide the share of a suspect by the minutes of its check. The largest figure goes first, even if its check is not the shortest.

# %% [markdown]
# ## Two faults at once
#
# Two assembly faults in one unit are rare. If one is found in 6 of 1000 units and another in 5 of 1000, and neither causes the other, multiply: 0.006 × 0.005 is 30 units in a million. So look for **one** fault that explains everything. Look for two only if no single fault does.

# %% tags=["predict"]
lesson.predict("one-or-two")

# %% tags=["then"]
both = faults.suspects_for(unit, [kinds["click"], kinds["ring-gap"]])
fault_board_rig(unit, {kinds[kind]: table.outcome(one, kinds[kind]).key for kind, one in zip(("click", "ring-gap"), both)})

# %% [markdown] tags=["then"]
# No row of the picture has both marks. Set the ring gap to “as it should be”: now one fault alone explains what is left.
#
# When you have found and repaired **one** fault, make all checks again. A second fault that fails the same check may be hidden behind it.

# %% [markdown]
# ## What no check tells apart
#
# Some assembly faults show the same in every check. Then no order of checks helps: you must take the unit apart. Others show in no check at all. Write that on the record, and do not guess.

# %% tags=["rig"]
strip = {"shift": "take the selector out; look at spring, plate and pin",
         "setting": "take the ring out; measure the shim, look at the ring's seat",
         "joint": "slacken the bolts; look at threads and faces", "order": "open the unit; look for the part"}
groups = faults.indistinguishable(unit)
given_table("Alike in every check", ["assembly faults", "show in", "to see which"],
            [(" · ".join(name[one] for one in group.misbuilds), "no check" if group.silent else "the same checks, alike",
              "; or ".join(dict.fromkeys(strip[faults.part_of(unit, one)] for one in group.misbuilds))) for group in groups])

# %% [markdown]
# Oiled bolts click at the right torque, but their clamp is too large. Nobody notices a missing magnet until the gears wear. So check such things **while you can see them**: wipe the threads, count small parts aloud, tick the step off and sign it.

# %% [markdown]
# ## When the check is wrong
#
# Before you open a unit, ask whether the check was made correctly. Take the count of turns: the ratio is driven teeth divided by driving teeth, pair by pair, multiplied. With one road wheel held and only the other counted, the input shaft turns **half** as often for the same count.

# %% tags=["predict"]
lesson.predict("another-gear")

# %% tags=["then"]
gear, ways = unit.gear_train.gears[2], geartrain.ways_of_counting(unit.gear_train)[::-1]
teeth = next(mesh.driven.teeth for mesh in unit.gear_train.meshes if mesh.id == gear.engages[0]) - 1
given_table(f"{gear.name}, five turns: ratio {abs(float(geartrain.ratio(unit.gear_train, gear.id))):.3f}", ["counted", "input turns"],
            [(way, abs(geartrain.count_turns(unit.gear_train, gear.id, 5, way).seen)) for way in ways]
            + [(f"{ways[0]}, with a driven gear of one tooth less",
                abs(geartrain.count_turns(geartrain.with_wheel(unit.gear_train, gear.engages[0], "driven", teeth), gear.id, 5, ways[0]).seen))])

# %% [markdown]
# ## When the pull is wrong
#
# Torque = pull × radius of the drum. What else turns with the shaft is subtracted first.

# %% tags=["predict"]
lesson.predict("rest-not-taken-off")

# %% tags=["then"]
given_table("A pull that was not taken as it should be", ["what was done", "the bearings then seem to take", "because"],
            [(one.words, one.seems, one.why) for one in faults.FALSE_PULLS.values()])

# %% [markdown] tags=["then"]
# After a false pull you change a shim that was right. So make the check again, **as the manual says**, before you believe it.

# %% tags=["then"] needs="cord-of-two"
wrong = [one for one in section.misbuilds for change in one.changes
         if change.kind == "setting" and change.support == neutral.support]
pulls = [("as it should be", faults.pull(neutral, faults.as_built(unit, [])))]
pulls += [(one.name, faults.pull(neutral, faults.as_built(unit, [one]))) for one in wrong]
given_table("The pull in neutral", ["built", "scale, N", "the other shaft, N", "rest, N", "limits, N"],
            [(what, p.shown_n, p.alone_n, p.rest_n, f"{p.low_n:.0f} to {p.high_n:.0f}") for what, p in pulls])

# %% [markdown]
# ## The order of the checks
#
# Some steps spoil a check. The pull in neutral is read before the drive-shaft seals go in, because new seals rub more than the bearings. The lockout is proven with gate cover, lever and fork pin in place. Leaks are looked for once the oil is in. A check made too early or too late shows **nothing**.

# %% tags=["predict"]
lesson.predict("after-the-seal")

# %% [markdown] tags=["then"]
# The pull includes the friction of the seal, and you cannot say how much that is. The bearings may have too little preload. Take the seal out, read the pull again, and fit a new seal.

# %% [markdown]
# ## A search in five steps
#
# 1. **Write down** what was seen, and what passed, before anything is taken apart.
# 2. **Could it hurt somebody?** Tag it.
# 3. **List** every assembly fault that explains all of it. Look for one first, then for two.
# 4. **Choose** the check that is worth most for its minutes. Question a reading before you believe it.
# 5. When no check helps further, **strip to where you can see the part**. Repair it, and make **all** checks again.

# %% [markdown]
# ## Work it out
#
# Each calculation comes three times: worked, with steps left out, and on your own. Then go on with fresh readings as often as you like. You are told at once what is right, and which mistake a wrong figure looks like. Nothing here is marked.

# %% tags=["rig"]
lesson.calculation("count-it-should-be")

# %% tags=["rig"]
lesson.calculation("pull-that-is-left")

# %% tags=["rig"]
lesson.calculation("search-minutes")

# %% [markdown]
# ## How you are marked
#
# Records, checks, letters and figures are your own. No mark depends on the minutes that you spend on your own unit. Where an answer builds on an earlier one, a mistake costs marks once. What you do with a unit that could hurt somebody is **must-pass**.

# %% [markdown]
# Next: open the exercise from **start-here**.
#
# <details>
# <summary>Where the rules and figures come from</summary>
#
# - What a check is worth: entropy of its outcomes in bits (Shannon 1948, as remembered). Chance of each suspect: shares of how often each is met (Bayes, as remembered).
# - Largest chance for each minute first: a known rule for searching one of several places (as remembered, not looked up again).
# - What each assembly fault shows: computed by the models of the other modules on an invented unit.
# - How often an assembly fault is found, minutes of checks, false readings, what takes a unit out of use: common practice, no source.
#
# </details>
