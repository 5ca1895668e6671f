"""Gear train against worked examples; the source stands beside each check."""

import math

import pytest

from twoshaft.models import geartrain
from twoshaft.units.quantities import Q
from twoshaft.units.sections.geartrain import GearTrain


def simple(driving, driven, idler=None, rolling_mm=300.0, speed_drive=None):
    """One gear, with or without an idler; final drive 3 : 1 unless told."""
    gear = {"shaft": "in", "teeth": driving}
    meshes = (
        [("a", gear, {"shaft": "out", "teeth": driven}, "out")]
        if idler is None
        else [
            ("a", gear, {"shaft": "idle", "teeth": idler}, "idle"),
            ("b", {"shaft": "idle", "teeth": idler}, {"shaft": "out", "teeth": driven}, None),
        ]
    )
    meshes.append(("f", {"shaft": "out", "teeth": 20}, {"shaft": "case", "teeth": 60}, None))
    return GearTrain.model_validate(
        {
            "input": "in",
            "shafts": ["in", "out", "idle", "case", "left", "right"],
            "meshes": [
                {"id": i, "driving": a, "driven": b, "loose": loose, "module_mm": 2}
                for i, a, b, loose in meshes
            ],
            "final_drive": "f",
            "gears": [{"id": "g", "name": "the gear", "engages": ["a"]}],
            "differential": {
                "case": "case", "left": "left", "right": "right",
                "side_teeth": 16, "pinion_teeth": 10,
            },
            "rolling_radius_mm": rolling_mm,
            "speed_drive": speed_drive,
        }
    )  # fmt: skip


def test_one_external_mesh():
    """Source: MecMovies (Philpot), torsion module M6.18: gears of 24 and 72 teeth, -0.050724
    rad at B give +0.016908 rad at C.
    """
    turned = float(1 / geartrain.ratio(simple(24, 72), "g", to="out")) * -0.050724
    assert turned == pytest.approx(0.016908, abs=1e-6)


def test_cone_clutch_example():
    """Source: Budynas and Nisbett, Shigley's Mechanical Engineering Design, solution of problem
    16-19: d 306 mm, D 330 mm, 60 mm face, f 0.26, 200 N·m: half angle 11.31°, F 0.949 kN.
    """
    angle = math.atan((330 - 306) / 2 / 60)
    assert math.degrees(angle) == pytest.approx(11.31, abs=0.005)
    torque = geartrain.cone_torque(Q(948.8, "N"), 0.26, Q(318, "mm"), Q(angle, "rad"))
    assert torque.to("N*m").magnitude == pytest.approx(200.0, rel=1e-3)


def test_synchronising_time_is_inertia_times_speed_over_torque():
    """Source: firgelli's page on synchronisers, t = J dw / T with J 0.012 kg m² as an order of
    size.
    """
    time = geartrain.synchronising_time(Q(0.012, "kg*m**2"), Q(200, "rad/s"), Q(12, "N*m"))
    assert time.to("s").magnitude == pytest.approx(0.2)


def test_speed_drive_on_the_output_shaft():
    """Source: Two stored pages on cable speed drives: rev/mile = 20168 / D_in; the driven gear
    for 1001 cable turns a mile has drive x axle x rev/mile / 1001 teeth: D 20 in, axle 3, drive
    40: 121 teeth.
    """
    radius_mm = 20 * 25.4 / 2
    unit = simple(20, 40, rolling_mm=radius_mm,
                  speed_drive={"shaft": "out", "driving_teeth": 40, "driven_teeth": 121})  # fmt: skip
    turns = geartrain.speed_drive_turns(unit, Q(1, "mile")).to("turn").magnitude
    assert turns == pytest.approx(1001, rel=2e-3)


def test_wheel_turns_in_a_mile():
    """Source: Two stored pages on cable speed drives: 63360 / (pi D), that is 20168 / D, with D
    in inches.
    """
    unit = simple(20, 40, rolling_mm=20 * 25.4 / 2,
                  speed_drive={"shaft": "case", "driving_teeth": 1, "driven_teeth": 1})  # fmt: skip
    turns = geartrain.speed_drive_turns(unit, Q(1, "mile")).to("turn").magnitude
    assert turns == pytest.approx(63360 / (math.pi * 20), rel=1e-9)
    assert turns == pytest.approx(20168 / 20, rel=1e-4)


def test_profile_shift_against_the_textbook_pair():
    """Source: ISO 21771 (equations from memory), worked here: z 24 and 48, m 3, a 109 mm:
    alpha_w = acos(108 cos 20 / 109) = 21.398°, x1 + x2 = 72 (inv alpha_w - inv 20) / (2 tan 20)
    = 0.3435.
    """
    fit = geartrain.centre_fit((24, 48), Q(3, "mm"), Q(109, "mm"))
    angle = math.acos(108 * math.cos(math.radians(20)) / 109)
    involute = math.tan(angle) - angle
    basic = math.tan(math.radians(20)) - math.radians(20)
    assert fit.working_angle.to("degree").magnitude == pytest.approx(math.degrees(angle))
    assert basic == pytest.approx(0.014904, abs=1e-6)  # involute of 20 deg, any gear table
    assert fit.shift_sum == pytest.approx(
        72 * (involute - basic) / (2 * math.tan(math.radians(20)))
    )


def test_transverse_pressure_angle_of_a_helix_of_30_degrees():
    """Source: Tables of helical gears (from memory) list 22.796°, which is tan 20° / cos 30°."""
    reference = 3 * (21 + 43) / (2 * math.cos(math.radians(30)))
    fit = geartrain.centre_fit((21, 43), Q(3, "mm"), Q(reference, "mm"), Q(30, "degree"))
    assert fit.working_angle.m_as("degree") == pytest.approx(22.796, abs=5e-4)
    assert fit.shift_sum == pytest.approx(0, abs=1e-9)


def test_road_speed_of_a_known_axle():
    """Source: Rule of thumb (from memory): km/h = 0.377 x radius [m] x rpm / overall ratio."""
    train = simple(20, 40, rolling_mm=300.0)
    speed = geartrain.road_speed(train, "g", Q(3000, "rpm")).m_as("km/hour")
    assert speed == pytest.approx(0.377 * 0.300 * 3000 / 6, rel=1e-3)
