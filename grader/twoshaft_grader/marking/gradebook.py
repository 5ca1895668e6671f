"""Put a mark where nbgrader looks for it: its gradebook and its autograded folder.

Nothing that a learner wrote is run. The autograded notebook is the released one, with each task's
answers and verdicts as a table and its points as the float that nbgrader reads.
"""

from __future__ import annotations

import os
import shutil
import stat
import tempfile
from datetime import datetime
from pathlib import Path

import nbformat
from nbformat import NotebookNode
from nbformat.v4 import new_output
from nbgrader import utils
from nbgrader.api import Gradebook, MissingEntry

from twoshaft.errors import CohortError
from twoshaft.jobsheet.contents import MAX_BYTES
from twoshaft_grader.marking.pages import fill
from twoshaft_grader.marking.result import BenchUse, FieldMark, SheetMark, TaskMark

CARRIED_OVER = ("jobsheet.json", "timestamp.txt")
"""Files that go from the submitted to the autograded folder."""


def record_mark(
    book: Gradebook,
    root: Path,
    learner: str,
    assignment: str,
    mark: SheetMark,
    *,
    timestamp: datetime | str | None = None,
) -> Path:
    """Write a mark into the gradebook and the autograded folder of a cohort.

    Doing it again changes nothing; with another mark it replaces points and comments of ours.
    Scores and comments that staff gave by hand stay, and are put up for review where our points
    have changed.

    Parameters
    ----------
    book : nbgrader.api.Gradebook
        The cohort's gradebook, open. The only writer at this time.
    root : pathlib.Path
        The cohort folder.
    learner, assignment : str
        Their ids.
    mark : SheetMark
    timestamp : datetime or str, optional
        When the work was handed in; nbgrader reckons lateness from it.

    Returns
    -------
    pathlib.Path
        The autograded notebook.

    Raises
    ------
    CohortError
        When the assignment was not released, or is not in the gradebook.
    """
    released = sorted((Path(root) / "release" / assignment).glob("*.ipynb"))
    if len(released) != 1:
        raise CohortError(
            f"{len(released)} released notebooks of {assignment}, where one belongs",
            where=str(Path(root) / "release" / assignment),
            mend="release the assignment again",
        )
    notebook_id = released[0].stem
    nb = marked_notebook(nbformat.read(released[0], as_version=4), mark)
    _write_scores(book, notebook_id, assignment, learner, nb, mark, timestamp)
    folder = Path(root) / "autograded" / learner / assignment
    folder.mkdir(parents=True, exist_ok=True)
    submitted = Path(root) / "submitted" / learner / assignment
    for name in CARRIED_OVER:
        _carry_over(submitted / name, folder / name)
    target = folder / released[0].name
    _replace(target, nbformat.writes(nb).rstrip("\n") + "\n")
    return target


def marked_notebook(nb: NotebookNode, mark: SheetMark) -> NotebookNode:
    """Return a released notebook with the answers, verdicts and points of a mark as outputs."""
    tasks = {task.id: task for task in mark.tasks}
    for cell in nb.cells:
        grade_id = cell.metadata.get("nbgrader", {}).get("grade_id", "")
        if cell.cell_type != "code":
            continue
        cell.outputs, cell.execution_count = [], None
        if utils.is_grade(cell) and grade_id in tasks:
            task = tasks[grade_id]
            cell.outputs = [
                new_output("display_data", {"text/html": task_html(task, mark.bench_of(task.id))}),
                new_output("execute_result", {"text/plain": repr(float(task.points))}),
            ]
            cell.outputs[1].execution_count = None
    return nb


def task_html(task: TaskMark, bench: BenchUse | None = None) -> str:
    """Return one task's answers and verdicts as a table, with any figures from the bench."""
    return fill("task_panel.html.j2", task=task, bench=bench)


def task_comment(task: TaskMark) -> str:
    """Return what nbgrader keeps as the comment on a task: a line for each field."""
    lines = [_field_line(field) for field in task.fields]
    # nbgrader's own pages run lines together, so each is numbered.
    return "\n".join(f"({n}) {line}" for n, line in enumerate(lines, 1))


def _field_line(field: FieldMark) -> str:
    parts = [f"{field.prompt} {field.verdict.capitalize()}.", *field.sentences, field.cost]
    return " ".join(part for part in parts if part)


def _write_scores(
    book: Gradebook,
    notebook_id: str,
    assignment: str,
    learner: str,
    nb: NotebookNode,
    mark: SheetMark,
    timestamp: datetime | str | None,
) -> None:
    """As nbgrader's SaveAutoGrades does, in one transaction."""
    tasks = {task.id: task for task in mark.tasks}
    try:
        try:
            book.find_student(learner)
        except MissingEntry:
            book.add_student(learner)
        when = {"timestamp": timestamp} if timestamp is not None else {}
        book.update_or_create_submission(assignment, learner, **when)
        for cell in nb.cells:
            if utils.is_grade(cell):
                name = cell.metadata.nbgrader.grade_id
                grade = book.find_grade(name, notebook_id, assignment, learner)
                before = grade.auto_score
                grade.auto_score, _ = utils.determine_grade(cell)
                by_hand = grade.manual_score is not None
                grade.needs_manual_grade = by_hand and (
                    grade.needs_manual_grade or before != grade.auto_score
                )
            elif utils.is_task(cell):
                name = cell.metadata.nbgrader.grade_id
                task = tasks.get(name.removesuffix("-task"))
                grade = book.find_grade(name, notebook_id, assignment, learner)
                grade.auto_score, grade.needs_manual_grade = 0.0, False
                comment = book.find_comment(name, notebook_id, assignment, learner)
                comment.auto_comment = task_comment(task) if task else None
        book.db.commit()
    except MissingEntry as error:
        book.db.rollback()
        raise CohortError(
            f"{assignment} is not in the gradebook as it was released ({error})",
            mend="release the assignment again",
        ) from error
    except BaseException:
        book.db.rollback()
        raise


def _carry_over(source: Path, target: Path) -> None:
    """Copy an ordinary file of a learner; anything else is left behind."""
    try:
        about = os.lstat(source)
    except OSError:
        return
    if stat.S_ISREG(about.st_mode) and about.st_size <= MAX_BYTES:
        target.unlink(missing_ok=True)
        shutil.copyfile(source, target)


def _replace(target: Path, text: str) -> None:
    handle, temporary = tempfile.mkstemp(dir=target.parent, suffix=".part")
    try:
        with os.fdopen(handle, "w", encoding="utf-8", newline="\n") as stream:
            stream.write(text)
        os.chmod(temporary, 0o644)
        os.replace(temporary, target)
    except BaseException:
        Path(temporary).unlink(missing_ok=True)
        raise
