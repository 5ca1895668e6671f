"""Figures from the bench: declared, read, put in, kept, merged; hostile values change nothing."""

import json

import pytest

from twoshaft.errors import CourseError, SheetError
from twoshaft.jobsheet import open_sheet
from twoshaft.jobsheet.bench_readings import BenchSet, given_with
from twoshaft.jobsheet.contents import Answer, SheetData, parse_sheet
from twoshaft.jobsheet.form import FormWidget
from twoshaft.jobsheet.store import Store
from twoshaft.readings import MODULES, draw
from twoshaft.readings.own_bench import bench_figures, bench_tasks, put_in
from twoshaft.units import load_unit, shipped_units

MODULE = "shims-and-preload"


@pytest.fixture(scope="module")
def drawn(unit):
    return draw(MODULE, unit, salt="test", learner="ann", attempt=1)


def entries(drawn, task="stack", **changed):
    """A full set of the stack: the drawn lengths a tenth longer, and a target of one's own."""
    lengths = drawn["stack"]["lengths"]
    texts = {name: f"{mm + 0.1:.2f} mm" for name, mm in lengths.items()}
    texts |= {"low-target": "40 µm", "high-target": "0,1 mm", "page": "112", "read-by": "A. Reader"}
    texts |= {"in-use": "yes"} | {name.replace("_", "-"): text for name, text in changed.items()}
    return {f"{task}-{name}": Answer(text, 1) for name, text in texts.items() if text is not None}


@pytest.mark.parametrize("name", shipped_units())
def test_every_declared_figure_stands_where_it_says(name):
    unit = load_unit(name)
    for module in MODULES:
        if not bench_tasks(module):
            continue
        given = draw(module, unit, salt="test", learner="ann", attempt=1)
        for task, declared in bench_tasks(module).items():
            figures = bench_figures(module, task, unit, given)
            assert len({figure.name for figure in figures}) == len(figures) > 0
            values = {}
            for figure in figures:
                place = given[task]
                for step in figure.path:
                    place = place.get(step, None) if isinstance(place, dict) else place[step]
                if place is not None:
                    assert figure.low <= place <= figure.high, (module, figure)
                    values[figure.name] = place
            if len(values) == len(figures):  # the drawn figures, typed, are taken
                renewed = put_in(module, task, unit, given, values)
                assert set(given[task]) <= set(renewed[task])
            assert declared.also == tuple(t for t in declared.also if t != task)


def test_a_full_set_takes_the_place_of_the_drawn_one(unit, drawn):
    sets = BenchSet.all_of(MODULE, unit, drawn, entries(drawn))
    given, refused = given_with(sets, MODULE, unit, drawn)
    assert not refused
    assert given["stack"]["low_mm"] == pytest.approx(0.04)
    assert given["stack"]["rows"][0][2] == "from the bench"
    assert given["stack"]["source"] == " (from the bench, limits from the manual, page 112)"
    assert given["stack"]["lengths"] != drawn["stack"]["lengths"]
    assert drawn["stack"]["low_mm"] != 0.04 and given["cord"] is drawn["cord"]


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

    cord = drawn["cord"]
    support = unit.bearings.support_by_id(cord["support"])
    force = Pair.from_support(support, unit.bearings).preload(Q(0.05, "mm"))
    what = turned(support, unit.bearings, force, tuple(cord["kinds"]))
    pull = cord_pull(what, Q(40, "mm")).force.m_as("N")
    values = {"pull": pull, "drum": 40, "least": 0.5 * force.m_as("N"), "most": 2 * force.m_as("N")}
    assert put_in(MODULE, "cord", unit, drawn, values)["cord"]["setting_mm"] == pytest.approx(0.05)
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
    assert again.given["stack"]["low_mm"] == pytest.approx(0.04)
    assert not again.bench_panel("stack")["stale"]
    FormWidget(again, "stack", [field]).hear({"type": "bench", "name": "in-use", "value": "no"})
    assert open_sheet(MODULE, tmp_path).given == sheet.drawn
