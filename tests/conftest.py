"""Fixtures that several folders share."""

import sys
from functools import cache
from pathlib import Path

import pytest
from hypothesis import settings

from twoshaft.units.sections.faces import Face
from twoshaft.units.unit import Unit

ROOT = Path(__file__).resolve().parents[1]

# A busy machine is no fault of the code: properties are judged by what they find, not by the clock.
settings.register_profile("twoshaft", deadline=None)
settings.load_profile("twoshaft")


def pytest_collection_finish():
    """A new gradebook asks a command of its own for the version of its tables: once a session."""
    if api := sys.modules.get("nbgrader.api"):
        api.get_alembic_version = cache(api.get_alembic_version)


@pytest.fixture(scope="session")
def tables_version_once():
    """The same where nbgrader is loaded by the first command only."""
    already = "nbgrader.api" in sys.modules
    from nbgrader import api

    if not already:
        api.get_alembic_version = cache(api.get_alembic_version)


@pytest.fixture(scope="session")
def frame():
    """Return a builder of faces: a frame 100 x 75 mm with a land of 12 mm, flat and without holes,
    100 um of roughness, but for what is given.
    """

    def build(**changes):
        data = {
            "id": "frame",
            "name": "Frame",
            "outline": [(0, 0), (100, 0), (100, 75), (0, 75)],
            "cavities": [
                {
                    "id": "oil",
                    "name": "Oil",
                    "kind": "oil",
                    "outline": [(12, 12), (88, 12), (88, 63), (12, 63)],
                }
            ],
            "form": {"flatness_um": 0, "roughness_um": 100, "bed_n_per_mm3": 100, "flange_mm": 10},
            "sealant": "any",
            "film_mm": 0.1,
            "film_width_mm": 10,
        }
        return Face.model_validate(data | changes)

    return build


@pytest.fixture(scope="session")
def make_unit():
    """Return a builder of small units: steps s00, s01, …, and rules from pairs of numbers.

    A pair may carry a kind as its third member; other sections are given as plain data. ``stages``
    is how many there are, or the stage of each step.
    """

    def build(count, pairs=(), *, stages=1, kinds=("cannot",), minutes=(1.0,), **sections):
        staged = (
            [i * stages // max(count, 1) for i in range(count)]
            if isinstance(stages, int)
            else stages
        )
        rules = [
            {
                "id": f"r-{pair[0]:02d}-{pair[1]:02d}-{k}",
                "kind": pair[2] if len(pair) > 2 else kinds[k % len(kinds)],
                "earlier": f"s{pair[0]:02d}",
                "later": f"s{pair[1]:02d}",
                "reason": f"step {pair[0]} is needed first",
            }
            for k, pair in enumerate(pairs)
        ]
        return Unit.model_validate(
            {
                "identity": {
                    "id": "little",
                    "name": "Little unit",
                    "version": "1",
                    "invented": True,
                    "college": "Tarnbeck College",
                    "scenario": "A few steps for a test.",
                    "gears": 5,
                },
                "parts": [{"id": f"p{i:02d}", "name": f"Part {i}"} for i in range(count)],
                "stages": [{"id": f"g{k}", "name": f"Stage {k}"} for k in range(max(staged) + 1)],
                "operations": [
                    {
                        "id": f"s{i:02d}",
                        "name": f"Step {i}",
                        "stage": f"g{staged[i]}",
                        "parts": [f"p{i:02d}"],
                        "minutes_do": minutes[i % len(minutes)],
                        "minutes_undo": minutes[i % len(minutes)] / 2,
                    }
                    for i in range(count)
                ],
                **{key: value for key, value in sections.items() if key != "rules"},
                "rules": rules + list(sections.get("rules", ())),
            }
        )

    return build


@pytest.fixture(scope="session")
def mark_on():
    """Return what marks a learner's exercise on a unit: answered by its reference, or blank.

    What the unit does not carry is left out, as it is for its learners.
    """
    from twoshaft.jobsheet import Answer, SheetData
    from twoshaft.readings import issue_record, not_carried
    from twoshaft_grader.cohort.fit import fit
    from twoshaft_grader.marking import load_solution, mark_sheet, solve

    def mark(unit, module, *, learner="ann", blank=False):
        path = next((ROOT / "solutions").glob(f"*-{module}.ipynb"))
        solution = load_solution(path)
        if not_carried(module, unit):
            solution = fit(path, module, unit, [learner], salt="test", attempt=1).solution
        issued = issue_record(module, unit, salt="test", learner=learner, attempt=1)
        given = {} if blank else solve(solution, issued, unit)
        answers = {name: Answer(value, 1) for name, value in given.items()}
        sheet = SheetData(learner=learner, module=module, attempt=1, answers=answers)
        return mark_sheet(sheet, issued, solution, unit=unit)

    return mark
