"""Pressed and driven parts in a real browser: gauges by keys, answers saved, reopened, marked."""

import pytest

pytestmark = pytest.mark.browser

MODULE = "04-pressed-and-driven"
FRONT = ".jp-NotebookPanel:not(.lm-mod-hidden)"
SEAT = f"{FRONT} .twoshaft-rig:has(.tsg-dial)"
RIGS_AND_FORMS = 12


def dial_mm(seat):
    """What the depth gauge's pointers stand at [mm]."""
    turn = seat.locator(".tsg-pointer").get_attribute("transform")
    return float(turn.removeprefix("rotate(").split()[0]) / 360


def dial_label(seat):
    """What the gauge says of itself: the place it stands at and its reading."""
    return seat.locator("svg.tsg-dial").get_attribute("aria-label")


def type_into(page, label, text):
    page.get_by_label(label).focus()
    page.keyboard.type(text)
    page.keyboard.press("Tab")


def test_gauges_are_read_by_keys_and_the_answers_saved_reopened_and_marked(
    learner, wait_until, screenshot
):
    page = learner.exercise(live=RIGS_AND_FORMS)
    cells = page.locator(f"{FRONT} .jp-Cell").count()
    seat, depths = page.locator(SEAT), []
    for place in ("12 o'clock", "3 o'clock", "6 o'clock", "9 o'clock"):
        button = seat.get_by_role("button", name=place, exact=True)
        button.focus()
        page.keyboard.press("Enter")
        wait_until(lambda place=place: f"At {place}." in dial_label(seat))
        assert button.get_attribute("aria-pressed") == "true"
        depths.append(dial_mm(seat) - 5)
    assert "Long pointer" in dial_label(seat)
    press = page.locator(f"{FRONT} .twoshaft-rig").filter(has=page.get_by_label("Push"))
    press.get_by_label("Push").focus()
    page.keyboard.press("End")
    wait_until(lambda: "reached its shoulder" in press.inner_text())
    for rig in (seat, press):
        rig.locator("button, input").first.focus()
        for key in ("a", "b", "x", "d", "d"):
            page.keyboard.press(key)
    assert page.locator(f"{FRONT} .jp-Cell").count() == cells
    assert press.get_by_label("Pair").count() == 0
    type_into(page, "Mean depth below the face", f"{sum(depths) / 4:.2f} mm")
    type_into(page, "Lean across the seal", f"{max(depths) - min(depths):.2f} mm")
    wait_until(lambda: learner.stored("seal-lean"))
    seat.scroll_into_view_if_needed()
    screenshot(page, "pressed-exercise")

    page = learner.exercise(live=RIGS_AND_FORMS)
    box = page.get_by_label("Mean depth below the face")
    wait_until(lambda: box.input_value() == f"{sum(depths) / 4:.2f} mm")
    fields = learner.marked()
    assert fields["seal-depth"].share == fields["seal-lean"].share == 1
    assert fields["press-grip"].share == 0
