# %% [markdown]
# # The whole build: exercise
#
# <div class="twoshaft-if-missing">If no forms appear below: press <b>Run</b>, then <b>Run All Cells</b>.</div>
#
# One unit of your own, from the first ring to the last signature, in ten tasks. Take about two hours; have paper and a calculator.
#
# Every answer is saved as you give it; you can stop and come back.
#
# Build at the bench first. It gives readings and keeps what you decide; it does not say what is right. The forms below it hold the same decisions: read them as your build record, and correct there what you see to be wrong.
#
# *Invented unit, for teaching. On a real unit the maker's manual, local codes and licensed practice decide.*

# %% tags=["setup"]
from twoshaft.jobsheet import open_sheet
from twoshaft.models.wholebuild import Job, asks_of, card, sheet_fields
from twoshaft.plots.tables import given_table
from twoshaft.records import to_json
from twoshaft.rigs import whole_build

sheet = open_sheet("whole-build")
given, unit = sheet.given, sheet.unit
job = Job.of(unit, to_json(given.bench))
asks = asks_of(job)
TASKS = {"ways": ["way"], "shims": ["shim"], "joints": ["joint"], "closing": ["film"], "proof": ["proof", "check"]}
for task, kinds in TASKS.items():
    sheet.register(task, sheet.ask_all(sheet_fields(job, *kinds)))

# %% tags=["reference"]
from twoshaft.models import geartrain, joint, order, shape, shift, shim
from twoshaft.models.wholebuild import GO_ON, OPEN, Job, asked_together, asks_of, decisions_from, right_threads, right_values, sheet_fields, way_words
from twoshaft.models.wholebuild.asks import AS_IT_LIES, CHANGED, LEFT, LOCKED, NEW, OILED, blocks_of, pattern_order
from twoshaft.models.wholebuild.checking import judge_way, outcomes_at
from twoshaft.questions import bank_of
from twoshaft.readings.scenes import held_in, lies_in
from twoshaft.readings.whole_build.late import shown_by
from twoshaft.records import labels, to_json
from twoshaft.units.quantities import Q
from twoshaft_grader.marking import Slip, line_reasons, missed, ref

job = Job.of(unit, to_json(given.bench))
asks, bank = asks_of(job), bank_of("whole-build")
where = "10-whole-build"

# %% [markdown]
# ## The bench
#
# Do the steps in the order that you think right; each asks for the decisions that go with it. The bench shows a reading when you measure, and a result when you make a check. A step can be taken out again; what stands in its way comes off too.
#
# With the keyboard: Tab goes on, Enter presses a button, arrow keys choose in a list.

# %% tags=["rig"]
sheet.register("plan", [sheet.order("build-order", "The steps in the order in which you did them",
                                    steps=given.plan.start, stages=given.plan.stages)])
whole_build(job, sheet)

# %% [markdown] tags=["task"]
# ## 1. The order of the build
#
# All steps of the unit. Within each stage they are mixed, and some steps may have to go to another stage.
#
# If you built at the bench, your own order stands here. Correct what does not work.
#
# Then a build that somebody else has begun: say what is done already, and which steps can be done next.
#
# An order works if every step stands after all the steps that it needs. **To pass, steps that keep somebody from harm must be in the right place. Every line about the build that was begun must be right too.** *14 points.*

# %% tags=["rig"]
given_table("A build that somebody has begun", ["stage", "what stands"], given.plan.stands)

# %% tags=["form"]
sheet.form(
    "plan",
    sheet.order("build-order", "The steps in the order in which you did them",
                steps=given.plan.start, stages=given.plan.stages),
    sheet.each("begun-next", "In the build of the table, can this be done next?", lines=given.plan.next,
               options=[["stands", "It stands already"], ["now", "It can be done next"], ["waits", "Another step must come first"]]),
)

# %% tags=["reference"]
# The build as it goes on, right or the learner's own: a dict a cell, so that each cell stands alone.
my_plan = {"build-order": ref("build-order", job.task, outcome="build-in-order", shows=("needs-first", "keeps-from-harm"), must_pass=True, weight=0.28,
                              lesson=f"{where}#plan")}

# %% tags=["reference"]
can = set(order.ready_steps(job.task, given.plan.done))
turn = {step: "stands" if step in given.plan.done else "now" if step in can else "waits" for step in labels(given.plan.next)}
ref("begun-next", turn, outcome="build-in-order", shows="needs-first", must_pass=True, lesson=f"{where}#plan", slips=line_reasons(
    given.plan.next, [["stands", ""], ["now", ""], ["waits", ""]], turn, {}, anywhere={
        "stands": "The table does not name it; if you take it as done, you leave it out, and find it when the case is shut.",
        "now": "It looks like its turn, but it stands already, or something that it needs does not; it would have to come off again.",
        "waits": "Nothing that it needs is missing in the table; if you wait here, you look for a step that is done already."}))

# %% tags=["mark"] task="plan" points=14

