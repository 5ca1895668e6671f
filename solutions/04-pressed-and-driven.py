# %% [markdown]
# # Pressed and driven parts: exercise
#
# <div class="twoshaft-if-missing">If no forms appear below: press <b>Run</b>, then <b>Run All Cells</b>.</div>
#
# Ten tasks about parts that are pressed, warmed, driven and locked. Take about 80 minutes; have paper and a calculator.
#
# Every answer is saved as you give it; you can stop and come back.
#
# Interference counts above zero, play below. Where an answer builds on an earlier one, a mistake costs marks once.
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
from twoshaft_grader.marking import Slip, line_reasons, missed, reasons, ref

where, bank = "04-pressed-and-driven", bank_of("pressed-and-driven")
HALF_UM, MICRON = Q(0.5, "um"), Q(0.0006, "mm")

# %% [markdown] tags=["task"]
# ## 1. Read a fit
#
# The drawing names a fit; the table has the zones of ISO 286 for this size, in micrometres from the nominal size. The last question is about other fits too.
#
# *10 points.*

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
    sheet.each("limits-kind", "What does each fit mean for the work? Limits of size in mm.",
               lines=[("own", f"the fit {given.limits.codes} above"),
                      *((f"fit-{n}", f"hole {pair.hole_mm[0]:.3f} to {pair.hole_mm[1]:.3f}, shaft {pair.shaft_mm[0]:.3f} to {pair.shaft_mm[1]:.3f}")
                        for n, pair in enumerate(given.limits.others, 1))], options=given.limits.kinds),
)

# %% tags=["reference"]
zones = {zone.name: zone for zone in given.limits.zones}
made = fit.Fit(*(fit.Zone(name, given.limits.size_mm, zones[name].lower_um, zones[name].upper_um)
                 for name in given.limits.codes.split("/")))
hole = ref("limits-hole", made.hole.smallest, outcome="read-fit", shows="limits", tolerance=MICRON, lesson=f"{where}#read-a-fit",
           slips=[Slip(made.hole.largest, 0, "This is the largest hole; look at the lower limit.")])
shaft = ref("limits-shaft", made.shaft.largest, outcome="read-fit", shows="limits", tolerance=MICRON, lesson=f"{where}#read-a-fit",
            slips=[Slip(made.shaft.smallest, 0, "This is the smallest shaft; look at the upper limit.")])
uppers = Q(made.shaft.upper_um - made.hole.upper_um, "um")
most = ref("limits-most", (shaft - hole).to("um"), outcome="read-fit", shows="limits", weight=1.5, tolerance=HALF_UM,
           lesson=f"{where}#read-a-fit",
           slips=[Slip(uppers, 0, "You paired upper with upper; the tightest pair is the largest shaft in the smallest hole.")])

# %% tags=["reference"]
least = ref("limits-least", Q(made.least_um, "um"), outcome="read-fit", shows="limits", weight=1.5, tolerance=HALF_UM,
            lesson=f"{where}#read-a-fit",
            slips=[Slip(uppers, 0, "You paired upper with upper; the loosest pair is the smallest shaft in the largest hole.")])
grips = {"own": (least.m_as("um"), most.m_as("um"))}
for n, pair in enumerate(given.limits.others, 1):
    grips[f"fit-{n}"] = pair.shaft_mm[0] - pair.hole_mm[1], pair.shaft_mm[1] - pair.hole_mm[0]
kinds = {id: "press" if low > 0 else "hand" if high <= 0 else "either" for id, (low, high) in grips.items()}
WHOSE = {"press": "Even the smallest shaft is larger than the largest hole: pushed by hand, it jams at its edge.",
         "hand": "Even the largest shaft is smaller than the smallest hole: it slips in, and under load it creeps if nothing holds it.",
         "either": "The tightest pair grips and the loosest has play: take it for one of them and the driver is the wrong one half the time."}
ref("limits-kind", kinds, outcome="read-fit", shows="kind-of-fit", weight=3, lesson=f"{where}#read-a-fit",
    slips=line_reasons([(id, "") for id in kinds], given.limits.kinds, kinds, {id: WHOSE[kind] for id, kind in kinds.items()}))

# %% tags=["mark"] task="limits" points=10

# %% [markdown] tags=["task"]
# ## 2. The force to expect
#
# Bore and ring were measured. Pressure in the seat = interference × the figure in the table. Force = π × diameter × length × pressure × friction, with MPa and mm giving newtons.
#
# Then push the ring to its shoulder below and read the gauge. The workshop's rule: look into a force that is more than a tenth above the larger of the two forces worked out, or more than a tenth below the smaller. The last question is about other rings too, all at their shoulder. **It must be right to pass, in every line.** *10 points.*

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
    sheet.each("press-do", "What do you do in each case? Forces in kN.",
               lines=[("own", "the ring of the table, as you read its gauge"),
                      *((f"ring-{n}", f"worked out {one.low_kn:g} to {one.high_kn:g}, the gauge shows {one.shown_kn:g}")
                        for n, one in enumerate(given.press.others, 1))], options=given.press.todo),
)

