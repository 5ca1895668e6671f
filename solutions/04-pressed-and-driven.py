# %% [markdown]
# # Pressed and driven parts: exercise
#
# <div class="twoshaft-if-missing">If no forms appear below: press <b>Run</b>, then <b>Run All Cells</b>.</div>
#
# Ten tasks about parts that are pressed, warmed, driven and locked. Take about 70 minutes; have paper and a calculator. Every answer is saved as you give it; you can stop and come back.
#
# Interference counts above zero, play below. Where an answer builds on an earlier one, a slip is charged once.
#
# *Invented unit, for teaching. On a real unit the maker's manual, local codes and licensed practice decide.*

# %% tags=["setup"]
from twoshaft.jobsheet import open_sheet
from twoshaft.models.fit import Ring
from twoshaft.plots.driven_section import driven_section
from twoshaft.plots.tables import given_table
from twoshaft.rigs import press_rig, seal_seat

sheet = open_sheet("pressed-and-driven")
given, unit = sheet.given, sheet.unit

# %% tags=["reference"]
from twoshaft.models import bench_tools, fit, order
from twoshaft.questions import bank_of
from twoshaft.readings.pressed_and_driven.driver import tight_in
from twoshaft.readings.pressed_and_driven.jobs import load_fitting_jobs
from twoshaft.records import labels
from twoshaft.units.quantities import Q
from twoshaft_grader.marking import Slip, line_reasons, reasons, ref, settled

where, bank = "04-pressed-and-driven", bank_of("pressed-and-driven")
HALF_UM, MICRON = Q(0.5, "um"), Q(0.0006, "mm")

# %% [markdown] tags=["task"]
# ## 1. Read a fit
#
# The drawing names a fit; the table has the zones of ISO 286 for this size, in micrometres from the nominal size. *10 points.*

# %% tags=["rig"]
given_table(f"Fit: {given.limits.size_mm:g} {given.limits.codes}; zones for this size"
            f"{given.limits.source}", ["zone", "lower limit, µm", "upper limit, µm"],
            [(name, f"{low:+g}", f"{high:+g}") for name, low, high in given.limits.zones])

# %% tags=["form"]
sheet.form(
    "limits",
    sheet.number("limits-hole", "Smallest hole", "mm"),
    sheet.number("limits-shaft", "Largest shaft", "mm"),
    sheet.number("limits-most", "Most interference; play as a minus", "µm"),
    sheet.number("limits-least", "Least interference; play as a minus", "µm"),
    sheet.choice("limits-kind", "What does this fit mean for the work?", options=given.limits.kinds),
)

# %% tags=["reference"]
zones = {zone.name: zone for zone in given.limits.zones}
made = fit.Fit(*(fit.Zone(name, given.limits.size_mm, zones[name].lower_um, zones[name].upper_um)
                 for name in given.limits.codes.split("/")))
hole = ref("limits-hole", made.hole.smallest, outcome="read-fit", tolerance=MICRON, lesson=f"{where}#read-a-fit",
           slips=[Slip(made.hole.largest, 0, "This is the largest hole; look at the lower limit.")])
shaft = ref("limits-shaft", made.shaft.largest, outcome="read-fit", tolerance=MICRON, lesson=f"{where}#read-a-fit",
            slips=[Slip(made.shaft.smallest, 0, "This is the smallest shaft; look at the upper limit.")])
uppers = Q(made.shaft.upper_um - made.hole.upper_um, "um")
most = ref("limits-most", (shaft - hole).to("um"), outcome="read-fit", weight=1.5, tolerance=HALF_UM,
           lesson=f"{where}#read-a-fit",
           slips=[Slip(uppers, 0, "You paired upper with upper; the tightest pair is the largest shaft in the smallest hole.")])

# %% tags=["reference"]
least = ref("limits-least", Q(made.least_um, "um"), outcome="read-fit", weight=1.5, tolerance=HALF_UM,
            lesson=f"{where}#read-a-fit",
            slips=[Slip(uppers, 0, "You paired upper with upper; the loosest pair is the smallest shaft in the largest hole.")])
kind = "press" if least.m_as("um") > 0 else "hand" if most.m_as("um") <= 0 else "either"
slips = reasons(given.limits.kinds, kind, {
    "grade": "A grade says how wide a zone is, not where it lies.", "basis": "The shaft may be larger still.",
    "middle": "Parts are made up to the limits, not only in the middle.", "press": "Look at the sign of the loosest pair.",
    "hand": "Look at the sign of the tightest pair.", "either": "Look at the signs of both pairs: are they the same?",
})
ref("limits-kind", kind, outcome="read-fit", weight=2, lesson=f"{where}#read-a-fit", slips=slips)

# %% tags=["mark"] task="limits" points=10

# %% [markdown] tags=["task"]
# ## 2. The force to expect
#
# Bore and ring were measured. Pressure in the seat = interference × the figure in the table. Force = π × diameter × length × pressure × friction, with MPa and mm giving newtons.
#
# Then push the ring to its shoulder below and read the gauge. The workshop's rule: a force outside your two limits by more than a tenth is looked into. *10 points.*

