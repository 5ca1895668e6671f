"""The contents of the course: what is met, and by which evidence; whose data is shown."""

import json

import pytest

from twoshaft.errors import CohortError
from twoshaft.jobsheet.people import Listed, word_check, write_people
from twoshaft.jobsheet.signin import SignIn
from twoshaft.jobsheet.startpage import StartPage
from twoshaft.modules import COURSE
from twoshaft.outcomes import Attempt, Evidence, Observation, State, stand
from twoshaft.readings.issue import MODULES
from twoshaft.stored.person import Person
from twoshaft_grader.cohort.folder import make_cohort
from twoshaft_grader.cohort.observations import observations_of, observe
from twoshaft_grader.cohort.roster import Learner
from twoshaft_grader.cohort.standing import write_standing
from twoshaft_grader.cohort.trail import read_trail
from twoshaft_grader.stored.returned import RETURNED, Returned

OPEN, WATCHED, BENCH = Evidence.OPEN_BOOK, Evidence.SUPERVISED, Evidence.AT_THE_BENCH


def saw(met, kind=BENCH):
    return Observation("o", met, kind, "R. Holm", "2026-11-25T10:00:00Z", "note")


@pytest.mark.parametrize(
    ("needed", "attempts", "seen", "state", "missing"),
    [
        (OPEN, [(True, OPEN)], [], State.MET, ""),
        (OPEN, [(False, OPEN), (True, OPEN)], [], State.MET, ""),
        (WATCHED, [(True, OPEN)], [], State.ENOUGH, "to be shown under supervision"),
        (WATCHED, [(True, WATCHED)], [], State.MET, ""),
        (WATCHED, [(True, OPEN), (False, WATCHED)], [], State.ENOUGH, "supervision"),
        (WATCHED, [(True, OPEN)], [saw(True, WATCHED)], State.MET, ""),
        (BENCH, [(True, WATCHED)], [saw(True, WATCHED)], State.ENOUGH, "at the bench"),
        (BENCH, [(True, OPEN)], [saw(True)], State.MET, ""),
        (BENCH, [(True, OPEN)], [saw(False)], State.NOT_YET, "again at the bench"),
        (BENCH, [(True, OPEN)], [saw(True), saw(False)], State.NOT_YET, "again at the bench"),
        (BENCH, [(True, OPEN)], [saw(True), saw(False), saw(True, WATCHED)], State.ENOUGH, "bench"),
        (BENCH, [], [saw(True)], State.NOT_YET, "in the exercise"),
        (BENCH, [(False, OPEN)], [], State.NOT_YET, "another attempt; then to be shown at"),
        (OPEN, [(True, OPEN)], [saw(False)], State.NOT_YET, "again"),
    ],
)
def test_met_takes_the_evidence_asked_for(needed, attempts, seen, state, missing):
    standing = stand(needed, [Attempt(*one) for one in attempts], seen)
    assert standing.state == state and missing in standing.missing
    assert bool(standing.missing) == (state != State.MET)


def test_the_course_order_is_that_of_the_readings():
    assert tuple(MODULES) == tuple(COURSE)


@pytest.fixture
def cohort(tmp_path):
    made = make_cohort(tmp_path / "group", salt="s", timezone="UTC")
    people = [Person("a1", "Okafor", "Ada"), Person("b2", "Lim", "Bo")]
    for person in people:
        (made.workplace / person.id).mkdir()
    write_people(made.workplace, [Listed(p, word_check(f"word {p.id}")) for p in people])
    return made


ROSTER = [Learner("a1", "Okafor", "Ada", ""), Learner("b2", "Lim", "Bo", "")]


def page_of(cohort, learner):
    sign_in = SignIn(cohort.workplace)
    sign_in.sign_in(learner, f"word {learner}")
    return StartPage(sign_in)


def returned(cohort, learner, **outcomes):
    told = Returned(
        points=5.0, maximum=8.0, must_pass="held", supervised_by="",
        given_back="2026-11-25T10:00:00Z", outcomes=outcomes,
    )  # fmt: skip
    RETURNED.write(cohort.root / "returned" / "order-of-work-1" / f"{learner}.json", told)


def line(page, module="order-of-work"):
    return next(one for one in page.modules if one["module"] == module)


def test_every_module_is_listed_for_who_is_signed_in_and_nobody_else(cohort):
    returned(cohort, "a1", **{"safe-order": True, "plan-order": True})
    write_standing(cohort, "a1")
    page = page_of(cohort, "a1")
    assert [one["module"] for one in page.modules] == list(COURSE)
    states = {
        statement: (state, missing) for state, statement, missing, _ in line(page)["outcomes"]
    }
    assert ("enough", "to be shown under supervision") in states.values()
    assert line(page)["count"].startswith("1 met, 1 enough, ")
    other = page_of(cohort, "b2")
    assert "met," not in line(other)["count"]
    page.hear({"type": "sign-out"})
    assert page.modules == []


def test_anothers_standing_in_ones_folder_is_not_shown(cohort):
    returned(cohort, "a1", **{"plan-order": True})
    write_standing(cohort, "a1")
    text = (cohort.workplace / "a1" / "standing.json").read_text()
    (cohort.workplace / "b2" / "standing.json").write_text(text)
    assert "met," not in line(page_of(cohort, "b2"))["count"]


def test_an_observation_is_kept_with_who_and_when_and_told_to_its_learner_alone(cohort):
    returned(cohort, "a1", **{"safe-order": True})
    seen = dict(by="R. Holm", note="watched the whole plan", kind="supervised")
    observe(cohort, ROSTER, "a1", "safe-order", met=False, **seen)
    observe(cohort, ROSTER, "a1", "safe-order", met=True, **seen)
    assert [(o.met, o.by) for o in observations_of(cohort, "a1")] == [
        (False, "R. Holm"), (True, "R. Holm"),
    ]  # fmt: skip
    logged = [line.act for line in read_trail(cohort.root) if line.act.did == "observe"]
    assert len(logged) == 2 and logged[0].why and logged[0].at.endswith("Z")
    assert [(one.before, one.after[:7]) for one in logged] == [
        ("", "not yet"),
        ("not yet", "met, su"),
    ]
    write_standing(cohort, "a1")
    told = json.loads((cohort.workplace / "a1" / "standing.json").read_text())
    assert told["outcomes"]["safe-order"]["state"] == "met"
    assert not (cohort.workplace / "b2" / "standing.json").exists()
    assert any("R. Holm" in seen for *_, seen in line(page_of(cohort, "a1"))["outcomes"])


@pytest.mark.parametrize(
    ("change", "sentence"),
    [
        ({"learner": "zz"}, "nobody on the roster"),
        ({"outcome": "order-of-work"}, "use one of: plan-order"),
        ({"by": " "}, "nobody is named"),
        ({"met": False}, "says what is missing"),
        ({"kind": "open-book"}, "no kind of observation"),
    ],
)
def test_an_observation_that_says_too_little_is_refused(cohort, change, sentence):
    asked = {"learner": "a1", "outcome": "plan-order", "by": "R. Holm", "met": True} | change
    with pytest.raises(CohortError, match=sentence):
        observe(cohort, ROSTER, asked.pop("learner"), asked.pop("outcome"), **asked)
    assert observations_of(cohort, "a1") == ()
