"""What is worked out of sizes: a circlip, a ring in its bore, needles, the seal's track."""

from __future__ import annotations

from twoshaft.models.inspect import float_with
from twoshaft.readings.inspect_and_decide.given import Clip, Found, Sat, Seal, Seats, Track
from twoshaft.readings.inspect_and_decide.lot import BANK, Lot
from twoshaft.readings.keyed import Stream

STEP_MM = 0.05
OTHERS_SET = tuple(round(1.5 + STEP_MM * k, 2) for k in range(7))
CLIPS = ("same", "thicker", "thinner", "none")


def draw_clip(lot: Lot) -> Clip:
    """A gear that needs another circlip, and gears that need one, none, or a new part."""
    stream = lot.stream.child("clip")
    (own,) = lot.next_ones("clip", lot.section.circlips, 1)
    low, high = own.float_mm
    middle = (low + high) / 2
    sizes = stream.shuffled(own.thickness_mm)
    fitted, other = sizes[0], sizes[1]
    near = round(float_with.plain(middle, other, fitted) + 0.01 * (stream.integer(3) - 1), 2)
    while near <= 0.01 or low <= near <= high:
        sizes = stream.shuffled(own.thickness_mm)
        fitted, other = sizes[0], sizes[1]
        near = round(float_with.plain(middle, other, fitted) + 0.01 * (stream.integer(3) - 1), 2)
    return Clip(
        what=own.name,
        float_mm=near,
        fitted_mm=fitted,
        allowed_mm=(low, high),
        set_mm=own.thickness_mm,
        others_set_mm=OTHERS_SET,
        others=tuple(
            _found(stream, letter, way)
            for letter, way in zip("abcd", stream.shuffled(CLIPS), strict=True)
        ),
        answers=BANK.lists["clip_do"],
    )


def _found(stream: Stream, id: str, way: str) -> Found:
    low = (6 + stream.integer(10)) / 100
    high = round(low + 0.12 + stream.integer(5) / 100, 2)
    least, most = OTHERS_SET[0], OTHERS_SET[-1]
    while True:
        fitted = stream.choice(OTHERS_SET)
        play = (1 + stream.integer(60)) / 100
        ends = [float_with.plain(play, fitted, one) for one in (most, least)]
        if way == "same":
            fits = low + 0.015 < play < high - 0.015
        elif way == "thicker":
            fits = play > high + 0.02 and ends[0] < high - 0.03
        elif way == "thinner":
            fits = play < low - 0.015 and ends[1] > low + 0.03
        else:
            fits = ends[0] > high + 0.02
        if fits:
            return Found(id, play, fitted, low, high)


def draw_seats(lot: Lot) -> Seats:
    """A ring in its bore, a gear on needles, and rings that sit, or whose ring or bore is worn."""
    stream = lot.stream.child("seats")
    (own,) = lot.next_ones("seats", lot.section.seats, 1)
    ring = round(own.ring_mm - stream.integer(10) / 1000, 3)
    loose = own.clearance_most_mm + (3 + stream.integer(25)) / 1000
    shaft = 28 + 2 * stream.integer(4) - (1 + stream.integer(9)) / 1000
    needle = 2.5 + 0.5 * stream.integer(3)
    play = (15 + stream.integer(40)) / 1000
    ways = ("use", "ring", "bore")
    return Seats(
        what=own.name,
        bores_mm=tuple(round(ring + loose + (stream.integer(7) - 3) / 1000, 3) for _ in range(3)),
        ring_mm=ring,
        gear_bore_mm=round(round(shaft, 3) + 2 * needle + play, 3),
        shaft_mm=round(shaft, 3),
        needle_mm=needle,
        others=tuple(
            _sat(stream, letter, way)
            for letter, way in zip(
                "abcd", stream.shuffled([*ways, stream.choice(ways)]), strict=True
            )
        ),
        answers=BANK.lists["seats_do"],
    )


def _sat(stream: Stream, id: str, way: str) -> Sat:
    size = 47 + 5 * stream.integer(8)
    ring_least, bore_most = size - 0.013, size + 0.015
    worn = (6 + stream.integer(40)) / 1000
    ring = ring_least - worn if way == "ring" else ring_least + stream.integer(12) / 1000
    bore = bore_most + worn if way == "bore" else bore_most - stream.integer(12) / 1000
    return Sat(id, round(ring, 3), round(bore, 3), round(ring_least, 3), round(bore_most, 3))


def draw_seal(lot: Lot) -> Seal:
    """The shaft where its seal runs, and others of the same diameter."""
    stream, track = lot.stream.child("seal"), lot.section.needed_seal()
    ways = ("lip", "sleeve", "shaft")
    mixed = stream.shuffled([*ways, stream.choice(ways)])
    return Seal(
        beside_mm=track.diameter_mm,
        groove_mm=_groove(lot, stream, stream.choice(ways), track.diameter_mm),
        others=tuple(
            _track(lot, stream, letter, way) for letter, way in zip("abcd", mixed, strict=True)
        ),
        answers=BANK.lists["seal_do"],
    )


def _track(lot: Lot, stream: Stream, id: str, way: str) -> Track:
    beside = round(lot.section.needed_seal().diameter_mm - stream.integer(4) / 100, 2)
    return Track(id, beside, _groove(lot, stream, way, beside))


def _groove(lot: Lot, stream: Stream, way: str, beside: float) -> float:
    """A diameter in the groove; each depth would be judged otherwise if it were not halved."""
    seal = lot.section.needed_seal()
    lip, sleeve = seal.groove_most_mm, seal.sleeve_most_mm
    depth = {
        "lip": lip * stream.uniform(0.6, 0.8),
        "sleeve": lip + (sleeve - lip) * stream.uniform(0.2, 0.85),
        "shaft": sleeve * stream.uniform(1.15, 1.6),
    }[way]
    return round(beside - 2 * round(depth, 2), 2)
