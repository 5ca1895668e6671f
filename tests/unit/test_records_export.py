"""The export as a spreadsheet and a records system read it."""

import csv
import io
from dataclasses import replace

import pytest

from twoshaft_grader.records.export import COLUMNS, csv_text
from twoshaft_grader.records.rows import Row


@pytest.fixture
def row():
    return Row(
        **dict.fromkeys(COLUMNS, "")
        | {"learner": "t01", "attempt": 1, "mark": 2.25, "maximum": 3.0, "late_minutes": 0}
    )


def read_back(rows):
    return list(csv.DictReader(io.StringIO(csv_text(rows))))


@pytest.mark.parametrize(
    ("mark", "text"),
    [(0.0, "0"), (-0.0, "0"), (3.0, "3"), (10.0, "10"), (0.125, "0.125"), (2 / 3, "0.667")],
)
def test_numbers_are_plain(row, mark, text):
    assert read_back([replace(row, mark=mark)])[0]["mark"] == text


@pytest.mark.parametrize(
    "name", ["=1+1", "+44", "-x", "@SUM(A1)", "\t=1", " =1", '=HYPERLINK("x")']
)
def test_no_cell_is_a_formula(row, name):
    cell = read_back([replace(row, family_name=name)])[0]["family_name"]
    assert cell.startswith("'") and cell[1:] == " ".join(name.split())


@pytest.mark.parametrize("name", ["O'Neil, Jr", 'the "old" one', "Müller", "Nguyễn", "李"])
def test_names_come_through(row, name):
    assert read_back([replace(row, given_name=name)])[0]["given_name"] == name


def test_a_line_break_in_a_note_breaks_no_line(row):
    assert len(csv_text([replace(row, note="one\ntwo\r\nthree")]).splitlines()) == 2


def test_heading_stands_even_for_nobody():
    assert csv_text([]) == ",".join(COLUMNS) + "\n"
