"""What the tasks of this module are drawn from: one learner's lot in one attempt."""

from __future__ import annotations

from twoshaft.models.joint import Fastening, Seat, Thread, nut_factor
from twoshaft.readings.lots import Lot as CommonLot
from twoshaft.readings.threaded_joints.given import Bolt, Factor, State
from twoshaft.units.kept import kept
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


@kept()
def _fastenings_of(unit: Unit) -> tuple[Fastening, ...]:
    return tuple(Fastening.of(unit, group.id) for group in unit.fasteners.groups)


def factors(fastening: Fastening, thread: Thread, seat: Seat) -> tuple[Factor, ...]:
    """The factor K of T = K F d, to three places, for each state that the fastening knows."""
    return tuple(
        Factor(
            id,
            state.name,
            round(float(nut_factor(thread, seat, state.thread[1], state.head[1])), 3),
        )
        for id, state in fastening.states.items()
    )


def about(fastening: Fastening) -> Bolt:
    """What a job card says of a bolt."""
    group = fastening.group
    return Bolt(
        group=group.id,
        name=group.name,
        thread=fastening.thread.name,
        diameter_mm=fastening.thread.d_m * 1e3,
        strength=group.strength,
        state=State(group.state, fastening.friction.name),
        factors=factors(fastening, fastening.thread, fastening.seat),
    )
