# %% [markdown]
# # Shims, end play and preload: exercise
#
# <div class="twoshaft-if-missing">If no forms appear below: press <b>Run</b>, then <b>Run All Cells</b>.</div>
#
# Ten tasks about setting a pair of bearings. Take about 75 minutes; have paper and a calculator.
#
# Every answer is saved as you give it; you can stop and come back.
#
# Preload counts above zero, end play below. Where an answer builds on an earlier one, a mistake costs marks once.
#
# *Invented unit, for teaching. On a real unit the maker's manual, local codes and licensed practice decide.*

# %% tags=["setup"]
from twoshaft.jobsheet import open_sheet
from twoshaft.plots.bearing_section import beside, bearing_section
from twoshaft.plots.tables import given_table
from twoshaft.rigs import cord_bench, shim_bench

sheet = open_sheet("shims-and-preload")
given, unit = sheet.given, sheet.unit
main = unit.bearings.support_by_id(given.stack.support)

# %% tags=["reference"]
from twoshaft.models import bearing, bench_tools, shim
from twoshaft.models.bearing.drag import Part
from twoshaft.questions import bank_of
from twoshaft.records import labels
from twoshaft.units.quantities import Q
from twoshaft_grader.marking import Slip, line_reasons, missed, reasons, ref

bearings, bank = unit.bearings, bank_of("shims-and-preload")
NEAR = Q(0.004, "mm")
EXACT = Q(0.0015, "mm")  # readings in hundredths leave nothing to round
STRAY = Q(0.25, "mm")
where = "05-shims-and-preload"

# %% [markdown] tags=["task"]
# ## 1. Which way does it work?
#
# Four arrangements, drawn to show the principle. In each the shim gets **thicker**. Say what that does, and why.
#
# Then the shim in case A is changed as the table says. What does the pair have afterwards? Write preload as a plus, end play as a minus. Where your unit is drawn, point at the parts asked for: front and rear, or above and below, may be the other way round. *8 points.*

# %% tags=["rig"]
beside(
    (f"Case {case.name}", bearing_section(main, unit.bearings, shim_mm=3, arrangement=case.arrangement,
                                          place=case.place, to_scale=False, width_px=420))
    for case in given.signs.cases
)

# %% tags=["rig"]
change = given.signs.change
given_table("Case A", ["it has now", "shim now, mm", "new shim, mm"],
            [(f"{change.amount_mm:.2f} mm of {change.kind}", f"{change.before_mm:.2f}",
              f"{change.after_mm:.2f}")])

# %% tags=["form"]
from twoshaft.plots.unit_scene import ScenePicture

where_at = given.signs.where
sheet.form(
    "signs",
    sheet.each("signs-cases", "What does a thicker shim do?", options=given.signs.options,
               lines=[(case.name.lower(), f"case {case.name}") for case in given.signs.cases]),
    sheet.number("signs-after", "Case A with the new shim: setting, preload plus, end play minus", "mm"),
    *([sheet.point("signs-where", f"Your unit, from a side of your own: {where_at.name}", picture=ScenePicture(unit, where_at.near.scene, (), where_at.near.window_mm),
                   lines=[["shim", "The shim that sets this pair"], ["ring", "The ring that this shim pushes"]])] if where_at else []),
)

# %% tags=["reference"]
RING = {"behind-outer-ring": "outer", "between-outer-rings": "outer", "under-cover": "outer",
        "behind-inner-ring": "inner", "between-inner-rings": "inner"}
MOVES = {"outer": "The shim lies at the outer rings, so it is an outer ring that moves, by itself or with its cover.",
         "inner": "The shim lies at the inner rings, so it is an inner ring that moves."}
onto, why = {}, {}
for case in given.signs.cases:
    word, ring = "tighter" if shim.shim_sign(case.arrangement, case.place) > 0 else "looser", RING[case.place]
    onto[case.name.lower()] = f"{word}-{ring}"
    why[case.name.lower()] = {id: "Follow the ring that moves: onto its rollers, or away?" if id.endswith(ring) else MOVES[ring]
                              for id in labels(given.signs.options) if id != f"{word}-{ring}"}

# %% tags=["reference"]
ways = ref("signs-cases", onto, weight=4.5, outcome="shim-direction", shows=("which-ring", "both-ways"),
           lesson=f"{where}#which-way-does-it-work",
           slips=line_reasons([(id, "") for id in onto], given.signs.options, onto, why))

# %% tags=["reference"]
change = given.signs.change
before = change.amount_mm * (1 if change.kind == "preload" else -1)
moved = change.after_mm - change.before_mm
sign = 1 if ways["a"].startswith("tighter") else -1
ref(
    "signs-after", Q(before + sign * moved, "mm"), weight=2, outcome="work-out-shim", shows="from-gap-on", tolerance=EXACT,
    lesson=f"{where}#which-way-does-it-work",
    slips=[Slip(Q(before - sign * moved, "mm"), 0,
                "You went the other way than the direction of this arrangement.")],
)

# %% tags=["reference"]
from twoshaft.models import shape

if given.signs.where:
    scene = given.signs.where.near.scene
    letters = {spot.text: spot.id for spot in scene.spots}
    ((shim_at, ring_at),) = {found for one in unit.bearings.supports if one.name == given.signs.where.name
                             for found in [shape.shim_and_ring(unit, one.id)]}
    at = {"shim": letters[shim_at], "ring": letters[ring_at]}
    ref("signs-where", at, weight=1.5, outcome="shim-direction", shows="which-ring", lesson=f"{where}#which-way-does-it-work", slips=line_reasons(
        [("shim", ""), ("ring", "")], [(letter, "") for letter in letters.values()], at, {
            "shim": "Look for the thin ring between the back of an outer ring and what closes its bore: it is drawn solid.",
            "ring": "The shim lies at the back of an outer ring, and pushes it towards its rollers: that ring moves, and nothing else."}))

