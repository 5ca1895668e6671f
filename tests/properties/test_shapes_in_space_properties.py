"""What lies in what in space, and what can be lifted out of an open half, against plain searches."""

import math

import numpy as np
import pytest
from hypothesis import assume, example, given, settings
from hypothesis import strategies as st
from shapely import Point

from twoshaft.models.shape.convex import Convex, ball, cylinder, meet
from twoshaft.models.shape.lowering import lowered_onto
from twoshaft.models.shape.meeting import Along, met_along, met_in_space
from twoshaft.models.shape.pieces import PRESSED_MM
from twoshaft.units import load_unit
from twoshaft.units.sections.shapes import Shapes

SURE_MM = 0.15  # nearer to touching than this, a search by points says nothing
HALF_SPLIT, WHOLE = load_unit("tarnbeck-c4"), load_unit("tarnbeck-b5")

half = st.integers(-80, 80).map(lambda n: n / 2)
long = st.integers(4, 60).map(lambda n: n / 2)


# round bodies on parallel axes


@st.composite
def rings(draw):
    """x, y, z0, z1, inner, outer."""
    z0, bore = draw(half), draw(st.sampled_from([0.0, 3.0, 7.5, 20.0]))
    return draw(half), draw(half), z0, z0 + draw(long), bore, bore + draw(long)


def common_mm2(one, other):
    """Area that two rings share seen along their axes, their skins taken in; of disc polygons."""
    areas = []
    for x, y, _, _, inner, outer in (one, other):
        if outer - inner <= 2 * PRESSED_MM:
            return 0.0
        disc = Point(x, y).buffer(outer - PRESSED_MM, quad_segs=128)
        hole = Point(x, y).buffer(inner + PRESSED_MM, quad_segs=128) if inner else Point()
        areas.append(disc.difference(hole))
    return areas[0].intersection(areas[1]).area


@settings(max_examples=200, deadline=None)
@given(one=rings(), other=rings())
@example(one=(0, 0, 0, 9, 20.0, 30.0), other=(5, 0, 3, 6, 0.0, 7.0))  # a pin in the bore of a drum
@example(one=(5, 0, 3, 6, 0.0, 7.0), other=(0, 0, 0, 9, 20.0, 30.0))
@example(one=(0, 0, 0, 9, 20.0, 30.0), other=(15, 0, 3, 6, 0.0, 7.0))  # through its wall
@example(one=(0, 0, 0, 9, 0.0, 10.0), other=(17, 0, 3, 6, 0.0, 7.0))  # side by side
def test_round_bodies_on_parallel_axes_meet_where_their_areas_do(one, other):
    bodies = [Along((x, y), ((z0, z1, inner, outer),)) for x, y, z0, z1, inner, outer in (one, other)]  # fmt: skip
    along = min(one[3], other[3]) - max(one[2], other[2])
    shared = common_mm2(one, other)
    assume(shared == 0 or shared > 0.05)
    found = met_along(*bodies)
    assert (found is not None) == (along > 2 * PRESSED_MM and shared > 0)
    assert found is None or max(one[2], other[2]) < found < min(one[3], other[3])
    assert (met_along(*bodies[::-1]) is None) == (found is None)


@settings(max_examples=40, deadline=None)
@given(st.lists(rings(), min_size=2, max_size=4))
def test_in_a_unit_every_pair_that_meets_is_found_and_no_other(bodies):
    parts = ["input-seal", "bore-plug", "magnet", "breather"][: len(bodies)]
    axes, solids = [{"id": "root", "name": "the root"}], []
    for part, (x, y, z0, z1, inner, outer) in zip(parts, bodies, strict=True):
        axes.append({"id": part, "name": part, "beside": "root",
                     "distance mm": max(math.hypot(x, y), 1e-9),
                     "angle deg": math.degrees(math.atan2(y, x))})  # fmt: skip
        bore = {"inside mm": [(z0, inner), (z1, inner)]} if inner else {}
        solids.append({"id": part, "part": part, "kind": "turned", "axis": part,
                       "outside mm": [(z0, outer), (z1, outer)], **bore})  # fmt: skip
    views = [{"id": "all", "name": "Rings", "axes": [axis["id"] for axis in axes]}]
    shapes = Shapes.model_validate({"axes": axes, "views": views, "solids": solids})
    met = met_in_space(WHOLE.with_sections(shapes=shapes))
    found = {frozenset((one.one.solid.part, one.other.solid.part)) for one in met}
    for k, a in enumerate(bodies):
        for n, b in enumerate(bodies[:k]):
            shared = common_mm2(a, b)
            if shared == 0 or shared > 0.05:
                along = min(a[3], b[3]) - max(a[2], b[2])
                wanted = along > 2 * PRESSED_MM and shared > 0
                assert (frozenset((parts[k], parts[n])) in found) == wanted


