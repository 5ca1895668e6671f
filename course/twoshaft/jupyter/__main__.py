"""Open the course: ``python -m twoshaft.jupyter FOLDER``.

The folder holds lessons and exercises to practise, or is the shared place of a cohort whose
learners each work in an account of their own.
"""

from __future__ import annotations

import argparse
import sys
from pathlib import Path

from twoshaft.errors import CohortError
from twoshaft.jupyter.lab import lab_command, run_lab
from twoshaft.jupyter.open_course import WORKPLACE, open_course
from twoshaft.jupyter.startpage import START


def main(arguments: list[str] | None = None) -> int:
    """Open JupyterLab on a folder, at its start page or its first lesson."""
    parser = argparse.ArgumentParser(prog="python -m twoshaft.jupyter", description=__doc__)
    parser.add_argument("folder", type=Path, help="of lessons and exercises, or of a cohort")
    parser.add_argument("--port", type=int, default=0, help="0: the first free one from 8888")
    parser.add_argument("--no-browser", action="store_true", help="open no browser window")
    options = parser.parse_args(arguments)
    root, browser = options.folder.expanduser().resolve(), not options.no_browser
    if (root / WORKPLACE / START).exists():
        try:
            return open_course(root, port=options.port, browser=browser)
        except CohortError as error:
            print(error.sentence, file=sys.stderr)
            return 2
    lessons = sorted((root / "lessons").glob("*.ipynb"))
    if not lessons:
        print(f"{root}: there are no lessons; name the folder that holds them.", file=sys.stderr)
        return 2
    first = lessons[0].relative_to(root).as_posix()
    command, environment = lab_command(
        root, "apprentice", root.parent / ".jupyter", first_page=first, port=options.port,
        browser=browser,
    )  # fmt: skip
    return run_lab(command, environment, root)


if __name__ == "__main__":
    sys.exit(main())
