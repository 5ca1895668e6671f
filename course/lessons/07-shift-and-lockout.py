# %% [markdown]
# # Shift mechanism and lockout
#
# <div class="twoshaft-if-missing">If no pictures appear below: press <b>Run</b>, then <b>Run All Cells</b>.</div>
#
# **After this lesson you can**
#
# - work out what force a detent asks of the hand
# - say what the interlock locks and when
# - prove by hand that the lockout works
# - say what each assembly fault does
# - choose the test that shows it
# - name the assembly fault that no hand test shows
#
# **Time:** 30 to 40 minutes. **What passing proves:** that you can plan and read the hand test of a selector before a unit leaves your bench.
#
# *Invented unit, for teaching. On a real unit the maker's manual, local codes and licensed practice decide.*

# %% tags=["setup"]
from twoshaft.models import shift
from twoshaft.plots.tables import given_table
from twoshaft.practice import open_lesson
from twoshaft.rigs import gate_rig
from twoshaft.units.quantities import Q

lesson = open_lesson("shift-and-lockout")
unit = lesson.unit
name = {body.id: body.name for body in (*unit.shift.passive, *unit.shift.interlocks)}
label = {move.code: move.label for move in shift.hand_moves(unit.shift)}

# %% [markdown]
# ## From earlier lessons

# %% tags=["rig"]
lesson.asked_again()

# %% [markdown]
# ## Before you start
#
# - **Eye protection** whenever detent balls and springs go in or come out. When the plug leaves its last thread the spring throws the ball, and the ball is hard and fast.
# - When you unscrew a detent plug, keep your face out of its line, and hold a rag over it. Do the same when you take off the hook of the lockout spring.
# - A **spring pin** is hardened: if you strike it badly, it splinters. Eye protection, the right punch, a soft-faced hammer.
# - **Pinch points:** forks, jaws and gears close on fingers. Turn and shift by hand only, and say aloud when you move the lever while somebody else has a hand in the case.
# - Never force a shift that stops. A lockout that stops you is doing its work, and force bends a fork.
#
# On this page nothing can break. Try things.

# %% [markdown]
# ## What the hand moves
#
# The selector shaft can do two things. It **slides**: with that you choose a gate plane, and so one of the rails. It **turns**: with that you push this rail one way or the other, into one of its two gears. On some units the hand also **lifts** a collar, or pushes firmly past a plunger.
#
# The picture shows it in section. Left: the finger between the jaws of the rails. Middle, one layer behind: the parts that stop a wrong shift. Right: the rails with the interlock pins between them.

# %% tags=["predict"]
lesson.predict("reached-from-neutral")

# %% [markdown] tags=["then"]
# Try to engage every gear, with the arrow keys, by dragging, or with the moves in words.

# %% tags=["then"]
gate_rig(unit, misbuilds=[])

# %% [markdown] tags=["then"]
# The rail that moved takes its fork and its sleeve with it. Now try to go straight into reverse from the gear beside it, in its gate plane or in the next. Read what stopped you.

# %% [markdown]
# ## Detents: what holds a gear in
#
# A spring presses a ball into a V notch in the rail. To leave the notch, the rail lifts the ball up the flank, against the spring and against friction. The edge of the notch is the **crest**.
#
# **force along the rail = spring force × tan(flank angle + friction angle)**
#
# The friction angle is the angle whose tangent is the friction coefficient. The flank angle is measured from the rail's axis. The **rate** of a spring is the force that it gains for each millimetre it is pressed together.

# %% tags=["predict"]
lesson.predict("steeper-flank")

# %% tags=["then"] needs="detent"
detent = unit.shift.detents[0]
forces = [(ramp, shift.detent_force(Q(detent.spring_force_n, "N"), Q(ramp, "deg"), detent.friction,
           spring_rate=Q(detent.spring_rate_n_per_mm, "N/mm"), depth=Q(detent.notch_depth_mm, "mm")))
          for ramp in (20, 26, 32, 38, 45, 55)]
