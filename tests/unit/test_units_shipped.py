"""The shipped unit files: they load, are what they claim to be, and make good exercises."""

import json
from collections import Counter

import jsonschema
import pytest
from ruamel.yaml import YAML

import twoshaft.models.order as order
from twoshaft.outcomes import Evidence, load_outcomes
from twoshaft.units import check_unit, load_unit, shipped_units, unit_json_schema
from twoshaft.units.loader import SHIPPED
from twoshaft.units.precedence import certain_bonds, search_size
from twoshaft.units.sections.order import RuleKind


@pytest.fixture(scope="module", params=shipped_units())
def unit(request):
    return load_unit(request.param)


@pytest.fixture(scope="module")
def b5():
    return load_unit("tarnbeck-b5")


def test_nothing_is_found_wrong(unit):
    assert check_unit(unit) == ()


def test_says_that_it_is_invented_and_that_the_manual_wins(unit):
    assert unit.identity.invented
    assert "invented" in unit.identity.scenario
    assert "the maker's manual wins" in unit.identity.scenario


def test_labels_are_told_apart_in_a_shuffled_list(unit):
    labels = Counter(operation.name for operation in unit.operations)
    labels.update(group.name for group in unit.together)
    assert [label for label, times in labels.items() if times > 1] == []
    assert all(label[0].isupper() and not label.endswith(".") for label in labels)


def test_reasons_are_sentences(unit):
    for entry in (*unit.rules, *unit.holds, *unit.clocks, *unit.together):
        assert entry.reason[0].isupper()
        assert entry.reason.endswith(".")


def test_orientation_is_told_where_a_part_has_a_mark(unit):
    """A part with a mark goes in with a step that says which way."""
    fits = [operation for operation in unit.operations if operation.kind == "fit"]
    for part in unit.parts:
        if part.orientation_mark:
            steps = [operation for operation in fits if part.id in operation.parts]
            assert any(step.orientation for step in steps), part.id


def test_heat_springs_blows_presses_and_loads_carry_a_caution(unit):
    dangerous = {"press", "pin-punch", "oven", "hot-plate", "staking-punch", "tab-drift"}
    dangerous |= {"seal-driver", "hook-key", "sling", "wash-bench"}
    for operation in unit.operations:
        if dangerous.intersection(operation.tools) or "solvent" in operation.consumables:
            assert operation.caution, operation.id


@pytest.mark.parametrize("stage_index", range(8))
def test_every_stage_makes_a_task_worth_marking(b5, stage_index):
    stage = b5.stages[stage_index].id
    task = order.OrderTask.from_unit(b5, b5.operations_of[stage])
    assert 8 <= len(task.steps) <= 13
    assert order.chance_r0(task) >= 3
    assert order.count_orders(task).value > 10
    # neither a chain nor empty
    pairs = len(task.steps) * (len(task.steps) - 1) // 2
    assert 0.3 * pairs < len(task.pairs) < pairs


def test_a_whole_build_goes_through_without_an_event(unit):
    task = order.OrderTask.from_unit(unit)
    built = order.replay(task, order.model_order(task))
    assert built.events == ()
    for stage in unit.operations_of.values():
        part = order.OrderTask.from_unit(unit, stage)
        assert order.replay(part, order.model_order(part)).events == ()


def test_has_what_such_a_unit_has(b5):
    assert len(b5.operations) >= 60
    assert set(Counter(rule.kind for rule in b5.rules)) == set(RuleKind)
    assert any(rule.any_of for rule in b5.rules)
    assert any(rule.not_during for rule in b5.rules)
    assert len(b5.holds) >= 2
    assert len(b5.clocks) >= 2
    assert len(b5.together) >= 2
    assert {operation.kind for operation in b5.operations} >= {"trial", "measure", "remove"}
    assert sum(rule.safety for rule in b5.rules) >= 8
    assert search_size(b5) <= 12


def test_no_rule_repeats_another(unit):
    """Two rules for the same pair, or with the same words for pairs that follow from each other,
    would only fill a list.
    """
    bonds = [bond for bond in certain_bonds(unit) if bond.section == "rules"]
    pairs = Counter((bond.earlier, bond.later) for bond in bonds)
    assert [pair for pair, times in pairs.items() if times > 1] == []
    reasons = {}
    for bond in bonds:
        reasons.setdefault(bond.reason, []).append(bond)
    for same in reasons.values():
        # one reason may serve a left and a right part, never a chain
        assert not any(a.later == b.earlier for a in same for b in same)


