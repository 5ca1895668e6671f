"""A unit file that is sound and lacks something: a sentence with task and section, whatever lacks."""

import re

import pytest

from twoshaft.errors import CourseError
from twoshaft.readings import issue_record

ERRORS = re.compile(
    r"\b[A-Z][A-Za-z]*(Error|Iteration)\b|index out of range|NoneType|arg is an empty"
)


@pytest.mark.parametrize(
    ("section", "entry", "left", "module", "says"),
    [
        ("gear_train", "gears", (), "gear-train-and-checks", "the task 'count'"),
        ("bearings", "types", (), "shims-and-preload", "'shims-and-preload' is made of"),
        ("fits", "metals", (), "pressed-and-driven", "section 'fits': nothing there is called"),
        ("shift", "rails", (), "whole-build", "the task 'late'"),
        ("shift", "gates", (), "reading-faults", "the task 'stop'"),
        ("shift", "turn_mm", (), "shift-and-lockout", "in its section 'shift'"),
        ("fasteners", "states", (), "threaded-joints", "in its section 'fasteners'"),
    ],
)
def test_what_is_lacking_is_told_in_a_sentence(unit, section, entry, left, module, says):
    whole = getattr(unit, section)
    bare = unit.with_sections(**{section: whole.model_copy(update={entry: left})})
    with pytest.raises(CourseError) as caught:
        issue_record(module, bare, salt="salt", learner="ann", attempt=1)
    message = str(caught.value)
    assert says in message
    assert message.endswith(".") and "; " in message
    assert not ERRORS.search(message)
    assert caught.value.__cause__ is not None  # --trace shows where
