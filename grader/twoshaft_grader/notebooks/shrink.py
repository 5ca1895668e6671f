"""A notebook shrunk to the unit: what the unit has nothing for is left out, and says so.

A task goes when it is named, when it reads in ``given`` what was not drawn for this unit, or a name
that only such a task makes; its cells give way to its heading and one sentence. What is left are
whole cells, as they were released, so forms, marking and stock nbgrader work on it as on any other.
A text cell of a lesson that names what it needs (``needs="spring-pin"``) goes with all that follows
up to the next heading of its rank.
"""

from __future__ import annotations

import ast
from collections.abc import Iterable, Mapping
from dataclasses import dataclass, field
from typing import Any

import nbformat
from nbformat import NotebookNode

from twoshaft.units.carried import NEEDED
from twoshaft.units.unit import Unit
from twoshaft_grader.marking.cell_names import CellNames


@dataclass
class _Task:
    """The cells of one task, from its text to its grade cell."""

    name: str
    cells: list[NotebookNode] = field(default_factory=list)

    def reads(self) -> set[str]:
        """Names that its cells look up before one of them makes them; ``given.x`` of members."""
        made: set[str] = set()
        found: set[str] = set()
        for cell in self.cells:
            if cell.cell_type == "code":
                found |= _given(cell.source)
                names = CellNames.of(cell.source)
                found |= names.reads - names.sets - made
                made |= names.sets
        return found

    def makes(self) -> set[str]:
        """Names that its cells bind."""
        codes = [cell.source for cell in self.cells if cell.cell_type == "code"]
        return {name for code in codes for name in CellNames.of(code).sets}


def shrunk(text: str, left_out: Mapping[str, str]) -> str:
    """A solution or exercise without some tasks.

    Parameters
    ----------
    text : str
        Of the built notebook.
    left_out : mapping of str to str
        Why, as it follows "This task is left out:", by the member of ``given`` that is not there,
        or by the task.

    Returns
    -------
    str
        The text itself where nothing is left out.
    """
    if not left_out:
        return text
    nb = nbformat.reads(text, as_version=4)
    falls = falling(nb, left_out)
    cells: list[NotebookNode] = []
    for part in _parts(nb):
        if isinstance(part, _Task) and part.name in falls:
            cells.append(_instead(part, falls[part.name]))
        else:
            cells += part.cells if isinstance(part, _Task) else [part]
    nb.cells = cells
    return nbformat.writes(nb) + "\n"


def same_but_left_out(text: str, own: str, left_out: Iterable[str]) -> bool:
    """Whether a notebook is this course's own, apart from the reasons for what it leaves out.

    Parameters
    ----------
    text : str
        Of the notebook.
    own : str
        Of the course's built one.
    left_out : iterable of str
        Members of ``given`` that it goes without.
    """
    why = dict.fromkeys(left_out, "")
    if not why:
        return text == own
    mine, ours = (
        [cell for cell in nbformat.reads(one, as_version=4).cells if not _is_said(cell)]
        for one in (text, shrunk(own, why))
    )
    return mine == ours


def falling(nb: NotebookNode, left_out: Mapping[str, str]) -> dict[str, str]:
    """Tasks that fall, and why, by the task's name in the notebook.

    Parameters
    ----------
    nb : nbformat.NotebookNode
    left_out : mapping of str to str
        As for :func:`shrunk`.
    """
    falls: dict[str, str] = {}
    gone: dict[str, str] = {f"given.{name}": why for name, why in left_out.items()}
    known: set[str] = set()
    for part in _parts(nb):
        if not isinstance(part, _Task):
            if part.cell_type == "code":
                known |= CellNames.of(part.source).sets
            continue
        wanted = [gone[name] for name in sorted(part.reads()) if name in gone]
        wanted = [left_out[part.name]] if part.name in left_out else wanted
        if wanted:
            falls[part.name] = wanted[0]
            gone |= {name: wanted[0] for name in part.makes() - known}
        else:
            known |= part.makes()
            gone = {name: why for name, why in gone.items() if name not in known}
    return falls


