"""Taking the unit apart, step by step: what is still on, and what can be read before it is lost."""

from __future__ import annotations

from twoshaft.models.order import model_order
from twoshaft.models.order.snapshot import Snapshot
from twoshaft.models.shape import BuildShown, build_shown
from twoshaft.models.strip import LOST, NOW, reading_state, strip_task
from twoshaft.rigs.build import BuildSimulator
from twoshaft.rigs.words import minutes, named
from twoshaft.units.unit import Unit

_MOST_NAMED = 4


class StripSimulator(BuildSimulator):
    """The unit after so many steps of taking apart, in an order that the learner can change.

    Parameters
    ----------
    unit : Unit
        The unit as it is built, with the section *strip*.
    """

    def __init__(self, unit: Unit) -> None:
        task = strip_task(unit)
        self.readings = tuple(one.id for one in unit.strip.readings)
        super().__init__(task, model_order(task), drawn=unit)

    def _shown(self, bench: Snapshot, position: int) -> BuildShown:
        """What is still on at a place of the order, with what comes off next lit."""
        members = dict(zip(self.task.steps, self.task.members, strict=True))
        off = {id for step in bench.done for id in members[step]}
        coming = self.sequence[position : position + 1]
        hand = [id for step in coming for id in members[step] if id not in self.readings]
        still = [one.id for one in self.drawn.operations if one.id not in off | {*hand}]
        return build_shown(self.drawn, still, hand)

    def _happened(self, bench: Snapshot, tried: list[str]) -> str:
        if not tried:
            return "The unit is whole: nothing has come off yet."
        return super()._happened(bench, tried)

    def _states(self, bench: Snapshot) -> dict[str, str]:
        done = {*bench.done}
        open_ones = [one for one in self.readings if one not in done]
        return {one: reading_state(self.task, one, done) for one in open_ones}

    def _finding(self, bench: Snapshot) -> str:
        total = len(self.task.steps)
        states = self._states(bench)
        lost = [one for one, state in states.items() if state == LOST]
        told = f"{len(bench.done)} of {total} steps are done in {minutes(bench.minutes)}"
        if lost:
            return f"{told}; {len(lost)} readings are lost."
        if len(bench.done) == total:
            return f"{told}, and every reading was taken before it was lost."
        return f"{told}; {len(bench.ready)} can be done next."

    def _facts(self, bench: Snapshot) -> list[list[str]]:
        states = self._states(bench)
        facts = [
            fact for fact in super()._facts(bench) if fact[0] not in ("Out of reach", "Hidden")
        ]
        for word, wanted in (("Read now", NOW), ("Too late", LOST)):
            some = [one for one, state in states.items() if state == wanted]
            if some:
                facts.append([word, f"{named(self.task, some, most=_MOST_NAMED)}."])
        return facts


def strip_simulator(unit: Unit) -> StripSimulator:
    """Step through taking a unit apart.

    Parameters
    ----------
    unit : Unit
        The unit on the bench, with the section *strip*.

    Returns
    -------
    StripSimulator
        Something a notebook displays.

    Raises
    ------
    UnitFileError
        When the unit has no section *strip*.
    """
    return StripSimulator(unit)
