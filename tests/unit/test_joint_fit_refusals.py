"""Every public function of joint and fit: each quantity in turn not a number, infinite, unitless."""

import math

import pytest

from twoshaft.errors import OutOfRangeError
from twoshaft.models import fit, joint
from twoshaft.units.quantities import Q

M8 = joint.Thread.named("M8")
SEAT = joint.Seat.hexagon(M8)
STEEL = joint.strength("8.8", Q(8, "mm"))
DRY = joint.STATES["dry"]
HOLE = joint.BlindHole(25e-3, 19e-3, 18e-3)
WRENCH = joint.TorqueWrench("wrench", 10, 90, 0.5, 0.39)
PAIR = fit.Pair.of(Q(50, "mm"), Q(80, "mm"))
T, F = Q(25, "N*m"), Q(15, "kN")


def mm(value):
    return Q(value, "mm")


ALPHA = Q(11e-6, "1/K")
CALLS = [
    (joint.Thread.of, (mm(8), mm(1.25))),
    (joint.Seat.of, (mm(13), mm(9))),
    (joint.strength, ("8.8", mm(8))),
    (joint.clamp_short, (T, 0.2, mm(8))),
    (joint.torque_long, (F, M8, SEAT, 0.12, 0.13)),
    (joint.nut_factor, (M8, SEAT, 0.12, 0.13)),
    (joint.torque_shares, (M8, SEAT, 0.12, 0.13)),
    (joint.assembly_preload, (M8, STEEL, 0.12, 0.9)),
    (joint.utilisation, (F, M8, STEEL, 0.12)),
    (joint.clamp_bounds, (T, M8, SEAT, DRY, 0.04)),
    (joint.clamp_sample, (T, M8, SEAT, DRY, 0.04)),
    (joint.torque_for_state, (T, M8, SEAT, DRY, joint.STATES["oiled"])),
    (joint.worst_utilisation, (T, M8, SEAT, STEEL, DRY, 0.04)),
    (joint.permissible_deviation, (Q(90, "N*m"), "setting", "A")),
    (WRENCH.suits, (T,)),
    (WRENCH.applied, (T,)),
    (WRENCH.nearest_setting, (T,)),
    (joint.setting_with_adapter, (T, mm(400), mm(50), Q(30, "degree"))),
    (joint.torque_at_bolt, (T, mm(400), mm(50), Q(30, "degree"))),
    (joint.shear_area_hole, (mm(10), mm(1.25), mm(8), mm(7.188))),
    (joint.shear_area_bolt, (mm(10), mm(1.25), mm(6.647), mm(7.188))),
    (joint.boss_factor, (1.6,)),
    (joint.bending_factors, (0.8,)),
    (joint.strip_loads, (M8, STEEL, Q(210, "MPa"), mm(14), mm(18))),
    (joint.hydraulic_lock, (HOLE, M8, SEAT, Q(0.5, "cm**3"), T, 0.12, Q(1.5, "GPa"))),
    (joint.bolt_stiffness, (M8, mm(26))),
    (joint.Round.of, ((0, 1, 2), F, Q(10, "um"))),
    (fit.tolerance_um, (mm(50), 7)),
    (fit.zone, (mm(50), "H7")),
    (fit.fit, (mm(50), "H7/p6")),
    (fit.Pair.of, (mm(50), mm(80), mm(10))),
    (fit.pressure, (Q(20, "um"), PAIR)),
    (fit.press_force, (Q(20, "um"), PAIR, mm(30), 0.12)),
    (fit.torque_capacity, (Q(20, "um"), PAIR, mm(30), 0.12)),
    (fit.stresses, (Q(20, "um"), PAIR)),
    (fit.growth, (mm(50), ALPHA, Q(60, "delta_degC"))),
    (fit.warm_to_assemble, (Q(20, "um"), mm(50), ALPHA, Q(120, "degC"))),
    (fit.spring_pin, (mm(5),)),
    (fit.fork_pin_force, (Q(200, "N"), 8.0)),
    (fit.pin_margin, (fit.spring_pin(mm(5)), Q(2, "kN"))),
    (fit.TaperPin(6e-3, 40e-3).stands_proud, (mm(6.78),)),
    (fit.seal_readings, (mm(3), mm(0.2), 4)),
    (fit.stake_hold, (mm(10), mm(4), mm(3), mm(2), Q(320, "MPa"), 1)),
    (fit.stake_margin, (fit.Stake(20, 25), Q(5, "N*m"))),
]
NAMES = [getattr(call, "__qualname__", str(call)) for call, _ in CALLS]


def spoilt():
    """Give each call with one of its quantities spoilt, one after the other."""
    for (call, args), name in zip(CALLS, NAMES, strict=True):
        for place, arg in enumerate(args):
            if isinstance(arg, Q):
                ways = {
                    "nan": Q(math.nan, arg.units),
                    "infinite": Q(math.inf, arg.units),
                    "unitless": float(arg.magnitude),
                    "kilograms": Q(1, "kg"),
                    "text": str(arg),
                }
            elif isinstance(arg, (int, float)):
                ways = {"nan": math.nan, "infinite": math.inf, "minus": -1.0, "text": str(arg)}
                ways |= {"metres": Q(arg, "m")}
            else:
                continue
            for way, bad in ways.items():
                yield pytest.param(
                    call, (*args[:place], bad, *args[place + 1 :]), id=f"{name}-{place}-{way}"
                )


def complete(call, args):
    """Call it; sampling wants a seed by name."""
    return call(*args, seed=1, count=10) if call is joint.clamp_sample else call(*args)


@pytest.mark.parametrize("call, args", CALLS, ids=NAMES)
def test_the_calls_are_good_as_they_stand(call, args):
    complete(call, args)


@pytest.mark.parametrize("call, args", list(spoilt()))
def test_a_spoilt_quantity_never_passes(call, args):
    with pytest.raises(OutOfRangeError):
        complete(call, args)


def test_no_public_function_is_left_out():
    """Whoever adds a function to joint or fit adds it here, or says why it needs no check."""
    called = {name.split(".")[0] for name in NAMES}
    free = {
        # patterns and readers of a unit file or of a result, checked in their own tests
        *("clockwise", "crosswise", "middle_outwards", "limits_6g6h"),
        *("spread", "tighten", "rounds_needed"),
        *("drive_from", "entry_of", "material", "pin_of", "seal_of", "stake_of"),
        *("taper_pin_of", "seal_faults", "tilt", "tight_rings", "crosses_elements"),
        *("clip_faults", "driven_pin_faults"),
    }
    functions = {
        name
        for module in (joint, fit)
        for name in module.__all__
        if callable(getattr(module, name)) and not isinstance(getattr(module, name), type)
    }
    assert functions - called - free == set()