# %% tags=["reference"]
press = given.press
seat = fit.Pressed.of(unit, press.press)
length, size = Q(press.length_mm, "mm"), Q(press.size_mm, "mm")
there = Q(1000 * (press.shaft_mm - press.hole_mm), "um")
grip = ref("press-grip", 1.0 * there, outcome="judge-force", shows="pressure-and-force", tolerance=HALF_UM, lesson=f"{where}#force-of-the-press",
           slips=[Slip(there / 2, 0.3, "That is on the radius; interference counts on the diameter.")])
loaded = ref("press-pressure", grip * Q(press.mpa_per_um, "MPa/um"), outcome="judge-force", shows="pressure-and-force", tolerance=0.015,
             lesson=f"{where}#force-of-the-press")

# %% tags=["reference"]
any_grip = Q(10.0, "um")  # force over pressure is the same for every grip
per_mpa = {mu: fit.press_force(any_grip, seat.pair, length, mu) / fit.pressure(any_grip, seat.pair)
           for mu in press.friction}
low_mu, high_mu = press.friction
told = "Your figure leaves out π: the area of the seat is π × diameter × length."
low = ref("press-low", (loaded * per_mpa[low_mu]).to("kN"), outcome="judge-force", shows="pressure-and-force", tolerance=0.015,
          lesson=f"{where}#force-of-the-press", slips=[Slip((loaded * per_mpa[low_mu]).to("kN") / 3.14159, 0.3, told)])
high = ref("press-high", (loaded * per_mpa[high_mu]).to("kN"), outcome="judge-force", shows="pressure-and-force", tolerance=0.015,
           lesson=f"{where}#force-of-the-press", slips=[Slip((loaded * per_mpa[high_mu]).to("kN") / 3.14159, 0.3, told)])

# %% tags=["reference"]
shows = fit.press_force(there, seat.pair, length, press.true_friction)
whole = bench_tools.scale_for(shows.m_as("kN"), bench_tools.PRESS_GAUGES_KN)
read = ref("press-read", shows, outcome="judge-force", shows="pressure-and-force", tolerance=Q(0.75 * whole.mark, "kN"), lesson=f"{where}#force-of-the-press")

# %% tags=["reference"]
gauges = {"own": (low.m_as("kN"), high.m_as("kN"), read.m_as("kN"))}
gauges |= {f"ring-{n}": (one.low_kn, one.high_kn, one.shown_kn) for n, one in enumerate(press.others, 1)}
acts = {id: "stop" if shown > 1.1 * most_kn else "take-out" if shown < 0.9 * least_kn else "go-on"
        for id, (least_kn, most_kn, shown) in gauges.items()}
GAUGE = {"go-on": "The gauge stands within the two forces, give or take a tenth: if you take the ring out again, a good seat is scraped for nothing.",
         "stop": "The press has force to spare, so you are tempted to push on; but far above the larger force, the ring tilts or scores the bore.",
         "take-out": "It goes in nicely, but far below the smaller force the seat hardly grips, and the ring turns in it on the road."}
ref("press-do", acts, outcome="judge-force", shows="stop-and-look", weight=4, must_pass=True,
    lesson=f"{where}#force-of-the-press",
    slips=line_reasons([(id, "") for id in acts], press.todo, acts, {id: GAUGE[act] for id, act in acts.items()}))

# %% tags=["mark"] task="press" points=10

# %% [markdown] tags=["task"]
# ## 3. How warm, and how
#
# The outer part of a tight pair is to be warmed. Growth = diameter in metres × growth of a metre for each degree × rise.
#
# Add the rise that just frees it to the temperature of the room, and then the margin for handling. A rise is given in K (kelvin): one K is a step of one °C.
#
# The last two questions are about other parts too. **They must be right to pass, in every line.** *13 points.*

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
    sheet.each("heat-do", "What do you do with each part? Temperatures in °C.",
               lines=[("own", "the part of the table, as it lies in the room"),
                      *((f"part-{n}", f"just free at {one.free_c}, margin {one.margin_k} K, limit {one.limit_c}; it is at {one.now_c}")
                        for n, one in enumerate(given.heat.others, 1))], options=given.heat.todo),
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
rise = ref("heat-rise", free, outcome="warm-part", shows="room-and-margin", tolerance=near, lesson=f"{where}#warm-the-part", weight=2,
           slips=[Slip(Q(other.free_c - heat.room_c, "delta_degC"), 0.3, "That is the metal of the part that stays cold."),
                  Slip(2 * free, 0.2, "You worked with the radius; interference and growth both count on the diameter.")])

# %% tags=["reference"]
target = Q(heat.room_c + rise.m_as("delta_degC") + heat.handling_k, "degC")
goal = ref("heat-to", target, outcome="warm-part", shows="room-and-margin", weight=2, tolerance=Q(1, "delta_degC"), lesson=f"{where}#warm-the-part",
           slips=[Slip(Q(target.m - heat.room_c, "degC"), 0.3, "That is the rise; the room comes on top."),
                  Slip(Q(target.m - heat.handling_k, "degC"), 0.3, "There it just comes free: the margin for handling is missing.")])
