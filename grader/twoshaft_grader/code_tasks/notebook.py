"""An instructor's own notebook with nbgrader's cells: what it asks, and what is run of a hand-in.

Only the cells that a learner is to write in come from the notebook handed in; all others, the
tests above all, are the instructor's.
"""

from __future__ import annotations

import json
import math
import re
from dataclasses import dataclass
from pathlib import Path
from typing import Any

from twoshaft.errors import CohortError, SheetError
from twoshaft.stored.hostile import load_json, read_bytes

LARGEST = 5_000_000
LONGEST_CELL = 100_000
MOST_CELLS = 200
_NAME = re.compile(r"[A-Za-z0-9][A-Za-z0-9_-]{0,63}")
_TITLE = re.compile(r"^#\s+(.{1,120})", re.MULTILINE)


@dataclass(frozen=True)
class Cell:
    """A code cell: its nbgrader name where it has one, and what it is.

    ``points``: of a test, what it is worth; None for any other cell.
    """

    name: str
    text: str
    written: bool = False
    points: float | None = None


@dataclass(frozen=True)
class CodeNotebook:
    """The instructor's notebook."""

    title: str
    cells: tuple[Cell, ...]

    @property
    def tests(self) -> tuple[Cell, ...]:
        """The cells that give points."""
        return tuple(cell for cell in self.cells if cell.points is not None)


def read_notebook(path: Path) -> CodeNotebook:
    """Read an instructor's notebook.

    Raises
    ------
    CohortError
        When it is none, has no test that gives points, or asks for what no program can mark.
    """

    def refuse(what: str, mend: str) -> CohortError:
        return CohortError(what, where=str(path), mend=mend)

    try:
        told = json.loads(path.read_bytes().decode("utf-8"))
        cells = told["cells"]
        found = [_cell(one) for one in cells if one["cell_type"] == "code"]
        said = "\n".join(_text(one["source"]) for one in cells if one["cell_type"] == "markdown")
    except FileNotFoundError:
        raise refuse("there is no such file", "check its name") from None
    except (OSError, ValueError, KeyError, TypeError, RecursionError):
        raise refuse("this is no notebook", "save it from JupyterLab") from None
    marked = [one for one in cells if _about(one).get("grade")]
    by_hand = [one for one in marked if _about(one).get("solution") or one["cell_type"] != "code"]
    if by_hand:
        raise refuse(
            f'the cell "{_about(by_hand[0]).get("grade_id")}" is to be marked by hand',
            "give points to tests alone (in nbgrader: Autograder tests)",
        )
    book = CodeNotebook(next(iter(_TITLE.findall(said)), path.stem), tuple(found))
    if not book.tests:
        raise refuse("no cell gives points", "make one of them Autograder tests, with points")
    if not any(cell.written for cell in found):
        raise refuse("no cell is to be written in", "make one of them Autograded answer")
    names = [cell.name for cell in found if cell.written or cell.points is not None]
    for name in names:
        if not _NAME.fullmatch(name) or names.count(name) > 1:
            raise refuse(
                f'the cell id "{name}" is there twice, or is no plain name',
                "use letters, digits, hyphens and underscores, each id once",
            )
    for cell in book.tests:
        if not (cell.points is not None and math.isfinite(cell.points) and 0 < cell.points <= 1000):
            raise refuse(f'the test "{cell.name}" is worth no points', "give it 1 or more")
    if len(found) > MOST_CELLS:
        raise refuse(f"it has {len(found)} code cells", f"use {MOST_CELLS} at most")
    return book


def read_written(path: Path, book: CodeNotebook) -> tuple[dict[str, str], str]:
    """What was written in the cells of a notebook that was handed in, by name; or why it cannot be
    read. It is data from outside.
    """
    try:
        raw = read_bytes(path, LARGEST)
        if len(raw) > LARGEST:
            return {}, f"{path.name}: more than {LARGEST // 1_000_000} MB"
        told = load_json(raw.decode("utf-8"), path.name)
        wanted = {cell.name for cell in book.cells if cell.written}
        written: dict[str, str] = {}
        for one in told["cells"]:
            if not isinstance(one, dict):
                return {}, f"{path.name} cannot be read as a notebook"
            name = _about(one).get("grade_id")
            if isinstance(name, str) and name in wanted:
                if name in written:
                    return {}, f"{path.name}: the cell {name} is there twice"
                written[name] = _text(one["source"])
                if len(written[name]) > LONGEST_CELL:
                    return {}, f"{path.name}: the cell {name} is longer than any answer"
    except FileNotFoundError:
        return {}, f"{path.name} is not there"
    except SheetError as error:
        return {}, error.sentence.rstrip(".")
    except (OSError, ValueError, KeyError, TypeError, AttributeError):
        return {}, f"{path.name} cannot be read as a notebook"
    return written, ""


def _cell(one: dict[str, Any]) -> Cell:
    about = _about(one)
    test = bool(about.get("grade")) and not about.get("solution")
    return Cell(
        str(about.get("grade_id") or ""),
        _text(one["source"]),
        written=bool(about.get("solution")) and not about.get("grade"),
        points=float(about.get("points") or 0) if test else None,
    )


def _about(one: Any) -> dict[str, Any]:
    found = one["metadata"].get("nbgrader") if isinstance(one, dict) else None
    return found if isinstance(found, dict) else {}


def _text(source: Any) -> str:
    text = source if isinstance(source, str) else "".join(source)
    return text.encode("utf-8", "replace").decode("utf-8")
