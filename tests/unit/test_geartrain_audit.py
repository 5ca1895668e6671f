import math

import pytest

from twoshaft.models.geartrain.audit import audit_gear_train
from twoshaft.models.geartrain.centres import centre_distances, centre_fit
from twoshaft.units.quantities import Q


def changed(unit, **meshes):
    train = unit.gear_train
    new = tuple(
        m.model_copy(update={"driven": m.driven.model_copy(update={"teeth": meshes[m.id]})})
        if m.id in meshes
        else m
        for m in train.meshes
    )
    return unit.with_sections(gear_train=train.model_copy(update={"meshes": new}))


def test_the_shipped_unit_is_sound(unit):
    assert audit_gear_train(unit) == ()


def test_gears_that_do_not_fit_their_shafts_are_found(unit):
    (finding,) = audit_gear_train(changed(unit, **{"mesh-third": 49}))
    assert "do not fit shafts 75 mm apart" in finding.what
    assert "tarnbeck-b5.yaml, line" in finding.where


def test_a_forward_gear_marked_as_reverse_is_found(unit):
    train = unit.gear_train
    gears = tuple(
        g.model_copy(update={"reverse": True}) if g.id == "second" else g for g in train.gears
    )
    wrong = unit.with_sections(gear_train=train.model_copy(update={"gears": gears}))
    assert any("second" in finding.what for finding in audit_gear_train(wrong))


def test_equal_ratios_that_cannot_lock_the_shafts_are_found(unit):
    train = unit.gear_train
    third = next(m for m in train.meshes if m.id == "mesh-third")
    meshes = tuple(
        m.model_copy(update={"driving": third.driving, "driven": third.driven})
        if m.id == "mesh-fourth"
        else m
        for m in train.meshes
    )
    wrong = unit.with_sections(gear_train=train.model_copy(update={"meshes": meshes}))
    assert any("equal ratios" in finding.what for finding in audit_gear_train(wrong))


def test_one_sleeve_for_loose_wheels_on_two_shafts_is_found(unit):
    train = unit.gear_train
    meshes = tuple(
        m.model_copy(update={"loose": "output-shaft"}) if m.id == "mesh-third" else m
        for m in train.meshes
    )
    wrong = unit.with_sections(gear_train=train.model_copy(update={"meshes": meshes}))
    (finding,) = audit_gear_train(wrong)
    assert "one sleeve cannot serve third and fourth" in finding.what


def without_distances(unit, **meshes):
    train = changed(unit, **meshes).gear_train
    return unit.with_sections(gear_train=train.model_copy(update={"distances": ()}))


def test_teeth_on_the_same_two_shafts_must_go_with_one_distance(unit):
    """The distance is in nobody's file; two pairs of gears tell that there can be none."""
    assert audit_gear_train(without_distances(unit)) == ()
    finding, *_ = audit_gear_train(without_distances(unit, **{"mesh-third": 49}))
    assert "mesh-third lie on the same two shafts" in finding.what
    assert "tarnbeck-b5.yaml, line" in finding.where


def test_a_module_that_is_not_known_is_not_held_against_anything(unit):
    train = changed(unit, **{"mesh-third": 49}).gear_train
    meshes = tuple(m.model_copy(update={"module_mm": None}) for m in train.meshes)
    blank = unit.with_sections(gear_train=train.model_copy(update={"meshes": meshes}))
    assert audit_gear_train(blank) == ()


@pytest.mark.parametrize(
    ("teeth", "far"),
    [
        ({"mesh-idler": 8, "mesh-reverse": 10}, "too far apart"),
        ({"mesh-reverse": 90}, "too near each other"),
    ],
)
def test_an_idler_must_reach_the_gears_of_both_its_shafts(unit, teeth, far):
    found = audit_gear_train(changed(unit, **teeth))
    assert [finding.what for finding in found] == [
        "no place of idler-shaft suits its gears: input-shaft and output-shaft lie "
        f"{far} for their teeth"
    ]
    assert "tarnbeck-b5.yaml, line" in found[0].where


def test_an_idler_whose_module_is_not_known_reaches_as_far_as_it_must(unit):
    train = changed(unit, **{"mesh-reverse": 90}).gear_train
    meshes = tuple(
        m.model_copy(update={"module_mm": None}) if m.id == "mesh-reverse" else m
        for m in train.meshes
    )
    blank = unit.with_sections(gear_train=train.model_copy(update={"meshes": meshes}))
    assert audit_gear_train(blank) == ()


@pytest.mark.parametrize("helix", [0.0, 24.0])
def test_distances_are_the_other_way_round_than_the_shift(helix):
    angle = math.radians(helix)
    for apart in centre_distances((21, 43), 2.1, angle, (-0.5, 0.9)):
        fitted = centre_fit((21, 43), Q(2.1, "mm"), Q(apart, "mm"), Q(helix, "degree"))
        assert min(abs(fitted.shift_sum - wanted) for wanted in (-0.5, 0.9)) < 1e-6
