"""What the tasks of this module are drawn from: one learner's lot in one attempt."""

from __future__ import annotations

from collections.abc import Sequence

from twoshaft.models.shim import Stack, shim_sign, stack_budget
from twoshaft.questions import bank_of
from twoshaft.readings.keyed import Stream
from twoshaft.readings.lots import Lot as CommonLot
from twoshaft.readings.shims_and_preload.given import Length
from twoshaft.units.quantities import Q
from twoshaft.units.sections.bearings import Arrangement, Bearings, Support, TaperBearing

BANK = bank_of("shims-and-preload")
EDGE_MM = 0.0005
"""A shim nearer than this to an edge is not asked about: a rounding would decide."""


class Lot(CommonLot):
    """One learner's draw; the unit must have a pair of bearings that is set."""

    NEEDS = ("bearings",)
    LACKS = "has no bearings that suit the task"
    MEND = "look at its supports, targets and shim sets, or leave this module out"

    @property
    def bearings(self) -> Bearings:
        """The unit's bearings."""
        return self.unit.bearings

    @property
    def preloaded(self) -> list[Support]:
        """Supports of taper rollers that are set with preload."""
        kinds = self.bearings.set_by_id
        return [
            support
            for support in self.bearings.supports
            if support.target.kind == "preload"
            and all(isinstance(kinds(s), TaperBearing) for s in (support.left, support.right))
        ]

    @property
    def asked(self) -> list[Support]:
        """Supports that are asked about: with preload, or where there are none, with end play."""
        return self.preloaded or list(self.bearings.supports)

    @property
    def main(self) -> Support:
        """The support of the stack, the shim and the cord; another one at a resit."""
        return self.in_turn("main", self.asked)[0]

    @property
    def second(self) -> Support:
        """The support of the trial fit: not the main one, where the unit has two."""
        return self.in_turn("main", self.asked)[-1]

    @property
    def against(self) -> Support:
        """A support whose shim works the other way than the main one's, if there is one."""
        main = sign_of(self.main)
        others = [s for s in self.bearings.supports if sign_of(s) != main]
        others = others or [s for s in self.bearings.supports if s.id != self.main.id]
        return self.in_turn("against", others or [self.main])[0]


def sign_of(support: Support) -> int:
    """Tell whether a thicker shim tightens (+1) or loosens (-1) this support."""
    return shim_sign(support.arrangement, support.shim_place)


def read_lengths(support: Support, stream: Stream) -> dict[str, float]:
    """Lengths of one unit of a kind as somebody read them [mm]: tolerance, then the tool's step."""
    lengths = {}
    for term in support.stack:
        true = term.nominal_mm + 0.9 * stream.uniform(-term.tolerance_mm, term.tolerance_mm)
        error = stream.uniform(-1, 1) * (term.repeat_mm + term.calibration_mm) / 2
        steps = round((true + error) / term.resolution_mm)
        lengths[term.id] = round(steps * term.resolution_mm, 4)
    return lengths


def quantities(lengths: dict[str, float]) -> dict[str, Q]:
    """Lengths as the models take them."""
    return {term: Q(mm, "mm") for term, mm in lengths.items()}


def window_of(support: Support, lengths: dict[str, float], low: Q, high: Q) -> tuple[float, ...]:
    """Thinnest and thickest shim that meet a target, and the doubt of the stack as printed [mm]."""
    stack = Stack.from_support(support, quantities(lengths))
    doubt_mm = stack_budget(support, quantities(lengths)).expanded()
    return *stack.window(low, high), round(doubt_mm, 3)


def verdicts(
    totals: Sequence[float], window: tuple[float, ...], *, clear_of_limits: bool = False
) -> list[str] | None:
    """``safe``, ``meets`` or ``misses`` of each total; None if one lies on an edge.

    The edges are those of the guarded window, and with ``clear_of_limits`` those of the target.
    """
    thin, thick, doubt = window
    edges = [thin + doubt, thick - doubt, *((thin, thick) if clear_of_limits else ())]
    if any(abs(total - edge) < EDGE_MM for total in totals for edge in edges):
        return None
    return [
        "safe"
        if thin + doubt <= total <= thick - doubt
        else "meets"
        if thin - EDGE_MM <= total <= thick + EDGE_MM
        else "misses"
        for total in totals
    ]


SPANS = {
    "case": "room that the case leaves",
    "shaft": "holds the inner rings apart",
    "bearing": "over both rings, rollers home",
    "plate": "reaches in and backs the outer ring",
    "joint": "lifts the cover off its face",
}


def measured(support: Support, lengths: dict[str, float]) -> tuple[Length, ...]:
    """Rows of a table: each length as it was read."""
    spans = dict(SPANS)
    if support.arrangement is Arrangement.INNER_TOGETHER:
        spans["case"] = "holds the outer rings apart"
    return tuple(
        Length(term.name, spans[term.kind.value], term.tool, f"{lengths[term.id]:.2f}")
        for term in support.stack
    )
