"""The calculations of each module, by its id."""

from collections.abc import Mapping

from twoshaft.modules import COURSE
from twoshaft.practice.calculation import Calculation
from twoshaft.practice.calculations import (
    close_out,
    course_and_safety,
    gear_train_and_checks,
    inspect_and_decide,
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

_FILES = {
    file.__name__.rpartition(".")[2].replace("_", "-"): file
    for file in (
        course_and_safety,
        measuring_and_tools,
        order_of_work,
        threaded_joints,
        pressed_and_driven,
        shims_and_preload,
        sealant_film,
        shift_and_lockout,
        gear_train_and_checks,
        reading_faults,
        whole_build,
        strip_mark_clean,
        inspect_and_decide,
        close_out,
    )
}
CALCULATIONS: Mapping[str, tuple[Calculation, ...]] = {id: _FILES[id].CALCULATIONS for id in COURSE}
