"""The build record of a whole build, as a learner handed it in: part of the record on paper."""

from __future__ import annotations

from typing import Any

from twoshaft.jobsheet.kinds.field import UnitAsker
from twoshaft.models.wholebuild import ORDER, Job, build_record, decisions_from, fields_of
from twoshaft.models.wholebuild.asks import asked_together
from twoshaft.readings.issue import given_in
from twoshaft.records import to_json
from twoshaft.rigs.whole_build import read_value
from twoshaft.stored.job_sheet import FILE, read_sheet
from twoshaft_grader.cohort.assign import Assigned, assigned_unit
from twoshaft_grader.cohort.folder import Cohort
from twoshaft_grader.stored.issued import read_issued

MODULE = "whole-build"


def build_record_of(cohort: Cohort, assigned: Assigned, learner: str) -> dict[str, Any]:
    """What the learner's job sheet says of their build, as the bench shows it to them.

    Returns
    -------
    dict
        As ``models.wholebuild.build_record`` makes it.

    Raises
    ------
    CourseError
        When the sheet, or what was issued for it, cannot be read.
    """
    issued = read_issued(cohort.issued(learner, assigned.name))
    sheet = read_sheet(cohort.submitted(learner, assigned.name) / FILE)
    unit = assigned_unit(cohort, assigned)
    job = Job.of(unit, to_json(given_in(MODULE, issued["given"]).bench))
    specs = (*fields_of(job), *asked_together(job).values())
    fields = {field.name: field for field in UnitAsker(unit).ask_all(specs)}
    stored = {name: answer.value for name, answer in sheet.answers.items() if name in fields}
    values = {name: read_value(fields[name], value) for name, value in stored.items()}
    steps = tuple(dict.fromkeys(values.get(ORDER) or ()))
    return build_record(job, decisions_from(job, {**values, ORDER: steps}))
