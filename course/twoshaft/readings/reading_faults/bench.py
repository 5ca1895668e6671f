"""The learner's own unit on the bench: what each check shows of it."""

from __future__ import annotations

from twoshaft.models.faults import explain
from twoshaft.readings.lots import TRIES
from twoshaft.readings.reading_faults.lot import Lot

OPTIONS = 8
CASES = ("one", "alike", "two")
SAYS = [
    ["one", "One misbuild is left, and it explains everything"],
    ["alike", "Several are left, each alone explains everything, and no check tells them apart"],
    ["two", "No misbuild alone explains it; it takes two at once"],
    ["none", "Nothing is wrong with this unit"],
    ["more", "More than one is left, and a check not named here would tell them apart"],
]


def draw(lot: Lot) -> dict:
    """A unit with one or two misbuilds: ``record`` of all checks, ``options``, ``says``."""
    stream = lot.stream.child("own")
    case = lot.in_turn("own", CASES)[0]
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
        found = explain(lot.unit, {row[0]: row[2] for row in record})
        least = [set(one) for one in found.least if not set(one) & set(lot.silent)]
        if sum(1 for row in record if row[2] != "as it should be") < len(wrong):
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
    return {
        "record": record,
        "minutes": {check: lot.minutes(check) for check in lot.table.checks},
        "options": lot.named(stream.shuffled([*rights, *others])),
        "says": stream.shuffled(SAYS),
    }