def test_variant_is_the_base_but_for_what_it_says(b5):
    early = load_unit("tarnbeck-b5-early")
    assert early.identity.variant_of == "tarnbeck-b5"
    assert early.identity.college == b5.identity.college
    assert "spread-sealant" not in early.operation_by_id
    assert "lay-case-gasket" in early.operation_by_id
    assert early.operation_by_id["wash-housing"] == b5.operation_by_id["wash-housing"]
    ids = [operation.id for operation in early.operations]
    assert ids.index("lay-lock-plate") == ids.index("fit-fifth-synchro") + 1


def test_a_place_in_a_variant_is_in_the_file_it_stands_in():
    early = load_unit("tarnbeck-b5-early")
    assert early.where("operations", "lay-lock-plate").startswith("tarnbeck-b5-early.yaml, line ")
    assert early.where("operations", "wash-housing").startswith("tarnbeck-b5.yaml, line ")
    assert early.where("operations", "tighten-output-nut", "name").startswith(
        "tarnbeck-b5-early.yaml, line "
    )
    assert early.where("operations", "tighten-output-nut", "minutes_do").startswith(
        "tarnbeck-b5.yaml, line "
    )


# JSON Schema


@pytest.fixture(scope="module")
def schema():
    """jsonschema, an implementation independent of the one that loads the files."""
    return jsonschema.Draft202012Validator(unit_json_schema())


@pytest.mark.slow
def test_schema_is_valid_and_can_be_written(schema):
    schema.check_schema(json.loads(json.dumps(schema.schema)))


@pytest.mark.slow
@pytest.mark.parametrize("name", shipped_units())
def test_schema_accepts_the_shipped_files(schema, name):
    schema.validate(YAML(typ="safe").load(SHIPPED / f"{name}.yaml"))


@pytest.fixture(scope="module")
def least():
    """The least that the schema takes of Tarnbeck B5: its name, and two entries of each list."""
    data = YAML(typ="safe").load(SHIPPED / "tarnbeck-b5.yaml")
    lists = ("parts", "stages", "tools", "operations", "rules")
    return {"identity": data["identity"]} | {name: data[name][:2] for name in lists}


@pytest.mark.slow
@pytest.mark.parametrize(
    ("section", "entry"),
    [
        ("operations", {"id": "x", "name": "Do it", "stage": "closing"}),
        ("rules", {"id": "x", "kind": "hides", "later": "lower-case", "reason": "Because."}),
        ("parts", {"id": "X", "name": "A part"}),
        ("tools", {"id": "x", "name": "A tool", "colour": "red"}),
    ],
)
def test_schema_refuses_what_the_loader_refuses(schema, least, section, entry):
    variant = {"variant of": "tarnbeck-b5", "identity": {"id": "v"}}
    right = least[section][0]
    assert schema.is_valid(least) and schema.is_valid(variant | {section: {"add": [right]}})
    assert not schema.is_valid(least | {section: [*least[section], entry]})
    assert not schema.is_valid(variant | {section: {"add": [entry]}})


def test_schema_describes_its_keys():
    operation = unit_json_schema()["$defs"]["Operation"]["properties"]
    assert "taking the step apart" in operation["minutes to undo"]["description"]
    assert {"type": "string"}.items() <= operation["parts"]["anyOf"][1].items()


# outcomes


def test_outcomes_of_the_order_of_work():
    outcomes = load_outcomes(module="order-of-work")
    assert list(outcomes) == [
        "plan-order",
        "next-steps",
        "why-before",
        "find-buried",
        "least-rework",
        "keep-the-clock",
        "share-the-work",
        "renew-parts",
        "safe-order",
    ]
    assert [id for id, outcome in outcomes.items() if outcome.must_pass] == ["safe-order"]
    assert outcomes["plan-order"].evidence is Evidence.OPEN_BOOK
    assert load_outcomes(module="no-such-module") == {}