# convex bodies


class Pin:
    """A cylinder told by its axis: whether a place lies in it, its skin moved by some millimetres."""

    def __init__(self, start, end, radius):
        self.start, self.end, self.radius = np.array(start), np.array(end), radius
        self.long = np.linalg.norm(self.end - self.start)
        self.along = (self.end - self.start) / self.long

    def holds(self, places, more=0.0):
        off = places - self.start
        s = off @ self.along
        aside = np.linalg.norm(off - np.outer(s, self.along), axis=1)
        return (s > -more) & (s < self.long + more) & (aside < self.radius + more)

    def points(self, step=0.7):
        """A net of places in it, its rim with it."""
        one = np.array([0.0, 1.0, 0.0]) if abs(self.along[0]) > 0.5 else np.array([1.0, 0.0, 0.0])
        one = np.cross(self.along, one) / np.linalg.norm(np.cross(self.along, one))
        two = np.cross(self.along, one)
        s = np.linspace(0, self.long, max(2, math.ceil(self.long / step) + 1))
        rs = np.linspace(0, self.radius, max(2, math.ceil(self.radius / step) + 1))
        turns = np.linspace(0, 2 * math.pi, max(8, math.ceil(6.3 * self.radius / step)))
        s, r, turn = (grid.ravel() for grid in np.meshgrid(s, rs, turns))
        return (self.start + np.outer(s, self.along) + np.outer(r * np.cos(turn), one)
                + np.outer(r * np.sin(turn), two))  # fmt: skip


class Block:
    """A box told by its middle, two directions square to each other, and half its sides."""

    def __init__(self, middle, one, two, halves):
        self.middle, self.halves = np.array(middle), np.array(halves)
        self.axes = np.stack([one, two, np.cross(one, two)])

    def holds(self, places, more=0.0):
        return (np.abs((places - self.middle) @ self.axes.T) < self.halves + more).all(axis=1)

    def points(self, step=0.7):
        ends = [np.linspace(-h, h, max(2, math.ceil(2 * h / step) + 1)) for h in self.halves]
        net = np.stack([grid.ravel() for grid in np.meshgrid(*ends)], axis=1)
        return self.middle + net @ self.axes


spot = st.tuples(*[st.integers(-12, 12).map(float)] * 3)


@settings(max_examples=80, deadline=None)
@given(spot, spot, st.integers(2, 8), spot, spot, st.integers(2, 8))
def test_pins_any_way_meet_where_a_net_of_places_in_one_meets_the_other(a, b, r, c, d, s):
    assume(math.dist(a, b) > 2 and math.dist(c, d) > 2)
    pins = Pin(a, b, r), Pin(c, d, s)
    found = meet(Convex(cylinder(a, b, r)), Convex(cylinder(c, d, s)))
    if any(one.holds(other.points(), -SURE_MM).any() for one, other in (pins, pins[::-1])):
        assert found is not None
    elif not any(one.holds(other.points(), 0.7).any() for one, other in (pins, pins[::-1])):
        assert found is None
    if found is not None:
        assert all(one.holds(found, 1e-6).all() for one in pins)


def test_what_lies_in_a_bore_does_not_meet_its_drum():
    way = np.array([0.0, 0.0, 1.0])
    drum = Convex(cylinder((0, 0, 0), (0, 0, 40), 30), (np.zeros(3), way, 20.0))
    for at, meets in ((0, False), (10, False), (17, True), (40, False)):
        pin = Convex(cylinder((at, -8, 20), (at, 8, 20), 3))
        assert (meet(drum, pin) is not None) == meets, at
    assert meet(drum.filled, Convex(ball((0, 0, 20), 3))) is not None


# what is lifted out of an open half


