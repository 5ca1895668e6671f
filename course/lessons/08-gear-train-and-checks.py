# %% [markdown]
# # Gear train, differential and function checks
#
# <div class="twoshaft-if-missing">If no pictures appear below: press <b>Run</b>, then <b>Run All Cells</b>.</div>
#
# **After this lesson you can**
#
# - work out a ratio along its path, and say which way round it turns
# - count turns in against turns out
# - tell by counting which gear is in
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
first, second, third, *_, top = (gear.id for gear in train.gears if not gear.reverse)
pinion = train.driven_from
ONE = geartrain.ways_of_counting(train)[0]

# %% [markdown]
# ## From earlier lessons

# %% tags=["rig"]
lesson.asked_again()

# %% [markdown]
# ## Before you start
#
# - **Pinch points.** Gears turned by hand pull a finger in as surely as a motor does, and a second person cannot feel that it is yours. One person turns, hands are in sight, and you say so before you turn.
# - **Never a power tool on a shaft.** A drill or an impact gun spins the train faster than you can let go, and dry bearings and rings are scored in seconds. Count by hand.
# - **Sleeves and hair:** nothing loose near a turning shaft.
# - **Lifting:** a closed unit is lifted with two people or a hoist, by the points that are made for it. Nobody stands under it.
# - **Eye protection** when circlips, springs and detent balls are fitted. A circlip leaves the pliers faster than you blink.
#
# On this page nothing can break. Try things.

# %% [markdown]
# ## Along the path
#
# Power goes in at the input shaft and passes from gear to gear until it reaches the ring gear. At every mesh, count teeth: **driven divided by driving** is how often the driving gear turns for one turn of the driven one. Multiply along the path. Every mesh also turns the direction round.

# %% tags=["predict"]
lesson.predict("two-meshes")

# %% tags=["then"]
gear_rig(unit, engaged=[second])

# %% [markdown] tags=["then"]
# The blue gears drive. Turn the input shaft and watch the painted marks: touching gears always move opposite ways at the point where they touch. Two meshes turn the direction round twice, so the ring gear ends up turning the same way.
#
# Now engage **Reverse** in place of second. The idler is one mesh more, so the wheels turn the other way. Its own teeth drop out: it is driven once and drives once.

# %% tags=["then"]
given_table("Input turns for one turn", ["gear", "of the output shaft", "of the ring gear", "ring gear turns"],
            [(g.name, f"{float(abs(geartrain.ratio(train, g.id, to=pinion))):.3f}",
              f"{float(abs(geartrain.ratio(train, g.id))):.3f}",
              "the same way" if geartrain.ratio(train, g.id) > 0 else "the other way")
             for g in train.gears])

# %% tags=["then"]
ratio_bars(train)

# %% [markdown] tags=["then"]
# Longer bars mean a slower, stronger wheel. The one hatched bar turns the other way; on the bench the direction tells it from first at a glance.

# %% [markdown] needs="differential"
# ## Count turns in, turns out
#
# The differential carries two wheels. With **one wheel held**, the other turns **twice** for one turn of the ring gear. With both free, only the **average** of the two wheels tells what the ring gear did.

# %% tags=["predict"]
lesson.predict("turns-of-third", right=f"{float(abs(geartrain.ratio(train, third))) / 2:.2f}")

# %% [markdown] tags=["then"]
# Put your hand on the left wheel below and turn it once.

# %% tags=["then"]
gear_rig(unit, engaged=[third], held=train.differential.right)

# %% [markdown] tags=["then"]
# It is half of the figure in the table, because the ring gear made only half a turn.
#
# Set **Hold still** to *Neither* and turn the input shaft. Now the wheels share the turns unevenly; whichever drags less goes further. Add both and halve: there is the ring gear again.

# %% [markdown]
# ## What a count can tell
#
# You read a mark to a **least count**: on this unit an eighth of a turn. The reading may be half of that off, either way. Two gears whose counts lie less than two least counts apart can be taken for each other.
#
# The picture shows the count of every gear, as the marks read it, and how far it may be off.

