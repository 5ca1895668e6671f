"""What a shift section gets wrong, found by running the model."""

from __future__ import annotations

from twoshaft.models.shift.lockout import what_stops
from twoshaft.models.shift.mechanism import mechanism
from twoshaft.models.shift.misbuild import with_misbuilds
from twoshaft.models.shift.proof import prove_by_hand
from twoshaft.units.findings import Finding
from twoshaft.units.unit import Unit


def audit_shift(unit: Unit) -> tuple[Finding, ...]:
    """Check that the mechanism, put together rightly, passes the test by hand.

    Parameters
    ----------
    unit : Unit

    Returns
    -------
    tuple of Finding
        Empty when nothing is wrong or the unit has no shift section.

    Examples
    --------
    >>> audit_shift(unit)
    ()
    """
    shift = unit.shift_if_any
    if shift is None:
        return ()
    found = []

    def say(what: str, mend: str, *place: str | int) -> None:
        found.append(Finding(unit.where("shift", *place), what, mend))

    if not mechanism(shift).starts():
        say("the hand cannot be at its start: bodies overlap there", "move the bodies apart")
        return tuple(found)
    proof = prove_by_hand(mechanism(shift))
    for gear in proof.cannot:
        say(f"{gear} cannot be engaged", "check jaws, gates and ranges", "rails")
    for gear in proof.not_held:
        say(f"nothing holds {gear} once it is engaged", "give its rail a notch there", "rails")
    for gears in proof.at_once:
        say(f"{' and '.join(gears)} can be engaged at once", "add an interlock", "interlocks")
    for number, (block, lock) in enumerate(zip(shift.must_block, proof.locks, strict=True)):
        if lock.verdict != "holds":
            say(f"the lockout does not lock: {lock.earlier} goes straight into {lock.later}",
                "check the bodies that should stop it, and their springs",
                "must_block", number)  # fmt: skip
        elif not what_stops(shift, block).devices:
            say(f"no body brings it about that {lock.earlier} does not go into {lock.later}: "
                "rails and finger alone do not go that way either",
                "give the body that stops it, or name the gates of the way under 'through', "
                "or drop the entry", "must_block", number)  # fmt: skip
    if unit.gear_train_if_any is not None:
        known = {gear.id for gear in unit.gear_train.gears}
        for gear in [g for rail in shift.rails for g in (rail.low, rail.high) if g]:
            if gear not in known:
                say(f"the gear train has no gear {gear}", "use its name for the gear", "rails")
    for misbuild in shift.misbuilds:
        if not mechanism(with_misbuilds(shift, [misbuild.id])).starts():
            say(f"with {misbuild.id} the bodies overlap before the hand moves",
                "change what the assembly fault does", "misbuilds", misbuild.id)  # fmt: skip
    return tuple(found)
