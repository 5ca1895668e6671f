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
from twoshaft.units.quantities import Q
from twoshaft_grader.marking import Slip, ref

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
                steps=given["sub_assembly"]["start"]),
)

# %% tags=["reference"]
ref(
    "sub-assembly-order",
    order.OrderTask.from_unit(unit, given["sub_assembly"]["operations"]),
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
        steps=given["whole_unit"]["start"],
    ),
)

# %% tags=["reference"]
ref(
    "whole-unit-order",
    order.OrderTask.from_unit(unit, given["whole_unit"]["operations"]),
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
            [(n, name) for n, (_, name) in enumerate(given["next_steps"]["done"], 1)])

# %% tags=["form"]
sheet.form(
    "next-steps",
    sheet.choices("next-steps-ready", "Which of these can be done right now?",
                  options=given["next_steps"]["options"]),
)

# %% tags=["reference"]
done = [step for step, _ in given["next_steps"]["done"]]
ready = set(order.ready_steps(whole, done))
ref(
    "next-steps-ready",
    {step for step, _ in given["next_steps"]["options"] if step in ready},
    outcome="next-steps",
    lesson="02-order-of-work#what-can-be-done-next",
)

# %% tags=["mark"] task="next-steps" points=4

# %% [markdown] tags=["task"]
# ## 4. Find what gets buried
#
# In this part of a build one step comes too early and closes off another that is still to be done. Nobody would notice until much later. *4 points.*

# %% tags=["rig"]
given_table("The order as planned", ["no.", "step"],
            [(n, name) for n, (_, name) in enumerate(given["buried"]["sequence"], 1)])

# %% tags=["form"]
sheet.form(
    "buried",
    sheet.choice("buried-step", "Which step can no longer be done when its turn comes?",
                 options=given["buried"]["options"]),
    sheet.choice("burying-step", "Which step closes it off?", options=given["buried"]["options"]),
)

# %% tags=["reference"]
part = order.OrderTask.from_unit(unit, given["buried"]["operations"])
(pair,) = order.buried_steps(part, [step for step, _ in given["buried"]["sequence"]])
others = [step for step, _ in given["buried"]["options"] if step not in pair]
reach = [Slip(step, 0, "This step can still be done where it stands in the plan.") for step in others]
close = [Slip(step, 0, "Nothing that is still to come lies behind this step.") for step in others]
ref(
    "buried-step", pair[0], outcome="find-buried", lesson="02-order-of-work#four-reasons",
    slips=[Slip(pair[1], 0, "This step closes something off; it is not the buried one."), *reach],
)
ref(
    "burying-step", pair[1], outcome="find-buried", lesson="02-order-of-work#four-reasons",
    slips=[Slip(pair[0], 0, "This step is the buried one; look for what lies over it."), *close],
)

# %% tags=["mark"] task="buried" points=4

# %% [markdown] tags=["task"]
# ## 5. Mend a slip with the least rework
#
# The build has come as far as the list shows when somebody sees that one step was left out. Work out what has to come off before that step can be done, and nothing more. Then work out how many minutes that costs: taking those steps apart and doing them again. The forgotten step itself is not counted, since it has to be done anyway. *8 points.*

# %% tags=["rig"]
given_table(
    f"Built so far; left out: “{given['repair']['late'][1]}”",
    ["no.", "step", "take apart, min", "do again, min"],
    [(n, name, given["repair"]["undo"][step], given["repair"]["do"][step])
     for n, (step, name) in enumerate(given["repair"]["built"], 1)],
)

# %% tags=["form"]
sheet.form(
    "repair",
    sheet.choices("repair-off", "Which steps have to be taken apart?",
                  options=given["repair"]["options"]),
    sheet.number("repair-minutes", "How many minutes does that cost, apart and again?", "min"),
)

# %% tags=["reference"]
repair = given["repair"]
part = order.OrderTask.from_unit(unit, repair["operations"])
found = order.rework(part, [step for step, _ in repair["built"]], repair["late"][0],
                     undo=repair["undo"], do=repair["do"])
off = ref("repair-off", set(found.off), outcome="least-rework", weight=3,
          lesson="02-order-of-work#a-slip-and-its-price")
