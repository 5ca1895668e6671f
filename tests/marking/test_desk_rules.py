"""The desk's page *Rules*: what the college says itself is kept, checked and on the trail."""

import shutil

import pytest

from twoshaft.errors import CohortError, UnitFileError
from twoshaft.outcomes import load_rules
from twoshaft_grader.cohort.assessors import enter_assessor
from twoshaft_grader.cohort.assign import read_assigned
from twoshaft_grader.cohort.collect import collect
from twoshaft_grader.cohort.folder import make_cohort, open_cohort
from twoshaft_grader.cohort.intake import roster_of
from twoshaft_grader.cohort.marking_run import mark_assignment
from twoshaft_grader.cohort.marks import read_mark
from twoshaft_grader.cohort.trail import read_trail
from twoshaft_grader.desk.commands import main
from twoshaft_grader.desk_pages.page import Desk, Work
from twoshaft_grader.desk_pages.parts import Values
from twoshaft_grader.desk_pages.rules import RulesPage

FULL = {"about": "safe-order", "points": "80", "each": "50", "source": "our rules, page 5"}


@pytest.fixture(scope="module")
def made(tmp_path_factory):
    cohort = make_cohort(tmp_path_factory.mktemp("rules") / "group")
    enter_assessor(cohort, "rh", "R. Holm")
    return cohort


@pytest.fixture
def cohort(made, tmp_path):
    shutil.copytree(made.root, tmp_path / "group")
    return open_cohort(tmp_path / "group")


@pytest.fixture
def page(cohort):
    return RulesPage(Desk(cohort.root, "at the desk"))


def do(page, act, **typed):
    typed = {name.replace("_", "-"): value for name, value in typed.items()}
    return page.do(act, Values(typed), Work())


def line(page, outcome):
    (table,) = [part for part in page.show() if getattr(part, "id", "") == "rules"]
    return next(row for row in table.texts() if row[1] == outcome)


def test_a_rule_is_set_shown_and_taken_away_and_what_people_wrote_stays(cohort, page):
    cohort.rules.write_text("# as agreed in May\nnumbers: {plan-order: LO 2.2}\n")
    assert "is set" in do(page, "set", by="rh", **FULL)
    rule = load_rules(cohort.rules).of("safe-order")
    assert (rule.points, rule.each_criterion, rule.source) == (0.8, 0.5, "our rules, page 5")
    told = line(page, "safe-order")
    assert told[4:] == ["80 % of its points, 50 % of each criterion", "our rules, page 5"]
    assert line(page, "plan-order")[0] == "LO 2.2"
    assert "# as agreed in May" in cohort.rules.read_text()
    act = read_trail(cohort.root)[-1].act
    assert (act.did, act.what, act.by) == ("change a rule", "safe-order", "R. Holm")
    assert act.before.startswith("60 %") and act.after.startswith("80 %")
    do(page, "drop", by="rh", **FULL)
    assert line(page, "safe-order")[4].startswith("60 %")
    with pytest.raises(CohortError, match="no rule of its own"):
        do(page, "drop", by="rh", **FULL)


def test_numbers_and_the_attempt_that_counts_are_set(cohort, page):
    do(page, "number", numbered="safe-order", number="LO 2.1", number_by="rh")
    assert line(page, "safe-order")[0] == "LO 2.1"
    do(page, "number", numbered="safe-order", number="", number_by="rh")
    assert line(page, "safe-order")[0] == ""
    do(page, "attempts", attempts="latest", attempts_by="rh", attempts_why="our rules")
    assert load_rules(cohort.rules).latest


@pytest.mark.parametrize(
    ("changed", "says"),
    [
        ({"points": "180"}, "is no part"),
        ({"points": "much"}, "is no part"),
        ({"each": "-1"}, "is no part"),
        ({"source": ""}, "who says so is missing"),
        ({"about": "no-outcome"}, "no outcome is called"),
        ({"by": "somebody"}, "not on the register"),
        ({"by": ""}, "the assessor is missing"),
    ],
)
def test_what_will_not_do_is_refused_and_changes_nothing(cohort, page, changed, says):
    with pytest.raises(CohortError, match=says):
        do(page, "set", **({"by": "rh"} | FULL | changed))
    assert not cohort.rules.exists()


def test_a_file_with_a_slip_is_named_and_not_written_over(cohort, page):
    for text in ("numbers: [", "outcomes: {no-outcome: {points: 60 %, source: us}}\n"):
        cohort.rules.write_text(text)
        with pytest.raises(UnitFileError, match=r"rules\.yaml"):
            do(page, "set", by="rh", **FULL)
        assert cohort.rules.read_text() == text


def test_the_commands_do_the_same(cohort, capsys):
    at = ["--cohort", str(cohort.root)]
    by = ["--by", "rh"]
    words = ["rules", "set", "everywhere", "--points", "70", "--source", "page 4"]
    assert main([*words, *by, *at]) == 0
    assert main(["rules", "number", "safe-order", "LO 2.1", *by, *at]) == 0
    assert main(["rules", "attempts", "latest", "--why", "page 6", *by, *at]) == 0
    capsys.readouterr()
    assert main(["rules", "list", *at]) == 0
    told = capsys.readouterr().out
    assert "the latest counts" in told
    assert "safe-order (LO 2.1): 70 % of its points; page 4" in told
    assert main(["rules", "drop", "everywhere", "--why", "page 4 is void", *by, *at]) == 0
    assert load_rules(cohort.rules).everywhere.points == 0.6


def test_another_rule_and_marking_again_keep_the_mark_before(handed_out, tmp_path):
    trial = handed_out(tmp_path, ("a1",))
    cohort = trial.cohort
    enter_assessor(cohort, "rh", "R. Holm")
    trial.hand_in("a1", answers={"gap-size": "99 mm", "gap-first": "clean"})
    assigned, people = read_assigned(cohort, trial.name), roster_of(cohort)
    collect(cohort, assigned, people)
    mark_assignment(cohort, assigned, people, workers=1)
    was = read_mark(cohort.mark_file("a1", trial.name)).sheet
    first = next(one for one in was.outcomes if one.id == trial.outcome)
    assert not first.met
    page = RulesPage(Desk(cohort.root))
    rule = FULL | {"about": trial.outcome, "points": "0", "each": "0"}
    do(page, "set", by="rh", **rule)
    mark_assignment(cohort, assigned, people, workers=1, again=True, by="R. Holm")
    mark = read_mark(cohort.mark_file("a1", trial.name))
    now = next(one for one in mark.sheet.outcomes if one.id == trial.outcome)
    assert now.met
    assert [one.by for one in mark.before] == ["R. Holm"] and mark.before[0].sheet == was
