"""What stands on a bench sheet, whatever it is printed with.

A sheet is a heading and a row of blocks. Every text goes through one gate on its way in: no
figure gets past it, so none of an invented unit can reach a bench.
"""

from __future__ import annotations

import re
from collections.abc import Iterable
from dataclasses import asdict, dataclass

BLANK = "____"
ROW_MM = 9
"""Least height of a row to write in, on paper."""

_NUMBER = r"[+\-−±]?(?:\d+(?:[.,]\d+)*[½¼¾⅓⅔⅛⅜⅝⅞]?|[½¼¾⅓⅔⅛⅜⅝⅞])"
_FIGURE = re.compile(
    # Numbers that only name: an ordinal, a numbered bolt or gear, and the lifting index
    # (NIOSH 94-110), whose 1 is its definition. A unit after it makes it a figure.
    r"(?P<name>\d+(?:st|nd|rd|th)\b"
    r"|(?:[Bb]olts?|[Hh]oles?|[Gg]ears?|[Ss]teps?|[Nn]o\.|[Nn]umber|index is above) \d+"
    r"(?![.,]?\d|\s?(?:N|kN|[mµu]m|°|%|lbf|kgf)))"
    r"|\bM\d+(?:[.,]\d+)?(?:\s?[x×]\s?\d+(?:[.,]\d+)?)?\b"  # a thread
    rf"|{_NUMBER}(?:\s?[–-]\s?{_NUMBER})?",
)


def without_figures(text: str) -> str:
    """Return a text with every figure in it left blank; numbers that only name stay.

    >>> without_figures("Warm it to 110 °C, then tighten the M8 bolts to 27 N·m, bolt 12 last")
    'Warm it to ____ °C, then tighten the ____ bolts to ____ N·m, bolt 12 last'
    """
    return _FIGURE.sub(lambda found: found["name"] or BLANK, text)


@dataclass(frozen=True)
class Column:
    """A column of a table: its heading, its share of the width, and whether it is ticked."""

    heading: str
    share: float = 1.0
    tick: bool = False


@dataclass(frozen=True)
class Table:
    """A ruled table. An empty cell is room to write; a line break in one begins small print."""

    heading: str
    columns: tuple[Column, ...]
    rows: tuple[tuple[str, ...], ...]
    say: str = ""
    kind: str = "table"

    @classmethod
    def begun(
        cls,
        heading: str,
        columns: Iterable[Column],
        starts: Iterable[tuple[str, ...]],
        say: str = "",
        *,
        empty: int = 0,
        more: int = 0,
    ) -> Table:
        """A table whose rows are begun and left to be filled in.

        starts: the first cells of each row; empty: rows where there is none; more: rows besides.
        """
        columns, starts = tuple(columns), list(starts)
        starts = (starts or [()] * empty) + [()] * more
        rows = tuple((*start, *[""] * (len(columns) - len(start))) for start in starts)
        return cls(heading, columns, rows, say)

    def head_of(self, row: tuple[str, ...]) -> int | None:
        """Which cell says what a row is about: the first with text; None in an empty row."""
        return next((n for n, text in enumerate(row) if text), None)


@dataclass(frozen=True)
class Point:
    """Something to do or to mind, and why."""

    text: str
    why: str = ""


@dataclass(frozen=True)
class Points:
    """A list."""

    heading: str
    points: tuple[Point, ...]
    say: str = ""
    kind: str = "points"


@dataclass(frozen=True)
class Space:
    """A ruled box to draw or write in."""

    heading: str
    say: str
    height_mm: int = 70
    kind: str = "space"


@dataclass(frozen=True)
class Picture:
    """A photograph: SVG, what is under it, and what can be seen."""

    svg: str
    name: str
    alt: str


@dataclass(frozen=True)
class Pictures:
    """Photographs of the college's own unit."""

    heading: str
    pictures: tuple[Picture, ...]
    say: str = ""
    kind: str = "pictures"


Block = Table | Points | Space | Pictures


@dataclass(frozen=True)
class Sheet:
    """One bench sheet.

    Attributes
    ----------
    number, module, title : str
        Of the module.
    unit, unit_version, course_version : str
    invented : bool
        Whether the unit is; the foot of every page then says so.
    cohort, college : str
        Empty where the sheet is for a unit alone.
    blocks : tuple of Block
        Without figures: the gate is passed when the sheet is made.
    """

    number: str
    module: str
    title: str
    unit: str
    unit_version: str
    course_version: str
    invented: bool
    cohort: str
    college: str
    blocks: tuple[Block, ...]

    def __post_init__(self) -> None:
        object.__setattr__(self, "blocks", tuple(_passed(block) for block in self.blocks))

    @property
    def versions(self) -> str:
        """Versions of course and unit, for the foot of the page."""
        return f"Twoshaft {self.course_version} · {self.unit}, version {self.unit_version}"

    @property
    def reservation(self) -> str:
        """Who decides at the bench, for the foot of the page."""
        who = "The maker's manual for your unit, local codes and licensed practice decide."
        return f"Invented unit, for teaching. {who}" if self.invented else who

    def as_data(self) -> dict:
        """The sheet as plain data, with the two lines of its foot."""
        return asdict(self) | {"versions": self.versions, "reservation": self.reservation}


def _passed(block: Block) -> Block:
    """The block with every figure left blank."""
    heading, say = without_figures(block.heading), without_figures(block.say)
    if isinstance(block, Table):
        rows = tuple(tuple(without_figures(cell) for cell in row) for row in block.rows)
        return Table(heading, block.columns, rows, say)
    if isinstance(block, Points):
        points = tuple(
            Point(without_figures(point.text), without_figures(point.why)) for point in block.points
        )
        return Points(heading, points, say)
    if isinstance(block, Pictures):
        pictures = tuple(
            Picture(one.svg, without_figures(one.name), without_figures(one.alt))
            for one in block.pictures
        )
        return Pictures(heading, pictures, say)
    return Space(heading, say, block.height_mm)
