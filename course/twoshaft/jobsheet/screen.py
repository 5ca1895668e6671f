"""Put a screen's scripts and styles together for the browser: no build step."""

from __future__ import annotations

from importlib.resources import files

from twoshaft.plots.style import css_variables


def script(render: str, *sources: tuple[str, str]) -> str:
    """One browser module out of several plain script files.

    Parameters
    ----------
    render : str
        Name of the function that draws the screen.
    *sources : (package, file name) pairs
        The files, in an order in which each needs only earlier ones.

    Returns
    -------
    str
        Text of an ES module whose default export draws the screen.
    """
    texts = [files(package).joinpath(name).read_text("utf-8") for package, name in sources]
    return "\n".join([*texts, f"export default {{ render: {render} }};\n"])


def styles(*sources: tuple[str, str]) -> str:
    """The style module's properties followed by the given style sheets."""
    texts = [files(package).joinpath(name).read_text("utf-8") for package, name in sources]
    return "\n".join([css_variables(), *texts])
