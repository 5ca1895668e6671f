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
from twoshaft.units.quantities import Q
from twoshaft_grader.marking import Slip, ref

mirror = given["gate"]["mirror"]
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
             ("must be stopped", f"{given['lockout']['earlier']} straight into {given['lockout']['later']}")])

# %% tags=["form"]
sheet.form(
    "lockout",
    sheet.path("lockout-way", "Which moves prove the lockout?", moves=given["gate"]["moves"],
               plan=given["gate"]["plan"], most=10),
)

# %% tags=["reference"]
shown = [shift.fitted(unit.shift, [m.id], mirror) for m in unit.shift.misbuilds]
direct = given["lockout"]["earlier"], given["lockout"]["later"]
fails = [m for m in shown if shift.prove_by_hand(m).locks[0].verdict == "fails"]
ref("lockout-way", shift.lockout_test(sound, *direct, faulty=fails[:2]),
    outcome="prove-lockout", must_pass=True, lesson=f"{where}#the-proof-by-hand")

# %% tags=["mark"] task="lockout" points=6

# %% [markdown] tags=["task"]
# ## 2. Read a record of the proof
#
# Somebody wrote down what they did and felt. What does it say about the lockout? **You must get this one right to pass.** *4 points.*

# %% tags=["rig"]
given_table("As written down", ["no.", "move", "what happened"],
            [(n, *line) for n, line in enumerate(given["lockout"]["record"]["words"], 1)])

# %% tags=["form"]
sheet.form(
    "lockout-record",
    sheet.choice("lockout-reading", "What does the record say about the lockout?",
                 options=given["lockout"]["readings"]),
)

# %% tags=["reference"]
work = shift.read_record(given["lockout"]["record"]["lines"])
reading = shift.lockout_reading(sound.shift, work, *direct)
wrong = {
    "proven": "Ask what the record would look like if the later gear could not be had at all.",
    "fails": "Look at the push that comes straight after the earlier gear: which gear is in at its end?",
    "half": "The record goes on after the stop; read what its last moves show.",
    "no-gear": "Nothing in the record says that the later gear cannot be had.",
}

# %% tags=["reference"]
ref("lockout-reading", reading, outcome="prove-lockout", must_pass=True,
    lesson=f"{where}#the-proof-by-hand",
    slips=[Slip(key, 0, words) for key, words in wrong.items() if key != reading])

# %% tags=["mark"] task="lockout-record" points=4

# %% [markdown] tags=["task"]
# ## 3. The force of a detent
#
# You measured a detent spring and looked up the rest. Work out the spring's force with the ball home, the force along the rail that leaves the notch, and the force at the crest, where the spring is pressed together by the depth of the notch on top. Then decide by the maker's limits, which are for leaving the notch. *14 points.*

# %% tags=["rig"]
d = given["detent"]
given_table(d["rail"][1], ["measured or looked up", "value"],
            [("spring, free length", f"{d['free_mm']} mm"), ("spring, length with the ball home", f"{d['fitted_mm']} mm"),
             ("rate of the spring", f"{d['rate_n_per_mm']} N/mm"), ("flank, from the rail's axis", f"{d['ramp_deg']:g}°"),
             ("depth of the notch", f"{d['depth_mm']} mm"), ("friction coefficient", f"{d['friction']}"),
             ("limits to leave the notch", f"{d['limits_n'][0]} to {d['limits_n'][1]} N")])

# %% tags=["form"]
sheet.form(
    "detent",
    sheet.number("detent-spring", "Which force does the spring have with the ball home?", "N"),
    sheet.number("detent-leave", "Which force along the rail leaves the notch?", "N"),
    sheet.number("detent-crest", "Which force along the rail at the crest?", "N"),
    sheet.choice("detent-verdict", "What do you do with this spring?", options=given["detent"]["verdicts"]),
)

