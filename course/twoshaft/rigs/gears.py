"""Gear-train rig: engage gears, hold a wheel, turn a shaft by hand and count the turns."""

from __future__ import annotations

import math
from collections.abc import Iterable
from fractions import Fraction
from html import escape
from typing import Any

import traitlets

from twoshaft.errors import OutOfRangeError, UnitFileError
from twoshaft.jobsheet.screen import Screen
from twoshaft.models.geartrain import (
    freedom,
    gear_turns,
    one_sleeve,
    ratio,
    turned_by_hand,
)
from twoshaft.plots.gear_section import body_name, short, train_figure
from twoshaft.units.sections.geartrain import GearTrain
from twoshaft.units.unit import Unit

DRAG_SHARE = Fraction(3, 5)
"""Part that the left wheel takes when both are free: its side drags less on this rig."""
MOST_TURNS = 400
FINE = 5
"""Steps into which a least count is cut, to bring a wheel to its mark."""


class GearRig(Screen):
    """A gear train that is turned by hand.

    Parameters
    ----------
    train : GearTrain
        The train.
    engaged : iterable of str
        Gears engaged at first.
    closed : bool
        Lid on: the train is not shown, gears cannot be chosen, and no figures are given.
    held : str
        Output held at first; empty for none.
    """

    screen = "gears"

    figure = traitlets.Unicode().tag(sync=True)
    plan = traitlets.Dict().tag(sync=True)
    view = traitlets.Dict().tag(sync=True)

    def __init__(
        self, train: GearTrain, engaged: Iterable[str] = (), closed: bool = False, held: str = ""
    ) -> None:
        self.train, self.closed = train, closed
        self.engaged: tuple[str, ...] = tuple(engaged)
        self.held = held
        self._turn: Any = 0
        self._ways: dict[tuple, dict[str, Fraction]] = {}
        self.counted = (train.input, *train.outputs)
        self._to_zero()
        super().__init__(
            figure=self._figure(),
            plan={
                "closed": closed,
                "gears": [] if closed else [[g.id, short(g.name)] for g in train.gears],
                "holds": [["", "Neither"], *([s, body_name(train, s)] for s in train.outputs)]
                if train.differential
                else [["", "Nothing"]],
                "marks": round(1 / train.least_count_turns),
                "step": train.least_count_turns,
                "fine": train.least_count_turns / FINE,
            },
            view={},
        )
        self.view = self._look("Nothing has been turned yet.")

    def hear(self, message: dict[str, Any]) -> None:
        """Turn a shaft, engage a gear, hold a wheel, or set the marks to zero."""
        self._turn = message.get("turn", self._turn)
        kind = message.get("type")
        if kind == "turn":
            happened = self._turn_by(str(message.get("shaft")), float(message.get("turns", 0)))
        elif kind == "gear" and not self.closed:
            happened = self._engage(str(message.get("gear")))
        elif kind == "hold" and message.get("shaft") in dict(self.plan["holds"]):
            self.held = message["shaft"]
            what = f"{body_name(self.train, self.held)} is held." if self.held else "Both are free."
            happened = what
            self.figure = self._figure()
        elif kind == "reset":
            self._to_zero()
            happened = "All marks are at the pointer, all strokes are wiped off."
        else:
            return
        self.view = self._look(happened)

    # ---- what happens

    def _to_zero(self) -> None:
        self.turned = dict.fromkeys(self.train.shafts, Fraction(0))
        self.wheels = {
            f"{mesh.id} {side}": 0.0 for mesh in self.train.meshes for side in ("driving", "driven")
        }

    def _engage(self, gear: str) -> str:
        """Put a gear in, or take it out; a sleeve leaves one gear for the other."""
        names = {one.id: short(one.name) for one in self.train.gears}
        if gear not in names:
            return ""
        if gear in self.engaged:
            self.engaged = tuple(one for one in self.engaged if one != gear)
            said = f"{names[gear]} is out."
        else:
            left = [one for one in self.engaged if one_sleeve(self.train, (one, gear))]
            self.engaged = (*(one for one in self.engaged if one not in left), gear)
            said = f"{names[gear]} is in."
            if left:
                said += (
                    f" One sleeve serves both, so {names[left[0]].lower()} is out: a sleeve can "
                    "be in one gear only."
                )
        self.figure = self._figure()
        return said

    def _turn_by(self, shaft: str, turns: float) -> str:
        if shaft not in self.counted or not math.isfinite(turns):
            return ""
        name = body_name(self.train, shaft)
        if shaft == self.held:
            return f"{name} is held; let it go first, or turn another shaft."
        part = Fraction(turns).limit_denominator(4000)
        if abs(self.turned[shaft] + part) > MOST_TURNS:
            return "That is enough turning; set the marks to zero."
        try:
            ways = self._way(shaft)
        except OutOfRangeError:
            return f"{name} does not move: it is locked."
        for one in self.turned:
            self.turned[one] += ways[one] * part
        for mesh in self.train.meshes:
            driving, driven = gear_turns(mesh, ways)
            self.wheels[f"{mesh.id} driving"] += float(driving * part)
            self.wheels[f"{mesh.id} driven"] += float(driven * part)
        if any(ways[one] for one in self.counted if one != shaft):
            return ""
        return f"{name} turns on its own; no other mark moves."

    def _way(self, shaft: str) -> dict[str, Fraction]:
        """What turns with one turn of a shaft, worked out once for each state."""
        held = (self.held,) if self.held else ()
        key = (frozenset(self.engaged), held, shaft)
        if key not in self._ways:
            self._ways[key] = turned_by_hand(self.train, self.engaged, held, shaft, DRAG_SHARE)
        return self._ways[key]

    # ---- what is shown

    def _freedom(self):
        return freedom(self.train, self.engaged, (self.held,) if self.held else ())

    @property
    def finding(self) -> str:
        """What is in and what can turn, as a sentence; of a closed one, only what is held."""
        if self.closed:
            held = f"the {body_name(self.train, self.held).lower()} is held"
            free = "both wheels are free" if self.train.differential else "the output shaft is free"
            return f"The unit is closed; {held if self.held else free}."
        return state_sentence(self.train, self.engaged, self.held)

    def _figure(self) -> str:
        if self.closed:
            return ""
        held = (self.held,) if self.held else ()
        return train_figure(self.train, self.engaged, held, self._freedom(), self.finding)

    def _look(self, happened: str) -> dict[str, Any]:
        marks = {
            id: [round(math.sin(2 * math.pi * angle), 4), math.cos(2 * math.pi * angle) >= 0]
            for id, angle in self.wheels.items()
        }
        return {
            "turn": self._turn,
            "finding": self.finding,
            "happened": happened,
            "engaged": list(self.engaged),
            "held": self.held,
            "wheels": {} if self.closed else marks,
            "dials": [self._dial(shaft) for shaft in self.counted],
        }

    def _dial(self, shaft: str) -> dict[str, Any]:
        turned = self.turned[shaft]
        whole = int(abs(turned) + Fraction(1, 10**6))
        return {
            "shaft": shaft,
            "name": body_name(self.train, shaft),
            "angle": round(float(turned) * 360, 2),
            "strokes": whole,
            "way": 0 if not turned else (1 if turned > 0 else -1),
            "held": shaft == self.held,
            "words": mark_words(turned, self.train.least_count_turns),
            "figure": "" if self.closed else turns_words(turned),
        }

    def plain_copy(self) -> str:
        """The train as it stands and its counts, as HTML."""
        dials = self.view["dials"]
        rows = "".join(
            f"<li><b>{escape(dial['name'])}:</b> {escape(dial['figure'] or dial['words'])}</li>"
            for dial in dials
        )
        return f"<p><b>{escape(self.finding)}</b></p>{self.figure}<ul>{rows}</ul>"


