"""Strip, mark, clean: typical wrong answers and what they earn and say."""

import pytest

from twoshaft.models import strip
from twoshaft.models.order import model_order
from twoshaft.units.quantities import Q

MODULE = "11-strip-mark-clean"
MUST_PASS = ("lost-when", "marks-do", "clean-do", "discard-do", "safe-do")


def told(field):
    return " ".join(field.sentences)


def test_any_order_that_works_earns_all_and_the_build_order_next_to_nothing(marked, clean):
    task = clean.references["strip-order"].value
    assert marked(strip_order=list(model_order(task)))[0]["strip-order"].share == 1
    built = marked(strip_order=list(model_order(task))[::-1])[0]["strip-order"]
    assert built.share == 0 and "out of place" in told(built)


def test_a_reading_after_what_it_needs_is_named(marked, clean, unit):
    task = clean.references["strip-order"].value
    readings = {one.id for one in unit.strip.readings}
    order = list(model_order(task))
    late = next(step for step in order if step in readings and task.after[task.number[step]])
    order.remove(late)
    field = marked(strip_order=[*order, late])[0]["strip-order"]
    assert 0 < field.share < 1 and task.label(late) in told(field)


@pytest.mark.parametrize("name", MUST_PASS)
def test_one_wrong_line_fails_what_must_be_passed_and_says_why(marked, clean, name):
    asked, right = clean.fields[name], clean.references[name].value
    for line, good in right.items():
        for option in dict(asked.options):
            if option == good:
                continue
            wrong = asked.store({**right, line: option})
            field = marked(**{name.replace("-", "_"): wrong})[0][name]
            assert not field.passed and field.share < 1 and len(told(field)) > 40


def test_the_sum_of_both_dial_readings_is_no_float(marked, issued):
    given = issued["given"]["worked"]
    field = marked(worked_float=f"{given['pulled_mm'] + given['pushed_mm']:.2f} mm")[0][
        "worked-float"
    ]
    assert field.share == 0 and "difference" in told(field)


def test_an_early_slip_is_charged_once(marked, issued):
    """The shim that follows from the learner's own float counts."""
    given = issued["given"]["worked"]
    play = given["pulled_mm"] + given["pushed_mm"]
    shim = given["fitted_mm"] + play - given["wanted_mm"]
    fields = marked(worked_float=f"{play:.2f} mm", worked_shim=f"{shim:.2f} mm")[0]
    assert fields["worked-float"].share == 0 and fields["worked-shim"].share == 1


def test_a_shim_the_wrong_way_earns_little_and_is_named(marked, issued):
    given = issued["given"]["worked"]
    play = given["pulled_mm"] - given["pushed_mm"]
    wrong = given["fitted_mm"] - play + given["wanted_mm"]
    field = marked(worked_shim=f"{wrong:.2f} mm")[0]["worked-shim"]
    assert 0 < field.share < 0.3 and "more float" in told(field)


def test_backlash_upside_down_is_named(marked, issued):
    given = issued["given"]["worked"]
    mean = sum(given["places_mm"]) / 4
    wrong = mean * given["arm_mm"] / given["pitch_mm"]
    field = marked(worked_backlash=f"{wrong:.3f} mm")[0]["worked-backlash"]
    assert 0 < field.share < 0.3 and "upside down" in told(field)


def test_clinging_oil_is_not_missing(marked, issued, unit):
    given, oil = issued["given"]["oil"], unit.strip.oil
    cold = strip.litres_at(oil, Q(given["jug_litre"], "l"), Q(given["jug_c"], "degC")).m_as("l")
    field = marked(oil_missing=f"{oil.capacity_litre - cold:.3f} l")[0]["oil-missing"]
    assert 0 < field.share < 0.4 and "clings" in told(field)


def test_half_the_size_is_not_twice_the_time(marked, issued):
    given = issued["given"]["chips"]
    wrong = given["known_minutes"] * given["known_um"] / given["asked_um"]
    field = marked(chips_time=f"{wrong:.2f} min")[0]["chips-time"]
    assert 0 < field.share < 0.4 and "square the ratio" in told(field)


def test_what_stands_on_the_sheet_is_not_read_again(marked, clean):
    asked, right = clean.fields["lost-first"], clean.references["lost-first"].value
    line = next(one for one, good in right.items() if good == "nothing")
    other = next(option for option in dict(asked.options) if option != "nothing")
    field = marked(lost_first=asked.store({**right, line: other}))[0]["lost-first"]
    assert field.share < 1 and "stand on the sheet already" in told(field)
