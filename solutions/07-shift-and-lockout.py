# %% [markdown]
# # Shift mechanism and lockout: exercise
#
# <div class="twoshaft-if-missing">If no forms appear below: press <b>Run</b>, then <b>Run All Cells</b>.</div>
#
# Twelve tasks about the selector of a two-shaft transaxle and the hand test that proves it. Take about an hour. Every answer is saved as you give it; you can stop and come back.
#
# The gate of your unit may be turned round against the one in the lesson: look at the picture in task 1.
#
# *Invented unit, for teaching. On a real unit the maker's manual, local codes and licensed practice decide.*

# %% tags=["setup"]
from twoshaft.jobsheet import open_sheet
from twoshaft.plots.tables import given_table

sheet = open_sheet("shift-and-lockout")
given, unit = sheet.given, sheet.unit

# %% tags=["reference"]
from twoshaft.models import order, shift
from twoshaft.questions import bank_of
from twoshaft.records import labels
from twoshaft.units.quantities import Q
from twoshaft_grader.marking import Slip, reasons, ref

bank, mirror = bank_of("shift-and-lockout"), given.gate.mirror
sound = shift.fitted(unit.shift, (), mirror)
where = "07-shift-and-lockout"

# %% [markdown] tags=["task"]
# ## 1. Prove the lockout by hand
#
# Write down the hand test that proves the lockout: what has to be tried, and what has to be shown so that the stop counts. Ten moves at most; the fewest will do.
#
# Choose moves with the buttons. With the keyboard: Tab to a button and press Enter; in the list, Shift with an arrow key moves a move, Delete takes it out. **You must get this one right to pass.** *6 points.*

# %% tags=["rig"]
given_table("What must be proven", ["what", "on this unit"],
            [("at the start", "the lever stands in neutral, in the middle gate"),
             ("must be stopped", f"{given.lockout.earlier} straight into {given.lockout.later}")])

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
    outcome="prove-lockout", must_pass=True, lesson=f"{where}#the-proof-by-hand")

# %% tags=["mark"] task="lockout" points=6

# %% [markdown] tags=["task"]
# ## 2. Read a record of the proof
#
# Somebody wrote down what they did and felt. What does it say about the lockout? **You must get this one right to pass.** *4 points.*

# %% tags=["rig"]
given_table("As written down", ["no.", "move", "what happened"],
            [(n, *line) for n, line in enumerate(given.lockout.record.words, 1)])

# %% tags=["form"]
sheet.form(
    "lockout-record",
    sheet.choice("lockout-reading", "What does the record say about the lockout?",
                 options=given.lockout.readings),
)

# %% tags=["reference"]
work = shift.read_record(given.lockout.record.lines)
says = shift.lockout_reading(sound.shift, work, *direct)
ref("lockout-reading", says, outcome="prove-lockout", must_pass=True,
    lesson=f"{where}#the-proof-by-hand", slips=reasons(given.lockout.readings, says, {
        "proven": "Lines that read well tempt you to sign. The lockout is proven only if the straight push stops and the "
                  "later gear goes in after the lever has left the gate. With less, it is first tried on the road.",
        "fails": "Look at the push that comes straight after the earlier gear: the later gear is not in at its end. "
                 "Reported like this, somebody opens the unit and looks for the wrong fault.",
        "half": "It is tempting not to read to the end. The last line does show whether the later gear goes in; "
                "a second test costs time and finds the same.",
        "no-gear": "A gear that was not in yet is easily taken for one that cannot be had. Nothing in the record says so, "
                   "and you would search for a fault that is not there.",
    }))

# %% tags=["mark"] task="lockout-record" points=4

# %% [markdown] tags=["task"]
# ## 3. The force of a detent
#
# You measured a detent spring and looked up the rest. Work out the spring's force with the ball home, the force along the rail that leaves the notch, and the force at the crest, where the spring is pressed together by the depth of the notch on top. Then decide by the maker's limits, which are for leaving the notch. *14 points.*

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
    sheet.number("detent-crest", "Which force along the rail at the crest?", "N"),
    sheet.choice("detent-verdict", "What do you do with this spring?", options=given.detent.verdicts),
)

