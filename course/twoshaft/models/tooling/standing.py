"""The tools of a step in their places at the unit."""

from __future__ import annotations

from collections.abc import Collection, Sequence

from twoshaft.models.fit import Ring
from twoshaft.models.shape.schematic import shapes_of
from twoshaft.models.tooling.around import around_step
from twoshaft.models.tooling.driving import TUBES, driven
from twoshaft.models.tooling.reading import read_with
from twoshaft.models.tooling.stands import ToolStands, Touch
from twoshaft.units.sections.order import OperationKind
from twoshaft.units.sections.tool_forms import ToolForm
from twoshaft.units.unit import Unit

__all__ = ["ToolStands", "Touch", "drives", "tools_standing"]

_READS = (OperationKind.MEASURE, OperationKind.CHECK)
_GAUGES = (
    *(ToolForm.DIAL, ToolForm.DEPTH, ToolForm.STRAIGHTEDGE, ToolForm.FEELER),
    ToolForm.SCALE,
)
_BLOWS = (ToolForm.PUNCH, ToolForm.HAMMER)


def forms_of(unit: Unit, operations: Sequence[str]) -> tuple[ToolForm, ...]:
    """Forms of the tools of some operations, in their order.

    Parameters
    ----------
    unit : Unit
    operations : sequence of str

    Examples
    --------
    >>> [form.value for form in forms_of(unit, ["fit-diff-shim"])]
    ['press', 'driver']
    """
    looks = {tool.id: tool.looks for tool in unit.tools}
    named = (tool for one in operations for tool in unit.operation_by_id[one].tools)
    return tuple(dict.fromkeys(looks[tool] for tool in named))


def drives(unit: Unit, operations: Sequence[str]) -> bool:
    """Whether some operations press or drive a part in, or strike one.

    Parameters
    ----------
    unit : Unit
    operations : sequence of str

    Examples
    --------
    >>> drives(unit, ["fit-diff-shim"]), drives(unit, ["read-diff-float"])
    (True, False)
    """
    kinds = {unit.operation_by_id[one].kind for one in operations}
    return not kinds & set(_READS) and bool(
        {*TUBES, *_BLOWS}.intersection(forms_of(unit, operations))
    )


def tools_standing(
    unit: Unit,
    operations: Sequence[str],
    done: Collection[str],
    *,
    rings: frozenset[Ring] | None = None,
    plain: Collection[str] = (),
) -> tuple[ToolStands, ...]:
    """The tools of a step, each where it bears, reads or strikes.

    Parameters
    ----------
    unit : Unit
    operations : sequence of str
        Operations of the step.
    done : collection of str
        Operations that are done, in their order.
    rings : frozenset of Ring, optional
        Rings of a whole bearing on which a driver presses; those of its fit where left out.
    plain : collection of str, optional
        Parts that are drawn as the room they take up: nothing of their form is told.

    Returns
    -------
    tuple of ToolStands
        Empty where the section shows no place for them: a box by its name, a hand alone.

    Examples
    --------
    >>> [one.on for one in tools_standing(unit, ["fit-input-front-bearing"], [])]
    ['on the rear face of the outer ring']
    """
    forms = forms_of(unit, operations)
    reads = all(unit.operation_by_id[one].kind in _READS for one in operations)
    found: list[ToolStands] = []
    for here in around_step(unit, operations, done):
        if drives(unit, operations):
            found += driven(unit, here, operations, forms, rings, plain)
        elif reads and (gauge := next((form for form in _GAUGES if form in forms), None)):
            said = [step for one in operations if (step := shapes_of(unit).step_by_id(one))]
            across = any(step.reads == "across" for step in said)
            between = [solid for step in said for solid in step.between]
            leaf = ToolForm.FEELER in forms
            one = read_with(here, gauge, across=across, leaf=leaf, between=between)
            found += [one] if one is not None else []
    return tuple(found)
