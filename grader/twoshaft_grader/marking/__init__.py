"""Compare answers with a reference and say why.

In a solution notebook::

    from twoshaft_grader.marking import Slip, ref

Everything else is for the marking run.
"""

from twoshaft_grader.marking.reference import Slip, load_solution, ref, run_clean, solve
from twoshaft_grader.marking.result import FieldMark, OutcomeMark, SheetMark, TaskMark, Verdict
from twoshaft_grader.marking.task import mark_folder, mark_sheet, mark_task

__all__ = [
    "FieldMark",
    "OutcomeMark",
    "SheetMark",
    "Slip",
    "TaskMark",
    "Verdict",
    "load_solution",
    "mark_folder",
    "mark_sheet",
    "mark_task",
    "ref",
    "run_clean",
    "solve",
]
