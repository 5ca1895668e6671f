# %% [markdown]
# # Shift mechanism and lockout: exercise
#
# <div class="twoshaft-if-missing">If no forms appear below: press <b>Run</b>, then <b>Run All Cells</b>.</div>
#
# Twelve tasks about the selector of a two-shaft transaxle and the hand test that proves it. Take about an hour.
#
# Every answer is saved as you give it; you can stop and come back.
#
# Tasks 1, 2 and 5 are **must-pass**. In tasks 3, 10, 11 and 12 one question decides: the task says which.
#
# The gate of your unit may lie the other way round than in the lesson: look at the picture in task 1.
#
# *Invented unit, for teaching. On a real unit the maker's manual, local codes and licensed practice decide.*

# %% tags=["setup"]
from twoshaft.jobsheet import open_sheet
from twoshaft.models.shift import stopped_also
from twoshaft.plots.tables import given_table

sheet = open_sheet("shift-and-lockout")
given, unit = sheet.given, sheet.unit

# %% tags=["reference"]
from twoshaft.models import order, shape, shift
from twoshaft.questions import bank_of
from twoshaft.units.quantities import Q
from twoshaft_grader.marking import Slip, line_reasons, missed, ref

bank, mirror = bank_of("shift-and-lockout"), given.gate.mirror
sound = shift.fitted(unit.shift, (), mirror)
opened = {shift.say_opening(unit.shift, block.earlier, block.later) for block in unit.shift.must_block[:1]}
where = "07-shift-and-lockout"

# %% [markdown] tags=["task"]
# ## 1. Prove the lockout by hand
#
# Write down the hand test that proves the lockout: which moves you try, and what they must show so that the stop counts.
#
# Ten moves at most; the fewest will do.
#
# Choose moves with the buttons. With the keyboard: Tab to a button and press Enter; in the list, Shift with an arrow key moves a move, Delete takes it out. **You must get this one right to pass.** *6 points.*

# %% tags=["rig"]
given_table("What must be proven", ["what", "on this unit"],
            [("at the start", "the lever stands in neutral, in the middle gate plane"),
             ("must be stopped", f"{given.lockout.earlier} straight into {given.lockout.later}" + stopped_also(unit.shift, given.lockout.earlier, given.lockout.later))])

# %% tags=["form"]
sheet.form(
    "lockout",
    sheet.path("lockout-way", "Which moves prove the lockout?", moves=given.gate.moves,
               plan=given.gate.plan, most=10),
)

# %% tags=["reference"]
direct = given.lockout.earlier, given.lockout.later
fails = [m.id for m in unit.shift.misbuilds if shift.proof_with(unit.shift, m.id).locks[0].verdict == "fails"]
faulty = [shift.fitted(unit.shift, [id], mirror) for id in fails[:2]]
ref("lockout-way", shift.lockout_test(sound, *direct, faulty=faulty),
    outcome="prove-lockout", shows=("direct-shift", "later-gear"), must_pass=True, lesson=f"{where}#the-proof-by-hand")

# %% tags=["mark"] task="lockout" points=6

# %% [markdown] tags=["task"]
# ## 2. Read records of the proof
#
# Four people wrote down what they did and felt, each on another unit with a gate like yours. What does each record say about the lockout?
#
# **Every record must be right to pass.** *6 points.*

# %% tags=["rig"]
records = [(letter, record.words) for letter, record in zip("ABCD", given.lockout.records)]
given_table("As written down", ["record", "no.", "move", "what happened"],
            [(letter, n, *line) for letter, words in records for n, line in enumerate(words, 1)])

# %% tags=["form"]
records = [(letter, record.words) for letter, record in zip("ABCD", given.lockout.records)]
sheet.form(
    "lockout-record",
    sheet.each("lockout-reading", "What does each record say about the lockout?", options=given.lockout.readings,
               lines=[(letter.lower(), f"Record {letter}, of {len(words)} moves") for letter, words in records]),
)

# %% tags=["reference"]
says = {letter.lower(): shift.lockout_reading(sound.shift, shift.read_record(record.lines), *direct)
        for letter, record in zip("ABCD", given.lockout.records)}
