"""What is built wrongly, in section: how much of what units list can be drawn, and why not the rest."""

from collections import Counter

import pytest

from twoshaft.errors import UnitFileError
from twoshaft.models import shape
from twoshaft.models.shape.audit import audit_shapes
from twoshaft.models.shape.misbuilt import OFF_MM
from twoshaft.units import load_unit
from twoshaft.units.sections.shapes import WrongLook

DRAWN = {
    "tarnbeck-b5": 29, "tarnbeck-b5-early": 29, "tarnbeck-b5-sender": 28, "tarnbeck-k6": 31,
    "tarnbeck-c4": 14,
}  # fmt: skip
"""How many of the listed misbuilds of each unit with shapes a section shows, at least."""

TURNED_ABOUT_ITSELF = {
    "fit-diff-gears/cross-hole-off", "lock-planet-pin/slot-across", "pin-inner-forks/slots-across",
    "set-reverse-idler/hole-inwards", "slide-in-rails/notches-inwards",
    "fit-rear-plate/cut-out-away", "pin-fifth-fork/slot-across", "fit-lockout/hooks-swapped",
    "fit-selector-shaft/mark-inwards", "fit-outer-lever/spline-off", "spring-reversed",
    "lay-lock-plate/tongue-off",
}  # fmt: skip
MARK_ALONE = {
    "fit-input-front-bearing/stamp-down", "set-forks/numbers-down", "fit-left-seal/other-seal",
    "fit-right-seal/other-seal", "lay-case-gasket/print-down",
}  # fmt: skip
BESIDE_THE_SECTION = {
    "fit-oil-trough/closed-end", "fit-trough-filter/open-end-first", "ball-left-out",
    "finger-peg-worn", "finger-tip-worn", "collar-stuck-up",
}  # fmt: skip
TOO_SMALL = {
    "output-shim-too-thin", "diff-shim-too-thick", "third-wheel-swapped", "fifth-ring-worn",
    "speed-pinion-swapped", "circlip-too-thin", "third-gear-swapped", "high-ring-worn",
}  # fmt: skip
TIGHTNESS_AND_FILM = {
    "case-bolts-oiled", "cover-bolts-too-tight", "film-skinned", "film-gap", "face-oily",
}  # fmt: skip
SHOWN_HERE_ALONE = {
    "tarnbeck-k6": {"fit-oil-trough/closed-end", "fit-lockout/hooks-swapped", "spring-reversed"},
}
"""What the section of one unit shows and that of the others does not."""
STIFFNESS = {"plunger-spring-soft"}
NOT_DRAWN = (
    TURNED_ABOUT_ITSELF
    | MARK_ALONE
    | BESIDE_THE_SECTION
    | TOO_SMALL
    | TIGHTNESS_AND_FILM
    | STIFFNESS
)
OF_EACH_KIND = {"tarnbeck-c4": 3}
"""Drawn looks of the rarest kind, where fewer than six: this one has no rings that are pressed in."""


@pytest.mark.parametrize("name", DRAWN)
def test_what_a_unit_lists_as_wrong_is_drawn_or_stands_here_with_its_reason(name):
    unit = load_unit(name)
    listed = shape.listed_misbuilds(unit)
    ways = sum(len(operation.wrong_ways) for operation in unit.operations)
    assert len(listed) == ways + len(unit.faults.misbuilds)
    drawn = [one for one in listed if one.how]
    assert len(drawn) >= DRAWN[name] and len(drawn) >= 0.5 * len(listed)
    rest = {one.id for one in listed if not one.how}
    assert rest <= NOT_DRAWN, sorted(rest - NOT_DRAWN)
    for one in listed:
        assert bool(one.how) == bool(one.parts) == bool(one.view) == (not one.unseen)
        assert one.how or (one.unseen.endswith(".") and len(one.unseen) > 20)


def test_no_reason_stands_here_for_what_is_drawn():
    for name in DRAWN:
        drawn = {one.id for one in shape.listed_misbuilds(load_unit(name)) if one.how}
        assert drawn & NOT_DRAWN == SHOWN_HERE_ALONE.get(name, set())


@pytest.mark.parametrize("name", ("tarnbeck-c4",))
def test_a_schematic_shows_nothing_built_wrongly(name):
    unit = load_unit(name).with_sections(shapes=None)
    assert not any(one.how for one in shape.listed_misbuilds(unit))
    assert shape.thin_rings(unit) == shape.outer_rings(unit) == ()


