# %% [markdown]
# # Threaded joints: exercise
#
# <div class="twoshaft-if-missing">If no forms appear below: press <b>Run</b>, then <b>Run All Cells</b>.</div>
#
# Ten tasks about torque, clamp and threads. Take about an hour, with a calculator. Every answer is saved as you give it; you can stop and come back.
#
# Write numbers with their unit, as in the workshop: 18.5 kN, 13 lbf·ft, 85 %. The factor K of a bolt stands in the tables: torque = K × clamp × thread diameter.
#
# *Invented unit, for teaching. On a real unit the maker's manual, local codes and licensed practice decide.*

# %% tags=["setup"]
from twoshaft.jobsheet import open_sheet
from twoshaft.models import joint
from twoshaft.plots.tables import given_table
from twoshaft.rigs import face_tightening
from twoshaft.rigs.face_drawing import face_picture
from twoshaft.units.quantities import Q

sheet = open_sheet("threaded-joints")
given, unit = sheet.given, sheet.unit

# %% tags=["reference"]
from twoshaft.models import fit, joint, order
from twoshaft.questions import bank_of
from twoshaft.readings.threaded_joints import face_like
from twoshaft.records import labels
from twoshaft.units.quantities import Q
from twoshaft_grader.marking import Slip, reasons, ref, settled

asked, bank = given.asked, bank_of("threaded-joints")

# %% [markdown] tags=["task"]
# ## 1. From an old card to the clamp
#
# An old job card gives a torque, and the bolt can only be reached with an adapter. Turn the torque into N·m, choose the wrench, work out what to set on it, and the clamp that the bolt should get.
#
# Done means: the setting is the mark of the wrench's scale nearest to what you work out, or your figure itself. *6 points.*

# %% tags=["rig"]
card = given.card
given_table("The job card", ["bolt", "thread", "torque", "thread is", "adapter reach, mm", "adapter angle, °"],
            [(card.name, card.thread, f"{card.figure:g} {card.unit}", card.state.name,
              card.reach_mm, card.angle_deg)])

# %% tags=["rig"]
given_table("Wrenches in the drawer", ["wrench", "scale from, N·m", "to, N·m", "marks every, N·m", "length to mid grip, mm"],
            [(w.name, w.low_nm, w.high_nm, w.step_nm, w.length_mm) for w in given.card.wrenches])

# %% tags=["rig"]
given_table(f"{given.card.name}: factor K", ["thread and head", "K"],
            [(one.name, f"{one.k:.3f}") for one in given.card.factors])

# %% tags=["form"]
sheet.form(
    "card",
    sheet.number("card-torque", "What is the torque on the card in N·m?", "N·m"),
    sheet.choice("card-wrench", "Which wrench do you take?",
                 options=[*((w.id, w.name) for w in given.card.wrenches),
                          ["any", "Any of them: a torque is a torque"],
                          ["none", "None of them: this torque needs another wrench"]]),
    sheet.number("card-setting", "What do you set on it, with the adapter?", "N·m"),
    sheet.number("card-clamp", "What clamp should the bolt get?", "kN"),
)

# %% tags=["reference"]
card = given.card
pints = {"lbf·ft": "force_pound * foot", "lbf·in": "force_pound * inch",
         "kgf·cm": "force_kilogram * cm"}
where = "03-threaded-joints#units-of-torque"
torque = ref(
    "card-torque", Q(card.figure, pints[card.unit]).to("N*m"), outcome="torque-tools",
    tolerance=0.004, lesson=where,
    slips=[Slip(Q(card.figure, pint).to("N*m"), 0,
                f"That is the figure taken as {name}; look at the unit on the card.")
           for name, pint in pints.items() if name != card.unit],
)

# %% tags=["reference"]
tools = {w.id: joint.TorqueWrench.of(w) for w in unit.fasteners.wrenches}
near = torque.m_as("N*m")
unfit = {name: "Its scale ends below this torque." if near > tool.high_nm else
         "So low on its scale no tolerance is promised: that begins at a fifth of the top."
         for name, tool in tools.items() if not tool.suits(torque)}
unfit["any"] = "Each scale has a range in which it can be trusted; the torque must lie in it."
unfit["none"] = "Hold the torque against each scale, from a fifth of its top upwards."
chosen = ref("card-wrench", min(set(tools) - set(unfit), default=""), outcome="torque-tools",
             lesson="03-threaded-joints#adapters",
             slips=[Slip(name, 0, why) for name, why in unfit.items()])

