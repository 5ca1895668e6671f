"""Figures from the bench: declared, read, put in, kept, merged; hostile values change nothing."""

import json
from functools import lru_cache

import pytest

from twoshaft.errors import CourseError, SheetError
from twoshaft.jobsheet import open_sheet
from twoshaft.jobsheet.bench_readings import BenchSet, given_with, panel_state
from twoshaft.jobsheet.form import FormWidget
from twoshaft.jobsheet.store import Store
from twoshaft.models.geartrain import ratio
from twoshaft.readings import MODULES, draw, whole_units
from twoshaft.readings.gear_train_and_checks.own_figures import as_counted
from twoshaft.readings.own_bench import bench_figures, bench_tasks, put_in
from twoshaft.records import to_json
from twoshaft.stored.job_sheet import Answer, SheetData, parse_sheet
from twoshaft.units import load_unit

MODULE = "shims-and-preload"


@lru_cache(maxsize=64)
def drawn_for(module, unit, learner="ann"):
    """What a learner is given; it is drawn once, and putting figures in leaves it as it is."""
    return draw(module, unit, salt="test", learner=learner, attempt=1)


@pytest.fixture(scope="module")
def drawn(unit):
    return drawn_for(MODULE, unit)


def entries(drawn, task="stack", **changed):
    """A full set of the stack: the drawn lengths a tenth longer, and a target of one's own."""
    lengths = drawn.stack.lengths
    texts = {name: f"{mm + 0.1:.2f} mm" for name, mm in lengths.items()}
    texts |= {"low-target": "40 µm", "high-target": "0,1 mm", "page": "112", "read-by": "A. Reader"}
    texts |= {"in-use": "yes"} | {name.replace("_", "-"): text for name, text in changed.items()}
    return {f"{task}-{name}": Answer(text, 1) for name, text in texts.items() if text is not None}


@pytest.mark.slow
@pytest.mark.parametrize("name", whole_units())
@pytest.mark.parametrize("module", [module for module in MODULES if bench_tasks(module)])
def test_every_declared_figure_stands_where_it_says(name, module):
    unit = load_unit(name)
    for learner in ("ann", "bob"):
        given = drawn_for(module, unit, learner)
        for task, declared in bench_tasks(module).items():
            figures = bench_figures(module, task, unit, given)
            assert len({figure.name for figure in figures}) == len(figures) > 0
            values = {}
            for figure in figures:
                if figure.drawn is not None:
                    assert not figure.fault(figure.drawn), (module, figure)
                    values[figure.name] = figure.drawn
            if len(values) == len(figures):  # the drawn figures, typed, are taken
                renewed = getattr(put_in(module, task, unit, given, values, "x"), task)
                assert set(to_json(getattr(given, task))) < set(to_json(renewed))
            assert declared.also == tuple(t for t in declared.also if t != task)


def test_a_full_set_takes_the_place_of_the_drawn_one(unit, drawn):
    sets = BenchSet.all_of(MODULE, unit, drawn, entries(drawn))
    given, refused = given_with(sets, MODULE, unit, drawn)
    assert not refused
    assert given.stack.low_mm == pytest.approx(0.04)
    assert given.stack.rows[0].tool == "from the bench"
    assert given.stack.source == " (from the bench, limits from the manual, page 112)"
    assert given.stack.lengths != drawn.stack.lengths
    assert drawn.stack.low_mm != 0.04 and given.cord is drawn.cord


@pytest.mark.parametrize(
    ("changed", "said"),
    [
        ({"high_target": ""}, "Still missing: Most preload of the target."),
        ({"read_by": " "}, "Still missing: Read by."),
        ({"page": None}, "Still missing: Manual page."),
        ({"low_target": "0.04"}, "without a unit"),
        ({"low_target": "4 mm"}, "plausible from 0 to 0.16 mm"),
        ({"low_target": "0.12 mm"}, "least preload is not below the most"),
        ({"low_target": "0.09 mm"}, "no shim of this unit's set meets that target"),
        ({"low_target": "1e30 mm"}, "plausible"),
        ({"low_target": ["0.04 mm"]}, "Still missing"),
        ({"low_target": 0.04}, "Still missing"),
        ({"read_by": "x" * 81}, "longer than 80"),
    ],
)
def test_half_filled_or_refused_is_not_used_and_says_why(unit, drawn, changed, said):
    sets = BenchSet.all_of(MODULE, unit, drawn, entries(drawn, **changed))
    given, refused = given_with(sets, MODULE, unit, drawn)
    assert given is drawn
    assert said in refused["stack"]


