"""A unit file begun from a few answers, its standard parts, and its typical figures."""

import re

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from twoshaft.errors import CourseError, UnitFileError
from twoshaft.models.audit import sound_unit
from twoshaft.models.wholebuild.asks import treatments
from twoshaft.readings import MODULES, cannot_be_drawn
from twoshaft.units import load_unit
from twoshaft.units.new_unit import Wishes, least_rails, new_unit
from twoshaft.units.sections.bearings import (
    BallBearing,
    NeedleBearing,
    RollerBearing,
    TaperBearing,
)
from twoshaft.units.source import TYPICAL
from twoshaft.units.standard_parts import TABLES, table
from twoshaft.units.unit import Unit
from twoshaft_grader.bench_sheets.build import bench_sheet
from twoshaft_grader.cohort.content import find_content
from twoshaft_grader.cohort.fit import fit
from twoshaft_grader.cohort.trial import try_modules
from twoshaft_grader.desk.commands import main
from twoshaft_grader.marking.reference import load_solution


def begun(folder, wishes):
    path = folder / "mine.yaml"
    path.write_text(new_unit(wishes), encoding="utf-8")
    return path


@pytest.mark.slow
def test_a_start_has_nothing_to_mend(tmp_path):
    unit = sound_unit(begun(tmp_path, Wishes("Brook 5")))
    assert len(unit.gear_train.gears) == 6 and len(unit.shift.rails) == 3
    assert [(one.earlier, one.later) for one in unit.shift.must_block] == [("fifth", "reverse")]


@pytest.mark.slow
@pytest.mark.parametrize(
    "wishes",
    [
        Wishes("Brook 3", gears=3, faces=1, bearings="ball"),
        Wishes("Brook 4", gears=4, differential=False, bearings="ball", faces=4),
        Wishes("Brook 6", gears=6, rails=7, differential=False),
        Wishes("Brook 8", gears=8, faces=12),
        Wishes("Brook 9", gears=4, faces=0, differential=False),
    ],
)
def test_units_as_different_as_asked_have_nothing_to_mend(tmp_path, wishes):
    unit = sound_unit(begun(tmp_path, wishes))
    assert unit.identity.gears == wishes.gears
    assert len(unit.shift.rails) == wishes.rails
    assert len(unit.faces.faces if unit.faces_if_any else ()) == wishes.faces
    assert bool(unit.gear_train.differential) == wishes.differential
    missing = {section for section in Unit.model_fields if getattr(unit, section) is None}
    assert missing == {"shapes_if_any"} | ({"faces_if_any"} if not wishes.faces else set())
    assert {one.kind for one in unit.bearings.types} >= {wishes.bearings}


@pytest.mark.slow
@settings(deadline=None, max_examples=8)
@given(st.data())
def test_whatever_is_answered_loads(tmp_path_factory, data):
    gears = data.draw(st.integers(3, 8))
    wishes = Wishes(
        data.draw(st.text("abc \"'\\:#{}[]%&é", min_size=3, max_size=20).map(lambda t: f"b{t}d")),
        gears=gears,
        rails=data.draw(st.integers(least_rails(gears), gears + 1)),
        bearings=data.draw(st.sampled_from(["taper", "ball"])),
        faces=data.draw(st.integers(0, 12)),
        differential=data.draw(st.booleans()),
    )
    unit = load_unit(begun(tmp_path_factory.mktemp("begun"), wishes))
    assert unit.identity.name == wishes.name.strip()


@pytest.mark.parametrize(
    "asked",
    [{"gears": 2}, {"gears": 9}, {"rails": 2}, {"rails": 7}, {"faces": 13}, {"bearings": "plain"}],
)
def test_what_nobody_builds_is_refused_in_a_sentence(asked):
    with pytest.raises(CourseError) as told:
        Wishes("Brook", **asked)
    assert told.value.mend