# %% tags=["reference"]
length, reach = Q(tools[chosen].length_m, "m"), Q(card.reach_mm, "mm")
angle = Q(card.angle_deg, "degree")
straight = joint.setting_with_adapter(torque, length, reach)
slips = [
    Slip(torque, 0, "This leaves the adapter out: with it the lever is longer."),
    Slip(joint.torque_at_bolt(torque, length, reach, angle), 0.25,
         "You multiplied where the longer lever asks you to divide: the bolt would get too much."),
]
slips += [Slip(straight, 0.25, "This is for an adapter straight on; yours stands at an angle.")] * bool(angle)
setting = ref("card-setting", joint.setting_with_adapter(torque, length, reach, angle), weight=2,
              outcome="torque-tools", lesson="03-threaded-joints#adapters", slips=slips,
              tolerance={"absolute": Q(0.5 * tools[chosen].step_nm, "N*m"), "relative": 0.004})

# %% tags=["reference"]
size = Q(card.diameter_mm, "mm")
slips = [Slip(joint.clamp_short(torque, one.k, size), 0,
              f"You took K for “{one.name}”; the card names another state.")
         for one in card.factors if one.id != card.state.id]
slips += [Slip(joint.clamp_short(setting, card.k, size), 0,
               "You went on with the setting; the bolt gets the torque.")]
ref("card-clamp", joint.clamp_short(torque, card.k, size), outcome="clamp-from-torque",
    weight=2, tolerance=0.008, slips=slips, lesson="03-threaded-joints#clamp-not-torque")

# %% tags=["mark"] task="card" points=6

# %% [markdown] tags=["task"]
# ## 2. A setting that was found
#
# Somebody has tightened a bolt and left the wrench with its adapter as the table shows. Find out what the bolt got and decide what is to be done.
#
# The workshop's rule: inside the window it stays. Outside the window it is slackened fully and tightened again. At 90 % of the clamp at which it yields, or more, it is renewed. *5 points.*

# %% tags=["rig"]
found = given.found
given_table(f"As it was found{found.source}", ["", ""], [
    ("bolt", f"{found.name}, {found.thread}, class {found.strength}"),
    ("thread and head", found.state.name),
    ("K in this state", f"{found.k:.3f}"),
    ("wrench set to", f"{found.setting_nm:g} N·m"),
    ("wrench, square drive to mid grip", f"{found.length_mm:g} mm"),
    ("adapter", f"reach {found.reach_mm:g} mm, angle {found.angle_deg:g}°"),
    ("window of the torque", f"{found.window_nm[0]:g} to {found.window_nm[1]:g} N·m"),
    ("clamp at which it yields in tightening", f"{found.yields_kn:g} kN"),
])

# %% tags=["form"]
sheet.form(
    "found",
    sheet.number("found-torque", "What torque did the bolt get?", "N·m"),
    sheet.number("found-clamp", "What clamp did that leave?", "kN"),
    sheet.number("found-use", "What share is that of the clamp at which it yields?", "%"),
    sheet.choice("found-do", "What do you do?", options=[
        ["by-feel", "Pull on a little by feel, to be sure"],
        ["compound", "Slacken it, put locking compound on, and tighten it to the same setting"],
        ["leave", "Leave it: it got what it should"],
        ["again", "Slacken it fully and tighten it again with the right setting"],
        ["turn-back", "Turn it back a little, until the wrench shows the right torque"],
        ["renew", "Fit a new one, and check the thread that the old one went into"],
        ["later", "Leave it and pull it once more after the first drive"],
    ]),
)

# %% tags=["reference"]
found = given.found
length, reach, angle = (Q(found.length_mm, "mm"), Q(found.reach_mm, "mm"),
                        Q(found.angle_deg, "degree"))
shown = Q(found.setting_nm, "N*m")
torque = ref(
    "found-torque", joint.torque_at_bolt(shown, length, reach, angle), outcome="torque-tools",
    tolerance=0.005, lesson="03-threaded-joints#adapters",
    slips=[Slip(shown, 0, "This is what the wrench was set to; the adapter adds to it."),
           Slip(joint.setting_with_adapter(shown, length, reach, angle), 0,
                "You divided; the longer lever gives the bolt more than the wrench shows.")],
)

# %% tags=["reference"]
clamp = ref("found-clamp", joint.clamp_short(torque, found.k, Q(found.diameter_mm, "mm")),
            outcome="clamp-from-torque", tolerance=0.008,
            lesson="03-threaded-joints#clamp-not-torque")
use = ref("found-use", (clamp / Q(found.yields_kn, "kN")).to("percent"),
          outcome="clamp-from-torque", tolerance={"absolute": Q(0.6, "percent")},
          lesson="03-threaded-joints#clamp-not-torque",
          slips=[Slip((Q(found.yields_kn, "kN") / clamp).to("percent"), 0,
                      "This is the yield over the clamp; asked is the clamp over the yield.")])

