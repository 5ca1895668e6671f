# %% [markdown]
# # Gear train, differential and function checks
#
# <div class="twoshaft-if-missing">If no pictures appear below: press <b>Run</b>, then <b>Run All Cells</b>.</div>
#
# **After this lesson you can**
#
# - work out a ratio along its path, and say which way round it turns
# - count turns in against turns out
# - find out by counting which gear is in
# - say what two gears at once lock and what they leave free
# - judge a synchroniser ring by its gap
# - set the play of the side gears
# - check the speed drive
# - put the last checks in order
#
# **Time:** 35 to 40 minutes. **What passing proves:** that you can show that a unit does what it should before it leaves the bench.
#
# *Invented unit, for teaching. On a real unit the maker's manual, local codes and licensed practice decide.*

# %% tags=["setup"]
from twoshaft.models import geartrain
from twoshaft.plots.geartrain import count_by_gear, gap_by_wear, ratio_bars
from twoshaft.plots.tables import given_table
from twoshaft.practice import open_lesson
from twoshaft.rigs import gear_rig, order_bench
from twoshaft.units.quantities import Q

lesson = open_lesson("gear-train-and-checks")
unit = lesson.unit
train = unit.gear_train
name = {gear.id: gear.name for gear in train.gears}
first, second, third, *others = (gear.id for gear in train.gears if not gear.reverse)
top = others[-1] if others else third
pinion = train.driven_from
ONE = geartrain.ways_of_counting(train)[0]

# %% [markdown]
# ## From earlier lessons

# %% tags=["rig"]
lesson.asked_again()

# %% [markdown]
# ## Before you start
#
# - **Pinch points.** Gears that you turn by hand can pull a finger in, as a motor would. One person turns and says so first. All hands are in sight.
# - **No power tool on a shaft.** A drill or an impact wrench spins the train faster than you can let go, and scores dry bearings and rings in seconds. Count by hand.
# - **Sleeves and hair:** nothing loose near a turning shaft.
# - **Lifting:** lift a closed unit with two people or a hoist, by its lifting points. Nobody stands under it.
# - **Eye protection** when you fit circlips, springs and detent balls. A circlip flies off faster than you can blink.
#
# On this page nothing can break. Try things.

# %% [markdown]
# ## Along the path
#
# Power goes in at the input shaft and passes from gear to gear to the ring gear. At every mesh, count teeth: **driven divided by driving** is how often the driving gear turns for one turn of the driven gear. Multiply along the path. Every mesh also reverses the direction.

# %% tags=["predict"]
lesson.predict("two-meshes")

# %% tags=["then"]
gear_rig(unit, engaged=[second])

# %% [markdown] tags=["then"]
# The blue gears drive. Turn the input shaft and watch the painted marks. Two gears in mesh turn opposite ways. Two meshes reverse the direction twice, so the ring gear turns the same way as the input shaft.

# %% [markdown]
# ## An idler in reverse
#
# In reverse an idler gear stands between the driving and the driven gear. So there is one mesh more.

# %% tags=["predict"]
lesson.predict("idler-teeth")

# %% [markdown] tags=["then"]
# The idler reverses the direction once more: the ring gear turns the other way. The number of its teeth does not change the ratio, because the idler is driven once and drives once. Engage **Reverse** in the rig above and try it.

# %% tags=["then"]
given_table("Input turns for one turn", ["gear", "of the output shaft", "of the ring gear", "ring gear turns"],
            [(g.name, f"{float(abs(geartrain.ratio(train, g.id, to=pinion))):.3f}",
              f"{float(abs(geartrain.ratio(train, g.id))):.3f}",
              "the same way" if geartrain.ratio(train, g.id) > 0 else "the other way")
             for g in train.gears])

# %% [markdown]
# ## Every ratio as a bar
#
# A longer bar means that the road wheel turns more slowly and with more torque. The hatched bar is reverse. On the bench you know reverse from first gear by its direction.

# %% tags=["rig"]
ratio_bars(train)

