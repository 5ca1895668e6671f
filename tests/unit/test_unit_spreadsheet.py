"""Parts, operations and reasons as a spreadsheet: two ways without loss, findings by cell."""

import csv
import datetime
import re
import zipfile

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
from twoshaft_grader.records.unit_files import take_sheets
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
        ("parts", 2, "single use", "perhaps", "parts.csv, row 2, column E", "neither yes nor no"),
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


# files as somebody in a hurry, or somebody who means harm, makes them


def refused(place, into):
    """The first sentence about a spreadsheet; nothing was written."""
    with pytest.raises(UnitFileError) as told:
        take_sheets(place, into)
    assert into.read_text() == SMALL
    assert not into.with_name(f"{into.name}.before").exists()
    return (told.value.findings or (told.value,))[0]


def cell(sheet, ref, value):
    def change(book):
        book[sheet][ref] = value

    return change


def called(sheet, title):
    return lambda book: setattr(book[sheet], "title", title)


def rows_below(book):
    for number in range(100_000):
        book["parts"].append([f"p{number}", "One more"])


@pytest.mark.parametrize(
    ("change", "place", "said"),
    [
        (called("parts", "part list"), "work.xlsx", "did you mean 'parts'?"),
        (called("parts", "Prats"), "work.xlsx", "did you mean 'parts'?"),
        (lambda book: book.create_sheet("PARTS "), "work.xlsx", "two tables are called 'parts'"),
        (cell("operations", "I2", "=1+2"), "operations, row 2, column I", "a formula stands there"),
        (cell("parts", "B2", '=HYPERLINK("x")'), "parts, row 2, column B", "a formula"),
        (cell("operations", "I2", "#REF!"), "operations, row 2, column I", "went wrong there"),
        (
            cell("operations", "I2", datetime.datetime(2026, 4, 3)),
            "operations, row 2, column I",
            "made a date or time of it",
        ),
        (cell("parts", "A2", datetime.date(2026, 4, 3)), "parts, row 2, column A", "made a date"),
        (cell("operations", "J3", datetime.time(2, 30)), "operations, row 3, column J", "or time"),
        (
            lambda book: book["operations"].merge_cells("D2:D3"),
            "operations, row 2, column D",
            "the cells D2 to D3 are merged into one",
        ),
        (cell("parts", "C1", "name"), "parts, row 1, column C", "a second time"),
        (cell("parts", "C1", "plane"), "parts, row 1, column C", "did you mean 'plain'?"),
        (cell("parts", "J2", "beside"), "parts, row 2, column J", "no heading above it"),
        (cell("parts", "XFD2", "beside"), "parts, row 2, column XFD", "64 columns"),
        (cell("parts", "A900000", "below"), "parts, row 900000, column A", "more than 5000 rows"),
        (lambda book: book["parts"].delete_cols(1), "parts, row 1", "no column is headed 'id'"),
        (cell("parts", "A2", None), "parts, row 2", "'id' is missing"),
        (cell("parts", "B2", "<b>Seal</b>"), "parts, row 2, column B", "markup"),
        (cell("parts", "B2", "Seal \u202egnir"), "parts, row 2, column B", "U+202E"),
        (cell("parts", "A2", "se\u200bal"), "parts, row 2, column A", "U+200B"),
        (cell("operations", "I2", "nan"), "operations, row 2, column I", "not a number"),
        (cell("operations", "I2", "1e999"), "operations, row 2, column I", "not a number"),
        (cell("operations", "I2", -3), "operations, row 2, column I", "above 0"),
        pytest.param(rows_below, "parts, row 5001", "5000 rows", marks=pytest.mark.slow),
    ],
)
def test_a_hostile_workbook_gets_one_sentence_with_its_cell(small, tmp_path, change, place, said):
    path = tmp_path / "work.xlsx"
    write_sheets(path, load_unit(small))
    book = load_workbook(path)
    change(book)
    book.save(path)
    sentence = refused(path, small).sentence
    assert place in sentence.partition(":")[0] and said in sentence, sentence
    assert ";" in sentence


@pytest.mark.parametrize(
    ("content", "place", "said"),
    [
        (b"id,name\nseal,Seal, the big one\nshaft,Shaft\n", ", row 2, column C", "double quotes"),
        ("id,name\nseal,D\u00fcse\n".encode("latin-1"), ", row 2", "CSV UTF-8"),
        ("id,name\nseal,Seal\n".encode("utf-16"), ", row 1", "CSV UTF-8"),
        (b"id,name\nseal,a\0b\nshaft,Shaft\n", ", row 2, column B", "U+0000"),
        (b'id,name\nseal,"a\nshaft,Shaft\n', ", row 3", "cannot be read"),
        (b"id,name\n" + b"a,b\n" * 100_000, ", row 5001, column B", "5000 rows"),
    ],
)
def test_a_hostile_table_gets_one_sentence_with_its_row(small, tmp_path, content, place, said):
    write_sheets(tmp_path / "work", load_unit(small))
    (tmp_path / "work" / "parts.csv").write_bytes(content)
    sentence = refused(tmp_path / "work", small).sentence
    assert sentence.startswith(f"parts.csv{place}:") and said in sentence, sentence