# %% tags=["reference"]
low, high = found.window_nm
inside = low <= torque.m_as("N*m") <= high
todo = "renew" if use.m_as("percent") >= 90 else "leave" if inside else "again"
why = {
    "compound": "Compound keeps it from turning; it does not mend the clamp.",
    "later": "What is wrong now is not put right by driving.",
    "by-feel": "By feel a hand is off by a third; that is why the wrench exists.",
    "leave": "Hold the torque that the bolt got against the window.",
    "again": "Hold torque and share of yield against the rule once more.",
    "turn-back": "Turning back, friction points the other way: the wrench then tells nothing of the clamp.",
    "renew": "Only a bolt that came near its yield has to be renewed.",
}
ref("found-do", todo, outcome="clamp-from-torque", weight=2,
    lesson="03-threaded-joints#clamp-not-torque",
    slips=[Slip(key, 0, text) for key, text in why.items() if key != todo])

# %% tags=["mark"] task="found" points=5

# %% [markdown] tags=["task"]
# ## 3. The wrong state
#
# A bolt was about to be tightened when somebody looked at its thread. **The last question must be right to pass.** *6 points.*

# %% tags=["rig"]
state = given.state
given_table("The bolt and its thread", ["", ""], [
    ("bolt", f"{state.name}, {state.thread}"),
    ("torque", f"{state.torque_nm:g} N·m"),
    ("stated for", state.state.name),
    ("found", state.found.name),
])

# %% tags=["rig"]
given_table(f"{given.state.name}: factor K", ["thread and head", "K"],
            [(one.name, f"{one.k:.3f}") for one in given.state.factors])

# %% tags=["form"]
sheet.form(
    "state",
    sheet.number("state-clamp", "What clamp would it get with the stated torque, as it was found?", "kN"),
    sheet.choice("state-what", "What does that mean for the joint?", options=[
        ["same", "Nothing: the wrench sets the clamp, whatever the thread is like"],
        ["more", "More clamp than meant: the bolt or its thread may be pulled too far"],
        ["scatter", "The clamp stays as meant on average; only the spread grows"],
        ["less", "Less clamp than meant, although the wrench clicks"],
        ["other-torque", "The wrench clicks at another torque than the one set"],
    ]),
    sheet.choice("state-do", "How do you fit it?", options=[
        ["as-found", "As it was found, at the stated torque"],
        *([one.id, f"First bring thread and head to this state: {one.name}"] for one in given.state.factors),
    ]),
)

# %% tags=["reference"]
state = given.state
stated, seen = state.state.id, state.found.id
size, torque = Q(state.diameter_mm, "mm"), Q(state.torque_nm, "N*m")
meant = joint.clamp_short(torque, state.k, size)
there = next(one.k for one in state.factors if one.id == seen)
clamp = ref("state-clamp", joint.clamp_short(torque, there, size), weight=2, tolerance=0.008,
            outcome="clamp-from-torque", lesson="03-threaded-joints#wet-threads",
            slips=[Slip(meant, 0, "This is the clamp in the state that the torque is stated for; "
                                     "the thread was found in another."),
                   *(Slip(joint.clamp_short(torque, one.k, size), 0, f"You took K for “{one.name}”.")
                     for one in state.factors if one.id not in (stated, seen))])

# %% tags=["reference"]
effect = "more" if clamp > meant else "less"
why = {
    "same": "The wrench sets the torque; friction decides what of it becomes clamp.",
    "more": "Hold your clamp against the one in the stated state.",
    "less": "Hold your clamp against the one in the stated state.",
    "scatter": "Compare the two values of K: the middle moves, not only the spread.",
    "other-torque": "The wrench clicks where it is set; it does not know the friction.",
}
ref("state-what", effect, outcome="thread-state", lesson="03-threaded-joints#wet-threads",
    slips=[Slip(key, 0, text) for key, text in why.items() if key != effect])
ref("state-do", stated, outcome="thread-state", weight=3, must_pass=True,
    lesson="03-threaded-joints#wet-threads",
    slips=[Slip("as-found", 0, "The torque belongs to one state of the thread, not to this one."),
           *(Slip(one.id, 0, "The torque is not stated for this state.")
             for one in state.factors if one.id != stated)])

# %% tags=["mark"] task="state" points=6

# %% [markdown] tags=["task"]
# ## 4. A bolt in aluminium
#
# A bolt was measured against its hole. The workshop's rule: the hole's thread must carry at least 1.5 times the most clamp that the torque can leave.
#
# The last question stands on its own. **It must be right to pass.** *8 points.*

# %% tags=["rig"]
alloy = given.alloy
given_table(f"Bolt and hole{alloy.source}", ["", ""], [
    ("bolt", f"{alloy.name}, {alloy.thread}, pitch {alloy.pitch_mm:g} mm"),
    ("hole", alloy.metal),
    ("thread of bolt and hole that meets", f"{alloy.meets_mm:g} mm"),
    ("good thread in the hole, to its end", f"{alloy.good_mm:g} mm"),
    ("each millimetre of thread that meets carries", f"{alloy.per_mm_kn:g} kN before it strips"),
    ("most clamp that the torque can leave", f"{alloy.most_kn:g} kN"),
])

