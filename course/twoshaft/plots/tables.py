"""Plain tables of what is given, for lessons and exercises."""

from __future__ import annotations

import html
from collections.abc import Iterable, Sequence
from dataclasses import dataclass

from twoshaft.plots.style import css_variables

_CSS = """
.twoshaft .given-frame { container-type: inline-size; overflow-x: auto; }
.twoshaft table.given { border-collapse: collapse; font: var(--ts-text) var(--ts-font);
  color: var(--ts-ink); margin: var(--ts-grid) 0; overflow-wrap: normal; word-break: normal; }
.twoshaft table.given caption { text-align: left; font-weight: 600; padding: 4px 0; }
.twoshaft table.given caption span { display: block; position: sticky; left: 0;
  width: max-content; max-width: 100cqi; }
.twoshaft table.given th, .twoshaft table.given td { text-align: left; vertical-align: top;
  padding: 4px 16px 4px 0; border-bottom: 1px solid var(--ts-line); background: none; }
.twoshaft table.given tbody th { font-weight: normal; }
.twoshaft table.given .words { min-width: min(9em, 25cqi); }
.twoshaft table.given .number { text-align: right; font-variant-numeric: tabular-nums; }
html[data-ts-print="large"] .twoshaft table.given :is(th, td) { padding-right: 8px; }
@container (max-width: 640px) {
  .twoshaft table.given th, .twoshaft table.given td { padding-right: 8px; }
}
@media (max-width: 700px) {
  .twoshaft table.given .sentence { min-width: 42cqi; }
}
"""

_BROAD = 4  # columns that stand side by side in half a page
_WORDS = 12  # letters from which on a column needs some width to be read
_SENTENCE = 32  # and from which on it needs much of a narrow page


@dataclass(frozen=True)
class GivenTable:
    """A table that shows itself in a notebook and on a page."""

    title: str
    head: tuple[str, ...]
    rows: tuple[tuple[str, ...], ...]

    def _repr_html_(self) -> str:
        heads, rows = self.head, self.rows
        if len(rows) == 1 and len(heads) > _BROAD:
            # One long row would stand out of half a page; its heads and values as pairs do not.
            heads, rows = ("", ""), tuple(zip(heads, rows[0], strict=True))
        numbers = [
            bool(rows) and all(_is_number(row[i]) for row in rows) for i in range(len(heads))
        ]
        kinds = [
            "number" if number else _kind(max((len(row[i]) for row in rows), default=0))
            for i, number in enumerate(numbers)
        ]
        head = "".join(
            _cell("th", text, kind, ' scope="col"') for text, kind in zip(heads, kinds, strict=True)
        )
        # A table of pairs has no heads: an empty one would be read out as nothing.
        head = f"<thead><tr>{head}</tr></thead>" if any(heads) else ""
        body = "".join(
            "<tr>"
            + "".join(
                _cell("td", text, kind) if i else _cell("th", text, kind, ' scope="row"')
                for i, (text, kind) in enumerate(zip(row, kinds, strict=True))
            )
            + "</tr>"
            for row in rows
        )
        return (
            f"<style>{css_variables()}{_CSS}</style>"
            f'<div class="twoshaft"><div class="given-frame"><table class="given">'
            f"<caption><span>{html.escape(self.title)}</span></caption>"
            f"{head}<tbody>{body}</tbody></table></div></div>"
        )

    def __repr__(self) -> str:
        lines = [self.title, " | ".join(self.head), *(" | ".join(row) for row in self.rows)]
        return "\n".join(lines)


def given_table(title: str, head: Sequence[str], rows: Iterable[Sequence[object]]) -> GivenTable:
    """Make a table of given values.

    Parameters
    ----------
    title : str
        What it shows.
    head : sequence of str
        Column heads, with units.
    rows : iterable of sequences
        One sequence a row, as long as the head; numbers are shown without trailing zeros.

    Returns
    -------
    GivenTable

    Raises
    ------
    ValueError
        A row that is longer or shorter than the head.
    """
    cells = tuple(tuple(_text(value) for value in row) for row in rows)
    if any(len(row) != len(head) for row in cells):
        raise ValueError(f"every row of “{title}” needs {len(head)} cells")
    return GivenTable(title, tuple(head), cells)


def _text(value: object) -> str:
    return f"{value:g}" if isinstance(value, float) else str(value)


def _is_number(text: str) -> bool:
    try:
        float(text)
    except ValueError:
        return False
    return True


def _kind(longest: int) -> str:
    """The class of a column of texts, by its longest."""
    if longest <= _WORDS:
        return ""
    return "words sentence" if longest > _SENTENCE else "words"


def _cell(tag: str, text: str, kind: str, more: str = "") -> str:
    if not text:  # an empty head would be read out as nothing
        tag, more = "td", ""
    kind = f' class="{kind}"' if kind else ""
    return f"<{tag}{kind}{more}>{html.escape(text)}</{tag}>"
