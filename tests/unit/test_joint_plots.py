"""Pictures of joints and fits: the title states the finding, the words say it too."""

import pytest

from twoshaft.models import fit, joint
from twoshaft.plots.fit import force_when_cold, play_when_warm
from twoshaft.plots.joint import clamp_by_state


def title(picture):
    return " ".join(picture.figure.axes[0].get_title(loc="left").replace("\u00a0", " ").split())


def words(picture):
    return picture.alt.replace("\u00a0", " ")


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
