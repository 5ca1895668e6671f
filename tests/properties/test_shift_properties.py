"""The search of a mechanism, against one that knows no tables: rectangles, tried one by one.

What is compared is every place that the hand and the bodies can get to, and whether a direct
shift is stopped, on mechanisms made at random: plates that are pushed, plungers that give way to
a firm push alone, fixed stops, bodies at heights and a collar that is lifted.
"""

from collections import deque
from functools import cache
from itertools import product

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from twoshaft.models.shift import mechanism, prove_by_hand, reach
from twoshaft.units.sections.shift import Shift

MOVES = ((1, 0), (-1, 0), (0, 1), (0, -1))
RAILS = (-5, 0, 5)
HAND_N, FIRM_N = 50, 200
EPS = 1e-6


def box(x0, x1, y0, y1):
    return [[(x0, y0), (x1, y0), (x1, y1), (x0, y1)]]


def rail(n, at, low, high):
    return {
        "id": f"rail-{n}",
        "name": "Rail",
        "layer": "jaws",
        "axis": "turn",
        "range_mm": (low, high),
        "drive": "notches",
        "notches_mm": sorted({low, 0, high}),
        "snap_mm": 1.0,
        "pieces": box(at - 2, at + 2, 2, 4) + box(at - 2, at + 2, -4, -2),
    }


@st.composite
def sections(draw):
    """A selector of two or three rails, some with one end, and up to two lockouts."""
    count = draw(st.integers(2, 3))
    ends = [draw(st.sampled_from([(-3, 3), (-3, 0), (0, 3)])) for _ in range(count)]
    lift = draw(st.sampled_from([0, 4]))
    passive = [rail(n, RAILS[n], *ends[n]) for n in range(count)]
    bodies = [
        {
            "id": "finger",
            "name": "Finger",
            "layer": "jaws",
            "follows": "hand",
            "pieces": box(-1, 1, -1, 1),
        }
    ]
    heights = st.sampled_from([None, (0, 3), (3, 6), (5, 8)] if lift else [None])
    for n in range(draw(st.integers(1, 2))):
        peg = {
            "id": f"peg-{n}",
            "name": "Peg",
            "layer": f"lock-{n}",
            "follows": draw(st.sampled_from(["hand", "hand", "travel", "turn"])),
            "pieces": box(-1, 1, -1, 1),
            "height_mm": (0, 3),
            "lifts": bool(lift) and (n == 0 or draw(st.booleans())),
        }
        bodies.append(peg)
        x, y = draw(st.integers(-7, 6)), draw(st.integers(-5, 4))
        pieces = box(x, x + draw(st.integers(1, 5)), y, y + draw(st.integers(1, 5)))
        kind = draw(st.sampled_from(["plate", "plate", "plunger", "fixed"]))
        plate = {
            "id": f"plate-{n}",
            "name": "Plate",
            "layer": f"lock-{n}",
            "pieces": pieces,
            "height_mm": draw(heights),
        }
        if kind == "fixed":
            bodies.append(plate | {"follows": "fixed"})
            continue
        low = draw(st.integers(-3, 0))
        plate |= {
            "axis": draw(st.sampled_from(["travel", "turn"])),
            "range_mm": (low, low + draw(st.integers(1, 4))),
            "drive": draw(st.sampled_from(["low", "high", "stays"])),
        }
        if kind == "plunger":
            plate["gives_at_n"] = draw(st.sampled_from([100, 400]))
        passive.append(plate)
    gears = [(f"g{n}a" if low else None, f"g{n}b" if high else None) for n, (low, high) in
             enumerate(ends)]  # fmt: skip
    names = [gear for pair in gears for gear in pair if gear]
    earlier, later = draw(st.sampled_from([(a, b) for a in names for b in names if a != b]))
    pins = draw(st.booleans())
    return Shift.model_validate(
        {
            "travel_mm": (-7, 7),
            "turn_mm": (-5, 5),
            "finger_radius_mm": 30,
            "lift_mm": lift,
            "hand_n": HAND_N,
            "firm_n": FIRM_N,
            "bodies": bodies,
            "passive": passive,
            "gates": [
                {"id": f"gate-{n}", "name": "Gate", "at_mm": RAILS[n], "half_width_mm": 1}
                for n in range(count)
            ],
            "rails": [
                {"body": f"rail-{n}", "gate": f"gate-{n}", "engaged_mm": 3}
                | {end: gear for end, gear in zip(("low", "high"), gears[n], strict=True) if gear}
                for n in range(count)
            ],
            "interlocks": [
                {
                    "id": "pin",
                    "name": "Pin",
                    "rails": ("rail-0", "rail-1"),
                    "notch_mm": 1.5,
                    "ramp_deg": 45,
                    "gap_mm": 6,
                    "length_mm": 7.4,
                }
            ]
            if pins
            else [],
            "must_block": [
                {
                    "earlier": earlier,
                    "later": later,
                    "lifted": bool(lift) and draw(st.booleans()),
                    "firm": draw(st.booleans()),
                }
            ],
        }
    )


