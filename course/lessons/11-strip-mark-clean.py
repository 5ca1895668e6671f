# %% [markdown]
# # Strip, mark, clean
#
# <div class="twoshaft-if-missing">If no pictures appear below: press <b>Run</b>, then <b>Run All Cells</b>.</div>
#
# **After this lesson you can** take a unit apart in order, read what is about to be lost, mark and clean its parts, and say what its oil shows.
#
# **Time:** 30 to 40 minutes. **What passing proves:** that the unit you rebuild can be put back as it was, and that you know how it was.
#
# *Invented unit, for teaching. On a real unit the maker's manual, local codes and licensed practice decide.*

# %% tags=["setup"]
from twoshaft.models import strip
from twoshaft.plots.tables import given_table
from twoshaft.practice import open_lesson
from twoshaft.rigs import exploded_view, order_bench, strip_simulator
from twoshaft.units.quantities import Q

lesson = open_lesson("strip-mark-clean")
unit = lesson.unit
apart, whole, oil = strip.strip_unit(unit), strip.strip_task(unit), unit.strip.oil
name = {step: whole.label(step) for step in whole.steps}

# %% [markdown]
# ## From earlier lessons

# %% tags=["rig"]
lesson.asked_again()

# %% [markdown]
# ## Before you start
#
# - Hot oil burns you. Let the unit cool until you can touch its metal, then drain. Wear gloves that oil cannot get through, and closed goggles, because a splash runs round the edge of glasses.
# - Springs, detent balls and circlips fly off when you release them. Wear eye protection, and keep other people's faces away.
# - A case is heavy and oily. Lift it by its eye with a hoist. Nobody stands or reaches below it.
# - Use solvent as its safety data sheet says: gloves, fresh air, no heat or spark near it. Keep oily rags in a closed steel bin.
# - Never blow compressed air against skin or onto a bearing.
#
# On this page nothing can break. Try things.

# %% [markdown]
# ## The same rules, backwards
#
# You know the rules of assembly. The order of taking apart follows from the same rules.

# %% tags=["predict"]
lesson.predict("cover-or-nuts")

# %% [markdown] tags=["then"]
# Two kinds of rule work backwards: **cannot** and **buries**. A part that sits on another part, or covers it, comes off first. Rules about heat and dirt do not work backwards. They say how a part must go in, not what lies in its way when it comes off.

# %% tags=["then"]
rules = [rule for rule in apart.rules if rule.id in unit.rule_by_id and rule.earlier]
given_table("Rules of assembly, read backwards", ["comes off first", "comes off later", "why"],
            [(name[whole.step_of[rule.earlier]], name[whole.step_of[rule.later]], rule.reason) for rule in rules[:6]])

# %% [markdown] tags=["then"]
# A **hold** works backwards as well. In assembly you engage two gears, tighten the nuts, and go back to neutral. In taking apart you engage two gears so that you can loosen the nuts.
#
# Put these steps in an order that works for taking apart.

# %% tags=["then"]
stage = apart.stages[1]
order_bench(apart, [step for step in apart.operations_of[stage.id]][:9])

# %% [markdown]
# ## Apart and together
#
# The part that went in last comes off first, the way it went in. Below, all parts stand apart. Move the slider from together to apart, and name each part before it moves.

# %% tags=["rig"]
exploded_view(unit)

# %% [markdown]
# ## Read before it is lost
#
# Each part that comes off takes a reading with it: an end float, a backlash, a pull, the place of a shim, which way round it was.

# %% tags=["predict"]
lesson.predict("drag-and-seals")

# %% [markdown] tags=["then"]
# So each reading has a **window**. The window opens when the covering parts are off. It closes when a part comes off that the reading needs. After that nobody can take the reading.

# %% tags=["then"]
windows = [(name[one.id], "; ".join(name[s] for s in strip.covered_by(whole, one.id)) or "nothing",
             "; ".join(name[s] for s in strip.lost_with(whole, one.id)), one.reason) for one in unit.strip.readings]
given_table("The window of each reading", ["reading", "take off first", "lost with", "why"], windows)

# %% [markdown] tags=["then"]
# Now take the unit apart. The drawing shows the parts that are still on; the next part is marked. Watch *Read now* and *Too late*. Then take a part off too early on purpose. Which reading is lost?

