"""Readings of "Measuring and tools": own, repeatable, equally hard, no decision on an edge."""

import json
from collections import Counter

import pytest

from twoshaft.models import gauges
from twoshaft.models.shim import Measured, normal, propagate, resolution
from twoshaft.readings import draw
from twoshaft.readings.measuring_and_tools.wrench import UNITS, at_bolt, setting_of, tools_of
from twoshaft.records import to_json
from twoshaft.units.quantities import Q

MODULE = "measuring-and-tools"
LEARNERS = 200


@pytest.fixture(scope="module")
def lots(unit):
    return [drawn(unit, f"l{n}") for n in range(LEARNERS)]


def drawn(unit, learner, attempt=1):
    return draw(MODULE, unit, salt="hard", learner=learner, attempt=attempt)


def mm(value):
    return Q(value, "mm")


def test_the_same_at_every_run_and_plain_data(unit):
    first, again = drawn(unit, "ann"), drawn(unit, "ann")
    assert first == again
    assert to_json(first) == json.loads(json.dumps(to_json(again)))
    assert first != drawn(unit, "bob")


@pytest.mark.slow
def test_a_resit_changes_the_task_not_only_the_numbers(unit):
    for n in range(20):
        one, two = drawn(unit, f"l{n}"), drawn(unit, f"l{n}", attempt=2)
        assert one.micrometer.part != two.micrometer.part
        assert not {d.id for d in one.care.dangers} & {d.id for d in two.care.dangers}
        for asked in (
            lambda lot: lot.care.kept,
            lambda lot: lot.micrometer.zeros,
            lambda lot: lot.pull.pulls,
        ):
            assert not {d.id for d in asked(one).lines} & {d.id for d in asked(two).lines}
        assert one.pull.name != two.pull.name
        assert {j.high_mm - j.low_mm for j in one.choose.jobs} != {
            j.high_mm - j.low_mm for j in two.choose.jobs
        }


def test_every_micrometer_hides_a_half_turn_and_a_zero(lots):
    screw = gauges.Screw()
    for lot in lots:
        tool = lot.micrometer
        turns, line = screw.marks(mm(round(tool.part_mm + tool.zero_mm, 2)))
        assert turns % 2 == 1 and 6 <= line <= 44
        assert abs(tool.zero_mm) >= 0.02
        assert screw.marks(mm(tool.part_mm))[0] == turns


def test_every_depth_lies_on_a_line_of_the_vernier(lots):
    vernier = gauges.Vernier()
    for lot in lots:
        shown = lot.depth.depth_mm + lot.depth.zero_mm
        assert vernier.reading(*vernier.marks(mm(shown))).m == pytest.approx(shown, abs=1e-9)
        assert 5 <= vernier.marks(mm(shown))[1] <= 14


def test_one_reading_of_six_does_not_belong_and_the_others_do(lots):
    for lot in lots:
        read = lot.repeats.readings_mm
        odd = gauges.stray(read)
        assert odd is not None
        assert gauges.stray(read[:odd] + read[odd + 1 :]) is None
    places = Counter(gauges.stray(lot.repeats.readings_mm) for lot in lots)
    assert min(places[k] for k in range(6)) > LEARNERS / 6 / 2.5


def test_no_tolerance_stands_on_the_edge_of_the_rule(lots):
    for lot in lots:
        for job in lot.choose.jobs:
            for tool in lot.choose.tools:
                if job.kind in tool.kinds:
                    assert not 0.85 < (job.high_mm - job.low_mm) / (10 * tool.step_mm) < 1.15
    nobody = sum(rightly_none(lot) > 0 for lot in lots)
    assert LEARNERS / 5 < nobody < LEARNERS


def rightly_none(lot):
    return sum(
        not any(
            job.kind in tool.kinds
            and gauges.tells(mm(tool.step_mm), mm(job.high_mm) - mm(job.low_mm))
            for tool in lot.choose.tools
        )
        for job in lot.choose.jobs
    )


def test_each_verdict_on_the_dial_is_as_likely_and_none_hangs_on_a_line(lots):
    seen = Counter()
    for lot in lots:
        dial = lot.dial
        found = {
            gauges.verdict(mm(2 * dial.off_mm + off), mm(-1), mm(dial.limit_mm), mm(dial.doubt_mm))
            for off in (-0.004, 0.0, 0.004)
        }
        assert len(found) == 1
        seen.update(found)
    assert all(count > LEARNERS / 5 for count in seen.values()) and len(seen) == 3


def test_what_the_wrench_allows_is_clear_either_way(unit, lots):
    tools = tools_of(unit)
    seen = Counter()
    for lot in lots:
        card = lot.wrench
        torque = Q(card.figure, UNITS[card.unit][0]).to("N*m")
        (tool,) = [t for t in tools.values() if t.suits(torque) and _fits(t, torque, card)]
        setting = setting_of(tool, torque, card.reach_mm, card.angle_deg)
        least, most = (end.m for end in at_bolt(tool, setting, card.reach_mm, card.angle_deg))
        slack = 0.006 * torque.m
        sure = card.low_nm <= least - slack and most + slack <= card.high_nm
        never = card.low_nm > least + slack or most - slack > card.high_nm
        assert sure or never
        seen[sure] += 1
    assert min(seen.values()) > 0.35 * LEARNERS


def _fits(tool, torque, card):
    setting = setting_of(tool, torque, card.reach_mm, card.angle_deg)
    return setting is not None and tool.suits(setting)


def test_claims_keep_off_the_edges(lots):
    claims = Counter()
    for lot in lots:
        said = lot.claims
        sources = (resolution("step", said.step_mm), normal("tool", said.certificate_mm),
                   normal("scatter", said.sd_mm, k=said.count ** 0.5))  # fmt: skip
        doubt = 2 * propagate(lambda x: x, [Measured("size", 1.0, sources)]).u
        found = [
            {
                gauges.verdict(mm(x), mm(said.low_mm), mm(said.high_mm), mm(f * doubt))
                for f in (0.9, 1, 1.1)
            }
            for x in said.means_mm
        ]
        assert all(len(one) == 1 for one in found)
        claims.update(one.pop() for one in found)
    assert sum(claims.values()) == 4 * LEARNERS
    assert claims["inside"] > 0.12 * 4 * LEARNERS
    assert min(claims["outside"], claims["unsure"]) > 0.3 * 4 * LEARNERS


def test_other_totals_torques_and_windows_are_spread_and_clear(unit, lots):
    tools, verdicts, suited, ends = tools_of(unit).values(), Counter(), Counter(), Counter()
    for lot in lots:
        for one in lot.dial.others:
            apart = abs(one.total_mm - one.limit_mm) / one.doubt_mm
            assert apart < 0.9 or apart > 1.1
            verdicts["unsure" if apart < 1 else one.total_mm < one.limit_mm] += 1
        for torque in lot.wrench.others_nm:
            for tool in tools:
                for end in (tool.usable_from_nm, tool.high_nm):
                    assert not 0.95 < torque / end < 1.05
            suited[sum(tool.suits(Q(torque, "N*m")) for tool in tools)] += 1
        for one in lot.wrench.windows:
            inside = one.low_nm <= one.least_nm and one.most_nm <= one.high_nm
            ends[inside, one.least_nm > one.high_nm or one.most_nm < one.low_nm] += 1
    assert all(0.25 < n / (3 * LEARNERS) < 0.42 for n in verdicts.values()) and len(verdicts) == 3
    assert all(0.25 < n / (3 * LEARNERS) < 0.42 for n in ends.values()) and len(ends) == 3
    assert 0.1 < suited[0] / (3 * LEARNERS) < 0.45
