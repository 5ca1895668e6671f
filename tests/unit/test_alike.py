"""Who agrees more than chance allows: found when copied, not when not, whatever everybody errs in."""

from __future__ import annotations

from random import Random

import pytest

from twoshaft_grader.records.agreement import at_least, pairs_alike

QUESTIONS = [f"q{number}" for number in range(30)]


def group(seed, people=24, knows=0.6):
    """People who work apart: what they do not know, they guess, the tempting answer mostly."""
    chance = Random(seed)
    answers, right = [], []
    for _ in range(people):
        own = {q: "right" if chance.random() < knows else wrong(chance) for q in QUESTIONS}
        answers.append(own)
        right.append(frozenset(q for q, a in own.items() if a == "right"))
    return answers, right


def wrong(chance):
    return chance.choices(["tempting", "other", "third", f"{chance.random():.3f}"], [5, 2, 1, 4])[0]


def plain(answers, right, i, j):
    """The same pair, worked out without matrices."""
    chances, same = [], 0
    for q in QUESTIONS:
        if q not in answers[i] or q not in answers[j] or (q in right[i] and q in right[j]):
            continue
        others = [a[q] for k, a in enumerate(answers) if k not in (i, j) and q in a]
        match = sum(others.count(a) ** 2 for a in set(others)) / max(len(others), 1) ** 2
        chances.append(min(1, max(match, 1 / (len(others) + 1))))
        same += answers[i][q] == answers[j][q]
    return len(chances), same, sum(chances), at_least(same, chances)


def test_each_pair_as_worked_out_by_hand():
    answers, right = group(1, people=9)
    answers[3] = dict(answers[5])
    del answers[2]["q4"], answers[5]["q7"]
    right[2], right[5] = right[2] - {"q4"}, right[5] - {"q7"}
    found = pairs_alike(answers, right)
    assert found
    for pair in found:
        asked, same, expected, chance = plain(answers, right, pair.one, pair.other)
        assert (pair.asked, pair.same) == (asked, same)
        assert pair.expected == pytest.approx(expected)
        assert pair.chance == pytest.approx(chance)


def test_a_copied_sheet_is_the_first_of_all():
    answers, right = group(2)
    answers[7], right[7] = dict(answers[19]), right[19]
    first = pairs_alike(answers, right)[0]
    assert (first.one, first.other) == (7, 19)
    assert first.same == first.asked
    assert first.chance * 276 < 1e-3


@pytest.mark.slow
def test_people_who_work_apart_are_hardly_ever_told():
    told = 0
    for seed in range(60):
        answers, right = group(seed)
        told += any(pair.chance * 276 <= 0.01 for pair in pairs_alike(answers, right))
    assert told <= 3  # one of a hundred groups is what is promised; more than 3 of 60: p < 0.01


def test_a_slip_that_all_make_tells_nothing():
    answers = [dict.fromkeys(QUESTIONS, "tempting") for _ in range(12)]
    assert not pairs_alike(answers, [frozenset()] * 12)


def test_two_alone_and_nobody_are_no_pair():
    same = {"q": "a"}
    assert not pairs_alike([same, dict(same)], [frozenset(), frozenset()])
    assert pairs_alike([], []) == []
    assert pairs_alike([same], [frozenset()]) == []


def test_one_chance_for_all_is_the_binomial():
    # Shares 0.6, 0.2, 0.15, 0.05 of four options: two agree with 0.425; 16 of 20 and more.
    one = 0.6**2 + 0.2**2 + 0.15**2 + 0.05**2
    assert at_least(16, [one] * 20) == pytest.approx(7.18e-4, rel=1e-3)
