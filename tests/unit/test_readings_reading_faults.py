"""What learners are given in the module Reading faults backwards: own, equally hard, no answers."""

import json
import math
import re
from collections import Counter

import pytest

from twoshaft.errors import UnitFileError
from twoshaft.models import faults, shape
from twoshaft.plots.unit_scene import ScenePicture
from twoshaft.readings import draw, given_in
from twoshaft.readings.reading_faults import TASKS
from twoshaft.readings.scenes import lies_in
from twoshaft.records import labels, to_json
from twoshaft.units.sections.order import RuleKind

LEARNERS = [f"a{i:03d}" for i in range(120)]


def given_to(unit, learner, attempt=1):
    return draw("reading-faults", unit, salt="salt", learner=learner, attempt=attempt)


def observed(record):
    return {row.check: row.key for row in record}


def test_plain_data_the_same_at_every_run(unit, drawn):
    stored = json.loads(json.dumps(to_json(given_to(unit, LEARNERS[0]))))
    assert given_in("reading-faults", stored) == drawn[LEARNERS[0]]
    assert list(stored) == list(TASKS)


def test_learners_differ(drawn):
    for task in TASKS:
        kinds = {
            json.dumps(to_json(getattr(given, task)), sort_keys=True) for given in drawn.values()
        }
        assert len(kinds) >= 80, task


@pytest.mark.slow
def test_a_resit_changes_the_task_not_only_the_numbers(unit):
    for learner in LEARNERS[:4]:
        one, two = given_to(unit, learner, 1), given_to(unit, learner, 2)
        assert one.stop.found[0] != two.stop.found[0]
        scenes = [
            (*(getattr(given.stop, name)[-3:] for name in ("cases", "found")),
             given.driver.first.lines, given.cord.taken.lines)
            for given in (one, two)
        ]  # fmt: skip
        for before, after in zip(*scenes, strict=True):
            assert not {row.id for row in before} & {row.id for row in after}
        assert observed(one.explain.record) != observed(two.explain.record)
        for task in ("search", "two", "own"):
            ids = [{row.id for row in getattr(given, task).suspects} for given in (one, two)]
            assert ids[0] != ids[1], task
        assert one.count.gear != two.count.gear
        assert set(one.blind.steps) != set(two.blind.steps)


def test_letters_say_nothing_of_what_they_stand_for(drawn):
    """The same misbuild or step is another letter on another sheet."""
    for task, part in (("explain", "suspects"), ("search", "suspects"), ("two", "suspects"),
                       ("alike", "suspects"), ("own", "suspects"), ("blind", "steps")):  # fmt: skip
        letters = {}
        for given in drawn.values():
            for one in getattr(getattr(given, task), part):
                letters.setdefault(one.id, set()).add(one.letter)
        assert all(len(some) >= 3 for some in letters.values()), task


def test_every_answer_of_what_drivers_say_comes_up(drawn):
    shown = Counter(row.id for g in drawn.values() for row in g.driver.first.lines)
    assert len(shown) == 12 and min(shown.values()) > 25
    assert all(len(g.driver.first.lines) == 5 for g in drawn.values())


def test_one_thing_is_wrong_in_each_opened_unit_and_its_letter_stands_there(unit, drawn):
    wrongs, letters = Counter(), Counter()
    for given in drawn.values():
        kinds = []
        for one in given.opened.units:
            view, scene = one.scene.view, one.scene
            wrong = shape.what_is_wrong(unit, view, lies_in(scene))
            (kind,) = set(wrong.values())
            at = {spot.id for spot in scene.spots if spot.text in wrong}
            seen = shape.places_seen(unit, view)
            at |= {place.letter for place in one.open for part in wrong if part in seen
                   and math.dist((place.z_mm, place.height_mm), seen[part]) < 1}  # fmt: skip
            assert 1 <= len(at) <= 2 and len(scene.spots) + len(one.open) == 10
            assert (kind == "missing") == (not at & {spot.id for spot in scene.spots})
            kinds.append(kind)
            wrongs[kind, next(iter(wrong))] += 1
            letters.update(at)
        assert len(set(kinds)) == 2
    assert len(wrongs) >= 30 and max(wrongs.values()) < 30
    assert {kind for kind, _ in wrongs} == {"turned", "missing", "off"}
    assert set(letters) == set("ABCDEFGHIJ") and max(letters.values()) < 2 * min(letters.values())