@pytest.mark.parametrize("name", DRAWN)
def test_what_was_drawn_wrongly_is_found_in_the_drawing_and_nothing_else(name):
    unit, kinds = load_unit(name), Counter()
    for wrong in (*shape.listed_misbuilds(unit), *shape.thin_rings(unit), *shape.outer_rings(unit)):
        if wrong.how:
            found = shape.what_is_wrong(unit, wrong.view, shape.misbuilt(unit, wrong))
            assert found == dict.fromkeys(wrong.parts, wrong.how), wrong.id
            kinds[wrong.how] += 1
    assert set(kinds) == {"turned", "missing", "off"} and min(kinds.values()) >= OF_EACH_KIND.get(
        name, 6
    )


def test_a_pair_of_bearings_is_turned_each_about_its_own_middle():
    unit = load_unit("tarnbeck-b5")
    wrong = next(one for one in shape.listed_misbuilds(unit) if one.id.startswith("press-diff"))
    assert len(wrong.parts) == 2
    there = {lie.part: lie for lie in shape.misbuilt(unit, wrong)}
    for part in wrong.parts:
        home = shape.lie_of(unit, "shafts", part)
        assert there[part].z_mm == home.z_mm and there[part].heavy != home.heavy


def test_a_part_off_its_seat_stands_back_and_a_ring_towards_its_rollers():
    unit = load_unit("tarnbeck-b5")
    by = {one.id: one for one in shape.listed_misbuilds(unit)}
    for id, part, way in (
        ("diff-ring-not-home", "diff-rear-ring", -1),
        ("case-bolt-loose", "case-bolts", 1),
    ):
        lies = {lie.part: lie for lie in shape.misbuilt(unit, by[id])}
        home = shape.lie_of(unit, "shafts", part)
        assert lies[part].z_mm[0] - home.z_mm[0] == pytest.approx(way * OFF_MM)


@pytest.mark.parametrize("view", ("shafts", "rails", "gate"))
def test_an_open_place_lies_in_no_part_and_close_to_one(view):
    from shapely import Point, union_all

    unit = load_unit("tarnbeck-b5")
    filled = union_all([one.area for one in shape.view_of(unit, view).drawn])
    places = shape.open_places(unit, view)
    assert len(places) > 20
    for at in places[::7]:
        assert 1 < filled.distance(Point(at)) < 5.1


def test_an_entry_that_names_nothing_known_is_found():
    unit = load_unit("tarnbeck-b5")
    for told, word in (
        (WrongLook(id="x", misbuild="no-such", missing=("magnet",)), "no-such"),
        (WrongLook(id="x", operation="fit-magnet", way="no-such", turned=("magnet",)), "no-such"),
        (WrongLook(id="x", misbuild="magnet-left-out", missing=("no-part",)), "no-part"),
    ):
        shapes = unit.shapes.model_copy(update={"wrong": (*unit.shapes.wrong, told)})
        (finding,) = audit_shapes(unit.with_sections(shapes=shapes))
        assert word in finding.what and finding.mend


@pytest.mark.parametrize(
    "entry",
    (
        {"id": "x", "misbuild": "m"},
        {"id": "x", "misbuild": "m", "turned": ("a",), "off": ("a",)},
        {"id": "x", "operation": "o", "turned": ("a",)},
        {"id": "x", "misbuild": "m", "operation": "o", "way": "w", "turned": ("a",)},
    ),
)
def test_an_entry_says_one_thing_of_one_misbuild(entry):
    with pytest.raises(ValueError):
        WrongLook(**entry)


def test_a_view_that_is_not_there_is_refused():
    with pytest.raises(UnitFileError):
        shape.view_of(load_unit("tarnbeck-b5"), "nowhere")


def test_the_shim_of_a_pair_and_the_ring_on_it_are_found_where_they_are_drawn():
    unit = load_unit("tarnbeck-b5")
    found = {one.id: shape.shim_and_ring(unit, one.id) for one in unit.bearings.supports}
    assert list(found.values()).count(None) == 1  # a loose part of the bench is in no section
    for pair in filter(None, found.values()):
        shim, ring = (shape.lie_of(unit, "shafts", part).z_mm for part in pair)
        assert min(abs(shim[0] - ring[1]), abs(shim[1] - ring[0])) < 0.2
    k6 = load_unit("tarnbeck-k6")
    assert shape.shim_and_ring(k6, "output-shaft") == ("output-shim", "output-rear-ring")
