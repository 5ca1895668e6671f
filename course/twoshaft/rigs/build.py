"""Build simulator: step through an order and watch the bench."""

from __future__ import annotations

from collections.abc import Iterable
from html import escape
from typing import Any

import traitlets

from twoshaft.errors import UnitFileError
from twoshaft.jobsheet.photographs import Photographs
from twoshaft.jobsheet.screen import Screen
from twoshaft.models.order import OrderTask, Reason, model_order
from twoshaft.models.order.snapshot import Running, Snapshot, snapshot
from twoshaft.models.shape import BuildShown, build_shown
from twoshaft.plots.drawing import html_list
from twoshaft.plots.unit_section import unit_figure
from twoshaft.rigs.college import college_photographs
from twoshaft.rigs.photographs import pictured, tell_photographs
from twoshaft.rigs.unit_section import build_state, picture_of
from twoshaft.rigs.words import STATE_OF, WORDS, hours, minutes, named, part_names, wait_line, why
from twoshaft.units.unit import Unit


class BuildSimulator(Screen):
    """The bench after so many steps of an order that the learner can change.

    Parameters
    ----------
    task : OrderTask
        The steps and what binds them.
    sequence : sequence of str
        Step ids in the order to be tried.
    drawn : Unit, optional
        The unit of the picture, where the task's own is not that.
    photographs : Photographs, optional
        The college's own.
    """

    screen = "build"

    picture = traitlets.Dict().tag(sync=True)
    view = traitlets.Dict().tag(sync=True)
    near = traitlets.Dict().tag(sync=True)
    pictured = traitlets.Dict().tag(sync=True)

    def __init__(
        self,
        task: OrderTask,
        sequence: Iterable[str],
        drawn: Unit | None = None,
        photographs: Photographs | None = None,
    ) -> None:
        self.task, self.sequence, self.position = task, list(sequence), 0
        self.drawn, self.photographs = drawn or task.unit, photographs or Photographs()
        self._members = dict(zip(task.steps, task.members, strict=True))
        super().__init__(
            picture=picture_of(self.drawn),
            view=self._look(),
            near=self._near(),
            pictured=pictured(self.photographs),
        )

    def hear(self, message: dict[str, Any]) -> None:
        """Go to a place in the order, take another step next, or tell photographs."""
        if tell_photographs(self, self.photographs, message):
            return
        if message.get("type") == "go":
            self._go(int(message.get("position", 0)))
        elif message.get("type") == "move":
            self._go(self.position + int(message.get("by", 0)))
        elif message.get("type") == "take" and message.get("step") in self.task.number:
            self._take(message["step"])
        self.view = self._look()
        self.near = self._near()

    def _go(self, position: int) -> None:
        self.position = max(0, min(len(self.sequence), position))

    def _take(self, step: str) -> None:
        """Do a step next; one that was refused before gets another try."""
        place = self.sequence.index(step)
        self.sequence.remove(step)
        if place < self.position:
            self.position -= 1
        self.sequence.insert(self.position, step)
        self.position += 1

    def _look(self) -> dict[str, Any]:
        task, tried = self.task, self.sequence[: self.position]
        bench = snapshot(task, tried)
        left = [step for step in task.steps if step not in bench.done]
        coming = self.sequence[self.position :]
        return {
            "position": self.position,
            "count": len(self.sequence),
            "next": task.label(coming[0]) if coming else "",
            "in_hand": self._in_hand(self.position),
            "happened": self._happened(bench, tried),
            "build": build_state(self.drawn, self._shown(bench, self.position)),
            "finding": self._finding(bench),
            "facts": self._facts(bench),
            "ready": task.labelled(bench.ready),
            "waiting": task.labelled(step for step in left if step not in bench.ready),
        }

    def _near(self) -> dict[str, Any]:
        """How the unit stands one step back and one step on, so that the page shows it at once."""
        places = (k for k in (self.position - 1, self.position + 1) if 0 <= k <= len(self.sequence))
        benches = ((k, snapshot(self.task, self.sequence[:k])) for k in places)
        return {str(k): build_state(self.drawn, self._shown(bench, k)) for k, bench in benches}

    def _shown(self, bench: Snapshot, position: int) -> BuildShown:
        """The unit as it stands at a place of the order, with the step that follows in hand."""
        done = [id for step in bench.done for id in self._members[step]]
        return build_shown(self.drawn, done, self._in_hand(position))

    def _in_hand(self, position: int) -> list[str]:
        """The operations of the step that follows a place of the order."""
        coming = self.sequence[position : position + 1]
        return [id for step in coming for id in self._members[step]]

    def _happened(self, bench: Snapshot, tried: list[str]) -> str:
        if not tried:
            return "The bench is empty: nothing is done yet."
        last = tried[-1]
        refused = {one.step: one for one in bench.refused}
        if last in refused:
            one = refused[last]
            reasons = " ".join(why(self.task, reason, one.state) for reason in one.reasons)
            return f"“{self.task.label(last)}”: {WORDS[one.state]} {reasons}"
        broken = [reason for reason in bench.broken if reason.later == last]
        told = " ".join(self._broken_words(reason) for reason in broken)
        return f"“{self.task.label(last)}” is done. {told}".strip()

    def _broken_words(self, reason: Reason) -> str:
        state = STATE_OF[reason.kind.value]
        return f"{WORDS[state]} {why(self.task, reason, state)}"

    def _finding(self, bench: Snapshot) -> str:
        total = len(self.task.steps)
        if len(bench.done) == total and not bench.broken and not any(c.late for c in bench.clocks):
            built = f"The unit is built in {minutes(bench.minutes)}"
            if stood := sum(wait.stood or 0 for wait in bench.waits):
                return f"{built} of work, and {hours(stood)} of waiting come on top."
            return f"{built}, and nothing had to wait."
        told = f"{len(bench.done)} of {total} steps are done in {minutes(bench.minutes)}; "
        told += f"{len(bench.ready)} can be done next"
        if bench.lost_reach:
            return f"{told}, and {len(bench.lost_reach)} can no longer be reached."
        return f"{told}."

    def _facts(self, bench: Snapshot) -> list[list[str]]:
        """Lines of the bench: word and sentence."""
        task = self.task
        facts = []
        for step, over in bench.lost_reach:
            facts.append(["Out of reach", f"“{task.label(step)}”, under “{task.label(over)}”."])
        kept = [clock.name for clock in bench.clocks if clock.over and not clock.late]
        facts += [["Clock", clock_line(c)] for c in bench.clocks if c.late or not c.over]
        if kept:
            facts.append(["Clock", f"Kept in time: {'; '.join(kept)}."])
        facts += [["Wait", wait_line(task, wait)] for wait in bench.waits]
        facts += [["Holds", f"{hold}."] for hold in bench.holds]
        if bench.hidden:
            hidden = named(task, (step for step, _ in bench.hidden), most=4)
            facts.append(["Hidden", f"Done and covered: {hidden}."])
        waiting = [one.step for one in bench.refused if one.step not in bench.done]
        if waiting:
            facts.append(["Refused", f"Tried and not done: {named(task, waiting, most=4)}."])
        if bench.parts_lost:
            facts.append(["Lost", f"{part_names(task, bench.parts_lost)}."])
        return facts

    @property
    def finding(self) -> str:
        """What the bench shows, as a sentence."""
        return self.view["finding"]

    @property
    def done(self) -> tuple[str, ...]:
        """Steps done so far."""
        return snapshot(self.task, self.sequence[: self.position]).done

    def _figure(self) -> str:
        bench = snapshot(self.task, self.sequence[: self.position])
        return unit_figure(self.drawn, self.finding, self._shown(bench, self.position))

    def plain_copy(self) -> str:
        """The bench as HTML."""
        facts = (f"{word}: {text}" for word, text in self.view["facts"])
        return (
            f"<p><b>{escape(self.finding)}</b></p><p>{escape(self.view['happened'])}</p>"
            f"{self._figure()}{html_list(facts)}"
        )


