"""The state of the build: what is fitted, what a step shows, and why if it shows nothing."""

from __future__ import annotations

from collections.abc import Collection, Iterable, Sequence
from dataclasses import dataclass, replace

from twoshaft.errors import UnitFileError
from twoshaft.models.shape.schematic import shapes_of
from twoshaft.units.sections.order import Operation, OperationKind
from twoshaft.units.unit import Unit

_FITS = (OperationKind.FIT, OperationKind.TRIAL)
_FROM = {
    "rear": "from the rear",
    "front": "from the front",
    "outside": "from outside, across the shafts",
    "by-hand": "by hand, bent round what it passes",
}


@dataclass(frozen=True)
class StepShown:
    """What a step changes in the picture.

    Attributes
    ----------
    operation : str
    parts : tuple of str
        The parts that are lit.
    way : str or None
        Where they come from or go to: rear, front, outside or by-hand; None where they stay.
    on : str or None
        The part that they are fitted to while it is off the unit.
    leaves : bool
        They are taken out.
    with_what : tuple of str
        Names of the tools and consumables, which are shown at the parts.
    unseen : str or None
        Why the picture shows nothing of it.

    Examples
    --------
    >>> shown = step_shown(unit, "lower-case")
    >>> shown.parts, shown.way
    (('main-case',), 'rear')
    """

    operation: str
    parts: tuple[str, ...]
    way: str | None
    on: str | None
    leaves: bool
    with_what: tuple[str, ...]
    unseen: str | None


@dataclass(frozen=True)
class BuildShown:
    """The unit after some operations, with one in hand.

    Attributes
    ----------
    fitted : frozenset of str
        Parts that are in their place, or on the bench with the part they belong to.
    bench : frozenset of str
        Those on the bench: fitted to a part that is off the unit.
    step : StepShown or None
        The step in hand.
    words : str
        The same as a sentence.

    Examples
    --------
    >>> build_shown(unit, (), "fit-magnet").words.split(":")[0]
    'In hand'
    """

    fitted: frozenset[str]
    bench: frozenset[str]
    step: StepShown | None
    words: str


def fitted_after(unit: Unit, done: Iterable[str]) -> frozenset[str]:
    """Parts that are in their place after some operations, in their order.

    Raises
    ------
    UnitFileError
        When an operation is unknown.

    Examples
    --------
    >>> sorted(fitted_after(unit, ["fit-magnet"]))
    ['clutch-housing', 'magnet', 'magnet-pad']
    """
    fitted = {part.id for part in unit.parts if part.in_place}
    for id in done:
        operation = _operation(unit, id)
        if operation.kind in _FITS:
            fitted.update(operation.parts)
        elif operation.kind is OperationKind.REMOVE:
            fitted.difference_update(operation.parts)
    return frozenset(fitted)


def on_the_bench(unit: Unit, done: Iterable[str]) -> dict[str, str]:
    """Parts that are fitted to another one while that one is still off the unit.

    Parameters
    ----------
    unit : Unit
    done : iterable of str
        Operations that are done, in their order.

    Returns
    -------
    dict
        The part that each stands on.

    Examples
    --------
    >>> on_the_bench(unit, ["fit-diff-gears"])["planet-pin"]
    'diff-carrier'
    """
    done = list(done)
    fitted, steps = fitted_after(unit, done), {s.id: s for s in shapes_of(unit).steps}
    return {
        part: base
        for id in done
        if (said := steps.get(id)) is not None and (base := said.on) is not None
        for part in unit.operation_by_id[id].parts
        if base not in fitted and part in fitted
    }


def step_shown(unit: Unit, operation: str) -> StepShown:
    """What an operation changes in the picture.

    Parameters
    ----------
    unit : Unit
    operation : str
        Its id.

    Raises
    ------
    UnitFileError
        When it is unknown.

    Examples
    --------
    >>> step_shown(unit, "stake-nuts").with_what
    ('Staking punch', 'Soft-faced hammer')
    """
    work = _operation(unit, operation)
    said = shapes_of(unit).step_by_id(operation)
    fits, leaves = work.kind in _FITS, work.kind is OperationKind.REMOVE
    parts = work.parts or (said.at if said else ()) or _of_fasteners(unit, operation)
    moves = bool(work.parts) and (fits or leaves)  # oil and sealant come without a part
    way = (said.way if said and said.way else "rear") if moves else None
    names = {one.id: one.name for one in unit.tools}
    names |= {one.id: one.name for one in unit.consumables}
    with_what = tuple(names[one] for one in (*work.tools, *work.consumables))
    unseen = said.unseen if said else None
    if not parts and unseen is None:
        unseen = "The unit file does not say at which part it is done."
    on = said.on if said and way else None
    return StepShown(operation, tuple(parts), way, on, leaves, with_what, unseen)


