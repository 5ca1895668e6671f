"""Take one learner out of a cohort: what is left says nothing of them.

The roster comes last: a run that was cut short is finished by the same command. Each step takes
away what is there, and is content where there is nothing.
"""

from __future__ import annotations

import contextlib
import csv
import io
import os
import re
from collections.abc import Callable, Iterator
from dataclasses import dataclass, replace
from pathlib import Path
from typing import TypeVar

from nbgrader.utils import notebook_hash

from twoshaft.errors import CohortError, CourseError
from twoshaft.stored.hostile import read_bytes
from twoshaft_grader.cohort import backbone, files
from twoshaft_grader.cohort.adjustments import forget_adjustments
from twoshaft_grader.cohort.back_up import back_ups_of
from twoshaft_grader.cohort.database import FILE as GRADEBOOK
from twoshaft_grader.cohort.folder import Cohort
from twoshaft_grader.cohort.give_back import SECRET_FILE
from twoshaft_grader.cohort.gradebook_move import KEPT
from twoshaft_grader.cohort.intake import roster_of, write_roster
from twoshaft_grader.cohort.not_done import NotDone
from twoshaft_grader.cohort.roster import Learner
from twoshaft_grader.cohort.trail import TAKE_OUT, act, redact
from twoshaft_grader.cohort.turn import dates_alone, roster_alone, turn
from twoshaft_grader.cohort.withdrawn import FILE as WITHDRAWN
from twoshaft_grader.cohort.withdrawn import withdrawn_of, write_withdrawn
from twoshaft_grader.cohort.workplace import list_people
from twoshaft_grader.stored.appeals import APPEALS
from twoshaft_grader.stored.definition import Log
from twoshaft_grader.stored.extensions import EXTENSIONS
from twoshaft_grader.stored.lines import CHANGES, MARK_LINES, NBGRADER
from twoshaft_grader.stored.moderation import MODERATION
from twoshaft_grader.stored.sittings import SITTINGS, Sitting, Sittings

T = TypeVar("T")
_TYPED = (".csv", ".html", ".json", ".jsonl", ".txt", ".yaml")
"""Endings of files in which people's words stand; a notebook's are the course's."""


@dataclass(frozen=True)
class TakenOut:
    """What remains to be done by hand.

    ``left``: what could not be taken away, and why. ``still``: files of the cohort in which the id
    or a part of the name stands still, as in a note about somebody else. ``back_ups``: files that
    hold everything as it was.
    """

    left: tuple[NotDone, ...]
    still: tuple[Path, ...]
    back_ups: tuple[Path, ...]


def take_out(cohort: Cohort, id: str, *, by: str = "") -> TakenOut:
    """Take a learner out: sheet, readings, marks, gradebook, feedback, receipts and logs.

    Raises
    ------
    CohortError
        When nobody has this id, or another run is under way.
    """
    # The act does not say whom: what is left says nothing of them.
    with act(cohort.root, TAKE_OUT, by=by) as told, turn(cohort), roster_alone(cohort):
        people, withdrawn = roster_of(cohort), withdrawn_of(cohort)
        who = next((one for one in [*people, *withdrawn] if one.id == id), None)
        if who is None:
            raise CohortError(f'nobody on the roster has the id "{id}"', mend="check the id")
        left: list[NotDone] = []
        others = [one for one in people if one.id != id]
        # The pages first: what names them goes with the rest.
        for path in (*_pages_in_exchange(cohort, id), *_places(cohort, id)):
            _away(path, left)
        _from_extensions(cohort, id)
        forget_adjustments(cohort, id)
        _from_gradebook(cohort, id)
        _from_exports(cohort, id)
        _from_logs(cohort, id)
        _from_records(cohort, id)
        told.after = redact(cohort.root, _as_word(id))
        _from_settings(cohort, id)
        list_people(cohort, others)
        for path in cohort.root.rglob(".*.part"):  # what a cut left half written
            _away(path, left)
        still = tuple(_mentions(cohort, who))
        told.keep()  # from here on a kill leaves nothing to do again, and so nobody to say it
        if not left:
            write_withdrawn(cohort, [one for one in withdrawn if one.id != id])
            write_roster(cohort, others)
        return TakenOut(tuple(left), still, tuple(back_ups_of(cohort)))


