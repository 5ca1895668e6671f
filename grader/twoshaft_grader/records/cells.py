"""Values as cells of a table that a spreadsheet opens: nothing in one is ever calculated."""

from __future__ import annotations

import csv
import io
from collections.abc import Iterable, Sequence

_STARTS = ("=", "+", "-", "@")


def cell(value: object) -> str:
    """A value as the text of a cell: plain numbers, one line, never a formula."""
    if isinstance(value, float):
        return f"{value + 0.0:.3f}".rstrip("0").rstrip(".")  # plus zero: no minus before it
    if isinstance(value, str):
        text = " ".join(value.split())
        # A spreadsheet would take such a cell for a formula; the apostrophe makes it text.
        return f"'{text}" if text.startswith(_STARTS) else text
    return str(value)


def csv_of(heading: Sequence[str], rows: Iterable[Sequence[object]]) -> str:
    """A table as CSV, a heading line first."""
    out = io.StringIO()
    writer = csv.writer(out, lineterminator="\n")
    writer.writerow(heading)
    writer.writerows([cell(value) for value in row] for row in rows)
    return out.getvalue()
