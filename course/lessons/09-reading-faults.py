# %% [markdown]
# # Reading faults backwards
#
# <div class="twoshaft-if-missing">If no pictures appear below: press <b>Run</b>, then <b>Run All Cells</b>.</div>
#
# **After this lesson you can**
#
# - work back from what a check shows to every misbuild that explains it
# - go from the driver's words to a check, and from its finding to a part
# - choose the check that tells suspects apart in the fewest minutes
# - say what a search leaves and costs
# - recognise two faults at once
# - say what no check can tell apart
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
# - **Some faults end the search for the day.** A lockout that fails, or fails only sometimes; two gears that go in at once; a gear that does not stay in. On the road they lock the wheels or leave the driver without drive. Tag the unit, write down what was seen, and let nobody fit it.
# - **Never drive to find out.** What the hand finds on the bench hurts nobody. What the road finds may.
# - **A check that passes once and fails once has failed.** Something in there lies where it likes.
# - Turn gears **by hand only**, fingers out of the teeth; say aloud when you turn while somebody else has a hand in the case.
# - Before a unit is opened again its oil is **drained**, and its springs and balls come out under **eye protection**.
#
# On this page nothing can break. Try things.

# %% [markdown]
# ## From misbuild to symptom
#
# The build goes forwards: somebody does something wrongly, and a check shows it. The picture has one row for each misbuild of this unit, one column for each final check. Each square comes from working the models of gate, bearings, bolts, film and gears with that misbuild in them.
#
# The names at the side are the short names of the unit's file.

# %% tags=["predict"]
lesson.predict("silent-and-alike")

# %% tags=["then"]
fault_board(unit)

# %% [markdown] tags=["then"]
# Look for rows that are empty, and for rows that are equal, letter by letter. Keep them in mind: they decide how far any search can go.
#
# Then look along the columns. Most rows have a mark in one column only, but where a column is crowded, such as that of the leaks, one symptom has several causes.

# %% [markdown] needs="cord-of-two"
# ## From symptom to misbuild
#
# Reading backwards means: which rows show **exactly** what was seen? What **passed** counts as much as what failed. A misbuild that would have failed a check that passed is out.

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
given_table("What explains it alone", ["seen", "misbuilds"], rows)

# %% [markdown] tags=["then"]
# Compare the two rows. Where they are the same, the two further checks told nothing: none of the misbuilds would have shown in the float or under the wrench. A check that cannot tell the suspects apart costs its minutes and gives nothing, however careful you make it.

# %% [markdown]
# ## The fault board
#
# Now search yourself. Say what each check showed; the board lists what explains all of it with as few misbuilds as possible, what each further check would tell, and what you have spent.
#
# **Try:** the direct shift that must be stopped is not stopped. Take it back. Then: oil came out, but nobody noted where. Which check would you make next?

# %% tags=["rig"]
fault_board_rig(unit)

# %% [markdown]
# After the failed lockout several misbuilds are left, and no further check splits them. After the oil there are more still: whoever notes only “it leaks” has paid for the check and thrown half of it away. The board looks for one misbuild first and for pairs only when none does, and it orders the checks by what a **minute** of each tells, not by habit.
#
# If a bolt of a sealed joint turns before the click, **stop**. The sealant has cured, and it tears when the bolt turns further. Open the joint and close it anew.

# %% [markdown]
# ## What a check is worth
#
# A check is worth something only if it can come out in more than one way. It tells most when both ways are **equally likely**. The measure is the bit: one bit halves what is left.
#
# How likely each suspect is follows from how often it is met: **its share of the sum of all that are left**. The chance that a check fails is the sum of the shares of those that fail it.

# %% tags=["predict"]
lesson.predict("nine-of-ten")

