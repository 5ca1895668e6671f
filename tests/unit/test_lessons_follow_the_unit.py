"""The course goes by what a unit is, never by what its file calls things.

The lessons and exercises run on the early variant with every id in it renamed: a lesson that looks
for a part, step or check by the name it has in the shipped file finds nothing there.
"""

import ast
import json
import typing
from pathlib import Path

import nbformat
import pytest
from matplotlib import pyplot

from twoshaft.readings import MODULES
from twoshaft.units import load_unit
from twoshaft.units.sections.order import Id, Section

ROOT = Path(__file__).resolve().parents[2]
LESSONS = sorted((ROOT / "course/lessons").glob("*.ipynb"))
_PATTERN = typing.get_args(Id)[1].pattern


def _holds_ids(annotation, metadata=()):
    """Whether a field of a section holds ids: its own or another entry's."""
    if typing.get_origin(annotation) is typing.Annotated:
        annotation, *metadata = typing.get_args(annotation)
    inner = any(_holds_ids(one) for one in typing.get_args(annotation))
    return inner or any(getattr(one, "pattern", None) == _PATTERN for one in metadata)


def _renamed(value, name, ids=False):
    """Plain data of a unit with every id passed through ``name``."""
    if isinstance(value, Section):
        data = {}
        for key in value.model_fields_set:
            field = type(value).model_fields[key]
            ids = _holds_ids(field.annotation, field.metadata)
            data[field.alias or key] = _renamed(getattr(value, key), name, ids)
        return data
    if isinstance(value, tuple | list):
        return [_renamed(one, name, ids) for one in value]
    if isinstance(value, str):
        return name(value) if ids else str(value)
    return value


@pytest.fixture(scope="module")
def workplace(tmp_path_factory):
    """A workplace whose unit is the early variant under other names."""
    root, names = tmp_path_factory.mktemp("workplace"), {}
    early = load_unit("tarnbeck-b5-early")
    # 97 and 1009 have no common factor: no name comes twice, and their order is another one.
    data = _renamed(early, lambda old: names.setdefault(old, f"n{97 * len(names) % 1009:04d}"))
    data["identity"].pop("variant of")
    assert len(set(names.values())) == len(names) > 400
    (root / "unit.yaml").write_text(json.dumps(data, indent=1), encoding="utf-8")
    (root / "workplace.json").write_text("{}")
    (root / "people.json").write_text("[]")
    (root / "lessons").mkdir()
    unit = load_unit(root / "unit.yaml")
    assert [one.name for one in unit.operations] == [one.name for one in early.operations]
    return root


@pytest.mark.slow
@pytest.mark.parametrize("lesson", LESSONS, ids=lambda path: path.stem)
def test_a_lesson_runs_on_a_unit_of_other_names(workplace, monkeypatch, lesson):
    monkeypatch.chdir(workplace / "lessons")
    names, shown = {}, 0
    for cell in nbformat.read(lesson, as_version=4).cells:
        if cell.cell_type == "code":
            *lines, last = ast.parse(cell.source).body
            exec(compile(ast.Module(lines, []), lesson.name, "exec"), names)
            if isinstance(last, ast.Expr):
                thing = eval(compile(ast.Expression(last.value), lesson.name, "eval"), names)
                shown += thing is not None
            else:
                exec(compile(ast.Module([last], []), lesson.name, "exec"), names)
    pyplot.close("all")
    assert shown > 5
    if "unit" in names:
        assert all(step.id.startswith("n") for step in names["unit"].operations)


# Orders are drawn and marked on made-up units elsewhere, and the lesson of the whole build does all
# that its exercise does: both take long.
@pytest.mark.slow
@pytest.mark.parametrize("module", sorted({*MODULES} - {"order-of-work", "whole-build"}))
def test_a_learners_exercise_is_drawn_and_marked_on_a_unit_of_other_names(
    workplace, mark_on, module
):
    mark = mark_on(load_unit(workplace / "unit.yaml"), module)
    assert mark.points == mark.maximum and mark.met
