"""A real JupyterLab and a real browser; a worker's test files share both, each in its own folder.

A test file of one module names it and works as a learner with its practice copies::

    MODULE = "05-shims-and-preload"

    def test_a_figure_is_saved_and_marked(learner, wait_until, screenshot):
        page = learner.exercise(live=12)      # open, with at least 12 rigs and forms at work
        page.get_by_label("End float that you read").fill("0.12 mm")
        page.keyboard.press("Tab")
        wait_until(lambda: learner.stored("trial-float") == "0.12 mm")
        screenshot(page, "shims-exercise")    # in .screens/
        assert learner.marked()["trial-float"].share == 1

``learner.lesson(dark=True)`` opens the lesson; ``learner.issued`` is what the copy was given.
Loading JupyterLab's page takes most of the time, so a worker keeps one window: a notebook opens in
it, as a tab, after everything in it was closed; opened again, it is a new form on the same kernel.
A test that needs another window beside it, or another look, asks for ``lab.page(dark=True)``; such
windows are closed after the test. Kernels end with the file, or by ``learner.leave()``, after which
a notebook opens with a fresh kernel.
``handed_out(module)`` makes a cohort of one instead, whose learner signs in, gets and hands in.
Wait for a state, with ``wait_until`` or playwright's own waiting, never for a time: all of them
wait as long as ``PATIENCE`` allows, so that a busy machine fails nothing.
"""

from __future__ import annotations

import csv
import json
import os
import secrets
import shutil
import socket
import subprocess
import sys
import time
import urllib.error
import urllib.parse
import urllib.request
import warnings
from collections.abc import Callable
from dataclasses import dataclass, field, replace
from functools import cached_property
from pathlib import Path

import nbformat
import pytest
from nbformat.v4 import new_code_cell, new_notebook
from typer.testing import CliRunner

from twoshaft.jobsheet import read_sheet
from twoshaft.jupyter.released import cell_digest
from twoshaft.jupyter.settings import write_settings
from twoshaft.readings import issue_record
from twoshaft.units import load_unit
from twoshaft_grader.desk.commands import app
from twoshaft_grader.marking import load_solution, mark_sheet

ROOT = Path(__file__).resolve().parents[2]
SCREENS = ROOT / ".screens"
CONTRAST = (Path(__file__).parent / "contrast.js").read_text()
FRONT = ".jp-NotebookPanel:not(.lm-mod-hidden)"
FLAGS = [
    "--no-sandbox",
    "--disable-gpu",
    "--disable-quic",
    "--no-first-run",
    "--disable-background-networking",
    "--disable-component-update",
    "--disable-sync",
]
IDLE = '.jp-NotebookPanel:not(.lm-mod-hidden) .jp-Notebook-ExecutionIndicator[data-status="idle"]'
PATIENCE = 120  # how long anything is waited for [s]; only a test that fails waits so long
PATIENCE_MS = 1000 * PATIENCE
OPENING = f"{FRONT}.twoshaft-opening"  # while forms or rigs are still to come
NARROW_PX = 600  # in a narrower window the toolbar folds the kernel's state away
SIZE = {"width": 1280, "height": 720}
CLOSE = "() => { for (const tab of [...jupyterapp.shell.widgets('main')]) tab.close(); }"
STANDING = """() => [...document.querySelectorAll('.jp-NotebookPanel, .jp-Dialog')]
  .map((one) => `${one.className}: ${one.innerText.slice(0, 200)}`)"""
CLOSING_S = 20  # how long a window may take to close what is open in it before another is loaded
OPEN = "(path) => { jupyterapp.commands.execute('docmanager:open', { path }); }"


def chromium_path() -> str:
    """Where the browser is; the test is skipped, and fails in CI, where there is none."""
    named = os.environ.get("TWOSHAFT_CHROMIUM", "/usr/bin/chromium")
    path = named if Path(named).exists() else shutil.which("chromium")
    if not path:
        reason = "no chromium: install it, or name it in TWOSHAFT_CHROMIUM"
        if os.environ.get("CI") == "true":
            pytest.fail(reason, pytrace=False)
        pytest.skip(reason)
    return path


