"""Parts apart and together as a screen: the slider, names, stages; nothing asked of the kernel."""

from io import BytesIO

import pytest
from PIL import Image
from tests.browser.conftest import PATIENCE_MS, chromium_path, open_rig, rig_notebook

SETUP = """\
from twoshaft.units import load_unit
unit = load_unit("tarnbeck-b5")"""
APART = """\
from twoshaft.rigs import exploded_view
exploded_view(unit, "differential")"""
# Chromium draws in three dimensions without a graphics card, by its own program
NO_CARD = ["--no-sandbox", "--use-angle=swiftshader", "--enable-unsafe-swiftshader"]
NO_SPACE = """() => {
  const own = HTMLCanvasElement.prototype.getContext;
  HTMLCanvasElement.prototype.getContext = function (kind, ...more) {
    return kind.startsWith("webgl") ? null : own.call(this, kind, ...more);
  };
}"""
# how long it takes until the canvas is painted [ms]
OPEN_SPACE = """async (button) => {
  const begun = performance.now();
  button.click();
  const canvas = () => document.querySelector(".ts-space");
  while (!canvas()?.dataset.painted) await new Promise((done) => setTimeout(done, 10));
  await new Promise((done) => requestAnimationFrame(() => setTimeout(done)));
  return performance.now() - begun;
}"""
FRONT = ".jp-NotebookPanel:not(.lm-mod-hidden)"
# how far each group of the drawing stands from its place, as the page shows it
SHIFTS = """(svg) => [...svg.querySelectorAll("[data-part][data-move]")].map((group) => {
  const { e, f } = group.transform.baseVal.consolidate().matrix;
  return Math.hypot(e, f);
})"""
# what the page itself works for one step of the slider, its layout with it; painting comes after
WORK = """(box) => {
  const took = [];
  for (let at = 0; at <= 200; at += 4) {
    const begun = performance.now();
    box.value = at;
    box.dispatchEvent(new Event("input", { bubbles: true }));
    document.querySelector(".ts-unit svg").getBoundingClientRect();
    took.push(performance.now() - begun);
  }
  return took.sort((a, b) => a - b)[Math.floor(took.length / 2)];
}"""


@pytest.fixture(scope="module")
def lab(shared_lab):
    rig_notebook(shared_lab, "apart.ipynb", SETUP, APART)
    yield shared_lab
    shared_lab.close_windows()


def test_parts_go_together_by_the_slider_alone_and_are_named(lab, wait_until, screenshot):
    page, rig = open_rig(lab, "apart.ipynb")
    slider, said = rig.locator("input[type=range]"), rig.locator(".ts-nextin")
    drawing = rig.locator(".ts-unit svg")
    slider.focus()
    assert min(drawing.evaluate(SHIFTS)) > 10
    assert said.inner_text().startswith("0 of 9 in place. Next in: 1 ")
    rig.scroll_into_view_if_needed()
    screenshot(page, "exploded-apart")
    page.keyboard.press("End")
    assert max(drawing.evaluate(SHIFTS)) == 0
    assert said.inner_text() == "All in place."
    screenshot(page, "exploded-together")
    page.keyboard.press("Home")
    rig.get_by_role("button", name="One part more in place").press("Enter")
    assert said.inner_text().startswith("1 of 9 in place. Next in: 2 ")
    assert 0 in drawing.evaluate(SHIFTS)
    # names by keys, by the list and by pointing
    name, frame = rig.locator(".ts-unit-name"), rig.locator(".ts-unit")
    frame.focus()
    page.keyboard.press("Home")
    assert "Goes in from" in name.inner_text()
    rig.get_by_label("Part", exact=True).select_option(label="5 Ring gear")
    assert name.inner_text().startswith("5 Ring gear. Goes in from the rear.")
    rig.locator('svg [data-solid="planet-pin"]').first.hover()
    wait_until(lambda: rig.locator(".ts-unit-over").inner_text().startswith("3 "))


