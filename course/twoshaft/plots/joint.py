"""Threaded joints: the clamp of each bolt round by round, and of each state of the thread."""

from __future__ import annotations

import numpy as np

from twoshaft.models.joint import Fastening, Tightening
from twoshaft.plots import style
from twoshaft.plots.figure import Picture, label, new_axes

_ROUND_MARKS = ("o", "s", "^", "D", "v", "P")
_SMALL = style.SMALL_PX * 0.72  # points at the 100 dots an inch of our pictures
_ROUND_COLOURS = ("vermilion", "orange", "sky", "blue", "green", "purple")


def clamp_by_state(fastening: Fastening) -> Picture:
    """Clamp that the stated torque leaves in every state of the threads, with its bounds.

    Parameters
    ----------
    fastening : Fastening
    """
    group = fastening.group
    need = group.clamp_kn
    states = sorted(fastening.states, key=lambda one: fastening.bounds(one).typical_n)
    bounds = {one: fastening.bounds(one) for one in states}
    strip = fastening.strip()
    verdicts = {
        one: _verdict(
            b.low_n / 1e3 < need,
            fastening.worst_use(one),
            strip is not None and strip.first != "bolt breaks" and strip.holds_n < b.high_n,
        )
        for one, b in bounds.items()
    }
    stated = bounds[group.state]
    title = (
        f"{group.name}: the same {fastening.torque.m_as('N*m'):g} N·m can leave "
        f"{min(b.low_n for b in bounds.values()) / 1e3:.0f} to "
        f"{max(b.high_n for b in bounds.values()) / 1e3:.0f} kN, by the state of the thread alone."
    )
    axes = new_axes(title, "clamp [kN]: bar from least to most, mark at typical", "")
    for row, one in enumerate(states):
        b = bounds[one]
        chosen = one == group.state
        colour = style.ACCENT if chosen else style.QUIET
        axes.plot(
            [b.low_n / 1e3, b.high_n / 1e3],
            [row, row],
            color=colour,
            lw=9 if chosen else 6,
            solid_capstyle="butt",
        )
        axes.plot(b.typical_n / 1e3, row, "D", color=style.PAPER, mec=style.INK, ms=9, zorder=4)
        axes.text(
            0.1,
            row + 0.2,
            f"{fastening.states[one].name}{' (the torque is for this)' if chosen else ''}",
            color=style.INK,
            size=_SMALL,
            weight="bold" if chosen else "normal",
            bbox={"facecolor": style.PAPER, "edgecolor": "none", "pad": 1},
        )
        axes.annotate(
            verdicts[one],
            (b.high_n / 1e3, row),
            xytext=(8, 0),
            textcoords="offset points",
            va="center",
            color=style.INK,
            size=_SMALL,
        )
    axes.set_yticks([])
    axes.spines["left"].set_visible(False)
    axes.axvline(need, color=style.OKABE_ITO["vermilion"], lw=style.THICK_PX, ls=(0, (6, 3)))
    label(axes, f"needed: {need:g} kN", (need, -0.45), (12, 2))
    axes.set_ylim(-0.6, len(states) - 0.35)
    axes.set_xlim(0, max(b.high_n for b in bounds.values()) / 1e3 * 1.25)
    alt = (
        f"{title} The torque is stated for {fastening.friction.name.lower()}: "
        f"{stated.low_n / 1e3:.1f} to {stated.high_n / 1e3:.1f} kN, {need:g} kN are needed. "
        + " ".join(
            f"{fastening.states[one].name}: {b.low_n / 1e3:.1f} to {b.high_n / 1e3:.1f} kN, "
            f"{verdicts[one]}."
            for one, b in bounds.items()
        )
    )
    return Picture(axes.figure, alt)


def _finding(tightening: Tightening, limit: float, name: str) -> str:
    spreads = [*tightening.spreads[:-1], tightening.spread]
    allowed = f"the {limit:.0%} allowed"
    text = f"{name}: after one round the clamp is uneven by {tightening.spreads[0]:.0%}"
    good = next((k for k, value in enumerate(spreads) if value <= limit), None)
    if good is None:
        later = f", after {len(spreads)} still by {spreads[-1]:.0%}" if len(spreads) > 1 else ""
        text += f"{later}, beyond {allowed}"
    elif good:
        text += f", round {good + 1} brings it within {allowed}"
    else:
        text += f", within {allowed}"
    if _lost(tightening) > 0.01:
        text += f"; as the film runs out bolts lose up to {_lost(tightening):.0%}"
    return f"{text}."


def _lost(tightening: Tightening) -> float:
    """Largest share of its clamp that a bolt loses as the film runs out."""
    before = tightening.rounds_n[-1]
    return float(np.max((before - tightening.clamp_n) / tightening.target_n))


def _verdict(loose: bool, use: float, strips: bool) -> str:
    words = ["can be loose"] * loose + ["can strip its thread"] * strips
    if use > 0.9:
        words.append("can yield" if use > 1 else "near yield")
    return " and ".join(words) or "good"
