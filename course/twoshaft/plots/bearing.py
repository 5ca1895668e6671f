"""Opposed bearings: what heat does to their preload, and how long they last at each setting."""

from __future__ import annotations

import numpy as np

from twoshaft.models.bearing import LifeCurve, Pair, Warm
from twoshaft.models.bearing.heat import support_change
from twoshaft.plots import style
from twoshaft.plots.figure import Picture, label, legend, new_axes
from twoshaft.units.quantities import Q
from twoshaft.units.sections.bearings import Bearings, Support


def preload_when_warm(
    support: Support, bearings: Bearings, cold: Q, warm: Warm | None = None
) -> Picture:
    """Preload against setting, with the cold and the warm setting marked.

    Parameters
    ----------
    support : Support
    bearings : Bearings
    cold : pint.Quantity
        Setting at the bench [mm]; end play is below zero.
    warm : Warm, optional
        Rise of each part; the support's running temperature if absent.
    """
    pair = Pair.from_support(support, bearings)
    change = support_change(support, bearings, warm)
    points = {"at the bench": cold.to("mm"), "warm": (cold + change.total).to("mm")}
    forces = {name: pair.preload(setting).m_as("kN") for name, setting in points.items()}
    states = [_state(points[name], forces[name]) for name in points]
    title = (
        f"{support.name}: warm, {change.sentence}; {states[0]} at the bench becomes {states[1]}."
    )
    axes = new_axes(
        title, "setting [mm]: end play below 0, preload above", "preload of the pair [kN]"
    )
    values = [setting.magnitude for setting in points.values()]
    reach = max(0.05, np.ptp(values))
    x = np.linspace(min(*values, 0) - 0.3 * reach, max(*values, 0) + 0.3 * reach, 240)
    axes.plot(x, pair.preload(Q(x, "mm")).m_as("kN"), color=style.INK, lw=style.THICK_PX)
    axes.axvline(0, color=style.INK, lw=style.THIN_PX, ls=(0, (2, 3)))
    marks = {
        "at the bench": ("s", style.OKABE_ITO["blue"], (-25, 22), "right"),
        "warm": ("o", style.OKABE_ITO["vermilion"], (35, 10), "left"),
    }
    for name, (shape, colour, to, side) in marks.items():
        at = (points[name].magnitude, forces[name])
        axes.plot(*at, shape, color=colour, ms=11, zorder=4, label=name)
        label(axes, f"{name}: {at[0]:+.3f} mm, {at[1]:.2f} kN", at, to, ha=side)
    top = max(forces.values())
    axes.annotate(
        "",
        (values[1], -0.06 * top),
        xytext=(values[0], -0.06 * top),
        arrowprops={"arrowstyle": "->", "color": style.INK, "lw": style.THICK_PX},
    )
    axes.set_ylim(bottom=-0.12 * top)
    legend(axes, loc="upper left")
    parts = (
        f"The case changes it by {change.case_um:+.0f} µm, the shaft by {change.shaft_um:+.0f}, "
        f"the outer raceways by {change.outer_raceways_um:+.0f}, the inner raceways by "
        f"{change.inner_raceways_um:+.0f}, the rollers by {change.rollers_um:+.0f}."
    )
    return Picture(axes.figure, f"{title} {parts}")


def life_over_setting(curve: LifeCurve, name: str = "The pair") -> Picture:
    """Life of a pair against its setting.

    Parameters
    ----------
    curve : LifeCurve
    name : str
        What the pair is called.
    """
    best = curve.best_mm
    ends = [curve.both_h[k] / curve.both_h.max() for k in (0, -1)]
    what = "preload" if best >= 0 else "end play"
    title = (
        f"{name} lasts longest with {abs(best):.3f} mm of {what}; "
        "more preload soon costs most of its life."
    )
    axes = new_axes(
        title, "setting [mm]: end play below 0, preload above", "life L10 [h], log scale"
    )
    x = curve.interference_mm
    axes.set_yscale("log")
    axes.plot(x, curve.both_h, color=style.INK, lw=2 * style.THICK_PX, label="both bearings")
    axes.plot(x, curve.left_h, color=style.OKABE_ITO["blue"], ls=(0, (6, 2)), label="left")
    axes.plot(
        x, curve.right_h, color=style.OKABE_ITO["vermilion"], ls=(0, (1.5, 1.5)), label="right"
    )
    if curve.catalogue_h is not None:
        axes.plot(
            x,
            curve.catalogue_h,
            color=style.QUIET,
            ls=(0, (6, 2, 1.5, 2)),
            label="both, by the catalogue's e and Y",
        )
    axes.axvline(0, color=style.INK, lw=style.THIN_PX, ls=(0, (2, 3)))
    at = (best, curve.both_h.max())
    axes.plot(*at, "D", color=style.OKABE_ITO["green"], ms=10, zorder=4)
    label(axes, f"best: {best:+.3f} mm, {_hours(at[1])} h", at, (45, 30), ha="left")
    axes.set_ylim(top=2.5 * max(at[1], curve.left_h.max(), curve.right_h.max()))
    legend(axes, loc="lower left")
    alt = (
        f"{title} Life at the ends of the picture: {ends[0]:.0%} of the best at {x[0]:+.3f} mm, "
        f"{ends[1]:.0%} at {x[-1]:+.3f} mm."
    )
    return Picture(axes.figure, alt)


def _hours(hours: float) -> str:
    """Three figures are as many as a life is worth; a narrow space parts the thousands."""
    return f"{float(f'{hours:.3g}'):,.0f}".replace(",", "\u202f")


def _state(setting: Q, force_kn: float) -> str:
    if setting.magnitude > 0:
        return f"a preload of {force_kn:.1f} kN"
    return f"an end play of {abs(setting.m_as('mm')):.3f} mm"
