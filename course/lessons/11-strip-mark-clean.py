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
# - Hot oil scalds. Let the unit cool until its metal can be touched, then drain. Wear gloves and glasses that oil does not pass.
# - Springs, detent balls and circlips fly when they are released. Wear eye protection, and keep other people's faces away.
# - A case is heavy and oily. Lift it by its eye with a hoist. Nobody stands or reaches below it.
# - Solvent: by its safety data sheet, with gloves, fresh air, and no heat or spark near it. Keep oily rags in a closed steel bin.
# - Compressed air never at skin, and never on a bearing.
#
# On this page nothing can break. Try things.

# %% [markdown]
# ## The same rules, backwards
#
# You know the order of building up from its rules. You need no second list for taking apart.

# %% tags=["predict"]
lesson.predict("cover-or-nuts")

# %% [markdown] tags=["then"]
# Two kinds of rule hold backwards: **cannot** and **buries**. A part that stands on another, or covers it, comes off first. Rules about heat and dirt do not hold backwards: nothing has to be warm or clean when it comes off.

# %% tags=["then"]
rules = [rule for rule in apart.rules if rule.id in unit.rule_by_id and rule.earlier]
given_table("The build's own rules, read backwards", ["comes off first", "comes off later", "why"],
            [(name[whole.step_of[rule.earlier]], name[whole.step_of[rule.later]], rule.reason) for rule in rules[:6]])

# %% [markdown] tags=["then"]
# A **hold** turns round as well. In the build two gears are engaged, the nuts are tightened, and the gears go back to neutral. Now two gears are engaged so that the nuts can be loosened.
#
# Put these steps in an order that works for taking apart.

# %% tags=["then"]
stage = apart.stages[1]
order_bench(apart, [step for step in apart.operations_of[stage.id]][:9])

# %% [markdown] tags=["then"]
# What went in last comes off first, the way it went in. Here all stands apart; move the slider back from together to apart, and say each part before it moves.

# %% tags=["then"]
exploded_view(unit)

# %% [markdown]
# ## Read before it is lost
#
# Each part that comes off takes a reading with it: an end float, a backlash, a pull, the place of a shim, which way round it was.

# %% tags=["predict"]
lesson.predict("drag-and-seals")

# %% [markdown] tags=["then"]
# So each reading has a **window**. It opens when what covers it is off. It closes when something that it needs comes off. After that nobody can take it.

# %% tags=["then"]
windows = [(name[one.id], "; ".join(name[s] for s in strip.covered_by(whole, one.id)) or "nothing",
             "; ".join(name[s] for s in strip.lost_with(whole, one.id)), one.reason) for one in unit.strip.readings]
given_table("The window of each reading", ["reading", "take off first", "lost with", "why"], windows)

# %% [markdown] tags=["then"]
# Now take the unit apart. What is still on is drawn, and what comes off next is lit. Watch *Read now* and *Too late*. Then take a part off too early on purpose: which reading is gone?

# %% tags=["then"]
strip_simulator(unit)

# %% [markdown] tags=["then"]
# A reading that was forgotten is written down as **not read**. A guessed figure is worse than none, because the next mechanic trusts it.

# %% [markdown]
# ## Work it out at once
#
# Work a reading out while the part is still on. Then you can read again if it makes no sense.

# %% tags=["predict"]
lesson.predict("dial-float")

# %% [markdown] tags=["then"]
# The dial may begin anywhere. Push, read, pull, read, and take the difference. Turn the shaft between two tries.
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
# In the last row there was too little float, so the new shim is thinner. For preload the float wanted counts below zero.
#
# **Backlash** is read on an arm where the dial does not reach the teeth.

# %% tags=["predict"]
lesson.predict("arm-and-teeth")

# %% [markdown] tags=["then"]
# Backlash at the teeth = travel at the dial × pitch radius ÷ radius of the arm. Read it in four places of the gear and take the mean. One place that differs much is a finding of its own: a bent shaft, or a tooth that was hit.

# %% [markdown]
# ## What the oil tells
#
# Drain into a clean pan, and measure what comes. It is less than went in: some clings to walls and gears.

# %% tags=["predict"]
lesson.predict("warm-jug")

# %% tags=["then"]
jugs = [(1.60, 45), (1.93, 35), (2.05, 40)]
given_table(f"Filling {oil.capacity_litre:g} l, {oil.stays_litre:g} l cling, {oil.unsure_litre:g} l unsure",
            ["in the jug, l", "at, °C", "cold, l", "missing, l"],
            [(f"{jug:.2f}", warm, f"{strip.litres_at(oil, Q(jug, 'l'), Q(warm, 'degC')).m_as('l'):.2f}",
              f"{strip.litres_missing(oil, Q(jug, 'l'), Q(warm, 'degC')).m_as('l'):.2f}") for jug, warm in jugs])

