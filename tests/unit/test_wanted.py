"""What a task takes of a unit: said for tasks that there are, in sections that there are."""

import tomllib
from pathlib import Path

import pytest

import twoshaft.readings
from twoshaft.errors import UnitFileError
from twoshaft.readings import MODULES, draw
from twoshaft.readings.wanted import wanted
from twoshaft.units import load_unit
from twoshaft.units.unit import Unit

TABLE = tomllib.loads(
    (Path(twoshaft.readings.__file__).parent / "wanted.toml").read_text(encoding="utf-8")
)
WITHIN = {("whole-build", "film"), ("whole-build", "next"), ("whole-build", "ways"), ("whole-build", "joints"),
          ("whole-build", "worn"), ("shims-and-preload", "follow")}  # fmt: skip
"""Parts of a task that complain by themselves, and one that its solution makes."""


def test_every_entry_is_of_a_task_and_a_section():
    sections = {field.alias or name for name, field in Unit.model_fields.items()}
    for module, tasks in TABLE.items():
        for task, (section, words) in tasks.items():
            assert task in MODULES[module].TASKS or (module, task) in WITHIN, (module, task)
            assert section in sections, (module, task)
            assert not words.endswith(".") and len(words.split()) <= 30


def test_who_lacks_something_is_told_what_the_task_takes():
    bare = load_unit("tarnbeck-c4").model_copy(update={"clocks": ()})
    with pytest.raises(UnitFileError) as told:
        draw("order-of-work", bare, salt="s", learner="a", attempt=1)
    assert "too small for the task" in told.value.sentence
    assert told.value.sentence.endswith("in the section 'clocks'.")
    assert wanted("order-of-work", "clock").startswith("it takes a clock with steps")
    assert wanted("order-of-work", "no task") == ""
