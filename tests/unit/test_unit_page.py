"""A unit as a page to leaf through: its order with reasons, its section, what the course carries."""

import shutil
from html import escape
from pathlib import Path

import pytest

from twoshaft.units import load_unit
from twoshaft_grader.cohort.content import Content
from twoshaft_grader.desk.commands import main
from twoshaft_grader.records.unit_page import unit_page

ROOT = Path(__file__).resolve().parents[2]


@pytest.fixture(scope="module")
def course(tmp_path_factory):
    """A course of two modules."""
    root = tmp_path_factory.mktemp("course")
    (root / "solutions").mkdir()
    for name in ("04-pressed-and-driven", "06-sealant-film"):
        shutil.copy(ROOT / "solutions" / f"{name}.ipynb", root / "solutions")
    return root


@pytest.mark.slow
def test_every_stage_is_a_leaf_with_each_step_and_its_reasons(course):
    unit = load_unit("tarnbeck-c4").with_sections(shapes=None)
    page = unit_page(unit, Content(course))
    assert page.count('class="leaf"') == 5 + len(unit.stages)
    assert page.count('<a href="#') == 5 + len(unit.stages)
    for one in (*unit.operations, *unit.stages):
        assert escape(one.name) in page, one.id
    for rule in unit.rules:
        assert escape(rule.reason) in page, rule.id
    assert "A schematic: nobody has drawn the shapes" in page
    assert "2 of 2 modules can be given" in page
    assert "04 Pressed and driven parts: 9 of 10 tasks" in page
    assert "add an entry of &#39;spring pins&#39; in its section fits" in page
    assert "http" not in page.replace("http://www.w3.org/2000/svg", "")  # it loads nothing


@pytest.mark.slow
def test_a_module_that_falls_says_why(course):
    unit = load_unit("tarnbeck-c4").with_sections(faces=None)
    page = unit_page(unit, Content(course))
    assert "1 of 2 modules can be given" in page and "06 Sealant film: falls" in page
    assert "has no section &#39;faces&#39;" in page


@pytest.mark.slow
def test_the_page_is_written_beside_the_file(course, tmp_path, capsys):
    own = tmp_path / "mine.yaml"
    assert main(["unit", "new", str(own), "--gears", "4"]) == 0
    assert main(["unit", "show", str(own), "--content", str(course)]) == 0
    page = (tmp_path / "mine.html").read_text(encoding="utf-8")
    assert "Still typical, not of your unit" in page and "mine.html" in capsys.readouterr().out
    assert main(["unit", "show", str(tmp_path / "none.yaml"), "--content", str(course)]) == 2
