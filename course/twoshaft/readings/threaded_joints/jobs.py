"""Reports of finished jobs, in which some steps were slips. Every report has as many."""

from __future__ import annotations

from twoshaft.readings.threaded_joints.given import Job
from twoshaft.readings.threaded_joints.lot import Lot
from twoshaft.readings.threaded_joints.questions import BANK


def draw_job(lot: Lot) -> Job:
    """One report, its steps in the order of the work."""
    report = lot.in_turn("job", list(BANK.questions["job"].values()))[0]
    return Job(id=report.id, title=report.story, steps=report.options)
