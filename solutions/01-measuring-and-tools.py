# %% [markdown]
# # Measuring and tools: exercise
#
# <div class="twoshaft-if-missing">If no forms appear below: press <b>Run</b>, then <b>Run All Cells</b>.</div>
#
# Nine tasks about reading, repeating, choosing and claiming. Take about an hour; have paper and a calculator. Every answer is saved as you give it; you can stop and come back.
#
# A reading counts if it is right to one line of the tool. Where an answer builds on an earlier one, a slip is charged once.
#
# *Invented unit, for teaching. On a real unit the maker's manual, local codes and licensed practice decide.*

# %% tags=["setup"]
from twoshaft.jobsheet import open_sheet
from twoshaft.plots.tables import given_table
from twoshaft.rigs import depth_gauge, micrometer, run_out_rig

sheet = open_sheet("measuring-and-tools")
given, unit = sheet.given, sheet.unit

# %% tags=["reference"]
import numpy as np

from twoshaft.models import bench_tools, gauges, joint, shim
from twoshaft.questions import bank_of
from twoshaft.readings.measuring_and_tools.wrench import UNITS, tools_of
from twoshaft.records import labels
from twoshaft.units.quantities import Q
from twoshaft_grader.marking import Slip, line_reasons, reasons, ref, settled

where, bank = "01-measuring-and-tools", bank_of("measuring-and-tools")
LINE, TWENTIETH = Q(0.01, "mm"), Q(0.05, "mm")

# %% [markdown] tags=["task"]
# ## 1. A micrometer
#
# Close the micrometer on itself and write what it shows, below zero where it stops short of 0. Then close it on the part, read it, and work out the size. Last: what do you do about the zero? *8 points.*

# %% tags=["rig"]
given_table("On the bench", ["part", "tool"], [(given.micrometer.part, "micrometer, 0 to 25 mm")])

# %% tags=["rig"]
micrometer(given.micrometer.part_mm, zero_mm=given.micrometer.zero_mm, readings_only=True)

# %% tags=["form"]
sheet.form(
    "micrometer",
    sheet.number("mic-zero", "Zero reading, with its sign", "mm"),
    sheet.number("mic-reading", "Reading on the part, as the micrometer shows it", "mm"),
    sheet.number("mic-size", "Size of the part", "mm"),
    sheet.choice("mic-do", "What do you do about the zero?", options=given.micrometer.do),
)

# %% tags=["reference"]
mic = given.micrometer
off = Q(mic.zero_mm, "mm")
round_below = "Short of 0 the thimble line counts back from 50: the zero reading is below zero."
zero = ref(
    "mic-zero", off, weight=2, outcome="read-scales", tolerance=LINE / 2, lesson=f"{where}#zero-first",
    slips=[Slip(off + Q(0.5, "mm"), 0.25, round_below)] if off < 0 else [],
)
there = Q(mic.part_mm + mic.zero_mm, "mm")
reading = ref(
    "mic-reading", there, weight=2, outcome="read-scales", tolerance=LINE, lesson=f"{where}#the-micrometer",
    slips=[Slip(there - Q(0.5, "mm"), 0.25, "Half a turn is missing: a line below the datum is open too."),
           Slip(there + Q(0.5, "mm"), 0.25, "Half a turn too many: count only lines that are really open.")],
)

# %% tags=["reference"]
ref(
    "mic-size", gauges.corrected(reading, zero), weight=2, outcome="read-scales", tolerance=LINE,
    lesson=f"{where}#zero-first",
    slips=[Slip(reading + zero, 0.25, "The zero reading is in the reading already: take it off, do not add it."),
           Slip(reading, 0.25, "This is the reading; the zero reading has still to come off.")],
)

