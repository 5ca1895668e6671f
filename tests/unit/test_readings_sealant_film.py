"""What learners are given in the module Sealant film: their own, equally hard, without answers."""

import json
import re
import statistics
from collections import Counter

import pytest

from twoshaft.errors import UnitFileError
from twoshaft.jobsheet.film_entries import read_entries
from twoshaft.models.film import (
    Hand,
    Land,
    Side,
    Work,
    bars,
    bead_to_film,
    half_round,
    leaking_holes,
    surplus,
)
from twoshaft.questions import bank_of
from twoshaft.readings import draw, whole_units
from twoshaft.readings.sealant_film import TASKS
from twoshaft.readings.sealant_film.amounts import bead_parts, trials_on
from twoshaft.readings.sealant_film.questions import SOON_HOURS
from twoshaft.records import changed, to_json
from twoshaft.units import load_unit
from twoshaft.units.quantities import Q

pytestmark = [pytest.mark.slow, pytest.mark.timeout(300)]

LEARNERS = [f"a{i:03d}" for i in range(200)]
DEEP = LEARNERS[:25]
"""Learners whose films are closed again here; a closing takes longer than a draw of the rest."""


SCENES = {
    "face": lambda given: given.prepare.face,
    "danger": lambda given: given.prepare.danger,
    "blind": lambda given: given.holes.blind,
    "mishap": lambda given: given.after.mishap,
}


def ids(scenes):
    return {line.id for line in scenes.lines}


def given_to(unit, learner, attempt=1):
    return draw("sealant-film", unit, salt="salt", learner=learner, attempt=attempt)


def test_plain_data_the_same_at_every_run(unit, drawn):
    again = to_json(given_to(unit, LEARNERS[0]))
    assert again == to_json(drawn[LEARNERS[0]])
    assert list(again) == list(TASKS)


@pytest.mark.parametrize("task", TASKS)
def test_learners_have_tasks_of_their_own(drawn, task):
    different = {
        json.dumps(to_json(getattr(given, task)), sort_keys=True) for given in drawn.values()
    }
    assert len(different) > 150


@pytest.mark.parametrize("learner", LEARNERS[:6])
def test_a_resit_changes_the_task_not_only_numbers(unit, learner):
    first, second = given_to(unit, learner), given_to(unit, learner, attempt=2)
    for pick in SCENES.values():
        assert not ids(pick(first)) & ids(pick(second))
    assert first.lay.face != second.lay.face
    assert first.fault.face != second.fault.face


@pytest.mark.parametrize("id", whole_units())
def test_every_unit_that_ships_has_enough(id):
    for attempt in (0, 1, 5):
        assert list(to_json(given_to(load_unit(id), "someone", attempt))) == list(TASKS)


def test_a_unit_without_faces_says_so(unit):
    with pytest.raises(UnitFileError, match="no section 'faces'"):
        given_to(unit.with_sections(faces=None), "someone")


def test_joints_are_equally_hard(unit, drawn):
    slow, quick = (unit.faces.sealant_by_id(i) for i in ("metal-face-sealant", "case-sealant"))
    kinds = Counter()
    for given in drawn.values():
        assert len({joint.text for joint in given.joints.joints}) == 4
        for joint in given.joints.joints:
            asked = {
                "gap": Q(joint.gap_mm, "mm"),
                "minutes": joint.minutes,
                "rigid": joint.rigid,
            }
            against, other = bars(slow, **asked), bars(quick, **asked)
            # One reason, and only one, decides.
            assert len(against) <= 1 and len(other) <= 1
            kinds[against, other] += 1
    assert len(kinds) == 5 and min(kinds.values()) > 60


def test_beads_keep_clear_of_the_limit_and_both_verdicts_occur(drawn):
    verdicts = Counter()
    for given in drawn.values():
        bead = given.bead
        width, gap, along = (Q(mm, "mm") for mm in (bead.width_mm, bead.gap_mm, bead.along_mm))
        film = bead_to_film(Q(bead.diameter_mm, "mm"), width)
        lump = half_round(surplus(film, gap, width, along) / 2, along).m_as("mm")
        assert film > 1.2 * gap
        assert abs(lump / bead.bound_mm - 1) > 0.08
        verdicts[lump > bead.bound_mm] += 1
    assert 0.35 < verdicts[True] / len(drawn) < 0.65


def test_trial_beads_keep_clear_of_the_limits_and_none_is_the_own_one(drawn):
    does = Counter()
    for given in drawn.values():
        bead = given.bead
        assert len({bead.diameter_mm, *bead.trials_mm}) == 4
        for size, text in zip(bead.trials_mm, bead.trials, strict=True):
            film, lump = bead_parts(bead, size)
            assert abs(film - 1) > 0.05 and abs(lump - 1) > 0.05
            # Rounded as it is told, it says the same.
            told = [float(mm) for mm in re.findall(r"of (\d\.\d+) mm", text)]
            assert (told[0] < bead.gap_mm, told[1] > bead.bound_mm) == (film < 1, lump > 1)
            does["thin" if film < 1 else "fat" if lump > 1 else "fits"] += 1
    assert min(does.values()) > 0.5 * statistics.mean(does.values())


def test_beads_of_ones_own_bench_do_what_the_drawn_ones_did(drawn):
    for given in drawn.values():
        old = given.bead
        new = changed(old, width_mm=1.2 * old.width_mm, gap_mm=0.9 * old.gap_mm)
        for was, now in zip(old.trials_mm, trials_on(new, old), strict=True):
            before, after = bead_parts(old, was), bead_parts(new, now)
            assert [part < 1 for part in before] == [part < 1 for part in after]


