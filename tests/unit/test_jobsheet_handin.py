"""Sign-in, getting, handing in and feedback, through a real nbgrader exchange on this machine."""

import json
import os
import sys

import nbformat
import pytest

from twoshaft.errors import CohortError, SheetError
from twoshaft.jobsheet import handin, open_sheet
from twoshaft.jobsheet.overview import contents
from twoshaft.jobsheet.people import Listed, read_people, word_check, word_fits, write_people
from twoshaft.jobsheet.receipts import read_receipts, receipt_code, sheet_digest
from twoshaft.jobsheet.signin import SignIn
from twoshaft.jobsheet.startpage import StartPage, start_here
from twoshaft.stored.person import Person

pytestmark = pytest.mark.skipif(
    sys.platform == "win32", reason="nbgrader's exchange does not work on Windows"
)
NOTEBOOK = "02-order-of-work.ipynb"
ANA, BEN = Person("a01", "Example", "Ana"), Person("a02", "Sample", "Ben")


@pytest.fixture
def workplace(tmp_path):
    """A workplace for two learners, and an exchange in which one assignment is released."""
    root, exchange = tmp_path / "workplace", tmp_path / "exchange"
    root.mkdir()
    outbound = exchange / "demo" / "outbound" / "order-of-work-1"
    outbound.mkdir(parents=True)
    (exchange / "demo" / "inbound").mkdir()
    (exchange / "demo" / "feedback").mkdir()
    os.chmod(exchange, 0o777)
    os.chmod(exchange / "demo" / "inbound", 0o733)
    nbformat.write(nbformat.v4.new_notebook(), outbound / NOTEBOOK)
    about = {
        "format": 1,
        "assignment": "order-of-work-1",
        "module": "order-of-work",
        "attempt": 1,
        "cohort": "demo",
        "salt": "s",
        "unit": "tarnbeck-b5",
        "due": "2031-05-02T16:00:00+00:00",
    }
    (outbound / "assignment.json").write_text(json.dumps(about))
    for person in (ANA, BEN):
        (root / person.id).mkdir()
        (root / person.id / "learner.json").write_text(
            json.dumps(
                {
                    "id": person.id,
                    "family_name": person.family_name,
                    "given_name": person.given_name,
                }
            )
        )
    write_people(
        root, [Listed(ANA, word_check("copper-heron")), Listed(BEN, word_check("tin-otter"))]
    )
    (root / "workplace.json").write_text(
        json.dumps({"cohort": "demo", "course_id": "demo", "exchange": "../exchange"})
    )
    return root


@pytest.fixture
def ana(workplace):
    sign_in = SignIn(workplace)
    sign_in.sign_in("a01", "copper-heron")
    return sign_in


def answer(workplace, learner="a01", text="1.25 mm"):
    sheet = open_sheet("order-of-work", workplace / learner / "order-of-work-1")
    sheet.register("t", [sheet.number("gap", "Gap", "mm")])
    sheet.answer("gap", text)


def inbound(workplace):
    return sorted((workplace.parent / "exchange" / "demo" / "inbound").iterdir())


def test_the_word_lets_its_owner_in_and_nobody_else(workplace):
    sign_in = SignIn(workplace)
    assert [person.id for person in sign_in.people()] == ["a01", "a02"]
    with pytest.raises(SheetError, match="not the word on the slip of Ana Example"):
        sign_in.sign_in("a01", "tin-otter")
    with pytest.raises(SheetError, match="no sign-in word"):
        sign_in.sign_in("a01", "  ")
    with pytest.raises(SheetError, match="nobody was chosen"):
        sign_in.sign_in("", "tin-otter")
    assert sign_in.me is None and sign_in.entries() == ()
    assert sign_in.sign_in("a01", "Copper Heron") == ANA
    sign_in.sign_out()
    with pytest.raises(SheetError, match="nobody is signed in"):
        sign_in.hand_in("order-of-work-1")


@pytest.mark.parametrize("check", ["", "x", "pbkdf2$0$a$b", "pbkdf2$999999999$a$b", "a$b$c$d"])
def test_a_damaged_check_lets_nobody_in(check):
    assert not word_fits("copper-heron", check)


@pytest.mark.parametrize("text", ["", "{}", "[1]", '[{"id": 3}]', "[NaN]", "[[[[[[[[[[[[[[[["])
def test_a_damaged_list_of_people_is_one_sentence(workplace, text):
    (workplace / "people.json").write_text(text)
    with pytest.raises(SheetError) as caught:
        read_people(workplace)
    assert "\n" not in str(caught.value) and "people.json" in str(caught.value)


