# %% [markdown]
# # Threaded joints
#
# <div class="twoshaft-if-missing">If no pictures appear below: press <b>Run</b>, then <b>Run All Cells</b>.</div>
#
# **After this lesson you can**
#
# - say how much clamp a torque gives, and how certain that is
# - set a wrench with an adapter and in any unit
# - keep threads in the state that the torque is meant for
# - protect threads in aluminium
# - keep blind holes dry
# - tighten a face in rounds
# - tighten and lock a shaft nut
#
# **Time:** 35 to 40 minutes. **What passing proves:** that you can be trusted with a torque wrench on a bench unit.
#
# *Invented unit, for teaching. On a real unit the maker's manual, local codes and licensed practice decide.*

# %% tags=["setup"]
from twoshaft.models import fit, joint
from twoshaft.plots.joint import clamp_by_state
from twoshaft.plots.tables import given_table
from twoshaft.practice import open_lesson
from twoshaft.rigs import face_tightening, thread_chooser
from twoshaft.units.quantities import Q

lesson = open_lesson("threaded-joints")
unit = lesson.unit
groups = [joint.Fastening.of(unit, group.id) for group in unit.fasteners.groups]
tapped = [g for g in groups if g.metal is not None]
soft = min((g.metal for g in tapped), key=lambda metal: metal.tensile_mpa)

# %% [markdown]
# ## From earlier lessons

# %% tags=["rig"]
lesson.asked_again()

# %% [markdown]
# ## Before you start
#
# - **Eye protection** whenever a nut is staked or anything is struck. Hard metal chips fly.
# - **A bar that slips** puts you on the floor. Pull towards you, feet apart, with the socket fully on. If you can only push, push with your open hand, so that no finger is behind the bar. Never use your weight.
# - **Pinch points:** two gears that lock the shafts also trap a finger. Hands out before anybody pulls.
# - **No impact tools in aluminium:** not to start a bolt, not to run it down, not to tighten it. They do not feel a crossed thread, and they do not stop in time.
# - Sealants and locking compounds irritate skin and eyes. Gloves, ventilation, and their safety data sheets.
#
# On this page nothing can break. Try things.

# %% [markdown]
# ## Clamp, not torque
#
# A joint is held by the **clamp load**: the bolt is stretched like a stiff spring and presses the parts together. The torque wrench does not measure that. It measures how hard it is to turn the bolt.

# %% tags=["predict"]
lesson.predict("share-that-stretches")

# %% tags=["then"]
shares = [(g, joint.torque_shares(g.thread, g.seat, g.friction.thread[1], g.friction.head[1]))
          for g in groups[:6]]
given_table("Where the torque goes", ["bolt", "stretches it", "rubs in the thread", "rubs under the head"],
            [(g.group.name, f"{s.pitch:.0%}", f"{s.thread:.0%}", f"{s.head:.0%}") for g, s in shares])

# %% [markdown] tags=["then"]
# The rest is lost to friction. So a small change in friction makes a large change in clamp. Even a good wrench does not show it.
#
# Try it. Set another state of the thread and leave the torque alone. Then set **by feel** in place of a wrench.

# %% tags=["then"]
thread_chooser(unit, max(tapped, key=lambda g: (g.metal is soft, g.group.count)).group.id)

# %% [markdown] tags=["then"]
# The wide bar shows the least and the most clamp that this torque can give. The mark in it shows the usual clamp. Two things make the bar wide: nobody knows the friction of one single bolt, and the wrench has its own tolerance. Which of the two is worse here?

# %% [markdown]
# ## Wet threads
#
# A torque figure is valid for **one state** of the thread: the state that the manual means. As delivered, oiled, dry, with sealant or with locking compound: each needs its own torque for the same clamp.

# %% tags=["predict"]
lesson.predict("oiled-bolt")

# %% tags=["then"]
worst = max(tapped, key=lambda g: max(g.worst_use(state) for state in g.states))
clamp_by_state(worst)