# %% tags=["reference"]
d = given.detent
rate, ramp, depth = Q(d.rate_n_per_mm, "N/mm"), Q(d.ramp_deg, "deg"), Q(d.depth_mm, "mm")
pressed = Q(d.free_mm - d.fitted_mm, "mm")
at_lesson = f"{where}#detents-what-holds-a-gear-in"
spring = ref("detent-spring", (rate * pressed).to("N"), outcome="detent-force",
             tolerance={"absolute": Q(0.5, "N")}, lesson=at_lesson, weight=2,
             slips=[Slip((rate * Q(d.fitted_mm, "mm")).to("N"), 0.25,
                         "Only the way that the spring is pressed together counts, not its length.")])

# %% tags=["reference"]
force = shift.detent_force(spring, ramp, d.friction, spring_rate=rate, depth=depth)
no_friction = shift.detent_force(spring, ramp, 0.0)
other_way = shift.detent_force(spring, Q(90, "deg") - ramp, d.friction)
leave = ref("detent-leave", force.to_start, outcome="detent-force", tolerance=0.015, weight=3,
            lesson=at_lesson, slips=[
    Slip(no_friction.to_start, 0.5, "That is without friction; the ball also rubs on the flank."),
    Slip(other_way.to_start, 0.25, "The flank's angle is measured from the rail's axis, not from the ball's."),
    Slip(spring, 0, "That is the spring's own force; the flank turns it into another one along the rail.")])

# %% tags=["reference"]
ref("detent-crest", force.at_crest, outcome="detent-force", tolerance=0.015, weight=3,
    lesson=at_lesson, slips=[
    Slip(force.to_start, 0.25, "At the crest the spring is pressed together by the notch's depth on top.")])
low, high = (Q(limit, "N") for limit in d.limits_n)
spring_is = "weak" if leave < low else "strong" if leave > high else "fit"

