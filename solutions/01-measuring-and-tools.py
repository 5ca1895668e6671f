# %% [markdown]
# # Measuring and tools: exercise
#
# <div class="twoshaft-if-missing">If no forms appear below: press <b>Run</b>, then <b>Run All Cells</b>.</div>
#
# Nine tasks about reading, repeating, choosing and claiming. Take about an hour and a quarter; have paper and a calculator.
#
# Every answer is saved as you give it; you can stop and come back.
#
# A reading counts if it is right to one line of the tool. Where an answer builds on an earlier one, a mistake costs marks once.
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

from twoshaft.models import bench_tools, gauges, joint, set_ups, shim
from twoshaft.questions import bank_of
from twoshaft.readings.measuring_and_tools.wrench import UNITS, tools_of
from twoshaft.records import labels
from twoshaft.units.quantities import Q
from twoshaft_grader.marking import Slip, line_reasons, reasons, ref

where, bank = "01-measuring-and-tools", bank_of("measuring-and-tools")
LINE, TWENTIETH = Q(0.01, "mm"), Q(0.05, "mm")

# %% [markdown] tags=["task"]
# ## 1. A micrometer
#
# Close the micrometer on itself and write what it shows, with a minus where it stops short of 0.
#
# Then close it on the part, read it, and work out the size. The last question is about other micrometers, closed on themselves. **It must be right to pass, in every line.** *8 points.*

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
    sheet.each("mic-do", "Other micrometers and their zero readings: what do you do with each?",
               lines=given.micrometer.zeros.lines, options=given.micrometer.zeros.answers),
)

# %% tags=["reference"]
mic = given.micrometer
off = Q(mic.zero_mm, "mm")
round_below = "Short of 0 the thimble line counts back from 50: the zero reading is below zero."
zero = ref(
    "mic-zero", off, weight=2, steps=1 + (off < 0), outcome="read-scales", shows="zero-taken-off", tolerance=LINE / 2, lesson=f"{where}#zero-first",
    slips=[Slip(off + Q(0.5, "mm"), 0.25, round_below)] if off < 0 else [],
)
there = Q(mic.part_mm + mic.zero_mm, "mm")
reading = ref(
    "mic-reading", there, weight=2, outcome="read-scales", shows="no-half-turn", tolerance=LINE, lesson=f"{where}#the-micrometer",
    slips=[Slip(there - Q(0.5, "mm"), 0.25, "Half a turn is missing: a line below the datum is open too."),
           Slip(there + Q(0.5, "mm"), 0.25, "Half a turn too many: count only lines that are really open.")],
)

# %% tags=["reference"]
ref(
    "mic-size", gauges.corrected(reading, zero), weight=2, outcome="read-scales", shows="zero-taken-off", tolerance=LINE,
    lesson=f"{where}#zero-first",
    slips=[Slip(reading + zero, 0.25, "The zero reading is in the reading already: take it off, do not add it."),
           Slip(reading, 0.25, "This is the reading; the zero reading has still to come off.")],
)

# %% tags=["reference"]
ZEROS = {"steady": "take-off", "plate": "take-off", "yesterday": "take-off", "small": "take-off",
         "once": "again", "fluff": "again", "firm": "again", "film": "again",
         "wander": "away", "block": "away", "tight": "away", "chip": "away"}
OFFS = {"take-off": "It is clean and comes back to the same zero: that much is in every reading, and can be taken off.",
        "again": "Dirt or a firm hand shifts the zero this once. If you take that off, every reading without it comes out wrong."}
OFFS = {id: OFFS[do] for id, do in ZEROS.items() if do != "away"} | {
    "wander": "There is no one zero to take off: the spindle is loose, and each reading is off by another amount.",
    "block": "Its error at the block is not its error at zero, so no single figure can put all readings right.",
    "tight": "The zero is steady, which looks good; but where the thimble drags, the screw is bent and reads wrongly.",
    "chip": "The zero is steady, which looks good; but a chipped face sits differently on every part."}
ref("mic-do", {one.id: ZEROS[one.id] for one in mic.zeros.lines}, weight=3, outcome="read-scales", shows="zero-taken-off", must_pass=True,
    lesson=f"{where}#zero-first",
    slips=line_reasons(bank.lists["zeros"], mic.zeros.answers, ZEROS, OFFS, shown=mic.zeros.lines))

# %% tags=["mark"] task="micrometer" points=8