@pytest.fixture(scope="session")
def chromium():
    """The browser, started once."""
    path = chromium_path()
    from playwright.sync_api import sync_playwright

    with sync_playwright() as playwright:
        browser = playwright.chromium.launch(executable_path=path, headless=True, args=FLAGS)
        yield browser
        browser.close()


@dataclass
class Kept:
    """The window that a server's tests share; None before the first, and after one that is spoilt."""

    page: object = None

    def drop(self):
        """Close it; the next test loads another."""
        if self.page:
            self.page.context.close()
        self.page = None


@dataclass
class Lab:
    """A running JupyterLab, or one folder of one that test files share.

    url, token: where it answers; root: the folder it shows; log: what it says; within: the
    folder's path under the server's own, with a slash behind, for one that is shared; begin:
    starts the server's process.
    """

    url: str
    token: str
    root: Path
    log: Path
    settings: Path
    process: subprocess.Popen
    chromium: object
    begin: Callable[[], subprocess.Popen]
    contexts: list = field(default_factory=list)
    within: str = ""
    kept: Kept = field(default_factory=Kept)

    def folder(self, name: str) -> Lab:
        """A folder of this server, to be used as a JupyterLab of its own."""
        (self.root / name).mkdir()
        return replace(self, root=self.root / name, within=f"{name}/", contexts=[])

    def release(self, digests) -> None:
        """Let more cells be run on opening; windows that are opened from now on know it."""
        config = self.settings / "config/labconfig/page_config.json"
        known = json.loads(config.read_text())
        if new := {*digests} - {*known["twoshaftReleased"]}:
            known["twoshaftReleased"] += sorted(new)
            config.write_text(json.dumps(known))
            self.kept.drop()

    def page(self, *, dark=False, **size):
        """A new browser window with a profile of its own."""
        context = self.chromium.new_context(
            viewport=SIZE | size,
            color_scheme="dark" if dark else "light",
            accept_downloads=True,
        )
        context.set_default_timeout(PATIENCE_MS)
        self.contexts.append(context)
        return context.new_page()

    def profile(self, folder: Path):
        """A browser of its own with a real profile, kept in a folder: its windows lose the focus
        when another tab comes to the front, as a person's do. Returns its context.
        """
        context = self.chromium.browser_type.launch_persistent_context(
            folder, executable_path=chromium_path(), headless=True, args=FLAGS, viewport=SIZE
        )
        context.set_default_timeout(PATIENCE_MS)
        self.contexts.append(context)
        return context

    def window(self):
        """The window that tests share."""
        if not self.kept.page or self.kept.page.is_closed():
            self.kept.page = self.page()
            self.contexts.remove(self.kept.page.context)
        self.kept.page.set_viewport_size(SIZE)
        return self.kept.page

    def address(self, path: str) -> str:
        """The address that opens a file in JupyterLab, with no saved arrangement."""
        return (
            f"{self.url}/lab/tree/{urllib.parse.quote(self.within + path)}?token={self.token}&reset"
        )

    def open_notebook(self, path: str, page=None, *, ready: str | None = ".twoshaft:not(nav)"):
        """Open a notebook, wait for its kernel and its forms; no button is pressed.

        path: under the root; page: a window, the shared one if None, in which everything else is
        closed; ready: a selector that shows the forms are there, None to wait for the kernel only.
        Returns the page.
        """
        page = page or self.window()
        if page.url.startswith(self.url) and emptied(page):
            page.evaluate(OPEN, self.within + path)
        else:
            page.goto(self.address(path))
        if not ready or page.viewport_size["width"] >= NARROW_PX:
            page.wait_for_selector(IDLE, timeout=PATIENCE_MS)
        if ready:
            page.wait_for_selector(f"{FRONT} {ready}")
        return page

    def save(self, page):
        """Save the notebook in front and wait until it is in its file.

        A tab without the mark of unsaved work may still be on its way: the server's answer counts.
        """

        def stored(response):
            return response.request.method == "PUT" and "/api/contents/" in response.url

        with page.expect_response(stored) as answer:
            page.keyboard.press("Control+s")
        answer.value.finished()
        page.wait_for_function("() => !document.querySelector('.lm-TabBar-tab.jp-mod-dirty')")

    def _ask(self, path: str, method: str = "GET") -> bytes:
        headers = {"Authorization": f"token {self.token}"}
        request = urllib.request.Request(f"{self.url}{path}", method=method, headers=headers)
        with urllib.request.urlopen(request, timeout=PATIENCE) as answer:
            return answer.read()

    def close_windows(self):
        """Close every window, and what is open in the shared one; kernels and the server go on."""
        while self.contexts:
            self.contexts.pop().close()
        if self.kept.page and (self.kept.page.is_closed() or not emptied(self.kept.page)):
            self.kept.drop()

    def clear(self):
        """Close every window and end every kernel; the server goes on."""
        self.close_windows()
        for session in json.loads(self._ask("/api/sessions")):
            self._ask(f"/api/sessions/{session['id']}", "DELETE")

    def start_again(self):
        """Start a server that was ended, where it was."""
        self.process = self.begin()
        _wait_until_up(self)

    def stop(self):
        """Close windows and end the server with its kernels."""
        self.close_windows()
        self.kept.drop()
        self.end()

    def end(self):
        """End the server with its kernels; windows stay open."""
        try:
            self._ask("/api/shutdown", "POST")
            self.process.wait(timeout=20)
        except (OSError, subprocess.TimeoutExpired):
            self.process.terminate()
            try:
                self.process.wait(timeout=10)
            except subprocess.TimeoutExpired:
                self.process.kill()


