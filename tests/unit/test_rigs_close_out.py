"""Oils, breather, leak test and causes on the screen: what they show follows the models."""

import re
import xml.etree.ElementTree as ET

import pytest

from twoshaft.errors import CourseError
from twoshaft.models import closeout
from twoshaft.models.viscosity import walther
from twoshaft.rigs import breather_rig, leak_rig, oil_chart_rig, road_rig
from twoshaft.units import load_unit
from twoshaft.units.quantities import Q


@pytest.fixture(scope="module")
def unit():
    return load_unit("tarnbeck-b5")


def set_to(rig, **change):
    rig.hear({"type": "set", "state": {**rig.shown["state"], **change}, "turn": "t"})
    return rig.shown


def test_the_chart_tells_both_oils_at_the_temperature(unit):
    shown = set_to(oil_chart_rig(unit), at_40=140, at_100=16, at=60)
    own = walther.plain(*unit.strip.oil.viscosity_mm2_per_s, 60)
    assert f"(U) has {own:.0f} mm²/s" in shown["finding"]
    assert f"(O) {walther.plain(140, 16, 60):.0f} mm²/s" in shown["finding"]
    assert shown["finding"].endswith("of grade SAE 90.")
    assert ET.fromstring(shown["drawing"]).get("aria-label") == shown["words"]


def test_figures_that_no_oil_has_are_refused_in_a_sentence(unit):
    with pytest.raises(CourseError, match="no oil keeps so much"):
        set_to(oil_chart_rig(unit), at_40=20, at_100=20)


@pytest.mark.parametrize(
    ("now", "said"),
    [
        (30, "the seals hold"),
        (100, "presses oil out past a lip"),
        (-10, "draws in what is outside"),
    ],
)
def test_a_blocked_breather_builds_pressure_and_an_open_one_none(unit, now, said):
    rig = breather_rig(unit)
    assert "0 mbar: the seals hold" in set_to(rig, now=now, breather="open")["finding"]
    shown = set_to(rig, breather="blocked")
    grows = unit.strip.oil.capacity_litre * unit.strip.oil.expansion_per_k * (now - 20)
    over = closeout.pressure_in(
        Q(1013.25, "mbar"), Q(20, "degC"), Q(now, "degC"),
        Q(unit.close_out.breather.air_litre, "l"), Q(grows, "l"),
    ).m  # fmt: skip
    assert said in shown["finding"] and f"by {over:.0f} mbar" in shown["finding"]
    ET.fromstring(shown["drawing"])


@pytest.mark.parametrize("leak, proven", [(0, "tight"), (8, "neither"), (15, "leaking")])
@pytest.mark.parametrize("warmer", [-1.5, 0, 1.5])
def test_with_the_temperature_the_true_leak_comes_out(unit, leak, proven, warmer):
    found = set_to(leak_rig(unit), leak=leak, warmer=warmer)["finding"]
    raw, rate = map(float, re.findall(r"(-?[\d.]+) mL/min", found)[:2])
    assert rate == pytest.approx(leak, abs=0.05) and f"proven {proven}." in found
    assert (raw > rate + 1) == (warmer < 0) and (raw < rate - 1) == (warmer > 0)


def test_a_longer_test_has_a_narrower_guard_band(unit):
    bands = [
        float(re.search(r"guard band is ([\d.]+)", set_to(leak_rig(unit), minutes=m)["finding"])[1])
        for m in (2, 5, 20)
    ]
    assert bands[0] > bands[1] > bands[2]


def test_causes_go_out_as_tests_are_answered():
    rig = road_rig("shift")
    assert rig.finding.startswith("5 causes are left")
    assert "2 causes" in set_to(rig, quick="yes", **{"every-gear": "yes"})["finding"]
    shown = set_to(rig, **{"cold-only": "no"})
    assert shown["finding"] == "One cause is left: The oil, not made for rings. Look there first."
    assert shown["drawing"].count("ruled out") == 4
    assert "No single cause" in set_to(rig, still="yes", reverse="yes")["finding"]
    with pytest.raises(CourseError):
        set_to(rig, quick="perhaps")
    with pytest.raises(CourseError, match="'smell'"):
        road_rig("smell")


def test_rigs_have_a_copy_for_paper(unit):
    for rig in (oil_chart_rig(unit), breather_rig(unit), leak_rig(unit), road_rig("oil")):
        assert rig.shown["drawing"] in rig.plain_copy() and rig.name in rig.plain_copy()
