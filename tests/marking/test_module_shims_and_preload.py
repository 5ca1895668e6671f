"""The typical wrong answers of Shims and preload: what each earns, and the sentence it gets."""

import pytest

from twoshaft.models import bearing, shim
from twoshaft.units.quantities import Q

MODULE = "05-shims-and-preload"


def value(clean, field):
    return clean.references[field].value


def told(field):
    return " ".join(field.sentences)


def turned(right):
    """Each change of shim judged the other way round, as it is stored."""
    other = {"tighter": "looser", "looser": "tighter", "same": "same"}
    return [f"{line}={other[option]}" for line, option in right.items()]


def support_of(unit, issued, task):
    return unit.bearings.support_by_id(issued["given"][task]["support"])


def test_the_shim_worked_the_wrong_way_fails_the_must_pass_and_is_charged_once(marked, clean):
    gap = value(clean, "stack-gap")
    thin, thick = (2 * gap - value(clean, name) for name in ("stack-thick", "stack-thin"))
    fields, mark = marked(
        stack_direction=turned(value(clean, "stack-direction")), stack_thin=f"{thin.m_as('mm'):.3f} mm",
        stack_thick=f"{thick.m_as('mm'):.3f} mm",
    )  # fmt: skip
    assert fields["stack-direction"].share == 0 and not fields["stack-direction"].passed
    assert "other way round" in told(fields["stack-direction"])
    assert fields["stack-thin"].share == fields["stack-thick"].share == 1
    assert not mark.met


def test_both_limits_on_the_other_side_of_the_gap(marked, clean):
    gap = value(clean, "stack-gap")
    thin = 2 * gap - value(clean, "stack-thick")
    fields, _ = marked(stack_thin=f"{thin.m_as('mm'):.3f} mm")
    assert fields["stack-thin"].share == 0 and "direction is turned round" in told(
        fields["stack-thin"]
    )


def test_a_slip_in_the_gap_is_charged_once_all_the_way_to_the_warm_setting(
    marked, unit, issued, clean
):
    off = Q(0.01, "mm")
    wrong = {}
    for name in ("stack-gap", "stack-thin", "stack-thick"):
        wrong[name.replace("-", "_")] = f"{(value(clean, name) + off).m_as('mm'):.3f} mm"
    stack = issued["given"]["stack"]
    thin, thick = (value(clean, name) + off for name in ("stack-thin", "stack-thick"))
    doubt = Q(stack["doubt_mm"], "mm")
    fits = [k for k, mm in stack["totals"].items() if thin + doubt <= Q(mm, "mm") <= thick - doubt]
    setting = Q(stack["totals"][fits[0]], "mm") - value(clean, "stack-gap") - off
    support = support_of(unit, issued, "stack")
    preload = bearing.Pair.from_support(support, unit.bearings).preload(setting)
    torque = bearing.turned(support, unit.bearings, preload, tuple(stack["kinds"])).torque
    pull = torque / Q(stack["drum_mm"], "mm")
    warm = setting + Q(sum(um for _, um in stack["warm"]), "um")
    fields, _ = marked(**wrong, stack_shim=fits[0],
        follow_setting=f"{setting.m_as('mm'):.3f} mm",
        follow_preload=f"{preload.m_as('N'):.0f} N",
        follow_torque=f"{torque.m_as('N*m'):.3f} N·m",
        follow_pull=f"{pull.m_as('N'):.2f} N",
        follow_warm=f"{warm.m_as('mm'):.3f} mm",
    )  # fmt: skip
    assert fields["stack-gap"].share == 0
    carried = ["stack-thin", "stack-thick", "stack-shim", "follow-setting", "follow-preload",
               "follow-torque", "follow-pull", "follow-warm"]  # fmt: skip
    assert [fields[name].share for name in carried] == [1] * len(carried)


def test_every_safe_shim_is_right_and_a_gamble_earns_a_part(module, marked):
    seen = set()
    for learner in ("ann", "bob", "cal", "dan", "eve", "fay"):
        issued = module.issue(learner)
        clean = module.clean(issued)
        safe = value(clean, "stack-shim")
        slips = {slip.value: slip.share for slip in clean.references["stack-shim"].slips}
        for key, _ in issued["given"]["stack"]["shims"]:
            field = marked(issued, stack_shim=key)[0]["stack-shim"]
            assert field.share == (1 if key in safe else slips[key])
            seen.add(field.share)
            if field.share == 0.3:
                assert "on paper" in told(field)
    assert seen == {0, 0.3, 1}


