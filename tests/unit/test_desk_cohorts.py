"""The pages *Your unit* and *Cohorts*: from a unit file to a cohort of one's own, without a
command line."""

import base64

import openpyxl
import pytest

from twoshaft.units import load_unit, shipped_units
from twoshaft_grader.cohort.folder import make_cohort, open_cohort
from twoshaft_grader.cohort.trail import read_trail
from twoshaft_grader.desk_pages.screen import DeskScreen

pytestmark = pytest.mark.slow


@pytest.fixture
def desk(tmp_path, monkeypatch):
    """The desk of a cohort in a home of its own."""
    monkeypatch.setenv("HOME", str(tmp_path / "home"))
    screen = DeskScreen(make_cohort(tmp_path / "college" / "group", college="Brook College").root)
    screen.wait()
    return screen


def turn_to(desk, page):
    desk.hear({"type": "page", "name": page})
    desk.wait()


def choose(desk, field, name, data):
    coded = base64.b64encode(data).decode()
    piece = {"type": "file", "field": field, "name": name, "data": coded}
    desk.hear(piece | {"first": True, "last": True})


def do(desk, act, of="", **typed):
    typed = {name.replace("_", "-"): value for name, value in typed.items()}
    desk.hear({"type": "do", "act": act, "of": of, "typed": typed, "ticked": {}})
    desk.wait()
    return desk.said or desk.trouble


def table(desk, id):
    for part in desk.parts:
        if part.get("id") == id:
            cells = [row["cells"] for row in part["rows"]]
            return [[c["text"] if isinstance(c, dict) else c for c in row] for row in cells]
    return None


def links(desk):
    return [(part["path"], part["how"]) for part in desk.parts if part["kind"] == "link"]


def test_the_desk_opens_on_the_group(desk):
    assert desk.page == "group"
    assert [id for id, _ in desk.pages][:3] == ["own-unit", "cohorts", "group"]


def test_a_unit_is_begun_looked_over_written_out_and_taken_in_again(desk):
    turn_to(desk, "own-unit")
    assert "is begun" in do(desk, "begin", name="Bench six", gears="6", differential=True)
    file = desk._desk.root / "units" / "bench-six.yaml"
    assert load_unit(file).identity.gears == 6
    assert (f"units/{file.name}", "edit") in links(desk)
    assert "there already" in do(desk, "begin", name="Bench six", gears="6")
    chosen = f"units/{file.name}"
    assert "nothing to correct" in do(desk, "check", unit=chosen)
    assert "typical" not in str(table(desk, "mend")) and len(table(desk, "typical")) > 20
    assert "/" not in table(desk, "typical")[0][0].split(":")[0].removeprefix(str(file.name))
    assert "Drawn" in do(desk, "draw", unit=chosen)
    assert file.with_suffix(".svg").read_text().startswith("<svg")
    assert "Written" in do(desk, "sheet", unit=chosen)
    book = openpyxl.load_workbook(file.with_suffix(".xlsx"))
    sheet = book["operations"]
    heads = [cell.value for cell in sheet[1]]
    name = heads.index("name") + 1
    before = sheet.cell(2, name).value
    sheet.cell(2, name).value = "Wash everything twice"
    book.save(file.with_suffix(".xlsx"))
    choose(desk, "sheets", "work.xlsx", file.with_suffix(".xlsx").read_bytes())
    assert "Taken into bench-six.yaml" in do(desk, "take", into=file.name)
    assert any(one.name == "Wash everything twice" for one in load_unit(file).operations)
    assert before in file.with_name("bench-six.yaml.before").read_text()
    assert "Written" in do(desk, "sheet", unit=chosen)  # what was written out before is kept
    assert file.with_name("bench-six.xlsx.before").exists()


def test_a_file_with_something_to_mend_is_told_line_by_line_and_kept(desk):
    turn_to(desk, "own-unit")
    do(desk, "begin", name="Bench", gears="5", differential=True)
    text = (desk._desk.root / "units" / "bench.yaml").read_text()
    broken = text.replace("minutes to do: ", "minutes to do: x", 1)
    choose(desk, "file", "mine.yaml", broken.encode())
    assert "1 thing to correct, see below" in do(desk, "bring")
    [[told]] = table(desk, "mend")
    assert told.startswith("mine.yaml, line ") and "minutes to do" in told
    assert "is no unit file" in (choose(desk, "file", "mine.txt", b"x") or do(desk, "bring"))
    assert "no number of gears" in do(desk, "begin", name="Odd", gears="many")
    assert "say 3 to 8" in do(desk, "begin", name="Odd", gears="12")
    assert "choose one of the list" in do(desk, "check", unit="units/../cohort.yaml")


