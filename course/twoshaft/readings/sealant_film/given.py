"""What the tasks of this module give: a record each. Units stand in the names."""

from __future__ import annotations

from typing import Any

from twoshaft.models.film import bead_to_film, half_round, surplus
from twoshaft.records import BenchRecord, Option, Record, Row, Scenes, to_json
from twoshaft.units.quantities import Q


class Prepare(Record, frozen=True):
    """Faces before the film, and hands and eyes beside solvent and sealant."""

    face: Scenes
    danger: Scenes


class Joint(Record, frozen=True):
    """A joint to be sealed.

    Attributes
    ----------
    what : str
        What lies on what.
    gap_mm : float
        Its largest gap.
    minutes : int
        From the first sealant to the closed joint.
    rigid : bool
    """

    what: str
    gap_mm: float
    minutes: int
    rigid: bool

    @property
    def text(self) -> str:
        """As it is asked."""
        return f"{self.what}, gap up to {self.gap_mm:g} mm, {self.minutes} min of work"


class Joints(Record, frozen=True):
    """Some joints; ``sealants`` are ids: the one without air, the one that cures in air."""

    joints: tuple[Joint, ...]
    options: tuple[Option, ...]
    sealants: tuple[str, str]


class Bead(BenchRecord, frozen=True):
    """A bead beside an oil gallery.

    Attributes
    ----------
    diameter_mm, width_mm : float
        The bead, and the width of the face that it is pressed to.
    gap_mm : float
        Largest gap of the bolted face.
    bound_mm : float
        Radius of the largest lump that is allowed there.
    along_mm : int or float
        Length to reckon with.
    trials_mm : tuple of float
        Other beads, tried on a spare piece of the same width.
    does : tuple of Option
        What a bead may do there.
    """

    diameter_mm: int | float
    width_mm: int | float
    gap_mm: int | float
    bound_mm: int | float
    along_mm: int | float
    trials_mm: tuple[float, ...]
    does: tuple[Option, ...]

    @property
    def trials(self) -> tuple[str, ...]:
        """The other beads as they are asked, with what each of them made."""
        width, gap, along = (Q(mm, "mm") for mm in (self.width_mm, self.gap_mm, self.along_mm))
        made = []
        for size in self.trials_mm:
            film = bead_to_film(Q(size, "mm"), width)
            lump = half_round(surplus(film, gap, width, along) / 2, along)
            made.append(
                f"{size:g} mm, in trial: a film of {film.m_as('mm'):.3f} mm, "
                f"a half round of {lump.m_as('mm'):.2f} mm inside"
            )
        return tuple(made)


class Step(Row, frozen=True):
    """A step of the work: of which kind, what is done, how long it takes.

    Kinds: before, lay, between, down, bolts, tighten.
    """

    kind: str
    text: str
    minutes: int | float


class Planned(Record, frozen=True):
    """A film that is laid, or is to be.

    Attributes
    ----------
    laid : bool
    laying, idle, left : float
        Minutes from its first sealant to its last, how many of them are a break, and from then to
        the last bolt.
    limit : float
        Minutes that it may lie open.
    """

    laid: bool
    laying: int | float
    idle: int | float
    left: int | float
    limit: int | float

    @property
    def age_minutes(self) -> float:
        """From the first sealant until all bolts are run down by hand."""
        return self.laying + self.left

    @property
    def text(self) -> str:
        """As it is asked."""
        laying, idle = f"{self.laying:g} min", f"with a break of {self.idle:g} min in it"
        begun = f"First sealant {laying} ago" if self.laid else f"Not begun, laying takes {laying}"
        return (
            f"{begun}, {idle}. {self.left:g} min more to the last bolt; "
            f"it may lie open {self.limit:g} min"
        )


class Clock(BenchRecord, frozen=True):
    """How the work went.

    Attributes
    ----------
    sealant : str
        Its id.
    limit_minutes : float
        How long the film may lie open.
    rows : tuple of Step
        In the order of the work.
    others : tuple of Planned
        Other films.
    do : tuple of Option
        What may be done about a film.
    """

    sealant: str
    limit_minutes: int | float
    rows: tuple[Step, ...]
    others: tuple[Planned, ...]
    do: tuple[Option, ...]

    @property
    def age_minutes(self) -> float:
        """From the first sealant until all bolts are run down by hand."""
        return sum(step.minutes for step in self.rows if step.kind not in ("before", "tighten"))


class Form(Record, frozen=True):
    """How the faces are out of flat: by how much [µm], and in which shape."""

    flatness_um: int | float
    bow_x: float
    bow_y: float
    twist: float


class Spot(Record, frozen=True):
    """Oil or dirt across a face: what, the ends of its middle line [mm], its width."""

    what: str
    points: tuple[tuple[float, float], ...]
    width_mm: float


