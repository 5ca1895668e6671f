"""The shift mechanism: what the hand reaches, where a direct shift is stopped, detent force."""

from __future__ import annotations

import numpy as np
from matplotlib.lines import Line2D
from matplotlib.patches import Patch

from twoshaft.models.shift import Mechanism, detent_force, prove_by_hand, reach
from twoshaft.plots import style
from twoshaft.plots.figure import Picture, label, legend, new_axes
from twoshaft.units.quantities import Q
from twoshaft.units.sections.shift import Detent

_POINTS = 60


def gate_map(machine: Mechanism, to: str | None = None) -> Picture:
    """Map of the places that the hand reaches, the way to a gear, and the shift that is stopped.

    Parameters
    ----------
    machine : Mechanism
    to : str, optional
        Gear to show the shortest hand movement to; the first of the unit when left out.
    """
    proof, found = prove_by_hand(machine), reach(machine)
    gears = [gear for rail in machine.shift.rails for gear in (rail.low, rail.high) if gear]
    to = gears[0] if to is None else to
    title = _finding(proof, to)
    axes = new_axes(
        title, "travel of the selector shaft [mm]", "turn of the finger [mm]", inches=(8.0, 6.4)
    )
    hand = {state[:2] for state in found.came_from}
    reached = np.zeros((machine.turn_mm.size, machine.travel_mm.size))
    for i, j in hand:
        reached[j, i] = 1
    axes.contourf(
        machine.travel_mm, machine.turn_mm, reached, levels=[0.5, 1.5],
        colors=[style.OKABE_ITO["sky"]], alpha=0.55,
    )  # fmt: skip
    handles = [Patch(facecolor=style.OKABE_ITO["sky"], alpha=0.55, label="the hand can be here")]
    way = proof.ways_mm.get(to)
    if way is not None:
        axes.plot(*way.T, color=style.INK, lw=2.4, marker="o", ms=5)
        axes.plot(*way[0], "o", color=style.PAPER, mec=style.INK, ms=11, mew=2, zorder=5)
        handles.append(
            Line2D([], [], color=style.INK, lw=2.4, marker="o", ms=5, label=f"shortest way to {to}")
        )
    for gear in gears:
        at = _place(machine, found, gear)
        if at is not None:
            axes.annotate(
                gear, at, xytext=(0, 9 if at[1] > 0 else -9), textcoords="offset points",
                ha="center", va="bottom" if at[1] > 0 else "top", color=style.INK,
                size=style.TEXT_PX * 0.72, weight="bold",
            )  # fmt: skip
            axes.plot(*at, "s", color=style.PAPER, mec=style.INK, ms=8, mew=1.6, zorder=5)
    stops = [_stop(machine, found, lock) for lock in proof.locks if lock.verdict == "holds"]
    for lock in proof.locks:
        if lock.way_mm is not None:
            axes.plot(*lock.way_mm.T, color=style.OKABE_ITO["vermilion"], lw=3, ls=(0, (4, 2)))
            handles.append(
                Line2D([], [], color=style.OKABE_ITO["vermilion"], lw=3, ls=(0, (4, 2)),
                       label=f"{lock.earlier} straight into {lock.later}: must not go")
            )  # fmt: skip
    for path, lock in (one for one in stops if one is not None):
        axes.plot(*path.T, color=style.OKABE_ITO["vermilion"], lw=2.4, ls=(0, (4, 2)))
        axes.plot(*path[-1], "X", color=style.OKABE_ITO["vermilion"], mec=style.INK, ms=13)
        handles.append(
            Line2D([], [], color=style.OKABE_ITO["vermilion"], lw=2.4, ls=(0, (4, 2)), marker="X",
                   ms=9, mec=style.INK,
                   label=f"{lock.earlier} straight towards {lock.later}: stopped at the cross")
        )  # fmt: skip
    axes.set_aspect("equal")
    axes.set_ylim(machine.turn_mm[0] - 3, machine.turn_mm[-1] + 3)
    legend(axes, handles=handles, loc="upper center", bbox_to_anchor=(0.5, -0.12))
    return Picture(axes.figure, _words(title, proof, to, stops))


