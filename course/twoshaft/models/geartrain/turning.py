"""Counting turns by hand: input turns against output turns, and what the count can tell."""

from __future__ import annotations

import math
from dataclasses import dataclass
from fractions import Fraction
from itertools import combinations
from typing import Final, Literal, get_args

from twoshaft.errors import OutOfRangeError
from twoshaft.models.border import Above, border
from twoshaft.models.geartrain.motion import ratio, turns
from twoshaft.units.sections.geartrain import GearTrain

OUTPUT_SHAFT: Final = "the output shaft"
Counted = Literal["one output, the other held", "both outputs, averaged", "the output shaft"]
"""How turns are counted: the last one where there is no differential, the others where there is."""


@dataclass(frozen=True)
class Count:
    """Input turns for a number of output turns.

    Attributes
    ----------
    exact : Fraction
        Signed input turns.
    seen : float
        What is read with the least count, with the same sign.
    same_way : bool
        Whether input and output turn the same way.

    Examples
    --------
    >>> count = count_turns(unit.gear_train, "first", 2, "one output, the other held")
    >>> count.seen, count.same_way
    (14.625, True)
    """

    exact: Fraction
    seen: float
    same_way: bool


_STEP = Above("least count")


def ways_of_counting(train: GearTrain) -> tuple[Counted, ...]:
    """How turns can be counted on a unit: with a differential, with one output held or both free.

    Examples
    --------
    >>> ways_of_counting(unit.gear_train)
    ('one output, the other held', 'both outputs, averaged')
    """
    if train.differential is None:
        return (OUTPUT_SHAFT,)
    return ("one output, the other held", "both outputs, averaged")


@border(output_turns=Above("output turns"), least_count=_STEP)
def count_turns(
    train: GearTrain,
    gear: str,
    output_turns: float,
    counted: Counted,
    least_count: float | None = None,
) -> Count:
    """Input turns to count for a number of output turns.

    With one output held, the other one turns twice for each turn of the ring gear; with both
    free, only their average is decided, and it equals the ring gear's turns.

    Parameters
    ----------
    train : GearTrain
    gear : str
        Gear engaged.
    output_turns : float
        Turns of the output that is counted, or the average of both [turns].
    counted : {"one output, the other held", "both outputs, averaged", "the output shaft"}
    least_count : float, optional
        Smallest part of a turn that is read [turns]; the unit's own when left out.

    Raises
    ------
    OutOfRangeError
        Turns or least count not above zero, an unknown gear or way of counting.

    Examples
    --------
    First gear is 14.66 to one; with one output held the case turns half as often as the other.

    >>> train = unit.gear_train
    >>> count_turns(train, "first", 2, "both outputs, averaged").seen  # read to an eighth
    29.375
    >>> count_turns(train, "first", 2, "one output, the other held").seen
    14.625
    """
    step = train.least_count_turns if least_count is None else least_count
    if counted == "one output, the other held":
        bevel = train.needed_differential()
        driven = turns(train, (gear,), held=(bevel.right,))[bevel.left]
        per_input = Fraction(0) if driven is None else driven
    elif counted in ("both outputs, averaged", OUTPUT_SHAFT):
        per_input = 1 / ratio(train, gear)
    else:
        raise OutOfRangeError(
            "way of counting", str(counted), " or ".join(get_args(Counted)), "course"
        )
    exact = Fraction(output_turns).limit_denominator(10**6) / per_input
    seen = math.copysign(math.floor(abs(float(exact)) / step + 0.5) * step, exact)
    return Count(exact, seen, exact > 0)


