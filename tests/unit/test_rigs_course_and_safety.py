"""The workshop picture and the lifting rig, from the kernel's side."""

import xml.etree.ElementTree as ET

import pytest

from twoshaft.errors import OutOfRangeError
from twoshaft.models import lifting
from twoshaft.readings.course_and_safety.scene import hazards_seen, scene_of
from twoshaft.rigs import hazard_picture, lifting_rig, reading_table
from twoshaft.safety import load_safety


@pytest.fixture
def safety():
    return load_safety()


@pytest.fixture
def scene(safety):
    return scene_of(safety, {"press": "press-open", "oil": "oil-on-floor"})


def send(rig, **message):
    rig._heard(rig, message, None)


def troubles(rig):
    told = []
    rig.send = lambda content, buffers=None: told.append(content)
    return told


def test_a_place_is_seen_first_and_explained_only_when_judged(safety, scene):
    rig = hazard_picture(scene)
    send(rig, type="choose", place="press")
    assert rig.view["seen"] == safety.hazard_by_id["press-open"].seen
    assert rig.view["told"] == {}
    send(rig, type="judge", place="press", verdict="well")
    assert rig.view["told"]["verdict"] == "Stop here."
    assert rig.view["told"]["Do this"] == safety.hazard_by_id["press-open"].act
    assert "Let through: Press" in rig.view["finding"]
    send(rig, type="judge", place="press", verdict="stop")
    send(rig, type="judge", place="vice", verdict="well")
    assert rig.view["finding"] == "2 of 12 places judged, 2 of them correctly."
    assert rig.view["told"] == {
        "verdict": "Fine as it is.",
        "Why": safety.place_by_id["vice"].because,
    }


def test_in_marked_work_nothing_is_judged_or_explained(safety, scene):
    rig = hazard_picture(scene, looking_only=True)
    before = dict(rig.views)
    for place in scene:
        send(rig, type="judge", place=place, verdict="stop")
        send(rig, type="next")
    assert rig.view["told"] == {} and rig.view["judged"] == {} and rig.views == before
    everything = f"{rig.plan} {rig.view} {rig.plain_copy()} {rig.get_state()}"
    for hazard in safety.hazard_by_id.values():
        assert hazard.act not in everything and hazard.what not in everything
        assert hazard.id not in everything


def test_another_day_is_another_scene(safety):
    rig = hazard_picture()
    first = dict(rig.views)
    send(rig, type="judge", place="press", verdict="stop")
    send(rig, type="next")
    assert rig.views != first and rig.judged == {}
    assert len(hazards_seen(safety, rig.views)) == 6
    assert rig.plan["drawing"] != ""


def test_an_unknown_place_is_told_on_the_screen(scene):
    rig = hazard_picture(scene)
    told = troubles(rig)
    send(rig, type="choose", place="roof")
    assert told == [
        {"type": "trouble", "reason": "there is no such place in the picture; choose another."}
    ]


def test_the_plain_copy_says_what_can_be_seen(safety, scene):
    copy = hazard_picture(scene).plain_copy()
    assert "1 Press" in copy and "not to scale" in copy


SIZES = {"mass_kg": 16, "reach_cm": 50, "height_cm": 25, "travel_cm": 60, "twist_deg": 30}


def test_the_lifting_rig_says_what_the_model_says():
    rig = lifting_rig(**SIZES)
    limit = lifting.Lift.measured(SIZES).limit().m_as("kg")
    assert f"Limit {limit:.1f} kg" in rig.view["finding"]
    assert f"index {16 / limit:.2f}" in rig.view["finding"]
    send(rig, type="set", name="reach_cm", value=25)
    send(rig, type="set", name="grip", value="good")
    assert rig.limit_kg == pytest.approx(
        lifting.Lift.measured({**SIZES, "reach_cm": 25, "grip": "good"}).limit().m_as("kg")
    )


def test_every_lift_can_be_drawn_and_its_words_follow_the_index():
    words = {"low": "with care", "raised": "Use the hoist", "high": "Leave it"}
    seen = set()
    for reach in (25, 44, 63):
        for height in (0, 40, 140):
            for mass in (2, 40):
                rig = lifting_rig(
                    mass_kg=mass, reach_cm=reach, height_cm=height, travel_cm=0, twist_deg=0
                )
                ET.fromstring(rig.drawing())
                # At 25 cm the limit is from 16.9 to 19.6 kg, farther out at most 11.1 kg: by hand.
                risk = "low" if mass == 2 else "raised" if reach == 25 else "high"
                assert lifting.risk(rig.index) == risk
                assert [one for one in words if words[one] in rig.view["finding"]] == [risk]
                seen.add(risk)
    assert seen == set(words)


def test_a_size_out_of_range_is_told_and_changes_nothing():
    rig = lifting_rig(**SIZES)
    told = troubles(rig)
    send(rig, type="set", name="reach_cm", value=80)
    assert "Reach, ankles to hands is 80; set it from 25 to 63" in told[0]["reason"]
    assert rig.sizes["reach_cm"] == 50
    with pytest.raises(OutOfRangeError, match="reach"):
        lifting_rig(**{**SIZES, "reach_cm": 70})


def test_the_table_of_figures_is_what_the_reader_says():
    table = reading_table("t", [("18,5 kN", "kN"), ("1,234 mm", "mm")])
    assert table.rows[0] == ("18,5 kN", "read", "18.5 kN")
    assert table.rows[1][1] == "which one?" and "1.234 or 1234" in table.rows[1][2]


def test_names_of_places_leave_each_other_alone_where_words_are_shown_larger(safety, scene):
    drawing = ET.fromstring(hazard_picture(scene).plan["drawing"])
    places = drawing.findall(".//*[@data-place]")
    for number, place in enumerate(places, 1):
        words = [one.text for one in place.iter() if one.tag.endswith("text")]
        name = f"{number}  {safety.place_by_id[place.get('data-place')].name}"
        lines = words[-1:] if words[-1] == name else words[-2:]
        assert " ".join(lines) == name
        # A letter is 0.6 of its size wide; the size is grown by half, and a place 160 wide.
        assert all(0.6 * 12 * 1.5 * len(line) <= 160 for line in lines)
    assert len(places) == len(safety.places)
