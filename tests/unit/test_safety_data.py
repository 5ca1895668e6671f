"""Hazards, cautions and dangerous jobs: the shipped files, and files that are broken."""

import re
import xml.etree.ElementTree as ET

import pytest

from twoshaft.errors import UnitFileError
from twoshaft.models.order import OrderTask, count_orders, mark, model_order, zero_mark_slip
from twoshaft.rigs.hazard_drawing import PICTURES, workshop_drawing
from twoshaft.safety import load_jobs, load_safety
from twoshaft.safety.hazards import SHIPPED


@pytest.fixture(scope="module")
def safety():
    return load_safety()


def test_every_caution_names_a_source_or_says_that_there_is_none(safety):
    named = re.compile(r"29 CFR 19|NIOSH|safety data sheet|GHS|makers' safety rules|this course")
    for caution in safety.cautions:
        honest = "no source" in caution.source or "from memory" in caution.source
        assert named.search(caution.source) or honest, caution.id


@pytest.mark.parametrize(
    "words",
    [
        "eye protection whenever anything is struck",
        "springs, detent balls or circlips",
        "aluminium by hand",
        "brake cleaner",
        "brass hammer",
        "compressed air at skin",
        "spin a bearing",
        "lifting aid",
        "Keep fingers out of gears",
        "solvents, sealants, locking compound and drained oil",
        "hot parts",
        "Presses and pullers",
        "no figure of this course",
        "local codes and licensed practice",
    ],
)
def test_every_usual_caution_is_there(safety, words):
    assert any(words in caution.text for caution in safety.cautions)


def test_what_is_seen_judges_nothing(safety):
    judging = re.compile(r"danger|hazard|wrong|unsafe|must|should|careless|risk|forgot", re.I)
    for place in safety.places:
        views = place.views()
        assert len({seen for seen, _ in views}) == len(views)
        for seen, hazard in views:
            text = seen.replace("the solvent's dangers", "")  # what the data sheet on the wall says
            assert not judging.search(text), seen
            assert place.views()[place.view_of(hazard.id if hazard else "")][0] == seen


def test_reasons_and_acts_are_told_apart(safety):
    hazards = safety.hazard_by_id.values()
    for texts in (
        [h.act for h in hazards],
        [h.why for h in hazards],
        [c.why for c in safety.cautions],
        [c.text for c in safety.cautions],
    ):
        assert len(set(texts)) == len(texts)


def test_every_view_has_a_picture_of_its_own(safety):
    assert set(PICTURES) == {place.id for place in safety.places}
    for place in safety.places:
        pictures = {PICTURES[place.id](h.id) for h in place.hazards} | {PICTURES[place.id]("")}
        assert len(pictures) == len(place.hazards) + 1, place.id


def test_the_drawing_is_well_formed_and_describes_what_is_seen(safety):
    hazards = {place.id: place.hazards[-1].id for place in safety.places}
    views = {place.id: place.view_of(hazards[place.id]) for place in safety.places}
    root = ET.fromstring(workshop_drawing(safety, views))
    ns = "{http://www.w3.org/2000/svg}"
    groups = [g for g in root.iter(f"{ns}g") if g.get("data-place")]
    assert [g.get("data-place") for g in groups] == list(views)
    description = root.find(f"{ns}desc").text
    for hazard in (safety.hazard_by_id[id] for id in hazards.values()):
        assert hazard.seen in description
        assert hazard.what not in description and hazard.act not in description


def test_dangerous_jobs_are_orders_worth_marking():
    jobs = load_jobs()
    r0 = []
    for stage in jobs.stages:
        task = OrderTask.from_unit(jobs, jobs.operations_of[stage.id])
        assert len(task.steps) == 10
        assert mark(task, model_order(task)) == 1
        assert count_orders(task).value > 1  # more than one order is right
        assert sum(r.safety for r in jobs.rules if r.later in task.steps) >= 4
        r0.append(zero_mark_slip(task))
    assert min(r0) >= 3 and max(r0) <= min(r0) + 1


def broken(tmp_path, old, new):
    text = SHIPPED.read_text("utf-8")
    assert old in text
    path = tmp_path / "hazards.yaml"
    path.write_text(text.replace(old, new, 1), "utf-8")
    return path


@pytest.mark.parametrize(
    ("old", "new", "said"),
    [
        ("    theme: eyes\n", "", "theme"),
        ("caution: press-guarded", "caution: nowhere", "'press-open' names a caution"),
        ("  - id: eyes-springs", "  - id: eyes-struck", "'eyes-struck' stands twice"),
        ("    source: this course", "    sources: this course", "source"),
    ],
)
def test_a_broken_file_is_refused_in_a_sentence(tmp_path, old, new, said):
    with pytest.raises(UnitFileError, match=re.escape(said)):
        load_safety(broken(tmp_path, old, new))


def test_a_file_that_is_not_there_is_refused(tmp_path):
    with pytest.raises(UnitFileError, match="hazards"):
        load_safety(tmp_path / "hazards.yaml")
