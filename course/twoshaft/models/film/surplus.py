"""What a film leaves over when its gap is full, and the lump that this makes along an edge."""

from __future__ import annotations

from typing import Any

import numpy as np

from twoshaft.models.border import Above, Range, border


@border(
    "mm**3",
    film=Range("thickness of the film", "mm", 0.0, 10.0, "sealant laid by hand"),
    gap=Range("gap", "mm", 0.0, 10.0, "sealed faces"),
    width=Above("width", "mm", "a strip"),
    length=Above("length", "mm", "a strip"),
)
def surplus(film_mm: float, gap_mm: float, width_mm: float, length_mm: float) -> float:
    """Volume [mm³] that a film leaves over when it has filled its gap; 0 if it does not fill it.

    Parameters
    ----------
    film, gap : pint.Quantity
        Thickness of the film and of the closed gap, 0 to 10 mm.
    width, length : pint.Quantity
        Of the strip, above 0 mm.

    Examples
    --------
    >>> from twoshaft.units.quantities import Q
    >>> f"{surplus(Q(0.2, 'mm'), Q(0.1, 'mm'), Q(10, 'mm'), Q(50, 'mm')):.0f}"
    '50 millimeter ** 3'
    """
    return max(0.0, film_mm - gap_mm) * (width_mm * length_mm)


@border(
    "mm",
    volume=Above("volume", "mm**3", "a lump along an edge", zero=True),
    length=Above("length", "mm", "a lump along an edge"),
)
def half_round(volume_mm3: float, length_mm: float) -> float:
    """Radius [mm] of the half round that a volume makes along an edge: V / L = pi r² / 2.

    Parameters
    ----------
    volume : pint.Quantity
        0 mm³ and above.
    length : pint.Quantity
        Of the edge, above 0 mm.

    Examples
    --------
    >>> from twoshaft.units.quantities import Q
    >>> f"{half_round(Q(50, 'mm**3'), Q(50, 'mm')):.2f}"  # the root of 2 V / (pi L)
    '0.80 millimeter'
    """
    return float(half_round_radius(volume_mm3 / length_mm))


def half_round_radius(section: Any) -> Any:
    """Radius of half rounds of some sections, in the root of the sections' unit.

    Examples
    --------
    >>> f"{half_round_radius(1.0):.3f}"  # 1 mm² in the corner
    '0.798'
    """
    return np.sqrt(2 * section / np.pi)
