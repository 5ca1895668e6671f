"""A whole term by command: learners, modules, resits, an appeal, a moderation, observations, a
supervised attempt, an adjustment, a corrected unit and solution, every export.

The everyday run is short; ``-m long`` runs all modules with 24 learners.
"""

import csv
import hashlib
import json
import os
import shutil
import subprocess
import sys
import zipfile
from datetime import timedelta
from pathlib import Path

import openpyxl
import pandas
import pytest
from bs4 import BeautifulSoup
from pypdf import PdfReader

import twoshaft.units
from twoshaft.jobsheet import handin
from twoshaft.outcomes import load_outcomes
from twoshaft.stored.job_sheet import FILE as SHEET
from twoshaft.stored.person import Person
from twoshaft_grader.cohort import files
from twoshaft_grader.cohort.assign import assigned_unit, assignments_of, read_assigned
from twoshaft_grader.cohort.clock import now
from twoshaft_grader.cohort.content import find_content
from twoshaft_grader.cohort.folder import open_cohort
from twoshaft_grader.cohort.intake import roster_of
from twoshaft_grader.cohort.marks import MARKED, read_mark
from twoshaft_grader.cohort.trail import check_trail, read_trail
from twoshaft_grader.desk.commands import main
from twoshaft_grader.desk.demo_answers import demo_answers, sheet_text
from twoshaft_grader.desk.demo_people import Way
from twoshaft_grader.marking import load_solution
from twoshaft_grader.records.moderation import the_sample
from twoshaft_grader.stored.issued import read_issued

WAYS = (Way.RIGHT, Way.NEARLY, Way.SLIPS, Way.NEARLY, Way.UNFINISHED, Way.RIGHT)
UNIT = (Path(twoshaft.units.__file__).parent / "files" / "tarnbeck-b5.yaml").read_text()
# As two programs that read this standard have them, in their order.
ONEROSTER_RESULTS = [
    "sourcedId",
    "status",
    "dateLastModified",
    "lineItemSourcedId",
    "studentSourcedId",
    "scoreStatus",
    "score",
    "scoreDate",
    "comment",
    "textScore",
    "classSourcedId",
    "inProgress",
    "incomplete",
    "late",
    "missing",
]
ONEROSTER_LINE_ITEMS = [
    "sourcedId",
    "status",
    "dateLastModified",
    "title",
    "description",
    "assignDate",
    "dueDate",
    "classSourcedId",
    "categorySourcedId",
    "academicSessionSourcedId",
    "resultValueMin",
    "resultValueMax",
    "schoolSourcedId",
]
SHORT = (5, ("measuring-and-tools",))
WHOLE = (24, tuple(find_content().modules))


class Term:
    """A cohort and hands at its command line."""

    def __init__(self, root, count, modules):
        self.root, self.modules = root, modules
        self.ids = [f"tm{number:02}" for number in range(1, count + 1)]
        lines = [f"{id},Family {id},Given,{'AB'[n % 2]}" for n, id in enumerate(self.ids)]
        text = "\n".join(["id,family name,given name,group", *lines])
        (root.parent / "roster.csv").write_text(text + "\n")

    def works(self, *words, code=0):
        assert main([str(word) for word in (*words, "--cohort", self.root)]) == code, words

    @property
    def cohort(self):
        return open_cohort(self.root)

    def hand_in(self, id, name, way):
        """Fetch, answer and hand in as a learner does, stating that it is their own work."""
        cohort, assigned = self.cohort, read_assigned(self.cohort, name)
        counter, person = handin.find_counter(cohort.workplace), Person(id, f"Family {id}", "Given")
        place = handin.fetch(counter, person, name)
        issued = read_issued(cohort.issued(id, name))
        solution = load_solution(cohort.source(name) / assigned.notebook)
        answers = demo_answers(way, solution, issued, assigned_unit(cohort, assigned))
        files.write_whole(place / SHEET, sheet_text(answers, issued, cohort, now(), timedelta()))
        handin.hand_in(counter, person, name, own_work=True)

    def mark(self, id, name):
        return read_mark(self.cohort.mark_file(id, name))

    def round(self):
        for command in ("collect", "mark", "give-back"):
            self.works(command)


