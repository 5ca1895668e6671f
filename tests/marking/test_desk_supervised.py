"""A supervised attempt: only what named learners hand in between opening and closing counts."""

import csv
import json
import shutil
from datetime import UTC, datetime, timedelta

import pytest

from twoshaft.errors import CohortError
from twoshaft.stored.job_sheet import Answer, SheetData, sheet_text
from twoshaft_grader.cohort.assessors import enter_assessor
from twoshaft_grader.cohort.assign import read_assigned
from twoshaft_grader.cohort.clock import stamp
from twoshaft_grader.cohort.collect import collect
from twoshaft_grader.cohort.give_back import give_back
from twoshaft_grader.cohort.intake import roster_of
from twoshaft_grader.cohort.marking_run import mark_assignment
from twoshaft_grader.cohort.standing import returned_to
from twoshaft_grader.cohort.supervised import close_sitting, open_sitting, sittings_of
from twoshaft_grader.cohort.take_out import take_out
from twoshaft_grader.cohort.trail import read_trail
from twoshaft_grader.desk.commands import main
from twoshaft_grader.desk_pages.page import Desk, Work
from twoshaft_grader.desk_pages.parts import Values
from twoshaft_grader.desk_pages.supervised import Supervised
from twoshaft_grader.stored.sittings import SITTINGS

SMALL_ANSWERS = {"gap-size": "12.5 mm", "gap-first": "clean"}  # of the small module: all right
LEARNERS = ("a1", "b2", "c3", "d4")


@pytest.fixture(scope="module")
def made(handed_out, tmp_path_factory):
    return handed_out(tmp_path_factory.mktemp("supervised"), LEARNERS)


@pytest.fixture
def trial(made, tmp_path):
    shutil.copytree(made.base, tmp_path / "base", symlinks=True)
    small = type(made)(tmp_path / "base")
    enter_assessor(small.cohort, "rh", "R. Holm")
    return small


@pytest.fixture
def page(trial):
    return Supervised(Desk(trial.cohort.root, "at the desk"))


def do(page, act, ticked=(), **typed):
    typed = {name.replace("_", "-"): value for name, value in typed.items()}
    return page.do(act, Values(typed, {"present": list(ticked)}), Work())


def table(page, id):
    (found,) = [part for part in page.show() if getattr(part, "id", "") == id]
    return found.texts()


def saved(trial, learner, moments, revisions=None):
    """A sheet whose answers were saved at these moments; also put into the learner's folder."""
    answers = {
        name: Answer(SMALL_ANSWERS[name], (revisions or {}).get(name, 1), stamp(moment))
        for name, moment in moments.items()
    }
    text = sheet_text(
        SheetData(
            learner=learner,
            module=read_assigned(trial.cohort, trial.name).module,
            attempt=1,
            answers=answers,
        )
    )
    place = trial.cohort.place(learner, trial.name)
    place.mkdir(parents=True, exist_ok=True)
    (place / "jobsheet.json").write_text(text)
    return text


def now(**ago):
    return f"{datetime.now(UTC) - timedelta(**ago):%Y-%m-%d %H:%M:%S.%f} UTC"


def exported(trial):
    place = trial.cohort.root / "exports" / "outcomes.csv"
    with open(place, newline="", encoding="utf-8-sig") as file:
        return list(csv.DictReader(file))


def evidence(trial):
    """What the export says of each learner's work: kind of evidence, and by whom."""
    cohort = trial.cohort
    assigned, people = read_assigned(cohort, trial.name), roster_of(cohort)
    collect(cohort, assigned, people)
    mark_assignment(cohort, assigned, people, workers=1)
    give_back(cohort, assigned, people)
    assert main(["export", "--cohort", str(cohort.root)]) == 0
    return {row["learner"]: (row["evidence"], row["supervised_by"]) for row in exported(trial)}


