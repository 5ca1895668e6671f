"""Damage of bearing tracks and gear flanks as marks in millimetres, and told apart by them.

Names are those of ISO 15243:2017 (bearings) and ISO 10825-1:2022 (gears); what tells them apart is
in our own words. A window of a track is unrolled: x runs along the rolling way, y across. On a
flank x runs along the tooth, y from root to tip. Marks are laid for teaching: sizes are invented.
"""

from __future__ import annotations

import random
from collections.abc import Callable, Iterable, Sequence
from dataclasses import dataclass
from enum import StrEnum
from itertools import pairwise
from typing import Protocol

LONG_MM, WIDE_MM = 60.0, 24.0
"""What a picture shows."""
TRACK_MM = (7.0, 17.0)
"""Where balls run, across."""
TOOTH_MM, PITCH_MM = (3.0, 21.0), 11.0
"""Root and tip of a flank, and its pitch line; drawn larger than it is."""
LEAST_ALIKE, REGULAR = 4, 0.6
"""So many dents in a row at distances that differ by less [mm] are those of the balls."""


class Shape(StrEnum):
    """What a mark looks like.

    Examples
    --------
    >>> Shape("dent").name
    'DENT'
    """

    CRATER = "crater"
    SMEAR = "smear"
    GRIT = "grit"
    BAR = "bar"
    STAIN = "stain"
    HOLLOW = "hollow"
    DENT = "dent"
    FROST = "frost"
    SCORE = "score"
    BEACH = "beach"
    GRAIN = "grain"


class MarkLike(Protocol):
    """A mark as it is given or stored.

    Examples
    --------
    >>> mark: MarkLike = Mark("dent", 30, 12, 1.5, 1.5)
    >>> mark.shape
    'dent'
    """

    @property
    def shape(self) -> str:
        """What it looks like."""

    @property
    def x_mm(self) -> float:
        """Its middle along the window."""

    @property
    def y_mm(self) -> float:
        """Its middle across the window."""

    @property
    def long_mm(self) -> float:
        """How far it reaches along the window."""

    @property
    def wide_mm(self) -> float:
        """How far it reaches across."""


@dataclass(frozen=True)
class Mark:
    """A mark by its shape, its middle and its reach [mm].

    Examples
    --------
    >>> race_damage([Mark("crater", 30, 12, 3, 2)])
    'fatigue'
    """

    shape: str
    x_mm: float
    y_mm: float
    long_mm: float
    wide_mm: float


NAMES = {
    "fatigue": "Subsurface initiated fatigue",
    "adhesive": "Adhesive wear (smearing)",
    "abrasive": "Abrasive wear",
    "current": "Current leakage erosion",
    "moisture": "Moisture corrosion",
    "false": "False brinelling",
    "overload": "Overload deformation (brinelling)",
    "particles": "Indentations from particles",
    "macropitting": "Macropitting",
    "micropitting": "Micropitting",
    "scuffing": "Scuffing",
    "scratching": "Scratching",
    "indentation": "Indentation",
    "bending": "Bending fatigue breakage",
    "overload-break": "Overload breakage",
}
"""Terms of ISO 15243 and ISO 10825-1, by id."""
RACE = ("fatigue", "adhesive", "abrasive", "current", "moisture", "false", "overload", "particles")
"""Damage of a bearing's track."""
FLANK = (
    *("macropitting", "micropitting", "scuffing", "scratching", "indentation"),
    *("bending", "overload-break"),
)
"""Damage of a gear's tooth."""

Lay = Callable[[float, float, random.Random], list[Mark]]


def _craters(size: float, at: float, rng: random.Random) -> list[Mark]:
    return [
        Mark(Shape.CRATER, at + k * 1.1 * size, rng.uniform(9, 14), one, one * 0.7)
        for k, one in enumerate((size, size * 0.7, size * 0.5))
    ]


def _pits(size: float, at: float, rng: random.Random) -> list[Mark]:
    return [
        Mark(Shape.CRATER, at + dx + rng.uniform(-1, 1), rng.uniform(7.5, 9.5), one, one * 0.8)
        for dx, one in ((-11, 0.5 * size), (-5, 0.7 * size), (2, size), (9, 0.6 * size))
    ]


def _even(shape: Shape, y: float, wide: float) -> Lay:
    def lay(size: float, at: float, rng: random.Random) -> list[Mark]:
        pitch = rng.uniform(10.5, 13.5)
        first = at % pitch
        return [
            Mark(shape, first + k * pitch, y, 0.7 * size, wide)
            for k in range(6)
            if 2 < first + k * pitch < LONG_MM - 2
        ]

    return lay


