"""A reading against its limit: guard band, chance of being wrong, and what that costs.

Readings scatter normally about the true size. The rule is that of ISO 14253-1 (from memory): a
part is proven good when its reading keeps off the limit by the guard band, proven bad when it is
beyond by it; between, nothing is proven. Shares that are decided wrongly are those of JCGM 106.
"""

from __future__ import annotations

import math
from statistics import NormalDist

from twoshaft.models.border import Above, Range, border

GOOD, BAD, AGAIN = "good", "bad", "again"
RISK = 0.05
"""Chance of being wrong at the edge of the guard band: ISO 14253-1:2017 (from memory)."""
_NORMAL = NormalDist()
_STEPS, _REACH = 2000, 8.0
_U = Above("standard uncertainty", "mm")
_SHARE = Range("chance", "", 1e-6, 0.5, "a guard band lies on the safe side of its limit")


@border("mm", tool=Above("uncertainty of one reading", "mm"))
def mean_uncertainty(tool_mm: float, readings: int) -> float:
    """Standard uncertainty of the mean of some readings that scatter by themselves.

    Parameters
    ----------
    tool : pint.Quantity
        Standard uncertainty of one reading [mm].
    readings : int
        How many were taken.

    Returns
    -------
    pint.Quantity
        [mm]; JCGM 100 4.2.3.

    Examples
    --------
    >>> f"{mean_uncertainty(Q(0.02, 'mm'), 4):.3f}"
    '0.010 millimeter'
    """
    return tool_mm / math.sqrt(readings)


@border("mm", u=_U, risk=_SHARE)
def guard_band(u_mm: float, risk: float = RISK) -> float:
    """How far a reading must keep off its limit.

    Parameters
    ----------
    u : pint.Quantity
        Standard uncertainty of the reading [mm].
    risk : float
        Chance of being wrong that is taken at its edge.

    Returns
    -------
    pint.Quantity
        [mm]: 1.645 u for 5 %.

    Examples
    --------
    >>> f"{guard_band(Q(0.01, 'mm')):.4f}"
    '0.0164 millimeter'
    """
    return -_NORMAL.inv_cdf(risk) * u_mm


@border(reading=Above("reading", "mm", zero=True), limit=Above("limit", "mm", zero=True),
        guard=Above("guard band", "mm", zero=True))  # fmt: skip
def verdict(reading_mm: float, limit_mm: float, guard_mm: float, least: bool) -> str:
    """What a reading proves.

    Parameters
    ----------
    reading, limit, guard : pint.Quantity
        [mm]
    least : bool
        Whether the limit is the least size that is allowed; else it is the largest.

    Returns
    -------
    str
        GOOD, BAD, or AGAIN where neither is proven.

    Examples
    --------
    >>> [verdict(Q(y, "mm"), Q(0.5, "mm"), Q(0.03, "mm"), True) for y in (0.6, 0.51, 0.4)]
    ['good', 'again', 'bad']
    """
    inside = reading_mm - limit_mm if least else limit_mm - reading_mm
    return GOOD if inside >= guard_mm else BAD if inside <= -guard_mm else AGAIN


@border(reading=Above("reading", "mm", zero=True), limit=Above("limit", "mm", zero=True), u=_U)
def chance_beyond(reading_mm: float, limit_mm: float, u_mm: float, least: bool) -> float:
    """Chance that the true size is beyond its limit, by one reading alone.

    Parameters
    ----------
    reading, limit : pint.Quantity
        [mm]
    u : pint.Quantity
        Standard uncertainty of the reading [mm].
    least : bool
        Whether the limit is the least size that is allowed.

    Returns
    -------
    float
        0 to 1; one less the conformance probability of JCGM 106, 7.2.

    Examples
    --------
    >>> round(chance_beyond(Q(1.21, "mm"), Q(1.2, "mm"), Q(0.01, "mm"), True), 3)
    0.159
    """
    inside = reading_mm - limit_mm if least else limit_mm - reading_mm
    return _NORMAL.cdf(-inside / u_mm)


@border(mean=Above("mean size", "mm"), spread=Above("spread of sizes", "mm"),
        limit=Above("limit", "mm"), u=_U,
        guard=Range("guard band", "mm", -10, 10, "kept off the limit"))  # fmt: skip
def shares_wrong(
    mean_mm: float, spread_mm: float, limit_mm: float, u_mm: float, guard_mm: float
) -> tuple[float, float]:
    """Of many worn parts: bad ones that are used again, and good ones that are renewed.

    Sizes are normal; the limit is the least size allowed, and a part is used again when its
    reading is above the limit by the guard band.

    Parameters
    ----------
    mean, spread : pint.Quantity
        Of the true sizes [mm].
    limit, guard : pint.Quantity
        [mm]
    u : pint.Quantity
        Standard uncertainty of a reading [mm].

    Returns
    -------
    tuple of float
        Share of all parts that are used again though bad, and renewed though good: global
        consumer's and producer's risk of JCGM 106, 9.3.

    Examples
    --------
    >>> bad, good = shares_wrong(Q(1, "mm"), Q(0.1, "mm"), Q(0.9, "mm"), Q(0.02, "mm"), Q(0, "mm"))
    >>> f"{bad:.3f} {good:.3f}"
    '0.017 0.022'
    """
    sizes, edge = NormalDist(mean_mm, spread_mm), limit_mm + guard_mm
    step = 2 * _REACH * spread_mm / _STEPS

    def share(start: float, used: bool) -> float:
        """Of sizes on one side of the limit, those whose reading lies on the other side."""
        total = 0.0
        for k in range(_STEPS):
            size = start + (k + 0.5) * step * (-1 if used else 1)
            below = _NORMAL.cdf((edge - size) / u_mm)
            total += sizes.pdf(size) * (1 - below if used else below) * step
        return total

    return share(limit_mm, used=True), share(limit_mm, used=False)


@border(renew=Above("cost of renewing", "hour"), again=Above("cost of stripping again", "hour"))
def break_even(renew_hour: float, again_hour: float) -> float:
    """Chance of a bad part above which renewing it is the cheaper way.

    Parameters
    ----------
    renew, again : pint.Quantity
        What it costs to renew the part, and to strip the unit again [hours].

    Returns
    -------
    float
        0 to 1.

    Examples
    --------
    >>> break_even(Q(1, "hour"), Q(20, "hour"))
    0.05
    """
    return renew_hour / again_hour


def ways_cost(bad: float, renew_h: float, again_h: float, look_h: float) -> dict[str, float]:
    """What each way costs on average, by the chance that the part is bad.

    Parameters
    ----------
    bad : float
        That chance.
    renew_h, again_h, look_h : float
        What it costs to renew the part, to strip the unit again, and to measure surely [hours].

    Returns
    -------
    dict
        Hours: ``use`` it, ``renew`` it, or measure ``again`` and renew it if it is bad.

    Examples
    --------
    >>> ways_cost(0.5, 2, 10, 0.5)
    {'use': 5.0, 'renew': 2, 'again': 1.5}
    """
    return {"use": bad * again_h, "renew": renew_h, "again": look_h + bad * renew_h}
