"""Which cells a released notebook may run when it is opened: the digests of their text."""

from __future__ import annotations

import json
from collections.abc import Iterable

from nbformat import NotebookNode

from twoshaft_grader.notebooks.text import OPENED_TAGS

try:
    from twoshaft.jupyter.released import cell_digest
except ModuleNotFoundError:
    import hashlib

    def cell_digest(source: str) -> str:
        """Return the SHA-256 of a cell's text with LF ends and no trailing newline."""
        text = source.replace("\r\n", "\n").rstrip("\n")
        return hashlib.sha256(text.encode()).hexdigest()


def released_cells_text(notebooks: Iterable[NotebookNode]) -> str:
    """Return the text of ``released-cells.json`` for the given notebooks."""
    digests = {
        cell_digest(cell.source)
        for nb in notebooks
        for cell in nb.cells
        if cell.cell_type == "code" and set(cell.metadata.get("tags", [])) & set(OPENED_TAGS)
    }
    return json.dumps({"cells": sorted(digests)}, indent=1) + "\n"
