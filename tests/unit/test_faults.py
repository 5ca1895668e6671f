from itertools import combinations

import numpy as np
import pytest
from pydantic import ValidationError

from twoshaft.errors import OutOfRangeError, UnitFileError
from twoshaft.models import faults
from twoshaft.models.faults import by_hand, running, tight
from twoshaft.models.faults.audit import audit_faults
from twoshaft.models.faults.built import exclude, touches
from twoshaft.models.geartrain import turns
from twoshaft.units import load_unit
from twoshaft.units.sections.faults import Faults


@pytest.fixture(scope="module")
def show(unit):
    """Return what a check shows with some misbuilds in the unit, as a key."""

    def run(check, *misbuilds):
        built = faults.as_built(unit, [unit.faults.misbuild_by_id(one) for one in misbuilds])
        return faults.run_check(unit.faults.check_by_id(check), built).key

    return run


def with_faults(unit, **lists):
    """The unit with other entries in its faults section, given as plain data."""
    data = unit.faults.model_dump() | lists
    return unit.with_sections(faults=Faults.model_validate(data))


def misbuild(*changes, name="odd", often=5):
    return {"id": name, "name": "An odd one", "changes": changes, "often_per_1000": often}


@pytest.mark.parametrize("name", ["tarnbeck-b5", "tarnbeck-b5-early"])
def test_a_sound_unit_passes_every_check(name):
    unit = load_unit(name)
    sound = faults.as_built(unit, ())
    for check in unit.faults.checks:
        assert faults.run_check(check, sound).key == faults.PASSES


@pytest.mark.parametrize(
    ("check", "misbuild", "key"),
    [
        ("prove-lockout", "spring-reversed", "lockout-fails-fifth-reverse"),
        ("prove-lockout", "spring-left-out", "lockout-unreliable-fifth-reverse"),
        ("try-gears", "finger-peg-worn", "cannot-reverse"),
        ("feel-detents", "ball-left-out", "not-held-fourth + not-held-third"),
        ("try-two-gears", "through-pin-left-out", faults.PASSES),
        ("pull-output", "output-shim-too-thin", "light-pull-output"),
        ("pull-output", "output-shim-left-out", "none-pull-output"),
        ("pull-neutral", "diff-shim-too-thick", "heavy-pull-neutral"),
        ("pull-neutral", "diff-ring-not-home", "heavy-pull-neutral"),
        ("pull-neutral", "output-shim-too-thin", faults.PASSES),
        ("feel-float", "diff-shim-left-out", "felt-float-differential"),
        ("feel-float", "diff-shim-too-thick", faults.PASSES),
        ("click-bolts", "case-bolt-loose", "turns-case-bolts-12"),
        ("click-bolts", "case-bolts-oiled", faults.PASSES),
        ("click-bolts", "cover-bolts-too-tight", "no-click-end-cover-bolts"),
        ("watch-for-leaks", "cover-bolts-too-tight", "oil-end-cover-bolts"),
        ("watch-for-leaks", "plug-loose", "oil-oil-plugs"),
        ("watch-for-leaks", "film-skinned", "oil-case-joint-all-round"),
        ("watch-for-leaks", "seal-left-out", "missing-fit-left-seal"),
        ("watch-for-leaks", "magnet-left-out", faults.PASSES),
        ("count-turns", "third-wheel-swapped", "fewer-turns-third"),
        ("count-turns", "fifth-hub-turned", "no-drive-fifth"),
        ("count-turns", "finger-peg-worn", "uncounted-reverse"),
        ("count-speed-drive", "speed-pinion-swapped", "fewer-turns-speed-pinion"),
        ("feel-ring-gap", "fifth-ring-worn", "ring-gap-small"),
    ],
)
def test_what_a_misbuild_shows(show, check, misbuild, key):
    assert show(check, misbuild) == key


@pytest.mark.parametrize(
    ("misbuild", "holes"),
    [("film-gap", {"bolt-12", "bolt-13"}), ("face-oily", {"bolt-4", "bolt-5"})],
)
def test_oil_comes_out_where_the_film_fails(show, misbuild, holes):
    assert show("watch-for-leaks", misbuild).removeprefix("oil-case-joint-") in holes


