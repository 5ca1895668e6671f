"""One of several pictures, for each thing that is asked, as an answer."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from typing import Any

from twoshaft.jobsheet.kinds.each import Each
from twoshaft.jobsheet.kinds.field import Asker, Field, Pairs, kind
from twoshaft.jobsheet.kinds.point import Picture


@kind("picture")
@dataclass(frozen=True)
class PictureChoice(Each):
    """One picture for each line; stored as ``line=letter`` texts.

    Parameters
    ----------
    lines : pairs of key and text
        What each picture is chosen for.
    pictures : mapping of str to Picture
        What there is to choose from, by letter.
    """

    pictures: Mapping[str, Any] = field(default_factory=dict)

    @classmethod
    def asked(
        cls,
        on: Asker,
        name: str,
        prompt: str,
        lines: Pairs,
        pictures: Mapping[str, Picture],
    ) -> Field:
        """A field whose options are the pictures, told by what a hand would feel in each."""
        options = tuple(
            (letter, f"{letter}: {'; '.join(felt for _, felt in one.spots)}")
            for letter, one in pictures.items()
        )
        return cls(name, prompt, lines, options, dict(pictures))

    def told(self) -> dict[str, Any]:
        """What is asked, and the pictures."""
        return super().told() | {"svgs": {letter: one.svg for letter, one in self.pictures.items()}}
