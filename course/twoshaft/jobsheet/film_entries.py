"""The answer kind film: passes as short texts, what the pad shows of a face, and words.

An entry is one of ``film 0.12 middle from-1-to-2``, ``bead 1.5 round bolt-4``,
``wipe middle from-3-to-4`` or, for a free line, ``bead 1.5 at 12.5,30 14,42``.
"""

from __future__ import annotations

import re
from typing import Any

import numpy as np

from twoshaft.errors import AnswerError
from twoshaft.models.film import Hand, Pass, Side, Work, line_mm
from twoshaft.units.sections.faces import Face

MAX_ENTRIES, MAX_POINTS = 120, 40
SIZES_MM = {Hand.FILM: (0.01, 3.0), Hand.BEAD: (0.5, 8.0)}
"""Smallest and largest that a roller or a nozzle lays."""
HANDS = {
    Hand.FILM: "film by roller",
    Hand.BEAD: "bead from the nozzle",
    Hand.WIPE: "wipe with solvent and a clean cloth",
}
SIDES = {
    Side.MIDDLE: "along the middle of the face",
    Side.INSIDE: "on the oil side of the bolts",
    Side.OUTSIDE: "on the outer side of the bolts",
    Side.ROUND: "round the hole",
    Side.FREE: "along a line of your own",
}
SPOTS = {"oil": "oil on the face", "dirt": "dirt on the face"}
_NUMBER = r"-?\d{1,4}(?:\.\d{1,3})?"
_ENTRY = re.compile(
    rf"(?:(?P<hand>film|bead) (?P<size>\d{{1,2}}(?:\.\d{{1,3}})?)|(?P<wipe>wipe)) "
    rf"(?:(?P<side>middle|inside|outside|round) (?P<place>[a-z0-9-]{{1,64}})"
    rf"|at (?P<points>{_NUMBER},{_NUMBER}(?: {_NUMBER},{_NUMBER})*))",
    re.ASCII,
)


def read_entry(entry: Any, face: Face) -> Pass:
    """One stored entry as a pass.

    Raises
    ------
    AnswerError
        When it is none, names a place that the face lacks, or has a size no hand lays.
    """
    found = _ENTRY.fullmatch(entry) if isinstance(entry, str) and len(entry) <= 1000 else None
    if not found:
        raise AnswerError("read an entry that is no pass", mend="take it out and lay it again")
    hand = Hand(found["hand"] or found["wipe"])
    size = float(found["size"] or 0)
    if hand in SIZES_MM:
        low, high = SIZES_MM[hand]
        if not low <= size <= high:
            raise AnswerError(
                f"read a {HANDS[hand]} of {size:g} mm", mend=f"give {low:g} to {high:g} mm"
            )
    if found["points"]:
        return Pass(hand, size, Side.FREE, points=_points(found["points"], face))
    side, place = Side(found["side"]), found["place"]
    places = face.holes if side is Side.ROUND else face.segments
    if place not in {entry.id for entry in places}:
        raise AnswerError(f"read the place “{place}”, which this face does not have")
    return Pass(hand, size, side, place)


def read_entries(entries: Any, face: Face) -> tuple[Pass, ...]:
    """Stored entries as passes; AnswerError as for `read_entry`, or for too many."""
    if not isinstance(entries, list | tuple):
        raise AnswerError("read something that is not a list of passes")
    if len(entries) > MAX_ENTRIES:
        raise AnswerError(
            f"read {len(entries)} passes, more than {MAX_ENTRIES}", mend="take some out"
        )
    return tuple(read_entry(entry, face) for entry in entries)


def entry_words(done: Pass, face: Face) -> str:
    """A pass as a person would say it."""
    size = "" if done.hand is Hand.WIPE else f" {done.size_mm:g} mm"
    places = {entry.id: entry.name for entry in face.segments}
    places |= {hole.id: hole_name(hole.id) for hole in face.holes}
    place = f", {places[done.place]}" if done.place else ""
    return f"{HANDS[done.hand]}{size}{place}, {SIDES[done.side]}"


def hole_name(id: str) -> str:
    """A hole's id as a person would say it."""
    return id.replace("-", " ")


def face_picture(work: Work) -> dict[str, Any]:
    """What a pad draws of a face: outlines, holes, guides, stretches, spots, words.

    All lengths in millimetres. Nothing in it says whether a film seals.
    """
    face = work.face
    sides = (Side.MIDDLE, Side.INSIDE, Side.OUTSIDE)
    return {
        "name": face.name,
        "outline": _rounded(face.outline),
        "cavities": [[c.kind.value, _rounded(c.outline)] for c in face.cavities],
        "islands": [_rounded(island) for island in face.islands],
        "holes": [
            {
                "id": hole.id,
                "name": hole_name(hole.id),
                "x": hole.x_mm,
                "y": hole.y_mm,
                "d": hole.diameter_mm,
                "leads": "blind" if hole.blind else "to the outside" if hole.open else "",
                "ring": _rounded(line_mm(face, Pass(Hand.BEAD, 1.0, Side.ROUND, hole.id))),
            }
            for hole in face.holes
        ],
        "guides": [
            {
                "name": guide.name,
                "x": guide.x_mm,
                "y": guide.y_mm,
                "reach": guide.reach_mm,
                "lump": guide.largest_lump_mm,
            }
            for guide in face.guides
        ],
        "stretches": [
            {
                "id": segment.id,
                "name": segment.name,
                "lines": {
                    side.value: _rounded(line_mm(face, Pass(Hand.BEAD, 1.0, side, segment.id)))
                    for side in sides
                },
            }
            for segment in face.segments
        ],
        "spots": [
            {"word": SPOTS[spot.what], "points": _rounded(spot.points), "width": spot.width_mm}
            for spot in work.spots
        ],
        "width": face.film_width_mm,
        "hands": {hand.value: words for hand, words in HANDS.items()},
        "sides": {side.value: words for side, words in SIDES.items()},
        "sizes": {hand.value: list(span) for hand, span in SIZES_MM.items()},
        "most": MAX_ENTRIES,
        "points": MAX_POINTS,
    }


def _points(text: str, face: Face) -> tuple[tuple[float, float], ...]:
    pairs = (pair.partition(",") for pair in text.split(" "))
    points = tuple((float(x), float(y)) for x, _, y in pairs)
    if len(points) > MAX_POINTS:
        raise AnswerError(f"read a line of {len(points)} points, more than {MAX_POINTS}")
    low, high = np.min(face.outline, axis=0) - 30, np.max(face.outline, axis=0) + 30
    if not all((low <= p).all() and (p <= high).all() for p in np.asarray(points)):
        raise AnswerError("read a line that runs off the bench", mend="draw it on the face")
    return points


def _rounded(points: Any) -> list[list[float]]:
    return [[round(float(x), 1), round(float(y), 1)] for x, y in points]
