"""The learner's own unit on the bench: what each check shows of it."""

from __future__ import annotations

from twoshaft.models.faults import PASSES, explain
from twoshaft.readings.lots import TRIES
from twoshaft.readings.reading_faults.given import Own
from twoshaft.readings.reading_faults.lot import Lot, options

OPTIONS = 8
CASES = ("one", "alike", "two")


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
            some = stream.shuffled(lot.apart)[:2]
            wrong = tuple(one for one in lot.told if one in some)
        if wrong not in lot.table.sets:
            continue
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
    others = [*stream.shuffled(near)[:4], *stream.shuffled(rest)][: OPTIONS - len(rights)]
    return Own(
        record=record,
        minutes={check: lot.minutes(check) for check in lot.table.checks},
        options=lot.named(stream.shuffled([*rights, *others])),
        says=options(stream, "says"),
    )
