# %% [markdown]
# # Pressed and driven parts
#
# <div class="twoshaft-if-missing">If no pictures appear below: press <b>Run</b>, then <b>Run All Cells</b>.</div>
#
# **After this lesson you can**
#
# - read a fit, and say what force or heat it needs
# - press on the right ring
# - judge a seal by its depth and lean
# - choose spring and taper pins
# - fit a circlip the right way round
#
# **Time:** 30 to 40 minutes. **What passing proves:** that you can plan a fitting job on paper and say when to stop.
#
# *Invented unit, for teaching. On a real unit the maker's manual, local codes and licensed practice decide.*

# %% tags=["setup"]
from twoshaft.models import fit
from twoshaft.plots.driven_section import driven_section
from twoshaft.plots.fit import force_when_cold, play_when_warm
from twoshaft.plots.pin_section import spring_pin_section, taper_pin_section
from twoshaft.plots.seal_section import seal_section
from twoshaft.plots.tables import given_table
from twoshaft.practice import open_lesson
from twoshaft.rigs import press_rig, seal_seat
from twoshaft.units.quantities import Q

lesson = open_lesson("pressed-and-driven")
unit = lesson.unit
INNER, OUTER = frozenset({fit.Ring.INNER}), frozenset({fit.Ring.OUTER})
warmed = fit.Pressed.of(unit, min(unit.fits.presses, key=lambda entry: entry.warm != "hub").id)

# %% [markdown]
# ## From earlier lessons

# %% tags=["rig"]
lesson.asked_again()

# %% [markdown]
# ## Before you start
#
# - **Presses** hold more force than you feel. Guard shut, hands out, nobody in line. If a ring tilts: load off first.
# - **Anything struck** can splinter: eye protection, a punch that fits, a brass or soft-faced hammer on hardened parts.
# - **Circlips and springs** fly. Eye protection, pliers that fit, a cloth over the clip.
# - **Hot and very cold parts** look like any other. Dry gloves, path clear, say it aloud. Keep brake cleaner far from heat.
#
# On this page nothing can break. Try things.

# %% [markdown]
# ## Read a fit
#
# A fit names a hole and a shaft of one nominal size: **H7/p6**. Each stands for a **zone**: the sizes that are allowed. The letter says where the zone lies, the figure how wide it is. Capitals are holes. A µm is a thousandth of a millimetre.
#
# By how much the shaft is larger than its hole is the **interference**, or for short the *grip*.

# %% tags=["predict"]
lesson.predict("always-tight")

# %% tags=["then"]
names = ("H7/g6", "H7/k6", "H7/p6")
fits = [fit.fit(Q(50, "mm"), name) for name in names]
given_table(
    "50 mm: limits in µm from the nominal size; below zero is play",
    ["fit", "hole", "shaft", "least interference", "most interference", "kind"],
    [(name, f"{f.hole.lower_um:+g} to {f.hole.upper_um:+g}", f"{f.shaft.lower_um:+g} to {f.shaft.upper_um:+g}",
      f"{f.least_um:+g}", f"{f.most_um:+g}", f.kind) for name, f in zip(names, fits, strict=True)],
)

# %% [markdown] tags=["then"]
# 50 H7/k6 may have 23 µm of play or 18 µm of grip. A **transition** fit must be measured before you choose a driver.
#
# - Tightest pair: largest shaft in the smallest hole.
# - Loosest pair: smallest shaft in the largest hole.

# %% [markdown]
# ## Force of the press
#
# The grip makes a pressure in the seat. Friction turns the pressure into the force you need:
#
# force = π × diameter × length × pressure × friction

# %% tags=["predict"]
lesson.predict("twice-as-tight")

# %% tags=["then"]
force_when_cold(warmed)

# %% [markdown] tags=["then"]
# Dry or oiled makes nearly as much difference as twice the grip. So you never know **one** force, but a range. Work it out first: a gauge helps you only if you know what to expect.
#
# Much more than the range: tilt, burr, dirt, wrong part. Stop. Much less: worn or wrong part. Take it out.

# %% [markdown] tags=["then"]
# Push the part home, loosest and tightest, oiled and dry. Then let the driver press on the other ring and look where the force goes.

# %% tags=["then"]
press_rig(unit)

# %% [markdown]
# ## Where the driver presses

# %% tags=["predict"]
lesson.predict("wrong-ring")

# %% tags=["then"]
driven_section(INNER, OUTER, shaft=False)

# %% [markdown] tags=["then"]
# Each ball leaves a dent in the raceways. You cannot see it, and the bearing rumbles from the first drive.

# %% tags=["then"]
driven_section(OUTER, OUTER, shaft=False)

# %% [markdown] tags=["then"]
# **Press only on the ring whose seat is tight.**

# %% [markdown]
# ## Both seats at once
#
# If both seats grip at once, press on both rings at once, with a flat plate or a stepped sleeve:

# %% tags=["rig"]
driven_section(fit.BOTH, fit.BOTH)