warmest = heat.limit_c if heat.oven_c is None else heat.oven_c
room_left = fit.growth(seat, grows, Q(warmest - heat.room_c, "delta_degC"))
ref("heat-play", room_left - fit.growth(seat, grows, rise), outcome="warm-part", shows="room-and-margin", weight=2, tolerance=Q(1.2, "um"),
    lesson=f"{where}#warm-the-part", slips=[Slip(room_left, 0.2, "This is the growth; the interference is taken off it.")])

# %% tags=["reference"]
warmed = {"own": (goal.m_as("degC"), heat.limit_c, heat.room_c)}
warmed |= {f"part-{n}": (one.free_c + one.margin_k, one.limit_c, one.now_c) for n, one in enumerate(heat.others, 1)}
warmings = {id: "cool-too" if needs > most_c else "go" if now >= needs else "warmer" for id, (needs, most_c, now) in warmed.items()}
HEATS = {"go": "It is warm enough to come free, with the margin, and below its limit: to wait longer only costs time.",
         "warmer": "It can get warm enough below its limit, but it is not there yet: pushed on now, it sticks halfway on the seat.",
         "cool-too": "With the margin it would go above its limit: that softens steel or costs the grease, and at the limit alone it sticks halfway."}
ref("heat-do", warmings, outcome="warm-part", shows="within-limit", weight=3.5, must_pass=True, lesson=f"{where}#warm-the-part",
    slips=line_reasons([(id, "") for id in warmings], heat.todo, warmings, {id: HEATS[one] for id, one in warmings.items()}))

# %% tags=["reference"]
HOW = {"oven-sealed": "go", "probe": "go", "bare-housing": "go", "even-gear": "go",
       "seal-in": "out", "ring-in": "out", "vent-in": "out", "sensor-in": "out",
       "over-sealed": "change", "flame": "change", "one-side": "change", "unread": "change"}
EVEN = "Nothing is wrong here: it warms evenly, the temperature is read, and it lies below the limit."
STILL_IN = "The part itself can take the heat, and you think of that alone; but what is still in it melts or goes hard and is scrap."
BURNT = {
    **dict.fromkeys(("oven-sealed", "probe", "bare-housing", "even-gear"), EVEN),
    **dict.fromkeys(("seal-in", "ring-in", "vent-in", "sensor-in"), STILL_IN),
    "over-sealed": "An open bearing would stand it; here the grease runs out and the seals, which cannot come out, go hard.",
    "flame": "The thermometer shows one spot; a flame, moved or not, heats another far past the limit, and the ring softens there.",
    "one-side": "Both figures lie below the limit, but warmed from one side the bore grows oval and sticks halfway.",
    "unread": "Minutes are no degrees: the same time overheats a small ring and leaves a large one tight.",
}

# %% tags=["reference"]
ref("heat-how", {id: HOW[id] for id in labels(heat.how)}, outcome="warm-safely", shows=("no-flame", "below-limit"), weight=4, must_pass=True,
    lesson=f"{where}#warm-the-part",
    slips=line_reasons(bank.lists["how"], heat.how_todo, HOW, BURNT, shown=heat.how))

# %% tags=["mark"] task="heat" points=13

# %% [markdown] tags=["task"]
# ## 4. Where the driver presses
#
# Four bearings are to be fitted cold. A seat that may grip counts as one that grips.
#
# Then look at the drawing, at other set-ups, and at rings on their way. **The first two questions must be right to pass, in every line.** *10 points.*

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
    sheet.each("driver-where", "Where does the driver press?",
               lines=[(f"bearing-{n}", f"Bearing {n}") for n, _ in enumerate(given.driver.cases, 1)], options=given.driver.places),
    sheet.each("driver-way", "How does the force run?",
               lines=[("drawing", "The drawing: driver and tight seat as shown"), *given.driver.paths.lines],
               options=given.driver.paths.answers),
    sheet.each("driver-home", "Rings that are going in, by their bore: what comes next?",
               lines=given.driver.home.lines, options=given.driver.home.answers),
)

# %% tags=["reference"]
bears_on = {}
for n, case in enumerate(given.driver.cases, 1):
    tight = tight_in(case)
    bears_on[f"bearing-{n}"] = "none" if not tight else "both" if len(tight) > 1 else next(iter(tight)).value
DRIVES = {"outer": "Only the outer ring's seat can grip: pressed anywhere else, the force crosses the balls, or nothing drives the ring.",
          "inner": "Only the inner ring's seat can grip: pressed anywhere else, the force crosses the balls, or nothing drives the ring.",
          "both": "Both seats can grip: a driver on one ring pulls the other along through the balls, and they dent the raceways.",
          "none": "Neither fit reaches above zero, so both slip in by hand: with a driver you would not notice that something else holds the bearing back."}
