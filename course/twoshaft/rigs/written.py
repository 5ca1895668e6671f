"""How figures are read, as a table: by the very reader that reads the answers."""

from __future__ import annotations

from collections.abc import Iterable

from twoshaft.errors import AnswerError
from twoshaft.jobsheet.numbers import read_quantity, say_quantity
from twoshaft.plots.tables import GivenTable, given_table


def reading_table(title: str, written: Iterable[tuple[str, str]]) -> GivenTable:
    """A table of figures as people write them, and what becomes of each.

    Parameters
    ----------
    title : str
    written : iterable of (str, str)
        What was typed, and the unit of the field it was typed into.

    Returns
    -------
    GivenTable
    """
    rows = []
    for text, unit in written:
        try:
            rows.append((text, "read", say_quantity(read_quantity(text, unit))))
        except AnswerError as error:
            rows.append((text, "which one?", error.sentence))
    return given_table(title, ["typed", "taken?", "what the form says"], rows)
