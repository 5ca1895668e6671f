# %% [markdown]
# # Threaded joints: exercise
#
# <div class="twoshaft-if-missing">If no forms appear below: press <b>Run</b>, then <b>Run All Cells</b>.</div>
#
# Ten tasks about torque, clamp and threads. Take about an hour, with a calculator. Every answer is saved as you give it; you can stop and come back.
#
# Write numbers with their unit, as in the workshop: 18.5 kN, 13 lbf·ft, 85 %. The factor K of a bolt (its nut factor) stands in the tables: torque = K × clamp × thread diameter.
#
# *Invented unit, for teaching. On a real unit the maker's manual, local codes and licensed practice decide.*

# %% tags=["setup"]
from twoshaft.jobsheet import open_sheet
from twoshaft.models import joint
from twoshaft.plots.tables import given_table
from twoshaft.rigs import face_tightening
from twoshaft.units.quantities import Q

sheet = open_sheet("threaded-joints")
given, unit = sheet.given, sheet.unit

# %% tags=["reference"]
from twoshaft.models import fit, joint, order
from twoshaft.questions import bank_of
from twoshaft.readings.threaded_joints import face_like
from twoshaft.units.quantities import Q
from twoshaft_grader.marking import Slip, line_reasons, missed, reasons, ref

asked, bank = given.asked, bank_of("threaded-joints")

# %% [markdown] tags=["task"]
# ## 1. From an old card to the clamp
#
# An old job card gives a torque, and the bolt can only be reached with an adapter.
#
# Convert the torque to N·m and choose the wrench. Then work out what to set on it, and the clamp that the bolt should get.
#
# The setting counts if you give the figure that you work out, or the mark of the wrench's scale that is nearest to it. *6 points.*

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
    "card-torque", Q(card.figure, pints[card.unit]).to("N*m"), outcome="torque-tools", shows="other-unit",
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
unfit["any"] = "A torque is a torque, but each scale has a range in which it can be trusted; outside it, the bolt gets another torque."
unfit["none"] = "Compare the torque with each scale, from a fifth of its top upwards."
chosen = ref("card-wrench", min(set(tools) - set(unfit), default=""), outcome="torque-tools", shows="wrench",
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
setting = ref("card-setting", joint.setting_with_adapter(torque, length, reach, angle), weight=2, steps=1 + bool(angle),
              outcome="torque-tools", shows="adapter", lesson="03-threaded-joints#adapters", slips=slips,
              tolerance={"absolute": Q(0.5 * tools[chosen].step_nm, "N*m"), "relative": 0.004})

# %% tags=["reference"]
size = Q(card.diameter_mm, "mm")
slips = [Slip(joint.clamp_short(torque, one.k, size), 0,
              f"You took K for “{one.name}”; the card names another state.")
         for one in card.factors if one.id != card.state.id]
slips += [Slip(joint.clamp_short(setting, card.k, size), 0,
               "You went on with the setting; the bolt gets the torque.")]
ref("card-clamp", joint.clamp_short(torque, card.k, size), outcome="clamp-from-torque", shows="clamp-and-yield",
    weight=2, tolerance=0.008, slips=slips, lesson="03-threaded-joints#clamp-not-torque")

# %% tags=["mark"] task="card" points=6

# %% [markdown] tags=["task"]
# ## 2. A setting that was found
#
# Somebody has tightened a bolt and left the wrench with its adapter as the table shows. Find out what the bolt got and decide what is to be done.
#
# The workshop's rule: a bolt inside the window stays. Outside the window it is slackened fully and tightened again. At 90 % of the clamp at which it yields, or more, it is renewed. *5 points.*

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
    "found-torque", joint.torque_at_bolt(shown, length, reach, angle), outcome="torque-tools", shows="found-setting",
    tolerance=0.005, steps=1 + bool(angle), lesson="03-threaded-joints#adapters",
    slips=[Slip(shown, 0, "This is what the wrench was set to; the adapter adds to it."),
           Slip(joint.setting_with_adapter(shown, length, reach, angle), 0,
                "You divided; the longer lever gives the bolt more than the wrench shows.")],
)

# %% tags=["reference"]
clamp = ref("found-clamp", joint.clamp_short(torque, found.k, Q(found.diameter_mm, "mm")),
            outcome="clamp-from-torque", shows="clamp-and-yield", tolerance=0.008,
            lesson="03-threaded-joints#clamp-not-torque")
