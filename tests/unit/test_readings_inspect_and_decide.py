"""What learners are given in the module Inspect and decide: own, equally hard, no answers."""

import json
from collections import Counter

import pytest

from twoshaft.errors import UnitFileError
from twoshaft.models import inspect
from twoshaft.models.inspect.worn import WIDE_MM
from twoshaft.models.order import OrderTask, chance_r0, plan_slip
from twoshaft.models.order.mark import LEAST_R0
from twoshaft.readings import draw, given_in
from twoshaft.readings.inspect_and_decide import TASKS
from twoshaft.readings.inspect_and_decide.deciding import CHEAPER
from twoshaft.records import to_json
from twoshaft.units.quantities import Q

LEARNERS = [f"a{i:03d}" for i in range(60)]


def given_to(unit, learner, attempt=1):
    return draw("inspect-and-decide", unit, salt="salt", learner=learner, attempt=attempt)


def mm(value):
    return Q(value, "mm")


def test_plain_data_the_same_at_every_run(unit, drawn):
    stored = json.loads(json.dumps(to_json(given_to(unit, LEARNERS[0]))))
    assert given_in("inspect-and-decide", stored) == drawn[LEARNERS[0]]
    assert list(stored) == list(TASKS)


def test_learners_differ(drawn):
    for task in TASKS:
        kinds = {json.dumps(to_json(getattr(g, task)), sort_keys=True) for g in drawn.values()}
        assert len(kinds) >= 50, task


def test_a_resit_shows_other_scenes(unit):
    one, two = given_to(unit, "a001", 1), given_to(unit, "a001", 2)
    assert one.thread.operations != two.thread.operations
    for task in ("parts", "safe"):
        before, after = ({row.id for row in getattr(g, task).lines} for g in (one, two))
        assert not before & after, task


@pytest.mark.parametrize("task, tell", [("races", "race_damage"), ("flanks", "flank_damage")])
def test_six_pictures_show_six_kinds_and_no_word_of_them(drawn, task, tell):
    seen = Counter()
    for given in drawn.values():
        looks = getattr(given, task)
        kinds = [getattr(inspect, tell)(one.marks) for one in looks.pictures]
        assert len(set(kinds)) == len(kinds) == 6 and {one.id for one in looks.names} <= set(kinds)
        assert len(looks.names) == len(looks.letters) == 4
        seen.update((one.letter, kind) for one, kind in zip(looks.pictures, kinds, strict=True))
        text = json.dumps([to_json(one) for one in looks.pictures])
        assert not any(f'"{kind}"' in text for kind in inspect.NAMES)
    # No kind prefers a letter.
    by_kind = Counter()
    for (_, kind), count in seen.items():
        by_kind[kind] += count
    assert all(count < 0.4 * by_kind[kind] for (_, kind), count in seen.items())


def test_dog_teeth_decide_beyond_doubt(unit, drawn):
    limit, ways = unit.inspect.dogs, Counter()
    for given in drawn.values():
        for gear in given.dogs.gears:
            over = max(gear.flats_mm) - limit.flat_most_mm
            assert abs(abs(over) - limit.unsure_mm) > 0.03 or any(gear.chips_mm)
            if any(gear.chips_mm):
                assert over < -limit.unsure_mm
                ways["broken"] += 1
            else:
                ways["use" if over < -limit.unsure_mm else "blunt" if over > limit.unsure_mm else "again"] += 1  # fmt: skip
    share = {way: count / sum(ways.values()) for way, count in ways.items()}
    assert share["use"] > 0.2 and share["again"] > 0.2 and share["broken"] + share["blunt"] < 0.5


def test_means_keep_off_the_edge_of_their_guard_band(drawn):
    said = Counter()
    for given in drawn.values():
        for one in given.guard.others:
            band = inspect.guard_band(mm(one.u_mm))
            off = abs(one.mean_mm - one.limit_mm)
            assert off < 0.85 * band.m or off > 1.15 * band.m
            said[inspect.verdict(mm(one.mean_mm), mm(one.limit_mm), band, one.least)] += 1
    assert min(said.values()) > 0.25 * sum(said.values())


def test_each_case_of_cost_has_one_cheapest_way(drawn):
    best = Counter()
    for given in drawn.values():
        cost = given.cost
        times = (cost.mean_mm - cost.limit_mm) / cost.u_mm
        assert times == pytest.approx(round(2 * times) / 2, abs=0.02) and 0.4 < times < 2.1
        for case in cost.cases:
            ways = inspect.ways_cost(
                case.bad_percent / 100, case.renew_h, case.again_h, case.look_h
            )
            first, second, _ = sorted(ways.values())
            assert second >= CHEAPER * first
            best[min(ways, key=ways.get)] += 1
    assert min(best.values()) > 0.25 * sum(best.values())


