"""The feedback page: says what the mark says, tells no key, escapes, loads nothing."""

import html
import re
from dataclasses import replace

import pytest

from twoshaft.outcomes import Outcome
from twoshaft_grader.marking.feedback import (
    Handed,
    StaffMark,
    feedback_page,
    what_next,
    where_to_read,
)
from twoshaft_grader.marking.result import FieldMark, OutcomeMark, SheetMark, TaskMark, Verdict

FIELD = FieldMark(
    name="gap-depth",
    task="gap",
    kind="number",
    prompt="How deep is the gap?",
    answer="<script>alert(1)</script>",
    verdict=Verdict.WRONG,
    share=0.0,
    weight=1.0,
    sentences=("You took the case alone.",),
    details=(),
    cost="At the bench: about 12 minutes on top of 60.",
    outcome="measure",
    must_pass=True,
    passed=False,
    carried=False,
    lesson="01-measuring#what-is-subtracted",
)


@pytest.fixture
def mark():
    return SheetMark(
        learner="ann",
        module="tiny",
        attempt=2,
        title="A made-up module",
        course_version="0.1.0",
        unit="tiny",
        unit_version="1.0",
        line=0.1,
        tasks=(TaskMark("gap", "The gap", 2.5, 8.0, 3.1, (FIELD,)),),
        outcomes=(OutcomeMark("measure", 2.5, 8.0, ("gap-depth",), False),),
        notes=("a note for staff",),
        solution_digest="0" * 64,
    )


def outcome(evidence="open-book"):
    return {
        "measure": Outcome(
            id="measure",
            modules=("tiny",),
            statement="Measure and subtract",
            criteria={"subtracts": "Subtracts the right way round."},
            evidence=evidence,
        )
    }


def text_of(page):
    body = re.sub(r"<style>.*?</style>|<[^>]+>", " ", page, flags=re.S)
    return re.sub(r"\s+", " ", html.unescape(body))


def test_the_page_says_mark_result_next_step_and_why(mark):
    said = text_of(feedback_page(mark, outcomes=outcome()))
    for part in (
        "A made-up module",
        "attempt 2",
        "2.5 of 8",
        "○ not yet",
        "A must-pass item is not passed yet. Read lesson “01-measuring”, under “what is subtracted”.",
        "Measure and subtract",
        "Not right (must-pass, not passed)",
        "You took the case alone.",
        "At the bench: about 12 minutes on top of 60.",
        "Guessing alone reaches about 10 % of the points, so points count from there: 0.6 came off",
    ):
        assert part in said
    assert "a note for staff" not in said


def test_what_was_typed_is_escaped_and_nothing_is_loaded(mark):
    page = feedback_page(mark, Handed(learner="<b>Ann</b>", receipt="<i>"))
    page = page.replace("<script>\n// Read from the workplace", "")  # the page's own
    for raw in ("<script", "<b>Ann", "<i>", "http:", "https:", "src=", "url(", "@import", "<link"):
        assert raw not in page
    assert "&lt;script&gt;" in page


def test_a_change_by_staff_is_shown_as_one(mark):
    page = text_of(feedback_page(mark, staff={"gap": StaffMark(6.0, "Shown at the bench.")}))
    assert "changed this from 2.5 to 6 points. Shown at the bench." in page
    assert "6 of 8" in page


def test_long_answers_are_folded(mark):
    field = replace(FIELD, answer="step " * 100)
    task = replace(mark.tasks[0], fields=(field,))
    page = feedback_page(replace(mark, tasks=(task,)))
    assert "<details>" in page and "<details>" not in feedback_page(mark)


def test_next_steps(mark):
    met = replace(mark, outcomes=(OutcomeMark("measure", 8, 8, (), True),))
    assert what_next(met) == "Go on with the next module."
    weak = replace(mark, outcomes=(OutcomeMark("measure", 2, 8, (), False),))
    assert what_next(weak).startswith("Read lesson “01-measuring”")
    assert "✓ met" in feedback_page(met)


def test_an_outcome_that_needs_more_is_not_called_met(mark):
    met = replace(mark, outcomes=(OutcomeMark("measure", 8, 8, (), True),))
    met = replace(
        met,
        tasks=(
            replace(met.tasks[0], points=8.0, fields=(replace(FIELD, share=1.0, passed=True),)),
        ),
    )
    watched = Handed(learner="Ann", supervised_by="R. Holm")
    for evidence, handed, says in [
        ("open-book", Handed(), "✓ met"),
        ("supervised", Handed(), "◐ enough, to be shown under supervision"),
        ("supervised", watched, "✓ met"),
        ("at-the-bench", watched, "◐ enough, to be shown at the bench"),
    ]:
        said = text_of(feedback_page(met, handed, outcomes=outcome(evidence)))
        assert says in said
        assert ("Result ◐ enough Next" in said) == ("◐ enough" in says)
        assert ("ask your instructor when" in said) == ("◐ enough" in says)


def test_an_outcome_that_only_wants_points_says_how_many(mark):
    short = replace(mark.outcomes[0], must_pass_failed=(), needed=0.6)
    said = text_of(feedback_page(replace(mark, outcomes=(short,)), outcomes=outcome()))
    assert "○ not yet Not enough yet: 4.8 points are needed" in said
    unsafe = text_of(feedback_page(mark, outcomes=outcome()))
    assert "points are needed" not in unsafe


def test_outcomes_follow_what_staff_gave(mark):
    passed = replace(mark.tasks[0], fields=(replace(FIELD, passed=True),))
    mark = replace(mark, tasks=(passed,))
    assert "○ not yet" in feedback_page(mark, outcomes=outcome())
    said = text_of(feedback_page(mark, outcomes=outcome(), staff={"gap": StaffMark(7.0)}))
    assert "7 of 8 ✓ met" in said


def test_places_to_read_lead_into_the_lesson_where_the_page_is_read(mark):
    place = FIELD.lesson.partition("#")
    address = f"lessons/{place[0]}.ipynb#{place[2]}"
    page = feedback_page(mark)
    assert f'<a data-open="{address}">lesson “{place[0]}”, under ' in page
    assert page.count('<a data-open="start-here.ipynb">Start page</a>') == 2
    assert page.count(f'<a data-open="lessons/{place[0]}.ipynb">Lesson</a>') == 2
    assert page.index("<nav") < page.index("<h1")


def test_a_lesson_of_the_course_is_called_by_its_title(mark):
    field = replace(FIELD, lesson="02-order-of-work#four-reasons")
    page = feedback_page(replace(mark, tasks=(replace(mark.tasks[0], fields=(field,)),)))
    link = '<a data-open="lessons/02-order-of-work.ipynb#four-reasons">'
    assert f"{link}lesson “Order of work”, under “four reasons”</a>" in page
    assert "02-order-of-work" not in text_of(page)
    whole = replace(field, lesson="13-close-out")
    assert where_to_read(whole) == "lesson “Close out”"


def test_a_task_left_out_takes_one_line(mark):
    blank = replace(FIELD, answer="", verdict=Verdict.UNANSWERED, sentences=(), cost="")
    task = replace(mark.tasks[0], points=0.0, fields=(blank, replace(blank, name="b", prompt="B?")))
    said = text_of(feedback_page(replace(mark, tasks=(task,))))
    assert "– No answer to mark (must-pass, not passed) Read: lesson “01-measuring”" in said
    assert "B?" not in said
