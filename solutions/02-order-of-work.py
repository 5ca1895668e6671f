# %% [markdown]
# # Order of work: exercise
#
# <div class="twoshaft-if-missing">If no forms appear below: press <b>Run</b>, then <b>Run All Cells</b>.</div>
#
# Ten tasks about the order in which a two-shaft transaxle goes back together. Take about an hour.
#
# Every answer is saved as you give it; you can stop and come back.
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
from dataclasses import replace

from twoshaft.models import order
from twoshaft.models.shape import parts_fitted, step_parts
from twoshaft.records import labels
from twoshaft.units.quantities import Q
from twoshaft_grader.marking import Slip, line_reasons, missed, reasons, ref

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
    shows=("needs-first", "none-left-out", "as-one"),
    lesson="02-order-of-work#four-reasons",
)

# %% tags=["mark"] task="sub-assembly" points=8

# %% [markdown] tags=["task"]
# ## 2. Correct the order of the whole unit
#
# Somebody planned the whole build. Most of the plan works; a few steps stand in the wrong place, and one of them is a matter of safety.
#
# Move as few steps as you can until the plan works. Others work to this plan already: a plan in which more steps were moved than the question says earns nothing.
#
# The list is long. Go through it stage by stage and ask of each step what it needs. *10 points.*

# %% tags=["form"]
sheet.form(
    "whole-unit",
    sheet.order(
        "whole-unit-order",
        f"Move the steps that stand in the wrong place, at most {given.whole_unit.most_moves} of them",
        steps=given.whole_unit.start,
        most_moves=given.whole_unit.most_moves,
    ),
)

# %% tags=["reference"]
ref(
    "whole-unit-order",
    order.OrderTask.from_unit(unit, given.whole_unit.operations),
    outcome="plan-order",
    must_pass=True,
    shows=("any-workable", "needs-first"),
    lesson="02-order-of-work#a-mistake-and-its-price",
)

# %% tags=["mark"] task="whole-unit" points=10

# %% [markdown] tags=["task"]
# ## 3. What can be done next?
#
# A build has come as far as the list shows.
#
# Say of each step whether it can be done right now, without anything else in between. If not, say which of the listed steps it has to wait for. No step waits for one that is done already. **Every line of this first question must be right for the outcome.**
#
# Where your unit is drawn, look at another build as well, and point. A dashed outline is a place where nothing stands yet. A part that was fitted to another part on the bench is drawn where it will lie. Steps that leave nothing to see, such as cleaning, reading, tightening or a trial fit, are done as far as they can be. The picture may be turned: front and rear, or above and below, may be the other way round. *4 points.*

# %% tags=["rig"]
given_table("Done so far", ["no.", "step"],
            [(n, step.text) for n, step in enumerate(given.next_steps.done, 1)])

# %% tags=["form"]
from twoshaft.plots.unit_scene import ScenePicture

half = given.next_steps.half
sheet.form(
    "next-steps",
    sheet.each("next-steps-ready", "Can each of these be done, or what has it to wait for?",
               lines=given.next_steps.options, options=given.next_steps.answers),
    *([sheet.point("next-steps-seen", "Another build, half done. Point at one part for each line", picture=ScenePicture(unit, half.scene),
                   lines=[["now", "It can go in right now"], ["before", f"It must go in before “{half.waits.text}”"],
                          ["after", f"It has to wait until “{half.first.text}” is done"]])] if half else []),
)

# %% tags=["reference"]
done, first = [step.id for step in given.next_steps.done], set(labels(given.next_steps.answers))
now, needed, why = set(order.ready_steps(whole, done)), {}, {}
for step in labels(given.next_steps.options):
    missing = set(whole.steps[i] for i in range(len(whole.steps)) if whole.before[whole.number[step]] >> i & 1)
    needed[step] = {"now"} if step in now else (missing - set(done)) & first
    rule = order.consequences(whole, [*done, step])[-1].reasons[0] if step not in now else None
    why[step] = ("All that it needs is done; it waits for nothing more." if rule is None else
                 f"Something that it needs is still to be done. {rule.text}")
ref("next-steps-ready", needed, outcome="next-steps", shows=("ready-steps", "what-it-waits-for"), must_pass=True,
    lesson="02-order-of-work#what-can-be-done-next",
    slips=line_reasons(given.next_steps.options, given.next_steps.answers, needed, why))

