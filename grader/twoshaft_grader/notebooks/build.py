"""Every notebook of the course, built, released, compared and written."""

from __future__ import annotations

from dataclasses import dataclass
from pathlib import Path

import nbformat

from twoshaft.errors import CourseError
from twoshaft.stored.writing import write_file
from twoshaft.units.fields_page import fields_page
from twoshaft_grader.notebooks.checks import check_lesson, check_release, check_solution
from twoshaft_grader.notebooks.released_cells import released_cells_text
from twoshaft_grader.notebooks.text import build_notebook, notebook_text

FIELDS_PAGE = Path("course/unit-file.md")
RELEASED_CELLS = Path("course/twoshaft/labextension/static/released-cells.json")


@dataclass(frozen=True)
class Built:
    """What a build gives.

    Attributes
    ----------
    files : dict of pathlib.Path to str
        Text by path from the root of the project.
    findings : tuple of str
        One sentence for each thing to mend; empty when the course is in order.
    """

    files: dict[Path, str]
    findings: tuple[str, ...]


def build(root: Path) -> Built:
    """Build all notebooks from their text sources, in memory.

    Parameters
    ----------
    root : pathlib.Path
        The root of the project.

    Returns
    -------
    Built

    Raises
    ------
    CourseError
        When a source cannot be built at all.
    """
    from twoshaft_grader.notebooks.release import release  # nbgrader is half of what would load

    root = Path(root)
    files: dict[Path, str] = {}
    findings: list[str] = []
    opened = []
    for source in sorted((root / "course/lessons").glob("*.py")):
        path = source.relative_to(root)
        nb = build_notebook(source.read_text(encoding="utf-8"), path)
        findings += check_lesson(nb, path)
        files[path.with_suffix(".ipynb")] = notebook_text(nb)
        opened.append(nb)
    solutions: dict[str, str] = {}
    for source in sorted((root / "solutions").glob("*.py")):
        path = source.relative_to(root)
        nb = build_notebook(source.read_text(encoding="utf-8"), path)
        findings += check_solution(nb, path)
        solutions[source.stem] = files[path.with_suffix(".ipynb")] = notebook_text(nb)
    for name, text in release(solutions).items():
        path = Path("exercises") / f"{name}.ipynb"
        nb = nbformat.reads(text, as_version=4)
        findings += check_release(nb, path)
        files[path] = text
        opened.append(nb)
    files[RELEASED_CELLS] = released_cells_text(opened)
    files[FIELDS_PAGE] = fields_page()
    return Built(files, tuple(findings))


def compare(root: Path, built: Built) -> list[str]:
    """Return one sentence for each stored file that differs from what the build makes."""
    root = Path(root)
    findings = []
    for path, text in sorted(built.files.items()):
        try:
            stored = (root / path).read_bytes()
        except FileNotFoundError:
            findings.append(f"{path}: is not there; run the notebook build.")
            continue
        if stored != text.encode():
            findings.append(f"{path}: is out of step with its source; run the notebook build.")
    for folder in ("course/lessons", "solutions", "exercises"):
        for found in sorted((root / folder).glob("*.ipynb")):
            path = found.relative_to(root)
            if path not in built.files:
                findings.append(f"{path}: has no text source; write one or delete it.")
    return findings


def write(root: Path, built: Built) -> list[Path]:
    """Write what differs from the stored files; return the paths written."""
    written = []
    for path, text in sorted(built.files.items()):
        target, data = Path(root) / path, text.encode()
        if target.exists() and target.read_bytes() == data:
            continue
        target.parent.mkdir(parents=True, exist_ok=True)
        try:
            write_file(target, data)
        except OSError as error:
            raise CourseError(f"cannot be written: {error.strerror}", where=str(path)) from error
        written.append(path)
    return written