def test_not_asked_for_is_not_used(unit, drawn):
    for word in (None, "no", "YES", ["yes"], 1):
        sets = BenchSet.all_of(MODULE, unit, drawn, entries(drawn, in_use=word))
        assert given_with(sets, MODULE, unit, drawn) == (drawn, {})


def test_the_pull_on_the_cord_gives_the_setting_behind_it(unit, drawn):
    """The pull that the model itself shows for a setting leads back to that setting."""
    from twoshaft.models.bearing import Pair, cord_pull, turned
    from twoshaft.units.quantities import Q

    cord = drawn.cord
    support = unit.bearings.support_by_id(cord.support)
    force = Pair.from_support(support, unit.bearings).preload(Q(0.05, "mm"))
    what = turned(support, unit.bearings, force, cord.kinds)
    pull = cord_pull(what, Q(40, "mm")).force.m_as("N")
    values = {"pull": pull, "drum": 40, "least": 0.5 * force.m_as("N"), "most": 2 * force.m_as("N")}
    assert put_in(MODULE, "cord", unit, drawn, values).cord.setting_mm == pytest.approx(0.05)
    with pytest.raises(CourseError, match="so near a limit"):
        put_in(MODULE, "cord", unit, drawn, values | {"least": force.m_as("N")})
    with pytest.raises(CourseError, match="not one that these bearings"):
        put_in(MODULE, "cord", unit, drawn, values | {"pull": 1.0})


@pytest.mark.parametrize(
    "bench",
    [[], "x", {"Bad Name": {}}, {"stack-x": []}, {"stack-x": {"value": {"a": 1}}},
     {"stack-x": {"value": "x" * 3000}}, {f"f-{n}": {} for n in range(600)},
     {"stack-x": {"value": "a\x00b"}}, {"stack-x": {"value": "1", "revision": -1}}],
)  # fmt: skip
def test_hostile_bench_entries_are_refused(bench):
    with pytest.raises(SheetError):
        parse_sheet(json.dumps({"format": 1, "fields": {}, "bench": bench}))


def test_kept_with_the_sheet_and_left_out_where_there_are_none(drawn):
    data = SheetData(learner="ann", bench=entries(drawn))
    assert parse_sheet(json.dumps(data.as_json())).bench == data.bench
    assert "bench" not in SheetData(learner="ann").as_json()


def test_two_windows_merge(tmp_path):
    path = tmp_path / "jobsheet.json"
    one, two = (Store(path, SheetData(learner="ann")) for _ in range(2))
    one.save("stack-page", "112", bench=True)
    two.save("stack-read-by", "Ann", bench=True)
    two.save("stack-gap", "0.5 mm")
    assert one.refresh() == ("stack-gap", "bench")
    assert {name: a.value for name, a in one.data.bench.items()} == {
        "stack-page": "112", "stack-read-by": "Ann",
    }  # fmt: skip


def test_assigned_without_bench_readings_shows_no_control(tmp_path):
    folder = tmp_path / "ann" / f"{MODULE}-1"
    folder.mkdir(parents=True)
    (tmp_path / "ann" / "learner.json").write_text('{"id": "ann"}')
    about = {"format": 1, "module": MODULE, "attempt": 1, "salt": "test"}
    for allowed in (False, True):
        (folder / "assignment.json").write_text(json.dumps(about | {"bench_readings": allowed}))
        sheet = open_sheet(MODULE, folder)
        assert bool(sheet.bench_panel("stack")) is allowed
        assert not sheet.bench_panel("signs")


def test_the_form_saves_uses_and_goes_back(tmp_path, drawn):
    sheet = open_sheet(MODULE, tmp_path)
    field = sheet.number("stack-gap", "Gap", "mm")
    sheet.register("stack", [field])
    form = FormWidget(sheet, "stack", [field])
    for name, answer in entries(sheet.drawn).items():
        form.hear({"type": "bench", "name": name.removeprefix("stack-"), "value": answer.value})
    assert form.bench["used"] and form.bench["stale"]
    assert "from the manual, page 112" in form.plain_copy()
    form.hear({"type": "bench", "name": "no-such", "value": "1"})
    assert "stack-no-such" not in sheet.data.bench

    again = open_sheet(MODULE, tmp_path)
    assert again.given.stack.low_mm == pytest.approx(0.04)
    assert not again.bench_panel("stack")["stale"]
    FormWidget(again, "stack", [field]).hear({"type": "bench", "name": "in-use", "value": "no"})
    assert open_sheet(MODULE, tmp_path).given == sheet.drawn


