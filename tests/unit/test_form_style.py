"""Colours can be told from their ground; the scripts and styles are whole.

Contrast as in WCAG 2.2, success criteria 1.4.3 (text 4.5:1) and 1.4.11 (marks 3:1).
"""

import re

import pytest

from twoshaft.jobsheet.form import FormWidget
from twoshaft.plots import style
from twoshaft.rigs import BuildSimulator, OrderBench, RulePicture

DARK = "#111111"  # ground of JupyterLab's dark theme
SCREENS = [FormWidget, OrderBench, BuildSimulator, RulePicture]


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


@pytest.mark.parametrize("screen", SCREENS, ids=lambda screen: screen.__name__)
def test_every_style_variable_is_defined(screen):
    used = set(re.findall(r"var\((--ts-[a-z-]+)", screen._css))
    defined = set(re.findall(r"(--ts-[a-z-]+):", screen._css))
    assert used <= defined


@pytest.mark.parametrize("screen", SCREENS, ids=lambda screen: screen.__name__)
def test_colours_stand_in_the_style_module_only(screen):
    own = screen._css.replace(style.css_variables(), "")
    assert re.findall(r"#[0-9a-fA-F]{3,8}\b|\brgba?\(", own) == []
    assert re.findall(r"#[0-9a-fA-F]{6}\b|\brgba?\(", screen._esm) == []


@pytest.mark.parametrize("screen", SCREENS, ids=lambda screen: screen.__name__)
def test_no_name_is_declared_twice_in_a_screens_script(screen):
    # The files of a script are put end to end; the browser refuses a name declared twice.
    names = re.findall(r"^(?:const|let|function|class) ([A-Za-z_$][\w$]*)", screen._esm, re.M)
    assert sorted(names) == sorted(set(names))
