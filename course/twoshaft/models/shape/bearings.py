"""Sections of rolling bearings: rings cut, rolling elements whole.

What a bearing's catalogue does not give (widths of single rings, ribs) is usual proportion.
"""

from __future__ import annotations

import math

from twoshaft.models.shape.pieces import Piece, Point, Role, both_sides, ring_pieces, turned_pieces
from twoshaft.units.sections.bearings import TaperBearing

CUP_WIDTH, CONE_WIDTH = 0.8, 0.95
_SHOULDER = (
    0.2  # height of a ball race's shoulder above the middle of the balls, in their diameters
)
_CIRCLE = 28  # corners of a drawn circle
_RIB_MM = 1.8


def taper_pieces(
    bearing: TaperBearing, at_mm: float, axis: float, large_end: str, ring: str
) -> list[Piece]:
    """Section of a taper roller bearing, or of one of its rings.

    Parameters
    ----------
    bearing : TaperBearing
    at_mm : float
        z of its front end [mm].
    axis : float
        Height of its axis [mm].
    large_end : str
        ``front`` or ``rear``: where the large ends of its rollers lie.
    ring : str
        ``both``, ``inner`` (with the rollers) or ``outer``.

    Examples
    --------
    >>> one = unit.bearings.type_by_id("side-taper")
    >>> outer = taper_pieces(one, 0.0, 0.0, "front", "outer")
    >>> max(height for piece in outer for _, height in piece.outline)
    33.0
    """
    stand, bore, outer = bearing.stand_mm, bearing.bore_mm / 2, bearing.outside_mm / 2
    alpha, half = (
        math.radians(bearing.contact_angle_deg),
        math.radians(bearing.roller_half_angle_deg),
    )
    tilt, slope = alpha - half, math.tan(alpha - 2 * half)
    middle, mean = (bore + outer) / 2, bearing.roller_diameter_mm / 2
    length = bearing.roller_length_mm

    def place(s: float, r: float) -> Point:
        """s counts from the back face of the inner ring, where the large ends are."""
        return (at_mm + s if large_end == "front" else at_mm + stand - s, r)

    def roller_corner(along: float, side: float) -> Point:
        thick = mean + along * math.tan(half)
        s = stand / 2 - along * math.cos(tilt) + side * thick * math.sin(tilt)
        return s, middle + along * math.sin(tilt) + side * thick * math.cos(tilt)

    pieces: list[Piece] = []
    if ring in ("both", "outer"):
        width = CUP_WIDTH * stand
        face = middle + mean / math.cos(tilt)
        track = [(s, face - math.tan(alpha) * (s - stand / 2)) for s in (stand - width, stand)]
        outside = [place(s, outer) for s in (stand - width, stand)]
        inside = [place(s, r) for s, r in track]
        pieces += turned_pieces(sorted(outside), sorted(inside), axis)
    if ring in ("both", "inner"):
        big, small = roller_corner(length / 2, -1), roller_corner(-length / 2, -1)
        rib = min(big[1] + 0.35 * bearing.roller_diameter_mm, outer - 1.0)
        width = CONE_WIDTH * stand
        low = small[1] - slope * (width - small[0]) * 0.4
        profile = [
            (0.0, rib), (big[0] - 0.3, rib), (big[0] - 0.3, big[1]), small,
            (small[0] + 0.3, small[1] + _RIB_MM * 0.4), (width, max(low, bore + 0.8)),
        ]  # fmt: skip
        inside_ring = [place(0.0, bore), place(width, bore)]
        outside_ring = [place(s, r) for s, r in profile]
        if large_end == "rear":
            outside_ring, inside_ring = outside_ring[::-1], inside_ring[::-1]
        pieces += turned_pieces(outside_ring, inside_ring, axis)
        corners = [
            roller_corner(length / 2, 1), roller_corner(-length / 2, 1),
            roller_corner(-length / 2, -1), roller_corner(length / 2, -1),
        ]  # fmt: skip
        pieces += [
            Piece(Role.WHOLE, side) for side in both_sides((place(s, r) for s, r in corners), axis)
        ]
        ends = [roller_corner(length * 0.62, 0), roller_corner(-length * 0.62, 0)]
        pieces += [
            Piece(Role.PITCH, side) for side in both_sides((place(s, r) for s, r in ends), axis)
        ]
    return pieces


def ball_pieces(
    bore_mm: float, outside_mm: float, width_mm: float, ball_mm: float, at_mm: float, axis: float
) -> list[Piece]:
    """Section of a ball bearing, by its diameters.

    Examples
    --------
    >>> pieces = ball_pieces(25, 62, 17, 11, 0.0, 0.0)
    >>> max(height for piece in pieces for _, height in piece.outline)
    31.0
    """
    middle, groove = (bore_mm + outside_mm) / 4, ball_mm / 2
    rings = _split_rings(bore_mm, outside_mm, width_mm, 0.30, at_mm, axis)
    centre = at_mm + width_mm / 2
    balls = [Piece(Role.WHOLE, circle((centre, side * middle + axis), groove)) for side in (-1, 1)]
    return rings + balls


