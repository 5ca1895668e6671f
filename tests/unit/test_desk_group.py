"""The desk's frame and its page *Group*: what the browser asks for, and what has become of it."""

import base64
import csv
import threading

import pytest

from twoshaft_grader.cohort.folder import make_cohort
from twoshaft_grader.cohort.intake import roster_of
from twoshaft_grader.cohort.take_out import take_out
from twoshaft_grader.cohort.trail import read_trail
from twoshaft_grader.cohort.withdrawn import withdrawn_of
from twoshaft_grader.cohort.workplace import sign_in_words
from twoshaft_grader.desk_pages.page import Page
from twoshaft_grader.desk_pages.parts import Row, Table, Values
from twoshaft_grader.desk_pages.screen import BUSY, DeskScreen

ROSTER = "id,family name,given name,group\na1,Lindqvist,Ada,A\nb2,Okoro,Ben,B\n"


@pytest.fixture
def desk(tmp_path):
    """The desk of a new cohort."""
    screen = DeskScreen(make_cohort(tmp_path / "group").root)
    screen.wait()
    return screen


def choose(desk, text, name="roster.csv", field="file"):
    """Let a file arrive in two pieces."""
    data = text if isinstance(text, bytes) else text.encode()
    for first, piece in ((True, data[:9]), (False, data[9:])):
        coded = base64.b64encode(piece).decode()
        ask = {"type": "file", "field": field, "name": name, "data": coded}
        desk.hear(ask | {"first": first, "last": not first})


def do(desk, act, ticked=(), **typed):
    """Press a button; what is said of it, or what is wrong."""
    ids = list(ticked)
    desk.hear(
        {"type": "do", "act": act, "typed": typed, "ticked": {"group": ids, "withdrawn": ids}}
    )
    desk.wait()
    return desk.said or desk.trouble


def taken_in(desk, text=ROSTER):
    choose(desk, text)
    do(desk, "read")
    return do(desk, "take")


def table(desk, id):
    """The lines of a table of the page."""
    (found,) = [part for part in desk.parts if part["kind"] == "table" and part["id"] == id]
    return [
        [cell["text"] if isinstance(cell, dict) else cell for cell in row["cells"]]
        for row in found["rows"]
    ]


@pytest.mark.slow
def test_a_roster_is_shown_before_it_is_taken_in(desk):
    choose(desk, ROSTER)
    assert do(desk, "read").startswith("Nothing is written yet")
    assert [line[3] for line in table(desk, "roster-changes")] == ["new", "new"]
    assert roster_of(desk._desk.cohort) == []
    assert do(desk, "take") == "2 added, 0 corrected, 0 as before."
    assert [line[0] for line in table(desk, "group")] == ["a1", "b2"]
    choose(desk, "id,family name,given name,group\nA1,Lindqvist,Adah,B\nc3,Moss,Cy,\n")
    do(desk, "read")
    assert table(desk, "roster-changes") == [
        ["a1", "Adah Lindqvist", "B", "was Ada Lindqvist; was in group A"],
        ["c3", "Cy Moss", "", "new"],
        ["b2", "Ben Okoro", "B", "not in the file, stays"],
    ]
    assert do(desk, "leave") == "The roster stays as it was."
    assert roster_of(desk._desk.cohort)[0].given_name == "Ada"


@pytest.mark.parametrize(
    ("text", "says"),
    [
        ("id,name\n", "no column is headed"),
        ("id,family name,given name\na b,X,Y\n", "cannot name a folder"),
        (b"PK\x03\x04" + b"x" * 20, "this is a workbook"),
        ("", "the file is empty"),
    ],
)
def test_a_file_that_cannot_be_taken_is_told_by_its_own_name(desk, text, says):
    choose(desk, text)
    told = do(desk, "read")
    assert says in told and told.startswith("roster.csv") and "twoshaft-desk" not in told
    assert desk.said == "" and roster_of(desk._desk.cohort) == []


def test_what_is_missing_is_asked_for_in_a_sentence(desk):
    taken_in(desk)
    assert do(desk, "read") == "No file is chosen; choose one."
    assert do(desk, "move") == "No learner is ticked; tick one or more in the table."
    assert do(desk, "withdraw", ["a1"]) == "The reason is missing; fill it in."
    assert "nobody on the roster" in do(desk, "move", ["zz"]).lower()
    assert "81 letters long" in do(desk, "rename", who="a1", family="x" * 81)


def test_learners_are_moved_and_renamed(desk):
    taken_in(desk)
    do(desk, "move", ["a1", "b2"], group="C")
    assert {one.group for one in roster_of(desk._desk.cohort)} == {"C"}
    assert do(desk, "rename", who="a1", family="de Vries") == "a1 is now Ada de Vries."
    told = [line.act for line in read_trail(desk._desk.root)][-1]
    assert (told.did, told.before, told.after) == ("rename", "Ada Lindqvist", "Ada de Vries")


