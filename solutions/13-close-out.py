# %% [markdown]
# # Close out: exercise
#
# <div class="twoshaft-if-missing">If no forms appear below: press <b>Run</b>, then <b>Run All Cells</b>.</div>
#
# Ten tasks about the last day of a rebuild: oil, level, breather, leak test, record, hand-over and complaints. Take about an hour.
#
# Every answer is saved as you give it; you can stop and come back.
#
# Write numbers the way you are used to, with their unit where there is one.
#
# *Invented unit, for teaching. On a real unit the maker's manual, local codes and licensed practice decide.*

# %% tags=["setup"]
from twoshaft.jobsheet import open_sheet
from twoshaft.plots.closing import oil_chart
from twoshaft.plots.tables import given_table

sheet = open_sheet("close-out")
given, unit = sheet.given, sheet.unit
asked = unit.close_out

# %% tags=["reference"]
from math import radians, sin

from twoshaft.models import closeout
from twoshaft.models.geartrain import cone_torque, synchronising_time
from twoshaft.models.viscosity import walther
from twoshaft.questions import bank_of
from twoshaft.units.quantities import Q
from twoshaft_grader.marking import Slip, line_reasons, ref

bank, lesson = bank_of("close-out"), "13-close-out"
asked, filling = unit.close_out, unit.strip.oil

# %% [markdown] tags=["task"]
# ## 1. Which drum?
#
# Four drums stand in the store. Part of each label is gone, and each has its data sheet. One drum suits this unit.
#
# The winter figure of an oil that suits reaches down to the coldest start. The oil is thick enough when it is hot. It has the right service, and it is made for synchroniser rings. Every other drum fails in one of these. **Every line of the last question must be right to pass.** *13 points.*

# %% tags=["rig"]
given_table("Grades of SAE J306", ["grade", "at 100 °C, mm²/s"],
            [("70", "5.0 to below 6.5"),
             ("75", "6.5 to below 8.5"),
             ("80", "8.5 to below 11.0"),
             ("85", "11.0 to below 13.5"),
             ("90", "13.5 to below 18.5"),
             ("110", "18.5 to below 24.0"),
             ("140", "24.0 to below 32.5"),
             ("70W, 75W, 80W, 85W", "must flow at −55, −40, −26, −12 °C")])

# %% tags=["rig"]
given_table("This unit asks for", ["what", "value"],
            [("service", f"{asked.oil.service}, made for synchroniser rings"),
             ("coldest start, °C", f"{asked.oil.coldest_c:g}"),
             ("hottest oil, °C", f"{asked.oil.hottest_c:g}"),
             ("viscosity at its hottest, mm²/s", f"at least {asked.oil.thinnest_mm2_per_s:g}")])

# %% tags=["rig"]
given_table("Data sheets", ["drum", "winter figure", "label", "at 40 °C, mm²/s", "at 100 °C, mm²/s"],
            [(one.id, one.winter, one.label, f"{one.at_40:g}", f"{one.at_100:g}") for one in given.oil.drums])

# %% tags=["rig"]
oil_chart([(one.id, one.at_40, one.at_100) for one in given.oil.drums])

# %% tags=["form"]
oil = given.oil
drums = [(one.id, one.text) for one in oil.drums]
sheet.form("oil",
    sheet.each("oil-grade", "Which grade is each oil, by its figure at 100 °C?", lines=drums, options=oil.grades),
    sheet.number("oil-read", f"From the chart: viscosity of drum {oil.read} at {oil.read_c:g} °C", "mm²/s"),
    sheet.each("oil-do", "What about each drum, for this unit?", lines=drums, options=oil.answers))

# %% tags=["reference"]
oil, where = given.oil, f"{lesson}#oil-by-its-grade"
grade = {one.id: closeout.hot_grade(Q(one.at_100, "mm**2/s")) for one in oil.drums}
GRADE = {one.id: f"{one.at_100:g} mm²/s at 100 °C lies in the range of SAE {grade[one.id]}." for one in oil.drums}
ref("oil-grade", grade, weight=1, outcome="choose-oil", shows="grade-and-chart", lesson=where,
    slips=line_reasons([(id, "") for id in grade], oil.grades, grade, GRADE))
