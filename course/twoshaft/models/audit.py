"""Checks of a unit file that need the models: one function a section.

Each gives findings in the words of the unit file; heavy models are imported where they are used.
"""

from __future__ import annotations

from twoshaft.units.findings import Finding
from twoshaft.units.unit import Unit

# A shim and the measured tolerances fit into this much.
_SPAN_PLAY_MM = 5.0


def audit_bearings(unit: Unit) -> tuple[Finding, ...]:
    """Find supports whose shims, measurements or spans cannot work.

    Parameters
    ----------
    unit : Unit

    Returns
    -------
    tuple of Finding
        Operations that the unit lacks; spans that do not close on the bearings; shim sets that
        cannot reach the target over the tolerances; measurements too rough for the target;
        targets that overload a bearing.
    """
    from twoshaft.errors import OutOfRangeError
    from twoshaft.models import shim
    from twoshaft.models.bearing import Pair
    from twoshaft.models.shim.stack import outer_closes
    from twoshaft.units.quantities import Q

    if unit.bearings is None:
        return ()
    found = []
    for support in unit.bearings.supports:

        def say(key: str, what: str, mend: str, support=support) -> None:
            where = unit.where("bearings", "supports", support.id, key)
            found.append(Finding(where, f"{support.name}: {what}", mend))

        for key in ("trial_operation", "final_operation"):
            operation = getattr(support, key)
            if operation is not None and operation not in unit.operation_by_id:
                say(key, f"there is no operation {operation}", "name one of the operations")
        rows = [unit.bearings.type_by_id(side) for side in (support.left, support.right)]
        stands = sum(row.stand_mm for row in rows)
        room = -outer_closes(support.arrangement) * (support.case_span_mm - support.shaft_span_mm)
        if abs(room - stands) > _SPAN_PLAY_MM:
            say(
                "case_span_mm",
                f"the spans leave {room:.1f} mm for two bearings that stand {stands:.1f} mm",
                "check both spans and the arrangement",
            )
        shelf = unit.bearings.shim_set_by_id(support.shim_set)
        wanted, half = shim.shim_range(support)
        reach = shim.reach(
            Q(list(shelf.thicknesses_mm), "mm"),
            (Q(wanted[0], "mm"), Q(wanted[1], "mm")),
            Q(half, "mm"),
            at_most=shelf.at_most,
        )
        if not reach.ok:
            say("shim_set", reach.sentence, "add thicknesses or allow two shims")
        doubt = shim.stack_budget(support).expanded()
        if doubt >= half:
            say(
                "stack",
                f"the measurement is worth {doubt:.3f} mm, the target only leaves {half:.3f} mm",
                "measure with a finer tool or widen the target",
            )
        try:
            Pair.from_support(support, unit.bearings).preload(shim.target_interference(support)[1])
        except OutOfRangeError as trouble:
            say("target", trouble.what, "lower the target")
    return tuple(found)


def audit_faces(unit: Unit) -> tuple[Finding, ...]:
    """Find sealed faces that even good work could not make tight.

    Parameters
    ----------
    unit : Unit

    Returns
    -------
    tuple of Finding
        Operations that the unit lacks; holes off the face or open to its edge; guides on the face
        or outside; gaps wider than the sealant bridges; a film as the unit file wants it that
        leaves a way through or puts too much near a guide.
    """
    from twoshaft.models import film as films

    if unit.faces is None:
        return ()
    found = []
    for face in unit.faces.faces:

        def say(place: tuple[str, ...], what: str, mend: str, face=face) -> None:
            where = unit.where("faces", "faces", face.id, *place)
            found.append(Finding(where, f"{face.name}: {what}", mend))

        for key in ("lay_operation", "close_operation"):
            operation = getattr(face, key)
            if operation is not None and operation not in unit.operation_by_id:
                say((key,), f"there is no operation {operation}", "name one of the operations")
        land = films.Land.of(face)
        for number, hole in enumerate(face.holes):
            if not (land.hole == number).any():
                say(("holes", hole.id), f"hole {hole.id} lies off the face", "move it")
        for guide in face.guides:
            row = abs(land.y_m - guide.y_mm / 1e3).argmin()
            column = abs(land.x_m - guide.x_mm / 1e3).argmin()
            if land.kind[row, column] != films.Kind.OIL:
                say(("guides", guide.id), f"{guide.name} is not in the oil room", "move it")
        if films.find_leaks(land, land.is_face):
            say(("holes",), "a hole or a cavity is open to the edge of the face", "move it inwards")
            continue
        sealant = unit.faces.sealant_by_id(face.sealant)
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
                        f"{near.guide.name}",
                        "want a thinner film",
                    )
            if not seal.tight:
                say(
                    ("film_mm",),
                    f"the film as wanted leaks: {seal.sentence}",
                    "want a thicker or wider film, or close the gap in the segments",
                )
    return tuple(found)
