"""Pictures of shims, bearings and film: finding, axes and words."""

import numpy as np

from twoshaft.models.bearing import Pair, life_against_setting
from twoshaft.models.film import Film, Land, Stroke, close, good_strokes
from twoshaft.plots.bearing import life_over_setting, preload_when_warm
from twoshaft.plots.film import seal_map
from twoshaft.plots.shim import shim_choice
from twoshaft.units.quantities import Q

PNG = b"\x89PNG"


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
    face = unit.faces.faces[0]
    film = Film.bare(Land.of(face)).lay(*good_strokes(face))
    sealant = unit.faces.sealant_by_id(face.sealant)
    yield seal_map(close(film, sealant, 1))
    across = Q(np.array([(0.0, 150.0), (50.0, 145.0)]), "mm")
    yield seal_map(close(film.lay(Stroke.smear(across, width=Q(4, "mm"))), sealant, 1))


def test_pictures(unit):
    for picture in pictures(unit):
        axes = picture.figure.axes[0]
        title = axes.get_title(loc="left").replace("\n", " ")
        assert title.endswith(".")
        assert picture.alt.startswith(title)
        assert len(picture.alt) > len(title) + 20
        for text in (axes.get_xlabel(), axes.get_ylabel()):
            assert "[" in text
        data, extra = picture._repr_mimebundle_()
        assert data["image/png"].startswith(PNG)
        assert extra["image/png"]["alt"] == data["text/plain"] == picture.alt


def test_words_of_the_map(unit):
    face = unit.faces.faces[0]
    film = Film.bare(Land.of(face)).lay(*good_strokes(face)[1:])
    picture = seal_map(close(film, unit.faces.sealant_by_id(face.sealant), 1))
    assert picture.alt.startswith("One way is left for the oil")
    assert "Way 1 goes from x" in picture.alt
    assert "Near the magnet the largest lump" in picture.alt


def test_words_of_the_warm_pair(unit):
    support = unit.bearings.support_by_id("differential")
    tight = preload_when_warm(support, unit.bearings, Q(0.02, "mm"))
    assert "becomes an end play of" in tight.alt
    assert "The case changes it by -130 µm" in tight.alt
