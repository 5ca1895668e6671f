"""Opposed bearings: drags, seating, heat in the unit's supports, refusals and the audit."""

import numpy as np
import pytest

from twoshaft.errors import OutOfRangeError
from twoshaft.models.audit import audit_bearings, audit_faces
from twoshaft.models.bearing import (
    Balls,
    Pair,
    Rollers,
    Warm,
    bearing_torque,
    cord_pull,
    elements,
    life_against_setting,
    unseated,
)
from twoshaft.models.bearing.drag import turned
from twoshaft.models.bearing.heat import RING_STEEL, support_change
from twoshaft.units.loader import load_unit, shipped_units
from twoshaft.units.quantities import Q
from twoshaft.units.sections.bearings import TaperBearing


def evenly(rise):
    """All parts at one temperature."""
    return Warm.of(case=rise, shaft=rise, outer_ring=rise, inner_ring=rise)


@pytest.fixture
def rollers():
    return Rollers.of(angle=Q(15, "deg"), count=17, length=Q(12, "mm"))


def test_kinds_of_the_unit(unit):
    kinds = {type(elements(bearing)) for bearing in unit.bearings.types}
    assert kinds == {Rollers, Balls}


def test_a_cold_preload_is_lost_in_a_warm_aluminium_case(unit):
    support = unit.bearings.support_by_id("differential")
    warm = support_change(support, unit.bearings)
    assert warm.total.m_as("um") < -40
    assert "loosens" in warm.sentence
    pair = Pair.from_support(support, unit.bearings)
    middle = Q(0.085, "mm")
    assert pair.preload(middle).m_as("N") > 2000
    assert pair.preload(middle + warm.total).m_as("N") < 0.2 * pair.preload(middle).m_as("N")


def test_the_other_arrangement_gains(unit):
    support = unit.bearings.support_by_id("practice-hub")
    change = support_change(support, unit.bearings)
    assert change.case_um > 0 > change.shaft_um
    # Turned round, the same case and shaft change sides.
    other = support.model_copy(update={"arrangement": "outer-rings-together"})
    turned_round = support_change(other, unit.bearings)
    assert turned_round.case_um == pytest.approx(-change.case_um)
    assert turned_round.shaft_um == pytest.approx(-change.shaft_um)
    assert turned_round.outer_raceways_um == pytest.approx(change.outer_raceways_um)


def test_what_turns_is_named(unit):
    support = unit.bearings.support_by_id("differential")
    preload = Q(3000, "N")
    pulls = [
        cord_pull(turned(support, unit.bearings, preload, kinds), Q(40, "mm"))
        for kinds in ((), ("seal",), ("seal", "other-shaft"))
    ]
    assert pulls[0].sentence.endswith("turns the bearings only (1.56 N·m)")
    assert "the bearings with seals (" in pulls[1].sentence
    assert "with seals and the other shaft at ratio 4" in pulls[2].sentence
    torques = [pull.turned.torque.m_as("N*m") for pull in pulls]
    assert torques[1] - torques[0] == pytest.approx(1.4)
    assert torques[2] - torques[1] == pytest.approx(0.9 * 4)
    for pull in pulls:
        assert pull.force.m_as("N") * 0.040 == pytest.approx(pull.turned.torque.m_as("N*m"))


def test_ball_torque(unit):
    row = Balls.of(angle=Q(30, "deg"), count=13, diameter=Q(8, "mm"))
    # mu F d / 2 with 0.0015 and a pitch of 46 mm (from memory).
    assert bearing_torque(row, Q(1000, "N")).m_as("N*mm") == pytest.approx(34.5)


def test_rollers_settle(rollers):
    before = unseated(rollers, Q(0.2, "mm"), 0)
    later = [unseated(rollers, Q(0.2, "mm"), turns).stands_proud.m_as("um") for turns in (1, 3, 12)]
    # 0.2 mm up a wedge of 3.6 deg, over sin 15 deg.
    wanted = 200 * np.tan(np.radians(3.6)) / np.sin(np.radians(15))
    assert before.stands_proud.m_as("um") == pytest.approx(wanted)
    assert before.torque_share == 0
    assert wanted > later[0] > later[1] > later[2]
    assert later[2] < 0.02 * wanted
    assert unseated(rollers, Q(0, "mm"), 0).torque_share == 1
    assert "loses that much preload" in before.sentence