def first_half(term):
    """To the first marks of every module: a supervised attempt among them, and more time for one."""
    works, due = term.works, f"{now() + timedelta(days=7):%Y-%m-%d}"
    assert main(["cohort", "make", str(term.root), "--college", "An invented college"]) == 0
    works("roster", "take", term.root.parent / "roster.csv")
    works("assessor", "add", "rh", "R. Holm")
    works("assessor", "add", "kt", "K. Tam")
    works("adjust", term.ids[1], "--more-days", "7", "--large-print", "--by", "rh", "--why", "w")
    for number, module in enumerate(term.modules):
        works("module", "assign", module, "--due", due)
        name = f"{module}-1"
        if number == 0:
            works("supervised", "open", name, "--room", "2", "--by", "rh", "--group", "A")
        for place, id in enumerate(term.ids):
            term.hand_in(id, name, WAYS[(place + number) % len(WAYS)])
        if number == 0:
            works("supervised", "close", "1", "--by", "rh")
    term.round()
    for name in (one.name for one in assignments_of(term.cohort)):
        marks = [term.mark(id, name) for id in term.ids]
        assert all(mark.state == MARKED and mark.sheet.points > 0 for mark in marks)


def second_half(term):
    """Resits, observations, an appeal that is upheld, a moderation."""
    works, module = term.works, term.modules[0]
    name, ids = f"{module}-1", term.ids
    for id in (again := (ids[2], ids[4])):
        works("module", "needs", module)
        words = ("--attempt", "2") if id == again[0] else ()
        doing = ("assign", module, *words) if words else ("give", f"{module}-2")
        works("module", *doing, "--to", id)
        term.hand_in(id, f"{module}-2", Way.RIGHT)
    term.round()
    issued = [json.loads(term.cohort.issued(again[0], f"{module}-{n}").read_text()) for n in (1, 2)]
    assert issued[0]["given"] != issued[1]["given"]  # fresh readings
    outcome = next(one for one in load_outcomes().values() if module in one.modules)
    for id in ids[:3]:
        works("observe", id, outcome.id, "--by", "rh", "--met", "--bench", "3", "--confirmed")
    sheet = term.mark(ids[2], name).sheet
    works("appeal", "enter", ids[2], name, "--about", sheet.outcomes[0].id, "--why", "seen again")
    works("appeal", "rule", "1", "--upheld", "--by", "kt", "--why", "the drawing was blurred")
    works("decide", ids[2], name, sheet.outcomes[0].id, "--enough", "--by", "kt", "--why", "upheld")
    works("moderate", "draw", "--seed", "autumn", "--by", "kt")
    for one in the_sample(term.cohort).sample[:4]:
        task = term.mark(one.learner, one.assignment).sheet.task(one.task)
        second = ("moderate", "enter", one.learner, one.assignment, one.task, f"{task.points:g}")
        works(*second, "--by", "kt")
    works("moderate", "agree")
    works("give-back")


def corrections(term):
    """Another figure in the unit: what is out keeps its own; the same solution: no other mark."""
    place = term.root.parent / "corrected.yaml"
    longer = UNIT.replace('version: "2.0"', 'version: "2.1"').replace("to do: 6", "to do: 8", 1)
    place.write_text(longer)
    before = {
        path.relative_to(term.root): path.read_bytes()
        for path in sorted((term.root / "issued").rglob("*.json"))
    }
    term.works("unit", "correct", place, "--why", "stoning takes longer")
    for path, text in before.items():
        assert (term.root / path).read_bytes() == text
    term.works("re-mark", f"{term.modules[0]}-1")
    assert "2.1" in (term.cohort.workplace / "unit.yaml").read_text()


