# %% [markdown]
# # The whole build
#
# <div class="twoshaft-if-missing">If no pictures appear below: press <b>Run</b>, then <b>Run All Cells</b>.</div>
#
# **After this lesson you can**
#
# - plan the build of a whole unit, from the first ring to the last signature
# - get ready for each step
# - decide, measure and prove
# - write it down so that somebody else can trust it
#
# **Time:** 30 to 40 minutes. **What passing proves:** that you can build a whole unit on a simulated bench, know what each of your decisions brings about, and stand by your record. It does not prove that your hands can do it: that is shown at the real bench, under supervision.
#
# *Invented unit, for teaching. On a real unit the maker's manual, local codes and licensed practice decide.*

# %% tags=["setup"]
from twoshaft.models import joint, order
from twoshaft.models.wholebuild import Do, Job, asks_of, build_record, card, consequences, right_decisions, values_of
from twoshaft.models.wholebuild.asks import ways_of
from twoshaft.plots.tables import given_table
from twoshaft.practice import open_lesson
from twoshaft.rigs import whole_build
from twoshaft.units.quantities import Q

lesson = open_lesson("whole-build")
unit = lesson.unit
job = Job.of(unit, {"asked": [ask.id for ask in asks_of(Job.of(unit)) if ask.kind != "check"]})
asks = {ask.id: ask for ask in asks_of(job)}
right = right_decisions(job)

# %% [markdown]
# ## From earlier lessons

# %% tags=["rig"]
lesson.asked_again()

# %% [markdown]
# ## Before you start
#
# - **A whole unit is heavy.** Two people or a hoist lift it, and nobody reaches under it. A case that slips can cut off a finger.
# - **Solvent vapour burns.** Washing comes long before anything is warmed, and with fresh air.
# - **Warm parts look like cold ones.** Mark what is hot, and wear heat gloves.
# - **Eye protection** when you strike, press or let a snap ring spring.
# - **The lockout is proven by hand, every time.** A direct shift into reverse on the road can lock the wheels. A unit that was not proven is not fitted.
# - **Stop when you are lost.** Write down how far you are; do not go on from memory.
#
# On this page nothing can break. Try things.

# %% [markdown]
# ## Plan
#
# A build has a few long chains of steps and many short ones that can wait. Before the first step, look for three things: what is **buried** by a later step, what runs against a **clock**, and what can be done **beforehand**.

# %% tags=["predict"]
task = job.task
names = {stage.id: stage.name for stage in unit.stages}
rows = [(name, sum(task.stage(s) == id for s in task.steps), sum(task.minutes(s) for s in task.steps if task.stage(s) == id),
         sum(task.stage(ask.step) == id for ask in asks.values())) for id, name in names.items()]
longest = max(rows, key=lambda row: row[2])[0]
lesson.predict("longest-stage", choice=names, right=next(id for id, name in names.items() if name == longest))

# %% tags=["then"]
given_table("The build in stages", ["stage", "steps", "minutes", "decisions"], rows)

# %% [markdown] tags=["then"]
# The minutes are those of the steps alone; looking, fetching and writing come on top. Decisions are not spread evenly: a stage with few minutes can hold many of them. Slow down there.

# %% [markdown]
# ## Prepare
#
# Before each step, the same four questions: **What goes in, and what of it must be new? Which tool? Which figure, and for which state of the parts? What must be done before, because it cannot be reached afterwards?**
#
# The last question is the one that is forgotten. Here are steps of this unit that put others out of reach.

# %% tags=["rig"]
buries = {}
for bond in task.bonds:
    if bond.reason.kind.value == "buries":
        buries.setdefault(task.label(task.steps[bond.later]), []).append(task.label(task.steps[bond.earlier]))
given_table("What is closed off", ["by this step", "can no longer be reached"],
            [(later, " · ".join(first[:3])) for later, first in list(buries.items())[:6]])

# %% [markdown]
# ## The clock
#
# Heat, locking compound and sealant set a clock. Work out **before** it starts: what must be done inside, what that takes, what is left. What does not have to be inside is done before.

# %% tags=["predict"]
windows = {clock.id: (clock, order.window(task, clock.id)) for clock in task.clocks}
lesson.predict("least-left", choice={id: clock.name for id, (clock, _) in windows.items()}, right=min(windows, key=lambda id: windows[id][1].minutes_left))

# %% tags=["then"]
given_table("Clocks of this unit", ["clock", "allows, min", "must be inside, min", "left, min"],
            [(clock.name, clock.minutes, w.minutes_used, w.minutes_left) for clock, w in windows.values()])

# %% [markdown] tags=["then"]
# The step that ends a clock counts as well: it must be **finished** in time. Do not plan to use up the minutes that are left. Keep them for what goes wrong, such as a bolt that you drop.

# %% [markdown]
# ## Decide
#
# A whole build is a chain of small decisions, and each can spoil hours of work. Go by the **mark** for which way round. For a setting, go by the card **and** by the adapter between wrench and fastener.
#
# An adapter makes the lever longer. With wrench length *L*, reach *E* and angle *α*:
#
# setting = torque × *L* / (*L* + *E* cos *α*).

