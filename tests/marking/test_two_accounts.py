"""An instructor's and two learners' real accounts of the system: each reaches what is theirs.

The accounts are made for the test and taken away after it, which only root may do.
"""

import json
import re
import shutil
import stat
import subprocess
import time
import urllib.error
import urllib.request
import zipfile
from pathlib import Path

import pytest

from twoshaft_grader.cohort.folder import open_cohort
from twoshaft_grader.cohort.marks import read_mark
from twoshaft_grader.cohort.restore import restore

pytestmark = pytest.mark.slow
MODULE = "measuring-and-tools"  # whose readings are drawn quickest
NAME = f"{MODULE}-1"
PATIENCE_S = 120


@pytest.fixture(scope="module")
def handed_out(place, accounts):
    """A cohort of two, made in the instructor's account as the README says; what was printed."""
    holm, _, ben = accounts
    root, shared = holm.home / "group", place / "srv" / "group"
    if shutil.which("setfacl"):  # what is made here lets others in, whatever it asks for
        for folder in (holm.home, place / "srv"):
            words = ["setfacl", "-m", f"d:u:{ben.name}:rwx,d:o::rwx", folder]
            subprocess.run(words, capture_output=True)  # not every disk can
    (holm.home / "roster.csv").write_text(
        "id,family name,given name\na1,Lindqvist,Ada\nb2,Osei,Ben\n"
    )
    at = ("--cohort", root)
    said = holm.twoshaft(
        ("cohort", "make", root, "--shared", shared),
        ("roster", "take", holm.home / "roster.csv", *at),
        ("module", "assign", MODULE, "--due", "2099-01-31", *at),
        ("module", "due", NAME, "2099-02-28", "--learner", "a1", *at),
    )
    return open_cohort(root), said


def word_of(cohort, learner):
    rows = (cohort.root / "sign-in-slips.csv").read_text().splitlines()
    return next(row.split(",")[-1] for row in rows if row.startswith(learner))


SIGN_IN = """
import sys
from twoshaft.jobsheet.signin import SignIn
workplace, who, word, *then = sys.argv[1:]
desk = SignIn(workplace)
try:
    desk.sign_in(who, word)
    for step in then:
        if step == "answer":
            from twoshaft.jobsheet import open_sheet
            sheet = open_sheet("measuring-and-tools", f"{workplace}/{who}/measuring-and-tools-1")
            sheet.save("mic-zero", "0.01 mm")
        elif step == "look":
            desk.look_for_feedback()
        elif step == "due":
            print(desk.entries()[0].due[:10])
        else:
            getattr(desk, step)("measuring-and-tools-1")
    print("done")
except Exception as error:
    print(error)
"""


def works(account, cohort, learner, *steps):
    """Sign in and go on as a notebook would; what was said."""
    word = word_of(cohort, learner)
    steps = (cohort.workplace, learner, word, *steps)
    return account.python(SIGN_IN, *steps, umask=0o007).strip()


@pytest.fixture(scope="module")
def ada_works(handed_out, accounts):
    cohort, _ = handed_out
    _, ada, _ = accounts
    assert works(ada, cohort, "a1", "get", "answer") == "done"
    return cohort


def test_what_the_command_says_is_so(handed_out, place, accounts):
    cohort, said = handed_out
    _, ada, ben = accounts
    opener = re.search(r"accounts of their own: (\S+)", said)[1]
    assert opener == str(place / "srv/group/open-course") and ada.can("-x", opener)
    assert str(cohort.root) not in Path(opener).read_text()
    assert "Closed to other accounts, since answers are in it: solutions, tests" in said
    for closed in (cohort.root, place / "program/solutions", place / "program/tests"):
        assert stat.S_IMODE(closed.stat().st_mode) == 0o700
        assert not ben.can("-r", closed) and not ben.can("-x", closed)