def test_who_is_withdrawn_can_sign_in_no_more_and_comes_back_with_a_new_word(desk):
    taken_in(desk)
    before = sign_in_words(desk._desk.cohort)
    do(desk, "withdraw", ["a1"], why="left the trade")
    assert [one.id for one in withdrawn_of(desk._desk.cohort)] == ["a1"]
    assert list(sign_in_words(desk._desk.cohort)) == ["b2"]
    assert (desk._desk.cohort.workplace / "a1").is_dir()
    assert table(desk, "withdrawn")[0][:2] == ["a1", "Lindqvist"]
    do(desk, "bring-back", ["a1"])
    after = sign_in_words(desk._desk.cohort)
    assert withdrawn_of(desk._desk.cohort) == [] and after["b2"] == before["b2"]
    assert set(after) == {"a1", "b2"} and after["a1"] != before["a1"]


def test_who_is_withdrawn_comes_back_with_a_roster_that_names_them(desk):
    taken_in(desk)
    do(desk, "withdraw", ["a1", "b2"], why="the course was put off")
    assert not desk._desk.cohort.roster_file.exists()
    choose(desk, ROSTER)
    do(desk, "read")
    assert {line[3] for line in table(desk, "roster-changes")} == {"was withdrawn, comes back"}
    do(desk, "take")
    assert [one.id for one in roster_of(desk._desk.cohort)] == ["a1", "b2"]
    assert withdrawn_of(desk._desk.cohort) == []


def test_who_is_withdrawn_can_be_taken_out_for_good(desk):
    taken_in(desk)
    do(desk, "withdraw", ["a1"], why="left the trade")
    out = take_out(desk._desk.cohort, "a1")
    assert out.left == () and withdrawn_of(desk._desk.cohort) == []
    assert "Lindqvist" not in (desk._desk.root / "roster.csv").read_text()
    assert not (desk._desk.cohort.workplace / "a1").exists()


def test_slips_are_printed_and_go_when_a_word_is_renewed(desk):
    from io import BytesIO

    from pypdf import PdfReader

    taken_in(desk)
    do(desk, "slips", **{"slips-of": "A"})
    page = desk._desk.root / "sign-in-slips.pdf"
    text = "".join(one.extract_text() for one in PdfReader(BytesIO(page.read_bytes())).pages)
    words = sign_in_words(desk._desk.cohort)
    assert words["a1"] in text and "Ada Lindqvist" in text and words["b2"] not in text
    assert page.stat().st_mode & 0o077 == 0
    assert words["a1"] not in do(desk, "word", ["a1"])
    assert not page.exists()


def test_acts_carry_the_name_of_who_sits_at_the_desk(desk):
    desk.hear({"type": "by", "name": "  R.  Holm "})
    taken_in(desk)
    assert read_trail(desk._desk.root)[-1].act.by == "R. Holm"


def test_a_table_is_saved_without_formulas_and_a_demo_says_that_its_people_are_invented(
    desk, monkeypatch
):
    sent = []
    monkeypatch.setattr(desk, "send", lambda message, *_: sent.append(message))
    taken_in(desk, "id,family name,given name,group\na1,=1+1,Ada,A\n")
    desk.hear({"type": "export", "table": "group"})
    rows = list(csv.reader(sent[-1]["text"].splitlines()))
    assert rows[1] == ["a1", "'=1+1", "Ada", "A"]
    desk.cohort = desk.cohort | {"invented": "The people are invented."}
    desk.hear({"type": "export", "table": "group"})
    assert "invented" in sent[-1]["text"].splitlines()[1]


class Slow(Page):
    id, title = "slow", "Slow"
    go = threading.Event()

    def show(self):
        return [Table("t", "T", ("a",), (Row("1", ("1",)),))]

    def do(self, act, values, work):
        work.begin("working on it", 2)
        work.step()
        assert self.go.wait(30)
        if act == "fail":
            raise OSError(28, "no space", "a.json")
        return "Done."


def test_the_page_goes_on_while_something_takes_its_time(desk, monkeypatch):
    told = []
    monkeypatch.setattr(desk, "tell_trouble", told.append)
    desk._pages["slow"] = Slow(desk._desk)
    desk.hear({"type": "page", "name": "slow"})
    desk.wait()
    desk.hear({"type": "do", "act": "go"})
    assert desk.busy["doing"] in ("working", "working on it")
    desk.hear({"type": "page", "name": "group"})
    assert told == [BUSY] and desk.page == "slow"
    Slow.go.set()
    desk.wait()
    assert desk.said == "Done." and desk.busy == {} and desk.parts[0]["id"] == "t"
    assert "the disk is full; make room, then do the same again" in do(desk, "fail")


def test_values_from_outside_are_data():
    values = Values({"a": ["x"], "b": " y "}, {"t": "no list", "u": [1, "k"]})
    assert values.text("a") == "" and values.text("b") == "y"
    assert values.picked("t") == [] and values.picked("u") == ["k"]
