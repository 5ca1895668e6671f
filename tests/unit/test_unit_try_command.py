"""Which modules a unit can carry is seen before a cohort is made."""

import json
import shutil
from pathlib import Path

import nbformat
import pytest
from ruamel.yaml import YAML

import twoshaft.units
from twoshaft_grader.desk.commands import main

ROOT = Path(__file__).resolve().parents[2]
SHIPPED = Path(twoshaft.units.__file__).parent / "files" / "tarnbeck-b5.yaml"
MODULES = ("04-pressed-and-driven", "08-gear-train-and-checks")


@pytest.fixture
def content(tmp_path):
    """A course of two modules."""
    root = tmp_path / "content"
    for folder in ("solutions", "course/lessons"):
        (root / folder).mkdir(parents=True)
        for name in MODULES:
            shutil.copy(ROOT / folder / f"{name}.ipynb", root / folder)
    return root


def unit_file(tmp_path, change):
    data = YAML(typ="safe").load(SHIPPED)
    data["identity"]["id"] = "my-b5"
    for operation in data["operations"]:  # those ways show in the faults, which are not there
        operation.pop("wrong ways", None)
    del data["faults"]
    change(data)
    path = tmp_path / "my.yaml"
    path.write_text(json.dumps(data, indent=1))  # JSON is YAML too
    return path


def tried(path, content, capsys):
    assert main(["unit", "try", str(path), "--content", str(content)]) == 0
    return capsys.readouterr().out


@pytest.mark.slow
def without_gear_train(data):
    """Nor its shapes, which refer to it."""
    del data["gear train"], data["shapes"]


@pytest.mark.slow
def test_a_module_that_the_unit_lacks_something_for_is_named_with_what_it_lacks(
    tmp_path, content, capsys
):
    said = tried(unit_file(tmp_path, without_gear_train), content, capsys)
    assert "1 of 2 modules can be given" in said
    assert "Leave out gear-train-and-checks" in said and "pressed-and-driven: 10 of 10" in said
    assert "unit 'my-b5' has no section 'gear train'" in said.splitlines()[-1]


@pytest.mark.slow
def test_a_lesson_that_cannot_be_shown_is_named_with_its_cell(tmp_path, content, capsys):
    path = content / "course/lessons/04-pressed-and-driven.ipynb"
    lesson = nbformat.read(path, as_version=4)
    lesson.cells.append(nbformat.v4.new_code_cell("lesson.unit.gear_train"))
    path.write_text(nbformat.writes(lesson))
    said = tried(unit_file(tmp_path, without_gear_train), content, capsys)
    assert "0 of 2 modules can be given" in said and "Leave out pressed-and-driven" in said
    (line,) = [line for line in said.splitlines() if line.startswith("  lesson: ")]
    assert line.startswith(f"  lesson: {path.name}, cell {len(lesson.cells)}")
    assert "unit 'my-b5' has no section 'gear train'" in line


@pytest.mark.slow
def test_a_file_with_something_to_mend_is_not_tried(tmp_path, content, capsys):
    path = unit_file(tmp_path, lambda data: data["fasteners"]["groups"][0].update(wrench="none"))
    assert main(["unit", "try", str(path), "--content", str(content)]) == 2
    said = capsys.readouterr()
    assert "none" in said.err and "my.yaml, line " in said.err and not said.out
