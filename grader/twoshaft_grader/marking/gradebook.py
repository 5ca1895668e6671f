"""Put marks where nbgrader looks for them: its gradebook and its autograded folder.

Nothing that a learner wrote is run. The autograded notebook is the released one, with each task's
answers and verdicts as a table and its points as the float that nbgrader reads.
"""

from __future__ import annotations

import copy
import os
import stat
from datetime import datetime, timedelta
from pathlib import Path

import nbformat
from nbformat import NotebookNode, v4
from nbgrader import utils
from nbgrader.api import Gradebook

from twoshaft.errors import CohortError
from twoshaft.stored.definition import indented
from twoshaft.stored.hostile import MAX_BYTES
from twoshaft.stored.writing import write_file
from twoshaft_grader.marking.pages import fill
from twoshaft_grader.marking.result import BenchUse, FieldMark, SheetMark, TaskMark
from twoshaft_grader.marking.scores import Scores
from twoshaft_grader.stored.handed_in import KEPT


class Recorder:
    """Puts the marks of one assignment into the gradebook and the autograded folder of a cohort.

    Recording again changes nothing; with another mark it replaces points and comments of ours.
    Scores and comments that staff gave by hand stay, and are put up for review where our points
    have changed. Nothing is in the gradebook for good before :meth:`commit`.

    Parameters
    ----------
    book : nbgrader.api.Gradebook
        The cohort's gradebook, open. The only writer at this time.
    root : pathlib.Path
        The cohort folder.
    assignment : str
        Its id.

    Raises
    ------
    CohortError
        When the assignment was not released, or is not in the gradebook.
    """

    def __init__(self, book: Gradebook, root: Path, assignment: str) -> None:
        self._root, self._name = Path(root), assignment
        released = sorted((self._root / "release" / assignment).glob("*.ipynb"))
        if len(released) != 1:
            raise CohortError(
                f"{len(released)} released notebooks of {assignment}, where one belongs",
                where=str(self._root / "release" / assignment),
                mend="release the assignment again",
            )
        self._released = released[0]
        self._nb = nbformat.read(self._released, as_version=4)
        self._text = NotebookText(self._nb)
        self._scores = Scores(book, assignment, self._released.stem)

    def record(
        self,
        learner: str,
        mark: SheetMark,
        *,
        timestamp: datetime | str | None = None,
        extension: timedelta | None = None,
    ) -> Path:
        """Write one learner's mark.

        Parameters
        ----------
        learner : str
            Id.
        mark : SheetMark
        timestamp : datetime or str, optional
            When the work was handed in; nbgrader reckons lateness from it.
        extension : datetime.timedelta, optional
            How much later than everybody's the learner's due date is.

        Returns
        -------
        pathlib.Path
            The autograded notebook.

        Raises
        ------
        CohortError
            When a cell of the assignment is not in the gradebook.
        """
        nb = marked_notebook(self._nb, mark)  # the same one, with other outputs
        entry = self._scores.of(learner)
        if timestamp is not None:
            entry.submission.timestamp = utils.parse_utc(timestamp)
        entry.submission.extension = extension
        tasks = {task.id: task for task in mark.tasks}
        for cell in nb.cells:
            if utils.is_grade(cell):
                grade = entry.grade(cell.metadata.nbgrader.grade_id)
                before = grade.auto_score
                grade.auto_score, _ = utils.determine_grade(cell)
                by_hand = grade.manual_score is not None
                grade.needs_manual_grade = by_hand and (
                    grade.needs_manual_grade or before != grade.auto_score
                )
            elif utils.is_task(cell):
                name = cell.metadata.nbgrader.grade_id
                task = tasks.get(name.removesuffix("-task"))
                grade = entry.grade(name)
                grade.auto_score, grade.needs_manual_grade = 0.0, False
                entry.comment(name).auto_comment = task_comment(task) if task else None
        return self._write(learner)

    def commit(self) -> None:
        """Let what was recorded stand in the gradebook; a cut before leaves all of it out."""
        self._scores.commit()

    def _write(self, learner: str) -> Path:
        folder = self._root / "autograded" / learner / self._name
        folder.mkdir(parents=True, exist_ok=True)
        submitted = self._root / "submitted" / learner / self._name
        for name in KEPT:
            _carry_over(submitted / name, folder / name)
        target = folder / self._released.name
        write_file(target, self._text.now(), sync=False)
        return target


_NO_OUTPUTS = '\n   "outputs": []'  # of a cell; within a text a line never begins so


class NotebookText:
    """Writes one notebook for many learners, as nbformat does: only outputs change."""

    def __init__(self, nb: NotebookNode) -> None:
        self._code = [cell for cell in nb.cells if cell.cell_type == "code"]
        bare = copy.deepcopy(nb)
        for cell in bare.cells:
            if cell.cell_type == "code":
                cell.outputs, cell.execution_count = [], None
        self._first, *self._after = v4.writes(bare).split(_NO_OUTPUTS)

    def now(self) -> str:
        """The text of the notebook with its outputs as they are now."""
        parts = [self._first]
        for cell, after in zip(self._code, self._after, strict=True):
            parts += ['\n   "outputs": ', _outputs_text(cell.outputs), after]
        return "".join(parts).rstrip("\n") + "\n"


def _outputs_text(outputs: list[NotebookNode]) -> str:
    plain = [
        dict(sorted({**one, "data": {k: v.splitlines(True) for k, v in one.data.items()}}.items()))
        for one in outputs
    ]
    return indented(plain, 1).replace("\n", "\n   ")


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
            shown = task_html(task, mark.bench_of(task.id))
            cell.outputs = [
                _output("display_data", {"text/html": shown}),
                _output("execute_result", {"text/plain": repr(float(task.points))}),
            ]
            cell.outputs[1].execution_count = None
    return nb


def _output(kind: str, data: dict[str, str]) -> NotebookNode:
    return nbformat.from_dict({"output_type": kind, "metadata": {}, "data": data})


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


def _carry_over(source: Path, target: Path) -> None:
    """Copy an ordinary file of a learner; anything else is left behind."""
    try:
        about = os.lstat(source)
    except OSError:
        return
    if stat.S_ISREG(about.st_mode) and about.st_size <= MAX_BYTES:
        write_file(target, source.read_bytes(), sync=False)
