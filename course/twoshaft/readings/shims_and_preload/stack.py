"""A stack of measured lengths, the shims on the shelf, and what follows from the one taken."""

from __future__ import annotations

from twoshaft.models.bearing import Pair, bearing_torque, elements, support_change
from twoshaft.models.bearing.heat import Warm
from twoshaft.models.shim import Stack, target_interference
from twoshaft.readings.keyed import Stream
from twoshaft.readings.lots import TRIES
from twoshaft.readings.shims_and_preload import given
from twoshaft.readings.shims_and_preload.lot import (
    BANK,
    Lot,
    measured,
    quantities,
    read_lengths,
    verdicts,
    window_of,
)
from twoshaft.records import Option
from twoshaft.units.quantities import Q
from twoshaft.units.sections.bearings import Bearings, Support

OPTIONS = 8
CLEAR_MM = 0.015
"""A warm setting keeps this far from nothing, so that its sign is never a matter of rounding."""
TABLE_MM = (0.0, 0.16)


def draw(lot: Lot) -> given.Stack:
    """A measured stack and the shims to choose from, and what the task after it goes on with."""
    support, stream = lot.main, lot.stream.child("stack")
    low, high = target_interference(support)
    for _ in range(TRIES):
        lengths = read_lengths(support, stream)
        window = window_of(support, lengths, low, high)
        shims = shims_near(lot.bearings, support, lengths, window)
        judged = verdicts([mm for _, mm in shims], window)
        if judged is None or not 1 <= judged.count("safe") <= 2 or shims[0][1] <= 0:
            continue
        warm = warm_parts(lot, support, own_warmth(support, stream))
        heat_mm = sum(one.change_um for one in warm) / 1000
        stack = Stack.from_support(support, quantities(lengths))
        hot = [stack.interference(Q(mm, "mm")).m_as("mm") + heat_mm for _, mm in shims]
        if all(abs(mm) >= CLEAR_MM for mm, word in zip(hot, judged, strict=True) if word == "safe"):
            break
    else:
        raise lot.too_small("stack")
    drags = [drag for drag in support.drags if drag.kind in ("seal", "mesh")]
    rows = [elements(lot.bearings.set_by_id(side)) for side in (support.left, support.right)]
    torque_nm = sum(bearing_torque(row, Q(1000.0, "N")).m_as("N*m") for row in rows)
    return given.Stack(
        support=support.id,
        name=support.name,
        rows=measured(support, lengths),
        lengths=lengths,
        low_mm=support.target.low_mm,
        high_mm=support.target.high_mm,
        doubt_mm=window[2],
        shims=tuple(shim for shim, _ in shims),
        totals={shim.id: total for shim, total in shims},
        swaps=swaps(stream.child("swaps")),
        directions=BANK.lists["directions"],
        preloads=_preloads(lot, support),
        torque_nm=round(torque_nm, 3),
        drum_mm=round((0.8 + 0.05 * stream.integer(16)) * support.cord_radius_mm),
        drags=tuple(given.Drag(drag.name, drag.torque_nm * drag.speed_ratio) for drag in drags),
        kinds=tuple(sorted({drag.kind for drag in drags})),
        warm=warm,
    )


def swaps(stream: Stream) -> tuple[given.Swap, ...]:
    """Changes of shim: thicker, thinner, and one of two shims that add up to the one before."""
    steps = [4 + stream.integer(9), -4 - stream.integer(9), 0]
    steps.append((4 + stream.integer(9)) * stream.choice((1, -1)))
    found = []
    for k, step in enumerate(stream.shuffled(steps), 1):
        out, part = 90 + stream.integer(60), 20 + stream.integer(30)
        new = out + step
        fitted = f"{(new - part) / 100:.2f} and {part / 100:.2f} mm" if stream.integer(2) else ""
        if step == 0 or fitted:
            fitted = f"{(new - part) / 100:.2f} and {part / 100:.2f} mm together"
        text = f"{out / 100:.2f} mm is taken out, and put in: {fitted or f'{new / 100:.2f} mm'}"
        found.append(given.Swap(f"swap-{k}", text, step / 100))
    return tuple(found)


def own_warmth(support: Support, stream: Stream) -> Warm:
    """How warm the parts of one unit get: about the support's running temperatures."""
    rises = support.running.model_dump()
    return Warm(**{part: float(round(k * stream.uniform(0.75, 1.25))) for part, k in rises.items()})


def warm_parts(lot: Lot, support: Support, warm: Warm) -> tuple[given.Warming, ...]:
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
    return tuple(given.Warming(name, round(float(um))) for name, um in parts)


def shims_near(
    bearings: Bearings, support: Support, lengths: dict[str, float], window: tuple[float, ...]
) -> list[tuple[Option, float]]:
    """Options with their total [mm], near the window and where a wrong sign would lead."""
    shelf = bearings.shim_set_by_id(support.shim_set)
    ways: list[tuple[float, ...]] = [(mm,) for mm in shelf.thicknesses_mm]
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
    picked += [wrong] if wrong not in picked else list(apart)[OPTIONS - 1 : OPTIONS]
    return [(_shim(apart[total]), total) for total in sorted(picked)]


def _shim(way: tuple[float, ...]) -> Option:
    return Option(
        "-and-".join(f"{mm:.2f}".replace(".", "") for mm in way),
        " and ".join(f"{mm:.2f} mm" for mm in way),
    )


def _preloads(lot: Lot, support: Support) -> tuple[given.Preload, ...]:
    pair = Pair.from_support(support, lot.bearings)
    steps = range(round(100 * TABLE_MM[0]), round(100 * TABLE_MM[1]) + 1)
    return tuple(
        given.Preload(
            step / 100, float(10 * round(pair.preload(Q(step / 100, "mm")).m_as("N") / 10))
        )
        for step in steps
    )
