"""What the tasks of this module give: a record each. Units stand in the names."""

from __future__ import annotations

from typing import Any

from twoshaft.records import BenchRecord, Option, Record, Row, to_json


class Scene(Record, frozen=True, rename={"id": "key", "story": "words"}):
    """A situation with what may be done; ``id`` says which version of the bank's it is."""

    id: str
    story: str
    options: tuple[Option, ...]


class Prepare(Record, frozen=True):
    """What may be done before sealant touches the face, to tick, and a situation."""

    options: tuple[Option, ...]
    scene: Scene


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


class Joints(Record, frozen=True):
    """Three joints; ``sealants`` are ids: the one without air, the one that cures in air."""

    joints: tuple[Joint, ...]
    options: tuple[Option, ...]
    sealants: tuple[str, str]


class Bead(BenchRecord, frozen=True):
    """A bead beside an oil way.

    Attributes
    ----------
    diameter_mm, width_mm : float
        The bead, and the width of the face that it is pressed to.
    gap_mm : float
        Largest gap of the bolted face.
    bound_mm : float
        Radius of the largest lump that is allowed there.
    along_mm : float
        Length to reckon with.
    nozzles_mm : tuple of float
        Beads to choose from.
    """

    diameter_mm: int | float
    width_mm: int | float
    gap_mm: int | float
    bound_mm: int | float
    along_mm: float
    nozzles_mm: tuple[float, ...]


class Step(Row, frozen=True):
    """A step of the work: of which kind, what is done, how long it takes.

    Kinds: before, lay, between, down, bolts, tighten.
    """

    kind: str
    text: str
    minutes: int | float


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
    options : tuple of Option
        What may be done about the film.
    """

    sealant: str
    limit_minutes: int | float
    rows: tuple[Step, ...]
    options: tuple[Option, ...]

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
        Radius of the largest lump allowed, by oil way.
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
    """A hole that a bead passes: its name, where it leads, and on which side the bead lies."""

    id: str
    name: str
    leads: str
    side: str


class Holes(Record, frozen=True):
    """Bolt holes that a bead passes, and a question on a blind one.

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
    rows : tuple of Hole
        The holes asked about.
    options : tuple of Option
        The same.
    scene : Scene
    """

    face: str
    open_holes: tuple[str, ...]
    sides: dict[str, str]
    pressed_mm: float
    rows: tuple[Hole, ...]
    options: tuple[Option, ...]
    scene: Scene

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
    options : tuple of Option
        The stretches.
    reasons : tuple of Option
        Why oil may get out.
    """

    entries: tuple[str, ...]
    minutes_laid: tuple[float, ...]
    closed_minute: int | float
    rows: tuple[Laid, ...]
    options: tuple[Option, ...]
    reasons: tuple[Option, ...]


class Change(Record, frozen=True, rename={"id": "key", "text": "words"}):
    """A change of a strip: its id, which member it is of, by which factor, and in words."""

    id: str
    name: str
    factor: float
    text: str


class Strip(Record, frozen=True):
    """A strip of sealant under bolts run down by hand.

    Attributes
    ----------
    viscosity_pa_s, length_mm, width_mm, clamp_kn : float
    start_mm, end_mm : float
        The film at the start, and the gap at the end.
    """

    viscosity_pa_s: int | float
    length_mm: int | float
    width_mm: int | float
    clamp_kn: int | float
    start_mm: int | float
    end_mm: int | float


class Closing(Strip, frozen=True):
    """A strip, and what may be changed of it."""

    changes: tuple[Change, ...]


class After(BenchRecord, frozen=True):
    """What happened to one face, and another that waits for its oil.

    Attributes
    ----------
    mishap : Scene
    sealant : str
        Its id.
    cure_hours : float
        By its sheet, at 20 °C.
    cold_factor : float
        So many times as long it takes in this workshop.
    waited_hours : float
        Since the face was closed.
    oil : tuple of Option
        Whether oil may go in.
    """

    mishap: Scene
    sealant: str
    cure_hours: int | float
    cold_factor: float
    waited_hours: int | float
    oil: tuple[Option, ...]

    @property
    def needed_hours(self) -> float:
        """What the cure takes in this workshop."""
        return self.cure_hours * self.cold_factor


class Given(Record, frozen=True):
    """All that a learner is given in this module."""

    prepare: Prepare
    joints: Joints
    bead: Bead
    clock: Clock
    lay: Lay
    holes: Holes
    fault: Fault
    closing: Closing
    after: After
