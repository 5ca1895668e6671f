"""The unit in section: to look at, to learn the names of its parts, and as it is built."""

from __future__ import annotations

from collections.abc import Mapping
from html import escape
from typing import Any

import traitlets

from twoshaft.jobsheet.photographs import Photographs
from twoshaft.jobsheet.screen import Screen
from twoshaft.models.shape import BuildShown, section_of
from twoshaft.plots.unit_section import (
    NO_TOOLS,
    part_look,
    parts_in_order,
    step_marks,
    unit_figure,
    unit_picture,
)
from twoshaft.rigs.college import college_photographs
from twoshaft.rigs.photographs import pictured, tell_photographs
from twoshaft.units.unit import Unit


class UnitSection(Screen):
    """A unit in developed section, with the name and place of every part.

    Parameters
    ----------
    unit : Unit
        The unit on the bench.
    photographs : Photographs, optional
        The college's own.
    """

    screen = "unit_section"

    picture = traitlets.Dict().tag(sync=True)
    finding = traitlets.Unicode().tag(sync=True)
    pictured = traitlets.Dict().tag(sync=True)

    def __init__(self, unit: Unit, photographs: Photographs | None = None) -> None:
        self.unit, self.photographs = unit, photographs or Photographs()
        super().__init__(
            picture=picture_of(unit), finding=_finding(unit), pictured=pictured(self.photographs)
        )

    def hear(self, message: dict[str, Any]) -> None:
        """Tell the photographs of a part; all else is in the page."""
        tell_photographs(self, self.photographs, message)

    def plain_copy(self) -> str:
        """The picture and its words as HTML."""
        words = escape(unit_picture(self.unit).words)
        return (
            f"<p><b>{escape(self.finding)}</b></p>{unit_figure(self.unit, self.finding)}"
            f"<p>{words}</p>"
        )


def picture_of(unit: Unit, no_way: frozenset[str] = frozenset()) -> dict[str, Any]:
    """A unit's picture, its parts with name and place, and the same in words, for the browser.

    Of parts in ``no_way`` the room is drawn that they take up.
    """
    return {
        "svg": unit_figure(unit, _finding(unit), no_way=no_way),
        "parts": parts_in_order(unit),
        "words": unit_picture(unit).words,
    }


def build_state(
    unit: Unit, shown: BuildShown, tools: Mapping[str, float] = NO_TOOLS, *, arrows: bool = True
) -> dict[str, Any]:
    """What a state of the build changes in the picture, for the browser; see ``step_marks``."""
    looks = {part.id: part_look(shown, part.id) for part in unit.parts}
    return {
        "looks": {part: look for part, look in looks.items() if look != "fitted"},
        "marks": step_marks(unit, shown, tools, arrows=arrows),
        "words": shown.words,
    }


def unit_section(unit: Unit, photographs: Photographs | None = None) -> UnitSection:
    """The unit in section, for a notebook.

    Parameters
    ----------
    unit : Unit
        The unit on the bench.
    photographs : Photographs, optional
        Shown beside the part that is chosen; the college's own by default.

    Returns
    -------
    UnitSection
        Something a notebook displays.
    """
    return UnitSection(unit, college_photographs() if photographs is None else photographs)


def _finding(unit: Unit) -> str:
    drawn = "in section" if section_of(unit).own else "as a schematic"
    return f"{unit.identity.name}, {drawn}: {len(unit.parts)} parts."
