"""Bring a cohort of an earlier version up to date."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path

from twoshaft import system
from twoshaft_grader.cohort import files
from twoshaft_grader.cohort.folder import (
    CONFIG_FILE,
    Cohort,
    config_is_ours,
    open_cohort,
    write_config,
)
from twoshaft_grader.cohort.intake import roster_of
from twoshaft_grader.cohort.shared import CLOSED, move_apart
from twoshaft_grader.cohort.trail import act
from twoshaft_grader.cohort.turn import turn
from twoshaft_grader.cohort.workplace import prepare_workplace
from twoshaft_grader.stored.cohort import FILE as COHORT_FILE
from twoshaft_grader.stored.cohort import read_cohort, write_cohort

BEFORE = f"{CONFIG_FILE}.before"


def renew(cohort: Cohort, *, by: str = "") -> list[str]:
    """Write nbgrader's configuration anew, and put what learners reach into a place of its own.

    Returns
    -------
    list of str
        What was done, a sentence each.

    Raises
    ------
    CohortError
        When another run is under way, or the place beside the folder is in use.
    """
    done = []
    with act(cohort.root, "renew the cohort", by=by) as told, turn(cohort):
        root = cohort.root
        if cohort.shared == root:
            place = root.with_name(f"{root.name}-shared")
            move_apart(root, place, cohort=cohort.id, salt=cohort.salt)
            entries = read_cohort(root / COHORT_FILE)
            # From here on it is a cohort of two places.
            write_cohort(root / COHORT_FILE, replace(entries, shared=str(place)))
            _close(root)
            cohort = open_cohort(root)
            if people := roster_of(cohort):
                prepare_workplace(cohort, people)
            done.append(f"What learners use is in {place} now.")
        if not config_is_ours(root):
            files.write_whole(root / BEFORE, (root / CONFIG_FILE).read_bytes())
            write_config(root, cohort.id, cohort.timezone)
            done.append(f"{CONFIG_FILE} is written anew; what it was is in {BEFORE}.")
        told.after = " ".join(done)
    return done


def _close(root: Path) -> None:
    """Let nobody else into a folder that was open."""
    system.make_closed(root, CLOSED)
    for path in root.rglob("*"):
        if not path.is_symlink():
            system.make_closed(path, 0o700 if path.is_dir() else 0o600)
