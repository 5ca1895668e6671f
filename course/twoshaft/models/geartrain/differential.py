"""The differential: how its outputs share the turns, and the play of its side gears."""

from __future__ import annotations

from collections.abc import Iterable

from twoshaft.errors import OutOfRangeError
from twoshaft.models.validity import in_range, positive
from twoshaft.units.quantities import Q
from twoshaft.units.sections.geartrain import SideGearPlay


def other_output(case: Q, one: Q) -> Q:
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
    """
    case_turns = in_range("turns of the case", case, -1e6, 1e6, "turn")
    one_turns = in_range("turns of an output", one, -1e6, 1e6, "turn")
    return Q(2 * case_turns - one_turns, "turn")


def play_with_washer(play: Q, fitted: Q, washer: Q) -> Q:
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
    """
    read_mm = positive("side-gear play", play, "mm", zero=True)
    return Q(read_mm + positive("washer", fitted, "mm") - positive("washer", washer, "mm"), "mm")


def right_washers(section: SideGearPlay, play: Q, fitted: Q, doubt: Q) -> tuple[float, ...]:
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
    """
    doubt_mm = positive("doubt of the reading", doubt, "mm", zero=True)
    low, high = section.play_mm
    return tuple(
        thick
        for thick in _set(section.washers_mm)
        if low + doubt_mm - 1e-9
        <= play_with_washer(play, fitted, Q(thick, "mm")).m_as("mm")
        <= high - doubt_mm + 1e-9
    )


def _set(washers_mm: Iterable[float]) -> list[float]:
    washers = sorted(washers_mm)
    if not washers:
        raise OutOfRangeError("washers", "none", "a set of them", "the unit file")
    return washers
