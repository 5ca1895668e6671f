"""Variants: replace, change, add and remove by id, and what goes wrong."""

import shutil

import pytest

from twoshaft.errors import UnitFileError
from twoshaft.units import load_unit, loader, shipped_units
from twoshaft.units.loader import SHIPPED
from twoshaft.units.source import parse_nodes
from twoshaft.units.variants import VERBS, apply_variant
from twoshaft.units.whole_file import shipped_digest, whole_text

BASE = """\
identity: {id: base, name: Base unit, version: "1", invented: true, college: Tarnbeck, scenario: A test., gears: 5}
parts:
  - {id: ring, name: Ring}
  - {id: seal, name: Seal}
stages:
  - {id: bench, name: Bench}
operations:
  - {id: fit-ring, name: Fit the ring, stage: bench, parts: ring, minutes to do: 1, minutes to undo: 1}
  - {id: fit-seal, name: Fit the seal, stage: bench, parts: seal, minutes to do: 1, minutes to undo: 1}
rules:
  - {id: one, kind: cannot, earlier: fit-ring, later: fit-seal, reason: It sits on it.}
"""
HEAD = "variant of: base.yaml\nidentity: {id: mine}\n"


@pytest.fixture
def variant(tmp_path):
    """Return a function that writes a variant beside its base and loads it."""

    def load(text, base=BASE):
        (tmp_path / "base.yaml").write_text(base)
        path = tmp_path / "mine.yaml"
        path.write_text(text)
        return load_unit(path)

    return load


def test_identity_is_merged_key_by_key(variant):
    unit = variant(HEAD)
    assert unit.identity.id == "mine"
    assert unit.identity.variant_of == "base"
    assert unit.identity.name == "Base unit"


def test_the_four_verbs(variant):
    unit = variant(
        HEAD
        + """\
parts:
  remove: [seal]
  add:
    - {id: plate, name: Plate, after: ring}
    - {id: nut, name: Nut}
operations:
  change:
    - {id: fit-ring, minutes to do: 7}
  replace:
    - {id: fit-seal, name: Fit the plate, stage: bench, parts: [plate, nut], minutes to do: 2, minutes to undo: 2}
"""
    )
    assert [part.id for part in unit.parts] == ["ring", "plate", "nut"]
    ring, plate = unit.operations
    assert (ring.minutes_do, ring.minutes_undo, ring.name) == (7, 1, "Fit the ring")
    assert (plate.name, plate.parts) == ("Fit the plate", ("plate", "nut"))


def test_variant_of_a_variant(variant, tmp_path):
    (tmp_path / "second.yaml").write_text(
        "variant of: mine.yaml\nidentity: {id: second}\nparts: {add: [{id: b, name: Bolt}]}\n"
        "operations: {change: [{id: fit-ring, parts: [ring, b]}]}\n"
    )
    variant(HEAD)
    unit = load_unit(tmp_path / "second.yaml")
    assert unit.identity.variant_of == "mine"
    assert unit.operations[0].parts == ("ring", "b")


def test_any_section_of_a_later_time_is_merged_alike():
    """Sections need not be known: keys merge, lists of entries take verbs, null leaves out."""
    base = parse_nodes(
        "gate: {width: 3, bars: [{id: a, x: 1}, {id: b, x: 2}], path: [1, 2]}\nold: {x: 1}", "base"
    )
    change = parse_nodes(
        "variant of: base\n"
        "gate: {width: 4, bars: {remove: [a], add: [{id: c, x: 3}]}, path: [3]}\n"
        "old: null\nnew: {add: [{id: z}]}",
        "mine",
    )
    assert apply_variant(base, change).plain() == {
        "gate": {"width": 4, "bars": [{"id": "b", "x": 2}, {"id": "c", "x": 3}], "path": [3]},
        "new": [{"id": "z"}],
    }


def test_a_change_reaches_into_the_lists_of_an_entry():
    base = parse_nodes(
        "pairs: [{id: front, target: {kind: play, low: 1, high: 2}, stack: [{id: a, x: 1}, {id: b,"
        " x: 2}], steps: [1, 2]}]",
        "base",
    )
    change = parse_nodes(
        "variant of: base\n"
        "pairs: {change: [{id: front, target: {kind: gap, low: 0}, stack: {remove: [a], change: [{id: b,"
        " x: 5}], add: [{id: c, x: 6}]}, steps: [3]}]}",
        "mine",
    )
    assert apply_variant(base, change).plain()["pairs"] == [
        {
            "id": "front",
            "target": {"kind": "gap", "low": 0},
            "stack": [{"id": "b", "x": 5}, {"id": "c", "x": 6}],
            "steps": [3],
        }
    ]
    twice = parse_nodes(
        "variant of: base\npairs: {change: [{id: front, stack: {change: [{id: d, x: 1}]}}]}", "mine"
    )
    with pytest.raises(UnitFileError, match="no 'd' in 'stack' of the base to change") as told:
        apply_variant(base, twice)
    assert "mine, line 2" in str(told.value)


