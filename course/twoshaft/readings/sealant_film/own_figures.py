"""Gaps and times of the real bench, and what the sealant's own sheet says of open time and cure."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from twoshaft.errors import CourseError
from twoshaft.models.film import Hand, Work
from twoshaft.readings.own_figure import BenchTask
from twoshaft.readings.own_figure import PlacedFigure as Figure
from twoshaft.readings.sealant_film.amounts import bead_parts
from twoshaft.readings.sealant_film.faces import largest_gap_mm
from twoshaft.units.unit import Unit

NOT_COUNTED = ("before", "tighten")
CLEAR_MINUTES, CLEAR_HOURS, CLEAR = 0.2, 0.5, 0.02
GO_ON = "measure again, or go on with the drawn figures"


def _bead_figures(unit: Unit, given: Mapping[str, Any]) -> tuple[Figure, ...]:
    return (
        Figure("bead", ("diameter_mm",), "Diameter of the bead", "mm", 0.3, 8),
        Figure("width", ("width_mm",), "Width of the face", "mm", 2, 60),
        Figure("gap", ("gap_mm",), "Largest gap, by the feeler gauge", "mm", 0.01, 1),
        Figure("lump", ("bound_mm",), "Largest lump that the oil way bears (radius)", "mm",
               0.1, 5, "manual limit"),
    )  # fmt: skip


def _renew_bead(unit: Unit, given: dict[str, Any]) -> dict[str, Any]:
    parts = [bead_parts(given, mm) for mm in (given["diameter_mm"], *given["nozzles_mm"])]
    if any(abs(part - 1) < CLEAR for part in parts[0]):
        raise CourseError(
            "the bead lies so near a limit that the last figure of a reading decides", mend=GO_ON
        )
    fit = sum(film >= 1 and lump <= 1 for film, lump in parts[1:])
    if not fit:
        raise CourseError(
            "no bead of the list fills this gap without too large a lump",
            mend="such a face wants a film by finger; here, go on with the drawn figures",
        )
    if fit == len(parts) - 1:
        raise CourseError(
            "every bead of the list would do, so there is nothing to decide",
            mend="look at the figures again, or go on with the drawn ones",
        )
    return given


def _lay_figures(unit: Unit, given: Mapping[str, Any]) -> tuple[Figure, ...]:
    return (
        Figure("flatness", ("form", "flatness_um"), "Out of flat, feeler under a straightedge",
               "µm", 5, 200),
        Figure("close", ("pace", "close"), "From the last pass to the closed face", "min", 0.5, 60),
        Figure("open", ("minutes",), "Time that the film may lie open, by its sheet", "min",
               1, 240, "manual limit"),
    )  # fmt: skip


def _renew_lay(unit: Unit, given: dict[str, Any]) -> dict[str, Any]:
    work = Work.of(unit, given)
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
    return given | {"gap_mm": gap}


def _after_figures(unit: Unit, given: Mapping[str, Any]) -> tuple[Figure, ...]:
    return (
        Figure("closed", ("waited_hours",), "The case has been closed for", "h", 0, 500),
        Figure("cure", ("cure_hours",), "Cured at 20 °C, by its sheet, after", "h", 0.5, 168,
               "manual limit"),
    )  # fmt: skip


def _renew_after(unit: Unit, given: dict[str, Any]) -> dict[str, Any]:
    needed = given["cure_hours"] * given["cold_factor"]
    if abs(given["waited_hours"] - needed) < CLEAR_HOURS:
        raise CourseError(
            "the hours that it asks for are up within half an hour, so the clock decides",
            mend="wait a little longer at the bench; here, go on with the drawn figures",
        )
    return given


def _clock_figures(unit: Unit, given: Mapping[str, Any]) -> tuple[Figure, ...]:
    steps = (
        Figure(f"step-{n + 1}", ("rows", n, 2), words, "min", 0.1, 240)
        for n, (_, words, _) in enumerate(given["rows"])
    )
    limit = Figure("open", ("limit_minutes",), "Time that the film may lie open, by its sheet",
                   "min", 1, 240, "manual limit")  # fmt: skip
    return (*steps, limit)


def _renew_clock(unit: Unit, given: dict[str, Any]) -> dict[str, Any]:
    age = sum(minutes for key, _, minutes in given["rows"] if key not in NOT_COUNTED)
    if abs(age - given["limit_minutes"]) < CLEAR_MINUTES:
        raise CourseError(
            "the film's age lies so near its limit that the clock's reading decides it",
            mend="treat such a film as too old at the bench; here, go on with the drawn figures",
        )
    return given


BENCH = {
    "bead": BenchTask(_bead_figures, _renew_bead),
    "clock": BenchTask(_clock_figures, _renew_clock),
    "lay": BenchTask(_lay_figures, _renew_lay),
    "after": BenchTask(_after_figures, _renew_after),
}
