"""Parts, operations and reasons as a spreadsheet: two ways without loss, findings by cell."""

import csv

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st
from openpyxl import Workbook, load_workbook

from twoshaft.errors import UnitFileError
from twoshaft.units import load_unit
from twoshaft.units.loader import SHIPPED
from twoshaft.units.source import parse_nodes
from twoshaft.units.unit import Unit
from twoshaft_grader.desk.commands import main
from twoshaft_grader.records.unit_spreadsheet import SHEETS, read_sheets, taken_in, write_sheets

SMALL = """\
# a comment that stays
identity: {id: little, name: Little unit, version: "1", invented: true, college: Brook College,
  scenario: A few steps for a test., gears: 5}
parts:
  - {id: seal, name: Seal, single use: true}
  - {id: shaft, name: Shaft}
stages:
  - {id: build, name: The build}
operations:
  - {id: fit-seal, name: Fit the seal, stage: build, parts: seal, minutes to do: 3, minutes to undo: 2}  # typical, change me
  - {id: fit-shaft, name: Fit the shaft, stage: build, parts: shaft, minutes to do: 4, minutes to undo: 2}
# rules and why
rules:
  - {id: seal-first, kind: buries, earlier: fit-seal, later: fit-shaft, reason: The shaft covers it.}
"""


@pytest.fixture
def small(tmp_path):
    path = tmp_path / "little.yaml"
    path.write_text(SMALL)
    return path


def held(unit):
    """What a spreadsheet holds of a unit."""
    return {
        sheet.name: [
            {
                key: value
                for key, value in entry.model_dump(mode="json", by_alias=True).items()
                if key in sheet.columns.values()
            }
            for entry in getattr(unit, sheet.section)
        ]
        for sheet in SHEETS
    }


@pytest.mark.slow
@pytest.mark.parametrize("name", ["work.xlsx", "work"])
def test_a_shipped_unit_goes_out_and_comes_back_the_same(tmp_path, name):
    path = tmp_path / "unit.yaml"
    path.write_text((SHIPPED / "tarnbeck-b5.yaml").read_text())
    unit = load_unit("tarnbeck-b5")
    write_sheets(tmp_path / name, unit)
    path.write_text(taken_in(path, read_sheets(tmp_path / name)))
    again = load_unit(path)
    for section in Unit.model_fields:
        assert getattr(again, section) == getattr(unit, section)


words = st.text(
    st.characters(
        codec="utf-8",
        exclude_categories=("C", "Z"),
        include_characters=" ",
        exclude_characters="<",  # markup is refused
    ),
    min_size=3, max_size=30,
).map(str.strip).filter(lambda text: len(text) >= 3)  # fmt: skip
ids = st.from_regex(r"[a-z0-9]{1,6}(-[a-z0-9]{1,6}){0,2}", fullmatch=True)
minutes = st.one_of(st.integers(1, 240), st.floats(0.1, 240).map(lambda n: round(n, 3)))


@pytest.mark.slow
@settings(
    deadline=None, max_examples=30, suppress_health_check=[HealthCheck.function_scoped_fixture]
)
@given(st.data(), st.sampled_from(["work.xlsx", "work"]))
def test_two_ways_without_loss(tmp_path, data, name):
    """Any text that a unit may hold, whatever a spreadsheet would make of it."""
    seal, shaft = data.draw(st.lists(ids, min_size=2, max_size=2, unique=True))
    unit = Unit.model_validate(
        parse_nodes(SMALL, "little.yaml").plain()
        | {
            "parts": [
                {"id": seal, "name": data.draw(words), "plain": data.draw(words)},
                {"id": shaft, "name": data.draw(words), "single use": data.draw(st.booleans())},
            ],
            "operations": [
                {
                    "id": one, "name": data.draw(words), "stage": "build", "parts": [part],
                    "minutes to do": data.draw(minutes), "minutes to undo": data.draw(minutes),
                    "caution": data.draw(words),
                }
                for one, part in (("fit-a", seal), ("fit-b", shaft))
            ],
            "rules": [
                {
                    "id": data.draw(ids), "kind": "harms", "earlier": "fit-a", "later": "fit-b",
                    "reason": data.draw(words), "loses": [seal], "safety": data.draw(st.booleans()),
                }
            ],
        }
    )  # fmt: skip
    path = tmp_path / "little.yaml"
    path.write_text(SMALL)
    write_sheets(tmp_path / name, unit)
    path.write_text(taken_in(path, read_sheets(tmp_path / name)), encoding="utf-8")
    assert held(load_unit(path)) == held(unit)


