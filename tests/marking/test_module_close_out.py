"""Close out: typical wrong answers and what they earn and say."""

import pytest

from twoshaft.models import closeout

MODULE = "13-close-out"
MUST_PASS = ("oil-do", "fill-do", "leak-do", "hand-do", "safe-do")


def told(field):
    return " ".join(field.sentences)


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


def test_an_even_fall_between_two_figures_is_named(marked, issued):
    oil = issued["given"]["oil"]
    (drum,) = (one for one in oil["drums"] if one[0] == oil["read"])
    even = drum[3] + (drum[4] - drum[3]) * (oil["read_c"] - 40) / 60
    field = marked(oil_read=f"{even:.1f} mm²/s")[0]["oil-read"]
    assert field.share < 0.3 and "line in the chart" in told(field)


def test_a_chart_may_be_read_by_a_line_or_so(marked, clean):
    right = clean.references["oil-read"].value.m
    for off in (0.95, 1.05):
        assert marked(oil_read=f"{off * right:.2f} cSt")[0]["oil-read"].share == 1
    assert marked(oil_read=f"{1.2 * right:.2f} mm2/s")[0]["oil-read"].share == 0


def test_diameter_for_radius_and_turns_for_radians_are_named(marked, clean, issued):
    ring, right = issued["given"]["ring"], clean.references
    torque = right["ring-torque"].value.m_as("N*m")
    time = ring["inertia_kg_m2"] * ring["speed_rpm"] / torque
    fields = marked(ring_torque=f"{2 * torque:.2f} N·m")[0]
    assert 0 < fields["ring-torque"].share < 0.5 and "radius" in told(fields["ring-torque"])
    field = marked(ring_time=f"{time:.3f} s")[0]["ring-time"]
    assert 0 < field.share < 0.5 and "radians" in told(field)
    friction = ring["wrong_friction"] / ring["friction"]
    field = marked(ring_longer=f"{friction:.3f}")[0]["ring-longer"]
    assert 0 < field.share < 0.5 and "other way round" in told(field)


def test_an_early_slip_is_charged_once(marked, clean, issued):
    """Time and distance follow from the learner's own torque."""
    ring, right = issued["given"]["ring"], clean.references
    torque, time = (
        2 * right["ring-torque"].value.m_as("N*m"),
        right["ring-time"].value.m_as("s") / 2,
    )
    path = right["ring-path"].value.m_as("mm") / 2
    fields = marked(
        ring_torque=f"{torque:.3f} N·m", ring_time=f"{time:.4f} s", ring_path=f"{path:.2f} mm"
    )[0]
    assert fields["ring-torque"].share < 0.5 and ring["friction"]
    assert fields["ring-time"].share == fields["ring-path"].share == 1


def test_cold_litres_and_the_wrong_way_are_named(marked, clean, unit):
    cold = unit.strip.oil.capacity_litre
    right = clean.references["fill-litres"].value.m_as("l")
    field = marked(fill_litres=f"{cold} l")[0]["fill-litres"]
    assert 0 < field.share < 0.4 and "filling cold" in told(field)
    field = marked(fill_litres=f"{2 * cold - right:.3f} l")[0]["fill-litres"]
    assert 0 < field.share < 0.4 and "warm oil takes more room" in told(field)
    assert marked(fill_litres=f"{1000 * right:.0f} ml")[0]["fill-litres"].share == 1


def test_celsius_for_kelvin_and_pressure_from_vacuum_are_named(marked, clean, issued):
    given = issued["given"]["breather"]
    naive = given["outside_mbar"] * (given["hot_c"] / given["closed_c"] - 1)
    field = marked(breather_alone=f"{naive:.0f} mbar")[0]["breather-alone"]
    assert 0 < field.share < 0.3 and "absolute zero" in told(field)
    right = clean.references["breather-both"].value.m_as("mbar")
    field = marked(breather_both=f"{right + given['outside_mbar']:.0f} mbar")[0]["breather-both"]
    assert 0 < field.share < 0.5 and "outside" in told(field)
    assert marked(breather_both=f"{right / 1000:.4f} bar")[0]["breather-both"].share == 1


def test_the_gauge_alone_and_the_temperature_the_wrong_way_are_named(marked, issued):
    leak = issued["given"]["leak"]
    fall, warmer = leak["start_mbar"] - leak["end_mbar"], leak["end_c"] - leak["start_c"]
    each = closeout.pressure_per_kelvin.plain(
        leak["outside_mbar"] + leak["start_mbar"], leak["start_c"]
    )
    field = marked(leak_lost=f"{fall:.2f} mbar")[0]["leak-lost"]
    assert field.share < 0.3 and "gauge alone" in told(field)
    field = marked(leak_lost=f"{fall - warmer * each:.2f} mbar")[0]["leak-lost"]
    assert field.share < 0.4 and "hides a leak" in told(field)


def test_the_leak_goes_on_with_ones_own_loss(marked, issued):
    leak = issued["given"]["leak"]
    fall = leak["start_mbar"] - leak["end_mbar"]
    rate = closeout.leak_rate.plain(fall, leak["litres"], leak["minutes"], leak["outside_mbar"])
    fields = marked(leak_lost=f"{fall:.2f} mbar", leak_rate=f"{rate:.2f} ml/min")[0]
    assert fields["leak-lost"].share < 0.3 and fields["leak-rate"].share == 1


def test_a_limit_without_its_guard_band_proves_nothing(marked, issued):
    leak = issued["given"]["leak"]
    field = marked(leak_edge=f"{leak['most']} ml/min")[0]["leak-edge"]
    assert field.share == 0 and "every second" in told(field)
    field = marked(leak_edge=f"{leak['most'] + 1.65 * leak['u']:.2f} ml/min")[0]["leak-edge"]
    assert 0 < field.share < 0.3 and "above the limit" in told(field)


def test_another_cause_is_told_which_one_is_left(marked, clean):
    asked, right = clean.fields["road-cause"], clean.references["road-cause"].value
    line = next(iter(right))
    other = next(id for id in dict(asked.options) if id != right[line])
    field = marked(road_cause=asked.store({**right, line: other}))[0]["road-cause"]
    assert field.share < 1 and "fits one cause alone" in told(field)