# %% tags=["rig"]
press = given.press
given_table(f"{press.name}{press.source}", ["", ""], [
    ("nominal diameter", f"{press.size_mm:g} mm"), ("length of the seat", f"{press.length_mm:g} mm"),
    ("hole, measured", f"{press.hole_mm:.3f} mm"), ("part inside it, measured", f"{press.shaft_mm:.3f} mm"),
    ("pressure for each µm of interference", f"{press.mpa_per_um:g} MPa"),
    ("friction, lowest and highest", f"{press.friction[0]:g} and {press.friction[1]:g}"),
    *([("interference allowed by the manual", f"{press.least_um:g} to {press.most_um:g} µm")] if press.least_um is not None else []),
])

# %% tags=["rig"]
press_rig(unit, given.press.press, grip_um=1000 * (given.press.shaft_mm - given.press.hole_mm),
          friction=given.press.true_friction)

# %% tags=["form"]
sheet.form(
    "press",
    sheet.number("press-grip", "Interference", "µm"),
    sheet.number("press-pressure", "Pressure in the seat", "MPa"),
    sheet.number("press-low", "Force at the lowest friction", "kN"),
    sheet.number("press-high", "Force at the highest friction", "kN"),
    sheet.number("press-read", "Force at the shoulder, as you read it", "kN"),
    sheet.choice("press-do", "What do you do?", options=given.press.todo),
)

# %% tags=["reference"]
press = given.press
seat = fit.Pressed.of(unit, press.press)
length, size = Q(press.length_mm, "mm"), Q(press.size_mm, "mm")
there = Q(1000 * (press.shaft_mm - press.hole_mm), "um")
grip = ref("press-grip", 1.0 * there, outcome="judge-force", tolerance=HALF_UM, lesson=f"{where}#force-of-the-press",
           slips=[Slip(there / 2, 0.3, "That is on the radius; interference counts on the diameter.")])
loaded = ref("press-pressure", grip * Q(press.mpa_per_um, "MPa/um"), outcome="judge-force", tolerance=0.015,
             lesson=f"{where}#force-of-the-press")

# %% tags=["reference"]
any_grip = Q(10.0, "um")  # force over pressure is the same for every grip
per_mpa = {mu: fit.press_force(any_grip, seat.pair, length, mu) / fit.pressure(any_grip, seat.pair)
           for mu in press.friction}
low_mu, high_mu = press.friction
told = "Your figure leaves out π: the seat is the way round times its length."
low = ref("press-low", (loaded * per_mpa[low_mu]).to("kN"), outcome="judge-force", tolerance=0.015,
          lesson=f"{where}#force-of-the-press", slips=[Slip((loaded * per_mpa[low_mu]).to("kN") / 3.14159, 0.3, told)])
high = ref("press-high", (loaded * per_mpa[high_mu]).to("kN"), outcome="judge-force", tolerance=0.015,
           lesson=f"{where}#force-of-the-press", slips=[Slip((loaded * per_mpa[high_mu]).to("kN") / 3.14159, 0.3, told)])

# %% tags=["reference"]
shows = fit.press_force(there, seat.pair, length, press.true_friction)
whole = bench_tools.scale_for(shows.m_as("kN"), bench_tools.PRESS_GAUGES_KN)
read = ref("press-read", shows, outcome="judge-force", tolerance=Q(0.75 * whole.mark, "kN"), lesson=f"{where}#force-of-the-press")
do = "stop" if read > 1.1 * high else "take-out" if read < 0.9 * low else "go-on"
slips = reasons(press.todo, do, {
    "go-on": "Hold the gauge against both of your forces.", "stop": "Hold the gauge against the larger of your forces.",
    "take-out": "Hold the gauge against the smaller of your forces.",
    "push-on": "What the press can give is not what the seat bears.", "hammer": "A blow on a loaded ring tilts it or makes it fly.",
    "compound": "Compound does not make a wrong size right.", "oil": "Nobody reaches under a loaded ram.",
})
ref("press-do", do, outcome="judge-force", weight=3, lesson=f"{where}#force-of-the-press", slips=slips)

# %% tags=["mark"] task="press" points=10

# %% [markdown] tags=["task"]
# ## 3. How warm, and how
#
# The outer part of a tight pair is to be warmed. Growth = diameter in metres × growth of a metre for each degree × rise. Add the rise that just frees it to the temperature of the room, and then the margin for handling. A rise is given in K (kelvin): one K is a step of one °C.
#
# Last, say what you do with each of four other parts. **You must get all four right to pass.** *13 points.*

# %% tags=["rig"]
heat = given.heat
given_table(f"{heat.name}{heat.source}", ["", ""], [
    ("diameter of the seat", f"{heat.size_mm:g} mm"), ("interference, measured in the room", f"{heat.grip_um:g} µm"),
    ("room", f"{heat.room_c:g} °C"), ("margin for handling", f"{heat.handling_k:g} K"),
    (f"a metre of the outer part ({heat.outer.name.lower()}) grows by", f"{heat.outer.growth_um:g} µm for each degree"),
    (f"a metre of the inner part ({heat.inner.name.lower()}) grows by", f"{heat.inner.growth_um:g} µm for each degree"),
    (f"hottest allowed ({heat.limit_of})", f"{heat.limit_c:g} °C"),
    *([("the oven, by its thermometer", f"{heat.oven_c:g} °C")] if heat.oven_c is not None else []),
])