# %% tags=["reference"]
slips = reasons(mic.do, "keep", {
    "force": "Force bends the frame and wears the faces; the zero is then off for good.",
    "ignore": "It is several lines of the thimble, and it sits in every reading.",
    "half": "The whole of it is in every reading, whichever face it comes from.",
    "bend": "A blow spoils flatness and squareness of the faces.",
    "add": "Adding doubles the error; it has to come off.",
})
ref("mic-do", "keep", weight=3, outcome="read-scales", lesson=f"{where}#zero-first", slips=slips)

# %% tags=["mark"] task="micrometer" points=8

# %% [markdown] tags=["task"]
# ## 2. A depth gauge
#
# Read the depth gauge on the surface plate, then over the depth. Mind where you look from. *7 points.*

# %% tags=["rig"]
given_table("On the bench", ["depth", "tool"], [(given.depth.name, "depth gauge, vernier of 0.05 mm")])

# %% tags=["rig"]
depth_gauge(given.depth.depth_mm, zero_mm=given.depth.zero_mm, eye=given.depth.eye,
            readings_only=True)

# %% tags=["form"]
sheet.form(
    "depth",
    sheet.number("depth-zero", "Reading on the surface plate, with its sign", "mm"),
    sheet.number("depth-reading", "Reading over the depth, as the gauge shows it", "mm"),
    sheet.number("depth-true", "Depth", "mm"),
    sheet.choice("depth-look", "How must you look, and why?", options=given.depth.look),
)

# %% tags=["reference"]
deep = given.depth
off = Q(deep.zero_mm, "mm")
seen = bench_tools.vernier_seems_moved(deep.eye)
aside = "You read it from the side: the lines seem shifted. Look square on."
back = [Slip(off + Q(1, "mm"), 0.25, "The vernier's zero is short of line 0: count back, below zero.")]
zero = ref("depth-zero", off, outcome="read-scales", tolerance=TWENTIETH / 2,
           lesson=f"{where}#the-vernier-and-where-your-eye-is",
           slips=[Slip(off + seen, 0.25, aside), *(back if off < 0 else [])])
there = Q(deep.depth_mm + deep.zero_mm, "mm")
reading = ref("depth-reading", there, weight=2, outcome="read-scales", tolerance=TWENTIETH,
              lesson=f"{where}#the-vernier-and-where-your-eye-is",
              slips=[Slip(there + seen, 0.25, aside)])

# %% tags=["reference"]
ref(
    "depth-true", gauges.corrected(reading, zero), outcome="read-scales", tolerance=TWENTIETH,
    lesson=f"{where}#zero-first",
    slips=[Slip(reading + zero, 0.25, "Take the zero reading off, do not add it."),
           Slip(reading, 0.25, "This is the reading; the zero reading has still to come off.")],
)
slips = reasons(deep.look, "square", {
    "side": "From the side the vernier's line falls on another line of the main scale.",
    "near": "Near or far, from the side the reading is shifted.",
    "both": "The two are shifted opposite ways; the larger is no better than the other.",
    "far": "Distance makes it smaller, not right, and you no longer see the lines.",
})
ref("depth-look", "square", weight=2, outcome="read-scales",
    lesson=f"{where}#the-vernier-and-where-your-eye-is", slips=slips)

# %% tags=["mark"] task="depth" points=7

# %% [markdown] tags=["task"]
# ## 3. Six readings
#
# Six readings of one size. Say which does not belong to the others and what you do about it. Then work out mean and standard deviation (n − 1) of the readings that belong together, to four places. *8 points.*

# %% tags=["rig"]
given_table(f"Six readings of one size{given.repeats.source}", ["reading", "mm"],
            [(n, f"{mm:.2f}" if mm == round(mm, 2) else f"{mm:g}") for n, mm in enumerate(given.repeats.readings_mm, 1)])

# %% tags=["form"]
sheet.form(
    "repeats",
    sheet.choice("rep-stray", "Which one does not belong?", options=given.repeats.options),
    sheet.choice("rep-do", "What do you do about it?", options=given.repeats.do),
    sheet.number("rep-mean", "Mean of the readings that belong together", "mm"),
    sheet.number("rep-sd", "Their standard deviation", "mm"),
    sheet.choice("rep-means", "What do the repeat readings do for you?", options=given.repeats.means),
)

