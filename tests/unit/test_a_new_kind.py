"""A kind of answer has one home on each side; a made-up one is added in this file alone."""

import random
from dataclasses import dataclass
from pathlib import Path

import pytest

from twoshaft.errors import AnswerError, CourseError
from twoshaft.jobsheet import Answer, SheetData, open_sheet
from twoshaft.jobsheet.form import describe, field_state, plain_copy
from twoshaft.jobsheet.kinds import KINDS, Asker, Field, UnitAsker, kind, kind_named
from twoshaft.readings import Stream
from twoshaft.units import load_unit
from twoshaft_grader.marking import load_solution, mark_sheet, run_clean, solve
from twoshaft_grader.marking.chance import field_spread
from twoshaft_grader.marking.kinds import (
    JUDGES,
    Judge,
    Judgement,
    Reference,
    Slip,
    judge,
    judge_of,
    judges,
)
from twoshaft_grader.notebooks.text import build_notebook, notebook_text

TINY = Path(__file__).parents[1] / "marking/tiny"
NAME = "place-on-a-line"


@pytest.fixture(scope="module", autouse=True)
def line():
    """Register a made-up kind: a place on a line from 0 to its length, stored as a whole number."""

    @kind(NAME)
    @dataclass(frozen=True)
    class Line(Field):
        length: int = 100

        def read(self, stored):
            if not isinstance(stored, int) or not 0 <= stored <= self.length:
                raise AnswerError(f"read {stored!r}, which is no place on the line")
            return stored

        def store(self, value):
            return self.read(value)

        def words(self, stored):
            return "" if self.is_blank(stored) else f"at {stored} of {self.length}"

        def told(self):
            return {"length": self.length}

    @judges(NAME)
    class LineJudge(Judge):
        wanted = "a place on the line"

        def accepts(self, asked, value):
            return isinstance(value, int) and 0 <= value <= asked.length

        def judge(self, asked, reference, value):
            hit = abs(value - reference.value) <= 5
            return Judgement(float(hit), () if hit else ("It is not there.",), safe=hit)

        def is_slip(self, reference, slip, value):
            return abs(value - slip.value) <= 5

        def solve(self, asked, value):
            return asked.store(value)

        def spread(self, asked, reference):
            hit = 11 / (asked.length + 1)
            return ((0.0, 1 - hit), (1.0, hit))

        def guess(self, asked, reference, source):
            return source.randint(0, asked.length)

        def spoil(self, asked, stored, stream):
            return asked.length - stored

    yield Line
    del KINDS[NAME], JUDGES[NAME]
    delattr(Asker, NAME)


SOURCE = f"""\
# %% tags=["setup"]
from twoshaft.jobsheet import open_sheet

sheet = open_sheet("tiny")

# %% tags=["reference"]
from twoshaft_grader.marking import Slip, ref

# %% [markdown] tags=["task"]
# ## The pointer

# %% tags=["form"]
sheet.form("reading", sheet.ask("{NAME}", "dial", "Where does the pointer stand?", 50))

# %% tags=["reference"]
ref("dial", 20, outcome="measure", must_pass=True,
    slips=[Slip(30, 0.5, "You read it from the other side.")])

# %% tags=["mark"] task="reading" points=8
"""


@pytest.fixture(scope="module")
def solution(line, tmp_path_factory):
    """A solution that asks for a place on a line."""
    path = tmp_path_factory.mktemp("line") / "90-tiny.ipynb"
    nb = build_notebook(SOURCE, Path("solutions/90-tiny.py"))
    path.write_text(notebook_text(nb), encoding="utf-8")
    return load_solution(path)


def test_every_kind_has_a_judge_and_every_judge_a_kind():
    assert set(KINDS) == set(JUDGES)
    for name, field in KINDS.items():
        assert field.kind == name == JUDGES[name].kind


def test_every_kind_has_its_control_in_the_browser():
    controls = Path(__file__).parents[2] / "course/browser/src/kinds"
    assert {path.stem for path in controls.glob("*.js")} == set(KINDS) - {NAME}


def test_an_unknown_kind_is_refused_on_both_sides(line):
    with pytest.raises(CourseError, match="no kind of answer 'smell'"):
        kind_named("smell")
    with pytest.raises(CourseError, match="no judge is registered for the kind of answer 'smell'"):
        judge_of(type("Smell", (line,), {"kind": "smell"})("nose", "What does it smell of?"))


