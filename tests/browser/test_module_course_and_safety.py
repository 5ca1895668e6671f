"""Bench safety in a real browser: picture and forms by keys, saved, reopened, marked."""

import statistics

import pytest

from twoshaft.readings.course_and_safety.scene import hazards_seen
from twoshaft.safety import load_safety

pytestmark = pytest.mark.browser

FRONT = ".jp-NotebookPanel:not(.lm-mod-hidden)"
MODULE = "00-course-and-safety"

TIMED = """async ([target, event, value, watched]) => {
  const root = document.querySelector('.jp-NotebookPanel:not(.lm-mod-hidden)');
  const seen = root.querySelector(watched);
  const before = seen.innerHTML;
  const changed = new Promise((done) => {
    const watch = new MutationObserver(() => {
      if (seen.innerHTML === before) return;
      watch.disconnect();
      requestAnimationFrame(() => setTimeout(() => done(performance.now()), 0));
    });
    watch.observe(seen, { childList: true, characterData: true, subtree: true });
  });
  const node = root.querySelector(target);
  const start = performance.now();
  if (event === 'input') node.value = value;
  node.dispatchEvent(new Event(event, { bubbles: true }));
  return (await changed) - start;
}"""


def tab_to(page, inside):
    """Press Tab until the focus is inside a part of the page."""
    for _ in range(80):
        if page.evaluate("css => !!document.activeElement?.closest(css)", inside):
            return
        page.keyboard.press("Tab")
    pytest.fail(f"the Tab key never reaches {inside}")


def in_sight(box, width):
    """Whether a box lies within a window's width."""
    return box["x"] >= 0 and box["x"] + box["width"] <= width


@pytest.fixture(scope="module")
def lesson(practice):
    """The lesson, open in a window."""
    return practice.lesson(ready=".tsl-drawing svg")


def test_the_picture_is_judged_by_keys_and_no_key_reaches_the_notebook(
    lesson, wait_until, screenshot
):
    page = lesson
    cells = page.locator(f"{FRONT} .jp-Cell").count()
    picture = page.locator(f"{FRONT} .tsh-picture").first
    picture.scroll_into_view_if_needed()
    page.locator(f"{FRONT} .tsh-place").first.focus()
    page.keyboard.press("Home")
    head = page.locator(f"{FRONT} .tsh-head")
    seen = page.locator(f"{FRONT} .tsh-seen")
    for key, name in (
        ("ArrowRight", "2  Oven"),
        ("ArrowDown", "8  Case bolts"),
        ("End", "12  Lifting"),
        ("ArrowUp", "6  Hoist"),
    ):
        page.keyboard.press(key)
        head.get_by_text(name, exact=True).wait_for()
    hoist = {text for text, _ in load_safety().place_by_id["hoist"].views()}
    wait_until(lambda: seen.inner_text() in hoist)
    for key in "abxdd":
        page.keyboard.press(key)
    tab_to(page, ".ts-button[data-verdict=stop]")
    for key in "abxdd":
        page.keyboard.press(key)
    page.keyboard.press("Enter")
    page.locator(f"{FRONT} .tsh-verdict").wait_for()
    finding = page.locator(f"{FRONT} .ts-finding").first
    wait_until(lambda: "1 of 12 places judged" in finding.inner_text())
    place = page.locator(f"{FRONT} [data-place=hoist]").first
    wait_until(lambda: "judged: stop here" in place.get_attribute("aria-label"))
    assert page.locator(f"{FRONT} .jp-Cell").count() == cells
    screenshot(page, "safety-picture")


def test_in_a_narrow_window_the_chosen_place_is_brought_into_sight(lesson, wait_until):
    page = lesson
    page.set_viewport_size({"width": 480, "height": 640})
    try:
        page.locator(f"{FRONT} .tsh-picture").first.scroll_into_view_if_needed()
        page.locator(f"{FRONT} .tsh-place").first.focus()
        for key, place in (("Home", "press"), ("End", "lift"), ("Home", "press")):
            page.keyboard.press(key)
            page.locator(f"{FRONT} .tsh-chosen[data-place={place}]").wait_for()
            spot = page.locator(f"{FRONT} .tsh-picture [data-place={place}] .tsh-hit")
            wait_until(lambda spot=spot: in_sight(spot.bounding_box(), 480))
    finally:
        page.set_viewport_size({"width": 1280, "height": 720})


def test_how_soon_a_click_and_a_slider_are_on_the_screen(lesson, record_property):
    """Median and 95th percentile, printed and never judged: the machine may be busy."""
    page = lesson
    places = [place.id for place in load_safety().places]
    page.locator(f"{FRONT} .tsh-picture").first.scroll_into_view_if_needed()
    clicks = [
        page.evaluate(TIMED, [f"[data-place={places[n % 12]}]", "click", None, ".tsh-seen"])
        for n in range(1, 21)
    ]
    page.locator(f"{FRONT} .tsl-drawing").scroll_into_view_if_needed()
    slides = [
        page.evaluate(TIMED, [".tsl-row:nth-child(2) input", "input", 26 + n % 35, ".tsl-drawing"])
        for n in range(1, 21)
    ]
    for name, times in (("click", clicks), ("slider", slides)):
        median, p95 = statistics.median(times), statistics.quantiles(times, n=20)[-1]
        print(f"{name} to screen: median {median:.0f} ms, 95th percentile {p95:.0f} ms")
        record_property(name, [median, p95])
        assert all(value > 0 for value in times)


def test_hazards_found_by_keys_are_saved_reopened_and_marked(handed_out, wait_until, screenshot):
    own = handed_out("course-and-safety")
    page = own.open(own.get(), ready=".tsh-picture svg")
    issued = own.issued
    safety, views = load_safety(), issued["given"]["picture"]["views"]
    found = list(hazards_seen(safety, views))

    page.locator(f"{FRONT} .tsh-picture").first.scroll_into_view_if_needed()
    page.locator(f"{FRONT} .tsh-place").first.focus()
    seen = page.locator(f"{FRONT} .tsh-seen")
    said = []
    for n, place in enumerate(views):
        if n:
            page.keyboard.press("ArrowRight")
        text = safety.place_by_id[place].views()[views[place]][0]
        wait_until(lambda text=text: seen.inner_text() == text)
        said.append(text)
    assert len(said) == 12
    assert page.locator(f"{FRONT} [data-verdict]").count() == 0
    screenshot(page, "safety-exercise-picture")
    for nth, name in ((4, "acts"), (8, "lift")):
        page.locator(f"{FRONT} .twoshaft-form").nth(nth).scroll_into_view_if_needed()
        screenshot(page, f"safety-exercise-{name}")
    page.locator(f"{FRONT} .tsh-picture").first.scroll_into_view_if_needed()

    form = page.locator(f"{FRONT} .twoshaft-form").nth(3)
    boxes = form.locator("input[type=checkbox]")
    boxes.first.focus()
    for n, place in enumerate(views):
        if place in found:
            page.keyboard.press("Space")
        if n < len(views) - 1:
            page.keyboard.press("Tab")

    wait_until(lambda: own.stored("picture-hazards") == found)

    page = own.open(ready=".tsh-picture svg")
    again = page.locator(f"{FRONT} .twoshaft-form").nth(3)
    again.get_by_text("1 of 1 answered").wait_for()
    assert [box.is_checked() for box in again.locator("input[type=checkbox]").all()] == [
        place in found for place in views
    ]

    own.hand_in(page)
    assert "7 of 7" in own.given_back()
