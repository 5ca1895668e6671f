"""A sheet done on figures from the bench, marked: other references, never a way round."""

import json
from pathlib import Path

import pytest
from nbgrader.converters import Autograde

from twoshaft.jobsheet import Answer, SheetData
from twoshaft.jobsheet.bench_readings import BenchSet
from twoshaft.readings import given_in, issue_record
from twoshaft.readings.own_bench import bench_figures, put_in
from twoshaft.records import changed, to_json
from twoshaft.units import load_unit
from twoshaft_grader.marking import load_solution, mark_sheet, solve
from twoshaft_grader.marking.feedback import feedback_page
from twoshaft_grader.marking.gradebook import task_html
from twoshaft_grader.notebooks.text import build_notebook, notebook_text
from twoshaft_grader.stored.mark import MARK, MARKED, StoredMark

SOURCE = Path(__file__).parents[2] / "solutions" / "05-shims-and-preload.py"
MODULE = "shims-and-preload"
STACK = ("stack", "follow")


@pytest.fixture(scope="module")
def notebook(tmp_path_factory):
    built = tmp_path_factory.mktemp("solutions") / f"{SOURCE.stem}.ipynb"
    nb = build_notebook(SOURCE.read_text(encoding="utf-8"), Path("solutions") / SOURCE.name)
    built.write_text(notebook_text(nb), encoding="utf-8")
    return built


@pytest.fixture(scope="module")
def solution(notebook):
    return load_solution(notebook)


@pytest.fixture(scope="module")
def unit():
    return load_unit("tarnbeck-b5")


@pytest.fixture(scope="module")
def issued(unit):
    record = issue_record(MODULE, unit, salt="test", learner="ann", attempt=1)
    return record | {"bench_readings": True}


@pytest.fixture(scope="module")
def typed(issued):
    """What somebody typed at the stack, each as text with its unit."""
    lengths = issued["given"]["stack"]["lengths"]
    first = next(iter(lengths))
    texts = {name: f"{mm + 0.1 * (name == first):.2f} mm" for name, mm in lengths.items()}
    more = {"low-target": "0.04 mm", "high-target": "0.1 mm", "page": "112", "read-by": "A. Reader"}
    return texts | more | {"in-use": "yes"}


@pytest.fixture(scope="module")
def answers(solution, unit, issued, typed):
    """Full-mark answers under the typed figures."""
    values = {n: float(t.split()[0]) for n, t in typed.items() if t.endswith(" mm")}
    given = put_in(MODULE, "stack", unit, given_in(MODULE, issued["given"]), values)
    return solve(solution, issued | {"given": to_json(given)}, unit)


def sheet_of(answers, typed):
    return SheetData(
        learner="ann",
        module=MODULE,
        attempt=1,
        answers={name: Answer(value, 1) for name, value in answers.items()},
        bench={f"stack-{name}": Answer(value, 1) for name, value in typed.items()},
    )


def share(mark, task):
    return mark.task(task).earned / mark.task(task).maximum


def test_bench_figures_lead_to_other_references(solution, unit, issued, typed, answers):
    mark = mark_sheet(sheet_of(answers, typed), issued, solution, unit=unit)
    assert mark.points == mark.maximum and mark.notes == ()
    assert [use.tasks for use in mark.bench] == [STACK]
    stored = StoredMark("ann", "shims-and-preload-1", MARKED, "", "", "", "", sheet=mark)
    assert MARK.of(json.loads(MARK.text(stored))) == stored

    drawn = solve(solution, issued, unit)
    other = mark_sheet(sheet_of(drawn, typed), issued, solution, unit=unit)
    assert share(other, "stack") < 0.6 and share(other, "shelf") == 1
    # The same models judge, the must-pass too.
    other = {"tighter": "looser", "looser": "tighter", "same": "same"}
    said = (one.split("=") for one in answers["stack-direction"])
    turned = [f"{line}={other[option]}" for line, option in said]
    wrong = answers | {"stack-direction": turned}
    failed = mark_sheet(sheet_of(wrong, typed), issued, solution, unit=unit)
    assert not next(f for f in failed.fields if f.name == "stack-direction").passed


def test_who_read_what_is_told_to_learner_and_staff(solution, unit, issued, typed, answers):
    typed = typed | {"read-by": "<b>A</b>"}
    mark = mark_sheet(sheet_of(answers, typed), issued, solution, unit=unit)
    for page in (feedback_page(mark), task_html(mark.task("stack"), mark.bench_of("stack"))):
        assert "Read by &lt;b&gt;A&lt;/b&gt;." in page
        assert "From the bench: " in page
        assert "From the manual, page 112: Least preload of the target: 0.04 mm;" in page


@pytest.mark.parametrize(
    ("allowed", "changed", "said"),
    [
        (False, {}, "which this assignment does not allow"),
        (True, {"low-target": "4 mm"}, "plausible from 0 to 0.16 mm"),
        (True, {"low-target": "0.09 mm"}, "no shim of this unit's set meets"),
        (True, {"page": ""}, "Still missing: Manual page"),
        (True, {"low-target": ["0.04 mm"]}, "Still missing"),
    ],
)
def test_otherwise_the_issued_figures_stand(solution, unit, issued, typed, allowed, changed, said):
    record = {k: v for k, v in issued.items() if allowed or k != "bench_readings"}
    sheet = sheet_of(solve(solution, issued, unit), typed | changed)
    mark = mark_sheet(sheet, record, solution, unit=unit)
    assert mark.points == mark.maximum and mark.bench == ()
    assert [note for note in mark.notes if said in note and note.startswith("Task stack: ")]