# %% [markdown]
# ## Square and home
#
# - **Which side up:** look it up before you oil the bearing. The wide end of a cup opens towards its rollers. The end of the bore with the chamfer goes on first.
# - **Square:** chamfer first, seat clean and lightly oiled. Support the shaft under its own end, never under a gear or the other bearing.
# - **Home:** the force jumps, the sound turns dull, and **no feeler goes under the ring anywhere**.

# %% [markdown]
# ## Warm the part
#
# Warm the outer part and it grows:
#
# growth = diameter × growth of a metre for each degree × rise
#
# For 1 K a metre of cast aluminium grows by 21.5 µm, of shaft steel by 11.5 µm, of hardened bearing steel by 10.9 µm. Hardening changes the steel, so a bearing has a figure of its own: take the figure of the part that you warm.
#
# Add the rise to the temperature of the room, and about 25 degrees more, because the part cools between oven and seat. A rise is given in K (kelvin): one K is a step of one °C.

# %% tags=["predict"]
lesson.predict("freed-by-heat")

# %% tags=["then"] needs="warmed-press"
play_when_warm(warmed)

# %% [markdown]
# ## How warm it may get
#
# Keep these limits, whatever the sum says:
#
# - Rolling bearings about **120 °C** at most; sealed or greased ones about **80 °C**. The maker's figure wins.
# - **Never a flame.** It heats one spot, softens hardened steel, and you cannot read its temperature. Use an oven, a plate or an induction heater, with a thermometer.
# - **Seals out first.** Rubber cannot take the heat that the case takes.
# - If the limit is too low to free the part, cool the inner part as well. Do not go over the limit.

# %% tags=["rig"]
given_table(
    "A ball bearing with 30 µm of grip on 40 mm, room 20 °C",
    ["bearing", "just free at, °C", "warm to, °C", "limit, °C", "within the limit?"],
    [(name, f"{w.free_c:.0f}", f"{w.heat_to_c:.0f}", f"{w.limit_c:g}", "yes" if w.possible else "no: cool the shaft too")
     for name, limit in (("open", fit.BEARING_LIMIT_C), ("sealed", fit.SEALED_LIMIT_C))
     for w in [fit.warm_to_assemble(Q(30, "um"), Q(40, "mm"), Q(10.9e-6, "1/K"), Q(limit, "degC"))]],
)

# %% [markdown]
# ## Cool the inner part
#
# **Cold** shrinks the inner part; the sum is the same. Use a freezer (about −20 °C) first. Dry ice (−78 °C) shrinks it more than twice as much, and it is dangerous:
#
# - **It suffocates.** It turns into carbon dioxide. You cannot smell that gas, and it fills a room from the floor up: 1 kg makes half a cubic metre. Use it in the open or in a well-aired room, never in a store, a pit or a closed car.
# - **It bursts closed containers.** Let the lid lie loose. Never use a bottle, a screw top or a taped box.
# - **It burns skin at once.** Wear dry insulated gloves and eye protection, and use tongs. Wet gloves freeze to the part.
#
# Use it only if somebody at your bench has been shown how. Local rules decide.

# %% [markdown] needs="seal"
# ## Seals

# %% tags=["predict"]
lesson.predict("lip-to-oil")

# %% tags=["then"]
seal_section("oil")

# %% [markdown] tags=["then"]
# The lip looks towards what it keeps in: oil presses the lip on the shaft. If the seal is turned round, the oil lifts the lip. Five things must be right: **lip, depth, square, grease, sleeve** over splines. Set them below until nothing is found wrong.

# %% tags=["then"]
seal_seat(unit, unit.fits.seals[0].id)

# %% [markdown] tags=["then"]
# Lay a **bridge**, a straight bar, across the face and read the depth at four places over it. Take the thickness of the bridge off each reading. The mean is the depth; deepest less shallowest is the lean.
#
# A seal is used **once**. Too deep, leaning, turned round or cut: new seal. If it is only not deep enough, drive it further in, squarely, with a driver on its rim.

# %% [markdown] needs="spring-pin"
# ## Spring pins
#
# The hole squeezes a slotted pin, and the pin springs back against it. The pin must bear many times the force that the lever puts on it.

# %% tags=["predict"]
lesson.predict("force-on-pin")

# %% tags=["then"]
load = fit.fork_pin_force(Q(200, "N"), 8)
given_table("1.6 kN on a pin", ["pin, mm", "double shear, kN", "times the force", "single shear, times the force"],
            [(f"{mm:g}", f"{fit.spring_pin(Q(mm, 'mm')).double_shear_kn:g}",
              f"{fit.pin_margin(fit.spring_pin(Q(mm, 'mm')), load):.1f}",
              f"{fit.pin_margin(fit.spring_pin(Q(mm, 'mm')), load, 1):.1f}") for mm in (3.0, 4.0, 5.0, 6.0)])

# %% [markdown] tags=["then"]
# In **double shear** the pin must be cut at two planes before it fails:

# %% tags=["then"]
spring_pin_section()

# %% [markdown] needs="spring-pin"
# ## A pin in single shear
#
# In **single shear** there is one plane, so the pin bears half the load. A second pin can sit inside the first, with the slots opposite. Then the loads add.

# %% tags=["rig"]
spring_pin_section(planes=1, nested=True)

# %% [markdown]
# Fit the pin with its **slot in the line of the force**, both ends inside the hole, at the depth of the manual. Use a new pin each time.

# %% [markdown]
# ## Taper pins
#
# Taper 1 in 50: 1 mm of length is 0.02 mm of diameter. **Strike the large end to drive it in, the small end to drive it out.** When the pin is home, its large end still stands out a little (it stands proud). So it can be driven further when it wears.

# %% tags=["rig"]
pin = fit.TaperPin(0.006, 0.030)
taper_pin_section(pin, Q(6.55, "mm"), Q(26, "mm"))

# %% tags=["predict"]
lesson.predict("hole-wider")

# %% tags=["then"]
given_table(f"Pin 6 × 30 mm; its large end is {pin.large.m_as('mm'):.2f} mm", ["hole at the wide end, mm", "stands proud by, mm"],
            [(f"{mm:.2f}", f"{pin.stands_proud(Q(mm, 'mm')).m_as('mm'):.1f}") for mm in (6.45, 6.50, 6.55, 6.60, 6.65)])

# %% [markdown] tags=["then"]
# Ream very little, brush the chips out, try by hand. A pin that has sunk needs the next size, not a harder blow.

# %% [markdown]
# ## Stakes and circlips

# %% tags=["predict"]
lesson.predict("deeper-stake")

# %% tags=["then"]
stakes = [(mm, fit.stake_hold(Q(10, "mm"), Q(4, "mm"), Q(3, "mm"), Q(mm, "mm"), Q(320, "MPa"))) for mm in (0.5, 1.0, 1.5, 2.0)]
given_table("A tab of 3 mm in a slot of 4 mm", ["depth, mm", "holds, N·m", "gives way by"],
            [(f"{mm:g}", f"{s.holds_nm:.1f}", "being crushed" if s.first == "crushes" else "being sheared off") for mm, s in stakes])

# %% [markdown] tags=["then"]
# Once the tab would shear before it is crushed, more depth gains nothing. A cracked tab, or a nut that was undone, means a new nut.
#
# **Circlips** are stamped: one edge is rounded, one sharp. The **sharp edge faces away from the load**, so that it bears square on the wall of the groove; a rounded edge climbs out. Open it no further than needed, and turn it in its groove to see that it is seated all round. Throw away one that was opened too far.

# %% [markdown]
# ## One job from start to end
#
# Measure **before** you oil, warm or cover anything. Lay out driver and shaft **before** the hot part comes. Check with the feeler **after** it has cooled: a ring creeps off its shoulder as it shrinks.

# %% [markdown]
# ## Work it out
#
# Each calculation comes three times: worked, with steps left out, and on your own. Then go on with fresh readings as often as you like. You are told at once what is right, and which mistake a wrong figure looks like. Nothing here is marked.

# %% tags=["rig"]
lesson.calculation("read-a-fit")

# %% tags=["rig"]
lesson.calculation("press-force")

# %% tags=["rig"]
lesson.calculation("warm-to")

# %% tags=["rig"]
lesson.calculation("play-when-warm")

# %% tags=["rig"]
lesson.calculation("seal-read")

# %% tags=["rig"]
lesson.calculation("spring-pin")

# %% tags=["rig"]
lesson.calculation("taper-pin")

# %% tags=["rig"]
lesson.calculation("stake")

# %% [markdown]
# ## How you are marked
#
# Where an answer builds on an earlier one, a mistake costs marks once. The right way to warm a part and the cautions at the bench are **must-pass**.
#
# Some questions decide their outcome. One line wrong there, and the outcome is not met:
#
# - whether you press on or stop
# - where a driver presses, and how its force runs
# - which pin goes in, and how it sits
# - which seals, nuts and circlips are used again
#
# Now open the exercise from **start-here**.

# %% [markdown]
# <details>
# <summary>Where the rules and figures come from</summary>
#
# - Limits and fits: ISO 286-1 and -2. Pressure and force: Lamé, as in Shigley's Mechanical Engineering Design (eq. 3-56, 3-57).
# - Margin of 20 to 30 K: a bearing maker's mounting page. Limits of 120 and 80 °C: as remembered, not looked up again.
# - Dry ice, its temperature, its gas and its dangers: code of practice of the European industrial gases association, IGC Doc 150, section 5.2, and a gas maker's page on handling it.
# - Spring pins: ISO 8752; taper pins: ISO 2339. That the loads of nested pins add, and the slot in the line of the force: common practice, no source.
# - Seals, circlips, drivers, stakes: common practice, no source.
#
# </details>
