"""A real JupyterHub with real accounts, over https: an instructor and two learners, from getting to
feedback.
"""

import json
import os
import subprocess
import sys
import time
import uuid
from concurrent.futures import ThreadPoolExecutor
from pathlib import Path
from types import SimpleNamespace

import psutil
import pytest
import requests
import websocket

from twoshaft.jobsheet.signin import SignIn
from twoshaft.jupyter.out_of_memory import SENTENCE
from twoshaft_grader.cohort.folder import open_cohort
from twoshaft_grader.cohort.marks import read_mark
from twoshaft_grader.desk.commands import main

pytestmark = [pytest.mark.slow, pytest.mark.skipif(os.name == "nt", reason="accounts of Unix")]
ROOT = Path(__file__).resolve().parents[3]
MODULE = "measuring-and-tools"  # whose readings are drawn quickest
NAME = f"{MODULE}-1"
STAFF = "k-tam"  # comes to the desk by a group, and has no account of the system
PASSWORD = "copper-heron-copper-heron"
PATIENCE_S = 120
# What a test of one machine needs otherwise than a college: who signs in, and free ports.
MORE = """
c.JupyterHub.authenticator_class = "shared-password"
c.SharedPasswordAuthenticator.user_password = {password!r}
c.JupyterHub.bind_url = "https://127.0.0.1:{ports[0]}"
c.JupyterHub.ssl_cert = {certificate!r}
c.JupyterHub.ssl_key = {key!r}
c.JupyterHub.hub_port = {ports[1]}
c.ConfigurableHTTPProxy.api_url = "http://127.0.0.1:{ports[2]}"
c.ConfigurableHTTPProxy.command = {proxy!r}
c.JupyterHub.services.append({{"name": "soon", "api_token": {token!r}}})
c.JupyterHub.load_roles[1]["services"].append("soon")
c.JupyterHub.log_level = "WARN"
"""


def wait(true):
    end = time.monotonic() + PATIENCE_S
    while not (found := true()):
        assert time.monotonic() < end, "waited in vain"
        time.sleep(0.1)
    return found


class Visitor:
    """Somebody who signed in to the hub in a browser."""

    def __init__(self, hub, name):
        self.hub, self.name, self.browser = hub, name, requests.Session()
        self.browser.verify, self.browser.trust_env = hub.certificate, False
        self.browser.get(f"{hub.url}/hub/login")
        signed_in = self.browser.post(
            f"{hub.url}/hub/login?next=/hub/token",
            {"username": name, "password": PASSWORD, "_xsrf": self.browser.cookies["_xsrf"]},
        )
        assert signed_in.status_code == 200 and "/hub/token" in signed_in.url, signed_in.text[-400:]
        self.page = signed_in
        made = self.browser.post(
            f"{hub.url}/hub/api/users/{name}/tokens",
            headers={"X-XSRFToken": self.browser.cookies["_xsrf"], "Referer": f"{hub.url}/hub/"},
        )
        self.key = {"Authorization": f"token {made.json()['token']}"}

    def ask(self, path, method="GET", data=None):
        """The status, and what was answered."""
        answer = requests.request(
            method, f"{self.hub.url}{path}", headers=self.key, json=data, timeout=PATIENCE_S,
            allow_redirects=False, verify=self.hub.certificate,
        )  # fmt: skip
        try:
            return answer.status_code, answer.json()
        except ValueError:
            return answer.status_code, answer.text

    def spawn(self):
        """Ask for a server, and wait until it is there."""
        status, said = self.ask(f"/hub/api/users/{self.name}/server", "POST")
        assert status in (201, 202), said
        wait(lambda: self.ask(f"/user/{self.name}/api/status")[0] == 200)

    def kernel(self, at, path, id=""):
        """A notebook's kernel on a server, by the server's address and the notebook's path; or one
        that is there.
        """
        if not id:
            status, about = self.ask(f"{at}/api/kernels", "POST", {"path": path})
            assert status == 201, about
            id = about["id"]
        url = f"{self.hub.url}{at}/api/kernels/{id}/channels".replace("http", "ws", 1)
        line = websocket.create_connection(
            url, header=self.key, timeout=PATIENCE_S, sslopt={"ca_certs": self.hub.certificate}
        )
        return Kernel(line, id)

    def kernel_of(self, kernel):
        """What the server says of a kernel."""
        return self.ask(f"{self.at}/api/kernels/{kernel.id}")[1]