# %% tags=["reference"]
read = given.repeats.readings_mm
found = gauges.stray(read)
stands_off = "none" if found is None else f"reading-{found + 1}"
slips = reasons(given.repeats.options, stands_off, {
    tuple(f"reading-{n}" for n, _ in enumerate(read, 1)):
        "This one lies as near to the others as they lie to each other; it belongs to them.",
    "none": "One lies much further off than the others scatter among themselves.",
})
odd = ref("rep-stray", stands_off, weight=2, outcome="judge-repeats", lesson=f"{where}#say-it-again", slips=slips)

# %% tags=["reference"]
slips = reasons(given.repeats.do, "cause", {
    "strike": "Struck without a cause it may happen again, and nobody will know.",
    "average": "A reading with a cause of its own pulls the mean away from the truth.",
    "middle": "That is a figure which nobody measured.", "safe": "A wrong size is wrong, whichever way it errs.",
    "once": "Measuring until it fits proves what you wanted, not what is there.",
})
ref("rep-do", "cause", weight=2, outcome="judge-repeats", lesson=f"{where}#say-it-again", slips=slips)

# %% tags=["reference"]
kept = [mm for n, mm in enumerate(read, 1) if f"reading-{n}" != odd]
mean, sd = gauges.spread(kept)
all_mean, all_sd = gauges.spread(read)
whole = [Slip(Q(all_mean, "mm"), 0.25, "This is the mean of all six; one of them does not belong.")]
ref("rep-mean", Q(mean, "mm"), weight=2, outcome="judge-repeats", tolerance=Q(0.0015, "mm"),
    lesson=f"{where}#say-it-again", slips=whole if len(kept) < len(read) else [])
n = len(kept)
ref("rep-sd", Q(sd, "mm"), weight=2, outcome="judge-repeats", tolerance=Q(0.00015, "mm"),
    lesson=f"{where}#say-it-again",
    slips=[Slip(Q(sd * ((n - 1) / n) ** 0.5, "mm"), 0.5, "You divided by n; of a few readings divide by n - 1."),
           *([Slip(Q(all_sd, "mm"), 0.25, "This is the spread of all six; one of them does not belong.")]
             if n < len(read) else [])])

# %% tags=["reference"]
slips = reasons(given.repeats.means, "mean-better", {
    "exact": "What the tool itself is off stays in every reading, so also in the mean.",
    "no-gain": "Chance scatter evens out; only the tool's own error is the same in each.",
    "worse": "Errors of chance partly cancel in a mean; they do not add up.",
    "largest": "Readings scatter both ways; the largest is no truer than the smallest.",
})
ref("rep-means", "mean-better", weight=2, outcome="judge-repeats", lesson=f"{where}#say-it-again", slips=slips)

# %% tags=["mark"] task="repeats" points=8

# %% [markdown] tags=["task"]
# ## 4. Which tool?
#
# Four sizes with their limits. For each take the **plainest** tool that can reach the place and meets the rule of ten, or say that none of these does. *8 points.*

# %% tags=["rig"]
given_table("The jobs", ["job", "what", "lower limit, mm", "upper limit, mm"],
            [(n, job.name, f"{job.low_mm:.3f}", f"{job.high_mm:.3f}")
             for n, job in enumerate(given.choose.jobs, 1)])

# %% tags=["form"]
sheet.form("choose", *[
    sheet.choice(f"choose-{n}", f"Job {n}, {job.name}: which tool?",
                 options=[*((tool.id, tool.name) for tool in given.choose.tools), given.choose.none])
    for n, job in enumerate(given.choose.jobs, 1)
])