# %% [markdown] tags=["task"]
# ## 2. A depth gauge
#
# Read the depth gauge on the surface plate, then over the depth. Mind where you look from. The pictures show gauges that others have set; which is which?
#
# **It must be right to pass, in every line.** *7 points.*

# %% tags=["rig"]
given_table("On the bench", ["depth", "tool"], [(given.depth.name, "depth gauge, vernier of 0.05 mm")])

# %% tags=["rig"]
depth_gauge(given.depth.depth_mm, zero_mm=given.depth.zero_mm, eye=given.depth.eye,
            readings_only=True)

# %% tags=["form"]
from twoshaft.plots.depth_set import DepthSetPicture

sheet.form(
    "depth",
    sheet.number("depth-zero", "Reading on the surface plate, with its sign", "mm"),
    sheet.number("depth-reading", "Reading over the depth, as the gauge shows it", "mm"),
    sheet.number("depth-true", "Depth", "mm"),
    sheet.picture("depth-look", "Gauges that others have set over a bore, with the eye that reads them: which one is it?",
                  lines=given.depth.asked, pictures={one.letter: DepthSetPicture(one) for one in given.depth.looks}),
)

# %% tags=["reference"]
deep = given.depth
off = Q(deep.zero_mm, "mm")
seen = bench_tools.vernier_seems_moved(deep.eye)
aside = "You read it from the side: the lines seem shifted. Look square on."
back = [Slip(off + Q(1, "mm"), 0.25, "The vernier's zero is short of line 0: count back, below zero.")]
zero = ref("depth-zero", off, steps=1 + (off < 0), outcome="read-scales", shows="zero-taken-off", tolerance=TWENTIETH / 2,
           lesson=f"{where}#the-vernier-and-where-your-eye-is",
           slips=[Slip(off + seen, 0.25, aside), *(back if off < 0 else [])])
there = Q(deep.depth_mm + deep.zero_mm, "mm")
reading = ref("depth-reading", there, weight=2, outcome="read-scales", shows="no-half-turn", tolerance=TWENTIETH,
              lesson=f"{where}#the-vernier-and-where-your-eye-is",
              slips=[Slip(there + seen, 0.25, aside)])

# %% tags=["reference"]
ref(
    "depth-true", gauges.corrected(reading, zero), outcome="read-scales", shows="zero-taken-off", tolerance=TWENTIETH,
    lesson=f"{where}#zero-first",
    slips=[Slip(reading + zero, 0.25, "Take the zero reading off, do not add it."),
           Slip(reading, 0.25, "This is the reading; the zero reading has still to come off.")],
)

# %% tags=["reference"]
LOOKS = {(): "keep", ("eye",): "eye", ("set",): "set", ("eye", "set"): "both"}
SEEN = {"keep": "The eye looks square on, the foot lies flat, and the rod stands on the bottom clear of the rounding: reading it once more changes nothing.",
        "eye": "Foot and rod are seated, which looks good; but from above or below another line of the vernier seems to meet: the reading is too large or too small.",
        "set": "The eye looks square on, which looks good; but the foot does not lie flat, or the rod is not on the bottom: what is read is another depth.",
        "both": "Neither is right here: look at the eye against the square line, and under both ends of the foot and the rod."}
is_so = {one.letter: LOOKS[set_ups.depth_set_faults(one)] for one in deep.looks}
found = {key: letter for letter, key in is_so.items() if key != "both"}
ref("depth-look", found, weight=2.5, outcome="read-scales", shows="no-half-turn", must_pass=True,
    lesson=f"{where}#the-vernier-and-where-your-eye-is",
    slips=line_reasons(deep.asked, [(letter, "") for letter in is_so], found, {}, {letter: SEEN[key] for letter, key in is_so.items()}))

# %% tags=["mark"] task="depth" points=7

# %% [markdown] tags=["task"]
# ## 3. Six readings
#
# Six readings of one size. Say which does not belong to the others.
#
# Then work out mean and standard deviation (n − 1) of the readings that belong together, to four places. The other questions are about other sets. *8 points.*

# %% tags=["rig"]
given_table(f"Six readings of one size{given.repeats.source}", ["reading", "mm"],
            [(n, f"{mm:.2f}" if mm == round(mm, 2) else f"{mm:g}") for n, mm in enumerate(given.repeats.readings_mm, 1)])