def exports(term):
    """Every export, each opened by a reader of somebody else's."""
    root, works, count = term.root, term.works, len(term.ids)
    works("export")
    with open(root / "exports" / "outcomes.csv", newline="", encoding="utf-8-sig") as file:
        rows = list(csv.DictReader(file))
    assert {row["learner"] for row in rows} == set(term.ids)
    assert all(row["own_work_stated"] for row in rows if row["state"] == "marked")
    name = f"{term.modules[0]}-1"
    watched = {row["learner"] for row in rows if row["supervised_by"] == "R. Holm"}
    assert watched == {id for n, id in enumerate(term.ids) if n % 2 == 0}
    arranged = {row["learner"] for row in rows if row["adjustments"]}
    assert arranged == {term.ids[1]}
    works("hand-over", "workbook")
    (xlsx,) = (root / "exports").glob("*.xlsx")
    book = openpyxl.load_workbook(xlsx, read_only=True)
    assert len(book.sheetnames) >= len(term.modules) + 1
    works("hand-over", "oneroster")
    (packed,) = (root / "exports").glob("*.zip")
    with zipfile.ZipFile(packed) as archive:
        assert archive.testzip() is None
        results = archive.read("results.csv").decode().splitlines()
    assert len(list(csv.DictReader(results))) >= count
    works("hand-over", "records")
    papers = sorted((root / "exports").rglob("*.pdf"))
    assert len(papers) == count
    text = "".join(page.extract_text() for page in PdfReader(papers[1]).pages)
    assert term.ids[1] in text and "large print" in text and "own work" in " ".join(text.split())
    works("matrix", "--page", root.parent / "matrix.html")
    works("how-it-goes", name, "--page", root.parent / "class")
    (page,) = (root.parent / "class").glob("*.html")
    assert "<table" in page.read_text() and "<table" in (root.parent / "matrix.html").read_text()
    opened_elsewhere(term, rows)
    evidence = root.parent / "evidence"
    works("hand-over", "evidence", evidence)
    assert main(["verify", str(evidence)]) == 0
    sealed_for_others(evidence)
    works("verify")
    checked = check_trail(root)
    assert not checked.faults and len(checked.acts) == len(read_trail(root))
    did = {one.did for one in checked.acts}
    assert did >= {
        "assign", "mark", "give back", "observe", "enter an appeal", "rule on an appeal",
        "open a supervised attempt", "close a supervised attempt", "adjust",
        "take a corrected unit",
    }  # fmt: skip


