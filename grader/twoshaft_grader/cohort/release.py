"""Hand out through nbgrader's exchange: an assignment whole or not at all, and for all to read."""

from __future__ import annotations

import os
import shutil
from pathlib import Path

from nbgrader.exchange.default import ExchangeReleaseAssignment, ExchangeReleaseFeedback

from twoshaft.stored.writing import FOR_ALL
from twoshaft_grader.cohort import files


class WholeRelease(ExchangeReleaseAssignment):
    """nbgrader's release, copied aside and renamed when it is whole."""

    dest_path: str

    def copy_files(self) -> None:
        """Copy the assignment to its place in the exchange."""
        target = Path(self.dest_path)
        aside = target.with_name(f".{target.name}.part")
        shutil.rmtree(aside, ignore_errors=True)  # what a run that was cut short left
        if os.path.lexists(target) and not self.force:
            self.fail(f"Destination already exists, add --force to overwrite: {target.name}")
        self.dest_path = str(aside)
        super().copy_files()
        files.move_into_place(aside, target)


class ReadableFeedback(ExchangeReleaseFeedback):
    """nbgrader's release of pages, which keep their names to themselves: only these are secret."""

    dest_path: str

    def copy_files(self) -> None:
        """Copy the pages to the exchange."""
        super().copy_files()
        for page in Path(self.dest_path).glob("*.html"):
            page.chmod(FOR_ALL)
