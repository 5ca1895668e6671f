"""Tools at the bench: what form each has, where it bears or reads, and what it would run into."""

from functools import cache

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from shapely import Point, Polygon, box, union_all

from twoshaft.errors import UnitFileError
from twoshaft.models.fit import BOTH, Pressed, Ring, crosses_elements
from twoshaft.models.shape import Role, solids_of, step_shown, view_of
from twoshaft.models.shape.blocking import bodies
from twoshaft.models.tooling import drives, pressed_bearings, tools_standing, wrench_standing
from twoshaft.models.tooling.pressed import tight_of
from twoshaft.models.tooling.standing import forms_of
from twoshaft.models.wholebuild import (
    RINGS,
    Do,
    Job,
    asks_at,
    build_record,
    consequences,
    right_decisions,
)
from twoshaft.units import load_unit, shipped_units
from twoshaft.units.sections.fits import DriveOn
from twoshaft.units.sections.tool_forms import ToolForm, typical_form

NEAR_MM = 0.1
NO_STRAIGHT_WAY = {
    "pin-inner-forks": "the pins lie in the plane of the rails, one above the other",
}
"""Steps of the shipped units at which the section shows no straight way, in the file's order."""


@cache
def unit_by(name):
    return load_unit(name)


@cache
def standing(name):
    """Every step of a unit that shows a tool, in the order of its file: step, tools."""
    unit = unit_by(name)
    ids = [one.id for one in unit.operations]
    found = ((id, tools_standing(unit, [id], ids[:k])) for k, id in enumerate(ids))
    return tuple((id, tools) for id, tools in found if tools)


def solid(unit, view, id):
    return next(one for one in view_of(unit, view).drawn if one.solid.id == id)


def area_of(tool):
    return union_all([Polygon(outline).buffer(0) for outline in tool.outlines])


# ---- forms


def test_a_name_says_a_form_where_none_is_given():
    said = {
        "Dial indicator on a stand": "dial-indicator",
        "Press sleeves for bearings": "sleeve",
        "Bench press with guard": "press",
        "Drift for lock tabs": "punch",
        "Straightedge and feelers": "straightedge",
        "Workshop oven with thermometer": "other",
    }
    assert {name: typical_form(name).value for name in said} == said


def variant(tmp_path, text):
    path = tmp_path / "unit.yaml"
    head = "variant of: tarnbeck-b5\nidentity: {id: my-unit, name: My unit, version: '1'}\n"
    path.write_text(head + text)
    return path


def test_a_given_form_goes_before_the_name(tmp_path):
    path = variant(tmp_path, "tools:\n  change: [{id: hook-key, form: punch}]\n")
    forms = {tool.id: tool.looks for tool in load_unit(path).tools}
    assert forms["hook-key"] is ToolForm.PUNCH
    assert forms["dial-gauge"] is ToolForm.DIAL


def test_an_unknown_form_is_told_with_its_line_and_what_to_choose(tmp_path):
    path = variant(tmp_path, "tools:\n  add:\n    - {id: saw, name: Saw, form: saw}\n")
    with pytest.raises(UnitFileError) as told:
        load_unit(path)
    words = str(told.value)
    assert "unit.yaml, line 5" in words and "'form' is 'saw'" in words and "'spring-scale'" in words


@pytest.mark.parametrize("step", ["[no-solid, case-dowel]", "[case-dowel]"])
def test_what_a_feeler_goes_between_must_be_there(tmp_path, step):
    entry = f"{{id: check-ring-gear-seat, between: {step}}}"
    path = variant(tmp_path, f"shapes:\n  steps:\n    change: [{entry}]\n")
    with pytest.raises(UnitFileError, match="between"):
        load_unit(path)


@pytest.mark.parametrize("name", shipped_units())
def test_every_tool_of_a_shipped_unit_says_its_form(name):
    assert [tool.id for tool in unit_by(name).tools if tool.form is None] == []


# ---- where a driver bears