def test_only_what_is_handed_in_between_by_those_in_the_room_counts(trial, page):
    trial.hand_in("c3", hours_ago=1, tail="home")
    said = do(page, "open", ("a1", "b2", "c3"), name=trial.name, room="2", open_by="rh")
    assert said == "Supervised attempt 1 is open in 2 for a1, b2, c3."
    assert table(page, "sittings")[0][3] == "open"
    other = {"gap-size": "12.4 mm", "gap-first": "clean"}
    trial.hand_in("a1", when=now())
    trial.hand_in("b2", when=now(hours=3), answers=other)  # says that it is of this morning
    trial.hand_in("d4", when=now())  # is not named
    said = do(page, "close", number="1", close_by="rh", note="b2 came late")
    assert said == "Supervised attempt 1 is closed. Handed in: a1."
    told = dict(table(page, "nothing"))
    assert told["c3"] == "handed nothing in" and "that says" in told["b2"]
    (sitting,) = sittings_of(trial.cohort)
    assert sitting.note == "b2 came late" and list(sitting.handed_in) == ["a1"]
    found = evidence(trial)
    assert found["a1"] == ("supervised", "R. Holm")
    assert {found[one] for one in ("b2", "c3", "d4")} == {("open-book", "")}
    (html,) = trial.cohort.feedback("a1", trial.name).glob("*.html")
    assert "supervised by R. Holm" in html.read_text()
    acts = [line.act for line in read_trail(trial.cohort.root)]
    opened, closed = (one for one in acts if "supervised attempt" in one.did)
    assert opened.by == closed.by == "R. Holm" and "a1, b2, c3" in opened.after
    assert closed.after == "handed in: a1" and closed.why == "b2 came late"


def test_what_is_handed_in_after_closing_does_not_count_nor_does_an_exchanged_sheet(trial):
    cohort, assigned = trial.cohort, read_assigned(trial.cohort, trial.name)
    open_sitting(cohort, assigned, ["a1", "b2"], room="2", by="R. Holm")
    trial.hand_in("a1", when=now())
    folder = trial.hand_in("b2", when=now())
    close_sitting(cohort, 1, by="rh")
    better = {"gap-size": "12.50 mm", "gap-first": "clean"}
    trial.hand_in("a1", when=now(), answers=better, tail="after")
    (folder / "jobsheet.json").write_text(trial.sheet("b2", better))  # exchanged where it waits
    assert set(evidence(trial).values()) == {("open-book", "")}


@pytest.mark.parametrize(
    ("ticked", "typed", "says"),
    [
        ((), {}, "no learner is ticked"),
        (("a1",), {"room": " "}, "the room is missing"),
        (("a1",), {"open_by": ""}, "the assessor is missing"),
        (("a1",), {"open_by": "somebody"}, "not on the register"),
        (("x9",), {}, 'nobody on the roster has the id "x9"'),
        (("a1",), {"name": "order-of-work-7"}, "nothing is assigned"),
    ],
)
def test_what_is_half_filled_is_refused_and_nothing_is_opened(trial, page, ticked, typed, says):
    full = {"name": trial.name, "room": "2", "open_by": "rh"} | typed
    with pytest.raises(CohortError, match=says):
        do(page, "open", ticked, **full)
    assert sittings_of(trial.cohort) == ()


def test_nobody_sits_twice_and_what_is_closed_stays_closed(trial, page):
    do(page, "open", ("a1",), name=trial.name, room="2", open_by="rh")
    with pytest.raises(CohortError, match="attempt 1 is open for a1"):
        do(page, "open", ("a1", "b2"), name=trial.name, room="3", open_by="rh")
    do(page, "close", number="1", close_by="rh")
    with pytest.raises(CohortError, match="was closed by R"):
        close_sitting(trial.cohort, 1, by="rh")
    with pytest.raises(CohortError, match="no supervised attempt 7"):
        close_sitting(trial.cohort, 7, by="rh")


