# %% [markdown]
# # Shims, end play and preload
#
# <div class="twoshaft-if-missing">If no pictures appear below: press <b>Run</b>, then <b>Run All Cells</b>.</div>
#
# **After this lesson you can**
#
# - say which way a thicker shim works
# - work out a shim from measured lengths
# - choose from a stepped set with room for the uncertainty of your measurement
# - prove it by dial indicator and cord
# - say what the setting becomes when the unit is hot
#
# **Time:** 30 to 40 minutes. **What passing proves:** that you can set a pair of bearings on paper and say how you would prove it at the bench.
#
# *Invented unit, for teaching. On a real unit the maker's manual, local codes and licensed practice decide.*

# %% tags=["setup"]
from twoshaft.models import bearing, shim
from twoshaft.plots.bearing import life_over_setting, preload_when_warm
from twoshaft.plots.bearing_section import bearing_section, placed
from twoshaft.plots.shim import shim_choice
from twoshaft.plots.tables import given_table
from twoshaft.practice import open_lesson
from twoshaft.rigs import cord_bench, shim_bench
from twoshaft.units.quantities import Q

lesson = open_lesson("shims-and-preload")
unit = lesson.unit
bearings, pairs = unit.bearings, unit.bearings.supports
outwards = [pair for pair in pairs if pair.arrangement == "outer-rings-together"] or pairs
main = max(outwards, key=lambda pair: (pair.target.kind == "preload", len(pair.drags)))
other = next((pair for pair in pairs if pair.arrangement != main.arrangement), pairs[-1])

# %% [markdown]
# ## From earlier lessons

# %% tags=["rig"]
lesson.asked_again()

# %% [markdown]
# ## Before you start
#
# - **Hot parts.** A ring from the oven looks like a cold one. Wear heat gloves, put it where nobody reaches past, and say aloud what is hot.
# - **Never spin a bearing with compressed air.** Dry and unloaded it can run far past its speed and throw its rollers. Air against the skin can drive oil into the body.
# - **Presses and pullers** hold more force than you feel. Guard up, eye protection on, fingers out, nobody in line with the ram.
# - **Cord and drum.** Pull slowly and let the cord run off. Never wrap it round your hand: a turning gear does not let go.
#
# On this page nothing can break. Try things.

# %% [markdown]
# ## End play or preload
#
# A shaft sits between two bearings that face each other. If there is a little room left between them, the shaft can move lengthwise: **end play**. If they are pressed against each other, there is no room and the rings are squeezed: **preload**.
#
# Both lie on one scale: end play on one side of zero, preload on the other. A **shim** moves the setting along this scale.

# %% tags=["rig"]
bearing_section(main, bearings, shim_mm=shim.choose_for(main, bearings).total.m_as("mm"))

# %% [markdown]
# Here the case holds the two outer rings from outside. The shim, drawn to scale, is the thin filled strip at the right. A hundredth of a millimetre more or less decides how long the bearings live.

# %% [markdown]
# ## Which way does it work
#
# Look at the picture above.

# %% tags=["predict"]
lesson.predict("thicker-shim")

# %% [markdown] tags=["then"]
# Never learn the answer by heart. Ask two questions, at the ring that the shim touches:
#
# 1. Which way does a thicker shim push that ring?
# 2. Does that bring the ring **onto** its rollers, or **away** from them?
#
# Onto: tighter. Away: looser.

# %% tags=["then"]
given_table(
    "What a thicker shim does",
    ["arrangement and place of the shim", "a thicker shim"],
    [(placed(a, p), "tightens" if shim.shim_sign(a, p) > 0 else "loosens")
     for a, p in [("outer-rings-together", "behind-outer-ring"), ("outer-rings-together", "under-cover"),
                  ("outer-rings-together", "between-outer-rings"), ("inner-rings-together", "behind-inner-ring"),
                  ("inner-rings-together", "between-outer-rings"), ("inner-rings-together", "between-inner-rings")]],
)

# %% [markdown] tags=["then"]
# The same words, *between the outer rings*, stand twice with opposite answers. The arrangement decides.
#
# Below, a nut presses the inner rings together. A thicker spacer between them holds them **away** from their balls or rollers: looser.

# %% tags=["then"]
bearing_section(other, bearings, shim_mm=shim.choose_for(other, bearings).total.m_as("mm"))

# %% [markdown] tags=["then"]
# Get the sign wrong, and every “correction” takes you further from the target instead of nearer. That is why the sign is a must-pass in the exercise.

# %% [markdown]
# ## From the stack to the shim
#
# Measure every length between the seats. Lengths that fill the case count one way, the case itself the other. What is left is the gap.

