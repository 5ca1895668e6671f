"""Files of staff: trusted, named with their folder."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from pathlib import Path
from typing import TypeVar

from twoshaft.errors import CohortError, CourseError
from twoshaft.stored.definition import Definition
from twoshaft_grader.cohort import files

T = TypeVar("T")


@dataclass(frozen=True, kw_only=True)
class StaffFile(Definition[T]):
    """A JSON file of the cohort folder."""

    mend: str = "put the file back from a copy"
    error: type[CourseError] = CohortError

    def read(self, path: Path) -> T:
        """The record in a file.

        Raises
        ------
        CohortError
            With one sentence, when it is missing, damaged, of a newer format or does not fit.
        """
        return self.of(files.read_json(path, mend=self.mend), str(path))

    def read_if_any(self, path: Path) -> T | None:
        """The same; None if there is no such file."""
        return self.read(path) if path.exists() else None

    def write(self, path: Path, record: T, *, mode: int | None = None, sync: bool = True) -> None:
        """Write the file, whole or not at all, and its folder if it is not there."""
        files.write_whole(path, self.text(record), mode=mode, sync=sync)


@dataclass(frozen=True, kw_only=True)
class Log(Definition[T]):
    """A file of JSON lines that only grows; torn lines are passed over."""

    mend: str = "put the file back from a copy"
    error: type[CourseError] = CohortError
    numbered: bool = False

    def append(self, path: Path, *records: T) -> None:
        """Add lines, in one write."""
        files.append_lines(path, [self.plain(record) for record in records])

    def read(self, path: Path) -> Iterator[T]:
        """The records of the whole lines; a line that is none of this log is passed over.

        Raises
        ------
        CohortError
            When a line is of a newer format.
        """
        for line in files.read_lines(path):
            try:
                yield self.of(line, str(path))
            except CohortError:
                if line.get("format", self.format) != self.format:
                    raise