(drum,) = (one for one in oil.drums if one.id == oil.read)
ref("oil-read", walther(Q(drum.at_40, "mm**2/s"), Q(drum.at_100, "mm**2/s"), Q(oil.read_c, "degC")),
    weight=1, outcome="choose-oil", shows="grade-and-chart", tolerance={"relative": 0.08}, lesson=where, slips=[
        Slip(Q(drum.at_40 + (drum.at_100 - drum.at_40) * (oil.read_c - 40) / 60, "mm**2/s"), 0.2,
             "Between 40 °C and 100 °C it does not fall evenly: follow the line in the chart.")])

# %% tags=["reference"]
DRUM = {"fill": "It flows at the coldest start, is thick enough hot, and is made for the rings: nothing speaks against it.",
        "cold": "Its winter figure stops above the coldest start: there it flows too slowly, and the rings cannot press it away.",
        "thin": "At the hottest its line lies below what is asked for: the film breaks, and teeth touch.",
        "ring": "It is made for axles: it keeps metal from gripping, and gripping is the work of a ring."}
takes = {}
for one in oil.drums:
    hot = walther(Q(one.at_40, "mm**2/s"), Q(one.at_100, "mm**2/s"), Q(asked.oil.hottest_c, "degC")).m
    rings = one.label == f"{asked.oil.service}, for synchroniser rings"
    takes[one.id] = "ring" if not rings else "cold" if closeout.WINTER_C[one.winter] > asked.oil.coldest_c else "thin" if hot < asked.oil.thinnest_mm2_per_s else "fill"
ref("oil-do", takes, weight=3, outcome="choose-oil", shows="drum-decided", must_pass=True, lesson=where,
    slips=line_reasons([(id, "") for id in takes], oil.answers, takes, {id: DRUM[to] for id, to in takes.items()}))

# %% tags=["mark"] task="oil" points=13

# %% [markdown] tags=["task"]
# ## 2. What the wrong oil does to a ring
#
# Work out what the cone does in one shift down, with the right oil. Leave the drag of the oil out.
#
# Then judge shifts with other oils. The drag of the oil works against the cone. If the distance grows by less than 10 %, it counts as before. *11 points.*

# %% tags=["rig"]
ring = given.ring
given_table(f"Your ring: {ring.what}", ["what", "value"],
            [("axial force on the ring, N", f"{ring.force_n:g}"),
             ("friction with the right oil", f"{ring.friction:g}"),
             ("friction with the wrong oil", f"{ring.wrong_friction:g}"),
             ("mean diameter of the cone, mm", f"{ring.diameter_mm:g}"),
             ("half angle of the cone, degrees", f"{ring.angle_deg:g}"),
             ("inertia to be brought to speed, kg·m²", f"{ring.inertia_kg_m2:g}"),
             ("difference of speed, r/min", f"{ring.speed_rpm:g}")])

# %% tags=["form"]
ring = given.ring
sheet.form(
    "ring",
    sheet.number("ring-torque", "Torque of the cone with the right oil", "N·m"),
    sheet.number("ring-time", "Time until both sides turn alike, with the right oil", "s"),
    sheet.number("ring-path", "Distance that the ring slides on its cone, with the right oil", "mm"),
    sheet.number("ring-longer", "How many times as far does it slide with the wrong oil?", ""),
    sheet.each("ring-does", "Other shifts. What does the ring do?", lines=[(one.id, one.text) for one in ring.others], options=ring.answers),
)

# %% tags=["reference"]
ring, where = given.ring, f"{lesson}#why-the-wrong-oil-eats-a-ring"
cone, angle, three = Q(ring.diameter_mm, "mm"), Q(ring.angle_deg, "degree"), {"relative": 0.03}
turned = cone_torque(Q(ring.force_n, "N"), ring.friction, cone, angle)
brakes = ref("ring-torque", turned, weight=1, outcome="protect-rings", shows="slide-worked",
    tolerance={"relative": 0.02}, lesson=where, slips=[
        Slip(2 * turned, 0.4, "The force acts at the radius of the cone: half its diameter."),
        Slip(turned * sin(radians(ring.angle_deg)), 0.3, "Divide by the sine of the half angle: a slim cone wedges.")])
inertia, speed = Q(ring.inertia_kg_m2, "kg*m**2"), Q(ring.speed_rpm, "rpm").to("rad/s")
taken = ref("ring-time", synchronising_time(inertia, speed, brakes), weight=1,
    outcome="protect-rings", shows="slide-worked", tolerance=three, lesson=where, slips=[
        Slip(Q(ring.inertia_kg_m2 * ring.speed_rpm / brakes.m_as("N*m"), "s"), 0.3,
             "Turn r/min into radians a second first: times 2π, divided by 60.")])

