"""The unit: everything the course knows about the transaxle on the bench."""

from __future__ import annotations

from collections.abc import Mapping
from functools import cached_property
from typing import Any, TypeVar

from pydantic import AliasChoices, ConfigDict, Field, PrivateAttr

from twoshaft.errors import UnitFileError
from twoshaft.units.sections.bearings import Bearings
from twoshaft.units.sections.closeout import CloseOut
from twoshaft.units.sections.faces import Faces
from twoshaft.units.sections.fasteners import Fasteners
from twoshaft.units.sections.faults import Faults
from twoshaft.units.sections.fits import Fits
from twoshaft.units.sections.geartrain import GearTrain
from twoshaft.units.sections.identity import Identity
from twoshaft.units.sections.inspect import Inspect
from twoshaft.units.sections.order import (
    Clock,
    Consumable,
    Hold,
    Operation,
    Part,
    Rule,
    Section,
    Stage,
    Together,
    Tool,
    Wait,
)
from twoshaft.units.sections.shapes import Shapes
from twoshaft.units.sections.shift import Shift
from twoshaft.units.sections.strip import Strip
from twoshaft.units.source import Node
from twoshaft.units.typical import Typical, typical_figures

S = TypeVar("S", bound=Section)

PHYSICS = (
    *("fasteners", "fits", "bearings", "faces", "gear_train", "shift", "faults", "shapes"),
    *("strip", "inspect", "close_out"),
)
"""Sections that a unit may lack, by their names here."""


def _section(name: str) -> Any:
    spoken = name.replace("_", " ")
    return Field(None, alias=spoken, validation_alias=AliasChoices(spoken, name))


