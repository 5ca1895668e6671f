"""The build's proof of an exercise finds what would be unfair."""

from pathlib import Path
from types import SimpleNamespace

import pytest

from twoshaft_grader.marking import load_solution
from twoshaft_grader.notebooks.proof import prove, prove_all
from twoshaft_grader.notebooks.text import build_notebook, notebook_text

OUTCOMES = {"measure": SimpleNamespace(), "plan": SimpleNamespace()}


@pytest.fixture
def changed(tiny, tmp_path):
    """The made-up solution with one thing changed, proven on two learners."""

    def prove_with(old="", new="", outcomes=OUTCOMES):
        text = tiny.source.read_text()
        assert old in text
        path = tmp_path / "90-tiny.ipynb"
        nb = build_notebook(text.replace(old, new) if old else text, Path("solutions/90-tiny.py"))
        path.write_text(notebook_text(nb))
        records = [tiny.issued("ann"), tiny.issued("bob")]
        return prove(load_solution(path), tiny.unit, records, outcomes)

    return prove_with


def test_a_fair_exercise_has_no_findings(changed):
    assert changed() == []


@pytest.mark.parametrize(
    ("old", "new", "says"),
    [
        ('outcome="plan", weight=3', 'outcome="plans", weight=3', "no outcome of the module"),
        (
            'ref("gap-shims", round(shim.to("mm").magnitude / 0.05), outcome="measure")',
            "pass",
            "'gap-shims' has no reference",
        ),
        ('"reach",\n', '"reached",\n', "the reference of 'build-why' is not keys of its options"),
        ('given["gap"]["case"] -', 'given["gap"]["height"] -', "KeyError: 'height'"),
        ('Slip(Q(given["gap"]["case"], "mm")', "Slip(gap_value", "NameError"),
        ('Slip("weight", 0.5', 'Slip("reach", 0.5', "slip 1 of build-why earns 1.00"),
        (
            'Slip("oil", 0, "Oil gets to it wherever it sits."),',
            "",
            "nothing says why these options of build-why are wrong: oil.",
        ),
        ("weight=2,", "weight=-2,", "the weight of 'gap-shim' is -2"),
        ("tolerance={", "tolerance={'about': 1, ", "the tolerance of 'gap-depth'"),
        ('ref("gap-shims"', 'ref("gap-shim"', "given two references"),
        ('sheet.number("gap-shim"', 'sheet.number("gap-depth"', "is asked twice"),
    ],
)
def test_what_would_be_unfair_is_found(changed, old, new, says):
    findings = changed(old, new)
    assert any(says in finding for finding in findings), findings


def test_an_outcome_that_nothing_covers_is_found(changed):
    findings = changed(outcomes=OUTCOMES | {"diagnose": SimpleNamespace()})
    assert findings == ["no field is evidence for the outcome diagnose."]


def test_a_module_left_to_chance_is_found(changed):
    findings = changed('task="new" points=4', 'task="new" points=400')
    assert findings
    assert all("guessing alone reaches" in finding for finding in findings)
    assert all("give new more options or fewer points" in finding for finding in findings)


def test_a_module_without_readings_is_named(tiny):
    path = tiny.notebook
    assert prove_all(path.parent, [Path(path.name)]) == [
        "90-tiny.ipynb: no readings are drawn for the module tiny."
    ]
