"""Module The whole build marked: typical wrong answers, follow-through, must-pass."""

import random
from statistics import mean

import pytest

from twoshaft.jobsheet.kinds import Each
from twoshaft.models import order
from twoshaft.models.faults import as_built, run_check
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
    }  # fmt: skip
    fields, result = marked(**{n.replace("-", "_"): v for n, (v, _, _) in wrong.items()})
    for name, (_, share, words) in wrong.items():
        assert fields[name].share == pytest.approx(share), name
        assert words in " ".join(fields[name].sentences), name
    assert final and result.points < result.maximum


PARTS = {
    "ring-narrow": ("again", "below its least"),
    "ring-unread": ("new", "its gap was not read"),
    "washer-thick": ("look", "stands in the line already"),
    "washer-scored": ("again", "scores the gear"),
    "seal-out": ("again", "weeps"),
    "crushed": ("again", "squeezed"),
    "circlip-unseen": ("again", "nobody sees its shape"),
    "circlip-wide": ("again", "comes out"),
    "bearing-ring": ("new", "thrown away"),
    "bearing-balls": ("again", "through the balls"),
    "bolt-once": ("again", "wants another"),
    "bolt-unread": ("again", "nobody measured its length"),
    "nut-staked": ("again", "bent once"),
}
SIGNS = {
    "pushed": ("nobody", "the check was made"),
    "watched": ("you", "made the check"),
    "wrote": ("you", "made the check"),
    "counted": ("other", "did not make this check"),
    "shim-since": ("you", "made the check"),
    "both": ("other", "did not make this check"),
    "held": ("nobody", "the check was made"),
    "unknown": ("other", "did not make this check"),
}
"""Lines answered wrongly as a mechanic might, and words of the sentence that is told."""


RECORD = {
    "failed": ("strike", "what was done and read"),
    "read": ("open", "what was done and read"),
    "card": ("stays", "something else was done"),
    "clean": ("stays", "something else was done"),
    "ahead": ("stays", "nobody has done it"),
    "filled": ("strike", "nobody has done it"),
}
FLANGE = {
    "still": ("round", "No bolt moved"),
    "whole-line": ("out", "No bolt moved"),
    "turned": ("done", "lost clamp to its neighbour"),
    "neighbour": ("out", "lost clamp to its neighbour"),
    "soft": ("round", "feels the thread"),
    "stiff": ("done", "feels the thread"),
}
CHECKS = {
    "as-due": ("again", "showed what is due"),
    "kept-out": ("find", "showed what is due"),
    "wrong-way": ("go", "did not pass"),
    "slipped": ("again", "did not pass"),
    "let-go": ("find", "not made as asked"),
    "no-figure": ("go", "not made as asked"),
}
SLIPS = [
    ("parts-again", PARTS),
    ("notes-signs", SIGNS),
    ("notes-lines", RECORD),
    ("flange-says", FLANGE),
    ("checks-say", CHECKS),
]


@pytest.mark.parametrize(("name", "slips"), SLIPS)
def test_a_part_or_a_signature_decided_wrongly_is_told_why(module, name, slips):
    told = set()
    for learner in (f"m{k}" for k in range(8)):
        right = module.right(learner)[name]
        for line in {one.partition("=")[0] for one in right} & set(slips):
            option, words = slips[line]
            wrong = {name.replace("-", "_"): with_line(right, line, option)}
            fields, _ = module.marked(learner, **wrong)
            assert fields[name].passed == (name not in DECIDING) and fields[name].share < 1, line
            assert words in " ".join((*fields[name].sentences, *fields[name].details)), line
            told.add(line)
    assert len(told) >= 0.8 * len(slips), told


def test_a_slip_in_the_gap_is_charged_once(marked, module, issued):
    """Limits and shim are judged on the learner's own gap, a one carried too often."""
    right = module.right(issued)
    new = {
        f"{what}_output_shaft": f"{figure(right[f'{what}-output-shaft']) + 0.1:.3f} mm"
        for what in ("gap", "thin", "thick", "shim")
    }
    fields, _ = marked(**new)
    assert fields["gap-output-shaft"].share == 0
    for what in ("thin", "thick", "shim"):
        assert fields[f"{what}-output-shaft"].share == 1, what
    assert fields["thin-output-shaft"].carried and fields["thick-output-shaft"].carried


DECIDING = {
    "build-order": "build-in-order",
    "begun-next": "build-in-order",
    "ways": "fit-right-way",
    "threads": "tighten-to-clamp",
    "parts-again": "use-again-or-renew",
    "proof-fifth-reverse": "proof-of-lockout",
    "proof-says": "proof-of-lockout",
    "verdicts": "check-own-build",
    "notes-signs": "keep-record",
    "notes-do": "keep-record",
    "flange-says": "tighten-to-clamp",
    "checks-say": "check-own-build",
}
"""Answers that decide, and the outcome of each."""


def with_line(answer, line, option):
    """An answer of several lines with another option in one of them; none where it is None."""
    kept = [one for one in answer if one.partition("=")[0] != line]
    return kept if option is None else [*kept, f"{line}={option}"]


