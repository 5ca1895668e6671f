"""Questions about the work itself: a few scenes each, with figures of the learner's own."""

from __future__ import annotations

from twoshaft.questions import bank_of
from twoshaft.readings.keyed import Stream
from twoshaft.readings.lots import SLEEVES
from twoshaft.readings.threaded_joints.given import Asked, Hole, Thread, Turn
from twoshaft.readings.threaded_joints.lot import Lot
from twoshaft.records import Option, Scenes

BANK = bank_of("threaded-joints")
SCENES, STEPS, TURNS = 4, 8, 4
"""How many scenes are shown, how many steps of reports, and how many nuts beside the own one."""
STATES = {"as-delivered": "with its dry film", "oiled": "that is oiled", "locker": "with compound"}
"""States that a torque is stated for, in words; ids as in the unit files."""
TORQUES_NM = {"M6": (8, 11), "M8": (20, 29), "M10": (38, 51), "M12": (66, 87)}
"""Case bolts of class 8.8, least and most [N*m]; common practice, no source."""
NUT_SIZES = (16, 18, 20, 22, 24, 27, 30)
ENDS = ("seats", "locks", "bottoms")


def draw_asked(lot: Lot) -> Asked:
    """Some scenes of every question."""
    stream = lot.stream.child("asked")

    def scenes(name: str, count: int = SCENES) -> Scenes:
        return lot.scenes_asked(name, BANK, count, lambda: _figures(stream))

    return Asked(
        threads=_threads(lot, stream),
        threads_answers=BANK.lists["threads_answers"],
        holes=_holes(stream),
        holes_answers=BANK.lists["holes_answers"],
        turns=tuple(_turn(f"nut-{number}", stream) for number in range(1, TURNS + 1)),
        turns_answers=BANK.lists["turns_answers"],
        hand_start=scenes("hand_start"),
        blind_do=scenes("blind_do"),
        rounds=scenes("rounds"),
        lock=scenes("lock"),
        again=scenes("again"),
        steps=scenes("steps", STEPS),
    )


def _between(stream: Stream, low: int, high: int) -> int:
    return low + stream.integer(high - low + 1)


def _threads(lot: Lot, stream: Stream) -> tuple[Thread, ...]:
    """Threads as they were found, each with a torque that is stated for any of the states."""
    found: list[Option] = lot.next_ones("threads", BANK.lists["threads"], SCENES)
    drawn = []
    for one in found:
        stated = stream.choice(list(STATES))
        text = one.text.format(stated=STATES[stated], **_figures(stream))
        drawn.append(Thread(one.id, text, stated))
    return tuple(drawn)


def _holes(stream: Stream) -> tuple[Hole, ...]:
    """Holes in which the head seats, the liquid stops the bolt, or its tip does."""
    ends = stream.shuffled([*ENDS, stream.choice(ENDS)])
    return tuple(_hole(f"hole-{number}", end, stream) for number, end in enumerate(ends, 1))


def _hole(id: str, end: str, stream: Stream) -> Hole:
    depth, room = _between(stream, 22, 40), _between(stream, 4, 9)
    if end == "bottoms":
        return Hole(id, depth, depth + _between(stream, 1, 3), 0)
    liquid = _between(stream, 0, room - 2) if end == "seats" else room + _between(stream, 2, 8)
    return Hole(id, depth, depth - room, liquid)


def _turn(id: str, stream: Stream) -> Turn:
    hand = stream.choice(("", "-LH"))
    return Turn(
        id,
        thread=f"M{stream.choice(NUT_SIZES)}x1.5{hand}",
        torque_nm=_between(stream, 120, 200),
        undo=bool(stream.integer(2)),
        from_behind=bool(stream.integer(2)),
    )


def _figures(stream: Stream) -> dict[str, object]:
    """What scenes are filled with: lengths [mm], torques [N*m], clamps [kN], angles, counts."""
    thread = stream.choice(list(TORQUES_NM))
    bolts = stream.shuffled(range(1, 9))
    gears = [stream.choice(sleeve) for sleeve in stream.shuffled(SLEEVES)]
    low = _between(stream, 90, 130)
    top = 10 * _between(stream, 10, 20)
    return {
        "thread": thread,
        "torque": _between(stream, *TORQUES_NM[thread]),
        "nut": _between(stream, 120, 200),
        "early": _between(stream, 30, 80),
        "turns": _between(stream, 4, 9),
        "few": _between(stream, 2, 3),
        "count": _between(stream, 6, 16),
        "mm": _between(stream, 3, 9),
        "off": f"{_between(stream, 3, 19) / 10:g}",
        "deg": _between(stream, 20, 60),
        "depth": _between(stream, 22, 40),
        "minutes": _between(stream, 2, 9),
        "bar": _between(stream, 2, 6),
        "a": bolts[0],
        "b": bolts[1],
        "gear": gears[0],
        "other": gears[1],
        "low": f"{low / 10:g}",
        "high": f"{(low + _between(stream, 30, 60)) / 10:g}",
        "percent": _between(stream, 12, 30),
        "long": 5 * _between(stream, 10, 60),
        "small": top // 5,
        "top": top,
        "third": round(top / 3),
        "tenth": round(top / 10),
    }
