"""The desk's page *Hand out* on a small cohort, and what it calls."""

import shutil

import pytest
from nbgrader.api import Gradebook, MissingEntry

from twoshaft.errors import CohortError
from twoshaft.jobsheet import handin
from twoshaft.stored.extensions import OWN_EXTENSIONS
from twoshaft.stored.person import Person
from twoshaft_grader.cohort.assign import assignments_of, read_assigned
from twoshaft_grader.cohort.before_assigning import who_needs
from twoshaft_grader.cohort.collect import collect
from twoshaft_grader.cohort.intake import roster_of
from twoshaft_grader.cohort.marking_run import mark_assignment
from twoshaft_grader.cohort.roster_changes import move
from twoshaft_grader.cohort.trail import read_trail
from twoshaft_grader.desk_pages.hand_out import HandOut
from twoshaft_grader.desk_pages.page import Desk, Work
from twoshaft_grader.desk_pages.parts import Values
from twoshaft_grader.records.progress import progress

LEARNERS = ("a1", "b2", "c3")
DUE = "2099-12-04 16:00"


@pytest.fixture(scope="module")
def made(handed_out, tmp_path_factory):
    return handed_out(tmp_path_factory.mktemp("desk-hand-out"), LEARNERS)


@pytest.fixture
def trial(made, tmp_path):
    """A copy of the cohort, all in group A but c3."""
    shutil.copytree(made.base, tmp_path / "base", symlinks=True)
    small = type(made)(tmp_path / "base")
    move(small.cohort, ["a1", "b2"], "A")
    return small


@pytest.fixture
def page(trial):
    return HandOut(Desk(trial.cohort.root, "R. Holm"))


def do(page, act, ticked=(), needing=(), **typed):
    typed = {name.replace("_", "-"): value for name, value in typed.items()}
    values = Values(typed, {"learners": list(ticked), "needing": list(needing)})
    return page.do(act, values, Work())


def table(page, id):
    """The lines of a table that is shown."""
    (found,) = [part for part in page.show() if getattr(part, "id", "") == id]
    return found.texts()


def offered(cohort, learner):
    return set(handin.find_counter(cohort.workplace).offered_to(learner))


def again(page, trial, to, *ticked, due=DUE):
    module = read_assigned(trial.cohort, trial.name).module
    do(page, "look", ticked, module=module, attempt="2", due=due, to=to)
    return module


def test_what_stands_in_the_way_is_said_before_anything_is_written(page, trial):
    module = read_assigned(trial.cohort, trial.name).module
    do(page, "look", module=module, attempt="1", due="2020-01-01")
    told = table(page, "in-the-way")
    assert [line[0] for line in told] == ["stops it", "to know"]
    assert f"{trial.name} is handed out already." == told[0][1] and "has passed" in told[1][1]
    with pytest.raises(CohortError, match="cannot be handed out like this"):
        do(page, "hand-out")
    assert do(page, "change") == "Nothing is handed out."
    again(page, trial, "ticked", "a1")
    assert table(page, "in-the-way") == [["to know", "Need no further attempt: a1."]]
    assert [one.name for one in assignments_of(trial.cohort)] == [trial.name]


@pytest.mark.parametrize(
    ("typed", "says"),
    [
        ({"module": ""}, "the module is missing"),
        ({"attempt": "second"}, "is no attempt"),
        ({"attempt": "1" * 5000}, r"^.1{20}. is no attempt"),
        ({"due": "Friday"}, "is not a date"),
        ({"due": "2" * 5000}, r"^.2{30}. is not a date"),
        ({"to": "ticked"}, "no learner is ticked"),
        ({"to": "group Z"}, 'nobody is in group "Z"; there are: A'),
    ],
)
def test_bad_input_is_one_sentence(page, trial, typed, says):
    module = read_assigned(trial.cohort, trial.name).module
    with pytest.raises(CohortError, match=says):
        do(page, "look", **({"module": module, "attempt": "2"} | typed))
    assert page._plan is None


