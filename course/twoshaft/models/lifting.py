"""How heavy a load two hands may lift: the revised NIOSH lifting equation.

The limit is a load constant times six multipliers, each 1 where lifting is easiest. The lifting
index is the load over the limit; above 1 the risk of a back injury rises, above 3 it is high.

Source: NIOSH publication 94-110, Applications Manual for the Revised NIOSH Lifting Equation.
The form of the equation, the load constant and the frequency table are seen in publications that
quote it; the four formulas and the grip table are quoted from memory.

The equation is for smooth two-handed lifts by a standing person on a floor that does not slip. It
is not for one-handed lifts, for lifts while sitting or kneeling, for hot or unstable loads, or for
pushing and pulling. It says what is reasonable for most healthy workers, not what is safe for you.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any, Protocol

from twoshaft.models.border import Above, Range, border
from twoshaft.units.quantities import Q

SOURCE = "NIOSH 94-110"
LOAD_CONSTANT_KG = 23.0
EASIEST_REACH_CM, LONGEST_REACH_CM = 25.0, 63.0
EASIEST_HEIGHT_CM, HIGHEST_CM = 75.0, 175.0
SHORTEST_TRAVEL_CM = 25.0
WIDEST_TWIST_DEG = 135.0
RAISED, HIGH = 1.0, 3.0
"""Lifting indices above which the risk is raised and high."""

FREQUENCY = {0.2: 1.0, 0.5: 0.97, 1.0: 0.94, 2.0: 0.91, 3.0: 0.88, 4.0: 0.84, 5.0: 0.80}
"""Multiplier by lifts a minute, for work of at most an hour followed by a rest."""

GRIP = {"good": (1.0, 1.0), "fair": (0.95, 1.0), "poor": (0.90, 0.90)}
"""Multiplier by grip, with the hands below 75 cm and from there up."""
HEIGHT = Range("height", "cm", 0.0, HIGHEST_CM, SOURCE)
MULTIPLIER = Range("multiplier", "", 0.0, 1.0, SOURCE, above_zero=True)


@border(reach=Range("reach", "cm", 0.0, LONGEST_REACH_CM, SOURCE, above_zero=True))
def reach_multiplier(reach_cm: float) -> float:
    """How much of the limit is left when the load is held away from the ankles.

    Parameters
    ----------
    reach : length
        From the middle between the ankles to the hands, seen from above [cm], above 0 and at
        most 63 cm. Nearer than 25 cm counts as 25 cm.

    Returns
    -------
    float

    Raises
    ------
    OutOfRangeError
        When the load is out of reach: no limit is given there.

    Examples
    --------
    The table printed with the equation gives 0.63 for 40 cm (from memory).

    >>> f"{reach_multiplier(Q(40, 'cm')):.3f}", f"{reach_multiplier(Q(20, 'cm')):.3f}"
    ('0.625', '1.000')
    """
    return EASIEST_REACH_CM / max(reach_cm, EASIEST_REACH_CM)


@border(height=HEIGHT)
def height_multiplier(height_cm: float) -> float:
    """How much of the limit is left when the hands start below or above knuckle height.

    Parameters
    ----------
    height : length
        Of the hands above the floor [cm], 0 to 175 cm.

    Returns
    -------
    float

    Raises
    ------
    OutOfRangeError

    Examples
    --------
    >>> f"{height_multiplier(Q(75, 'cm')):.3f}", f"{height_multiplier(Q(0, 'cm')):.3f}"
    ('1.000', '0.775')
    """
    return 1.0 - 0.003 * abs(height_cm - EASIEST_HEIGHT_CM)


@border(travel=Range("travel", "cm", 0.0, HIGHEST_CM, SOURCE))
def travel_multiplier(travel_cm: float) -> float:
    """How much of the limit is left when the load is moved far up or down.

    Parameters
    ----------
    travel : length
        Vertical way of the hands [cm], 0 to 175 cm. Less than 25 cm counts as 25 cm.

    Returns
    -------
    float

    Raises
    ------
    OutOfRangeError

    Examples
    --------
    >>> f"{travel_multiplier(Q(25, 'cm')):.2f}", f"{travel_multiplier(Q(100, 'cm')):.3f}"
    ('1.00', '0.865')
    """
    return 0.82 + 4.5 / max(travel_cm, SHORTEST_TRAVEL_CM)


@border(twist=Range("twist", "degree", 0.0, WIDEST_TWIST_DEG, SOURCE))
def twist_multiplier(twist_deg: float) -> float:
    """How much of the limit is left when the body is turned.

    Parameters
    ----------
    twist : angle
        Between straight ahead and the load [degree], 0 to 135.

    Returns
    -------
    float

    Raises
    ------
    OutOfRangeError

    Examples
    --------
    >>> twist_multiplier(Q(0, "deg")), f"{twist_multiplier(Q(45, 'deg')):.3f}"
    (1.0, '0.856')
    """
    return 1.0 - 0.0032 * twist_deg


@border(per_minute=Range("lifts a minute", "", 0.0, max(FREQUENCY), SOURCE))
def frequency_multiplier(per_minute: float) -> float:
    """How much of the limit is left when the lift is repeated, for an hour at most.

    Parameters
    ----------
    per_minute : float
        Lifts a minute, 0 to 5. Between the table's rows the next higher row counts.

    Returns
    -------
    float

    Raises
    ------
    OutOfRangeError

    Examples
    --------
    >>> frequency_multiplier(0.2), frequency_multiplier(1.5)
    (1.0, 0.91)
    """
    return FREQUENCY[next(row for row in FREQUENCY if per_minute <= row)]


@border(height=HEIGHT)
def grip_multiplier(grip: str, height_cm: float) -> float:
    """How much of the limit is left with a given grip.

    Parameters
    ----------
    grip : str
        ``good`` (handles), ``fair`` (fingers bent right round an edge) or ``poor`` (smooth, oiled
        or sharp).
    height : length
        Of the hands above the floor [cm], 0 to 175 cm.

    Returns
    -------
    float

    Raises
    ------
    OutOfRangeError
    ValueError
        When the grip is none of the three.

    Examples
    --------
    >>> grip_multiplier("fair", Q(20, "cm")), grip_multiplier("fair", Q(80, "cm"))
    (0.95, 1.0)
    """
    if grip not in GRIP:
        raise ValueError(f"the grip is {grip!r}; use one of {', '.join(GRIP)}")
    return GRIP[grip][height_cm >= EASIEST_HEIGHT_CM]


def plain_limit_kg(sizes: Mapping[str, Any], grip: float | None = None) -> float:
    """The limit from plain figures, for searches through many lifts; nothing is checked.

    Parameters
    ----------
    sizes : mapping
        As for :meth:`Lift.measured`, within the equation's validity.
    grip : float, optional
        Taken in place of the one that the grip and the height give.

    Returns
    -------
    float
        [kg]

    Examples
    --------
    >>> sizes = {"reach_cm": 40, "height_cm": 20, "travel_cm": 60, "twist_deg": 0}
    >>> sizes |= {"per_minute": 0.2, "grip": "fair"}
    >>> f"{plain_limit_kg(sizes):.1f} kg"
    '10.2 kg'
    """
    if grip is None:
        grip = grip_multiplier.plain(sizes["grip"], sizes["height_cm"])
    return (
        LOAD_CONSTANT_KG
        * reach_multiplier.plain(sizes["reach_cm"])
        * height_multiplier.plain(sizes["height_cm"])
        * travel_multiplier.plain(sizes["travel_cm"])
        * twist_multiplier.plain(sizes["twist_deg"])
        * frequency_multiplier.plain(sizes["per_minute"])
        * grip
    )


def weight_limit(*multipliers: float) -> Q:
    """The recommended weight limit.

    Parameters
    ----------
    *multipliers : float
        Each above 0 and at most 1.

    Returns
    -------
    mass
        [kg]

    Raises
    ------
    OutOfRangeError

    Examples
    --------
    >>> f"{weight_limit(0.625, 0.91):.2f}"  # 23 kg times both
    '13.08 kilogram'
    """
    limit_kg = LOAD_CONSTANT_KG
    for multiplier in multipliers:
        limit_kg *= MULTIPLIER.plain(multiplier)
    return Q(limit_kg, "kg")


@border(load=Above("load", "kg"), limit=Above("limit", "kg"))
def lifting_index(load_kg: float, limit_kg: float) -> float:
    """The load as a multiple of the limit.

    Parameters
    ----------
    load, limit : mass
        [kg], above zero.

    Returns
    -------
    float

    Raises
    ------
    OutOfRangeError

    Examples
    --------
    >>> lifting_index(Q(18, "kg"), Q(12, "kg"))
    1.5
    """
    return load_kg / limit_kg


@border(index=Above("lifting index"))
def risk(index: float) -> str:
    """Say what an index means: ``low``, ``raised`` or ``high``.

    Parameters
    ----------
    index : float
        Above zero.

    Returns
    -------
    str

    Raises
    ------
    OutOfRangeError

    Examples
    --------
    >>> risk(0.8), risk(1.5), risk(3.2)
    ('low', 'raised', 'high')
    """
    return "low" if index <= RAISED else "raised" if index <= HIGH else "high"


@dataclass(frozen=True)
class Lift:
    """One lift, as it is measured.

    Attributes
    ----------
    reach, height, travel : length
        [cm]; see the multipliers.
    twist : angle
        [degree]
    per_minute : float
    grip : str

    Examples
    --------
    >>> lift = Lift(Q(40, "cm"), Q(20, "cm"), Q(60, "cm"), Q(0, "deg"))
    >>> f"{lift.limit():.1f}"
    '10.2 kilogram'
    >>> min(lift.multipliers().items(), key=lambda one: one[1])[0]
    'reach'
    """

    reach: Q
    height: Q
    travel: Q
    twist: Q
    per_minute: float = 0.2
    grip: str = "fair"

    @classmethod
    def measured(cls, sizes: Mapping[str, Any]) -> Lift:
        """From plain figures: ``reach_cm``, ``height_cm``, ``travel_cm``, ``twist_deg``, …"""
        return cls(
            Q(sizes["reach_cm"], "cm"),
            Q(sizes["height_cm"], "cm"),
            Q(sizes["travel_cm"], "cm"),
            Q(sizes["twist_deg"], "degree"),
            sizes.get("per_minute", 0.2),
            sizes.get("grip", "fair"),
        )

    def multipliers(self) -> dict[str, float]:
        """The six multipliers, by name, in the order of the equation."""
        return {
            "reach": reach_multiplier(self.reach),
            "height": height_multiplier(self.height),
            "travel": travel_multiplier(self.travel),
            "twist": twist_multiplier(self.twist),
            "frequency": frequency_multiplier(self.per_minute),
            "grip": grip_multiplier(self.grip, self.height),
        }

    def limit(self) -> Q:
        """The recommended weight limit [kg]."""
        return weight_limit(*self.multipliers().values())


ASIDE_CM = 2.0
"""So near the line below the hook a centre of mass may lie (common practice, no source)."""


@dataclass(frozen=True)
class Hung:
    """A case on a hoist, just off its trolley or with a person beneath.

    ``mark_kg`` is marked on its sling, of which ``broken`` strands stand out; its centre of mass
    lies ``aside_cm`` from the line below the hook, below zero to the left.

    Examples
    --------
    >>> hung_faults(Hung(mass_kg=30, mark_kg=50, broken=0, aside_cm=1, person=False))
    ()
    """

    mass_kg: float
    mark_kg: float
    broken: int
    aside_cm: float
    person: bool


class HungLike(Protocol):
    """What tells of a case on a hoist, as ``Hung`` does.

    Examples
    --------
    >>> HungLike.__name__
    'HungLike'
    """

    @property
    def mass_kg(self) -> float:
        """Of the case."""

    @property
    def mark_kg(self) -> float:
        """What the sling is marked for."""

    @property
    def broken(self) -> int:
        """How many of its strands are broken."""

    @property
    def aside_cm(self) -> float:
        """How far the centre of mass lies from the line below the hook."""

    @property
    def person(self) -> bool:
        """Whether somebody is beneath."""


def hung_faults(hung: HungLike) -> tuple[str, ...]:
    """Give what is wrong with a case on a hoist: ``sling``, ``place``, both or nothing.

    The sling is marked for the load and whole, the hook is above the centre of mass, and nobody is
    beneath (29 CFR 1910.184 from memory; common practice, no source).

    Examples
    --------
    >>> hung_faults(Hung(mass_kg=30, mark_kg=25, broken=0, aside_cm=-12, person=False))
    ('sling', 'place')
    """
    sling = hung.mark_kg < hung.mass_kg or hung.broken > 0
    place = abs(hung.aside_cm) > ASIDE_CM or hung.person
    return ("sling",) * sling + ("place",) * place
