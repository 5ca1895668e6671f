"""A unit file that is sound and lacks something: a sentence with task and section, whatever lacks."""

import re

import pytest

from twoshaft.errors import CourseError
from twoshaft.readings import MODULES, cannot_be_drawn, draw, issue_record
from twoshaft.readings.sealant_film import faces as coated

ERRORS = re.compile(
    r"\b[A-Z][A-Za-z]*(Error|Iteration)\b|index out of range|NoneType|arg is an empty"
)


@pytest.mark.parametrize(
    ("section", "entry", "left", "module", "says"),
    [
        ("gear_train", "gears", (), "gear-train-and-checks", "the task 'count'"),
        ("bearings", "types", (), "shims-and-preload", "'shims-and-preload' is made of"),
        ("fits", "metals", (), "pressed-and-driven", "section 'fits': nothing there is called"),
        ("shift", "rails", (), "whole-build", "the task 'late'"),
        ("shift", "gates", (), "reading-faults", "the task 'stop'"),
        ("shift", "turn_mm", (), "shift-and-lockout", "in its section 'shift'"),
        ("fasteners", "states", (), "threaded-joints", "in its section 'fasteners'"),
    ],
)
def test_what_is_lacking_is_told_in_a_sentence(unit, section, entry, left, module, says):
    whole = getattr(unit, section)
    bare = unit.with_sections(**{section: whole.model_copy(update={entry: left})})
    with pytest.raises(CourseError) as caught:
        issue_record(module, bare, salt="salt", learner="ann", attempt=1)
    message = str(caught.value)
    assert says in message
    assert message.endswith(".") and "; " in message
    assert not ERRORS.search(message)
    assert caught.value.__cause__ is not None  # --trace shows where


def lacks(unit, module, task):
    """Sentences for one task, of some learners."""
    drawn = [
        (one, error)
        for number in range(6)
        for one, error in cannot_be_drawn(
            module, unit, salt="salt", learner=f"learner-{number}", attempt=1
        )
    ]
    return {error.sentence for one, error in drawn if one == task}


@pytest.mark.parametrize("module", MODULES)
def test_any_task_can_be_left_out(module):
    """Whatever cannot be drawn for a unit, what is given is put together without it."""
    given = MODULES[module].Given()
    assert all(getattr(given, name) is None for name in MODULES[module].TASKS)


@pytest.mark.slow
def test_too_few_readings_to_lose_are_named_and_the_rest_is_given(unit):
    one = unit.strip.readings[0]  # six that are lost at once
    readings = tuple(one.model_copy(update={"id": f"{one.id}-{number}"}) for number in range(6))
    bare = unit.strip.model_copy(update={"readings": readings})
    few = unit.with_sections(strip=bare)
    (said,) = lacks(few, "strip-mark-clean", "lost")
    assert said.endswith(
        "it takes more readings, which other steps cover or end, in the section 'strip'."
    )
    given = draw("strip-mark-clean", few, salt="s", learner="ann", attempt=1, left_out=("lost",))
    assert given.lost is None and given.apart is not None


def flanged(unit, joint):
    """The unit with one flange, of the end cover, on a joint of this stiffness."""
    groups = tuple(
        one.model_copy(
            update={
                "flange": one.flange.model_copy(update={"joint_n_per_mm3": joint})
                if one.id == "end-cover-bolts"
                else None
            }
        )
        for one in unit.fasteners.groups
    )
    return unit.with_sections(fasteners=unit.fasteners.model_copy(update={"groups": groups}))


@pytest.mark.slow
def test_a_face_that_is_too_even_names_group_figure_and_field(unit):
    (said,) = lacks(flanged(unit, 20.0), "threaded-joints", "face")
    assert "'end-cover-bolts' differ by 7.7 %" in said and "more than 20 %" in said
    assert "'joint n per mm3' of 'end-cover-bolts', now 20, is lower" in said
    assert not lacks(flanged(unit, 2.0), "threaded-joints", "face")


@pytest.mark.slow
def test_a_land_too_narrow_for_a_bead_names_hole_and_figures(unit, monkeypatch):
    monkeypatch.setattr(coated, "TRIES", 2)
    face = unit.faces.face_by_id("case-joint")
    holes = tuple(one.model_copy(update={"diameter_mm": 20.0}) for one in face.holes)
    narrow = face.model_copy(update={"holes": holes})
    faces = unit.faces.model_copy(update={"faces": (narrow,)})
    said = lacks(unit.with_sections(faces=faces), "sealant-film", "lay")
    assert any(
        "falls off the face in part" in one
        and re.search(r"the hole 'bolt-\d+' .* are [\d.]+ mm", one)
        for one in said
    ), said