@st.composite
def loose(draw):
    """Something that is not round along the shafts: solid of the file, and how it lies in space."""
    kind = draw(st.sampled_from(["slab", "pin", "long pin", "spring"]))
    z, a = draw(st.integers(0, 40)), draw(st.integers(-30, 30))
    if kind == "slab":
        wide, high, thick = (draw(st.integers(3, 24)) for _ in range(3))
        outline = [(z, a), (z + wide, a), (z + wide, a + high), (z, a + high)]
        return {"kind": "slab", "outline mm": outline, "thick mm": thick}
    end, size = draw(st.integers(4, 30)), draw(st.integers(3, 12))
    to = (z + end, a) if kind == "long pin" else (z, a + end)
    if kind == "spring":
        return {"kind": "spring", "from mm": (z, a), "to mm": to, "coil mm": size}
    return {"kind": "rod", "form": "pin", "from mm": (z, a), "to mm": to, "diameter mm": size}


def in_space(solid, at, across):
    """The same as a body that knows which places lie in it, its skin taken in."""
    z_way, across = np.array([0.0, 0.0, 1.0]), np.array([*across, 0.0])
    less = PRESSED_MM

    def place(z, a):
        return np.array([*at, 0.0]) + a * across + z * z_way

    if solid["kind"] == "slab":
        (z0, a0), _, (z1, a1), _ = solid["outline mm"]
        halves = (z1 - z0) / 2 - less, (a1 - a0) / 2 - less, solid["thick mm"] / 2 - less
        return Block(place((z0 + z1) / 2, (a0 + a1) / 2), z_way, across, halves)
    size = solid.get("coil mm") or solid["diameter mm"]
    start, end = place(*solid["from mm"]), place(*solid["to mm"])
    way = (end - start) / np.linalg.norm(end - start)
    return Pin(start + less * way, end - less * way, size / 2 - less)


def hits(moving, still, lifts, more):
    """Whether a net of places in one hits the other on its way up, skin moved by some millimetres."""
    points, others = moving.points(1.0), still.points(4.0)
    low, high = others.min(axis=0) - 4 - more, others.max(axis=0) + 4 + more
    points = points[((points > low) & (points < high))[:, [0, 2]].all(axis=1)]
    lifts = [lift for lift in lifts
             if len(points) and points[:, 1].min() + lift < high[1]]  # fmt: skip
    return any(still.holds(points + np.array([0.0, lift, 0.0]), more).any() for lift in lifts)


@pytest.mark.slow
@settings(max_examples=120, deadline=None)
@given(
    moving=loose(),
    still=loose(),
    places=st.tuples(*[st.integers(-30, 30).map(lambda n: n / 2)] * 3, st.integers(-60, 60)),
    turns=st.tuples(*[st.sampled_from([0, 30, 64, 90, 180, 300])] * 2),
)
def test_slabs_rods_and_springs_said_to_be_free_can_be_lifted_out_by_small_moves(
    moving, still, places, turns
):
    """Against a net of places carried up by small moves; what meets at rest is left aside."""
    at = {"output-shaft": places[:2], "input-shaft": places[2:]}
    turn = dict(zip(at, turns, strict=True))
    axes, solids, bodies, views = [{"id": "root", "name": "the root"}], [], [], []
    for part, solid in (("output-shaft", moving), ("input-shaft", still)):
        x, y = at[part]
        way = math.cos(math.radians(turn[part])), math.sin(math.radians(turn[part]))
        for id, (px, py) in ((part, (x, y)), (f"{part}-next", (x + 50 * way[0], y + 50 * way[1]))):
            axes.append({"id": id, "name": id, "beside": "root",
                         "distance mm": max(math.hypot(px, py), 1e-9),
                         "angle deg": math.degrees(math.atan2(py, px))})  # fmt: skip
        views.append({"id": part, "name": part, "axes": [part, f"{part}-next"]})
        solids.append({"id": part, "part": part, "axis": part, **solid})
        bodies.append(in_space(solid, (x, y), way))
    case = {"id": "lower-half", "part": "lower-half", "kind": "shell", "axis": "root",
            "z mm": [-90, -80], "rooms": [{"axis": "root", "z mm": [-90, -80], "radius mm": 5}],
            "half": {"axis": "root", "side": "below"}}  # fmt: skip
    views.append({"id": "case", "name": "case", "axes": ["root"]})
    assume(not hits(*bodies, [0.0], 1.0) and not hits(*bodies[::-1], [0.0], 1.0))
    shapes = Shapes.model_validate({"axes": axes, "views": views, "solids": [case, *solids]})
    two = HALF_SPLIT.with_sections(shapes=shapes)
    blocked = bool(list(lowered_onto(two, "output-shaft", ["lower-half", "input-shaft"])))
    lifts = np.arange(0, 200, 0.6)
    if hits(*bodies, lifts, -SURE_MM):
        assert blocked
    elif not hits(*bodies, lifts, 1.1):
        assert not blocked