# %% tags=["then"]
strip_simulator(unit)

# %% [markdown] tags=["then"]
# If you forgot a reading, write **not read**. A guessed figure is worse than none, because the next mechanic trusts it.

# %% [markdown]
# ## Work it out at once
#
# Work out each figure while the part is still on. If it makes no sense, you can read again.

# %% tags=["predict"]
lesson.predict("dial-float")

# %% [markdown] tags=["then"]
# The dial may begin at any figure. Push, read, pull, read, and take the difference. Turn the shaft between two tries.

# %% [markdown]
# ## The next shim
#
# With the float and the old shim you know the next shim before the unit is apart.

# %% tags=["predict"]
lesson.predict("next-shim")

# %% tags=["then"]
rows = [(0.18, 1.20, 0.05), (0.30, 1.45, 0.10), (0.02, 1.60, 0.08)]
given_table("New shim = old shim + float read − float wanted", ["float read", "old shim", "float wanted", "new shim, mm"],
            [(f"{p:.2f}", f"{f:.2f}", f"{w:.2f}", f"{strip.shim_from_float(Q(f, 'mm'), Q(p, 'mm'), Q(w, 'mm')).m:.2f}")
             for p, f, w in rows])

# %% [markdown] tags=["then"]
# In the last row there was too little float, so the new shim is thinner. For preload, the float wanted is below zero.

# %% [markdown]
# ## Backlash on an arm
#
# Where the dial indicator does not reach the teeth, read the **backlash** on an arm.

# %% tags=["predict"]
lesson.predict("arm-and-teeth")

# %% [markdown] tags=["then"]
# Backlash at the teeth = travel at the dial × pitch radius ÷ radius of the arm. Read it in four places of the gear and take the mean. If one place differs much, look for a bent shaft or a damaged tooth.

# %% [markdown]
# ## What the oil shows
#
# Drain the oil into a clean pan, and measure it. It is less than the filling, because some oil stays on walls and gears.

# %% tags=["predict"]
lesson.predict("warm-jug")

# %% tags=["then"]
jugs = [(1.60, 45), (1.93, 35), (2.05, 40)]
given_table(f"Filling {oil.capacity_litre:g} l, {oil.stays_litre:g} l stay in, uncertainty {oil.unsure_litre:g} l",
            ["in the jug, l", "at, °C", "cold, l", "missing, l"],
            [(f"{jug:.2f}", warm, f"{strip.litres_at(oil, Q(jug, 'l'), Q(warm, 'degC')).m_as('l'):.2f}",
              f"{strip.litres_missing(oil, Q(jug, 'l'), Q(warm, 'degC')).m_as('l'):.2f}") for jug, warm in jugs])

# %% [markdown] tags=["then"]
# Cold litres = litres in the jug ÷ (1 + expansion × kelvins above cold). Missing = filling − litres that stay in − cold litres. If a unit ran with too little oil, the highest parts are damaged first.

# %% [markdown]
# ## Where the chips are
#
# A chip floats in the oil, at any depth, or it lies on the floor of the unit. That depends on the size of the chip, and on how long the unit stood.

# %% tags=["predict"]
lesson.predict("half-the-size")

# %% tags=["then"]
sizes, warms = (100, 50, 25, 10), (20, 60)
given_table("Minutes until chips of steel have sunk through the oil", ["size, µm", *(f"at {warm} °C" for warm in warms)],
            [(size, *(f"{strip.settling_time(oil, Q(size, 'um'), Q(warm, 'degC')).m_as('minute'):.0f}" for warm in warms))
             for size in sizes])

# %% [markdown] tags=["then"]
# If you drain soon after a run, the fine chips come out with the oil. After a night only the finest still float; the others lie on the floor and on the magnet. So write down how long the unit stood, and look in both places.

# %% [markdown]
# ## Magnet, pan and old film
#
# Look before you wipe. What you wipe off, you cannot examine any more.

# %% tags=["predict"]
lesson.predict("yellow-flakes")

# %% tags=["then"]
given_table("What was found", ["find", "magnet", "it means"],
            [("grey paste, fine, does not scratch", "holds it", "ordinary wear of gears and rollers"),
             ("yellow shimmer, dust or flakes", "leaves it", "a brass synchroniser ring wears away"),
             ("chips, scales, rods with a shape of their own", "holds them", "a hardened part breaks up; find it"),
             ("rubbery strips, glassy grains, milky oil", "leaves them", "sealant, sand, water: look for the way in")])