def step_parts(unit: Unit, operations: Iterable[str]) -> tuple[str, ...]:
    """The parts that some operations, done as one step, change in the picture.

    Parameters
    ----------
    unit : Unit
    operations : iterable of str

    Examples
    --------
    >>> step_parts(unit, ["fit-magnet"])
    ('magnet', 'magnet-pad')
    """
    shown = (step_shown(unit, operation) for operation in operations)
    return tuple(dict.fromkeys(part for one in shown for part in one.parts))


def parts_fitted(unit: Unit, operations: Iterable[str]) -> tuple[str, ...]:
    """The parts that some operations fit for good: none that is there on trial, locked or cleaned.

    Parameters
    ----------
    unit : Unit
    operations : iterable of str

    Raises
    ------
    UnitFileError
        When an operation is unknown.

    Examples
    --------
    >>> parts_fitted(unit, ["fit-magnet", "wash-housing", "trial-close"])
    ('magnet', 'magnet-pad')
    """
    works = (_operation(unit, id) for id in operations)
    return tuple(
        dict.fromkeys(p for one in works if one.kind is OperationKind.FIT for p in one.parts)
    )


def build_shown(
    unit: Unit,
    done: Collection[str],
    step: str | Sequence[str] | None = None,
    *,
    tools: bool = True,
) -> BuildShown:
    """The unit after some operations, with one in hand.

    Parameters
    ----------
    unit : Unit
    done : collection of str
        Operations that are done, in their order.
    step : str or sequence of str, optional
        The operation in hand, not yet done; several that go in together.
    tools : bool, optional
        Whether tools and consumables are shown: left out where they are asked for.

    Examples
    --------
    >>> shown = build_shown(unit, ["warm-housing"], "fit-output-front-ring")
    >>> print(shown.words)
    In hand: Front bearing outer ring of the output shaft, which goes in from the rear; with \
Driver for outer rings. In place: 1 of 68 parts.
    """
    fitted, bench = fitted_after(unit, done), frozenset(on_the_bench(unit, done))
    steps = [step] if isinstance(step, str) else list(step or ())
    shown = _together([step_shown(unit, one) for one in steps]) if steps else None
    if shown is not None and not tools:
        shown = replace(shown, with_what=())
    place = f"In place: {len(fitted - bench)} of {len(unit.parts)} parts"
    place += f", {len(bench)} on the bench." if bench else "."
    return BuildShown(fitted, bench, shown, f"{_told(unit, shown)} {place}".strip())


def _together(steps: list[StepShown]) -> StepShown:
    """What several steps show at once; the first one's way, tools of all."""
    first = steps[0]
    parts = tuple(dict.fromkeys(part for one in steps for part in one.parts))
    with_what = tuple(dict.fromkeys(name for one in steps for name in one.with_what))
    return replace(first, parts=parts, with_what=with_what)


def _told(unit: Unit, shown: StepShown | None) -> str:
    if shown is None:
        return ""
    if not shown.parts:
        return f"Nothing to see in the picture. {shown.unseen}"
    named = ", ".join(unit.part_by_id[part].name for part in shown.parts)
    if shown.way is not None:
        goes = "comes" if len(shown.parts) == 1 else "come"
        where = _FROM[shown.way]
        if shown.leaves:
            where = where.replace("from", "out towards", 1)
        else:
            goes = "goes in" if len(shown.parts) == 1 else "go in"
        told = f"In hand: {named}, which {goes} {where}"
        if shown.on is not None:
            told += f", into {_small(unit.part_by_id[shown.on].name)} on the bench"
    else:
        told = f"Worked at: {named}"
    if shown.with_what:
        told += f"; with {', '.join(shown.with_what)}"
    return f"{told}. {shown.unseen or ''}".strip()


def _small(name: str) -> str:
    return name[:1].lower() + name[1:]


def _operation(unit: Unit, id: str) -> Operation:
    known = unit.operation_by_id.get(id)
    if known is None:
        raise UnitFileError(f"there is no operation {id!r}", mend="name one of the operations")
    return known


def _of_fasteners(unit: Unit, operation: str) -> tuple[str, ...]:
    """Parts of the joints that an operation tightens."""
    groups = unit.fasteners_if_any.groups if unit.fasteners_if_any else ()
    return tuple(
        dict.fromkeys(part for g in groups if operation in g.operations for part in g.parts)
    )
