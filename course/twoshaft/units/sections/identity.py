"""Who the unit is, and that it is invented."""

from __future__ import annotations

from twoshaft.units.sections.order import Id, Section, Text


class Identity(Section):
    """Identity and scenario of a unit.

    ``invented`` is true for every unit that ships with the course: such a unit is for
    teaching and none of its figures belongs on a bench.
    """

    id: Id
    name: Text
    version: Text
    invented: bool
    college: Text
    scenario: Text
    gears: int
    variant_of: Id | None = None
