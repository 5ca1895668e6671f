"""How the course works, and bench safety: typical wrong answers and what they earn and say."""

import pytest

from twoshaft.jobsheet import read_quantity
from twoshaft.models import lifting
from twoshaft.readings.course_and_safety.scene import hazards_seen
from twoshaft.safety import load_safety
from twoshaft.units.quantities import Q

MODULE = "00-course-and-safety"


@pytest.fixture(scope="module", params=["ann", "bob", "cal", "dee"])
def issued(request, module):
    return module.issue(request.param)


@pytest.fixture
def right(module, issued):
    return module.right(issued)


def test_newton_metres_set_on_a_scale_in_pound_feet(marked, issued):
    fields, _ = marked(figures_scale=f"{issued['given']['figures']['torque_nm']}")
    assert fields["figures-scale"].share == 0
    assert "overtightens by a third" in fields["figures-scale"].sentences[0]


def test_inches_taken_for_feet_keep_a_quarter(marked, issued):
    torque = Q(issued["given"]["figures"]["torque_nm"], "N*m")
    fields, _ = marked(figures_scale=f"{torque.m_as('lbf*in'):.0f}")
    assert fields["figures-scale"].share == 0.25
    assert "twelve inches" in fields["figures-scale"].sentences[0]


def test_a_thou_taken_for_a_hundredth_of_a_millimetre(marked, issued):
    one = issued["given"]["figures"]
    spacer = read_quantity(f"{one['spacer_in']} in", "in").m_as("mm")
    wrong = one["shim_mm"] + spacer + one["foil_thou"] / 100
    fields, _ = marked(figures_stack=f"{wrong:.2f} mm")
    assert fields["figures-stack"].share == 0.25
    assert "thousandth of an inch" in fields["figures-stack"].sentences[0]


def test_the_same_stack_in_inches_and_a_slip_of_ten(marked, right):
    right = read_quantity(right["figures-stack"], "mm")
    fields, _ = marked(figures_stack=f"{right.m_as('in'):.4f} in")
    assert fields["figures-stack"].share == 1
    fields, _ = marked(figures_stack=f"{10 * right.m_as('mm'):.2f} mm")
    assert fields["figures-stack"].share == 0
    assert "10 times too large" in fields["figures-stack"].sentences[0]


def test_one_and_a_quarter_read_as_eleven_quarters(marked, issued):
    one = issued["given"]["figures"]
    whole, part = one["turns"].split()
    run_on = read_quantity(f"{whole}{part} turn", "turn").m_as("degree")
    fields, _ = marked(figures_angle=f"{run_on + one['degrees']:.1f}°")
    assert fields["figures-angle"].share == 0.25
    assert "one turn and" in fields["figures-angle"].sentences[0]


def test_what_is_in_for_what_is_missing(marked, issued):
    one = issued["given"]["figures"]
    fields, _ = marked(figures_oil=f"{one['jugs'] * one['jug_ml']} mL")
    assert fields["figures-oil"].share == 0.25


def test_a_slip_charged_more_than_once(marked, issued):
    chain = issued["given"]["course"]["chain"]
    only_right = sum(points for _, points, word in chain if word == "right")
    fields, _ = marked(course_points=f"{only_right}")
    assert fields["course-points"].share == 0
    assert "charged once" in fields["course-points"].sentences[0]


def test_a_tempting_act_fails_the_must_pass_and_is_told_why(marked, issued):
    by_seen = {hazard.seen: hazard for hazard in load_safety().hazard_by_id.values()}
    n, hazard = next(
        (n, by_seen[place["seen"]])
        for n, place in enumerate(issued["given"]["acts"]["places"], 1)
        if by_seen[place["seen"]].must_pass
    )
    fields, whole = marked(**{f"acts_{n}_act": f"{hazard.id}-1"})
    field = fields[f"acts-{n}-act"]
    assert field.share == 0 and not field.passed and not whole.met
    assert field.sentences == (hazard.wrong[0].because,)
    assert hazard.act not in " ".join(field.sentences)


def test_a_true_reason_of_something_else(marked, issued):
    one = issued["given"]["why"]["cautions"][0]
    other = next(id for id, _ in one["options"] if id != one["caution"][0])
    fields, _ = marked(why_1=other)
    assert fields["why-1"].share == 0
    assert fields["why-1"].sentences[0].startswith("True, but it is why you should:")


def test_a_place_let_through_and_a_place_stopped_for_nothing(marked, issued):
    safety = load_safety()
    found = list(hazards_seen(safety, issued["given"]["picture"]["views"]))
    well = next(place for place in safety.places if place.id not in found)
    fields, _ = marked(picture_hazards=found[1:])
    assert fields["picture-hazards"].share == pytest.approx(5 / 6)
    fields, _ = marked(picture_hazards=[*found, well.id])
    assert fields["picture-hazards"].share == pytest.approx(5 / 6)
    assert f"{well.name}: {well.because}" in fields["picture-hazards"].sentences
    fields, _ = marked(picture_hazards=[place.id for place in safety.places])
    assert fields["picture-hazards"].share == 0