# %% tags=["reference"]
went = Q(speed.m / 2 * taken.m_as("s") * ring.diameter_mm / 2, "mm")
ref("ring-path", went, weight=1,
    outcome="protect-rings", shows="slide-worked", tolerance=three, lesson=where, slips=[
        Slip(2 * went, 0.4, "The speed falls evenly to nothing: on average it is half.")])
times = Q(ring.friction / ring.wrong_friction, "")
ref("ring-longer", times, weight=1, outcome="protect-rings", shows="slide-worked",
    tolerance={"relative": 0.02}, lesson=where, slips=[
        Slip(1 / times, 0.3, "This is the other way round: less friction, a longer distance."),
        Slip(times**2, 0.2, "Friction counts once: half the friction, twice the distance.")])

# %% tags=["reference"]
RING = {"alike": "Friction and drag leave the cone nearly all of its torque.",
        "longer": "The cone is left with much less torque, so it slides longer at the same force: the grooves of the ring wear away.",
        "never": "The drag is stronger than the cone: the speeds never meet, and the dog teeth grate."}
does, why = {}, {}
for one in ring.others:
    left = one.right_nm * one.friction / one.right_friction - one.drag_nm
    does[one.id] = "never" if left <= 0 else "alike" if one.right_nm / left < 1.1 else "longer"
    why[one.id] = f"The cone brakes with {left + one.drag_nm:.1f} N·m, the oil drags with {one.drag_nm:g}. {RING[does[one.id]]}"
ref("ring-does", does, weight=2.5, outcome="protect-rings", shows="slide-judged", lesson=where,
    slips=line_reasons([(id, "") for id in does], ring.answers, does, why))

# %% tags=["mark"] task="ring" points=11

# %% [markdown] tags=["task"]
# ## 3. How much, and up to where?
#
# The unit is dry inside. Its filling is stated for cold oil. A level counts only cold (up to 40 °C) and on a level floor.
#
# **Every line of the last question must be right to pass.** *12 points.*

# %% tags=["rig"]
fill, level = given.fill, unit.close_out.level
own = unit.strip.oil
given_table("Filling and level of your unit", ["what", "value"],
            [("right filling at 20 °C" if own.reference_c == 20 else f"right filling at {own.reference_c:g} °C", f"{own.capacity_litre:g} l"),
             ("growth of the oil for each kelvin, part of its volume", f"{own.expansion_per_k:g}"),
             ("density, cold", f"{own.density_kg_per_litre:g} kg/l"),
             ("oil in your can", f"{fill.can_c:g} °C"),
             ("a millimetre of level holds", f"{level.litre_per_mm:g} l"),
             ("later found below the edge, level and cold", f"{fill.below_mm:g} mm"),
             ("from the middle of the oil to the plug", f"{level.reach_mm:g} mm"),
             ("slope of the yard, plug side high", f"{fill.slope_deg:g}°")])

# %% tags=["form"]
fill = given.fill
sheet.form(
    "fill",
    sheet.number("fill-litres", "Litres that you measure out of your can", "l"),
    sheet.number("fill-kg", "The same filling on a scale", "kg"),
    sheet.number("fill-short", "Litres missing at the level that was found later", "l"),
    sheet.number("fill-slope", "By how much does the slope of the yard alone make the oil stand too low at the plug?", "mm"),
    sheet.each("fill-do", f"Other units. The oil may stand up to {unit.close_out.level.below_most_mm:g} mm below the edge. What do you do?",
               lines=[(one.id, one.text) for one in fill.others], options=fill.answers),
)

# %% tags=["reference"]
fill, level, where = given.fill, asked.level, f"{lesson}#how-much-and-up-to-where"
can, cold = Q(fill.can_c, "degC"), Q(filling.capacity_litre, "l")
warm = closeout.litres_to_fill(filling, can)
ref("fill-litres", warm, weight=1, outcome="fill-to-level", shows="filling-worked",
    tolerance={"absolute": Q(0.003, "l")}, lesson=where, slips=[
        Slip(cold, 0.3, "This is the filling cold; the oil in the can has another temperature."),
        Slip(2 * cold - warm, 0.3, "The other way: warm oil takes more room, cold oil less."),
        Slip(Q(filling.capacity_litre * (1 + filling.expansion_per_k * fill.can_c), "l"), 0.3,
             "Count the kelvins from the temperature of the filling, not from zero.")])