# %% tags=["reference"]
d = given["detent"]
rate, ramp, depth = Q(d["rate_n_per_mm"], "N/mm"), Q(d["ramp_deg"], "deg"), Q(d["depth_mm"], "mm")
pressed = Q(d["free_mm"] - d["fitted_mm"], "mm")
at_lesson = f"{where}#detents-what-holds-a-gear-in"
spring = ref("detent-spring", (rate * pressed).to("N"), outcome="detent-force",
             tolerance={"absolute": Q(0.5, "N")}, lesson=at_lesson, weight=2,
             slips=[Slip((rate * Q(d["fitted_mm"], "mm")).to("N"), 0.25,
                         "Only the way that the spring is pressed together counts, not its length.")])

# %% tags=["reference"]
force = shift.detent_force(spring, ramp, d["friction"], spring_rate=rate, depth=depth)
no_friction = shift.detent_force(spring, ramp, 0.0)
other_way = shift.detent_force(spring, Q(90, "deg") - ramp, d["friction"])
leave = ref("detent-leave", force.to_start, outcome="detent-force", tolerance=0.015, weight=3,
            lesson=at_lesson, slips=[
    Slip(no_friction.to_start, 0.5, "That is without friction; the ball also rubs on the flank."),
    Slip(other_way.to_start, 0.25, "The flank's angle is measured from the rail's axis, not from the ball's."),
    Slip(spring, 0, "That is the spring's own force; the flank turns it into another one along the rail.")])

# %% tags=["reference"]
ref("detent-crest", force.at_crest, outcome="detent-force", tolerance=0.015, weight=3,
    lesson=at_lesson, slips=[
    Slip(force.to_start, 0.25, "At the crest the spring is pressed together by the notch's depth on top.")])
low, high = (Q(limit, "N") for limit in d["limits_n"])
verdict = "weak" if leave < low else "strong" if leave > high else "fit"
words = {"fit": "Put your force beside both limits once more.",
         "weak": "The force does not lie below the lower limit.",
         "strong": "The force does not lie above the upper limit."}
ref("detent-verdict", verdict, outcome="detent-force", weight=2, lesson=at_lesson,
    slips=[Slip(key, 0, said) for key, said in words.items() if key != verdict])

# %% tags=["mark"] task="detent" points=14

# %% [markdown] tags=["task"]
# ## 4. From the rail to the hand
#
# A detent asks for a force along the rail. The finger turns on the selector shaft; outside, the lever sits square on the shaft. *10 points.*

# %% tags=["rig"]
lever = given["lever"]
given_table("The selector", ["measured", "value"],
            [("force along the rail at the crest", f"{lever['rail_n']:g} N"), ("radius of the finger, shaft to tip", f"{lever['radius_mm']} mm"),
             ("length of the outer lever", f"{lever['lever_mm']:g} mm"), ("way of the rail from neutral to gear", f"{lever['way_mm']} mm")])

# %% tags=["form"]
sheet.form(
    "lever",
    sheet.number("lever-torque", "Which torque on the selector shaft?", "N·m"),
    sheet.number("lever-hand", "Which force of the hand at the end of the lever?", "N"),
    sheet.number("lever-angle", "By how many degrees does the shaft turn from neutral to gear?", "°"),
)

# %% tags=["reference"]
lever = given["lever"]
radius, arm = Q(lever["radius_mm"], "mm"), Q(lever["lever_mm"], "mm")
rail, way = Q(lever["rail_n"], "N"), Q(lever["way_mm"], "mm")
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
lock = given["interlock"]
given_table("The interlock", ["on this unit", "value"],
            [("gear that is in", lock["gear"]), ("left out", lock["missing"][1]), ("pin that was measured", lock["pin"]),
             ("its length", f"{lock['length_mm']} mm"), ("depth of one notch", f"{lock['notch_mm']} mm"),
             ("gap between the rails", f"{lock['gap_mm']} mm"), ("flank, from the rail's axis", f"{lock['ramp_deg']:g}°"),
             ("most free movement of a locked rail", f"{lock['limit_mm']} mm")])