# %% tags=["reference"]
drawer = {tool.id: tool for tool in given.choose.tools}
for n, job in enumerate(given.choose.jobs, 1):
    width = Q(job.high_mm, "mm") - Q(job.low_mm, "mm")
    fit = {key: Q(tool.step_mm, "mm") for key, tool in drawer.items() if job.kind in tool.kinds}
    will = {key for key, step in fit.items() if gauges.tells(step, width)}
    plainest = max((fit[key] for key in will), default=None)
    right = {key for key in will if fit[key] == plainest} or {"none"}
    slips = [Slip(key, 0.4, "It would do, but a plainer tool does too.") for key in sorted(will - right)]
    slips += [Slip(key, 0, "Its step is more than a tenth of the tolerance.") for key in sorted(set(fit) - will)]
    slips += [Slip(key, 0, "This tool does not measure what the job asks.") for key in drawer if key not in fit]
    slips += [Slip("none", 0, "One of them does: compare its step with a tenth of the tolerance.")] * bool(will)
    ref(f"choose-{n}", right, outcome="choose-tool", lesson=f"{where}#a-tool-for-the-tolerance", slips=slips)

# %% tags=["mark"] task="choose" points=8

# %% [markdown] tags=["task"]
# ## 5. A shaft under the dial
#
# First tick what has to be done before a reading counts. Then set the dial up, turn the shaft by hand once round, and give the total reading and how far the surface runs out of centre. Is it within its limit? *10 points.*

# %% tags=["rig"]
given_table("The limit", ["total reading, at most, mm", "doubt of your total, mm either way"],
            [(f"{given.dial.limit_mm:.2f}", f"{given.dial.doubt_mm:.3f}")])

# %% tags=["rig"]
run_out_rig(given.dial.off_mm, high_at_deg=given.dial.high_at_deg, readings_only=True)

# %% tags=["form"]
sheet.form(
    "dial",
    sheet.choices("dial-before", "What has to be done before a reading counts?", options=given.dial.before),
    sheet.number("dial-total", "Total reading", "mm"),
    sheet.number("dial-off", "How far does the surface run out of centre?", "mm"),
    sheet.choice("dial-verdict", "What may you say?", options=given.dial.verdicts),
)

# %% tags=["reference"]
dial = given.dial
ready = {"press", "square", "clamp", "count"}
ref("dial-before", ready, weight=3, outcome="use-dial", lesson=f"{where}#the-dial-indicator",
    slips=reasons(dial.before, ready, {
        "spin": "Never under power: a part that turns pulls in tool, sleeve and hand.",
        "loose": "A stand that follows the shaft takes the movement out of the reading.",
        "touch": "A plunger that only touches lets go on the low side.",
        "oil": "Oil gums the plunger; it has to be clean and dry.",
    }))

# %% tags=["reference"]
turned = Q(np.arange(361) + dial.high_at_deg, "degree")
spot = gauges.run_out(Q(dial.off_mm, "mm"), turned)
shown = {press: gauges.dial_reading(Q(press, "mm"), spot - spot[0], Q(30, "degree")) for press in (0.02, 0.5)}
wrong = {press: all_round.max() - all_round.min() for press, all_round in shown.items()}
true = spot.max() - spot.min()
total = ref(
    "dial-total", true, weight=2, outcome="use-dial", tolerance=LINE, lesson=f"{where}#the-dial-indicator",
    slips=[Slip(true / 2, 0.25, "This is half of it: the total is the largest less the smallest."),
           Slip(wrong[0.5], 0.25, "The plunger stood at a tilt, so the dial showed too much."),
           Slip(wrong[0.02], 0.25, "The plunger let go on the way round, or stood at a tilt: set the dial up first.")],
)
ref("dial-off", gauges.eccentricity(total), outcome="use-dial", tolerance=LINE / 2,
    lesson=f"{where}#the-dial-indicator",
    slips=[Slip(total, 0.25, "This is the total; out of centre it is half of that.")])

