"""Mark a job sheet: parse, reference, compare, explain. Data in, data out, the same every time."""

from __future__ import annotations

import contextlib
import io
import json
import warnings
from collections.abc import Collection, Iterable, Mapping
from dataclasses import replace
from functools import lru_cache
from pathlib import Path
from typing import Any

from twoshaft.errors import AnswerError, CourseError, SheetError
from twoshaft.jobsheet import SheetData, read_sheet
from twoshaft.jobsheet.bench_unit import assigned_unit_source
from twoshaft.jobsheet.kinds import Field
from twoshaft.jobsheet.sheet import given_digest
from twoshaft.outcomes import Rules, load_rules
from twoshaft.outcomes.rules import RULES
from twoshaft.readings import given_in
from twoshaft.stored.assignment import ASSIGNMENT
from twoshaft.units import Unit, load_unit
from twoshaft_grader.marking.bench_readings import with_bench, without_bench
from twoshaft_grader.marking.chance import count_from, field_spread, guess_line
from twoshaft_grader.marking.kinds import Judgement, judge, judge_of
from twoshaft_grader.marking.outcomes import outcome_marks, task_parts
from twoshaft_grader.marking.reference import (
    Answered,
    Solution,
    load_solution,
    run_both,
    seen_at,
)
from twoshaft_grader.marking.result import FieldMark, SheetMark, TaskMark, Verdict

SET_ASIDE = (
    "No usual mistake leads from your readings to this figure, so what follows is marked with "
    "the right figure."
)
"""Said of a figure that the working does not go on with."""


def mark_sheet(
    sheet: SheetData | None,
    issued: Mapping[str, Any],
    solution: Solution,
    *,
    unit: Unit | None = None,
    rules: Rules | None = None,
    explain: bool = True,
) -> SheetMark:
    """Mark a job sheet against the solution, under the readings that were issued.

    Parameters
    ----------
    sheet : SheetData or None
        The sheet as read; None when there is none or it cannot be read.
    issued : mapping
        The issued record: learner, module, attempt, unit, versions and ``given``.
    solution : Solution
        The module's solution.
    unit : Unit, optional
        The cohort's own unit; by default the shipped one that the record names.
    rules : Rules, optional
        The cohort's own; by default those that ship.
    explain : bool
        Whether to look for what was most likely done instead of a figure, and to draw it: it takes
        more than half of the time, and changes no mark.

    Returns
    -------
    SheetMark

    Raises
    ------
    CourseError
        When the solution does not run under these readings: a fault of the course, never of the
        sheet.
    """
    unit = unit or load_unit(issued["unit"])
    stored = {} if sheet is None else {name: a.value for name, a in sheet.answers.items()}
    read: dict[str, Any] = {}
    unreadable: dict[str, str] = {}

    def own(fields: Mapping[str, Field]) -> Mapping[str, Any]:
        for name, asked in fields.items():
            value = stored.get(name)
            if asked.is_blank(value):
                continue
            try:
                read[name] = asked.read(value)
            except AnswerError as error:
                unreadable[name] = error.sentence
        return read

    worked = with_bench(sheet, issued, unit)
    try:
        clean, carried = run_both(solution, worked.issued, unit, own)
    except CourseError as error:
        if not worked.uses:
            raise
        worked = without_bench(worked, issued, error.sentence)
        read.clear()
        unreadable.clear()
        clean, carried = run_both(solution, issued, unit, own)
    fields: dict[str, list[FieldMark]] = {}
    for task, names in clean.tasks.items():
        if task not in solution.points:
            raise CourseError(f"task {task!r} has no mark cell", where=solution.path)
        missing = next((name for name in names if name not in clean.references), None)
        if missing:
            raise CourseError(f"field {missing!r} has no reference", where=solution.path)
        marked = [
            _mark_field(task, name, stored, read, unreadable, clean, carried, unit, explain)
            for name in names
        ]
        fields[task] = [mark for mark, _ in marked]
        if explain and any(puzzling for _, puzzling in marked):
            given = given_in(solution.module, worked.issued["given"])
            fields[task] = [
                _explained(mark, read[mark.name], given, clean, carried) if puzzling else mark
                for mark, puzzling in marked
            ]
    answered = field_points(solution, clean, read)
    line = sheet_line(solution, clean, answered)
    tasks = _mark_tasks(solution, fields, answered, line)
    return SheetMark(
        learner=issued["learner"],
        module=issued["module"],
        attempt=issued["attempt"],
        title=solution.title,
        course_version=issued["course_version"],
        unit=issued["unit"],
        unit_version=str(issued["unit_version"]),
        line=line,
        tasks=tasks,
        outcomes=outcome_marks((part for task in tasks for part in task_parts(task)), rules),
        notes=(*_notes(sheet, issued, solution, clean), *worked.notes),
        solution_digest=solution.digest,
        bench=worked.uses,
    )