# %% [markdown] tags=["task"]
# ## 2. Which way round?
#
# Parts that go in both ways, and are right in one.
#
# Each line says how a part lies before you, by what you can see of it, not by its mark. Say whether it goes in like that. **Every line must be right to pass.**
#
# Where your unit is drawn, put some parts into another one of its kind, each in its place and the right way round. *16 points.*

# %% tags=["form"]
from twoshaft.plots.unit_scene import put_in

sheet.form("ways", *sheet.ask_all(sheet_fields(job, "way")),
           *([sheet.put("ways-put", "Another unit of this kind, from a side of your own: put these in", **put_in(unit, given.ways.into))]
             if given.ways.into else []))

# %% tags=["reference"]
said = asked_together(job)["ways"].arguments
right = {ask.id: right_values(job, ask)[ask.id] for ask in asks if ask.kind == "way"}
marks = {ask.id: way_words(job, ask.about, None) for ask in asks if ask.kind == "way"}
my_ways = {"ways": ref("ways", right, outcome="fit-right-way", shows="mark-first", must_pass=True, lesson=f"{where}#decide",
                       slips=line_reasons(said["lines"], said["options"], right, {
    id: {AS_IT_LIES: f"If you fit it as it lies, it is wrong. Right is: {words[:1].lower()}{words[1:]}.",
         CHANGED: f"It lies right; if you turn it, it is wrong. Right is: {words[:1].lower()}{words[1:]}."}
    for id, words in marks.items()}))}

# %% tags=["reference"]
if given.ways.into:
    hand, put, why_put = given.ways.into, {}, {}
    places = {one.letter: (one.z_mm, one.height_mm) for one in hand.places}
    for part, held in held_in(hand).items():
        letter, turns = shape.where_put(unit, hand.near.scene.view, held, places)
        put[part] = {f"{letter}-{way}" for way in turns}
        why_put[part] = {f"{at}-{way}": "It lies in its place, but turned over: look at its lip, boss, bevel or wide end, and at what it works on."
                         if at == letter else "It belongs elsewhere: look for the shaft and the seat that its bore and its rim fit."
                         for at in places for way in "12" if f"{at}-{way}" not in put[part]}
    ref("ways-put", put, weight=0.2, outcome="fit-right-way", shows="mark-first", lesson=f"{where}#decide",
        slips=line_reasons(hand.lines, [(f"{at}-{way}", "") for at in places for way in "12"], put, why_put))

# %% tags=["mark"] task="ways" points=16

# %% [markdown] tags=["task"]
# ## 3. The shims of your unit
#
# The lengths are those of your own unit, as on the bench.
#
# For each pair work out the shim that leaves neither play nor preload, then the thinnest and the thickest that meet the target. Then choose what goes in: from the shelf, and so that the target is met even if the stack is off by its uncertainty. For two shims give the thickness of both together. *24 points.*

# %% tags=["rig"]
from twoshaft.models.shim import stack_budget

given_table("Measured on your unit", ["length", "reading, mm"],
            [(f"{ask.name}: {term.name[:1].lower()}{term.name[1:]}", f"{given.bench.lengths_mm[ask.about][term.id]:.2f}")
             for ask in asks if ask.kind == "shim" for term in job.support(ask.about).stack])

# %% tags=["rig"]
given_table("What is wanted, and what is there", ["what", "value"],
            [*((f"{ask.name}: {line.what[:1].lower()}{line.what[1:]}", line.value) for ask in asks if ask.kind == "shim" for line in card(job, ask)),
             *((f"{ask.name}: uncertainty of the stack, either way", f"{stack_budget(job.support(ask.about), job.measured(ask.about)).expanded():.3f} mm")
               for ask in asks if ask.kind == "shim")])

# %% tags=["form"]
sheet.form("shims", *[
    field for ask in asks if ask.kind == "shim" for field in (
        sheet.number(f"gap-{ask.about}", f"{ask.name}: shim that leaves neither play nor preload", "mm"),
        sheet.number(f"thin-{ask.about}", f"{ask.name}: thinnest shim that meets the target", "mm"),
        sheet.number(f"thick-{ask.about}", f"{ask.name}: thickest shim that meets the target", "mm"),
        *sheet.ask_all(ask.fields))
])

# %% tags=["reference"]
at_lesson, near, windows = f"{where}#measure", Q(0.004, "mm"), {}
other_way = "That is the limit on the other side of the gap: the direction is turned round."
for ask in (one for one in asks if one.kind == "shim"):
    support, stack = job.support(ask.about), job.stack(ask.about)
    exact = stack.shim_for(Q(0.0, "mm"))
    gap = ref(f"gap-{ask.about}", exact, outcome="set-by-shim", shows="window", weight=2, tolerance=near, lesson=at_lesson)
    ends = [gap + stack.shim_for(limit) - exact for limit in shim.target_interference(support)]
    far = [2 * gap - end for end in ends]
    low = ref(f"thin-{ask.about}", min(ends), outcome="set-by-shim", shows="window", weight=2, tolerance=near, lesson=at_lesson,
              slips=[Slip(min(far), 0, other_way), Slip(gap, 0.25, "That leaves neither play nor preload; the target asks for more.")])
    ref(f"thick-{ask.about}", max(ends), outcome="set-by-shim", shows="window", weight=2, tolerance=near, lesson=at_lesson,
        slips=[Slip(max(far), 0, other_way)])
    low = low if abs(low - min(ends)) < Q(0.25, "mm") else min(ends)
    windows[ask.about] = (low, low + max(ends) - min(ends), min(far), max(far))

