"""Open the course: ``python3 course/start``.

Makes the environment, a demo cohort folder, and opens the course in JupyterLab.
"""

from __future__ import annotations

import argparse
import subprocess
import sys
from pathlib import Path

import environment


def main() -> int:
    """Make the environment and the demo cohort, then open the course."""
    parser = argparse.ArgumentParser(prog="python3 course/start", description=__doc__)
    parser.add_argument(
        "--cohort",
        type=Path,
        default=Path.home() / "twoshaft-demo",
        help="the demo cohort's folder (default: %(default)s)",
    )
    parser.add_argument(
        "--no-open", action="store_true", help="do all but open JupyterLab (servers, CI)"
    )
    parser.add_argument(
        "--no-demo", action="store_true", help="make the environment, and nothing else"
    )
    parser.add_argument(
        "--with",
        dest="extras",
        action="append",
        choices=("postgresql", "dask", "hub"),
        default=[],
        help="install what a college's server needs as well; may be given again",
    )
    parser.add_argument(
        "--desk", action="store_true", help="open the instructor's desk, not what apprentices see"
    )
    options = parser.parse_args()
    extras = ",".join(sorted(set(options.extras)))
    python = environment.make(f"[{extras}]" if extras else "")
    if options.no_demo:
        print(f"The environment is made. The command for all else: {environment.BIN / 'twoshaft'}")
        return 0
    twoshaft = [str(python), "-m", "twoshaft_grader.desk"]
    cohort = options.cohort.expanduser().resolve()
    if not (cohort / "cohort.yaml").exists():
        made = subprocess.run([*twoshaft, "demo", str(cohort)]).returncode
        if made != 0:
            return made
    else:
        print(f"The demo cohort in {cohort} is there already and stays as it is.")
    opening = ["open", *(["--as", "staff"] if options.desk else []), "--cohort", str(cohort)]
    if options.no_open:
        command = f"{environment.BIN / 'twoshaft'} {' '.join(opening)}"
        print(f"All is made. To open the course: {command}")
        return 0
    try:
        return subprocess.run([*twoshaft, *opening]).returncode
    except KeyboardInterrupt:
        return 0


if __name__ == "__main__":
    sys.exit(main())