def test_two_at_once_names_every_pair_of_different_rails(show):
    """Six gears on three rails: twelve pairs, and none of one rail."""
    signs = show("try-two-gears", "interlocks-left-out").split(" + ")
    assert len(signs) == 12
    assert not {"at-once-first-second", "at-once-fifth-reverse"} & set(signs)


def test_signs_of_settings(unit):
    """A thicker shim behind an outer ring and a ring off its seat both tighten the pair."""

    def setting(**change):
        entry = misbuild({"kind": "setting", "support": "differential", **change})
        odd = with_faults(unit, misbuilds=[entry])
        built = faults.as_built(odd, odd.faults.misbuilds)
        return running.interference_mm(built, unit.bearings.support_by_id("differential"))

    assert setting(shim_mm=0.1) == pytest.approx(0.085 + 0.1)
    assert setting(shim_mm=-0.1) == pytest.approx(0.085 - 0.1)
    assert setting(ring_off_mm=0.03) == pytest.approx(0.085 + 0.03)
    assert setting(without_shim=True) == pytest.approx(0.085 - 1.165)


def test_a_slight_float_is_read_and_a_large_one_felt(unit):
    for shim_mm, sign in ((-0.1, "float-differential"), (-0.3, "felt-float-differential")):
        change = {"kind": "setting", "support": "differential", "shim_mm": shim_mm}
        odd = with_faults(unit, misbuilds=[misbuild(change)])
        built = faults.as_built(odd, odd.faults.misbuilds)
        assert faults.run_check(unit.faults.check_by_id("feel-float"), built).key == sign


def test_the_other_pair_is_taken_off_the_pull(unit):
    """The pull in neutral judges the differential, whatever the output shaft takes."""
    check = unit.faults.check_by_id("pull-neutral")
    for shim_mm in (-0.08, -0.04, 0.04, 0.08):
        change = {"kind": "setting", "support": "output-shaft", "shim_mm": shim_mm}
        odd = with_faults(unit, misbuilds=[misbuild(change)])
        assert faults.run_check(check, faults.as_built(odd, odd.faults.misbuilds)).passes


def test_the_final_drive_speeds_the_pinion_up_as_the_gear_train_says(unit):
    turned = turns(unit.gear_train, ["first"])
    by_train = abs(turned["output-shaft"] / turned["differential-case"])
    assert running.final_drive(unit.gear_train) == pytest.approx(float(by_train))


def test_another_final_drive_spoils_the_sum_of_the_two_pulls(unit):
    """What the output shaft takes alone is reckoned with the ratio that the unit should have."""
    wheel = {"kind": "wheel", "mesh": "mesh-final", "side": "driving", "teeth": 12}
    odd = with_faults(unit, misbuilds=[misbuild(wheel)])
    built = faults.as_built(odd, odd.faults.misbuilds)
    outcome = faults.run_check(unit.faults.check_by_id("pull-neutral"), built)
    assert outcome.key == "heavy-pull-neutral"


def test_a_loose_bolt_leaves_its_neighbours_alone_under_the_wrench(unit):
    built = faults.as_built(unit, [unit.faults.misbuild_by_id("case-bolt-loose")])
    clamp, failed = tight.clamps_n(built, "case-bolts")
    assert clamp.argmin() == 11
    assert clamp[11] < 0.1 * np.delete(clamp, 11).min()
    assert not failed.any()


def test_oiled_bolts_carry_more_clamp_for_the_same_torque(unit):
    oiled = faults.as_built(unit, [unit.faults.misbuild_by_id("case-bolts-oiled")])
    more, _ = tight.clamps_n(oiled, "case-bolts")
    right, _ = tight.clamps_n(faults.as_built(unit, ()), "case-bolts")
    assert (more > 1.1 * right).all()


def test_a_thicker_film_still_seals_and_a_turned_hub_can_still_reach(unit):
    film = {"kind": "film", "face": "case-joint", "times_film": 3}
    hub = {"kind": "hub", "synchroniser": "hub-fifth", "away_from": "fifth", "away_mm": 0.4}
    odd = with_faults(unit, misbuilds=[misbuild(film, hub)])
    built = faults.as_built(odd, odd.faults.misbuilds)
    for check in ("watch-for-leaks", "count-turns"):
        assert faults.run_check(unit.faults.check_by_id(check), built).passes


