"""Module Threaded joints: what typical wrong answers earn, and what the learner is told."""

from pathlib import Path

import pytest

from twoshaft.jobsheet import Answer, SheetData
from twoshaft.models import joint
from twoshaft.readings import issue_record
from twoshaft.units import load_unit
from twoshaft.units.quantities import Q
from twoshaft_grader.marking import load_solution, mark_sheet, run_clean, solve

SOLUTION = Path(__file__).parents[2] / "solutions" / "03-threaded-joints.ipynb"
LEARNERS = ["a1", "a2", "a3", "a4", "a5", "a6"]
MUST_PASS = {"state-do", "alloy-hand", "blind-do", "nut-lock"}


@pytest.fixture(scope="module")
def solution():
    return load_solution(SOLUTION)


@pytest.fixture(scope="module")
def unit():
    return load_unit("tarnbeck-b5")


@pytest.fixture(scope="module", params=LEARNERS)
def case(request, solution, unit):
    """One learner's record, clean reference and full answers."""
    issued = issue_record("threaded-joints", unit, salt="test", learner=request.param, attempt=1)
    return issued, run_clean(solution, issued, unit), solve(solution, issued, unit)


@pytest.fixture
def marked(solution, unit):
    """Mark a learner's full answers with some of them changed; gives the fields by name."""

    def mark(case, **changes):
        issued, _, full = case
        answers = full | {name.replace("_", "-"): value for name, value in changes.items()}
        sheet = SheetData(
            learner=issued["learner"],
            module="threaded-joints",
            attempt=1,
            answers={name: Answer(value, 1) for name, value in answers.items()},
        )
        done = mark_sheet(sheet, issued, solution, unit=unit)
        return {field.name: field for field in done.fields}

    return mark


def told(field):
    return " ".join(field.sentences)


def stored(case, name, value):
    return case[1].fields[name].store(value)


def test_four_safety_items_must_be_passed(case):
    references = case[1].references
    assert {name for name, one in references.items() if one.must_pass} == MUST_PASS


def test_three_fifths_of_the_points_are_decisions(case, solution):
    _, clean, _ = case
    decided = whole = 0.0
    for task, names in clean.tasks.items():
        total = sum(clean.references[name].weight for name in names)
        for name in names:
            points = solution.points[task] * clean.references[name].weight / total
            whole += points
            decided += points * (clean.fields[name].kind != "number")
    assert 0.55 < decided / whole < 0.68


def test_the_adapter_left_out(case, marked):
    torque = case[1].references["card-torque"].value
    fields = marked(case, card_setting=stored(case, "card-setting", torque))
    assert fields["card-setting"].share == 0
    assert "leaves the adapter out" in told(fields["card-setting"])
    assert fields["card-clamp"].share == 1


def test_the_adapter_turned_round(case, marked):
    right = case[1].references
    torque, setting = right["card-torque"].value, right["card-setting"].value
    fields = marked(case, card_setting=stored(case, "card-setting", torque * torque / setting))
    assert fields["card-setting"].share == 0.25
    assert "would get too much" in told(fields["card-setting"])


def test_the_figure_of_the_card_taken_as_newton_metres(case, marked):
    card = case[0]["given"]["card"]
    fields = marked(case, card_torque=f"{card['figure']:g} N·m")
    assert fields["card-torque"].share == 0
    assert card["unit"] in told(fields["card-torque"])


def test_a_torque_in_the_workshops_units_is_right(case, marked):
    card = case[0]["given"]["card"]
    fields = marked(case, card_torque=f"{card['figure']:g} {card['unit']}")
    assert fields["card-torque"].share == 1


def test_the_wrong_state_of_the_thread(case, marked):
    given = case[0]["given"]["state"]
    k = {state: value for state, _, value in given["factors"]}[given["state"][0]]
    meant = joint.clamp_short(Q(given["torque_nm"], "N*m"), k, Q(given["diameter_mm"], "mm"))
    fields = marked(case, state_clamp=stored(case, "state-clamp", meant), state_do="as-found")
    assert fields["state-clamp"].share == 0
    assert "found in another" in told(fields["state-clamp"])
    assert fields["state-do"].share == 0
    assert not fields["state-do"].passed
    assert "one state of the thread" in told(fields["state-do"])


