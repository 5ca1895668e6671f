"""Module The whole build marked: typical wrong answers, follow-through, must-pass."""

from pathlib import Path

import pytest

from twoshaft.jobsheet import Answer, SheetData
from twoshaft.models.wholebuild import GO_ON, OPEN
from twoshaft.readings import issue_record
from twoshaft.units import load_unit
from twoshaft_grader.marking import load_solution, mark_sheet, solve
from twoshaft_grader.notebooks.text import build_notebook, notebook_text

SOURCE = Path(__file__).parents[2] / "solutions/10-whole-build.py"


@pytest.fixture(scope="module")
def solution(tmp_path_factory):
    built = tmp_path_factory.mktemp("build") / f"{SOURCE.stem}.ipynb"
    nb = build_notebook(SOURCE.read_text(encoding="utf-8"), Path("solutions") / SOURCE.name)
    built.write_text(notebook_text(nb), encoding="utf-8")
    return load_solution(built)


@pytest.fixture(scope="module")
def sheet_of(solution):
    """A learner's issued record and full answers, worked out once."""
    unit, known = load_unit("tarnbeck-b5"), {}

    def make(learner="m1"):
        if learner not in known:
            issued = issue_record(solution.module, unit, salt="test", learner=learner, attempt=1)
            known[learner] = issued, solve(solution, issued, unit)
        return known[learner]

    return make


@pytest.fixture(scope="module")
def marked(solution, sheet_of):
    """Mark a learner's full answers with some changed; gives the fields by name and the sheet."""
    unit = load_unit("tarnbeck-b5")

    def mark(learner="m1", **changes):
        issued, answers = sheet_of(learner)
        new = {name.replace("_", "-"): value for name, value in changes.items()}
        assert set(new) <= set(answers)
        sheet = SheetData(
            learner=learner,
            module=solution.module,
            attempt=1,
            answers={name: Answer(value, 1) for name, value in (answers | new).items()},
        )
        result = mark_sheet(sheet, issued, solution, unit=unit)
        return {field.name: field for field in result.fields}, result

    return mark


def figure(text):
    """The number in an answer."""
    return float(text.split()[0])


def test_typical_wrong_answers_earn_their_share_and_are_told_why(marked, sheet_of):
    issued, right = sheet_of()
    given = issued["given"]
    late, clock, turns = given["late"], given["clock"], given["turns"]
    minutes = {row[0]: row[2:] for row in late["rows"]}
    itself = sum(minutes[late["rows"][0][0]])
    (wheel, final) = (row[1:] for row in turns["wheels"])
    wrong = {
        "clock-used": (f"{figure(right['clock-used']) - clock['inside'][-1][1]:g} min", 0.5,
                       "last step takes time"),
        "turns-ratio": (f"{wheel[1] / wheel[0]:.4f}", 0.25, "final drive belongs"),
        "turns-input": (f"{2 * figure(right['turns-input']):.4f} turns", 0.25, "half the turns"),
        "late-minutes": (f"{figure(right['late-minutes']) - itself:g} min", 0.5, "wrong step itself"),
        "thin-differential": (right["gap-differential"], 0.25, "neither play nor preload"),
        "torque-detent-plugs": ("24 N·m", 0.0, "torque of the card"),
        "adapter-bolt": (right["adapter-setting"], 0.0, "should be set"),
        "notes-signs": ("boss", 0.0, "whoever made the check"),
    }  # fmt: skip
    if given["adapter"]["angle_deg"] == 90:
        del wrong["adapter-bolt"]
    fields, result = marked(**{n.replace("-", "_"): v for n, (v, _, _) in wrong.items()})
    for name, (_, share, words) in wrong.items():
        assert fields[name].share == pytest.approx(share), name
        assert words in " ".join(fields[name].sentences), name
    assert final and result.points < result.maximum


def test_a_slip_in_the_gap_is_charged_once(marked, sheet_of):
    """Limits and shim are judged on the learner's own gap."""
    _, right = sheet_of()
    new = {
        f"{what}_differential": f"{figure(right[f'{what}-differential']) + 0.03:.3f} mm"
        for what in ("gap", "thin", "thick", "shim")
    }
    fields, _ = marked(**new)
    assert fields["gap-differential"].share == 0
    for what in ("thin", "thick", "shim"):
        assert fields[f"{what}-differential"].share == 1, what
    assert fields["thin-differential"].carried and fields["thick-differential"].carried


def test_checks_are_judged_on_the_unit_as_it_was_built(marked, sheet_of):
    """A lockout built the wrong way round fails its proof: who says so is right."""
    learner = next(name for name in ("m1", "m2", "m3", "m4", "m5", "m6")
                   if sheet_of(name)[1]["verdict-check-lockout"] == GO_ON
                   and "way-fit-lockout" in sheet_of(name)[1])  # fmt: skip
    _, right = sheet_of(learner)
    other = next(k for k in ("way-1", "way-2", "way-3") if k != right["way-fit-lockout"])
    fields, _ = marked(learner, way_fit_lockout=other, verdict_check_lockout=OPEN)
    assert fields["way-fit-lockout"].share == 0
    assert fields["verdict-check-lockout"].share == 1
    assert fields["verdict-check-lockout"].carried


def test_what_can_hurt_somebody_must_be_right_and_damage_stops_nothing(marked, sheet_of):
    issued, _ = sheet_of()
    start = [step for step, _ in issued["given"]["plan"]["start"]]
    fields, result = marked(
        notes_do="sign",
        proof_fifth_reverse=["at:gate-fifth-reverse"],
        build_order=start,
        shim_differential={"a": 1},
        film_case_joint=["nobody knows"],
        late_off=7,
    )
    for name in ("notes-do", "proof-fifth-reverse", "build-order"):
        assert fields[name].must_pass and not fields[name].passed and fields[name].share < 1, name
    for name in ("shim-differential", "film-case-joint", "late-off"):
        assert fields[name].share == 0, name
    assert result.points > 0.4 * result.maximum
