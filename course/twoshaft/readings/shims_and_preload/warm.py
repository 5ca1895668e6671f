"""A support that warms up: what grows, which way that works, and what the setting becomes."""

from __future__ import annotations

from twoshaft.models.bearing.heat import Warm, support_change
from twoshaft.models.shim import target_interference
from twoshaft.readings.shims_and_preload.lot import TRIES, Lot
from twoshaft.readings.shims_and_preload.stack import warm_parts

WAYS = [
    ["tightens-case", "Tightens: the case grows and presses the outer rings towards each other"],
    ["loosens-away", "Loosens: the case grows and takes the outer rings away from the rollers"],
    ["tightens-onto", "Tightens: the case grows and brings the outer rings onto the rollers"],
    ["loosens-shaft", "Loosens: the shaft grows more than the case"],
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
        rises = {
            part: float(round(rise * stream.uniform(0.75, 1.25)))
            for part, rise in support.running.model_dump().items()
        }
        change = support_change(support, lot.bearings, Warm(**rises))
        along = abs(change.case_um) - abs(change.shaft_um)
        if abs(change.total.m_as("um")) > CLEAR_UM and abs(along) > 0:
            break
    else:
        raise lot.too_small("warm")
    parts = warm_parts(lot, support, Warm(**rises))
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
        "cold_mm": round(low + (0.2 + 0.6 * stream.uniform(0, 1)) * (high - low), 3),
        "ways": WAYS,
        "when": stream.shuffled(WHEN),
    }  # fmt: skip
