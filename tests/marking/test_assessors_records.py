"""What an assessor changes, decides and hands over, on a small marked cohort."""

import csv
import io
import json
import re
import shutil
from contextlib import redirect_stderr, redirect_stdout
from pathlib import Path
from types import SimpleNamespace

import pytest

from twoshaft.jobsheet import Answer, SheetData
from twoshaft.units import load_unit
from twoshaft_grader.cohort import files, folder
from twoshaft_grader.cohort.folder import open_cohort
from twoshaft_grader.cohort.trail import check_trail, read_trail
from twoshaft_grader.desk.commands import main
from twoshaft_grader.marking import load_solution, solve
from twoshaft_grader.notebooks.text import build_notebook, notebook_text

NAME = "order-of-work-1"
NOTEBOOK = "02-order-of-work"
SOLUTION = """\
# %% [markdown]
# # Order of work

# %% tags=["setup"]
from twoshaft.jobsheet import open_sheet

sheet = open_sheet("order-of-work")
given, unit = sheet.given, sheet.unit

# %% [markdown] tags=["task"]
# Plan it.

# %% tags=["form"]
sheet.form(
    "plan",
    sheet.order("plan-order", "Order these", steps=given.sub_assembly.start),
    sheet.choice("plan-first", "First", options=[["clean", "Clean it"], ["close", "Close it"]]),
)

# %% tags=["reference"]
task = order.OrderTask.from_unit(unit, given.sub_assembly.operations)
ref("plan-order", task, outcome="plan-order", weight=3)
ref("plan-first", "clean", outcome="safe-order", must_pass=True)

# %% tags=["mark"] task="plan" points=4

# %% [markdown] tags=["task"]
# Measure it.

# %% tags=["form"]
sheet.form("gap", sheet.number("gap-size", "How wide", unit="mm"))

# %% tags=["reference"]
ref("gap-size", Q(12.5, "mm"), outcome="plan-order")

# %% tags=["mark"] task="gap" points=2
"""
ROSTER = "id,family name,given name,group\na1,Okafor,Ada,A\nb2,=Lim,Bo,A\nc3,Reyes,Cy,B\n"


def run(*arguments):
    out, err = io.StringIO(), io.StringIO()
    with redirect_stdout(out), redirect_stderr(err):
        code = main([str(argument) for argument in arguments])
    return SimpleNamespace(code=code, out=out.getvalue(), err=err.getvalue())


def works(*arguments, code=0):
    result = run(*arguments)
    assert result.code == code, result.err + result.out
    return result.out


def refused(*arguments):
    result = run(*arguments)
    assert result.code == 2 and result.err.count("\n") == 1
    return result.err


def place_work(cohort, learner, answers):
    """Put work into submitted/ by hand, as from a memory stick."""
    folder = cohort.submitted(learner, NAME)
    folder.mkdir(parents=True, exist_ok=True)
    data = SheetData(
        learner=learner,
        module="order-of-work",
        attempt=1,
        answers={name: Answer(value, 1) for name, value in answers.items()},
    )
    (folder / "jobsheet.json").write_text(json.dumps(data.as_json()))
    shutil.copy(cohort.root / "release" / NAME / f"{NOTEBOOK}.ipynb", folder)


@pytest.fixture(scope="module")
def marked(small_solution, tmp_path_factory):
    base = tmp_path_factory.mktemp("assessors")
    (base / "content" / "solutions").mkdir(parents=True)
    built = build_notebook(small_solution, Path(f"solutions/{NOTEBOOK}.py"))
    (base / "content" / "solutions" / f"{NOTEBOOK}.ipynb").write_text(notebook_text(built))
    root = base / "live" / "group"
    works("cohort", "make", root, "--id", "small", "--content", base / "content",
          "--timezone", "UTC", "--by", "K. Tam")  # fmt: skip
    (base / "list.csv").write_text(ROSTER)
    works("roster", "take", base / "list.csv", "--cohort", root, "--by", "K. Tam")
    works("module", "assign", "order-of-work", "--due", "2099-12-04", "--cohort", root)
    cohort = open_cohort(root)
    solution = load_solution(cohort.source(NAME) / f"{NOTEBOOK}.ipynb")
    unit = load_unit("tarnbeck-b5")
    for learner, wrong in (("a1", {}), ("b2", {"plan-first": "close", "gap-size": "3 mm"})):
        issued = files.read_json(cohort.issued(learner, NAME))
        place_work(cohort, learner, solve(solution, issued, unit) | wrong)
        (cohort.workplace / learner).mkdir(parents=True, exist_ok=True)
    works("mark", "--cohort", root, "--by", "R. Holm")
    works("give-back", "--cohort", root)
    works("assessor", "add", "rh", "R. Holm", "--role", "internal assessor", "--cohort", root)
    works("assessor", "add", "kt", "K. Tam", "--cohort", root)
    return root.parent