@pytest.mark.parametrize("name", shipped_units())
def test_a_driver_touches_the_ring_that_grips_and_no_other(name):
    """The ring from its pieces, the tight one from its fit: not by way of the code that is tried."""
    unit, seen = unit_by(name), 0
    stands = dict(standing(name))
    for entry in unit.fits.presses:
        tight = tight_of(Pressed.of(unit, entry.id))
        for operation in entry.operations:
            for tool in stands.get(operation, ()):
                for touch in tool.touches:
                    one = solid(unit, tool.view, touch.solid)
                    assert one.solid.part in entry.parts
                    if one.solid.kind != "bearing":
                        continue
                    ring = ring_at(unit, one, touch)
                    assert {ring} <= tight or entry.drive_on is DriveOn.BOTH, (operation, touch)
                    seen += 1
    assert seen >= 4


def ring_at(unit, one, touch):
    """The ring whose cut face a place lies on."""
    here = Point(touch.z_mm, touch.height_mm)
    cut = [Polygon(p.outline) for p in one.pieces if p.role in (Role.CUT, Role.THIN)]
    (touched,) = [area for area in cut if area.distance(here) < NEAR_MM]
    if one.solid.ring != "both":
        return Ring(one.solid.ring)
    y0, y1 = one.bounds[1], one.bounds[3]
    far = [abs(area.centroid.y - (y0 + y1) / 2) for area in (touched, *cut)]
    return Ring.OUTER if far[0] > max(far) - 1 else Ring.INNER


@pytest.mark.parametrize("answer", RINGS)
def test_a_driver_bears_on_the_rings_that_are_chosen(answer):
    for name in shipped_units():
        unit = unit_by(name)
        for one in (o.id for o in unit.operations if pressed_bearings(unit, [o.id])):
            tools = tools_standing(unit, [one], [], rings=RINGS[answer])
            touched = {ring_at(unit, solid(unit, tool.view, touch.solid), touch)
                       for tool in tools for touch in tool.touches}  # fmt: skip
            assert touched == RINGS[answer], (name, one)


def test_a_seal_is_driven_at_its_outer_edge():
    for name in shipped_units():
        unit, stands = unit_by(name), dict(standing(name))
        for seal in unit.fits.seals:
            for tool in (tool for one in seal.operations for tool in stands[one]):
                for touch in tool.touches:
                    edge = solid(unit, tool.view, touch.solid).bounds
                    assert min(abs(touch.height_mm - y) for y in (edge[1], edge[3])) < 3.5


def test_a_tool_stands_on_the_side_from_which_its_part_comes():
    for name in shipped_units():
        unit = unit_by(name)
        for step, tools in standing(name):
            for tool in tools if drives(unit, [step]) else ():
                touched = solid(unit, tool.view, tool.touches[0].solid)
                way = touched.solid.way or step_shown(unit, step).way
                wanted = {"rear": (1, 0), "front": (-1, 0)}.get(way)
                assert wanted in (None, tool.way), (name, step)


# ---- places


@pytest.mark.parametrize("name", shipped_units())
def test_every_tool_touches_what_it_says_it_touches(name):
    unit = unit_by(name)
    assert len(standing(name)) >= 13
    for step, tools in standing(name):
        for tool in tools:
            for touch in tool.touches:
                here = Point(touch.z_mm, touch.height_mm)
                one = solid(unit, tool.view, touch.solid)
                # a leaf lies in its gap, between two faces
                near = 2.0 if tool.form is ToolForm.FEELER else NEAR_MM
                assert one.area.distance(here) < near, (step, touch)
                assert area_of(tool).distance(here) < 3.1, (step, touch)


