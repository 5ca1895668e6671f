"""Figures as people write them, and figures to bring into another unit."""

from __future__ import annotations

from twoshaft.readings.course_and_safety.given import Figures, Forms, Written
from twoshaft.readings.course_and_safety.lot import Lot
from twoshaft.readings.keyed import Stream
from twoshaft.records import Option
from twoshaft.units.quantities import Q

OF_EACH = 4
READ = {
    "decimal-comma": ("{n},{d} kN", "kN", "a force"),
    "feet-first": ("{n} ft lb", "N·m", "a torque"),
    "mixed": ("{d} {part} turn", "turn", "an angle"),
    "half": ("{d}½ turn", "turn", "an angle"),
    "nought": ("0,0{n} in", "mm", "a length"),
    "no-gap": ("{n}.{d}N·m", "N·m", "a torque"),
    "micro": ("{n} um", "mm", "a length"),
    "fraction": ("{part} in", "mm", "a length"),
    "thousands": ("{d} {nnn},{d} N", "N", "a force"),
    "degrees": ("{n} deg", "°", "an angle"),
    "minus": ("-0,0{d} mm", "mm", "a length"),
    "inch-pounds": ("{nnn} lbf in", "N·m", "a torque"),
}
"""Figures that are read as they stand, by how they are written: text, unit asked for, kind in
words."""
ASKED_BACK = {
    "three-after-comma": ("{d},{nnn} mm", "mm", "a length"),
    "milli-or-metre": ("{n} mN", "N·m", "a torque"),
    "capitals": ("{n} NM", "N·m", "a torque"),
    "mil": ("{n} mil", "mm", "a length"),
    "bare": ("{d}.{n}", "mm", "a length"),
    "nano": ("{n} nm", "N·m", "a torque"),
    "dash": ("{d}'", "m", "a length"),
    "per-pound": ("{n} ft/lb", "N·m", "a torque"),
    "two-points": ("{d}.{d}.{d} mm", "mm", "a length"),
    "energy": ("{n} J", "N·m", "a torque"),
    "mass": ("{n} kg", "N", "a force"),
    "micro-what": ("{n} u", "mm", "a length"),
}
"""Figures that can be meant in two ways, or not at all."""
PARTS = ("1/16", "3/32", "1/8", "5/32", "3/16", "1/4", "3/8", "3/4")
INCHES = ("1/16", "3/32", "1/8", "5/32", "3/16", "1/4")
TURNS = ("1 1/4", "1 1/2", "1 3/4", "1 1/3", "1 2/3")


def draw_forms(lot: Lot) -> Forms:
    """Figures that can be taken and others that are asked back, as many of each."""
    stream = lot.stream.child("forms")
    picked = [*lot.next_ones("read", list(READ.items()), OF_EACH)]
    picked += lot.next_ones("asked", list(ASKED_BACK.items()), OF_EACH)
    options, written = [], {}
    for n, (way, (pattern, unit, kind)) in enumerate(stream.shuffled(picked), 1):
        text = typed(pattern, stream)
        options.append(Option(f"w{n}", f"{text}, for {kind}"))
        written[f"w{n}"] = Written(text, unit, way)
    return Forms(options=tuple(options), written=written)


def typed(pattern: str, stream: Stream) -> str:
    """A figure as somebody types it, written in one of the ways of this file."""
    return pattern.format(
        d=1 + stream.integer(9),
        n=11 + stream.integer(79),
        nnn=110 + stream.integer(880),
        part=stream.choice(PARTS),
    )


def draw_figures(lot: Lot) -> Figures:
    """A torque for another scale, a stack, two angles and an oil level."""
    stream = lot.stream.child("figures")
    torque = _torque(lot)
    (inches,) = lot.next_ones("inches", INCHES, 1)
    (turns,) = lot.next_ones("turns", TURNS, 1)
    jug = 50 * (7 + stream.integer(7))
    poured = 2 + stream.integer(2)
    oil = round(poured * jug / 1000 + 0.1 * (3 + stream.integer(6)) + 0.05, 1)
    return Figures(
        torque_nm=torque,
        shim_mm=round(0.05 * (9 + stream.integer(20)), 2),
        foil_thou=4 + stream.integer(9),
        spacer_in=inches,
        turns=turns,
        degrees=5 * (4 + stream.integer(10)),
        oil_l=oil,
        jug_ml=jug,
        jugs=poured,
    )


def _torque(lot: Lot) -> int:
    """A torque [N·m] that lies clearly nearer to one whole mark in lbf·ft than to the next."""
    stream = lot.stream.child("torque")
    while True:
        torque = 16 + stream.integer(90)
        marks = Q(torque, "N*m").to("lbf*ft").magnitude
        if abs(marks - round(marks)) < 0.3:
            return torque