def emptied(page) -> bool:
    """Close all that is open in a window of JupyterLab; False if it asks before it does.

    What keeps it open is a warning: the next test loads another window, and none fails by it.
    """
    if page.locator(".lm-TabBar-tab.jp-mod-dirty, .jp-Dialog").count():
        return False
    page.evaluate(CLOSE)
    end = time.monotonic() + CLOSING_S
    while standing := page.evaluate(STANDING):
        if time.monotonic() > end:
            warnings.warn(f"a window did not close: {standing}", stacklevel=1)
            return False
        time.sleep(0.05)
    return True


def open_everything(page):
    """Open what predictions keep shut, by the teacher's button, once the page has come to it."""
    button, opening = page.locator(f"{FRONT} .ts-teacher"), page.locator(OPENING)
    wait_until(lambda: button.count() or not opening.count())
    if button.count():
        button.focus()
        page.keyboard.press("Enter")


def wait_for_text(page, text: str, timeout: float = PATIENCE_MS):
    """Wait until a text can be seen in the notebook in front; returns its locator."""
    found = page.locator(FRONT).get_by_text(text).first
    found.wait_for(state="visible", timeout=timeout)
    return found


def wait_until(true, seconds: float = PATIENCE):
    """Wait until a condition, a function without arguments, holds."""
    end = time.monotonic() + seconds
    while not true():
        assert time.monotonic() < end, "waited in vain"
        time.sleep(0.05)


def screenshot(page, name: str) -> Path:
    """Save a picture of the window to .screens/<name>.png; all its text must stand out."""
    SCREENS.mkdir(exist_ok=True)
    path = SCREENS / f"{name}.png"
    page.screenshot(path=path)
    looked_at = page.locator(f"{FRONT}, body").last.evaluate(CONTRAST)
    assert looked_at["seen"] > 0 and not looked_at["faint"]
    return path


