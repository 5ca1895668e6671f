"""The reference answers: the solution notebook, run under one learner's own readings.

A solution's form cells say what is asked, its reference cells work out what is right and hand
each value to :func:`ref`, going on with what it gives back. Run once with the reference going on
(the clean pass) and once with the learner's own answers going on (the carried pass), the same
cells tell a slip from what follows from it.
"""

from __future__ import annotations

import hashlib
import json
import pickle
from collections.abc import Callable, Mapping, Sequence
from contextvars import ContextVar
from dataclasses import dataclass, field, fields, is_dataclass
from functools import lru_cache
from pathlib import Path
from types import CodeType
from typing import Any

from twoshaft.errors import CourseError
from twoshaft.jobsheet.kinds import Asker, Field
from twoshaft.models import order
from twoshaft.readings import given_in
from twoshaft.units.quantities import Q
from twoshaft.units.unit import Unit
from twoshaft_grader.marking.cell_names import CellNames
from twoshaft_grader.marking.kinds import JUDGES, Reference, Seen, Slip, judge_of

TOLERANCES = frozenset({"absolute", "relative", "rounding"})


@dataclass(frozen=True)
class Cell:
    """A form or reference cell of a solution, compiled."""

    tag: str
    number: int
    code: CodeType
    names: CellNames


@dataclass(frozen=True)
class Solution:
    """A solution notebook, ready to be run without a kernel.

    Attributes
    ----------
    path : str
        Where it was read from.
    module : str
        Module id.
    version : str
        Course version that it was built with.
    cells : tuple of Cell
        In the notebook's order.
    points : dict of str to float
        Points of each task, in the notebook's order.
    title : str
        The notebook's first heading.
    titles : dict of str to str
        Heading of each task's text.
    digest : str
        SHA-256 of the file.
    """

    path: str
    module: str
    version: str
    cells: tuple[Cell, ...]
    points: dict[str, float]
    title: str
    titles: dict[str, str]
    digest: str


@dataclass
class Answered:
    """The outcome of one pass.

    Attributes
    ----------
    fields : dict of str to Field
        Every field by name, in the sheet's order.
    tasks : dict of str to tuple of str
        Names of each task's fields.
    references : dict of str to Reference
        By field name.
    fell_back : frozenset of str
        Fields whose reference cell refused the learner's figures.
    set_aside : frozenset of str
        Fields whose own value cannot have come from the learner's readings: the working went on
        with the reference.
    """

    fields: dict[str, Field] = field(default_factory=dict)
    tasks: dict[str, tuple[str, ...]] = field(default_factory=dict)
    references: dict[str, Reference] = field(default_factory=dict)
    fell_back: frozenset[str] = frozenset()
    set_aside: frozenset[str] = frozenset()


class _Recorder(Asker):
    """Stands in for the sheet: asks the same questions, and remembers what each form asks."""

    def __init__(self, answered: Answered, given: Any, unit: Unit) -> None:
        self.given, self.unit, self._answered = given, unit, answered

    def form(self, task: str, *fields: Field, **_: Any) -> None:
        """Take down a task's fields."""
        if task in self._answered.tasks:
            raise CourseError(f"task {task!r} has two forms")
        for asked in fields:
            if asked.name in self._answered.fields:
                raise CourseError(f"field {asked.name!r} is asked twice")
            self._answered.fields[asked.name] = asked
        self._answered.tasks[task] = tuple(asked.name for asked in fields)


@dataclass
class _Pass:
    answered: Answered
    own: Mapping[str, Any]
    goes_on: bool = True  # whether the cell does anything with what a reference gives back
    seen: Callable[[str], Seen] = lambda name: Seen()
    fits: Mapping[str, bool] = field(default_factory=dict)  # held against the clean pass
    met: list[str] = field(default_factory=list)
    set_aside: set[str] = field(default_factory=set)

    def take(self, reference: Reference) -> Any:
        asked = self.answered.fields.get(reference.name)
        if asked is None:
            raise CourseError(f"ref names {reference.name!r}, which no form asks")
        if reference.name in self.answered.references:
            raise CourseError(f"field {reference.name!r} is given two references")
        judge = judge_of(asked)
        if not judge.accepts(asked, reference.value):
            raise CourseError(f"the reference of {reference.name!r} is not {judge.wanted}")
        if reference.tolerance is not None and not judge.tolerates:
            raise CourseError(f"the judge of {reference.name!r} knows no tolerance")
        self.answered.references[reference.name] = reference
        self.met.append(reference.name)
        if not self.goes_on:
            return None
        own = self.own.get(reference.name)
        if own is None:
            return judge.clean(reference.value)
        # A figure may be right, or a slip, as if there were none, or follow from an earlier slip.
        fits = self.fits.get(reference.name, False)
        if not fits and not judge.plausible(asked, reference, own, self.seen(reference.name)):
            self.set_aside.add(reference.name)
            return judge.clean(reference.value)
        return judge.carried(reference.value, own)


