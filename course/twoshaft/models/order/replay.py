"""The bench cost: what happens when a submitted order is built step by step.

It finds when each slip would show and what then stands in its way and must come off. It says
nothing about the mark: see ``slip``.

A step that *cannot* be done stops the build at once. A step that was *buried* is missed at its own
turn or at the first check that depends on it, whichever comes first, or at the end. A part
*harmed* and a check *blinded* are found in the same way. Whoever has to open the build again puts
in everything else that was forgotten under the same steps, so nothing is charged twice. A step
that was planned too early (one of the redo set) is put aside until its time has come; otherwise
what is missing before it is fetched.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass, field

from twoshaft.models.order.masks import bits
from twoshaft.models.order.slip import places, plan_slip, sort_out
from twoshaft.models.order.task import Choice, OrderTask, Reason
from twoshaft.models.order.times import Waited, wait_before
from twoshaft.units.sections.order import RuleKind


@dataclass(frozen=True)
class Event:
    """One slip as it shows at the bench.

    Attributes
    ----------
    state : str
        ``blocked``, ``buried``, ``harmed``, ``blinded``, ``late`` (a clock ran out), ``missing``
        (found at a check or at the end), ``repeated`` or ``foreign``.
    at : str or None
        The step at which it shows; None at the end of the build.
    steps : tuple of str
        The steps that should have been done before; the step repeated; the one a clock runs from.
    reasons : tuple of Reason
        The rules (or the clock) behind it.
    off : tuple of str
        Steps that come off and go on again, in the order they come off.
    minutes : float
        Minutes of work over and above the plan [min].
    parts : tuple of str
        Parts that do not survive.
    clock : str or None
        The clock that ran out.

    Examples
    --------
    >>> steps = "wash-housing", "fit-magnet"
    >>> event = replay(OrderTask.from_unit(unit, steps), ["fit-magnet"]).events[0]
    >>> event.state, event.steps, event.minutes
    ('harmed', ('wash-housing',), 3.0)
    """

    state: str
    at: str | None
    steps: tuple[str, ...]
    reasons: tuple[Reason, ...] = ()
    off: tuple[str, ...] = ()
    minutes: float = 0.0
    parts: tuple[str, ...] = ()
    clock: str | None = None


@dataclass(frozen=True)
class Replay:
    """A submitted order, built.

    Attributes
    ----------
    events : tuple of Event
        The slips in the order they show.
    minutes_planned : float
        Minutes to do every step once [min].
    minutes_extra : float
        Minutes of work over and above the plan [min].
    parts_lost : tuple of str
        Parts that do not survive, each once.
    stopped_at : str or None
        The first step that could not be done.
    waited : tuple of Waited
        What had to run before a step could begin, and was not filled with other work.

    Examples
    --------
    >>> steps = "wash-housing", "fit-magnet"
    >>> built = replay(OrderTask.from_unit(unit, steps), ["fit-magnet", "wash-housing"])
    >>> built.minutes_planned, built.minutes_extra, built.stopped_at
    (13.0, 3.0, None)
    """

    events: tuple[Event, ...]
    minutes_planned: float
    minutes_extra: float
    parts_lost: tuple[str, ...]
    stopped_at: str | None
    waited: tuple[Waited, ...] = ()

    @property
    def minutes(self) -> float:
        """Minutes of work in all [min]."""
        return self.minutes_planned + self.minutes_extra


def replay(task: OrderTask, sequence: Iterable[str]) -> Replay:
    """Build a submitted order at the bench and tell what it costs.

    Parameters
    ----------
    task : OrderTask
        The task.
    sequence : iterable of str
        Step ids in the order submitted; nothing is required of it.

    Returns
    -------
    Replay
        Without events exactly when the order is complete, keeps every rule and every clock.

    Examples
    --------
    >>> steps = "wash-housing", "fit-magnet"
    >>> replay(OrderTask.from_unit(unit, steps), steps).events
    ()
    """
    sequence = list(sequence)
    found = sort_out(task, sequence)
    slip = plan_slip(task, sequence)
    misplaced = sum(1 << task.number[step] for step in slip.redo)
    for block in task.blocks:
        if block.id in slip.blocks:
            misplaced |= block.mask
    bench = _Bench(task, found.first, misplaced)
    for key in found.foreign:
        bench.events.append(Event("foreign", None, (key,)))
    seen = set()
    for key in sequence:
        step = task.step_of.get(key)
        if step is None:
            continue
        i = task.number[step]
        if i in seen:
            bench.repeat(i)
        else:
            seen.add(i)
            bench.turn(i)
    bench.finish()
    lost = dict.fromkeys(part for event in bench.events for part in event.parts)
    return Replay(
        events=tuple(bench.events),
        minutes_planned=sum(task.minutes_do),
        minutes_extra=sum(event.minutes for event in bench.events),
        parts_lost=tuple(lost),
        stopped_at=next((e.at for e in bench.events if e.state == "blocked"), None),
        waited=tuple(bench.waited),
    )


def in_the_way_of(task: OrderTask, fitted: int, i: int) -> int:
    """Fitted steps that stand in the way of step ``i``: its up-set through cannot and buries.

    Examples
    --------
    >>> task = OrderTask.from_unit(unit, ["wash-housing", "fit-bore-plug"])
    >>> list(bits(in_the_way_of(task, fitted=0b10, i=0)))
    [1]
    """
    found, queue = 0, [i]
    for k in queue:
        fresh = task.in_the_way[k] & fitted & ~found
        found |= fresh
        queue.extend(bits(fresh))
    return found


@dataclass
class _Slip:
    """A rule broken and not noticed yet."""

    earlier: int
    later: int
    reason: Reason


@dataclass
class _Bench:
    """The state of the build."""

    task: OrderTask
    plan: list[int]
    misplaced: int
    done: int = 0
    now: float = 0.0
    order: list[int] = field(default_factory=list)
    finished: dict[int, float] = field(default_factory=dict)
    unnoticed: list[_Slip] = field(default_factory=list)
    events: list[Event] = field(default_factory=list)
    charged_holds: set[tuple] = field(default_factory=set)
    aside: list[int] = field(default_factory=list)
    waited: list[Waited] = field(default_factory=list)

    def turn(self, i: int) -> None:
        """The turn of a step comes."""
        if self.done >> i & 1:
            return  # it went in when the build was opened before
        unmet = [
            _Slip(bond.earlier, i, bond.reason)
            for bond in self.task.bonds_into[i]
            if not self.done >> bond.earlier & 1
        ]
        stops = [slip for slip in unmet if slip.reason.kind is RuleKind.CANNOT]
        waiting = sum(1 << k for k in self.aside)
        if self.task.before[i] & waiting:
            # It follows something put aside, so it waits as well; only its own slips are told.
            self.put_aside(i, [slip for slip in stops if not waiting >> slip.earlier & 1])
            return
        if stops and self.misplaced >> i & 1:
            self.put_aside(i, stops)
            return
        mine = [slip for slip in self.unnoticed if slip.earlier == i]
        if mine:
            self.mend("blocked" if stops else "", i, {i}, [*stops, *mine])
            self.take_up()
            return
        unmet += self.unkept(i)
        stops = [slip for slip in unmet if slip.reason.kind is RuleKind.CANNOT]
        if stops:
            self.mend("blocked", i, {slip.earlier for slip in stops}, stops)
        self.fit(i)
        self.unnoticed += [slip for slip in unmet if not self.done >> slip.earlier & 1]
        # A check that is itself made worthless shows nothing.
        if self.task.is_check[i] and all(s.reason.kind is not RuleKind.BLINDS for s in unmet):
            missed = [slip for slip in self.unnoticed if self.task.after[slip.earlier] >> i & 1]
            if missed:
                self.mend("", i, {slip.earlier for slip in missed}, missed)
        self.take_up()

    def put_aside(self, i: int, stops: list[_Slip]) -> None:
        """A step planned too early waits until it can be done."""
        self.aside.append(i)
        if not stops:
            return
        names = (self.task.steps[slip.earlier] for slip in stops)
        self.events.append(
            Event(
                state="blocked",
                at=self.task.steps[i],
                steps=tuple(dict.fromkeys(names)),
                reasons=tuple(slip.reason for slip in stops),
            )
        )

    def take_up(self) -> None:
        """Do what was put aside and can be done now."""
        for i in list(self.aside):
            if self.done >> i & 1:
                self.aside.remove(i)
            elif not self.task.before[i] & ~self.done and not self.unkept(i, charge=False):
                self.aside.remove(i)
                self.turn(i)
                return

    def unkept(self, i: int, *, charge: bool = True) -> list[_Slip]:
        """Rules with a choice that step i breaks now; a hold is charged at once."""
        slips = []
        for choice in self.task.choices:
            if choice.step != i or choice.kept(places(len(self.task.steps), [*self.order, i])):
                continue
            if choice.givers and charge:
                self.outside(choice)
            else:
                ways = [option[0][0] for option in choice.options]
                planned = [k for k in self.plan if k in ways]
                slips.append(_Slip((planned or ways)[0], i, choice.reason))
        return slips

    def outside(self, choice: Choice) -> None:
        """A step is done outside a hold it needs, or while one is on that it must not meet."""
        if (key := (choice.givers, choice.enders)) in self.charged_holds:
            return
        self.charged_holds.add(key)
        task, i = self.task, choice.step
        again = min(task.minutes_do[k] for k in choice.givers) + min(
            task.minutes_do[k] for k in choice.enders
        )
        states = {RuleKind.CANNOT: "blocked", RuleKind.HARMS: "harmed", RuleKind.BLINDS: "blinded"}
        kind = choice.reason.kind
        parts: tuple[str, ...] = ()
        if kind in (RuleKind.HARMS, RuleKind.BLINDS):
            again += task.minutes_undo[i] + task.minutes_do[i]
            parts = choice.reason.loses
        self.now += again
        self.events.append(
            Event(
                state=states.get(kind, "buried"),
                at=task.steps[i],
                steps=choice.reason.earlier,
                reasons=(choice.reason,),
                minutes=again,
                parts=parts,
            )
        )

    def fit(self, i: int) -> None:
        """Do a step, and look at the clocks it ends."""
        self.put_in(i)
        for clock in self.task.clocks:
            if clock.ends != i or clock.starts not in self.finished:
                continue
            if self.now - self.finished[clock.starts] > clock.minutes + 1e-9:
                again = 1 << clock.starts
                again |= in_the_way_of(self.task, self.done, clock.starts)
                self.events.append(
                    Event(
                        state="late",
                        at=self.task.steps[i],
                        steps=(self.task.steps[clock.starts],),
                        reasons=(clock.reason,),
                        clock=clock.id,
                        **self.redo(again, clock.reason.loses),
                    )
                )

    def put_in(self, i: int) -> None:
        stood = wait_before(self.task, i, self.now, self.finished)
        self.waited += stood
        self.now += sum(one.minutes for one in stood)
        self.now += self.task.minutes_do[i]
        self.finished[i] = self.now
        self.done |= 1 << i
        self.order.append(i)
        self.charged_holds = {
            key for key in self.charged_holds if i not in key[0] and i not in key[1]
        }

    def redo(self, off: int, loses: Iterable[str], later: int = 0) -> dict:
        """Take steps off and put them on again, those of ``later`` at their time."""
        task = self.task
        minutes = float(sum(task.minutes_undo[k] + task.minutes_do[k] for k in bits(off)))
        self.now += minutes - sum(task.minutes_do[k] for k in bits(later))
        going = [k for k in reversed(self.order) if off >> k & 1]
        for k in going:
            self.finished[k] = self.now
        parts = [part for k in reversed(going) for part in task.perishable[k]]
        return {
            "off": tuple(task.steps[k] for k in going),
            "minutes": minutes,
            "parts": tuple(dict.fromkeys([*loses, *parts])),
        }

    def mend(self, state: str, at: int | None, needed: set[int], slips: list[_Slip]) -> None:
        """A slip shows: open what is in the way, put in what is missing, close again."""
        task = self.task
        wanted = sum(1 << k for k in needed)
        missing, off, later, slips = self.opened(wanted, slips, may_wait=True)
        if any(task.after[k] & self.done & ~off for k in bits(later)):
            missing, off, later, slips = self.opened(wanted, slips, may_wait=False)
        self.unnoticed = [
            s for s in self.unnoticed if not (missing >> s.earlier | later >> s.later) & 1
        ]
        loses = [part for slip in slips for part in slip.reason.loses if slip.later != at]
        cost = self.redo(off, loses, later)
        names = [task.steps[k] for k in self.plan if missing >> k & 1]
        names += [task.steps[k] for k in bits(missing) if k not in self.plan]
        self.events.append(
            Event(
                state=state or _worst(slips),
                at=None if at is None else task.steps[at],
                steps=tuple(names),
                reasons=tuple(dict.fromkeys(slip.reason for slip in slips)),
                **cost,
            )
        )
        self.aside += [k for k in self.order if later >> k & 1]
        self.order = [k for k in self.order if not later >> k & 1]
        self.done &= ~later
        for k in sorted(bits(missing), key=lambda k: task.before[k].bit_count()):
            self.put_in(k)

    def opened(
        self, missing: int, slips: list[_Slip], *, may_wait: bool
    ) -> tuple[int, int, int, list[_Slip]]:
        """What goes in, what comes off for it, what of that goes on later, and the slips met."""
        task, slips, off, later = self.task, list(slips), 0, 0
        while True:
            before = missing, off, later, len(slips)
            for k in bits(missing):
                off |= in_the_way_of(task, self.done, k)
            for slip in self.unnoticed:
                if missing >> slip.earlier & 1 and slip not in slips:
                    slips.append(slip)
            for slip in slips:
                spoilt = slip.reason.kind in (RuleKind.HARMS, RuleKind.BLINDS)
                if spoilt and self.done >> slip.later & 1:
                    off |= 1 << slip.later | in_the_way_of(task, self.done, slip.later)
            for k in bits(missing):
                missing |= task.before[k] & ~self.done
            for k in bits(off & ~later):
                lacks = task.before[k] & ~self.done & ~missing
                if task.before[k] & later or (lacks and may_wait and self.misplaced >> k & 1):
                    later |= 1 << k
                else:
                    missing |= lacks
            if before == (missing, off, later, len(slips)):
                return missing, off, later, slips

    def repeat(self, i: int) -> None:
        """A step is done a second time, for nothing."""
        minutes = self.task.minutes_do[i]
        self.now += minutes
        step = self.task.steps[i]
        self.events.append(Event("repeated", step, (step,), minutes=minutes))

    def finish(self) -> None:
        """The end of the build: whatever is still missing shows."""
        left = ~self.done & ((1 << len(self.task.steps)) - 1)
        if left:
            self.mend("" if self.unnoticed else "missing", None, set(bits(left)), self.unnoticed)


def _worst(slips: list[_Slip]) -> str:
    kinds = {slip.reason.kind for slip in slips}
    for kind, state in (
        (RuleKind.BURIES, "buried"),
        (RuleKind.HARMS, "harmed"),
        (RuleKind.BLINDS, "blinded"),
    ):
        if kind in kinds:
            return state
    return "missing"
