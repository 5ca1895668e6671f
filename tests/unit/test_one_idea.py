"""One idea a screen: a section of a lesson is short, and its links lead somewhere.

A section is what stands between two headings. It may have so many words, one rig, two things to
look at in all, and two questions: one that asks before the answer, one that asks for the same
alone. What is folded away (sources) does not count.
"""

import ast
import re
from dataclasses import dataclass
from pathlib import Path

import nbformat
import pytest

from twoshaft.readings import issue_record
from twoshaft.units import load_unit
from twoshaft_grader.marking.reference import load_solution, run_clean

ROOT = Path(__file__).resolve().parents[2]
LESSONS = sorted((ROOT / "course/lessons").glob("[0-9]*.py"))
SOLUTIONS = sorted((ROOT / "solutions").glob("*.ipynb"))
WORDS, RIGS, SHOWN, QUESTIONS = 150, 1, 2, 2
PRACTISED = "lesson.calculation("  # calculations are screens of their own, one below the other

each_lesson = pytest.mark.parametrize("path", LESSONS, ids=lambda path: path.stem)


@dataclass
class Section:
    heading: str
    words: int = 0
    rigs: int = 0
    shown: int = 0
    questions: int = 0


def sections(text):
    """The sections of a lesson's source below its opening."""
    found = [Section("")]
    for cell in re.split(r"(?m)^# %%", text)[1:]:
        head, _, body = cell.partition("\n")
        if "[markdown]" in head:
            words = re.sub(r"(?m)^# ?", "", body)
            words = re.sub(r"(?s)<details>.*?</details>", "", words)
            for part in re.split(r"(?m)^(?=## )", words):
                if part.startswith("## "):
                    found.append(Section(part.splitlines()[0][3:].strip()))
                found[-1].words += len(re.findall(r"[^\s*_`]*\w\S*", part))
        elif "lesson.predict(" in body:
            found[-1].questions += 1
        elif "setup" not in head and PRACTISED not in body:
            found[-1].shown += isinstance(ast.parse(body).body[-1], ast.Expr)
            found[-1].rigs += len(re.findall(r"\b\w+_(?:rig|bench)\(", body))
    return found[1:]


def too_much(section):
    limits = {"words": WORDS, "rigs": RIGS, "shown": SHOWN, "questions": QUESTIONS}
    return [
        f"“{section.heading}” has {getattr(section, what)} {what}, at most {most}: split or cut it"
        for what, most in limits.items()
        if getattr(section, what) > most
    ]


@each_lesson
def test_a_section_of_a_lesson_is_one_idea(path):
    found = sections(path.read_text(encoding="utf-8"))
    assert len(found) > 8
    wrong = [line for section in found for line in too_much(section)]
    assert not wrong, "\n".join(wrong)


def test_what_is_too_much_is_found():
    words = "# " + "word " * (WORDS + 1)
    rig = '# %% tags=["then"]\nbearing_rig(unit)\n'
    text = "# %% [markdown]\n# # Title\n# %% [markdown]\n# ## Long\n#\n" + words
    text += "\n# <details>\n# folded away\n# </details>\n# %% [markdown]\n# ## Full\n" + rig * 3
    text += '# %% tags=["predict"]\nlesson.predict("a")\n' * 3
    text += '# %% tags=["rig"]\nlesson.calculation("b")\n'
    long, full = sections(text)
    assert long.words == WORDS + 2 and too_much(long) and len(too_much(long)) == 1
    assert (full.rigs, full.shown, full.questions) == (3, 3, 3) and len(too_much(full)) == 3


def places(path):
    """The headings of a built lesson as links know them: words of letters, joined."""
    for cell in nbformat.read(path, as_version=4).cells:
        if cell.cell_type == "markdown":
            for heading in re.findall(r"(?m)^##+ (.+)$", cell.source):
                yield re.sub(r"[^a-z0-9]+", "-", heading.lower()).strip("-")


@pytest.mark.slow
@pytest.mark.parametrize("path", SOLUTIONS, ids=lambda path: path.stem)
def test_every_place_that_feedback_sends_to_is_a_heading_of_its_lesson(path):
    unit, module = load_unit("tarnbeck-b5"), path.stem.partition("-")[2]
    issued = issue_record(module, unit, salt="places", learner="a01", attempt=1)
    answered = run_clean(load_solution(path), issued, unit)
    named = {one.lesson for one in answered.references.values() if one.lesson}
    assert len(named) > 2
    for place in named:
        notebook, _, heading = place.partition("#")
        lesson = ROOT / "course/lessons" / f"{notebook}.ipynb"
        assert not heading or heading in set(places(lesson)), f"{place} is no heading"
