"""Misbuilds that no check tells apart, and those that none shows."""

from __future__ import annotations

from itertools import combinations

from twoshaft.models.faults.built import part_of
from twoshaft.models.shape import listed_misbuilds, thin_rings
from twoshaft.readings.lots import TRIES
from twoshaft.readings.reading_faults.given import Alike, Named
from twoshaft.readings.reading_faults.lot import BANK, Lot
from twoshaft.readings.scenes import Look, looks_in_turn
from twoshaft.records import Option, labels

SUSPECTS = 7
TODAY = 4


def draw(lot: Lot) -> Alike:
    """Pairs that today's checks, other checks or none tell apart; and how some are made sure of."""
    stream = lot.stream.child("alike")
    known = labels(BANK.lists["sure"])
    silent = [one for one in lot.silent if part_of(lot.unit, one) in known]
    if not lot.alike or len(silent) < 2:
        raise lot.too_small("alike")
    for _ in range(TRIES):
        group = stream.choice(lot.alike)
        rest = [one for one in lot.told if one not in group]
        unseen = stream.shuffled(silent)[:2]
        some = [*stream.shuffled(group)[:2], *unseen, *stream.shuffled(rest)][:SUSPECTS]
        suspects = stream.shuffled(some)
        today = stream.shuffled(lot.table.checks)[:TODAY]
        pairs: dict[str, list[tuple[str, str]]] = {"today": [], "another": [], "no": []}
        for pair in combinations(suspects, 2):
            pairs[_told_by(lot, pair, today)].append(pair)
        more = stream.choice(list(pairs))
        wanted = {kind: 1 + (kind == more) for kind in pairs}
        if all(len(pairs[kind]) >= count for kind, count in wanted.items()):
            break
    else:
        raise lot.too_small("alike")
    asked = [pair for kind, n in wanted.items() for pair in stream.shuffled(pairs[kind])[:n]]
    letters = {one.id: one.letter for one in lot.lettered(suspects)}
    shown = [one for one in suspects if one not in silent]
    sure = stream.shuffled([*unseen, *stream.shuffled(shown)[:2]])
    checks = [lot.unit.faults.check_by_id(check) for check in lot.table.checks if check in today]
    return Alike(
        suspects=lot.lettered(suspects),
        today=tuple(Named(check.id, check.name) for check in checks),
        pairs=tuple(
            Option("+".join(p), f"{letters[p[0]]} or {letters[p[1]]}")
            for p in stream.shuffled(asked)
        ),
        tell=BANK.lists["tell"],
        asked=tuple(Option(one, letters[one]) for one in sure),
        sure=BANK.lists["sure"],
        looks=_looks(lot),
        built=BANK.lists["looks"],
    )


def _looks(lot: Lot) -> tuple[Look, ...]:
    """Units opened at one place, another place at a resit."""
    listed = listed_misbuilds(lot.unit)
    others = [*listed, *thin_rings(lot.unit)]
    places = lot.in_turn("looks", listed)
    return looks_in_turn(lot.unit, lot.stream.child("looks"), places, others) or ()


def _told_by(lot: Lot, pair: tuple[str, str], today: list[str]) -> str:
    """Whether a check of today, another check or none tells two misbuilds apart."""
    telling = [c for c in lot.table.checks if lot.key(pair[0], c) != lot.key(pair[1], c)]
    if not telling:
        return "no"
    return "today" if set(telling) & set(today) else "another"