given_table(f"The same spring and ball on other flanks (this unit has {detent.ramp_deg:g}°)",
            ["flank, °", "to leave the notch, N", "at the crest, N", "travel to the crest, mm"],
            [(ramp, f"{f.to_start.magnitude:.0f}", f"{f.at_crest.magnitude:.0f}", f"{f.travel.magnitude:.1f}") for ramp, f in forces])

# %% [markdown] tags=["then"] needs="detent"
# A flank of 55° needs more than three times the force of one of 20°. Up to the crest the spring is pressed together more and more, so the force grows. You feel that push just before the gear snaps in.

# %% [markdown]
# ## A weak spring, a strong spring
#
# If a detent spring is too weak, the gear jumps out on the road. If it is too strong, drivers force the lever. The maker gives the figure.

# %% tags=["rig"] needs="detent"
given_table("The detents of this unit",
            ["rail", "spring, N", "rate, N/mm", "flank, °", "notch depth, mm"],
            [(name[d.rail], d.spring_force_n, d.spring_rate_n_per_mm, d.ramp_deg, d.notch_depth_mm)
             for d in unit.shift.detents])

# %% [markdown]
# One rail may have a stronger spring than the others. Then compare rail with rail by hand before the cover goes on: you feel a spring that was swapped.

# %% [markdown]
# ## From the rail to the hand
#
# The finger pushes the rail with its tip. For this the selector shaft needs a torque: **torque = force along the rail × radius of the finger**.
#
# Your hand gives that torque at the outer lever: **force of the hand = torque ÷ length of the lever**.
#
# How far does the shaft turn? **Degrees = 57.3 × travel of the rail ÷ radius of the finger**.

# %% tags=["predict"]
lesson.predict("lever-twice")

# %% tags=["then"]
radius = Q(unit.shift.finger_radius_mm, "mm")
torque = shift.shaft_torque(Q(60, "N"), radius)
given_table(f"60 N along the rail, finger of {radius.magnitude:g} mm: {torque.magnitude:.2f} N·m on the shaft",
            ["lever, mm", "force of the hand, N", "travel of the hand for 7 mm of rail, mm"],
            [(mm, f"{shift.hand_force(torque, Q(mm, 'mm')).magnitude:.0f}",
              f"{7 * mm / radius.magnitude:.0f}") for mm in (70, 100, 140)])

# %% [markdown]
# ## Interlock: one rail at a time
#
# If two gears are engaged at once, input and output shaft lock. On the road the wheels lock with them, or something breaks. So it must be **impossible**, not just unlikely.
#
# A pin lies between two rails. It is a little longer than the gap between them, so it always stands in a notch of one rail. When one rail leaves neutral, its round side pushes the pin into the notch of the other rail, and that rail is locked.

# %% tags=["predict"]
lesson.predict("pins-lock")

# %% [markdown] tags=["then"]
# Watch the right-hand panel of the first picture on this page while you engage first, then the top gear.

# %% tags=["then"] needs="interlock"
given_table("The pins of this unit", ["pin", "between"],
            [(pin.name, " and ".join(name[rail].lower() for rail in pin.rails))
             for pin in unit.shift.interlocks])

# %% [markdown] tags=["then"]
# A pin between two rails locks neighbours. A small pin through a rail passes the push on, so that rails further apart lock each other as well.

# %% [markdown]
# ## A worn interlock pin
#
# A worn pin is too short. Then the locked rail can still move a little before the flank of its notch meets the pin:
#
# **play = notch depth + gap − pin length**, and **free movement = play ÷ tan(flank angle)**

# %% tags=["predict"]
lesson.predict("worn-pin")

# %% tags=["then"] needs="interlock"
pin = unit.shift.interlocks[0]
play = {mm: shift.pin_play(Q(pin.notch_mm, "mm"), Q(pin.gap_mm, "mm"), Q(mm, "mm"))
        for mm in (11.4, 11.3, 11.1, 10.8, 10.5)}
given_table(f"{pin.name}: notch {pin.notch_mm} mm, gap {pin.gap_mm} mm, flank {pin.ramp_deg:g}°",
            ["pin length, mm", "play, mm", "free movement, mm"],
            [(mm, f"{p.magnitude:.2f}", f"{shift.free_movement(p, Q(pin.ramp_deg, 'deg')).magnitude:.2f}")
             for mm, p in play.items()])

