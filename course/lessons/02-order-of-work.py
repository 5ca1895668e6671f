# %% [markdown]
# # Order of work
#
# <div class="twoshaft-if-missing">If no pictures appear below: press <b>Run</b>, then <b>Run All Cells</b>.</div>
#
# **After this lesson you can**
#
# - plan a workable order for a sub-assembly and for the whole unit
# - say why one step comes before another
# - say what can be done next
# - correct a wrong step with the least rework
# - keep within the time that sealant and heat allow
# - name the parts that must be new
#
# **Time:** 30 to 40 minutes. **What passing proves:** that you can plan the build before you touch a bench unit.
#
# *Invented unit, for teaching. On a real unit the maker's manual, local codes and licensed practice decide.*

# %% tags=["setup"]
from twoshaft.models import order
from twoshaft.plots.tables import given_table
from twoshaft.practice import open_lesson
from twoshaft.rigs import build_simulator, exploded_view, order_bench
from twoshaft.rigs import rule_picture, unit_section

lesson = open_lesson("order-of-work")
unit = lesson.unit
whole = order.OrderTask.from_unit(unit)
name = {operation.id: operation.name for operation in unit.operations}

# %% [markdown]
# ## From earlier lessons

# %% tags=["rig"]
lesson.asked_again()

# %% [markdown]
# ## Before you start
#
# - Wear eye protection when anything is struck, and whenever springs, detent balls or circlips are fitted or released. A circlip leaves the pliers faster than you blink.
# - Hot parts from the oven look like cold ones. Wear gloves, and say aloud what is hot.
# - Cases and shafts are heavy and slip when oiled. Use lifting aids, and keep fingers out of gears that are turned by hand.
# - Solvents, sealant and drained oil: gloves, ventilation, and their safety data sheets. Never use brake cleaner near heat.
#
# On this page nothing can break. Try things.

# %% [markdown]
# ## The unit, cut open
#
# Below is the unit as a drafter draws it: cut through all its shafts, the shafts laid one below the other. Parts that are cut are hatched; shafts, bolts, pins, balls and rollers are left whole. A thin line of dashes and dots is an axis, or the line where two gears meet.

# %% tags=["predict"]
lesson.predict("keeps-the-rest")

# %% [markdown] tags=["then"]
# Find the parts: point at one, tap it, or walk there with the arrow keys, and read its name.

# %% tags=["then"]
unit_section(unit)

# %% [markdown] tags=["then"]
# A part in the middle of the picture is reached late when the unit is taken apart, and fitted early when it is built.

# %% [markdown] tags=["then"]
# Here are the parts of one stage, apart. Move the slider: each part goes in the way it is fitted. Choose another stage in the list.

# %% tags=["then"]
exploded_view(unit)

# %% [markdown]
# ## An order, not the order
#
# A build is not one fixed list. Some steps need others; some can be done at any time. Two mechanics can work in different orders and both be right.

# %% tags=["predict"]
stage = unit.stages[0]
first = order.OrderTask.from_unit(unit, unit.operations_of[stage.id])
lesson.predict("only-last", choice={step: name[step] for step in first.steps}, right=order.model_order(first)[-1])

# %% [markdown] tags=["then"]
# Put the list in order. The bench says at once what is wrong, and why.

# %% tags=["then"]
order_bench(unit, unit.operations_of[stage.id])

# %% [markdown] tags=["then"]
# Try a second order that works too. There are many, as the next table counts.

# %% tags=["then"]
tasks = [(s, order.OrderTask.from_unit(unit, unit.operations_of[s.id])) for s in unit.stages]
given_table(
    "How many orders work, stage by stage",
    ["stage", "steps", "orders that work"],
    [(s.name, len(task.steps), str(order.count_orders(task))) for s, task in tasks],
)

# %% [markdown] tags=["then"]
# So nobody has to learn one list by heart. You have to know **why** one step comes before another. Then every workable order is open to you, also on a unit that you have never seen.

# %% [markdown]
# ## Four reasons
#
# There are only four reasons why a step has to come first.
#
# 1. **Cannot.** The later step is impossible without it.
# 2. **Buries.** Afterwards you can no longer reach the earlier step. You notice it only at the end.
# 3. **Harms.** In the wrong order, a part or a person is harmed.
# 4. **Blinds.** In the wrong order, a check shows nothing: you measured, and you know nothing.

