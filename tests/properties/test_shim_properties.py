"""Shims: signs against the loop itself, choices against every combination."""

from itertools import combinations_with_replacement

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from twoshaft.models.bearing import Pair, Rollers
from twoshaft.models.shim import (
    Measured,
    Source,
    Stack,
    choose,
    propagate,
    reach,
    shim_from_float,
    shim_sign,
    term_sign,
)
from twoshaft.units.quantities import Q
from twoshaft.units.sections.bearings import Arrangement, ShimPlace, TermKind

ARRANGEMENTS = st.sampled_from(list(Arrangement))
PLACES = st.sampled_from(list(ShimPlace))


def loop(arrangement, lengths, place, shim):
    """Interference by walking along the shaft: positions of rings in space, no sign convention.

    Both bearings stand ``stand`` when they just touch; the interference is what the stands are
    longer than the room between the rings' backs.
    """
    case, shaft, left, right, joint = lengths
    outer_together = arrangement is Arrangement.OUTER_TOGETHER
    # Seats of the outer rings at -case/2 and case/2; of the inner rings at -shaft/2 and shaft/2.
    outer, inner = [-case / 2, case / 2], [-shaft / 2, shaft / 2]
    # A ring's back lies on its seat; the way from its back into the bearing, right-hand side.
    into = -1 if outer_together else +1
    if place is ShimPlace.BEHIND_OUTER:
        outer[1] += into * shim
    if place is ShimPlace.BEHIND_INNER:
        inner[1] -= into * shim
    if place is ShimPlace.UNDER_COVER:
        # The cover carries a ring's seat and moves away from it: against the way in.
        outer[1] -= into * shim
    if place is ShimPlace.BETWEEN_OUTER:
        outer[1] += shim
    if place is ShimPlace.BETWEEN_INNER:
        inner[1] += shim
    outer[1] -= into * joint
    if outer_together:
        # outer back | left bearing | inner back ... inner back | right bearing | outer back
        room = (inner[0] - outer[0]) + (outer[1] - inner[1])
    else:
        # inner back | left bearing | outer back ... outer back | right bearing | inner back
        room = (outer[0] - inner[0]) + (inner[1] - outer[1])
    return left + right - room


@settings(deadline=None)
@given(
    ARRANGEMENTS,
    PLACES,
    st.floats(60, 120),
    st.floats(150, 200),
    st.floats(12, 25),
    st.floats(12, 25),
    st.floats(0.01, 0.5),
    st.floats(0.1, 3),
)
def test_signs_follow_the_loop(arrangement, place, short, long, left, right, joint, shim):
    case, shaft = (long, short) if arrangement is Arrangement.OUTER_TOGETHER else (short, long)
    lengths = (case, shaft, left, right, joint)
    kinds = ("case", "shaft", "bearing", "bearing", "joint")
    stack = Stack.of(
        arrangement, place, [(k, Q(v, "mm")) for k, v in zip(kinds, lengths, strict=True)]
    )
    seen = stack.interference(Q(shim, "mm")).m_as("mm")
    assert seen == pytest.approx(loop(arrangement, lengths, place, shim), abs=1e-9)
    assert stack.shim_for(Q(0.05, "mm")) is not None
    # And back again.
    wanted = Q(seen if -5 < seen < 5 else 0.1, "mm")
    back = stack.shim_for(wanted).m_as("mm")
    assert stack.bare_mm + stack.shim_sign * back == pytest.approx(wanted.m_as("mm"), abs=1e-9)


@settings(deadline=None)
@given(ARRANGEMENTS, PLACES, st.floats(0.5, 2.0), st.floats(0.001, 0.05))
def test_preload_rises_or_falls_with_the_shim(arrangement, place, shim, more):
    row = Rollers.of(angle=Q(15, "deg"), count=17, length=Q(12, "mm"))
    pair = Pair.of(row, row, Q(80, "N/um"))
    sign = shim_sign(arrangement, place)
    # A stack that is in light preload at this shim.
    stack = Stack(terms=(), shim_sign=sign)
    offset = 0.05 - sign * shim
    settings = [
        Q(offset + stack.interference(Q(t, "mm")).m_as("mm"), "mm") for t in (shim, shim + more)
    ]
    thin, thick = (pair.preload(setting).m_as("N") for setting in settings)
    assert (thick > thin) if sign > 0 else (thick < thin)


@settings(deadline=None)
@given(ARRANGEMENTS)
def test_every_place_and_kind_has_a_sign(arrangement):
    assert {shim_sign(arrangement, place) for place in ShimPlace} == {-1, 1}
    assert {term_sign(arrangement, kind) for kind in TermKind} == {-1, 1}
    between = shim_sign(arrangement, ShimPlace.BETWEEN_OUTER)
    assert between == -shim_sign(arrangement, ShimPlace.BETWEEN_INNER)


