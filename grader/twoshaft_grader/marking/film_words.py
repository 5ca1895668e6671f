"""Judge a film by closing the face on it: what it is worth, where it leaks, what comes inside."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from twoshaft.jobsheet.film_entries import hole_name
from twoshaft.models.film import Closed, Pass, State, Work

ONE_LEAK, LUMP, FLOODED = 0.1, 0.75, 0.25
"""What one leak leaves when all else is well; what a lump and a flooded blind hole take off."""
_WHY = {
    State.EMPTY: "There the gap is wider than what was laid can fill.",
    State.OILY: "There is oil under the film, and sealant does not hold on oil.",
    State.DIRTY: "There is dirt under the film, and sealant does not hold on dirt.",
    State.SKINNED: "There the film was older than the sheet allows when the face came on.",
    State.AIR: "There air is shut in, and keeps the sealant away from the face.",
    State.TOO_WIDE: "There the gap is wider than this sealant bridges.",
}


@dataclass(frozen=True)
class FilmFinding:
    """What closing a face on a film shows: share of the marks, sentences, bench cost."""

    share: float
    good: bool
    sentences: tuple[str, ...]
    cost: str


def find_film(work: Work, passes: Sequence[Pass]) -> FilmFinding:
    """Close a face on a learner's passes.

    Parameters
    ----------
    work : Work
    passes : sequence of Pass

    Returns
    -------
    FilmFinding
        What is wrong comes in order of its price: leaks, lumps inside, flooded blind holes.
    """
    closed = work.close(passes)
    told = [*_leaks(closed), *_lumps(closed), *_flooded(closed)]
    if closed.leaks:
        alone = len(closed.leaks) == 1 and not (closed.endangered or closed.flooded)
        share = ONE_LEAK if alone else 0.0
    else:
        share = max(0.0, 1 - LUMP * bool(closed.endangered) - FLOODED * bool(closed.flooded))
    return FilmFinding(share, closed.good, tuple(told), _cost(closed, passes))


def _leaks(closed: Closed) -> list[str]:
    if not closed.leaks:
        return []
    names = {segment.id: segment.name for segment in closed.work.face.segments}
    place, reason = closed.leaks[0]
    more = f" and on {len(closed.leaks) - 1} more" if len(closed.leaks) > 1 else ""
    told = [f"The oil gets out on the stretch “{names[place]}”{more}.", _WHY[reason]]
    if reason is State.SKINNED:
        told[1] = (
            f"{_WHY[reason]} At the pace given it is closed at minute {closed.minute:.0f}, and the "
            f"limit is {closed.work.limit_minutes:g}."
        )
    return told


def _lumps(closed: Closed) -> list[str]:
    names = {segment.id: segment.name for segment in closed.work.face.segments}
    return [
        f"A lump of {near.lump_mm:.1f} mm comes out inside, {near.distance_mm:.0f} mm from the "
        f"{near.guide.name}, on the stretch “{names[place]}”; no more than "
        f"{near.guide.largest_lump_mm:g} mm is safe there."
        for near, place in closed.endangered
    ]


def _flooded(closed: Closed) -> list[str]:
    return [
        f"{volume:.0f} mm³ of sealant come into the blind hole of {hole_name(hole)}; it takes "
        f"{closed.work.blind_mm3:g} mm³ at most before its bolt presses on it."
        for hole, volume in closed.flooded
    ]


def _cost(closed: Closed, passes: Sequence[Pass]) -> str:
    if closed.good:
        return ""
    work = closed.work
    minutes = 2 * work.pace.wipe * work.length_mm / 100 + work.minutes_taken(passes)
    renewed = f"the face is opened, cleaned and coated again, about {minutes:.0f} minutes on top"
    if closed.endangered and not closed.leaks:
        return f"At the bench: nobody sees the lump; if it comes loose, oil stops. Else {renewed}."
    return f"At the bench: {renewed}."
