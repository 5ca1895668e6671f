"""Build the notebooks, compare the stored ones with their text sources, or measure of each module
what not knowing earns, or whether it is equally hard for all."""

from __future__ import annotations

import argparse
import sys
from pathlib import Path

from twoshaft.errors import CourseError
from twoshaft_grader.notebooks import equally_hard, ignorance
from twoshaft_grader.notebooks.build import build, compare, write
from twoshaft_grader.notebooks.proof import prove_all

MEASURES = {"ignorance": ignorance.tables, "equally-hard": equally_hard.tables}


def main(argv: list[str] | None = None) -> int:
    """Run the command; return 0 when all is in order, 1 otherwise."""
    parser = argparse.ArgumentParser(
        prog="python -m twoshaft_grader.notebooks", description=__doc__
    )
    parser.add_argument("what", choices=["build", "compare", *MEASURES])
    parser.add_argument(
        "only", nargs="*", help="modules to measure, as 04; all of them if left out"
    )
    parser.add_argument("--root", type=Path, default=Path(), help="root of the project")
    given = parser.parse_args(argv)
    if given.what in MEASURES:
        for table in MEASURES[given.what](given.root, given.only):
            print(table, flush=True)
        return 0
    try:
        built = build(given.root)
    except CourseError as error:
        print(error.sentence, file=sys.stderr)
        return 1
    findings = list(built.findings)
    if given.what == "compare":
        findings += compare(given.root, built)
    else:
        for path in write(given.root, built):
            print(f"wrote {path}")
    if not findings:  # the stored solutions are what the sources say
        solutions = [path for path in built.files if path.parts[0] == "solutions"]
        findings += prove_all(given.root, solutions)
    for finding in findings:
        print(finding, file=sys.stderr)
    return 1 if findings else 0


if __name__ == "__main__":
    sys.exit(main())
