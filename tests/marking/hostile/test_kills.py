"""A command that is killed at any moment, or stopped by a disk that fills up, is finished by the same
command: nothing is lost, doubled or left over. So it is with what a page of the desk does, whose
process is killed. A few tries each in the everyday run; ``TWOSHAFT_KILLS=50`` asks for fifty each,
half of them at a moment, half before a step with a file.
"""

import io
import json
import os
import random
import re
import shutil
import signal
import sys
import time
from contextlib import redirect_stderr, redirect_stdout
from dataclasses import dataclass
from pathlib import Path

import pytest

import twoshaft.units
from twoshaft_grader.cohort import backbone
from twoshaft_grader.cohort.assessors import enter_assessor
from twoshaft_grader.cohort.folder import open_cohort
from twoshaft_grader.cohort.marking_run import mark_here
from twoshaft_grader.cohort.trail import check_trail, read_trail
from twoshaft_grader.desk.commands import main
from twoshaft_grader.desk_pages import take_in
from twoshaft_grader.desk_pages.screen import DeskScreen
from twoshaft_grader.stored.lines import MARK_LINES

pytestmark = pytest.mark.skipif(os.name == "nt", reason="no such signal")
KILLS = int(os.environ.get("TWOSHAFT_KILLS", "2"))
PEOPLE = ("a1", "b2", "c3")
_TIME = re.compile(rb"[0-9]{4}-?[0-9]{2}-?[0-9]{2}[T ]?[0-9]{2}:?[0-9]{2}:?[0-9]{0,2}Z?")
_LEFT_OUT = ("desk/log/", "trail-head", "desk/gradebook.db", "desk/sign-in-slips", "people.json")
_ID = re.compile(rb'"id": "[0-9a-f]{16}"')  # of a mark: made from when it was given


def command(name, root, trial):
    module = trial.name.rpartition("-")[0]
    if name in AT_THE_DESK:
        page, *acts = AT_THE_DESK[name]
        return Acts(root / "desk", page, tuple((act, {"module": module, **t}) for act, t in acts))
    words = {
        "assign": ["module", "assign", module, "--attempt", "2"],
        "collect": ["collect"],
        "mark": ["mark", "--workers", "1"],
        "give-back": ["give-back"],
        "export": ["export"],
        "observe": ["observe", "a1", trial.outcome, "--by", "R. Holm", "--met"],
        "roster": ["roster", "take", str(root.with_name("more.csv"))],
        "extend": ["module", "due", trial.name, "2099-02-01", "--learner", "a1"],
        "give": ["module", "give", f"{module}-2", "--to", "c3"],
        "take-back": ["module", "take-back", f"{module}-2"],
        "move": ["roster", "move", "a1", "b2", "--group", "B"],
        "withdraw": ["roster", "withdraw", "b2"],
        "bring-back": ["roster", "bring-back", "b2"],
        "correct": ["unit", "correct", str(root.with_name("corrected.yaml")), "--why", "longer"],
        "re-mark": [
            "re-mark",
            trial.name,
            "--write",
            "--by",
            "rh",
            "--why",
            "the gap is 13 mm",
            "--content",
            str(root.with_name("corrected")),
        ],
        "give-back again": ["give-back"],
        "open": ["supervised", "open", trial.name, "--room", "Bay 2", "--by", "rh", "--to", "a1",
                 "--to", "b2"],
        "close": ["supervised", "close", "1", "--by", "rh", "--note", "one left early"],
        "adjust": ["adjust", "a1", "--more-days", "3", "--large-print", "--by", "rh",
                   "--why", "reads slowly"],
        "take-out": ["roster", "take-out", "b2", "--yes"],
    }[name]  # fmt: skip
    return [*words, "--cohort", str(root / "desk")]


STAGE = {
    "assign": "handed in", "collect": "handed in", "mark": "collected", "give-back": "marked",
    "export": "marked", "observe": "marked", "roster": "marked", "extend": "marked",
    "give": "further", "take-back": "further", "move": "marked", "withdraw": "marked",
    "bring-back": "withdrawn",
    "correct": "marked", "re-mark": "marked",
    "give-back again": "changed", "take-out": "changed", "adjust": "changed",
    "open": "changed", "close": "sitting",
}  # fmt: skip
# What is done already, these refuse: a kill at the very end left nothing to do.
REFUSED_WHEN_DONE = {"assign", "give", "take-back", "withdraw", "bring-back", "open", "close",
                     "take-out", "hand out"}  # fmt: skip
