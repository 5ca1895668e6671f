# %% [markdown]
# # Close out
#
# <div class="twoshaft-if-missing">If no pictures appear below: press <b>Run</b>, then <b>Run All Cells</b>.</div>
#
# **After this lesson you can** fill a unit with the right oil, prove it tight, hand it over, and find your way from a complaint to its cause.
#
# **Time:** 35 to 40 minutes. **What passing proves:** that a unit leaves your hands right, and that the next mechanic knows what you did.
#
# *Invented unit, for teaching. On a real unit the maker's manual, local codes and licensed practice decide.*

# %% tags=["setup"]
from twoshaft.models import closeout
from twoshaft.plots.closing import oil_chart
from twoshaft.plots.tables import given_table
from twoshaft.practice import open_lesson
from twoshaft.rigs import breather_rig, leak_rig, oil_chart_rig, road_rig
from twoshaft.rigs import unit_section
from twoshaft.units.quantities import Q

lesson = open_lesson("close-out")
unit = lesson.unit
asked, oil = unit.close_out, unit.strip.oil

# %% [markdown]
# ## From earlier lessons

# %% tags=["rig"]
lesson.asked_again()

# %% [markdown]
# ## Before you start
#
# - Hot oil and hot metal burn. Let a unit cool, or cover arm and face, before you open a plug.
# - Compressed air in a case stores force. Use a pressure regulator and a relief valve. Never loosen a plug under pressure. Keep your ear away from the seals.
# - Never work under a vehicle that stands on a jack alone. Use stands and a level floor, and block the wheels.
# - Support the unit until every flange bolt is in.
# - Handle oil as its safety data sheet says, with gloves. Wipe up spills at once.
#
# On this page nothing can break. Try things.

# %% [markdown]
# ## Oil by its grade
#
# A label such as 75W-85 GL-4 has three parts: two figures for how thick the oil is, and a service.

# %% tags=["predict"]
lesson.predict("grade-on-label")

# %% tags=["then"]
given_table("Grades of SAE J306", ["behind the W, or alone", "at 100 °C, mm²/s"],
            [(one.name, f"{one.least:g} to below {one.below:g}" if one.below < 1000 else f"{one.least:g} and above") for one in closeout.HOT_GRADES])

# %% tags=["then"]
given_table("Winter grades of SAE J306", ["with the W", "must still flow at, °C"], list(closeout.WINTER_C.items()))

# %% [markdown] tags=["then"]
# “Still flows” means 150 000 mPa·s at most, about as stiff as cold honey.

# %% [markdown]
# ## What this unit needs
#
# The unit file names the oil and the temperatures that it must work at.

# %% tags=["rig"]
given_table("This unit asks for", ["what", "value"],
            [("oil", f"{asked.oil.grade} {asked.oil.service}"),
             ("coldest start, °C", f"{asked.oil.coldest_c:g}"),
             ("at its hottest", f"at least {asked.oil.thinnest_mm2_per_s:g} mm²/s at {asked.oil.hottest_c:g} °C")])

# %% [markdown]
# ## Between the figures
#
# A data sheet gives two viscosities, at 40 °C and at 100 °C.

# %% tags=["predict"]
lesson.predict("twice-as-thin")

# %% tags=["then"]
oil_chart([("U", *oil.viscosity_mm2_per_s)], 70)

# %% [markdown] tags=["then"]
# On the scale of ASTM D341 each oil is a straight line. So from two figures you can read all the others. U is the unit's own oil.
#
# Compare another oil with it. Where is it too thick, where too thin?

# %% tags=["then"]
oil_chart_rig(unit)

# %% [markdown]
# ## The service
#
# The GL figure of API 1560 says which gears an oil is made for.

# %% tags=["predict"]
lesson.predict("service-five")

# %% [markdown] tags=["then"]
# **GL-5** has about twice as much sulphur and phosphorus as **GL-4**. They protect the teeth of hypoid axles, but they can attack brass. Used oil then holds two to four times as much copper.
#
# A GL figure says nothing about synchroniser rings. Look for the word *synchronisers* on the label, or ask the maker.

# %% [markdown] needs="ring-work"
# ## Why the wrong oil eats a ring
#
# A synchroniser ring (baulk ring, blocker ring) is a small cone brake. It needs friction.

# %% tags=["predict"]
lesson.predict("half-friction")

