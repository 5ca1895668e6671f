"""The whole build: what a unit asks, that a right build is right, that each wrong decision tells."""

import pytest

from twoshaft.errors import OutOfRangeError
from twoshaft.models import order, shim
from twoshaft.models.audit import audit_ways
from twoshaft.models.film import Hand, Pass, Side
from twoshaft.models.wholebuild import (
    LOG,
    ORDER,
    Do,
    Job,
    TakeOut,
    asks_of,
    build_record,
    card,
    consequences,
    decisions_from,
    fields_of,
    look,
    readings,
    right_decisions,
    values_of,
    ways_of,
)
from twoshaft.units import load_unit
from twoshaft.units.quantities import Q
from twoshaft.units.sections.order import Operation


@pytest.fixture(scope="module")
def job(unit):
    return Job.of(unit)


@pytest.fixture(scope="module")
def right(job):
    return right_decisions(job)


def changed(right, step, **choices):
    """The right build with other choices at one step."""
    new = {name.replace("_", "-"): value for name, value in choices.items()}
    return [Do(d.step, {**d.choices, **new}) if d.step == step else d for d in right]


def kinds(job, decisions):
    return {fault.kind for fault in consequences(job, decisions).faults}


@pytest.mark.slow
@pytest.mark.parametrize("name", ["tarnbeck-b5", "tarnbeck-b5-early"])
def test_a_right_build_has_no_fault_and_passes_every_check(name):
    job = Job.of(load_unit(name))
    found = consequences(job, right_decisions(job))
    assert found.faults == ()
    assert found.shown
    assert all(outcome.passes for _, outcome in found.shown)
    assert found.minutes == found.order.minutes
    assert found.parts_lost == ()


def test_what_is_asked_follows_from_the_unit_file(unit):
    ids = {ask.id for ask in asks_of(Job.of(unit))}
    assert {"shim-differential", "shim-output-shaft", "film-case-joint"} <= ids
    assert "shim-practice-hub" not in ids
    early = {ask.id for ask in asks_of(Job.of(load_unit("tarnbeck-b5-early")))}
    assert "film-case-joint" not in early
    assert "way-lay-lock-plate" in early - ids


def test_a_unit_without_physics_asks_for_an_order_only(make_unit):
    job = Job.of(make_unit(4, [(0, 1), (1, 2)]))
    assert [spec.name for spec in fields_of(job)] == [ORDER]
    assert consequences(job, right_decisions(job)).faults == ()


def test_what_the_job_keeps_for_itself_is_done_rightly(unit):
    job = Job.of(unit, {"asked": ["shim-differential"]})
    assert [spec.name for spec in fields_of(job)] == [ORDER, "shim-differential"]
    assert consequences(job, right_decisions(job)).faults == ()


def test_decisions_come_back_from_their_answers(job, right):
    log = [*right[:40], TakeOut(right[35].step), right[35]]
    values = values_of(job, log)
    assert decisions_from(job, values)[:40] == tuple(right[:40])
    assert decisions_from(job, values)[40] == TakeOut(right[35].step)
    assert decisions_from(job, values_of(job, right) | {LOG: None}) == right


