"""What a task takes of a unit, for the sentence that says why it cannot be drawn."""

from __future__ import annotations

import tomllib
from functools import cache
from pathlib import Path


@cache
def _table() -> dict[str, dict[str, list[str]]]:
    return tomllib.loads(Path(__file__).with_suffix(".toml").read_text(encoding="utf-8"))


def wanted(module: str, task: str) -> str:
    """What a task takes, and in which section of the unit file; empty where nothing is said.

    Parameters
    ----------
    module : str
        Module id.
    task : str
        Member of what the module gives.
    """
    section, words = _table().get(module, {}).get(task, ("", ""))
    return f"it takes {words}, in the section {section!r}" if words else ""