# %% tags=["reference"]
limit, doubt = Q(dial.limit_mm, "mm"), Q(dial.doubt_mm, "mm")
fits = gauges.verdict(total, Q(-1, "mm"), limit, doubt)
slips = reasons(dial.verdicts, fits, {
    "half": "The limit is stated for the total reading, so the total counts.",
    "never": "Run-out is a movement, and that is what a dial shows.",
    "inside": "The total with its doubt is not clear of the limit.",
    "outside": "The total less its doubt is not beyond the limit.",
    "unsure": "The total is further from the limit than its doubt: you can say more.",
})
ref("dial-verdict", fits, weight=3, outcome="claim-within-doubt", lesson=f"{where}#what-you-may-claim", slips=slips)

# %% tags=["mark"] task="dial" points=10

# %% [markdown] tags=["task"]
# ## 6. A pull on a cord
#
# Somebody wrote down what a spring scale showed on a cord round a drum. Which pull counts? Work it out, and the torque. *6 points.*

# %% tags=["rig"]
pull = given.pull
given_table(f"{pull.name}, cord on a drum of {2 * pull.radius_mm} mm diameter", ["what was read", "scale, N"], [
    ("hanging free, in the position of use", pull.zero_n),
    ("first jerk, until it moved", pull.jerk_n),
    *((f"pulled slowly while it turned, reading {n}", newton) for n, newton in enumerate(pull.steady_n, 1)),
])

# %% tags=["form"]
sheet.form(
    "pull",
    sheet.choice("pull-which", "Which pull counts?", options=given.pull.why),
    sheet.number("pull-force", "Pull that counts, the scale's zero taken into account", "N"),
    sheet.number("pull-torque", "Torque", "N·m"),
)

# %% tags=["reference"]
pull = given.pull
slips = reasons(pull.why, "turning", {
    "jerk": "The jerk breaks the grip of standing oil and sets the mass going; it is no turning torque.",
    "fast": "A fast pull adds the force that speeds the shaft up.",
    "across": "At a slant part of the pull only drags along the drum.",
    "stand": "While the shaft stands still, the scale shows the starting torque, not the turning torque.",
})
ref("pull-which", "turning", weight=3, outcome="read-pull", lesson=f"{where}#a-spring-scale-on-a-cord", slips=slips)

# %% tags=["reference"]
steady = gauges.spread(pull.steady_n)[0]
nought, jerk = pull.zero_n, pull.jerk_n
force = ref(
    "pull-force", Q(steady - nought, "N"), outcome="read-pull", weight=2, tolerance=Q(0.6, "N"),
    lesson=f"{where}#a-spring-scale-on-a-cord",
    slips=[Slip(Q(steady, "N"), 0.5, "The scale did not hang at 0; take that off."),
           Slip(Q(steady + nought, "N"), 0.25, "What the scale shows at nothing has to come off, with its sign."),
           Slip(Q(jerk - nought, "N"), 0, "This is the jerk; the steady pull counts."),
           Slip(Q(jerk, "N"), 0, "This is the jerk; the steady pull counts.")],
)

# %% tags=["reference"]
radius = Q(pull.radius_mm, "mm").to("m")
ref(
    "pull-torque", Q((force * radius).m_as("N*m"), "N*m"), outcome="read-pull", tolerance=0.02,
    lesson=f"{where}#a-spring-scale-on-a-cord",
    slips=[Slip(Q((2 * force * radius).m_as("N*m"), "N*m"), 0.25,
                "You took the diameter; the cord pulls at the radius.")],
)

# %% tags=["mark"] task="pull" points=6

# %% [markdown] tags=["task"]
# ## 7. A torque wrench with an adapter
#
# An old card gives a torque, and the bolt can only be reached with an adapter at an angle. Work out what to set. Then say what the bolt may get at least and at most from a wrench in good order, and whether that is enough for the window.
#
# The wrenches may be off by 4 % of the setting, and the mark may be missed by half a step. *12 points.*

# %% tags=["rig"]
card = given.wrench
given_table("The job card", ["bolt", "torque", "window, N·m", "adapter reach, mm", "angle off straight, °"],
            [(card.name, f"{card.figure:g} {card.unit}", f"{card.low_nm:g} to {card.high_nm:g}",
              card.reach_mm, card.angle_deg)])

