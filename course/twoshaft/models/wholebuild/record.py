"""The build record: what is written down of a build, as plain data."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Sequence
from typing import Any

from twoshaft.errors import OutOfRangeError
from twoshaft.models.film import Pass
from twoshaft.models.shift import hand_moves
from twoshaft.models.wholebuild.asks import PATTERNS, Ask, FieldSpec, asks_of
from twoshaft.models.wholebuild.bench import readings
from twoshaft.models.wholebuild.decisions import Decision, walk
from twoshaft.models.wholebuild.job import Job
from twoshaft.units.quantities import Q

SIGNED = ("Built by", "Checked by")


def build_record(job: Job, decisions: Iterable[Decision], misplaced: int = 0) -> dict[str, Any]:
    """What the builder writes down: no verdict, no figure of what would be right.

    Parameters
    ----------
    job : Job
    decisions : iterable of Decision
    misplaced : int, optional
        How often something was put at a wrong place in practice.

    Returns
    -------
    dict
        ``unit``, ``college``, ``invented`` (texts), ``done``, ``steps`` and ``misplaced`` (counts),
        ``minutes`` [min], and lists of ``[what, value]``: ``readings``, ``shims``, ``torques``,
        ``films``, ``ways``, ``drivers``, ``proofs``, ``verdicts``, ``consumables``, ``new_parts``,
        ``taken_out``; under ``order`` the steps in turn, under ``signatures`` what is left blank
        for names and dates.

    Examples
    --------
    >>> from twoshaft.models.wholebuild import right_decisions
    >>> job = Job.of(unit, {"asked": ["shim-differential"]})
    >>> record = build_record(job, right_decisions(job))
    >>> record["shims"], record["done"], record["minutes"]
    ([['Differential', '1.15 mm']], 80, 345.5)
    """
    decisions = tuple(decisions)
    walked, task, unit = walk(job, decisions), job.task, job.unit
    rows: dict[str, list[list[str]]] = {
        key: []
        for key in (
            *("readings", "shims", "torques", "films", "ways", "drivers", "proofs", "verdicts"),
        )
    }
    into = {"shim": "shims", "joint": "torques", "film": "films", "way": "ways"}
    into["driver"] = "drivers"
    into |= {"proof": "proofs", "check": "verdicts"}
    done = list(walked.doings)
    for k, step in enumerate(done):
        prefix = [walked.doings[one] for one in done[: k + 1]]
        rows["readings"] += _read(job, prefix, step)
        for ask in (one for one in asks_of(job) if one.step == step):
            words = choice_words(job, ask, walked.doings[step].choices)
            rows[into[ask.kind]].append([ask.name, words])
    operations = [unit.operation_by_id[op] for step in done for op in job.members[step]]
    used = dict.fromkeys(one for op in operations for one in op.consumables)
    new = [part for op in operations for part in op.parts if unit.part_by_id[part].single_use]
    names = {one.id: one.name for one in unit.consumables}
    names |= {part.id: part.name for part in unit.parts}
    return {
        "unit": unit.identity.name,
        "college": unit.identity.college,
        "invented": "Invented unit, for teaching." if unit.identity.invented else "",
        "done": len(done),
        "steps": len(task.steps),
        "misplaced": misplaced,
        "minutes": walked.minutes,
        "order": [task.label(step) for step in done],
        **rows,
        "consumables": [names[one] for one in used],
        "new_parts": [names[one] for one in dict.fromkeys(new)],
        "taken_out": [
            [task.label(one.step), f"{len(one.off)} step{'s' * (len(one.off) > 1)} came off"]
            for one in walked.taken
        ],
        "signatures": [[who, ""] for who in SIGNED],
    }


def _read(job: Job, made: Sequence[Decision], step: str) -> list[list[str]]:
    """What was read at a step; a build that cannot be has no reading, and a record all the same."""
    try:
        return [[line.what, line.value] for line in readings(job, made, step)]
    except OutOfRangeError as error:
        return [[job.task.label(step), f"nothing could be read: {error.sentence}"]]


def choice_words(job: Job, ask: Ask, choices) -> str:
    """What was decided, as a person would write it down.

    Examples
    --------
    >>> from twoshaft.models.wholebuild import asks_of
    >>> from twoshaft.units.quantities import Q
    >>> job = Job.of(unit, {"asked": ["shim-differential"]})
    >>> choice_words(job, asks_of(job)[0], {"shim-differential": Q(1.2, "mm")})
    '1.2 mm'
    >>> choice_words(job, asks_of(job)[0], {})
    'not decided'
    """
    told = []
    for spec in ask.fields:
        value = choices.get(spec.name)
        if value is None or value == ():
            told.append("not decided")
        else:
            told.append(_SAY[spec.kind](job, spec, value))
    return ", ".join(told)


def _chosen(job: Job, spec: FieldSpec, value: str) -> str:
    return dict(map(tuple, spec.arguments["options"])).get(value, str(value))


def _figure(job: Job, spec: FieldSpec, value: Q) -> str:
    unit = spec.arguments["unit"]
    return f"{round(value.m_as({'N·m': 'N*m'}.get(unit, unit)), 3):g} {unit}"


def _moves(job: Job, spec: FieldSpec, value: Sequence[str]) -> str:
    labels = {move.code: move.label for move in hand_moves(job.unit.shift)}
    return "; ".join(labels.get(code, code) for code in value)


def _passes(job: Job, spec: FieldSpec, passes: Sequence[Pass]) -> str:
    sizes = dict.fromkeys(
        one.hand.value if not one.size_mm else f"{one.hand.value} of {one.size_mm:g} mm"
        for one in passes
    )
    return f"{len(passes)} pass{'es' * (len(passes) != 1)}: {', '.join(sizes)}"


_SAY: dict[str, Callable[[Job, FieldSpec, Any], str]] = {
    "choice": _chosen,
    "number": _figure,
    "path": _moves,
    "film": _passes,
}
"""How a decision reads in the record, by the kind of its field."""

__all__ = ["PATTERNS", "build_record", "choice_words"]
