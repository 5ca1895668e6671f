"""What a section *close out* gets wrong beyond a single entry."""

from __future__ import annotations

from collections.abc import Iterator

from twoshaft.models.closeout.air import leak_rate, uncertainty_of_loss
from twoshaft.models.closeout.oil import WINTER_C, hot_grade
from twoshaft.models.viscosity import walther
from twoshaft.units.findings import Finding
from twoshaft.units.unit import Unit

OUTSIDE_MBAR, ROOM_C = 1013.25, 20.0
"""Standard atmosphere (ISO 2533) and a room in which a test is thought of."""
GUARD = 1.65
"""Standard uncertainties that a leak keeps off its limit: one wrong of twenty, ISO 14253-1 (from
memory)."""


def audit_close_out(unit: Unit) -> tuple[Finding, ...]:
    """Check that the unit's oil is what the section asks for, and that its leak test can decide.

    Parameters
    ----------
    unit : Unit

    Returns
    -------
    tuple of Finding
        Empty when nothing is wrong or the unit has no section *close out*.

    Examples
    --------
    >>> audit_close_out(unit)
    ()
    """
    if not unit.has("close_out"):
        return ()
    found = [*_oil(unit), *_leak_test(unit)]
    return tuple(Finding(unit.where("close_out", entry), what, mend) for entry, what, mend in found)


def _oil(unit: Unit) -> Iterator[tuple[str, str, str]]:
    """Entry, what is wrong, and what to do, about the oil that stands in *strip*."""
    if not unit.has("strip"):
        return
    asked, (at_40, at_100) = unit.close_out.oil, unit.strip.oil.viscosity_mm2_per_s
    winter, _, hot = asked.grade.partition("-")
    grade, flows_c = hot_grade.plain(at_100), WINTER_C[winter]
    thin = walther.plain(at_40, at_100, asked.hottest_c)
    if grade != hot:
        what = f"an oil of {at_100:g} mm²/s at 100 °C is of grade {grade}, not {hot}"
        yield "oil", what, "correct 'grade' here or 'viscosity mm2 per s' of the oil in strip"
    if flows_c > asked.coldest_c:
        what = (
            f"{winter} need not flow below {flows_c} °C, and a start is at {asked.coldest_c:g} °C"
        )
        yield "oil", what, "name a lower winter grade or a warmer start"
    if thin < asked.thinnest_mm2_per_s:
        what = (
            f"the unit's own oil has {thin:.1f} mm²/s at {asked.hottest_c:g} °C, less than the "
            f"{asked.thinnest_mm2_per_s:g} asked for"
        )
        yield "oil", what, "correct 'thinnest mm2 per s'"


def _leak_test(unit: Unit) -> Iterator[tuple[str, str, str]]:
    """The same about the leak test."""
    test, breather = unit.close_out.leak_test, unit.close_out.breather
    if test is None:
        return
    if test.pressure_mbar > breather.seal_most_mbar:
        what = "the test's pressure is above what the seals hold"
        yield "leak test", what, "lower 'pressure mbar' of the leak test"
    inside = breather.air_litre + (unit.strip.oil.capacity_litre if unit.has("strip") else 0)
    u = uncertainty_of_loss.plain(
        test.gauge_mbar, test.thermometer_k, OUTSIDE_MBAR + test.pressure_mbar, ROOM_C
    )
    band = GUARD * leak_rate.plain(u, inside, test.minutes, OUTSIDE_MBAR)
    if 2 * band > test.leak_most_ml_per_min:
        what = f"the guard band of {band:.1f} mL/min takes more than half of the leak allowed"
        yield "leak test", what, "test longer, or with a better gauge or thermometer"
