"""A round sealed face, told by its circles: its outline, holes and stretches follow.

Nobody has to work out a list of corners for a face that was turned on a lathe.
"""

from __future__ import annotations

import math
from typing import Any

from pydantic import Field, model_validator

from twoshaft.units.sections.order import Section

Point = tuple[float, float]

_CORNERS = 48  # of a circle: within 0.3 mm of it at a radius of 130 mm
_ALONG = 4  # parts of a stretch from bolt to bolt


class RoundFace(Section):
    """The circles of a round face, its bolts evenly round it, the first one at three o'clock."""

    outside_mm: float = Field(gt=10, le=1000)
    """Diameter of the outside edge [mm]."""
    inside_mm: float = Field(gt=5, le=1000)
    """Diameter of the opening [mm]."""
    bolt_circle_mm: float = Field(gt=5, le=1000)
    """Diameter of the circle that the bolts stand on [mm]."""
    bolts: int = Field(ge=3, le=60)
    """How many bolts."""
    hole_mm: float = Field(gt=0, le=60)
    """Diameter of their holes [mm]."""
    clamp_n: float = Field(gt=0, le=500000)
    """Clamp of each bolt [N]."""
    head_mm: float = Field(gt=0, le=100)
    """Outer diameter of a bolt's head or washer [mm]."""
    blind: tuple[int, ...] = ()
    """Numbers of the bolts whose holes end in the metal."""

    @model_validator(mode="after")
    def _inside_one_another(self) -> RoundFace:
        half = self.hole_mm / 2
        middle = self.bolt_circle_mm / 2
        if not self.inside_mm / 2 < middle - half < middle + half < self.outside_mm / 2:
            raise ValueError(
                "the holes do not lie on the face; 'inside mm' is below and 'outside mm' above "
                "'bolt circle mm', by more than a hole"
            )
        if 2 * middle * math.sin(math.pi / self.bolts) <= max(self.hole_mm, self.head_mm):
            raise ValueError(
                "the bolts touch one another; give fewer, or a larger 'bolt circle mm'"
            )
        wrong = [number for number in self.blind if not 1 <= number <= self.bolts]
        if wrong:
            raise ValueError(f"'blind' names bolt {wrong[0]}; there are {self.bolts}")
        return self

    def told(self) -> dict[str, Any]:
        """What the face says of itself: outline, cavities, holes, segments.

        Examples
        --------
        >>> face = RoundFace.model_validate(
        ...     {"outside mm": 100, "inside mm": 70, "bolt circle mm": 85, "bolts": 6,
        ...      "hole mm": 6.6, "clamp n": 7000, "head mm": 10})
        >>> [hole["x mm"] for hole in face.told()["holes"]][:3]
        [42.5, 21.25, -21.25]
        """
        count, middle = self.bolts, self.bolt_circle_mm / 2
        inside = {"id": "inside", "name": "Oil room behind the face", "kind": "oil"}
        return {
            "outline": circle(self.outside_mm / 2, _CORNERS),
            "cavities": [inside | {"outline": circle(self.inside_mm / 2, _CORNERS)}],
            "holes": [
                {
                    "id": f"bolt-{number}", "x mm": x_mm, "y mm": y_mm,
                    "diameter mm": self.hole_mm, "clamp n": self.clamp_n, "head mm": self.head_mm,
                    "blind": number in self.blind,
                }
                for number, (x_mm, y_mm) in enumerate(circle(middle, count), 1)
            ],
            "segments": [
                {
                    "id": f"from-{number}-to-{number % count + 1}",
                    "name": f"From bolt {number} to bolt {number % count + 1}",
                    "points": [
                        _at(middle, (number - 1 + part / _ALONG) / count)
                        for part in range(_ALONG + 1)
                    ],
                }
                for number in range(1, count + 1)
            ],
        }  # fmt: skip


def circle(radius_mm: float, corners: int) -> list[Point]:
    """Places evenly round a circle, from three o'clock on [mm]."""
    return [_at(radius_mm, number / corners) for number in range(corners)]


def _at(radius_mm: float, turn: float) -> Point:
    angle = 2 * math.pi * turn
    return (
        round(radius_mm * math.cos(angle), 2) + 0.0,
        round(radius_mm * math.sin(angle), 2) + 0.0,
    )
