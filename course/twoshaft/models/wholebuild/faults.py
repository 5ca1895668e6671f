"""One thing that is wrong with a build, in plain words, with what it costs."""

from __future__ import annotations

from dataclasses import dataclass


@dataclass(frozen=True)
class Fault:
    """What one wrong decision brings about.

    Attributes
    ----------
    kind : str
        Of the order: ``blocked``, ``buried``, ``harmed``, ``blinded``, ``late``, ``missing``,
        ``repeated``, ``foreign``. Of a decision: ``undecided``, ``way``, ``driver``, ``shim``,
        ``tool``, ``torque``, ``state``, ``loose``, ``overstressed``, ``stripped``, ``uneven``,
        ``locked``, ``leak``, ``lump``, ``flooded``, ``proof``, ``passed-over``, ``false-alarm``.
        Of the parts: ``lockout``.
    step : str or None
        Where it was decided or shows; None at the end of the build.
    about : str
        Id of the ask, or of the rule or clock.
    sentence : str
    safety : bool
        Whether it could hurt somebody or let the unit fail on the road.
    minutes : float
        Minutes of work over and above the plan, where the models tell [min].
    parts : tuple of str
        Parts that do not survive.

    Examples
    --------
    >>> Fault("loose", "tighten-case-bolts", "joint-case-bolts", "Number 3 is loose.").safety
    False
    """

    kind: str
    step: str | None
    about: str
    sentence: str
    safety: bool = False
    minutes: float = 0.0
    parts: tuple[str, ...] = ()


def capital(text: str) -> str:
    """A text that begins like a sentence.

    Examples
    --------
    >>> capital("the lip points outwards")
    'The lip points outwards'
    """
    return text[:1].upper() + text[1:]


def sentence(text: str) -> str:
    """A text that begins and ends like a sentence.

    Examples
    --------
    >>> sentence(" the lip points outwards "), sentence("Which way round?")
    ('The lip points outwards.', 'Which way round?')
    """
    text = capital(text.strip())
    return text if text.endswith((".", "?")) else f"{text}."
