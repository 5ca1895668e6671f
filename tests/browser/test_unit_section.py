"""The unit in section as a screen: names by pointer and keys, and zoom."""

import pytest
from PIL import Image
from tests.browser.conftest import open_rig, rig_notebook

from twoshaft.rigs import build_simulator
from twoshaft.stored.photographs import ALBUM, Album, Photograph
from twoshaft.units import load_unit

SETUP = """\
from twoshaft.units import load_unit
unit = load_unit("tarnbeck-b5")"""
SECTION = """\
from twoshaft.rigs import unit_section
unit_section(unit)"""
FRONT = ".jp-NotebookPanel:not(.lm-mod-hidden)"


@pytest.fixture(scope="module")
def lab(shared_lab):
    rig_notebook(shared_lab, "unit-in-section.ipynb", SETUP, SECTION)
    yield shared_lab
    shared_lab.close_windows()


def test_every_part_is_named_by_keys_by_the_list_and_by_pointing(lab, wait_until, screenshot):
    page, rigs = open_rig(lab, "unit-in-section.ipynb")
    rig = rigs.first
    frame, name = rig.locator(".ts-unit"), rig.locator(".ts-unit-name")
    frame.scroll_into_view_if_needed()
    frame.focus()
    page.keyboard.press("Home")
    said = [name.inner_text()]
    parts = rig.locator("select option").count() - 1
    assert parts == 68
    for _ in range(parts - 1):
        page.keyboard.press("ArrowRight")
        said.append(name.inner_text())
    assert len(set(said)) == parts
    assert all("the joint face" in one for one in said)
    page.keyboard.press("ArrowRight")
    assert name.inner_text() == said[0]
    assert rig.locator("svg .tsu-chosen").count() >= 1
    rig.locator("select").select_option(label="Ring gear")
    assert name.inner_text().startswith("Ring gear. The differential")
    screenshot(page, "unit-section")
    rig.locator('svg [data-solid="output-shaft"]').first.hover()
    wait_until(lambda: "Output shaft" in rig.locator(".ts-unit-over").inner_text())
    rig.locator('svg [data-solid="output-shaft"]').first.click()
    assert name.inner_text().startswith("Output shaft with its gears.")
    page.keyboard.press("ArrowDown")
    assert not name.inner_text().startswith("Output shaft with its gears.")


def test_zoom_keeps_the_chosen_part_in_view(lab, wait_until):
    page, rigs = open_rig(lab, "unit-in-section.ipynb")
    rig = rigs.first
    frame = rig.locator(".ts-unit")
    frame.scroll_into_view_if_needed()
    rig.locator("select").select_option(label="Input-shaft nut")
    frame.focus()
    before = rig.locator("svg").bounding_box()["width"]
    for _ in range(3):
        page.keyboard.press("+")
    assert rig.locator("svg").bounding_box()["width"] > 2.5 * before
    part = rig.locator('svg [data-solid="input-nut"]').first.bounding_box()
    edge = frame.bounding_box()
    assert edge["x"] <= part["x"] + part["width"] / 2 <= edge["x"] + edge["width"]
    assert edge["y"] <= part["y"] + part["height"] / 2 <= edge["y"] + edge["height"]
    for _ in range(3):
        page.keyboard.press("-")
    assert rig.locator("svg").bounding_box()["width"] == pytest.approx(before, abs=1)


OWN = """\
from pathlib import Path
from twoshaft.rigs import build_simulator, exploded_view, order_bench, unit_section
from twoshaft.jobsheet.photographs import photographs_in
from twoshaft.units import load_unit
unit, own = load_unit("tarnbeck-b5"), photographs_in(Path("photographs"))"""
WITH_OWN = "unit_section(unit, own)"
BUILD_WITH_OWN = "build_simulator(unit, photographs=own)"
APART_WITH_OWN = "exploded_view(unit, 'whole-unit', own)"
ORDER_WITH_OWN = """\
steps = unit.operations_of[unit.stages[0].id]
photographed = own.album.photographs[1].id
rest = [step for step in steps if step != photographed]
order_bench(unit, steps, [rest[0], photographed, *rest[1:]], own)"""
CUP = "A drawn cup, its wide side to the left"


@pytest.fixture(scope="module")
def photographed(lab):
    """Two photographs of the college's own: of a part, with a frame, and of the first step."""
    made = Image.new("RGB", (640, 400), "#789")
    made.paste("#222", (300, 100, 420, 260))
    folder = lab.root / "photographs"
    folder.mkdir()
    made.save(folder / f"{'0' * 16}.jpg")
    about = {"file": f"{'0' * 16}.jpg", "alt": CUP, "width": 640, "height": 400}
    unit = load_unit("tarnbeck-b5")
    first = build_simulator(unit).view["in_hand"][0]
    part = next(one.id for one in unit.parts if one.name == "Ring gear")
    shown = (
        Photograph(of="part", id=part, box=(0.45, 0.2, 0.25, 0.5), **about),
        Photograph(of="operation", id=first, **about),
    )
    ALBUM.write(folder / ALBUM.file, Album(photographs=shown))
    rig_notebook(lab, "own-photographs.ipynb", OWN, WITH_OWN)
    rig_notebook(lab, "own-photographs-build.ipynb", OWN, BUILD_WITH_OWN)
    rig_notebook(lab, "own-photographs-apart.ipynb", OWN, APART_WITH_OWN)
    rig_notebook(lab, "own-photographs-order.ipynb", OWN, ORDER_WITH_OWN)
    return lab