# %% tags=["rig"]
given_table("Wrenches in the drawer", ["wrench", "scale from, N·m", "to, N·m", "marks every, N·m", "length to mid grip, mm"],
            [(w.name, w.low_nm, w.high_nm, w.step_nm, w.length_mm) for w in given.wrench.wrenches])

# %% tags=["form"]
sheet.form(
    "wrench",
    sheet.number("wrench-torque", "Torque on the card in N·m", "N·m"),
    sheet.choice("wrench-tool", "Which wrench do you take?",
                 options=[*((w.id, w.name) for w in given.wrench.wrenches),
                          ["any", "Any of them: a torque is a torque"]]),
    sheet.number("wrench-setting", "Setting with the adapter, as worked out", "N·m"),
    sheet.number("wrench-least", "Least torque that the bolt may get", "N·m"),
    sheet.number("wrench-most", "Most torque that the bolt may get", "N·m"),
    sheet.choice("wrench-claim", "Can you say that the bolt is inside the window?",
                 options=given.wrench.claims),
)

# %% tags=["reference"]
card = given.wrench
tools = tools_of(unit)
torque = ref(
    "wrench-torque", Q(card.figure, UNITS[card.unit][0]).to("N*m"), outcome="set-wrench",
    tolerance=0.006, lesson=f"{where}#four-units-of-torque",
    slips=[Slip(Q(card.figure, pint).to("N*m"), 0, f"That is the figure taken as {name}; look at the card.")
           for name, (pint, _) in UNITS.items() if name != card.unit],
)
unfit = {name: "Its scale ends below this torque." if torque.m_as("N*m") > tool.high_nm else
         "So low on its scale no tolerance is promised: that begins at a fifth of the top."
         for name, tool in tools.items() if not tool.suits(torque)}
unfit["any"] = "Each scale has a range in which it can be trusted; the torque must lie in it."

# %% tags=["reference"]
chosen = ref("wrench-tool", min(set(tools) - set(unfit), default=""), weight=2, outcome="set-wrench",
             lesson=f"{where}#the-torque-wrench",
             slips=[Slip(name, 0, text) for name, text in unfit.items()])
tool = tools[chosen]
length, reach, angle = Q(tool.length_m, "m"), Q(card.reach_mm, "mm"), Q(card.angle_deg, "degree")
straight, folded = joint.setting_with_adapter(torque, length, reach), Q(180, "degree") - angle

# %% tags=["reference"]
setting = ref(
    "wrench-setting", joint.setting_with_adapter(torque, length, reach, angle), weight=2, outcome="set-wrench",
    tolerance={"absolute": Q(tool.step_nm / 2, "N*m"), "relative": 0.005}, lesson=f"{where}#an-adapter-at-an-angle",
    slips=[
        Slip(torque, 0, "This leaves the adapter out: it changes the lever."),
        Slip(joint.torque_at_bolt(torque, length, reach, angle), 0.25,
             "Turned round: divide by the longer lever and multiply by the shorter one."),
        Slip(straight, 0.25, "This is for an adapter straight on; yours stands at an angle."),
    ],
)

# %% tags=["reference"]
mark = tool.nearest_setting(setting)
least, most = tool.applied(mark)
short = "This is what the wrench gives at its square drive; the adapter changes it on the way to the bolt."
bare = Slip(joint.torque_at_bolt(mark, length, reach, angle), 0, "The wrench may be off either way; count its tolerance in.")
low = ref("wrench-least", joint.torque_at_bolt(least, length, reach, angle), outcome="set-wrench", tolerance=0.015,
          lesson=f"{where}#the-torque-wrench", slips=[bare, Slip(least, 0.5, short)])
high = ref("wrench-most", joint.torque_at_bolt(most, length, reach, angle), outcome="set-wrench", tolerance=0.015,
           lesson=f"{where}#the-torque-wrench", slips=[bare, Slip(most, 0.5, short)])

