"""What learners are given in the module Threaded joints: their own, equally hard, no answers."""

import json
from collections import Counter

import numpy as np
import pytest

from twoshaft.errors import UnitFileError
from twoshaft.models import joint
from twoshaft.readings import draw, given_in, whole_units
from twoshaft.readings.threaded_joints import face_like
from twoshaft.readings.threaded_joints.given import Asked
from twoshaft.readings.threaded_joints.questions import BANK
from twoshaft.records import Scenes, to_json
from twoshaft.units import load_unit
from twoshaft.units.quantities import Q

LEARNERS = [f"a{i:03d}" for i in range(200)]
SCENES = [name for name, kind in Asked.__annotations__.items() if kind in (Scenes, "Scenes")]
TASKS = ["card", "found", "state", "alloy", "blind", "face", "pattern", "nut", "stake",
         "asked"]  # fmt: skip


@pytest.fixture(scope="module")
def drawn(unit):
    return [given_to(unit, learner) for learner in LEARNERS]


def given_to(unit, learner, attempt=1):
    return draw("threaded-joints", unit, salt="salt", learner=learner, attempt=attempt)


def test_plain_data_the_same_at_every_run(unit, drawn):
    again = json.loads(json.dumps(to_json(given_to(unit, LEARNERS[0]))))
    assert again == to_json(drawn[0])
    assert list(again) == TASKS
    assert given_in("threaded-joints", again) == drawn[0]


@pytest.mark.parametrize("task", ["card", "found", "alloy", "blind", "face", "stake"])
def test_every_learner_has_other_figures(drawn, task):
    different = {json.dumps(to_json(getattr(given, task))) for given in drawn}
    assert len(different) > 0.85 * len(LEARNERS)


@pytest.mark.parametrize("name", whole_units())
def test_every_shipped_unit_has_enough(name):
    given_to(load_unit(name), "a001")


@pytest.mark.slow
def test_a_resit_changes_the_task_not_only_the_numbers(unit):
    for learner in LEARNERS[:12]:
        first, second = (given_to(unit, learner, attempt) for attempt in (1, 2))
        for name in SCENES:
            ids = [
                {one.id for one in getattr(given.asked, name).lines} for given in (first, second)
            ]
            assert not ids[0] & ids[1]
        found = [{one.id for one in given.asked.threads} for given in (first, second)]
        assert not found[0] & found[1]
        assert first.asked.holes != second.asked.holes and first.asked.turns != second.asked.turns
        for task in ("card", "found", "state", "alloy", "blind", "stake"):
            assert getattr(first, task) != getattr(second, task)


def test_a_unit_without_fasteners_is_refused(unit):
    with pytest.raises(UnitFileError, match="no section 'fasteners'"):
        given_to(unit.with_sections(fasteners=None), "a001")


def test_the_card_has_one_wrench_and_an_adapter_that_matters(drawn, unit):
    wrenches = {
        f.wrench.name: f.wrench
        for f in (joint.Fastening.of(unit, group.id) for group in unit.fasteners.groups)
    }
    pints = {"lbf·ft": "force_pound*foot", "lbf·in": "force_pound*inch"}
    for card in (given.card for given in drawn):
        torque = Q(card.figure, pints.get(card.unit, "force_kilogram*cm")).to("N*m")
        suited = [w for w in card.wrenches if wrenches[w.name].suits(torque)]
        assert len(suited) == 1
        length = Q(suited[0].length_mm, "mm")
        setting = joint.setting_with_adapter(
            torque, length, Q(card.reach_mm, "mm"), Q(card.angle_deg, "degree")
        )
        assert torque / setting > 1.03
        assert torque.m - setting.m_as("N*m") > suited[0].step_nm


def verdict_of_found(given):
    torque = joint.torque_at_bolt(
        Q(given.setting_nm, "N*m"),
        Q(given.length_mm, "mm"),
        Q(given.reach_mm, "mm"),
        Q(given.angle_deg, "degree"),
    )
    use = joint.clamp_short(torque, given.k, Q(given.diameter_mm, "mm")).m_as("kN")
    use /= given.yields_kn
    low, high = given.window_nm
    torque = torque.m_as("N*m")
    return (
        "renew" if use >= 0.9 else "low" if torque < low else "high" if torque > high else "ok"
    ), (
        use,
        torque,
    )


def test_found_settings_lead_to_every_verdict_and_none_hangs_on_the_last_figure(drawn):
    counts = Counter()
    for given in (one.found for one in drawn):
        verdict, (use, torque) = verdict_of_found(given)
        counts[verdict] += 1
        low, high = given.window_nm
        assert abs(use - 0.9) > 0.05
        if verdict != "ok":
            assert min(abs(torque / low - 1), abs(torque / high - 1)) > 0.05
    assert len(counts) == 4
    assert min(counts.values()) > 25


def test_the_verdict_on_a_thread_in_aluminium_is_spread_and_clear(drawn):
    counts = Counter()
    for given in (one.alloy for one in drawn):
        margins = [mm * given.per_mm_kn / given.most_kn for mm in (given.meets_mm, given.good_mm)]
        assert all(abs(margin / given.safe - 1) > 0.07 for margin in margins)
        counts[tuple(margin >= given.safe for margin in margins)] += 1
    assert set(counts) == {(True, True), (False, True), (False, False)}
    assert min(counts.values()) > 40