# %% tags=["form"]
sheet.form(
    "repeats",
    sheet.choice("rep-stray", "Which one does not belong?", options=given.repeats.options),
    sheet.each("rep-do", "Other sets of six: what do you do with the last reading?",
               lines=given.repeats.strays.lines, options=given.repeats.strays.answers),
    sheet.number("rep-mean", "Mean of the readings that belong together", "mm"),
    sheet.number("rep-sd", "Their standard deviation", "mm"),
    sheet.each("rep-means", "What may be wrong with readings: what helps against it?",
               lines=given.repeats.errors.lines, options=given.repeats.errors.answers),
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
odd = ref("rep-stray", stands_off, weight=1.5, outcome="judge-repeats", shows="stranger", lesson=f"{where}#say-it-again", slips=slips)

# %% tags=["reference"]
STRAYS = {"inside": "keep", "edge": "keep", "other-hand": "keep", "largest": "keep",
          "alone": "cause", "in-limits": "cause", "better": "cause", "friday": "cause",
          "grit": "out", "tilted": "out", "warm": "out", "misread": "out"}
LAST = {"keep": "It lies as near to the others as they lie to each other: if you leave it out, the spread looks better than it is.",
        "cause": "It lies much further off than the others scatter, and nobody knows why: whether it is kept or left out, it may happen again unseen.",
        "out": "Its cause is known and has nothing to do with the size: if it is kept, it pulls the mean away; the other five are good."}
ref("rep-do", {one.id: STRAYS[one.id] for one in given.repeats.strays.lines}, weight=3, outcome="judge-repeats",
    shows="stranger", lesson=f"{where}#say-it-again",
    slips=line_reasons(bank.lists["strays"], given.repeats.strays.answers, STRAYS,
                       {id: LAST[do] for id, do in STRAYS.items()}, shown=given.repeats.strays.lines))

# %% tags=["reference"]
kept = [mm for n, mm in enumerate(read, 1) if f"reading-{n}" != odd]
mean, sd = gauges.spread(kept)
all_mean, all_sd = gauges.spread(read)
whole = [Slip(Q(all_mean, "mm"), 0.25, "This is the mean of all six; one of them does not belong.")]
ref("rep-mean", Q(mean, "mm"), weight=1.5, outcome="judge-repeats", shows="mean-and-spread", tolerance=Q(0.0015, "mm"),
    lesson=f"{where}#say-it-again", slips=whole if len(kept) < len(read) else [])
n = len(kept)
ref("rep-sd", Q(sd, "mm"), weight=1.5, outcome="judge-repeats", shows="mean-and-spread", tolerance=Q(0.00015, "mm"),
    lesson=f"{where}#say-it-again",
    slips=[Slip(Q(sd * ((n - 1) / n) ** 0.5, "mm"), 0.5, "You divided by n; of a few readings divide by n - 1."),
           *([Slip(Q(all_sd, "mm"), 0.25, "This is the spread of all six; one of them does not belong.")]
             if n < len(read) else [])])

# %% tags=["reference"]
ERRORS = {"letting-go": "more", "between": "more", "ratchet": "more", "turned": "more",
          "zero": "off", "block": "off", "bridge": "off", "known-warm": "off",
          "unset": "hidden", "screw": "hidden", "aside": "hidden", "hot": "hidden"}
HELPS = {"more": "It comes out high and low by chance, so it cancels in part in the mean; there is no one figure to take off.",
         "off": "It is the same in every reading, so the mean keeps all of it; but it is known, and comes off.",
         "hidden": "It sits in every reading, so the mean keeps all of it; and nobody knows how much there is to take off."}
ref("rep-means", {one.id: ERRORS[one.id] for one in given.repeats.errors.lines}, weight=2.5, outcome="judge-repeats",
    shows="what-helps", lesson=f"{where}#say-it-again",
    slips=line_reasons(bank.lists["errors"], given.repeats.errors.answers, ERRORS,
                       {id: HELPS[do] for id, do in ERRORS.items()}, shown=given.repeats.errors.lines))

# %% tags=["mark"] task="repeats" points=8

# %% [markdown] tags=["task"]
# ## 4. Which tool?
#
# Four sizes with their limits. For each, take the **plainest** tool that can reach the place and meets the rule of the tenth.
#
# The rule: the step of the tool is a tenth of the tolerance, or less. If none of these tools meets it, say so. *8 points.*

# %% tags=["rig"]
given_table("The jobs", ["job", "what", "lower limit, mm", "upper limit, mm"],
            [(n, job.name, f"{job.low_mm:.3f}", f"{job.high_mm:.3f}")
             for n, job in enumerate(given.choose.jobs, 1)])

# %% tags=["form"]
sheet.form(
    "choose",
    sheet.each("choose-tool", "Which tool for each job?",
               lines=[(f"job-{n}", f"{job.name}, {job.low_mm:.3f} to {job.high_mm:.3f} mm")
                      for n, job in enumerate(given.choose.jobs, 1)],
               options=[*((tool.id, tool.name) for tool in given.choose.tools), given.choose.none]),
)

# %% tags=["reference"]
drawer = {tool.id: tool for tool in given.choose.tools}

# %% tags=["reference"]
right, why = {}, {}
for n, job in enumerate(given.choose.jobs, 1):
    width = Q(job.high_mm, "mm") - Q(job.low_mm, "mm")
    fit = {key: Q(tool.step_mm, "mm") for key, tool in drawer.items() if job.kind in tool.kinds}
    will = {key for key, step in fit.items() if gauges.tells(step, width)}
    plainest = max((fit[key] for key in will), default=None)
    right[f"job-{n}"] = {key for key in will if fit[key] == plainest} or {"none"}
    why[f"job-{n}"] = {
        **dict.fromkeys(drawer, "This tool does not measure what the job asks."),
        **dict.fromkeys(fit, "Its step is more than a tenth of the tolerance: a part outside looks as if it were inside."),
        **dict.fromkeys(will, "It would do, but a plainer tool does too, and is set up sooner."),
        "none": "One of them does: compare its step with a tenth of the tolerance.",
    }

# %% tags=["reference"]
ref("choose-tool", right, outcome="choose-tool", shows=("tells-a-tenth", "none-will-do"), lesson=f"{where}#a-tool-for-the-tolerance",
    slips=line_reasons([(id, "") for id in right], [*((key, "") for key in drawer), given.choose.none], right, why))

# %% tags=["mark"] task="choose" points=8

# %% [markdown] tags=["task"]
# ## 5. A shaft under the dial
#
# First find out what is wrong with dials that others have set up.
#
# Then set your own dial up and turn the shaft by hand once round. Give the total reading, and how far the surface runs out of centre. The last question is about other shafts too. **The first and the last must be right to pass, in every line.** *10 points.*

# %% tags=["rig"]
given_table("The limit", ["total reading, at most, mm", "uncertainty of your total, mm either way"],
            [(f"{given.dial.limit_mm:.2f}", f"{given.dial.doubt_mm:.3f}")])

# %% tags=["rig"]
run_out_rig(given.dial.off_mm, high_at_deg=given.dial.high_at_deg, readings_only=True)

# %% tags=["form"]
from twoshaft.plots.dial_set import DialSetPicture

sheet.form(
    "dial",
    sheet.picture("dial-ready", "Dials that others have set up on a shaft, seen on its end: which one is it?",
                  lines=given.dial.asked, pictures={one.letter: DialSetPicture(one) for one in given.dial.set_ups}),
    sheet.number("dial-total", "Total reading", "mm"),
    sheet.number("dial-off", "How far does the surface run out of centre?", "mm"),
    sheet.each("dial-verdict", "What may you say of each shaft? Figures in mm.",
               lines=[("own", "the shaft under your dial"),
                      *((f"shaft-{n}", f"total {one.total_mm:g}, limit {one.limit_mm:g}, uncertainty {one.doubt_mm:g} either way")
                        for n, one in enumerate(given.dial.others, 1))], options=given.dial.verdicts),
)

# %% tags=["reference"]
dial = given.dial
READY = {(): "read", ("set",): "set", ("drive",): "drive", ("set", "drive"): "both"}
STANDS = {"read": "It points at the middle of the shaft, is pressed in by more than the movement, stands firm, and a hand turns the shaft: nothing is left to set.",
          "set": "A hand turns the shaft, which is safe; but the plunger misses the middle or lets go, or the stand gives way: the dial shows another movement.",
          "drive": "The dial is set up well, which looks good; but a shaft that a machine turns pulls in stand, sleeve and hand.",
          "both": "Neither is right here: look at the plunger's line, its figures and the stand's foot, and at what turns the shaft."}
left = {one.letter: READY[set_ups.dial_set_faults(one)] for one in dial.set_ups}
ready = {key: letter for letter, key in left.items() if key != "both"}
ref("dial-ready", ready, weight=3, outcome="use-dial", shows="clamped-square", must_pass=True, lesson=f"{where}#the-dial-indicator",
    slips=line_reasons(dial.asked, [(letter, "") for letter in left], ready, {}, {letter: STANDS[key] for letter, key in left.items()}))

# %% tags=["reference"]
turned = Q(np.arange(361) + dial.high_at_deg, "degree")
spot = gauges.run_out(Q(dial.off_mm, "mm"), turned)
shown = {press: gauges.dial_reading(Q(press, "mm"), spot - spot[0], Q(30, "degree")) for press in (0.02, 0.5)}
wrong = {press: all_round.max() - all_round.min() for press, all_round in shown.items()}
true = spot.max() - spot.min()
total = ref(
    "dial-total", true, weight=2, outcome="use-dial", shows="total-reading", tolerance=LINE, lesson=f"{where}#the-dial-indicator",
    slips=[Slip(true / 2, 0.25, "This is half of it: the total is the largest less the smallest."),
           Slip(wrong[0.5], 0.25, "The plunger stood at a tilt, so the dial showed too much."),
           Slip(wrong[0.02], 0.25, "The plunger let go on the way round, or stood at a tilt: set the dial up first.")],
)
ref("dial-off", gauges.eccentricity(total), outcome="use-dial", shows="total-reading", tolerance=LINE / 2,
    lesson=f"{where}#the-dial-indicator",
    slips=[Slip(total, 0.25, "This is the total; out of centre it is half of that.")])

# %% tags=["reference"]
shafts = {"own": (total, dial.limit_mm, dial.doubt_mm)}
shafts |= {f"shaft-{n}": (Q(one.total_mm, "mm"), one.limit_mm, one.doubt_mm) for n, one in enumerate(dial.others, 1)}
fits = {id: gauges.verdict(mm, Q(-1, "mm"), Q(limit, "mm"), Q(either, "mm")) for id, (mm, limit, either) in shafts.items()}
SAYS = {"inside": "The total with its uncertainty on top is still below the limit: if you call it not proved, a good shaft is scrapped.",
        "outside": "The total less its uncertainty is still above the limit: the shaft shakes and wears its bearings, however often you measure it.",
        "unsure": "The total lies nearer to the limit than its uncertainty: either way you claim what the dial cannot show."}
ref("dial-verdict", fits, weight=3, must_pass=True, outcome="claim-within-doubt", shows="clears-the-limit", lesson=f"{where}#what-you-may-claim",
    slips=line_reasons([(id, "") for id in fits], dial.verdicts, fits, {id: SAYS[one] for id, one in fits.items()}))

# %% tags=["mark"] task="dial" points=10

# %% [markdown] tags=["task"]
# ## 6. A pull on a cord
#
# Somebody wrote down what a spring scale showed on a cord round a drum. Work out the pull that counts, and the torque. Last, say what other pulls show.
#
# *6 points.*

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
    sheet.number("pull-force", "Pull that counts, the scale's zero taken into account", "N"),
    sheet.number("pull-torque", "Torque", "N·m"),
    sheet.each("pull-which", "Pulls on other drums: what does each show?",
               lines=given.pull.pulls.lines, options=given.pull.pulls.answers),
)

