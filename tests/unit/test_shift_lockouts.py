"""Lockouts as they are built: across gates, plunger, lifted collar, memory, two at once."""

import pytest

from twoshaft.models import shift
from twoshaft.models.audit import audit_unit
from twoshaft.models.shift.audit import audit_shift
from twoshaft.rigs import gate_rig
from twoshaft.units import load_unit
from twoshaft.units.sections.shift import MustBlock, Shift


@pytest.fixture(scope="module")
def six():
    return load_unit("tarnbeck-k6")


@pytest.fixture(scope="module")
def four():
    return load_unit("tarnbeck-c4")


def changed(section, **update):
    return Shift.model_validate(section.model_copy(update=update).model_dump(by_alias=True))


def proof(section, *misbuilds):
    return shift.prove_by_hand(shift.mechanism(shift.with_misbuilds(section, misbuilds)))


def verdicts(section, *misbuilds):
    return [lock.verdict for lock in proof(section, *misbuilds).locks]


def felt(section, moves, *misbuilds):
    return shift.follow(shift.fitted(section, misbuilds), moves)


@pytest.mark.slow
def test_two_lockouts_of_different_kinds_each_do_their_part(six):
    section = six.shift
    assert proof(section).sound
    stops = [shift.what_stops(section, block).devices for block in section.must_block]
    assert stops == [(("lockout-plate",),), (("collar-stop",),)]
    assert verdicts(section, "lockout-plate-missing") == ["fails", "holds"]
    assert verdicts(section, "collar-stuck") == ["holds", "fails"]


def test_the_proof_of_each_lockout_can_be_had_in_full(six, four):
    for unit in (six, four):
        section = unit.shift
        sound = shift.fitted(section)
        faulty = [shift.fitted(section, [one.id]) for one in section.misbuilds]
        for block in section.must_block:
            test = shift.lockout_test(sound, block.earlier, block.later, faulty)
            assert test.faulty and shift.try_out(test, test.model).share == 1


def test_a_lockout_that_the_collar_would_hide_is_tried_with_the_collar_lifted(six):
    section = six.shift
    sound, bare = shift.fitted(section), shift.fitted(section, ["lockout-plate-missing"])
    test = shift.lockout_test(sound, "first", "reverse", [bare])
    moves = list(test.model)
    assert moves.index("turn:high") < moves.index("lift") < moves.index("turn:low")
    left_down = [move for move in moves if move != "lift"]
    assert shift.try_out(test, left_down[:3]).done["shown"] is False
    assert shift.stopped_also(section, "first", "reverse").endswith("lifted too")
    assert shift.stopped_also(section, "second", "reverse") == ""


def test_two_at_once_each_stop_the_same_shift(six):
    both = MustBlock(earlier="first", later="reverse")  # with the collar down
    assert shift.what_stops(six.shift, both).devices == (("lockout-plate",), ("collar-stop",))


def test_a_memory_opens_after_the_gate_was_left_and_a_collar_lets_it_in(six):
    section = six.shift
    assert shift.opening(section, "first", "reverse") == "leave-lift"
    assert shift.opening(section, "second", "reverse") == "lift"
    for block in section.must_block:
        moves = shift.lockout_moves(section, block.earlier, block.later)
        work = felt(section, moves)
        assert shift.lockout_reading(section, work, block.earlier, block.later) == "proven"
        direct = work[: len(shift.direct_moves(section, block.earlier, block.later))]
        assert shift.lockout_reading(section, direct, block.earlier, block.later) == "half"
        assert direct[-1].felt[0].stopped


def test_the_collar_alone_does_not_pass_the_plate(six):
    moves = ["lift", "at:gate-first", "turn:high", "turn:low"]
    assert felt(six.shift, moves)[-1].blocked_by == ("lockout-plate",)


def test_the_collar_cannot_come_down_on_its_stop(six):
    done = felt(six.shift, [*shift.way_in(six.shift, "reverse"), "lower"])
    assert done[-1].felt[0].stopped and done[-1].blocked_by == ("collar-stop",)
    back = felt(six.shift, [*shift.way_in(six.shift, "reverse"), "neutral", "lower"])
    assert not back[-1].felt[0].stopped


def test_a_plunger_gives_way_to_a_firm_push_alone(four):
    section = four.shift
    assert proof(section).sound
    light, firm = (
        felt(section, [code, "turn:low"]) for code in ("at:gate-reverse", "firm:at:gate-reverse")
    )
    assert light[0].blocked_by == ("reverse-plunger",) and "reverse" not in light[1].felt[0].gears
    assert firm[1].felt[0].gears == {"reverse"}
    assert shift.opening(section, "fourth", "reverse") == "firm"
    assert verdicts(section, "plunger-soft") == ["fails"]
    assert proof(section, "plunger-stuck").cannot == ("reverse",)


