"""Notebooks from text: the same bytes at every build, nothing of the answers in the release."""

from pathlib import Path

import nbformat
import pytest

from twoshaft.errors import CourseError
from twoshaft.jupyter.released import cell_digest
from twoshaft_grader.notebooks.__main__ import main
from twoshaft_grader.notebooks.build import RELEASED_CELLS, build, compare, write
from twoshaft_grader.notebooks.checks import check_lesson, check_reference_code, check_release
from twoshaft_grader.notebooks.text import build_notebook, module_of, notebook_text

TINY = Path(__file__).parents[1] / "marking/tiny/solutions/90-tiny.py"
LESSON = """\
# %% [markdown]
# # A lesson

# %% tags=["setup"]
import math

# %%
math.sqrt(4)

# %%
math.sqrt(4)
"""


@pytest.fixture(scope="module")
def project(tmp_path_factory):
    tmp_path = tmp_path_factory.mktemp("project")
    (tmp_path / "solutions").mkdir()
    (tmp_path / "course/lessons").mkdir(parents=True)
    (tmp_path / "solutions/90-tiny.py").write_text(TINY.read_text())
    (tmp_path / "course/lessons/00-start.py").write_text(LESSON)
    return tmp_path


@pytest.fixture(scope="module")
def built(project):
    return build(project)


def lesson(text):
    return build_notebook(text, Path("course/lessons/00-start.py"))


def solution(text):
    return build_notebook(text, Path("solutions/00-start.py"))


@pytest.mark.slow
def test_two_builds_are_byte_for_byte_the_same(project, built):
    assert build(project) == built
    assert built.findings == ()
    assert set(map(str, built.files)) == {
        "course/lessons/00-start.ipynb",
        "course/twoshaft/labextension/static/released-cells.json",
        "course/unit-file.md",
        "exercises/90-tiny.ipynb",
        "solutions/90-tiny.ipynb",
    }
    for text in built.files.values():
        assert text.endswith("\n") and not text.endswith("\n\n") and "\r" not in text


@pytest.mark.slow
def test_compare_names_what_is_out_of_step(built, tmp_path):
    assert len(compare(tmp_path, built)) == 5
    assert len(write(tmp_path, built)) == 5
    assert write(tmp_path, built) == [] and compare(tmp_path, built) == []
    (tmp_path / "exercises/90-tiny.ipynb").write_text("{}")
    (tmp_path / "exercises/91-stray.ipynb").write_text("{}")
    assert compare(tmp_path, built) == [
        "exercises/90-tiny.ipynb: is out of step with its source; run the notebook build.",
        "exercises/91-stray.ipynb: has no text source; write one or delete it.",
    ]


@pytest.mark.slow
def test_the_command_says_what_is_wrong_and_ends_with_one(tmp_path, capsys):
    (tmp_path / "course/lessons").mkdir(parents=True)
    source = tmp_path / "course/lessons/00-start.py"
    source.write_text(LESSON)
    assert main(["build", "--root", str(tmp_path)]) == 0
    assert main(["compare", "--root", str(tmp_path)]) == 0
    source.write_text(LESSON + "\n# %%\n1 + 1\n")
    capsys.readouterr()
    assert main(["compare", "--root", str(tmp_path)]) == 1
    assert capsys.readouterr().err == (
        "course/lessons/00-start.ipynb: is out of step with its source; run the notebook build.\n"
    )
    source.write_text("# %%\ndef f():\n    pass\n")
    assert main(["build", "--root", str(tmp_path)]) == 1
    assert "defines a function" in capsys.readouterr().err


