"""The calculations of each module, by its id."""

from collections.abc import Mapping

from twoshaft.practice.calculation import Calculation
from twoshaft.practice.work import (
    course_and_safety,
    gear_train_and_checks,
    measuring_and_tools,
    order_of_work,
    pressed_and_driven,
    reading_faults,
    sealant_film,
    shift_and_lockout,
    shims_and_preload,
    strip_mark_clean,
    threaded_joints,
    whole_build,
)

CALCULATIONS: Mapping[str, tuple[Calculation, ...]] = {
    "course-and-safety": course_and_safety.CALCULATIONS,
    "measuring-and-tools": measuring_and_tools.CALCULATIONS,
    "order-of-work": order_of_work.CALCULATIONS,
    "threaded-joints": threaded_joints.CALCULATIONS,
    "pressed-and-driven": pressed_and_driven.CALCULATIONS,
    "shims-and-preload": shims_and_preload.CALCULATIONS,
    "sealant-film": sealant_film.CALCULATIONS,
    "shift-and-lockout": shift_and_lockout.CALCULATIONS,
    "gear-train-and-checks": gear_train_and_checks.CALCULATIONS,
    "reading-faults": reading_faults.CALCULATIONS,
    "whole-build": whole_build.CALCULATIONS,
    "strip-mark-clean": strip_mark_clean.CALCULATIONS,
}
