"""Work of the hand on the selector: moves made, felt, blocked; tests judged by making them."""

from functools import lru_cache

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from twoshaft.errors import OutOfRangeError
from twoshaft.models import shift
from twoshaft.models.shift.handtest import HandTest, direct_tried, lockout_moves
from twoshaft.models.shift.handwork import (
    HIGH,
    LET_GO,
    LOW,
    NEUTRAL,
    blocked_by,
    make_move,
    passive_places,
    pull,
    step,
)
from twoshaft.models.shift.mechanism import MOVES, _interlocks
from twoshaft.units import load_unit
from twoshaft.units.quantities import Q

MIRRORS = [(), ("travel",), ("turn",), ("travel", "turn")]
FIFTH, THIRD = "at:gate-fifth-reverse", "at:gate-third-fourth"


@pytest.fixture(scope="module")
def section():
    return load_unit("tarnbeck-b5").shift


@pytest.fixture(scope="module")
def sound(section):
    return shift.fitted(section)


@lru_cache
def _reached(machine):
    return shift.reach(machine).came_from


def felt(machine, *moves):
    return [one.felt for one in shift.follow(machine, moves)]


def test_the_proof_of_the_lockout_move_by_move(sound):
    done = shift.follow(sound, [FIFTH, HIGH, LOW, THIRD, FIFTH, LOW])
    gears = [sorted(one.felt[0].gears) for one in done]
    assert gears == [[], ["fifth"], [], [], [], ["reverse"]]
    assert [one.felt[0].stopped for one in done] == [False, False, True, False, False, False]
    assert done[2].blocked_by == ("lockout-plate",)


def test_what_blocks_is_named(sound):
    between = "at:gate-first-second+gate-third-fourth"
    assert shift.follow(sound, [between, HIGH])[1].blocked_by == ("interlock-front",)
    in_gear = shift.follow(sound, [THIRD, HIGH, "at:gate-first-second"])
    assert in_gear[2].felt[0].stopped and in_gear[2].blocked_by == ("rail-first-second",)


def test_letting_go_shows_a_missing_ball(section, sound):
    loose = shift.fitted(section, ["detent-ball-missing"])
    moves = [THIRD, HIGH, LET_GO]
    assert felt(sound, *moves)[2][0].held is True
    assert felt(loose, *moves)[2][0].held is False


@pytest.mark.slow
@pytest.mark.parametrize("mirror", MIRRORS)
def test_a_mirrored_gate_is_the_same_mechanism(section, mirror):
    for misbuilds in ([], *([misbuild.id] for misbuild in section.misbuilds)):
        plain = shift.prove_by_hand(shift.fitted(section, misbuilds))
        other = shift.prove_by_hand(shift.fitted(section, misbuilds, mirror))
        assert set(plain.sentences) == set(other.sentences)


@pytest.mark.parametrize("axis", ["travel", "turn"])
def test_mirrored_twice_feels_as_before(section, axis):
    twice = shift.mechanism(shift.mirrored(section, axis, axis))
    once = shift.mechanism(section)
    moves = lockout_moves(section, "fifth", "reverse")
    assert felt(once, *moves) == felt(twice, *moves)


@pytest.mark.slow
@pytest.mark.parametrize("mirror", MIRRORS)
def test_straight_moves_agree_with_the_search(section, mirror):
    """What the replay of the direct shift finds is what the search over all states finds."""
    for misbuild in section.misbuilds:
        machine = shift.fitted(section, [misbuild.id], mirror)
        (lock,) = shift.prove_by_hand(machine).locks
        work = shift.follow(machine, lockout_moves(machine.shift, "fifth", "reverse"))
        reading = shift.lockout_reading(machine.shift, work, "fifth", "reverse")
        expected = {"fails": "fails", "unreliable": "fails", "holds": "proven"}[lock.verdict]
        if misbuild.id == "finger-peg-worn":
            expected = "no-gear"
        assert reading == expected, misbuild.id


