"""Marking on a real Dask scheduler with workers on loopback: equal marks, whoever is killed."""

import io
import json
import os
import shutil
import subprocess
import sys
import time
from contextlib import redirect_stderr, redirect_stdout
from dataclasses import asdict

import psutil
import pytest

from twoshaft.errors import CohortError
from twoshaft_grader.cohort import cluster, far_marking, far_parcel, files
from twoshaft_grader.cohort.assign import read_assigned
from twoshaft_grader.cohort.cluster import Cluster
from twoshaft_grader.cohort.intake import roster_of
from twoshaft_grader.cohort.marking_run import mark_assignment, work_of
from twoshaft_grader.cohort.marks import read_mark
from twoshaft_grader.desk.commands import main

pytestmark = [pytest.mark.slow, pytest.mark.skipif(os.name == "nt", reason="signals of Unix")]
LEARNERS = tuple(f"a{number}" for number in range(8))
PATIENCE_S = 120
WRONG = {"gap-size": "11 mm", "gap-first": "clean"}


def run(*arguments):
    out, err = io.StringIO(), io.StringIO()
    with redirect_stdout(out), redirect_stderr(err):
        code = main([str(argument) for argument in arguments])
    return code, out.getvalue(), err.getvalue()


class Machines:
    """A scheduler and its workers, each a program of its own."""

    def __init__(self, folder):
        self.folder, self.workers = folder, []
        about = folder / "scheduler.json"
        self.scheduler = self.start(
            "scheduler", "--host", "127.0.0.1", "--port", "0", "--no-dashboard",
            "--scheduler-file", about,
        )  # fmt: skip
        wait(about.exists)
        self.address = json.loads(about.read_text())["address"]

    def start(self, what, *words):
        command = [sys.executable, "-m", "dask", what, *map(str, words)]
        return subprocess.Popen(
            command, cwd=self.folder, stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL
        )

    def signed_on(self):
        """Wait until every worker has."""
        from distributed import Client

        with Client(self.address, set_as_default=False) as client:
            client.wait_for_workers(len(self.workers), timeout=PATIENCE_S)

    def worker(self):
        program = self.start(
            "worker", self.address, "--no-nanny", "--nthreads", "1", "--no-dashboard",
            "--local-directory", self.folder,
        )  # fmt: skip
        self.workers.append(program)
        return program

    def stop(self):
        for program in (*self.workers, self.scheduler):
            program.kill()
            program.wait()


def wait(true):
    end = time.monotonic() + PATIENCE_S
    while not true():
        assert time.monotonic() < end, "waited in vain"
        time.sleep(0.05)


@pytest.fixture(scope="module")
def machines(tmp_path_factory):
    made = Machines(tmp_path_factory.mktemp("machines"))
    try:
        made.worker(), made.worker()
        made.signed_on()
        yield made
    finally:
        made.stop()


@pytest.fixture(scope="module")
def collected(handed_out, tmp_path_factory):
    """Eight hand-ins of different kinds: right, wrong, damaged, a link, too large, none."""
    trial = handed_out(tmp_path_factory.mktemp("cluster") / "live", LEARNERS)
    for number, learner in enumerate(LEARNERS[:-1]):
        trial.hand_in(learner, **({"answers": WRONG} if number % 2 else {}))
    assert run("collect", "--cohort", trial.cohort.root)[0] == 0
    sheet = trial.cohort.submitted("a0", trial.name) / "jobsheet.json"
    record = json.loads((trial.cohort.root / f"collected/{trial.name}/a0.json").read_text())
    assert record and sheet.exists()
    return trial


@pytest.fixture
def trial(collected, tmp_path):
    shutil.copytree(collected.base, tmp_path / "copy")
    return type(collected)(tmp_path / "copy")


def sheets(trial):
    found = {}
    for learner in LEARNERS:
        mark = read_mark(trial.cohort.mark_file(learner, trial.name))
        found[learner] = mark and (mark.state, mark.reason, mark.sheet and asdict(mark.sheet))
    return found