@pytest.fixture
def cohort(marked, tmp_path):
    shutil.copytree(marked, tmp_path / "now")
    return open_cohort(tmp_path / "now" / "group")


def export(cohort):
    works("export", "--cohort", cohort.root)
    text = (cohort.root / "exports" / "outcomes.csv").read_text(encoding="utf-8")
    return {(row["learner"], row["outcome"]): row for row in csv.DictReader(io.StringIO(text))}


def page(cohort, learner):
    return (cohort.feedback(learner, NAME) / f"{NOTEBOOK}.html").read_text(encoding="utf-8")


def standing(cohort, learner):
    return json.loads((cohort.workplace / learner / "standing.json").read_text())["outcomes"]


# --- change and appeal -------------------------------------------------------------------------


def test_an_upheld_appeal_on_a_must_pass_item_reaches_export_feedback_and_learner(cohort):
    at = ("--cohort", cohort.root)
    assert export(cohort)["b2", "safe-order"]["must_pass_right"] == "no"
    works("appeal", "enter", "b2", NAME, "--about", "plan-first", "--why", "I showed it", *at)
    says = works("appeal", "rule", "1", "--upheld", "--by", "rh", "--why", "seen at the bench", *at)
    assert "is upheld, ruled by R. Holm" in says
    works("decide", "b2", NAME, "plan-first", "--enough", "--by", "rh", "--why", "appeal 1", *at)
    row = export(cohort)["b2", "safe-order"]
    assert row["must_pass_right"] == "yes" and row["changed_by"] == "R. Holm"
    assert "plan-first: Decided by R. Holm" in row["note"] and "appeal 1" in row["note"]
    assert row["enough"] == "no"  # its points are not enough: a whole decision is another act
    works("decide", "b2", NAME, "safe-order", "--enough", "--by", "kt", "--why", "both seen", *at)
    row = export(cohort)["b2", "safe-order"]
    assert row["enough"] == "yes" and row["changed_by"] == "R. Holm; K. Tam"
    assert "Decided by" not in page(cohort, "b2")  # nobody is told before it is given back
    works("give-back", *at)
    shown = page(cohort, "b2")
    assert "Decided by R. Holm" in shown and "appeal 1" in shown and "both seen" in shown
    told = standing(cohort, "b2")["safe-order"]
    assert told["state"] == "enough" and "Decided by K. Tam" in told["note"]
    assert "upheld" in works("appeal", "list", *at)
    works("decide", "b2", NAME, "safe-order", "--not-yet", "--by", "kt", "--why", "a slip", *at)
    assert export(cohort)["b2", "safe-order"]["enough"] == "no"
    last = [line.act for line in read_trail(cohort.root) if line.act.did.startswith("decide")][-1]
    assert (last.by, last.before, last.after, last.why) == ("K. Tam", "enough", "not yet", "a slip")


def test_a_decision_is_of_the_work_it_was_made_on(cohort):
    at = ("--cohort", cohort.root)
    works("decide", "b2", NAME, "safe-order", "--enough", "--by", "rh", "--why", "seen", *at)
    place_work(cohort, "b2", {"plan-first": "close"})
    works("mark", *at)
    row = export(cohort)["b2", "safe-order"]
    assert (
        row["enough"] == "no"
        and "R. Holm decided of safe-order on work handed in before" in (row["note"])
    )


