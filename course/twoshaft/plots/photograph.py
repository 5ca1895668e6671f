"""A college's own photograph, with a frame around what matters."""

from __future__ import annotations

from base64 import b64encode
from html import escape

_LINE = 0.008  # of the longer side


def photograph_figure(
    data: bytes,
    width: int,
    height: int,
    words: str,
    box: tuple[float, float, float, float] | None = None,
) -> str:
    """A photograph as one SVG element; its words are its name for a screen reader.

    Parameters
    ----------
    data : bytes
        JPEG.
    width, height : int
        [px]
    words : str
        What can be seen.
    box : tuple of float, optional
        Left, top, width and height of a frame, as shares of the picture.
    """
    return (
        f'<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 {width} {height}" role="img" '
        f'aria-label="{escape(words)}" class="ts-photograph">'
        f'<image width="{width}" height="{height}" '
        f'href="data:image/jpeg;base64,{b64encode(data).decode()}"/>'
        f"{_frame(width, height, box) if box else ''}</svg>"
    )


def _frame(width: int, height: int, box: tuple[float, float, float, float]) -> str:
    """Light within dark, so that it stands out of any picture."""
    left, top, wide, high = box
    line = _LINE * max(width, height)
    place = (
        f'x="{left * width:.1f}" y="{top * height:.1f}" '
        f'width="{wide * width:.1f}" height="{high * height:.1f}" fill="none"'
    )
    return (
        f'<rect {place} stroke="#000" stroke-width="{2.2 * line:.1f}"/>'
        f'<rect {place} stroke="#fff" stroke-width="{line:.1f}"/>'
    )
