"""A job sheet from outside is read whole or refused in one sentence."""

import json
import os
import time

import pytest
from hypothesis import given
from hypothesis import strategies as st

from twoshaft.errors import SheetError
from twoshaft.stored.hostile import MAX_BYTES
from twoshaft.stored.job_sheet import Answer, SheetData, parse_sheet, read_sheet

GOOD = {
    "format": 1,
    "course_version": "0.1.0",
    "unit": {"id": "tarnbeck-b5", "version": "1"},
    "cohort": "demo",
    "learner": "a01",
    "module": "order-of-work",
    "attempt": 1,
    "given_digest": "0123456789abcdef",
    "fields": {
        "gap": {
            "value": "1,25 mm",
            "revision": 2,
            "saved": "2026-05-02T10:42:00Z",
            "history": [{"value": "1.2 mm", "saved": "2026-05-02T10:41:00Z"}],
        },
        "steps": {"value": ["b", "a"], "revision": 1, "saved": "2026-05-02T10:43:00Z"},
    },
}


def changed(**changes):
    return json.dumps(GOOD | changes)


def with_field(**entry):
    return changed(fields={"gap": {"value": "1 mm", "revision": 1} | entry})


def test_a_good_sheet_is_read_and_written_back_the_same():
    data = parse_sheet(json.dumps(GOOD))
    assert data.value("gap") == "1,25 mm" and data.value("steps") == ["b", "a"]
    assert data.value("never-asked") is None
    assert data.answers["gap"].history == (("1.2 mm", "2026-05-02T10:41:00Z"),)
    assert (data.learner, data.attempt, data.unit_id) == ("a01", 1, "tarnbeck-b5")
    assert parse_sheet(json.dumps(data.as_json())) == data


def test_unknown_entries_are_passed_over():
    data = parse_sheet(changed(mark=100, extra={"a": [1, 2]}))
    assert data == parse_sheet(json.dumps(GOOD))


@pytest.mark.parametrize(
    ("text", "why"),
    [
        ("", "not readable"),
        ("{", "not readable"),
        ("[]", "not a job sheet"),
        ("null", "not a job sheet"),
        ("{}", "format 'None'"),
        (changed(format=2), "format '2'"),
        (changed(format=True), "format 'True'"),
        (changed(fields=[]), "table of names"),
        (changed(unit="tarnbeck-b5"), "table of names"),
        (changed(fields={f"f{n}": {"value": ""} for n in range(501)}), "501 fields"),
        (changed(fields={"Gap one": {"value": "1"}}), "not a field name"),
        (changed(fields={"gap": "1 mm"}), "not a table"),
        (changed(learner="../a02"), "not a plain name"),
        (changed(learner=["a01"]), "not a plain name"),
        (changed(learner="a" * 81), "not a plain name"),
        (changed(attempt="1"), "not a count"),
        (changed(attempt=True), "not a count"),
        (changed(attempt=-1), "not a count"),
        (with_field(value={"a": 1}), "type no answer has"),
        (with_field(value=True), "type no answer has"),
        (with_field(value=[1, 2]), "type no answer has"),
        (with_field(value=[["a"]]), "type no answer has"),
        (with_field(value="x" * 2001), "longer than"),
        (with_field(value=["a"] * 2001), "2001 entries"),
        (with_field(value="a\x00b"), "cannot be shown"),
        (with_field(value="\u202egnp.exe"), "cannot be shown"),
        (with_field(revision=1.5), "not a count"),
        (with_field(saved="yesterday"), "no readable time"),
        (with_field(saved=5), "no readable time"),
        (with_field(history={"value": 1}), "short list"),
        (with_field(history=[1]), "list of answers"),
        (with_field(history=[{"value": {}}]), "type no answer has"),
        (json.dumps(GOOD).replace('"1,25 mm"', "NaN"), "NaN is not a number"),
        (json.dumps(GOOD).replace('"1,25 mm"', "-Infinity"), "not a number"),
        (json.dumps(GOOD).replace('"1,25 mm"', "1e999"), "beyond any workshop"),
        (json.dumps(GOOD).replace('"1,25 mm"', "9" * 5000), "more than 18 figures"),
        (json.dumps(GOOD).replace('"1,25 mm"', '"\\ud800"'), "cannot be shown"),
        ('{"format": 1, "learner": "a01", "learner": "a02"}', "“learner” stands there twice"),
        ('{"format": 1, "fields": {"gap": {}, "gap": {}}}', "“gap” stands there twice"),
        ('{"format": 1, "fields": ' + "[" * 100_000, "deeper"),
        ('{"format": 1, "fields": ' + '{"a":' * 50 + "1" + "}" * 51, "deeper"),
    ],
    ids=lambda value: value[:40] if isinstance(value, str) else None,
)
def test_a_hostile_sheet_is_one_sentence(text, why):
    with pytest.raises(SheetError, match=why) as caught:
        parse_sheet(text)
    assert "\n" not in caught.value.sentence and len(caught.value.sentence) < 300


