"""The inspect section: wear limits, circlips, seats of rings, the seal's track, costs."""

from __future__ import annotations

from itertools import pairwise
from typing import Annotated

from pydantic import Field, StringConstraints, model_validator

from twoshaft.errors import UnitFileError
from twoshaft.units.sections.order import Id, Section, Text

Name = Annotated[Text, StringConstraints(max_length=60)]


class WearLimit(Section):
    """A size that wears, and how far it may."""

    id: Id
    """Its id: small letters, figures and hyphens; no other entry of its list has it."""
    name: Name
    """What is measured, as it stands in a table."""
    new_mm: float = Field(gt=0, le=300, allow_inf_nan=False)
    """The size of a new part [mm]."""
    limit_mm: float = Field(gt=0, le=300, allow_inf_nan=False)
    """The size at which it is worn out [mm]; below the new size where wear takes off."""
    tool_mm: float = Field(gt=0, le=0.5, allow_inf_nan=False)
    """Standard uncertainty of one reading with the usual tool [mm]."""

    @model_validator(mode="after")
    def _wears(self) -> WearLimit:
        if abs(self.new_mm - self.limit_mm) < 4 * self.tool_mm:
            raise ValueError(
                f"the limit of '{self.id}' lies within four times the uncertainty of its tool; "
                "measure it with a better tool"
            )
        return self


class SelectiveCirclip(Section):
    """A circlip that sets the end float of a gear on its shaft, and its set."""

    id: Id
    """Its id: small letters, figures and hyphens; no other entry of its list has it."""
    name: Name
    """Which end float it sets, as it stands in a table."""
    thickness_mm: tuple[float, ...] = Field(min_length=3)
    """Thicknesses that there are, thinnest first [mm]."""
    float_mm: tuple[float, float]
    """Smallest and largest end float [mm]."""

    @model_validator(mode="after")
    def _reaches(self) -> SelectiveCirclip:
        low, high = self.float_mm
        if not 0 <= low < high <= 2:
            raise ValueError("the smaller end float must come first, both from 0 to 2 mm")
        steps = [b - a for a, b in pairwise(self.thickness_mm)]
        if min(steps) <= 0 or max(steps) > high - low + 1e-9:
            raise ValueError(
                "the thicknesses must grow by steps no larger than the end float may differ"
            )
        return self


class RingSeat(Section):
    """Where the outer ring of a bearing sits, and how loose it may be."""

    id: Id
    """Its id: small letters, figures and hyphens; no other entry of its list has it."""
    name: Name
    """Which ring in which bore, as it stands in a table."""
    ring_mm: float = Field(gt=5, le=300, allow_inf_nan=False)
    """Outside diameter of the ring [mm]."""
    clearance_most_mm: float = Field(ge=-0.2, le=0.2, allow_inf_nan=False)
    """Largest bore less ring [mm]; below zero for a tight fit."""


class SealTrack(Section):
    """The shaft where the lip of a seal runs."""

    diameter_mm: float = Field(gt=5, le=200, allow_inf_nan=False)
    """Diameter of the shaft beside the groove [mm]."""
    groove_most_mm: float = Field(gt=0.01, le=0.5, allow_inf_nan=False)
    """Deepest groove, on the radius, over which a new lip still seals [mm]."""
    sleeve_most_mm: float = Field(gt=0.05, le=1, allow_inf_nan=False)
    """Deepest groove, on the radius, that a repair sleeve bridges [mm]."""


class DogTeeth(Section):
    """Dog teeth: how far their points may be worn."""

    flat_most_mm: float = Field(gt=0.2, le=2, allow_inf_nan=False)
    """Widest flat at the point of a tooth [mm]."""
    unsure_mm: float = Field(gt=0, le=0.3, allow_inf_nan=False)
    """Expanded uncertainty of a flat read on the scale [mm]."""


class WrongCosts(Section):
    """What a wrong decision costs, in hours of work."""

    renew_hours: float = Field(gt=0, le=100, allow_inf_nan=False)
    """A good part is thrown away and renewed [hours]."""
    again_hours: float = Field(gt=0, le=1000, allow_inf_nan=False)
    """A worn part is used again, and the unit is stripped a second time [hours]."""

    @model_validator(mode="after")
    def _again_costs_more(self) -> WrongCosts:
        if self.again_hours <= self.renew_hours:
            raise ValueError("stripping again must cost more than renewing the part")
        return self


class Inspect(Section):
    """What is measured before a part is used again."""

    limits: tuple[WearLimit, ...] = Field(min_length=3)
    """Wear limits."""
    circlips: tuple[SelectiveCirclip, ...] = ()
    """Selective circlips with the end floats that they set."""
    seats: tuple[RingSeat, ...] = ()
    """Seats of bearing rings in the case."""
    seal: SealTrack | None = None
    """The shaft where a seal runs."""
    dogs: DogTeeth | None = None
    """Dog teeth of the gears."""
    costs: WrongCosts
    """The cost of being wrong, both ways."""

    def needed_seal(self) -> SealTrack:
        """The seal's track; UnitFileError where there is none."""
        if self.seal is None:
            raise UnitFileError("the section inspect has no 'seal'", mend="add 'seal' to it")
        return self.seal

    def needed_dogs(self) -> DogTeeth:
        """The dog teeth; UnitFileError where there are none."""
        if self.dogs is None:
            raise UnitFileError("the section inspect has no 'dogs'", mend="add 'dogs' to it")
        return self.dogs
