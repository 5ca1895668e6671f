"""A round sealed face told by its circles, and the same one told by corners."""

import jsonschema
import pytest
import yaml

from twoshaft.errors import UnitFileError
from twoshaft.models.audit import sound_unit
from twoshaft.units import load_unit
from twoshaft.units.new_unit import Wishes, new_unit
from twoshaft.units.schema import unit_json_schema
from twoshaft.units.sections.faces import Face


@pytest.fixture
def begun(tmp_path):
    path = tmp_path / "mine.yaml"
    path.write_text(new_unit(Wishes("Brook", gears=3, faces=1, bearings="ball")))
    return path


def test_circles_are_as_good_as_corners(begun):
    face = load_unit(begun).faces.faces[0]
    assert (len(face.holes), len(face.segments), len(face.outline)) == (12, 12, 48)
    assert [hole.id for hole in face.holes if hole.blind] == ["bolt-4"]
    assert face.segments[-1].points[-1] == face.segments[0].points[0]
    corners = face.model_dump(mode="json", by_alias=True) | {"round": None}
    assert Face.model_validate(corners) == face.model_copy(update={"round": None})


def test_what_is_given_beside_the_circles_stays(begun):
    given = yaml.safe_load(begun.read_text())["faces"]["faces"][0]
    cavity = {"id": "jet", "name": "Jet", "kind": "oil", "outline": [[-9, -9], [9, -9], [0, 9]]}
    face = Face.model_validate(given | {"cavities": [cavity]})
    assert [one.id for one in face.cavities] == ["jet"] and len(face.holes) == 12


@pytest.mark.slow
def test_another_number_of_bolts_is_one_figure(begun):
    text = begun.read_text()
    begun.write_text(text.replace("bolts: 12, hole", "bolts: 10, hole").replace(
        "count: 12", "count: 10"))  # fmt: skip
    unit = sound_unit(begun)
    assert len(unit.faces.faces[0].holes) == 10


@pytest.mark.parametrize(
    ("old", "new", "said"),
    [
        ("bolt circle mm: 240.0", "bolt circle mm: 255", "the holes do not lie on the face"),
        ("bolts: 12, hole", "bolts: 60, hole", "the bolts touch one another"),
        ("blind: [4]", "blind: [40]", "'blind' names bolt 40; there are 12"),
        ("bolt circle mm: 240.0", "bolt ring mm: 240", "'bolt circle mm' is missing"),
        ("bolts: 12, hole", "bolts: twelve, hole", "'twelve'"),
    ],
)
def test_circles_that_cannot_be_are_told_with_their_line(begun, old, new, said):
    text = begun.read_text()
    assert old in text
    begun.write_text(text.replace(old, new))
    with pytest.raises(UnitFileError) as told:
        load_unit(begun)
    sentences = [one.sentence for one in told.value.findings]
    assert any(said in line for line in sentences), sentences
    assert all("mine.yaml, line " in line for line in sentences)
    assert not any("outline" in line and "missing" in line for line in sentences)


def test_the_schema_takes_circles_and_misses_what_neither_tells(begun):
    given = yaml.safe_load(begun.read_text())
    judge = jsonschema.Draft202012Validator(unit_json_schema())
    assert not list(judge.iter_errors(given))
    del given["faces"]["faces"][0]["round"]
    assert list(judge.iter_errors(given))