STEPS_AT_ONCE = """(rig) => {
  const lit = () => [...rig.querySelectorAll(".tsu-lit")].map((one) => one.dataset.part).join();
  const next = [...rig.querySelectorAll("button")].find((one) => one.textContent === "Next");
  const seen = [lit()];
  for (let k = 0; k < 2; k += 1) { next.click(); seen.push(lit()); }
  return seen;
}"""


def test_the_next_step_is_drawn_before_the_kernel_answers(lab):
    setup = OWN.replace(', photographs_in(Path("photographs"))', ", None")
    rig_notebook(lab, "build-at-once.ipynb", setup, "build_simulator(unit)")
    page, rig = open_rig(lab, "build-at-once.ipynb")
    unit = load_unit("tarnbeck-b5")
    simulator = build_simulator(unit)
    lit = []
    for position in range(12):
        looks = simulator.view["build"]["looks"]
        lit.append({part for part, look in looks.items() if look == "lit"})
        simulator.hear({"type": "go", "position": position + 1})
    start = next(k for k in range(10) if lit[k] != lit[k + 1])
    rig.get_by_label("Go to place").fill(str(start))
    rig.get_by_role("button", name="Go to this place").click()
    rig.locator(".ts-pair", has_text=f"of {len(simulator.sequence)}").wait_for()
    page.wait_for_function(
        "([rig, place]) => rig.querySelector('[aria-label=\"Go to place\"]').value === place",
        arg=[rig.element_handle(), str(start)],
    )
    before, after, later = (set(one.split(",")) - {""} for one in rig.evaluate(STEPS_AT_ONCE))
    assert (before, after) == (lit[start], lit[start + 1])
    assert later == after  # two steps on is not known yet: the kernel is waited for
    page.wait_for_function(
        "([rig, place]) => rig.querySelector('[aria-label=\"Go to place\"]').value === place",
        arg=[rig.element_handle(), str(start + 2)],
    )
    shown = {
        str(one)
        for one in rig.evaluate(
            "(rig) => [...rig.querySelectorAll('.tsu-lit')].map((one) => one.dataset.part)"
        )
    }
    assert shown == lit[start + 2]


def test_the_colleges_photograph_stands_with_the_part_that_is_chosen(photographed, screenshot):
    page, rig = open_rig(photographed, "own-photographs.ipynb")
    assert rig.locator("figure").count() == 0
    rig.locator("select").select_option(label="Ring gear")
    figure = rig.locator(".ts-photographs figure")
    figure.get_by_role("img", name=CUP).wait_for()
    figure.get_by_text(f"From your college: {CUP}").wait_for()
    assert figure.locator("rect").count() == 2
    screenshot(page, "own-photograph")
    rig.locator("select").select_option(label="Input-shaft nut")
    figure.wait_for(state="detached")


def test_the_colleges_photograph_stands_beside_the_parts_apart(photographed, screenshot):
    page, rig = open_rig(photographed, "own-photographs-apart.ipynb")
    part = rig.get_by_role("combobox", name="Part", exact=True)
    part.select_option("ring-gear")
    figure = rig.locator(".ts-photographs figure")
    figure.get_by_role("img", name=CUP).wait_for()
    screenshot(page, "own-photograph-apart")
    part.select_option("input-nut")
    figure.wait_for(state="detached")


def test_the_colleges_photograph_stands_beside_the_order(photographed, screenshot):
    page, rig = open_rig(photographed, "own-photographs-order.ipynb")
    figure = rig.locator(".ts-photographs figure")
    assert figure.count() == 0
    rig.get_by_role("option").first.focus()
    page.keyboard.press("ArrowDown")
    figure.get_by_role("img", name=CUP).wait_for()
    screenshot(page, "own-photograph-order")
    page.keyboard.press("ArrowDown")
    figure.wait_for(state="detached")


def test_the_colleges_photograph_stands_with_the_step_in_hand(photographed, screenshot):
    page, rig = open_rig(photographed, "own-photographs-build.ipynb")
    figure = rig.locator(".ts-photographs figure")
    figure.get_by_role("img", name=CUP).wait_for()
    screenshot(page, "own-photograph-build")
    rig.get_by_role("button", name="Next step").click()
    figure.wait_for(state="detached")
