"""Every page by an accessibility engine (axe-core), and on a screen as narrow as 320 pixels.

A rig fits the window with its verdict, asks a question, and lights one control to begin with.
"""

from __future__ import annotations

import shutil
import time

import pytest
from tests.browser.barriers import found_on
from tests.browser.conftest import OPENING, ROOT, open_everything, wait_until

from twoshaft.readings import MODULES
from twoshaft.units import load_unit
from twoshaft_grader.bench_sheets import bench_sheet
from twoshaft_grader.bench_sheets.page import as_page

pytestmark = pytest.mark.browser

# What is shown on a page and is wider than the page, which would have to be scrolled sideways.
TOO_WIDE = """() => [...document.querySelectorAll(".jp-WindowedPanel-outer, .twoshaft-bar")]
  .filter((one) => one.checkVisibility() && one.scrollWidth > one.clientWidth + 1)
  .map((one) => one.className)"""

# Words in drawings that are smaller than 12 pixels as shown.
SMALL = """() => [...document.querySelectorAll(".jp-Notebook svg text")]
  .filter((node) => node.checkVisibility() && node.textContent.trim())
  .map((node) => [parseFloat(getComputedStyle(node).fontSize)
    * Math.hypot(node.getScreenCTM().a, node.getScreenCTM().b), node.textContent.trim(),
    node.closest("[class]").getAttribute("class"), node.ownerSVGElement.getAttribute("class")])
  .filter(([pixels]) => pixels < 11.95)"""


# Words in drawings that are cut off at the drawing's edge.
CUT_OFF = """() => [...document.querySelectorAll(".jp-Notebook svg text")]
  .filter((node) => node.checkVisibility() && node.textContent.trim()
    && getComputedStyle(node.ownerSVGElement).overflow === "hidden")
  .map((node) => {
    const word = node.getBoundingClientRect(), drawing = node.ownerSVGElement.getBoundingClientRect();
    const over = Math.max(drawing.left - word.left, word.right - drawing.right,
      drawing.top - word.top - 2, word.bottom - drawing.bottom - 3);
    return [Math.round(over), node.textContent.trim()];
  })
  .filter(([over]) => over > 2)"""

# What has to be moved sideways, which nothing needs in a window of 1280 pixels.
SIDEWAYS = """() => {
  const panel = document.querySelector(".jp-NotebookPanel:not(.lm-mod-hidden)");
  return [...panel.querySelectorAll(".jp-WindowedPanel-outer *, .twoshaft-bar *")]
    .filter((one) => one.checkVisibility() && one.scrollWidth > one.clientWidth + 1
      && ["auto", "scroll"].includes(getComputedStyle(one).overflowX))
    .map((one) => [one.getAttribute("class"), one.scrollWidth, one.clientWidth]);
}"""


# Rigs that are higher than what a window of 1280 by 720 pixels shows of a notebook, or that do not
# say in a question what they are for, or light no control or more than one.
HARD_TO_GRASP = """() => {
  const panel = ".jp-NotebookPanel:not(.lm-mod-hidden)";
  const room = document.querySelector(`${panel} .jp-WindowedPanel-outer`).clientHeight;
  return [...document.querySelectorAll(`${panel} .twoshaft-rig`)]
    .map((rig) => [rig.querySelector(".ts-asks")?.textContent ?? "no title",
      Math.round(rig.getBoundingClientRect().height), room,
      [...rig.querySelectorAll(".ts-first")].filter((one) => one.checkVisibility()).length])
    .filter(([asks, high, most, lit]) => high > most || !asks.endsWith("?") || lit !== 1);
}"""


# Tasks of which what is given cannot stay beside what is asked in a window of 1280 by 720 pixels: both
# are higher than it, and what is given is no box of its own; and what is given that stands out of
# its column.
GIVEN_GONE = """() => {
  const panel = document.querySelector(".jp-NotebookPanel:not(.lm-mod-hidden)");
  const room = panel.querySelector(".jp-WindowedPanel-outer").clientHeight;
  const rows = new Map();
  for (const cell of panel.querySelectorAll(".jp-Cell[data-twoshaft-side]")) {
    const side = cell.dataset.twoshaftSide;
    if (side === "both") continue;
    const row = rows.get(cell.style.gridRow) ?? { left: 0, right: 0, boxed: false, asks: false };
    rows.set(cell.style.gridRow, row);
    row[side] += cell.getBoundingClientRect().height;
    row.boxed ||= cell.querySelector(".twoshaft-more") !== null;
    row.asks ||= cell.querySelector(".ts-question") !== null;
    row.name ??= cell.textContent.slice(0, 40);
  }
  const gone = [...rows.values()]
    .filter((row) => Math.min(row.left, row.right) > room && !row.boxed && !row.asks);
  const out = [...panel.querySelectorAll('[data-twoshaft-side="left"] .given-frame')]
    .filter((one) => one.checkVisibility() && one.scrollWidth > one.clientWidth + 1)
    .map((one) => one.textContent.trim().slice(0, 40));
  return [...gone, ...out];
}"""


def left_over(page, looked_for: str, seconds: float = 20) -> list:
    """What is still found once the page has come to rest."""
    end = time.monotonic() + seconds
    while (found := page.evaluate(looked_for)) and time.monotonic() < end:
        time.sleep(0.1)
    return found


NOTEBOOKS = [
    path
    for folder in ("course/lessons", "exercises")
    for path in sorted((ROOT / folder).glob("*.ipynb"))
]


def test_every_module_is_here():
    for folder in ("course/lessons", "exercises"):
        names = {path.stem.split("-", 1)[-1] for path in NOTEBOOKS if path.parent == ROOT / folder}
        assert names >= set(MODULES)


@pytest.mark.parametrize("path", NOTEBOOKS, ids=lambda path: f"{path.parent.name}/{path.stem}")
def test_a_notebook(shared_lab, path):
    folder = shared_lab.root / path.parent.name
    folder.mkdir(exist_ok=True)
    shutil.copyfile(path, folder / path.name)
    page = shared_lab.open_notebook(f"{folder.name}/{path.name}")
    open_everything(page)
    wait_until(lambda: not page.locator(OPENING).count())
    assert found_on(page) == []
    assert left_over(page, SMALL) == []
    assert left_over(page, HARD_TO_GRASP) == []
    assert left_over(page, GIVEN_GONE) == []
    assert left_over(page, CUT_OFF) == []
    assert left_over(page, SIDEWAYS) == []
    page.set_viewport_size({"width": 320, "height": 640})
    assert left_over(page, TOO_WIDE) == []
    assert left_over(page, SMALL) == []
    assert left_over(page, CUT_OFF) == []
    shared_lab.close_windows()


def test_bench_sheets(chromium):
    unit = load_unit("tarnbeck-b5")
    page = chromium.new_page()
    for module in MODULES:
        page.set_content(as_page(bench_sheet(module, unit)))
        assert found_on(page) == [], module
    page.close()
