"""Gaps and times of the real bench, and what the sealant's own sheet says of open time and cure."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from twoshaft.errors import CourseError
from twoshaft.models.film import Hand, Work
from twoshaft.readings.own_figure import BenchTask, Figure
from twoshaft.readings.sealant_film.amounts import is_clear, trials_on
from twoshaft.readings.sealant_film.faces import largest_gap_mm
from twoshaft.readings.sealant_film.given import After, Bead, Clock, Lay
from twoshaft.readings.sealant_film.questions import SOON_HOURS
from twoshaft.records import changed
from twoshaft.units.unit import Unit

Own = Mapping[str, Any]
CLEAR_MINUTES, CLEAR_HOURS, CLEAR = 0.2, 0.5, 0.02
GO_ON = "measure again, or go on with the drawn figures"


def _bead_figures(unit: Unit, given: Bead) -> tuple[Figure, ...]:
    return (
        Figure("bead", "Diameter of the bead", "mm", 0.3, 8, drawn=given.diameter_mm),
        Figure("width", "Width of the face", "mm", 2, 60, drawn=given.width_mm),
        Figure("gap", "Largest gap, by the feeler gauge", "mm", 0.01, 1, drawn=given.gap_mm),
        Figure("lump", "Largest lump allowed at the oil gallery (radius)", "mm", 0.1, 5,
               "manual limit", drawn=given.bound_mm),
    )  # fmt: skip


def _renew_bead(unit: Unit, given: Bead, own: Own) -> Bead:
    bead = changed(
        given,
        diameter_mm=own["bead"],
        width_mm=own["width"],
        gap_mm=own["gap"],
        bound_mm=own["lump"],
    )
    if not is_clear(bead, bead.diameter_mm, CLEAR):
        raise CourseError(
            "the bead lies so near a limit that the last figure of a reading decides", mend=GO_ON
        )
    return changed(bead, trials_mm=trials_on(bead, given))


def _lay_figures(unit: Unit, given: Lay) -> tuple[Figure, ...]:
    return (
        Figure("flatness", "Out of flat, feeler under a straightedge", "µm", 5, 200,
               drawn=given.form.flatness_um),
        Figure("close", "From the last pass to the closed face", "min", 0.5, 60,
               drawn=given.pace.close),
        Figure("open", "Time that the film may lie open, by its sheet", "min", 1, 240,
               "manual limit", drawn=given.minutes),
    )  # fmt: skip


def _renew_lay(unit: Unit, given: Lay, own: Own) -> Lay:
    lay = changed(
        given,
        form=changed(given.form, flatness_um=own["flatness"]),
        minutes=own["open"],
        pace=changed(given.pace, close=own["close"]),
    )
    work = Work.of(unit, lay.job)
    gap = largest_gap_mm(work)
    taken = [work.minutes_taken(work.everywhere(hand, 1.0)) for hand in (Hand.FILM, Hand.BEAD)]
    if min(abs(work.limit_minutes - minutes) for minutes in taken) < CLEAR_MINUTES:
        raise CourseError("the film is closed so near its limit that the clock decides", mend=GO_ON)
    if work.good_passes() is None:
        raise CourseError(
            f"with a gap of {gap:g} mm and this time no film or bead seals without too large a "
            "lump",
            mend="at the bench the face is trued or another sealant taken; here, go on with the "
            "drawn figures",
        )
    return changed(lay, gap_mm=gap)


def _after_figures(unit: Unit, given: After) -> tuple[Figure, ...]:
    return (
        Figure("closed", "The case has been closed for", "h", 0, 500, drawn=given.waited_hours),
        Figure("cure", "Cured at 20 °C, by its sheet, after", "h", 0.5, 168, "manual limit",
               drawn=given.cure_hours),
    )  # fmt: skip


def _renew_after(unit: Unit, given: After, own: Own) -> After:
    after = changed(given, waited_hours=own["closed"], cure_hours=own["cure"])
    left = after.needed_hours - after.waited_hours
    if min(abs(left), abs(left - SOON_HOURS)) < CLEAR_HOURS:
        raise CourseError(
            "the hours still to wait lie within half an hour of a limit, so the clock decides",
            mend="wait a little longer at the bench; here, go on with the drawn figures",
        )
    return after


def _clock_figures(unit: Unit, given: Clock) -> tuple[Figure, ...]:
    steps = (
        Figure(f"step-{n}", step.text, "min", 0.1, 240, drawn=step.minutes)
        for n, step in enumerate(given.rows, 1)
    )
    limit = Figure("open", "Time that the film may lie open, by its sheet", "min", 1, 240,
                   "manual limit", drawn=given.limit_minutes)  # fmt: skip
    return (*steps, limit)


def _renew_clock(unit: Unit, given: Clock, own: Own) -> Clock:
    rows = (changed(step, minutes=own[f"step-{n}"]) for n, step in enumerate(given.rows, 1))
    clock = changed(given, limit_minutes=own["open"], rows=tuple(rows))
    if abs(clock.age_minutes - clock.limit_minutes) < CLEAR_MINUTES:
        raise CourseError(
            "the film's age lies so near its limit that the clock's reading decides it",
            mend="treat such a film as too old at the bench; here, go on with the drawn figures",
        )
    return clock


BENCH = {
    "bead": BenchTask(_bead_figures, _renew_bead),
    "clock": BenchTask(_clock_figures, _renew_clock),
    "lay": BenchTask(_lay_figures, _renew_lay),
    "after": BenchTask(_after_figures, _renew_after),
}
