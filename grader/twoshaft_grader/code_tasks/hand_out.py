"""Hand an instructor's own notebook with code tasks out to the cohort."""

from __future__ import annotations

import re
from datetime import datetime
from pathlib import Path

import twoshaft
from twoshaft.errors import CohortError
from twoshaft.modules import COURSE
from twoshaft.outcomes import load_outcomes
from twoshaft.stored.assignment import Assignment
from twoshaft_grader.code_tasks.notebook import read_notebook
from twoshaft_grader.cohort import backbone, files
from twoshaft_grader.cohort.assign import Assigned, cohort_unit, is_out, read_assigned
from twoshaft_grader.cohort.clock import stamp
from twoshaft_grader.cohort.due import gradebook_time
from twoshaft_grader.cohort.folder import Cohort
from twoshaft_grader.cohort.roster import Learner
from twoshaft_grader.cohort.trail import act
from twoshaft_grader.stored.assignment import ASSIGNMENT


def add_notebook(
    cohort: Cohort,
    file: Path,
    *,
    outcome: str,
    due: datetime | None,
    learners: list[Learner],
    name: str = "",
    attempt: int = 1,
    by: str = "",
) -> Assigned:
    """Hand out a notebook with nbgrader's cells; a run that was cut short is finished by the same
    call.

    Raises
    ------
    CohortError
        When the notebook will not do, nobody is on the roster, the outcome is not known, or the
        name is another's.
    """
    module = name or re.sub(r"[^a-z0-9]+", "-", file.stem.lower()).strip("-")[:40]
    if not re.fullmatch(r"[a-z0-9]+(-[a-z0-9]+)*", module):
        raise CohortError(
            f'the name "{module}" will not do', mend="give --name in small letters and hyphens"
        )
    if module in COURSE:
        raise CohortError(
            f"{module} is a module of the course", mend="give the notebook another --name"
        )
    if outcome not in (known := load_outcomes()):
        raise CohortError(
            f'no outcome is called "{outcome}"',
            mend=f"use one of: {', '.join(list(known)[:12])}, …",
        )
    if attempt < 1:
        raise CohortError("attempts count from 1", where="--attempt", mend="write 1 or more")
    if not learners:
        raise CohortError(
            "nobody is on the roster yet", mend='take one in first: "twoshaft roster take FILE"'
        )
    read_notebook(file)
    called = f"{module}-{attempt}"
    if is_out(cohort, called):
        raise CohortError(f"{called} is handed out already", mend=f"give --attempt {attempt + 1}")
    with act(cohort.root, "assign", called, by=by) as told:
        until = f"due {stamp(due)}" if due else "without a due date"
        told.after = f"{until}, to {len(learners)}"
        source = cohort.source(called)
        files.remove(source)  # of an earlier try
        files.write_whole(source / f"{module}.ipynb", file.read_bytes())
        identity = cohort_unit(cohort).identity
        about = Assignment(
            name=called,
            cohort=cohort.id,
            salt=cohort.salt,
            module=module,
            attempt=attempt,
            unit=identity.id,
            unit_version=str(identity.version),
            course_version=twoshaft.__version__,
            due=due.isoformat() if due else "",
            code_outcome=outcome,
        )
        ASSIGNMENT.write(source / ASSIGNMENT.file, about)
        assigned = read_assigned(cohort, called)
        api = backbone.desk_api(cohort)
        backbone.run(
            cohort, f"making the apprentices' copy of {called}", api.generate_assignment, called
        )
        with backbone.gradebook(cohort) as book:
            book.update_or_create_assignment(called, duedate=gradebook_time(due) if due else None)
        backbone.run(cohort, f"handing out {called}", api.release_assignment, called)
    return assigned
