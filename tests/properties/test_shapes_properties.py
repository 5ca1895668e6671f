"""What geometry says is blocked cannot be pulled out: against a brute-force search of small moves."""

from hypothesis import given, settings
from hypothesis import strategies as st

from twoshaft.models.shape import in_the_way, overlaps
from twoshaft.models.shape.blocking import PRESSED_MM
from twoshaft.units import load_unit
from twoshaft.units.sections.shapes import Shapes

UNIT = load_unit("tarnbeck-b5")
MOVING, STEP = "input-seal", "fit-input-seal"
PLACED = {"bore-plug": "fit-bore-plug", "output-front-ring": "fit-output-front-ring",
          "diff-front-ring": "fit-diff-front-ring", "input-front-bearing": "fit-input-front-bearing"}  # fmt: skip
SMALL_MM, FAR_MM = 0.25, 120.0

# whole and half millimetres, so that what touches does so exactly
half = st.integers(0, 80).map(lambda n: n / 2)
ring = st.tuples(half, st.integers(2, 24), st.integers(2, 30), st.integers(2, 20)).map(
    lambda given: (given[0], given[0] + given[1], float(given[2]), float(given[2] + given[3]))
)


def unit_of(rings, way):
    """A unit of rings on one axis: front, rear, bore radius, outer radius."""
    solids = [
        {"id": part, "part": part, "kind": "turned", "axis": "one",
         "outside mm": [(z0, outer), (z1, outer)], "inside mm": [(z0, bore), (z1, bore)]}
        for part, (z0, z1, bore, outer) in rings.items()
    ]  # fmt: skip
    return UNIT.with_sections(
        shapes=Shapes.model_validate(
            {
                "axes": [{"id": "one", "name": "the only axis"}],
                "views": [{"id": "all", "name": "Rings on one axis", "axes": ["one"]}],
                "solids": solids,
                "steps": [{"id": STEP, "way": way}],
            }
        )
    )


def collide(one, other, shift=0.0):
    """Whether two rings run into each other by more than a press fit, one of them shifted."""
    along = min(one[1] + shift, other[1]) - max(one[0] + shift, other[0])
    across = min(one[3], other[3]) - max(one[2], other[2])
    return min(along, across) > 2 * PRESSED_MM


def pulled_out(moving, still, way):
    """Try it: pull the ring out by small moves until it is far away."""
    shift = 0.0
    while shift < FAR_MM:
        if any(collide(moving, other, shift if way == "rear" else -shift) for other in still):
            return False
        shift += SMALL_MM
    return True


@settings(max_examples=60, deadline=None)
@given(st.lists(ring, min_size=2, max_size=5), st.sampled_from(["rear", "front"]))
def test_what_is_blocked_cannot_be_pulled_out_and_what_is_free_can(rings, way):
    named = dict(zip([MOVING, *PLACED], rings, strict=False))
    unit = unit_of(named, way)
    still = {part: at for part, at in named.items() if part != MOVING}
    met = in_the_way(unit, STEP, [PLACED[part] for part in still])
    assert (not met) == pulled_out(named[MOVING], still.values(), way)
    # each that is named is one that stops it alone, and no other is
    for part, at in still.items():
        alone = pulled_out(named[MOVING], [at], way)
        assert alone != any(one.other.solid.part == part for one in met)


@settings(max_examples=60, deadline=None)
@given(st.lists(ring, min_size=2, max_size=5))
def test_what_overlaps_is_found_and_nothing_else(rings):
    named = dict(zip([MOVING, *PLACED], rings, strict=False))
    found = {
        frozenset((m.one.solid.part, m.other.solid.part)) for m in overlaps(unit_of(named, "rear"))
    }
    wanted = {
        frozenset((a, b)) for a in named for b in named if a < b and collide(named[a], named[b])
    }
    assert found == wanted
