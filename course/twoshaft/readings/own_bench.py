"""Figures from the real bench and the maker's manual, put in the place of drawn ones."""

from __future__ import annotations

import copy
from collections.abc import Mapping
from typing import Any

from twoshaft.errors import CourseError
from twoshaft.readings.issue import MODULES
from twoshaft.readings.own_figure import BenchTask, Figure
from twoshaft.units.unit import Unit


def bench_tasks(module: str) -> dict[str, BenchTask]:
    """The tasks of a module that take figures of one's own, by name."""
    return getattr(MODULES.get(module), "BENCH", {})


def bench_figures(
    module: str, task: str, unit: Unit, given: Mapping[str, Any]
) -> tuple[Figure, ...]:
    """The figures of a task that can be replaced; empty if there are none.

    Parameters
    ----------
    module, task : str
    unit : Unit
    given : mapping
        What was drawn, by task.
    """
    declared = bench_tasks(module).get(task)
    return declared.figures(unit, given[task]) if declared and task in given else ()


def put_in(
    module: str,
    task: str,
    unit: Unit,
    given: Mapping[str, Any],
    values: Mapping[str, float | str],
    source: str = "",
) -> dict[str, Any]:
    """What is given with a task's figures replaced.

    Parameters
    ----------
    module, task : str
    unit : Unit
    given : mapping
        What was drawn, by task; it is not changed.
    values : mapping of str to float or str
        All figures of the task by name, each in its figure's unit; what is chosen by its key.
    source : str
        Where they come from, in words that the task's tables show.

    Returns
    -------
    dict

    Raises
    ------
    CourseError
        When one is missing or not plausible, or the models can decide nothing on them.
    """
    figures = bench_figures(module, task, unit, given)
    changed = copy.deepcopy(given[task])
    for figure in figures:
        if figure.name not in values:
            raise CourseError(f"“{figure.prompt}” is missing")
        if fault := figure.fault(values[figure.name]):
            raise CourseError(fault)
        place = changed
        for step in figure.path[:-1]:
            place = place[step]
        value = values[figure.name]
        place[figure.path[-1]] = round(value) if figure.whole else value
    try:
        renewed = bench_tasks(module)[task].renew(unit, changed)
    except CourseError:
        raise
    except (ArithmeticError, ValueError) as error:
        raise CourseError("the models cannot work with these figures together") from error
    return {**given, task: renewed | {"source": source}}