def open_ball_pieces(
    bore_mm: float,
    outside_mm: float,
    stand_mm: float,
    ball_mm: float,
    at_mm: float,
    axis: float,
    large_end: str,
    ring: str,
) -> list[Piece]:
    """Section of one ring of a ball bearing that comes apart: each ring has one shoulder.

    Parameters
    ----------
    bore_mm, outside_mm, stand_mm, ball_mm : float
        Its diameters and its width over both rings [mm].
    at_mm : float
        z of its front end [mm].
    axis : float
        Height of its axis [mm].
    large_end : str
        ``front`` or ``rear``: the side on which the outer ring is open.
    ring : str
        ``inner`` (with the balls) or ``outer``.

    Examples
    --------
    >>> outer = open_ball_pieces(27, 57, 16, 8.7, 0.0, 0.0, "rear", "outer")
    >>> [round(z, 1) for z in sorted({z for piece in outer for z, _ in piece.outline})][::6]
    [0.0, 12.8]
    """
    middle, half, centre = (bore_mm + outside_mm) / 4, ball_mm / 2, stand_mm / 2
    side = 1 if ring == "outer" else -1
    deepest = math.acos(2 * _SHOULDER)
    track = [
        (centre + side * half * math.sin(turn), middle + side * half * math.cos(turn))
        for turn in (deepest * k / 4 for k in range(5))
    ]  # from the open side of the race up to its shoulder
    if ring == "outer":
        race = [((1 - CUP_WIDTH) * stand_mm, track[0][1]), *track, (stand_mm, track[-1][1])]
        plain = outside_mm / 2
    else:
        race = [(stand_mm, track[0][1]), *track, (0.0, track[-1][1])][::-1]
        plain = bore_mm / 2
    back = [(race[0][0], plain), (race[-1][0], plain)]
    if large_end == "front":
        race, back = ([(at_mm + s, r) for s, r in line] for line in (race, back))
    else:
        race, back = ([(at_mm + stand_mm - s, r) for s, r in line][::-1] for line in (race, back))
    if ring == "outer":
        return turned_pieces(back, race, axis)
    balls = [
        Piece(Role.WHOLE, circle((at_mm + centre, one * middle + axis), half)) for one in (-1, 1)
    ]
    return [*turned_pieces(race, back, axis), *balls]


def roller_pieces(
    bore_mm: float, outside_mm: float, width_mm: float, at_mm: float, axis: float, needles: bool
) -> list[Piece]:
    """Section of a bearing of cylindrical rollers or needles, by its diameters.

    Needles run between two thin shells; rollers between rings, the outer one with ribs.

    Examples
    --------
    >>> pieces = roller_pieces(25, 52, 15, 0.0, 0.0, needles=False)
    >>> min(height for piece in pieces for _, height in piece.outline)
    -26.0
    """
    share = 0.18 if needles else 0.27
    wall = share * (outside_mm - bore_mm) / 2
    rings = _split_rings(bore_mm, outside_mm, width_mm, share, at_mm, axis)
    low, high = bore_mm / 2 + wall, outside_mm / 2 - wall
    ends = at_mm + 0.14 * width_mm, at_mm + 0.86 * width_mm
    corners = [(ends[0], high), (ends[1], high), (ends[1], low), (ends[0], low)]
    middle = (low + high) / 2
    line = [(ends[0] - 1, middle), (ends[1] + 1, middle)]
    return [
        *rings,
        *(Piece(Role.WHOLE, side) for side in both_sides(corners, axis)),
        *(Piece(Role.PITCH, side) for side in both_sides(line, axis)),
    ]


def _split_rings(
    bore_mm: float, outside_mm: float, width_mm: float, share: float, at_mm: float, axis: float
) -> list[Piece]:
    """Inner and outer ring, each with its share of the height between bore and outside."""
    bore, outer = bore_mm / 2, outside_mm / 2
    wall, span = share * (outer - bore), (at_mm, at_mm + width_mm)
    return ring_pieces(span, outer - wall, outer, axis) + ring_pieces(span, bore, bore + wall, axis)


def circle(centre: Point, radius: float) -> tuple[Point, ...]:
    """A circle as a closed outline.

    Examples
    --------
    >>> len(circle((0, 0), 1))
    28
    """
    return tuple(
        (
            centre[0] + radius * math.cos(2 * math.pi * k / _CIRCLE),
            centre[1] + radius * math.sin(2 * math.pi * k / _CIRCLE),
        )
        for k in range(_CIRCLE)
    )