def test_clocks_keep_clear_of_the_limit_and_both_verdicts_occur(drawn):
    late, films = Counter(), Counter()
    for given in drawn.values():
        age, limit = given.clock.age_minutes, given.clock.limit_minutes
        assert abs(age - limit) >= 1.5
        late[age > limit] += 1
        others = given.clock.others
        assert all(abs(one.age_minutes - one.limit) >= 2 for one in others)
        do = {(one.laid, one.age_minutes > one.limit) for one in others}
        # One is in time and one must not be begun, so that no answer does for every film.
        assert (False, True) in do and {(False, False), (True, False)} & do
        films.update("go" if one.age_minutes <= one.limit else one.laid for one in others)
    assert 0.35 < late[True] / len(drawn) < 0.65
    assert min(films.values()) > 0.15 * sum(films.values())


def test_holes_have_three_leaks_among_eight(unit, drawn):
    for learner in DEEP:
        holes = drawn[learner].holes
        face = Work.of(unit, holes.job).face
        sides = {id: Side(side) for id, side in holes.sides.items()}
        leaks = leaking_holes(Land.of(face), sides, Q(holes.pressed_mm, "mm"))
        shown = {hole.id for hole in holes.rows}
        assert len(shown) == 8 and len(leaks) == 3 and set(leaks) <= shown
        tight = {(sides[id], id in holes.open_holes) for id in shown - set(leaks)}
        assert {(Side.OUTSIDE, False), (Side.INSIDE, True), (Side.ROUND, True)} <= tight


def test_films_to_lay_can_be_laid_and_wiping_size_and_time_matter(unit, drawn):
    hands = Counter()
    for learner in DEEP:
        work = Work.of(unit, drawn[learner].lay.job)
        passes = work.good_passes()
        hands[passes[-1].hand] += 1
        assert work.close(passes).good
        assert work.close([p for p in passes if p.hand is not Hand.WIPE]).leaks
        assert work.close(work.everywhere(Hand.FILM, 0.02)).leaks
        assert not work.close([*work.wiping, *work.everywhere(Hand.BEAD, 3.0)]).good
        assert drawn[learner].lay.gap_mm == pytest.approx(max(work.gap_mm.values()), abs=2e-3)
    assert min(hands[Hand.FILM], hands[Hand.BEAD]) >= 5


def test_faulty_films_have_one_leak_and_one_lump(unit, drawn):
    for learner in DEEP:
        fault = drawn[learner].fault
        work = Work.of(unit, fault.job)
        film = work.lay(read_entries(fault.entries, work.face), fault.minutes_laid)
        closed = work.close_film(film, fault.closed_minute)
        assert len(closed.leaks) == 1
        lumpy = {place for _, place in closed.endangered}
        assert len(lumpy) == 1 and closed.leaks[0][0] not in lumpy
        # Another stretch has just as much on it, where it harms nobody.
        laid = [row.film for row in fault.rows]
        (row,) = [row for row in fault.rows if row.stretch in lumpy]
        assert laid.count(row.film) >= 2
        asked = {stretch.id for stretch in fault.asked}
        same = {one.stretch for one in fault.rows if one.film == row.film}
        assert len(asked) == 4 and {closed.leaks[0][0], *same} <= asked


def test_faces_and_faults_are_dealt_evenly(drawn):
    for pick in (
        lambda given: given.lay.face,
        lambda given: given.fault.face,
        lambda given: given.after.sealant,
    ):
        counts = Counter(pick(given) for given in drawn.values())
        assert min(counts.values()) > 0.5 * statistics.mean(counts.values())


@pytest.mark.parametrize("name", SCENES)
def test_scenes_are_dealt_evenly_and_filled_with_figures_of_ones_own(drawn, name):
    counts, texts = Counter(), Counter()
    for given in drawn.values():
        scenes = SCENES[name](given)
        assert len(ids(scenes)) == 4 and not any("{" in line.text for line in scenes.lines)
        counts.update(ids(scenes))
        texts.update(line.text for line in scenes.lines)
    every = bank_of("sealant-film").lists[name]
    assert set(counts) == {one.id for one in every}
    assert min(counts.values()) > 0.5 * statistics.mean(counts.values())
    # What was right for one learner is hardly ever asked of another in the same words.
    assert statistics.mean(texts[text] for text in texts) < 4


def test_what_waits_for_oil_is_clear_and_no_answer_does_for_every_case(drawn):
    when = Counter()
    for given in drawn.values():
        cases = [given.after, *given.after.others]
        left = [case.needed_hours - case.waited_hours for case in cases]
        assert all(min(abs(hours), abs(hours - SOON_HOURS)) >= 1 for hours in left)
        says = ["now" if h <= 0 else "soon" if h <= SOON_HOURS else "later" for h in left]
        assert len(set(says)) == 3
        when.update(says)
    assert min(when.values()) > 0.7 * statistics.mean(when.values())


def test_figures_of_a_scene_stand_on_the_side_that_decides(drawn):
    """Two scenes that look alike differ in the figure alone, and it is clear of its limit."""
    figure = re.compile(r"(\d+(?:\.\d+)?) mm")
    lower = {"even", "shallow"}
    seen = Counter()
    for given in drawn.values():
        for line in given.prepare.face.lines:
            if line.id in {*lower, "bowed", "score"}:
                found, limit = map(float, figure.findall(line.text))
                assert (found < limit) == (line.id in lower)
                seen[line.id] += 1
    assert len(seen) == 4
