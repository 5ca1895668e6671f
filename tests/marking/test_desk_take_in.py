"""The desk's page *Take in, mark, give back* on a small cohort, with folders and zips from outside."""

import random
import shutil
import stat
import struct
import zipfile

import pytest

from twoshaft.errors import CohortError
from twoshaft_grader.cohort import bring_in as bringing
from twoshaft_grader.cohort.collect import kept
from twoshaft_grader.cohort.roster import Learner
from twoshaft_grader.desk_pages import take_in as taking
from twoshaft_grader.desk_pages.page import Desk, Work
from twoshaft_grader.desk_pages.parts import Cell, Values
from twoshaft_grader.desk_pages.take_in import TakeIn
from twoshaft_grader.records.agreement import Pair
from twoshaft_grader.records.alike import Alike

LEARNERS = ("a1", "b2", "c3")


@pytest.fixture(scope="module")
def made(handed_out, tmp_path_factory):
    return handed_out(tmp_path_factory.mktemp("desk-take-in"), LEARNERS)


@pytest.fixture
def trial(made, tmp_path):
    shutil.copytree(made.base, tmp_path / "base", symlinks=True)
    return type(made)(tmp_path / "base")


@pytest.fixture
def page(trial):
    return TakeIn(Desk(trial.cohort.root, "R. Holm"))


@pytest.fixture
def stick(trial, tmp_path):
    """A memory stick with the work of two learners, of a stranger, and a damaged sheet."""
    root = tmp_path / "stick"
    for learner in ("a1", "b2", "zz"):
        folder = root / "any name" / learner
        folder.mkdir(parents=True)
        (folder / "jobsheet.json").write_text(trial.sheet(learner))
    (root / "torn").mkdir()
    (root / "torn" / "jobsheet.json").write_text(trial.sheet("c3")[:40])
    (root / "photo.jpg").write_bytes(b"x")
    return root


def do(page, act, of="", zip=None, **typed):
    return page.do(act, Values(typed, {}, {"zip": zip} if zip else {}, of), Work())


def table(page, id):
    found = [part for part in page.show() if getattr(part, "id", "") == id]
    return found[0].texts() if found else []


def states(page):
    return {line[0]: line[4] for line in table(page, "states")}


def packed(folder, target):
    with zipfile.ZipFile(target, "w") as out:
        for path in sorted(folder.rglob("*")):
            if path.is_file():
                out.write(path, path.relative_to(folder))
    return target


def test_taken_in_marked_and_given_back_with_one_button(page, trial):
    trial.hand_in("a1")
    trial.hand_in("b2", answers={})
    assert states(page) == {"a1": "handed in", "b2": "handed in", "c3": "not fetched"}
    said = do(page, "all")
    assert said == "Taken in: 2 new, 0 newer. Marked: 2, as before: 0. Feedback given back: 2."
    assert states(page) == {"a1": "marked, enough", "b2": "marked, not yet", "c3": "not fetched"}
    (mine,) = [line for line in table(page, "states") if line[0] == "a1"]
    assert mine[6:10] == ["4", "4", "", "yes"]
    assert "as before: 2" in do(page, "mark") and "Marked: 2" in do(page, "mark", again=True)


def test_a_stick_is_taken_in_once_and_what_cannot_be_is_told(page, trial, stick):
    said = do(page, "bring-in", folder=str(stick))
    assert said == "2 hand-ins found, 0 known already. Taken in: 2 new, 0 newer."
    told = {line[0]: line[2] for line in table(page, "not-done")}
    assert 'nobody on the roster has the id "zz"' in told["any name/zz"] and "torn" in told
    assert do(page, "bring-in", folder=str(stick)).startswith("0 hand-ins found, 2 known already")
    assert len(kept(trial.cohort, "a1", trial.name).versions) == 1
    do(page, "mark")
    assert states(page)["a1"] == "marked, enough"  # the notebook came from what was handed out


def test_a_hubs_folder_of_learners_work_is_taken_and_a_closed_one_is_told(page, trial, monkeypatch):
    real = bringing.os.scandir
    for learner in LEARNERS:
        own = trial.cohort.place(learner, trial.name)
        own.mkdir(parents=True)
        (own / "jobsheet.json").write_text(trial.sheet(learner))

    def closed(folder):
        if str(folder).endswith("/c3"):
            raise PermissionError(13, "Permission denied", str(folder))
        return real(folder)

    monkeypatch.setattr(bringing.os, "scandir", closed)
    said = do(page, "bring-in", folder=str(trial.cohort.work))
    assert said == "2 hand-ins found, 0 known already. Taken in: 2 new, 0 newer."
    assert [line[::2] for line in table(page, "not-done")] == [["c3", "permission denied."]]


def test_a_zip_is_taken_as_its_folder_is(page, stick, tmp_path):
    said = do(page, "bring-in", zip=packed(stick, tmp_path / "work.zip"))
    assert said.startswith("2 hand-ins found")


def test_a_hand_in_that_is_asked_about_is_taken_from_the_table(page, trial):
    trial.hand_in("a1", hours_ago=3)
    do(page, "collect")
    trial.hand_in("a1", hours_ago=1, answers={}, tail="x")
    assert do(page, "collect") == "Taken in: 0 new, 0 newer."
    found = next(part for part in page.show() if getattr(part, "id", "") == "not-done")
    cell = found.rows[0].cells[-1]
    assert isinstance(cell, Cell) and cell.label == f"Take it all the same: a1, {trial.name}"
    assert do(page, "take", of=cell.of) == "Taken in: 0 new, 1 newer."
    assert not any(line[3] for line in table(page, "not-done"))


