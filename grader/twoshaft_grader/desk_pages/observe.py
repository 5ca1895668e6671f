"""The page *Observe at the bench*: the form of one outcome, criterion by criterion."""

from __future__ import annotations

from collections.abc import Sequence

from twoshaft.errors import CohortError
from twoshaft.modules import COURSE
from twoshaft.outcomes import Evidence, load_outcomes
from twoshaft.units import load_unit
from twoshaft_grader.bench_sheets.observation import write_form
from twoshaft_grader.bench_sheets.paper import Paper
from twoshaft_grader.bench_sheets.write import write_sheets
from twoshaft_grader.cohort.assessors import assessors_of, enter_assessor
from twoshaft_grader.cohort.intake import roster_of
from twoshaft_grader.cohort.observations import Listed, list_observations, observe, take_back
from twoshaft_grader.cohort.photographs import own_photographs
from twoshaft_grader.cohort.standing import write_standing
from twoshaft_grader.desk_pages.page import Desk, Page, Work
from twoshaft_grader.desk_pages.parts import (
    Act,
    Cell,
    Field,
    Form,
    Link,
    Part,
    Row,
    Say,
    Table,
    Values,
)

_SEEN = (("", "choose"), ("seen", "seen"), ("not-yet", "not yet"), ("not-tried", "not tried"))
_PAPERS = ((str(Paper.A4), "A4"), (str(Paper.LETTER), "US Letter"))
_KINDS = (
    (str(Evidence.AT_THE_BENCH), "at the bench"),
    (str(Evidence.SUPERVISED), "supervised work"),
)


