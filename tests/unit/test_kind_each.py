"""One answer for each line of a list: read, told, judged."""

import random

import pytest
from hypothesis import given
from hypothesis import strategies as st

from twoshaft.errors import AnswerError, CourseError
from twoshaft.jobsheet.kinds import Each
from twoshaft_grader.marking import Slip, line_reasons
from twoshaft_grader.marking.kinds import Reference, judge, judge_of
from twoshaft_grader.marking.kinds.each import earns_nothing_at, wrong_chances

LINES = [("drain", "Drain plug"), ("cover", "Cover bolt"), ("stud", "Stud <b>"), ("nut", "Nut")]
OPTIONS = [("dry", "dry"), ("oil", "oiled"), ("lock", "with compound")]
ASKED = Each("threads", "How does each thread go in?", LINES, OPTIONS)
RIGHT = {"drain": "dry", "cover": "oil", "stud": "lock", "nut": frozenset({"oil", "dry"})}
SLIPS = line_reasons(
    LINES, OPTIONS, RIGHT,
    {"drain": "Its washer seals; oil changes its clamp.", "cover": {"dry": "It gallops."}},
    {"lock": "It has to come out again.", "oil": "Oil runs out.", "dry": "It seizes."},
)  # fmt: skip
REFERENCE = Reference("threads", RIGHT, "o", 1.0, None, True, tuple(SLIPS), "")


def stored(**changes):
    answers = {"drain": "dry", "cover": "oil", "stud": "lock", "nut": "oil", **changes}
    return [f"{line}={option}" for line, option in answers.items() if option]


def judged(**changes):
    return judge(ASKED, REFERENCE, ASKED.read(stored(**changes)))


def test_it_is_read_in_the_order_of_the_lines_and_stored_again():
    answers = ASKED.read(["nut=oil", "drain=dry"])
    assert list(answers) == ["drain", "nut"]
    assert ASKED.store(answers) == ["drain=dry", "nut=oil"] and ASKED.store({}) == []
    assert ASKED.shortfall(["nut=oil"]) == "3 of 4 lines not answered yet"
    assert ASKED.shortfall(stored()) == "" and ASKED.shortfall([]) == "not answered yet"


@pytest.mark.parametrize("bad", [
    "drain=dry", {"drain": "dry"}, [1], ["drain"], ["drain=smoke"], ["roof=dry"], 7,
    ["drain=dry", "drain=oil"], ["drain=dry"] * 5, [["drain", "dry"]],
])  # fmt: skip
def test_what_is_no_answer_is_one_sentence(bad):
    with pytest.raises(AnswerError, match="read"):
        ASKED.read(bad)
    assert ASKED.words(bad).startswith("cannot be read")


def test_words_and_paper():
    assert ASKED.words(["drain=dry", "nut=oil"]) == "Drain plug: dry; Nut: oiled"
    assert ASKED.paper(["stud=lock"]) == "<ul><li>Stud &lt;b&gt;: <b>with compound</b></li></ul>"
    assert ASKED.paper([]) == ""


def test_all_right_is_full_and_a_line_may_have_two_right_answers():
    assert judged().share == 1 and judged(nut="dry").share == 1
    solved = judge_of(ASKED).solve(ASKED, RIGHT)
    assert judge(ASKED, REFERENCE, ASKED.read(solved)).share == 1


def test_a_wrong_or_open_line_fails_and_is_told_why():
    one = judged(cover="dry")
    count = "3 of the 4 lines are right. Guessing gets you as far, so points begin when all 4 are right."
    assert not one.safe and one.sentences == (count, "Cover bolt: It gallops.")
    assert not judged(nut="").safe and judged(nut="").sentences == (count,)
    two = judged(cover="lock", drain="oil")
    assert two.sentences[1] == "Drain plug: Its washer seals; oil changes its clamp."
    assert two.details == ("Cover bolt: It has to come out again.",)


def test_a_careful_wrong_answer_costs_marks_and_is_safe():
    slips = [*SLIPS, Slip(("cover", "dry"), 0, "Only more work.", safe=True)]
    careful = Reference("threads", RIGHT, "o", 1.0, None, True, tuple(slips), "")
    value = ASKED.read(stored(cover="dry"))
    assert judge(ASKED, careful, value).safe and judge(ASKED, careful, value).share < 1
    both = ASKED.read(stored(cover="dry", drain="oil"))
    assert not judge(ASKED, careful, both).safe


@given(st.lists(st.integers(2, 6), min_size=1, max_size=8))
def test_luck_earns_little_and_the_chances_are_whole(offered):
    hits = tuple(1 / n for n in offered)
    assert sum(wrong_chances(hits)) == pytest.approx(1)
    lines = [(f"l{n}", "x") for n in range(len(offered))]
    asked = Each("f", "?", lines, [(f"o{n}", "y") for n in range(6)])
    reference = Reference("f", {line: "o0" for line, _ in lines}, "o", 1.0, None, False, (), "")
    spread = judge_of(asked).spread(asked, reference)
    mean = sum(share * chance for share, chance in spread)
    assert mean <= 0.05 or earns_nothing_at((1 / 6,) * len(lines)) == 1
    source = random.Random(1)
    for _ in range(5):
        asked.read(judge_of(asked).guess(asked, reference, source))


def test_every_wrong_answer_needs_its_sentence():
    assert list(judge_of(ASKED).unexplained(ASKED, REFERENCE)) == []
    bare = Reference("threads", RIGHT, "o", 1.0, None, True, tuple(SLIPS[1:]), "")
    (said,) = judge_of(ASKED).unexplained(ASKED, bare)
    assert "why these answers of threads are wrong: cover=" in said
    for broken in (
        lambda: line_reasons(LINES, OPTIONS, {**RIGHT, "roof": "dry"}, {}, {}),
        lambda: line_reasons(LINES, OPTIONS, {"drain": "dry"}, {}, {}),
        lambda: line_reasons(LINES, OPTIONS, RIGHT, {"drain": {"smoke": "?"}}, {}),
        lambda: line_reasons(LINES, OPTIONS, RIGHT, {}, {"oil": "?"}),
    ):
        with pytest.raises(CourseError):
            broken()


def test_a_reference_names_every_line_and_only_what_is_offered():
    accepts = judge_of(ASKED).accepts
    assert accepts(ASKED, RIGHT)
    assert not accepts(ASKED, {**RIGHT, "nut": "smoke"})
    assert not accepts(ASKED, {"drain": "dry"}) and not accepts(ASKED, "dry")