# %% tags=["rig"]
count_by_gear(train, 1, ONE)

# %% tags=["predict"]
pairs = geartrain.mistaken(train, 1, ONE, 0.5)
lesson.predict("pairs-by-eye", right=str(len(pairs)))

# %% tags=["then"]
given_table("Taken for each other: one wheel turn, counted to half a turn", ["one", "other", "wheel turns that would tell"],
            [(name[a], name[b], geartrain.tells_apart(train, a, b, ONE, 0.5)) for a, b in pairs])

# %% [markdown] tags=["then"]
# So count more turns of the wheel rather than squint harder. A **wrong gear wheel** from another unit is harder to find: one tooth more or less changes the count by little.

# %% tags=["then"]
odd = [(g, next(m for m in train.meshes if m.id == g.engages[0])) for g in train.gears if not g.reverse]
rows = [(g, m, geartrain.with_wheel(train, m.id, "driven", m.driven.teeth - 1)) for g, m in odd]
given_table("A driven wheel with one tooth too few, one wheel held", ["gear", "teeth", "fitted", "wheel turns that tell"],
            [(g.name, m.driven.teeth, m.driven.teeth - 1, geartrain.fewest_turns(
                geartrain.count_turns(train, g.id, 1, ONE).exact,
                geartrain.count_turns(wrong, g.id, 1, ONE).exact, train.least_count_turns))
             for g, m, wrong in rows])

# %% [markdown] needs="differential"
# ## The differential by hand
#
# Both wheels hang on the same small bevel gears. What one wheel gains on the ring gear, the other loses.

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
# Shaft nuts need a very large torque, so the shafts must not turn. Two gears engaged at once hold them: the output shaft would have to obey two ratios, and cannot.

# %% tags=["predict"]
lesson.predict("still-turns")

# %% tags=["then"]
gear_rig(unit, engaged=[second, top])

# %% [markdown] tags=["then"]
# A locked train does not make it safe to have a hand or a rag near a drive shaft.
#
# Try two gears with one **sleeve** between them: it can be in one gear only. Choose two gears of different sleeves.

# %% tags=["then"]
ids = [gear.id for gear in train.gears]
duos = [(a, b) for n, a in enumerate(ids) for b in ids[n + 1:]]
given_table("Which pairs hold the shafts", ["pair", "can both be in?", "input shaft locked?"],
            [(f"{name[a]} and {name[b].lower()}", *(("no, one sleeve", "–") if geartrain.one_sleeve(train, (a, b))
              else ("yes", "yes" if train.input in geartrain.freedom(train, (a, b)).locked else "no")))
             for a, b in duos[:9]])

# %% [markdown] tags=["then"]
# What locks is the **difference** of the ratios. Two gears of the same ratio, such as 18 to 36 and 20 to 40, would turn together and hold nothing. Never trust a lock that you have not tried by hand first.

# %% [markdown] needs="synchroniser"
# ## The synchroniser ring
#
# The ring brakes the gear to the speed of its shaft, like a cone clutch. As the cone wears, the ring moves closer to the gear. The **ring gap**, measured with a feeler gauge at three places while you press the ring home, shows how much is left.

# %% tags=["predict"]
lesson.predict("wear-and-gap")

# %% tags=["then"]
gap_by_wear(train.synchronisers[-1])

# %% [markdown] tags=["then"]
# A little wear costs much gap, because a slim cone turns wear into way: **gap lost = wear divided by the sine of the half angle**. Below the least gap the ring soon meets the gear's face before it grips, and the change grates.
#
# What a ring can do depends on force, cone and **friction**: torque = force × friction × mean radius ÷ sine of the half angle. Oil of another kind changes the friction, and so does a ring that was fitted dry.

# %% tags=["then"]
ring = train.synchronisers[-1]
cone = (Q(ring.mean_diameter_mm, "mm"), Q(ring.half_angle_deg, "degree"))
given_table("Pushed with 600 N", ["friction", "cone torque, N·m"],
            [(f"{mu:.2f}", f"{geartrain.cone_torque(Q(600, 'N'), mu, *cone).m_as('N*m'):.1f}")
             for mu in ring.friction])

