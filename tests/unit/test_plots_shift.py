import numpy as np
import pytest

from twoshaft.models.shift import mechanism, prove_by_hand, with_misbuilds
from twoshaft.plots.shift import detent_curve, gate_map
from twoshaft.units import load_unit


@pytest.fixture(scope="module")
def shift():
    return load_unit("tarnbeck-b5").shift


def words_on(picture):
    axes = picture.figure.axes[0]
    legend = axes.get_legend()
    said = [text.get_text() for text in axes.texts]
    said += [text.get_text() for text in legend.get_texts()] if legend else []
    return " ".join([axes.get_title(loc="left"), *said])


def test_the_map_names_gears_way_and_stop(shift):
    machine = mechanism(shift, 1.0)
    picture = gate_map(machine, "second")
    words = words_on(picture)
    for gear in prove_by_hand(machine).ways_mm:
        assert gear in words
    assert "stopped at the cross" in words
    axes = picture.figure.axes[0]
    assert "[mm]" in axes.get_xlabel()
    assert "[mm]" in axes.get_ylabel()
    assert "shortest way to second" in picture.alt
    assert "From fifth, without leaving the gate" in picture.alt


def test_the_way_drawn_is_the_shortest_of_the_proof(shift):
    machine = mechanism(shift, 1.0)
    axes = gate_map(machine, "third").figure.axes[0]
    drawn = [np.column_stack(line.get_data()) for line in axes.lines]
    way = prove_by_hand(machine).ways_mm["third"]
    assert any(line.shape == way.shape and np.allclose(line, way) for line in drawn)


def test_a_lockout_that_fails_is_said_and_drawn(shift):
    picture = gate_map(mechanism(with_misbuilds(shift, ["lockout-spring-reversed"]), 1.0))
    assert "is not stopped" in picture.alt
    assert "must not go" in words_on(picture)
    assert "stopped at the cross" not in words_on(picture)


def test_many_findings_make_a_short_title(shift):
    picture = gate_map(mechanism(with_misbuilds(shift, ["interlock-pins-missing"]), 1.0))
    assert "And 10 more." in picture.alt
    assert len(picture.figure.axes[0].get_title(loc="left")) < 200


def test_the_detent_curve_rises_to_its_crest(shift):
    detent = shift.detents[0]
    picture = detent_curve(detent)
    axes = picture.figure.axes[0]
    x, y = axes.lines[0].get_data()
    assert (np.diff(y) > 0).all()
    ramp, rho = np.radians(detent.ramp_deg), np.arctan(detent.friction)
    assert x[-1] == pytest.approx(detent.notch_depth_mm / np.tan(ramp))
    crest = detent.spring_force_n + detent.spring_rate_n_per_mm * detent.notch_depth_mm
    assert y[-1] == pytest.approx(crest * np.tan(ramp + rho))
    assert f"{y[-1]:.0f} N" in picture.alt
    assert picture.png()[:4] == b"\x89PNG"
