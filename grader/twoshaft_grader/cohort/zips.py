"""Zips that somebody else packed: whatever is wrong with one is one kind of error."""

from __future__ import annotations

import errno
import lzma
import struct
import zipfile
import zlib
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path

_DAMAGED = (
    zlib.error, lzma.LZMAError, EOFError, RuntimeError, UnicodeDecodeError, struct.error,
    OverflowError,
)  # fmt: skip
# Without a number: of the packing; else of a place before the file's beginning.
_NOT_OF_THE_DISK = {None, errno.EINVAL}


@contextmanager
def opened_zip(place: Path) -> Iterator[zipfile.ZipFile]:
    """A zip to read from.

    Raises
    ------
    zipfile.BadZipFile
        When it is none, or is not as it was packed, also when that shows only later.
    """
    try:
        with open(place, "rb") as stream, zipfile.ZipFile(stream) as zipped:
            yield zipped
    except _DAMAGED as error:
        raise zipfile.BadZipFile(str(error) or "it ends too early") from None
    except OSError as error:
        if error.errno in _NOT_OF_THE_DISK:
            raise zipfile.BadZipFile(str(error)) from None
        raise
