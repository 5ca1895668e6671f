"""nbgrader's own page, opened by staff, marks a hostile hand-in as our command does, and runs none
of it.
"""

import json
import os
import subprocess
import time
import urllib.request

import nbformat
import pytest
from nbgrader.api import Gradebook
from tests.browser.conftest import PATIENCE, PATIENCE_MS, SIZE, twoshaft

from twoshaft.jobsheet import Answer, SheetData
from twoshaft_grader.cohort.folder import open_cohort
from twoshaft_grader.desk.jupyter import jupyter_command

pytestmark = pytest.mark.browser
MODULE = "measuring-and-tools"
NAME = f"{MODULE}-1"
HOSTILE = """\
from pathlib import Path
Path({gotcha!r}).write_text("ran")
import twoshaft.jobsheet
from twoshaft_grader.marking import task
task.mark_sheet = None
100.0
"""


@pytest.fixture
def staff(tmp_path):
    """A cohort with one hostile hand-in, collected, and a staff server on it."""
    root, gotcha = tmp_path / "group", tmp_path / "gotcha"
    roster = tmp_path / "roster.csv"
    roster.write_text("id,family name,given name\na1,Lindqvist,Ada\n")
    at = ("--cohort", root)
    twoshaft("cohort", "make", root)
    twoshaft("roster", "take", roster, *at)
    twoshaft("module", "assign", MODULE, *at)
    cohort = open_cohort(root)
    folder = cohort.inbound / f"a1+{NAME}+2026-01-02 10:00:00.0 UTC+x"
    folder.mkdir()
    (released,) = cohort.outbound(NAME).glob("*.ipynb")
    notebook = nbformat.read(released, as_version=4)
    for cell in notebook.cells:
        if cell.cell_type == "code":
            cell.source = HOSTILE.format(gotcha=str(gotcha))
    nbformat.write(notebook, folder / released.name)
    for name in ("twoshaft.py", "sitecustomize.py", "nbformat.py"):
        (folder / name).write_text(HOSTILE.format(gotcha=str(gotcha)))
    answers = {"mic-zero": Answer("<script>window.gotcha = 1</script>", 1)}
    sheet = SheetData(learner="a1", module=MODULE, attempt=1, answers=answers).as_json()
    (folder / "jobsheet.json").write_text(json.dumps(sheet))
    twoshaft("collect", *at)
    command, env = jupyter_command(cohort, "staff", browser=False)
    log = tmp_path / "server.log"
    with open(log, "w") as out:
        server = subprocess.Popen(
            command, env={**os.environ, **env}, cwd=root, stdout=out, stderr=subprocess.STDOUT
        )
    try:
        yield cohort, gotcha, _address(root, server, log)
    finally:
        server.terminate()
        server.wait(timeout=PATIENCE)


def _address(root, server, log):
    end = time.monotonic() + PATIENCE
    while time.monotonic() < end:
        assert server.poll() is None, log.read_text()[-2000:]
        for path in (root / "settings").rglob("jpserver-*.json"):
            if text := path.read_text():
                about = json.loads(text)
                address = about["url"].rstrip("/"), about["token"]
                ask = f"{address[0]}/api/status?token={address[1]}"
                try:
                    urllib.request.urlopen(ask, timeout=5).close()
                    return address
                except OSError:
                    pass
        time.sleep(0.2)
    raise AssertionError(f"no server: {log.read_text()[-2000:]}")


def score(cohort):
    with Gradebook(f"sqlite:///{cohort.root / 'gradebook.db'}", cohort.id) as book:
        return book.find_submission(NAME, "a1").score


def test_autograde_from_the_page_gives_our_mark_and_runs_no_code_of_the_hand_in(
    staff, chromium, request
):
    cohort, gotcha, (url, token) = staff
    context = chromium.new_context(viewport=SIZE)
    outside = []
    # What the page's own rules stop is asked for and never sent.
    context.on("requestfinished", lambda one: outside.append(one.url))
    try:
        page = context.new_page()
        page.set_default_timeout(PATIENCE_MS)
        page.goto(f"{url}/formgrader?token={token}")
        page.goto(f"{url}/formgrader/manage_submissions/{NAME}")
        page.locator("td.autograde a").first.click()
        page.get_by_text("Successfully autograded").wait_for()
        by_page = score(cohort)
        assert not page.evaluate("window.gotcha")
        page.goto(f"{url}/formgrader/gradebook/{NAME}/{next(_notebooks(cohort))}")
        page.locator("td.name a").first.click()
        page.wait_for_load_state("networkidle")
        assert not page.evaluate("window.gotcha")
    finally:
        context.close()
    assert [one for one in outside if not one.startswith((url, "data:", "blob:", "about:"))] == []
    twoshaft("mark", "--again", "--cohort", cohort.root)
    assert by_page == pytest.approx(score(cohort), abs=1e-9)
    assert not gotcha.exists()


def _notebooks(cohort):
    return (path.stem for path in cohort.outbound(NAME).glob("*.ipynb"))
