"""Colours can be told from their ground; colours have one home; every screen is in the bundle.

Contrast as in WCAG 2.2, success criteria 1.4.3 (text 4.5:1) and 1.4.11 (marks 3:1).
"""

import re
from pathlib import Path

import pytest

import twoshaft.jobsheet.form
import twoshaft.jobsheet.startpage
import twoshaft.practice.screen
import twoshaft.rigs  # noqa: F401
import twoshaft_grader.desk_pages.screen  # noqa: F401
from twoshaft.jobsheet.screen import Screen
from twoshaft.plots import style

DARK = "#111111"  # ground of JupyterLab's dark theme
SOURCE = Path(__file__).resolve().parents[2] / "course/browser/src"


def luminance(colour):
    parts = [int(colour[i : i + 2], 16) / 255 for i in (1, 3, 5)]
    red, green, blue = (
        part / 12.92 if part <= 0.03928 else ((part + 0.055) / 1.055) ** 2.4 for part in parts
    )
    return 0.2126 * red + 0.7152 * green + 0.0722 * blue


def contrast(a, b):
    high, low = sorted((luminance(a), luminance(b)), reverse=True)
    return (high + 0.05) / (low + 0.05)


def test_contrast_of_black_on_white_is_21():
    assert contrast("#000000", "#ffffff") == pytest.approx(21)


@pytest.mark.parametrize(
    ("text", "ground"),
    [
        (style.INK, style.PAPER),
        (style.QUIET, style.PAPER),
        (style.ACCENT, style.PAPER),
        (style.PAPER, style.ACCENT),
        (style.ACCENT_ON_DARK, DARK),
        (style.INK, style.ACCENT_ON_DARK),
    ],
)
def test_text_can_be_read(text, ground):
    assert contrast(text, ground) >= 4.5


@pytest.mark.parametrize("name", ["green", "vermilion", "blue"])
def test_marks_can_be_seen(name):
    assert contrast(style.OKABE_ITO[name], style.PAPER) >= 3
    assert contrast(style.OKABE_ITO[name], DARK) >= 3


def test_every_style_variable_is_defined():
    sheets = "".join(path.read_text() for path in SOURCE.glob("styles/*.css"))
    used = set(re.findall(r"var\((--ts-[a-z-]+)", sheets))
    defined = set(re.findall(r"(--ts-[a-z-]+):", style.css_variables()))
    assert used <= defined


def test_colours_stand_in_the_style_module_only():
    paths = [*SOURCE.rglob("*.css"), *SOURCE.rglob("*.js")]
    assert len(paths) > 40
    for path in paths:
        text = re.sub(r"(?m)^\s*(//|\*|/\*).*$|`#\$\{", "", path.read_text())
        assert re.findall(r"#[0-9a-fA-F]{3,8}\b|\brgba?\(\d", text) == [], path


def _screens(base):
    for one in base.__subclasses__():
        yield one
        yield from _screens(one)


def test_every_screen_is_in_the_bundle():
    known = set(re.findall(r"^  (\w+): render", (SOURCE / "screens.js").read_text(), re.M))
    named = {one.screen for one in _screens(Screen) if "screen" in vars(one)}
    assert named == known and len(known) > 20


def test_a_form_brings_only_a_few_lines_of_script_along():
    assert len(Screen._esm) < 2000
    assert not hasattr(Screen, "_css")