def test_a_whole_solution_is_met_and_any_deciding_item_wrong_or_blank_is_not(
    marked, module, issued
):
    """Every deciding answer: blank, and line by line with every wrong option and with none."""
    right = module.right(issued)
    fields, whole = marked()
    assert {name for name, field in fields.items() if field.must_pass} == set(DECIDING)
    assert all(one.met for one in whole.outcomes) and whole.points == whole.maximum
    asked = module.clean(issued).fields
    walked = 0
    for name, outcome in DECIDING.items():
        wrong = [None]
        if isinstance(asked[name], Each):
            options = [key for key, _ in asked[name].options]
            own = dict(one.split("=") for one in right[name])
            wrong += [
                with_line(right[name], line, option)
                for line, is_right in own.items()
                for option in (None, *(one for one in options if one != is_right))
            ]
        for answer in wrong:
            # What else is right follows the own build, so only the outcome that decides is read.
            _, result = marked(**{name.replace("-", "_"): answer})
            met = {one.id: one.met for one in result.outcomes}
            assert not met[outcome], (name, answer)
            walked += 1
    lines = sum(len(asked[name].lines) for name in DECIDING if isinstance(asked[name], Each))
    assert walked >= len(DECIDING) + 2 * lines


def test_a_wrong_way_round_is_shown_by_the_check_that_was_made(module, unit):
    """Two lines alike but for the checks that were made have another answer."""
    for learner in (f"m{k}" for k in range(4)):
        issued = module.issue(learner)
        right = dict(one.split("=") for one in module.right(issued)["late-shows"])
        assert sorted(right.values()) == ["not", "not", "not", "shown", "shown"]
        for id, _, operation, way, made in issued["given"]["late"]["others"]:
            ways = unit.operation_by_id[operation].wrong_ways
            misbuild = next(one for one in ways if one.id == way).misbuild
            built = as_built(unit, [unit.faults.misbuild_by_id(misbuild)] if misbuild else [])
            failing = {c.id for c in unit.faults.checks if not run_check(c, built).passes}
            assert right[id] == ("shown" if failing & set(made) else "not")


def test_all_ways_round_or_all_threads_wrong_is_told_why(marked, module, issued):
    """Points alone do not make up for what decides."""
    right = module.right(issued)
    bench = issued["given"]["bench"]
    turned = {"as-it-lies": "changed", "changed": "as-it-lies"}
    ways = [f"{one.split('=')[0]}={turned[one.split('=')[1]]}" for one in right["ways"]]
    fields, result = marked(ways=ways, verdicts=right["verdicts"])
    assert fields["ways"].share == 0 and not fields["ways"].passed
    assert "Right is: " in " ".join((*fields["ways"].sentences, *fields["ways"].details))
    assert result.points > 0.7 * result.maximum
    left = [f"state-{group}=left" for group in bench["threads"]]
    fields, _ = marked(threads=left)
    assert not fields["threads"].passed and fields["threads"].share < 1


def test_a_friends_ways_threads_and_cases_do_not_fit(module):
    """What lies on the bench is drawn for each learner."""
    sheets = [module.right(f"m{k}") for k in range(8)]
    cases = ("begun-next", "parts-again", "proof-says", "notes-signs", "notes-do")
    cases += ("notes-lines", "flange-says", "checks-say")
    for name in ("ways", "threads", *cases):
        assert len({tuple(sheet[name]) for sheet in sheets}) == len(sheets), name


def test_checks_are_judged_on_the_unit_as_it_was_built(marked, module):
    """A lockout built the wrong way round fails its proof: who says so is right."""
    check = "verdict-check-lockout"
    learner = next(name for name in (f"m{k}" for k in range(40))
                   if f"{check}={GO_ON}" in module.right(name)["verdicts"]
                   and any(one.startswith("way-fit-lockout=") for one in module.right(name)["ways"]))  # fmt: skip
    right = module.right(learner)
    own = dict(one.split("=") for one in right["ways"])["way-fit-lockout"]
    other = "changed" if own == "as-it-lies" else "as-it-lies"
    fields, _ = marked(learner, ways=with_line(right["ways"], "way-fit-lockout", other),
                       verdicts=with_line(right["verdicts"], check, OPEN))  # fmt: skip
    assert fields["ways"].share < 1 and not fields["ways"].passed
    assert fields["verdicts"].share == 1
    assert fields["verdicts"].carried


def test_what_can_hurt_somebody_must_be_right_and_damage_stops_nothing(marked, module, issued):
    start = [step for step, _ in issued["given"]["plan"]["start"]]
    fields, result = marked(
        notes_do=[f"{scene}=sign" for scene, _ in issued["given"]["notes"]["scenes"]],
        proof_fifth_reverse=["at:gate-fifth-reverse"],
        build_order=start,
        shim_differential={"a": 1},
        film_case_joint=["nobody knows"],
        late_off=7,
        ways={"a": 1},
        threads=["nobody=knows"],
    )
    for name in ("notes-do", "proof-fifth-reverse", "build-order", "ways", "threads"):
        assert fields[name].must_pass and not fields[name].passed and fields[name].share < 1, name
    for name in ("shim-differential", "film-case-joint", "late-off", "ways", "threads"):
        assert fields[name].share == 0, name
    assert result.points > 0.3 * result.maximum


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
