"""The typical wrong answers of Pressed and driven parts: what each earns, and its sentence."""

import pytest

from twoshaft.models import fit
from twoshaft.units.quantities import Q

MODULE = "04-pressed-and-driven"


def value(clean, field):
    return clean.references[field].value


def told(field):
    return " ".join(field.sentences)


def test_upper_paired_with_upper(marked, issued):
    limits = issued["given"]["limits"]
    made = fit.fit(Q(limits["size_mm"], "mm"), limits["codes"])
    uppers = made.shaft.upper_um - made.hole.upper_um
    fields, _ = marked(limits_most=f"{uppers:g} µm")
    assert fields["limits-most"].share == 0 and "upper with upper" in told(fields["limits-most"])


def test_interference_on_the_radius_is_charged_once(marked, clean):
    half = {
        f"press_{name}": f"{value(clean, f'press-{name}').magnitude / 2:.5g} {unit}"
        for name, unit in (("grip", "µm"), ("pressure", "MPa"), ("low", "kN"), ("high", "kN"))
    }
    fields, _ = marked(**half)
    assert fields["press-grip"].share == pytest.approx(0.3)
    assert "on the diameter" in told(fields["press-grip"])
    assert fields["press-pressure"].share == fields["press-high"].share == 1


def test_a_room_that_was_forgotten(marked, clean, issued):
    rise = value(clean, "heat-to").m_as("degC") - issued["given"]["heat"]["room_c"]
    field = marked(heat_to=f"{rise:.1f} °C")[0]["heat-to"]
    assert field.share == pytest.approx(0.3) and "room comes on top" in told(field)


def test_a_slip_in_the_rise_is_charged_once(marked, clean, issued):
    heat = issued["given"]["heat"]
    wrong = value(clean, "heat-rise").magnitude + 10  # a one carried too often
    goal = heat["room_c"] + wrong + heat["handling_k"]
    growth = heat["size_mm"] / 1e3 * heat["outer"][1]
    play = growth * (heat["limit_c"] - heat["room_c"] - wrong)
    fields, _ = marked(
        heat_rise=f"{wrong:.1f} K", heat_to=f"{goal:.1f} °C", heat_play=f"{play:.1f} µm"
    )
    assert fields["heat-rise"].share == 0
    assert fields["heat-to"].share == fields["heat-play"].share == 1


@pytest.mark.parametrize(
    "field",
    [
        "press-do",
        "heat-do",
        "heat-how",
        "driver-where",
        "seal-do",
        "locks-do",
        "locks-clips",
        "bench-cautions",
    ],
)
def test_any_line_wrong_of_what_decides_fails_whatever_the_mark(marked, clean, field):
    right = value(clean, field)
    answers = dict(clean.fields[field].options)
    for line in right:
        for wrong in set(answers) - {right[line]}:
            stored = [f"{key}={option}" for key, option in (right | {line: wrong}).items()]
            fields, mark = marked(**{field.replace("-", "_"): stored})
            assert not fields[field].passed and not mark.met and told(fields[field])
            assert mark.points > 0.9 * mark.maximum
    fields, mark = marked(**{field.replace("-", "_"): None})
    assert not fields[field].passed and not mark.met


def test_a_driver_on_the_ring_that_slides(marked, clean):
    right = value(clean, "driver-where")
    line, ring = next((line, one) for line, one in right.items() if one in ("outer", "inner"))
    wrong = right | {line: "inner" if ring == "outer" else "outer"}
    field = marked(driver_where=[f"{key}={one}" for key, one in wrong.items()])[0]["driver-where"]
    assert field.share == pytest.approx(0.5) and "crosses the balls" in told(field)


def test_a_bridge_that_was_left_in_the_depth(marked, clean):
    depth = value(clean, "seal-depth").m_as("mm") + 5
    field = marked(seal_depth=f"{depth:.2f} mm")[0]["seal-depth"]
    assert field.share == pytest.approx(0.3) and "bridge" in told(field)


def test_a_lever_that_was_divided_and_planes_miscounted(marked, issued):
    spring = issued["given"]["spring"]
    force = spring["hand_n"] / spring["ratio"]
    pin = fit.spring_pin(Q(spring["size_mm"], "mm"))
    bears = pin.shear_load(3 - spring["planes"]).m_as("kN")
    fields, _ = marked(spring_force=f"{force:.3f} N", spring_bears=f"{bears:.3f} kN")
    assert "lever multiplies" in told(fields["spring-force"])
    assert "Count the planes" in told(fields["spring-bears"])


def test_a_taper_without_its_length(marked, clean):
    thicker = value(clean, "taper-proud").m_as("mm") / 50
    field = marked(taper_proud=f"{thicker:.3f} mm")[0]["taper-proud"]
    assert field.share == pytest.approx(0.2) and "0.02 mm is 1 mm" in told(field)


def test_a_stake_at_the_larger_of_the_two(marked, issued):
    locks = issued["given"]["locks"]
    more = max(locks["shear_nm"], locks["crush_nm_mm"] * locks["depth_mm"])
    field = marked(locks_holds=f"{more:g} N·m")[0]["locks-holds"]
    assert field.share == 0 and "smaller" in told(field)


def test_wrong_unit_slip_of_ten_and_reversed_sign_are_named(marked, clean):
    grip = value(clean, "press-grip").m_as("um")
    assert "10 times too large" in told(marked(press_grip=f"{10 * grip:g} µm")[0]["press-grip"])
    most = value(clean, "limits-most").m_as("um")
    assert "reversed" in told(marked(limits_most=f"{-most:g} µm")[0]["limits-most"])
    psi = value(clean, "press-pressure").m_as("psi")
    assert "psi" in told(marked(press_pressure=f"{psi:.0f} MPa")[0]["press-pressure"])


def test_a_dozen_learners_earn_all_with_their_solutions(module):
    for learner in (f"b{n}" for n in range(12)):
        mark = module.mark(learner, module.right(learner))
        assert mark.points == pytest.approx(mark.maximum) and mark.met