use = ref("found-use", (clamp / Q(found.yields_kn, "kN")).to("percent"),
          outcome="clamp-from-torque", shows="clamp-and-yield", tolerance={"absolute": Q(0.6, "percent")},
          lesson="03-threaded-joints#clamp-not-torque",
          slips=[Slip((Q(found.yields_kn, "kN") / clamp).to("percent"), 0,
                      "You divided the clamp at which it yields by the clamp that it has; the question asks the other way round.")])

# %% tags=["reference"]
low, high = found.window_nm
inside = low <= torque.m_as("N*m") <= high
todo = "renew" if use.m_as("percent") >= 90 else "leave" if inside else "again"
why = {
    "compound": "Compound keeps it from turning, and that feels safe; it does not put the clamp right, and the joint works loose or the bolt breaks.",
    "later": "Things seem to settle, but driving does not put the clamp right: the bolt gets looser, or breaks.",
    "by-feel": "By feel a hand is off by a third; that is why the wrench exists.",
    "leave": "It clicked, which sounds right. Compare the torque that the bolt got with the window: left like this, the bolt is too loose or overstretched.",
    "again": "To tighten once more never seems wrong. But by the rule a bolt in its window stays, and one near its yield is renewed: pulled again, it stretches.",
    "turn-back": "When you turn a bolt back, friction acts the other way: then the wrench shows nothing of the clamp.",
    "renew": "A new bolt seems safer, but this one stayed clear of its yield: you would throw it away for nothing.",
}
ref("found-do", todo, outcome="clamp-from-torque", shows="what-to-do", weight=1.6,
    lesson="03-threaded-joints#clamp-not-torque",
    slips=[Slip(key, 0, text) for key, text in why.items() if key != todo])

# %% tags=["mark"] task="found" points=5

# %% [markdown] tags=["task"]
# ## 3. The wrong state
#
# A bolt was about to be tightened when somebody looked at its thread.
#
# Then come other threads as they were found, each with the state that its torque is stated for. **The last question must be right to pass, in every line.** *8 points.*

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
        ["same", "Nothing changes: the wrench sets the clamp"],
        ["more", "More clamp: bolt or thread may be overloaded"],
        ["scatter", "The same clamp on average, with more spread"],
        ["less", "Less clamp than is meant, although it clicks"],
        ["other-torque", "The wrench clicks at another torque than set"],
    ]),
    sheet.each("state-do", "What do you do with each of these threads?",
               lines=[(one.id, one.text) for one in given.asked.threads], options=given.asked.threads_answers),
)

# %% tags=["reference"]
state = given.state
stated, seen = state.state.id, state.found.id
size, torque = Q(state.diameter_mm, "mm"), Q(state.torque_nm, "N*m")
meant = joint.clamp_short(torque, state.k, size)
there = next(one.k for one in state.factors if one.id == seen)
clamp = ref("state-clamp", joint.clamp_short(torque, there, size), weight=2, tolerance=0.008,
            outcome="clamp-from-torque", shows="clamp-and-yield", lesson="03-threaded-joints#wet-threads",
            slips=[Slip(meant, 0, "This is the clamp in the state that the torque is stated for; "
                                     "the thread was found in another."),
                   *(Slip(joint.clamp_short(torque, one.k, size), 0, f"You took K for “{one.name}”.")
                     for one in state.factors if one.id not in (stated, seen))])

# %% tags=["reference"]
effect = "more" if clamp > meant else "less"
why = {
    "same": "The wrench sets the torque; friction decides what of it becomes clamp.",
    "more": "Compare your clamp with the one in the stated state.",
    "less": "Compare your clamp with the one in the stated state.",
    "scatter": "Compare the two values of K: the middle moves, not only the spread.",
    "other-torque": "The wrench clicks where it is set; it does not know the friction.",
}
ref("state-what", effect, outcome="thread-state", shows="friction", weight=0.7, lesson="03-threaded-joints#wet-threads",
    slips=[Slip(key, 0, text) for key, text in why.items() if key != effect])

# %% tags=["reference"]
FOUND = {"film-new": "as-delivered", "film-kept": "as-delivered", "washed": "dry", "oil-dipped": "oiled",
         "oil-box": "oiled", "compound-wet": "locker", "compound-old": "old", "sealant": "sealant"}
FIX = {"as-delivered": "film", "oiled": "oil", "locker": "locker"}
asked_for = {one.id: one.stated for one in asked.threads}
prepared = {id: "as-is" if FOUND[id] == asked_for.get(id, "oiled") else FIX[asked_for.get(id, "oiled")]
            for id in FOUND}

