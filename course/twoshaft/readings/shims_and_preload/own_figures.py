"""Figures of the stack and the cord that may come from the real bench or the maker's manual."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from twoshaft.errors import CourseError
from twoshaft.models.bearing import Pair, cord_pull, turned
from twoshaft.readings.own_figure import BenchTask, Figure
from twoshaft.readings.shims_and_preload.given import Cord, Stack
from twoshaft.readings.shims_and_preload.lot import measured, verdicts, window_of
from twoshaft.readings.shims_and_preload.stack import TABLE_MM, shims_near
from twoshaft.records import changed
from twoshaft.units.quantities import Q
from twoshaft.units.unit import Unit

WIDE = 10
"""A length is plausible so many of its tolerances, and a millimetre, from the unit's own."""
CLEAR = 0.05
"""A preload nearer than this part to a limit is decided by how the scale is read."""


def _stack_figures(unit: Unit, given: Stack) -> tuple[Figure, ...]:
    lengths = []
    for term in unit.bearings.support_by_id(given.support).stack:
        far = WIDE * term.tolerance_mm + 1
        low, high = round(max(0.0, term.nominal_mm - far), 3), round(term.nominal_mm + far, 3)
        drawn = given.lengths[term.id]
        lengths.append(Figure(term.id, term.name, "mm", low, high, drawn=drawn))
    return (
        *lengths,
        *(
            Figure(f"{end}-target", f"{word} {_kind(unit, given)} of the target", "mm", *TABLE_MM,
                   "manual limit", drawn=drawn)
            for end, word, drawn in (
                ("low", "Least", given.low_mm), ("high", "Most", given.high_mm)
            )
        ),
    )  # fmt: skip


def _kind(unit: Unit, given: Stack) -> str:
    """What the target is an amount of."""
    return unit.bearings.support_by_id(given.support).target.kind.replace("-", " ")


def _renew_stack(unit: Unit, given: Stack, own: Mapping[str, Any]) -> Stack:
    support = unit.bearings.support_by_id(given.support)
    lengths = {term: own[term] for term in given.lengths}
    low, high = own["low-target"], own["high-target"]
    _rises(low, high, _kind(unit, given))
    limits = (low, high) if support.target.kind == "preload" else (-high, -low)
    window = window_of(support, lengths, *(Q(limit, "mm") for limit in limits))
    shims = [
        shim
        for shim in shims_near(unit.bearings, support, lengths, window)
        if shim[1] > 0 and verdicts([shim[1]], window) is not None
    ]
    judged = verdicts([total for _, total in shims], window) or []
    if not judged.count("safe"):
        raise CourseError(
            "no shim of this unit's set meets that target with these lengths and their uncertainty",
            mend="measure again, or go on with the drawn figures",
        )
    if judged.count("safe") == len(judged):
        raise CourseError(
            "every shim near the target would do, so there is nothing to decide",
            mend="look at the limits again, or go on with the drawn figures",
        )
    return changed(
        given,
        rows=tuple(
            changed(row, tool="from the bench", reading=f"{lengths[term.id]:g}")
            for term, row in zip(support.stack, measured(support, lengths), strict=True)
        ),
        lengths=lengths,
        low_mm=low,
        high_mm=high,
        doubt_mm=window[2],
        shims=tuple(shim for shim, _ in shims),
        totals={shim.id: total for shim, total in shims},
    )


def _cord_figures(unit: Unit, given: Cord) -> tuple[Figure, ...]:
    return (
        Figure("pull", "Pull on the cord, turning evenly", "N", 1, 450),
        Figure("drum", "Radius of the drum that the cord is on", "mm", 5, 150,
               drawn=given.drum_mm),
        Figure("least", "Least preload", "N", 50, 20000, "manual limit", drawn=given.low_n),
        Figure("most", "Most preload", "N", 50, 20000, "manual limit", drawn=given.high_n),
    )  # fmt: skip


def _renew_cord(unit: Unit, given: Cord, own: Mapping[str, Any]) -> Cord:
    pull_n, drum = own["pull"], Q(own["drum"], "mm")
    low, high = own["least"], own["most"]
    _rises(low, high, "preload")
    support, bearings = unit.bearings.support_by_id(given.support), unit.bearings
    pair, kinds = Pair.from_support(support, bearings), given.kinds

    def off(setting_mm: float) -> float:
        force = pair.preload(Q(setting_mm, "mm"))
        return cord_pull(turned(support, bearings, force, kinds), drum).force.m_as("N") - pull_n

    if off(0.001) >= 0 or off(0.25) <= 0:
        raise CourseError(
            f"a pull of {pull_n:g} N on this drum is not one that these bearings, seals and gears "
            "can have",
            mend="look at what turns with the shaft, or go on with the drawn figures",
        )
    from scipy.optimize import brentq  # loads much of scipy, and only this needs it

    setting = float(brentq(off, 0.001, 0.25, xtol=1e-7))
    preload = pair.preload(Q(setting, "mm")).m_as("N")
    if min(abs(preload / limit - 1) for limit in (low, high)) < CLEAR:
        raise CourseError(
            "this lies so near a limit that reading the scale decides it",
            mend="read again with a finer scale, or go on with the drawn figures",
        )
    return changed(given, setting_mm=setting, drum_mm=own["drum"], low_n=low, high_n=high)


def _rises(low: float, high: float, what: str) -> None:
    if not low < high:
        raise CourseError(f"the least {what} is not below the most", mend="swap them")


BENCH = {
    "stack": BenchTask(_stack_figures, _renew_stack, also=("follow",)),
    "cord": BenchTask(_cord_figures, _renew_cord),
}