# %% tags=["reference"]
pull = given.pull
PULLS = {"even": "turning", "after": "turning", "hung": "turning", "steady": "turning",
         "jerk": "start", "stand": "start", "moved": "start", "drag": "start",
         "slant": "neither", "fast": "neither", "over": "neither", "held": "neither"}
SHOWN = {"turning": "It was read while the drum turned slowly, along its rim: that is the turning torque.",
         "start": "It was read as the drum broke loose, or while it still stood: that is the starting torque, and it is more than the turning torque.",
         "neither": "It was read while it turned, which looks right; but something else pulled too: a slant, haste, the cord itself, a hand."}
ref("pull-which", {one.id: PULLS[one.id] for one in pull.pulls.lines}, weight=3, outcome="read-pull", shows="steady-pull",
    lesson=f"{where}#a-spring-scale-on-a-cord",
    slips=line_reasons(bank.lists["pulls"], pull.pulls.answers, PULLS, {id: SHOWN[one] for id, one in PULLS.items()},
                       shown=pull.pulls.lines))

# %% tags=["reference"]
steady = gauges.spread(pull.steady_n)[0]
nought, jerk = pull.zero_n, pull.jerk_n
force = ref(
    "pull-force", Q(steady - nought, "N"), outcome="read-pull", shows="steady-pull", weight=2, tolerance=Q(0.6, "N"),
    lesson=f"{where}#a-spring-scale-on-a-cord",
    slips=[Slip(Q(steady, "N"), 0.5, "The scale did not hang at 0; take that off."),
           Slip(Q(steady + nought, "N"), 0.25, "What the scale shows at nothing has to come off, with its sign."),
           Slip(Q(jerk - nought, "N"), 0, "This is the jerk; the steady pull counts."),
           Slip(Q(jerk, "N"), 0, "This is the jerk; the steady pull counts.")],
)