# %% tags=["mark"] task="signs" points=8

# %% [markdown] tags=["task"]
# ## 2. From the stack to the shim
#
# The table shows what was measured on a unit, and the drawing how it is arranged.
#
# Work out the shim that leaves neither play nor preload, then the thinnest and the thickest shim that meet the target.
#
# Then choose from the shims that are there. Your choice must meet the target even if the stack is off by its uncertainty, either way. Two answers may be right. Last, say what each of four changes of shim does to this unit. **You must get all four right to pass.** *12 points.*

# %% tags=["rig"]
bearing_section(main, unit.bearings, shim_mm=sorted(given.stack.totals.values())[3])

# %% tags=["rig"]
stack = given.stack
given_table(
    f"{stack.name}: measured; target {stack.low_mm:g} to {stack.high_mm:g} mm of {main.target.kind.replace('-', ' ')}"
    f"{stack.source}; uncertainty of the stack {stack.doubt_mm:.3f} mm either way",
    ["length", "what it is", "tool", "reading, mm"], stack.rows,
)

# %% tags=["form"]
sheet.form(
    "stack",
    sheet.number("stack-gap", "Shim that leaves neither play nor preload", "mm"),
    sheet.number("stack-thin", "Thinnest shim that meets the target", "mm"),
    sheet.number("stack-thick", "Thickest shim that meets the target", "mm"),
    sheet.choice("stack-shim", "Which do you fit?", options=given.stack.shims),
    sheet.each("stack-direction", "What does this unit have after each change of shim?",
               lines=[(one.id, one.text) for one in given.stack.swaps], options=given.stack.directions),
)

# %% tags=["reference"]
stack = given.stack
support = bearings.support_by_id(stack.support)
built = shim.Stack.from_support(support, {term: Q(mm, "mm") for term, mm in stack.lengths.items()})
changes = {one.id: (one.thicker_mm > 0) - (one.thicker_mm < 0) for one in stack.swaps}
DOES = {1: "tighter", 0: "same", -1: "looser"}
does = {id: DOES[built.shim_sign * sign] for id, sign in changes.items()}
turned_round = {id: DOES[-built.shim_sign * sign] for id, sign in changes.items()}
MOVED = "Add up what goes in: the shim is another size than before, so the ring that it pushes moves."
OTHER_WAY = "The other way round: follow the ring that the shim pushes, in the drawing."
STAYED = "Add up what goes in: two shims make the same size as the one before, so no ring moves."
why = {id: {"same": MOVED, turned_round[id]: OTHER_WAY} if sign else STAYED for id, sign in changes.items()}

# %% tags=["reference"]
lines = [(one.id, one.text) for one in stack.swaps]
direction = ref("stack-direction", does, weight=3, outcome="shim-direction", shows="both-ways", must_pass=True,
                lesson=f"{where}#which-way-does-it-work",
                slips=line_reasons(lines, stack.directions, does, why))
gap = ref("stack-gap", built.shim_for(Q(0.0, "mm")), weight=2, outcome="work-out-shim", shows="signs", tolerance=NEAR,
          lesson=f"{where}#from-the-stack-to-the-shim")

# %% tags=["reference"]
way = -1 if direction == turned_round else 1
exact = built.shim_for(Q(0.0, "mm"))
plus = 1 if support.target.kind == "preload" else -1
target = [Q(plus * stack.low_mm, "mm"), Q(plus * stack.high_mm, "mm")]
ends = [gap + way * (built.shim_for(limit) - exact) for limit in target]
other = [2 * gap - end for end in ends]
wrong = "This is the limit on the other side of the gap: the direction is turned round."
thin = ref("stack-thin", min(ends), outcome="work-out-shim", shows="from-gap-on", tolerance=NEAR,
           lesson=f"{where}#from-the-stack-to-the-shim", slips=[Slip(min(other), 0, wrong)])
thick = ref("stack-thick", max(ends), outcome="work-out-shim", shows="from-gap-on", tolerance=NEAR,
            lesson=f"{where}#from-the-stack-to-the-shim", slips=[Slip(max(other), 0, wrong)])

# %% tags=["reference"]
doubt = Q(stack.doubt_mm, "mm")
totals = {key: Q(total, "mm") for key, total in stack.totals.items()}
# A window is as wide as the target; one far off is not gone on with.
low = thin if abs(thin - min(ends)) < STRAY else min(ends)
high, slack = low + max(ends) - min(ends), Q(1e-6, "mm")
safe = {key for key, total in totals.items() if low + doubt <= total <= high - doubt}
gamble = [key for key, total in totals.items() if key not in safe and low - slack <= total <= high + slack]
far = [key for key in totals if key not in safe and key not in gamble]
picked = ref(
    "stack-shim", safe, weight=3, outcome="choose-shim", shows="guard-band", lesson=f"{where}#choosing-from-the-set",
    slips=[*[Slip(key, 0.3, "It meets the target on paper, but by less than the uncertainty of the stack.")
             for key in gamble],
           *[Slip(key, 0, "It does not lie between your thinnest and your thickest shim.") for key in far]],
)

# %% tags=["mark"] task="stack" points=12

# %% [markdown] tags=["task"]
# ## 3. What follows from it
#
# Go on with the shim that you fitted in task 2. What setting does it give? Read the preload from the table; between two rows, go halfway.
#
# Work out the torque that turns the shaft with the parts named, and the pull on the cord. Last, what does the setting become when the unit is warm? *6 points.*

