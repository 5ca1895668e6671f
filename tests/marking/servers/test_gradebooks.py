"""The gradebook as a file and on a PostgreSQL server: the same marks, the same sentences; and from
the one to the other without losing a row."""

import csv
import io
import os
import re
import shutil
import sqlite3
import subprocess
import sys
from contextlib import contextmanager, redirect_stderr, redirect_stdout
from dataclasses import replace
from types import SimpleNamespace

import pytest
from nbgrader.api import Gradebook

from twoshaft.errors import CohortError
from twoshaft_grader.cohort import gradebook_move
from twoshaft_grader.cohort.backbone import gradebook
from twoshaft_grader.cohort.database import database_of
from twoshaft_grader.cohort.folder import open_cohort
from twoshaft_grader.cohort.marks import read_mark
from twoshaft_grader.cohort.turn import turn
from twoshaft_grader.desk.commands import main
from twoshaft_grader.stored.cohort import set_gradebook

pytestmark = [pytest.mark.slow, pytest.mark.skipif(os.name == "nt", reason="servers of Unix")]
LEARNERS = ("a1", "b2", "c3")
WRONG = {"gap-size": "11 mm", "gap-first": "clean"}


def run(*arguments):
    out, err = io.StringIO(), io.StringIO()
    with redirect_stdout(out), redirect_stderr(err):
        code = main([str(argument) for argument in arguments])
    return code, out.getvalue(), err.getvalue()


def works(command, trial, *more):
    code, out, err = run(*command.split(), "--cohort", trial.cohort.root, *more)
    assert (code, err) == (0, ""), out
    return out


def refused(command, trial, *more):
    """What is said, in one sentence."""
    code, _, err = run(*command.split(), *more, "--cohort", trial.cohort.root)
    assert code == 2 and err.count("\n") == 1, err
    return err


def export(trial):
    works("export", trial)
    text = (trial.cohort.root / "exports/outcomes.csv").read_text(encoding="utf-8")
    drop = {"handed_in", "marked_at"}
    rows = csv.DictReader(io.StringIO(text))
    return [{name: text for name, text in row.items() if name not in drop} for row in rows]


@pytest.fixture(scope="module")
def begun(handed_out, tmp_path_factory, request):
    """A cohort of which two have handed in, by where its gradebook is; made once for each."""
    made = {}

    def cohort(where):
        if where not in made:
            base = tmp_path_factory.mktemp(where)
            server = request.getfixturevalue("postgresql") if where == "server" else None
            url = server.database() if server else ""
            trial = handed_out(base / "live", LEARNERS, gradebook=url)
            trial.hand_in("a1")
            trial.hand_in("b2", answers=WRONG)
            made[where] = trial
        return made[where]

    return cohort


@pytest.fixture(params=["file", "server"])
def where(request):
    return request.param


@pytest.fixture
def copy(begun, tmp_path, request):
    """A copy of that cohort to work on."""

    def of(where):
        trial = begun(where)
        shutil.copytree(trial.base, tmp_path / where)
        mine = type(trial)(tmp_path / where)
        if where == "server":
            like = trial.cohort.gradebook.rpartition("/")[2]
            url = request.getfixturevalue("postgresql").database(like)
            set_gradebook(mine.cohort.root / "cohort.yaml", url)
            mine.cohort = open_cohort(mine.cohort.root)
        return mine

    return of


@pytest.fixture
def trial(copy, where):
    return copy(where)


def score(trial, learner):
    with gradebook(trial.cohort) as book:
        return book.find_submission(trial.name, learner).score


@contextmanager
def in_use(trial, postgresql):
    """Another program that has the gradebook and does not let go of it."""
    if trial.cohort.database.on_server:
        import psycopg

        with psycopg.connect(trial.cohort.gradebook) as other:
            other.execute("LOCK TABLE submitted_assignment, grade IN ACCESS EXCLUSIVE MODE")
            yield
            other.rollback()
    else:
        other = sqlite3.connect(trial.cohort.root / "gradebook.db")
        other.execute("BEGIN EXCLUSIVE")
        yield
        other.close()


def test_from_collecting_to_the_export(trial, where):
    assert (trial.cohort.root / "gradebook.db").exists() == (where == "file")
    works("collect", trial)
    works("mark", trial)
    works("give-back", trial)
    assert (score(trial, "a1"), score(trial, "b2")) == (4.0, 0.31)
    assert [page.name for page in trial.cohort.feedback("a1", trial.name).glob("*.html")]
    rows = {(row["learner"], row["outcome"]): row for row in export(trial)}
    assert rows["a1", trial.outcome]["mark"] == "3" and rows["c3", trial.outcome]["mark"] == "0"

    # again: nothing is doubled; a person's mark stays and is told, a better sheet is marked anew
    assert "2 as before" in works("mark", trial)
    changed = ("a1", trial.name, "gap", 1.5, "--by", "R. Holm", "--why", "watched")
    works("change-mark", trial, *changed)
    trial.hand_in("b2", hours_ago=1)
    works("collect", trial, "--take", "b2")
    assert "1 marked" in works("mark", trial)
    works("mark", trial, "--again")
    assert (score(trial, "a1"), score(trial, "b2")) == (1.5, 4.0)
    assert {row["changed_by"] for row in export(trial) if row["learner"] == "a1"} == {"R. Holm"}
    with gradebook(trial.cohort) as book:
        assert len(book.assignment_submissions(trial.name)) == 2