# %% tags=["form"]
sheet.form(
    "alloy",
    sheet.number("alloy-turns", "How many turns of thread meet?"),
    sheet.number("alloy-load", "At what load does the hole's thread strip?", "kN"),
    sheet.number("alloy-margin", "How many times the most clamp is that?"),
    sheet.choice("alloy-use", "What do you do with this bolt and hole?", options=[
        ["less-torque", "Fit it with less torque"], ["stronger", "Fit a bolt of a higher strength class"],
        ["insert", "Have the hole's thread repaired with an insert first"],
        ["fit", "Fit it as it is"],
        ["compound", "Fit it with locking compound, which fills the thread"],
        ["longer", "Fit a longer bolt that uses all the good thread"],
        ["washers", "Fit it with a second washer under the head"],
    ]),
    sheet.choice("alloy-hand", given.asked.hand_start.story, options=given.asked.hand_start.options),
)

# %% tags=["reference"]
alloy = given.alloy
where = "03-threaded-joints#bolts-in-aluminium"
ref("alloy-turns", alloy.meets_mm / alloy.pitch_mm, outcome="alloy-threads", lesson=where,
    tolerance={"absolute": 0.06},
    slips=[Slip(alloy.good_mm / alloy.pitch_mm, 0.25, "This counts all the good thread; the bolt "
                "does not reach that far.")])
load = ref("alloy-load", Q(alloy.meets_mm * alloy.per_mm_kn, "kN"), outcome="alloy-threads",
           tolerance=0.005, lesson=where,
           slips=[Slip(Q(alloy.good_mm * alloy.per_mm_kn, "kN"), 0.25,
                       "This takes all the good thread; only what meets can carry.")])
margin = ref("alloy-margin", load.m_as("kN") / alloy.most_kn, outcome="alloy-threads",
             tolerance={"absolute": 0.006, "relative": 0.005}, lesson=where,
             slips=[Slip(alloy.most_kn / load.m_as("kN"), 0, "This is upside down.")])

# %% tags=["reference"]
most_thread = alloy.good_mm * alloy.per_mm_kn / alloy.most_kn
use = "fit" if margin >= alloy.safe else "longer" if most_thread >= alloy.safe else "insert"
why = {
    "stronger": "A stronger bolt leaves the hole's thread as weak as it is.",
    "washers": "A washer lifts the bolt, so that even less thread meets.",
    "less-torque": "Less torque leaves less clamp than the joint needs.",
    "compound": "Compound keeps a bolt from turning; it carries no load.",
    "fit": "Hold the margin against the workshop's rule.",
    "longer": "Work out the margin now, and with all the good thread; compare both with the rule.",
    "insert": "A repair is for a hole whose good thread cannot carry enough.",
}
ref("alloy-use", use, outcome="alloy-threads", lesson=where,
    slips=[Slip(key, 0, text) for key, text in why.items() if key != use])

# %% tags=["reference"]
started, slips = settled(bank.questions["hand_start"], asked.hand_start, {
    "stiff": "back-out", "many": "fingers-first", "no-hole": "shift", "chips": "inspect",
}, {
    ("impact-low", "impact-run", "impact-all", "air-ratchet", "impact-catch", "impact-home"):
        "An impact tool neither feels a crossed thread nor stops in time.",
    ("ratchet", "torque-it", "oil-it"): "With a lever you do not feel the thread being cut; fingers do.",
    ("one-by-one", "pull-over"): "Once one bolt is tight the part can no longer shift for the next.",
    ("drill-out", "leave-out"): "That hides the fault; it is still there when the unit runs.",
    ("new-bolt", "locker-fill", "half-torque"): "The hole's thread is the weak one, and it has lost metal.",
})
ref("alloy-hand", started, outcome="alloy-threads", weight=3, must_pass=True,
    lesson="03-threaded-joints#bolts-in-aluminium", slips=slips)

# %% tags=["mark"] task="alloy" points=8

# %% [markdown] tags=["task"]
# ## 5. A blind hole that is not empty
#
# A blind hole was measured with a depth gauge, and what stands in it was drawn off and measured too. The bolt is to go in. **The last question must be right to pass.** *6 points.*

# %% tags=["rig"]
blind = given.blind
given_table(f"The hole and its bolt{blind.source}", ["", ""], [
    ("bolt", f"{blind.name}, {blind.thread}, pitch {blind.pitch_mm:g} mm"),
    ("full depth of the hole", f"{blind.depth_mm:g} mm"),
    ("tip of the bolt stands in it, head down", f"{blind.reach_mm:g} mm deep"),
    ("section of the hole", f"{blind.area_mm2:g} mm²"),
    ("liquid in the hole", f"{blind.oil_ml:g} mL"),
    ("torque", f"{blind.torque_nm:g} N·m"),
])

