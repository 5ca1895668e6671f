"""What learners are given in Gear train and checks: their own, equally hard, without answers."""

import json
import statistics
from fractions import Fraction
from types import SimpleNamespace

import pytest

from twoshaft.errors import UnitFileError
from twoshaft.models import geartrain
from twoshaft.models.order import OrderTask, chance_r0
from twoshaft.readings import draw, given_in
from twoshaft.readings.gear_train_and_checks import TASKS
from twoshaft.readings.gear_train_and_checks.lot import BANK
from twoshaft.records import labels, to_json
from twoshaft.units.quantities import Q

LEARNERS = [f"a{i:03d}" for i in range(60)]
SCENES = {
    "lock_first": lambda given: given.lock.first,
    "when": lambda given: given.play.when,
    "fit": lambda given: given.cone.fit,
    "hands": lambda given: given.hands,
}
ONE = "one output, the other held"


def given_to(unit, learner, attempt=1):
    return draw("gear-train-and-checks", unit, salt="salt", learner=learner, attempt=attempt)


@pytest.fixture(scope="module")
def drawn(unit):
    # The order of the last checks takes most of the time; forty lists say enough about it.
    few = {learner: given_to(unit, learner) for learner in LEARNERS[:40]}
    from twoshaft.readings.gear_train_and_checks import MODULE
    from twoshaft.readings.gear_train_and_checks.lot import Lot

    rest = {}
    for learner in LEARNERS[40:]:
        lot = Lot.of(unit, MODULE, "salt", learner, 1)
        rest[learner] = SimpleNamespace(
            **{name: task(lot) for name, task in TASKS.items() if name != "final"}
        )
    return few | rest


def test_plain_data_the_same_at_every_run(unit, drawn):
    stored = json.loads(json.dumps(to_json(given_to(unit, LEARNERS[0]))))
    assert given_in("gear-train-and-checks", stored) == drawn[LEARNERS[0]]
    assert list(stored) == list(TASKS)


@pytest.mark.parametrize("task", [t for t in TASKS if t not in ("which", "hands")])
def test_learners_have_tasks_of_their_own(drawn, task):
    those = [getattr(given, task) for given in drawn.values() if hasattr(given, task)]
    different = {json.dumps(to_json(one), sort_keys=True) for one in those}
    assert len(different) > 0.9 * len(those)


def test_all_gears_and_all_situations_are_used(unit, drawn):
    inside = {given.which.inside for given in drawn.values()}
    assert len(inside) == len(unit.gear_train.gears)
    for name, scenes in SCENES.items():
        ids = {one.id for given in drawn.values() for one in scenes(given).lines}
        assert ids == set(labels(BANK.lists[name]))


@pytest.mark.slow
def test_a_resit_changes_the_task_not_only_the_numbers(unit):
    for learner in LEARNERS[:6]:
        one, two = (given_to(unit, learner, attempt) for attempt in (1, 2))
        assert one.path.gear != two.path.gear
        assert one.which.inside != two.which.inside
        assert one.lock.engaged != two.lock.engaged
        assert one.final.pair != two.final.pair
        for scenes in SCENES.values():
            ids = [{line.id for line in scenes(given).lines} for given in (one, two)]
            assert not ids[0] & ids[1]


def test_every_list_of_checks_is_as_hard(unit, drawn):
    lists = [given.final.operations for given in drawn.values() if hasattr(given, "final")]
    r0 = [chance_r0(OrderTask.from_unit(unit, steps)) for steps in lists]
    assert {len(steps) for steps in lists} == {12}
    assert min(r0) >= 3 and max(r0) - min(r0) <= 1.5 and statistics.pstdev(r0) < 0.4


def test_every_task_has_the_same_shape(drawn):
    for given in drawn.values():
        assert len(given.apart.readings) == 4 and len(given.lock.pairs) == 6
        assert len(given.lock.cards.sets) == 5 and len(given.path.chains) == 5
        assert all(len(scenes(given).lines) == 4 for scenes in SCENES.values())


def test_scenes_are_not_one_text_for_everybody(drawn):
    for scenes in SCENES.values():
        shown = [scenes(given).lines for given in drawn.values()]
        assert not any("{" in one.text for lines in shown for one in lines)
        assert len({tuple(one.text for one in lines) for lines in shown}) > 0.95 * len(LEARNERS)


def test_answers_of_a_question_are_equal_in_length():
    for name in ("decide", *(f"{name}_answers" for name in SCENES)):
        lengths = [len(one.text) for one in BANK.lists[name]]
        assert max(lengths) <= 1.25 * min(lengths)


