import re

import pytest

from twoshaft.models.geartrain import count_turns, freedom, ratio
from twoshaft.plots.drawing import LETTER_PX, note_room
from twoshaft.plots.gear_section import KEY, gear_layout, train_figure
from twoshaft.plots.geartrain import count_by_gear, ratio_bars
from twoshaft.units import load_unit

AVERAGED = "both outputs, averaged"


@pytest.fixture(scope="module")
def train():
    return load_unit("tarnbeck-b5").gear_train


def test_bars_are_the_ratios_and_reverse_is_told_apart(train):
    picture = ratio_bars(train)
    axes = picture.figure.axes[0]
    widths = [bar.get_width() for bar in axes.patches]
    assert widths == pytest.approx([abs(float(ratio(train, gear.id))) for gear in train.gears])
    hatched = [bool(bar.get_hatch()) for bar in axes.patches]
    assert hatched == [gear.reverse for gear in train.gears]
    assert "the other way" in picture.alt
    for gear in train.gears:
        assert gear.name in picture.alt


def test_counts_are_drawn_with_half_a_least_count_each_side(train):
    picture = count_by_gear(train, 2, AVERAGED)
    axes = picture.figure.axes[0]
    for bar, gear in zip(axes.patches, train.gears, strict=True):
        seen = abs(count_turns(train, gear.id, 2, AVERAGED).seen)
        assert bar.get_x() + bar.get_width() / 2 == pytest.approx(seen)
        assert bar.get_width() == pytest.approx(train.least_count_turns)
    assert "Fourth gear" in picture.alt
    assert "tells them apart" in picture.alt
    assert picture.png()[:4] == b"\x89PNG"


def test_a_coarse_count_can_mix_gears_up(train):
    coarse = train.model_copy(update={"least_count_turns": 0.5})
    assert "can mix them up" in count_by_gear(coarse, 1, AVERAGED).alt


@pytest.mark.parametrize("name", ["tarnbeck-c4", "tarnbeck-k6"])
def test_what_the_marks_mean_stands_whole_below_a_narrow_train_too(name):
    train = load_unit(name).gear_train
    at = gear_layout(train)
    drawn = train_figure(train, (), (), freedom(train), "In neutral")
    (told,) = re.findall(r'<text class="tsf-t" y="\d+">(<tspan x="8".+?)</text>', drawn)
    lines = re.findall(r"<tspan[^>]+>([^<]+)</tspan>", told)
    assert " ".join(lines) == KEY
    # also where the picture is shown small, and its letters are half as large again
    assert all(8 + 1.5 * LETTER_PX * len(line) < at.width for line in lines)
    low = max(wheel.y + wheel.radius for wheel in at.wheels.values())
    assert low + 8 < at.height - note_room(lines)


def test_a_state_stands_below_the_name_of_its_shaft_and_both_end_within_the_picture(train):
    locked = train_figure(train, ("first", "third"), (), freedom(train, ("first", "third")), "Two")
    found = re.findall(r'text-anchor="end" y="\d+">((?:<tspan.+?)+)</text>', locked)
    said = [re.findall(r'<tspan x="(\d+)" dy="[-\d.]+em">([^<]+)', one) for one in found]
    assert [words for _, words in said[0]] == ["Input shaft,", "locked"]
    # in bold letters as large as a train of 540 pixels has them
    assert all(1.43 * 8 * len(words) < int(x) for one in said for x, words in one)