def test_a_group_gets_it_and_nobody_else_then_one_more_does(page, trial):
    again(page, trial, "group A")
    second = trial.name[:-1] + "2"
    assert do(page, "hand-out") == f"{second} is handed out to 2 learners, due {DUE}."
    assert second in offered(trial.cohort, "a1") and second not in offered(trial.cohort, "c3")
    counter = handin.find_counter(trial.cohort.workplace)
    with pytest.raises(CohortError, match="is not for you"):
        handin.fetch(counter, Person("c3", "F", "G"), second)
    assigned = read_assigned(trial.cohort, second)
    assert '"a1"' not in (trial.cohort.outbound(second) / "assignment.json").read_text()
    assert [one.learner.id for one in progress(trial.cohort, [assigned])] == ["a1", "b2"]
    assert not trial.cohort.issued("c3", second).exists()
    assert do(page, "give", ["c3"], more=second, more_to="ticked").endswith("to c3.")
    assert second in offered(trial.cohort, "c3") and trial.cohort.issued("c3", second).exists()
    with pytest.raises(CohortError, match="already"):
        do(page, "give", ["c3"], more=second, more_to="ticked")
    first = read_assigned(trial.cohort, trial.name)
    assert not first.only and first.is_for("whoever joins later")


def test_a_group_gets_more_time_with_a_reason(page, trial):
    do(page, "extend", later_of=trial.name, later="2099-01-01", later_to="", later_why="late start")
    with pytest.raises(CohortError, match="the reason is missing"):
        do(page, "extend", later_of=trial.name, later=DUE, later_to="group A")
    said = do(
        page, "extend", later_of=trial.name, later=DUE, later_to="group A", later_why="bench shut"
    )
    assert said.endswith(f"due {DUE} for a1, b2.")
    acts = [line.act for line in read_trail(trial.cohort.root)][-2:]
    assert [(one.by, one.why) for one in acts] == [("R. Holm", "bench shut")] * 2
    with pytest.raises(CohortError, match="give a later date"):
        do(
            page, "extend", ["a1", "c3"], later_of=trial.name, later="2098-01-01",
            later_to="ticked", later_why="x",
        )  # fmt: skip


def test_it_is_taken_back_while_nobody_has_begun(page, trial):
    cohort = trial.cohort
    do(page, "extend", later_of=trial.name, later="2099-01-01", later_to="", later_why="so")
    do(page, "extend", ["a1"], later_of=trial.name, later=DUE, later_to="ticked", later_why="so")
    counter = handin.find_counter(cohort.workplace)
    handin.fetch(counter, Person("a1", "F", "G"), trial.name)
    assert do(page, "take-back", back=trial.name, back_why="wrong unit").startswith(trial.name)
    assert offered(cohort, "a1") == set() and assignments_of(cohort) == []
    assert not (cohort.workplace / "a1" / trial.name).exists()
    assert OWN_EXTENSIONS.read(cohort.workplace / "a1" / OWN_EXTENSIONS.file) == {}
    book = Gradebook(f"sqlite:///{cohort.root / 'gradebook.db'}", cohort.id)
    with book, pytest.raises(MissingEntry):
        book.find_assignment(trial.name)
    module = trial.name[:-2]
    do(page, "look", ["a1"], module=module, attempt="1", to="ticked")
    do(page, "hand-out")
    assert trial.name in offered(cohort, "a1")


def test_who_has_begun_is_said_and_everything_stays(page, trial):
    trial.hand_in("b2")
    before = (trial.cohort.outbound(trial.name) / "assignment.json").read_bytes()
    with pytest.raises(CohortError, match="somebody has begun it: b2"):
        do(page, "take-back", back=trial.name, back_why="wrong unit")
    assert (trial.cohort.outbound(trial.name) / "assignment.json").read_bytes() == before
    assert [line[3] for line in table(page, "handed-out")] == ["1"]


def test_a_further_attempt_goes_to_those_who_need_it_with_fresh_readings(page, trial):
    cohort = trial.cohort
    assigned = read_assigned(cohort, trial.name)
    trial.hand_in("a1")
    trial.hand_in("b2", answers={})
    collect(cohort, assigned, roster_of(cohort))
    done = {one.learner: one for one in mark_assignment(cohort, assigned, roster_of(cohort))}
    needing = {one.id for one, _ in who_needs(cohort, assigned.module)}
    assert needing == {id for id, one in done.items() if one.met is False} and "b2" in needing
    do(page, "needs", again=assigned.module)
    assert {line[0] for line in table(page, "needing")} == needing
    do(page, "further", needing=["b2"], further_due=DUE)
    do(page, "hand-out")
    second = trial.name[:-1] + "2"
    assert second in offered(cohort, "b2") and second not in offered(cohort, "a1")
    first, fresh = (cohort.issued("b2", name).read_text() for name in (trial.name, second))
    assert first != fresh and read_assigned(cohort, second).attempt == 2