def field_points(solution: Solution, clean: Answered, names: Collection[str]) -> dict[str, float]:
    """Return the most that each of some fields can earn, by name."""
    points = {}
    for task, fields in clean.tasks.items():
        total = sum(clean.references[name].weight for name in fields)
        for name in fields:
            if name in names:
                points[name] = solution.points[task] * clean.references[name].weight / total
    return points


def sheet_line(solution: Solution, clean: Answered, answered: Mapping[str, float]) -> float:
    """Return the line above which points count; see :mod:`twoshaft_grader.marking.chance`.

    Parameters
    ----------
    solution : Solution
    clean : Answered
        Its clean pass.
    answered : mapping of str to float
        The most that each field answered can earn.
    """
    return guess_line(
        (
            (points, field_spread(clean.fields[name], clean.references[name]))
            for name, points in answered.items()
        ),
        sum(solution.points.values()),
    )


def _mark_field(
    task: str,
    name: str,
    stored: Mapping[str, Any],
    read: Mapping[str, Any],
    unreadable: Mapping[str, str],
    clean: Answered,
    carried: Answered,
    unit: Unit,
    explain: bool,
) -> tuple[FieldMark, bool]:
    """The mark of a field, and whether its judge finds what went wrong puzzling."""
    asked, reference = clean.fields[name], clean.references[name]
    mark = FieldMark(
        name=name,
        task=task,
        kind=asked.kind,
        prompt=asked.prompt,
        answer="",
        verdict=Verdict.UNANSWERED,
        share=0.0,
        weight=reference.weight,
        sentences=(),
        details=(),
        cost="",
        outcome=reference.outcome,
        must_pass=reference.must_pass,
        passed=not reference.must_pass,
        carried=False,
        lesson=reference.lesson,
        shows=reference.shows,
    )
    if name in unreadable:
        unread = replace(
            mark,
            answer=_shortened(str(stored[name]), 200),
            verdict=Verdict.UNREADABLE,
            sentences=(unreadable[name],),
        )
        return unread, False
    if name not in read:
        return mark, False
    plain = judge(asked, reference, read[name])
    followed = plain
    if carried is not clean and name not in carried.fell_back and plain.share < 1:
        followed = judge(asked, carried.references[name], read[name])
    is_carried = followed.share > plain.share
    best = followed if is_carried else plain
    fell_back = name in carried.fell_back and best.share < 1
    sentences = best.sentences
    if is_carried and best.share >= 1:
        sentences = ("It follows from your earlier figures, so it is marked with those.",)
    elif fell_back:
        sentences = (*sentences, "No later figure can be worked out from your earlier ones.")[:2]
    drawn = ""
    if explain and best.share < 1:
        drawn = judge_of(asked).drawn(asked, reference, read[name], unit)
    marked = replace(
        mark,
        picture=drawn,
        answer=_shortened(asked.words(stored[name]), 8000),
        verdict=_verdict(best, is_carried),
        share=min(1.0, max(0.0, float(best.share))),
        sentences=sentences,
        details=best.details,
        cost=best.cost,
        passed=plain.safe if reference.must_pass else True,
        carried=is_carried,
    )
    return marked, best.puzzling and not fell_back


def _explained(
    mark: FieldMark, own: Any, given: Any, clean: Answered, carried: Answered
) -> FieldMark:
    """A puzzling mark that says what was most likely done instead."""
    # What follows from their own figures comes first.
    references = [worked.references[mark.name] for worked in (carried, clean)]
    told = judge_of(clean.fields[mark.name]).likely(
        references, own, seen_at(mark.name, given, clean)
    )
    why = " ".join(filter(None, (told, SET_ASIDE if mark.name in carried.set_aside else "")))
    return replace(mark, sentences=(*mark.sentences, why) if why else mark.sentences)


def _shortened(text: str, limit: int) -> str:
    return text if len(text) <= limit else text[:limit] + " …"


def _verdict(judged: Judgement, carried: bool) -> Verdict:
    if judged.share >= 1:
        return Verdict.CARRIED if carried else Verdict.RIGHT
    return Verdict.PARTLY if judged.share > 0 else Verdict.WRONG


def _mark_tasks(
    solution: Solution,
    fields: Mapping[str, list[FieldMark]],
    answered: Mapping[str, float],
    line: float,
) -> tuple[TaskMark, ...]:
    earned = [
        sum(field.share * answered.get(field.name, 0.0) for field in marks)
        for marks in fields.values()
    ]
    most = [sum(answered.get(field.name, 0.0) for field in marks) for marks in fields.values()]
    counted = count_from(line, earned, most)
    return tuple(
        TaskMark(
            id=id,
            title=solution.titles.get(id) or id,
            points=round(points, 2),
            maximum=solution.points[id],
            earned=round(before, 2),
            fields=tuple(fields[id]),
        )
        for id, before, points in zip(fields, earned, counted, strict=True)
    )