@pytest.mark.parametrize(
    ("arguments", "says"),
    [
        (
            ("decide", "b2", NAME, "safe-order", "--enough", "--by", "nobody", "--why", "x"),
            "not on",
        ),
        (("decide", "b2", NAME, "safe-order", "--enough", "--by", "rh", "--why", " "), "reason"),
        (("decide", "b2", NAME, "plan-order-x", "--enough", "--by", "rh", "--why", "x"), "neither"),
        (("decide", "c3", NAME, "safe-order", "--enough", "--by", "rh", "--why", "x"), "no mark"),
        (
            ("change-mark", "b2", NAME, "gap", "1", "--by", "Zed", "--why", "x"),
            "not on the register",
        ),
        (("appeal", "enter", "b2", NAME, "--about", "zz", "--why", "x"), 'no part "zz"'),
        (("appeal", "enter", "b2", NAME, "--why", ""), "reason is missing"),
        (("appeal", "rule", "3", "--upheld", "--by", "rh", "--why", "x"), "there is no appeal 3"),
        (("observe", "b2", "safe-order", "--met", "--by", "Zed"), "not on the register"),
        (("observe", "b2", "safe-order", "--by", "rh", "--criterion", "x"), "write it as"),
        (("take-back", "b2", "1", "--by", "rh", "--why", "x"), "has no observation 1"),
        (("assessor", "remove", "zz"), "nobody on the register"),
        (("verify", "--head", "x"), "is no head"),
    ],
)
def test_what_says_too_little_is_one_sentence_and_changes_nothing(cohort, arguments, says):
    before = len(read_trail(cohort.root))
    assert says in refused(*arguments, "--cohort", cohort.root)
    assert len(read_trail(cohort.root)) == before


def test_everybody_who_did_something_is_on_the_trail(cohort):
    at = ("--cohort", cohort.root)
    export(cohort)
    works("change-mark", "b2", NAME, "gap", "1.5", "--by", "rh", "--why", "rounding", *at)
    works(
        "module",
        "due",
        NAME,
        "2099-12-11",
        "--learner",
        "b2",
        "--by",
        "K. Tam",
        "--why",
        "ill",
        *at,
    )
    acts = [line.act for line in read_trail(cohort.root)]
    assert [(one.did, one.by) for one in acts[:2]] == [
        ("make the cohort", "K. Tam"), ("take in a roster", "K. Tam"),
    ]  # fmt: skip
    changed, extended = acts[-2:]
    assert (changed.before, changed.after, changed.why) == ("0", "1.5 of 2", "rounding")
    assert extended.before.startswith("2099-12-04") and extended.after.startswith("2099-12-11")
    assert {"assign", "mark", "give back", "export", "enter an assessor"} <= {a.did for a in acts}
    shown = works("trail", "--about", "b2", *at)
    assert "rounding" in shown and "make the cohort" not in shown
    head = re.search(r"Head: (\S+)", works("verify", *at))[1]
    text = (cohort.root / "log" / "trail.jsonl").read_text()
    (cohort.root / "log" / "trail.jsonl").write_text(text.replace("rounding", "a favour"))
    found = works("verify", "--head", head, *at, code=1)
    assert "was changed" in found
    assert check_trail(cohort.root).faults


# --- moderation --------------------------------------------------------------------------------


def test_a_sample_is_drawn_by_its_rule_marked_blind_and_compared(cohort):
    at = ("--cohort", cohort.root)
    draw = ("moderate", "draw", "--by", "kt", "--share", "1", *at)
    says = works(*draw, "--seed", "autumn")
    assert "4 tasks, seed autumn: every task of an outcome within 10 %" in says
    first = (cohort.root / "moderation.json").read_text()
    works(*draw, "--seed", "autumn")
    again = (cohort.root / "moderation.json").read_text()
    assert json.loads(first)["sample"] == json.loads(again)["sample"]
    shown = works("moderate", "show", "b2", NAME, "gap", *at)
    assert "3 mm" in shown and "not right" not in shown.lower() and "0 of" not in shown
    enter = ("moderate", "enter", *at, "--by", "kt")
    for learner, task, points in (
        ("a1", "plan", 4), ("a1", "gap", 2), ("b2", "plan", 4), ("b2", "gap", 0),
    ):  # fmt: skip
        assert "is kept" in works(*enter, learner, NAME, task, points)
    assert "it has a second mark, by K. Tam" in refused(*enter, "a1", NAME, "gap", "1")
    assert "second mark" in refused(*draw, "--seed", "other")  # nothing entered is lost by a slip
    said = works("moderate", "agree", *at)
    assert "4 tasks have two marks; 0 of the sample wait" in said
    assert re.search(r"Cohen's kappa: 0\.\d\d \(95 %", said)
    assert "b2" in said.split("To decide")[1] and "a1" not in said.split("To decide")[1]
    place_work(cohort, "b2", {"plan-first": "close"})
    works("mark", *at)
    assert "2 are of work that was handed in again since" in works("moderate", "agree", *at)


