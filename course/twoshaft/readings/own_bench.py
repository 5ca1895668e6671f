"""Figures from the real bench and the maker's manual, put in the place of drawn ones."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any, TypeVar

from twoshaft.errors import CourseError
from twoshaft.readings.issue import MODULES
from twoshaft.readings.own_figure import BenchTask, Figure
from twoshaft.records import Record, changed
from twoshaft.units.unit import Unit

G = TypeVar("G", bound=Record)


def bench_tasks(module: str) -> dict[str, BenchTask]:
    """The tasks of a module that take figures of one's own, by name."""
    return getattr(MODULES.get(module), "BENCH", {})


def bench_figures(module: str, task: str, unit: Unit, given: Any) -> tuple[Figure, ...]:
    """The figures of a task that can be replaced; empty if there are none.

    Parameters
    ----------
    module, task : str
    unit : Unit
    given : Record
        What was drawn.
    """
    declared = bench_tasks(module).get(task)
    drawn = getattr(given, task) if declared else None
    return declared.figures(unit, drawn) if declared and drawn else ()


def put_in(
    module: str,
    task: str,
    unit: Unit,
    given: G,
    values: Mapping[str, float | str],
    source: str = "",
) -> G:
    """What is given with a task's figures replaced.

    Parameters
    ----------
    module, task : str
    unit : Unit
    given : Record
        What was drawn; it is not changed.
    values : mapping of str to float or str
        All figures of the task by name, each in its figure's unit; what is chosen by its key.
    source : str
        Where they come from, in words that the task's tables show.

    Returns
    -------
    Record

    Raises
    ------
    CourseError
        When one is missing or not plausible, or the models can decide nothing on them.
    """
    own: dict[str, Any] = {}
    figures = bench_figures(module, task, unit, given)
    for figure in figures:
        if figure.name not in values:
            raise CourseError(f"“{figure.prompt}” is missing")
        if fault := figure.fault(values[figure.name]):
            raise CourseError(fault)
        value = values[figure.name]
        own[figure.name] = round(float(value)) if figure.whole else value
    renew = bench_tasks(module)[task].renew
    try:
        renewed = changed(renew(unit, getattr(given, task), own), source=source)
    except CourseError:
        raise
    except (ArithmeticError, ValueError) as error:
        raise CourseError("the models cannot work with these figures together") from error
    return changed(given, **{task: renewed})
