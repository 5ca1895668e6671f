"""Colours, sizes and strokes: the only place they are written down.

Data colours are the Okabe-Ito set (Okabe and Ito 2008, "Color Universal Design").
Forms and rigs take text and ground from the page's theme where it has one, so that a dark
theme stays readable; paper and ink are used where there is none, as in print.
"""

INK = "#1b1b1b"
PAPER = "#fcfcfa"
QUIET = "#595959"
ACCENT = "#0b5c8a"
ACCENT_ON_DARK = "#8ecbf2"
OKABE_ITO = {
    "orange": "#e69f00",
    "sky": "#56b4e9",
    "green": "#009e73",
    "yellow": "#f0e442",
    "blue": "#0072b2",
    "vermilion": "#d55e00",
    "purple": "#cc79a7",
}
GRID_PX = 8
SMALL_PX, TEXT_PX, HEAD_PX = 13, 15, 18
TARGET_PX = 32
TEXT_WIDTH_CH = 70
THIN_PX, THICK_PX = 1, 2
LARGE_PX = {"small": 18, "text": 21, "head": 26}
"""Large print: 16 points for text and more, as UKAAF's Clear and Large Print has it (from memory).
"""
GROUNDS = {"cream": "#fff6dc", "blue": "#e3f1fb", "rose": "#fdeaea"}
"""Grounds that a learner's pages can have; ours, pale, so that ink keeps a contrast over 14:1."""
FONT = 'system-ui, -apple-system, "Segoe UI", "Noto Sans", "DejaVu Sans", sans-serif'

INK_NOW = f"var(--jp-content-font-color1, {INK})"
PAPER_NOW = f"var(--jp-layout-color1, {PAPER})"
QUIET_NOW = f"color-mix(in srgb, {INK_NOW} 75%, {PAPER_NOW})"
ACTION_NOW = f"var(--ts-accent, {ACCENT})"
LIT_NOW = f"color-mix(in srgb, {ACTION_NOW} 28%, {PAPER_NOW})"
TOOL_NOW = f"color-mix(in srgb, {INK_NOW} 24%, {PAPER_NOW})"
CAST_NOW = f"color-mix(in srgb, {INK_NOW} 7%, {PAPER_NOW})"
SOFT_NOW = f"color-mix(in srgb, {INK_NOW} 82%, {PAPER_NOW})"
BEHIND_NOW = f"color-mix(in srgb, {INK_NOW} 3%, {PAPER_NOW})"
ABSENT_NOW = f"color-mix(in srgb, {INK_NOW} 45%, {PAPER_NOW})"


def grown(px: float) -> str:
    """The size of letters in a drawing, as CSS: one that is shown smaller says by how much
    (``lab/legible.js``), so that its words stay as large as they were.
    """
    return f"calc({px}px * var(--ts-grown, 1))"


def css_variables() -> str:
    """The style as CSS custom properties of the class ``twoshaft``.

    Returns
    -------
    str
        Two rules: the properties, and what differs on the dark theme.
    """
    properties = {
        "ink": INK_NOW,
        "paper": PAPER_NOW,
        "quiet": QUIET_NOW,
        "line": f"color-mix(in srgb, {INK_NOW} 55%, {PAPER_NOW})",
        "faint": f"color-mix(in srgb, {INK_NOW} 6%, {PAPER_NOW})",
        "accent": ACCENT,
        "on-accent": PAPER,
        "good": OKABE_ITO["green"],
        "bad": OKABE_ITO["vermilion"],
        "warn": OKABE_ITO["orange"],
        "film": OKABE_ITO["sky"],
        "bead": OKABE_ITO["blue"],
        "grid": f"{GRID_PX}px",
        "small": f"{SMALL_PX}px",
        "text": f"{TEXT_PX}px",
        "head": f"{HEAD_PX}px",
        "target": f"{TARGET_PX}px",
        "width": f"{TEXT_WIDTH_CH}ch",
        "grown": "1",
        "font": FONT,
    }
    lines = "\n".join(f"  --ts-{name}: {value};" for name, value in properties.items())
    return (
        f".twoshaft {{\n{lines}\n}}\n"
        f'[data-jp-theme-light="false"] .twoshaft {{\n'
        f"  --ts-accent: {ACCENT_ON_DARK};\n  --ts-on-accent: {INK};\n}}\n" + _adjusted()
    )


def dark_where_asked() -> str:
    """Dark ground and light ink as CSS, for a page of its own in a browser that is asked for dark;
    not where a learner has another ground arranged, and not on paper.
    """
    return (
        "@media screen and (prefers-color-scheme: dark) {\n"
        "html:not([data-ts-colour]) { color-scheme: dark; "
        f"--jp-layout-color1: {INK}; --jp-content-font-color1: {PAPER}; }}\n"
        f"html:not([data-ts-colour]) .twoshaft {{ --ts-accent: {ACCENT_ON_DARK}; "
        f"--ts-on-accent: {INK}; }}\n}}\n"
    )


def _adjusted() -> str:
    """What is arranged for a learner, said on the page's root: large print, another ground."""
    sizes = " ".join(f"--ts-{name}: {px}px;" for name, px in LARGE_PX.items())
    text, head = LARGE_PX["text"], LARGE_PX["head"]
    found = (
        f'html[data-ts-print="large"] .twoshaft {{ {sizes} }}\n'
        f'html[data-ts-print="large"] {{ --jp-content-font-size1: {text}px; '
        f"--jp-content-font-size2: {head}px; --jp-content-font-size3: {head}px; "
        f"--jp-content-font-size4: {head + 4}px; --jp-content-font-size5: {head + 8}px; "
        f"--jp-ui-font-size1: {LARGE_PX['small']}px; --jp-code-font-size: {text}px; }}\n"
    )
    # Pictures grow as a whole, so that no label runs into another; what is then wider than the page
    # is moved sideways in a box of its own.
    sizes = f"--ts-small: {SMALL_PX}px; --ts-text: {TEXT_PX}px; --ts-head: {HEAD_PX}px;"
    found += (
        f'html[data-ts-print="large"] :is(.twoshaft, .jp-RenderedHTML, figure) svg:not(svg *) '
        f"{{ zoom: {text / TEXT_PX:g}; {sizes} }}\n"
        'html[data-ts-print="large"] figure > svg.twoshaft-figure '
        "{ max-width: none; max-height: none; }\n"
        'html[data-ts-print="large"] figure > img '
        f"{{ zoom: {text / TEXT_PX:g}; max-width: none; }}\n"
        'html[data-ts-print="large"] figure '
        "{ overflow-x: auto; min-width: 0; max-width: 100%; }\n"
    )
    for name, colour in GROUNDS.items():
        found += (
            f'html[data-ts-colour="{name}"] {{ --jp-layout-color0: {colour}; '
            f"--jp-layout-color1: {colour}; --jp-layout-color2: {colour}; "
            f"--jp-cell-editor-background: {colour}; --jp-content-font-color0: {INK}; "
            "--jp-rendermime-table-row-background: rgb(0 0 0 / 4%); "
            f"--jp-content-font-color1: {INK}; --jp-ui-font-color0: {INK}; "
            f"--jp-ui-font-color1: {INK}; --jp-ui-font-color2: {QUIET}; }}\n"
            f'html[data-ts-colour="{name}"] .twoshaft {{ --ts-accent: {ACCENT}; '
            f"--ts-on-accent: {PAPER}; }}\n"
        )
    return found
