"""Questions of earlier lessons come back by what was got wrong and how long ago."""

import json
import re
from datetime import UTC, datetime, timedelta

import pytest

from twoshaft.jobsheet.people import Listed, word_check, write_people
from twoshaft.modules import COURSE
from twoshaft.practice import open_lesson
from twoshaft.practice.again import GAPS_DAYS, choose, overdue
from twoshaft.practice.asked import asked, standing_alone
from twoshaft.stored.person import Person
from twoshaft.stored.practice import PRACTICE, Practice, Try

NOW = datetime(2026, 11, 29, 12, tzinfo=UTC)


def tried(days_ago, *rights):
    """Tries of which the last was so many days ago, the others a day before each."""
    return tuple(
        Try("x", right, f"{NOW - timedelta(days=days_ago + back):%Y-%m-%dT%H:%M:%SZ}")
        for back, right in zip(range(len(rights) - 1, -1, -1), rights, strict=True)
    )


def test_the_gap_widens_with_right_answers_and_begins_anew_after_another():
    for rights, gap in [
        ((False,), 2), ((True,), 7), ((True, True), 28), ((True, True, True), 28),
        ((True, True, False), 2), ((False, True), 7),
    ]:  # fmt: skip
        assert overdue(tried(gap, *rights), NOW) == pytest.approx(1)
        assert overdue(tried(gap / 2, *rights), NOW) == pytest.approx(0.5)
    assert overdue((), NOW) == 1


def test_the_gaps_are_those_of_the_study():
    # Cepeda et al. 2008: 20 to 40 % of a week, 5 to 10 % of a year.
    assert 0.2 <= GAPS_DAYS[0] / 7 <= 0.4 and 0.05 <= GAPS_DAYS[2] / 365 <= 0.1
    assert list(GAPS_DAYS) == sorted(GAPS_DAYS)


def test_what_was_wrong_comes_first_then_the_most_overdue_of_other_modules():
    keys = ["a/one", "a/two", "a/three", "b/one", "c/one", "c/two"]
    tries = {
        "a/one": tried(3, False),
        "a/two": tried(30, True),
        "a/three": tried(4, True, False),
        "b/one": tried(1, True),
        "c/one": tried(14, True),
        "c/two": tried(1, False),
    }
    # Both that were wrong, of one module; then another module's, the more overdue of them.
    assert choose(keys, tries, NOW, 3) == ("a/three", "a/one", "c/one")
    assert set(choose(keys, {}, NOW, 3)) >= {"b/one"}
    assert {key[0] for key in choose(keys, {}, NOW, 3)} == {"a", "b", "c"}
    assert choose(keys[:2], {}, NOW, 3) and len(choose(keys[:2], {}, NOW, 3)) == 2
    days = {choose(keys, {}, NOW + timedelta(days=n), 3) for n in range(9)}
    assert len(days) > 1, "equal ones take turns from day to day"


def test_every_module_has_enough_to_ask_later():
    for module in COURSE:
        names = standing_alone(module)
        assert len(names) >= 2, module
        for name in names:
            question = asked(module, name)
            assert question.again and not re.search(
                "(table|picture|sheet) above", question.field.prompt
            )


def answered(lesson, right=True):
    """Answer the three questions of a lesson; returns what was told of each."""
    screen = lesson.asked_again()
    values = {}
    for name, question in lesson._again.items():
        values[name] = question.right if right else other(question)
    screen.hear({"type": "give", "values": values})
    return screen


def other(question):
    """An answer that is not so."""
    field = question.field
    told = field.told()
    if "options" in told and isinstance(question.right, str):
        return next(key for key, _ in told["options"] if key != question.right)
    if "lines" in told:
        return [one.partition("=")[0] + f"={told['options'][k][0]}" for one in question.right
                for k in (0, 1) if one != one.partition("=")[0] + f"={told['options'][k][0]}"][:len(question.right)]  # fmt: skip
    if "options" in told:
        return [key for key, _ in told["options"] if key not in question.right] or question.right[
            :1
        ]
    return f"987654 {field.unit}".strip()