ref("fill-kg", Q(closeout.kilograms_to_fill(filling), "kg"), weight=0.7,
    outcome="fill-to-level", shows="filling-worked", tolerance={"relative": 0.004}, lesson=where, slips=[
        Slip(Q(filling.capacity_litre / filling.density_kg_per_litre, "kg"), 0.2, "Litres times density: oil is lighter than water.")])
ref("fill-short", Q(fill.below_mm * level.litre_per_mm, "l"), weight=0.7,
    outcome="fill-to-level", shows="filling-worked", tolerance={"relative": 0.02}, lesson=where, slips=[])

# %% tags=["reference"]
tilt, reach = Q(fill.slope_deg, "degree"), Q(level.reach_mm, "mm")
ref("fill-slope", closeout.level_error(reach, tilt), weight=1,
    outcome="fill-to-level", shows="filling-worked", tolerance={"relative": 0.03}, lesson=where, slips=[
        Slip(Q(level.reach_mm * fill.slope_deg / 100, "mm"), 0.2, "A degree is not a per cent: take the tangent of the slope.")])

# %% tags=["reference"]
LEVEL = {"leave": "It stands inside what is allowed, cold and level: more would foam and be pressed out.",
         "up": "It stands lower than allowed, cold and level: the upper bearings run dry first.",
         "out": "It stands above the edge, cold and level: gears churn it to foam, and the breather spits it out.",
         "again": "A slope or warm oil shifts the level by as much as is allowed: this reading decides nothing."}
stands = {}
for one in fill.others:
    reads = not one.slope_deg and one.oil_c <= 40
    stands[one.id] = "again" if not reads else "out" if one.below_mm < 0 else "leave" if one.below_mm <= level.below_most_mm else "up"
ref("fill-do", stands, weight=2.5, outcome="fill-to-level", shows="level-decided", must_pass=True, lesson=f"{lesson}#the-level",
    slips=line_reasons([(id, "") for id in stands], fill.answers, stands, {id: LEVEL[to] for id, to in stands.items()}))

# %% tags=["mark"] task="fill" points=12

# %% [markdown] tags=["task"]
# ## 4. A blocked breather
#
# The breather of your unit is blocked. Work out what happens as it warms. Temperatures count from absolute zero (0 °C is 273 K), pressures from vacuum.
#
# In the last question, leave the growth of the oil out. Those units held the pressure outside when their breather was blocked. *10 points.*

# %% tags=["rig"]
breather, own = given.breather, unit.strip.oil
given_table("Your unit, breather blocked", ["what", "value"],
            [("blocked at", f"{breather.closed_c:g} °C"),
             ("on the road", f"{breather.hot_c:g} °C"),
             ("pressure outside, from vacuum", f"{breather.outside_mbar:g} mbar"),
             ("air above the oil when it blocked", f"{unit.close_out.breather.air_litre:g} l"),
             ("oil", f"{own.capacity_litre:g} l"),
             ("growth of the oil for each kelvin, part of its volume", f"{own.expansion_per_k:g}")])

# %% tags=["form"]
breather = given.breather
sheet.form(
    "breather",
    sheet.number("breather-oil", "By how much does the oil grow?", "mL"),
    sheet.number("breather-alone", "Pressure above that outside, if the oil kept its size", "mbar"),
    sheet.number("breather-both", "Pressure above that outside, with the oil that has grown", "mbar"),
    sheet.each("breather-does", f"Other units, with {breather.outside_mbar:g} mbar outside. What happens?",
               lines=[(one.id, one.text) for one in breather.others], options=breather.answers),
)

# %% tags=["reference"]
breather, where = given.breather, f"{lesson}#the-breather"
outside, shut, hot = Q(breather.outside_mbar, "mbar"), Q(breather.closed_c, "degC"), Q(breather.hot_c, "degC")
kelvins, air = breather.hot_c - breather.closed_c, Q(asked.breather.air_litre, "l")
grown = ref("breather-oil", Q(filling.capacity_litre * filling.expansion_per_k * kelvins * 1000, "ml"), weight=1,
    outcome="judge-breather", shows="pressure-worked", tolerance={"relative": 0.03}, lesson=where, slips=[
        Slip(Q(asked.breather.air_litre * filling.expansion_per_k * kelvins * 1000, "ml"), 0.2, "This takes the litres of air; it is the oil that grows by this part.")])