# %% [markdown] needs="differential"
# ## Count turns in, turns out
#
# The differential drives two road wheels. With **one wheel held**, the other turns **twice** for one turn of the ring gear. With both free, the ring gear turns the **average** of the two.

# %% tags=["predict"]
lesson.predict("turns-of-third", right=f"{float(abs(geartrain.ratio(train, third))) / 2:.2f}")

# %% [markdown] tags=["then"]
# Put your hand on the left wheel below and turn it once.

# %% tags=["then"]
gear_rig(unit, engaged=[third], held=train.differential.right)

# %% [markdown] tags=["then"]
# Your count is half of the figure in the table, because the ring gear made only half a turn.
#
# Set **Hold still** to *Neither* and turn the input shaft. Now the wheel that drags less turns further. Add both counts and halve: that is the count of the ring gear.

# %% [markdown]
# ## What a count can tell
#
# You read a mark to a **least count**: on this unit an eighth of a turn. The reading may be off by half of that, either way. If the counts of two gears are less than two least counts apart, you can mistake one gear for the other.
#
# The picture shows the count of every gear, and how far it may be off.

# %% tags=["rig"]
count_by_gear(train, 1, ONE)

# %% tags=["predict"]
pairs = geartrain.mistaken(train, 1, ONE, 0.5)
lesson.predict("pairs-by-eye", right=str(len(pairs)))

# %% tags=["then"]
given_table("Taken for each other: one wheel turn, counted to half a turn", ["one", "other", "wheel turns to tell them apart"],
            [(name[a], name[b], geartrain.tells_apart(train, a, b, ONE, 0.5)) for a, b in pairs])

# %% [markdown] tags=["then"]
# So count more turns of the wheel. That helps more than looking harder.

# %% [markdown] needs="differential"
# ## A gear from another unit
#
# A gear with one tooth too few fits and runs. It changes the count by only a little.

# %% tags=["predict"]
lesson.predict("tooth-too-few")

# %% tags=["then"]
odd = [(g, next(m for m in train.meshes if m.id == g.engages[0])) for g in train.gears if not g.reverse]
rows = [(g, m, geartrain.with_wheel(train, m.id, "driven", m.driven.teeth - 1)) for g, m in odd]
given_table("A driven gear with one tooth too few, one road wheel held", ["gear", "teeth", "fitted", "wheel turns to see it"],
            [(g.name, m.driven.teeth, m.driven.teeth - 1, geartrain.fewest_turns(
                geartrain.count_turns(train, g.id, 1, ONE).exact,
                geartrain.count_turns(wrong, g.id, 1, ONE).exact, train.least_count_turns))
             for g, m, wrong in rows])

# %% [markdown] needs="differential"
# ## The differential by hand
#
# Both road wheels are driven by the same differential pinions. Compare each wheel with the ring gear.

# %% tags=["predict"]
lesson.predict("other-wheel")

# %% tags=["then"]
given_table("The ring gear's turns are the average", ["ring gear", "left wheel", "right wheel"],
            [(case, left, geartrain.other_output(Q(case, "turn"), Q(left, "turn")).m)
             for case, left in [(0.0, 1.0), (1.0, 1.0), (1.0, 2.0), (1.0, 3.0)]])

# %% [markdown] tags=["then"]
# In a bend the outer wheel gains what the inner one loses.

# %% [markdown]
# ## Two gears at once
#
# Shaft nuts need a very large torque, so the shafts must not turn. Two gears engaged at once hold them, because the output shaft cannot turn at two ratios.

# %% tags=["predict"]
lesson.predict("still-turns")

# %% tags=["then"]
gear_rig(unit, engaged=[second, top])

# %% [markdown] tags=["then"]
# The road wheels can still turn, so keep hands and rags away from the drive shafts.

# %% [markdown]
# ## Pairs that hold the shafts
#
# Two gears with one **sleeve** between them cannot be in at once: the sleeve is in one gear or the other. So choose two gears of different sleeves.