# %% [markdown] tags=["then"]
# Half the torque means twice the time to reach the same speed, and the driver feels it as a slow change.
#
# **Which way round?** A hub has a flat and a long side, a sleeve may have the chamfer of its teeth on one side only, and the **keys** sit in the slots of the ring, not on its lands. A hub turned round stands away from its gear, and the sleeve no longer reaches. The ring gap does not show it, because the hub does not enter that gap. A gap **wider** than new is no good sign either: dirt, a burr or the ring of another gear keeps the ring off its cone.

# %% [markdown] needs="side-gear-play"
# ## Play of the side gears
#
# The side gears need a little axial play, set by their thrust washers. Read it with the dial indicator on each gear. A **thicker washer takes play away**, tenth for tenth.

# %% tags=["predict"]
play = train.differential.side_gear_play
then = {thick: geartrain.play_with_washer(Q(0.28, "mm"), Q(0.9, "mm"), Q(thick, "mm")).m_as("mm") for thick in play.washers_mm}
best = min(then, key=lambda thick: abs(then[thick] - sum(play.play_mm) / 2))
lesson.predict("which-washer", right=f"{best:.2f} mm", ask=f"A side gear has 0.28 mm of play with a washer of 0.90 mm. Wanted are {play.play_mm[0]:g} to {play.play_mm[1]:g} mm. Washers come from {min(then):g} to {max(then):g} mm in steps of 0.05 mm. Which one do you take?")

# %% tags=["then"]
given_table(f"Play wanted: {play.play_mm[0]:g} to {play.play_mm[1]:g} mm", ["washer, mm", "play then, mm"],
            [(f"{thick:.2f}", f"{after:.2f}") for thick, after in then.items()])

# %% [markdown] tags=["then"]
# Below zero the washer does not go in. The gauge itself is good to about a hundredth. So take the washer that brings the play well inside its limits, not the one that just scrapes in.

# %% [markdown] needs="speed-drive"
# ## Road speed and speed drive
#
# One turn of the wheel carries the vehicle one circumference, 2π times the rolling radius. With the ratio you get the road speed of each gear; with the teeth of the speed drive, the turns that the speed sensor or cable gets.

# %% tags=["rig"]
given_table("Road speed at 3000 r/min", ["gear", "km/h"],
            [(g.name, f"{geartrain.road_speed(train, g.id, Q(3000, 'rpm')).m_as('km/hour'):.1f}")
             for g in train.gears])

# %% tags=["predict"]
lesson.predict("two-teeth-more")

# %% [markdown] tags=["then"]
# Nobody notices it until the road. At the bench, ten turns of the wheels and a count of the pinion find it in a minute.

# %% [markdown]
# ## The last checks, in order
#
# Every check has its place: early enough that a fault can still be repaired cheaply, late enough that what it checks is really there. The unit turns freely before the seals rub; gears and lockout are proven before the oil goes in; leaks are looked for with oil in. Where a unit has switches, each is tried with a test lamp once the gears are proven: the reverse switch closes in reverse and in no other gear.
#
# Put them in order. The bench says at once what is wrong, and why.

# %% tags=["rig"]
late = {o.id: o.kind for o in unit.operations if o.stage in [s.id for s in unit.stages[-3:]]}
checks = {step for step, kind in late.items() if kind in ("check", "measure")}
pairs = [{rule.earlier, rule.later} for rule in unit.rules if rule.kind == "blinds"]
order_bench(unit, [step for step in late if any(step in pair and pair & checks for pair in pairs)])

# %% [markdown]
# Move the steps about and read the reasons. Where a step *makes a check worthless*, the check stands where it cannot show its fault. Such a check is worse than none, because you believe it.

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
# The exercise gives you gears, counts and readings of your own. Where an answer builds on an earlier one, a slip is charged once. Four questions are **must-pass**, each asked in several cases of which every one must be right: trying a lock before you pull, what to do with a ring, which way round its parts go in, and turning and lifting safely. They are not made up for by marks elsewhere.
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
