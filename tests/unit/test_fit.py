"""Fits: what the functions give and what they refuse."""

import math

import pytest

from twoshaft.errors import OutOfRangeError, UnitFileError
from twoshaft.models import fit
from twoshaft.units.quantities import Q

PAIR = fit.Pair.of(Q(50, "mm"), Q(100, "mm"))


@pytest.mark.parametrize(
    "code", ["", "H", "7", "H99", "J7", "z6", "Hh7", "h 6", "H7/p6", "K9", "T7"]
)
def test_no_zone_is_made_up(code):
    with pytest.raises(OutOfRangeError):
        fit.zone(Q(50, "mm"), code)


@pytest.mark.parametrize(
    "size", [Q(0, "mm"), Q(-5, "mm"), Q(120.5, "mm"), Q(math.nan, "mm"), 50, Q(50, "N")]
)
def test_sizes_outside_the_table_are_refused(size):
    with pytest.raises(OutOfRangeError, match="size"):
        fit.zone(size, "H7")


def test_a_size_belongs_to_the_range_that_ends_with_it():
    assert fit.tolerance_um(Q(50, "mm"), 7) == 25 and fit.tolerance_um(Q(50.001, "mm"), 7) == 30
    assert fit.zone(Q(30 / 25.4, "inch"), "p6") == fit.Zone("p6", 30, 22, 35)


@pytest.mark.parametrize("codes", ["p6/H7", "H7", "H7p6", "h7/P6"])
def test_a_fit_names_the_hole_first(codes):
    with pytest.raises(OutOfRangeError):
        fit.fit(Q(50, "mm"), codes)


def test_grades_are_whole():
    for bad in (6.5, 3, 13, math.nan):
        with pytest.raises(OutOfRangeError, match="grade"):
            fit.tolerance_um(Q(50, "mm"), bad)


@pytest.mark.parametrize(
    "outer, bore", [(50, 0), (40, 0), (100, 50), (100, -1), (math.nan, 0), (100, math.nan)]
)
def test_lengths_of_a_pair_must_nest(outer, bore):
    with pytest.raises(OutOfRangeError):
        fit.Pair.of(Q(50, "mm"), Q(outer, "mm"), Q(bore, "mm"))


@pytest.mark.parametrize("delta", [Q(-1, "um"), Q(1, "mm"), Q(math.nan, "um"), Q(20, "N"), 20.0])
def test_interference_is_a_small_positive_length(delta):
    with pytest.raises(OutOfRangeError, match="interference"):
        fit.pressure(delta, PAIR)


@pytest.mark.parametrize("mu", [0, -0.1, 0.7, math.nan])
def test_friction_of_the_seat(mu):
    with pytest.raises(OutOfRangeError, match="friction"):
        fit.press_force(Q(20, "um"), PAIR, Q(40, "mm"), mu)


def test_a_tight_ring_yields():
    assert not fit.stresses(Q(20, "um"), PAIR).hub_yields
    assert fit.stresses(Q(200, "um"), PAIR).hub_yields


ARGS = (Q(40, "um"), Q(60, "mm"), Q(10.9e-6, "1/K"))


def test_heating_has_its_margin_and_its_limit():
    got = fit.warm_to_assemble(*ARGS, Q(120, "degC"))
    assert got.heat_to_c == pytest.approx(got.free_c + fit.HANDLING_K) and got.possible
    assert got.play_um == pytest.approx(10.9e-6 * 60e3 * fit.HANDLING_K)
    assert got.heat_to.m_as("degC") == got.heat_to_c
    sealed = fit.warm_to_assemble(*ARGS, Q(80, "degC"))
    assert not sealed.possible and sealed.play_um == pytest.approx(10.9e-6 * 60e3 * 60 - 40)


def test_play_needs_no_heat():
    got = fit.warm_to_assemble(Q(-10, "um"), *ARGS[1:], Q(120, "degC"))
    assert got.heat_to_c == 20 and got.possible and got.play_um == pytest.approx(10)


def test_limits_below_room_and_warm_shafts_are_refused():
    with pytest.raises(OutOfRangeError, match="hottest"):
        fit.warm_to_assemble(*ARGS, Q(10, "degC"))
    with pytest.raises(OutOfRangeError, match="shaft"):
        fit.warm_to_assemble(
            *ARGS, Q(120, "degC"), shaft_at=Q(30, "degC"), shaft_expansion=Q(11e-6, "1/K")
        )
    with pytest.raises(OutOfRangeError, match="shaft"):
        fit.warm_to_assemble(*ARGS, Q(120, "degC"), shaft_at=Q(-30, "degC"))
    with pytest.raises(OutOfRangeError):
        fit.warm_to_assemble(*ARGS, Q(120, "delta_degC"))