def missing_heart(text: str, left_out: Mapping[str, str]) -> str | None:
    """Why a notebook cannot be shrunk: what it reads outside its tasks is not there; else None.

    Parameters
    ----------
    text : str
        Of the built notebook.
    left_out : mapping of str to str
        As for :func:`shrunk`.
    """
    for part in _parts(nbformat.reads(text, as_version=4)):
        if not isinstance(part, _Task) and part.cell_type == "code":
            for name in sorted(_given(part.source)):
                if (why := left_out.get(name.removeprefix("given."))) is not None:
                    return why
    return None


def for_unit(text: str, unit: Unit) -> str:
    """A lesson without the paragraphs that the unit has nothing for.

    Parameters
    ----------
    text : str
        Of the built notebook.
    unit : Unit
        The unit on the bench.
    """
    if '"needs"' not in text:
        return text
    nb = nbformat.reads(text, as_version=4)
    cells: list[NotebookNode] = []
    within = 0  # rank of the heading whose paragraph is being left out
    for cell in nb.cells:
        rank = _rank(cell)
        if within and rank and rank <= within:
            within = 0
        need = NEEDED.get(cell.metadata.get("needs", ""))
        if not within and need and not need.there(unit):
            within = rank or 7
            said = _said(cell, f"*Left out: {need.sentence}.*")
            if rank or not (cells and _is_said(cells[-1]) and said.source in cells[-1].source):
                cells.append(said)  # once, where several cells in a row go for one reason
        elif not within:
            cells.append(cell)
        if within == 7:
            within = 0
    if len(cells) == len(nb.cells) and all(a is b for a, b in zip(cells, nb.cells, strict=True)):
        return text
    nb.cells = cells
    return nbformat.writes(nb) + "\n"


def _parts(nb: NotebookNode) -> list[_Task | NotebookNode]:
    """The notebook's tasks, and the cells that belong to none, in order."""
    parts: list[_Task | NotebookNode] = []
    task: _Task | None = None
    for cell in nb.cells:
        about: Any = cell.metadata.get("nbgrader", {})
        if about.get("task"):
            task = _Task(str(about["grade_id"]).removesuffix("-task"))
            parts.append(task)
        if task is None:
            parts.append(cell)
            continue
        task.cells.append(cell)
        if about.get("grade") and not about.get("task"):
            task = None
    return parts


def _given(source: str) -> set[str]:
    """Members of ``given`` that a cell reads, as ``given.spring``."""
    return {
        f"given.{node.attr}"
        for node in ast.walk(ast.parse(source))
        if isinstance(node, ast.Attribute)
        and isinstance(node.value, ast.Name)
        and node.value.id == "given"
    }


def _instead(task: _Task, why: str) -> NotebookNode:
    return _said(task.cells[0], f"This task is left out: {why}.")


def _said(cell: NotebookNode, sentence: str) -> NotebookNode:
    """A text cell with the heading of another, and a sentence."""
    heading = next((line for line in cell.source.splitlines() if line.startswith("#")), "")
    source = f"{heading}\n\n{sentence}" if heading else sentence
    return nbformat.v4.new_markdown_cell(source, id=f"{cell.id[:52]}-left-out", metadata={})


def _is_said(cell: NotebookNode) -> bool:
    """Whether a cell is only the sentence for what is left out: text, which nothing runs."""
    return cell.cell_type == "markdown" and cell.id.endswith("-left-out")


def _rank(cell: NotebookNode) -> int:
    """How many marks a text cell's heading has; 0 where it begins with none."""
    first = cell.source.split(maxsplit=1)[0] if cell.source.strip() else ""
    return len(first) if cell.cell_type == "markdown" and set(first) == {"#"} else 0
