"""What a check has to say about a unit file."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from twoshaft.errors import UnitFileError


@dataclass(frozen=True, slots=True)
class Finding:
    """One thing that is wrong in a unit file.

    Attributes
    ----------
    where : str
        File and place, as ``my-unit.yaml, line 12``.
    what : str
        What is wrong, in plain words.
    mend : str
        What to do about it.
    """

    where: str
    what: str
    mend: str

    @property
    def sentence(self) -> str:
        """The finding as one sentence."""
        end = "" if self.mend.endswith("?") else "."
        return f"{self.where}: {self.what.rstrip('.')}; {self.mend.rstrip('.')}{end}"


def error_of(findings: Sequence[Finding]) -> UnitFileError:
    """The error that says all that was found in a file; there is at least one."""
    first = findings[0]
    return UnitFileError(first.what, where=first.where, mend=first.mend, findings=tuple(findings))
