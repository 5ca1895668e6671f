"""What the tasks of this module are drawn from: one learner's lot in one attempt."""

from __future__ import annotations

from twoshaft.questions import bank_of
from twoshaft.readings.lots import Lot as CommonLot

BANK = bank_of("measuring-and-tools")


class Lot(CommonLot):
    """One learner's draw."""

    NEEDS = ("fasteners",)
    MEND = "give it more wrenches and bolts, or leave this module out"
