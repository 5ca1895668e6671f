"""Files that somebody chose in the browser: they arrive in pieces and lie in a temporary folder."""

from __future__ import annotations

import base64
import binascii
import re
import shutil
import tempfile
from pathlib import Path
from typing import Any

from twoshaft.errors import CohortError

LARGEST = 1_000_000_000
"""Bytes of a file: our choice."""
_ODD = re.compile(r"[^\w .()+-]")


class ChosenFiles:
    """What was chosen, by the field's name; the folder goes with the process."""

    def __init__(self) -> None:
        self._folder = tempfile.TemporaryDirectory(prefix="twoshaft-desk-")
        self._whole: dict[str, Path] = {}

    def take_piece(self, message: dict[str, Any]) -> None:
        """Take one piece; the first of a file says so, and the last.

        Raises
        ------
        CohortError
            When it did not arrive whole, or the file is too large.
        """
        field = str(message.get("field", ""))
        folder = Path(self._folder.name) / field.encode().hex()[:80]
        name = _ODD.sub("_", str(message.get("name", "")))[-80:].strip(" .") or "file"
        try:
            data = base64.b64decode(str(message.get("data", "")), validate=True)
        except binascii.Error:
            raise CohortError("the file did not arrive whole", mend="choose it again") from None
        if message.get("first"):
            self._whole.pop(field, None)
            shutil.rmtree(folder, ignore_errors=True)
        folder.mkdir(exist_ok=True)
        place = folder / name
        if (place.stat().st_size if place.exists() else 0) + len(data) > LARGEST:
            shutil.rmtree(folder)
            raise CohortError("the file is larger than 1 GB", mend="choose another")
        with open(place, "ab") as stream:
            stream.write(data)
        if message.get("last"):
            self._whole[field] = place

    def all(self) -> dict[str, Path]:
        """Those that are whole."""
        return dict(self._whole)

    def named(self, text: str) -> str:
        """The text with the files' own names for their places."""
        for path in self._whole.values():
            text = text.replace(str(path), path.name)
        return text

    def forget(self) -> None:
        """Take them away."""
        for path in self._whole.values():
            shutil.rmtree(path.parent, ignore_errors=True)
        self._whole = {}
