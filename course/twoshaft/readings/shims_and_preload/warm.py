"""A support that warms up: what grows, which way that works, and what the setting becomes."""

from __future__ import annotations

from dataclasses import asdict

from twoshaft.models.bearing.heat import support_change
from twoshaft.models.shim import target_interference
from twoshaft.readings.lots import TRIES
from twoshaft.readings.shims_and_preload.lot import Lot
from twoshaft.readings.shims_and_preload.stack import CLEAR_MM, own_warmth, warm_parts

WAYS = [
    ["tightens-case", "Tightens: the case grows and presses the outer rings towards each other"],
    ["loosens-away", "Loosens: the case grows and takes the outer rings away from the rollers"],
    ["tightens-onto", "Tightens: the case grows and brings the outer rings onto the rollers"],
    ["loosens-shaft", "Loosens: the shaft grows more than the case"],
    ["tightens-shaft", "Tightens: the shaft grows more than the case"],
    ["nothing", "Nothing: case and shaft grow by the same amount"],
]
WHEN = [
    ["even", "Nothing yet: let all parts come to one temperature, then read again"],
    ["subtract", "Good enough: take off the growth of the case and go on"],
    ["hand", "Good, if the case no longer feels hot to the hand"],
    ["twice", "Good, if two readings one after the other agree"],
    ["better", "Better than a cold one, since the unit runs warm"],
    ["shaft", "Good, since only the shaft's temperature counts"],
]
CLEAR_UM = 4.0


def draw(lot: Lot) -> dict:
    """A support with its own rise of temperatures.

    ``support``, ``name``, ``rises`` [K] by part, ``spans`` (part, length [mm], growth of a metre
    by a degree [um]), ``across`` (part, change [um]), ``cold_mm`` with sign, ``ways``, ``when``.
    """
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
    return {
        "support": support.id,
        "name": support.name,
        "rises": rises,
        "spans": [
            ["case, between the seats of the outer rings", support.case_span_mm,
             round(support.case.expansion_per_k * 1e6, 1), rises["case_k"]],
            ["shaft, between the seats of the inner rings", support.shaft_span_mm,
             round(support.shaft.expansion_per_k * 1e6, 1), rises["shaft_k"]],
        ],
        "across": parts[2:],
        "cold_mm": cold,
        "ways": WAYS,
        "when": stream.shuffled(WHEN),
    }  # fmt: skip
