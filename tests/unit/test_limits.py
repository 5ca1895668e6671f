"""Time and memory of a piece of work have limits, which come back as a reason, not as a crash."""

import time

import pytest

from twoshaft_grader.cohort import one_sheet
from twoshaft_grader.cohort.limits import TooLong, limits
from twoshaft_grader.cohort.one_sheet import Work, mark_one

resource = pytest.importorskip("resource", reason="limits of Unix")
MB = 2**20


def compute_for_ever(*_):
    while True:
        try:
            sum(range(1000))
        except Exception:  # as a handler of the work itself might
            continue


def take_much(*_):
    return bytearray(800 * MB)


def as_before():
    return resource.getrlimit(resource.RLIMIT_AS)


def test_computing_for_too_long_is_stopped_through_any_handler():
    before = as_before()
    begun = time.process_time()
    with pytest.raises(TooLong), limits(0.1, 500 * MB):
        compute_for_ever()
    assert time.process_time() - begun < 5 and as_before() == before


def test_waiting_is_not_computing():
    with limits(0.05, 500 * MB):
        time.sleep(0.2)


@pytest.mark.slow
def test_too_much_memory_is_stopped_and_given_back():
    before = as_before()
    with pytest.raises(MemoryError), limits(30, 100 * MB):
        take_much()
    assert as_before() == before
    with limits(30, 2000 * MB):
        assert len(take_much()) == 800 * MB


@pytest.mark.parametrize(
    ("work", "limit", "why"),
    [
        (compute_for_ever, ("LONGEST_S", 0.1), "takes more than 0.1 s of computing"),
        (take_much, ("MOST_BYTES", 100 * MB), "takes more than 100 MB of memory"),
    ],
)
def test_marking_comes_back_with_the_reason(monkeypatch, work, limit, why):
    monkeypatch.setattr(one_sheet, "_mark", work)
    monkeypatch.setattr(one_sheet, *limit)
    monkeypatch.setattr(one_sheet, "read_sheet", lambda path: None)
    result = mark_one(Work("a1", "folder", "issued", "notebook", "tarnbeck-b5", False, ""))
    assert result.learner == "a1" and result.sheet is None
    assert result.trouble == f"Could not be marked: it {why}."
