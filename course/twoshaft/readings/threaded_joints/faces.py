"""Bolted faces: one to take readings from, one to go on with crosswise."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import replace

import numpy as np

from twoshaft.errors import UnitFileError
from twoshaft.models.joint import Face, Fastening, Round, clockwise, crosswise, tighten
from twoshaft.models.order import OrderTask, model_order
from twoshaft.readings.keyed import Stream
from twoshaft.readings.scenes import LETTERS
from twoshaft.readings.threaded_joints import given
from twoshaft.readings.threaded_joints.lot import Lot
from twoshaft.records import Option
from twoshaft.units.kept import kept
from twoshaft.units.quantities import Q

LIMITS = (0.04, 0.06, 0.08, 0.1, 0.12, 0.15)
UNEVEN = 0.2
"""Spread after one round that is worth a task."""
MOST_ROUNDS = 4
PULLED, SEQUENCES, LOST, CLEARLY = 4, 60, 0.05, 1.5
"""Bolts pulled in a picture, how often it is drawn; what the loosest has lost, as a part of the
clamp, and how many times as much as the next."""
MOST_BOLTS = 10
RIGHT, OPTIONS = 3, 6
"""How many steps are needed before the bolts, and how many are shown."""
READING_KN = 0.1
"""What the rig's figures are rounded to."""


def face_like(fastening: Fastening, joint_share: float) -> Face:
    """The group's flange on a joint of another stiffness."""
    face = fastening.face()
    return replace(face, joint_stiffness_n_m3=face.joint_stiffness_n_m3 * joint_share)


def draw_face(lot: Lot) -> given.Face:
    """A face to tighten on the rig in an own order, and the spread that its joint bears.

    Drawn again until the loosest bolt is clear and no round's spread lies near the limit.
    """
    stream = lot.stream.child("face")
    pool = [f for f in lot.fastenings if f.group.flange and f.group.count <= MOST_BOLTS]
    if pool and not any(_first_spread(f) > UNEVEN for f in pool):
        raise _too_even(lot, pool)
    pool = [f for f in pool if _first_spread(f) > UNEVEN]
    for fastening in lot.in_turn("face", pool):
        for _ in range(20):
            drawn = _face(fastening, stream)
            if drawn is not None:
                return drawn
    raise lot.too_small("face")


def _too_even(lot: Lot, pool: Sequence[Fastening]) -> UnitFileError:
    """The complaint that on no face a bolt takes enough from its neighbours."""
    best = max(pool, key=_first_spread)
    joint = round(best.face().joint_stiffness_n_m3 / 1e9, 3)
    return UnitFileError(
        f"unit {lot.unit.identity.id!r} {lot.LACKS} 'face': after one round the clamps of "
        f"{best.group.id!r} differ by {100 * _first_spread(best):.1f} %, of other groups with a "
        f"'flange' by less, and the task takes more than {100 * UNEVEN:.0f} %",
        mend=f"see in its section 'fasteners' whether 'joint n per mm3' of {best.group.id!r}, now "
        f"{joint:g}, is lower on your unit, or leave this task out",
    )


@kept()
def _first_spread(fastening: Fastening) -> float:
    """Spread after one round, to tell faces whose bolts take much from each other."""
    order, target = clockwise(fastening.group.count), fastening.bounds().typical
    return tighten(fastening.face(), [Round.of(order, target)]).spread


def _face(fastening: Fastening, stream: Stream) -> given.Face | None:
    group = fastening.group
    count, step = group.count, fastening.wrench.step_nm
    torque = round(stream.uniform(group.torque_nm[0], group.torque_nm[2]) / step) * step
    share = round(stream.uniform(0.7, 1.4), 2)
    order = stream.shuffled(range(count))
    target = fastening.bounds(torque=Q(torque, "N*m")).typical
    face = face_like(fastening, share)
    done = tighten(face, [Round.of(order, target)] * MOST_ROUNDS)
    kn = np.round(np.sort(done.rounds_n[0]) / 1e3, 1)
    spreads = done.spreads
    if spreads[0] < UNEVEN or kn[1] - kn[0] < 3 * READING_KN:
        return None
    slack = READING_KN / target.m_as("kN")
    clear = [
        limit
        for limit in LIMITS
        if np.min(np.abs(spreads - limit)) > 1.5 * slack and spreads[-1] < limit < spreads[0]
    ]
    if not clear:
        return None
    return given.Face(
        group=group.id,
        name=group.name,
        torque_nm=round(torque, 3),
        target_kn=round(target.m_as("kN"), 1),
        joint_share=share,
        order=tuple(k + 1 for k in order),
        limit=stream.choice(clear),
        bolts=_bolts(range(count)),
        seen=_lost_most(fastening, face, target, stream),
    )