@pytest.mark.slow
def test_the_release_keeps_forms_and_drops_answers(built):
    files = built.files
    released = nbformat.reads(files[Path("exercises/90-tiny.ipynb")], as_version=4)
    tags = [tag for cell in released.cells for tag in cell.metadata.get("tags", [])]
    assert tags.count("form") == 3 and tags.count("mark") == 3 and "reference" not in tags
    text = files[Path("exercises/90-tiny.ipynb")]
    for word in ("ref(", "mark_task", "HIDDEN", "You took the case alone", 'reach",'):
        assert word not in text
    marks = [cell for cell in released.cells if "mark" in cell.metadata.get("tags", [])]
    for cell in marks:
        assert cell.metadata.nbgrader.grade and cell.metadata.nbgrader.points > 0
        assert cell.metadata.jupyter.source_hidden and not cell.metadata.editable
        assert len(cell.source.splitlines()) == 1
    assert released.metadata.twoshaft == {"open": True, "module": "tiny", "version": "0.1.0"}


@pytest.mark.slow
def test_cells_that_run_on_opening_are_listed_by_digest(built):
    text = built.files[RELEASED_CELLS]
    assert cell_digest("import math") in text
    assert cell_digest("math.sqrt(4)") not in text


def test_cell_ids_follow_from_names_and_text():
    nb = lesson(LESSON)
    ids = [cell.id for cell in nb.cells]
    assert ids[3] == ids[2] + "-2" and len(set(ids)) == 4
    assert [c.id for c in lesson(LESSON).cells] == ids
    graded = build_notebook(TINY.read_text(), Path("solutions/90-tiny.py"))
    assert "gap" in [cell.id for cell in graded.cells]


def test_a_lesson_has_no_nbgrader_cells():
    nb = lesson(LESSON)
    assert not any("nbgrader" in cell.metadata for cell in nb.cells)
    assert nb.cells[1].metadata.jupyter.source_hidden


@pytest.mark.parametrize(
    ("text", "says"),
    [
        ('# %% tags=["mark"] task="a"\n', "a mark cell needs a task and points"),
        ('# %% tags=["mark"] task="a" points=2\n1\n', "a mark cell holds no code of its own"),
        ('# %% tags=["form"]\nx = 1\n', "a form cell calls"),
        ('# %% [markdown] tags=["task"]\n# Text\n', "a task text is a text cell"),
        (
            '# %% tags=["mark"] task="a" points=2\n\n# %% tags=["mark"] task="a" points=2\n',
            "the name 'a' is used twice",
        ),
    ],
)
def test_incomplete_markers_are_refused_with_their_place(text, says):
    with pytest.raises(CourseError) as caught:
        solution(text)
    assert says in caught.value.sentence and "solutions/00-start.py, cell" in caught.value.sentence


@pytest.mark.parametrize(
    ("text", "says"),
    [
        ("# %%\n" + "a = 1\n" * 16, "has 16 lines; keep it to 15"),
        ("# %%\ndef f():\n    return 1\n", "defines a function"),
        ("# %%\nprint(\n", "is not Python"),
    ],
)
def test_findings_on_a_lesson(text, says):
    findings = check_lesson(lesson(text), Path("course/lessons/00-start.py"))
    assert len(findings) == 1 and says in findings[0]
    assert findings[0].startswith("course/lessons/00-start.py, cell 1")


@pytest.mark.parametrize(
    ("code", "says"),
    [
        ("x = sheet.value('a')", "uses the sheet"),
        ("gap = 1\nref('gap', gap, outcome='o')\nshim = gap + 1", "goes on with gap"),
        ("gap = 1\ngap = ref('gap', gap, outcome='o')\nshim = gap + 1", None),
        ("gap = 1\nref('gap', gap, outcome='o')\ngap = 2\nshim = gap", None),
    ],
)
def test_follow_through_cannot_be_walked_round(code, says):
    nb = solution(f'# %% tags=["reference"]\n{code}\n')
    findings = check_reference_code(nb, Path("solutions/00-start.py"))
    assert (says is None and findings == []) or (says and says in findings[0])


def test_a_release_that_still_tells_is_found():
    nb = solution('# %% tags=["reference"]\nref("a", 1, outcome="o")\n')
    assert len(check_release(nb, Path("exercises/00-start.ipynb"))) == 2


def test_module_and_text_form():
    assert module_of(Path("solutions/02-order-of-work.py")) == "order-of-work"
    text = notebook_text(lesson(LESSON))
    assert nbformat.reads(text, as_version=4).cells[2].source == "math.sqrt(4)"
