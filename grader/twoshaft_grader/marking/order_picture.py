"""What is in the way of a step of an order, as a picture: the unit at that step, the part lit."""

from __future__ import annotations

from collections.abc import Sequence

from twoshaft.models.order import OrderTask, Reason, consequences
from twoshaft.models.shape import fitted_after, lie_of, step_parts, views_of_parts
from twoshaft.plots.unit_scene import ScenePicture
from twoshaft.readings.scenes import Scene, lies_row
from twoshaft.records import Option
from twoshaft.units import Unit
from twoshaft.units.sections.order import OperationKind, RuleKind

_SEEN = (RuleKind.CANNOT, RuleKind.BURIES)


def order_picture(unit: Unit, task: OrderTask, order: Sequence[str]) -> str:
    """The unit at the first step that something stands in the way of, or that lacks its seat.

    Parameters
    ----------
    unit : Unit
    task : OrderTask
    order : sequence of str
        The steps as they were put in order.

    Returns
    -------
    str
        SVG; empty where no step has to wait for a part that the section shows.
    """
    inside = {id: at for at, id in enumerate(order)}
    for one in consequences(task, order):
        for reason in one.reasons:
            if reason.kind not in _SEEN or not reason.earlier:
                continue
            if reason.kind is RuleKind.BURIES and reason.later == one.step:
                continue  # what it covers shows it better: there it stands in the way
            done = list(order[: inside[one.step]])
            drawn = _picture(unit, task, reason, one.step, done)
            if drawn:
                return drawn
    return ""


def _picture(unit: Unit, task: OrderTask, reason: Reason, step: str, done: Sequence[str]) -> str:
    """A step and the one that belongs before it, after the steps that are done."""
    late = reason.later != step  # what came before it lies over it, or took away what it needs
    other = reason.later if late else reason.earlier[0]
    kinds = {unit.operation_by_id[one].kind for one in _operations(unit, task, [other])}
    if late:
        word = "is out again" if OperationKind.REMOVE in kinds else "is in the way"
    else:  # it lacks what comes first
        word = "belongs in first" if OperationKind.FIT in kinds else "has to be done first"
    mine, others = (step_parts(unit, _operations(unit, task, [one])) for one in (step, other))
    shown = views_of_parts(unit)
    pairs = [(a, b, view) for a in mine for b in others if a != b
             for view in shown.get(a, ()) if view in shown.get(b, ())]  # fmt: skip
    if not pairs:
        return ""
    part, stands, view = pairs[0]
    fitted = fitted_after(unit, _operations(unit, task, done))
    around = [id for id in fitted if view in shown.get(id, ())]
    scene = Scene(
        view,
        mirrored=False,
        upside=False,
        lies=tuple(lies_row(lie_of(unit, view, id)) for id in around),
        spots=(Option("1", part), Option("2", stands)),
    )
    return ScenePicture(unit, scene).marked({"1": "this step", "2": word})


def _operations(unit: Unit, task: OrderTask, steps: Sequence[str]) -> list[str]:
    """The operations of some steps, several where they go in together."""
    chosen = {task.step_of.get(step, step) for step in steps}
    of = task.step_of
    return [one.id for one in unit.operations if of.get(one.id, one.id) in chosen]