ref("driver-where", bears_on, outcome="drive-right-ring", shows="right-ring", weight=4, must_pass=True,
    lesson=f"{where}#where-the-driver-presses",
    slips=line_reasons([(id, "") for id in bears_on], given.driver.places, bears_on,
                       {id: DRIVES[place] for id, place in bears_on.items()}))

# %% tags=["reference"]
drawn = given.driver.shown
crosses = fit.crosses_elements(frozenset({fit.Ring(drawn.driven)}), frozenset({fit.Ring(drawn.tight)}))
WAY = {"case-outer": "seat", "shaft-inner": "seat", "both-plate": "seat",
       "case-inner": "balls", "shaft-outer": "balls", "bed-outer": "balls",
       "bed-gear": "part", "bed-clip": "part", "case-edge": "part"}
way = {"drawing": "balls" if crosses else "seat"} | {one.id: WAY[one.id] for one in given.driver.paths.lines}
RUNS = {"seat": "Driver and blocks stand right beside the tight seat, so the force crosses no ball and no other part.",
        "balls": "Driver or support is at the ring that is not tight: between the driver and what holds against it lie the balls.",
        "part": "The ring is the right one, which looks good; but see what holds against the force on the other side."}
ref("driver-way", way, outcome="drive-right-ring", shows="right-ring", weight=3, must_pass=True, lesson=f"{where}#where-the-driver-presses",
    slips=line_reasons([("drawing", ""), *bank.lists["paths"]], given.driver.paths.answers, WAY | way,
                       {id: RUNS[one] for id, one in (WAY | way).items()}, shown=[(id, "") for id in way]))

# %% tags=["reference"]
NEXT = {"jump-a": "home", "dull-a": "home", "sunk-in": "home", "stands-out": "home",
        "flush": "on", "rises": "on", "as-many": "on", "oil-out": "on",
        "started": "straight", "jump-b": "straight", "dull-b": "straight", "no-more": "straight"}
STANDS = {"home": "No feeler goes under it anywhere: it is home, wherever its edge lies, and more force only loads the shoulder.",
          "on": "It stands off its shoulder all round, so it is straight, but not home: later it moves, and the play is wrong.",
          "straight": "It stands further out at one side: it has tilted, and driven on it scores its bore or cracks."}
ref("driver-home", {one.id: NEXT[one.id] for one in given.driver.home.lines}, outcome="drive-right-ring",
    shows="square-and-home", weight=3, lesson=f"{where}#where-the-driver-presses",
    slips=line_reasons(bank.lists["home"], given.driver.home.answers, NEXT,
                       {id: STANDS[one] for id, one in NEXT.items()}, shown=given.driver.home.lines))

# %% tags=["mark"] task="driver" points=10

# %% [markdown] tags=["task"]
# ## 5. A seal that somebody fitted
#
# Read the gauge at all four places, take the bridge off, and give the mean depth. Where the seal stands proud, its depth has a minus.
#
# The lean is the deepest less the shallowest. Then tick **all** that is wrong. A seal that was driven in is used once: it can be driven further, not turned or straightened. The last question is about other seals. **It must be right to pass, in every line.** *9 points.*

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
    sheet.each("seal-do", "Other seals with the same limits of depth and lean: what do you do with each?",
               lines=given.seal.others.lines, options=given.seal.others.answers),
)

# %% tags=["reference"]
seal = given.seal
depths = bench_tools.seal_depths(seal.depth_mm, seal.lean_mm, seal.towards)
mean, lean = sum(depths) / len(depths), fit.tilt(depths)
depth = ref("seal-depth", mean, outcome="seat-seal", shows="depth-and-lean", weight=1.5, tolerance=Q(0.015, "mm"), lesson=f"{where}#seals",
            slips=[Slip(mean + Q(bench_tools.SEAL_BRIDGE_MM, "mm"), 0.3, "The bridge has not been taken off.")])
leans = ref("seal-lean", lean, outcome="seat-seal", shows="depth-and-lean", weight=1.5, tolerance=Q(0.025, "mm"), lesson=f"{where}#seals",
            slips=[Slip(lean / 2, 0.3, "That is from the middle to one side; the lean counts right across.")])

# %% tags=["reference"]
IS_SO = {
    "lip": "The drawing shows the lip turned away from the oil: it lets the oil out past it.",
    "deep": "The mean of the four depths is more than the rule allows: the lip runs off its track.",
    "proud": "The mean of the four depths is less than the rule asks for: the lip runs beside its track.",
    "square": "Deepest less shallowest is more than the lean that is allowed: the lip presses on one side and leaks at the other.",
    "grease": "The table says that it went on dry: the lip burns in its first turns.",
    "sleeve": "The table says that it went over bare splines: they cut the lip.",
}

# %% tags=["reference"]
rule = fit.seal_of(unit, seal.seal)
stands = fit.SealFitted(
    seal.lip, tuple(d.m_as("m") for d in fit.seal_readings(depth, abs(leans))), seal.greased,
    seal.sleeve_used or not seal.needs_sleeve)
