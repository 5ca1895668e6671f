"""Whether a face is worth coating in a task, and what of the face stands against it."""

from __future__ import annotations

import math
from itertools import pairwise

import numpy as np

from twoshaft.models.film import BESIDE_HOLE_MM, Closed, Hand, Side, State, Work
from twoshaft.units.sections.faces import CavityKind, Face

CLEAR_MINUTES = 1.5
FAT_BEAD_MM = 3.0
BEADS_MM = (0.9, 1.0)
_LEFT = {
    State.EMPTY: "open",
    State.OILY: "oily",
    State.DIRTY: "dirty",
    State.SKINNED: "with a skin",
    State.AIR: "with air shut in",
    State.TOO_WIDE: "wider open than the 'largest gap mm' of its sealant",
}


def not_worth_laying(work: Work, by_roller: bool) -> str:
    """Why a face gives no task: what fails, with the field and the figure; empty if it gives one.

    Time has to decide as wished, and two sizes have to work while wiping and size still matter.

    Parameters
    ----------
    work : Work
    by_roller : bool
        Whether a film by roller has to be in time, or clearly not and a bead has to do.
    """
    film = work.everywhere(Hand.FILM, 0.1)
    bead = work.everywhere(Hand.BEAD, 1.0, Side.INSIDE)
    spare = work.limit_minutes - work.minutes_taken(film)
    if (spare > 0) != by_roller or abs(spare) < CLEAR_MINUTES:
        return _late("a film", work, spare)
    spare = work.limit_minutes - work.minutes_taken(bead)
    if spare < CLEAR_MINUTES:
        return _late("a bead", work, spare)
    least = math.ceil(112 * max(work.gap_mm.values())) / 100
    hand = Hand.FILM if by_roller else Hand.BEAD
    side = Side.MIDDLE if by_roller else Side.INSIDE
    sizes = (least, 1.2 * least) if by_roller else BEADS_MM
    for size in sizes:
        closed = work.close([*work.wiping, *work.everywhere(hand, size, side)])
        if not closed.good:
            return _bad(closed, hand, size)
    unwiped = work.close(work.everywhere(hand, sizes[0], side))
    if not unwiped.leaks:
        return "a spot that nobody wipes off harms nothing there"
    fat = work.close([*work.wiping, *work.everywhere(Hand.BEAD, FAT_BEAD_MM)])
    if not fat.endangered:
        return (
            f"a bead of {FAT_BEAD_MM:g} mm puts no entry of 'guides' in danger; one of them takes "
            "a place nearer to the face, or a larger 'reach mm'"
        )
    return ""


def _late(what: str, work: Work, spare: float) -> str:
    took = work.limit_minutes - spare
    return (
        f"{what} along its 'segments' takes {took:.0f} minutes of the {work.limit_minutes:.0f} "
        "that the task gives, whatever the 'open minutes' of its sealant"
    )


def _bad(closed: Closed, hand: Hand, size: float) -> str:
    """What a film or bead that should do does not."""
    name = f"a film of {size:.2f} mm" if hand is Hand.FILM else "a bead of 0.9 to 1 mm"
    if closed.leaks:
        stretch, state = closed.leaks[0]
        narrow = _narrowest(closed.work.face) if hand is Hand.BEAD else None
        lost = closed.seal.film.lost_m3 / closed.seal.film.laid_m3
        if narrow and lost > 0:
            hole, there, taken = narrow
            return (
                f"{name} on the oil side of its bolts falls off the face in part and leaves the "
                f"stretch {stretch!r} {_LEFT[state]}; from the middle of the hole {hole!r} to the "
                f"nearest of its 'cavities' are {there:.1f} mm, and the bead takes {taken:.1f} mm"
            )
        return f"{name} leaves the stretch {stretch!r} {_LEFT[state]}"
    if closed.endangered:
        near, stretch = closed.endangered[0]
        return (
            f"{name} already puts {near.guide.id!r} of its 'guides' in danger from {stretch!r}; "
            "its 'reach mm' is large, or the face narrow there"
        )
    return f"{name} already floods a blind hole"


def _narrowest(face: Face) -> tuple[str, float, float] | None:
    """The hole that lies nearest to the oil for a bead to pass it: id, how far from the oil its
    middle lies, and how far it takes [mm]; None where a bead passes them all.
    """
    rooms = [one.outline for one in face.cavities if one.kind is CavityKind.OIL]
    found = []
    for hole in face.holes if rooms else ():
        there = min(_away(outline, (hole.x_mm, hole.y_mm)) for outline in rooms)
        found.append((hole.id, there, hole.diameter_mm / 2 + BESIDE_HOLE_MM + BEADS_MM[-1] / 2))
    worst = min(found, key=lambda one: one[1] - one[2], default=None)
    return worst if worst and worst[1] < worst[2] else None


def _away(outline: tuple[tuple[float, float], ...], point: tuple[float, float]) -> float:
    """Distance from a point to a closed line [mm]."""
    at, ring = np.asarray(point), np.asarray([*outline, outline[0]], dtype=float)
    found = []
    for start, end in pairwise(ring):
        along = end - start
        share = np.clip((at - start) @ along / max(float(along @ along), 1e-12), 0, 1)
        found.append(float(np.hypot(*(start + share * along - at))))
    return min(found)
