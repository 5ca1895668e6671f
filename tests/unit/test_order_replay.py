"""The bench cost: when each slip shows, what comes off, what is lost."""

import pytest

from twoshaft.models.order import (
    OrderTask,
    broken_safety,
    buried_steps,
    consequences,
    new_parts,
    plan_slip,
    replay,
    rework,
    window,
)
from twoshaft.models.order.snapshot import snapshot
from twoshaft.units.unit import Unit


@pytest.fixture
def bench():
    """A little gearbox.

    Shaft, then its bearing; the magnet goes under the cover; the spline is taped before the seal;
    end play is read before the cover is sealed; a last check.
    """

    def operation(name, do, undo, *, kind="fit", parts=()):
        return {
            "id": name,
            "name": name.replace("-", " "),
            "stage": "all",
            "kind": kind,
            "parts": list(parts),
            "minutes_do": do,
            "minutes_undo": undo,
        }

    def rule(kind, earlier, later, **more):
        reason = f"{earlier} before {later}"
        entry = {"id": f"{earlier}-{later}", "kind": kind, "earlier": earlier, "later": later}
        return {**entry, "reason": reason, **more}

    return Unit.model_validate(
        {
            "identity": {
                "id": "little-box",
                "name": "Little box",
                "version": "1",
                "invented": True,
                "college": "Tarnbeck College",
                "scenario": "Seven steps for a test.",
                "gears": 5,
            },
            "parts": [
                {"id": "lip-seal", "name": "Lip seal", "single_use": True},
                {"id": "gasket", "name": "Gasket", "single_use": True},
                {"id": "magnet", "name": "Magnet"},
                {"id": "bearing", "name": "Bearing", "damaged_by_removal": True},
            ],
            "stages": [{"id": "all", "name": "All"}],
            "operations": [
                operation("shaft", 4, 2),
                operation("bearing", 3, 5, parts=["bearing"]),
                operation("magnet", 1, 1, parts=["magnet"]),
                operation("tape", 1, 1),
                operation("seal", 2, 1, parts=["lip-seal"]),
                operation("end-play", 6, 0, kind="measure"),
                operation("cover", 5, 4, parts=["gasket"]),
                operation("final-check", 2, 0, kind="check"),
            ],
            "rules": [
                rule("cannot", "shaft", "bearing"),
                rule("cannot", "bearing", "cover"),
                rule("buries", "magnet", "cover"),
                rule("harms", "tape", "seal", loses=["lip-seal"]),
                rule("blinds", "bearing", "end-play"),
                rule("buries", "end-play", "cover"),
                rule("blinds", "cover", "final-check"),
            ],
        }
    )


@pytest.fixture
def task(bench):
    return OrderTask.from_unit(bench)


GOOD = ["shaft", "bearing", "magnet", "tape", "seal", "end-play", "cover", "final-check"]


def moved(step, before):
    order = [s for s in GOOD if s != step]
    order.insert(order.index(before) if before else len(order), step)
    return order


def test_a_correct_order_costs_the_plan(task):
    result = replay(task, GOOD)
    assert result.events == ()
    assert result.minutes == result.minutes_planned == 24


def test_cannot_stops_the_build_at_once_and_costs_nothing_else(task):
    result = replay(task, moved("shaft", "magnet"))
    (event,) = result.events
    assert (event.state, event.at, event.steps) == ("blocked", "bearing", ("shaft",))
    assert result.stopped_at == "bearing"
    assert event.off == ()
    assert result.minutes_extra == 0


def test_a_buried_step_shows_late_and_what_is_in_its_way_comes_off(task):
    result = replay(task, moved("magnet", None))
    (event,) = result.events
    # The final check depends on the magnet (through the cover), so it shows there.
    assert (event.state, event.at, event.steps) == ("buried", "final-check", ("magnet",))
    assert event.off == ("cover",)
    assert event.minutes == 4 + 5
    assert event.parts == ("gasket",)
    assert result.stopped_at is None


def test_a_buried_step_shows_at_its_own_turn_when_that_comes_first(task):
    (event,) = replay(task, moved("magnet", "final-check")).events
    assert (event.state, event.at, event.off) == ("buried", "magnet", ("cover",))


def test_a_step_left_out_shows_at_the_check_that_depends_on_it(task):
    (event,) = replay(task, [s for s in GOOD if s != "magnet"]).events
    assert (event.state, event.at) == ("buried", "final-check")
    (event,) = replay(task, [s for s in GOOD if s not in ("magnet", "final-check")]).events
    assert event.at is None
    assert event.steps == ("magnet", "final-check")


