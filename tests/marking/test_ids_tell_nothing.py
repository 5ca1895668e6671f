"""Ids are never shown, and still a learner can read them: in the job sheet beside the notebook, in
the page, in the kit. So no id of a line may say which answer is right, by its own words or by the
company it keeps.
"""

import re
from collections import defaultdict

import pytest

from twoshaft.modules import COURSE
from twoshaft.questions import bank_of

LEARNERS = 12
ALIKE = (
    3  # so many lines with a word in common, and no other line with it, are named by their answer
)
VERDICTS = {"good", "bad", "fine", "safe", "sound"}


def words(id):
    return set(re.split(r"[^a-z]+", id.lower())) - {""}


def told_by_ids(lines):
    """What the ids of a question's lines (line to right answer) give away, as sentences."""
    found = [
        f"{line} tells {right}"
        for line, right in lines.items()
        if words(line) & (words(right) | VERDICTS)
    ]
    groups = defaultdict(list)
    for line, right in lines.items():
        groups[right].append(words(line))
    marks = {
        right: {
            word
            for word in set.intersection(*some)
            if sum(word in words(i) for i in lines) == len(some)
        }
        for right, some in groups.items()
        if len(some) >= ALIKE
    }
    named = {right: sorted(word) for right, word in marks.items() if word}
    # One group may have a thing in common; two that are told apart by a word are a code.
    return found + ([f"{named} is a code"] if len(named) > 1 else [])


@pytest.mark.parametrize("number, name", enumerate(COURSE), ids=list(COURSE))
def test_no_id_of_a_line_says_what_is_right(number, name, course_module):
    module = course_module(f"{number:02}-{name}")
    ours = {id for options in bank_of(name).lists.values() for id, _ in options}
    keys = defaultdict(dict)
    for who in range(LEARNERS):
        for field, answer in module.right(f"id-{who}").items():
            if isinstance(answer, list):
                pairs = [one.partition("=") for one in answer if isinstance(one, str)]
                # Steps and letters are named by the unit or drawn for a learner, not by us.
                keys[field] |= {line: right for line, _, right in pairs if line in ours}
    assert any(keys.values()) or name in ("order-of-work",)
    found = {field: told for field, lines in keys.items() if (told := told_by_ids(lines))}
    assert not found


def test_the_search_finds_what_it_looks_for():
    safe = {"go-look": "go", "plug": "eyes", "good-glove": "clear"}
    assert told_by_ids(safe) == ["go-look tells go", "good-glove tells clear"]
    code = {f"some-{a}": "figure" for a in "abc"} | {f"no-{a}": "who" for a in "abc"}
    assert told_by_ids(code) == ["{'figure': ['some'], 'who': ['no']} is a code"]
    assert not told_by_ids({"oil-a": "figure", "oil-b": "trust", "oil-c": "who", "drip": "keep"})