@border(least_count=_STEP)
def tells_apart(
    train: GearTrain, one: str, other: str, counted: Counted, least_count: float | None = None
) -> float:
    """Fewest whole output turns for which the counts of two gears differ by two least counts.

    Each count may be off by half a least count either way; with two between them they cannot
    be taken for each other. Infinite when the ratios are equal and of the same sign.

    Parameters
    ----------
    train, one, other, counted, least_count
        As for :func:`count_turns`.

    Examples
    --------
    >>> train = unit.gear_train
    >>> tells_apart(train, "first", "second", "both outputs, averaged")
    1.0
    """
    step = train.least_count_turns if least_count is None else least_count
    a = count_turns.plain(train, one, 1, counted, step).exact
    b = count_turns.plain(train, other, 1, counted, step).exact
    return fewest_turns.plain(a, b, step)


@border(least_count=_STEP)
def fewest_turns(one: Fraction, other: Fraction, least_count: float) -> float:
    """Fewest whole output turns for which two counts differ by two least counts.

    Parameters
    ----------
    one, other : Fraction
        Signed input turns for one output turn.
    least_count : float
        Smallest part of a turn that is read [turns].

    Examples
    --------
    >>> fewest_turns(Fraction(3), Fraction(7, 2), 0.125)
    1.0
    """
    if (one > 0) != (other > 0):
        return 1.0
    gap = abs(float(one - other))
    return math.inf if gap == 0 else float(max(1, math.ceil(2 * least_count / gap - 1e-12)))


@border(least_count=_STEP)
def mistaken(
    train: GearTrain, output_turns: float, counted: Counted, least_count: float | None = None
) -> tuple[tuple[str, str], ...]:
    """Pairs of gears that a count over some output turns cannot tell apart.

    Parameters
    ----------
    train, output_turns, counted, least_count
        As for :func:`count_turns`.

    Examples
    --------
    >>> train = unit.gear_train
    >>> mistaken(train, 1, "one output, the other held", 0.5)
    (('third', 'fourth'), ('fourth', 'fifth'))
    """
    step = train.least_count_turns if least_count is None else least_count
    exact = {
        gear.id: count_turns.plain(train, gear.id, 1, counted, step).exact for gear in train.gears
    }
    return tuple(
        (one, other)
        for one, other in combinations(exact, 2)
        if fewest_turns.plain(exact[one], exact[other], step) > output_turns
    )


def with_wheel(train: GearTrain, mesh: str, side: Literal["driving", "driven"], teeth: int):
    """The same gear train with another wheel in one mesh.

    Parameters
    ----------
    train : GearTrain
    mesh : str
        Mesh id.
    side : {"driving", "driven"}
    teeth : int
        Teeth of the wheel that is fitted.

    Returns
    -------
    GearTrain

    Raises
    ------
    OutOfRangeError
        A mesh that the unit does not have.

    Examples
    --------
    >>> train = unit.gear_train
    >>> other = with_wheel(train, "mesh-first", "driven", 46)
    >>> ratio(other, "first") / ratio(train, "first")
    Fraction(46, 47)
    """
    if mesh not in [one.id for one in train.meshes]:
        raise OutOfRangeError("mesh", mesh, ", ".join(m.id for m in train.meshes), "the unit file")
    meshes = []
    for one in train.meshes:
        if one.id == mesh:
            gear = getattr(one, side).model_copy(update={"teeth": teeth})
            one = one.model_copy(update={side: gear})
        meshes.append(one)
    return train.model_copy(update={"meshes": tuple(meshes)})


def nearest_gear(
    train: GearTrain, input_turns: float, output_turns: float, counted: Counted
) -> str:
    """Gear whose count comes closest to what was counted.

    Parameters
    ----------
    train : GearTrain
    input_turns : float
        Turns of the input, minus when it turned the other way than the output.
    output_turns, counted
        As for :func:`count_turns`.

    Returns
    -------
    str
        Gear id.

    Examples
    --------
    >>> train = unit.gear_train
    >>> nearest_gear(train, 8.3, 1, "both outputs, averaged")  # 43/21 times 73/18 is 8.30
    'second'
    """
    return min(
        (gear.id for gear in train.gears),
        key=lambda gear: abs(
            float(count_turns(train, gear, output_turns, counted).exact) - input_turns
        ),
    )
