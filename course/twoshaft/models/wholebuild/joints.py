"""A group of fasteners as it was tightened, by the joint model: clamp, stress, evenness."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, replace
from typing import Any

import numpy as np

from twoshaft.models import joint
from twoshaft.models.wholebuild.asks import PATTERNS, Ask, pattern_of
from twoshaft.models.wholebuild.faults import Fault
from twoshaft.models.wholebuild.job import Job
from twoshaft.units.kept import kept
from twoshaft.units.quantities import Q
from twoshaft.units.unit import Unit

_ROUNDING_NM = 1e-6


@dataclass(frozen=True, eq=False)
class JointResult:
    """A group as it was tightened.

    Attributes
    ----------
    ask : Ask
    state : str
        State of the threads.
    wrench : str
    setting : pint.Quantity
        On the wrench [N·m].
    torque : pint.Quantity or None
        At the fastener [N·m]; None where the wrench cannot be set so.
    clamp : joint.ClampBounds or None
        Smallest, typical and largest clamp that the torque leaves.
    use : float
        Largest share of yield.
    kept_n : ndarray or None
        Clamp that each keeps in the end, friction typical [N]; None without a flange.
    spread : float or None
        Largest less smallest of them over the one aimed at.
    pattern, rounds : str and int, or None
    faults : tuple of Fault

    Examples
    --------
    >>> from twoshaft.models.wholebuild import Job, consequences, right_decisions
    >>> job = Job.of(unit, {"asked": ["joint-idler-bolt"]})
    >>> done = consequences(job, right_decisions(job)).joints
    >>> result = next(one for one in done if one.ask.about == "idler-bolt")
    >>> result.wrench, f"{result.torque.m_as('N*m'):g} N·m", round(result.use, 2)
    ('middle-wrench', '38 N·m', 0.7)
    """

    ask: Ask
    state: str
    wrench: str
    setting: Q
    torque: Q | None
    clamp: joint.ClampBounds | None
    use: float
    kept_n: np.ndarray | None
    spread: float | None
    pattern: str | None
    rounds: int | None
    faults: tuple[Fault, ...]


def judge_joint(job: Job, ask: Ask, values: Mapping[str, Any]) -> JointResult | None:
    """Judge how a group was tightened; None where something of it was not decided.

    Parameters
    ----------
    job : Job
    ask : Ask
        Of kind ``joint``.
    values : mapping
        Values by field name.

    Raises
    ------
    OutOfRangeError
        For a setting not above zero, or a figure outside the joint model.

    Examples
    --------
    >>> from twoshaft.models.wholebuild import Job, asks_of, right_values
    >>> job = Job.of(unit, {"asked": ["joint-idler-bolt"]})
    >>> ask = asks_of(job)[0]
    >>> oiled = right_values(job, ask) | {"state-idler-bolt": "oiled"}
    >>> [fault.kind for fault in judge_joint(job, ask, oiled).faults]
    ['state']
    """
    if any(values.get(spec.name) is None for spec in ask.fields):
        return None
    id = ask.about
    nm = values[f"torque-{id}"].m_as("N*m")
    state, wrench, pattern = (
        values[f"state-{id}"],
        values[f"tool-{id}"],
        values.get(f"pattern-{id}"),
    )
    rounds = None if (said := values.get(f"rounds-{id}")) is None else int(said)
    done = _tightened(job.unit, id, state, wrench, nm, pattern, rounds)
    return JointResult(
        ask=ask,
        state=state,
        wrench=wrench,
        setting=Q(nm, "N*m"),
        torque=done.torque,
        clamp=done.clamp,
        use=done.use,
        kept_n=done.kept_n,
        spread=done.spread,
        pattern=pattern,
        rounds=rounds,
        faults=tuple(
            Fault(kind, ask.step, ask.id, f"{ask.name}: {words}.") for kind, words in done.found
        ),
    )


@dataclass(frozen=True, eq=False)
class _Tightened:
    """A group tightened so, whoever did it; ``found`` are kinds and words of what is wrong."""

    torque: Q | None
    clamp: joint.ClampBounds | None
    use: float
    kept_n: np.ndarray | None
    spread: float | None
    found: tuple[tuple[str, str], ...]


@kept(most=2048)
def _tightened(
    unit: Unit,
    id: str,
    state: str,
    wrench: str,
    setting_nm: float,
    pattern: str | None,
    rounds: int | None,
) -> _Tightened:
    setting, found = Q(setting_nm, "N*m"), []
    entry = next(w for w in unit.fasteners.wrenches if w.id == wrench)
    group = joint.Fastening.of(unit, id)
    bolts = replace(group, wrench=joint.TorqueWrench.of(entry))

    def say(kind: str, words: str) -> None:
        found.append((kind, words))

    if not bolts.wrench.suits(setting):
        say(
            "tool",
            f"the {entry.name.lower()} is good from {bolts.wrench.usable_from_nm:g} to "
            f"{entry.high_nm:g} N·m, not for {setting_nm:g} N·m",
        )
    if not entry.low_nm <= setting_nm <= entry.high_nm:
        say("loose", "the wrench cannot be set so, and they are only run in by hand")
        return _Tightened(None, None, 0.0, None, None, tuple(found))
    torque = bolts.torque_at(setting)
    _torque_words(bolts, torque, state, say)
    clamp = bolts.bounds(state, torque)
    use = bolts.worst_use(state, torque)
    _clamp_words(bolts, clamp, use, say)
    left, spread = None, None
    if pattern is not None:
        order = pattern_of(unit, id, pattern)
        # The flange is the group's own, whatever the wrench: what it has solved stays with it.
        done = joint.tighten(group.face(), [joint.Round.of(order, clamp.typical)] * (rounds or 1))
        left, spread = done.clamp_n, done.spread
        if spread > bolts.group.spread:
            say(
                "uneven",
                f"{PATTERNS[pattern].lower()}, {rounds} round{'' if rounds == 1 else 's'}, leaves "
                f"{left.min() / 1e3:.1f} to {left.max() / 1e3:.1f} kN; a spread of "
                f"{bolts.group.spread:.0%} is allowed, not {spread:.0%}",
            )
    return _Tightened(torque, clamp, use, left, spread, tuple(found))


def _torque_words(bolts: joint.Fastening, torque: Q, state: str, say) -> None:
    low, _, high = bolts.group.torque_nm
    nm, half = torque.m_as("N*m"), bolts.wrench.step_nm / 2 + _ROUNDING_NM
    if not low - half <= nm <= high + half:
        say("torque", f"{nm:.1f} N·m at the thread, where {low:g} to {high:g} N·m belong")
    if state != bolts.group.state:
        is_, should = (bolts.states[one].name.lower() for one in (state, bolts.group.state))
        say("state", f"the torque is stated for “{should}”, and the threads are “{is_}”")


def _clamp_words(bolts: joint.Fastening, clamp: joint.ClampBounds, use: float, say) -> None:
    need, strip = bolts.group.clamp_kn, bolts.strip()
    low, high = clamp.low_n / 1e3, clamp.high_n / 1e3
    if low < need:
        say("loose", f"the clamp can be as small as {low:.1f} kN, and {need:g} kN are needed")
    if use > joint.MOST_USE:
        say("overstressed", f"up to {use:.0%} of yield is used, over {joint.MOST_USE:.0%}")
    if strip is not None and strip.holds_n < clamp.high_n:
        held = f"at {strip.holds_n / 1e3:.1f} kN the {strip.first}"
        say("stripped", f"the clamp can reach {high:.1f} kN, and {held}")


def locked_fault(job: Job, result: JointResult, volumes_mm3: Mapping[str, float]) -> list[Fault]:
    """Blind holes of a group in which sealant stands: what the bolt then meets.

    Examples
    --------
    >>> from twoshaft.models.wholebuild import Job, asks_of, right_values
    >>> job = Job.of(unit, {"asked": ["joint-case-bolts"]})
    >>> result = judge_joint(job, asks_of(job)[0], right_values(job, asks_of(job)[0]))
    >>> [fault.kind for fault in locked_fault(job, result, {"bolt-1": 500.0})]
    ['locked']
    """
    bolts = joint.Fastening.of(job.unit, result.ask.about)
    hole = bolts.blind_hole()
    if hole is None or result.torque is None:
        return []
    found = []
    for name, volume in volumes_mm3.items():
        if volume <= 0:
            continue
        lock = joint.hydraulic_lock(
            hole, bolts.thread, bolts.seat, Q(volume, "mm**3"), result.torque,
            bolts.states[result.state].thread[1],
        )  # fmt: skip
        if lock.locks:
            words = f"{result.ask.name}: sealant locks {name.replace('-', ' ')} before its head is "
            words += "down, and the boss splits." if lock.splits else "down."
            found.append(Fault("locked", result.ask.step, result.ask.id, words))
    return found
