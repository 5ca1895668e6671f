"""Sheets of one assignment that agree more than chance allows: a fact to talk about, no verdict."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from twoshaft_grader.cohort.assign import Assigned
from twoshaft_grader.cohort.folder import Cohort
from twoshaft_grader.cohort.marks import read_mark
from twoshaft_grader.cohort.not_done import NotDone, going_on
from twoshaft_grader.cohort.roster import Learner
from twoshaft_grader.marking.result import SheetMark, Verdict
from twoshaft_grader.records.agreement import Pair, pairs_alike

SELDOM = 0.01
"""Pairs are told that chance brings about in no more than one of a hundred groups of this size
(our own choice)."""

_RIGHT = {Verdict.RIGHT, Verdict.CARRIED}
_NONE = {Verdict.UNANSWERED, Verdict.UNREADABLE}


@dataclass(frozen=True)
class Alike:
    """Two sheets that agree.

    Attributes
    ----------
    one, other : Learner
    pair : Pair
        On how much they agree.
    groups : float
        In how many groups of this size chance brings about one such pair.
    """

    one: Learner
    other: Learner
    pair: Pair
    groups: float

    @property
    def sentence(self) -> str:
        """What was found, with its numbers."""
        often = f"{self.groups:,.0f}" if self.groups < 1e6 else "a million and more"
        return (
            f"{self.one.id} and {self.other.id} gave the same answer {self.pair.same} times of "
            f"{self.pair.asked} (answers that both have right are not counted). By chance it "
            f"would be {self.pair.expected:.1f} times; a pair like this comes about by chance "
            f"once in {often} groups of this size."
        )


def alike(
    cohort: Cohort, assigned: Assigned, learners: Sequence[Learner]
) -> tuple[list[Alike], list[NotDone]]:
    """Compare every two marked sheets of an assignment.

    Parameters
    ----------
    cohort : Cohort
    assigned : Assigned
    learners : sequence of Learner

    Returns
    -------
    list of Alike
        The least likely first.
    list of NotDone
        Whose mark cannot be read.
    """
    people: list[Learner] = []
    answers: list[dict[str, str]] = []
    right: list[frozenset[str]] = []
    left: list[NotDone] = []
    for learner in learners:
        with going_on(learner.id, left):
            mark = read_mark(cohort.mark_file(learner.id, assigned.name))
            if mark and mark.sheet:  # a mark is large, and there are many: what is compared is kept
                people.append(learner)
                answers.append(_answers(mark.sheet))
                right.append(frozenset(f.name for f in mark.sheet.fields if f.verdict in _RIGHT))
    found = pairs_alike(answers, right)
    pairs = max(len(people) * (len(people) - 1) // 2, 1)
    told = [
        Alike(people[pair.one], people[pair.other], pair, 1 / max(pair.chance * pairs, 1e-12))
        for pair in found
        if pair.chance * pairs <= SELDOM
    ]
    return told, left


def _answers(sheet: SheetMark) -> dict[str, str]:
    """What was answered, in words, and what was read at a real bench, by name."""
    answers = {f.name: f.answer for f in sheet.fields if f.verdict not in _NONE}
    for use in sheet.bench:
        answers |= {f"bench {use.task} {prompt}": value for prompt, value, _ in use.figures}
    return answers
