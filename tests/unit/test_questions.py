"""Questions out of their text files, and the sentences that go with their options."""

import pytest

from twoshaft.errors import CourseError
from twoshaft.questions import bank_of
from twoshaft.questions.bank import read_bank
from twoshaft.readings import MODULES
from twoshaft_grader.marking import reasons, settled

TEXT = """
[todo]
leave = "Leave it"
renew = "Fit a new one"

[lock.how]
story = "How?"
options.gears = "Two gears"
options.bar = "A bar"

[lock.before]
story = "What first?"
options.clear = "Hands out"
options.bar = "A bar"
options.wedge = "A wedge"
"""
BANK = read_bank(TEXT, "it")
LOCK = BANK.questions["lock"]
RIGHT = {"how": "gears", "before": "clear"}
WHY = {"bar": "It flies out.", "wedge": "It chips teeth."}


@pytest.mark.parametrize("module", MODULES)
def test_every_bank_reads_as_text(module):
    texts = [option.text for _, option in bank_of(module).every_option()]
    assert texts and all(text == text.strip() and len(text) > 3 for text in texts)


def test_order_of_the_file_is_the_order_of_the_bank():
    assert [option.id for option in BANK.lists["todo"]] == ["leave", "renew"]
    assert list(LOCK) == ["how", "before"] and LOCK["how"].story == "How?"
    assert [name for name, _ in BANK.every_option()] == ["todo"] * 2 + ["lock.how"] * 2 + [
        "lock.before"
    ] * 3


@pytest.mark.parametrize(
    ("text", "said"),
    [
        ('[todo]\nleave = "x', "it.toml: it cannot be read"),
        ('[lock.how]\nstory = "How?"', "“how” is not a story with options"),
        ('[lock.how]\nstory = "How?"\noptions.a = 3', "“how” is not a story with options"),
        ('[lock.how]\nstory = "How?"\nmore = "x"\noptions.a = "A"', "“how” is not"),
        ("[todo]", "[todo]: it holds nothing"),
        ("todo = 3", "[todo]: it holds nothing"),
    ],
)
def test_a_file_that_cannot_be_used_says_where(text, said):
    with pytest.raises(CourseError) as error:
        read_bank(text, "it")
    assert said in error.value.sentence


def told(slips):
    return {slip.value: slip.sentence for slip in slips if slip.share == 0 and not slip.safe}


def test_every_wrong_option_has_its_reason_and_only_what_is_shown_a_slip():
    options = BANK.lists["todo"]
    assert told(reasons(options, "renew", {"leave": "It walks off."})) == {"leave": "It walks off."}
    both = {("leave", "renew"): "Look at the tab."}
    assert told(reasons(options, {"leave"}, both)) == {"renew": "Look at the tab."}
    assert reasons(options, "renew", both, shown=options[1:]) == []


@pytest.mark.parametrize(
    ("right", "why", "said"),
    [
        ("renew", {}, "nothing says why these options are wrong: leave"),
        ("renew", {"leve": "x"}, "given a reason and are none of the options: leve"),
        (
            "renw",
            {"leave": "x", "renew": "y"},
            "said to be right and are none of the options: renw",
        ),
        ("renew", {"leave": "x", ("leave",): "y"}, "'leave' has two reasons"),
    ],
)
def test_a_typo_does_not_pass(right, why, said):
    with pytest.raises(CourseError) as error:
        reasons(BANK.lists["todo"], right, why)
    assert said in error.value.sentence


def test_versions_are_all_checked_whichever_is_asked():
    right, slips = settled(LOCK, LOCK["how"], RIGHT, WHY)
    assert (right, told(slips)) == ("gears", {"bar": "It flies out."})
    assert told(settled(LOCK, LOCK["before"], RIGHT, WHY)[1]) == WHY
    for wrong_right, wrong_why in (
        ({"how": "gears"}, WHY),
        (RIGHT | {"after": "x"}, WHY),
        (RIGHT | {"before": "cler"}, WHY),
        (RIGHT, {"bar": "It flies out."}),
        (RIGHT, WHY | {"bra": "x"}),
    ):
        with pytest.raises(CourseError):
            settled(LOCK, LOCK["how"], wrong_right, wrong_why)
