# %% [markdown]
# # Order of work: exercise
#
# <div class="twoshaft-if-missing">If no forms appear below: press <b>Run</b>, then <b>Run All Cells</b>.</div>
#
# Ten tasks about the order in which a two-shaft transaxle goes back together. Take about an hour. Every answer is saved as you give it; you can stop and come back.
#
# Many orders are right. You are marked on whether yours works, not on whether it is ours.
#
# *Invented unit, for teaching. On a real unit the maker's manual, local codes and licensed practice decide.*

# %% tags=["setup"]
from twoshaft.jobsheet import open_sheet
from twoshaft.plots.tables import given_table

sheet = open_sheet("order-of-work")
given, unit = sheet.given, sheet.unit

# %% tags=["reference"]
from twoshaft.models import order
from twoshaft.records import labels
from twoshaft.units.quantities import Q
from twoshaft_grader.marking import Slip, reasons, ref

whole = order.OrderTask.from_unit(unit)

# %% [markdown] tags=["task"]
# ## 1. Put a sub-assembly in order
#
# These are the steps of one sub-assembly, out of order. Put them in an order that works.
#
# Drag a step, or choose it and use the buttons. With the keyboard: go to a step with the arrow keys and move it with Shift and an arrow key.
#
# Done means: every step stands after all the steps it needs. *8 points.*

# %% tags=["form"]
sheet.form(
    "sub-assembly",
    sheet.order("sub-assembly-order", "Put these steps in a workable order",
                steps=given.sub_assembly.start),
)

# %% tags=["reference"]
ref(
    "sub-assembly-order",
    order.OrderTask.from_unit(unit, given.sub_assembly.operations),
    outcome="plan-order",
    must_pass=True,
    lesson="02-order-of-work#four-reasons",
)

# %% tags=["mark"] task="sub-assembly" points=8

# %% [markdown] tags=["task"]
# ## 2. Mend the order of the whole unit
#
# Somebody planned the whole build. Most of the plan works; a few steps stand in the wrong place, and one of them is a matter of safety. Move as few steps as you can until the plan works.
#
# The list is long. Go through it stage by stage and ask of each step what it needs. *10 points.*

# %% tags=["form"]
sheet.form(
    "whole-unit",
    sheet.order(
        "whole-unit-order",
        "Move the steps that stand in the wrong place",
        steps=given.whole_unit.start,
    ),
)

# %% tags=["reference"]
ref(
    "whole-unit-order",
    order.OrderTask.from_unit(unit, given.whole_unit.operations),
    outcome="plan-order",
    must_pass=True,
    lesson="02-order-of-work#a-slip-and-its-price",
)

# %% tags=["mark"] task="whole-unit" points=10

# %% [markdown] tags=["task"]
# ## 3. What can be done next?
#
# A build has come as far as the list shows. Tick every step that can be done right now, without anything else in between. *4 points.*

# %% tags=["rig"]
given_table("Done so far", ["no.", "step"],
            [(n, step.text) for n, step in enumerate(given.next_steps.done, 1)])

# %% tags=["form"]
sheet.form(
    "next-steps",
    sheet.choices("next-steps-ready", "Which of these can be done right now?",
                  options=given.next_steps.options),
)

# %% tags=["reference"]
done = [step.id for step in given.next_steps.done]
shown = labels(given.next_steps.options)
ready = set(order.ready_steps(whole, done)) & set(shown)
waits = {}
for step in set(shown) - ready:
    rule = order.consequences(whole, [*done, step])[-1].reasons[0]
    first = " or ".join(f"“{whole.label(one)}”" for one in rule.earlier)
    waits[step] = f"It has to wait for {first or 'its turn'}. {rule.text}"
ref("next-steps-ready", ready, outcome="next-steps", lesson="02-order-of-work#what-can-be-done-next",
    slips=reasons(given.next_steps.options, ready, waits))

# %% tags=["mark"] task="next-steps" points=4

# %% [markdown] tags=["task"]
# ## 4. Find what gets buried
#
# In this part of a build one step comes too early and closes off another that is still to be done. Nobody would notice until much later. *4 points.*

# %% tags=["rig"]
given_table("The order as planned", ["no.", "step"],
            [(n, step.text) for n, step in enumerate(given.buried.sequence, 1)])

# %% tags=["form"]
sheet.form(
    "buried",
    sheet.choice("buried-step", "Which step can no longer be done when its turn comes?",
                 options=given.buried.options),
    sheet.choice("burying-step", "Which step closes it off?", options=given.buried.options),
)

