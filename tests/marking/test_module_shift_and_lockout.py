"""Module Shift mechanism and lockout marked: typical wrong answers, follow-through, must-pass."""

import math

import pytest

from twoshaft.models import shift
from twoshaft.models.shift.handwork import HIGH, LOW, NEUTRAL

MODULE = "07-shift-and-lockout"
FIFTH, THIRD = "at:gate-fifth-reverse", "at:gate-third-fourth"


def turns(given):
    """The turn towards fifth and the one towards reverse, in the learner's own gate."""
    is_up = "turn" not in given["gate"]["mirror"]
    return (HIGH, LOW) if is_up else (LOW, HIGH)


def way(*moves):
    def of(given, answers):
        fifth, reverse = turns(given)
        return [{"fifth": fifth, "reverse": reverse}.get(move, move) for move in moves]

    return of


WRONG = [
    # name, field, answer, share, what the sentence says
    ("only the direct shift", "lockout-way", way(FIFTH, "fifth", "reverse"), 0.7,
     "not whether reverse goes in"),
    ("reverse by the neighbour's gate only", "lockout-way",
     way(FIFTH, "fifth", NEUTRAL, THIRD, FIFTH, "reverse"), 0.0, "never push from fifth straight"),
    ("reverse from neutral only", "lockout-way", way(FIFTH, "reverse"), 0.0,
     "never push from fifth straight"),
    ("the length of the spring for its way", "detent-spring",
     lambda g, a: f"{g['detent']['rate_n_per_mm'] * g['detent']['fitted_mm']:.4f} N", 0.25,
     "pressed together"),
    ("no friction", "detent-leave",
     lambda g, a: f"{shift.detent_force(_spring(g), _ramp(g), 0.0).to_start.magnitude:.3f} N", 0.5,
     "without friction"),
    ("the crest without the depth of the notch", "detent-crest",
     lambda g, a: a["detent-leave"], 0.25, "by the depth of the notch"),
    ("the outer lever for the finger", "lever-torque",
     lambda g, a: f"{g['lever']['rail_n'] * g['lever']['lever_mm'] / 1e3:.4f} N·m", 0.25,
     "not at the outer lever"),
    ("the levers the wrong way round", "lever-hand",
     lambda g, a: f"{g['lever']['rail_n'] * g['lever']['lever_mm'] / g['lever']['radius_mm']:.3f} N",
     0.25, "smaller, not larger"),
    ("both notches counted", "interlock-play",
     lambda g, a: f"{2 * g['interlock']['notch_mm'] + g['interlock']['gap_mm'] - g['interlock']['length_mm']:.3f} mm",
     0.25, "only one notch is left"),
    ("both ends of the pin together", "pin-other",
     lambda g, a: f"{g['pin']['hub_mm'] - g['pin']['pin_mm']:.3f} mm", 0.25, "both ends together"),
    ("the moves of a sound unit", "reveal-way", lambda g, a: [THIRD, NEUTRAL], 0.0,
     "would feel as it should"),
    ("a slip of ten", "lever-angle",
     lambda g, a: f"{float(a['lever-angle'].split()[0]) * 10:.4f} °", 0.0, "10 times too large"),
]  # fmt: skip


def _spring(given):
    from twoshaft.units.quantities import Q

    d = given["detent"]
    return Q(d["rate_n_per_mm"] * (d["free_mm"] - d["fitted_mm"]), "N")


def _ramp(given):
    from twoshaft.units.quantities import Q

    return Q(given["detent"]["ramp_deg"], "deg")


@pytest.mark.parametrize(
    ("field", "answer", "share", "says"), [w[1:] for w in WRONG], ids=[w[0] for w in WRONG]
)
@pytest.mark.parametrize("learner", ["m1", "m2", "m3"])
def test_a_typical_wrong_answer_earns_its_part_and_is_told_why(
    marked, learner, field, answer, share, says
):
    fields, _ = marked(learner, **{field.replace("-", "_"): answer})
    assert fields[field].share == pytest.approx(share), fields[field].sentences
    assert says in " ".join(fields[field].sentences)


