"""What a faces section gets wrong, found by running the models."""

from __future__ import annotations

from twoshaft.units.findings import Finding
from twoshaft.units.unit import Unit


def audit_faces(unit: Unit) -> tuple[Finding, ...]:
    """Find sealed faces that even good work could not make tight.

    Parameters
    ----------
    unit : Unit

    Returns
    -------
    tuple of Finding
        Operations that the unit lacks; clocks longer and waits shorter than the sealant's own;
        holes off the face or open to its edge; guides on the face or outside; gaps wider than the
        sealant bridges; a film as the unit file wants it that leaves a way through or puts too
        much near a guide.

    Examples
    --------
    >>> audit_faces(unit)
    ()
    """
    from twoshaft.models import film as films

    if unit.faces_if_any is None:
        return ()
    found = []
    known = {consumable.id for consumable in unit.consumables}
    for sealant in unit.faces.sealants:
        if sealant.consumable is not None and sealant.consumable not in known:
            where = unit.where("faces", "sealants", sealant.id, "consumable")
            what = f"{sealant.name}: there is no consumable {sealant.consumable}"
            found.append(Finding(where, what, "name one of the consumables"))
    for face in unit.faces.faces:

        def say(place: tuple[str, ...], what: str, mend: str, face=face) -> None:
            where = unit.where("faces", "faces", face.id, *place)
            found.append(Finding(where, f"{face.name}: {what}", mend))

        for key in ("lay_operation", "close_operation"):
            operation = getattr(face, key)
            if operation is not None and operation not in unit.operation_by_id:
                say((key,), f"there is no operation {operation}", "name one of the operations")
        sealant = unit.faces.sealant_by_id(face.sealant)
        limit = sealant.open_minutes
        if sealant.skin_minutes is not None:
            limit = min(limit, sealant.skin_minutes)
        for clock in unit.clocks:
            if clock.starts == face.lay_operation and clock.minutes > limit:
                say(
                    ("sealant",),
                    f"the clock {clock.id} allows {clock.minutes:g} minutes, {sealant.name} "
                    f"is good for {limit:g}",
                    "shorten the clock or choose another sealant",
                )
        closed = {clock.ends for clock in unit.clocks if clock.starts == face.lay_operation}
        for wait in unit.waits:
            cures = wait.starts in closed | {face.lay_operation, face.close_operation}
            if cures and wait.minutes < 60 * sealant.cure_hours:
                say(
                    ("sealant",),
                    f"the wait {wait.id} is {wait.minutes:g} minutes, {sealant.name} cures in "
                    f"{sealant.cure_hours:g} hours",
                    "lengthen the wait or choose another sealant",
                )
        land = films.Land.of(face)
        for number, hole in enumerate(face.holes):
            if not (land.hole == number).any():
                say(("holes", hole.id), f"hole {hole.id} lies off the face", "move it")
        for guide in face.guides:
            row = abs(land.y_m - guide.y_mm / 1e3).argmin()
            column = abs(land.x_m - guide.x_mm / 1e3).argmin()
            if land.kind[row, column] != films.Kind.OIL:
                say(("guides", guide.id), f"the {guide.name} is not in the oil room", "move it")
        if films.find_leaks(land, land.is_face):
            say(("holes",), "a hole or a cavity is open to the edge of the face", "move it inwards")
            continue
        gap_mm = float(land.gap_m()[land.is_face].max()) * 1e3
        if gap_mm > sealant.largest_gap_mm:
            say(
                ("sealant",),
                f"the closed face gapes {gap_mm:.2f} mm, {sealant.name} bridges "
                f"{sealant.largest_gap_mm:g} mm",
                "choose another sealant",
            )
        if face.segments:
            seal = films.close(films.Film.bare(land).lay(*films.good_strokes(face)), sealant, 1.0)
            for near in seal.guides:
                if near.endangered:
                    say(
                        ("film_mm",),
                        f"the film as wanted leaves a lump of {near.lump_mm:.1f} mm near "
                        f"the {near.guide.name}",
                        "want a thinner film",
                    )
            if not seal.tight:
                say(
                    ("film_mm",),
                    f"the film as wanted leaks: {seal.sentence}",
                    "want a thicker or wider film, or close the gap in the segments",
                )
    return tuple(found)