told = {
    "proven": "Lines that read well tempt you to sign. The lockout is proven only if the straight push stops and the "
              f"later gear goes in {' '.join(opened)}. If less was done, its first real test is on the road.",
    "fails": "Look at the push that comes straight after the earlier gear: the later gear is not in at its end. "
             "If you report it like this, somebody opens the unit and looks for the wrong fault.",
    "half": "It is tempting not to read to the end. The last lines do show how the later gear behaves; "
            "a second test costs time and finds the same.",
    "no-gear": "A gear that was not in yet is easily taken for one that never goes in. Nothing in the record says so, "
               "and you would search for a fault that is not there.",
}

# %% tags=["reference"]
ref("lockout-reading", says, outcome="prove-lockout", shows="both-halves", must_pass=True,
    lesson=f"{where}#the-proof-by-hand",
    slips=line_reasons([(line, "") for line in says], given.lockout.readings, says, {}, anywhere=told))

# %% tags=["mark"] task="lockout-record" points=6

# %% [markdown] tags=["task"]
# ## 3. The force of a detent
#
# You measured a detent spring and looked up the rest.
#
# Work out the spring's force with the ball home, the force along the rail to leave the notch, and the force at the crest. At the crest the spring is pressed together further, by the depth of the notch.
#
# Then decide about this spring, and about those of three other rails, each pulled three times. The maker's limits are for leaving the notch. **Every spring must be right for the outcome.** *14 points.*

# %% tags=["rig"]
d = given.detent
given_table(d.rail.name, ["measured or looked up", "value"],
            [("spring, free length", f"{d.free_mm} mm"), ("spring, length with the ball home", f"{d.fitted_mm} mm"),
             ("rate of the spring", f"{d.rate_n_per_mm} N/mm"), ("flank, from the rail's axis", f"{d.ramp_deg:g}°"),
             ("depth of the notch", f"{d.depth_mm} mm"), ("friction coefficient", f"{d.friction}"),
             ("limits to leave the notch", "{} to {} N".format(*d.limits_n))])

# %% tags=["form"]
sheet.form(
    "detent",
    sheet.number("detent-spring", "Which force does the spring have with the ball home?", "N"),
    sheet.number("detent-leave", "Which force along the rail leaves the notch?", "N"),
    sheet.number("detent-crest", "Which force along the rail is needed at the crest?", "N"),
    sheet.each("detent-verdict", "What do you do with each spring?", options=given.detent.verdicts,
               lines=[("own", "the spring of the table"),
                      *((f"rail-{n}", other.text) for n, other in enumerate(given.detent.others, 1))]),
)

# %% tags=["reference"]
d = given.detent
rate, ramp, depth = Q(d.rate_n_per_mm, "N/mm"), Q(d.ramp_deg, "deg"), Q(d.depth_mm, "mm")
pressed = Q(d.free_mm - d.fitted_mm, "mm")
at_lesson = f"{where}#detents-what-holds-a-gear-in"
spring = ref("detent-spring", (rate * pressed).to("N"), outcome="detent-force", shows="spring-to-lever",
             tolerance={"absolute": Q(0.5, "N")}, lesson=at_lesson, weight=2,
             slips=[Slip((rate * Q(d.fitted_mm, "mm")).to("N"), 0.25,
                         "Only how far the spring is pressed together counts, not its length.")])

# %% tags=["reference"]
force = shift.detent_force(spring, ramp, d.friction, spring_rate=rate, depth=depth)
no_friction = shift.detent_force(spring, ramp, 0.0)
other_way = shift.detent_force(spring, Q(90, "deg") - ramp, d.friction)
leave = ref("detent-leave", force.to_start, outcome="detent-force", shows="spring-to-lever", tolerance=0.015, weight=3,
            lesson=at_lesson, slips=[
    Slip(no_friction.to_start, 0.5, "That is without friction; the ball also rubs on the flank."),
    Slip(other_way.to_start, 0.25, "The flank's angle is measured from the rail's axis, not from the ball's."),
    Slip(spring, 0, "That is the spring's own force; the flank turns it into another one along the rail.")])

