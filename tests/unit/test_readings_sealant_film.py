"""What learners are given in the module Sealant film: their own, equally hard, without answers."""

import json
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
from twoshaft.readings import draw
from twoshaft.readings.sealant_film import TASKS
from twoshaft.records import to_json
from twoshaft.units import load_unit, shipped_units
from twoshaft.units.quantities import Q

pytestmark = [pytest.mark.slow, pytest.mark.timeout(300)]

LEARNERS = [f"a{i:03d}" for i in range(200)]
DEEP = LEARNERS[:25]
"""Learners whose films are closed again here; a closing takes longer than a draw of the rest."""


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
    assert first.prepare.scene.id != second.prepare.scene.id
    assert first.after.mishap.id != second.after.mishap.id
    assert first.holes.scene.id != second.holes.scene.id
    assert first.lay.face != second.lay.face
    assert first.fault.face != second.fault.face


@pytest.mark.parametrize("id", shipped_units())
def test_every_unit_that_ships_has_enough(id):
    for attempt in (0, 1, 5):
        assert list(to_json(given_to(load_unit(id), "someone", attempt))) == list(TASKS)


def test_a_unit_without_faces_says_so(unit):
    with pytest.raises(UnitFileError, match="no section 'faces'"):
        given_to(unit.with_sections(faces=None), "someone")


def test_preparing_and_joints_are_equally_hard(unit, drawn):
    slow, quick = (unit.faces.sealant_by_id(i) for i in ("metal-face-sealant", "case-sealant"))
    kinds = Counter()
    for given in drawn.values():
        assert len(given.prepare.options) == 8
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


def test_clocks_keep_clear_of_the_limit_and_both_verdicts_occur(drawn):
    late = Counter()
    for given in drawn.values():
        age, limit = given.clock.age_minutes, given.clock.limit_minutes
        assert abs(age - limit) >= 1.5
        late[age > limit] += 1
    assert 0.35 < late[True] / len(drawn) < 0.65


def test_holes_have_three_leaks_among_eight(unit, drawn):
    for learner in DEEP:
        holes = drawn[learner].holes
        face = Work.of(unit, holes.job).face
        sides = {id: Side(side) for id, side in holes.sides.items()}
        leaks = leaking_holes(Land.of(face), sides, Q(holes.pressed_mm, "mm"))
        shown = {id for id, _ in holes.options}
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


def test_faces_and_faults_are_dealt_evenly(drawn):
    for pick in (
        lambda given: given.lay.face,
        lambda given: given.fault.face,
        lambda given: given.after.sealant,
        lambda given: given.prepare.scene.id,
        lambda given: given.after.mishap.id,
    ):
        counts = Counter(pick(given) for given in drawn.values())
        assert min(counts.values()) > 0.5 * statistics.mean(counts.values())


def test_options_hold_no_hint_of_the_answer(drawn):
    first = Counter(given.prepare.scene.options[0].id for given in drawn.values())
    assert len(first) > 15
