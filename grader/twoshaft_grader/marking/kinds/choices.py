"""Judges any number of options."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from math import comb
from typing import Any

from twoshaft.jobsheet.kinds import Choices
from twoshaft.readings import Stream
from twoshaft_grader.marking.kinds.judge import (
    Judgement,
    Pick,
    Reference,
    Slip,
    Spread,
    judges,
)
from twoshaft_grader.marking.kinds.keys import KeysJudge, right_keys


def choices_share(hits: int, extras: int, right: int, wrong: int) -> float:
    """Right ticks less wrong ticks, each as a part of what there is, never below nothing.

    Examples
    --------
    >>> choices_share(3, 0, 3, 5), choices_share(3, 5, 3, 5), choices_share(2, 1, 4, 4)
    (1.0, 0.0, 0.25)
    """
    return max(0.0, hits / right - (extras / wrong if wrong else 0.0))


@judges("choices")
class ChoicesJudge(KeysJudge):
    """Each tick is right or one too many."""

    def judge(self, asked: Choices, reference: Reference, value: tuple[str, ...]) -> Judgement:
        """Count the ticks that belong and those that do not."""
        right = right_keys(reference)
        hits, extras = len(right & set(value)), len(set(value) - right)
        share = choices_share(hits, extras, len(right), len(asked.options) - len(right))
        if hits == len(right) and not extras:
            return Judgement(1.0)
        told = [f"You ticked {hits} of the {len(right)} that belong here"]
        if extras:
            told.append(f" and {extras} that {'does' if extras == 1 else 'do'} not")
        why = {slip.value: slip.sentence for slip in reference.slips if isinstance(slip.value, str)}
        ticked = [why[id] for id in why if id in value and id not in right]
        missed = [why[id] for id in why if id in right and id not in value]
        # All that is needed is ticked, and each tick too many is only more careful than needed.
        careful = {
            slip.value for slip in reference.slips if slip.safe and isinstance(slip.value, str)
        }
        safe = right <= set(value) <= right | careful
        named = (*ticked[:1], *missed[:1])
        return Judgement(share, ("".join(told) + ".", *named), safe=safe)

    def told(self, asked: Choices, reference: Reference, id: str) -> bool:
        """Whether a sentence goes with the tick, or with leaving it out."""
        return any(slip.value == id and slip.sentence for slip in reference.slips)

    def unexplained(self, asked: Choices, reference: Reference) -> Iterable[str]:
        """As of other keys; and options that belong without a sentence for who left them out."""
        yield from super().unexplained(asked, reference)
        if bare := sorted(
            id for id in right_keys(reference) if not self.told(asked, reference, id)
        ):
            yield f"nothing says why these options of {asked.name} belong: {', '.join(bare)}."

    def is_slip(self, reference: Reference, slip: Slip, value: Any) -> bool:
        """A whole set of ticks; a single key is told beside the count."""
        return not isinstance(slip.value, str) and set(value) == set(slip.value)

    def slip_answer(self, value: Any) -> Any:
        """The ticks; nothing for a single option."""
        return None if isinstance(value, str) else tuple(value)

    def picks(self, asked: Choices, reference: Reference) -> tuple[Pick, ...]:
        """Any number of the options."""
        return (Pick(asked.prompt, asked.labels(), right_keys(reference), several=True),)

    def picked(self, asked: Choices, keys: Sequence[Sequence[str]]) -> Any:
        """The keys."""
        return [*keys[0]] or None

    def solve(self, asked: Choices, value: Any) -> Any:
        """All that belong."""
        return asked.store([value] if isinstance(value, str) else value)

    def spread(self, asked: Choices, reference: Reference) -> Spread:
        """Every tick is a coin."""
        return _ticked(asked, reference, 0.5)

    def mean_share(self, asked: Choices, reference: Reference, skill: float) -> float:
        """Every option is a step: to be ticked or not."""
        chances = _ticked(asked, reference, skill + (1 - skill) / 2)
        return sum(share * chance for share, chance in chances)

    def guess(self, asked: Choices, reference: Reference, source: Any) -> Any:
        """A coin for every tick."""
        return [key for key, _ in asked.options if source.random() < 0.5]

    def spoil(self, asked: Choices, stored: Any, stream: Stream) -> Any:
        """One tick too many or too few."""
        keys = [key for key, _ in asked.options]
        flipped = set(stored) ^ {stream.choice(keys)}
        return [key for key in keys if key in flipped] or list(stored)


def _ticked(asked: Choices, reference: Reference, hit: float) -> Spread:
    """What is earned where each option is rightly ticked, or left, with the same chance."""
    right = len(right_keys(reference))
    wrong = len(asked.options) - right
    found: dict[float, float] = {}
    for hits in range(right + 1):
        for extras in range(wrong + 1):
            share = choices_share(hits, extras, right, wrong)
            missed = right - hits + extras
            ways = comb(right, hits) * comb(wrong, extras)
            chance = ways * hit ** (right + wrong - missed) * (1 - hit) ** missed
            found[share] = found.get(share, 0.0) + chance
    return tuple(sorted(found.items()))