# Of the desk: the page, and what is pressed on it with what is typed.
AT_THE_DESK = {
    "take in, mark, give back": ("take-in", ("all", {})),
    "hand out": ("hand-out", ("look", {"attempt": "2"}), ("hand-out", {})),
}
# A record of its own under a lock, or steps that another of these takes as well: what fills the disk
# and what runs beside it is tried with these in the long form.
LIKE_ANOTHER = {"give-back again", "take-out", "adjust", "open", "close"}
WITH_OTHERS = [name for name in STAGE if KILLS >= 5 or name not in LIKE_ANOTHER]
ON_A_PAGE = {name: "handed in" for name in AT_THE_DESK}


@dataclass(frozen=True)
class Acts:
    """What somebody does on a page of the desk; as a command, 2 says that it was refused."""

    root: Path
    page: str
    acts: tuple

    def run(self):
        screen = DeskScreen(self.root)
        screen.wait()
        screen.hear({"type": "page", "name": self.page})
        screen.wait()
        for act, typed in self.acts:
            screen.hear({"type": "do", "act": act, "typed": typed})
            screen.wait()
        return 2 if screen.trouble else 0


@pytest.fixture(autouse=True)
def marked_in_this_process(monkeypatch):
    """The desk marks in new processes, which take seconds to begin: the long form has them."""
    if KILLS < 5:
        monkeypatch.setattr(take_in, "marked_apart", lambda works: mark_here(works, 1))


def quietly(arguments):
    if isinstance(arguments, Acts):
        return arguments.run()
    with open(os.devnull, "w") as out, redirect_stdout(out), redirect_stderr(out):
        return main(arguments)


FILE_STEPS = {"os.rename", "os.remove", "os.mkdir", "os.rmdir", "os.link", "os.symlink", "os.chmod"}


class Steps:
    """Counts what this process does with files, and kills it before a given step."""

    def __init__(self, last=0):
        self.count, self.last = 0, last
        sys.addaudithook(self.hear)

    def hear(self, event, about):
        written = os.O_WRONLY | os.O_RDWR | os.O_CREAT
        if event in FILE_STEPS or (event == "open" and (about[2] or 0) & written):
            self.count += 1
            if self.count == self.last:
                os.kill(os.getpid(), signal.SIGKILL)


def forked(arguments, *, last=0, counted=None):
    """Run a command in a copy of this process: all that it needs is loaded, it begins at once.

    last: the step with a file before which it is killed; counted: a file that is told how many such
    steps there were.
    """
    child = os.fork()
    if child == 0:
        code = 99
        try:
            steps = Steps(last) if last or counted else None
            code = quietly(arguments)
            if counted:
                counted.write_text(str(steps.count))
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
    enter_assessor(trial.cohort, "rh", "R. Holm")
    text = (Path(twoshaft.units.__file__).parent / "files" / "tarnbeck-b5.yaml").read_text()
    longer = text.replace('version: "2.0"', 'version: "2.1"').replace("to do: 6", "to do: 8", 1)
    (base / "corrected.yaml").write_text(longer)
    shutil.copytree(trial.cohort.content, base / "corrected")
    (solution,) = (base / "corrected" / "solutions").glob("*.ipynb")
    solution.write_text(solution.read_text().replace("Q(12.5", "Q(13.0"))
    at = ["--cohort", str(base / "live" / "desk")]
    assert quietly(["module", "due", trial.name, "2099-01-01", *at]) == 0
    module = trial.name.rpartition("-")[0]
    further = ["module", "assign", module, "--attempt", "2", "--to", "a1", "--to", "b2", *at]
    change = [
        "change-mark",
        "a1",
        trial.name,
        "gap",
        "2",
        "--by",
        "rh",
        "--why",
        "seen at the bench",
    ]
    for stage, run in (
        ("handed in", ()), ("collected", ["collect", *at]), ("marked", ["mark", *at]),
        ("further", further), ("withdrawn", ["roster", "withdraw", "b2", *at]),
        ("", ["roster", "bring-back", "b2", *at]), ("", ["give-back", *at]), ("changed", [*change, *at]),
        ("sitting", [*command("open", base / "live", trial)]),
    ):  # fmt: skip
        if run:
            assert quietly(run) == 0
        if stage == "sitting":
            trial.hand_in("a1", hours_ago=0, tail="y"), trial.hand_in("c3", hours_ago=0, tail="y")
        if not stage:
            continue
        shutil.copytree(base / "live", base / stage, symlinks=True)
    trial.stages, trial.whole = base, {}
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
        left_out |= path.suffix == ".lock" or any(one.endswith(".part") for one in path.parts)
        if path.is_file() and not left_out:
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
    waiting = [json.loads(path.read_text()) for path in cohort.root.glob("log/under-way/*.json")]
    # done, or cut short and told, now or by the next act
    found["done"] = sorted({one.did for one in acts} | {one["did"] for one in waiting})
    checked = check_trail(cohort.root)
    assert not checked.faults and checked.acts == tuple(acts)
    return found