class ByHand:
    """The mechanism without tables: a state is travel, turn, places in mm, and up or down."""

    def __init__(self, shift):
        self.shift = shift
        self.free = cache(self.free)

    def _height(self, body, levels):
        if body.height_mm is None:
            return (-99, 99)
        lifts = self.shift.lift_mm if getattr(body, "lifts", False) else 0
        return body.height_mm[0] + lifts * levels[0], body.height_mm[1] + lifts * levels[1]

    def _hit(self, one, at, other, there, levels):
        (a, b), (c, d) = self._height(one, levels), self._height(other, levels)
        if one.layer != other.layer or not (a < d and c < b):
            return False
        for p, q in product(one.pieces, other.pieces):
            apart = False
            for axis in (0, 1):
                mine = [corner[axis] + at[axis] for corner in p]
                theirs = [corner[axis] + there[axis] for corner in q]
                apart |= max(mine) <= min(theirs) + EPS or max(theirs) <= min(mine) + EPS
            if not apart:
                return True
        return False

    def _carried(self, body, x, y):
        return {"hand": (x, y), "travel": (x, 0), "turn": (0, y), "fixed": (0, 0)}[body.follows]

    def free(self, x, y, body, place, levels):
        """Whether a body can be at a place, and the hand where it is."""
        shift = self.shift
        if not (shift.travel_mm[0] <= x <= shift.travel_mm[1]):
            return False
        if not (shift.turn_mm[0] <= y <= shift.turn_mm[1]):
            return False
        if not body.range_mm[0] <= place <= body.range_mm[1]:
            return False
        at = (place, 0) if body.axis == "travel" else (0, place)
        bodies = shift.bodies
        if any(self._hit(body, at, b, self._carried(b, x, y), levels) for b in bodies):
            return False
        return not any(
            self._hit(b, self._carried(b, x, y), wall, (0, 0), levels)
            for b in bodies
            for wall in bodies
            if wall.follows == "fixed" and b.follows != "fixed"
        )

    def settled(self, x, y, body, place, levels):
        """Where the spring takes it."""
        if body.drive == "stays":
            return place
        if body.drive in ("low", "high"):
            step = -1 if body.drive == "low" else 1
            while self.free(x, y, body, place + step, levels):
                place += step
            return place
        home = min(body.notches_mm, key=lambda notch: abs(notch - place))
        if abs(home - place) > body.snap_mm:
            return place
        while place != home:
            step = 1 if home > place else -1
            if not self.free(x, y, body, place + step, levels):
                return place
            place += step
        return place

    def fits(self, places):
        """Whether the interlock pin has room."""
        by_id = dict(zip([body.id for body in self.shift.passive], places, strict=True))
        for pin in self.shift.interlocks:
            room = sum(max(0, pin.notch_mm - abs(by_id[rail])) for rail in pin.rails)
            if room + pin.gap_mm < pin.length_mm - EPS:
                return False
        return True

    def next_states(self, state, firm, lifting):
        """One step of the hand."""
        x, y, *places, up = state
        levels = (up, up)
        for dx, dy in MOVES:
            after = []
            for body, place in zip(self.shift.passive, places, strict=True):
                pushes = [0]
                if body.gives_at_n <= (FIRM_N if firm else HAND_N):
                    pushes += [1, -1, 2, -2]
                there = (
                    place + push
                    for push in pushes
                    if self.free(x + dx, y + dy, body, place + push, levels)
                )
                to = next(there, None)
                if to is None:
                    break
                after.append(self.settled(x + dx, y + dy, body, to, levels))
            else:
                if self.fits(after):
                    yield (x + dx, y + dy, *after, up)
        if lifting and self.shift.lift_mm:
            other = 1 - up
            if all(
                self.free(x, y, body, place, way)
                for body, place in zip(self.shift.passive, places, strict=True)
                for way in ((other, other), (0, 1))
            ):
                yield (x, y, *places, other)

    def reach(self, starts, firm=True, lifting=True, within=(-99, 99)):
        """Every state that the hand can get to."""
        seen, queue = set(starts), deque(starts)
        while queue:
            for after in self.next_states(queue.popleft(), firm, lifting):
                if after not in seen and within[0] <= after[0] <= within[1]:
                    seen.add(after)
                    queue.append(after)
        return seen

    def gears(self, state):
        """Gears that are in."""
        places = dict(zip([body.id for body in self.shift.passive], state[2:-1], strict=True))
        found = set()
        for one in self.shift.rails:
            if places[one.body] >= one.engaged_mm and one.high:
                found.add(one.high)
            if places[one.body] <= -one.engaged_mm and one.low:
                found.add(one.low)
        return found


