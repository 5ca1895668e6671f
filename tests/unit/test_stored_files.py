"""Every stored file opens as it was written before, is written the same again, and is refused in
one sentence when it is of a newer format or damaged.

``stored_before/`` is a small invented cohort, written by the code as it was before the files had
definitions of their own.
"""

import json
from dataclasses import dataclass
from pathlib import Path

import pytest

from twoshaft.errors import CohortError, CourseError, SheetError
from twoshaft.stored.assignment import ASSIGNMENT
from twoshaft.stored.definition import LearnersFile, indented
from twoshaft.stored.extensions import OWN_EXTENSIONS
from twoshaft.stored.given import ISSUED
from twoshaft.stored.job_sheet import parse_sheet, read_sheet, sheet_text
from twoshaft.stored.people import PEOPLE
from twoshaft.stored.person import PERSON
from twoshaft.stored.receipts import RECEIPTS
from twoshaft.stored.standing import STANDING
from twoshaft.stored.workplace import WORKPLACE
from twoshaft_grader.cohort.folder import open_cohort
from twoshaft_grader.cohort.intake import roster_of
from twoshaft_grader.cohort.marks import read_mark
from twoshaft_grader.cohort.observations import observations_of
from twoshaft_grader.cohort.roster import roster_text
from twoshaft_grader.cohort.workplace import sign_in_words
from twoshaft_grader.records.export import COLUMNS
from twoshaft_grader.records.hand_changes import change_log
from twoshaft_grader.stored import assignment as staff
from twoshaft_grader.stored.cohort import read_cohort, write_cohort
from twoshaft_grader.stored.extensions import EXTENSIONS
from twoshaft_grader.stored.issued import read_issued
from twoshaft_grader.stored.lines import CHANGES, MARK_LINES, NBGRADER
from twoshaft_grader.stored.mark import MARK, MARKED
from twoshaft_grader.stored.observations import OBSERVATIONS
from twoshaft_grader.stored.returned import RETURNED

BEFORE = Path(__file__).with_name("stored_before")
NAME = "course-and-safety-1"
OWN = BEFORE / "workplace" / "aa01"

LEARNERS = {
    OWN / "learner.json": PERSON,
    OWN / NAME / "assignment.json": ASSIGNMENT,
    OWN / "receipts.json": RECEIPTS,
    OWN / "standing.json": STANDING,
    BEFORE / "workplace" / "bb02" / "extensions.json": OWN_EXTENSIONS,
    BEFORE / "workplace" / "people.json": PEOPLE,
    BEFORE / "workplace" / "workplace.json": WORKPLACE,
}


STAFF = {
    BEFORE / "source" / NAME / "assignment.json": staff.ASSIGNMENT,
    BEFORE / "extensions.json": EXTENSIONS,
    BEFORE / "observations" / "aa01.json": OBSERVATIONS,
    BEFORE / "returned" / NAME / "aa01.json": RETURNED,
    BEFORE / "marks" / NAME / "aa01.json": MARK,
}
LOGS = {
    BEFORE / "log" / "changes.jsonl": CHANGES,
    BEFORE / "log" / "marks.jsonl": MARK_LINES,
    BEFORE / "log" / "nbgrader.jsonl": NBGRADER,
}


def name_of(path):
    return path.relative_to(BEFORE).as_posix() if isinstance(path, Path) else None


@pytest.mark.parametrize(("path", "definition"), LEARNERS.items(), ids=name_of)
def test_a_learners_file_of_before_opens_and_is_written_the_same(path, definition, tmp_path):
    record = definition.read(path)
    assert path.name == definition.file
    definition.write(tmp_path / path.name, record)
    assert (tmp_path / path.name).read_bytes() == path.read_bytes()


