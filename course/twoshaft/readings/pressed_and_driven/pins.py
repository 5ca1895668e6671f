"""A spring pin against the force that it passes on, and a taper pin in its reamed hole."""

from __future__ import annotations

from twoshaft.models.fit import NESTED, PIN_WALL_MM, TaperPin, fork_pin_force, spring_pin
from twoshaft.readings.keyed import Stream
from twoshaft.readings.lots import TRIES
from twoshaft.readings.pressed_and_driven.given import (
    Driven,
    Ends,
    PinJoint,
    PinLoad,
    Proud,
    Spring,
    Taper,
)
from twoshaft.readings.pressed_and_driven.lot import BANK, Lot, steps_between
from twoshaft.units.quantities import Q

OTHERS, SCENES = 3, 4
LETTERS = "ABCDEF"
BOTH = ("slot", "depth")
DRIVEN = ((), ("slot",), ("depth",), BOTH, BOTH, BOTH)
"""What is wrong with the pins that somebody drove in."""
VERDICTS = ("one", "nest", "larger")
CLEAR = 0.1
"""A margin lies at least this part from what is wanted."""
SIZES_MM = (4.0, 5.0, 6.0, 8.0)
LENGTHS_MM = (24, 26, 28, 30, 32, 36, 40)
TAPER_VERDICTS = ("home", "ream", "sunk")
WINDOW_MM = (1.5, 4.0)
"""How far a pin of the practice bench may stand proud; invented."""
PROUD_MM = {"home": (2.0, 3.5), "ream": (5.5, 9.0), "sunk": (-3.0, 0.5)}


def draw_spring(lot: Lot) -> Spring:
    """A spring pin and the force that it passes on."""
    stream = lot.stream.child("spring")
    verdict = lot.in_turn("spring-verdict", VERDICTS)[0]
    for entry in lot.in_turn("spring", lot.fits.spring_pins):
        for _ in range(TRIES):
            size = stream.choice([outer for outer, _ in NESTED])
            inner = dict(NESTED)[size]
            loads = tuple(
                PinLoad(mm, spring_pin(Q(mm, "mm")).double_shear_kn) for mm in (size, inner)
            )
            hand = int(steps_between(stream, 120, 400, 10))
            ratio = steps_between(stream, 4, 16, 0.5)
            planes, margin = 1 + stream.integer(2), 2 + stream.integer(4)
            force = fork_pin_force(Q(float(hand), "N"), ratio).m_as("kN")
            bears = [load.double_shear_kn * planes / 2 for load in loads]
            if _pin_verdict(force, bears, margin) == verdict:
                return Spring(
                    name=entry.name,
                    size_mm=size,
                    inner_mm=inner,
                    loads=(loads[0], loads[1]),
                    hand_n=hand,
                    ratio=ratio,
                    planes=planes,
                    margin=margin,
                    todo=BANK.lists["spring_todo"],
                    others=tuple(_joint(stream) for _ in range(OTHERS)),
                    fitted=_driven(stream),
                    asked=tuple(stream.shuffled(BANK.lists["fitted"])),
                )
    raise lot.too_small("spring")


def _pin_verdict(force_kn: float, bears_kn: list[float], margin: int) -> str | None:
    """What the pins come to; None where a margin is near what is wanted."""
    times = [bears_kn[0] / force_kn, sum(bears_kn) / force_kn]
    if any(abs(t / margin - 1) < CLEAR for t in times) or times[0] > 4 * margin:
        return None
    if times[0] > margin:
        return "one"
    return "nest" if times[1] > margin else "larger"


def _joint(stream: Stream) -> PinJoint:
    """Another joint: the pins that its hole takes, and a force that asks for one of the three."""
    size = stream.choice([outer for outer, _ in NESTED])
    one, inner = (
        spring_pin(Q(mm, "mm")).double_shear_kn / (1 + planes)
        for planes in [stream.integer(2)]
        for mm in (size, dict(NESTED)[size])
    )
    margin, verdict = 2 + stream.integer(4), stream.choice(VERDICTS)
    low, high = {
        "one": (0.4 * one, 0.85 * one),
        "nest": (1.08 * one, min(one + 0.6 * inner, 0.95 * (one + inner))),
        "larger": (1.12 * (one + inner), 1.6 * (one + inner)),
    }[verdict]
    return PinJoint(
        round(stream.uniform(low, high) / margin, 2), margin, round(one, 2), round(inner, 2)
    )


