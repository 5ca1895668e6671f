"""How the course works, and bench safety: typical wrong answers and what they earn and say."""

import pytest

from twoshaft.jobsheet import read_quantity
from twoshaft.models import lifting
from twoshaft.readings.course_and_safety.scene import hazards_seen
from twoshaft.safety import load_safety
from twoshaft.units.quantities import Q

MODULE = "00-course-and-safety"
MUST_PASS = {"acts-do", "acts-hoist", "eyes-do", "lift-decision"}


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
    assert "costs marks once" in fields["course-points"].sentences[0]


def wrong_line(clean, name, line, option):
    """The right answers of a field with another one in a line, as they are stored."""
    return clean.fields[name].store({**clean.references[name].value, line: option})


def shown(clean, name):
    return dict(clean.fields[name].lines)


@pytest.mark.parametrize("name", sorted(MUST_PASS))
def test_any_line_that_is_wrong_fails_its_outcome_and_is_told_why(marked, clean, name):
    right, options = clean.references[name].value, dict(clean.fields[name].options)
    careful = {slip.value for slip in clean.references[name].slips if slip.safe}
    for line, answer in right.items():
        for option in options:
            if option == answer:
                continue
            fields, whole = marked(
                **{name.replace("-", "_"): wrong_line(clean, name, line, option)}
            )
            field = fields[name]
            assert field.passed == ((line, option) in careful)
            assert whole.met == field.passed and field.share < 1
            assert shown(clean, name)[line].rstrip(".") in " ".join(field.sentences)


@pytest.mark.parametrize("name", sorted(MUST_PASS))
def test_one_answer_in_every_line_never_passes(marked, clean, name):
    for option in dict(clean.fields[name].options):
        same = clean.fields[name].store(dict.fromkeys(clean.references[name].value, option))
        careful = {slip.value for slip in clean.references[name].slips if slip.safe}
        fair = all(
            answer == option or (line, option) in careful
            for line, answer in clean.references[name].value.items()
        )
        field = marked(**{name.replace("-", "_"): same})[0][name]
        assert not field.passed or fair


def test_more_care_where_nothing_is_wrong_costs_marks_but_does_not_fail(module, marked):
    seen = set()
    for learner in (f"ann{n}" for n in range(6)):
        clean = module.clean(learner)
        for name in ("acts-do", "eyes-do"):
            well = [line for line, do in clean.references[name].value.items() if do == "go"]
            for option in dict(clean.fields[name].options):
                if well and option != "go":
                    wrong = {name.replace("-", "_"): wrong_line(clean, name, well[0], option)}
                    field = marked(learner, **wrong)[0][name]
                    assert field.passed and field.share < 1
                    seen.add(name)
    assert seen == {"acts-do", "eyes-do"}


def test_a_true_reason_of_something_else(marked, clean):
    line, right = next(iter(clean.references["why-stopped"].value.items()))
    other = next(id for id in dict(clean.fields["why-stopped"].options) if id != right)
    field = marked(why_stopped=wrong_line(clean, "why-stopped", line, other))[0]["why-stopped"]
    assert 0 < field.share < 1
    assert "think of" in " ".join(field.sentences)


def test_saved_is_not_handed_in(module, marked):
    seen = 0
    for learner in (f"ann{n}" for n in range(6)):
        clean = module.clean(learner)
        hand = [id for id, do in clean.references["course-cases"].value.items() if do == "hand"]
        for line in hand:
            wrong = wrong_line(clean, "course-cases", line, "done")
            field = marked(learner, course_cases=wrong)[0]["course-cases"]
            assert field.share < 1 and "Saved is not handed in" in " ".join(field.sentences)
            seen += 1
    assert seen


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


def across(clean):
    """The index with a one carried too often, or not at all: on the other side of one."""
    right = clean.references["lift-index"].value
    index = right - 1 if right > 1 else right + 1
    assert (index < 1) == (right > 1)
    return index


