"""What the tasks of this module are drawn from: one learner's lot in one attempt."""

from __future__ import annotations

from twoshaft.questions import bank_of
from twoshaft.readings.keyed import Stream
from twoshaft.readings.lots import SLEEVES
from twoshaft.readings.lots import Lot as CommonLot
from twoshaft.records import Option, Scenes
from twoshaft.units.sections.geartrain import GearEngaged, GearTrain, Mesh

BANK = bank_of("gear-train-and-checks")
SCENES = 4


class Lot(CommonLot):
    """One learner's draw."""

    NEEDS = ("gear_train",)
    LACKS = "has too small a gear train for the task"
    MEND = "give it more gears and synchronisers, or leave this module out"

    @property
    def train(self) -> GearTrain:
        """The unit's gear train."""
        return self.unit.gear_train

    @property
    def forward(self) -> list[GearEngaged]:
        """The forward gears."""
        return [gear for gear in self.train.gears if not gear.reverse]

    def asked(self, name: str, stream: Stream, count: int = SCENES) -> Scenes:
        """So many scenes of a list of the bank, with the answers that each of them offers."""
        return self.scenes_asked(name, BANK, count, lambda: _figures(stream))

    def mesh(self, id: str) -> Mesh:
        """A mesh by id."""
        return next(mesh for mesh in self.train.meshes if mesh.id == id)

    def names(self) -> dict[str, str]:
        """Gear names by id."""
        return {gear.id: gear.name for gear in self.train.gears}


def options(stream: Stream, name: str) -> tuple[Option, ...]:
    """A list of the bank in random order."""
    return tuple(stream.shuffled(BANK.lists[name]))


def _figures(stream: Stream) -> dict[str, object]:
    """What scenes are filled with: gears, turns, torques [N*m], lengths, air, masses, minutes."""
    gears = [stream.choice(sleeve) for sleeve in stream.shuffled(SLEEVES)]
    return {
        "a": gears[0],
        "b": gears[1],
        "nut": 120 + stream.integer(81),
        "early": 30 + stream.integer(50),
        "few": 2 + stream.integer(4),
        "turns": 8 + stream.integer(12),
        "mm": 2 + stream.integer(7),
        "minutes": 5 + stream.integer(25),
        "kg": 34 + stream.integer(12),
        "bore": 30 + 5 * stream.integer(7),
        "rpm": 200 + 50 * stream.integer(6),
        "bar": 2 + stream.integer(5),
    }
