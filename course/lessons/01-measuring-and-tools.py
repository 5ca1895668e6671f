# %% [markdown]
# # Measuring and tools
#
# <div class="twoshaft-if-missing">If no pictures appear below: press <b>Run</b>, then <b>Run All Cells</b>.</div>
#
# **After this lesson you can**
#
# - read a micrometer, a vernier and a dial indicator with their zero checked
# - say what repeat readings are worth
# - choose the tool for a tolerance
# - pull a cord and a torque wrench correctly
# - set the wrench with an adapter and in any unit
# - say what your reading allows you to claim
#
# **Time:** 35 to 40 minutes. **What passing proves:** that others can trust your figures.
#
# *Invented unit, for teaching. On a real unit the maker's manual, local codes and licensed practice decide.*

# %% tags=["setup"]
from twoshaft.models import gauges, joint, shim
from twoshaft.plots.tables import given_table
from twoshaft.practice import open_lesson
from twoshaft.rigs import (
    cord_bench, depth_gauge, micrometer, reading_table, run_out_rig, wrench_bench,
)
from twoshaft.units.quantities import Q

lesson = open_lesson("measuring-and-tools")
unit = lesson.unit
wrenches = unit.fasteners.wrenches

# %% [markdown]
# ## From earlier lessons

# %% tags=["rig"]
lesson.asked_again()

# %% [markdown]
# ## Before you start
#
# - **Never measure a part that turns under power.** It pulls in the tool, the sleeve and the hand. Stop it, lock it off, turn by hand.
# - **Eye protection** when anything is struck, and near springs, detent balls and circlips.
# - **A torque wrench is no hammer and no breaker bar.** A knock spoils it and leaves no mark. The next person tightens to a wrong torque.
# - **Stand firm and pull, do not push.** If the socket slips, you step back and your knuckles hit nothing.
# - Measure clean faces without burrs, with part and tool at the same temperature. A hot part measures large.
#
# On this page nothing can break. Try things.

# %% [markdown]
# ## The micrometer
#
# The **sleeve** stands still and the **thimble** turns round it; the long line along the sleeve is the **datum**. One turn of the thimble moves the spindle **half a millimetre**. The thimble has 50 lines, so one line is 0.01 mm.
#
# 1. Last line open **above** the datum: whole millimetres.
# 2. Is a line **below** it open too? Then add 0.50.
# 3. Add the thimble line on the datum, in hundredths.

# %% tags=["predict"]
lesson.predict("half-turn")

# %% [markdown] tags=["then"]
# Close it on the part and read.

# %% tags=["then"]
micrometer(12.78, zero_mm=0.03)

# %% [markdown] tags=["then"]
# The sleeve shows 12 and a line below it, the thimble 31: 12 + 0.50 + 0.31 = 12.81 mm. Without the half turn you would read 12.31. A mistake of half a millimetre always looks like a good reading. So take a rule first, and know about what to expect.
#
# Now choose *nothing* and close it. Then try it *by force*.

# %% [markdown]
# ## Zero first
#
# Closed on itself, this micrometer shows 0.03 and not 0: that is its **zero error**. It is in every reading.
#
# **length = reading − zero reading** = 12.81 − 0.03 = 12.78 mm
#
# If it stops short of 0, as at thimble line 48 with no line open, the zero reading is −0.02. Taking it off makes the length **larger**. Sleeves can be reset; until then subtract. Wipe the faces before you believe a zero.
#
# Do not trust a micrometer whose zero changes each time, whose thimble drags or whose face is chipped. The same goes for one that has another error on a gauge block than at zero. Take another one, and have this one checked.

# %% tags=["rig"]
given_table(
    "Reading, zero and length",
    ["reading, mm", "zero reading, mm", "length, mm"],
    [(f"{r:.2f}", f"{z:+.2f}", f"{gauges.corrected(Q(r, 'mm'), Q(z, 'mm')).m:.2f}")
     for r, z in [(12.81, 0.03), (12.76, -0.02), (12.78, 0.0)]],
)