def rig_notebook(lab, file: str, setup: str, rig: str):
    """Write a released notebook of one rig, which opens by itself, into a lab's folder."""
    lab.release(cell_digest(source) for source in (setup, rig))
    made = new_notebook(
        cells=[
            new_code_cell(source, metadata={"tags": [tag], "jupyter": {"source_hidden": True}})
            for tag, source in (("setup", setup), ("rig", rig))
        ],
        metadata={
            "kernelspec": {"name": "python3", "display_name": "Python 3", "language": "python"},
            "twoshaft": {"open": True},
        },
    )
    nbformat.write(made, lab.root / file)


def open_rig(lab, file: str, page=None):
    """Open a notebook of one rig; returns the page and its rig."""
    page = lab.open_notebook(file, page, ready=".twoshaft-rig")
    rigs = page.locator(f"{FRONT} .twoshaft-rig")
    wait_until(lambda: rigs.count() == 1)
    return page, rigs.first


def choose_by_keys(select, text: str):
    """Go through a list by the arrow keys to the option with this text.

    Its first letters would do, but a busy machine breaks a word in two.
    """
    select.focus()
    options = [one.strip() for one in select.locator("option").all_inner_texts()]
    select.page.keyboard.press("Home")
    for _ in range(options.index(text)):
        select.page.keyboard.press("ArrowDown")
    # A busy machine takes the last key in a moment after it was sent.
    wait_until(lambda: select.evaluate("(list) => list.selectedOptions[0].text.trim()") == text)


@pytest.fixture(name="wait_for_text")
def _wait_for_text():
    return wait_for_text


@pytest.fixture(scope="session", name="wait_until")
def _wait_until():
    return wait_until


@pytest.fixture(name="screenshot")
def _screenshot():
    return screenshot


def _free_port() -> int:
    with socket.socket() as probe:
        probe.bind(("127.0.0.1", 0))
        return probe.getsockname()[1]


@pytest.fixture
def start_lab(chromium, tmp_path):
    """Start a JupyterLab of the test's own: ``start_lab(root, role="staff", released=digests)``."""
    yield from _starter(chromium, tmp_path)


@pytest.fixture(scope="session")
def server(chromium, tmp_path_factory):
    """The JupyterLab for apprentices that this worker's test files share."""
    starter = _starter(chromium, tmp_path_factory.mktemp("server"))
    yield next(starter)()
    next(starter, None)


@pytest.fixture(scope="module")
def shared_lab(server, request):
    """A folder of this test file's own in the shared JupyterLab; see :class:`Lab`."""
    lab = server.folder(Path(request.path).stem)
    yield lab
    lab.clear()


@pytest.fixture(scope="module")
def start_shared_lab(chromium, tmp_path_factory, request):
    """As ``start_lab``, for the tests of a file together; without a root, a folder of the shared.

    A root or the staff's role asks for a server of its own.
    """
    started = []

    def start(root=None, *, role="apprentice", released=()):
        if root is None and role == "apprentice":
            lab = request.getfixturevalue("shared_lab")
            lab.release(released)
            return lab
        own = _starter(chromium, tmp_path_factory.mktemp("lab"))
        started.append(own)
        return next(own)(root, role=role, released=released)

    yield start
    for own in started:
        next(own, None)


def digests_of(*notebooks):
    """The digests of a notebook's code cells."""
    cells = (cell for path in notebooks for cell in nbformat.read(path, as_version=4).cells)
    return [cell_digest(cell.source) for cell in cells if cell.cell_type == "code"]


