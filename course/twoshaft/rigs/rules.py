"""Rule picture: every rule of the order in layers, and the rules around a chosen step."""

from __future__ import annotations

from collections.abc import Iterable
from html import escape
from typing import Any

import traitlets

from twoshaft.errors import UnitFileError
from twoshaft.jobsheet.screen import Screen
from twoshaft.models.order import OrderTask
from twoshaft.plots.drawing import html_list
from twoshaft.plots.order import rule_figure, rule_finding, rule_sentences
from twoshaft.units.unit import Unit


class RulePicture(Screen):
    """The rules of an order as a picture in which a step can be chosen.

    Parameters
    ----------
    task : OrderTask
        The steps and what binds them.
    focus : str, optional
        The step chosen at first; the first step by default.
    """

    screen = "rules"

    finding = traitlets.Unicode().tag(sync=True)
    steps: traitlets.List[Any] = traitlets.List().tag(sync=True)
    near = traitlets.Dict().tag(sync=True)

    def __init__(self, task: OrderTask, focus: str | None = None) -> None:
        self.task = task
        super().__init__(
            finding=rule_finding(task),
            steps=task.labelled(task.steps),
            near=self._around(focus or task.steps[0]),
        )

    def hear(self, message: dict[str, Any]) -> None:
        """Show the rules around a step."""
        if message.get("type") == "choose" and message.get("step") in self.task.number:
            self.near = self._around(message["step"])

    def _around(self, step: str) -> dict[str, Any]:
        i = self.task.number[step]
        before, after = self.task.before[i].bit_count(), self.task.after[i].bit_count()
        return {
            "step": step,
            "figure": rule_figure(self.task, step, heading=False),
            "sentences": rule_sentences(self.task, step),
            "words": f"“{self.task.label(step)}”: {_comes(before)} before it and {after} after it; "
            f"{len(self.task.steps) - 1 - before - after} may stand on either side.",
        }

    def plain_copy(self) -> str:
        """The picture and the sentences as HTML."""
        return (
            f"<p><b>{escape(self.finding)}</b></p>"
            f"<p>{escape(self.near['words'])}</p>{self.near['figure']}"
            f"{html_list(self.near['sentences'])}"
        )


def _comes(number: int) -> str:
    return "1 step comes" if number == 1 else f"{number} steps come"


def rule_picture(
    unit: Unit, operations: Iterable[str] | None = None, focus: str | None = None
) -> RulePicture:
    """The rules of a unit's order as a picture.

    Parameters
    ----------
    unit : Unit
        The unit on the bench.
    operations : iterable of str, optional
        Operation ids; all by default.
    focus : str, optional
        The step chosen at first.

    Returns
    -------
    RulePicture
        Something a notebook displays.

    Raises
    ------
    UnitFileError
        When an id is unknown.
    """
    task = OrderTask.from_unit(unit, operations)
    if focus is not None and focus not in task.step_of:
        raise UnitFileError(f"there is no step {focus!r} here", mend="name one of the steps shown")
    return RulePicture(task, None if focus is None else task.step_of[focus])