def test_two_runs_at_once_are_refused(trial):
    works("collect", trial)
    with turn(trial.cohort):
        assert "another run is under way" in refused("mark", trial)
    works("mark", trial)


def test_a_gradebook_in_use_is_one_sentence_and_the_same_command_finishes(trial, postgresql):
    works("collect", trial)
    with in_use(trial, postgresql):
        said = refused("mark", trial)
    assert said.startswith(f"{trial.cohort.database.place}: another program has the gradebook")
    assert read_mark(trial.cohort.mark_file("a1", trial.name)) is None
    works("mark", trial)
    assert score(trial, "a1") == 4.0


def test_both_give_the_same_export(copy):
    exported = []
    for where in ("file", "server"):
        trial = copy(where)
        for command in ("collect", "mark", "give-back"):
            works(command, trial)
        exported.append(export(trial))
    assert exported[0] == exported[1] and len(exported[0]) == 2 * len(LEARNERS)


def test_nbgraders_own_command_uses_the_same_gradebook(copy):
    trial = copy("server")
    works("collect", trial)
    works("mark", trial)
    tool = shutil.which("nbgrader", path=os.path.dirname(sys.executable))
    done = subprocess.run(
        [tool, "db", "student", "list"], cwd=trial.cohort.root, capture_output=True, text=True
    )
    assert done.returncode == 0 and all(learner in done.stdout for learner in LEARNERS)


# --- from one to the other ---------------------------------------------------------------------


def rows_of(database):
    with Gradebook(database.url, "trial") as book:
        connection = book.db.connection()
        tables = gradebook_move._known_tables()
        return {
            table.name: gradebook_move._rows(table, connection) for table in tables.sorted_tables
        }


def test_a_gradebook_moves_to_a_server_and_back_row_by_row(copy, postgresql):
    trial = copy("file")
    root = trial.cohort.root
    works("collect", trial)
    works("mark", trial)
    works("change-mark", trial, "a1", trial.name, "gap", 1.5, "--by", "R. Holm", "--why", "watched")
    before, exported = rows_of(trial.cohort.database), export(trial)
    text = (root / "cohort.yaml").read_text()
    (root / "cohort.yaml").write_text(f"# ours\n{text}")
    url = postgresql.database()
    said = works("gradebook move", trial, url)
    trial.cohort = open_cohort(root)
    assert trial.cohort.gradebook == url and url in said
    assert (root / "cohort.yaml").read_text() == f"# ours\n{text}gradebook: {url}\n"
    [kept] = root.glob("gradebook-until-*.db")
    assert str(kept) in said and not (root / "gradebook.db").exists()
    assert rows_of(replace(trial.cohort.database, url=f"sqlite:///{kept}")) == before
    assert rows_of(trial.cohort.database) == before and export(trial) == exported
    assert sum(map(len, before.values())) > 20

    trial.hand_in("c3")  # and it is worked with
    works("collect", trial)
    works("mark", trial)
    assert score(trial, "c3") == 4.0
    works("gradebook move", trial, "file")
    trial.cohort = open_cohort(root)
    assert trial.cohort.gradebook == "" and score(trial, "c3") == 4.0 and score(trial, "a1") == 1.5


def test_a_move_that_is_cut_short_leaves_all_as_it_was(copy, postgresql, monkeypatch):
    trial = copy("file")
    works("collect", trial)
    works("mark", trial)
    url = postgresql.database()
    before = (trial.cohort.root / "gradebook.db").read_bytes()
    copy_table, done = gradebook_move._copy, []

    def ends(table, *rest):
        if len(done) == 5:
            raise KeyboardInterrupt
        done.append(table.name)
        copy_table(table, *rest)

    monkeypatch.setattr(gradebook_move, "_copy", ends)
    assert run("gradebook", "move", url, "--cohort", trial.cohort.root)[0] == 130
    monkeypatch.undo()
    trial.cohort = open_cohort(trial.cohort.root)
    assert trial.cohort.gradebook == ""
    assert (trial.cohort.root / "gradebook.db").read_bytes() == before
    with gradebook_move._open(database_of(trial.cohort.root, url)) as connection:
        assert gradebook_move._names(connection) == set()
    works("mark", trial, "--again")

    # cut after the copy stood and before it counted: the same command goes on
    monkeypatch.setattr(gradebook_move, "set_gradebook", lambda *_: 1 / 0)
    assert run("gradebook", "move", url, "--cohort", trial.cohort.root)[0] == 2
    monkeypatch.undo()
    assert open_cohort(trial.cohort.root).gradebook == ""
    works("gradebook move", trial, url)
    # another cohort's is never mixed in
    other = copy("server")
    assert "that database is not empty" in refused("gradebook move", other, url)


