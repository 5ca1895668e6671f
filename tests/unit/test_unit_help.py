"""Help while writing a unit file: what the schema accepts, near names, commas, harmless texts."""

import unicodedata

import pytest
from hypothesis import given
from hypothesis import strategies as st

from twoshaft.errors import UnitFileError
from twoshaft.units import load_unit, unit_json_schema
from twoshaft.units.described import sections_of
from twoshaft.units.loader import SHIPPED
from twoshaft.units.new_unit import Wishes, new_unit
from twoshaft.units.source import parse_nodes
from twoshaft.units.unit import Unit
from twoshaft.units.unseen import unseen_characters

TEXT = (SHIPPED / "tarnbeck-b5.yaml").read_text(encoding="utf-8")


def accepts_a_word(entry):
    return any("items" in way for way in entry.get("anyOf", ())) and any(
        way.get("type") == "string" for way in entry["anyOf"]
    )


def test_wherever_the_schema_takes_a_word_for_a_list_the_loader_does():
    schema = unit_json_schema()["$defs"]
    seen = 0
    for model in sections_of(Unit):
        entry = schema["WholeUnit" if model is Unit else model.__name__]
        for name, field in model.model_fields.items():
            if accepts_a_word(entry["properties"][field.alias or name]):
                seen += 1
                assert any("_listed" in repr(one) for one in field.metadata), (model, name)
    assert seen > 15


@pytest.mark.slow
@pytest.mark.parametrize(
    ("before", "after", "said"),
    [
        ("minutes to do: 3", "minutes to do: 2,5", "with a decimal comma; write 2.5"),
        ("minutes: 12, tool", "minutes: 12,5, tool", "'5' stands alone behind a comma"),
        ("minutes to do: 3", "minutes to do: 3,5 min", "with its unit; write 3.5, the key names"),
        ("minutes to do: 3", "work minutes: 3", "'work minutes' is not a known key"),
        ("turn mm: [-9, 9]", "turn mm: [-9, 9, 0]", "has too many entries; give at most 2"),
        ("left: side-taper", "left: side-tapper", "did you mean 'side-taper'?"),
        ("sealant: case-sealant", "sealant: case-seal", "did you mean 'case-sealant'?"),
        ("wrench: middle-wrench", "wrench: mid-wrench", "did you mean 'middle-wrench'?"),
        ("gate: gate-first-second", "gate: first-second", "did you mean 'gate-first-second'?"),
        ("hub metal: case-aluminium", "hub metal: aluminium", "did you mean 'case-aluminium'?"),
        ("name: Magnet,", 'name: "Mag\\u202enet",', "cannot be seen (U+202E)"),
        ("name: Magnet,", 'name: "Mag\\enet",', "cannot be seen (U+001B)"),
        ("name: Magnet,", "name: <img src=x>,", "markup"),
    ],
)
def test_a_slip_is_told_with_what_was_meant(tmp_path, before, after, said):
    assert before in TEXT
    path = tmp_path / "mine.yaml"
    path.write_text(TEXT.replace(before, after, 1), encoding="utf-8")
    with pytest.raises(UnitFileError) as told:
        load_unit(path)
    sentences = [one.sentence for one in told.value.findings]
    assert any(said in sentence and ", line " in sentence for sentence in sentences), sentences


@pytest.mark.slow
@given(st.text(max_size=30))
def test_only_texts_that_can_be_read_get_through(text):
    root = parse_nodes("a: b", "file")
    node = type(root)(text, "file", 1)
    hidden = any(
        unicodedata.category(one)[0] == "C" or unicodedata.category(one) in ("Zl", "Zp")
        for one in text
        if one not in "\n\t"
    )
    assert bool(list(unseen_characters(node))) >= hidden


@pytest.mark.slow
def test_a_name_of_ones_own_for_a_key_is_met_by_what_is_missing(tmp_path):
    """A needle bearing has a width for whoever reads its drawing; the file calls it its stand."""
    text = new_unit(Wishes("Brook"))
    begins = "  types:\n"
    own = "    - {id: idler-needles, kind: needle, name: Needles, bore mm: 25, outside mm: 33, %s: %s}\n"
    path = tmp_path / "mine.yaml"

    def told(put):
        path.write_text(text.replace(begins, begins + put, 1), encoding="utf-8")
        with pytest.raises(UnitFileError) as trouble:
            load_unit(path)
        return [one.sentence for one in trouble.value.findings]

    said = told(own % ("width mm", "20"))
    assert any(one.endswith("is 'stand mm' meant, which is missing here?") for one in said), said
    said = told(own % ("standard", "XY99/99"))
    assert any("it has HK1616, HK2016" in one for one in said), said
