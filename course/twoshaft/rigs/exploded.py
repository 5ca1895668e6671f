"""A stage of the build, or the whole unit, apart and together along the ways in."""

from __future__ import annotations

from html import escape
from typing import Any

import traitlets

from twoshaft.errors import UnitFileError
from twoshaft.jobsheet.photographs import Photographs
from twoshaft.jobsheet.screen import Screen
from twoshaft.models.shape import exploded, section_of, space_of, stages_to_explode
from twoshaft.plots.unit_exploded import exploded_figure, exploded_picture
from twoshaft.rigs.college import college_photographs
from twoshaft.rigs.photographs import pictured, tell_photographs
from twoshaft.units.unit import Unit

WHOLE = "whole-unit"


class ExplodedView(Screen):
    """Parts apart, to be put together by a slider, stage by stage.

    Parameters
    ----------
    unit : Unit
        The unit on the bench.
    stage : str, optional
        The stage that is shown first; by default the first one in which something is fitted.
    photographs : Photographs, optional
        The college's own.

    Raises
    ------
    UnitFileError
        When the unit has no such stage, or no part of it has a form.
    """

    screen = "exploded"

    stages: traitlets.List[Any] = traitlets.List().tag(sync=True)
    stage = traitlets.Unicode().tag(sync=True)
    picture = traitlets.Dict().tag(sync=True)
    space = traitlets.Dict().tag(sync=True)
    finding = traitlets.Unicode().tag(sync=True)
    pictured = traitlets.Dict().tag(sync=True)

    def __init__(
        self, unit: Unit, stage: str | None = None, photographs: Photographs | None = None
    ) -> None:
        self.unit, self.photographs = unit, photographs or Photographs()
        known = stages_to_explode(unit)
        stage = stage or next(iter(known), WHOLE)
        names = {one.id: one.name for one in unit.stages}
        if stage not in (*known, WHOLE):
            raise UnitFileError(
                f"stage {stage!r} has no part that can be drawn apart",
                mend=f"name one of {', '.join((*known, WHOLE))}",
            )
        listed = [(id, names[id]) for id in known] + [(WHOLE, "The whole unit")]
        super().__init__(
            stages=listed if known else [], **self._look(stage), stage=stage,
            pictured=pictured(self.photographs),
        )  # fmt: skip

    def hear(self, message: dict[str, Any]) -> None:
        """Show another stage, tell its solids in space, or photographs of a part."""
        if tell_photographs(self, self.photographs, message):
            return
        if message.get("type") == "space":
            stage = None if self.stage == WHOLE else self.stage
            self.space = {"stage": self.stage, **space_of(self.unit, exploded(self.unit, stage))}
        if message.get("type") == "stage" and message.get("stage") in dict(self.stages):
            look = self._look(message["stage"])
            with self.hold_sync():
                self.stage, self.finding = message["stage"], look["finding"]
                self.picture = look["picture"]

    def _look(self, stage: str) -> dict[str, Any]:
        shown = None if stage == WHOLE else stage
        title = self._title(stage)
        picture = exploded_picture(self.unit, shown)
        if picture is None:
            return {"finding": title, "picture": {}}
        return {
            "finding": title,
            "picture": {
                "svg": exploded_figure(self.unit, title, shown, apart=False),
                "parts": picture.parts,
                "words": picture.words,
                "movers": picture.movers,
            },
        }

    def _title(self, stage: str) -> str:
        name = next((one.name for one in self.unit.stages if one.id == stage), "The whole unit")
        picture = exploded_picture(self.unit, None if stage == WHOLE else stage)
        if picture is None:
            return f"{self.unit.identity.name}: the unit file gives no shapes to draw apart."
        count = len({mover["part"] for mover in picture.movers})
        parts = f"{count} part{'s' if count != 1 else ''}"
        says = "" if section_of(self.unit).own else " A schematic by usual proportions."
        return f"{name}, apart: {parts} in the order in which they go in.{says}"

    def plain_copy(self) -> str:
        """The picture apart, and its words, as HTML."""
        stage = None if self.stage == WHOLE else self.stage
        picture = exploded_picture(self.unit, stage)
        words = escape(picture.words) if picture else ""
        figure = exploded_figure(self.unit, self.finding, stage)
        return f"<p><b>{escape(self.finding)}</b></p>{figure}<p>{words}</p>"


def exploded_view(
    unit: Unit, stage: str | None = None, photographs: Photographs | None = None
) -> ExplodedView:
    """Parts apart and together, for a notebook.

    Parameters
    ----------
    unit : Unit
        The unit on the bench.
    stage : str, optional
        The stage that is shown first.
    photographs : Photographs, optional
        Shown with the part that is chosen; the college's own by default.

    Returns
    -------
    ExplodedView
        Something a notebook displays.
    """
    own = college_photographs() if photographs is None else photographs
    return ExplodedView(unit, stage, own)
