"""What the tasks of this module are drawn from: one learner's lot in one attempt."""

from __future__ import annotations

from twoshaft.questions import bank_of
from twoshaft.readings.lots import Lot as CommonLot
from twoshaft.safety import Safety, load_safety

BANK = bank_of("course-and-safety")


class Lot(CommonLot):
    """One learner's draw; ``safety`` holds the hazards and cautions."""

    @property
    def safety(self) -> Safety:
        """Hazards and cautions."""
        return load_safety()