# %% [markdown]
# If you close it by force, the frame bends: the thimble turns two lines too far, and nothing warns you. With the ratchet, everyone presses equally hard.

# %% [markdown]
# ## The vernier, and where your eye is
#
# The depth gauge has no thimble. Its vernier has 20 spaces in 19 mm, so each is 0.05 mm short of a millimetre. The vernier line that meets a main line shows the twentieths; the figures on the vernier number its lines.

# %% tags=["predict"]
lesson.predict("from-the-side")

# %% tags=["then"]
depth_gauge(23.35, zero_mm=0.10)

# %% [markdown] tags=["then"]
# Looked at square on, the zero of the vernier stands past 23, and vernier line 9 meets a main line: 23 + 9 × 0.05 = 23.45 mm. From the side the vernier seems to shift by about three of its lines. That is **parallax**. Always look square, with one eye.
#
# The foot (the base of the gauge) lies flat on a clean face, and the rod just touches, clear of the rounding in a corner. Set the foot on the surface plate and push the rod down: its zero reading is 0.10 mm. So the depth is 23.45 − 0.10 = 23.35 mm.

# %% [markdown]
# ## Say it again
#
# One reading says nothing about how good it is. Take five, letting go and starting anew each time.

# %% tags=["predict"]
lesson.predict("five-readings")

# %% tags=["then"]
five = [24.98, 24.99, 24.98, 24.99, 24.93]
out = gauges.stray(five)
rest = [mm for k, mm in enumerate(five) if k != out]
given_table(
    "Mean and spread", ["readings", "mean, mm", "standard deviation, mm"],
    [("all five", *(f"{x:.4f}" for x in gauges.spread(five))),
     (f"without {five[out]}", *(f"{x:.4f}" for x in gauges.spread(rest)))],
)

# %% [markdown] tags=["then"]
# One reading does not belong to the others. Do not just cross it out, and do not just put it into the mean. **Look for the cause** (grit, a burr, a tilted tool, a misread line), correct it, and take the set again. If you find no cause, it stays and you say so. If the cause is already known and is not the size (grit was on the anvil), leave the reading out and note why.
#
# The standard deviation shows how far single readings scatter. The mean of four readings scatters half as much as one reading. An error of the tool itself does not average out. If you know it, take it off each reading. If nobody has looked for it, it has to be found first.

# %% [markdown]
# ## A tool for the tolerance
#
# Workshop rule: the step of the tool should be a **tenth** of the tolerance, or less. Tolerance means the whole width, from lower to upper limit.

# %% tags=["predict"]
lesson.predict("tool-for-shaft")

# %% tags=["then"]
tools = [("steel rule", 0.5), ("vernier caliper", 0.05), ("micrometer", 0.01),
         ("dial comparator on a gauge block", 0.002)]
given_table(
    "Steps of some tools", ["tool", "step, mm", "will do for a tolerance of, mm, or more", "for 0.05 mm"],
    [(name, f"{step:g}", f"{10 * step:g}",
      "yes" if gauges.tells(Q(step, "mm"), Q(0.05, "mm")) else "no") for name, step in tools],
)

# %% [markdown] tags=["then"]
# The comparator is a fine dial, set to zero on a gauge block of known size. Yet the finest is not always best: it must also **reach** the place, and a tool finer than needed costs time. A feeler measures a gap, a depth gauge a step, a dial a **movement**. When nothing meets the rule, say so, and see what the uncertainty leaves of the tolerance.

# %% [markdown]
# ## The dial indicator
#
# The dial shows movement, not size. Before you read: base clamped tight, plunger **square** to the movement, **pressed in** by more than the movement, zero set or noted, small pointer counted.
#
# The **total reading** is the largest less the smallest over one whole turn.

# %% tags=["predict"]
lesson.predict("plunger")