# %% tags=["form"]
sheet.form(
    "heat",
    sheet.number("heat-rise", "Rise that just frees it", "K", of="temperature difference"),
    sheet.number("heat-to", "Temperature to warm it to", "°C", of="temperature"),
    sheet.number("heat-play", f"Play at {'the hottest allowed' if given.heat.oven_c is None else 'the temperature of the oven'}; "
                 "what still grips as a minus", "µm"),
    sheet.choice("heat-do", "What do you do with this part?", options=given.heat.todo),
    sheet.each("heat-how", "Other parts: what do you do in each case?", lines=given.heat.how,
               options=given.heat.how_todo),
)

# %% tags=["reference"]
heat = given.heat
seat, grips = Q(heat.size_mm, "mm"), Q(heat.grip_um, "um")
grows, inner = (Q(metal.growth_um * 1e-6, "1/K") for metal in (heat.outer, heat.inner))
limit, room = Q(heat.limit_c, "degC"), Q(heat.room_c, "degC")
warm = fit.warm_to_assemble(grips, seat, grows, limit, room=room, handling=Q(heat.handling_k, "delta_degC"))
other = fit.warm_to_assemble(grips, seat, inner, limit, room=room)
free = Q(warm.free_c - heat.room_c, "delta_degC")
near = {"relative": 0.012, "absolute": Q(0.6, "delta_degC")}
rise = ref("heat-rise", free, outcome="warm-part", tolerance=near, lesson=f"{where}#warm-the-part", weight=2,
           slips=[Slip(Q(other.free_c - heat.room_c, "delta_degC"), 0.3, "That is the metal of the part that stays cold."),
                  Slip(2 * free, 0.2, "You worked with the radius; interference and growth both count on the diameter.")])

# %% tags=["reference"]
target = Q(heat.room_c + rise.m_as("delta_degC") + heat.handling_k, "degC")
goal = ref("heat-to", target, outcome="warm-part", weight=2, tolerance=Q(1, "delta_degC"), lesson=f"{where}#warm-the-part",
           slips=[Slip(Q(target.m - heat.room_c, "degC"), 0.3, "That is the rise; the room comes on top."),
                  Slip(Q(target.m - heat.handling_k, "degC"), 0.3, "There it just comes free: the margin for handling is missing.")])
warmest = heat.limit_c if heat.oven_c is None else heat.oven_c
room_left = fit.growth(seat, grows, Q(warmest - heat.room_c, "delta_degC"))
ref("heat-play", room_left - fit.growth(seat, grows, rise), outcome="warm-part", weight=2, tolerance=Q(1.2, "um"),
    lesson=f"{where}#warm-the-part", slips=[Slip(room_left, 0.2, "This is the growth; the interference is taken off it.")])

# %% tags=["reference"]
do = "warm" if goal.m_as("degC") <= heat.limit_c else "cool-too"
slips = reasons(heat.todo, do, {
    ("warm", "cool-too"): "Hold your temperature against the limit.",
    "over": "Steel softens and grease is lost at once, not after a minute.",
    "hammer": "Blows go through the rolling elements or crack the part.",
    "cold": "If both shrink the grip stays.", "no-margin": "It loses heat on the way and sticks halfway.",
    "file": "A seat that was rubbed down no longer holds when cold.",
})
ref("heat-do", do, outcome="warm-part", weight=2.5, lesson=f"{where}#warm-the-part", slips=slips)

# %% tags=["reference"]
HOW = {"oven-sealed": "go", "probe": "go", "bare-housing": "go", "even-gear": "go",
       "seal-in": "out", "ring-in": "out", "vent-in": "out", "sensor-in": "out",
       "over-sealed": "change", "flame": "change", "one-side": "change", "unread": "change"}
EVEN = "Nothing is wrong here: it warms evenly, the temperature is read, and it lies below the limit."
STILL_IN = "The part itself bears it, and that draws the eye; what is still in it melts or goes hard and is scrap."
BURNT = {
    **dict.fromkeys(("oven-sealed", "probe", "bare-housing", "even-gear"), EVEN),
    **dict.fromkeys(("seal-in", "ring-in", "vent-in", "sensor-in"), STILL_IN),
    "over-sealed": "An open bearing would bear it; here the grease runs out and the seals, which cannot come out, go hard.",
    "flame": "The thermometer shows one spot; a flame, moved or not, heats another far past the limit, and the ring softens there.",
    "one-side": "Both figures lie below the limit, but warmed from one side the bore grows oval and sticks halfway.",
    "unread": "Minutes are no degrees: the same time overheats a small ring and leaves a large one tight.",
}

# %% tags=["reference"]
ref("heat-how", {id: HOW[id] for id in labels(heat.how)}, outcome="warm-safely", weight=4, must_pass=True,
    lesson=f"{where}#warm-the-part",
    slips=line_reasons(bank.lists["how"], heat.how_todo, HOW, BURNT, shown=heat.how))

# %% tags=["mark"] task="heat" points=13

