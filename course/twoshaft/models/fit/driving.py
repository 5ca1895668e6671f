"""Where a driver may bear: the force must reach the tight seat without crossing the elements.

A rolling bearing that is driven on the ring that slides gets its whole fitting force through balls
or rollers, which dent the raceways (trade practice, from memory).
"""

from __future__ import annotations

from enum import StrEnum

from twoshaft.errors import OutOfRangeError
from twoshaft.models.fit.iso286 import Fit


class Ring(StrEnum):
    """A ring of a rolling bearing.

    Examples
    --------
    >>> crosses_elements(driven=BOTH, tight=frozenset({Ring.OUTER}))
    False
    """

    INNER = "inner"
    OUTER = "outer"


BOTH = frozenset(Ring)


def tight_rings(inner: Fit | None, outer: Fit | None) -> frozenset[Ring]:
    """Give the rings whose seats can grip.

    Parameters
    ----------
    inner : Fit or None
        Of the inner ring on its shaft; None where the shaft is not there yet.
    outer : Fit or None
        Of the outer ring in its bore; None where the housing is not there yet.

    Returns
    -------
    frozenset of Ring
        A transition fit counts: it may be the tight one.

    Examples
    --------
    >>> from twoshaft.models.fit import fit
    >>> tight_rings(inner=fit(Q(30, "mm"), "H7/p6"), outer=fit(Q(62, "mm"), "H7/h6"))
    frozenset({<Ring.INNER: 'inner'>})
    """
    seats = {Ring.INNER: inner, Ring.OUTER: outer}
    return frozenset(ring for ring, seat in seats.items() if seat and seat.most_um > 0)


def crosses_elements(driven: frozenset[Ring], tight: frozenset[Ring]) -> bool:
    """Tell whether some of the fitting force goes through balls or rollers.

    Parameters
    ----------
    driven : frozenset of Ring
        The rings that the driver presses on.
    tight : frozenset of Ring
        The rings whose seats grip.

    Raises
    ------
    OutOfRangeError
        If the driver presses on no ring.

    Examples
    --------
    A bearing driven on its outer ring while the inner one grips its shaft.

    >>> crosses_elements(frozenset({Ring.OUTER}), tight=frozenset({Ring.INNER}))
    True
    >>> crosses_elements(BOTH, tight=frozenset({Ring.INNER}))
    False
    """
    if not driven:
        raise OutOfRangeError("rings under the driver", "none", "one or both", "a driver presses")
    return bool(tight - driven)
