"""What the drawings share: SVG parts, kinds of line, boxes with words."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass, field
from html import escape
from textwrap import wrap

from twoshaft.plots import style
from twoshaft.units.sections.order import RuleKind


@dataclass(frozen=True)
class LineKind:
    """How a kind of rule is drawn: its letter, words, dashes and colour."""

    letter: str
    words: str
    dashes: str
    colour: str


LINES = {
    RuleKind.CANNOT: LineKind("", "cannot be done without", "", style.INK_NOW),
    RuleKind.BURIES: LineKind("B", "buries", "7 4", style.OKABE_ITO["blue"]),
    RuleKind.HARMS: LineKind("H", "does harm", "2 3", style.OKABE_ITO["vermilion"]),
    RuleKind.BLINDS: LineKind(
        "K", "makes a check worthless", "11 3 2 3", style.OKABE_ITO["purple"]
    ),
}
LETTER_PX = 7.0  # one of small text, on average
_GROWN = 1.6  # letters of a drawing that is shown as small as it is shown at all
SHORT = {
    RuleKind.CANNOT: "cannot",
    RuleKind.BURIES: "buries",
    RuleKind.HARMS: "harms",
    RuleKind.BLINDS: "blinds",
}


STYLE = (
    f".tsf-t{{font:{style.grown(style.SMALL_PX)} {style.FONT};fill:{style.INK_NOW}}}"
    f".tsf-h{{font:600 {style.grown(style.TEXT_PX)} {style.FONT};fill:{style.INK_NOW}}}"
    f".tsf-b{{fill:{style.PAPER_NOW};stroke:{style.INK_NOW};stroke-width:{style.THIN_PX}}}"
    f".tsf-f{{fill:{style.PAPER_NOW};stroke:{style.INK_NOW};stroke-width:{2 * style.THICK_PX}}}"
    f".tsf-l{{fill:{style.PAPER_NOW};stroke:none}}"
    f".tsf-e{{fill:none;stroke-width:1.5}}"
    + "".join(
        f".tsf-{kind.value}{{stroke:{line.colour};stroke-dasharray:{line.dashes or 'none'}}}"
        f".tsf-{kind.value}-head{{fill:{line.colour};stroke:none}}"
        for kind, line in LINES.items()
    )
)


@dataclass
class Drawing:
    """SVG parts gathered in order, for a figure whose title states its finding."""

    width: float
    height: float
    title: str
    description: str
    parts: list[str] = field(default_factory=list)
    grow: float | None = None  # by how much its letters can grow, where it leaves room for that

    def add(self, *parts: str) -> None:
        """Add SVG parts on top."""
        self.parts.extend(parts)

    def text(self) -> str:
        """The drawing as one SVG element with its title and text alternative."""
        grow = f'data-grow="{self.grow:g}" ' if self.grow else ""
        return (
            f'<svg xmlns="http://www.w3.org/2000/svg" class="twoshaft-figure" role="img" {grow}'
            f'viewBox="0 0 {self.width:.0f} {self.height:.0f}" width="{self.width:.0f}" '
            f'height="{self.height:.0f}" aria-label="{escape(self.title)}">'
            f"<title>{escape(self.title)}</title><desc>{escape(self.description)}</desc>"
            f"<style>{STYLE}</style>{''.join(self.parts)}</svg>"
        )


def box(x: float, y: float, w: float, h: float, lines: list[str], kind: str = "tsf-b") -> str:
    """A box with lines of words in its middle."""
    first = y + h / 2 - (len(lines) - 1) * 8 + 4.5
    words = "".join(
        f'<text class="tsf-t" text-anchor="middle" x="{x + w / 2:.1f}" y="{first + 16 * k:.1f}">'
        f"{escape(line)}</text>"
        for k, line in enumerate(lines)
    )
    return f'<rect class="{kind}" x="{x:.1f}" y="{y:.1f}" width="{w}" height="{h}" rx="2"/>{words}'


def fitted_lines(text: str, width: int, most: int) -> list[str]:
    """Words broken into at most so many lines of at most so many letters."""
    lines = wrap(text, width) or [""]
    return lines if len(lines) <= most else [*lines[: most - 1], lines[most - 1][: width - 1] + "…"]


def note_lines(text: str, width: float) -> list[str]:
    """A note below a drawing, broken so that it ends within it where its letters have grown."""
    return wrap(text, int(width / (LETTER_PX * _GROWN)))


def note_room(lines: list[str]) -> float:
    """How high such a note can get [px]."""
    return 1.25 * style.SMALL_PX * _GROWN * len(lines)


def note(x: float, y: float, lines: list[str]) -> str:
    """A note whose last line stands at a height."""
    first = 1.25 * (1 - len(lines))
    told = "".join(
        f'<tspan x="{x:.0f}" dy="{1.25 if k else first:g}em">{escape(line)}</tspan>'
        for k, line in enumerate(lines)
    )
    return f'<text class="tsf-t" y="{y:.0f}">{told}</text>'


def word(x: float, y: float, text: str) -> str:
    """A word centred at a point, on a ground that hides the line behind it."""
    wide = 7.4 * len(text) + 6
    return (
        f'<rect class="tsf-l" x="{x - wide / 2:.1f}" y="{y - 8:.1f}" width="{wide:.1f}" '
        f'height="16"/><text class="tsf-t" text-anchor="middle" x="{x:.1f}" y="{y + 4.5:.1f}">'
        f"{escape(text)}</text>"
    )


def html_list(sentences: Iterable[str]) -> str:
    """Sentences as an HTML list."""
    return "<ul>" + "".join(f"<li>{escape(one)}</li>" for one in sentences) + "</ul>"
