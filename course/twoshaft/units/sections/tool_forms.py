"""What forms the tools of a workshop have: how the bench draws them and where it sets them."""

from __future__ import annotations

from enum import StrEnum


class ToolForm(StrEnum):
    """The form of a tool."""

    DIAL = "dial-indicator"
    DEPTH = "depth-gauge"
    STRAIGHTEDGE = "straightedge"
    FEELER = "feeler"
    SCALE = "spring-scale"
    WRENCH = "torque-wrench"
    DRIVER = "driver"
    SLEEVE = "sleeve"
    INSTALLER = "installer"
    PRESS = "press"
    PUNCH = "punch"
    HAMMER = "hammer"
    OTHER = "other"
    """Of no form that is drawn: an oven, a wash bench, pliers."""


_WORDS = (
    (ToolForm.DIAL, ("dial",)),
    (ToolForm.DEPTH, ("depth",)),
    (ToolForm.WRENCH, ("torque", "wrench")),
    (ToolForm.SLEEVE, ("sleeve",)),
    (ToolForm.INSTALLER, ("installer",)),
    (ToolForm.DRIVER, ("driver",)),
    (ToolForm.PUNCH, ("punch", "drift")),
    (ToolForm.SCALE, ("scale", "cord")),
    (ToolForm.STRAIGHTEDGE, ("straightedge", "straight edge")),
    (ToolForm.FEELER, ("feeler",)),
    (ToolForm.PRESS, ("press",)),
    (ToolForm.HAMMER, ("hammer", "mallet")),
)


def typical_form(name: str) -> ToolForm:
    """The form that the name of a tool usually stands for, where its unit file gives none.

    Parameters
    ----------
    name : str
        What the workshop calls it.

    Returns
    -------
    ToolForm
        ``OTHER`` where no word of the name says one.

    Examples
    --------
    >>> typical_form("Press sleeves for bearings").value, typical_form("Oven").value
    ('sleeve', 'other')
    """
    said = name.lower()
    return next(
        (form for form, words in _WORDS if any(word in said for word in words)), ToolForm.OTHER
    )