def opened_elsewhere(term, rows):
    """Workbook, gradebook, matrix and class page say the same to readers that are not ours."""
    root, met = term.root, {}
    page = BeautifulSoup((root.parent / "matrix.html").read_text(), "html.parser")
    assert page.html["lang"] == "en" and page.title.string.strip()
    heads, *lines = page.find("table").find_all("tr")
    outcomes = [cell.get_text(" ", strip=True) for cell in heads.find_all(["th", "td"])]
    for line in lines:
        cells = [cell.get_text(" ", strip=True) for cell in line.find_all(["th", "td"])]
        assert len(cells) == len(outcomes)
        id = next(id for id in term.ids if id in " ".join(cells[:2]))
        met[id] = sum("met" in cell.split() for cell in cells)
    assert len(lines) == len(term.ids)
    targets = {one.get("id") for one in page.find_all(id=True)}
    inside = [a["href"][1:] for a in page.find_all("a", href=True) if a["href"].startswith("#")]
    assert inside and set(inside) <= targets  # the evidence behind a cell is there
    (klass,) = (root.parent / "class").glob("*.html")
    shown = BeautifulSoup(klass.read_text(), "html.parser")
    assert shown.h1.get_text(strip=True) and not shown.find_all("script")
    assert not any(id in shown.get_text() for id in term.ids)  # nobody's name stands on it
    (xlsx,) = (root / "exports").glob("*.xlsx")
    sheets = pandas.read_excel(xlsx, sheet_name=None, dtype=str, keep_default_na=False)
    assert not any(
        cell.data_type == "f"
        for sheet in openpyxl.load_workbook(xlsx)
        for line in sheet.iter_rows()
        for cell in line
    )
    matrix = next(sheet for name, sheet in sheets.items() if "matrix" in name.lower())
    assert len(matrix) == len(term.ids)
    for _, line in matrix.iterrows():
        id = next(value for value in line if value in met)
        assert sum("met" in str(value).split() for value in line) == met[id]
    (packed,) = (root / "exports").glob("*.zip")
    with zipfile.ZipFile(packed) as archive:
        of = {name: pandas.read_csv(archive.open(name), dtype=str) for name in archive.namelist()}
    assert list(of["results.csv"]) == ONEROSTER_RESULTS
    assert list(of["lineItems.csv"]) == ONEROSTER_LINE_ITEMS
    results, items = of["results.csv"], of["lineItems.csv"]
    assert set(results["lineItemSourcedId"]) <= set(items["sourcedId"])
    assert results["sourcedId"].is_unique and items["sourcedId"].is_unique
    marked = {(r["learner"], r["module"], r["attempt"]) for r in rows if r["state"] == "marked"}
    graded = results[results["scoreStatus"] == "fully graded"]
    assert len(marked) <= len(graded) and set(graded["studentSourcedId"]) <= set(term.ids)
    pages = PdfReader(root / "exports" / "records" / f"{term.ids[0]}.pdf").pages
    text = " ".join(" ".join(page.extract_text() for page in pages).split())
    for words in ("Outcomes", "Attempts", "Observed", "Signatures", "Moderator"):
        assert words in text
    if "whole-build" in term.modules:
        for words in ("Build record, whole-build-1", "Steps in turn", "Built by", "Checked by"):
            assert words in text


def sealed_for_others(evidence):
    """The folder stands by a checker that is not ours, and marks the same at another path."""
    seal = json.loads((evidence / "evidence.json").read_text())
    sums = dict(reversed(line.split("  ", 1)) for line in (evidence / "SHA256SUMS").open())
    sums = {name.strip(): digest for name, digest in sums.items()}
    assert sums == {name: digest for name, digest in seal["files"].items() if name != "SHA256SUMS"}
    there = {str(one.relative_to(evidence)) for one in evidence.rglob("*") if one.is_file()}
    assert there == {*sums, "SHA256SUMS", "evidence.json"}
    for name, digest in sums.items():
        assert hashlib.sha256((evidence / name).read_bytes()).hexdigest() == digest
    if tool := shutil.which("sha256sum"):
        done = subprocess.run([tool, "--strict", "--quiet", "-c", "SHA256SUMS"], cwd=evidence)
        assert done.returncode == 0
    away = evidence.parent / "a place with spaces" / "elsewhere"
    shutil.copytree(evidence, away)
    home = away.parent / "home"
    home.mkdir()
    command = [sys.executable, "-m", "twoshaft_grader.desk", "verify", str(away)]
    done = subprocess.run(
        command, cwd=home, env=os.environ | {"HOME": str(home), "TZ": "Asia/Tokyo"}
    )
    assert done.returncode == 0


def play(term):
    for part in (first_half, second_half, corrections, exports):
        part(term)


@pytest.mark.slow
def test_a_short_term_by_command(tmp_path):
    play(Term(tmp_path / "term", *SHORT))


@pytest.mark.long
def test_a_whole_term_by_command(tmp_path):
    play(term := Term(tmp_path / "term", *WHOLE))
    assert len(roster_of(term.cohort)) == 24
    assert len(assignments_of(term.cohort)) == len(WHOLE[1]) + 1  # one attempt more, of one module
