"""Short texts for tables and records."""

import pytest

from twoshaft.errors import CohortError
from twoshaft_grader.cohort.one_line import one_line


def test_words_stand_one_space_apart():
    assert one_line("the room", "  Workshop \n 2\t(left)  ") == "Workshop 2 (left)"
    assert one_line("the room", "") == ""


@pytest.mark.parametrize(
    ("text", "says"),
    [("x" * 81, "the room is 81 letters long"), ("Bench\x1b[2J", "cannot be printed")],
)
def test_what_is_too_long_or_would_steer_a_terminal_is_refused(text, says):
    with pytest.raises(CohortError, match=says):
        one_line("the room", text)
    assert one_line("the room", "x" * 80) == "x" * 80
