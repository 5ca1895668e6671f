"""Tools of the bench as they look in the hand and where they stand: simple outlines, not to scale.

What a tool looks like, its name says (a dial, a depth gauge, a driver ...); of one whose name tells
none of these nothing is drawn.
"""

from __future__ import annotations

from html import escape

SIDE_PX = 96.0
TIP_PX = (48.0, 94.0)
"""Where a tool meets what it stands on."""

_ROD = '<path class="tsu-whole" d="M44 {0}H52V{1}H44Z"/>'
_FORMS = (
    (("dial",), '<circle class="tsu-whole" cx="48" cy="36" r="30"/><path class="tsu-coil" '
     'd="M48 36L64 18M48 6V14M78 36H70M48 66V58M18 36H26"/><path class="tsu-whole" '
     'd="M44 66H52V84L48 94L44 84Z"/>'),
    (("depth",), _ROD.format(4, 94) + '<path class="tsu-whole" d="M12 52H84V66H12Z"/>'
     '<path class="tsu-line" d="M52 12H58M52 20H56M52 28H58M52 36H56M52 44H58"/>'),
    (("torque", "wrench"), '<path class="tsu-whole" d="M4 12L12 4L72 64L64 72Z"/>'
     '<path class="tsu-whole" d="M2 14L14 2L34 22L22 34Z"/>'
     '<circle class="tsu-whole" cx="68" cy="68" r="13"/><path class="tsu-whole" '
     'd="M60 76L48 94L66 84Z"/>'),
    (("driver", "sleeve", "installer"), _ROD.format(4, 62)
     + '<path class="tsu-whole" d="M20 62H76V78H68V94H28V78H20Z"/>'),
    (("punch",), '<path class="tsu-whole" d="M40 4H56V60L51 94H45L40 60Z"/>'),
    (("scale", "cord"), '<path class="tsu-whole" d="M36 14H60V66H36Z"/><path class="tsu-coil" '
     'd="M48 14V4M48 66V94M42 26H50M42 36H54M42 46H50"/>'),
    (("feeler", "straightedge"), '<path class="tsu-whole" d="M4 82H92V94H4Z"/>'
     '<path class="tsu-whole" d="M20 74L84 26L88 32L24 80Z"/><path class="tsu-line" '
     'd="M20 74L78 16L84 22L26 76"/>'),
    (("press",), '<path class="tsu-whole" d="M8 4H88V18H8Z"/>' + _ROD.format(18, 78)
     + '<path class="tsu-whole" d="M30 78H66V94H30Z"/>'),
    (("hammer", "mallet"), '<path class="tsu-whole" d="M8 66H60V94H8Z"/>'
     '<path class="tsu-whole" d="M44 66L80 4L90 10L54 72Z"/>'),
)  # fmt: skip


def tool_outline(name: str) -> str | None:
    """A tool as SVG in a square of ``SIDE_PX``; None where its name does not say its form.

    Parameters
    ----------
    name : str
        What the workshop calls it.
    """
    said = name.lower()
    return next((svg for words, svg in _FORMS if any(word in said for word in words)), None)


def tool_standing(name: str, at: tuple[float, float], reads: str = "") -> str:
    """A tool with its tip at a place of a picture, as SVG, with what is set on it beside it.

    Parameters
    ----------
    name : str
        One that :func:`tool_outline` draws.
    at : (float, float)
        The place [px].
    reads : str, optional
        What is set on it.
    """
    x, y = at[0] - TIP_PX[0], at[1] - TIP_PX[1]
    words = (
        f'<text class="tsu-t tsu-on" x="{SIDE_PX + 4:g}" y="12">{escape(reads)}</text>'
        if reads else ""
    )  # fmt: skip
    return (
        f'<g class="tsu-tool" transform="translate({x:.0f} {y:.0f})"><title>{escape(name)}</title>'
        f"{tool_outline(name)}{words}</g>"
    )