# %% tags=["form"]
sheet.form(
    "blind",
    sheet.number("blind-room", "How much room is left under the tip when the head is down?", "mL"),
    sheet.number("blind-turns", "How many turns before the head is down does the bolt meet the liquid?"),
    sheet.choice("blind-what", "What happens if it is tightened like this?", options=[
        ["no-click", "The wrench does not click, so you notice at once"],
        ["past-thread", "The liquid gets out past the thread; the joint is as meant"],
        ["locks", "The wrench clicks, the clamp is missing, and the wall may split"],
        ["only-oiled", "The thread is oiled, so the clamp is higher; nothing else"],
        ["cushion", "The liquid gives like a spring and keeps the bolt from loosening"],
    ]),
    sheet.choice("blind-do", given.asked.blind_do.story, options=given.asked.blind_do.options),
)

# %% tags=["reference"]
blind = given.blind
where = "03-threaded-joints#oil-in-a-blind-hole"
section, oil = Q(blind.area_mm2, "mm**2"), Q(blind.oil_ml, "mL")
room = ref("blind-room", (section * Q(blind.depth_mm - blind.reach_mm, "mm")).to("mL"),
           outcome="blind-holes", tolerance={"absolute": Q(0.0051, "mL")},
           lesson=where,
           slips=[Slip((section * Q(blind.depth_mm, "mm")).to("mL"), 0.25,
                       "This is the whole hole; the bolt fills most of it.")])
turn = section * Q(blind.pitch_mm, "mm")
ref("blind-turns", float(((oil - room) / turn).to("")), outcome="blind-holes", lesson=where,
    tolerance={"absolute": 0.011, "relative": 0.006},
    slips=[Slip(float((oil / turn).to("")), 0.25, "This forgets the room under the tip.")])

# %% tags=["reference"]
thread = joint.Thread.named(blind.thread)
hole = joint.BlindHole(blind.depth_mm / 1e3, blind.reach_mm / 1e3, blind.boss_mm / 1e3)
lock = joint.hydraulic_lock(hole, thread, joint.Fastening.of(unit, blind.group).seat, oil,
                            Q(blind.torque_nm, "N*m"), 0.12)
effect = "locks" if lock.locks else "only-oiled"
why = {
    "no-click": "The liquid resists like a seated head, so the wrench does click.",
    "locks": "Work out whether the liquid has room under the tip.",
    "past-thread": "Thick oil and sealant do not get past a thread in the time of a pull.",
    "only-oiled": "Work out whether the liquid has room under the tip.",
    "cushion": "A liquid hardly gives at all; its pressure goes into the wall.",
}
ref("blind-what", effect, outcome="blind-holes", lesson=where,
    slips=[Slip(key, 0, text) for key, text in why.items() if key != effect])

# %% tags=["reference"]
emptied, slips = settled(bank.questions["blind_do"], asked.blind_do, {
    "oil": "swab", "sealant": "clear-hole", "washed": "dry-out",
}, {
    ("blow", "air", "air-jet"): "Compressed air throws what is in the hole into somebody's eyes.",
    ("slow", "squeeze", "evaporate"): "Thick or quick, the liquid has no way out past the thread.",
    ("shorter", "washer"): "That changes the bolt's hold in the thread; the liquid stays.",
    "flame": "A flame and solvent do not go together, and the case is not to be heated.",
    "cure-first": "Cured sealant fills the room just as well.",
    ("more", "torque-down"): "The torque is not the fault here, and another one mends nothing.",
})
ref("blind-do", emptied, outcome="blind-holes", weight=3, must_pass=True,
    lesson="03-threaded-joints#oil-in-a-blind-hole", slips=slips)

# %% tags=["mark"] task="blind" points=6

# %% [markdown] tags=["task"]
# ## 6. Tighten a cover and read it
#
# Tighten the cover below: start all bolts by hand, then pull each once to the full torque **in the order of the table**. Read the clamps. The spread is the largest less the smallest clamp, divided by the clamp aimed at.
#
# Then go on in the same order, round by round, until the spread is what the joint bears. If you lose count, start again. *7 points.*

# %% tags=["rig"]
face = given.face
given_table(face.name, ["order of the pulls", "torque, N·m", "clamp aimed at, kN", "spread that the joint bears"],
            [(", ".join(map(str, face.order)), face.torque_nm, face.target_kn, f"{100 * face.limit:.0f} %")])

# %% tags=["rig"]
face_tightening(unit, given.face.group, torque=Q(given.face.torque_nm, "N*m"),
                joint_share=given.face.joint_share, readings_only=True)

# %% tags=["form"]
sheet.form(
    "face",
    sheet.choice("face-loosest", "Which bolt is loosest after the first round?", options=given.face.bolts),
    sheet.number("face-clamp", "How much clamp does it have then?", "kN"),
    sheet.number("face-spread", "What is the spread after the first round?", "%"),
    sheet.number("face-rounds", "After how many rounds in all is the spread what the joint bears?",
                 whole=True),
    sheet.choice("face-why", given.asked.rounds.story, options=given.asked.rounds.options),
)