def _scattered(shape: Shape, count: int, low: float, high: float, part: float) -> Lay:
    def lay(size: float, at: float, rng: random.Random) -> list[Mark]:
        return [
            Mark(shape, rng.uniform(3, LONG_MM - 3), rng.uniform(low, high), one, one)
            for one in (part * size * rng.uniform(0.4, 1) for _ in range(count))
        ]

    return lay


def _smears(size: float, at: float, rng: random.Random) -> list[Mark]:
    return [
        Mark(Shape.SMEAR, at + dx, y, 3.2 * size, 0.6 * size)
        for dx, y in ((-9, 10 + rng.uniform(0, 1)), (2, 13 + rng.uniform(0, 2)), (10, 9.5))
    ]


def _grit(size: float, at: float, rng: random.Random) -> list[Mark]:
    return [
        Mark(Shape.GRIT, rng.uniform(8, LONG_MM - 8), rng.uniform(*TRACK_MM), 4 * size, 0.2)
        for _ in range(60)
    ]


def _bars(size: float, at: float, rng: random.Random) -> list[Mark]:
    pitch = rng.uniform(1.5, 1.9)
    return [Mark(Shape.BAR, 2 + k * pitch, 12, 0.7, 9) for k in range(int(56 / pitch))]


def _stains(size: float, at: float, rng: random.Random) -> list[Mark]:
    pitch = rng.uniform(10.5, 13.5)
    spots = [
        Mark(Shape.STAIN, at % pitch + k * pitch, 12 + rng.uniform(-2, 2), 1.2 * size, 1.6 * size)
        for k in range(5)
    ]
    beside = [
        Mark(Shape.STAIN, rng.uniform(4, 56), y, size, 0.7 * size) for y in (3.5, 20.5, 21, 4)
    ]
    return [one for one in (*spots, *beside) if 2 < one.x_mm < LONG_MM - 2]


def _scores(size: float, at: float, rng: random.Random) -> list[Mark]:
    lines = []
    for low, high in ((3.2, 8.5), (13.5, 20.8)):
        for _ in range(45):
            reach = rng.uniform(0.6, 1) * (high - low)
            lines.append(
                Mark(Shape.SCORE, at + rng.uniform(-14, 14), (low + high) / 2, 0.25, reach)
            )
    return lines


def _scratches(size: float, at: float, rng: random.Random) -> list[Mark]:
    return [
        Mark(Shape.SCORE, at + dx + rng.uniform(-2, 2), 12, 0.25, rng.uniform(14, 17))
        for dx in (-13, -4, 5, 15)
    ]


def _frost(size: float, at: float, rng: random.Random) -> list[Mark]:
    return [Mark(Shape.FROST, rng.uniform(4, 56), rng.uniform(4, 10), 0.3, 0.3) for _ in range(320)]


def _broken(shape: Shape) -> Lay:
    def lay(size: float, at: float, rng: random.Random) -> list[Mark]:
        return [Mark(shape, at, 12, 7 * size, 18)]

    return lay


_LAID: dict[str, Lay] = {
    "fatigue": _craters,
    "adhesive": _smears,
    "abrasive": _grit,
    "current": _bars,
    "moisture": _stains,
    "false": _even(Shape.HOLLOW, 12, 7),
    "overload": _even(Shape.DENT, 12, 7),
    "particles": _scattered(Shape.DENT, 34, 7.5, 16.5, 0.35),
    "macropitting": _pits,
    "micropitting": _frost,
    "scuffing": _scores,
    "scratching": _scratches,
    "indentation": _scattered(Shape.DENT, 4, 6, 18, 1.1),
    "bending": _broken(Shape.BEACH),
    "overload-break": _broken(Shape.GRAIN),
}


def marks_of(damage: str, size_mm: float, at_mm: float, seed: int) -> tuple[Mark, ...]:
    """Marks of one kind of damage.

    Parameters
    ----------
    damage : str
        One of RACE or FLANK.
    size_mm : float
        How large the largest mark is where marks have a size of their own [mm], 1 to 5.
    at_mm : float
        Where along the window its middle lies, where it has one [mm].
    seed : int
        Says where each mark lies in detail.

    Returns
    -------
    tuple of Mark

    Raises
    ------
    KeyError
        When there is no such damage.

    Examples
    --------
    >>> [mark.shape for mark in marks_of("fatigue", 3, 30, seed=1)]
    ['crater', 'crater', 'crater']
    """
    rng = random.Random(seed)
    return tuple(
        Mark(str(one.shape), *(round(v, 1) for v in (one.x_mm, one.y_mm)),
             *(round(v, 2) for v in (one.long_mm, one.wide_mm)))
        for one in _LAID[damage](size_mm, at_mm, rng)
    )  # fmt: skip


