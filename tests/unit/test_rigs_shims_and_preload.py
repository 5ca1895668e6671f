"""The shim bench and the cord bench: what they say follows the models."""

import pytest

from twoshaft.errors import CourseError
from twoshaft.models.bearing import cord_pull, dial_readings, try_shim, turned
from twoshaft.models.bearing.pair import Pair
from twoshaft.models.bench_tools import SPRING_SCALES_N, scale_for
from twoshaft.models.shim import Stack
from twoshaft.plots.bearing_section import bearing_section, beside
from twoshaft.rigs import cord_bench, shim_bench
from twoshaft.rigs.pointers import dial_words, scale_words
from twoshaft.units.quantities import Q
from twoshaft.units.sections.bearings import Arrangement, ShimPlace


def set_to(rig, **change):
    rig.hear({"type": "set", "state": {**rig.shown["state"], **change}, "turn": "t"})
    return rig.shown


def test_the_dial_shows_the_float_once_the_rollers_are_home(unit):
    rig = shim_bench(unit, "differential", trial=(0.88,))
    early = [set_to(rig, side=s, plunger="1.00")["dial"] for s in ("away", "towards")]
    home = [set_to(rig, side=s, turns=30)["dial"] for s in ("away", "towards")]
    true = -Stack.from_support(rig.support).interference(Q(0.88, "mm")).m_as("mm")
    assert home[1] - home[0] == pytest.approx(true, abs=0.004)
    assert early[1] - early[0] < true - 0.05


def test_a_plunger_that_leaves_the_shaft_reads_short(unit):
    rig = shim_bench(unit, "differential", trial=(0.88,))
    short = [set_to(rig, turns=30, plunger="0.02", side=s)["dial"] for s in ("away", "towards")]
    assert short[0] == 0 and "leaves the shaft" in rig.finding
    assert short[1] - short[0] < 0.15
    away, towards = dial_readings(Q(0.2, "mm"), Q(0.5, "mm"))
    assert (away.m_as("mm"), towards.m_as("mm")) == pytest.approx((0.4, 0.6))


def test_with_preload_the_pointer_says_nothing(unit):
    rig = shim_bench(unit, "differential", trial=(1.15,))
    set_to(rig, turns=30, plunger="1.00")
    assert "the cord can" in rig.finding


def test_another_shim_or_heat_moves_the_setting_as_the_models_say(unit):
    rig = shim_bench(unit, "output-shaft", trial=(0.4, 0.3))
    cold = set_to(rig, turns=30)["cold"]
    warm = set_to(rig, warmth=100)["warm"]
    assert "loosens" in rig.shown["words"][1]
    assert set_to(rig, shims=["0.400", "0.280"])["cold"] == pytest.approx(cold - 0.02)
    assert warm < cold - 0.05
    assert "mm of preload" in rig.plain_copy()


def test_in_marked_work_the_bench_gives_readings_only(unit):
    rig = shim_bench(unit, "differential", trial=(0.88,), readings_only=True)
    shown = set_to(rig, shims=["1.150"], warmth=100, turns=10)
    assert shown["state"]["shims"] == ["0.880"] and shown["state"]["warmth"] == 0
    assert not {"cold", "warm", "words"} & set(shown)
    assert "0.2" not in shown["dialWords"]
    cord = cord_bench(unit, "differential", setting_mm=0.07, kinds=("seal",), readings_only=True)
    shown = set_to(cord, setting=0.02, kinds=[], turns=20)
    assert shown["state"]["setting"] == 0.07 and shown["state"]["kinds"] == ["seal"]
    assert shown["words"] == []


def test_the_cord_feels_what_turns(unit):
    rig = cord_bench(unit, "differential", setting_mm=0.08)
    alone = set_to(rig, turns=60)["pull"]
    support, bearings = rig.support, unit.bearings
    preload = Pair.from_support(support, bearings).preload(Q(0.08, "mm"))
    wanted = cord_pull(turned(support, bearings, preload), Q(40, "mm")).force.m_as("N")
    assert alone == pytest.approx(wanted, rel=1e-4)
    assert set_to(rig, kinds=["seal"])["pull"] == pytest.approx(alone + 1.4 / 0.04, rel=1e-3)
    assert set_to(rig, radius=80)["pull"] == pytest.approx((alone + 35) / 2, rel=1e-3)
    assert set_to(rig, turns=0, kinds=[])["pull"] == 0 and "not home" in rig.finding
    assert "Spring scale" in rig.plain_copy()


def test_end_play_gives_no_torque(unit):
    rig = cord_bench(unit, "practice-hub", setting_mm=-0.03)
    assert set_to(rig, turns=20)["pull"] == 0 and "end play" in rig.shown["words"][0]


def test_a_bad_state_is_refused_in_words(unit):
    rig = shim_bench(unit, "differential")
    with pytest.raises(CourseError, match="what the shelf allows"):
        rig.show({**rig.shown["state"], "shims": ["0.880", "0.910"]})
    for bench in (shim_bench, cord_bench):
        with pytest.raises(CourseError, match="differential"):
            bench(unit, "gearbox")


def test_pointers_are_described_by_marks():
    assert dial_words(0.0) == "Small pointer on 0. Long pointer on 0."
    assert "1st mark after it" in dial_words(0.505)
    assert "next figure" in dial_words(0.095)
    assert scale_words(100, 2, 10) == "Pointer on 100."
    assert scale_for(1.0, SPRING_SCALES_N) == SPRING_SCALES_N[0]
    assert scale_for(9999.0, SPRING_SCALES_N) == SPRING_SCALES_N[-1]


def test_balls_are_always_home(unit):
    support = unit.bearings.support_by_id("practice-hub")
    fresh = try_shim(support, unit.bearings, Q(4.0, "mm"), off_rib=Q(0.3, "mm"))
    assert fresh.shown == fresh.setting and fresh.torque_share == 1


@pytest.mark.parametrize("arrangement", list(Arrangement))
@pytest.mark.parametrize("place", list(ShimPlace))
def test_every_arrangement_can_be_drawn(unit, arrangement, place):
    support = unit.bearings.supports[0]
    if (arrangement, place) == (Arrangement.INNER_TOGETHER, ShimPlace.UNDER_COVER):
        with pytest.raises(CourseError, match="no cover"):
            bearing_section(support, unit.bearings, shim_mm=3, arrangement=arrangement, place=place)
        return
    section = bearing_section(
        support, unit.bearings, shim_mm=3, arrangement=arrangement, place=place, to_scale=False
    )
    assert 'class="tsb-shim"' in section.svg
    assert "not to scale" in section.svg
    assert section.words in beside([("A", section)])._repr_html_()


def test_the_section_is_to_scale(unit):
    support = unit.bearings.supports[0]
    thin, thick = (bearing_section(support, unit.bearings, shim_mm=t) for t in (1.0, 1.5))
    assert thin.scale_px == pytest.approx(thick.scale_px, rel=0.01)
    assert 3 < thin.scale_px < 6
