"""A pair in trial: how far its shaft goes under a dial indicator, and what the dial then says.

The shaft is pushed and pulled by hand. A loose pair lets it go by its end float; a preloaded one
yields only as springs do. Rollers that have not been turned home hide part of the float.

Sources: balance of the two springs (see pair); seating (see seating). That a plunger follows only
while it is pressed in is the plain working of the instrument.
"""

from __future__ import annotations

from dataclasses import dataclass

from twoshaft.models.bearing.geometry import Rollers
from twoshaft.models.bearing.heat import Warm, support_change
from twoshaft.models.bearing.pair import Pair
from twoshaft.models.bearing.seating import unseated
from twoshaft.models.border import Range, border
from twoshaft.models.shim.stack import Stack
from twoshaft.units.quantities import Q
from twoshaft.units.sections.bearings import Bearings, Support

_DIAL = "an end-play check by hand"


@dataclass(frozen=True)
class Trial:
    """A pair with a shim in, as it stands now.

    Attributes
    ----------
    setting : pint.Quantity
        True interference, rollers home [mm]; end play is below zero.
    shown : pint.Quantity
        Interference that the pair seems to have [mm]: the same once the rollers are home.
    travel : pint.Quantity
        How far the shaft goes between push and pull [mm].
    torque_share : float
        Part of the bearings' true turning torque that a cord feels, 0 to 1.

    Examples
    --------
    >>> support = unit.bearings.support_by_id("differential")
    >>> trial = try_shim(support, unit.bearings, Q(0.9, "mm"))
    >>> f"{trial.setting:.3f}", f"{trial.travel:.2f}"
    ('-0.180 millimeter', '0.18 millimeter')
    """

    setting: Q
    shown: Q
    travel: Q
    torque_share: float


@border(
    warmth=Range("warmth", "", 0.0, 1.0, _DIAL),
    push=Range("hand load", "N", 1.0, 1000.0, _DIAL),
)
def try_shim(
    support: Support,
    bearings: Bearings,
    shim: Q,
    *,
    measured: dict[str, Q] | None = None,
    warmth: float = 0.0,
    off_rib: Q | None = None,
    turns: float = 0.0,
    push_n: float = 50.0,
) -> Trial:
    """Put a shim into a support and look at the pair.

    Parameters
    ----------
    support : Support
    bearings : Bearings
    shim : pint.Quantity
        Total thickness, 0 to 50 mm.
    measured : dict of str to pint.Quantity, optional
        True lengths [mm] by term id; nominal where absent.
    warmth : float
        0 at the bench temperature to 1 at the support's running temperature.
    off_rib : pint.Quantity, optional
        How far the rollers of each bearing stand off the rib before the first turn, 0 to 1 mm;
        seated if absent. Balls are always seated.
    turns : float
        Turns under hand load since then.
    push : pint.Quantity, optional
        Hand load each way, 1 to 1000 N; 50 N if absent.

    Examples
    --------
    >>> support = unit.bearings.support_by_id("differential")
    >>> thin, thick = (try_shim(support, unit.bearings, Q(mm, "mm")) for mm in (0.9, 1.0))
    >>> f"{thick.setting - thin.setting:.2f}"  # behind an outer ring a thicker one tightens
    '0.10 millimeter'
    """
    pair = Pair.from_support(support, bearings)
    setting_mm = Stack.from_support(support, measured).interference(shim).m_as("mm")
    rises = {part: warmth * rise for part, rise in support.running.model_dump().items()}
    setting_mm += support_change(support, bearings, Warm(**rises), shim).total.m_as("mm")
    proud_mm, felt = 0.0, 1.0
    for row in (pair.left, pair.right):
        if off_rib is not None and isinstance(row, Rollers):
            state = unseated(row, off_rib, turns)
            proud_mm += state.stands_proud.m_as("mm")
            felt = min(felt, state.torque_share)
    shown_mm = setting_mm + proud_mm
    give_mm = sum(_give_m(pair, shown_mm / 1e3, way * push_n) for way in (-1, 1)) * 1e3
    travel_mm = max(0.0, -shown_mm) + give_mm
    return Trial(Q(setting_mm, "mm"), Q(shown_mm, "mm"), Q(travel_mm, "mm"), felt)


@border(
    travel=Range("travel of the shaft", "mm", 0.0, 10.0, _DIAL),
    plunger=Range("plunger preload", "mm", 0.0, 10.0, _DIAL),
)
def dial_readings(travel_mm: float, plunger_mm: float) -> tuple[Q, Q]:
    """Readings of a dial indicator with the shaft away from it and towards it [mm].

    Parameters
    ----------
    travel : pint.Quantity
        How far the shaft goes between its ends, 0 to 10 mm.
    plunger : pint.Quantity
        How far the plunger is pressed in with the shaft midway, 0 to 10 mm. Pressed in by less
        than half the travel it leaves the shaft, and the total reading comes out short.

    Examples
    --------
    >>> away, towards = dial_readings(Q(0.10, "mm"), Q(0.50, "mm"))
    >>> f"{away:.2f}", f"{towards:.2f}"
    ('0.45 millimeter', '0.55 millimeter')
    """
    half_mm = travel_mm / 2
    return Q(max(0.0, plunger_mm - half_mm), "mm"), Q(plunger_mm + half_mm, "mm")


def _give_m(pair: Pair, setting_m: float, load_n: float) -> float:
    """How far the loaded side yields beyond its preload [m]."""
    still_n = float(pair.preload_n(setting_m))
    left_n, right_n = (float(load) for load in pair.loads_n(setting_m, load_n))
    row, loaded_n = (pair.right, right_n) if load_n > 0 else (pair.left, left_n)
    rows_m = row.axial_displacement_m(loaded_n) - row.axial_displacement_m(still_n)
    return rows_m + (loaded_n - still_n) / (2 * pair.case_n_per_m)
