"""Checks of preload and end float: the shim and bearing models."""

from __future__ import annotations

from dataclasses import dataclass
from functools import lru_cache

from twoshaft.errors import UnitFileError
from twoshaft.models.bearing import Pair, cord_pull
from twoshaft.models.bearing.drag import Part, Turned, turned
from twoshaft.models.faults.built import AsBuilt
from twoshaft.models.faults.outcome import Sign
from twoshaft.models.shim import Stack, target_interference
from twoshaft.units.quantities import Q
from twoshaft.units.sections.bearings import Bearings, Support
from twoshaft.units.sections.faults import CordCheck
from twoshaft.units.sections.geartrain import GearTrain

_FELT_MM = 0.15
"""End float that a hand feels without a gauge: common practice, no source."""


def interference_mm(built: AsBuilt, support: Support) -> float:
    """Setting of a pair as built [mm]: the right shim meets the middle of the target.

    Examples
    --------
    >>> from twoshaft.models.faults import as_built
    >>> support = unit.bearings.support_by_id("differential")
    >>> thick = unit.faults.misbuild_by_id("diff-shim-too-thick")
    >>> for misbuilds in ([], [thick]):
    ...     print(f"{interference_mm(as_built(unit, misbuilds), support):.3f} mm")
    0.085 mm
    0.205 mm
    """
    low, high = (limit.m_as("mm") for limit in target_interference(support))
    stack = Stack.from_support(support)
    shim_mm = stack.shim_for(Q((low + high) / 2, "mm")).m_as("mm")
    off_mm = 0.0
    for change in (one for one in built.settings if one.support == support.id):
        if change.without_shim:
            shim_mm = 0.0
        elif change.shim_mm is not None:
            shim_mm += change.shim_mm
        else:
            # What stands between seat and ring closes the bearing.
            off_mm += change.ring_off_mm or 0.0
    return stack.interference(Q(max(shim_mm, 0.0), "mm")).m_as("mm") + off_mm


@dataclass(frozen=True)
class Pull:
    """What the spring scale shows, and what it should.

    Attributes
    ----------
    shown_n, alone_n : float
        What the scale shows, and what the second pair takes of it by an earlier reading [N].
    low_n, high_n : float
        Pulls at the limits of the target, without the second pair [N].
    doubt_n : float
        How far a reading may lie outside them before it says anything [N].

    Examples
    --------
    >>> Pull(shown_n=14.0, alone_n=0.0, low_n=16.0, high_n=24.0, doubt_n=0.5).verdict
    'light'
    """

    shown_n: float
    alone_n: float
    low_n: float
    high_n: float
    doubt_n: float

    @property
    def rest_n(self) -> float:
        """What is left for the pair that is judged [N]."""
        return self.shown_n - self.alone_n

    @property
    def verdict(self) -> str:
        """``light``, ``inside`` or ``heavy``."""
        if self.rest_n < self.low_n - self.doubt_n:
            return "light"
        return "heavy" if self.rest_n > self.high_n + self.doubt_n else "inside"


@lru_cache(maxsize=1024)
def pull(check: CordCheck, built: AsBuilt) -> Pull:
    """Pull on the cord, and the pulls of the target's limits.

    Where a second pair turns too, what it takes alone was read before and is taken off, with the
    ratio that the unit should have.

    Examples
    --------
    >>> from twoshaft.models.faults import as_built
    >>> found = pull(unit.faults.check_by_id("pull-output"), as_built(unit, []))
    >>> found.shown_n, round(found.low_n, 1), round(found.high_n, 1), found.verdict
    (56.0, 34.4, 78.0, 'inside')
    """
    bearings = built.unit.bearings
    support = bearings.support_by_id(check.support)
    radius, step = Q(support.cord_radius_mm, "mm"), check.resolution_n

    def pull_n(what: Turned) -> float:
        return cord_pull(what, radius).force.m_as("N")

    low, high = (
        pull_n(_turned(support, bearings, limit.m_as("mm"), check.turning))
        for limit in target_interference(support)
    )
    what = _turned(support, bearings, interference_mm(built, support), check.turning)
    doubt_n, alone_n = step / 2, 0.0
    if check.and_support:
        more = bearings.support_by_id(check.and_support)
        alone = _turned(more, bearings, interference_mm(built, more), ())
        torque_nm = alone.torque.m_as("N*m")
        ratios = (check.speed_ratio or final_drive(t) for t in (built.train, built.unit.gear_train))
        felt, reckoned = (Part(more.name, torque_nm, ratio) for ratio in ratios)
        what = Turned(what.name, (*what.parts, felt))
        alone_n = round(pull_n(Turned(more.name, (reckoned,))) / step) * step
        doubt_n = step
    return Pull(round(pull_n(what) / step) * step, alone_n, low, high, doubt_n)


def cord(check, built: AsBuilt) -> list[Sign]:
    """Pull on the cord against the pulls of the target's limits.

    Examples
    --------
    >>> from twoshaft.models.faults import as_built
    >>> thin = unit.faults.misbuild_by_id("output-shim-too-thin")
    >>> cord(unit.faults.check_by_id("pull-output"), as_built(unit, [thin]))[0].words
    'the scale shows too little'
    """
    found = pull(check, built)
    if found.verdict == "light":
        if found.rest_n < check.resolution_n:
            return [Sign(f"none-{check.id}", "the bearings turn without any pull")]
        return [Sign(f"light-{check.id}", "the scale shows too little")]
    if found.verdict == "heavy":
        return [Sign(f"heavy-{check.id}", "the scale shows too much")]
    return []


def end_float(check, built: AsBuilt) -> list[Sign]:
    """End float under the dial gauge.

    Examples
    --------
    >>> from twoshaft.models.faults import as_built
    >>> end_float(unit.faults.check_by_id("feel-float"), as_built(unit, []))
    []
    """
    support = built.unit.bearings.support_by_id(check.support)
    step = check.resolution_mm
    read = round(max(0.0, -interference_mm(built, support)) / step) * step
    low, high = (max(0.0, -limit.m_as("mm")) for limit in reversed(target_interference(support)))
    name = support.name.lower()
    if read > high + step / 2:
        if read >= _FELT_MM:
            return [Sign(f"felt-float-{support.id}", f"the {name} floats so that a hand feels it")]
        return [Sign(f"float-{support.id}", f"the {name} floats too far")]
    if read < low - step / 2:
        return [Sign(f"no-float-{support.id}", f"the {name} floats too little")]
    return []


@lru_cache(maxsize=256)
def _turned(
    support: Support, bearings: Bearings, setting_mm: float, kinds: tuple[str, ...]
) -> Turned:
    """What turns at a setting; one beyond what the bearings bear counts as that."""
    pair = Pair.from_support(support, bearings)
    limit_n = min(pair.left.capacity_n, pair.right.capacity_n)
    preload_n = min(float(pair.preload_n(setting_mm / 1e3)), limit_n)
    return turned(support, bearings, Q(preload_n, "N"), kinds)


def final_drive(train: GearTrain) -> float:
    """Turns of the pinion's shaft for one of the differential's case, whichever way round.

    Examples
    --------
    >>> round(final_drive(unit.gear_train), 3)
    4.056
    """
    mesh = train.final_mesh
    if mesh is None:
        raise UnitFileError(
            "the gear train has no final drive", mend="give the check its 'speed ratio'"
        )
    sides = (mesh.driving, mesh.driven)
    case = next(gear for gear in sides if gear.shaft == train.turned_last)
    other = next(gear for gear in sides if gear is not case)
    return case.teeth / other.teeth
