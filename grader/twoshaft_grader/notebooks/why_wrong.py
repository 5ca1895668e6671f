"""Prove that every wrong option of every question has a sentence that says why it is wrong."""

from __future__ import annotations

import re
from collections.abc import Iterable, Iterator
from typing import Any

from twoshaft.errors import CourseError
from twoshaft.questions import bank_of
from twoshaft.readings import issue_record
from twoshaft_grader.marking.kinds import judge_of
from twoshaft_grader.marking.reference import Answered, run_clean
from twoshaft_grader.notebooks.sheets import Sheets

MOST_DRAWS = 120
"""Draws among which every option of the bank has its turn: versions come round with attempts."""

_PLACE = re.compile(r"\{\w+\}")


def unexplained(clean: Answered) -> Iterator[str]:
    """What is said of no wrong option, and what is said of none that is offered."""
    for name, reference in clean.references.items():
        asked = clean.fields[name]
        yield from judge_of(asked).unexplained(asked, reference)


def whole_bank(sheets: Sheets) -> list[str]:
    """As :func:`unexplained`, over draws in which every option of the module's bank is offered:
    those that other proofs have drawn, then more."""
    solution, unit = sheets.solution, sheets.unit
    missing = {option.text for _, option in bank_of(solution.module).every_option()}
    findings: dict[str, None] = {}
    for sheet in sheets.known:
        if new := _found(missing, set(_texts(sheet.issued["given"]))):
            missing -= new
            findings.update(dict.fromkeys(unexplained(sheet.clean)))
    for number in range(MOST_DRAWS):
        if not missing:
            break
        issued = issue_record(
            solution.module, unit, salt="bank", learner=f"bank-{number % 8}", attempt=number // 8
        )
        new = _found(missing, set(_texts(issued["given"])))
        if not new:
            continue
        missing -= new
        try:
            clean = run_clean(solution, issued, unit)
        except CourseError as error:
            findings[f"{error.sentence.rstrip('.')} (readings of {issued['learner']})."] = None
            continue
        findings.update(dict.fromkeys(unexplained(clean)))
    if missing:
        findings[f"nobody is ever offered: {'; '.join(sorted(missing))}."] = None
    return list(findings)


def _found(wanted: set[str], texts: set[str]) -> set[str]:
    """Which of a bank's texts are given; a place in braces there holds whatever was drawn.

    Examples
    --------
    >>> sorted(_found({"{low} mm of float", "dry", "{pull} N"}, {"0.05 mm of float", "dry"}))
    ['dry', '{low} mm of float']
    """
    found = wanted & texts
    for one in wanted - found:
        parts = _PLACE.split(one)
        if len(parts) > 1:
            pattern = re.compile(".+".join(map(re.escape, parts)))
            if any(pattern.fullmatch(text) for text in texts):
                found.add(one)
    return found


def _texts(data: Any) -> Iterable[str]:
    """Every text in plain data."""
    if isinstance(data, str):
        yield data
    elif isinstance(data, dict | list):
        for one in data.values() if isinstance(data, dict) else data:
            yield from _texts(one)