# %% tags=["reference"]
radius = Q(pull.radius_mm, "mm").to("m")
ref(
    "pull-torque", Q((force * radius).m_as("N*m"), "N*m"), outcome="read-pull", shows="cord-radius", tolerance=0.02,
    lesson=f"{where}#a-spring-scale-on-a-cord",
    slips=[Slip(Q((2 * force * radius).m_as("N*m"), "N*m"), 0.25,
                "You took the diameter; the cord pulls at the radius.")],
)

# %% tags=["mark"] task="pull" points=6

# %% [markdown] tags=["task"]
# ## 7. A torque wrench with an adapter
#
# An old card gives a torque, and the bolt can only be reached with an adapter at an angle. Work out what to set.
#
# Then say what the bolt may get at least and at most from a wrench in good order, and what that means for the window. Two questions are about other bolts too.
#
# The wrenches may be off by 4 % of the setting, and the mark may be missed by half a step. **Which wrench, and where each bolt ends up, must be right to pass, in every line.** *12 points.*

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
    sheet.each("wrench-tool", "Which wrench do you take for each torque?",
               lines=[("own", "the torque of the card"),
                      *((f"torque-{n}", f"{nm:g} N·m") for n, nm in enumerate(given.wrench.others_nm, 1))],
               options=[*((w.id, w.name) for w in given.wrench.wrenches), given.wrench.none]),
    sheet.number("wrench-setting", "Setting with the adapter, as worked out", "N·m"),
    sheet.number("wrench-least", "Least torque that the bolt may get", "N·m"),
    sheet.number("wrench-most", "Most torque that the bolt may get", "N·m"),
    sheet.each("wrench-claim", "Where does each bolt end up? Torques in N·m.",
               lines=[("own", "the bolt of the card"),
                      *((f"bolt-{n}", f"it may get {one.least_nm:g} to {one.most_nm:g}, window {one.low_nm:g} to {one.high_nm:g}")
                        for n, one in enumerate(given.wrench.windows, 1))], options=given.wrench.claims),
)

