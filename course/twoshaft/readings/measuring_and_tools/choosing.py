"""Jobs with a tolerance, and the plainest tool that will do."""

from __future__ import annotations

from twoshaft.readings.measuring_and_tools.given import Choose, Job, Tool
from twoshaft.readings.measuring_and_tools.lot import Lot
from twoshaft.records import Option

TOOLS = (
    Tool("rule", "Steel rule, 0.5 mm", 0.5, ("outside", "depth")),
    Tool("caliper", "Vernier caliper with depth rod, 0.05 mm", 0.05, ("outside", "depth")),
    Tool("micrometer", "Outside micrometer, 0.01 mm", 0.01, ("outside",)),
    Tool("comparator", "Comparator on gauge blocks, 0.001 mm", 0.001, ("outside",)),
    Tool("depth-micrometer", "Depth micrometer, 0.01 mm", 0.01, ("depth",)),
    Tool("dial", "Dial indicator on a stand, 0.01 mm", 0.01, ("movement",)),
    Tool("fine-dial", "Lever indicator on a stand, 0.002 mm", 0.002, ("movement",)),
)
NONE = Option("none", "None of these meets the rule")
JOBS: dict[str, list[tuple[str, int, int]]] = {
    "outside": [
        ("Journal of a shaft, diameter", 20, 40),
        ("Spacer, length between its faces", 8, 30),
        ("Selector rail, diameter", 10, 15),
        ("Cover plate, thickness", 5, 12),
    ],
    "depth": [
        ("Seat below the case face, depth", 4, 30),
        ("Groove below the shaft end, depth", 5, 40),
    ],
    "movement": [("End float of a shaft, movement", 0, 0), ("Run-out of a flange, movement", 0, 0)],
}
"""What is measured, and between which sizes it lies [mm]."""
WIDTHS = {
    "outside": ((0.6, 0.9), (0.12, 0.3), (0.02, 0.06), (0.004, 0.008)),
    "depth": ((0.6, 0.9), (0.12, 0.3), (0.02, 0.06)),
    "movement": ((0.12, 0.3), (0.03, 0.06), (0.006, 0.012)),
}
"""Tolerances [mm] that different tools are needed for; each clear of the rule's edge."""


def draw(lot: Lot) -> Choose:
    """Four jobs that different tools are needed for."""
    stream = lot.stream.child("choose")
    kinds = [("outside", 0), ("outside", 1), ("depth", 0), ("movement", 0)]
    names = {kind: stream.shuffled(pool) for kind, pool in JOBS.items()}
    widths = {kind: lot.in_turn(f"width-{kind}", pool) for kind, pool in WIDTHS.items()}
    jobs = []
    for kind, turn in kinds:
        low, high = widths[kind][turn]
        digits = 3 if high < 0.1 else 2
        width = round(stream.uniform(low, high), digits)
        name, least, most = names[kind][turn]
        bottom = round(stream.uniform(least, most), 2)
        jobs.append(Job(name, kind, bottom, round(bottom + width, digits)))
    return Choose(jobs=tuple(stream.shuffled(jobs)), tools=TOOLS, none=NONE)