@pytest.mark.parametrize("size", [2.9, 7, -3, math.nan])
def test_no_pin_is_made_up(size):
    with pytest.raises(OutOfRangeError, match="pin"):
        fit.spring_pin(Q(size, "mm"))


def test_pin_margin():
    force = fit.fork_pin_force(Q(250, "N"), 8)
    assert force.m_as("kN") == 2.0
    assert fit.pin_margin(fit.spring_pin(Q(5, "mm")), force) == pytest.approx(17.54 / 2)
    assert fit.pin_margin(fit.spring_pin(Q(5, "mm")), force, 1) == pytest.approx(17.54 / 4)
    with pytest.raises(OutOfRangeError, match="planes"):
        fit.spring_pin(Q(5, "mm")).shear_load(3)


def test_taper_pin_sinks_as_the_hole_is_reamed():
    pin = fit.TaperPin(6e-3, 40e-3)
    assert pin.stands_proud(Q(6.8, "mm")).magnitude == pytest.approx(0)
    assert pin.stands_proud(Q(6.84, "mm")).magnitude == pytest.approx(-2)
    # Common practice, no source: home means about 1 mm proud, that is 0.02 mm under the large end.
    assert pin.stands_proud(Q(6.78, "mm")).magnitude == pytest.approx(1.0, abs=1e-9)
    with pytest.raises(OutOfRangeError, match="hole"):
        pin.stands_proud(Q(5.9, "mm"))
    assert (
        fit.drive_from(insert=True) == "large end" and fit.drive_from(insert=False) == "small end"
    )


RULE = fit.SealRule("oil", (3e-3, 4e-3), 0.4e-3, 58e-3, grease=True, sleeve=True)


def fitted(**change):
    good = {"lip_towards": "oil", "depths_m": (3.5e-3,) * 4, "greased": True, "sleeve_used": True}
    return fit.SealFitted(**(good | change))


def test_a_good_seal_has_no_fault():
    assert fit.seal_faults(RULE, fitted()) == ()


@pytest.mark.parametrize(
    "change, key",
    [
        ({"lip_towards": "air"}, "lip"),
        ({"depths_m": (4.5e-3,) * 4}, "depth"),
        ({"depths_m": (2.5e-3,) * 4}, "depth"),
        ({"depths_m": (3.8e-3, 3.5e-3, 3.2e-3, 3.5e-3)}, "square"),
        ({"greased": False}, "grease"),
        ({"sleeve_used": False}, "sleeve"),
    ],
)
def test_each_slip_is_named(change, key):
    faults = fit.seal_faults(RULE, fitted(**change))
    assert [fault.key for fault in faults] == [key] and faults[0].consequence


def test_tilt_is_found_again_whatever_its_direction():
    for towards in (0.0, 1.0, 2.5):
        readings = fit.seal_readings(Q(3.5, "mm"), Q(0.6, "mm"), 5, towards)
        assert fit.tilt(readings).m_as("mm") == pytest.approx(0.6)
    with pytest.raises(OutOfRangeError, match="readings"):
        fit.tilt([Q(1, "mm"), Q(2, "mm")])
    with pytest.raises(OutOfRangeError):
        fit.tilt([Q(1, "mm"), Q(2, "mm"), Q(math.nan, "mm")])


def test_reversed_seal_depths_are_refused():
    with pytest.raises(OutOfRangeError, match="rise"):
        fit.SealRule("oil", (4e-3, 3e-3), 0.4e-3, 58e-3)


STAKE = (Q(10, "mm"), Q(4, "mm"), Q(3, "mm"))


def test_a_shallow_stake_crushes_a_deep_one_shears():
    deep = Q(4 * 0.577 / 1.5, "mm")  # shear 0.577 of yield, crushing at 1.5 of it
    shallow = fit.stake_hold(*STAKE, deep * 0.5, Q(320, "MPa"))
    good = fit.stake_hold(*STAKE, deep * 1.1, Q(320, "MPa"))
    assert shallow.first == "crushes" and good.first == "shears"
    assert shallow.holds < good.holds == Q(good.shear_nm, "N*m")
    # 10 mm x 0.577 x 320 MPa x 4 mm x 3 mm
    assert good.holds_nm == pytest.approx(0.010 * 0.577 * 320e6 * 12e-6)
    assert fit.stake_margin(good, Q(5, "N*m")) == pytest.approx(good.holds_nm / 5)
    assert fit.stake_hold(*STAKE, deep * 1.1, Q(320, "MPa"), 2).holds_nm == pytest.approx(
        2 * good.holds_nm
    )