# %% tags=["reference"]
card = given.wrench
tools = tools_of(unit)
torque = ref(
    "wrench-torque", Q(card.figure, UNITS[card.unit][0]).to("N*m"), outcome="set-wrench", shows="unit-and-range",
    tolerance=0.006, lesson=f"{where}#four-units-of-torque",
    slips=[Slip(Q(card.figure, pint).to("N*m"), 0, f"That is the figure taken as {name}; look at the card.")
           for name, (pint, _) in UNITS.items() if name != card.unit],
)

# %% tags=["reference"]
suited, unfit = {}, {}
for id, wanted in {"own": torque, **{f"torque-{n}": Q(nm, "N*m") for n, nm in enumerate(card.others_nm, 1)}}.items():
    suited[id] = {name for name, one in tools.items() if one.suits(wanted)} or {"none"}
    unfit[id] = {name: "Its scale ends below this torque." if wanted.m_as("N*m") > one.high_nm else
                 "So low on its scale no tolerance is promised: that begins at a fifth of the top."
                 for name, one in tools.items()} | {"none": "One of them has it between a fifth of its top and the top."}
fitting = min(name for name, one in tools.items() if one.suits(torque))
chosen = ref("wrench-tool", suited, weight=3, must_pass=True, outcome="set-wrench", shows="unit-and-range", lesson=f"{where}#the-torque-wrench",
             slips=line_reasons([(id, "") for id in suited], [*((name, "") for name in tools), card.none], suited, unfit))

# %% tags=["reference"]
taken = chosen["own"] if isinstance(chosen["own"], str) else min(chosen["own"])
tool = tools[taken if taken in tools else fitting]
length, reach, angle = Q(tool.length_m, "m"), Q(card.reach_mm, "mm"), Q(card.angle_deg, "degree")
straight, folded = joint.setting_with_adapter(torque, length, reach), Q(180, "degree") - angle

