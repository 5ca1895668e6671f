"""Open the course on this machine: ``python3 course/start``."""

from __future__ import annotations

import argparse
import subprocess
import sys

import environment


def main() -> int:
    """Make the environment, then open the lessons."""
    parser = argparse.ArgumentParser(prog="python3 course/start", description=__doc__)
    parser.add_argument(
        "--no-open", action="store_true", help="do all but open JupyterLab in the browser"
    )
    options = parser.parse_args()
    python = environment.make()
    command = [str(python), "-m", "twoshaft.jupyter", str(environment.ROOT / "work")]
    if options.no_open:
        print(f"All is made. To open the course: {' '.join(command)}")
        return 0
    try:
        return subprocess.run(command).returncode
    except KeyboardInterrupt:
        return 0


if __name__ == "__main__":
    sys.exit(main())
