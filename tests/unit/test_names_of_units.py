"""Another unit is another file: no name of a shipped unit stands outside its file, the demo cohort
and the tests."""

import re
import subprocess
from pathlib import Path

import pytest

from twoshaft.units import load_unit, shipped_units

ROOT = Path(__file__).resolve().parents[2]
ALLOWED = ("course/twoshaft/units/files/", "tests/")
EXCEPTIONS = {
    "course/twoshaft/__init__.py": "the unit on the bench where nobody names another",
    "course/unit-file.md": "made from the schema, its examples from the shipped files",
    "grader/twoshaft_grader/cohort/folder.py": "the demo cohort: its readings hang on this word",
    "grader/twoshaft_grader/desk/demo.py": "the demo cohort",
    "grader/twoshaft_grader/desk/demo_people.py": "the demo cohort: its college",
}
ORDINARY = {"College", "Gearbox", "The"}


def proper_names():
    """Ids of the shipped units, and the words that name maker, model and college."""
    found = set()
    for id in shipped_units():
        identity = load_unit(id).identity
        found.add(id)
        words = f"{identity.name} {identity.college}".split()
        found |= {word.strip(",.()") for word in words if word[0].isupper()} - ORDINARY
    return {name for name in found if len(name) > 2 or name.isalpha()}


@pytest.fixture(scope="module")
def lines():
    """Every line of a text file of the repository, outside what may name a unit."""
    names = subprocess.run(
        ["git", "ls-files", "-z"], cwd=ROOT, capture_output=True, text=True, check=True
    ).stdout.split("\0")
    found = []
    for name in filter(None, names):
        if name.startswith(ALLOWED) or not (ROOT / name).is_file():
            continue
        try:
            text = (ROOT / name).read_text(encoding="utf-8")
        except UnicodeDecodeError:
            continue
        found += [(name, number, line) for number, line in enumerate(text.splitlines(), 1)]
    return found


def found_in(lines):
    looked_for = re.compile(
        "|".join(rf"(?<![a-z0-9]){re.escape(name.lower())}(?![a-z0-9])" for name in proper_names())
    )
    return [(name, number) for name, number, line in lines if looked_for.search(line.lower())]


def test_there_are_names_to_look_for(lines):
    assert {"tarnbeck-b5", "Tarnbeck"} <= proper_names()
    assert len(lines) > 50_000
    assert found_in([("a", 1, "The Tarnbeck's case"), ("a", 2, "no name")]) == [("a", 1)]


def test_no_name_of_a_shipped_unit_stands_elsewhere(lines):
    assert [place for place in found_in(lines) if place[0] not in EXCEPTIONS] == []


def test_every_exception_is_needed(lines):
    assert {name for name, _ in found_in(lines)} >= set(EXCEPTIONS)
