"""Module Threaded joints: what typical wrong answers earn, and what the learner is told."""

import math

import pytest

from twoshaft.models import joint
from twoshaft.units.quantities import Q

MODULE = "03-threaded-joints"
LEARNERS = ["a1", "a2", "a3", "a4", "a5", "a6"]
MUST_PASS = {"state-do", "alloy-hand", "blind-do", "nut-way", "nut-lock", "nut-again"}


@pytest.fixture(scope="module", params=LEARNERS)
def issued(request, module):
    return module.issue(request.param)


def told(field):
    return " ".join(field.sentences)


def with_one_wrong(clean, name, line, option):
    """The right answers with another one in a line, as they are stored."""
    return clean.fields[name].store({**clean.references[name].value, line: option})


def seen_by(module, part, scene):
    """Somebody who is shown a scene."""
    for number in range(60):
        issued = module.issue(f"seen-{number}")
        lines = issued["given"]["asked"][part]
        if scene in {line[0] for line in (lines if isinstance(lines, list) else lines["lines"])}:
            return issued
    return pytest.fail(f"nobody is shown {scene}")


def stored(clean, name, value):
    return clean.fields[name].store(value)


def test_six_decisions_must_be_right(clean):
    references = clean.references
    assert {name for name, one in references.items() if one.must_pass} == MUST_PASS


def test_three_fifths_of_the_points_are_decisions(module, clean):
    decided = whole = 0.0
    for task, names in clean.tasks.items():
        total = sum(clean.references[name].weight for name in names)
        for name in names:
            points = module.solution.points[task] * clean.references[name].weight / total
            whole += points
            decided += points * (clean.fields[name].kind != "number")
    assert 0.55 < decided / whole < 0.68


def test_the_adapter_left_out(marked, clean):
    torque = clean.references["card-torque"].value
    fields, _ = marked(card_setting=stored(clean, "card-setting", torque))
    assert fields["card-setting"].share == 0
    assert "leaves the adapter out" in told(fields["card-setting"])
    assert fields["card-clamp"].share == 1


def test_the_adapter_turned_round(marked, clean):
    right = clean.references
    torque, setting = right["card-torque"].value, right["card-setting"].value
    fields, _ = marked(card_setting=stored(clean, "card-setting", torque * torque / setting))
    assert fields["card-setting"].share == 0.25
    assert "would get too much" in told(fields["card-setting"])


def test_the_figure_of_the_card_taken_as_newton_metres(marked, issued):
    card = issued["given"]["card"]
    fields, _ = marked(card_torque=f"{card['figure']:g} N·m")
    assert fields["card-torque"].share == 0
    assert card["unit"] in told(fields["card-torque"])


def test_a_torque_in_the_workshops_units_is_right(marked, issued):
    card = issued["given"]["card"]
    fields, _ = marked(card_torque=f"{card['figure']:g} {card['unit']}")
    assert fields["card-torque"].share == 1


def test_the_wrong_state_of_the_thread(marked, issued, clean):
    given = issued["given"]["state"]
    k = {state: value for state, _, value in given["factors"]}[given["state"][0]]
    meant = joint.clamp_short(Q(given["torque_nm"], "N*m"), k, Q(given["diameter_mm"], "mm"))
    fields, _ = marked(state_clamp=stored(clean, "state-clamp", meant))
    assert fields["state-clamp"].share == 0
    assert "found in another" in told(fields["state-clamp"])


@pytest.mark.parametrize("scene", ["film-new", "washed", "oil-box", "compound-wet", "compound-old"])
def test_a_thread_taken_for_another_state_fails_whatever_the_mark(module, scene):
    issued = seen_by(module, "threads", scene)
    clean = module.clean(issued)
    ready = clean.references["state-do"].value[scene] == "as-is"
    wrong = with_one_wrong(clean, "state-do", scene, "oil" if ready else "as-is")
    fields, mark = module.marked(issued, state_do=wrong)
    assert not fields["state-do"].passed and not mark.met
    said = "what you change now" if ready else "with another clamp"
    assert said in told(fields["state-do"])
    assert mark.points > 0.9 * mark.maximum