# %% tags=["reference"]
ref("detent-crest", force.at_crest, outcome="detent-force", shows="spring-to-lever", tolerance=0.015, weight=3,
    lesson=at_lesson, slips=[
    Slip(force.to_start, 0.25, "At the crest the spring is pressed together further, by the depth of the notch.")])
low, high = (Q(limit, "N") for limit in d.limits_n)
spring_is = {"own": "weak" if leave < low else "strong" if leave > high else "fit"}
for n, other in enumerate(d.others, 1):
    least, most = other.limits_n
    inside = [least <= pull <= most for pull in other.pulls_n]
    spring_is[f"rail-{n}"] = ("again" if len(set(inside)) > 1 else "fit" if inside[0]
                              else "weak" if max(other.pulls_n) < least else "strong")

# %% tags=["reference"]
ref("detent-verdict", spring_is, outcome="detent-force", shows="by-limits", weight=4, must_pass=True, lesson=at_lesson,
    slips=line_reasons([(line, "") for line in spring_is], d.verdicts, spring_is, {}, anywhere={
        "fit": "It is tempting to use the spring that is at hand. Not every pull lies within the limits: "
               "the gear will jump out, or people will force the lever.",
        "weak": "Beside the upper limit the force may look low. It does not lie below the lower limit: "
                "the gear stays in, and a stronger spring makes the lever heavier for nothing.",
        "strong": "Beside the lower limit the force may look high. It does not lie above the upper limit: "
                  "nobody has to force the lever, and with a weaker spring the gear may jump out.",
        "again": "One more pull never seems wrong. These figures agree with each other, and another pull shows nothing new.",
    }))

# %% tags=["mark"] task="detent" points=14

# %% [markdown] tags=["task"]
# ## 4. From the rail to the hand
#
# A detent asks for a force along the rail. The finger turns on the selector shaft; outside, the lever sits square on the shaft. *10 points.*

# %% tags=["rig"]
lever = given.lever
given_table("The selector", ["measured", "value"],
            [("force along the rail at the crest", f"{lever.rail_n:g} N"), ("radius of the finger, shaft to tip", f"{lever.radius_mm} mm"),
             ("length of the outer lever", f"{lever.lever_mm:g} mm"), ("travel of the rail from neutral to gear", f"{lever.way_mm} mm")])

# %% tags=["form"]
sheet.form(
    "lever",
    sheet.number("lever-torque", "How large is the torque on the selector shaft?", "N·m"),
    sheet.number("lever-hand", "Which force does the hand need at the end of the lever?", "N"),
    sheet.number("lever-angle", "By how many degrees does the shaft turn from neutral to gear?", "°"),
)

# %% tags=["reference"]
lever = given.lever
radius, arm = Q(lever.radius_mm, "mm"), Q(lever.lever_mm, "mm")
rail, way = Q(lever.rail_n, "N"), Q(lever.way_mm, "mm")
torque = ref("lever-torque", shift.shaft_torque(rail, radius), outcome="detent-force", shows="spring-to-lever", tolerance=0.01,
             lesson=f"{where}#from-the-rail-to-the-hand",
             slips=[Slip(shift.shaft_torque(rail, arm), 0.25, "The rail pushes at the finger's tip, not at the outer lever.")])
ref("lever-hand", shift.hand_force(torque, arm), outcome="detent-force", shows="spring-to-lever", tolerance=0.01,
    lesson=f"{where}#from-the-rail-to-the-hand",
    slips=[Slip(rail * arm / radius, 0.25, "The longer lever makes the hand's force smaller, not larger."),
           Slip(rail, 0, "That is the force along the rail; two levers lie between it and the hand.")])
ref("lever-angle", shift.turn_angle(way, radius), outcome="detent-force", shows="spring-to-lever", tolerance=0.02,
    lesson=f"{where}#from-the-rail-to-the-hand",
    slips=[Slip(shift.turn_angle(way, arm), 0.25, "The travel is measured at the finger's tip; use its radius.")])

# %% tags=["mark"] task="lever" points=10