def test_nothing_of_the_cohort_folder_is_for_others(ada_works):
    found = [ada_works.root, *ada_works.root.rglob("*")]
    open_ones = [str(path) for path in found if path.lstat().st_mode & 0o077]
    assert len(found) > 20 and not open_ones


def test_a_learners_folder_is_theirs_and_staffs_alone(ada_works, accounts):
    holm, ada, ben = accounts
    own = ada_works.place("a1", NAME)
    sheet = own / "jobsheet.json"
    assert sheet.stat().st_uid == ada.uid and ada.can("-w", sheet)
    assert holm.can("-r", sheet) and not ben.can("-r", sheet) and not ben.can("-x", own.parent)
    assert not ben.can("-r", ada_works.work) and not ada.can("-r", ada_works.work)
    assert works(ben, ada_works, "a1").startswith("the folder of Ada Lindqvist belongs to another")
    # Nobody can put another folder in its place, or make one that others would then trust.
    assert ben.run("/bin/mv", own.parent, ada_works.work / "away")[0] != 0
    for folder in (
        ada_works.workplace, ada_works.workplace / "lessons", ada_works.exchange / "group",
        ada_works.exchange / "group" / "outbound", ada_works.shared,
    ):  # fmt: skip
        assert ben.can("-r", folder) and not ben.can("-w", folder)
    assert ben.run("/bin/mv", ada_works.exchange / "group", ada_works.exchange / "away")[0] != 0


def test_from_handing_in_to_feedback_between_accounts(ada_works, accounts):
    holm, ada, ben = accounts
    at = ("--cohort", ada_works.root)
    assert "1 under way" in holm.twoshaft(("progress", *at))
    assert works(ada, ada_works, "a1", "hand_in") == "done"
    assert not ben.can("-r", ada_works.inbound)  # so nobody finds what others handed in
    again = (("mark", *at), ("give-back", *at), ("export", *at))
    assert "1 new" in holm.twoshaft(("collect", *at), *again)
    kept = ada_works.submitted("a1", NAME) / "jobsheet.json"
    assert kept.stat().st_uid == holm.uid and not ada.can("-w", kept) and not ada.can("-r", kept)
    assert read_mark(ada_works.mark_file("a1", NAME)).sheet.maximum > 0
    # A later date that was given before her account had made her folder is told from then on.
    assert works(ada, ada_works, "a1", "look", "due") == "2099-02-28\ndone"
    [page] = (ada_works.place("a1", NAME) / "feedback").rglob("*.html")
    own = ada_works.work / "a1"
    for path in (page, own / "standing.json", own / "extensions.json"):
        assert ada.can("-r", path) and not ben.can("-r", path)
    # given back once more, and looked for once more
    holm.twoshaft(("give-back", *at))
    assert works(ada, ada_works, "a1", "look") == "done"


def test_work_in_anothers_name_is_asked_about(ada_works, accounts):
    holm, _, ben = accounts
    made = """
import sys, pathlib, datetime
when = datetime.datetime.now(datetime.timezone.utc).strftime("%Y-%m-%d %H:%M:%S.%f UTC")
folder = pathlib.Path(sys.argv[1]) / f"a1+measuring-and-tools-1+{when}+x"
folder.mkdir()
(folder / "jobsheet.json").write_text("{}")
"""
    ben.python(made, ada_works.inbound)
    code, said = holm.run(
        holm.env["PYTHON"], "-m", "twoshaft_grader.desk", "collect", "--cohort", ada_works.root
    )
    flat = " ".join(re.sub("[│┃]", " ", said).split())
    assert code == 1 and f"account {ben.uid} of" in flat


