"""The unit: everything the course knows about the transaxle on the bench."""

from __future__ import annotations

from functools import cached_property

from pydantic import ConfigDict, PrivateAttr

from twoshaft.units.sections.bearings import Bearings
from twoshaft.units.sections.faces import Faces
from twoshaft.units.sections.fasteners import Fasteners
from twoshaft.units.sections.faults import Faults
from twoshaft.units.sections.fits import Fits
from twoshaft.units.sections.geartrain import GearTrain
from twoshaft.units.sections.identity import Identity
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
)
from twoshaft.units.sections.shift import Shift
from twoshaft.units.source import Node


class Unit(Section):
    """A unit file, read and well formed. Sections of the physics are optional."""

    model_config = ConfigDict(extra="forbid", frozen=True, ignored_types=(cached_property,))

    identity: Identity
    parts: tuple[Part, ...]
    tools: tuple[Tool, ...] = ()
    consumables: tuple[Consumable, ...] = ()
    stages: tuple[Stage, ...]
    operations: tuple[Operation, ...]
    rules: tuple[Rule, ...] = ()
    holds: tuple[Hold, ...] = ()
    clocks: tuple[Clock, ...] = ()
    together: tuple[Together, ...] = ()
    fasteners: Fasteners | None = None
    fits: Fits | None = None
    bearings: Bearings | None = None
    faces: Faces | None = None
    gear_train: GearTrain | None = None
    shift: Shift | None = None
    faults: Faults | None = None

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
