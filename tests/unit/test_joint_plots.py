"""Pictures of joints and fits: the title states the finding, the words say it too."""

import pytest

from twoshaft.models import fit, joint
from twoshaft.plots.fit import force_when_cold, play_when_warm
from twoshaft.plots.joint import clamp_by_round, clamp_by_state
from twoshaft.units.quantities import Q


def title(picture):
    return " ".join(picture.figure.axes[0].get_title(loc="left").replace("\u00a0", " ").split())


def words(picture):
    return picture.alt.replace("\u00a0", " ")


def gate_cover(unit, rounds, film=None):
    bolts = joint.Fastening.of(unit, "gate-cover-bolts")
    one = joint.Round.of(joint.crosswise(6), bolts.bounds().typical, film)
    return joint.tighten(bolts.face(), [one] * rounds)


def test_rounds_that_reach_the_limit_say_which(unit):
    picture = clamp_by_round(gate_cover(unit, 3), 0.15, "Gate cover")
    assert "round 2 brings it within the 15% allowed" in title(picture)
    assert words(picture).startswith(title(picture)) and "kN" in words(picture)
    assert picture.figure.axes[0].get_ylabel() == "clamp [kN]"
    assert picture.png()[:4] == b"\x89PNG"


def test_rounds_that_do_not_reach_it_say_so(unit):
    assert "beyond the 15% allowed" in title(clamp_by_round(gate_cover(unit, 1), 0.15))
    assert "still by" in title(clamp_by_round(gate_cover(unit, 2), 0.01))


def test_film_that_runs_out_is_told(unit):
    picture = clamp_by_round(gate_cover(unit, 8, Q(300, "um")), 0.15)
    assert "as the film runs out bolts lose up to" in title(picture)


def test_states_are_judged_in_words(unit):
    picture = clamp_by_state(joint.Fastening.of(unit, "rear-plate-bolts"))
    texts = [text.get_text() for text in picture.figure.axes[0].texts]
    assert "can be loose" in texts and "near yield" in texts and "good" in texts
    assert any("(the torque is for this)" in text for text in texts)
    assert "Oiled:" in words(picture)


def test_heat_says_where_the_ring_drops_in(unit):
    pressed = fit.Pressed.of(unit, "diff-front-ring")
    picture = play_when_warm(pressed)
    assert f"{pressed.warming().heat_to_c:.0f} °C, it may be warmed to 120 °C" in title(picture)
    assert words(picture).startswith(title(picture))
    with pytest.raises(ValueError, match="cold"):
        play_when_warm(fit.Pressed.of(unit, "diff-bearings"))


def test_force_says_its_range(unit):
    pressed = fit.Pressed.of(unit, "diff-bearings")
    low, high = (force.m_as("kN") for force in pressed.force_range())
    picture = force_when_cold(pressed)
    assert f"{low:.1f} to {high:.1f} kN" in title(picture)
    assert "press gives 60 kN" in words(picture)