@pytest.mark.parametrize(
    "change", [{"depth": Q(-1, "mm")}, {"tabs": 1.5}, {"tabs": 0}, {"radius": Q(math.nan, "mm")}]
)
def test_no_impossible_stake(change):
    given = dict(zip(("radius", "slot_width", "tab_length"), STAKE, strict=True))
    given |= {"depth": Q(2, "mm"), "yield_strength": Q(320, "MPa")} | change
    with pytest.raises(OutOfRangeError):
        fit.stake_hold(**given)


def test_every_fit_of_the_unit_can_be_computed(unit):
    for entry in unit.fits.presses:
        pressed = fit.Pressed.of(unit, entry.id)
        low, high = pressed.force_range()
        assert 0 <= low < high and pressed.fit.least_um < pressed.fit.most_um
        assert (pressed.warming() is None) == (entry.warm == "none")
    for entry in unit.fits.spring_pins:
        place = fit.pin_of(unit, entry.id)
        assert place.margin >= place.wanted
    for entry in unit.fits.seals:
        assert fit.seal_of(unit, entry.id).lip_towards == "oil"
    for entry in unit.fits.staked_nuts:
        assert fit.stake_of(unit, entry.id).first == "shears"


def test_a_fit_that_is_not_there_is_named(unit):
    with pytest.raises(UnitFileError, match="wheel"):
        fit.Pressed.of(unit, "wheel")


# The modulus of the worked examples: 207 GPa.
BOOK_STEEL = fit.Material("steel of the book", 207e9, 0.292, 11.5e-6, 400e6)


@pytest.mark.parametrize("um, mpa", [(42, 65.2), (1, 1.55)])
def test_50_h7_p6_on_a_hub_of_100(um, mpa):
    """Derived: solid steel shaft, steel hub 100 mm, 207 GPa."""
    pair = fit.Pair.of(Q(50, "mm"), Q(100, "mm"), hub=BOOK_STEEL, shaft=BOOK_STEEL)
    assert fit.pressure(Q(um, "um"), pair).m_as("MPa") == pytest.approx(mpa, rel=2e-3)
    if um == 42:
        force = fit.press_force(Q(um, "um"), pair, Q(40, "mm"), 0.15)
        assert force.m_as("kN") == pytest.approx(61.5, rel=2e-3)
        torque = fit.torque_capacity(Q(um, "um"), pair, Q(40, "mm"), 0.15)
        assert torque.m_as("N*m") == pytest.approx(61.5e3 * 0.025, rel=2e-3)


def test_thin_ring_hoop_stress():
    """Boiler formula (textbook): a thin ring on a solid shaft has hoop stress p d/(2 t)."""
    pair = fit.Pair.of(Q(100, "mm"), Q(104, "mm"))
    p = fit.pressure(Q(20, "um"), pair).m_as("Pa")
    got = fit.stresses(Q(20, "um"), pair)
    assert got.hub_hoop_pa == pytest.approx(p * 0.102 / (2 * 0.002), rel=2e-3)


def test_hub_stress():
    """Lamé, largest shear (textbook): hoop plus pressure at the bore is 2 p D²/(D² - d²)."""
    pair = fit.Pair.of(Q(50, "mm"), Q(80, "mm"))
    p = fit.pressure(Q(20, "um"), pair).m_as("Pa")
    got = fit.stresses(Q(20, "um"), pair)
    assert got.hub_equivalent_pa == pytest.approx(2 * p * 80**2 / (80**2 - 50**2), rel=1e-12)


def test_solid_and_hollow_shaft_stress():
    """Lamé: a bored shaft has twice the pressure over its wall's share at the bore."""
    bored = fit.Pair.of(Q(40, "mm"), Q(70, "mm"), Q(20, "mm"))
    p = fit.pressure(Q(20, "um"), bored).m_as("Pa")
    assert fit.stresses(Q(20, "um"), bored).shaft_equivalent_pa == pytest.approx(
        2 * p * 40**2 / (40**2 - 20**2), rel=1e-12
    )


def test_sealed_bearing_may_not_get_that_hot():
    """Trade practice (from memory): 120 °C for open bearings, 80 °C for sealed ones."""
    args = (Q(65, "um"), Q(120, "mm"), Q(11.5e-6, "1/K"))
    assert fit.warm_to_assemble(*args, Q(fit.BEARING_LIMIT_C, "degC")).possible
    assert not fit.warm_to_assemble(*args, Q(fit.SEALED_LIMIT_C, "degC")).possible