def test_half_a_proof_fails_the_outcome_whatever_the_points(marked):
    fields, result = marked("m1", lockout_way=way(FIFTH, "fifth", "reverse"))
    assert not fields["lockout-way"].passed and not result.met
    assert result.points > 0.9 * result.maximum


EACH = {
    "lockout-reading": "prove-lockout",
    "detent-verdict": "detent-force",
    "interlock-why": "interlock-holds",
    "interlock-free": "interlock-holds",
    "interlock-pin": "interlock-holds",
    "unseen-do": "choose-hand-test",
    "pin-verdict": "build-selector",
    "safe-do": "selector-safety",
}
"""Fields of which every line decides, and their outcomes."""


def stored(answers):
    return [f"{line}={option}" for line, option in answers.items()]


@pytest.mark.parametrize("name", EACH)
def test_one_line_wrong_fails_the_outcome_and_says_why(module, marked, name):
    clean = module.clean("m2")
    right, asked = clean.references[name].value, clean.fields[name]
    for line, _ in asked.lines:
        for option, _ in asked.options:
            if option == right[line]:
                continue
            wrong = stored(dict(right) | {line: option})
            fields, mark = marked("m2", **{name.replace("-", "_"): wrong})
            (met,) = [one.met for one in mark.outcomes if one.id == EACH[name]]
            assert fields[name].share < 1 and not fields[name].passed and not met
            assert len(" ".join(fields[name].sentences)) > 60


@pytest.mark.parametrize("name", EACH)
def test_blank_and_one_answer_everywhere_pass_no_deciding_question(module, marked, name):
    asked = module.clean("m2").fields[name]
    for answers in [
        [],
        *([f"{line}={key}" for line, _ in asked.lines] for key, _ in asked.options),
    ]:
        fields, _ = marked("m2", **{name.replace("-", "_"): answers})
        assert not fields[name].passed and fields[name].share < 0.5


def test_another_way_round_proves_it_as_well(marked):
    """Any movement that tries and shows it is right, not only the model's."""
    first = "at:gate-first-second"
    fields, result = marked(
        "m3", lockout_way=way(FIFTH, "reverse", NEUTRAL, "fifth", NEUTRAL, "reverse", first, FIFTH, "reverse")
    )  # fmt: skip
    assert fields["lockout-way"].share == 1 and result.met


def test_an_early_slip_is_charged_once(marked):
    """A spring force with a one carried too often goes on into force, crest and decision."""

    def wrong(answers):
        right = float(answers["detent-spring"].split()[0])
        return right, right + 10.0 ** (math.floor(math.log10(right)) - 1)

    def high(given, answers):
        return f"{wrong(answers)[1]:.3f} N"

    def scaled(given, answers):
        right, own = wrong(answers)
        return f"{float(answers['detent-leave'].split()[0]) * own / right:.3f} N"

    fields, _ = marked("m1", detent_spring=high, detent_leave=scaled)
    assert fields["detent-spring"].share == 0
    assert fields["detent-leave"].share == 1 and fields["detent-leave"].carried


@pytest.mark.parametrize("bad", [["turn:sideways"], "neutral", [NEUTRAL] * 30, [7], {"a": 1}])
def test_a_damaged_movement_earns_nothing_and_stops_nothing(marked, bad):
    fields, result = marked("m1", lockout_way=bad)
    assert fields["lockout-way"].share == 0
    assert result.points > 0.8 * result.maximum


def test_no_feedback_gives_the_key_away(module, marked):
    """The sentences of wrong answers name none of the misbuilds that are right."""
    issued = module.issue("m1")
    answers = module.right(issued)
    fields, _ = marked("m1", explain_all=lambda g, a: [id for id, _ in g["explain"]["options"]])
    names = dict(map(tuple, issued["given"]["explain"]["options"]))
    told = " ".join(fields["explain-all"].sentences)
    assert not any(names[id] in told for id in answers["explain-all"])
