"""The strip section: the unit taken apart again, what is read before it is lost, and its oil.

In which order things come off is not entered again: it follows from the rules of the build, read
backwards. Here stands what those do not say.
"""

from __future__ import annotations

from typing import Annotated, Literal

from pydantic import Field, StringConstraints, model_validator

from twoshaft.units.sections.order import Id, Ids, Section, Text

Name = Annotated[Text, StringConstraints(max_length=70)]
ReadingKind = Literal["end float", "backlash", "play", "turning torque", "depth", "proof"]


class StripStep(Section):
    """What a step of the build is called when it is taken apart again."""

    id: Id
    """The operation of the build, or the group of operations that go in as one."""
    name: Name
    """Short, imperative, and clear by itself in a shuffled list."""


class StripReading(Section):
    """What is read while the unit is taken apart, before it is lost.

    Where a step of the build reads the same (``same as``), its rules say when; other readings say
    it themselves.
    """

    id: Id
    """Its id: small letters, figures and hyphens; no other entry of its list has it."""
    name: Name
    """Short, imperative, and clear by itself in a shuffled list."""
    kind: ReadingKind
    """What is read: an end float, a backlash, a play, a turning torque, a depth, or a proof."""
    minutes: float = Field(gt=0, le=60, allow_inf_nan=False)
    """Time that a trained mechanic takes for it [minutes]."""
    same_as: Id | None = None
    """The step of the build that reads the same."""
    needs: Ids = ()
    """Operations whose parts must still be in place for it."""
    after: Ids = ()
    """Operations whose parts must be off for it."""
    reason: Text
    """One plain sentence: what is lost with it."""

    @model_validator(mode="after")
    def _bound(self) -> StripReading:
        if self.same_as is None and not self.needs:
            raise ValueError(f"'{self.id}' needs 'same as' or 'needs'; say what ends it")
        return self


class StripRule(Section):
    """One thing comes off before another, where no rule of the build says so backwards."""

    id: Id
    """Its id: small letters, figures and hyphens; no other entry of its list has it."""
    kind: Literal["cannot", "harms"]
    """Why: it cannot be done otherwise, or something or somebody is harmed."""
    first: Id
    """The operation of the build that is taken apart first."""
    then: Id
    """The operation of the build that is taken apart after it."""
    reason: Text
    """One plain sentence that convinces a mechanic."""
    safety: bool = False
    """Breaking it could hurt someone: a must-pass."""

    @model_validator(mode="after")
    def _two_sides(self) -> StripRule:
        if self.first == self.then:
            raise ValueError(f"'{self.id}' would put '{self.first}' before itself; name another")
        return self


class StripOil(Section):
    """The oil that is drained, as its data sheet and the unit's filling say."""

    capacity_litre: float = Field(gt=0.2, le=20, allow_inf_nan=False)
    """What a right filling holds at the reference temperature [litres]."""
    stays_litre: float = Field(ge=0, le=2, allow_inf_nan=False)
    """What clings to the walls and gears and never drains [litres]."""
    unsure_litre: float = Field(gt=0, le=1, allow_inf_nan=False)
    """How far level, clinging oil and scale together may be off [litres]."""
    reference_c: float = Field(ge=0, le=40, allow_inf_nan=False)
    """Temperature at which capacity and density are stated [°C]."""
    density_kg_per_litre: float = Field(gt=0.7, le=1.1, allow_inf_nan=False)
    """Density at the reference temperature [kg per litre]."""
    expansion_per_k: float = Field(gt=0, le=0.002, allow_inf_nan=False)
    """Part by which its volume grows for each kelvin [1/K]."""
    viscosity_mm2_per_s: tuple[float, float]
    """Kinematic viscosity at 40 °C and at 100 °C [mm²/s]."""
    depth_mm: float = Field(gt=5, le=300, allow_inf_nan=False)
    """Depth of the oil over the floor of the unit [mm]."""
    drain_below_c: float = Field(gt=20, le=90, allow_inf_nan=False)
    """Hotter than this it is not drained [°C]."""

    @model_validator(mode="after")
    def _thins_when_hot(self) -> StripOil:
        cold, hot = self.viscosity_mm2_per_s
        if not cold > hot > 1:
            raise ValueError(
                "the viscosity at 40 °C must be above that at 100 °C, and both above 1"
            )
        return self


class Strip(Section):
    """Taking the unit apart."""

    steps: tuple[StripStep, ...] = ()
    """What the steps of the build are called when they are taken apart again."""
    readings: tuple[StripReading, ...] = ()
    """What is read before it is lost."""
    rules: tuple[StripRule, ...] = ()
    """What comes off before what, where the build's rules do not say so backwards."""
    oil: StripOil
    """The oil that is drained."""