def test_one_table_of_a_folder_is_not_taken_for_a_workbook(small, tmp_path):
    write_sheets(tmp_path / "work", load_unit(small))
    assert "name the folder" in refused(tmp_path / "work" / "parts.csv", small).sentence
    (tmp_path / "work" / "parts.csv").rename(tmp_path / "work" / "Part list.csv")
    assert "did you mean 'parts'?" in refused(tmp_path / "work", small).sentence


@pytest.mark.parametrize(
    ("old", "new", "said"),
    [
        (rb'<dimension ref="[^"]*"', b'<dimension ref="A1"', None),
        (
            b"</sheetData>",
            b'</sheetData><mergeCells count="1"><mergeCell ref="A2:XFD1048576"/></mergeCells>',
            "A2 to XFD1048576 are merged",
        ),
    ],
)
def test_what_a_workbook_says_of_its_size_is_not_believed(small, tmp_path, old, new, said):
    write_sheets(tmp_path / "work.xlsx", load_unit(small))
    path = tmp_path / "lies.xlsx"
    with zipfile.ZipFile(tmp_path / "work.xlsx") as source, zipfile.ZipFile(path, "w") as lies:
        for name in source.namelist():
            whole = source.read(name)
            lies.writestr(name, re.sub(old, new, whole) if "sheet1" in name else whole)
    if said:
        assert said in refused(path, small).sentence
    else:
        assert take_sheets(path, small)[1] == "parts 2, operations 2, reasons 1"


@pytest.mark.parametrize("line", ["id\tname\tsingle use\n", "sep=;\nid;name;single use\n"])
def test_marks_between_columns_and_capitals_are_taken_as_they_come(small, tmp_path, line):
    between = "\t" if "\t" in line else ";"
    write_sheets(tmp_path / "work", load_unit(small))
    (tmp_path / "work" / "parts.csv").unlink()
    (tmp_path / "work" / "Parts.CSV").write_text(
        f"{line}seal{between}Seal, 35x52{between}yes\nshaft{between}Shaft\n"
    )
    take_sheets(tmp_path / "work", small)
    assert [part.name for part in load_unit(small).parts] == ["Seal, 35x52", "Shaft"]


def test_what_a_table_has_no_column_for_stays_and_a_cell_that_is_emptied_goes(small, tmp_path):
    text = SMALL.replace("parts: seal, minutes", "parts: seal, caution: Eyes., minutes")
    small.write_text(text)
    folder = tmp_path / "work"
    write_sheets(folder, load_unit(small))
    (folder / "parts.csv").write_text("id,name\nseal,A seal\nshaft,Shaft\n")
    (folder / "reasons.csv").write_text("id,step,must come after\n")
    told = take_sheets(folder, small)[1]
    assert told == "parts 2, operations 2; reasons stay as they were"
    unit = load_unit(small)
    assert unit.part_by_id["seal"].single_use and len(unit.rules) == 1
    assert unit.operation_by_id["fit-seal"].caution == "Eyes."
    changed(folder, "operations", 2, "caution", "")
    take_sheets(folder, small)
    assert load_unit(small).operation_by_id["fit-seal"].caution is None


def test_a_value_that_a_formula_left_is_taken(small, tmp_path):
    from xlsxwriter import Workbook as Written

    path = tmp_path / "work.xlsx"
    book = Written(path)
    page, notes = book.add_worksheet("Parts"), book.add_worksheet("Notes")
    page.write_row(0, 0, ["id", "name"])
    page.write_row(1, 0, ["seal", ""])
    page.write_formula(1, 1, '="A "&"seal"', None, "A seal")
    page.write_row(2, 0, ["shaft", "Shaft"])
    notes.write(0, 0, "for us")
    book.close()
    told = take_sheets(path, small)[1]
    assert told == "parts 2; operations and reasons stay as they were; not read: Notes"
    assert load_unit(small).part_by_id["seal"].name == "A seal"


def test_who_has_very_many_findings_is_told_the_first(small, tmp_path, capsys):
    folder = tmp_path / "work"
    folder.mkdir()
    lines = "".join(f"Part {number},One\n" for number in range(100))
    (folder / "parts.csv").write_text(f"id,name\n{lines}")
    assert main(["unit", "take", str(folder), "--into", str(small)]) == 2
    told = capsys.readouterr().err.splitlines()
    assert len(told) == 61 and told[0].startswith("parts.csv, row 2, column A:")
    assert re.fullmatch(r"And \d+ more; correct these first\.", told[-1])
