"""Which cells a released notebook may run when it is opened: the digests of their text."""

from __future__ import annotations

import json
from collections.abc import Iterable

from nbformat import NotebookNode

from twoshaft.jupyter.released import RUN_TAGS, cell_digest


def released_cells_text(notebooks: Iterable[NotebookNode]) -> str:
    """Return the text of ``released-cells.json`` for the given notebooks."""
    digests = {
        cell_digest(cell.source)
        for nb in notebooks
        for cell in nb.cells
        if cell.cell_type == "code" and RUN_TAGS & set(cell.metadata.get("tags", []))
    }
    return json.dumps({"cells": sorted(digests)}, indent=1) + "\n"
