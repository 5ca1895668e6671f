"""Module The whole build marked: typical wrong answers, follow-through, must-pass."""

import random
from statistics import mean

import pytest

from twoshaft.models import order
from twoshaft.models.wholebuild import GO_ON, OPEN, Job, asks_at

MODULE = "10-whole-build"
LEARNER = "m1"


@pytest.fixture(scope="module")
def issued(module):
    return module.issue(LEARNER)


def figure(text):
    """The number in an answer."""
    return float(text.split()[0])


def test_typical_wrong_answers_earn_their_share_and_are_told_why(marked, module, issued):
    right = module.right(issued)
    given = issued["given"]
    late, clock, turns = given["late"], given["clock"], given["turns"]
    minutes = {row[0]: row[2:] for row in late["rows"]}
    itself = sum(minutes[late["rows"][0][0]])
    (wheel, final) = (row[1:] for row in turns["wheels"])
    wrong = {
        "clock-used": (f"{figure(right['clock-used']) - clock['inside'][-1][1]:g} min", 0.5,
                       "last step takes time"),
        "turns-ratio": (f"{wheel[1] / wheel[0]:.4f}", 0.25, "final drive belongs"),
        "turns-input": (f"{2 * figure(right['turns-input']):.4f} turns", 0.25, "half the turns"),
        "late-minutes": (f"{figure(right['late-minutes']) - itself:g} min", 0.5, "wrong step itself"),
        "thin-differential": (right["gap-differential"], 0.25, "neither play nor preload"),
        "torque-detent-plugs": ("24 N·m", 0.0, "torque of the card"),
        "adapter-bolt": (right["adapter-setting"], 0.0, "should be set"),
        "notes-signs": ("boss", 0.0, "whoever made the check"),
    }  # fmt: skip
    if given["adapter"]["angle_deg"] == 90:
        del wrong["adapter-bolt"]
    fields, result = marked(**{n.replace("-", "_"): v for n, (v, _, _) in wrong.items()})
    for name, (_, share, words) in wrong.items():
        assert fields[name].share == pytest.approx(share), name
        assert words in " ".join(fields[name].sentences), name
    assert final and result.points < result.maximum


def test_a_slip_in_the_gap_is_charged_once(marked, module, issued):
    """Limits and shim are judged on the learner's own gap."""
    right = module.right(issued)
    new = {
        f"{what}_differential": f"{figure(right[f'{what}-differential']) + 0.03:.3f} mm"
        for what in ("gap", "thin", "thick", "shim")
    }
    fields, _ = marked(**new)
    assert fields["gap-differential"].share == 0
    for what in ("thin", "thick", "shim"):
        assert fields[f"{what}-differential"].share == 1, what
    assert fields["thin-differential"].carried and fields["thick-differential"].carried


def test_checks_are_judged_on_the_unit_as_it_was_built(marked, module, issued):
    """A lockout built the wrong way round fails its proof: who says so is right."""
    learner = next(name for name in ("m1", "m2", "m3", "m4", "m5", "m6")
                   if module.right(name)["verdict-check-lockout"] == GO_ON
                   and "way-fit-lockout" in module.right(name))  # fmt: skip
    right = module.right(learner)
    other = next(k for k in ("way-1", "way-2", "way-3") if k != right["way-fit-lockout"])
    fields, _ = marked(learner, way_fit_lockout=other, verdict_check_lockout=OPEN)
    assert fields["way-fit-lockout"].share == 0
    assert fields["verdict-check-lockout"].share == 1
    assert fields["verdict-check-lockout"].carried


def test_what_can_hurt_somebody_must_be_right_and_damage_stops_nothing(marked, module, issued):
    start = [step for step, _ in issued["given"]["plan"]["start"]]
    fields, result = marked(
        notes_do="sign",
        proof_fifth_reverse=["at:gate-fifth-reverse"],
        build_order=start,
        shim_differential={"a": 1},
        film_case_joint=["nobody knows"],
        late_off=7,
    )
    for name in ("notes-do", "proof-fifth-reverse", "build-order"):
        assert fields[name].must_pass and not fields[name].passed and fields[name].share < 1, name
    for name in ("shim-differential", "film-case-joint", "late-off"):
        assert fields[name].share == 0, name
    assert result.points > 0.4 * result.maximum


def flat(lists):
    return [step for one in lists for step in one]


BLIND = {
    "each list backwards": lambda lists, job, rng: flat(one[::-1] for one in lists),
    "a step of each list in turn": lambda lists, job, rng: [
        one[k] for k in range(max(map(len, lists))) for one in lists if k < len(one)
    ],
    "each list shuffled": lambda lists, job, rng: flat(rng.sample(one, len(one)) for one in lists),
    "what asks for nothing first": lambda lists, job, rng: flat(
        sorted(one, key=lambda step: len(asks_at(job, step))) for one in lists
    ),
    "what the bench reads something at last": lambda lists, job, rng: sorted(
        flat(lists), key=lambda step: any(ask.kind == "check" for ask in asks_at(job, step))
    ),
}
"""Ways to put the steps in order that know nothing of the trade, from the lists that are shown."""


def test_a_blind_build_earns_next_to_nothing(module):
    """The stages are given away by the lists; the mark is made so that this is worth nothing."""
    earned = {way: [] for way in BLIND}
    for learner in (f"m{k}" for k in range(8)):
        given = module.issue(learner)["given"]
        job, start = Job.of(module.unit, given["bench"]), [s for s, _ in given["plan"]["start"]]
        task = job.task.starting_from(start)
        lists = [[step for step in start if task.stage(step) == s.id] for s in module.unit.stages]
        assert flat(lists) == start
        assert order.mark(task, start) == 0
        for way, build in BLIND.items():
            built = build(lists, job, random.Random(learner))
            assert sorted(built) == sorted(start)
            earned[way].append(order.mark(task, built))
    assert all(mean(shares) <= 0.05 for shares in earned.values()), earned