# %% tags=["reference"]
setting = ref(
    "wrench-setting", joint.setting_with_adapter(torque, length, reach, angle), weight=2, outcome="set-wrench", shows="adapter",
    tolerance={"absolute": Q(tool.step_nm / 2, "N*m"), "relative": 0.005}, lesson=f"{where}#an-adapter-at-an-angle",
    slips=[
        Slip(torque, 0, "This leaves the adapter out: it changes the lever."),
        Slip(joint.torque_at_bolt(torque, length, reach, angle), 0.25,
             "You turned it round: divide by the longer lever and multiply by the shorter one."),
        Slip(straight, 0.25, "This is for an adapter straight on; yours stands at an angle."),
    ],
)

# %% tags=["reference"]
mark = tool.nearest_setting(setting)
least, most = tool.applied(mark)
short = "This is what the wrench gives at its square drive; the adapter changes it on the way to the bolt."
bare = Slip(joint.torque_at_bolt(mark, length, reach, angle), 0, "The wrench may be off either way; count its tolerance in.")
low = ref("wrench-least", joint.torque_at_bolt(least, length, reach, angle), outcome="set-wrench", shows="adapter", tolerance=0.015,
          lesson=f"{where}#the-torque-wrench", slips=[bare, Slip(least, 0.5, short)])
high = ref("wrench-most", joint.torque_at_bolt(most, length, reach, angle), outcome="set-wrench", shows="adapter", tolerance=0.015,
           lesson=f"{where}#the-torque-wrench", slips=[bare, Slip(most, 0.5, short)])

# %% tags=["reference"]
bolts = {"own": (low.m_as("N*m"), high.m_as("N*m"), card.low_nm, card.high_nm), **{
    f"bolt-{n}": (one.least_nm, one.most_nm, one.low_nm, one.high_nm) for n, one in enumerate(card.windows, 1)}}
ends = {id: "sure" if bottom <= least_nm and most_nm <= top else "outside" if least_nm > top or most_nm < bottom else "unsure"
        for id, (least_nm, most_nm, bottom, top) in bolts.items()}
LIES = {"sure": "Both ends of what the bolt may get lie in the window: even a wrench at the edge of its tolerance does.",
        "unsure": "One end lies in the window and one does not: a click says nothing about which of them the bolt got.",
        "outside": "All that the bolt may get lies beyond the window: the bolt stays loose or is overstretched, however good the wrench is."}
ref("wrench-claim", ends, weight=3.5, must_pass=True, outcome="claim-within-doubt", shows="clears-the-limit", lesson=f"{where}#what-you-may-claim",
    slips=line_reasons([(id, "") for id in ends], card.claims, ends, {id: LIES[one] for id, one in ends.items()}))

# %% tags=["mark"] task="wrench" points=12

# %% [markdown] tags=["task"]
# ## 8. What may you claim?
#
# Work out the uncertainty of a mean size: change each source as the table says, square them, add, take the root, double it.
#
# Then say for four parts what you may claim. **It must be right to pass, in every line.** *8 points.*