def _seen(fastening: Fastening, pulled: Sequence[int], stream: Stream) -> given.Seen:
    """A face as a picture, turned, with letters in an order of the learner's own."""
    letters = stream.shuffled(LETTERS[: len(fastening.positions_m)])
    return given.Seen(
        group=fastening.group.id,
        turned_deg=90 * stream.integer(4),
        pulled=tuple(k + 1 for k in pulled),
        spots=tuple(Option(one, str(k)) for k, one in enumerate(letters, 1)),
    )


def _lost_most(fastening: Fastening, face: Face, target: Q, stream: Stream) -> given.Seen | None:
    """Some bolts pulled once, of which one has lost clearly more clamp than the others."""
    for _ in range(SEQUENCES):
        pulled = stream.shuffled(range(fastening.group.count))[:PULLED]
        clamps = np.sort(tighten(face, [Round.of(pulled, target)]).clamp_n[pulled])
        lost = target.m_as("N") - clamps
        if lost[0] > LOST * target.m_as("N") and lost[0] > CLEARLY * lost[1]:
            return _seen(fastening, pulled, stream)
    return None


def _bolts(places: Iterable[int]) -> tuple[Option, ...]:
    return tuple(Option(f"bolt-{k + 1}", f"Bolt {k + 1}") for k in places)


def draw_pattern(lot: Lot) -> given.Pattern:
    """A face on which the first bolts have been pulled crosswise.

    ``before`` names the step that tightens them, and steps to choose from.
    """
    stream = lot.stream.child("pattern")
    pool = [f for f in lot.fastenings if len(f.positions_m) >= 6]
    for fastening in lot.in_turn("pattern", pool):
        count = len(fastening.positions_m)
        first = stream.integer(count)
        order = [(first + k) % count for k in crosswise(count)]
        clear = [done for done in range(2, 6) if _few_farthest(order[:done], count)]
        if not clear:
            continue
        pulled = order[: stream.choice(clear)]
        before = _before(lot, fastening, stream)
        if before is None:
            continue
        return given.Pattern(
            name=fastening.group.name, seen=_seen(fastening, pulled, stream), before=before
        )
    raise lot.too_small("pattern")


def _few_farthest(pulled: list[int], count: int) -> bool:
    """Whether few of the bolts that are left lie as far from the pulled ones as can be."""
    apart = [
        min(min((j - k) % count, (k - j) % count) for j in pulled)
        for k in range(count)
        if k not in pulled
    ]
    return max(apart) > 1 and apart.count(max(apart)) <= len(apart) / 4


def _before(lot: Lot, fastening: Fastening, stream: Stream) -> given.Before | None:
    """Steps of the build near the one that tightens a group, some of them needed before it."""
    task = OrderTask.from_unit(lot.unit)
    step = next((s for s in fastening.group.operations if s in task.number), None)
    if step is None:
        return None
    place = task.number[step]
    built = model_order(task)
    at = built.index(step)
    near = [s for s in built if s != step]
    needed = [s for s in near[:at] if task.before[place] >> task.number[s] & 1][-RIGHT:]
    later = [s for s in near[at:] if task.after[place] >> task.number[s] & 1][: OPTIONS - RIGHT]
    if len(needed) < RIGHT or len(later) < OPTIONS - RIGHT:
        return None
    shown = stream.shuffled(task.labelled([*needed, *later]))
    return given.Before(
        step=Option(step, task.label(step)),
        options=tuple(Option(*pair) for pair in shown),
    )