def test_from_getting_to_handing_in_twice(workplace, ana, capfd):
    (entry,) = ana.entries()
    assert (entry.state, entry.can_get, entry.can_hand_in) == ("to get", True, False)
    assert entry.due.startswith("2031-05-02")
    ana.get("order-of-work-1")
    (entry,) = ana.entries()
    assert (entry.state, entry.can_get, entry.can_hand_in) == ("open", False, False)
    assert entry.notebooks == (f"a01/order-of-work-1/{NOTEBOOK}",)
    with pytest.raises(CohortError, match="no answer is saved"):
        ana.hand_in("order-of-work-1")

    answer(workplace)
    first = ana.hand_in("order-of-work-1")
    (entry,) = ana.entries()
    assert entry.state == "handed in" and entry.receipt == first and first.code in entry.detail
    (handed_in,) = inbound(workplace)
    assert handed_in.name.startswith("a01+order-of-work-1+")
    names = {path.name for path in handed_in.iterdir()}
    assert names == {
        NOTEBOOK, "jobsheet.json", "assignment.json", "timestamp.txt", "submission_secret.txt",
        "own-work.json",
    }  # fmt: skip
    assert first.sha256 == sheet_digest(handed_in / "jobsheet.json")
    assert first.code == receipt_code(first.sha256) and first.answers == 1

    answer(workplace, text="1.5 mm")
    assert ana.entries()[0].state == "changed since"
    second = ana.hand_in("order-of-work-1")
    assert second.code != first.code and len(inbound(workplace)) == 2
    assert read_receipts(workplace / "a01") == (first, second)
    assert ana.entries()[0].state == "handed in"
    assert capfd.readouterr().err == ""


def test_how_much_is_answered_is_told_until_feedback_comes(workplace, ana):
    offered = workplace.parent / "exchange/demo/outbound/order-of-work-1/assignment.json"
    about = json.loads(offered.read_text())
    offered.write_text(json.dumps(about | {"fields": 3}))
    assert (ana.entries()[0].left, ana.entries()[0].detail) == (3, "not here yet")
    ana.get("order-of-work-1")
    assert ana.entries()[0].detail == "none of 3 answered; not handed in"
    answer(workplace)
    (entry,) = ana.entries()
    assert entry.left == 2 and entry.detail.startswith("1 of 3 answered, last ")
    assert contents(ana, (entry,))[0].next.startswith("Open the exercise: 2 answers are still")
    ana.hand_in("order-of-work-1")
    assert "1 of 3 answered, last" in ana.entries()[0].detail
    # An answer taken back is none; one that nothing asks for does not count beyond the last.
    sheet = workplace / "a01/order-of-work-1/jobsheet.json"
    stored = json.loads(sheet.read_text())
    stored["fields"]["gap"]["value"] = ""
    sheet.write_text(json.dumps(stored))
    assert ana.entries()[0].state == "changed since" and ana.entries()[0].left == 3
    stored["fields"] = {f"f{n}": {"value": "1 mm", "revision": 1} for n in range(5)}
    sheet.write_text(json.dumps(stored))
    (entry,) = ana.entries()
    assert entry.left == 0 and entry.detail.startswith("3 of 3 answered; handed in")
    for damaged in ("{", "[]", '{"fields": 3}'):
        sheet.write_text(damaged)
        (entry,) = ana.entries()
        assert entry.left is None and entry.detail.count("job sheet cannot be read") == 1
        assert "answered" not in entry.detail


@pytest.mark.parametrize("fields", ["3", -1, True, None, [3], 1.5])
def test_a_count_of_fields_that_is_none_is_left_out(workplace, ana, fields):
    ana.get("order-of-work-1")
    path = workplace / "a01/order-of-work-1/assignment.json"
    path.write_text(json.dumps(json.loads(path.read_text()) | {"fields": fields}))
    answer(workplace)
    (entry,) = ana.entries()
    assert entry.left is None and entry.detail.startswith("1 answer saved")
    assert contents(ana, (entry,))[0].next == "Open the exercise, answer it and hand it in."


def test_a_renamed_notebook_is_named_and_mended(workplace, ana):
    ana.get("order-of-work-1")
    answer(workplace)
    folder = workplace / "a01" / "order-of-work-1"
    (folder / NOTEBOOK).rename(folder / "mine.ipynb")
    with pytest.raises(CohortError, match=f"renamed to mine.ipynb; rename it back to {NOTEBOOK}"):
        ana.hand_in("order-of-work-1")
    assert inbound(workplace) == []
    (entry,) = ana.entries()
    assert entry.can_get and not entry.can_hand_in
    ana.get("order-of-work-1")
    assert (folder / NOTEBOOK).exists() and (folder / "mine.ipynb").exists()
    ana.hand_in("order-of-work-1")


def test_another_learners_sheet_is_not_handed_in(workplace, ana):
    ana.get("order-of-work-1")
    sheet = workplace / "a01" / "order-of-work-1" / "jobsheet.json"
    sheet.write_text(json.dumps({"format": 1, "learner": "a02", "fields": {}}))
    with pytest.raises(CohortError, match="belongs to a02"):
        ana.hand_in("order-of-work-1")


def test_a_damaged_sheet_is_not_handed_in(workplace, ana):
    ana.get("order-of-work-1")
    (workplace / "a01" / "order-of-work-1" / "jobsheet.json").write_text("{")
    with pytest.raises(CohortError, match="cannot be read"):
        ana.hand_in("order-of-work-1")


def test_what_is_not_offered_is_one_sentence(ana):
    for doing in (ana.get, ana.hand_in):
        with pytest.raises(CohortError, match=r"no assignment “../a02” that you can get"):
            doing("../a02")