def test_the_hand_can_push_firmly_whatever_was_left_out(four):
    for misbuild in ("plunger-missing", "plunger-soft"):
        work = felt(four.shift, ["firm:at:gate-reverse", "turn:low"], misbuild)
        assert work[-1].felt[0].gears == {"reverse"}


def test_a_block_that_must_hold_a_firm_push_too_is_not_brought_about_by_a_plunger(four):
    held = changed(
        four.shift, must_block=(MustBlock(earlier="fourth", later="reverse", firm=True),)
    )
    assert verdicts(held) == ["fails"]


def test_a_strong_detent_on_a_rail_is_overcome(four):
    """The reverse rail itself takes a firm push."""
    passive = tuple(
        one.model_copy(update={"gives_at_n": 120.0}) if one.id == "rail-reverse" else one
        for one in four.shift.passive
        if one.id != "reverse-plunger"
    )
    section = changed(four.shift, passive=passive, misbuilds=())
    assert verdicts(section) == ["holds"]
    assert shift.way_in(section, "reverse") == ("at:gate-reverse", "firm:turn:low")


@pytest.mark.slow
def test_must_block_without_a_body_is_refused_with_its_place(four):
    bare = changed(
        four.shift,
        must_block=(*four.shift.must_block, MustBlock(earlier="first", later="fourth")),
    )
    (finding,) = audit_shift(four.with_sections(shift=bare))
    assert "does not lock: first goes straight into fourth" in finding.what
    rails = tuple(
        one.model_copy(update={"engaged_mm": 20.0}) if one.body == "rail-reverse" else one
        for one in four.shift.rails
    )
    never = changed(four.shift, rails=rails)  # reverse is never engaged
    whats = [one.what for one in audit_shift(four.with_sections(shift=never))]
    assert any("no body brings it about that fourth does not go into reverse" in w for w in whats)
    place = audit_shift(four.with_sections(shift=never))[-1].where
    assert "tarnbeck-c4.yaml, line" in place


@pytest.mark.slow
def test_the_shipped_two_have_no_findings(six, four):
    assert audit_unit(six) == () and audit_unit(four) == ()


@pytest.mark.parametrize(
    ("update", "what"),
    [
        ({"lift_mm": 0.0}, "say how far"),
        ({"firm_n": 30.0}, "weaker"),
        (
            {"passive": (load_unit("tarnbeck-c4").shift.passive[-1],)},
            "say under 'firm n' what overcomes it",
        ),
        (
            {"must_block": (MustBlock(earlier="first", later="reverse", through=("no",)),)},
            "no gate",
        ),
    ],
)
def test_what_does_not_hang_together_is_refused(six, update, what):
    with pytest.raises(ValueError, match=what):
        changed(six.shift, **update)


def test_a_rail_without_gears_is_refused(four):
    data = four.shift.model_dump(mode="json", by_alias=True)
    data["rails"][-1].pop("low")
    with pytest.raises(ValueError, match="engages no gear"):
        Shift.model_validate(data)


def test_one_rail_and_one_gate_can_be_worked(four):
    data = four.shift.model_dump(mode="json", by_alias=True)
    only = {
        "rails": [r for r in data["rails"] if r["body"] == "rail-low"],
        "passive": [p for p in data["passive"] if p["id"] == "rail-low"],
        "gates": [g for g in data["gates"] if g["id"] == "gate-low"],
        "interlocks": [],
        "must block": [],
        "detents": [],
        "misbuilds": [],
    }
    section = Shift.model_validate(data | only | {"start mm": [-10, 0]})
    assert proof(section).sound
    assert set(proof(section).ways_mm) == {"first", "second"}
    moves = shift.lockout_moves(section, "first", "second")
    assert shift.lockout_reading(section, felt(section, moves), "first", "second") == "fails"


def test_the_rig_lifts_and_says_what_stopped(six):
    rig = gate_rig(six, misbuilds=[])
    rig.hear({"type": "move", "code": "at:gate-first"})
    rig.hear({"type": "move", "code": "turn:low"})
    assert "stopped by the stop of the collar" in rig.view["happened"]
    rig.hear({"type": "move", "code": "neutral"})
    rig.hear({"type": "move", "code": "lift"})
    assert rig.view["lifted"] and "the collar under the knob lifted" in rig.view["title"]
    rig.hear({"type": "move", "code": "turn:low"})
    assert rig.view["gears"] == ["reverse"]
