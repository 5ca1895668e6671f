"""What the tasks of this module are drawn from: one learner's lot in one attempt."""

from __future__ import annotations

from functools import cached_property

from twoshaft.models.order import OrderTask
from twoshaft.models.wholebuild import Ask, Job, asks_of
from twoshaft.readings.lots import Lot as CommonLot


class Lot(CommonLot):
    """One learner's draw; ``task`` is the order of the whole unit."""

    NEEDS = ("bearings", "fasteners", "shift", "gear_train", "faults")
    LACKS = "holds too little for the task"
    MEND = "describe more of it in its file, or leave this module out"

    @cached_property
    def job(self) -> Job:
        """The unit as it stands in its file, everything asked."""
        return Job.of(self.unit)

    @property
    def task(self) -> OrderTask:
        """The order of the whole unit."""
        return self.job.task

    def asks(self, kind: str) -> list[Ask]:
        """Decisions of one kind, in the unit's order."""
        return [ask for ask in asks_of(self.job) if ask.kind == kind]
