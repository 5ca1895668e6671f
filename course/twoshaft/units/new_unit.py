"""A unit file to begin with, from a few answers: it loads, and says which figures are assumed.

All proportions are typical ones of small transaxles (common practice, no source) and invented for
this course; each line with one ends in ``source.TYPICAL``. The text stands in
``new_unit.yaml.jinja``; here is only what has to be worked out.
"""

from __future__ import annotations

import math
import re
from dataclasses import dataclass
from pathlib import Path
from typing import Any, Literal

from twoshaft.errors import CourseError
from twoshaft.units.sections.round_face import circle
from twoshaft.units.source import TYPICAL
from twoshaft.units.standard_parts import bearing_sizes

ORDINALS = ("first", "second", "third", "fourth", "fifth", "sixth", "seventh", "eighth")
MOST_FACES = 12
COUNTS = ("no", "one", "two", "three", "four", "five", "six", "seven", "eight")
_TEMPLATE = "new_unit.yaml.jinja"


@dataclass(frozen=True, slots=True)
class Wishes:
    """What is asked before a unit file is begun.

    Attributes
    ----------
    name : str
        What the unit is called.
    college : str
        Where it stands.
    gears : int
        Forward gears, 3 to 8; reverse comes besides.
    rails : int
        Shift rails; each moves one gear or two.
    bearings : {"taper", "ball"}
        Of the output shaft: taper rollers with preload, or balls with end play.
    faces : int
        Faces sealed by a film, 0 to 12; with none, the case joint has a gasket.
    differential : bool
        Whether it has one.
    """

    name: str
    college: str = "Your college"
    gears: int = 5
    rails: int = 0
    bearings: Literal["taper", "ball"] = "taper"
    faces: int = 2
    differential: bool = True

    def __post_init__(self) -> None:
        if not self.rails:
            object.__setattr__(self, "rails", least_rails(self.gears))
        for what, given, low, high in (
            ("forward gears", self.gears, 3, 8),
            ("rails", self.rails, least_rails(self.gears), self.gears + 1),
            ("sealed faces", self.faces, 0, MOST_FACES),
        ):
            if not low <= given <= high:
                raise CourseError(
                    f"{given} {what}: there is no start for that", mend=f"say {low} to {high}"
                )
        if self.bearings not in ("taper", "ball"):
            raise CourseError(f"'{self.bearings}' bearings are not known", mend="say taper or ball")
        for text in (self.name, self.college):
            if len(text.strip()) < 3 or not text.isprintable():
                raise CourseError(f"{text!r} is no name", mend="write at least three letters")

    @property
    def id(self) -> str:
        """The name as an id."""
        words = re.findall(r"[a-z0-9]+", self.name.lower())
        return "-".join(words)[:60].strip("-") or "my-unit"


def least_rails(gears: int) -> int:
    """Rails that so many forward gears and reverse need at the least, two gears a rail."""
    return math.ceil((gears + 1) / 2)


def new_unit(wishes: Wishes) -> str:
    """The unit file, as text.

    Parameters
    ----------
    wishes : Wishes

    Returns
    -------
    str
        YAML with comments; it loads, and its checks have nothing to correct.
    """
    from jinja2 import Environment, FileSystemLoader, StrictUndefined

    made = Environment(
        loader=FileSystemLoader(Path(__file__).parent),
        undefined=StrictUndefined,
        trim_blocks=True,
        lstrip_blocks=True,
        keep_trailing_newline=True,
        autoescape=False,
    )
    made.filters["quoted"] = _quoted
    rails = _rails(wishes)
    return made.get_template(_TEMPLATE).render(
        wishes=wishes,
        T=f"  # {TYPICAL}",
        rails=rails,
        pins=_pins(rails),
        lockout=next((rail for rail in rails if rail["low"] == "reverse" and rail["high"]), None),
        meshes=_meshes(wishes.gears),
        gears=ORDINALS[: wishes.gears],
        faces=_faces(wishes.faces),
        case=_faces(1)[0],
        output=_output_shaft(wishes.bearings),
        differential=_differential() if wishes.differential else None,
        gear_count=COUNTS[wishes.gears],
    )


def _quoted(text: str) -> str:
    """A text as a YAML scalar in quotes."""
    return '"' + text.replace("\\", "\\\\").replace('"', '\\"') + '"'


_GATE_MM = 10.0
_MIDDLE_MM = 15.0  # from rail to rail, the interlock pins between them