# %% [markdown] tags=["then"]
# Turn the shaft by hand and see; then set it right.

# %% tags=["then"]
run_out_rig(0.08, high_at_deg=40)

# %% [markdown] tags=["then"]
# Just touching it reads **short**: the plunger lets go on the low side. Tilted, it reads **too much**, because the plunger has to go the long way: 30° adds about 15 %.
#
# Square and pressed in, the total is 0.16 mm. The surface then runs 0.08 mm out of centre: **half** the total.

# %% tags=["then"]
given_table(
    "What a tilt does to 0.16 mm", ["tilt, °", "dial shows, mm"],
    [(deg, f"{gauges.plunger_travel(Q(0.16, 'mm'), Q(deg, 'degree')).m:.3f}") for deg in (0, 5, 10, 20, 30, 45)],
)

# %% [markdown]
# ## A spring scale on a cord
#
# torque = pull × radius, when the cord leaves the drum **along its rim**, square to the radius. Check the scale's zero in the position in which you use it. Pull slowly and evenly and read **while it turns**; the first jerk shows the starting torque, not the turning torque. A slant, haste, a cord that crosses itself or a hand on the drum spoils the pull.

# %% tags=["predict"]
lesson.predict("pull-to-torque")

# %% [markdown] tags=["then"]
# With the diameter instead of the radius you would claim twice as much. Never wrap the cord round your hand.
#
# Now pull here. The rings have just been fitted, so the scale shows almost nothing: turn the shaft until the reading stays the same. Then work out the torque and compare.

# %% tags=["then"]
cord_bench(unit, unit.bearings.supports[0].id, setting_mm=0.06)

# %% [markdown]
# ## The torque wrench
#
# - **Range:** its tolerance is promised from a fifth of the top of its scale upwards. Below that you guess.
# - **Click once, stop.** A second pull goes past. Pull slowly at the middle of the grip; a jerk overshoots.
# - **Direction:** many click one way only. Know which way before you use it on a left-hand thread.
# - **After use** back it off to its lowest mark, not below. A spring that is left tight slackens with time.
# - Knocked, dropped, used as a lever, or its check overdue? Out of use until it has been checked.

# %% tags=["rig"]
tools = [joint.TorqueWrench.of(w) for w in wrenches]
given_table(
    "The wrenches of this unit", ["wrench", "scale, N·m", "trusted from, N·m", "marks every, N·m", "tolerance, ± %"],
    [(t.name, f"{t.low_nm:g} to {t.high_nm:g}", t.usable_from_nm, t.step_nm, 100 * t.tolerance) for t in tools],
)

# %% [markdown]
# Set the middle wrench to 40 N·m. In good order it may give 4 % less or more. On top of that, you can miss the mark by half a step: the bolt gets **between 38.2 and 41.9**. That is what "40 N·m" means at a bench.

# %% [markdown]
# ## An adapter at an angle
#
# An adapter shifts the bolt away from the square drive. What counts is the lever from bolt to hand, **along the wrench**.
#
# setting = torque × L / (L + E cos α), with L the wrench, E the adapter, α its angle off straight.

# %% tags=["predict"]
lesson.predict("adapter-angle")

# %% tags=["then"]
wrench_bench(unit, wrenches[1].id, wanted_nm=40)

# %% [markdown] tags=["then"]
# At 90° the lever is as long as without the adapter. Beyond that the bolt lies nearer to your hand and you must set more. Straight on, the lever is longest: if you forget the adapter, you over-tighten the bolt.
#
# Hold the middle of the grip: with an adapter, another place is another L.

# %% [markdown]
# ## Four units of torque

# %% tags=["predict"]
lesson.predict("card-says-20")

# %% tags=["then"]
units = {"N·m": "N*m", "lbf·ft": "force_pound*foot", "lbf·in": "force_pound*inch", "kgf·cm": "force_kilogram*cm"}
given_table("The figure 20 in four units", ["written", "in N·m", "in lbf·ft"],
            [(f"20 {name}", *(f"{Q(20, pint).m_as(to):.2f}" for to in ("N*m", "force_pound*foot")))
             for name, pint in units.items()])

