"""A support that warms up: what grows, which way that works, and what the setting becomes."""

from __future__ import annotations

from dataclasses import asdict

from twoshaft.models.bearing.heat import support_change
from twoshaft.models.fit import CAST_ALUMINIUM, STEEL
from twoshaft.models.shim import target_interference
from twoshaft.readings.keyed import Stream
from twoshaft.readings.lots import TRIES
from twoshaft.readings.shims_and_preload.given import Heated, Span, Warm
from twoshaft.readings.shims_and_preload.lot import BANK, Lot
from twoshaft.readings.shims_and_preload.stack import CLEAR_MM, own_warmth, warm_parts
from twoshaft.records import Option

CLEAR_UM = 4.0
GROWTH = {
    "aluminium": round(CAST_ALUMINIUM.expansion_per_k * 1e6, 1),
    "steel": round(STEEL.expansion_per_k * 1e6, 1),
}
"""Of a metre for each degree [um/K]: the metals of press fits, so that one steel has one figure."""


def draw(lot: Lot) -> Warm:
    """A support with its own rise of temperatures."""
    support = lot.in_turn("warm", [lot.second, lot.against])[0]
    stream = lot.stream.child("warm")
    low, high = (limit.m_as("mm") for limit in target_interference(support))
    for _ in range(TRIES):
        warm = own_warmth(support, stream)
        cold = round(low + (0.1 + 0.8 * stream.uniform(0, 1)) * (high - low), 3)
        change = support_change(support, lot.bearings, warm).total.m_as("mm")
        if abs(change) > CLEAR_UM / 1000 and abs(cold + change) >= CLEAR_MM:
            break
    else:
        raise lot.too_small("warm")
    parts, rises = warm_parts(lot, support, warm), asdict(warm)
    return Warm(
        support=support.id,
        name=support.name,
        rises=rises,
        spans=(
            Span("case, between the seats of the outer rings", support.case_span_mm,
                 round(support.case.expansion_per_k * 1e6, 1), rises["case_k"]),
            Span("shaft, between the seats of the inner rings", support.shaft_span_mm,
                 round(support.shaft.expansion_per_k * 1e6, 1), rises["shaft_k"]),
        ),
        across=parts[2:],
        cold_mm=cold,
        pairs=_pairs(stream.child("pairs")),
        ways=BANK.lists["ways"],
        temperatures=_temperatures(lot, stream.child("temperatures")),
        when=BANK.lists["when"],
    )  # fmt: skip


def _pairs(stream: Stream) -> tuple[Heated, ...]:
    """Pairs held from outside or from inside, cases of two materials, and how warm each part is.

    The shaft is of steel, and both lengths are alike.
    """
    found = []
    for n, way in enumerate(stream.shuffled((1, 0, -1, stream.choice((1, -1)))), 1):
        outside, length = stream.integer(2) == 0, 80 + 5 * stream.integer(13)
        grown = way if outside else -way  # of the case against the shaft: above zero loosens
        aluminium, shaft = bool(grown) and stream.integer(2) == 0, 30 + stream.integer(20)
        case = shaft + (3 + stream.integer(10)) * grown
        if aluminium:  # grows twice as much: less than half as warm grows less
            case = shaft + stream.integer(10) if grown > 0 else shaft // 2 - 6 - stream.integer(5)
        of = "aluminium" if aluminium else "steel"
        held = "Outer rings pressed together" if outside else "Outer rings held apart"
        text = (
            f"{held} by the case, seats {length} mm apart. Case of {of} "
            f"{case} K warmer, shaft of steel {shaft} K warmer"
        )
        net = length * ((GROWTH[of] * case) - GROWTH["steel"] * shaft) / 1000
        found.append(Heated(f"pair-{n}", text, round(-net if outside else net, 1)))
    return tuple(found)


def _temperatures(lot: Lot, stream: Stream) -> tuple[Option, ...]:
    """Readings and targets, each with its own temperatures [degC]."""

    def figures() -> dict[str, object]:
        a = 17 + stream.integer(7)
        return {"a": a, "h": a + 14 + stream.integer(20), "r": 70 + stream.integer(21)}

    return lot.scenes("temperatures", BANK, 4, figures)