class Unit(Section):
    """A unit file, read and well formed.

    Sections of the physics are optional: ``unit.shift`` is the section and complains where there
    is none, ``unit.shift_if_any`` may be None.
    """

    model_config = ConfigDict(
        extra="forbid", frozen=True, populate_by_name=False, ignored_types=(cached_property,)
    )

    identity: Identity
    """Who the unit is, and whether it is invented."""
    parts: tuple[Part, ...]
    """Every part."""
    tools: tuple[Tool, ...] = ()
    """Every tool."""
    consumables: tuple[Consumable, ...] = ()
    """What is used up."""
    stages: tuple[Stage, ...]
    """Sub-assemblies and phases, in the order in which they are shown."""
    operations: tuple[Operation, ...]
    """Every step of the build."""
    rules: tuple[Rule, ...] = ()
    """What must come before what, and why."""
    holds: tuple[Hold, ...] = ()
    """Conditions that some steps give, others end, and others need."""
    clocks: tuple[Clock, ...] = ()
    """Times that run from one step to another."""
    waits: tuple[Wait, ...] = ()
    """Times that must have run before a step may begin."""
    together: tuple[Together, ...] = ()
    """Steps that go in as one."""

    fasteners_if_any: Fasteners | None = _section("fasteners")
    """Threaded joints: friction, wrenches, groups of bolts, nuts and plugs. May be left out."""
    fits_if_any: Fits | None = _section("fits")
    """What is pressed, driven, pinned, sealed and staked. May be left out."""
    bearings_if_any: Bearings | None = _section("bearings")
    """Bearings, how they are arranged, their shims and what is measured. May be left out."""
    faces_if_any: Faces | None = _section("faces")
    """Sealed faces and sealants. May be left out."""
    gear_train_if_any: GearTrain | None = _section("gear_train")
    """Who meshes with whom. May be left out."""
    shift_if_any: Shift | None = _section("shift")
    """The selector mechanism and its lockout. May be left out."""
    faults_if_any: Faults | None = _section("faults")
    """Checks of the finished unit, and ways to build it wrongly. May be left out."""
    shapes_if_any: Shapes | None = _section("shapes")
    """Where every part lies and what form it has. May be left out: a schematic is drawn then."""
    strip_if_any: Strip | None = _section("strip")
    """Taking apart: names, what is read before it is lost, the oil. May be left out."""
    inspect_if_any: Inspect | None = _section("inspect")
    """Wear limits, circlips, seats and the cost of a wrong decision. May be left out."""
    close_out_if_any: CloseOut | None = _section("close_out")
    """The oil that goes in, its level, breather and leak test. May be left out."""

    _source: Node | None = PrivateAttr(default=None)

    def with_source(self, source: Node) -> Unit:
        """Remember the tree this unit was read from, so that findings can point into it."""
        self._source = source
        return self

    def where(self, *place: str | int) -> str:
        """File and line of a place in the unit file.

        Parameters
        ----------
        *place : str or int
            Section, then the id (or index) of an entry, then keys, as far as wanted:
            ``unit.where("operations", "fit-magnet", "parts")``. Keys may be given as in the
            file (``"any of"``) or as in Python (``"any_of"``).

        Returns
        -------
        str
            As ``my-unit.yaml, line 12``; the place itself, in words, for a unit that was not
            read from a file.
        """
        if self._source is None:
            return ", ".join(str(step) for step in place) or "the unit"
        node = self._source
        for step in place:
            following = _step_into(node, step)
            if following is None:
                break
            node = following
        return node.where

    def typical(self) -> tuple[Typical, ...]:
        """Entries that still hold typical figures, in the order of the file.

        Returns
        -------
        tuple of Typical
            Empty where no line is marked, or where the unit was not read from a file.
        """
        return typical_figures(self._source) if self._source is not None else ()

    @property
    def fasteners(self) -> Fasteners:
        """The section; UnitFileError where the file has none."""
        return self._needed("fasteners", self.fasteners_if_any)

    @property
    def fits(self) -> Fits:
        """The section; UnitFileError where the file has none."""
        return self._needed("fits", self.fits_if_any)

    @property
    def bearings(self) -> Bearings:
        """The section; UnitFileError where the file has none."""
        return self._needed("bearings", self.bearings_if_any)

    @property
    def faces(self) -> Faces:
        """The section; UnitFileError where the file has none."""
        return self._needed("faces", self.faces_if_any)

    @property
    def gear_train(self) -> GearTrain:
        """The section; UnitFileError where the file has none."""
        return self._needed("gear_train", self.gear_train_if_any)

    @property
    def shift(self) -> Shift:
        """The section; UnitFileError where the file has none."""
        return self._needed("shift", self.shift_if_any)

    @property
    def faults(self) -> Faults:
        """The section; UnitFileError where the file has none."""
        return self._needed("faults", self.faults_if_any)

    @property
    def shapes(self) -> Shapes:
        """The section; UnitFileError where the file has none."""
        return self._needed("shapes", self.shapes_if_any)

    @property
    def strip(self) -> Strip:
        """The section; UnitFileError where the file has none."""
        return self._needed("strip", self.strip_if_any)

    @property
    def inspect(self) -> Inspect:
        """The section; UnitFileError where the file has none."""
        return self._needed("inspect", self.inspect_if_any)

    @property
    def close_out(self) -> CloseOut:
        """The section; UnitFileError where the file has none."""
        return self._needed("close_out", self.close_out_if_any)

    def _needed(self, section: str, there: S | None) -> S:
        if there is None:
            raise UnitFileError(
                f"unit {self.identity.id!r} has no section {section.replace('_', ' ')!r}",
                mend="add it, or leave out what needs it",
            )
        return there

    def has(self, section: str) -> bool:
        """Whether the file has a section of the physics, by its name here."""
        return getattr(self, f"{section}_if_any") is not None

    def with_sections(self, **sections: object) -> Unit:
        """The same unit with other sections, by their names here; None takes one away."""
        changed = {
            f"{name}_if_any" if name in PHYSICS else name: given for name, given in sections.items()
        }
        return super().model_copy(update=changed)

    def model_copy(self, *, update: Mapping[str, Any] | None = None, deep: bool = False) -> Unit:
        """As in pydantic; sections of the physics are changed by :meth:`with_sections`."""
        hidden = sorted(set(update or ()) & set(PHYSICS))
        if hidden:
            raise TypeError(f"use with_sections to change {', '.join(hidden)}")
        return super().model_copy(update=update, deep=deep)

    @cached_property
    def operation_by_id(self) -> dict[str, Operation]:
        """Operations by id."""
        return {operation.id: operation for operation in self.operations}

    @cached_property
    def part_by_id(self) -> dict[str, Part]:
        """Parts by id."""
        return {part.id: part for part in self.parts}

    @cached_property
    def rule_by_id(self) -> dict[str, Rule]:
        """Rules by id."""
        return {rule.id: rule for rule in self.rules}

    @cached_property
    def operations_of(self) -> dict[str, tuple[str, ...]]:
        """Operation ids by stage id, in file order; every stage is there."""
        result: dict[str, list[str]] = {stage.id: [] for stage in self.stages}
        for operation in self.operations:
            result.setdefault(operation.stage, []).append(operation.id)
        return {stage: tuple(ids) for stage, ids in result.items()}


def _step_into(node: Node, step: str | int) -> Node | None:
    """The node below `node` under a key, an index or the id of an entry."""
    if isinstance(node.value, dict):
        for key in (step, str(step).replace("_", " "), _FILE_KEYS.get(str(step))):
            if key in node.value:
                return node.value[key]
    elif isinstance(node.value, list):
        if isinstance(step, int):
            return node.value[step] if 0 <= step < len(node.value) else None
        # the last one wins, so that a doubled id points at the second
        matching = [entry for entry in node.value if step in (entry.identifier(), entry.value)]
        return matching[-1] if matching else None
    return None


_FILE_KEYS = {"minutes_do": "minutes to do", "minutes_undo": "minutes to undo"}
