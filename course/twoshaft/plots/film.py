"""The closed face from above: what seals, what does not and why, and the way the oil takes."""

from __future__ import annotations

import numpy as np
from matplotlib.lines import Line2D
from matplotlib.patches import Circle, Patch

from twoshaft.models.film import Kind, Seal, State, half_round_radius
from twoshaft.plots import style
from twoshaft.plots.figure import Picture, label, legend, new_axes

_LOOKS = {
    State.SEALED: ("seals", style.OKABE_ITO["sky"], ""),
    State.EMPTY: ("not filled", style.PAPER, "...."),
    State.OILY: ("oily", style.OKABE_ITO["orange"], "////"),
    State.DIRTY: ("dirty", style.OKABE_ITO["purple"], "xxxx"),
    State.SKINNED: ("skinned or too old", style.OKABE_ITO["yellow"], "----"),
    State.AIR: ("air shut in", style.PAPER, "oooo"),
    State.TOO_WIDE: ("gap too wide", style.PAPER, "++++"),
}
_NAMED_LEAKS = 4


def seal_map(seal: Seal) -> Picture:
    """Map of a closed face.

    Parameters
    ----------
    seal : Seal
    """
    land = seal.film.land
    title = seal.sentence[0].upper() + seal.sentence[1:] + "."
    axes = new_axes(title, "x [mm]", "y [mm]", inches=(9.0, 6.6))
    x, y = land.x_m * 1e3, land.y_m * 1e3
    centre = (x[0] + x[-1]) / 2, (y[0] + y[-1]) / 2
    handles = []
    for state, (words, colour, hatch) in _LOOKS.items():
        cells = seal.state == state
        if cells.any():
            axes.contourf(
                x, y, cells.astype(float), levels=[0.5, 1.5], colors=[colour], hatches=[hatch]
            )
            share = cells.sum() / land.is_face.sum()
            text = (
                f"{words}, {share:.0%} of the face" if share >= 0.005 else f"{words}, a few spots"
            )
            handles.append(Patch(facecolor=colour, edgecolor=style.INK, hatch=hatch, label=text))
    axes.contour(x, y, land.is_face.astype(float), levels=[0.5], colors=style.INK, linewidths=1.2)
    _lumps(axes, seal)
    for hole in land.face.holes:
        axes.add_patch(
            Circle(
                (hole.x_mm, hole.y_mm),
                hole.diameter_mm / 2,
                facecolor=style.PAPER,
                edgecolor=style.INK,
                lw=2.2 if hole.open else 1.0,
            )
        )
    for near in seal.guides:
        guide = near.guide
        axes.plot(guide.x_mm, guide.y_mm, "P", color=style.INK, ms=8)
        axes.add_patch(
            Circle(
                (guide.x_mm, guide.y_mm), guide.reach_mm, fill=False, ls=(0, (4, 3)), ec=style.INK
            )
        )
        state = "too much" if near.endangered else "safe"
        words = f"{guide.name}:\nlump {near.lump_mm:.1f} mm, {state}"
        _label_inwards(axes, words, (guide.x_mm, guide.y_mm), centre, 75)
    for number, leak in enumerate(seal.leaks, start=1):
        axes.plot(*leak.points_mm.T, color=style.OKABE_ITO["vermilion"], lw=3.5, zorder=5)
        axes.plot(*leak.points_mm[-1], "v", color=style.INK, ms=11, zorder=6)
        if number <= _NAMED_LEAKS:
            _label_inwards(axes, f"way out {number}", tuple(leak.points_mm[0]), centre, 40)
    if seal.leaks:
        handles.append(
            Line2D(
                [],
                [],
                color=style.OKABE_ITO["vermilion"],
                lw=3.5,
                marker="v",
                mfc=style.INK,
                mec=style.INK,
                ms=9,
                label=f"way of the oil ({len(seal.leaks)})",
            )
        )
    axes.set_aspect("equal")
    legend(axes, handles=handles, loc="center", ncols=1)
    return Picture(axes.figure, _words(seal, title))


def _label_inwards(axes, text: str, at: tuple, centre: tuple, points: float) -> None:
    """Label a point on the side of the face's middle, where there is room."""
    way = np.subtract(centre, at)
    label(axes, text, at, tuple(points * way / max(np.hypot(*way), 1e-9)), ha="center", va="center")


def _lumps(axes, seal: Seal) -> None:
    """Surplus beside the face, drawn as dots the size of its lumps."""
    land = seal.film.land
    beside = np.where((land.kind == Kind.OIL) | (land.kind == Kind.OUTSIDE), seal.over_m, 0.0)
    rows, columns = np.nonzero(beside)
    if rows.size:
        lumps_mm = half_round_radius(beside[rows, columns] * land.pitch_m) * 1e3
        axes.scatter(
            land.x_m[columns] * 1e3,
            land.y_m[rows] * 1e3,
            s=(4 * lumps_mm) ** 2,
            color=style.OKABE_ITO["blue"],
            alpha=0.35,
            lw=0,
            zorder=3,
        )


def _words(seal: Seal, title: str) -> str:
    land = seal.film.land
    parts = [f"{title} Map of {land.face.name}, {seal.sealed_share:.0%} of it sealed."]
    for number, leak in enumerate(seal.leaks[:_NAMED_LEAKS], start=1):
        (x0, y0), (x1, y1) = leak.points_mm[0], leak.points_mm[-1]
        through = f", through hole {', '.join(leak.through)}" if leak.through else ""
        parts.append(
            f"Way {number} goes from x {x0:.0f}, y {y0:.0f} to x {x1:.0f}, y {y1:.0f} mm{through}."
        )
    for pocket in seal.pockets[:_NAMED_LEAKS]:
        x, y = pocket.centre_mm
        parts.append(f"Air is shut in at x {x:.0f}, y {y:.0f} mm, {pocket.area_mm2:.0f} mm².")
    for near in seal.guides:
        state = "too much" if near.endangered else "safe"
        parts.append(
            f"Near the {near.guide.name} the largest lump is {near.lump_mm:.1f} mm: {state}."
        )
    return " ".join(parts)
