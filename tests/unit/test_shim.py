"""Shims: the stack, its budget, the choice and its words, refusals."""

import math

import pytest

from twoshaft.errors import OutOfRangeError
from twoshaft.models.shim import (
    Measured,
    Source,
    Stack,
    choose,
    choose_for,
    propagate,
    reach,
    reach_of,
    rectangular,
    repeated,
    resolution,
    shim_from_float,
    shim_range,
    stack_budget,
    target_interference,
)
from twoshaft.units.loader import load_unit
from twoshaft.units.quantities import Q
from twoshaft.units.sections.bearings import ShimSet, Target

MM = "mm"


@pytest.fixture(scope="module")
def bearings():
    return load_unit("tarnbeck-b5").bearings


def test_shipped_supports(bearings):
    assert {s.arrangement for s in bearings.supports} == {
        "outer-rings-together",
        "inner-rings-together",
    }
    for support in bearings.supports:
        low, high = target_interference(support)
        stack = Stack.from_support(support)
        needed = stack.shim_for((low + high) / 2)
        assert stack.interference(needed).m_as(MM) == pytest.approx(((low + high) / 2).m_as(MM))
        assert needed.m_as(MM) > 0
        shelf = bearings.shim_set_by_id(support.shim_set)
        thin, thick = stack.window(low, high)
        budget = stack_budget(support)
        choice = choose(
            Q(list(shelf.thicknesses_mm), MM),
            (Q(thin, MM), Q(thick, MM)),
            Q(budget.expanded(), MM),
            shelf.at_most,
        )
        assert choice.verdict == "safe"
        assert choose_for(support, bearings) == choice
        assert reach_of(support, bearings).ok
        assert reach_of(support, bearings, guarded=True).ok
        setting = stack.interference(choice.total).m_as(MM)
        assert low.m_as(MM) < setting < high.m_as(MM)


def test_measured_lengths_replace_nominal_ones(bearings):
    support = bearings.support_by_id("output-shaft")
    stack = Stack.from_support(support, {"ring-depth": Q(4.70, MM)})
    assert stack.shim_for(Q(0, MM)).m_as(MM) == pytest.approx(0.70)
    with pytest.raises(OutOfRangeError, match="length of the stack is depth, outside ring-depth"):
        Stack.from_support(support, {"depth": Q(4.7, MM)})


def test_worst_limits(bearings):
    support = bearings.support_by_id("output-shaft")
    (thin, thick), half = shim_range(support)
    spread = sum(term.tolerance_mm for term in support.stack)
    assert thick - thin == pytest.approx(2 * spread)
    assert (thick + thin) / 2 == pytest.approx(0.62 + 0.08)
    assert half == pytest.approx(0.03)


def test_end_play_is_interference_below_zero(bearings):
    hub = bearings.support_by_id("practice-hub")
    low, high = target_interference(hub)
    assert (low.m_as(MM), high.m_as(MM)) == (-0.06, -0.015)
    # Between the inner rings, pressed together: a thicker spacer loosens.
    stack = Stack.from_support(hub)
    assert stack.interference(Q(4.1, MM)) < stack.interference(Q(4.0, MM))


def test_budget_of_a_support(bearings):
    differential = bearings.support_by_id("differential")
    budget = stack_budget(differential)
    assert budget.value == pytest.approx(1.165)
    # One height gauge for both stands: its calibration counts twice, not by the root of two.
    term = differential.stack[2]
    wanted = 2 * term.calibration_mm / math.sqrt(3)
    assert budget.shares["calibration of the height gauge"] == pytest.approx(wanted)
    assert "1.165 mm with an expanded uncertainty of 0.018 mm (95 %" in budget.sentence
    assert budget.expanded() == pytest.approx(1.96 * budget.u, rel=1e-3)


@pytest.mark.parametrize(
    ("source", "u"),
    [
        (rectangular("a", 3), math.sqrt(3)),
        (resolution("a", 0.01), 0.01 / math.sqrt(12)),
    ],
)
def test_sources(source, u):
    assert source.u == pytest.approx(u)


def test_a_result_without_doubt():
    budget = propagate(lambda x: 3.0, [Measured("x", 1.0)])
    assert (budget.value, budget.u, budget.shares) == (3.0, 0.0, {})
    assert math.isinf(budget.dof)


def test_trial_float():
    shim = shim_from_float(
        "outer-rings-together", "behind-outer-ring", Q(0.5, MM), Q(0.42, MM), Q(0.08, MM)
    )
    assert shim.m_as(MM) == pytest.approx(1.0)
    spacer = shim_from_float(
        "inner-rings-together", "between-inner-rings", Q(4.3, MM), Q(0.30, MM), Q(-0.04, MM)
    )
    assert spacer.m_as(MM) == pytest.approx(4.04)


def test_one_good_shim_beats_two(bearings):
    shelf = Q([0.2, 0.3, 0.5], MM)
    choice = choose(shelf, (Q(0.45, MM), Q(0.57, MM)), at_most=2)
    assert choice.shims_mm == (0.5,)
    pair = choose(shelf, (Q(0.66, MM), Q(0.74, MM)), at_most=2)
    assert pair.shims_mm == (0.2, 0.5)
    assert "0.200 mm and 0.500 mm are" in pair.reason