_current: ContextVar[_Pass | None] = ContextVar("current pass", default=None)


def ref(
    name: str,
    value: Any,
    *,
    outcome: str,
    shows: str | tuple[str, ...] = (),
    weight: float = 1,
    tolerance: Any = None,
    must_pass: bool = False,
    slips: Sequence[Slip] = (),
    lesson: str = "",
    steps: int = 1,
) -> Any:
    """Say what is right for a field, and go on with what this gives back.

    Parameters
    ----------
    name : str
        The field.
    value : object
        Number: a quantity, or a plain number. Choice: the right key, or a set of keys that are
        all right. Choices: the right keys. Each: the right key, or a set of keys that are all
        right, by line. Order: the ``OrderTask``. Path: the ``HandTest``. Of every kind its judge
        says it in ``wanted``.
    outcome : str
        The outcome that the field is evidence for.
    shows : str or tuple of str
        Which of the outcome's criteria the field shows.
    weight : float
        Share of the task's points, relative to its other fields.
    tolerance : quantity, float or dict, optional
        Of a number, or of another kind whose judge ``tolerates``: a quantity (either way), a
        float (relative), or a dict of ``absolute``, ``relative`` and ``rounding`` (the step
        rounded to), of which the widest counts. Left out: rounding to three figures, none for a
        whole plain number.
    must_pass : bool
        Whether a slip here fails the outcome whatever the marks.
    slips : sequence of Slip
        Typical wrong answers.
    lesson : str
        Where to read, as ``02-order-of-work#what-buries-what``.
    steps : int
        Steps of work that lead to the answer (to a line of it, a tick), where they are more for
        some learners than for others: the build asks whether what is given is equally hard.

    Returns
    -------
    object
        The value to go on with: the reference, or in the carried pass the learner's own. For an
        order, a tuple of step ids.
    """
    if weight <= 0:
        raise CourseError(f"the weight of {name!r} is {weight}", mend="give a weight above zero")
    if isinstance(tolerance, dict) and not set(tolerance) <= TOLERANCES:
        raise CourseError(
            f"the tolerance of {name!r} has another kind than {', '.join(sorted(TOLERANCES))}"
        )
    criteria = (shows,) if isinstance(shows, str) else tuple(shows)
    reference = Reference(
        name, value, outcome, float(weight), tolerance, must_pass, tuple(slips), lesson, criteria,
        steps,
    )  # fmt: skip
    current = _current.get()
    return clean_value(value) if current is None else current.take(reference)


def clean_value(value: Any) -> Any:
    """Return what a reference is worth to the working that follows it."""
    owner = next((judge for judge in JUDGES.values() if judge.owns(value)), None)
    return value if owner is None else owner.clean(value)


def load_solution(path: Path) -> Solution:
    """Read and compile a built solution notebook; once for each version of the file.

    Raises
    ------
    CourseError
        When it cannot be read.
    """
    try:
        data = Path(path).read_bytes()
    except OSError as error:
        raise CourseError(
            "the solution notebook is not there", where=str(path), mend="run the notebook build"
        ) from error
    return solution_of(path, data)


def solution_of(path: Path, data: bytes) -> Solution:
    """Compile a solution notebook that has been read, or shrunk to a unit; as `load_solution`."""
    return _compiled(str(path), hashlib.sha256(data).hexdigest(), data)


