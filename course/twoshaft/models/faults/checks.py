"""Every check run on a unit as built: which model it reads and what it shows."""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

from twoshaft.models.faults import by_hand, running, tight
from twoshaft.models.faults.built import AsBuilt, Touched, joint_of
from twoshaft.models.faults.outcome import Outcome, Sign
from twoshaft.units.sections.faults import (
    ClickCheck,
    CordCheck,
    FinalCheck,
    FloatCheck,
    LeakCheck,
    TurnsCheck,
)
from twoshaft.units.sections.order import RuleKind
from twoshaft.units.unit import Unit

_READERS: dict[str, Callable[[Any, AsBuilt], list[Sign]]] = {
    "gears-go-in": by_hand.gears_go_in,
    "gears-held": by_hand.gears_held,
    "two-at-once": by_hand.two_at_once,
    "lockout": by_hand.lockout,
    "turns": by_hand.turns,
    "cord": running.cord,
    "end-float": running.end_float,
    "click": tight.click,
    "leaks": tight.leaks,
    "speed-drive": by_hand.speed_drive,
    "ring-gap": by_hand.ring_gap,
}
_SHOWS = (RuleKind.CANNOT, RuleKind.BLINDS)


def reads(unit: Unit, check: FinalCheck) -> Touched:
    """Give the models' inputs that a check depends on; it sees no other.

    Examples
    --------
    >>> sorted(reads(unit, unit.faults.check_by_id("pull-output")))
    ['order', 'setting output-shaft']
    >>> "joint oil-plugs" in reads(unit, unit.faults.check_by_id("watch-for-leaks"))
    True
    """
    found = {"order"} if check.operations else set()
    if isinstance(check, CordCheck | FloatCheck):
        found.add(f"setting {check.support}")
        if isinstance(check, CordCheck) and check.and_support:
            found.add(f"setting {check.and_support}")
            found |= set() if check.speed_ratio else {"train"}
    elif isinstance(check, ClickCheck | LeakCheck):
        found |= {joint_of(unit, group) for group in check.groups}
        if isinstance(check, LeakCheck):
            found |= {f"joint {face}" for face in check.faces}
    elif isinstance(check, TurnsCheck):
        found |= {"shift", "train"}
    else:
        found.add("train" if check.kind in ("speed-drive", "ring-gap") else "shift")
    return frozenset(found)


def run_check(check: FinalCheck, built: AsBuilt) -> Outcome:
    """Run a check on a unit as it was built.

    A step left out shows where a rule says that the check cannot be made, or is worthless,
    without it.

    Parameters
    ----------
    check : FinalCheck
        From the unit's faults section.
    built : AsBuilt

    Returns
    -------
    Outcome

    Examples
    --------
    >>> from twoshaft.models.faults import as_built
    >>> loose = unit.faults.misbuild_by_id("plug-loose")
    >>> run_check(unit.faults.check_by_id("watch-for-leaks"), as_built(unit, [loose])).sentence
    'Oil at: drain plug and level plug.'
    """
    missed = []
    for rule in built.unit.rules:
        ways = rule.any_of or ((rule.earlier,) if rule.earlier else ())
        if (
            ways
            and rule.kind in _SHOWS
            and rule.later in check.operations
            and built.left_out.issuperset(ways)
        ):
            missed.append(Sign(f"missing-{ways[0]}", rule.reason.rstrip(".")))
    return Outcome.of(*_READERS[check.kind](check, built), *missed)
