"""Order of work: typical wrong answers and what they earn and say."""

from twoshaft.models import order

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
