"""What learners are given in Shims and preload: their own, equally hard, without answers."""

import json

import pytest

from twoshaft.errors import UnitFileError
from twoshaft.models.bearing import Pair
from twoshaft.models.shim import Stack, shim_sign, target_interference
from twoshaft.readings import draw, given_in, whole_units
from twoshaft.readings.shims_and_preload.lot import sign_of, verdicts
from twoshaft.records import to_json
from twoshaft.units import load_unit
from twoshaft.units.quantities import Q

LEARNERS = [f"a{i:03d}" for i in range(200)]
TASKS = ["signs", "stack", "shelf", "trial", "doubt", "cord", "warm", "life", "bench"]
NUMBERS = ["stack", "shelf", "trial", "doubt", "cord", "warm", "life"]


def given_to(unit, learner, attempt=1):
    return draw("shims-and-preload", unit, salt="salt", learner=learner, attempt=attempt)


def window(unit, task):
    support = unit.bearings.support_by_id(task.support)
    lengths = {term: Q(mm, "mm") for term, mm in task.lengths.items()}
    thin, thick = Stack.from_support(support, lengths).window(*target_interference(support))
    return thin, thick, task.doubt_mm


def test_plain_data_the_same_at_every_run(unit, drawn):
    again = json.loads(json.dumps(to_json(given_to(unit, LEARNERS[0]))))
    assert again == to_json(drawn[LEARNERS[0]]) and list(again) == TASKS
    assert given_in("shims-and-preload", again) == drawn[LEARNERS[0]]


@pytest.mark.parametrize("task", NUMBERS)
def test_every_learner_has_another_task(drawn, task):
    different = {json.dumps(to_json(getattr(given, task))) for given in drawn.values()}
    assert len(different) > 0.9 * len(LEARNERS)


@pytest.mark.slow
def test_a_resit_changes_the_task_not_only_the_numbers(unit):
    for learner in LEARNERS[:12]:
        first, second = (given_to(unit, learner, attempt) for attempt in (1, 2))
        for task in ("stack", "trial", "cord", "life"):
            assert getattr(first, task).support != getattr(second, task).support
        assert first.signs.cases != second.signs.cases
        assert first.shelf.totals != second.shelf.totals
        for part in ("changed", "cautions"):
            ids = [{one.id for one in getattr(given.bench, part)} for given in (first, second)]
            assert not ids[0] & ids[1]


@pytest.mark.parametrize("shipped", whole_units())
def test_every_unit_that_ships_gives_every_task(shipped):
    assert list(to_json(given_to(load_unit(shipped), "ann"))) == TASKS


def test_a_unit_without_bearings_is_refused_in_words(unit):
    with pytest.raises(UnitFileError, match="no section 'bearings'"):
        given_to(unit.with_sections(bearings=None), "ann")


def test_signs_are_equally_hard(drawn):
    first = []
    for given in drawn.values():
        cases = given.signs.cases
        answers = [(shim_sign(a, place), "inner" in place) for _, a, place in cases]
        assert len(cases) == 4 and len(set(answers)) >= 3
        first.append(answers[0][0])
        change = given.signs.change
        before = change.amount_mm * (1 if change.kind == "preload" else -1)
        steps = round((change.after_mm - change.before_mm) * 100)
        # Read the wrong way round, the pair ends up as something else.
        assert steps and abs(before - 0.01 * steps - (before + 0.01 * steps)) > 0.05
    assert min(first.count(1), first.count(-1)) > 60


def test_other_pairs_that_warm_up_go_both_ways_and_one_stays(drawn):
    for given in drawn.values():
        changes = [one.change_um for one in given.warm.pairs]
        assert sum(abs(um) < 0.5 for um in changes) == 1 and len(changes) == 4
        assert min(changes) < -2 and max(changes) > 2
        assert all(abs(um) < 0.5 or abs(um) > 2 for um in changes)


def test_growth_of_other_pairs_is_worked_out_from_their_own_words(drawn):
    growth = {"steel": 11.5, "aluminium": 21.5}
    for given in list(drawn.values())[:60]:
        for one in given.warm.pairs:
            words = one.text.replace(".", "").replace(",", "").split()
            length, case, shaft = (int(word) for word in words if word.isdigit())
            of = words[words.index("Case") + 2]
            wider = length * (growth[of] * case - growth["steel"] * shaft) / 1000
            tightens = wider if "held apart" in one.text else -wider
            assert one.change_um == pytest.approx(tightens, abs=0.06)


def test_preloads_of_other_units_lie_clear_of_the_limits(drawn):
    for given in drawn.values():
        task, states = given.cord, set()
        for one in task.others:
            assert all(abs(one.preload_n - n) > 0.1 * n for n in (task.low_n, task.high_n))
            states.add((one.preload_n > task.low_n) + (one.preload_n > task.high_n))
        assert len(task.others) == 3 and len(states) > 1


def test_the_shelf_of_the_stack_has_one_or_two_safe_shims_and_no_hair_splitting(unit, drawn):
    for given in drawn.values():
        task = given.stack
        thin, thick, doubt = window(unit, task)
        judged = verdicts(list(task.totals.values()), (thin, thick, doubt))
        assert judged is not None and judged.count("safe") in (1, 2)
        assert len(task.shims) == len(task.totals) == 8
        assert "misses" in judged