def test_what_they_say_is_read():
    assert PERSON.read(OWN / "learner.json").name == "Una Quill"
    about = ASSIGNMENT.read(OWN / NAME / "assignment.json")
    assert (about.name, about.module, about.attempt) == (NAME, "course-and-safety", 1)
    assert about.bench_readings and about.fields == 28 and about.supervised_by == "R. Holm"
    assert [one.answers for one in RECEIPTS.read(OWN / "receipts.json").receipts] == [28, 28]
    told = STANDING.read(OWN / "standing.json")
    assert told.marks[NAME].points == 44.71 and told.outcomes["use-the-course"].state == "met"


def test_a_job_sheet_of_before_opens_and_is_written_the_same():
    path = OWN / NAME / "jobsheet.json"
    sheet = read_sheet(path)
    assert len(sheet.answers) == 28 and sheet.bench["some-figure"].value == "1,2 mm"
    assert sheet_text(sheet).encode() == path.read_bytes()


@pytest.mark.parametrize(("path", "definition"), STAFF.items(), ids=name_of)
def test_a_staff_file_of_before_opens_and_is_written_the_same(path, definition, tmp_path):
    place = tmp_path / "new folder" / path.name
    record = definition.read(path)
    definition.write(place, record)
    if definition.format == 1:
        assert place.read_bytes() == path.read_bytes()
    else:  # written in the form of today, and the same again
        assert definition.read(place) == record
    assert definition.file in ("", path.name)
    assert bool(definition.file) == (path.stem != "aa01")  # else each learner has one


def test_a_mark_of_before_is_one_by_the_rules_of_then():
    mark = MARK.read(BEFORE / "marks" / NAME / "aa01.json")
    assert {(one.needed, one.needed_each, one.criteria) for one in mark.sheet.outcomes} == {
        (0.6, 0.0, ())
    }
    assert all(field.shows == () for field in mark.sheet.fields)
    assert json.loads(MARK.text(mark))["format"] == 3


@pytest.mark.parametrize(("path", "definition"), STAFF.items(), ids=name_of)
@pytest.mark.parametrize(
    ("text", "says"),
    [
        (None, "format '{newer}' is not one this course version reads"),
        ("{", "the file is not whole JSON"),
        ("[]", "the file holds no JSON object"),
        ('{"a": 5}', ""),
    ],
)
def test_a_newer_or_damaged_staff_file_is_one_sentence(path, definition, text, says, tmp_path):
    place = tmp_path / path.name
    number = definition.format + 1
    place.write_text(json.dumps(newer(path) | {"format": number}) if text is None else text)
    with pytest.raises(CohortError) as caught:
        definition.read(place)
    assert caught.value.what == says.format(newer=number) or not says
    assert caught.value.where.startswith(str(place)) and caught.value.mend
    assert "\n" not in caught.value.sentence


@pytest.mark.parametrize(
    ("definition", "says"),
    [
        (MARK, "this is no mark"),
        (OBSERVATIONS, "this holds no observations"),
        (RETURNED, "what was given back cannot be read"),
        (staff.ASSIGNMENT, "an entry is missing or cannot be read (module)"),
    ],
)
def test_what_staff_are_told(definition, says):
    with pytest.raises(CohortError) as caught:
        definition.of({"format": 1}, "here")
    assert caught.value.what == says


@pytest.mark.parametrize(("path", "definition"), LOGS.items(), ids=name_of)
def test_a_log_of_before_opens_and_goes_on_the_same(path, definition, tmp_path):
    lines = list(definition.read(path))
    place = tmp_path / "log" / path.name
    definition.append(place, *lines)
    assert lines and place.read_bytes() == path.read_bytes()
    with open(place, "a") as stream:
        stream.write('{"at": "torn')
    definition.append(place, lines[0])
    with open(place, "a") as stream:
        stream.write('{"another": "log\'s"}\n')
    assert list(definition.read(place)) == [*lines, lines[0]]
    with open(place, "a") as stream:
        stream.write(json.dumps(newer_line(path)) + "\n")
    with pytest.raises(CohortError, match="format '2' is not one"):
        list(definition.read(place))


def newer_line(path):
    return json.loads(path.read_text().splitlines()[0]) | {"format": 2}


