"""A nut that was staked, as two modules ask about it: its tab, its drag, and what is right."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any

from twoshaft.errors import CourseError
from twoshaft.models.fit import Stake, stake_hold
from twoshaft.readings.keyed import Stream
from twoshaft.readings.own_figure import BenchTask, Figure
from twoshaft.records import BenchRecord, changed
from twoshaft.units.quantities import Q
from twoshaft.units.unit import Unit

VERDICTS = ("leave", "deeper", "renew")
CLEAR, APART = 0.12, 0.05
"""How far the hold lies from what is wanted, and the two ways of giving way from each other."""
DEEPEST = 0.9
"""A tab is drawn up to this part of its slot's width deep."""


@dataclass(frozen=True)
class Staked:
    """A nut to be staked; figures as in the unit file."""

    name: str
    radius_mm: float
    slot_mm: float
    tab_mm: float
    yield_mpa: float
    drag_nm: float
    margin: float


class StakedNut(BenchRecord, frozen=True):
    """A nut that was staked.

    Attributes
    ----------
    name : str
    shear_nm : float
        The tab is sheared off at, whatever its depth.
    crush_nm_mm : float
        It is crushed at, for each millimetre of depth.
    depth_mm : float
        Depth of the tab in its slot.
    drag_nm, margin : float
        What tries to turn the nut, and how many times that the stake must hold.
    cracked : bool
        Whether the tab is cracked at its root.
    """

    name: str
    shear_nm: float
    crush_nm_mm: float
    depth_mm: float
    drag_nm: float
    margin: int | float
    cracked: bool


# For a unit without staked nuts; an invented practice bench.
PRACTICE = (
    Staked("Nut of the practice shaft", 11, 4, 3, 300, 6, 2),
    Staked("Nut of the practice hub", 14, 5, 3, 300, 10, 2),
)


def nuts_of(unit: Unit) -> list[Staked]:
    """The unit's staked nuts; those of the practice bench where it has none."""
    own = [
        Staked(
            nut.name,
            nut.radius_mm,
            nut.slot_mm,
            nut.tab_mm,
            nut.yield_mpa,
            nut.drag_nm,
            nut.margin,
        )
        for nut in (unit.fits.staked_nuts if unit.fits_if_any else ())
    ]
    return own or list(PRACTICE)


def draw_staked(nut: Staked, stream: Stream, verdict: str) -> StakedNut | None:
    """A nut that was staked, None where the draw leaves it unclear or not as the verdict says."""
    steps = round((DEEPEST * nut.slot_mm - 0.2) / 0.1)
    depth = round(0.2 + 0.1 * stream.integer(steps + 1), 6)
    drag = round(nut.drag_nm * stream.uniform(0.75, 1.25), 1)
    per_mm, stake = _stake(nut, 1.0), _stake(nut, depth)
    times = stake.holds_nm / drag / nut.margin
    if abs(times - 1) < CLEAR or abs(stake.crush_nm / stake.shear_nm - 1) < APART:
        return None
    if (times < 1) != (verdict == "deeper"):
        return None
    return StakedNut(
        name=nut.name,
        shear_nm=round(per_mm.shear_nm, 1),
        crush_nm_mm=round(per_mm.crush_nm, 1),
        depth_mm=depth,
        drag_nm=drag,
        margin=nut.margin,
        cracked=verdict == "renew",
    )


def _stake(nut: Staked, depth_mm: float) -> Stake:
    return stake_hold(
        Q(nut.radius_mm, "mm"),
        Q(nut.slot_mm, "mm"),
        Q(nut.tab_mm, "mm"),
        Q(depth_mm, "mm"),
        Q(nut.yield_mpa, "MPa"),
    )


def _figures(unit: Unit, given: StakedNut) -> tuple[Figure, ...]:
    return (
        Figure("radius", "From the shaft's axis to the mouth of the slot", "mm", 4, 40),
        Figure("slot", "Width of the slot", "mm", 1, 12),
        Figure("tab", "Length of the tab along the shaft", "mm", 0.5, 10),
        Figure("depth", "Depth of the tab in its slot", "mm", 0.05, 10, drawn=given.depth_mm),
        Figure.chosen("state", "The tab, seen through a glass",
                      [("whole", "whole"), ("cracked", "cracked at its root")]),
    )  # fmt: skip


def _renew(unit: Unit, given: StakedNut, own: Mapping[str, Any]) -> StakedNut:
    nut = next((nut for nut in nuts_of(unit) if nut.name == given.name), None)
    if nut is None:
        raise CourseError(f"the unit has no staked nut “{given.name}”")
    if own["depth"] > own["slot"]:
        raise CourseError(
            "the tab stands deeper in its slot than the slot is wide",
            mend="look for a writing mistake, or measure again",
        )
    radius, slot, tab = (own[key] for key in ("radius", "slot", "tab"))
    seen = Staked(nut.name, radius, slot, tab, nut.yield_mpa, given.drag_nm, given.margin)
    per_mm, stake = _stake(seen, 1.0), _stake(seen, own["depth"])
    times = stake.holds_nm / seen.drag_nm / seen.margin
    if abs(times - 1) < CLEAR / 4 or abs(stake.crush_nm / stake.shear_nm - 1) < APART / 4:
        raise CourseError(
            "so near its limit the reading of the depth gauge decides",
            mend="measure again, or go on with the drawn figures",
        )
    return changed(
        given,
        shear_nm=round(per_mm.shear_nm, 1),
        crush_nm_mm=round(per_mm.crush_nm, 1),
        depth_mm=own["depth"],
        cracked=own["state"] == "cracked",
    )


BENCH_STAKE = BenchTask(_figures, _renew)
"""How a task about a staked nut takes figures of one's own."""