# %% [markdown] tags=["task"]
# ## 5. One rail at a time
#
# First say what a vehicle does in four situations. Then read the cases: a gear is in, and one pin of the interlock was left out.
#
# Last judge a pin that was measured, and rails of other units that were pushed while a gear was in. **Each of the three must be right to pass, in every line.** *16 points.*

# %% tags=["rig"]
lock = given.interlock
given_table("The cases", ["case", "gear that is in", "left out"],
            [(letter, case.gear, case.missing.name) for letter, case in zip("AB", lock.cases)])

# %% tags=["rig"]
lock = given.interlock
given_table("The pin that was measured", ["on this unit", "value"],
            [("pin", lock.pin), ("its length", f"{lock.length_mm} mm"), ("depth of one notch", f"{lock.notch_mm} mm"),
             ("gap between the rails", f"{lock.gap_mm} mm"), ("flank, from the rail's axis", f"{lock.ramp_deg:g}°"),
             ("most free movement of a locked rail", f"{lock.limit_mm} mm")])

# %% tags=["form"]
lock = given.interlock
sheet.form(
    "interlock",
    sheet.each("interlock-why", "What does the vehicle do?", lines=lock.does.lines, options=lock.does.answers),
    sheet.each("interlock-free", "What keeps each rail where it is?", options=lock.says,
               lines=[(f"{letter.lower()}-{rail}", f"Case {letter}, {name}") for letter in "AB" for rail, name in lock.rails]),
    sheet.number("interlock-play", "How much play does the measured pin have?", "mm"),
    sheet.number("interlock-way", "How far can the rail that it locks still move?", "mm"),
    sheet.each("interlock-pin", "What do you do about each pin?", options=lock.verdicts,
               lines=[("own", "the pin of the table"),
                      *((f"rail-{n}", f"a rail that should be locked {other.text}") for n, other in enumerate(lock.others, 1))]),
)

# %% tags=["reference"]
lock, at_lesson = given.interlock, f"{where}#interlock-one-rail-at-a-time"
DOES = {"both": "lock", "drags": "lock", "worn": "lock", "touches": "drives", "stopped": "drives", "alone": "drives",
        "jumped": "rolls", "between": "rolls", "half": "rolls"}
why = {
    "lock": "One gear seems to win, or the clutch to slip. The output shaft would have to turn at two speeds: "
            "behind the clutch both shafts lock, and the wheels with them.",
    "drives": "A second sleeve that moves looks dangerous. But one gear is fully in, and no other sleeve meets the teeth of its gear: "
              "the vehicle drives in that one gear.",
    "rolls": "A lever near a gear feels as if the gear were in. No sleeve is home in a gear, so nothing ties the shafts together.",
}
ref("interlock-why", {one.id: DOES[one.id] for one in lock.does.lines}, outcome="interlock-holds", shows="two-gears",
    weight=3, must_pass=True, lesson=at_lesson,
    slips=line_reasons(bank.lists["two_at_once"], lock.does.answers, DOES, {id: why[does] for id, does in DOES.items()},
                       shown=lock.does.lines))

# %% tags=["reference"]
keeps = {}
for letter, case in zip("ab", lock.cases):
    part = shift.without_pin(unit.shift, case.missing.id)
    held, own = shift.locked_rails(part, case.gear), shift.rail_of(part, case.gear).body
    for rail, _ in lock.rails:
        keeps[f"{letter}-{rail}"] = "own" if rail == own else "held" if rail in held else "free"
ref("interlock-free", keeps, outcome="interlock-holds", shows="rails", must_pass=True, weight=3, lesson=at_lesson,
    slips=line_reasons([(line, "") for line in keeps], lock.says, keeps, {}, anywhere={
        "own": "A rail that can move looks as if it had moved. Look at the gear in the table: another rail carries it.",
        "held": "An interlock with pins in it seems to hold. Follow the pins from the rail that has moved: none of them reaches this "
                "rail, or this is the rail that moved. Where no pin reaches, a second gear can go in.",
        "free": "With one pin gone it is tempting to call every rail free. This one has the gear in, or a pin that is still there "
                "holds it: you would look for the fault at the wrong rail.",
    }))