# %% tags=["rig"]
said = given.claims
given_table("What the uncertainty comes from", ["source", "size, mm", "counts as"], [
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
    sheet.number("claims-doubt", "Uncertainty of the mean, doubled", "mm"),
    sheet.each("claims-says", "What may you say of each part?",
               lines=[(f"part-{n}", f"Part {n}, {mm:.3f} mm") for n, mm in enumerate(given.claims.means_mm, 1)],
               options=given.claims.says),
)

# %% tags=["reference"]
said = given.claims
sources = [shim.resolution("step", said.step_mm), shim.normal("tool", said.certificate_mm),
           shim.normal("scatter", said.sd_mm, k=said.count ** 0.5)]
budget = shim.propagate(lambda mm: mm, [shim.Measured("size", said.low_mm, tuple(sources))], "mm")
doubt = ref(
    "claims-doubt", Q(2 * budget.u, "mm"), weight=2, outcome="claim-within-doubt", shows="by-squares", tolerance=0.05,
    lesson=f"{where}#what-you-may-claim",
    slips=[Slip(Q(budget.u, "mm"), 0.5, "This is not yet doubled."),
           Slip(Q(2 * sum(s.u for s in sources), "mm"), 0.25, "Uncertainties do not simply add: square, add, take the root."),
           Slip(Q(sum(s.u for s in sources), "mm"), 0, "Uncertainties do not simply add: square, add, take the root.")],
)

# %% tags=["reference"]
low, high = Q(said.low_mm, "mm"), Q(said.high_mm, "mm")
parts, nearer = {}, {}
for n, mm in enumerate(said.means_mm, 1):
    found = gauges.verdict(Q(mm, "mm"), low, high, doubt)
    side, other = ("low", "high") if mm - said.low_mm < said.high_mm - mm else ("high", "low")
    parts[f"part-{n}"] = {"inside": "inside", "outside": side, "unsure": f"unsure-{side}"}[found]
    nearer[f"part-{n}"] = {
        "inside": "It is inside by less than the uncertainty: you would call it good, and it may be bad.",
        side: "It is not beyond the limit by more than the uncertainty: you would scrap it, and it may be good.",
        f"unsure-{side}": "It is further from the limit than the uncertainty: you can say more.",
        **dict.fromkeys((other, f"unsure-{other}"), "Look at which of the two limits is the nearer one."),
    }
ref("claims-says", parts, weight=6, outcome="claim-within-doubt", shows="clears-the-limit", must_pass=True,
    lesson=f"{where}#what-you-may-claim", slips=line_reasons([(id, "") for id in parts], said.says, parts, nearer))

# %% tags=["mark"] task="claims" points=8

# %% [markdown] tags=["task"]
# ## 9. Care of people and tools
#
# First four situations at the bench, with and without a danger, then four about torque wrenches. **Both must be right to pass, in every line.** *9 points.*

# %% tags=["form"]
sheet.form(
    "care",
    sheet.each("care-dangers", "What do you do in each situation?", lines=given.care.dangers,
               options=given.care.safety),
    sheet.each("care-kept", "Torque wrenches: what do you do next?",
               lines=given.care.kept.lines, options=given.care.kept.answers),
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
    "starter": "A word can be misheard, and the starter does not stop for fingers.",
    "coasting": "With its motor off, it still pulls in tool and sleeve for as long as it turns.",
    "drill": "It saves the arm, but the machine keeps turning when something catches, and the dial's stand flies off.",
    "knock": "A knock may start the bolt, but it shifts the spring inside: from then on the wrench gives a wrong torque.",
    "tube": "However light the pull, the click comes at another torque, and the tube slips off.",
    "push": "Weight gives more pull than arms, but when the socket slips your face meets the wrench.",
    "undo": "Even at the top of its scale it is no lever: a stuck bolt needs more, and the wrench is spoilt for the next bolt.",
}
ref("care-dangers", {id: SAFE[id] for id in labels(given.care.dangers)}, weight=2, outcome="safe-measuring",
    shows=("by-hand", "no-abuse"), must_pass=True, lesson=f"{where}#before-you-start",
    slips=line_reasons(bank.lists["dangers"], given.care.safety, SAFE, harm, shown=given.care.dangers))

# %% tags=["reference"]
KEPT = {"click": "nothing", "case": "nothing", "heard": "nothing",
        "unheard": "again", "tight": "again", "twice": "again",
        "fell": "check", "lever": "check", "overdue": "check",
        "store": "back", "tomorrow": "back", "top": "back"}
KEEP = {"nothing": "Nothing is left to do here: one click from slack is the torque, and at rest the wrench lies at its lowest mark.",
        "again": "The wrench is in order, and nobody knows what the bolt got: only one click, pulled from slack, is the torque that was set.",
        "check": "It clicks, which sounds right; but after a fall, use as a lever or a missed check nobody knows at which torque.",
        "back": "If it is left set, or turned to the top, its spring creeps, and it soon gives another torque than its scale shows."}
ref("care-kept", {one.id: KEPT[one.id] for one in given.care.kept.lines}, weight=2, outcome="set-wrench", shows="kept",
    must_pass=True, lesson=f"{where}#the-torque-wrench",
    slips=line_reasons(bank.lists["kept"], given.care.kept.answers, KEPT, {id: KEEP[do] for id, do in KEPT.items()},
                       shown=given.care.kept.lines))

# %% tags=["mark"] task="care" points=9

# %% [markdown]
# ## Done?
#
# Go back to **start-here** and press **Hand in**. You get a receipt. You can hand in again until the due date; the last one counts.
