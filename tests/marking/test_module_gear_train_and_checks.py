"""The typical wrong answers of Gear train and checks: what each earns, and the sentence it gets."""

import math
from pathlib import Path

import pytest

from twoshaft.jobsheet import Answer, SheetData
from twoshaft.models import geartrain
from twoshaft.readings import issue_record
from twoshaft.units import load_unit
from twoshaft.units.quantities import Q
from twoshaft_grader.marking import load_solution, mark_sheet, run_clean, solve
from twoshaft_grader.notebooks.text import build_notebook, notebook_text

SOURCE = Path(__file__).parents[2] / "solutions" / "08-gear-train-and-checks.py"
ONE = "one output, the other held"


@pytest.fixture(scope="module")
def solution(tmp_path_factory):
    built = tmp_path_factory.mktemp("solutions") / f"{SOURCE.stem}.ipynb"
    nb = build_notebook(SOURCE.read_text(encoding="utf-8"), Path("solutions") / SOURCE.name)
    built.write_text(notebook_text(nb), encoding="utf-8")
    return load_solution(built)


@pytest.fixture(scope="module")
def unit():
    return load_unit("tarnbeck-b5")


def issue(learner, unit, attempt=1):
    return issue_record(
        "gear-train-and-checks", unit, salt="test", learner=learner, attempt=attempt
    )


@pytest.fixture(scope="module")
def issued(unit):
    return issue("ann", unit)


@pytest.fixture(scope="module")
def clean(solution, unit, issued):
    return run_clean(solution, issued, unit)


def marked(solution, unit, issued, **wrong):
    """Mark a solved sheet with some answers changed; fields by name, and the sheet's mark."""
    answers = solve(solution, issued, unit) | {k.replace("_", "-"): v for k, v in wrong.items()}
    sheet = SheetData(
        learner=issued["learner"],
        module=issued["module"],
        attempt=issued["attempt"],
        answers={name: Answer(value, 1) for name, value in answers.items()},
    )
    mark = mark_sheet(sheet, issued, solution, unit=unit)
    return {field.name: field for field in mark.fields}, mark


def value(clean, field):
    return clean.references[field].value


def told(field):
    return " ".join(field.sentences)


def test_a_ratio_upside_down_is_charged_once(solution, unit, issued, clean):
    own, total = (float(value(clean, name).m) for name in ("path-ratio", "path-total"))
    final = total / own
    fields, _ = marked(
        solution, unit, issued, path_ratio=f"{1 / own:.4f}", path_total=f"{final / own:.4f}"
    )
    assert fields["path-ratio"].share == pytest.approx(0.4)
    assert "upside down" in told(fields["path-ratio"])
    assert fields["path-total"].share == 1  # worked out rightly from the learner's own ratio


def test_ratios_that_were_added(solution, unit, issued, clean):
    own, total = (float(value(clean, name).m) for name in ("path-ratio", "path-total"))
    field = marked(solution, unit, issued, path_total=f"{own + total / own:.3f}")[0]["path-total"]
    assert field.share == 0 and "multiply" in told(field)


def test_the_idler_counted_once(solution, unit, issued):
    _, driving, driven = issued["given"]["path"]["back"][0]
    field = marked(solution, unit, issued, path_back=f"{driven / driving:.3f}")[0]["path-back"]
    assert field.share == pytest.approx(0.2) and "first mesh alone" in told(field)


def test_an_idler_that_would_change_the_ratio(solution, unit, issued):
    field = marked(solution, unit, issued, path_idler="ratio")[0]["path-idler"]
    assert field.share == 0 and "what drops out" in told(field)


def test_a_held_wheel_counted_as_if_both_were_free(solution, unit, issued, clean):
    held = value(clean, "count-held").m_as("turn")
    field = marked(solution, unit, issued, count_held=f"{2 * held:.2f} turns")[0]["count-held"]
    assert field.share == pytest.approx(0.4) and "turns twice" in told(field)


def test_the_sum_of_both_wheels(solution, unit, issued, clean):
    free = value(clean, "count-free").m_as("turn")
    field = marked(solution, unit, issued, count_free=f"{2 * free:.2f} turns")[0]["count-free"]
    assert field.share == pytest.approx(0.4) and "average" in told(field)