@pytest.mark.slow
@settings(max_examples=40, deadline=None)
@given(st.lists(st.sampled_from(range(9)), max_size=8))
def test_every_step_of_any_movement_is_one_of_the_mechanism(picks):
    section = load_unit("tarnbeck-b5").shift
    machine = shift.fitted(section)
    reached = _reached(machine)
    codes = [move.code for move in shift.hand_moves(section)]
    states = machine.starts()
    for one in picks:
        states, _ = make_move(machine, states, codes[one])
        assert all(state in reached for state in states)


def test_pulling_slides_along_and_says_whether_it_got_there(sound):
    (start,) = sound.starts()

    def place(state):
        return sound.travel_mm[state[0]], sound.turn_mm[state[1]]

    fifth, there = pull(sound, start, (10.0, 8.0))
    assert there and place(fifth) == (10.0, 8.0) and sound.engaged(fifth) == {"fifth"}
    # The finger slides along the jaw of the engaged fork until the next fork's jaw stops it.
    stuck, there = pull(sound, fifth, (0.0, 8.0))
    assert not there and place(stuck) == (7.0, 8.0) and sound.engaged(stuck) == {"fifth"}
    assert blocked_by(sound, stuck, (-1, 0)) == ("rail-third-fourth",)


def test_what_stops_the_hand_is_named_unless_its_own_way_ends(sound):
    named = 0
    for state in _reached(sound):
        for move in MOVES:
            i, j = state[0] + move[0], state[1] + move[1]
            on_the_way = 0 <= i < len(sound.travel_mm) and 0 <= j < len(sound.turn_mm)
            stopped = step(sound, state, move) is None
            by = blocked_by(sound, state, move)
            assert stopped == (not on_the_way or bool(by)), (state, move)
            named += bool(by)
    assert named > 200


def test_a_move_that_is_none_is_refused(sound):
    with pytest.raises(OutOfRangeError, match="turn:sideways"):
        shift.follow(sound, ["turn:sideways"])


def test_records_can_be_kept_and_read_again(sound):
    made = shift.follow(sound, [FIFTH, HIGH, LET_GO, NEUTRAL])
    again = shift.read_record(shift.write_record(made))
    assert [one.felt for one in again] == [one.felt for one in made]
    assert shift.explains(sound, again)


@pytest.mark.slow
def test_every_misbuild_but_one_has_a_test_that_tells_it(section, sound):
    silent = []
    for misbuild in section.misbuilds:
        faulty = shift.fitted(section, [misbuild.id])
        test = shift.telling_test(sound, faulty)
        if test is None:
            silent.append(misbuild.id)
            assert shift.symptoms(shift.prove_by_hand(faulty)) == {shift.NOTHING}
        else:
            assert shift.try_out(test, test.model).share == 1
            assert shift.try_out(test, test.model[:-1] or [NEUTRAL]).share < 1  # the fewest
    assert silent == ["through-pin-missing"]


def test_a_test_with_more_moves_than_needed_is_as_good(section, sound):
    faulty = shift.fitted(section, ["interlock-pins-missing"])
    test = shift.telling_test(sound, faulty)
    assert shift.try_out(test, [THIRD, NEUTRAL, *test.model]).share == 1


def test_lockout_proof_half_done(section, sound):
    faulty = shift.fitted(section, ["finger-pin-not-home"])
    test = shift.lockout_test(sound, "fifth", "reverse", [faulty])
    assert shift.try_out(test, test.model).share == 1
    half = shift.try_out(test, test.model[:3])
    assert half.done == {"tried": True, "left": False, "shown": True}
    assert half.share == pytest.approx(0.7)
    straight_in = shift.try_out(test, [FIFTH, LOW])
    assert straight_in.share == 0
    by_the_way = [
        FIFTH,
        HIGH,
        NEUTRAL,
        THIRD,
        FIFTH,
        LOW,
    ]  # reverse had, the direct shift not tried
    assert shift.try_out(test, by_the_way).share == 0


