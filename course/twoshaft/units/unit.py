"""The unit: everything the course knows about the transaxle on the bench."""

from __future__ import annotations

from functools import cached_property

from pydantic import ConfigDict

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


class Unit(Section):
    """A unit file, read and well formed. Sections of the physics are optional."""

    model_config = ConfigDict(extra="forbid", frozen=True, ignored_types=(cached_property,))

    identity: Identity
    parts: tuple[Part, ...]
    tools: tuple[Tool, ...]
    consumables: tuple[Consumable, ...] = ()
    stages: tuple[Stage, ...]
    operations: tuple[Operation, ...]
    rules: tuple[Rule, ...]
    holds: tuple[Hold, ...] = ()
    clocks: tuple[Clock, ...] = ()
    together: tuple[Together, ...] = ()

    @cached_property
    def operation_by_id(self) -> dict[str, Operation]:
        """Operations by id."""
        return {operation.id: operation for operation in self.operations}

    @cached_property
    def part_by_id(self) -> dict[str, Part]:
        """Parts by id."""
        return {part.id: part for part in self.parts}
