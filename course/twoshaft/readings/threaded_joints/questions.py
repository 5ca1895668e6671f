"""Questions about the work itself, in several versions of which each attempt gets another."""

from __future__ import annotations

from twoshaft.questions import bank_of
from twoshaft.readings.threaded_joints.given import Asked
from twoshaft.readings.threaded_joints.lot import Lot

BANK = bank_of("threaded-joints")


def draw_asked(lot: Lot) -> Asked:
    """One version of every question."""
    return Asked(**{name: lot.ask(name, BANK) for name in Asked.__struct_fields__})
