"""Move a cohort's gradebook from its file to a PostgreSQL server, or back: whole or not at all."""

from __future__ import annotations

import contextlib
from collections.abc import Iterator
from dataclasses import dataclass
from typing import TYPE_CHECKING, Any

import psutil

from twoshaft.errors import CohortError
from twoshaft_grader.cohort import files
from twoshaft_grader.cohort.backbone import gradebook
from twoshaft_grader.cohort.clock import now
from twoshaft_grader.cohort.database import FILE as GRADEBOOK
from twoshaft_grader.cohort.database import IN_THE_FILE, Database, database_of, in_words
from twoshaft_grader.cohort.folder import CONFIG_DATABASE, CONFIG_FILE, Cohort
from twoshaft_grader.cohort.trail import act
from twoshaft_grader.cohort.turn import turn
from twoshaft_grader.stored.cohort import FILE as COHORT_FILE
from twoshaft_grader.stored.cohort import set_gradebook

if TYPE_CHECKING:
    from sqlalchemy import Connection, MetaData, Table

_BEFORE = "c.CourseDirectory.db_url = f\"sqlite:///{here / 'gradebook.db'}\"\n"
"""As cohort folders were made before a gradebook could be on a server."""
KEPT = "gradebook-until-*.db"
"""Where the file is kept after a move."""
_AT_A_TIME = 1000
_VERSION = "alembic_version"


@dataclass(frozen=True)
class Moved:
    """What was moved: rows of each table; where the gradebook is now, and where it was."""

    rows: dict[str, int]
    to: str
    kept: str


def move_gradebook(cohort: Cohort, to: str, *, by: str = "") -> Moved:
    """Copy every table, compare every row, and only then let all commands use the copy.

    Parameters
    ----------
    to : str
        A URL as :func:`.database.database_of` reads it, or ``file``.

    Raises
    ------
    CohortError
        When another program works in the cohort, the other database is no empty one, or a row is
        not there as it was. Nothing is changed then.
    """
    written = "" if to == IN_THE_FILE else to
    here, there = cohort.database, database_of(cohort.root, written)
    if here.place == there.place:
        raise CohortError(f"the gradebook is at {there.place} already")
    with (
        act(cohort.root, "move the gradebook", by=by, before=here.place) as told,
        turn(cohort),
    ):
        told.after = there.place
        _nobody_looks(cohort)
        text = _configuration(cohort)
        with gradebook(cohort):
            pass  # a cohort without learners has none yet
        rows = copy_gradebook(here, there, alone=True)
        files.write_whole(cohort.root / CONFIG_FILE, text)
        set_gradebook(cohort.root / COHORT_FILE, written)
        kept = here.place
        if not here.on_server:  # so that nothing goes on with it by mistake
            aside = cohort.root / KEPT.replace("*", f"{now():%Y-%m-%d-%H%M%S}")
            files.move_into_place(cohort.root / GRADEBOOK, aside)
            kept = str(aside)
    return Moved(rows, there.place, kept)


def copy_gradebook(here: Database, there: Database, *, alone: bool) -> dict[str, int]:
    """Copy every table into an empty database and compare every row; rows by table.

    All that is written stands at once, or nothing does. A database that holds the very same
    already, as after a move that was cut short, is left as it is.

    Parameters
    ----------
    alone : bool
        Whether nobody may write meanwhile; else the copy is as the gradebook was at one moment.

    Raises
    ------
    CohortError
        When one of the two cannot be used, or the other is no empty one.
    """
    tables = _known_tables()
    with _open(here) as source, _open(there) as target:
        if alone:
            _let_nobody_write(source, tables)
        _as_known(source, tables, here)
        empty = not _names(target) & set(tables.tables)
        if empty:
            tables.create_all(target)
            for table in tables.sorted_tables:
                _copy(table, source, target)
        for table in tables.sorted_tables:
            if _rows(table, source) != _rows(table, target):
                what = "what was copied is not as it was" if empty else "that database is not empty"
                raise CohortError(
                    f"{what} (table {table.name}), so nothing is moved",
                    where=there.place,
                    mend="name an empty database, as createdb makes one",
                )
        return {table.name: len(_rows(table, source)) for table in tables.sorted_tables}


