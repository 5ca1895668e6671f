"""Notebooks that are one screen: what apprentices open first."""

from __future__ import annotations

from pathlib import Path

from twoshaft.stored.writing import FOR_ALL, write_file

START = "start-here.ipynb"
START_CELL = "from twoshaft.jobsheet.startpage import start_here\n\nstart_here()"
IF_MISSING = "If no forms appear: press Run, then Run All Cells."


def write_start_here(workplace: str | Path) -> Path:
    """Write ``start-here.ipynb`` into a workplace, the root of the apprentices' JupyterLab."""
    return write_page(Path(workplace) / START, "Start here", START_CELL, mode=FOR_ALL)


def write_page(path: Path, title: str, cell: str, *, mode: int | None = None) -> Path:
    """Write a notebook that is one screen and opens itself; returns its path.

    Parameters
    ----------
    path : Path
    title : str
        Its heading; empty: the screen has one.
    cell : str
        What shows the screen.
    mode : int or None
        As for :func:`twoshaft.stored.writing.write_file`.
    """
    # Not above: whoever only asks for the name of the file goes without.
    import nbformat
    from nbformat.v4 import new_code_cell, new_markdown_cell, new_notebook

    cells = [
        *([new_markdown_cell(f"# {title}", id="title")] if title else []),
        new_markdown_cell(IF_MISSING, id="if-missing", metadata={"tags": ["if-missing"]}),
        new_code_cell(
            cell,
            id="start",
            metadata={"tags": ["form"], "jupyter": {"source_hidden": True}},
        ),
    ]
    kernel = {"name": "python3", "display_name": "Python 3", "language": "python"}
    notebook = new_notebook(
        cells=cells, metadata={"kernelspec": kernel, "twoshaft": {"open": True}}
    )
    write_file(path, nbformat.writes(notebook) + "\n", mode=mode)
    return path
