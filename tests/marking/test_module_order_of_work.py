"""Order of work: typical wrong answers and what they earn and say."""

import json

from twoshaft.models import order
from twoshaft.readings import given_in
from twoshaft.units import load_unit

MODULE = "02-order-of-work"
MILD = {"works", "cost"}


def test_another_plan_that_works_earns_nothing_where_few_steps_may_move(marked, clean):
    task = clean.references["whole-unit-order"].value
    field = marked(whole_unit_order=list(order.model_order(task)))[0]["whole-unit-order"]
    assert field.share == 0 and "at most 14 may be" in field.sentences[0]


def test_the_plan_mended_with_few_moves_earns_all(marked, clean, issued):
    task = clean.references["whole-unit-order"].value
    start = [step for step, _ in issued["given"]["whole_unit"]["start"]]
    field = marked(whole_unit_order=list(order.mended(task, start)))[0]["whole-unit-order"]
    assert field.share == 1
    assert marked(whole_unit_order=start)[0]["whole-unit-order"].share == 0


def test_a_dangerous_plan_let_through_and_a_wrong_danger_fail(module, marked):
    for learner in ("ann", "bob", "cal"):
        clean = module.clean(learner)
        asked, leads = clean.fields["safe-plans"], clean.references["safe-plans"].value
        right = {letter: min(good) for letter, good in leads.items()}
        for letter, good in leads.items():
            for option in dict(asked.options):
                if option in good:
                    continue
                wrong = asked.store({**right, letter: option})
                field = marked(learner, safe_plans=wrong)[0]["safe-plans"]
                assert field.share < 1 and f"Order {letter}" in " ".join(field.sentences)
                # What costs and what works may be mixed up without harm; a danger may not.
                assert field.passed == (good <= MILD and option in MILD)


def test_a_step_that_waits_and_one_that_is_ready_are_told_apart(marked, clean):
    asked, needed = (kept["next-steps-ready"] for kept in (clean.fields, clean.references))
    right = {step: min(good) for step, good in needed.value.items()}
    late = next(step for step, answer in right.items() if answer != "now")
    wrong = asked.store({**right, late: "now"})
    field = marked(next_steps_ready=wrong)[0]["next-steps-ready"]
    assert 0 < field.share < 1 and "still to be done" in " ".join(field.sentences)


def test_places_of_a_build_half_done_are_told_and_one_wrong_line_earns_half(marked, clean, issued):
    half = given_in("order-of-work", issued["given"]).next_steps.half
    asked, right = (kept["next-steps-seen"] for kept in (clean.fields, clean.references))
    assert [*right.value] == ["now", "before", "after"]
    good, stands = (
        {line: min(some) for line, some in right.value.items()},
        {lie.part for lie in half.scene.lies},
    )
    assert marked(next_steps_seen=asked.store(good))[0]["next-steps-seen"].share == 1
    for letter, part in half.scene.spots:
        for line in good:
            field = marked(next_steps_seen=asked.store({**good, line: letter}))[0][
                "next-steps-seen"
            ]
            told = " ".join(field.sentences)
            if letter in right.value[line]:
                assert field.share == 1
            else:
                assert field.share == 0.5 and ("in place already" in told) == (part in stands)
    same = asked.store(dict.fromkeys(good, good["now"]))  # what is ready is no answer to all
    assert marked(next_steps_seen=same)[0]["next-steps-seen"].share <= 0.5


def test_neither_the_picture_nor_its_words_name_a_part(clean, issued):
    half = given_in("order-of-work", issued["given"]).next_steps.half
    told = json.dumps(clean.fields["next-steps-seen"].told())
    unit = load_unit("tarnbeck-b5")
    shown = [*(lie.part for lie in half.scene.lies), *(spot.text for spot in half.scene.spots)]
    for part in shown:
        assert f'"{part}' not in told and unit.part_by_id[part].name not in told


def test_what_is_typed_into_the_picture_by_hand_does_no_harm(marked):
    for value in (
        ["now=Z"],
        ["now=A", "now=B"],
        ["=A"],
        ["now"],
        "A",
        7,
        [["now", "A"]],
        ["x=A"] * 999,
    ):
        assert marked(next_steps_seen=value)[0]["next-steps-seen"].share == 0