class Coat(BenchRecord, frozen=True):
    """A face to be coated.

    Attributes
    ----------
    face, sealant : str
        Their ids.
    form : Form
    lumps_mm : dict of str to float
        Radius of the largest lump allowed, by oil gallery.
    minutes : float
        How long the film may lie open.
    spots : tuple of Spot
    """

    face: str
    sealant: str
    form: Form
    lumps_mm: dict[str, float]
    minutes: int | float
    spots: tuple[Spot, ...]

    @property
    def job(self) -> dict[str, Any]:
        """The same as ``film.Work.of`` takes it."""
        return to_json(self)


class Pace(Record, frozen=True):
    """Minutes for 100 mm of film, bead and cloth, and from the last pass to the closed face."""

    film: float
    bead: float
    wipe: float
    close: int | float


class Timed(Coat, frozen=True):
    """A face to be coated at a pace; ``blind_mm3`` is what a blind hole may take."""

    pace: Pace
    blind_mm3: int | float


class Lay(Timed, frozen=True):
    """The face of the film to be laid, with the largest gap that it has when bolted."""

    gap_mm: float


class Hole(Row, frozen=True):
    """A hole that a bead passes, and its letter in the picture."""

    letter: str
    id: str


class Holes(Record, frozen=True):
    """Bolt holes that a bead passes, and holes with beads beside them.

    Attributes
    ----------
    face : str
        Its id.
    open_holes : tuple of str
        Ids of the holes that lead out.
    sides : dict of str to str
        Side of the bead at every hole of the face, by id.
    pressed_mm : float
        Width of the pressed bead.
    turned_deg : int
        By how much the face is turned in the picture.
    rows : tuple of Hole
        The holes that have a letter.
    asked : tuple of Option
        What is to be pointed at.
    blind : Scenes
    """

    face: str
    open_holes: tuple[str, ...]
    sides: dict[str, str]
    pressed_mm: float
    turned_deg: int
    rows: tuple[Hole, ...]
    asked: tuple[Option, ...]
    blind: Scenes

    @property
    def job(self) -> dict[str, Any]:
        """The face as ``film.Work.of`` takes it."""
        return {"face": self.face, "open_holes": self.open_holes}


class Laid(Row, frozen=True):
    """What was laid on a stretch, and when.

    Members: id and name of the stretch, the film as written, the minute, the largest gap there
    [mm], and what is under it.
    """

    stretch: str
    name: str
    film: str
    minute: float
    gap_mm: float
    under: str


class Fault(Coat, frozen=True):
    """Somebody's film.

    Attributes
    ----------
    entries : tuple of str
        The passes, as a job sheet stores them.
    minutes_laid : tuple of float
        When each was laid.
    closed_minute : int
        When the face was closed.
    rows : tuple of Laid
    asked : tuple of Option
        Some of the stretches.
    says : tuple of Option
        What may be said of one.
    """

    entries: tuple[str, ...]
    minutes_laid: tuple[float, ...]
    closed_minute: int | float
    rows: tuple[Laid, ...]
    asked: tuple[Option, ...]
    says: tuple[Option, ...]


class EdgeSeen(Row, frozen=True):
    """The edge of a closed face, as the model of edges tells it."""

    letter: str
    out_mm: tuple[tuple[float, float], ...]
    high_mm: float
    bound_mm: float


class Edge(Record, frozen=True):
    """Edges of closed faces, and what is to be found among them."""

    seen: tuple[EdgeSeen, ...]
    asked: tuple[Option, ...]


class Curing(Record, frozen=True):
    """A closed face: hours of its sheet, so many times as long it takes here, hours waited."""

    cure_hours: int | float
    cold_factor: float
    waited_hours: int | float

    @property
    def needed_hours(self) -> float:
        """What the cure takes in this workshop."""
        return self.cure_hours * self.cold_factor

    @property
    def text(self) -> str:
        """As it is asked."""
        here = "" if self.cold_factor == 1 else f", {self.cold_factor:g} times that in this cold"
        return f"sheet {self.cure_hours:g} h{here}; closed since {self.waited_hours:g} h"


class After(BenchRecord, frozen=True):
    """What happened to some faces, and others that wait for their oil.

    Attributes
    ----------
    mishap : Scenes
    sealant : str
        Its id.
    cure_hours : float
        By its sheet, at 20 °C.
    cold_factor : float
        So many times as long it takes in this workshop.
    waited_hours : float
        Since the face was closed.
    others : tuple of Curing
        More faces that wait.
    oil : tuple of Option
        When oil may go in.
    """

    mishap: Scenes
    sealant: str
    cure_hours: int | float
    cold_factor: float
    waited_hours: int | float
    others: tuple[Curing, ...]
    oil: tuple[Option, ...]

    @property
    def needed_hours(self) -> float:
        """What the cure takes in this workshop."""
        return self.cure_hours * self.cold_factor


class Given(Record, frozen=True, kw_only=True):
    """All that a learner is given in this module."""

    prepare: Prepare | None = None
    joints: Joints | None = None
    bead: Bead | None = None
    clock: Clock | None = None
    lay: Lay | None = None
    holes: Holes | None = None
    fault: Fault | None = None
    edge: Edge | None = None
    after: After | None = None
