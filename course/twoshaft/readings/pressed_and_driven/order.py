"""A fitting job whose steps have come out of order."""

from __future__ import annotations

from twoshaft.models.order import OrderTask, starting_order
from twoshaft.readings.pressed_and_driven.given import Order
from twoshaft.readings.pressed_and_driven.jobs import load_fitting_jobs
from twoshaft.readings.pressed_and_driven.lot import Lot
from twoshaft.records import Option


def draw(lot: Lot) -> Order:
    """A job, its steps in an order that earns nothing."""
    jobs = load_fitting_jobs()
    stage = lot.in_turn("order", jobs.stages)[0]
    task = OrderTask.from_unit(jobs, jobs.operations_of[stage.id])
    start = starting_order(task, lot.stream.child("order"))
    return Order(
        job=stage.name,
        operations=tuple(jobs.operations_of[stage.id]),
        start=tuple(Option(*pair) for pair in task.labelled(start)),
    )
