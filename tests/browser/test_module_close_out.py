"""Close out in a real browser: a chart read, answers saved, reopened, marked; rigs by keys."""

from itertools import pairwise

import pytest

from twoshaft_grader.marking import solve

pytestmark = pytest.mark.browser

MODULE = "13-close-out"
FORM = ".jp-NotebookPanel:not(.lm-mod-hidden) .twoshaft-live"
ASKED = "From the chart: viscosity of drum"


def test_a_chart_is_read_and_the_answer_saved_reopened_and_marked(learner, wait_until, screenshot):
    right = solve(learner.solution, learner.issued, learner.unit)
    page = learner.exercise(live=10)
    form = page.locator(FORM, has_text=ASKED).first
    box = form.locator("input[type=text]").first
    box.focus()
    page.keyboard.type(right["oil-read"])
    page.keyboard.press("Tab")
    wait_until(lambda: learner.stored("oil-read"))
    form.scroll_into_view_if_needed()
    screenshot(page, "close-out-oil")
    for asked, name in (
        ("Pressure lost by the leak alone", "leak"),
        ("What do you look at first?", "road"),
    ):
        page.locator(FORM, has_text=asked).first.scroll_into_view_if_needed()
        screenshot(page, f"close-out-{name}")

    page = learner.exercise(live=10)
    again = page.locator(FORM, has_text=ASKED).first.locator("input[type=text]").first
    wait_until(lambda: again.input_value() != "")
    fields = learner.marked()
    assert fields["oil-read"].share == 1
    assert fields["oil-do"].share == 0 and not fields["oil-do"].passed


@pytest.mark.parametrize("dark", [False, True], ids=["light", "dark"])
def test_rigs_answer_to_keys(learner, wait_until, screenshot, dark):
    look = "dark" if dark else "light"
    page = learner.lesson(live=6, dark=dark)
    rigs = page.locator(
        ".jp-NotebookPanel:not(.lm-mod-hidden) .twoshaft", has=page.locator("svg, ul.tsc-causes")
    )

    def rig(name):
        return rigs.filter(has=page.get_by_role("group", name=name)).first

    chart = rig("Oil over temperature")
    chart.locator("input[type=range]").last.focus()
    page.keyboard.press("End")
    wait_until(lambda: "At 120 °C" in chart.inner_text())
    chart.scroll_into_view_if_needed()
    screenshot(page, f"close-out-chart-{look}")

    breather = rig("The breather")
    breather.locator("input[type=range]").first.focus()
    page.keyboard.press("End")
    breather.locator("select").first.focus()
    page.keyboard.type("blocked")
    wait_until(lambda: "presses oil out" in breather.inner_text())
    breather.scroll_into_view_if_needed()
    screenshot(page, f"close-out-breather-{look}")

    leak = rig("The leak test")
    leak.locator("input[type=range]").first.focus()
    page.keyboard.press("End")
    wait_until(lambda: "proven leaking" in leak.inner_text())
    leak.scroll_into_view_if_needed()
    screenshot(page, f"close-out-leak-{look}")

    road = rig("From complaint to cause")
    road.scroll_into_view_if_needed()
    tops = [one.bounding_box()["y"] for one in road.locator("select").all()]
    assert len(tops) == 5 and all(b >= a + 24 for a, b in pairwise(tops)), "one test a line"
    road.locator("select").first.focus()
    page.keyboard.type("yes")
    wait_until(lambda: "One cause is left" in road.inner_text())
    road.scroll_into_view_if_needed()
    screenshot(page, f"close-out-road-{look}")
