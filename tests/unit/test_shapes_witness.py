"""Rules of the order held against geometry."""

import pytest

from twoshaft.models.audit import audit_shapes
from twoshaft.models.shape import unnamed_blocks, witnessed
from twoshaft.readings import whole_units
from twoshaft.units import load_unit
from twoshaft.units.sections.order import Rule

LEAST_SHARE = 0.6  # of the shipped rules of kind cannot and buries
UNITS = (*whole_units(), "tarnbeck-k6", "tarnbeck-c4")


@pytest.fixture(scope="module", params=UNITS)
def unit(request):
    return load_unit(request.param)


def rule_of(unit, earlier, later):
    return next(one for one in unit.rules if one.earlier == earlier and one.later == later)


@pytest.mark.slow
def test_most_rules_are_borne_out(unit):
    found = witnessed(unit)
    assert sum(one is not None for one in found.values()) >= LEAST_SHARE * len(found)


@pytest.mark.slow
@pytest.mark.parametrize(
    ("earlier", "later", "kind", "by"),
    [
        ("fit-input-seal", "fit-input-front-bearing", "way blocked", "input-front-bearing"),
        ("fit-bore-plug", "fit-output-front-ring", "way blocked", "output-front-ring"),
        ("fit-speed-gear", "press-diff-bearings", "way blocked", "diff-bearings"),
        ("fit-diff-shim", "lower-case", "way blocked", None),
        ("stake-nuts", "fit-end-cover", "covered", "end-cover"),
        ("pin-inner-forks", "lower-case", "covered", "main-case"),
        ("fit-input-front-bearing", "lower-input-shaft", "no seat", "input-front-bearing"),
        ("lower-case", "start-case-bolts", "no seat", "main-case"),
        ("open-trial", "fit-diff-shim", "way blocked", None),
        ("fit-lockout", "fit-selector-shaft", "way blocked", "selector-shaft"),
    ],
)
def test_what_bears_a_rule_out(earlier, later, kind, by):
    unit = load_unit("tarnbeck-b5")
    found = witnessed(unit)[rule_of(unit, earlier, later).id]
    assert found is not None and found.kind == kind
    assert by is None or found.by == by


@pytest.mark.slow
@pytest.mark.parametrize(
    ("earlier", "later", "kind", "by"),
    [
        ("fit-bore-plug", "fit-output-front-ring", "way blocked", "output-front-ring"),
        ("fit-output-front-ring", "set-differential", "way blocked", "ring-gear"),
        ("pin-fifth-fork", "fit-end-cover", "covered", "end-cover"),
        ("lay-interlock-pins", "slide-in-rails", "covered", "shift-rails"),
        ("lower-case", "seat-output-ring", "no seat", "main-case"),
        ("fit-rear-plate", "fit-fifth-driven", "way blocked", "fifth-driven-gear"),
    ],
)
def test_what_bears_a_rule_of_the_six_speed_out(earlier, later, kind, by):
    unit = load_unit("tarnbeck-k6")
    found = witnessed(unit)[rule_of(unit, earlier, later).id]
    assert found is not None and (found.kind, found.by) == (kind, by)


@pytest.mark.slow
@pytest.mark.parametrize(
    ("earlier", "later"),
    [
        ("warm-housing", "fit-output-front-ring"),  # heat
        ("warm-ring-gear", "seat-ring-gear"),
        ("turn-to-running-position", "fill-oil"),  # a level
        ("stone-housing-face", "drive-in-dowels"),  # a stroke of the stone
    ],
)
def test_heat_levels_and_strokes_have_no_witness_in_a_section(earlier, later):
    unit = load_unit("tarnbeck-b5")
    assert witnessed(unit)[rule_of(unit, earlier, later).id] is None


def test_what_geometry_blocks_is_named_by_a_rule(unit):
    assert not unnamed_blocks(unit)


@pytest.mark.slow
@pytest.mark.parametrize(
    ("earlier", "later"),
    [
        ("fit-input-seal", "fit-input-front-bearing"),
        ("fit-speed-gear", "press-diff-bearings"),
        ("fit-rear-plate", "fit-fifth-driven"),
    ],
)
def test_a_rule_taken_away_is_missed(earlier, later):
    unit = load_unit("tarnbeck-b5")
    gone = rule_of(unit, earlier, later)
    less = unit.with_sections(rules=tuple(one for one in unit.rules if one.id != gone.id))
    found = set(unnamed_blocks(less))
    assert any(step == earlier for step, _ in found)


def test_a_rule_that_geometry_contradicts_is_found():
    unit = load_unit("tarnbeck-b5")
    right = rule_of(unit, "fit-input-seal", "fit-input-front-bearing")
    wrong = Rule.model_validate(
        {"id": "wrong", "kind": "cannot", "earlier": right.later, "later": right.earlier,
         "reason": "The seal is driven in after the bearing."}
    )  # fmt: skip
    kept = tuple(one for one in unit.rules if one.id != right.id)
    (finding,) = audit_shapes(unit.with_sections(rules=(*kept, wrong)))
    assert "'input-seal' cannot get where it belongs" in finding.what
    assert "'input-front-bearing' is in its way" in finding.what
