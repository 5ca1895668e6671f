"""A fitting job whose steps have come out of order."""

from __future__ import annotations

from twoshaft.models.order import OrderTask, starting_order
from twoshaft.readings.pressed_and_driven.jobs import load_fitting_jobs
from twoshaft.readings.pressed_and_driven.lot import Lot


def draw(lot: Lot) -> dict:
    """A job's ``name``, its ``operations`` and the ``start`` order, which earns nothing."""
    jobs = load_fitting_jobs()
    stage = lot.in_turn("order", jobs.stages)[0]
    task = OrderTask.from_unit(jobs, jobs.operations_of[stage.id])
    start = starting_order(task, lot.stream.child("order"))
    return {
        "job": stage.name,
        "operations": list(jobs.operations_of[stage.id]),
        "start": task.labelled(start),
    }
