"""A clock of "at least": what must have run before a step may begin."""

import pytest

from twoshaft.errors import UnitFileError
from twoshaft.models.audit import sound_unit
from twoshaft.models.audit.faces import audit_faces
from twoshaft.models.order import OrderTask, model_order, plan_slip, replay, sensible_order, times
from twoshaft.models.order.slip import late_clocks
from twoshaft.models.order.snapshot import snapshot
from twoshaft.readings.keyed import Stream
from twoshaft.rigs import build_simulator
from twoshaft.rigs.words import cost, hours
from twoshaft.units import load_unit
from twoshaft.units.loader import SHIPPED
from twoshaft.units.sections.order import Wait

CLOSED, OIL = "tighten-case-bolts", "fill-oil"


@pytest.fixture(scope="module")
def film_unit():
    return load_unit("tarnbeck-b5")


@pytest.fixture(scope="module")
def task(film_unit):
    return OrderTask.from_unit(film_unit)


def numbered(task, order):
    return [task.number[step] for step in order]


def between(task, order):
    """Minutes from the end of tightening to the beginning of filling."""
    finished = times(task, numbered(task, order)).finished
    oil = task.number[OIL]
    return finished[oil] - task.minutes_do[oil] - finished[task.number[CLOSED]]


@pytest.mark.parametrize("unit_id", ["tarnbeck-b5", "tarnbeck-c4", "tarnbeck-k6"])
def test_oil_waits_for_the_sealants_own_time(unit_id):
    unit = load_unit(unit_id)
    (wait,) = unit.waits
    face = next(face for face in unit.faces.faces if face.lay_operation == "spread-sealant")
    assert wait.minutes == 60 * unit.faces.sealant_by_id(face.sealant).cure_hours
    task = OrderTask.from_unit(unit)
    assert between(task, model_order(task)) == pytest.approx(wait.minutes)


def test_a_gasket_needs_no_wait():
    assert load_unit("tarnbeck-b5-early").waits == ()


def test_in_every_sensible_order_the_wait_has_run(task):
    for n in range(20):
        order = sensible_order(task, Stream("salt", f"a{n}", "order-of-work", 1))
        assert between(task, order) == pytest.approx(1440)
        built = replay(task, order)
        assert built.events == () and plan_slip(task, order).size == 0
        (stood,) = built.waited
        worked = sum(task.minutes_do[i] for i in numbered(task, order))
        # what other work filled and what was waited is the whole wait
        steps = order[order.index(CLOSED) + 1 : order.index(OIL)]
        filled = sum(task.minutes(step) for step in steps)
        assert stood.minutes + filled == pytest.approx(1440)
        assert built.minutes == pytest.approx(worked)  # waiting is no work


def test_work_that_fills_the_wait_leaves_nothing_to_stand(film_unit):
    short = Wait(id="w", name="It sets", starts=CLOSED, ends=OIL, minutes=1, reason="It must set.")
    task = OrderTask.from_unit(film_unit.model_copy(update={"waits": (short,)}))
    order = model_order(task)
    assert replay(task, order).waited == () and between(task, order) >= 1


def test_of_two_waits_the_longer_one_is_stood(film_unit):
    waits = [
        Wait(id=f"w{n}", name="It sets", starts=CLOSED, ends=OIL, minutes=n, reason="It must set.")
        for n in (900, 1200, 1000)
    ]
    task = OrderTask.from_unit(film_unit.model_copy(update={"waits": tuple(waits)}))
    (stood,) = replay(task, model_order(task)).waited
    assert stood.wait.id == "w1200"


def test_a_clock_around_a_wait_runs_on_while_it_is_waited(film_unit):
    clock = film_unit.clocks[-1].model_copy(
        update={"id": "early", "starts": CLOSED, "ends": "look-for-leaks", "minutes": 1000}
    )
    unit = film_unit.model_copy(update={"clocks": (*film_unit.clocks, clock)})
    task = OrderTask.from_unit(unit)
    order = model_order(task)
    assert [one.rules for one in late_clocks(task, numbered(task, order))] == [("early",)]
    assert [event.clock for event in replay(task, order).events] == ["early"]


def test_where_an_end_is_left_out_there_is_no_wait(film_unit):
    assert OrderTask.from_unit(film_unit, [OIL, "look-for-leaks"]).waits == ()
    assert len(OrderTask.from_unit(film_unit, [CLOSED, OIL]).waits) == 1


def test_the_bench_says_what_runs_and_what_was_waited(task):
    order = model_order(task)
    at = order.index(CLOSED)
    assert snapshot(task, order[:at]).waits == ()
    (running,) = snapshot(task, order[: at + 2]).waits
    assert running.until == OIL and running.stood is None
    assert running.run == task.minutes(order[at + 1])
    whole = snapshot(task, order)
    (done,) = whole.waits
    assert done.run == pytest.approx(1440) and done.stood > 1000
    assert whole.minutes == sum(task.minutes_do)


def test_the_simulator_tells_it(film_unit, task):
    order = model_order(task)
    rig = build_simulator(film_unit, order)
    rig.hear({"type": "go", "position": order.index(CLOSED) + 1})
    assert ["Wait", f"The sealant cures: 0 min of 24 h have run before “{task.label(OIL)}”."] in (
        rig.view["facts"]
    )
    rig.hear({"type": "go", "position": len(order)})
    stood = replay(task, order).waited[0].minutes
    assert f"{hours(stood)} of waiting" in cost(task, replay(task, order))
    assert f"{hours(stood)} of waiting" in rig.plain_copy()


@pytest.mark.slow
@pytest.mark.parametrize(
    ("old", "new", "said"),
    [
        ("    starts: tighten-case-bolts\n    ends: fill-oil", "    starts: fit-rear-bracket\n    ends: fill-oil",
         "begins with 'fit-rear-bracket', but no rule says"),
        ("    ends: fill-oil\n    minutes: 1440", "    ends: fill-oil\n    minutes: 60",
         "cures in 24 hours"),
        ("    ends: fill-oil\n    minutes: 1440", "    ends: fill-oils\n    minutes: 1440",
         "did you mean 'fill-oil'?"),
        ("    ends: fill-oil\n    minutes: 1440", "    ends: fill-oil\n    minutes: 0", "above 0"),
    ],
)  # fmt: skip
def test_a_unit_with_a_wrong_wait_is_refused(tmp_path, old, new, said):
    text = (SHIPPED / "tarnbeck-b5.yaml").read_text("utf-8")
    assert old in text
    path = tmp_path / "unit.yaml"
    path.write_text(text.replace(old, new, 1), "utf-8")
    with pytest.raises(UnitFileError) as refused:
        sound_unit(path)
    assert said in " ".join(one.sentence for one in refused.value.findings)


def test_the_shipped_waits_are_as_long_as_the_sealants(film_unit):
    assert audit_faces(film_unit) == ()
    short = film_unit.waits[0].model_copy(update={"minutes": 1439})
    (found,) = audit_faces(film_unit.model_copy(update={"waits": (short,)}))
    assert "cures in 24 hours" in found.what