# %% tags=["form"]
sheet.form(
    "interlock",
    sheet.choice("interlock-why", "Why must two gears at once be impossible?", options=given["interlock"]["reasons"]),
    sheet.choice("interlock-free", "With that pin left out, which rail can still move as well?", options=given["interlock"]["rails"]),
    sheet.number("interlock-play", "How much play has the measured pin?", "mm"),
    sheet.number("interlock-way", "How far can the rail that it locks still move?", "mm"),
    sheet.choice("interlock-pin", "What do you do with the measured pin?", options=given["interlock"]["verdicts"]),
)

# %% tags=["reference"]
lock, at_lesson = given["interlock"], f"{where}#interlock-one-rail-at-a-time"
why = {"noise": "The noise would be the least of it; ask what speed the output shaft should turn at.",
       "oil": "Oil is not the matter; ask what speed the output shaft should turn at.",
       "slow": "It would not run at all; ask what speed the output shaft should turn at.",
       "clutch": "The clutch may slip or not; the wheels still hang on the locked shafts."}
ref("interlock-why", "lock", outcome="interlock-holds", must_pass=True, lesson=at_lesson,
    slips=[Slip(key, 0, said) for key, said in why.items()])
part = shift.without_pin(unit.shift, lock["missing"][0])
held = shift.locked_rails(part, lock["gear"])
own = shift.rail_of(part, lock["gear"]).body
free = {rail for rail, _ in lock["rails"]} - held - {own}
ref("interlock-free", free, outcome="interlock-holds", must_pass=True, weight=2, lesson=at_lesson,
    slips=[Slip(own, 0, "That rail has the gear in; ask which other one nothing holds."),
           *(Slip(rail, 0, "A pin that is still there holds this rail.") for rail in held)])

# %% tags=["reference"]
notch, gap, length = (Q(lock[key], "mm") for key in ("notch_mm", "gap_mm", "length_mm"))
flank = Q(lock["ramp_deg"], "deg")
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
verdict = "keep" if way <= Q(lock["limit_mm"], "mm") else "renew"
words = {"keep": "The free movement is more than the limit allows.",
         "renew": "The free movement is within the limit."}
ref("interlock-pin", verdict, outcome="interlock-holds", lesson=at_lesson,
    slips=[Slip(key, 0, said) for key, said in words.items() if key != verdict])

# %% tags=["mark"] task="interlock" points=10

# %% [markdown] tags=["task"]
# ## 6. Show a misbuild by hand
#
# You suspect the misbuild below. Which moves of the hand show it for sure, because the lever feels different from a sound one? Five moves at most. *5 points.*

# %% tags=["rig"]
given_table("Suspected", ["misbuild"], [(given["reveal"]["misbuild"][1],)])

# %% tags=["form"]
sheet.form(
    "reveal",
    sheet.path("reveal-way", "Which moves show it?", moves=given["gate"]["moves"],
               plan=given["gate"]["plan"], most=5),
)

# %% tags=["reference"]
suspect = shift.fitted(unit.shift, [given["reveal"]["misbuild"][0]], mirror)
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
                 options=given["symptoms"]["kinds"])
    for n, (_, name) in enumerate(given["symptoms"]["misbuilds"], 1)
])

# %% tags=["reference"]
not_so = {
    "gear-missing": "Every gear can still be engaged with this misbuild.",
    "not-held": "All rails still have their balls and springs.",
    "two-at-once": "The pins between the rails are not touched by this.",
    "direct-passes": "Follow the peg on its way back towards reverse: is it let through every time?",
    "direct-sometimes": "Nothing here is left to lie where it likes.",
    "nothing": "The hand does feel it; go through the tests one by one.",
}