# %% [markdown] tags=["task"]
# ## 4. Where the driver bears
#
# Three bearings are to be fitted cold. A seat that may grip counts as one that grips. Then look at the drawing. *10 points.*

# %% tags=["rig"]
given_table("Interference, µm; below zero is play", ["no.", "what is done", "inner ring on shaft", "outer ring in case"],
            [(n, case.story, *(f"{grip.least_um:+d} to {grip.most_um:+d}" if grip else "no mate yet"
                               for grip in (case.inner, case.outer)))
             for n, case in enumerate(given.driver.cases, 1)])

# %% tags=["rig"]
driven_section(frozenset({Ring(given.driver.shown.driven)}), frozenset({Ring(given.driver.shown.tight)}),
               way=False)

# %% tags=["form"]
sheet.form(
    "driver",
    *[sheet.choice(f"driver-{n}", f"Bearing {n}: where does the driver bear?", options=given.driver.places)
      for n in (1, 2, 3)],
    sheet.choice("driver-way", "The drawing: how does the force get to the tight seat?", options=given.driver.paths),
    sheet.choice("driver-home", given.driver.home.story, options=given.driver.home.options),
)

# %% tags=["reference"]
why = {
    "cage": "A cage carries nothing; it bends into the balls.", "shield": "A shield bends and rubs.",
    "hammered": "From the ring that slides every blow goes through the balls.",
    "none": "One of the seats may grip: look for a figure above zero.",
    "both": "Only a ring that can grip needs the driver; are both of them tight here?",
    ("outer", "inner"): "Look which seat can grip: the driver bears on that ring.",
}
for n, case in enumerate(given.driver.cases, 1):
    tight = tight_in(case)
    right = "none" if not tight else "both" if len(tight) > 1 else next(iter(tight)).value
    ref(f"driver-{n}", right, outcome="drive-right-ring", weight=2, lesson=f"{where}#where-the-driver-bears",
        slips=reasons(given.driver.places, right, why))

# %% tags=["reference"]
drawn = given.driver.shown
crosses = fit.crosses_elements(frozenset({fit.Ring(drawn.driven)}), frozenset({fit.Ring(drawn.tight)}))
way = "elements" if crosses else "direct"
slips = reasons(given.driver.paths, way, {
    "direct": "The driver stands on one ring and the heavy line marks the other: the balls lie between them.",
    "elements": "The driver stands on the ring with the heavy line, so the force crosses no ball on its way.",
    "cage": "It lies halfway between the rings, but a cage only keeps the balls apart: it bends and shares out nothing.",
    "halves": "The driver touches one ring alone, so all of the force goes in there.",
    "shaft": "The shaft is the thickest piece in the drawing; the seat slides and the raceways dent long before it gives way.",
    "spread": "Steel takes the shortest way from driver to seat, and what lies on that way bears it all.",
})
ref("driver-way", way, outcome="drive-right-ring", weight=2, lesson=f"{where}#where-the-driver-bears", slips=slips)

# %% tags=["reference"]
blunder = {
    "flush": "A flush edge looks finished, but shoulders differ: the ring can be flush and still stand off its shoulder.",
    "blows": "The last one was another pair: with more interference, the same blows leave it short.",
    "stops": "A ring that tilts stops too; press harder on it now and it scores the bore.",
    "turns": "A shaft turns just as freely with a ring that is a hair off its shoulder; later it moves, and the play is wrong.",
    "oil": "Oil comes out as soon as the ring fills the bore, long before it is home.",
    "one-side": "A lid bends; a ring does not: it jams askew and scrapes the bore.",
    "dry": "A quick dry start feels clean, but a dry seat picks up metal, and a ring that tilts is stuck at once.",
    "punch": "One place goes in and the opposite side comes out: the ring stands askew and the punch marks its face.",
    "grease": "Grease cannot get out from under the ring: it pushes back, and the ring seems to be home too early.",
    "ground": "It does find the bore, but a ring without its edge sits on less, and grit from the wheel runs in the bearing.",
}

# %% tags=["reference"]
blunder |= {
    "gear": "A wide gear stands firmly, but the whole force then runs through its teeth and its own seat, and moves it.",
    "outer": "Then the force runs through the balls of that other bearing and dents its raceways.",
    "hand": "It would keep the shaft upright, but when the shaft slips the hand is under the press.",
    "case": "The case has the height, but the force goes into thin alloy that cracks, not into the shaft.",
    "synchro": "It is hard, and brittle too: it chips, or moves on its hub, and the gear no longer engages well.",
}
home, slips = settled(bank.questions["home"], given.driver.home, {
    "home": "signs", "start": "square", "support": "shaft"}, blunder)
ref("driver-home", home, outcome="drive-right-ring", weight=2, lesson=f"{where}#where-the-driver-bears", slips=slips)

# %% tags=["mark"] task="driver" points=10

# %% [markdown] tags=["task"]
# ## 5. A seal that somebody fitted
#
# Read the gauge at all four places and take the bridge off. Give the mean depth of the four (proud as a minus) and the lean: deepest less shallowest. Then tick **all** that is wrong, and decide. *9 points.*