# %% tags=["then"]
work = asked.ring
radians_s, cone = Q(work.speed_change_rpm, "rpm").to("rad/s"), Q(70, "mm")
paths = [(torque, closeout.slide(Q(work.inertia_kg_m2, "kg*m**2"), radians_s, Q(torque, "N*m"), Q(drag, "N*m"), cone), drag)
         for torque, drag in ((20, 0), (15, 0), (10, 0), (20, 8), (20, 16))]
given_table("One shift down, cone of 70 mm", ["torque of the cone, N·m", "drag of the oil, N·m", "the ring slides, mm"],
            [(f"{torque}", f"{drag}", f"{path.m_as('mm'):.0f}") for torque, path, drag in paths])

# %% [markdown] tags=["then"]
# Wear grows with force times distance. With oil for a limited-slip axle, which is made to be slippery, the ring slides farther at every shift. Step by step:
#
# - torque = force × friction × mean diameter ÷ (2 × sin of the half angle)
# - time = inertia × difference of speed ÷ torque
# - distance = half the difference of speed × time × half the diameter

# %% tags=["predict"]
lesson.predict("cold-drag")

# %% [markdown] tags=["then"]
# Thick oil drags on the gears. In a shift down the drag works against the cone. If the drag is as strong as the cone, the speeds never become equal, and the gear grates.

# %% [markdown]
# ## How much, and up to where
#
# The filling is stated for cold oil. Your can may be colder or warmer.

# %% tags=["predict"]
lesson.predict("warm-can")

# %% tags=["then"]
given_table(f"{oil.capacity_litre:g} l at {oil.reference_c:g} °C, which are {closeout.kilograms_to_fill(oil):.2f} kg", ["oil in the can, °C", "litres from the can"],
            [(f"{c}", f"{closeout.litres_to_fill(oil, Q(c, 'degC')).m_as('l'):.3f}") for c in (0, 10, 20, 30, 40)])

# %% [markdown] tags=["then"]
# The weight stays the same at every temperature. If you weigh the oil, you need no calculation.

# %% [markdown]
# ## The level
#
# The level is right at the lower edge of the plug hole, if the unit is cold and stands level.

# %% tags=["predict"]
lesson.predict("slope-of-yard")

# %% tags=["then"]
given_table("What shifts the level, with the right filling", ["what", "mm"],
            [(f"slope of {slope}°, plug side high", f"−{closeout.level_error(Q(asked.level.reach_mm, 'mm'), Q(slope, 'degree')).m:.1f}") for slope in (1, 2, 4)]
            + [(f"oil of {c} °C", f"+{(closeout.litres_to_fill(oil, Q(c, 'degC')).m - oil.capacity_litre) / asked.level.litre_per_mm:.1f}") for c in (50, 80)])

# %% [markdown] tags=["then"]
# So check the floor first, then the temperature, then the level. With too little oil the upper bearings run dry. With too much, the gears beat it to foam and it comes out of the breather.

# %% [markdown]
# ## The breather
#
# The breather is a small cap that lets warm air out and cold air in. Mud or paint can block it.

# %% tags=["predict"]
lesson.predict("blocked-at-twenty")

# %% tags=["then"]
breather_rig(unit)

# %% [markdown] tags=["then"]
# In closed air, pressure ÷ temperature stays the same. Count the pressure from vacuum, and the temperature from absolute zero: 0 °C is 273 K. Oil expands as well, and leaves the air less room.
#
# A shaft seal holds only a little pressure: some makers say 0.2 bar at high speed, 0.5 bar at low speed.

# %% [markdown]
# ## Water through the breather
#
# Find the oil plugs in this unit, and the breather if it is drawn as a part of its own.

# %% tags=["rig"]
unit_section(unit)

# %% tags=["predict"]
lesson.predict("hot-into-ford")

# %% [markdown] tags=["then"]
# Grey, milky oil has water in it. The lip of a seal keeps oil in, but it does not keep water out well. So lead the hose of the breather upwards, above the water that the vehicle may cross.

# %% [markdown] needs="leak-test"
# ## The leak test
#
# With no oil in the unit, close its breather hole and let in a little air. Shut the valve, and read the gauge twice, some minutes apart.

# %% tags=["predict"]
lesson.predict("gauge-falls")

# %% [markdown] tags=["then"]
# A change of one kelvin moves the gauge as much as a small leak. So read the temperature as well, and correct for it:
#
# - pressure of one kelvin = pressure from vacuum ÷ temperature from absolute zero
# - pressure lost = fall of the gauge + kelvins that the air became warmer × pressure of one kelvin
# - leak = litres × pressure lost ÷ (minutes × pressure outside)

# %% tags=["predict"]
lesson.predict("warmer-hides")

# %% tags=["then"]
leak_rig(unit)

