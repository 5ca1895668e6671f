"""Closing a face on its film: what is filled, what seals, what leaks, where the surplus went.

A cell seals when the paste fills its gap, sticks (no oil, no dirt), is fresh (not skinned, within
its open time), holds no trapped air, and the gap is not wider than the sealant can bridge.
"""

from __future__ import annotations

from dataclasses import dataclass
from enum import IntEnum
from functools import cached_property

import numpy as np

from twoshaft.errors import OutOfRangeError
from twoshaft.models.border import Depends, Range, border
from twoshaft.models.film.closing import squeeze_time_strip
from twoshaft.models.film.land import Kind, Land, grown
from twoshaft.models.film.laying import Film
from twoshaft.models.film.leaks import Leak, find_leaks
from twoshaft.models.film.spreading import spread
from twoshaft.models.film.surplus import half_round_radius
from twoshaft.units.quantities import Q
from twoshaft.units.sections.faces import Guide, Sealant

# A gap filled to this part is full: the rest is within the roughness.
FULL = 0.98
_EIGHT = np.ones((3, 3), dtype=bool)
_LEAST_LUMP_MM = 0.05


class State(IntEnum):
    """What a cell of the closed face is; the first reason that holds is shown.

    Examples
    --------
    >>> State.SKINNED.name, State.SKINNED > State.SEALED
    ('SKINNED', True)
    """

    NO_FACE = 0
    SEALED = 1
    EMPTY = 2
    OILY = 3
    DIRTY = 4
    SKINNED = 5
    AIR = 6
    TOO_WIDE = 7


@dataclass(frozen=True)
class Pocket:
    """Air shut in by the paste as the face closes.

    Examples
    --------
    >>> from twoshaft.models.film import Land, good_strokes
    >>> face = unit.faces.face_by_id("end-cover")
    >>> laid = Film.bare(Land.of(face, (120, 90))).lay(*good_strokes(face))
    >>> close(laid, unit.faces.sealant_by_id(face.sealant), 5).pockets  # no air is shut in
    ()
    """

    area_mm2: float
    centre_mm: tuple[float, float]


@dataclass(frozen=True)
class Nearby:
    """Surplus near an oil guide.

    Attributes
    ----------
    guide : Guide
    distance_mm : float
        From the guide to the nearest lump; infinite if there is none.
    volume_mm3 : float
        Within the guide's reach.
    lump_mm : float
        Largest lump within reach: radius of the half round that the surplus of one cell makes.

    Examples
    --------
    >>> from twoshaft.models.film import Land, good_strokes
    >>> face = unit.faces.face_by_id("case-joint")
    >>> laid = Film.bare(Land.of(face, (120, 90))).lay(*good_strokes(face))
    >>> seal = close(laid, unit.faces.sealant_by_id(face.sealant), 5)
    >>> [(near.guide.id, near.endangered) for near in seal.guides]
    [('oil-way', False), ('magnet-seat', False)]
    """

    guide: Guide
    distance_mm: float
    volume_mm3: float
    lump_mm: float

    @property
    def endangered(self) -> bool:
        """True if a lump within reach is larger than the guide bears."""
        return self.lump_mm > self.guide.largest_lump_mm


