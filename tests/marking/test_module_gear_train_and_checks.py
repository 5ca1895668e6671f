"""The typical wrong answers of Gear train and checks: what each earns, and the sentence it gets."""

import math

import pytest

from twoshaft.models import geartrain
from twoshaft.units.quantities import Q
from twoshaft_grader.marking.task import SET_ASIDE

MODULE = "08-gear-train-and-checks"
ONE = "one output, the other held"


def value(clean, field):
    return clean.references[field].value


MUST_PASS = {"lock-first", "gap-decide", "cone-fit", "hands-do"}


def with_one_wrong(clean, name, line, option):
    """The right answers with another one in a line, as they are stored."""
    return clean.fields[name].store({**value(clean, name), line: option})


def shown(issued, name):
    given = issued["given"]
    where = {
        "lock-first": given["lock"]["first"],
        "cone-fit": given["cone"]["fit"],
        "hands-do": given["hands"],
    }
    return dict(where[name]["lines"])


def told(field):
    return " ".join(field.sentences)


def test_a_ratio_upside_down_is_charged_once(marked, clean):
    own, total = (float(value(clean, name).m) for name in ("path-ratio", "path-total"))
    final = total / own
    fields, _ = marked(path_ratio=f"{1 / own:.4f}", path_total=f"{final / own:.4f}")
    assert fields["path-ratio"].share == pytest.approx(0.4)
    assert "upside down" in told(fields["path-ratio"])
    assert fields["path-total"].share == 1  # worked out rightly from the learner's own ratio


def test_ratios_that_were_added(marked, clean):
    own, total = (float(value(clean, name).m) for name in ("path-ratio", "path-total"))
    field = marked(path_total=f"{own + total / own:.3f}")[0]["path-total"]
    assert field.share == 0 and "multiply" in told(field)


def test_the_idler_counted_once(marked, issued):
    _, driving, driven = issued["given"]["path"]["back"][0]
    field = marked(path_back=f"{driven / driving:.3f}")[0]["path-back"]
    assert field.share == pytest.approx(0.2) and "first mesh alone" in told(field)


def test_each_mesh_turns_the_direction_round(marked, issued, clean):
    right = value(clean, "path-way")
    for id, teeth in issued["given"]["path"]["chains"]:
        assert right[id] == ("other" if len(teeth) in (2, 4) else "same")
    line, way = next(iter(right.items()))
    other = {"same": "other", "other": "same"}[way]
    field = marked(path_way=with_one_wrong(clean, "path-way", line, other))[0]["path-way"]
    assert field.share < 1 and "number of meshes" in told(field)


def test_a_held_wheel_counted_as_if_both_were_free(marked, clean):
    held = value(clean, "count-held").m_as("turn")
    field = marked(count_held=f"{2 * held:.2f} turns")[0]["count-held"]
    assert field.share == pytest.approx(0.4) and "turns twice" in told(field)


def test_the_sum_of_both_wheels(marked, clean):
    free = value(clean, "count-free").m_as("turn")
    field = marked(count_free=f"{2 * free:.2f} turns")[0]["count-free"]
    assert field.share == pytest.approx(0.4) and "average" in told(field)


def test_a_wrong_ratio_is_charged_once_over_the_counts(marked, clean):
    right = value(clean, "count-total").m
    total = right + 1  # a one carried too often
    counts = {
        name: total / right * value(clean, name.replace("_", "-")).m_as("turn")
        for name in ("count_held", "count_free")
    }
    fields, _ = marked(count_total=f"{total:.4f}",
        **{name: f"{turns:.3f} turns" for name, turns in counts.items()},
    )  # fmt: skip
    assert fields["count-total"].share == 0
    assert fields["count-held"].share == fields["count-free"].share == 1


def test_a_count_that_is_another_gears_carries_nothing_and_says_so(module, marked, unit):
    issued = next(
        one for one in (module.issue(f"learner-{k}") for k in range(40))
        if one["given"]["which"]["inside"][0] > 0
    )  # fmt: skip
    train = unit.gear_train
    clean = module.clean(issued)
    right = value(clean, "which-gear")
    other = next(g.id for g in train.gears if not g.reverse and g.id != right)
    seen = abs(geartrain.count_turns(train, other, 2, ONE).seen)
    fields, _ = marked(issued, which_count=f"{seen} turns", which_gear=other)
    assert fields["which-count"].share == 0 and fields["which-gear"].share == 0
    assert SET_ASIDE in told(fields["which-count"])


