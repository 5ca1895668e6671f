"""Two gears at once: which pairs hold the shafts, and what still turns."""

from __future__ import annotations

from itertools import combinations

from twoshaft.models.geartrain import one_sleeve
from twoshaft.readings.gear_train_and_checks.given import (
    Card,
    Cards,
    Lock,
    Named,
    PairOfTeeth,
    Sleeve,
)
from twoshaft.readings.gear_train_and_checks.lot import Lot
from twoshaft.readings.keyed import Stream
from twoshaft.records import Option

EQUALS = ((3, 2), (2, 1), (5, 3), (3, 1), (5, 2), (4, 3))
"""Ratios of small numbers, from which pairs of wheels with one ratio are made."""


def draw(lot: Lot) -> Lock:
    """Pairs to choose from, one pair engaged, a wheel's turns, and five sets of wheels."""
    stream = lot.stream.child("lock")
    names = lot.names()
    ids = [gear.id for gear in lot.train.gears]
    both = list(combinations(ids, 2))
    sleeve = [pair for pair in both if one_sleeve(lot.train, pair)]
    apart = [pair for pair in both if pair not in sleeve]
    if len(sleeve) < 2 or len(apart) < 4:
        raise lot.too_small("lock")
    shown = stream.shuffled([*stream.shuffled(sleeve)[:2], *stream.shuffled(apart)[:4]])
    a, b = lot.in_turn("lock", apart)[0]
    gears = {gear.id: gear for gear in lot.train.gears}
    cards = lot.in_turn("cards", [p for p in apart if all(_plain(gears[g]) for g in p)])[0]
    return Lock(
        pairs=tuple(Option(f"{x}-and-{y}", f"{names[x]} and {names[y].lower()}") for x, y in shown),
        keys={f"{x}-and-{y}": (x, y) for x, y in shown},
        sleeves=tuple(
            Sleeve(one.name, " and ".join(names[gear].lower() for gear in one.gears))
            for one in lot.train.synchronisers
        ),
        engaged=(Named(a, names[a]), Named(b, names[b])),
        left_turns=0.25 * (3 + stream.integer(6)),
        first=lot.asked("lock_first", stream),
        cards=Cards(
            gears=cards,
            meshes=(gears[cards[0]].engages[0], gears[cards[1]].engages[0]),
            sets=_cards(stream),
        ),
    )


def _plain(gear) -> bool:
    return len(gear.engages) == 1 and not gear.reverse


def _cards(stream: Stream) -> tuple[Card, ...]:
    """Five sets of two meshes, one of which has the same ratio twice."""
    even, *odd = stream.shuffled(EQUALS)[:5]
    small = 12 // even[1] + stream.integer(3)
    sets = [(_times(even, small), _times(even, small + 1 + stream.integer(2)))]
    for ratio in odd:
        small = 12 // ratio[1] + stream.integer(3)
        one, other = _times(ratio, small), _times(ratio, small + 1 + stream.integer(2))
        # One tooth off looks like the same ratio and is not.
        off = PairOfTeeth(other.driving, other.driven + 1 - 2 * stream.integer(2))
        sets.append((one, off))
    cards = []
    for letter, teeth in zip("ABCDE", stream.shuffled(sets), strict=True):
        words = " with ".join(f"{driving} to {driven}" for driving, driven in teeth)
        cards.append(Card(letter, words, teeth))
    return tuple(cards)


def _times(ratio: tuple[int, int], small: int) -> PairOfTeeth:
    return PairOfTeeth(ratio[1] * small, ratio[0] * small)
