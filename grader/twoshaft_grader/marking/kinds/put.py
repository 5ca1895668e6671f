"""Judges parts put into a picture, each in its place and its way round."""

from __future__ import annotations

from collections.abc import Mapping

from twoshaft.jobsheet.kinds import Put
from twoshaft.units import Unit
from twoshaft_grader.marking.kinds.each import EachJudge
from twoshaft_grader.marking.kinds.judge import Reference, judges
from twoshaft_grader.marking.kinds.keys import key_set


@judges("put")
class PutJudge(EachJudge):
    """A part is right where both its place and its way round are."""

    wanted = "the right place with its way round for each of its parts"

    def drawn(self, asked: Put, reference: Reference, value: Mapping[str, str], unit: Unit) -> str:
        """The picture with each part that is wrong, where and the way round it belongs."""
        placed = {}
        for part, text in asked.lines:
            right = key_set(reference.value[part])
            if value.get(part) not in right:
                letter, _, way = min(right).partition("-")
                placed[letter] = (text, asked.pieces[part][int(way) - 1][1], asked.at[letter])
        return str(asked.picture.with_pieces(placed))