# %% tags=["predict"]
lesson.predict("square-adapter")

# %% tags=["then"]
length, reach = Q(390, "mm"), Q(55, "mm")
given_table("24 N·m wanted; wrench of 390 mm, adapter of 55 mm", ["angle", "set, N·m", "if 24 is set the fastener gets, N·m"],
            [(f"{a}°", f"{joint.setting_with_adapter(Q(24, 'N*m'), length, reach, Q(a, 'degree')).m_as('N*m'):.1f}",
              f"{joint.torque_at_bolt(Q(24, 'N*m'), length, reach, Q(a, 'degree')).m_as('N*m'):.1f}") for a in (0, 45, 90, 135)])

# %% [markdown] tags=["then"]
# In line with the wrench, the adapter adds most. If a fastener got too much torque, do not just turn it back. Take it out, and look at it and at its thread. Then fit it again or renew it.

# %% [markdown]
# ## Use it again, or renew it
#
# For each part you decide:
#
# - **Use again:** a part that you measured, that is inside its limit and whose faces are whole.
# - **Renew:** a part that works because it is **squeezed or bent once**: crush washers, staked nuts, bolts whose card says so. Also a seal or ring that was prised out, and a bearing that was pulled through its balls. Renew it even if it looks good.
# - **Not decided yet:** a part that nobody has measured, or that is dirty. Clean it, measure it, then decide.

# %% [markdown]
# ## Measure
#
# Shims are worked out from lengths of **this** unit. Where the case holds the two outer rings from outside, a thicker shim behind one of them tightens. Begin with the shim that leaves neither play nor preload. Add the least and the most preload of the target: these are the thinnest and the thickest shim that meet it. Then move both ends inwards by the uncertainty of the stack, and only then look at the shelf.

# %% tags=["predict"]
lesson.predict("just-inside")

# %% tags=["then"]
shims = [ask for ask in asks.values() if ask.kind == "shim"]
rows = []
for ask in shims:
    best = values_of(job, right)[ask.id]
    for change in (-0.06, -0.03, 0.0, 0.03):
        made = [Do(d.step, {**d.choices, ask.id: best + Q(change, "mm")}) if d.step == ask.step else d for d in right]
        found = next(s for s in consequences(job, made, over=False).shims if s.ask.id == ask.id)
        rows.append((ask.name, f"{found.total.m_as('mm'):.2f}", f"{found.cold.m_as('mm'):+.3f}", f"{found.warm.m_as('mm'):+.3f}", found.verdict))
given_table("The same pair with other shims; preload plus, end play minus", ["pair", "shim, mm", "cold, mm", "warm, mm", "is it right?"], rows)

# %% [markdown] tags=["then"]
# “meets” lies inside the target, but by less than the uncertainty: another reading might change the verdict. “misses” lies outside. The warm setting is not what you set: the maker's target is cold, and already allows for heat.

# %% [markdown]
# ## The bench
#
# Here is a part of the build, the shift mechanism, on the simulated bench. Take a step in hand, turn the part the way it belongs, and put it in its place in the section: by keys, or carry it there with a hand. In this lesson each decision is answered at once. In the exercise the bench gives readings only.
#
# **Try:** build it correctly. Then take the lockout out, put its plate in another way, and prove it again.

# %% tags=["rig"]
proven = {ask.step for ask in asks.values() if ask.kind == "proof"}
stages = {op.stage for op in unit.operations if op.id in proven}
part = [op.id for op in unit.operations if op.stage in stages] or None
whole_build(Job.of(unit, {"operations": part}))

# %% [markdown]
# Whatever is wrong with the lockout, the **proof** finds it, but only a whole proof. You try the direct shift, and it stops. You do what lets the later gear in, and that gear goes in. If it never goes in, the stop proves nothing.

# %% [markdown]
# ## The price of a wrong decision
#
# One wrong decision of each kind, in a build that is right otherwise; what it brings about comes from the models.

# %% tags=["rig"]
done, wrong = values_of(job, right), {}
for ask in asks.values():
    if ask.kind == "way" and any(w and w.misbuild for w in ways_of(job, ask.about).values()):
        wrong["way round"] = {ask.id: next(k for k, w in ways_of(job, ask.about).items() if w and w.misbuild)}
    elif ask.kind == "shim":
        wrong["shim"] = {ask.id: done[ask.id] - Q(0.1, "mm")}
    elif ask.kind == "film":
        wrong["film"] = {ask.id: done[ask.id][1:]}
    elif ask.kind == "proof":
        wrong["proof"] = {ask.id: done[ask.id][:3]}