def test_a_mark_inside_text_does_not_count_as_depth():
    data = parse_sheet(with_field(value='[[[[[[[[[[[[[[[[{{{{ \\" ]'))
    assert data.value("gap").startswith("[[[[")


JSON = st.recursive(
    st.none() | st.booleans() | st.integers() | st.floats() | st.text(),
    lambda inner: st.lists(inner, max_size=4) | st.dictionaries(st.text(), inner, max_size=4),
    max_leaves=12,
)


@pytest.mark.slow
@given(JSON, st.sampled_from([*GOOD, "gap", "value", "revision", "saved", "history"]))
def test_any_value_anywhere_is_read_or_refused(value, where):
    data = json.loads(json.dumps(GOOD))
    if where in GOOD:
        data[where] = value
    elif where == "gap":
        data["fields"]["gap"] = value
    else:
        data["fields"]["gap"][where] = value
    try:
        assert isinstance(parse_sheet(json.dumps(data)), SheetData)
    except SheetError as error:
        assert "\n" not in error.sentence


@pytest.mark.slow
@given(st.text() | st.binary().map(lambda raw: raw.decode("latin-1")))
def test_any_text_is_read_or_refused(text):
    with pytest.raises(SheetError):
        parse_sheet(text)


def test_files_that_are_no_files(tmp_path):
    sheet = tmp_path / "jobsheet.json"
    for name, why in (("nowhere.json", "no such job sheet"), (".", "not an ordinary file")):
        with pytest.raises(SheetError, match=why):
            read_sheet(tmp_path / name)
    sheet.write_bytes(b"\xff\xfe{}")
    with pytest.raises(SheetError, match="UTF-8"):
        read_sheet(sheet)
    sheet.write_bytes(b" " * (MAX_BYTES + 1))
    with pytest.raises(SheetError, match="more than 1000000"):
        read_sheet(sheet)
    sheet.write_text("\ufeff" + json.dumps(GOOD), encoding="utf-8")
    assert read_sheet(sheet).learner == "a01"


@pytest.mark.skipif(not hasattr(os, "mkfifo"), reason="no pipes here")
def test_a_pipe_or_link_is_refused_at_once(tmp_path):
    os.mkfifo(tmp_path / "pipe.json")
    (tmp_path / "other.json").write_text(json.dumps(GOOD))
    (tmp_path / "link.json").symlink_to(tmp_path / "other.json")
    start = time.monotonic()
    for name in ("pipe.json", "link.json"):
        with pytest.raises(SheetError, match="not an ordinary file"):
            read_sheet(tmp_path / name)
    assert time.monotonic() - start < 5


def test_the_largest_allowed_sheet_is_read_soon():
    fields = {f"f{n}": {"value": ["step"] * 150, "revision": 1} for n in range(500)}
    text = changed(fields=fields)
    assert len(text) < MAX_BYTES
    assert parse_sheet(text).answers["f0"] == Answer(["step"] * 150, 1)