def test_a_gear_of_the_other_direction(module, marked):
    for learner in (f"learner-{k}" for k in range(40)):
        issued = module.issue(learner)
        if issued["given"]["which"]["inside"][0] < 0:
            continue
        field = marked(issued, which_gear="reverse")[0]["which-gear"]
        assert field.share == 0 and "other way round" in told(field)
        return
    pytest.fail("no learner has a forward gear in")


def test_one_turn_short_of_sure(marked, clean):
    short = value(clean, "apart-turns") - 1
    field = marked(apart_turns=f"{short}")[0]["apart-turns"]
    assert field.share == pytest.approx(0.2) and "just short" in told(field)


def test_a_reading_names_a_gear_or_asks_for_more_turns(module, marked, unit):
    """Beside the solution: every count of the unit held against each reading."""
    said = set()
    for number in range(6):
        issued = module.issue(f"learner-{number}")
        clean, apart = module.clean(issued), issued["given"]["apart"]
        for id, turns, read, step in apart["readings"]:
            doubled = 2 if apart["counted"] == ONE else 1
            fits = [
                gear.id
                for gear in unit.gear_train.gears
                if abs(float(geartrain.ratio(unit.gear_train, gear.id)) * turns / doubled - read)
                < step
            ]
            want = fits[0] if len(fits) == 1 else "more" if fits else "again"
            assert value(clean, "apart-says")[id] == want
            said.add(want if len(fits) != 1 else "one")
            if want == "more":
                wrong = with_one_wrong(clean, "apart-says", id, fits[0])
                field = marked(issued, apart_says=wrong)[0]["apart-says"]
                assert field.share < 1 and "more turns tell them apart" in told(field)
    assert said == {"one", "more", "again"}


def test_a_pair_on_one_sleeve_does_not_hold_the_shafts(marked, issued, clean):
    lock = issued["given"]["lock"]
    right = value(clean, "lock-pairs")
    on_one = next(key for key in lock["keys"] if key not in right)
    field = marked(lock_pairs=[*right, on_one])[0]["lock-pairs"]
    assert field.share == pytest.approx(0.5) and "One sleeve" in told(field)


def test_a_wheel_said_to_turn_the_same_way(marked, clean):
    right = value(clean, "lock-other").m_as("turn")
    assert right < 0
    field = marked(lock_other=f"{-right:g} turns")[0]["lock-other"]
    assert field.share == pytest.approx(0.4) and "the other loses" in told(field)
    field = marked(lock_other=f"{right * 360:g}°")[0]["lock-other"]
    assert field.share == 1


def test_four_decisions_must_be_right(clean):
    assert {name for name, one in clean.references.items() if one.must_pass} == MUST_PASS


@pytest.mark.parametrize(
    ("name", "scene", "answer", "sentence"),
    [
        ("lock-first", "just-in", "pull", "lets go under the bar"),
        ("lock-first", "wheel", "pull", "turn against each other"),
        ("lock-first", "alone", "pull", "is not held"),
        ("cone-fit", "keys-lands", "fit", "stands off its mate"),
        ("cone-fit", "washed", "fit", "scores its cone"),
        ("cone-fit", "evened", "fit", "bedded in"),
        ("hands-do", "wipes", "go", "see every hand first"),
        ("hands-do", "drill", "go", "does not stop when a hand is caught"),
        ("hands-do", "alone", "go", "falls on feet"),
        ("hands-do", "eye", "lift", "nothing to stop"),
    ],
)
def test_a_danger_or_a_wrong_way_round_overlooked_fails_whatever_the_mark(
    module, marked, name, scene, answer, sentence
):
    issued = next(
        one
        for one in (module.issue(f"learner-{k}") for k in range(60))
        if scene in shown(one, name)
    )
    wrong = with_one_wrong(module.clean(issued), name, scene, answer)
    fields, mark = marked(issued, **{name.replace("-", "_"): wrong})
    assert not fields[name].passed and not mark.met
    assert sentence in told(fields[name])
    assert mark.points > 0.9 * mark.maximum


def test_a_wrong_decision_on_a_ring_fails_whatever_the_mark(marked, clean):
    for line, right in value(clean, "gap-decide").items():
        other = "renew" if right == "use-again" else "use-again"
        wrong = with_one_wrong(clean, "gap-decide", line, other)
        fields, mark = marked(gap_decide=wrong)
        assert not fields["gap-decide"].passed and not mark.met
        assert next(one for one in mark.outcomes if one.id == "judge-ring").met is False
        assert len(told(fields["gap-decide"])) > 30


