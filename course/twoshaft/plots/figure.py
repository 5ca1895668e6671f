"""A matplotlib figure with the sentence that says the same in words.

Notebooks show the figure and keep the sentence as its text alternative; nothing here touches
pyplot's global state.
"""

from __future__ import annotations

from base64 import b64encode
from dataclasses import dataclass
from html import escape
from io import BytesIO
from textwrap import fill

from matplotlib import rc_context
from matplotlib.axes import Axes
from matplotlib.figure import Figure, SubFigure

from twoshaft.plots import style

_DPI = 100
_INCHES = (8.0, 5.0)
_POINTS = 72 / _DPI
# Bold letters of a title to the inch.
_BOLD_PER_INCH = 7.6


@dataclass(frozen=True)
class Picture:
    """A figure and its text alternative."""

    figure: Figure | SubFigure
    alt: str

    def png(self, dpi: int = _DPI) -> bytes:
        """The figure as PNG."""
        assert isinstance(self.figure, Figure)  # ours are whole figures, never parts of one
        # matplotlib's default fonts only: the same picture on every machine.
        out = BytesIO()
        with rc_context({"font.family": ["DejaVu Sans"], "hatch.linewidth": 0.7}):
            self.figure.savefig(out, format="png", dpi=dpi, facecolor=style.PAPER)
        return out.getvalue()

    def _repr_html_(self) -> str:
        # JupyterLab shows a bare PNG without its alternative; a finer one stays sharp.
        data = b64encode(self.png(2 * _DPI)).decode()
        width = round(self.figure.bbox.width / self.figure.dpi * _DPI)
        shown = f'alt="{escape(self.alt)}" width="{width}" src="data:image/png;base64,{data}"'
        return f'<figure style="margin: 0"><img {shown}></figure>'

    def __repr__(self) -> str:
        return self.alt


def new_axes(title: str, x: str, y: str, *, inches: tuple[float, float] = _INCHES) -> Axes:
    """Axes in our style.

    Parameters
    ----------
    title : str
        The finding, as a sentence.
    x, y : str
        Quantity and unit of each axis, as ``"setting [mm]"``.
    inches : tuple of float
        Width and height.
    """
    figure = Figure(figsize=inches, layout="constrained", facecolor=style.PAPER)
    axes = figure.add_subplot(facecolor=style.PAPER)
    width = int(inches[0] * _BOLD_PER_INCH)
    axes.set_title(
        fill(title, width), loc="left", color=style.INK, size=style.HEAD_PX * _POINTS, weight="bold"
    )
    axes.set_xlabel(x, color=style.INK, size=style.TEXT_PX * _POINTS)
    axes.set_ylabel(y, color=style.INK, size=style.TEXT_PX * _POINTS)
    axes.tick_params(colors=style.INK, labelsize=style.SMALL_PX * _POINTS)
    for side, spine in axes.spines.items():
        spine.set_visible(side in ("left", "bottom"))
        spine.set_color(style.INK)
    return axes


def label(
    axes: Axes, text: str, at: tuple[float, float], to: tuple[float, float], **kwargs
) -> None:
    """Write beside a point: ``to`` is the shift of the text in points, joined by a thin line."""
    axes.annotate(
        text,
        at,
        xytext=to,
        textcoords="offset points",
        color=style.INK,
        size=style.SMALL_PX * _POINTS,
        arrowprops={"arrowstyle": "-", "color": style.INK, "lw": style.THIN_PX * _POINTS},
        bbox={"facecolor": style.PAPER, "edgecolor": "none", "pad": 1.5},
        **kwargs,
    )


def legend(axes: Axes, **kwargs) -> None:
    """A legend in our style."""
    kwargs = {"frameon": False, "fontsize": style.SMALL_PX * _POINTS} | kwargs
    axes.legend(labelcolor=style.INK, **kwargs)
