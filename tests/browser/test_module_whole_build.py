"""The whole build in a real browser: built by keys, the record mended in its form, marked."""

import pytest

from twoshaft.models.order import ready_steps
from twoshaft.models.wholebuild import Job, asks_at, right_values

pytestmark = pytest.mark.browser

MODULE = "10-whole-build"
FRONT = ".jp-NotebookPanel:not(.lm-mod-hidden)"
RIG = f"{FRONT} .twoshaft-rig"


def press(page, button):
    button.focus()
    page.keyboard.press("Enter")


def test_a_decision_at_the_bench_is_kept_and_its_record_mended(learner, wait_until, screenshot):
    job = Job.of(learner.unit, learner.issued["given"]["bench"])
    step, way = next(
        (step, asks[0])
        for step in ready_steps(job.task, ())
        if (asks := asks_at(job, step)) and {ask.kind for ask in asks} == {"way"}
    )
    right = right_values(job, way)[way.id]
    options = dict(map(tuple, way.fields[0].arguments["options"]))
    wrong = next(key for key in options if key != right)

    page = learner.exercise(live=11)
    rig = page.locator(RIG).first
    names = {stage.id: stage.name for stage in learner.unit.stages}
    rig.get_by_label("Stage", exact=True).select_option(label=names[job.task.stage(step)])
    press(page, rig.locator(f'[data-step="{step}"]'))
    rig.locator(".ts-hand").get_by_role("radio", name=options[wrong], exact=True).focus()
    page.keyboard.press("Space")
    wait_until(lambda: learner.stored("ways") == [f"{way.id}={wrong}"])
    press(page, rig.get_by_role("button", name=f"Do it: {job.task.label(step)}"))
    wait_until(lambda: (learner.stored("build-order") or [None])[0] == step)
    assert "wrong" not in rig.locator(".ts-told").inner_text().lower()
    rig.scroll_into_view_if_needed()
    screenshot(page, "whole-build-bench")
    learner.leave()

    page = learner.exercise(live=11)
    (prompt,) = (spec.prompt for spec in way.fields)
    again = page.locator(f"{FRONT} .twoshaft-live").get_by_label(prompt).last
    wait_until(lambda: again.input_value() == wrong)
    again.scroll_into_view_if_needed()
    screenshot(page, "whole-build-ways")
    again.select_option(label=options[right])
    wait_until(lambda: learner.stored("ways") == [f"{way.id}={right}"])
    gap = page.get_by_label("Differential: shim that leaves neither play nor preload")
    gap.first.fill("0,9 mm")
    page.keyboard.press("Tab")
    wait_until(lambda: learner.stored("gap-differential") == "0,9 mm")
    gap.first.scroll_into_view_if_needed()
    screenshot(page, "whole-build-record")
    fields = learner.marked()
    assert fields["ways"].must_pass and not fields["ways"].passed
    assert fields["gap-differential"].share == 0
    assert fields["build-order"].share < 1