# %% tags=["reference"]
my_shims, off = {}, Q(0.0015, "mm")
for ask in (one for one in asks if one.kind == "shim"):
    shelf, (low, high, *far) = unit.bearings.shim_set_by_id(job.support(ask.about).shim_set), windows[ask.about]
    doubt = Q(round(shim.stack_budget(job.support(ask.about), job.measured(ask.about)).expanded(), 3), "mm")
    best = shim.choose(Q(list(shelf.thicknesses_mm), "mm"), (low, high), doubt, shelf.at_most).total
    pairs = [a + b for a in shelf.thicknesses_mm for b in shelf.thicknesses_mm if shelf.at_most == 2]
    totals = Q(list({round(mm, 4) for mm in [*shelf.thicknesses_mm, *pairs]}), "mm")
    meets, sure = (low <= totals) & (totals <= high), (low + doubt <= totals) & (totals <= high - doubt)
    safe, edge = totals[sure & (abs(totals - best) > off)], totals[meets & ~sure]
    wrong = totals[(min(far) <= totals) & (totals <= max(far)) & ~meets]
    my_shims[ask.id] = ref(ask.id, best, outcome="set-by-shim", shows="from-shelf", weight=3, tolerance=off, lesson=f"{where}#measure", slips=[
        *(Slip(t, 1, "This one is just as safe.") for t in safe),
        *(Slip(t, 0.3, "It meets the target on paper, but by less than the uncertainty of the stack.") for t in edge),
        *(Slip(t, 0, "It lies on the other side of the gap: the direction is turned round.") for t in wrong)])

# %% tags=["mark"] task="shims" points=24

# %% [markdown] tags=["task"]
# ## 4. Tighten
#
# First the threads: do with each group what has to be done so that the torque of its card holds, and nothing more.
#
# Then wrench and setting for three groups; where an adapter is needed, the setting on the wrench is not the torque of the card. Last, flanges that others have tightened. **Every line of the threads and of the flanges must be right to pass.** *20 points.*

# %% tags=["rig"]
given_table("Job cards", ["what", "value"],
            [(f"{ask.name}: {line.what[:1].lower()}{line.what[1:]}", line.value) for ask in asks if ask.kind == "joint" for line in card(job, ask)])

# %% tags=["form"]
sheet.form("joints", *sheet.ask_all(sheet_fields(job, "joint")),
           sheet.each("flange-says", "What comes next on each of these flanges?", lines=given.others.flange.lines, options=given.others.flange.answers))

# %% tags=["reference"]
at_lesson, groups = f"{where}#decide", [ask.about for ask in asks if ask.kind == "joint"]
said = asked_together(job)["threads"].arguments
right = {f"state-{id}": right_threads(job, id) for id in job.threads}
fine = "They are as the card wants them: anything more spoils that, or throws away good parts."
whys = {id: dict.fromkeys((NEW, OILED, LOCKED), fine) if key == LEFT else {} for id, key in right.items()}
my_states = {"threads": ref("threads", right, outcome="tighten-to-clamp", shows="thread-state", must_pass=True, weight=7, lesson=at_lesson,
                            slips=line_reasons(said["lines"], said["options"], right, whys, anywhere={
    LEFT: "The torque of the card is stated for another state: so they get another clamp than the card means.",
    NEW: "New ones come with the dry film; the card does not mean that, and the clamp comes out otherwise.",
    OILED: "Oil makes them slip: with the torque of this card the clamp comes out otherwise.",
    LOCKED: "Compound belongs only where the card asks for it; here the torque is stated without it."}))}

# %% tags=["reference"]
my_tools = {}
wrenches, held = unit.fasteners.wrenches, {}
for id in groups:
    bolts, aim = joint.Fastening.of(unit, id), Q(unit.fasteners.group(id).torque_nm[1], "N*m")
    held[id] = {w.id: aim if bolts.adapter is None else joint.setting_with_adapter(
        aim, Q(w.length_mm, "mm"), Q(bolts.adapter.reach_mm, "mm"), Q(bolts.adapter.angle_deg, "degree")) for w in wrenches}
    good = {w.id for w in wrenches if joint.TorqueWrench.of(w).suits(held[id][w.id])} | {bolts.group.wrench}
    tools = ref(f"tool-{id}", good, outcome="tighten-to-clamp", shows="adapter", weight=0.2, lesson=at_lesson, slips=[
        Slip(w.id, 0, "This setting lies outside the range in which the wrench can be trusted.") for w in wrenches if w.id not in good])
    my_tools[f"tool-{id}"] = bolts.group.wrench if bolts.group.wrench in tools else min(tools)