# %% [markdown] tags=["then"]
# If a pin is one millimetre too short, the second rail can move by most of a millimetre. That alone engages nothing. But the sleeve comes nearer to its gear while another gear drives. So renew all pins together.

# %% [markdown]
# ## Lockout: not straight into reverse
#
# Reverse lies beside a forward gear. Without a lockout, the driver could shift from that gear straight into reverse. There are several kinds of lockout; some units have two.
#
# - **A plate with a spring.** The peg comes in from the side and pushes the plate out of its path. In the gear beside reverse the plate springs back behind the peg. On the way out the peg meets the edge of the plate and stops. Leave the gate plane and come in again: now reverse is free.
# - **A plunger, or a strong detent.** It stands before the gate plane of reverse. A normal shift stops at it. A firm push passes.
# - **A collar that is lifted.** Its ear meets a stop before reverse. When you lift the collar, the ear passes over the stop.

# %% tags=["rig"]
rows = [(f"{b.earlier} to {b.later}", "; ".join(shift.name_of(unit.shift, one) for one in shift.what_stops(unit.shift, b).devices),
         f"{b.later} goes in {shift.say_opening(unit.shift, b.earlier, b.later)}") for b in unit.shift.must_block]
given_table("Lockouts of this unit", ["direct shift", "stopped by", "what lets it in"], rows or [("none", "", "")])

# %% tags=["predict"]
lesson.predict("lockout-fails")

# %% [markdown] tags=["then"]
# Choose one after the other and try the direct shift.

# %% tags=["then"]
gate_rig(unit)

# %% [markdown] needs="lockout"
# ## The proof by hand
#
# The unit goes together, it shifts, and every gear is there. The lockout can still fail. Only the hand test shows it. The proof has **two halves**:
#
# 1. From the neighbour gear, push straight towards reverse, without leaving the gate plane. It must **stop**.
# 2. Do what this unit asks for before reverse (leave the gate plane and come back, lift the collar, push firmly), and push towards reverse. It must **go in**.
#
# You must do the second half as well. If reverse cannot be engaged at all, the first half "passes" for the wrong reason.

# %% tags=["rig"]
block = unit.shift.must_block[0]
proof = shift.lockout_test(shift.mechanism(unit.shift), block.earlier, block.later).model
made = shift.follow(shift.mechanism(unit.shift), proof)
given_table("The proof on a mechanism that is assembled correctly", ["no.", "move", "what happens"],
            [(n, label[one.code], shift.say_felt(one.felt[0])) for n, one in enumerate(made, 1)])

# %% [markdown]
# Where the lever stops, the neighbour came out and reverse did not go in. In the last row the same push goes through.

# %% [markdown]
# ## What each assembly fault does
#
# Each row below is a mechanism with one thing put in wrongly, and what a full hand test of it finds. Every line is worked out by moving the mechanism.

# %% tags=["predict"]
found = {m: shift.symptoms(shift.prove_by_hand(shift.mechanism(shift.with_misbuilds(unit.shift, [m.id]))))
         for m in unit.shift.misbuilds}
silent = [m.id for m, kinds in found.items() if kinds <= {"nothing"}]
lesson.predict("shows-nothing", choices={m.id: m.name for m in found}, right=silent) if silent else lesson.pass_over("shows-nothing")

# %% tags=["then"]
given_table("Assembly fault and symptom", ["assembly fault", "what the hand test finds"],
            [(m.name, "; ".join(shift.KINDS[kind] for kind in kinds)) for m, kinds in found.items()])

# %% [markdown] tags=["then"]
# Several assembly faults share one symptom. The hand test says *that* the lockout fails, not *why*. To find out why, look: which side is the plate's step on, how is the spring hooked, is the pin of the finger home?
#
# A plate without its spring lies wherever it was last pushed. Whether it stops you depends on how the lever came in. A lockout that works only sometimes is a fault.

# %% [markdown]
# ## Which test shows which assembly fault
#
# For every assembly fault there is a shortest list of moves after which the lever surely feels different from a sound one. Some take two moves, some three.

