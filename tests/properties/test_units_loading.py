"""Whatever is in a unit file: it loads, or UnitFileError says why in whole sentences."""

import json
import re
from itertools import permutations

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from twoshaft.errors import UnitFileError
from twoshaft.units import load_unit
from twoshaft.units.conflicts import conflicts
from twoshaft.units.loader import SHIPPED
from twoshaft.units.new_unit import Wishes, new_unit
from twoshaft.units.precedence import certain_bonds, choices, step_of
from twoshaft.units.source import parse_nodes
from twoshaft.units.unit import Unit
from twoshaft.units.variants import apply_variant

RELAXED = settings(
    deadline=None, max_examples=60, suppress_health_check=[HealthCheck.function_scoped_fixture]
)
ids = st.sampled_from(["a", "b", "c", "d", "e"])
few = st.lists(ids, max_size=3)
anything = st.recursive(
    st.none() | st.booleans() | st.integers(-3, 300) | st.floats() | st.text(max_size=8),
    lambda inner: st.lists(inner, max_size=3) | st.dictionaries(ids, inner, max_size=3),
    max_leaves=6,
)


def entries(**fields):
    return st.lists(st.fixed_dictionaries({"id": ids, "name": st.just("Some name"), **fields}))


operation = {
    "stage": ids,
    "kind": st.sampled_from(["fit", "secure", "prepare", "trial", "remove", "measure", "check"]),
    "parts": few,
    "minutes to do": st.integers(1, 9),
    "minutes to undo": st.integers(0, 9),
}
reason = {"reason": st.just("Because it is so.")}
side = (
    st.fixed_dictionaries({"earlier": ids})
    | st.fixed_dictionaries({"any of": st.lists(ids, min_size=2, max_size=3)})
    | st.fixed_dictionaries({"not during": ids})
)
rule = st.builds(
    lambda one, rest: {**one, **rest},
    side,
    st.fixed_dictionaries(
        {
            "id": ids,
            "later": ids,
            "kind": st.sampled_from(["cannot", "buries", "harms", "blinds"]),
            **reason,
        }
    ),
)
identity = {
    "id": "little",
    "name": "Little unit",
    "version": "1",
    "invented": True,
    "college": "Tarnbeck College",
    "scenario": "A few steps for a test.",
    "gears": 5,
}
units = st.fixed_dictionaries(
    {
        "identity": st.just(identity),
        "parts": entries(),
        "stages": entries(),
        "operations": entries(**operation),
        "rules": st.lists(rule, max_size=6),
        "holds": entries(given_by=few, ended_by=few, needed_by=few, **reason),
        "clocks": entries(starts=ids, ends=ids, minutes=st.integers(1, 20), **reason),
        "together": entries(operations=few, **reason),
    }
)


def load(tmp_path, text):
    """Load text as a unit file; the sentences of its refusal, or none."""
    path = tmp_path / "little.yaml"
    path.write_text(text, encoding="utf-8", errors="surrogatepass")
    try:
        assert isinstance(load_unit(path), Unit)
    except UnitFileError as trouble:
        sentences = str(trouble).splitlines()
        assert sentences
        for sentence in sentences:
            assert sentence.endswith((".", "?"))
        return sentences
    return []


@RELAXED
@given(units)
def test_any_unit_loads_or_is_refused_in_sentences(tmp_path, data):
    load(tmp_path, json.dumps(data))


@pytest.mark.slow
@RELAXED
@given(units, st.data())
def test_any_value_anywhere(tmp_path, data, draw):
    section = draw.draw(st.sampled_from(sorted(data)))
    value = draw.draw(anything)
    if isinstance(data[section], list) and data[section] and draw.draw(st.booleans()):
        entry = draw.draw(st.sampled_from(data[section]))
        entry[draw.draw(st.sampled_from(sorted(entry)))] = value
    else:
        data[section] = value
    load(tmp_path, json.dumps(data))


VARIANT_TEXT = (SHIPPED / "tarnbeck-b5-early.yaml").read_text(encoding="utf-8")


@pytest.mark.slow
@settings(RELAXED, max_examples=40)
@given(
    st.integers(0, len(VARIANT_TEXT) - 1),
    st.integers(0, 40),
    st.text(st.characters(codec="utf-8"), max_size=12),
)
def test_damage_anywhere_in_a_shipped_file(tmp_path, start, length, put):
    load(tmp_path, VARIANT_TEXT[:start] + put + VARIANT_TEXT[start + length :])


def mutated(text, data):
    """A file after a few slips: lines lost, doubled, moved or swapped; values of any kind."""
    lines = text.splitlines()
    for _ in range(data.draw(st.integers(1, 4))):
        place = data.draw(st.integers(0, len(lines) - 1))
        match data.draw(st.integers(0, 5)):
            case 0:
                del lines[place]
            case 1:
                lines.insert(place, lines[place])
            case 2:
                other = data.draw(st.integers(0, len(lines) - 1))
                lines[place], lines[other] = lines[other], lines[place]
            case 3:
                lines[place] = data.draw(st.sampled_from(["#", " ", "  - "])) + lines[place]
            case 4:
                put = data.draw(st.text(max_size=6) | st.sampled_from(SLIPS))
                at = data.draw(st.integers(0, len(lines[place])))
                lines[place] = lines[place][:at] + put + lines[place][at:]
            case _:
                value = json.dumps(data.draw(anything))
                lines[place] = re.sub(
                    r": [^{\\[,}]+", lambda _, new=value: f": {new}", lines[place], count=1
                )
        lines = lines or [""]
    return "\n".join(lines)