def _notes(
    sheet: SheetData | None, issued: Mapping[str, Any], solution: Solution, clean: Answered
) -> Iterable[str]:
    """Say what staff should know about the sheet."""
    if issued["module"] != solution.module:
        yield f"The readings are for {issued['module']}, the solution is of {solution.module}."
    if sheet is None:
        yield "There is no job sheet that can be read."
        return
    if sheet.learner != issued["learner"]:
        yield (
            f"The job sheet names {sheet.learner or 'nobody'}, not {issued['learner']}: it may be "
            "somebody else's."
        )
    if (sheet.module, sheet.attempt) != (issued["module"], issued["attempt"]):
        yield (
            f"The job sheet is of {sheet.module or 'no module'}, attempt {sheet.attempt}, not "
            f"{issued['module']}, attempt {issued['attempt']}."
        )
    if sheet.given_digest and sheet.given_digest != given_digest(issued["given"]):
        yield "The sheet was filled in for other readings; it is marked on the issued ones."
    unknown = sorted(set(sheet.answers) - set(clean.fields))
    if unknown:
        yield f"Fields that no form asks for were ignored: {', '.join(unknown[:5])}."


def mark_task(task: str) -> float:
    """Return the points of one task, for the sheet beside the notebook that calls this.

    Works in ``autograded/<learner>/<assignment>/`` of a cohort folder, where nbgrader runs a
    notebook's grade cells. Always gives a plain float and writes nothing: nbgrader takes no output
    for full marks and any warning for none.

    Parameters
    ----------
    task : str
        Task id.

    Returns
    -------
    float
        The points; 0.0 when the sheet is missing, blank or damaged, and anywhere else.
    """
    try:
        with (
            warnings.catch_warnings(),
            contextlib.redirect_stderr(io.StringIO()),
            contextlib.redirect_stdout(io.StringIO()),
        ):
            warnings.simplefilter("ignore")
            return float(mark_folder(Path.cwd()).task(task).points)
    except Exception:
        return 0.0


def mark_folder(folder: Path) -> SheetMark:
    """Mark the job sheet in ``<any>/<learner>/<assignment>/`` of a cohort folder.

    Parameters
    ----------
    folder : pathlib.Path
        A learner's folder of an assignment, submitted or autograded.

    Returns
    -------
    SheetMark
        A sheet that is missing or cannot be read is marked as blank, with a note.

    Raises
    ------
    CourseError
        When the folder is in no cohort folder, or the cohort's own files cannot be used.
    """
    folder = Path(folder).resolve()
    assignment, learner = folder.name, folder.parent.name
    root = next((p for p in folder.parents if (p / "cohort.yaml").is_file()), None)
    if root is None or folder.parent.parent.parent != root:
        raise CourseError(f"{folder} is not a learner's assignment in a cohort folder")
    source = root / "source" / assignment
    notebooks = sorted(source.glob("*.ipynb"))
    if len(notebooks) != 1:
        raise CourseError(f"{len(notebooks)} solution notebooks in {source}, where one belongs")
    about = ASSIGNMENT.read(source / ASSIGNMENT.file)
    unit = (about.unit, about.unit_digest) if about else ("", "")
    record = root / "issued" / assignment / f"{learner}.json"
    try:
        issued = record.read_text(encoding="utf-8")
    except OSError as error:
        raise CourseError("no readings were issued", where=str(record)) from error
    try:
        sheet, trouble = read_sheet(folder / "jobsheet.json"), ""
    except SheetError as error:
        sheet, trouble = None, error.sentence
    marked = _marked(
        None if sheet is None else json.dumps(sheet.as_json(), sort_keys=True),
        issued,
        str(notebooks[0]),
        load_solution(notebooks[0]).digest,
        assigned_unit_source(source, *unit),
        load_rules(root / RULES),
    )
    return replace(marked, notes=(trouble, *marked.notes)) if trouble else marked


@lru_cache(maxsize=4)
def _marked(
    sheet: str | None,
    issued: str,
    notebook: str,
    digest: str,
    unit: str | Path,
    rules: Rules,
) -> SheetMark:
    """Mark once for all the grade cells of a notebook."""
    from twoshaft.stored.given import ISSUED
    from twoshaft.stored.job_sheet import parse_sheet

    record = json.loads(issued)
    ISSUED.of(record)
    return mark_sheet(
        None if sheet is None else parse_sheet(sheet),
        record,
        load_solution(Path(notebook)),
        unit=load_unit(unit) if unit else None,
        rules=rules,
    )
