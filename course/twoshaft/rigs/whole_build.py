"""The simulated bench: one unit built step by step, every decision taken by the builder.

In practice everything that a decision brings about is told at once, from the model. In marked work
the bench gives readings only, and every decision is kept in the job sheet. It then lists the steps
as the form of the order does, refuses none, and takes out a step alone: what else would have to
come off is part of what is asked.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from html import escape
from typing import TYPE_CHECKING, Any

import traitlets

from twoshaft.errors import AnswerError, CourseError
from twoshaft.jobsheet.form import describe
from twoshaft.jobsheet.kinds import Asker, Field, Order, UnitAsker
from twoshaft.jobsheet.photographs import Photographs
from twoshaft.jobsheet.screen import Screen
from twoshaft.models.wholebuild import (
    LOG,
    ORDER,
    OUT,
    Ask,
    Bench,
    Decision,
    Fault,
    Job,
    Line,
    Record,
    asks_at,
    build_record,
    card,
    consequences,
    decisions_from,
    fields_of,
    look,
    readings,
)
from twoshaft.plots.drawing import html_list
from twoshaft.plots.whole_build import record_html
from twoshaft.rigs.bench_picture import BenchPicture
from twoshaft.rigs.college import college_photographs
from twoshaft.rigs.photographs import pictured, tell_photographs
from twoshaft.rigs.words import counted, minutes, wait_line

if TYPE_CHECKING:
    from twoshaft.jobsheet.sheet import Sheet

AFTER = "check"
"""The kind of decision that is taken once a step has been done and read."""


class WholeBuild(Screen):
    """The bench of one unit.

    Parameters
    ----------
    job : Job
    sheet : Sheet, optional
        The job sheet that keeps the decisions: the work is then marked, and nothing is told but
        readings. Fields that it has no form for yet are made known to it under the task ``bench``,
        until their form asks for them.
    photographs : Photographs, optional
        The college's own.
    """

    screen = "whole_build"

    picture = traitlets.Dict().tag(sync=True)
    pictured = traitlets.Dict().tag(sync=True)
    plan = traitlets.Dict().tag(sync=True)
    hand = traitlets.Dict().tag(sync=True)
    view = traitlets.Dict().tag(sync=True)

    def __init__(
        self, job: Job, sheet: Sheet | None = None, photographs: Photographs | None = None
    ) -> None:
        self.job, self.sheet, self.photographs = job, sheet, photographs or Photographs()
        self.drawn = BenchPicture(job, marked=sheet is not None)
        asker: Asker = sheet or UnitAsker(job.unit)
        self.fields = {field.name: field for field in asker.ask_all(fields_of(job))}
        self.stored: dict[str, Any] = {}
        self.history: list[str] = []
        self.in_hand: str | None = None
        self.told: list[str] = []
        self.asked_back: str | None = None
        self._record_open = self._over = False
        self._misplaced = 0
        self._turn = 0
        self._readable: dict[str, tuple[Any, Any]] = {}
        self._made: tuple[Any, tuple[Decision, ...]] = None, ()
        self._seen: tuple[Any, Bench] | None = None
        self._known: tuple[Any, Record] | None = None
        if sheet is not None:
            self._register(sheet)
            self._restore(sheet)
        super().__init__(
            picture=self.drawn.whole(),
            pictured=pictured(self.photographs),
            plan=self._plan(),
            hand={},
            view={},
        )
        self._show()

    @property
    def marked(self) -> bool:
        """Whether nothing but readings is told."""
        return self.sheet is not None

    @property
    def shown_steps(self) -> list[str]:
        """Steps in the order in which they are listed: where it is marked, as the sheet's form."""
        shown = self.fields[ORDER]
        if self.marked and isinstance(shown, Order):
            return list(shown.labels())
        return list(self.job.task.steps)

    @property
    def values(self) -> dict[str, Any]:
        """Values of the answers that can be read, by field name; each is read once."""
        for name, stored in self.stored.items():
            if name not in self._readable or self._readable[name][0] != stored:
                self._readable[name] = stored, read_value(self.fields[name], stored)
        return {
            name: value for name in self.stored if (value := self._readable[name][1]) is not None
        }

    @property
    def decisions(self) -> tuple[Decision, ...]:
        """What the builder has decided so far."""
        asked = {**self.values, LOG: tuple(self.history), ORDER: None}
        if self._made[0] != asked:
            self._made = asked, decisions_from(self.job, asked)
        return self._made[1]

    @property
    def faults(self) -> tuple[Fault, ...]:
        """All that is wrong so far; at the end, what is missing as well."""
        return self._found(over=self._over).faults

    def _found(self, *, over: bool) -> Record:
        """What the decisions bring about; worked out once for as long as they stay the same."""
        asked = self.decisions, over
        if self._known is None or self._known[0] != asked:
            self._known = asked, consequences(self.job, self.decisions, over=over)
        return self._known[1]

    def _look(self) -> Bench:
        """The bench as it stands, looked at once for as long as the decisions stay the same."""
        made = self.decisions
        if self._seen is None or self._seen[0] != made:
            self._seen = made, look(self.job, made)
        return self._seen[1]

    # ---- the sheet

    def _register(self, sheet: Sheet) -> None:
        shared = self.held_in
        unknown = [
            field
            for name, field in self.fields.items()
            if name not in sheet.fields and name not in shared
        ]
        if unknown:
            sheet.register("bench", unknown, lent=True)
        self.fields = {name: sheet.fields.get(name, field) for name, field in self.fields.items()}

    @property
    def held_in(self) -> dict[str, str]:
        """The sheet's answer that holds a decision as one of its lines, by the decision's field."""
        if self.sheet is None:
            return {}
        specs = fields_of(self.job)
        return {one.name: one.together for one in specs if one.together in self.sheet.fields}

    def _lines(self, sheet: Sheet, name: str) -> dict[str, str]:
        """What is answered so far in an answer of several lines; nothing where unreadable."""
        return read_value(sheet.fields[name], sheet.value(name)) or {}

    def _restore(self, sheet: Sheet) -> None:
        self.stored = {
            name: value for name in self.fields if (value := sheet.value(name)) is not None
        }
        for name, holder in self.held_in.items():
            if (value := self._lines(sheet, holder).get(name)) is not None:
                self.stored[name] = value
        number = self.job.task.number
        done = dict.fromkeys(self.values.get(ORDER, ()))
        self.history = [step for step in done if step in number]

    def _keep(self, name: str, value: Any) -> None:
        """Put an answer into the sheet, where there is one that asks for it."""
        self.stored[name] = value
        if self.sheet is not None and (holder := self.held_in.get(name)):
            lines = self._lines(self.sheet, holder)
            lines = (
                {**lines, name: value} if value else {k: v for k, v in lines.items() if k != name}
            )
            self.sheet.answer(holder, lines)
        elif self.sheet is not None and name in self.sheet.fields:
            if self.fields[name].is_blank(value):
                self.sheet.save(name, value)
            else:
                self.sheet.answer(name, value)

    # ---- messages

    def hear(self, message: dict[str, Any]) -> None:
        """Take a step in hand, decide, do it, take it out, finish, or open the record."""
        if tell_photographs(self, self.photographs, message):
            return
        self._turn = message.get("turn", self._turn)
        self.asked_back = None
        kind, step = message.get("type"), str(message.get("step"))
        known = step in self.job.task.number
        try:
            if kind == "take" and known:
                self.in_hand, self.told = step, []
            elif kind == "next":
                self._take_next()
            elif kind == "set":
                self._set(str(message.get("name")), message.get("value"))
            elif kind == "do" and self.in_hand is not None:
                self._do(self.in_hand)
            elif kind == "put" and known:
                self._put(step, str(message.get("part", "")))
            elif kind == "bear" and known:
                self._bear(step, message.get("at"))
            elif kind == "out" and known:
                self._take_out(step)
            elif kind == "record":
                self._record_open = bool(message.get("open"))
            elif kind == "over":
                self._put_down(bool(message.get("over", True)))
        except CourseError as error:
            self.told = [error.sentence]
        self._show()

    def _take_next(self) -> None:
        bench = self._look()
        coming: Sequence[str] = bench.now.ready
        if self.marked:
            coming = [step for step in self.shown_steps if step in bench.left]
        if coming:
            self.in_hand, self.told = coming[0], []
        else:
            self.told = ["No step can be done next." if bench.left else "Every step stands."]

    def _set(self, name: str, value: Any) -> None:
        ask = next((a for a in asks_at(self.job, self.in_hand or "") if name in _names(a)), None)
        if ask is None:
            raise AnswerError("this decision does not belong to the step in hand")
        stands = self.in_hand in self._look().doings
        if stands and ask.kind != AFTER:
            raise AnswerError(
                "the step is done and stands as it was decided", mend="take it out to change it"
            )
        before = self._sentences()
        self.stored[name] = value
        try:
            self._keep(name, value)
        except AnswerError as error:
            self.told = [error.sentence]
            return
        self.told = []
        if stands:
            self.told = self._fresh(before) or ["Written down."]

    def _do(self, step: str) -> None:
        job, task = self.job, self.job.task
        if step in self._look().doings:
            raise AnswerError(f"“{task.label(step)}” stands already", mend="take it out first")
        if lacking := self._lacking(step):
            self.asked_back = lacking[0].name
            raise AnswerError(
                f"“{task.label(step)}” asks for a decision first: {lacking[0].prompt}",
                mend="decide it, then do the step",
            )
        self._over = False
        before = self._sentences()
        self.history.append(step)
        if not self.marked:
            told = self._refused(step)
            if told:
                self.history.pop()
                self.told = told
                return
        try:
            told = self._fresh(before)
            done = self._look()
        except CourseError:
            self.history.pop()
            raise
        self._keep_order()
        word = "is written down as done" if self.marked else "is done"
        self.told = [f"“{task.label(step)}” {word}, {minutes(done.minutes)} so far.", *told]
        stays = any(ask.kind == AFTER for ask in asks_at(job, step)) or self._readings(step)
        if not stays and not self.drawn.gauge_stands(step, done.doings):
            self.in_hand = None

    def _put(self, step: str, part: str) -> None:
        """Do a step at the place in the picture to which it was brought; nothing at another one."""
        self.in_hand = step
        if part in self.drawn.parts(step):
            self._do(step)
            return
        label, there = self.job.task.label(step), self.job.unit.part_by_id.get(part)
        where = f"That is the place of: {there.name}." if there else "Nothing has its place there."
        self._misplaced += (
            not self.marked
        )  # in marked work places may be tried, and nothing is kept
        self.told = [f"“{label}” is not done there. {where}"]

    def _bear(self, step: str, at: Any) -> None:
        """Set a driver down at a place in the picture: it bears on the ring that is there."""
        self.in_hand = step
        ask = next((ask for ask in asks_at(self.job, step) if ask.kind == "driver"), None)
        if ask is None or not _is_place(at):
            raise AnswerError("no driver can be set down there")
        answer = self.drawn.bears_at(step, (at[0], at[1]), self._look().doings)
        if answer is None:
            self._misplaced += not self.marked
            self.told = [
                "The driver stands on no ring there. Set it down on a ring of the bearing."
            ]
        else:
            self._set(ask.fields[0].name, answer)

    def _record(self) -> dict[str, Any]:
        return build_record(self.job, self.decisions, misplaced=self._misplaced)

    def _refused(self, step: str) -> list[str]:
        """Why the bench does not let a step be done; empty where it does."""
        found = self._found(over=False)
        if not any(one.step == step for one in found.bench.refused):
            return []
        words = [fault.sentence for fault in found.faults if fault.step == step]
        stops = [f.sentence for f in found.faults if f.step == step and f.kind in STOPS]
        return [f"“{self.job.task.label(step)}” cannot be done now.", *(stops or words)]

    def _take_out(self, step: str) -> None:
        if self.marked:
            self._strike_out(step)
            return
        before = self._look()
        self.history.append(f"{OUT}{step}")
        try:
            after = self._look()
        except CourseError:
            self.history.pop()
            raise
        self._keep_order()
        gone = len(before.doings) - len(after.doings)
        took = minutes(after.minutes - before.minutes)
        label = self.job.task.label(step)
        others = f" with {gone - 1} more that stood in the way" if gone > 1 else ""
        self.told = [f"“{label}” is out again{others}; that took {took}."]
        if not self.marked:
            parts = self._found(over=False).taken[-1].parts
            if parts:
                names = {part.id: part.name for part in self.job.unit.parts}
                lost = ", ".join(names[part] for part in parts)
                self.told.append(f"These parts must be new: {lost}.")
        self.in_hand, self._over = step, False

    def _strike_out(self, step: str) -> None:
        """Take a step out alone, whatever stands in its way: the bench tells none of that."""
        label = self.job.task.label(step)
        if step not in self.history:
            raise AnswerError(f"“{label}” does not stand", mend="choose a step that stands")
        self.history.remove(step)
        self._keep_order()
        self.told = [
            f"“{label}” is taken out, and nothing else. Its decisions can be changed; done again "
            "now, it comes last."
        ]
        self.in_hand = step

    def _keep_order(self) -> None:
        self._keep(ORDER, list(self._look().doings))

    def _put_down(self, over: bool) -> None:
        self._over = over and not self.marked
        self._record_open, self.in_hand = True, None
        left = len(self._look().left)
        are = "is" if left == 1 else "are"
        still = f"{counted(left, 'step')} {are} still open." if left else "Every step stands."
        self.told = [f"The tools are down. {still} The build record is below."]
        if self._over:
            found = self._found(over=True)
            count = len(found.faults)
            self.told.append(
                f"Nothing is wrong with this build; it took {minutes(found.minutes)}."
                if not count
                else f"{counted(count, 'thing is', 'things are')} wrong, and it takes "
                f"{minutes(found.minutes)} in all."
            )

    def _lacking(self, step: str) -> list[Field]:
        values = self.values
        names = [n for ask in asks_at(self.job, step) if ask.kind != AFTER for n in _names(ask)]
        return [self.fields[name] for name in names if values.get(name) in (None, ())]

    def _sentences(self) -> list[str]:
        return [] if self.marked else [fault.sentence for fault in self.faults]

    def _fresh(self, before: list[str]) -> list[str]:
        return [one for one in self._sentences() if one not in before]

    def _readings(self, step: str) -> tuple[Line, ...]:
        """What was read at a step when it was done."""
        made = self.decisions
        place = next((k for k in range(len(made), 0, -1) if made[k - 1].step == step), 0)
        return readings(self.job, made[:place], step)

    # ---- what is shown

    def _plan(self) -> dict[str, Any]:
        task, unit = self.job.task, self.job.unit
        names = {stage.id: stage.name for stage in unit.stages}
        stages: dict[str, list[str]] = {stage: [] for stage in names}
        for step in self.shown_steps:
            stages[task.stage(step)].append(step)
        who = "Practice. Nothing here is marked or saved."
        return {
            "who": self.sheet.header() if self.sheet is not None else who,
            "marked": self.marked,
            "unit": unit.identity.name,
            "stages": [[stage, names[stage], steps] for stage, steps in stages.items() if steps],
            "labels": {step: task.label(step) for step in self.shown_steps},
            "tray": self.drawn.tray(),
        }

    def _show(self) -> None:
        bench = self._look()
        done, task = tuple(bench.doings), self.job.task
        ready = None if self.marked else bench.now.ready
        faults = [] if self.marked else [[f.kind, f.sentence] for f in self.faults]
        record = record_html(self._record()) if self._record_open else ""
        self.hand = self._hand(bench.doings)
        self.view = {
            "turn": self._turn,
            "finding": f"{len(done)} of {len(task.steps)} steps stand, "
            f"{minutes(bench.minutes)} at the bench.",
            "told": list(self.told),
            "asked_back": self.asked_back,
            "build": self.drawn.state(bench.doings, self.in_hand, self.values),
            "done": list(done),
            "ready": list(ready or ()),
            "facts": [] if self.marked else self._facts(bench.now),
            "faults": faults,
            "record": record,
            "status": self.sheet.status if self.sheet is not None else "",
            "states": {name: self._state(name) for name in self.hand.get("names", ())},
        }

    def _hand(self, doings: Mapping[str, Any]) -> dict[str, Any]:
        """The step in hand: its words, what is given, what is asked."""
        step = self.in_hand
        if step is None:
            return {}
        job, stands = self.job, step in doings
        operations = [job.unit.operation_by_id[one] for one in job.members[step]]
        asks = [a for a in asks_at(job, step) if (a.kind == AFTER) == stands]
        names = [name for ask in asks for name in _names(ask)]
        return {
            "step": step,
            "stands": stands,
            "label": job.task.label(step),
            "plain": [op.plain for op in operations if op.plain],
            "cautions": [op.caution for op in operations if op.caution],
            "card": [[x.what, x.value] for ask in asks for x in self._given(ask, doings)],
            "read": [[x.what, x.value] for x in self._readings(step)] if stands else [],
            "names": names,
            "operations": job.members[step],
            "held": {} if stands else self.drawn.held(step),
            "fields": [describe(self.fields[name]) for name in names],
        }

    def _given(self, ask: Ask, doings: Mapping[str, Any]) -> tuple[Line, ...]:
        """What is known before a decision: the card, and lengths that have been measured."""
        lines = card(self.job, ask)
        if ask.kind != "shim":
            return lines
        trial = self.job.step_of(self.job.support(ask.about).trial_operation)
        return (*lines, *(self._readings(trial) if trial and trial in doings else ()))

    def _state(self, name: str) -> dict[str, Any]:
        field, stored = self.fields[name], self.stored.get(name)
        state = {"value": stored, "read": "", "error": ""}
        if not field.is_blank(stored):
            try:
                value = field.read(stored)
            except AnswerError as error:
                state["error"] = error.sentence
            else:
                state["read"] = field.read_as(value)
        return state

    def _facts(self, now) -> list[list[str]]:
        label = self.job.task.label
        facts = [["Holds", f"{hold}."] for hold in now.holds]
        facts += [
            ["Clock", f"{c.name}: {c.used:g} of {minutes(c.allowed)} used."]
            for c in now.clocks
            if not c.over
        ]
        facts += [["Wait", wait_line(self.job.task, wait)] for wait in now.waits]
        facts += [["Out of reach", f"“{label(a)}”, under “{label(b)}”."] for a, b in now.lost_reach]
        if now.hidden:
            covered = counted(len(now.hidden), "step is", "steps are")
            facts.append(["Hidden", f"{covered} done and covered."])
        return facts

    def plain_copy(self) -> str:
        """The bench and its record as HTML."""
        told = html_list(self.told) if self.told else ""
        faults = html_list(words for _, words in self.view["faults"])
        wrong = f"<p>Wrong so far:</p>{faults}" if self.view["faults"] else ""
        record = record_html(self._record())
        return f"<p><b>{escape(self.view['finding'])}</b></p>{told}{wrong}{record}"


STOPS = ("blocked", "buried")


def _is_place(at: Any) -> bool:
    return isinstance(at, list) and len(at) == 2 and all(isinstance(px, int | float) for px in at)


def _names(ask: Ask) -> list[str]:
    return [spec.name for spec in ask.fields]


def read_value(field: Field, stored: Any) -> Any:
    """An answer as its value, for ``decisions_from``; None where it cannot be read."""
    if field.is_blank(stored):
        return None
    try:
        return field.read(stored)
    except AnswerError:
        return None


def whole_build(job: Job, sheet: Sheet | None = None) -> WholeBuild:
    """The simulated bench.

    Parameters
    ----------
    job : Job
        ``Job.of(unit)``, or ``Job.of(unit, given)`` with a learner's own parts.
    sheet : Sheet, optional
        The job sheet that keeps the decisions; practice, with all told, where there is none.

    Returns
    -------
    WholeBuild
        Something a notebook displays.
    """
    photographs = college_photographs() if sheet is None else None
    return WholeBuild(job, sheet, photographs)
