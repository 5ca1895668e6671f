"""How heat changes the setting of a pair, part by part.

Every part grows from the bench temperature by its own expansion. Two effects add up:

along the shaft
    The case moves the outer rings apart, the shaft moves the inner rings apart. With the outer
    rings pressed together by the case a longer case loosens and a longer shaft tightens; the
    other way round with the inner rings pressed together. This is where the sign follows the
    arrangement.
across the shaft
    A wider outer raceway loosens, a wider inner raceway and thicker rollers tighten, whichever
    the arrangement, magnified by 1/tan(contact angle). The outer ring grows by itself and by what
    the growing bore of the case no longer presses in; the hot inner ring grows and, as it leaves
    the cooler shaft, springs back by what the fit no longer stretches it.

Sources: geometry of the loop of contacts; ring fits by Lamé (thick cylinders). The sign for outer
rings held by an aluminium case is in SAE 910799 and EP 0448239 A3 (abstracts).
"""

from __future__ import annotations

import math
from dataclasses import dataclass

import numpy as np

from twoshaft.models.bearing.geometry import Balls, Rollers, elements
from twoshaft.models.border import Range, Size, border
from twoshaft.models.shim.stack import outer_closes, shim_sign
from twoshaft.units.quantities import Q
from twoshaft.units.sections.bearings import Arrangement, Bearings, Material, Support

_RANGE = "changes from bench to running temperature"
# Through-hardened bearing steel: 10.9e-6 is what a maker's bore growth table comes to.
RING_STEEL = Material(name="bearing steel", expansion_per_k=10.9e-6, elastic_gpa=207.0, poisson=0.3)


_RISES: dict[str, Size] = {
    part: Range(f"rise of the {part.replace('_', ' ')}", "delta_degC", -100.0, 150.0, _RANGE)
    for part in ("case", "shaft", "outer_ring", "inner_ring")
}


@dataclass(frozen=True)
class Warm:
    """Rise of each part above the bench temperature [K], below zero when it is colder.

    Each may be an array of shape (n,); the change is then one too.

    Examples
    --------
    >>> warm = Warm.of(**{
    ...     part: Q(60, "delta_degC") for part in ("case", "shaft", "outer_ring", "inner_ring")
    ... })
    >>> warm.case_k, warm.rollers_k
    (60.0, 60.0)
    """

    case_k: float
    shaft_k: float
    outer_ring_k: float
    inner_ring_k: float

    @classmethod
    @border(**_RISES)
    def of(cls, *, case_k: float, shaft_k: float, outer_ring_k: float, inner_ring_k: float) -> Warm:
        """Build from temperature differences, -100 to 150 K each."""
        return cls(case_k, shaft_k, outer_ring_k, inner_ring_k)

    @property
    def rollers_k(self) -> float:
        """Rolling elements lie between their rings."""
        return (self.outer_ring_k + self.inner_ring_k) / 2


@dataclass(frozen=True)
class Change:
    """Change of the interference [um], part by part; above zero tightens.

    Examples
    --------
    >>> change = support_change(unit.bearings.support_by_id("differential"), unit.bearings)
    >>> change.sentence
    'the pair loosens by 73 µm'
    """

    case_um: float
    shaft_um: float
    outer_raceways_um: float
    inner_raceways_um: float
    rollers_um: float
    ring_widths_um: float

    @property
    def total(self) -> Q:
        """Sum of all parts [um]."""
        return Q(
            self.case_um
            + self.shaft_um
            + self.outer_raceways_um
            + self.inner_raceways_um
            + self.rollers_um
            + self.ring_widths_um,
            "um",
        )

    @property
    def sentence(self) -> str:
        """The finding in one sentence, for a single temperature."""
        total_um = self.total.m_as("um")
        if abs(total_um) < 0.5:
            return "the setting stays as it was within half a micrometre"
        word = "tightens" if total_um > 0 else "loosens"
        return f"the pair {word} by {abs(total_um):.0f} µm"