# %% tags=["reference"]
notch, gap, length = (Q(mm, "mm") for mm in (lock.notch_mm, lock.gap_mm, lock.length_mm))
flank = Q(lock.ramp_deg, "deg")
play = ref("interlock-play", shift.pin_play(notch, gap, length), outcome="interlock-holds", shows="pin-wear",
           tolerance={"absolute": Q(0.006, "mm")}, weight=2, lesson=at_lesson,
           slips=[Slip(shift.pin_play(notch * 2, gap, length), 0.25,
                       "The rail that has moved shows the pin its round side; only one notch is left.")])
moves = shift.free_movement(play, flank)
way = ref("interlock-way", moves, outcome="interlock-holds", shows="pin-wear", tolerance={"absolute": Q(0.011, "mm")},
          weight=2, lesson=at_lesson, slips=[
    Slip(shift.free_movement(play, Q(90, "deg") - flank), 0.25,
         "Divide the play by the tangent; a steep flank lets the rail move less than the pin.")])

# %% tags=["reference"]
pin_does = {"own": "keep" if way <= Q(lock.limit_mm, "mm") else "renew"}
for n, other in enumerate(lock.others, 1):
    whole = other.free_mm >= other.gear_mm
    pin_does[f"rail-{n}"] = "missing" if whole else "keep" if other.free_mm <= other.limit_mm else "renew"
ref("interlock-pin", pin_does, outcome="interlock-holds", shows="pin-wear", weight=3, must_pass=True, lesson=at_lesson,
    slips=line_reasons([(line, "") for line in pin_does], lock.verdicts, pin_does, {}, anywhere={
        "keep": "A pin that is a little short still looks sound. The free movement is more than the limit allows: "
                "the rail can bring its sleeve to a second gear while the first one drives.",
        "renew": "Any movement of a locked rail feels like wear. Compare it with the limit, and with the travel to the gear: "
                 "within the limit the pin locks; where the gear goes in, there is no pin to renew.",
        "missing": "A rail that moves at all makes you fear that the pin is not there. It stops before its gear is in, so a pin is "
                   "there: you would open the unit to look for what is in its place.",
    }))

# %% tags=["mark"] task="interlock" points=16

# %% [markdown] tags=["task"]
# ## 6. Show an assembly fault by hand
#
# You suspect the assembly fault below. Which moves of the hand show it for sure, because the lever feels different from a sound one? Five moves at most. *5 points.*

# %% tags=["rig"]
given_table("Suspected", ["assembly fault"], [(given.reveal.misbuild.name,)])

# %% tags=["form"]
sheet.form(
    "reveal",
    sheet.path("reveal-way", "Which moves show it?", moves=given.gate.moves,
               plan=given.gate.plan, most=5),
)

# %% tags=["reference"]
suspect = shift.fitted(unit.shift, [given.reveal.misbuild.id], mirror)
ref("reveal-way", shift.telling_test(sound, suspect), outcome="choose-hand-test", shows="feels-different",
    lesson=f"{where}#which-test-shows-which-assembly-fault")

# %% tags=["mark"] task="reveal" points=5

# %% [markdown] tags=["task"]
# ## 7. What does it do?
#
# Three assembly faults, each alone in a unit. What does a full hand test find?
#
# Where your unit is drawn, point at where each of two faults is looked for. Left and right, or above and below, may be the other way round. *5 points.*

# %% tags=["form"]
from twoshaft.plots.unit_scene import look_pictures, near_picture

sheet.form(
    "symptoms",
    sheet.each("symptoms-found", "What does the hand test find with each?",
               lines=given.symptoms.misbuilds, options=given.symptoms.kinds),
    *([sheet.point("symptoms-where", "A selector that is built correctly. At which part would you look for this?",
                   lines=given.symptoms.where.lines, picture=near_picture(unit, given.symptoms.where.near))] if given.symptoms.where else []),
)

