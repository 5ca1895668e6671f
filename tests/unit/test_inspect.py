"""Inspecting: limits, guard bands, costs, wear, damage told apart by its marks, findings."""

import math
import random

import pytest

from twoshaft.errors import OutOfRangeError, UnitFileError
from twoshaft.models import inspect
from twoshaft.models.order import OrderTask, chance_r0, model_order, plan_slip
from twoshaft.models.order.mark import LEAST_R0
from twoshaft.plots.damage import dog_picture, flank_picture, race_picture
from twoshaft.units import load_unit
from twoshaft.units.quantities import Q


def mm(value):
    return Q(value, "mm")


@pytest.fixture(scope="module", params=["tarnbeck-b5", "tarnbeck-b5-early"])
def unit(request):
    return load_unit(request.param)


def changed(unit, **parts):
    return unit.with_sections(inspect=unit.inspect.model_copy(update=parts))


@pytest.mark.parametrize("least", [True, False])
def test_verdicts_change_at_the_guard_band_and_nowhere_else(least):
    inside = 1 if least else -1
    said = {
        step: inspect.verdict(mm(5 + inside * step / 1000), mm(5), mm(0.03), least)
        for step in range(-60, 61)
    }
    assert {s for s, word in said.items() if word == inspect.GOOD} == set(range(31, 61)) | {30}
    assert {s for s, word in said.items() if word == inspect.AGAIN} == set(range(-29, 30))


@pytest.mark.parametrize("least", [True, False])
def test_exactly_at_the_guard_band_a_reading_proves(least):
    """Sizes that a float holds exactly: the edge itself counts as proven, either way."""
    inside = 0.25 if least else -0.25
    assert inspect.verdict(mm(5 + inside), mm(5), mm(0.25), least) == inspect.GOOD
    assert inspect.verdict(mm(5 - inside), mm(5), mm(0.25), least) == inspect.BAD


def test_a_guard_band_leaves_the_chance_that_it_is_made_for():
    for risk in (0.01, 0.05, 0.2):
        band = inspect.guard_band(mm(0.02), risk)
        assert inspect.chance_beyond(mm(5) + band, mm(5), mm(0.02), True) == pytest.approx(risk)
        assert inspect.chance_beyond(mm(5) - band, mm(5), mm(0.02), False) == pytest.approx(risk)
    with pytest.raises(OutOfRangeError):
        inspect.guard_band(mm(0.02), 0.7)


@pytest.mark.parametrize("u", [0.02, 0.05, 0.1])
def test_shares_that_are_wrong_where_the_limit_is_the_mean(u):
    """Closed form: size and reading are normal together, and a quarter of the plane is turned."""
    corner = 1 / 4 - math.asin(0.1 / math.hypot(0.1, u)) / (2 * math.pi)
    shares = inspect.shares_wrong(mm(1), mm(0.1), mm(1), mm(u), mm(0))
    assert shares == (pytest.approx(corner, abs=4e-6), pytest.approx(corner, abs=4e-6))


@pytest.mark.slow
def test_shares_that_are_wrong_come_out_of_a_draw():
    rng = random.Random(3)
    bad = good = 0
    for _ in range(200_000):
        size = rng.gauss(1, 0.1)
        used = rng.gauss(size, 0.03) > 0.9 + 0.02
        bad += used and size < 0.9
        good += not used and size >= 0.9
    shares = inspect.shares_wrong(mm(1), mm(0.1), mm(0.9), mm(0.03), mm(0.02))
    assert shares == (
        pytest.approx(bad / 200_000, abs=6e-4),
        pytest.approx(good / 200_000, abs=1.2e-3),
    )


def test_the_mean_of_readings_scatters_less_in_a_draw():
    rng = random.Random(4)
    means = [sum(rng.gauss(0, 0.02) for _ in range(5)) / 5 for _ in range(20_000)]
    spread = math.sqrt(sum(one**2 for one in means) / len(means))
    assert inspect.mean_uncertainty(mm(0.02), 5).m == pytest.approx(spread, rel=0.03)


def test_using_and_renewing_cost_the_same_at_break_even():
    chance = inspect.break_even(Q(1.5, "hour"), Q(14, "hour"))
    ways = inspect.ways_cost(chance, 1.5, 14, 0.2)
    assert ways["use"] == pytest.approx(ways["renew"])
    assert inspect.ways_cost(0, 1, 10, 0.4) == {"use": 0, "renew": 1, "again": 0.4}
    assert inspect.ways_cost(1, 1, 10, 0.4) == {"use": 10, "renew": 1, "again": 1.4}


def test_wear_worked_out():
    assert inspect.groove_depth(mm(38), mm(37.6)).m == pytest.approx(0.2)
    assert inspect.needle_play(mm(40.05), mm(34), mm(3)).m == pytest.approx(0.05)
    assert inspect.float_with(mm(0.3), mm(2), mm(2.1)).m == pytest.approx(0.2)
    assert inspect.float_with(mm(0.3), mm(2), mm(1.9)).m == pytest.approx(0.4)


