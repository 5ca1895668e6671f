"""What passes a must-pass item of several choices, and what a slip can claim."""

import pytest

from twoshaft.jobsheet import Choice, Choices
from twoshaft_grader.marking.kinds import Reference, Slip, judge, judge_of

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


def test_a_tick_too_many_and_one_left_out_each_have_their_reason():
    why = (HARMFUL, Slip("a", 0.0, "It leaks without."), Slip("b", 0.0, "It binds without."))
    both = judged("bd", why)
    assert both.sentences == (
        "You ticked 1 of the 2 that belong here and 1 that does not.",
        HARMFUL.sentence, "It leaks without.",
    )  # fmt: skip
    assert judged("a", why).sentences[1:] == ("It binds without.",)
    assert judged("ab", why).sentences == ()


def test_the_build_asks_why_an_option_belongs_that_can_be_left_out():
    asked = Choices("f", "Which?", OPTIONS)
    reasons = [HARMFUL, CAREFUL, Slip("a", 0.0, "It leaks without.")]
    what = Reference("f", {"a", "b"}, "o", 1.0, None, True, tuple(reasons), "")
    (finding,) = judge_of(asked).unexplained(asked, what)
    assert finding == "nothing says why these options of f belong: b."


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