def test_an_idler_too_many_turns_the_other_way(unit):
    """A wheel swapped on the driving side counts more turns; direction follows the meshes."""
    wheel = {"kind": "wheel", "mesh": "mesh-third", "side": "driving", "teeth": 27}
    odd = with_faults(unit, misbuilds=[misbuild(wheel)])
    built = faults.as_built(odd, odd.faults.misbuilds)
    outcome = faults.run_check(unit.faults.check_by_id("count-turns"), built)
    assert outcome.key == "more-turns-third"
    assert outcome.sentence == "Third counts too many turns."


@pytest.mark.slow
def test_the_coarse_grids_of_the_table_show_what_the_fine_ones_show(unit, show, monkeypatch):
    by_model = {
        "shift": ("try-gears", "feel-detents", "try-two-gears", "prove-lockout"),
        "joint case-joint": ("watch-for-leaks",),
    }
    cases = [
        (check, one.id)
        for one in unit.faults.misbuilds
        for model in touches(unit, one) & set(by_model)
        for check in by_model[model]
    ]
    coarse = [show(*case) for case in cases]
    monkeypatch.setattr(by_hand, "_GRID_MM", 0.5)
    monkeypatch.setattr(tight, "_CELLS", (400, 300))
    assert [show(*case) for case in cases] == coarse


def test_what_excludes_what(unit):
    entry = unit.faults.misbuild_by_id
    pairs = {
        frozenset((a.id, b.id))
        for a, b in combinations(unit.faults.misbuilds, 2)
        if exclude(unit, a, b)
    }
    assert pairs == {
        frozenset(("spring-reversed", "spring-left-out")),
        frozenset(("finger-pin-not-home", "finger-peg-worn")),
        frozenset(("interlocks-left-out", "through-pin-left-out")),
        frozenset(("output-shim-too-thin", "output-shim-left-out")),
        frozenset(("diff-shim-too-thick", "diff-shim-left-out")),
    }
    assert not exclude(unit, entry("diff-ring-not-home"), entry("diff-shim-too-thick"))


@pytest.mark.slow
def test_misbuilds_that_no_check_tells_apart(unit):
    groups = faults.indistinguishable(unit)
    silent = [set(group.misbuilds) for group in groups if group.silent]
    alike = [set(group.misbuilds) for group in groups if not group.silent]
    assert silent == [{"through-pin-left-out", "case-bolts-oiled", "magnet-left-out"}]
    assert {"diff-shim-too-thick", "diff-ring-not-home"} in alike
    assert {"spring-reversed", "plate-turned-over", "finger-pin-not-home"} in alike
    assert len(alike) == 2


@pytest.mark.slow
def test_a_failed_lockout_leaves_three_single_explanations(unit):
    seen = {"prove-lockout": "lockout-fails-fifth-reverse"}
    found = faults.explain(unit, seen)
    assert set(found.singles) == {"spring-reversed", "plate-turned-over", "finger-pin-not-home"}
    assert set(found.least) >= {(one,) for one in found.singles}
    assert sum(found.chances) == pytest.approx(1)
    assert found.sets[0] == ("spring-reversed",)  # the most frequent of the three
    assert found.bits > 1


@pytest.mark.slow
def test_two_faults_at_once_need_two(unit):
    seen = {"click-bolts": "turns-case-bolts-12", "feel-ring-gap": "ring-gap-small"}
    found = faults.explain(unit, seen)
    assert found.singles == ()
    assert found.doubles == (("case-bolt-loose", "fifth-ring-worn"),)
    assert found.least == found.doubles


@pytest.mark.slow
def test_a_sound_unit_is_explained_by_nothing_wrong(unit):
    seen = dict.fromkeys((check.id for check in unit.faults.checks), faults.PASSES)
    found = faults.explain(unit, seen)
    assert found.sets[0] == ()
    assert found.chances[0] > 0.9
    assert found.least == ((),)
    assert faults.next_check(unit, seen) == ()


