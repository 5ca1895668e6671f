"""Marks stay what they were, to the last digit, whatever is rebuilt underneath."""

import importlib.util
from pathlib import Path

import pytest

_spec = importlib.util.spec_from_file_location(
    "golden_sheets", Path(__file__).parent / "golden/sheets.py"
)
sheets = importlib.util.module_from_spec(_spec)
_spec.loader.exec_module(sheets)

EVERY_DAY = 8
"""Learners of each module in the everyday run; ``golden/sheets.py`` makes all of them."""
KEPT = sheets.kept()


@pytest.mark.slow
@pytest.mark.parametrize(
    "key", list(sheets.keys(EVERY_DAY)), ids=lambda key: f"{key.module}-{key.unit}-{key.learner}"
)
def test_marks_are_what_they_were(key):
    assert sheets.line(key) == KEPT[key.module, key.unit, key.learner]