@lru_cache(maxsize=32)
def _compiled(path: str, digest: str, data: bytes) -> Solution:
    cells, points, title, titles = [], {}, "", {}
    try:
        nb = json.loads(data)
        for number, cell in enumerate(nb["cells"], 1):
            source, meta = "".join(cell["source"]), cell["metadata"]
            tags = meta.get("tags", [])
            if cell["cell_type"] == "markdown":
                heading = _heading(source)
                title = title or heading
                if "task" in tags:
                    titles[meta["nbgrader"]["grade_id"].removesuffix("-task")] = heading
            if "mark" in tags:
                points[meta["nbgrader"]["grade_id"]] = float(meta["nbgrader"]["points"])
            for tag in ("form", "reference"):
                if tag in tags and cell["cell_type"] == "code":
                    code = compile(source, f"{Path(path).name}, cell {number}", "exec")
                    cells.append(Cell(tag, number, code, CellNames.of(source)))
        about = nb["metadata"]["twoshaft"]
        return Solution(
            path=path,
            module=about["module"],
            version=about["version"],
            cells=tuple(cells),
            points=points,
            title=title or about["module"],
            titles=titles,
            digest=digest,
        )
    except (ValueError, KeyError, TypeError, SyntaxError) as error:
        raise CourseError(
            f"the solution notebook cannot be read ({error})",
            where=path,
            mend="build it again from its text source",
        ) from error


def _heading(text: str) -> str:
    """The first heading of a text cell, without its marks; empty if there is none."""
    lines = (line for line in text.splitlines() if line.startswith("#"))
    return next(lines, "").lstrip("#").strip()


def run_clean(solution: Solution, issued: Mapping[str, Any], unit: Unit) -> Answered:
    """Run a solution with the reference going on.

    Parameters
    ----------
    solution : Solution
    issued : mapping
        What was issued to the learner; its ``given`` is used.
    unit : Unit

    Returns
    -------
    Answered

    Raises
    ------
    CourseError
        When a cell of the solution fails; names file, cell and reason.
    """
    return run_both(solution, issued, unit, lambda fields: {})[0]


def run_both(
    solution: Solution,
    issued: Mapping[str, Any],
    unit: Unit,
    own: Callable[[Mapping[str, Field]], Mapping[str, Any]],
) -> tuple[Answered, Answered]:
    """Run both passes.

    Parameters
    ----------
    solution, issued, unit
        As in :func:`run_clean`.
    own : callable
        Given the fields by name, the learner's own readable values by field name.

    Returns
    -------
    clean, carried : Answered
        ``carried`` is ``clean`` itself when the learner has no value to carry.

    Raises
    ------
    CourseError
        As :func:`run_clean`; a cell that fails on the learner's values alone does not raise.
    """
    worked = _clean_pass(solution, issued, unit)
    clean = worked.answered
    values = own(clean.fields)
    if not values:
        return clean, clean

    carried = Answered(dict(clean.fields), dict(clean.tasks))
    fell_back: set[str] = set()
    set_aside: set[str] = set()
    given = worked.given(solution)
    names = _names(Answered(), given, unit)
    own_object = _changed_in_place(solution)
    differ = set(own_object)

    def seen(name: str) -> Seen:
        return seen_at(name, given, clean)

    for cell, made, met in zip(solution.cells, worked.made, worked.met, strict=True):
        mine = {name: values[name] for name in met if cell.names.passes_on and name in values}
        fits = {name: _plausible(clean, name, own, seen) for name, own in mine.items()}
        aside = {name for name, fit in fits.items() if not fit}
        has_to_run = (
            not differ.isdisjoint(cell.names.reads)
            or not own_object.isdisjoint(cell.names.sets)
            or any(_differs(clean, name, own) for name, own in mine.items() if name not in aside)
        )
        if not has_to_run:
            # Everything that it works with is as in the clean pass: so is what it makes.
            carried.references |= {name: clean.references[name] for name in met}
            set_aside |= aside
            names |= made
            differ -= cell.names.sets
            continue
        known = dict(names)
        attempt = _Pass(carried, values, cell.names.passes_on, seen, fits)
        if _run(cell, names, attempt) is not None:
            # The working refuses the learner's figures: this cell's clean results stand in.
            names.clear()
            names.update(known | made)
            carried.references |= {name: clean.references[name] for name in met}
            fell_back.update(met)
        else:
            set_aside |= attempt.set_aside
        differ -= cell.names.sets
        differ |= {name for name in cell.names.sets if not _same(names.get(name), made.get(name))}
        differ |= own_object
    carried.fell_back, carried.set_aside = frozenset(fell_back), frozenset(set_aside)
    return clean, carried


def _changed_in_place(solution: Solution) -> frozenset[str]:
    """Names whose objects cells change after another has made them: each pass needs its own."""
    return frozenset().union(*(cell.names.changes for cell in solution.cells))


