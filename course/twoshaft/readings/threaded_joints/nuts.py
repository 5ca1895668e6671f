"""Shaft nuts: which way, how hard."""

from __future__ import annotations

from twoshaft.readings.threaded_joints.given import Nut
from twoshaft.readings.threaded_joints.lot import Lot, about
from twoshaft.records import extended


def draw_nut(lot: Lot) -> Nut:
    """A shaft nut with its thread and torque, and the length of the wrench."""
    stream = lot.stream.child("nut")
    pool = [f for f in lot.fastenings if f.metal is None]
    if not pool:
        raise lot.too_small("nut")
    fastening = lot.in_turn("nut", pool)[0]
    low, _, high = fastening.group.torque_nm
    return extended(
        Nut,
        about(fastening),
        torque_nm=float(round(stream.uniform(low, high))),
        length_mm=float(round(fastening.wrench.length_m * 1e3) + 20 * (stream.integer(5) - 1)),
    )