# %% tags=["reference"]
face = given.face
fastening = joint.Fastening.of(unit, face.group)
target = fastening.bounds(torque=Q(face.torque_nm, "N*m")).typical
pulls = [bolt - 1 for bolt in face.order]
flange = face_like(fastening, face.joint_share)
first = joint.tighten(flange, [joint.Round.of(pulls, target)]).clamp_n
where = "03-threaded-joints#tightening-a-face"
loosest = f"bolt-{first.argmin() + 1}"
more = {bolt.id: "This one holds more than the loosest: read every bolt once the round is done."
        for bolt in face.bolts}
ref("face-loosest", loosest, outcome="tighten-face", lesson=where, slips=reasons(face.bolts, loosest, more))
least = ref("face-clamp", Q(float(first.min()) / 1e3, "kN"), outcome="tighten-face", lesson=where,
            tolerance={"absolute": Q(0.06, "kN")},
            slips=[Slip(Q(float(first.max()) / 1e3, "kN"), 0, "This is the tightest bolt.")])

# %% tags=["reference"]
gap = Q(float(first.max()) / 1e3, "kN") - least
spread = ref("face-spread", (gap / target).to("percent"), outcome="tighten-face", weight=2, lesson=where,
             tolerance={"absolute": Q(1.5, "percent")},
             slips=[Slip((gap / least).to("percent"), 0.25,
                         "You divided by the loosest clamp; the spread is taken over the one aimed at.")])
needed = joint.rounds_needed(flange, pulls, target, face.limit)
ref("face-rounds", needed, outcome="tighten-face", lesson=where,
    slips=[Slip(needed - 1, 0, "At the end of that round the spread is still larger than allowed."),
           Slip(needed + 1, 0, "That does it, but a round fewer was enough.")])

# %% tags=["reference"]
evened, slips = settled(bank.questions["rounds"], asked.rounds, {
    "cure": "nothing", "why-loose": "neighbours", "over": "at-least", "third": "parallel",
}, {
    ("loosen", "backed-off", "too-much"): "A wrench never loosens; where a bolt has enough it only clicks.",
    ("average", "polish", "friction-changed", "friction-third", "find-bad"):
        "Friction stays what it is for each bolt, however often it is pulled.",
    ("stretched", "unscrewed"): "Look at the bolts that you had pulled before: what changed for them?",
    "pattern-cures": "On this face the order changes little, and friction not at all.",
    ("exact", "seized", "unknown"): "The click tells that the bolt resists the torque; think what it cannot tell.",
    ("save", "halves"): "Think of the far side of the face while the first bolt is pulled.",
})
ref("face-why", evened, outcome="tighten-face", weight=2, lesson="03-threaded-joints#tightening-a-face",
    slips=slips)

# %% tags=["mark"] task="face" points=7

# %% [markdown] tags=["task"]
# ## 7. Go on crosswise
#
# On the face below the filled bolts have been pulled in this round. Crosswise means: always as far round the ring as can be from all that have been pulled. Say which bolt comes next, and what had to be done before any of them was tightened. *5 points.*

# %% tags=["rig"]
face_picture(unit, given.pattern.group, given.pattern.pulled)

# %% tags=["form"]
sheet.form(
    "pattern",
    sheet.choice("pattern-next", "Which bolt comes next, going crosswise?", options=given.pattern.options),
    sheet.choices(
        "pattern-before",
        f"Tick what must be done before this step: {given.pattern.before.step.text}",
        options=given.pattern.before.options,
    ),
)

# %% tags=["reference"]
pattern = given.pattern
count = len(joint.Fastening.of(unit, pattern.group).positions_m)
apart = {key: min((bolt - int(key[5:])) % count if k else (int(key[5:]) - bolt) % count
                  for bolt in pattern.pulled for k in (0, 1)) for key, _ in pattern.options}
farthest = {key for key, steps in apart.items() if steps == max(apart.values())}
ref("pattern-next", farthest, outcome="tighten-face", weight=2,
    lesson="03-threaded-joints#tightening-a-face",
    slips=[Slip(key, 0, "This one stands next to a bolt that has just been pulled." if steps == 1 else
                "Another one lies farther round from all that have been pulled.")
           for key, steps in apart.items() if key not in farthest])

# %% tags=["reference"]
whole = order.OrderTask.from_unit(unit)
mine = whole.before[whole.number[pattern.before.step.id]]
first_steps = {step for step, _ in pattern.before.options if mine >> whole.number[step] & 1}
ref("pattern-before", first_steps, outcome="tighten-face", weight=3,
    lesson="03-threaded-joints#tightening-a-face",
    slips=[Slip(step, 0, f"Not needed before it, but after it: {text}.")
           for step, text in pattern.before.options if step not in first_steps])

# %% tags=["mark"] task="pattern" points=5

# %% [markdown] tags=["task"]
# ## 8. A shaft nut
#
# A shaft nut is to be tightened. **The third question must be right to pass.** *6 points.*

