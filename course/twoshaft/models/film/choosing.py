"""Which sealant a joint can take: its gap, its stiffness and the time that the work needs.

Anaerobic sealant cures between rigid metal faces, up to a gap of about 0.25 mm (published selection
charts; 0.38 mm is given as the largest elsewhere); moisture-curing sealant bridges more and follows
covers that flex. The unit file's own limits count.
"""

from __future__ import annotations

from enum import StrEnum

from twoshaft.models.border import Above, Range, border
from twoshaft.units.sections.faces import Sealant, SealantKind


class Bar(StrEnum):
    """Why a sealant cannot be used on a joint.

    Examples
    --------
    >>> sealant = unit.faces.sealant_by_id("metal-face-sealant")
    >>> Bar.GAP in bars(sealant, gap=Q(1, "mm"), minutes=5, rigid=True)
    True
    """

    GAP = "gap"
    FLEXES = "flexes"
    TIME = "time"


@border(
    gap=Range("gap", "mm", 0.0, 20.0, "sealed faces"),
    minutes=Above("minutes", "", "clock of the work", zero=True),
)
def bars(sealant: Sealant, *, gap_mm: float, minutes: float, rigid: bool) -> tuple[Bar, ...]:
    """What speaks against a sealant on a joint; empty if it can be used.

    Parameters
    ----------
    sealant : Sealant
    gap : pint.Quantity
        Largest gap of the bolted joint, 0 to 20 mm.
    minutes : float
        From the first sealant to the closed joint.
    rigid : bool
        Whether both sides are thick metal that does not flex.

    Examples
    --------
    >>> from twoshaft.units.quantities import Q
    >>> sealant = unit.faces.sealant_by_id("metal-face-sealant")  # up to 0.25 mm, 45 minutes
    >>> [str(bar) for bar in bars(sealant, gap=Q(0.4, "mm"), minutes=30, rigid=True)]
    ['gap']
    """
    limit = sealant.open_minutes if sealant.skin_minutes is None else sealant.skin_minutes
    found = []
    if gap_mm > sealant.largest_gap_mm:
        found.append(Bar.GAP)
    if sealant.kind is SealantKind.ANAEROBIC and not rigid:
        found.append(Bar.FLEXES)
    if minutes > limit:
        found.append(Bar.TIME)
    return tuple(found)