def crossed(unit, tool, done, step):
    """Parts in place that a tool lies in by more than a line, found anew from the solids."""
    from twoshaft.models.tooling.around import around_step

    (here,) = [one for one in around_step(unit, [step], done) if one.view == tool.view]
    placed = {body.drawn.solid.id for body in here.placed}
    touched = {touch.solid for touch in tool.touches}
    body_by = {body.drawn.solid.id: body for body in bodies(unit) if body.view == tool.view}
    rows = {axis: k for k, axis in enumerate(here.heights)}
    row = (
        rows[body_by[touched_id].drawn.solid.axis]
        if (touched_id := next((id for id in touched if id in body_by), None))
        else None
    )
    area, found = area_of(tool), set()
    for id in placed - touched:
        body = body_by[id]
        near = row is None or abs(body.row - row) <= 1 or body.drawn.solid.kind == "shell"
        if near and area.buffer(-1).intersection(body.area).area > 4:
            found.add(body.part)
    return found


@pytest.mark.parametrize("name", shipped_units())
def test_a_tool_goes_through_nothing_that_is_placed_or_says_so(name):
    unit = unit_by(name)
    ids = [one.id for one in unit.operations]
    for step, tools in standing(name):
        for tool in tools:
            if tool.form in (ToolForm.PUNCH, ToolForm.HAMMER) and not tool.meets:
                continue  # a pin's own hole: held below
            assert crossed(unit, tool, ids[: ids.index(step)], step) <= set(tool.meets), step
        if any(tool.meets for tool in tools):
            assert step in NO_STRAIGHT_WAY, (step, [tool.meets for tool in tools])


def test_a_punch_goes_through_nothing_but_the_hole_of_its_pin():
    for name in shipped_units():
        unit = unit_by(name)
        ids = [one.id for one in unit.operations]
        for step, tools in standing(name):
            for tool in (tool for tool in tools if tool.form is ToolForm.PUNCH):
                pin = solid(unit, tool.view, tool.touches[0].solid)
                for part in crossed(unit, tool, ids[: ids.index(step)], step) - set(tool.meets):
                    others = solids_of(unit, tool.view, part)
                    assert any(one.area.intersects(pin.area) for one in others), (step, part)


@given(st.data())
@settings(max_examples=60, deadline=None)
@pytest.mark.slow
def test_in_any_state_of_a_build_a_tool_says_what_it_runs_into(data):
    name = data.draw(st.sampled_from(shipped_units()))
    unit = unit_by(name)
    ids = [one.id for one in unit.operations]
    step = data.draw(st.sampled_from([id for id in ids if forms_of(unit, [id])]))
    done = data.draw(st.lists(st.sampled_from(ids), unique=True, max_size=60))
    for tool in tools_standing(unit, [step], done):
        if tool.form is not ToolForm.PUNCH:
            assert crossed(unit, tool, [one for one in done if one != step], step) <= {*tool.meets}


# ---- gauges


def tool_at(unit, step):
    ids = [one.id for one in unit.operations]
    (tool,) = tools_standing(unit, [step], ids[: ids.index(step)])
    return tool


def test_a_dial_reads_along_the_axis_on_an_end_face():
    unit = unit_by("tarnbeck-b5")
    tool = tool_at(unit, "read-diff-float")
    carrier = solid(unit, tool.view, "diff-carrier")
    assert tool.form is ToolForm.DIAL
    assert (tool.touches[0].z_mm, tool.way) == (carrier.bounds[2], (1, 0))


def test_a_dial_reads_across_the_axis_where_the_file_says_so(tmp_path):
    path = variant(
        tmp_path, "shapes:\n  steps:\n    change: [{id: read-diff-float, reads: across}]\n"
    )
    unit = load_unit(path)
    tool = tool_at(unit, "read-diff-float")
    (touch,) = tool.touches
    carrier = solid(unit, tool.view, "diff-carrier")
    assert tool.way[0] == 0 and "across its axis" in tool.on
    assert carrier.bounds[0] < touch.z_mm < carrier.bounds[2]


def test_the_foot_of_a_depth_gauge_rests_on_both_sides_of_the_bore():
    unit = unit_by("tarnbeck-b5")
    tip, *rests = tool_at(unit, "measure-output-ring").touches
    ring = solid(unit, "shafts", "output-rear-ring")
    assert tip.z_mm == ring.bounds[2]
    assert rests[0].z_mm == rests[1].z_mm > tip.z_mm
    assert rests[0].height_mm < ring.bounds[1] and ring.bounds[3] < rests[1].height_mm


