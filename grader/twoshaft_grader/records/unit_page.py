"""A unit as a page to leaf through: what is in its file, its order, the course it carries."""

from __future__ import annotations

from dataclasses import dataclass
from pathlib import Path

from twoshaft.errors import CourseError
from twoshaft.models.geartrain import freedom
from twoshaft.models.order import OrderTask, model_order
from twoshaft.models.shift import mechanism
from twoshaft.modules import COURSE
from twoshaft.plots.drawing import SHORT
from twoshaft.plots.gate import mechanism_figure
from twoshaft.plots.gear_section import train_figure
from twoshaft.plots.order import rule_figure
from twoshaft.plots.unit_section import unit_figure
from twoshaft.units.unit import Unit
from twoshaft_grader.cohort.content import Content
from twoshaft_grader.cohort.fit import fit, lacking_lines
from twoshaft_grader.marking.reference import load_solution
from twoshaft_grader.records.pages import fill

LEARNERS = ("first", "second", "third")
"""For so many made-up learners a module is drawn for the page; ``unit try`` draws for a cohort."""


@dataclass(frozen=True)
class Step:
    """A step of a stage: its number in the stage's picture, what it waits for and why."""

    number: int
    name: str
    reasons: tuple[tuple[str, str, str], ...]


@dataclass(frozen=True)
class Stage:
    """A stage: its picture of rules, and its steps in an order that works."""

    name: str
    about: str
    figure: str
    steps: tuple[Step, ...]


@dataclass(frozen=True)
class Told:
    """A module on this unit: its tasks, and what is lacking; or why it falls."""

    title: str
    tasks: tuple[str, ...]
    whole: int
    lacking: tuple[str, ...]
    falls: str


def unit_page(unit: Unit, content: Content) -> str:
    """The page as HTML, with its pictures in it.

    Parameters
    ----------
    unit : Unit
        Sound: what its audit finds is not told here.
    content : Content
        The course whose modules are tried.
    """
    from twoshaft.plots.style import css_variables

    whole = OrderTask.from_unit(unit)
    return fill(
        "unit.html.j2",
        unit=unit,
        typical=unit.typical(),
        section=unit_figure(unit, f"{unit.identity.name} in section"),
        rules=rule_figure(whole),
        steps=[whole.label(step) for step in whole.steps],
        stages=_stages(unit, whole),
        moving=_moving(unit),
        modules=[_told(module, path, unit) for module, path in content.modules.items()],
        style=css_variables(),
    )


def _stages(unit: Unit, whole: OrderTask) -> list[Stage]:
    order = model_order(whole)
    stages = []
    for stage in unit.stages:
        own = [step for step in order if whole.stage(step) == stage.id]
        if not own:
            continue
        part = OrderTask.from_unit(unit, [id for step in own for id in _members(whole, step)])
        steps = tuple(
            Step(part.number[step] + 1, whole.label(step), _reasons(whole, step)) for step in own
        )
        stages.append(Stage(stage.name, stage.about or "", rule_figure(part), steps))
    return stages


def _members(task: OrderTask, step: str) -> tuple[str, ...]:
    return task.members[task.number[step]]


def _reasons(task: OrderTask, step: str) -> tuple[tuple[str, str, str], ...]:
    """What a step waits for: the other step, the kind of reason, its text."""
    here = task.number[step]
    return tuple(
        (task.label(task.steps[bond.earlier]), SHORT[bond.reason.kind], bond.reason.text)
        for bond in task.bonds
        if bond.later == here
    )


def _moving(unit: Unit) -> list[tuple[str, str]]:
    """Pictures of gear train and shift, with a heading each."""
    found = []
    if train := unit.gear_train_if_any:
        figure = train_figure(train, (), (), freedom(train), "The gear train in neutral")
        found.append(("Gear train", figure))
    if shift := unit.shift_if_any:
        machine = mechanism(shift)
        if starts := machine.starts():
            found.append(("Shift, in neutral", mechanism_figure(machine, starts[0])))
    return found


def _told(module: str, path: Path, unit: Unit) -> Told:
    title = f"{COURSE[module].number:02} {COURSE[module].title}" if module in COURSE else module
    whole = len(load_solution(path).points)
    try:
        found = fit(path, module, unit, LEARNERS, salt="show", attempt=1, work_out=1)
    except CourseError as error:
        return Told(title, (), whole, (), error.sentence)
    tasks = tuple(found.solution.titles[task] for task in found.solution.points)
    return Told(title, tasks, whole, lacking_lines(found), "")