def test_a_cohort_folder_of_before_opens(tmp_path):
    cohort = open_cohort(BEFORE)
    assert (cohort.id, cohort.unit, cohort.salt) == ("before", "tarnbeck-b5", "before")
    assert cohort.shared == BEFORE and cohort.work == cohort.workplace == BEFORE / "workplace"
    write_cohort(tmp_path / "cohort.yaml", read_cohort(BEFORE / "cohort.yaml"))
    before = (BEFORE / "cohort.yaml").read_text()  # as today: what it says, and where that is
    wanted = before.replace("format: 1", "format: 2") + "shared: .\n"
    assert (tmp_path / "cohort.yaml").read_text() == wanted
    assert read_cohort(tmp_path / "cohort.yaml") == read_cohort(BEFORE / "cohort.yaml")
    una, otto = roster_of(cohort)
    assert (una.name, otto.group) == ("Una Quill", "")
    assert roster_text([una, otto]).encode() == cohort.roster_file.read_bytes()
    assert set(sign_in_words(cohort)) == {"aa01", "bb02"}
    mark = read_mark(cohort.mark_file("aa01", NAME))
    assert (mark.state, mark.sheet.points, mark.receipt) == (MARKED, 44.71, "1EDD-133A-DE65")
    assert read_issued(cohort.issued("aa01", NAME))["bench_readings"] is True
    assert [one.met for one in observations_of(cohort, "aa01")] == [False, True]
    assert change_log(cohort)[NAME, "aa01", "course"].after == 1.0
    heading = (BEFORE / "exports" / "outcomes.csv").read_text().splitlines()[0]
    now = {"must_pass_met": "must_pass_right", "sufficient": "enough"}  # other words, same columns
    before = [now.get(name, name) for name in heading.split(",")]
    new = ["own_work_stated", "adjustments", "saved_before", "college_number"]  # at the end
    assert [*before, *new] == list(COLUMNS)


def test_a_newer_cohort_file_is_refused_in_one_sentence(tmp_path):
    text = (BEFORE / "cohort.yaml").read_text().replace("format: 1", "format: 3")
    (tmp_path / "cohort.yaml").write_text(text)
    with pytest.raises(CohortError, match=r"cohort\.yaml: format '3' is not one"):
        open_cohort(tmp_path)


def test_an_issued_record_of_before_opens_and_is_written_the_same():
    path = BEFORE / "issued" / NAME / "aa01.json"
    assert ISSUED.text(ISSUED.of(json.loads(path.read_text()))).encode() == path.read_bytes()


def newer(path):
    data = json.loads(path.read_text())
    return {"format": 2} | (data if isinstance(data, dict) else {"people": data})


@pytest.mark.parametrize(("path", "definition"), LEARNERS.items(), ids=name_of)
def test_a_newer_learners_file_is_refused_in_one_sentence(path, definition, tmp_path):
    place = tmp_path / path.name
    place.write_text(json.dumps(newer(path) | {"format": 2}))
    with pytest.raises(SheetError, match="format '2' is not one") as caught:
        definition.read(place)
    assert caught.value.where == path.name and caught.value.mend == "this version reads format 1"


def test_a_newer_job_sheet_or_issued_record_is_refused_in_one_sentence():
    with pytest.raises(SheetError, match="format '2' is not one"):
        parse_sheet(json.dumps(newer(OWN / NAME / "jobsheet.json") | {"format": 2}))
    with pytest.raises(CourseError, match="format '2' is not one"):
        ISSUED.of(newer(BEFORE / "issued" / NAME / "aa01.json") | {"format": 2}, "a.json")


DAMAGED = [
    "",
    "[",
    "null",
    "7",
    '"text"',
    '{"id": 5, "module": 5, "exchange": 5, "receipts": 5}',
    "[5]",
]