def test_harm_costs_the_part_and_the_step_again(task):
    (event,) = replay(task, moved("tape", "end-play")).events
    assert (event.state, event.at, event.off) == ("harmed", "tape", ("seal",))
    assert event.minutes == 1 + 2
    assert event.parts == ("lip-seal",)


def test_a_blinded_check_is_done_again(task):
    order = ["shaft", "end-play", "bearing", "magnet", "tape", "seal", "cover", "final-check"]
    (event,) = replay(task, order).events
    assert (event.state, event.at, event.off) == ("blinded", "bearing", ("end-play",))
    assert event.minutes == 6


def test_what_was_fitted_too_early_goes_back_on_when_its_time_has_come(task):
    order = ["shaft", "bearing", "tape", "seal", "cover", "magnet", "end-play", "final-check"]
    assert plan_slip(task, order).redo == ("cover",)
    (event,) = replay(task, order).events
    assert event.steps == ("magnet",)
    assert event.off == ("cover",)
    assert event.minutes == 9  # charged once, not again for the end play


def test_once_open_everything_forgotten_goes_in(task):
    # Three steps stand before the cover out of their place, so the cover is not the slip.
    order = ["shaft", "bearing", "cover", "final-check", "tape", "magnet", "end-play", "seal"]
    slip = plan_slip(task, order)
    assert set(slip.redo) == {"magnet", "end-play"}
    result = replay(task, order)
    (event,) = result.events
    assert set(event.steps) == {"magnet", "end-play"}
    assert event.off == ("cover",)
    assert event.minutes == 9


def test_a_step_planned_too_early_is_put_aside(task):
    order = ["final-check", "cover", "shaft", "bearing", "magnet", "tape", "seal", "end-play"]
    events = replay(task, order).events
    assert [(e.state, e.at, e.steps, e.off) for e in events] == [
        ("blocked", "cover", ("bearing",), ()),
        ("blinded", "cover", ("cover",), ("final-check",)),
    ]


def test_a_repeat_and_a_foreign_step(task):
    result = replay(task, [*GOOD, "tape", "polish"])
    assert [e.state for e in result.events] == ["foreign", "repeated"]
    assert result.minutes_extra == 1


def test_consequences_in_the_order_they_show(task):
    order = ["bearing", "seal", "shaft", "tape", "end-play", "cover", "magnet"]
    states = [(c.step, c.state) for c in consequences(task, order)]
    assert states == [
        ("bearing", "blocked"),
        ("seal", "harmed"),
        ("shaft", "ok"),
        ("tape", "ok"),
        ("end-play", "ok"),
        ("cover", "ok"),
        ("magnet", "buried"),
    ]
    assert consequences(task, order)[5].buries == ("magnet",)


def test_rework_takes_off_no_more_than_needed(task):
    built = [s for s in GOOD if s != "magnet"]
    result = rework(task, built, "magnet")
    assert (result.off, result.minutes, result.parts) == (("cover",), 9, ("gasket",))
    assert rework(task, built[:3], "magnet").off == ()
    own = rework(task, built, "magnet", undo={"cover": 6}, do={"cover": 7})
    assert own.minutes == 13
    result = rework(task, [s for s in GOOD if s != "shaft"], "shaft")
    assert result.off == ("cover", "bearing")
    assert result.minutes == 4 + 5 + 5 + 3
    assert set(result.parts) == {"gasket", "bearing"}


def test_new_parts_after_a_strip_down(task):
    assert new_parts(task, ["cover", "magnet", "bearing"]) == ("bearing", "gasket")
    assert new_parts(task, ["shaft", "end-play"]) == ()


def test_the_step_that_buries(task):
    assert buried_steps(task, moved("magnet", "final-check")) == (("magnet", "cover"),)


@pytest.fixture
def clocked(make_unit):
    clock = {
        "id": "skin",
        "name": "The film skins over",
        "starts": "s00",
        "ends": "s02",
        "minutes": 5,
        "reason": "it no longer seals",
        "loses": ["p00"],
    }
    pairs = [(0, 1), (1, 2), (3, 5), (2, 4)]
    return OrderTask.from_unit(make_unit(6, pairs, minutes=(2, 1.5, 2, 1, 1, 3), clocks=[clock]))


