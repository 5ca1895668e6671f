"""The cohort folder: one group of learners, their work and their marks.

::

    cohort.yaml             who they are, which unit, the salt of their readings
    nbgrader_config.py      lets every nbgrader command work in this folder
    rules.yaml              what is enough for an outcome, where the college has its own rules
    safety-sources.yaml     where cautions can be read up, where the college has its own sources
    roster.csv              learners
    sign-in-slips.csv       sign-in words, for the instructor alone
    source/ release/        assignments, as nbgrader names them
    submitted/ autograded/ feedback/   learner / assignment
    collected/              every hand-in as it arrived, per assignment and learner
    gradebook.db            nbgrader's database, if it is not on a server
    issued/                 readings as issued, per assignment and learner
    marks/                  marks per assignment and learner, with verdicts
    extensions.json         later due dates of single learners
    observations/           what assessors saw, per learner
    returned/               marks as given back, per assignment and learner
    unit.yaml               the college's own unit, where it has one
    settings/               of the JupyterLab that the open command starts
    kept/                   worked out once; made again where it is missing
    exports/ log/           what went out; what was done when

It is open to the instructor's account alone. What learners reach lies apart (:mod:`.shared`); in
folders of the first format ``workplace`` and ``exchange`` are in here.
"""

from __future__ import annotations

import os
import re
import secrets
from dataclasses import asdict, dataclass
from datetime import tzinfo
from pathlib import Path
from zoneinfo import ZoneInfo, ZoneInfoNotFoundError

from twoshaft import DEFAULT_UNIT, system
from twoshaft.errors import CohortError, CourseError
from twoshaft.outcomes.rules import RULES
from twoshaft.stored.assignment import UNIT
from twoshaft.stored.safety_sources import OWN_SOURCES
from twoshaft_grader.cohort import files
from twoshaft_grader.cohort.database import Database, database_of
from twoshaft_grader.cohort.shared import CLOSED, WORK, find_shared, make_shared
from twoshaft_grader.cohort.trail import act
from twoshaft_grader.stored.cohort import FILE as COHORT_FILE
from twoshaft_grader.stored.cohort import CohortEntries, read_cohort, write_cohort

LONGEST_ID = 40
_COHORT_ID = re.compile(r"[a-z0-9]+(-[a-z0-9]+)*")
_FOLDERS = (
    "source", "release", "submitted", "autograded", "feedback", "issued", "marks",
    "exports", "log",
)  # fmt: skip

DEMO_SALT = "tarnbeck-demo"
CONFIG_FILE = "nbgrader_config.py"
CONFIG_DATABASE = "c.CourseDirectory.db_url = open_cohort(here).database.url\n"
_CONFIG_VERSION = "# Version 2 of this file.\n"
_CONFIG = """\
# Lets every nbgrader command, and the Formgrader, work in this folder.
from pathlib import Path

from twoshaft_grader.cohort.folder import open_cohort
from twoshaft_grader.cohort.release import exchange_classes
from twoshaft_grader.notebooks import RELEASE_PREPROCESSORS, SANITIZE_PREPROCESSORS

here = Path(__file__).resolve().parent
c = get_config()  # noqa: F821 - given by the configuration loader

c.CourseDirectory.course_id = {id!r}
c.CourseDirectory.root = str(here)
c.CourseDirectory.db_url = open_cohort(here).database.url
c.Exchange.root = str(open_cohort(here).exchange)
c.Exchange.timezone = "UTC"
c.NbGraderAPI.timezone = {timezone!r}
# Several learners share one account on a workshop machine, so the owner of a file says nothing.
c.ExchangeCollect.check_owner = False
c.ExchangeFactory.update(exchange_classes())
c.BaseConverter.permissions = 600
c.ExecutePreprocessor.timeout = 120
c.ExecutePreprocessor.startup_timeout = 120
# The job sheet is the answer: no file of the source may ever replace it.
c.Autograde.exclude_overwriting = {{
    folder.name: ["jobsheet.json"] for folder in (here / "source").glob("*") if folder.is_dir()
}}
# Reference working leaves the notebook before anything else is done to it.
c.GenerateAssignment.preprocessors = RELEASE_PREPROCESSORS
# Autograde runs the notebook that was released with the learner's job sheet, and nothing else.
c.Autograde.sanitize_preprocessors = SANITIZE_PREPROCESSORS
c.AsReleased.root = str(here)
c.ExportApp.plugin_class = "twoshaft_grader.records.export.OutcomeExport"
"""