def test_a_wrong_ratio_is_charged_once_over_the_counts(solution, unit, issued, clean):
    total = 1.1 * value(clean, "count-total").m
    counts = {
        name: 1.1 * value(clean, name.replace("_", "-")).m_as("turn")
        for name in ("count_held", "count_free")
    }
    fields, _ = marked(
        solution, unit, issued, count_total=f"{total:.4f}",
        **{name: f"{turns:.3f} turns" for name, turns in counts.items()},
    )  # fmt: skip
    assert fields["count-total"].share == 0
    assert fields["count-held"].share == fields["count-free"].share == 1


def test_a_miscount_that_fits_another_gear_is_charged_once(solution, unit):
    issued = next(
        one for one in (issue(f"learner-{k}", unit) for k in range(40))
        if one["given"]["which"]["inside"][0] > 0
    )  # fmt: skip
    train = unit.gear_train
    clean = run_clean(solution, issued, unit)
    right = value(clean, "which-gear")
    other = next(g.id for g in train.gears if not g.reverse and g.id != right)
    seen = abs(geartrain.count_turns(train, other, 2, ONE).seen)
    fields, _ = marked(solution, unit, issued, which_count=f"{seen} turns", which_gear=other)
    assert fields["which-count"].share == 0 and fields["which-gear"].share == 1


def test_a_gear_of_the_other_direction(solution, unit):
    for learner in (f"learner-{k}" for k in range(40)):
        issued = issue(learner, unit)
        if issued["given"]["which"]["inside"][0] < 0:
            continue
        field = marked(solution, unit, issued, which_gear="reverse")[0]["which-gear"]
        assert field.share == 0 and "other way round" in told(field)
        return
    pytest.fail("no learner has a forward gear in")


def test_one_turn_short_of_sure(solution, unit, issued, clean):
    short = value(clean, "apart-wheel") - 1
    field = marked(solution, unit, issued, apart_wheel=f"{short}")[0]["apart-wheel"]
    assert field.share == pytest.approx(0.2) and "just short" in told(field)


def test_a_pair_on_one_sleeve_does_not_hold_the_shafts(solution, unit, issued, clean):
    lock = issued["given"]["lock"]
    right = value(clean, "lock-pairs")
    on_one = next(key for key in lock["keys"] if key not in right)
    field = marked(solution, unit, issued, lock_pairs=[*right, on_one])[0]["lock-pairs"]
    assert field.share == pytest.approx(0.5) and "One sleeve" in told(field)


def test_a_wheel_said_to_turn_the_same_way(solution, unit, issued, clean):
    right = value(clean, "lock-other").m_as("turn")
    assert right < 0
    field = marked(solution, unit, issued, lock_other=f"{-right:g} turns")[0]["lock-other"]
    assert field.share == pytest.approx(0.4) and "the other loses" in told(field)
    field = marked(solution, unit, issued, lock_other=f"{right * 360:g}°")[0]["lock-other"]
    assert field.share == 1


def test_pulling_on_a_lock_that_was_not_tried_fails_the_must_pass(solution, unit, issued):
    fields, mark = marked(solution, unit, issued, lock_first="full-pull")
    assert fields["lock-first"].share == 0 and not fields["lock-first"].passed
    assert "breaks free" in told(fields["lock-first"]) and not mark.met


def test_every_unsafe_act_fails_the_must_pass_and_says_why(solution, unit):
    seen = set()
    for k in range(8):
        issued = issue(f"learner-{k}", unit)
        clean = run_clean(solution, issued, unit)
        for n, scene in enumerate(issued["given"]["hands"]["scenes"], 1):
            for act, _ in scene["acts"]:
                if act == value(clean, f"hands-{n}") or act in seen:
                    continue
                seen.add(act)
                fields, mark = marked(solution, unit, issued, **{f"hands_{n}": act})
                assert not fields[f"hands-{n}"].passed and not mark.met
                assert len(told(fields[f"hands-{n}"])) > 30
    assert len(seen) >= 12


