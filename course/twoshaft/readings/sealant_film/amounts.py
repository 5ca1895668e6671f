"""How much sealant: a bead and others beside it, and what came out at the edge of a closed face."""

from __future__ import annotations

import math

from twoshaft.errors import CourseError
from twoshaft.models.film import SHOWN_MM, bead_to_film, half_round, surplus
from twoshaft.readings.keyed import Stream
from twoshaft.readings.scenes import LETTERS
from twoshaft.readings.sealant_film.given import Bead, Edge, EdgeSeen
from twoshaft.readings.sealant_film.lot import Lot, step
from twoshaft.readings.sealant_film.questions import BANK
from twoshaft.records import changed
from twoshaft.units.quantities import Q

TRIALS = 3
EDGES = ((), ("bare",), ("fat",), *3 * (("bare", "fat"),))
"""What is wrong with each of the pictures of an edge."""
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


def draw_edge(lot: Lot) -> Edge:
    """Edges of closed faces: one right, one wrong in each way, the others in both."""
    stream = lot.stream.child("edge")
    return Edge(
        seen=tuple(
            _edge(stream, letter, "bare" in wrong, "fat" in wrong)
            for letter, wrong in zip(LETTERS, stream.shuffled(EDGES), strict=False)
        ),
        asked=tuple(stream.shuffled(BANK.lists["edge"])),
    )


def _edge(stream: Stream, letter: str, bare: bool, fat: bool) -> EdgeSeen:
    """What came out, on either side of what is safe; bare over a stretch or but at the bolts."""
    bound = step(stream, 0.6, 1.1, 0.05)
    high = bound * stream.uniform(*((1.3, 1.6) if fat else (0.4, 0.72)))
    start, long = 24.0 + stream.integer(50), 14.0 + stream.integer(16)
    out: tuple[tuple[float, float], ...] = ((0.0, SHOWN_MM),)
    if bare:
        apart = ((8.0, 28.0), (50.0, 70.0), (92.0, 112.0))
        out = apart if stream.integer(3) == 0 else ((0.0, start), (start + long, SHOWN_MM))
    return EdgeSeen(letter, out, round(high, 2), bound)
