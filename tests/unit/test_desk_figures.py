"""What is said of a statistic: its interval, or in plain words why there is none."""

import pytest

from twoshaft_grader.desk.figures import estimate, kappa_words, reliability_words
from twoshaft_grader.records.how_it_goes import HowItGoes
from twoshaft_grader.records.item_statistics import Estimate
from twoshaft_grader.records.two_marks import Kappa, counts, kappa


def found(marked, reliability=None):
    return HowItGoes("m-1", "M", {}, (), marked, (), reliability, (), (), ())


@pytest.mark.parametrize(
    ("marked", "says"),
    [
        (0, "cannot be said yet: none is marked, and it takes 4 at least"),
        (1, "cannot be said yet: 1 sheet is marked"),
        (3, "cannot be said yet: 3 sheets are marked, and it takes 4 at least"),
        (4, "cannot be said: all have the same total"),
    ],
)
def test_too_few_learners_are_told_in_a_sentence(marked, says):
    told = reliability_words(found(marked))
    assert says in told and told.endswith(".") and "nan" not in told


def test_a_reliability_is_told_with_its_interval():
    told = reliability_words(found(12, Estimate(0.713, 0.402, 0.899)))
    assert told == (
        "Reliability of the whole: 0.71; between 0.40 and 0.90 with 95 % confidence."
    )  # fmt: skip


def test_a_cell_says_why_it_has_no_figure():
    assert estimate(None, found(3)) == "too few marked"
    assert estimate(None, found(30)) == "all alike"
    assert estimate(Estimate(0.5, 0.25, 0.75), found(30)) == "0.50 (0.25 to 0.75)"


def test_an_agreement_of_few_tasks_is_called_rough():
    few = kappa(counts([0, 1, 1, 0], [0, 1, 0, 0], 2))
    assert few is not None
    assert kappa_words(few, 4).endswith("; rough, of 4 tasks only")
    assert "rough" not in kappa_words(Kappa(0.8, 0.6, 0.95), 40)
    same = kappa(counts([0, 1], [0, 1], 2))
    assert kappa_words(same, 2) == "1.00: all alike in 2 tasks, which gives no interval"
    assert kappa_words(None, 0) == "cannot be said: no task has two marks yet"
    assert kappa_words(None, 3) == "cannot be said: both put every task into the same band"