# %% tags=["reference"]
if half:
    fitted = {part: step for step in whole.steps for part in parts_fitted(unit, whole.members[whole.number[step]])}
    at = {spot.id: fitted[spot.text] for spot in half.scene.spots}
    free, can = {letter for letter in at if at[letter] not in half.done}, order.ready_steps(whole, half.done)
    seen = {"now": {letter for letter in free if at[letter] in can},
            "before": {letter for letter in free if (at[letter], half.waits.id) in whole.pairs},
            "after": {letter for letter in free if (half.first.id, at[letter]) in whole.pairs}}
    rule = {letter: order.consequences(whole, [*half.done, at[letter]])[-1].reasons[0].text for letter in free - seen["now"]}

# %% tags=["reference"]
if half:
    not_so = {"before": "The step can be done without this part: look for what it cannot be done without.",
              "after": "This part does not wait for that step: it goes in before it, or at any time."}
    why = {line: {letter: "This part is in place already: look at the dashed outlines." if letter not in free else
                  f"Something that it needs is not there yet. {rule[letter]}" if line == "now" else
                  "That is what this step itself fits." if at[letter] == {"before": half.waits.id, "after": half.first.id}[line] else
                  not_so[line] for letter in at if letter not in right} for line, right in seen.items()}
    ref("next-steps-seen", seen, outcome="next-steps", shows=("ready-steps", "what-it-waits-for"),
        lesson="02-order-of-work#what-can-be-done-next",
        slips=line_reasons([(line, "") for line in seen], [(letter, "") for letter in at], seen, why))

# %% tags=["mark"] task="next-steps" points=4

# %% [markdown] tags=["task"]
# ## 4. Find what gets buried
#
# In this part of a build one step comes too early and closes off another that is still to be done. Nobody would notice until much later.
#
# The picture shows the build at the moment when that other step should be done. The picture may be turned: front and rear, or above and below, may be the other way round. A dashed outline is a place where nothing stands yet.
#
# Press a letter in the picture, or choose it from the list. *4 points.*

# %% tags=["rig"]
given_table("The order as planned", ["no.", "step"],
            [(n, step.text) for n, step in enumerate(given.buried.sequence, 1)])

# %% tags=["form"]
from twoshaft.plots.unit_scene import ScenePicture

sheet.form(
    "buried",
    sheet.point("buried-places", "Which step is it? Point at a part that it fits or works at",
                picture=ScenePicture(unit, given.buried.scene), lines=[
        ["buried", "The step that can no longer be done when its turn comes"],
        ["burying", "The step that closes it off"],
    ]),
)

# %% tags=["reference"]
part, scene = order.OrderTask.from_unit(unit, given.buried.operations), given.buried.scene
(pair,) = order.buried_steps(part, [step.id for step in given.buried.sequence])
letters = {spot.text: spot.id for spot in scene.spots}
at = [{letters[one] for one in step_parts(unit, part.members[part.number[step]]) if one in letters}
      for step in pair]
right, others = {"buried": at[0], "burying": at[1]}, set(letters.values()) - at[0] - at[1]
why = {"buried": {**dict.fromkeys(at[1], "This part closes something off; it is not the buried one."),
                  **dict.fromkeys(others, "What is done here can still be done where it stands in the plan.")},
       "burying": {**dict.fromkeys(at[0], "This is the buried one; look for what lies over it."),
                   **dict.fromkeys(others, "Nothing that is still to come lies behind this part.")}}
ref("buried-places", right, outcome="find-buried", shows="too-early", lesson="02-order-of-work#four-reasons",
    slips=line_reasons([(line, "") for line in right], [(one, "") for one in letters.values()], right, why))

# %% tags=["mark"] task="buried" points=4

# %% [markdown] tags=["task"]
# ## 5. Correct a wrong step with the least rework
#
# The build has come as far as the list shows when somebody sees that one step was left out.
#
# Say of each step of the list below whether it has to come off before that step can be done. Nothing more may come off. Then work out how many minutes that costs: taking those steps apart and doing them again. The forgotten step itself is not counted, since it has to be done anyway. *8 points.*

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
    sheet.each("repair-off", "What becomes of each of these steps?", options=given.repair.answers, lines=[
        (one.id, f"{one.text} ({given.repair.undo[one.id]:g} min apart, {given.repair.do[one.id]:g} min again)")
        for one in given.repair.options]),
    sheet.number("repair-minutes", "How many minutes does that cost, apart and again?", "min"),
)