# %% tags=["rig"]
stack = shim.Stack.from_support(main)
given_table(
    f"The stack: {main.name}",
    ["length", "measured, mm", "if it is longer, the pair is"],
    [(term.name, f"{term.length_mm:.2f}", "tighter" if term.sign > 0 else "looser") for term in stack.terms],
)

# %% tags=["predict"]
lesson.predict("gap-taken-up", right=f"{stack.shim_for(Q(0, 'mm')).m_as('mm'):.2f} mm")

# %% tags=["then"]
thin, thick = stack.window(*shim.target_interference(main))
target = f"{main.target.low_mm:.2f} to {main.target.high_mm:.2f} mm of {main.target.kind.replace('-', ' ')}"
given_table("From the gap to the shim", ["the shim", "mm"],
            [("takes up the gap: no play, no preload", f"{stack.shim_for(Q(0, 'mm')).m_as('mm'):.2f}"),
             (f"meets the target, {target}", f"{thin:.2f} to {thick:.2f}")])

# %% [markdown] tags=["then"]
# Subtract what fills the case from the case. Then go on by the target: here a thicker shim tightens, so preload is **added**, and end play would be subtracted.

# %% [markdown]
# ## The shelf has steps
#
# Shims are sold in steps. The line shows the setting that each of them gives.

# %% tags=["rig"]
shim_choice(main, bearings)

# %% [markdown]
# ## Choosing from the set
#
# The dashed lines are the target **less the uncertainty of your measurement** at both ends. That is the guard band. A shim inside the dashed lines meets the target even if your readings were off by all of that. Often more than one does: each is right.
#
# - A shim between dashed line and target edge is a gamble. Measure again, better.
# - Two thin shims may do what one cannot, where the maker allows two. Each face must be clean and flat.
# - If none is safe, the set **cannot reach**. Order the size. Never file a shim, never add a third, never pack with foil.

# %% tags=["rig"]
shim_choice(other, bearings)

# %% [markdown]
# The line slopes the other way: thicker loosens. Always draw which way the line goes before you pick.

# %% [markdown]
# ## What the measurement is worth
#
# No reading is exact. Three things blur it: the tool shows steps (its **resolution**), you do not repeat perfectly (**repeatability**), and the tool itself may be off (**calibration**).

# %% tags=["predict"]
lesson.predict("doubts-add")

# %% tags=["then"]
budget = shim.stack_budget(main)
given_table(
    f"Uncertainty in the shim, largest first: {main.name}",
    ["comes from", "adds, µm"],
    [(name, f"{1000 * u:.1f}") for name, u in list(budget.shares.items())[:6]],
)

# %% tags=["then"]
given_table("All of it together", ["combined, µm", "times about 2, µm", "meaning"],
            [(f"{1000 * budget.u:.1f}", f"{1000 * budget.expanded():.1f}",
              "95 times in 100 the true shim lies within this")])

# %% [markdown] tags=["then"]
# Uncertainties do not simply add: one reading is high, another low. Square each, add the squares, take the root; then double for 95 in 100.
#
# An error that two readings **share** does not even out, such as the error of the one gauge that measured both bearings. It counts twice.
#
# So improve the largest one first. Halving a small one changes next to nothing.

# %% [markdown]
# ## The trial fit
#
# The other way to find a shim: fit a thin one, read the end play, add what is missing. **End float** is another name for end play. Set the dial against the end of the shaft: pull, read, push, read. The **difference** is the float.

# %% tags=["predict"]
lesson.predict("first-reading")

# %% [markdown] tags=["then"]
# The thinnest shim is in. Read, then turn the shaft and read again.

# %% tags=["then"]
shim_bench(unit, main.id, trial=bearings.shim_set_by_id(main.shim_set).thicknesses_mm[:1])

# %% [markdown] tags=["then"]
# A taper roller rests on a **rib**, the shoulder at its thick end. Rollers that have not settled on it hide play that comes back later. Turn the shaft under hand load until the reading stays the same.
#
# Now set the plunger to *just touching* and to *one turn*. A plunger that leaves the shaft reads too little. Press it in by more than the float.
#
# Then fit the shim that was chosen above: the pointer stops moving. **A dial measures play. It cannot measure preload.**

# %% [markdown]
# ## Warm and cold
#
# The case is aluminium, the shaft is steel. Both get hot on the road.

# %% tags=["predict"]
lesson.predict("hot-unit")

# %% tags=["then"]
preload_when_warm(main, bearings, Q(0.08, "mm"))

# %% [markdown] tags=["then"]
# Try it too with the slider *Warm the unit* above. Three more things happen. The bore grows and lets go of the outer ring, which loosens. The inner ring gets hotter than the outer and swells towards its rollers, which tightens. In both directions, along **and** across, the case has the larger effect.
#
# Where the inner rings are pressed together, the growth of the case works the other way, and the result changes its sign:

# %% tags=["then"]
change = {pair.name: bearing.support_change(pair, bearings) for pair in pairs}
given_table(
    "What heat does, µm; above zero tightens",
    ["support", "case", "shaft", "outer rings and bore", "inner rings", "rollers and widths", "all"],
    [(name, *(f"{x:+.0f}" for x in (c.case_um, c.shaft_um, c.outer_raceways_um, c.inner_raceways_um,
      c.rollers_um + c.ring_widths_um, c.total.m_as("um")))) for name, c in change.items()],
)

# %% [markdown] tags=["then"]
# So a cold figure belongs to **one** unit and **one** temperature. The maker's cold target already allows for heat: set to it at bench temperature and add nothing of your own. Never set a pair that is still warm from the oven.

# %% [markdown]
# ## Pull on a cord
#
# Preload is felt as turning torque. Wind a cord round a drum or gear. Pull it with a spring scale, slowly and evenly, and read **while it turns**, not at the first jerk.
#
# torque = pull × radius

# %% tags=["predict"]
lesson.predict("twice-radius")

# %% tags=["then"]
cord_bench(unit, main.id, setting_mm=0.08)

# %% [markdown] tags=["then"]
# A pull without its radius means nothing.
#
# Now tick *with the seals*, then *with the other shaft*. The scale rises and the preload has not changed. So always say **what is turned**: bearings alone, with seals, with the whole train. Take off what the rest needs before you judge the bearings. And turn first: rollers off their rib do not rub, and the scale reads too little.

# %% [markdown]
# ## Too much, too little

# %% tags=["predict"]
lesson.predict("loose-or-tight")

# %% tags=["then"]
import numpy as np

loads = tuple(Q(load, "N") for load in main.radial_load_n)
curve = bearing.life_against_setting(bearing.Pair.from_support(main, bearings), Q(np.linspace(-0.15, 0.12, 82), "mm"),
                                     loads, Q(main.axial_load_n, "N"), Q(main.speed_rpm, "rpm"))
life_over_setting(curve, f"{main.name} at its running setting")

# %% [markdown] tags=["then"]
# A little preload shares the load among more rollers, and life rises. Past the best point it falls steeply, because the bearings now work against each other. The scale is the setting **when it runs**: the cold preload is larger, since heat takes some away.
#
# Life here is what nine of ten such pairs reach, called L10. The dash-dotted line is the short calculation of bearing catalogues with their factors e and Y, for comparison.
#
# - **Too much:** hot bearing, blue or brown raceways, a high pull on the cord, early pitting.
# - **Too little:** gears move along their shafts, the noise changes between pull (under power) and overrun, teeth wear at one end, seals weep.

# %% [markdown]
# ## Before it runs
#
# 1. A shim was changed? Seat, measure and pull the cord **again**. What you worked out is not yet what is in the unit.
# 2. The reading moved the wrong way? Stop. The sign is wrong. Take it apart before anything turns under power.
# 3. Write down shim, reading, pull, radius, what was turned, and the temperature. A figure without these cannot be checked by anybody.

# %% [markdown]
# ## Work it out
#
# Each calculation comes three times: worked, with steps left out, and on your own. Then go on with fresh readings as often as you like. You are told at once what is right, and which mistake a wrong figure looks like. Nothing here is marked.

# %% tags=["rig"]
lesson.calculation("stack")

# %% tags=["rig"]
lesson.calculation("shim-changed")

# %% tags=["rig"]
lesson.calculation("trial-fit")

# %% tags=["rig"]
lesson.calculation("stack-uncertainty")

# %% tags=["rig"]
lesson.calculation("cord")

# %% tags=["rig"]
lesson.calculation("cold-to-warm")

# %% tags=["rig"]
lesson.calculation("life-compared")

# %% [markdown]
# ## How you are marked
#
# Where an answer builds on an earlier one, a mistake costs marks once. A shim is right if it meets the target with the guard band; several may be. The direction of the shim, the check after a change, and the cautions are **must-pass**. What you do where no shim fits, what the cord says of a shim, and what heat does to a pair decide their outcomes. One line wrong there, and the outcome is not met.
#
# Now open the exercise from **start-here**.

# %% [markdown]
# <details>
# <summary>Where the rules and figures come from</summary>
#
# - Uncertainty of a measurement: JCGM 100:2008 (GUM); guard band: ISO 14253-1 and JCGM 106:2012.
# - Springs and torque of taper rollers: NSK catalogue E1102m, pp. A134–A135; ball bearing torque as remembered, not looked up again.
# - Life: ISO 281; load zone: NSK catalogue E728g, section 5.
# - That an aluminium case takes preload away when hot: SAE 910799 and EP 0448239 A3 (abstracts).
# - Turning the rollers home, the slow even pull, the signs of too much and too little: common practice, no source.
#
# </details>