def test_a_straightedge_lies_across_both_edges_of_a_face(tmp_path):
    path = variant(
        tmp_path,
        "tools:\n  add: [{id: edge, name: Straightedge and feelers, form: straightedge}]\n"
        "operations:\n  change: [{id: check-ring-gear-seat, tools: [edge, feeler]}]\n",
    )
    unit = load_unit(path)
    tool = tool_at(unit, "check-ring-gear-seat")
    assert tool.form is ToolForm.STRAIGHTEDGE
    one, other = tool.touches
    gear = solid(unit, tool.view, one.solid)
    assert one.z_mm == other.z_mm in (gear.bounds[0], gear.bounds[2])
    assert other.height_mm - one.height_mm > 0.9 * (gear.bounds[3] - gear.bounds[1])
    # the blade ends beyond both, and lies on the face, not in it
    _, y0, _, y1 = area_of(tool).bounds
    assert y0 < one.height_mm and other.height_mm < y1
    assert not area_of(tool).intersects(
        box(gear.bounds[0] + 1, y0, gear.bounds[2] - 1, y1).intersection(gear.area)
    )


def test_a_feeler_lies_between_the_two_solids_that_are_named():
    unit = unit_by("tarnbeck-c4")
    for step, ring in (("gap-low", "low-second-ring"), ("gap-high", "high-fourth-ring")):
        tool = tool_at(unit, step)
        assert tool.touches[0].solid == ring
        assert tool.touches[0].z_mm > solid(unit, tool.view, ring).bounds[2]


def test_a_cord_is_wound_where_the_shaft_is_free():
    unit = unit_by("tarnbeck-b5")
    tool = tool_at(unit, "check-output-drag")
    assert tool.touches[0].solid == "output-shaft" and not tool.meets


def test_a_wrench_stands_over_the_head_of_its_fastener():
    unit = unit_by("tarnbeck-b5")
    tool = wrench_standing(unit, ["tighten-ring-gear-bolts"], [])
    (touch,) = tool.touches
    bolt = solid(unit, tool.view, touch.solid)
    assert min(abs(touch.z_mm - z) for z in (bolt.bounds[0], bolt.bounds[2])) < NEAR_MM


# ---- what a wrong ring brings about


@pytest.mark.parametrize("name", ["tarnbeck-b5", "tarnbeck-c4", "tarnbeck-k6"])
@pytest.mark.parametrize("answer", RINGS)
def test_a_bearing_is_dented_where_the_force_must_go_through_what_rolls(name, answer):
    job = Job.of(unit_by(name))
    asks = [ask for step in job.task.steps for ask in asks_at(job, step) if ask.kind == "driver"]
    assert asks
    for ask in asks:
        (bearing,) = pressed_bearings(job.unit, [ask.about])
        told = consequences(job, [Do(ask.step, {ask.id: answer})], over=False)
        dents = [fault for fault in told.faults if fault.kind == "driver"]
        assert bool(dents) is crosses_elements(RINGS[answer], bearing.tight)
        assert (bearing.part in told.parts_lost) is bool(dents)
        for fault in dents:
            assert bearing.elements in fault.sentence and fault.minutes > 0
            assert fault.parts == (bearing.part,)


def test_a_right_build_dents_nothing_and_its_record_says_where_the_driver_bore():
    job = Job.of(unit_by("tarnbeck-b5"))
    build = right_decisions(job)
    told = consequences(job, build, over=False)
    assert told.drivers and not any(one.dented for one in told.drivers)
    assert build_record(job, build)["drivers"] == [
        ["Press in the front roller bearing of the input shaft", "On the outer ring"]
    ]


def test_both_rings_may_be_driven_and_no_ring_is_asked_of_what_is_warmed_or_comes_apart():
    unit = unit_by("tarnbeck-b5")
    assert not crosses_elements(BOTH, BOTH)
    asked = {one.part for o in unit.operations for one in pressed_bearings(unit, [o.id])}
    assert asked == {"input-front-bearing"}