def test_the_limits_of_the_other_arrangement_turned_round(marked, unit, issued):
    support, task = support_of(unit, issued, "shelf"), issued["given"]["shelf"]
    lengths = {term: Q(mm, "mm") for term, mm in task["lengths"].items()}
    stack = shim.Stack.from_support(support, lengths)
    zero = stack.shim_for(Q(0, "mm")).m_as("mm")
    thick = stack.window(*shim.target_interference(support))[1]
    fields, _ = marked(shelf_thin=f"{2 * zero - thick:.3f} mm")
    assert fields["shelf-thin"].share == 0
    assert "arrangement works the other way" in told(fields["shelf-thin"])


def test_a_float_read_before_the_rollers_were_home(marked, unit, issued):
    support, task = support_of(unit, issued, "trial"), issued["given"]["trial"]
    lengths = {term: Q(mm, "mm") for term, mm in task["lengths"].items()}
    one = Q(task["trial_mm"], "mm")
    fresh = bearing.try_shim(support, unit.bearings, one, measured=lengths, off_rib=bearing.OFF_RIB)
    aim = sum(shim.target_interference(support)) / 2
    shim_mm = (one + fresh.travel + aim).m_as("mm")
    fields, _ = marked(
        trial_float=f"{fresh.travel.m_as('mm'):.3f} mm", trial_shim=f"{shim_mm:.3f} mm",
    )  # fmt: skip
    assert fields["trial-float"].share == pytest.approx(0.2)
    assert "before the rollers were home" in told(fields["trial-float"])
    assert fields["trial-shim"].share == 1  # charged once


def test_a_plunger_that_left_the_shaft(marked, clean):
    travel = value(clean, "trial-float")
    away, towards = bearing.dial_readings(travel, Q(0.02, "mm"))
    short = (towards - away).m_as("mm")
    field = marked(trial_float=f"{short:.3f} mm")[0]["trial-float"]
    assert field.share == pytest.approx(0.2) and "plunger left the shaft" in told(field)


def test_a_shim_without_the_target(marked, unit, issued, clean):
    aim = sum(shim.target_interference(support_of(unit, issued, "trial"))) / 2
    upto = value(clean, "trial-shim") - aim
    field = marked(trial_shim=f"{upto.m_as('mm'):.3f} mm")[0]["trial-shim"]
    assert field.share == pytest.approx(0.3) and "target comes on top" in told(field)


def test_doubts_that_were_added(marked, issued):
    total = sum(um for _, _, um in issued["given"]["doubt"]["sources"])
    fields, _ = marked(
        doubt_combined=f"{total:.2f} µm", doubt_expanded=f"{2 * total / 1000:.4f} mm",
    )  # fmt: skip
    assert fields["doubt-combined"].share == pytest.approx(0.2)
    assert "do not simply add" in told(fields["doubt-combined"])
    assert fields["doubt-expanded"].share == 1


def test_a_pull_whose_seals_were_left_in(marked, clean):
    whole = value(clean, "cord-torque").m_as("N*m")
    field = marked(cord_bearings=f"{whole:.3f} N·m")[0]["cord-bearings"]
    assert field.share == pytest.approx(0.2) and "take them off" in told(field)


def test_a_shaft_that_was_counted_without_its_speed(module, marked):
    for learner in ("ann", "bob", "cal", "dan", "eve", "fay"):
        issued = module.issue(learner)
        whole = value(module.clean(issued), "cord-torque").m_as("N*m")
        plain = sum(nm for _, nm, _ in issued["given"]["cord"]["parts"])
        field = marked(issued, cord_bearings=f"{whole - plain:.3f} N·m")[0]["cord-bearings"]
        assert field.share == pytest.approx(0.4), learner
        assert "speed against the drum" in told(field)


