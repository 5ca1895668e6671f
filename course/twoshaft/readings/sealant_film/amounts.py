"""How much sealant, and how long it takes to flow: the calculations."""

from __future__ import annotations

from twoshaft.models.film import bead_to_film, half_round, squeeze_time_strip, surplus
from twoshaft.readings.keyed import Stream
from twoshaft.readings.sealant_film.lot import Lot, step
from twoshaft.units.quantities import Q

NOZZLES_MM = (0.6, 0.8, 1.0, 1.2, 1.5, 1.8, 2.2, 2.6, 3.0)
ALONG_MM = 100.0
CLEAR = 0.1
"""How far, as a part, a figure keeps from the limit at which a decision would flip."""
CHANGES = {
    "clamp": ["clamp_kn", (1.5, 2.0, 2.5, 3.0), "{:g} times the clamp"],
    "viscosity": ["viscosity_pa_s", (0.4, 0.5, 0.6, 0.7), "{:g} times the viscosity, by warming"],
    "width": ["width_mm", (0.7, 0.8, 0.9), "{:g} times the width of the strip"],
    "end": ["end_mm", (1.2, 1.4, 1.6), "{:g} times the gap at the end"],
    "start": ["start_mm", (0.6, 0.7, 0.8), "{:g} times the film at the start"],
}


def draw_bead(lot: Lot) -> dict:
    """A bead beside an oil way: sizes, ``bound_mm`` (the largest lump) and ``nozzles_mm``."""
    stream = lot.stream.child("bead")
    too_large = lot.in_turn("bead", (False, True))[0] != stream.choice((False, True))
    while True:
        given = {
            "diameter_mm": step(stream, 1.2, 3.0, 0.1),
            "width_mm": step(stream, 8, 14, 0.5),
            "gap_mm": step(stream, 0.05, 0.12, 0.01),
            "bound_mm": 1.0,
            "along_mm": ALONG_MM,
            "nozzles_mm": list(NOZZLES_MM),
        }
        film, lump = bead_parts(given, given["diameter_mm"])
        share = stream.uniform(*((1.15, 1.7) if too_large else (0.55, 0.85)))
        given["bound_mm"] = round(20 * lump / share) / 20
        if film < 1.3 or not 0.6 <= given["bound_mm"] <= 1.2:
            continue
        # A lump rounded to two figures decides the same way.
        if abs(lump / given["bound_mm"] - 1) < CLEAR:
            continue
        parts = [bead_parts(given, diameter) for diameter in NOZZLES_MM]
        fit = sum(film >= 1 and lump <= 1 for film, lump in parts)
        if 1 <= fit <= 2 and all(abs(part - 1) > CLEAR / 2 for pair in parts for part in pair):
            return given


def bead_parts(given: dict, diameter_mm: float) -> tuple[float, float]:
    """Film of a bead as a part of the gap, and its lump as a part of the largest."""
    width, gap = Q(given["width_mm"], "mm"), Q(given["gap_mm"], "mm")
    along = Q(given["along_mm"], "mm")
    film = bead_to_film(Q(diameter_mm, "mm"), width)
    lump = half_round(surplus(film, gap, width, along) / 2, along)
    return film.m_as("mm") / given["gap_mm"], lump.m_as("mm") / given["bound_mm"]


def draw_closing(lot: Lot) -> dict:
    """A strip under hand-tight bolts, and changes of it, by key with what they change."""
    stream = lot.stream.child("closing")
    while True:
        given = {
            "viscosity_pa_s": step(stream, 50, 120, 10),
            "length_mm": step(stream, 400, 900, 50),
            "width_mm": step(stream, 9, 15, 1),
            "clamp_kn": step(stream, 0.8, 3.0, 0.2),
            "start_mm": step(stream, 0.2, 0.4, 0.05),
            "end_mm": step(stream, 0.04, 0.09, 0.01),
        }
        if not 3 <= _seconds(given) <= 90:
            continue
        kinds = lot.next_ones("closing", list(CHANGES), 4)
        changes = [_change(kind, stream) for kind in kinds]
        times = sorted(_seconds(changed(given, change)) for change in changes)
        if times[1] > 1.15 * times[0]:
            return {**given, "changes": stream.shuffled(changes)}


def _change(kind: str, stream: Stream) -> dict:
    name, factors, words = CHANGES[kind]
    factor = stream.choice(factors)
    return {"key": kind, "name": name, "factor": factor, "words": words.format(factor)}


def changed(given: dict, change: dict) -> dict:
    """The strip with one change made."""
    return {**given, change["name"]: given[change["name"]] * change["factor"]}


def strip(given: dict) -> dict[str, Q]:
    """The strip as the model takes it."""
    return {
        "viscosity": Q(given["viscosity_pa_s"], "Pa*s"),
        "length": Q(given["length_mm"], "mm"),
        "width": Q(given["width_mm"], "mm"),
        "clamp": Q(given["clamp_kn"], "kN"),
        "start": Q(given["start_mm"], "mm"),
        "end": Q(given["end_mm"], "mm"),
    }


def _seconds(given: dict) -> float:
    return squeeze_time_strip(**strip(given)).m_as("s")
