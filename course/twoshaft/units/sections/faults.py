"""The faults section: the checks of the finished unit, and the ways to build it wrongly.

A misbuild says only what it changes in the input of a model: a body, a shim, a torque, a film, a
tooth count, a step left out. What a check then shows is computed; no table of symptoms stands
anywhere. ``often_per_1000`` is how many builds of a thousand have the misbuild: a weight to start
a diagnosis from (common practice, no source).
"""

from __future__ import annotations

from typing import Annotated, Literal

from pydantic import Field, model_validator

from twoshaft.units.sections.order import Id, Ids, Section, Text


class ShiftChange(Section):
    """A misbuild of the shift mechanism, by its id in the shift section."""

    kind: Literal["shift"]
    """shift."""
    misbuild: Id
    """A misbuild of the shift section."""


class SettingChange(Section):
    """A pair of bearings set wrongly: exactly one of the changes."""

    kind: Literal["setting"]
    """setting."""
    support: Id
    """The shaft whose setting is wrong."""
    shim_mm: float | None = Field(default=None, ge=-1, le=1)
    """Shim thicker by this than the right one; below zero thinner."""
    without_shim: bool = False
    """It was put together without its shim."""
    ring_off_mm: float | None = Field(default=None, gt=0, le=1)
    """An outer ring that stands off its seat by this, towards its rollers."""

    @model_validator(mode="after")
    def _one(self) -> SettingChange:
        _exactly_one(self, "shim_mm", "without_shim", "ring_off_mm")
        return self


class BoltChange(Section):
    """Bolts tightened wrongly: another torque, or the right torque on another state of thread."""

    kind: Literal["bolts"]
    """bolts."""
    group: Id
    """The group of fasteners."""
    numbers: tuple[Annotated[int, Field(ge=1, le=60)], ...] = ()
    """Which of the group, from 1; all where left out."""
    torque_share: float | None = Field(default=None, gt=0, le=5)
    """Torque over the right one."""
    state: Id | None = None
    """State of the threads in place of the right one."""

    @model_validator(mode="after")
    def _one(self) -> BoltChange:
        _exactly_one(self, "torque_share", "state")
        return self


class Smear(Section):
    """Oil or dirt across the face: along some of its segments."""

    what: Literal["oil", "dirt"]
    """oil or dirt."""
    segments: Ids = Field(min_length=1)
    """The stretches that it lies on."""
    width_mm: float = Field(ge=0.5, le=60)
    """Its width [mm]."""


class FilmChange(Section):
    """A film laid wrongly: exactly one of the changes."""

    kind: Literal["film"]
    """film."""
    face: Id
    """The sealed face."""
    without_segments: Ids = ()
    """Stretches that were not coated."""
    smear: Smear | None = None
    """What lay on the face."""
    waited_minutes: float | None = Field(default=None, gt=0, le=600)
    """Time from laying the film to closing the face."""
    times_film: float | None = Field(default=None, gt=0, le=20)
    """Thickness laid over the right one."""

    @model_validator(mode="after")
    def _one(self) -> FilmChange:
        _exactly_one(self, "without_segments", "smear", "waited_minutes", "times_film")
        return self


class WheelChange(Section):
    """A gear with another number of teeth on one side of a mesh."""

    kind: Literal["wheel"]
    """wheel."""
    mesh: Id
    """The mesh."""
    side: Literal["driving", "driven"]
    """driving or driven."""
    teeth: int = Field(ge=6, le=300)
    """Number of teeth in place of the right one."""


class HubChange(Section):
    """A synchroniser put in the wrong way round, or with a worn ring: exactly one of the two."""

    kind: Literal["hub"]
    """hub."""
    synchroniser: Id
    """The synchroniser."""
    away_from: Id | None = None
    """The gear that the sleeve of a hub turned round stands further away from."""
    away_mm: float = Field(default=0.0, ge=0, le=20)
    """How much further away the sleeve stands [mm]."""
    wear_mm: float | None = Field(default=None, gt=0, le=1)
    """Wear of the ring's cone, at right angles to its face."""

    @model_validator(mode="after")
    def _one(self) -> HubChange:
        _exactly_one(self, "away_from", "wear_mm")
        if (self.away_from is None) != (self.away_mm == 0):
            raise ValueError("give 'away from' and 'away mm' together")
        return self


class SpeedDriveChange(Section):
    """Another gear in the speed drive."""

    kind: Literal["speed-drive"]
    """speed-drive."""
    side: Literal["driving", "driven"]
    """driving or driven."""
    teeth: int = Field(ge=1, le=200)
    """Number of teeth in place of the right one."""


class LeftOut(Section):
    """A step of the build that was not done."""

    kind: Literal["left-out"]
    """left-out."""
    operation: Id
    """The operation that was not done."""


FaultChange = Annotated[
    ShiftChange
    | SettingChange
    | BoltChange
    | FilmChange
    | WheelChange
    | HubChange
    | SpeedDriveChange
    | LeftOut,
    Field(discriminator="kind"),
]


class Misbuild(Section):
    """A way to build the unit wrongly, or a worn part put back."""

    id: Id
    """Its id: small letters, figures and hyphens; no other entry of its list has it."""
    name: Text
    """What was done, in words."""
    changes: tuple[FaultChange, ...] = Field(min_length=1)
    """What it changes; at least one."""
    often_per_1000: float = Field(gt=0, lt=500)
    """Of a thousand builds, how many have it: a weight for the search (common practice, no
    source)."""


