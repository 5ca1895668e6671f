"""What chance earns on orders is kept with the cohort, and worked out again where it is not."""

import json
import sys
from types import SimpleNamespace

import pytest

from twoshaft.models import order
from twoshaft.units import load_unit
from twoshaft_grader.cohort.order_levels import order_levels

model = sys.modules["twoshaft.models.order.mark"]


@pytest.fixture
def worked(monkeypatch):
    """The orders whose level is worked out; begin like a new process each time."""
    found = []
    whole = model.chance_slips
    monkeypatch.setattr(model, "chance_slips", lambda task: found.append(task) or whole(task))

    def anew():
        monkeypatch.setattr(model, "_known", {})
        monkeypatch.setattr(model, "_levels", {})
        found.clear()

    anew()
    return SimpleNamespace(orders=found, anew=anew)


@pytest.fixture
def task():
    unit = load_unit("tarnbeck-b5")
    return order.OrderTask.from_unit(unit, [operation.id for operation in unit.operations[:12]])


@pytest.mark.slow
def test_a_level_is_worked_out_once_for_all_runs(worked, task, tmp_path):
    cohort = SimpleNamespace(order_levels=tmp_path / "kept" / "order-levels.json")
    with order_levels(cohort):
        level = order.chance_r0(task)
    assert len(worked.orders) == 1
    worked.anew()
    with order_levels(cohort):
        assert order.chance_r0(task) == level
    assert worked.orders == []


@pytest.mark.slow
@pytest.mark.parametrize("content", ["", "{", '{"x": "y"}', "[1]"])
def test_a_damaged_file_is_made_again(worked, task, tmp_path, content):
    path = tmp_path / "order-levels.json"
    path.write_text(content)
    with order_levels(SimpleNamespace(order_levels=path)):
        level = order.chance_r0(task)
    assert len(worked.orders) == 1
    assert list(json.loads(path.read_text()).values()) == [level]


@pytest.mark.slow
def test_what_other_code_worked_out_is_not_used(worked, task, monkeypatch):
    order.chance_r0(task)
    kept = order.chance_levels()
    worked.anew()
    monkeypatch.setattr(model, "_code", lambda: "another version")
    order.take_chance_levels(dict.fromkeys(kept, 99.0))
    assert order.chance_r0(task) == next(iter(kept.values()))
    assert len(worked.orders) == 1
