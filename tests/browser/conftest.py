"""A real JupyterLab and a real browser, each test with folders of its own."""

from __future__ import annotations

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
from dataclasses import dataclass, field
from pathlib import Path

import pytest

from twoshaft.jupyter.settings import write_settings

SCREENS = Path(__file__).resolve().parents[2] / ".screens"
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
PATIENCE_MS = 60_000
NARROW_PX = 600  # in a narrower window the toolbar folds the kernel's state away


def _chromium() -> str:
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
    path = _chromium()
    from playwright.sync_api import sync_playwright

    with sync_playwright() as playwright:
        browser = playwright.chromium.launch(executable_path=path, headless=True, args=FLAGS)
        yield browser
        browser.close()


@dataclass
class Lab:
    """A running JupyterLab.

    url, token: where it answers; root: the folder it shows; log: what it says.
    """

    url: str
    token: str
    root: Path
    log: Path
    settings: Path
    process: subprocess.Popen
    chromium: object
    contexts: list = field(default_factory=list)

    def page(self, *, width=1280, height=720, dark=False):
        """A new browser window with a profile of its own."""
        context = self.chromium.new_context(
            viewport={"width": width, "height": height},
            color_scheme="dark" if dark else "light",
            accept_downloads=True,
        )
        context.set_default_timeout(PATIENCE_MS)
        self.contexts.append(context)
        return context.new_page()

    def address(self, path: str) -> str:
        """The address that opens a file in JupyterLab, with no saved arrangement."""
        return f"{self.url}/lab/tree/{urllib.parse.quote(path)}?token={self.token}&reset"

    def open_notebook(self, path: str, page=None, *, ready: str | None = ".twoshaft"):
        """Open a notebook, wait for its kernel and its forms; no button is pressed.

        path: under the root; ready: a selector that shows the forms are there, None to wait for
        the kernel only. Returns the page.
        """
        page = page or self.page()
        page.goto(self.address(path))
        if not ready or page.viewport_size["width"] >= NARROW_PX:
            page.wait_for_selector(IDLE, timeout=PATIENCE_MS)
        if ready:
            page.wait_for_selector(f".jp-NotebookPanel:not(.lm-mod-hidden) {ready}")
        return page

    def save(self, page):
        """Save the notebook in front and wait until it is in its file."""
        page.keyboard.press("Control+s")
        page.wait_for_function("() => !document.querySelector('.lm-TabBar-tab.jp-mod-dirty')")

    def _ask(self, path: str, method: str = "GET") -> bytes:
        headers = {"Authorization": f"token {self.token}"}
        request = urllib.request.Request(f"{self.url}{path}", method=method, headers=headers)
        with urllib.request.urlopen(request, timeout=20) as answer:
            return answer.read()

    def clear(self):
        """Close every window and end every kernel; the server goes on."""
        while self.contexts:
            self.contexts.pop().close()
        for session in json.loads(self._ask("/api/sessions")):
            self._ask(f"/api/sessions/{session['id']}", "DELETE")

    def stop(self):
        """Close windows and end the server with its kernels."""
        for context in self.contexts:
            context.close()
        try:
            self._ask("/api/shutdown", "POST")
            self.process.wait(timeout=20)
        except (OSError, subprocess.TimeoutExpired):
            self.process.terminate()
            try:
                self.process.wait(timeout=10)
            except subprocess.TimeoutExpired:
                self.process.kill()


def wait_for_text(page, text: str, timeout: float = PATIENCE_MS):
    """Wait until a text can be seen in the notebook in front; returns its locator."""
    found = page.locator(".jp-NotebookPanel:not(.lm-mod-hidden)").get_by_text(text).first
    found.wait_for(state="visible", timeout=timeout)
    return found


def screenshot(page, name: str) -> Path:
    """Save a picture of the window to .screens/<name>.png."""
    SCREENS.mkdir(exist_ok=True)
    path = SCREENS / f"{name}.png"
    page.screenshot(path=path)
    return path


@pytest.fixture(name="wait_for_text")
def _wait_for_text():
    return wait_for_text


@pytest.fixture(name="screenshot")
def _screenshot():
    return screenshot


def _free_port() -> int:
    with socket.socket() as probe:
        probe.bind(("127.0.0.1", 0))
        return probe.getsockname()[1]


@pytest.fixture
def start_lab(chromium, tmp_path):
    """Start a JupyterLab: ``start_lab(root, role="apprentice", released=digests)``."""
    yield from _starter(chromium, tmp_path)


@pytest.fixture(scope="module")
def start_shared_lab(chromium, tmp_path_factory):
    """As ``start_lab``, for one that the tests of a module share, each in a folder of its own."""
    yield from _starter(chromium, tmp_path_factory.mktemp("lab"))


def _starter(chromium, tmp_path):
    labs = []

    def start(root: Path | None = None, *, role: str = "apprentice", released=()) -> Lab:
        root = Path(root) if root else tmp_path / "workplace"
        root.mkdir(parents=True, exist_ok=True)
        settings = tmp_path / f"settings-{len(labs)}"
        env = {**os.environ, **write_settings(settings, role, released=released)}
        port, token, log = _free_port(), secrets.token_hex(16), settings / "server.log"
        command = [
            *(sys.executable, "-m", "jupyter", "lab", "--no-browser", "--ip=127.0.0.1"),
            *(f"--port={port}", "--ServerApp.port_retries=0"),
            *(f"--IdentityProvider.token={token}", f"--ServerApp.root_dir={root}"),
        ]
        if hasattr(os, "geteuid") and os.geteuid() == 0:
            command.append("--allow-root")
        with open(log, "w") as out:
            process = subprocess.Popen(command, env=env, stdout=out, stderr=subprocess.STDOUT)
        url = f"http://127.0.0.1:{port}"
        lab = Lab(url, token, root, log, settings, process, chromium)
        labs.append(lab)
        _wait_until_up(lab)
        return lab

    yield start
    for lab in labs:
        lab.stop()


def _wait_until_up(lab: Lab, seconds: float = 60) -> None:
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


@pytest.fixture
def lab(start_lab):
    """A JupyterLab for apprentices on an empty folder: ``lab.root``."""
    return start_lab()