# %% tags=["rig"]
nut = given.nut
given_table(f"The nut and its wrench{nut.source}", ["", ""], [
    ("thread of the nut, as marked", nut.thread),
    ("torque", f"{nut.torque_nm:g} N·m"),
    ("wrench, square drive to mid grip", f"{nut.length_mm:g} mm, no adapter"),
])

# %% tags=["form"]
sheet.form(
    "nut",
    sheet.choice("nut-way", "Seen from the nut: which way do you turn to undo it, and to tighten it?", options=[
        ["both-clockwise", "Undo clockwise, tighten clockwise"],
        ["undo-clockwise", "Undo clockwise, tighten anticlockwise"],
        ["both-anticlockwise", "Undo anticlockwise, tighten anticlockwise"],
        ["undo-anticlockwise", "Undo anticlockwise, tighten clockwise"],
    ]),
    sheet.number("nut-pull", "How hard do you pull at the middle of the grip, at the click?", "N"),
    sheet.choice("nut-lock", given.asked.lock.story, options=given.asked.lock.options),
    sheet.choice("nut-again", given.asked.again.story, options=given.asked.again.options),
)

# %% tags=["reference"]
nut = given.nut
where = "03-threaded-joints#shaft-nuts"
left = joint.Thread.named(nut.thread).left_hand
way, other = ("undo-clockwise", "undo-anticlockwise")[:: 1 if left else -1]
ref("nut-way", way, outcome="shaft-nuts", lesson=where, weight=2,
    slips=[Slip(other, 0, "Look at how the thread is marked: LH stands for a left-hand thread."),
           Slip({"both-clockwise", "both-anticlockwise"}, 0, "Undoing is always the other way round.")])
torque, grip = Q(nut.torque_nm, "N*m"), Q(nut.length_mm, "mm")
ref("nut-pull", (torque / grip).to("N"), outcome="shaft-nuts", lesson=where, tolerance=0.005,
    slips=[Slip(Q((torque * grip).m_as("N*m**2"), "N"), 0, "Force is torque divided by the lever."),
           Slip((2 * torque / grip).to("N"), 0, "The lever is the whole length to the grip.")])

# %% tags=["reference"]
locked, slips = settled(bank.questions["lock"], asked.lock, {
    "how": "two-gears", "turns": "second-gear", "before": "locked-clear",
}, {
    ("bar", "screwdriver", "wedge"): "A tool in the teeth chips them, and flies out when they slip.",
    ("one-gear", "grip-teeth", "helper"): "Hands and rags are drawn into the teeth.",
    ("impact", "jerk", "impact-nut"): "A blow tells nothing about the torque, and the teeth take it.",
    ("vice", "neutral", "staked"): "That does not hold a shaft that can turn, or it spoils its splines.",
})
ref("nut-lock", locked, outcome="shaft-nuts", weight=2, must_pass=True, lesson=where, slips=slips)

# %% tags=["reference"]
renewed, slips = settled(bank.questions["again"], asked.again, {
    "staked-once": "new-nut", "compound-once": "clean-fresh", "washer-once": "new-washer",
}, {
    ("same-slot", "turn-on", "file"): "Metal that was bent once is hard and thin; the next bend cracks it.",
    "compound": "What locks a nut is chosen by the maker; another way is another joint.",
    ("as-is", "on-top", "more-torque", "oil-over"):
        "Cured compound is a hard powder: it does not bond and changes the friction.",
    ("turn-over", "tighter", "paste", "two"): "The washer has taken the shape of one seat and no longer gives.",
})
ref("nut-again", renewed, outcome="shaft-nuts", weight=1, lesson=where, slips=slips)

# %% tags=["mark"] task="nut" points=6

# %% [markdown] tags=["task"]
# ## 9. The stake
#
# A shaft nut has been tightened and staked. The tab gives way by being sheared off or by being crushed, whichever takes less torque. The workshop's rule: the stake holds at least as many times the drag as the table says, and a cracked tab is a spent nut. *5 points.*

# %% tags=["rig"]
stake = given.stake
given_table(f"{stake.name}{stake.source}", ["", ""], [
    ("tab is sheared off at", f"{stake.shear_nm:g} N·m"),
    ("tab is crushed at, for each millimetre of depth", f"{stake.crush_nm_mm:g} N·m"),
    ("depth of the tab in its slot", f"{stake.depth_mm:g} mm"),
    ("drag that tries to turn the nut", f"{stake.drag_nm:g} N·m"),
    ("times the drag that the stake must hold", f"{stake.margin:g}"),
    ("the tab, seen through a glass, is", "cracked at its root" if stake.cracked else "whole"),
])

# %% tags=["form"]
sheet.form(
    "stake",
    sheet.number("stake-times", "How many times the drag does the stake hold?"),
    sheet.choice("stake-do", "What do you do with this nut?", options=given.stake.todo),
    sheet.choices("stake-spent", "Tick every nut that is replaced by a new one.", options=given.stake.causes),
)

