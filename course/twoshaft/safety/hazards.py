"""Hazards and cautions: their file, read and checked."""

from __future__ import annotations

from functools import cached_property, lru_cache
from pathlib import Path
from typing import Annotated

from pydantic import ConfigDict, Field, ValidationError, model_validator

from twoshaft.units.complaints import findings_of
from twoshaft.units.findings import error_of
from twoshaft.units.sections.order import Id, Section, Text
from twoshaft.units.source import read_nodes

SHIPPED = Path(__file__).with_name("hazards.yaml")


class Caution(Section):
    """Something to do or to leave, and why."""

    id: Id
    theme: Id
    """What it is about; cautions of one theme have reasons alike."""
    text: Text
    why: Text
    source: Text
    """A regulation or standard, ``common practice, no source``, or ``… (from memory)``."""
    country: str = ""
    """Whose regulation it is, where it is one country's; "the" included."""


class Hazard(Section):
    """A state of a place in which somebody can get hurt."""

    id: Id
    seen: Text
    """What can be seen, said without judging it."""
    what: Text
    """What can happen."""
    why: Text
    """Why it can happen."""
    act: Text
    """The safe act."""
    caution: Id
    grave: bool = False
    """Whether it can cost a life or an eye."""


class Place(Section):
    """A place in the workshop: safe as it should be, and with its hazards."""

    id: Id
    name: Text
    safe: Text
    """What can be seen when all is well, said without judging it."""
    because: Text
    """Why it is well so."""
    hazards: tuple[Hazard, ...] = Field(min_length=1)

    def views(self) -> tuple[tuple[str, Hazard | None], ...]:
        """What can be seen here, with the hazard in it if there is one, by the letters."""
        seen = [(self.safe, None), *((hazard.seen, hazard) for hazard in self.hazards)]
        return tuple(sorted(seen, key=lambda view: view[0]))

    def view_of(self, hazard: str) -> int:
        """Number of the view that shows a hazard; of the safe one for an empty id."""
        ids = [found.id if found else "" for _, found in self.views()]
        return ids.index(hazard)


class Job(Section):
    """A job at the bench."""

    id: Id
    name: Text


class Safety(Section):
    """Everything in the file."""

    model_config = ConfigDict(extra="forbid", frozen=True, ignored_types=(cached_property,))

    cautions: Annotated[tuple[Caution, ...], Field(min_length=1)]
    places: Annotated[tuple[Place, ...], Field(min_length=1)]
    jobs: tuple[Job, ...]

    @model_validator(mode="after")
    def _whole(self) -> Safety:
        for what, ids in (
            ("cautions", [c.id for c in self.cautions]),
            ("places", [p.id for p in self.places]),
            ("hazards", [h.id for p in self.places for h in p.hazards]),
            ("jobs", [j.id for j in self.jobs]),
        ):
            doubled = next((id for id in ids if ids.count(id) > 1), None)
            if doubled is not None:
                raise ValueError(f"'{doubled}' stands twice under {what}")
        known = {caution.id for caution in self.cautions}
        for hazard in self.hazard_by_id.values():
            if hazard.caution not in known:
                raise ValueError(f"'{hazard.id}' names a caution that is not there")
        return self

    @cached_property
    def caution_by_id(self) -> dict[str, Caution]:
        """Cautions by id."""
        return {caution.id: caution for caution in self.cautions}

    @cached_property
    def place_by_id(self) -> dict[str, Place]:
        """Places by id."""
        return {place.id: place for place in self.places}

    @cached_property
    def hazard_by_id(self) -> dict[str, Hazard]:
        """Hazards by id."""
        return {hazard.id: hazard for place in self.places for hazard in place.hazards}


@lru_cache(maxsize=8)
def load_safety(path: str | Path | None = None) -> Safety:
    """Load hazards and cautions.

    Parameters
    ----------
    path : str or Path, optional
        A file of hazards; the shipped one by default.

    Returns
    -------
    Safety

    Raises
    ------
    UnitFileError
        With one sentence (file, line, what, mend) for each thing that is wrong.
    """
    source = SHIPPED if path is None else Path(path)
    root = read_nodes(source, source.name if path is None else str(path))
    try:
        return Safety.model_validate(root.plain())
    except ValidationError as trouble:
        raise error_of(findings_of(trouble, root, Safety)) from None
