"""What the file browser of learners shows of a workplace: the start page and the lessons.

Their own work is opened from the start page. So nobody's page shows who else works here and what
they have; it is no lock, since a notebook can open any file that its account can.
"""

from __future__ import annotations

import posixpath
from pathlib import Path
from typing import Any

from jupyter_server.services.contents.largefilemanager import AsyncLargeFileManager

from twoshaft.stored.people import PEOPLE

_FOR_ALL = "lessons"


class LearnersContents(AsyncLargeFileManager):  # type: ignore[misc, unused-ignore]
    """The server's files; of the folders of a workplace only those for all are listed."""

    async def _dir_model(self, path: str, content: bool = True) -> dict[str, Any]:
        model: dict[str, Any] = await super()._dir_model(path, content=content)
        if content and (Path(self.root_dir) / PEOPLE.file).exists():
            first = posixpath.normpath(f"/{path}").lstrip("/").partition("/")[0]
            model["content"] = [one for one in model["content"] if _shown(first, one)]
        return model


def _shown(first: str, entry: dict[str, Any]) -> bool:
    """Whether an entry is listed, in the folder that is below ``first`` of the workplace."""
    if first:
        return first == _FOR_ALL
    return bool(entry["type"] == "notebook" or entry["name"] == _FOR_ALL)
