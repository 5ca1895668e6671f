"""The differential: how its outputs share the turns, and the play of its side gears."""

from __future__ import annotations

from collections.abc import Iterable

from twoshaft.errors import OutOfRangeError
from twoshaft.models.border import Above, Range, border
from twoshaft.units.sections.geartrain import SideGearPlay

_PLAY, _WASHER = Above("side-gear play", "mm", zero=True), Above("washer", "mm")


@border(
    "turn",
    case=Range("turns of the case", "turn", -1e6, 1e6),
    one=Range("turns of an output", "turn", -1e6, 1e6),
)
def other_output(case_turns: float, one_turns: float) -> float:
    """Turns of one output, when the case and the other output have turned.

    With equal side gears the case makes the mean of both (Willis, from memory).

    Parameters
    ----------
    case, one : pint.Quantity
        Turns of the case and of one output, signed [turn].

    Returns
    -------
    pint.Quantity
        Turns of the other output, signed [turn].

    Examples
    --------
    >>> from twoshaft.units.quantities import Q
    >>> other_output(Q(3, "turn"), Q(0, "turn"))  # one wheel held
    <Quantity(6.0, 'turn')>
    """
    return 2 * case_turns - one_turns


@border("mm", play=_PLAY, fitted=_WASHER, washer=_WASHER)
def play_with_washer(play_mm: float, fitted_mm: float, washer_mm: float) -> float:
    """Play of a side gear with another thrust washer: a thicker one takes play away.

    Parameters
    ----------
    play : pint.Quantity
        Axial play that was read [mm].
    fitted, washer : pint.Quantity
        Thickness of the washer that was in when it was read, and of the other one [mm].

    Returns
    -------
    pint.Quantity
        Play [mm]; below zero means that the washer does not go in.

    Examples
    --------
    >>> from twoshaft.units.quantities import Q
    >>> f"{play_with_washer(Q(0.28, 'mm'), Q(0.90, 'mm'), Q(1.05, 'mm')):.2f}"
    '0.13 millimeter'
    """
    return play_mm + fitted_mm - washer_mm


@border(play=_PLAY, fitted=_WASHER, doubt=Above("uncertainty of the reading", "mm", zero=True))
def right_washers(
    section: SideGearPlay, play_mm: float, fitted_mm: float, doubt_mm: float
) -> tuple[float, ...]:
    """Washers of the set that bring the play within its limits, whatever the reading's doubt.

    Parameters
    ----------
    section : SideGearPlay
        Limits and washers of the unit.
    play, fitted
        As for :func:`play_with_washer`.
    doubt : pint.Quantity
        How far the reading may be off either way [mm].

    Returns
    -------
    tuple of float
        Thicknesses [mm]; empty when none does.

    Examples
    --------
    >>> from twoshaft.units.quantities import Q
    >>> section = SideGearPlay(play_mm=(0.05, 0.15), washers_mm=(0.90, 1.00, 1.05, 1.10))
    >>> right_washers(section, play=Q(0.28, "mm"), fitted=Q(0.90, "mm"), doubt=Q(0.02, "mm"))
    (1.05, 1.1)
    """
    low, high = section.play_mm
    return tuple(
        thick
        for thick in _set(section.washers_mm)
        if low + doubt_mm - 1e-9
        <= play_with_washer.plain(play_mm, fitted_mm, thick)
        <= high - doubt_mm + 1e-9
    )


def _set(washers_mm: Iterable[float]) -> list[float]:
    washers = sorted(washers_mm)
    if not washers:
        raise OutOfRangeError("washers", "none", "a set of them", "the unit file")
    return washers
