"""The simulated bench: one unit built step by step, every decision taken by the builder.

In practice everything that a decision brings about is told at once, from the model. In marked work
the bench gives readings only, and every decision is kept in the job sheet.
"""

from __future__ import annotations

from collections.abc import Mapping
from html import escape
from types import SimpleNamespace
from typing import TYPE_CHECKING, Any

import traitlets

from twoshaft.errors import AnswerError, CourseError
from twoshaft.jobsheet.fields import Choice, Field, Film, Number, Order
from twoshaft.jobsheet.form import describe, quantity_words
from twoshaft.jobsheet.hand_path import HandPath
from twoshaft.jobsheet.screen import HERE, Screen, script, styles
from twoshaft.models.wholebuild import (
    LOG,
    ORDER,
    OUT,
    Ask,
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
from twoshaft.plots.whole_build import bench_figure, record_html
from twoshaft.rigs.words import minutes

if TYPE_CHECKING:
    from twoshaft.jobsheet.sheet import Sheet

RIGS = "twoshaft.rigs"
AFTER = "check"
"""The kind of decision that is taken once a step has been done and read."""


class WholeBuild(Screen):
    """The bench of one unit.

    Parameters
    ----------
    job : Job
    sheet : Sheet, optional
        The job sheet that keeps the decisions: the work is then marked, and nothing is told but
        readings. Fields that it has no form for yet are made known to it under the task ``bench``.
    """

    _esm = script(
        "renderWholeBuild",
        (HERE, "orderlist.js"),
        (HERE, "filmpad.js"),
        (HERE, "pathlist.js"),
        (HERE, "form.js"),
        (RIGS, "whole_build.js"),
    )
    _css = styles(
        (HERE, "form.css"),
        (HERE, "filmpad.css"),
        (HERE, "pathlist.css"),
        (RIGS, "rigs.css"),
        (RIGS, "whole_build.css"),
    )

    plan = traitlets.Dict().tag(sync=True)
    hand = traitlets.Dict().tag(sync=True)
    view = traitlets.Dict().tag(sync=True)

    def __init__(self, job: Job, sheet: Sheet | None = None) -> None:
        self.job, self.sheet = job, sheet
        self.fields = {field.name: field for field in fields_on(sheet or _maker(job), job)}
        self.stored: dict[str, Any] = {}
        self.history: list[str] = []
        self.in_hand: str | None = None
        self.told: list[str] = []
        self._record_open = self._over = False
        self._turn = 0
        self._known: tuple[tuple[tuple[Decision, ...], bool], Record] | None = None
        if sheet is not None:
            self._register()
            self._restore()
        super().__init__(plan=self._plan(), hand={}, view={})
        self._show()

    @property
    def marked(self) -> bool:
        """Whether nothing but readings is told."""
        return self.sheet is not None

    @property
    def shown_steps(self) -> list[str]:
        """Steps in the order in which they are listed: shuffled where it is marked."""
        steps = list(self.job.task.steps)
        return self.job.shuffled("bench", steps) if self.marked else steps

    @property
    def values(self) -> dict[str, Any]:
        """Values of the answers that can be read, by field name."""
        return read_values(self.fields, self.stored)

    @property
    def decisions(self) -> tuple[Decision, ...]:
        """What the builder has decided so far."""
        return decisions_from(self.job, {**self.values, LOG: tuple(self.history), ORDER: None})

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

    # ---- the sheet

    def _register(self) -> None:
        unknown = [field for name, field in self.fields.items() if name not in self.sheet.fields]
        unknown = [field for field in unknown if field.name != LOG]
        if unknown:
            self.sheet.register("bench", unknown)
        self.fields = {
            name: self.sheet.fields.get(name, field) for name, field in self.fields.items()
        }

    def _restore(self) -> None:
        self.stored = {
            name: value for name in self.fields if (value := self.sheet.value(name)) is not None
        }
        values = self.values
        log = values.get(LOG) or values.get(ORDER) or ()
        kept: list[str] = []
        for code in log:
            try:
                look(self.job, decisions_from(self.job, {LOG: (*kept, code)}))
            except CourseError:
                continue
            kept.append(code)
        self.history = kept

    def _keep(self, name: str, value: Any) -> None:
        """Put an answer into the sheet, where there is one that asks for it."""
        self.stored[name] = value
        if self.sheet is not None and name in self.sheet.fields:
            if self.fields[name].is_blank(value):
                self.sheet.save(name, value)
            else:
                self.sheet.answer(name, value)

    # ---- messages

    def hear(self, message: dict[str, Any]) -> None:
        """Take a step in hand, decide, do it, take it out, finish, or open the record."""
        self._turn = message.get("turn", self._turn)
        kind, step = message.get("type"), message.get("step")
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
        bench = look(self.job, self.decisions)
        coming = bench.now.ready
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
        stands = self.in_hand in look(self.job, self.decisions).doings
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
        if step in look(job, self.decisions).doings:
            raise AnswerError(f"“{task.label(step)}” stands already", mend="take it out first")
        if lacking := self._lacking(step):
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
            done = look(job, self.decisions)
        except CourseError:
            self.history.pop()
            raise
        self._keep_order()
        word = "is written down as done" if self.marked else "is done"
        self.told = [f"“{task.label(step)}” {word}, {minutes(done.minutes)} so far.", *told]
        if not any(ask.kind == AFTER for ask in asks_at(job, step)) and not self._readings(step):
            self.in_hand = None

    def _refused(self, step: str) -> list[str]:
        """Why the bench does not let a step be done; empty where it does."""
        found = self._found(over=False)
        if not any(one.step == step for one in found.bench.refused):
            return []
        words = [fault.sentence for fault in found.faults if fault.step == step]
        stops = [f.sentence for f in found.faults if f.step == step and f.kind in STOPS]
        return [f"“{self.job.task.label(step)}” cannot be done now.", *(stops or words)]

    def _take_out(self, step: str) -> None:
        before = look(self.job, self.decisions)
        self.history.append(f"{OUT}{step}")
        try:
            after = look(self.job, self.decisions)
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

    def _keep_order(self) -> None:
        self._keep(ORDER, list(look(self.job, self.decisions).doings))
        if LOG in (self.sheet.fields if self.sheet is not None else ()):
            self._keep(LOG, list(self.history))

    def _put_down(self, over: bool) -> None:
        self._over = over and not self.marked
        self._record_open, self.in_hand = True, None
        left = len(look(self.job, self.decisions).left)
        still = f"{left} steps are still open." if left else "Every step stands."
        self.told = [f"The tools are down. {still} The build record is below."]
        if self._over:
            found = self._found(over=True)
            count = len(found.faults)
            self.told.append(
                f"Nothing is wrong with this build; it took {minutes(found.minutes)}."
                if not count
                else f"{count} thing{' is' if count == 1 else 's are'} wrong, and it takes "
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
        stages: dict[str, list[str]] = {}
        for step in self.shown_steps:
            stages.setdefault(task.stage(step), []).append(step)
        who = "Practice. Nothing here is marked or saved."
        return {
            "who": self.sheet.header() if self.sheet is not None else who,
            "marked": self.marked,
            "unit": unit.identity.name,
            "stages": [[stage, names[stage], steps] for stage, steps in stages.items()],
            "labels": {step: task.label(step) for step in self.shown_steps},
        }

    def _show(self) -> None:
        bench = look(self.job, self.decisions)
        done, task = tuple(bench.doings), self.job.task
        ready = None if self.marked else bench.now.ready
        faults = [] if self.marked else [[f.kind, f.sentence] for f in self.faults]
        record = record_html(build_record(self.job, self.decisions)) if self._record_open else ""
        self.hand = self._hand(bench.doings)
        self.view = {
            "turn": self._turn,
            "finding": f"{len(done)} of {len(task.steps)} steps stand, "
            f"{minutes(bench.minutes)} at the bench.",
            "told": list(self.told),
            "figure": bench_figure(task, done, ready, self.shown_steps),
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
            "fields": [describe(self.fields[name]) for name in names],
        }

    def _given(self, ask: Ask, doings: Mapping[str, Any]) -> tuple[Line, ...]:
        """What is known before a decision: the card, and lengths that have been measured."""
        lines = card(self.job, ask)
        if ask.kind != "shim":
            return lines
        trial = self.job.step_of(self.job.support(ask.about).trial_operation)
        return (*lines, *(self._readings(trial) if trial in doings else ()))

    def _state(self, name: str) -> dict[str, Any]:
        field, stored = self.fields[name], self.stored.get(name)
        state = {"value": stored, "read": "", "error": ""}
        if not field.is_blank(stored):
            try:
                value = field.read(stored)
            except AnswerError as error:
                state["error"] = error.sentence
            else:
                state["read"] = quantity_words(value) if field.kind == "number" else ""
        return state

    def _facts(self, now) -> list[list[str]]:
        label = self.job.task.label
        facts = [["Holds", f"{hold}."] for hold in now.holds]
        facts += [
            ["Clock", f"{c.name}: {c.used:g} of {minutes(c.allowed)} used."]
            for c in now.clocks
            if not c.over
        ]
        facts += [["Out of reach", f"“{label(a)}”, under “{label(b)}”."] for a, b in now.lost_reach]
        if now.hidden:
            facts.append(["Hidden", f"{len(now.hidden)} steps are done and covered."])
        return facts

    def plain_copy(self) -> str:
        """The bench and its record as HTML."""
        told = html_list(self.told) if self.told else ""
        faults = html_list(words for _, words in self.view["faults"])
        wrong = f"<p>Wrong so far:</p>{faults}" if self.view["faults"] else ""
        record = record_html(build_record(self.job, self.decisions))
        return f"<p><b>{escape(self.view['finding'])}</b></p>{told}{wrong}{record}"


STOPS = ("blocked", "buried")


def _names(ask: Ask) -> list[str]:
    return [spec.name for spec in ask.fields]


def fields_on(sheet: Any, job: Job) -> list[Field]:
    """The bench's answer fields with the log, made by a sheet."""
    return [spec.on(sheet) for spec in fields_of(job, log=True)]


def _maker(bench: Job) -> Any:
    """Makes fields as a sheet does, where there is none."""

    def film(name: str, prompt: str, job: Mapping[str, Any]) -> Film:
        return Film(name, prompt, bench.work(job["face"]))

    return SimpleNamespace(choice=Choice, number=Number, order=Order, path=HandPath, film=film)


def read_values(fields: Mapping[str, Field], stored: Mapping[str, Any]) -> dict[str, Any]:
    """Answers as values, for ``decisions_from``; those that cannot be read are left out.

    Parameters
    ----------
    fields : mapping of str to Field
    stored : mapping of str to object
        As a job sheet stores them.
    """
    values = {}
    for name, field in fields.items():
        if not field.is_blank(stored.get(name)):
            try:
                values[name] = field.read(stored[name])
            except AnswerError:
                continue
    return values


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
    return WholeBuild(job, sheet)
