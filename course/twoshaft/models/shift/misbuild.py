"""A mechanism with parts put in wrongly: a misbuild changes a body or a spring, nothing else."""

from __future__ import annotations

from collections.abc import Iterable
from typing import TypeVar

from twoshaft.errors import OutOfRangeError
from twoshaft.units.kept import kept
from twoshaft.units.sections.shift import Axis, Body, Change, Interlock, Passive, Shift

Part = TypeVar("Part", Body, Passive, Interlock)

MOST = 128
"""So many ways to put a mechanism together wrongly are kept, each with what is found of it."""


def with_misbuilds(shift: Shift, misbuilds: Iterable[str]) -> Shift:
    """Return the mechanism as it is with some misbuilds in it; kept with the section.

    Parameters
    ----------
    shift : Shift
        The mechanism as it should be.
    misbuilds : iterable of str
        Ids from its list of misbuilds.

    Raises
    ------
    OutOfRangeError
        An id that the unit does not have.

    Examples
    --------
    >>> from twoshaft.models.shift import mechanism, prove_by_hand
    >>> worn = with_misbuilds(unit.shift, ["finger-peg-worn"])
    >>> prove_by_hand(mechanism(worn)).sentences
    ('Reverse cannot be engaged.', 'The direct shift from fifth to reverse is stopped.')
    """
    chosen = tuple(misbuilds)
    return _with_misbuilds(shift, chosen) if chosen else shift


@kept(most=MOST)
def _with_misbuilds(shift: Shift, misbuilds: tuple[str, ...]) -> Shift:
    known = {misbuild.id: misbuild for misbuild in shift.misbuilds}
    for name in misbuilds:
        if name not in known:
            raise OutOfRangeError("misbuild", name, ", ".join(known), "the unit file")
        for change in known[name].changes:
            shift = _changed(shift, change)
    return shift


def _changed(shift: Shift, change: Change) -> Shift:
    update = {}
    for section in ("bodies", "passive", "interlocks"):
        entries = []
        for body in getattr(shift, section):
            if body.id != change.body:
                entries.append(body)
            elif not change.remove:
                entries.append(_changed_part(body, change))
        update[section] = tuple(entries)
    if change.remove:
        kept = {body.id for body in update["passive"]}
        update["rails"] = tuple(rail for rail in shift.rails if rail.body in kept)
        update["interlocks"] = tuple(p for p in update["interlocks"] if set(p.rails) <= kept)
    return shift.model_copy(update=update)


@kept()
def _changed_part(part: Part, change: Change) -> Part:
    """One object for each change of a part: what is worked out of it is shared by mechanisms."""
    return part.model_copy(update=_update(part, change))


def _update(body, change: Change) -> dict:
    if change.drive is not None:
        return {"drive": change.drive}
    if change.gives_at_n is not None:
        return {"gives_at_n": change.gives_at_n}
    if change.length_mm is not None:
        return {"length_mm": change.length_mm}
    if change.pieces is not None:
        return {"pieces": change.pieces}
    if change.mirror is not None:
        sx, sy = (-1, 1) if change.mirror is Axis.TRAVEL else (1, -1)
        return {"pieces": tuple(tuple((sx * x, sy * y) for x, y in p) for p in body.pieces)}
    dx, dy = change.shift_mm or (0.0, 0.0)
    return {"pieces": tuple(tuple((x + dx, y + dy) for x, y in p) for p in body.pieces)}
