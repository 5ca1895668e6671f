"""Calculations to practise: right is right, every listed slip is told as itself, and they stand
apart from what is marked.
"""

import ast
import math
import re
from pathlib import Path
from random import Random

import nbformat
import pytest
from hypothesis import example, given
from hypothesis import strategies as st

from twoshaft.jobsheet.kinds import Number
from twoshaft.models import fit
from twoshaft.modules import COURSE
from twoshaft.practice import open_lesson
from twoshaft.practice.calculations import CALCULATIONS
from twoshaft.practice.drill import HALF, OWN, WORKED, Drill
from twoshaft.practice.keep import Keep

ROOT = Path(__file__).resolve().parents[2]
ALL = [(module, one) for module, some in CALCULATIONS.items() for one in some]
each_one = pytest.mark.parametrize(
    ("module", "one"), ALL, ids=[f"{module}-{one.name}" for module, one in ALL]
)
SEEDS = range(60)


def test_every_module_has_its_own_and_no_name_comes_twice():
    assert list(CALCULATIONS) == list(COURSE)
    for some in CALCULATIONS.values():
        names = [one.name for one in some]
        assert names and len(set(names)) == len(names)


@pytest.mark.slow
@each_one
def test_what_is_shown_is_what_is_right(module, one):
    for seed in SEEDS:
        drawn = one.draw(Random(seed))
        right = drawn.right()
        for step in one.steps:
            assert math.isfinite(right[step.name])
            field = Number(step.name, step.ask, step.unit, step.of)
            shown = float(step.said(right[step.name]).split()[0])
            assert step.near(shown, right[step.name]), (step.name, shown, right[step.name])
            assert not field.unreadable(step.said(right[step.name]))
            line = drawn.line(step, right)
            assert line.endswith(f"= {step.said(right[step.name])}") and "{" not in line
            assert drawn.verdict(step, right) == ("right", "")


@each_one
def test_a_slip_is_told_as_what_it_is(module, one):
    for step in one.steps:
        told = dict.fromkeys(step.slips, 0)
        for seed in SEEDS:
            drawn = one.draw(Random(seed))
            right = drawn.right()
            for sentence, work in step.slips.items():
                wrong = work({**drawn.readings, **right})
                how, looks_like = drawn.verdict(step, {**right, step.name: wrong})
                if how == "other":
                    assert looks_like in step.slips, "one of those that are listed"
                told[sentence] += how == "other" and looks_like == sentence
        # Now and then two slips, or a slip and the right figure, come to the same.
        assert all(count >= len(SEEDS) / 4 for count in told.values()), told


@each_one
def test_a_later_step_goes_on_with_ones_own_figure(module, one):
    drawn = one.draw(Random(5))
    right = drawn.right()
    first, *later = one.steps
    own = {first.name: right[first.name] * 1.3 + 1}
    known = {**drawn.readings, **own}
    answers = dict(own)
    for step in later:
        answers[step.name] = known[step.name] = step.work(known)
    for step in later:
        how = drawn.verdict(step, answers)[0]
        assert how == ("right" if step.near(answers[step.name], right[step.name]) else "follows")


def test_a_shifted_point_and_a_turned_sign_are_told():
    stack = next(one for one in CALCULATIONS["shims-and-preload"] if one.name == "stack")
    drawn = stack.draw(Random(1))
    right = drawn.right()
    gap = stack.steps[0]
    shifted = drawn.verdict(gap, {**right, "gap": right["gap"] / 100})
    assert shifted == ("other", "The point stands in the wrong place, by a factor of 100.")
    assert drawn.verdict(gap, {**right, "gap": -right["gap"]})[1] == "The sign is reversed."


@given(st.floats(allow_nan=True, allow_infinity=True), st.integers(0, len(ALL) - 1))
def test_any_figure_gets_a_verdict(figure, which):
    one = ALL[which][1]
    drawn = one.draw(Random(2))
    for step in one.steps:
        how, _ = drawn.verdict(step, {**drawn.right(), step.name: figure})
        assert how in ("right", "follows", "other")


@each_one
def test_a_figure_from_which_nothing_follows_is_told_like_any_other(module, one, tmp_path):
    drill = Drill(Keep(tmp_path), module, one, Random(1))
    while drill.stage != OWN:
        drill.screen.on_fresh()
    for figure in ("0", "-0", "-900"):
        for which in drill.asked:
            values = {
                step.name: f"{figure if step is which else 1} {step.unit}".strip()
                for step in drill.asked
            }
            drill.screen.hear({"type": "give", "values": values})
            told = drill.screen.told
            assert set(told) == set(values)
            assert all(values[name] in said["said"] for name, said in told.items())
            assert not any("nan" in f"{said['said']} {said['why']}" for said in told.values())


