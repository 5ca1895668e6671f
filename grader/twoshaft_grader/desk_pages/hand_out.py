"""The page *Hand out*: what learners get, who gets it, and until when."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import datetime

from twoshaft.errors import CohortError
from twoshaft.modules import COURSE
from twoshaft_grader.cohort.assign import (
    Assigned,
    assign,
    assignments_of,
    change_due,
    hand_out_to,
    read_assigned,
)
from twoshaft_grader.cohort.before_assigning import Obstacle, in_the_way, who_needs
from twoshaft_grader.cohort.content import find_content
from twoshaft_grader.cohort.due import read_due
from twoshaft_grader.cohort.extensions import extend_all
from twoshaft_grader.cohort.folder import Cohort
from twoshaft_grader.cohort.intake import roster_of
from twoshaft_grader.cohort.roster import Learner, chosen
from twoshaft_grader.cohort.unassign import take_assignment_back, who_has_begun
from twoshaft_grader.desk_pages.page import Desk, Page, Work
from twoshaft_grader.desk_pages.parts import Act, Cell, Field, Form, Part, Row, Say, Table, Values

_TICKED, _GROUP = "ticked", "group "
_DUE_HINT = "as 2026-12-04 or 2026-12-04 16:00"


@dataclass(frozen=True)
class _Plan:
    """What is about to be handed out."""

    module: str
    attempt: int
    due: datetime | None
    learners: tuple[Learner, ...]
    some: bool
    bench_readings: bool
    obstacles: tuple[Obstacle, ...]


class HandOut(Page):
    """Hand modules out, change dates, take back, give a further attempt."""

    id, title = "hand-out", "Hand out"

    def __init__(self, desk: Desk) -> None:
        super().__init__(desk)
        self._plan: _Plan | None = None
        self._needing: tuple[str, list[tuple[Learner, str]]] = ("", [])

    def show(self) -> Sequence[Part]:
        """What is out, and what can be done about it."""
        if self._plan:
            return self._before(self._plan)
        cohort = self.desk.cohort
        people, out = roster_of(cohort), assignments_of(cohort)
        if not people:
            return (Say("Nobody is in the group yet: take a roster in on the page Group."),)
        groups = sorted({one.group for one in people} - {""})
        whom = Field(
            "to", "To", "choice",
            options=(
                ("", "everybody, also those who join later"),
                *((f"{_GROUP}{one}", f"group {one}") for one in groups),
                (_TICKED, "the learners ticked below"),
            ),
        )  # fmt: skip
        parts: list[Part] = [
            _out_table(cohort, out, people),
            Form(
                "Hand out a module",
                (
                    Field("module", "Module", "choice", options=_modules(cohort)),
                    Field("attempt", "Attempt", value="1", hint="2 and more: fresh readings"),
                    Field("due", "Due", hint=f"{_DUE_HINT}; empty: no date"),
                    whom,
                    Field(
                        "bench-readings", "Readings from the real bench may be used", "tick",
                        hint="in place of drawn ones, where the module allows it",
                    ),
                ),
                (Act("look", "See what stands in the way", first=True),),
                hint="Nothing is handed out before you have seen it.",
            ),
            Table(
                "learners",
                "Learners, to tick",
                ("id", "name", "group"),
                tuple(Row(one.id, (one.id, one.name, one.group)) for one in people),
                pick=True,
            ),
        ]  # fmt: skip
        if out:
            parts += self._about_what_is_out(out, groups)
        return parts

    def _about_what_is_out(self, out: list[Assigned], groups: list[str]) -> list[Part]:
        which = tuple((one.name, one.name) for one in out)
        some = (
            *((f"{_GROUP}{one}", f"group {one}") for one in groups),
            (_TICKED, "the ticked learners"),
        )
        parts: list[Part] = [
            Form(
                "Change a date",
                (
                    Field("later-of", "Assignment", "choice", options=which),
                    Field("later", "New date", hint=_DUE_HINT),
                    Field(
                        "later-to", "For", "choice",
                        options=((_TICKED, "the ticked learners"), *some[:-1], ("", "everybody")),
                    ),
                    Field("later-why", "Reason"),
                ),
                (Act("extend", "Change the date"),),
            ),
            Form(
                "Take back",
                (
                    Field("back", "Assignment", "choice", options=which),
                    Field("back-why", "Reason"),
                ),
                (
                    Act(
                        "take-back",
                        "Take back",
                        sure="It is taken from everybody, if nobody has begun it. Take it back?",
                    ),
                ),
            ),
            Form(
                "A further attempt",
                (
                    Field(
                        "again", "Module", "choice",
                        options=tuple((m, _title(m)) for m in dict.fromkeys(o.module for o in out)),
                    ),
                ),
                (Act("needs", "See who needs one"),),
            ),
        ]  # fmt: skip
        module, needing = self._needing
        if module:
            parts += _further(module, needing, out)
        if part_way := tuple((one.name, one.name) for one in out if one.only):
            parts.append(
                Form(
                    "Hand out to more learners",
                    (
                        Field("more", "Assignment", "choice", options=part_way),
                        Field("more-to", "To", "choice", options=some),
                    ),
                    (Act("give", "Hand out to them too"),),
                )
            )
        return parts

    def do(self, act: str, values: Values, work: Work) -> str:
        """Do what a button says."""
        cohort, by = self.desk.cohort, self.desk.by
        people = roster_of(cohort)
        if act == "look":
            work.begin("trying the module on your unit")
            due = values.text("due")
            return self._look(
                cohort,
                values.need("module", "the module"),
                _attempt(values.text("attempt")),
                read_due(due, cohort.zone) if due else None,
                _whom(people, values, "to"),
                some=bool(values.text("to")),
                bench_readings=values.tick("bench-readings"),
            )
        if act == "change":
            self._plan = None
            return "Nothing is handed out."
        if act == "hand-out":
            return self._hand_out(cohort, work)
        if act == "extend":
            assigned = read_assigned(cohort, values.need("later-of", "the assignment"))
            moment = read_due(values.need("later", "the new date"), cohort.zone)
            why = values.need("later-why", "the reason")
            work.begin("changing the date")
            if not values.text("later-to"):
                change_due(cohort, assigned.name, moment, by=by, why=why)
                return f"{assigned.name} is now due {moment:%Y-%m-%d %H:%M}."
            ids = [one.id for one in _whom(people, values, "later-to")]
            extend_all(cohort, assigned, people, ids, moment, by=by, why=why)
            return f"{assigned.name} is now due {moment:%Y-%m-%d %H:%M} for {', '.join(ids)}."
        if act == "take-back":
            assigned = read_assigned(cohort, values.need("back", "the assignment"))
            work.begin("taking back")
            why = values.need("back-why", "the reason")
            left = take_assignment_back(cohort, assigned, people, by=by, why=why)
            stays = f" An empty copy stays in the account of {', '.join(left)}." if left else ""
            return f"{assigned.name} is taken back.{stays}"
        if act == "give":
            assigned = read_assigned(cohort, values.need("more", "the assignment"))
            learners = _whom(people, values, "more-to")
            work.begin("handing out")
            hand_out_to(cohort, assigned, learners, by=by)
            return f"{assigned.name} is handed out to {', '.join(one.id for one in learners)}."
        if act == "needs":
            module = values.need("again", "the module")
            work.begin("looking")
            self._needing = (module, who_needs(cohort, module))
            count = len(self._needing[1])
            return f"{count or 'Nobody'} need{'' if count > 1 else 's'} a further attempt."
        if act == "further":
            ids = values.some("needing")
            work.begin("trying the module on your unit")
            module = self._needing[0]
            attempt = 1 + max(o.attempt for o in assignments_of(cohort) if o.module == module)
            due = values.text("further-due")
            until = read_due(due, cohort.zone) if due else None
            return self._look(cohort, module, attempt, until, chosen(people, ids), some=True)
        return ""

    def _look(
        self,
        cohort: Cohort,
        module: str,
        attempt: int,
        due: datetime | None,
        learners: list[Learner],
        *,
        some: bool,
        bench_readings: bool = False,
    ) -> str:
        content = find_content(cohort.content, base=cohort.root)
        found = in_the_way(cohort, content, module, attempt=attempt, due=due, learners=learners)
        self._plan = _Plan(
            module, attempt, due, tuple(learners), some, bench_readings, tuple(found)
        )
        return "Nothing is handed out yet."

    def _hand_out(self, cohort: Cohort, work: Work) -> str:
        plan = self._plan
        if plan is None or any(one.stops for one in plan.obstacles):
            raise CohortError("it cannot be handed out like this", mend="change what stands there")
        work.begin(f"handing out {plan.module}")
        assigned = assign(
            cohort,
            find_content(cohort.content, base=cohort.root),
            plan.module,
            attempt=plan.attempt,
            due=plan.due,
            learners=list(plan.learners),
            bench_readings=plan.bench_readings,
            some=plan.some,
            by=self.desk.by,
        )
        self._plan, self._needing = None, ("", [])
        until = f", due {plan.due:%Y-%m-%d %H:%M}" if plan.due else ", with no due date"
        return f"{assigned.name} is handed out to {_count(len(plan.learners))}{until}."

    def _before(self, plan: _Plan) -> Sequence[Part]:
        due = f"due {plan.due:%Y-%m-%d %H:%M}" if plan.due else "with no due date"
        whom = ", ".join(one.id for one in plan.learners) if plan.some else "everybody"
        rows = tuple(
            Row(
                str(number),
                (Cell("stops it" if one.stops else "to know", "▲" if one.stops else "○"), one.text),
            )
            for number, one in enumerate(plan.obstacles)
        )
        stopped = any(one.stops for one in plan.obstacles)
        label = "Hand out all the same" if rows else "Hand out"
        return (
            Say(f"{_title(plan.module)}, attempt {plan.attempt}, {due}, to {whom}."),
            Table(
                "in-the-way", "What stands in the way", ("", "what"), rows, empty="Nothing."
            ),
            Form(
                "",
                (),
                (
                    *(() if stopped else (Act("hand-out", label, first=True),)),
                    Act("change", "Change something"),
                ),
            ),
        )  # fmt: skip


def _out_table(cohort: Cohort, out: list[Assigned], people: list[Learner]) -> Table:
    rows = []
    for one in out:
        mine = one.among(people)
        due = one.due.astimezone(cohort.zone) if one.due else None
        rows.append(
            Row(
                one.name,
                (
                    one.name,
                    f"{due:%Y-%m-%d %H:%M}" if due else "no date",
                    _count(len(mine)) if one.only else "everybody",
                    str(len(who_has_begun(cohort, one, mine))),
                ),
            )
        )
    heading = ("assignment", "due", "to", "begun by")
    return Table("handed-out", "Handed out", heading, tuple(rows), numbers=(3,), empty="Nothing.")


def _further(module: str, needing: list[tuple[Learner, str]], out: list[Assigned]) -> list[Part]:
    attempt = 1 + max(one.attempt for one in out if one.module == module)
    table = Table(
        "needing",
        f"Who needs a further attempt at {_title(module)}",
        ("id", "name", "group", "why"),
        tuple(Row(one.id, (one.id, one.name, one.group, why)) for one, why in needing),
        pick=True,
        empty="Nobody does.",
    )
    form = Form(
        "",
        (Field("further-due", "Due", hint=f"{_DUE_HINT}; empty: no date"),),
        (Act("further", f"Hand attempt {attempt} out to the ticked, with fresh readings"),),
    )
    return [table, form] if needing else [table]


def _modules(cohort: Cohort) -> tuple[tuple[str, str], ...]:
    content = find_content(cohort.content, base=cohort.root)
    return (("", "Choose"), *((one, _title(one)) for one in content.modules))


def _title(module: str) -> str:
    return COURSE[module].title if module in COURSE else module.replace("-", " ").capitalize()


def _attempt(text: str) -> int:
    if not text.isdecimal() or len(text) > 9 or not 1 <= int(text) <= 99:
        raise CohortError(f'"{text[:20]}" is no attempt', mend="write 1, or 2 and more for a resit")
    return int(text)


def _whom(people: list[Learner], values: Values, name: str) -> list[Learner]:
    to = values.text(name)
    if to == _TICKED:
        return chosen(people, values.some("learners"))
    return chosen(people, group=to.removeprefix(_GROUP)) if to else people


def _count(count: int) -> str:
    return f"{count} learner{'' if count == 1 else 's'}"