# %% tags=["reference"]
repair = given.repair
part = order.OrderTask.from_unit(unit, repair.operations)
found = order.rework(part, [step.id for step in repair.built], repair.late.id,
                     undo=repair.undo, do=repair.do)
becomes = {step: "off" if step in found.off else "stays" for step in labels(repair.options)}
why = {"off": f"With this step in place, “{repair.late.text}” cannot be done: it stands in the way, itself or by what it carries.",
       "stays": f"It is not in the way: with this step in place, “{repair.late.text}” can still be done."}
becomes = ref("repair-off", becomes, outcome="least-rework", weight=3, shows="only-in-the-way",
              lesson="02-order-of-work#a-mistake-and-its-price",
              slips=line_reasons(repair.options, repair.answers, becomes, {s: why[do] for s, do in becomes.items()}))
off = [step for step, do in becomes.items() if do == "off"]
apart, again = (sum(minutes[step] for step in off) for minutes in (repair.undo, repair.do))

# %% tags=["reference"]
ref(
    "repair-minutes",
    Q(apart + again, "min"),
    outcome="least-rework",
    shows="only-in-the-way",
    weight=3,
    tolerance={"absolute": Q(0.1, "min")},
    lesson="02-order-of-work#a-mistake-and-its-price",
    slips=[
        Slip(Q(apart, "min"), 0.5, "This is the time to take apart; doing it again comes on top."),
        Slip(Q(again, "min"), 0.5, "This is the time to do it again; taking apart comes on top."),
    ],
)

# %% tags=["mark"] task="repair" points=8

# %% [markdown] tags=["task"]
# ## 6. Keep within the time
#
# Once the first step of the table is done, a clock runs, and the last step must be finished before it ends.
#
# First work out how many minutes are left over when only what must lie between is done.
#
# Then say of each step whether you may do it between the first and the last and still be in time. A step that must lie between may. A step that could also be done before or after may, if it alone fits into the minutes left over. *6 points.*

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
    sheet.each("clock-inside", "Which of these may be done while the clock runs?", options=given.clock.answers,
               lines=[(one.id, f"{one.text} ({given.clock.takes[one.id]:g} min)") for one in given.clock.options]),
)

# %% tags=["reference"]
clock = given.clock
window = order.window(whole, clock.clock, minutes=clock.takes, allowed=clock.minutes)
last = clock.takes[clock.ends.id]
left = ref(
    "clock-left",
    Q(window.minutes_left, "min"),
    outcome="keep-the-clock",
    shows="within-time",
    tolerance={"absolute": Q(0.1, "min")},
    lesson="02-order-of-work#clocks-and-holds",
    slips=[Slip(Q(window.minutes_left + last, "min"), 0.5,
                "The last step takes time too, and must be finished before the clock ends.")],
)

# %% tags=["reference"]
room = left.to("min").magnitude
asked = set(labels(clock.options))
fits = {step for step in window.optional if clock.takes.get(step, room + 1) <= room}
may = {step: "in" if step in {*window.inside, *fits} else "long" if step in window.optional else "out" for step in asked}
why = {step: {"in": f"It may lie between, but it takes {clock.takes[step]:g} min, and that is more than is left over."
                    if may[step] == "long" else "It belongs before the first step or after the last one.",
              "long": "It is short enough for what is left over, or must lie between anyway."
                      if may[step] == "in" else "However short, it belongs before the first step or after the last one.",
              "out": "Nothing puts it before the first step or after the last one."} for step in asked}
ref("clock-inside", may, outcome="keep-the-clock", weight=2, shows=("beforehand", "within-time"),
    lesson="02-order-of-work#clocks-and-holds",
    slips=line_reasons(clock.options, clock.answers, may, why))

# %% tags=["mark"] task="clock" points=6

# %% [markdown] tags=["task"]
# ## 7. Which parts must be new?
#
# A finished unit was stripped as far as the list shows and is to be built up again. Say of each part what is done with it.
#
# **Every part must be right to pass.** *6 points.*

# %% tags=["rig"]
given_table("Taken apart, in this order", ["no.", "step that was undone"],
            [(n, step.text) for n, step in enumerate(given.new_parts.stripped, 1)])

