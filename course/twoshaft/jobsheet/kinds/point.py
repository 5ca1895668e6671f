"""A place in a picture, for each thing that is asked, as an answer."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Any, Protocol

from twoshaft.jobsheet.kinds.each import Each
from twoshaft.jobsheet.kinds.field import Asker, Field, Pairs, kind


class Picture(Protocol):
    """A drawing with letters at what can be pointed at."""

    @property
    def svg(self) -> str:
        """It as SVG, each place a group with its letter in ``data-spot``."""

    @property
    def spots(self) -> Pairs:
        """Each letter with what a hand would feel there."""


@kind("point")
@dataclass(frozen=True)
class Point(Each):
    """One place for each line; stored as ``line=letter`` texts.

    Parameters
    ----------
    lines : pairs of key and text
        What is to be pointed at.
    picture : Picture
        What is looked at; its spots are what each line offers.
    """

    picture: Any = None

    @classmethod
    def asked(cls, on: Asker, name: str, prompt: str, lines: Pairs, picture: Picture) -> Field:
        """A field whose options are the places of the picture."""
        options = tuple((letter, f"{letter}: {felt}") for letter, felt in picture.spots)
        return cls(name, prompt, lines, options, picture)

    def told(self) -> dict[str, Any]:
        """What to point at, the places, and the picture."""
        return super().told() | {"svg": self.picture.svg}
