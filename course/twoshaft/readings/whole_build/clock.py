"""A clock of the unit with the minutes that this learner's steps take."""

from __future__ import annotations

from twoshaft.models.order import window
from twoshaft.readings.lots import TRIES
from twoshaft.readings.whole_build.given import Clock, Named, Taking
from twoshaft.readings.whole_build.lot import Lot
from twoshaft.records import Option

OPTIONS = 6
RIGHT = (2, 3)
LEFT = (1, 8)
"""Minutes that the clock leaves for more than what must be done while it runs."""


def draw(lot: Lot) -> Clock:
    """A clock, what must be done inside, and steps of which some fit in besides."""
    stream, task = lot.stream.child("clock"), lot.task
    clocks = lot.in_turn("clock", task.clocks)
    # A clock that leaves more time than a choice can be made of is given so that it ends sooner.
    for clock, sooner in [(one, later) for later in (False, True) for one in clocks]:
        for _ in range(TRIES // 10):
            takes = {
                step: max(0.5, round(2 * task.minutes(step)) / 2 + (stream.integer(5) - 2) / 2)
                for step in task.steps
            }
            allowed = float(max(2, round(clock.minutes) + stream.integer(5) - 2))
            found = window(task, clock.id, minutes=takes, allowed=allowed)
            if sooner and found.minutes_left > LEFT[1]:
                over = found.minutes_left - LEFT[0] - stream.integer(LEFT[1])
                allowed = float(round(allowed - over))
                found = window(task, clock.id, minutes=takes, allowed=allowed)
            left = found.minutes_left
            if not LEFT[0] <= left <= LEFT[1]:
                continue
            fits = [s for s in found.fits if left - takes[s] >= 0.5]
            long = [s for s in found.optional if takes[s] - left >= 0.5]
            right = RIGHT[stream.integer(len(RIGHT))]
            if len(fits) < right or len(long) < OPTIONS - right:
                continue
            chosen = stream.shuffled(fits)[:right] + stream.shuffled(long)[: OPTIONS - right]
            start, end = task.steps[clock.starts], task.steps[clock.ends]
            return Clock(
                clock=clock.id,
                name=clock.name,
                minutes=allowed,
                starts=Named(start, task.label(start)),
                ends=Named(end, task.label(end)),
                inside=tuple(Taking(task.label(s), takes[s]) for s in (*found.inside, end)),
                options=tuple(
                    Option(s, f"{task.label(s)} ({takes[s]:g} min)")
                    for s in stream.shuffled(chosen)
                ),
                takes={s: takes[s] for s in (*found.inside, end, *chosen)},
            )
    raise lot.too_small("clock")