keys = {fault.key for fault in fit.seal_faults(rule, stands)}
wrong = (keys - {"depth"}) | ({"deep" if depth.m_as("m") > rule.depth_m[1] else "proud"} if "depth" in keys else set())
ticked = wrong or {"lip"}
ref("seal-wrong", ticked, outcome="seat-seal", shows=("lip", "depth-and-lean"), weight=2.5, lesson=f"{where}#seals", slips=reasons(seal.faults, ticked, {
    "lip": "The drawing shows the lip on the side of the oil, and there it belongs.",
    ("deep", "proud"): "Compare the mean of your four depths, without the bridge, with the rule of the gauge.",
    "square": "Compare deepest less shallowest with the lean that is allowed.", "grease": "The table says that the lip was greased.",
    "sleeve": "Look at the table: a smooth shaft needs no sleeve, and over splines one was used.",
    "spring": "The spring belongs on the side of the oil; it presses the lip on the shaft.",
    "sealant": "A rubber-covered edge seals by itself; sealant can reach the lip."}) + missed(seal.faults, ticked, IS_SO))

# %% tags=["reference"]
DO = {"smooth": "leave", "led-over": "leave", "little-lean": "leave", "rubber-edge": "leave",
      "proud-smooth": "further", "proud-sleeve": "further", "proud-near": "further", "proud-edge": "further",
      "turned": "new", "leaning": "new", "deep": "new", "bare": "new", "proud-bare": "new"}
LOOKS = {"leave": "Depth and lean lie within their limits, lip and grease are right, and it went in the right way: taken out, a good seal is scrap.",
         "further": "Only its depth is too little, and that can be put right: left like this, the lip runs on the wrong track; taken out, it is scrap."}
LOOKS = {id: LOOKS[do] for id, do in DO.items() if do != "new"} | {
    "turned": "Its rim sits well, which looks good; but oil lifts a lip that looks the wrong way, and the seal drips.",
    "leaning": "The mean depth is right, but it leans more than allowed: the lip wears at one side, and a punch that straightens it cuts it.",
    "deep": "It looks home, but it sits too deep: pulled back, it bends; left like this, the lip runs off its track.",
    "bare": "All that can be measured is right, but bare splines cut the lip, and it leaks from the first day.",
    "proud-bare": "Its depth could still be put right, but bare splines cut the lip, and it leaks from the first day.",
}
ref("seal-do", {one.id: DO[one.id] for one in seal.others.lines}, outcome="seat-seal", shows=("costs-the-seal", "lip"), weight=3.5,
    must_pass=True, lesson=f"{where}#seals",
    slips=line_reasons(bank.lists["seals"], seal.others.answers, DO, LOOKS, shown=seal.others.lines))

# %% tags=["mark"] task="seal" points=9

# %% [markdown] tags=["task"]
# ## 6. A spring pin
#
# Force at the pin = hand × lever. The table gives loads in **double** shear; one plane bears half. The loads of two nested pins add.
#
# The pin must bear the force as many times as the table says. A pin that is taken out is not used again. **The last two questions must be right to pass, in every line.** *8 points.*

# %% tags=["rig"]
spring = given.spring
given_table(spring.name, ["", ""], [
    ("hardest pull at the knob", f"{spring.hand_n} N"), ("lever, knob to pin", f"{spring.ratio:g} to 1"),
    ("planes in which it would shear", spring.planes), ("times the force it must bear", spring.margin),
    *[(f"spring pin of {one.size_mm:g} mm, double shear", f"{one.double_shear_kn:g} kN") for one in spring.loads],
    ("hole", f"for {spring.size_mm:g} mm; the pin of {spring.inner_mm:g} mm nests in it"),
])

# %% tags=["form"]
from twoshaft.plots.driven_pin import DrivenPinPicture

driven = {one.letter: DrivenPinPicture(one) for one in given.spring.fitted}
sheet.form(
    "spring",
    sheet.number("spring-force", "Force at the pin", "kN"),
    sheet.number("spring-bears", "What one pin of the hole's size bears here", "kN"),
    sheet.number("spring-times", "How many times the force is that?"),
    sheet.each("spring-do", "What do you fit in each joint?",
               lines=[("own", "the joint of the table"),
                      *((f"joint-{n}", f"{one.margin} × {one.force_kn:g} kN to bear; here one pin bears {one.one_kn:g} kN, the one in it {one.inner_kn:g} kN")
                        for n, one in enumerate(given.spring.others, 1))], options=given.spring.todo),
    sheet.picture("spring-fitted", "Pins that somebody drove in, each with the line of the force: which one is it?",
                  lines=given.spring.asked, pictures=driven),
)

# %% tags=["reference"]
spring = given.spring
force = ref("spring-force", fit.fork_pin_force(Q(spring.hand_n, "N"), spring.ratio), outcome="choose-pin", shows="shear", tolerance=0.01,
            weight=1.5, lesson=f"{where}#spring-pins",
            slips=[Slip(Q(spring.hand_n / spring.ratio / 1e3, "kN"), 0, "The lever multiplies the pull; you divided.")])