# %% tags=["rig"]
found = {kind: [r for r in unit.rules if r.kind == kind and r.earlier][:2]
         for kind in ("cannot", "buries", "harms", "blinds")}
given_table("Two examples of each from this unit", ["reason", "comes first", "comes later", "why"],
            [(kind, name[r.earlier], name[r.later], r.reason) for kind, rules in found.items() for r in rules])

# %% tags=["predict"]
lesson.predict("most-expensive")

# %% [markdown] tags=["then"]
# A *cannot* stops you at once, so it costs little. A *buries* lets you work on, and every part that you fit after it must come off again.

# %% [markdown]
# ## The rules as a picture
#
# Every arrow below is a rule of this unit. Choose a step to see what has to come before it and what waits for it. The kind of each rule is written on its arrow, and the reasons stand beside the picture as sentences.

# %% tags=["rig"]
busiest = max(whole.steps, key=lambda step: whole.before[whole.number[step]].bit_count()
              * whole.after[whole.number[step]].bit_count())
rule_picture(unit, focus=busiest)

# %% [markdown]
# The step shown first is the busiest one: most of the build has to be done before it or waits for it. Look for a step with nothing before it. It can be done at any time; good to know when somebody else has the press.

# %% [markdown]
# ## What can be done next
#
# Step through a whole build. What is fitted is drawn. The step in hand is lit, with the direction in which it goes in. What is not there yet is an outline. At every point the simulator shows what is ready, what is out of reach, which holds are on and what the clock says.

# %% tags=["predict"]
lesson.predict("ready-at-start", right=str(sum(not whole.before[whole.number[step]] for step in whole.steps)))

# %% tags=["then"]
build_simulator(unit)

# %% [markdown] tags=["then"]
# Stop somewhere and look at the picture alone: which outline can be filled now, and what does another one wait for? Then read the lists.
#
# At the start many steps are ready, since the sub-assemblies do not wait for each other. Near the end the choice gets small. A good plan uses the wide part: do at the bench, early, whatever will be needed in a hurry.

# %% [markdown]
# ## Several pairs of hands
#
# Steps that do not wait for each other can be done at the same time. Then the **longest chain** of steps that wait for each other sets the time. Add up the minutes along every chain and take the largest sum. A step of that chain must not start late. Any other step can wait a little.

# %% tags=["predict"]
plans = [(s.name, order.with_many_hands(task)) for s, task in tasks]
lesson.predict("many-hands", ask=f"One pair of hands needs {plans[0][1].alone:g} minutes for the first stage, “{plans[0][0]}”. How many minutes does it take with as many hands as it can use?", right=f"{plans[0][1].minutes:g} min")

# %% [markdown] tags=["then"]
# The last column counts the steps of the longest chain: they set the time.

# %% tags=["then"]
given_table(
    "One pair of hands, and as many as can be used", ["stage", "alone, min", "many hands, min", "steps that must not wait"],
    [(stage, f"{plan.alone:g}", f"{plan.minutes:g}", len(plan.no_spare)) for stage, plan in plans],
)

# %% tags=["then"]
from twoshaft.plots.hands import hands_chart

parts = order.OrderTask.from_unit(unit, unit.operations_of[unit.stages[0].id])
hands_chart(parts, order.with_many_hands(parts))

# %% [markdown] tags=["then"]
# More hands than chains do not help: where everything waits for one step, the others stand and watch. They do not help either if there is only one press, one oven or one torque wrench.

# %% [markdown]
# ## Clocks and holds
#
# Some steps start a clock. Sealant skins over, a warm part cools, locking compound sets. From then on, do only what **must** be done between the start and the end of the clock. Do everything else before the clock starts.

# %% tags=["rig"]
given_table("The clocks of this unit", ["clock", "starts with", "must be done", "minutes", "why"],
            [(c.name, name[c.starts], name[c.ends], c.minutes, c.reason) for c in unit.clocks])