def test_a_must_pass_decision_is_judged_on_the_true_index(marked, clean):
    right = clean.references["lift-decision"].value["own"]
    other = {"alone": "table", "table": "alone"}[right]
    index = across(clean)
    decision = wrong_line(clean, "lift-decision", "own", other)
    fields, whole = marked(lift_index=f"{index}", lift_decision=decision)
    assert fields["lift-index"].share == 0
    assert fields["lift-decision"].share == 1 and fields["lift-decision"].carried
    # Lifting it by hand where an aid is needed fails; an aid that is not needed does not.
    assert fields["lift-decision"].passed == (other == "table")
    assert whole.met == (other == "table")


def test_that_an_aid_is_more_than_asked_is_said_of_the_true_lift_alone(marked, clean):
    """A wrong index of one's own never makes the sentence of a load that needs the aid."""
    index = f"{across(clean)}"
    for line, load in clean.references["lift-decision"].value.items():
        decision = wrong_line(clean, "lift-decision", line, "table")
        if load == "table":
            continue
        field = marked(lift_index=index, lift_decision=decision)[0]["lift-decision"]
        said = any("Safe, but more than the lift asks for" in one for one in field.sentences)
        # With one's own index above 1 the aid for the own lift follows, and is not found fault with.
        assert said == (load == "alone" and line != "own")


def test_a_table_that_is_not_marked_for_the_load_fails(module, marked):
    for learner in ("ann", "bob", "cal"):
        clean = module.clean(learner)
        value = clean.references["lift-decision"].value
        heavy = next(line for line, do in value.items() if do == "stronger")
        bare = next(line for line, do in value.items() if do == "weigh")
        for line, said in ((heavy, "more than the table is marked for"), (bare, "Nobody knows")):
            wrong = wrong_line(clean, "lift-decision", line, "table")
            field = marked(learner, lift_decision=wrong)[0]["lift-decision"]
            assert not field.passed and said in " ".join(field.sentences)


def test_reach_upside_down_cannot_be_worked_on_with(marked, issued):
    fields, _ = marked(lift_reach=f"{issued['given']['lift']['reach_cm'] / 25:.2f}")
    assert fields["lift-reach"].share == 0
    assert "upside down" in fields["lift-reach"].sentences[0]
    assert fields["lift-limit"].share == 1


def test_a_weak_change_is_told_without_the_key(marked, issued):
    lift = issued["given"]["lift"]
    parts = lifting.Lift.measured(lift).multipliers()
    weak = max(("travel", "twist", "height"), key=lambda name: parts[name])
    limit = lifting.weight_limit(*({**parts, weak: 1.0}).values()).m_as("kg")
    field = marked(lift_best=f"{limit:.2f} kg")[0]["lift-best"]
    assert field.share == 0.25 and "another change does more" in field.sentences[0]


def test_the_best_change_follows_from_own_multipliers(marked, issued):
    """Beside the solution: the smallest multiplier taken as 1."""
    lift = issued["given"]["lift"]
    parts = lifting.Lift.measured(lift).multipliers()
    least = min(("reach", "height", "travel", "twist"), key=lambda name: parts[name])
    best = lifting.weight_limit(*({**parts, least: 1.0}).values()).m_as("kg")
    assert marked(lift_best=f"{best:.2f} kg")[0]["lift-best"].share == 1


def test_pounds_for_kilograms_are_read_and_a_wrong_unit_is_named(marked, right):
    right = read_quantity(right["lift-limit"], "kg")
    fields, _ = marked(lift_limit=f"{right.m_as('lb'):.2f} lb")
    assert fields["lift-limit"].share == 1
    fields, _ = marked(lift_limit=f"{right.m_as('lb'):.2f} kg")
    assert fields["lift-limit"].share == 0
    assert "the figure fits, but in lb" in fields["lift-limit"].sentences[0]