@pytest.mark.slow
def test_every_figure_of_a_start_is_marked(tmp_path):
    """Take the marks away line by line: only lines of words may stand without one."""
    path = begun(tmp_path, Wishes("Brook 5"))
    unit = load_unit(path)
    marked = {(one.section, one.entry) for one in unit.typical()}
    for section in ("fasteners", "fits", "bearings", "faces"):
        for entry in _entries(getattr(unit, section)):
            assert (section, entry) in marked, entry
    for line in path.read_text().splitlines():
        if re.search(r"(: |\[)-?\d", line) and not line.lstrip().startswith(("#", "gears:")):
            assert line.endswith(f"# {TYPICAL}"), line
    assert {one.id for one in unit.operations} <= {entry for _, entry in marked}
    path.write_text(path.read_text().replace(f"  # {TYPICAL}", ""))
    assert not load_unit(path).typical()


def _entries(section):
    for name in type(section).model_fields:
        for entry in getattr(section, name):
            yield entry.id


@pytest.mark.slow
def test_a_figure_put_in_is_typical_no_more_and_a_variant_replaces_it(tmp_path):
    path = begun(tmp_path, Wishes("Brook 5"))
    line = next(row for row in path.read_text().splitlines() if "id: fit-magnet," in row)
    own = line.replace(f"  # {TYPICAL}", "").replace("minutes to do: 1", "minutes to do: 2")
    path.write_text(path.read_text().replace(line, own))
    assert "fit-magnet" not in {one.entry for one in load_unit(path).typical()}
    other = tmp_path / "other.yaml"
    other.write_text(
        "variant of: mine.yaml\nidentity: {id: other}\noperations:\n  change:\n"
        "    - {id: wash-housing, minutes to do: 9, minutes to undo: 0}\n"
    )
    assert "wash-housing" not in {one.entry for one in load_unit(other).typical()}
    assert "warm-housing" in {one.entry for one in load_unit(other).typical()}


@pytest.mark.slow
def test_no_typical_figure_reaches_a_bench_sheet(tmp_path):
    """All typical torques, spans and counts changed: the sheets say the same."""
    path = begun(tmp_path, Wishes("Brook 5"))

    def sheets(path):
        unit = load_unit(path)
        return [bench_sheet(module, unit).as_data() for module in MODULES]

    before = sheets(path)
    text = path.read_text()
    for torque, other in (
        ("[26, 27, 28]", "[23, 23.5, 24.5]"),
        ("[170, 175, 180]", "[150, 160, 170]"),
    ):
        assert torque in text
        text = text.replace(torque, other)
    path.write_text(text)
    assert sheets(path) == before


@pytest.mark.slow
def test_the_command_asks_nothing_without_a_terminal(tmp_path, capsys):
    path = tmp_path / "river-6.yaml"
    assert main(["unit", "new", str(path), "--gears", "6", "--bearings", "ball"]) == 0
    assert load_unit(path).identity.id == "river-6"
    assert main(["unit", "new", str(path)]) != 0
    assert "there already" in capsys.readouterr().err
    assert main(["unit", "check", str(path)]) == 0
    said = capsys.readouterr().out
    assert "Still typical" in said and "minutes to do" in said


def test_a_standard_part_fills_in_what_is_not_given():
    named = {"id": "one", "name": "Bearing", "standard": "30206"}
    bearing = TaperBearing.model_validate({**named, "kind": "taper", "stand mm": 17.5})
    assert (bearing.bore_mm, bearing.outside_mm, bearing.stand_mm) == (30, 62, 17.5)
    assert bearing.contact_angle_deg == pytest.approx(13.86, abs=0.01)  # e 0.37 of the catalogue
    with pytest.raises(ValueError, match="did you mean '6206'"):
        BallBearing.model_validate({**named, "kind": "ball", "standard": "62O6"})


@pytest.mark.slow
def test_a_standard_part_that_is_not_there_is_told_with_its_line(tmp_path):
    path = begun(tmp_path, Wishes("Brook 5"))
    path.write_text(path.read_text().replace("38x58x8", "38x59x8"))
    with pytest.raises(UnitFileError) as told:
        load_unit(path)
    assert "not in the table of standard seals" in told.value.findings[0].sentence
    assert "line " in told.value.findings[0].where


KINDS = {
    "taper": TaperBearing,
    "ball": BallBearing,
    "roller": RollerBearing,
    "needle": NeedleBearing,
}


