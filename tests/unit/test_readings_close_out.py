"""What learners are given in the module Close out: own, equally hard, no answers."""

import itertools
import json
from collections import Counter

import pytest

from twoshaft.errors import UnitFileError
from twoshaft.models import closeout
from twoshaft.models.viscosity import walther
from twoshaft.readings import draw, given_in
from twoshaft.readings.close_out import TASKS
from twoshaft.readings.close_out.oils import APART, THICK_ENOUGH, TOO_THIN
from twoshaft.readings.issue import not_carried
from twoshaft.records import to_json
from twoshaft.units import load_unit, shipped_units

LEARNERS = [f"a{i:03d}" for i in range(60)]
SCENES = {"joined": 16, "record": 16, "hand": 16, "safe": 12}


def given_to(unit, learner, attempt=1):
    return draw("close-out", unit, salt="salt", learner=learner, attempt=attempt)


def test_plain_data_the_same_at_every_run(unit, drawn):
    stored = json.loads(json.dumps(to_json(given_to(unit, LEARNERS[0]))))
    assert given_in("close-out", stored) == drawn[LEARNERS[0]]
    assert list(stored) == list(TASKS)


def test_learners_differ(drawn):
    for task in TASKS:
        kinds = {json.dumps(to_json(getattr(g, task)), sort_keys=True) for g in drawn.values()}
        assert len(kinds) >= 50, task


def test_a_resit_shows_other_scenes(unit):
    one, two = given_to(unit, "a001", 1), given_to(unit, "a001", 2)
    for task in SCENES:
        before, after = ({row.id for row in getattr(g, task).lines} for g in (one, two))
        assert not before & after, task


def test_one_drum_suits_and_each_other_has_one_fault(unit, drawn):
    asked, seen = unit.close_out.oil, Counter()
    for given in drawn.values():
        faults = []
        for drum in given.oil.drums:
            hot = walther.plain(drum.at_40, drum.at_100, asked.hottest_c) / asked.thinnest_mm2_per_s
            assert hot < TOO_THIN or hot > THICK_ENOUGH
            wrong = [
                "cold" if closeout.WINTER_C[drum.winter] > asked.coldest_c else "",
                "thin" if hot < 1 else "",
                "ring" if drum.label != f"{asked.service}, for synchroniser rings" else "",
            ]
            faults.append([one for one in wrong if one])
            for off in (0.98, 1.02):
                assert closeout.hot_grade.plain(drum.at_100 * off) == closeout.hot_grade.plain(drum.at_100)  # fmt: skip
        assert sorted(map(len, faults)) == [0, 1, 1, 1]
        assert {one for each in faults for one in each} == {"cold", "thin", "ring"}
        seen.update(str(one) for each in faults for one in [each])
        sizes = sorted(drum.at_100 for drum in given.oil.drums)
        assert all(b / a - 1 > 0.9 * APART for a, b in itertools.pairwise(sizes))
    assert len(seen) == 4


def test_shifts_are_plainly_alike_longer_or_never(drawn):
    seen = Counter()
    for given in drawn.values():
        assert given.ring.wrong_friction < 0.8 * given.ring.friction
        for one in given.ring.others:
            left = one.right_nm * one.friction / one.right_friction - one.drag_nm
            if left <= 0:
                assert left < -0.08 * one.right_nm
                seen["never"] += 1
            else:
                longer = one.right_nm / left
                assert longer < 1.08 or longer > 1.4
                seen["alike" if longer < 1.1 else "longer"] += 1
    assert min(seen.values()) > 0.25 * sum(seen.values())


def test_levels_decide_beyond_question(unit, drawn):
    most = unit.close_out.level.below_most_mm
    for given in drawn.values():
        assert given.fill.below_mm > 1.5 * most
        assert abs(given.fill.can_c - unit.strip.oil.reference_c) >= 8
        kinds = Counter()
        for one in given.fill.others:
            if one.slope_deg or one.oil_c > 40:
                assert one.slope_deg >= 2 or one.oil_c >= 65
                kinds["again"] += 1
            else:
                assert one.below_mm <= most - 1 or one.below_mm >= most + 2
                kinds["out" if one.below_mm < 0 else "leave" if one.below_mm < most else "up"] += 1
        assert set(kinds) == {"again", "out", "leave", "up"}