def test_the_order_as_shown_earns_nothing_and_fails_the_must_pass(marked, issued):
    fields, whole = marked(first_order=[step for step, _ in issued["given"]["first"]["start"]])
    assert fields["first-order"].share == 0
    assert not fields["first-order"].passed and not whole.met


def test_glasses_left_off_fail_the_must_pass(marked, right):
    fields, whole = marked(eyes_jobs=right["eyes-jobs"][1:])
    assert fields["eyes-jobs"].share == 0.75
    assert not fields["eyes-jobs"].passed and not whole.met


def test_glasses_where_none_are_asked_for_cost_marks_but_do_not_fail(marked, right, issued):
    right = right["eyes-jobs"]
    extra = next(id for id, _ in issued["given"]["eyes"]["options"] if id not in right)
    fields, _ = marked(eyes_jobs=[*right, extra])
    assert 0 < fields["eyes-jobs"].share < 1 and fields["eyes-jobs"].passed
    fields, _ = marked(eyes_jobs=[*list(right)[1:], extra])
    assert not fields["eyes-jobs"].passed
    fields, whole = marked(eyes_jobs=[id for id, _ in issued["given"]["eyes"]["options"]])
    assert fields["eyes-jobs"].share == 0 and not whole.met  # ticking all shows no knowledge


def test_a_slip_in_a_multiplier_is_charged_once(marked, issued):
    lift = issued["given"]["lift"]
    parts = lifting.Lift.measured(lift).multipliers()
    height = 1 - 0.003 * lift["height_cm"]
    limit = lifting.weight_limit(*({**parts, "height": height}).values()).m_as("kg")
    index = lift["mass_kg"] / limit
    fields, whole = marked(
        lift_height=f"{height:.3f}", lift_limit=f"{limit:.2f} kg", lift_index=f"{index:.3f}"
    )
    assert fields["lift-height"].share == 0.25
    assert "distance from 75 cm" in fields["lift-height"].sentences[0]
    assert fields["lift-limit"].share == 1 and fields["lift-limit"].carried
    assert fields["lift-index"].share == 1 and fields["lift-index"].carried
    lost = [field.name for field in whole.fields if field.share < 1]
    assert lost == ["lift-height"]


def test_a_must_pass_decision_is_judged_on_the_true_index(marked, right):
    other = {"alone": "aid", "aid": "alone"}[right["lift-decision"]]
    index = 0.5 if other == "alone" else 1.5
    reason = "below" if other == "alone" else "above"
    fields, whole = marked(lift_index=f"{index}", lift_decision=other, lift_reason=reason)
    assert fields["lift-index"].share == 0
    assert fields["lift-decision"].share == 1 and fields["lift-decision"].carried
    # Lifting it alone where an aid is needed fails; an aid that is not needed does not.
    assert fields["lift-decision"].passed == (other == "aid")
    assert whole.met == (other == "aid")


def test_more_care_than_the_lift_needs_costs_marks_but_does_not_fail(marked, right):
    wanted = right["lift-decision"]
    for decision in ("two", "quick", "alone", "aid"):
        if decision == wanted:
            continue
        fields, _ = marked(lift_decision=decision)
        assert fields["lift-decision"].passed == (decision == "aid")
        assert fields["lift-decision"].share == (0.5 if decision == "aid" else 0)


def test_reach_upside_down_cannot_be_worked_on_with(marked, issued):
    fields, _ = marked(lift_reach=f"{issued['given']['lift']['reach_cm'] / 25:.2f}")
    assert fields["lift-reach"].share == 0
    assert "Upside down" in fields["lift-reach"].sentences[0]
    assert fields["lift-limit"].share == 1


def test_weight_alone_and_a_weak_change_are_told_why_without_the_key(marked, right):
    weak = next(k for k in ("shorter", "face") if k != right["lift-change"])
    fields, _ = marked(lift_reason="light", lift_change=weak)
    assert fields["lift-reason"].share == 0
    assert "easiest lift only" in fields["lift-reason"].sentences[0]
    assert fields["lift-change"].share == 0
    assert "another change does more" in fields["lift-change"].sentences[0]


def test_pounds_for_kilograms_are_read_and_a_wrong_unit_is_named(marked, right):
    right = read_quantity(right["lift-limit"], "kg")
    fields, _ = marked(lift_limit=f"{right.m_as('lb'):.2f} lb")
    assert fields["lift-limit"].share == 1
    fields, _ = marked(lift_limit=f"{right.m_as('lb'):.2f} kg")
    assert fields["lift-limit"].share == 0
    assert "the figure fits, but in lb" in fields["lift-limit"].sentences[0]