class Kernel:
    """Runs code as a notebook does."""

    def __init__(self, line, id):
        self.line, self.id = line, id

    def run(self, code, ends="ok"):
        """What it printed; it must end so."""
        name, printed = uuid.uuid4().hex, []
        content = {"code": code, "silent": False, "store_history": False, "allow_stdin": False}
        header = {"msg_id": name, "msg_type": "execute_request", "username": "", "session": name,
                  "version": "5.3"}  # fmt: skip
        message = {"header": header, "parent_header": {}, "metadata": {}, "content": content,
                   "channel": "shell"}  # fmt: skip
        self.line.send(json.dumps(message))
        waiting = {"reply", "idle"}  # which come by two lines, in any order
        while waiting:
            heard = json.loads(self.line.recv())
            if heard["parent_header"].get("msg_id") != name:
                continue
            if heard["msg_type"] == "stream":
                printed.append(heard["content"]["text"])
            if heard["msg_type"] == "display_data":
                printed.append(heard["content"]["data"]["text/plain"])
            if heard["msg_type"] == "execute_reply":
                assert heard["content"]["status"] == ends, heard["content"]
                waiting.discard("reply")
            if heard["msg_type"] == "status" and heard["content"]["execution_state"] == "idle":
                waiting.discard("idle")
        return "".join(printed).strip()


@pytest.fixture(scope="module")
def group(place, accounts):
    """A cohort whose learners are called as their accounts are, and the hub's settings for it."""
    holm, ada, ben = accounts
    root, shared, out = holm.home / "group", place / "srv/group", place / "srv/jupyterhub_config.py"
    rows = (
        "id,family name,given name",
        f"{ada.name},Lindqvist,Ada",
        f"{ben.name.upper()},Osei,Ben",
    )
    (holm.home / "roster.csv").write_text("\n".join(rows) + "\n")
    [port] = free_ports(1)
    at = ("--cohort", root)
    said = holm.twoshaft(
        ("cohort", "make", root, "--shared", shared),
        ("roster", "take", holm.home / "roster.csv", *at),
        ("module", "assign", MODULE, "--due", "2099-01-31", *at),
        ("hub", "settings", "--out", out, "--staff", STAFF, "--port", port, *at),
    )
    assert f"Wrote {out}" in said
    return SimpleNamespace(cohort=open_cohort(root), settings=out)


def free_ports(count):
    import socket

    probes = [socket.socket() for _ in range(count)]
    for probe in probes:
        probe.bind(("127.0.0.1", 0))
    ports = [probe.getsockname()[1] for probe in probes]
    for probe in probes:
        probe.close()
    return ports


def self_signed(folder):
    """A certificate for this machine's own address that signs itself, and its key: two files."""
    import datetime
    import ipaddress

    from cryptography import x509
    from cryptography.hazmat.primitives import hashes, serialization
    from cryptography.hazmat.primitives.asymmetric import ec

    key = ec.generate_private_key(ec.SECP256R1())
    name = x509.Name([x509.NameAttribute(x509.NameOID.COMMON_NAME, "127.0.0.1")])
    today = datetime.datetime.now(datetime.UTC)
    certificate = (
        x509.CertificateBuilder(name, name, key.public_key(), x509.random_serial_number())
        .not_valid_before(today - datetime.timedelta(days=1))
        .not_valid_after(today + datetime.timedelta(days=1))
        .add_extension(
            x509.SubjectAlternativeName([x509.IPAddress(ipaddress.ip_address("127.0.0.1"))]), False
        )
        .add_extension(x509.BasicConstraints(ca=True, path_length=0), True)
        .sign(key, hashes.SHA256())
    )
    pem = serialization.Encoding.PEM
    (folder / "hub.pem").write_bytes(certificate.public_bytes(pem))
    private = serialization.PrivateFormat.PKCS8, serialization.NoEncryption()
    (folder / "hub.key").write_bytes(key.private_bytes(pem, *private))
    (folder / "hub.key").chmod(0o600)
    return str(folder / "hub.pem"), str(folder / "hub.key")