# %% tags=["reference"]
SEEN = {"as-delivered": "the dry film of its box is on it", "dry": "no film and no oil is left on it",
        "oiled": "oil is on it", "locker": "fresh compound is on it",
        "old": "cured compound is in it", "sealant": "sealant is in it"}
told = {
    id: "It is in the state that its torque is stated for; what you change now changes the clamp."
    if prepared[id] == "as-is" else
    f"Here {SEEN[state]}, and its torque is for a thread in another state: the wrench clicks, but with another clamp."
    for id, state in FOUND.items()
}

# %% tags=["reference"]
ref("state-do", {id: prepared[id] for id in asked_for}, outcome="thread-state", weight=4, must_pass=True,
    lesson="03-threaded-joints#wet-threads", shows="prepared",
    slips=line_reasons(bank.lists["threads"], asked.threads_answers, prepared, told,
                       shown=[(one.id, one.text) for one in asked.threads]))

# %% tags=["mark"] task="state" points=8

# %% [markdown] tags=["task"]
# ## 4. A bolt in aluminium
#
# A bolt was measured against its hole. The workshop's rule: the hole's thread must carry at least 1.5 times the most clamp that the torque can leave.
#
# The last question is about other bolts. **It must be right to pass, in every line.** *8 points.*

# %% tags=["rig"]
alloy = given.alloy
given_table(f"Bolt and hole{alloy.source}", ["", ""], [
    ("bolt", f"{alloy.name}, {alloy.thread}, pitch {alloy.pitch_mm:g} mm"),
    ("hole", alloy.metal),
    ("length on which the two threads meet", f"{alloy.meets_mm:g} mm"),
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
        ["less-torque", "Fit it with a quarter less torque"], ["stronger", "Fit a bolt of a higher strength class"],
        ["insert", "Have the hole's thread repaired with an insert first"],
        ["fit", "Fit it as it is, at the stated torque"], ["compound", "Fit it with locking compound, which fills the thread"],
        ["longer", "Fit a longer bolt that uses all the good thread"],
        ["washers", "Fit it with a second washer under the head"],
    ]),
    sheet.each("alloy-hand", "Other bolts in aluminium: what do you do next?",
               lines=given.asked.hand_start.lines, options=given.asked.hand_start.answers),
)

# %% tags=["reference"]
alloy = given.alloy
where = "03-threaded-joints#bolts-in-aluminium"
ref("alloy-turns", alloy.meets_mm / alloy.pitch_mm, outcome="alloy-threads", shows="thread-depth", lesson=where,
    tolerance={"absolute": 0.06},
    slips=[Slip(alloy.good_mm / alloy.pitch_mm, 0.25, "This counts all the good thread; the bolt "
                "does not reach that far.")])
load = ref("alloy-load", Q(alloy.meets_mm * alloy.per_mm_kn, "kN"), outcome="alloy-threads", shows="thread-depth",
           tolerance=0.005, lesson=where,
           slips=[Slip(Q(alloy.good_mm * alloy.per_mm_kn, "kN"), 0.25,
                       "This takes all the good thread; only what meets can carry.")])
margin = ref("alloy-margin", load.m_as("kN") / alloy.most_kn, outcome="alloy-threads", shows="thread-depth",
             tolerance={"absolute": 0.006, "relative": 0.005}, lesson=where,
             slips=[Slip(alloy.most_kn / load.m_as("kN"), 0, "This is upside down: divide what the hole carries by the clamp.")])

# %% tags=["reference"]
most_thread = alloy.good_mm * alloy.per_mm_kn / alloy.most_kn
use = "fit" if margin >= alloy.safe else "longer" if most_thread >= alloy.safe else "insert"
why = {
    "stronger": "A stronger bolt leaves the hole's thread as weak as it is.",
    "washers": "A washer lifts the bolt, so that even less thread meets.",
    "less-torque": "Less torque leaves less clamp than the joint needs.",
    "compound": "Compound keeps a bolt from turning; it carries no load.",
    "fit": "Compare the margin with the workshop's rule.",
    "longer": "Work out the margin now, and with all the good thread; compare both with the rule.",
    "insert": "A repair is for a hole whose good thread cannot carry enough.",
}
ref("alloy-use", use, outcome="alloy-threads", shows="repair", lesson=where,
    slips=[Slip(key, 0, text) for key, text in why.items() if key != use])

