"""A small cohort, handed out, for trials of what may be handed in."""

import json
import shutil
from datetime import UTC, datetime, timedelta
from pathlib import Path

import pytest

from twoshaft.jobsheet import Answer, SheetData
from twoshaft_grader.cohort.assign import assign
from twoshaft_grader.cohort.content import Content
from twoshaft_grader.cohort.folder import make_cohort, open_cohort
from twoshaft_grader.cohort.intake import take_in
from twoshaft_grader.cohort.roster import Learner
from twoshaft_grader.notebooks.text import build_notebook, notebook_text

MODULE, OUTCOME = "measuring-and-tools", "read-scales"  # whose readings are drawn quickest
DESK = "desk"
NAME, NOTEBOOK = f"{MODULE}-1", f"03-{MODULE}"
SOLUTION = f"""\
# %% [markdown]
# # Measure it

# %% tags=["setup"]
from twoshaft.jobsheet import open_sheet

sheet = open_sheet("{MODULE}")
given, unit = sheet.given, sheet.unit

# %% [markdown] tags=["task"]
# Measure it.

# %% tags=["form"]
sheet.form(
    "gap",
    sheet.number("gap-size", "How wide", unit="mm"),
    sheet.choice("gap-first", "First", options=[["clean", "Clean it"], ["close", "Close it"]]),
)

# %% tags=["reference"]
ref("gap-size", Q(12.5, "mm"), outcome="{OUTCOME}", weight=3)
ref("gap-first", "clean", outcome="judge-repeats", must_pass=True)

# %% tags=["mark"] task="gap" points=4
"""
ANSWERS = {"gap-size": "12.5 mm", "gap-first": "clean"}


class Trial:
    """A cohort with the ways of handing in that no form of ours has.

    base: the folder that holds the cohort folder and its shared place, so that both can be copied.
    """

    name, notebook, outcome = NAME, NOTEBOOK, OUTCOME

    def __init__(self, base):
        self.base, self.cohort = base, open_cohort(base / DESK)

    def sheet(self, learner, answers=ANSWERS):
        data = SheetData(
            learner=learner,
            module=MODULE,
            attempt=1,
            answers={name: Answer(value, 1) for name, value in answers.items()},
        )
        return json.dumps(data.as_json())

    def hand_in(self, learner, *, hours_ago=2.0, answers=ANSWERS, when="", tail="abc"):
        """A folder in the exchange as nbgrader's hand-in makes it."""
        moment = datetime.now(UTC) - timedelta(hours=hours_ago)
        when = when or f"{moment:%Y-%m-%d %H:%M:%S.%f} UTC"
        folder = self.cohort.inbound / f"{learner}+{NAME}+{when}+{tail}"
        folder.mkdir()
        released = self.cohort.outbound(NAME) / f"{NOTEBOOK}.ipynb"
        shutil.copyfile(released, folder / released.name)
        (folder / "jobsheet.json").write_text(self.sheet(learner, answers))
        (folder / "timestamp.txt").write_text(when)
        (folder / "submission_secret.txt").write_text("0a" * 64)
        return folder


@pytest.fixture(scope="session")
def handed_out(tmp_path_factory):
    """Make a cohort of the given learners and hand the assignment out; returns the trial."""
    content = tmp_path_factory.mktemp("hostile-content")
    (content / "solutions").mkdir()
    built = build_notebook(SOLUTION, Path(f"solutions/{NOTEBOOK}.py"))
    (content / "solutions" / f"{NOTEBOOK}.ipynb").write_text(notebook_text(built))

    def make(base, learners):
        cohort = make_cohort(
            base / DESK, id="trial", timezone="UTC", salt="trial", content=str(content)
        )
        people = [Learner(id, f"Family {id}", "Given") for id in learners]
        take_in(cohort, people)
        assign(cohort, Content(content), MODULE, attempt=1, due=None, learners=people)
        return Trial(base)

    return make