# %% tags=["rig"]
seal = given.seal
given_table(f"{seal.name}: what was seen", ["", ""], [
    ("lip and the space behind it", "packed with grease" if seal.greased else "dry"),
    ("shaft that the lip passes", "splined" if seal.needs_sleeve else "smooth"),
    ("how the lip passed it", "over a smooth sleeve" if seal.sleeve_used and seal.needs_sleeve else "straight over it"),
])

# %% tags=["rig"]
seal_seat(unit, given.seal.seal, fitted=given.seal)

# %% tags=["form"]
sheet.form(
    "seal",
    sheet.number("seal-depth", "Mean depth below the face", "mm"),
    sheet.number("seal-lean", "Lean across the seal", "mm"),
    sheet.choices("seal-wrong", "What is wrong with it?", options=given.seal.faults),
    sheet.choice("seal-do", "What do you do?", options=given.seal.todo),
)

# %% tags=["reference"]
seal = given.seal
depths = bench_tools.seal_depths(seal.depth_mm, seal.lean_mm, seal.towards)
mean, lean = sum(depths) / len(depths), fit.tilt(depths)
depth = ref("seal-depth", mean, outcome="seat-seal", weight=1.5, tolerance=Q(0.015, "mm"), lesson=f"{where}#seals",
            slips=[Slip(mean + Q(bench_tools.SEAL_BRIDGE_MM, "mm"), 0.3, "The bridge has not been taken off.")])
leans = ref("seal-lean", lean, outcome="seat-seal", weight=1.5, tolerance=Q(0.025, "mm"), lesson=f"{where}#seals",
            slips=[Slip(lean / 2, 0.3, "That is from the middle to one side; the lean counts right across.")])

# %% tags=["reference"]
rule = fit.seal_of(unit, seal.seal)
stands = fit.SealFitted(
    seal.lip, tuple(d.m_as("m") for d in fit.seal_readings(depth, abs(leans))), seal.greased,
    seal.sleeve_used or not seal.needs_sleeve)
keys = {fault.key for fault in fit.seal_faults(rule, stands)}
wrong = (keys - {"depth"}) | ({"deep" if depth.m_as("m") > rule.depth_m[1] else "proud"} if "depth" in keys else set())
ticked = wrong or {"lip"}
ref("seal-wrong", ticked, outcome="seat-seal", weight=3, lesson=f"{where}#seals", slips=reasons(seal.faults, ticked, {
    "lip": "The drawing shows the lip on the side of the oil, and there it belongs.",
    ("deep", "proud"): "Hold the mean of your four depths, without the bridge, against the rule of the gauge.",
    "square": "Hold deepest less shallowest against the lean that is allowed.", "grease": "The table says that the lip was greased.",
    "sleeve": "Look at the table: a smooth shaft needs no sleeve, and over splines one was used.",
    "spring": "The spring belongs on the side of the oil; it presses the lip on the shaft.",
    "sealant": "A rubber-covered edge seals by itself; sealant can reach the lip."}))

# %% tags=["reference"]
do = "further" if wrong <= {"proud", "grease"} else "new"
slips = reasons(seal.todo, do, {
    "turn": "A seal that was driven in is bent by taking it out: it is used once.", "side": "A punch bends the rim and cuts the lip.",
    "leave": "A seal does not settle; it leaks.", "paste": "It leaks at the lip, not at the edge.", "back": "A hook under the lip ends the lip.",
    "further": "This fault is not cured by driving further in.", "new": "Nothing here has cost the seal yet: it only has further to go.",
})
ref("seal-do", do, outcome="seat-seal", weight=3, lesson=f"{where}#seals", slips=slips)

# %% tags=["mark"] task="seal" points=9

# %% [markdown] tags=["task"]
# ## 6. A spring pin
#
# Force at the pin = hand × lever. The table gives loads in **double** shear; one plane bears half. Two nested pins add up. The pin must bear the force as many times as the table says. *8 points.*

# %% tags=["rig"]
spring = given.spring
given_table(spring.name, ["", ""], [
    ("hardest pull at the knob", f"{spring.hand_n} N"), ("lever, knob to pin", f"{spring.ratio:g} to 1"),
    ("planes in which it would shear", spring.planes), ("times the force it must bear", spring.margin),
    *[(f"spring pin of {one.size_mm:g} mm, double shear", f"{one.double_shear_kn:g} kN") for one in spring.loads],
    ("hole", f"for {spring.size_mm:g} mm; the pin of {spring.inner_mm:g} mm nests in it"),
])

# %% tags=["form"]
sheet.form(
    "spring",
    sheet.number("spring-force", "Force at the pin", "kN"),
    sheet.number("spring-bears", "What one pin of the hole's size bears here", "kN"),
    sheet.number("spring-times", "How many times the force is that?"),
    sheet.choice("spring-do", "What do you fit?", options=given.spring.todo),
    sheet.choice("spring-slot", given.spring.slot.story, options=given.spring.slot.options),
)

# %% tags=["reference"]
spring = given.spring
force = ref("spring-force", fit.fork_pin_force(Q(spring.hand_n, "N"), spring.ratio), outcome="choose-pin", tolerance=0.01,
            weight=1.5, lesson=f"{where}#spring-pins",
            slips=[Slip(Q(spring.hand_n / spring.ratio / 1e3, "kN"), 0, "The lever multiplies the pull; you divided.")])
