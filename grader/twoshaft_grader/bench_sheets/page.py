"""A bench sheet as one HTML page, to look at or to print from a browser."""

from __future__ import annotations

import jinja2

from twoshaft.plots.style import FONT, INK, QUIET
from twoshaft_grader.bench_sheets.content import ROW_MM, Sheet
from twoshaft_grader.bench_sheets.paper import Paper


def css_text(text: str) -> str:
    """A text as a CSS string that nothing in it can end.

    >>> css_text('a"b')
    '"a\\\\22 b"'
    """
    kept = "".join(c if c.isalnum() or c in " .,·" else f"\\{ord(c):x} " for c in text)
    return f'"{kept}"'


_ENVIRONMENT = jinja2.Environment(
    loader=jinja2.PackageLoader("twoshaft_grader.bench_sheets"),
    autoescape=True,
    trim_blocks=True,
    lstrip_blocks=True,
    undefined=jinja2.StrictUndefined,
)


def as_page(sheet: Sheet, paper: Paper = Paper.A4) -> str:
    """Return a sheet as a whole HTML page; everything from the unit file is escaped.

    Parameters
    ----------
    sheet : Sheet
    paper : Paper, optional
        The size it prints on.

    Returns
    -------
    str
    """
    return _ENVIRONMENT.get_template("bench_sheet.html.j2").render(
        sheet=sheet,
        paper=paper.css,
        row_mm=ROW_MM,
        ink=INK,
        quiet=QUIET,
        font=FONT,
        versions_css=css_text(sheet.versions),
        reservation_css=css_text(sheet.reservation),
    )