def see_that_empty(database: Database) -> None:
    """See that a database can be reached and holds no gradebook yet; CohortError if not."""
    with _open(database) as connection:
        if _names(connection):
            raise CohortError(
                "that database is not empty",
                where=database.place,
                mend="name an empty one, as createdb makes it",
            )


def _known_tables() -> MetaData:
    """The tables of nbgrader's gradebook, and the one that says which version of them it is."""
    from nbgrader.api import Base
    from sqlalchemy import Column, MetaData, String, Table

    tables = MetaData()
    for table in Base.metadata.sorted_tables:
        table.to_metadata(tables)
    Table(_VERSION, tables, Column("version_num", String(32), nullable=False))
    return tables


@contextlib.contextmanager
def _open(database: Database) -> Iterator[Connection]:
    """A database in one transaction."""
    from sqlalchemy import create_engine
    from sqlalchemy.exc import DatabaseError

    level = {"isolation_level": "REPEATABLE READ"} if database.on_server else {}
    engine = create_engine(database.url, **level)
    try:
        with engine.begin() as connection:
            yield connection
    except DatabaseError as error:
        raise in_words(error, database) from error
    finally:
        engine.dispose()


def _names(connection: Connection) -> set[str]:
    from sqlalchemy import inspect

    return set(inspect(connection).get_table_names())


def _as_known(source: Connection, tables: MetaData, where: Database) -> None:
    """See that the gradebook has the tables and columns that this nbgrader knows, and no others."""
    from sqlalchemy import inspect

    about = inspect(source)
    known = {table.name: set(table.columns.keys()) for table in tables.sorted_tables}
    found = {
        name: {column["name"] for column in about.get_columns(name)}
        for name in about.get_table_names()
    }
    if found != known:
        other = sorted(name for name in known | found if known.get(name) != found.get(name))
        raise CohortError(
            f"the gradebook is not as this version of nbgrader has it (table {other[0]})",
            where=where.place,
            mend='bring it up to date with "nbgrader db upgrade" in the cohort folder',
        )


def _let_nobody_write(source: Connection, tables: MetaData) -> None:
    if source.dialect.name == "sqlite":
        source.exec_driver_sql("BEGIN IMMEDIATE")
    else:
        quote = source.dialect.identifier_preparer.quote
        names = ", ".join(quote(name) for name in tables.tables)
        source.exec_driver_sql(f"LOCK TABLE {names} IN SHARE MODE")


def _copy(table: Table, source: Connection, target: Connection) -> None:
    for some in source.execute(table.select()).mappings().partitions(_AT_A_TIME):
        target.execute(table.insert(), [dict(row) for row in some])


def _rows(table: Table, connection: Connection) -> list[str]:
    """Every row in words, sorted here: two databases do not sort texts alike."""
    return sorted(repr(tuple(row)) for row in connection.execute(table.select()))


def _configuration(cohort: Cohort) -> str:
    """The cohort folder's nbgrader configuration, asking the cohort for the database."""
    path = cohort.root / CONFIG_FILE
    text: str = path.read_text(encoding="utf-8").replace(_BEFORE, CONFIG_DATABASE)
    if CONFIG_DATABASE not in text:
        raise CohortError(
            "nbgrader's own commands would go on with another gradebook",
            where=str(path),
            mend=f"have it say {CONFIG_DATABASE.strip()}",
        )
    return text


def _nobody_looks(cohort: Cohort) -> None:
    """See that no JupyterLab of staff is open: it would go on with the gradebook as it was."""
    for path in (cohort.root / "settings" / "staff").rglob("jpserver-*.json"):
        about: dict[str, Any] = files.read_json(path)
        if psutil.pid_exists(int(about.get("pid", 0) or 0)):
            raise CohortError(
                "the staff's JupyterLab is open on this cohort, and would use the old gradebook",
                mend="end it with Ctrl C, then run the same command again",
            )
