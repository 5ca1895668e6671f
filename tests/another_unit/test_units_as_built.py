"""Units as they are built: play by a gasket or a circlip, bearings that set nothing, sliding reverse.

Each is a file in ``units/``, a variant of a shipped one, and says at its top what it has.
"""

from pathlib import Path

import pytest

from twoshaft.errors import UnitFileError
from twoshaft.models.audit import sound_unit
from twoshaft.models.shape.felt import _form
from twoshaft.models.shape.scene import view_of
from twoshaft.models.shim import Stack
from twoshaft.readings import draw, issue_record
from twoshaft.units import load_unit
from twoshaft.units.quantities import Q
from twoshaft_grader.cohort.fit import fit

UNITS = Path(__file__).parent / "units"
SOLUTIONS = Path(__file__).parents[2] / "solutions"
LEARNERS = ["ann", "bob", "cem"]


@pytest.fixture(scope="module")
def gasket():
    return sound_unit(UNITS / "play-by-gasket.yaml")


def given_with(unit, module):
    path = next(SOLUTIONS.glob(f"*-{module}.ipynb"))
    return fit(path, module, unit, LEARNERS, salt="test", attempt=1)


def test_a_thicker_gasket_gives_more_play(gasket):
    support = gasket.bearings.support_by_id("input-shaft")
    stack = Stack.from_support(support, {t.id: Q(t.nominal_mm, "mm") for t in support.stack})
    play = [-stack.interference(Q(mm, "mm")).m_as("mm") for mm in (0.40, 0.45, 0.50)]
    assert play == pytest.approx([0.0, 0.05, 0.10])  # 153.60 - 120 - 31 - 3 + gasket, by hand


def test_a_gasket_is_chosen_and_marked_as_a_shim_is(gasket):
    found = given_with(gasket, "shims-and-preload")
    assert {"stack", "trial", "shelf"} <= {task for task in found.records[0]["given"]}
    assert len(found.solution.points) == 7
    right = found.worked[0].references
    shelf = {f"{round(100 * mm):03}" for mm in gasket.bearings.shim_sets[0].thicknesses_mm}
    assert right["stack-shim"].value and right["stack-shim"].value <= shelf
    thin, thick = (right[f"stack-{end}"].value.m_as("mm") for end in ("thin", "thick"))
    for one in right["stack-shim"].value:  # a thicker gasket gives more play, so both ends hold
        assert thin <= int(one) / 100 <= thick


def test_one_operation_fits_bearings_of_two_sizes(gasket):
    presses = [
        one for one in gasket.fits.presses if tuple(one.operations) == ("press-input-bearings",)
    ]
    assert sorted(one.size_mm for one in presses) == [25, 30]
    drawn = {
        draw("pressed-and-driven", gasket, salt="s", learner=f"l{n}", attempt=1).press.name
        for n in range(12)
    }
    assert {one.name for one in presses} <= drawn
    assert len(given_with(gasket, "pressed-and-driven").solution.points) == 9


def test_roller_and_needle_bearings_have_sizes_and_set_nothing(gasket):
    roller, needle = (gasket.bearings.type_by_id(id) for id in ("output-roller", "idler-needles"))
    assert (roller.bore_mm, roller.outside_mm, roller.stand_mm) == (30, 62, 16)  # ISO 15, 02
    assert (needle.kind, needle.dynamic_kn) == ("needle", None)
    with pytest.raises(TypeError, match="no thrust"):
        gasket.bearings.set_by_id("output-roller")


def test_a_pair_that_is_set_needs_thrust(tmp_path):
    text = (UNITS / "play-by-gasket.yaml").read_text(encoding="utf-8")
    path = tmp_path / "one.yaml"
    path.write_text(text.replace("right: input-rear-ball", "right: output-roller"))
    with pytest.raises(UnitFileError, match="output-roller is a roller bearing, which carries no"):
        load_unit(path)


def test_their_section_is_drawn_and_felt(tmp_path):
    text = (UNITS / "nothing-set.yaml").read_text(encoding="utf-8")
    path = tmp_path / "one.yaml"
    path.write_text(
        text + "  solids:\n    add:\n"
        "    - {id: roller, name: Roller, kind: bearing, axis: input, type: output-roller,"
        " at mm: 10}\n"
        "    - {id: needles, name: Needles, kind: bearing, axis: input,"
        " type: idler-needles, at mm: 60}\n"
    )
    unit = load_unit(path)
    drawn = {one.solid.id: one for one in view_of(unit, "shafts").drawn}
    assert _form(unit, drawn["roller"]) == "a bearing with rollers"
    assert _form(unit, drawn["needles"]) == "a bearing with needles"
    z0, y0, z1, y1 = drawn["roller"].bounds
    assert (z1 - z0, y1 - y0) == (16, 62)


def test_without_a_pair_that_is_set_one_module_falls_and_says_what_would_bring_it():
    unit = sound_unit(UNITS / "nothing-set.yaml")
    assert not unit.bearings.supports
    with pytest.raises(UnitFileError, match="it takes a support whose 'shim set'"):
        given_with(unit, "shims-and-preload")
    found = given_with(unit, "whole-build")
    assert found.no_evidence[0] == "set-by-shim"


def test_play_by_a_selective_circlip_and_by_a_gauge_shim_ship():
    """Circlips on K6; on B5 the differential is lifted over a trial shim and its float is read."""
    k6 = load_unit("tarnbeck-k6").bearings
    assert k6.shim_set_by_id(k6.support_by_id("output-shaft").shim_set).id == "circlips"
    trial = issue_record("shims-and-preload", load_unit("tarnbeck-b5"), salt="s", learner="a",
                         attempt=1)["given"]["trial"]  # fmt: skip
    assert {"trial_mm", "lengths", "thicker"} <= set(trial)


def test_a_reverse_that_slides_has_no_synchroniser():
    train = load_unit("tarnbeck-c4").gear_train
    reverse = next(gear for gear in train.gears if gear.reverse)
    assert not any(reverse.id in one.gears for one in train.synchronisers)