# %% tags=["reference"]
STARTED = {"light": "on", "heads": "on", "brace": "on", "stiff": "back", "leans": "back", "impact": "back",
           "beside": "shift", "pulled": "shift", "dowel": "shift",
           "bright": "repair", "slips-by": "repair", "no-rise": "repair"}
FREE = "It turns lightly by hand, so the thread has caught as it should; nothing has to come out."
CROSSED = "It binds after a turn or two: the thread is crossed or dirty, and each further turn cuts it."
BESIDE = "The hole is out of line; a bolt that is forced in there bends and cuts the thread."
TORN = "The thread in the aluminium is torn: it gives way before the clamp is there."
why = {id: {"on": FREE, "back": CROSSED, "shift": BESIDE, "repair": TORN}[do] for id, do in STARTED.items()}

# %% tags=["reference"]
ref("alloy-hand", {one.id: STARTED[one.id] for one in asked.hand_start.lines}, outcome="alloy-threads",
    weight=4, must_pass=True, lesson="03-threaded-joints#start-bolts-by-hand", shows=("by-hand", "thread-depth"),
    slips=line_reasons(bank.lists["hand_start"], asked.hand_start.answers, STARTED, why,
                       shown=asked.hand_start.lines))

# %% tags=["mark"] task="alloy" points=8

# %% [markdown] tags=["task"]
# ## 5. A blind hole that is not empty
#
# A blind hole was measured with a depth gauge, and what stands in it was drawn off and measured too. The bolt is to go in.
#
# The last two questions are about other holes. **The last one must be right to pass, in every line.** *7 points.*

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
    sheet.each("blind-what", "Other holes: what happens when the bolt is tightened?",
               lines=[(one.id, one.text) for one in given.asked.holes], options=given.asked.holes_answers),
    sheet.each("blind-do", "What do you do before the bolt goes in?",
               lines=given.asked.blind_do.lines, options=given.asked.blind_do.answers),
)

# %% tags=["reference"]
blind = given.blind
where = "03-threaded-joints#oil-in-a-blind-hole"
section, oil = Q(blind.area_mm2, "mm**2"), Q(blind.oil_ml, "mL")
room = ref("blind-room", (section * Q(blind.depth_mm - blind.reach_mm, "mm")).to("mL"),
           outcome="blind-holes", shows="oil-in-hole", tolerance={"absolute": Q(0.0051, "mL")},
           lesson=where,
           slips=[Slip((section * Q(blind.depth_mm, "mm")).to("mL"), 0.25,
                       "This is the whole hole; the bolt fills most of it.")])
turn = section * Q(blind.pitch_mm, "mm")
ref("blind-turns", float(((oil - room) / turn).to("")), outcome="blind-holes", shows="oil-in-hole", lesson=where,
    tolerance={"absolute": 0.011, "relative": 0.006},
    slips=[Slip(float((oil / turn).to("")), 0.25, "This forgets the room under the tip.")])

# %% tags=["reference"]
stopped = {one.id: "bottoms" if one.reach_mm >= one.depth_mm else
           "locks" if one.liquid_mm > one.depth_mm - one.reach_mm else "seats" for one in asked.holes}
why = {"bottoms": "The tip reaches deeper than the hole is: it stands on the metal before the head is down.",
       "locks": "The liquid stands higher than the room under the tip; it cannot get out past the thread.",
       "seats": "All the liquid fits into the room under the tip, so nothing stops the bolt before its head."}
ref("blind-what", stopped, outcome="blind-holes", lesson=where, shows="oil-in-hole",
    slips=line_reasons([(id, "") for id in stopped], asked.holes_answers, stopped,
                       {id: why[end] for id, end in stopped.items()}))

# %% tags=["reference"]
EMPTIED = {"swabbed": "fit", "lamp": "fit", "rod-dry": "fit", "rod-wet": "swab", "solvent": "swab",
           "dark-oil": "swab", "cured": "scrape", "crumbs": "scrape", "chips": "scrape",
           "nozzle": "no-air", "rag": "no-air", "glasses": "no-air"}
why = {"fit": "It was looked at down to the bottom, and is dry and empty there.",
       "swab": "Liquid is left at the bottom: it stops the bolt, or splits the wall, while the wrench clicks.",
       "scrape": "What is stiff or cured does not come up on a swab, and it fills the room just as oil does.",
       "no-air": "Air throws what is in the hole into somebody's eyes, past rag and eye protection too."}
