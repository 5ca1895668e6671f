"""Settings of a JupyterHub for a cohort: one server a learner, the desk for staff."""

from __future__ import annotations

import os
import re
import subprocess
import sys
from collections.abc import Collection
from pathlib import Path

from twoshaft.errors import CohortError
from twoshaft.jupyter.startpage import START
from twoshaft_grader.cohort import files
from twoshaft_grader.cohort.folder import Cohort
from twoshaft_grader.cohort.roster import Learner
from twoshaft_grader.cohort.shared import OPENER
from twoshaft_grader.desk_pages.notebook import DESK

# What Debian's useradd lets a name be (its NAME_REGEX); a hub turns capitals into small letters.
_ACCOUNT = re.compile(r"[a-z_][a-z0-9_-]{0,31}")

_CONFIG = """\
# Settings of a JupyterHub for the cohort {id}. Change what your college needs.
# Start it as root, in a folder that nobody else can read: jupyterhub -f {out}
import sys

from twoshaft.jupyter.hub import only_learners

c = get_config()  # noqa: F821 - given by the configuration loader

# How people sign in is the college's: here with the accounts of this machine and their passwords.
# Anybody who gets in under a name of the roster works as that learner.
c.JupyterHub.authenticator_class = "pam"
c.Authenticator.allow_all = True  # a server gets only who is on the roster, below
c.JupyterHub.bind_url = "http://127.0.0.1:8000"  # behind a web server that speaks https, or:
# c.JupyterHub.bind_url = "https://hub.college.example:443"
# c.JupyterHub.ssl_cert = "/etc/ssl/hub.college.example.pem"
# c.JupyterHub.ssl_key = "/etc/ssl/private/hub.college.example.key"
# Learners' pages apart from each other and from the desk, once there is such a name:
# c.JupyterHub.subdomain_host = "https://hub.college.example"

# A server for each learner, in the learner's own account: the course as open-course opens it.
# No program of a learner, so no notebook, gets more memory than mem_limit.
c.JupyterHub.spawner_class = "twoshaft.jupyter.hub_spawner.LearnersSpawner"
c.Spawner.mem_limit = "1500M"
c.Spawner.cmd = [{opener!r}, "--no-browser"]
c.Spawner.default_url = "/lab/tree/{start}"
c.Spawner.pre_spawn_hook = only_learners({shared!r})
c.Spawner.environment = {{"OPENBLAS_NUM_THREADS": "1"}}
c.Spawner.start_timeout = 120
c.Spawner.http_timeout = 120

# The desk: one server in the instructor's account, for whoever is in nbgrader's group for it.
c.JupyterHub.load_groups = {{"formgrade-{id}": {{"users": {staff!r}}}}}
c.JupyterHub.load_roles = [
    {{
        "name": "formgrade-{id}",
        "groups": ["formgrade-{id}"],
        "scopes": ["access:services!service={id}"],
    }},
    {{
        "name": "idle-culler",
        "services": ["idle-culler"],
        "scopes": ["list:users", "read:users:activity", "read:servers", "delete:servers"],
    }},
]
c.JupyterHub.services = [
    {{
        "name": "{id}",
        "url": "http://127.0.0.1:{port}",
        "command": {desk!r},
        "user": {account!r},
        "cwd": {root!r},
        "environment": {{"HOME": {home!r}, "JUPYTERHUB_DEFAULT_URL": "/lab/tree/{first}"}},
        "oauth_no_confirm": True,
    }},
    # Servers that nobody has used for an hour end; what is answered is saved.
    {{
        "name": "idle-culler",
        "command": [sys.executable, "-m", "jupyterhub_idle_culler", "--timeout=3600"],
    }},
]
"""


def memory_is_limited() -> bool:
    """Whether this machine keeps to the limit of a learner's memory."""
    tried = "from twoshaft import system; system.limit_memory(10**8); bytearray(2 * 10**8)"
    done = subprocess.run([sys.executable, "-c", tried], capture_output=True, text=True)
    return "MemoryError" in done.stderr


def hub_settings(
    cohort: Cohort, learners: list[Learner], out: Path, *, staff: Collection[str], port: int
) -> None:
    """Write the configuration file.

    Parameters
    ----------
    staff : collection of str
        Names under which staff sign in to the hub.
    port : int
        Of this machine alone, for the desk.

    Raises
    ------
    CohortError
        When learners of the cohort work in one account, a learner or somebody of the staff has a
        name that no account can have, or is both.
    """
    import getpass

    if not cohort.own_accounts:
        raise CohortError(
            "learners of this cohort all work in one account, and on a hub each has their own",
            mend='make a cohort with "twoshaft cohort make FOLDER --shared PLACE"',
        )
    account = getpass.getuser()
    if cohort.root.stat().st_uid != os.geteuid():
        raise CohortError(
            f"the cohort folder {cohort.root} is not this account's", mend="let its owner do this"
        )
    wrong = [one.id for one in learners if not _ACCOUNT.fullmatch(one.id.casefold())]
    wrong += [name for name in staff if not _ACCOUNT.fullmatch(name)]
    if wrong:
        raise CohortError(
            f"no account of a system can be called {', '.join(wrong)}",
            mend="use ids of small letters, digits, - and _ that begin with a letter, 32 at most",
        )
    both = sorted({one.id.casefold() for one in learners} & {account, *staff})
    if both:
        raise CohortError(
            f"{', '.join(both)} would be learner and staff at once",
            mend="let staff sign in under another name",
        )
    desk = [
        sys.executable, "-P", "-m", "twoshaft_grader.desk", "open", "--as", "staff",
        "--no-browser", "--cohort", str(cohort.root),
    ]  # fmt: skip
    text = _CONFIG.format(
        id=cohort.id,
        out=out.name,
        opener=str(cohort.shared / OPENER),
        shared=str(cohort.shared),
        start=START,
        first=DESK,
        staff=sorted(staff),
        port=port,
        desk=desk,
        account=account,
        home=str(Path.home()),
        root=str(cohort.root),
    )
    files.write_whole(out, text)