@pytest.mark.slow
def test_what_nothing_explains_has_no_next_check(unit):
    seen = {
        "prove-lockout": "lockout-fails-fifth-reverse",
        "feel-ring-gap": "ring-gap-small",
        "count-speed-drive": "fewer-turns-speed-pinion",
    }
    assert faults.explain(unit, seen).sets == ()
    assert faults.next_check(unit, seen) == ()


@pytest.mark.slow
def test_a_search_ends_at_the_misbuild(unit):
    table = faults.outcome_table(unit)
    search = faults.Diagnosis(unit)
    while ranked := faults.next_check(unit, search.observed):
        check = ranked[0].check
        search = search.observe(check, table.outcome(("plug-loose",), check))
    found = faults.explain(unit, search.observed)
    assert found.least == (("plug-loose",),)
    assert found.chances[0] > 0.9


@pytest.mark.slow
def test_the_best_check_tells_most_a_minute(unit):
    ranked = faults.next_check(unit, {})
    rates = [one.bits_per_minute for one in ranked]
    assert rates == sorted(rates, reverse=True)
    assert all(one.bits > 0 for one in ranked)
    minutes = {check.id: check.minutes for check in unit.faults.checks}
    assert all(one.minutes == minutes[one.check] for one in ranked)


def test_unknown_checks_and_outcomes_are_refused(unit):
    with pytest.raises(OutOfRangeError, match="kick-it"):
        faults.explain(unit, {"kick-it": faults.PASSES})
    with pytest.raises(OutOfRangeError, match="smells"):
        faults.Diagnosis(unit).observe("try-gears", "smells")
    bare = unit.with_sections(faults=None)
    with pytest.raises(UnitFileError, match="faults"):
        faults.explain(bare, {})
    assert audit_faults(bare) == ()


@pytest.mark.parametrize(
    ("change", "words"),
    [
        ({"kind": "shift", "misbuild": "nowhere"}, "nowhere is no shift assembly fault"),
        ({"kind": "setting", "support": "axle", "shim_mm": 0.1}, "axle is no support"),
        ({"kind": "bolts", "group": "case-bolts", "numbers": [15], "torque_share": 2}, "15"),
        ({"kind": "bolts", "group": "case-bolts", "state": "rusty"}, "rusty is no state"),
        ({"kind": "film", "face": "case-joint", "without_segments": ["here"]}, "no segment"),
        ({"kind": "wheel", "mesh": "mesh-sixth", "side": "driven", "teeth": 20}, "no mesh"),
        (
            {"kind": "hub", "synchroniser": "hub-fifth", "away_from": "first", "away_mm": 1},
            "no synchroniser engages a gear as hub-fifth first",
        ),
        ({"kind": "left-out", "operation": "polish"}, "polish is no operation"),
    ],
)
def test_a_name_that_leads_nowhere_is_found(unit, change, words):
    odd = with_faults(unit, misbuilds=[misbuild(change)])
    (finding,) = audit_faults(odd)
    assert words in finding.sentence


def test_a_step_that_the_build_cannot_do_without_is_found(unit):
    """Without the rails no fork pin can be driven: nobody gets as far as the checks."""
    odd = with_faults(
        unit, misbuilds=[misbuild({"kind": "left-out", "operation": "slide-in-rails"})]
    )
    sentences = [finding.sentence for finding in audit_faults(odd)]
    assert any("without it pin-inner-forks cannot be done" in one for one in sentences)


def test_one_of_several_ways_is_enough(make_unit):
    """A rule that asks for any of two steps shows only when both are left out."""
    any_of = {"id": "r", "kind": "cannot", "any_of": ["s00", "s01"], "later": "s02",
              "reason": "One of the two must be there."}  # fmt: skip
    check = {"id": "look", "name": "Look", "kind": "leaks", "minutes": 1, "operations": ["s02"]}

    def left(name, *steps):
        return misbuild(*({"kind": "left-out", "operation": s} for s in steps), name=name)

    little = make_unit(
        3,
        rules=[any_of],
        faults={"checks": [check], "misbuilds": [left("one", "s00"), left("both", "s00", "s01")]},
    )
    table = faults.outcome_table(little)
    assert table.outcome(("one",), "look").passes
    assert table.outcome(("both",), "look").sentence == "One of the two must be there."


