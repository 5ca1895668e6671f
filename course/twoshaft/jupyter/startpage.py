"""The notebook that apprentices open first."""

from __future__ import annotations

from pathlib import Path

from twoshaft.stored.writing import FOR_ALL, write_file

START = "start-here.ipynb"
START_CELL = "from twoshaft.jobsheet.startpage import start_here\n\nstart_here()"
IF_MISSING = "If no forms appear: press Run, then Run All Cells."


def write_start_here(workplace: str | Path) -> Path:
    """Write ``start-here.ipynb`` into a workplace.

    Parameters
    ----------
    workplace : path
        The folder that is the root of the apprentices' JupyterLab.

    Returns
    -------
    Path
        The notebook.
    """
    # Not above: whoever only asks for the name of the file goes without.
    import nbformat
    from nbformat.v4 import new_code_cell, new_markdown_cell, new_notebook

    cells = [
        new_markdown_cell("# Start here", id="title"),
        new_markdown_cell(IF_MISSING, id="if-missing", metadata={"tags": ["if-missing"]}),
        new_code_cell(
            START_CELL,
            id="start",
            metadata={"tags": ["form"], "jupyter": {"source_hidden": True}},
        ),
    ]
    kernel = {"name": "python3", "display_name": "Python 3", "language": "python"}
    notebook = new_notebook(
        cells=cells, metadata={"kernelspec": kernel, "twoshaft": {"open": True}}
    )
    path = Path(workplace) / START
    write_file(path, nbformat.writes(notebook) + "\n", mode=FOR_ALL)
    return path
