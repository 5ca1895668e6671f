"""Judges one of several options."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

from twoshaft.jobsheet.kinds import Choice
from twoshaft.readings import Stream
from twoshaft_grader.marking.kinds.judge import (
    Judgement,
    Pick,
    Reference,
    Spread,
    judge,
    judges,
)
from twoshaft_grader.marking.kinds.keys import KeysJudge, right_keys


@judges("choice")
class ChoiceJudge(KeysJudge):
    """A key is right or not; several may be right."""

    def judge(self, asked: Choice, reference: Reference, value: str) -> Judgement:
        """Whether the key is one of those that are right."""
        right = value in right_keys(reference)
        told = () if right else ("Another answer fits better.",)
        return Judgement(float(right), told, safe=right)

    def picks(self, asked: Choice, reference: Reference) -> tuple[Pick, ...]:
        """One of the options."""
        return (Pick(asked.prompt, asked.labels(), right_keys(reference)),)

    def picked(self, asked: Choice, keys: Sequence[Sequence[str]]) -> Any:
        """The key."""
        return next(iter(keys[0]), None)

    def solve(self, asked: Choice, value: Any) -> Any:
        """The right key, the first of several."""
        return asked.store(value if isinstance(value, str) else min(value))

    def spread(self, asked: Choice, reference: Reference) -> Spread:
        """Every option is equally likely."""
        found: dict[float, float] = {}
        for key, _ in asked.options:
            share = judge(asked, reference, key).share
            found[share] = found.get(share, 0.0) + 1 / len(asked.options)
        return tuple(sorted(found.items()))

    def guess(self, asked: Choice, reference: Reference, source: Any) -> Any:
        """Any option."""
        return source.choice(asked.options)[0]

    def spoil(self, asked: Choice, stored: Any, stream: Stream) -> Any:
        """Another option."""
        others = [key for key, _ in asked.options if key != stored]
        return stream.choice(others) if others else stored