# %% [markdown] tags=["then"]
# The **old film** shows how it was laid. If it peels from one face, there was oil under it. If a roll of it lies inside the joint, too much was laid. Where bare metal reaches from inside to outside, it leaked. Draw it on the sheet, then clean.

# %% [markdown]
# ## Mark it, lay it out
#
# For each part, ask two questions. Can it go back in another way without anybody noticing? Does another part look the same?

# %% tags=["predict"]
lesson.predict("which-mark")

# %% tags=["then"]
given_table("Mark, bag or neither", ["the part", "what you do"],
            [("fits several ways, nothing shows which", "mark both parts to each other: paint pen where nothing runs or seals"),
             ("looks like another one: shims, springs, used rings", "bag it, and label its place"),
             ("fits one way only, or is marked already", "take it off; one more mark confuses"),
             ("bearing ring, joint face, seal seat", "no punch, no scriber: a tag")])

# %% [markdown] tags=["then"]
# Lay parts out in the order in which they came off, all facing the same way. Push the bolts through a card that shows the pattern of the case, because their lengths differ. Take a picture before you take each group apart.

# %% [markdown]
# ## Clean without harm
#
# A scratched face leaks. Grit from grinding gets into the bearings.

# %% tags=["predict"]
lesson.predict("dry-a-bearing")

# %% tags=["then"]
given_table("What cleans what", ["part", "with", "not with"],
            [("joint face of aluminium", "softener, plastic or wooden scraper", "steel scraper, abrasive disc, wire brush"),
             ("bearing", "clean solvent, drained on a cloth, oiled, turned by hand", "air, dry spinning"),
             ("oil gallery", "nylon brush and fresh solvent, until light shows through", "air into standing solvent"),
             ("plastic and rubber", "mild cleaner by its data sheet", "brake cleaner, hot caustic bath")])

# %% [markdown] tags=["then"]
# Do not clean with petrol: a spark on the other side of the room can light its vapour. A caustic bath for steel attacks aluminium. Read the data sheet of the cleaner, for the part **and** for you.

# %% [markdown]
# ## Thrown away on principle
#
# Some parts are renewed every time, without a look.

# %% tags=["predict"]
lesson.predict("whole-seal")

# %% tags=["then"]
given_table("Thrown away every time, in this unit", ["part"],
            [(part.name,) for part in unit.parts if part.single_use])

# %% [markdown] tags=["then"]
# A bearing that was pulled off through its rollers is thrown away as well: the pull dents its tracks, and you cannot see the dents. Clean and **measure** all other parts. Shims, thrust washers and paired rings belong to one place: **keep them with a label**.

# %% [markdown]
# ## Practise the calculations
#
# Each calculation comes three times: worked, with steps left out, and on your own. Then go on with fresh readings as often as you like. You are told at once what is right, and which mistake a wrong figure looks like. Nothing here is marked.

# %% tags=["rig"]
lesson.calculation("next-shim")

# %% tags=["rig"]
lesson.calculation("backlash-at-teeth")

# %% tags=["rig"]
lesson.calculation("drained-oil")

# %% tags=["rig"]
lesson.calculation("sinking-chips")

# %% [markdown]
# ## How you are marked
#
# Every order that works gets full marks. Marks, cleaning, scrap, dangers and the state of the readings are **must-pass**: each line of those questions has to be right. Where an answer builds on an earlier one, a mistake costs marks once.
#
# Now open the exercise from **start-here**.

# %% [markdown]
# <details>
# <summary>Where the rules and figures come from</summary>
#
# - Viscosity over temperature: equation of Walther, as in ASTM D341 (as remembered, not looked up again; checked on a worked example).
# - Sinking of a small sphere: Stokes 1851 (as remembered, not looked up again; checked on the times of the pipette method for soils).
# - Expansion of oil, about 0.0007 for each kelvin: engineeringtoolbox.com, "Volumetric - Cubic - Thermal Expansion".
# - Why rules hold backwards: what blocks a way in blocks the way out, plain geometry.
# - What magnet, pan and film show, marks, cleaning and scrap: common practice, no source.
#
# </details>