def test_closed_units_keep_off_their_limit(drawn):
    seen = Counter()
    for given in drawn.values():
        outside = given.breather.outside_mbar
        for one in given.breather.others:
            over = closeout.pressure_in.plain(outside, one.closed_c, one.now_c, 1, 0)
            assert abs(over / one.seal_mbar - 1) > 0.19
            seen["in" if over < 0 else "out" if over > one.seal_mbar else "holds"] += 1
    assert min(seen.values()) > 0.25 * sum(seen.values())


def test_leaks_keep_off_the_edge_of_their_guard_band_and_the_air_changes(drawn):
    seen = Counter()
    for given in drawn.values():
        leak = given.leak
        assert 0.5 < abs(leak.end_c - leak.start_c) < 1.8
        lost = closeout.pressure_lost.plain(leak.outside_mbar + leak.start_mbar, leak.outside_mbar + leak.end_mbar, leak.start_c, leak.end_c)  # fmt: skip
        rate = closeout.leak_rate.plain(lost, leak.litres, leak.minutes, leak.outside_mbar)
        assert 0.3 * leak.most < rate < 1.95 * leak.most
        for one in leak.others:
            band = closeout.GUARD * one.u
            off = abs(one.leak - one.most)
            assert one.leak > 0 and (off < 0.9 * band or off > 1.1 * band)
            seen["again" if off < band else "tight" if one.leak < one.most else "leaks"] += 1
    assert min(seen.values()) > 0.25 * sum(seen.values())


def test_road_tests_leave_one_cause_and_every_finding_counts(drawn):
    seen, asked = Counter(), Counter()
    for given in drawn.values():
        for one in given.road.complaints:
            said = dict.fromkeys(one.so, True) | dict.fromkeys(one.not_so, False)
            (cause,) = closeout.causes_left(said)
            seen[cause] += 1
            assert one.so and len(said) >= 2
            assert "–" in (one.was_so, one.was_not_so) or one.not_so
            if len(said) > 2:
                for check in said:
                    fewer = {c: so for c, so in said.items() if c != check}
                    assert not any(fewer.values()) or closeout.causes_left(fewer) != (cause,)
        offered = [one.id for one in given.road.checks]
        told = []
        for pair in given.road.pairs:
            telling = [c for c in closeout.tell_apart(pair.one, pair.other) if c in offered]
            assert len(telling) <= 1 and " – or: " in pair.text
            told += telling or ["none"]
        assert len(set(told)) == 4
        asked.update(told)
    assert set(seen) == set(closeout.load_road().causes) and min(seen.values()) > 5
    assert len(asked) > 10


def test_every_scene_comes_up_and_four_are_shown(drawn):
    for task, count in SCENES.items():
        shown = Counter(row.id for g in drawn.values() for row in getattr(g, task).lines)
        assert len(shown) == count and min(shown.values()) > 5
        assert all(len(getattr(g, task).lines) == 4 for g in drawn.values())


@pytest.mark.parametrize("id", shipped_units())
def test_every_shipped_unit_carries_the_whole_module(id):
    shipped = load_unit(id)
    assert not not_carried("close-out", shipped)
    for learner in LEARNERS[:8]:
        assert given_to(shipped, learner).oil.drums


def test_a_unit_without_the_section_or_parts_of_it_is_told(unit):
    for section in ("close_out", "strip"):
        with pytest.raises(UnitFileError, match=f"no section '{section.replace('_', ' ')}'"):
            given_to(unit.with_sections(**{section: None}), "ann")
    bare = unit.close_out.model_copy(update={"leak_test": None, "ring": None})
    without = unit.with_sections(close_out=bare)
    assert set(not_carried("close-out", without)) == {"ring", "leak"}
    given = given_to(without, "ann")
    assert given.ring is None and given.leak is None and "leak" not in to_json(given)


@pytest.mark.parametrize("thinnest", [2.5, 55])
def test_an_oil_by_which_no_grade_or_every_grade_is_too_thin_is_told(unit, thinnest):
    asked = unit.close_out.oil.model_copy(update={"thinnest_mm2_per_s": thinnest})
    section = unit.close_out.model_copy(update={"oil": asked})
    with pytest.raises(
        UnitFileError, match="too thin and others are not, in the section 'close out'"
    ):
        given_to(unit.with_sections(close_out=section), "ann")


def test_a_level_that_must_be_met_to_a_hair_is_drawn(unit):
    level = unit.close_out.level.model_copy(update={"below_most_mm": 0.5})
    given = given_to(
        unit.with_sections(close_out=unit.close_out.model_copy(update={"level": level})), "ann"
    )
    assert {0.0} <= {one.below_mm for one in given.fill.others}