def test_a_solution_that_decides_nothing_on_them_goes_back(
    solution, unit, issued, typed, monkeypatch
):
    """A set that slips through, so that every shim misses: flagged, and nothing crashes."""

    def slip_through(self, module, unit, given):
        return changed(given, stack=changed(given.stack, totals={"070": 9.0}))

    monkeypatch.setattr(BenchSet, "put_into", slip_through)
    mark = mark_sheet(
        sheet_of(solve(solution, issued, unit), typed), issued, solution, unit=unit
    )  # fmt: skip
    assert mark.points == mark.maximum and mark.bench == ()
    assert any("the solution decides nothing on them" in note for note in mark.notes)


def test_stock_autograde_gives_the_same(
    notebook, make_course, one_kernel, solution, unit, issued, typed, answers
):
    course = make_course(f"{MODULE}-1", notebook)
    sheet = sheet_of(answers | {"stack-gap": "3 mm"}, typed)
    course.hand_in(issued, json.dumps(sheet.as_json()))
    course.run(Autograde)
    mark = mark_sheet(sheet, issued, solution, unit=unit)
    assert mark.points < mark.maximum
    assert course.scores("ann") == {task.id: task.points for task in mark.tasks}


# What was typed or chosen in the tasks of a module, in the order asked.
TYPED = {
    "01-measuring-and-tools": {
        "repeats": "24.812 mm; 24.815 mm; 24.813 mm; 24.811 mm; 24.814 mm; 24.897 mm",
    },
    "03-threaded-joints": {
        "found": "M8; 8.8; oiled; 24 N·m; 0.3 m; 50 mm; 0°; 16 lbf·ft; 30 N·m",
        "alloy": "M8; 12 mm; 16 mm; 4 %; 25 N·m",
        "blind": "30 mm; 24 mm; 0.6 mL; 22 N·m",
        "nut": "M22x1.5-LH; 600 mm; 180 N·m",
        "stake": "10 mm; 4 mm; 3 mm; 1.2 mm; whole",
    },
    "04-pressed-and-driven": {
        "limits": "40 mm; 40 mm; 40.025 mm; 40.027 mm; 40.042 mm",
        "press": "25.98 mm; 26.02 mm; 14 mm; 10 µm; 60 µm",
        "heat": "34.98 mm; 35.02 mm; 68 °F; 70 °C; 80 °C",
        "locks": "10 mm; 4 mm; 3 mm; 1.2 mm; cracked",
    },
    "06-sealant-film": {
        "bead": "1.2 mm; 12 mm; 0.08 mm; 0.8 mm",
        "clock": "1 min; 3 min; 2 min; 3 min; 2 min; 90 s; 3 min; 5 min; 0.25 h",
        "lay": "0.06 mm; 4 min; 30 min",
        "after": "1 h; 24 h",
    },
    "08-gear-train-and-checks": {
        "path": "20; 31; 17; 71; 13; 29; 41",
        "count": "20; 31; 17; 71; 1 1/2 turns; 2.5 turns",
        "speed": "10 turns; 10.5 turns",
        "gap": "0.35 mm; 0.4 mm; 0,30 mm; 1.2 mm; 0.5 mm",
        "play": "0.40 mm; 0.65 mm; 0.85 mm; 0.05 mm; 0.15 mm",
    },
}


@pytest.mark.parametrize("name", TYPED)
def test_other_modules_are_marked_on_them_too(name, unit):
    """All tasks of a module that take figures of one's own at once: full marks by the models."""
    solution = load_solution(SOURCE.parent / f"{name}.ipynb")
    record = issue_record(solution.module, unit, salt="test", learner="ann", attempt=1)
    record["bench_readings"] = True
    issued, bench = given_in(solution.module, record["given"]), {}
    given = issued
    for task, typed in TYPED[name].items():
        figures = bench_figures(solution.module, task, unit, issued)
        entries = {f.name: text for f, text in zip(figures, typed.split("; "), strict=True)}
        entries |= {"page": "7", "read-by": "A. Reader", "in-use": "yes"}
        mine = {f"{task}-{entry}": Answer(text, 1) for entry, text in entries.items()}
        one = BenchSet.all_of(solution.module, unit, issued, mine)[task]
        given = one.put_into(solution.module, unit, given)
        bench |= mine
    right = solve(solution, record | {"given": to_json(given)}, unit)
    drawn = solve(solution, record, unit)
    answers = {field: Answer(value, 1) for field, value in right.items()}
    sheet = SheetData(
        learner="ann", module=solution.module, attempt=1, answers=answers, bench=bench
    )
    mark = mark_sheet(sheet, record, solution, unit=unit)
    assert (mark.points, mark.notes) == (mark.maximum, ())
    assert {use.task for use in mark.bench} == set(TYPED[name])
    for task in TYPED[name]:
        assert mark.bench_of(task).read_by == "A. Reader"
        fields = [field.name for field in mark.fields if field.task == task]
        assert any(right[field] != drawn[field] for field in fields), task