def every_reading(one):
    """A given's readings from end to end, by its step."""
    return st.integers(0, round((one.high - one.low) / one.step)).map(
        lambda n: round(one.low + n * one.step, 6)
    )


def readings_of(one, random):
    """A reading of every given, by its step."""
    return {
        some.name: round(
            some.low + some.step * random.randint(0, round((some.high - some.low) / some.step)), 6
        )
        for some in one.given
    }


BOTH_SIDES = {
    "pressed-and-driven read-a-fit least", "shims-and-preload cold-to-warm warm",
    "shift-and-lockout pin-other-end other", "gear-train-and-checks other-wheel right",
}  # fmt: skip
"""Figures that mean something below zero too, and what is said of them says what."""


@each_one
def test_no_reading_makes_a_figure_that_cannot_be(module, one):
    """As a leak below zero, or a bead too small for its gap."""
    random = Random(11)
    for _ in range(300):
        known = readings_of(one, random)
        for step in one.steps:
            known[step.name] = step.work(known)
            sided = f"{module} {one.name} {step.name}" in BOTH_SIDES
            assert sided or known[step.name] > 0, (step.name, known)


BLIND = next(one for one in CALCULATIONS["threaded-joints"] if one.name == "blind-hole")


@given(st.fixed_dictionaries({one.name: every_reading(one) for one in BLIND.given}))
@example({one.name: one.low if one.name == "oil" else one.high for one in BLIND.given})
def test_a_blind_hole_always_holds_more_oil_than_it_has_room_for(readings):
    known = dict(readings)
    for step in BLIND.steps:
        known[step.name] = step.work(known)
    assert known["over"] > 0.02 and known["turns"] > 0.1


def test_a_metal_of_a_calculation_grows_as_the_metals_of_press_fits_do():
    metals = {"steel": fit.STEEL, "aluminium": fit.CAST_ALUMINIUM}
    seen = set()
    for _, one in ALL:
        for metal, figure, unit in re.findall(
            r"(steel|aluminium) \w+ (?:grows )?([\d.]+) (µm|mm)", one.story
        ):
            grown = float(figure) * (1e-6 if unit == "µm" else 1e-3)
            assert grown == pytest.approx(metals[metal].expansion_per_k), one.name
            seen.add(metal)
    assert seen == set(metals)


SIGNS = (
    ("×", "*"), ("÷", "/"), ("−", "-"), ("²", "**2"), ("°", ""), (" kg", ""), ("2π", "2 * π"),
    ("square root of", "root"), ("root of", "root"),
)  # fmt: skip
IN_WORDS = {
    "measuring-and-tools six-readings mean", "measuring-and-tools six-readings sd",
    "order-of-work several-hands many", "pressed-and-driven seal-read depth",
    "pressed-and-driven seal-read lean", "pressed-and-driven stake holds",
    "shift-and-lockout detent leave", "shift-and-lockout detent crest",
    "gear-train-and-checks turns-that-tell turns", "reading-faults search-minutes mean",
}  # fmt: skip
"""Lines that say what is done in words, which nothing here can work out."""


def worked_out(line, known):
    """What the worked line of a step comes to, figure by figure as it stands there."""
    for sign, code in SIGNS:
        line = line.replace(sign, code)
    line = re.sub(r"(sin|tan) (\S+?)\)?$", lambda m: m[0].replace(m[2], f"({m[2]})", 1), line)
    names = {
        "π": math.pi, "root": math.sqrt, "sin": lambda deg: math.sin(math.radians(deg)),
        "tan": lambda deg: math.tan(math.radians(deg)),
    }  # fmt: skip
    return eval(line.format(**{key: f"({value!r})" for key, value in known.items()}), names)


@each_one
def test_the_worked_line_comes_to_the_figure_that_stands_behind_it(module, one):
    """No factor of a thousand between what is read and what is taken as right."""
    random = Random(7)
    for _ in range(5):
        known = readings_of(one, random)
        for step in one.steps:
            known[step.name] = step.work(known)
            if f"{module} {one.name} {step.name}" in IN_WORDS:
                with pytest.raises((SyntaxError, NameError)):
                    worked_out(step.how, known)
                continue
            assert worked_out(step.how, known) == pytest.approx(known[step.name], rel=1e-3), (
                step.name
            )


