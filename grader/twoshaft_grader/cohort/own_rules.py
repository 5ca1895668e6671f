"""The college's own rules of what is enough, in the cohort's ``rules.yaml``: seen and changed.

Work that is marked keeps the rules that it was marked with until it is marked again.
"""

from __future__ import annotations

import io
import tempfile
from dataclasses import dataclass
from pathlib import Path
from typing import Any

from ruamel.yaml import YAML, YAMLError

from twoshaft.errors import CohortError
from twoshaft.outcomes import Evidence, load_outcomes
from twoshaft.outcomes.rules import RULES, Enough, Rules, load_rules
from twoshaft_grader.cohort import files
from twoshaft_grader.cohort.assessors import assessor_named
from twoshaft_grader.cohort.folder import Cohort
from twoshaft_grader.cohort.intake import roster_of
from twoshaft_grader.cohort.one_line import one_line
from twoshaft_grader.cohort.standing import write_standing
from twoshaft_grader.cohort.trail import act
from twoshaft_grader.cohort.turn import alone

EVERYWHERE = "everywhere"


@dataclass(frozen=True)
class Rule:
    """What the college wants of an outcome, or of all; parts are in per cent."""

    points: float
    each_criterion: float
    bench_alone: bool
    source: str


def rules_of(cohort: Cohort) -> Rules:
    """The rules that hold: ours, and the college's own above them.

    Raises
    ------
    UnitFileError
        When there is something to mend in the college's file.
    """
    return load_rules(cohort.rules)


def rule_in_words(rule: Enough) -> str:
    """A rule in words."""
    said = f"{100 * rule.points:g} % of its points"
    if rule.each_criterion:
        said += f", {100 * rule.each_criterion:g} % of each criterion"
    return f"{said}; or seen at the bench" if rule.bench_alone else said


def set_rule(cohort: Cohort, about: str, rule: Rule, *, by: str) -> None:
    """Set the college's own rule for an outcome, or for everything it says nothing else of.

    Parameters
    ----------
    about : str
        Id of an outcome, or ``everywhere``.
    by : str
        Somebody on the register of assessors.

    Raises
    ------
    CohortError
        When there is no such outcome, a part is none, the source is missing, or the assessor is
        not registered.
    UnitFileError
        When there is something to mend in the college's file.
    """
    if not rule.source.strip():
        raise CohortError("the source is missing", mend="say who says so: a standard, a rule")
    for part in (rule.points, rule.each_criterion):
        if not 0 <= part <= 100:
            raise CohortError(f"{part:g} % is no part", mend="give 0 to 100")
    entry: dict[str, Any] = {"points": f"{rule.points:g} %"}
    if rule.each_criterion:
        entry["each criterion"] = f"{rule.each_criterion:g} %"
    if rule.bench_alone:
        entry["bench alone"] = True
    entry["source"] = " ".join(rule.source.split())
    before = rule_in_words(_rule(rules_of(cohort), about))

    def change(data: dict[str, Any]) -> None:
        if about == EVERYWHERE:
            data[EVERYWHERE] = entry
        else:
            data.setdefault("outcomes", {})[about] = entry

    _change(cohort, about, change, by=by, why=rule.source, before=before)


def drop_rule(cohort: Cohort, about: str, *, by: str, why: str) -> None:
    """Take the college's own rule away: what stands above it holds again.

    Raises
    ------
    CohortError
        When the college has none, or as for :func:`set_rule`.
    """
    before = rule_in_words(_rule(rules_of(cohort), about))

    def change(data: dict[str, Any]) -> None:
        place = data if about == EVERYWHERE else data.get("outcomes", {})
        if place.pop(about, None) is None:
            raise CohortError(f"the college has no rule of its own for {about}", mend="leave it")
        if not data.get("outcomes", True):
            del data["outcomes"]

    _change(cohort, about, change, by=by, why=why, before=before)


