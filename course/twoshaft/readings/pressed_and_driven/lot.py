"""What the tasks of this module are drawn from: one learner's lot in one attempt."""

from __future__ import annotations

from functools import cached_property

from twoshaft.models.fit import Pressed
from twoshaft.questions import bank_of
from twoshaft.readings.keyed import Stream
from twoshaft.readings.lots import Lot as CommonLot
from twoshaft.units.sections.fits import Fits

BANK = bank_of("pressed-and-driven")


class Lot(CommonLot):
    """One learner's draw; the unit must have a section fits."""

    NEEDS = ("fits",)
    LACKS = "has no fits that suit the task"
    MEND = "look at its presses, seals and pins, or leave this module out"

    @property
    def fits(self) -> Fits:
        """The unit's fits."""
        return self.unit.fits

    @cached_property
    def pressed(self) -> list[Pressed]:
        """The unit's fits that are tight at times and that a press may make."""
        every = (Pressed.of(self.unit, entry.id) for entry in self.fits.presses if entry.press_kn)
        return [pressed for pressed in every if pressed.fit.most_um > 0]


def steps_between(stream: Stream, low: float, high: float, step: float) -> float:
    """A figure from low to high in whole steps."""
    return round(low + step * stream.integer(round((high - low) / step) + 1), 6)