# %% tags=["reference"]
sure = card.low_nm <= low.m_as("N*m") and high.m_as("N*m") <= card.high_nm
fair = "sure" if sure else "unsure"
slips = reasons(card.claims, fair, {
    "sure": "One end of what the bolt may get lies outside the window.",
    "unsure": "Both ends of what the bolt may get lie inside the window.",
    "click": "The click comes at the setting give or take the tolerance.", "twice": "A second click only adds torque.",
    "middle": "What counts is how far the wrench may be off, not where it was aimed.",
    "never": "A wrench has a tolerance; where the window is wider, it can be trusted.",
})
ref("wrench-claim", fair, weight=3, outcome="claim-within-doubt", lesson=f"{where}#what-you-may-claim", slips=slips)

# %% tags=["mark"] task="wrench" points=12

# %% [markdown] tags=["task"]
# ## 8. What may you claim?
#
# Work out the doubt of a mean size: turn each source into what it counts, square them, add, take the root, double it. Then say for three parts what you may claim. *8 points.*

# %% tags=["rig"]
said = given.claims
given_table("What the doubt comes from", ["source", "size, mm", "counts as"], [
    ("step of the tool", f"{said.step_mm:.2f}", "step divided by √12"),
    ("tool, from its certificate (doubled)", f"{said.certificate_mm:.3f}", "half of it"),
    (f"scatter: standard deviation of the {said.count} readings", f"{said.sd_mm:.3f}",
     "divided by the root of the number of readings"),
])

# %% tags=["rig"]
given_table(f"Limits {given.claims.low_mm:.2f} to {given.claims.high_mm:.2f} mm", ["part", "mean, mm"],
            [(n, f"{mm:.3f}") for n, mm in enumerate(given.claims.means_mm, 1)])

# %% tags=["form"]
sheet.form(
    "claims",
    sheet.number("claims-doubt", "Doubt of the mean, doubled", "mm"),
    *[sheet.choice(f"claims-{n}", f"Part {n}, {mm:.3f} mm: what may you say?", options=given.claims.says)
      for n, mm in enumerate(given.claims.means_mm, 1)],
)

# %% tags=["reference"]
said = given.claims
sources = [shim.resolution("step", said.step_mm), shim.normal("tool", said.certificate_mm),
           shim.normal("scatter", said.sd_mm, k=said.count ** 0.5)]
budget = shim.propagate(lambda mm: mm, [shim.Measured("size", said.low_mm, tuple(sources))], "mm")
doubt = ref(
    "claims-doubt", Q(2 * budget.u, "mm"), weight=2, outcome="claim-within-doubt", tolerance=0.05,
    lesson=f"{where}#what-you-may-claim",
    slips=[Slip(Q(budget.u, "mm"), 0.5, "This is not yet doubled."),
           Slip(Q(2 * sum(s.u for s in sources), "mm"), 0.25, "Doubts do not simply add: square, add, take the root."),
           Slip(Q(sum(s.u for s in sources), "mm"), 0, "Doubts do not simply add: square, add, take the root.")],
)

# %% tags=["reference"]
low, high = Q(said.low_mm, "mm"), Q(said.high_mm, "mm")
for n, mm in enumerate(said.means_mm, 1):
    found = gauges.verdict(Q(mm, "mm"), low, high, doubt)
    side = "low" if mm - said.low_mm < said.high_mm - mm else "high"
    right = {"inside": "inside", "outside": side, "unsure": f"unsure-{side}"}[found]
    other = {"low": "high", "high": "low"}[side]
    ref(f"claims-{n}", right, weight=2, outcome="claim-within-doubt", lesson=f"{where}#what-you-may-claim",
        slips=reasons(said.says, right, {
            "inside": "Compare the distance to the nearer limit with the doubt.",
            side: "It is not beyond the limit by more than the doubt.",
            f"unsure-{side}": "It is further from the limit than the doubt: you can say more.",
            (other, f"unsure-{other}"): "Look at which of the two limits is the nearer one.",
        }))