@pytest.fixture(scope="module")
def hub(group, place, accounts):
    """A hub that runs with those settings, as root."""
    from course.browser import make

    make.install()
    folder = place / "hub"
    folder.mkdir(mode=0o700)
    node = Path(make._BIN) / "node"
    proxy = [str(node), str(make.MODULES / "configurable-http-proxy/bin/configurable-http-proxy")]
    ports, token = free_ports(3), uuid.uuid4().hex
    certificate, key = self_signed(folder)
    config = folder / "jupyterhub_config.py"
    more = MORE.format(
        password=PASSWORD, ports=ports, proxy=proxy, token=token, certificate=certificate, key=key
    )
    config.write_text(group.settings.read_text() + more)
    env = {
        "PATH": f"{node.parent}:/usr/bin:/bin", "HOME": str(folder), "LANG": "C.UTF-8",
        "PYTHONPATH": f"{place / 'program/course'}:{place / 'program/grader'}",
    }  # fmt: skip
    with (folder / "log").open("w") as log:
        program = subprocess.Popen(
            [sys.executable, "-m", "jupyterhub", "-f", config], cwd=folder, env=env,
            stdout=log, stderr=log, start_new_session=True,
        )  # fmt: skip
    running = SimpleNamespace(
        url=f"https://127.0.0.1:{ports[0]}", api=f"http://127.0.0.1:{ports[1]}", token=token,
        env=env, folder=folder, certificate=certificate,
    )  # fmt: skip

    def up():
        assert program.poll() is None, (folder / "log").read_text()[-3000:]
        try:
            answer = requests.get(f"{running.url}/hub/api", timeout=5, verify=certificate)
            return answer.status_code == 200
        except requests.ConnectionError:
            return False

    try:
        wait(up)
        yield running
    finally:
        own = [program.pid, *(one.pid for one in psutil.Process(program.pid).children(True))]
        program.terminate()
        try:
            program.wait(timeout=PATIENCE_S)
        finally:
            for pid in own:
                if psutil.pid_exists(pid):
                    psutil.Process(pid).kill()


PAGE = """
from twoshaft.jobsheet.startpage import start_here
page = start_here()
def does(**what):
    page.hear(what)
    print(page.trouble or page.said)
"""
ANSWER = f"""
import os
from twoshaft.jobsheet import open_sheet
sheet = open_sheet("{MODULE}", os.path.join(page.me["id"], "{NAME}"))
sheet.save("mic-zero", "0.01 mm")
print(page.me["name"])
"""


@pytest.fixture(scope="module")
def learners(hub, accounts):
    """Ada and Ben, signed in, each with a server and the start page open in a notebook."""
    _, ada, ben = accounts

    def comes(account):
        visitor = Visitor(hub, account.name)
        visitor.spawn()
        visitor.at = f"/user/{account.name}"
        visitor.notebook = visitor.kernel(visitor.at, "start-here.ipynb")
        visitor.notebook.run(PAGE)
        return visitor

    with ThreadPoolExecutor(2) as both:
        return tuple(both.map(comes, (ada, ben)))


@pytest.fixture(scope="module")
def staff(hub):
    visitor = Visitor(hub, STAFF)
    visitor.at = "/services/group"
    wait(lambda: visitor.ask(f"{visitor.at}/api/status")[0] == 200)
    return visitor


def test_from_getting_to_feedback_by_the_hubs_names(group, learners, staff, accounts):
    cohort, (holm, one, other) = group.cohort, accounts
    ada, ben = learners
    assert ada.notebook.run("print(page.me['id'], page.people, page.trouble)") == f"{one.name} []"
    assert ben.notebook.run("print(page.me['id'])") == other.name.upper()  # as the roster has it
    for visitor, name in ((ada, "Ada Lindqvist"), (ben, "Ben Osei")):
        assert "is here" in visitor.notebook.run(f"does(type='get', name='{NAME}')")
        assert visitor.notebook.run(ANSWER) == name
        handed_in = visitor.notebook.run(f"does(type='hand-in', name='{NAME}', own=True)")
        assert handed_in.startswith("Handed in") and "are still to be given" in handed_in

    desk = staff.kernel(staff.at, "")
    assert desk.run("import os; print(os.geteuid(), os.getcwd())") == f"{holm.uid} {cohort.root}"
    said = desk.run(
        "from twoshaft_grader.desk.commands import main\n"
        "print([main([word]) for word in ('collect', 'mark', 'give-back')])"
    )
    assert "2 new" in said and "2 marked" in said and said.endswith("[0, 0, 0]"), said
    assert read_mark(cohort.mark_file(one.name, NAME)).sheet.maximum > 0
    status, listed = staff.ask(f"{staff.at}/formgrader/api/assignments")
    assert status == 200 and [row["num_submissions"] for row in listed] == [2]

    assert ada.notebook.run("does(type='look')") == "The list is up to date."
    assert ada.notebook.run("print(page.entries[0]['state'])") == "feedback"
    page = ada.notebook.run("print(page.entries[0]['feedback'][0])")
    assert ada.ask(f"{ada.at}/api/contents/{page}")[0] == 200