# %% tags=["reference"]
not_so = {
    "gear-missing": "A lever that is stopped somewhere looks like a gear that is missing. "
                    "With this assembly fault every gear can still be engaged.",
    "not-held": "A ball or spring is soon suspected. Here every gear that goes in stays in when you let go and shake; "
                "you would open the plugs for nothing.",
    "two-at-once": "Whatever is wrong in a selector makes you fear two gears at once. "
                   "The hand cannot bring in two here, however it turns between two gate planes.",
    "direct-passes": "The lockout is suspected first. Follow the peg on its way back towards reverse: is it let through every time?",
    "direct-sometimes": "That is what a part does that is left to lie where it likes. "
                        "Here the straight push ends the same way each time you try it.",
    "nothing": "From outside all looks well, and the unit would go out. The hand does feel it; go through the tests one by one.",
}

# %% tags=["reference"]
kinds = {id: set(shift.symptoms(shift.proof_with(unit.shift, id))) for id, _ in given.symptoms.misbuilds}
ref("symptoms-found", kinds, weight=3, outcome="misbuild-symptoms", shows="symptom", lesson=f"{where}#what-each-assembly-fault-does",
    slips=line_reasons([(id, "") for id in kinds], given.symptoms.kinds, kinds, {}, anywhere=not_so))

# %% tags=["reference"]
if given.symptoms.where:
    scene, built = given.symptoms.where.near.scene, {one.id: one for one in shape.listed_misbuilds(unit)}
    at = {id: {spot.id for spot in scene.spots if spot.text in built[id].parts} for id, _ in given.symptoms.where.lines}
    look = "Something else is here. Follow the selector from the lever to the finger, and on to what stands in its way."
    ref("symptoms-where", at, weight=1.5, outcome="misbuild-symptoms", shows="where-to-look", lesson=f"{where}#what-each-assembly-fault-does",
        slips=line_reasons(given.symptoms.where.lines, [(spot.id, "") for spot in scene.spots], at, dict.fromkeys(at, look)))

# %% tags=["mark"] task="symptoms" points=5

# %% [markdown] tags=["task"]
# ## 8. Part of the test
#
# A colleague made only a part of the hand test, and everything was as it should be. Tick every assembly fault that could still be in the unit. *5 points.*

# %% tags=["rig"]
given_table(f"Made: {given.one_test.name}", ["no.", "what was done", "what happened"],
            [(n, *line) for n, line in enumerate(given.one_test.record.words, 1)])

# %% tags=["form"]
sheet.form(
    "one-test",
    sheet.choices("one-test-left", "Which of these could still be in the unit?",
                  options=given.one_test.options),
)

# %% tags=["reference"]
work = shift.read_record(given.one_test.record.lines)
left = {id for id, _ in given.one_test.options
        if shift.explains(shift.fitted(unit.shift, [id], mirror), work)}
ref("one-test-left", left, outcome="misbuild-symptoms", shows="left-possible",
    lesson=f"{where}#which-test-shows-which-assembly-fault",
    slips=[Slip(id, 0, "It feels safer to suspect more. But what was done would have shown one that you ticked, "
                       f"and you would look for it in vain: “{name}”.")
           for id, name in given.one_test.options if id not in left]
    + missed(given.one_test.options, left,
             "With “{name}” everything that was done ends as it did here, so it may still be in the unit."))

# %% tags=["mark"] task="one-test" points=5

# %% [markdown] tags=["task"]
# ## 9. What could it be?
#
# The record of a full hand test of a unit in which one thing is wrong. Tick every assembly fault that explains all of it. *5 points.*

# %% tags=["rig"]
given_table("As written down", ["no.", "what was done", "what happened"],
            [(n, *line) for n, line in enumerate(given.explain.record.words, 1)])

# %% tags=["form"]
sheet.form(
    "explain",
    sheet.choices("explain-all", "Which of these explain the whole record?",
                  options=given.explain.options),
)

# %% tags=["reference"]
work = shift.read_record(given.explain.record.lines)
fits = {id for id, _ in given.explain.options
        if shift.explains(shift.fitted(unit.shift, [id], mirror), work)}
ref("explain-all", fits, outcome="misbuild-symptoms", shows="left-possible",
    lesson=f"{where}#what-each-assembly-fault-does",
    slips=[Slip(id, 0, "An assembly fault that fits most lines is tempting. With one that you ticked, some line would read "
                       f"otherwise, and you would find that part sound: “{name}”.")
           for id, name in given.explain.options if id not in fits]
    + missed(given.explain.options, fits, "“{name}” belongs here: with it, every line of the record reads as it does."))

