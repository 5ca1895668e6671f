"""What the tasks of this module are drawn from: one learner's lot in one attempt."""

from __future__ import annotations

from twoshaft.questions import bank_of
from twoshaft.readings.keyed import Stream
from twoshaft.readings.lots import Lot as CommonLot
from twoshaft.records import Scenes
from twoshaft.safety import Safety, load_safety

BANK = bank_of("course-and-safety")


class Lot(CommonLot):
    """One learner's draw; ``safety`` holds the hazards and cautions."""

    @property
    def safety(self) -> Safety:
        """Hazards and cautions."""
        return load_safety()

    def asked(self, name: str, count: int) -> Scenes:
        """So many scenes of a list of the bank, with the answers that each of them offers."""
        stream = self.stream.child(name)
        return self.scenes_asked(name, BANK, count, lambda: _figures(stream))


def _figures(stream: Stream) -> dict[str, object]:
    """What scenes are filled with: times, counts, masses [kg, g], lengths, heat [°C], air [bar]."""

    def between(low: int, high: int, step: int = 1) -> int:
        return low + step * stream.integer((high - low) // step + 1)

    def time(hours: int) -> str:
        return f"{hours}:{between(0, 55, 5):02d}"

    kg = between(24, 44)
    return {
        "early": time(between(8, 10)),
        "late": time(between(11, 14)),
        "due": time(between(15, 17)),
        "task": between(2, 9),
        "count": between(6, 12),
        "few": between(2, 5),
        "minutes": between(11, 49),
        "digit": between(1, 9),
        "figure": between(110, 990, 11),
        "bar": (bar := between(3, 8)),
        "low": f"{1 + bar / 10:.1f}",  # turned down, to blow an oil gallery clear
        "kg": kg,
        "more": kg + between(6, 56, 10),
        "less": kg - between(4, 12),
        "light": between(9, 19),
        "grams": between(300, 1000, 50),
        "mm": between(4, 12),
        "cm": between(30, 90, 5),
        "bore": between(25, 60, 5),
        "reach": between(40, 60),
        "far": between(3, 9),
        "deg": between(40, 90, 5),
        "turns": between(3, 12),
        "hot": between(90, 120, 5),
        "rpm": between(400, 1200, 50),
    }