def seen_at(name: str, given: Any, clean: Answered) -> Seen:
    """What lies before a learner as they answer a field.

    Parameters
    ----------
    name : str
    given : record
        What the module gives.
    clean : Answered
        Its clean pass.
    """
    kind = clean.fields[name].kind
    task, names = next(item for item in clean.tasks.items() if name in item[1])
    others = {
        clean.fields[one].prompt: clean.references[one].value
        for one in names
        if one != name and clean.fields[one].kind == kind
    }
    return Seen(getattr(given, task.replace("-", "_"), given), others)


def _plausible(clean: Answered, name: str, own: Any, seen: Callable[[str], Seen]) -> bool:
    asked = clean.fields[name]
    return judge_of(asked).plausible(asked, clean.references[name], own, seen(name))


def _differs(clean: Answered, name: str, own: Any) -> bool:
    """Whether going on with a learner's own value is something else than with the reference."""
    judge, value = judge_of(clean.fields[name]), clean.references[name].value
    return not _same(judge.carried(value, own), judge.clean(value))


def _same(one: Any, other: Any) -> bool:
    """Whether two values are the same for any working: one object, or equal and plain."""
    if one is other:
        return True
    if type(one) is not type(other):
        return False
    if isinstance(one, Q):
        return one.units == other.units and _same(one.magnitude, other.magnitude)
    if isinstance(one, tuple | list):
        return len(one) == len(other) and all(map(_same, one, other))
    if isinstance(one, set | frozenset):  # of more, the order may differ
        return len(one) <= 1 and _same([*one], [*other])
    if is_dataclass(one):
        return all(_same(getattr(one, f.name), getattr(other, f.name)) for f in fields(one))
    return isinstance(one, str | int | float) and one == other


@dataclass(frozen=True)
class _Worked:
    """A clean pass, with what was given (pickled), the names that each cell made and the fields
    that it gave a reference."""

    answered: Answered
    pickled: bytes
    made: tuple[dict[str, Any], ...]
    met: tuple[tuple[str, ...], ...]

    def given(self, solution: Solution) -> Any:
        """What was given, for one pass: its own."""
        return given_in(solution.module, pickle.loads(self.pickled))


_last: list[tuple[Solution, Unit, _Worked]] = []


def _clean_pass(solution: Solution, issued: Mapping[str, Any], unit: Unit) -> _Worked:
    """Run the clean pass; the last is kept: readings are solved, proven and marked in turn."""
    pickled = pickle.dumps(issued["given"])
    # Solutions and units never change once loaded: the very objects stand for what they hold.
    for kept_solution, kept_unit, worked in _last:
        if kept_solution is solution and kept_unit is unit and worked.pickled == pickled:
            return worked
    answered = Answered()
    names = _names(answered, given_in(solution.module, pickle.loads(pickled)), unit)
    made, met = [], []
    for cell in solution.cells:
        attempt, before = _Pass(answered, {}, cell.names.passes_on), dict(names)
        error = _run(cell, names, attempt)
        if error is not None:
            text = error.sentence if isinstance(error, CourseError) else str(error)
            raise CourseError(
                f"the reference does not run ({type(error).__name__}: {text.rstrip('.')})",
                where=f"{solution.path}, cell {cell.number}",
            ) from error
        made.append({n: v for n, v in names.items() if n not in before or before[n] is not v})
        met.append(tuple(attempt.met))
    worked = _Worked(answered, pickled, tuple(made), tuple(met))
    _last[:] = [(solution, unit, worked)]
    return worked


def _names(answered: Answered, given: Any, unit: Unit) -> dict[str, Any]:
    return {
        "__name__": "solution",
        "given": given,
        "unit": unit,
        "sheet": _Recorder(answered, given, unit),
        "ref": ref,
        "order": order,
        "Q": Q,
    }


def _run(cell: Cell, names: dict[str, Any], attempt: _Pass) -> Exception | None:
    """Run one cell; return what it raised, None when it ran."""
    token = _current.set(attempt)
    try:
        exec(cell.code, names)
    except Exception as error:
        return error
    finally:
        _current.reset(token)
    return None


def solve(solution: Solution, issued: Mapping[str, Any], unit: Unit) -> dict[str, Any]:
    """Return a full-mark answer for every field, as a job sheet stores it.

    Parameters
    ----------
    solution, issued, unit
        As in :func:`run_clean`.

    Returns
    -------
    dict of str to object
        Stored values by field name. For tests and for invented cohorts; it never leaves staff.
    """
    clean = run_clean(solution, issued, unit)
    return {
        name: judge_of(clean.fields[name]).solve(clean.fields[name], reference.value)
        for name, reference in clean.references.items()
    }
