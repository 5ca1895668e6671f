"""Figures as tables of the desk show them, on the terminal and on the screen."""

from __future__ import annotations

from typing import TYPE_CHECKING

if TYPE_CHECKING:  # its statistics take long to load
    from twoshaft_grader.records.how_it_goes import HowItGoes
    from twoshaft_grader.records.item_statistics import Estimate
    from twoshaft_grader.records.two_marks import Kappa

SURE_OF = 32
"""Of fewer tasks the interval of kappa is rough: twice the square of the four bands (a rule of
thumb, from memory, no source)."""


def figure(value: float | None) -> str:
    """A figure to two places, as short as it can be; empty where there is none."""
    return "" if value is None else f"{value:.2f}".rstrip("0").rstrip(".")


def estimate(one: Estimate | None, found: HowItGoes) -> str:
    """An estimate with its interval, or why there is none."""
    if one:
        return f"{one.value:.2f} ({one.low:.2f} to {one.high:.2f})"
    return "too few marked" if found.too_few else "all alike"


def reliability_words(found: HowItGoes) -> str:
    """How far the marks of a module can be relied on, in a sentence."""
    if one := found.reliability:
        return (
            f"Reliability of the whole: {one.value:.2f}; between {one.low:.2f} and {one.high:.2f} "
            "with 95 % confidence."
        )
    if found.too_few:
        count = found.marked
        sheets = f"{count} sheet{' is' if count == 1 else 's are'}" if count else "none is"
        return (
            "How far these marks can be relied on, and which task tells strong from weak, cannot "
            f"be said yet: {sheets} marked, and it takes {found.fewest} at least."
        )
    return "How far these marks can be relied on cannot be said: all have the same total."


def kappa_words(one: Kappa | None, count: int) -> str:
    """How far two markers agree beyond chance, with its interval, or why it cannot be said."""
    if one and one.high - one.low < 1e-9:
        return f"{one.value:.2f}: all alike in {count} tasks, which gives no interval"
    if one:
        told = f"{one.value:.2f} (95 %: {one.low:.2f} to {one.high:.2f})"
        return f"{told}; rough, of {count} tasks only" if count < SURE_OF else told
    if not count:
        return "cannot be said: no task has two marks yet"
    return "cannot be said: both put every task into the same band"