# %% [markdown] tags=["then"]
# With oil, the same torque stretches the bolt further: the bolt can come near yield, and a thread in aluminium can strip. The washed, dry bolt turns hard, so the wrench clicks early and the joint is loose.
#
# Torque = K × clamp × diameter. The **nut factor** K is small where the thread is slippery:

# %% tags=["then"]
given_table(
    f"{worst.group.name}: {worst.torque.m_as('N*m'):g} N·m, stated for {worst.friction.name.lower()}",
    ["found", "typical clamp with the stated torque, kN", "torque for the right clamp, N·m"],
    [(state.name, f"{worst.bounds(key).typical_n / 1e3:.1f}",
      f"{joint.torque_for_state(worst.torque, worst.thread, worst.seat, worst.friction, state).m_as('N*m'):.1f}")
     for key, state in worst.states.items()],
)

# %% [markdown] tags=["then"]
# At the bench you do not recalculate. You **bring the thread into the state that the manual means**: clean it and dry it. Oil it or put compound on it only if the manual says so.
#
# **Locking compound works once.** Clean the old bolt to bare metal and use fresh compound. Cured compound holds nothing and changes the friction.

# %% [markdown]
# ## Units of torque
#
# One job card says N·m, an older one lbf·ft, a small tool lbf·in or kgf·cm. The same number in the wrong unit ruins a bolt.

# %% tags=["predict"]
lesson.predict("ft-for-nm")

# %% tags=["then"]
names = {"N·m": "N*m", "lbf·ft": "force_pound*foot", "lbf·in": "force_pound*inch", "kgf·cm": "force_kilogram*cm"}
jobs = sorted(groups, key=lambda g: g.torque.m_as("N*m"))[::4]
given_table("The same torques in four units", list(names),
            [[f"{float(f'{g.torque.m_as(pint):.3g}'):g}" for pint in names.values()] for g in jobs])

# %% [markdown] tags=["then"]
# One lbf·ft is about 1.36 N·m, so the bolt gets only about three quarters of what it needs. The other way round, the bolt gets a third too much. If you take lbf·in for lbf·ft, the torque is twelve times too small.

# %% [markdown]
# ## Adapters
#
# An open-ended adapter makes the lever longer: the bolt gets **more** than the wrench shows. Set less:
#
# setting = torque × L / (L + E·cos α)
#
# L is the length from the square drive to the middle of the grip, E the reach of the adapter, α its angle. Straight on, the angle is 0. At a right angle it changes nothing.

# %% tags=["rig"]
wrench = Q(min(g.wrench.length_m for g in groups), "m")
reach = Q(unit.fasteners.adapters[0].reach_mm, "mm") if unit.fasteners.adapters else Q(50, "mm")
given_table(
    f"10 N·m at the bolt, wrench {wrench.m_as('mm'):g} mm, adapter {reach.m_as('mm'):g} mm",
    ["angle, °", "set the wrench to, N·m"],
    [(a, f"{joint.setting_with_adapter(Q(10, 'N*m'), wrench, reach, Q(a, 'degree')).m_as('N*m'):.2f}")
     for a in (0, 45, 90, 135, 180)],
)

# %% [markdown]
# Hold the wrench by the middle of its grip: a hand further out or further in changes L, and with it the setting. Use a wrench only above a fifth of the largest figure on its scale. Below that, nobody promises how exact it is.

# %% [markdown]
# ## Bolts in aluminium
#
# Aluminium threads are weaker than the bolt. What counts is the length on which the threads of bolt and hole meet (the thread engagement). If it is long enough, the bolt would break first. If it is too short, the thread in the hole shears off, and the case is scrap or needs an insert.

# %% tags=["predict"]
lesson.predict("half-as-deep")

# %% tags=["then"]
most = max((g for g in tapped if g.metal is soft), key=lambda g: g.group.count)
lengths = [round(most.group.tapped.engagement_mm * share, 1) for share in (0.33, 0.5, 0.67, 1.0)]
loads = [joint.strip_loads(most.thread, most.steel, Q(most.metal.tensile_mpa, "MPa"), Q(mm, "mm"),
                           limits=joint.limits_6g6h(most.thread)) for mm in lengths]
