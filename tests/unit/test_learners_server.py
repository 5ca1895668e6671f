"""A JupyterLab for learners, asked over its own addresses: no terminal, nobody's folder listed, and
its keys for its owner alone.
"""

import json
import os
import secrets
import socket
import stat
import subprocess
import sys
import time
import urllib.error
import urllib.request

import pytest

from twoshaft.jobsheet.people import Listed, word_check, write_people
from twoshaft.jupyter.settings import write_settings
from twoshaft.jupyter.startpage import write_start_here
from twoshaft.stored.person import Person

pytestmark = pytest.mark.slow
PATIENCE_S = 120
PEOPLE = ("tb01", "tb02")


class Server:
    """A running server: what it answers, and the folder of its keys."""

    def __init__(self, root, settings):
        with socket.socket() as probe:
            probe.bind(("127.0.0.1", 0))
            port = probe.getsockname()[1]
        env = {**os.environ, **write_settings(settings, "apprentice")}
        self.token, self.url = secrets.token_hex(16), f"http://127.0.0.1:{port}/"
        self.runtime = settings / "runtime"
        words = [
            *(sys.executable, "-m", "twoshaft.jupyter.server", "--no-browser", "--allow-root"),
            *(f"--port={port}", "--ServerApp.port_retries=0", f"--ServerApp.root_dir={root}"),
            f"--IdentityProvider.token={self.token}",
        ]
        self.process = subprocess.Popen(
            words, env=env, stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL
        )
        end = time.monotonic() + PATIENCE_S
        while True:
            try:
                self.ask("api/status")
                return
            except OSError:
                assert self.process.poll() is None and time.monotonic() < end
                time.sleep(0.2)

    def ask(self, path, method="GET", data=None):
        """The status, and what was answered."""
        headers = {"Authorization": f"token {self.token}"}
        body = None if data is None else json.dumps(data).encode()
        request = urllib.request.Request(f"{self.url}{path}", body, headers, method=method)
        try:
            with urllib.request.urlopen(request, timeout=PATIENCE_S) as answer:
                return answer.status, json.loads(answer.read() or "null")
        except urllib.error.HTTPError as error:
            return error.code, None

    def listed(self, path):
        """Names that are listed of a folder."""
        status, found = self.ask(f"api/contents/{path}")
        return sorted(one["name"] for one in found["content"]) if status == 200 else []


@pytest.fixture(scope="module")
def server(tmp_path_factory):
    root = tmp_path_factory.mktemp("learners") / "workplace"
    (root / "lessons").mkdir(parents=True)
    (root / "lessons" / "01-a-lesson.ipynb").write_text("{}")
    for id in PEOPLE:
        (root / id / "order-of-work-1").mkdir(parents=True)
        (root / id / "order-of-work-1" / "02-order-of-work.ipynb").write_text("{}")
        (root / id / "order-of-work-1" / "assignment.json").write_text("{}")
    (root / "unit.yaml").touch()
    write_people(root, [Listed(Person(id, "F", "G"), word_check("w")) for id in PEOPLE])
    write_start_here(root)
    settings = root.parent / "settings"
    settings.mkdir(mode=0o755)
    running = Server(root, settings)
    yield running
    running.ask("api/shutdown", "POST")
    running.process.wait(timeout=PATIENCE_S)


def test_there_is_no_terminal(server):
    for path, method in (
        ("api/terminals", "GET"),
        ("api/terminals", "POST"),
        ("terminals/1", "GET"),
    ):
        assert server.ask(path, method, {} if method == "POST" else None)[0] == 404


def test_no_learners_folder_is_listed(server):
    assert server.listed("") == ["lessons", "start-here.ipynb"]
    assert server.listed("lessons") == ["01-a-lesson.ipynb"]
    assert server.listed("lessons/") == ["01-a-lesson.ipynb"]
    ways = (
        "{}",
        "{}/",
        "{}/order-of-work-1",
        "lessons/../{}",
        "./{}",
        "//{}",
        "lessons/..",
        "%2e/{}",
    )
    for way in ways:
        for id in PEOPLE:
            found = server.listed(way.format(id))
            assert not {*PEOPLE, "order-of-work-1", "assignment.json"} & {*found}, way


def test_what_the_start_page_leads_to_opens(server):
    path = "api/contents/tb01/order-of-work-1/assignment.json"
    assert server.ask(path)[1]["content"] == "{}"
    assert server.ask("api/contents/tb01/order-of-work-1?content=0")[1]["type"] == "directory"


@pytest.mark.skipif(os.name == "nt", reason="rights of Unix")
def test_its_keys_are_for_its_owner_alone(server):
    assert stat.S_IMODE(server.runtime.parent.stat().st_mode) == 0o700
    assert {path.suffix for path in server.runtime.glob("jpserver-*")} == {".json", ".html"}
    for path in (server.runtime, *server.runtime.glob("jpserver-*")):
        assert stat.S_IMODE(path.stat().st_mode) & 0o077 == 0, path