class Learner:
    """Somebody at the practice copies of one module.

    lab: where they work; name: of the module's notebooks, without ending.
    """

    def __init__(self, lab, name):
        self.lab, self.name, self.unit = lab, name, load_unit("tarnbeck-b5")
        sources = {"exercises": ROOT / "exercises", "lessons": ROOT / "course/lessons"}
        for folder, source in sources.items():
            (lab.root / folder).mkdir()
            shutil.copyfile(source / f"{name}.ipynb", lab.root / folder / f"{name}.ipynb")

    @cached_property
    def solution(self):
        """The module's solution."""
        return load_solution(ROOT / "solutions" / f"{self.name}.ipynb")

    @cached_property
    def issued(self):
        """What a practice copy is given."""
        return issue_record(
            self.solution.module, self.unit, salt="practice", learner="practice", attempt=0
        )

    def exercise(self, *, ready=".twoshaft:not(nav)", live=0, **window):
        """Open the exercise in a new window; live: how many rigs and forms must be at work."""
        return self._open("exercises", ready, live, window)

    def lesson(self, *, ready=".twoshaft:not(nav)", live=0, shut=False, **window):
        """Open the lesson in a new window; live: how many rigs and forms must be at work; shut:
        leave what answers a prediction shut, as a learner finds it.
        """
        page = self._open("lessons", ".twoshaft:not(nav)", 0, window)
        if not shut:
            open_everything(page)
        page.wait_for_selector(f"{FRONT} {ready}")
        wait_until(lambda: page.locator(f"{FRONT} .twoshaft-live").count() >= live)
        return page

    def _open(self, folder, ready, live, window):
        path = f"{folder}/{self.name}.ipynb"
        page = self.lab.page(**window) if window else None
        page = self.lab.open_notebook(path, page, ready=ready)
        wait_until(lambda: page.locator(f"{FRONT} .twoshaft-live").count() >= live)
        return page

    @property
    def sheet(self):
        """The job sheet, None while there is none."""
        path = self.lab.root / "exercises" / f"practice-{self.solution.module}.jobsheet.json"
        return read_sheet(path) if path.exists() else None

    def stored(self, field):
        """What the job sheet holds for a field, None while it holds nothing."""
        return None if self.sheet is None else self.sheet.value(field)

    def marked(self):
        """The sheet's fields as they are marked, by name."""
        mark = mark_sheet(self.sheet, self.issued, self.solution, unit=self.unit)
        return {field.name: field for field in mark.fields}

    def leave(self):
        """Close the windows and end the kernels."""
        self.lab.clear()


@pytest.fixture(scope="module")
def practice(request, shared_lab):
    """As ``learner``, for windows that the tests of a file share."""
    return Learner(shared_lab, request.module.MODULE)


@pytest.fixture
def learner(practice):
    """A learner of the module that the test file names in ``MODULE``."""
    yield practice
    practice.lab.close_windows()


def twoshaft(*words):
    """Run a command of the desk; return what it says."""
    result = CliRunner().invoke(app, [str(word) for word in words])
    assert result.exit_code == 0, result.output
    return result.output