@pytest.mark.parametrize(
    ("step", "choices", "kind"),
    [
        ("fit-diff-shim", {"shim_differential": Q(1.03, "mm")}, "shim"),
        ("fit-diff-shim", {"shim_differential": Q(1.155, "mm")}, "shim"),
        ("fit-diff-shim", {"shim_differential": Q(0, "mm")}, "shim"),
        ("tighten-case-bolts", {"state_case_bolts": "oiled"}, "state"),
        ("tighten-case-bolts", {"tool_case_bolts": "large-wrench"}, "tool"),
        ("tighten-case-bolts", {"torque_case_bolts": Q(20, "N*m")}, "loose"),
        ("tighten-case-bolts", {"torque_case_bolts": Q(60, "N*m")}, "overstressed"),
        (
            "fit-end-cover",
            {"torque_end_cover_bolts": Q(28, "N*m"), "tool_end_cover_bolts": "middle-wrench"},
            "stripped",
        ),
        ("fit-gate-cover", {"rounds_gate_cover_bolts": "1"}, "uneven"),
        ("fit-detents", {"torque_detent_plugs": Q(27, "N*m")}, "torque"),
        ("check-lockout", {"proof_fifth_reverse": ("at:gate-fifth-reverse",)}, "proof"),
        ("check-gears", {"verdict_check_gears": "open"}, "false-alarm"),
        ("check-gears", {"verdict_check_gears": None}, "undecided"),
    ],
)
def test_each_wrong_decision_has_its_consequence(job, right, step, choices, kind):
    found = consequences(job, changed(right, step, **choices)).faults
    mine = [fault for fault in found if fault.kind == kind]
    assert mine
    assert mine[0].step == step
    assert mine[0].sentence.endswith(".")


def test_every_wrong_way_round_has_its_consequence(job, right):
    asks = [ask for ask in asks_of(job) if ask.kind == "way"]
    wrong = {ask.id: next(k for k, way in ways_of(job, ask.about).items() if way) for ask in asks}
    built = [Do(d.step, {n: wrong.get(n, v) for n, v in d.choices.items()}) for d in right]
    found = consequences(job, built)
    for ask in asks:
        assert [fault.kind for fault in found.faults if fault.about == ask.id] == ["way"], ask.id
        cost = order.rework(job.task, found.steps, ask.step)
        assert next(way for way in found.ways if way.ask is ask).off == cost.off


def test_a_wrong_way_round_shows_where_the_mechanism_says_so(job, right):
    key = next(k for k, w in ways_of(job, "fit-lockout").items() if w and w.id == "step-to-fifth")
    found = consequences(job, changed(right, "fit-lockout", way_fit_lockout=key))
    assert {"way", "lockout", "passed-over"} <= {fault.kind for fault in found.faults}
    assert found.proofs[0].truth == "fails"
    assert any(check.kind == "lockout" and not shown.passes for check, shown in found.shown)


def test_a_seal_the_wrong_way_round_leaks_by_the_seal_model(job, right):
    key = next(k for k, w in ways_of(job, "fit-input-seal").items() if w)
    found = consequences(job, changed(right, "fit-input-seal", way_fit_input_seal=key))
    assert found.ways[0].seal[0].key == "lip"


def test_a_shim_off_the_target_shows_on_the_cord(job, right):
    found = consequences(job, changed(right, "fit-rear-plate", shim_output_shaft=Q(0.6, "mm")))
    result = next(one for one in found.shims if one.ask.about == "output-shaft")
    stack = shim.Stack.from_support(job.support("output-shaft"))
    assert result.cold == stack.interference(Q(0.6, "mm"))
    assert result.warm < result.cold
    assert {"shim", "passed-over"} <= {fault.kind for fault in found.faults}


def test_a_film_is_judged_on_the_clock_of_the_build(unit):
    job = Job.of(unit, {"asked": ["film-case-joint"]})
    right = right_decisions(job)
    steps = [d.step for d in right]
    at = steps.index("spread-sealant")
    later = [d for d in right if d.step in ("stone-housing-face", "wash-main-case", "warm-housing")]
    rest = [d for d in right if d not in later]
    at = [d.step for d in rest].index("spread-sealant")
    found = consequences(job, [*rest[: at + 1], *later, *rest[at + 1 :]])
    assert found.films[0].minute > 40
    assert "leak" in {fault.kind for fault in found.faults}
    assert found.order.events


def test_a_gap_in_the_film_and_a_lump(unit):
    job = Job.of(unit, {"asked": ["film-case-joint"]})
    right = right_decisions(job)
    passes = next(d for d in right if d.step == "spread-sealant").choices["film-case-joint"]
    assert "leak" in kinds(job, changed(right, "spread-sealant", film_case_joint=passes[1:]))
    fat = tuple(Pass(Hand.BEAD, 6.0, Side.MIDDLE, one.place) for one in passes)
    assert "lump" in kinds(job, changed(right, "spread-sealant", film_case_joint=fat))


