"""Whether a learner stated that collected work is their own."""

from __future__ import annotations

import json

from twoshaft.errors import SheetError
from twoshaft.jobsheet.receipts import sheet_digest
from twoshaft.stored.hostile import read_bytes
from twoshaft.stored.own_work import OWN_WORK
from twoshaft_grader.cohort.arrival import AHEAD, hand_in_time, moment_of, moment_said
from twoshaft_grader.cohort.assign import Assigned
from twoshaft_grader.cohort.folder import Cohort

_LONGEST = 4096


def own_work_of(cohort: Cohort, assigned: Assigned, learner: str) -> str:
    """When it was stated, ISO 8601; empty where it was not, or of other answers.

    The statement came with the work: data from outside.
    """
    folder = cohort.submitted(learner, assigned.name)
    try:
        raw = read_bytes(folder / OWN_WORK.file, _LONGEST)
        about = OWN_WORK.of(json.loads(raw)) if len(raw) <= _LONGEST else None
    except (OSError, ValueError, RecursionError, SheetError):
        return ""
    if about is None or (about.learner, about.assignment) != (learner, assigned.name):
        return ""
    digest = sheet_digest(folder / assigned.answers_in)
    said = about.stated.replace("T", " ").replace("Z", " UTC")
    moment, handed_in = moment_said(said), hand_in_time(cohort, learner, assigned.name)
    # What was stated by the time of handing in was, though a clock has been put back since.
    known = moment and handed_in and moment <= handed_in + AHEAD
    can_be = bool(known or moment_of(said)[0])
    return about.stated if digest and digest == about.sheet and can_be else ""