def test_load_for_each_millimetre_is_the_models(drawn, unit):
    deep = [one.alloy for one in drawn if one.alloy.meets_mm > one.alloy.diameter_mm]
    for given in deep[:40]:
        fastening = joint.Fastening.of(unit, given.group)
        boss = fastening.group.tapped.boss_mm
        strip = joint.strip_loads(
            fastening.thread,
            fastening.steel,
            Q(fastening.metal.tensile_mpa, "MPa"),
            Q(given.meets_mm, "mm"),
            Q(boss, "mm") if boss else None,
            joint.limits_6g6h(fastening.thread),
        )
        want = strip.hole_strips_n / 1e3 / given.meets_mm
        assert given.per_mm_kn == pytest.approx(want, rel=0.01)


def test_every_found_state_is_clearly_another(drawn):
    for given in (one.state for one in drawn):
        k = {one.id: one.k for one in given.factors}
        assert abs(k[given.found.id] / k[given.state.id] - 1) >= 0.1
    assert len({given.state.found.id for given in drawn}) >= 3


def test_every_blind_hole_locks_as_the_model_says(drawn, unit):
    for given in (one.blind for one in drawn[:60]):
        hole = joint.BlindHole(given.depth_mm / 1e3, given.reach_mm / 1e3, given.boss_mm / 1e3)
        fastening = joint.Fastening.of(unit, given.group)
        oil = Q(given.oil_ml, "mL")
        torque = Q(given.torque_nm, "N*m")
        lock = joint.hydraulic_lock(hole, fastening.thread, fastening.seat, oil, torque, 0.12)
        turns = given.oil_ml * 1e3 / given.area_mm2 - given.depth_mm + given.reach_mm
        assert lock.locks
        assert lock.turns_short == pytest.approx(turns / given.pitch_mm, abs=0.05)


def test_faces_are_equally_hard(drawn, unit):
    rounds = Counter()
    for given in (one.face for one in drawn[:60]):
        fastening = joint.Fastening.of(unit, given.group)
        face = face_like(fastening, given.joint_share)
        target = fastening.bounds(torque=Q(given.torque_nm, "N*m")).typical
        order = [bolt - 1 for bolt in given.order]
        done = joint.tighten(face, [joint.Round.of(order, target)] * 4)
        first = np.sort(done.rounds_n[0])
        assert first[1] - first[0] > 150
        assert np.min(np.abs(done.spreads - given.limit)) > 0.01
        rounds[joint.rounds_needed(face, order, target, given.limit)] += 1
    assert set(rounds) <= {2, 3, 4}
    assert len(rounds) >= 2


def test_the_next_bolt_is_not_a_lottery(drawn, unit):
    for given in (one.pattern for one in drawn):
        count = len(joint.Fastening.of(unit, given.seen.group).positions_m)
        assert sorted(spot.text for spot in given.seen.spots) == sorted(
            map(str, range(1, count + 1))
        )
        left = [bolt for bolt in range(1, count + 1) if bolt not in given.seen.pulled]
        apart = [
            min(min((bolt - p) % count, (p - bolt) % count) for p in given.seen.pulled)
            for bolt in left
        ]
        assert apart.count(max(apart)) <= len(left) / 4
        assert len(given.before.options) == 6


def test_stakes_lead_to_every_verdict_and_none_hangs_on_the_last_figure(drawn):
    counts = Counter()
    for given in (one.stake for one in drawn):
        holds = min(given.shear_nm, given.crush_nm_mm * given.depth_mm)
        times = holds / given.drag_nm / given.margin
        assert abs(times - 1) > 0.1
        counts["renew" if given.cracked else "leave" if times > 1 else "deeper"] += 1
    assert len(counts) == 3 and min(counts.values()) > 40


def test_a_unit_without_fits_has_the_nuts_of_the_practice_bench(unit):
    bare = unit.with_sections(fits=None)
    assert given_to(bare, "a001").stake.name.startswith("Nut of the practice")


def test_scenes_are_not_one_text_for_everybody(drawn):
    for name in SCENES:
        shown = [getattr(given.asked, name).lines for given in drawn]
        assert {len({one.id for one in lines}) for lines in shown} == {8 if name == "steps" else 4}
        assert not any("{" in one.text for lines in shown for one in lines)
        assert len({tuple(one.text for one in lines) for lines in shown}) > 0.95 * len(LEARNERS)
        assert len({one.id for lines in shown for one in lines}) == len(BANK.lists[name])


def test_each_found_thread_meets_each_stated_state(drawn):
    pairs = Counter((one.id, one.stated) for given in drawn for one in given.asked.threads)
    assert len(pairs) == len(BANK.lists["threads"]) * 3 and min(pairs.values()) > 15


def test_nuts_are_turned_every_way(drawn):
    turns = [one for given in drawn for one in given.asked.turns]
    ways = Counter((one.thread.endswith("-LH"), one.undo, one.from_behind) for one in turns)
    assert len(ways) == 8 and min(ways.values()) > 0.08 * len(turns)


def test_in_holes_the_head_the_liquid_or_the_tip_stops_the_bolt_and_clearly(drawn):
    for given in drawn:
        ends = set()
        for one in given.asked.holes:
            room = one.depth_mm - one.reach_mm
            assert one.liquid_mm < one.depth_mm
            assert room < 0 or abs(one.liquid_mm - room) >= 2
            ends.add("tip" if room < 0 else "liquid" if one.liquid_mm > room else "head")
        assert len(ends) == 3


def test_answers_of_a_question_are_equal_in_length(drawn):
    for name in ("threads", *SCENES):
        lengths = [len(one.text) for one in BANK.lists[f"{name}_answers"]]
        assert max(lengths) <= 1.25 * min(lengths)
