"""What can be done next, and why something cannot."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass

from twoshaft.models.order.slip import places, sort_out
from twoshaft.models.order.task import OrderTask, Reason
from twoshaft.units.sections.order import RuleKind


def ready_steps(task: OrderTask, done: Iterable[str]) -> tuple[str, ...]:
    """Steps that can be done next without breaking a rule.

    Parameters
    ----------
    task : OrderTask
        The task.
    done : iterable of str
        Steps done so far, in the order they were done.

    Returns
    -------
    tuple of str
        In the order of the unit file.

    Examples
    --------
    >>> steps = "stone-housing-face", "wash-housing", "warm-housing"  # each before the next
    >>> task = OrderTask.from_unit(unit, steps)
    >>> ready_steps(task, ["stone-housing-face"])
    ('wash-housing',)
    """
    order = sort_out(task, done).first
    mask = sum(1 << j for j in order)
    return tuple(
        step
        for i, step in enumerate(task.steps)
        if not (mask >> i & 1 or task.before[i] & ~mask) and _chosen(task, order, i)
    )


def _chosen(task: OrderTask, order: Sequence[int], i: int) -> bool:
    """Whether a step that comes next keeps every choice that is its own."""
    mine = [choice for choice in task.choices if choice.step == i]
    return not mine or all(c.kept(places(len(task.steps), [*order, i])) for c in mine)


@dataclass(frozen=True)
class Consequence:
    """What doing a step at its place brings about.

    Attributes
    ----------
    step : str
        The step.
    state : str
        ``ok``, ``blocked`` (it cannot be done yet), ``buried`` (it can no longer be reached),
        ``harmed`` (a part is damaged) or ``blinded`` (a check is made worthless).
    reasons : tuple of Reason
        Every rule behind it; those of the state first.
    buries : tuple of str
        Steps not done yet that cannot be reached once this one is done.

    Examples
    --------
    >>> steps = "wash-housing", "fit-bore-plug"
    >>> task = OrderTask.from_unit(unit, steps)
    >>> [(one.step, one.state) for one in consequences(task, steps[::-1])]
    [('fit-bore-plug', 'ok'), ('wash-housing', 'buried')]
    """

    step: str
    state: str
    reasons: tuple[Reason, ...]
    buries: tuple[str, ...]


_STATES = {
    RuleKind.CANNOT: "blocked",
    RuleKind.BURIES: "buried",
    RuleKind.HARMS: "harmed",
    RuleKind.BLINDS: "blinded",
}


def consequences(task: OrderTask, sequence: Iterable[str]) -> tuple[Consequence, ...]:
    """What each step of a proposed order brings about, for practice.

    Parameters
    ----------
    task : OrderTask
        The task.
    sequence : iterable of str
        Step ids; steps may be missing.

    Returns
    -------
    tuple of Consequence
        One for each step of the sequence (first place of each), in order. A buried step shows
        where its turn comes; the step that buries it lists it under ``buries``.

    Examples
    --------
    A housing that is warmed before it was washed.

    >>> steps = "stone-housing-face", "wash-housing", "warm-housing"  # each before the next
    >>> task = OrderTask.from_unit(unit, steps)
    >>> [one.state for one in consequences(task, ["stone-housing-face", "warm-housing"])]
    ['ok', 'harmed']
    """
    order = sort_out(task, sequence).first
    leaving: dict[int, list] = {}
    for bond in task.bonds:
        leaving.setdefault(bond.earlier, []).append(bond)
    result, mask = [], 0
    for position, i in enumerate(order):
        unmet = [b.reason for b in task.bonds_into[i] if not mask >> b.earlier & 1]
        place = places(len(task.steps), order[: position + 1])
        unmet += [c.reason for c in task.choices if c.step == i and not c.kept(place)]
        over = [
            bond.reason
            for bond in leaving.get(i, ())
            if bond.reason.kind is RuleKind.BURIES and mask >> bond.later & 1
        ]
        found = {
            RuleKind.CANNOT: [r for r in unmet if r.kind is RuleKind.CANNOT],
            RuleKind.BURIES: over,
            RuleKind.HARMS: [r for r in unmet if r.kind is RuleKind.HARMS],
            RuleKind.BLINDS: [r for r in unmet if r.kind is RuleKind.BLINDS],
        }
        state = next((_STATES[kind] for kind, reasons in found.items() if reasons), "ok")
        covers = [r for r in unmet if r.kind is RuleKind.BURIES]
        result.append(
            Consequence(
                step=task.steps[i],
                state=state,
                reasons=tuple(r for reasons in found.values() for r in reasons) + tuple(covers),
                buries=tuple(dict.fromkeys(step for r in covers for step in r.earlier)),
            )
        )
        mask |= 1 << i
    return tuple(result)