@pytest.mark.parametrize("text", DAMAGED)
@pytest.mark.parametrize(("path", "definition"), LEARNERS.items(), ids=name_of)
def test_a_damaged_learners_file_is_one_sentence(path, definition, text, tmp_path):
    place = tmp_path / path.name
    place.write_text(text)
    with pytest.raises(SheetError) as caught:
        definition.read(place)
    assert caught.value.where.startswith(path.name) and caught.value.mend
    assert "\n" not in caught.value.sentence


@pytest.mark.parametrize(
    ("definition", "text", "says"),
    [
        (PERSON, "{}", "it names nobody"),
        (PERSON, '{"id": ""}', "it names nobody"),
        (PERSON, "[]", "it holds no table of names"),
        (PEOPLE, "{}", "it is not a list of people"),
        (PEOPLE, '[{"id": ""}]', "an entry names nobody"),
        (ASSIGNMENT, '{"module": "m"}', "module or attempt is missing"),
        (ASSIGNMENT, '{"module": "../m", "attempt": 1}', "module or attempt is missing"),
        (ASSIGNMENT, '{"module": "m", "attempt": true}', "module or attempt is missing"),
        (WORKPLACE, '{"exchange": 5}', "course_id or exchange is missing"),
        (WORKPLACE, '{"unit": "a", "unit": "b"}', "“unit” stands there twice"),
        (WORKPLACE, " " * 1_000_001, "it is too large"),
    ],
)
def test_the_sentences_are_these(definition, text, says, tmp_path):
    place = tmp_path / definition.file
    place.write_text(text)
    with pytest.raises(SheetError) as caught:
        definition.read(place)
    assert caught.value.what == says


def test_what_is_missing_has_its_default():
    short = ASSIGNMENT.of({"module": "order-of-work", "attempt": 2, "unit": None, "fields": "x"})
    assert (short.name, short.unit, short.fields) == ("order-of-work-2", "tarnbeck-b5", 0)
    assert ASSIGNMENT.plain(short)["due"] is None
    assert "bench_readings" not in ASSIGNMENT.plain(short)
    assert WORKPLACE.plain(WORKPLACE.of({"format": 1, "unit": ""})) == {"format": 1, "unit": ""}


def test_one_damaged_mark_does_not_hide_the_others():
    good = {"points": 1, "maximum": 2}
    told = STANDING.of({"learner": "a", "marks": {"x": good, "y": {"points": "?"}, "z": 3}})
    assert told.marks["x"].maximum == 2 and told.marks["y"] is told.marks["z"] is None


def test_a_file_that_is_not_there_is_none(tmp_path):
    assert PERSON.read(tmp_path / "learner.json") is None


@dataclass(frozen=True)
class Spanner:
    """A made-up record, at its third format."""

    width_mm: float
    flats: int


SPANNER: LearnersFile[Spanner] = LearnersFile(
    record=Spanner,
    fault="this is no spanner",
    format=4,
    older={
        1: lambda data: {"width": data["size"]},
        2: None,
        3: lambda data: {"width_mm": data["width"] * 25.4, "flats": 6},
    },
)


def test_older_numbers_are_renewed_step_by_step():
    now = SPANNER.of({"format": 4, "width_mm": 25.4, "flats": 6})
    assert SPANNER.of({"size": 1.0}) == SPANNER.of({"format": 1, "size": 1.0}) == now
    assert SPANNER.of({"format": 2, "width": 1.0}) == SPANNER.of({"format": 3, "width": 1.0}) == now
    assert SPANNER.plain(now) == {"format": 4, "width_mm": 25.4, "flats": 6}
    for number in (0, 5, True, "3", None, [3]):
        with pytest.raises(SheetError, match="is not one this course version reads"):
            SPANNER.of({"format": number, "width_mm": 1.0, "flats": 6})


@pytest.mark.parametrize(
    "data",
    [
        [],
        {},
        {"a": [{}, [], 'é"\n\u2028/\\'], "b": [1e-05, 1e22, -0.0, 12, True, None]},
        float("nan"),
    ],
)
def test_text_is_indented_as_python_does_it(data):
    assert indented(data, 2) == json.dumps(data, ensure_ascii=False, indent=2)
