"""Mark many sheets both ways: with ``twoshaft``, and with nbgrader as it comes.

Makes cohorts of invented apprentices with believable sheets in a temporary folder, marks them and
gives feedback back with the commands that an instructor types, and a few of them with stock
``nbgrader autograde`` and ``nbgrader generate_feedback`` on the same machine. Checks that both
give the same points, and prints processor time, wall time and memory a sheet, how they grow from
N to ten times N sheets, and how many times faster ours is::

    .venv/bin/python tests/bench/marking.py --module order-of-work --sheets 100
    .venv/bin/python tests/bench/marking.py --sheets 20 --no-growth --stock 0   # every module
"""

from __future__ import annotations

import argparse
import compileall
import json
import os
import shutil
import subprocess
import sys
import tempfile
import time
from collections.abc import Sequence
from concurrent.futures import ProcessPoolExecutor
from dataclasses import dataclass
from datetime import UTC, datetime, timedelta
from functools import partial
from importlib.resources import files as files_of
from pathlib import Path

from twoshaft.readings import MODULES
from twoshaft.stored.job_sheet import FILE as SHEET
from twoshaft_grader.cohort import backbone, files
from twoshaft_grader.cohort.assign import Assigned, assign, assigned_unit
from twoshaft_grader.cohort.content import find_content
from twoshaft_grader.cohort.folder import Cohort, make_cohort, open_cohort
from twoshaft_grader.cohort.intake import roster_of, take_in
from twoshaft_grader.cohort.roster import Learner
from twoshaft_grader.cohort.scores import task_scores
from twoshaft_grader.desk.demo_answers import demo_answers, sheet_text
from twoshaft_grader.desk.demo_people import Way
from twoshaft_grader.marking import load_solution

WAYS = (Way.SLIPS, Way.ODD_UNITS, Way.NEARLY, Way.UNFINISHED, Way.DAMAGED, Way.RIGHT)
"""How the apprentices fare, in turn."""
TOOLS = Path(sys.executable).parent


@dataclass(frozen=True)
class Cost:
    """What a command cost for so many sheets: processor and wall time [s], its largest process
    [bytes]."""

    sheets: int
    cpu_s: float
    wall_s: float
    memory: int

    @property
    def each_s(self) -> float:
        """Processor time a sheet [s]."""
        return self.cpu_s / self.sheets

    def __str__(self) -> str:
        return (
            f"{self.sheets} sheets: {self.cpu_s:.1f} s of processor, {1000 * self.each_s:.0f} ms a "
            f"sheet; {self.wall_s:.1f} s in all; largest process {self.memory / 1e6:.0f} MB"
        )


WATCH = """
import json, resource, subprocess, sys
with open(sys.argv[1], "wb") as said:
    code = subprocess.call(sys.argv[2:], stdout=said, stderr=subprocess.STDOUT)
used = resource.getrusage(resource.RUSAGE_CHILDREN)
print(json.dumps([code, used.ru_utime + used.ru_stime, used.ru_maxrss]))
"""
"""Runs a command from a small process: what a process held at most is never told below what the
one that started it held."""


def run(command: Sequence[str], sheets: int, folder: Path) -> Cost:
    """Run a command to its end; RuntimeError with what it said when it fails."""
    environment = dict(os.environ, PATH=f"{TOOLS}{os.pathsep}{os.environ['PATH']}")
    # On a user's machine what was imported once is compiled.
    environment.pop("PYTHONDONTWRITEBYTECODE", None)
    with tempfile.NamedTemporaryFile() as said:
        start = time.perf_counter()
        watched = subprocess.run(
            [sys.executable, "-S", "-c", WATCH, said.name, *command],
            cwd=folder, env=environment, stdout=subprocess.PIPE, check=True,
        )  # fmt: skip
        wall = time.perf_counter() - start
        code, cpu, memory = json.loads(watched.stdout)
        if code:
            raise RuntimeError(
                f"{' '.join(command)}\n{Path(said.name).read_text('utf-8', 'replace')}"
            )
    unit = 1 if sys.platform == "darwin" else 1024
    return Cost(sheets, cpu, wall, memory * unit)


def twoshaft(cohort: Cohort, sheets: int, *words: str) -> Cost:
    """Run one of our commands on a cohort."""
    return run([str(TOOLS / "twoshaft"), *words, "--cohort", str(cohort.root)], sheets, cohort.root)


def stock(cohort: Cohort, sheets: int, *words: str) -> Cost:
    """Run one of nbgrader's commands on a cohort folder."""
    return run([str(TOOLS / "nbgrader"), *words], sheets, cohort.root)


def make_group(root: Path, module: str, sheets: int) -> tuple[Cohort, Assigned]:
    """Make a cohort to whom a module is handed out and of whom every sheet is collected."""
    cohort = make_cohort(root, id=root.name, name="Bench (invented)", salt="bench", college="Bench")
    learners = [Learner(f"b{n:04}", f"Family {n}", f"Given {n}", "A") for n in range(sheets)]
    take_in(cohort, learners)
    due = datetime.now(UTC) + timedelta(days=1)
    assigned = assign(cohort, find_content(""), module, attempt=1, due=due, learners=learners)
    work = partial(_hand_in, cohort.root, assigned, datetime.now(UTC))
    with ProcessPoolExecutor() as pool:
        list(pool.map(work, range(sheets), chunksize=8))
    return cohort, assigned


