"""Readings of the module "Pressed and driven parts": own fits, gauges, seals, pins and jobs."""

from __future__ import annotations

from twoshaft.readings.pressed_and_driven import (
    bench,
    driver,
    heat,
    limits,
    locks,
    order,
    pins,
    press,
    seal,
)
from twoshaft.readings.pressed_and_driven.given import Given
from twoshaft.readings.pressed_and_driven.lot import Lot
from twoshaft.readings.pressed_and_driven.own_figures import BENCH

__all__ = ["BENCH", "MODULE", "NEEDS", "TASKS", "Given", "Lot"]

MODULE = "pressed-and-driven"

TASKS = {
    "limits": limits.draw,
    "press": press.draw,
    "heat": heat.draw,
    "driver": driver.draw,
    "seal": seal.draw,
    "spring": pins.draw_spring,
    "taper": pins.draw_taper,
    "locks": locks.draw,
    "order": order.draw,
    "bench": bench.draw,
}

NEEDS = {"press": ("press",), "seal": ("seal",), "spring": ("spring-pin",)}