def test_a_clock_that_runs_out_is_found_and_costs_its_start_again(clocked):
    assert replay(clocked, ["s03", "s05", "s00", "s01", "s02", "s04"]).events == ()
    assert (
        replay(clocked, ["s00", "s01", "s03", "s02", "s04", "s05"]).events == ()
    )  # 4.5 of 5 minutes
    result = replay(clocked, ["s03", "s00", "s05", "s01", "s02", "s04"])  # 6.5 minutes
    (event,) = result.events
    assert (event.state, event.clock, event.at) == ("late", "skin", "s02")
    assert event.off == ("s02", "s01", "s00")
    assert event.minutes == 1.5 * (2 + 1.5 + 2)
    assert event.parts == ("p00",)


def test_a_clock_that_guards_safety_is_reported_but_does_not_set_the_mark(clocked):
    late = ["s03", "s00", "s05", "s01", "s02", "s04"]
    slip = plan_slip(clocked, late)
    assert slip.size == 0
    assert [reason.rules for reason in slip.late] == [("skin",)]
    assert slip.broken_safety == broken_safety(clocked, late) == ()
    unit = clocked.unit
    strict = unit.clocks[0].model_copy(update={"safety": True})
    task = OrderTask.from_unit(unit.model_copy(update={"clocks": (strict,)}))
    assert [reason.rules for reason in plan_slip(task, late).broken_safety] == [("skin",)]
    assert broken_safety(task, late) == plan_slip(task, late).broken_safety
    assert broken_safety(task, ["s03", "s05", "s00", "s01", "s02", "s04"]) == ()


def test_the_window_of_a_clock(clocked):
    found = window(clocked, "skin")
    assert found.inside == ("s01",)
    assert found.minutes_used == 3.5
    assert found.minutes_left == 1.5
    assert found.optional == ("s03", "s05")
    assert found.fits == ("s03",)
    own = window(clocked, "skin", minutes={"s05": 1, "s02": 2.5}, allowed=6)
    assert own.minutes_left == 2
    assert own.fits == ("s03", "s05")


@pytest.mark.parametrize(("minutes", "late"), [(4.5, False), (4.49, True)])
def test_a_clock_allows_its_very_last_minute(clocked, minutes, late):
    """Four and a half minutes pass from the end of s00 to the end of s02."""
    order = ["s00", "s01", "s03", "s02", "s04", "s05"]
    clock = clocked.unit.clocks[0].model_copy(update={"minutes": minutes})
    task = OrderTask.from_unit(clocked.unit.model_copy(update={"clocks": (clock,)}))
    assert bool(replay(task, order).events) == late
    assert bool(plan_slip(task, order).late) == late
    assert snapshot(task, order).clocks[0].late == late


def held(make_unit):
    """s00 or s03 holds fast, s02 or s05 lets go; s01 and s04 need it held."""
    reason = "it is worth nothing unless it is held"
    hold = {"id": "held", "name": "Held fast", "given_by": ["s00", "s03"],
            "ended_by": ["s02", "s05"], "needed_by": ["s01", "s04"], "reason": reason}  # fmt: skip
    return OrderTask.from_unit(make_unit(6, holds=[hold], minutes=(3, 8, 2, 5, 16, 4)))


def test_a_step_outside_its_hold_costs_the_shortest_hold(make_unit):
    """Held again by s00 (3 min) and let go by s02 (2)."""
    result = replay(held(make_unit), ["s00", "s01", "s02", "s04", "s03", "s05"])
    (event,) = result.events
    assert (event.at, event.minutes) == ("s04", 3 + 2)
    assert result.minutes_extra == 3 + 2


def test_a_step_spoilt_by_a_hold_costs_the_shortest_hold_and_itself_undone_and_done(make_unit):
    """s04 is done while held: let go by s02 (2 min), held again by s00 (3), and s04 anew (8 and 16)."""
    hold = {"id": "held", "name": "Held fast", "given_by": ["s00", "s03"],
            "ended_by": ["s02", "s05"], "needed_by": ["s01"], "reason": "it turns"}  # fmt: skip
    never = {"id": "never", "kind": "harms", "not_during": "held", "later": "s04", "reason": "bent"}
    unit = make_unit(6, holds=[hold], rules=[never], minutes=(3, 8, 2, 5, 16, 4))
    result = replay(OrderTask.from_unit(unit), ["s00", "s01", "s04", "s02", "s03", "s05"])
    (event,) = result.events
    assert (event.state, event.at) == ("harmed", "s04")
    assert event.minutes == result.minutes_extra == 3 + 2 + 8 + 16