# %% tags=["reference"]
ref("detent-verdict", spring_is, outcome="detent-force", weight=2, lesson=at_lesson,
    slips=reasons(given.detent.verdicts, spring_is, {
        "fit": "It is tempting to use the spring that is at hand. Its force lies outside the limits: "
               "the gear will jump out, or people will force the lever.",
        "weak": "Beside the upper limit the force may look low. It does not lie below the lower limit: "
                "the gear stays in, and a stronger spring makes the lever heavier for nothing.",
        "strong": "Beside the lower limit the force may look high. It does not lie above the upper limit: "
                  "nobody has to force the lever, and with a weaker spring the gear may jump out.",
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
             ("length of the outer lever", f"{lever.lever_mm:g} mm"), ("way of the rail from neutral to gear", f"{lever.way_mm} mm")])

# %% tags=["form"]
sheet.form(
    "lever",
    sheet.number("lever-torque", "Which torque on the selector shaft?", "N·m"),
    sheet.number("lever-hand", "Which force of the hand at the end of the lever?", "N"),
    sheet.number("lever-angle", "By how many degrees does the shaft turn from neutral to gear?", "°"),
)

# %% tags=["reference"]
lever = given.lever
radius, arm = Q(lever.radius_mm, "mm"), Q(lever.lever_mm, "mm")
rail, way = Q(lever.rail_n, "N"), Q(lever.way_mm, "mm")
torque = ref("lever-torque", shift.shaft_torque(rail, radius), outcome="detent-force", tolerance=0.01,
             lesson=f"{where}#from-the-rail-to-the-hand",
             slips=[Slip(shift.shaft_torque(rail, arm), 0.25, "The rail pushes at the finger's tip, not at the outer lever.")])
ref("lever-hand", shift.hand_force(torque, arm), outcome="detent-force", tolerance=0.01,
    lesson=f"{where}#from-the-rail-to-the-hand",
    slips=[Slip(rail * arm / radius, 0.25, "The longer lever makes the hand's force smaller, not larger."),
           Slip(rail, 0, "That is the force along the rail; two levers lie between it and the hand.")])
ref("lever-angle", shift.turn_angle(way, radius), outcome="detent-force", tolerance=0.02,
    lesson=f"{where}#from-the-rail-to-the-hand",
    slips=[Slip(shift.turn_angle(way, arm), 0.25, "The way is measured at the finger's tip; use its radius.")])

# %% tags=["mark"] task="lever" points=10

# %% [markdown] tags=["task"]
# ## 5. One gear at a time
#
# One pin of the interlock was forgotten, and a gear is in. Another pin was measured. Its play is what is left of notch and gap beside the pin; the locked rail moves until the flank of its notch meets it. **You must get the first two right to pass.** *10 points.*

# %% tags=["rig"]
lock = given.interlock
given_table("The interlock", ["on this unit", "value"],
            [("gear that is in", lock.gear), ("left out", lock.missing.name), ("pin that was measured", lock.pin),
             ("its length", f"{lock.length_mm} mm"), ("depth of one notch", f"{lock.notch_mm} mm"),
             ("gap between the rails", f"{lock.gap_mm} mm"), ("flank, from the rail's axis", f"{lock.ramp_deg:g}°"),
             ("most free movement of a locked rail", f"{lock.limit_mm} mm")])

# %% tags=["form"]
sheet.form(
    "interlock",
    sheet.choice("interlock-why", "Why must two gears at once be impossible?", options=given.interlock.reasons),
    sheet.choice("interlock-free", "With that pin left out, which rail can still move as well?", options=given.interlock.rails),
    sheet.number("interlock-play", "How much play has the measured pin?", "mm"),
    sheet.number("interlock-way", "How far can the rail that it locks still move?", "mm"),
    sheet.choice("interlock-pin", "What do you do with the measured pin?", options=given.interlock.verdicts),
)

# %% tags=["reference"]
lock, at_lesson = given.interlock, f"{where}#interlock-one-rail-at-a-time"
ref("interlock-why", "lock", outcome="interlock-holds", must_pass=True, lesson=at_lesson,
    slips=reasons(lock.reasons, "lock", {
        "noise": "Worn gears are known by their noise; here noise would be the least of it. "
                 "Ask what speed the output shaft should turn at.",
        "oil": "The gears throw the oil about in any case, engaged or not. Ask what speed the output shaft should turn at.",
        "slow": "It sounds as if the slower gear would win. It would not run at all: "
                "ask what speed the output shaft should turn at.",
        "clutch": "The clutch may slip or not. It sits before the gearbox, and the wheels hang on the shafts behind it: "
                  "ask what those do.",
    }))

# %% tags=["reference"]
part = shift.without_pin(unit.shift, lock.missing.id)
held = shift.locked_rails(part, lock.gear)
own = shift.rail_of(part, lock.gear).body
free = {rail for rail, _ in lock.rails} - held - {own}
stays = "With one pin gone it is tempting to call every rail free. A pin that is still there holds this one; look for the other."
ref("interlock-free", free, outcome="interlock-holds", must_pass=True, weight=2, lesson=at_lesson,
    slips=[Slip(own, 0, "That rail has the gear in, so it is the one that moved. Ask which other one nothing holds: "
                        "a fork that drags can bring that one in as well."),
           *(Slip(rail, 0, stays) for rail in held)])

# %% tags=["reference"]
notch, gap, length = (Q(mm, "mm") for mm in (lock.notch_mm, lock.gap_mm, lock.length_mm))
flank = Q(lock.ramp_deg, "deg")
play = ref("interlock-play", shift.pin_play(notch, gap, length), outcome="interlock-holds",
           tolerance={"absolute": Q(0.006, "mm")}, weight=2, lesson=at_lesson,
           slips=[Slip(shift.pin_play(notch * 2, gap, length), 0.25,
                       "The rail that has moved shows the pin its round side; only one notch is left.")])
moves = shift.free_movement(play, flank)
way = ref("interlock-way", moves, outcome="interlock-holds", tolerance={"absolute": Q(0.011, "mm")},
          weight=2, lesson=at_lesson, slips=[
    Slip(shift.free_movement(play, Q(90, "deg") - flank), 0.25,
         "Divide the play by the tangent; a steep flank lets the rail move less than the pin.")])

# %% tags=["reference"]
pin_does = "keep" if way <= Q(lock.limit_mm, "mm") else "renew"
ref("interlock-pin", pin_does, outcome="interlock-holds", lesson=at_lesson,
    slips=reasons(lock.verdicts, pin_does, {
        "keep": "A pin that is a little short still looks sound. The free movement is more than the limit allows: "
                "the rail can bring its sleeve to a second gear while the first one drives.",
        "renew": "Any movement of a locked rail feels like wear. It is within the limit, so the pin locks as it should; "
                 "a new one changes nothing.",
    }))

# %% tags=["mark"] task="interlock" points=10

# %% [markdown] tags=["task"]
# ## 6. Show a misbuild by hand
#
# You suspect the misbuild below. Which moves of the hand show it for sure, because the lever feels different from a sound one? Five moves at most. *5 points.*

# %% tags=["rig"]
given_table("Suspected", ["misbuild"], [(given.reveal.misbuild.name,)])

# %% tags=["form"]
sheet.form(
    "reveal",
    sheet.path("reveal-way", "Which moves show it?", moves=given.gate.moves,
               plan=given.gate.plan, most=5),
)

# %% tags=["reference"]
suspect = shift.fitted(unit.shift, [given.reveal.misbuild.id], mirror)
ref("reveal-way", shift.telling_test(sound, suspect), outcome="choose-hand-test",
    lesson=f"{where}#which-test-shows-which-misbuild")

# %% tags=["mark"] task="reveal" points=5

# %% [markdown] tags=["task"]
# ## 7. What does it do?
#
# Three misbuilds, each alone in a unit. What does a full hand test find? *6 points.*

# %% tags=["form"]
sheet.form("symptoms", *[
    sheet.choice(f"symptom-{n}", f"{name}. What does the hand test find?",
                 options=given.symptoms.kinds)
    for n, (_, name) in enumerate(given.symptoms.misbuilds, 1)
])

# %% tags=["reference"]
not_so = {
    "gear-missing": "A lever that is stopped somewhere looks like a gear that is missing. "
                    "With this misbuild every gear can still be engaged.",
    "not-held": "A ball or spring is soon suspected. Here every gear that goes in stays in when you let go and shake; "
                "you would open the plugs for nothing.",
    "two-at-once": "Whatever is wrong in a selector makes you fear two gears at once. "
                   "The hand cannot bring in two here, however it turns between two gates.",
    "direct-passes": "The lockout is suspected first. Follow the peg on its way back towards reverse: is it let through every time?",
    "direct-sometimes": "That is what a part does that is left to lie where it likes. "
                        "Here the straight push ends the same way each time you try it.",
    "nothing": "From outside all looks well, and the unit would go out. The hand does feel it; go through the tests one by one.",
}

# %% tags=["reference"]
for n, (id, _) in enumerate(given.symptoms.misbuilds, 1):
    kinds = shift.symptoms(shift.proof_with(unit.shift, id))
    ref(f"symptom-{n}", kinds, outcome="misbuild-symptoms", lesson=f"{where}#what-each-misbuild-does",
        slips=reasons(given.symptoms.kinds, kinds, not_so))

# %% tags=["mark"] task="symptoms" points=6

# %% [markdown] tags=["task"]
# ## 8. Part of the test
#
# A colleague made only a part of the hand test, and everything was as it should be. Tick every misbuild that could still be in the unit. *5 points.*

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
ref("one-test-left", left, outcome="misbuild-symptoms",
    lesson=f"{where}#which-test-shows-which-misbuild",
    slips=[Slip(id, 0, "It feels safer to suspect more. But what was done would have shown one that you ticked, "
                       f"and you would look for it in vain: “{name}”.")
           for id, name in given.one_test.options if id not in left])

# %% tags=["mark"] task="one-test" points=5

# %% [markdown] tags=["task"]
# ## 9. What could it be?
#
# The record of a full hand test of a unit in which one thing is wrong. Tick every misbuild that explains all of it. *5 points.*

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
ref("explain-all", fits, outcome="misbuild-symptoms",
    lesson=f"{where}#what-each-misbuild-does",
    slips=[Slip(id, 0, "A misbuild that fits most lines is tempting. With one that you ticked, some line would read "
                       f"otherwise, and you would find that part sound: “{name}”.")
           for id, name in given.explain.options if id not in fits])

# %% tags=["mark"] task="explain" points=5

# %% [markdown] tags=["task"]
# ## 10. What the hand does not find
#
# One of these misbuilds is shown by no hand test at all. *4 points.*

# %% tags=["form"]
sheet.form(
    "unseen",
    sheet.choice("unseen-which", "Which one?", options=given.unseen.options),
    sheet.choice("unseen-why", "Why does no hand test show it?", options=given.unseen.why),
    sheet.choice("unseen-measure", "What makes sure that it is right?", options=given.unseen.measures),
)

# %% tags=["reference"]
at_lesson = f"{where}#which-test-shows-which-misbuild"
found = {id: shift.symptoms(shift.proof_with(unit.shift, id)) for id, _ in given.unseen.options}
unseen = {id for id, kinds in found.items() if kinds == {shift.NOTHING}}
ref("unseen-which", unseen, outcome="choose-hand-test", weight=2, lesson=at_lesson,
    slips=[Slip(id, 0, "It does not show at the first shift, so it seems hidden. A hand test shows this one; "
                       "go through the tests one by one.")
           for id in found if id not in unseen])

# %% tags=["reference"]
look = "Look at the picture of the finger in the jaws: what can it push at once?"
ref("unseen-why", "reach", outcome="choose-hand-test", lesson=at_lesson,
    slips=reasons(given.unseen.why, "reach", {
        "spring": f"Balls and plate have springs; a pin between rails has none. {look}",
        "oil": f"Oil takes up play in bearings. Between rails it changes nothing: the warm unit passes the same test. {look}",
        "lockout": f"The lockout plate stops one direct shift only, and no two rails. {look}",
    }))

# %% tags=["reference"]
ref("unseen-measure", "count", outcome="choose-hand-test", lesson=at_lesson,
    slips=reasons(given.unseen.measures, "count", {
        "harder": "More force seems to ask more of the parts. The hand still does not reach both rails, "
                  "and a fork may bend. Ask when the part can be seen.",
        "turn": "Counting turns proves one gear after the other, and each of them is right. Ask when the part can be seen.",
        "drive": "On the road it shows when a fork drags a second gear in, and by then the wheels may lock. "
                 "Ask when the part can be seen.",
        "repeat": "A second test feels careful, but it finds what the first one found: nothing. Ask when the part can be seen.",
    }))

# %% tags=["mark"] task="unseen" points=4

# %% [markdown] tags=["task"]
# ## 11. Build it, and is the pin home?
#
# Put the steps of the selector into an order that works. Then judge the pin of the finger, measured after it was driven in. *8 points.*

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
    sheet.choice("pin-verdict", "Is the pin home?", options=given.pin.verdicts),
)