# %% tags=["rig"]
given_table(f"{given.stack.name}: preload of the pair", ["setting, mm of preload", "preload, N"],
            [(f"{at.setting_mm:.2f}", round(at.preload_n)) for at in given.stack.preloads])

# %% tags=["rig"]
given_table(
    f"Turned by a cord on a drum of {given.stack.drum_mm} mm radius",
    ["what turns", "torque, N·m"],
    [("both bearings, for each 1000 N of preload", f"{given.stack.torque_nm:.3f}"),
     *[(drag.name, f"{drag.torque_nm:g}") for drag in given.stack.drags]],
)

# %% tags=["rig"]
given_table("What heat does to the setting, bench to running; above zero tightens",
            ["part", "change, µm"], [(one.part, f"{one.change_um:+d}") for one in given.stack.warm])

# %% tags=["form"]
sheet.form(
    "follow",
    sheet.number("follow-setting", "Setting with your shim, preload plus, end play minus", "mm"),
    sheet.number("follow-preload", "Preload of the pair", "N"),
    sheet.number("follow-torque", "Torque of everything in the table together", "N·m"),
    sheet.number("follow-pull", "Pull on the cord", "N"),
    sheet.number("follow-warm", "Setting when warm, preload plus, end play minus", "mm"),
)

# %% tags=["reference"]
middle = (low + high) / 2
total = min((mm for key, mm in totals.items() if key in picked), key=lambda mm: abs(mm - middle))
setting = ref(
    "follow-setting", way * (built.interference(total) - built.interference(gap)), outcome="work-out-shim", shows="from-gap-on",
    tolerance=EXACT, lesson=f"{where}#from-the-stack-to-the-shim",
)
pair = bearing.Pair.from_support(support, bearings)
preload = ref("follow-preload", pair.preload(setting), outcome="work-out-shim", shows="from-gap-on",
              tolerance={"relative": 0.02, "absolute": Q(25, "N")}, lesson=f"{where}#pull-on-a-cord")

# %% tags=["reference"]
together = bearing.turned(support, bearings, preload, stack.kinds)
alone = bearing.turned(support, bearings, preload)
torque = ref("follow-torque", together.torque, outcome="work-out-shim", shows="from-gap-on", tolerance=0.03,
             lesson=f"{where}#pull-on-a-cord",
             slips=[Slip(alone.torque, 0.4, "These are the bearings alone; more turns with them.")]
             if stack.drags else [])
felt = bearing.Turned("all of it", (Part("all of it", torque.m_as("N*m")),))
pull = bearing.cord_pull(felt, Q(stack.drum_mm, "mm")).force
ref("follow-pull", pull, outcome="work-out-shim", shows="from-gap-on", tolerance=0.03, lesson=f"{where}#pull-on-a-cord",
    slips=[Slip(pull / 2, 0.3, "You divided by the diameter; the cord pulls at the radius.")])

# %% tags=["reference"]
heat = Q(sum(one.change_um for one in stack.warm), "um").to("mm")
ref("follow-warm", setting + heat, outcome="warm-setting", shows="sign", tolerance=EXACT, weight=2,
    lesson=f"{where}#warm-and-cold",
    slips=[Slip(setting - heat, 0, "The change goes the other way: above zero tightens, below loosens.")])

# %% tags=["mark"] task="follow" points=6

# %% [markdown] tags=["task"]
# ## 4. A shelf that is half empty
#
# Another support, with another arrangement: look at the drawing before you begin. Only a few shims are left, and **one** may be fitted. Which one, or what else?
#
# Then some ideas that came up when no shim fitted: what do you do with each? **Each idea must be right to pass.** *10 points.*

# %% tags=["rig"]
other_one = unit.bearings.support_by_id(given.shelf.support)
bearing_section(other_one, unit.bearings, shim_mm=min(given.shelf.totals.values()))

# %% tags=["rig"]
shelf = given.shelf
given_table(
    f"{shelf.name}: measured; target {shelf.low_mm:g} to {shelf.high_mm:g} mm of "
    f"{shelf.kind}; uncertainty of the stack {shelf.doubt_mm:.3f} mm either way",
    ["length", "what it is", "tool", "reading, mm"], shelf.rows,
)

# %% tags=["form"]
sheet.form(
    "shelf",
    sheet.number("shelf-thin", "Thinnest shim that meets the target", "mm"),
    sheet.number("shelf-thick", "Thickest shim that meets the target", "mm"),
    sheet.choice("shelf-shim", "What do you fit?", options=given.shelf.shims),
    sheet.each("shelf-may", "Other units, on which no shim fits. What do you do with each idea?",
               lines=given.shelf.may.lines, options=given.shelf.may.answers),
)

# %% tags=["reference"]
shelf = given.shelf
hub = bearings.support_by_id(shelf.support)
loose = shim.Stack.from_support(hub, {term: Q(mm, "mm") for term, mm in shelf.lengths.items()})
limits = [Q(mm, "mm") for mm in loose.window(*shim.target_interference(hub))]
zero = loose.shim_for(Q(0.0, "mm"))
mirrored = [2 * zero - limit for limit in limits]
round_way = "That is the limit with the direction turned round; this arrangement works the other way."
thin_2 = ref("shelf-thin", limits[0], outcome="work-out-shim", shows="signs", tolerance=NEAR, weight=2,
             lesson=f"{where}#which-way-does-it-work", slips=[Slip(mirrored[1], 0, round_way)])
thick_2 = ref("shelf-thick", limits[1], outcome="work-out-shim", shows="signs", tolerance=NEAR, weight=2,
              lesson=f"{where}#which-way-does-it-work", slips=[Slip(mirrored[0], 0, round_way)])

