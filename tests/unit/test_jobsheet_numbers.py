"""Numbers as people write them."""

import pytest

from twoshaft.errors import AnswerError
from twoshaft.jobsheet.measures import MEASURES, measures_spelled, named
from twoshaft.jobsheet.numbers import MAX_LENGTH, read_quantity

# Conversion factors: NIST SP 811 (2008), Appendix B.8, seven figures each.
LBF_FT, LBF_IN, KGF_CM, INCH = 1.355818, 0.1129848, 0.0980665, 25.4

READ = [
    ("18,5 kN", "kN", 18.5),
    ("18.5kN", "kN", 18.5),
    ("18.5  kN", "kN", 18.5),
    ("+18.5 KN", "kN", 18.5),
    ("18500 N", "kN", 18.5),
    ("1 1/4 turn", "turn", 1.25),
    ("1¼ turns", "turn", 1.25),
    ("½ turn", "turn", 0.5),
    ("5/4 rev", "turn", 1.25),
    ("450°", "turn", 1.25),
    ("450 deg", "turn", 1.25),
    ("13 ft lb", "N·m", 13 * LBF_FT),
    ("13 lbf·ft", "N·m", 13 * LBF_FT),
    ("13 ft-lbs", "N·m", 13 * LBF_FT),
    ("13 ft. lbs.", "N·m", 13 * LBF_FT),
    ("13 foot pounds", "N·m", 13 * LBF_FT),
    ("13 lb ft", "N·m", 13 * LBF_FT),
    ("13ftlb", "N·m", 13 * LBF_FT),
    ("13 lbf.in", "N·m", 13 * LBF_IN),
    ("13 in lb", "N·m", 13 * LBF_IN),
    ("13 inch-pounds", "N·m", 13 * LBF_IN),
    ("13 kgf·cm", "N·m", 13 * KGF_CM),
    ("13 kg cm", "N·m", 13 * KGF_CM),
    ("1.3 kgf m", "N·m", 1.3 * 9.80665),
    ("1.3 daN·m", "N·m", 13),
    ("13 Nm", "N·m", 13),
    ("13 N m", "N·m", 13),
    ("13 N.m", "N·m", 13),
    ("13 N-m", "N·m", 13),
    ("13 N*m", "N·m", 13),
    ("13 N⋅m", "N·m", 13),
    ("13 newton metres", "N·m", 13),
    ("1300 N·cm", "N·m", 13),
    ("0.049 in", "mm", 0.049 * INCH),
    ('0.049"', "mm", 0.049 * INCH),
    ("49 thou", "mm", 0.049 * INCH),
    ("12 µm", "mm", 0.012),
    ("12 μm", "mm", 0.012),
    ("12 um", "mm", 0.012),
    ("12 microns", "mm", 0.012),
    ("−0,05 mm", "mm", -0.05),
    ("– 0.05 mm", "mm", -0.05),
    (".05 mm", "mm", 0.05),
    ("1 234,5 N", "N", 1234.5),
    ("1,234.5 N", "N", 1234.5),
    ("1.234,5 N", "N", 1234.5),
    ("1,234,567 N", "N", 1234567),
    ("1.2e3 N", "N", 1200),
    ("1.2 x 10^3 N", "N", 1200),
    ("1,2·10³ N", "N", 1200),
    ("90 min", "h", 1.5),
    ("1 h 30 min", "h", 1.5),
    ("1h30m", "h", 1.5),
    ("2 min 30 s", "min", 2.5),
    ("120 °C", "°C", 120),
    ("120 ° C", "°C", 120),
    ("120 deg C", "°C", 120),
    ("248 °F", "°C", 120),
    ("5 bar", "kPa", 500),
    ("12 N/mm²", "MPa", 12),
    ("12 N/mm2", "MPa", 12),
    ("100 psi", "kPa", 689.4757),
    ("5 lb", "N", 5 * 4.448222),
    ("5 lb", "kg", 5 * 0.4535924),
    ("12 %", "%", 12),
    ("12%", "%", 12),
    ("12 n.m", "N·m", 12),
    ("12 NM", "N·m", 12),
    ("12 nm", "N·m", 12),
    ("12 N M", "N·m", 12),
    ("38/11", "", 38 / 11),
    ("38:11", "", 38 / 11),
    ("3.45:1", "", 3.45),
    ("3000 rpm", "r/min", 3000),
    ("3000 1/min", "r/min", 3000),
]

