"""A face to be coated and closed: what it is like, what spoils it, how fast the work goes.

Closing says what a mechanic would find: on which stretch the oil gets out and why, which oil
gallery is endangered by how large a lump, which blind hole is flooded, how old the film was.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field
from functools import cached_property
from typing import Any

import numpy as np

from twoshaft.models.film.closing import bead_to_film
from twoshaft.models.film.land import Kind, Land
from twoshaft.models.film.laying import Film, Stroke
from twoshaft.models.film.passes import Hand, Pass, Side, line_mm, nearest_stretch, stroke
from twoshaft.models.film.seal import Nearby, Seal, State, close
from twoshaft.units.kept import kept
from twoshaft.units.quantities import Q
from twoshaft.units.sections.faces import Face, Sealant, SealantKind
from twoshaft.units.unit import Unit

CELLS = (240, 180)
"""Grid of a face at the bench; a grid of 400 by 300 says the same (tested)."""
FILMS_MM = (0.05, 0.06, 0.07, 0.08, 0.09, 0.1, 0.11, 0.12, 0.14, 0.16, 0.18, 0.2, 0.25, 0.3)
BEADS_MM = (0.8, 0.9, 1.0, 1.1, 1.2, 1.3, 1.4, 1.5, 1.6, 1.8, 2.0, 2.5, 3.0)


@dataclass(frozen=True)
class Spot:
    """Oil or dirt on the bare face: a line of points [mm] and its width [mm].

    Examples
    --------
    >>> Work.of(unit, {"face": "end-cover"}).spots
    ()
    >>> Spot("oil", ((0.0, 0.0), (20.0, 0.0)), width_mm=8.0).what
    'oil'
    """

    what: str
    points: tuple[tuple[float, float], ...]
    width_mm: float


@dataclass(frozen=True)
class Pace:
    """Minutes per 100 mm of film, bead and cloth, and from the last pass to the closed face.

    Examples
    --------
    >>> f"{Pace().film / Pace().bead:.0f} times as long for a film as for a bead"
    '3 times as long for a film as for a bead'
    """

    film: float = 0.6
    bead: float = 0.2
    wipe: float = 0.4
    close: float = 5.0


@dataclass(frozen=True, eq=False)
class Work:
    """A face on the bench.

    Attributes
    ----------
    face : Face
    sealant : Sealant
    spots : tuple of Spot
    pace : Pace
    blind_mm3 : float
        How much sealant a blind hole may take.
    cells : tuple of int
        Grid, as for `Land.of`.

    Examples
    --------
    >>> work = Work.of(unit, {"face": "end-cover"})
    >>> work.limit_minutes, round(work.minutes_taken(work.good_passes()), 1)
    (45.0, 7.9)
    """

    face: Face
    sealant: Sealant
    spots: tuple[Spot, ...] = ()
    pace: Pace = field(default_factory=Pace)
    blind_mm3: float = 30.0
    cells: tuple[int, int] = CELLS

    @classmethod
    def of(cls, unit: Unit, job: Mapping[str, Any]) -> Work:
        """The work of one learner.

        Parameters
        ----------
        unit : Unit
        job : mapping
            ``face`` (id) and what differs from the unit file: ``sealant`` (id), ``form`` (fields of
            the face's form), ``open_holes`` (ids), ``lumps_mm`` (by guide), ``minutes`` (the
            sealant's limit), ``spots``, ``pace``, ``blind_mm3``.
        """
        face = unit.faces.face_by_id(job["face"])
        sealant = unit.faces.sealant_by_id(job.get("sealant", face.sealant))
        if "minutes" in job:
            limit = {"open_minutes": job["minutes"]}
            if sealant.kind is SealantKind.MOISTURE:
                limit["skin_minutes"] = job["minutes"]
            sealant = sealant.model_copy(update=limit)
        lumps = job.get("lumps_mm", {})
        opened = job.get("open_holes", ())
        face = face.model_copy(
            update={
                "form": face.form.model_copy(update=dict(job.get("form", {}))),
                "holes": tuple(
                    hole.model_copy(update={"open": True}) if hole.id in opened else hole
                    for hole in face.holes
                ),
                "guides": tuple(
                    guide.model_copy(update={"largest_lump_mm": lumps[guide.id]})
                    if guide.id in lumps
                    else guide
                    for guide in face.guides
                ),
            }
        )
        spots = tuple(
            Spot(spot["what"], tuple(tuple(p) for p in spot["points"]), spot["width_mm"])
            for spot in job.get("spots", ())
        )
        return cls(
            face, sealant, spots, Pace(**job.get("pace", {})), float(job.get("blind_mm3", 30.0))
        )

    @cached_property
    def land(self) -> Land:
        """The face on its grid."""
        return Land.of(self.face, self.cells)

    @cached_property
    def gap_mm(self) -> dict[str, float]:
        """Largest gap of the bolted face along each stretch [mm], by id."""
        gap = np.where(self.land.is_face, self.land.gap_m(), 0.0) * 1e3
        reach_m = self.face.film_width_mm / 2e3
        largest = {}
        for segment in self.face.segments:
            away = self.land.distance_m(np.asarray(segment.points) / 1e3, reach_m)
            largest[segment.id] = float(gap[away <= reach_m].max())
        return largest

    @cached_property
    def length_mm(self) -> float:
        """Length of all stretches together [mm]."""
        lines = (np.diff(np.asarray(segment.points), axis=0) for segment in self.face.segments)
        return sum(float(np.hypot(*line.T).sum()) for line in lines)

    @property
    def limit_minutes(self) -> float:
        """How long the sealant may lie open [min]."""
        sealant = self.sealant
        return sealant.open_minutes if sealant.skin_minutes is None else sealant.skin_minutes

    @cached_property
    def bare(self) -> Film:
        """The face as it comes, with what spoils it."""
        smears = (
            Stroke.smear(Q(np.asarray(s.points), "mm"), width=Q(s.width_mm, "mm"), what=s.what)
            for s in self.spots
        )
        return Film.bare(self.land).lay(*smears)

    def minutes_of(self, done: Pass) -> float:
        """Minutes that a pass takes."""
        length = float(np.hypot(*np.diff(line_mm(self.face, done), axis=0).T).sum())
        return getattr(self.pace, done.hand.value) * length / 100

    def lay(self, passes: Sequence[Pass], minutes: Sequence[float] | None = None) -> Film:
        """The film after some passes.

        Parameters
        ----------
        passes : sequence of Pass
        minutes : sequence of float, optional
            When each pass was done [min]; one after the other at the work's pace by default. The
            clock starts with the first sealant.
        """
        if minutes is None:
            return self._laid(tuple(passes))
        strokes = (
            stroke(self.face, done, minute) for done, minute in zip(passes, minutes, strict=True)
        )
        return self.bare.lay(*strokes)

    @kept(most=2)
    def _laid(self, passes: tuple[Pass, ...]) -> Film:
        return self.lay(passes, self.clock(passes))

    def clock(self, passes: Sequence[Pass]) -> list[float]:
        """When each pass is done, at the work's pace [min]; zero until sealant is laid."""
        now, wet, when = 0.0, False, []
        for done in passes:
            when.append(now)
            wet = wet or done.hand is not Hand.WIPE
            now += self.minutes_of(done) if wet else 0.0
        return when

    def minutes_wet(self, passes: Sequence[Pass]) -> float:
        """Minutes from the first sealant to the last pass, at the work's pace."""
        wet = next((n for n, done in enumerate(passes) if done.hand is not Hand.WIPE), len(passes))
        return sum(self.minutes_of(done) for done in passes[wet:])

    def minutes_taken(self, passes: Sequence[Pass]) -> float:
        """Minutes from the first sealant to the closed face, at the work's pace."""
        return self.minutes_wet(passes) + self.pace.close

    def close(self, passes: Sequence[Pass]) -> Closed:
        """Lay the passes one after the other and close the face."""
        return self._closed(tuple(passes))

    @kept(most=2)
    def _closed(self, passes: tuple[Pass, ...]) -> Closed:
        return self.close_film(self.lay(passes), self.minutes_taken(passes))

    def close_film(self, film: Film, minute: float) -> Closed:
        """Close the face on a film at a minute."""
        return Closed(self, close(film, self.sealant, minute), minute)

    def everywhere(self, hand: Hand, size_mm: float, side: Side = Side.MIDDLE) -> list[Pass]:
        """The same pass on every stretch."""
        return [Pass(hand, size_mm, side, segment.id) for segment in self.face.segments]

    @cached_property
    def spoilt(self) -> tuple[str, ...]:
        """Ids of the stretches with oil or dirt on them."""
        found = (
            nearest_stretch(self.face, *np.mean(np.asarray(spot.points), axis=0))
            for spot in self.spots
        )
        return tuple(dict.fromkeys(found))

    @kept()
    def good_passes(self) -> tuple[Pass, ...] | None:
        """Passes that do the work well, or None if no even film or bead does.

        The spots are wiped; then a film along the middle, or else a bead on the oil side of the
        bolts, is the same on every stretch and a fifth more than the largest gap needs, or as near
        to that as one of `FILMS_MM` or `BEADS_MM` comes that works.
        """
        wanted_mm = 1.2 * max(self.gap_mm.values())
        for hand, sizes in ((Hand.FILM, FILMS_MM), (Hand.BEAD, BEADS_MM)):
            off_mm = {size: abs(self._film_mm(hand, size) - wanted_mm) for size in sizes}
            for size in sorted(sizes, key=off_mm.__getitem__):
                passes = (*self.wiping, *self.everywhere(hand, size, _USUAL[hand]))
                if self.minutes_taken(passes) > self.limit_minutes:
                    break
                if self.close(passes).good:
                    return passes
        return None

    def _film_mm(self, hand: Hand, size_mm: float) -> float:
        """What a hand's size comes to as a film of the face's width."""
        if hand is Hand.FILM:
            return size_mm
        return bead_to_film(Q(size_mm, "mm"), Q(self.face.film_width_mm, "mm")).m_as("mm")

    @property
    def wiping(self) -> tuple[Pass, ...]:
        """Passes that wipe the spots off."""
        return tuple(Pass(Hand.WIPE, 0.0, Side.MIDDLE, place) for place in self.spoilt)


_USUAL = {Hand.FILM: Side.MIDDLE, Hand.BEAD: Side.INSIDE}


@dataclass(frozen=True, eq=False)
class Closed:
    """What a mechanic finds when a face has been closed.

    Attributes
    ----------
    work : Work
    seal : Seal
    minute : float
        When it was closed, from the first sealant on [min].

    Examples
    --------
    >>> work = Work.of(unit, {"face": "end-cover"})
    >>> closed = work.close(work.good_passes())
    >>> closed.good, closed.leaks, closed.flooded
    (True, (), ())
    """

    work: Work
    seal: Seal
    minute: float

    @cached_property
    def leaks(self) -> tuple[tuple[str, State], ...]:
        """Stretch and reason of every way out, the widest first, each stretch once."""
        face, state = self.work.face, self.seal.state
        found: dict[str, State] = {}
        for leak in self.seal.leaks:
            rows, columns = leak.cells.T
            seen = Counter(state[rows, columns].tolist())
            reasons = [s for s in State if s not in (State.NO_FACE, State.SEALED) and seen[s]]
            reason = max(reasons, key=lambda s: seen[s], default=State.EMPTY)
            found.setdefault(nearest_stretch(face, *leak.points_mm[len(rows) // 2]), reason)
        return tuple(found.items())

    @cached_property
    def endangered(self) -> tuple[tuple[Nearby, str], ...]:
        """Guides that a lump endangers, each with the stretch that the largest lump came from."""
        return tuple((near, self._lump_from(near)) for near in self.seal.guides if near.endangered)

    def _lump_from(self, near: Nearby) -> str:
        land, guide = self.work.land, near.guide
        away = np.hypot(land.x_m - guide.x_mm / 1e3, land.y_m[:, None] - guide.y_mm / 1e3)
        inside = (land.kind == Kind.OIL) & (away <= guide.reach_mm / 1e3)
        row, column = np.unravel_index(
            np.where(inside, self.seal.over_m, -1.0).argmax(), away.shape
        )
        return nearest_stretch(self.work.face, land.x_m[column] * 1e3, land.y_m[row] * 1e3)

    @cached_property
    def flooded(self) -> tuple[tuple[str, float], ...]:
        """Blind holes that took too much, with the volume [mm³]."""
        volumes = (
            (hole.id, self.seal.in_hole(hole.id).m_as("mm**3"))
            for hole in self.work.face.holes
            if hole.blind
        )
        return tuple((id, volume) for id, volume in volumes if volume > self.work.blind_mm3)

    @property
    def good(self) -> bool:
        """Tight, with no lump in danger and no blind hole flooded."""
        return not (self.leaks or self.endangered or self.flooded)


__all__ = ["BEADS_MM", "CELLS", "FILMS_MM", "Closed", "Pace", "Spot", "Work"]
