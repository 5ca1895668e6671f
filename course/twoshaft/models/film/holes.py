"""Bolt holes and a bead: at which bolts the oil finds a way out.

The bead seals the strip that it is pressed to. A hole is reached when the oil side of the face, or
the oil itself, touches it; from there the oil gets out if the hole leads out under the bolt's head,
or if the outer side of the face touches the hole too.
"""

from __future__ import annotations

from collections.abc import Mapping

import numpy as np

from twoshaft.models.border import Range, border
from twoshaft.models.film.land import Kind, Land, grown
from twoshaft.models.film.passes import Side, bead_lines_mm

_EIGHT = np.ones((3, 3), dtype=bool)


@border(width=Range("width of the pressed bead", "mm", 1.0, 10.0, "a bead"))
def leaking_holes(land: Land, sides: Mapping[str, Side], width_mm: float) -> tuple[str, ...]:
    """Ids of the bolt holes through which oil gets out, in the face's order.

    Parameters
    ----------
    land : Land
    sides : mapping of str to Side
        On which side the bead passes each hole, as for `bead_lines_mm`.
    width : pint.Quantity
        Of the strip that the bead is pressed to, 1 to 10 mm.

    Examples
    --------
    >>> from twoshaft.models.film import Land
    >>> face = unit.faces.face_by_id("end-cover")
    >>> land = Land.of(face, (120, 90))
    >>> round_inside = dict.fromkeys([hole.id for hole in face.holes], Side.INSIDE)
    >>> leaking_holes(land, round_inside, Q(4, "mm")), leaking_holes(land, {}, Q(4, "mm"))
    ((), ('bolt-1', 'bolt-2', 'bolt-3', 'bolt-4', 'bolt-5', 'bolt-6', 'bolt-7', 'bolt-8'))
    """
    from scipy import ndimage

    half_m = width_mm / 2e3
    sealed = np.zeros(land.kind.shape, dtype=bool)
    for line in bead_lines_mm(land.face, sides):
        sealed |= land.distance_m(line / 1e3, half_m) <= half_m
    region, count = ndimage.label(land.is_face & ~sealed, structure=_EIGHT)

    def reached(start: np.ndarray) -> np.ndarray:
        """Cells that a fluid from some cells gets to, and those beside them."""
        wet = np.zeros(count + 1, dtype=bool)
        wet[region[grown(start)]] = True
        wet[0] = False
        return grown(start | wet[region])

    from_oil, from_out = (
        set(np.unique(land.hole[reached(land.kind == kind)])) for kind in (Kind.OIL, Kind.OUTSIDE)
    )
    return tuple(
        hole.id
        for number, hole in enumerate(land.face.holes)
        if number in from_oil and (hole.open or number in from_out)
    )