# %% tags=["reference"]
doubt_2 = Q(shelf.doubt_mm, "mm")
left = {key: Q(mm, "mm") for key, mm in shelf.totals.items()}
least = thin_2 if abs(thin_2 - limits[0]) < STRAY else limits[0]
most = least + limits[1] - limits[0]
sure = {key for key, mm in left.items() if least + doubt_2 <= mm <= most - doubt_2}
paper = {key for key, mm in left.items() if least <= mm <= most} - sure

# %% tags=["reference"]
best = sure or ({"again"} if paper else {"none"})
ref(
    "shelf-shim", best, weight=4, outcome="choose-shim", shows="guard-band", lesson=f"{where}#choosing-from-the-set",
    slips=[*[Slip(key, 0.25, "It meets the target on paper only, by less than the uncertainty of the stack.")
             for key in paper],
           *[Slip(key, 0, "It misses the target; work out both ends before you look at the shelf.")
             for key in set(left) - sure - paper],
           *[Slip(key, 0, "Go through the shelf again with your two ends and the uncertainty.")
             for key in {"again", "none"} - best]],
)

# %% tags=["reference"]
MAY = {"order": "fit", "pair": "fit", "second": "fit", "burr": "measure", "paint": "measure", "finer": "measure",
       "file": "leave", "foil": "leave", "film": "leave"}
ASKED = "It is the size that was worked out, and it is fitted as the maker means it: nothing is made up with other things."
CHANGED = "The seat is not what it was when it was measured, so the old sum is for another seat."
idea = {"order": ASKED, "pair": ASKED, "second": ASKED, "burr": CHANGED, "paint": CHANGED,
        "finer": "A shim that meets the target on paper only is a gamble; a finer reading makes the uncertainty smaller, and may settle it.",
        "file": "A rubbed shim is no longer flat or parallel, and its edge sheds grit.",
        "foil": "Foil creeps and tears; the setting is gone in a week.",
        "film": "Sealant is squeezed out and dissolves; it carries no bearing."}
ref("shelf-may", {one.id: MAY[one.id] for one in shelf.may.lines}, weight=4, outcome="choose-shim", shows="no-making-up", must_pass=True,
    lesson=f"{where}#choosing-from-the-set",
    slips=line_reasons(bank.lists["may"], shelf.may.answers, MAY, idea, shown=shelf.may.lines))

# %% tags=["mark"] task="shelf" points=10

# %% [markdown] tags=["task"]
# ## 5. A trial fit
#
# A thin trial shim is in. First some readings of other units: does each count?
#
# Then take the reading at the bench below, and work out the shim for the **middle** of the target. Where your unit is drawn, put rings and shim into it, each in its place and the right way round. *9 points.*

# %% tags=["rig"]
trial = given.trial
kind = unit.bearings.support_by_id(trial.support).target.kind.replace("-", " ")
given_table(f"{trial.name}: trial fit",
            ["trial shim, mm", f"target, mm of {kind}", "a thicker shim"],
            [(f"{trial.trial_mm:.2f}", f"{trial.low_mm:g} to {trial.high_mm:g}", trial.thicker)])

# %% tags=["rig"]
shim_bench(unit, given.trial.support, trial=(given.trial.trial_mm,),
           measured=given.trial.lengths, readings_only=True)

# %% tags=["form"]
from twoshaft.plots.unit_scene import put_in

sheet.form(
    "trial",
    sheet.each("trial-before", "What do you do with each reading?", lines=given.trial.before.lines,
               options=given.trial.before.answers),
    sheet.number("trial-float", "End float that you read", "mm"),
    sheet.number("trial-shim", "Shim for the middle of the target", "mm"),
    *([sheet.put("trial-put", "Your unit without its rings, seals and shims, from a side of your own: put these in",
                 **put_in(unit, given.trial.into))] if given.trial.into else []),
)

# %% tags=["reference"]
trial = given.trial
tried = bearings.support_by_id(trial.support)
there = {term: Q(mm, "mm") for term, mm in trial.lengths.items()}
one = Q(trial.trial_mm, "mm")
BEFORE = {"all-done": "count", "zero": "count", "same-hand": "count",
          "not-turned": "seat", "growing": "seat", "air-blown": "seat",
          "touching": "dial", "leaning": "dial", "short": "dial",
          "by-hand": "bolts", "half": "bolts", "no-gasket": "bolts"}
got = {"count": "Rollers home, plate tight, plunger pressed in and in line: only the difference of two readings counts.",
       "seat": "Rollers that stand off their rib hide float; only turning brings them home, no air and no waiting.",
       "dial": "A plunger that leaves the shaft, or leans, reads another length than the float.",
       "bolts": "A plate that is not tightened as in the finished unit gives way, so it holds the ring somewhere else."}

# %% tags=["reference"]
lines = trial.before.lines
ref("trial-before", {one.id: BEFORE[one.id] for one in lines}, weight=4, outcome="read-end-play", shows="seated",
    lesson=f"{where}#the-trial-fit", slips=line_reasons(bank.lists["before"], trial.before.answers, BEFORE,
                                                        {id: got[do] for id, do in BEFORE.items()}, shown=lines))

# %% tags=["reference"]
home = bearing.try_shim(tried, bearings, one, measured=there)
fresh = bearing.try_shim(tried, bearings, one, measured=there, off_rib=bearing.OFF_RIB)
away, towards = bearing.dial_readings(home.travel, Q(bench_tools.PLUNGERS_MM[0], "mm"))
dial = Q(0.012, "mm")
end_float = ref(
    "trial-float", home.travel, weight=3, outcome="read-end-play", shows="total-and-target", tolerance=dial,
    lesson=f"{where}#the-trial-fit",
    slips=[Slip(fresh.travel, 0.2, "You read before the rollers were home: they hide part of the float."),
           Slip(towards - away, 0.2, "The plunger left the shaft on its way, so the total came out short.")],
)