def _row_like(marks: Sequence[MarkLike]) -> bool:
    """Whether marks lie at equal distances, as balls at rest do."""
    places = sorted(one.x_mm for one in marks)
    steps = [b - a for a, b in pairwise(places)]
    return len(marks) >= LEAST_ALIKE and max(steps) - min(steps) < REGULAR


def race_damage(marks: Iterable[MarkLike]) -> str:
    """Which damage a bearing's track has, by its marks.

    Parameters
    ----------
    marks : iterable of Mark

    Returns
    -------
    str
        One of RACE.

    Raises
    ------
    KeyError
        When no damage of a track has marks of this shape.

    Examples
    --------
    Dents at the distance of the balls come from a load, others from what was rolled over.

    >>> [race_damage(marks_of(kind, 2, 30, seed=5)) for kind in ("overload", "particles")]
    ['overload', 'particles']
    """
    some = tuple(marks)
    if some[0].shape == Shape.DENT:
        return "overload" if _row_like(some) else "particles"
    return {
        "crater": "fatigue", "smear": "adhesive", "grit": "abrasive", "bar": "current",
        "stain": "moisture", "hollow": "false",
    }[some[0].shape]  # fmt: skip


def flank_damage(marks: Iterable[MarkLike]) -> str:
    """Which damage a gear's tooth has, by its marks.

    Parameters
    ----------
    marks : iterable of Mark

    Returns
    -------
    str
        One of FLANK.

    Raises
    ------
    KeyError
        When no damage of a tooth has marks of this shape.

    Examples
    --------
    Scores that leave the pitch line out are scuffing: nothing slides there.

    >>> [flank_damage(marks_of(kind, 2, 30, seed=5)) for kind in ("scuffing", "scratching")]
    ['scuffing', 'scratching']
    """
    some = tuple(marks)
    if some[0].shape == Shape.SCORE:
        crossed = any(abs(one.y_mm - PITCH_MM) < one.wide_mm / 2 for one in some)
        return "scratching" if crossed else "scuffing"
    return {
        "crater": "macropitting", "frost": "micropitting", "dent": "indentation",
        "beach": "bending", "grain": "overload-break",
    }[some[0].shape]  # fmt: skip


_FELT = {
    Shape.CRATER: "holes with sharp cracked edges, the nail falls in; "
    "the largest reaches from {low:.1f} to {high:.1f} on the scale",
    Shape.SMEAR: "patches where metal was dragged in the rolling direction, torn and rough",
    Shape.GRIT: "the whole track is dull with fine lines along it, and a step at its edge",
    Shape.BAR: "fine bars across the track, {count} of them, close together and all alike",
    Shape.STAIN: "dark etched patches without a shine, some of them beside the track",
    Shape.HOLLOW: "{count} hollows, equally far apart, "
    "with red-brown round them; no edge stands up",
    Shape.FROST: "a frosted grey band below the pitch line; the nail finds nothing",
    Shape.BEACH: "a corner is gone; the break is smooth, with lines like those of a tide",
    Shape.GRAIN: "a corner is gone; the break is grainy all over, without lines",
}


def felt(marks: Iterable[MarkLike]) -> str:
    """What a hand and a lens find, without a name of it.

    Parameters
    ----------
    marks : iterable of Mark

    Returns
    -------
    str

    Examples
    --------
    >>> felt(marks_of("bending", 2, 30, seed=1))
    'a corner is gone; the break is smooth, with lines like those of a tide'
    """
    some = tuple(marks)
    shape = Shape(some[0].shape)
    count, longest = len(some), max(some, key=lambda one: one.long_mm)
    ends = (longest.x_mm - longest.long_mm / 2, longest.x_mm + longest.long_mm / 2)
    if shape is Shape.DENT:
        where = (
            "equally far apart, the ground finish still in them"
            if _row_like(some)
            else "of all sizes and anywhere"
        )
        return f"{count} dents with an edge that stands up, {where}"
    if shape is Shape.SCORE:
        if flank_damage(some) == "scuffing":
            return "a crowd of fine scores up the tooth near root and tip, none at the pitch line"
        return f"{count} single scores up the tooth, through the pitch line"
    return _FELT[shape].format(count=count, low=ends[0], high=ends[1])