pins = [fit.spring_pin(Q(one.size_mm, "mm")) for one in spring.loads]
loads = [pin.shear_load(spring.planes) for pin in pins]
turned = [Slip(pins[0].shear_load(3 - spring.planes), 0, "Count the planes again: the table is for two.")]
bears = ref("spring-bears", loads[0], outcome="choose-pin", shows="shear", weight=1.5, tolerance=0.01, lesson=f"{where}#spring-pins", slips=turned)
times = ref("spring-times", (bears / force).m_as(""), outcome="choose-pin", shows="shear", weight=1.5, tolerance=0.02, lesson=f"{where}#spring-pins")

# %% tags=["reference"]
nested = (bears + bears * (loads[1] / loads[0])) / force
joints = {"own": (times, nested.m_as(""), spring.margin)}
for n, one in enumerate(spring.others, 1):
    joints[f"joint-{n}"] = one.one_kn / one.force_kn, (one.one_kn + one.inner_kn) / one.force_kn, one.margin
fitted = {id: "one" if alone >= needed else "nest" if both >= needed else "larger" for id, (alone, both, needed) in joints.items()}
PINS = {"one": "One pin bears the force as many times as it must: a second one makes the pair stiff, and the hole is hammered wide.",
        "nest": "One pin bears too little, but both together bear enough: alone it is cut through, and a larger hole weakens the part for nothing.",
        "larger": "Even both together bear the force fewer times than they must: sooner or later they are cut through, and the gear can no longer be engaged."}
ref("spring-do", fitted, outcome="choose-pin", shows="shear", weight=3, must_pass=True, lesson=f"{where}#spring-pins",
    slips=line_reasons([(id, "") for id in fitted], spring.todo, fitted, {id: PINS[one] for id, one in fitted.items()}))

# %% tags=["reference"]
WHICH = {(): "leave", ("slot",): "slot", ("depth",): "depth", ("slot", "depth"): "both"}
STAYS = {"leave": "Slot in the line of the force, two of them opposite each other, and every end inside: out again, it is scrap.",
         "slot": "The ends lie well, which looks good; but the slot is not in the line of the force, or both slots are on the same side: the pin springs and works loose.",
         "depth": "The slot lies right, which looks good; but an end that stands out catches, and one that stops short leaves one side without a pin.",
         "both": "Neither lies right here: look at the slot against the arrows, and at both ends against the faces."}
is_so = {one.letter: WHICH[fit.driven_pin_faults(one)] for one in given.spring.fitted}
found = {key: letter for letter, key in is_so.items() if key != "both"}
ref("spring-fitted", found, outcome="choose-pin", shows="slot", weight=3, must_pass=True, lesson=f"{where}#spring-pins",
    slips=line_reasons(given.spring.asked, [(letter, "") for letter in is_so], found, {},
                       {letter: STAYS[key] for letter, key in is_so.items()}))

# %% tags=["mark"] task="spring" points=8

# %% [markdown] tags=["task"]
# ## 7. A taper pin
#
# Taper 1 in 50: the diameter grows by 0.02 mm for each millimetre of length. The last two questions are about other pins too.
#
# **They must be right to pass, in every line.** *10 points.*

# %% tags=["rig"]
taper = given.taper
given_table("Taper pin", ["", ""], [
    ("pin, small end and length", f"{taper.small_mm:g} × {taper.length_mm} mm"),
    ("hole at its wide end", f"{taper.hole_mm:.2f} mm"),
    ("when home the large end shall stand proud by", f"{taper.low_mm:g} to {taper.high_mm:g} mm"),
])

# %% tags=["form"]
told = {mm: "not measured" if mm is None else f"{mm:.2f}" for one in given.taper.pins for mm in (one.left_mm, one.right_mm)}
sheet.form(
    "taper",
    sheet.number("taper-large", "Diameter of its large end", "mm"),
    sheet.number("taper-proud", "It stands proud by (sunk as a minus)", "mm"),
    sheet.number("taper-after", f"The hole is reamed {given.taper.wider_mm:.2f} mm wider: proud by", "mm"),
    sheet.each("taper-do", "What do you do with each hole, as it is now?",
               lines=[("own", "the hole of the table, as it was measured"),
                      *((f"hole-{n}", f"by hand the pin stands proud by {one.stands_mm:g} mm; it shall by {one.low_mm:g} to {one.high_mm:g} mm")
                        for n, one in enumerate(given.taper.others, 1))], options=given.taper.todo),
    sheet.each("taper-end", "Pins and their ends in mm: where do you strike?",
               lines=[(f"pin-{n}", f"left end {told[one.left_mm]}, right end {told[one.right_mm]}; it is to {'go in' if one.insert else 'come out'}")
                      for n, one in enumerate(given.taper.pins, 1)], options=given.taper.strikes),
)

