"""The carried pass leaves out what cannot come out otherwise than in the clean one."""

from pathlib import Path

import pytest

from twoshaft.jobsheet import Answer, SheetData
from twoshaft.readings import MODULES, issue_record
from twoshaft.units import load_unit
from twoshaft_grader.desk.demo_answers import demo_answers
from twoshaft_grader.desk.demo_people import Way
from twoshaft_grader.marking import load_solution, mark_sheet, reference
from twoshaft_grader.marking.cell_names import CellNames

SOLUTIONS = Path(__file__).parents[2] / "solutions"


@pytest.mark.parametrize("module", MODULES)
def test_with_every_cell_run_again_the_marks_are_the_same(module, monkeypatch):
    unit = load_unit("tarnbeck-b5")
    solution = load_solution(next(SOLUTIONS.glob(f"*-{module}.ipynb")))
    every = frozenset().union(*(cell.names.sets | cell.names.reads for cell in solution.cells))
    ran = []
    run = reference._run

    def counted(cell, *rest):
        ran.append(cell.number)
        return run(cell, *rest)

    monkeypatch.setattr(reference, "_run", counted)
    for way in (Way.SLIPS, Way.NEARLY):
        issued = issue_record(module, unit, salt="carried", learner=f"c-{way}", attempt=1)
        answers = demo_answers(way, solution, issued, unit)
        sheet = SheetData(
            learner=issued["learner"],
            module=module,
            attempt=1,
            answers={name: Answer(value, 1) for name, value in answers.items()},
        )
        ran.clear()
        mark = mark_sheet(sheet, issued, solution, unit=unit)
        few = len(ran)
        with monkeypatch.context() as patch:
            patch.setattr(reference, "_changed_in_place", lambda solution: every)
            ran.clear()
            assert mark_sheet(sheet, issued, solution, unit=unit) == mark
        assert few < len(ran) == len(solution.cells)


@pytest.mark.parametrize(
    ("source", "reads", "sets", "changes", "passes_on"),
    [
        ("a = b + 1", {"b"}, {"a"}, set(), False),
        ("from x.y import z as w\nimport p.q", set(), {"w", "p"}, set(), False),
        ("ref('f', a)", {"ref", "a"}, set(), set(), False),
        ("for k in a:\n    ref(k, a)", {"ref", "a", "k"}, {"k"}, set(), False),
        ("b = ref('f', a)", {"ref", "a"}, {"b"}, set(), True),
        ("print(ref('f', a))", {"print", "ref", "a"}, set(), set(), True),
        ("[ref(k, k) for k in a]", {"ref", "a", "k"}, {"k"}, set(), True),
        ("mine['k'] = 1", {"mine"}, set(), {"mine"}, False),
        ("mine.a[0].b += 1", {"mine"}, set(), {"mine"}, False),
        ("del mine[0]", {"mine"}, set(), {"mine"}, False),
        ("mine.append(a)", {"mine", "a"}, set(), {"mine"}, False),
        ("slips += a", {"slips", "a"}, {"slips"}, {"slips"}, False),
        ("own, b = [], 1\nown.append(a)", {"own", "a"}, {"own", "b"}, set(), False),
        ("own = a\nown.append(1)", {"own", "a"}, {"own"}, {"own"}, False),
        ("f = lambda v: v > limit", {"v", "limit"}, {"f"}, set(), False),
    ],
)
def test_names_of_a_cell(source, reads, sets, changes, passes_on):
    assert CellNames.of(source) == CellNames(
        frozenset(reads), frozenset(sets), frozenset(changes), passes_on
    )
