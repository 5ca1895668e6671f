"""nbgrader's own autograde in a cohort folder: it runs what was released, and nothing handed in.

A submission is hostile: cells of the notebook handed in, and files beside it that Python would
import, would run in the instructor's name. So the released notebook takes the place of the one
handed in, and of the files that came with it only the job sheet stays; it is read as data.
"""

from __future__ import annotations

import os
import shutil
import stat
from pathlib import Path

import nbformat
from nbconvert.exporters.exporter import ResourcesDict
from nbformat import NotebookNode
from nbgrader.converters.base import NbGraderException
from nbgrader.preprocessors import NbGraderPreprocessor
from traitlets import Unicode

from twoshaft.stored.hostile import MAX_BYTES
from twoshaft.stored.job_sheet import FILE
from twoshaft_grader.stored.assignment import ASSIGNMENT
from twoshaft_grader.stored.handed_in import KEPT

SANITIZE_PREPROCESSORS = [
    "twoshaft_grader.notebooks.as_released.AsReleased",
    "nbgrader.preprocessors.ClearOutput",
    "nbgrader.preprocessors.DeduplicateIds",
    "nbgrader.preprocessors.OverwriteKernelspec",
    "nbgrader.preprocessors.OverwriteCells",
    "nbgrader.preprocessors.CheckCellMetadata",
]
"""For ``c.Autograde.sanitize_preprocessors`` in a cohort's nbgrader_config.py."""


class AsReleased(NbGraderPreprocessor):
    """Put the notebook that was released into the place of the one handed in."""

    root = Unicode(help="The cohort folder.").tag(config=True)

    def preprocess(
        self, nb: NotebookNode, resources: ResourcesDict
    ) -> tuple[NotebookNode, ResourcesDict]:
        """Return the released notebook; of what lies beside the copy only ours stays.

        Raises
        ------
        NbGraderException
            When that notebook is not in the cohort's ``release`` folder.
        """
        what = resources["nbgrader"]
        released = Path(self.root) / "release" / what["assignment"]
        if _runs_code(Path(self.root) / "source" / what["assignment"]):
            raise NbGraderException(
                f"{what['assignment']} runs learners' code, which is done in a sandbox alone; use "
                '"twoshaft mark".'
            )
        _tidy(
            Path(self.root) / "autograded" / what["student"] / what["assignment"],
            ours={path.name for path in released.glob("*") if path.suffix != ".ipynb"},
        )
        notebook = released / f"{what['notebook']}.ipynb"
        if not notebook.is_file():
            raise NbGraderException(
                f"{notebook}: what was released is not there, and nothing else is run; hand the "
                "module out again."
            )
        return nbformat.read(notebook, as_version=nbformat.current_nbformat), resources


def _runs_code(source: Path) -> bool:
    about = source / ASSIGNMENT.file
    return about.is_file() and bool(ASSIGNMENT.read(about).code_outcome)


def _tidy(folder: Path, ours: set[str]) -> None:
    """Take away what was handed in with a job sheet, and a sheet that is none."""
    for path in folder.iterdir():
        kind = path.lstat()
        plain = stat.S_ISREG(kind.st_mode)
        kept = path.name in KEPT and (path.name != FILE or kind.st_size <= MAX_BYTES)
        if plain and (kept or path.name in ours):
            continue
        if stat.S_ISDIR(kind.st_mode):
            shutil.rmtree(path)
        else:
            os.unlink(path)