# %% tags=["then"]
usual = ("lockout", "gears-held", "cord", "two-at-once", "turns", "ring-gap")
known = [kinds[kind] for kind in ("click", *usual) if kind in kinds]
last, *checks = faults.checks_apart(unit, known, 4)
suspects = faults.suspects_for(unit, [*checks, last])
left = faults.explain(unit, {}, among=suspects)
given_table("Four suspects; one of them is in the unit", ["misbuild", "often, in 1000", "share now, %"],
            [(name[one[0]], section.misbuild_by_id(one[0]).often_per_1000, f"{100 * chance:.0f}")
             for one, chance in zip(left.sets, left.chances)])

# %% tags=["then"]
given_table("What is told, by how likely a check is to fail", ["chance of failing", "told, bit", "bit a minute, if it takes 4 min"],
            [(f"{odds:.0%}", f"{faults.told(odds):.2f}", f"{faults.told(odds) / 4:.3f}") for odds in (0.5, 0.7, 0.8, 0.9, 0.95, 1.0)])

# %% tags=["then"]
given_table("Checks on the four suspects", ["check", "minutes", "tells, bit", "bit a minute"],
            [(name[one.check], one.minutes, f"{one.bits:.2f}", f"{one.bits_per_minute:.3f}")
             for one in faults.next_check(unit, {}, among=suspects)])

# %% [markdown] tags=["then"]
# **At the bench:** when two are left, make the quickest check that shows something else with one than with the other. A check that shows the same with both is not made.
#
# A check that fails in nine of ten tells less than half a bit. One that fails for certain tells nothing. The long check at the end of the list finds its suspect as surely as a short one does, but every minute of it tells less.
#
# All checks that are not in the list are worth **nothing now**: they show the same for all four suspects.

# %% [markdown]
# ## What a plan costs
#
# A plan is an order of checks. You stop as soon as one suspect is left, so what you spend depends on which it is. On average: **for each suspect, its share × the minutes until it is found; then add up**.

# %% tags=["predict"]
lesson.predict("which-first")

# %% tags=["then"]
plans = [checks, [checks[1], checks[0], checks[2]], faults.quickest_plan(unit, checks, suspects)]
given_table("Three checks for the same four suspects", ["order", "average, min", *(one[0].replace("-", " ") for one in suspects)],
            [(", then ".join(plan).replace("-", " "), f"{faults.expected_minutes(unit, plan, suspects).m_as('min'):.1f}",
              *(f"{faults.minutes_spent(unit, plan, suspects, one).m_as('min'):g}" for one in suspects)) for plan in plans])

# %% [markdown] tags=["then"]
# The right-hand columns are the minutes until each suspect is known: add up the checks, and stop where one suspect alone is left. The last suspect costs the same in every order: none of the three checks finds it, so it is known only when all are made. What decides is the chance of ending the search **for each minute**: the share of the suspect divided by the minutes of its check. The largest goes first, even where its check is not the shortest.

# %% [markdown]
# ## Two faults at once
#
# Two misbuilds in one unit are rare: with shares of 6 and 5 in 1000, and neither having to do with the other, both are met in 0.006 × 0.005, that is 30 units in a million. So look for **one** that explains everything first, and for two only when no single one does.

# %% tags=["predict"]
lesson.predict("one-or-two")

# %% tags=["then"]
both = faults.suspects_for(unit, [kinds["click"], kinds["ring-gap"]])
fault_board_rig(unit, {kinds[kind]: table.outcome(one, kinds[kind]).key for kind, one in zip(("click", "ring-gap"), both)})

# %% [markdown] tags=["then"]
# No row of the picture has both marks. Set the ring gap to “as it should be” and watch one misbuild come back. And a warning: when **one** is found and repaired, make all checks again. A second one that fails the same check was hidden behind it.

# %% [markdown]
# ## What no check tells apart
#
# Some misbuilds show the same in every check. No clever order helps; only taking apart does. Others show in no check at all. Say so, on the record, instead of guessing.

# %% tags=["rig"]
strip = {"shift": "take the selector out; look at spring, plate and pin",
         "setting": "take the ring out; measure the shim, look at the ring's seat",
         "joint": "slacken the bolts; look at threads and faces", "order": "open the unit; look for the part"}
