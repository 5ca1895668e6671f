"""Each entry that a unit may be without, taken out alone: what falls with it, and what stays."""

from pathlib import Path

import nbformat
import pytest

from twoshaft.readings import MODULES, draw
from twoshaft.readings.issue import not_carried
from twoshaft.units.carried import NEEDED
from twoshaft_grader.notebooks.shrink import falling

ROOT = Path(__file__).resolve().parents[2]
TASKS = [
    (module, task, entry)
    for module in MODULES
    for task, entries in getattr(MODULES[module], "NEEDS", {}).items()
    for entry in entries
]


def section_without(name, *entries):
    """A unit whose section has nothing under some entries."""

    def bare(unit):
        section = getattr(unit, name)
        gone = {one: () if isinstance(getattr(section, one), tuple) else None for one in entries}
        return unit.with_sections(**{name: section.model_copy(update=gone)})

    return bare


def set_with_play(unit):
    supports = tuple(
        one.model_copy(update={"target": one.target.model_copy(update={"kind": "end-play"})})
        for one in unit.bearings.supports
    )
    bearings = unit.bearings.model_copy(update={"supports": supports})
    return unit.with_sections(bearings=bearings)


def moisture_alone(unit):
    some = tuple(one for one in unit.faces.sealants if one.kind == "moisture")
    return unit.with_sections(faces=unit.faces.model_copy(update={"sealants": some}))


def without_shapes(unit):
    return unit.with_sections(shapes=None)


def fixed_side_gears(unit):
    train = unit.gear_train
    differential = train.differential.model_copy(update={"side_gear_play": None})
    return unit.with_sections(gear_train=train.model_copy(update={"differential": differential}))


def driven_by_the_output(unit):
    """The output shaft is the last; the speed drive sat on the differential."""
    train = unit.gear_train
    gone = {"differential": None, "final_drive": None, "speed_drive": None}
    last = train.model_copy(update=gone | {"output": train.driven_from})
    return unit.with_sections(gear_train=last)


def forwards_alone(unit):
    train = unit.gear_train
    gears = tuple(one for one in train.gears if not one.reverse)
    return unit.with_sections(gear_train=train.model_copy(update={"gears": gears}))


def pushed_cold(unit):
    presses = tuple(one.model_copy(update={"warm": None}) for one in unit.fits.presses)
    return unit.with_sections(fits=unit.fits.model_copy(update={"presses": presses}))


def one_shaft_a_cord(unit):
    checks = tuple(
        one.model_copy(update={"and_support": None}) if one.kind == "cord" else one
        for one in unit.faults.checks
    )
    return unit.with_sections(faults=unit.faults.model_copy(update={"checks": checks}))


WITHOUT = {
    "press": section_without("fits", "presses"),
    "warmed-press": pushed_cold,
    "seal": section_without("fits", "seals"),
    "spring-pin": section_without("fits", "spring_pins"),
    "staked-nut": section_without("fits", "staked_nuts"),
    "preload": set_with_play,
    "second-sealant": moisture_alone,
    "lockout": section_without("shift", "must_block"),
    "interlock": section_without("shift", "interlocks"),
    "detent": section_without("shift", "detents"),
    "differential": driven_by_the_output,
    "side-gear-play": fixed_side_gears,
    "reverse": forwards_alone,
    "synchroniser": section_without("gear_train", "synchronisers"),
    "cord-of-two": one_shaft_a_cord,
    "speed-drive": section_without("gear_train", "speed_drive"),
    "dog-teeth": section_without("inspect", "dogs"),
    "selective-circlip": section_without("inspect", "circlips"),
    "ring-seat": section_without("inspect", "seats"),
    "seal-track": section_without("inspect", "seal"),
    "leak-test": section_without("close_out", "leak_test"),
    "ring-work": section_without("close_out", "ring"),
    "shapes": without_shapes,
}
ALSO = {"press": {"warmed-press"}, "differential": {"side-gear-play", "speed-drive"}}
"""What goes with an entry, because it stands in it."""


def test_every_entry_can_be_taken_out_here():
    assert set(WITHOUT) == set(NEEDED)
    assert {entry for _, _, entry in TASKS} <= set(WITHOUT)


@pytest.mark.parametrize("entry", WITHOUT)
def test_an_entry_that_is_taken_out_is_gone_and_nothing_else_is(unit, entry):
    bare = WITHOUT[entry](unit)
    gone = {id for id, one in NEEDED.items() if one.there(unit) and not one.there(bare)}
    assert gone == {entry} | ALSO.get(entry, set())


@pytest.mark.parametrize(
    ("module", "entry"),
    sorted({(module, entry) for module, _, entry in TASKS}),
)
def test_the_tasks_that_need_an_entry_fall_with_it_and_no_others(unit, module, entry):
    gone = {entry} | ALSO.get(entry, set())
    needs = MODULES[module].NEEDS
    expected = {task for task, entries in needs.items() if gone & set(entries)}
    lacks = not_carried(module, WITHOUT[entry](unit))
    assert set(lacks) == expected and expected
    assert all(lack.sentence.endswith(lack.words) for lack in lacks.values())
    # the released exercise loses them, and what reads them, and keeps the others
    path = next((ROOT / "exercises").glob(f"*-{module}.ipynb"))
    nb = nbformat.read(path, as_version=4)
    falls = falling(nb, {task: lack.sentence for task, lack in lacks.items()})
    tasks = {
        cell.metadata["nbgrader"]["grade_id"].removesuffix("-task")
        for cell in nb.cells
        if cell.metadata.get("nbgrader", {}).get("grade_id", "").endswith("-task")
    }
    assert falls and set(falls.values()) <= {lack.sentence for lack in lacks.values()}
    assert len(tasks) > len(falls)


@pytest.mark.slow
@pytest.mark.parametrize(
    ("module", "entry"),
    sorted({(module, entry) for module, _, entry in TASKS}),
)
def test_what_is_given_without_an_entry_has_all_other_tasks(unit, module, entry):
    """Whatever does not need the entry is drawn as it was, but for what the entry itself shows."""
    bare = WITHOUT[entry](unit)
    falls = set(not_carried(module, bare))
    given = draw(module, bare, salt="needs", learner="ann", attempt=0)
    there = {task for task in MODULES[module].TASKS if getattr(given, task) is not None}
    assert not there & falls
    assert len(there) * 2 > len(MODULES[module].TASKS) - len(falls)