def test_a_sample_of_a_few_has_every_module_and_every_marker(cohort):
    at = ("--cohort", cohort.root)
    works("change-mark", "a1", NAME, "gap", "1", "--by", "rh", "--why", "units", *at)
    works("moderate", "draw", "--by", "kt", "--share", "0.01", "--seed", "few", *at)
    sample = json.loads((cohort.root / "moderation.json").read_text())["sample"]
    assert {("a1", "gap")} <= {(one["learner"], one["task"]) for one in sample}
    reasons = {one["because"].split()[0] for one in sample}
    assert reasons <= {"borderline", "module", "marker"} and sample
    for words, says in (
        (("a1", NAME, "gap", "1", "--by", "rh"), "R. Holm gave the first mark"),
        (("a1", NAME, "gap", "9", "--by", "kt"), "9 points for a task of 2"),
        (("c3", NAME, "gap", "1", "--by", "kt"), "is not in the sample"),
    ):
        assert says in refused("moderate", "enter", *words, *at)


@pytest.mark.parametrize(
    ("arguments", "says"),
    [
        (("draw", "--by", "kt", "--seed", " "), "drawn with a seed"),
        (("draw", "--by", "kt", "--seed", "x", "--share", "2"), "will not do"),
        (("draw", "--by", "zz", "--seed", "x"), "not on the register"),
        (("agree",), "no sample is drawn yet"),
        (("list",), "no sample is drawn yet"),
    ],
)
def test_moderation_that_cannot_be_is_one_sentence(cohort, arguments, says):
    assert says in refused("moderate", *arguments, "--cohort", cohort.root)


# --- the form on paper -------------------------------------------------------------------------


def test_the_observation_form_has_every_criterion_and_room_to_sign(cohort):
    from pypdf import PdfReader

    from twoshaft.outcomes import load_outcomes

    works("observation-form", "order-of-work", "--cohort", cohort.root)
    [pdf] = (cohort.root / "bench-sheets").glob("observation-*.pdf")
    text = " ".join(" ".join(p.extract_text() for p in PdfReader(pdf).pages).split())
    for outcome in load_outcomes(module="order-of-work").values():
        assert outcome.id in text
        assert all(id in text for id in outcome.criteria)
    for words in (
        "Not tried",
        "Apprentice: I have read this",
        "Prior learning",
        "Day it was entered",
    ):
        assert words in text
    assert "neither an outcome nor a module" in refused(
        "observation-form", "nothing", "--cohort", cohort.root
    )


# --- how it goes, the matrix, and what is handed over -------------------------------------------


def test_how_it_goes_tells_who_is_stuck_and_what_is_wrong(cohort, tmp_path):
    said = works("how-it-goes", NAME, "--page", tmp_path / "class", "--cohort", cohort.root)
    assert "2 not fetched" not in said and "b2: not yet: " in said
    assert "50 %" in said and "too few marked" in said
    assert "2 sheets are marked, and it takes 4 at least" in " ".join(said.split())
    assert "Wrong 1 of 2 times: How wide" in said
    text = (tmp_path / "class" / f"{NAME}.html").read_text(encoding="utf-8")
    assert "How wide" in text and "50 %" in text
    assert not re.search(r"\b(Okafor|Lim|b2|Reyes)\b", text.split("</style>")[1])


STAMP = r"\dT\d\d:\d\d"


def test_the_matrix_has_word_and_shape_and_the_evidence_behind_each_cell(cohort, tmp_path):
    at = ("--cohort", cohort.root)
    cohort.rules.write_text('numbers: {safe-order: "LO 2.1"}\n')
    works("observe", "b2", "safe-order", "--not-yet", "--by", "rh", "--note", "<b>alone</b>", *at)
    said = works("matrix", "--module", "order-of-work", *at)
    assert re.search(r"LO 2.1 safe-order +◐ enough", said)
    assert re.search(r"safe-order +○ not yet .*R. Holm", said)
    page, table = tmp_path / "matrix.html", tmp_path / "matrix.csv"
    works("matrix", "--page", page, "--csv", table, *at)
    rows = {row["learner"]: row for row in csv.DictReader(io.StringIO(table.read_text()))}
    assert rows["a1"]["plan-order"] == "met" and rows["c3"]["plan-order"] == "nothing yet"
    assert rows["a1"]["LO 2.1 safe-order"] == "enough" and rows["b2"]["family name"] == "'=Lim"
    text = page.read_text(encoding="utf-8")
    assert '<a href="#b2--safe-order">○ not yet</a>' in text and 'id="b2--safe-order"' in text
    assert "&lt;b&gt;alone&lt;/b&gt;" in text and "3 mm" in text
    assert re.search(r"marked \d{4}-\d\d-\d\d \d\d:\d\d by", text) and not re.search(STAMP, text)
    [link] = set(re.findall(r'href="(file:[^"]+b2[^"]+html)"', text))
    assert Path(link.removeprefix("file://")).is_file()