def test_readings_fit_one_gear_or_more_or_none_and_clearly(unit, drawn):
    seen = set()
    for given in drawn.values():
        for one in given.apart.readings:
            counts = [
                float(geartrain.count_turns(
                    unit.gear_train, gear.id, one.output_turns, given.apart.counted).exact)
                for gear in unit.gear_train.gears
            ]  # fmt: skip
            misses = [abs(turns - one.input_turns) for turns in counts]
            same_way = [
                miss
                for miss, turns in zip(misses, counts, strict=True)
                if (turns > 0) == (one.input_turns > 0)
            ]
            assert all(abs(miss - one.step_turns) > 0.02 for miss in same_way)
            seen.add(min(2, sum(miss < one.step_turns for miss in same_way)))
    assert seen == {0, 1, 2}


def test_the_count_is_never_on_the_edge(unit, drawn):
    train = unit.gear_train
    for given in drawn.values():
        apart = given.apart
        how = (apart.turns, apart.counted)
        wrong = geartrain.mistaken(train, *how, apart.step_turns)
        assert 1 <= len(wrong) <= 3 and (apart.asked.one, apart.asked.other) in wrong
        for nudge in (0.99, 1.01):
            assert geartrain.mistaken(train, *how, nudge * apart.step_turns) == wrong


def test_one_pair_of_the_five_has_equal_ratios(drawn):
    for given in drawn.values():
        equal = [
            card.letter
            for card in given.lock.cards.sets
            if len({Fraction(mesh.driven, mesh.driving) for mesh in card.meshes}) == 1
        ]
        assert len(equal) == 1


def test_a_decision_on_a_ring_or_a_washer_does_not_hang_on_the_tool(unit, drawn):
    train = unit.gear_train
    section = train.differential.side_gear_play
    for given in drawn.values():
        gap = given.gap
        least = min(gap.readings_mm)
        assert abs(least - gap.ring.least_mm) > 1.5 * gap.blade_mm
        play = given.play
        read = Q(play.outwards_mm - play.inwards_mm, "mm")
        assert not section.play_mm[0] <= read.m_as("mm") <= section.play_mm[1]
        assert geartrain.right_washers(
            section, read, Q(play.fitted_mm, "mm"), Q(play.doubt_mm, "mm")
        )


def test_worn_and_sound_rings_both_come_up(unit, drawn):
    rings = {one.id: one for one in unit.gear_train.synchronisers}
    said, other = [], []
    for given in drawn.values():
        gap = given.gap
        for which, about, readings in (
            (said, gap.ring, gap.readings_mm),
            *((other, ring, ring.readings_mm) for ring in gap.others),
        ):
            mm = [Q(one, "mm") for one in readings]
            which.append(geartrain.gap_says(rings[about.id], mm, Q(gap.blade_mm, "mm")))
    assert set(said) == {"worn", "good"} and 0.3 < said.count("worn") / len(said) < 0.7
    assert set(other) == {"worn", "away", "tilted", "good"}


def test_the_pinion_is_always_another_one_that_the_count_names(unit, drawn):
    for given in drawn.values():
        speed = given.speed
        driving, driven = speed.drive
        teeth = speed.wheel_turns * driving / speed.counted_turns
        assert abs(teeth - round(teeth)) < 0.35 and 2 <= abs(round(teeth) - driven) <= 3
        assert str(round(teeth)) in labels(speed.pinions)


def test_nothing_given_is_an_answer_in_words(drawn):
    for given in drawn.values():
        told = json.dumps([to_json(getattr(given, task)) for task in TASKS if hasattr(given, task)])
        assert "mistaken" not in told and not hasattr(given.gap, "verdict")


def test_a_unit_without_what_a_task_needs_is_refused(unit):
    for train, words in (
        (None, "no section 'gear train'"),
        (unit.gear_train.model_copy(update={"synchronisers": ()}), "synchronisers"),
    ):
        with pytest.raises(UnitFileError, match=words):
            given_to(unit.with_sections(gear_train=train), "ann")


@pytest.mark.slow
def test_a_unit_without_a_speed_drive_is_given_all_but_its_task(unit):
    train = unit.gear_train.model_copy(update={"speed_drive": None})
    given = given_to(unit.with_sections(gear_train=train), "ann")
    assert given.speed is None
    assert all(
        getattr(given, task) is not None
        for task in TASKS
        if hasattr(given, task) and task != "speed"
    )
