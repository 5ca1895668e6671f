# %% [markdown]
# # Inspect and decide
#
# <div class="twoshaft-if-missing">If no pictures appear below: press <b>Run</b>, then <b>Run All Cells</b>.</div>
#
# **After this lesson you can** name damage as the standards do, compare a reading with its limit, and decide what is used again.
#
# **Time:** 30 to 40 minutes. **What passing proves:** that no worn part goes back into a unit, and no good one into the bin.
#
# *Invented unit, for teaching. On a real unit the maker's manual, local codes and licensed practice decide.*

# %% tags=["setup"]
from twoshaft.models import inspect
from twoshaft.models.order import OrderTask
from twoshaft.plots.damage import dog_picture, flank_picture, lettered, race_picture
from twoshaft.plots.tables import given_table
from twoshaft.practice import open_lesson
from twoshaft.rigs import guard_rig, lamp, order_bench
from twoshaft.units.quantities import Q

lesson = open_lesson("inspect-and-decide")
unit = lesson.unit
limits = unit.inspect

# %% [markdown]
# ## From earlier lessons

# %% tags=["rig"]
lesson.asked_again()

# %% [markdown]
# ## Before you start
#
# - Drills, taps and hammers throw chips. Springs and circlips fly off. Wear eye protection; everybody who stands near wears it too.
# - Clamp what you drill. No gloves and no loose cuffs at a drill.
# - Never blow compressed air against skin, into a blind hole or onto a bearing.
# - Never spin a dry bearing. Oil it, and turn it slowly by hand.
# - Use solvent as its safety data sheet says: gloves, fresh air, no heat or spark near it.
#
# On this page nothing can break. Try things.

# %% [markdown]
# ## Six groups of damage
#
# ISO 15243 sorts damage of rolling bearings into six groups: fatigue, wear, corrosion, electrical erosion, plastic deformation, cracks and fracture. The name tells you where to look for the cause.

# %% tags=["predict"]
lesson.predict("dents-and-hollows")

# %% tags=["then"]
lettered([("False brinelling", race_picture(inspect.marks_of("false", 3, 20, seed=4))),
          ("Overload deformation", race_picture(inspect.marks_of("overload", 3, 20, seed=4)))])

# %% [markdown] tags=["then"]
# In both, the marks lie as far apart as the balls. **False brinelling** rubs metal away while the bearing stands still and shakes: red-brown, no edge. An **overload** pushes metal aside: an edge stands up, and the ground finish is still in the dent. So the first bearing was shaken at rest. The second was pressed on through its balls, or took a blow.
#
# Put other damage under the lamp. Change its size and place. Which signs stay?

# %% tags=["then"]
lamp("race")

# %% [markdown] tags=["then"]
# Renew a bearing with any of these. The name shows you which cause to look for. If the cause stays, the next bearing fails in the same way.

# %% [markdown]
# ## Teeth of gears
#
# ISO 10825-1 names the damage of gear teeth. Look where on the tooth it lies. At the pitch line the teeth roll; above and below it they slide.

# %% tags=["predict"]
lesson.predict("scores-at-pitch-line")

# %% tags=["then"]
lamp("flank")

# %% [markdown] tags=["then"]
# **Scuffing** leaves the pitch line free, because nothing slides there. A single piece of grit scratches across the pitch line too.
#
# **Pits** have a size. Read where the largest pit begins and ends on the scale, and subtract.

# %% [markdown] needs="dog-teeth"
# ## Dog teeth
#
# The chamfers of the dog teeth steer the sleeve in. Where they are worn, a flat is left at the point.

# %% tags=["predict"]
lesson.predict("broken-corner")

# %% tags=["then"]
lettered([("Sharp enough, worn out, corner gone", dog_picture((0.4, 1.2, 0.4, 0.5), (0, 0, 1.6, 0), (0.4, 0.2, 0.8, 0.6)))])

# %% [markdown] tags=["then"]
# Two rules decide. If a **corner is broken off**, renew the gear, whatever the flats are: half a point steers the sleeve to one side. Otherwise compare the **widest flat** with its limit. Near the limit, read it with a magnifier.

# %% [markdown] needs="synchroniser"
# ## Teeth of sleeve and hub
#
# The teeth of the sleeve have points too. They find the gaps between the dog teeth. The sleeve slides on the splines of the hub.

# %% tags=["predict"]
lesson.predict("round-points")

# %% tags=["then"]
lamp("sleeve")

# %% tags=["then"]
lamp("hub")