ref("blind-do", {one.id: EMPTIED[one.id] for one in asked.blind_do.lines}, outcome="blind-holes", weight=3,
    must_pass=True, lesson="03-threaded-joints#oil-in-a-blind-hole", shows="dried",
    slips=line_reasons(bank.lists["blind_do"], asked.blind_do.answers, EMPTIED,
                       {id: why[do] for id, do in EMPTIED.items()}, shown=asked.blind_do.lines))

# %% tags=["mark"] task="blind" points=7

# %% [markdown] tags=["task"]
# ## 6. Tighten a cover and read it
#
# Tighten the cover below: start all bolts by hand, then pull each once to the full torque **in the order of the table**. Read the clamps.
#
# The spread is the largest less the smallest clamp, divided by the clamp aimed at.
#
# Then go on in the same order, round by round, until the spread is no more than the joint allows. If you lose count, start again.
#
# The picture shows the same cover on another bench, turned, with letters of your own. Filled bolts have been pulled once. *7 points.*

# %% tags=["rig"]
face = given.face
given_table(face.name, ["order of the pulls", "torque, N·m", "clamp aimed at, kN", "spread allowed"],
            [(", ".join(map(str, face.order)), face.torque_nm, face.target_kn, f"{100 * face.limit:.0f} %")])

# %% tags=["rig"]
face_tightening(unit, given.face.group, torque=Q(given.face.torque_nm, "N*m"),
                joint_share=given.face.joint_share, readings_only=True)

# %% tags=["form"]
from twoshaft.plots.bolts_pointed import BoltsPicture