# %% [markdown] tags=["then"]
# A leak near its limit proves nothing: keep away from the limit by the guard band, 1.65 standard uncertainties. A longer test makes the band narrower. Soapy water shows the place.
#
# Never use more pressure than the seals can hold. Let the air out before anybody touches a plug.

# %% [markdown]
# ## Back into the vehicle
#
# This course only describes the job. The manual of the vehicle has the order.

# %% tags=["predict"]
lesson.predict("drive-shaft-lip")

# %% tags=["then"]
given_table("When it is done", ["when", "what, for example"],
            [("before the unit is lifted", "centre the clutch plate, clean the dowels, grease the splines thinly, try the release bearing"),
             ("while it is brought up", "support it with a jack, turn a shaft until the splines go into the plate, close the gap by hand, protect the lip"),
             ("joined, before it is driven", "level, linkage, breather hose, clutch line"),
             ("on the road, or after", "each gear under load and with the foot off the pedal, joints and level once more")])

# %% [markdown] tags=["then"]
# If the flange does not close by hand, do not pull it in with its bolts. The shaft is not in its splines, and the case would crack.

# %% [markdown]
# ## A record to trust
#
# In two years somebody opens this unit again. They have only what you wrote.

# %% tags=["predict"]
lesson.predict("record-good")

# %% tags=["then"]
given_table("A line that can be trusted", ["it says", "for example"],
            [("when and who", "14 May, KT"),
             ("what, with its figure and unit", "shim 1.35 mm, mean of three"),
             ("with which tool", "micrometer no. 3"),
             ("what was tried, and no more", "no drop in 20 minutes at 150 mbar")])

# %% [markdown]
# ## The hand-over
#
# Tell the owner what you did, what is new, what they must look after, and what else you saw.

# %% tags=["predict"]
lesson.predict("drop-at-handover")

# %% tags=["then"]
given_table("Before the key goes back", ["what you know", "what you do"],
            [("everything was tried, and everything works", "hand it over"),
             ("it works, and the owner must look after something", "hand it over, tell the owner and write it down"),
             ("it leaks, jumps out, or nobody knows why", "keep it and find the cause"),
             ("it would cost more than was agreed", "stop and ask, before more is done")])

# %% [markdown]
# ## From complaint to cause
#
# A driver says what is wrong. Before you open anything, try on the road what separates the causes.

# %% tags=["predict"]
lesson.predict("noise-pedal")

# %% [markdown] tags=["then"]
# Enter the result of each test. Causes that do not fit disappear. Look at those that are left first.

# %% tags=["then"]
road_rig("noise")

# %% [markdown] tags=["then"]
# The best next test is one that finds some of the causes and not the others. A test that finds all of them, or none, does not help.

# %% [markdown]
# ## A complaint about shifting
#
# The same for a gear that is hard to engage, or that does not stay in. Find one cause with as few tests as you can.

# %% tags=["rig"]
road_rig("shift")

# %% [markdown]
# ## Practise the calculations
#
# Each calculation comes three times: worked, with steps left out, and on your own. Then go on with fresh readings as often as you like. You are told at once what is right, and which mistake a wrong figure looks like. Nothing here is marked.

# %% tags=["rig"]
lesson.calculation("ring-slides")

# %% tags=["rig"]
lesson.calculation("filling")

# %% tags=["rig"]
lesson.calculation("level")

# %% tags=["rig"]
lesson.calculation("blocked-breather")

# %% tags=["rig"]
lesson.calculation("leak-test")

# %% [markdown]
# ## How you are marked
#
# Oil, level, leak test, hand-over and dangers are **must-pass**: each line of those questions has to be right. Where an answer builds on an earlier one, a mistake costs marks once.
#
# Now open the exercise from **start-here**.

# %% [markdown]
# <details>
# <summary>Where the rules and figures come from</summary>
#
# - Grades: SAE J306, February 2019, as printed at pmlubrication.com.au/charts. Viscosity over temperature: ASTM D341.
# - GL-4, GL-5, sulphur and copper: machinerylubrication.com, article 30366; R. Widman, “The Difference Between GL-4 and GL-5 Gear Oils”. Services: API 1560.
# - Cone torque: Shigley, eq. 16-45. Wear by distance: Archard 1953 (as remembered, not looked up again).
# - Seals: ddsseals.com, “Permissible shaft pressure”. Closed air: ideal gas. Leak: 40 CFR 1065.644 has the same sum.
# - Levels, joining, record, hand-over, road tests: common practice, no source.
#
# </details>
