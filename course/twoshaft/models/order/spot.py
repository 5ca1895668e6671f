"""Finding what is wrong in an order somebody else wrote."""

from __future__ import annotations

from collections.abc import Iterable

from twoshaft.models.order.slip import broken_reasons, late_clocks, sort_out
from twoshaft.models.order.task import OrderTask, Reason
from twoshaft.units.sections.order import RuleKind


def buried_steps(task: OrderTask, sequence: Iterable[str]) -> tuple[tuple[str, str], ...]:
    """Pairs (buried, burying) of an order: the first can no longer be reached at its turn.

    Parameters
    ----------
    task : OrderTask
        The task.
    sequence : iterable of str
        Step ids.

    Examples
    --------
    The plug covers what the wash should have reached.

    >>> steps = "wash-housing", "fit-bore-plug"
    >>> task = OrderTask.from_unit(unit, steps)
    >>> buried_steps(task, reversed(steps))
    (('wash-housing', 'fit-bore-plug'),)
    """
    broken = broken_reasons(task, sort_out(task, sequence).first)
    return tuple(
        (step, reason.later)
        for reason in broken
        if reason.kind is RuleKind.BURIES
        for step in reason.earlier[:1]
    )


def broken_safety(task: OrderTask, sequence: Iterable[str]) -> tuple[Reason, ...]:
    """Rules that guard safety and that an order breaks, and such clocks that run out.

    Examples
    --------
    Old oil and solvent must be out before the housing gets hot.

    >>> steps = "stone-housing-face", "wash-housing", "warm-housing"  # each before the next
    >>> task = OrderTask.from_unit(unit, steps)
    >>> [(rule.earlier, rule.later) for rule in broken_safety(task, reversed(steps))]
    [(('wash-housing',), 'warm-housing')]
    """
    order = sort_out(task, sequence).first
    broken = (*broken_reasons(task, order), *late_clocks(task, order))
    return tuple(reason for reason in broken if reason.safety)


def reasons_between(task: OrderTask, earlier: str, later: str) -> tuple[Reason, ...]:
    """The rules that put one step before another directly.

    Examples
    --------
    >>> steps = "stone-housing-face", "wash-housing", "warm-housing"  # each before the next
    >>> task = OrderTask.from_unit(unit, steps)
    >>> [str(reason.kind) for reason in reasons_between(task, "wash-housing", "warm-housing")]
    ['harms']
    """
    i, j = task.number[earlier], task.number[later]
    return tuple(bond.reason for bond in task.bonds_into[j] if bond.earlier == i)