# %% [markdown] tags=["then"]
# Read where the widest flat or notch begins and ends, and subtract. A **notch** in the splines of the hub holds the sleeve back, so the change feels hard. These limits are invented; the maker's sheet decides.

# %% [markdown] needs="synchroniser"
# ## Keys and fork pads
#
# The ridge of a **key** sits in a groove of the sleeve and takes the ring along. The **pads** of a fork push the sleeve.

# %% tags=["predict"]
lesson.predict("one-pad-thin")

# %% tags=["then"]
lamp("key")

# %% tags=["then"]
lamp("fork")

# %% [markdown] tags=["then"]
# Compare the two pads with each other before you compare them with the limit. If both are worn alike, the fork worked squarely for a long time. If one is thinner, look for the cause: a bent fork or a hub that moved.

# %% [markdown] needs="detent"
# ## Detent springs
#
# A spring that was pressed together for years can stay shorter. This is called **set**.

# %% tags=["predict"]
lesson.predict("spring-by-eye")

# %% tags=["then"]
lamp("spring")

# %% [markdown] tags=["then"]
# Measure the free length, and compare all springs of the same kind. If a coil is broken, look for the piece before you close the unit.

# %% [markdown]
# ## What a reading proves
#
# A reading is not the size itself. It lies near the size, within its uncertainty.

# %% tags=["predict"]
lesson.predict("at-the-limit")

# %% [markdown] tags=["then"]
# So keep away from the limit by a **guard band** (ISO 14253-1). With a band of 1.65 standard uncertainties, a part at its edge is bad in one of twenty cases. Inside the band a reading proves nothing, neither good nor bad.

# %% tags=["then"]
guard_rig()

# %% [markdown]
# ## How wide a band
#
# Many worn pads are measured. Most lie about 0.12 mm above their limit, and each reading has a standard uncertainty of 0.03 mm.

# %% tags=["predict"]
lesson.predict("wider-band")

# %% tags=["then"]
shares = [(guard, inspect.shares_wrong(Q(5.12, "mm"), Q(0.1, "mm"), Q(5, "mm"), Q(0.03, "mm"), Q(guard, "mm"))) for guard in (0.0, 0.03, 0.05, 0.08)]
given_table("Decided wrongly, of 1000 parts", ["guard band, mm", "bad ones used again", "good ones renewed"],
            [(f"{guard:.2f}", f"{1000 * bad:.0f}", f"{1000 * good:.0f}") for guard, (bad, good) in shares])

# %% [markdown]
# ## Measure four times
#
# The mean of several readings has a smaller uncertainty than one reading. The mean of four has half of it: standard uncertainty of the mean of four = that of one reading ÷ 2.

# %% tags=["predict"]
lesson.predict("four-readings")

# %% tags=["then"]
given_table("One reading and four, for the sizes of this unit", ["size", "limit, mm", "guard band of one, mm", "of four, mm"],
            [(one.name, f"{one.limit_mm:g}", f"{inspect.guard_band(Q(one.tool_mm, 'mm')).m:.3f}",
              f"{inspect.guard_band(inspect.mean_uncertainty(Q(one.tool_mm, 'mm'), 4)).m:.3f}") for one in limits.limits])

# %% [markdown]
# ## What it costs to be wrong
#
# There are two mistakes. You renew a good part: you pay for the part. You use a bad part: you strip the unit again.

# %% tags=["predict"]
lesson.predict("cheap-part")

# %% tags=["then"]
costs = limits.costs
ways = [(f"{bad} %", *(f"{hours:.1f}" for hours in inspect.ways_cost(bad / 100, costs.renew_hours, costs.again_hours, 0.5).values()))
        for bad in (1, 5, 10, 30, 60, 90)]
given_table(f"Renewing {costs.renew_hours:g} h, stripping again {costs.again_hours:g} h, a sure measurement 0.5 h",
            ["chance that it is bad", "use it, h", "renew it, h", "measure first, h"], ways)

# %% [markdown] tags=["then"]
# Using the part costs, on average, the chance that it is bad × the hours of stripping again. Renewing costs its hours in every case. Measuring first costs its own hours, and the renewal only if the part is bad. Take the smallest. If somebody could be hurt, do not work with averages: renew the part.

# %% [markdown] needs="selective-circlip"
# ## End float and circlip
#
# A selective circlip sets the end float of a gear on its shaft.

# %% tags=["predict"]
lesson.predict("next-circlip")

# %% tags=["then"]
one = limits.circlips[0]
given_table(f"End float found 0.35 mm with a circlip of {one.thickness_mm[0]:.2f} mm", ["circlip, mm", "end float then, mm"],
            [(f"{size:.2f}", f"{inspect.float_with(Q(0.35, 'mm'), Q(one.thickness_mm[0], 'mm'), Q(size, 'mm')).m:.2f}") for size in one.thickness_mm])

