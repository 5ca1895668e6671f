"""What is worked out of readings that are taken before the parts come off."""

from __future__ import annotations

from twoshaft.models.border import Above, Range, border


@border("mm", reading=Above("reading", "mm", zero=True), arm=Above("arm of the dial", "mm"),
        pitch=Above("pitch radius", "mm"))  # fmt: skip
def backlash_at(reading_mm: float, arm_mm: float, pitch_mm: float) -> float:
    """Backlash at the teeth, where the dial stood on an arm of another radius.

    Both turn by the same angle, so travel grows with the radius: plain geometry.

    Parameters
    ----------
    reading : pint.Quantity
        Travel at the dial between both stops [mm].
    arm : pint.Quantity
        Radius at which the dial stands square to the arm [mm].
    pitch : pint.Quantity
        Pitch radius of the gear [mm].

    Returns
    -------
    pint.Quantity
        [mm]

    Examples
    --------
    >>> f"{backlash_at(Q(0.3, 'mm'), Q(120, 'mm'), Q(40, 'mm')):.2f}"
    '0.10 millimeter'
    """
    return reading_mm * pitch_mm / arm_mm


@border("mm", fitted=Above("shim as found", "mm", zero=True),
        play=Above("end float", "mm", zero=True),
        wanted=Range("setting", "mm", -1, 1, "end float above zero, preload below"))  # fmt: skip
def shim_from_float(fitted_mm: float, play_mm: float, wanted_mm: float) -> float:
    """The shim that a setting asks for, from the end float as found and the shim that was in.

    A shim fills what is free: thicker by what is too much. Where the shim takes end float away.

    Parameters
    ----------
    fitted : pint.Quantity
        The shim that was found in place [mm].
    play : pint.Quantity
        End float read before the unit was opened [mm].
    wanted : pint.Quantity
        End float that is wanted; minus for preload [mm].

    Returns
    -------
    pint.Quantity
        [mm]; below zero where no shim gives so much float.

    Examples
    --------
    >>> f"{shim_from_float(Q(1.2, 'mm'), Q(0.18, 'mm'), Q(0.05, 'mm')):.2f}"
    '1.33 millimeter'
    """
    return fitted_mm + play_mm - wanted_mm