# What could be read of each task, in the order asked; None leaves a figure as it was drawn.
OWN = {
    ("threaded-joints", "found"): lambda given: ["M8", "8.8", None, 24, 300, 50, 0, 22, 30],
    ("threaded-joints", "alloy"): lambda given: ["M8", 12, 16, 4, 25],
    ("threaded-joints", "blind"): lambda given: [30, 24, 0.6, 22],
    ("threaded-joints", "nut"): lambda given: ["M22x1.5-LH", 600, 180],
    ("threaded-joints", "stake"): lambda given: [10, 4, 3, 1.2, "whole"],
    ("pressed-and-driven", "limits"): lambda given: [40, 40, 40.025, 40.027, 40.042],
    ("pressed-and-driven", "press"): lambda given: [*_pair(given), 14, 10, 60],
    ("pressed-and-driven", "heat"): lambda given: [*_pair(given), 20, 70, 80],
    ("pressed-and-driven", "locks"): lambda given: [10, 4, 3, 1.2, "cracked"],
    ("sealant-film", "bead"): lambda given: [1.2, 12, 0.08, 0.8],
    ("sealant-film", "clock"): lambda given: [1, 3, 2, 3, 2, 1.5, 3, 5, 15],
    ("sealant-film", "lay"): lambda given: [60, 4, 30],
    ("sealant-film", "after"): lambda given: [1, 24],
    ("gear-train-and-checks", "path"): lambda given: [20, 31, 17, 71, 13, 29, 41],
    ("gear-train-and-checks", "count"): lambda given: [20, 31, 17, 71, 1.5, 2.5],
    ("gear-train-and-checks", "speed"): lambda given: [10, 10.5],
    ("gear-train-and-checks", "gap"): lambda given: [0.35, 0.4, 0.3, 1.2, 0.5],
    ("gear-train-and-checks", "play"): lambda given: [0.4, 0.65, 0.85, 0.05, 0.15],
}


def _pair(given):
    return given.size_mm - 0.02, given.size_mm + 0.02


def own(unit, module, task, **changed):
    """A task on figures of one's own, some of them changed by name."""
    given = drawn_for(module, unit)
    figures, mine = bench_figures(module, task, unit, given), getattr(given, task)
    values = {}
    for figure, value in zip(figures, OWN[module, task](mine), strict=True):
        values[figure.name] = figure.drawn if value is None else value
    values |= {name.replace("_", "-"): value for name, value in changed.items()}
    return getattr(put_in(module, task, unit, given, values), task)


@pytest.mark.slow
@pytest.mark.parametrize(("module", "task"), OWN)
def test_what_could_be_read_at_a_bench_is_taken(unit, module, task):
    assert own(unit, module, task)