def _rails(wishes: Wishes) -> list[dict[str, Any]]:
    """Gears two by two from first on; reverse last, and alone where rails are left."""
    gears = [*ORDINALS[: wishes.gears], "reverse"]
    pairs = len(gears) - wishes.rails  # rails that move two gears
    rails, left = [], gears
    for number in range(wishes.rails):
        count = 2 if number < pairs else 1
        mine, left = left[:count], left[count:]
        high = None if mine == ["reverse"] else mine[0]
        low = mine[1] if count == 2 else "reverse" if high is None else None
        rails.append(
            {
                "id": f"rail-{'-'.join(mine)}",
                "gate": f"gate-{'-'.join(mine)}",
                "words": " and ".join(mine),
                "high": high,
                "low": low,
                "at": _GATE_MM * (number - (wishes.rails - 1) / 2),
                "ends": [-7 if low else 0, 7 if high else 0],
                "notches": [*([-7] if low else []), 0, *([7] if high else [])],
                "synchronised": [gear for gear in mine if gear != "reverse"],
            }
        )
    return rails


def _pins(rails: list[dict[str, Any]]) -> list[dict[str, Any]]:
    """An interlock pin for each two rails; those not neighbours meet through the ones between."""
    pins = []
    for one in range(len(rails)):
        for other in range(one + 1, len(rails)):
            between = other - one - 1
            gap = 9 + _MIDDLE_MM * between
            pins.append(
                {
                    "id": f"interlock-{one + 1}-{other + 1}",
                    "rails": [rails[one]["id"], rails[other]["id"]],
                    "gap": gap,
                    "length": round(gap + 2.3, 1),
                    "words": f"between rails {one + 1} and {other + 1}"
                    if not between
                    else f"from rail {one + 1} through to rail {other + 1}",
                }
            )
    return pins


_CENTRES_MM, _MODULE_MM, _HELIX_DEG = 75.0, 2.0, 25.0
_LOWEST, _STEP = 3.5, 0.68


def _meshes(count: int) -> list[dict[str, Any]]:
    """Teeth for ratios in steps, on shafts at one distance."""
    teeth = round(2 * _CENTRES_MM * math.cos(math.radians(_HELIX_DEG)) / _MODULE_MM)
    step = max(_STEP, (0.6 / _LOWEST) ** (1 / (count - 1)))
    found = []
    for number, gear in enumerate(ORDINALS[:count]):
        driving = round(teeth / (1 + _LOWEST * step**number))
        found.append(
            {
                "id": f"mesh-{gear}",
                "gear": gear,
                "driving": driving,
                "driven": teeth - driving,
                "loose": "output-shaft" if number < 2 else "input-shaft",
            }
        )
    return found


def _faces(count: int) -> list[dict[str, Any]]:
    """Round faces with their bolts; the joint of the case first."""
    names = ["Joint of the case", "End cover", "Gate cover", "Bearing cover"]
    found = []
    for number in range(count):
        joint = number == 0
        bolts = 12 if joint else 6
        middle = 120.0 if joint else 50.0
        land = 20.0 if joint else 16.0
        name = names[number] if number < len(names) else f"Cover {number + 1}"
        found.append(
            {
                "number": number,
                "id": "case-joint" if joint else f"cover-{number}",
                "name": name,
                "outside": 2 * middle + land,
                "inside": 2 * middle - land,
                "circle": 2 * middle,
                "holes": [list(spot) for spot in circle(middle, bolts)],
                "bolts": bolts,
            }
        )
    return found


def _output_shaft(kind: Literal["taper", "ball"]) -> dict[str, Any]:
    name = {"taper": "30205", "ball": "6305"}[kind]
    return _support(name, kind, shaft_mm=118.0, shim_mm=0.55)


def _differential() -> dict[str, Any]:
    return _support("32008", "taper", shaft_mm=86.0, shim_mm=1.2)


def _support(name: str, kind: str, *, shaft_mm: float, shim_mm: float) -> dict[str, Any]:
    """A pair of like bearings whose spans close with a shim of about this thickness."""
    sizes = bearing_sizes(name, kind)
    return {
        "bearing": name,
        "kind": kind,
        "bore": sizes["bore mm"],
        "outside": sizes["outside mm"],
        "stand": sizes["stand mm"],
        "shaft": shaft_mm,
        "case": round(shaft_mm + 2 * sizes["stand mm"] + shim_mm, 2),
    }
