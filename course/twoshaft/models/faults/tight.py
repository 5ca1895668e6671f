"""Checks of bolts and of oil: the joint and film models."""

from __future__ import annotations

import numpy as np

from twoshaft.models import film, joint
from twoshaft.models.faults.built import AsBuilt
from twoshaft.models.faults.outcome import Sign
from twoshaft.units.kept import kept
from twoshaft.units.quantities import Q
from twoshaft.units.sections.faces import Face, Sealant
from twoshaft.units.sections.faults import BoltChange, FilmChange
from twoshaft.units.unit import Unit

_CELLS = (200, 150)
"""Half as fine as the rig's grid; a test holds that both show the same."""
_ROUNDS = 3
_SEVERAL = 4
"""From so many places oil is seen to come out all round."""
_EASY = 1e-3


def clamps_n(built: AsBuilt, group: str) -> tuple[np.ndarray, np.ndarray]:
    """Clamp that each piece of a group keeps [N], and whether its thread or bolt has failed.

    Friction is typical; neighbours on one flange take load from each other.

    Examples
    --------
    >>> from twoshaft.models.faults import as_built
    >>> loose = unit.faults.misbuild_by_id("case-bolt-loose")
    >>> clamp, failed = clamps_n(as_built(unit, [loose]), "case-bolts")
    >>> int(clamp.argmin()) + 1, bool(failed.any())
    (12, False)
    """
    changes = tuple(change for change in built.bolts if change.group == group)
    return _clamps_n(built.unit, group, changes)


@kept(most=256)
def _clamps_n(unit: Unit, group: str, changes: tuple[BoltChange, ...]):
    bolts = joint.Fastening.of(unit, group)
    count = bolts.group.count
    share, state = np.ones(count), [bolts.group.state] * count
    for change in changes:
        for n in change.numbers or range(1, count + 1):
            if change.torque_share is not None:
                share[n - 1] = change.torque_share
            elif change.state is not None:
                state[n - 1] = change.state
    target = np.array(
        [
            bolts.bounds(one, bolts.torque * float(part)).typical.m_as("N")
            for one, part in zip(state, share, strict=True)
        ]
    )
    strip = bolts.strip()
    failed = np.zeros(count, bool) if strip is None else target >= strip.holds.m_as("N")
    holding = [n for n in range(count) if not failed[n]]
    if bolts.group.flange is None or len(holding) < 3:
        return np.where(failed, 0.0, target), failed
    order = [n for n in joint.crosswise(count) if n in holding]
    rounds = [joint.Round.of(order, Q(target, "N"))] * _ROUNDS
    return joint.tighten(bolts.face(), rounds).clamp_n, failed


def click(check, built: AsBuilt) -> list[Sign]:
    """Pieces that turn before the set wrench clicks, and threads that no longer tighten.

    Examples
    --------
    >>> from twoshaft.models.faults import as_built
    >>> loose = unit.faults.misbuild_by_id("case-bolt-loose")
    >>> check = unit.faults.check_by_id("click-bolts")
    >>> [sign.words for sign in click(check, as_built(unit, [loose]))]
    ['case bolts: number 12 turns before the click']
    """
    found = []
    for group in check.groups:
        bolts = joint.Fastening.of(built.unit, group)
        name, small = bolts.group.name, bolts.group.name.lower()
        right = AsBuilt(built.unit, built.shift_if_any, built.train_if_any)
        clamp, failed = clamps_n(built, group)
        sound, _ = clamps_n(right, group)
        # The wrench moves a piece that has clearly less clamp than the same torque would give.
        turns = ~failed & (clamp < sound * (1 - bolts.wrench.tolerance) - _EASY)
        for n in np.flatnonzero(turns):
            words = f"{name.lower()}: number {n + 1} turns before the click"
            found.append(Sign(f"turns-{group}-{n + 1}", words))
        if failed.any():
            found.append(Sign(f"no-click-{group}", f"{small}: turns easily and does not click"))
    return found


def leaks(check, built: AsBuilt) -> list[Sign]:
    """Places where oil comes out.

    Examples
    --------
    >>> from twoshaft.models.faults import as_built
    >>> loose = unit.faults.misbuild_by_id("plug-loose")
    >>> check = unit.faults.check_by_id("watch-for-leaks")
    >>> [sign.words for sign in leaks(check, as_built(unit, [loose]))]
    ['oil at: drain plug and level plug']
    """
    found = []
    for identifier in check.faces:
        face = built.unit.faces.face_by_id(identifier)
        seal = _closed(built, face)
        near = {_nearest_hole(face, leak.points_mm[-1]) for leak in seal.leaks}
        if len(near) >= _SEVERAL or (near and seal.sealed_share < 0.5):
            found.append(Sign(f"oil-{face.id}-all-round", f"oil all round: {face.name.lower()}"))
        else:
            found += [
                Sign(
                    f"oil-{face.id}-{hole}",
                    f"oil near {hole.replace('-', ' ')}: {face.name.lower()}",
                )
                for hole in near
            ]
    for group in check.groups:
        entry = built.unit.fasteners.group(group)
        clamp, _ = clamps_n(built, group)
        if clamp.min() < entry.clamp_kn * 1e3:
            found.append(Sign(f"oil-{group}", f"oil at: {entry.name.lower()}"))
    return found


def _closed(built: AsBuilt, face: Face) -> film.Seal:
    """The face, coated and closed as it was."""
    sealant = built.unit.faces.sealant_by_id(face.sealant)
    changes = tuple(change for change in built.films if change.face == face.id)
    return _close(face, sealant, changes, _hole_clamps(built, face), _CELLS)


@kept(most=128)
def _close(
    face: Face,
    sealant: Sealant,
    changes: tuple[FilmChange, ...],
    clamps: tuple | None,
    cells: tuple[int, int],
) -> film.Seal:
    without, waited, times, smears = set(), 1.0, 1.0, []
    for change in changes:
        without |= set(change.without_segments)
        waited = change.waited_minutes or waited
        times *= change.times_film or 1.0
        if change.smear is not None:
            smears.append(change.smear)
    laid = film.Film.bare(film.Land.of(face, cells))
    lines = {s.id: Q(np.asarray(s.points, dtype=float), "mm") for s in face.segments}
    for smear in smears:
        width = Q(smear.width_mm, "mm")
        for segment in smear.segments:
            laid = laid.lay(film.Stroke.smear(lines[segment], width=width, what=smear.what))
    width, thickness = Q(face.film_width_mm, "mm"), Q(face.film_mm * times, "mm")
    laid = laid.lay(
        *(
            film.Stroke.roller(line, width=width, thickness=thickness)
            for segment, line in lines.items()
            if segment not in without
        )
    )
    newtons = None if clamps is None else {hole: Q(force, "N") for hole, force in clamps}
    return film.close(laid, sealant, waited, newtons)


def _hole_clamps(built: AsBuilt, face: Face) -> tuple[tuple[str, float], ...] | None:
    """Clamp by hole, from the bolts that stand in them; None where no group of the unit does."""
    groups = () if built.unit.fasteners_if_any is None else built.unit.fasteners.groups
    holes = [hole.id for hole in face.holes if hole.clamp_n > 0]
    for group in groups:
        if group.face == face.id:
            clamp, _ = clamps_n(built, group.id)
            return tuple(zip(holes, clamp.tolist(), strict=True))
    return None


def _nearest_hole(face: Face, point_mm: np.ndarray) -> str:
    x, y = point_mm
    return min(face.holes, key=lambda hole: (hole.x_mm - x) ** 2 + (hole.y_mm - y) ** 2).id
