"""What a fasteners section gets wrong, found by running the models."""

from __future__ import annotations

from twoshaft.models.audit.names import say_unknown
from twoshaft.units.findings import Finding
from twoshaft.units.unit import Unit


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

    Examples
    --------
    >>> audit_fasteners(unit)
    ()
    """
    from twoshaft.errors import CourseError
    from twoshaft.models import joint

    if unit.fasteners_if_any is None:
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

        say_unknown(unit, group, say)
        try:
            fastening = joint.Fastening.of(unit, group.id)
            _audit_torque(fastening, say)
            _audit_clamp(fastening, say)
            _audit_flange(unit, fastening, say)
        except CourseError as trouble:
            say("id", trouble.what, trouble.mend or "correct the figure")
    return tuple(found)


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
    from twoshaft.models import joint

    group = fastening.group
    use, most = fastening.worst_use(), fastening.most_clamp().m_as("kN")
    if use > joint.MOST_USE:
        say(
            "torque_nm",
            f"with the lowest friction and the most torque {use:.1%} of yield is used, "
            f"over {100 * joint.MOST_USE:g} %",
            "lower or narrow the torque, or give a stronger class, a finer thread, its friction",
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