given_table(f"{most.group.name}, {most.thread.name} in {most.metal.name.lower()}",
            ["thread that meets, mm", "hole strips at, kN", "bolt breaks at, kN", "first"],
            [(mm, f"{s.hole_strips_n / 1e3:.1f}", f"{s.bolt_breaks_n / 1e3:.1f}", s.first)
             for mm, s in zip(lengths, loads)])

# %% [markdown] tags=["then"]
# So put each bolt back where it came from: lengths differ round a case.

# %% [markdown]
# ## Start bolts by hand
#
# - **Dowels first.** They place the case; bolts do not.
# - **Start every bolt by hand**, two turns or more. If it goes stiff, back it out and look. A tool would cut a new thread across the old one, and you would not feel it.
# - **All bolts in before any is tight.** Until then the parts can still move.
# - A **sealing washer** seals because it is squeezed into the marks of its seat. It keeps that shape, so fit a new one each time, on clean faces.
# - A **tapered-head screw** wedges itself in the cone of its seat, so more of the torque goes into the head and less into clamp. Clean the cone, seat all such screws lightly in turn, then tighten. Never put a washer under the cone.

# %% [markdown]
# ## Oil in a blind hole
#
# A blind hole has a bottom. The bolt is a piston in it. If oil or wet sealant fills the room under the tip, the bolt meets it before its head is down. From there on, the bolt squeezes a liquid that has nowhere to go.

# %% tags=["predict"]
lesson.predict("oil-under-bolt")

# %% tags=["then"]
blind = next((g for g in tapped if g.blind_hole()), most)
hole = blind.blind_hole() or joint.BlindHole(1.4 * blind.group.tapped.engagement_mm / 1e3,
                                             blind.group.tapped.engagement_mm / 1e3, 3 * blind.thread.d_m)
full = 3.14159 / 4 * (blind.thread.d2_m * 1e2) ** 2 * (hole.depth_m - hole.bolt_reach_m) * 1e2
oils = [round(full * share, 2) for share in (0.5, 1.2, 1.6)]
locks = [joint.hydraulic_lock(hole, blind.thread, blind.seat, Q(oil, "cm**3"), blind.torque,
                              blind.friction.thread[1]) for oil in oils]
given_table(f"{blind.group.name}: room for {full:.2f} cm³ under the tip",
            ["oil, cm³", "turns before the head is down", "pressure, MPa", "stress in the wall, MPa", "splits"],
            [(oil, f"{k.turns_short:.1f}", f"{k.pressure_pa / 1e6:.0f}", f"{k.hoop_pa / 1e6:.0f}",
              "yes" if k.splits else "no") for oil, k in zip(oils, locks)])

# %% [markdown] tags=["then"]
# The joint then has too little clamp or none, the boss is split, or both. A few drops decide. So: **blind holes are wiped out and dry, to the bottom, before the bolt goes in**. Where the manual asks for sealant, put it under the head, not into the hole. Use a swab or a suction tube. Compressed air throws the oil into somebody's eyes.

# %% [markdown]
# ## Tightening a face
#
# When you tighten one bolt, it presses the parts together under its neighbours too, and the neighbours lose some of their clamp. With bare metal between the faces they lose little, with a gasket a lot.

# %% tags=["predict"]
flanged = [g for g in groups if g.group.flange is not None]
once = {g.group.id: joint.tighten(g.face(), [joint.Round.of(joint.clockwise(g.group.count), g.bounds().typical)])
        for g in flanged}
softest = max(flanged, key=lambda g: once[g.group.id].spread)
clamp = list(once[softest.group.id].clamp_n)
place = clamp.index(min(clamp)) * 3 // len(clamp)
lesson.predict("loosest-bolt", right=("first", "middle", "last")[place])

# %% tags=["then"]
face_tightening(unit, softest.group.id)

# %% [markdown] tags=["then"]
# Now make a second and a third round. The wrench turns only the bolts that have lost clamp. On the others it clicks at once.
#
# Then tick that friction scatters: now each bolt has its own friction. Make more rounds. They do not help against that, because rounds give back only the clamp that bolts take from each other.