@dataclass(frozen=True)
class Seats:
    """Materials and fits of a pair's seats.

    ``shim_m`` is the shim with its sign: above zero where a thicker one tightens.
    ``outer_fit_m`` and ``inner_fit_m`` are diametral interferences at the bench [m], below zero
    with play; ``wall_m`` is the case's wall round the outer ring.

    Examples
    --------
    >>> seats = Seats.from_support(unit.bearings.support_by_id("differential"))
    >>> seats.case.name, seats.shaft.name, f"{seats.case_span_m * 1e3:.1f} mm"
    ('cast aluminium', 'carrier of cast iron', '121.2 mm')
    """

    arrangement: Arrangement
    case_span_m: float
    shaft_span_m: float
    shim_m: float
    case: Material
    shaft: Material
    wall_m: float
    outer_fit_m: float = 0.0
    inner_fit_m: float = 0.0
    rings: Material = RING_STEEL

    @classmethod
    @border(shim=Range("shim", "mm", 0.0, 50.0, _RANGE))
    def from_support(cls, support: Support, shim_mm: float | None = None) -> Seats:
        """Take spans, materials and fits from a support of the unit file, with its shim [mm]."""
        return cls(
            arrangement=support.arrangement,
            case_span_m=support.case_span_mm / 1e3,
            shaft_span_m=support.shaft_span_mm / 1e3,
            shim_m=shim_sign(support.arrangement, support.shim_place) * (shim_mm or 0.0) / 1e3,
            case=support.case,
            shaft=support.shaft,
            wall_m=support.case_wall_mm / 1e3,
            outer_fit_m=support.outer_fit_um / 1e6,
            inner_fit_m=support.inner_fit_um / 1e6,
        )


def setting_change(
    seats: Seats, left: Rollers | Balls, right: Rollers | Balls, warm: Warm
) -> Change:
    """Change of a pair's interference from the bench to a running temperature.

    Parameters
    ----------
    seats : Seats
        Spans, materials, fits and arrangement.
    left, right : Rollers or Balls
        The two rows.
    warm : Warm
        Rise of each part.

    Returns
    -------
    Change

    Examples
    --------
    >>> support = unit.bearings.support_by_id("differential")
    >>> left = elements(unit.bearings.set_by_id(support.left))
    >>> right = elements(unit.bearings.set_by_id(support.right))
    >>> even = Warm(case_k=60, shaft_k=60, outer_ring_k=60, inner_ring_k=60)
    >>> setting_change(Seats.from_support(support), left, right, even).sentence
    'the pair loosens by 102 µm'
    """
    outwards = outer_closes(seats.arrangement)
    steel = seats.rings.expansion_per_k
    outer = inner = rollers = widths = 0.0
    for row in (left, right):
        sine, tangent = math.sin(row.angle_rad), math.tan(row.angle_rad)
        outer -= _outer_growth_m(seats, row, warm) / 2 / tangent
        inner += _inner_growth_m(seats, row, warm) / 2 / tangent
        rollers += row.element_m * steel * warm.rollers_k / sine
        # From each ring's seat to the middle of its raceway; both rings' share together is the
        # stand less what the inclined element bridges.
        seat_m = (row.stand_m - row.element_m * sine) / 2
        widths += seat_m * steel * (warm.outer_ring_k + warm.inner_ring_k)
    widths += seats.shim_m * steel * warm.outer_ring_k
    case = outwards * seats.case_span_m * seats.case.expansion_per_k * warm.case_k
    shaft = -outwards * seats.shaft_span_m * seats.shaft.expansion_per_k * warm.shaft_k
    return Change(*(1e6 * part for part in (case, shaft, outer, inner, rollers, widths)))


