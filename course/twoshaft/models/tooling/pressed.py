"""Whole rolling bearings that are pressed in cold, and the rings that the force must reach."""

from __future__ import annotations

from collections.abc import Collection
from dataclasses import dataclass

from twoshaft.models.fit import Pressed, Ring, tight_rings
from twoshaft.models.shape.schematic import shapes_of
from twoshaft.units.quantities import Q
from twoshaft.units.sections.fits import DriveOn
from twoshaft.units.sections.shapes import BearingSolid
from twoshaft.units.unit import Unit


@dataclass(frozen=True)
class PressedBearing:
    """A whole bearing that an operation presses in cold.

    Attributes
    ----------
    press : Pressed
        Its fit.
    part : str
    tight : frozenset of Ring
        The rings whose seats can grip.
    elements : str
        What rolls in it: balls, rollers or needles.

    Examples
    --------
    >>> one, = pressed_bearings(unit, ["fit-input-front-bearing"])
    >>> one.part, one.elements, f"{one.most_force:.1f}"
    ('input-front-bearing', 'rollers', '2.5 kilonewton')
    """

    press: Pressed
    part: str
    tight: frozenset[Ring]
    elements: str

    @property
    def most_force(self) -> Q:
        """The most that it takes to press it home [kN]."""
        return self.press.force_range()[1]


def pressed_bearings(unit: Unit, operations: Collection[str]) -> tuple[PressedBearing, ...]:
    """The whole bearings that some operations press in cold, of which a ring can grip.

    One whose rings come apart is pressed ring by ring and has no choice of ring; one that is
    warmed slides home by hand, and of one that the section does not show whole nothing is asked.

    Parameters
    ----------
    unit : Unit
    operations : collection of str

    Examples
    --------
    >>> [one.part for one in pressed_bearings(unit, ["fit-output-front-ring"])]
    []
    """
    fits = unit.fits_if_any
    found = []
    for entry in () if fits is None else fits.presses:
        if entry.warm != "none" or not set(entry.operations) & set(operations):
            continue
        pressed = Pressed.of(unit, entry.id)
        tight = tight_of(pressed)
        for part in entry.parts:
            if tight and (elements := _rolls(unit, part)):
                found.append(PressedBearing(pressed, part, tight, elements))
    return tuple(found)


def tight_of(pressed: Pressed) -> frozenset[Ring]:
    """The rings of a bearing whose seats can grip; its mates of the other ring are not there yet.

    Parameters
    ----------
    pressed : Pressed

    Examples
    --------
    >>> from twoshaft.models.fit import Pressed
    >>> tight_of(Pressed.of(unit, "input-front-bearing"))
    frozenset({<Ring.OUTER: 'outer'>})
    """
    on = pressed.entry.drive_on
    return tight_rings(
        inner=pressed.fit if on in (DriveOn.INNER, DriveOn.BOTH) else None,
        outer=pressed.fit if on in (DriveOn.OUTER, DriveOn.BOTH) else None,
    )


def _rolls(unit: Unit, part: str) -> str:
    """What rolls in a part that is a whole bearing; empty for all else."""
    types = {} if unit.bearings_if_any is None else {t.id: t for t in unit.bearings.types}
    for solid in shapes_of(unit).solids:
        if solid.part == part and isinstance(solid, BearingSolid) and solid.ring == "both":
            kind = types[solid.type].kind if solid.type in types else solid.elements
            words = {"ball": "balls", "needle": "needles"}
            return words.get(str(kind).rstrip("s"), "rollers")
    return ""
