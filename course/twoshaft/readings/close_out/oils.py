"""Drums of oil, and what an oil does to a ring."""

from __future__ import annotations

from twoshaft.models.closeout import HOT_GRADES, WINTER_C, hot_grade
from twoshaft.models.viscosity import walther
from twoshaft.readings.close_out.given import Drum, Oil, Ring, Shifted
from twoshaft.readings.close_out.lot import BANK, Lot
from twoshaft.readings.keyed import Stream
from twoshaft.records import Option

GRADES = tuple(one.name for one in HOT_GRADES[1:-2])
THICK_ENOUGH, TOO_THIN = 1.1, 0.85
"""So far from the least viscosity an oil lies at its hottest, as a share: no line of a chart
decides between."""
EDGE = 0.03
"""So far an oil keeps off the ends of its grade, as a share."""
BENT = (1.72, 1.80)
"""Power of the viscosity at 100 °C that gives the one at 40 °C: usual gear oils, from memory."""
APART = 0.1
"""So far two lines of a chart keep apart at 100 °C, as a share."""
TRIES = 2000
READ_C = (50, 60, 70, 80, 90)
FURTHER, ALIKE = 1.4, 1.08
"""A ring slides plainly farther, or about as far, by this share."""


def draw_oil(lot: Lot) -> Oil:
    """Drums of which one suits, and the others each have one fault."""
    stream = lot.stream.child("oil")
    stiff = [one for one, c in WINTER_C.items() if c > lot.section.oil.coldest_c]
    ways = ["fill", "thin", "ring", "cold" if stiff else "thin"]
    drums: list[Drum] = []
    for letter, way in zip("abcd", stream.shuffled(ways), strict=True):
        drums.append(_drum(lot, stream, letter, way, [one.at_100 for one in drums]))
    return Oil(
        drums=tuple(drums),
        read=stream.choice("abcd"),
        read_c=float(stream.choice(READ_C)),
        grades=tuple(Option(one, f"SAE {one}") for one in GRADES),
        answers=BANK.lists["oil_do"],
    )


def _drum(lot: Lot, stream: Stream, id: str, way: str, others: list[float]) -> Drum:
    asked = lot.section.oil
    flows = [one for one, c in WINTER_C.items() if (c <= asked.coldest_c) == (way != "cold")]
    wrong = (
        "GL-5, for hypoid axles",
        "GL-5, for limited-slip axles",
        f"{asked.service}, for axles",
    )
    label = f"{asked.service}, for synchroniser rings" if way != "ring" else stream.choice(wrong)
    for _ in range(TRIES):
        at_100 = round(stream.uniform(5.2, 23), 1)
        at_40 = round(at_100 ** stream.uniform(*BENT), 1)
        hot = walther.plain(at_40, at_100, asked.hottest_c) / asked.thinnest_mm2_per_s
        inside = {hot_grade.plain(at_100 * (1 + off)) for off in (-EDGE, EDGE)}
        fits = hot < TOO_THIN if way == "thin" else hot > THICK_ENOUGH
        apart = all(abs(at_100 / other - 1) > APART for other in others)
        if fits and apart and len(inside) == 1:
            return Drum(id, stream.choice(flows), label, at_40, at_100)
    raise lot.too_small("oil")


def draw_ring(lot: Lot) -> Ring:
    """An own ring in one shift, and shifts with oils that do more or less harm."""
    stream, work = lot.stream.child("ring"), lot.section.needed_ring()
    (own,) = lot.next_ones("ring", lot.unit.gear_train.synchronisers, 1)
    friction = round(own.friction[1] + (stream.integer(5) - 2) / 200, 3)
    ways = ["alike", "longer", "never", stream.choice(["alike", "longer", "never"])]
    return Ring(
        what=own.name,
        force_n=float(round(work.force_n * stream.uniform(0.8, 1.25), -1)),
        friction=friction,
        diameter_mm=float(own.mean_diameter_mm),
        angle_deg=float(own.half_angle_deg),
        inertia_kg_m2=round(work.inertia_kg_m2 * stream.uniform(0.8, 1.25), 4),
        speed_rpm=float(round(work.speed_change_rpm * stream.uniform(0.7, 1.4), -1)),
        wrong_friction=round(friction * stream.uniform(0.5, 0.75), 3),
        others=tuple(
            _shifted(stream, letter, way)
            for letter, way in zip("abcd", stream.shuffled(ways), strict=True)
        ),
        answers=BANK.lists["ring_does"],
    )


def _shifted(stream: Stream, id: str, way: str) -> Shifted:
    while True:
        right = float(12 + stream.integer(13))
        before = (90 + stream.integer(6) * 5) / 1000
        friction = round(before * stream.uniform(0.45, 1.0), 3)
        drag = round(right * stream.uniform(0, 1.2), 1)
        left = right * friction / before - drag
        longer = right / left if left > 0 else None
        if way == "never":
            fits = left < -0.08 * right
        elif longer is None:
            fits = False
        else:
            fits = longer < ALIKE if way == "alike" else FURTHER < longer < 4
        if fits:
            return Shifted(id, friction, drag, right, before)
