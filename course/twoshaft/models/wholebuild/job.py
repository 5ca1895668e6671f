"""One unit on one bench: the particular parts, what lies at hand, and how much the builder decides.

The unit file says what can be asked; a job says with which parts and figures it is asked this time.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import dataclass, field
from functools import cached_property
from hashlib import sha256
from types import MappingProxyType
from typing import Any

from twoshaft.errors import OutOfRangeError
from twoshaft.models.film import Work
from twoshaft.models.order import OrderTask
from twoshaft.models.shim import Budget, Stack, stack_budget
from twoshaft.units.kept import kept
from twoshaft.units.quantities import Q
from twoshaft.units.sections.bearings import Support
from twoshaft.units.sections.faults import Misbuild
from twoshaft.units.unit import Unit

NOTHING: Mapping[str, Any] = MappingProxyType({})


@dataclass(frozen=True)
class Lies:
    """How the parts of an operation lie before they go in.

    Attributes
    ----------
    way : str
        Id of the wrong way round that is in play.
    so : str
        Id of the way in which they go in as they lie; empty where that is the right one.
    seen : str
        What is seen of it, in words.

    Examples
    --------
    >>> Lies("spout-down", "", "The tube stands up").so
    ''
    """

    way: str
    so: str
    seen: str


@dataclass(frozen=True, eq=False)
class Job:
    """A unit to be built on this bench. Make one with :meth:`of`.

    Attributes
    ----------
    unit : Unit
    operations : tuple of str or None
        Operations of the build; all of the unit where None.
    asked : tuple of str or None
        Ids of the decisions that the builder takes (see ``asks_of``), all where None; what is not
        asked is done as it should be.
    lengths_mm : mapping
        Measured lengths by support and term [mm]; nominal where absent.
    found : mapping of str to str
        State in which the threads of a group are found, by group; the state that the torque is
        stated for where absent.
    cards : mapping of str to str
        What the job card says of a group, in words, by group; the unit's figures where absent.
    wrenches : tuple of str or None
        Torque wrenches at hand; all of the unit where None.
    faces : mapping
        What differs on a face, by face, as for ``film.Work.of``.
    worn : tuple of str
        Misbuilds of the faults section that came with the parts (a worn peg, a foreign gear).
    lies : mapping of str to Lies
        How parts lie before they go in, by operation: it is then asked whether they go in so, or
        the other way; elsewhere each way round is offered in words.
    threads : mapping of str to str
        What is seen on the threads of a group, by group: it is then asked what is done about
        them; elsewhere the states are offered.
    seed : str
        Decides in which order options are shown.

    Examples
    --------
    >>> Job.of(unit, {"operations": ["fit-magnet", "wash-housing"]}).task.steps
    ('wash-housing', 'fit-magnet')
    >>> Job.of(unit, {"worn": ["finger-peg-worn"]}).worn
    ('finger-peg-worn',)
    """

    unit: Unit
    operations: tuple[str, ...] | None = None
    asked: tuple[str, ...] | None = None
    lengths_mm: Mapping[str, Mapping[str, float]] = field(default_factory=dict)
    found: Mapping[str, str] = field(default_factory=dict)
    cards: Mapping[str, str] = field(default_factory=dict)
    wrenches: tuple[str, ...] | None = None
    faces: Mapping[str, Mapping[str, Any]] = field(default_factory=dict)
    worn: tuple[str, ...] = ()
    lies: Mapping[str, Lies] = field(default_factory=dict)
    threads: Mapping[str, str] = field(default_factory=dict)
    seed: str = ""

    @classmethod
    def of(cls, unit: Unit, given: Mapping[str, Any] = NOTHING) -> Job:
        """The job of one learner.

        Parameters
        ----------
        unit : Unit
        given : mapping
            Plain data with any of the attributes' names; lists where an attribute is a tuple.

        Raises
        ------
        OutOfRangeError
            A wrench, support, group, face, state or misbuild that the unit does not have.
        """
        listed = {
            key: None if given.get(key) is None else tuple(given[key])
            for key in ("operations", "asked", "wrenches")
        }
        job = cls(
            unit,
            **listed,
            lengths_mm=given.get("lengths_mm", {}),
            found=given.get("found", {}),
            cards=given.get("cards", {}),
            faces=given.get("faces", {}),
            worn=tuple(given.get("worn", ())),
            lies={op: Lies(**one) for op, one in given.get("lies", {}).items()},
            threads=given.get("threads", {}),
            seed=str(given.get("seed", unit.identity.id)),
        )
        job._check()
        return job

    def _check(self) -> None:
        unit = self.unit
        bolts, faults, rows = unit.fasteners_if_any, unit.faults_if_any, unit.bearings_if_any
        groups = _ids(bolts.groups if bolts else ())
        known = (
            ("wrench", self.wrenches or (), _ids(bolts.wrenches if bolts else ())),
            ("support", self.lengths_mm, _ids(rows.supports if rows else ())),
            ("fastener group", (*self.found, *self.cards, *self.threads), groups),
            ("state of thread", self.found.values(), _ids(bolts.states if bolts else ())),
            ("face", self.faces, _ids(unit.faces.faces if unit.faces_if_any else ())),
            ("misbuild", self.worn, _ids(faults.misbuilds if faults else ())),
        )
        for what, names, there in known:
            for name in names:
                if name not in there:
                    raise OutOfRangeError(what, name, ", ".join(there) or "none", "the unit file")
        for operation, lies in self.lies.items():
            there = _ids(unit.operation_by_id[operation].wrong_ways)
            for name in filter(None, (lies.way, lies.so)):
                if name not in there:
                    raise OutOfRangeError("wrong way", name, ", ".join(there), "the unit file")

    @cached_property
    def task(self) -> OrderTask:
        """The steps of the build and what binds their order."""
        return OrderTask.from_unit(self.unit, self.operations)

    @cached_property
    def members(self) -> dict[str, tuple[str, ...]]:
        """Operations of each step; a group that goes in as one is one step."""
        return dict(zip(self.task.steps, self.task.members, strict=True))

    def step_of(self, operation: str | None) -> str | None:
        """The step that holds an operation; None where the build does not have it."""
        return None if operation is None else self.task.step_of.get(operation)

    def step_of_any(self, operations: Iterable[str]) -> str | None:
        """The first step that holds one of several operations; None where none does."""
        return next((step for one in operations if (step := self.step_of(one))), None)

    def support(self, support: str) -> Support:
        """A support of the unit."""
        return self.unit.bearings.support_by_id(support)

    @kept()
    def measured(self, support: str) -> dict[str, Q]:
        """Measured lengths of a support as the models take them [mm]."""
        return {term: Q(mm, "mm") for term, mm in self.lengths_mm.get(support, {}).items()}

    @kept()
    def stack(self, support: str) -> Stack:
        """The measured stack of a support."""
        return Stack.from_support(self.support(support), self.measured(support))

    @kept()
    def budget(self, support: str) -> Budget:
        """The shim that the measured stack needs, with its uncertainty."""
        return stack_budget(self.support(support), self.measured(support))

    def found_state(self, group: str) -> str:
        """State in which the threads of a group are found."""
        return self.found.get(group, self.unit.fasteners.group(group).state)

    @cached_property
    def _works(self) -> dict[str, Work]:
        return {}

    def work(self, face: str) -> Work:
        """A face as it lies on this bench."""
        if face not in self._works:
            self._works[face] = Work.of(self.unit, {**self.faces.get(face, {}), "face": face})
        return self._works[face]

    @cached_property
    def worn_misbuilds(self) -> tuple[Misbuild, ...]:
        """What came with the parts."""
        return tuple(self.unit.faults.misbuild_by_id(one) for one in self.worn)

    def shuffled(self, what: str, keys: list[str]) -> list[str]:
        """Keys in an order that hangs on the job's seed alone."""
        return sorted(keys, key=lambda key: sha256(f"{self.seed}/{what}/{key}".encode()).digest())


def _ids(entries) -> list[str]:
    return [entry.id for entry in entries]
