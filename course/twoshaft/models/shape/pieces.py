"""What a section through a solid is made of: closed outlines and lines, each with its role."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from enum import StrEnum
from itertools import pairwise

Point = tuple[float, float]
Outline = tuple[Point, ...]

THIN_MM = 1.7
"""Cut parts thinner than this are drawn solid (ISO 128-3 asks it of thin parts)."""

PRESSED_MM = 0.3
"""Solids may run into each other by twice this: press fits, lips, drawn roundings."""


class Role(StrEnum):
    """What a piece stands for.

    Examples
    --------
    >>> Role.CUT.value
    'cut'
    """

    CUT = "cut"
    """Cut: hatched."""
    WHOLE = "whole"
    """Drawn whole: shafts, bolts, pins, rolling elements, teeth."""
    THIN = "thin"
    """Cut and so thin that it is drawn solid."""
    SOFT = "soft"
    """Rubber: drawn solid."""
    BEHIND = "behind"
    """Seen behind the cut, through a bore."""
    BOX = "box"
    """A named box."""
    LINE = "line"
    """A thin line: root of a thread, edge of a groove."""
    PITCH = "pitch"
    """Pitch line of a gear, or middle of a rolling element."""
    COIL = "coil"
    """The line of a spring."""


@dataclass(frozen=True)
class Piece:
    """One outline or line of a section.

    Attributes
    ----------
    role : Role
    outline : tuple of pairs
        z and height below the first axis of the view [mm].
    holes : tuple of outlines
        What is left out of it.

    Examples
    --------
    >>> Piece(Role.CUT, ((0, 0), (1, 0), (1, 1))).closed
    True
    """

    role: Role
    outline: Outline
    holes: tuple[Outline, ...] = ()

    @property
    def closed(self) -> bool:
        """Whether it has an area."""
        return self.role not in (Role.LINE, Role.PITCH, Role.COIL)


def box_outline(z0: float, z1: float, y0: float, y1: float) -> Outline:
    """A rectangle.

    Examples
    --------
    >>> box_outline(0, 2, 0, 1)
    ((0, 0), (2, 0), (2, 1), (0, 1))
    """
    return (z0, y0), (z1, y0), (z1, y1), (z0, y1)


def both_sides(points: Iterable[Point], axis: float) -> tuple[Outline, Outline]:
    """Points of z and radius, above and below an axis.

    Examples
    --------
    >>> both_sides([(0, 5)], 10)
    (((0, 5),), ((0, 15),))
    """
    half = tuple(points)
    return tuple((z, axis - r) for z, r in half), tuple((z, axis + r) for z, r in half)


def turned_pieces(
    outside: Sequence[Point], inside: Sequence[Point], axis: float, whole: bool = False
) -> list[Piece]:
    """Section of a turned solid: one outline where it is solid, else one on each side.

    Parameters
    ----------
    outside, inside : sequences of pairs
        Outlines from front to rear, as z and radius [mm]; `inside` is empty for a solid one.
    axis : float
        Height of the axis [mm].
    whole : bool, optional
        Drawn whole, as shafts are.

    Examples
    --------
    >>> [piece.role.value for piece in turned_pieces([(0, 5), (9, 5)], [(0, 3), (9, 3)], 0)]
    ['behind', 'cut', 'cut']
    """
    role = Role.WHOLE if whole else Role.CUT
    if not inside:
        above, below = both_sides(outside, axis)
        pieces = [Piece(role, above + below[::-1])]
        if whole:
            pieces += _steps(outside, axis)
        return pieces
    half = [*outside, *reversed(inside)]
    return _ring_pieces(half, inside, axis, role)


def _steps(outside: Sequence[Point], axis: float) -> list[Piece]:
    """Edges of a whole shaft, where its diameter changes."""
    edges = []
    for (z, r), (_, following) in pairwise(outside[1:]):
        low = min(r, following)
        if low > 0:
            edges.append(Piece(Role.LINE, ((z, axis - low), (z, axis + low))))
    return edges


def _ring_pieces(
    half: Sequence[Point], inside: Sequence[Point], axis: float, role: Role
) -> list[Piece]:
    above, below = both_sides(inside, axis)
    seen = Piece(Role.BEHIND, above + below[::-1])
    zs, rs = zip(*half, strict=True)
    if role is Role.CUT and min(max(zs) - min(zs), max(rs) - min(rs)) < THIN_MM:
        role = Role.THIN
    return [seen, *(Piece(role, one) for one in both_sides(half, axis))]


def ring_pieces(z: tuple[float, float], bore: float, outer: float, axis: float) -> list[Piece]:
    """Section of a plain ring, by its radii; solid black where it is thin.

    Examples
    --------
    >>> [piece.role.value for piece in ring_pieces((0, 1), 10, 14, 0)]
    ['behind', 'thin', 'thin']
    """
    half = [(z[0], outer), (z[1], outer), (z[1], bore), (z[0], bore)]
    return _ring_pieces(half, [(z[0], bore), (z[1], bore)], axis, Role.CUT)
