"""What equal skill earns, variant by variant, is worked out as it would be drawn."""

import random
from pathlib import Path
from statistics import mean, stdev
from types import SimpleNamespace

import pytest

from twoshaft.models import order
from twoshaft.modules import COURSE
from twoshaft_grader.marking.kinds import judge, judge_of
from twoshaft_grader.notebooks import equally_hard
from twoshaft_grader.notebooks.equally_hard import WHOLE, Spread
from twoshaft_grader.notebooks.sheets import Sheets, sheets_of

ROOT = Path(__file__).parents[2]
MODULE = "03-threaded-joints"
DRAWS = 400


@pytest.fixture(scope="module")
def sheets(module):
    return Sheets(module.solution, module.unit)


@pytest.fixture(scope="module")
def sheet(sheets):
    return next(sheets.today(1))


@pytest.fixture(scope="module")
def measured(module, sheets):
    return {one.task: one for one in equally_hard.measure(module.solution, sheets.variants(6))}


def _attempted(asked, reference, right, guess, skill, source):
    """An answer whose steps come right with a chance, and are guessed otherwise."""
    if asked.kind == "each":
        return [
            mine if source.random() < skill else luck
            for mine, luck in zip(right, guess, strict=True)
        ]
    if asked.kind == "choices":
        return [
            key for key, _ in asked.options
            if (key in right if source.random() < skill else source.random() < 0.5)
        ]  # fmt: skip
    return right if source.random() < skill else guess


@pytest.mark.parametrize("skill", equally_hard.SKILLS)
@pytest.mark.parametrize("kind", ["each", "choices", "choice"])
def test_the_mean_share_is_what_draws_come_to(sheet, kind, skill):
    name = next(name for name, one in sheet.clean.fields.items() if one.kind == kind)
    asked, reference = sheet.clean.fields[name], sheet.clean.references[name]
    source, shares = random.Random(f"{kind} {skill}"), []
    for _ in range(DRAWS):
        guess = judge_of(asked).guess(asked, reference, source)
        stored = _attempted(asked, reference, sheet.right[name], guess, skill, source)
        blank = asked.is_blank(stored)
        shares.append(0.0 if blank else judge(asked, reference, asked.read(stored)).share)
    error = stdev(shares) / DRAWS**0.5
    assert judge_of(asked).mean_share(asked, reference, skill) == pytest.approx(
        mean(shares), abs=4 * error
    )


def test_full_skill_earns_everything_and_none_what_luck_does(sheet):
    for name, reference in sheet.clean.references.items():
        asked = sheet.clean.fields[name]
        mine = judge_of(asked)
        assert mine.mean_share(asked, reference, 1.0) == pytest.approx(1.0)
        luck = sum(share * chance for share, chance in mine.spread(asked, reference))
        assert mine.mean_share(asked, reference, 0.0) == pytest.approx(luck)


def test_the_mean_mark_of_an_order_is_what_draws_come_to(module):
    steps = [one.id for one in module.unit.operations][:14]
    task = order.OrderTask.from_unit(module.unit, steps)
    right, source, marks = list(order.model_order(task)), random.Random(3), []
    for _ in range(DRAWS):
        moved = list(right)
        for step in right:
            if source.random() > 0.7:
                moved.remove(step)
                moved.insert(source.randrange(len(right)), step)
        marks.append(order.mark(task, moved))
    assert order.mean_mark(task, 0.7) == pytest.approx(mean(marks), abs=0.05)


def test_an_angle_is_a_step_more(sheets):
    for sheet in sheets.variants(6):
        for name, card in (
            ("card-setting", sheet.issued["given"]["card"]),
            ("found-torque", sheet.issued["given"]["found"]),
        ):
            assert sheet.clean.references[name].steps == (2 if card["angle_deg"] else 1)


def test_the_module_and_every_task_are_measured(measured, module):
    assert list(measured) == [WHOLE, *module.solution.points]
    assert all(0 < one.low <= one.high < 1 for one in measured.values())


def test_the_same_sheet_over_and_over_spreads_nothing(module, sheet):
    assert all(
        one.deviation < 1e-12
        for one in equally_hard.measure(module.solution, [sheet, sheet, sheet])
    )


def test_a_task_with_more_to_do_for_some_is_found(module, sheets, monkeypatch):
    """One of two learners has a list of four times as many lines: the proof names it."""
    long = judge_of(SimpleNamespace(kind="each"))
    plain = type(long).mean_share
    names = {id(one.clean.references["state-do"]) for one in list(sheets.variants(6))[::2]}

    def harder(self, asked, reference, skill):
        return plain(self, asked, reference, skill**4 if id(reference) in names else skill)

    monkeypatch.setattr(type(long), "mean_share", harder)
    monkeypatch.setattr(equally_hard, "IN_BUILD", 6)
    (said,) = equally_hard.findings(sheets)
    assert said.startswith("state is harder for some than for others, state-do most: who gets ")


def test_just_what_it_may_spread_is_too_much():
    assert Spread("gap", 0.5, 0.0499, 0.3, 0.5).holds
    assert not Spread("gap", 0.5, 0.05, 0.3, 0.5).holds


@pytest.mark.long
@pytest.mark.parametrize("module_id", list(COURSE))
def test_two_hundred_variants_of_each_task_are_equally_hard(module_id):
    (sheets,) = sheets_of(ROOT, [COURSE[module_id].name])
    found = equally_hard.measure(sheets.solution, sheets.variants(equally_hard.VARIANTS))
    assert [one for one in found if not one.holds] == []
