import gc
import importlib
import math
import weakref

import numpy as np
import pytest
from pydantic import ValidationError

from twoshaft.errors import OutOfRangeError
from twoshaft.models.shift import (
    detent_force,
    fitted,
    follow,
    mechanism,
    prove_by_hand,
    reach,
    with_misbuilds,
)
from twoshaft.models.shift.audit import audit_shift
from twoshaft.models.shift.bodies import overlaps
from twoshaft.units import load_unit
from twoshaft.units.loader import SHIPPED
from twoshaft.units.quantities import Q
from twoshaft.units.sections.shift import Shift

grid = importlib.import_module("twoshaft.models.shift.mechanism")


@pytest.fixture(scope="module")
def shift(unit):
    return unit.shift


def lock_of(proof):
    (lock,) = proof.locks
    return lock.verdict


def proof_with(shift, *misbuilds):
    return prove_by_hand(mechanism(with_misbuilds(shift, misbuilds)))


def test_the_sound_mechanism_passes(shift):
    proof = proof_with(shift)
    assert proof.sound, proof.sentences
    assert set(proof.ways_mm) == {"first", "second", "third", "fourth", "fifth", "reverse"}


def test_the_lockout_remembers_where_the_hand_was(shift):
    """From fifth straight to reverse is stopped; out of the gate and back lets it through."""
    machine = mechanism(shift)
    in_fifth = reach(machine).with_gear("fifth")
    assert in_fifth
    direct = reach(machine, in_fifth, within_mm=(7, 13))
    assert frozenset(["reverse"]) not in direct.first
    anyhow = reach(machine, in_fifth)
    way = anyhow.path(anyhow.first[frozenset(["reverse"])])
    assert way[:, 0].min() < 7  # the hand had to leave the gate
    fresh = reach(machine)
    assert frozenset(["reverse"]) in fresh.first


@pytest.mark.slow
@pytest.mark.parametrize(
    ("misbuild", "verdict"),
    [
        ("lockout-spring-reversed", "fails"),
        ("lockout-spring-missing", "unreliable"),
        ("lockout-plate-turned-over", "fails"),
        ("lockout-plate-missing", "fails"),
        ("plate-boss-worn", "fails"),
        ("finger-pin-not-home", "fails"),
        ("interlock-pins-missing", "holds"),
        ("detent-ball-missing", "holds"),
        ("through-pin-missing", "holds"),
    ],
)
def test_each_misbuild_has_its_symptom(shift, misbuild, verdict):
    proof = proof_with(shift, misbuild)
    assert lock_of(proof) == verdict
    (lock,) = proof.locks
    assert (lock.way_mm is None) == (verdict == "holds")


@pytest.mark.slow
def test_two_gears_at_once_without_the_interlock(shift):
    at_once = proof_with(shift, "interlock-pins-missing").at_once
    assert ("first", "third") in at_once
    assert not [pair for pair in at_once if set(pair) == {"first", "second"}]  # one rail


def test_a_missing_ball_leaves_its_gears_unheld(shift):
    assert set(proof_with(shift, "detent-ball-missing").not_held) == {"third", "fourth"}


def test_a_worn_peg_never_moves_the_plate_aside(shift):
    assert proof_with(shift, "finger-peg-worn").cannot == ("reverse",)


def test_the_through_pin_shows_nothing_by_hand(shift):
    """A fault that no test by hand can find: only looking finds it."""
    assert proof_with(shift, "through-pin-missing").sound


@pytest.mark.slow
@pytest.mark.parametrize("misbuilds", [(), ("lockout-plate-turned-over",), ("finger-peg-worn",)])
def test_half_the_grid_gives_the_same_reach(shift, misbuilds):
    section = with_misbuilds(shift, misbuilds)
    coarse, fine = (prove_by_hand(mechanism(section, step)) for step in (0.5, 0.25))
    assert set(coarse.ways_mm) == set(fine.ways_mm)
    assert coarse.at_once == fine.at_once
    assert [lock.verdict for lock in coarse.locks] == [lock.verdict for lock in fine.locks]
    for gear, way in coarse.ways_mm.items():
        length = [abs(np.diff(w, axis=0)).sum() for w in (way, fine.ways_mm[gear])]
        assert length[0] == pytest.approx(length[1], abs=1.0)


def test_no_reached_state_overlaps(shift):
    """Independent of the tables: every body of every reached state, tested by its corners."""
    machine = mechanism(shift)
    passive = machine.shift.passive
    rng = np.random.default_rng(1)
    states = list(reach(machine).came_from)
    for pick in rng.choice(len(states), 150, replace=False):
        state = states[pick]
        x, y = machine.travel_mm[state[0]], machine.turn_mm[state[1]]
        for body, places, index in zip(passive, machine.places_mm, state[2:], strict=True):
            q = places[index]
            shift_by = (q, 0) if body.axis == "travel" else (0, q)
            for other in machine.shift.bodies:
                if other.layer != body.layer:
                    continue
                for a in body.pieces:
                    box_a = np.array(a) + shift_by
                    for b in other.pieces:
                        box_b = np.array(b) + np.array([x, y])
                        apart = (box_a.max(0) <= box_b.min(0) + 1e-6).any() or (
                            box_b.max(0) <= box_a.min(0) + 1e-6
                        ).any()
                        assert apart  # all pieces of this unit are upright rectangles