# %% tags=["form"]
sheet.form(
    "new-parts",
    sheet.each("new-parts-needed", "What do you do with each of these parts?",
               lines=given.new_parts.options, options=given.new_parts.answers),
)

# %% tags=["reference"]
stripped = [step.id for step in given.new_parts.stripped]
must = set(order.new_parts(whole, stripped))
loose = {part for step in stripped for part in whole.parts[whole.number[step]]}
fate = {part: "new" if part in must else "again" if part in loose else "stayed" for part in labels(given.new_parts.options)}
told = {"new": "It came out with one of the steps that were undone, and does not survive that: if it is used again, it leaks or lets go.",
        "again": "A new part seems safer. But it came out with one of the steps that were undone and takes no harm from that: it is fitted again.",
        "stayed": "None of the steps that were undone touches it: if you take it out for nothing, it costs time and may be spoilt."}
ref("new-parts-needed", fate, outcome="renew-parts", shows=("single-use", "renew-after"), must_pass=True,
    lesson="02-order-of-work#parts-that-must-be-new",
    slips=line_reasons(given.new_parts.options, given.new_parts.answers, fate, {part: told[do] for part, do in fate.items()}))

# %% tags=["mark"] task="new-parts" points=6

# %% [markdown] tags=["task"]
# ## 8. Why this before that?
#
# Three pairs of steps. For each pair choose the reason why the first comes before the second, and what kind of reason it is. *6 points.*

# %% tags=["rig"]
given_table("The pairs", ["pair", "comes first", "comes later"],
            [(n, pair.earlier.text, pair.later.text)
             for n, pair in enumerate(given.why.pairs, 1)])

# %% tags=["form"]
pairs = [(f"pair-{n}", f"“{one.earlier.text}” before “{one.later.text}”") for n, one in enumerate(given.why.pairs, 1)]
sheet.form(
    "why",
    sheet.each("why-reasons", "Why does the first come before the second?", lines=pairs, options=given.why.reasons),
    sheet.each("why-kinds", "What kind of reason is it?", lines=pairs, options=given.why.kinds),
)

# %% tags=["reference"]
belongs = {rule: bond.reason for bond in whole.bonds for rule in bond.reason.rules}
not_this_kind = {
    "cannot": "The later step could be done without it; ask what that would cost.",
    "buries": "The earlier step could still be reached; ask what would be wrong then.",
    "harms": "Nothing is damaged and nobody is hurt the wrong way round.",
    "blinds": "No check is made worthless here.",
}
elsewhere = {rule: f"True, but of another pair: it puts “{whole.label(belongs[rule].earlier[0])}” "
                   f"before “{whole.label(belongs[rule].later)}”." for rule in labels(given.why.reasons)}

# %% tags=["reference"]
rules, kinds = {}, {}
for n, one in enumerate(given.why.pairs, 1):
    between = order.reasons_between(whole, one.earlier.id, one.later.id)
    rules[f"pair-{n}"] = {r for b in between for r in b.rules} & set(elsewhere)
    kinds[f"pair-{n}"] = {b.kind.value for b in between}
lines, where = [(line, "") for line in rules], "02-order-of-work#four-reasons"
ref("why-reasons", rules, weight=2, outcome="why-before", shows="what-it-costs", lesson=where,
    slips=line_reasons(lines, given.why.reasons, rules, {}, anywhere=elsewhere))
ref("why-kinds", kinds, weight=4, outcome="why-before", shows="kind-of-reason", lesson=where,
    slips=line_reasons(lines, given.why.kinds, kinds, {}, anywhere=not_this_kind))

# %% tags=["mark"] task="why" points=6

# %% [markdown] tags=["task"]
# ## 9. Several pairs of hands
#
# Some of you share this part of the build.
#
# Each step is done by one pair of hands without a break. Two steps can be done at the same time when neither waits for the other. Work out the times, and tick the steps that must start the moment they can. *7 points.*

# %% tags=["rig"]
given_table("The steps to share", ["step", "what is done", "takes, min", "waits for"],
            [(row.letter, row.name, row.minutes, row.waits_for) for row in given.several_hands.rows])