# %% tags=["reference"]
my_torques = {}
step = {w.id: Q(w.step_nm, "N*m") for w in wrenches}
for id in groups:
    low, aim, high = (Q(nm, "N*m") for nm in unit.fasteners.group(id).torque_nm)
    used = my_tools[f"tool-{id}"]
    setting = held[id][used]
    band = min(high - aim, aim - low) * (setting / aim).m_as("")
    my_torques[f"torque-{id}"] = ref(
        f"torque-{id}", setting, outcome="tighten-to-clamp", shows="adapter", weight=0.5 if setting == aim else 1.25, lesson=at_lesson,
        tolerance={"absolute": band + step[used] / 2}, slips=[] if setting == aim else [
            Slip(aim, 0, "That is the torque of the card; over the adapter the fastener gets more than the wrench shows."),
            Slip(aim * aim / setting, 0, "The adapter makes the lever longer, so you set less, not more.")])

# %% tags=["reference"]
my_rounds, keys = {}, ("clockwise", "crosswise", "middle-outwards")
for id in groups:
    bolts = joint.Fastening.of(unit, id)
    if bolts.group.flange is None:
        continue
    need = {p: joint.rounds_needed(bolts.face(), pattern_order(job, id, p), bolts.bounds().typical, bolts.group.spread, 4)
            for p in keys}
    works = {p for p in keys if need[p] is not None} or {"crosswise"}
    taken = ref(f"pattern-{id}", works, outcome="tighten-to-clamp", shows="every-bolt", weight=0.2, lesson=at_lesson, slips=[
        Slip(p, 0, "Each bolt takes load off its neighbour; four rounds of this do not even it out.") for p in keys if p not in works])
    my_rounds[f"pattern-{id}"] = chosen = min(taken, key=lambda p: (need[p] or 9, p != "crosswise"))
    enough = {str(n) for n in range(1, 5) if n >= (need[chosen] or 4)}
    rounds = ref(f"rounds-{id}", enough, outcome="tighten-to-clamp", shows="every-bolt", weight=0.3, lesson=at_lesson, slips=[
        Slip(str(n), 0, "After so few rounds of your sequence the clamp is too uneven.") for n in range(1, 5) if str(n) not in enough])
    my_rounds[f"rounds-{id}"] = min(rounds)

# %% tags=["reference"]
moved = dict.fromkeys(("still", "second-round", "two-people", "whole-line"), "done")
moved |= dict.fromkeys(("turned", "neighbour", "broken-line", "half-first"), "round") | dict.fromkeys(("soft", "high-head", "jerks", "stiff"), "out")
ends = {"done": "No bolt moved in the last round: what one takes off its neighbours is made up. More pulling or looking changes nothing here.",
        "round": "A bolt that still turned had lost clamp to its neighbour. Left so, the face weeps there; its thread is good, and can stay in.",
        "out": "Here the wrench feels the thread or a burr, not the clamp: left so or pulled again, the bolt comes loose or the hole strips."}
ref("flange-says", {id: moved[id] for id in labels(given.others.flange.lines)}, outcome="tighten-to-clamp", shows="every-bolt", must_pass=True,
    weight=2.5, lesson=at_lesson, slips=line_reasons(bank.lists["flange"], bank.lists["flange_answers"], moved,
                                                   {id: ends[end] for id, end in moved.items()}, shown=given.others.flange.lines))

# %% tags=["mark"] task="joints" points=20

# %% [markdown] tags=["task"]
# ## 5. Use it again, or renew it
#
# Parts of this build lie before you, each as its line says.
#
# Decide by what was found and read, and by what the card says; where that is not enough, clean or measure first. Figures are invented. **Every line must be right to pass.** *14 points.*

# %% tags=["form"]
sheet.form("parts", sheet.each("parts-again", "What do you do with each of these parts?", lines=given.parts.lines, options=given.parts.answers))

# %% tags=["reference"]
does = dict.fromkeys(("ring-wide", "washer-thick", "circlip-flat", "bearing-ring", "bolt-may"), "again")
does |= dict.fromkeys(("ring-narrow", "washer-scored", "seal-out", "crushed", "circlip-wide", "bearing-balls", "bolt-once", "nut-staked"), "new")
does |= dict.fromkeys(("ring-unread", "washer-unread", "circlip-unseen", "bearing-grit", "bolt-unread"), "look")
kept_in = {
    "ring-narrow": "Sharp grooves look like a good ring, but the gap is below its least: the ring meets the gear before it brakes, and the gear grates.",
    "washer-scored": "Its thickness is fine, but a face that catches the nail scores the gear that runs on it.",
    "seal-out": "The lip looks good, but a seal that was prised out is bent and has lost its seat: it weeps once the oil is warm.",
    "crushed": "It looks flat, but it has been squeezed to shape once; the second time it does not fill the gap, and the plug weeps.",
    "circlip-wide": "It still goes on, but a ring that is loose in its groove comes out under load.",
    "bearing-balls": "It runs quiet in the hand, but the pull went through the balls and dented the raceways: it hums on the road.",
    "bolt-once": "Its thread looks as new, but it was stretched by design: the card wants another, and this one may not hold its clamp.",
    "nut-staked": "There is room for another stake, but the collar has been bent once and cracks: the nut can work loose.",
}

