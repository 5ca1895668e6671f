"""The process beside a worker that marks: a line in, a line out, until nobody asks any more."""

from __future__ import annotations

import json
import os
import sys
import tempfile
from pathlib import Path

from twoshaft_grader.cohort.far_parcel import RESULT, mark_here


def main() -> None:
    """Answer on what was standard output; whatever else is printed goes to standard error."""
    told = os.fdopen(os.dup(1), "w", encoding="utf-8")
    os.dup2(2, 1)
    sys.stdin.reconfigure(encoding="utf-8")  # type: ignore[union-attr]
    with tempfile.TemporaryDirectory(prefix="twoshaft-") as folder:
        for line in sys.stdin:
            common, sheet = json.loads(line)
            result = mark_here(Path(folder), common, sheet)
            told.write(json.dumps(RESULT.plain(result)) + "\n")
            told.flush()


if __name__ == "__main__":
    main()
