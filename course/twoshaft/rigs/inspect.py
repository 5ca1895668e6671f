"""Damage under the lamp, and a reading beside its limit."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

from twoshaft.errors import CourseError
from twoshaft.models.inspect import (
    AGAIN,
    FLANK,
    GOOD,
    NAMES,
    RACE,
    WEAR_MM,
    WEARS,
    chance_beyond,
    felt,
    found_on,
    guard_band,
    judged,
    marks_of,
    verdict,
    ways_cost,
    worn_of,
)
from twoshaft.plots.damage import flank_picture, race_picture
from twoshaft.plots.decision import decision_picture
from twoshaft.plots.worn import worn_picture
from twoshaft.rigs.instrument import Instrument, one_of, within
from twoshaft.units.quantities import Q

SIZES_MM, PLACES_MM, AT_MM = (1.0, 5.0), (15.0, 45.0), (0.5, 2.5)
LIMIT_MM, ENDS_MM, UNSURE_MM = 5.0, (4.85, 5.15), (0.01, 0.04)
RENEW_H, LOOK_H, AGAIN_H = 1.5, 0.5, (2.0, 40.0)


def _slider(key: str, label: str, ends: tuple[float, float], step: float, unit: str, places: int):
    return {
        "key": key, "label": label, "min": ends[0], "max": ends[1], "step": step, "unit": unit,
        "places": places,
    }  # fmt: skip


class Lamp(Instrument):
    """One kind of damage at a time, its size and place to be changed.

    Parameters
    ----------
    part : str
        ``race`` or ``flank``.
    """

    screen = "sketch"
    name = "Parts under the lamp"
    asks = "What damage is this?"

    def __init__(self, part: str) -> None:
        self.part = part
        kinds: Sequence[str] = RACE if part == "race" else FLANK
        self.kinds = [[one, NAMES[one]] for one in kinds]
        super().__init__(
            {
                "pickers": [{"key": "damage", "label": "Damage", "options": self.kinds}],
                "sliders": [
                    _slider("size", "Size", SIZES_MM, 0.1, "mm", 1),
                    _slider("at", "Place along the scale", PLACES_MM, 1, "mm", 0),
                ],
            },
            {"damage": kinds[0], "size": 3.0, "at": 30.0},
        )

    def look(self, state: dict[str, Any]) -> dict[str, Any]:
        """The picture, and what hand and lens find."""
        damage = one_of(state, "damage", self.kinds)
        marks = marks_of(damage, within(state, "size", *SIZES_MM), within(state, "at", *PLACES_MM),
                         seed=7)  # fmt: skip
        lit = race_picture(marks) if self.part == "race" else flank_picture(marks)
        return {
            "drawing": lit.svg,
            "words": lit.feels,
            "finding": f"{NAMES[damage]}: {felt(marks)}.",
        }

    def plain_copy(self) -> str:
        """The picture and its words as HTML."""
        return f"{self.shown['drawing']}{super().plain_copy()}"


class WornLamp(Instrument):
    """A part of the shift beside a scale, with its wear and place to be changed.

    Parameters
    ----------
    part : str
        One of ``models.inspect.WEARS``.
    """

    screen = "sketch"
    name = "Worn parts under the lamp"
    asks = "Does the part go in again?"

    def __init__(self, part: str) -> None:
        self.part = part
        self.kinds = [list(one) for one in WEARS[part].items()]
        most = WEAR_MM[part]
        super().__init__(
            {
                "pickers": [{"key": "kind", "label": "What is worn", "options": self.kinds}],
                "sliders": [
                    _slider("wear", "Wear", (0.0, most), 0.1, "mm", 1),
                    _slider("at", "Place along the scale", AT_MM, 0.1, "mm", 1),
                ],
            },
            {"kind": self.kinds[0][0], "wear": 0.0, "at": AT_MM[0]},
        )

    def look(self, state: dict[str, Any]) -> dict[str, Any]:
        """The picture, what is read on it, and whether the part goes in again."""
        kind = one_of(state, "kind", self.kinds)
        worn = worn_of(
            self.part, kind, within(state, "wear", 0.0, WEAR_MM[self.part]),
            within(state, "at", *AT_MM),
        )  # fmt: skip
        good, why = judged(worn)
        lit = worn_picture(worn)
        words = found_on(worn)
        return {
            "drawing": lit.svg,
            "words": lit.feels,
            "finding": f"{words[0].upper()}{words[1:]}. {'Use it again' if good else 'Renew it'}: "
            f"{why}.",
        }

    def plain_copy(self) -> str:
        """The picture and its words as HTML."""
        return f"{self.shown['drawing']}{super().plain_copy()}"


class GuardRig(Instrument):
    """A reading near the smallest size allowed: what it proves, and what each way costs."""

    screen = "sketch"
    name = "A reading beside its limit"
    asks = "Is the part proven good?"

    def __init__(self) -> None:
        super().__init__(
            {
                "pickers": [],
                "sliders": [
                    _slider("reading", "Reading", (4.9, 5.1), 0.005, "mm", 3),
                    _slider("u", "Standard uncertainty", UNSURE_MM, 0.005, "mm", 3),
                    _slider("again", "Stripping again", AGAIN_H, 1, "h", 0),
                ],
            },
            {"reading": 5.02, "u": 0.02, "again": 14.0},
        )

    def look(self, state: dict[str, Any]) -> dict[str, Any]:
        """The chance of each size, what is proven, and the cheapest way."""
        reading = within(state, "reading", 4.9, 5.1)
        u, again = within(state, "u", *UNSURE_MM), within(state, "again", *AGAIN_H)
        limit, mm = Q(LIMIT_MM, "mm"), Q(reading, "mm")
        band = guard_band(Q(u, "mm"))
        bad = chance_beyond(mm, limit, Q(u, "mm"), least=True)
        proves = verdict(mm, limit, band, least=True)
        said = {GOOD: "proven good", AGAIN: "not proven"}.get(proves, "proven bad")
        ways = ways_cost(bad, RENEW_H, again, LOOK_H)
        best = {"use": "use it", "renew": "renew it", "again": "measure it surely first"}[
            min(ways, key=lambda one: ways[one])
        ]
        picture = decision_picture(reading, LIMIT_MM, u, band.m_as("mm"), ENDS_MM)
        return {
            "drawing": picture.svg,
            "words": picture.words,
            "finding": f"The part is {said}; the chance that it is bad is {_per_cent(bad)}. On "
            f"average using it costs {ways['use']:.1f} h, renewing {ways['renew']:.1f} h, "
            f"measuring surely first {ways['again']:.1f} h: {best}.",
        }

    def plain_copy(self) -> str:
        """The picture and its words as HTML."""
        return f"{self.shown['drawing']}{super().plain_copy()}"


def _per_cent(chance: float) -> str:
    """A chance in words: nothing is ever quite sure."""
    if chance < 0.001:
        return "less than 0.1 %"
    return "more than 99.9 %" if chance > 0.999 else f"{100 * chance:.1f} %"


def lamp(part: str) -> Lamp | WornLamp:
    """Damage or wear of one part under the lamp.

    Parameters
    ----------
    part : str
        ``race``, a bearing's track, ``flank``, a gear's tooth, or a part of the shift:
        ``sleeve``, ``hub``, ``key``, ``fork``, ``spring``.

    Returns
    -------
    Lamp or WornLamp
        Something a notebook displays.

    Raises
    ------
    CourseError
        When there is no such part.
    """
    if part in WEARS:
        return WornLamp(part)
    if part not in ("race", "flank"):
        known = ", ".join(f"'{one}'" for one in ("race", "flank", *WEARS))
        raise CourseError(f"no part {part!r} lies under the lamp", mend=f"use one of {known}")
    return Lamp(part)


def guard_rig() -> GuardRig:
    """A reading beside its limit, with its uncertainty and the cost of being wrong.

    Returns
    -------
    GuardRig
        Something a notebook displays.
    """
    return GuardRig()
