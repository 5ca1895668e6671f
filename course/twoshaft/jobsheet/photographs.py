"""A college's own photographs, read where they lie."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, field
from pathlib import Path

from twoshaft.errors import SheetError
from twoshaft.jobsheet.bench_unit import workplace_around
from twoshaft.stored.hostile import read_bytes
from twoshaft.stored.photographs import ALBUM, FOLDER, LARGEST, Album, Photograph


@dataclass(frozen=True)
class Photographs:
    """The pictures in a folder; none where there is no folder."""

    folder: Path | None = None
    album: Album = field(default_factory=Album)

    def of(self, kind: str, id: str) -> Iterator[tuple[Photograph, bytes]]:
        """The pictures of a part or operation, with their bytes; one that is gone is left out."""
        for one in self.album.photographs:
            if (one.of, one.id) == (kind, id) and (data := self.read(one)):
                yield one, data

    def read(self, one: Photograph) -> bytes:
        """A picture's bytes; none where it cannot be read."""
        if self.folder is None:
            return b""
        try:
            data = read_bytes(self.folder / one.file, LARGEST)
        except OSError:
            return b""
        return data if len(data) <= LARGEST else b""


def photographs_in(folder: Path | None) -> Photographs:
    """The pictures that lie in a folder.

    Raises
    ------
    SheetError
        When the list of them is damaged.
    """
    album = ALBUM.read(folder / ALBUM.file) if folder else None
    return Photographs(folder, album) if album else Photographs()


def photographs_to_show(folder: Path | None) -> Photographs:
    """The same for whoever only looks: a damaged list shows nothing, and stops no lesson."""
    try:
        return photographs_in(folder)
    except SheetError:
        return Photographs()


def photographs_around(folder: Path) -> Photographs:
    """Those of the workplace that a folder stands in; none outside of one.

    Raises
    ------
    SheetError
        When ``workplace.json`` cannot be used.
    """
    around = workplace_around(folder)
    return photographs_to_show(around[0] / FOLDER if around else None)