ASKED_BACK = [
    ("13 mN", "N·m", "newton metres or a thousandth of a newton"),
    ("13 MN", "N·m", "a million newtons"),
    ("13 NM", "mm", "nautical"),
    ("13 nm", "mm", "nanometres"),
    ("13 nM", "N", "no unit; type N·m"),
    ("13 ft/lb", "N·m", "divides feet by pounds"),
    ("13 J", "N·m", "an energy, where a torque is expected"),
    ("13 N·m", "J", "a torque, where an energy is expected"),
    ("1,234 mm", "mm", "may be 1.234 or 1234"),
    ("1.25", "mm", r"read 1.25 without a unit; type 1.25 mm or 0.0492 in\."),
    ("1.25", "turn", "without a unit"),
    ("5", "%", "without a unit"),
    ("13 lb", "N·m", "a force or a mass, where a torque is expected"),
    ("18.5 kN", "N·m", "a force, where a torque is expected"),
    ("3 mm", "", "where a plain number is expected"),
    ("12 mil", "mm", "thousandth of an inch to some"),
    ("12 µ", "mm", "prefix only"),
    ("12 Mm", "mm", "thousand kilometres"),
    ("5 to 6 mm", "mm", "more figures"),
    ("5-6 mm", "mm", "more figures"),
    ("1-1/4 turn", "turn", "more figures"),
    ("1 5/4 turn", "turn", "a fraction of one or more"),
    ("1/0 turn", "turn", "divides by nothing"),
    ("12 34 N", "N", "more figures"),
    ("1,23,4 N", "N", "do not separate thousands"),
    ("1 h 75 min", "min", "60 or more"),
    ("mm", "mm", "read no number"),
    ("--5 mm", "mm", "read no number"),
    ("nan mm", "mm", "read no number"),
    ("inf", "", "read no number"),
    ("1e99 N", "N", "beyond any workshop"),
    ("", "mm", "read nothing"),
    ("about 5 mm", "mm", "read no number"),
    ("5 bananas", "mm", "no unit known here"),
    ("5 mmm", "mm", "type 5 mm if that is meant"),
    ("5 mm\x00", "mm", "cannot be shown"),
    ("5" * (MAX_LENGTH + 1), "mm", "more than 80"),
    ("__import__('os').getcwd()", "mm", "read no number"),
    ("5 N·m or 6 N·m", "N·m", "more figures"),
]


@pytest.mark.parametrize(("text", "unit", "value"), READ)
def test_read(text, unit, value):
    wanted = named(unit)
    assert read_quantity(text, unit).to(wanted.pint).magnitude == pytest.approx(value, rel=5e-7)


@pytest.mark.parametrize(("text", "unit", "why"), ASKED_BACK)
def test_asked_back(text, unit, why):
    with pytest.raises(AnswerError, match=why):
        read_quantity(text, unit)


@pytest.mark.parametrize(
    "text", [text for text, _, why in ASKED_BACK if why in ("read no number", "more figures", "")]
)
def test_what_is_asked_for_has_a_unit_only_where_one_is_wanted(text):
    for unit, mend in (("", "number."), ("mm", "number and its unit.")):
        with pytest.raises(AnswerError) as told:
            read_quantity(text, unit)
        assert told.value.sentence.endswith(mend)


def test_a_temperature_and_a_difference_are_two_kinds():
    assert read_quantity("20 °C", "°C").to("kelvin").magnitude == pytest.approx(293.15)
    rise = read_quantity("20 °C", "K", "temperature difference")
    assert rise.to("delta_degree_Celsius").magnitude == 20
    assert read_quantity("36 °F", "K", "temperature difference").to("kelvin").magnitude == (
        pytest.approx(20)
    )


def test_anything_but_text_is_asked_back():
    for thing in (None, 5, ["5 mm"], b"5 mm"):
        with pytest.raises(AnswerError):
            read_quantity(thing, "mm")


def test_no_spelling_stands_for_two_units_of_one_kind():
    for measure in MEASURES:
        found = measures_spelled(measure.name)
        assert measure in found
        assert len({other.kind for other in found}) == len(found)


def test_every_alternative_unit_is_of_the_same_kind():
    for measure in MEASURES:
        if measure.other:
            assert named(measure.other, measure.kind).kind == measure.kind


def test_a_unit_the_course_does_not_know_is_a_mistake_in_the_course():
    with pytest.raises(ValueError, match="furlong"):
        named("furlong")
