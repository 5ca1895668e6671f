"""Figures as people write them, and figures to bring into another unit."""

from __future__ import annotations

from twoshaft.readings.course_and_safety.given import Figures, Forms, Written
from twoshaft.readings.course_and_safety.lot import Lot
from twoshaft.records import Option
from twoshaft.units.quantities import Q

OF_EACH = 4
READ = (
    ("18,5 kN", "kN", "a force"),
    ("13 ft lb", "N·m", "a torque"),
    ("1 1/4 turn", "turn", "an angle"),
    ("½ turn", "turn", "an angle"),
    ("0,049 in", "mm", "a length"),
    ("12.5N·m", "N·m", "a torque"),
    ("40 um", "mm", "a length"),
    ("1/16 in", "mm", "a length"),
    ("1 234,5 N", "N", "a force"),
    ("90 deg", "°", "an angle"),
    ("-0,05 mm", "mm", "a length"),
    ("250 lbf in", "N·m", "a torque"),
)
"""Figures that are read as they stand: text, unit asked for, kind in words."""
ASKED_BACK = (
    ("1,234 mm", "mm", "a length"),
    ("13 mN", "N·m", "a torque"),
    ("18 NM", "N·m", "a torque"),
    ("25 mil", "mm", "a length"),
    ("1.25", "mm", "a length"),
    ("14 nm", "N·m", "a torque"),
    ("3'", "m", "a length"),
    ("20 ft/lb", "N·m", "a torque"),
    ("1.2.3 mm", "mm", "a length"),
    ("12 J", "N·m", "a torque"),
    ("18 kg", "N", "a force"),
    ("40 u", "mm", "a length"),
)
"""Figures that can be meant in two ways, or not at all."""
INCHES = ("1/16", "3/32", "1/8", "5/32", "3/16", "1/4")
TURNS = ("1 1/4", "1 1/2", "1 3/4", "1 1/3", "1 2/3")


def draw_forms(lot: Lot) -> Forms:
    """Figures that can be taken and others that are asked back, as many of each."""
    picked = lot.next_ones("read", READ, OF_EACH) + lot.next_ones("asked", ASKED_BACK, OF_EACH)
    keyed = list(enumerate(lot.stream.child("forms").shuffled(picked), 1))
    return Forms(
        options=tuple(Option(f"w{n}", f"{text}, for {kind}") for n, (text, _, kind) in keyed),
        written={f"w{n}": Written(text, unit) for n, (text, unit, _) in keyed},
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
