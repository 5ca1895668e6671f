"""A film before the face is closed: where each pass runs, to scale, and what spoils the face."""

from __future__ import annotations

import numpy as np
from matplotlib.patches import Circle, PathPatch, Polygon
from matplotlib.path import Path

from twoshaft.models.film import Hand, Pass, Work, line_mm
from twoshaft.plots import style
from twoshaft.plots.figure import Picture, label, new_axes

_INCHES = (8.0, 5.6)
_LOOKS = {
    Hand.FILM: (style.OKABE_ITO["sky"], 0.6),
    Hand.BEAD: (style.OKABE_ITO["blue"], 1.0),
    Hand.WIPE: (style.PAPER, 1.0),
}


def laid_map(work: Work, passes: tuple[Pass, ...], title: str) -> Picture:
    """Map of the passes on a face; it says nothing about whether they seal.

    Parameters
    ----------
    work : Work
    passes : tuple of Pass
    title : str
        What the picture shows.
    """
    face = work.face
    axes = new_axes(title, "x [mm]", "y [mm]", inches=_INCHES)
    outline = np.asarray(face.outline)
    axes.set_xlim(outline[:, 0].min() - 8, outline[:, 0].max() + 8)
    axes.set_ylim(outline[:, 1].min() - 8, outline[:, 1].max() + 8)
    axes.set_aspect("equal")
    loops = [face.outline, *(cavity.outline for cavity in face.cavities), *face.islands]
    land = Path.make_compound_path(*(Path([*loop, loop[0]], closed=True) for loop in loops))
    clip = PathPatch(land, fill=False, ec=style.INK, lw=1.6, zorder=4)
    axes.add_patch(clip)
    for done in passes:
        colour, alpha = _LOOKS[done.hand]
        wide = {Hand.FILM: face.film_width_mm, Hand.BEAD: done.size_mm}.get(
            done.hand, 2 * face.film_width_mm
        )
        band = Polygon(_band(line_mm(face, done), wide), fc=colour, alpha=alpha, ec="none")
        axes.add_patch(band)
    for spot in work.spots:
        line = np.asarray(spot.points)
        hatch = "////" if spot.what == "oil" else "xxxx"
        axes.add_patch(
            Polygon(_band(line, spot.width_mm), fc="none", ec=style.INK, hatch=hatch, zorder=5)
        )
        _inwards(axes, spot.what, line.mean(axis=0), outline.mean(axis=0), 45)
    for hole in face.holes:
        at, radius = (hole.x_mm, hole.y_mm), hole.diameter_mm / 2
        ground = style.INK if hole.blind else style.PAPER
        axes.add_patch(Circle(at, radius, fc=ground, ec=style.INK, zorder=6))
        _inwards(axes, hole.id.split("-")[-1], at, outline.mean(axis=0), 24)
    for guide in face.guides:
        at = (guide.x_mm, guide.y_mm)
        axes.plot(*at, "P", color=style.INK, ms=8)
        axes.add_patch(Circle(at, guide.reach_mm, fill=False, ls=(0, (4, 3)), ec=style.INK))
        _inwards(axes, guide.name, at, outline.mean(axis=0), 70)
    words = [f"{title}. Seen from the side that is coated, to scale."]
    words += [f"Pass {n}: {done.entry}." for n, done in enumerate(passes, 1)]
    words += [f"There is {spot.what} across the face." for spot in work.spots]
    return Picture(axes.figure, " ".join(words))


def _band(line: np.ndarray, wide: float) -> np.ndarray:
    """Outline of a line with a width."""
    along = np.gradient(line, axis=0)
    along /= np.maximum(np.hypot(*along.T), 1e-9)[:, None]
    across = np.column_stack([-along[:, 1], along[:, 0]]) * wide / 2
    return np.vstack([line + across, (line - across)[::-1]])


def _inwards(axes, text: str, at, middle, points: float) -> None:
    way = np.subtract(middle, at)
    shift = tuple(points * way / max(float(np.hypot(*way)), 1e-9))
    label(axes, text, tuple(at), shift, ha="center", va="center", zorder=7)