def test_setting_on_unseated_rollers_ends_loose(rollers):
    # Set to 50 um of interference by what the gauge shows, the pair has less once it has turned.
    pair = Pair.of(rollers, rollers, Q(80, "N/um"))
    proud = unseated(rollers, Q(0.1, "mm"), 0).stands_proud
    shown = Q(50, "um")
    assert pair.preload(shown - 2 * proud) < 0.7 * pair.preload(shown)


def test_loads_of_a_pair(rollers):
    pair = Pair.of(rollers, rollers)
    setting = pair.interference(Q(1000, "N"))
    left, right = pair.loads(setting, Q(-500, "N"))
    assert left.m_as("N") - right.m_as("N") == pytest.approx(500)
    assert left.m_as("N") == pytest.approx(1250, rel=0.02)


def test_life_of_the_supports(unit):
    for support in unit.bearings.supports:
        pair = Pair.from_support(support, unit.bearings)
        curve = life_against_setting(
            pair,
            Q(np.linspace(-0.1, 0.1, 41), "mm"),
            tuple(Q(n, "N") for n in support.radial_load_n),
            Q(support.axial_load_n, "N"),
            Q(support.speed_rpm, "rpm"),
        )
        assert abs(curve.best_mm) < 0.06
        assert f"{abs(curve.best_mm):.3f} mm" in curve.sentence
        assert (curve.both_h < np.minimum(curve.left_h, curve.right_h)).all()
        assert (curve.catalogue_h is None) == isinstance(pair.left, Balls)


@pytest.mark.parametrize(
    ("call", "says"),
    [
        (lambda r: Rollers.of(angle=Q(50, "deg"), count=17, length=Q(12, "mm")), "contact angle"),
        (lambda r: Rollers.of(angle=Q(15, "deg"), count=2, length=Q(12, "mm")), "rolling elements"),
        (lambda r: Rollers.of(angle=Q(15, "deg"), count=17, length=Q(-12, "mm")), "roller length"),
        (lambda r: bearing_torque(r, Q(-1, "N")), "axial load is -1 N"),
        (lambda r: bearing_torque(r, Q(1, "N*m")), "axial load"),
        (lambda r: bearing_torque(r, Q(float("nan"), "N")), "not a number"),
        (lambda r: Pair.of(r, r, Q(0, "N/m")), "stiffness of the case"),
        (lambda r: Pair.of(r, r).preload(Q(0.5, "mm")), "preload"),
        (lambda r: Pair.of(r, r).preload(Q(2, "mm")), "interference is 2 mm"),
        (lambda r: evenly(Q(300, "delta_degC")), "rise of the case"),
        (lambda r: evenly(Q(60, "degC")), "rise of the case"),
        (lambda r: bearing_torque(r, Q(1, "MN")), "axial load"),
        (lambda r: unseated(r, Q(5, "mm"), 0), "distance from the rib is 5 mm"),
    ],
)
def test_refusals(call, says, rollers):
    with pytest.raises(OutOfRangeError, match=says):
        call(rollers)


def test_only_known_things_turn(unit):
    support = unit.bearings.supports[0]
    with pytest.raises(OutOfRangeError, match="what is turned is 'seals', outside seal, mesh"):
        turned(support, unit.bearings, Q(1, "N"), ("seals",))


def test_schema_refuses_rollers_that_do_not_fit():
    good = load_unit("tarnbeck-b5").bearings.types[0].model_dump()
    with pytest.raises(ValueError, match="do not fit round the pitch"):
        TaperBearing.model_validate(good | {"rollers": 40})
    with pytest.raises(ValueError, match="swap them"):
        TaperBearing.model_validate(good | {"bore_mm": 66.0, "outside_mm": 36.0})


def changed(unit, *place, **new):
    """The unit with some values changed at a place of its plain data."""
    name, *inside = place
    section = getattr(unit, name)
    data = entry = section.model_dump()
    for step in inside:
        entry = entry[step]
    entry.update(new)
    return unit.with_sections(**{name: type(section).model_validate(data)})


@pytest.mark.parametrize("name", shipped_units())
def test_shipped_units_pass_their_audit(name):
    shipped = load_unit(name)
    assert audit_bearings(shipped) == ()
    assert audit_faces(shipped) == ()


def test_a_unit_without_bearings_has_nothing_to_audit(unit):
    bare = unit.with_sections(bearings=None, faces=None)
    assert audit_bearings(bare) == audit_faces(bare) == ()


