"""Judges which picture was chosen, for each thing that was asked."""

from __future__ import annotations

from collections.abc import Mapping

from twoshaft.jobsheet.kinds import PictureChoice
from twoshaft.units import Unit
from twoshaft_grader.marking.kinds.each import EachJudge
from twoshaft_grader.marking.kinds.judge import Reference, judges
from twoshaft_grader.marking.kinds.keys import key_set


@judges("picture")
class PictureJudge(EachJudge):
    """Each picture is right or wrong."""

    wanted = "the letter, or letters, of the right picture for each of its lines"

    def drawn(
        self, asked: PictureChoice, reference: Reference, value: Mapping[str, str], unit: Unit
    ) -> str:
        """The right picture of each line that is wrong."""
        missed = dict.fromkeys(
            min(key_set(reference.value[line]))
            for line, _ in asked.lines
            if value.get(line) not in key_set(reference.value[line])
        )
        return "".join(str(asked.pictures[letter].svg) for letter in missed)
