"""Usual proportions, where a unit file gives no size. Whatever rests on them says so.

Common practice, no source, where none is named.
"""

from __future__ import annotations

WALL_MM = 5.0
SHAFT_RADIUS_MM = 14.0
HOLE_CLEARANCE_MM = 0.5


def gear_width(module_mm: float) -> float:
    """Width of a gear: about ten times its module.

    Parameters
    ----------
    module_mm : float
        Normal module [mm].

    Examples
    --------
    >>> gear_width(2.25)
    22.5
    """
    return 10 * module_mm


def head_width(diameter_mm: float) -> float:
    """Width across flats of a hexagon head: 1.6 diameters, near ISO 4014 (16 for M10).

    Examples
    --------
    >>> head_width(10)
    16.0
    """
    return 1.6 * diameter_mm


def head_height(diameter_mm: float) -> float:
    """Height of a hexagon head: 0.64 diameters, as ISO 4014 has it (6.4 for M10).

    Examples
    --------
    >>> head_height(10)
    6.4
    """
    return 0.64 * diameter_mm


def slab_thickness(outline_mm: tuple[tuple[float, float], ...]) -> float:
    """Thickness of a flat part square to the section: a third of its smaller side.

    Parameters
    ----------
    outline_mm : tuple of pairs
        Its outline [mm].

    Examples
    --------
    >>> slab_thickness(((0, 0), (30, 0), (30, 12), (0, 12)))
    4.0
    """
    zs, ys = zip(*outline_mm, strict=True)
    return min(max(zs) - min(zs), max(ys) - min(ys)) / 3