@pytest.mark.slow
@pytest.mark.parametrize(
    ("module", "task", "changed", "said"),
    [
        ("threaded-joints", "found", {"least": 31}, "least torque is not below the most"),
        ("threaded-joints", "found", {"most": 28.0}, "reading the scale decides"),
        ("threaded-joints", "found", {"setting": 80}, "far too much for a bolt M8 of class 8.8"),
        ("threaded-joints", "found", {"class": "7.7"}, "is chosen from the list"),
        ("threaded-joints", "found", {"reach": 900}, "plausible from 0 to 400 mm"),
        ("threaded-joints", "found", {"setting": "24"}, "is a number"),
        ("threaded-joints", "alloy", {"good": 11}, "more thread meets than is good"),
        ("threaded-joints", "alloy", {"thread": "M7"}, "is chosen from the list"),
        ("threaded-joints", "blind", {"reach": 30}, "reaches to the bottom"),
        ("threaded-joints", "blind", {"liquid": 0.06}, "has room under the tip"),
        ("threaded-joints", "blind", {"liquid": 2}, "more liquid than the hole holds"),
        ("threaded-joints", "nut", {"length": 100}, "beyond what two people give"),
        ("threaded-joints", "stake", {"depth": 4.5}, "deeper in its slot than the slot is wide"),
        ("threaded-joints", "stake", {"state": ""}, "is chosen from the list"),
        ("pressed-and-driven", "limits", {"hole_least": 40.03}, "smallest hole is above"),
        ("pressed-and-driven", "limits", {"shaft_most": 45}, "0.5 mm from the nominal size"),
        ("pressed-and-driven", "limits", {"shaft_least": 40.025}, "a hair decides"),
        ("pressed-and-driven", "press", {"shaft": 25.983}, "no grip to work with"),
        ("pressed-and-driven", "press", {"least": 60}, "least interference is not below"),
        ("pressed-and-driven", "press", {"most": 30}, "does not go under the press"),
        ("pressed-and-driven", "heat", {"oven": 90}, "hotter than the part may get"),
        ("pressed-and-driven", "heat", {"room": 30, "oven": 30}, "no warmer than the room"),
        ("pressed-and-driven", "locks", {"depth": 4.5}, "deeper in its slot"),
        ("sealant-film", "bead", {"lump": 0.1}, "hardly any bead both fills this gap"),
        ("sealant-film", "bead", {"width": 1}, "plausible from 2 to 60 mm"),
        ("sealant-film", "lay", {"open": 4.5}, "no film or bead seals"),
        ("sealant-film", "after", {"closed": 24.2}, "half an hour"),
        ("gear-train-and-checks", "path", {"wheels_1_driven": 30.5}, "is a whole number"),
        ("gear-train-and-checks", "path", {"wheels_1_driven": 4}, "plausible from 6 to 130"),
        ("gear-train-and-checks", "speed", {"counted": 500}, "fits a pinion of"),
        ("gear-train-and-checks", "speed", {"counted": 10.21}, "between two pinions"),
        ("gear-train-and-checks", "gap", {"new": 0.5}, "not below that of a new"),
        ("gear-train-and-checks", "gap", {"least": 0.302}, "a hair decides"),
        ("gear-train-and-checks", "gap", {"place_1": 1.1}, "stands askew"),
        ("gear-train-and-checks", "play", {"least": 0.2}, "least play is not below"),
        ("gear-train-and-checks", "play", {"most": 0.251}, "on a limit"),
    ],
)
def test_what_decides_nothing_is_refused_in_one_sentence(unit, module, task, changed, said):
    with pytest.raises(CourseError) as told:
        own(unit, module, task, **changed)
    assert said in told.value.sentence and told.value.sentence.count(". ") == 0


def test_a_thread_of_ones_own_changes_what_follows_from_it(unit):
    found = own(unit, "threaded-joints", "found")
    assert found.diameter_mm == pytest.approx(8)
    # Stress area 36.6 mm² (ISO 898-1) at 640 MPa is 23.4 kN; the twist takes some of it.
    assert 0.8 * 23.4 < found.yields_kn < 23.4
    finer = own(unit, "threaded-joints", "found", thread="M8x1")
    assert finer.yields_kn > found.yields_kn
    state = next(one.id for one in found.factors if one.id != found.state.id)
    assert own(unit, "threaded-joints", "found", state=state).state.id == state
    loose = own(unit, "threaded-joints", "alloy", tolerance=0)
    assert loose.most_kn < own(unit, "threaded-joints", "alloy").most_kn


def test_an_idler_is_counted_once_and_teeth_of_ones_own_make_the_ratio(unit):
    path = own(unit, "gear-train-and-checks", "path")
    assert path.back[0].driven == path.back[1].driving == 29
    train = as_counted(unit.gear_train, path)
    assert abs(float(ratio(train, path.gear.id))) == pytest.approx(31 / 20 * 71 / 17)
    assert abs(float(ratio(train, "reverse"))) == pytest.approx(41 / 13 * 71 / 17)


def test_a_film_of_ones_own_flatness_has_the_gap_that_the_model_makes_of_it(unit):
    flat = own(unit, "sealant-film", "lay", flatness=40).gap_mm
    assert flat < own(unit, "sealant-film", "lay", flatness=80).gap_mm


def test_what_is_chosen_is_shown_by_its_words(unit):
    given = drawn_for("threaded-joints", unit)
    entry = {"stake-state": Answer("cracked", 1)}
    sets = BenchSet.all_of("threaded-joints", unit, given, entry)
    figure = next(f for f in sets["stake"].figures if f.name == "state")
    assert sets["stake"].words(figure) == "cracked at its root"
    shown = panel_state(sets["stake"], "threaded-joints", unit, given, "")
    row = next(row for row in shown["rows"] if row["name"] == "state")
    assert ["cracked", "cracked at its root"] in row["options"] and row["hint"] == ""
    assert not [f for f in sets["nut"].figures if f.options and f.kind == "manual limit"]