# %% tags=["reference"]
part = order.OrderTask.from_unit(unit, given.buried.operations)
(pair,) = order.buried_steps(part, [step.id for step in given.buried.sequence])
steps, others = given.buried.options, tuple(set(labels(given.buried.options)) - set(pair))
ref("buried-step", pair[0], outcome="find-buried", lesson="02-order-of-work#four-reasons",
    slips=reasons(steps, pair[0], {
        pair[1]: "This step closes something off; it is not the buried one.",
        others: "This step can still be done where it stands in the plan.",
    }))
ref("burying-step", pair[1], outcome="find-buried", lesson="02-order-of-work#four-reasons",
    slips=reasons(steps, pair[1], {
        pair[0]: "This step is the buried one; look for what lies over it.",
        others: "Nothing that is still to come lies behind this step.",
    }))

# %% tags=["mark"] task="buried" points=4

# %% [markdown] tags=["task"]
# ## 5. Mend a slip with the least rework
#
# The build has come as far as the list shows when somebody sees that one step was left out. Work out what has to come off before that step can be done, and nothing more. Then work out how many minutes that costs: taking those steps apart and doing them again. The forgotten step itself is not counted, since it has to be done anyway. *8 points.*

# %% tags=["rig"]
given_table(
    f"Built so far; left out: “{given.repair.late.text}”",
    ["no.", "step", "take apart, min", "do again, min"],
    [(n, step.text, given.repair.undo[step.id], given.repair.do[step.id])
     for n, step in enumerate(given.repair.built, 1)],
)

# %% tags=["form"]
sheet.form(
    "repair",
    sheet.choices("repair-off", "Which steps have to be taken apart?",
                  options=given.repair.options),
    sheet.number("repair-minutes", "How many minutes does that cost, apart and again?", "min"),
)

# %% tags=["reference"]
repair = given.repair
part = order.OrderTask.from_unit(unit, repair.operations)
found = order.rework(part, [step.id for step in repair.built], repair.late.id,
                     undo=repair.undo, do=repair.do)
stays = tuple(set(labels(repair.options)) - set(found.off))
off = ref("repair-off", set(found.off), outcome="least-rework", weight=3,
          lesson="02-order-of-work#a-slip-and-its-price", slips=reasons(repair.options, found.off, {
              stays: f"It is not in the way: with this step in place, “{repair.late.text}” can still be done."}))
apart = sum(repair.undo[step] for step in off)
again = sum(repair.do[step] for step in off)

# %% tags=["reference"]
ref(
    "repair-minutes",
    Q(apart + again, "min"),
    outcome="least-rework",
    weight=3,
    tolerance={"absolute": Q(0.1, "min")},
    lesson="02-order-of-work#a-slip-and-its-price",
    slips=[
        Slip(Q(apart, "min"), 0.5, "This is the time to take apart; doing it again comes on top."),
        Slip(Q(again, "min"), 0.5, "This is the time to do it again; taking apart comes on top."),
    ],
)

# %% tags=["mark"] task="repair" points=8

# %% [markdown] tags=["task"]
# ## 6. Keep within the time
#
# Once the first step of the table is done, a clock runs, and the last step must be finished before it ends. First work out how many minutes are left over when only what must lie between is done. Then tick every step that you may do between the first and the last and still be in time: those that must lie between, and those that may lie between and are short enough on their own. *6 points.*

# %% tags=["rig"]
clock = given.clock
given_table(
    f"{clock.minutes:g} minutes from the end of “{clock.starts.text}” "
    f"to the end of “{clock.ends.text}”",
    ["step", "takes, min"],
    [(step.name, step.minutes) for step in clock.steps],
)

# %% tags=["form"]
sheet.form(
    "clock",
    sheet.number("clock-left", "How many minutes are left over?", "min"),
    sheet.choices("clock-inside", "Which of these may be done while the clock runs?",
                  options=given.clock.options),
)

# %% tags=["reference"]
clock = given.clock
window = order.window(whole, clock.clock, minutes=clock.takes, allowed=clock.minutes)
last = clock.takes[clock.ends.id]
left = ref(
    "clock-left",
    Q(window.minutes_left, "min"),
    outcome="keep-the-clock",
    tolerance={"absolute": Q(0.1, "min")},
    lesson="02-order-of-work#clocks-and-holds",
    slips=[Slip(Q(window.minutes_left + last, "min"), 0.5,
                "The last step takes time too, and must be finished before the clock ends.")],
)