def _away(path: Path, left: list[NotDone]) -> None:
    try:
        files.remove(path)
    except OSError as error:
        what = error.filename or path
        left.append(NotDone(str(what), f"{(error.strerror or str(error)).lower()}."))


def _places(cohort: Cohort, id: str) -> Iterator[Path]:
    """Files and folders of a learner alone."""
    for name in ("submitted", "autograded", "feedback"):
        yield cohort.root / name / id
    for name in ("issued", "marks", "returned", "collected"):
        for folder in sorted((cohort.root / name).glob("*")):
            yield folder / f"{id}.json"
            yield folder / id
    yield cohort.root / "observations" / f"{id}.json"
    yield cohort.root / "own-folders" / id
    if cohort.inbound.is_dir():
        for name in sorted(os.listdir(cohort.inbound)):
            if name.partition("+")[0] == id:
                yield cohort.inbound / name
    yield cohort.work / id
    yield cohort.workplace / id


def _pages_in_exchange(cohort: Cohort, id: str) -> Iterator[Path]:
    """Released pages, which have no name on them but the digest of a secret that was handed in."""
    folder = cohort.exchange / cohort.id / "feedback"
    pages = {path.stem for path in cohort.feedback(id, "").glob("*/*.html")}
    pages |= {path.stem for path in (cohort.root / "release").glob("*/*.ipynb")}
    kept = [
        *(cohort.root / "submitted" / id).glob(f"*/{SECRET_FILE}"),
        *(cohort.root / "feedback" / id).glob(f"*/{SECRET_FILE}"),
        *(cohort.root / "collected").glob(f"*/{id}/*/{SECRET_FILE}"),
    ]
    for path in kept:
        with contextlib.suppress(OSError, ValueError):
            secret = read_bytes(path, 256).decode("ascii")
            names = pages | {one.stem for one in path.parent.glob("*.ipynb")}
            for page in sorted(names) if secret else ():
                yield folder / f"{notebook_hash(secret=secret, notebook_id=page)}.html"


def _from_extensions(cohort: Cohort, id: str) -> None:
    with dates_alone(cohort):
        known = EXTENSIONS.read_if_any(cohort.root / EXTENSIONS.file) or {}
        if any(id in dates for dates in known.values()):
            kept = {name: {k: v for k, v in d.items() if k != id} for name, d in known.items()}
            EXTENSIONS.write(cohort.root / EXTENSIONS.file, kept)


def _from_gradebook(cohort: Cohort, id: str) -> None:
    from nbgrader.api import MissingEntry
    from sqlalchemy import create_engine

    with backbone.gradebook(cohort) as book, contextlib.suppress(MissingEntry):
        book.remove_student(id)
    for before in cohort.root.glob(KEPT):  # as it was until it was moved
        files.remove(before)
    # A database keeps what was deleted until its room is used again.
    engine = create_engine(cohort.database.url, isolation_level="AUTOCOMMIT")
    with engine.connect() as opened:
        opened.exec_driver_sql("VACUUM")
    engine.dispose()


def _from_exports(cohort: Cohort, id: str) -> None:
    for path in sorted((cohort.root / "exports").rglob("*.csv")):
        with contextlib.suppress(UnicodeDecodeError, csv.Error):
            rows = list(csv.reader(io.StringIO(path.read_text(encoding="utf-8"), newline="")))
            if rows and "learner" in rows[0]:
                place = rows[0].index("learner")
                kept = [row for row in rows if len(row) <= place or row[place] != id]
                if len(kept) < len(rows):
                    out = io.StringIO()
                    csv.writer(out, lineterminator="\n").writerows(kept)
                    files.write_whole(path, out.getvalue())


