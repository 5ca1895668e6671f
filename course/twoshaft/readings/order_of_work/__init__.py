"""Readings of the module "Order of work": own sub-assemblies, start orders and slips."""

from __future__ import annotations

from twoshaft.readings.order_of_work import (
    clock,
    new_parts,
    next_steps,
    several_hands,
    slips,
    sub_assembly,
    whole_unit,
    why,
)
from twoshaft.readings.order_of_work.given import Given
from twoshaft.readings.order_of_work.lot import Lot

__all__ = ["MODULE", "TASKS", "Given", "Lot"]

MODULE = "order-of-work"

TASKS = {
    "sub_assembly": sub_assembly.draw,
    "whole_unit": whole_unit.draw,
    "next_steps": next_steps.draw,
    "buried": slips.draw_buried,
    "repair": slips.draw_repair,
    "clock": clock.draw,
    "new_parts": new_parts.draw,
    "why": why.draw,
    "several_hands": several_hands.draw,
    "safe": slips.draw_safe,
}