# %% tags=["reference"]
taper = given.taper
pin = fit.TaperPin(taper.small_mm / 1e3, taper.length_mm / 1e3)
hole = Q(taper.hole_mm, "mm")
half = Q(taper.small_mm + taper.length_mm / 25, "mm")
large = ref("taper-large", pin.large, outcome="choose-pin", shows="taper", tolerance=Q(0.005, "mm"), lesson=f"{where}#taper-pins",
            slips=[Slip(half, 0.2, "The taper counts on the diameter already; you doubled it.")])
per_mm = 1 / fit.pins.TAPER
proud = ref("taper-proud", (large - hole) * per_mm, outcome="choose-pin", shows="taper", weight=1.5, tolerance=Q(0.06, "mm"), lesson=f"{where}#taper-pins",
            slips=[Slip((large - hole).to("mm"), 0.2, "That is by how much it is thicker; each 0.02 mm is 1 mm of length.")])
ref("taper-after", proud - Q(taper.wider_mm, "mm") * per_mm, outcome="choose-pin", shows="taper", weight=1.5, tolerance=Q(0.06, "mm"), lesson=f"{where}#taper-pins",
    slips=[Slip(proud + Q(taper.wider_mm, "mm") * per_mm, 0, "A wider hole lets the pin in deeper.")])

# %% tags=["reference"]
stood = {"own": (proud.m_as("mm"), taper.low_mm, taper.high_mm)}
stood |= {f"hole-{n}": (one.stands_mm, one.low_mm, one.high_mm) for n, one in enumerate(taper.others, 1)}
holes = {id: "home" if least_mm <= now <= most_mm else "ream" if now > most_mm else "sunk" for id, (now, least_mm, most_mm) in stood.items()}
HOLES = {"home": "It stands within its limits: each further cut only uses up the hole, and the next pin sinks.",
         "ream": "It stands out too far: driven harder it splits the boss, because it seats where the cone fits, and no deeper.",
         "sunk": "It stands out too little: a wider hole or a harder blow lets it in deeper still, and nothing is left to tighten."}
ref("taper-do", holes, outcome="choose-pin", shows="taper", weight=2.5, must_pass=True, lesson=f"{where}#taper-pins",
    slips=line_reasons([(id, "") for id in holes], taper.todo, holes, {id: HOLES[one] for id, one in holes.items()}))

# %% tags=["reference"]
struck = {}
for n, one in enumerate(taper.pins, 1):
    measured = None not in (one.left_mm, one.right_mm) and one.left_mm != one.right_mm
    large_end = "left" if measured and one.left_mm > one.right_mm else "right"
    small_end = "right" if large_end == "left" else "left"
    struck[f"pin-{n}"] = (large_end if fit.drive_from(one.insert) == "large end" else small_end) if measured else "first"
BLOWS = {"left": "In by the large end, out by the small end: struck at the other end it jams tighter, or drops out of its hole.",
         "right": "In by the large end, out by the small end: struck at the other end it jams tighter, or drops out of its hole.",
         "first": "Nothing shows which end is the large one: by chance the blow jams it so tightly that it has to be drilled out."}
ref("taper-end", struck, outcome="choose-pin", shows="taper", weight=2.5, must_pass=True, lesson=f"{where}#taper-pins",
    slips=line_reasons([(id, "") for id in struck], taper.strikes, struck, {id: BLOWS[one] for id, one in struck.items()}))

# %% tags=["mark"] task="taper" points=10

# %% [markdown] tags=["task"]
# ## 8. What holds it in place
#
# A nut was staked. The tab gives way by shear or by crushing, whichever takes less torque.
#
# The workshop's rule: the stake must hold at least as many times the drag as the table says. A cracked tab, or a nut that was turned back, means a new nut. A circlip that was not bent or opened too far is used again. **The last two questions must be right to pass, in every line.** *9 points.*

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
from twoshaft.plots.clip_section import ClipPicture

seen = {"whole": "the tab is whole", "cracked": "the tab is cracked", "undone": "whole, but the nut was turned back"}
sheet.form(
    "locks",
    sheet.number("locks-holds", "Torque that the stake holds", "N·m"),
    sheet.number("locks-times", "How many times the drag is that?"),
    sheet.each("locks-do", "What do you do with each nut?",
               lines=[("own", "the nut of the table"),
                      *((f"nut-{n}", f"holds {one.holds_nm:g} N·m, must hold {one.margin} × {one.drag_nm:g} N·m; {seen[one.state]}")
                        for n, one in enumerate(given.locks.others, 1))], options=given.locks.todo),
    sheet.picture("locks-clips", "Circlips in their grooves; the arrow shows the push: which one is it?",
                  lines=given.locks.asked, pictures={one.letter: ClipPicture(one) for one in given.locks.clips}),
)

