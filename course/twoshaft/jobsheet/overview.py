"""The contents: every module of the course with what the learner has done and shown in it."""

from __future__ import annotations

from dataclasses import dataclass
from functools import cache
from pathlib import Path

from twoshaft.jobsheet.signin import Entry, SignIn, title_of
from twoshaft.jobsheet.standing import read_standing
from twoshaft.modules import COURSE
from twoshaft.outcomes import Evidence, Outcome, State, load_outcomes, stand
from twoshaft.stored.standing import MarkTold, OwnStanding

NOT_ASKED = "not asked"


@dataclass(frozen=True)
class Line:
    """One module in the contents.

    Parameters
    ----------
    module, title : str
        Its id; its number and name.
    lesson : str
        Path under the workplace; empty if it is not there.
    entries : tuple of str
        Names of its assignments, the latest attempt first.
    marks : dict
        By assignment: a sentence on the mark that was given back.
    outcomes : tuple of tuple
        (state, statement, what is still missing, who saw it) of each outcome; of one that is not
        asked, why not.
    count : str
        The outcomes' states, counted, in words.
    next : str
        The next step.
    """

    module: str
    title: str
    lesson: str
    entries: tuple[str, ...]
    marks: dict[str, str]
    outcomes: tuple[tuple[str, str, str, str], ...]
    count: str
    next: str


def contents(sign_in: SignIn, entries: tuple[Entry, ...]) -> tuple[Line, ...]:
    """The contents for who is signed in, what is assigned first; nothing when nobody is."""
    if sign_in.me is None:
        return ()
    standing = read_standing(sign_in.workplace / sign_in.me.id, sign_in.me.id)
    mine: dict[str, list[Entry]] = {}
    for entry in entries:
        mine.setdefault(entry.name.rpartition("-")[0], []).append(entry)
    modules = [*COURSE, *(module for module in mine if module not in COURSE)]
    modules.sort(key=lambda module: module not in mine)  # assigned first, each in course order
    numbered = (path for path, _ in sign_in.lessons() if Path(path).stem[:2].isdecimal())
    lessons = {Path(path).stem[3:]: path for path in numbered}
    return tuple(
        _line(module, lessons.get(module, ""), mine.get(module, []), standing) for module in modules
    )


def _line(module: str, lesson: str, entries: list[Entry], standing: OwnStanding) -> Line:
    number = f"{COURSE[module].number:02} " if module in COURSE else ""
    entries = sorted(entries, key=lambda entry: int(entry.name.rpartition("-")[2]), reverse=True)
    lost = set(entries[0].no_evidence) if entries else set()
    outcomes = tuple(
        _not_asked(one) if one.id in lost and one.id not in standing.outcomes
        else _outcome(one, standing)
        for one in _outcomes().get(module, ())
    )  # fmt: skip
    states = [state for state, *_ in outcomes]
    counted = [f"{states.count(state)} {state}" for state in (*State, NOT_ASKED) if state in states]
    return Line(
        module,
        number + title_of(module),
        lesson,
        tuple(entry.name for entry in entries),
        {e.name: _mark(standing.marks[e.name]) for e in entries if e.name in standing.marks},
        outcomes,
        ", ".join(counted),
        _next(entries[0] if entries else None, lesson, outcomes),
    )


@cache
def _outcomes() -> dict[str, list[Outcome]]:
    found: dict[str, list[Outcome]] = {}
    for outcome in load_outcomes().values():
        for module in outcome.modules:
            found.setdefault(module, []).append(outcome)
    return found


def _not_asked(outcome: Outcome) -> tuple[str, str, str, str]:
    """An outcome for which the unit on the bench has nothing."""
    return NOT_ASKED, outcome.statement, "", "the unit on the bench has nothing that shows it"


def _outcome(outcome: Outcome, standing: OwnStanding) -> tuple[str, str, str, str]:
    told = standing.outcomes.get(outcome.id)
    named = outcome.named(dict(standing.numbers).get(outcome.id, ""))
    if told is None or told.state not in list(State):
        asks = dict(standing.asks).get(outcome.id, "")
        start = stand(Evidence(asks) if asks in list(Evidence) else outcome.evidence)
        return start.state, named, start.missing, ""
    seen = f"seen {told.seen}" if told.seen else ""
    note = f"{seen}: {told.note}" if seen and told.note else seen
    return told.state, named, told.missing, note


def _mark(mark: MarkTold | None) -> str:
    if mark is None:
        return "the mark cannot be read; ask your instructor"
    must = f"; must-pass {mark.must_pass}" if mark.must_pass else ""
    watched = f"; supervised by {mark.supervised_by}" if mark.supervised_by else ""
    return f"{mark.points:.4g} of {mark.maximum:.4g}{must}{watched}"


def _next(entry: Entry | None, lesson: str, outcomes: tuple[tuple[str, ...], ...]) -> str:
    """The next step, as one line."""
    if entry is None:
        return "Read the lesson; the exercise is not assigned yet." if lesson else "Not here yet."
    late = "The due date has passed; tell your instructor. " if entry.overdue else ""
    if entry.state == "to get":
        return f"{late}Get the exercise and open it."
    if entry.state == "open":
        return f"{late}{_go_on(entry)}"
    if entry.state == "changed since":
        return "Hand in again to send the changes."
    if entry.state == "handed in":
        return "Wait for your feedback."
    states = {state: missing for state, _, missing, _ in outcomes}
    if State.NOT_YET in states:
        again = [m for s, _, m, _ in outcomes if s == State.NOT_YET and m.startswith("to be")]
        if len(again) == sum(s == State.NOT_YET for s, *_ in outcomes):
            return f"Part of it is {again[0]}: ask your instructor when."
        return "Read your feedback, then ask your instructor for another attempt."
    if State.ENOUGH in states:
        return f"Part of it is {states[State.ENOUGH]}: ask your instructor when."
    return "All met. Go on with the next module."


def _go_on(entry: Entry) -> str:
    """What is left of an exercise that is here and not handed in."""
    if entry.left is None:
        return "Open the exercise, answer it and hand it in."
    lacks = lacking(entry)
    if not lacks:
        return "All is answered. Look it over and hand it in."
    return f"Open the exercise: {lacks}. Then hand it in."


def lacking(entry: Entry) -> str:
    """What an assignment still lacks, counted, in words; empty if nothing."""
    parts = []
    if entry.left:
        asks = "1 answer is" if entry.left == 1 else f"{entry.left} answers are"
        parts.append(f"{asks} still to be given")
    if entry.unread:
        parts.append(f"{entry.unread} cannot be read")
    return ", ".join(parts)
