"""Observations by criterion, the register of assessors, and what counts at the bench."""

import json
from datetime import date, timedelta

import pytest

from twoshaft.errors import CohortError
from twoshaft.outcomes import (
    Attempt,
    Evidence,
    Observation,
    State,
    load_outcomes,
    load_rules,
    stand,
)
from twoshaft_grader.cohort.assessors import (
    assessor_named,
    assessors_of,
    enter_assessor,
    withdraw_assessor,
)
from twoshaft_grader.cohort.folder import make_cohort
from twoshaft_grader.cohort.observations import (
    every_observation_of,
    list_observations,
    observations_of,
    observe,
    take_back,
)
from twoshaft_grader.cohort.roster import Learner
from twoshaft_grader.cohort.trail import read_trail

ROSTER = [Learner("a1", "Okafor", "Ada", "A"), Learner("b2", "Lim", "Bo", "A")]
OUTCOME = "safe-order"
CRITERIA = list(load_outcomes()[OUTCOME].criteria)
SEEN = dict.fromkeys(CRITERIA, "seen")


@pytest.fixture
def cohort(tmp_path):
    return make_cohort(tmp_path / "group", id="group", timezone="UTC")


def see(cohort, **changes):
    form = dict(by="R. Holm", criteria=SEEN, bench="3", unit="B5 no. 12") | changes
    return observe(cohort, ROSTER, "a1", OUTCOME, **form)


def test_a_whole_form_is_kept_and_says_by_itself_whether_it_is_met(cohort):
    yesterday = (date.today() - timedelta(days=1)).isoformat()
    see(cohort, seen_on=yesterday, confirmed=True, note="worked alone")
    [one] = observations_of(cohort, "a1")
    assert one.met and dict(one.criteria) == SEEN and one.day == yesterday < one.at[:10]
    assert (one.bench, one.unit, one.note, one.confirmed) == (
        "3", "B5 no. 12", "worked alone", date.today().isoformat(),
    )  # fmt: skip
    stored = json.loads((cohort.root / "observations" / "a1.json").read_text())
    assert stored["format"] == 2
    mixed = SEEN | {CRITERIA[-1]: "not-tried"}
    assert not see(cohort, criteria=mixed, note="no time").met


@pytest.mark.parametrize(
    ("change", "sentence"),
    [
        ({"criteria": {CRITERIA[0]: "seen"}}, "the form is half filled: nothing is said of"),
        ({"criteria": SEEN | {"other": "seen"}}, 'has no criterion "other"'),
        ({"criteria": SEEN | {CRITERIA[0]: "perhaps"}}, '"perhaps" says nothing of'),
        ({"criteria": SEEN | {CRITERIA[0]: "not-yet"}}, "says what is missing"),
        ({"criteria": SEEN | {CRITERIA[0]: "not-yet"}, "met": True}, "needs every criterion seen"),
        ({"criteria": {}}, "nothing says whether it is met"),
        ({"seen_on": "yesterday"}, "is no day"),
        ({"seen_on": "2999-01-01"}, "has not come yet"),
        ({"prior": True}, "by what it is shown"),
        ({"by": "  "}, "nobody is named"),
    ],
)
def test_a_half_filled_form_is_refused_in_one_sentence_and_keeps_nothing(cohort, change, sentence):
    with pytest.raises(CohortError, match=sentence) as caught:
        see(cohort, **change)
    assert "\n" not in caught.value.sentence and caught.value.mend
    assert observations_of(cohort, "a1") == ()
    assert [line.act.did for line in read_trail(cohort.root)] == ["make the cohort"]


def test_once_somebody_is_on_the_register_nobody_else_counts(cohort):
    see(cohort, by="Anybody")
    enter_assessor(cohort, "rh", "R. Holm", role="internal assessor")
    with pytest.raises(CohortError, match=r"not on the register.*on it: rh \(R\. Holm\)"):
        see(cohort, by="K. Tam")
    assert see(cohort, by="RH", note="by id").by == see(cohort, by="r. holm").by == "R. Holm"
    withdraw_assessor(cohort, "rh", why="left the college")
    with pytest.raises(CohortError, match="not on the register"):
        see(cohort, by="rh")
    assert observations_of(cohort, "a1")[-1].by == "R. Holm"
    [gone] = assessors_of(cohort)
    assert gone.since and gone.until


