"""How a pull on the cord is read falsely, and which way it then seems.

Common practice, no source; the drum by the law of the lever.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal


@dataclass(frozen=True)
class FalsePull:
    """A pull that was not taken as it should be.

    Attributes
    ----------
    words : str
        What was done.
    seems : {"more", "less"}
        Whether the bearings then seem to take more or less than they do.
    why : str
        The reason, as part of a sentence.

    Examples
    --------
    >>> seals = FALSE_PULLS["seals"]
    >>> f"{seals.words}: {seals.seems}, because {seals.why}"
    'The drive-shaft seals were already in: more, because new seals rub as well'
    """

    words: str
    seems: Literal["more", "less"]
    why: str


FALSE_PULLS = {
    "seals": FalsePull("The drive-shaft seals were already in", "more", "new seals rub as well"),
    "gear": FalsePull(
        "A gear was still engaged", "more", "the input shaft turns with it, and fast"
    ),
    "start": FalsePull(
        "The pull was read at the first jerk, not while it turned",
        "more",
        "it takes more to start a bearing than to keep it turning",
    ),
    "slack": FalsePull(
        "The case bolts were only run in by hand", "less", "a slack case does not squeeze the rings"
    ),
    "drum": FalsePull(
        "The cord ran on a larger drum than the one reckoned with",
        "less",
        "on a longer lever the same torque asks for less pull",
    ),
    "twice": FalsePull(
        "What the other shaft takes was taken off twice", "less", "what is left is too small"
    ),
}
"""By key."""
