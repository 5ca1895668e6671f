"""Practice bench: put steps in order and see at once what each place brings about."""

from __future__ import annotations

import random
from collections.abc import Iterable
from html import escape
from typing import Any

import traitlets

from twoshaft.errors import UnitFileError
from twoshaft.jobsheet.photographs import Photographs
from twoshaft.jobsheet.screen import Screen
from twoshaft.models.order import OrderTask, consequences, replay
from twoshaft.plots.order import stage_names
from twoshaft.rigs.college import college_photographs
from twoshaft.rigs.photographs import pictured, tell_photographs
from twoshaft.rigs.words import cost, remarks, verdict
from twoshaft.units.unit import Unit


class OrderBench(Screen):
    """A list of steps with what each brings about where it stands.

    Parameters
    ----------
    task : OrderTask
        The steps and what binds them.
    start : sequence of str
        Step ids in the order shown at first.
    photographs : Photographs, optional
        The college's own.
    """

    screen = "bench"

    steps: traitlets.List[Any] = traitlets.List().tag(sync=True)
    start: traitlets.List[Any] = traitlets.List().tag(sync=True)
    work = traitlets.Dict().tag(sync=True)
    judged = traitlets.Dict().tag(sync=True)
    pictured = traitlets.Dict().tag(sync=True)

    def __init__(
        self, task: OrderTask, start: Iterable[str], photographs: Photographs | None = None
    ) -> None:
        self.task, self.photographs = task, photographs or Photographs()
        start = list(start)
        stages = stage_names(task)
        several = len(set(stages.values())) > 1
        super().__init__(
            steps=[
                [step, task.label(step), stages[step]] if several else [step, task.label(step)]
                for step in start
            ],
            start=start,
            work={step: list(task.members[task.number[step]]) for step in start},
            judged=self._judge(start),
            pictured=pictured(self.photographs),
        )

    def hear(self, message: dict[str, Any]) -> None:
        """Judge the order that the browser shows now, or tell photographs."""
        if tell_photographs(self, self.photographs, message):
            return
        if message.get("type") == "order":
            order = [step for step in message.get("order", ()) if step in self.task.number]
            self.judged = {**self._judge(order), "turn": message.get("turn")}

    def _judge(self, order: list[str]) -> dict[str, Any]:
        found = consequences(self.task, order)
        notes = {one.step: notes for one in found if (notes := remarks(self.task, one))}
        return {
            "order": order,
            "notes": notes,
            "finding": verdict(found),
            "cost": cost(self.task, replay(self.task, order)),
        }

    @property
    def order(self) -> tuple[str, ...]:
        """The order as it stands."""
        return tuple(self.judged["order"])

    @property
    def finding(self) -> str:
        """What the bench shows, as a sentence."""
        return self.judged["finding"]

    def plain_copy(self) -> str:
        """The order with its remarks as HTML."""
        rows = []
        for step in self.judged["order"]:
            notes = "".join(
                f"<br><small>{note['shape']} <b>{escape(note['word'])}</b> "
                f"{escape(note['text'])}</small>"
                for note in self.judged["notes"].get(step, ())
            )
            rows.append(f"<li>{escape(self.task.label(step))}{notes}</li>")
        return (
            f"<p><b>{escape(self.finding)}</b> {escape(self.judged['cost'])}</p>"
            f"<ol>{''.join(rows)}</ol>"
        )


def order_bench(
    unit: Unit,
    operations: Iterable[str] | None = None,
    start: Iterable[str] | None = None,
    photographs: Photographs | None = None,
) -> OrderBench:
    """A practice bench for the order of work.

    Parameters
    ----------
    unit : Unit
        The unit on the bench.
    operations : iterable of str, optional
        Operation ids; all by default.
    start : iterable of str, optional
        The order shown at first; shuffled, the same way at every run, by default.
    photographs : Photographs, optional
        Shown with the step that is chosen; the college's own by default.

    Returns
    -------
    OrderBench
        Something a notebook displays.

    Raises
    ------
    UnitFileError
        When an id is unknown, or the start does not hold every step once.
    """
    task = OrderTask.from_unit(unit, operations)
    if start is None:
        order = list(task.steps)
        random.Random(len(order)).shuffle(order)
    else:
        order = list(start)
        if sorted(order) != sorted(task.steps):
            raise UnitFileError(
                "the start order does not hold every step once", mend="list each step one time"
            )
    own = college_photographs() if photographs is None else photographs
    return OrderBench(task, order, own)
