"""What can still be read of a unit half apart, and what the next step would lose."""

from __future__ import annotations

from collections import Counter

from twoshaft.models.order import sensible_order
from twoshaft.models.strip import NOW, covered_by, lost_with, reading_state
from twoshaft.readings.strip_mark_clean.given import Lost, Step
from twoshaft.readings.strip_mark_clean.lot import BANK, Lot
from twoshaft.records import Option

READINGS, MOST_ALIKE, OFFERED, TRIES = 5, 2, 3, 40


def draw(lot: Lot) -> Lost:
    """A state in which some readings can be taken, some are covered and some are lost."""
    stream, task = lot.stream.child("lost"), lot.whole
    for _ in range(TRIES):
        order = sensible_order(lot.bare, stream)
        for count in stream.shuffled(range(1, len(order))):
            off = set(order[:count])
            states = {one: reading_state(task, one, off) for one in lot.readings}
            shown: list[str] = []
            for one in stream.shuffled(lot.readings):
                alike = Counter(states[other] for other in shown)[states[one]]
                if len(shown) < READINGS and alike < MOST_ALIKE:
                    shown.append(one)
            now = [one for one in lot.readings if states[one] == NOW]
            if len(shown) < READINGS or len(now) < 2:
                continue
            nexts = _nexts(lot, off, stream.shuffled(now)[:OFFERED])
            if nexts is not None:
                return _given(lot, off, shown, *nexts)
    raise lot.too_small("lost")


def _nexts(lot: Lot, off: set[str], offered: list[str]):
    """Steps each of which ends one of the readings offered, or none; which were taken."""
    stream, task = lot.stream.child("lost next"), lot.whole
    ends = {
        step: {one for one in offered if step in lost_with(task, one)}
        for step in lot.bare.steps
        if step not in off
    }
    lines = []
    for one in offered:
        own = [step for step, lost in ends.items() if lost == {one}]
        if not own:
            return None
        lines.append(stream.choice(own))
    none = [step for step, lost in ends.items() if not lost]
    more = OFFERED + 1 - len(lines)
    if len(none) < more:
        return None
    lines += stream.shuffled(none)[:more]
    taken = stream.shuffled(offered)[: 1 + stream.integer(len(offered) - 1)]
    return stream.shuffled(lines), stream.shuffled(offered), taken


def _given(lot: Lot, off: set[str], shown: list[str], lines, offered, taken) -> Lost:
    stream, task = lot.stream.child("lost shown"), lot.whole
    bearing = {
        step
        for one in (*shown, *offered)
        for step in (*covered_by(task, one), *lost_with(task, one))
    }
    rows = [step for step in task.steps if step in bearing | {*lines}]
    return Lost(
        state=tuple(Step(one, task.label(one), one in off) for one in stream.shuffled(rows)),
        readings=tuple(Option(one, task.label(one)) for one in shown),
        when=BANK.lists["when"],
        written=tuple(task.label(one) for one in task.steps if one in taken),
        taken=tuple(one for one in task.steps if one in taken),
        nexts=tuple(Option(one, task.label(one)) for one in lines),
        firsts=(*(Option(one, task.label(one)) for one in offered), *BANK.lists["nothing"]),
    )
