"""What a film leaves over when its gap is full, and the lump that this makes along an edge."""

from __future__ import annotations

from typing import Any

import numpy as np

from twoshaft.models.validity import in_range, positive
from twoshaft.units.quantities import Q


def surplus(film: Q, gap: Q, width: Q, length: Q) -> Q:
    """Volume [mm³] that a film leaves over when it has filled its gap; 0 if it does not fill it.

    Parameters
    ----------
    film, gap : pint.Quantity
        Thickness of the film and of the closed gap, 0 to 10 mm.
    width, length : pint.Quantity
        Of the strip, above 0 mm.
    """
    film_mm = in_range("thickness of the film", film, 0.0, 10.0, "mm", "sealant laid by hand")
    gap_mm = in_range("gap", gap, 0.0, 10.0, "mm", "sealed faces")
    area = positive("width", width, "mm", "a strip") * positive("length", length, "mm", "a strip")
    return Q(max(0.0, film_mm - gap_mm) * area, "mm**3")


def half_round(volume: Q, length: Q) -> Q:
    """Radius [mm] of the half round that a volume makes along an edge: V / L = pi r² / 2.

    Parameters
    ----------
    volume : pint.Quantity
        0 mm³ and above.
    length : pint.Quantity
        Of the edge, above 0 mm.
    """
    volume_mm3 = positive("volume", volume, "mm**3", "a lump along an edge", zero=True)
    length_mm = positive("length", length, "mm", "a lump along an edge")
    return Q(float(half_round_radius(volume_mm3 / length_mm)), "mm")


def half_round_radius(section: Any) -> Any:
    """Radius of half rounds of some sections, in the root of the sections' unit."""
    return np.sqrt(2 * section / np.pi)
