"""How much sealant, and how long it takes to flow: the calculations."""

from __future__ import annotations

from twoshaft.models.film import bead_to_film, half_round, squeeze_time_strip, surplus
from twoshaft.readings.keyed import Stream
from twoshaft.readings.sealant_film.given import Bead, Change, Closing, Strip
from twoshaft.readings.sealant_film.lot import Lot, step
from twoshaft.records import changed, extended
from twoshaft.units.quantities import Q

NOZZLES_MM = (0.6, 0.8, 1.0, 1.2, 1.5, 1.8, 2.2, 2.6, 3.0)
ALONG_MM = 100.0
CLEAR = 0.1
"""How far, as a part, a figure keeps from the limit at which a decision would flip."""
CHANGES = {
    "clamp": ("clamp_kn", (1.5, 2.0, 2.5, 3.0), "{:g} times the clamp"),
    "viscosity": ("viscosity_pa_s", (0.4, 0.5, 0.6, 0.7), "{:g} times the viscosity, by warming"),
    "width": ("width_mm", (0.7, 0.8, 0.9), "{:g} times the width of the strip"),
    "end": ("end_mm", (1.2, 1.4, 1.6), "{:g} times the gap at the end"),
    "start": ("start_mm", (0.6, 0.7, 0.8), "{:g} times the film at the start"),
}
"""What may be changed of a strip: its member, by which factors, and in words."""


def draw_bead(lot: Lot) -> Bead:
    """A bead beside an oil gallery, its lump clearly too large or clearly not."""
    stream = lot.stream.child("bead")
    too_large = lot.in_turn("bead", (False, True))[0] != stream.choice((False, True))
    while True:
        bead = Bead(
            diameter_mm=step(stream, 1.2, 3.0, 0.1),
            width_mm=step(stream, 8, 14, 0.5),
            gap_mm=step(stream, 0.05, 0.12, 0.01),
            bound_mm=1.0,
            along_mm=ALONG_MM,
            nozzles_mm=NOZZLES_MM,
        )
        film, lump = bead_parts(bead, bead.diameter_mm)
        share = stream.uniform(*((1.15, 1.7) if too_large else (0.55, 0.85)))
        bound = round(20 * lump / share) / 20
        if film < 1.3 or not 0.6 <= bound <= 1.2:
            continue
        # A lump rounded to two figures decides the same way.
        if abs(lump / bound - 1) < CLEAR:
            continue
        bead = changed(bead, bound_mm=bound)
        parts = [bead_parts(bead, diameter) for diameter in NOZZLES_MM]
        fit = sum(film >= 1 and lump <= 1 for film, lump in parts)
        if 1 <= fit <= 2 and all(abs(part - 1) > CLEAR / 2 for pair in parts for part in pair):
            return bead


def bead_parts(bead: Bead, diameter_mm: float) -> tuple[float, float]:
    """Film of a bead as a part of the gap, and its lump as a part of the largest."""
    width, gap = Q(bead.width_mm, "mm"), Q(bead.gap_mm, "mm")
    along = Q(bead.along_mm, "mm")
    film = bead_to_film(Q(diameter_mm, "mm"), width)
    lump = half_round(surplus(film, gap, width, along) / 2, along)
    return film.m_as("mm") / bead.gap_mm, lump.m_as("mm") / bead.bound_mm


def draw_closing(lot: Lot) -> Closing:
    """A strip under hand-tight bolts, and changes of it, one of which clearly does most."""
    stream = lot.stream.child("closing")
    while True:
        strip = Strip(
            viscosity_pa_s=step(stream, 50, 120, 10),
            length_mm=step(stream, 400, 900, 50),
            width_mm=step(stream, 9, 15, 1),
            clamp_kn=step(stream, 0.8, 3.0, 0.2),
            start_mm=step(stream, 0.2, 0.4, 0.05),
            end_mm=step(stream, 0.04, 0.09, 0.01),
        )
        if not 3 <= _seconds(strip) <= 90:
            continue
        kinds = lot.next_ones("closing", list(CHANGES), 4)
        changes = [_change(kind, stream) for kind in kinds]
        times = sorted(_seconds(with_change(strip, change)) for change in changes)
        if times[1] > 1.15 * times[0]:
            return extended(Closing, strip, changes=tuple(stream.shuffled(changes)))


def _change(kind: str, stream: Stream) -> Change:
    name, factors, words = CHANGES[kind]
    factor = stream.choice(factors)
    return Change(kind, name, factor, words.format(factor))


def with_change(strip: Strip, change: Change) -> Strip:
    """The strip with one change made."""
    return changed(strip, **{change.name: getattr(strip, change.name) * change.factor})


def closing_time(strip: Strip) -> Q:
    """How long the strip takes to flow, by the model."""
    return squeeze_time_strip(
        viscosity=Q(strip.viscosity_pa_s, "Pa*s"),
        length=Q(strip.length_mm, "mm"),
        width=Q(strip.width_mm, "mm"),
        clamp=Q(strip.clamp_kn, "kN"),
        start=Q(strip.start_mm, "mm"),
        end=Q(strip.end_mm, "mm"),
    )


def _seconds(strip: Strip) -> float:
    return closing_time(strip).m_as("s")