groups = faults.indistinguishable(unit)
given_table("Alike in every check", ["misbuilds", "show in", "to see which"],
            [(" · ".join(name[one] for one in group.misbuilds), "no check" if group.silent else "the same checks, alike",
              "; or ".join(dict.fromkeys(strip[faults.part_of(unit, one)] for one in group.misbuilds))) for group in groups])

# %% [markdown]
# What no check shows is the uncomfortable part. Oiled bolts click at the right torque and carry too much; a missing magnet is noticed by nobody until the gears wear. Such things are made sure of **while they can be seen**: threads wiped, small parts counted aloud, the step ticked off and signed.

# %% [markdown]
# ## When the check is wrong
#
# Before you open a unit, ask whether the check was made as it should be. A false reading has its own pattern:
#
# - **Turns.** The ratio is driven teeth over driving teeth, pair by pair, multiplied. With one wheel held and only the other counted, the input shaft turns **half** as often for the same count.
# - **Pull.** Torque = pull × radius of the drum. What else turns is taken off first.

# %% tags=["predict"]
lesson.predict("another-gear")

# %% tags=["then"]
gear, ways = unit.gear_train.gears[2], geartrain.ways_of_counting(unit.gear_train)[::-1]
teeth = next(mesh.driven.teeth for mesh in unit.gear_train.meshes if mesh.id == gear.engages[0]) - 1
given_table(f"{gear.name}, five turns: ratio {abs(float(geartrain.ratio(unit.gear_train, gear.id))):.3f}", ["counted", "input turns"],
            [(way, abs(geartrain.count_turns(unit.gear_train, gear.id, 5, way).seen)) for way in ways]
            + [(f"{ways[0]}, with a driven gear of one tooth less",
                abs(geartrain.count_turns(geartrain.with_wheel(unit.gear_train, gear.engages[0], "driven", teeth), gear.id, 5, ways[0]).seen))])

# %% tags=["then"]
given_table("A pull that was not taken as it should be", ["what was done", "the bearings then seem to take", "because"],
            [(one.words, one.seems, one.why) for one in faults.FALSE_PULLS.values()])

# %% [markdown] tags=["then"]
# A false pull sends you to the wrong shim: the pair was right, and you set it wrong. Make the check again, **as the manual says**, before you believe it.

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
# Checks spoil each other. The pull in neutral is read before the drive-shaft seals go in, because new seals rub more than the bearings do. The lockout is proven with gate cover, lever and fork pin in place. Leaks are looked for once the oil is in. A check made too early or too late is not a weaker check: it is **none**.
#
# **Explain to yourself:** the total pull was read after the left seal went in, and it was inside the limits. What do you know?

# %% [markdown]
# ## A search in five steps
#
# 1. **Write down** what was seen, and what passed, before anything is taken apart.
# 2. **Could it hurt somebody?** Tag it.
# 3. **List** every misbuild that explains all of it; one at a time first, then two.
# 4. **Choose** the check that tells most for its minutes. Question a reading before you believe it.
# 5. When no check can tell more, **strip where you can see it**. Repair, and make **all** checks again.

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
# Records, checks, letters and figures are your own. No mark depends on the minutes that you spend on your own unit. Where an answer builds on an earlier one, a slip is charged once. What is done with a unit that could hurt somebody is **must-pass**.

# %% [markdown]
# Next: open the exercise from **start-here**.
#
# <details>
# <summary>Where the rules and figures come from</summary>
#
# - What a check tells: entropy of its outcomes in bits (Shannon 1948, as remembered). Chance of each suspect: shares of how often each is met (Bayes, as remembered).
# - Largest chance for each minute first: a known rule for searching one of several places (as remembered, not looked up again).
# - What each misbuild shows: computed by the models of the other modules on an invented unit.
# - How often a misbuild is met, minutes of checks, false readings, what takes a unit out of use: common practice, no source.
#
# </details>