def test_a_lesson_asks_three_of_earlier_ones_and_keeps_what_was_said(tmp_path, monkeypatch):
    monkeypatch.chdir(tmp_path)
    screen = answered(open_lesson("threaded-joints"), right=False)
    assert [told["how"] for told in screen.told.values()] == ["other"] * 3
    kept = PRACTICE.read(tmp_path / "practice.json").tries
    earlier = {"course-and-safety", "measuring-and-tools", "order-of-work"}
    assert len(kept) == 3 and {key.partition("/")[0] for key in kept} == earlier
    lesson = open_lesson("threaded-joints")
    lesson.asked_again()
    assert not set(kept) & {one.key for one in lesson._again.values()}, "asked a moment ago"
    old = {
        key: [{"value": tries[0].value, "right": False, "at": "2026-01-01T00:00:00Z"}]
        for key, tries in kept.items()
    }
    (tmp_path / "practice.json").write_text(json.dumps({"format": 1, "tries": old}))
    lesson = open_lesson("threaded-joints")
    screen = answered(lesson)
    assert {one.key for one in lesson._again.values()} == set(kept), "wrong, and long ago"
    assert all(told["how"] == "right" for told in screen.told.values())
    screen.hear({"type": "fresh"})
    assert not screen.told and not set(kept) & {one.key for one in lesson._again.values()}


def test_half_answered_gives_nothing_away(tmp_path, monkeypatch):
    monkeypatch.chdir(tmp_path)
    lesson = open_lesson("order-of-work")
    screen = lesson.asked_again()
    name, question = next(iter(lesson._again.items()))
    screen.hear({"type": "give", "values": {name: question.right}})
    assert {told["how"] for told in screen.told.values()} == {"unread"} and len(screen.told) == 2
    assert not (tmp_path / "practice.json").exists()


def test_the_first_lesson_has_nothing_to_ask_and_does_not(tmp_path, monkeypatch):
    monkeypatch.chdir(tmp_path)
    lesson = open_lesson("course-and-safety")
    assert not lesson.asked_again().fields


@pytest.fixture
def workplace(tmp_path):
    """A workplace of two learners in one account, with the lessons of both."""
    people = [Person("ann", "Bell", "Ann"), Person("bob", "Dale", "Bob")]
    checks = [word_check("copper heron"), word_check("silver crane")]
    write_people(tmp_path, map(Listed, people, checks))
    for folder in ("lessons", "ann", "bob"):
        (tmp_path / folder).mkdir()
    return tmp_path


def test_in_one_account_the_windows_ticket_says_whose_practice_it_is(workplace):
    from twoshaft.jobsheet.signin import SignIn

    lesson = open_lesson("order-of-work", workplace / "lessons")
    question = lesson.predict("keeps-the-rest")
    shut = lesson.then("keeps-the-rest", "why")
    assert question.place and not lesson._keep.kept
    tickets = {}
    for who, word in (("ann", "copper heron"), ("bob", "silver crane")):
        door = SignIn(workplace)
        door.sign_in(who, word)
        tickets[who] = door.ticket
    question.hear({"type": "who", "id": "ann", "ticket": tickets["ann"]})
    question.hear({"type": "give", "values": {"keeps-the-rest": "ring"}})
    kept = PRACTICE.read(workplace / "ann" / "practice.json")
    assert kept.tries["order-of-work/keeps-the-rest"][0].value == "ring" and shut.is_open
    question.hear({"type": "who", "id": "bob", "ticket": tickets["bob"]})
    assert not shut.is_open and not question.told
    assert not (workplace / "bob" / "practice.json").exists()
    question.hear({"type": "who", "id": "ann", "ticket": tickets["bob"]})
    assert not lesson._keep.whose and not question.told, "a ticket is for its owner alone"
    question.hear({"type": "who", "id": "ann", "ticket": tickets["ann"]})
    assert shut.is_open and question.told["keeps-the-rest"]["how"] == "other"


def test_a_damaged_practice_is_told_and_hinders_nothing(tmp_path, monkeypatch):
    monkeypatch.chdir(tmp_path)
    (tmp_path / "practice.json").write_text('{"format": 1, "tries": 7}')
    lesson = open_lesson("order-of-work")
    question = lesson.predict("keeps-the-rest")
    shut = lesson.then("keeps-the-rest", "why")
    assert "practice" in question.notice
    question.hear({"type": "give", "values": {"keeps-the-rest": "case"}})
    assert question.told["keeps-the-rest"]["how"] == "right"
    assert "not kept" in question.notice and shut.is_open


def test_it_is_written_as_it_is_read():
    practice = Practice({"a/b": tried(1, True, False)})
    assert PRACTICE.of(json.loads(PRACTICE.text(practice))) == practice
