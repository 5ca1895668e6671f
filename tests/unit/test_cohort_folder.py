"""Making, finding and reading a cohort folder; files that survive a cut."""

import stat
from datetime import UTC, datetime
from zoneinfo import ZoneInfo

import pytest

from twoshaft.errors import CohortError
from twoshaft_grader.cohort import files
from twoshaft_grader.cohort.content import find_content
from twoshaft_grader.cohort.due import gradebook_time, read_due
from twoshaft_grader.cohort.folder import find_cohort, make_cohort, open_cohort


@pytest.fixture
def cohort(tmp_path):
    return make_cohort(tmp_path / "Autumn group", timezone="Europe/Dublin")


def test_made_folder_reads_back_and_is_found_from_inside(cohort):
    assert cohort.id == "autumn-group"
    assert open_cohort(cohort.root) == cohort == find_cohort(cohort.workplace)
    assert len(cohort.salt) == 16
    assert stat.S_IMODE(cohort.exchange.stat().st_mode) == 0o777


def test_an_own_unit_file_is_found_from_anywhere(tmp_path, monkeypatch):
    (tmp_path / "my-unit.yaml").touch()
    monkeypatch.chdir(tmp_path)
    made = make_cohort(tmp_path / "group", unit="my-unit.yaml")
    monkeypatch.chdir(made.root)
    assert open_cohort(made.root).unit_source == str(tmp_path / "my-unit.yaml")
    assert make_cohort(tmp_path / "other").unit_source == "tarnbeck-b5"


def test_nothing_is_overwritten(cohort, tmp_path):
    before = (cohort.root / "cohort.yaml").read_bytes()
    with pytest.raises(CohortError, match="cohort folder already"):
        make_cohort(cohort.root)
    assert (cohort.root / "cohort.yaml").read_bytes() == before
    (tmp_path / "full").mkdir()
    (tmp_path / "full" / "x").touch()
    with pytest.raises(CohortError, match="not empty"):
        make_cohort(tmp_path / "full")
    with pytest.raises(CohortError, match="inside the cohort"):
        make_cohort(cohort.root / "inner")


@pytest.mark.parametrize("bad", ["a b", "A", "a+b", "-a", "a--b", "é", "x" * 41])
def test_ids_that_will_not_do(tmp_path, bad):
    with pytest.raises(CohortError, match="will not do"):
        make_cohort(tmp_path / "new", id=bad)


@pytest.mark.parametrize(
    ("text", "word"),
    [
        ("id: [", "line"),
        ("- a", "no entries"),
        ("id: a\nsalt: b\n", '"unit" is missing'),
        ("id: a\nsalt: b\nunit: u\ncolour: red\n", '"colour"'),
        ("id: a\nsalt: b\nunit: u\ntimezone: Mars/Dome\n", "Mars/Dome"),
    ],
)
def test_damaged_cohort_file(cohort, text, word):
    (cohort.root / "cohort.yaml").write_text(text)
    with pytest.raises(CohortError, match=r"cohort\.yaml") as caught:
        open_cohort(cohort.root)
    assert word in caught.value.sentence and caught.value.mend


def test_no_cohort_here(tmp_path):
    with pytest.raises(CohortError, match="--cohort"):
        find_cohort(tmp_path)


def test_due_dates():
    dublin = ZoneInfo("Europe/Dublin")
    assert read_due("2026-12-04", dublin) == datetime(2026, 12, 4, 23, 59, tzinfo=dublin)
    summer = read_due("2026-07-04 16:00", dublin)
    assert gradebook_time(summer) == datetime(2026, 7, 4, 15, 0)
    assert read_due("2026-07-04T16:00Z", dublin) == datetime(2026, 7, 4, 16, tzinfo=UTC)
    for bad in ("4.12.2026", "2026-13-01", "", "soon"):
        with pytest.raises(CohortError, match="not a date"):
            read_due(bad, dublin)


def test_content_must_hold_solutions(tmp_path):
    with pytest.raises(CohortError, match="no folder solutions"):
        find_content(str(tmp_path))
    (tmp_path / "solutions").mkdir()
    (tmp_path / "solutions" / "02-order-of-work.ipynb").touch()
    (tmp_path / "solutions" / "notes.ipynb").touch()
    content = find_content(str(tmp_path))
    assert list(content.modules) == ["order-of-work"]
    with pytest.raises(CohortError, match="choose one of these: order-of-work"):
        content.solution("shims")


def test_a_torn_line_is_closed_and_passed_over(tmp_path):
    log = tmp_path / "log" / "x.jsonl"
    files.append_line(log, {"n": 1})
    with open(log, "ab") as stream:
        stream.write(b'{"n": 2, "na')
    files.append_line(log, {"n": 3})
    assert [line["n"] for line in files.read_lines(log)] == [1, 3]


def test_digest_sees_names_and_bytes_and_leaves_feedback_out(tmp_path):
    (tmp_path / "a").write_text("1")
    first = files.folder_digest(tmp_path)
    (tmp_path / "feedback").mkdir()
    (tmp_path / "feedback" / "page.html").touch()
    assert files.folder_digest(tmp_path) == first
    (tmp_path / "a").rename(tmp_path / "b")
    renamed = files.folder_digest(tmp_path)
    (tmp_path / "b").write_text("2")
    assert len({first, renamed, files.folder_digest(tmp_path)}) == 3