@dataclass(frozen=True, eq=False)
class Seal:
    """A closed face.

    Attributes
    ----------
    film : Film
        As it was laid.
    clamp_n : float
        Sum of all bolts [N].
    gap_m, thickness_m, over_m : numpy.ndarray
        Gap, film after closing and surplus beside the face, shape (ny, nx) [m].
    state : numpy.ndarray of uint8
        `State` of each cell, shape (ny, nx).
    leaks : tuple of Leak
    pockets : tuple of Pocket

    Examples
    --------
    >>> from twoshaft.models.film import Land, good_strokes
    >>> face = unit.faces.face_by_id("end-cover")
    >>> laid = Film.bare(Land.of(face, (120, 90))).lay(*good_strokes(face))
    >>> seal = close(laid, unit.faces.sealant_by_id(face.sealant), 5)
    >>> seal.tight, round(seal.sealed_share, 2)
    (True, 1.0)
    """

    film: Film
    clamp_n: float
    gap_m: np.ndarray
    thickness_m: np.ndarray
    over_m: np.ndarray
    state: np.ndarray
    leaks: tuple[Leak, ...]
    pockets: tuple[Pocket, ...]

    @property
    def tight(self) -> bool:
        """True if no way is left from the oil to the outside."""
        return not self.leaks

    @property
    def sealed_share(self) -> float:
        """Part of the face that seals, 0 to 1."""
        return float((self.state == State.SEALED).sum() / self.film.land.is_face.sum())

    def overflow(self, kind: Kind) -> Q:
        """Surplus that came out into cells of a kind [mm³]."""
        land = self.film.land
        return Q(float(self.over_m[land.kind == kind].sum()) * land.cell_m2 * 1e9, "mm**3")

    def in_hole(self, hole: str) -> Q:
        """Surplus in a hole [mm³]; in a blind one it can lock the bolt.

        Raises
        ------
        OutOfRangeError
            For a hole that the face lacks.
        """
        land = self.film.land
        ids = [entry.id for entry in land.face.holes]
        if hole not in ids:
            raise OutOfRangeError("hole", hole, ", ".join(ids), land.face.name)
        inside = land.hole == ids.index(hole)
        return Q(float(self.over_m[inside].sum()) * land.cell_m2 * 1e9, "mm**3")

    @cached_property
    def guides(self) -> tuple[Nearby, ...]:
        """Surplus near each oil guide of the face."""
        land = self.film.land
        inwards = np.where(land.kind == Kind.OIL, self.over_m, 0.0)
        rows, columns = np.nonzero(inwards)
        # A lump lies along the edge: its section is the cell's surplus over the cell's length.
        lumps_mm: np.ndarray = half_round_radius(inwards[rows, columns] * land.pitch_m) * 1e3
        found = []
        for guide in land.face.guides:
            away_mm = 1e3 * np.hypot(
                land.x_m[columns] - guide.x_mm / 1e3, land.y_m[rows] - guide.y_mm / 1e3
            )
            seen = lumps_mm > _LEAST_LUMP_MM
            distance = float((away_mm - lumps_mm)[seen].min()) if seen.any() else np.inf
            near = away_mm <= guide.reach_mm
            volume = float(inwards[rows, columns][near].sum()) * land.cell_m2 * 1e9
            lump = float(lumps_mm[near].max()) if near.any() else 0.0
            found.append(Nearby(guide, max(distance, 0.0), volume, lump))
        return tuple(found)

    def closing_time(self, sealant: Sealant) -> Q:
        """Time [s] that the clamp needs to press the film out, as a strip along the face.

        The whole film counts as one strip as long as the covered area is over the mean width of
        the face; a guide value, since the real gap varies.
        """
        strip = self._strip()
        if strip is None:
            return Q(0.0, "s")
        length, width, clamp, start, end = strip
        return squeeze_time_strip(
            Q(sealant.viscosity_pa_s, "Pa*s"), length, width, clamp, start, end
        )

    def _strip(self):
        land = self.film.land
        coated = self.film.thickness_m > 0
        wet = self.thickness_m > 0
        if not self.clamp_n or not coated.any():
            return None
        area_m2 = float(wet.sum()) * land.cell_m2
        start_m = float(self.film.thickness_m[coated].mean())
        end_m = float(self.thickness_m[wet].mean())
        width_m = 2 * area_m2 / _perimeter_m(land)
        if end_m >= start_m or area_m2 / width_m < 3 * width_m:
            return None
        return (
            Q(area_m2 / width_m, "m"),
            Q(width_m, "m"),
            Q(self.clamp_n, "N"),
            Q(start_m, "m"),
            Q(end_m, "m"),
        )

    @property
    def sentence(self) -> str:
        """The finding in one sentence."""
        inwards = self.overflow(Kind.OIL).m_as("mm**3")
        if self.leaks:
            x, y = self.leaks[0].points_mm[-1]
            several = len(self.leaks) > 1
            ways = f"{len(self.leaks)} ways are" if several else "one way is"
            which = "the largest" if several else "it"
            head = f"{ways} left for the oil: {which} comes out at x {x:.0f} mm, y {y:.0f} mm"
            through = self.leaks[0].through
            head += f" through hole {through[-1]}" if through else ""
        else:
            head = "no way is left for the oil"
        endangered = [near.guide.name for near in self.guides if near.endangered]
        tail = f"; {inwards:.0f} mm³ came out inside"
        if endangered:
            tail += f", too much near the {' and the '.join(endangered)}"
        return head + tail


