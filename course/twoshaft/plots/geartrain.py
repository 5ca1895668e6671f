"""The gear train: ratios, and what counting turns can tell."""

from __future__ import annotations

from itertools import pairwise

import numpy as np

from twoshaft.models.geartrain import (
    count_turns,
    gap_after_wear,
    ratio,
    tells_apart,
    wear_from_gap,
)
from twoshaft.models.geartrain.turning import Counted
from twoshaft.plots import style
from twoshaft.plots.figure import Picture, label, legend, new_axes
from twoshaft.units.quantities import Q
from twoshaft.units.sections.geartrain import GearTrain, Synchroniser

_SMALL = style.SMALL_PX * 0.72


def ratio_bars(train: GearTrain) -> Picture:
    """Turns of the input for one turn of the wheels, gear by gear.

    Parameters
    ----------
    train : GearTrain
    """
    ratios = {gear: ratio(train, gear.id) for gear in train.gears}
    forward = {gear: value for gear, value in ratios.items() if not gear.reverse}
    lowest, highest = max(forward, key=_size(forward)), min(forward, key=_size(forward))
    spread = float(abs(forward[lowest] / forward[highest]))
    title = (
        f"{lowest.name} turns the input {float(abs(forward[lowest])):.1f} times for one turn of "
        f"the wheels, {highest.name.lower()} {float(abs(forward[highest])):.1f} times: "
        f"{spread:.1f} to one between them."
    )
    axes = new_axes(title, "input turns for one turn of the wheels, with the final drive", "")
    ahead = next(iter(forward.values())) > 0
    for row, value in enumerate(ratios.values()):
        other = (value > 0) != ahead
        size = float(abs(value))
        axes.barh(
            row, size, 0.62, color=style.OKABE_ITO["orange" if other else "sky"],
            edgecolor=style.INK, hatch="////" if other else "",
        )  # fmt: skip
        way = ", wheels turn the other way" if other else ""
        axes.annotate(
            f"{size:.2f}{way}", (size, row), xytext=(6, 0), textcoords="offset points",
            va="center", color=style.INK, size=_SMALL,
        )  # fmt: skip
    axes.set_yticks(range(len(ratios)), [gear.name for gear in ratios])
    axes.invert_yaxis()
    axes.set_xlim(0, max(float(abs(value)) for value in ratios.values()) * 1.4)
    said = "; ".join(
        f"{gear.name} {float(abs(value)):.2f}{' the other way' if (value > 0) != ahead else ''}"
        for gear, value in ratios.items()
    )
    return Picture(axes.figure, f"{title} {said}.")


def count_by_gear(train: GearTrain, output_turns: int, counted: Counted) -> Picture:
    """What is counted for some turns of the wheels, with the doubt of a count each side.

    Parameters
    ----------
    train : GearTrain
    output_turns : int
        Turns of the output that is counted, or the average of both [turns].
    counted : {"one output, the other held", "both outputs, averaged"}
    """
    step = train.least_count_turns
    gears = list(train.gears)
    counts = [count_turns(train, gear.id, output_turns, counted) for gear in gears]
    order = sorted(range(len(gears)), key=lambda k: abs(counts[k].exact))
    gaps = [
        (float(abs(counts[b].exact)) - float(abs(counts[a].exact)), a, b)
        for a, b in pairwise(order)
        if counts[a].same_way == counts[b].same_way
    ]
    gap, a, b = min(gaps)
    need = tells_apart(train, gears[a].id, gears[b].id, counted)
    said = "tells them apart" if output_turns >= need else "can mix them up"
    turns = "turn" if output_turns == 1 else "turns"
    title = (
        f"{gears[a].name} and {gears[b].name.lower()} lie closest: {gap:.2f} input turns for "
        f"{output_turns} {turns} of the wheels, and a count to {step:g} {said}."
    )
    how = "one wheel, the other held" if counted.startswith("one") else "average of both wheels"
    axes = new_axes(title, f"input turns for {output_turns} {turns} of the wheels ({how})", "")
    for row, count in enumerate(counts):
        seen = abs(count.seen)
        axes.barh(
            row, step, 0.5, left=seen - step / 2, color=style.OKABE_ITO["yellow"],
            edgecolor=style.INK, label="a count may be off by this much",
        )  # fmt: skip
        mark = "o" if count.same_way else "<"
        axes.plot(
            seen, row, mark, color=style.PAPER, mec=style.INK, mew=1.8, ms=10,
            label={"o": "counted, same way as the input", "<": "counted, the other way"}[mark],
        )  # fmt: skip
        axes.annotate(
            f"{seen:g}{'' if count.same_way else ', the other way'}", (seen + step, row),
            xytext=(8, 0), textcoords="offset points", va="center", color=style.INK, size=_SMALL,
        )  # fmt: skip
    axes.set_yticks(range(len(gears)), [gear.name for gear in gears])
    axes.invert_yaxis()
    axes.set_xlim(0, max(abs(count.seen) for count in counts) * 1.35)
    handles, names = axes.get_legend_handles_labels()
    once = dict(zip(names, handles, strict=True))
    legend(axes, handles=list(once.values()), labels=list(once), loc="upper center",
           bbox_to_anchor=(0.45, -0.12), ncols=3)  # fmt: skip
    words = "; ".join(
        f"{gear.name} {abs(count.seen):g}{'' if count.same_way else ' the other way'}"
        for gear, count in zip(gears, counts, strict=True)
    )
    return Picture(axes.figure, f"{title} Counted: {words}.")


def gap_by_wear(synchroniser: Synchroniser) -> Picture:
    """Ring gap left as a cone wears, down to the least one and beyond.

    Parameters
    ----------
    synchroniser : Synchroniser
    """
    angle = Q(synchroniser.half_angle_deg, "degree")
    new, least = (
        Q(mm, "mm") for mm in (synchroniser.ring_gap_new_mm, synchroniser.ring_gap_least_mm)
    )
    end = wear_from_gap(new, least, angle)
    wears = [Q(x, "mm") for x in np.linspace(0, 1.4 * end.m_as("mm"), 29)]
    gaps = [gap_after_wear(new, wear, angle).m_as("mm") for wear in wears]
    title = (
        f"{end.m_as('mm'):.2f} mm of wear on the cone takes {(new - least).m_as('mm'):.2f} mm of "
        f"ring gap, and the ring is done."
    )
    axes = new_axes(title, "wear of the cone, square to its face [mm]", "ring gap [mm]")
    axes.plot([w.m_as("mm") for w in wears], gaps, color=style.OKABE_ITO["blue"], lw=2.5)
    axes.axhline(least.m_as("mm"), color=style.INK, lw=1.4, ls=(0, (6, 4)))
    label(axes, "least gap", (0.0, least.m_as("mm")), (30, -22))
    at = (end.m_as("mm"), least.m_as("mm"))
    axes.plot(*at, "o", ms=9, color=style.PAPER, mec=style.INK, mew=1.8)
    label(axes, "renew the ring from here", at, (-60, 70))
    axes.set_ylim(bottom=0)
    axes.set_xlim(left=0)
    return Picture(axes.figure, f"{title} New gap {new.m_as('mm'):g} mm, least {at[1]:g} mm.")


def _size(ratios):
    return lambda gear: abs(ratios[gear])