# %% tags=["reference"]
pin = given.pin
ref("build-order", order.OrderTask.from_unit(unit, given.order.operations),
    outcome="build-selector", weight=4, lesson="02-order-of-work#four-reasons")
hub, length, struck = (Q(mm, "mm") for mm in (pin.hub_mm, pin.pin_mm, pin.struck_mm))
far = ref("pin-other", shift.other_end(hub, length, struck), outcome="build-selector", weight=2,
          tolerance={"absolute": Q(0.006, "mm")}, lesson=f"{where}#the-pin-of-the-finger",
          slips=[Slip(hub - length, 0.25, "That is the depth of both ends together; one end you have measured.")])

# %% tags=["reference"]
least = Q(pin.least_mm, "mm")
pin_lies = "further" if struck < least else "back" if far < least else "home"
ref("pin-verdict", pin_lies, outcome="build-selector", weight=2, lesson=f"{where}#the-pin-of-the-finger",
    slips=reasons(given.pin.verdicts, pin_lies, {
        "home": "A pin that does not stand out looks home. One of its ends lies less deep than it must: "
                "it can work loose, and the peg then misses the plate.",
        "further": "One more blow seems to do no harm. The struck end lies deep enough; "
                   "driven further, the pin comes nearer to the surface at the other end.",
        "back": "The far end is out of sight, and you fear that it stands out. It lies deep enough; "
                "driven back, the pin comes nearer to the surface at the end that was struck.",
    }))