def test_changes_of_shim_go_both_ways_and_one_stays(drawn):
    for given in drawn.values():
        by_text = {}
        for one in given.stack.swaps:
            out, into = one.text.split(" is taken out, and put in: ")
            sizes = [float(word) for word in into.split() if word[0].isdigit()]
            assert all(size > 0.1 for size in sizes)
            by_text[one.id] = round(sum(sizes) - float(out.split()[0]), 2)
        assert by_text == {one.id: one.thicker_mm for one in given.stack.swaps}
        changes = sorted(by_text.values())
        assert changes.count(0) == 1 and changes[0] < 0 < changes[-1] and len(changes) == 4
        assert all(step == 0 or abs(step) >= 0.04 for step in changes)


def test_scenes_are_not_one_text_for_everybody(drawn):
    for shown in (
        [given.bench.changed for given in drawn.values()],
        [given.bench.cautions for given in drawn.values()],
        [given.warm.temperatures for given in drawn.values()],
        [given.shelf.may.lines for given in drawn.values()],
        [given.trial.before.lines for given in drawn.values()],
        [given.life.seen.lines for given in drawn.values()],
    ):
        assert all(len({one.id for one in lines}) == 4 for lines in shown)
        assert not any("{" in one.text for lines in shown for one in lines)
        assert len({tuple(one.text for one in lines) for lines in shown}) > 0.9 * len(LEARNERS)


def test_figures_of_a_changed_shim_rise_as_the_scenes_need_them(drawn):
    for given in drawn.values():
        for one in given.bench.changed:
            figures = [float(word.strip(".,;:")) for word in one.text.split() if word[0].isdigit()]
            if one.id in ("float-met", "cord-met"):
                low, high = sorted(figures)[0], sorted(figures)[-1]
                inside = figures[2] if one.id == "float-met" else figures[0]
                assert low < inside < high
            elif one.id in ("float-over", "cord-over"):
                seen = figures[2] if one.id == "float-over" else figures[0]
                assert seen == max(figures) and figures.count(seen) == 1
            elif one.id == "float-more":
                assert figures[0] < figures[1]


def test_the_half_empty_shelf_is_what_it_was_drawn_to_be(unit, drawn):
    kinds = []
    for given in drawn.values():
        task = given.shelf
        judged = verdicts(list(task.totals.values()), window(unit, task), clear_of_limits=True)
        assert judged is not None and len(task.totals) == 5
        kinds.append("safe" if "safe" in judged else "meets" if "meets" in judged else "misses")
        support = unit.bearings.support_by_id(task.support)
        main = unit.bearings.support_by_id(given.stack.support)
        assert sign_of(support) != sign_of(main)
    assert all(kinds.count(kind) > 40 for kind in ("safe", "meets", "misses"))


def test_a_trial_leaves_float_to_read_on_one_turn_of_the_dial(unit, drawn):
    for given in drawn.values():
        task = given.trial
        support = unit.bearings.support_by_id(task.support)
        lengths = {term: Q(mm, "mm") for term, mm in task.lengths.items()}
        stack = Stack.from_support(support, lengths)
        end_float = -stack.interference(Q(task.trial_mm, "mm")).m_as("mm")
        assert 0.14 <= round(end_float, 6) <= 0.36


def test_doubts_have_one_largest_and_clear_decisions(drawn):
    for given in drawn.values():
        sizes = sorted(one.doubt_um for one in given.doubt.sources)
        assert len(sizes) == 4 and sizes[-1] >= 1.3 * sizes[-2]
        expanded = 2 * sum(um**2 for um in sizes) ** 0.5 / 1000
        inside = given.doubt.inside_mm.values()
        assert 2 <= sum(mm > expanded for mm in inside) <= 3
        assert all(abs(mm - expanded) > 0.15 * expanded for mm in inside)


def test_a_cord_is_never_read_near_a_limit(unit, drawn):
    states = []
    for given in drawn.values():
        task = given.cord
        support = unit.bearings.support_by_id(task.support)
        pair = Pair.from_support(support, unit.bearings)
        preload = pair.preload(Q(task.setting_mm, "mm")).m_as("N")
        for limit in (task.low_n, task.high_n):
            assert abs(preload - limit) > 0.1 * limit
        states.append((preload > task.low_n) + (preload > task.high_n))
    assert all(states.count(state) > 40 for state in range(3))


def test_life_is_compared_past_its_best(drawn):
    for given in drawn.values():
        hours = {at.setting_mm: at.life_h for at in given.life.table}
        first, second = hours[given.life.from_mm], hours[given.life.to_mm]
        assert first == max(hours.values()) and first / second > 1.5


def test_heat_moves_the_setting_by_more_than_the_arithmetic(drawn):
    for given in drawn.values():
        task = given.warm
        growths = [round(mm * um * k / 1000, 3) for _, mm, um, k in task.spans]
        assert all(10 < um < 400 for um in growths)
        assert len(task.across) == 3


def test_the_shim_of_a_pair_is_asked_for_in_the_unit_with_letters_of_ones_own(drawn):
    pairs, letters = set(), set()
    for given in drawn.values():
        scene = given.signs.where.near.scene
        assert [spot.id for spot in scene.spots] == list("ABCDEFGHIJ")
        (shim,) = {"diff-shim", "output-shim"} & {spot.text for spot in scene.spots}
        letters.add((scene.letter(shim), scene.mirrored, scene.upside))
        pairs.add(given.signs.where.name)
    assert len(pairs) == 2 and len(letters) >= 30