def test_an_early_slip_is_charged_once(case, marked):
    """A torque a tenth too high, gone on with rightly: clamp and share of yield are right."""
    right = case[1].references
    changed = {}
    for name in ("found-torque", "found-clamp", "found-use"):
        changed[name.replace("-", "_")] = stored(case, name, 1.1 * right[name].value)
    fields = marked(case, **changed)
    assert fields["found-torque"].share == 0
    assert fields["found-clamp"].share == fields["found-use"].share == 1


def test_a_slip_of_ten_is_named(case, marked):
    use = case[1].references["found-clamp"].value
    fields = marked(case, found_clamp=stored(case, "found-clamp", use / 10))
    assert fields["found-clamp"].share == 0
    assert "10 times too small" in told(fields["found-clamp"])


def test_oil_that_has_room_is_forgotten(case, marked):
    blind = case[0]["given"]["blind"]
    turns = blind["oil_ml"] * 1e3 / blind["area_mm2"] / blind["pitch_mm"]
    fields = marked(case, blind_turns=f"{turns:.4f}")
    assert fields["blind-turns"].share == 0.25
    assert "room under the tip" in told(fields["blind-turns"])


def test_the_whole_hole_taken_for_the_room(case, marked):
    blind = case[0]["given"]["blind"]
    whole = blind["area_mm2"] * blind["depth_mm"] / 1e3
    fields = marked(case, blind_room=f"{whole:.3f} mL")
    assert fields["blind-room"].share == 0.25
    assert "the bolt fills most of it" in told(fields["blind-room"])


def test_the_spread_over_the_loosest_bolt(case, marked):
    right = case[1].references
    given = case[0]["given"]["face"]
    gap = right["face-spread"].value.m_as("percent") / 100 * given["target_kn"]
    wrong = 100 * gap / right["face-clamp"].value.m_as("kN")
    fields = marked(case, face_spread=f"{wrong:.1f} %")
    assert fields["face-spread"].share == 0.25
    assert "divided by the loosest" in told(fields["face-spread"])


def test_a_round_too_few(case, marked):
    needed = case[1].references["face-rounds"].value
    fields = marked(case, face_rounds=str(needed - 1))
    assert fields["face-rounds"].share == 0
    assert "larger than allowed" in told(fields["face-rounds"])


def test_the_wrong_way_of_the_nut(case, marked):
    right = case[1].references["nut-way"].value
    other = {"undo-clockwise": "undo-anticlockwise"}.get(right, "undo-clockwise")
    fields = marked(case, nut_way=other)
    assert fields["nut-way"].share == 0
    assert "LH" in told(fields["nut-way"])


@pytest.mark.parametrize("name", sorted(MUST_PASS))
def test_every_wrong_choice_of_a_safety_item_fails_and_says_why(case, marked, name):
    _, clean, _ = case
    right = clean.references[name].value
    for key, _ in clean.fields[name].options:
        if key != right:
            field = marked(case, **{name.replace("-", "_"): key})[name]
            assert field.share == 0
            assert not field.passed
            assert told(field) != "Another answer fits better."
            assert dict(clean.fields[name].options)[right] not in told(field)


def test_no_key_is_told_where_an_answer_is_wrong(case, marked):
    """Sentences of wrong choices never hold the words of the right option."""
    _, clean, _ = case
    for name, asked in clean.fields.items():
        if asked.kind == "choice" and isinstance(clean.references[name].value, str):
            words = dict(asked.options)[clean.references[name].value]
            for slip in clean.references[name].slips:
                assert words not in slip.sentence


def test_ticking_everything_earns_nothing(case, marked):
    steps = [key for key, _ in case[0]["given"]["job"]["steps"]]
    fields = marked(case, job_slips=steps)
    assert fields["job-slips"].share == 0


def test_a_sound_step_ticked_is_told(solution, unit, marked):
    issued = next(
        record
        for n in range(40)
        if (
            record := issue_record("threaded-joints", unit, salt="test", learner=f"b{n}", attempt=1)
        )["given"]["job"]["id"]
        == "cover"
    )
    case = issued, run_clean(solution, issued, unit), solve(solution, issued, unit)
    right = list(case[1].references["job-slips"].value)
    fields = marked(case, job_slips=[*right, "extension"])
    assert 0 < fields["job-slips"].share < 1
    assert "no lever" in told(fields["job-slips"])