class HandedOut:
    """A cohort of one, with one module handed out, in a JupyterLab for apprentices.

    cohort: its folder; mine: the assignment's folder at the learner's place; notebook: the path
    that opens it.
    """

    def __init__(self, lab, module):
        self.lab, self.module = lab, module
        self.cohort = lab.root / "cohort"
        roster = lab.root / "roster.csv"
        roster.write_text("id,family name,given name,group\nmo01,Lindqvist,Ada,A\n")
        college = "An invented college"
        twoshaft("cohort", "make", self.cohort, "--name", "Morning group", "--college", college)
        twoshaft("roster", "take", roster, "--cohort", self.cohort)
        self.desk("module", "assign", module, "--due", "2099-01-31")
        self.mine = lab.root / f"cohort-shared/workplace/mo01/{module}-1"

    def desk(self, *words):
        """Run a command of the desk on the cohort."""
        return twoshaft(*words, "--cohort", self.cohort)

    @property
    def issued(self):
        """What the learner was issued."""
        return json.loads((self.cohort / f"issued/{self.module}-1/mo01.json").read_text())

    def start_page(self, page=None):
        """Open the start page."""
        return self.lab.open_notebook("cohort-shared/workplace/start-here.ipynb", page)

    def get(self):
        """Sign in with the word on the slip, and get the assignment; returns the window."""
        with open(self.cohort / "sign-in-slips.csv", newline="") as file:
            row = next(csv.DictReader(file))
        word = next(value for key, value in row.items() if "word" in key)
        page = self.start_page()
        page.locator(f"{FRONT} select").first.select_option(index=1)
        page.locator(f"{FRONT} .twoshaft input").first.fill(word)
        page.get_by_role("button", name="Sign in").click()
        page.get_by_text("Working as Ada Lindqvist (mo01)").first.wait_for()
        page.get_by_role("button", name="Get").click()
        page.get_by_role("link", name="Open").wait_for()
        return page

    def open(self, page=None, *, ready=".twoshaft:not(nav)"):
        """Open the assignment's notebook."""
        (notebook,) = self.mine.glob("*.ipynb")
        return self.lab.open_notebook(
            notebook.relative_to(self.lab.root).as_posix(), page, ready=ready
        )

    def stored(self, field):
        """What the job sheet holds for a field, None while it holds nothing."""
        path = self.mine / "jobsheet.json"
        return read_sheet(path).value(field) if path.exists() else None

    def hand_in(self, page=None):
        """Hand in from the start page, and wait for the receipt."""
        page = self.start_page(page)
        page.get_by_role("button", name="Hand in").click()
        page.get_by_role("button", name="It is my own work").click()
        page.get_by_text("receipt").first.wait_for()
        return page

    def given_back(self):
        """Collect, mark and give back; returns the text of the feedback page."""
        for command in ("collect", "mark", "give-back"):
            self.desk(command)
        (feedback,) = self.mine.glob("feedback/**/*.html")
        return feedback.read_text()


@pytest.fixture(scope="module")
def handed_out(shared_lab, tables_version_once):
    """Return a maker of cohorts: ``handed_out("order-of-work")``; see :class:`HandedOut`."""
    return lambda module: HandedOut(shared_lab, module)


def _starter(chromium, tmp_path):
    labs = []

    def start(
        root: Path | None = None, *, role: str = "apprentice", released=(), desk: str = ""
    ) -> Lab:
        root = Path(root) if root else tmp_path / "workplace"
        root.mkdir(parents=True, exist_ok=True)
        settings = tmp_path / f"settings-{len(labs)}"
        env = {**os.environ, **write_settings(settings, role, released=released, desk=desk)}
        port, token, log = _free_port(), secrets.token_hex(16), settings / "server.log"
        command = [
            *(sys.executable, "-m", "twoshaft.jupyter.server", "--no-browser", "--ip=127.0.0.1"),
            *(f"--port={port}", "--ServerApp.port_retries=0"),
            *(f"--IdentityProvider.token={token}", f"--ServerApp.root_dir={root}"),
            "--LabApp.expose_app_in_browser=True",  # tests open and close tabs by its commands
        ]
        if hasattr(os, "geteuid") and os.geteuid() == 0:
            command.append("--allow-root")

        def begin():
            with open(log, "a") as out:
                return subprocess.Popen(command, env=env, stdout=out, stderr=subprocess.STDOUT)

        url = f"http://127.0.0.1:{port}"
        lab = Lab(url, token, root, log, settings, begin(), chromium, begin)
        labs.append(lab)
        _wait_until_up(lab)
        return lab

    yield start
    for lab in labs:
        lab.stop()


def _wait_until_up(lab: Lab, seconds: float = PATIENCE) -> None:
    end = time.monotonic() + seconds
    while time.monotonic() < end:
        if lab.process.poll() is not None:
            pytest.fail(f"JupyterLab ended at once:\n{lab.log.read_text()[-2000:]}")
        try:
            urllib.request.urlopen(f"{lab.url}/api/status?token={lab.token}", timeout=5).close()
            return
        except (urllib.error.URLError, OSError):
            time.sleep(0.2)
    pytest.fail(f"JupyterLab did not answer in {seconds} s:\n{lab.log.read_text()[-2000:]}")
