"""Fits: the force or the heat that puts two parts together."""

from __future__ import annotations

import numpy as np

from twoshaft.models.fit import ROOM_C, Pressed, press_force
from twoshaft.plots import style
from twoshaft.plots.figure import Picture, label, legend, new_axes
from twoshaft.units.quantities import Q


def play_when_warm(pressed: Pressed) -> Picture:
    """Play of the seat against the temperature of the outer part, loosest to tightest fit.

    Parameters
    ----------
    pressed : Pressed
        A fit whose outer part is warmed.
    """
    entry, warming = pressed.entry, pressed.warming()
    if warming is None:
        raise ValueError(f"{entry.id} is pressed cold")
    can = "it may be warmed to" if warming.possible else "but it may only be warmed to"
    # no line break before a unit
    needed, allowed = f"{warming.heat_to_c:.0f}\u00a0°C", f"{warming.limit_c:g}\u00a0°C"
    title = f"{entry.name}: the tightest fit drops in by hand at {needed}, {can} {allowed}."
    axes = new_axes(title, "temperature of the outer part [°C]", "play [µm]: below 0 it grips")
    top = max(warming.limit_c, warming.heat_to_c) * 1.12
    x = np.linspace(ROOM_C, top, 100)
    grown = pressed.pair.hub.expansion_per_k * entry.size_mm * 1e3 * (x - ROOM_C)
    tight, loose = grown - pressed.fit.most_um, grown - pressed.fit.least_um
    axes.fill_between(x, tight, loose, color=style.OKABE_ITO["sky"], alpha=0.35, lw=0)
    axes.plot(x, tight, color=style.INK, lw=style.THICK_PX, label="tightest fit")
    axes.plot(x, loose, color=style.INK, lw=style.THICK_PX, ls=(0, (6, 3)), label="loosest fit")
    axes.axhline(0, color=style.INK, lw=style.THIN_PX)
    axes.axvline(
        warming.limit_c,
        color=style.OKABE_ITO["vermilion"],
        lw=2 * style.THICK_PX,
        ls=(0, (2, 2)),
        label=f"hottest allowed: {warming.limit_c:g} °C",
    )
    at_free = (warming.free_c, 0.0)
    play = np.interp(warming.heat_to_c, x, tight)
    axes.plot(*at_free, "o", color=style.OKABE_ITO["orange"], mec=style.INK, ms=10, zorder=4)
    axes.plot(
        warming.heat_to_c, play, "D", color=style.OKABE_ITO["green"], mec=style.INK, ms=10, zorder=4
    )
    label(axes, f"just free: {warming.free_c:.0f} °C", at_free, (14, -34))
    label(
        axes,
        f"warm to {warming.heat_to_c:.0f} °C:\n{play:.0f} µm of play",
        (warming.heat_to_c, play),
        (14, -46),
    )
    legend(axes, loc="upper left")
    alt = (
        f"{title} The tightest fit grips by {pressed.fit.most_um:g} µm at {ROOM_C:g} °C, is just "
        f"free at {warming.free_c:.0f} °C and has {play:.0f} µm of play when warm enough to handle."
    )
    return Picture(axes.figure, alt)


def force_when_cold(pressed: Pressed) -> Picture:
    """Force to press the parts together cold, against interference, low to high friction.

    Parameters
    ----------
    pressed : Pressed
    """
    entry, length = pressed.entry, Q(pressed.entry.length_mm, "mm")
    least, most = pressed.least.m_as("um"), pressed.most.m_as("um")
    x = Q(np.linspace(0, most * 1.15, 60), "um")
    low, high = (press_force(x, pressed.pair, length, mu).m_as("kN") for mu in entry.friction)
    range_low, range_high = (force.m_as("kN") for force in pressed.force_range())
    title = (
        f"{entry.name}: pressing it cold takes {range_low:.1f} to {range_high:.1f} kN, "
        "depending on interference and friction."
    )
    axes = new_axes(title, "interference on the diameter [µm]", "force [kN]")
    um = x.magnitude
    axes.fill_between(um, low, high, color=style.OKABE_ITO["sky"], alpha=0.35, lw=0)
    friction_low, friction_high = entry.friction
    axes.plot(um, high, color=style.INK, lw=style.THICK_PX, label=f"friction {friction_high:g}")
    axes.plot(
        um,
        low,
        color=style.INK,
        lw=style.THICK_PX,
        ls=(0, (6, 3)),
        label=f"friction {friction_low:g}",
    )
    axes.axvspan(least, most, ymax=0.03, color=style.OKABE_ITO["orange"], lw=0)
    label(axes, f"this fit: {least:g} to {most:g} µm", ((least + most) / 2, 0), (-30, 30))
    axes.plot(most, range_high, "D", color=style.OKABE_ITO["vermilion"], mec=style.INK, ms=10)
    label(axes, f"hardest: {range_high:.1f} kN", (most, range_high), (-130, 0))
    axes.set_ylim(bottom=0)
    legend(axes, loc="upper left")
    press = "" if entry.press_kn is None else f" The press gives {entry.press_kn:g} kN."
    alt = f"{title} The interference lies between {least:g} and {most:g} µm.{press}"
    return Picture(axes.figure, alt)
