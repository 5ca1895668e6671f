"""A spring pin against the force that it passes on, and a taper pin in its reamed hole."""

from __future__ import annotations

from twoshaft.models.fit import NESTED, TaperPin, fork_pin_force, spring_pin
from twoshaft.readings.lots import TRIES
from twoshaft.readings.pressed_and_driven.lot import Lot, Version, steps_between
from twoshaft.units.quantities import Q

VERDICTS = ("one", "nest", "larger")
CLEAR = 0.1
"""A margin lies at least this part from what is wanted."""
PIN_TO_DO = [
    ["one", "Fit one new pin of this size"],
    ["nest", "Fit a new pin of this size with the smaller one nested inside it"],
    ["larger", "Neither is enough: ask the maker about a larger pin and hole"],
    ["old", "Fit the old pin again; it has held so far"],
    ["bolt", "Fit a cut-off bolt of the same diameter"],
    ["solid", "Fit the pin with its slot filled with solder"],
    ["longer", "Fit a longer pin of the same size, which bears more"],
]
SLOT: tuple[Version, ...] = (
    (
        "direction",
        "The force always acts along the rail. Where does the pin's slot point?",
        (
            ("along", "Along the rail, in the line of the force"),
            ("across", "Across the rail, square to the force"),
            ("slant", "Halfway between, at 45° to the rail"),
            ("up", "Upwards, so that oil can run in, wherever the rail points"),
            ("any", "Anywhere: the pin is round"),
            ("seam", "Towards the seam of the casting"),
        ),
    ),
    (
        "nested",
        "Two pins are nested. How do their slots stand?",
        (
            ("apart", "Opposite each other"),
            ("together", "In line, so that the pins close together"),
            ("no-matter", "As they come: the inner one turns by itself"),
            ("filled", "Both filled with sealant"),
            ("inner-only", "Only the outer one has a slot that counts"),
            ("quarter", "Both square to the force, one above the other"),
        ),
    ),
    (
        "depth",
        "How deep does the pin go in, and when do you stop?",
        (
            ("below", "Both ends in the hole, at the depth the manual gives; then try the part"),
            ("proud", "Until one end stands out on each side by the same length"),
            ("bottom", "Until it will go no further, at whatever depth that is"),
            ("flush-hit", "Flush at the near side; the far side takes care of itself"),
            ("fold", "Until its near end begins to spread, which locks it"),
            ("loose-end", "Until half its length is in, so that it can be pulled out"),
        ),
    ),
)
SIZES_MM = (4.0, 5.0, 6.0, 8.0)
LENGTHS_MM = (24, 26, 28, 30, 32, 36, 40)
TAPER_VERDICTS = ("home", "ream", "sunk")
WINDOW_MM = (1.5, 4.0)
"""How far a pin of the practice bench may stand proud; invented."""
PROUD_MM = {"home": (2.0, 3.5), "ream": (5.5, 9.0), "sunk": (-3.0, 0.5)}
TAPER_TO_DO = [
    ["home", "It is right: drive it home with one firm blow and secure it"],
    ["ream", "Ream a little more, clean the hole, and try the pin by hand again"],
    ["sunk", "The hole is too wide for this pin: take one of the next size and ream for it"],
    ["drive", "Drive it harder until it stands as it should"],
    ["grind", "Grind the part off that stands out"],
    ["washer", "Put a washer under its head end"],
    ["turned", "Turn it round, so that the small end fills the wide end of the hole"],
]
ENDS = [
    ["large-strike", "Strike its large end: that is the end it is driven by"],
    ["small-strike", "Strike its small end: that is the end it is driven by"],
    ["either", "Strike whichever end can be reached"],
    ["press-both", "Squeeze both ends in the vice"],
    ["turn-out", "Turn it with pliers, as a screw"],
    ["pull", "Clamp the large end and pull on the lever"],
]


def draw_spring(lot: Lot) -> dict:
    """A spring pin and the force it passes on.

    ``name``, ``size_mm``, ``inner_mm`` of the pin that nests in it or None, ``loads`` (size [mm],
    load in double shear [kN]), ``hand_n``, ``ratio``, ``planes``, ``margin``, ``todo`` and
    ``slot``.
    """
    stream = lot.stream.child("spring")
    verdict = lot.in_turn("spring-verdict", VERDICTS)[0]
    for entry in lot.in_turn("spring", lot.fits.spring_pins):
        for _ in range(TRIES):
            size = stream.choice([outer for outer, _ in NESTED])
            inner = dict(NESTED)[size]
            given = {
                "name": entry.name,
                "size_mm": size,
                "inner_mm": inner,
                "loads": [[mm, spring_pin(Q(mm, "mm")).double_shear_kn] for mm in (size, inner)],
                "hand_n": int(steps_between(stream, 120, 400, 10)),
                "ratio": steps_between(stream, 4, 16, 0.5),
                "planes": 1 + stream.integer(2),
                "margin": 2 + stream.integer(4),
            }
            if _pin_verdict(given) == verdict:
                return given | {"todo": stream.shuffled(PIN_TO_DO), "slot": lot.ask("slot", SLOT)}
    raise lot.too_small("spring")


def _pin_verdict(given: dict) -> str | None:
    """What the pins come to; None where a margin is near what is wanted."""
    force = fork_pin_force(Q(float(given["hand_n"]), "N"), given["ratio"]).m_as("kN")
    loads = [kn * given["planes"] / 2 for _, kn in given["loads"]]
    times = [loads[0] / force, sum(loads) / force]
    if any(abs(t / given["margin"] - 1) < CLEAR for t in times) or times[0] > 4 * given["margin"]:
        return None
    if times[0] > given["margin"]:
        return "one"
    return "nest" if times[1] > given["margin"] else "larger"


def draw_taper(lot: Lot) -> dict:
    """A taper pin and its reamed hole.

    ``small_mm``, ``length_mm``, ``hole_mm`` (at its wide end), the window ``low_mm`` and
    ``high_mm``, ``wider_mm`` of a further cut, ``insert`` (driven in or out), ``todo``, ``ends``.
    """
    stream = lot.stream.child("taper")
    verdict = lot.in_turn("taper-verdict", TAPER_VERDICTS)[0]
    small, length = lot.in_turn("taper", SIZES_MM)[0], stream.choice(LENGTHS_MM)
    large = TaperPin(small / 1e3, length / 1e3).large.m_as("mm")
    steps = [n for n in range(1, 100) if _inside(verdict, 50 * (large - small - n / 100))]
    hole = round(small + stream.choice(steps) / 100, 2)
    return {
        "small_mm": small,
        "length_mm": length,
        "hole_mm": hole,
        "low_mm": WINDOW_MM[0],
        "high_mm": WINDOW_MM[1],
        "wider_mm": round(0.02 + 0.01 * stream.integer(4), 2),
        "insert": lot.in_turn("taper-way", [True, False])[0],
        "todo": stream.shuffled(TAPER_TO_DO),
        "ends": stream.shuffled(ENDS),
    }


def _inside(verdict: str, proud_mm: float) -> bool:
    low, high = PROUD_MM[verdict]
    return low - 1e-6 <= proud_mm <= high + 1e-6
