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
        reach = shim.reach_of(support, unit.bearings)
        if not reach.ok:
            say("shim_set", reach.sentence, "add thicknesses or allow two shims")
        doubt, half = shim.stack_budget(support).expanded(), shim.shim_range(support)[1]
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


def audit_fasteners(unit: Unit) -> tuple[Finding, ...]:
    """Find fasteners that can be overstressed, stripped or left loose, and tools that do not suit.

    Parameters
    ----------
    unit : Unit

    Returns
    -------
    tuple of Finding
        Operations, parts, tools and faces that the unit lacks; a torque off the wrench's usable
        range; with the lowest friction and the most torque the tool can give, more than 90 % of
        yield or a thread that strips; with the highest friction and the least torque, less clamp
        than is needed; a flange whose clamp no five rounds make even enough.
    """
    from twoshaft.errors import CourseError
    from twoshaft.models import joint

    if unit.fasteners is None:
        return ()
    found = []
    tools = {tool.id for tool in unit.tools}
    for wrench in unit.fasteners.wrenches:
        if wrench.tool not in tools:
            where = unit.where("fasteners", "wrenches", wrench.id, "tool")
            found.append(Finding(where, f"there is no tool {wrench.tool}", "name one of the tools"))
    for group in unit.fasteners.groups:

        def say(key: str, what: str, mend: str, group=group) -> None:
            where = unit.where("fasteners", "groups", group.id, key)
            found.append(Finding(where, f"{group.name}: {what}", mend))

        _say_unknown(unit, group, say)
        try:
            fastening = joint.Fastening.of(unit, group.id)
            _audit_torque(fastening, say)
            _audit_clamp(fastening, say)
            _audit_flange(unit, fastening, say)
        except CourseError as trouble:
            say("id", trouble.what, trouble.mend or "correct the figure")
    return tuple(found)


def _say_unknown(unit: Unit, entry, say) -> None:
    for operation in entry.operations:
        if operation not in unit.operation_by_id:
            say("operations", f"there is no operation {operation}", "name one of the operations")
    for part in entry.parts:
        if part not in unit.part_by_id:
            say("parts", f"there is no part {part}", "name one of the parts")


def _audit_torque(fastening, say) -> None:
    from twoshaft.models import joint
    from twoshaft.units.quantities import Q

    wrench, adapter = fastening.wrench, fastening.adapter
    for torque in fastening.group.torque_nm:
        setting = Q(torque, "N*m")
        if adapter is not None:
            length, angle = Q(wrench.length_m, "m"), Q(adapter.angle_deg, "degree")
            reach = Q(adapter.reach_mm, "mm")
            setting = joint.setting_with_adapter(setting, length, reach, angle)
        if not wrench.suits(setting):
            say(
                "torque_nm",
                f"{torque:g} N·m is a setting of {setting.m_as('N*m'):.1f} N·m, off the usable "
                f"range of the {wrench.name}, {wrench.usable_from_nm:g} to {wrench.high_nm:g} N·m",
                "choose another wrench",
            )


def _audit_clamp(fastening, say) -> None:
    group = fastening.group
    use, most = fastening.worst_use(), fastening.most_clamp().m_as("kN")
    if use > 0.9:
        say(
            "torque_nm",
            f"with the lowest friction and the most torque {use:.0%} of yield is used, over 90 %",
            "lower the torque or choose a stronger class",
        )
    strip = fastening.strip()
    if strip is not None and strip.first != "bolt breaks" and strip.holds.m_as("kN") < most:
        say(
            "tapped",
            f"the clamp can reach {most:.1f} kN and the {strip.first.replace('strips', '')}"
            f"strips at {strip.holds.m_as('kN'):.1f} kN",
            "lengthen the engagement or lower the torque",
        )
    least = fastening.least_clamp().m_as("kN")
    if least < group.clamp_kn:
        say(
            "clamp_kn",
            f"with the highest friction and the least torque only {least:.1f} kN are left of "
            f"{group.clamp_kn:g} kN needed",
            "raise the torque or ask for less clamp",
        )


