"""nbgrader, as a cohort folder uses it: configuration, gradebook and exchange."""

from __future__ import annotations

import contextlib
import errno
import re
import warnings
from collections.abc import Callable, Iterable, Iterator
from pathlib import Path
from typing import TYPE_CHECKING, Any

from twoshaft.errors import CohortError
from twoshaft_grader.cohort.clock import now, stamp
from twoshaft_grader.cohort.database import in_use, in_words, is_in_use
from twoshaft_grader.cohort.folder import CONFIG_FILE, Cohort
from twoshaft_grader.environment import tools_on_path
from twoshaft_grader.stored.lines import NBGRADER, NbgraderLine

if TYPE_CHECKING:  # nbgrader takes long to load: commands that only read go without it
    from nbgrader.api import Gradebook
    from nbgrader.apps.api import NbGraderAPI
    from traitlets.config import Config


def configuration(cohort: Cohort) -> Config:
    """Read the cohort folder's nbgrader configuration.

    Raises
    ------
    CohortError
        When it is missing or does not run.
    """
    from traitlets.config import PyFileConfigLoader
    from traitlets.config.loader import ConfigFileNotFound

    path = cohort.root / CONFIG_FILE
    try:
        return PyFileConfigLoader(CONFIG_FILE, path=str(cohort.root)).load_config()
    except ConfigFileNotFound:
        raise CohortError(
            "the file is not there", where=str(path), mend="put it back from a new cohort folder"
        ) from None
    except Exception as error:
        raise CohortError(
            f"the file does not run ({type(error).__name__}: {error})",
            where=str(path),
            mend="undo the last change in it",
        ) from error


def desk_api(cohort: Cohort) -> NbGraderAPI:
    """nbgrader's own functions, working on the cohort folder."""
    from nbgrader.apps.api import NbGraderAPI
    from nbgrader.coursedir import CourseDirectory

    from twoshaft_grader.cohort.release import exchange_classes

    tools_on_path()
    config = _placed(cohort)
    config.ExchangeFactory.update(exchange_classes())
    config.BaseConverter.permissions = 600
    with warnings.catch_warnings():
        warnings.simplefilter("ignore")
        api = NbGraderAPI(coursedir=CourseDirectory(config=config), config=config)
    return api


def release_pages(
    cohort: Cohort, assignment: str, *, learner: str = "*", but: Iterable[str] = ()
) -> dict[str, Any]:
    """Let nbgrader release the feedback pages of an assignment, of all or of one; as its own
    functions do, without loading all of them, which takes longer than releasing."""
    from nbgrader.coursedir import CourseDirectory
    from nbgrader.utils import capture_log

    from twoshaft_grader.cohort.release import feedback_release

    config = _placed(cohort)
    config.CourseDirectory.assignment_id = assignment
    config.CourseDirectory.student_id = learner
    config.CourseDirectory.student_id_exclude = ",".join(but)
    release = feedback_release()(coursedir=CourseDirectory(config=config), config=config)
    release.log.setLevel("INFO")
    told: dict[str, Any] = capture_log(release)
    return told


def _placed(cohort: Cohort) -> Config:
    """The cohort folder's configuration, with where the folder and its exchange are now."""
    config = configuration(cohort)
    config.CourseDirectory.root = str(cohort.root)
    config.CourseDirectory.db_url = cohort.database.url
    config.Exchange.root = str(cohort.exchange)
    return config


@contextlib.contextmanager
def gradebook(cohort: Cohort) -> Iterator[Gradebook]:
    """The cohort's gradebook, open.

    Raises
    ------
    CohortError
        When another program has it, the disk is full, it cannot be written or read, or its server
        does not answer.
    """
    from nbgrader.api import Gradebook, InvalidEntry
    from sqlalchemy.exc import DatabaseError, OperationalError, SAWarning

    tools_on_path()
    # nbgrader's models are older than the database library: its notes are no use to anybody here.
    warnings.filterwarnings("ignore", category=SAWarning, module="nbgrader")
    database = cohort.database
    try:
        with warnings.catch_warnings():
            warnings.simplefilter("ignore")
            book = Gradebook(database.url, cohort.id)
        with book:
            yield book
    except DatabaseError as error:
        raise in_words(error, database) from error
    except InvalidEntry as error:  # nbgrader says so of whatever keeps an entry from being stored
        if isinstance(why := error.__context__, OperationalError):
            raise in_words(why, database) from error
        raise


# As Python writes an OSError; with two names, the second is the one that was to be written.
_OF_THE_MACHINE = re.compile(r"\[Errno (\d+)\] ([^:\n]+)(?:: '([^'\n]+)')?(?: -> '([^'\n]+)')?")
_FULL = "database or disk is full"


def _raise_what_the_machine_said(said: str, place: Path) -> None:
    found = [one for one in _OF_THE_MACHINE.findall(said) if int(one[0]) in _STOPS]
    if found:
        number, what, one, other = found[-1]
        raise OSError(int(number), what, other or one or str(place))
    if _FULL in said:
        raise OSError(errno.ENOSPC, _FULL, str(place))


_STOPS = {errno.ENOSPC, errno.EDQUOT, errno.EFBIG, errno.EROFS, errno.EACCES, errno.EPERM}


def run(cohort: Cohort, doing: str, call: Callable[..., dict], *args: object, **kw: object) -> None:
    """Call one of nbgrader's functions; keep its log, and raise one sentence on failure.

    Parameters
    ----------
    doing : str
        What is being done, for the sentence: "handing out order-of-work-1".

    Raises
    ------
    CohortError
        With nbgrader's last line of error, and where its whole log is.
    OSError
        Where the machine stopped it, as a full disk does.
    """
    with warnings.catch_warnings():
        warnings.simplefilter("ignore")
        result = call(*args, **kw) or {"success": True}
    log = cohort.log("nbgrader")
    told = NbgraderLine(
        at=stamp(now()),
        doing=doing,
        success=bool(result["success"]),
        log=result.get("log") or "",
        error=result.get("error") or "",
    )
    NBGRADER.append(log, told)
    if not result["success"]:
        _raise_what_the_machine_said(f"{told.log}\n{told.error}", cohort.root)
        lines = [line for line in str(result.get("error", "")).splitlines() if line.strip()]
        if is_in_use(str(result.get("error", ""))):
            raise in_use(cohort.database)
        raise CohortError(
            f"{doing} failed ({lines[-1].strip() if lines else 'no reason was given'})",
            mend=f"see the last line of {log}",
        )