pins = [fit.spring_pin(Q(one.size_mm, "mm")) for one in spring.loads]
loads = [pin.shear_load(spring.planes) for pin in pins]
turned = [Slip(pins[0].shear_load(3 - spring.planes), 0, "Count the planes again: the table is for two.")]
bears = ref("spring-bears", loads[0], outcome="choose-pin", weight=1.5, tolerance=0.01, lesson=f"{where}#spring-pins", slips=turned)
times = ref("spring-times", (bears / force).m_as(""), outcome="choose-pin", weight=1.5, tolerance=0.02, lesson=f"{where}#spring-pins")

# %% tags=["reference"]
nested = (bears + bears * (loads[1] / loads[0])) / force
do = "one" if times >= spring.margin else "nest" if nested.m_as("") >= spring.margin else "larger"
slips = reasons(spring.todo, do, {
    "one": "One pin does not bear it as often as it must.", "nest": "Add both loads and hold the sum against what is wanted; one may do already.",
    "larger": "Add up what one pin and both together bear.", "old": "A spring pin holds by its spring, and that is used up: it is fitted once.",
    "bolt": "A bolt is softer, and loose in the hole.", "solid": "Solder bears nothing and stops the pin from springing.",
    "longer": "Shear goes across the pin; length does not count.",
})
ref("spring-do", do, outcome="choose-pin", weight=2.5, lesson=f"{where}#spring-pins", slips=slips)

# %% tags=["reference"]
weak = {
    "across": "Square to the force the slot looks out of the way; but then the force bends the pin's thin sides, and the hole hammers wide.",
    "slant": "Halfway is neither: the pin still springs under each pull, and works loose in the hole.",
    "up": "Oil finds its way in anyway; what counts is the force, and it may now act square to the slot.",
    "any": "The pin is round, but slotted: it is stiff along the slot's line and soft across it.",
    "seam": "The seam shows where the mould was parted, and says nothing of where the force comes from.",
    "together": "In line both pins close at the same side: the weak sides add up, and the pair gives there.",
    "no-matter": "The inner pin is gripped by the outer one and does not turn: as you drive it in, so it stays.",
    "filled": "Sealant keeps water out, but in the slots it stops both pins from closing, so they do not grip.",
    "inner-only": "Each pin has its weak side at its own slot; with both in one place the pair is weak there.",
    "quarter": "One above the other they are in line again, and square to the force is the weak side.",
}

# %% tags=["reference"]
weak |= {
    "proud": "The same length on each side looks right, but an end that stands out catches on what moves past it.",
    "bottom": "A hole can be deeper than the pin is long: driven on, one side of the part is left without a pin.",
    "flush-hit": "Flush at the near side says nothing of the far side: there the end may stand out, or not reach its hole.",
    "fold": "A spread end looks like a rivet, but a hard pin cracks there, and it no longer comes out.",
    "loose-end": "It does come out easily, by itself too: half a pin shears in one plane and walks out.",
}
slot, slips = settled(bank.questions["slot"], spring.slot, {
    "direction": "along", "nested": "apart", "depth": "below"}, weak)
ref("spring-slot", slot, outcome="choose-pin", weight=2.5, lesson=f"{where}#spring-pins", slips=slips)

# %% tags=["mark"] task="spring" points=8

# %% [markdown] tags=["task"]
# ## 7. A taper pin
#
# Taper 1 in 50: the diameter grows by 0.02 mm for each millimetre of length. *10 points.*

# %% tags=["rig"]
taper = given.taper
given_table("Taper pin", ["", ""], [
    ("pin, small end and length", f"{taper.small_mm:g} × {taper.length_mm} mm"),
    ("hole at its wide end", f"{taper.hole_mm:.2f} mm"),
    ("when home the large end shall stand proud by", f"{taper.low_mm:g} to {taper.high_mm:g} mm"),
    ("the pin is now to be driven", "in" if taper.insert else "out again"),
])

# %% tags=["form"]
sheet.form(
    "taper",
    sheet.number("taper-large", "Diameter of its large end", "mm"),
    sheet.number("taper-proud", "It stands proud by (sunk as a minus)", "mm"),
    sheet.number("taper-after", f"The hole is reamed {given.taper.wider_mm:.2f} mm wider: proud by", "mm"),
    sheet.choice("taper-do", "What do you do with the hole as it was measured?", options=given.taper.todo),
    sheet.choice("taper-end", "Which end is struck for the job in the last row?", options=given.taper.ends),
)

# %% tags=["reference"]
taper = given.taper
pin = fit.TaperPin(taper.small_mm / 1e3, taper.length_mm / 1e3)
hole = Q(taper.hole_mm, "mm")
half = Q(taper.small_mm + taper.length_mm / 25, "mm")
large = ref("taper-large", pin.large, outcome="choose-pin", tolerance=Q(0.005, "mm"), lesson=f"{where}#taper-pins",
            slips=[Slip(half, 0.2, "The taper counts on the diameter already; you doubled it.")])
