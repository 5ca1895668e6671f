"""A college's own sources of the cautions: its file, and that they reach the lessons."""

import re
from pathlib import Path

import pytest

from twoshaft.errors import UnitFileError
from twoshaft.readings.course_and_safety.scene import scene_of
from twoshaft.rigs import college_sources, hazard_picture
from twoshaft.safety import OwnSources, load_own_sources, load_safety
from twoshaft.stored.safety_sources import OWN_SOURCES
from twoshaft_grader.cohort.content import find_content
from twoshaft_grader.cohort.folder import make_cohort
from twoshaft_grader.cohort.safety_sources import bring_sources
from twoshaft_grader.cohort.workplace import copy_lessons, prepare_workplace
from twoshaft_grader.desk.commands import main
from twoshaft_grader.kit.pack import kit_files

LESSON = Path(__file__).resolve().parents[2] / "course" / "lessons" / "00-course-and-safety.py"
OWN = "sources:\n  eyes-struck: Workshop rules, page 4\n  press-open: Workshop rules, page 9\n"


@pytest.fixture(scope="module")
def safety():
    return load_safety()


@pytest.fixture
def cohort(tmp_path):
    return make_cohort(tmp_path / "group", salt="s", timezone="UTC")


def written(tmp_path, text):
    path = tmp_path / OWN_SOURCES
    path.write_text(text, encoding="utf-8")
    return path


def told_at(safety, place, hazard, own):
    rig = hazard_picture(scene_of(safety, {place: hazard}), own_sources=own)
    rig._heard(rig, {"type": "judge", "place": place, "verdict": "stop"}, None)
    return rig.view["told"]


def test_every_regulation_says_whose_it_is(safety):
    for caution in safety.cautions:
        national = bool(re.search(r"CFR|NIOSH", caution.source))
        assert (caution.country == "the United States") is national, caution.id
        said = OwnSources().told(caution)["Source"]
        assert ("of the United States; your college's own rules decide" in said) is national


def test_the_lesson_says_so_too():
    text = LESSON.read_text(encoding="utf-8")
    assert "**of one country**, the United States" in text
    assert "**Your college's own rules decide**" in text
    assert "hazard_picture(own_sources=sources)" in text


def test_nothing_said_is_our_source_alone(safety, tmp_path):
    for own in (load_own_sources(None), load_own_sources(tmp_path / OWN_SOURCES)):
        assert own == OwnSources()
        told = told_at(safety, "press", "press-open", own)
        assert told["Source"].startswith("29 CFR 1910.212") and "At your college" not in told


def test_the_colleges_own_stands_beside_ours_or_in_its_place(safety, tmp_path):
    own = load_own_sources(written(tmp_path, OWN))
    told = told_at(safety, "press", "press-open", own)
    assert told["At your college"] == "Workshop rules, page 9" and "29 CFR" in told["Source"]
    alone = load_own_sources(written(tmp_path, f"ours: left out\n{OWN}"))
    told = told_at(safety, "press", "press-open", alone)
    assert told["At your college"] == "Workshop rules, page 9" and "Source" not in told
    # where the college says nothing, ours stays
    assert "Source" in told_at(safety, "oil", "oil-on-floor", alone)


def test_a_hazards_own_goes_above_its_cautions(safety, tmp_path):
    text = "sources:\n  clear-below: all lifts\n  frayed-sling: slings\n"
    own = load_own_sources(written(tmp_path, text))
    assert told_at(safety, "hoist", "under-load", own)["At your college"] == "all lifts"
    assert told_at(safety, "hoist", "frayed-sling", own)["At your college"] == "slings"


def test_ids_of_cautions_and_hazards_are_different(safety):
    assert not set(safety.caution_by_id) & set(safety.hazard_by_id)


@pytest.mark.parametrize(
    ("text", "said"),
    [
        ("sources:\n  eyes: page 4\n", "line 2: there is no caution or hazard 'eyes'; take an id"),
        ("ours: beside\n", "'sources' is missing; add a line"),
        ("source:\n  eyes-struck: page 4\n", "line 1: 'source' is not a known key; did you mean"),
        ("sources: {}\n", "'sources' has too few entries"),
        ("ours: no\nsources:\n  eyes-struck: page 4\n", "line 1: 'ours' is"),
        ("sources:\n  eyes-struck: 4\n", "line 2: in sources, 'eyes-struck' is 4"),
        ("sources: page 4\n", "line 1: 'sources' is 'page 4' where keys"),
        ("- eyes-struck\n", "safety-sources.yaml"),
        ("sources:\n  eyes-struck: page 4\n  eyes-struck: page 5\n", "line 3"),
        ("sources: [\n", "safety-sources.yaml"),
        ("", "safety-sources.yaml"),
    ],
)
def test_a_file_with_a_fault_is_one_sentence(tmp_path, text, said):
    with pytest.raises(UnitFileError) as refused:
        load_own_sources(written(tmp_path, text))
    for finding in refused.value.findings or (refused.value,):
        assert finding.sentence.count("\n") == 0 and OWN_SOURCES in finding.sentence
    assert said in " ".join(f.sentence for f in refused.value.findings or (refused.value,))


def test_it_reaches_the_lessons_and_goes_again(cohort):
    prepare_workplace(cohort, [])
    lessons = cohort.workplace / "lessons"
    assert college_sources(lessons) == OwnSources()
    cohort.safety_sources.write_text(OWN, encoding="utf-8")
    copy_lessons(cohort, find_content())
    assert college_sources(lessons).of["press-open"] == "Workshop rules, page 9"
    cohort.safety_sources.unlink()
    assert bring_sources(cohort) == college_sources(lessons) == OwnSources()
    assert college_sources(cohort.root) == OwnSources()  # outside of a workplace


def test_the_command_checks_brings_and_lists(cohort, capsys):
    prepare_workplace(cohort, [])
    at = ["--cohort", str(cohort.root)]
    assert main(["rules", "safety", *at]) == 0
    assert str(cohort.safety_sources) in capsys.readouterr().out.replace("\n", "")
    cohort.safety_sources.write_text(OWN, encoding="utf-8")
    assert main(["rules", "safety", *at]) == 0
    said = " ".join(capsys.readouterr().out.split())
    assert "At your college: Workshop rules, page 9" in said
    assert "2 of these are the college's own" in said
    for id in (*load_safety().caution_by_id, *load_safety().hazard_by_id):
        assert f"{id}: " in said
    cohort.safety_sources.write_text("sources: {}\n", encoding="utf-8")
    assert main(["rules", "safety", *at]) == 2
    assert "has too few entries" in capsys.readouterr().err
    # what was right before stays
    assert college_sources(cohort.workplace / "lessons").of


@pytest.mark.slow
def test_it_is_in_the_cohorts_kit(cohort):
    cohort.safety_sources.write_text(OWN, encoding="utf-8")
    assert kit_files(find_content(), cohort)[f"work/{OWN_SOURCES}"] == OWN.encode()