def test_a_kind_that_is_not_whole_or_asked_in_vain_says_so(line):
    with pytest.raises(TypeError, match=r"abstract class Smell.*'?read'?, '?told'?"):
        type("Smell", (Field,), {})("nose", "What does it smell of?")
    asker = UnitAsker(load_unit("tarnbeck-b5"))
    with pytest.raises(CourseError, match=r"field 'dial' of the kind 'place-on-a-line': .*'width'"):
        asker.ask(NAME, "dial", "Where does the pointer stand?", width=3)


def test_a_kind_is_registered_once(line):
    with pytest.raises(ValueError, match="registered twice"):
        kind(NAME)(line)
    with pytest.raises(ValueError, match="two judges"):
        judges(NAME)(type(JUDGES[NAME]))


def test_it_is_asked_saved_read_and_shown(line, tmp_path, monkeypatch):
    monkeypatch.chdir(tmp_path)
    sheet = open_sheet("order-of-work", tmp_path)
    asked = getattr(sheet, NAME)("dial", "Where does the pointer stand?", length=50)
    assert describe(asked) == {
        "kind": NAME, "name": "dial", "prompt": "Where does the pointer stand?", "length": 50,
    }  # fmt: skip
    sheet.register("reading", [asked])
    assert [name for name, _, _ in sheet.check().lines] == ["dial"]
    with pytest.raises(AnswerError, match="no place on the line"):
        sheet.answer("dial", 51)
    sheet.answer("dial", 20)
    assert not sheet.check()
    state = field_state(asked, sheet.data.answers["dial"])
    assert state["value"] == 20 and not state["error"]
    assert "at 20 of 50" in plain_copy("Whose", "reading", [asked], {"dial": state})


def test_it_is_judged_guessed_and_spoiled(line):
    asked = line("dial", "Where?", 50)
    slips = (Slip(30, 0.5, "You read it from the other side."),)
    reference = Reference("dial", 20, "o", 1.0, None, True, slips, "")
    assert judge(asked, reference, 24).share == 1
    found = judge(asked, reference, 31)
    assert (found.share, found.sentences, found.safe) == (0.5, (slips[0].sentence,), False)
    assert judge(asked, reference, 44).sentences == ("It is not there.",)
    assert sum(chance for _, chance in field_spread(asked, reference)) == pytest.approx(1)
    hits = [
        judge(asked, reference, judge_of(asked).guess(asked, reference, random.Random(k))).share
        for k in range(200)
    ]
    assert 0.1 < sum(share == 1 for share in hits) / 200 < 0.35
    assert judge_of(asked).spoil(asked, 20, Stream("a", "b", "c", 1)) == 30


def test_a_solution_that_asks_for_it_is_marked(solution):
    unit = load_unit(TINY / "unit.yaml")
    issued = {
        "learner": "ann", "module": "tiny", "attempt": 1, "unit": "tiny", "unit_version": "1.0",
        "course_version": "0.1.0", "given": {},
    }  # fmt: skip
    clean = run_clean(solution, issued, unit)
    assert clean.fields["dial"].kind == NAME
    assert solve(solution, issued, unit) == {"dial": 20}
    for stored, share, verdict in ((20, 1, "right"), (31, 0.5, "partly right"), (99, 0, "could")):
        sheet = SheetData(
            learner="ann", module="tiny", attempt=1, answers={"dial": Answer(stored, 1)}
        )
        (field,) = mark_sheet(sheet, issued, solution, unit=unit).fields
        assert field.share == share and field.verdict.startswith(verdict)


def test_ticking_everything_does_not_pass_a_must_pass_list():
    asked = KINDS["choices"]("new", "What is renewed?", [["seal", "Seal"], ["nut", "Nut"],
                                                         ["case", "Case"]])  # fmt: skip
    careful = (Slip("nut", 0, "It may be used again.", safe=True),)
    reference = Reference("new", {"seal"}, "o", 1.0, None, True, careful, "")
    assert judge(asked, reference, ("seal",)).safe
    assert judge(asked, reference, ("seal", "nut")).safe
    assert not judge(asked, reference, ("seal", "nut", "case")).safe
    assert not judge(asked, reference, ("nut",)).safe


def test_a_slip_passes_a_must_pass_item_only_where_it_errs_on_the_safe_side():
    asked = KINDS["choice"]("state", "What now?", [["renew", "Renew"], ["wait", "Wait"],
                                                   ["go", "Go on"]])  # fmt: skip
    slips = (Slip("wait", 0.5, "Too careful.", safe=True), Slip("go", 0.5, "It will leak."))
    reference = Reference("state", "renew", "o", 1.0, None, True, slips, "")
    assert judge(asked, reference, "wait").safe and judge(asked, reference, "wait").share == 0.5
    assert not judge(asked, reference, "go").safe and judge(asked, reference, "go").share == 0.5
