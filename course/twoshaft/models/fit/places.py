"""Pressed, pinned, sealed and staked places of a unit file, ready for the fit models."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TypeVar

from twoshaft.errors import UnitFileError
from twoshaft.models.fit.heat import Warming, warm_to_assemble
from twoshaft.models.fit.iso286 import Fit, Zone, zone
from twoshaft.models.fit.pins import SpringPin, TaperPin, fork_pin_force, pin_margin, spring_pin
from twoshaft.models.fit.press import Material, Pair, press_force, torque_capacity
from twoshaft.models.fit.seals import SealRule, Side
from twoshaft.models.fit.staking import Stake, stake_hold
from twoshaft.units.quantities import Q
from twoshaft.units.sections.fits import (
    Metal,
    PressFit,
    Seal,
    SpringPinPlace,
    StakedNut,
    TaperPinPlace,
)
from twoshaft.units.unit import Unit

Entry = TypeVar("Entry", PressFit, SpringPinPlace, TaperPinPlace, Seal, StakedNut)
_SPOKEN = {
    PressFit: "presses",
    SpringPinPlace: "spring pins",
    TaperPinPlace: "taper pins",
    Seal: "seals",
    StakedNut: "staked nuts",
}
"""The list of the section that holds such entries."""


def material(metal: Metal) -> Material:
    """Give a metal of the unit file as the models take it.

    Examples
    --------
    >>> material(unit.fits.metals[0]).name
    'Cast aluminium'
    """
    return Material(
        metal.name,
        metal.elastic_gpa * 1e9,
        metal.poisson,
        metal.expansion_um_per_m_k * 1e-6,
        metal.yield_mpa * 1e6,
    )


@dataclass(frozen=True)
class Pressed:
    """One press fit of a unit.

    Attributes
    ----------
    entry : PressFit
        Of the unit file.
    fit : Fit
        Its limits; interference is positive.
    pair : Pair

    Examples
    --------
    >>> pressed = Pressed.of(unit, "input-front-bearing")
    >>> pressed.fit.kind, f"{pressed.most:.0f}"
    ('transition', '30 micrometer')
    """

    entry: PressFit
    fit: Fit
    pair: Pair

    @classmethod
    def of(cls, unit: Unit, identifier: str) -> Pressed:
        """Take a press fit from a unit; errors as `entry_of`."""
        entry = entry_of(unit, PressFit, identifier)
        metals = {metal.id: material(metal) for metal in unit.fits.metals}
        pair = Pair(
            entry.size_mm / 1e3,
            entry.outer_mm / 1e3,
            entry.bore_mm / 1e3,
            metals[entry.hub_metal],
            metals[entry.shaft_metal],
        )
        limits = Fit(_zone(entry.size_mm, entry.hole), _zone(entry.size_mm, entry.shaft))
        return cls(entry, limits, pair)

    @property
    def least(self) -> Q:
        """Least interference, 0 where the fit can have play [um]."""
        return Q(max(self.fit.least_um, 0.0), "um")

    @property
    def most(self) -> Q:
        """Most interference, 0 where the fit never has any [um]."""
        return Q(max(self.fit.most_um, 0.0), "um")

    def force_range(self) -> tuple[Q, Q]:
        """Force to press it cold, from least fit and low friction to most and high [kN]."""
        length = Q(self.entry.length_mm, "mm")
        low, high = self.entry.friction
        return (
            press_force(self.least, self.pair, length, low),
            press_force(self.most, self.pair, length, high),
        )

    def least_torque(self) -> Q:
        """Torque that the loosest fit at low friction carries [N·m]."""
        length = Q(self.entry.length_mm, "mm")
        return torque_capacity(self.least, self.pair, length, self.entry.friction[0])

    def warming(self, interference: Q | None = None) -> Warming | None:
        """How hot the outer part must be for the tightest fit (or a measured one); None if cold."""
        if self.entry.warm == "none":
            return None
        return warm_to_assemble(
            self.most if interference is None else interference,
            Q(self.entry.size_mm, "mm"),
            Q(self.pair.hub.expansion_per_k, "1/K"),
            Q(self.entry.warmest_c, "degC"),
        )


@dataclass(frozen=True)
class PinPlace:
    """A spring pin of a unit, the force on it [kN] and its margin.

    Examples
    --------
    >>> place = pin_of(unit, "fork-pin")
    >>> f"{place.force:.2f}", place.margin > place.wanted
    ('2.00 kilonewton', True)
    """

    pin: SpringPin
    force: Q
    margin: float
    wanted: float


def pin_of(unit: Unit, identifier: str) -> PinPlace:
    """Take a spring pin from a unit; errors as `entry_of`.

    Examples
    --------
    >>> pin_of(unit, "fork-pin").pin.nominal_mm
    5
    """
    entry = entry_of(unit, SpringPinPlace, identifier)
    pin = spring_pin(Q(entry.size_mm, "mm"))
    force = fork_pin_force(Q(entry.hand_n, "N"), entry.lever_ratio)
    return PinPlace(pin, force, pin_margin(pin, force, entry.planes), entry.margin)


def taper_pin_of(unit: Unit, identifier: str) -> TaperPin:
    """Take a taper pin from a unit; errors as `entry_of`.

    Examples
    --------
    >>> taper_pin_of(unit, "gate-pin")  # doctest: +ELLIPSIS
    Traceback (most recent call last):
    twoshaft.errors.UnitFileError: ... the unit has no 'gate-pin' in taper pins; ...
    """
    entry = entry_of(unit, TaperPinPlace, identifier)
    return TaperPin(entry.size_mm / 1e3, entry.length_mm / 1e3)


def seal_of(unit: Unit, identifier: str) -> SealRule:
    """Take the rule of a seal from a unit; errors as `entry_of`.

    Examples
    --------
    >>> seal_of(unit, "input-seal").lip_towards
    <Side.OIL: 'oil'>
    """
    entry = entry_of(unit, Seal, identifier)
    return SealRule(
        Side(entry.lip_towards),
        (entry.depth_mm[0] / 1e3, entry.depth_mm[1] / 1e3),
        entry.tilt_mm / 1e3,
        entry.outer_mm / 1e3,
        entry.grease,
        entry.sleeve,
    )


def stake_of(unit: Unit, identifier: str) -> Stake:
    """Take a staked nut from a unit, staked as it should be; errors as `entry_of`.

    Examples
    --------
    >>> stake = stake_of(unit, "output-nut")
    >>> stake.first, f"{stake.holds.m_as('N*m'):.1f} N·m"
    ('shears', '22.2 N·m')
    """
    entry = entry_of(unit, StakedNut, identifier)
    return stake_hold(
        Q(entry.radius_mm, "mm"),
        Q(entry.slot_mm, "mm"),
        Q(entry.tab_mm, "mm"),
        Q(entry.depth_mm, "mm"),
        Q(entry.yield_mpa, "MPa"),
        entry.tabs,
    )


def entry_of(unit: Unit, kind: type[Entry], identifier: str) -> Entry:
    """Give an entry of the fits section, by what it is and its id.

    Raises
    ------
    UnitFileError
        If the unit has no fits, or no such entry.

    Examples
    --------
    >>> entry_of(unit, Seal, "input-seal").lip_towards
    'oil'
    """
    fits = unit.fits_if_any
    spoken = _SPOKEN[kind]
    for entry in () if fits is None else getattr(fits, spoken.replace(" ", "_")):
        if entry.id == identifier:
            return entry
    raise UnitFileError(
        f"the unit has no '{identifier}' in {spoken}",
        where=unit.where("fits"),
        mend=f"add it to {spoken} under fits",
    )


def _zone(size_mm: float, given: str | tuple[float, float]) -> Zone:
    if isinstance(given, str):
        return zone(Q(size_mm, "mm"), given)
    return Zone("given", size_mm, *given)
