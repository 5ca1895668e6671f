"""How long a paste takes to be squeezed out, and how thin a clamp can make it.

Lubrication theory between parallel plates. A Newtonian fluid never quite stops; a paste with a
yield stress stops at a gap that the clamp cannot pass.

Sources: disc F = 3 pi mu R^4 V / (2 h^3) and long strip F = mu L B^3 V / h^3 (Reynolds; Stefan's
law; derived, also by integrating the equation of motion). Yield limits F = 2 pi tau R^3 / (3 h)
for a disc and F = tau L B^2 / (2 h) for a strip (from memory; pressure gradient 2 tau / h from
the edge inwards).
"""

from __future__ import annotations

import math

from twoshaft.errors import OutOfRangeError
from twoshaft.models.border import Above, Depends, Range, border
from twoshaft.units.sections.faces import Sealant

_PLATES = "squeeze film between parallel plates"


@border(
    "s",
    viscosity=Range("viscosity", "Pa*s", 1e-3, 5e3, _PLATES),
    length=Depends(
        "m", lambda width_m: Range("length", "m", 3 * width_m, math.inf, "a long strip")
    ),
    width=Above("width", "m", _PLATES),
    clamp=Above("clamp", "N", _PLATES),
    start=Above("gap at the start", "m", _PLATES),
    end=Above("gap at the end", "m", _PLATES),
)
def squeeze_time_strip(
    viscosity_pa_s: float,
    length_m: float,
    width_m: float,
    clamp_n: float,
    start_m: float,
    end_m: float,
) -> float:
    """Time [s] to squeeze a long strip from one gap to a smaller one.

    Parameters
    ----------
    viscosity : pint.Quantity
        Of the paste, 0.001 to 5000 Pa·s.
    length, width : pint.Quantity
        Above 0 m, the length at least three times the width.
    clamp : pint.Quantity
        Above 0 N.
    start, end : pint.Quantity
        The gap before and after, above 0 m, the second one smaller.

    Examples
    --------
    mu L B³ / (2 F) (1/h² - 1/h0²): arithmetic.

    >>> from twoshaft.units.quantities import Q
    >>> strip = Q(50, "Pa*s"), Q(1, "m"), Q(10, "mm"), Q(20, "kN")
    >>> f"{squeeze_time_strip(*strip, Q(0.2, 'mm'), Q(0.1, 'mm')):.2f}"
    '0.09 second'
    """
    if end_m >= start_m:
        raise OutOfRangeError(
            "gap at the end", f"{end_m * 1e3:g} mm", f"0 to {start_m * 1e3:g} mm", _PLATES
        )
    closing = 1 / end_m**2 - 1 / start_m**2
    return viscosity_pa_s * length_m * width_m**3 / (2 * clamp_n) * closing


@border(
    "mm",
    diameter=Range("diameter of the bead", "mm", 0.1, 20.0, "a nozzle"),
    width=Depends(
        "mm",
        lambda diameter_mm: Range("width of the film", "mm", diameter_mm, 200.0, "a pressed bead"),
    ),
)
def bead_to_film(diameter_mm: float, width_mm: float) -> float:
    """Film [mm] that a bead makes when it is pressed out to a width; its section keeps its area.

    Parameters
    ----------
    diameter : pint.Quantity
        Of the bead, 0.1 to 20 mm.
    width : pint.Quantity
        Of the film, at least the bead's diameter.

    Examples
    --------
    >>> from twoshaft.units.quantities import Q
    >>> f"{bead_to_film(Q(2, 'mm'), Q(10, 'mm')):.2f}"  # 3.14 mm² over 10 mm
    '0.31 millimeter'
    """
    return math.pi * diameter_mm**2 / 4 / width_mm


@border(waited=Above("time waited", "h", "cure of the sealant", zero=True))
def ready_for_oil(sealant: Sealant, waited_h: float) -> bool:
    """Tell whether a closed face has cured long enough for oil to be filled in.

    Parameters
    ----------
    sealant : Sealant
        Its full cure is what counts; a thin film may be ready sooner, the maker's sheet says.
    waited : pint.Quantity
        Since the face was closed, 0 h and above.

    Examples
    --------
    >>> from twoshaft.units.quantities import Q
    >>> sealant = unit.faces.sealant_by_id("case-sealant")  # cures in 24 h
    >>> ready_for_oil(sealant, Q(10, "h")), ready_for_oil(sealant, Q(1, "day"))
    (False, True)
    """
    return waited_h >= sealant.cure_hours
