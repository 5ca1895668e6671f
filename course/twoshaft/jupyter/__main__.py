"""Open a folder of lessons and exercises to practise: ``python -m twoshaft.jupyter FOLDER``."""

from __future__ import annotations

import argparse
import sys
from pathlib import Path

from twoshaft.jupyter.lab import lab_command, run_lab


def main(arguments: list[str] | None = None) -> int:
    """Open JupyterLab on a folder, at its first lesson."""
    parser = argparse.ArgumentParser(prog="python -m twoshaft.jupyter", description=__doc__)
    parser.add_argument("folder", type=Path, help="the folder with lessons and exercises")
    options = parser.parse_args(arguments)
    root = options.folder.expanduser().resolve()
    lessons = sorted((root / "lessons").glob("*.ipynb"))
    if not lessons:
        print(f"{root}: there are no lessons; name the folder that holds them.", file=sys.stderr)
        return 2
    first = lessons[0].relative_to(root).as_posix()
    command, environment = lab_command(
        root, "apprentice", root.parent / ".jupyter", first_page=first
    )
    return run_lab(command, environment, root)


if __name__ == "__main__":
    sys.exit(main())
