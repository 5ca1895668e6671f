"""From a driver's complaint to what is looked at first: causes left by what a road test finds."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from functools import cache
from importlib.resources import files

from ruamel.yaml import YAML


@dataclass(frozen=True)
class Road:
    """The table of road tests.

    Attributes
    ----------
    checks : dict of str to str
        What may be found, by id.
    causes : dict of str to str
        What may be behind it, by id.
    finds : dict of str to frozenset
        Checks that find a cause.
    of : dict of str to str
        What the driver complains of: noise, shift, jump or oil.

    Examples
    --------
    >>> road = load_road()
    >>> [road.causes[cause] for cause in road.causes if road.of[cause] == "jump"]
    ['Dog teeth and sleeve of that gear', 'The mounts of engine and unit']
    """

    checks: Mapping[str, str]
    causes: Mapping[str, str]
    finds: Mapping[str, frozenset[str]]
    of: Mapping[str, str]


@cache
def load_road() -> Road:
    """The table.

    Returns
    -------
    Road

    Examples
    --------
    >>> sorted(load_road().finds["oil-thick"])
    ['cold-only', 'every-gear', 'quick']
    """
    text = files("twoshaft.models.closeout").joinpath("road.yaml").read_text(encoding="utf-8")
    read = YAML(typ="safe").load(text)
    causes = read["causes"]
    return Road(
        dict(read["checks"]),
        {id: one["name"] for id, one in causes.items()},
        {id: frozenset(one["finds"]) for id, one in causes.items()},
        {id: one["of"] for id, one in causes.items()},
    )


def causes_left(findings: Mapping[str, bool]) -> tuple[str, ...]:
    """Causes that explain all that was tried on the road.

    Parameters
    ----------
    findings : dict of str to bool
        Whether it was so, by id of the check; what was not tried is not named.

    Returns
    -------
    tuple of str
        Ids, in the order of the table.

    Examples
    --------
    >>> causes_left({"quick": True, "every-gear": True})
    ('oil-thick', 'oil-slippery')
    >>> causes_left({"quick": True, "every-gear": True, "cold-only": False})
    ('oil-slippery',)
    """
    return tuple(
        cause
        for cause, finds in load_road().finds.items()
        if all((check in finds) == so for check, so in findings.items())
    )


def tell_apart(one: str, other: str) -> tuple[str, ...]:
    """Checks that find one of two causes and not the other.

    Parameters
    ----------
    one, other : str
        Ids of causes.

    Returns
    -------
    tuple of str
        Ids of checks, in the order of the table.

    Examples
    --------
    >>> tell_apart("oil-thick", "oil-slippery")
    ('cold-only',)
    """
    road = load_road()
    apart = road.finds[one] ^ road.finds[other]
    return tuple(check for check in road.checks if check in apart)
