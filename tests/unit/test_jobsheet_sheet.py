"""The sheet as a notebook uses it, and the fields it holds."""

import json

import pytest

from twoshaft.errors import AnswerError, SheetError
from twoshaft.jobsheet import Choice, Choices, Number, Order, open_sheet, read_sheet
from twoshaft.units.quantities import Q

STEPS = [["a", "Clean the face"], ["b", "Lay the film"], ["c", "Close the case"]]
OPTIONS = [["oil", "For the oil"], ["heat", "For heat"], ["none", "For nothing"]]


@pytest.fixture
def folder(tmp_path):
    """A learner's assignment folder."""
    folder = tmp_path / "a01" / "order-of-work-1"
    folder.mkdir(parents=True)
    (tmp_path / "a01" / "learner.json").write_text(
        '{"id": "a01", "family_name": "Example", "given_name": "Ana"}'
    )
    about = {
        "format": 1,
        "assignment": "order-of-work-1",
        "module": "order-of-work",
        "attempt": 1,
        "cohort": "demo",
        "salt": "s",
        "unit": "tarnbeck-b5",
        "due": None,
    }
    (folder / "assignment.json").write_text(json.dumps(about))
    return folder


def filled(folder):
    sheet = open_sheet("order-of-work", folder)
    sheet.register(
        "first",
        [
            sheet.number("gap", "How wide?", "mm"),
            sheet.order("steps", "In which order?", STEPS),
            sheet.choice("why", "Why?", OPTIONS),
            sheet.choices("which", "Which?", OPTIONS),
        ],
    )
    return sheet


def test_check_says_what_is_missing_and_never_what_is_right(folder):
    sheet = filled(folder)
    assert [line[0] for line in sheet.check().lines] == ["gap", "steps", "why", "which"]
    sheet.answer("gap", "1,25 mm")
    sheet.answer("steps", ["c", "a", "b"])
    sheet.answer("why", "heat")
    sheet.answer("which", ["none", "oil"])
    report = sheet.check()
    assert not report and "Whether it is right is for the marking" in str(report)
    sheet.save("gap", "1.25")
    assert "without a unit" in str(sheet.check())
    sheet.save("steps", ["a", "b"])
    assert "1 of 3 steps left out, the first is “Close the case”" in str(sheet.check())
    sheet.save("steps", ["a", "b", "c", "a"])
    assert "“Clean the face” stands in the list more than once" in str(sheet.check())
    assert "<li>" in sheet.check()._repr_html_()


def test_answers_from_code_are_those_of_the_form(folder):
    sheet = filled(folder)
    heard = []
    sheet.on_answer(heard.extend)
    assert "saved " in str(sheet.answer("gap", Q(0.049, "inch")))
    assert sheet.value("gap") == "1.2446 mm" and heard == ["gap"]
    sheet.answer("which", ("oil", "none"))
    assert read_sheet(folder / "jobsheet.json").value("which") == ["oil", "none"]
    for name, value in [
        ("gap", "13 N·m"),
        ("gap", Q(1, "newton")),
        ("gap", 1.25),
        ("steps", "abc"),
        ("steps", ["a", "z"]),
        ("why", "z"),
        ("which", "oil"),
    ]:
        with pytest.raises(AnswerError):
            sheet.answer(name, value)
    with pytest.raises(SheetError, match="no form shown so far asks for “gapp”; known: gap, steps"):
        sheet.answer("gapp", "1 mm")
    assert sheet.value("gap") == "1.2446 mm"


def test_whose_work_it_is_is_said(folder):
    sheet = filled(folder)
    assert "Ana Example (a01)" in sheet.header() and sheet.status == "nothing saved yet"
    sheet.answer("gap", "1 mm")
    assert sheet.status.startswith("saved ")


def test_a_practice_copy_marks_nothing(tmp_path):
    sheet = open_sheet("order-of-work", tmp_path)
    assert (sheet.learner, sheet.salt, sheet.attempt) == ("practice", "practice", 0)
    assert "nothing here is marked" in sheet.header()
    sheet.register("t", [sheet.number("gap", "?", "mm")])
    sheet.answer("gap", "1 mm")
    # Two practice notebooks in one folder keep apart.
    assert open_sheet("film", tmp_path).value("gap") is None
    assert open_sheet("order-of-work", tmp_path).value("gap") == "1 mm"