@pytest.mark.parametrize(
    ("new", "says"),
    [
        ({"arrangement": "inner-rings-together"}, "close with a shim of -71.10 mm"),
        ({"shaft_span_mm": 86.3}, "close with a shim of -0.10 mm"),
        ({"shim_set": "hub-spacers"}, "the shim set reaches the target over 0%"),
        ({"final_operation": "no-such-step"}, "there is no operation no-such-step"),
        (
            {"target": {"kind": "preload", "low_mm": 0.08, "high_mm": 0.09}},
            "the measurement is worth",
        ),
        ({"target": {"kind": "preload", "low_mm": 0.8, "high_mm": 1.0}}, "preload is"),
    ],
)
def test_audit_of_bearings(unit, new, says):
    found = audit_bearings(changed(unit, "bearings", "supports", 0, **new))
    assert any(says in finding.sentence for finding in found)
    assert all(finding.sentence.endswith(".") for finding in found)


@pytest.mark.slow
@pytest.mark.parametrize(
    ("place", "new", "says"),
    [
        ((), {"film_mm": 0.01}, "the film as wanted leaks"),
        ((), {"film_mm": 2.0}, "leaves a lump of"),
        ((), {"lay_operation": "no-such-step"}, "there is no operation no-such-step"),
        (("form",), {"flatness_um": 500.0, "bed_n_per_mm3": 1e6, "roughness_um": 99.0}, "leaks"),
        (("guides", 0), {"x_mm": -5.0}, "is not in the oil room"),
        (("holes", 0), {"x_mm": 900.0}, "lies off the face"),
        (("holes", 0), {"diameter_mm": 40.0, "open": True}, "is open to the edge of the face"),
    ],
)
def test_audit_of_faces(unit, place, new, says):
    found = audit_faces(changed(unit, "faces", "faces", 0, *place, **new))
    assert any(says in finding.sentence for finding in found)


@pytest.mark.slow
def test_audit_of_a_sealant(unit):
    found = audit_faces(changed(unit, "faces", "sealants", 0, largest_gap_mm=0.02))
    assert any("bridges 0.02 mm" in finding.sentence for finding in found)
    for new, says in (
        ({"skin_minutes": 10.0}, "the clock sealant-skins allows 20 minutes"),
        ({"open_minutes": 5.0}, "is good for 5"),
        ({"consumable": "honey"}, "there is no consumable honey"),
    ):
        found = audit_faces(changed(unit, "faces", "sealants", 0, **new))
        assert any(says in finding.sentence for finding in found)
    # The clock may use all the time that there is.
    whole = changed(unit, "faces", "sealants", 0, skin_minutes=20.0, open_minutes=20.0)
    assert not any("sealant-skins" in finding.sentence for finding in audit_faces(whole))


def test_heat_sweeps(unit):
    support = unit.bearings.support_by_id("differential")
    rises = np.array([-30.0, 0.0, 40.0, 80.0])
    swept = support_change(support, unit.bearings, evenly(Q(rises, "delta_degC")))
    single = [
        support_change(support, unit.bearings, evenly(Q(r, "delta_degC"))).total.m_as("um")
        for r in rises
    ]
    assert swept.total.m_as("um") == pytest.approx(single)
    assert single[1] == 0
    pair = Pair.from_support(support, unit.bearings)
    preload = pair.preload(Q(0.06, "mm") + swept.total).m_as("N")
    assert (np.diff(preload) < 0).sum() >= 2


@pytest.mark.parametrize("name", shipped_units())
def test_an_even_warming_of_an_all_steel_unit_changes_no_setting(name):
    """Spans, bearings and shim close, so that all grow alike (no fit lets go, none presses more)."""
    bearings = load_unit(name).bearings
    even = Warm(case_k=60, shaft_k=60, outer_ring_k=60, inner_ring_k=60)
    for support in bearings.supports:
        steel = support.model_copy(update={"case": RING_STEEL, "shaft": RING_STEEL})
        assert abs(support_change(steel, bearings, even).total.m_as("um")) < 1e-6
        shelf = bearings.shim_set_by_id(support.shim_set).thicknesses_mm
        middle = Q(shelf[len(shelf) // 2], "mm")
        # What the shim is off the one that closes grows too: 0.5 mm come to 0.3 um.
        assert abs(support_change(steel, bearings, even, middle).total.m_as("um")) < 0.35
