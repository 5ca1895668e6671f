"""A movement of the hand as an answer: read, stored, shown."""

import pytest

from twoshaft.errors import AnswerError
from twoshaft.jobsheet import HandPath
from twoshaft.jobsheet.form import describe

MOVES = [["at:a", "Slide to a"], ["turn:high", "Turn up"], ["neutral", "Back"]]


@pytest.fixture
def field():
    return HandPath("way", "Which moves?", MOVES, {"gates": [0]}, most=4)


def test_moves_may_come_again(field):
    stored = field.store(("at:a", "turn:high", "at:a"))
    assert stored == ["at:a", "turn:high", "at:a"]
    assert field.read(stored) == ("at:a", "turn:high", "at:a")
    assert field.words(stored) == "1. Slide to a; 2. Turn up; 3. Slide to a"
    assert field.shortfall(stored) == ""


@pytest.mark.parametrize("blank", [None, [], ""])
def test_blank_is_blank(field, blank):
    assert field.shortfall(blank) == "not answered yet"
    assert field.words(blank) == ""


@pytest.mark.parametrize(
    ("stored", "says"),
    [
        (["at:b"], "no move here"),
        (["at:a"] * 5, "4 are the most"),
        ("at:a", "not a list"),
        ([1], "not a list"),
        ([None, {}], "not a list"),
    ],
)
def test_what_is_no_movement_is_told(field, stored, says):
    with pytest.raises(AnswerError, match=says):
        field.read(stored)


def test_the_form_gets_moves_and_gate_and_nothing_of_an_answer(field):
    told = describe(field)
    assert told["kind"] == "path" and told["most"] == 4
    assert told["moves"] == MOVES and told["plan"] == {"gates": [0]}
    assert set(told) == {"kind", "name", "prompt", "moves", "plan", "most"}
