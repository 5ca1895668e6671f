"""The close out section: oil that goes in, its level, breather, leak test, work of a ring."""

from __future__ import annotations

from typing import Annotated, Literal

from pydantic import Field, StringConstraints, model_validator

from twoshaft.errors import UnitFileError
from twoshaft.units.sections.order import Section, Text

Grade = Annotated[
    Text, StringConstraints(pattern=r"^(70|75|80|85)W-(65|70|75|80|85|90|110|140|190|250)$")
]


class OilAsked(Section):
    """The oil that the unit asks for."""

    grade: Grade
    """Its grade by SAE J306, winter figure first: `75W-85`."""
    service: Literal["GL-3", "GL-4", "GL-5"]
    """Its service category by API 1560."""
    coldest_c: float = Field(ge=-55, le=10, allow_inf_nan=False)
    """The coldest start that the unit is made for [°C]."""
    hottest_c: float = Field(ge=60, le=150, allow_inf_nan=False)
    """The hottest that its oil becomes [°C]."""
    thinnest_mm2_per_s: float = Field(gt=2, le=60, allow_inf_nan=False)
    """Least viscosity at its hottest that still keeps the teeth apart [mm²/s]."""


class OilLevel(Section):
    """The level plug, and what stands at it."""

    litre_per_mm: float = Field(gt=0.005, le=0.5, allow_inf_nan=False)
    """Oil that raises the level by a millimetre [litres per mm]."""
    below_most_mm: float = Field(gt=0, le=20, allow_inf_nan=False)
    """How far the oil may stand below the lower edge of the plug hole [mm]."""
    reach_mm: float = Field(gt=20, le=500, allow_inf_nan=False)
    """From the middle of the oil's surface to the plug [mm]."""


class Breather(Section):
    """The air above the oil, and what the shaft seals take."""

    air_litre: float = Field(gt=0.2, le=20, allow_inf_nan=False)
    """Room for air above a right filling [litres]."""
    seal_most_mbar: float = Field(gt=20, le=1000, allow_inf_nan=False)
    """Largest pressure inside that the lips of the seals hold [mbar]."""


class LeakTest(Section):
    """The test with a little air, before the oil goes in."""

    pressure_mbar: float = Field(gt=10, le=500, allow_inf_nan=False)
    """Pressure at its start, over that outside [mbar]."""
    minutes: float = Field(gt=0.5, le=60, allow_inf_nan=False)
    """How long it lasts [minutes]."""
    leak_most_ml_per_min: float = Field(gt=0, le=200, allow_inf_nan=False)
    """Largest leak allowed, as air outside [mL/min]."""
    gauge_mbar: float = Field(gt=0, le=10, allow_inf_nan=False)
    """Standard uncertainty of one reading of the gauge [mbar]."""
    thermometer_k: float = Field(ge=0, le=2, allow_inf_nan=False)
    """Standard uncertainty of one reading of the thermometer [K]."""


class RingWork(Section):
    """What a synchroniser ring has to do in one shift down."""

    force_n: float = Field(gt=20, le=5000, allow_inf_nan=False)
    """Axial force on the ring [N]."""
    inertia_kg_m2: float = Field(gt=0.0005, le=0.5, allow_inf_nan=False)
    """What is brought to speed, as it acts at the cone [kg·m²]."""
    speed_change_rpm: float = Field(gt=50, le=8000, allow_inf_nan=False)
    """Difference of speed at the start [1/min]."""


class CloseOut(Section):
    """What is done between the last bolt and the hand-over."""

    oil: OilAsked
    """The oil that goes in."""
    level: OilLevel
    """Where the oil stands."""
    breather: Breather
    """Air above the oil."""
    leak_test: LeakTest | None = None
    """The leak test, where the unit is tested with air."""
    ring: RingWork | None = None
    """A ring's work in one shift, where the unit has synchronisers."""

    @model_validator(mode="after")
    def _a_level_not_a_pool(self) -> CloseOut:
        if self.level.below_most_mm * self.level.litre_per_mm > 1:
            raise ValueError("the level may be short by more than a litre; check 'litre per mm'")
        return self

    def needed_leak_test(self) -> LeakTest:
        """The leak test; UnitFileError where there is none."""
        if self.leak_test is None:
            raise UnitFileError(
                "the section close out has no 'leak test'", mend="add 'leak test' to it"
            )
        return self.leak_test

    def needed_ring(self) -> RingWork:
        """The ring's work; UnitFileError where there is none."""
        if self.ring is None:
            raise UnitFileError("the section close out has no 'ring'", mend="add 'ring' to it")
        return self.ring