# %% tags=["reference"]
room = left.to("min").magnitude
asked = set(labels(clock.options))
fits = {step for step in window.optional if clock.takes.get(step, room + 1) <= room}
inside = asked & (set(window.inside) | fits)
late = {step: f"It may lie between, but it takes {clock.takes[step]:g} min, and that is more than is left over."
        if step in window.optional else "It cannot lie between: it belongs before the first step or after the last one."
        for step in asked - inside}
ref("clock-inside", inside, outcome="keep-the-clock", weight=2, lesson="02-order-of-work#clocks-and-holds",
    slips=reasons(clock.options, inside, late))

# %% tags=["mark"] task="clock" points=6

# %% [markdown] tags=["task"]
# ## 7. Which parts must be new?
#
# A finished unit was stripped as far as the list shows and is to be built up again. Tick every part that must be new. *4 points.*

# %% tags=["rig"]
given_table("Taken apart, in this order", ["no.", "step that was undone"],
            [(n, step.text) for n, step in enumerate(given.new_parts.stripped, 1)])

# %% tags=["form"]
sheet.form(
    "new-parts",
    sheet.choices("new-parts-needed", "Which of these parts must be new?",
                  options=given.new_parts.options),
)

# %% tags=["reference"]
stripped = [step.id for step in given.new_parts.stripped]
must = set(order.new_parts(whole, stripped)) & set(labels(given.new_parts.options))
loose = {part for step in stripped for part in whole.parts[whole.number[step]]}
spared = {part: "It came out, but it takes no harm from that and is fitted again." if part in loose else
          "It is new whenever it comes out; here it stayed where it was."
          for part in set(labels(given.new_parts.options)) - must}
ref("new-parts-needed", must, outcome="renew-parts", lesson="02-order-of-work#parts-that-must-be-new",
    slips=reasons(given.new_parts.options, must, spared))

# %% tags=["mark"] task="new-parts" points=4

# %% [markdown] tags=["task"]
# ## 8. Why this before that?
#
# Three pairs of steps. For each pair choose the reason why the first comes before the second, and what kind of reason it is. *6 points.*

# %% tags=["rig"]
given_table("The pairs", ["pair", "comes first", "comes later"],
            [(n, pair.earlier.text, pair.later.text)
             for n, pair in enumerate(given.why.pairs, 1)])

# %% tags=["form"]
sheet.form("why", *[
    field
    for n, pair in enumerate(given.why.pairs, 1)
    for field in (
        sheet.choice(f"why-{n}-reason", f"Pair {n}: why does the first come before the second?",
                     options=pair.options),
        sheet.choice(f"why-{n}-kind", f"Pair {n}: what kind of reason is it?",
                     options=given.why.kinds),
    )
])

# %% tags=["reference"]
belongs = {rule: bond.reason for bond in whole.bonds for rule in bond.reason.rules}
not_this_kind = {
    "cannot": "The later step could be done without it; ask what that would cost.",
    "buries": "The earlier step could still be reached; ask what would be wrong then.",
    "harms": "Nothing is damaged and nobody is hurt the wrong way round.",
    "blinds": "No check is made worthless here.",
}

# %% tags=["reference"]
for n, pair in enumerate(given.why.pairs, 1):
    between = order.reasons_between(whole, pair.earlier.id, pair.later.id)
    right, kinds = {r for b in between for r in b.rules}, {b.kind.value for b in between}
    elsewhere = {
        rule: f"True, but of another pair: it puts “{whole.label(belongs[rule].earlier[0])}” "
              f"before “{whole.label(belongs[rule].later)}”."
        for rule in set(labels(pair.options)) - right}
    ref(f"why-{n}-reason", right, weight=2, outcome="why-before", lesson="02-order-of-work#four-reasons",
        slips=reasons(pair.options, right & set(labels(pair.options)), elsewhere))
    ref(f"why-{n}-kind", kinds, outcome="why-before", lesson="02-order-of-work#four-reasons",
        slips=reasons(given.why.kinds, kinds, not_this_kind))

# %% tags=["mark"] task="why" points=6

# %% [markdown] tags=["task"]
# ## 9. Several pairs of hands
#
# Some of you share this part of the build. Each step is done by one pair of hands without a break, and two steps can be done at the same time when neither waits for the other. Work out the times, count the orders, and tick the steps that must start the moment they can. *10 points.*

