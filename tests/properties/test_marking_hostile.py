"""Whatever a sheet holds, marking ends, in bounds, and nothing foreign can earn a mark."""

import json

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from twoshaft.errors import SheetError
from twoshaft.jobsheet import Answer, Choice, Choices, Number, SheetData
from twoshaft.jobsheet.measures import MEASURES
from twoshaft.jobsheet.numbers import write_quantity
from twoshaft.stored.job_sheet import parse_sheet
from twoshaft.units.quantities import Q
from twoshaft_grader.marking.reference import Solution, solve
from twoshaft_grader.marking.task import mark_sheet

KEYS = [[f"k{i}", f"Option {i}"] for i in range(5)]
FIELDS = {
    "size": (Number("size", "How big?", "mm"), Q(1.25, "mm")),
    "count": (Number("count", "How many?", ""), 7),
    "why": (Choice("why", "Why?", KEYS), "k2"),
    "which": (Choices("which", "Which?", KEYS), {"k1", "k3"}),
}
CODE = """
sheet.form("a", sheet.number("size", "How big?", "mm"), sheet.number("count", "How many?", ""))
sheet.form("b", sheet.choice("why", "Why?", options=given["keys"]),
           sheet.choices("which", "Which?", options=given["keys"]))
size = ref("size", Q(1.25, "mm"), outcome="o")
ref("count", round((size / Q(0.18, "mm")).to("").magnitude ** 0.5 * 2.66), outcome="o")
ref("why", "k2", outcome="o")
ref("which", {"k1", "k3"}, outcome="o")
"""
ISSUED = {
    "learner": "ann",
    "module": "m",
    "attempt": 1,
    "unit": "little",
    "unit_version": "1",
    "course_version": "0",
    "given": {"keys": KEYS},
}


@pytest.fixture(scope="module")
def solution():
    from twoshaft_grader.marking.cell_names import CellNames
    from twoshaft_grader.marking.reference import Cell

    code = compile(CODE, "m, cell 1", "exec")
    cell = Cell("reference", 1, code, CellNames.of(CODE))
    points = {"a": 6.0, "b": 4.0}
    return Solution("m.ipynb", "m", "0", (cell,), points, "M", {}, "0" * 64)


def sheet_of(values, **facts):
    known = {"learner": "ann", "module": "m", "attempt": 1} | facts
    return SheetData(answers={name: Answer(value, 1) for name, value in values.items()}, **known)


scalars = st.one_of(
    st.none(),
    st.text(max_size=100),
    st.integers(-(10**17), 10**17),
    st.floats(allow_nan=False, allow_infinity=False),
    st.lists(st.sampled_from(["k0", "k1", "k2", "k3", "k4", "x", ""]), max_size=12),
    st.from_regex(
        r"-?[0-9]{1,6}([.,][0-9]{1,4})?(e[0-9]{1,3})? ?(mm|in|um|thou|N|kN|)", fullmatch=True
    ),
)


@pytest.mark.slow
@settings(max_examples=300, deadline=None)
@given(st.dictionaries(st.sampled_from(sorted(FIELDS)), scalars))
def test_any_value_is_marked_within_bounds(solution, make_unit, values):
    mark = mark_sheet(sheet_of(values), ISSUED, solution, unit=make_unit(2, [(0, 1)]))
    for task in mark.tasks:
        assert 0 <= task.points <= task.maximum
    for field in mark.fields:
        assert 0 <= field.share <= 1 and field.verdict


@settings(max_examples=60, deadline=None)
@given(
    st.dictionaries(st.sampled_from(sorted(FIELDS)), scalars),
    st.dictionaries(st.from_regex(r"[a-z]{6,12}", fullmatch=True), scalars),
)
@pytest.mark.slow
def test_foreign_fields_and_other_facts_change_no_points(solution, make_unit, values, foreign):
    unit = make_unit(2, [(0, 1)])
    plain = mark_sheet(sheet_of(values), ISSUED, solution, unit=unit)
    odd = mark_sheet(
        sheet_of(foreign | values, learner="bob", attempt=9, given_digest="f" * 64),
        ISSUED,
        solution,
        unit=unit,
    )
    assert odd.tasks == plain.tasks
    assert any("names bob, not ann" in note for note in odd.notes)


@settings(max_examples=100, deadline=None)
@given(st.recursive(scalars | st.booleans(), lambda inner: st.lists(inner, max_size=3) | st.dictionaries(st.text(max_size=8), inner, max_size=3), max_leaves=12))  # fmt: skip
def test_any_json_is_a_sheet_or_one_sentence(solution, make_unit, data):
    text = json.dumps({"format": 1, "learner": "ann", "fields": {"size": {"value": data}}})
    try:
        sheet = parse_sheet(text)
    except SheetError as error:
        assert error.sentence.endswith(".")
        return
    mark_sheet(sheet, ISSUED, solution, unit=make_unit(2, [(0, 1)]))


@settings(max_examples=150, deadline=None)
@given(st.sampled_from([m for m in MEASURES if m.kind == "length"]))
def test_the_right_figure_is_right_in_every_unit_of_its_kind(solution, make_unit, measure):
    there = float(Q(1.25, "mm").to(measure.pint).magnitude)
    values = {"size": write_quantity(there, measure.name)}
    mark = mark_sheet(sheet_of(values), ISSUED, solution, unit=make_unit(2, [(0, 1)]))
    assert mark.fields[0].share == 1


def test_solved_answers_are_the_references(solution, make_unit):
    answers = solve(solution, ISSUED, make_unit(2, [(0, 1)]))
    assert answers == {"size": "1.25 mm", "count": "7", "why": "k2", "which": ["k1", "k3"]}