# %% tags=["reference"]
for n, (id, _) in enumerate(given["symptoms"]["misbuilds"], 1):
    right = shift.symptoms(shift.prove_by_hand(shift.fitted(unit.shift, [id], mirror)))
    ref(f"symptom-{n}", right, outcome="misbuild-symptoms",
        lesson=f"{where}#what-each-misbuild-does",
        slips=[Slip(key, 0, words) for key, words in not_so.items() if key not in right])

# %% tags=["mark"] task="symptoms" points=6

# %% [markdown] tags=["task"]
# ## 8. Part of the test
#
# A colleague made only a part of the hand test, and everything was as it should be. Tick every misbuild that could still be in the unit. *5 points.*

# %% tags=["rig"]
given_table(f"Made: {given['one_test']['name']}", ["no.", "what was done", "what happened"],
            [(n, *line) for n, line in enumerate(given["one_test"]["record"]["words"], 1)])

# %% tags=["form"]
sheet.form(
    "one-test",
    sheet.choices("one-test-left", "Which of these could still be in the unit?",
                  options=given["one_test"]["options"]),
)

# %% tags=["reference"]
work = shift.read_record(given["one_test"]["record"]["lines"])
left = {id for id, _ in given["one_test"]["options"]
        if shift.explains(shift.fitted(unit.shift, [id], mirror), work)}
ref("one-test-left", left, outcome="misbuild-symptoms",
    lesson=f"{where}#which-test-shows-which-misbuild",
    slips=[Slip(id, 0, f"What was done would have shown one that you ticked: “{name}”.")
           for id, name in given["one_test"]["options"] if id not in left])

# %% tags=["mark"] task="one-test" points=5

# %% [markdown] tags=["task"]
# ## 9. What could it be?
#
# The record of a full hand test of a unit in which one thing is wrong. Tick every misbuild that explains all of it. *5 points.*

# %% tags=["rig"]
given_table("As written down", ["no.", "what was done", "what happened"],
            [(n, *line) for n, line in enumerate(given["explain"]["record"]["words"], 1)])

# %% tags=["form"]
sheet.form(
    "explain",
    sheet.choices("explain-all", "Which of these explain the whole record?",
                  options=given["explain"]["options"]),
)

# %% tags=["reference"]
work = shift.read_record(given["explain"]["record"]["lines"])
fits = {id for id, _ in given["explain"]["options"]
        if shift.explains(shift.fitted(unit.shift, [id], mirror), work)}
ref("explain-all", fits, outcome="misbuild-symptoms",
    lesson=f"{where}#what-each-misbuild-does",
    slips=[Slip(id, 0, f"With one that you ticked, some line would read otherwise: “{name}”.")
           for id, name in given["explain"]["options"] if id not in fits])

# %% tags=["mark"] task="explain" points=5

# %% [markdown] tags=["task"]
# ## 10. What the hand does not find
#
# One of these misbuilds is shown by no hand test at all. *4 points.*

# %% tags=["form"]
sheet.form(
    "unseen",
    sheet.choice("unseen-which", "Which one?", options=given["unseen"]["options"]),
    sheet.choice("unseen-why", "Why does no hand test show it?", options=given["unseen"]["why"]),
    sheet.choice("unseen-measure", "What makes sure that it is right?", options=given["unseen"]["measures"]),
)

# %% tags=["reference"]
at_lesson = f"{where}#which-test-shows-which-misbuild"
found = {id: shift.symptoms(shift.prove_by_hand(shift.fitted(unit.shift, [id], mirror)))
         for id, _ in given["unseen"]["options"]}
unseen = {id for id, kinds in found.items() if kinds == {shift.NOTHING}}
ref("unseen-which", unseen, outcome="choose-hand-test", weight=2, lesson=at_lesson,
    slips=[Slip(id, 0, "A hand test shows this one; go through the tests one by one.")
           for id in found if id not in unseen])
