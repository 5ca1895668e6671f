"""Item statistics and second marks where little is there to count."""

import pytest

from twoshaft_grader.records.item_statistics import reliability
from twoshaft_grader.records.two_marks import BANDS, band, counts, kappa


@pytest.mark.slow
@pytest.mark.parametrize(
    "scores", [[], [[1, 0]] * 3, [[1], [0], [1], [1]], [[1, 1]] * 6, [[1, 0], [0, 1]] * 3]
)
def test_nothing_is_said_where_nothing_can_be(scores):
    assert reliability(scores) is None


@pytest.mark.slow
def test_bands_of_points_are_counted():
    pairs = [((0, 4), (0, 4)), ((2, 4), (3, 4)), ((4, 4), (4, 4))]
    one, other = (
        [BANDS.index(band(*points)) for points in side] for side in zip(*pairs, strict=True)
    )
    assert counts(one, other, len(BANDS)).tolist() == [
        [1, 0, 0, 0], [0, 0, 1, 0], [0, 0, 0, 0], [0, 0, 0, 1],
    ]  # fmt: skip
    assert kappa(counts(one, other, 4), "linear").value == pytest.approx(10 / 13)
    assert kappa(counts([0, 0], [0, 0], 4)) is None