def entry(name, data=b"{}", mode=0):
    one = zipfile.ZipInfo(name)
    one.external_attr = mode << 16
    return one, data


@pytest.mark.parametrize(
    ("entries", "says"),
    [
        ([entry("../jobsheet.json")], "no name of a plain file"),
        ([entry("/etc/jobsheet.json")], "no name of a plain file"),
        ([entry("a\\..\\jobsheet.json")], "no name of a plain file"),
        ([entry("C:jobsheet.json")], "no name of a plain file"),
        ([entry("a/jobsheet.json", b"/etc/passwd", stat.S_IFLNK | 0o777)], "is a link"),
        ([entry("a/b.txt")], "no hand-in is in it"),
        ([entry("a.json"), entry("a.json/jobsheet.json")], "beside the others"),
        ([entry("a/" + "\u00e9" * 140 + ".json")], "beside the others"),
        ([entry("n" * 249 + "/jobsheet.json")], "no name of a plain file"),
    ],
)
def test_a_hostile_zip_is_refused_in_a_sentence_and_leaves_nothing(
    page, trial, tmp_path, entries, says
):
    place = tmp_path / "hostile.zip"
    with zipfile.ZipFile(place, "w") as out:
        for one, data in entries:
            out.writestr(one, data)
    before = sorted(trial.cohort.inbound.iterdir())
    with pytest.raises(CohortError, match=says):
        do(page, "bring-in", zip=place)
    assert sorted(trial.cohort.inbound.iterdir()) == before


def test_a_zip_that_would_fill_the_disk_is_never_unpacked(page, tmp_path):
    place = tmp_path / "bomb.zip"
    with zipfile.ZipFile(place, "w", zipfile.ZIP_DEFLATED) as out:
        out.writestr("a/jobsheet.json", b"0" * 1000)
    data = bytearray(place.read_bytes())
    at = data.index(b"PK\x01\x02") + 24  # what the list says of the size unpacked
    data[at : at + 4] = struct.pack("<I", 4_000_000_000)
    place.write_bytes(data)
    with pytest.raises(CohortError, match="it would hold 4 GB unpacked"):
        do(page, "bring-in", zip=place)
    data[at : at + 4] = struct.pack("<I", 10)  # and one that holds more than it says
    place.write_bytes(data)
    with pytest.raises(CohortError, match="cannot be read as a zip"):
        do(page, "bring-in", zip=place)


@pytest.mark.parametrize("way", [zipfile.ZIP_DEFLATED, zipfile.ZIP_BZIP2, zipfile.ZIP_LZMA])
def test_a_zip_with_any_bytes_changed_is_read_or_told_in_a_sentence(tmp_path, way):
    place, draw = tmp_path / "work.zip", random.Random(f"changed-{way}")
    with zipfile.ZipFile(place, "w", way) as out:
        for learner in ("a1", "b2"):
            out.writestr(f"{learner}/jobsheet.json", draw.randbytes(300).hex())
    whole, told = place.read_bytes(), set()
    for _ in range(300):
        data = bytearray(whole[: draw.choice((len(whole), len(whole), draw.randrange(len(whole))))])
        for _ in range(min(len(data), draw.choice((1, 1, 2, 5)))):
            data[draw.randrange(len(data))] = draw.randrange(256)
        place.write_bytes(data)
        try:
            with bringing._opened(place):
                told.add("")
        except CohortError as error:
            told.add(error.what[:27])
    assert {"", "it cannot be read as a zip "} <= told


def test_what_is_no_place_of_hand_ins_is_told(page, trial, tmp_path, monkeypatch):
    (tmp_path / "note.zip").write_text("no zip")
    with pytest.raises(CohortError, match="cannot be read as a zip"):
        do(page, "bring-in", zip=tmp_path / "note.zip")
    with pytest.raises(CohortError, match="it is not there"):
        do(page, "bring-in", folder=str(tmp_path / "nowhere"))
    with pytest.raises(CohortError, match="no file is chosen"):
        do(page, "bring-in")
    (tmp_path / "loop").mkdir()
    (tmp_path / "loop" / "again").symlink_to(tmp_path / "loop")
    with pytest.raises(CohortError, match="no hand-in is in it"):
        do(page, "bring-in", folder=str(tmp_path / "loop"))
    monkeypatch.setattr(bringing, "MOST", 2)
    with pytest.raises(CohortError, match="more than 2 files"):
        do(page, "bring-in", folder=str(trial.base))


def test_sheets_that_agree_more_than_chance_allows_are_shown(page, trial, monkeypatch):
    one, other = (Learner(id, "L", "A") for id in ("a1", "b2"))
    found = Alike(one, other, Pair(0, 1, 5, 4, 1.2, 1e-9), 2e6)
    monkeypatch.setattr(taking, "alike", lambda *_: ([found], []))
    trial.hand_in("a1")
    said = do(page, "all")
    assert "1 pair of sheets to ask about, below." in said
    assert table(page, "alike") == [[trial.name, found.sentence]]
    do(page, "collect")
    assert table(page, "alike") == []
