"""Shims of a support in the unit file: its target, its measurement, its choice.

The general functions stand in stack, uncertainty and choice; here they are put to one support.
"""

from __future__ import annotations

from twoshaft.models.border import Range, border
from twoshaft.models.shim.choice import Choice, Reach, choose, reach
from twoshaft.models.shim.stack import Stack
from twoshaft.models.shim.uncertainty import Budget, Measured, propagate, rectangular, resolution
from twoshaft.units.kept import kept
from twoshaft.units.quantities import Q
from twoshaft.units.sections.bearings import Bearings, Support

_WANTED = Range("interference", "mm", -5.0, 5.0, "shim setting")


@kept()
def target_interference(support: Support) -> tuple[Q, Q]:
    """Lowest and highest interference [mm] that meet a support's target; end play turns sign.

    Examples
    --------
    End play of 0.015 to 0.06 mm is an interference below zero.

    >>> hub = unit.bearings.support_by_id("practice-hub")
    >>> [f"{limit.m_as('mm'):g}" for limit in target_interference(hub)]
    ['-0.06', '-0.015']
    """
    low, high = support.target.low_mm, support.target.high_mm
    if support.target.kind == "end-play":
        low, high = -high, -low
    return Q(low, "mm"), Q(high, "mm")


def shim_range(support: Support) -> tuple[tuple[float, float], float]:
    """Shims that a support may need over the tolerances of its stack.

    Returns
    -------
    tuple
        (thinnest, thickest) shim [mm] for the middle of the target with every length at its worst
        limit, and half the width of the target [mm].

    Examples
    --------
    >>> wanted, step = shim_range(unit.bearings.support_by_id("differential"))
    >>> f"{wanted[0]:.2f} to {wanted[1]:.2f} mm"
    '0.90 to 1.42 mm'
    """
    low, high = (limit.m_as("mm") for limit in target_interference(support))
    centre = Stack.from_support(support).shim_for(Q((low + high) / 2, "mm")).m_as("mm")
    spread = sum(term.tolerance_mm for term in support.stack)
    return (centre - spread, centre + spread), (high - low) / 2


@border(interference=_WANTED)
def stack_budget(
    support: Support,
    measured: dict[str, Q] | None = None,
    interference_mm: float | None = None,
) -> Budget:
    """Shim that a support needs [mm], with the uncertainty of its measurement.

    Each length carries its tool's resolution, its repeatability (rectangular) and its calibration
    (rectangular, one error for all lengths taken with the same tool).

    Parameters
    ----------
    support : Support
        From the unit file.
    measured : dict of str to pint.Quantity, optional
        Measured lengths [mm] by term id; nominal where absent.
    interference : pint.Quantity, optional
        Wanted interference [mm]; the middle of the target if absent.

    Examples
    --------
    >>> support = unit.bearings.support_by_id("differential")
    >>> needed = stack_budget(support, interference=Q(0, "mm"))
    >>> by_hand = Stack.from_support(support).shim_for(Q(0, "mm"))
    >>> f"{needed.value - by_hand.m_as('mm'):.3f}", needed.u > 0
    ('0.000', True)
    """
    stack = Stack.from_support(support, measured)
    wanted_mm = interference_mm
    if wanted_mm is None:
        low, high = target_interference(support)
        wanted_mm = _WANTED.plain((low + high) / 2)
    inputs = []
    for term, length in zip(support.stack, stack.terms, strict=True):
        sources = [resolution(f"resolution, {term.name}", term.resolution_mm)]
        if term.repeat_mm:
            sources.append(rectangular(f"repeatability, {term.name}", term.repeat_mm))
        if term.calibration_mm:
            sources.append(rectangular(f"calibration of the {term.tool}", term.calibration_mm))
        inputs.append(Measured(term.name, length.length_mm, tuple(sources)))

    def shim(*lengths):
        bare = sum(term.sign * value for term, value in zip(stack.terms, lengths, strict=True))
        return stack.shim_sign * (wanted_mm - bare)

    return propagate(shim, inputs, "mm")


def choose_for(
    support: Support, bearings: Bearings, measured: dict[str, Q] | None = None
) -> Choice:
    """Choose the shim of a support, guarded by the uncertainty of its measurement (95 %).

    Parameters
    ----------
    support : Support
    bearings : Bearings
        The section that holds the support's shim set.
    measured : dict of str to pint.Quantity, optional
        Measured lengths [mm] by term id; nominal where absent.

    Examples
    --------
    >>> chosen = choose_for(unit.bearings.support_by_id("differential"), unit.bearings)
    >>> f"{chosen.total:.2f}", chosen.verdict
    ('1.15 millimeter', 'safe')
    """
    thin, thick = Stack.from_support(support, measured).window(*target_interference(support))
    shelf = bearings.shim_set_by_id(support.shim_set)
    return choose(
        Q(list(shelf.thicknesses_mm), "mm"),
        (Q(thin, "mm"), Q(thick, "mm")),
        Q(stack_budget(support, measured).expanded(), "mm"),
        shelf.at_most,
    )


def reach_of(support: Support, bearings: Bearings, *, guarded: bool = False) -> Reach:
    """Tell whether a support's shim set reaches the target over the tolerances of its stack.

    Parameters
    ----------
    support : Support
    bearings : Bearings
    guarded : bool
        Whether the uncertainty of the measurement is taken off the target first.

    Examples
    --------
    >>> reach_of(unit.bearings.support_by_id("differential"), unit.bearings).sentence
    'the shim set reaches the target over the whole tolerance range'
    """
    (thin, thick), half = shim_range(support)
    shelf = bearings.shim_set_by_id(support.shim_set)
    guard = Q(stack_budget(support).expanded(), "mm") if guarded else None
    return reach(
        Q(list(shelf.thicknesses_mm), "mm"),
        (Q(thin, "mm"), Q(thick, "mm")),
        Q(half, "mm"),
        guard,
        shelf.at_most,
    )
