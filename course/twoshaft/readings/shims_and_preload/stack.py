"""A stack of measured lengths, the shims on the shelf, and what follows from the one taken."""

from __future__ import annotations

from twoshaft.models.bearing import Pair, bearing_torque, elements, support_change
from twoshaft.models.bearing.heat import Warm
from twoshaft.models.shim import Stack, target_interference
from twoshaft.readings.keyed import Stream
from twoshaft.readings.lots import TRIES
from twoshaft.readings.shims_and_preload.lot import (
    Lot,
    measured,
    quantities,
    read_lengths,
    verdicts,
    window_of,
)
from twoshaft.units.quantities import Q
from twoshaft.units.sections.bearings import Bearings, Support

OPTIONS = 8
CLEAR_MM = 0.015
"""A warm setting keeps this far from nothing, so that its sign is never a matter of rounding."""
TABLE_MM = (0.0, 0.16)
DIRECTIONS = [
    ["tighter", "A thicker shim gives more preload, or less end play"],
    ["looser", "A thicker shim gives less preload, or more end play"],
    ["cold-hot", "It depends on whether the unit is cold or hot"],
    ["float", "It changes end play only; preload stays as it is"],
    ["side", "It depends on whether the shim sits left or right"],
]
HOT = [
    ["leave", "Leave the cold setting inside the maker's cold target: it already allows for heat"],
    ["add", "Add what heat changes to the shim, so that the hot setting meets the cold target"],
    ["middle", "Take a shim halfway between the cold and the hot value"],
    ["hot-fit", "Set it again with the case warm from the oven"],
    ["most", "Take the tightest shim of the target, to be on the safe side"],
]


def draw(lot: Lot) -> dict:
    """A measured stack and the shims to choose from.

    ``support`` (id), ``name``, ``rows`` (name, span, tool, reading), ``lengths`` [mm] by term,
    target ``low_mm`` and ``high_mm``, ``doubt_mm`` of the stack, ``shims`` (key, label) with their
    ``totals`` [mm], ``directions``; for what follows: ``preloads`` (setting [mm], preload [N]),
    ``torque_nm`` of both bearings at 1000 N, ``drum_mm``, ``drags`` (name, torque [N·m]), ``warm``
    (part, change [um]) and ``hot``.
    """
    support, stream = lot.main, lot.stream.child("stack")
    low, high = target_interference(support)
    for _ in range(TRIES):
        lengths = read_lengths(support, stream)
        window = window_of(support, lengths, low, high)
        shims = shims_near(lot.bearings, support, lengths, window)
        judged = verdicts([mm for _, _, mm in shims], window)
        if judged is None or not 1 <= judged.count("safe") <= 2 or shims[0][2] <= 0:
            continue
        warm = warm_parts(lot, support, own_warmth(support, stream))
        heat_mm = sum(um for _, um in warm) / 1000
        stack = Stack.from_support(support, quantities(lengths))
        hot = [stack.interference(Q(mm, "mm")).m_as("mm") + heat_mm for _, _, mm in shims]
        if all(abs(mm) >= CLEAR_MM for mm, word in zip(hot, judged, strict=True) if word == "safe"):
            break
    else:
        raise lot.too_small("stack")
    drags = [drag for drag in support.drags if drag.kind in ("seal", "mesh")]
    rows = [elements(lot.bearings.type_by_id(side)) for side in (support.left, support.right)]
    torque_nm = sum(bearing_torque(row, Q(1000.0, "N")).m_as("N*m") for row in rows)
    return {
        "support": support.id,
        "name": support.name,
        "rows": measured(support, lengths),
        "lengths": lengths,
        "low_mm": support.target.low_mm,
        "high_mm": support.target.high_mm,
        "doubt_mm": window[2],
        "shims": [[key, label] for key, label, _ in shims],
        "totals": {key: total for key, _, total in shims},
        "directions": DIRECTIONS,
        "preloads": _preloads(lot, support),
        "torque_nm": round(torque_nm, 3),
        "drum_mm": round((0.8 + 0.05 * stream.integer(16)) * support.cord_radius_mm),
        "drags": [[drag.name, drag.torque_nm * drag.speed_ratio] for drag in drags],
        "kinds": sorted({drag.kind for drag in drags}),
        "warm": warm,
        "hot": HOT,
    }


def own_warmth(support: Support, stream: Stream) -> Warm:
    """How warm the parts of one unit get: about the support's running temperatures."""
    rises = support.running.model_dump()
    return Warm(**{part: float(round(k * stream.uniform(0.75, 1.25))) for part, k in rises.items()})


def warm_parts(lot: Lot, support: Support, warm: Warm) -> list[list]:
    """What heat does to a support's setting, part by part [um], with the middle of its shims."""
    shelf = lot.bearings.shim_set_by_id(support.shim_set).thicknesses_mm
    change = support_change(support, lot.bearings, warm, Q(shelf[len(shelf) // 2], "mm"))
    parts = (
        ("the case along the shaft", change.case_um),
        ("the shaft along itself", change.shaft_um),
        ("outer rings and bore of the case", change.outer_raceways_um),
        ("inner rings on the shaft", change.inner_raceways_um),
        ("rollers and ring widths", change.rollers_um + change.ring_widths_um),
    )
    return [[name, round(float(um))] for name, um in parts]


def shims_near(bearings: Bearings, support: Support, lengths, window) -> list[tuple]:
    """Options with key, label and total [mm], near the window and where a wrong sign would lead."""
    shelf = bearings.shim_set_by_id(support.shim_set)
    ways = [(mm,) for mm in shelf.thicknesses_mm]
    if shelf.at_most == 2:
        sizes = shelf.thicknesses_mm
        ways += [(a, b) for i, a in enumerate(sizes) for b in sizes[i:]]
    middle = (window[0] + window[1]) / 2
    gap = Stack.from_support(support, quantities(lengths)).shim_for(Q(0.0, "mm")).m_as("mm")
    near = sorted(ways, key=lambda way: (abs(sum(way) - middle), len(way), way))
    apart: dict[float, tuple] = {}
    for way in near:
        apart.setdefault(round(sum(way), 4), way)
    # A wrong sign leads to the other side of the gap.
    wrong = min(apart, key=lambda total: abs(total - (2 * gap - middle)))
    picked = [*list(apart)[: OPTIONS - 1]]
    picked = [*picked, wrong] if wrong not in picked else [*picked, list(apart)[OPTIONS - 1]]
    return [
        ("-and-".join(f"{mm:.2f}".replace(".", "") for mm in apart[total]),
         " and ".join(f"{mm:.2f} mm" for mm in apart[total]), total)
        for total in sorted(picked)
    ]  # fmt: skip


def _preloads(lot: Lot, support: Support) -> list[list[float]]:
    pair = Pair.from_support(support, lot.bearings)
    steps = range(round(100 * TABLE_MM[0]), round(100 * TABLE_MM[1]) + 1)
    return [
        [step / 100, float(10 * round(pair.preload(Q(step / 100, "mm")).m_as("N") / 10))]
        for step in steps
    ]