SLIPS = (
    "0",
    "-1",
    "1e999",
    "nan",
    "null",
    "~",
    "[",
    "}",
    "\u202e",
    "\u0000",
    "<b>",
    "*a",
    "&a ",
    "2,5",
)
BEGUN = new_unit(Wishes("Brook", gears=3, faces=1))


@pytest.mark.slow
@settings(RELAXED, max_examples=40)
@given(st.data())
def test_a_mutated_file_is_told_in_sentences(tmp_path, data):
    load(tmp_path, mutated(BEGUN, data))


@pytest.mark.long
@pytest.mark.parametrize("part", range(10))  # so that it is seen how far they have come
@settings(RELAXED, max_examples=1_000)
@given(data=st.data())
def test_ten_thousand_mutated_files_are_told_in_sentences(tmp_path, part, data):
    load(tmp_path, mutated(BEGUN, data))


def small_unit(count, pairs, any_of, group):
    """A unit of `count` steps with rules from pairs, `any of` from tuples, and one group."""
    name = "abcdefgh"
    rules = [
        {"id": f"r{k}", "kind": "buries", "earlier": name[i], "later": name[j], "reason": "So."}
        for k, (i, j) in enumerate(pairs)
    ] + [
        {
            "id": f"q{k}",
            "kind": "buries",
            "any_of": [name[i] for i in sorted(some)],
            "later": name[j],
            "reason": "So.",
        }
        for k, (some, j) in enumerate(any_of)
    ]
    return Unit.model_validate(
        {
            "identity": identity,
            "parts": [],
            "stages": [{"id": "s", "name": "Stage"}],
            "operations": [
                {
                    "id": name[i],
                    "name": f"Step {i}",
                    "stage": "s",
                    "minutes_do": 1,
                    "minutes_undo": 1,
                }
                for i in range(count)
            ],
            "rules": rules,
            "together": (
                [
                    {
                        "id": "group",
                        "name": "Both at once",
                        "operations": [name[i] for i in sorted(group)],
                        "reason": "They mesh.",
                    }
                ]
                if group
                else []
            ),
        }
    )


@settings(deadline=None, max_examples=150)
@given(st.data())
def test_a_conflict_is_found_exactly_when_no_order_exists(data):
    """Against brute force over all orders of up to six steps."""
    count = data.draw(st.integers(3, 6))
    index = st.integers(0, count - 1)
    group = data.draw(st.sets(index, min_size=2, max_size=2) | st.just(set()))
    pairs = data.draw(st.lists(st.tuples(index, index), max_size=7))
    pairs = [(i, j) for i, j in pairs if i != j and {i, j} != group]
    some = st.sets(index, min_size=2, max_size=3)
    any_of = data.draw(st.lists(st.tuples(some, index), max_size=3))
    any_of = [(side, j) for side, j in any_of if j not in side]
    unit = small_unit(count, pairs, any_of, group)
    steps = sorted(set(step_of(unit).values()))
    bonds, open_choices = certain_bonds(unit), choices(unit)

    def kept(order):
        place = {step: k for k, step in enumerate(order)}
        return all(place[b.earlier] < place[b.later] for b in bonds) and all(
            any(all(place[b.earlier] < place[b.later] for b in way) for way in choice.alternatives)
            for choice in open_choices
        )

    possible = any(kept(order) for order in permutations(steps))
    assert possible == (not list(conflicts(unit)))


base_entries = st.lists(ids, unique=True, min_size=1)


@given(base_entries, st.lists(st.sampled_from(["x", "y", "z"]), unique=True, min_size=1))
def test_adding_and_removing_again_gives_the_base_back(there, added):
    def tree(data):
        return parse_nodes(json.dumps(data), "file")

    base = tree({"parts": [{"id": name, "n": k} for k, name in enumerate(there)]})
    more = apply_variant(
        base, tree({"variant of": "base", "parts": {"add": [{"id": name} for name in added]}})
    )
    assert [entry["id"] for entry in more.plain()["parts"]] == there + added
    back = apply_variant(more, tree({"variant of": "more", "parts": {"remove": added}}))
    assert back.plain() == base.plain()


@given(base_entries, st.data())
def test_removing_and_adding_again_after_its_neighbour_gives_the_base_back(there, data):
    def tree(content):
        return parse_nodes(json.dumps(content), "file")

    base = tree({"parts": [{"id": name, "n": k} for k, name in enumerate(there)]})
    place = data.draw(st.integers(0, len(there) - 1))
    taken = {"id": there[place], "n": place}
    less = apply_variant(base, tree({"variant of": "b", "parts": {"remove": [taken["id"]]}}))
    assert len(less.plain()["parts"]) == len(there) - 1
    if place == 0:
        with pytest.raises(UnitFileError):
            apply_variant(less, tree({"variant of": "b", "parts": {"change": [taken]}}))
        return
    again = apply_variant(
        less,
        tree({"variant of": "b", "parts": {"add": [{**taken, "after": there[place - 1]}]}}),
    )
    assert again.plain() == base.plain()