def clock_line(clock: Running) -> str:
    """A clock that runs or ran out, in a sentence: minutes used of those allowed."""
    state = "too late" if clock.late else "running"
    return f"{clock.name}: {clock.used:g} of {minutes(clock.allowed)} used, {state}."


def build_simulator(
    unit: Unit,
    sequence: Iterable[str] | None = None,
    photographs: Photographs | None = None,
) -> BuildSimulator:
    """Step through the build of a unit.

    Parameters
    ----------
    unit : Unit
        The unit on the bench.
    sequence : iterable of str, optional
        Step ids in the order to be tried; only these steps are in the build. By default all
        steps of the unit in one workable order.
    photographs : Photographs, optional
        Shown beside the step in hand; the college's own by default.

    Returns
    -------
    BuildSimulator
        Something a notebook displays.

    Raises
    ------
    UnitFileError
        When an id is unknown, or stands twice.
    """
    own = college_photographs() if photographs is None else photographs
    if sequence is None:
        task = OrderTask.from_unit(unit)
        return BuildSimulator(task, model_order(task), photographs=own)
    sequence = list(sequence)
    task = OrderTask.from_unit(unit, sequence)
    steps = [task.step_of[key] for key in sequence]
    if len(set(steps)) != len(sequence):
        raise UnitFileError("a step stands twice in the order", mend="list each step one time")
    return BuildSimulator(task, steps, photographs=own)
