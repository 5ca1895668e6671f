"""How a gauge is described: where its pointer stands among its marks, never the value."""

from __future__ import annotations

DIAL_TURN_MM, DIAL_MARK_MM, DIAL_FIGURE = 1.0, 0.01, 10
"""One turn of the long pointer, one mark, and marks from one figure to the next."""


def dial_words(reading_mm: float) -> str:
    """Where the two pointers of a dial indicator stand.

    >>> dial_words(1.435)
    'Small pointer between 1 and 2. Long pointer between the 3rd and the 4th mark after 40.'
    >>> dial_words(2.0)
    'Small pointer on 2. Long pointer on 0.'
    """
    marks = reading_mm / DIAL_MARK_MM
    per_turn = round(DIAL_TURN_MM / DIAL_MARK_MM)
    turns, rest = divmod(round(marks, 1), per_turn)
    small = f"on {turns:.0f}" if rest < 0.5 else f"between {turns:.0f} and {turns + 1:.0f}"
    return f"Small pointer {small}. Long pointer {_among(rest, DIAL_FIGURE, 1)}."


def scale_words(reading: float, mark: float, marks_per_figure: int) -> str:
    """Where the pointer of a straight scale stands.

    Parameters
    ----------
    reading, mark : float
        In the scale's unit: what it shows, and the width of one mark.
    marks_per_figure : int
        Marks from one figure to the next.

    >>> scale_words(27.0, 2.0, 5)
    'Pointer between the 3rd and the 4th mark after 20.'
    """
    return f"Pointer {_among(round(reading / mark, 1), marks_per_figure, mark)}."


def _among(marks: float, per_figure: int, mark: float) -> str:
    whole, between = int(marks + 0.2), abs(marks - round(marks)) > 0.2
    figure, after = divmod(whole, per_figure)
    name = f"{figure * per_figure * mark:g}"
    if not between:
        return f"on {name}" if after == 0 else f"on the {_ordinal(after)} mark after {name}"
    if after == 0:
        return f"between {name} and the 1st mark after it"
    if after == per_figure - 1:
        return f"between the {_ordinal(after)} mark after {name} and the next figure"
    return f"between the {_ordinal(after)} and the {_ordinal(after + 1)} mark after {name}"


def _ordinal(number: int) -> str:
    return f"{number}{ {1: 'st', 2: 'nd', 3: 'rd'}.get(number, 'th') }"