def test_a_shim_that_would_make_it_worse(module, marked):
    """The unit on the cord, and each of the others: the wrong shim is told with its limit."""
    told_of = set()
    for learner in ("ann", "bob", "cal", "dan", "eve"):
        issued = module.issue(learner)
        right = value(module.clean(issued), "cord-verdict")
        for line, option in right.items():
            if option == "leave":
                continue
            worse = {"thicker": "thinner", "thinner": "thicker"}[option]
            stored = [f"{one}={said}" for one, said in (right | {line: worse}).items()]
            field = marked(issued, cord_verdict=stored)[0]["cord-verdict"]
            assert field.share == 0 and "3 of the 4 lines" in told(field)
            assert "limit" in told(field)
            told_of.add(line == "own")
    assert told_of == {True, False}


def test_a_verdict_follows_the_learners_own_preload(module, marked):
    """A slip in the torque leads to another preload; what is done with the shim follows from it."""
    for learner in ("ann", "bob", "cal", "dan", "eve"):
        issued = module.issue(learner)
        clean = module.clean(issued)
        right, cord = value(clean, "cord-verdict"), issued["given"]["cord"]
        preload = value(clean, "cord-preload").m_as("N")
        if right["own"] != "leave" or preload * 2 < cord["high_n"]:
            continue
        less = next(way for way in ("thicker", "thinner")
                    if way == ("thinner" if cord["thicker"] == "tightens" else "thicker"))  # fmt: skip
        stored = [f"{line}={option}" for line, option in (right | {"own": less}).items()]
        fields, _ = marked(issued, cord_preload=f"{2 * preload:.0f} N", cord_verdict=stored)
        assert fields["cord-preload"].share == 0
        assert fields["cord-verdict"].share == 1 and fields["cord-verdict"].carried
        return
    pytest.skip("nobody's unit lies so near its upper limit")


def test_heat_without_what_happens_across(marked, issued, clean):
    across = Q(sum(um for _, um in issued["given"]["warm"]["across"]), "um")
    if abs(across.m_as("mm")) < 0.004:
        pytest.skip("next to nothing happens across")
    only = (value(clean, "warm-setting") - across).m_as("mm")
    field = marked(warm_setting=f"{only:.4f} mm")[0]["warm-setting"]
    assert field.share == pytest.approx(0.4) and "across the shaft" in told(field)


def test_life_divided_the_wrong_way(marked, clean):
    times = value(clean, "life-times").m_as("")
    field = marked(life_times=f"{1 / times:.4f}")[0]["life-times"]
    assert field.share == pytest.approx(0.3) and "Turned round" in told(field)


def seen_by(module, task, part, scene):
    """Somebody who is shown a scene."""
    for number in range(40):
        issued = module.issue(f"seen-{number}")
        shown = issued["given"][task][part]
        if scene in dict(shown["lines"] if isinstance(shown, dict) else shown):
            return issued
    return pytest.fail(f"nobody is shown {scene}")


@pytest.mark.parametrize(
    ("scene", "answer", "sentence"),
    [
        ("float-more", "close", "going on makes it worse"),
        ("cord-fell", "seat", "the sign was wrong"),
        ("cord-over", "close", "misses its limit"),
        ("sum-only", "close", "stands still at any preload"),
        ("cord-first", "close", "The shaft was not turned"),
    ],
)
def test_going_on_without_a_check_fails_whatever_the_mark(module, marked, scene, answer, sentence):
    issued = seen_by(module, "bench", "changed", scene)
    right = value(module.clean(issued), "bench-changed")
    stored = [f"{line}={option}" for line, option in (right | {scene: answer}).items()]
    fields, mark = marked(issued, bench_changed=stored)
    assert fields["bench-changed"].share < 1 and not fields["bench-changed"].passed
    assert sentence in told(fields["bench-changed"]) and not mark.met
    assert mark.points > 0.9 * mark.maximum


@pytest.mark.parametrize(
    ("scene", "sentence"),
    [
        ("near", "throw its rollers"),
        ("bench", "looks like a cold one"),
        ("steady", "finger is in the way"),
        ("wrist", "glove and all"),
    ],
)
def test_a_danger_overlooked_fails_whatever_the_mark(module, marked, scene, sentence):
    issued = seen_by(module, "bench", "cautions", scene)
    right = value(module.clean(issued), "bench-cautions")
    stored = [f"{line}={option}" for line, option in (right | {scene: "go"}).items()]
    fields, mark = marked(issued, bench_cautions=stored)
    assert not fields["bench-cautions"].passed and not mark.met
    assert sentence in told(fields["bench-cautions"])