@settings(deadline=None)
@given(ARRANGEMENTS, PLACES, st.floats(0.5, 2), st.floats(0.01, 1), st.floats(-0.2, 0.2))
def test_trial_float_gives_the_same_shim(arrangement, place, trial, end_float, wanted):
    sign = shim_sign(arrangement, place)
    bare = -end_float - sign * trial  # what the loop must be, so that the trial reads this float
    by_stack = sign * (wanted - bare)
    by_float = shim_from_float(
        arrangement, place, Q(trial, "mm"), Q(end_float, "mm"), Q(wanted, "mm")
    )
    assert by_float.m_as("mm") == pytest.approx(by_stack, abs=1e-9)


SHELF = st.lists(st.integers(20, 400), min_size=1, max_size=12, unique=True)


def by_hand(shelf, low, high, guard, at_most):
    """Best choice among all combinations, in whole units of 0.01 mm; half units for the aim."""
    best = None
    for count in range(1, at_most + 1):
        for taken in combinations_with_replacement(sorted(shelf), count):
            total = sum(taken)
            off = abs(2 * total - low - high)
            if low + guard <= total <= high - guard:
                rank = (0, count, off, total)
            elif low <= total <= high:
                rank = (1, count, off, total)
            else:
                rank = (2, off, count, total)
            if best is None or rank < best:
                best = rank
                chosen = total, ("safe", "meets", "misses")[rank[0]], count
    return chosen


@settings(deadline=None)
@given(SHELF, st.integers(10, 800), st.integers(0, 30), st.integers(0, 12), st.sampled_from([1, 2]))
def test_choice_is_the_best_of_all(shelf, low, width, guard, at_most):
    high = low + width
    choice = choose(
        Q([s / 100 for s in shelf], "mm"),
        (Q(low / 100, "mm"), Q(high / 100, "mm")),
        Q(guard / 100, "mm"),
        at_most,
    )
    total, verdict, count = by_hand(shelf, low, high, guard, at_most)
    assert choice.verdict == verdict
    assert len(choice.shims_mm) == count
    assert choice.total.m_as("mm") == pytest.approx(total / 100, abs=1e-6)
    assert choice.error_mm == pytest.approx((total - (low + high) / 2) / 100, abs=1e-6)


@settings(deadline=None)
@given(SHELF, st.integers(10, 600), st.integers(0, 60), st.integers(1, 20), st.sampled_from([1, 2]))
def test_reach_agrees_with_choosing_everywhere(shelf, low, width, half, at_most):
    sizes = Q([s / 100 for s in shelf], "mm")
    found = reach(
        sizes,
        (Q(low / 100, "mm"), Q((low + width) / 100, "mm")),
        Q(half / 100, "mm"),
        at_most=at_most,
    )
    for wanted in range(low, low + width + 1):
        window = (Q((wanted - half) / 100, "mm"), Q((wanted + half) / 100, "mm"))
        met = choose(sizes, window, at_most=at_most).verdict != "misses"
        in_gap = any(a + 1e-6 < wanted / 100 < b - 1e-6 for a, b in found.gaps_mm)
        at_end = any(
            min(abs(wanted / 100 - a), abs(wanted / 100 - b)) < 1e-5 for a, b in found.gaps_mm
        )
        assert met != in_gap or at_end
    if width:
        lost = sum(b - a for a, b in found.gaps_mm)
        assert found.share == pytest.approx(1 - lost / (width / 100), abs=1e-6)


@settings(deadline=None)
@given(
    st.lists(st.floats(0.001, 0.1), min_size=2, max_size=5),
    st.lists(st.sampled_from([-1, 1]), min_size=5, max_size=5),
)
def test_shared_errors_add_with_their_signs(us, signs):
    # One instrument for all lengths: its error counts by the sum of the signs, not by squares.
    signs = signs[: len(us)]
    own = [Measured(f"l{i}", 10.0, (Source(f"own {i}", u),)) for i, u in enumerate(us)]
    shared = [Measured(f"l{i}", 10.0, (Source("gauge", us[0]),)) for i in range(len(us))]

    def total(*lengths):
        return sum(s * x for s, x in zip(signs, lengths, strict=True))

    assert propagate(total, own).u == pytest.approx(sum(u**2 for u in us) ** 0.5)
    assert propagate(total, shared).u == pytest.approx(abs(sum(signs)) * us[0], abs=1e-12)
