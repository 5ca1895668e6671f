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
from twoshaft_grader.cohort import files
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
def marked(tmp_path_factory):
    base = tmp_path_factory.mktemp("assessors")
    (base / "content" / "solutions").mkdir(parents=True)
    built = build_notebook(SOLUTION, Path(f"solutions/{NOTEBOOK}.py"))
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
