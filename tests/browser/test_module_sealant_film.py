"""Sealant film in a real browser: a face coated by keys and by hand, saved, reopened, marked."""

import json
import statistics

import pytest

from twoshaft.models.film import Hand, Work

pytestmark = pytest.mark.browser

MODULE = "06-sealant-film"
FRONT = ".jp-NotebookPanel:not(.lm-mod-hidden)"
# How long from a stroke or a step of the slider to the next frame after the face is painted [ms].
TIMED = """async ([rig, what]) => {
  const button = (text) => [...rig.querySelectorAll("button")].find((b) => b.textContent === text);
  const slider = rig.querySelector("input[type=range]");
  const size = rig.querySelector(".ts-size");
  size.value = "0.1";
  size.dispatchEvent(new Event("input"));
  const acts = {
    stroke: (k) => button(k % 2 ? "Take back the last pass" : "Lay it here").click(),
    slider: (k) => {
      slider.value = String(30 + 10 * (k % 10));
      slider.dispatchEvent(new Event("input"));
    },
  };
  const took = [];
  for (let k = 0; k < 60; k += 1) {
    const start = performance.now();
    const painted = new Promise((resolve, reject) => {
      const late = setTimeout(() => reject(new Error("the face was not painted")), 10000);
      new MutationObserver((_, watch) => {
        watch.disconnect();
        clearTimeout(late);
        requestAnimationFrame(() => resolve(performance.now()));
      }).observe(rig.querySelector(".ts-cells"), { attributes: true, attributeFilter: ["width"] });
    });
    acts[what](k);
    took.push((await painted) - start);
    await new Promise((resolve) => setTimeout(resolve, 60));
  }
  return took;
}"""


def the_pad(page):
    return page.locator(f"{FRONT} .twoshaft-form:has(.ts-pad)")


def choose(page, pad, label, value):
    """Choose in a list with the keyboard alone."""
    box = pad.get_by_label(label, exact=True)
    box.focus()
    page.keyboard.type(value)
    assert value in box.evaluate("box => box.selectedOptions[0].text")


def test_a_face_is_coated_by_keys_saved_reopened_and_marked(learner, wait_until, screenshot):
    work = Work.of(learner.unit, learner.issued["given"]["lay"])
    good = work.good_passes()
    page = learner.exercise(live=9)
    cells = page.locator(f"{FRONT} .jp-Cell").count()
    pad = the_pad(page)
    names = {segment.id: segment.name for segment in work.face.segments}
    choose(page, pad, "tool", "wipe")
    choose(page, pad, "where", names[work.spoilt[0]])
    pad.get_by_role("button", name="Wipe here").press("Enter")
    wait_until(lambda: learner.stored("lay-film") == [f"wipe middle {work.spoilt[0]}"])
    last = good[-1]
    choose(page, pad, "tool", "bead" if last.hand is Hand.BEAD else "film")
    size = pad.locator(".ts-size")
    size.fill("much")
    pad.get_by_role("button", name="Lay it on every stretch").press("Enter")
    pad.locator(".ts-pad-trouble", has_text="Read “much”").wait_for()
    # Numbers as people write them: a comma, and the unit behind it.
    size.fill(f"{last.size_mm:g} mm".replace(".", ","))
    if last.hand is Hand.BEAD:
        choose(page, pad, "runs", "on the oil side")
    pad.get_by_role("button", name="Lay it on every stretch").press("Space")
    wait_until(lambda: len(learner.stored("lay-film")) == len(good))
    wait_until(lambda: pad.locator(".ts-passes li").count() == len(good))
    for name in ("Lay it here", "Clear the face"):
        pad.get_by_role("button", name=name).focus()
        for key in ("a", "b", "x", "d", "d"):
            page.keyboard.press(key)
    assert page.locator(f"{FRONT} .jp-Cell").count() == cells
    text = pad.inner_text().lower()
    assert not any(word in text for word in ("seals", "leak", "tight"))
    pad.scroll_into_view_if_needed()
    screenshot(page, "sealant-film-form")

    page = learner.exercise(live=9)
    wait_until(lambda: the_pad(page).locator(".ts-passes li").count() == len(good))
    film = learner.marked()["lay-film"]
    assert film.share == 1 and film.passed
    given = json.dumps(learner.issued["given"])
    assert "good" not in given


def test_a_line_is_drawn_with_the_pointer_and_taken_out_again(learner, wait_until, screenshot):
    page = learner.exercise(live=9)
    pad = the_pad(page)
    before = learner.stored("lay-film") or []
    pad.get_by_label("tool", exact=True).select_option("bead")
    pad.locator(".ts-size").fill("2")
    face = pad.locator(".tsp-face")
    face.scroll_into_view_if_needed()
    box = face.bounding_box()
    page.mouse.move(box["x"] + 0.3 * box["width"], box["y"] + 0.4 * box["height"])
    page.mouse.down()
    for step in range(1, 12):
        page.mouse.move(
            box["x"] + (0.3 + 0.03 * step) * box["width"],
            box["y"] + (0.4 + 0.002 * step**2) * box["height"],
        )
    page.mouse.up()
    wait_until(lambda: len(learner.stored("lay-film") or []) == len(before) + 1)
    entry = learner.stored("lay-film")[-1]
    assert entry.startswith("bead 2 at ") and 2 <= len(entry.split()) - 3 <= 40
    # A tap lays nothing: it chooses the stretch.
    page.mouse.click(box["x"] + 0.5 * box["width"], box["y"] + 0.1 * box["height"])
    pad.get_by_role("button", name="Take back the last pass").click()
    wait_until(lambda: (learner.stored("lay-film") or []) == before)


def test_the_rig_closes_the_face_and_shows_where_it_leaks(learner, wait_until, screenshot):
    page = learner.lesson(live=4)
    rig = page.locator(f"{FRONT} .twoshaft-rig").first
    rig.get_by_role("button", name="Close the face").press("Enter")
    wait_until(lambda: "does not hold on oil" in rig.locator(".ts-finding").inner_text())
    wait_until(lambda: rig.locator(".tsp-way").count() == 1)
    rig.locator(".ts-legend", has_text="oily").wait_for()
    rig.scroll_into_view_if_needed()
    screenshot(page, "sealant-film-rig")
    for name in ("Lift the face off again", "1 minute passes", "Lay it here"):
        rig.get_by_role("button", name=name).focus()
        cells = page.locator(f"{FRONT} .jp-Cell").count()
        for key in ("a", "b", "x", "d", "d"):
            page.keyboard.press(key)
        assert page.locator(f"{FRONT} .jp-Cell").count() == cells
    rig.get_by_role("button", name="Lift the face off again").press("Enter")
    wait_until(lambda: "minutes are left" in rig.locator(".ts-finding").inner_text())


@pytest.mark.bench
def test_how_long_a_stroke_and_the_slider_take_to_the_screen(learner):
    page = learner.lesson(live=4)
    rig = page.locator(f"{FRONT} .twoshaft-rig").last
    rig.scroll_into_view_if_needed()
    for what in ("stroke", "slider"):
        took = sorted(rig.evaluate(f"(rig, what) => ({TIMED})([rig, what])", what))
        middle, most = statistics.median(took), took[int(0.95 * len(took))]
        print(f"{what} to screen: median {middle:.0f} ms, 95th percentile {most:.0f} ms")
        assert len(took) == 60
