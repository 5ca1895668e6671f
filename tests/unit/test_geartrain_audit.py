from twoshaft.models.geartrain.audit import audit_gear_train


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
