"""Outcomes and their file."""

from __future__ import annotations

from enum import StrEnum
from pathlib import Path
from typing import Annotated

from pydantic import Field, ValidationError

from twoshaft.units.complaints import findings_of
from twoshaft.units.findings import Finding, error_of
from twoshaft.units.sections.order import Id, Ids, Section, Text
from twoshaft.units.source import read_nodes

SHIPPED = Path(__file__).with_name("outcomes.yaml")


class Evidence(StrEnum):
    """The kind of evidence that an outcome needs.

    open-book: work in a notebook, the library at hand. supervised: the same with somebody
    watching who says so. at-the-bench: seen by an assessor at a real unit.
    """

    OPEN_BOOK = "open-book"
    SUPERVISED = "supervised"
    AT_THE_BENCH = "at-the-bench"


class Outcome(Section):
    """Something an apprentice can do, and how it is known."""

    id: Id
    modules: Ids = Field(min_length=1)
    """Modules that give evidence for it."""
    statement: Text
    """What the apprentice can do, beginning with a verb."""
    criteria: dict[Id, Text] = Field(min_length=1)
    """What the work must show, one observable thing each, by id."""
    evidence: Evidence
    """The kind of evidence that is needed before the outcome is met."""
    must_pass: bool = False
    """Whether it must be met whatever the mark."""

    def named(self, number: str) -> str:
        """Its statement, with the college's own number before it, where it has one."""
        return f"{number} {self.statement}".strip()


class _File(Section):
    outcomes: Annotated[tuple[Outcome, ...], Field(min_length=1)]


def load_outcomes(
    path: str | Path | None = None, *, module: str | None = None
) -> dict[str, Outcome]:
    """Load outcomes.

    Parameters
    ----------
    path : str or Path, optional
        An outcomes file; the shipped one by default.
    module : str, optional
        Keep only those to which this module gives evidence.

    Returns
    -------
    dict
        Outcomes by id, in the order of the file.

    Raises
    ------
    UnitFileError
        With one sentence (file, line, what, mend) for each thing that is wrong.
    """
    source = SHIPPED if path is None else Path(path)
    root = read_nodes(source, source.name if path is None else str(path))
    try:
        outcomes = _File.model_validate(root.plain()).outcomes
    except ValidationError as trouble:
        raise error_of(findings_of(trouble, root, _File)) from None
    entries = root.value["outcomes"].value
    seen: dict[str, int] = {}
    doubled = []
    for node, outcome in zip(entries, outcomes, strict=True):
        if outcome.id in seen:
            doubled.append(
                Finding(
                    node.where,
                    f"the outcome '{outcome.id}' stands twice (first on line {seen[outcome.id]})",
                    "give it an id of its own",
                )
            )
        seen.setdefault(outcome.id, node.line)
    if doubled:
        raise error_of(doubled)
    return {
        outcome.id: outcome for outcome in outcomes if module is None or module in outcome.modules
    }
