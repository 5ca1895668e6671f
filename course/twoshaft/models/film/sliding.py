"""A face that is slid into place on its wet film instead of being set straight down.

Paste that stands as high as the gap of the loose faces is in touch with both. It sticks to both, so
across the gap it moves from not at all to as far as the moved face (Couette flow, whatever the
viscosity): on average by half the slide. What is lower than the gap stays where it lies. Paste that
is dragged over an edge hangs there as a lump, and the strip that it came from is bare. Volume is
conserved: every cell loses what the next one gains. That oil or dirt is smeared along is left out.
"""

from __future__ import annotations

import math
from dataclasses import replace

import numpy as np

from twoshaft.models.border import Range, border
from twoshaft.models.film.laying import Film
from twoshaft.units.quantities import Q

MOST_MM = 20.0


@border(way=Range("way of the slide", "mm", -MOST_MM, MOST_MM, "a face on its film"))
def slide(film: Film, way_mm: np.ndarray) -> Film:
    """The film after the other face was slid over it into its place.

    Parameters
    ----------
    film : Film
        As laid.
    way : pint.Quantity
        How far the face was slid, along x and y, shape (2,), -20 to 20 mm each.

    Returns
    -------
    Film
        ``beside_m`` holds what was dragged over the edges.

    Examples
    --------
    >>> from twoshaft.models.film import Film, Land, good_strokes
    >>> face = unit.faces.face_by_id("end-cover")
    >>> laid = Film.bare(Land.of(face, (120, 90))).lay(*good_strokes(face))
    >>> slid = slide(laid, Q([5.0, 0.0], "mm"))
    >>> bool(slid.beside_m.max() > 0)
    True
    """
    land = film.land
    loose_m = land.gap_m({hole.id: Q(0.0, "N") for hole in land.face.holes})
    touched = film.thickness_m > loose_m
    moving = np.where(touched, film.thickness_m, 0.0)
    beside = film.beside_m if film.beside_m is not None else np.zeros(moving.shape)
    cells = np.asarray(way_mm / 1e3) / 2 / land.pitch_m
    count = max(1, math.ceil(np.abs(cells).max()))
    for _ in range(count):
        for axis, part in ((1, cells[0] / count), (0, cells[1] / count)):
            moving = _shifted(moving, axis, float(part))
            beside = beside + np.where(land.is_face, 0.0, moving)
            moving = np.where(land.is_face, moving, 0.0)
    after = np.where(touched, 0.0, film.thickness_m) + moving
    return replace(film, thickness_m=after, minute=_minutes(film, after), beside_m=beside)


def _shifted(moving: np.ndarray, axis: int, part: float) -> np.ndarray:
    """Each cell gives a part of what moves to the next one; the grid's rim takes what arrives."""
    given = moving * abs(part)
    step = 1 if part > 0 else -1
    return moving - given + np.roll(given, step, axis)


def _minutes(film: Film, after: np.ndarray) -> np.ndarray:
    """Age of what lies there now: newly coated cells take it from the nearest coated before."""
    coated = film.thickness_m > 0
    if not coated.any():
        return film.minute
    from scipy import ndimage

    row, column = ndimage.distance_transform_edt(
        ~coated, return_distances=False, return_indices=True
    )
    return np.where(after > 0, film.minute[row, column], -np.inf)