# %% tags=["reference"]
aim = sum(shim.target_interference(tried)) / 2
wanted = shim.shim_from_float(tried.arrangement, tried.shim_place, one, end_float, aim)
upto = shim.shim_from_float(tried.arrangement, tried.shim_place, one, end_float, Q(0.0, "mm"))
ref(
    "trial-shim", wanted, weight=3, outcome="read-end-play", shows="total-and-target", tolerance=NEAR, lesson=f"{where}#the-trial-fit",
    slips=[Slip(upto, 0.3, "This shim just takes up the float; the target comes on top."),
           Slip(2 * one - wanted, 0, "Turned round: this shim would give more play, not less."),
           Slip(2 * upto - wanted, 0.3, "The target goes the other way: it is preload, not end play.")],
)

# %% tags=["reference"]
from twoshaft.readings.scenes import held_in

if given.trial.into:
    hand, put, why = given.trial.into, {}, {}
    places = {one.letter: (one.z_mm, one.height_mm) for one in hand.places}
    for part, held in held_in(hand).items():
        letter, ways = shape.where_put(unit, hand.near.scene.view, held, places)
        put[part] = {f"{letter}-{way}" for way in ways}
        why[part] = {f"{at}-{way}": "It lies in its place, but turned over: the wide end of its track faces the large ends of the rollers."
                     if at == letter else "It belongs elsewhere: find the end of its shaft, and the rollers or the seat that fit it."
                     for at in places for way in "12" if f"{at}-{way}" not in put[part]}
    ref("trial-put", put, weight=2.5, outcome="shim-direction", shows="which-ring", lesson=f"{where}#which-way-does-it-work",
        slips=line_reasons(hand.lines, [(f"{at}-{way}", "") for at in places for way in "12"], put, why))

# %% tags=["mark"] task="trial" points=9

# %% [markdown] tags=["task"]
# ## 6. What is the measurement worth?
#
# A shim was worked out from several readings. The table gives the standard uncertainty of each, in micrometres; none is shared.
#
# Combine them, then double the result: that is the uncertainty to keep for 95 in 100.
#
# Five shims lie inside the target, each at its own distance from the nearer edge. *9 points.*

# %% tags=["rig"]
given_table("Standard uncertainties", ["comes from", "uncertainty, µm"],
            [(one.name, one.doubt_um) for one in given.doubt.sources])

# %% tags=["form"]
sheet.form(
    "doubt",
    sheet.number("doubt-combined", "All of them combined", "µm"),
    sheet.number("doubt-expanded", "Uncertainty to keep for 95 in 100 (twice the combined)", "mm"),
    sheet.choice("doubt-first", "Which one do you improve first?",
                 options=[*[[one.id, one.name] for one in given.doubt.sources],
                          ["any", "it makes no difference which"]]),
    sheet.number("doubt-halved", "If that one is halved: all combined", "µm"),
    sheet.choices("doubt-safe", "Which shims are safe with the uncertainty as it was?",
                  options=given.doubt.shims),
)

# %% tags=["reference"]
sizes = {one.id: one.doubt_um for one in given.doubt.sources}
combined = ref(
    "doubt-combined", Q(shim.Budget(0.0, sizes, {}).u, "um"), weight=2, outcome="weigh-doubt", shows="by-squares", tolerance=0.015,
    lesson=f"{where}#what-the-measurement-is-worth",
    slips=[Slip(Q(sum(sizes.values()), "um"), 0.2, "Uncertainties do not simply add: square, add, take the root."),
           Slip(Q(max(sizes.values()), "um"), 0.2, "The largest alone is too little; the others count too.")],
)
expanded = ref("doubt-expanded", (2 * combined).to("mm"), outcome="weigh-doubt", shows="by-squares", tolerance=0.02,
               lesson=f"{where}#what-the-measurement-is-worth")

# %% tags=["reference"]
first = ref(
    "doubt-first", max(sizes, key=sizes.get), outcome="weigh-doubt", shows="largest-first", weight=2,
    lesson=f"{where}#what-the-measurement-is-worth",
    slips=[Slip(key, 0, "Halving a smaller one hardly changes the whole: squares count.")
           for key in [*sizes, "any"] if key != max(sizes, key=sizes.get)],
)
halved = shim.Budget(0.0, {**sizes, first: sizes.get(first, 0.0) / 2}, {})
ref("doubt-halved", Q(halved.u, "um"), outcome="weigh-doubt", shows="by-squares", tolerance=0.015,
    lesson=f"{where}#what-the-measurement-is-worth",
    slips=[Slip(combined / 2, 0.2, "Only one of them was halved, not the whole.")])

# %% tags=["reference"]
inside = {key: Q(mm, "mm") for key, mm in given.doubt.inside_mm.items()}
limits = (expanded, Q(2 * shim.Budget(0.0, sizes, {}).u, "um"))
sets = [{key for key, mm in inside.items() if mm > limit} for limit in limits]
# A doubt with which all, or none, would be safe leaves no decision to be judged.
safe_ones = next(some for some in sets if 0 < len(some) < len(inside))
ref("doubt-safe", safe_ones, weight=2, outcome="weigh-doubt", shows="largest-first", lesson=f"{where}#choosing-from-the-set",
    slips=[Slip(key, 0, "It lies inside the edge by less than the uncertainty, so it may be outside after all.")
           for key in inside if key not in safe_ones]
    + missed(given.doubt.shims, safe_ones,
             "“{name}” is safe: it lies further inside the edge than the uncertainty, so it meets the target all the same."))

# %% tags=["mark"] task="doubt" points=9

