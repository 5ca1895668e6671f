"""A face to coat, bolt holes to look at, and somebody else's film to judge."""

from __future__ import annotations

import math
from collections import Counter
from collections.abc import Sequence

import numpy as np

from twoshaft.errors import UnitFileError
from twoshaft.models.film import (
    Closed,
    Hand,
    Land,
    Pass,
    Side,
    State,
    Work,
    leaking_holes,
    nearest_stretch,
)
from twoshaft.readings.keyed import Stream
from twoshaft.readings.scenes import LETTERS
from twoshaft.readings.sealant_film.given import (
    Coat,
    Fault,
    Form,
    Hole,
    Holes,
    Laid,
    Lay,
    Pace,
    Spot,
    Timed,
)
from twoshaft.readings.sealant_film.lot import Lot, step
from twoshaft.readings.sealant_film.questions import BANK
from twoshaft.readings.sealant_film.worth import not_worth_laying
from twoshaft.records import Option, extended
from twoshaft.units.quantities import Q
from twoshaft.units.sections import faces

TRIES = 80
PRESSED_MM = 4.0
ASKED_HOLES, LEAKING = 8, 3
FAULTS = {
    "thin": State.EMPTY,
    "oil": State.OILY,
    "dirt": State.DIRTY,
    "old": State.SKINNED,
}


def draw_lay(lot: Lot) -> Lay:
    """A face to coat, by roller or with a bead as time allows."""
    stream, face = lot.stream.child("lay"), lot.face("lay")
    by_roller = stream.choice((True, False))
    found: Counter[str] = Counter()
    for _ in range(TRIES):
        job = _lay_job(lot, face, stream, by_roller)
        work = Work.of(lot.unit, job.job)
        why_not = not_worth_laying(work, by_roller)
        if not why_not:
            return extended(Lay, job, gap_mm=largest_gap_mm(work))
        found[why_not] += 1
    raise UnitFileError(
        f"unit {lot.unit.identity.id!r} has no film that suits the face {face.id!r}: "
        + found.most_common(1)[0][0],
        mend="see to that in its section 'faces', or leave this task out",
    )


def largest_gap_mm(work: Work) -> float:
    """The largest gap of the bolted face [mm], rounded up."""
    return math.ceil(1000 * max(work.gap_mm.values())) / 1000


def _lay_job(lot: Lot, face: faces.Face, stream: Stream, by_roller: bool) -> Timed:
    lines = (np.diff(np.asarray(segment.points), axis=0) for segment in face.segments)
    length_mm = sum(float(np.hypot(*line.T).sum()) for line in lines)
    limit, closing = step(stream, 10, 16, 1), step(stream, 4, 6, 1)
    # A film by roller is in time, or clearly is not and a bead has to do.
    needed = limit - closing - step(stream, 2, 4, 0.5) * (1 if by_roller else -1)
    return Timed(
        face=face.id,
        sealant=face.sealant,
        form=_form(stream),
        lumps_mm=_bounds(face, step(stream, 0.8, 1.2, 0.1)),
        minutes=limit,
        spots=(_spot(face, stream.choice(face.segments).id, stream.choice(("oil", "dirt"))),),
        pace=Pace(
            film=round(100 * needed / length_mm, 2),
            bead=step(stream, 0.15, 0.25, 0.05),
            wipe=0.5,
            close=closing,
        ),
        blind_mm3=step(stream, 20, 30, 5),
    )


def draw_holes(lot: Lot) -> Holes:
    """Bolt holes that a bead passes, three of which leak, and holes with beads beside them."""
    stream, face = lot.stream.child("holes"), lot.face("holes")
    for _ in range(TRIES):
        asked = sorted(stream.shuffled(range(len(face.holes)))[:ASKED_HOLES])
        holes = [face.holes[n] for n in asked]
        sides, opened = _cases(holes, stream)
        if sides is None:
            continue
        every = {hole.id: Side(sides.get(hole.id, Side.INSIDE)) for hole in face.holes}
        land = Land.of(Work.of(lot.unit, {"face": face.id, "open_holes": opened}).face)
        if len(leaking_holes(land, every, Q(PRESSED_MM, "mm"))) == LEAKING:
            break
    else:
        raise lot.too_small(f"bolt holes on the face {face.id} that a bead can pass")
    return Holes(
        face=face.id,
        open_holes=tuple(opened),
        sides={id: side.value for id, side in every.items()},
        pressed_mm=PRESSED_MM,
        turned_deg=90 * stream.integer(4),
        rows=tuple(
            Hole(letter, hole.id)
            for letter, hole in zip(stream.shuffled(LETTERS[:ASKED_HOLES]), holes, strict=True)
        ),
        asked=tuple(stream.shuffled(BANK.lists["hole"])),
        blind=lot.scenes_asked("blind", BANK, 4, lambda: _hole_figures(face, stream)),
    )


def _hole_figures(face: faces.Face, stream: Stream) -> dict[str, object]:
    """What a scene at a hole is filled with: a bolt's name, a depth and a bead [mm]."""
    return {
        "bolt": _name(stream.choice(face.holes).id),
        "mm": 3 + stream.integer(16),
        "d": f"{step(stream, 1, 2.5, 0.1):g}",
    }