class _Check(Section):
    """What every check of the finished unit has."""

    id: Id
    """Its id: small letters, figures and hyphens; no other entry of its list has it."""
    name: Text
    """The check, in words."""
    minutes: float = Field(gt=0, le=240)
    """Time that it takes [minutes]."""
    tool: Id | None = None
    """The tool that it needs."""
    operations: Ids = ()
    """Steps of the build that make this check; none for one that only a search for faults makes."""


class GearsCheck(_Check):
    """By hand: does every gear go in?"""

    kind: Literal["gears-go-in"]
    """gears-go-in."""


class HeldCheck(_Check):
    """By hand: is every gear held once it is in?"""

    kind: Literal["gears-held"]
    """gears-held."""


class AtOnceCheck(_Check):
    """By hand: can two gears be engaged at once?"""

    kind: Literal["two-at-once"]
    """two-at-once."""


class LockoutCheck(_Check):
    """By hand: are the direct shifts stopped that must be?"""

    kind: Literal["lockout"]
    """lockout."""


class TurnsCheck(_Check):
    """Turns of the input counted for turns of the output, gear by gear.

    Right within the least count of the gear train, taken off at both counts.
    """

    kind: Literal["turns"]
    """turns."""
    output_turns: float = Field(gt=0, le=100)
    """Turns of the output that are made."""
    counted: Literal["one output, the other held", "both outputs, averaged", "the output shaft"]
    """How they are counted: one output held, both averaged, or the output shaft of a unit without a
    differential."""


class CordCheck(_Check):
    """Turning torque on a cord; right between the pulls of the target's two limits."""

    kind: Literal["cord"]
    """cord."""
    support: Id
    """The shaft that the cord turns."""
    resolution_n: float = Field(gt=0, le=100)
    """Smallest step of the spring scale [N]."""
    turning: tuple[Literal["seal", "mesh"], ...] = ()
    """What turns besides the bearings."""
    and_support: Id | None = None
    """A second pair of bearings that turns too."""
    speed_ratio: float | None = Field(default=None, gt=0, le=50)
    """Its speed over that of the shaft with the cord; left out, the final drive's."""


class FloatCheck(_Check):
    """End float under a dial gauge; right inside the target, none where there is preload."""

    kind: Literal["end-float"]
    """end-float."""
    support: Id
    """The shaft."""
    resolution_mm: float = Field(gt=0, le=0.5)
    """Smallest step of the dial indicator [mm]."""


class ClickCheck(_Check):
    """A wrench set to the right torque: does it click before anything turns?"""

    kind: Literal["click"]
    """click."""
    groups: Ids = Field(min_length=1)
    """The groups that are tried."""


class LeakCheck(_Check):
    """Filled and turned through: where does oil come out?"""

    kind: Literal["leaks"]
    """leaks."""
    faces: Ids = ()
    """Sealed faces that are looked at."""
    groups: Ids = ()
    """Plugs and covers that are dry while each piece leaves the clamp it needs."""


class SpeedDriveCheck(_Check):
    """Turns of the speed pinion counted for turns of the wheels."""

    kind: Literal["speed-drive"]
    """speed-drive."""
    wheel_turns: float = Field(gt=0, le=100)
    """Turns of the wheels that are made."""


class RingGapCheck(_Check):
    """Ring gap of a synchroniser under a feeler gauge; right from its least value."""

    kind: Literal["ring-gap"]
    """ring-gap."""
    synchroniser: Id
    """The synchroniser."""
    resolution_mm: float = Field(gt=0, le=0.5)
    """Smallest step of the feeler gauges [mm]."""


FinalCheck = Annotated[
    GearsCheck
    | HeldCheck
    | AtOnceCheck
    | LockoutCheck
    | TurnsCheck
    | CordCheck
    | FloatCheck
    | ClickCheck
    | LeakCheck
    | SpeedDriveCheck
    | RingGapCheck,
    Field(discriminator="kind"),
]


class Faults(Section):
    """Checks of the finished unit and misbuilds to look for."""

    checks: tuple[FinalCheck, ...] = Field(min_length=1)
    """Every check of the finished unit."""
    misbuilds: tuple[Misbuild, ...] = Field(min_length=1)
    """Every way to build it wrongly that is looked for."""

    @model_validator(mode="after")
    def _ids_once(self) -> Faults:
        for entries, word in ((self.checks, "check"), (self.misbuilds, "misbuild")):
            ids = [entry.id for entry in entries]
            twice = {i for i in ids if ids.count(i) > 1}
            if twice:
                raise ValueError(f"{word} {min(twice)} is listed twice; rename one")
        return self

    def check_by_id(self, check: str) -> FinalCheck:
        """The check with this id; KeyError if there is none."""
        return _by_id(self.checks, check)

    def misbuild_by_id(self, misbuild: str) -> Misbuild:
        """The misbuild with this id; KeyError if there is none."""
        return _by_id(self.misbuilds, misbuild)


def _by_id(entries, wanted: str):
    for entry in entries:
        if entry.id == wanted:
            return entry
    raise KeyError(wanted)


def _exactly_one(entry: Section, *keys: str) -> None:
    given = [key for key in keys if getattr(entry, key) not in (None, False, ())]
    if len(given) != 1:
        raise ValueError(f"give exactly one of {', '.join(key.replace('_', ' ') for key in keys)}")