def test_the_register_refuses_what_would_confuse(cohort):
    with pytest.raises(CohortError, match=r"not on the register.*put somebody on it"):
        assessor_named(cohort, "R. Holm", needed=True)
    enter_assessor(cohort, "rh", "R. Holm")
    for id, name, says in (
        ("rh", "Other", "is on the register already"),
        ("r2", "r. HOLM", "is on the register already"),
        ("R H", "Other", "will not do"),
        ("kt", " ", "name is missing"),
    ):
        with pytest.raises(CohortError, match=says):
            enter_assessor(cohort, id, name)
    with pytest.raises(CohortError, match='nobody on the register has the id "zz"'):
        withdraw_assessor(cohort, "zz")
    assert len(assessors_of(cohort)) == 1


def test_one_that_is_taken_back_stays_in_the_list_and_counts_no_more(cohort):
    see(cohort, criteria={}, met=False, note="lifted alone")
    see(cohort)
    take_back(cohort, ROSTER, "a1", 2, by="K. Tam", why="it was another learner")
    assert [one.met for one in observations_of(cohort, "a1")] == [False]
    gone = every_observation_of(cohort, "a1")[1].taken_back
    assert (gone.by, gone.why) == ("K. Tam", "it was another learner")
    listed = list_observations(cohort, ROSTER)
    assert [(one.number, one.last) for one in listed] == [(1, True), (2, False)]
    last = read_trail(cohort.root)[-1].act
    assert (last.did, last.before, last.after, last.why) == (
        "take back", "met", "taken back", "it was another learner",
    )  # fmt: skip
    for number, why, says in (
        (2, "again", "was taken back by K. Tam"),
        (3, "x", "has no observation 3"),
        (1, " ", "the reason is missing"),
    ):
        with pytest.raises(CohortError, match=says):
            take_back(cohort, ROSTER, "a1", number, by="K. Tam", why=why)
    see(cohort, note="seen again")
    assert [one.met for one in observations_of(cohort, "a1")] == [False, True]


def at_the_bench(met=True, **more):
    return Observation("o", met, Evidence.AT_THE_BENCH, "R. Holm", "2026-11-27T10:00:00Z", **more)


def test_what_is_met_at_the_bench_meets_a_bench_outcome_where_the_rule_says_so():
    bench, seen = Evidence.AT_THE_BENCH, [at_the_bench()]
    failed = [Attempt(False, Evidence.SUPERVISED)]
    assert stand(bench, failed, seen).state == stand(bench, [], seen).state == State.NOT_YET
    for attempts in ([], failed):
        assert stand(bench, attempts, seen, bench_alone=True).state == State.MET
    prior = [at_the_bench(prior=True, note="certificate 12")]
    assert stand(bench, [], prior, bench_alone=True).state == State.MET
    not_yet = stand(bench, [], [*seen, at_the_bench(met=False)], bench_alone=True)
    assert not_yet.state == State.NOT_YET
    assert stand(bench, [], [], bench_alone=True).missing == "to be shown at the bench"
    for needed in (Evidence.OPEN_BOOK, Evidence.SUPERVISED):  # the rule is about the bench alone
        assert stand(needed, failed, seen, bench_alone=True).state == State.NOT_YET


def test_the_colleges_rules_say_bench_attempts_and_numbers(tmp_path):
    path = tmp_path / "rules.yaml"
    path.write_text(
        'attempts: latest\nnumbers: {safe-order: "LO 2.1"}\n'
        "outcomes: {safe-order: {points: 70 %, bench alone: yes, source: rule 4}}\n"
    )
    rules = load_rules(path)
    assert (
        rules.latest and rules.number("safe-order") == "LO 2.1" and not rules.number("plan-order")
    )
    assert rules.of("safe-order").bench_alone and not rules.of("plan-order").bench_alone
    assert not load_rules().latest


def test_two_staff_at_once_lose_nothing(cohort):
    import threading

    def work(name):
        for number in range(4):
            see(cohort, by=name, note=f"{name} {number}")

    both = [threading.Thread(target=work, args=(name,)) for name in ("R. Holm", "K. Tam")]
    for one in both:
        one.start()
    for one in both:
        one.join()
    assert len(observations_of(cohort, "a1")) == 8