def test_the_words_of_a_choice():
    shelf, window = Q([1.0, 1.1], MM), (Q(1.01, MM), Q(1.11, MM))
    assert (
        "inside the limits; the uncertainty is 0.005 mm"
        in choose(shelf, window, Q(0.005, MM)).reason
    )
    unsure = choose(shelf, window, Q(0.02, MM))
    assert unsure.verdict == "meets"
    assert "measure again" in unsure.reason
    missed = choose(shelf, (Q(2.0, MM), Q(2.1, MM)))
    assert missed.verdict == "misses"
    assert missed.shims_mm == (1.1,)
    assert "0.900 mm outside the limits" in missed.reason


def test_reach_names_its_widest_gap():
    found = reach(Q([1.0, 1.2], MM), (Q(1.0, MM), Q(1.25, MM)), Q(0.04, MM))
    assert not found.ok
    assert found.gaps_mm[0] == pytest.approx((1.04, 1.16))
    assert found.gaps_mm[1] == pytest.approx((1.24, 1.25))
    assert "from 1.040 mm to 1.160 mm" in found.sentence
    assert reach(Q([1.0], MM), (Q(1, MM), Q(1, MM)), Q(0.01, MM)).ok
    assert not reach(Q([1.0], MM), (Q(2, MM), Q(2, MM)), Q(0.01, MM)).ok
    assert not reach(Q([1.0], MM), (Q(1, MM), Q(1, MM)), Q(0.01, MM), Q(0.02, MM)).ok


@pytest.mark.parametrize(
    ("call", "says"),
    [
        (lambda: choose(Q([], MM), (Q(0, MM), Q(1, MM))), "shelf"),
        (lambda: choose(Q([1.0], MM), (Q(1, MM), Q(0, MM))), "rise from first to last"),
        (lambda: choose(Q([1.0], MM), (Q(0, MM), Q(1, MM)), Q(-1, MM)), "guard band is -1 mm"),
        (lambda: choose(Q([1.0], MM), (Q(0, MM), Q(1, MM)), at_most=3), "number of shims is 3"),
        (lambda: choose(Q([1.0, -1.0], MM), (Q(0, MM), Q(1, MM))), "shim thickness"),
        (lambda: Stack.of("outer-rings-together", "under-cover", [("case", Q(-1, MM))]), "case"),
        (
            lambda: Stack.of("outer-rings-together", "under-cover", [("case", 1.0)]),
            "without a unit",
        ),
        (lambda: Stack((), 1).interference(Q(float("nan"), MM)), "shim is not a number"),
        (lambda: Stack((), 1).shim_for(Q(9, MM)), "interference is 9 mm, outside -5 to 5 mm"),
        (lambda: Stack((), 1).window(Q(1, MM), Q(0, MM)), "interference"),
        (lambda: Source("gauge", -1.0), "standard uncertainty of gauge is -1"),
        (lambda: Source("gauge", 1.0, 0.0), "degrees of freedom"),
        (lambda: repeated("gauge", [1.0]), "number of readings of gauge is 1"),
        (lambda: repeated("gauge", [1.0, math.nan]), "readings of gauge"),
        (
            lambda: shim_from_float(
                "outer-rings-together", "under-cover", Q(1, MM), Q(0, MM), Q(0, MM)
            ),
            "end float",
        ),
        (
            lambda: propagate(
                lambda a, b: a + b,
                [
                    Measured("a", 1.0, (Source("gauge", 1.0),)),
                    Measured("b", 1.0, (Source("gauge", 2.0),)),
                ],
            ),
            "uncertainty of gauge is 1 and 2",
        ),
    ],
)
def test_refusals(call, says):
    with pytest.raises(OutOfRangeError, match=says):
        call()


def test_schema_refusals():
    with pytest.raises(ValueError, match="thinnest first"):
        ShimSet(id="s", name="Set", thicknesses_mm=(1.0, 0.9))
    with pytest.raises(ValueError, match="swap them"):
        Target(kind="preload", low_mm=0.2, high_mm=0.1)


def test_shim_of_three_lengths():
    # Invented lengths; rectangular limits recomputed with GTC: u 0.0075, U 0.015 mm.
    case = Measured("case", 52.640, (rectangular("case", 0.012),))
    stand = Measured("stand", 34.18, (rectangular("stand", 0.004),))
    plate = Measured("plate", 17.25, (rectangular("plate", 0.003),))
    budget = propagate(lambda a, b, c: a - b - c, [case, stand, plate])
    assert budget.value == pytest.approx(1.210, abs=1e-9)
    assert budget.u == pytest.approx(0.0075, abs=5e-5)
    assert budget.expanded() == pytest.approx(0.015, abs=5e-4)


def test_without_a_guard_what_lies_within_the_limits_is_safe():
    window = Q(1.18, MM), Q(1.24, MM)
    assert choose(Q([1.185, 1.30], MM), window).verdict == "safe"
    assert choose(Q([1.185, 1.30], MM), window, guard=Q(0.01, MM)).verdict == "meets"
