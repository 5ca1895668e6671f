"""The bench after some steps: what is on, what can be reached, what is hidden, what runs."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass

from twoshaft.models.order.ready import ready_steps
from twoshaft.models.order.slip import places, sort_out
from twoshaft.models.order.task import OrderTask, Reason
from twoshaft.models.order.times import Times, times
from twoshaft.units.sections.order import RuleKind


@dataclass(frozen=True)
class Refusal:
    """A step whose turn came and that could not be done.

    Attributes
    ----------
    step : str
        The step.
    state : str
        ``blocked`` (something is missing) or ``buried`` (something stands in its way).
    reasons : tuple of Reason
        Why.

    Examples
    --------
    >>> task = OrderTask.from_unit(unit)
    >>> [(one.step, one.state) for one in snapshot(task, ["tighten-case-bolts"]).refused]
    []
    """

    step: str
    state: str
    reasons: tuple[Reason, ...]


@dataclass(frozen=True)
class Running:
    """A clock after some steps.

    Attributes
    ----------
    id, name : str
        The clock.
    used, allowed : float
        Minutes since it was started (or that it took), and minutes allowed [min].
    over : bool
        Whether its last step is done.

    Examples
    --------
    >>> task = OrderTask.from_unit(unit)
    >>> place = task.steps.index("spread-sealant")
    >>> clock = snapshot(task, task.steps[: place + 1]).clocks[-1]
    >>> clock.id, clock.used, clock.allowed, clock.over
    ('sealant-skins', 0.0, 20.0, False)
    """

    id: str
    name: str
    used: float
    allowed: float
    over: bool

    @property
    def late(self) -> bool:
        """Whether more minutes went by than are allowed."""
        return self.used > self.allowed + 1e-9


@dataclass(frozen=True)
class Waiting:
    """A wait after some steps: a clock of "at least".

    Attributes
    ----------
    id, name : str
        The wait.
    until : str
        The step that may not begin before.
    run, least : float
        Minutes that have run, and minutes that must have run [min].
    stood : float
        So long the bench stood still for it, once its step is done; None before [min].

    Examples
    --------
    >>> task = OrderTask.from_unit(unit)
    >>> place = task.steps.index("tighten-case-bolts")
    >>> wait = snapshot(task, task.steps[: place + 1]).waits[0]
    >>> wait.until, wait.run, wait.least, wait.stood
    ('fill-oil', 0.0, 1440.0, None)
    """

    id: str
    name: str
    until: str
    run: float
    least: float
    stood: float | None


@dataclass(frozen=True)
class Snapshot:
    """The bench after some steps of an order.

    Attributes
    ----------
    done : tuple of str
        Steps that were done, in order.
    refused : tuple of Refusal
        Steps whose turn came and that could not be done.
    ready : tuple of str
        Steps that can be done next without breaking a rule.
    hidden : tuple of (str, str)
        Steps done that can no longer be reached, each with a step that covers it.
    lost_reach : tuple of (str, str)
        Steps not done that can no longer be reached, each with a step in its way.
    holds : tuple of str
        Names of the holds that are on.
    clocks : tuple of Running
        Clocks that were started.
    waits : tuple of Waiting
        Waits that were started.
    minutes : float
        Minutes of work so far [min].
    broken : tuple of Reason
        Rules broken by the steps that were done.
    parts_lost : tuple of str
        Parts that do not survive what was done.

    Examples
    --------
    >>> task = OrderTask.from_unit(unit)
    >>> bench = snapshot(task, task.steps[:2])
    >>> bench.done, bench.minutes, bench.ready[0]
    (('stone-housing-face', 'wash-housing'), 18.0, 'warm-housing')
    """

    done: tuple[str, ...]
    refused: tuple[Refusal, ...]
    ready: tuple[str, ...]
    hidden: tuple[tuple[str, str], ...]
    lost_reach: tuple[tuple[str, str], ...]
    holds: tuple[str, ...]
    clocks: tuple[Running, ...]
    waits: tuple[Waiting, ...]
    minutes: float
    broken: tuple[Reason, ...]
    parts_lost: tuple[str, ...]


def snapshot(task: OrderTask, sequence: Iterable[str]) -> Snapshot:
    """Do steps one after the other, leave out those that cannot be done, and look at the bench.

    Parameters
    ----------
    task : OrderTask
        The task.
    sequence : iterable of str
        Step ids in the order tried.

    Returns
    -------
    Snapshot
        A step that is impossible, or buried, is refused and not done; a step that harms a part
        or makes a check worthless is done all the same.

    Examples
    --------
    >>> task = OrderTask.from_unit(unit, ["stone-housing-face", "wash-housing", "warm-housing"])
    >>> snapshot(task, ["stone-housing-face"]).ready
    ('wash-housing',)
    """
    order: list[int] = []
    mask = 0
    refused, broken = [], []
    leaving = [[b for b in task.bonds if b.earlier == i] for i in range(len(task.steps))]
    for i in sort_out(task, sequence).first:
        unmet = [b.reason for b in task.bonds_into[i] if not mask >> b.earlier & 1]
        place = places(len(task.steps), [*order, i])
        unmet += [c.reason for c in task.choices if c.step == i and not c.kept(place)]
        stops = tuple(r for r in unmet if r.kind is RuleKind.CANNOT)
        over = tuple(
            b.reason for b in leaving[i] if b.reason.kind is RuleKind.BURIES and mask >> b.later & 1
        )
        if stops or over:
            state = "blocked" if stops else "buried"
            refused.append(Refusal(task.steps[i], state, stops or over))
            continue
        broken += unmet
        order.append(i)
        mask |= 1 << i
    done = tuple(task.steps[i] for i in order)
    covered = {
        i: b.later
        for i, bonds in enumerate(leaving)
        for b in bonds
        if b.reason.kind is RuleKind.BURIES and mask >> b.later & 1
    }
    told = times(task, order)
    clocks = tuple(_clocks(task, order, told))
    late = {clock.id for clock in clocks if clock.late}
    lost = [part for reason in broken for part in reason.loses]
    lost += [part for clock in task.clocks if clock.id in late for part in clock.loses]
    return Snapshot(
        done=done,
        refused=tuple(refused),
        ready=ready_steps(task, done),
        hidden=_named(task, covered, mask),
        lost_reach=_named(task, covered, ~mask),
        holds=tuple(_holds(task, done)),
        clocks=clocks,
        waits=tuple(_waits(task, order, told)),
        minutes=sum(task.minutes_do[i] for i in order),
        broken=tuple(broken),
        parts_lost=tuple(dict.fromkeys(lost)),
    )


def _named(task: OrderTask, covered: dict[int, int], mask: int) -> tuple[tuple[str, str], ...]:
    return tuple((task.steps[i], task.steps[j]) for i, j in covered.items() if mask >> i & 1)


def _holds(task: OrderTask, done: tuple[str, ...]) -> Iterable[str]:
    """A hold is on when the last of its events was a giver."""
    for hold in task.unit.holds:
        on = False
        givers = {task.step_of.get(op) for op in hold.given_by}
        enders = {task.step_of.get(op) for op in hold.ended_by}
        for step in done:
            on = step in givers or (on and step not in enders)
        if on:
            yield hold.name


def _clocks(task: OrderTask, order: list[int], told: Times) -> Iterable[Running]:
    place, finished = places(len(task.steps), order), told.finished
    for clock in task.clocks:
        if clock.starts not in order:
            continue
        over = clock.ends in order and place[clock.ends] > place[clock.starts]
        until = clock.ends if over else order[-1]
        used = finished[until] - finished[clock.starts]
        yield Running(clock.id, clock.name, used, clock.minutes, over)


def _waits(task: OrderTask, order: list[int], told: Times) -> Iterable[Waiting]:
    now = told.finished[order[-1]] if order else 0.0
    stood = {one.wait.id: one.minutes for one in told.waited}
    for wait in task.waits:
        if wait.starts not in told.finished:
            continue
        begun = told.finished[wait.starts]
        over = wait.ends in told.finished and told.finished[wait.ends] > begun
        end = told.finished[wait.ends] - task.minutes_do[wait.ends] if over else now
        yield Waiting(
            wait.id, wait.name, task.steps[wait.ends], end - begun, wait.minutes,
            stood.get(wait.id, 0.0) if over else None,
        )  # fmt: skip