def support_change(
    support: Support, bearings: Bearings, warm: Warm | None = None, shim: Q | None = None
) -> Change:
    """Change of a support's setting; at its running temperature if ``warm`` is absent, with the
    shim that closes its spans if ``shim`` is.

    Examples
    --------
    >>> main, hub = (unit.bearings.support_by_id(id) for id in ("differential", "practice-hub"))
    >>> bool(support_change(main, unit.bearings).total < 0)  # the case lets its outer rings go
    True
    >>> cold = Warm(case_k=0, shaft_k=0, outer_ring_k=0, inner_ring_k=0)
    >>> support_change(hub, unit.bearings, cold).sentence
    'the setting stays as it was within half a micrometre'
    """
    if warm is None:
        warm = Warm(**support.running.model_dump())
    if shim is None:
        shim = Q(max(0.0, closing_shim_mm(support, bearings)), "mm")
    return setting_change(
        Seats.from_support(support, shim),
        elements(bearings.set_by_id(support.left)),
        elements(bearings.set_by_id(support.right)),
        warm,
    )


def closing_shim_mm(support: Support, bearings: Bearings) -> float:
    """The shim [mm] with which spans and bearings close without play or preload.

    Examples
    --------
    >>> support = unit.bearings.support_by_id("differential")
    >>> f"{closing_shim_mm(support, unit.bearings):.2f} mm"
    '1.10 mm'
    """
    stands = sum(bearings.set_by_id(side).stand_mm for side in (support.left, support.right))
    room = support.case_span_mm - support.shaft_span_mm
    left_open = -outer_closes(support.arrangement) * room - stands
    return shim_sign(support.arrangement, support.shim_place) * left_open


def _outer_growth_m(seats: Seats, row, warm: Warm) -> float:
    """Growth of the outer raceway's diameter [m]: its own, plus what the bore lets go."""
    steel = seats.rings.expansion_per_k
    free = row.outer_raceway_m * steel * warm.outer_ring_k
    let_go = row.outside_m * (seats.case.expansion_per_k * warm.case_k - steel * warm.outer_ring_k)
    wall_outside_m = row.outside_m + 2 * seats.wall_m
    squeeze = _ring_squeeze(
        row.outer_raceway_m, row.outside_m, wall_outside_m, seats.rings, seats.case
    )
    before, after = max(seats.outer_fit_m, 0.0), np.maximum(seats.outer_fit_m - let_go, 0.0)
    return free + squeeze * (before - after)


def _inner_growth_m(seats: Seats, row, warm: Warm) -> float:
    """Growth of the inner raceway's diameter [m]: its own, less what leaves the shaft."""
    steel = seats.rings.expansion_per_k
    free = row.inner_raceway_m * steel * warm.inner_ring_k
    leaves = row.bore_m * (steel * warm.inner_ring_k - seats.shaft.expansion_per_k * warm.shaft_k)
    stretch = _ring_stretch(row.bore_m, row.inner_raceway_m, seats.rings, seats.shaft)
    before, after = max(seats.inner_fit_m, 0.0), np.maximum(seats.inner_fit_m - leaves, 0.0)
    return free - stretch * (before - after)


def _ring_squeeze(inside_m, fit_m, case_m, ring: Material, case: Material) -> float:
    """How much the raceway shrinks per diametral interference of a ring in a case (Lamé)."""
    hub = (case_m**2 + fit_m**2) / (case_m**2 - fit_m**2) + case.poisson
    core = (fit_m**2 + inside_m**2) / (fit_m**2 - inside_m**2) - ring.poisson
    pressure = 1 / (fit_m * (hub / case.elastic_gpa + core / ring.elastic_gpa))
    # Bore of a ring under outside pressure p: 2 p d D^2 / (E (D^2 - d^2)).
    return pressure * 2 * inside_m * fit_m**2 / (fit_m**2 - inside_m**2) / ring.elastic_gpa


def _ring_stretch(fit_m, outside_m, ring: Material, shaft: Material) -> float:
    """How much the raceway grows per diametral interference of a ring on a solid shaft (Lamé)."""
    hub = (outside_m**2 + fit_m**2) / (outside_m**2 - fit_m**2) + ring.poisson
    core = 1 - shaft.poisson
    pressure = 1 / (fit_m * (hub / ring.elastic_gpa + core / shaft.elastic_gpa))
    # Outside of a ring under inside pressure p: 2 p D d^2 / (E (D^2 - d^2)).
    return pressure * 2 * outside_m * fit_m**2 / (outside_m**2 - fit_m**2) / ring.elastic_gpa
