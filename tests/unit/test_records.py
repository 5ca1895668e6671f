"""What is given keeps its stored form through records and back, and complains in a sentence.

That it does for every module is seen where its sheets are marked.
"""

import json

import pytest

from twoshaft.errors import CourseError
from twoshaft.readings import draw, given_in
from twoshaft.records import BenchRecord, Option, Record, changed, extended, from_json, to_json


class Table(Record, frozen=True):
    rows: tuple[Option, ...]
    sizes: dict[str, float]


class Task(BenchRecord, frozen=True):
    table: Table
    nm: int | float


STORED = {"table": {"rows": [["a", "A"], ["b", "B"]], "sizes": {"z": 1.0, "a": 2.5}}, "nm": 3}


def test_members_keep_their_order_and_a_source_is_stored_only_where_there_is_one():
    task = from_json(Task, STORED, "it")
    assert json.dumps(to_json(task)) == json.dumps(STORED)
    assert list(to_json(changed(task, source=" (x)"))) == ["table", "nm", "source"]
    assert dict(task.table.rows) == {"a": "A", "b": "B"}


def test_a_record_is_not_changed_but_made_anew():
    task = from_json(Task, STORED, "it")
    with pytest.raises(AttributeError):
        task.nm = 4

    class More(Task, frozen=True):
        also: str

    assert to_json(extended(More, task, also="x")) == STORED | {"also": "x"}


@pytest.mark.parametrize(
    ("wrong", "said"),
    [
        ({"nm": None}, "task nm: it does not fit this version of the course"),
        ({"more": 1}, "it holds “more”, which is not known"),
        (
            {"table": {"rows": []}},
            "task table: it does not fit this version of the course: it lacks “sizes”",
        ),
        ({"table": {"rows": [["a", "A"], ["b"]], "sizes": {}}}, "task table, rows, 2: "),
        (
            {"table": {"rows": [["a", "A", 1]], "sizes": {}}},
            "a row has 3 members where 2 are known",
        ),
        ({"table": {"rows": "x", "sizes": {}}}, "task table, rows: "),
    ],
)
def test_what_does_not_fit_is_one_sentence_with_its_place(wrong, said):
    with pytest.raises(CourseError) as error:
        from_json(Task, STORED | wrong, "it")
    assert said in error.value.sentence
    assert "issue it again" in error.value.sentence and "$" not in error.value.sentence


def test_an_older_issued_record_says_what_it_lacks(unit):
    stored = to_json(draw("shims-and-preload", unit, salt="s", learner="l", attempt=1))
    del stored["stack"]["doubt_mm"]
    with pytest.raises(CourseError, match=r"task stack.*“shims-and-preload”.*lacks “doubt_mm”"):
        given_in("shims-and-preload", stored)