# %% tags=["rig"]
sound = shift.mechanism(unit.shift)
tests = {m: shift.telling_test(sound, shift.mechanism(shift.with_misbuilds(unit.shift, [m.id])))
         for m in unit.shift.misbuilds}
given_table("The shortest test for each", ["assembly fault", "moves"],
            [(m.name, "; then ".join(label[c].lower() for c in t.model) if t else "no hand test shows it")
             for m, t in tests.items()])

# %% [markdown]
# The most dangerous fault is the one that no hand test shows, such as **a small pin left out of a rail between two others**. Without it those two no longer lock each other. But the finger is never wide enough to push both at once, so the hand finds nothing. On the road a fork that drags its rail can bring a second gear in.
#
# Check this while you can still see it: before the rails go in, count aloud each pin that you put into the bore. Then have your count signed.

# %% [markdown]
# ## The order of the hand test
#
# 1. **Every gear in, one after the other.** If a gear is missing, the next steps prove little.
# 2. **Let go in every gear** and shake the shaft. A gear that does not stay has no detent.
# 3. **Between two gate planes, turn.** It must stop, both ways, at every pair of neighbours.
# 4. **The lockout**, both halves.
#
# **Explain to yourself:** with the peg worn down, the direct shift is stopped *and* reverse cannot be engaged. Which step of the list shows you that this is no pass?

# %% [markdown]
# ## The pin of the finger
#
# A spring pin holds the finger on its shaft. If the pin is not home, the finger can sit where its peg misses the plate. Then every gear is there, but the lockout is not.
#
# The pin is home when it lies **below the surface at both ends**. The end that you strike shows you only half. Measure how deep the pin lies there. Then work out the other end from the hub's diameter and the pin's length. The slot points where the maker says.

# %% tags=["rig"]
hub, length = Q(26, "mm"), Q(24, "mm")
ends = [(deep, shift.other_end(hub, length, Q(deep, "mm")).magnitude) for deep in (0.2, 1.0, 1.8, 2.4)]
given_table("A pin of 24 mm in a hub of 26 mm",
            ["struck end lies below, mm", "other end lies below, mm", "home?"],
            [(deep, f"{far:.1f}" if far >= 0 else f"stands {-far:.1f} proud",
              "yes" if min(deep, far) >= 0.5 else "no") for deep, far in ends])

# %% [markdown]
# The limit here is 0.5 mm at each end. On a real unit the maker's manual says how deep.

# %% [markdown]
# ## Work it out
#
# Each calculation comes three times: worked, with steps left out, and on your own. Then go on with fresh readings as often as you like. You are told at once what is right, and which mistake a wrong figure looks like. Nothing here is marked.

# %% tags=["rig"]
lesson.calculation("detent")

# %% tags=["rig"]
lesson.calculation("rail-to-hand")

# %% tags=["rig"]
lesson.calculation("interlock-pin")

# %% tags=["rig"]
lesson.calculation("pin-other-end")

# %% [markdown]
# ## How you are marked
#
# Your list of moves is tried on the mechanism itself. Each list that proves what was asked is right. Where an answer builds on an earlier one, a mistake costs marks once. Three things are **must-pass**: the proof of the lockout, what four records of it say, and why two gears at once must be impossible and what prevents them. Four more questions decide one outcome each: the detent spring, the pins that no test shows, the pin of the finger, and springs and hands. If one line of such a question is wrong, its outcome is not met.

# %% [markdown]
# Next: open the exercise from **start-here**.
#
# <details>
# <summary>Where the rules and figures come from</summary>
#
# - Force of a ball in a V notch: the wedge with friction, N·tan(angle + friction angle); general design pages on ball detents.
# - Rail, gate, jaw and plate: geometry of an invented unit; contact by the Minkowski difference of the shapes (Lozano-Pérez 1983, as remembered).
# - Interlock pins and their notches, order of the hand test, counting the pins: common practice, no source.
# - Spring pins: slotted spring pins ISO 8752; how deep they lie: common practice, no source.
#
# </details>
