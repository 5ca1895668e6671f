"""Judges sealant laid on a face."""

from __future__ import annotations

from typing import Any

from twoshaft.jobsheet.kinds import Film
from twoshaft.models.film import Work
from twoshaft_grader.marking.film_words import find_film
from twoshaft_grader.marking.kinds.judge import Judge, Judgement, Reference, Spread, judges

GUESSED: Spread = ((0.0, 0.78), (0.1, 0.2), (1.0, 0.02))
"""What sealant laid at random earns: one size everywhere, or another on each stretch, tried out."""


@judges("film")
class FilmJudge(Judge):
    """Passes are judged by closing the face on them."""

    wanted = "the Work on the face that is shown"

    def accepts(self, asked: Film, value: Any) -> bool:
        """Whether it is the work on the face that is shown."""
        return isinstance(value, Work) and value.face == asked.work.face

    def owns(self, value: Any) -> bool:
        """Whether it is work on a face."""
        return isinstance(value, Work)

    def clean(self, value: Any) -> Any:
        """Passes that seal it."""
        return value.good_passes()

    def judge(self, asked: Film, reference: Reference, value: tuple) -> Judgement:
        """What the closed face shows."""
        found = find_film(reference.value, value)
        return Judgement(
            found.share, found.sentences[:2], found.cost, found.good, details=found.sentences[2:]
        )

    def solve(self, asked: Film, value: Any) -> Any:
        """Passes that seal it."""
        return asked.store(self.clean(value))

    def spread(self, asked: Film, reference: Reference) -> Spread:
        """As tried out."""
        return GUESSED

    def mean_share(self, asked: Film, reference: Reference, skill: float) -> float:
        """Every spot to wipe is a step; so is how much is laid, and on which side."""
        steps = len(reference.value.wiping) + 2
        return super().mean_share(asked, reference, skill**steps)

    def guess(self, asked: Film, reference: Reference, source: Any) -> Any:
        """A film or bead, one size everywhere or another on each stretch, one stretch wiped."""
        hand, size = source.choice([("film", 0.6), ("bead", 4.0)])
        segments = asked.work.face.segments
        sizes = [max(0.5 if hand == "bead" else 0.02, source.uniform(0, size))]
        sizes *= len(segments) if source.random() < 0.5 else 1
        side = source.choice(["middle", "inside", "outside"])
        laid = [f"{hand} {source.choice(sizes):.2f} {side} {segment.id}" for segment in segments]
        return [f"wipe middle {source.choice(segments).id}", *laid]