def state_sentence(train: GearTrain, engaged: Iterable[str], held: str = "") -> str:
    """What is in and what can turn, as a sentence.

    Parameters
    ----------
    train : GearTrain
    engaged : iterable of str
        Gears engaged.
    held : str
        Output held; empty for none.
    """
    engaged = list(engaged)
    names = [short(g.name) for g in train.gears if g.id in engaged]
    found = freedom(train, engaged, (held,) if held else ())
    if not engaged:
        ends = "the wheels turn" if train.differential else "the output shaft turns"
        return f"Neutral: the input shaft turns on its own, and {ends} without it."
    in_words = " and ".join(names if len(names) == 1 else [names[0], *map(str.lower, names[1:])])
    if train.input in found.locked:
        if train.differential is None:
            return f"{in_words} are in at once: input shaft and output shaft are locked."
        still = [body_name(train, s).lower() for s in train.shafts if s in found.free]
        loose = (
            f"{' and '.join(still)} still turn, against each other"
            if set(train.outputs) <= found.free
            else "nothing turns"
        )
        return f"{in_words} are in at once: input shaft and ring gear are locked; {loose}."
    total = ratio(train, engaged[0])
    way = "the same way" if total > 0 else "the other way round"
    said = (
        f"{in_words} {'is' if len(engaged) == 1 else 'have one ratio and turn together'}"
        f"{' in' if len(engaged) == 1 else ''}: {float(abs(total)):.2f} turns of the input shaft "
        f"for one turn of the {'ring gear' if train.differential else 'output shaft'}, {way}"
    )
    if train.differential is None:
        return f"{said}."
    if held:
        free = next(s for s in train.outputs if s != held)
        return f"{said}; {body_name(train, free).lower()} turns twice as far as the ring gear."
    return f"{said}; the two wheels share its turns."