def test_what_a_thread_needs_turns_on_the_state_that_its_torque_is_for(module):
    """The same thread, as it was found, is right for one card and wrong for another."""
    needed = set()
    for number in range(60):
        issued = module.issue(f"seen-{number}")
        for id, _, stated in issued["given"]["asked"]["threads"]:
            if id == "oil-box":
                needed.add((stated, module.clean(issued).references["state-do"].value[id]))
    assert needed == {("as-delivered", "film"), ("oiled", "as-is"), ("locker", "locker")}


def test_an_early_slip_is_charged_once(marked, clean):
    """A one carried too often in a torque: clamp and share of yield that follow are right."""
    right = clean.references
    torque = right["found-torque"].value.m
    times = 1 + 10.0 ** (math.floor(math.log10(torque)) - 1) / torque
    changed = {}
    for name in ("found-torque", "found-clamp", "found-use"):
        changed[name.replace("-", "_")] = stored(clean, name, times * right[name].value)
    fields, _ = marked(**changed)
    assert fields["found-torque"].share == 0
    assert fields["found-clamp"].share == fields["found-use"].share == 1


def test_a_slip_of_ten_is_named(marked, clean):
    use = clean.references["found-clamp"].value
    fields, _ = marked(found_clamp=stored(clean, "found-clamp", use / 10))
    assert fields["found-clamp"].share == 0
    assert "10 times too small" in told(fields["found-clamp"])


def test_oil_that_has_room_is_forgotten(marked, issued):
    blind = issued["given"]["blind"]
    turns = blind["oil_ml"] * 1e3 / blind["area_mm2"] / blind["pitch_mm"]
    fields, _ = marked(blind_turns=f"{turns:.4f}")
    assert fields["blind-turns"].share == 0.25
    assert "room under the tip" in told(fields["blind-turns"])


def test_the_whole_hole_taken_for_the_room(marked, issued):
    blind = issued["given"]["blind"]
    whole = blind["area_mm2"] * blind["depth_mm"] / 1e3
    fields, _ = marked(blind_room=f"{whole:.3f} mL")
    assert fields["blind-room"].share == 0.25
    assert "the bolt fills most of it" in told(fields["blind-room"])


def test_the_spread_over_the_loosest_bolt(marked, issued, clean):
    right = clean.references
    given = issued["given"]["face"]
    gap = right["face-spread"].value.m_as("percent") / 100 * given["target_kn"]
    wrong = 100 * gap / right["face-clamp"].value.m_as("kN")
    fields, _ = marked(face_spread=f"{wrong:.1f} %")
    assert fields["face-spread"].share == 0.25
    assert "divided by the loosest" in told(fields["face-spread"])


def test_a_round_too_few(marked, clean):
    needed = clean.references["face-rounds"].value
    fields, _ = marked(face_rounds=str(needed - 1))
    assert fields["face-rounds"].share == 0
    assert "larger than allowed" in told(fields["face-rounds"])


def test_what_stops_a_bolt_in_its_hole(issued, clean):
    """Beside the solution: room under the tip, and the liquid that has to go into it."""
    right = clean.references["blind-what"].value
    for id, depth, reach, liquid in issued["given"]["asked"]["holes"]:
        room = depth - reach
        want = "bottoms" if room <= 0 else "seats" if liquid < room else "locks"
        assert right[id] == want
    assert len(set(right.values())) == 3


def test_the_wrong_way_of_the_nut(marked, clean):
    for line, way in clean.references["nut-way"].value.items():
        other = {"clockwise": "anticlockwise", "anticlockwise": "clockwise"}[way]
        fields, mark = marked(nut_way=with_one_wrong(clean, "nut-way", line, other))
        assert fields["nut-way"].share == 0
        assert not fields["nut-way"].passed and not mark.met
        assert "LH" in told(fields["nut-way"]) or "right-hand" in told(fields["nut-way"])


def test_which_way_turns_on_thread_act_and_side(issued, clean):
    """A left-hand thread, undoing and looking from behind: each turns it round once."""
    right = clean.references["nut-way"].value
    for id, thread, _, undo, behind in issued["given"]["asked"]["turns"]:
        turned = thread.endswith("-LH") + undo + behind
        assert right[id] == ("clockwise", "anticlockwise")[turned % 2]
    own = issued["given"]["nut"]["thread"].endswith("-LH")
    assert right["own"] == ("clockwise", "anticlockwise")[own]


