"""A folder that somebody made under another's id before they came: nothing of theirs goes into it,
staff are told, and one command gives the name free.
"""

import os

import pytest

from twoshaft.errors import CohortError
from twoshaft.jobsheet.own_folder import PROOF
from twoshaft.jobsheet.signin import SignIn
from twoshaft_grader.cohort import shared as places
from twoshaft_grader.cohort.first_come import is_theirs, set_aside, strange_folder
from twoshaft_grader.cohort.folder import make_cohort
from twoshaft_grader.cohort.intake import take_in
from twoshaft_grader.cohort.observations import observe
from twoshaft_grader.cohort.roster import Learner
from twoshaft_grader.cohort.standing import write_standing
from twoshaft_grader.cohort.trail import read_trail
from twoshaft_grader.cohort.workplace import prepare_workplace, sign_in_words
from twoshaft_grader.desk_pages.group import Group
from twoshaft_grader.desk_pages.page import Desk, Work
from twoshaft_grader.desk_pages.parts import Values

pytestmark = pytest.mark.skipif(os.name == "nt", reason="accounts of Unix")
STRANGER = 54321


@pytest.fixture
def cohort(tmp_path, monkeypatch):
    monkeypatch.setattr(places, "_check_accounts", lambda place, owner: os.getegid())
    monkeypatch.setattr(places.compileall, "compile_dir", lambda *words, **more: True)
    made = make_cohort(tmp_path / "group", shared=tmp_path / "srv", timezone="UTC")
    prepare_workplace(made, [Learner("a1", "Lindqvist", "Ada")])
    return made


def accounts(cohort, monkeypatch, owner):
    """Let a learner's folder, and whoever signs in, be of an account that is not the staff's."""
    real = os.lstat

    def lstat(path, **more):
        found = real(path, **more)
        if os.path.basename(path) != "a1" or not isinstance(found, os.stat_result):
            return found
        return os.stat_result((*found[:4], owner, *found[5:10]))

    monkeypatch.setattr(os, "lstat", lstat)
    monkeypatch.setattr("twoshaft.jobsheet.own_folder.os.geteuid", lambda: owner)


def test_who_signed_in_with_the_word_has_their_folder(cohort, monkeypatch):
    accounts(cohort, monkeypatch, STRANGER)
    assert not is_theirs(cohort, "a1") and strange_folder(cohort, "a1") == ""  # not there yet
    SignIn(cohort.workplace).sign_in("a1", sign_in_words(cohort)["a1"].upper())
    assert is_theirs(cohort, "a1") and strange_folder(cohort, "a1") == ""
    observe(cohort, [Learner("a1", "Lindqvist", "Ada")], "a1", "read-scales", by="R", met=True)
    write_standing(cohort, "a1")
    assert (cohort.work / "a1" / "standing.json").exists()
    with pytest.raises(CohortError, match="no folder that a stranger made"):
        set_aside(cohort, "a1")
    (cohort.root / "sign-in-slips.csv").unlink()  # then nobody can tell
    (cohort.work / "a1" / PROOF).unlink()
    assert is_theirs(cohort, "a1")


@pytest.mark.parametrize("proof", [None, "", "f" * 64, "another account's"])
def test_a_first_comer_gets_nothing_and_is_set_aside(cohort, monkeypatch, proof):
    accounts(cohort, monkeypatch, STRANGER - 1)
    SignIn(cohort.workplace).sign_in("a1", sign_in_words(cohort)["a1"])
    accounts(cohort, monkeypatch, STRANGER)
    place = cohort.work / "a1" / PROOF
    if proof is None:
        place.unlink()
    elif proof != "another account's":
        place.write_text(proof)
    assert f"account {STRANGER} of this system made the folder" in strange_folder(cohort, "a1")
    observe(cohort, [Learner("a1", "Lindqvist", "Ada")], "a1", "read-scales", by="R", met=True)
    write_standing(cohort, "a1")
    assert not (cohort.work / "a1" / "standing.json").exists()
    name = set_aside(cohort, "a1")
    assert (cohort.work / name).is_dir() and not (cohort.work / "a1").exists()
    SignIn(cohort.workplace).sign_in("a1", sign_in_words(cohort)["a1"])
    assert strange_folder(cohort, "a1") == ""


def test_the_page_group_shows_it_and_sets_it_aside(cohort, monkeypatch):
    take_in(cohort, [Learner("a1", "Lindqvist", "Ada")])
    page = Group(Desk(cohort.root, "at the desk"))
    titles = [getattr(part, "title", "") for part in page.show()]
    assert "Folders that somebody else made" not in titles
    accounts(cohort, monkeypatch, STRANGER)
    (cohort.work / "a1").mkdir(exist_ok=True)
    (table,) = [one for one in page.show() if getattr(one, "id", "") == "strange"]
    assert table.texts()[0][0] == "a1" and "page Group" in table.texts()[0][1]
    said = page.do("free", Values({}, {"strange": ["a1"]}), Work())
    assert said.startswith("Set aside: a1 in .a1-set-aside-") and strange_folder(cohort, "a1") == ""
    assert read_trail(cohort.root)[-1].act.by == "at the desk"


def test_an_account_of_the_learners_own_name_is_theirs_without_a_word(cohort, monkeypatch):
    accounts(cohort, monkeypatch, STRANGER)
    (cohort.work / "a1").mkdir()
    assert not is_theirs(cohort, "a1")
    monkeypatch.setattr("twoshaft.system.account_name", lambda number: "A1")
    assert is_theirs(cohort, "a1")
