"""Judges one answer for each line of a list."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from functools import cache
from typing import Any

from twoshaft.jobsheet.kinds import Each
from twoshaft.readings import Stream
from twoshaft_grader.marking.kinds.judge import (
    Judge,
    Judgement,
    Pick,
    Reference,
    Seen,
    Slip,
    Spread,
    judges,
)
from twoshaft_grader.marking.kinds.keys import key_set

GUESSED = 0.05
"""The most that lines answered at random may earn on average, as with an order."""


def wrong_chances(hits: Iterable[float]) -> list[float]:
    """Chances that 0, 1, 2 … lines are wrong, from each line's chance to be hit.

    Examples
    --------
    >>> wrong_chances([0.5, 0.5])
    [0.25, 0.5, 0.25]
    """
    chances = [1.0]
    for hit in hits:
        shifted = [0.0, *chances]
        chances = [
            hit * stays + (1 - hit) * more
            for stays, more in zip([*chances, 0.0], shifted, strict=True)
        ]
    return chances


@cache
def earns_nothing_at(hits: tuple[float, ...]) -> int:
    """Return how many wrong lines earn nothing: the most with which luck earns :data:`GUESSED`.

    Examples
    --------
    >>> [earns_nothing_at((1 / n,) * k) for n, k in ((2, 5), (3, 4), (4, 4), (3, 6))]
    [1, 1, 2, 3]
    """
    chances = wrong_chances(hits)

    def luck(at: int) -> float:
        return sum(chance * share_of(wrong, at) for wrong, chance in enumerate(chances))

    fitting = [at for at in range(1, len(chances)) if luck(at) <= GUESSED]
    return max(fitting, default=1)


def share_of(wrong: int, nothing_at: int) -> float:
    """Part of the marks with so many lines wrong.

    Examples
    --------
    >>> share_of(0, 2), share_of(1, 2), share_of(3, 2)
    (1.0, 0.5, 0.0)
    """
    return max(0.0, 1 - wrong / nothing_at)


def counted(right: int, lines: int, luck: int) -> str:
    """How many lines are right, and why they earn nothing where luck gets as far.

    Examples
    --------
    >>> counted(1, 2, 0)
    '1 of the 2 lines is right.'
    >>> counted(3, 4, 3)
    '3 of the 4 lines are right. Guessing gets you as far, so points begin when all 4 are right.'
    """
    told = f"{right} of the {lines} lines {'is' if right == 1 else 'are'} right."
    if not 0 < right <= luck:
        return told
    begin = f"all {lines}" if luck + 1 == lines else str(luck + 1)
    return f"{told} Guessing gets you as far, so points begin when {begin} are right."


def led(line: str, sentence: str) -> str:
    """A sentence after the line that it is about.

    Examples
    --------
    >>> led("the pin stands out.", "It can work loose.")
    'The pin stands out: It can work loose.'
    >>> led("What of it?", "It is sound.")
    'What of it? It is sound.'
    """
    said = line[:1].upper() + line[1:].removesuffix(".")
    return f"{said}{'' if said.endswith(('?', '!')) else ':'} {sentence}"


@judges("each")
class EachJudge(Judge):
    """Each line is right or wrong; a line without an answer is wrong."""

    wanted = "the right answer, or answers, of each of its lines"

    def accepts(self, asked: Each, value: Any) -> bool:
        """Whether every line has answers that are right and are offered."""
        offered = set(dict(asked.options))
        return (
            isinstance(value, Mapping)
            and set(value) == set(dict(asked.lines))
            and all(key_set(right) and key_set(right) <= offered for right in value.values())
        )

    def hits(self, asked: Each, reference: Reference) -> tuple[float, ...]:
        """How likely luck answers each line."""
        offered = len(asked.options)
        return tuple(len(key_set(reference.value[line])) / offered for line, _ in asked.lines)

    def judge(self, asked: Each, reference: Reference, value: Mapping[str, str]) -> Judgement:
        """Count the lines that are wrong or open."""
        texts = dict(asked.lines)
        wrong = [line for line in texts if value.get(line) not in key_set(reference.value[line])]
        if not wrong:
            return Judgement(1.0)
        nothing_at = earns_nothing_at(self.hits(asked, reference))
        share = share_of(len(wrong), nothing_at)
        told = [
            led(texts[line], self.sentence(reference, line, value[line]))
            for line in wrong
            if line in value
        ]
        careful = {slip.value for slip in reference.slips if slip.safe}
        safe = all((line, value.get(line)) in careful for line in wrong)
        count = counted(len(texts) - len(wrong), len(texts), len(texts) - nothing_at)
        return Judgement(share, (count, *told[:1]), safe=safe, details=tuple(told[1:]))

    def sentence(self, reference: Reference, line: str, option: str) -> str:
        """Why an answer to a line is wrong; empty if nothing says so."""
        found = (slip.sentence for slip in reference.slips if slip.value == (line, option))
        return next(found, "")

    def unexplained(self, asked: Each, reference: Reference) -> Iterable[str]:
        """Wrong answers to a line without a sentence, and sentences for none that is offered."""
        offered = {(line, option) for line, _ in asked.lines for option, _ in asked.options}
        wrong = {pair for pair in offered if pair[1] not in key_set(reference.value[pair[0]])}
        if bare := sorted(pair for pair in wrong if not self.sentence(reference, *pair)):
            pairs = ", ".join("=".join(pair) for pair in bare)
            yield f"nothing says why these answers of {asked.name} are wrong: {pairs}."
        named = {slip.value for slip in reference.slips if isinstance(slip.value, tuple)}
        if stray := sorted(named - wrong):
            pairs = ", ".join("=".join(pair) for pair in stray)
            yield f"slips of {asked.name} name what is not wrong or not offered: {pairs}."

    def is_slip(self, reference: Reference, slip: Slip, value: Any) -> bool:
        """Only a whole mapping; a single line is told beside the count."""
        return isinstance(slip.value, Mapping) and dict(value) == dict(slip.value)

    def slip_answer(self, value: Any) -> Any:
        """The answers; nothing for a single line."""
        return dict(value) if isinstance(value, Mapping) else None

    def clean(self, value: Any) -> Any:
        """The right answer of each line; of several the first."""
        return {line: min(key_set(value[line])) for line in value}

    def plausible(self, asked: Each, reference: Reference, own: Any, seen: Seen) -> bool:
        """Whether every line has an answer."""
        return set(own) == set(reference.value)

    def carried(self, value: Any, own: Any) -> Any:
        """The learner's own answers."""
        return dict(own)

    def picks(self, asked: Each, reference: Reference) -> tuple[Pick, ...]:
        """An answer for each line."""
        options = dict(asked.options)
        return tuple(
            Pick(text, options, key_set(reference.value[line])) for line, text in asked.lines
        )

    def picked(self, asked: Each, keys: Sequence[Sequence[str]]) -> Any:
        """The answers of those lines that have one."""
        pairs = zip(asked.lines, keys, strict=True)
        return [f"{line}={own[0]}" for (line, _), own in pairs if own] or None

    def solve(self, asked: Each, value: Any) -> Any:
        """The right answer of each line."""
        return asked.store({line: min(key_set(value[line])) for line, _ in asked.lines})

    def spread(self, asked: Each, reference: Reference) -> Spread:
        """Every answer to a line is equally likely."""
        hits = self.hits(asked, reference)
        nothing_at = earns_nothing_at(hits)
        found: dict[float, float] = {}
        for wrong, chance in enumerate(wrong_chances(hits)):
            share = share_of(wrong, nothing_at)
            found[share] = found.get(share, 0.0) + chance
        return tuple(sorted(found.items()))

    def mean_share(self, asked: Each, reference: Reference, skill: float) -> float:
        """Every line is a step."""
        hits = self.hits(asked, reference)
        nothing_at = earns_nothing_at(hits)
        chances = wrong_chances(skill + (1 - skill) * hit for hit in hits)
        return sum(chance * share_of(wrong, nothing_at) for wrong, chance in enumerate(chances))

    def guess(self, asked: Each, reference: Reference, source: Any) -> Any:
        """Any answer in every line."""
        return [f"{line}={source.choice(asked.options)[0]}" for line, _ in asked.lines]

    def spoil(self, asked: Each, stored: Any, stream: Stream) -> Any:
        """Another answer in one line."""
        at = stream.integer(len(stored))
        line, _, option = stored[at].partition("=")
        others = [key for key, _ in asked.options if key != option]
        if not others:
            return stored
        return [*stored[:at], f"{line}={stream.choice(others)}", *stored[at + 1 :]]
