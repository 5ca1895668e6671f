"""Whatever is typed is read as a quantity or asked back in one sentence; nothing else happens."""

import math

import pytest
from hypothesis import example, given, settings
from hypothesis import strategies as st

from twoshaft.errors import AnswerError
from twoshaft.jobsheet.measures import KINDS, MEASURES, measures_spelled
from twoshaft.jobsheet.numbers import read_quantity, write_quantity
from twoshaft.units.quantities import Q

MEASURED = st.sampled_from(MEASURES)
FINITE = st.floats(-1e12, 1e12).filter(lambda x: x == 0 or abs(x) > 1e-12)
TYPED = st.text(max_size=100) | st.text(alphabet="0123456789.,-+ /eE'x^*µukKNnMmfFtTbBlLiIsS·°%CF", max_size=30)  # fmt: skip


def magnitude(quantity, measure):
    return float(quantity.to(measure.pint).magnitude)


@given(FINITE, MEASURED)
def test_what_is_written_is_read_back_exactly(value, measure):
    read = read_quantity(
        write_quantity(value, measure.name, measure.kind), measure.name, measure.kind
    )
    assert read.magnitude == value
    assert read.units == Q(1, measure.pint).units


@given(TYPED, MEASURED)
@example("1e5000 mm", MEASURES[0])
@example("9" * 80, MEASURES[-1])
@example("1/" + "9" * 70, MEASURES[-1])
@example("1:0", MEASURES[-1])
@example("0 0/0", MEASURES[-1])
@example("1,,2 mm", MEASURES[0])
@example("__import__('os').system('true')", MEASURES[0])
@settings(max_examples=600)
def test_anything_typed_is_a_quantity_or_one_sentence(text, measure):
    try:
        read = read_quantity(text, measure.name, measure.kind)
    except AnswerError as error:
        assert "\n" not in error.sentence and error.sentence.endswith(".")
    else:
        assert math.isfinite(read.magnitude)
        assert read.check(Q(1, measure.pint).dimensionality)


@given(st.integers(0, 999), st.integers(0, 99), st.sampled_from(".,"), MEASURED)
def test_point_and_comma_mean_the_same_where_only_one_reading_is_possible(
    whole, part, mark, measure
):
    read = read_quantity(f"{whole}{mark}{part:02d} {measure.name}", measure.name, measure.kind)
    assert read.magnitude == float(f"{whole}.{part:02d}")


@given(st.integers(1, 999), st.integers(0, 999))
def test_a_comma_before_three_figures_is_always_asked_back(head, tail):
    with pytest.raises(AnswerError, match="may be"):
        read_quantity(f"{head},{tail:03d} mm", "mm")


@given(
    st.integers(1, 999),
    st.integers(0, 999),
    st.integers(0, 9),
    st.sampled_from(" '’\u00a0\u2009\u202f"),
)
def test_thousands_set_apart_are_read(head, tail, tenth, gap):
    read = read_quantity(f"{head}{gap}{tail:03d}.{tenth} N", "N")
    assert read.magnitude == float(f"{head}{tail:03d}.{tenth}")


@given(st.integers(0, 40), st.integers(1, 63), st.sampled_from([2, 3, 4, 8, 16, 32, 64]))
def test_fractions_are_read(whole, top, bottom):
    top = top % bottom or 1
    read = read_quantity(f"{whole} {top}/{bottom} turn", "turn")
    assert read.magnitude == pytest.approx(whole + top / bottom, rel=1e-15)


@given(FINITE, MEASURED, MEASURED)
def test_a_unit_of_another_kind_is_never_taken(value, written, wanted):
    text = write_quantity(value, written.name, written.kind)
    if any(measure.kind == wanted.kind for measure in measures_spelled(written.name)):
        return
    with pytest.raises(AnswerError):
        read_quantity(text, wanted.name, wanted.kind)


@given(FINITE, MEASURED)
def test_the_suggestion_for_a_missing_unit_is_itself_readable(value, measure):
    if not measure.name:
        return
    bare = repr(value).removesuffix(".0")
    with pytest.raises(AnswerError) as caught:
        read_quantity(bare, measure.name, measure.kind)
    for text in caught.value.mend.removeprefix("type ").split(" or "):
        again = read_quantity(text, measure.name, measure.kind)
        assert math.isfinite(again.magnitude)


@pytest.mark.parametrize("kind", KINDS)
def test_every_kind_can_be_asked_for_by_name(kind):
    first = next(measure for measure in MEASURES if measure.kind == kind)
    assert read_quantity(f"2 {first.name}", kind).magnitude == 2
