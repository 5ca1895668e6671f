"""A feedback page on a module's worth of tasks, looked at by a browser."""

import re
import shutil
from dataclasses import replace

import pytest

from twoshaft_grader.marking.feedback import Handed, feedback_page


@pytest.fixture
def page_text(tiny):
    """Nine tasks, most of them wrong in ways that take words to explain."""
    issued = tiny.issued("eve")
    answers = tiny.solve(issued) | {
        "gap-depth": f"{issued['given']['gap']['case']} mm",
        "gap-shim": "1 in",
        "build-order": ["bush", "seal", "shaft", "gear", "case", "screws", "check", "ring", "plug"],
        "build-why": "weight",
        "new-parts": ["gear", "seal"],
    }
    mark = tiny.mark(issued, answers)
    tasks = [replace(task, id=f"{task.id}-{n}") for n in range(3) for task in mark.tasks]
    return feedback_page(
        replace(mark, tasks=tuple(tasks)),
        Handed(learner="Eve Ashdown", college="Tarnbeck College", handed_in="2026-03-02 09:30"),
    )


def test_no_key_is_in_the_page(tiny):
    issued = tiny.issued("ivy")
    solved = tiny.solve(issued)
    wrong = solved | {"gap-depth": "9 mm", "gap-shim": "8 mm", "build-why": "oil"}
    wrong["build-order"] = solved["build-order"][::-1]
    page = feedback_page(tiny.mark(issued, wrong))
    gap = issued["given"]["gap"]["case"] - issued["given"]["gap"]["bearing"]
    assert f"{gap:.2f}" not in page
    assert "It is out of reach later" not in page
    assert page.count("comes after") <= len(solved["build-order"]) // 3


@pytest.mark.browser
def test_it_prints_on_two_pages_and_reflows_at_400_percent(page_text, tmp_path):
    from playwright.sync_api import sync_playwright

    chromium = shutil.which("chromium")
    if chromium is None:
        pytest.skip("Debian's chromium is not installed")
    path = tmp_path / "feedback.html"
    path.write_text(page_text)
    with sync_playwright() as driver:
        browser = driver.chromium.launch(executable_path=chromium, args=["--no-sandbox"])
        # 1280 px wide at 400 % zoom is 320 CSS px.
        page = browser.new_page(viewport={"width": 320, "height": 180})
        asked = []
        page.on("request", lambda request: asked.append(request.url))
        page.goto(path.as_uri())
        assert asked == [path.as_uri()]
        assert page.evaluate("document.documentElement.scrollWidth") <= 320
        printed = page.pdf(prefer_css_page_size=True)
        browser.close()
    assert len(re.findall(rb"/Type\s*/Page[^s]", printed)) <= 2
