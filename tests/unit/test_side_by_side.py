"""Long jobs in copies of the process: told in their order, past what ends a copy."""

import os
import time

import pytest

from twoshaft_grader.cohort import side_by_side

pytestmark = pytest.mark.skipif(not hasattr(os, "fork"), reason="no copies of a process here")


@pytest.fixture(params=[1, 2, 4])
def run(request, monkeypatch):
    monkeypatch.setattr(side_by_side, "_processors", lambda: request.param)
    return side_by_side.side_by_side


@pytest.mark.slow
def test_what_they_come_to_is_told_in_their_order(run):
    def work(job):
        time.sleep(0.02 * (5 - job))
        return job, os.getpid()

    found = list(run(work, range(5)))
    assert [job for job, _ in found] == list(range(5))
    assert (os.getpid() in {process for _, process in found}) == (side_by_side._processors() == 1)


@pytest.mark.slow
def test_a_copy_that_ends_takes_its_own_job_alone(monkeypatch):
    monkeypatch.setattr(side_by_side, "_processors", lambda: 2)

    def work(job):
        if job in (1, 2):
            os._exit(3)
        return job

    assert list(side_by_side.side_by_side(work, range(6))) == [0, None, None, 3, 4, 5]


@pytest.mark.slow
def test_no_copy_is_left_where_nobody_asks_on(monkeypatch):
    monkeypatch.setattr(side_by_side, "_processors", lambda: 2)
    found = side_by_side.side_by_side(lambda job: os.getpid(), range(6))
    process = next(found)
    found.close()
    with pytest.raises(ProcessLookupError):
        os.kill(process, 0)


def test_nothing_to_do_is_done(run):
    assert list(run(str, [])) == []
