"""Making, finding and reading a cohort folder; files that survive a cut."""

import os
import shutil
import stat
from datetime import UTC, datetime
from pathlib import Path
from zoneinfo import ZoneInfo

import pytest

from twoshaft.errors import CohortError, UnitFileError
from twoshaft.units import load_unit
from twoshaft_grader.cohort import files
from twoshaft_grader.cohort.content import find_content
from twoshaft_grader.cohort.due import gradebook_time, read_due
from twoshaft_grader.cohort.folder import find_cohort, make_cohort, open_cohort

SHIPPED = Path(__file__).resolve().parents[2] / "course/twoshaft/units/files"


@pytest.fixture
def cohort(tmp_path):
    return make_cohort(tmp_path / "Autumn group", timezone="Europe/Dublin")


def test_made_folder_reads_back_and_is_found_from_inside(cohort):
    assert cohort.id == "autumn-group"
    assert open_cohort(cohort.root) == cohort == find_cohort(cohort.root / "source")
    assert len(cohort.salt) == 16


def mode(path):
    return stat.S_IMODE(path.stat().st_mode)


def test_what_learners_use_lies_beside_it_and_both_are_closed_to_others(cohort, tmp_path):
    assert cohort.shared == tmp_path / "Autumn group-shared" and not cohort.own_accounts
    assert cohort.workplace == cohort.shared / "workplace" == cohort.work
    assert cohort.exchange == cohort.shared / "exchange"
    if os.name == "posix":
        assert mode(cohort.root) == mode(cohort.shared) == 0o700
        assert mode(cohort.exchange) == 0o1777


@pytest.mark.slow
def test_an_own_unit_file_is_kept_inside(tmp_path, monkeypatch):
    unit = tmp_path / "my-unit.yaml"
    shutil.copyfile(SHIPPED / "tarnbeck-b5.yaml", unit)
    monkeypatch.chdir(tmp_path)
    made = make_cohort(tmp_path / "group", unit="my-unit.yaml")
    monkeypatch.chdir("/")
    unit.unlink()
    assert open_cohort(made.root).unit_source == str(made.root / "unit.yaml")
    assert load_unit(made.unit_source).identity.id == "tarnbeck-b5"
    assert make_cohort(tmp_path / "other").unit_source == "tarnbeck-b5"


def test_a_unit_file_that_needs_those_beside_it_is_refused_and_nothing_is_left(tmp_path):
    shutil.copyfile(SHIPPED / "tarnbeck-b5.yaml", tmp_path / "ours.yaml")
    variant = (SHIPPED / "tarnbeck-b5-early.yaml").read_text()
    ours = variant.replace("variant of: tarnbeck-b5\n", "variant of: ours.yaml\n")
    (tmp_path / "variant.yaml").write_text(ours)
    load_unit(tmp_path / "variant.yaml")
    for _ in range(2):  # the folder can be made afterwards
        with pytest.raises(UnitFileError):
            make_cohort(tmp_path / "group", unit=str(tmp_path / "variant.yaml"))
    assert not any((tmp_path / "group").iterdir()) and not (tmp_path / "group-shared").exists()


def test_a_moved_cohort_finds_its_shared_place(cohort, tmp_path):
    away = tmp_path / "away"
    away.mkdir()
    alone = cohort.root.rename(away / "moved")
    assert open_cohort(alone).shared == cohort.shared
    # a copy of both, beside which the original still is, works with its own
    both = tmp_path / "both"
    shutil.copytree(alone, both / "Autumn group")
    shutil.copytree(cohort.shared, both / cohort.shared.name)
    assert open_cohort(both / "Autumn group").shared == both / cohort.shared.name
    # another cohort's place of that name is none of ours, though the id be the same
    other = make_cohort(tmp_path / "third" / "Autumn group")
    assert other.id == cohort.id
    visiting = (both / "Autumn group").rename(tmp_path / "third" / "visiting")
    assert open_cohort(visiting).shared == cohort.shared
    shutil.rmtree(cohort.shared)
    with pytest.raises(CohortError, match=r"cohort\.yaml: the shared place") as caught:
        open_cohort(visiting)
    assert "write as shared where it is" in caught.value.mend
    text = (visiting / "cohort.yaml").read_text()
    named = text.replace(str(cohort.shared), str(both / cohort.shared.name))
    (visiting / "cohort.yaml").write_text(named)
    assert open_cohort(visiting).shared == both / cohort.shared.name


def test_the_two_places_lie_apart(tmp_path):
    for shared in (tmp_path / "group", tmp_path / "group" / "inside", tmp_path):
        with pytest.raises(CohortError, match=r"one within the other|not empty"):
            make_cohort(tmp_path / "group", shared=shared)
    (tmp_path / "full-shared").mkdir()
    (tmp_path / "full-shared" / "x").touch()
    with pytest.raises(CohortError, match="full-shared is not empty"):
        make_cohort(tmp_path / "full")


@pytest.mark.skipif(os.name == "nt", reason="rights of Unix")
def test_a_shared_place_that_other_accounts_cannot_reach_is_refused(tmp_path):
    home = tmp_path / "home"
    home.mkdir(mode=0o700)
    with pytest.raises(CohortError, match="other accounts cannot get to") as caught:
        make_cohort(tmp_path / "group", shared=home / "shared")
    assert "/srv" in caught.value.mend and not any(home.iterdir())
    with pytest.raises(CohortError, match="there is no folder"):
        make_cohort(tmp_path / "group", shared=tmp_path / "new" / "shared")


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
