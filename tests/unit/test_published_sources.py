"""Each check in tests/published says, beside itself, where its figures were published."""

import ast
import re
from pathlib import Path

import pytest

PUBLISHED = sorted(Path(__file__).parents[1].joinpath("published").glob("test_*.py"))
# What says how a figure was come by, and not where it stands.
NO_SOURCE = ("derived", "theory", "plain geometry", "algebra", "arithmetic", "common practice",
             "textbook", "as above", "see above", "the same", "recomputed")  # fmt: skip


def checks_in(text: str) -> list[tuple[str, str]]:
    """Name and own docstring of every test function, those in classes too."""
    functions = ast.FunctionDef, ast.AsyncFunctionDef
    return [
        (node.name, ast.get_docstring(node) or "")
        for node in ast.walk(ast.parse(text))
        if isinstance(node, functions) and node.name.startswith("test")
    ]


def names_a_source(docstring: str) -> bool:
    """Whether it begins with ``Source:`` and names one: three words or more, and a figure to find
    it by (page, year, edition, number, version), a page of the web, or that it is from memory."""
    found = re.match(r"Source: (.+?)(?:\n\n|$)", docstring, re.DOTALL)
    if not found or found[1].lower().startswith(NO_SOURCE):
        return False
    told = len(found[1].split()) >= 3
    return told and bool(re.search(r"\d|\bpages?\b|from memory", found[1]))


def test_every_published_check_names_its_source():
    checks = [(path.name, *one) for path in PUBLISHED for one in checks_in(path.read_text())]
    assert len(checks) > 100
    assert [f"{file}: {name}" for file, name, said in checks if not names_a_source(said)] == []


@pytest.mark.parametrize(
    "docstring",
    [
        "",
        "Shigley, 9th ed., p. 439: 3750 lbf·in.",
        "Source:",
        "Source: ",
        "Source: p. 4.",
        "Source: a good handbook.",
        "Source: derived from 2 equal springs.",
        "Source: common practice, 3 mm.",
        "What it shows.\n\nSource: Shigley, 9th ed., p. 439.",
    ],
)
def test_what_names_none_is_not_taken_for_one(docstring):
    assert not names_a_source(docstring)


def test_a_docstring_of_the_file_or_of_a_helper_is_none():
    text = '"""Source: ISO 281, table 4."""\ndef helper():\n    """Source: ISO 281, table 4."""\n'
    text += "def test_one():\n    # Source: ISO 281, table 4.\n    assert True\n"
    text += 'class TestTwo:\n    def test_two(self):\n        """Source: ISO 281, table 4."""\n'
    assert [names_a_source(said) for _, said in checks_in(text)] == [False, True]
