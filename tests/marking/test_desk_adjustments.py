"""Adjustments of single learners, and the statement that work is a learner's own."""

import csv
import json
import shutil
from datetime import UTC, datetime, timedelta

import pytest

from twoshaft.errors import CohortError
from twoshaft.jobsheet import handin
from twoshaft.jobsheet.signin import SignIn
from twoshaft.jobsheet.startpage import StartPage
from twoshaft.stored.own_work import OWN_WORK, STATEMENT
from twoshaft.stored.person import Person
from twoshaft_grader.cohort.adjustments import adjustments_of
from twoshaft_grader.cohort.assign import change_due, read_assigned
from twoshaft_grader.cohort.collect import collect
from twoshaft_grader.cohort.extensions import due_for
from twoshaft_grader.cohort.give_back import give_back
from twoshaft_grader.cohort.intake import roster_of
from twoshaft_grader.cohort.marking_run import mark_assignment
from twoshaft_grader.cohort.take_out import take_out
from twoshaft_grader.cohort.trail import read_trail
from twoshaft_grader.cohort.workplace import sign_in_words
from twoshaft_grader.desk.commands import main
from twoshaft_grader.desk_pages.adjustments import Adjustments
from twoshaft_grader.desk_pages.page import Desk, Work
from twoshaft_grader.desk_pages.parts import Values

LEARNERS = ("a1", "b2", "c3")
DUE = datetime(2030, 5, 4, 16, 0, tzinfo=UTC)


@pytest.fixture(scope="module")
def made(handed_out, tmp_path_factory):
    trial = handed_out(tmp_path_factory.mktemp("adjustments"), LEARNERS)
    change_due(trial.cohort, trial.name, DUE)
    return trial


@pytest.fixture
def trial(made, tmp_path):
    shutil.copytree(made.base, tmp_path / "base", symlinks=True)
    return type(made)(tmp_path / "base")


@pytest.fixture
def page(trial):
    return Adjustments(Desk(trial.cohort.root, "R. Holm"))


def do(page, *ticked, **typed):
    return page.do("adjust", Values(typed, {"adjustments": list(ticked)}), Work())


def start_page(trial, learner):
    place = StartPage(SignIn(trial.cohort.workplace))
    word = sign_in_words(trial.cohort)[learner]
    place.hear({"type": "sign-in", "name": learner, "word": word})
    return place


def exported(trial):
    cohort = trial.cohort
    assert main(["export", "--cohort", str(cohort.root)]) == 0
    with open(cohort.root / "exports" / "outcomes.csv", newline="", encoding="utf-8-sig") as file:
        return {row["learner"]: row for row in csv.DictReader(file)}


def round_of(trial):
    cohort, assigned = trial.cohort, read_assigned(trial.cohort, trial.name)
    people = roster_of(cohort)
    collect(cohort, assigned, people)
    mark_assignment(cohort, assigned, people, workers=1)
    give_back(cohort, assigned, people)


def test_more_time_changes_every_date_of_that_learner_alone(trial, page):
    cohort, assigned = trial.cohort, read_assigned(trial.cohort, trial.name)
    said = do(page, "a1", days="7", large=True, colour="cream", reader=True, why="dyslexia")
    assert said == "Arranged for a1: 7 days more, a reader, large print, cream ground."
    assert due_for(cohort, assigned, "a1") == DUE + timedelta(days=7)
    assert due_for(cohort, assigned, "b2") == DUE
    assert start_page(trial, "a1").entries[0]["due"].startswith("2030-05-11")
    assert start_page(trial, "b2").entries[0]["due"].startswith("2030-05-04")
    change_due(cohort, trial.name, DUE + timedelta(days=1))  # whoever sets a date sets theirs too
    assert start_page(trial, "a1").entries[0]["due"].startswith("2030-05-12")
    act = read_trail(cohort.root)[-2].act
    assert (act.did, act.what, act.by, act.why) == ("adjust", "a1", "R. Holm", "dyslexia")


