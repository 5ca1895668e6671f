"""Complaints of drivers with what the road showed, and pairs of causes to tell apart."""

from __future__ import annotations

from itertools import combinations

from twoshaft.models.closeout import causes_left, load_road, tell_apart
from twoshaft.models.shape import listed_misbuilds, solids_of, thin_rings
from twoshaft.readings.close_out.given import Complaint, Pair, Road
from twoshaft.readings.close_out.lot import BANK, Lot
from twoshaft.readings.keyed import Stream
from twoshaft.readings.scenes import Look, looks_in_turn
from twoshaft.records import Option
from twoshaft.units.sections.shapes import RingSolid

COMPLAINTS, OFFERED, LEAST_TRIED = 4, 6, 2
NONE = "none"
TRIES = 400


def draw_road(lot: Lot) -> Road:
    """Road tests that leave one cause each, and pairs of which at most one test tells."""
    stream, road = lot.stream.child("road"), load_road()
    behind = lot.next_ones("road", tuple(road.causes), COMPLAINTS)
    offered, pairs = _pairs(lot, stream)
    return Road(
        complaints=tuple(
            _complaint(stream, letter, cause) for letter, cause in zip("abcd", behind, strict=True)
        ),
        causes=tuple(Option(id, name) for id, name in road.causes.items()),
        pairs=pairs,
        checks=(*(Option(id, road.checks[id]) for id in offered), *BANK.lists["road_none"]),
        looks=_looks(lot),
        built=BANK.lists["looks"],
    )


def _looks(lot: Lot) -> tuple[Look, ...]:
    """Units opened at a seal, another seal at a resit."""
    listed = [one for one in listed_misbuilds(lot.unit) if one.how == "turned"]
    seals = [one for one in listed
             if any(isinstance(own.solid, RingSolid) for key in one.parts
                    for own in solids_of(lot.unit, one.view, key))]  # fmt: skip
    others = [*listed, *thin_rings(lot.unit)]
    places = lot.in_turn("looks", seals)
    return looks_in_turn(lot.unit, lot.stream.child("looks"), places, others) or ()


def _complaint(stream: Stream, id: str, cause: str) -> Complaint:
    """Two findings, or as few more as leave one cause alone."""
    road = load_road()
    alike = [one for one in road.causes if road.of[one] == road.of[cause]]
    checks = [check for check in road.checks if any(check in road.finds[one] for one in alike)]
    own = [check for check in checks if check in road.finds[cause]]
    found = {check: check in own for check in [stream.choice(own), *stream.shuffled(checks)]}
    for check in stream.shuffled(sorted(found)):
        fewer = {one: so for one, so in found.items() if one != check}
        enough = len(fewer) >= LEAST_TRIED and any(fewer.values())
        if enough and causes_left(fewer) == (cause,):
            found = fewer
    shown = stream.shuffled(sorted(found))
    return Complaint(
        id,
        tuple(check for check in shown if found[check]),
        tuple(check for check in shown if not found[check]),
    )


def _pairs(lot: Lot, stream: Stream) -> tuple[list[str], tuple[Pair, ...]]:
    """Checks that are offered, and pairs each told apart by one of them or by none."""
    road = load_road()
    whole = [
        (one, other)
        for one, other in combinations(road.causes, 2)
        if road.of[one] == road.of[other]
    ]
    for _ in range(TRIES):
        offered = stream.shuffled(tuple(road.checks))[:OFFERED]
        taken: dict[tuple[str, str], str] = {}
        for pair in stream.shuffled(whole):
            telling = [check for check in tell_apart(*pair) if check in offered]
            told = telling[0] if telling else NONE
            if len(telling) < 2 and told not in taken.values():
                taken[pair] = told
        if len(taken) >= COMPLAINTS:
            four = list(taken)[:COMPLAINTS]
            order = [check for check in road.checks if check in offered]
            return order, tuple(
                Pair(id, *stream.shuffled(pair)) for id, pair in zip("abcd", four, strict=True)
            )
    raise lot.too_small("road")