def test_must_pass_lines_left_open_fail(marked):
    for field in ("stack_direction", "bench_changed", "bench_cautions"):
        fields, mark = marked(**{field: None})
        assert not fields[field.replace("_", "-")].passed and not mark.met


def test_wrong_unit_and_slip_of_ten_are_named(marked, clean):
    gap = value(clean, "stack-gap")
    fields, _ = marked(stack_gap=f"{10 * gap.m_as('mm'):.2f} mm")
    assert "10 times too large" in told(fields["stack-gap"])
    whole = value(clean, "cord-torque").m_as("lbf*ft")
    fields, _ = marked(cord_torque=f"{whole:.3f} N·m")
    assert "lbf·ft" in told(fields["cord-torque"])


def test_answers_in_the_other_half_of_the_trades_units_are_right(marked, clean):
    fields, _ = marked(
        stack_gap=f"{value(clean, 'stack-gap').m_as('inch'):.4f} in",
        cord_pull=f"{value(clean, 'cord-pull').m_as('kgf'):.3f} kgf",
        cord_torque=f"{value(clean, 'cord-torque').m_as('lbf*inch'):.3f} lbf·in",
    )  # fmt: skip
    assert [fields[n].share for n in ("stack-gap", "cord-pull", "cord-torque")] == [1, 1, 1]


@pytest.mark.parametrize(
    ("field", "task", "part", "scene", "answer", "sentence"),
    [
        ("shelf-may", "shelf", "may", "file", "fit", "its edge sheds grit"),
        ("shelf-may", "shelf", "may", "burr", "fit", "another seat"),
        ("trial-before", "trial", "before", "air-blown", "count", "only turning brings them home"),
        ("trial-before", "trial", "before", "zero", "dial", "only the difference"),
        ("life-signs", "life", "seen", "new-seal", "much", "Something else explains"),
        ("life-signs", "life", "seen", "rib", "little", "rollers are squeezed"),
    ],
)
def test_a_scene_misjudged_is_told_why(module, marked, field, task, part, scene, answer, sentence):
    issued = seen_by(module, task, part, scene)
    right = value(module.clean(issued), field)
    stored = [f"{line}={option}" for line, option in (right | {scene: answer}).items()]
    judged = marked(issued, **{field.replace("-", "_"): stored})[0][field]
    assert judged.share < 1 and sentence in told(judged)


def test_a_direction_turned_round_in_case_a_is_charged_once(marked, clean, issued):
    ways = dict(value(clean, "signs-cases"))
    word, _, ring = ways["a"].partition("-")
    ways["a"] = f"{dict(tighter='looser', looser='tighter')[word]}-{ring}"
    change = issued["given"]["signs"]["change"]
    before = change["amount_mm"] * (1 if change["kind"] == "preload" else -1)
    right = value(clean, "signs-after").m_as("mm")
    fields, _ = marked(
        signs_cases=[f"{line}={option}" for line, option in ways.items()],
        signs_after=f"{2 * before - right:.2f} mm",
    )
    assert fields["signs-cases"].share == 0.5 and "Follow the ring" in told(fields["signs-cases"])
    assert fields["signs-after"].share == 1 and fields["signs-after"].carried


REFERENCES = """
import sys
from pathlib import Path
from twoshaft.readings import issue_record
from twoshaft.units import load_unit
from twoshaft_grader.marking import load_solution, run_clean

unit = load_unit("tarnbeck-b5")
solution = load_solution(Path(sys.argv[1]))
for number in range(1, 4):  # for the first, two safe shims lie as near the middle
    who = {"learner": f"tm{number:02}", "attempt": 1, "salt": "1e89bbd6f96600ad"}
    issued = issue_record("shims-and-preload", unit, **who)
    print(repr(run_clean(solution, issued, unit).references["follow-setting"].value))
"""


@pytest.mark.slow
def test_what_follows_is_the_same_in_every_process():
    import os
    import subprocess
    import sys
    from pathlib import Path

    solution = Path(__file__).resolve().parents[2] / "solutions" / f"{MODULE}.ipynb"
    command = [sys.executable, "-c", REFERENCES, str(solution)]
    told = {
        subprocess.run(
            command, env=os.environ | {"PYTHONHASHSEED": str(seed)}, capture_output=True, text=True
        ).stdout
        for seed in range(4)
    }
    (same,) = told
    assert len(same.splitlines()) == 3
