"""A college's own sources of the cautions, beside ours or in their place."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from pathlib import Path
from typing import Literal

from pydantic import Field, ValidationError

from twoshaft.safety.hazards import Caution, Hazard, Safety, load_safety
from twoshaft.units.complaints import findings_of
from twoshaft.units.findings import Finding, error_of
from twoshaft.units.sections.order import Id, Section, Text
from twoshaft.units.source import read_nodes

OURS, THEIRS = "Source", "At your college"


class _File(Section):
    ours: Literal["beside", "left out"] = "beside"
    sources: dict[Id, Text] = Field(min_length=1)


@dataclass(frozen=True)
class OwnSources:
    """Where a college says that its cautions can be read up; nothing where it says nothing.

    Attributes
    ----------
    of : mapping of str to str
        By the id of a caution, or of one hazard.
    beside : bool
        Whether our source stands beside the college's own.
    """

    of: Mapping[str, str] = field(default_factory=dict)
    beside: bool = True

    def told(self, caution: Caution, hazard: Hazard | None = None) -> dict[str, str]:
        """The sources of a caution, by what each is called; a hazard's own goes above its
        caution's.

        Examples
        --------
        >>> from twoshaft.safety import OwnSources, load_safety
        >>> eyes = load_safety().caution_by_id["eyes-struck"]
        >>> OwnSources({"eyes-struck": "workshop rule 4"}, beside=False).told(eyes)
        {'At your college': 'workshop rule 4'}
        """
        own = self.of.get(hazard.id if hazard else "") or self.of.get(caution.id)
        ours = caution.source
        if caution.country:
            ours += f" (rules of {caution.country}; your college's own rules decide)"
        if own is None:
            return {OURS: ours}
        return {THEIRS: own, OURS: ours} if self.beside else {THEIRS: own}


def load_own_sources(path: str | Path | None, safety: Safety | None = None) -> OwnSources:
    """Load a college's own sources.

    Parameters
    ----------
    path : str or Path or None
        The college's file; None, or a file that is not there, says nothing.
    safety : Safety, optional
        The cautions and hazards that there are; the shipped ones by default.

    Returns
    -------
    OwnSources

    Raises
    ------
    UnitFileError
        With one sentence (file, line, what, mend) for each thing that is wrong.
    """
    if path is None or not Path(path).is_file():
        return OwnSources()
    root = read_nodes(Path(path), str(path))
    try:
        read = _File.model_validate(root.plain())
    except ValidationError as trouble:
        raise error_of(findings_of(trouble, root, _File)) from None
    safety = safety or load_safety()
    known = {*safety.caution_by_id, *safety.hazard_by_id}
    strange = [
        Finding(
            node.where,
            f"there is no caution or hazard '{id}'",
            "take an id of the course's list of cautions (rules safety)",
        )
        for id, node in root.value["sources"].value.items()
        if id not in known
    ]
    if strange:
        raise error_of(strange)
    return OwnSources(dict(read.sources), read.ours == "beside")