def _audit_flange(unit: Unit, fastening, say) -> None:
    from twoshaft.models import joint

    group = fastening.group
    if group.face is not None:
        if len(fastening.positions_m) != group.count:
            say(
                "count",
                f"{group.count} pieces, but the face {group.face} has "
                f"{len(fastening.positions_m)} bolt holes",
                "make them agree",
            )
            return
        bounds = fastening.bounds()
        for hole in unit.faces.face_by_id(group.face).holes:
            if hole.clamp_n and not bounds.low_n <= hole.clamp_n <= bounds.high_n:
                say(
                    "face",
                    f"hole {hole.id} counts on {hole.clamp_n / 1e3:.1f} kN, the torque gives "
                    f"{bounds.low_n / 1e3:.1f} to {bounds.high_n / 1e3:.1f} kN",
                    "make clamp and torque agree",
                )
    if group.flange is not None:
        order = joint.crosswise(group.count)
        target = fastening.bounds().typical
        if joint.rounds_needed(fastening.face(), order, target, group.spread, most=5) is None:
            say(
                "spread",
                f"five crosswise rounds leave the clamp more uneven than {group.spread:.0%}",
                "stiffen the flange, flatten it or allow more spread",
            )


def audit_fits(unit: Unit) -> tuple[Finding, ...]:
    """Find fits, pins and stakes that cannot be made or do not hold.

    Parameters
    ----------
    unit : Unit

    Returns
    -------
    tuple of Finding
        Operations, parts and fasteners that the unit lacks; a force beyond the press; a heat
        beyond what the part bears; a part that yields; a seat or pin that carries too little; a
        staked nut that can turn.
    """
    from twoshaft.errors import CourseError
    from twoshaft.models import fit

    if unit.fits is None:
        return ()
    found = []
    audits = {
        "presses": _audit_press,
        "spring_pins": _audit_pin,
        "taper_pins": lambda unit, entry, say: fit.taper_pin_of(unit, entry.id),
        "seals": lambda unit, entry, say: fit.seal_of(unit, entry.id),
        "staked_nuts": _audit_stake,
    }
    for kind, audit in audits.items():
        for entry in getattr(unit.fits, kind):

            def say(key: str, what: str, mend: str, kind=kind, entry=entry) -> None:
                where = unit.where("fits", kind, entry.id, key)
                found.append(Finding(where, f"{entry.name}: {what}", mend))

            _say_unknown(unit, entry, say)
            try:
                audit(unit, entry, say)
            except CourseError as trouble:
                say("id", trouble.what, trouble.mend or "correct the figure")
    return tuple(found)


def _audit_press(unit: Unit, entry, say) -> None:
    from twoshaft.models import fit

    pressed = fit.Pressed.of(unit, entry.id)
    stress = fit.stresses(pressed.most, pressed.pair)
    for yields, name in ((stress.hub_yields, "outer"), (stress.shaft_yields, "inner")):
        if yields:
            say("hole", f"the {name} part yields at the tightest fit", "choose an easier fit")
    warming = pressed.warming()
    if warming is not None and not warming.possible:
        say(
            "warmest_c",
            f"the tightest fit needs {warming.heat_to_c:.0f} °C, the part bears "
            f"{warming.limit_c:g} °C",
            "choose an easier fit or cool the inner part as well",
        )
    force = pressed.force_range()[1].m_as("kN")
    if warming is None and force > entry.press_kn:
        say(
            "press_kn",
            f"the tightest fit needs {force:.1f} kN, the press gives {entry.press_kn:g} kN",
            "choose an easier fit or warm the outer part",
        )
    if entry.carries_nm is not None and pressed.least_torque().m_as("N*m") < entry.carries_nm:
        say(
            "carries_nm",
            f"the loosest fit carries {pressed.least_torque().m_as('N*m'):.0f} N·m of "
            f"{entry.carries_nm:g} N·m",
            "choose a tighter fit",
        )


def _audit_pin(unit: Unit, entry, say) -> None:
    from twoshaft.models import fit

    place = fit.pin_of(unit, entry.id)
    if place.margin < place.wanted:
        say(
            "size_mm",
            f"the pin bears {place.margin:.1f} times the force, {place.wanted:g} times are wanted",
            "choose a larger pin",
        )


def _audit_stake(unit: Unit, entry, say) -> None:
    from twoshaft.models import fit
    from twoshaft.units.quantities import Q

    groups = () if unit.fasteners is None else unit.fasteners.groups
    if entry.fastener not in {group.id for group in groups}:
        say("fastener", f"there is no fastener group {entry.fastener}", "name one of the groups")
    margin = fit.stake_margin(fit.stake_of(unit, entry.id), Q(entry.drag_nm, "N*m"))
    if margin < entry.margin:
        say(
            "depth_mm",
            f"the stake holds {margin:.1f} times the drag, {entry.margin:g} times are wanted",
            "stake deeper or longer",
        )
