"""Prove an exercise by its solution: what must hold for every learner, tried on some.

Blank earns nothing, the reference earns everything, guessing earns next to nothing, every listed
wrong answer earns its stated part, every field is evidence for an outcome, of every wrong option
a sentence says why it is wrong, no outcome rests on luck, who only knows how tests are made gets
next to nothing, and what is given is equally hard for all.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable, Mapping
from concurrent.futures import ProcessPoolExecutor
from pathlib import Path
from typing import Any

from twoshaft import DEFAULT_UNIT
from twoshaft.errors import CourseError
from twoshaft.jobsheet import Answer, SheetData
from twoshaft.outcomes import Evidence, Outcome, load_outcomes
from twoshaft.readings import MODULES, issue_record, whole_units
from twoshaft.units import Unit, load_unit
from twoshaft_grader.marking.chance import field_spread
from twoshaft_grader.marking.kinds import judge, judge_of
from twoshaft_grader.marking.reference import (
    Answered,
    Solution,
    load_solution,
    run_clean,
    solve,
)
from twoshaft_grader.marking.task import field_points, mark_sheet, sheet_line
from twoshaft_grader.notebooks import equally_hard, ignorance, luck
from twoshaft_grader.notebooks.sheets import Sheets
from twoshaft_grader.notebooks.why_wrong import unexplained, whole_bank

LEARNERS = ("proof-1", "proof-2", "proof-3")
"""Whose readings a solution is tried on, with every unit that ships."""
HIGHEST_LINE = 0.2
"""A module in which guessing reaches more than this part of the points leaves too much to luck."""


def prove_all(root: Path, paths: Iterable[Path]) -> list[str]:
    """Prove every built solution notebook on the shipped units that lack nothing.

    Parameters
    ----------
    root : pathlib.Path
        The root of the project.
    paths : iterable of pathlib.Path
        Built solution notebooks, from the root.

    Returns
    -------
    list of str
        One sentence for each thing that does not hold.
    """
    # One notebook is one job; the later ones take longest and go first.
    backwards = [(Path(root), path) for path in paths][::-1]
    with ProcessPoolExecutor() as pool:
        found = list(pool.map(_prove_one, backwards))
    return list(dict.fromkeys(sentence for one in found[::-1] for sentence in one))


def _prove_one(place: tuple[Path, Path]) -> list[str]:
    root, path = place
    try:
        solution = load_solution(root / path)
    except CourseError as error:
        return [error.sentence]
    if solution.module not in MODULES:
        return [f"{path}: no readings are drawn for the module {solution.module}."]
    outcomes = load_outcomes(module=solution.module)
    findings: list[str] = []
    for unit in map(load_unit, whole_units()):
        records = [
            issue_record(solution.module, unit, salt="proof", learner=name, attempt=1)
            for name in LEARNERS
        ]
        found, sheets = prove(solution, unit, records, outcomes), Sheets(solution, unit)
        if unit.identity.id == DEFAULT_UNIT:
            found += [*ignorance.findings(sheets), *equally_hard.findings(sheets)]
        found += whole_bank(sheets)
        found = list(dict.fromkeys(found))
        findings += [f"{path}, unit {unit.identity.id}: {sentence}" for sentence in found]
    return findings


def prove(
    solution: Solution,
    unit: Unit,
    records: Iterable[Mapping[str, Any]],
    outcomes: Mapping[str, Outcome],
) -> list[str]:
    """Return what does not hold of a solution under some issued records.

    Parameters
    ----------
    solution : Solution
    unit : Unit
    records : iterable of mapping
        Issued records.
    outcomes : mapping of str to Outcome
        The module's outcomes by id.

    Returns
    -------
    list of str
        Sentences, without the place.
    """
    findings: Counter[str] = Counter()
    tried = 0
    dead_slips: Counter[str] = Counter()
    for issued in records:
        tried += 1
        try:
            clean = run_clean(solution, issued, unit)
            answers = solve(solution, issued, unit)
            blank = mark_sheet(_sheet(issued, {}), issued, solution, unit=unit)
            full = mark_sheet(_sheet(issued, answers), issued, solution, unit=unit)
        except CourseError as error:
            findings[f"{error.sentence.rstrip('.')} (readings of {issued['learner']})."] += 1
            continue
        if blank.points:
            findings[f"a blank sheet earns {blank.points:g} points."] += 1
        for field in full.fields:
            if field.share < 1:
                findings[
                    f"the reference of {field.name} earns {field.share:.2f} of its field."
                ] += 1
            elif not field.passed:
                findings[f"the reference of {field.name} fails its must-pass."] += 1
        findings.update(set(_chance(solution, clean)))
        findings.update(set(_outcomes(clean, outcomes)))
        points = field_points(solution, clean, clean.fields)
        findings.update(set(luck.findings(clean, points, outcomes)))
        findings.update(set(unexplained(clean)))
        dead_slips.update(set(_slips(clean)))
    # By coincidence one learner's slip may be right or another slip; for all it is a mistake.
    return [*findings, *(slip for slip, times in dead_slips.items() if times == tried)]


def _chance(solution: Solution, clean: Answered) -> Iterable[str]:
    line = sheet_line(solution, clean, field_points(solution, clean, clean.fields))
    if line > HIGHEST_LINE:
        left = {task: _left_to_chance(clean, names) for task, names in clean.tasks.items()}
        worst = max(left, key=lambda task: left[task] * solution.points[task])
        yield (
            f"guessing alone reaches {100 * line:.0f} % of the module's points; give {worst} more "
            "options or fewer points."
        )


def _left_to_chance(clean: Answered, names: Iterable[str]) -> float:
    """What a guess earns of a task on average."""
    references = [clean.references[name] for name in names]
    total = sum(reference.weight for reference in references)
    return sum(
        reference.weight / total * share * chance
        for reference in references
        for share, chance in field_spread(clean.fields[reference.name], reference)
    )


def _outcomes(clean: Answered, outcomes: Mapping[str, Outcome]) -> Iterable[str]:
    covered, shown = set(), set()
    for name, reference in clean.references.items():
        covered.add(reference.outcome)
        if reference.outcome not in outcomes:
            yield f"{name} is evidence for {reference.outcome}, which is no outcome of the module."
            continue
        for id in reference.shows:
            shown.add((reference.outcome, id))
            if id not in outcomes[reference.outcome].criteria:
                yield f"{name} shows {id}, which is no criterion of {reference.outcome}."
    if shown:  # the module's fields say which criteria they show: then all of them do
        for name, reference in clean.references.items():
            if not reference.shows:
                yield f"nothing says which criterion of {reference.outcome} {name} shows."
        for outcome in outcomes.values():
            for id in outcome.criteria:
                if outcome.evidence is Evidence.OPEN_BOOK and (outcome.id, id) not in shown:
                    yield f"no field shows the criterion {id} of {outcome.id}."
    for id in outcomes:
        if id not in covered:
            yield f"no field is evidence for the outcome {id}."


def _slips(clean: Answered) -> Iterable[str]:
    for name, reference in clean.references.items():
        asked = clean.fields[name]
        for number, slip in enumerate(reference.slips, 1):
            value = None if callable(slip.value) else judge_of(asked).slip_answer(slip.value)
            if value is None:
                continue
            share = judge(asked, reference, value).share
            if abs(share - slip.share) > 1e-9:
                yield (
                    f"slip {number} of {name} earns {share:.2f} of the field, not the stated "
                    f"{slip.share:.2f}."
                )


def _sheet(issued: Mapping[str, Any], answers: Mapping[str, Any]) -> SheetData:
    return SheetData(
        learner=issued["learner"],
        module=issued["module"],
        attempt=issued["attempt"],
        answers={name: Answer(value, 1) for name, value in answers.items()},
    )