def test_an_independent_reader_opens_the_workbook_and_finds_no_formula(cohort):
    from openpyxl import load_workbook

    at = ("--cohort", cohort.root)
    works("observe", "b2", "safe-order", "--met", "--by", "rh", "--note", "=HYPERLINK(1)", *at)
    works("change-mark", "b2", NAME, "gap", "1", "--by", "rh", "--why", "@SUM(A1)", *at)
    works("hand-over", "workbook", *at)
    book = load_workbook(cohort.root / "exports" / "small.xlsx")
    assert book.sheetnames == ["About", "Matrix", NAME, "Observations", "Changes"]
    cells = [cell for sheet in book for row in sheet.iter_rows() for cell in row]
    assert not [cell for cell in cells if cell.data_type == "f"]
    assert not [c for c in cells if str(c.value).startswith(("=", "+", "-", "@"))]
    rows = list(book[NAME].iter_rows(values_only=True))
    told = dict(zip(rows[0], rows[1], strict=True))
    assert (told["learner"], told["outcome"], told["mark"]) == ("a1", "plan-order", 5)
    assert [c.value for c in book["Matrix"][2]][:2] == ["a1", "Ada Okafor"]
    about = {row[0]: row[1] for row in book["About"].iter_rows(values_only=True)}
    assert "people" not in about
    works("verify", "--head", about["head of the trail"], *at)


def test_an_independent_reader_opens_the_oneroster_gradebook(cohort):
    import zipfile

    import pandas

    works("hand-over", "oneroster", "--class", "C-7", "--school", "S", "--session", "T1",
          "--cohort", cohort.root)  # fmt: skip
    with zipfile.ZipFile(cohort.root / "exports" / "small-oneroster.zip") as packed:
        assert packed.testzip() is None
        read = {
            name: pandas.read_csv(packed.open(name), dtype=str, keep_default_na=False)
            for name in packed.namelist()
        }
    assert sorted(read) == ["categories.csv", "lineItems.csv", "manifest.csv", "results.csv"]
    manifest = read["manifest.csv"].set_index("propertyName")["value"]
    assert list(read["manifest.csv"].columns) == ["propertyName", "value"]
    assert manifest["manifest.version"] == "1.0" and manifest["oneroster.version"] == "1.2"
    assert manifest["file.results"] == "bulk" and manifest["file.users"] == "absent"
    assert ",".join(read["results.csv"].columns) == (
        "sourcedId,status,dateLastModified,lineItemSourcedId,studentSourcedId,scoreStatus,score,"
        "scoreDate,comment,textScore,classSourcedId,inProgress,incomplete,late,missing"
    )
    items, results = read["lineItems.csv"].set_index("sourcedId"), read["results.csv"]
    assert set(results["lineItemSourcedId"]) <= set(items.index)
    assert set(items["categorySourcedId"]) == set(read["categories.csv"]["sourcedId"])
    assert results["sourcedId"].is_unique and items.index.is_unique
    assert set(results["scoreStatus"]) <= {
        "exempt", "fully graded", "not submitted", "partially graded", "submitted",
    }  # fmt: skip
    whole = items.loc[f"small-{NAME}"]
    assert (whole["resultValueMin"], whole["resultValueMax"], whole["dueDate"]) == (
        "0", "6", "2099-12-04",
    )  # fmt: skip
    assert re.fullmatch(r"\d{4}-\d\d-\d\d", whole["assignDate"])
    mine = results.set_index(["studentSourcedId", "lineItemSourcedId"])
    assert mine.loc[("a1", f"small-{NAME}"), "score"] == "6"
    assert mine.loc[("c3", f"small-{NAME}"), "scoreStatus"] == "not submitted"
    assert mine.loc[("c3", f"small-{NAME}"), "missing"] == "true"
    assert mine.loc[("a1", "small-outcome-plan-order"), "textScore"] == "met"
    assert set(items["classSourcedId"]) == {"C-7"} and set(items["schoolSourcedId"]) == {"S"}


