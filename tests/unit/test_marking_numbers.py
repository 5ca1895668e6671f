"""One number against its reference: tolerance, and the slips that are recognised by name.

Conversions are checked against the exact definitions of the pound, foot and inch (NIST Special
Publication 811, 2008, appendix B): 1 lbf·ft = 1.355 818 N·m, 1 in = 25.4 mm.
"""

import pytest

from twoshaft.jobsheet import Number
from twoshaft.units.quantities import Q
from twoshaft_grader.marking.kinds import Reference, Slip, judge
from twoshaft_grader.marking.kinds.number import allowed, within


def judged(unit, right, typed, *, tolerance=None, slips=(), of=""):
    asked = Number("f", "How much?", unit, of)
    reference = Reference("f", right, "o", 1.0, tolerance, False, tuple(slips), "")
    return judge(asked, reference, asked.read(typed))


@pytest.mark.parametrize(
    ("typed", "share"),
    [
        ("25 N·m", 1),
        ("25,0 Nm", 1),
        ("18.44 lbf·ft", 1),  # 25 / 1.355818 = 18.439
        ("18.4 lb ft", 1),
        ("221 lbf·in", 1),
        ("24.5 N·m", 0),
        ("25.06 N·m", 0),
        ("25.05 N·m", 1),
    ],
)
def test_rounding_to_three_figures_in_any_unit(typed, share):
    assert judged("N·m", Q(25.0, "N*m"), typed).share == share


@pytest.mark.parametrize(
    ("typed", "slip"),
    [
        ("25 lbf·ft", "wrong unit"),
        ("18.4 N·m", "wrong unit"),
        ("255 N·m", "wrong unit"),  # 25 N·m = 255 kgf·cm
        ("250 N·m", "slip of ten"),
        ("2.5 N·m", "slip of ten"),
        ("-25 N·m", "reversed sign"),
        ("31 N·m", ""),
    ],
)
def test_slips_with_a_torque(typed, slip):
    found = judged("N·m", Q(25.0, "N*m"), typed)
    assert (found.share, found.slip, found.safe) == (0, slip, False)
    assert found.sentences


@pytest.mark.parametrize(
    ("typed", "slip"),
    [("250 N·m", "slip of ten"), ("254 N·m", "wrong unit"), ("251 N·m", "slip of ten")],
)
def test_of_two_slips_within_a_wide_tolerance_the_nearer_is_named(typed, slip):
    # 25 N·m = 254.9 kgf·cm: within 4 % both explain the figure
    assert judged("N·m", Q(25.0, "N*m"), typed, tolerance=0.04).slip == slip


@pytest.mark.parametrize(
    ("typed", "slip"),
    [("1.25 in", "wrong unit"), ("12.5 mm", "slip of ten"), ("0.0492 mm", "wrong unit")],
)
def test_slips_with_a_length(typed, slip):
    assert judged("mm", Q(1.25, "mm"), typed).slip == slip


def test_whole_numbers_are_exact():
    assert judged("", 12, "12").share == 1
    assert judged("", 12, "13").share == 0
    assert judged("", 100, "101").share == 0
    assert judged("", 3.905, "3.91").share == 1


def test_zero_is_a_figure_too():
    assert judged("mm", Q(0.0, "mm"), "0 mm").share == 1
    assert judged("mm", Q(0.0, "mm"), "0.01 mm").share == 0
    assert judged("mm", Q(0.0, "mm"), "0.01 mm", tolerance=Q(0.01, "mm")).share == 1


def test_tolerances_take_the_widest():
    right = Q(2.0, "mm")
    assert allowed(right, {"absolute": Q(10, "um"), "relative": 0.001}) == pytest.approx(0.01)
    assert allowed(right, {"rounding": Q(0.05, "mm")}) == pytest.approx(0.025)
    assert allowed(right, 0.02) == pytest.approx(0.04)
    with pytest.raises(KeyError):
        allowed(right, {"about": 1})


def test_temperatures_differ_in_degrees():
    assert within(Q(248, "degF"), Q(120, "degC"), Q(1, "delta_degC"))
    assert within(Q(120.9, "degC"), Q(120, "degC"), Q(1, "kelvin"))
    assert not within(Q(121.2, "degC"), Q(120, "degC"), Q(1, "kelvin"))


def test_another_kind_of_quantity_is_never_within():
    assert not within(Q(25, "joule"), Q(25, "newton"), None)


def test_listed_slips_earn_their_part():
    slips = [
        Slip(Q(1.3, "mm"), 0.5, "You left the film out."),
        Slip(lambda q: q < Q(0, "mm"), 0, "No"),
    ]
    found = judged("mm", Q(1.25, "mm"), "1.3 mm", slips=slips)
    assert (found.share, found.sentences, found.slip) == (
        0.5,
        ("You left the film out.",),
        "listed",
    )
    assert judged("mm", Q(1.25, "mm"), "-4 mm", slips=slips).sentences == ("No",)
    assert judged("mm", Q(1.25, "mm"), "1.25 mm", slips=slips).share == 1