# %% tags=["form"]
sheet.form(
    "hands",
    sheet.number("hands-alone", "How long does one pair of hands take for all of it?", "min"),
    sheet.number("hands-least", "How long does it take at least, with as many hands as it can use?", "min"),
    sheet.choices("hands-waits", "Which steps must not start late, or all of it takes longer?",
                  options=given.several_hands.options),
)

# %% tags=["reference"]
shared, takes = given.several_hands.operations, given.several_hands.takes
part = order.OrderTask.from_unit(unit, shared)
plan = order.with_many_hands(part, takes)
where = "02-order-of-work#several-pairs-of-hands"
ref("hands-alone", Q(plan.alone, "min"), outcome="share-the-work", shows="shortest-time", tolerance={"absolute": Q(0.1, "min")},
    lesson=where)
one_pair = "That is the time of one pair of hands; steps that do not wait for each other can be done at once."
ref("hands-least", Q(plan.minutes, "min"), outcome="share-the-work", shows="shortest-time", weight=3,
    tolerance={"absolute": Q(0.1, "min")}, lesson=where, slips=[
        Slip(Q(plan.alone, "min"), 0, one_pair),
        Slip(Q(max(takes.values()), "min"), 0, "The longest step alone does not set the time: some steps wait for others.")])

# %% tags=["reference"]
can_wait = tuple(step for step in shared if step not in plan.no_spare)
ref("hands-waits", set(plan.no_spare), outcome="share-the-work", shows="not-late", weight=3, lesson=where,
    slips=reasons(given.several_hands.options, plan.no_spare, {
        can_wait: "This step can wait a while, and nothing else is held up by it."})
    + missed(given.several_hands.options, plan.no_spare,
             "“{name}” belongs here: what waits for it fills the time to the end, so each minute it starts late is lost."))

# %% tags=["mark"] task="hands" points=7

# %% [markdown] tags=["task"]
# ## 10. Which order must never be used?
#
# Four plans for the same steps. A plan may work, or have one mistake.
#
# A mistake may cost only time or parts. Or it could hurt somebody, or let the unit fail on the road: a plan with such a mistake must never be used. Say of each plan what it leads to. **To pass, let no such plan through, name its danger, and call no other plan dangerous.** *8 points.*

# %% tags=["rig"]
plans = given.safe.orders
given_table("Four plans for the same steps", ["no.", *(f"order {plan.letter}" for plan in plans)],
            [(n, *(step.text for step in steps))
             for n, steps in enumerate(zip(*(plan.steps for plan in plans)), 1)])

# %% tags=["form"]
sheet.form(
    "safe",
    sheet.each("safe-plans", "What does each plan lead to?", options=given.safe.options,
               lines=[(one.letter, f"Order {one.letter}") for one in given.safe.orders]),
)

# %% tags=["reference"]
part, leads, why = order.OrderTask.from_unit(unit, given.safe.operations), {}, {}
dangers = [id for id in labels(given.safe.options) if id not in ("works", "cost")]
for one in given.safe.orders:
    slip = order.plan_slip(part, [step.id for step in one.steps])
    grave = {rule for reason in slip.broken_safety for rule in reason.rules} & set(dangers)
    leads[one.letter] = grave or {"cost" if slip.size else "works"}
    why[one.letter] = {"works": "A step of this plan stands before one that it needs.", "cost": "Every step of this plan has what it needs.",
                       **dict.fromkeys(dangers, "Nobody is in danger with this plan, and nothing fails later.")}
    if grave:
        why[one.letter] = {"works": "It can be built like this, but then the danger is built in: look at what safety asks for first.",
                           "cost": "Its mistake costs more than time and parts: somebody is hurt, or the unit fails on the road.",
                           **dict.fromkeys(dangers, "This plan is dangerous, but not for that: look at which step stands too early.")}

# %% tags=["reference"]
plan_lines, mild = [(letter, "") for letter in leads], {"works", "cost"}
slips = line_reasons(plan_lines, given.safe.options, leads, why)
ref("safe-plans", leads, outcome="safe-order", must_pass=True, shows=("safe-rules", "what-could-happen"),
    lesson="02-order-of-work#where-somebody-could-be-hurt",
    slips=[replace(one, safe=one.value[1] in mild and leads[one.value[0]] <= mild) for one in slips])

# %% tags=["mark"] task="safe" points=8

# %% [markdown]
# ## Done?
#
# Go back to **start-here** and press **Hand in**. You get a receipt. You can hand in again until the due date; the last one counts.
