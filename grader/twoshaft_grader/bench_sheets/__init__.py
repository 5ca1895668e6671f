"""Bench sheets: what an apprentice takes to the real unit, on paper.

One content model (``content``), made from unit, outcomes and cautions, and two renderings.
"""

from twoshaft_grader.bench_sheets.build import bench_sheet
from twoshaft_grader.bench_sheets.content import Sheet
from twoshaft_grader.bench_sheets.page import as_page
from twoshaft_grader.bench_sheets.paper import Paper, paper_named
from twoshaft_grader.bench_sheets.pdf import as_pdf
from twoshaft_grader.bench_sheets.write import modules_named, write_sheets

__all__ = [
    "Paper",
    "Sheet",
    "as_page",
    "as_pdf",
    "bench_sheet",
    "modules_named",
    "paper_named",
    "write_sheets",
]