def test_practice_in_a_shared_folder_is_not_kept_for_the_next_learner(tmp_path):
    (tmp_path / "people.json").write_text("[]")
    (tmp_path / "lessons").mkdir()
    sheet = open_sheet("order-of-work", tmp_path / "lessons")
    sheet.register("t", [sheet.number("gap", "?", "mm")])
    sheet.answer("gap", "1 mm")
    sheet.answer("gap", "2 mm")
    assert sheet.value("gap") == "2 mm" and sheet.revision("gap") == 2
    assert list((tmp_path / "lessons").iterdir()) == []
    assert "Nothing here is marked, or kept" in sheet.header()
    assert open_sheet("order-of-work", tmp_path / "lessons").value("gap") is None


def test_a_folder_that_is_marked_is_only_read_and_nothing_is_on_stderr(folder, tmp_path, capfd):
    filled(folder).answer("gap", "1 mm")
    marked = tmp_path / "autograded" / "a01" / "order-of-work-1"
    marked.parent.mkdir(parents=True)
    folder.rename(marked)
    before = sorted(path.name for path in marked.iterdir())
    sheet = filled(marked)
    assert sheet.read_only and sheet.learner == "a01" and sheet.value("gap") == "1 mm"
    assert "job sheet of a01, for reading only" in sheet.header()
    with pytest.raises(SheetError, match="reading only"):
        sheet.answer("gap", "2 mm")
    (marked / "jobsheet.json").write_text("{")
    assert filled(marked).learner == "practice"
    (marked / "jobsheet.json").unlink()
    assert filled(marked).check()
    before.remove("jobsheet.json")
    assert sorted(path.name for path in marked.iterdir()) == before
    assert capfd.readouterr().err == ""


@pytest.mark.parametrize(
    "text", ["", "{", "[]", '{"module": 3}', '{"module": "order-of-work", "attempt": "1"}']
)
def test_a_damaged_assignment_file_is_one_sentence(folder, text):
    (folder / "assignment.json").write_text(text)
    with pytest.raises(SheetError, match=r"assignment\.json") as caught:
        open_sheet("order-of-work", folder)
    assert caught.value.mend and "\n" not in caught.value.sentence


def test_another_modules_folder_is_refused(folder):
    with pytest.raises(SheetError, match="holds “order-of-work-1”, and this notebook is “film”"):
        open_sheet("film", folder)


def test_a_field_name_is_used_once(folder):
    sheet = filled(folder)
    sheet.register("second", [sheet.number("other", "?", "mm")])
    with pytest.raises(ValueError, match="'gap'"):
        sheet.register("third", [sheet.number("gap", "?", "mm")])
    # The same cell may be run again.
    sheet.register("second", [sheet.number("other", "?", "N·m")])
    assert sheet.fields["other"].unit == "N·m"
    with pytest.raises(ValueError, match="task name"):
        sheet.register("No good", [])


def test_an_error_in_a_notebook_is_its_sentence_alone():
    error = SheetError("it is so", where="file", mend="do this")
    assert error._render_traceback_() == ["file: it is so; do this."]


def test_fields_read_what_is_stored():
    assert Number("n", "?", "kN").read("18,5 kN").to("N").magnitude == pytest.approx(18500)
    assert Number("n", "?", "").read(3) == Q(3.0, "dimensionless")
    assert Choice("c", "?", OPTIONS).read("oil") == "oil"
    assert Choices("c", "?", OPTIONS).read(["none", "oil", "oil"]) == ("oil", "none")
    assert Order("o", "?", STEPS).read(["c", "a"]) == ("c", "a")
    assert Order("o", "?", STEPS).words(["c", "a"]) == "1. Close the case; 2. Clean the face"


@pytest.mark.parametrize("stored", [None, "", "  ", [], 7, 7.5, ["a", 7], {"a": 1}, [["a"]], "zz"])
def test_no_stored_value_breaks_a_field(stored):
    for field in (
        Number("n", "?", "mm"),
        Choice("c", "?", OPTIONS),
        Choices("c", "?", OPTIONS),
        Order("o", "?", STEPS),
    ):
        with pytest.raises(AnswerError):
            field.read(stored)
        assert field.shortfall(stored)
        assert isinstance(field.words(stored), str)


def test_a_list_without_end_is_refused():
    with pytest.raises(AnswerError, match="600 entries"):
        Order("o", "?", STEPS).read(["a"] * 600)


@pytest.mark.parametrize("name", ["", "Gap", "gap one", "gap_1", "-gap", "gap-", "g" * 65, None])
def test_field_names_are_plain(name):
    with pytest.raises(ValueError, match="field name"):
        Number(name, "?", "mm")


def test_a_field_with_a_key_twice_is_refused():
    with pytest.raises(ValueError, match="no key twice"):
        Choice("c", "?", [["a", "A"], ["a", "B"]])
