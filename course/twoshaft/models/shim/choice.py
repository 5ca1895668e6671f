"""Which shim, or which two, to take from the shelf, and whether the shelf is enough.

A choice is safe when it meets the target even after the uncertainty of the measurement is taken
off both ends (guard band, ISO 14253-1 and JCGM 106:2012).
"""

from __future__ import annotations

import math
from dataclasses import dataclass

import numpy as np

from twoshaft.errors import OutOfRangeError
from twoshaft.models.border import Above, Limits, Range, border
from twoshaft.units.quantities import Q

_SETTING = "shim setting"
_SHELF = Range("shim thickness on the shelf", "mm", 0.01, 10.0, "shims of 0.01 to 10 mm")
_GUARD = Above("guard band", "mm", "JCGM 106:2012", zero=True)
# Shims are stepped in hundredths; sums equal to a nanometre are the same sum.
_SAME_MM = 1e-6


@dataclass(frozen=True)
class Choice:
    """Shims taken from the shelf.

    Attributes
    ----------
    shims_mm : tuple of float
        Thicknesses, thinnest first [mm].
    error_mm : float
        Total less the wanted thickness [mm].
    verdict : str
        ``"safe"`` within the guarded window, ``"meets"`` within the window but not the guarded
        one, ``"misses"`` outside the window.
    reason : str
        One sentence.

    Examples
    --------
    >>> shelf, window = Q([1.15, 1.20, 1.25], "mm"), (Q(1.18, "mm"), Q(1.24, "mm"))
    >>> chosen = choose(shelf, window, guard=Q(0.01, "mm"))
    >>> chosen.shims_mm, chosen.verdict
    ((1.2,), 'safe')
    """

    shims_mm: tuple[float, ...]
    error_mm: float
    verdict: str
    reason: str

    @property
    def total(self) -> Q:
        """Total thickness [mm]."""
        return Q(sum(self.shims_mm), "mm")


@dataclass(frozen=True)
class Reach:
    """Whether a shim set reaches the target over a range of wanted thicknesses.

    ``gaps_mm`` lists the wanted thicknesses (from, to) that no choice meets [mm].

    Examples
    --------
    >>> Reach(gaps_mm=((1.21, 1.24),), share=0.9).ok
    False
    """

    gaps_mm: tuple[tuple[float, float], ...]
    share: float

    @property
    def ok(self) -> bool:
        """True if every wanted thickness is met."""
        return not self.gaps_mm

    @property
    def sentence(self) -> str:
        """The finding in one sentence."""
        if self.ok:
            return "the shim set reaches the target over the whole tolerance range"
        low, high = max(self.gaps_mm, key=lambda gap: gap[1] - gap[0])
        return (
            f"the shim set reaches the target over {self.share:.0%} of the tolerance range; "
            f"the widest gap is from {low:.3f} mm to {high:.3f} mm"
        )


@border(
    shelf=_SHELF,
    window=Limits("window of the shim", "mm", -2000.0, 2000.0, _SETTING),
    guard=_GUARD,
    wanted=Range("wanted shim", "mm", -2000.0, 2000.0, _SETTING),
)
def choose(
    shelf_mm: np.ndarray,
    window_mm: tuple[float, float],
    guard_mm: float | None = None,
    at_most: int = 1,
    wanted_mm: float | None = None,
) -> Choice:
    """Choose the shim, or the shims, for a window of thickness.

    A safe choice beats one that only meets the window, that beats one that misses; then fewer
    shims beat more (each face adds its own error); then the nearest to the wanted thickness wins;
    then the thinner total.

    Parameters
    ----------
    shelf : pint.Quantity
        Thicknesses on the shelf [mm], shape (n,), 0.01 to 10 mm each; each may be taken twice.
    window : tuple of pint.Quantity
        Thinnest and thickest total that meet the target [mm].
    guard : pint.Quantity, optional
        Width taken off both ends of the window [mm]: the expanded uncertainty. None for zero.
    at_most : int, optional
        One or two shims.
    wanted : pint.Quantity, optional
        Thickness aimed at [mm]; the middle of the window if absent.

    Returns
    -------
    Choice

    Raises
    ------
    OutOfRangeError
        For an empty shelf, reversed window, negative guard or other than one or two shims.

    Examples
    --------
    >>> shelf, window = Q([1.15, 1.20, 1.25], "mm"), (Q(1.18, "mm"), Q(1.24, "mm"))
    >>> choose(shelf, window, guard=Q(0.01, "mm")).reason
    '1.200 mm is -0.010 mm from 1.210 mm, 0.020 mm inside the limits; the uncertainty is 0.010 mm'
    """
    totals, parts = _totals(shelf_mm, at_most)
    low, high = window_mm
    guard = 0.0 if guard_mm is None else guard_mm
    aim = (low + high) / 2 if wanted_mm is None else wanted_mm
    misses = (totals < low - _SAME_MM) | (totals > high + _SAME_MM)
    safe = (totals >= low + guard - _SAME_MM) & (totals <= high - guard + _SAME_MM)
    rank = np.where(safe, 0, np.where(misses, 2, 1))
    error = totals - aim
    count = np.isfinite(parts).sum(axis=1)
    # Outside the window the distance decides first, or one bad shim would beat two good ones.
    first = np.where(rank == 2, np.round(np.abs(error) / _SAME_MM), count)
    second = np.where(rank == 2, count, np.round(np.abs(error) / _SAME_MM))
    best = np.lexsort((totals, second, first, rank))[0]
    taken = tuple(float(t) for t in parts[best] if math.isfinite(t))
    verdict = ("safe", "meets", "misses")[rank[best]]
    reason = _reason(taken, float(totals[best]), aim, low, high, guard, verdict)
    return Choice(taken, float(error[best]), verdict, reason)


