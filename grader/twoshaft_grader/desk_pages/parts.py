"""What a page of the desk is made of; the browser's side (``screens/desk.js``) draws each."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import asdict, dataclass
from pathlib import Path
from typing import Any, ClassVar

from twoshaft.errors import CohortError


@dataclass(frozen=True)
class Say:
    """A paragraph; ``how`` is text, hint or head."""

    kind: ClassVar[str] = "say"
    text: str
    how: str = "text"


@dataclass(frozen=True)
class Link:
    """A way that opens in a window of its own.

    Attributes
    ----------
    text, path : str
    how : str
        files: a file under the cohort folder, shown; edit: the same in the editor; "": ``path`` is
        an address, of another desk.
    """

    kind: ClassVar[str] = "link"
    text: str
    path: str
    how: str = "files"


@dataclass(frozen=True)
class Cell:
    """A cell of a table that is more than text.

    Attributes
    ----------
    text : str
    shape : str
        A sign beside the word, for whoever sees no colour.
    act, of : str
        What is done when it is pressed, and with what; empty: it is no button.
    label : str
        What a button is called where its text alone does not say it.
    """

    text: str
    shape: str = ""
    act: str = ""
    of: str = ""
    label: str = ""


@dataclass(frozen=True)
class Row:
    """A line of a table; ``key`` is what a ticked line is known by."""

    key: str
    cells: tuple[str | Cell, ...]


@dataclass(frozen=True)
class Table:
    """A table, with its export beside it.

    Attributes
    ----------
    id, title : str
        The export is called by the id.
    columns : tuple of str
        Headings.
    rows : tuple of Row
    numbers : tuple of int
        Columns of figures, which stand to the right.
    pick : bool
        Whether lines can be ticked.
    empty : str
        What is said in the place of an empty table.
    """

    kind: ClassVar[str] = "table"
    id: str
    title: str
    columns: tuple[str, ...]
    rows: tuple[Row, ...]
    numbers: tuple[int, ...] = ()
    pick: bool = False
    empty: str = "Nobody yet."

    def texts(self) -> list[list[str]]:
        """The rows as plain text."""
        return [
            [one.text if isinstance(one, Cell) else one for one in row.cells] for row in self.rows
        ]


@dataclass(frozen=True)
class Field:
    """Something to fill in; ``of`` is text, long, tick, choice or file.

    ``options`` are value and words of each choice.
    """

    name: str
    label: str
    of: str = "text"
    value: str = ""
    options: tuple[tuple[str, str], ...] = ()
    hint: str = ""


@dataclass(frozen=True)
class Act:
    """A button; where ``sure`` is a question, it is asked first. ``first`` is the one to press."""

    id: str
    label: str
    first: bool = False
    sure: str = ""


@dataclass(frozen=True)
class Form:
    """Fields and what can be done with them."""

    kind: ClassVar[str] = "form"
    title: str
    fields: tuple[Field, ...]
    acts: tuple[Act, ...]
    hint: str = ""


Part = Say | Link | Table | Form


def as_data(parts: Sequence[Part]) -> list[dict[str, Any]]:
    """What the browser gets."""
    return [{"kind": part.kind, **asdict(part)} for part in parts]


class Values:
    """What was filled in and ticked when a button was pressed; data from outside.

    Parameters
    ----------
    typed : mapping
        By the field's name.
    ticked : mapping
        Keys of lines by the table's id.
    files : mapping
        Where a chosen file was put, by the field's name.
    of : str
        What the pressed cell of a table stands for.
    """

    def __init__(
        self,
        typed: dict[str, Any] | None = None,
        ticked: dict[str, Any] | None = None,
        files: dict[str, Path] | None = None,
        of: str = "",
    ) -> None:
        self._typed, self._ticked, self._files, self.of = (
            typed or {}, ticked or {}, files or {}, of,
        )  # fmt: skip

    def text(self, name: str) -> str:
        """What was typed or chosen."""
        value = self._typed.get(name)
        return value.strip() if isinstance(value, str) else ""

    def tick(self, name: str) -> bool:
        """Whether it was ticked."""
        return self._typed.get(name) is True

    def need(self, name: str, what: str) -> str:
        """What was typed, which must be something; ``what`` is its name in a sentence."""
        if text := self.text(name):
            return text
        raise CohortError(f"{what} is missing", mend="fill it in")

    def number(self, name: str, what: str) -> float:
        """A figure that was typed; ``what`` is what it should be, in a sentence."""
        text = self.text(name)
        try:
            return float(text.replace(",", "."))
        except ValueError:
            raise CohortError(f'"{text[:30]}" is no {what}', mend="write it as 2.5") from None

    def picked(self, table: str) -> list[str]:
        """Keys of the ticked lines."""
        found = self._ticked.get(table)
        return [one for one in found if isinstance(one, str)] if isinstance(found, list) else []

    def some(self, table: str, what: str = "learner") -> list[str]:
        """Keys of the ticked lines, of which there must be one."""
        if found := self.picked(table):
            return found
        raise CohortError(f"no {what} is ticked", mend="tick one or more in the table")

    def has_file(self, name: str) -> bool:
        """Whether a file was chosen."""
        return name in self._files

    def file(self, name: str) -> Path:
        """The file that was chosen."""
        if path := self._files.get(name):
            return path
        raise CohortError("no file is chosen", mend="choose one")