# %% tags=["rig"]
states, used = unit.fasteners.states, [group.state for group in unit.fasteners.groups]
usual, slippery = max(used, key=used.count), min(states, key=lambda state: state.thread[1]).id
for ask in asks.values():
    if ask.kind == "joint":
        group = unit.fasteners.group(ask.about)
        if group.adapter:
            wrong["setting"] = {f"torque-{group.id}": Q(group.torque_nm[2] * 1.1, "N*m")}
        elif group.state == usual:
            wrong["threads"] = {f"state-{group.id}": slippery}
        if group.flange is not None and done[f"rounds-{group.id}"] != "1":
            wrong["rounds"] = {f"pattern-{group.id}": "clockwise", f"rounds-{group.id}": "1"}

# %% tags=["predict"]
rows = {}
for kind, change in wrong.items():
    step = next(ask.step for ask in asks.values() if {spec.name for spec in ask.fields} & set(change))
    made = [Do(d.step, {**d.choices, **change}) if d.step == step else d for d in right]
    told = consequences(job, made)
    shown = " · ".join(check.name for check, outcome in told.shown if not outcome.passes)
    rows[kind] = (f"{kind}: {told.faults[0].sentence if told.faults else 'within the spread that is allowed.'}", shown or "none")
lesson.predict("no-check-shows", choices={kind: kind for kind in rows}, right=[kind for kind, (_, shown) in rows.items() if shown == "none"])

# %% tags=["then"]
given_table("One wrong decision, and what it brings about", ["decision, and what follows", "final check that shows it"], rows.values())

# %% [markdown] tags=["then"]
# Turning a part round costs a minute while you hold it, and much more at the end. A fastener that is tightened wrongly passes every final check, and the fault shows on the road. So check such things **while you can see them**.

# %% [markdown]
# ## Prove
#
# Work out **before** each check what a sound unit shows: the turns that a gear should give, the pull that a cord should need. Then a count that is off by a tooth is a finding and not a surprise.
#
# For a gear, divide driven by driving teeth, pair by pair, and multiply. This gives the turns of the input shaft for one turn of the ring gear. With one wheel held, the ring gear makes **half** the turns of the other wheel.

# %% tags=["rig"]
from twoshaft.models import geartrain

counted = geartrain.ways_of_counting(unit.gear_train)[0]
given_table("Turns of the input shaft", ["gear", "for one of the ring gear", f"for four turns of {counted}"],
            [(gear.name, f"{abs(float(geartrain.ratio(unit.gear_train, gear.id))):.3f}",
              f"{abs(geartrain.count_turns(unit.gear_train, gear.id, 4, counted).seen):g}") for gear in unit.gear_train.gears])

# %% [markdown]
# When a check shows something else: do not make it again until it passes. Write down what was seen, open what has to be opened, find the cause, and make **all** later checks again.

# %% [markdown]
# ## The build record
#
# The bench writes this down of a right build. It holds what was measured, set, fitted and felt, and blank lines for names. It holds no verdict: that is yours, and you sign for it.

# %% tags=["rig"]
record = build_record(job, right)
heads = {"readings": "Measured", "shims": "Shims", "torques": "Tightened", "films": "Film", "proofs": "Proven", "signatures": "Signed"}
given_table(f"{record['unit']}: {record['done']} of {record['steps']} steps, {record['minutes']:g} minutes; a few lines of each kind",
            ["what", "written down"], [(f"{word}: {line[0]}", line[1]) for key, word in heads.items() for line in record[key][:3]])

# %% [markdown]
# What belongs in it: every measured length with its tool; every shim; setting, wrench and adapter; what went in new; each move of the proof and what was felt; what was found, taken out and corrected. What does not: a figure that nobody read, a tick before its check, a clean copy.
#
# The person who made a check signs for it, afterwards, with the date. Those who watched, wrote figures down or built the unit do not. Nobody signs for a check that was not made, or not repeated after a change. A finding that can hurt somebody takes the unit out of use: tag it, write it down, find the cause.

# %% [markdown]
# ## The whole bench
#
# The same bench with the whole unit. Build as far as you like; everything is told at once here.

# %% tags=["rig"]
whole_build(Job.of(unit))

# %% [markdown]
# ## Work it out
#
# Each calculation comes three times: worked, with steps left out, and on your own. Then go on with fresh readings as often as you like. You are told at once what is right, and which mistake a wrong figure looks like. Nothing here is marked.

# %% tags=["rig"]
lesson.calculation("shims-with-room")

# %% tags=["rig"]
lesson.calculation("clock")

# %% tags=["rig"]
lesson.calculation("count-it-should-be")

# %% tags=["rig"]
lesson.calculation("seen-late")

# %% [markdown]
# Next: the exercise of this module. Then the real bench, with somebody beside you.
#
# <details>
# <summary>Where the rules and figures come from</summary>
#
# - What each decision brings about is worked out by the models of modules 01 to 09; their lessons name the standards and handbooks behind them.
# - Setting over an adapter: the lever rule, as in module 01.
# - Pairing a decision's interval with the uncertainty of its measurement (guard band): after ISO 14253-1, as remembered, not looked up again.
# - What is used again and what is renewed: common practice, no source; a real part's own manual decides.
# - What belongs in a record, who signs, and what is done with a finding: common practice, no source.
# - Minutes, marks and figures: the invented unit.
#
# </details>
