"""What wear comes to, from readings: groove, needles, end float with another circlip."""

from __future__ import annotations

from twoshaft.models.border import Above, border


@border("mm", beside=Above("diameter beside the groove", "mm"),
        groove=Above("diameter in the groove", "mm"))  # fmt: skip
def groove_depth(beside_mm: float, groove_mm: float) -> float:
    """Depth of a groove on the radius: half of what the diameter lost.

    Parameters
    ----------
    beside, groove : pint.Quantity
        Diameters [mm].

    Returns
    -------
    pint.Quantity
        [mm]; plain geometry.

    Examples
    --------
    >>> f"{groove_depth(Q(38, 'mm'), Q(37.9, 'mm')):.2f}"
    '0.05 millimeter'
    """
    return (beside_mm - groove_mm) / 2


@border("mm", bore=Above("bore", "mm"), shaft=Above("shaft", "mm"), needle=Above("needle", "mm"))
def needle_play(bore_mm: float, shaft_mm: float, needle_mm: float) -> float:
    """Play of a gear on its needles, on the diameter: a needle stands on either side.

    Parameters
    ----------
    bore, shaft, needle : pint.Quantity
        Diameters [mm].

    Returns
    -------
    pint.Quantity
        [mm]; below zero where it does not go on.

    Examples
    --------
    >>> f"{needle_play(Q(38.03, 'mm'), Q(32, 'mm'), Q(3, 'mm')):.2f}"
    '0.03 millimeter'
    """
    return bore_mm - shaft_mm - 2 * needle_mm


@border("mm", play=Above("end float", "mm", zero=True), fitted=Above("circlip found", "mm"),
        other=Above("other circlip", "mm"))  # fmt: skip
def float_with(play_mm: float, fitted_mm: float, other_mm: float) -> float:
    """End float with another circlip: thicker takes away what it is thicker by.

    Parameters
    ----------
    play : pint.Quantity
        End float as found [mm].
    fitted, other : pint.Quantity
        Thickness of the circlip that was in, and of the other one [mm].

    Returns
    -------
    pint.Quantity
        [mm]; below zero where it does not go in.

    Examples
    --------
    >>> f"{float_with(Q(0.35, 'mm'), Q(1.9, 'mm'), Q(2.05, 'mm')):.2f}"
    '0.20 millimeter'
    """
    return play_mm - (other_mm - fitted_mm)
