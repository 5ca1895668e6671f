"""The glossary: its file, its notebook, and that it is found where lessons are."""

import re
from pathlib import Path

import pytest

from twoshaft.errors import UnitFileError
from twoshaft.glossary import load_glossary, slug
from twoshaft.glossary.terms import SHIPPED
from twoshaft.jobsheet.people import Listed, word_check, write_people
from twoshaft.jobsheet.signin import SignIn
from twoshaft.jobsheet.startpage import StartPage
from twoshaft.modules import COURSE
from twoshaft.plots.glossary import term_index, term_list
from twoshaft.stored.person import Person
from twoshaft_grader.cohort.content import find_content
from twoshaft_grader.cohort.folder import make_cohort
from twoshaft_grader.cohort.workplace import copy_lessons

ROOT = Path(__file__).resolve().parents[2]
LESSONS = ROOT / "course" / "lessons"
GROUPS = load_glossary()
TERMS = [term for group in GROUPS for term in group.terms]
NEEDED = {
    "course-and-safety": ["must-pass", "receipt", "safety data sheet"],
    "measuring-and-tools": ["zero error", "parallax", "total reading", "uncertainty", "micrometer"],
    "order-of-work": ["bench cost", "longest chain", "hold", "buries", "blinds"],
    "threaded-joints": ["clamp load", "sealing washer", "tapered-head screw", "locking compound"],
    "pressed-and-driven": ["transition", "circlips", "lip", "spring pin", "taper pin"],
    "shims-and-preload": ["end play", "preload", "shim", "guard band"],
    "sealant-film": ["blind holes", "anaerobic", "moisture-curing", "skin", "film", "bead"],
    "shift-and-lockout": ["detent", "interlock", "lockout", "rail", "gate", "finger"],
    "gear-train-and-checks": ["ring gap", "least count", "keys", "sleeve", "idler", "differential"],
    "reading-faults": ["assembly fault", "symptom"],
    "whole-build": ["lockout"],
    "inspect-and-decide": ["guard band", "creep", "pitch line", "scuffing", "brinelling"],
    "close-out": ["breather", "viscosity", "grade", "guard band", "hypoid"],
    "strip-mark-clean": ["backlash", "end float", "window", "hold", "must-pass"],
}


def text_of(module):
    name = f"{COURSE[module].name}.py"
    return " ".join((ROOT / place / name).read_text() for place in ("course/lessons", "solutions"))


def met(words, text):
    return any(re.search(rf"\b{re.escape(word)}\b", text, flags=re.I) for word in words)


def test_there_are_enough_terms_in_short_sentences():
    assert 60 <= len(TERMS) <= 120
    for term in TERMS:
        assert len(term.says.split()) <= 26, term.term
        assert slug(term.term) and term.says[0].isupper()


@pytest.mark.parametrize("module", COURSE)
def test_what_a_lesson_names_is_explained(module):
    known = {word.lower() for term in TERMS for word in term.words}
    missing = [word for word in NEEDED[module] if word not in known]
    assert not missing
    unused = [word for word in NEEDED[module] if not met([word, f"{word}s"], text_of(module))]
    assert not unused


@pytest.mark.parametrize("term", TERMS, ids=lambda term: term.term)
def test_a_term_is_met_in_its_module(term):
    assert met(term.words, text_of(term.module))


@pytest.mark.parametrize(
    ("says", "term", "told"),
    [
        ("One. And two.", "novel", "one sentence"),
        ("No stop at its end", "novel", "one sentence"),
        ("A sentence that is fine.", "Idler", "twice"),
    ],
)
def test_a_poor_entry_is_refused_with_its_place(tmp_path, says, term, told):
    path = tmp_path / "terms.yaml"
    entry = f"      - {{term: {term}, says: {says}, module: whole-build}}\n"
    path.write_text(SHIPPED.read_text() + entry)
    with pytest.raises(UnitFileError, match=told) as refused:
        load_glossary(path)
    assert str(path) in str(refused.value)


def test_every_link_of_the_index_has_its_place():
    links = re.findall(r'href="#([^"]+)"', term_index(GROUPS).body)
    places = re.findall(r'id="([^"]+)"', "".join(term_list(group).body for group in GROUPS))
    assert len(places) == len(set(places)) == len(TERMS)
    assert set(links) == set(places)


def test_the_notebook_shows_every_group_under_its_own_heading():
    text = (LESSONS / "glossary.py").read_text()
    headings = re.findall(r"^# ## (.+)$", text, flags=re.M)
    for group in GROUPS:
        assert group.name in headings and f'terms["{group.id}"]' in text
    anchors = {heading.replace(" ", "-") for heading in headings}
    assert set(re.findall(r"\]\(#([^)]+)\)", text)) <= anchors


def test_it_comes_with_the_lessons_and_is_no_module(tmp_path):
    made, content = make_cohort(tmp_path / "group", salt="s", timezone="UTC"), find_content()
    copy_lessons(made, content)
    assert "glossary" not in content.modules
    person = Person("a1", "Okafor", "Ada")
    (made.workplace / person.id).mkdir()
    write_people(made.workplace, [Listed(person, word_check("bolt"))])
    sign_in = SignIn(made.workplace)
    sign_in.sign_in("a1", "bolt")
    page = StartPage(sign_in)
    assert ["lessons/glossary.ipynb", "Glossary"] in page.lessons
    assert [line["module"] for line in page.modules] == list(COURSE)
    tabled = {line["lesson"] for line in page.modules}
    assert [path for path, _ in page.lessons if path not in tabled] == ["lessons/glossary.ipynb"]