def plain(machine, state):
    """A state of the grid in millimetres."""
    places = [
        float(mm[k]) for mm, k in zip(machine.places_mm, state[2:], strict=False)
    ]  # the last index may be the lift
    up = state[-1] if machine.lifts else 0
    return (float(machine.travel_mm[state[0]]), float(machine.turn_mm[state[1]]), *places, up)


def agree(shift):
    machine, hand = mechanism(shift, 1.0), ByHand(shift)
    starts = [plain(machine, state) for state in machine.starts()]
    every = hand.reach(starts)
    assert {plain(machine, state) for state in reach(machine).came_from} == every
    (block,), (lock,) = shift.must_block, prove_by_hand(machine).locks
    at = {gear: one for one in shift.rails for gear in one.gears}
    middle = {gate.id: gate.at_mm for gate in shift.gates}
    first, last = (middle[at[gear].gate] for gear in (block.earlier, block.later))
    begin = [
        state
        for state in every
        if hand.gears(state) == {block.earlier}
        and abs(state[0] - first) <= 1
        and (block.lifted or not state[-1])
    ]
    within = min(first, last) - 1, max(first, last) + 1
    reached = hand.reach(begin, block.firm, block.lifted, within)
    passes = any(block.later in hand.gears(state) for state in reached)
    told = "not tried" if not begin else "not stopped" if passes else "holds"
    said = "not stopped" if lock.verdict in ("fails", "unreliable") else lock.verdict
    assert said == told
    return told


RELAXED = settings(deadline=None, suppress_health_check=list(HealthCheck), derandomize=True)


@pytest.mark.slow
@settings(RELAXED, max_examples=12)
@given(sections())
def test_the_search_finds_what_trying_finds(shift):
    agree(shift)


@pytest.mark.long
@settings(RELAXED, max_examples=1000)
@given(sections())
def test_the_search_finds_what_trying_finds_on_many(shift):
    agree(shift)