apart = sum(repair["undo"][step] for step in off)
again = sum(repair["do"][step] for step in off)

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
clock = given["clock"]
given_table(
    f"{clock['minutes']:g} minutes from the end of “{clock['starts'][1]}” "
    f"to the end of “{clock['ends'][1]}”",
    ["step", "takes, min"],
    [(name, minutes) for _, name, minutes in clock["steps"]],
)

# %% tags=["form"]
sheet.form(
    "clock",
    sheet.number("clock-left", "How many minutes are left over?", "min"),
    sheet.choices("clock-inside", "Which of these may be done while the clock runs?",
                  options=given["clock"]["options"]),
)

# %% tags=["reference"]
clock = given["clock"]
window = order.window(whole, clock["clock"], minutes=clock["takes"], allowed=clock["minutes"])
last = clock["takes"][clock["ends"][0]]
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
asked = {step for step, _ in clock["options"]}
fits = {step for step in window.optional if clock["takes"].get(step, room + 1) <= room}
ref("clock-inside", asked & (set(window.inside) | fits), outcome="keep-the-clock", weight=2,
    lesson="02-order-of-work#clocks-and-holds")

# %% tags=["mark"] task="clock" points=6

# %% [markdown] tags=["task"]
# ## 7. Which parts must be new?
#
# A finished unit was stripped as far as the list shows and is to be built up again. Tick every part that must be new. *4 points.*

# %% tags=["rig"]
given_table("Taken apart, in this order", ["no.", "step that was undone"],
            [(n, name) for n, (_, name) in enumerate(given["new_parts"]["stripped"], 1)])

# %% tags=["form"]
sheet.form(
    "new-parts",
    sheet.choices("new-parts-needed", "Which of these parts must be new?",
                  options=given["new_parts"]["options"]),
)

# %% tags=["reference"]
stripped = [step for step, _ in given["new_parts"]["stripped"]]
must = set(order.new_parts(whole, stripped))
ref(
    "new-parts-needed",
    {part for part, _ in given["new_parts"]["options"] if part in must},
    outcome="renew-parts",
    lesson="02-order-of-work#parts-that-must-be-new",
)

# %% tags=["mark"] task="new-parts" points=4

# %% [markdown] tags=["task"]
# ## 8. Why this before that?
#
# Three pairs of steps. For each pair choose the reason why the first comes before the second, and what kind of reason it is. *6 points.*

# %% tags=["rig"]
given_table("The pairs", ["pair", "comes first", "comes later"],
            [(n, pair["earlier"][1], pair["later"][1])
             for n, pair in enumerate(given["why"]["pairs"], 1)])

# %% tags=["form"]
sheet.form("why", *[
    field
    for n, pair in enumerate(given["why"]["pairs"], 1)
    for field in (
        sheet.choice(f"why-{n}-reason", f"Pair {n}: why does the first come before the second?",
                     options=pair["options"]),
        sheet.choice(f"why-{n}-kind", f"Pair {n}: what kind of reason is it?",
                     options=given["why"]["kinds"]),
    )
])

# %% tags=["reference"]
belongs = {rule: bond.reason for bond in whole.bonds for rule in bond.reason.rules}
not_this_kind = [
    Slip("cannot", 0, "The later step could be done without it; ask what that would cost."),
    Slip("buries", 0, "The earlier step could still be reached; ask what would be wrong then."),
    Slip("harms", 0, "Nothing is damaged and nobody is hurt the wrong way round."),
    Slip("blinds", 0, "No check is made worthless here."),
]

# %% tags=["reference"]
for n, pair in enumerate(given["why"]["pairs"], 1):
    between = order.reasons_between(whole, pair["earlier"][0], pair["later"][0])
    right, kinds = {r for b in between for r in b.rules}, {b.kind.value for b in between}
    elsewhere = [
        Slip(rule, 0, f"True, but of another pair: it puts “{whole.label(belongs[rule].earlier[0])}” "
                      f"before “{whole.label(belongs[rule].later)}”.")
        for rule, _ in pair["options"] if rule in belongs and rule not in right
    ]
    ref(f"why-{n}-reason", right, weight=2, outcome="why-before", slips=elsewhere,
        lesson="02-order-of-work#four-reasons")
    ref(f"why-{n}-kind", kinds, outcome="why-before", lesson="02-order-of-work#four-reasons",
        slips=[slip for slip in not_this_kind if slip.value not in kinds])

