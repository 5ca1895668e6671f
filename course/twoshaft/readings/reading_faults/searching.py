"""Suspects that are left: what each check shows of them, which one parts them, what it costs."""

from __future__ import annotations

from collections.abc import Sequence
from itertools import combinations

from twoshaft.models.faults import PASSES
from twoshaft.readings.keyed import Stream
from twoshaft.readings.lots import TRIES
from twoshaft.readings.reading_faults.given import Check, Finding, Route, Search
from twoshaft.readings.reading_faults.lot import BANK, LETTERS, Lot
from twoshaft.records import Option

SUSPECTS = 4
CHECKS = 5
TELLING = 3
PAIRS = 5
FINDINGS = 4


def draw(lot: Lot) -> Search:
    """Four suspects, checks of which most tell something about them, and two ways of searching."""
    stream = lot.stream.child("search")
    firsts = lot.in_turn("search", lot.told)
    for n in range(TRIES):
        first = firsts[n * SUSPECTS % len(firsts)]
        others = stream.shuffled([one for one in lot.told if one != first])[: SUSPECTS - 1]
        suspects = stream.shuffled([first, *others])
        telling = [c for c in lot.table.checks if len({lot.key(m, c) for m in suspects}) > 1]
        idle = [c for c in lot.table.checks if c not in telling]
        if len(telling) < TELLING or len(idle) < CHECKS - TELLING:
            continue
        some = stream.shuffled(telling)[:TELLING]
        checks = stream.shuffled([*some, *stream.shuffled(idle)[: CHECKS - TELLING]])
        pairs = stream.shuffled(list(combinations(suspects, 2)))[:PAIRS]
        if len({_quickest(lot, checks, pair) for pair in pairs}) < 3:
            continue
        findings = _findings(lot, stream, suspects, some)
        routes = _routes(lot, stream, suspects, checks)
        if len(findings) == FINDINGS and len(routes) == 2:
            break
    else:
        raise lot.too_small("search")
    letters = dict(zip(suspects, LETTERS, strict=False))
    numbers = {check: str(n) for n, check in enumerate(checks, 1)}
    named = [lot.unit.faults.check_by_id(check) for check in checks]
    alone = tuple(Option(one, f"{letter} alone") for one, letter in letters.items())
    return Search(
        suspects=lot.lettered(suspects),
        checks=tuple(Check(c.id, numbers[c.id], c.name, c.minutes) for c in named),
        fails=(*(Option(o.id, f"with {o.text}") for o in alone), *BANK.lists["fails"]),
        pairs=tuple(Option("+".join(p), f"{letters[p[0]]} or {letters[p[1]]}") for p in pairs),
        tellers=(*(Option(c, f"check {n}") for c, n in numbers.items()), *BANK.lists["tellers"]),
        findings=tuple(
            Finding(f"finding-{n}", passed, failed, _words(numbers, passed, failed))
            for n, (passed, failed) in enumerate(findings, 1)
        ),
        left=(*alone, *BANK.lists["left"]),
        routes=tuple(
            Route(route, ", then ".join(numbers[c] for c in route), wrong)
            for route, wrong in routes
        ),
    )  # fmt: skip


def _quickest(lot: Lot, checks: Sequence[str], pair: tuple[str, str]) -> str:
    """The check that parts two misbuilds in the fewest minutes; empty if none does."""
    parting = [c for c in checks if lot.key(pair[0], c) != lot.key(pair[1], c)]
    return min(parting, key=lot.minutes, default="")


def _findings(
    lot: Lot, stream: Stream, suspects: Sequence[str], checks: Sequence[str]
) -> list[tuple[tuple[str, ...], tuple[str, ...]]]:
    """What some of the checks may come to, each with somebody left; several or one of them."""
    found: dict[tuple[tuple[str, ...], tuple[str, ...]], int] = {}
    for wrong in suspects:
        for made in (*combinations(checks, 2), *((one,) for one in checks)):
            passed = tuple(c for c in made if lot.key(wrong, c) == PASSES)
            failed = tuple(c for c in made if c not in passed)
            found[passed, failed] = found.get((passed, failed), 0) + 1
    alone = stream.shuffled([one for one, left in found.items() if left == 1])
    more = stream.shuffled([one for one, left in found.items() if left > 1])
    return stream.shuffled([*alone[: FINDINGS - 1], *more[:1]])


def _routes(
    lot: Lot, stream: Stream, suspects: Sequence[str], checks: Sequence[str]
) -> list[tuple[tuple[str, ...], str]]:
    """Two orders of all checks, each with one that is wrong and is known before the last check."""
    routes: list[tuple[tuple[str, ...], str]] = []
    for _ in range(TRIES):
        route, wrong = tuple(stream.shuffled(checks)), stream.choice(suspects)
        named = {one for _, one in routes}
        if 2 <= _spent(lot, route, suspects, wrong) < len(route) and wrong not in named:
            routes.append((route, wrong))
        if len(routes) == 2:
            break
    return routes


def _spent(lot: Lot, route: Sequence[str], suspects: Sequence[str], wrong: str) -> int:
    """How many checks are made until one suspect is left."""
    left = set(suspects)
    for made, check in enumerate(route, 1):
        left = {one for one in left if lot.key(one, check) == lot.key(wrong, check)}
        if len(left) == 1:
            return made
    return len(route) + 1


def _words(numbers: dict[str, str], passed: Sequence[str], failed: Sequence[str]) -> str:
    parts = [f"check {numbers[check]} passes" for check in sorted(passed, key=numbers.__getitem__)]
    parts += [f"check {numbers[check]} does not pass" for check in failed]
    return ", ".join(parts)