class Server:
    """A JupyterLab that runs in an account, and what it answers to whom it gave its key."""

    def __init__(self, account, settings, *words):
        self.process = account.start(*words)
        end = time.monotonic() + PATIENCE_S
        while not (found := [*settings().glob("**/runtime/jpserver-*.json")]):
            assert self.process.poll() is None, self.process.stdout.read()
            assert time.monotonic() < end, "waited in vain"
            time.sleep(0.1)
        self.runtime = found[0].parent
        while not (about := found[0].read_text()):
            time.sleep(0.1)
        self.about = json.loads(about)

    def ask(self, path, method="GET", data=None):
        """The status, and what was answered."""
        headers = {"Authorization": f"token {self.about['token']}"}
        body = None if data is None else json.dumps(data).encode()
        url = f"{self.about['url']}{path}"
        request = urllib.request.Request(url, body, headers, method=method)
        try:
            with urllib.request.urlopen(request, timeout=PATIENCE_S) as answer:
                return answer.status, json.loads(answer.read() or "null")
        except urllib.error.HTTPError as error:
            return error.code, None

    def stop(self):
        self.ask("api/shutdown", "POST")
        self.process.wait(timeout=PATIENCE_S)


def umasks_of(account):
    """The umask of each program of an account that runs, by the module that it is."""
    found = {}
    for process in account.processes():
        status = Path(f"/proc/{process.pid}/status").read_text()
        module = next(one for one in process.info["cmdline"] if one.startswith("twoshaft."))
        found[module] = re.search(r"Umask:\s+(\S+)", status)[1]
    return found


def closed_to(runtime, *others):
    """Whether the keys of a server are for nobody else."""
    keys = [*runtime.glob("jpserver-*")]
    assert {path.suffix for path in keys} == {".json", ".html"}
    return not any(other.can("-r", path) for other in others for path in keys)


def open_to_a_group(path, home):
    """Whether a group can write there, by its rights and those of the folders around it."""
    around = (up for up in path.parents if home in up.parents)
    return path.stat().st_mode & 0o022 and all(up.stat().st_mode & 0o077 for up in around)


def test_a_learner_opens_the_course_by_one_command(ada_works, accounts):
    holm, ada, ben = accounts
    works(ben, ada_works, "b2", "get")
    server = Server(
        ada, lambda: ada.home / ".local/state", ada_works.shared / "open-course", "--no-browser"
    )
    try:
        assert closed_to(server.runtime, holm, ben)
        _, top = server.ask("api/contents/")
        assert sorted(one["name"] for one in top["content"]) == ["lessons", "start-here.ipynb"]
        for path in ("b2", f"b2/{NAME}", "a1", "lessons/../b2"):
            _, found = server.ask(f"api/contents/{path}")
            assert not (found or {}).get("content")
        assert server.ask(f"api/contents/b2/{NAME}/assignment.json")[0] >= 400
        assert server.ask(f"api/contents/a1/{NAME}/assignment.json")[0] == 200
        assert server.ask("api/terminals")[0] == server.ask("api/terminals", "POST", {})[0] == 404
        status, kernel = server.ask("api/kernels", "POST", {"path": f"a1/{NAME}/x.ipynb"})
        assert status == 201
        # What a notebook makes is for staff too, what the server does is for nobody else.
        assert umasks_of(ada) == {"twoshaft.jupyter.server": "0077", "twoshaft.kernels": "0007"}
        assert kernel["id"]
        # A group of many people is some accounts' own: what is made in a home is not for it.
        made = [path for path in ada.home.rglob("*") if not path.is_symlink()]
        assert len(made) > 20 and not [path for path in made if open_to_a_group(path, ada.home)]
    finally:
        server.stop()
    code, said = holm.run(ada_works.shared / "open-course", "--no-browser")
    assert code == 2 and said.startswith("this is the instructor's account")


def test_the_keys_of_the_staffs_server_are_closed(ada_works, accounts):
    holm, ada, ben = accounts
    desk = (holm.env["PYTHON"], "-m", "twoshaft_grader.desk", "open", "--cohort", ada_works.root)
    code, said = holm.run(*desk)
    assert code == 2 and str(ada_works.shared / "open-course") in said
    server = Server(
        holm, lambda: ada_works.root / "settings", *desk, "--as", "staff", "--no-browser"
    )
    try:
        for path in server.runtime.glob("jpserver-*"):
            assert stat.S_IMODE(path.stat().st_mode) == 0o600
        assert closed_to(server.runtime, ada, ben)
    finally:
        server.stop()
    test_nothing_of_the_cohort_folder_is_for_others(ada_works)