ref("unseen-why", "reach", outcome="choose-hand-test", lesson=at_lesson,
    slips=[Slip(key, 0, "Look at the picture of the finger in the jaws: what can it push at once?")
           for key, _ in given["unseen"]["why"] if key != "reach"])
ref("unseen-measure", "count", outcome="choose-hand-test", lesson=at_lesson,
    slips=[Slip(key, 0, "That is a test too, and no test by hand shows it; ask when it can be seen.")
           for key, _ in given["unseen"]["measures"] if key != "count"])

# %% tags=["mark"] task="unseen" points=4

# %% [markdown] tags=["task"]
# ## 11. Build it, and is the pin home?
#
# Put the steps of the selector into an order that works. Then judge the pin of the finger, measured after it was driven in. *8 points.*

# %% tags=["rig"]
pin = given["pin"]
given_table("The pin of the finger", ["measured", "value"],
            [("diameter of the hub", f"{pin['hub_mm']} mm"), ("length of the pin", f"{pin['pin_mm']:g} mm"),
             ("struck end lies below the surface", f"{pin['struck_mm']} mm"), ("least depth at each end", f"{pin['least_mm']} mm")])

# %% tags=["form"]
sheet.form(
    "build",
    sheet.order("build-order", "Put these steps in a workable order", steps=given["order"]["start"]),
    sheet.number("pin-other", "How deep below the surface does the other end lie?", "mm"),
    sheet.choice("pin-verdict", "Is the pin home?", options=given["pin"]["verdicts"]),
)

# %% tags=["reference"]
pin = given["pin"]
ref("build-order", order.OrderTask.from_unit(unit, given["order"]["operations"]),
    outcome="build-selector", weight=4, lesson="02-order-of-work#four-reasons")
hub, length, struck = (Q(pin[key], "mm") for key in ("hub_mm", "pin_mm", "struck_mm"))
far = ref("pin-other", shift.other_end(hub, length, struck), outcome="build-selector", weight=2,
          tolerance={"absolute": Q(0.006, "mm")}, lesson=f"{where}#the-pin-of-the-finger",
          slips=[Slip(hub - length, 0.25, "That is the depth of both ends together; one end you have measured.")])

# %% tags=["reference"]
least = Q(pin["least_mm"], "mm")
verdict = "further" if struck < least else "back" if far < least else "home"
words = {"home": "One of the ends lies less deep than it must.",
         "further": "The struck end lies deep enough.",
         "back": "The far end lies deep enough."}
ref("pin-verdict", verdict, outcome="build-selector", weight=2,
    lesson=f"{where}#the-pin-of-the-finger",
    slips=[Slip(key, 0, said) for key, said in words.items() if key != verdict])

# %% tags=["mark"] task="build" points=8

# %% [markdown] tags=["task"]
# ## 12. Before you undo a detent plug
#
# The plug has a spring and a ball behind it, and somebody else works on the same unit. Tick everything that you do. *3 points.*

# %% tags=["form"]
sheet.form(
    "safe",
    sheet.choices("safe-do", "What do you do?", options=given["safe"]["options"]),
)

# %% tags=["reference"]
careful = {"eyes", "line", "rag", "fingers", "hand"}
danger = {
    "air": "Compressed air turns the ball into a shot.",
    "gun": "An impact driver leaves nobody time to let the spring go slack.",
    "look": "Whoever looks into the bore gets the ball in the eye.",
    "lever": "Somebody has their fingers in there, and the ball comes when it likes.",
    "gloves": "Gloves do nothing for the eyes.",
}
ref("safe-do", {key for key, _ in given["safe"]["options"] if key in careful},
    outcome="selector-safety", lesson=f"{where}#before-you-start",
    slips=[Slip(key, 0, words) for key, words in danger.items()
           if key in dict(given["safe"]["options"])])

# %% tags=["mark"] task="safe" points=3

# %% [markdown]
# ## Done?
#
# Go back to **start-here** and press **Hand in**. You get a receipt. You can hand in again until the due date; the last one counts.
