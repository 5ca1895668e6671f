"""The fasteners and fits sections refuse what does not hold together."""

import math

import pytest
from pydantic import ValidationError

from twoshaft.units.sections.fasteners import FastenerGroup, Fasteners, ThreadState, Wrench
from twoshaft.units.sections.fits import Fits, PressFit, Seal


def built(entry, **change):
    return type(entry).model_validate(entry.model_dump() | change)


@pytest.mark.parametrize(
    "change",
    [
        {"torque_nm": (28, 27, 26)},
        {"torque_nm": (math.nan, 27, 28)},
        {"torque_nm": (-1, 27, 28)},
        {"hole_mm": 15},
        {"hole_mm": math.nan},
        {"thread": "8 mm"},
        {"strength": "8.7"},
        {"positions_mm": ((0, 0),)},
        {"face": None},
        {"count": 2},
        {"spread": 0},
    ],
)
def test_a_group_holds_together(unit, change):
    group = unit.fasteners.group("case-bolts")
    assert built(group) == group
    with pytest.raises(ValidationError):
        built(group, **change)


def test_blind_holes_are_deeper_than_their_engagement(unit):
    group = unit.fasteners.group("case-bolts")
    with pytest.raises(ValidationError, match="blind depth"):
        built(group, tapped=group.tapped.model_dump() | {"blind_depth_mm": 19.0})


def test_two_pieces_do_not_share_a_place(unit):
    group = unit.fasteners.group("guide-tube-bolts")
    with pytest.raises(ValidationError, match="same position"):
        built(group, positions_mm=((0, 0), (0, 0), (1, 1)))


def test_friction_and_scales_rise(unit):
    with pytest.raises(ValidationError, match="rise"):
        ThreadState(id="x", name="any", thread=(0.2, 0.1, 0.3), head=(0.1, 0.1, 0.1))
    with pytest.raises(ValidationError, match="above its start"):
        built(unit.fasteners.wrenches[0], high_nm=1.0)
    assert isinstance(unit.fasteners.wrenches[0], Wrench)


@pytest.mark.parametrize("key", ["state", "wrench", "adapter"])
def test_ids_within_the_section_are_known(unit, key):
    plain = unit.fasteners.model_dump()
    plain["groups"][0][key] = "unheard-of"
    with pytest.raises(ValidationError, match="unheard-of"):
        Fasteners.model_validate(plain)


def test_ids_stand_once(unit):
    plain = unit.fasteners.model_dump()
    plain["groups"] = [*plain["groups"], plain["groups"][0]]
    with pytest.raises(ValidationError, match="twice"):
        Fasteners.model_validate(plain)
    plain = unit.fits.model_dump()
    plain["seals"] = [*plain["seals"], plain["seals"][0]]
    with pytest.raises(ValidationError, match="twice"):
        Fits.model_validate(plain)


@pytest.mark.parametrize(
    "change",
    [
        {"bore_mm": 60},
        {"outer_mm": 50},
        {"shaft": (5.0, -5.0)},
        {"friction": (0.2, 0.1)},
        {"warmest_c": None},
        {"warm": "none"},
        {"size_mm": 130},
        {"length_mm": math.nan},
    ],
)
def test_a_press_fit_holds_together(unit, change):
    entry = unit.fits.entry("presses", "output-front-ring")
    assert isinstance(entry, PressFit) and built(entry) == entry
    with pytest.raises(ValidationError):
        built(entry, **change)


def test_a_seal_holds_together(unit):
    entry = unit.fits.entry("seals", "input-seal")
    assert isinstance(entry, Seal)
    for change in ({"depth_mm": (1.5, 0.5)}, {"depth_mm": (math.nan, 0.5)}, {"shaft_mm": 40}):
        with pytest.raises(ValidationError):
            built(entry, **change)


def test_metals_of_fits_are_known(unit):
    plain = unit.fits.model_dump()
    plain["presses"][0]["hub_metal"] = "cheese"
    with pytest.raises(ValidationError, match="cheese"):
        Fits.model_validate(plain)


def test_entries_are_found_by_id(unit):
    assert isinstance(unit.fasteners.group("case-bolts"), FastenerGroup)
    for find in (lambda: unit.fasteners.group("x"), lambda: unit.fits.entry("seals", "x")):
        with pytest.raises(KeyError):
            find()
