"""The audits of fasteners and fits: the shipped unit is clean, each slip is found."""

import pytest

from twoshaft.models.audit import audit_fasteners, audit_fits


def changed(unit, section, kind, identifier, **change):
    """Give the unit with one entry of a section changed."""
    part = getattr(unit, section)
    entries = tuple(
        entry.model_copy(update=change) if entry.id == identifier else entry
        for entry in getattr(part, kind)
    )
    return unit.with_sections(**{section: part.model_copy(update={kind: entries})})


def test_the_shipped_unit_is_clean(unit):
    assert audit_fasteners(unit) == () and audit_fits(unit) == ()


def test_a_unit_without_the_sections_is_clean(unit):
    bare = unit.with_sections(fasteners=None, fits=None)
    assert audit_fasteners(bare) == () and audit_fits(bare) == ()


@pytest.mark.slow
@pytest.mark.parametrize(
    "identifier, change, words",
    [
        ("case-bolts", {"operations": ("dance",)}, "no operation dance"),
        ("case-bolts", {"parts": ("feather",)}, "no part feather"),
        ("case-bolts", {"strength": "5.6"}, "of yield is used"),
        ("case-bolts", {"torque_nm": (10.0, 11.0, 12.0)}, "off the usable range"),
        ("case-bolts", {"clamp_kn": 16.0}, "are left of"),
        ("case-bolts", {"count": 12}, "bolt holes"),
        ("case-bolts", {"face": "roof"}, "roof"),
        ("case-bolts", {"torque_nm": (38.0, 39.0, 40.0)}, "counts on 17.0 kN"),
        ("gate-cover-bolts", {"spread": 1e-4}, "more uneven"),
        ("rear-plate-bolts", {"head_mm": 8.0}, "bearing face"),
    ],
)
def test_each_slip_among_the_fasteners_is_found(unit, identifier, change, words):
    found = audit_fasteners(changed(unit, "fasteners", "groups", identifier, **change))
    assert any(words in finding.sentence for finding in found), [f.sentence for f in found]
    assert all(finding.mend for finding in found)


def test_a_short_thread_in_aluminium_is_found(unit):
    group = unit.fasteners.group("case-bolts")
    short = group.tapped.model_copy(update={"engagement_mm": 6.0})
    found = audit_fasteners(changed(unit, "fasteners", "groups", "case-bolts", tapped=short))
    assert [f.what for f in found if "hole thread strips" in f.what]


def test_a_wrench_that_is_no_tool_is_found(unit):
    found = audit_fasteners(changed(unit, "fasteners", "wrenches", "small-wrench", tool="spoon"))
    assert [f for f in found if "no tool spoon" in f.what]


@pytest.mark.parametrize(
    "kind, identifier, change, words",
    [
        ("presses", "diff-bearings", {"operations": ("dance",)}, "no operation dance"),
        ("presses", "diff-bearings", {"press_kn": 5.0}, "the press gives 5 kN"),
        ("presses", "ring-gear", {"warmest_c": 70.0}, "the part bears 70"),
        ("presses", "output-front-ring", {"hole": (-400.0, -380.0)}, "yields"),
        ("presses", "fifth-driven-gear", {"carries_nm": 50.0}, "carries 0 N·m of 50"),
        ("presses", "fifth-driven-gear", {"shaft": "q6"}, "position"),
        ("spring_pins", "fork-pin", {"size_mm": 3.0, "lever_ratio": 16.0}, "larger pin"),
        ("spring_pins", "fork-pin", {"size_mm": 3.3}, "3.3 mm"),
        ("staked_nuts", "input-nut", {"fastener": "wing-nut"}, "wing-nut"),
        ("staked_nuts", "input-nut", {"depth_mm": 0.3}, "stake deeper"),
    ],
)
def test_each_slip_among_the_fits_is_found(unit, kind, identifier, change, words):
    found = audit_fits(changed(unit, "fits", kind, identifier, **change))
    assert any(words in finding.sentence for finding in found), [f.sentence for f in found]


def test_findings_point_into_the_file(unit):
    found = audit_fits(changed(unit, "fits", "presses", "diff-bearings", press_kn=5.0))
    assert "tarnbeck-b5.yaml, line " in found[0].where
