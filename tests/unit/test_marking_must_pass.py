"""What passes a must-pass item of several choices, and what a slip can claim."""

import pytest

from twoshaft.jobsheet import Choice, Choices
from twoshaft_grader.marking.kinds import Reference, Slip, judge

ALL = ["a", "b", "c", "d"]
OPTIONS = [[key, f"Option {key}"] for key in ALL]
CAREFUL = Slip("c", 0.0, "Not needed, but no harm.", safe=True)
HARMFUL = Slip("d", 0.0, "This does harm.")


def judged(ticked, slips=(), right=("a", "b")):
    what = Reference("f", set(right), "o", 1.0, None, True, tuple(slips), "")
    return judge(Choices("f", "Which?", OPTIONS), what, tuple(ticked))


@pytest.mark.parametrize(
    ("ticked", "slips", "safe"),
    [
        ("ab", (), True),
        ("abcd", (), False),  # ticking everything shows nothing
        ("abc", (), False),
        ("abc", (CAREFUL, HARMFUL), True),
        ("abd", (CAREFUL, HARMFUL), False),  # a listed slip is safe only where it says so
        ("abcd", (CAREFUL, HARMFUL), False),
        ("ac", (CAREFUL, HARMFUL), False),  # careful, but something needed is left out
    ],
)
def test_more_than_is_needed_passes_only_where_it_is_listed_as_safe(ticked, slips, safe):
    assert judged(ticked, slips).safe is safe


@pytest.mark.parametrize("safe", [True, False])
def test_a_listed_slip_passes_only_where_it_says_that_it_is_safe(safe):
    slip = Slip("b", 0.25, "Nearly.", safe=safe)
    what = Reference("f", "a", "o", 1.0, None, True, (slip,), "")
    found = judge(Choice("f", "Which?", OPTIONS), what, "b")
    assert (found.share, found.slip, found.safe) == (0.25, "listed", safe)
    other = judge(Choice("f", "Which?", OPTIONS), what, "c")
    assert (other.share, other.slip, other.safe) == (0.0, "", False)


@pytest.mark.parametrize("safe", [True, False])
def test_ticks_that_are_listed_together_are_as_safe_as_they_say(safe):
    slip = Slip({"a", "d"}, 0.5, "Half of it.", safe=safe)
    found = judged("ad", [slip])
    assert (found.share, found.slip, found.safe) == (0.5, "listed", safe)