sheet.form(
    "face",
    sheet.choice("face-loosest", "Which bolt is loosest after the first round?", options=given.face.bolts),
    sheet.number("face-clamp", "How much clamp does it have then?", "kN"),
    sheet.number("face-spread", "What is the spread after the first round?", "%"),
    sheet.number("face-rounds", "After how many rounds in all is the spread no more than the joint allows?",
                 whole=True),
    sheet.each("face-why", "Other faces: what corrects what was found?",
               lines=given.asked.rounds.lines, options=given.asked.rounds.answers),
    *([sheet.point("face-lost", "Pulled once, in this order: " + ", ".join(map(given.face.seen.letter, given.face.seen.pulled)),
                   lines=[["most", "The bolt that has lost most clamp so far"]], picture=BoltsPicture(unit, given.face.seen))] if given.face.seen else []),
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
ref("face-loosest", loosest, outcome="tighten-face", shows="rounds", weight=0.5, lesson=where, slips=reasons(face.bolts, loosest, more))
least = ref("face-clamp", Q(float(first.min()) / 1e3, "kN"), outcome="tighten-face", shows="rounds", lesson=where,
            tolerance={"absolute": Q(0.06, "kN")},
            slips=[Slip(Q(float(first.max()) / 1e3, "kN"), 0, "This is the tightest bolt.")])

# %% tags=["reference"]
gap = Q(float(first.max()) / 1e3, "kN") - least
spread = ref("face-spread", (gap / target).to("percent"), outcome="tighten-face", shows="rounds", weight=2, lesson=where,
             tolerance={"absolute": Q(1.5, "percent")},
             slips=[Slip((gap / least).to("percent"), 0.25,
                         "You divided by the loosest clamp; divide by the clamp aimed at.")])
needed = joint.rounds_needed(flange, pulls, target, face.limit)
ref("face-rounds", needed, outcome="tighten-face", shows="rounds", lesson=where,
    slips=[Slip(needed - 1, 0, "At the end of that round the spread is still larger than allowed."),
           Slip(needed + 1, 0, "That does it, but a round fewer was enough.")])

# %% tags=["reference"]
EVENED = {"neighbours": "round", "moves-on": "round", "first-last": "round", "sealant-out": "round",
          "dry-one": "thread", "burr": "thread", "oily-one": "thread", "gritty": "thread",
          "adapter": "setting", "other-scale": "setting", "off-check": "setting", "other-card": "setting"}
why = {"round": "The bolts lost clamp to each other or to the sealant; friction and setting are as they should be.",
       "thread": "One bolt has another friction than the rest, and keeps it however often it is pulled.",
       "setting": "All bolts got the same wrong torque; a click at that setting shows nothing of it."}
ref("face-why", {one.id: EVENED[one.id] for one in asked.rounds.lines}, outcome="tighten-face", weight=2,
    lesson="03-threaded-joints#tightening-a-face", shows="what-rounds-mend",
    slips=line_reasons(bank.lists["rounds"], asked.rounds.answers, EVENED,
                       {id: why[cure] for id, cure in EVENED.items()}, shown=asked.rounds.lines))

# %% tags=["reference"]
if face.seen:
    so_far = joint.tighten(flange, [joint.Round.of([bolt - 1 for bolt in face.seen.pulled], target)]).clamp_n
    most = {"most": face.seen.letter(min(face.seen.pulled, key=lambda bolt: so_far[bolt - 1]))}
    tight = {face.seen.letter(bolt) for bolt in face.seen.pulled}
    ref("face-lost", most, outcome="tighten-face", shows="rounds", lesson=where, slips=line_reasons(
        [("most", "")], [(spot.id, "") for spot in face.seen.spots], most, {"most": {
            spot.id: "A bolt that is pulled takes clamp from its neighbours: look for one with a neighbour that was pulled after it."
            if spot.id in tight else "This one has not been pulled yet: it has no clamp to lose." for spot in face.seen.spots if spot.id != most["most"]}}))

# %% tags=["mark"] task="face" points=7

# %% [markdown] tags=["task"]
# ## 7. Go on crosswise
#
# In the picture the filled bolts have been pulled in this round. Crosswise means: next comes the bolt farthest round the ring from all that were pulled.
#
# Point at the bolt that comes next, and say what had to be done before any of them was tightened. *3 points.*

# %% tags=["form"]
from twoshaft.plots.bolts_pointed import BoltsPicture

sheet.form(
    "pattern",
    sheet.point("pattern-next", given.pattern.name, lines=[["next", "The bolt that comes next, going crosswise"]],
                picture=BoltsPicture(unit, given.pattern.seen)),
    sheet.choices(
        "pattern-before",
        f"Tick what must be done before this step: {given.pattern.before.step.text}",
        options=given.pattern.before.options,
    ),
)

# %% tags=["reference"]
pattern, seen = given.pattern, given.pattern.seen
apart = {seen.letter(k): min((k - bolt) % len(seen.spots) if side else (bolt - k) % len(seen.spots)
                             for bolt in seen.pulled for side in (0, 1)) for k in range(1, len(seen.spots) + 1)}
farthest = {letter for letter, steps in apart.items() if steps == max(apart.values())}
why = {letter: "This one has been pulled in this round already." if steps == 0 else
       "This one stands next to a bolt that has just been pulled." if steps == 1 else
       "Another one lies farther round from all that have been pulled." for letter, steps in apart.items() if letter not in farthest}
ref("pattern-next", {"next": farthest}, outcome="tighten-face", shows="rounds", weight=2, lesson="03-threaded-joints#tightening-a-face",
    slips=line_reasons([("next", "")], [(letter, "") for letter in apart], {"next": farthest}, {"next": why}))

# %% tags=["reference"]
whole = order.OrderTask.from_unit(unit)
mine = whole.before[whole.number[pattern.before.step.id]]
first_steps = {step for step, _ in pattern.before.options if mine >> whole.number[step] & 1}
ref("pattern-before", first_steps, outcome="tighten-face", weight=2, shows="in-place",
    lesson="03-threaded-joints#tightening-a-face",
    slips=[Slip(step, 0, f"Not needed before it, but after it: {text}.")
           for step, text in pattern.before.options if step not in first_steps]
    + missed(pattern.before.options, first_steps, "Needed before it: {name}. Done after it, it has to come apart again or cannot be done."))

# %% tags=["mark"] task="pattern" points=3

# %% [markdown] tags=["task"]
# ## 8. A shaft nut
#
# A shaft nut is to be tightened; other nuts and benches follow. **The first, third and fourth question must be right to pass, in every line.** *11 points.*

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
    sheet.each("nut-way", "Which way does the wrench go round, as you see it?",
               lines=[("own", "the nut of the table: tighten, seen from the nut"),
                      *((one.id, one.text) for one in given.asked.turns)],
               options=given.asked.turns_answers),
    sheet.number("nut-pull", "How hard do you pull at the middle of the grip, at the click?", "N"),
    sheet.each("nut-lock", "Other benches: what do you do next?",
               lines=given.asked.lock.lines, options=given.asked.lock.answers),
    sheet.each("nut-again", "What do you do with each of these parts?",
               lines=given.asked.again.lines, options=given.asked.again.answers),
)

# %% tags=["reference"]
nut = given.nut
where = "03-threaded-joints#shaft-nuts"
left = {one.id: joint.Thread.named(one.thread).left_hand for one in asked.turns}
left |= {"own": joint.Thread.named(nut.thread).left_hand}
against = {one.id: one.undo ^ one.from_behind for one in asked.turns} | {"own": False}
way = {id: "anticlockwise" if left[id] ^ against[id] else "clockwise" for id in left}
told = {id: "LH stands for a left-hand thread, which tightens anticlockwise, seen from the nut." if hand else
        "Nothing is marked, so the thread is right-hand: it tightens clockwise, seen from the nut."
        for id, hand in left.items()}
