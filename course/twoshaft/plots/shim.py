"""The shim: what each one on the shelf would give, and the one that is taken."""

from __future__ import annotations

import numpy as np

from twoshaft.models.shim import Choice, Stack, choose_for, stack_budget, target_interference
from twoshaft.plots import style
from twoshaft.plots.figure import Picture, label, legend, new_axes
from twoshaft.units.quantities import Q
from twoshaft.units.sections.bearings import Bearings, Support


def shim_choice(
    support: Support, bearings: Bearings, measured: dict[str, Q] | None = None
) -> Picture:
    """Setting against shim thickness, with target, doubt and the choice.

    Parameters
    ----------
    support : Support
    bearings : Bearings
        The section that holds the support's shim set.
    measured : dict of str to pint.Quantity, optional
        Measured lengths [mm] by term id; nominal where absent.
    """
    stack = Stack.from_support(support, measured)
    low, high = target_interference(support)
    thin, thick = stack.window(low, high)
    doubt_mm = stack_budget(support, measured).expanded()
    shelf = bearings.shim_set_by_id(support.shim_set)
    choice = choose_for(support, bearings, measured)
    setting_mm = stack.interference(choice.total).m_as("mm")

    title = _finding(choice, setting_mm)
    axes = new_axes(title, "shim thickness [mm]", "setting [mm]: preload above 0, end play below")
    margin = 2.5 * (thick - thin)
    x = np.array([thin - margin, thick + margin])
    axes.axhspan(
        low.m_as("mm"),
        high.m_as("mm"),
        facecolor=style.OKABE_ITO["green"],
        alpha=0.18,
        label=f"target, {low.m_as('mm'):.3f} to {high.m_as('mm'):.3f} mm".replace("-", "−"),
    )
    for edge, sign in ((low, 1), (high, -1)):
        axes.axhline(
            edge.m_as("mm") + sign * doubt_mm,
            color=style.OKABE_ITO["green"],
            ls=(0, (5, 3)),
            lw=style.THIN_PX,
            label=f"target less the uncertainty of {doubt_mm:.3f} mm" if sign > 0 else None,
        )
    axes.axhline(0, color=style.INK, lw=style.THIN_PX)
    axes.plot(x, stack.interference(Q(np.maximum(x, 0), "mm")).m_as("mm"), color=style.INK, lw=1)
    near = [t for t in _totals(shelf) if x[0] <= t <= x[1]]
    axes.plot(
        near,
        stack.interference(Q(near, "mm")).m_as("mm"),
        "o",
        mfc=style.PAPER,
        mec=style.INK,
        ms=6,
        label="on the shelf" + (" (one or two)" if shelf.at_most == 2 else ""),
    )
    total_mm = choice.total.m_as("mm")
    axes.plot(
        total_mm, setting_mm, "D", color=style.OKABE_ITO["blue"], ms=11, zorder=4, label="taken"
    )
    rises = stack.shim_sign > 0
    to, side = ((-40, 45), "right") if rises else ((40, 45), "left")
    label(axes, f"{total_mm:.3f} mm", (total_mm, setting_mm), to, ha=side)
    axes.set_xlim(*x)
    legend(axes, loc="lower right" if rises else "lower left")
    way = "tightens" if rises else "loosens"
    alt = f"{title} Setting against shim thickness, {support.name}: a thicker shim {way}. "
    return Picture(axes.figure, alt + choice.reason[0].upper() + choice.reason[1:] + ".")


def _finding(choice: Choice, setting_mm: float) -> str:
    shims = " and ".join(f"{t:.3f} mm" for t in choice.shims_mm)
    what = "preload" if setting_mm >= 0 else "end play"
    verdict = {
        "safe": "inside the target with room for the uncertainty",
        "meets": "inside the target, but not by more than the uncertainty",
        "misses": "outside the target",
    }[choice.verdict]
    verb = "gives" if len(choice.shims_mm) == 1 else "together give"
    return f"{shims} {verb} {abs(setting_mm):.3f} mm of {what}: {verdict}."


def _totals(shelf) -> list[float]:
    sizes = np.array(shelf.thicknesses_mm)
    totals = set(np.round(sizes, 4))
    if shelf.at_most == 2:
        totals |= set(np.round(np.add.outer(sizes, sizes).ravel(), 4))
    return sorted(float(total) for total in totals)