# %% [markdown]
# A **hold** is a state that some steps need and that has to be ended again. Examples: two gears engaged at once to lock the shafts, a part held aside so that another can pass. No step that needs the hold may come before it or after it, and you must not forget to end the hold.

# %% tags=["rig"]
names = {**name, **{group.id: group.name for group in unit.together}}
given_table("The holds of this unit", ["hold", "begins with", "needed for", "ends with", "why"],
            [(h.name, ", ".join(name[i] for i in h.given_by), ", ".join(names[i] for i in h.needed_by),
              ", ".join(name[i] for i in h.ended_by), h.reason) for h in unit.holds])

# %% [markdown]
# Some steps go in **as one**: two shafts whose gears mesh, rails that pass through their forks. Plan them as one step.

# %% [markdown]
# ## A mistake and its price
#
# Two things count, and they are not the same.
#
# - **Steps to move:** the fewest steps of your list that must be moved to make it work. This sets your mark.
# - **The bench cost:** what it would have cost to find out at the bench. This is what the feedback tells you.

# %% tags=["predict"]
order_done = order.model_order(whole)
late_orders = [[s for s in order_done if s != step] + [step] for step in order_done]
late = max(late_orders, key=lambda steps: order.replay(whole, steps).minutes_extra)
price, slip = order.replay(whole, late), order.plan_slip(whole, late)
lesson.predict("one-forgotten", right=str(slip.size))

# %% tags=["then"]
given_table("One forgotten step", ["forgotten", "steps to move in the plan", "extra minutes at the bench",
                                   "parts lost"],
            [(whole.label(late[-1]), slip.size, price.minutes_extra, len(price.parts_lost))])

# %% [markdown] tags=["then"]
# One line in the plan, and far more at the bench. That is why you plan on paper first.
#
# To correct a wrong step with the least rework, ask of every step that is done: does it stand in the way of the forgotten one? Undo only the steps that do. Everything else stays.

# %% tags=["then"]
build_simulator(unit, late)

# %% [markdown]
# ## Parts that must be new
#
# Some parts do their work once: seals, sealing washers, spring pins, staked nuts, a circlip that was stretched, the sealant film itself. Taking a step apart costs its single-use parts, however new they look.

# %% tags=["rig"]
given_table("Single-use parts of this unit", ["part"],
            [(part.name,) for part in unit.parts if part.single_use])

# %% [markdown]
# ## Where somebody could be hurt
#
# Some rules guard more than time and parts. If you break such a rule, you can be hurt at the bench, or the unit can fail on the road. In the exercise these are **must-pass**: marks elsewhere do not make up for one mistake here. The two orders, what can be done next, and which parts must be new decide their outcomes as well.

# %% tags=["rig"]
given_table("Rules that guard safety", ["comes first", "comes later", "why"],
            [(name[r.earlier], name[r.later], r.reason)
             for r in unit.rules if r.safety and r.earlier])

# %% [markdown]
# ## Work it out
#
# Each calculation comes three times: worked, with steps left out, and on your own. Then go on with fresh readings as often as you like. You are told at once what is right, and which mistake a wrong figure looks like. Nothing here is marked.

# %% tags=["rig"]
lesson.calculation("late-step")

# %% tags=["rig"]
lesson.calculation("clock")

# %% tags=["rig"]
lesson.calculation("several-hands")

# %% [markdown]
# ## How you are marked
#
# Every order that works gets full marks. If yours does not, the fewest steps that would have to be moved are counted, and shuffling by luck earns next to nothing. Leaving a step out is never cheaper than putting it in the wrong place. Where an answer builds on an earlier one, a mistake costs marks once.
#
# Now open the exercise from **start-here**.

# %% [markdown]
# <details>
# <summary>Where the rules and figures come from</summary>
#
# - How many orders work is counted as mathematics counts the orders that keep a set of rules (linear extensions: Brightwell and Winkler 1991, as remembered).
# - The longest chain as the shortest time: the critical path method (Kelley and Walker 1959, as remembered).
# - The fewest steps to move: enough that each pair that stands the wrong way round holds one of them (smallest vertex cover: König 1931, Dilworth 1950, as remembered).
# - Order rules, minutes and parts are invented for this unit; that such rules exist is common practice, no source.
#
# </details>