def test_an_independent_reader_finds_all_on_the_record_on_paper(cohort):
    from pypdf import PdfReader

    at = ("--cohort", cohort.root)
    works("observe", "b2", "safe-order", "--met", "--by", "rh", "--note", "#strong[x]", *at)
    works("decide", "b2", NAME, "plan-first", "--enough", "--by", "kt", "--why", "shown", *at)
    works("appeal", "enter", "b2", NAME, "--why", "unclear question", *at)
    works("hand-over", "records", "--learner", "b2", *at)
    [pdf] = (cohort.root / "exports" / "records").glob("*.pdf")
    reader = PdfReader(pdf)
    text = " ".join(" ".join(p.extract_text() for p in reader.pages).split())
    for words in (
        "Record of Bo =Lim", "Outcomes", "Attempts", "Observed", "Signatures", "Moderator",
        "#strong[x]", "R. Holm", "K. Tam", "unclear question", "shown", "Trail",
    ):  # fmt: skip
        assert words in text
    assert not re.search(STAMP, text)  # a clock on the wall, not a file's
    assert "/StructTreeRoot" in reader.trailer["/Root"]
    assert "invented" not in text
    assert "nobody on the roster" in refused("hand-over", "records", "--learner", "zz", *at)


def test_sealed_evidence_is_marked_again_to_the_same_and_shows_every_change(cohort, tmp_path):
    place = tmp_path / "evidence"
    said = works("hand-over", "evidence", place, "--cohort", cohort.root)
    seal = re.search(r"Seal: (\w{64})", said)[1]
    shutil.rmtree(cohort.root.parent)  # another machine: nothing but the folder and the course
    found = works("verify", place, "--seal", seal)
    assert "2 sheets earn the same mark" in found
    reference = json.loads((place / "learners/b2" / NAME / "reference.json").read_text())
    assert reference["plan-first"] == "clean"
    answers = place / "learners/b2" / NAME / "submitted/jobsheet.json"
    mark = place / "learners/b2" / NAME / "mark.json"
    kept = {path: path.read_bytes() for path in (answers, mark, place / "evidence.json")}
    answers.write_text(answers.read_text().replace("close", "clean"))
    assert "submitted/jobsheet.json was changed" in works("verify", place, code=1)
    answers.write_bytes(kept[answers])
    (place / "more.txt").write_text("x")
    assert "more.txt was put into it" in works("verify", place, code=1)
    (place / "more.txt").unlink()
    mark.unlink()
    assert "mark.json is not there" in works("verify", place, code=1)
    # Who changes a mark and the list of digests too is found by marking again, and by the seal.
    forged = json.loads(kept[mark])
    forged["sheet"]["tasks"][0]["points"] = 4.0
    mark.write_text(json.dumps(forged))
    import hashlib

    about = json.loads(kept[place / "evidence.json"])
    about["files"][f"learners/b2/{NAME}/mark.json"] = hashlib.sha256(mark.read_bytes()).hexdigest()
    (place / "evidence.json").write_text(json.dumps(about))
    assert "2.6 points, and 4 were given" in works("verify", place, code=1)
    assert "not the one that was given" in works("verify", place, "--seal", seal, code=1)
    assert "is no evidence folder" in refused("verify", tmp_path)


def test_demo_exports_say_that_their_people_are_invented(cohort, monkeypatch):
    from openpyxl import load_workbook
    from pypdf import PdfReader

    monkeypatch.setattr(folder, "DEMO_SALT", cohort.salt)
    at = ("--cohort", cohort.root)
    assert all("invented" in row["note"] for row in export(cohort).values())
    works("hand-over", "workbook", *at)
    about = load_workbook(cohort.root / "exports" / "small.xlsx")["About"]
    assert any("invented" in str(c.value) for row in about.iter_rows() for c in row)
    works("hand-over", "records", "--learner", "a1", *at)
    [pdf] = (cohort.root / "exports" / "records").glob("*.pdf")
    assert "invented" in PdfReader(pdf).pages[0].extract_text()
    works("matrix", "--page", cohort.root / "exports" / "m.html", *at)
    assert "invented" in (cohort.root / "exports" / "m.html").read_text(encoding="utf-8")
    works("hand-over", "oneroster", *at)
    import zipfile

    with zipfile.ZipFile(cohort.root / "exports" / "small-oneroster.zip") as packed:
        assert b"invented" in packed.read("lineItems.csv") and b"invented" in packed.read(
            "manifest.csv"
        )
    works("hand-over", "evidence", cohort.root.parent / "evidence", *at)
    assert "invented" in (cohort.root.parent / "evidence" / "evidence.json").read_text()