@dataclass(frozen=True)
class Cohort:
    """A cohort folder, found and read.

    Attributes
    ----------
    root : Path
        The folder.
    id, name, college : str
        The id is also nbgrader's course id.
    salt : str
        Goes into every learner's readings; nothing depends on its being secret.
    unit : str
        Id of a shipped unit, or path of a unit file relative to the folder.
    timezone : str
        IANA name; due dates are meant in it.
    content : str
        Folder that holds ``solutions/``; empty: the source checkout this program runs from.
    shared : Path
        The folder of what learners may reach.
    gradebook : str
        URL of the gradebook on a PostgreSQL server; empty: the file in this folder.
    """

    root: Path
    id: str
    name: str
    college: str
    salt: str
    unit: str
    timezone: str = "UTC"
    content: str = ""
    shared: Path = Path()
    gradebook: str = ""

    @property
    def database(self) -> Database:
        """The gradebook's database."""
        return database_of(self.root, self.gradebook)

    @property
    def invented(self) -> bool:
        """Whether it is the demo's, whose people are invented."""
        return self.salt == DEMO_SALT

    @property
    def zone(self) -> tzinfo:
        """The cohort's time zone."""
        return ZoneInfo(self.timezone)

    @property
    def roster_file(self) -> Path:
        """The roster as taken in."""
        return self.root / "roster.csv"

    @property
    def workplace(self) -> Path:
        """Root of the apprentices' JupyterLab."""
        return self.shared / "workplace"

    @property
    def own_accounts(self) -> bool:
        """Whether each learner works in an account of their own."""
        return self.shared != self.root and (self.shared / WORK).is_dir()

    @property
    def work(self) -> Path:
        """The folder of the learners' own folders."""
        return self.shared / WORK if self.own_accounts else self.workplace

    @property
    def exchange(self) -> Path:
        """nbgrader's exchange."""
        return self.shared / "exchange"

    @property
    def inbound(self) -> Path:
        """Where handed-in work arrives."""
        return self.exchange / self.id / "inbound"

    def outbound(self, assignment: str) -> Path:
        """Where a released assignment waits to be fetched."""
        return self.exchange / self.id / "outbound" / assignment

    def source(self, assignment: str) -> Path:
        """The instructor's version of an assignment."""
        return self.root / "source" / assignment

    def submitted(self, learner: str, assignment: str) -> Path:
        """Collected work."""
        return self.root / "submitted" / learner / assignment

    def collected(self, learner: str, assignment: str) -> Path:
        """Every hand-in of a learner as it arrived; the list of them has this name and .json."""
        return self.root / "collected" / assignment / learner

    def feedback(self, learner: str, assignment: str) -> Path:
        """Feedback pages, in nbgrader's place for them."""
        return self.root / "feedback" / learner / assignment

    def issued(self, learner: str, assignment: str) -> Path:
        """The readings that the learner was issued."""
        return self.root / "issued" / assignment / f"{learner}.json"

    @property
    def rules(self) -> Path:
        """The college's own rules of what is enough; most cohorts have none."""
        return self.root / RULES

    @property
    def safety_sources(self) -> Path:
        """Where the college says that cautions can be read up; most cohorts have none."""
        return self.root / OWN_SOURCES

    @property
    def order_levels(self) -> Path:
        """What was worked out of orders; made again where it is not there."""
        return self.root / "kept" / "order-levels.json"

    def mark_file(self, learner: str, assignment: str) -> Path:
        """The learner's stored mark."""
        return self.root / "marks" / assignment / f"{learner}.json"

    def place(self, learner: str, assignment: str) -> Path:
        """The learner's own copy."""
        return self.work / learner / assignment

    def log(self, name: str) -> Path:
        """A log of JSON lines."""
        return self.root / "log" / f"{name}.jsonl"

    @property
    def unit_source(self) -> str:
        """What to load the unit from: a shipped id, or the path of the cohort's own file."""
        own = self.root / self.unit
        return str(own) if own.is_file() else self.unit


def machine_timezone() -> str:
    """IANA name of this machine's time zone, UTC where it cannot be told."""
    name = os.environ.get("TZ", "").lstrip(":")
    if not name:
        link = Path("/etc/localtime")
        name = str(link.resolve()).partition("zoneinfo/")[2] if link.is_symlink() else ""
    try:
        ZoneInfo(name or "UTC")
    except (ZoneInfoNotFoundError, ValueError):
        return "UTC"
    return name or "UTC"