def test_an_own_circlip_is_a_change_and_its_float_comes_out_inside(drawn):
    for given in drawn.values():
        clip = given.clip
        low, high = clip.allowed_mm
        assert not low <= clip.float_mm <= high
        ideal = clip.fitted_mm + clip.float_mm - (low + high) / 2
        ranked = sorted(abs(one - ideal) for one in clip.set_mm)
        assert ranked[1] - ranked[0] > 0.019
        taken = min(clip.set_mm, key=lambda one: abs(one - ideal))
        left = inspect.float_with(mm(clip.float_mm), mm(clip.fitted_mm), mm(taken)).m
        assert low <= left <= high
        assert {one.id for one in clip.others} == set("abcd")


def test_grooves_and_seats_decide_beyond_doubt(unit, drawn):
    seal, ways = unit.inspect.seal, Counter()
    for given in drawn.values():
        for one in given.seal.others:
            depth = (one.beside_mm - one.groove_mm) / 2
            for limit in (seal.groove_most_mm, seal.sleeve_most_mm):
                assert abs(depth - limit) > 0.005
            ways["lip" if depth < seal.groove_most_mm else "sleeve" if depth < seal.sleeve_most_mm else "shaft"] += 1  # fmt: skip
        for one in given.seats.others:
            worn = [one.ring_mm < one.ring_least_mm, one.bore_mm > one.bore_most_mm]
            assert sum(worn) <= 1
        assert given.seats.gear_bore_mm - given.seats.shaft_mm > 2 * given.seats.needle_mm
    assert min(ways.values()) > 0.2 * sum(ways.values())


def test_thread_repairs_are_alike_hard_and_wrong_as_shown(drawn):
    levels = []
    for given in list(drawn.values())[:12]:
        task = OrderTask.from_unit(inspect.load_repairs(), given.thread.operations)
        levels.append(chance_r0(task))
        assert plan_slip(task, [one.id for one in given.thread.start]).size >= 5
    assert min(levels) >= LEAST_R0 and max(levels) - min(levels) < 2


def test_every_scene_comes_up_and_four_are_shown(drawn):
    for task, count in (("parts", 16), ("safe", 12)):
        shown = Counter(row.id for g in drawn.values() for row in getattr(g, task).lines)
        assert len(shown) == count and min(shown.values()) > 5
        assert all(len(getattr(g, task).lines) == 4 for g in drawn.values())


def test_a_unit_without_the_section_is_told(unit):
    with pytest.raises(UnitFileError, match="no section 'inspect'"):
        given_to(unit.with_sections(inspect=None), "ann")


def test_tasks_that_a_unit_has_nothing_for_are_not_drawn(unit):
    bare = unit.inspect.model_copy(update={"dogs": None, "circlips": (), "seats": (), "seal": None})
    given = given_to(unit.with_sections(inspect=bare), "ann")
    left_out = {"dogs", "clip", "seats", "seal"}
    assert all((getattr(given, task) is None) == (task in left_out) for task in TASKS)
    stored = to_json(given)
    assert given_in("inspect-and-decide", stored) == given and not left_out & set(stored)


def test_worn_parts_in_pictures_are_four_parts_with_every_way_and_clear_of_their_limits(drawn):
    seen = Counter()
    for given in drawn.values():
        pictures = given.parts.pictures
        worn = [inspect.worn_of(one.part, one.wears, one.wear_mm, one.at_mm) for one in pictures]
        ways = [inspect.becomes(one) for one in worn]
        assert len({one.part for one in pictures}) == 4 and set(ways) == {"use", "renew", "find"}
        assert [one.id for one in given.parts.drawn] == [one.letter for one in pictures]
        assert {one.id for one in given.parts.drawn_answers} == set(ways)
        seen.update(zip("ABCD", ways, strict=True))
        for one, way in zip(worn, ways, strict=True):
            assert all(0 <= low <= high <= WIDE_MM[one.part] for _, low, high in one.reaches)
            # By reading the scale half a mark wrong nobody comes to another decision.
            if way != "find":
                off = min(abs(size - inspect.WORN_LIMITS_MM[one.part]) for size in one.sizes_mm())
                assert off >= {"hub": 0.1, "spring": 0.6}.get(one.part, 0.15) - 1e-9
    assert min(seen.values()) > 8 and len(seen) == 12
