"""The database of a cohort's gradebook: a file in its folder, or one on a PostgreSQL server."""

from __future__ import annotations

from dataclasses import dataclass
from importlib.util import find_spec
from pathlib import Path
from typing import Any
from urllib.parse import parse_qsl, quote, urlencode, urlsplit

from twoshaft.errors import CohortError

FILE = "gradebook.db"
IN_THE_FILE = "file"
"""What people write for the file in the cohort folder, in the place of a server's URL."""
_SCHEME = "postgresql"
_DRIVER = "psycopg"
_WAITS = {"connect_timeout": "10", "options": "-c lock_timeout=5s"}
"""As long as for the file: who finds the gradebook in use is told soon."""
_AGAIN = "run the same command again"


@dataclass(frozen=True)
class Database:
    """Where a gradebook is.

    Attributes
    ----------
    url : str
        For SQLAlchemy, which nbgrader opens it with.
    place : str
        For people.
    """

    url: str
    place: str

    @property
    def on_server(self) -> bool:
        """Whether it is on a server."""
        return not self.url.startswith("sqlite:")


def database_of(root: Path, written: str) -> Database:
    """The database of a cohort folder.

    Parameters
    ----------
    root : Path
        The cohort folder.
    written : str
        The entry ``gradebook`` of ``cohort.yaml``; empty for the file.

    Raises
    ------
    CohortError
        When the entry will not do, or the driver is not installed.
    """
    if not written:
        path = root / FILE
        return Database(f"sqlite:///{path}", str(path))
    return _server(written)


def _server(written: str) -> Database:
    form = "write postgresql://NAME@HOST/DATABASE, or postgresql:///DATABASE for this machine's own"
    try:
        parts = urlsplit(written)
        host, port, user = parts.hostname or "", parts.port, parts.username or ""
    except ValueError:
        raise CohortError("the gradebook's URL cannot be read", mend=form) from None
    name = parts.path.strip("/")
    asked = dict(parse_qsl(parts.query))
    if parts.password is not None or "password" in asked:
        # A command line can be read by every account of the machine, and stays in its history.
        raise CohortError(
            "the gradebook's URL holds a password",
            mend="take it out, and write a line HOST:5432:DATABASE:NAME:PASSWORD into the file "
            ".pgpass in your home, which PostgreSQL reads if it is closed to others (chmod 600)",
        )
    if parts.scheme != _SCHEME or not name or "/" in name or parts.fragment:
        raise CohortError(f'the gradebook cannot be at "{written[:80]}"', mend=form)
    if find_spec(_DRIVER) is None:
        raise CohortError(
            "the gradebook is on a PostgreSQL server, and its driver is not installed here",
            mend=f'install it with pip install "{_DRIVER}[binary]" in the environment of the '
            "course, as README.md says",
        )
    at = f"{user}@" if user else ""
    where = f"[{host}]" if ":" in host else host
    where += f":{port}" if port else ""
    query = urlencode(_WAITS | asked, quote_via=quote)
    return Database(
        f"{_SCHEME}+{_DRIVER}://{at}{where}/{name}?{query}", f"{_SCHEME}://{at}{where}/{name}"
    )


def in_words(error: Any, database: Database) -> CohortError:
    """What an error of the database means to a person.

    Parameters
    ----------
    error : sqlalchemy.exc.DatabaseError
    """
    said = " ".join(str(error.orig).split())
    if database.on_server:
        state = getattr(error.orig, "sqlstate", None) or ""
        what, mend = next((words for sign, words in _SERVER.items() if state.startswith(sign)), _NO)
        if not state and "password" in said:
            what, mend = _SERVER["28"]
        return CohortError(f"{what} ({said[-200:]})", where=database.place, mend=mend)
    what, mend = next(
        (words for sign, words in _IN_FILE.items() if sign in said),
        (f"the gradebook cannot be used ({said})", "put the file back from a copy"),
    )
    return CohortError(what, where=database.place, mend=mend)


def is_in_use(said: str) -> bool:
    """Whether what nbgrader says of an error is that another program has the gradebook."""
    return "database is locked" in said or "LockNotAvailable" in said


def in_use(database: Database) -> CohortError:
    """That another program has the gradebook."""
    what, mend = _IN_USE
    return CohortError(what, where=database.place, mend=mend)


_IN_USE = ("another program has the gradebook", f"let that end, then {_AGAIN}")
# What the file says, and what that means to a person.
_IN_FILE = {
    "locked": _IN_USE,
    "full": ("the disk is full", f"make room, then {_AGAIN}"),
    "disk I/O error": ("the disk takes no more of it", f"make room, then {_AGAIN}"),
    "readonly": ("the gradebook is read-only", f"let it be written to, then {_AGAIN}"),
    "unable to open": ("the gradebook cannot be opened", f"let it be written to, then {_AGAIN}"),
}
# The same of a server, by the beginning of its SQLSTATE (PostgreSQL's manual, appendix A).
_SERVER = {
    "55P03": _IN_USE,
    "40": _IN_USE,
    "53": ("the gradebook's server has no room left", f"ask who looks after it, then {_AGAIN}"),
    "28": (
        "the gradebook's server does not let this account in",
        "see the name in the URL, and the line for it in the file .pgpass in your home",
    ),
    "3D": ("there is no such database on the gradebook's server", "make it with createdb"),
    "42501": (
        "the gradebook's server does not let this account write",
        "make the account the owner of the database",
    ),
}
_NO = (
    "the gradebook's server does not answer as it should",
    f"see that it runs and can be reached from here, then {_AGAIN}; what is stored is kept",
)
