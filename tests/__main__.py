"""Run every test: ``python3 tests``.

Makes the environment, then checks style and notebooks, runs the unit, property, published,
notebook, marking and browser tests. Browser tests need Debian's chromium: where it is
missing it is installed if this user may, otherwise those tests are skipped and say so.
"""

from __future__ import annotations

import argparse
import os
import shutil
import subprocess
import sys
import time
from pathlib import Path

ROOT = Path(__file__).resolve().parents[1]
sys.path.insert(0, str(ROOT / "course/start"))

import environment  # noqa: E402


def browser_present() -> bool:
    """Find chromium, or install it where apt-get is at hand and this user is root."""
    if shutil.which("chromium"):
        return True
    if shutil.which("apt-get") and hasattr(os, "geteuid") and os.geteuid() == 0:
        print("Installing chromium for the browser tests ...", flush=True)
        quiet = {"stdout": subprocess.DEVNULL}
        subprocess.run(["apt-get", "update", "-qq"], **quiet)
        subprocess.run(
            ["apt-get", "install", "-y", "-qq", "--no-install-recommends", "chromium", "fonts-dejavu-core"],
            env={**os.environ, "DEBIAN_FRONTEND": "noninteractive"}, **quiet,
        )  # fmt: skip
    return shutil.which("chromium") is not None


def main() -> int:
    """Run the parts in turn; stop at the first that fails."""
    parser = argparse.ArgumentParser(prog="python3 tests", description=__doc__)
    parser.add_argument("--no-browser", action="store_true", help="leave out the browser tests")
    options = parser.parse_args()
    python = str(environment.make("[dev]"))
    pytest = [python, "-m", "pytest", "-q", "-p", "no:cacheprovider"]
    two_cores = ["-n", "2", "--dist", "worksteal"]
    two_by_file = ["-n", "2", "--dist", "loadfile"]
    notebooks = sorted(
        str(p) for f in ("course/lessons", "solutions") for p in (ROOT / f).glob("*.ipynb")
    )
    parts = [
        ("style", [python, "-m", "ruff", "check", "."]),
        (
            "notebooks in step with their sources",
            [python, "-m", "twoshaft_grader.notebooks", "compare"],
        ),
        # A notebook's cells need one kernel: whole notebooks are shared out.
        ("notebooks run", [*pytest, *two_by_file, "--nbval-lax", *notebooks]),
        ("tests", [*pytest, *two_cores, "-m", "not browser and not bench"]),
    ]
    if options.no_browser:
        print("Browser tests are left out, as asked.")
    elif browser_present():
        # Two files at a time: the tests of a file share a JupyterLab, those of two never do.
        browser = [*pytest, *two_by_file, "-m", "browser", "tests/browser"]
        parts.append(("browser tests", browser))
    elif os.environ.get("CI"):
        print("chromium is missing and cannot be installed: in CI the browser tests must run.")
        return 1
    else:
        print("SKIPPED: browser tests, since chromium is missing (Debian: apt install chromium).")
    # Every worker and every kernel imports the course: compiled once, it starts sooner. Matrices
    # are small: threads of their own would only get into the way of the two workers.
    env = {key: value for key, value in os.environ.items() if key != "PYTHONDONTWRITEBYTECODE"}
    env |= dict.fromkeys(("OPENBLAS_NUM_THREADS", "OMP_NUM_THREADS"), "1")
    for name, command in parts:
        print(f"\n== {name}", flush=True)
        begun = time.monotonic()
        code = subprocess.run(command, cwd=ROOT, env=env).returncode
        print(
            f"== {name}: {'passed' if code == 0 else 'FAILED'} in {time.monotonic() - begun:.0f} s"
        )
        if code != 0:
            return code
    return 0


if __name__ == "__main__":
    sys.exit(main())
