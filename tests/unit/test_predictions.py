"""No lesson shows what answers a prediction before the learner has said something.

Every cell of every lesson is walked, first as text, then run as a learner's page runs it.
"""

import re
import tomllib
from pathlib import Path

import nbformat
import pytest
from IPython.core.interactiveshell import InteractiveShell
from IPython.utils.capture import capture_output
from matplotlib import pyplot

from twoshaft.modules import COURSE
from twoshaft.practice.asked import asked
from twoshaft.practice.lesson import OPEN_ALL, Shut
from twoshaft.practice.screen import Question
from twoshaft_grader.notebooks.text import predicted

ROOT = Path(__file__).resolve().parents[2]
LESSONS = sorted((ROOT / "course/lessons").glob("[0-9]*.ipynb"))
TEXTS = sorted((ROOT / "course/twoshaft/practice/texts").glob("*.toml"))

each_lesson = pytest.mark.parametrize("path", LESSONS, ids=lambda path: path.stem)


def cells_of(path):
    return nbformat.read(path, as_version=4).cells


def tags(cell):
    return cell.metadata.get("tags", [])


def module_of(path):
    return path.stem.partition("-")[2]


@each_lesson
def test_after_a_prediction_all_of_its_section_is_shut(path):
    last, open_ = None, []
    for number, cell in enumerate(cells_of(path), 1):
        if cell.cell_type == "markdown":
            assert not re.search(r"\bpredict\b", cell.source, re.I), f"cell {number}: no form asks"
        if cell.cell_type == "markdown" and re.match(r"##? ", cell.source):
            last = None
        elif "predict" in tags(cell):
            last = predicted(cell.source)
            open_.append(last)
        elif last and "then" not in tags(cell):
            pytest.fail(f"{path.name}, cell {number}: shown before “{last}” is given")
        elif "then" in tags(cell) and "lesson.then(" in cell.source:
            assert f'lesson.then("{last}"' in cell.source
            open_ = [name for name in open_ if name != last]
    assert not open_, f"nothing answers {open_}"


def said(outputs):
    """Everything that a page shows of some outputs, as one text."""
    return "\n".join(
        str(text) for output in outputs for kind, text in output.data.items() if "image" not in kind
    )


@pytest.fixture
def shell(tmp_path, monkeypatch):
    """What runs a learner's page, in a folder of their own."""
    monkeypatch.chdir(tmp_path)
    monkeypatch.delenv(OPEN_ALL, raising=False)
    InteractiveShell.clear_instance()
    yield InteractiveShell.instance()
    InteractiveShell.clear_instance()
    pyplot.close("all")


@pytest.mark.slow
@each_lesson
def test_nothing_is_shown_before_it_is_given_and_then_no_more_than_that(path, shell):
    shown, shut, screens = [], [], {}
    for cell in cells_of(path):
        if cell.cell_type != "code":
            continue
        with capture_output() as page:
            result = shell.run_cell(cell.source)
        result.raise_error()
        thing = result.result
        if isinstance(thing, Shut):
            assert "then" in tags(cell)
            name = re.search(r'lesson\.then\("([^"]+)"', cell.source)[1]
            shut.append((name, thing))
            texts = [text for output in page.outputs for text in output.data.items()]
            assert all("twoshaft-shut" in text for kind, text in texts if kind == "text/html")
            assert {kind for kind, _ in texts} <= {"text/html", "text/plain"}
        else:
            shown.append(said(page.outputs))
        if isinstance(thing, Question) and "predict" in tags(cell):
            screens[predicted(cell.source)] = thing
    lesson = shell.user_ns["lesson"]
    assert shut and set(screens) == {name for name, _ in shut}
    page = "\n".join(shown)
    for name in screens:
        question = lesson._asked[name]
        assert question.told not in page, f"the page says why before {name} is given"
    assert not any(thing.is_open for _, thing in shut)
    for name, screen in screens.items():
        before = {id(thing) for _, thing in shut if thing.is_open}
        with capture_output() as opened:
            screen.hear({"type": "give", "values": {name: lesson._asked[name].right}})
        assert screen.told[name]["how"] == "right", name
        now = {id(thing) for _, thing in shut if thing.is_open}
        assert now - before == {id(thing) for other, thing in shut if other == name}
        assert opened.outputs, name
    assert all(thing.is_open for _, thing in shut)


@pytest.mark.parametrize("path", TEXTS, ids=lambda path: path.stem)
def test_every_question_can_be_asked_and_is_asked(path):
    module = path.stem
    lesson = next(one for one in LESSONS if module_of(one) == module)
    names = [predicted(cell.source) for cell in cells_of(lesson) if "predict" in tags(cell)]
    known = tomllib.loads(path.read_text("utf-8"))
    assert sorted(names) == sorted(known)
    for name, part in known.items():
        if "right" not in part:
            continue  # the lesson works it out; it is run above
        question = asked(module, name)
        assert question.agrees(question.right) and question.told.endswith(".")
        assert question.reply(question.right).endswith("That is right.")


def test_every_module_asks():
    assert {path.stem for path in TEXTS} == set(COURSE)