def test_a_check_that_cannot_serve_is_found(unit):
    checks = [
        {"id": "ring", "name": "Ring gap", "kind": "ring-gap", "minutes": 1.0,
         "synchroniser": "hub-third-fourth", "resolution_mm": 0.05},
    ]  # fmt: skip
    worn = misbuild({"kind": "hub", "synchroniser": "hub-fifth", "wear_mm": 0.1})
    other = with_faults(unit, checks=checks, misbuilds=[worn])
    (finding,) = audit_faults(other)
    assert "none of the assembly faults fails it" in finding.sentence
    hub = unit.gear_train.synchronisers[1].model_copy(update={"ring_gap_new_mm": 0.2})
    rest = [s for s in unit.gear_train.synchronisers if s.id != hub.id]
    train = unit.gear_train.model_copy(update={"synchronisers": (*rest, hub)})
    (finding,) = audit_faults(other.with_sections(gear_train=train))
    assert "a sound unit does not pass" in finding.sentence


@pytest.mark.parametrize(
    "change",
    [
        {"kind": "setting", "support": "differential"},
        {"kind": "setting", "support": "differential", "shim_mm": 0.1, "without_shim": True},
        {"kind": "bolts", "group": "case-bolts"},
        {"kind": "film", "face": "case-joint", "times_film": 2, "waited_minutes": 5},
        {"kind": "hub", "synchroniser": "hub-fifth", "away_from": "fifth"},
        {"kind": "hub", "synchroniser": "hub-fifth", "wear_mm": 0.1, "away_mm": 1},
        {"kind": "wheel", "mesh": "mesh-third", "side": "upper", "teeth": 20},
        {"kind": "magic"},
    ],
)
def test_a_change_says_one_thing(change):
    check = {"id": "c", "name": "Gears", "kind": "gears-go-in", "minutes": 1}
    with pytest.raises(ValidationError):
        Faults.model_validate({"checks": [check], "misbuilds": [misbuild(change)]})


def test_ids_stand_once():
    check = {"id": "c", "name": "Gears", "kind": "gears-go-in", "minutes": 1}
    left = {"kind": "left-out", "operation": "a"}
    with pytest.raises(ValidationError, match="listed twice"):
        Faults.model_validate({"checks": [check, check], "misbuilds": [misbuild(left)]})


def test_a_scale_is_in_doubt_by_half_its_step_and_by_a_whole_one_where_two_readings_are_taken(unit):
    sound = faults.as_built(unit, [])
    for name, steps in (("pull-output", 0.5), ("pull-neutral", 1.0)):
        check = unit.faults.check_by_id(name)
        assert running.pull(check, sound).doubt_n == pytest.approx(steps * check.resolution_n)


@pytest.mark.parametrize(
    ("shown_n", "verdict"),
    [(19.0, "light"), (19.5, "inside"), (34.5, "inside"), (35.0, "heavy")],
)
def test_a_pull_speaks_only_beyond_its_doubt(shown_n, verdict):
    """Limits 16 and 30 N, 4 N taken off, 0.5 N of doubt."""
    assert running.Pull(shown_n, 4.0, 16.0, 30.0, 0.5).verdict == verdict


@pytest.mark.parametrize(("part", "leaks"), [(0.6, True), (0.99, True), (1.01, False)])
def test_a_plug_leaks_below_the_clamp_that_its_group_wants(unit, part, leaks):
    """The clamp goes with the torque, so that part of the wanted one takes that part of the torque."""
    wanted_n = unit.fasteners.group("oil-plugs").clamp_kn * 1e3
    clamp_n, _ = tight.clamps_n(faults.as_built(unit, []), "oil-plugs")
    share = part * wanted_n / clamp_n[0]
    change = {"kind": "bolts", "group": "oil-plugs", "numbers": [1], "torque_share": share}
    odd = with_faults(unit, misbuilds=[misbuild(change)])
    built = faults.as_built(odd, odd.faults.misbuilds)
    found = faults.run_check(unit.faults.check_by_id("watch-for-leaks"), built)
    assert ("oil-oil-plugs" in found.key) == leaks
