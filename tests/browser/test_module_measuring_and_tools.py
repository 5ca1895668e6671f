"""Measuring and tools in a real browser: gauges by keys, readings saved, reopened, marked."""

import re
import statistics

import pytest

pytestmark = pytest.mark.browser

FRONT = ".jp-NotebookPanel:not(.lm-mod-hidden)"
MODULE = "01-measuring-and-tools"

TIMED = """async ([slider, watched, value]) => {
  const root = document.querySelector('.jp-NotebookPanel:not(.lm-mod-hidden)');
  const seen = root.querySelector(watched);
  const changed = new Promise((done) => {
    const watch = new MutationObserver(() => {
      watch.disconnect();
      requestAnimationFrame(() => setTimeout(() => done(performance.now()), 0));
    });
    watch.observe(seen, { attributes: true, childList: true, subtree: true });
  });
  const box = root.querySelector(slider);
  const start = performance.now();
  box.value = value;
  box.dispatchEvent(new Event('input', { bubbles: true }));
  return (await changed) - start;
}"""


def rig_with(page, picture):
    """The instrument that shows a picture, brought into sight."""
    rig = page.locator(f"{FRONT} .twoshaft-rig").filter(has=page.locator(picture)).first
    rig.locator(picture).scroll_into_view_if_needed()
    return rig


@pytest.fixture(scope="module")
def lesson(practice):
    """The lesson, open in a window."""
    return practice.lesson(ready=".tsi-micrometer")


def test_a_gauge_says_where_its_marks_stand_never_the_value(lesson, wait_until, screenshot):
    cells = lesson.locator(f"{FRONT} .jp-Cell").count()
    rig = rig_with(lesson, ".tsi-micrometer")
    rig.get_by_role("button", name="Close until it rests").focus()
    lesson.keyboard.press("Enter")
    picture = rig.locator(".tsi-micrometer")
    wait_until(lambda: "Thimble on line 31" in picture.get_attribute("aria-label"))
    assert "12.81" not in picture.get_attribute("aria-label")
    slider = rig.get_by_role("slider", name="Thimble")
    slider.focus()
    for key in "ddxb":
        lesson.keyboard.press(key)
    lesson.keyboard.press("ArrowRight")
    wait_until(lambda: "Thimble on line 32" in picture.get_attribute("aria-label"))
    assert lesson.locator(f"{FRONT} .jp-Cell").count() == cells
    screenshot(lesson, "micrometer")


def test_how_soon_a_slider_is_on_the_screen(lesson, record_property):
    """Median and 95th percentile, printed and never judged: the machine may be busy."""
    rig = rig_with(lesson, ".tsi-micrometer")
    rig.get_by_role("button", name="Open", exact=True).click()
    slider = ".twoshaft-rig:has(.tsi-micrometer) input[type=range]"
    times = [
        lesson.evaluate(TIMED, [slider, ".tsi-micrometer", 13 + 0.17 * n]) for n in range(1, 21)
    ]
    median, p95 = statistics.median(times), statistics.quantiles(times, n=20)[-1]
    print(f"thimble to screen: median {median:.0f} ms, 95th percentile {p95:.0f} ms")
    record_property("thimble", [median, p95])
    assert all(value > 0 for value in times)


def read_off(label):
    """What somebody reads who hears where sleeve and thimble stand."""
    line = int(re.search(r"Thimble on line (\d+)", label).group(1))
    if "No line of the sleeve" in label:
        return (line - 50) / 100
    whole = int(re.search(r"above the datum: (\d+)", label).group(1))
    return whole + 0.5 * ("A line below it" in label) + line / 100


def test_readings_taken_by_keys_are_saved_reopened_and_marked(handed_out, wait_until, screenshot):
    own = handed_out("measuring-and-tools")
    page = own.open(own.get(), ready=".tsi-micrometer")
    issued = own.issued["given"]

    rig = rig_with(page, ".tsi-micrometer")
    picture, read = rig.locator(".tsi-micrometer"), {}
    for name, between in (("mic-zero", "nothing"), ("mic-reading", "part")):
        rig.get_by_label("Between the faces").select_option(between)
        rig.get_by_role("button", name="Close until it rests").focus()
        page.keyboard.press("Enter")
        rig.get_by_text("The ratchet slips").wait_for()
        where = "anvil" if between == "nothing" else "part"
        rig.get_by_text(f"rests on the {where}").wait_for()
        read[name] = read_off(picture.get_attribute("aria-label"))
    assert read["mic-zero"] == pytest.approx(issued["micrometer"]["zero_mm"])
    read["mic-size"] = read["mic-reading"] - read["mic-zero"]
    screenshot(page, "measuring-exercise")

    form = page.locator(f"{FRONT} .twoshaft-form").first
    prompts = {
        "mic-zero": "Zero reading, with its sign",
        "mic-reading": "Reading on the part, as the micrometer shows it",
        "mic-size": "Size of the part",
    }
    for name, prompt in prompts.items():
        form.get_by_label(prompt).first.focus()
        page.keyboard.type(f"{read[name]:.2f} mm")
        page.keyboard.press("Tab")

    wait_until(lambda: all(own.stored(name) == f"{read[name]:.2f} mm" for name in prompts))

    page = own.open(ready=".tsi-micrometer")
    again = page.locator(f"{FRONT} .twoshaft-form").first
    again.get_by_text("3 of 4 answered").wait_for()
    for name, prompt in prompts.items():
        assert again.get_by_label(prompt).first.input_value() == f"{read[name]:.2f} mm"

    own.hand_in(page)
    assert "5.33 of 8" in own.given_back()
