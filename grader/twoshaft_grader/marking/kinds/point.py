"""Judges places in a picture, one for each thing that was asked."""

from __future__ import annotations

from collections.abc import Mapping

from twoshaft.jobsheet.kinds import Point
from twoshaft.units import Unit
from twoshaft_grader.marking.kinds.each import EachJudge
from twoshaft_grader.marking.kinds.judge import Reference, judges
from twoshaft_grader.marking.kinds.keys import key_set


@judges("point")
class PointJudge(EachJudge):
    """Each place is right or wrong."""

    wanted = "the letter, or letters, of the right place for each of its lines"

    def drawn(
        self, asked: Point, reference: Reference, value: Mapping[str, str], unit: Unit
    ) -> str:
        """The picture with the right place of each line, and the learner's own where it differs."""
        return str(asked.picture.marked(told_places(asked, reference, value)))


def told_places(asked: Point, reference: Reference, value: Mapping[str, str]) -> dict[str, str]:
    """What to say at each letter: that it is right, and for what; or that it was the answer."""
    several = len(asked.lines) > 1
    told: dict[str, str] = {}
    for at, (line, _) in enumerate(asked.lines, 1):
        right, own = key_set(reference.value[line]), value.get(line)
        number = f" {at}" if several else ""
        if own is not None and own not in right:
            told[own] = ", ".join(filter(None, (told.get(own), f"yours{number}")))
        here = min(right)
        told[here] = ", ".join(filter(None, (told.get(here), f"right{number}")))
    return told