def _hand_in(root: Path, assigned: Assigned, moment: datetime, number: int) -> None:
    """Put one apprentice's work where collecting puts it, and their own copy into the workplace."""
    cohort, learner = open_cohort(root), f"b{number:04}"
    issued = files.read_json(cohort.issued(learner, assigned.name))
    solution = load_solution(cohort.source(assigned.name) / assigned.notebook)
    answers = demo_answers(
        WAYS[number % len(WAYS)], solution, issued, assigned_unit(cohort, assigned)
    )
    for place in (
        cohort.submitted(learner, assigned.name),
        cohort.place(learner, assigned.name),
    ):
        shutil.copytree(cohort.outbound(assigned.name), place, dirs_exist_ok=True)
        files.write_whole(place / SHEET, sheet_text(answers, issued, cohort, moment))
        files.write_whole(place / "timestamp.txt", f"{moment:%Y-%m-%d %H:%M:%S.%f} UTC")
        files.write_whole(place / "submission_secret.txt", f"{number:032x}")


def points(cohort: Cohort, assigned: Assigned, learners: Sequence[str]) -> dict[str, dict]:
    """Points of each task in the gradebook, by learner."""
    with backbone.gradebook(cohort) as book:
        return {
            learner: {task: score.auto for task, score in scores.items()}
            for learner, scores in task_scores(book, assigned).items()
            if learner in learners
        }


def grown(what: str, few: Cost, many: Cost) -> str:
    """How a cost a sheet and the memory change with ten times the sheets."""
    more_time = 100 * (many.each_s / few.each_s - 1)
    more_memory = 100 * (many.memory / few.memory - 1)
    return (
        f"  {what}, from {few.sheets} to {many.sheets} sheets: processor time a sheet "
        f"{more_time:+.0f} %, memory {more_memory:+.0f} %"
    )


def measure(module: str, sheets: int, with_stock: int, growth: bool, folder: Path) -> None:
    """Print what one module's sheets cost."""
    print(module, flush=True)
    cohort, assigned = make_group(folder / f"{module}-few", module, sheets)
    if with_stock:
        twin = folder / f"{module}-stock"
        shutil.copytree(cohort.root, twin, symlinks=True)
        for learner in roster_of(cohort)[with_stock:]:
            shutil.rmtree(open_cohort(twin).submitted(learner.id, assigned.name))
    few = {words: twoshaft(cohort, sheets, words) for words in ("mark", "give-back")}
    for words, cost in few.items():
        print(f"  {words:9} {cost}", flush=True)
    if with_stock:
        theirs = open_cohort(twin)
        costs = [
            stock(theirs, with_stock, words, assigned.name)
            for words in ("autograde", "generate_feedback")
        ]
        compared = [learner.id for learner in roster_of(cohort)[:with_stock]]
        if points(cohort, assigned, compared) != points(theirs, assigned, compared):
            raise AssertionError(f"{module}: stock nbgrader gives other points")
        for words, cost in zip(("autograde", "feedback"), costs, strict=True):
            print(f"  nbgrader {words} {cost}")
        ratio = sum(cost.each_s for cost in costs) / sum(cost.each_s for cost in few.values())
        wall = sum(cost.wall_s / cost.sheets for cost in costs) / sum(
            cost.wall_s / cost.sheets for cost in few.values()
        )
        print(
            f"  equal points; {ratio:.0f} times faster by processor time, {wall:.0f} by the clock"
        )
    if growth:
        cohort, _ = make_group(folder / f"{module}-many", module, 10 * sheets)
        for words, cost in few.items():
            many = twoshaft(cohort, 10 * sheets, words)
            print(f"  {words:9} {many}")
            print(grown(words, cost, many), flush=True)


def main() -> None:
    """Read what is wanted from the command line and measure it."""
    ask = argparse.ArgumentParser(description=__doc__.splitlines()[0])
    ask.add_argument("--module", action="append", choices=MODULES, help="may be given again")
    ask.add_argument("--sheets", type=int, default=100)
    ask.add_argument("--stock", type=int, default=4, help="sheets that stock nbgrader marks too")
    ask.add_argument("--growth", action=argparse.BooleanOptionalAction, default=True)
    wanted = ask.parse_args()
    for package in ("twoshaft", "twoshaft_grader"):  # else the first command compiles them
        compileall.compile_dir(str(files_of(package)), quiet=1)
    for module in wanted.module or MODULES:
        with tempfile.TemporaryDirectory(prefix="twoshaft-bench-") as folder:
            measure(
                module, wanted.sheets, min(wanted.stock, wanted.sheets), wanted.growth, Path(folder)
            )


if __name__ == "__main__":
    main()