def test_another_stage_is_shown_and_fits_the_window(lab, wait_until, screenshot):
    page, rig = open_rig(lab, "apart.ipynb")
    choose = rig.get_by_label("Show", exact=True)
    for stage in choose.locator("option").evaluate_all("(all) => all.map((one) => one.value)"):
        choose.select_option(stage)
        title = choose.locator(f"option[value={stage}]").inner_text()
        wait_until(lambda title=title: rig.locator(".ts-finding").inner_text().startswith(title))
        top, frame = rig.bounding_box(), rig.locator(".ts-unit").bounding_box()
        # from its first line to the end of the picture it fits under the bars of a small window
        assert frame["y"] + frame["height"] - top["y"] <= 590
        assert frame["width"] <= 1280
        rig.scroll_into_view_if_needed()
        screenshot(page, f"exploded-{stage}")
    assert rig.locator("input[type=range]").evaluate(WORK) < 50


def test_dark_and_in_a_systems_own_colours(lab, wait_until, screenshot):
    for look in ("dark", "forced"):
        page, rig = open_rig(lab, "apart.ipynb", lab.page(dark=look == "dark"))
        if look == "forced":
            page.emulate_media(forced_colors="active")
        rig.scroll_into_view_if_needed()
        screenshot(page, f"exploded-{look}")
        assert rig.locator(".ts-unit svg").is_visible()


def test_the_slider_asks_the_kernel_nothing(lab, wait_until):
    sent = []
    page = lab.page()
    page.on("websocket", lambda socket: socket.on("framesent", lambda data: sent.append(data)))
    page, rig = open_rig(lab, "apart.ipynb", page)
    slider = rig.locator("input[type=range]")
    slider.focus()
    before = len(sent)
    for _ in range(20):
        page.keyboard.press("ArrowRight")
    assert slider.input_value() == "20"
    moved = [
        data
        for data in sent[before:]
        if b"comm_msg" in (data if isinstance(data, bytes) else data.encode())
    ]
    assert moved == []


def test_solids_in_space_turn_hide_and_go_together(lab, wait_until, screenshot, chromium):
    browser = chromium.browser_type.launch(
        executable_path=chromium_path(), headless=True, args=NO_CARD
    )
    try:
        page = browser.new_page(viewport={"width": 1280, "height": 720})
        page.set_default_timeout(PATIENCE_MS)
        page, rig = open_rig(lab, "apart.ipynb", page)
        took = rig.get_by_role("button", name="In three dimensions").evaluate(OPEN_SPACE)
        print(f"first frame after {took:.0f} ms")
        canvas, said = rig.locator(".ts-space"), rig.locator(".ts-unit-name")
        screenshot(page, "exploded-space")
        assert len(canvas.screenshot()) > 15_000  # an empty picture is far smaller

        def changed_by(act):
            before = canvas.screenshot()
            act()
            wait_until(lambda: canvas.screenshot() != before)

        canvas.focus()
        changed_by(lambda: page.keyboard.press("ArrowRight"))
        changed_by(lambda: page.keyboard.press("+"))
        changed_by(lambda: rig.get_by_label("Part", exact=True).select_option(label="5 Ring gear"))
        assert said.inner_text().startswith("5 Ring gear. Goes in from the rear.")
        canvas.focus()
        changed_by(lambda: page.keyboard.press("h"))
        assert said.inner_text().endswith("Hidden.")
        changed_by(lambda: page.keyboard.press("a"))
        rig.locator("input[type=range]").focus()
        changed_by(lambda: page.keyboard.press("End"))
        screenshot(page, "exploded-space-together")
        # in a system's own colours, turned on while it is open, it takes theirs
        changed_by(lambda: page.emulate_media(forced_colors="active"))
        with Image.open(BytesIO(canvas.screenshot())) as seen:
            assert min(seen.convert("RGB").getpixel((20, 20))) > 240  # the ground, not black
        top, frame = rig.bounding_box(), canvas.bounding_box()
        assert frame["y"] + frame["height"] - top["y"] <= 590  # it fits a small window
        page.emulate_media(forced_colors="none")
        rig.get_by_role("button", name="In three dimensions").press("Enter")
        assert rig.locator(".ts-unit svg").is_visible() and canvas.count() == 0
    finally:
        browser.close()


def test_a_browser_without_three_dimensions_says_so_and_keeps_the_section(lab, wait_until):
    page = lab.page()
    page.add_init_script(f"({NO_SPACE})()")
    page, rig = open_rig(lab, "apart.ipynb", page)
    button = rig.get_by_role("button", name="In three dimensions")
    button.press("Enter")
    rig.get_by_text("This browser draws nothing in three dimensions.").wait_for()
    assert rig.locator(".ts-unit svg").is_visible()