# %% tags=["reference"]
locks = given.locks
stake = fit.Stake(locks.shear_nm, locks.crush_nm_mm * locks.depth_mm)
more = max(stake.shear_nm, stake.crush_nm)
holds = ref("locks-holds", stake.holds, outcome="lock-parts", shows="stake", weight=2, tolerance=0.01, lesson=f"{where}#stakes-and-circlips",
            slips=[Slip(Q(more, "N*m"), 0, "It gives way at the smaller of the two."),
                   Slip(Q(stake.shear_nm + stake.crush_nm, "N*m"), 0, "The two do not add: the first to give way ends it.")])
times = ref("locks-times", (holds / Q(locks.drag_nm, "N*m")).m_as(""), outcome="lock-parts", shows="stake", weight=2, tolerance=0.02,
            lesson=f"{where}#stakes-and-circlips")

# %% tags=["reference"]
tabs = {"own": (times, locks.margin, "cracked" if locks.cracked else "whole")}
tabs |= {f"nut-{n}": (one.holds_nm / one.drag_nm, one.margin, one.state) for n, one in enumerate(locks.others, 1)}
tabs_do = {id: "renew" if state != "whole" else "leave" if held >= needed else "deeper" for id, (held, needed, state) in tabs.items()}
STAKES = {"leave": "The tab is whole and holds as many times the drag as it must: struck again, it cracks at its root.",
          "deeper": "The tab is whole, but holds less than it must: the nut backs off on the road; a new nut is not needed for that.",
          "renew": "By the sum it seems to hold, but a cracked tab breaks off, and a nut that was turned back has lost its clamp."}
ref("locks-do", tabs_do, outcome="lock-parts", shows="stake", weight=2.5, must_pass=True, lesson=f"{where}#stakes-and-circlips",
    slips=line_reasons([(id, "") for id in tabs_do], locks.todo, tabs_do, {id: STAKES[one] for id, one in tabs_do.items()}))

# %% tags=["reference"]
IS = {(): "leave", ("edge",): "turn", ("seat",): "renew", ("edge", "seat"): "both"}
HELD = {"leave": "The sharp edge faces away from the push and rests on the wall of the groove: turned, it would climb out.",
        "turn": "It is seated well, which looks good; but its rounded edge meets the wall of the groove, and under load it climbs out.",
        "renew": "The edge is right, but what stands off the floor of its groove is bent or stretched: it has lost its spring, and jumps off on the road.",
        "both": "Neither edge nor seat is right here: turned round, it still stands off the floor of its groove."}
left = {one.letter: IS[fit.clip_faults(one)] for one in locks.clips}
clips_found = {key: letter for letter, key in left.items() if key != "both"}
ref("locks-clips", clips_found, outcome="lock-parts", shows="sharp-edge", weight=3, must_pass=True, lesson=f"{where}#stakes-and-circlips",
    slips=line_reasons(locks.asked, [(letter, "") for letter in left], clips_found, {}, {letter: HELD[key] for letter, key in left.items()}))

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
ref("order-job", order.OrderTask.from_unit(load_fitting_jobs(), given.order.operations), outcome="order-fitting", shows="when-measured",
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
        "tilted": "change", "drill": "change", "spin": "change", "closed": "change", "flask": "change"}

# %% tags=["reference"]
BARE = "The tools are right and the job is short, so the eye protection waits; one splinter or one clip costs the eye."
HURT = {
    "square": "It stands square, the guard is shut and the gauge climbs evenly: that is how it should go.",
    "punch": "Soft face on a punch that fits, and eyes covered: nothing splinters here.",
    "gloved": "Hands are covered, the way is free, and everybody knows.",
    "drain": "Nothing turns, and nothing is hot or under pressure.",
    "eyes": BARE, "clip": BARE,
    "thin": "All else is in order, so the gloves are overlooked: thin rubber lets the heat through and burns the hand.",
    "wet": "All else is in order, but wet gloves freeze to the steel and carry the cold to the skin.",
    "tilted": "The shut guard makes it look safe; the tilted ring still holds the whole force, and cracks or flies out.",
    "drill": "Its size is right and eye protection is on, but a drill is harder than any punch and splinters at the first blow.",
    "spin": "Gloves and eye protection stop no ball: driven by air at any pressure, a dry bearing scores itself and can throw them.",
    "closed": "Gloves and eye protection keep out the cold only; the ice turns into gas that drives the air out of a small room.",
    "flask": "Gloves and eye protection keep out the cold only; the ice turns into gas that finds no way out, and the flask bursts.",
}

# %% tags=["reference"]
ref("bench-cautions", {id: SAFE[id] for id in labels(given.bench.cautions)}, outcome="safe-fitting", must_pass=True, shows=("guard", "eyes-and-hammers", "hot-or-cold"),
    lesson=f"{where}#before-you-start",
    slips=line_reasons(bank.lists["cautions"], given.bench.safety, SAFE, HURT, shown=given.bench.cautions))

# %% tags=["mark"] task="bench" points=8

# %% [markdown]
# ## Done?
#
# Go back to **start-here** and press **Hand in**. You get a receipt. You can hand in again until the due date; the last one counts.