def _since_the_last_stroke(film: Film) -> Range:
    coated = film.thickness_m > 0
    last = float(film.minute[coated].max()) if coated.any() else 0.0
    return Range("minute of closing", "", max(last, 0.0), np.inf, "the last stroke")


@border(minute=Depends("", _since_the_last_stroke))
def close(film: Film, sealant: Sealant, minute: float, clamps: dict[str, Q] | None = None) -> Seal:
    """Close a face on its film.

    Parameters
    ----------
    film : Film
    sealant : Sealant
    minute : float
        When the face is closed, not before the last stroke [min].
    clamps : dict of str to pint.Quantity, optional
        Clamp [N] by hole id; the unit file's where absent.

    Returns
    -------
    Seal

    Raises
    ------
    OutOfRangeError
        For a time before the last stroke, an unknown hole or a clamp out of range.

    Examples
    --------
    >>> from twoshaft.models.film import Land, good_strokes
    >>> face = unit.faces.face_by_id("end-cover")
    >>> gappy = good_strokes(face)[1:]  # one stretch left out
    >>> laid = Film.bare(Land.of(face, (120, 90))).lay(*gappy)
    >>> close(laid, unit.faces.sealant_by_id(face.sealant), 5).tight
    False
    """
    land = film.land
    gap_m = land.gap_m(clamps)
    after = spread(land, film.thickness_m, gap_m)
    full = after.thickness_m >= FULL * gap_m
    pockets, air = _pockets(film, gap_m)
    tests = (
        (State.TOO_WIDE, gap_m > sealant.largest_gap_mm / 1e3),
        (State.AIR, air),
        (State.SKINNED, _stale(film, sealant, minute)),
        (State.DIRTY, film.dirty),
        (State.OILY, film.oily),
        (State.EMPTY, ~full),
    )
    state = np.full(land.kind.shape, State.SEALED, dtype=np.uint8)
    for value, true in tests:
        state[true] = value
    state[~land.is_face] = State.NO_FACE
    leaks = find_leaks(land, state == State.SEALED)
    clamp_n = sum(land.clamps_n(clamps).values())
    over_m = after.over_m if film.beside_m is None else after.over_m + film.beside_m
    return Seal(film, clamp_n, gap_m, after.thickness_m, over_m, state, leaks, pockets)


def _stale(film: Film, sealant: Sealant, minute: float) -> np.ndarray:
    """Cells whose paste is too old; what flows in is as old as the nearest paste laid."""
    limit = sealant.open_minutes if sealant.skin_minutes is None else sealant.skin_minutes
    coated = film.thickness_m > 0
    old = coated & (minute - film.minute > limit)
    if not old.any():
        return old
    from scipy import ndimage

    row, column = ndimage.distance_transform_edt(
        ~coated, return_distances=False, return_indices=True
    )
    return old[row, column]


def _pockets(film: Film, gap_m: np.ndarray) -> tuple[tuple[Pocket, ...], np.ndarray]:
    """Air that has no way out: not filled, and walled in by paste that the closing face meets.

    Air leaves by any edge and by any hole but a blind one.
    """
    from scipy import ndimage

    land = film.land
    blind = np.isin(land.hole, [n for n, hole in enumerate(land.face.holes) if hole.blind])
    low = (land.is_face & (film.thickness_m < gap_m)) | blind
    vent = ~land.is_face & ~blind
    region, count = ndimage.label(low, structure=_EIGHT)
    vented = np.unique(region[low & grown(vent)])
    sizes = np.bincount((region * land.is_face).ravel(), minlength=count + 1)
    shut = [n for n in range(1, count + 1) if n not in set(vented.tolist()) and sizes[n] > 1]
    if not shut:
        return (), np.zeros(low.shape, dtype=bool)
    centres = ndimage.center_of_mass(low, region, shut)
    pockets = tuple(
        Pocket(
            float(sizes[n]) * land.cell_m2 * 1e6,
            (float(x), float(y)),
        )
        for n, centre in zip(shut, centres, strict=True)
        for x, y in land.points_mm(np.rint([centre]).astype(int))[:1]
    )
    return pockets, np.isin(region, shut) & land.is_face


def _perimeter_m(land: Land) -> float:
    """Length of all free edges of the face [m], corners of the grid taken straight (pi/4)."""
    face = land.is_face
    edges = (face[1:] != face[:-1]).sum() + (face[:, 1:] != face[:, :-1]).sum()
    return float(edges) * land.pitch_m * np.pi / 4
