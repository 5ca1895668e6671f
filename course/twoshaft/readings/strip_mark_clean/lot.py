"""What the tasks of this module are drawn from: one learner's lot in one attempt."""

from __future__ import annotations

from functools import cached_property

from twoshaft.errors import UnitFileError
from twoshaft.models.order import OrderTask
from twoshaft.models.strip import strip_task, strip_unit
from twoshaft.questions import bank_of
from twoshaft.readings.keyed import Stream
from twoshaft.readings.lots import Lot as CommonLot
from twoshaft.records import Scenes
from twoshaft.units.sections.strip import StripOil

BANK = bank_of("strip-mark-clean")
SCENES = 4
LEAST_READINGS = 6


class Lot(CommonLot):
    """One learner's draw."""

    NEEDS = ("strip",)
    LACKS = "comes apart in too few steps for the task"
    MEND = "name more steps and readings in the section 'strip', or leave this module out"

    def check(self) -> None:
        """Ask for enough readings."""
        if len(self.unit.strip.readings) < LEAST_READINGS:
            raise UnitFileError(
                f"unit {self.unit.identity.id!r} names fewer than {LEAST_READINGS} readings in its "
                "section 'strip'",
                mend="add some, or leave this module out",
            )

    @cached_property
    def whole(self) -> OrderTask:
        """Taking the unit apart, with its readings."""
        return strip_task(self.unit)

    @cached_property
    def bare(self) -> OrderTask:
        """The same without readings: one that was forgotten holds up nothing."""
        return OrderTask.from_unit(strip_unit(self.unit, readings=False))

    @property
    def readings(self) -> list[str]:
        """Ids of what is read before it is lost."""
        return [one.id for one in self.unit.strip.readings]

    @property
    def oil(self) -> StripOil:
        """The unit's oil."""
        return self.unit.strip.oil

    def asked(self, name: str) -> Scenes:
        """Some scenes of a list of the bank, with the answers that each of them offers."""
        stream = self.stream.child(name)
        return self.scenes_asked(name, BANK, SCENES, lambda: _figures(stream))


def _figures(stream: Stream) -> dict[str, object]:
    """What scenes are filled with: counts, lengths, times, masses, temperatures, pressures."""
    return {
        "few": 2 + stream.integer(4),
        "mm": 3 + stream.integer(9),
        "long": 25 + stream.integer(90),
        "tenths": 2 + stream.integer(9),
        "km": 40 + 5 * stream.integer(30),
        "minutes": 5 + stream.integer(25),
        "hours": 2 + stream.integer(10),
        "bore": 25 + 5 * stream.integer(8),
        "kg": 22 + stream.integer(24),
        "rpm": 1000 + 100 * stream.integer(20),
        "bar": 2 + stream.integer(6),
        "hot": 65 + stream.integer(30),
        "warm": 25 + stream.integer(18),
    }