def test_the_larger_of_the_two_taken_for_the_hold_of_the_stake(marked, issued):
    stake = issued["given"]["stake"]
    crush = stake["crush_nm_mm"] * stake["depth_mm"]
    larger = max(stake["shear_nm"], crush) / stake["drag_nm"]
    fields, _ = marked(stake_times=f"{larger:.3f}")
    assert fields["stake-times"].share == 0
    assert "smaller of the two" in told(fields["stake-times"])
    both = (stake["shear_nm"] + crush) / stake["drag_nm"]
    assert "do not add" in told(marked(stake_times=f"{both:.3f}")[0]["stake-times"])


def test_a_cracked_tab_kept_and_a_whole_one_thrown_away(marked, issued):
    cracked = issued["given"]["stake"]["cracked"]
    fields, _ = marked(stake_do="leave" if cracked else "renew")
    assert fields["stake-do"].share == 0
    said = "Look at the tab" if cracked else "need not be renewed"
    assert said in told(fields["stake-do"])


@pytest.mark.parametrize(
    ("part", "field", "scene", "answer", "sentence"),
    [
        ("hand_start", "alloy-hand", "impact", "on", "each further turn cuts it"),
        ("hand_start", "alloy-hand", "bright", "on", "gives way before the clamp"),
        ("blind_do", "blind-do", "rod-wet", "fit", "left at the bottom"),
        ("blind_do", "blind-do", "glasses", "swab", "past rag and eye protection"),
        ("lock", "nut-lock", "one-gear", "pull", "a hand with them"),
        ("lock", "nut-lock", "knee", "pull", "tips off the bench"),
        ("again", "nut-again", "staked", "again", "second time"),
        ("again", "nut-again", "run-down", "new", "as well as a new one"),
    ],
)
def test_a_danger_or_a_spent_part_overlooked_fails_whatever_the_mark(
    module, part, field, scene, answer, sentence
):
    issued = seen_by(module, part, scene)
    wrong = with_one_wrong(module.clean(issued), field, scene, answer)
    fields, mark = module.marked(issued, **{field.replace("-", "_"): wrong})
    assert not fields[field].passed and not mark.met
    assert sentence in told(fields[field])
    assert mark.points > 0.9 * mark.maximum


@pytest.mark.parametrize("name", sorted(MUST_PASS))
def test_every_wrong_line_of_a_safety_item_fails_and_says_why(marked, clean, name):
    asked, right = clean.fields[name], clean.references[name].value
    line, key = next(iter(right.items()))
    for option, _ in asked.options:
        if option != key:
            wrong = with_one_wrong(clean, name, line, option)
            field = marked(**{name.replace("-", "_"): wrong})[0][name]
            assert field.share < 1
            assert not field.passed
            about = f"{dict(asked.lines)[line].rstrip('.')}: "
            assert len(told(field).split(about)[1]) > 30
            assert dict(asked.options)[key] not in told(field).split(": ")[-1] or name == "nut-way"
    blank = marked(**{name.replace("-", "_"): None})[0][name]
    assert blank.share == 0 and not blank.passed


def test_no_key_is_told_where_an_answer_is_wrong(clean):
    """Sentences of wrong choices never hold the words of the right option."""
    for name, asked in clean.fields.items():
        if asked.kind == "choice" and isinstance(clean.references[name].value, str):
            words = dict(asked.options)[clean.references[name].value]
            for slip in clean.references[name].slips:
                assert words not in slip.sentence


def test_one_judgement_for_all_steps_earns_nothing(marked, clean):
    for answer in ("sound", "mistake"):
        every = dict.fromkeys(clean.references["steps-judged"].value, answer)
        fields, _ = marked(steps_judged=stored(clean, "steps-judged", every))
        assert fields["steps-judged"].share == 0


def test_a_sound_step_taken_for_a_mistake_is_told(module):
    issued = seen_by(module, "steps", "extension")
    wrong = with_one_wrong(module.clean(issued), "steps-judged", "extension", "mistake")
    fields, _ = module.marked(issued, steps_judged=wrong)
    assert 0 < fields["steps-judged"].share < 1
    assert "no lever" in told(fields["steps-judged"])