# %% tags=["reference"]
to_new = "A new part seems safer, but what was found and read says that this one is good: the part and its running-in are thrown away."
to_look = "Looking again feels careful, but all that decides stands in the line already."
unknown = {"ring-unread": "its gap was not read", "washer-unread": "its thickness was not read", "circlip-unseen": "under the dirt nobody sees its shape",
           "bearing-grit": "dirt grates as damage does, until it is washed out", "bolt-unread": "nobody measured its length"}
why_part = {id: {"new": to_new, "look": to_look} for id, key in does.items() if key == "again"}
why_part |= {id: {"again": why, "look": to_look} for id, why in kept_in.items()}
why_part |= {id: {"again": f"It looks good, but {why}: if you fit it, you build in what nobody knows.",
                  "new": f"It may well be good, but {why}. To find out takes minutes; thrown away, a good part is lost for nothing."} for id, why in unknown.items()}
ref("parts-again", {id: does[id] for id in labels(given.parts.lines)}, outcome="use-again-or-renew", shows=("by-its-state", "look-first"), must_pass=True,
    lesson=f"{where}#use-it-again-or-renew-it", slips=line_reasons(bank.lists["part"], bank.lists["part_answers"], does, why_part, shown=given.parts.lines))

# %% tags=["mark"] task="parts" points=14

# %% [markdown] tags=["task"]
# ## 6. Against the clock
#
# A clock of your unit, with the minutes of your steps. It runs from the end of one step to the end of another.
#
# Work out how long the steps take that must be done inside, and what is left. Then tick what else may be done. Judge each of these steps by itself.
#
# If your unit is closed on sealant, its film is asked for as well. The film must seal, in time, with no lump near an oil gallery. *14 points.*

# %% tags=["rig"]
c = given.clock
given_table(f"{c.minutes:g} minutes from the end of “{c.starts.name}” to the end of “{c.ends.name}”",
            ["must be done inside", "takes, min"], c.inside)

# %% tags=["rig"]
faces = [(ask.name, job.work(ask.about)) for ask in asks if ask.kind == "film"]
given_table("Faces to coat", ["face", "", "value"],
            [(name, words, value) for name, work in faces for words, value in (
                ("may lie open for", f"{work.limit_minutes:g} min"), ("largest gap", f"{max(work.gap_mm.values()):.3f} mm"),
                ("all stretches together", f"{work.length_mm:.0f} mm"), ("film by roller, for 100 mm", f"{work.pace.film:g} min"),
                ("bead, for 100 mm", f"{work.pace.bead:g} min"), ("from the last pass to the closed face", f"{work.pace.close:g} min"))]
            or [("none", "your unit has no face to coat", "")])

# %% tags=["form"]
sheet.form(
    "closing",
    sheet.number("clock-used", "How many minutes do the steps take that must be done inside?", "min"),
    sheet.number("clock-left", "How many minutes are left over?", "min"),
    sheet.choices("clock-inside", "Which of these may be done, one alone, while the clock runs?", options=given.clock.options),
    *sheet.ask_all(spec for ask in asks if ask.kind == "film" for spec in ask.fields),
)

# %% tags=["reference"]
my_films = {}
c, at_lesson = given.clock, f"{where}#the-clock"
window = order.window(job.task, c.clock, minutes=c.takes, allowed=c.minutes)
last, tenth = c.takes[c.ends.id], {"absolute": Q(0.1, "min")}
used = ref("clock-used", Q(window.minutes_used, "min"), outcome="close-on-time", shows="clock", weight=2, tolerance=tenth, lesson=at_lesson,
           slips=[Slip(Q(window.minutes_used - last, "min"), 0.5, "The last step takes time too, and must be finished before the clock ends.")])
left = ref("clock-left", Q(c.minutes, "min") - used, outcome="close-on-time", shows="clock", weight=2, tolerance=tenth, lesson=at_lesson,
           slips=[Slip(Q(c.minutes, "min"), 0, "That is all that the clock allows; take off what must be done inside.")])
may = {s for s in labels(c.options) if s in window.optional and c.takes[s] <= left.m_as("min")}
ref("clock-inside", may or {min(labels(c.options), key=c.takes.get)}, outcome="close-on-time", shows="clock", weight=2, lesson=at_lesson,
    slips=[Slip(s, 0, f"One that you ticked takes longer than your clock leaves: “{name}”.") for s, name in c.options if s not in may]
    + missed(c.options, may or {min(labels(c.options), key=c.takes.get)}, "“{name}” need not wait: your clock leaves the minutes for it."))
for ask in (one for one in asks if one.kind == "film"):
    my_films[ask.id] = ref(ask.id, job.work(ask.about), outcome="close-on-time", shows="film", weight=5, lesson=at_lesson)

# %% tags=["mark"] task="closing" points=14

