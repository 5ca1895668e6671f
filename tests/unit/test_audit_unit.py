import pytest

from twoshaft.models.audit import (
    audit_bearings,
    audit_faces,
    audit_fasteners,
    audit_fits,
    audit_gear_train,
    audit_shift,
    audit_unit,
)
from twoshaft.units import load_unit
from twoshaft.units.sections.faults import Faults


@pytest.mark.slow
@pytest.mark.parametrize("name", ["tarnbeck-b5", "tarnbeck-b5-early"])
def test_the_shipped_units_have_no_findings(name):
    assert [finding.sentence for finding in audit_unit(load_unit(name))] == []


def spoilt(unit, section, changes):
    return unit.with_sections(**{section: getattr(unit, section).model_copy(update=changes)})


@pytest.mark.slow
def test_every_section_is_audited(unit):
    """Spoil one section after the other; what its own audit finds is what is said."""

    def first(entries, **changes):
        return (entries[0].model_copy(update=changes), *entries[1:])

    cases = {
        "fasteners": ({"groups": first(unit.fasteners.groups, clamp_kn=900.0)}, audit_fasteners),
        "bearings": (
            {"supports": first(unit.bearings.supports, case_span_mm=300.0)},
            audit_bearings,
        ),
        "faces": ({"faces": first(unit.faces.faces, lay_operation="paint")}, audit_faces),
        "fits": ({"presses": first(unit.fits.presses, operations=("paint",))}, audit_fits),
        "gear_train": ({"meshes": first(unit.gear_train.meshes, module_mm=4.0)}, audit_gear_train),
        "shift": ({"rails": first(unit.shift.rails, high="sixth")}, audit_shift),
    }
    for section, (changes, audit) in cases.items():
        # Shapes are held against all of them; their own audit is looked at by itself.
        odd = spoilt(unit.with_sections(shapes=None), section, changes)
        assert audit(odd), section
        assert audit_unit(odd) == audit(odd), section


@pytest.mark.slow
def test_faults_are_audited_once_the_rest_is_sound(unit):
    left = {"kind": "left-out", "operation": "polish"}
    data = unit.faults.model_dump()
    data["misbuilds"] = [{"id": "x", "name": "A dull one", "changes": [left], "often_per_1000": 1}]
    # Shapes say how the misbuilds look that are left out here.
    odd = unit.with_sections(faults=Faults.model_validate(data), shapes=None)
    (finding,) = audit_unit(odd)
    assert "polish is no operation" in finding.sentence
