"""A PostgreSQL server of our own, on loopback, for as long as the tests run."""

import os
import shutil
import socket
import subprocess
import tempfile
from dataclasses import dataclass
from itertools import count
from pathlib import Path

import pytest

PASSWORD = "copper-heron"


@dataclass
class PostgreSQL:
    """A running server; ``holm`` gets in with a password, which the account's .pgpass has."""

    folder: Path
    port: int
    tools: Path
    account: dict

    def run(self, tool, *words, **more):
        command = [self.tools / tool, *words]
        return subprocess.run(command, check=True, capture_output=True, **self.account, **more)

    def say(self, sql, database="postgres"):
        """SQL, as the server's own account, through its socket."""
        self.run("psql", "-qX", "-h", self.folder, "-p", str(self.port), "-d", database, "-c", sql)

    def start(self):
        options = f"-c listen_addresses=127.0.0.1 -p {self.port} -k {self.folder} -F"
        self.run("pg_ctl", "-w", "-D", self.folder / "data", "-o", options,
                 "-l", self.folder / "log", "start")  # fmt: skip

    def stop(self):
        self.run("pg_ctl", "-w", "-D", self.folder / "data", "-m", "immediate", "stop")

    def database(self, like="template0"):
        """A new database of holm's; its URL."""
        name = f"book{next(_NUMBERS)}"
        self.say(f"CREATE DATABASE {name} OWNER holm TEMPLATE {like}")
        return f"postgresql://holm@127.0.0.1:{self.port}/{name}"


_NUMBERS = count(1)


def found_tools():
    """Where PostgreSQL's programs are, as Debian puts them; None where it is not installed."""
    places = sorted(Path("/usr/lib/postgresql").glob("*/bin"), reverse=True)
    if found := shutil.which("initdb"):
        places.append(Path(found).parent)
    return next((place for place in places if (place / "initdb").exists()), None)


def free_port():
    with socket.socket() as probe:
        probe.bind(("127.0.0.1", 0))
        return probe.getsockname()[1]


@pytest.fixture(scope="session")
def postgresql(tmp_path_factory):
    tools = found_tools()
    if tools is None:
        why = "PostgreSQL is missing (Debian: apt install postgresql)"
        if os.environ.get("CI") == "true":
            pytest.fail(f"{why}: in CI this must run", pytrace=False)
        pytest.skip(why)
    folder = Path(tempfile.mkdtemp(prefix="ts-pg-", dir="/tmp"))  # a socket's path must be short
    account = {}
    if os.geteuid() == 0:  # the server refuses to run as root
        account = {"user": "postgres", "group": "postgres", "extra_groups": []}
        shutil.chown(folder, "postgres", "postgres")
    server = PostgreSQL(folder, free_port(), tools, account | {"cwd": folder})
    server.run("initdb", "-D", folder / "data", "-A", "trust", "-N", "-E", "UTF8", "--locale=C")
    (folder / "data/pg_hba.conf").write_text(
        "local all all trust\nhost all all 127.0.0.1/32 scram-sha-256\n"
    )
    server.start()
    passes = tmp_path_factory.mktemp("home") / "pgpass"
    passes.write_text(f"127.0.0.1:{server.port}:*:holm:{PASSWORD}\n")
    passes.chmod(0o600)
    before = os.environ.get("PGPASSFILE")
    os.environ["PGPASSFILE"] = str(passes)
    try:
        server.say(f"CREATE ROLE holm LOGIN PASSWORD '{PASSWORD}'")
        yield server
    finally:
        os.environ.pop("PGPASSFILE") if before is None else os.environ.update(PGPASSFILE=before)
        server.stop()
        shutil.rmtree(folder)