# %% tags=["rig"]
given_table("The steps to share", ["step", "what is done", "takes, min", "waits for"],
            [(row.letter, row.name, row.minutes, row.waits_for) for row in given.several_hands.rows])

# %% tags=["form"]
sheet.form(
    "hands",
    sheet.number("hands-alone", "How long does one pair of hands take for all of it?", "min"),
    sheet.number("hands-least", "How long does it take at least, with as many hands as it can use?", "min"),
    sheet.number("hands-orders", "In how many different orders can one pair of hands work?", whole=True),
    sheet.choices("hands-waits", "Which steps must not start late, or all of it takes longer?",
                  options=given.several_hands.options),
)

# %% tags=["reference"]
shared, takes = given.several_hands.operations, given.several_hands.takes
part = order.OrderTask.from_unit(unit, shared)
plan = order.with_many_hands(part, takes)
where = "02-order-of-work#several-pairs-of-hands"
ref("hands-alone", Q(plan.alone, "min"), outcome="share-the-work", tolerance={"absolute": Q(0.1, "min")},
    lesson=where)
one_pair = "That is the time of one pair of hands; steps that do not wait for each other can be done at once."
ref("hands-least", Q(plan.minutes, "min"), outcome="share-the-work", weight=3,
    tolerance={"absolute": Q(0.1, "min")}, lesson=where, slips=[
        Slip(Q(plan.alone, "min"), 0, one_pair),
        Slip(Q(max(takes.values()), "min"), 0, "The longest step alone does not set the time: some steps wait for others.")])

# %% tags=["reference"]
ref("hands-orders", order.count_orders(part).value, outcome="share-the-work", weight=3, lesson=where,
    slips=[Slip(1, 0, "There are more: steps that do not wait for each other can change places.")])
can_wait = tuple(step for step in shared if step not in plan.no_spare)
ref("hands-waits", set(plan.no_spare), outcome="share-the-work", weight=3, lesson=where,
    slips=reasons(given.several_hands.options, plan.no_spare, {
        can_wait: "This step can wait a while, and nothing else is held up by it."}))

# %% tags=["mark"] task="hands" points=10

# %% [markdown] tags=["task"]
# ## 10. Which order must never be used?
#
# Each of these plans has one slip. Two of the slips cost time or parts. One of them could hurt somebody or let the unit fail on the road. **You must get this one right to pass.** *3 points.*

# %% tags=["rig"]
plans = given.safe.orders
given_table("Three plans for the same steps", ["no.", *(f"order {plan.letter}" for plan in plans)],
            [(n, *(step.text for step in steps))
             for n, steps in enumerate(zip(*(plan.steps for plan in plans)), 1)])

# %% tags=["form"]
sheet.form(
    "safe",
    sheet.choice("safe-order", "Which order must never be used?", options=given.safe.options),
    sheet.choice("safe-reason", "What could happen?", options=given.safe.reasons),
    sheet.choice("safe-kind", "What kind of reason is that?", options=given.why.kinds),
)

# %% tags=["reference"]
part = order.OrderTask.from_unit(unit, given.safe.operations)
broken = {one.letter: order.broken_safety(part, [step.id for step in one.steps]) for one in given.safe.orders}
(never,) = [letter for letter, rules in broken.items() if rules]
dangers = {rule for reason in broken[never] for rule in reason.rules}
kinds = {reason.kind.value for reason in broken[never]}
where = "02-order-of-work#where-somebody-could-be-hurt"
harmless = tuple(letter for letter in broken if letter != never)
ref("safe-order", never, outcome="safe-order", must_pass=True, lesson=where,
    slips=reasons(given.safe.options, never, {
        harmless: "The slip in this plan costs time or parts; nobody is in danger."}))

# %% tags=["reference"]
kept = tuple(set(labels(given.safe.reasons)) - dangers)
ref("safe-reason", dangers, outcome="safe-order", must_pass=True, lesson=where,
    slips=reasons(given.safe.reasons, dangers & set(labels(given.safe.reasons)), {
        kept: "That is not what the dangerous slip in these plans would lead to."}))
ref("safe-kind", kinds, outcome="safe-order", lesson=where,
    slips=reasons(given.why.kinds, kinds, not_this_kind))

# %% tags=["mark"] task="safe" points=3

# %% [markdown]
# ## Done?
#
# Go back to **start-here** and press **Hand in**. You get a receipt. You can hand in again until the due date; the last one counts.