def _from_logs(cohort: Cohort, id: str) -> None:
    named = _as_word(id)
    # What the first version logged, before there was a trail.
    before = list(files.read_lines(cohort.log("doings")))
    kept = [line for line in before if not named.search(files.json_line(line))]
    if kept != before:
        text = "".join(files.json_line(line) + "\n" for line in kept)
        files.write_whole(cohort.log("doings"), text)
    _rewrite(cohort, "changes", CHANGES, lambda line: None if line.learner == id else line)
    _rewrite(cohort, "marks", MARK_LINES, lambda line: None if line.learner == id else line)
    _rewrite(
        cohort, "nbgrader", NBGRADER,
        lambda line: None if named.search(f"{line.doing} {line.log} {line.error}") else line,
    )  # fmt: skip


def _rewrite(cohort: Cohort, name: str, log: Log[T], change: Callable[[T], T | None]) -> None:
    path = cohort.log(name)
    before = list(log.read(path))
    after = [one for line in before if (one := change(line)) is not None]
    if after != before:
        text = "".join(files.json_line(log.plain(line)) + "\n" for line in after)
        files.write_whole(path, text)


def _from_records(cohort: Cohort, id: str) -> None:
    """Appeals, second marks and supervised attempts."""
    place = cohort.root / APPEALS.file
    if (known := APPEALS.read_if_any(place)) and any(a.learner == id for a in known.appeals):
        others = tuple(one for one in known.appeals if one.learner != id)
        APPEALS.write(place, replace(known, appeals=others))
    place = cohort.root / MODERATION.file
    if drawn := MODERATION.read_if_any(place):
        less = replace(
            drawn,
            sample=tuple(one for one in drawn.sample if one.learner != id),
            marks=tuple(one for one in drawn.marks if one.learner != id),
        )
        if less != drawn:
            MODERATION.write(place, less)
    place = cohort.root / SITTINGS.file
    if (sat := SITTINGS.read_if_any(place)) and any(id in one.learners for one in sat.sittings):
        SITTINGS.write(place, Sittings(tuple(_sitting_without(id, one) for one in sat.sittings)))


def _sitting_without(id: str, sitting: Sitting) -> Sitting:
    return replace(
        sitting,
        learners=tuple(one for one in sitting.learners if one != id),
        waiting={one: names for one, names in sitting.waiting.items() if one != id},
        saved={one: saved for one, saved in sitting.saved.items() if one != id},
        handed_in={one: digest for one, digest in sitting.handed_in.items() if one != id},
        before={one: names for one, names in sitting.before.items() if one != id},
    )


def _from_settings(cohort: Cohort, id: str) -> None:
    """What JupyterLab keeps of open files; it is made anew."""
    named = _as_word(id).pattern.encode()
    for path in sorted((cohort.root / "settings").rglob("*")):
        if path.is_file() and (re.search(named, path.read_bytes()) or id in path.name):
            files.remove(path)


def _mentions(cohort: Cohort, who: Learner) -> Iterator[Path]:
    """Files of the cohort in which a learner's id or name stands."""
    names = (who.id, who.family_name, who.given_name)
    words = re.compile(
        rb"(?<!\w)(?:%s)(?!\w)" % b"|".join(re.escape(one.encode()) for one in names)
    )
    apart = {cohort.roster_file, cohort.root / WITHDRAWN, cohort.root / GRADEBOOK}
    for path in sorted({*cohort.root.rglob("*"), *cohort.shared.rglob("*")}):
        typed = path not in apart and path.suffix in _TYPED
        if typed and path.is_file() and not path.is_symlink():
            with contextlib.suppress(OSError, CourseError):
                if words.search(read_bytes(path, files.LARGEST)):
                    yield path


def _as_word(id: str) -> re.Pattern[str]:
    return re.compile(rf"(?<![A-Za-z0-9_.-]){re.escape(id)}(?![A-Za-z0-9_.-])")
