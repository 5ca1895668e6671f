"""Compare answers with a reference and say why.

In a solution notebook::

    from twoshaft_grader.marking import Slip, line_reasons, missed, reasons, ref, settled

Everything else is for the marking run.
"""

from typing import TYPE_CHECKING

from twoshaft_grader.marking.result import FieldMark, OutcomeMark, SheetMark, TaskMark, Verdict

if TYPE_CHECKING:
    from twoshaft_grader.marking.reference import Slip, load_solution, ref, run_clean, solve
    from twoshaft_grader.marking.task import mark_folder, mark_sheet, mark_task
    from twoshaft_grader.marking.wrong_options import line_reasons, missed, reasons, settled

__all__ = [
    "FieldMark",
    "OutcomeMark",
    "SheetMark",
    "Slip",
    "TaskMark",
    "Verdict",
    "line_reasons",
    "load_solution",
    "mark_folder",
    "mark_sheet",
    "mark_task",
    "missed",
    "reasons",
    "ref",
    "run_clean",
    "settled",
    "solve",
]


def __getattr__(name: str) -> object:
    """Marking has every module's readings and models behind it; who reads marks goes without."""
    if name in __all__:
        from twoshaft_grader.marking import reference, task, wrong_options

        home = next(one for one in (task, reference, wrong_options) if hasattr(one, name))
        return getattr(home, name)
    raise AttributeError(f"module {__name__!r} has no attribute {name!r}")
