"""How much sealant: a bead and others beside it, and what came out at the edge of a closed face."""

from __future__ import annotations

import math

from twoshaft.errors import CourseError
from twoshaft.models.film import bead_to_film, half_round, surplus
from twoshaft.readings.keyed import Stream
from twoshaft.readings.sealant_film.given import Bead
from twoshaft.readings.sealant_film.lot import Lot, step
from twoshaft.readings.sealant_film.questions import BANK
from twoshaft.records import Scenes, changed
from twoshaft.units.quantities import Q

TRIALS = 3
STEP_MM = 0.05
CLEAR = 0.1
"""How far, as a part, a figure keeps from the limit at which a decision would flip."""


def draw_bead(lot: Lot) -> Bead:
    """A bead beside an oil gallery, its lump clearly too large or clearly not; beads in trial."""
    stream = lot.stream.child("bead")
    too_large = lot.in_turn("bead", (False, True))[0] != stream.choice((False, True))
    while True:
        bead = Bead(
            diameter_mm=step(stream, 1.2, 3.0, 0.1),
            width_mm=step(stream, 8, 14, 0.5),
            gap_mm=step(stream, 0.05, 0.12, 0.01),
            bound_mm=1.0,
            along_mm=step(stream, 60, 140, 10),
            trials_mm=(),
            does=BANK.lists["bead_does"],
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
        sizes = _trials(bead, stream)
        if all(is_clear(bead, size, CLEAR / 2) for size in sizes):
            return changed(bead, trials_mm=tuple(sizes))


def _trials(bead: Bead, stream: Stream) -> list[float]:
    """Sizes of other beads, one of them too thin."""
    fills, lumps = borders(bead)
    ranges = {
        "thin": (0.6 * fills, 0.93 * fills),
        "fits": (1.07 * fills, 0.95 * lumps),
        "fat": (1.05 * lumps, 1.4 * lumps),
    }
    others = ("thin", "fits", "fits", "fat", "fat")
    kinds = ["thin", *(stream.choice(others) for _ in range(TRIALS - 1))]
    sizes = [_to_step(stream.uniform(*ranges[kind])) for kind in kinds]
    different = len({bead.diameter_mm, *sizes}) == TRIALS + 1
    return stream.shuffled(sizes) if different else _trials(bead, stream)


def _to_step(size_mm: float) -> float:
    return round(STEP_MM * round(size_mm / STEP_MM), 2)


def borders(bead: Bead) -> tuple[float, float]:
    """The bead [mm] that just fills the gap, and the one whose lump is just small enough.

    The section of a bead, π d² / 4, fills gap times width; half of the rest lies inside, as a half
    round: d² = d₀² + 4 r².
    """
    fills = math.sqrt(4 * bead.width_mm * bead.gap_mm / math.pi)
    return fills, math.hypot(fills, 2 * bead.bound_mm)


def is_clear(bead: Bead, diameter_mm: float, by: float) -> bool:
    """Whether a bead of this size lies off both limits, by such a part of them."""
    return all(abs(part - 1) > by for part in bead_parts(bead, diameter_mm))


def trials_on(new: Bead, old: Bead) -> tuple[float, ...]:
    """The trial beads of one bead on the face of another: each does there what it did here.

    Raises
    ------
    CourseError
        When hardly any bead fills the new gap with a small enough lump.
    """
    fills, lumps = borders(new)
    was_fills, was_lumps = borders(old)
    sizes = []
    for size in old.trials_mm:
        if size < was_fills:
            size *= fills / was_fills
        elif size > was_lumps:
            size *= lumps / was_lumps
        else:
            size = fills + (size - was_fills) / (was_lumps - was_fills) * (lumps - fills)
        sizes.append(_to_step(size))
    narrow = 1.1 * fills > 0.95 * lumps
    if narrow or len(set(sizes)) < TRIALS or not all(is_clear(new, one, 0.02) for one in sizes):
        raise CourseError(
            "hardly any bead both fills this gap and keeps its lump so small",
            mend="such a face wants a film by roller; here, go on with the drawn figures",
        )
    return tuple(sizes)


def bead_parts(bead: Bead, diameter_mm: float) -> tuple[float, float]:
    """Film of a bead as a part of the gap, and its lump as a part of the largest."""
    width, gap = Q(bead.width_mm, "mm"), Q(bead.gap_mm, "mm")
    along = Q(bead.along_mm, "mm")
    film = bead_to_film(Q(diameter_mm, "mm"), width)
    lump = half_round(surplus(film, gap, width, along) / 2, along)
    return film.m_as("mm") / bead.gap_mm, lump.m_as("mm") / bead.bound_mm


def draw_edge(lot: Lot) -> Scenes:
    """What came out at the edge of some closed faces."""
    stream = lot.stream.child("edge")
    return lot.scenes_asked("edge", BANK, 4, lambda: _edge_figures(stream))


def _edge_figures(stream: Stream) -> dict[str, object]:
    """Half rounds on both sides of what is safe, and films on both sides of a gap."""
    bound, gap = step(stream, 0.6, 1.2, 0.05), step(stream, 0.06, 0.14, 0.01)
    figures = {
        "small": bound * stream.uniform(0.35, 0.8),
        "fat": bound * stream.uniform(1.25, 1.9),
        "enough": gap * stream.uniform(1.2, 1.7),
        "short": gap * stream.uniform(0.45, 0.8),
    }
    return {
        "bound": f"{bound:g}",
        "gap": f"{gap:g}",
        **{name: f"{mm:.2f}" for name, mm in figures.items()},
        "mm": 20 + 5 * stream.integer(9),
        "length": 350 + 10 * stream.integer(50),
        "minutes": 4 + stream.integer(12),
    }
