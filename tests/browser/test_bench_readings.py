"""Figures from the bench, typed by keyboard in a real browser: used at once, kept, given back."""

import json
import shutil
from pathlib import Path

import nbformat
import pytest

from twoshaft.jupyter.released import cell_digest

pytestmark = pytest.mark.browser

ROOT = Path(__file__).resolve().parents[2]
NAME = "05-shims-and-preload.ipynb"
FRONT = ".jp-NotebookPanel:not(.lm-mod-hidden)"
FORM = f"{FRONT} .twoshaft-form:has(label:has-text('Shim that leaves neither play nor preload'))"
TYPED = {
    "Depth of the rear ring below the case face": "4,83 mm",
    "Spigot of the bearing plate": "4.02 mm",
    "Least preload of the target": "40 µm",
    "Most preload of the target": "0.1 mm",
    "Manual page": "112",
}


def test_figures_are_typed_by_keyboard_used_at_once_and_still_there_when_reopened(
    shared_lab, wait_until, wait_for_text, screenshot
):
    cells = nbformat.read(ROOT / "exercises" / NAME, as_version=4).cells
    lab = shared_lab
    lab.release([cell_digest(c.source) for c in cells if c.cell_type == "code"])
    shutil.copyfile(ROOT / "exercises" / NAME, lab.root / NAME)
    page = lab.open_notebook(NAME, ready=".ts-bench")
    form = page.locator(FORM)
    summary = form.locator(".ts-bench summary")
    assert not form.get_by_label("Read by").is_visible()
    summary.focus()
    page.keyboard.press("Enter")
    for prompt, text in TYPED.items():
        page.keyboard.press("Tab")
        assert form.get_by_label(prompt).evaluate("box => box === document.activeElement"), prompt
        page.keyboard.type(text)
    page.keyboard.press("Tab")  # who read them stays blank for now
    page.keyboard.press("Tab")
    page.keyboard.press("Enter")
    wait_for_text(page, "Still missing: Read by.")
    form.get_by_label("Read by").focus()
    page.keyboard.type("a b x d d")  # letters that would change the notebook
    page.keyboard.press("Tab")
    page.keyboard.press("Enter")
    wait_for_text(page, "target 0.04 to 0.1 mm of preload (from the bench, limits from the manual")
    form.get_by_label("Shim that leaves neither play nor preload").fill("0.81 mm")
    page.keyboard.press("Enter")
    sheet = lab.root / "practice-shims-and-preload.jobsheet.json"
    wait_until(lambda: sheet.exists() and "0.81 mm" in sheet.read_text())
    screenshot(page, "bench-readings")
    kept = json.loads(sheet.read_text())
    assert kept["bench"]["stack-ring-depth"]["value"] == "4,83 mm"
    assert kept["bench"]["stack-in-use"]["value"] == "yes"
    lab.clear()

    page = lab.open_notebook(NAME, ready=".ts-bench")
    wait_for_text(page, "target 0.04 to 0.1 mm of preload (from the bench, limits from the manual")
    form = page.locator(FORM)
    gap = form.get_by_label("Shim that leaves neither play nor preload")
    wait_until(lambda: gap.input_value() == "0.81 mm")
    form.get_by_text("This task uses figures from the bench").click()
    assert form.get_by_label("Read by").input_value() == "a b x d d"
    form.get_by_role("button", name="Go back to the drawn figures").click()
    page.get_by_text("0.04 to 0.1 mm of preload").wait_for(state="detached")