# %% [markdown] tags=["task"]
# ## 7. Judge it by the cord
#
# The unit is built up as far as the table says, and the cord is on. Take the pull below.
#
# How much torque is that, how much of it do the bearings take, and what preload is behind it? Multiply the torque of a part on another shaft by its speed against the drum. Then say what is to be done. **The last question must be right to pass, in every line.** *10 points.*

# %% tags=["rig"]
cord = given.cord
given_table(
    f"{cord.name}: turned with a cord on a drum of {cord.drum_mm} mm radius",
    ["what turns", "torque at its own shaft, N·m", "speed against the drum"],
    [("both bearings, for each 1000 N of preload", f"{cord.torque_nm:.3f}", "1"),
     *[(part.name, f"{part.torque_nm:g}", f"{part.speed_ratio:g}") for part in cord.parts]],
)

# %% tags=["rig"]
given_table(f"Target{given.cord.source}", ["preload at least, N", "at most, N", "a thicker shim"],
            [(round(given.cord.low_n), round(given.cord.high_n), given.cord.thicker)])

# %% tags=["rig"]
cord_bench(unit, given.cord.support, setting_mm=given.cord.setting_mm,
           kinds=given.cord.kinds, radius_mm=given.cord.drum_mm, readings_only=True)

# %% tags=["form"]
sheet.form(
    "cord",
    sheet.number("cord-pull", "Pull that you read", "N"),
    sheet.number("cord-torque", "Torque of all that turns", "N·m"),
    sheet.number("cord-bearings", "Torque of the two bearings", "N·m"),
    sheet.number("cord-preload", "Preload behind it", "N"),
    sheet.each("cord-verdict", "What do you do with the shim? Your unit, and others of its kind by their preload",
               lines=[("own", "the unit on the cord"), *((one.id, f"{one.preload_n:g} N") for one in given.cord.others)],
               options=given.cord.verdicts),
)

# %% tags=["reference"]
cord = given.cord
axle = bearings.support_by_id(cord.support)
kinds, drum = cord.kinds, Q(cord.drum_mm, "mm")
force = bearing.Pair.from_support(axle, bearings).preload(Q(cord.setting_mm, "mm"))
what = bearing.turned(axle, bearings, force, kinds)
rest = bearing.turned(axle, bearings, Q(0.0, "N"), kinds).torque
seen = bearing.cord_pull(what, drum).force
mark_n = Q(0.75 * bench_tools.scale_for(seen.m_as("N"), bench_tools.SPRING_SCALES_N).mark, "N")
read = ref(
    "cord-pull", seen, weight=2, outcome="judge-by-cord", shows="pull-to-torque", tolerance=mark_n, lesson=f"{where}#pull-on-a-cord",
    slips=[Slip((rest / drum).to("N"), 0.2, "You read before the rollers were home; the bearings did not rub yet.")],
)

# %% tags=["reference"]
# What the reading is off by is carried along; from here on only rounding is allowed.
whole = ref("cord-torque", (read * drum).to("N*m"), outcome="judge-by-cord", shows="pull-to-torque",
            tolerance={"absolute": Q(0.012, "N*m"), "relative": 0.02},
            lesson=f"{where}#pull-on-a-cord")
plain = Q(sum(part.torque_nm for part in cord.parts), "N*m")
theirs = ref(
    "cord-bearings", whole - rest, weight=2, outcome="judge-by-cord", shows="pull-to-torque",
    tolerance={"absolute": Q(0.012, "N*m"), "relative": 0.02}, lesson=f"{where}#pull-on-a-cord",
    slips=[Slip(whole, 0.2, "Seals, meshes and the other shaft are still in this; take them off."),
           Slip(whole - plain, 0.4, "Multiply the torque of a part on another shaft by its speed against the drum.")],
)

# %% tags=["reference"]
thousand = bearing.turned(axle, bearings, Q(1000.0, "N")).torque
behind = ref("cord-preload", theirs / thousand * Q(1000.0, "N"), outcome="judge-by-cord", shows="pull-to-torque",
             tolerance={"absolute": Q(25, "N"), "relative": 0.03},
             lesson=f"{where}#pull-on-a-cord")

# %% tags=["reference"]
usual = bearing.Pair.from_support(axle, bearings).preload(Q(cord.setting_mm, "mm"))
behind = behind if usual / 2 < behind < 2 * usual else usual  # a stray figure is not gone on with
tightens = shim.shim_sign(axle.arrangement, axle.shim_place) > 0
more, less = ("thicker", "thinner") if tightens else ("thinner", "thicker")
preloads = {"own": behind, **{one.id: Q(one.preload_n, "N") for one in cord.others}}
verdict = {id: more if n < Q(cord.low_n, "N") else less if n > Q(cord.high_n, "N") else "leave" for id, n in preloads.items()}
told = {more: "It lies under the lower limit: left as it is, or made looser, the shaft soon has play. Which shim brings more preload here?",
        less: "It lies over the upper limit: left as it is, or made tighter, the bearings run hot. Which shim takes preload away here?",
        "leave": "It lies between the two limits, and clear of both: another shim would spoil a good setting."}
ref("cord-verdict", verdict, weight=3, must_pass=True, outcome="judge-by-cord", shows="meets-target", lesson=f"{where}#pull-on-a-cord",
    slips=line_reasons([(id, "") for id in verdict], cord.verdicts, verdict, {id: told[do] for id, do in verdict.items()}))

# %% tags=["mark"] task="cord" points=10

# %% [markdown] tags=["task"]
# ## 8. From cold to warm
#
# A support warms up as the table says. By how much does each of the two lengths grow? With what happens across the shaft, what does the setting become?
#
# Then say what growth does to four other pairs: a metre of shaft steel grows by 11.5 µm for 1 K, one of cast aluminium by 21.5 µm. Last, say what you do with each of four readings. **The four pairs must be right to pass.** *10 points.*

