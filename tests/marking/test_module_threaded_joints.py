"""Module Threaded joints: what typical wrong answers earn, and what the learner is told."""

import pytest

from twoshaft.models import joint
from twoshaft.units.quantities import Q

MODULE = "03-threaded-joints"
LEARNERS = ["a1", "a2", "a3", "a4", "a5", "a6"]
MUST_PASS = {"state-do", "alloy-hand", "blind-do", "nut-lock"}


@pytest.fixture(scope="module", params=LEARNERS)
def issued(request, module):
    return module.issue(request.param)


def told(field):
    return " ".join(field.sentences)


def stored(clean, name, value):
    return clean.fields[name].store(value)


def test_four_safety_items_must_be_passed(clean):
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
    fields, _ = marked(state_clamp=stored(clean, "state-clamp", meant), state_do="as-found")
    assert fields["state-clamp"].share == 0
    assert "found in another" in told(fields["state-clamp"])
    assert fields["state-do"].share == 0
    assert not fields["state-do"].passed
    assert "one state of the thread" in told(fields["state-do"])


def test_an_early_slip_is_charged_once(marked, clean):
    """A torque a tenth too high, gone on with rightly: clamp and share of yield are right."""
    right = clean.references
    changed = {}
    for name in ("found-torque", "found-clamp", "found-use"):
        changed[name.replace("-", "_")] = stored(clean, name, 1.1 * right[name].value)
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


def test_the_wrong_way_of_the_nut(marked, clean):
    right = clean.references["nut-way"].value
    other = {"undo-clockwise": "undo-anticlockwise"}.get(right, "undo-clockwise")
    fields, _ = marked(nut_way=other)
    assert fields["nut-way"].share == 0
    assert "LH" in told(fields["nut-way"])


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
    said = "Look at the tab" if cracked else "one stake does not spend a nut"
    assert said in told(fields["stake-do"])


def test_a_shallow_tab_taken_for_a_spent_nut(module):
    learners = (f"c{n}" for n in range(20))
    one = next(who for who in learners
               if "shallow" in dict(module.issue(who)["given"]["stake"]["causes"]))  # fmt: skip
    right = list(module.clean(one).references["stake-spent"].value)
    fields, _ = module.marked(one, stake_spent=[*right, "shallow"])
    assert 0 < fields["stake-spent"].share < 1
    assert "punched deeper" in told(fields["stake-spent"])


@pytest.mark.parametrize("name", sorted(MUST_PASS))
def test_every_wrong_choice_of_a_safety_item_fails_and_says_why(marked, clean, name):
    right = clean.references[name].value
    for key, _ in clean.fields[name].options:
        if key != right:
            field = marked(**{name.replace("-", "_"): key})[0][name]
            assert field.share == 0
            assert not field.passed
            assert told(field) != "Another answer fits better."
            assert dict(clean.fields[name].options)[right] not in told(field)


def test_no_key_is_told_where_an_answer_is_wrong(clean):
    """Sentences of wrong choices never hold the words of the right option."""
    for name, asked in clean.fields.items():
        if asked.kind == "choice" and isinstance(clean.references[name].value, str):
            words = dict(asked.options)[clean.references[name].value]
            for slip in clean.references[name].slips:
                assert words not in slip.sentence


def test_ticking_everything_earns_nothing(marked, issued):
    steps = [key for key, _ in issued["given"]["job"]["steps"]]
    fields, _ = marked(job_slips=steps)
    assert fields["job-slips"].share == 0


def test_a_sound_step_ticked_is_told(module):
    learners = (f"b{n}" for n in range(40))
    one = next(who for who in learners if module.issue(who)["given"]["job"]["id"] == "cover")
    right = list(module.clean(one).references["job-slips"].value)
    fields, _ = module.marked(one, job_slips=[*right, "extension"])
    assert 0 < fields["job-slips"].share < 1
    assert "no lever" in told(fields["job-slips"])
