"""What is enough for an outcome: the rules that ship, and a college's own on top of them."""

from __future__ import annotations

import re
from collections.abc import Collection, Mapping
from dataclasses import dataclass
from functools import lru_cache
from pathlib import Path
from typing import Annotated, Any, Literal

from pydantic import BeforeValidator, Field, ValidationError

from twoshaft.outcomes.outcomes import Evidence, Outcome, load_outcomes
from twoshaft.units.complaints import findings_of
from twoshaft.units.findings import Finding, error_of
from twoshaft.units.sections.order import Id, Section, Text
from twoshaft.units.source import Node, read_nodes

RULES = "rules.yaml"
"""Name of the file; a college's own has the same, in the cohort folder."""
SHIPPED = Path(__file__).with_name(RULES)


def _part(value: Any) -> Any:
    """``60 %`` as 0.6; anything else is refused."""
    said = (
        re.fullmatch(r"\s*(\d{1,3}(?:[.,]\d+)?)\s*%\s*", value) if isinstance(value, str) else None
    )
    if not said:
        raise ValueError(f"{value!r} is no part in per cent; write it as 60 %")
    return float(said[1].replace(",", ".")) / 100


Share = Annotated[float, BeforeValidator(_part), Field(ge=0, le=1)]


class Enough(Section):
    """What is enough for one outcome."""

    points: Share
    """The part of its points, as ``60 %``."""
    each_criterion: Share = 0.0
    """The part of the points of every single criterion, as ``40 %``."""
    bench_alone: bool = False
    """Whether what is seen at the bench meets an outcome to be shown there, by itself."""
    source: Text
    """Who says so: a standard, a college's rule, our own choice."""


class _File(Section):
    attempts: Literal["best", "latest"] | None = None
    numbers: dict[Id, Text] = Field(default_factory=dict)
    evidence: dict[Id, Evidence] = Field(default_factory=dict)
    everywhere: Enough | None = None
    outcomes: dict[Id, Enough] = Field(default_factory=dict)


@dataclass(frozen=True)
class Rules:
    """What is enough, for every outcome.

    Attributes
    ----------
    everywhere : Enough
        Where nothing else is said.
    outcomes : tuple of (str, Enough)
        By outcome, where something else is said.
    latest : bool
        Whether only a module's latest attempt counts; else the best does.
    numbers : tuple of (str, str)
        The college's own number or name of an outcome, by our id.
    evidence : tuple of (str, Evidence)
        The kind of evidence that an outcome asks for, by id, where the college says another.
    """

    everywhere: Enough
    outcomes: tuple[tuple[str, Enough], ...] = ()
    latest: bool = False
    numbers: tuple[tuple[str, str], ...] = ()
    evidence: tuple[tuple[str, Evidence], ...] = ()

    def asked(self, outcomes: Mapping[str, Outcome]) -> dict[str, Outcome]:
        """Outcomes by id, each asking for the kind of evidence that the college wants of it."""
        other = dict(self.evidence)
        return {
            id: one.model_copy(update={"evidence": other[id]}) if id in other else one
            for id, one in outcomes.items()
        }

    def number(self, outcome: str) -> str:
        """The college's own number of an outcome; empty where it has none."""
        return dict(self.numbers).get(outcome, "")

    def of(self, outcome: str) -> Enough:
        """What is enough for an outcome."""
        return dict(self.outcomes).get(outcome, self.everywhere)


def load_rules(own: str | Path | None = None) -> Rules:
    """Load the rules that ship, and those of a college on top.

    Parameters
    ----------
    own : str or Path, optional
        The college's file; None, or a file that is not there, changes nothing.

    Returns
    -------
    Rules

    Raises
    ------
    UnitFileError
        With one sentence (file, line, what, mend) for each thing that is wrong.

    Examples
    --------
    >>> load_rules().of("plan-order").points
    0.6
    """
    if own is None or not Path(own).is_file():
        return _shipped()
    return _with_own(Path(own), Path(own).read_bytes())


@lru_cache(maxsize=4)
def _with_own(own: Path, content: bytes) -> Rules:
    """Once for each content of the file: marking asks for every sheet."""
    shipped, read = _shipped(), _read(own, str(own))
    outcomes = read.outcomes
    if read.everywhere is None:  # else it stands above all that we say of single outcomes
        outcomes = dict(shipped.outcomes) | outcomes
    return Rules(
        read.everywhere or shipped.everywhere,
        tuple(outcomes.items()),
        shipped.latest if read.attempts is None else read.attempts == "latest",
        tuple((dict(shipped.numbers) | read.numbers).items()),
        tuple((dict(shipped.evidence) | read.evidence).items()),
    )


@lru_cache(maxsize=1)
def _shipped() -> Rules:
    read = _read(SHIPPED, SHIPPED.name)
    assert read.everywhere is not None  # it is our own file
    return Rules(
        read.everywhere,
        tuple(read.outcomes.items()),
        read.attempts == "latest",
        tuple(read.numbers.items()),
        tuple(read.evidence.items()),
    )


def _read(path: Path, name: str) -> _File:
    root = read_nodes(path, name)
    try:
        read = _File.model_validate(root.plain())
    except ValidationError as trouble:
        raise error_of(findings_of(trouble, root, _File)) from None
    if strange := _strangers(root, load_outcomes()):
        raise error_of(strange)
    return read


def _strangers(root: Node, known: Collection[str]) -> list[Finding]:
    return [
        Finding(node.where, f"there is no outcome '{id}'", "take its id from the list of outcomes")
        for part in ("outcomes", "numbers", "evidence")
        if part in root.value
        for id, node in root.value[part].value.items()
        if id not in known
    ]
