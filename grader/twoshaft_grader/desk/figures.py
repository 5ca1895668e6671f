"""Figures as tables of the desk show them, on the terminal and on the screen."""

from __future__ import annotations

from typing import TYPE_CHECKING

if TYPE_CHECKING:  # its statistics take long to load
    from twoshaft_grader.records.item_statistics import Estimate


def figure(value: float | None) -> str:
    """A figure to two places, as short as it can be; empty where there is none."""
    return "" if value is None else f"{value:.2f}".rstrip("0").rstrip(".")


def estimate(one: Estimate | None) -> str:
    """An estimate with its interval."""
    return f"{one.value:.2f} ({one.low:.2f} to {one.high:.2f})" if one else "too few to say"