# %% tags=["mark"] task="why" points=6

# %% [markdown] tags=["task"]
# ## 9. Several pairs of hands
#
# Some of you share this part of the build. Each step is done by one pair of hands without a break, and two steps can be done at the same time when neither waits for the other. Work out the times, count the orders, and tick the steps that must start the moment they can. *10 points.*

# %% tags=["rig"]
given_table("The steps to share", ["step", "what is done", "takes, min", "waits for"],
            [tuple(row) for row in given["several_hands"]["rows"]])

# %% tags=["form"]
sheet.form(
    "hands",
    sheet.number("hands-alone", "How long does one pair of hands take for all of it?", "min"),
    sheet.number("hands-least", "How long does it take at least, with as many hands as it can use?", "min"),
    sheet.number("hands-orders", "In how many different orders can one pair of hands work?", ""),
    sheet.choices("hands-waits", "Which steps must not start late, or all of it takes longer?",
                  options=given["several_hands"]["options"]),
)

# %% tags=["reference"]
shared, takes = given["several_hands"]["operations"], given["several_hands"]["takes"]
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
told = "This step can wait a while, and nothing else is held up by it."
ref("hands-waits", set(plan.no_spare), outcome="share-the-work", weight=3, lesson=where,
    slips=[Slip(step, 0, told) for step, spare in plan.spare.items() if spare > 0])

# %% tags=["mark"] task="hands" points=10

# %% [markdown] tags=["task"]
# ## 10. Which order must never be used?
#
# Each of these plans has one slip. Two of the slips cost time or parts. One of them could hurt somebody or let the unit fail on the road. **You must get this one right to pass.** *3 points.*

# %% tags=["rig"]
plans = [name for name, _ in given["safe"]["orders"]]
given_table("Three plans for the same steps", ["no.", *(f"order {name}" for name in plans)],
            [(n, *(name for _, name in steps))
             for n, steps in enumerate(zip(*(steps for _, steps in given["safe"]["orders"])), 1)])

# %% tags=["form"]
sheet.form(
    "safe",
    sheet.choice("safe-order", "Which order must never be used?", options=given["safe"]["options"]),
    sheet.choice("safe-reason", "What could happen?", options=given["safe"]["reasons"]),
    sheet.choice("safe-kind", "What kind of reason is that?", options=given["why"]["kinds"]),
)

# %% tags=["reference"]
part = order.OrderTask.from_unit(unit, given["safe"]["operations"])
plans = {name: [step for step, _ in steps] for name, steps in given["safe"]["orders"]}
broken = {name: order.broken_safety(part, steps) for name, steps in plans.items()}
(never,) = [name for name, reasons in broken.items() if reasons]
dangers = {rule for reason in broken[never] for rule in reason.rules}
kinds = {reason.kind.value for reason in broken[never]}
where = "02-order-of-work#where-somebody-could-be-hurt"
harmless = [Slip(name, 0, "The slip in this plan costs time or parts; nobody is in danger.")
            for name in plans if name != never]
ref("safe-order", never, outcome="safe-order", must_pass=True, lesson=where, slips=harmless)

# %% tags=["reference"]
kept = [Slip(rule, 0, "That is not what the dangerous slip in these plans would lead to.")
        for rule, _ in given["safe"]["reasons"] if rule not in dangers]
ref("safe-reason", dangers, outcome="safe-order", must_pass=True, lesson=where, slips=kept)
ref("safe-kind", kinds, outcome="safe-order", lesson=where,
    slips=[slip for slip in not_this_kind if slip.value not in kinds])

# %% tags=["mark"] task="safe" points=3

# %% [markdown]
# ## Done?
#
# Go back to **start-here** and press **Hand in**. You get a receipt. You can hand in again until the due date; the last one counts.
