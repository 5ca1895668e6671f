"""What is kept of a unit is worked out once, stays with it, and goes with it."""

import copy
import gc
import pickle
import weakref

import pytest

from twoshaft.models.order import OrderTask
from twoshaft.units import load_unit
from twoshaft.units.kept import kept
from twoshaft.units.loader import SHIPPED


@pytest.fixture
def calls():
    return []


@pytest.fixture
def shown(calls):
    @kept()
    def shown(unit, key="name"):
        calls.append(key)
        return [unit.identity.name, key]

    return shown


@pytest.fixture
def anew(tmp_path):
    """Return what loads Tarnbeck B5 anew, from a file of one's own; a shipped one is read once."""
    own = tmp_path / "own.yaml"
    own.write_bytes((SHIPPED / "tarnbeck-b5.yaml").read_bytes())
    return lambda: load_unit(own)


@pytest.fixture
def unit():
    return load_unit("tarnbeck-b5").model_copy()


def test_who_asks_for_a_shipped_unit_shares_it():
    assert load_unit("tarnbeck-b5") is load_unit("tarnbeck-b5")


def test_it_works_once_for_each_owner_and_argument(unit, anew, shown, calls):
    other = anew()
    assert shown(unit) is shown(unit)
    assert shown(unit, "id") == [unit.identity.name, "id"]
    assert shown(other) == shown(unit) and shown(other) is not shown(unit)
    assert calls == ["name", "id", "name"]


def test_a_bounded_one_keeps_the_last_used(unit, calls):
    @kept(most=1)
    def shown(unit, key):
        calls.append(key)
        return key

    for key in ("a", "a", "b", "a"):
        shown(unit, key)
    assert calls == ["a", "b", "a"]


def test_what_fails_is_not_kept(unit, calls):
    @kept()
    def failing(unit):
        calls.append(unit)
        raise ValueError

    for _ in range(2):
        with pytest.raises(ValueError):
            failing(unit)
    assert len(calls) == 2


@pytest.mark.slow
def test_no_copy_takes_it_along(unit, shown):
    mine = shown(unit)
    for copied in (
        unit.with_sections(fits=None),
        copy.copy(unit),
        copy.deepcopy(unit),
        pickle.loads(pickle.dumps(unit)),
        copy.deepcopy(OrderTask.from_unit(unit)).unit,
    ):
        assert shown(copied) == mine and shown(copied) is not mine


@pytest.mark.slow
def test_a_changed_copy_has_a_hash_and_names_of_its_own(unit, anew):
    assert hash(unit) == hash(anew())
    assert len(unit.part_by_id) == len(unit.parts)
    changed = unit.model_copy(update={"parts": unit.parts[1:]})
    assert hash(changed) != hash(unit) and changed != unit
    assert len(changed.part_by_id) == len(unit.parts) - 1


@pytest.mark.slow
def test_a_unit_that_is_let_go_is_freed_with_what_was_kept_of_it(anew, shown):
    unit = anew()
    task = OrderTask.from_unit(unit)
    assert OrderTask.from_unit(unit) is task
    shown(unit)
    gone = weakref.ref(unit), weakref.ref(task)
    del unit, task
    gc.collect()
    assert [one() for one in gone] == [None, None]
