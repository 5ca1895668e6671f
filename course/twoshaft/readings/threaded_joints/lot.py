"""What the tasks of this module are drawn from: one learner's lot in one attempt."""

from __future__ import annotations

from functools import lru_cache

from twoshaft.models.joint import Fastening, nut_factor
from twoshaft.readings.lots import Lot as CommonLot
from twoshaft.units.unit import Unit


class Lot(CommonLot):
    """One learner's draw; ``fastenings`` are all groups of the unit."""

    NEEDS = ("fasteners",)
    LACKS = "has no fastener that suits the task"
    MEND = "give it more groups of fasteners, or leave this module out"

    @property
    def fastenings(self) -> tuple[Fastening, ...]:
        """Every group of the unit."""
        return _fastenings_of(self.unit)


@lru_cache(maxsize=8)
def _fastenings_of(unit: Unit) -> tuple[Fastening, ...]:
    return tuple(Fastening.of(unit, group.id) for group in unit.fasteners.groups)


def factors(fastening: Fastening) -> list[list]:
    """The factor K of T = K F d for each state: id, name, K to three places."""
    return [
        [
            key,
            state.name,
            round(
                float(nut_factor(fastening.thread, fastening.seat, state.thread[1], state.head[1])),
                3,
            ),
        ]
        for key, state in fastening.states.items()
    ]


def about(fastening: Fastening) -> dict:
    """What a job card says of a bolt: names, thread, state."""
    group = fastening.group
    return {
        "group": group.id,
        "name": group.name,
        "thread": fastening.thread.name,
        "diameter_mm": fastening.thread.d_m * 1e3,
        "strength": group.strength,
        "state": [group.state, fastening.friction.name],
        "factors": factors(fastening),
    }
