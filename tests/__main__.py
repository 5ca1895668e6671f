"""Run every test: ``python3 tests``; ``python3 tests --quick`` takes less than a minute.

Makes the environment, then runs the parts that ``parts`` lists: those of one core side by side,
then those of two cores in turn. Some need Debian's chromium and postgresql: what is missing is
installed if this user may, otherwise those tests are skipped and say so.
"""

from __future__ import annotations

import argparse
import os
import shutil
import subprocess
import sys
import tempfile
import time
from collections.abc import Iterable
from concurrent.futures import ThreadPoolExecutor
from dataclasses import dataclass
from pathlib import Path

ROOT = Path(__file__).resolve().parents[1]
sys.path.insert(0, str(ROOT / "course/start"))

import environment  # noqa: E402

CORES = 2
LEFT_OUT = (
    "--quick leaves out: what is marked slow, published figures, notebooks (in step, proven, run), "
    "marking, the browser."
)
PYTEST = ("pytest", "-q", "-p", "no:cacheprovider")
TWO_CORES = ("-n", str(CORES), "--dist", "worksteal")
IN_KERNELS = ("-p", "nbval", "-p", "tests.warm_notebooks", "--nbval-lax")
# Two files at a time: the tests of a file share a JupyterLab, those of two never do.
TWO_BY_FILE = ("-n", str(CORES), "--dist", "loadfile")


@dataclass(frozen=True)
class Part:
    """A part of the tests: its name, its command after ``python -m``, the cores it keeps busy."""

    name: str
    command: tuple[str, ...]
    cores: int = 1


@dataclass(frozen=True)
class Done:
    """A part that was run: its exit code, and what it took of the clock and of the processor [s]."""

    part: Part
    code: int
    seconds: float
    cpu_seconds: float | None

    @property
    def verdict(self) -> str:
        """Whether it passed."""
        return "passed" if self.code == 0 else "FAILED"


def parts(*, quick: bool, browser: bool) -> list[Part]:
    """The parts to run. A new one, such as another checker, is one more line here."""
    checks = [
        Part("style", ("ruff", "check", ".")),
        Part("types", ("mypy",)),
        Part("browser code", ("course.browser.make", "check")),
    ]
    if quick:
        picked = (
            "-m",
            "not slow and not browser and not bench and not long",
            "tests/unit",
            "tests/properties",
        )
        return [*checks, Part("units and properties", (*PYTEST, *TWO_CORES, *picked), CORES)]
    notebooks = sorted(
        str(path.relative_to(ROOT))
        for folder in ("course/lessons", "solutions")
        for path in (ROOT / folder).glob("*.ipynb")
    )
    whole = [
        *checks,
        Part("notebooks in step, solutions proven", ("twoshaft_grader.notebooks", "compare")),
        Part("notebooks run", (*PYTEST, *IN_KERNELS, *notebooks)),
        Part("tests", (*PYTEST, *TWO_CORES, "-m", "not browser and not bench and not long"), CORES),
    ]
    if browser:
        whole.append(
            Part("browser", (*PYTEST, *TWO_BY_FILE, "-m", "browser", "tests/browser"), CORES)
        )
    return whole


def run(part: Part, python: str, *, live: bool) -> Done:
    """Run a part; its output is shown as it comes, or in one piece at its end."""
    # Every worker and every kernel imports the course: compiled once, it starts sooner. Matrices
    # are small: threads of their own would only get into the way of the two workers.
    env = {key: value for key, value in os.environ.items() if key != "PYTHONDONTWRITEBYTECODE"}
    env |= dict.fromkeys(("OPENBLAS_NUM_THREADS", "OMP_NUM_THREADS"), "1")
    begun, cpu = time.monotonic(), None
    with tempfile.TemporaryFile() as kept:
        output = {} if live else {"stdout": kept, "stderr": subprocess.STDOUT}
        if live:
            print(f"\n== {part.name}", flush=True)
        process = subprocess.Popen([python, "-m", *part.command], cwd=ROOT, env=env, **output)
        if hasattr(os, "wait4"):  # what it took of the processor, its own children's included
            _, status, used = os.wait4(process.pid, 0)
            process.returncode = os.waitstatus_to_exitcode(status)
            cpu = used.ru_utime + used.ru_stime
        done = Done(part, process.wait(), time.monotonic() - begun, cpu)
        kept.seek(0)
        said = "" if live else f"\n== {part.name}\n{kept.read().decode(errors='replace')}"
    print(f"{said}== {part.name}: {done.verdict} in {done.seconds:.0f} s", flush=True)
    return done


