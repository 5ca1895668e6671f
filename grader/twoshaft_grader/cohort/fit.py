"""What of a module fits a unit: which tasks are given, which left out, and what is then lacking.

The unit decides, by what it has (``units/carried.py``) and by whether the tasks can be drawn and
worked out for as many learners as are asked about: so what was tried can be assigned.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from pathlib import Path

import nbformat

from twoshaft.errors import CourseError, UnitFileError
from twoshaft.outcomes import Evidence, load_outcomes
from twoshaft.readings import cannot_be_drawn, issue_record, not_carried
from twoshaft.units.unit import Unit
from twoshaft_grader.marking.reference import Answered, Solution, run_clean, solution_of
from twoshaft_grader.notebooks.shrink import falling, missing_heart, shrunk

LEAST = 0.5
"""Part of a module's points that must be left; with less, its heart is missing. Our choice."""
TOO_LITTLE = "the unit on the bench has too little for it"


@dataclass(frozen=True)
class Fit:
    """A module on a unit.

    Attributes
    ----------
    module : str
    text : str
        The solution notebook, shrunk.
    solution : Solution
        The same, compiled.
    left_out : tuple of str
        Members of what is given that nobody gets.
    without : dict of str to str
        Heading of each task that falls, and why, for staff: with the entry that would bring it.
    fields : int
        How many answers are asked for.
    records : tuple of dict
        What is issued to each of the learners.
    worked : tuple of Answered
        What is right, for as many of them as it was worked out for.
    no_evidence : tuple of str
        Outcomes of the module that no field is evidence for any more.
    not_shown : tuple of (str, str)
        Outcomes that are left, each with a criterion that no field shows any more.
    """

    module: str
    text: str
    solution: Solution
    left_out: tuple[str, ...]
    without: dict[str, str]
    fields: int
    records: tuple[dict, ...]
    worked: tuple[Answered, ...]
    no_evidence: tuple[str, ...]
    not_shown: tuple[tuple[str, str], ...]


def fit(
    path: Path,
    module: str,
    unit: Unit,
    learners: Sequence[str],
    *,
    salt: str,
    attempt: int,
    work_out: int | None = None,
) -> Fit:
    """Shrink a module to a unit.

    Parameters
    ----------
    path : pathlib.Path
        The built solution notebook.
    module : str
    unit : Unit
    learners : sequence of str
        Their ids; all of what is given must be drawn for everyone.
    salt : str
    attempt : int
    work_out : int, optional
        For how many of them what is right is worked out; for all if not said.

    Raises
    ------
    UnitFileError
        When the heart of the module is missing; names the entry that would bring it.
    CourseError
        When the solution cannot be read, or its working fails.
    """
    text = path.read_text(encoding="utf-8")
    whole = solution_of(path, text.encode())
    lacks = not_carried(module, unit)
    told = {task: lack.sentence for task, lack in lacks.items()}
    why = {task: f"{lack.sentence}; add {lack.entry}" for task, lack in lacks.items()}
    records = None
    while records is None:
        try:
            records = [
                issue_record(
                    module, unit, salt=salt, learner=one, attempt=attempt, left_out=tuple(why)
                )
                for one in learners
            ]
        except CourseError:
            failing = _failing(module, unit, learners, salt, attempt, why)
            told |= dict.fromkeys(failing, TOO_LITTLE)
            why |= failing
    if (lost_heart := missing_heart(text, why)) is not None:
        what, _, mend = lost_heart.partition("; ")
        raise UnitFileError(
            f"the heart of the module {module!r} is missing on unit {unit.identity.id!r}: {what}",
            mend=mend or "leave this module out",
        )
    text = shrunk(text, told)
    solution = solution_of(path, text.encode())
    falls = falling(nbformat.reads(path.read_text(encoding="utf-8"), as_version=4), why)
    if sum(solution.points.values()) < LEAST * sum(whole.points.values()):
        raise UnitFileError(
            f"too little of the module {module!r} is left for unit {unit.identity.id!r}: "
            + "; ".join(dict.fromkeys(falls.values())),
            mend="add that to its file, or leave this module out",
        )
    worked = tuple(run_clean(solution, issued, unit) for issued in records[:work_out])
    lost, hidden = _lacking(module, worked[0]) if why else ((), ())
    return Fit(
        module=module,
        text=text,
        solution=solution,
        left_out=tuple(why),
        without={whole.titles[task]: reason for task, reason in falls.items()},
        fields=len(worked[0].fields),
        records=tuple(records),
        worked=worked,
        no_evidence=lost,
        not_shown=hidden,
    )


def lacking_lines(fits: Fit) -> tuple[str, ...]:
    """What staff are told of a module that goes without something; one sentence a line."""
    lines = [f"without “{title}”: {why}." for title, why in fits.without.items()]
    outcomes = load_outcomes(module=fits.module)
    lines += [
        f"no evidence for “{outcomes[id].statement.rstrip('.')}”: nobody can meet it here."
        for id in fits.no_evidence
    ]
    lines += [
        f"“{outcomes[id].statement.rstrip('.')}” is judged without "
        f"“{outcomes[id].criteria[criterion].rstrip('.')}”."
        for id, criterion in fits.not_shown
    ]
    return tuple(lines)


def _failing(
    module: str,
    unit: Unit,
    learners: Sequence[str],
    salt: str,
    attempt: int,
    left_out: Mapping[str, str],
) -> dict[str, str]:
    """Tasks that cannot be drawn for somebody, and why; CourseError when that is not about one."""
    found: dict[str, str] = {}
    for one in learners:
        tried = cannot_be_drawn(
            module, unit, salt=salt, learner=one, attempt=attempt, left_out={*left_out, *found}
        )
        found |= {task: error.sentence.rstrip(".") for task, error in tried}
    if not found:
        raise CourseError(f"what the module {module!r} gives cannot be put together")
    return found


def _lacking(
    module: str, answered: Answered
) -> tuple[tuple[str, ...], tuple[tuple[str, str], ...]]:
    """Outcomes without evidence, and criteria that no field shows."""
    covered = {one.outcome for one in answered.references.values()}
    shown = {(one.outcome, id) for one in answered.references.values() for id in one.shows}
    outcomes = load_outcomes(module=module)
    return (
        tuple(id for id in outcomes if id not in covered),
        tuple(
            (outcome.id, id)
            for outcome in outcomes.values()
            if outcome.id in covered and outcome.evidence is Evidence.OPEN_BOOK
            for id in outcome.criteria
            if (outcome.id, id) not in shown
        ),
    )