# %% tags=["mark"] task="explain" points=5

# %% [markdown] tags=["task"]
# ## 10. What the hand does not find
#
# The finger is too narrow to push two rails at once, so no hand test shows that a pin between them was left out. Four units are on the bench.
#
# What comes next for each? **Every unit must be right for the outcome.**
#
# Where your unit is drawn: four selectors, looked at while they can be seen. See which is built how; two may be alike. *7 points.*

# %% tags=["form"]
sheet.form(
    "unseen",
    sheet.each("unseen-do", "What comes next for each unit?", lines=given.unseen.lines, options=given.unseen.answers),
    *([sheet.picture("unseen-looks", "Four selectors, from a side of your own: which one is it? Where two fit, either is right",
                     lines=given.unseen.built, pictures=look_pictures(unit, given.unseen.looks))] if given.unseen.looks else []),
)

# %% tags=["reference"]
SURE = {"beside": "count", "last-pin": "count", "plug": "count", "no-line": "open", "one-left": "open", "remembers": "open",
        "unproven": "test", "changed": "test", "half-tried": "test", "done": "go", "again": "go", "seen": "go"}
why = {
    "count": "There seems to be time. But now you can see the bore, and later nothing shows whether a pin is in: "
             "without that pin two gears can go in on the road.",
    "open": "A hand test that passed tempts you to go on. It passes without the pin too: only a look shows it, and a lost hour "
            "costs less than locked wheels.",
    "test": "The pins are in and signed for, and all seems done. But the lockout is not proven by that, or only one half of it: "
            "it is first tried on the road.",
    "go": "One check more feels careful. Pins are seen and signed for, and the whole test came after: a further check finds the same again.",
}

# %% tags=["reference"]
ref("unseen-do", {one.id: SURE[one.id] for one in given.unseen.lines}, weight=2.5, outcome="choose-hand-test", shows="not-shown",
    must_pass=True, lesson=f"{where}#which-test-shows-which-assembly-fault",
    slips=line_reasons(bank.lists["sure"], given.unseen.answers, SURE, {id: why[do] for id, do in SURE.items()},
                       shown=given.unseen.lines))

# %% tags=["reference"]
from twoshaft.readings.scenes import lies_in

BUILT = {"right": "In this one something lies the wrong way round or is not there: compare the four part by part.",
         "turned": "Nothing is turned over in this one: compare lips, steps and hooks with the part beside them.",
         "missing": "Nothing is left out in this one: look for a groove, a bore or a gap that nothing fills."}
if given.unseen.looks:
    built = shape.built_how(unit, {look.letter: (look.near.scene.view, lies_in(look.near.scene)) for look in given.unseen.looks})
    ref("unseen-looks", built, weight=1, outcome="choose-hand-test", shows="not-shown", lesson=f"{where}#which-test-shows-which-assembly-fault",
        slips=line_reasons(given.unseen.built, [(look.letter, "") for look in given.unseen.looks], built, BUILT))

# %% tags=["mark"] task="unseen" points=7

# %% [markdown] tags=["task"]
# ## 11. Build it, and is the pin home?
#
# Put the steps of the selector into an order that works. Then judge the pin of the finger, measured after it was driven in, and three pins of other units.
#
# **Every pin must be right for the outcome.** *10 points.*

# %% tags=["rig"]
pin = given.pin
given_table("The pin of the finger", ["measured", "value"],
            [("diameter of the hub", f"{pin.hub_mm} mm"), ("length of the pin", f"{pin.pin_mm:g} mm"),
             ("struck end lies below the surface", f"{pin.struck_mm} mm"), ("least depth at each end", f"{pin.least_mm} mm")])

# %% tags=["form"]
sheet.form(
    "build",
    sheet.order("build-order", "Put these steps in a workable order", steps=given.order.start),
    sheet.number("pin-other", "How deep below the surface does the other end lie?", "mm"),
    sheet.each("pin-verdict", "What do you do with each pin?", options=given.pin.verdicts,
               lines=[("own", "the pin of the table"),
                      *((f"pin-{n}", other.text) for n, other in enumerate(given.pin.others, 1))]),
)

