"""Standard parts by their published sizes: what a unit file names need not be typed.

The tables stand in ``standard/``, each row with its source. An entry of a unit file that says
``standard: "30206"`` takes from there whatever it does not say itself.
"""

from __future__ import annotations

import csv
import math
from collections.abc import Mapping
from difflib import get_close_matches
from functools import cache
from pathlib import Path
from typing import Any

TABLES = ("bearings", "bolts", "seals", "circlips")
_FOLDER = Path(__file__).parent / "standard"


@cache
def table(name: str) -> tuple[Mapping[str, str], ...]:
    """Rows of one of `TABLES`, as text by heading; the last heading is ``source``."""
    with (_FOLDER / f"{name}.csv").open(encoding="utf-8", newline="") as file:
        return tuple(csv.DictReader(file))


def filled_in(entry: Mapping[str, Any], sizes: Mapping[str, Any]) -> dict[str, Any]:
    """An entry of a unit file with what it leaves out taken from a standard part.

    Parameters
    ----------
    entry : mapping
        As in the file, keys with spaces or in Python's spelling.
    sizes : mapping
        Of the standard part, keys with spaces.
    """
    given = {key.replace("_", " ") for key in entry}
    return {**entry, **{key: value for key, value in sizes.items() if key not in given}}


def bearing_sizes(name: str, kind: str) -> dict[str, float]:
    """Sizes of a rolling bearing.

    Raises
    ------
    ValueError
        If the table has none of this name and kind; the message says what to do.
    """
    row = _row("bearings", name, [one for one in table("bearings") if one["kind"] == kind])
    keys = ("bore mm", "outside mm", "stand mm", "dynamic kn")
    sizes = {key: float(row[key]) for key in keys if row[key]}
    if row["e"]:  # ISO 281: e = 1.5 tan(contact angle)
        sizes["contact angle deg"] = round(math.degrees(math.atan(float(row["e"]) / 1.5)), 2)
    return sizes


def bolt_sizes(name: str, thread: str) -> dict[str, float]:
    """Head and hole of a bolt, by its kind of head and its thread, as ``M8`` or ``M10x1.25``.

    Raises
    ------
    ValueError
        If the table has none of this kind and size; the message says what to do.
    """
    rows = [one for one in table("bolts") if one["name"] == name]
    if not rows:
        _row("bolts", name, table("bolts"))
    size = thread.upper().removeprefix("M").split("X")[0].split("-")[0]
    for row in rows:
        if row["thread mm"] == size:
            return {key: float(row[key]) for key in ("head mm", "hole mm")}
    listed = ", ".join(f"M{row['thread mm']}" for row in rows)
    raise ValueError(
        f"the table has {name} bolts of {listed}, not of {thread}; give 'head mm' and 'hole mm'"
    )


def seal_sizes(name: str) -> dict[str, float]:
    """Shaft and outside of a shaft seal, by its size as ``35x50x8``.

    Raises
    ------
    ValueError
        If the table has none of this size; the message says what to do.
    """
    row = _row("seals", name.replace("×", "x").replace(" ", ""), table("seals"))
    return {key: float(row[key]) for key in ("shaft mm", "outer mm")}


def _row(which: str, name: str, rows: Any) -> Mapping[str, str]:
    known = {row["name"]: row for row in rows}
    if name in known:
        return known[name]
    near = get_close_matches(name, known, n=1)
    mend = (
        f"did you mean '{near[0]}'? If not, leave 'standard' out and give the sizes"
        if near
        else f"it has {_some(list(known))}; take one of them, or leave 'standard' out and give the "
        "sizes"
    )
    raise ValueError(f"'{name}' is not in the table of standard {which}; {mend}")


def _some(names: list[str], most: int = 3) -> str:
    """A few names, and how many more there are."""
    rest = len(names) - most
    return ", ".join(names) if rest < 2 else f"{', '.join(names[:most])} and {rest} more"