def test_an_averaged_gap(solution, unit, issued, clean):
    readings = issued["given"]["gap"]["readings_mm"]
    mean = sum(readings) / len(readings)
    field = marked(solution, unit, issued, gap_counts=f"{mean:.3f} mm")[0]["gap-counts"]
    assert field.share == pytest.approx(0.3) and "average hides" in told(field)


def test_the_gap_lost_taken_for_wear(solution, unit, issued, clean):
    ring = issued["given"]["gap"]["ring"]
    lost = ring["new_mm"] - value(clean, "gap-counts").m_as("mm")
    field = marked(solution, unit, issued, gap_wear=f"{lost:.2f} mm")[0]["gap-wear"]
    assert field.share == pytest.approx(0.3) and "far less wear" in told(field)
    micron = lost * math.sin(math.radians(ring["half_angle_deg"])) * 1000
    assert marked(solution, unit, issued, gap_wear=f"{micron:.0f} µm")[0]["gap-wear"].share == 1


def test_a_thin_margin_on_a_washer_earns_a_part(solution, unit):
    shares = set()
    for k in range(6):
        issued = issue(f"learner-{k}", unit)
        clean = run_clean(solution, issued, unit)
        slips = {slip.value: slip.share for slip in clean.references["play-washer"].slips}
        for key, _ in issued["given"]["play"]["washers"]:
            field = marked(solution, unit, issued, play_washer=key)[0]["play-washer"]
            assert field.share == (1 if key in value(clean, "play-washer") else slips[key])
            shares.add(round(field.share, 2))
    assert {0, 1} <= shares <= {0, 0.2, 1}


def test_a_cone_taken_for_a_flat_ring(solution, unit, issued, clean):
    ring = issued["given"]["cone"]["ring"]
    flat = value(clean, "cone-torque") * math.sin(math.radians(ring["half_angle_deg"]))
    field = marked(solution, unit, issued, cone_torque=f"{flat.m_as('N*m'):.3f} N·m")[0][
        "cone-torque"
    ]
    assert field.share == pytest.approx(0.3) and "presses much harder" in told(field)
    right = value(clean, "cone-torque").to("lbf*ft").m
    assert (
        marked(solution, unit, issued, cone_torque=f"{right:.2f} ft lb")[0]["cone-torque"].share
        == 1
    )


def test_less_friction_taken_for_a_shorter_time(solution, unit, issued, clean):
    times = value(clean, "cone-times").m
    field = marked(solution, unit, issued, cone_times=f"{1 / times:.3f}")[0]["cone-times"]
    assert field.share == pytest.approx(0.3) and "takes longer" in told(field)


def test_a_road_speed_without_the_final_drive(solution, unit, issued, clean):
    road = value(clean, "speed-road")
    final = next(m for m in unit.gear_train.meshes if m.id == unit.gear_train.final_drive)
    wrong = road * final.driven.teeth / final.driving.teeth
    field = marked(solution, unit, issued, speed_road=f"{wrong.m:.1f} km/h")[0]["speed-road"]
    assert field.share == pytest.approx(0.3) and "final drive is missing" in told(field)
    miles = Q(road.m_as("mile/hour"), "")
    assert (
        marked(solution, unit, issued, speed_road=f"{miles.m:.2f} mph")[0]["speed-road"].share == 1
    )


def test_the_speedometer_off_the_other_way(solution, unit, issued, clean):
    road, shows = value(clean, "speed-road"), value(clean, "speed-shows")
    wrong = (road * road / shows).m_as("km/hour")
    fields, _ = marked(solution, unit, issued, speed_shows=f"{wrong:.2f} km/h")
    assert fields["speed-shows"].share == pytest.approx(0.3)
    assert "off the other way" in told(fields["speed-shows"])


def test_a_check_made_before_it_means_anything(solution, unit, issued, clean):
    steps = list(solve(solution, issued, unit)["final-order"])
    wrong = [steps[-1], *steps[:-1]]
    field = marked(solution, unit, issued, final_order=wrong)[0]["final-order"]
    assert field.share < 1 and "out of place" in told(field)