def test_an_exchange_that_is_closed_is_one_sentence(workplace, ana):
    ana.get("order-of-work-1")
    answer(workplace)
    (workplace.parent / "exchange" / "demo" / "inbound").rmdir()
    with pytest.raises(CohortError, match=r"could not be handed in .*ask your instructor"):
        ana.hand_in("order-of-work-1")
    assert read_receipts(workplace / "a01") == ()


def test_feedback_comes_from_the_exchange_and_from_the_folder(workplace, ana):
    from nbgrader.utils import notebook_hash

    ana.get("order-of-work-1")
    answer(workplace)
    ana.hand_in("order-of-work-1")
    secret = (inbound(workplace)[0] / "submission_secret.txt").read_text()
    page = notebook_hash(secret=secret, notebook_id="02-order-of-work")
    waiting = workplace.parent / "exchange" / "demo" / "feedback" / f"{page}.html"
    waiting.write_text("<p>from the exchange</p>")
    ana.look_for_feedback()
    (entry,) = ana.entries()
    assert entry.state == "feedback" and len(entry.feedback) == 1
    own = workplace / "a01" / "order-of-work-1" / "feedback"
    (own / "02-order-of-work.html").write_text("<p>put there</p>")
    assert "a01/order-of-work-1/feedback/02-order-of-work.html" in ana.entries()[0].feedback
    # Feedback on earlier work says nothing of what is handed in now, and is not handed in again.
    old = 1_600_000_000
    (of_this,) = own.glob("*/")
    of_this.rename(own / "2020-09-13 12:26:40.000000 UTC")
    for known in own.rglob("*.html"):
        os.utime(known, (old, old))
    assert ana.entries()[0].state == "handed in" and ana.entries()[0].feedback
    ana.hand_in("order-of-work-1")
    assert not any((folder / "feedback").exists() for folder in inbound(workplace))


def test_two_learners_on_one_machine_stay_apart(workplace, ana):
    ben = SignIn(workplace)
    ben.sign_in("a02", "tin-otter")
    for who in (ana, ben):
        who.get("order-of-work-1")
    answer(workplace, "a02", "3 mm")
    ben.hand_in("order-of-work-1")
    assert [path.name.split("+")[0] for path in inbound(workplace)] == ["a02"]
    assert ana.entries()[0].state == "open" and ben.entries()[0].state == "handed in"


def test_a_workplace_without_an_exchange_still_lists_what_is_there(workplace, ana):
    ana.get("order-of-work-1")
    (workplace / "workplace.json").unlink()
    assert [entry.name for entry in ana.entries()] == ["order-of-work-1"]
    with pytest.raises(CohortError, match="hands nothing in"):
        ana.hand_in("order-of-work-1")
    assert handin.find_counter(workplace) is None


def test_the_start_page_says_what_is_wrong_and_goes_on(workplace):
    page = StartPage(SignIn(workplace))
    assert page.people == [["a01", "Example, Ana (a01)"], ["a02", "Sample, Ben (a02)"]]
    page.hear({"type": "sign-in", "name": "a01", "word": "wrong"})
    assert page.trouble.startswith("That is not the word") and page.me == {}
    turn = page.turn
    page.hear({"type": "sign-in", "name": "a01", "word": "wrong"})
    assert page.turn == turn + 1
    page.hear({"type": "sign-in", "name": "a01", "word": "copper-heron"})
    assert page.trouble == "" and page.me["name"] == "Ana Example"
    page.hear({"type": "get", "name": "nothing-1"})
    assert page.trouble.startswith("There is no assignment “nothing-1”")
    page.hear({"type": "get", "name": "order-of-work-1"})
    assert page.entries[0]["state"] == "open" and "Working as Ana" in page.plain_copy()
    page.hear({"type": "hand-in", "name": "order-of-work-1", "own": True})
    assert page.trouble.startswith("Nothing to hand in yet")
    answer(workplace)
    page.hear({"type": "hand-in", "name": "order-of-work-1"})  # asked first: is it their own
    assert page.asking == "order-of-work-1" and page.entries[0]["receipt"] is None
    page.hear({"type": "hand-in", "name": "order-of-work-1", "own": True})
    assert "with 1 answer. Receipt " in page.said and page.asking == ""
    said = page.said
    page.hear({"type": "look", "quietly": True})
    assert page.said == said
    page.hear({"type": "sign-out"})
    assert page.me == {} and page.entries == []


@pytest.mark.parametrize("name", ["people.json", "workplace.json"])
def test_a_damaged_workplace_is_told_on_the_start_page(workplace, ana, name):
    (workplace / name).write_text("{")
    page = StartPage(ana)
    assert name in page.trouble and page.entries == []
    (workplace / name).unlink()
    assert StartPage(ana) is not None


def test_who_is_signed_in_stays_known_while_the_kernel_lives(workplace):
    start_here(workplace).hear({"type": "sign-in", "name": "a02", "word": "tin-otter"})
    assert start_here(workplace).me["id"] == "a02"
