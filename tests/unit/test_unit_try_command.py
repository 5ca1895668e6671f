"""Which modules a unit can carry is seen before a cohort is made."""

import json
import shutil
import time
from pathlib import Path

import nbformat
import pytest
from ruamel.yaml import YAML

import twoshaft.units
from twoshaft.errors import UnitFileError
from twoshaft_grader.cohort import trial
from twoshaft_grader.desk import unit_commands
from twoshaft_grader.desk.commands import main
from twoshaft_grader.notebooks.shrink import for_unit

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


def tried(path, content, capsys, *more, code=0):
    assert main(["unit", "try", str(path), "--content", str(content), *more]) == code
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
    assert "unit 'my-b5' has no section 'gear train'" in said.splitlines()[-2]


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


@pytest.mark.slow
def test_what_nobody_expected_stops_one_module_alone(tmp_path, content, capsys, monkeypatch):
    shutil.copy(ROOT / "solutions/09-reading-faults.ipynb", content / "solutions")
    told_first, say = tmp_path / "told", unit_commands.say_tried

    def broken(path, module, *args, **options):
        if module == "pressed-and-driven":
            raise TypeError("no such thing")
        if module == "reading-faults":  # what is done is told before the last one is
            until = time.monotonic() + 60
            while not told_first.exists():
                assert time.monotonic() < until
                time.sleep(0.01)
        raise UnitFileError("nothing here", mend="add it")

    def telling(one):
        say(one)
        told_first.write_text(one.module)

    monkeypatch.setattr(trial, "fit", broken)
    monkeypatch.setattr(unit_commands, "say_tried", telling)
    said = tried(SHIPPED, content, capsys, code=1)
    told = "the program did not expect this (TypeError: no such thing)."
    assert said.splitlines()[:2] == [
        "Leave out pressed-and-driven, and report this:", f"  exercise: {told}"
    ]  # fmt: skip
    assert "Leave out gear-train-and-checks, or correct the file:\n  exercise: nothing here" in said
    assert "Leave out reading-faults, or correct the file:" in said
    assert said.splitlines()[-1].endswith("0 of 3 modules can be given.")


@pytest.mark.slow
def test_only_the_modules_that_are_named_are_tried(content, capsys, monkeypatch, tmp_path):
    asked = tmp_path / "asked"
    asked.mkdir()

    def lacking(path, module, *args, **options):
        (asked / module).write_text("")
        raise UnitFileError("nothing here", mend="add it")

    monkeypatch.setattr(trial, "fit", lacking)
    one = ("--module", "gear-train-and-checks")
    assert "0 of 1 modules" in tried(SHIPPED, content, capsys, *one)
    assert [one.name for one in asked.iterdir()] == ["gear-train-and-checks"]
    said = tried(SHIPPED, content, capsys, *one, "--module", "pressed-and-driven")
    assert {one.name for one in asked.iterdir()} == {"pressed-and-driven", "gear-train-and-checks"}
    first, second = (line for line in said.splitlines() if line.startswith("Leave out"))
    assert "pressed-and-driven" in first and "gear-train-and-checks" in second
    tried(SHIPPED, content, capsys, "--module", "none", code=2)


@pytest.mark.parametrize(
    ("entry", "read"), [("interlocks", "interlocks[0]"), ("detents", "detents[0]")]
)
def test_the_lesson_of_the_shift_goes_without_pins_and_without_detents(unit, entry, read):
    text = (ROOT / "course/lessons/07-shift-and-lockout.ipynb").read_text(encoding="utf-8")
    bare = unit.with_sections(shift=unit.shift.model_copy(update={entry: ()}))
    assert read in text and for_unit(text, unit) == text
    assert read not in for_unit(text, bare) and "*Left out: " in for_unit(text, bare)
