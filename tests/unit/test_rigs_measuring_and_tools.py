"""Micrometer, depth gauge, dial and wrench: what they show follows the models."""

import pytest

from twoshaft.errors import CourseError, OutOfRangeError
from twoshaft.models import gauges, joint
from twoshaft.models.bench_tools import EDGE_MM, EYE_ASIDE_MM, EYE_MM
from twoshaft.rigs import depth_gauge, micrometer, run_out_rig, wrench_bench
from twoshaft.rigs.micrometer import SPRINGS_MM
from twoshaft.units.quantities import Q


def set_to(rig, **change):
    rig.hear({"type": "set", "state": {**rig.shown["state"], **change}, "turn": "t"})
    return rig.shown


def test_the_micrometer_stops_on_what_is_between(unit):
    rig = micrometer(12.78, zero_mm=0.03)
    assert rig.shown["mm"] == 25 and "open" in rig.finding
    assert set_to(rig, open=-1)["mm"] == pytest.approx(12.81)
    assert set_to(rig, open=14.2)["mm"] == 14.2
    assert set_to(rig, open=-1, between="nothing")["mm"] == pytest.approx(0.03)
    assert set_to(rig, hand="force")["mm"] == pytest.approx(0.03 - SPRINGS_MM)
    assert "2 lines too far" in rig.finding


def test_a_zero_below_nothing_shows_a_line_near_fifty():
    rig = micrometer(8.0, zero_mm=-0.02)
    shown = set_to(rig, between="nothing", open=-1)
    assert shown["line"] == 48
    assert shown["words"] == "No line of the sleeve is open. Thimble on line 48."


def test_in_marked_work_no_value_is_said_and_no_force_is_used():
    rig = micrometer(12.78, zero_mm=0.03, readings_only=True)
    shown = set_to(rig, open=-1, hand="force")
    assert shown["mm"] == pytest.approx(12.81)
    assert "12.8" not in shown["words"] + shown["finding"] + rig.plain_copy()
    gauge = depth_gauge(23.35, zero_mm=0.1, readings_only=True)
    shown = set_to(gauge, rod=60)
    assert "23.4" not in shown["words"] + shown["finding"] and "0.15" not in shown["finding"]
    dial = run_out_rig(0.08, readings_only=True)
    assert "tilt" not in dial.finding and "lets go" not in dial.finding


def test_the_eye_moves_the_vernier_as_parallax_says():
    rig = depth_gauge(23.35, zero_mm=0.1)
    square = set_to(rig, rod=60, eye="square")["mm"]
    assert square == pytest.approx(23.45)
    assert "line 23 " in rig.shown["words"] and "line 9 of 20" in rig.shown["words"]
    for eye, sign in (("left", 1), ("right", -1)):
        moved = gauges.parallax(Q(EDGE_MM, "mm"), Q(EYE_ASIDE_MM[eye], "mm"), Q(EYE_MM, "mm")).m
        assert set_to(rig, eye=eye)["mm"] - square == pytest.approx(moved)
        assert moved * sign > 0
    assert set_to(rig, place="plate", eye="square", rod=0)["mm"] == pytest.approx(0.1)


def total(rig, **state):
    read = [set_to(rig, angle=angle, **state)["mm"] for angle in range(0, 365, 5)]
    return max(read) - min(read)


def test_the_dial_gives_the_total_only_when_set_up():
    rig = run_out_rig(0.08, high_at_deg=40)
    assert total(rig, pressed="1.00", tilt="0") == pytest.approx(0.16, abs=0.001)
    assert total(rig, pressed="1.00", tilt="30") == pytest.approx(0.16 / 0.866, abs=0.001)
    assert total(rig, pressed="0.02", tilt="0") < 0.06
    assert "Press it in" in rig.finding


def test_the_wrench_follows_the_lever_rule(unit):
    rig = wrench_bench(unit, "middle-wrench", wanted_nm=40)
    for angle in (0, 60, 90, 150):
        set_to(rig, setting=40, reach=60, angle=angle)
        lever = (Q(390, "mm"), Q(60, "mm"), Q(angle, "degree"))
        gets = joint.torque_at_bolt(Q(40, "N*m"), *lever).m_as("N*m")
        assert f"gets {gets:.1f} N·m" in rig.finding
    assert "Set to 40.0" in rig.plain_copy()


def test_what_cannot_be_is_refused_in_words(unit):
    for bad in (lambda: micrometer(30), lambda: depth_gauge(90), lambda: run_out_rig(2),
                lambda: wrench_bench(unit, "middle-wrench", wanted_nm=300)):  # fmt: skip
        with pytest.raises(OutOfRangeError):
            bad()
    with pytest.raises(CourseError, match="middle-wrench"):
        wrench_bench(unit, "none", wanted_nm=40)
    with pytest.raises(CourseError, match="ratchet"):
        set_to_raises(micrometer(10.0), hand="teeth")


def set_to_raises(rig, **change):
    rig.show({**rig.shown["state"], **change})