# %% [markdown] tags=["then"]
# Cold litres = litres in the jug ÷ (1 + expansion × kelvins above cold). Missing = filling − clinging − cold litres. A unit that ran short shows it at the parts that sit highest.
#
# Where are the chips: in the pan, or on the floor of the unit?

# %% tags=["predict"]
lesson.predict("half-the-size")

# %% tags=["then"]
sizes, warms = (100, 50, 25, 10), (20, 60)
given_table("Minutes until chips of steel have sunk through the oil", ["size, µm", *(f"at {warm} °C" for warm in warms)],
            [(size, *(f"{strip.settling_time(oil, Q(size, 'um'), Q(warm, 'degC')).m_as('minute'):.0f}" for warm in warms))
             for size in sizes])

# %% [markdown] tags=["then"]
# Drained soon after a run, the oil brings its fine chips with it. After a night only the finest float. The others lie on the floor and on the magnet. So write down how long the unit stood, and look in both places.

# %% [markdown]
# ## Magnet, pan and old film
#
# Look before you wipe. What is wiped off cannot be asked any more.

# %% tags=["predict"]
lesson.predict("yellow-flakes")

# %% tags=["then"]
given_table("What was found", ["find", "magnet", "it says"],
            [("grey paste, fine, does not scratch", "holds it", "ordinary wear of gears and rollers"),
             ("yellow shimmer, dust or flakes", "leaves it", "a brass synchroniser ring wears away"),
             ("chips, scales, rods with a shape of their own", "holds them", "a hardened part breaks up; find it"),
             ("rubbery strips, glassy grains, milky oil", "leaves them", "sealant, sand, water: look for the way in")])

# %% [markdown] tags=["then"]
# The **old film** is a record too. A film that peels from one face lay on oil. A roll inside the joint was too much. Bare metal from the inside to the outside is the leak itself. Draw it on the sheet, then clean.

# %% [markdown]
# ## Mark it, lay it out
#
# Ask of each part: can it go back in another way, and would anything show it? Ask of its place: does another part look the same?

# %% tags=["predict"]
lesson.predict("which-mark")

# %% tags=["then"]
given_table("Mark, bag or neither", ["the part", "what you do"],
            [("fits several ways, nothing shows which", "mark both parts to each other: paint pen where nothing runs or seals"),
             ("looks like another one: shims, springs, used rings", "bag it, and label its place"),
             ("fits one way only, or is marked already", "take it off; one more mark confuses"),
             ("bearing ring, joint face, seal seat", "no punch, no scriber: a tag")])

# %% [markdown] tags=["then"]
# Lay parts out in the order in which they came off, all facing the same way. Set the bolts in a card with the pattern of the case: their lengths differ. Take a picture before each group comes apart.

# %% [markdown]
# ## Clean without harm
#
# The face that you scratch today is the leak of next week. Grit that you make today is in the bearing tomorrow.

# %% tags=["predict"]
lesson.predict("dry-a-bearing")

# %% tags=["then"]
given_table("What cleans what", ["part", "with", "not with"],
            [("joint face of aluminium", "softener, plastic or wooden scraper", "steel scraper, abrasive disc, wire brush"),
             ("bearing", "clean solvent, drained on a cloth, oiled, turned by hand", "air, dry spinning"),
             ("oil gallery", "nylon brush and fresh solvent, until light shows through", "air into standing solvent"),
             ("plastic and rubber", "mild cleaner by its data sheet", "brake cleaner, hot caustic bath")])

# %% [markdown] tags=["then"]
# Petrol is no cleaner: its vapour finds a spark across the room. A caustic bath for steel eats aluminium. Read the data sheet of the cleaner for the part **and** for you.

# %% [markdown]
# ## Thrown away on principle
#
# Some parts are not judged at all.

# %% tags=["predict"]
lesson.predict("whole-seal")

# %% tags=["then"]
given_table("Thrown away, however good they look, in this unit", ["part"],
            [(part.name,) for part in unit.parts if part.single_use])

# %% [markdown] tags=["then"]
# A bearing that was pulled off through its rollers is thrown away as well: the pull dents its tracks, and it tells nobody. All else is cleaned and **measured**. What fits one place only, as shims, thrust washers and paired rings, is **kept by its place**.

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
# Every order that works gets full marks. Marks, cleaning, scrap, dangers and the state of the readings are **must-pass**: each line of those questions has to be right. Where an answer builds on an earlier one, a mistake is charged once.
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
