import re

import pytest

from twoshaft.models.geartrain import count_turns, freedom, ratio
from twoshaft.plots.gear_section import KEY, LETTER_PX, gear_layout, train_figure
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
    texts = re.findall(r'<text class="tsf-t" x="8" y="(\d+)">([^<]+)</text>', drawn)
    assert " ".join(line for _, line in reversed(texts)) == KEY
    assert all(8 + LETTER_PX * len(line) < at.width for _, line in texts)
    low = max(wheel.y + wheel.radius for wheel in at.wheels.values())
    assert all(low + 8 < int(y) < at.height for y, _ in texts)