# %% tags=["reference"]
alone = closeout.pressure_in(outside, shut, hot, air, Q(0, "l"))
ref("breather-alone", alone, weight=1.2, outcome="judge-breather",
    shows="pressure-worked", tolerance={"relative": 0.02}, lesson=where, slips=[
        Slip(outside + alone, 0.4, "This is counted from vacuum; take off the pressure outside."),
        Slip(Q(breather.outside_mbar * (breather.hot_c / breather.closed_c - 1), "mbar"), 0.1, "Count temperatures from absolute zero: add 273 to each.")])
both = closeout.pressure_in(outside, shut, hot, air, grown.to("l"))
ref("breather-both", both, weight=1, outcome="judge-breather",
    shows="pressure-worked", tolerance={"relative": 0.02}, lesson=where, slips=[
        Slip(outside + both, 0.4, "This is counted from vacuum; take off the pressure outside."),
        Slip(closeout.pressure_in(outside, shut, hot, air, -grown.to("l")), 0.3, "Oil that grows leaves less room for the air, so the pressure is higher.")])

# %% tags=["reference"]
happens, why = {}, {}
BLOCKED = {"holds": "Its seals hold that.", "out": "That is more than its seals hold: a lip lifts, and oil goes out.",
           "in": "It is below outside, and a lip seals badly inwards: it draws in dust or water."}
for one in breather.others:
    over = closeout.pressure_in(outside, Q(one.closed_c, "degC"), Q(one.now_c, "degC"), air, Q(0, "l")).m
    happens[one.id] = "in" if over < 0 else "out" if over > one.seal_mbar else "holds"
    why[one.id] = f"The pressure changes by {over:.0f} mbar. {BLOCKED[happens[one.id]]}"
ref("breather-does", happens, weight=2.5, outcome="judge-breather", shows="breather-judged", lesson=where,
    slips=line_reasons([(id, "") for id in happens], breather.answers, happens, why))

# %% tags=["mark"] task="breather" points=10

# %% [markdown] tags=["task"]
# ## 5. The leak test
#
# The dry unit took a little air, and the valve was shut. Meanwhile the air inside changed its temperature.
#
# Work out the leak. Then judge other units, with a guard band of 1.65 standard uncertainties. **Every line of that question must be right to pass.**
#
# Where your unit is drawn, point at what should keep the oil in. Front and rear, or above and below, may be the other way round. *14 points.*

# %% tags=["rig"]
leak = given.leak
given_table(
    "Test of your unit",
    ["what", "start", "end"],
    [
        ("gauge, mbar over outside", f"{leak.start_mbar:.1f}", f"{leak.end_mbar:.1f}"),
        ("air in the unit, °C", f"{leak.start_c:.1f}", f"{leak.end_c:.1f}"),
        ("time, minutes", "0", f"{leak.minutes:g}"),
    ],
)

# %% tags=["rig"]
leak = given.leak
given_table("Also known", ["what", "value"],
            [("pressure outside, from vacuum", f"{leak.outside_mbar:g} mbar"),
             ("air in the unit", f"{leak.litres:g} l"),
             ("largest leak allowed", f"{leak.most:g} mL/min"),
             ("standard uncertainty of your leak", f"{leak.u:g} mL/min")])

# %% tags=["form"]
from twoshaft.plots.unit_scene import near_picture

leak = given.leak
sheet.form(
    "leak",
    sheet.number("leak-kelvin", "By how much does one kelvin change the pressure of the closed air?", "mbar"),
    sheet.number("leak-lost", "Pressure lost by the leak alone, without the change of temperature", "mbar"),
    sheet.number("leak-rate", "Leak, as air at the pressure outside", "mL/min"),
    sheet.number("leak-edge", "Leak up to which your unit is proven tight", "mL/min"),
    sheet.each("leak-do", "Other units. What does each test prove, and what do you do?", lines=[(one.id, one.text) for one in leak.others], options=leak.answers),
    *([sheet.point("leak-foam", "Soapy water foams at this part of your unit. Where is it?",
                   lines=leak.foam.lines, picture=near_picture(unit, leak.foam.near))] if leak.foam else []),
)

