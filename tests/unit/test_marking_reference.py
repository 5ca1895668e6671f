"""Solutions run without a kernel, and ref in a live notebook."""

import json
import subprocess
import sys

import pytest

from twoshaft.errors import CourseError
from twoshaft.jobsheet import Number
from twoshaft.models import order
from twoshaft.units.quantities import Q
from twoshaft_grader.marking import Slip, load_solution, ref
from twoshaft_grader.marking.kinds import Reference, judge


def test_in_a_live_notebook_ref_gives_the_reference_back(make_unit):
    assert ref("gap", Q(1.25, "mm"), outcome="o") == Q(1.25, "mm")
    assert ref("which", {"a", "b"}, outcome="o") == {"a", "b"}
    task = order.OrderTask.from_unit(make_unit(3, [(2, 1), (1, 0)]))
    assert ref("steps", task, outcome="o") == ("s02", "s01", "s00")


@pytest.mark.parametrize(
    ("kind", "says"),
    [({"weight": 0}, "the weight of 'gap' is 0"), ({"tolerance": {"rough": 1}}, "another kind")],
)
def test_a_reference_that_cannot_be_used_is_refused(kind, says):
    with pytest.raises(CourseError) as caught:
        ref("gap", Q(1, "mm"), outcome="o", **kind)
    assert says in caught.value.sentence


def test_a_slip_that_cannot_judge_an_answer_is_not_that_slip():
    slip = Slip(lambda value: value.to("newton").magnitude > 1, 0.5, "Too strong.")
    reference = Reference("f", Q(1, "mm"), "o", 1.0, None, False, (slip,), "")
    assert judge(Number("f", "?", "mm"), reference, Q(3, "mm")).slip == ""


def test_a_solution_is_compiled_once_for_each_version_of_its_file(tmp_path):
    path = tmp_path / "01-a.ipynb"
    cell = {"cell_type": "code", "metadata": {"tags": ["reference"]}, "source": "x = 1"}
    nb = {"cells": [cell], "metadata": {"twoshaft": {"module": "a", "version": "1"}}}
    path.write_text(json.dumps(nb))
    first = load_solution(path)
    assert load_solution(path) is first
    cell["source"] = ["x = 2\n", "y = 3"]
    path.write_text(json.dumps(nb))
    assert load_solution(path).digest != first.digest


@pytest.mark.parametrize(
    "text",
    ["{", "[]", '{"cells": []}', '{"cells": [{"cell_type": "code"}], "metadata": {}}'],
)
def test_a_damaged_solution_is_one_sentence(tmp_path, text):
    path = tmp_path / "01-a.ipynb"
    path.write_text(text)
    with pytest.raises(CourseError) as caught:
        load_solution(path)
    assert str(path) in caught.value.sentence
    with pytest.raises(CourseError):
        load_solution(tmp_path / "none.ipynb")


def test_code_that_is_not_python_names_its_cell(tmp_path):
    path = tmp_path / "01-a.ipynb"
    cell = {"cell_type": "code", "metadata": {"tags": ["form"]}, "source": "x ="}
    path.write_text(json.dumps({"cells": [cell], "metadata": {}}))
    with pytest.raises(CourseError, match="cell 1"):
        load_solution(path)


@pytest.mark.slow
def test_importing_for_a_grade_cell_warns_of_nothing():
    """Anything on stderr costs all points of a grade cell."""
    done = subprocess.run(
        [sys.executable, "-W", "default", "-c", "import twoshaft_grader.marking"],
        capture_output=True,
        text=True,
    )
    assert (done.returncode, done.stdout, done.stderr) == (0, "", "")