# %% tags=["then"]
reading_table("How you may write it", [("13 ft lb", "N·m"), ("18,5 Nm", "N·m"), ("250 kgf cm", "N·m"), ("12 mN", "N·m")])

# %% [markdown] tags=["then"]
# 20 lbf·in are 2.26 N·m. Write the unit behind every figure. A torque without a unit is no torque.

# %% [markdown]
# ## What you may claim
#
# A reading has an **uncertainty**: step, spread and the tool's own error together. Square each, add, take the root, double it: 95 times in 100 the true size lies within that.

# %% tags=["predict"]
lesson.predict("inside")

# %% tags=["then"]
sources = [shim.resolution("step 0.01 mm", 0.01), shim.normal("tool, from its certificate", 0.006)]
mean, repeat = shim.repeated("five readings", [25.04, 25.05, 25.04, 25.05, 25.045])
budget = shim.propagate(lambda mm: mm, [shim.Measured("size", mean, (*sources, repeat))], "mm")
given_table("Uncertainty of this size, largest first", ["comes from", "adds, mm"],
            [*((name, f"{u:.4f}") for name, u in budget.shares.items()), ("all, doubled", f"{2 * budget.u:.4f}")])

# %% [markdown] tags=["then"]
# Claim *inside* only if the reading lies further inside both limits than its uncertainty. Claim *outside* only if it is beyond a limit by more than the uncertainty. In between, say **not proved**: measure better, or treat the part as bad.

# %% tags=["then"]
given_table("Limits 25.00 to 25.05 mm, uncertainty 0.010 mm", ["reading, mm", "you may say"],
            [(f"{mm:.3f}", {"unsure": "not proved"}.get(v, v)) for mm in (24.985, 24.995, 25.025, 25.045, 25.065)
             for v in [gauges.verdict(*(Q(x, "mm") for x in (mm, 25.0, 25.05, 0.010)))]])

# %% [markdown]
# ## Work it out
#
# Each calculation comes three times: worked, with steps left out, and on your own. Then go on with fresh readings as often as you like. You are told at once what is right, and which mistake a wrong figure looks like. Nothing here is marked.

# %% tags=["rig"]
lesson.calculation("micrometer")

# %% tags=["rig"]
lesson.calculation("depth-gauge")

# %% tags=["rig"]
lesson.calculation("six-readings")

# %% tags=["rig"]
lesson.calculation("shaft-under-dial")

# %% tags=["rig"]
lesson.calculation("pull-on-cord")

# %% tags=["rig"]
lesson.calculation("wrench-with-adapter")

# %% tags=["rig"]
lesson.calculation("uncertainty")

# %% [markdown]
# ## How you are marked
#
# Your readings are your own, and a reading counts if it is right to a line of the tool. Where an answer builds on an earlier one, a mistake costs marks once. What could hurt somebody is **must-pass**.
#
# Some questions decide their outcome. One line wrong there, and the outcome is not met:
#
# - what you do with a zero, with a reading and with a dial
# - what you claim of a part, a shaft or a bolt
# - which torque wrench you take, and how you keep it
#
# Now open the exercise from **start-here**.

# %% [markdown]
# <details>
# <summary>Where the rules and figures come from</summary>
#
# - Tolerance and range of torque tools: ISO 6789, as a maker's manual quotes it; lever rule from wrench manuals.
# - Uncertainty of a measurement: JCGM 100:2008 (GUM). Inside, outside, not proved: ISO 14253-1.
# - A reading that does not belong: Grubbs 1969 (as remembered, not looked up again). Tilt and parallax: plain geometry.
# - The rule of the tenth, ratchet, steady pull, backing off: common practice, no source.
#
# </details>