# %% tags=["rig"]
warm = given.warm
given_table(
    f"{warm.name}: setting cold {warm.cold_mm:+.3f} mm (preload plus, end play minus)",
    ["part", "length, mm", "a metre grows for 1 K, µm", "warmer by, K"],
    [(span.part, f"{span.length_mm:g}", f"{span.growth_um:g}", f"{span.rise_k:g}") for span in warm.spans],
)

# %% tags=["rig"]
given_table("Across the shaft, worked out for you; above zero tightens", ["part", "change, µm"],
            [(one.part, f"{one.change_um:+d}") for one in given.warm.across])

# %% tags=["rig"]
bearing_section(unit.bearings.support_by_id(given.warm.support), unit.bearings, shim_mm=1.0,
                to_scale=False)

# %% tags=["form"]
sheet.form(
    "warm",
    sheet.number("warm-case", "The case grows by", "µm"),
    sheet.number("warm-shaft", "The shaft grows by", "µm"),
    sheet.each("warm-way", "Other pairs, growth along the shaft alone: what does it do?",
               lines=[(one.id, one.text) for one in given.warm.pairs], options=given.warm.ways),
    sheet.number("warm-setting", "Setting when warm, preload plus, end play minus", "mm"),
    sheet.each("warm-when", "Other units: what do you do in each case?", lines=given.warm.temperatures,
               options=given.warm.when),
)

# %% tags=["reference"]
warm = given.warm
heated = bearings.support_by_id(warm.support)
turn = bearing.support_change(heated, bearings, bearing.Warm(**warm.rises))
case = ref("warm-case", Q(abs(turn.case_um), "um"), outcome="warm-setting", shows="sign",
           tolerance={"absolute": Q(0.6, "um"), "relative": 0.01}, lesson=f"{where}#warm-and-cold")
shaft = ref("warm-shaft", Q(abs(turn.shaft_um), "um"), outcome="warm-setting", shows="sign",
            tolerance={"absolute": Q(0.6, "um"), "relative": 0.01}, lesson=f"{where}#warm-and-cold")

# %% tags=["reference"]
does = {one.id: "neither" if abs(one.change_um) < 0.5 else "tightens" if one.change_um > 0 else "loosens" for one in warm.pairs}
told = {"tightens": "Work out both growths, then ask which ring goes onto its rollers: here the pair gets tighter.",
        "loosens": "Work out both growths, then ask which ring goes off its rollers: here the pair gets looser.",
        "neither": "Case and shaft grow by the same length here, so no ring moves against the other."}
ref("warm-way", does, weight=3.5, must_pass=True, outcome="warm-setting", shows="sign", lesson=f"{where}#warm-and-cold",
    slips=line_reasons([(id, "") for id in does], warm.ways, does, {id: told[way] for id, way in does.items()}))

# %% tags=["reference"]
outwards = 1 if turn.case_um > 0 else -1
across = Q(sum(one.change_um for one in warm.across), "um")
cold = Q(warm.cold_mm, "mm")
ref(
    "warm-setting", cold + (outwards * (case - shaft) + across).to("mm"), weight=2, outcome="warm-setting", shows="sign",
    tolerance=EXACT, lesson=f"{where}#warm-and-cold",
    slips=[Slip(cold + (outwards * (case - shaft)).to("mm"), 0.4, "What happens across the shaft is missing."),
           Slip(cold + (outwards * (case + shaft) + across).to("mm"), 0.3,
                "Case and shaft work against each other: one of them is to be taken off.")],
)

# %% tags=["reference"]
WHEN = {"bench": "count", "shelf": "count", "twice": "count", "washed": "even", "oven": "even",
        "window": "even", "running": "heat", "hot-target": "heat", "sheet": "heat"}
UNEVEN = {"count": "Parts at several temperatures have grown unevenly; cold, the setting is another one.",
          "heat": "Bore, rings and shaft each have another temperature; one sum does not put that right."}

# %% tags=["reference"]
COLD = {"even": "All parts are at one temperature already; waiting changes nothing.",
        "heat": "The maker has counted the heat in a cold target; you would count it twice."}
SERVICE = {"even": "All parts are at one temperature already; the target is for another one.",
           "count": "This target is for a warm unit; a cold reading differs by what heat changes."}
because = {"count": COLD, "even": UNEVEN, "heat": SERVICE}
when = line_reasons(bank.lists["temperatures"], warm.when, WHEN,
                    {id: because[to_do] for id, to_do in WHEN.items()}, shown=warm.temperatures)
ref("warm-when", {id: WHEN[id] for id in labels(warm.temperatures)}, weight=3, outcome="warm-setting", shows="cold-target",
    lesson=f"{where}#warm-and-cold", slips=when)

# %% tags=["mark"] task="warm" points=10

# %% [markdown] tags=["task"]
# ## 9. Too much and too little
#
# The table gives the life of a pair over its running setting. How many times shorter is it at the second setting than at the first?
#
# Then some units that came back: what does each point to? *5 points.*

# %% tags=["rig"]
given_table(f"{given.life.name}: life of the pair", ["running setting, mm", "life, h"],
            [(f"{at.setting_mm:+.2f}", round(at.life_h)) for at in given.life.table])

# %% tags=["rig"]
given_table("Compare", ["first setting, mm", "second setting, mm"],
            [(f"{given.life.from_mm:+.2f}", f"{given.life.to_mm:+.2f}")])