def test_a_row_that_is_not_as_it_was_stops_the_move(copy, postgresql, monkeypatch):
    trial = copy("file")
    url = postgresql.database()
    copy_table = gradebook_move._copy

    def loses(table, source, target):
        copy_table(table, source, target)
        if table.name == "student":
            target.execute(table.delete().where(table.c.id == "c3"))

    monkeypatch.setattr(gradebook_move, "_copy", loses)
    said = refused("gradebook move", trial, url)
    assert "what was copied is not as it was (table student), so nothing is moved" in said
    assert open_cohort(trial.cohort.root).gradebook == ""
    with gradebook_move._open(database_of(trial.cohort.root, url)) as connection:
        assert gradebook_move._names(connection) == set()


def test_nothing_moves_while_somebody_works(copy, postgresql):
    trial = copy("file")
    url = postgresql.database()
    with turn(trial.cohort):
        assert "another run is under way" in refused("gradebook move", trial, url)
    with in_use(trial, postgresql):
        assert "another program has the gradebook" in refused("gradebook move", trial, url)
    runtime = trial.cohort.root / "settings/staff/runtime"
    runtime.mkdir(parents=True)
    (runtime / "jpserver-1.json").write_text(f'{{"pid": {os.getpid()}}}')
    assert "the staff's JupyterLab is open" in refused("gradebook move", trial, url)


def test_a_cohort_on_a_server_is_kept_restored_and_freed_of_a_learner(copy, tmp_path):
    trial = copy("server")
    for command in ("collect", "mark"):
        works(command, trial)
    works("cohort back-up", trial, tmp_path / "kept.zip")
    code, _, err = run("cohort", "restore", tmp_path / "kept.zip", tmp_path / "again")
    assert (code, err) == (0, "")
    again = SimpleNamespace(cohort=open_cohort(tmp_path / "again"))
    assert again.cohort.gradebook == "" and rows_of(again.cohort.database) == rows_of(
        trial.cohort.database
    )
    works("mark", again, "--again")
    works("cohort anonymous", trial, tmp_path / "study")
    assert open_cohort(tmp_path / "study").gradebook == ""
    works("roster take-out", trial, "a1", "--yes")
    with gradebook(trial.cohort) as book:
        assert [student.id for student in book.students] == ["b2", "c3"]


# --- what goes wrong ---------------------------------------------------------------------------


def test_a_server_that_is_down_is_one_sentence_and_nothing_is_lost(copy, postgresql):
    trial = copy("server")
    works("collect", trial)
    works("mark", trial)
    trial.hand_in("c3")
    works("collect", trial)
    postgresql.stop()
    try:
        for command in ("mark", "give-back", "export"):
            said = refused(command, trial)
            assert said.startswith(f"{trial.cohort.gradebook}: the gradebook's server does not ans")
            assert "see that it runs" in said
        works("progress", trial)  # which needs no gradebook
    finally:
        postgresql.start()
    assert "2 as before" in works("mark", trial)
    assert score(trial, "a1") == score(trial, "c3") == 4.0


def test_a_password_lies_in_no_file_of_ours(tmp_path, postgresql, monkeypatch):
    url = postgresql.database()
    told = url.replace("holm@", "holm:copper-heron@")
    for one in (told, f"{url}?password=copper-heron"):
        code, _, said = run("cohort", "make", tmp_path / "group", "--gradebook", one)
        assert code == 2 and ".pgpass" in said and "copper" not in said
        assert not (tmp_path / "group").exists()
    monkeypatch.setenv("PGPASSFILE", str(tmp_path / "none"))
    code, _, said = run("cohort", "make", tmp_path / "group", "--gradebook", url)
    assert (
        code == 2 and "does not let this account in" in said and not (tmp_path / "group").exists()
    )


@pytest.mark.parametrize(
    ("url", "word"),
    [
        ("mysql://holm@db/book", "postgresql://NAME@HOST/DATABASE"),
        ("postgresql://holm@db", "postgresql://NAME@HOST/DATABASE"),
        ("postgresql://holm@db:many/book", "cannot be read"),
        ("postgresql://holm@127.0.0.1:1/book", "does not answer"),
    ],
)
def test_a_url_that_will_not_do_is_told_before_anything_is_made(tmp_path, url, word):
    code, _, said = run("cohort", "make", tmp_path / "group", "--gradebook", url)
    assert code == 2 and word in said and said.count("\n") == 1
    assert not (tmp_path / "group").exists()


def test_a_missing_driver_or_database_is_told(tmp_path, postgresql, monkeypatch):
    url = postgresql.database()
    code, _, said = run("cohort", "make", tmp_path / "g", "--gradebook", f"{url}-not")
    assert code == 2 and re.search("no such database|does not answer", said)
    monkeypatch.setattr("twoshaft_grader.cohort.database.find_spec", lambda _: None)
    with pytest.raises(CohortError, match="driver is not installed"):
        _ = database_of(tmp_path, url)