def started(stages, name, root):
    stage = (STAGE | ON_A_PAGE)[name]
    shutil.copytree(stages.stages / stage, root, symlinks=True)
    for more in {
        "roster": ["more.csv"],
        "correct": ["corrected.yaml"],
        "re-mark": ["corrected"],
    }.get(name, []):
        place = stages.stages / more
        if place.is_file():
            shutil.copyfile(place, root.with_name(more))
        else:
            shutil.copytree(place, root.with_name(more), dirs_exist_ok=True)
    return command(name, root, stages)


@dataclass(frozen=True)
class Whole:
    """What a command leaves that nothing stops, how long it takes [s], its steps with files."""

    state: dict
    takes: float
    steps: int


def whole(stages, name, tmp_path):
    if name not in stages.whole:
        root, counted = tmp_path / "whole", tmp_path / "steps"
        arguments = started(stages, name, root)
        begun = time.monotonic()
        child = forked(arguments, counted=counted)
        assert os.waitstatus_to_exitcode(os.waitpid(child, 0)[1]) == 0
        takes = time.monotonic() - begun
        stages.whole[name] = Whole(state(root), takes, int(counted.read_text()))
    return stages.whole[name]


def finishes(stages, name, arguments, root, wanted, what):
    code = quietly(arguments)
    assert code == 0 or (name in REFUSED_WHEN_DONE and code == 2), what
    assert state(root) == wanted, what


@pytest.mark.parametrize("name", STAGE | ON_A_PAGE)
def test_what_was_killed_is_finished_by_the_same_command(stages, tmp_path, name):
    wanted, seed, killed = whole(stages, name, tmp_path), f"{name}-{KILLS}", 0
    draw = random.Random(seed)
    before = draw.sample(range(1, wanted.steps + 1), min(KILLS // 2, wanted.steps))
    for number in range(KILLS):
        root = tmp_path / f"{number}"
        arguments = started(stages, name, root)
        last = before[number] if number < len(before) else 0
        child = forked(arguments, last=last)
        if not last:
            time.sleep(draw.uniform(0.02, 1.0) * wanted.takes)
            os.kill(child, signal.SIGKILL)
        killed += os.WIFSIGNALED(os.waitpid(child, 0)[1])
        when = f"before step {last} of {wanted.steps}" if last else "at a moment"
        what = f"kill {number} of {name} {when}, seed {seed}"
        finishes(stages, name, arguments, root, wanted.state, what)
        shutil.rmtree(root)
    assert killed >= len(before)


@pytest.mark.parametrize("name", WITH_OTHERS)
def test_what_a_full_disk_stopped_is_finished_when_there_is_room(
    stages, small_disk, tmp_path, name
):
    wanted, draw, stopped = whole(stages, name, tmp_path), random.Random(f"{name}-{KILLS}"), 0
    for number in range(KILLS):
        root, filler = small_disk / f"{number}", small_disk / "filler"
        arguments = started(stages, name, root)
        # nothing, then nothing to 1 MB, mostly little
        spare = 4096 * int(2 ** draw.uniform(0, 8) - 1) if number else 0
        disk = os.statvfs(small_disk)
        filler.write_bytes(bytes(max(0, disk.f_bavail * disk.f_frsize - spare)))
        out, err = io.StringIO(), io.StringIO()
        with redirect_stdout(out), redirect_stderr(err):
            code = main(arguments)
        said, what = err.getvalue(), f"{name} with {spare} bytes left: {out.getvalue()}"
        if code == 2:
            assert said.count("\n") == 1 and str(small_disk) in said, f"{what}{said}"
            assert "make room" in said and ".part" not in said, f"{what}{said}"
        else:  # some could not be done, and are told
            assert code == 0 or (code == 1 and "disk" in out.getvalue()), f"{what}{said}"
        stopped += code != 0
        filler.unlink()
        finishes(stages, name, arguments, root, wanted.state, what)
        shutil.rmtree(root)
        if name == "roster":
            root.with_name("more.csv").unlink()
    assert stopped


@pytest.mark.parametrize("name", WITH_OTHERS)
def test_a_command_beside_another_is_refused_or_does_no_harm(stages, tmp_path, name):
    wanted, both = whole(stages, name, tmp_path), tmp_path / "both"
    arguments = started(stages, name, both)
    children = [forked(arguments) for _ in range(3)]
    codes = {os.waitstatus_to_exitcode(os.waitpid(child, 0)[1]) for child in children}
    assert 0 in codes and codes <= {0, 2}
    assert state(both) == wanted.state