# %% tags=["reference"]
leak, where = given.leak, f"{lesson}#the-leak-test"
outside, begun, ended = (Q(one, "mbar") for one in (leak.outside_mbar, leak.start_mbar, leak.end_mbar))
per_kelvin = closeout.pressure_per_kelvin(outside + begun, Q(leak.start_c, "degC"))
each = ref("leak-kelvin", Q(per_kelvin.m, "mbar"), weight=1, outcome="prove-tight", shows="leak-worked",
    tolerance={"relative": 0.02}, lesson=where, slips=[
        Slip(Q(leak.start_mbar / (leak.start_c + 273.15), "mbar"), 0.2, "Count the pressure from vacuum: gauge and outside together."),
        Slip(Q((leak.outside_mbar + leak.start_mbar) / leak.start_c, "mbar"), 0.1, "Count the temperature from absolute zero: add 273.")])
warmer = leak.end_c - leak.start_c
fallen = begun - ended + warmer * each
lost = ref("leak-lost", fallen, weight=1.3, outcome="prove-tight", shows="leak-worked",
    tolerance={"absolute": Q(0.12, "mbar")}, lesson=where, slips=[
        Slip(begun - ended, 0.2, "This is the gauge alone; the air changed its temperature as well."),
        Slip(begun - ended - warmer * each, 0.3, "The other way: warmer air pushes the gauge up and hides a leak.")])

# %% tags=["reference"]
room, time = Q(leak.litres, "l"), Q(leak.minutes, "minute")
rate = closeout.leak_rate(lost, room, time, outside)
ref("leak-rate", rate, weight=1.2, outcome="prove-tight", shows="leak-worked",
    tolerance={"relative": 0.03, "absolute": Q(0.15, "ml/minute")}, lesson=where, slips=[
        Slip(rate * leak.minutes, 0.3, "This is what left in the whole time; divide by the minutes."),
        Slip(rate * leak.outside_mbar / leak.start_mbar, 0.2, "Divide by the pressure outside: that is how much room the air takes there.")])
most, band = Q(leak.most, "ml/minute"), Q(closeout.GUARD * leak.u, "ml/minute")
ref("leak-edge", most - band, weight=0.8, outcome="prove-tight", shows="leak-worked",
    tolerance={"absolute": Q(0.06, "ml/minute")}, lesson=where, slips=[
        Slip(most + band, 0.2, "This lies above the limit: from here on it is proven to leak."),
        Slip(1 * most, 0, "At the limit itself every second unit leaks more than allowed."),
        Slip(most - Q(leak.u, "ml/minute"), 0.4, "The guard band is 1.65 times this uncertainty.")])

# %% tags=["reference"]
TEST = {"tight": "It keeps below the limit by more than the guard band.",
        "leaks": "It is above the limit by more than the guard band: oil would find the same way.",
        "again": "It is nearer to the limit than the guard band: a longer test is surer."}
proves, why = {}, {}
for one in leak.others:
    guard = closeout.GUARD * one.u
    proves[one.id] = "tight" if one.leak <= one.most - guard else "leaks" if one.leak >= one.most + guard else "again"
    why[one.id] = f"The guard band is {guard:.1f} mL/min. {TEST[proves[one.id]]}"
ref("leak-do", proves, weight=3, outcome="prove-tight", shows="leak-decided", must_pass=True, lesson=where,
    slips=line_reasons([(id, "") for id in proves], leak.answers, proves, why))

# %% tags=["reference"]
if leak.foam:
    spots = leak.foam.near.scene.spots
    foams = {id: leak.foam.near.scene.letter(id) for id, _ in leak.foam.lines}
    ref("leak-foam", foams, weight=1.2, outcome="prove-tight", shows="leak-found", lesson=where, slips=line_reasons(
        leak.foam.lines, [(spot.id, "") for spot in spots], foams, dict.fromkeys(
            foams, "This is something else. Find front and rear first, then the shaft or hole where the oil could get out.")))

# %% tags=["mark"] task="leak" points=14

# %% [markdown] tags=["task"]
# ## 6. Back into the vehicle
#
# The course describes this work and does not do it: the vehicle's manual has its order. When is each of these done? *8 points.*

# %% tags=["form"]
sheet.form("joined", sheet.each("joined-when", "When is it done?", lines=given.joined.lines, options=given.joined.answers))

# %% tags=["reference"]
JOINED = {"plate": "before", "spline": "before", "dowel": "before", "fork": "before", "jack": "lift", "turn": "lift", "gap": "lift", "sleeve": "lift",
          "level": "stand", "linkage": "stand", "hose": "stand", "pedal": "stand", "overrun": "drive", "warm": "drive", "listen": "drive", "morning": "drive"}