def test_what_is_arranged_is_applied_and_the_reason_stays_with_staff(trial, page):
    do(page, "a1", large=True, colour="blue", why="dyslexia")
    first, other = start_page(trial, "a1"), start_page(trial, "b2")
    assert first.look == {"print": "large", "colour": "blue"}
    assert other.look == {"print": "", "colour": ""}
    first.hear({"type": "sign-out"})
    assert first.look == {}
    trial.hand_in("a1")
    trial.hand_in("b2")
    round_of(trial)
    (mine,) = trial.cohort.feedback("a1", trial.name).glob("*.html")
    (theirs,) = trial.cohort.feedback("b2", trial.name).glob("*.html")
    assert '<html lang="en" data-ts-print="large" data-ts-colour="blue">' in mine.read_text()
    assert '<html lang="en">' in theirs.read_text()
    row = exported(trial)["a1"]
    assert row["adjustments"] == "large print, blue ground"
    for path in trial.cohort.shared.rglob("*"):
        assert not path.is_file() or b"dyslexia" not in path.read_bytes()


@pytest.mark.parametrize(
    ("ticked", "typed", "says"),
    [
        ((), {}, "no learner is ticked"),
        (("a1",), {"why": ""}, "the reason is missing"),
        (("a1",), {"days": "a week"}, "is no number of days"),
        (("a1",), {"days": "400"}, "give 0 to 60"),
        (("a1",), {"colour": "<b>"}, "there is no colour"),
        (("x9",), {}, "nobody on the roster"),
    ],
)
def test_what_will_not_do_is_refused(trial, page, ticked, typed, says):
    with pytest.raises(CohortError, match=says):
        do(page, *ticked, **({"days": "7", "why": "w"} | typed))
    assert not adjustments_of(trial.cohort)


def test_the_command_does_the_same_and_who_is_taken_out_is_in_none(trial, capsys):
    at = ["--cohort", str(trial.cohort.root)]
    words = ["adjust", "b2", "--more-days", "3", "--by", "R. Holm", "--why", "an injured hand"]
    assert main([*words, *at]) == 0 and main(["adjustments", *at]) == 0
    assert "b2: 3 days more, by R. Holm" in capsys.readouterr().out
    take_out(trial.cohort, "b2")
    assert not adjustments_of(trial.cohort)


def handed_in(trial, learner, **more):
    cohort, person = trial.cohort, Person(learner, f"Family {learner}", "Given")
    counter = handin.find_counter(cohort.workplace)
    folder = handin.fetch(counter, person, trial.name)
    (folder / "jobsheet.json").write_text(trial.sheet(learner))
    handin.hand_in(counter, person, trial.name, **more)
    return folder


def test_the_statement_goes_with_the_work_and_into_the_record(trial):
    folder = handed_in(trial, "a1", own_work=True)
    handed_in(trial, "b2")
    about = OWN_WORK.read(folder / OWN_WORK.file)
    assert about.statement == STATEMENT and about.learner == "a1"
    round_of(trial)
    rows = exported(trial)
    assert rows["a1"]["own_work_stated"] == about.stated and not rows["b2"]["own_work_stated"]
    (html,) = trial.cohort.feedback("a1", trial.name).glob("*.html")
    assert "stated to be your own work" in html.read_text()


@pytest.mark.parametrize(
    "harm",
    [
        lambda data: data | {"sheet": "0" * 64},
        lambda data: data | {"learner": "b2"},
        lambda data: data | {"assignment": "another-1"},
        lambda data: data | {"stated": "<script>"},
        lambda data: data | {"stated": "2099-01-01T00:00:00Z"},
        lambda data: data | {"format": 99},
        lambda _: [[]] * 500,
    ],
)
def test_a_statement_of_something_else_counts_for_nothing(trial, harm):
    folder = handed_in(trial, "a1", own_work=True)
    data = json.loads((folder / OWN_WORK.file).read_text())
    (arrived,) = trial.cohort.inbound.glob("a1+*")
    (arrived / OWN_WORK.file).write_text(json.dumps(harm(data)))
    round_of(trial)
    assert exported(trial)["a1"]["own_work_stated"] == ""
