"""Who the unit is, and that it is invented."""

from __future__ import annotations

from typing import Annotated

from pydantic import Field, StringConstraints

from twoshaft.units.sections.order import Id, Section, Text


class Identity(Section):
    """Identity and scenario of a unit.

    ``invented`` is true for every unit that ships with the course: such a unit is for
    teaching and none of its figures belongs on a bench.
    """

    id: Id
    """Id of the unit: small letters, figures and hyphens, as maker and model."""
    name: Text
    """What the unit is called, as printed on every page."""
    version: Annotated[str, StringConstraints(min_length=1, max_length=20)]
    """Raise it with every change that can change an answer; in quotes, as "1.0"."""
    invented: bool
    """true for a unit made up for teaching; its pages then say so."""
    college: Text
    """Where it stands."""
    scenario: Text
    """What is on the bench and why, for the apprentice."""
    gears: int = Field(ge=1, le=8)
    """Forward gears."""
    variant_of: Id | None = None
    """The id of the base; written by the loader, not by hand."""
