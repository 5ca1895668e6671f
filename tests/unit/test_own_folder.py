"""A learner's folder: there from the beginning, or made by the learner's own account."""

import os
import stat
from pathlib import Path

import pytest

from twoshaft.errors import SheetError
from twoshaft.jobsheet.own_folder import enter, is_apart
from twoshaft.jobsheet.people import Listed, word_check, write_people
from twoshaft.jobsheet.signin import SignIn
from twoshaft.jobsheet.startpage import ONE_ACCOUNT, OWN_ACCOUNT, StartPage
from twoshaft.stored.person import PERSON, Person

ANA = Person("a1", "Lindqvist", "Ana")
pytestmark = pytest.mark.skipif(os.name == "nt", reason="accounts and links of Unix")


@pytest.fixture
def workplace(tmp_path):
    """A workplace whose learner works in an account of her own and has not signed in yet."""
    root = tmp_path / "workplace"
    (tmp_path / "work").mkdir(), root.mkdir()
    write_people(root, [Listed(ANA, word_check("tin-otter"))])
    (root / "a1").symlink_to(Path("../work", "a1"))
    return root


def test_signing_in_makes_the_folder_for_its_owner_and_group_alone(workplace):
    page = StartPage(SignIn(workplace))
    assert page.kept == OWN_ACCOUNT
    before = os.umask(0o022)
    try:
        page.hear({"type": "sign-in", "name": "a1", "word": "tin-otter"})
        assert os.umask(0o022) == 0o022  # as it was
    finally:
        os.umask(before)
    assert page.me["id"] == "a1" and not page.trouble
    made = workplace.parent / "work" / "a1"
    assert stat.S_IMODE(made.stat().st_mode) & 0o777 == 0o770
    assert PERSON.read(made / PERSON.file) == ANA
    again = SignIn(workplace)
    again.resume("a1", page.me["ticket"])
    assert again.me == ANA


def test_a_folder_of_another_account_lets_nobody_in(workplace, monkeypatch):
    first = SignIn(workplace)
    first.sign_in("a1", "tin-otter")
    uid = os.geteuid()
    monkeypatch.setattr(os, "geteuid", lambda: uid + 1)
    other = SignIn(workplace)
    with pytest.raises(SheetError, match="belongs to another account of this machine"):
        other.sign_in("a1", "tin-otter")
    other.resume("a1", first.ticket)
    assert other.me is None


@pytest.mark.parametrize("what", ["a file", "a link", "nothing can be made"])
def test_something_else_in_its_place_is_one_sentence(workplace, what):
    place = workplace.parent / "work" / "a1"
    if what == "a file":
        place.touch()
    elif what == "a link":
        (workplace / "a1").unlink()
        (workplace / "a1").symlink_to("../nowhere/a1")
    else:
        (workplace.parent / "work").rmdir()
    with pytest.raises(SheetError) as caught:
        enter(workplace / "a1", ANA)
    assert "the folder of Ana Lindqvist" in caught.value.what and caught.value.mend
    assert "\n" not in caught.value.sentence


def test_with_one_account_the_folder_is_there_and_the_page_says_what_that_means(workplace):
    (workplace / "a1").unlink()
    with pytest.raises(SheetError, match="there is no folder for Ana Lindqvist"):
        enter(workplace / "a1", ANA)
    (workplace / "a1").mkdir()
    enter(workplace / "a1", ANA)
    assert not is_apart(workplace / "a1")
    page = StartPage(SignIn(workplace))
    assert page.kept == ONE_ACCOUNT and "anybody could open and change anybody's work" in page.kept