# %% tags=["reference"]
pin = given.pin
ref("build-order", order.OrderTask.from_unit(unit, given.order.operations),
    outcome="build-selector", shows="proven-when-whole", weight=4, lesson="02-order-of-work#four-reasons")
hub, length, struck = (Q(mm, "mm") for mm in (pin.hub_mm, pin.pin_mm, pin.struck_mm))
far = ref("pin-other", shift.other_end(hub, length, struck), outcome="build-selector", shows="pin-ends", weight=2,
          tolerance={"absolute": Q(0.006, "mm")}, lesson=f"{where}#the-pin-of-the-finger",
          slips=[Slip(hub - length, 0.25, "That is the depth of both ends together; one end you have measured.")])

# %% tags=["reference"]
least = Q(pin.least_mm, "mm")
pin_lies = {"own": "further" if struck < least else "back" if far < least else "home"}
for n, other in enumerate(pin.others, 1):
    near, end = other.struck_mm < other.least_mm, other.far_mm < other.least_mm
    short = other.struck_mm + other.far_mm < 2 * other.least_mm
    pin_lies[f"pin-{n}"] = "shorter" if short else "further" if near else "back" if end else "home"

# %% tags=["reference"]
ref("pin-verdict", pin_lies, outcome="build-selector", shows="pin-ends", weight=4, must_pass=True,
    lesson=f"{where}#the-pin-of-the-finger",
    slips=line_reasons([(line, "") for line in pin_lies], pin.verdicts, pin_lies, {}, anywhere={
        "home": "A pin that does not stand out looks home. One of its ends lies less deep than it must: "
                "it can work loose, and the peg then misses the plate.",
        "further": "One more blow seems to do no harm. The struck end lies deep enough, or the other end has no depth to spare: "
                   "driven further, the pin comes nearer to the surface there.",
        "back": "The far end is out of sight, and you fear that it stands out. It lies deep enough, or the struck end has no depth "
                "to spare: driven back, the pin comes nearer to the surface there.",
        "shorter": "One end near the surface makes the pin look too long. Both depths together are enough for both ends: "
                   "a shorter pin leaves the hub less to sit on.",
    }))

# %% tags=["mark"] task="build" points=10

# %% [markdown] tags=["task"]
# ## 12. Springs, balls and hands
#
# Four situations at the selector. **Each must be right for the outcome.** *5 points.*

# %% tags=["form"]
sheet.form(
    "safe",
    sheet.each("safe-do", "What do you do in each situation?", lines=given.safe.lines, options=given.safe.answers),
)

# %% tags=["reference"]
SAFE = {"plug": "go", "clear": "go", "slack": "go", "hook": "eyes", "looks": "eyes", "bore": "eyes",
        "fork": "hands", "feels": "hands", "ball": "hands", "impact": "slow", "air": "slow", "hammer": "slow"}
why = {
    "go": "Springs and balls make you careful. But eyes, face and hands are where they belong, and the spring is let go slowly.",
    "eyes": "The plug or the ball comes slowly, so a look seems safe. A ball sticks, then it comes at once, and hits a face that is near.",
    "hands": "The lever moves slowly, and you want to feel what it does. The fork moves with the whole force of the lever, and crushes a finger.",
    "slow": "This way is quick, and eye protection is on. But the spring has no time to go slack: plug and ball fly, through a rag too.",
}

# %% tags=["reference"]
ref("safe-do", {one.id: SAFE[one.id] for one in given.safe.lines}, outcome="selector-safety",
    shows=("springs-and-balls", "fingers"), must_pass=True, lesson=f"{where}#before-you-start",
    slips=line_reasons(bank.lists["safe"], given.safe.answers, SAFE, {id: why[do] for id, do in SAFE.items()},
                       shown=given.safe.lines))

# %% tags=["mark"] task="safe" points=5

# %% [markdown]
# ## Done?
#
# Go back to **start-here** and press **Hand in**. You get a receipt. You can hand in again until the due date; the last one counts.