def make_cohort(
    root: Path,
    *,
    id: str = "",
    name: str = "",
    college: str = "",
    unit: str = DEFAULT_UNIT,
    timezone: str = "",
    content: str = "",
    salt: str = "",
    shared: Path | None = None,
    gradebook: str = "",
    by: str = "",
) -> Cohort:
    """Make a cohort folder, and beside it its shared place.

    Parameters
    ----------
    root : Path
        The folder to make; it may exist if it is empty.
    id : str
        Short id in lower-case letters, digits and hyphens; made from the folder's name if empty.
    name, college, unit, timezone, content, salt : str
        See :class:`Cohort`; an empty salt is drawn at random. A unit file is copied into the
        folder.
    shared : Path, optional
        The shared place, for learners who each work in an account of their own. Without, it lies
        beside the folder, with ``-shared`` in its name, for one account alone.
    gradebook : str
        URL of a database on a PostgreSQL server for the gradebook; without, it is a file in the
        folder.
    by : str
        Who makes it, for the trail; the account's name where empty.

    Raises
    ------
    CohortError
        When a folder is in use, lies inside another cohort folder, or the id will not do; or when
        other accounts could not get to the shared place.
    UnitFileError
        When the unit's file does not stand without the files beside it.
    """
    root = root.expanduser().resolve()
    if root.exists() and (not root.is_dir() or any(root.iterdir())):
        what = "is a cohort folder already" if (root / COHORT_FILE).exists() else "is not empty"
        raise CohortError(f"{root} {what}", mend="give the name of a new folder")
    for parent in root.parents:
        if (parent / COHORT_FILE).exists():
            raise CohortError(
                f"{root} lies inside the cohort folder {parent}", mend="choose a place outside it"
            )
    id = id or re.sub(r"[^a-z0-9]+", "-", root.name.lower()).strip("-")
    check_id(id)
    place = shared.expanduser().resolve() if shared else root.with_name(f"{root.name}-shared")
    if place == root or root in place.parents or place in root.parents:
        raise CohortError(
            f"{place} and the cohort folder lie one within the other",
            mend="name a shared place apart from it",
        )
    database_of(root, gradebook)
    own_unit = Path(unit).read_bytes() if Path(unit).is_file() else None
    timezone = timezone or machine_timezone()
    _check_timezone(timezone, where="the time zone")
    salt = salt or secrets.token_hex(8)
    root.mkdir(parents=True, exist_ok=True)
    system.make_closed(root, CLOSED)
    if own_unit is not None:
        unit = _keep_unit(root, own_unit)
    make_shared(place, cohort=id, salt=salt, own_accounts=shared is not None)
    for folder in _FOLDERS:
        (root / folder).mkdir(exist_ok=True)
    write_config(root, id, timezone)
    entries = CohortEntries(
        id=id, name=name or id, college=college, unit=unit, salt=salt, timezone=timezone,
        content=content, shared=str(place), gradebook=gradebook,
    )  # fmt: skip
    with act(root, "make the cohort", id, by=by):
        write_cohort(root / COHORT_FILE, entries)
    return open_cohort(root)


def check_id(id: str) -> None:
    """See that a cohort can have this id.

    Raises
    ------
    CohortError
        When it cannot.
    """
    if not _COHORT_ID.fullmatch(id) or len(id) > LONGEST_ID:
        raise CohortError(
            f'the cohort id "{id[:60]}" will not do',
            mend="give an id in lower-case letters, digits and single hyphens, "
            f"{LONGEST_ID} at most",
        )


def write_config(root: Path, id: str, timezone: str) -> None:
    """Write what nbgrader's own commands and pages need to know of the folder."""
    files.write_whole(root / CONFIG_FILE, config_text(id, timezone))


def config_text(id: str, timezone: str) -> str:
    """The text of nbgrader's configuration."""
    return _CONFIG_VERSION + _CONFIG.format(id=id, timezone=timezone)


def config_is_ours(root: Path) -> bool:
    """Whether nbgrader's configuration in a folder is of this version; a college may add to it."""
    try:
        return (root / CONFIG_FILE).read_text(encoding="utf-8").startswith(_CONFIG_VERSION)
    except (OSError, UnicodeDecodeError):
        return True  # told where it is needed


def _keep_unit(root: Path, text: bytes) -> str:
    """Copy a unit's file into the folder; it must stand without the files beside the original."""
    from twoshaft.units import load_unit

    files.write_whole(root / UNIT, text)
    try:
        load_unit(root / UNIT)
    except CourseError:
        files.remove(root / UNIT)
        raise
    return UNIT


def open_cohort(root: Path) -> Cohort:
    """Read a cohort folder.

    Raises
    ------
    CohortError
        When ``cohort.yaml`` is missing or has an entry that cannot be used.
    """
    root = root.expanduser().resolve()
    path = root / COHORT_FILE
    if not path.is_file():
        raise CohortError(
            f"{root} is no cohort folder (it has no {COHORT_FILE})",
            mend="name the folder of a cohort, or put the file back from a copy",
        )
    entries = read_cohort(path)
    _check_timezone(entries.timezone, where=f"{path}, timezone")
    shared = find_shared(root, entries.shared, cohort=entries.id, salt=entries.salt)
    return Cohort(root=root, **asdict(entries) | {"shared": shared})


def find_cohort(start: Path) -> Cohort:
    """Find the cohort folder from ``start`` upwards.

    Raises
    ------
    CohortError
        When there is none.
    """
    start = start.expanduser().resolve()
    for folder in (start, *start.parents):
        if (folder / COHORT_FILE).is_file():
            return open_cohort(folder)
    raise CohortError(
        f"no cohort folder at {start} or above it",
        mend='go into one, name one with --cohort, or make one with "twoshaft cohort make FOLDER"',
    )


def _check_timezone(name: str, *, where: str) -> None:
    try:
        ZoneInfo(name)
    except (ZoneInfoNotFoundError, ValueError, OSError):
        raise CohortError(
            f'no time zone is called "{name}"', where=where, mend="write one such as Europe/Dublin"
        ) from None