per_mm = 1 / fit.pins.TAPER
proud = ref("taper-proud", (large - hole) * per_mm, outcome="choose-pin", weight=1.5, tolerance=Q(0.06, "mm"), lesson=f"{where}#taper-pins",
            slips=[Slip((large - hole).to("mm"), 0.2, "That is by how much it is thicker; each 0.02 mm is 1 mm of length.")])
ref("taper-after", proud - Q(taper.wider_mm, "mm") * per_mm, outcome="choose-pin", weight=1.5, tolerance=Q(0.06, "mm"), lesson=f"{where}#taper-pins",
    slips=[Slip(proud + Q(taper.wider_mm, "mm") * per_mm, 0, "A wider hole lets the pin in deeper.")])

# %% tags=["reference"]
stands = proud.m_as("mm")
do = "home" if taper.low_mm <= stands <= taper.high_mm else "ream" if stands > taper.high_mm else "sunk"
slips = reasons(taper.todo, do, {
    "drive": "Driven harder it splits the boss; it seats where the cone fits.", "grind": "What stands out is what it is driven home by later.",
    "washer": "A taper holds by its cone alone.", "turned": "Turned round it touches at one edge only.",
    "home": "Hold your figure against both limits.", "ream": "Reaming lets it in deeper: is that needed?", "sunk": "Only a pin that stands too little has sunk.",
})
ref("taper-do", do, outcome="choose-pin", weight=2, lesson=f"{where}#taper-pins", slips=slips)

# %% tags=["reference"]
end = "large-strike" if fit.drive_from(taper.insert) == "large end" else "small-strike"
slips = reasons(taper.ends, end, {
    "large-strike": "The large end is the easy one to hit, but the pin is to come out, and that blow drives it in tighter.",
    "small-strike": "The pin is to go in: struck at its small end, it comes out of the wide end of the hole.",
    "either": "The nearer end is less trouble, but a taper moves one way freely: the other way, you jam it or loosen it.",
    "press-both": "A vice pushes on both ends at once, so the pin stays where it is and its ends spread.",
    "turn-out": "It has no thread: turned, it scores its hole, and the jaws mark the pin.",
    "pull": "The lever bends and the pin goes askew in its hole; a taper lets go at one straight blow.",
})
ref("taper-end", end, outcome="choose-pin", weight=2, lesson=f"{where}#taper-pins", slips=slips)

# %% tags=["mark"] task="taper" points=10

# %% [markdown] tags=["task"]
# ## 8. What holds it in place
#
# A nut was staked. The tab gives way by shear or by crushing, whichever takes less. The workshop's rule: it must hold at least as many times the drag as the table says; a cracked tab means a new nut. Then two questions about circlips. *9 points.*

# %% tags=["rig"]
locks = given.locks
given_table(f"{locks.name}{locks.source}", ["", ""], [
    ("tab shears off at, whatever its depth", f"{locks.shear_nm:g} N·m"),
    ("tab is crushed at, for each mm of depth", f"{locks.crush_nm_mm:g} N·m"),
    ("depth of the tab in its slot, measured", f"{locks.depth_mm:g} mm"),
    ("drag that tries to turn the nut", f"{locks.drag_nm:g} N·m"), ("times the drag it must hold", f"{locks.margin:g}"),
    ("the tab is", "cracked at its root" if locks.cracked else "whole"),
])

# %% tags=["form"]
sheet.form(
    "locks",
    sheet.number("locks-holds", "Torque that the stake holds", "N·m"),
    sheet.number("locks-times", "How many times the drag is that?"),
    sheet.choice("locks-do", "What do you do?", options=given.locks.todo),
    sheet.choice("locks-edge", f"A part pushes a circlip to the {given.locks.pushed}. Where does the clip's sharp edge face?",
                 options=given.locks.edges),
    sheet.choices("locks-clips", "Circlips: which of these are right?", options=given.locks.ticks),
)

# %% tags=["reference"]
locks = given.locks
stake = fit.Stake(locks.shear_nm, locks.crush_nm_mm * locks.depth_mm)
more = max(stake.shear_nm, stake.crush_nm)
holds = ref("locks-holds", stake.holds, outcome="lock-parts", weight=2, tolerance=0.01, lesson=f"{where}#stakes-and-circlips",
            slips=[Slip(Q(more, "N*m"), 0, "It gives way at the smaller of the two."),
                   Slip(Q(stake.shear_nm + stake.crush_nm, "N*m"), 0, "The two do not add: the first to give way ends it.")])
times = ref("locks-times", (holds / Q(locks.drag_nm, "N*m")).m_as(""), outcome="lock-parts", weight=2, tolerance=0.02,
            lesson=f"{where}#stakes-and-circlips")

# %% tags=["reference"]
do = "renew" if locks.cracked else "leave" if times >= locks.margin else "deeper"
slips = reasons(locks.todo, do, {
    "leave": "Look at the tab, and hold your figure against what is wanted.", "deeper": "Is it too little depth that is wrong here?",
    "renew": "The tab is whole; a nut is not spent by one stake.", "second": "A nut turned back has lost its clamp.",
    "compound": "From outside it never reaches the thread.", "torque": "Torque belongs to the joint, not to the lock.",
    "punch-flat": "Metal that was bent twice at one place cracks.",
})
ref("locks-do", do, outcome="lock-parts", weight=2, lesson=f"{where}#stakes-and-circlips", slips=slips)

