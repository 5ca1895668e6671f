"""Put the selector together and prove it, in a workable order."""

from __future__ import annotations

from twoshaft.models.order import OrderTask, chance_r0, starting_order
from twoshaft.models.order.mark import LEAST_R0
from twoshaft.readings.shift_and_lockout.given import Order
from twoshaft.readings.shift_and_lockout.lot import Lot
from twoshaft.records import Option
from twoshaft.units.kept import kept
from twoshaft.units.unit import Unit

LEFT_OUT = 1
BAND = 0.9
"""Width of the band in which the r0 of all parts of the pool lies."""


@kept()
def pool(unit: Unit) -> tuple[tuple[str, ...], ...]:
    """The steps of the stage, each time without another one; all equally hard."""
    steps = unit.operations_of.get(_stage(unit), ())
    parts = {}
    for left in steps:
        chosen = tuple(step for step in steps if step != left)
        parts[chosen] = chance_r0(OrderTask.from_unit(unit, chosen)) if len(chosen) > 3 else 0.0
    best: tuple[tuple[str, ...], ...] = ()
    for low in sorted(r0 for r0 in parts.values() if r0 >= LEAST_R0):
        band = tuple(part for part, r0 in parts.items() if low <= r0 <= low + BAND)
        if len(band) > len(best):
            best = band
    return best


def _stage(unit: Unit) -> str:
    """The stage in which the lockout is proven; empty if the unit has no such check."""
    checks = unit.faults.checks if unit.faults_if_any else ()
    proofs = {step for check in checks if check.kind == "lockout" for step in check.operations}
    return next((one.stage for one in unit.operations if one.id in proofs), "")


def draw(lot: Lot) -> Order:
    """The steps of the stage but one, in an order that earns nothing."""
    parts = pool(lot.unit)
    if not parts:
        raise lot.too_small("order")
    part = OrderTask.from_unit(lot.unit, lot.in_turn("order", parts)[0])
    start = starting_order(part, lot.stream.child("order"))
    return Order(
        operations=tuple(part.steps),
        start=tuple(Option(*one) for one in part.labelled(start)),
    )