# %% tags=["form"]
sheet.form(
    "life",
    sheet.number("life-times", "Life at the first setting, divided by life at the second"),
    sheet.each("life-signs", "Other units came back. What does each point to?", lines=given.life.seen.lines,
               options=given.life.seen.answers),
)

# %% tags=["reference"]
life = given.life
worn = bearings.support_by_id(life.support)
left_n, right_n, axial_n = (Q(load, "N") for load in life.loads_n)
curve = bearing.life_against_setting(
    bearing.Pair.from_support(worn, bearings), Q([life.from_mm, life.to_mm], "mm"),
    (left_n, right_n), axial_n, Q(life.rpm, "rpm"))
times = float(curve.both_h[0] / curve.both_h[1])
ref("life-times", Q(times, ""), outcome="preload-life", shows="past-the-best", weight=2, tolerance=0.02,
    lesson=f"{where}#too-much-too-little",
    slips=[Slip(Q(1 / times, ""), 0.3, "Turned round: divide the longer life by the shorter one.")])

# %% tags=["reference"]
SEEN = {"hot": "much", "blue": "much", "stiff": "much", "rib": "much",
        "walk": "little", "dial": "little", "weep": "little", "arc": "little",
        "new-seal": "other", "dents": "other", "pitted": "other", "wrong-gear": "other"}
sign = {"much": "The oil is in order, and still it runs hot or stiff, or the rollers score their rib: the rollers are squeezed.",
        "little": "The shaft can move in its bearings, or few rollers carry it: that is play.",
        "other": "Something else explains all of it, and the pair has not changed."}
ref("life-signs", {one.id: SEEN[one.id] for one in life.seen.lines}, outcome="preload-life", weight=3, shows="signs-of-each",
    lesson=f"{where}#too-much-too-little",
    slips=line_reasons(bank.lists["seen"], life.seen.answers, SEEN, {id: sign[to] for id, to in SEEN.items()}, shown=life.seen.lines))

# %% tags=["mark"] task="life" points=5

# %% [markdown] tags=["task"]
# ## 10. At the bench
#
# First four units in which a shim was just changed, then four situations with and without a danger. **You must get every line right to pass.** *14 points.*

# %% tags=["form"]
sheet.form(
    "bench",
    sheet.each("bench-changed", "A shim was changed. What comes next?", lines=given.bench.changed,
               options=given.bench.steps),
    sheet.each("bench-cautions", "What do you do in each situation?", lines=given.bench.cautions,
               options=given.bench.safety),
)

# %% tags=["reference"]
NEXT = {"float-more": "apart", "float-less": "seat", "float-met": "close", "float-over": "apart",
        "cord-fell": "apart", "cord-first": "seat", "cord-met": "close", "cord-over": "apart",
        "dial-still": "cord", "plate-on": "seat", "sum-only": "cord", "bolts-wait": "seat"}
WRONG_WAY = "The reading moved away from what was wanted: the sign was wrong, and going on makes it worse."
OUTSIDE = "The rollers are home and the reading misses its limit, so this shim is not the one."
UNSEATED = "The shaft was not turned: rollers that stand off their rib hide float and change the pull."
STILL = "A dial stands still at any preload; only the cord shows how much there is."
MET = "The rollers are home and the reading lies inside its limits; nothing else is asked for."

# %% tags=["reference"]
told = {"float-more": WRONG_WAY, "float-over": OUTSIDE, "cord-fell": WRONG_WAY, "cord-over": OUTSIDE,
        "float-less": UNSEATED, "cord-first": UNSEATED, "plate-on": UNSEATED, "bolts-wait": UNSEATED,
        "dial-still": STILL, "sum-only": STILL, "float-met": MET, "cord-met": MET}
ref("bench-changed", {id: NEXT[id] for id in labels(given.bench.changed)}, weight=2, outcome="recheck-shim", shows=("checks-again", "wrong-way"),
    must_pass=True, lesson=f"{where}#before-it-runs",
    slips=line_reasons(bank.lists["changed"], given.bench.steps, NEXT, told, shown=given.bench.changed))

# %% tags=["reference"]
SAFE = {"drain": "go", "marked": "go", "square": "go", "loop": "go",
        "spin": "let-off", "near": "let-off", "tilted": "let-off", "steady": "let-off", "wrist": "let-off",
        "bench": "warn", "carry": "warn", "shaft": "warn"}
AIR = "A dry bearing driven by air can throw its rollers, at any pressure and through any glove."
HOT = "A hot ring looks like a cold one; somebody will reach for it or turn into it."
HARM = {
    "drain": "Nothing turns here, and nothing is under pressure or hot.",
    "marked": "It is marked and said already; nobody reaches for it unawares.",
    "square": "It stands square, the guard is shut and both hands are on the levers.",
    "loop": "The loop holds the scale, and fingers and sleeves are clear.",
    "spin": AIR, "near": AIR, "bench": HOT, "carry": HOT, "shaft": HOT,
    "tilted": "A tilted ring flies out when it is struck under load; take the load off and set it square.",
    "steady": "The finger is in the way when the ram comes down, and the ring can tip.",
    "wrist": "A cord round a hand pulls the hand to the gears, glove and all.",
}

# %% tags=["reference"]
ref("bench-cautions", {id: SAFE[id] for id in labels(given.bench.cautions)}, weight=2,
    outcome="bearing-cautions", shows=("no-spinning", "hands-away"), must_pass=True, lesson=f"{where}#before-you-start",
    slips=line_reasons(bank.lists["cautions"], given.bench.safety, SAFE, HARM, shown=given.bench.cautions))

# %% tags=["mark"] task="bench" points=14

# %% [markdown]
# ## Done?
#
# Go back to **start-here** and press **Hand in**. You get a receipt. You can hand in again until the due date; the last one counts.