RESTORE = ("cohort", "restore")


def test_a_cohort_is_restored_to_whose_it_was(ada_works, accounts, place, tmp_path):
    """By its instructor, learners' own folders lie apart; by root, each has theirs again."""
    holm, ada, ben = accounts
    kept = holm.home / "kept.zip"
    holm.twoshaft(("cohort", "back-up", kept, "--cohort", ada_works.root))
    sheet = (ada_works.place("a1", NAME) / "jobsheet.json").read_text()

    alone, its = holm.home / "again", place / "srv" / "again"
    said = holm.twoshaft((*RESTORE, kept, alone, "--shared", its))
    assert (
        "only root can give them to their accounts, by the same command" in " ".join(said.split())
        and "a1" in said
    )
    apart = alone / "own-folders/a1" / NAME / "jobsheet.json"
    assert apart.read_text() == sheet and not ada.can("-r", apart)

    root, shared = holm.home / "by-root", place / "srv" / "by-root"
    env = {key: holm.env[key] for key in ("PATH", "LANG", "PYTHONPATH")}
    done = subprocess.run(
        [holm.env["PYTHON"], "-m", "twoshaft_grader.desk", *RESTORE, kept, root, "--shared", shared],
        env=env | {"HOME": str(tmp_path)}, cwd="/", capture_output=True, text=True,
    )  # fmt: skip
    assert done.returncode == 0 and "own-folders" not in done.stdout, done.stdout + done.stderr
    made = open_cohort(root)
    own = made.work / "a1"
    for path in (own, *own.rglob("*")):
        assert path.stat().st_uid == ada.uid or path.name == "learner.json", path  # made anew
    theirs = {own: ada.uid, made.work / "b2": ben.uid}  # his, if he has signed in by then
    others = {
        path: uid
        for path in (*root.rglob("*"), *shared.rglob("*"))
        if (uid := path.lstat().st_uid) != holm.uid
        and not any(uid == theirs.get(one) for one in (path, *path.parents))
        and not (path.name == "learner.json" and path.parent in theirs)  # made anew
        and made.inbound not in path.parents
    }
    assert not others
    test_nothing_of_the_cohort_folder_is_for_others(made)
    test_a_learners_folder_is_theirs_and_staffs_alone(made, accounts)
    assert (own / NAME / "jobsheet.json").read_text() == sheet
    # and both go on: she with what she has answered, he with what she hands in
    assert works(ada, made, "a1", "answer", "look", "hand_in") == "done"
    at = ("--cohort", root)
    assert "1 new" in holm.twoshaft(
        ("collect", "--take", "a1", *at), ("mark", *at), ("give-back", *at)
    )
    assert works(ada, made, "a1", "look") == "done"
    assert works(ben, made, "b2", "get", "answer") == "done"


def test_an_account_that_only_has_the_number_gets_nothing(ada_works, accounts, place, tmp_path):
    holm, ada, _ = accounts
    first, kept = holm.home / "first.zip", holm.home / "other.zip"
    holm.twoshaft(("cohort", "back-up", first, "--cohort", ada_works.root))
    with zipfile.ZipFile(first) as old, zipfile.ZipFile(kept, "w") as new:
        for name in old.namelist():
            data = old.read(name)
            if name == "manifest.json":
                data = data.replace(f'"{ada.name}"'.encode(), b'"zoe"')
            new.writestr(name, data)
    root, shared = holm.home / "number", place / "srv" / "number"
    made = restore(kept, root, shared=shared)
    assert made.apart == ("a1",) and not (shared / "work/a1").exists()
    assert (root / "own-folders/a1").stat().st_uid == holm.uid