@pytest.fixture(scope="module")
def marked_here(collected, tmp_path_factory):
    base = tmp_path_factory.mktemp("here")
    shutil.copytree(collected.base, base / "copy")
    trial = type(collected)(base / "copy")
    assert run("mark", "--cohort", trial.cohort.root)[0] == 0
    return sheets(trial)


def logged(trial):
    return [line["learner"] for line in files.read_lines(trial.cohort.log("marks"))]


def test_the_marks_are_those_of_the_command_alone(trial, machines, marked_here):
    code, out, err = run("mark", "--scheduler", machines.address, "--cohort", trial.cohort.root)
    assert (code, err) == (0, "") and "7 marked" in out
    assert sheets(trial) == marked_here
    assert sorted(logged(trial)) == sorted(LEARNERS[:-1])
    code, out, _ = run("mark", "--scheduler", machines.address, "--cohort", trial.cohort.root)
    assert code == 0 and "7 as before" in out and sheets(trial) == marked_here


def test_damaged_sheets_are_told_as_ever(trial, machines):
    assigned = read_assigned(trial.cohort, trial.name)
    from twoshaft_grader.cohort.one_sheet import mark_one

    works = {learner: work_of(trial.cohort, assigned, learner) for learner in LEARNERS[:5]}
    for learner, change in {
        "a0": lambda sheet: sheet.write_text("{"),
        "a1": lambda sheet: sheet.symlink_to("/etc/hostname"),
        "a2": lambda sheet: sheet.write_bytes(b"\xff\xfe"),
        "a3": lambda sheet: sheet.write_text("[" * 100_000),
    }.items():
        sheet = trial.cohort.submitted(learner, trial.name) / "jobsheet.json"
        sheet.unlink()
        change(sheet)
    with Cluster(machines.address) as far:
        told = {result.learner: result for result in far.marked(list(works.values()))}
    assert told == {learner: mark_one(work) for learner, work in works.items()}
    assert not told["a4"].trouble and all(told[f"a{n}"].trouble for n in range(4))


def slow(trial):
    """The same solution, taking its time: long enough for somebody to be killed over it."""
    source = trial.cohort.source(trial.name) / f"{trial.notebook}.ipynb"
    text = source.read_text()
    assert text.count('ref(\\"gap-size\\"') == 1
    source.write_text(
        text.replace('ref(\\"gap-size\\"', 'import time; time.sleep(0.3); ref(\\"gap-size\\"')
    )


def test_a_worker_killed_midway_loses_and_doubles_nothing(trial, machines, marked_here):
    slow(trial)
    steps = []

    def step():
        steps.append(1)
        if len(steps) == 3:
            machines.workers[0].kill()

    assigned = read_assigned(trial.cohort, trial.name)
    with Cluster(machines.address) as far:
        done = mark_assignment(
            trial.cohort, assigned, roster_of(trial.cohort), marked=far.marked, step=step
        )
    assert machines.workers.pop(0).wait() != 0
    assert [one.state for one in done] == ["marked"] * 7 + ["not handed in"]
    assert sorted(logged(trial)) == sorted(LEARNERS[:-1])  # each once
    assert {who: one and one[2]["tasks"] for who, one in sheets(trial).items()} == {
        who: one and one[2]["tasks"] for who, one in marked_here.items()
    }


def test_a_sheet_that_ends_the_program_ends_no_worker(trial, machines):
    works_here = works(trial)
    common = far_parcel.assignment_parcel(works_here[0], {})
    ending = common.replace('ref(\\\\\\"gap-size', 'import os; os._exit(9); ref(\\\\\\"gap-size')
    assert ending != common
    parcel = far_parcel.sheet_parcel(works_here[0])
    with Cluster(machines.address) as far:
        pids = far._client.run(os.getpid)
        told = far._client.submit(far_marking.mark_parcel, ending, parcel).result()
        assert far_parcel.plain_result(told)[1].trouble == far_marking.ENDS
        assert not [result.trouble for result in far.marked(works_here) if result.trouble]
        assert far._client.run(os.getpid) == pids


