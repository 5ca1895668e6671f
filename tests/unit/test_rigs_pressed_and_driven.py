"""The press and the seal seat: what they show follows the models; in marked work, readings only."""

import pytest

from twoshaft.errors import CourseError
from twoshaft.models import fit
from twoshaft.models.bench_tools import PRESS_GAUGES_KN, scale_for
from twoshaft.plots.driven_section import driven_section
from twoshaft.plots.pin_section import spring_pin_section, taper_pin_section
from twoshaft.plots.seal_section import seal_section
from twoshaft.readings import draw
from twoshaft.records import changed
from twoshaft.rigs import press_rig, seal_seat
from twoshaft.units.quantities import Q

INNER, OUTER = frozenset({fit.Ring.INNER}), frozenset({fit.Ring.OUTER})


def set_to(rig, **change):
    rig.hear({"type": "set", "state": {**rig.shown["state"], **change}, "turn": "t"})
    return rig.shown


def test_the_gauge_shows_the_force_of_the_model(unit):
    rig = press_rig(unit, "diff-bearings")
    pressed = fit.Pressed.of(unit, "diff-bearings")
    force = set_to(rig, grip=100, seat="dry", travel=100)["force"]
    assert force == pytest.approx(pressed.force_range()[1].m_as("kN"), rel=1e-3)
    assert set_to(rig, travel=50)["force"] == pytest.approx(force / 2, rel=1e-3)
    assert set_to(rig, travel=0)["force"] == 0


def test_a_driver_on_the_wrong_ring_goes_through_the_balls(unit):
    rig = press_rig(unit, "output-front-ring")
    assert "straight" in rig.finding
    assert "tsd-bad" in set_to(rig, driver="inner")["section"] and "dents" in rig.finding
    set_to(rig, driver="both")
    assert "straight" in rig.finding


def test_warm_it_slides_home_and_too_hot_is_said(unit):
    rig = press_rig(unit, "output-front-ring")
    shown = set_to(rig, grip=100, warmth=90, travel=100)
    assert shown["force"] == 0 and "by hand" in rig.finding
    set_to(rig, warmth=130)
    assert "Too hot" in rig.finding and "120" in rig.finding


def test_in_marked_work_the_press_gives_its_gauge_only(unit):
    rig = press_rig(unit, "diff-rear-ring", grip_um=20.0, friction=0.1)
    shown = set_to(rig, travel=100, grip=0, warmth=200, driver="inner")
    pressed = fit.Pressed.of(unit, "diff-rear-ring")
    wanted = fit.press_force(Q(20, "um"), pressed.pair, Q(13, "mm"), 0.1).m_as("kN")
    assert shown["force"] == pytest.approx(wanted, rel=1e-3)
    assert "facts" not in shown and 'd="M' in shown["section"]
    assert '<path class="tsd-good"' not in shown["section"]
    assert not any(ch.isdigit() for ch in shown["finding"])
    assert scale_for(0.5, PRESS_GAUGES_KN) == PRESS_GAUGES_KN[0]
    assert scale_for(1e4, PRESS_GAUGES_KN) == PRESS_GAUGES_KN[-1]


def test_a_seal_is_read_over_its_bridge_and_judged_by_the_model(unit):
    rig = seal_seat(unit, "input-seal")
    assert "dry" in rig.finding
    set_to(rig, grease="yes", sleeve="yes")
    assert "as it should" in rig.finding
    assert "leans" in set_to(rig, lean=0.6)["finding"]
    assert "towards the air" in set_to(rig, lean=0, lip="air")["finding"]
    drawn = draw("pressed-and-driven", unit, salt="s", learner="l", attempt=1).seal
    fitted = changed(drawn, lip="air", depth_mm=1.0, lean_mm=0.4, towards=2)
    marked = seal_seat(unit, "input-seal", fitted=fitted)
    dials = [set_to(marked, place=str(k), lip="oil", depth=3.0)["dial"] for k in range(4)]
    assert dials == pytest.approx([5.8, 6.0, 6.2, 6.0])
    assert "scale(-1 1)" in marked.shown["section"] and "lean" not in marked.finding
    assert "Seal seat" in marked.plain_copy()


def test_bad_names_and_states_are_refused_in_words(unit):
    for rig in (press_rig, seal_seat):
        with pytest.raises(CourseError, match="no-such"):
            rig(unit, "no-such")
    with pytest.raises(CourseError, match="give interference and friction"):
        press_rig(unit, grip_um=3.0)
    with pytest.raises(CourseError, match="known choice"):
        set_to(press_rig(unit), driver="cage")


def test_where_a_force_goes():
    assert fit.crosses_elements(INNER, OUTER) and fit.crosses_elements(INNER, fit.BOTH)
    assert not fit.crosses_elements(fit.BOTH, fit.BOTH)
    grips, slides = fit.fit(Q(50, "mm"), "H7/k6"), fit.fit(Q(50, "mm"), "H7/g6")
    assert fit.tight_rings(grips, slides) == INNER and not fit.tight_rings(None, slides)
    with pytest.raises(CourseError, match="rings under the driver"):
        fit.crosses_elements(frozenset(), INNER)


def test_drawings_say_what_they_show():
    asked = driven_section(INNER, OUTER, way=False)
    assert "dents" not in asked.words and '<path class="tsd-bad"' not in asked.svg
    assert "dents" in driven_section(INNER, OUTER).words
    assert "towards the oil" in seal_section("oil").words


def test_pins_are_drawn_with_what_they_show_in_words():
    double, single = spring_pin_section(), spring_pin_section(planes=1, nested=True)
    assert "two planes: double shear" in double.words and "nested" not in double.words
    assert "one plane: single shear" in single.words and "nested" in single.words
    planes = [sketch.svg.count('class="tsn-shear"') for sketch in (double, single)]
    assert planes == [2, 1]
    pin = fit.TaperPin(0.006, 0.030)
    home = taper_pin_section(pin, Q(6.55, "mm"), Q(26, "mm"))
    assert "stands 2.5 mm proud" in home.words and home.words.split(".")[0] in home.svg
    assert "has sunk 1.0 mm" in taper_pin_section(pin, Q(6.62, "mm"), Q(26, "mm")).words
    for sketch in (double, single, home):
        assert 'role="img"' in sketch.svg and "<desc>" in sketch.svg