# %% [markdown] tags=["then"]
# If the thickest circlip still leaves too much float, the fault is not the circlip: a face is worn. Find it.

# %% [markdown]
# ## Where rings sat
#
# A bearing ring that **crept** has turned slowly in its seat. The seat is then polished or red-brown.

# %% tags=["predict"]
lesson.predict("ring-or-bore")

# %% [markdown] tags=["then"]
# Measure both. If the ring is too small, a new bearing helps. If the bore is too large, a new bearing creeps again.

# %% [markdown]
# ## A gear on needles
#
# A gear on a needle bearing has a needle on each side of the shaft.

# %% tags=["predict"]
lesson.predict("needles-twice")

# %% tags=["then"]
bores = [(38.03, 32.0, 3.0), (38.05, 31.98, 3.0), (37.04, 32.0, 2.5)]
given_table("Play = bore of the gear − shaft − two needles", ["bore", "shaft", "needle", "play, mm"],
            [(f"{b:.2f}", f"{s:.2f}", f"{n:.1f}", f"{inspect.needle_play(Q(b, 'mm'), Q(s, 'mm'), Q(n, 'mm')).m:.2f}") for b, s, n in bores])

# %% [markdown] needs="seal-track"
# ## The shaft at the seal
#
# The lip of a seal can wear a groove into the shaft. Measure the shaft beside the groove and in it.

# %% tags=["predict"]
lesson.predict("groove-depth")

# %% tags=["then"]
given_table(f"A new lip seals over {limits.seal.groove_most_mm:g} mm, a sleeve bridges {limits.seal.sleeve_most_mm:g} mm", ["beside the groove", "in it", "depth, mm"],
            [(f"{limits.seal.diameter_mm:.2f}", f"{limits.seal.diameter_mm - lost:.2f}",
              f"{inspect.groove_depth(Q(limits.seal.diameter_mm, 'mm'), Q(limits.seal.diameter_mm - lost, 'mm')).m:.2f}") for lost in (0.06, 0.2, 0.7)])

# %% [markdown]
# ## Repair a thread
#
# A stripped thread in aluminium can be repaired with a wire insert. First look up whether the maker allows it there.

# %% tags=["predict"]
lesson.predict("before-the-drill")

# %% [markdown] tags=["then"]
# Put these steps in order. Beside each step you see what its place leads to.

# %% tags=["then"]
repairs = inspect.load_repairs()
order_bench(repairs, OrderTask.from_unit(repairs).steps[4:13])

# %% [markdown]
# ## Part by part
#
# For every part there are four answers: use it, renew it, dress it, or look again.

# %% tags=["predict"]
lesson.predict("bent-fork")

# %% tags=["then"]
given_table("What becomes of a part", ["what you find", "what you do"],
            [("inside its limit by more than the guard band", "use it again"),
             ("beyond its limit, bent, or round at its points", "renew it"),
             ("raised metal only: a burr, a pushed-in first turn", "dress it with a fine stone or file"),
             ("no limit at hand, dirty, warm, or too near the limit", "look again")])

# %% [markdown]
# ## Practise the calculations
#
# Each calculation comes three times: worked, with steps left out, and on your own. Then go on with fresh readings as often as you like. You are told at once what is right, and which mistake a wrong figure looks like. Nothing here is marked.

# %% tags=["rig"]
lesson.calculation("guard-band")

# %% tags=["rig"]
lesson.calculation("cost-of-errors")

# %% tags=["rig"]
lesson.calculation("circlip")

# %% tags=["rig"]
lesson.calculation("seat-and-needles")

# %% tags=["rig"]
lesson.calculation("groove")

# %% [markdown]
# ## How you are marked
#
# Dog teeth, what a mean proves, circlips, seats, shafts, parts and dangers are **must-pass**: each line of those questions has to be right. Where an answer builds on an earlier one, a mistake costs marks once.
#
# Now open the exercise from **start-here**.

# %% [markdown]
# <details>
# <summary>Where the rules and figures come from</summary>
#
# - Names of bearing damage: ISO 15243:2017; of gear damage: ISO 10825-1:2022. How each is recognised is in our own words.
# - Guard band: ISO 14253-1:2017 (as remembered, not looked up again). Chances and shares: JCGM 106:2012, checked on its example and others.
# - Mean of readings: JCGM 100:2008, 4.2.3.
# - Thread repair, dressing, creep and grooves: common practice, no source.
#
# </details>
