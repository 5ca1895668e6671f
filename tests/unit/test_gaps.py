"""What is missing and what cannot be read: told task by task, and asked about before handing in."""

import json

import pytest

from twoshaft.jobsheet import open_sheet
from twoshaft.jobsheet.form import FormWidget
from twoshaft.jobsheet.gaps import find_gaps
from twoshaft.jobsheet.overview import lacking
from twoshaft.jobsheet.people import Listed, word_check, write_people
from twoshaft.jobsheet.signin import Entry, SignIn
from twoshaft.stored.person import Person


@pytest.fixture
def folder(tmp_path):
    """An assignment in a learner's folder, with a notebook of two tasks."""
    place = tmp_path / "a01" / "order-of-work-1"
    place.mkdir(parents=True)
    who = {"id": "a01", "family_name": "Example", "given_name": "Ana"}
    (place.parent / "learner.json").write_text(json.dumps(who))
    about = {"format": 1, "module": "order-of-work", "attempt": 1, "salt": "s", "fields": 3}
    (place / "assignment.json").write_text(json.dumps(about))
    cells = [
        {
            "cell_type": "markdown",
            "metadata": {"tags": ["task"], "nbgrader": {"grade_id": f"{task}-task"}},
            "source": [f"## {heading}\n", "\n", "Do it."],
        }
        for task, heading in (("one", "1. The gap"), ("two", "2. The heat"))
    ]
    (place / "exercise.ipynb").write_text(json.dumps({"cells": cells}))
    return place


def forms(folder):
    sheet = open_sheet("order-of-work", folder)
    asked = {
        "one": (sheet.number("gap", "How wide?", "mm"), sheet.number("reach", "How far?", "mm")),
        "two": (sheet.choice("why", "Why?", [["oil", "For the oil"], ["heat", "For heat"]]),),
    }
    for task, fields in asked.items():
        sheet.form(task, *fields)
    return sheet, {task: FormWidget(sheet, task, fields) for task, fields in asked.items()}


def test_gaps_are_told_by_task_and_go_as_answers_come(folder):
    sheet, _ = forms(folder)
    sheet.save("gap", "1.25")
    found = find_gaps(folder)
    assert (found.answered, found.unread) == (0, 1) and found.last
    assert [(gap.task, gap.missing, gap.asked) for gap in found.tasks] == [
        ("1. The gap", 1, 2),
        ("2. The heat", 1, 1),
    ]
    ((question, why),) = found.tasks[0].unread
    assert question == "How wide?" and "without a unit" in why
    sheet.save("gap", "1.25 mm")
    sheet.save("reach", "2 mm")
    sheet.save("why", "heat")
    found = find_gaps(folder)
    assert (found.answered, found.unread, found.tasks) == (3, 0, ())


def test_an_answer_in_part_is_still_missing(folder):
    sheet, _ = forms(folder)
    lines, options = [["a", "Bolt A"], ["b", "Bolt B"]], [["dry", "dry"], ["oil", "oiled"]]
    each = sheet.each("wet", "How does each go in?", lines, options)
    sheet.form("three", each)
    sheet.save("wet", ["b=oil"])
    found = find_gaps(folder)
    assert found.answered == 0 and found.tasks[-1].missing == found.tasks[-1].asked == 1
    state = FormWidget(sheet, "three", (each,)).states["wet"]
    assert state["note"] == "1 of 2 lines not answered yet" and state["short"]
    sheet.save("wet", ["a=dry", "b=oil"])
    assert find_gaps(folder).answered == 1 and len(find_gaps(folder).tasks) == 2


def test_without_the_note_answers_are_counted_and_nothing_is_guessed(folder):
    sheet, _ = forms(folder)
    sheet.save("gap", "1.25")
    for damaged in ("{", "[]", None):
        note = folder / ".asked.json"
        note.unlink(missing_ok=True) if damaged is None else note.write_text(damaged)
        found = find_gaps(folder)
        assert (found.answered, found.unread, found.tasks) == (1, 0, ())
    (folder / "jobsheet.json").write_text("{")
    assert find_gaps(folder) is None


def test_a_damaged_notebook_takes_only_the_headings(folder):
    forms(folder)
    for text in ("{", "[]", '{"cells": [{"metadata": []}]}', '{"cells": 1}'):
        (folder / "exercise.ipynb").write_text(text)
        assert [gap.task for gap in find_gaps(folder).tasks] == ["one", "two"]


def test_every_form_of_a_notebook_shows_what_another_window_saved(folder):
    _, older = forms(folder)
    newer, _ = forms(folder)
    newer.save("gap", "1 mm")
    newer.save("why", "oil")
    older["one"].hear({"type": "look"})
    assert older["one"].states["gap"]["value"] == "1 mm"
    assert older["two"].states["why"]["value"] == "oil"


def test_what_a_browser_keeps_belongs_to_one_learner_and_sheet(folder, tmp_path):
    mine, _ = forms(folder)
    assert mine.browser_key.startswith("a01/order-of-work-1/")
    who = {"id": "a02", "family_name": "Sample", "given_name": "Ben"}
    (folder.parent / "learner.json").write_text(json.dumps(who))
    assert open_sheet("order-of-work", folder).browser_key != mine.browser_key
    assert open_sheet("order-of-work", tmp_path).browser_key != mine.browser_key


def test_what_is_lacking_is_counted_in_words():
    entry = Entry("a-1", "A", "", False, "open", "", left=34, unread=1)
    assert lacking(entry) == "34 answers are still to be given, 1 cannot be read"
    assert lacking(Entry("a-1", "A", "", False, "open", "", left=0)) == ""


@pytest.fixture
def signed_in(tmp_path):
    people = [Person("a01", "Example", "Ana"), Person("a02", "Sample", "Ben")]
    for person in people:
        (tmp_path / person.id).mkdir()
    write_people(tmp_path, [Listed(one, word_check(f"word {one.id}")) for one in people])
    sign_in = SignIn(tmp_path)
    sign_in.sign_in("a01", "word a01")
    return sign_in


def test_a_window_goes_on_with_a_new_kernel_and_nobody_elses_ticket_opens(signed_in):
    ticket = signed_in.ticket
    anew = SignIn(signed_in.workplace)
    for learner, shown in (("a02", ticket), ("a01", ""), ("a01", "é"), ("", ticket)):
        anew.resume(learner, shown)
        assert anew.me is None
    anew.resume("a01", ticket)
    assert anew.me.id == "a01" and anew.ticket == ticket
    anew.resume("a02", ticket)
    assert anew.me.id == "a01"
    signed_in.sign_out()
    assert not signed_in.ticket