def test_a_worn_ring_read_at_a_wider_place_is_still_worn(module):
    """What follows from a wrong reading is no excuse: the ring goes back worn all the same."""
    learners = (module.issue(f"w{n}") for n in range(40))
    issued = next(
        one for one in learners
        if min(one["given"]["gap"]["readings_mm"]) < one["given"]["gap"]["ring"]["least_mm"]
    )  # fmt: skip
    wrong = with_one_wrong(module.clean(issued), "gap-decide", "own", "use-again")
    wide = f"{issued['given']['gap']['ring']['new_mm']} mm"
    fields, mark = module.marked(issued, gap_counts=wide, gap_decide=wrong)
    assert not fields["gap-decide"].passed and not mark.met
    assert "the cone is worn" in told(fields["gap-decide"])


def test_must_pass_lines_left_open_fail(marked):
    for name in MUST_PASS:
        fields, mark = marked(**{name.replace("-", "_"): None})
        assert not fields[name].passed and not mark.met


def test_an_averaged_gap(marked, issued):
    readings = issued["given"]["gap"]["readings_mm"]
    mean = sum(readings) / len(readings)
    field = marked(gap_counts=f"{mean:.3f} mm")[0]["gap-counts"]
    assert field.share == pytest.approx(0.3) and "average hides" in told(field)


def test_the_gap_lost_taken_for_wear(marked, issued, clean):
    ring = issued["given"]["gap"]["ring"]
    lost = ring["new_mm"] - value(clean, "gap-counts").m_as("mm")
    field = marked(gap_wear=f"{lost:.2f} mm")[0]["gap-wear"]
    assert field.share == pytest.approx(0.3) and "far less wear" in told(field)
    micron = lost * math.sin(math.radians(ring["half_angle_deg"])) * 1000
    assert marked(gap_wear=f"{micron:.0f} µm")[0]["gap-wear"].share == 1


def test_a_thin_margin_on_a_washer_earns_a_part(module, marked):
    shares = set()
    for k in range(6):
        issued = module.issue(f"learner-{k}")
        clean = module.clean(issued)
        slips = {slip.value: slip.share for slip in clean.references["play-washer"].slips}
        for key, _ in issued["given"]["play"]["washers"]:
            field = marked(issued, play_washer=key)[0]["play-washer"]
            assert field.share == (1 if key in value(clean, "play-washer") else slips[key])
            shares.add(round(field.share, 2))
    assert {0, 1} <= shares <= {0, 0.2, 1}


def test_a_cone_taken_for_a_flat_ring(marked, issued, clean):
    ring = issued["given"]["cone"]["ring"]
    flat = value(clean, "cone-torque") * math.sin(math.radians(ring["half_angle_deg"]))
    field = marked(cone_torque=f"{flat.m_as('N*m'):.3f} N·m")[0]["cone-torque"]
    assert field.share == pytest.approx(0.3) and "presses much harder" in told(field)
    right = value(clean, "cone-torque").to("lbf*ft").m
    assert marked(cone_torque=f"{right:.2f} ft lb")[0]["cone-torque"].share == 1


def test_less_friction_taken_for_a_shorter_time(marked, clean):
    times = value(clean, "cone-times").m
    field = marked(cone_times=f"{1 / times:.3f}")[0]["cone-times"]
    assert field.share == pytest.approx(0.3) and "takes longer" in told(field)


def test_a_road_speed_without_the_final_drive(marked, unit, clean):
    road = value(clean, "speed-road")
    final = next(m for m in unit.gear_train.meshes if m.id == unit.gear_train.final_drive)
    wrong = road * final.driven.teeth / final.driving.teeth
    field = marked(speed_road=f"{wrong.m:.1f} km/h")[0]["speed-road"]
    assert field.share == pytest.approx(0.3) and "final drive is missing" in told(field)
    miles = Q(road.m_as("mile/hour"), "")
    assert marked(speed_road=f"{miles.m:.2f} mph")[0]["speed-road"].share == 1


def test_the_speedometer_off_the_other_way(marked, clean):
    road, shows = value(clean, "speed-road"), value(clean, "speed-shows")
    wrong = (road * road / shows).m_as("km/hour")
    fields, _ = marked(speed_shows=f"{wrong:.2f} km/h")
    assert fields["speed-shows"].share == pytest.approx(0.3)
    assert "off the other way" in told(fields["speed-shows"])


def test_a_check_made_before_it_means_anything(module, marked, issued):
    steps = list(module.right(issued)["final-order"])
    wrong = [steps[-1], *steps[:-1]]
    field = marked(final_order=wrong)[0]["final-order"]
    assert field.share < 1 and "out of place" in told(field)
