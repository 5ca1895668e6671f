"""Life of bearings against their setting.

Two views. The catalogue's (ISO 281): a radial and an axial load make an equivalent load by e and
Y, and below the internal thrust a preload costs nothing. The load zone's: rollers share the load
by their approach, so that end play crowds it on few of them; life then has a best setting, and
falls on both sides of it.

Sources: ISO 281 (L10 = (C/P)^p, p = 3 for balls and 10/3 for rollers; for taper rollers e = 1.5
tan a, X = 0.4, Y = 0.4 cot a). Load distribution by Sjoevall's integrals as tabled in NSK
catalogue E728g sec. 5. System life by the Weibull product with slope 9/8 for rollers and 10/9 for
balls; internal thrust Fr/(2 Y) (from memory).
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from functools import cache

import numpy as np

from twoshaft.models.bearing.geometry import Balls, Rollers
from twoshaft.models.bearing.pair import Pair
from twoshaft.models.border import Depends, Range, border
from twoshaft.models.validity import in_range
from twoshaft.units.quantities import Q

_ISO = "ISO 281"
_ZONES = np.geomspace(0.01, 200.0, 400)
# Elements' life averages their loads to this power (inner ring turning).
_MEAN_POWER = {Rollers: 4.0, Balls: 3.0}
_WEIBULL = {Rollers: 9 / 8, Balls: 10 / 9}


def limit_ratio(row: Rollers) -> float:
    """Ratio e of axial to radial load below which the axial load does not count (ISO 281).

    Examples
    --------
    >>> f"{limit_ratio(Rollers.of(angle=Q(15, 'deg'), count=16, length=Q(12, 'mm'))):.2f}"
    '0.40'
    """
    return 1.5 * math.tan(row.angle_rad)


def axial_factor(row: Rollers) -> float:
    """Factor Y of the axial load (ISO 281).

    Examples
    --------
    >>> f"{axial_factor(Rollers.of(angle=Q(15, 'deg'), count=16, length=Q(12, 'mm'))):.2f}"
    '1.49'
    """
    return 0.4 / math.tan(row.angle_rad)


@dataclass(frozen=True)
class Zone:
    """How one row shares its load, over a range of settings; arrays of shape (n,).

    ``share`` is the loaded part of the raceway's diameter (0.5: half the row, above 1: all of it).

    Examples
    --------
    >>> row = Rollers.of(angle=Q(15, "deg"), count=16, length=Q(12, "mm"))
    >>> zone = load_zone(row, Q(4, "kN"))
    >>> f"{np.interp(0.5, zone.share, zone.most_loaded_n):.0f} N"  # half the row carries
    '1057 N'
    """

    share: np.ndarray
    axial_shift_m: np.ndarray
    axial_n: np.ndarray
    most_loaded_n: np.ndarray
    equivalent_n: np.ndarray


@border(radial=Depends("N", lambda row: Range("radial load", "N", 1e-3, row.capacity_n, row.name)))
def load_zone(row: Rollers | Balls, radial_n: float) -> Zone:
    """Load distribution of a row under a radial load, for every axial shift of its rings.

    Parameters
    ----------
    row : Rollers or Balls
    radial : pint.Quantity
        Above 0 N, up to the dynamic rating.

    Returns
    -------
    Zone
        From a narrow zone (end play) to the whole row (preload). The equivalent load is the
        radial load times the mean element load over that of a half-loaded row, for which the
        dynamic rating is defined.

    Examples
    --------
    >>> row = Rollers.of(angle=Q(15, "deg"), count=16, length=Q(12, "mm"))
    >>> zone = load_zone(row, Q(4, "kN"))
    >>> most_n = np.interp([0.1, 0.5, 1.0], zone.share, zone.most_loaded_n)
    >>> [f"{one:.0f} N" for one in most_n]  # play leaves few rollers to carry
    ['2048 N', '1057 N', '1026 N']
    """
    radial_share, axial_share, mean_share = _shares(row.power, _MEAN_POWER[type(row)])
    most_n = radial_n / (row.count * math.cos(row.angle_rad) * radial_share)
    approach_m = row.element_spring * most_n**row.power
    radial_shift_m = approach_m / (2 * _ZONES * math.cos(row.angle_rad))
    tangent = math.tan(row.angle_rad)
    mean_n = most_n * mean_share
    return Zone(
        share=_ZONES,
        axial_shift_m=(2 * _ZONES - 1) * radial_shift_m / tangent,
        axial_n=radial_n * tangent * axial_share / radial_share,
        most_loaded_n=most_n,
        equivalent_n=radial_n * mean_n / np.interp(0.5, _ZONES, mean_n),
    )


@dataclass(frozen=True)
class LifeCurve:
    """Life over settings; arrays of shape (n,).

    ``left_h``, ``right_h`` and ``both_h`` follow the load zone; ``catalogue_h`` is the pair's life
    by ISO 281 with e and Y (None for balls).

    Examples
    --------
    >>> support = unit.bearings.support_by_id("differential")
    >>> pair = Pair.from_support(support, unit.bearings)
    >>> settings = Q(np.linspace(-0.1, 0.1, 41), "mm")
    >>> loads = (Q(3, "kN"), Q(3, "kN"))
    >>> life_against_setting(pair, settings, loads, Q(0, "N"), Q(900, "rpm")).sentence
    'the pair lasts longest, 78,342 h, with 0.025 mm of preload'
    """

    interference_mm: np.ndarray
    left_h: np.ndarray
    right_h: np.ndarray
    both_h: np.ndarray
    catalogue_h: np.ndarray | None

    @property
    def best_mm(self) -> float:
        """Setting with the longest life of the pair [mm]."""
        return float(self.interference_mm[np.argmax(self.both_h)])

    @property
    def sentence(self) -> str:
        """The finding in one sentence."""
        best = self.best_mm
        word = "preload" if best >= 0 else "end play"
        return (
            f"the pair lasts longest, {self.both_h.max():,.0f} h, with {abs(best):.3f} mm of {word}"
        )


@border(
    interference=Range("interference", "mm", -2.0, 0.5, _ISO),
    axial=Range("axial load", "N", -1e6, 1e6, _ISO),
    speed=Range("speed", "rpm", 1e-3, 20000.0, _ISO),
)
def life_against_setting(
    pair: Pair,
    interference_mm: np.ndarray,
    radial: tuple[Q, Q],
    axial_n: float,
    speed_rpm: float,
) -> LifeCurve:
    """Life of both bearings of a pair, and of the pair, over settings.

    Parameters
    ----------
    pair : Pair
    interference : pint.Quantity
        Settings [mm], shape (n,), -2 to 0.5 mm.
    radial : tuple of pint.Quantity
        Radial loads of the left and right bearing, above 0 N.
    axial : pint.Quantity
        Load on the shaft towards the right [N]; below zero towards the left.
    speed : pint.Quantity
        Above 0 rpm.

    Notes
    -----
    Beyond half the dynamic rating ISO 281 no longer holds: such a life is an extrapolation, shown
    to say how fast it falls.

    Raises
    ------
    OutOfRangeError
        Also if a setting loads a row beyond its dynamic rating.

    Examples
    --------
    >>> support = unit.bearings.support_by_id("differential")
    >>> pair, settings = Pair.from_support(support, unit.bearings), Q([-0.1, 0.1], "mm")
    >>> life = life_against_setting(pair, settings, (Q(3, "kN"),) * 2, Q(0, "N"), Q(900, "rpm"))
    >>> [f"{hours:,.0f} h" for hours in life.both_h]
    ['21,682 h', '6,281 h']
    """
    setting_m = np.atleast_1d(interference_mm) / 1e3
    rows = (pair.left, pair.right)
    zones = [load_zone(row, load) for row, load in zip(rows, radial, strict=True)]
    sides = [zone.axial_shift_m + zone.axial_n / (2 * pair.case_n_per_m) for zone in zones]
    left_shift = _balance(sides, zones, setting_m, axial_n)
    shifts = (left_shift, setting_m - left_shift)
    lives = []
    for row, zone, side, shift in zip(rows, zones, sides, shifts, strict=True):
        load_n = np.interp(shift, side, zone.equivalent_n)
        _refuse_overload(row, np.interp(shift, side, zone.axial_n))
        lives.append(life_h(row, load_n, speed_rpm))
    catalogue = None
    if all(isinstance(row, Rollers) for row in rows):
        catalogue = _catalogue_h(pair, setting_m, radial, axial_n, speed_rpm)
    return LifeCurve(setting_m * 1e3, lives[0], lives[1], _together(rows, lives), catalogue)


def internal_thrust_n(row: Rollers, radial_n):
    """Axial load [N] that a radial load [N] makes in a taper roller bearing by itself.

    Examples
    --------
    >>> row = Rollers.of(angle=Q(15, "deg"), count=16, length=Q(12, "mm"))
    >>> f"{internal_thrust_n(row, 3000.0):.0f} N"
    '1005 N'
    """
    return radial_n / (2 * axial_factor(row))


def _catalogue_h(pair, setting_m, radial, axial_n, speed_rpm):
    rows = (pair.left, pair.right)
    radials = [load.m_as("N") for load in radial]
    left_n, _ = pair.loads_n(setting_m, axial_n)
    # No row carries less than its own thrust, nor less than the other's thrust pushes back.
    left_n = np.maximum(left_n, internal_thrust_n(pair.left, radials[0]))
    left_n = np.maximum(left_n, internal_thrust_n(pair.right, radials[1]) - axial_n)
    loads = [
        equivalent_n(row, radial_n, load_n)
        for row, radial_n, load_n in zip(rows, radials, (left_n, left_n + axial_n), strict=True)
    ]
    return _together(
        rows, [life_h(row, load, speed_rpm) for row, load in zip(rows, loads, strict=True)]
    )


def equivalent_n(row: Rollers, radial_n, axial_n):
    """Equivalent load [N] of a taper roller bearing (ISO 281), any shape.

    Examples
    --------
    >>> row = Rollers.of(angle=Q(15, "deg"), count=16, length=Q(12, "mm"))
    >>> equivalent_n(row, 3000.0, 500.0), f"{equivalent_n(row, 3000.0, 3000.0):.0f}"
    (3000.0, '5678')
    """
    counts = axial_n > limit_ratio(row) * np.asarray(radial_n)
    load_n = np.where(counts, 0.4 * radial_n + axial_factor(row) * axial_n, radial_n)
    return float(load_n) if load_n.ndim == 0 else load_n


def life_h(row, load_n, speed_rpm):
    """Life [h] that nine in ten bearings reach under an equivalent load [N], any shape.

    Examples
    --------
    >>> row = Rollers.of(angle=Q(15, "deg"), count=16, length=Q(12, "mm"), rating=Q(40, "kN"))
    >>> f"{life_h(row, 4000.0, 1000.0):,.0f} h"
    '35,907 h'
    """
    return 1e6 / (60 * speed_rpm) * (row.capacity_n / load_n) ** row.life_power


def _together(rows, lives):
    """Life of two bearings that must both last: the Weibull product."""
    slope = _WEIBULL[type(rows[0])]
    return sum(life**-slope for life in lives) ** (-1 / slope)


def _balance(sides, zones, setting_m, axial_n):
    """Shift of the left row [m] at which the shaft is in balance; bisection, shape (n,)."""
    low = np.full_like(setting_m, sides[0][0])
    high = np.full_like(setting_m, sides[0][-1])
    for _ in range(60):
        middle = (low + high) / 2
        push = np.interp(setting_m - middle, sides[1], zones[1].axial_n)
        back = np.interp(middle, sides[0], zones[0].axial_n)
        more = push - back > axial_n
        low, high = np.where(more, middle, low), np.where(more, high, middle)
    return (low + high) / 2


def _refuse_overload(row, axial_n) -> None:
    worst = float(np.max(axial_n))
    in_range("axial load of the setting", Q(worst, "N"), 0.0, row.capacity_n, "N", row.name)


@cache
def _shares(power: float, mean_power: float) -> tuple[np.ndarray, np.ndarray, np.ndarray]:
    """Sjoevall's radial and axial integrals and the mean load, over the zones, shape (400,)."""
    load_power = 1 / power
    edge = np.where(_ZONES < 1, np.arccos(1 - 2 * np.minimum(_ZONES, 1.0)), np.pi)
    steps = (np.arange(720) + 0.5) / 720
    angle = edge[:, None] * steps
    ratio = np.maximum(1 - (1 - np.cos(angle)) / (2 * _ZONES[:, None]), 0.0) ** load_power
    weight = edge / np.pi / 720
    radial = (ratio * np.cos(angle)).sum(axis=1) * weight
    axial = ratio.sum(axis=1) * weight
    mean = ((ratio**mean_power).sum(axis=1) * weight) ** (1 / mean_power)
    return radial, axial, mean
