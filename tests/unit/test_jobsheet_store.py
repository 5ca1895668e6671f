"""A job sheet's file: whole or not at all, merged field by field, nothing lost."""

import json
import multiprocessing
import os
import stat
import sys

import pytest

from twoshaft.errors import SheetError
from twoshaft.jobsheet.store import Store
from twoshaft.stored.job_sheet import HISTORY, SheetData, read_sheet

ANA = SheetData(learner="a01", module="order-of-work", attempt=1)


@pytest.fixture
def path(tmp_path):
    return tmp_path / "jobsheet.json"


def others(path):
    return sorted(item.name for item in path.parent.iterdir() if item != path)


def test_what_is_saved_is_there_for_the_next_kernel(path):
    Store(path, ANA).save("gap", "1,25 mm")
    again = Store(path, ANA)
    assert again.data.value("gap") == "1,25 mm"
    assert read_sheet(path).learner == "a01"
    assert others(path) == []


def test_two_windows_are_merged_field_by_field(path):
    one, two = Store(path, ANA), Store(path, ANA)
    one.save("gap", "1 mm", base=0)
    saved = two.save("why", "oil", base=0)
    assert saved.replaced is None
    assert {name: answer.value for name, answer in read_sheet(path).answers.items()} == {
        "gap": "1 mm",
        "why": "oil",
    }
    assert one.refresh() == ("why",)
    assert one.refresh() == ()


def test_the_later_save_wins_on_one_field_and_says_so(path):
    one, two = Store(path, ANA), Store(path, ANA)
    one.save("gap", "1 mm", base=0)
    saved = two.save("gap", "2 mm", base=0)
    assert (saved.revision, saved.replaced) == (2, "1 mm")
    answer = read_sheet(path).answers["gap"]
    assert answer.value == "2 mm" and answer.history[-1][0] == "1 mm"
    assert one.save("gap", "3 mm", base=1).replaced == "2 mm"
    assert one.save("gap", "4 mm", base=3).replaced is None


def test_saving_the_same_again_changes_nothing(path):
    store = Store(path, ANA)
    first = store.save("gap", "1 mm")
    before = path.read_bytes()
    assert store.save("gap", "1 mm") == first
    assert path.read_bytes() == before


def test_the_history_is_short(path):
    store = Store(path, ANA)
    for number in range(HISTORY + 4):
        store.save("gap", f"{number} mm")
    past = read_sheet(path).answers["gap"].history
    assert [value for value, _ in past] == [f"{n} mm" for n in range(3, HISTORY + 3)]


@pytest.mark.parametrize("damage", [b"", b"{", b"\xff\xff", b"[]", b'{"format": 99}'])
def test_a_damaged_file_is_set_aside_and_nothing_is_lost(path, damage):
    path.write_bytes(damage)
    store = Store(path, ANA)
    (aside,) = others(path)
    assert aside.startswith("jobsheet.damaged-") and aside.endswith(".json")
    assert (path.parent / aside).read_bytes() == damage
    assert aside in store.notice and "\n" not in store.notice
    store.save("gap", "1 mm")
    # Damaged while it is open: the answers of this window are written again.
    path.write_bytes(damage + b" ")
    saved = store.save("why", "oil")
    assert "set aside" in saved.notice and "1 answer " in saved.notice
    assert read_sheet(path).value("gap") == "1 mm" and read_sheet(path).value("why") == "oil"
    assert len(others(path)) == 2


def test_a_reader_never_writes(path):
    path.write_bytes(b"{")
    store = Store(path, ANA, read_only=True)
    assert "not readable" in store.notice and others(path) == []
    assert path.read_bytes() == b"{"
    with pytest.raises(SheetError, match="reading only"):
        store.save("gap", "1 mm")


def test_another_learners_sheet_is_left_alone(path):
    Store(path, ANA).save("gap", "1 mm")
    before = path.read_bytes()
    ben = Store(path, SheetData(learner="a02"))
    assert "belongs to a01" in ben.notice
    with pytest.raises(SheetError, match="belongs to a01, and a02 works here"):
        ben.save("gap", "2 mm")
    assert path.read_bytes() == before and others(path) == []


@pytest.mark.parametrize("value", [{"a": 1}, True, float("nan"), [1], "x" * 3000, object()])
def test_what_no_answer_is_cannot_be_saved(path, value):
    with pytest.raises(SheetError):
        Store(path, ANA).save("gap", value)
    assert not path.exists()


def test_a_full_disk_leaves_the_old_file_whole(path, monkeypatch):
    store = Store(path, ANA)
    store.save("gap", "1 mm")
    before = path.read_bytes()

    def full(_):
        raise OSError(28, "No space left on device")

    monkeypatch.setattr(os, "fsync", full)
    with pytest.raises(SheetError, match="no space left on device"):
        store.save("gap", "2 mm")
    assert path.read_bytes() == before and others(path) == []
    monkeypatch.undo()
    assert store.save("gap", "2 mm").revision == 2


@pytest.mark.skipif(
    sys.platform == "win32" or os.geteuid() == 0, reason="the administrator may write anywhere"
)
def test_a_folder_without_write_access_is_one_sentence(path):
    os.chmod(path.parent, stat.S_IRUSR | stat.S_IXUSR)
    try:
        with pytest.raises(SheetError, match="nothing could be saved"):
            Store(path, ANA).save("gap", "1 mm")
    finally:
        os.chmod(path.parent, stat.S_IRWXU)


def test_a_window_that_holds_the_sheet_for_ever_is_told(path, monkeypatch):
    monkeypatch.setattr("twoshaft.jobsheet.locking.LOCK_SECONDS", 0.1)
    one, two = Store(path, ANA), Store(path, ANA)
    with one._locked(), pytest.raises(SheetError, match="close the other window"):
        two.save("gap", "1 mm")
    assert two.save("gap", "1 mm").revision == 1


def test_a_machine_without_room_for_a_lock_is_told(path, monkeypatch, tmp_path):
    store = Store(path, ANA)
    (tmp_path / "file").write_text("")
    monkeypatch.setattr("tempfile.gettempdir", lambda: str(tmp_path / "file"))
    with pytest.raises(SheetError, match="cannot be locked"):
        store.save("gap", "1 mm")


def _save_many(path, window, count):
    store = Store(path, ANA)
    for number in range(count):
        store.save(f"w{window}-f{number % 3}", f"{number} mm")
        store.save("shared", f"{window}.{number} mm")


@pytest.mark.slow
def test_windows_in_several_processes_lose_nothing(path):
    context = multiprocessing.get_context("spawn")
    windows = [context.Process(target=_save_many, args=(path, w, 12)) for w in range(3)]
    for window in windows:
        window.start()
    for window in windows:
        window.join(60)
        assert window.exitcode == 0
    sheet = read_sheet(path)
    for window in range(3):
        for number in range(3):
            assert sheet.answers[f"w{window}-f{number}"].revision == 4
    assert sheet.answers["shared"].revision == 36
    assert others(path) == []


def test_the_file_is_plain_text_in_the_agreed_form(path):
    Store(path, ANA).save("gap", "1,25 µm")
    data = json.loads(path.read_text(encoding="utf-8"))
    assert set(data) == {
        "format", "course_version", "unit", "cohort", "learner", "module", "attempt",
        "given_digest", "fields",
    }  # fmt: skip
    assert data["fields"]["gap"]["value"] == "1,25 µm"