# %% tags=["rig"]
ids = [gear.id for gear in train.gears]
duos = [(a, b) for n, a in enumerate(ids) for b in ids[n + 1:]]
given_table("Which pairs hold the shafts", ["pair", "can both be in?", "input shaft locked?"],
            [(f"{name[a]} and {name[b].lower()}", *(("no, one sleeve", "–") if geartrain.one_sleeve(train, (a, b))
              else ("yes", "yes" if train.input in geartrain.freedom(train, (a, b)).locked else "no")))
             for a, b in duos[:9]])

# %% [markdown]
# The **difference** of the ratios locks the shafts. Two gears of the same ratio, such as 18 to 36 and 20 to 40, would turn together and hold nothing. So try every lock by hand before you pull on a nut.

# %% [markdown] needs="synchroniser"
# ## The synchroniser ring
#
# The synchroniser ring (baulk ring, blocker ring) works like a cone clutch: it brings the gear to the speed of its shaft. As the ring wears, it moves closer to the gear. The **ring gap** shows how much wear is left. Press the ring onto its cone and measure with a feeler gauge at three places.

# %% tags=["predict"]
lesson.predict("wear-and-gap")

# %% tags=["then"]
gap_by_wear(train.synchronisers[-1])

# %% [markdown] tags=["then"]
# **Gap lost = wear divided by the sine of the half angle.** On a slim cone a little wear becomes much travel. Below the least gap the ring soon meets the face of the gear before it grips, and the change grates.
#
# A gap **wider** than new is a fault too: dirt, a burr or the ring of another gear keeps the ring off its cone.

# %% [markdown] needs="synchroniser"
# ## What makes a ring grip
#
# The torque of the cone is force × **friction** × mean radius ÷ sine of the half angle. Another kind of oil changes the friction. So does a ring that was fitted dry.

# %% tags=["predict"]
lesson.predict("half-the-friction")

# %% tags=["then"]
ring = train.synchronisers[-1]
cone = (Q(ring.mean_diameter_mm, "mm"), Q(ring.half_angle_deg, "degree"))
given_table("Pushed with 600 N", ["friction", "cone torque, N·m"],
            [(f"{mu:.2f}", f"{geartrain.cone_torque(Q(600, 'N'), mu, *cone).m_as('N*m'):.1f}")
             for mu in ring.friction])

# %% [markdown] tags=["then"]
# Half the torque means twice the time to reach the same speed. The driver feels a slow change.

# %% [markdown] needs="synchroniser"
# ## Which way round
#
# - A **hub** has a flat side and a long side.
# - A **sleeve** may have the chamfer of its teeth on one side only.
# - The **keys** sit in the slots of the ring, not between them.

# %% tags=["predict"]
lesson.predict("hub-turned")

# %% [markdown] tags=["then"]
# The ring gap lies between ring and gear, and the hub is not part of it. But a hub fitted the wrong way round stands away from its gear, so the sleeve does not reach the dog teeth. Check the sides before you press the hub on.

# %% [markdown] needs="side-gear-play"
# ## Play of the side gears
#
# The side gears of the differential need a little axial play. Thrust washers set it. Measure it on each gear with the dial indicator. A washer that is 0.1 mm **thicker** leaves 0.1 mm **less** play.

# %% tags=["predict"]
play = train.differential.side_gear_play
then = {thick: geartrain.play_with_washer(Q(0.28, "mm"), Q(0.9, "mm"), Q(thick, "mm")).m_as("mm") for thick in play.washers_mm}
best = min(then, key=lambda thick: abs(then[thick] - sum(play.play_mm) / 2))
lesson.predict("which-washer", right=f"{best:.2f} mm", ask=f"A side gear has 0.28 mm of play with a washer of 0.90 mm. Wanted are {play.play_mm[0]:g} to {play.play_mm[1]:g} mm. Washers come from {min(then):g} to {max(then):g} mm in steps of 0.05 mm. Which one do you take?")

