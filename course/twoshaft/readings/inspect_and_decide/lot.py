"""What the tasks of this module are drawn from: one learner's lot in one attempt."""

from __future__ import annotations

from twoshaft.questions import bank_of
from twoshaft.readings.keyed import Stream
from twoshaft.readings.lots import Lot as CommonLot
from twoshaft.records import Scenes
from twoshaft.units.sections.inspect import Inspect

BANK = bank_of("inspect-and-decide")
SCENES = 4


class Lot(CommonLot):
    """One learner's draw."""

    NEEDS = ("inspect",)

    @property
    def section(self) -> Inspect:
        """The unit's limits."""
        return self.unit.inspect

    def asked(self, name: str) -> Scenes:
        """Some scenes of a list of the bank, with the answers that each of them offers."""
        stream = self.stream.child(name)
        return self.scenes_asked(name, BANK, SCENES, lambda: _figures(stream))


def _figures(stream: Stream) -> dict[str, object]:
    """What scenes are filled with: counts, lengths, times, and sizes beside their limits."""
    least = 4 + stream.integer(16)
    pad = 46 + stream.integer(14)
    over, under = 1 + stream.integer(3), 1 + stream.integer(3)
    return {
        "few": 2 + stream.integer(4),
        "mm": 3 + stream.integer(9),
        "km": 40 + 5 * stream.integer(30),
        "minutes": 5 + stream.integer(25),
        "bore": 25 + 5 * stream.integer(8),
        "kg": 22 + stream.integer(24),
        "rpm": 1000 + 100 * stream.integer(20),
        "bar": 2 + stream.integer(6),
        "hot": 65 + stream.integer(30),
        "least": f"{least / 10:.1f}",
        "above": f"{(least + over) / 10:.1f}",
        "below": f"{(least - under) / 10:.1f}",
        "pad": f"{pad / 10:.1f}",
        "thick": f"{(pad + over) / 10:.1f}",
        "thin": f"{(pad - under) / 10:.1f}",
        "size": 6 + 2 * stream.integer(3),
    }