class Observe(Page):
    """Record what was seen of an outcome, take one back, print the form."""

    id, title = "observe", "Observe at the bench"

    def __init__(self, desk: Desk) -> None:
        super().__init__(desk)
        self._of: tuple[str, str] = ("", "")
        self._form = self._sheet = ""

    def show(self) -> Sequence[Part]:
        """Whom and what to observe, and what was; or the form of one outcome."""
        cohort = self.desk.cohort
        people, outcomes = roster_of(cohort), load_outcomes()
        if not people:
            return (Say("Nobody is in the group yet: take a roster in on the page Group."),)
        learner, outcome = self._of
        if learner in {one.id for one in people} and outcome in outcomes:
            return self._open(learner, outcome)
        bench_first = sorted(
            outcomes.values(), key=lambda one: one.evidence != Evidence.AT_THE_BENCH
        )
        listed = list_observations(cohort, people)
        who = tuple((one.id, f"{one.name} ({one.id})") for one in people)
        parts: list[Part] = [
            Form(
                "Observe somebody",
                (
                    Field("learner", "Learner", "choice", options=(("", "Choose"), *who)),
                    Field(
                        "outcome", "Outcome", "choice",
                        options=(("", "Choose"), *((o.id, o.statement) for o in bench_first)),
                    ),
                ),
                (Act("open", "Open the form", first=True), Act("print", "Print the form")),
            ),
            *((Link("Open the printed form (PDF)", self._form),) if self._form else ()),
            Form(
                "Print the sheet of a module, to take to the real unit",
                (
                    Field(
                        "sheet-of", "Module", "choice",
                        options=(("", "Choose"), *((id, one.title) for id, one in COURSE.items())),
                    ),
                    Field("paper", "Paper", "choice", options=_PAPERS),
                ),
                (Act("sheet", "Print the sheet"),),
            ),
            *((Link("Open the printed sheet (PDF)", self._sheet),) if self._sheet else ()),
            _list(listed),
            Form(
                "Take the ticked back",
                (self._assessor("back-by"), Field("back-why", "Reason")),
                (Act("take-back", "Take back"),),
            ),
            Form(
                "Register of assessors",
                (
                    Field("new-id", "Short id", hint="small letters, as rh"),
                    Field("new-name", "Name"),
                    Field("new-role", "Role", hint="as internal assessor"),
                ),
                (Act("enter", "Put on the register"),),
                hint="Once somebody is on it, only they observe, change and decide. "
                f"On it: {self._names() or 'nobody yet'}.",
            ),
        ]  # fmt: skip
        return parts

    def do(self, act: str, values: Values, work: Work) -> str:
        """Do what a button says."""
        cohort = self.desk.cohort
        people = roster_of(cohort)
        if act == "open":
            self._of = (
                values.need("learner", "the learner"),
                values.need("outcome", "the outcome"),
            )
            return ""
        if act == "leave":
            self._of = ("", "")
            return "Nothing is recorded."
        if act == "record":
            return self._record(values)
        if act == "take-back":
            by = values.need("back-by", "the assessor")
            why = values.need("back-why", "the reason")
            wanted = [key.split(" ") for key in values.some("observed", "observation")]
            for learner, number in wanted:
                take_back(cohort, people, learner, int(number), by=by, why=why)
                write_standing(cohort, learner)
            return f"{len(wanted)} taken back; they stay in the list."
        if act == "enter":
            one = enter_assessor(
                cohort,
                values.need("new-id", "the id"),
                values.need("new-name", "the name"),
                role=values.text("new-role"),
                by=self.desk.by,
            )
            return f"{one.name} ({one.id}) is on the register of assessors."
        if act == "sheet":
            return self._print_sheet(values, work)
        work.begin("making the form")
        place = cohort.root / "bench-sheets"
        pdf = write_form(
            values.need("outcome", "the outcome"), load_unit(cohort.unit_source), place,
            paper=Paper.A4, cohort=cohort.name, college=cohort.college,
            photographs=own_photographs(cohort),
        )  # fmt: skip
        self._form = pdf.relative_to(cohort.root).as_posix()
        return "The form is made; open and print it below."

    def _print_sheet(self, values: Values, work: Work) -> str:
        cohort, module = self.desk.cohort, values.need("sheet-of", "the module")
        work.begin("making the sheet")
        written = write_sheets(
            (module,), load_unit(cohort.unit_source), cohort.root / "bench-sheets",
            paper=Paper(values.text("paper") or Paper.A4), cohort=cohort.name,
            college=cohort.college, photographs=own_photographs(cohort),
        )  # fmt: skip
        ((pdf, _),) = written
        self._sheet = pdf.relative_to(cohort.root).as_posix()
        return (
            "The sheet is made; open and print it below. No figure stands on it: torques and "
            "clearances come from the maker's manual."
        )

    def _record(self, values: Values) -> str:
        cohort = self.desk.cohort
        learner, outcome = self._of
        asked = load_outcomes()[outcome]
        criteria = {id: values.text(f"criterion {id}") for id in asked.criteria}
        if open := [asked.criteria[id] for id, what in criteria.items() if not what]:
            raise CohortError(
                f"the form is half filled: nothing is said of “{open[0].rstrip('.')}”",
                mend="say seen, not yet or not tried of each line",
            )
        not_yet = any(what != "seen" for what in criteria.values())
        if (not_yet or values.tick("prior")) and not values.text("note"):
            what = "what is missing" if not_yet else "by what it is shown"
            raise CohortError(f"the note does not say {what}", mend="write it in")
        seen = observe(
            cohort, roster_of(cohort), learner, outcome,
            by=values.need("by", "the assessor"), kind=values.text("kind"),
            note=values.text("note"), criteria=criteria, seen_on=values.text("seen-on"),
            bench=values.text("bench"), unit=values.text("unit"), prior=values.tick("prior"),
            confirmed=values.tick("confirmed"),
        )  # fmt: skip
        write_standing(cohort, learner)
        self._of = ("", "")
        word = "met" if seen.met else "not yet"
        return f"{outcome} of {learner}: {word}, seen by {seen.by}."

    def _open(self, learner: str, outcome: str) -> Sequence[Part]:
        asked = load_outcomes()[outcome]
        person = next(one for one in roster_of(self.desk.cohort) if one.id == learner)
        return (
            Say(f"{person.name} ({person.id})", "head"),
            Say(f"{asked.statement}."),
            Form(
                "What you saw",
                tuple(
                    Field(f"criterion {id}", text, "choice", options=_SEEN)
                    for id, text in asked.criteria.items()
                ),
                (),
            ),
            Form(
                "Where, when and who",
                (
                    Field("kind", "Kind", "choice", options=_KINDS),
                    Field("bench", "Bench"),
                    Field("unit", "Unit on it", hint="maker, type, number"),
                    Field("seen-on", "Seen on", hint="as 2026-11-27; empty: today"),
                    self._assessor("by"),
                    Field("note", "Note", "long", hint="a “not yet” says what is missing"),
                    Field("prior", "Prior learning; the note names the evidence", "tick"),
                    Field("confirmed", "The learner has read it and confirms it", "tick"),
                ),
                (Act("record", "Record it", first=True), Act("leave", "Leave it")),
            ),
        )

    def _assessor(self, name: str) -> Field:
        """Anybody, as long as nobody is on the register."""
        return self.assessor(name) if self._names() else Field(name, "Assessor", value=self.desk.by)

    def _names(self) -> str:
        on = [one for one in assessors_of(self.desk.cohort) if not one.until]
        return ", ".join(f"{one.name} ({one.id})" for one in on)


def _list(listed: list[Listed]) -> Table:
    rows = []
    for one in listed:
        seen = one.seen
        gone = seen.taken_back
        fate = f"taken back by {gone.by}: {gone.why}" if gone else ""
        rows.append(
            Row(
                f"{one.learner.id} {one.number}",
                (
                    one.learner.id, one.learner.name, seen.outcome,
                    Cell("met", "✓") if seen.met else Cell("not yet", "○"),
                    "prior learning" if seen.prior else str(seen.kind), seen.day, seen.by,
                    seen.note, fate or ("" if one.last else "observed again later"),
                ),
            )
        )  # fmt: skip
    heading = ("id", "name", "outcome", "was", "kind", "seen on", "by", "note", "")
    return Table("observed", "Observed", heading, tuple(rows), pick=True, empty="Nothing yet.")
