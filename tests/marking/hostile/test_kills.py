"""A command that is killed at any moment is finished by the same command: nothing is lost, doubled
or left over. A few kills each in the everyday run; ``TWOSHAFT_KILLS=50`` asks for fifty each.
"""

import os
import random
import re
import shutil
import signal
import time
from contextlib import redirect_stderr, redirect_stdout

import pytest

from twoshaft_grader.cohort import backbone
from twoshaft_grader.cohort.folder import open_cohort
from twoshaft_grader.cohort.trail import check_trail, read_trail
from twoshaft_grader.desk.commands import main
from twoshaft_grader.stored.lines import MARK_LINES

pytestmark = pytest.mark.skipif(os.name == "nt", reason="no such signal")
KILLS = int(os.environ.get("TWOSHAFT_KILLS", "2"))
PEOPLE = ("a1", "b2", "c3")
_TIME = re.compile(rb"[0-9]{4}-?[0-9]{2}-?[0-9]{2}[T ]?[0-9]{2}:?[0-9]{2}:?[0-9]{0,2}Z?")
_LEFT_OUT = ("desk/log/", "trail-head", "desk/gradebook.db", "desk/sign-in-slips", "people.json")
_ID = re.compile(rb'"id": "[0-9a-f]{16}"')  # of a mark: made from when it was given


def command(name, root, trial):
    module = trial.name.rpartition("-")[0]
    words = {
        "assign": ["module", "assign", module, "--attempt", "2"],
        "collect": ["collect"],
        "mark": ["mark", "--workers", "1"],
        "give-back": ["give-back"],
        "export": ["export"],
        "observe": ["observe", "a1", trial.outcome, "--by", "R. Holm", "--met"],
        "roster": ["roster", "take", str(root.with_name("more.csv"))],
        "extend": ["module", "due", trial.name, "2099-02-01", "--learner", "a1"],
    }[name]
    return [*words, "--cohort", str(root / "desk")]


STAGE = {
    "assign": "handed in", "collect": "handed in", "mark": "collected", "give-back": "marked",
    "export": "marked", "observe": "marked", "roster": "marked", "extend": "marked",
}  # fmt: skip


def quietly(arguments):
    with open(os.devnull, "w") as out, redirect_stdout(out), redirect_stderr(out):
        return main(arguments)


def forked(arguments):
    """Run a command in a copy of this process: all that it needs is loaded, it begins at once."""
    child = os.fork()
    if child == 0:
        code = 99
        try:
            code = quietly(arguments)
        finally:
            os._exit(code)
    return child


@pytest.fixture(scope="module")
def stages(handed_out, tmp_path_factory):
    base = tmp_path_factory.mktemp("kills")
    trial = handed_out(base / "live", PEOPLE)
    for hours in (3.0, 2.0):  # the second of each is the one that counts
        for learner in PEOPLE:
            trial.hand_in(learner, hours_ago=hours, tail=f"x{hours:g}")
            trial.cohort.place(learner, trial.name).mkdir(parents=True, exist_ok=True)
    (base / "more.csv").write_text("id,family name,given name\nd4,Ek,Di\n")
    date = ["module", "due", trial.name, "2099-01-01", "--cohort", str(base / "live" / "desk")]
    assert quietly(date) == 0
    for stage, run in (("handed in", ""), ("collected", "collect"), ("marked", "mark")):
        if run:
            assert quietly(command(run, base / "live", trial)) == 0
        shutil.copytree(base / "live", base / stage, symlinks=True)
    trial.stages = base
    return trial


def state(root):
    """Everything in a cohort folder and its shared place, without times; of the gradebook, what it
    says.
    """
    cohort = open_cohort(root / "desk")
    found = {}
    for path in sorted(root.rglob("*")):
        name = path.relative_to(root).as_posix()
        left_out = any(one in name for one in _LEFT_OUT)
        if path.is_file() and not left_out and path.suffix not in (".lock", ".part"):
            text = path.read_bytes().replace(os.fsencode(root), b"ROOT")
            found[_TIME.sub(b"", os.fsencode(name))] = _TIME.sub(b"", _ID.sub(b"", text))
    with backbone.gradebook(cohort) as book:
        found["people"] = sorted(one.id for one in book.students)
        found["scores"] = sorted(
            (sub.student.id, sub.assignment.name, sub.score, sub.max_score)
            for assignment in book.assignments
            for sub in assignment.submissions
        )
        found["assignments"] = sorted(
            (one.name, len(one.notebooks), one.max_score) for one in book.assignments
        )
    found["audit"] = sorted(line.learner for line in MARK_LINES.read(cohort.log("marks")))
    acts = [line.act for line in read_trail(cohort.root)]
    found["done"] = sorted({one.did for one in acts})  # done, or cut short and told
    checked = check_trail(cohort.root)
    assert not checked.faults and checked.acts == tuple(acts)
    return found


def started(stages, name, root):
    shutil.copytree(stages.stages / STAGE[name], root, symlinks=True)
    if name == "roster":
        shutil.copyfile(stages.stages / "more.csv", root.with_name("more.csv"))
    return command(name, root, stages)


@pytest.mark.parametrize("name", STAGE)
def test_what_was_killed_is_finished_by_the_same_command(stages, tmp_path, name):
    whole = tmp_path / "whole"
    arguments = started(stages, name, whole)
    begun = time.monotonic()
    assert os.waitstatus_to_exitcode(os.waitpid(forked(arguments), 0)[1]) == 0
    takes = time.monotonic() - begun
    wanted, seed, killed = state(whole), f"{name}-{KILLS}", 0
    draw = random.Random(seed)
    for number in range(KILLS):
        root = tmp_path / f"{number}"
        arguments = started(stages, name, root)
        child = forked(arguments)
        time.sleep(draw.uniform(0.02, 1.0) * takes)
        os.kill(child, signal.SIGKILL)
        killed += os.WIFSIGNALED(os.waitpid(child, 0)[1])
        code = quietly(arguments)
        # Only an assignment that is out already is refused: then nothing was left to do.
        assert code == 0 or (name == "assign" and code == 2)
        assert state(root) == wanted, f"kill {number} of {name}, seed {seed}"
        shutil.rmtree(root)
    assert killed or KILLS < 5


@pytest.mark.parametrize("name", ["collect", "mark", "give-back", "export", "extend"])
def test_a_command_beside_another_is_refused_or_does_no_harm(stages, tmp_path, name):
    whole, both = tmp_path / "whole", tmp_path / "both"
    assert quietly(started(stages, name, whole)) == 0
    arguments = started(stages, name, both)
    children = [forked(arguments) for _ in range(3)]
    codes = {os.waitstatus_to_exitcode(os.waitpid(child, 0)[1]) for child in children}
    assert 0 in codes and codes <= {0, 2}
    assert state(both) == state(whole)