# %% [markdown] tags=["task"]
# ## 7. Prove it
#
# Write down the hand test that proves the lockout: which moves you try, and what they must show so that the stop counts.
#
# Then say what you make of each check of **your** unit, as the bench showed it. A part may have been wrong when it came.
#
# Last, proofs that others have made, of lockouts that open by way of neutral. Such a lockout holds if the direct shift is stopped every time, and the later gear goes in by way of neutral. **You must get all of these right to pass.** *16 points.*

# %% tags=["form"]
sheet.form("proof", *sheet.ask_all(sheet_fields(job, "proof", "check")),
           sheet.each("proof-says", "What do you make of each of these proofs?", lines=given.felt.scenes, options=given.felt.says))

# %% tags=["reference"]
my_proofs = {}
at_lesson = f"{where}#prove"
shown = [shift.fitted(unit.shift, [m.id]) for m in unit.shift.misbuilds]
fails = [m for m in shown if [lock.verdict for lock in shift.prove_by_hand(m).locks[:1]] == ["fails"]]
for ask in (one for one in asks if one.kind == "proof"):
    block = blocks_of(job)[ask.about]
    my_proofs[ask.id] = ref(ask.id, shift.lockout_test(shift.fitted(unit.shift), block.earlier, block.later, faulty=fails[:2]),
                       outcome="proof-of-lockout", shows="direct-shift", must_pass=True, weight=1, lesson=at_lesson)

# %% tags=["reference"]
made = decisions_from(job, my_plan | my_ways | my_shims | my_states | my_tools | my_torques | my_rounds | my_films | my_proofs)
steps = [one.step for one in made]
said, right = asked_together(job)["verdicts"].arguments, {}
for ask in (one for one in asks if one.kind == "check"):
    seen = outcomes_at(job, made[: steps.index(ask.step) + 1], ask.step)
    right[f"verdict-{ask.step}"] = GO_ON if all(one.passes for one in seen) else OPEN
ref("verdicts", right, outcome="check-own-build", shows="look-for-fault", must_pass=True, weight=1, lesson=at_lesson,
    slips=line_reasons(said["lines"], said["options"], right, {}, anywhere={
        OPEN: "On your unit everything that this check shows is as it should be.",
        GO_ON: "On your unit this check shows a fault; if you go on, you build it in."}))

# %% tags=["reference"]
why_so = {
    "every": "Stopped every time, and it let go as it should: that is the whole proof.",
    "spot": "Stopped at the same spot every time, and it let go after neutral: that is the whole proof.",
    "second": "Whose hands they were does not matter: each try stopped, and each went in by way of neutral.",
    "cold": "It stopped and let go, cold and warm: nothing is missing.",
    "but-one": "One that goes through is enough: on the road it is that one that counts.",
    "push": "A stop that gives way to a firm hand is no stop; drivers push hard when they are in a hurry.",
    "last": "The last try went through, so it is not held every time.",
    "never": "A stop that never lets go fails too: the gear behind it can then not be engaged at all.",
    "half": "Half the proof is missing: a gear that never goes in would have been stopped as well.",
    "round": "By way of neutral it is meant to go in; the direct shift, which counts, was not tried.",
    "hearsay": "What is only said cannot be checked: the moves and what was felt must be written down.",
    "opened": "The proof was made before the cover came off; nobody has tried what is in there now.",
}

# %% tags=["reference"]
proofs = bank.lists["felt"]
says = dict.fromkeys(("every", "spot", "second", "cold"), "holds")
says |= dict.fromkeys(("but-one", "push", "last", "never"), "fails") | dict.fromkeys(("half", "round", "hearsay", "opened"), "anew")
ref("proof-says", {id: says[id] for id in labels(given.felt.scenes)}, outcome="proof-of-lockout", shows="holds-every-time", must_pass=True, weight=4,
    lesson=f"{where}#prove", slips=line_reasons(proofs, bank.lists["says"], says, why_so, shown=given.felt.scenes))

# %% tags=["mark"] task="proof" points=16

# %% [markdown] tags=["task"]
# ## 8. What should be counted?
#
# Before a count is worth anything you must know what it should give. One wheel is turned, the other held.
#
# Last, checks that others have made: what failed once has failed, and what was not made as asked says nothing. **Every line about them must be right to pass.** *10 points.*

# %% tags=["rig"]
t = given.turns
given_table(f"{t.gear.name}; {t.counted}", ["", "drives, teeth", "driven, teeth"], t.wheels)

# %% tags=["form"]
sheet.form(
    "turns",
    sheet.number("turns-ratio", "How many turns of the input shaft make one turn of the ring gear?", ""),
    sheet.number("turns-input", f"One wheel is turned {given.turns.turns} times, the other held. How many turns does the input shaft make?", "turn"),
    sheet.each("checks-say", "What do you make of each of these checks?", lines=given.others.made.lines, options=given.others.made.answers),
)