# %% tags=["reference"]
edge = locks.pushed  # away from the part: the way it pushes
slips = reasons(locks.edges, edge, {
    ("left", "right"): "There the rounded edge meets the groove's wall, and under load the clip climbs out. Which way does the part push?",
    "inwards": "The edges lie on the clip's two faces; to the axis there is only its inner rim, which carries nothing.",
    "both": "A stamped clip has one sharp side and one rounded side, so only one of them can bear on the wall.",
    "rounded": "Filing saves fingers, but a clip without a sharp edge climbs out of its groove at the first push.",
    "no-matter": "The groove is the same on both sides; the clip is not, and its rounded side climbs out.",
})
ref("locks-edge", edge, outcome="lock-parts", weight=2, lesson=f"{where}#stakes-and-circlips", slips=slips)

# %% tags=["reference"]
good = {"away", "no-more", "all-round", "over", "eyes", "fitting"}
loose = {
    "towards": "The part then pushes on the sharp edge, and the rounded one climbs out of the groove.",
    "wide": "Opened wide it scrapes nothing, but it stays wide and lies loose in its groove.",
    "gap-force": "At its gap a clip has the least hold: under load the ends bend out there.",
    "bent": "Squeezed back it grips for now; stretched metal has lost its spring, and the clip jumps off on the road.",
    "screwdriver": "They reach in anywhere and slip as easily; the clip flies off, and the groove's edge is dented.",
    "half": "In use it does not go in, it goes out: the half that lies beside its groove pulls the rest after it.",
    "glue": "Compound holds a thread, not a clip that carries a load beside its groove: it breaks off at the first push.",
}
ref("locks-clips", set(labels(locks.ticks)) & good, outcome="lock-parts", weight=2, lesson=f"{where}#stakes-and-circlips",
    slips=reasons(bank.lists["clips"] + bank.lists["more_clips"], good, loose, shown=locks.ticks))

# %% tags=["mark"] task="locks" points=9

# %% [markdown] tags=["task"]
# ## 9. One job in order
#
# Put the steps into an order that works. More than one order is right. *7 points.*

# %% tags=["rig"]
given_table("The job", ["name"], [(given.order.job,)])

# %% tags=["form"]
sheet.form("order", sheet.order("order-job", "Put these steps in a workable order", steps=given.order.start))

# %% tags=["reference"]
ref("order-job", order.OrderTask.from_unit(load_fitting_jobs(), given.order.operations), outcome="order-fitting",
    lesson=f"{where}#one-job-from-start-to-end")

# %% tags=["mark"] task="order" points=7

# %% [markdown] tags=["task"]
# ## 10. At the bench
#
# Four situations, with and without a danger. **You must get every line right to pass.** *8 points.*

# %% tags=["form"]
sheet.form(
    "bench",
    sheet.each("bench-cautions", "What do you do in each situation?", lines=given.bench.cautions,
               options=given.bench.safety),
)

# %% tags=["reference"]
SAFE = {"square": "go", "punch": "go", "gloved": "go", "drain": "go",
        "eyes": "protect", "clip": "protect", "thin": "protect", "wet": "protect",
        "tilted": "change", "drill": "change", "spin": "change", "closed": "change"}

# %% tags=["reference"]
BARE = "The tools are right and the job is short, so the glasses wait; one splinter or one clip costs the eye."
HURT = {
    "square": "It stands square, the guard is shut and the gauge climbs evenly: that is how it should go.",
    "punch": "Soft face on a punch that fits, and eyes covered: nothing splinters here.",
    "gloved": "Hands are covered, the way is free, and everybody knows.",
    "drain": "Nothing turns, and nothing is hot or under pressure.",
    "eyes": BARE, "clip": BARE,
    "thin": "All else is in order, so the gloves are overlooked: thin rubber lets the heat through and burns the hand.",
    "wet": "All else is in order, but wet gloves freeze to the steel and carry the cold to the skin.",
    "tilted": "The shut guard makes it look safe; the tilted ring still holds the whole force, and cracks or flies out.",
    "drill": "Its size is right and the glasses are on, but a drill is harder than any punch and splinters at the first blow.",
    "spin": "Gloves and glasses stop no ball: driven by air at any pressure, a dry bearing scores itself and can throw them.",
    "closed": "Gloves and glasses keep out the cold only; the ice turns into gas that drives the air out of a small room.",
}

# %% tags=["reference"]
ref("bench-cautions", {id: SAFE[id] for id in labels(given.bench.cautions)}, outcome="safe-fitting", must_pass=True,
    lesson=f"{where}#before-you-start",
    slips=line_reasons(bank.lists["cautions"], given.bench.safety, SAFE, HURT, shown=given.bench.cautions))

# %% tags=["mark"] task="bench" points=8

# %% [markdown]
# ## Done?
#
# Go back to **start-here** and press **Hand in**. You get a receipt. You can hand in again until the due date; the last one counts.
