"""What the tasks of this module are drawn from: one learner's lot in one attempt."""

from __future__ import annotations

from twoshaft.questions import bank_of
from twoshaft.readings.keyed import Stream
from twoshaft.readings.lots import Lot as CommonLot
from twoshaft.records import Scenes
from twoshaft.units.sections.closeout import CloseOut
from twoshaft.units.sections.strip import StripOil

BANK = bank_of("close-out")
SCENES = 4
MONTHS = ("March", "April", "May", "June", "July")
INITIALS = ("KT", "MB", "LR", "AS", "JW", "NO")


class Lot(CommonLot):
    """One learner's draw."""

    NEEDS = ("strip", "close_out")

    @property
    def section(self) -> CloseOut:
        """What the unit asks for."""
        return self.unit.close_out

    @property
    def filling(self) -> StripOil:
        """The unit's oil."""
        return self.unit.strip.oil

    def asked(self, name: str) -> Scenes:
        """Some scenes of a list of the bank, with the answers that each of them offers."""
        stream = self.stream.child(name)
        return self.scenes_asked(name, BANK, SCENES, lambda: _figures(stream))


def _figures(stream: Stream) -> dict[str, object]:
    """What scenes are filled with: counts, lengths, times, torques, days and initials."""
    limit = 12 + 2 * stream.integer(7)
    return {
        "few": 2 + stream.integer(4),
        "mm": 3 + stream.integer(9),
        "km": 10 + 5 * stream.integer(12),
        "minutes": 5 + stream.integer(25),
        "kg": 38 + stream.integer(24),
        "nm": 20 + stream.integer(15),
        "shim": f"1.{10 + 5 * stream.integer(16)}",
        "litre": f"2.{1 + stream.integer(8)}",
        "hot": 65 + stream.integer(30),
        "mbar": 100 + 10 * stream.integer(8),
        "bar": 4 + stream.integer(5),
        "ml": f"{(10 + stream.integer(30)) / 10:.1f}",
        "day": 2 + stream.integer(26),
        "month": stream.choice(MONTHS),
        "who": stream.choice(INITIALS),
        "limit": limit,
        "over": limit + 3 + stream.integer(8),
        "under": limit - 3 - stream.integer(5),
        "hours": 2 + stream.integer(5),
    }
