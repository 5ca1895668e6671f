"""Pictures of shims and bearings: finding, axes and words."""

import re
from base64 import b64decode
from html import unescape

import numpy as np
import pytest

from twoshaft.models.bearing import Pair, life_against_setting
from twoshaft.plots.bearing import life_over_setting, preload_when_warm
from twoshaft.plots.shim import shim_choice
from twoshaft.units.quantities import Q

PNG = b"\x89PNG"
SHOWN = r'<figure[^>]*><img alt="([^"]*)" width="(\d+)" src="data:image/png;base64,([^"]+)">.*'


def pictures(unit):
    for support in unit.bearings.supports:
        yield shim_choice(support, unit.bearings)
        pair = Pair.from_support(support, unit.bearings)
        yield preload_when_warm(support, unit.bearings, Q(0.06, "mm"))
        curve = life_against_setting(
            pair,
            Q(np.linspace(-0.1, 0.1, 41), "mm"),
            tuple(Q(n, "N") for n in support.radial_load_n),
            Q(support.axial_load_n, "N"),
            Q(support.speed_rpm, "rpm"),
        )
        yield life_over_setting(curve, support.name)


@pytest.mark.slow
def test_pictures(unit):
    for picture in pictures(unit):
        axes = picture.figure.axes[0]
        title = axes.get_title(loc="left").replace("\n", " ")
        assert title.endswith(".")
        assert picture.alt.startswith(title)
        assert len(picture.alt) > len(title) + 20
        for text in (axes.get_xlabel(), axes.get_ylabel()):
            assert "[" in text
        alt, width, data = re.fullmatch(SHOWN, picture._repr_html_()).groups()
        assert unescape(alt) == repr(picture) == picture.alt
        png = b64decode(data)
        assert png.startswith(PNG)
        assert int.from_bytes(png[16:20], "big") == 2 * int(width)  # twice as fine as shown


def test_words_of_the_warm_pair(unit):
    support = unit.bearings.support_by_id("differential")
    tight = preload_when_warm(support, unit.bearings, Q(0.02, "mm"))
    assert "becomes an end play of" in tight.alt
    assert "The case changes it by -130 µm" in tight.alt
