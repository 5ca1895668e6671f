"""An order that keeps every rule can still let a clock of safety run out."""

import pytest

from twoshaft.jobsheet.kinds import Order
from twoshaft.models import order
from twoshaft.units import load_unit
from twoshaft_grader.marking.kinds import Reference, judge


def dawdling(task, clock):
    """A correct order in which the clock's end is put off as long as the rules allow."""
    end, done = task.steps[clock.ends], []
    before = task.before[clock.starts] | 1 << clock.starts
    good = order.model_order(task)
    done = [step for step in good if before >> task.number[step] & 1]
    while len(done) < len(task.steps):
        ready = order.ready_steps(task, done)
        done.append(next((step for step in ready if step != end), end))
    return tuple(done)


@pytest.mark.slow
def test_a_safety_clock_that_runs_out_fails_the_must_pass():
    task = order.OrderTask.from_unit(load_unit("tarnbeck-b5"))
    clock = next(clock for clock in task.clocks if clock.reason.safety)
    good, late = tuple(order.model_order(task)), dawdling(task, clock)
    slip = order.plan_slip(task, late)
    assert slip.size == 0 and clock.reason.text in {reason.text for reason in slip.late}
    asked = Order("plan", "Plan", tuple((s, task.label(s)) for s in reversed(good)))
    reference = Reference("plan", task, "plan-order", 1.0, None, True, (), "")
    assert judge(asked, reference, good).safe
    judged = judge(asked, reference, late)
    assert judged.share == 1 and not judged.safe
    assert "time runs out" in judged.sentences[0]