# %% tags=["reference"]
stake, where = given.stake, "03-threaded-joints#shaft-nuts"
lock = fit.Stake(stake.shear_nm, stake.crush_nm_mm * stake.depth_mm)
drag, larger = Q(stake.drag_nm, "N*m"), max(lock.shear_nm, lock.crush_nm)
times = ref("stake-times", fit.stake_margin(lock, drag), outcome="shaft-nuts", weight=2.5, lesson=where,
            tolerance={"absolute": 0.02, "relative": 0.01},
            slips=[Slip(larger / stake.drag_nm, 0, "It gives way at the smaller of the two."),
                   Slip((lock.shear_nm + lock.crush_nm) / stake.drag_nm, 0,
                        "The two do not add: the first to give way ends it."),
                   Slip(min(lock.shear_nm, stake.crush_nm_mm) / stake.drag_nm, 0.25,
                        "This leaves out how deep the tab is.")])

# %% tags=["reference"]
todo = "renew" if stake.cracked else "leave" if times >= stake.margin else "deeper"
slips = reasons(stake.todo, todo, {
    "leave": "Look at the tab, and hold your figure against the rule.",
    "deeper": "Is it the depth that is wrong here?",
    "renew": "The tab is whole; one stake does not spend a nut.",
    "tighter": "A stake keeps a nut from walking off; torque is another matter.",
    "other-slot": "Turned on, the nut has more than its torque, and the first tab is torn.",
    "locker": "From outside it never reaches the thread.",
    "flatten": "Metal that was bent twice at one place cracks.",
})
ref("stake-do", todo, outcome="shaft-nuts", weight=1.5, lesson=where, slips=slips)

# %% tags=["reference"]
spent = {"undone", "cracked", "sheared", "turned"}
ref("stake-spent", spent & set(labels(stake.causes)), outcome="shaft-nuts", weight=1, lesson=where,
    slips=reasons(bank.lists["causes"], spent, {
        "shallow": "A whole tab that is not deep enough is punched deeper.",
        ("left", "oiled", "clean", "dull"):
            "A nut is spent when the metal that locks it has been undone, cut or cracked.",
    }, shown=stake.causes))

# %% tags=["mark"] task="stake" points=5

# %% [markdown] tags=["task"]
# ## 10. Find the slips
#
# Somebody wrote down what was done. Most of it is sound. Tick every step that is a slip, and no other: a sound step that is ticked takes marks away. The manual asks for clean threads in the state that the torque is stated for; shaft nuts are oiled. *8 points.*

# %% tags=["rig"]
given_table(given.job.title, ["no.", "what was done"],
            [(n, step.text) for n, step in enumerate(given.job.steps, 1)])

# %% tags=["form"]
sheet.form(
    "job",
    sheet.choices("job-slips", "Which of these steps are slips?", options=given.job.steps),
)

# %% tags=["reference"]
SLIPS = {
    "case": {"lengths", "holes-oiled", "next-day"},
    "cover": {"corner", "impact-finish", "adapter-same"},
    "nuts": {"dry-nut", "pipe", "beyond"},
    "plugs": {"lbf-in", "both-oil-locker", "wrong-low"},
}

# %% tags=["reference"]
sound = {
    "dowels": "Dowels first, then straight down: the case finds its place before a bolt pulls on it.",
    ("fingers", "by-hand"): "Started by hand, a crossed thread is felt before it is cut.",
    ("middle", "cross", "rounds"): "Crosswise and in rounds is sound: the parts come together evenly.",
    "last-round": "One more round at full torque gives back what bolts took from each other.",
    "faces": "Clean, dry faces and threads are what the seal and the torque count on.",
    "speed-handle": "A speed handle still lets you feel the thread; it is no impact tool.",
    "extension": "A straight extension turns with the wrench; it is no lever.",
    "wrench-back": "Slackening the wrench's spring after work keeps it true.",
    "two-gears": "Two gears of different ratio lock both shafts with no tool in the teeth.",
}

# %% tags=["reference"]
sound |= {
    "hand-way": "Looking before pulling is what left-hand threads ask for.",
    "new-nuts": "A staked nut is used once; a new one is right.",
    "goggles": "A punch can throw a chip; eye protection is right.",
    "pull-steady": "A steady pull that stops at the click is how the wrench is true.",
    "range": "A wrench is exact from a fifth of its scale upwards.",
    "washers": "A soft washer takes the shape of one seat, so a new one is right.",
    "old-compound": "Old compound must come off before fresh compound can hold.",
    "fresh": "Compound on the threads that the card names, and nowhere else, is right.",
}
slipped, slips = settled(bank.questions["job"], given.job, SLIPS, sound)
ref("job-slips", slipped, outcome="joint-slips", lesson="03-threaded-joints#before-you-start", slips=slips)

# %% tags=["mark"] task="job" points=8

# %% [markdown]
# ## Done?
#
# Go back to **start-here** and press **Hand in**. You get a receipt. You can hand in again until the due date; the last one counts.
