"""Parts put into a picture, each in its place and its way round, as an answer."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from typing import Any

from twoshaft.jobsheet.kinds.each import Each
from twoshaft.jobsheet.kinds.field import Asker, Field, Pairs, kind
from twoshaft.jobsheet.kinds.point import Picture

WAYS = ("1", "2")
"""The two ways round in which a part can be put in, as its two pictures show it."""


Pieces = Mapping[str, tuple[tuple[str, str], ...]]
Middles = Mapping[str, tuple[float, float]]


@kind("put")
@dataclass(frozen=True)
class Put(Each):
    """A place and a way round for each part; stored as ``part=letter-way`` texts.

    Parameters
    ----------
    lines : pairs of key and text
        The parts in hand.
    picture : Picture
        Where they can go.
    pieces : mapping of str to tuple of (str, str)
        Each part as it looks both ways round: what a hand would feel, and SVG about its middle.
    at : mapping of str to (float, float)
        Where in the picture the middle of a part lies, by letter [px].
    """

    picture: Any = None
    pieces: Pieces = field(default_factory=dict)
    at: Middles = field(default_factory=dict)

    @classmethod
    def asked(
        cls,
        on: Asker,
        name: str,
        prompt: str,
        lines: Pairs,
        picture: Picture,
        pieces: Pieces,
        at: Middles,
    ) -> Field:
        """A field whose options are places of the picture with a way round."""
        options = tuple(
            (f"{letter}-{way}", f"at {letter}, way {way} ({felt})")
            for letter, felt in picture.spots
            for way in WAYS
        )
        return cls(name, prompt, lines, options, picture, pieces, at)

    def __post_init__(self) -> None:
        super().__post_init__()
        if set(self.pieces) != {line for line, _ in self.lines} or any(
            len(ways) != len(WAYS) for ways in self.pieces.values()
        ):
            raise ValueError(f"field {self.name!r} needs both ways round of each of its parts")

    def told(self) -> dict[str, Any]:
        """Parts, places, and how both look."""
        return super().told() | {
            "svg": self.picture.svg,
            "places": [list(pair) for pair in self.picture.spots],
            "at": {letter: list(xy) for letter, xy in self.at.items()},
            "pieces": {part: [list(way) for way in ways] for part, ways in self.pieces.items()},
        }
