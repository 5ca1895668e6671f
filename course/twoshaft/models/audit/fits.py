"""What a fits section gets wrong, found by running the models."""

from __future__ import annotations

from twoshaft.models.audit.names import say_unknown
from twoshaft.units.findings import Finding
from twoshaft.units.unit import Unit


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

    Examples
    --------
    >>> audit_fits(unit)
    ()
    """
    from twoshaft.errors import CourseError
    from twoshaft.models import fit

    if unit.fits_if_any is None:
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

            say_unknown(unit, entry, say)
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

    groups = () if unit.fasteners_if_any is None else unit.fasteners.groups
    if entry.fastener not in {group.id for group in groups}:
        say("fastener", f"there is no fastener group {entry.fastener}", "name one of the groups")
    margin = fit.stake_margin(fit.stake_of(unit, entry.id), Q(entry.drag_nm, "N*m"))
    if margin < entry.margin:
        say(
            "depth_mm",
            f"the stake holds {margin:.1f} times the drag, {entry.margin:g} times are wanted",
            "stake deeper or longer",
        )
