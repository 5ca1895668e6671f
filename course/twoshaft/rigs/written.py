"""How figures are read, as a table: by the very reader that reads the answers."""

from __future__ import annotations

from collections.abc import Iterable

from twoshaft.errors import AnswerError
from twoshaft.jobsheet.numbers import read_quantity, say_quantity
from twoshaft.plots.tables import GivenTable, given_table


def is_read(text: str, unit: str) -> bool:
    """Whether a figure is taken as it stands by a field that asks for a unit.

    Parameters
    ----------
    text : str
        What was typed.
    unit : str
        The unit asked for.

    Returns
    -------
    bool

    Examples
    --------
    >>> is_read("13 ft lb", "N·m"), is_read("13 mN", "N·m")
    (True, False)
    """
    try:
        read_quantity(text, unit)
    except AnswerError:
        return False
    return True


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
            rows.append((text, "asked back", error.sentence))
    return given_table(title, ["typed", "taken?", "what the form says"], rows)