def test_what_nobody_handed_in_is_taken_from_the_learners_folders(group, learners, staff, accounts):
    ada, _ = learners
    holm, one, _ = accounts
    ada.notebook.run(ANSWER.replace("0.01", "0.02"))
    desk = staff.kernel(staff.at, "")
    taking = "from twoshaft_grader.desk.commands import main\nprint(main(['collect', {}]))"
    said = desk.run(taking.format(f"'--from', {str(group.cohort.work)!r}"))
    assert "1 new, 1 known already" in said and said.endswith("1"), said
    # It came by the hands of staff, and from no account of hers.
    assert f"comes from account {holm.uid} of this system" in " ".join(said.split()), said
    said = desk.run(taking.format(f"'--take', {one.name!r}"))
    assert "1 newer" in said and said.endswith("0"), said


def test_nobody_reaches_anothers_server_or_folder(group, learners, staff, accounts):
    ada, ben = learners
    _, one, other = accounts
    assert ben.ask(f"{ada.at}/api/contents")[0] == ada.ask(f"{ben.at}/api/contents")[0] == 403
    assert ada.ask("/services/group/api/contents")[0] == 403
    assert staff.ask(f"{ada.at}/api/contents")[0] == 403  # nobody of staff loads a learner's page
    unknown = requests.get(f"{ada.hub.url}{ada.at}/api/contents", verify=ada.hub.certificate)
    assert unknown.status_code == 403
    sheet = group.cohort.place(one.name, NAME) / "jobsheet.json"
    assert sheet.stat().st_uid == one.uid and not other.can("-r", sheet)
    tried = f"try:\n    open({str(sheet)!r})\nexcept PermissionError:\n    print('closed')"
    assert ben.notebook.run(tried) == "closed"
    # what a notebook says of its name changes nothing about whose account it runs in
    lied = ben.notebook.run(
        "import os\n"
        f"os.environ['JUPYTERHUB_USER'] = {one.name!r}\n"
        "from twoshaft.jobsheet.startpage import _signed_in\n"
        "_signed_in.clear()\n"
        "print(start_here().trouble)\n"
        f"os.environ['JUPYTERHUB_USER'] = {other.name!r}"
    )
    assert lied.startswith("The folder of Ada Lindqvist belongs to another account")


def test_the_learners_server_is_as_the_course_wants_it(learners):
    ada, _ = learners
    assert ada.ask(f"{ada.at}/api/terminals")[0] == 404
    _, top = ada.ask(f"{ada.at}/api/contents/")
    assert sorted(one["name"] for one in top["content"]) == ["lessons", "start-here.ipynb"]
    answer = requests.get(
        f"{ada.hub.url}{ada.at}/lab/tree/start-here.ipynb", headers=ada.key,
        verify=ada.hub.certificate,
    )  # fmt: skip
    assert "http://" not in answer.text and "ws://" not in answer.text  # nothing but https
    assert "default-src 'self'" in answer.headers["Content-Security-Policy"]
    assert '"twoshaftRole": "apprentice"' in answer.text
    # No word is asked for, and none is taken.
    for what in ("does(type='sign-in', name='x', word='y')", "does(type='sign-out')"):
        assert "Your college's server says who works here" in ada.notebook.run(what)
    assert ada.notebook.run("print(bool(page.me['id']), repr(page.me['ticket']))") == "True ''"


def test_a_name_that_is_not_on_the_roster_gets_no_server(hub):
    stranger = Visitor(hub, "nobody")
    status, said = stranger.ask("/hub/api/users/nobody/server", "POST")
    assert status == 403 and "is not on the roster" in json.dumps(said, ensure_ascii=False)
    page = stranger.browser.get(f"{hub.url}/hub/spawn")
    assert page.status_code == 403 and "is not on the roster of this course" in page.text