TURNED = " To undo it turns that round, and so does looking from the far end; pulled the wrong way, the thread breaks."

# %% tags=["reference"]
ref("nut-way", way, outcome="shaft-nuts", lesson=where, weight=3, must_pass=True, shows="hand-of-thread",
    slips=line_reasons([(id, "") for id in way], asked.turns_answers, way,
                       {id: text + TURNED for id, text in told.items()}))
torque, grip = Q(nut.torque_nm, "N*m"), Q(nut.length_mm, "mm")
ref("nut-pull", (torque / grip).to("N"), outcome="shaft-nuts", shows="hand-of-thread", lesson=where, tolerance=0.005,
    slips=[Slip(Q((torque * grip).m_as("N*m**2"), "N"), 0, "Force is torque divided by the lever."),
           Slip((2 * torque / grip).to("N"), 0, "The lever is the whole length to the grip.")])

# %% tags=["reference"]
LOCKED = {"both": "pull", "checked": "pull", "clicked-once": "pull",
          "one-gear": "gears", "neutral": "gears", "jumped": "gears",
          "bar": "clear", "hand": "clear", "rag": "clear", "blocks": "down", "knee": "down", "stand": "down"}
why = {"pull": "Two ratios hold both shafts, the gears are clear and the case is held: nothing is left to do.",
       "gears": "Fewer than two gears are engaged, so the shafts turn with the wrench, and a hand with them.",
       "clear": "What lies in the gears is drawn in or flies out as soon as somebody pulls.",
       "down": "The shafts are held, the case is not: it tips off the bench at the pull."}
ref("nut-lock", {one.id: LOCKED[one.id] for one in asked.lock.lines}, outcome="shaft-nuts", weight=3,
    must_pass=True, lesson=where, shows="locked",
    slips=line_reasons(bank.lists["lock"], asked.lock.answers, LOCKED,
                       {id: why[do] for id, do in LOCKED.items()}, shown=asked.lock.lines))

# %% tags=["reference"]
RENEWED = {"run-down": "again", "other-hand": "again", "dull": "again", "plain": "again",
           "staked": "new", "cracked": "new", "turned": "new", "washer": "new",
           "compound-bolt": "fresh", "compound-hole": "fresh", "compound-plug": "fresh", "compound-dust": "fresh"}
why = {"again": "Nothing that locks or seals was used up here; the part does its work as well as a new one.",
       "new": "What locks or seals here has been bent or pressed once; it cracks or leaks the second time.",
       "fresh": "Cured or dirty compound no longer bonds and changes the friction; the part itself is whole."}
ref("nut-again", {one.id: RENEWED[one.id] for one in asked.again.lines}, outcome="shaft-nuts", weight=3,
    must_pass=True, lesson=where, shows="lock-renewed",
    slips=line_reasons(bank.lists["again"], asked.again.answers, RENEWED,
                       {id: why[do] for id, do in RENEWED.items()}, shown=asked.again.lines))

# %% tags=["mark"] task="nut" points=11

# %% [markdown] tags=["task"]
# ## 9. The stake
#
# A shaft nut has been tightened and staked. The tab gives way by being sheared off or by being crushed, whichever takes less torque.
#
# The workshop's rule: the stake must hold at least as many times the drag as the table says. A nut with a cracked tab is renewed. *3 points.*

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
)

# %% tags=["reference"]
stake, where = given.stake, "03-threaded-joints#lock-the-nut"
lock = fit.Stake(stake.shear_nm, stake.crush_nm_mm * stake.depth_mm)
drag, larger = Q(stake.drag_nm, "N*m"), max(lock.shear_nm, lock.crush_nm)
times = ref("stake-times", fit.stake_margin(lock, drag), outcome="shaft-nuts", shows="stake", weight=1.4, lesson=where,
            tolerance={"absolute": 0.02, "relative": 0.01},
            slips=[Slip(larger / stake.drag_nm, 0, "It gives way at the smaller of the two."),
                   Slip((lock.shear_nm + lock.crush_nm) / stake.drag_nm, 0,
                        "The two do not add: the first to give way ends it."),
                   Slip(min(lock.shear_nm, stake.crush_nm_mm) / stake.drag_nm, 0.25,
                        "This leaves out how deep the tab is.")])