def test_the_commands_do_the_same_and_who_is_taken_out_is_in_none(trial, capsys):
    cohort = trial.cohort
    words = ["supervised", "open", trial.name, "--room", "2", "--by", "rh", "--to", "a1", "--to"]
    at = ["--cohort", str(cohort.root)]
    assert main([*words, "b2", *at]) == 0
    trial.hand_in("a1", when=now())
    assert main(["supervised", "close", "1", "--by", "rh", *at]) == 0
    assert "b2" in capsys.readouterr().out
    assert main(["supervised", "list", *at]) == 0
    assert "handed in: a1" in capsys.readouterr().out
    take_out(cohort, "a1")
    (sitting,) = sittings_of(cohort)
    assert sitting.learners == ("b2",) and sitting.handed_in == {}


def test_an_outcome_with_an_answer_that_was_saved_before_does_not_count_as_supervised(trial, page):
    cohort, start = trial.cohort, datetime.now(UTC)
    home, room = start - timedelta(hours=9), start + timedelta(seconds=30)
    saved(trial, "a1", {"gap-size": home})
    saved(trial, "b2", {"gap-size": home, "gap-first": home})
    said = do(page, "open", ("a1", "b2", "c3", "d4"), name=trial.name, room="2", open_by="rh")
    assert "Saved already: a1 1 answer, b2 2 answers. An outcome with such an answer" in said
    sheets = {
        "a1": saved(trial, "a1", {"gap-size": home, "gap-first": room}),
        # saved again in the room, both; c3 brings what no folder here has seen
        "b2": saved(
            trial, "b2", dict.fromkeys(SMALL_ANSWERS, room), dict.fromkeys(SMALL_ANSWERS, 3)
        ),
        "c3": saved(trial, "c3", {"gap-size": room, "gap-first": home}),
        "d4": saved(trial, "d4", dict.fromkeys(SMALL_ANSWERS, room)),
    }
    for id, text in sheets.items():
        (trial.hand_in(id, when=now()) / "jobsheet.json").write_text(text)
    said = do(page, "close", number="1", close_by="rh")
    assert "Saved before it was opened: a1 1 answer, c3 1 answer." in said
    assert {row[6]: row[8] for row in table(page, "sittings")} == {
        "a1, b2, c3, d4": "a1 1 answer, c3 1 answer"
    }
    evidence(trial)
    found = {
        (row["learner"], row["outcome"]): (
            row["evidence"],
            row["supervised_by"],
            row["saved_before"],
        )
        for row in exported(trial)
    }
    watched, not_watched = ("supervised", "R. Holm", "0"), ("open-book", "", "1")
    assert found["a1", trial.outcome] == not_watched and found["a1", "judge-repeats"] == watched
    assert found["c3", trial.outcome] == watched and found["c3", "judge-repeats"] == not_watched
    assert all(
        found[id, one] == watched for id in ("b2", "d4") for one in (trial.outcome, "judge-repeats")
    )
    (html,) = cohort.feedback("a1", trial.name).glob("*.html")
    told = "supervised by R. Holm, but for what rests on 1 answer saved before it was opened"
    assert told in html.read_text()
    told = returned_to(cohort, "a1", trial.name)
    assert (told.supervised_by, told.unwatched) == ("R. Holm", (trial.outcome,))
    acts = [line.act for line in read_trail(cohort.root)]
    assert "saved before: a1 1 answer, c3 1 answer" in next(
        one.after for one in acts if one.did == "close a supervised attempt"
    )
    take_out(cohort, "a1")
    (sitting,) = sittings_of(cohort)
    assert list(sitting.before) == ["c3"] and list(sitting.saved) == ["b2"]


def test_a_file_of_before_that_told_nothing_of_it_opens(tmp_path):
    sitting = {
        "number": 1, "assignment": "x-1", "room": "2", "learners": ["a1"],
        "opened_at": "2026-03-02T09:00:00Z", "opened_by": "R. Holm", "handed_in": {"a1": "ab"},
    }  # fmt: skip
    place = tmp_path / "sittings.json"
    place.write_text(json.dumps({"format": 1, "sittings": [sitting]}))
    (one,) = SITTINGS.read(place).sittings
    assert one.handed_in == {"a1": "ab"} and one.before == {} and one.saved == {}