def detent_curve(detent: Detent, name: str = "The rail") -> Picture:
    """Force on the rail from the middle of a notch to its crest.

    Parameters
    ----------
    detent : Detent
        From the unit file.
    name : str
        What the rail is called.
    """
    ramp, depth = Q(detent.ramp_deg, "degree"), detent.notch_depth_mm
    rise_mm = np.linspace(0, depth, _POINTS)
    forces = [
        detent_force(Q(detent.spring_force_n + detent.spring_rate_n_per_mm * up, "N"), ramp,
                     detent.friction)
        for up in rise_mm
    ]  # fmt: skip
    travel_mm = rise_mm / np.tan(np.radians(detent.ramp_deg))
    push_n = np.array([one.to_start.m_as("N") for one in forces])
    hold_n = np.array([one.holds_below.m_as("N") for one in forces])
    title = (
        f"{name}: {push_n[0]:.0f} N start it out of its notch, {push_n[-1]:.0f} N carry it over "
        f"the crest {travel_mm[-1]:.1f} mm away."
    )
    axes = new_axes(title, "travel from the middle of the notch [mm]", "force along the rail [N]")
    axes.plot(travel_mm, push_n, color=style.ACCENT, lw=2.6, label="the hand must push")
    axes.plot(
        travel_mm, hold_n, color=style.INK, lw=2, ls=(0, (6, 3)),
        label="the notch holds, friction left out",
    )  # fmt: skip
    axes.plot(travel_mm[[0, -1]], push_n[[0, -1]], "o", color=style.PAPER, mec=style.ACCENT, mew=2)
    label(axes, f"start: {push_n[0]:.0f} N", (travel_mm[0], push_n[0]), (14, 18))
    label(axes, f"crest: {push_n[-1]:.0f} N", (travel_mm[-1], push_n[-1]), (-90, 8))
    axes.set_ylim(0, push_n.max() * 1.2)
    axes.set_xlim(left=0)
    legend(axes, loc="lower right")
    alt = (
        f"{title} Without friction the notch holds {hold_n[0]:.0f} N at its middle and "
        f"{hold_n[-1]:.0f} N at its crest."
    )
    return Picture(axes.figure, alt)


def _place(machine: Mechanism, found, gear: str) -> tuple[float, float] | None:
    """Middle of the hand's places with the gear engaged, on its gate's middle."""
    states = found.with_gear(gear)
    if not states:
        return None
    rail = next(r for r in machine.shift.rails if gear in (r.low, r.high))
    gate = next(g for g in machine.shift.gates if g.id == rail.gate)
    turn = machine.turn_mm[[state[1] for state in states]]
    return gate.at_mm, float(turn.max() if gear == rail.high else turn.min())


def _stop(machine: Mechanism, found, lock):
    """Hand movement from the earlier gear to the nearest place that the direct shift comes to."""
    rail = next(r for r in machine.shift.rails if lock.earlier in (r.low, r.high))
    gate = next(g for g in machine.shift.gates if g.id == rail.gate)
    within = (gate.at_mm - gate.half_width_mm, gate.at_mm + gate.half_width_mm)
    starts = [
        state for state in found.with_gear(lock.earlier)
        if within[0] <= machine.travel_mm[state[0]] <= within[1]
    ]  # fmt: skip
    goal = _place(machine, found, lock.later)
    if not starts or goal is None:
        return None
    middle = min(starts, key=lambda s: abs(machine.travel_mm[s[0]] - gate.at_mm))
    direct = reach(machine, [middle], within_mm=within)

    def away(state) -> float:
        return abs(machine.turn_mm[state[1]] - goal[1]) + 0.1 * abs(
            machine.travel_mm[state[0]] - goal[0]
        )

    return direct.path(min(direct.came_from, key=away)), lock


def _finding(proof, to: str) -> str:
    if proof.sound:
        says = [f"the direct shift from {o.earlier} to {o.later} is stopped" for o in proof.locks]
        return "Every gear goes in and stays, one at a time" + (
            ", and " + " and ".join(says) if says else ""
        ) + "."  # fmt: skip
    sentences = proof.sentences
    wrong = [s for s in sentences if not s.endswith("is stopped.")]
    more = f" And {len(wrong) - 2} more." if len(wrong) > 2 else ""
    return " ".join(wrong[:2]) + more


def _words(title: str, proof, to: str, stops) -> str:
    found = [title]
    way = proof.ways_mm.get(to)
    if way is not None:
        places = ", ".join(f"travel {x:.0f} and turn {y:.0f} mm" for x, y in way)
        found.append(f"The shortest way to {to} goes by {places}.")
    for path, lock in (one for one in stops if one is not None):
        x, y = path[-1]
        found.append(
            f"From {lock.earlier}, without leaving the gate, the hand comes as far as travel "
            f"{x:.0f} mm, turn {y:.0f} mm, towards {lock.later}."
        )
    return " ".join(found)