# %% tags=["reference"]
t, at_lesson = given.turns, f"{where}#prove"
total = abs(float(geartrain.ratio(unit.gear_train, t.gear.id)))
gear, final = (row.driven / row.driving for row in t.wheels)
ratio = ref("turns-ratio", total, outcome="check-own-build", shows="beforehand", weight=2, tolerance=0.006, lesson=at_lesson, slips=[
    Slip(1 / total, 0.25, "The other way round: divide the driven teeth by those that drive."),
    Slip(gear, 0.25, "The final drive belongs to it as well."),
    Slip(gear + final, 0, "One pair after the other: multiply, do not add.")])
counted = geartrain.count_turns(unit.gear_train, t.gear.id, t.turns, t.counted).exact
rings = abs(float(counted / geartrain.ratio(unit.gear_train, t.gear.id)))
ref("turns-input", Q(rings * ratio, "turn"), outcome="check-own-build", shows="beforehand", weight=2.5, tolerance={"absolute": Q(t.step, "turn")},
    lesson=at_lesson, slips=[Slip(Q(2 * rings * ratio, "turn"), 0.25, "With the other wheel held, the ring gear makes half the turns of the wheel.")])

# %% tags=["reference"]
saying = dict.fromkeys(("as-due", "reverse", "held-in", "kept-out"), "go") | dict.fromkeys(("off", "wrong-way", "slipped", "second"), "find")
saying |= dict.fromkeys(("let-go", "lost", "fewer", "no-figure"), "again")
passed = {"go": "It was made as asked and showed what is due: nothing is left to look for, and nothing to make again.",
          "find": "It was made as asked, and it did not pass. Once is enough: built on, the fault is closed in and goes on the road.",
          "again": "It was not made as asked, so it shows neither that all is well nor that something is wrong."}
ref("checks-say", {id: saying[id] for id in labels(given.others.made.lines)}, outcome="check-own-build", shows="look-for-fault", must_pass=True,
    weight=6, lesson=at_lesson, slips=line_reasons(bank.lists["made"], bank.lists["made_answers"], saying,
                                                 {id: passed[end] for id, end in saying.items()}, shown=given.others.made.lines))

# %% tags=["mark"] task="turns" points=10

# %% [markdown] tags=["task"]
# ## 9. The wrong way round, seen late
#
# On another unit the first step of the table was done wrongly, and the steps under it followed.
#
# Tick what has to come off before the part can be turned round, and nothing more. Then work out the minutes: all of that undone and done again, and the wrong step itself undone and done again. Last, other parts that went in wrongly, each with two final checks that were made since: does one of them show it?
#
# Where your unit is drawn: one place of four units, seen before it is covered. See which is built how; two may be alike. *6 points.*

# %% tags=["rig"]
given_table(f"Done wrongly: {given.late.words}", ["step", "to undo, min", "to do, min"], [(row.name, row.undo_min, row.do_min) for row in given.late.rows])

# %% tags=["form"]
from twoshaft.plots.unit_scene import look_pictures

sheet.form(
    "late",
    sheet.choices("late-off", "What has to come off?", options=given.late.options),
    sheet.number("late-minutes", "How many minutes does it cost?", "min"),
    sheet.each("late-shows", "Each went in wrongly, and these checks were made. Do they show it?", options=given.late.shown,
               lines=[(one.id, one.words) for one in given.late.others]),
    *([sheet.picture("late-looks", "One place of four units, from a side of your own: which unit is it? Where two fit, either is right",
                     lines=given.late.built, pictures=look_pictures(unit, given.late.looks))] if given.late.looks else []),
)

# %% tags=["reference"]
late, every = given.late, Job.of(unit)
ask = next(one for one in asks_of(every) if one.id == late.ask)
wrong = next(one for one in unit.operation_by_id[ask.about].wrong_ways if one.id == late.way)
found, at_lesson = judge_way(every, ask, wrong, late.done), f"{where}#the-price-of-a-wrong-decision"
off = ref("late-off", set(found.off), outcome="fit-right-way", shows="turn-round", weight=1.5, lesson=at_lesson,
          slips=[Slip(s, 0, f"One that you ticked can stay where it is: “{name}”.") for s, name in late.options if s not in found.off]
          + missed(late.options, found.off, "“{name}” has to come off: it holds the part, or stands in its way out."))
minutes = {row.id: (row.undo_min, row.do_min) for row in late.rows}
again = sum(sum(minutes[s]) for s in off)
itself = sum(minutes[ask.step])
ref("late-minutes", Q(again + itself, "min"), outcome="fit-right-way", shows="turn-round", weight=2, tolerance={"absolute": Q(0.1, "min")}, lesson=at_lesson,
    slips=[Slip(Q(again, "min"), 0.5, "The wrong step itself has to be undone and done again as well."),
           Slip(Q(sum(minutes[s][0] for s in [*off, ask.step]), "min"), 0.25, "What came off has to go on again: that takes its minutes too."),
           Slip(Q(sum(sum(m) for m in minutes.values()), "min"), 0, "Not everything that was done since has to come off.")])