# %% tags=["then"]
given_table(f"Play wanted: {play.play_mm[0]:g} to {play.play_mm[1]:g} mm", ["washer, mm", "play then, mm"],
            [(f"{thick:.2f}", f"{after:.2f}") for thick, after in then.items()])

# %% [markdown] tags=["then"]
# Where the play is below zero, the washer does not go in. The reading may be off by about 0.01 mm. So take the washer that brings the play well inside its limits, not just inside.

# %% [markdown] needs="speed-drive"
# ## Road speed and speed drive
#
# One turn of the road wheel moves the vehicle by one circumference, which is 2π times the rolling radius. The ratio gives the road speed in each gear. The teeth of the speed drive give the turns that the speed sensor or cable gets.

# %% tags=["rig"]
given_table("Road speed at 3000 r/min", ["gear", "km/h"],
            [(g.name, f"{geartrain.road_speed(train, g.id, Q(3000, 'rpm')).m_as('km/hour'):.1f}")
             for g in train.gears])

# %% tags=["predict"]
lesson.predict("two-teeth-more")

# %% [markdown] tags=["then"]
# Nobody notices it before the road test. At the bench you find it in a minute: turn the wheels ten times and count the turns of the pinion.

# %% [markdown]
# ## The last checks, in order
#
# Make each check when the part that it checks is fitted, and while a fault is still cheap to repair:
#
# - free turning before the seals rub
# - gears and lockout before the oil goes in
# - switches, with a test lamp, once the gears are proven: the reverse switch closes in reverse alone
# - leaks with the oil in
#
# Put the steps in order. The bench says at once what is wrong, and why.

# %% tags=["rig"]
late = {o.id: o.kind for o in unit.operations if o.stage in [s.id for s in unit.stages[-3:]]}
checks = {step for step, kind in late.items() if kind in ("check", "measure")}
pairs = [{rule.earlier, rule.later} for rule in unit.rules if rule.kind == "blinds"]
order_bench(unit, [step for step in late if any(step in pair and pair & checks for pair in pairs)])

# %% [markdown]
# Move the steps about and read the reasons. Where a step *makes a check worthless*, the check can no longer show its fault. That is worse than no check, because you believe it.

# %% [markdown]
# ## Work it out
#
# Each calculation comes three times: worked, with steps left out, and on your own. Then go on with fresh readings as often as you like. You are told at once what is right, and which mistake a wrong figure looks like. Nothing here is marked.

# %% tags=["rig"]
lesson.calculation("along-the-path")

# %% tags=["rig"]
lesson.calculation("turns-to-count")

# %% tags=["rig"]
lesson.calculation("turns-that-tell")

# %% tags=["rig"]
lesson.calculation("side-gear-washer")

# %% tags=["rig"]
lesson.calculation("synchroniser-ring")

# %% tags=["rig"]
lesson.calculation("road-speed")

# %% tags=["rig"]
lesson.calculation("speed-drive")

# %% tags=["rig"]
lesson.calculation("other-wheel")

# %% [markdown]
# ## How you are marked
#
# The exercise gives you gears, counts and readings of your own. Where an answer builds on an earlier one, a mistake costs marks once. Four questions are **must-pass**: trying a lock before you pull, what to do with a ring, which way round its parts go in, and turning and lifting safely. Each is asked in several cases, and every case must be right. Marks elsewhere do not replace them.
#
# Now open the exercise from **start-here**.

# %% [markdown]
# <details>
# <summary>Where the rules and figures come from</summary>
#
# - Ratios, direction and what is locked: kinematics of gear trains as in any textbook of machine theory; the differential after Willis (as remembered, not looked up again).
# - Pitch circles and working centre distance: ISO 21771 (as remembered, not looked up again).
# - Cone torque: cone clutch with uniform wear, Shigley, Mechanical Engineering Design, 9th ed., eq. 16-45.
# - Ring gap at three places, side-gear play by washers, counting turns to name a gear, order of the last checks: common practice, no source.
# - Tooth counts, gaps, limits and minutes are invented for this unit.
#
# </details>