def test_the_direct_shift_ends_when_the_gate_is_left(section, sound):
    work = shift.follow(sound, [FIFTH, HIGH, NEUTRAL, THIRD, FIFTH, LOW])
    assert direct_tried(sound.shift, work, "fifth", "reverse") is None
    work = shift.follow(sound, [FIFTH, HIGH, NEUTRAL, LOW])
    assert direct_tried(sound.shift, work, "fifth", "reverse") == 3


def test_a_test_that_shows_only_sometimes_earns_a_part(section, sound):
    faulty = shift.fitted(section, ["lockout-spring-missing"])
    test = HandTest(sound, (faulty,), None, ())
    shares = {shift.try_out(test, moves).share for moves in ([FIFTH], [FIFTH, HIGH, LOW])}
    assert shares == {0.0, 1.0}


@pytest.mark.parametrize("gear", ["first", "second", "third", "fourth", "fifth", "reverse"])
@pytest.mark.parametrize(
    "missing", [None, "interlock-front", "interlock-rear", "interlock-through"]
)
def test_locked_rails_agree_with_the_tables_of_the_search(section, gear, missing):
    """Independent of the formula: with the gear in, can the other rail's table reach its end?"""
    part = shift.without_pin(section, missing) if missing else section
    machine = shift.mechanism(part)
    ids = [body.id for body in part.passive]
    own = shift.rail_of(part, gear)
    place = own.engaged_mm if own.high == gear else -own.engaged_mm
    expected = set()
    for p, q, fits in machine.interlocks:
        if own.body not in (ids[p], ids[q]):
            continue
        mine, other = (p, q) if ids[p] == own.body else (q, p)
        at = int(np.argmin(abs(machine.places_mm[mine] - place)))
        row = [
            fits[at][k] if mine == p else fits[k][at] for k in range(len(machine.places_mm[other]))
        ]
        if not row[0] and not row[-1]:
            expected.add(ids[other])
    assert shift.locked_rails(part, gear) == expected


def test_free_movement_agrees_with_the_tables_of_the_search(section):
    """The formula against whether the pin fits, place by place, on a fine grid."""
    pin = section.interlocks[0]
    places = np.arange(-7, 7.0001, 0.01)
    ((_, _, fits),) = _interlocks(
        section.model_copy(update={"interlocks": (pin,)}), [places] * len(section.passive)
    )
    moved = int(np.argmin(abs(places - 6.5)))
    free = max(abs(place) for place, fit in zip(places, fits[moved], strict=True) if fit)
    play = shift.pin_play(Q(pin.notch_mm, "mm"), Q(pin.gap_mm, "mm"), Q(pin.length_mm, "mm"))
    way = shift.free_movement(play, Q(pin.ramp_deg, "deg"))
    assert free <= way.magnitude + 1e-9 and way.magnitude <= free + 0.01


def test_no_play_is_told():
    with pytest.raises(OutOfRangeError, match="play"):
        shift.free_movement(Q(-0.1, "mm"), Q(50, "deg"))


def test_from_rail_to_hand():
    torque = shift.shaft_torque(Q(60, "N"), Q(34, "mm"))
    assert torque.to("N*m").magnitude == pytest.approx(2.04)
    assert shift.hand_force(torque, Q(120, "mm")).magnitude == pytest.approx(17)
    # work in equals work out: force times way at the rail and at the hand
    angle = shift.turn_angle(Q(7, "mm"), Q(34, "mm")).to("rad").magnitude
    assert 17 * 120 * angle == pytest.approx(60 * 7)


def test_pin_ends():
    far = shift.other_end(Q(26, "mm"), Q(24, "mm"), Q(0.4, "mm"))
    assert far.magnitude == pytest.approx(1.6)
    with pytest.raises(OutOfRangeError, match="pin"):
        shift.other_end(Q(24, "mm"), Q(24, "mm"), Q(0, "mm"))


def test_places_are_told_by_body(sound):
    assert passive_places(sound, sound.starts()[0])["lockout-plate"] == 0