def run_all(wanted: Iterable[Part], python: str) -> list[Done]:
    """Run parts of one core side by side, then the others in turn, until something fails."""
    wanted = list(wanted)
    one_core = [part for part in wanted if part.cores == 1]
    with ThreadPoolExecutor(CORES) as pool:
        done = list(pool.map(lambda part: run(part, python, live=False), one_core))
    for part in wanted:
        if part.cores > 1 and all(one.code == 0 for one in done):
            done.append(run(part, python, live=True))
    return done


def table(done: list[Done]) -> str:
    """What each part took: by the clock, and of the processor where that is known."""
    lines = [f"{'part':<38}{'seconds':>9}{'processor':>11}"]
    for one in done:
        cpu = "" if one.cpu_seconds is None else f"{one.cpu_seconds:.0f}"
        lines.append(f"{one.part.name:<38}{one.seconds:>9.0f}{cpu:>11}  {one.verdict}")
    return "\n".join(lines)


def present(program: str, *packages: str) -> bool:
    """Find a program, or install Debian's packages of it where apt-get is at hand and this user is
    root."""
    if found(program):
        return True
    if shutil.which("apt-get") and hasattr(os, "geteuid") and os.geteuid() == 0:
        print(f"Installing {packages[0]} for the tests ...", flush=True)
        quiet = {"stdout": subprocess.DEVNULL}
        subprocess.run(["apt-get", "update", "-qq"], **quiet)
        subprocess.run(
            ["apt-get", "install", "-y", "-qq", "--no-install-recommends", *packages],
            env={**os.environ, "DEBIAN_FRONTEND": "noninteractive"}, **quiet,
        )  # fmt: skip
    return found(program)


def found(program: str) -> bool:
    """Whether a program is here; those of a PostgreSQL server are where Debian puts them."""
    return bool(shutil.which(program) or [*Path("/usr/lib/postgresql").glob(f"*/bin/{program}")])


def main() -> int:
    """Run the parts and say what each took."""
    parser = argparse.ArgumentParser(prog="python3 tests", description=__doc__)
    parser.add_argument(
        "--quick", action="store_true", help="style, types, units and properties only"
    )
    parser.add_argument("--no-browser", action="store_true", help="leave out the browser tests")
    options = parser.parse_args()
    python = str(environment.make("[dev]"))
    browser = False
    if options.quick:
        print(LEFT_OUT)
    elif options.no_browser:
        print("Browser tests are left out, as asked.")
    elif present("chromium", "chromium", "fonts-dejavu-core"):
        browser = True
    elif os.environ.get("CI"):
        print("chromium is missing and cannot be installed: in CI the browser tests must run.")
        return 1
    else:
        print("SKIPPED: browser tests, since chromium is missing (Debian: apt install chromium).")
    if not options.quick and not present("bwrap", "bubblewrap"):
        print("SKIPPED: tests of code tasks, since bubblewrap is missing.")
    if not options.quick and not present("initdb", "postgresql"):
        if os.environ.get("CI"):
            print("PostgreSQL is missing and cannot be installed: in CI its tests must run.")
            return 1
        print("SKIPPED: tests on PostgreSQL, since it is missing (Debian: apt install postgresql).")
    begun = time.monotonic()
    done = run_all(parts(quick=options.quick, browser=browser), python)
    print(f"\n{table(done)}\n{time.monotonic() - begun:.0f} s in all")
    return next((one.code for one in done if one.code), 0)


if __name__ == "__main__":
    sys.exit(main())