# %% tags=["then"]
rounds = {"once": 1, "twice": 2, "three times": 3}
orders = {"round the ring": joint.clockwise, "crosswise": joint.crosswise}
target = softest.bounds().typical
plans = [(o, r, joint.tighten(softest.face(), [joint.Round.of(orders[o](softest.group.count), target)] * n))
         for o in orders for r, n in rounds.items()]
given_table(f"{softest.group.name}: the same torque, six ways (allowed spread {softest.group.spread:.0%})",
            ["order", "full torque", "loosest bolt, kN", "spread"],
            [(o, r, f"{t.clamp_n.min() / 1e3:.1f}", f"{t.spread:.0%}") for o, r, t in plans])

# %% [markdown] tags=["then"]
# So **the rounds make the clamp even**. Whether you go crosswise or round the ring makes little difference here.

# %% [markdown]
# ## Why crosswise
#
# The pattern matters while the faces come down.

# %% tags=["predict"]
lesson.predict("one-corner-first")

# %% tags=["then"]
wide = max(flanged, key=lambda g: g.group.count)
count, full = wide.group.count, wide.bounds().typical
steps = [1, count // 4, count // 2, 3 * count // 4]
down = [(o, share, [joint.tighten(wide.face(), [joint.Round.of(orders[o](count)[:k], full * share)])
                    .gap_m.max() * 1e3 for k in steps]) for o in orders for share in (1, 0.33)]
given_table(f"{wide.group.name}: widest gap between the faces, mm",
            ["order", "torque", *(f"after pull {k}" for k in steps)],
            [(o, "full" if share == 1 else "a third", *(f"{gape:.2f}" for gape in gapes))
             for o, share, gapes in down])

# %% [markdown] tags=["then"]
# Full torque on one bolt tips the part: the far side lifts. A first round at a third of the torque lifts it far less, and **crosswise it closes sooner** than round the ring. So the part does not bend, does not jam on its dowels, and does not squeeze wet sealant out on one side.
#
# The usual rule: all by hand, then from the middle outwards and crosswise, at a third, two thirds and full torque, and once more at full torque. People say that this drives the sealant to the edges. Our model is a ring of bolts and cannot show that.

# %% [markdown]
# ## Which joints need more rounds
#
# Each joint has a spread that is allowed. If the spread after one round is larger than that, make another round.

# %% tags=["rig"]
given_table("One round at full torque, round the ring",
            ["face", "spread after one round", "spread allowed"],
            [(g.group.name, f"{once[g.group.id].spread:.0%}", f"{g.group.spread:.0%}") for g in flanged])

# %% [markdown]
# ## A last round on wet sealant
#
# **Wet sealant** carries no clamp. At first it holds the faces apart. As it flows out, every bolt loses clamp. In the rig of *Tightening a face*, set a film, tighten all bolts, then let the film run out.
#
# So make a last round after a few minutes, within the open time of the sealant, and never after it has cured.

# %% [markdown]
# ## Shaft nuts
#
# A shaft nut needs a very large torque, so the shafts must stand still. **Two gears engaged at once lock both shafts**, because the output shaft cannot turn at two ratios. Never hold a gear with a bar or a screwdriver in its teeth.

# %% tags=["rig"]
nuts = sorted((g for g in groups if g.group.tapped is None), key=lambda g: -g.torque.m_as("N*m"))
given_table(
    "The nuts of this unit",
    ["nut", "thread", "tightens", "torque, N·m", "pull at the grip, N"],
    [(g.group.name, g.thread.name, "anticlockwise" if g.thread.left_hand else "clockwise",
      g.torque.m_as("N*m"), f"{g.torque.m_as('N*m') / g.wrench.length_m:.0f}") for g in nuts],
)

# %% [markdown]
# **Look at the thread before you pull.** A left-hand thread tightens anticlockwise, seen from the nut. If you pull the wrong way you loosen it, or break it.
#
# The pull at the grip is the torque divided by the length of the wrench. It is more than one arm can give safely: take a long wrench, both hands, feet apart, and bolt the unit down.

# %% [markdown]
# ## Lock the nut
#
# The collar of the nut is staked into the slot of the shaft, or the tab of a plate is bent against the nut. That metal may be bent once only. So replace a nut that was staked, or a plate that was bent.

# %% tags=["predict"] needs="staked-nut"
staked = unit.fits.staked_nuts if unit.fits_if_any else ()
holds = [(n, share, fit.stake_hold(Q(n.radius_mm, "mm"), Q(n.slot_mm, "mm"), Q(n.tab_mm, "mm"),
                                   Q(n.depth_mm * share, "mm"), Q(n.yield_mpa, "MPa"), n.tabs))
         for n in staked[:1] for share in (0.25, 0.5, 1.0)]
lesson.predict("stake-a-quarter", right=f"{100 * holds[0][2].holds_nm / holds[-1][2].holds_nm:.0f}") if holds else lesson.pass_over("stake-a-quarter")

# %% tags=["then"] needs="staked-nut"
given_table("What a staked collar holds once the clamp is gone",
            ["nut", "punched in, mm", "holds, N·m", "gives way by"],
            [(n.name, f"{n.depth_mm * share:.2f}", f"{s.holds_nm:.0f}",
              "being crushed" if s.first == "crushes" else "being sheared off")
             for n, share, s in holds]) if holds else None

# %% [markdown] tags=["then"] needs="staked-nut"
# A shallow tab is crushed in its slot: half the depth, half the hold. A deep tab can only be sheared off. If you punch it deeper than that, it holds no better and can crack. Compare the hold with the torque in the table of nuts. Staking keeps a nut from turning loose. It does not replace the torque.

# %% [markdown]
# ## Work it out
#
# Each calculation comes three times: worked, with steps left out, and on your own. Then go on with fresh readings as often as you like. You are told at once what is right, and which mistake a wrong figure looks like. Nothing here is marked.

# %% tags=["rig"]
lesson.calculation("old-card")

# %% tags=["rig"]
lesson.calculation("found-setting")

# %% tags=["rig"]
lesson.calculation("wrong-state")

# %% tags=["rig"]
lesson.calculation("bolt-in-aluminium")

# %% tags=["rig"]
lesson.calculation("blind-hole")

# %% tags=["rig"]
lesson.calculation("spread-of-a-face")

# %% tags=["rig"]
lesson.calculation("shaft-nut")

# %% [markdown]
# ## How you are marked
#
# Where a figure builds on an earlier one, a mistake costs marks once. A setting is right if it is the nearest mark of the wrench's scale, a reading if it is right to the last figure shown. Six things are **must-pass**. Each is asked in several cases, and every case must be right:
#
# - the state of the thread
# - how a bolt starts in aluminium
# - a dry blind hole
# - which way a nut turns
# - how the shafts are held
# - which parts are used again
#
# Now open the exercise from **start-here**.

# %% [markdown]
# <details>
# <summary>Where the rules and figures come from</summary>
#
# - Torque and clamp, friction classes, assembly at a share of yield: VDI 2230 (as remembered, not looked up again). Threads: ISO 68-1, ISO 724, ISO 261, ISO 965-1. Strength classes: ISO 898-1.
# - Stripping: Alexander's method as in ISO/TR 16224. Torque tools: ISO 6789. Units: exact definitions as in NIST SP 811.
# - Bolted face: a ring of beams on a springy joint, our own model; bolts that slacken their neighbours: elastic interaction, Bickford (as remembered, not looked up again).
# - Oil in a blind hole: stiffness of oil and Lamé's thick tube, our own model; oil's stiffness as remembered, not looked up again.
# - Staking: shear and crushing of the tab, our own model. Tapered heads and sealing washers: common practice, no source.
# - By feel within 35 %; hand start, dry holes, order of tightening, new washers and nuts: common practice, no source.
# - Friction, torques and sizes are invented for this unit.
#
# </details>