# %% tags=["mark"] task="claims" points=8

# %% [markdown] tags=["task"]
# ## 9. Care of people and tools
#
# First four situations at the bench, with and without a danger, then one about a tool. **You must get every line of the first question right to pass.** *9 points.*

# %% tags=["form"]
sheet.form(
    "care",
    sheet.each("care-dangers", "What do you do in each situation?", lines=given.care.dangers,
               options=given.care.safety),
    *[sheet.choice(f"care-tool-{n}", one.story, options=one.options)
      for n, one in enumerate(given.care.spoils, 1)],
)

# %% tags=["reference"]
SAFE = {"turned": "go", "locked": "go", "steady": "go", "bar": "go",
        "slow": "still", "starter": "still", "coasting": "still", "drill": "still",
        "knock": "other", "tube": "other", "push": "other", "undo": "other"}
BY_HAND = "It turns by hand only, and nothing can start it: that is how a dial is read."
PULLED = "Pulled towards you with firm feet, by a tool that is made for it: if it slips, you fall back and nothing is spoilt."

# %% tags=["reference"]
harm = {
    "turned": BY_HAND, "steady": PULLED, "bar": PULLED,
    "locked": "It stands still, and nobody can start it without your key.",
    "slow": "A moment is enough: the jaws catch, and the shaft takes sleeve and hand with it.",
    "starter": "A word is misheard once, and the starter does not stop for fingers.",
    "coasting": "With its motor off it still pulls in tool and sleeve as long as it turns.",
    "drill": "It saves the arm, but the machine turns on when something catches, and the dial's stand flies off.",
    "knock": "A knock may start the bolt, and it shifts the spring inside: the wrench lies from then on.",
    "tube": "However light the pull, the click comes at another torque, and the tube slips off.",
    "push": "Weight gives more pull than arms, but when the socket slips your face meets the wrench.",
    "undo": "Even at the top of its scale it is no lever: a stuck bolt needs more, and the figure is spoilt for the next bolt.",
}
ref("care-dangers", {id: SAFE[id] for id in labels(given.care.dangers)}, weight=2, outcome="safe-measuring",
    must_pass=True, lesson=f"{where}#before-you-start",
    slips=line_reasons(bank.lists["dangers"], given.care.safety, SAFE, harm, shown=given.care.dangers))

# %% tags=["reference"]
worn = {
    "leave": "It saves a turn of the grip, but a spring that stays set creeps, and the wrench soon gives less than it says.",
    "below": "It seems to rest the spring most, but below the scale parts inside shift, and it does not come back true.",
    "top": "At the highest mark the spring is pressed hardest: it creeps there soonest.",
    "oil": "The works are greased once for all; oil changes how they slip, and the click comes at another torque.",
    "click": "It clicks at some torque; after a knock nobody knows at which.",
    "more": "Ten per cent is a guess: it may have shifted by more, or the other way.",
    "small": "Small bolts strip soonest, so there a shifted wrench does most harm.",
    "feel": "By feel a hand is off by a third: you notice no wrench that has shifted, and you know no torque.",
    "once-more": "A second click only adds torque: the bolt has turned on before it comes.",
    "mark": "It may be right or may be loose, and the mark keeps everybody from looking again.",
    "back": "Turned back, friction points the other way, and the bolt has lost clamp that nobody can count.",
}

# %% tags=["reference"]
good = {"store": "back-off", "dropped": "check", "again": "loosen"}
for n, habit in enumerate(given.care.spoils, 1):
    kept_true, slips = settled(bank.questions["spoils"], habit, good, worn)
    ref(f"care-tool-{n}", kept_true, outcome="set-wrench", lesson=f"{where}#the-torque-wrench", slips=slips)

# %% tags=["mark"] task="care" points=9

# %% [markdown]
# ## Done?
#
# Go back to **start-here** and press **Hand in**. You get a receipt. You can hand in again until the due date; the last one counts.