def test_nbgraders_own_export_can_write_workbook_and_gradebook(cohort):
    import subprocess
    import sys

    for name, file in (
        ("WorkbookExport", "small.xlsx"),
        ("OneRosterExport", "small-oneroster.zip"),
    ):
        done = subprocess.run(
            [sys.executable, "-m", "nbgrader", "export",
             f"--exporter=twoshaft_grader.records.hand_over.{name}"],
            cwd=cohort.root, capture_output=True, text=True,
        )  # fmt: skip
        assert done.returncode == 0, done.stderr
        assert (cohort.root / "exports" / file).stat().st_size > 500


def test_a_colleges_own_number_stands_in_matrix_export_feedback_and_contents(cohort):
    from twoshaft.jobsheet.overview import _outcome
    from twoshaft.jobsheet.standing import read_standing
    from twoshaft.outcomes import load_outcomes

    at = ("--cohort", cohort.root)
    outcome = load_outcomes()["safe-order"]
    assert export(cohort)["b2", "safe-order"]["college_number"] == ""
    works("rules", "number", "safe-order", "LO 2.1", "--by", "rh", *at)
    rows = export(cohort)
    assert rows["b2", "safe-order"]["college_number"] == "LO 2.1"
    assert rows["b2", "plan-order"]["college_number"] == ""
    for learner in ("a1", "b2"):
        told = read_standing(cohort.workplace / learner, learner)
        assert _outcome(outcome, told)[1] == f"LO 2.1 {outcome.statement}"
        other = load_outcomes()["plan-order"]
        assert _outcome(other, told)[1] == other.statement
    works("give-back", *at)
    assert f'<th scope="row">LO 2.1 {outcome.statement}</th>' in page(cohort, "b2")
    works("matrix", "--page", cohort.root / "m.html", *at)
    assert "LO 2.1 safe-order" in (cohort.root / "m.html").read_text(encoding="utf-8")
    works("rules", "number", "safe-order", "", "--by", "rh", *at)
    works("give-back", *at)
    assert "LO 2.1" not in page(cohort, "b2")
    text = (cohort.workplace / "b2" / "standing.json").read_text()
    assert "numbers" not in json.loads(text)


def test_a_college_says_which_evidence_an_outcome_asks_for_and_all_pages_follow(cohort):
    from twoshaft.jobsheet.overview import _outcome
    from twoshaft.jobsheet.standing import read_standing
    from twoshaft.outcomes import load_outcomes

    at = ("--cohort", cohort.root)
    plan, other = load_outcomes()["plan-order"], load_outcomes()["read-scales"]
    assert export(cohort)["a1", "plan-order"]["met"] == "yes"
    evidence = ("rules", "evidence", "plan-order")
    works(*evidence, "supervised", "--why", "page 7", "--by", "rh", *at)
    row = export(cohort)["a1", "plan-order"]
    assert (row["evidence_needed"], row["enough"], row["met"]) == ("supervised", "yes", "no")
    assert standing(cohort, "a1")["plan-order"]["state"] == "enough"
    told = (
        read_standing(cohort.workplace / "c3", "c3") if (cohort.workplace / "c3").is_dir() else None
    )
    if told:
        assert "supervision" in _outcome(plan, told)[2]
    works("give-back", *at)
    assert "to be shown under supervision" in page(cohort, "a1")
    works("matrix", "--page", cohort.root / "m.html", *at)
    assert "evidence that is supervised" in (cohort.root / "m.html").read_text(encoding="utf-8")
    last = read_trail(cohort.root)
    (act,) = [line.act for line in last if "evidence for plan-order" in line.act.what]
    assert (act.before, act.after, act.why) == ("open-book", "supervised", "page 7")
    assert "no kind of evidence" in refused(*evidence, "by-post", "--why", "x", "--by", "rh", *at)
    works(*evidence, "", "--why", "as it was", "--by", "rh", *at)
    assert export(cohort)["a1", "plan-order"]["met"] == "yes"
    assert "evidence" not in (cohort.root / "rules.yaml").read_text()
    assert other.evidence == load_outcomes()["read-scales"].evidence