def test_worn_parts_are_found_by_the_check_and_charged_to_nobody(unit):
    job = Job.of(unit, {"worn": ["finger-pin-not-home"]})
    right = right_decisions(job)
    choice = next(d for d in right if d.step == "check-lockout").choices
    assert choice["verdict-check-lockout"] == "open"
    assert kinds(job, right) == {"lockout"}


def test_the_order_is_judged_by_the_replay(job, right):
    late = next(d for d in right if d.step == "fit-magnet")
    moved = [d for d in right if d is not late] + [late]
    found = consequences(job, moved)
    assert found.order == order.replay(job.task, [d.step for d in moved])
    assert [fault.kind for fault in found.faults] == [event.state for event in found.order.events]


def test_taking_out_costs_minutes_and_parts_and_takes_what_is_in_the_way(job, right):
    built = right[:40]
    found = look(job, [*built, TakeOut("fit-diff-shim")])
    assert "fit-diff-shim" in found.left
    before = look(job, built)
    assert found.minutes > before.minutes
    record = consequences(job, [*built, TakeOut("fit-diff-shim")], over=False)
    assert record.taken[0].off[-1] == "fit-diff-shim"
    with pytest.raises(OutOfRangeError, match="step taken out"):
        look(job, [TakeOut("fit-magnet")])


def test_readings_are_told_and_cards_give_nothing_away(job, right):
    place = [d.step for d in right].index("read-diff-float")
    lines = readings(job, right[: place + 1], "read-diff-float")
    assert lines[0].value == "121.20 mm"
    for ask in asks_of(job):
        for line in card(job, ask):
            assert line.what
            assert line.value


def test_the_record_has_everything_but_names_and_verdicts(job, right):
    data = build_record(job, right)
    assert data["done"] == data["steps"] == len(right)
    assert data["shims"] == [["Differential", "1.15 mm"], ["Output shaft", "0.7 mm"]]
    assert all(name == "" for _, name in data["signatures"])
    assert data["invented"]


def test_a_job_names_what_the_unit_lacks(unit):
    for given in ({"wrenches": ["x"]}, {"found": {"case-bolts": "x"}}, {"worn": ["x"]}):
        with pytest.raises(OutOfRangeError, match="x"):
            Job.of(unit, given)


def test_wrong_ways_need_an_orientation_and_known_names(unit):
    entry = unit.operation_by_id["fit-lockout"]
    with pytest.raises(ValueError, match="orientation"):
        Operation.model_validate({**entry.model_dump(by_alias=True), "orientation": None})
    assert audit_ways(unit) == ()
    astray = entry.wrong_ways[0].model_copy(update={"misbuild": "not-there"})
    broken = entry.model_copy(update={"wrong_ways": (astray,)})
    one = unit.model_copy(
        update={"operations": tuple(broken if o is entry else o for o in unit.operations)}
    )
    assert "not-there" in audit_ways(one)[0].what


def test_a_record_is_written_of_a_build_that_cannot_be_measured(unit):
    from twoshaft.models.wholebuild import Do, Job, build_record, right_decisions

    job = Job.of(unit, {"asked": ["shim-differential"]})
    ten_times = [
        Do(one.step, {**one.choices, "shim-differential": 10 * one.choices["shim-differential"]})
        if "shim-differential" in one.choices
        else one
        for one in right_decisions(job)
    ]
    record = build_record(job, ten_times)
    assert record["shims"] == [["Differential", "11.5 mm"]]
    told = [value for _, value in record["readings"] if value.startswith("nothing could be read")]
    assert told and all("11.5 mm" in value for value in told)
    assert record["done"] == build_record(job, right_decisions(job))["done"]