def test_overlap_of_slanted_pieces():
    square = (((-1, -1), (1, -1), (1, 1), (-1, 1)),)
    diamond = (((0, -1), (1, 0), (0, 1), (-1, 0)),)
    x = np.array([0.0, 1.9, 2.0, 1.45, 1.55])
    y = np.array([0.0, 0.0, 0.0, 1.45, 1.55])
    assert overlaps(square, diamond, x, y).tolist() == [True, True, False, True, False]


def test_audit_is_silent_for_the_shipped_unit_and_speaks_for_a_broken_one(unit, shift):
    assert audit_shift(unit) == ()
    broken = unit.with_sections(shift=with_misbuilds(shift, ["lockout-plate-missing"]))
    assert any("does not lock" in finding.what for finding in audit_shift(broken))
    loose = unit.with_sections(shift=with_misbuilds(shift, ["interlock-pins-missing"]))
    assert any("at once" in finding.what for finding in audit_shift(loose))


def test_an_unknown_misbuild_and_a_bad_grid_are_refused(shift):
    with pytest.raises(OutOfRangeError, match="misbuild is nothing"):
        with_misbuilds(shift, ["nothing"])
    with pytest.raises(OutOfRangeError, match="grid step"):
        mechanism(shift, 5.0)


@pytest.mark.parametrize(
    ("path", "value", "what"),
    [
        (("rails", 0, "gate"), "no-gate", "which is not there"),
        (("must_block", 0, "later"), "sixth", "no rail engages"),
        (("passive", 0, "range_mm"), (7, -7), "reversed"),
        (("bodies", 0, "pieces"), [[(0, 0), (1, 1), (2, 2)]], "no area"),
        (("misbuilds", 0, "changes"), [{"body": "finger"}], "exactly one"),
        (("misbuilds", 0, "changes"), [{"body": "ghost", "remove": True}], "no body"),
    ],
)
def test_the_section_refuses_what_does_not_hang_together(shift, path, value, what):
    data = shift.model_dump(mode="json")
    entry = data
    for key in path[:-1]:
        entry = entry[key]
    entry[path[-1]] = value
    with pytest.raises(ValidationError, match=what):
        Shift.model_validate(data)


def test_detent_force_refuses_a_jamming_ramp():
    with pytest.raises(OutOfRangeError, match="jams"):
        detent_force(Q(50, "N"), Q(84, "degree"), 0.2)


def test_detent_crest_takes_the_compressed_spring():
    force = detent_force(
        Q(40, "N"), Q(45, "degree"), 0.1, spring_rate=Q(10, "N/mm"), depth=Q(2, "mm")
    )
    assert (force.at_crest / force.to_start).to("").magnitude == pytest.approx(1.5)
    assert force.travel.to("mm").magnitude == pytest.approx(2.0)
    assert force.holds_below.to("N").magnitude == pytest.approx(40 * math.tan(math.pi / 4))


def test_mechanisms_share_the_tables_of_bodies_that_no_misbuild_changes(shift):
    sound, worn = mechanism(shift), mechanism(with_misbuilds(shift, ["lockout-spring-missing"]))
    same = [one is other for one, other in zip(sound.following, worn.following, strict=True)]
    assert same.count(False) == 1  # the plate without its spring
    both = mechanism(with_misbuilds(shift, ["lockout-spring-missing", "detent-ball-missing"]))
    changed = [body.id for body in shift.passive].index("lockout-plate")
    assert both.following[changed] is worn.following[changed]


@pytest.mark.slow
def test_what_is_worked_out_of_a_mechanism_goes_with_its_unit(tmp_path):
    own = tmp_path / "own.yaml"  # a shipped one is read once a process
    own.write_bytes((SHIPPED / "tarnbeck-b5.yaml").read_bytes())
    shift = load_unit(own).shift
    machine = fitted(shift, ["finger-peg-worn"], ["turn"])
    assert fitted(shift, ["finger-peg-worn"], ["turn"]) is machine
    proof = prove_by_hand(machine)
    assert prove_by_hand(machine) is proof
    follow(machine, ["turn:high"])
    gone = weakref.ref(machine), weakref.ref(proof), weakref.ref(shift)
    del machine, proof, shift
    gc.collect()
    assert [one() for one in gone] == [None, None, None]


@pytest.mark.slow
def test_steps_of_many_states_are_those_of_each(monkeypatch):
    """What is looked up together is what is looked up one by one, in the same order."""
    for id in ("tarnbeck-b5", "tarnbeck-k6"):  # without and with a lift
        machine = mechanism(with_misbuilds(load_unit(id).shift, ["detent-ball-missing"]))
        for firm, lifting in ((True, True), (False, True), (True, False)):
            told = {"firm": firm, "lifting": lifting}
            monkeypatch.setattr(grid, "MANY", 10**9)
            one_by_one = reach(machine, **told)
            monkeypatch.setattr(grid, "MANY", 1)
            together = reach(machine, **told)
            assert list(together.came_from.items()) == list(one_by_one.came_from.items())
            assert together.first == one_by_one.first
            states = list(one_by_one.came_from)[:50]
            radix = machine._radix.astype(object)
            assert len({int(np.array(s, dtype=object) @ radix) for s in states}) == len(states)