def _cases(holes: Sequence[faces.Hole], stream: Stream) -> tuple[dict[str, Side] | None, list[str]]:
    """Sides and open holes: three that leak in two ways, and tight ones that look like them."""
    leaking = [(Side.OUTSIDE, True), (Side.MIDDLE, False), stream.choice(
        ((Side.OUTSIDE, True), (Side.MIDDLE, True), (Side.MIDDLE, False)))]  # fmt: skip
    tight = [(Side.OUTSIDE, False), (Side.INSIDE, True), (Side.ROUND, True),
             (Side.INSIDE, False), (Side.OUTSIDE, False)]  # fmt: skip
    dealt = stream.shuffled([*leaking, *tight])
    if any(hole.blind and leads_out for hole, (_, leads_out) in zip(holes, dealt, strict=True)):
        return None, []
    sides = {hole.id: side for hole, (side, _) in zip(holes, dealt, strict=True)}
    return sides, [hole.id for hole, (_, out) in zip(holes, dealt, strict=True) if out]


def _name(id: str) -> str:
    return id.replace("-", " ")


def draw_fault(lot: Lot) -> Fault:
    """A film with one leak and one lump that endangers an oil gallery."""
    stream, face = lot.stream.child("fault"), lot.face("fault")
    kind = lot.in_turn("fault", list(FAULTS))[0]
    for _ in range(TRIES):
        given = _fault(lot, face, kind, stream)
        if given is not None:
            return given
    raise lot.too_small(f"a film with one fault on the face {face.id}")


def _fault(lot: Lot, face: faces.Face, kind: str, stream: Stream) -> Fault | None:
    ids = [segment.id for segment in face.segments]
    guide = stream.choice(face.guides)
    fat = nearest_stretch(face, guide.x_mm, guide.y_mm)
    at = ids.index(fat)
    beside = {ids[(at + k) % len(ids)] for k in (-1, 0, 1)}
    leak = stream.choice([id for id in ids if id not in beside])
    spots = (_spot(face, leak, kind),) if kind in ("oil", "dirt") else ()
    sealant = lot.unit.faces.sealant_by_id(face.sealant)
    coat = Coat(
        face=face.id,
        sealant=sealant.id,
        form=_form(stream),
        lumps_mm=_bounds(face, step(stream, 0.9, 1.2, 0.1)),
        minutes=sealant.open_minutes,
        spots=spots,
    )
    work = Work.of(lot.unit, coat.job)
    gaps = work.gap_mm
    if kind == "thin" and gaps[leak] < 0.05:
        return None
    # As thick a film as at the oil gallery, where nothing is near: much comes out and harms nobody.
    far = stream.choice([id for id in ids if id not in beside and id != leak])
    thick = step(stream, 0.34, 0.5, 0.02)
    passes, minutes, now = [], [], 0.0
    for id in ids:
        low, high = (0.45, 0.6) if id == leak and kind == "thin" else (1.2, 1.5)
        size = max(0.02, round(stream.uniform(low, high) * gaps[id], 2))
        passes.append(Pass(Hand.FILM, thick if id in (fat, far) else size, Side.MIDDLE, id))
        minutes.append(round(now, 1))
        now += step(stream, 0.3, 0.8, 0.1)
    if kind == "old":
        head = round(1.2 * work.limit_minutes)
        minutes = [
            0.0 if id == leak else round(m + head, 1) for id, m in zip(ids, minutes, strict=True)
        ]
    end = math.ceil(max(minutes)) + step(stream, 4, 7, 1)
    closed = work.close_film(work.lay(passes, minutes), end)
    if not _one_fault(closed, leak, FAULTS[kind], fat):
        return None
    plain = stream.choice([id for id in ids if id not in (leak, fat, far)])
    asked = {leak, fat, far, plain}
    names = {segment.id: segment.name for segment in face.segments}
    remark = {leak: f"{kind} across the face, under the film"} if spots else {}
    rows = (
        Laid(done.place, names[done.place], f"{done.size_mm:g} mm", minute,
             round(gaps[done.place], 3), remark.get(done.place, "clean"))
        for done, minute in zip(passes, minutes, strict=True)
    )  # fmt: skip
    return extended(
        Fault,
        coat,
        entries=tuple(done.entry for done in passes),
        minutes_laid=tuple(minutes),
        closed_minute=end,
        rows=tuple(rows),
        asked=tuple(Option(id, names[id]) for id in ids if id in asked),
        says=BANK.lists["stretch"],
    )


def _one_fault(closed: Closed, leak: str, reason: State, fat: str) -> bool:
    lumps = {place for _, place in closed.endangered}
    return closed.leaks == ((leak, reason),) and lumps == {fat}


def _form(stream: Stream) -> Form:
    """How the faces are out of flat."""
    return Form(
        flatness_um=step(stream, 50, 100, 5),
        bow_x=stream.choice((1.0, -1.0)),
        bow_y=step(stream, -0.6, 0.6, 0.2),
        twist=step(stream, -0.4, 0.4, 0.2),
    )


def _bounds(face: faces.Face, bound: float) -> dict[str, float]:
    return {guide.id: bound for guide in face.guides}


def _spot(face: faces.Face, stretch: str, what: str) -> Spot:
    """Oil or dirt right across the face, in the middle of a stretch."""
    line = np.asarray(next(s.points for s in face.segments if s.id == stretch))
    middle = len(line) // 2
    at, along = line[middle], line[middle + 1] - line[middle - 1]
    across = np.array([-along[1], along[0]]) / np.hypot(*along) * face.film_width_mm
    ends = ((at + sign * across).tolist() for sign in (-1, 1))
    points = tuple((round(x, 1), round(y, 1)) for x, y in ends)
    return Spot(what=what, points=points, width_mm=7.0)