@border(
    shelf=_SHELF,
    wanted=Limits("wanted shim", "mm", -2000.0, 2000.0, _SETTING),
    half_window=Above("half window", "mm", _SETTING),
    guard=_GUARD,
)
def reach(
    shelf_mm: np.ndarray,
    wanted_mm: tuple[float, float],
    half_window_mm: float,
    guard_mm: float | None = None,
    at_most: int = 1,
) -> Reach:
    """Find the wanted thicknesses that a shim set cannot meet.

    Parameters
    ----------
    shelf : pint.Quantity
        Thicknesses [mm], shape (n,).
    wanted : tuple of pint.Quantity
        Thinnest and thickest shim that the tolerances may ask for [mm].
    half_window : pint.Quantity
        Half the width of the target [mm].
    guard : pint.Quantity, optional
        Guard band taken off the target's both ends [mm].
    at_most : int, optional
        One or two shims.

    Returns
    -------
    Reach

    Examples
    --------
    >>> found = reach(Q([1.1, 1.2], "mm"), (Q(1.08, "mm"), Q(1.22, "mm")), Q(0.04, "mm"))
    >>> f"{found.share:.2f}", [f"{mm:.2f}" for mm in found.gaps_mm[0]]
    ('0.86', ['1.14', '1.16'])
    """
    totals, _ = _totals(shelf_mm, at_most)
    low, high = wanted_mm
    half = half_window_mm - (0.0 if guard_mm is None else guard_mm)
    if half < 0:
        return Reach(((low, high),), 0.0)
    if high - low <= _SAME_MM:
        met = bool((np.abs(totals - low) <= half + _SAME_MM).any())
        return Reach((), 1.0) if met else Reach(((low, high),), 0.0)
    reached = low
    gaps = []
    for total in np.unique(totals):
        start, end = total - half, total + half
        if end < reached or start > high:
            continue
        if start > reached + _SAME_MM:
            gaps.append((reached, min(float(start), high)))
        reached = max(reached, float(end))
    if reached < high - _SAME_MM:
        gaps.append((reached, high))
    lost = sum(b - a for a, b in gaps)
    return Reach(tuple(gaps), 1.0 - lost / (high - low))


def _totals(shelf_mm: np.ndarray, at_most: int) -> tuple[np.ndarray, np.ndarray]:
    """All totals [mm], shape (m,), and their parts, shape (m, 2) with NaN for no second shim."""
    sizes = np.unique(np.atleast_1d(shelf_mm))
    if at_most not in (1, 2):
        raise OutOfRangeError("number of shims", f"{at_most}", "1 to 2", "common practice")
    parts = np.column_stack([sizes, np.full(sizes.size, np.nan)])
    if at_most == 2:
        i, j = np.triu_indices(sizes.size)
        parts = np.vstack([parts, np.column_stack([sizes[i], sizes[j]])])
    return np.nansum(parts, axis=1), parts


def _reason(taken, total, aim, low, high, guard, verdict) -> str:
    shims = " and ".join(f"{t:.3f} mm" for t in taken)
    verb, off = "is" if len(taken) == 1 else "are", round(total - aim, 3)
    head = f"{shims} {verb} {f'{off:+.3f} mm from' if off else 'just'} {aim:.3f} mm"
    margin = min(total - low, high - total)
    if verdict == "safe":
        return f"{head}, {margin:.3f} mm inside the limits; the uncertainty is {guard:.3f} mm"
    if verdict == "meets":
        return (
            f"{head}, {margin:.3f} mm inside the limits, less than the uncertainty of "
            f"{guard:.3f} mm; measure again before you rely on it"
        )
    return f"{head}, {-margin:.3f} mm outside the limits; this set cannot meet the target here"
