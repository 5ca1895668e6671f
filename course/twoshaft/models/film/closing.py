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
from twoshaft.models.validity import in_range, positive
from twoshaft.units.quantities import Q
from twoshaft.units.sections.faces import Sealant

_PLATES = "squeeze film between parallel plates"


def squeeze_time_strip(viscosity: Q, length: Q, width: Q, clamp: Q, start: Q, end: Q) -> Q:
    """Time [s] to squeeze a long strip from one gap to a smaller one.

    Parameters as for `squeeze_time_disc`; ``length`` and ``width`` above 0 m, the length at least
    three times the width.
    """
    mu, clamp_n, closing = _plates(viscosity, clamp, start, end)
    length_m, width_m = _strip(length, width)
    return Q(mu * length_m * width_m**3 / (2 * clamp_n) * closing, "s")


def bead_to_film(diameter: Q, width: Q) -> Q:
    """Film [mm] that a bead makes when it is pressed out to a width; its section keeps its area.

    Parameters
    ----------
    diameter : pint.Quantity
        Of the bead, 0.1 to 20 mm.
    width : pint.Quantity
        Of the film, at least the bead's diameter.
    """
    across_mm = in_range("diameter of the bead", diameter, 0.1, 20.0, "mm", "a nozzle")
    width_mm = in_range("width of the film", width, across_mm, 200.0, "mm", "a pressed bead")
    return Q(math.pi * across_mm**2 / 4 / width_mm, "mm")


def ready_for_oil(sealant: Sealant, waited: Q) -> bool:
    """Tell whether a closed face has cured long enough for oil to be filled in.

    Parameters
    ----------
    sealant : Sealant
        Its full cure is what counts; a thin film may be ready sooner, the maker's sheet says.
    waited : pint.Quantity
        Since the face was closed, 0 h and above.
    """
    hours = positive("time waited", waited, "h", "cure of the sealant", zero=True)
    return hours >= sealant.cure_hours


def _plates(viscosity, clamp, start, end) -> tuple[float, float, float]:
    mu = in_range("viscosity", viscosity, 1e-3, 5e3, "Pa*s", _PLATES)
    clamp_n = positive("clamp", clamp, "N", _PLATES)
    start_m = positive("gap at the start", start, "m", _PLATES)
    end_m = positive("gap at the end", end, "m", _PLATES)
    if end_m >= start_m:
        raise OutOfRangeError(
            "gap at the end", f"{end_m * 1e3:g} mm", f"0 to {start_m * 1e3:g} mm", _PLATES
        )
    return mu, clamp_n, 1 / end_m**2 - 1 / start_m**2


def _strip(length, width) -> tuple[float, float]:
    width_m = positive("width", width, "m", _PLATES)
    length_m = in_range("length", length, 3 * width_m, math.inf, "m", "a long strip")
    return length_m, width_m