def test_nobody_outlives_a_killed_worker(trial, machines):
    worker = machines.worker()
    machines.signed_on()
    [work] = works(trial)[:1]
    parcels = far_parcel.assignment_parcel(work, {}), far_parcel.sheet_parcel(work)
    with Cluster(machines.address) as far:
        pids = far._client.run(os.getpid)
        [here] = [address for address, pid in pids.items() if pid == worker.pid]
        far._client.submit(far_marking.mark_parcel, *parcels, workers=[here]).result()
    marks = [
        one for one in psutil.Process(worker.pid).children() if "far_child" in one.cmdline()[-1]
    ]
    worker.kill()
    worker.wait()
    machines.workers.remove(worker)
    assert len(marks) == 1 and not psutil.wait_procs(marks, timeout=PATIENCE_S)[1]


def said(trial, address):
    code, _, err = run("mark", "--scheduler", address, "--cohort", trial.cohort.root)
    assert code == 2 and err.count("\n") == 1, err
    return err


def test_a_wrong_address_is_one_sentence(trial, monkeypatch):
    monkeypatch.setattr(cluster, "CONNECT_S", 1.0)
    for address in ("tcp://127.0.0.1:1", "nowhere", "tcp://127.0.0.1:many", "http://127.0.0.1:1"):
        assert f"no scheduler answers at {address}" in said(trial, address)
    monkeypatch.setattr(cluster, "find_spec", lambda _: None)
    assert "not installed" in said(trial, "tcp://127.0.0.1:1")
    assert not logged(trial)


def test_another_version_is_refused(trial, machines, monkeypatch):
    monkeypatch.setattr(cluster, "difference", other_code)
    told = said(trial, machines.address)
    assert "is not of the same version as this machine: course's code 0123 (here " in told
    assert told.startswith("the worker tcp://") and not logged(trial)


def test_a_worker_of_another_version_that_comes_midway_is_refused(trial, machines, monkeypatch):
    with Cluster(machines.address) as far:
        monkeypatch.setattr(cluster, "difference", other_code)
        with pytest.raises(CohortError, match=r"a worker is not .* code 0123 .* goes on with the"):
            list(far.marked(works(trial)))


def other_code(theirs):
    """As if every worker had other code."""
    return far_marking.difference({**theirs, "course's code": "0123"})


def works(trial):
    assigned = read_assigned(trial.cohort, trial.name)
    return [work_of(trial.cohort, assigned, learner) for learner in LEARNERS[:3]]


def test_a_scheduler_that_goes_midway_is_one_sentence_and_what_is_marked_stays(
    trial, tmp_path, monkeypatch
):
    monkeypatch.setattr(cluster, "CONNECT_S", 2.0)
    slow(trial)
    (tmp_path / "own").mkdir()
    own = Machines(tmp_path / "own")
    try:
        assert "no worker has signed on" in said(trial, own.address)
        own.worker()
        own.signed_on()
        steps = []

        def step():
            steps.append(1)
            if len(steps) == 3:
                own.scheduler.kill()

        assigned = read_assigned(trial.cohort, trial.name)
        with (
            Cluster(own.address) as far,
            pytest.raises(CohortError, match=r"the scheduler at .* is gone; .* goes on"),
        ):
            mark_assignment(
                trial.cohort, assigned, roster_of(trial.cohort), marked=far.marked, step=step
            )
    finally:
        own.stop()
    before = logged(trial)
    assert 1 <= len(before) < 7
    assert run("mark", "--cohort", trial.cohort.root)[0] == 0  # without it, as well
    assert sorted(logged(trial)) == sorted(LEARNERS[:-1])


def test_when_the_last_worker_goes_it_is_told(trial, tmp_path, monkeypatch):
    monkeypatch.setattr(cluster, "NOBODY_S", 0.5)
    monkeypatch.setattr(cluster, "LOOK_S", 0.5)
    slow(trial)
    (tmp_path / "own").mkdir()
    own = Machines(tmp_path / "own")
    try:
        own.worker()
        own.signed_on()
        with Cluster(own.address) as far, pytest.raises(CohortError, match="no worker is left"):
            for _ in far.marked(works(trial)):
                own.workers[0].kill()
    finally:
        own.stop()