def test_neither_picture_nor_words_of_an_opened_unit_tell_what_is_wrong(unit, drawn):
    for given in list(drawn.values())[:12]:
        for one in given.opened.units:
            picture = ScenePicture(unit, one.scene, one.open, one.window_mm)
            marks = re.findall(r'data-mark="(\w)"', picture.svg)
            assert sorted(marks) == list("ABCDEFGHIJ") == [letter for letter, _ in picture.spots]
            assert len(picture.svg) < 300_000
            assert not any(part.id in picture.svg for part in unit.parts if "-" in part.id)
            felt = dict(picture.spots)
            told = {felt[place.letter].partition(",")[0] for place in one.open}
            assert told == {"nothing that a finger meets"}


def test_at_least_one_of_six_explains_the_record_and_one_does_not(unit, drawn):
    rights = Counter()
    for given in drawn.values():
        task = given.explain
        offered = {one.id for one in task.suspects}
        right = offered & set(faults.explain(unit, observed(task.record)).singles)
        assert len(offered) == 6 and any(row.key != faults.PASSES for row in task.record)
        rights[len(right)] += 1
    assert set(rights) <= {1, 2, 3, 4} and rights[1] > 20 and sum(rights.values()) - rights[1] > 20


def test_a_search_has_checks_that_tell_and_checks_that_do_not(unit, drawn):
    table = faults.outcome_table(unit)
    for given in drawn.values():
        task = given.search
        four = [one.id for one in task.suspects]
        shown = {c.id: {table.outcome((m,), c.id).key for m in four} for c in task.checks}
        assert len(four) == 4 and len(shown) == 5
        assert sum(len(keys) > 1 for keys in shown.values()) == 3
        quickest = set()
        for pair, _ in task.pairs:
            one, other = pair.split("+")
            telling = [
                c for c in task.checks
                if table.outcome((one,), c.id).key != table.outcome((other,), c.id).key
            ]  # fmt: skip
            quickest.add(min(telling, key=lambda c: c.minutes).id if telling else "none")
        assert len(task.pairs) == 5 and len(quickest) >= 3


def test_findings_leave_somebody_and_one_of_them_leaves_several(unit, drawn):
    table = faults.outcome_table(unit)
    for given in drawn.values():
        task, left = given.search, []
        for one in task.findings:
            left.append([
                m.id for m in task.suspects
                if all(table.outcome((m.id,), c).passes for c in one.passed)
                and not any(table.outcome((m.id,), c).passes for c in one.failed)
            ])  # fmt: skip
        assert len(left) == 4 and all(left)
        assert sum(len(some) > 1 for some in left) == 1


def test_a_search_ends_before_its_last_check(unit, drawn):
    for given in drawn.values():
        task = given.search
        minutes = {c.id: c.minutes for c in task.checks}
        four = [(one.id,) for one in task.suspects]
        assert len({route.wrong for route in task.routes}) == 2
        for route in task.routes:
            took = faults.minutes_spent(unit, route.checks, four, (route.wrong,)).m_as("min")
            assert set(route.checks) == set(minutes)
            assert minutes[route.checks[0]] < took < sum(minutes.values())


def test_one_pair_only_explains_the_failed_checks(unit, drawn):
    table = faults.outcome_table(unit)
    passing = dict.fromkeys(table.checks, faults.PASSES)
    for given in drawn.values():
        task = given.two
        found = faults.explain(unit, passing | observed(task.record))
        offered = {one.id for one in task.suspects}
        pairs = [pair for pair in found.doubles if set(pair) <= offered]
        assert not found.singles and len(pairs) == 1 and len(offered) == 6
        for row in task.record:
            assert sum(table.outcome((one,), row.check).key == row.key for one in pairs[0]) == 1


def test_one_several_and_two_come_up_on_every_sheet(unit, drawn):
    table = faults.outcome_table(unit)
    passing = dict.fromkeys(table.checks, faults.PASSES)
    for given in drawn.values():
        how = Counter()
        for one in given.two.units:
            singles = faults.explain(unit, passing | observed(one.record)).singles
            how[min(len(singles), 2)] += 1
            assert one.record
        assert set(how) == {0, 1, 2} and sum(how.values()) == 4