WHEN = {"before": "Once the unit hangs at the engine, nobody reaches that place any more.",
        "lift": "It belongs to the moment when unit and vehicle come together: before, there is nothing to join, later it is done.",
        "stand": "It needs the unit in its place, and it must be right before the first metre is driven.",
        "drive": "Only load, heat and time on the road show it."}
ref("joined-when", {one.id: JOINED[one.id] for one in given.joined.lines}, outcome="join-to-vehicle", shows="joined-in-time",
    lesson=f"{lesson}#back-into-the-vehicle", slips=line_reasons(bank.lists["joined"], given.joined.answers, JOINED,
                                                               {id: WHEN[to] for id, to in JOINED.items()}, shown=given.joined.lines))

# %% tags=["mark"] task="joined" points=8

# %% [markdown] tags=["task"]
# ## 7. A record to trust
#
# Four lines from records. Imagine that you open this unit in two years. *9 points.*

# %% tags=["form"]
sheet.form("record", sheet.each("record-says", "What about each line?", lines=given.record.lines, options=given.record.answers))

# %% tags=["reference"]
KIND = {"trust": ("bolts-b", "shim-a", "oil-c", "leak-b"), "figure": ("oil-a", "shim-c", "bolts-a", "leak-c"),
        "who": ("bolts-c", "shim-b", "oil-b", "leak-a"), "more": ("gears", "seal", "bearings", "old-noise")}
RECORD = {line: to for to, lines in KIND.items() for line in lines}
LINE = {"trust": "Day, initials, what, how much and with which tool: the next mechanic can check it.",
        "figure": "“Right”, “good” or “passed” is no figure, and a figure needs its unit: nobody can compare it in two years.",
        "who": "Without day and initials nobody can be asked, and nobody stands for it.",
        "more": "What was tried shows less than the line claims: the next mechanic looks in the wrong place."}
ref("record-says", {one.id: RECORD[one.id] for one in given.record.lines}, outcome="record-to-trust", shows="line-judged",
    lesson=f"{lesson}#a-record-to-trust", slips=line_reasons(bank.lists["record"], given.record.answers, RECORD,
                                                           {id: LINE[to] for id, to in RECORD.items()}, shown=given.record.lines))

# %% tags=["mark"] task="record" points=9

# %% [markdown] tags=["task"]
# ## 8. Hand it over?
#
# Four units are ready on paper, and you know one thing more about each. **Every line must be right to pass.** *9 points.*

# %% tags=["form"]
sheet.form("hand", sheet.each("hand-do", "What do you do?", lines=given.hand.lines, options=given.hand.answers))

# %% tags=["reference"]
AT_HAND = {"fine": ("all-gears", "old-parts", "rode-along", "bracket-bolt"), "tell": ("rings", "level-later", "hum", "mount"),
           "keep": ("drip", "third", "plug-hole", "fifth"), "ask": ("plate", "shaft", "pits", "price")}
HAND = {line: to for to, lines in AT_HAND.items() for line in lines}
GIVE = {"fine": "It was tried or put right, and nothing is left for the owner to look after.",
        "tell": "It holds, and the owner has to know it: what is only said is forgotten, so write it down too.",
        "keep": "It is a fault of the unit, found before the owner finds it: handed over, it comes back or hurts somebody.",
        "ask": "It costs more than was agreed, and it is cheapest now: only the owner decides what is paid for."}
ref("hand-do", {one.id: HAND[one.id] for one in given.hand.lines}, outcome="hand-over", must_pass=True, shows="told-kept-asked",
    lesson=f"{lesson}#the-hand-over", slips=line_reasons(bank.lists["hand"], given.hand.answers, HAND,
                                                       {id: GIVE[to] for id, to in HAND.items()}, shown=given.hand.lines))

# %% tags=["mark"] task="hand" points=9

# %% [markdown] tags=["task"]
# ## 9. From complaint to cause
#
# The table says what was tried on the road with four units. In each, one cause of the list explains all of it.
#
# The second question gives two causes that are left, and asks for the road test that tells them apart.
#
# Where your unit is drawn: four units lost oil and were opened at the same place. See which is built how; two may be alike. *12 points.*

