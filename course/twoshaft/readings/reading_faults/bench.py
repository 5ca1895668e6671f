"""The learner's own unit on the bench: what each check shows of it."""

from __future__ import annotations

from itertools import combinations

from twoshaft.models.faults import PASSES, explain
from twoshaft.readings.keyed import Stream
from twoshaft.readings.lots import TRIES
from twoshaft.readings.reading_faults.given import Own
from twoshaft.readings.reading_faults.lot import LETTERS, Lot
from twoshaft.records import Option

SUSPECTS = 7
CASES = ("one", "alike", "two")
OFFERED = 3
"""How many diagnoses of each form are offered: alone, two at once, one of some."""


def draw(lot: Lot) -> Own:
    """A unit with one or two misbuilds, and what every check shows of it."""
    stream = lot.stream.child("own")
    case = lot.in_turn("own", CASES)[0]
    wrong: tuple[str, ...]
    for n in range(TRIES):
        if case == "one":
            wrong = (lot.in_turn("own one", lot.apart)[n % len(lot.apart)],)
        elif case == "alike":
            wrong = (stream.choice(stream.choice(lot.alike)),)
        else:
            wrong = stream.choice(lot.pairs)
        record = lot.record(wrong, lot.table.checks)
        found = explain(lot.unit, {row.check: row.key for row in record})
        least = [set(one) for one in found.least if not set(one) & set(lot.silent)]
        if sum(1 for row in record if row.key != PASSES) < len(wrong):
            continue
        if len(least) == 1 if case != "alike" else all(len(one) == 1 for one in least):
            break
    else:
        raise lot.too_small("own")
    rights = sorted({one for chosen in least for one in chosen})
    near = [
        one
        for one in lot.told
        if one not in rights and any(lot.kinds(one) & lot.kinds(m) for m in rights)
    ]
    rest = [one for one in lot.told if one not in rights and one not in near]
    others = [*stream.shuffled(near)[:4], *stream.shuffled(rest)][: SUSPECTS - len(rights)]
    suspects = lot.lettered(stream.shuffled([*rights, *others]))
    mine = "".join(one.letter for one in suspects if one.id in rights)
    return Own(
        record=record,
        minutes={check: lot.minutes(check) for check in lot.table.checks},
        suspects=suspects,
        says=_diagnoses(stream, case, mine),
    )


def _diagnoses(stream: Stream, case: str, right: str) -> tuple[Option, ...]:
    """The right diagnosis among others of every form."""
    letters = LETTERS[:SUSPECTS]
    size = {"one": 1, "two": 2, "alike": len(right) if case == "alike" else 2 + stream.integer(2)}
    texts = []
    for form in CASES:
        others = ["".join(some) for some in combinations(letters, size[form])]
        drawn = [some for some in stream.shuffled(others) if (form, some) != (case, right)]
        kept = [right, *drawn][:OFFERED] if form == case else drawn[:OFFERED]
        texts += [Option(f"{form}-{some}", _say(form, some)) for some in kept]
    return tuple(stream.shuffled(texts))


def _say(form: str, letters: str) -> str:
    """A diagnosis in words."""
    if form == "one":
        return f"{letters} and nothing else"
    if form == "two":
        return f"{' and '.join(letters)}, both of them"
    return f"{', '.join(letters[:-1])} or {letters[-1]}, one of them"