# %% tags=["mark"] task="build" points=8

# %% [markdown] tags=["task"]
# ## 12. Before you undo a detent plug
#
# The plug has a spring and a ball behind it, and somebody else works on the same unit. Tick everything that you do. *3 points.*

# %% tags=["form"]
sheet.form(
    "safe",
    sheet.choices("safe-do", "What do you do?", options=given.safe.options),
)

# %% tags=["reference"]
careful = {"eyes", "line", "rag", "fingers", "hand"}
ref("safe-do", careful & set(labels(given.safe.options)), outcome="selector-safety", lesson=f"{where}#before-you-start",
    slips=reasons((*bank.lists["careful"], *bank.lists["danger"]), careful, {
        "air": "Air frees a ball that sticks, but it turns the ball into a shot.",
        "gun": "It is quick, but it leaves nobody time to let the spring go slack: plug and ball fly.",
        "look": "You want to see the ball come, and you get it in the eye.",
        "lever": "The rail does push the ball out, but somebody has their fingers in there, and the ball comes when it likes.",
        "gloves": "Gloves help the hand that catches the ball. They do nothing for the eyes.",
    }, shown=given.safe.options))

# %% tags=["mark"] task="safe" points=3

# %% [markdown]
# ## Done?
#
# Go back to **start-here** and press **Hand in**. You get a receipt. You can hand in again until the due date; the last one counts.
