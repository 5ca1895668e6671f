"""What is enough for an outcome follows the rules file, a college's own above ours."""

from dataclasses import replace

import pytest

from twoshaft.errors import UnitFileError
from twoshaft.outcomes import load_outcomes, load_rules
from twoshaft.outcomes.rules import SHIPPED
from twoshaft_grader.marking.outcomes import outcome_marks, task_parts, with_points
from twoshaft_grader.marking.result import FieldMark, SheetMark, TaskMark, Verdict

OWN = """\
everywhere: {points: 70 %, source: college rule 4}
outcomes:
  safe-order:
    points: 80%
    each criterion: 50 %
    source: college rule 5
"""


def rules(tmp_path, text):
    path = tmp_path / "rules.yaml"
    path.write_text(text)
    return load_rules(path)


def field(name, share, shows=(), outcome="safe-order", must_pass=False):
    return FieldMark(
        name=name,
        task="work",
        kind="number",
        prompt="",
        answer="1",
        verdict=Verdict.RIGHT,
        share=share,
        weight=1.0,
        sentences=(),
        details=(),
        cost="",
        outcome=outcome,
        must_pass=must_pass,
        passed=share == 1 or not must_pass,
        carried=False,
        lesson="",
        shows=shows,
    )


def task(*fields, maximum=10.0):
    earned = maximum * sum(f.share for f in fields) / len(fields)
    return TaskMark("work", "Work", earned, maximum, earned, fields)


def marked(made, own=None):
    return outcome_marks(task_parts(made), own)[0]


def test_a_cohort_without_rules_has_ours(tmp_path):
    assert load_rules(tmp_path / "rules.yaml") == load_rules() == load_rules(None)


def test_every_outcome_has_its_rule_and_says_where_it_comes_from():
    ours = load_rules()
    assert [id for id, _ in ours.outcomes] == list(load_outcomes())
    for id, rule in ours.outcomes:
        assert rule.points >= 0.6 and rule.each_criterion >= 0.4 and rule.source, id


def test_a_college_changes_a_single_outcome_and_the_others_stay_ours(tmp_path):
    text = "outcomes:\n  plan-order: {points: 90 %, source: college rule 6}\n"
    made = task(*(field(n, 1.0, outcome="plan-order") for n in "abcd"),
                field("e", 0.0, outcome="plan-order"))  # fmt: skip
    own = rules(tmp_path, text)
    assert marked(made).met and not marked(made, own).met  # 80 %
    assert own.of("plan-order").each_criterion == 0
    assert own.of("choose-shim") == load_rules().of("choose-shim")


def test_a_copy_of_our_file_changes_nothing_and_a_changed_copy_what_is_enough(tmp_path):
    text = SHIPPED.read_text(encoding="utf-8")
    assert rules(tmp_path, text) == load_rules()
    line = next(one for one in text.splitlines() if one.startswith("  safe-order:"))
    own = rules(tmp_path, text.replace(line, line.replace("points: 60 %", "points: 90 %")))
    made = task(*(field(n, 1.0) for n in "abcd"), field("e", 0.0))
    assert marked(made).met and not marked(made, own).met


def test_a_college_that_asks_for_more_everywhere_stands_above_our_single_rules(tmp_path):
    own = rules(tmp_path, "everywhere: {points: 75 %, source: college rule 7}\n")
    assert {own.of(id).points for id in load_outcomes()} == {0.75}


def test_a_colleges_own_rules_stand_above_ours(tmp_path):
    own = rules(tmp_path, OWN)
    assert own.of("plan-order").points == 0.7
    assert (own.of("safe-order").points, own.of("safe-order").each_criterion) == (0.8, 0.5)
    assert own.of("safe-order").source == "college rule 5"


@pytest.mark.parametrize(
    ("text", "line", "what"),
    [
        (OWN.replace("80%", "80"), 4, "80 is no part in per cent; write it as 60 %"),
        (OWN.replace("80%", "180 %"), 4, "at most 1"),
        (OWN.replace("80%", "-8 %"), 4, "write it as 60 %"),
        (OWN.replace("safe-order", "safe-ordr"), 3, "there is no outcome 'safe-ordr'"),
        (OWN.replace("    source: college rule 5\n", ""), 3, "'source' is missing"),
        (OWN + "always: true\n", 7, "'always' is not a known key"),
    ],
)
def test_a_broken_rules_file_is_told_with_its_line(tmp_path, text, line, what):
    with pytest.raises(UnitFileError) as caught:
        rules(tmp_path, text)
    assert f"rules.yaml, line {line}:" in str(caught.value)
    assert what in str(caught.value)


def test_points_are_held_against_the_rule(tmp_path):
    made = task(field("a", 1.0), field("b", 0.5))  # 75 %
    assert marked(made).met
    assert not marked(made, rules(tmp_path, OWN)).met


def test_one_criterion_short_is_not_enough(tmp_path):
    made = task(*(field(n, 1.0, ("safe-rules",)) for n in "abcd"), field("e", 0.4, ("what",)))
    assert marked(made).met
    mark = marked(made, rules(tmp_path, OWN))
    assert not mark.met  # 88 % in all, 40 % of one criterion
    assert [(one.id, one.points, one.maximum, one.enough) for one in mark.criteria] == [
        ("safe-rules", 8.0, 8.0, True),
        ("what", 0.8, 2.0, False),
    ]


def test_a_field_can_show_two_criteria():
    mark = marked(task(field("a", 1.0, ("one", "two")), field("b", 0.0, ("two",))))
    assert [(one.id, one.points, one.maximum) for one in mark.criteria] == [
        ("one", 5.0, 5.0),
        ("two", 5.0, 10.0),
    ]


def test_a_deciding_answer_stands_above_every_sum(tmp_path):
    made = task(*(field(n, 1.0) for n in "abcdefgh"), field("i", 0.0, must_pass=True))
    mark = marked(made)
    assert mark.points > 0.6 * mark.maximum and not mark.met
    assert mark.must_pass_failed == ("i",)


def sheet(made, own):
    return SheetMark(
        learner="a1",
        module="m",
        attempt=1,
        title="",
        course_version="",
        unit="",
        unit_version="",
        line=0.0,
        tasks=(made,),
        outcomes=outcome_marks(task_parts(made), own),
        notes=(),
        solution_digest="",
    )


def test_a_change_by_hand_is_judged_by_the_rules_of_the_mark(tmp_path):
    made = task(field("a", 1.0, ("one",)), field("b", 0.2, ("two",)))
    mark = sheet(made, rules(tmp_path, OWN))
    assert not mark.outcomes[0].met
    # 7.5 of 10: enough by our rules, not by the college's.
    assert not with_points(mark, {"work": 7.5}).outcomes[0].met
    more = with_points(mark, {"work": 9.0}).outcomes[0]
    assert more.met
    assert sum(one.points for one in more.criteria) == pytest.approx(9.0)
    less = with_points(mark, {"work": 3.0}).outcomes[0]
    assert [one.points for one in less.criteria] == [2.5, 0.5]


def test_marks_stored_before_there_were_rules_keep_sixty_per_cent(tmp_path):
    made = task(field("a", 1.0), field("b", 0.2))
    mark = sheet(made, rules(tmp_path, "everywhere: {points: 60 %, source: as it was then}\n"))
    old = replace(mark, outcomes=tuple(replace(o, criteria=()) for o in mark.outcomes))
    assert (old.outcomes[0].needed, old.outcomes[0].needed_each) == (0.6, 0.0)
    assert with_points(old, {"work": 6.0}).outcomes[0].met
    assert not with_points(old, {"work": 5.9}).outcomes[0].met