def test_a_notebook_that_eats_memory_ends_alone(learners, accounts):
    ada, ben = learners
    eats = ada.kernel(ada.at, "lessons/eats.ipynb")
    others = {process.pid for process in accounts[1].processes()}
    for _ in range(2):  # it starts again, and has its memory again
        own = int(eats.run("import os; print(os.getpid())"))
        eaten = "eaten = []\nwhile True:\n    eaten.append(b'x' * 10_000_000)"
        assert eats.run(eaten, "error") == SENTENCE
        psutil.wait_procs([psutil.Process(own)] if psutil.pid_exists(own) else [], PATIENCE_S)
        assert not psutil.pid_exists(own)
        others.discard(own)
        eats = ada.kernel(ada.at, "", eats.id)
        assert eats.run("print('eaten' in globals())") == "False"
    assert others <= {process.pid for process in accounts[1].processes()}
    assert ada.notebook.run("print(1)") == ben.notebook.run("print(1)") == "1"
    whole = "import resource; print(resource.getrlimit(resource.RLIMIT_DATA))"
    assert ada.notebook.run(whole) == "(1572864000, 1572864000)"


def test_idle_servers_end_and_what_was_answered_stays(group, hub, learners, accounts):
    _, one, other = accounts
    for account in (one, other):
        memory = [process.memory_full_info().pss for process in account.processes()]
        most = max(
            int(line.split()[1])
            for process in account.processes()
            for line in Path(f"/proc/{process.pid}/status").read_text().splitlines()
            if line.startswith("VmData")
        )
        print(f"most that counts against a program's limit: {most / 1000:.0f} MB")
        print(f"memory of a learner: {sum(memory) / 1e6:.0f} MB in {len(memory)} processes")
    for visitor in learners:
        visitor.notebook.line.close()
    culler = subprocess.Popen(
        [sys.executable, "-m", "jupyterhub_idle_culler", f"--url={hub.api}/hub/api", "--timeout=1",
         "--cull-every=1"],
        env=hub.env | {"JUPYTERHUB_API_TOKEN": hub.token},
        stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL,
    )  # fmt: skip
    try:
        wait(lambda: not one.processes() and not other.processes())
    finally:
        culler.kill()
        culler.wait()
    assert "mic-zero" in (group.cohort.place(one.name, NAME) / "jobsheet.json").read_text()


# --- without a hub -----------------------------------------------------------------------------


def test_settings_that_cannot_work_are_refused_in_one_sentence(tmp_path, capsys, monkeypatch):
    def says(*words):
        assert main([str(word) for word in words]) == 2
        said = capsys.readouterr().err
        assert said.count("\n") == 1
        return said

    alone = tmp_path / "alone"
    main(["cohort", "make", str(alone)])
    at = ("--cohort", alone, "--out", tmp_path / "config.py")
    assert "all work in one account" in says("hub", "settings", *at)
    (alone.with_name("alone-shared") / "work").mkdir()  # as where each has an account
    (tmp_path / "roster.csv").write_text("id,family name,given name\n7b.x,Osei,Ben\nada,Lim,Ada\n")
    main(["roster", "take", str(tmp_path / "roster.csv"), "--cohort", str(alone)])
    capsys.readouterr()
    assert "no account of a system can be called 7b.x;" in says("hub", "settings", *at)
    (tmp_path / "roster.csv").write_text("id,family name,given name\nada,Lim,Ada\n")
    (alone / "roster.csv").write_text((tmp_path / "roster.csv").read_text())
    assert "ada would be learner and staff" in says("hub", "settings", "--staff", "ada", *at)
    assert not (tmp_path / "config.py").exists()
    for limited in (True, False):  # what is written is the same: it is the machine that keeps it
        monkeypatch.setattr("twoshaft_grader.desk.hub.memory_is_limited", lambda it=limited: it)
        assert main([str(word) for word in ("hub", "settings", "--staff", "holm", *at)]) == 0
        said = capsys.readouterr().out
        assert ("does not keep to a limit of memory" in said) != limited
        assert "mem_limit" in (tmp_path / "config.py").read_text()

    monkeypatch.setenv("JUPYTERHUB_USER", "zoe")
    desk = SignIn(alone.with_name("alone-shared") / "workplace")
    with pytest.raises(Exception, match="the name “zoe”, with which you signed in"):
        desk.arrive()
    assert desk.me is None and desk.people() == ()