@pytest.mark.parametrize(
    ("text", "line", "what", "mend"),
    [
        ("parts: {remove: [rinq]}", 3, "no 'rinq' in 'parts' of the base to remove", "did you mean 'ring'?"),
        ("parts: {change: [{id: bolt, name: B}]}", 3, "no 'bolt' in 'parts'", "check the id"),
        ("parts: {add: [{id: ring, name: Ring}]}", 3, "'ring' cannot be added", "under replace"),
        ("parts: {add: [{name: Ring}]}", 3, "an entry under 'add' in 'parts' has no id", "give it an id"),
        ("parts: {remove: [{id: ring}]}", 3, "an entry under 'remove' in 'parts' has no id", "the ids only"),
        ("parts:\n  remove: [seal]\n  change:\n    - {id: seal, name: Lip seal}", 6, "'seal' in 'parts' is changed twice (first on line 4)", "keep one"),
        ("parts: {add: [{id: nut, name: Nut, after: rinq}]}", 3, "no 'rinq' in 'parts' to put 'nut' after", "did you mean 'ring'?"),
        ("parts: {remove: ring}", 3, "'remove' in 'parts' is not a list", "dash"),
        ("parts: [{id: ring, name: Ring}]", 3, "does not say what to do with its entries", "remove, replace, change or add"),
        ("rules:\n  change:\n    - id: one\n      kind: hides", 6, "'kind' is 'hides'", "choose"),
        ("operations: {remove: [fit-seal]}", None, "'later' of 'one' names 'fit-seal'", "add it to operations"),
        ("zzz: {}", 3, "'zzz' is not a known key", "remove it"),
    ],
)  # fmt: skip
def test_slips_in_a_variant(variant, text, line, what, mend):
    with pytest.raises(UnitFileError) as caught:
        variant(HEAD + text + "\n")
    sentence = next(s for s in str(caught.value).splitlines() if what in s)
    assert mend in sentence
    # what the removal breaks stands in the base, on its own line there
    place = f"mine.yaml, line {line}:" if line else "base.yaml, line 11:"
    assert place in sentence


def test_variant_without_an_id_of_its_own(variant):
    with pytest.raises(UnitFileError, match="same id as its base") as caught:
        variant("variant of: base.yaml\n")
    assert "mine.yaml, line 1:" in str(caught.value)


def test_variant_of_itself_and_in_a_ring(variant, tmp_path):
    with pytest.raises(UnitFileError, match="refers back to itself"):
        variant("variant of: mine.yaml\nidentity: {id: mine}\n")
    with pytest.raises(UnitFileError, match="refers back to itself"):
        variant(HEAD, base="variant of: mine.yaml\nidentity: {id: other}\n")


@pytest.mark.parametrize("base", ["nowhere.yaml", "nowhere", "[a, b]", "7"])
def test_base_that_is_not_there(variant, base):
    with pytest.raises(UnitFileError) as caught:
        variant(f"variant of: {base}\nidentity: {{id: mine}}\n")
    assert "mine.yaml, line 1:" in str(caught.value)
    assert "; " in str(caught.value)


def kinds_of_change(node, at=()):
    """Every kind of change that a variant file makes, by what it does where."""
    for key, value in node.value.items():
        if value.value is None:
            yield "a key left out of an entry" if "change" in at else "a set of keys left out"
        elif key in VERBS and "change" in at:
            yield f"{key} in a list of an entry"
        elif key in VERBS:
            yield key
        elif "change" not in at and not isinstance(value.value, dict | list):
            yield "a single key"
        if isinstance(value.value, dict):
            yield from kinds_of_change(value, (*at, key))
        elif key in ("change", "add"):
            for entry in value.value:
                if key == "add" and "after" in entry.value:
                    yield "add at a place"
                yield from kinds_of_change(entry, (*at, key))


def test_a_variant_of_every_kind_ships():
    found, levels = set(), {}
    for id in shipped_units():
        node = parse_nodes((SHIPPED / f"{id}.yaml").read_text(encoding="utf-8"), id)
        base = node.value.get("variant of")
        levels[id] = base.value if base else None
        if base:
            found |= set(kinds_of_change(node))
    assert {
        *VERBS,
        "add at a place",
        "a single key",
        "a key left out of an entry",
        "a set of keys left out",
        "change in a list of an entry",
    } <= found
    assert any(levels.get(base) for base in levels.values()), "a variant of a variant"


def test_a_variant_of_a_variant_tells_what_each_level_changed():
    unit = load_unit("tarnbeck-b5-sender")
    assert unit.identity.variant_of == "tarnbeck-b5-early"
    early, whole = load_unit("tarnbeck-b5-early"), load_unit("tarnbeck-b5")
    names = {one.id for one in unit.operations}
    assert "lay-lock-plate" in names and "fit-speed-gear" not in names  # of each level one
    assert unit.gear_train.speed_drive is None and whole.gear_train.speed_drive
    tongue = unit.operation_by_id["lay-lock-plate"].wrong_ways[0]
    assert tongue.name != early.operation_by_id["lay-lock-plate"].wrong_ways[0].name
    assert tongue.seen_as == early.operation_by_id["lay-lock-plate"].wrong_ways[0].seen_as


@pytest.mark.slow
@pytest.mark.parametrize("id", shipped_units())
def test_a_unit_is_the_same_from_one_file_that_needs_no_other(id, tmp_path):
    path = tmp_path / "whole.yaml"
    path.write_text(text := whole_text(id))
    assert "variant of" not in parse_nodes(text, id).value
    assert load_unit(path).model_dump() == load_unit(id).model_dump()


def test_a_shipped_units_digest_is_of_every_file_it_is_made_of(tmp_path, monkeypatch):
    def digests():
        shipped_digest.cache_clear()
        return {id: shipped_digest(id) for id in shipped_units()}

    shutil.copytree(SHIPPED, tmp_path / "files")
    monkeypatch.setattr(loader, "SHIPPED", tmp_path / "files")
    was = digests()
    with (tmp_path / "files" / "tarnbeck-b5-early.yaml").open("a") as file:
        file.write("# a word more\n")
    changed = {id for id, found in digests().items() if found != was[id]}
    assert changed == {"tarnbeck-b5-early", "tarnbeck-b5-sender"}  # the second varies the first
    assert len(set(was.values())) == len(was) and shipped_digest("nowhere") == ""
    shipped_digest.cache_clear()