def test_comments_and_marks_of_figures_that_stayed_are_kept(small, tmp_path):
    write_sheets(tmp_path / "work", load_unit(small))
    path = tmp_path / "work" / "operations.csv"
    path.write_text(path.read_text().replace(",3,2,", ",5,2,"))
    text = taken_in(small, read_sheets(tmp_path / "work"))
    assert text.startswith("# a comment that stays") and "# rules and why" in text
    small.write_text(text)
    (left,) = load_unit(small).typical()
    assert (left.entry, left.keys) == ("fit-seal", ("minutes to undo",))


def changed(folder, sheet, row, column, value):
    path = folder / f"{sheet}.csv"
    with path.open(newline="") as file:
        rows = list(csv.reader(file))
    rows[row - 1][rows[0].index(column)] = value
    with path.open("w", newline="") as file:
        csv.writer(file).writerows(rows)


@pytest.mark.parametrize(
    ("sheet", "row", "column", "value", "place", "said"),
    [
        ("operations", 2, "minutes to do", "soon", "operations.csv, row 2, column I", "not a number"),
        ("operations", 3, "parts", "shaff", "operations.csv, row 3, column F", "mean 'shaft'"),
        ("operations", 2, "stage", "biuld", "operations.csv, row 2, column D", "mean 'build'"),
        ("reasons", 2, "kind", "hides", "reasons.csv, row 2, column F", "buries"),
        ("reasons", 2, "step", "fit-seal", "reasons.csv, row 2", "before itself"),
        ("reasons", 2, "why", "", "reasons.csv, row 2", "'reason' is missing"),
        ("parts", 2, "single use", "perhaps", "parts.csv, row 2, column E", "true or false"),
        ("parts", 3, "id", "seal", "parts.csv, row 3", "2 times"),
    ],
)  # fmt: skip
def test_each_finding_names_row_and_column(small, tmp_path, sheet, row, column, value, place, said):
    write_sheets(tmp_path / "work", load_unit(small))
    changed(tmp_path / "work", sheet, row, column, value)
    with pytest.raises(UnitFileError) as told:
        taken_in(small, read_sheets(tmp_path / "work"))
    sentences = [one.sentence for one in told.value.findings]
    assert any(line.startswith(place) and said in line for line in sentences), sentences
    assert small.read_text() == SMALL


def test_what_a_colleague_types_is_understood(small, tmp_path):
    """Semicolons between columns, decimal commas, no ids of reasons, the headings in words."""
    folder = tmp_path / "work"
    folder.mkdir()
    (folder / "operations.csv").write_text(
        "id;name;stage;parts;minutes to do;minutes to undo\n"
        "fit-seal;Fit the seal;build;seal;2,5;1\nfit-shaft;Fit the shaft;build;shaft;4;2\n"
    )
    (folder / "reasons.csv").write_text(
        "step;must come after;kind;why;safety\nfit-shaft;fit-seal;buries;It is covered.;x\n"
    )
    small.write_text(taken_in(small, read_sheets(folder)))
    unit = load_unit(small)
    assert unit.operation_by_id["fit-seal"].minutes_do == 2.5
    assert unit.rules[0].id == "fit-seal-then-fit-shaft" and unit.rules[0].safety


@pytest.mark.slow
def test_commands_write_a_template_and_take_it_in(small, tmp_path, capsys):
    book = tmp_path / "work.xlsx"
    assert main(["unit", "sheet", str(book), "--unit", str(small)]) == 0
    pages = load_workbook(book)
    assert pages.sheetnames == [sheet.name for sheet in SHEETS]
    pages["operations"]["I2"] = "never"
    pages.save(book)
    assert main(["unit", "take", str(book), "--into", str(small)]) == 2
    assert "work.xlsx, operations, row 2, column I" in capsys.readouterr().err
    pages["operations"]["I2"] = 7
    pages.save(book)
    assert main(["unit", "take", str(book), "--into", str(small)]) == 0
    assert load_unit(small).operation_by_id["fit-seal"].minutes_do == 7
    assert main(["unit", "sheet", str(tmp_path / "empty")]) == 0
    assert (tmp_path / "empty" / "reasons.csv").read_text().startswith("id,step,must come after")


def test_what_is_no_workbook_is_refused_in_a_sentence(tmp_path, small):
    for name, content in (("a.xlsx", b"no"), ("b.xlsx", b"PK\x03\x04rest")):
        (tmp_path / name).write_bytes(content)
        with pytest.raises(UnitFileError) as told:
            read_sheets(tmp_path / name)
        assert told.value.mend
    book = Workbook()
    book.save(tmp_path / "c.xlsx")
    with pytest.raises(UnitFileError, match="none of the tables"):
        read_sheets(tmp_path / "c.xlsx")
    with pytest.raises(UnitFileError):
        read_sheets(tmp_path / "not-there.xlsx")
