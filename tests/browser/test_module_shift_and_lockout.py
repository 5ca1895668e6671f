"""Module Shift mechanism in a real browser: rig by keys and mouse, a movement saved and marked."""

import re

import pytest

pytestmark = pytest.mark.browser

MODULE = "07-shift-and-lockout"
PROOF = [
    r"^Slide to the gate plane of fifth",
    r"^Turn towards.*fifth",
    r"^Turn towards.*reverse",
    r"^Slide to the gate plane of third",
    r"^Slide to the gate plane of fifth",
    r"^Turn towards.*reverse",
]


def gate(page, number=0):
    rig = page.locator(".twoshaft-rig").filter(has=page.locator(".ts-gate svg")).nth(number)
    rig.locator(".ts-gate").scroll_into_view_if_needed()
    return rig


def test_the_lever_by_keys(learner, screenshot):
    page = learner.lesson(ready=".ts-gate svg")
    rig = gate(page)
    rig.locator(".ts-gate").focus()
    cells = page.locator(".jp-Cell").count()
    for _ in range(10):
        page.keyboard.press("ArrowRight")
    for _ in range(8):
        page.keyboard.press("ArrowUp")
    rig.get_by_text("Fifth is in").wait_for()
    for _ in range(12):
        page.keyboard.press("ArrowDown")
    rig.get_by_text("Stopped by the lockout plate").wait_for()
    rig.locator('.ts-gate[data-turn="30"]').wait_for()  # the picture is that of the last key
    for key in "abxdd":
        page.keyboard.press(key)
    assert page.locator(".jp-Cell").count() == cells
    screenshot(page, "07-gate-by-keys")


def test_the_lever_by_pressing_places_in_its_gate(learner, screenshot):
    page = learner.lesson(ready=".ts-gate svg")
    rig = gate(page)
    rig.locator('.tsl-spot[data-travel="10"][data-turn="9"]').click()
    rig.get_by_text("● Fifth is in").wait_for()
    assert rig.locator(".ts-log li").count() == 2, "along the neutral line, then into the slot"
    rig.locator('.tsl-spot[data-travel="10"][data-turn="-9"]').click()
    rig.locator(".ts-log .ts-stopped").get_by_text("stopped by the lockout plate").wait_for()
    rig.locator('.tsl-spot[data-travel="0"][data-turn="0"]').click()
    rig.get_by_text("○ No gear is in").wait_for()
    rig.evaluate("(node) => node.scrollIntoView({ block: 'start' })")
    screenshot(page, "07-gate-by-pressing")


def test_the_lever_by_mouse_and_a_misbuild(learner, screenshot):
    page = learner.lesson(ready=".ts-gate svg")
    rig = gate(page, 1)
    rig.get_by_label("How it is put together").select_option("finger-pin-not-home")
    rig.get_by_text("The log is empty").wait_for()
    finger = rig.locator('[data-body="finger"]')
    box = finger.bounding_box()
    x, y = box["x"] + box["width"] / 2, box["y"] + box["height"] / 2
    scale = box["width"] / 6  # the finger is 6 mm wide; stroke makes it a little more
    page.mouse.move(x, y)
    page.mouse.down()
    page.mouse.move(x + 10 * scale, y, steps=8)
    page.mouse.move(x + 10 * scale, y - 9 * scale, steps=8)
    rig.get_by_text("Fifth is in").wait_for()
    page.mouse.move(x + 10 * scale, y + 9 * scale, steps=16)
    rig.get_by_text("Reverse is in").wait_for()
    page.mouse.up()
    screenshot(page, "07-gate-misbuild")


def test_a_movement_by_keyboard_saved_reopened_and_marked(learner, wait_until, screenshot):
    page = learner.exercise(ready=".ts-path")
    form = page.locator(".twoshaft-form").filter(has=page.locator(".ts-path")).first
    for words in PROOF:
        form.get_by_role("button", name=re.compile(words)).first.focus()
        page.keyboard.press("Enter")
    form.get_by_text("6 of at most 10 moves").wait_for()
    form.locator(".ts-status-saved").wait_for()
    # a move too many, taken out again by key
    form.get_by_role("button", name="Turn back to neutral").focus()
    page.keyboard.press("Enter")
    form.get_by_text("7 of at most 10 moves").wait_for()
    wait_until(lambda: len(learner.stored("lockout-way") or ()) == len(PROOF) + 1)
    form.locator(".ts-path-move").nth(6).focus()
    page.keyboard.press("Delete")
    form.get_by_text("6 of at most 10 moves").wait_for()
    # The sheet counts: the line under the form may still be that of the move before.
    wait_until(lambda: len(learner.stored("lockout-way") or ()) == len(PROOF))
    screenshot(page, "07-movement")
    page.reload()
    page.wait_for_selector(".ts-path")
    form = page.locator(".twoshaft-form").filter(has=page.locator(".ts-path")).first
    form.get_by_text("6 of at most 10 moves").wait_for()

    fields = learner.marked()
    assert fields["lockout-way"].share == 1 and fields["lockout-way"].passed
    assert fields["reveal-way"].share == 0
