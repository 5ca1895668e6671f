"""A prediction, earlier questions and a calculation in a real browser, by keys alone, and kept."""

import json

import pytest

pytestmark = pytest.mark.browser

MODULE = "05-shims-and-preload"
FRONT = ".jp-NotebookPanel:not(.lm-mod-hidden)"
QUESTION = f"{FRONT} .ts-question"
TABLE = f'{FRONT} table.given:has-text("What a thicker shim does")'


def test_a_question_stands_beside_its_text_where_there_is_room(learner, wait_until):
    page = learner.lesson(shut=True)
    asked = page.locator(QUESTION, has_text="The shim gets thicker. Does")
    text = page.locator(f"{FRONT} .jp-Cell", has_text="Look at the picture above")

    def beside():
        words, question = text.bounding_box(), asked.bounding_box()
        return words["x"] + words["width"] <= question["x"] and question["y"] < (
            words["y"] + words["height"] + 1
        )

    wait_until(beside)
    page.set_viewport_size({"width": 820, "height": 720})
    wait_until(lambda: asked.bounding_box()["y"] > text.bounding_box()["y"] and not beside())


@pytest.mark.parametrize("dark", [False, True], ids=["light", "dark"])
def test_an_answer_opens_when_something_is_said(learner, wait_until, screenshot, dark):
    kept = learner.lab.root / "lessons" / "practice.json"
    kept.unlink(missing_ok=True)
    learner.leave()
    page = learner.lesson(shut=True, dark=dark)
    question = page.locator(QUESTION, has_text="The shim gets thicker. Does")
    question.scroll_into_view_if_needed()
    assert page.locator(TABLE).count() == 0 and not kept.exists()
    cells = page.locator(f"{FRONT} .jp-Cell").count()
    button = question.get_by_role("button", name="Show the answer")
    button.focus()
    page.keyboard.press("Enter")
    question.get_by_text("Not answered yet").wait_for()
    assert page.locator(TABLE).count() == 0
    question.locator("input").first.focus()
    for key in ("Space", "ArrowDown", "a", "b", "x"):
        page.keyboard.press(key)
    assert page.locator(TABLE).count() == 0, "an arrow key gives nothing"
    screenshot(page, f"prediction-shut-{'dark' if dark else 'light'}")
    button.focus()
    page.keyboard.press("Enter")
    page.wait_for_selector(TABLE)
    question.get_by_text("You said: looser. It is: tighter.").wait_for()
    wait_until(lambda: "ts-told" in page.evaluate("document.activeElement.className"))
    assert page.locator(f"{FRONT} .jp-Cell").count() == cells
    screenshot(page, f"prediction-open-{'dark' if dark else 'light'}")
    (tried,) = json.loads(kept.read_text())["tries"]["shims-and-preload/thicker-shim"]
    assert tried["value"] == "looser" and tried["right"] is False
    number = page.locator(QUESTION, has_text="without play and without preload")
    number.get_by_role("textbox").fill("0,9 mm")
    number.get_by_role("textbox").press("Enter")
    number.get_by_role("button", name="Show the answer").press("Enter")
    number.get_by_text("You said: 0,9 mm. It is:").wait_for()
    number.scroll_into_view_if_needed()
    screenshot(page, f"prediction-number-{'dark' if dark else 'light'}")
    rig = page.locator(QUESTION, has_text="nothing has been turned yet")
    rig.scroll_into_view_if_needed()
    rig.locator("input").first.press("Space")
    rig.get_by_role("button", name="Show the answer").press("Enter")
    page.wait_for_selector(f"{FRONT} .tsg-dial")
    page.locator(f"{FRONT} .tsg-dial").scroll_into_view_if_needed()
    screenshot(page, f"prediction-rig-{'dark' if dark else 'light'}")


def test_what_was_said_stands_there_when_the_lesson_is_opened_again(learner, wait_until):
    kept = learner.lab.root / "lessons" / "practice.json"
    tried = {"value": "tighter", "right": True, "at": "2026-11-29T10:00:00Z"}
    kept.write_text(json.dumps({"format": 1, "tries": {"shims-and-preload/thicker-shim": [tried]}}))
    learner.leave()
    page = learner.lesson(shut=True)
    page.wait_for_selector(TABLE)
    question = page.locator(QUESTION, has_text="The shim gets thicker. Does")
    question.get_by_text("You said: tighter. That is right.").wait_for()
    kept.unlink()


def test_a_calculation_is_worked_then_half_worked_then_done_alone(learner, wait_until, screenshot):
    page = learner.lesson(shut=True)
    drill = page.locator(QUESTION, has_text="From the stack to the shim: ")
    drill.scroll_into_view_if_needed()
    assert "worked" in drill.locator(".ts-title").inner_text()
    screenshot(page, "calculation-worked")
    cells = page.locator(f"{FRONT} .jp-Cell").count()
    drill.get_by_role("button", name="Next: with steps left out").press("Enter")
    drill.locator(".ts-title", has_text="steps left out").wait_for()
    wait_until(lambda: page.evaluate("document.activeElement.tagName") == "INPUT")
    for box in drill.get_by_role("textbox").all():
        box.fill("1.234 mm")
        box.press("Enter")
    drill.get_by_role("button", name="Tell me").press("Enter")
    drill.get_by_text("You said: 1.234 mm.").first.wait_for()
    screenshot(page, "calculation-half")
    drill.get_by_role("button", name="Next: on your own").press("Enter")
    drill.locator(".ts-title", has_text="on your own").wait_for()
    facts = drill.locator(".ts-facts")
    before = facts.inner_text()
    assert drill.get_by_role("textbox").count() == 3
    for box in drill.get_by_role("textbox").all():
        assert box.is_enabled() and not box.input_value()
        box.fill("2 mm")
        box.press("Enter")
    drill.get_by_role("button", name="Tell me").press("Enter")
    drill.get_by_role("button", name="Again, with fresh readings").press("Enter")
    wait_until(lambda: facts.inner_text() != before)
    assert page.locator(f"{FRONT} .jp-Cell").count() == cells


def test_three_questions_of_earlier_lessons_are_told_at_once(learner, screenshot):
    page = learner.lesson(shut=True)
    again = page.locator(QUESTION, has_text="comes back after")
    again.scroll_into_view_if_needed()
    assert again.locator(".ts-field").count() == 3
    screenshot(page, "asked-again")
    again.get_by_role("button", name="Tell me").press("Enter")
    again.get_by_text("Not answered yet").first.wait_for()
    assert again.get_by_role("button", name="Three more").is_hidden()
