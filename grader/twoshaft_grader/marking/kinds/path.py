"""Judges a movement of the hand."""

from __future__ import annotations

from typing import Any

from twoshaft.jobsheet.kinds import HandPath
from twoshaft.models import shift
from twoshaft.models.shift import HandTest
from twoshaft.units.sections.shift import Shift
from twoshaft_grader.marking.kinds.judge import Judge, Judgement, Reference, Slip, Spread, judges

GUESSED: Spread = ((0.0, 0.82), (1.0, 0.18))
"""What moves made at random show: the most of any misbuild in 5 moves, tried out."""
PROOF_GUESSED: Spread = ((0.0, 0.97), (0.7, 0.03))
"""What moves made at random prove of a lockout in 10 moves, tried out."""


@judges("path")
class PathJudge(Judge):
    """Moves are judged by making them."""

    wanted = "a HandTest with the moves that are shown"

    def accepts(self, asked: HandPath, value: Any) -> bool:
        """Whether the test can be made with the moves that are shown."""
        return isinstance(value, HandTest) and set(value.model) <= set(asked.labels())

    def owns(self, value: Any) -> bool:
        """Whether it is a test by hand."""
        return isinstance(value, HandTest)

    def clean(self, value: Any) -> Any:
        """Moves that prove it."""
        return value.model

    def is_slip(self, reference: Reference, slip: Slip, value: Any) -> bool:
        """The very moves."""
        return tuple(value) == tuple(slip.value)

    def slip_answer(self, value: Any) -> Any:
        """The moves in turn."""
        return tuple(value)

    def judge(self, asked: HandPath, reference: Reference, value: tuple[str, ...]) -> Judgement:
        """Judge moves by making them: on the sound mechanism and on those with a misbuild."""
        test = reference.value
        trial = shift.try_out(test, value)
        told = []
        if test.direct is not None and trial.done.get(shift.TRIED) is False:
            told.append(
                f"Your moves never push from {test.direct[0]} straight towards {test.direct[1]} "
                f"{_within(test.sound.shift, *test.direct)}."
            )
        elif trial.done.get(shift.LEFT) is False:
            told.append(
                f"You try the direct shift, but not whether {test.direct[1]} goes in "
                f"{shift.say_opening(test.sound.shift, *test.direct)}."
            )
        if trial.done.get(shift.SHOWN) is False:
            told.append(
                "Your moves show it only where a loose part happens to lie in the right place."
                if any(0 < shown < 1 for shown in trial.shows)
                else "With the assembly fault in it, each of your moves would feel as it should."
            )
        return Judgement(trial.share, tuple(told[:2]), safe=trial.share >= 1)

    def solve(self, asked: HandPath, value: Any) -> Any:
        """Moves that prove it."""
        return asked.store(self.clean(value))

    def spread(self, asked: HandPath, reference: Reference) -> Spread:
        """As tried out."""
        return GUESSED if reference.value.direct is None else PROOF_GUESSED

    def mean_share(self, asked: HandPath, reference: Reference, skill: float) -> float:
        """Every move of the fewest that do it is a step."""
        return super().mean_share(asked, reference, skill ** len(reference.value.model))

    def guess(self, asked: HandPath, reference: Reference, source: Any) -> Any:
        """Any moves, as many as there may be."""
        return [source.choice(asked.moves)[0] for _ in range(asked.most)]


def _within(section: Shift, earlier: str, later: str) -> str:
    """Where the direct shift keeps."""
    gates = shift.gates_of(section, shift.block_of(section, earlier, later))
    return "within the gate" if len(gates) == 1 else "without going another way round"
