"""The cells that are run when a notebook is opened: known by the SHA-256 of their text."""

from __future__ import annotations

import hashlib
import json
from pathlib import Path

RUN_TAGS = frozenset({"setup", "form", "rig"})


def cell_digest(source: str) -> str:
    """The digest by which a cell's text is known.

    Parameters
    ----------
    source : str
        The cell's text; line ends and newlines at its end do not count.

    Returns
    -------
    str
        64 hexadecimal figures.

    Examples
    --------
    >>> cell_digest("a = 1\\r\\n") == cell_digest("a = 1")
    True
    """
    text = source.replace("\r\n", "\n").replace("\r", "\n").rstrip("\n")
    return hashlib.sha256(text.encode()).hexdigest()


def digests_in(path: str | Path) -> set[str]:
    """Digests of the cells of a notebook file that are to be run on opening."""
    notebook = json.loads(Path(path).read_text(encoding="utf-8"))
    return {
        cell_digest("".join(cell["source"]))
        for cell in notebook["cells"]
        if cell["cell_type"] == "code" and RUN_TAGS & set(cell["metadata"].get("tags", ()))
    }