def test_a_module_is_tried_by_itself(desk):
    turn_to(desk, "own-unit")
    said = do(desk, "try", unit=shipped_units()[-1], module="course-and-safety")
    assert said.endswith(": 1 of 1 modules can be given.")
    [[module, state, tasks, without]] = table(desk, "tried")
    assert module == "course-and-safety" and state == "can be given" and not without
    assert tasks == "9 of 9"
    assert "choose one of the list" in do(desk, "try", unit=shipped_units()[-1], module="x")


def test_a_standard_part_is_found(desk):
    turn_to(desk, "own-unit")
    assert do(desk, "find", words="30206").endswith("found.")
    assert any(row[1] == "30206" for row in table(desk, "parts"))
    assert do(desk, "find", words="nothing so") == "No standard part is called so."


def test_a_cohort_is_made_with_a_unit_of_ones_own_and_stands_in_the_list(desk):
    root = desk._desk.root
    turn_to(desk, "own-unit")
    do(desk, "begin", name="Bench", gears="5", differential=True)
    turn_to(desk, "cohorts")
    said = do(desk, "make", name="Day group", college="Brook College", unit="units/bench.yaml")
    assert "Day group is made" in said and "all work in your account" in said
    made = open_cohort(root.parent / "day-group")
    assert (made.name, made.college) == ("Day group", "Brook College")
    assert load_unit(made.unit_source).identity.name == "Bench"
    assert [line.act.did for line in read_trail(made.root)] == ["make the cohort"]
    rows = table(desk, "cohorts")
    assert [row[0] for row in rows] == ["Day group", "group"] or {row[0] for row in rows} == {
        "Day group", "group"
    }  # fmt: skip
    assert {row[-1] for row in rows} == {"Open its desk", "this desk"}
    assert "is a cohort folder already" in do(desk, "make", name="Day group", unit="tarnbeck-b5")


def test_a_long_name_makes_a_folder_with_a_short_one(desk):
    turn_to(desk, "cohorts")
    name = "Gearboxes on Thursday evening in the autumn term"
    assert "is made" in do(desk, "make", name=name, unit="tarnbeck-b5")
    made = open_cohort(desk._desk.root.parent / "gearboxes-on-thursday-evening-in-the-aut")
    assert (made.name, made.id) == (name, made.root.name)


@pytest.mark.parametrize(
    ("typed", "says"),
    [
        ({}, "name is missing"),
        ({"name": "?!"}, "no folder can be called after"),
        ({"name": "New", "timezone": "Nowhere/At all"}, "no time zone is called"),
        ({"name": "New", "folder": "group/inside"}, "lies inside the cohort folder"),
        ({"name": "New", "unit": "no-such-unit"}, "there is no unit"),
    ],
)
def test_what_cannot_be_made_is_one_sentence_and_makes_nothing(desk, typed, says):
    turn_to(desk, "cohorts")
    before = sorted(desk._desk.root.parent.iterdir())
    told = do(desk, "make", **({"unit": "tarnbeck-b5"} | typed))
    assert says in told.lower() and "\n" not in told and "--" not in told
    assert sorted(desk._desk.root.parent.iterdir()) == before


def test_a_unit_with_something_to_mend_makes_no_cohort_and_is_told_by_its_own_name(desk):
    turn_to(desk, "cohorts")
    choose(desk, "unit-file", "mine.yaml", b"identity: {id: x}\n")
    told = do(desk, "make", name="New", unit="tarnbeck-b5")
    assert told.startswith("Mine.yaml") or told.startswith("mine.yaml")
    assert not (desk._desk.root.parent / "new").exists()


def test_on_a_hub_no_other_desk_is_opened(desk, monkeypatch):
    turn_to(desk, "cohorts")
    do(desk, "make", name="Other", unit="tarnbeck-b5")
    monkeypatch.setenv("JUPYTERHUB_API_TOKEN", "x")
    other = str(desk._desk.root.parent / "other")
    assert "a hub serves one cohort" in do(desk, "open", of=other).lower()
    assert "not there any more" in do(desk, "open", of="/somewhere/else")