# %% tags=["rig"]
given_table("Tried on the road", ["unit", "it was so", "it was not so"],
            [(one.id, one.was_so, one.was_not_so) for one in given.road.complaints])

# %% tags=["form"]
from twoshaft.plots.unit_scene import look_pictures

road = given.road
sheet.form("road",
    sheet.each("road-cause", "What do you look at first?", lines=[(one.id, f"Unit {one.id}") for one in road.complaints], options=road.causes),
    sheet.each("road-next", "Which of these tells the two causes apart?",
               lines=[(one.id, one.text) for one in road.pairs], options=road.checks),
    *([sheet.picture("road-looks", "Opened at one place, from a side of your own: which unit is it? Where two fit, either is right",
                     lines=road.built, pictures=look_pictures(unit, road.looks))] if road.looks else []))

# %% tags=["reference"]
road, where, words = given.road, f"{lesson}#from-complaint-to-cause", closeout.load_road()
behind, why = {}, {}
for one in road.complaints:
    said = dict.fromkeys(one.so, True) | dict.fromkeys(one.not_so, False)
    (behind[one.id],) = closeout.causes_left(said)
    why[one.id] = f"All that was tried fits one cause alone: {words.causes[behind[one.id]]}."
ref("road-cause", behind, weight=1.5, outcome="read-the-road", shows="cause-left", lesson=where,
    slips=line_reasons([(id, "") for id in behind], road.causes, behind, why))

# %% tags=["reference"]
tells, why = {}, {}
for pair in road.pairs:
    apart = [one.id for one in road.checks if one.id in closeout.tell_apart(pair.one, pair.other)]
    tells[pair.id] = apart[0] if apart else "none"
    why[pair.id] = f"It finds one of the two and not the other: {words.checks[apart[0]]}." if apart else "Each of these finds both or neither: take a test that is not in the list."
ref("road-next", tells, weight=1.5, outcome="read-the-road", shows="next-test", lesson=where,
    slips=line_reasons([(id, "") for id in tells], road.checks, tells, why))

# %% tags=["reference"]
from twoshaft.models import shape
from twoshaft.readings.scenes import lies_in

BUILT = {"right": "In this one something lies the wrong way round or is not there: compare the four part by part.",
         "turned": "Nothing is turned over in this one: compare each lip and wide end with the part beside it.",
         "missing": "Nothing is left out in this one: look for a bore or a gap that nothing fills."}
if road.looks:
    built = shape.built_how(unit, {look.letter: (look.near.scene.view, lies_in(look.near.scene)) for look in road.looks})
    ref("road-looks", built, weight=0.8, outcome="read-the-road", shows="cause-left", lesson=where,
        slips=line_reasons(road.built, [(look.letter, "") for look in road.looks], built, BUILT))

# %% tags=["mark"] task="road" points=12

# %% [markdown] tags=["task"]
# ## 10. Nobody is hurt
#
# Four situations on the last day. **Every line must be right to pass.** *8 points.*

# %% tags=["form"]
sheet.form("safe", sheet.each("safe-do", "What do you do in each situation?", lines=given.safe.lines, options=given.safe.answers))

# %% tags=["reference"]
SAFE = {"drain": "cool", "exhaust": "cool", "level-plug": "cool", "air-line": "vent", "wrench": "vent", "ear": "vent",
        "jack": "stand", "two-bolts": "stand", "wheels": "stand", "soap": "go", "hand-pump": "go", "level-floor": "go"}
ACTS = {"go": "Nothing is hot, under much pressure or badly held here: there is nothing to stop.",
        "cool": "Hot oil and hot metal burn before the hand is back: wait, or cover skin and face.",
        "vent": "Air in a case stores force: it throws a plug, bursts a cover or harms an ear. Let it down first.",
        "stand": "A jack sinks, two bolts tear, and wheels that turn catch a sleeve: stands first, and nobody under it."}
ref("safe-do", {one.id: SAFE[one.id] for one in given.safe.lines},
    outcome="close-safely", must_pass=True, shows="hot-air-stands", lesson=f"{lesson}#before-you-start",
    slips=line_reasons(bank.lists["safe"], given.safe.answers, SAFE, {id: ACTS[to] for id, to in SAFE.items()}, shown=given.safe.lines))

# %% tags=["mark"] task="safe" points=8

# %% [markdown]
# ## Done?
#
# Go back to **start-here** and press **Hand in**. You get a receipt. You can hand in again until the due date; the last one counts.