def test_tables_hold_what_the_standards_say():
    for which in TABLES:
        rows = table(which)
        assert len({(row["name"], row.get("thread mm", "")) for row in rows}) == len(rows)
        assert all(row["source"] for row in rows)
    for row in table("bearings"):
        assert float(row["bore mm"]) < float(row["outside mm"])
        # ISO 15 and ISO 355: the last two figures of a number are a fifth of its bore, from 20 mm
        if row["kind"] == "needle":  # ISO 3245: bore and width are in its number
            assert row["name"] == f"HK{row['bore mm']}{row['stand mm']}"
        elif "/" not in row["name"] and float(row["bore mm"]) >= 20 and row["bore mm"] != "22":
            assert int(row["name"][-2:]) * 5 == float(row["bore mm"])
        kind = KINDS[row["kind"]]
        entry = {"id": "one", "name": "Bearing", "kind": row["kind"], "standard": row["name"]}
        assert kind.model_validate(entry).outside_mm == float(row["outside mm"])
    for row in table("circlips"):
        groove, seat = float(row["groove mm"]), float(row["diameter mm"])
        assert (groove < seat) == (row["sits"] == "on a shaft")
        assert float(row["groove width mm"]) > float(row["thickness mm"])
    for row in table("seals"):
        assert row["name"] == f"{row['shaft mm']}x{row['outer mm']}x{row['width mm']}"


@pytest.mark.slow
def test_a_start_carries_the_whole_build_with_a_gasket_too(tmp_path):
    unit = load_unit(begun(tmp_path, Wishes("Brook", faces=0)))
    lost = dict(
        cannot_be_drawn("whole-build", unit, salt="start", learner="ann", attempt=1, left_out=())
    )
    assert set(lost) <= {"late"}


def carried(folder, wishes, modules):
    """The share of its points that a start leaves each module, for two learners."""
    unit, content = load_unit(begun(folder, wishes)), find_content()
    for module in modules:
        path = content.modules[module]
        fits = fit(path, module, unit, ["ann", "ben"], salt="start", attempt=1, work_out=1)
        whole = sum(load_solution(path).points.values())
        yield module, sum(fits.solution.points.values()) / whole


@pytest.mark.slow
def test_a_start_without_a_differential_carries_what_gears_strip_and_oil_are_asked_in(tmp_path):
    wishes = Wishes("Brook", gears=4, faces=1, bearings="ball", differential=False)
    modules = ("gear-train-and-checks", "strip-mark-clean", "inspect-and-decide", "close-out")
    shares = dict(carried(tmp_path, wishes, modules))
    assert shares.pop("gear-train-and-checks") > 0.6
    assert set(shares.values()) == {1.0}


@pytest.mark.slow
def test_states_of_threads_may_have_any_id(tmp_path):
    wishes = Wishes("Brook", gears=4, faces=1, bearings="ball", differential=False)
    path = begun(tmp_path, wishes)
    text = path.read_text()
    for old, new in (("as-delivered", "waxed"), ("oiled", "greased"), ("locker", "glued")):
        text = text.replace(f"{{id: {old},", f"{{id: {new}, like: {old},")
        text = text.replace(f"state: {old}", f"state: {new}")
    path.write_text(text)
    unit = load_unit(path)
    assert set(treatments(unit)) == {"waxed", "greased", "glued"}
    lost = cannot_be_drawn("whole-build", unit, salt="s", learner="ann", attempt=1, left_out=())
    assert {name for name, _ in lost} <= {"late", "turns", "clock"}
    bare = path.with_name("bare.yaml")
    bare.write_text(re.sub(", like: [a-z-]+", "", text))
    assert treatments(load_unit(bare)) == {}


@pytest.mark.long
@pytest.mark.parametrize(
    "wishes",
    [
        Wishes("Brook 5"),
        Wishes("Brook 3", gears=3, rails=3, faces=1, bearings="ball", differential=False),
        Wishes("Brook 6", gears=6, faces=4, bearings="ball"),  # reverse alone: no lockout
    ],
)
def test_a_start_carries_every_module_with_its_lesson(tmp_path, wishes):
    path = begun(tmp_path, wishes)
    trials = list(try_modules(load_unit(path), path, find_content()))
    assert [one.module for one in trials if one.exercise or one.lesson] == []
    assert len(trials) == len(MODULES)