def _driven(stream: Stream) -> tuple[Driven, ...]:
    """Pins as somebody drove them in: one right, one wrong in each way, the others in both."""
    return tuple(
        _driven_pin(stream, letter, "slot" in wrong, "depth" in wrong)
        for letter, wrong in zip(LETTERS, stream.shuffled(DRIVEN), strict=True)
    )


def _driven_pin(stream: Stream, letter: str, slot: bool, depth: bool) -> Driven:
    force = 30 * stream.integer(12)
    along = (force + 180 * stream.integer(2)) % 360
    nested = stream.integer(3) == 0
    points, inner = along, (along + 180) % 360
    if slot and nested and stream.integer(2):
        inner = along  # both weak sides together
    elif slot:
        turn = stream.choice((60, 90, 120))
        points, inner = (along + turn) % 360, (inner + turn) % 360
    ends = [round(0.5 + 0.1 * stream.integer(16), 1) for _ in range(2)]
    if depth:
        out = stream.choice((True, False))
        by = stream.uniform(1.0, 2.5) if out else stream.uniform(1.1, 1.5) * PIN_WALL_MM
        ends[stream.integer(2)] = round(-by if out else by, 1)
    return Driven(letter, force, points, ends[0], ends[1], inner if nested else None)


def draw_taper(lot: Lot) -> Taper:
    """A taper pin and its reamed hole."""
    stream = lot.stream.child("taper")
    verdict = lot.in_turn("taper-verdict", TAPER_VERDICTS)[0]
    small, length = lot.in_turn("taper", SIZES_MM)[0], stream.choice(LENGTHS_MM)
    large = TaperPin(small / 1e3, length / 1e3).large.m_as("mm")
    steps = [n for n in range(1, 100) if _inside(verdict, 50 * (large - small - n / 100))]
    hole = round(small + stream.choice(steps) / 100, 2)
    return Taper(
        small_mm=small,
        length_mm=length,
        hole_mm=hole,
        low_mm=WINDOW_MM[0],
        high_mm=WINDOW_MM[1],
        wider_mm=round(0.02 + 0.01 * stream.integer(4), 2),
        todo=BANK.lists["taper_todo"],
        others=tuple(_proud(stream) for _ in range(OTHERS)),
        strikes=BANK.lists["strikes"],
        pins=tuple(_ends(stream) for _ in range(SCENES)),
    )


def _proud(stream: Stream) -> Proud:
    """Another pin, tried by hand."""
    low = 1 + 0.5 * stream.integer(4)
    high = low + 2 + 0.5 * stream.integer(3)
    stands = {
        "home": stream.uniform(low + 0.3, high - 0.3),
        "ream": high + stream.uniform(0.5, 3),
        "sunk": low - stream.uniform(0.5, 3),
    }[stream.choice(TAPER_VERDICTS)]
    return Proud(round(stands, 1), low, high)


def _ends(stream: Stream) -> Ends:
    """A pin whose ends tell where it is to be struck, or do not."""
    small = round(stream.choice(SIZES_MM) + 0.01 * stream.integer(60), 2)
    large, insert = round(small + stream.choice(LENGTHS_MM) / 50, 2), stream.integer(2) == 0
    told = stream.choice(("left", "right", "open"))
    if told == "open":
        open_ = stream.choice(((small, None), (None, small), (small, small)))
        return Ends(*open_, insert)
    left = large if (told == "left") == insert else small
    return Ends(left, small if left == large else large, insert)


def _inside(verdict: str, proud_mm: float) -> bool:
    low, high = PROUD_MM[verdict]
    return low - 1e-6 <= proud_mm <= high + 1e-6