@pytest.mark.slow
@pytest.mark.parametrize("kind", inspect.RACE + inspect.FLANK)
def test_damage_is_told_by_its_marks_wherever_it_lies(kind):
    tell = inspect.race_damage if kind in inspect.RACE else inspect.flank_damage
    draw = race_picture if kind in inspect.RACE else flank_picture
    words = set()
    for seed in range(60):
        for size, at in ((2.4, 18), (3.3, 30), (4.4, 42)):
            marks = inspect.marks_of(kind, size, at, seed)
            assert tell(marks) == kind
            felt = inspect.felt(marks)
            words.add(felt)
            assert inspect.NAMES[kind].lower() not in felt and kind not in felt.split()
    svg = draw(marks).svg
    assert felt.split(";")[0] in svg and kind not in svg and inspect.NAMES[kind] not in svg


def test_no_two_kinds_feel_alike():
    felt = {k: inspect.felt(inspect.marks_of(k, 3, 30, 1)) for k in inspect.RACE + inspect.FLANK}
    heads = {k: "".join(c for c in words if not c.isdigit()) for k, words in felt.items()}
    assert len({heads[k] for k in inspect.RACE}) == len(inspect.RACE)
    assert len({heads[k] for k in inspect.FLANK}) == len(inspect.FLANK)


def test_the_longest_hole_is_felt_from_its_one_end_to_the_other():
    holes = [inspect.Mark("crater", 12, 12, 2, 1), inspect.Mark("crater", 31, 12, 5, 3)]
    assert inspect.felt(holes).endswith("the largest reaches from 28.5 to 33.5 on the scale")


@pytest.mark.parametrize(
    "part, wears, wear, way",
    [
        ("sleeve", "points", 0.5, "use"), ("sleeve", "points", 0.55, "renew"),
        ("hub", "notch", 0.2, "use"), ("hub", "notch", 0.25, "renew"),
        ("key", "ridge", 0.5, "use"), ("key", "ridge", 0.55, "renew"), ("key", "end", 0.2, "find"),
        ("fork", "pads", 1.0, "use"), ("fork", "pads", 1.1, "renew"),
        ("fork", "pad", 0.5, "use"), ("fork", "pad", 0.6, "find"), ("fork", "pad", 1.6, "find"),
        ("spring", "length", 1.0, "use"), ("spring", "length", 1.1, "renew"),
        ("spring", "coil", 0.1, "find"),
    ],
)  # fmt: skip
def test_a_worn_part_becomes_what_limit_evenness_and_missing_pieces_say(part, wears, wear, way):
    worn = inspect.worn_of(part, wears, wear, 3.0)
    assert inspect.becomes(worn) == way
    assert inspect.judged(worn)[0] == (way == "use")


def test_dog_teeth_are_told_by_marks_of_the_scale_and_no_width():
    lit = dog_picture((0.4, 0.7, 0.35, 0.5), (0, 1.5, 0, 0), (0.2, 1.0, 0.4, 0.6))
    assert "begins at mark 1.0 and ends at mark 3.0" in lit.feels
    assert lit.feels.count("broken off") == 1 and "0.7" not in lit.feels


def test_a_thread_repair_is_an_order_worth_marking():
    repairs = inspect.load_repairs()
    task = OrderTask.from_unit(repairs)
    assert plan_slip(task, model_order(task)).size == 0 and chance_r0(task) >= LEAST_R0
    bound = {one for pair in task.pairs for one in pair}
    assert bound == set(task.steps)
    drill = task.number["drill-out"]
    for first in ("cover-openings", "wear-glasses", "clamp-case", "set-stop", "find-out"):
        assert (first, "drill-out") in task.pairs, drill


def test_a_section_that_cannot_decide_is_told(unit):
    assert inspect.audit_inspect(unit) == ()
    for times in (2, 3):
        again = changed(unit, limits=(unit.inspect.limits[0],) * times)
        (found,) = inspect.audit_inspect(again)
        assert "stands twice in limits" in found.what
    shallow = unit.inspect.seal.model_copy(update={"sleeve_most_mm": 0.05})
    assert "bridges no deeper" in inspect.audit_inspect(changed(unit, seal=shallow))[0].what
    assert inspect.audit_inspect(unit.with_sections(inspect=None)) == ()


@pytest.mark.parametrize(
    "part, change, said",
    [
        ("limits", {"limit_mm": 1.0, "new_mm": 1.01, "tool_mm": 0.02}, "better tool"),
        ("circlips", {"thickness_mm": (1.0, 1.5, 2.0)}, "steps no larger"),
        ("circlips", {"float_mm": (0.3, 0.1)}, "smaller end float must come first"),
        ("costs", {"again_hours": 1.0, "renew_hours": 2.0}, "more than renewing"),
    ],
)
def test_entries_that_make_no_sense_are_refused(unit, part, change, said):
    entry = getattr(unit.inspect, part)
    entry = entry[0] if isinstance(entry, tuple) else entry
    with pytest.raises(ValueError, match=said):
        type(entry)(**{name: getattr(entry, name) for name in type(entry).model_fields} | change)


def test_a_unit_without_the_section_is_refused_in_a_sentence(unit):
    with pytest.raises(UnitFileError, match="no section 'inspect'"):
        _ = unit.with_sections(inspect=None).inspect