# %% tags=["reference"]
by_check = shown_by(unit)
right = {one.id: "shown" if {*by_check.get((one.operation, one.way), ())} & {*one.checks} else "not" for one in late.others}
ref("late-shows", right, outcome="fit-right-way", shows="not-shown", weight=2.5, lesson=at_lesson,
    slips=line_reasons([(one.id, one.words) for one in late.others], bank.lists["shown"], right, {}, anywhere={
        "shown": "Both checks pass with it in the unit: if you rely on them, you send it out. It has to be seen before it is covered.",
        "not": "One of the two does not pass with it; if you take that for something else, you look in the wrong place."}))

# %% tags=["reference"]
BUILT = {"right": "In this one something lies the wrong way round or is not there: compare the four part by part.",
         "turned": "Nothing is turned over in this one: compare lips, cones, bosses and bevels with the part beside them.",
         "missing": "Nothing is left out in this one: look for a groove, a bore or a gap that nothing fills."}
if late.looks:
    built = shape.built_how(unit, {look.letter: (look.near.scene.view, lies_in(look.near.scene)) for look in late.looks})
    ref("late-looks", built, outcome="fit-right-way", shows="not-shown", weight=1.2, lesson=at_lesson,
        slips=line_reasons(late.built, [(look.letter, "") for look in late.looks], built, BUILT))

# %% tags=["mark"] task="late" points=6

# %% [markdown] tags=["task"]
# ## 10. Written down and signed
#
# First, lines of build records, each with what was really done. A line should say what was done and read, tidy or not.
#
# Then say who signs for each check: the one who made it, once it is made. Last, decide in each case. If something may be wrong inside, the unit goes out of use. Work that nobody can vouch for is done again. What was seen to be right is signed. **You must get every check and every case right to pass.** *16 points.*

# %% tags=["form"]
sheet.form(
    "notes",
    sheet.each("notes-lines", "What do you do with each of these lines of a record?", lines=given.notes.record.lines, options=given.notes.record.answers),
    sheet.each("notes-signs", "Who signs for each of these checks?", lines=given.notes.signed.lines, options=given.notes.signed.answers),
    sheet.each("notes-do", "What do you do before the unit leaves?", lines=given.notes.scenes, options=given.notes.do),
)

# %% tags=["reference"]
at_lesson = f"{where}#the-build-record"
writes = dict.fromkeys(("set", "failed", "undone", "read"), "stays") | dict.fromkeys(("card", "worked", "planned", "clean"), "strike")
writes |= dict.fromkeys(("ahead", "guess", "trust", "filled"), "open")
said_so = {"stays": "It may look odd or untidy, but it says what was done and read: if it is struck out, the next person starts from nothing.",
           "strike": "It reads well, but something else was done: a later search for a fault starts from a figure that never was.",
           "open": "It reads as done, and nobody has done it: a person who trusts it builds on nothing, and there is nothing to write yet."}
ref("notes-lines", {id: writes[id] for id in labels(given.notes.record.lines)}, outcome="keep-record", shows="written-down", weight=3, lesson=at_lesson,
    slips=line_reasons(bank.lists["record"], bank.lists["record_answers"], writes, {id: said_so[do] for id, do in writes.items()},
                       shown=given.notes.record.lines))

# %% tags=["reference"]
signs = dict.fromkeys(("pushed", "read", "counted", "clicked"), "you") | dict.fromkeys(("watched", "wrote", "built", "held"), "other")
signs |= dict.fromkeys(("will-push", "shim-since", "both", "unknown"), "nobody")
ref("notes-signs", {id: signs[id] for id in labels(given.notes.signed.lines)}, outcome="keep-record", shows="written-down", must_pass=True, weight=4,
    lesson=at_lesson, slips=line_reasons(bank.lists["signed"], bank.lists["signed_answers"], signs, {}, anywhere={
        "you": "You were there, but a signature says who made the check and can be asked what it showed; here that is not you.",
        "other": "Your colleague had a part in it, but did not make this check, and cannot say later what it showed.",
        "nobody": "It looks safe to wait, but the check was made: without a name it counts as left out, and is made again.",
    }, shown=given.notes.signed.lines))

# %% tags=["reference"]
does = dict.fromkeys(("once", "spare", "felt", "chips", "tight"), "tag")
does |= dict.fromkeys(("unsigned", "loose", "unread"), "again") | dict.fromkeys(("clicked", "stopped", "blot", "turned"), "sign")
ref("notes-do", {id: does[id] for id in labels(given.notes.scenes)}, outcome="keep-record", shows="out-of-use", must_pass=True, weight=6,
    lesson=at_lesson, slips=line_reasons(bank.lists["scene"], bank.lists["do"], does, {}, anywhere={
        "sign": "It looks finished, but this was not seen to be right; if you sign it, you answer for what happens on the road.",
        "tag": "Careful, but nothing here says that a part is wrong: the unit stands idle, and nobody knows what to look for.",
        "again": "Doing it once more may feel thorough, but it is not what is open here: a fault stays in, or good work is taken apart.",
    }, shown=given.notes.scenes))

# %% tags=["mark"] task="notes" points=16

# %% [markdown]
# ## Done?
#
# Read through your record once more: the forms above are what you sign for. Then go back to **start-here** and press **Hand in**. You get a receipt. You can hand in again until the due date; the last one counts.
