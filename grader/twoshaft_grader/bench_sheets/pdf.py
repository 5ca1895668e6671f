"""A bench sheet as PDF: tagged, so that a screen reader finds headings and tables."""

from __future__ import annotations

import json
from functools import lru_cache
from pathlib import Path

import matplotlib
import typst

from twoshaft.plots.style import INK, QUIET
from twoshaft_grader.bench_sheets.content import ROW_MM, Sheet
from twoshaft_grader.bench_sheets.paper import Paper

_TEMPLATE = Path(__file__).parent / "templates" / "bench_sheet.typ"


def as_pdf(sheet: Sheet, paper: Paper = Paper.A4) -> bytes:
    """Return a sheet as PDF.

    The texts reach the template as data, so nothing in a unit file is read as markup. The
    result follows PDF/UA-1 (ISO 14289-1), as the typesetter claims and checks it.

    Parameters
    ----------
    sheet : Sheet
    paper : Paper, optional

    Returns
    -------
    bytes
    """
    data = sheet.as_data() | {
        "paper": paper.typst,
        "row_mm": ROW_MM,
        "ink": INK,
        "quiet": QUIET,
    }
    return typst.compile(
        _TEMPLATE.read_bytes(),
        font_paths=fonts(),
        format="pdf",
        pdf_standards=["ua-1"],
        sys_inputs={"sheet": json.dumps(data)},
        # Same sheet, same bytes.
        timestamp=0,
    )


@lru_cache(maxsize=1)
def fonts() -> typst.Fonts:
    """The fonts of what is printed: the same on every machine."""
    # DejaVu comes with matplotlib, so that a sheet looks alike on every machine; the machine's
    # own fonts stand in for letters that it lacks.
    return typst.Fonts(font_paths=[str(Path(matplotlib.get_data_path()) / "fonts" / "ttf")])
