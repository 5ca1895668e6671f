"""The exercises: nbgrader's own release of the solutions, without their reference cells."""

from __future__ import annotations

import logging
import tempfile
from collections.abc import Mapping
from pathlib import Path

from nbconvert.exporters.exporter import ResourcesDict
from nbformat import NotebookNode
from nbgrader.preprocessors import NbGraderPreprocessor

from twoshaft.errors import CourseError
from twoshaft_grader.environment import tools_on_path

RELEASE_PREPROCESSORS = [
    "twoshaft_grader.notebooks.release.DropReference",
    "nbgrader.preprocessors.LockCells",
    "nbgrader.preprocessors.ClearSolutions",
    "nbgrader.preprocessors.ClearOutput",
    "nbgrader.preprocessors.CheckCellMetadata",
    "nbgrader.preprocessors.ComputeChecksums",
    "nbgrader.preprocessors.SaveCells",
    "nbgrader.preprocessors.ClearHiddenTests",
    "nbgrader.preprocessors.ClearMarkScheme",
    "nbgrader.preprocessors.ComputeChecksums",
    "nbgrader.preprocessors.CheckCellMetadata",
]
"""For ``c.GenerateAssignment.preprocessors`` in a cohort's nbgrader_config.py."""


class DropReference(NbGraderPreprocessor):
    """Leave out every cell tagged ``reference``: it works out the answers."""

    def preprocess(
        self, nb: NotebookNode, resources: ResourcesDict
    ) -> tuple[NotebookNode, ResourcesDict]:
        """Return the notebook without its reference cells."""
        nb.cells = [c for c in nb.cells if "reference" not in c.metadata.get("tags", [])]
        return nb, resources


def release(solutions: Mapping[str, str]) -> dict[str, str]:
    """Release solution notebooks with nbgrader's generate_assignment.

    It runs in a temporary course folder with its own gradebook.

    Parameters
    ----------
    solutions : mapping of str to str
        Text of each solution notebook, by file name without its ending.

    Returns
    -------
    dict of str to str
        Text of each exercise notebook, by the same names.

    Raises
    ------
    CourseError
        When nbgrader refuses a notebook; says why.
    """
    from nbgrader.converters import GenerateAssignment
    from nbgrader.coursedir import CourseDirectory
    from traitlets.config import Config

    if not solutions:
        return {}
    tools_on_path()
    with tempfile.TemporaryDirectory() as folder:
        root = Path(folder).resolve()
        source = root / "source" / "course"
        source.mkdir(parents=True)
        for name, text in solutions.items():
            (source / f"{name}.ipynb").write_text(text, encoding="utf-8", newline="\n")
        config = Config()
        config.CourseDirectory.root = str(root)
        config.CourseDirectory.db_url = f"sqlite:///{root / 'gradebook.db'}"
        config.CourseDirectory.assignment_id = "course"
        config.GenerateAssignment.preprocessors = RELEASE_PREPROCESSORS
        log = logging.Logger("release", logging.ERROR)
        heard = _Heard()
        log.addHandler(heard)
        converter = GenerateAssignment(coursedir=CourseDirectory(config=config), config=config)
        converter.log = log
        try:
            converter.start()
        except (Exception, SystemExit) as error:
            reason = heard.last_line() or str(error)
            raise CourseError(f"nbgrader cannot release the solutions: {reason}") from error
        released = root / "release" / "course"
        return {
            name: (released / f"{name}.ipynb").read_text(encoding="utf-8").rstrip("\n") + "\n"
            for name in solutions
        }


class _Heard(logging.Handler):
    """Keeps what nbgrader logs, to say it in one sentence."""

    def __init__(self) -> None:
        super().__init__()
        self.lines: list[str] = []

    def emit(self, record: logging.LogRecord) -> None:
        """Keep one record's text."""
        self.lines.append(record.getMessage())

    def last_line(self) -> str:
        """Return the last line of the first traceback heard."""
        traces = [line for line in self.lines if line.startswith("Traceback")]
        return traces[0].strip().splitlines()[-1] if traces else ""