def turns_words(turned: Fraction) -> str:
    """Turns as a figure, with a sign once there is one.

    Examples
    --------
    >>> turns_words(Fraction(-1, 4)), turns_words(Fraction(0))
    ('−0.25 turns', '0.00 turns')
    """
    figure = f"{float(turned):+.2f}"
    return f"{figure.lstrip('+-') if float(figure) == 0 else figure.replace('-', '−')} turns"


def mark_words(turned: Fraction, least_count: float) -> str:
    """Where a dial's mark stands and how many strokes were made, without the sum.

    Parameters
    ----------
    turned : Fraction
        Signed turns.
    least_count : float
        Turns from one graduation to the next.

    Examples
    --------
    >>> mark_words(Fraction(59, 8), 0.125)
    '7 strokes, clockwise; mark on graduation 3 of 8.'
    >>> mark_words(Fraction(-73, 100), 0.125)
    'No stroke, anticlockwise; mark between graduations 5 and 6 of 8.'
    """
    whole, rest = divmod(abs(turned) + Fraction(1, 10**6), 1)
    strokes = "No stroke" if not whole else f"{whole} stroke{'' if whole == 1 else 's'}"
    way = "clockwise" if turned > 0 else "anticlockwise" if turned else "not turned"
    marks = round(1 / least_count)
    at = float(rest) * marks
    near = round(at)
    if abs(at - near) < 0.06:
        place = f"on graduation {near % marks} of {marks}"
    else:
        place = f"between graduations {math.floor(at)} and {math.floor(at) + 1} of {marks}"
    return f"{strokes}, {way}; mark {place}."


def _train_of(unit: Unit) -> GearTrain:
    if unit.gear_train_if_any is None:
        raise UnitFileError(
            f"unit {unit.identity.id!r} has no gear train", mend="give it a section gear train"
        )
    return unit.gear_train


def gear_rig(unit: Unit, engaged: Iterable[str] = (), held: str = "") -> GearRig:
    """The open gear train of a unit, to be turned by hand.

    Parameters
    ----------
    unit : Unit
        The unit on the bench.
    engaged : iterable of str, optional
        Gears engaged at first; neutral by default.
    held : str, optional
        Output held at first.

    Returns
    -------
    GearRig
        Something a notebook displays.

    Raises
    ------
    UnitFileError
        When the unit has no gear train.
    OutOfRangeError
        A gear or shaft that the unit does not have.
    """
    train = _train_of(unit)
    freedom(train, engaged, (held,) if held else ())
    return GearRig(train, engaged, held=held)


def closed_gears(unit: Unit, total: Iterable[int]) -> GearRig:
    """A closed unit with one gear engaged, to find out which by counting.

    Parameters
    ----------
    unit : Unit
        The unit on the bench.
    total : pair of int
        Signed input turns and the ring gear's turns that go with them.

    Returns
    -------
    GearRig
        Something a notebook displays; it shows marks and strokes, no figures.

    Raises
    ------
    OutOfRangeError
        No gear of the unit turns so.
    """
    train = _train_of(unit)
    wanted = Fraction(*total)
    inside = next((g.id for g in train.gears if ratio(train, g.id) == wanted), None)
    if inside is None:
        raise OutOfRangeError("turns", str(wanted), "those of one of its gears", "the unit file")
    return GearRig(train, (inside,), closed=True)