def set_attempts(cohort: Cohort, which: str, *, by: str, why: str) -> None:
    """Say which attempt at a module counts, ``best`` or ``latest``.

    Raises
    ------
    CohortError
        As for :func:`set_rule`.
    """
    if which not in ("best", "latest"):
        raise CohortError(f'"{which}" is no choice', mend="write best or latest")
    before = "latest" if rules_of(cohort).latest else "best"

    def change(data: dict[str, Any]) -> None:
        data["attempts"] = which

    _change(cohort, "the attempt that counts", change, by=by, why=why, before=before, after=which)


def set_number(cohort: Cohort, outcome: str, number: str, *, by: str) -> None:
    """Give an outcome the college's own number; an empty one takes it away.

    What learners see of their outcomes says it from then on; feedback, when it is given back next.

    Raises
    ------
    CohortError
        As for :func:`set_rule`.
    """
    number = one_line("the number", number, most=40)
    before = rules_of(cohort).number(_outcome(outcome))

    def change(data: dict[str, Any]) -> None:
        numbers = data.setdefault("numbers", {})
        numbers.pop(outcome, None)
        if number:
            numbers[outcome] = number
        if not numbers:
            del data["numbers"]

    about = f"the number of {outcome}"
    _change(cohort, about, change, by=by, why="", before=before, after=number or "none")
    _tell(cohort)


def set_evidence(cohort: Cohort, outcome: str, kind: str, *, by: str, why: str) -> None:
    """Say which kind of evidence an outcome asks for; an empty one: as the course has it.

    Raises
    ------
    CohortError
        When there is no such kind, or as for :func:`set_rule`.
    """
    if kind and kind not in list(Evidence):
        kinds = ", ".join(Evidence)
        raise CohortError(f'"{kind}" is no kind of evidence', mend=f"write one of {kinds}")
    ours = load_outcomes()
    before = rules_of(cohort).asked(ours)[_outcome(outcome)].evidence

    def change(data: dict[str, Any]) -> None:
        asked = data.setdefault("evidence", {})
        asked.pop(outcome, None)
        if kind and kind != ours[outcome].evidence:
            asked[outcome] = kind
        if not asked:
            del data["evidence"]

    about = f"the evidence for {outcome}"
    after = kind or str(ours[outcome].evidence)
    _change(cohort, about, change, by=by, why=why, before=str(before), after=after)
    _tell(cohort)


def _tell(cohort: Cohort) -> None:
    """Let what learners see of their outcomes follow."""
    for person in roster_of(cohort):
        write_standing(cohort, person.id)


def _outcome(id: str) -> str:
    if id not in load_outcomes():
        raise CohortError(f'no outcome is called "{id}"', mend="choose one of the list")
    return id


def _rule(rules: Rules, about: str) -> Enough:
    return rules.everywhere if about == EVERYWHERE else rules.of(_outcome(about))


def _change(
    cohort: Cohort,
    about: str,
    change: Any,
    *,
    by: str,
    why: str,
    before: str,
    after: str = "",
) -> None:
    """Change the file, keeping what people wrote beside it, if it is still one that can be read."""
    by = assessor_named(cohort, by, needed=True)
    with (
        alone(cohort, "rules", "the rules"),
        act(cohort.root, "change a rule", about, by=by, before=before, why=why) as told,
    ):
        yaml = YAML()
        text = cohort.rules.read_text(encoding="utf-8") if cohort.rules.is_file() else ""
        try:
            data = yaml.load(text) or {}
        except YAMLError:
            load_rules(cohort.rules)  # says what is wrong, and where
            raise
        change(data)
        out = io.StringIO()
        yaml.dump(data, out)
        written = out.getvalue().encode()
        with tempfile.TemporaryDirectory(prefix="twoshaft-rules-") as folder:
            trial = Path(folder) / RULES
            files.write_whole(trial, written, sync=False)
            rules = load_rules(trial)
        told.after = after or rule_in_words(_rule(rules, about))
        files.write_whole(cohort.rules, written)