# %% tags=["reference"]
todo = "renew" if stake.cracked else "leave" if times >= stake.margin else "deeper"
slips = reasons(stake.todo, todo, {
    "leave": "Look at the tab, and compare your figure with the rule.",
    "deeper": "Is it the depth that is wrong here?",
    "renew": "The tab is whole; a nut that was staked once and not undone need not be renewed.",
    "tighter": "A stake keeps a nut from turning loose; it does not replace the torque.",
    "other-slot": "Turned on, the nut has more than its torque, and the first tab is torn.",
    "locker": "From outside it never reaches the thread.",
    "flatten": "Metal that was bent twice at one place cracks.",
})
ref("stake-do", todo, outcome="shaft-nuts", shows="stake", weight=1.6, lesson=where, slips=slips)

# %% tags=["mark"] task="stake" points=3

# %% [markdown] tags=["task"]
# ## 10. Steps of finished jobs
#
# These steps stand in reports of finished jobs. Say of each whether it was done as it should be.
#
# The manual asks for clean threads in the state that the torque is stated for; shaft nuts are oiled. *6 points.*

# %% tags=["form"]
sheet.form(
    "steps",
    sheet.each("steps-judged", "Was each step done as it should be?",
               lines=given.asked.steps.lines, options=given.asked.steps.answers),
)

# %% tags=["reference"]
MISTAKES = {
    "lever-left": "With the adapter straight on, the lever is longer: the bolt gets more than the scale shows.",
    "pipe": "A pipe moves the hand off mid grip: the wrench no longer clicks at its setting, and may break.",
    "scale-low": "Below a fifth of its scale a wrench promises no tolerance, and the click is easily pulled over.",
    "corner": "One bolt at full torque tips the cover: it bends, and squeezes the sealant out on one side.",
    "cured": "Pulled after it has cured, the sealant tears, and the joint leaks.",
    "beyond": "Past the click the torque still rises, and nobody knows how far; the bolt may yield.",
    "any-hole": "A long bolt stands on the bottom of a short hole: the wrench clicks, and the clamp is missing.",
    "holes-oiled": "Oil in a blind hole stops the bolt or splits the wall, although the wrench clicks.",
    "impact": "An impact driver does not stop at the torque: it strips the aluminium or stretches the bolt.",
    "nut-washed": "A dry thread takes more of the torque for friction, so the nut clamps less than it should.",
    "compound-oil": "On oil the compound does not bond, and the bolt works loose.",
    "unit-left": "One lbf·ft is 1.36 N·m: with the same figure set in N·m, the bolt gets a quarter too little.",
}

# %% tags=["reference"]
SOUND = {
    "lever-counted": "The adapter makes the lever longer, so less on the scale gives the same at the bolt.",
    "extension": "A straight extension turns with the wrench and makes no lever longer.",
    "scale-fits": "From a fifth of its scale upwards the wrench can be trusted, and this is a third.",
    "by-rounds": "Crosswise and in rounds the faces come down evenly, and the last round makes up for losses.",
    "open-time": "As sealant ran out, the bolts lost clamp; while it is wet, a last round does no harm.",
    "stopped": "A steady pull that stops at the click is how the wrench gives its torque.",
    "by-length": "Each hole got a bolt that fits its depth, so no tip stands on the bottom.",
    "holes-dry": "Dry and looked at down to the bottom, a hole holds nothing that could stop the bolt.",
    "fingers": "With the fingers you feel a crossed thread before it is cut.",
    "nut-oiled": "The torque is stated for oil on thread and face, and that is what was done.",
    "compound-clean": "Compound bonds on clean threads alone, so the old one has to come off.",
    "unit-turned": "The wrench is set in N·m, so the figure of the card was converted first.",
}

# %% tags=["reference"]
judged = dict.fromkeys(MISTAKES, "mistake") | dict.fromkeys(SOUND, "sound")
ref("steps-judged", {one.id: judged[one.id] for one in asked.steps.lines}, outcome="joint-slips",
    lesson="03-threaded-joints#before-you-start", shows="every-slip",
    slips=line_reasons(bank.lists["steps"], asked.steps.answers, judged, MISTAKES | SOUND,
                       shown=asked.steps.lines))

# %% tags=["mark"] task="steps" points=6

# %% [markdown]
# ## Done?
#
# Go back to **start-here** and press **Hand in**. You get a receipt. You can hand in again until the due date; the last one counts.