@pytest.fixture
def drill(tmp_path):
    """A calculation of three steps on the screen."""
    trial = next(one for one in CALCULATIONS["pressed-and-driven"] if one.name == "spring-pin")
    return Drill(Keep(tmp_path), "pressed-and-driven", trial, Random(3))


def answer(drill, **changed):
    right = drill.drawn.right()
    values = {step.name: step.said(right[step.name]) for step in drill.asked} | changed
    drill.screen.hear({"type": "give", "values": values})
    return drill.screen.told


def test_it_comes_worked_then_with_steps_left_out_then_alone_and_again(drill, tmp_path):
    screen = drill.screen
    steps = drill._calculation.steps
    assert drill.stage == WORKED and not screen.fields
    assert [words for words, _ in screen.facts][-3:] == [step.ask for step in steps]
    worked = list(screen.facts)
    screen.hear({"type": "fresh"})
    assert drill.stage == HALF and [one["name"] for one in screen.fields] == ["times", "single"]
    assert screen.facts[-1][0] == "Force on the pin" and "= …" in screen.fields[0]["prompt"]
    assert [told["how"] for told in answer(drill).values()] == ["right", "right"]
    screen.hear({"type": "fresh"})
    assert drill.stage == OWN and [one["name"] for one in screen.fields] == [s.name for s in steps]
    assert not screen.told and len(screen.facts) == len(drill._calculation.given)
    before, turn = list(screen.facts), screen.turn
    told = answer(
        drill, times=f"{drill.drawn.right()['force'] / drill.drawn.readings['shear']:.4g}"
    )
    assert told["times"]["how"] == "other" and "You divided the force" in told["times"]["why"]
    assert told["single"]["how"] == "right"
    screen.hear({"type": "fresh"})
    assert drill.stage == OWN and screen.facts != before and screen.turn == turn + 1
    assert before != worked and not screen.told and not screen.values
    tries = Keep(tmp_path).tries("pressed-and-driven/calculation/spring-pin")
    assert [(one.value, one.right) for one in tries] == [(HALF, True), (OWN, False)]


def test_what_cannot_be_read_gives_nothing_away(drill):
    drill.screen.hear({"type": "fresh"})
    told = answer(drill, times="many")
    assert set(told) == {"times"} and told["times"]["how"] == "unread"
    assert drill.drawn.right() and "It is" not in told["times"]["said"]


def test_a_figure_may_be_given_in_another_unit(drill):
    drill.screen.hear({"type": "fresh"})
    drill.screen.hear({"type": "fresh"})
    newtons = f"{drill.drawn.right()['force'] * 1000:.0f} N"
    assert answer(drill, force=newtons)["force"]["how"] == "right"


def test_every_lesson_has_its_calculations(tmp_path, monkeypatch):
    monkeypatch.chdir(tmp_path)
    for module in COURSE.values():
        cells = nbformat.read(ROOT / f"course/lessons/{module.name}.ipynb", as_version=4).cells
        code = "\n".join(cell.source for cell in cells if cell.cell_type == "code")
        names = re.findall(r'lesson\.calculation\("([^"]+)"\)', code)
        assert names == [one.name for one in CALCULATIONS[module.id]]
        lesson = open_lesson(module.id)
        assert all(lesson.calculation(name).facts for name in names)


def test_they_know_nothing_of_what_is_issued_or_marked():
    """No reading that was drawn for a learner reaches them: they import nothing that draws or marks,
    and no step takes anything but the readings that the drill has drawn itself.
    """
    files = [*(ROOT / "course/twoshaft/practice/calculations").glob("*.py"),
             *(ROOT / f"course/twoshaft/practice/{name}.py" for name in ("calculation", "drill"))]  # fmt: skip
    allowed = ("twoshaft.models", "twoshaft.practice", "twoshaft.units")
    allowed += ("twoshaft.jobsheet.kinds", "twoshaft.jobsheet.measures", "twoshaft.modules")
    for path in files:
        for node in ast.walk(ast.parse(path.read_text("utf-8"))):
            if isinstance(node, ast.ImportFrom) and str(node.module).startswith("twoshaft"):
                assert node.module.startswith(allowed), (path.name, node.module)
    for _, one in ALL:
        drawn = one.draw(Random(4))
        assert set(drawn.readings) == {given.name for given in one.given}