def test_pairs_are_told_by_checks_of_today_by_others_and_by_none(unit, drawn):
    table = faults.outcome_table(unit)
    groups = faults.indistinguishable(unit)
    silent = {one for g in groups if g.silent for one in g.misbuilds}
    for given in drawn.values():
        today, how = {one.id for one in given.alike.today}, Counter()
        for pair, _ in given.alike.pairs:
            one, other = pair.split("+")
            telling = {
                c for c in table.checks if table.outcome((one,), c) != table.outcome((other,), c)
            }
            how["today" if telling & today else "another" if telling else "no"] += 1
        assert len(how) == 3 and sum(how.values()) == 4 and len(today) == 4
        asked = set(labels(given.alike.asked))
        assert len(asked) == 4 and len(asked & silent) == 2


def test_counts_are_right_of_one_wheel_and_of_another_gear(drawn):
    sheets = set()
    for given in drawn.values():
        c = given.count
        total = 1.0
        for row in c.wheels:
            total *= row.driven / row.driving
        cases = Counter()
        for one in c.counts:
            off = [abs(one.seen - part * total * one.turns) for part in (1, 0.5)]
            near = [way for way, by in zip(("right", "held"), off, strict=True) if by < c.step]
            assert near or min(off) >= 3 * c.step
            cases[near[0] if near else "wheel"] += 1
        assert len(cases) == 3 and sum(cases.values()) == 4
        sheets.add(tuple(c.wheels))
    assert len(sheets) > 100


def test_pulls_come_up_evenly_and_lie_clear(drawn):
    own = Counter()
    for given in drawn.values():
        c, said = given.cord, []
        for one in c.readings:
            rest = one.shown_n - one.alone_n
            near = min(abs(rest - c.low_n), abs(rest - c.high_n))
            assert abs(near - c.doubt_n) >= 0.5
            said.append(
                "again" if near < c.doubt_n
                else "light" if rest < c.low_n else "heavy" if rest > c.high_n else "inside"
            )  # fmt: skip
        assert len(said) == 4 and len(set(said)) >= 3
        own[said[0]] += 1
    assert len(own) == 4 and min(own.values()) > 15


def test_own_units_are_explained_by_one_diagnosis_of_nine(unit, drawn):
    forms = Counter()
    for given in drawn.values():
        task = given.own
        found = faults.explain(unit, observed(task.record))
        letter = {one.id: one.letter for one in task.suspects}
        fewest = min(len(one) for one in found.least)
        least = [one for one in found.least if len(one) == fewest and set(one) <= set(letter)]
        form = "two" if fewest == 2 else "alike" if len(least) > 1 else "one"
        right = "".join(sorted(letter[m] for one in least for m in one))
        assert f"{form}-{right}" in labels(task.says)
        assert len(task.says) == 9 and len(letter) == 7
        assert Counter(id.partition("-")[0] for id, _ in task.says) == dict(one=3, two=3, alike=3)
        forms[form] += 1
    assert len(forms) == 3 and min(forms.values()) > 20


def test_pairs_of_steps_break_a_rule_or_keep_it(unit, drawn):
    rules = {(r.earlier, r.later) for r in unit.rules if r.kind is RuleKind.BLINDS}
    states = Counter()
    for given in drawn.values():
        finals = {op for check in unit.faults.checks for op in check.operations}
        mine = set()
        for one in given.blind.done:
            if (one.first, one.second) in rules:
                mine.add("none")
            else:
                assert (one.second, one.first) in rules
                mine.add("first" if one.first in finals else "second")
            assert len({one.first, one.second} & finals) == 1
        assert len(given.blind.done) == 4 and len(mine) > 1
        states.update(mine)
    assert set(states) == {"none", "first", "second"} and min(states.values()) > 30


def test_a_unit_without_faults_is_told(unit):
    with pytest.raises(UnitFileError, match="no section 'faults'"):
        given_to(unit.with_sections(faults=None), "a")


def test_a_unit_with_too_few_misbuilds_is_told(unit):
    few = unit.faults.model_copy(update={"misbuilds": unit.faults.misbuilds[:2]})
    with pytest.raises(UnitFileError, match="too few assembly faults or checks"):
        given_to(unit.with_sections(faults=few), "a")
