"""The roster: who is in the cohort, from a table that somebody typed."""

from __future__ import annotations

import csv
import io
import re
import unicodedata
from collections.abc import Collection
from dataclasses import dataclass
from pathlib import Path

from twoshaft.errors import CohortError

COLUMNS = ("id", "family name", "given name", "group")
_REQUIRED = COLUMNS[:3]
_ID = re.compile(r"[A-Za-z0-9](?:[A-Za-z0-9_.-]*[A-Za-z0-9])?")
# Names that the workplace or an operating system keeps for itself.
_KEPT = {"lessons", "feedback", "practice", "con", "prn", "aux", "nul"} | {
    f"{port}{number}" for port in ("com", "lpt") for number in range(1, 10)
}
_LONGEST_ID, _LONGEST_NAME = 40, 80


@dataclass(frozen=True)
class Learner:
    """One line of the roster."""

    id: str
    family_name: str
    given_name: str
    group: str = ""

    @property
    def name(self) -> str:
        """Given name and family name."""
        return f"{self.given_name} {self.family_name}"


class RosterError(CohortError):
    """A roster that cannot be taken in; ``problems`` has one error for each place."""

    def __init__(self, problems: list[CohortError]) -> None:
        self.problems = tuple(problems)
        first = problems[0]
        super().__init__(first.what, where=first.where, mend=first.mend)

    @property
    def sentence(self) -> str:
        """One sentence for each problem, a line each."""
        return "\n".join(problem.sentence for problem in self.problems)


def read_roster(path: Path, *, encoding: str = "") -> list[Learner]:
    """Read a roster.

    Parameters
    ----------
    path : Path
        A CSV file with a heading line: id, family name, given name, group (group may be
        absent); cells parted by commas, semicolons or tabs.
    encoding : str
        UTF-8, with or without a byte order mark, unless another is named.

    Raises
    ------
    RosterError
        With one sentence for each problem: file, line, column and mend.
    """
    text = _decode(path, encoding)
    heading, rows = _split(path, text)
    problems: list[CohortError] = []
    learners: list[Learner] = []
    lines_of_id: dict[str, int] = {}
    for line, cells in rows:
        if len(cells) > len(heading):
            problems.append(
                CohortError(
                    f"{len(cells)} cells where the heading has {len(heading)}",
                    where=f"{path}, line {line}",
                    mend="put a name with a comma in it between double quotes",
                )
            )
            continue
        entry = dict(zip(heading, cells + [""] * (len(heading) - len(cells)), strict=True))
        found = [
            CohortError(what, where=f"{path}, line {line}, column {column}", mend=mend)
            for column in COLUMNS
            if column in entry
            for what, mend in _faults(column, entry[column])
        ]
        key = entry["id"].casefold()
        if not found and key in lines_of_id:
            found.append(
                CohortError(
                    f'the id "{entry["id"]}" stands in line {lines_of_id[key]} already',
                    where=f"{path}, line {line}, column id",
                    mend="give each learner an id of their own (capitals do not make a difference)",
                )
            )
        if found:
            problems.extend(found)
            continue
        lines_of_id[key] = line
        learners.append(
            Learner(entry["id"], entry["family name"], entry["given name"], entry.get("group", ""))
        )
    if not problems and not learners:
        problems.append(
            CohortError(
                "there is a heading and nobody under it",
                where=str(path),
                mend="add one line for each learner",
            )
        )
    if problems:
        raise RosterError(problems)
    return learners


def roster_text(learners: list[Learner]) -> str:
    """The roster as the cohort folder keeps it."""
    out = io.StringIO()
    writer = csv.writer(out, lineterminator="\n")
    writer.writerow(COLUMNS)
    for learner in learners:
        writer.writerow([learner.id, learner.family_name, learner.given_name, learner.group])
    return out.getvalue()


def chosen(learners: list[Learner], ids: Collection[str] = (), group: str = "") -> list[Learner]:
    """The learners of these ids and of a group; everybody where neither is named.

    Raises
    ------
    CohortError
        When nobody has one of the ids, or is in the group.
    """
    known = {one.id for one in learners}
    for id in ids:
        if id not in known:
            raise CohortError(f'nobody on the roster has the id "{id}"', mend="check the id")
    if group and not any(one.group == group for one in learners):
        groups = ", ".join(sorted({one.group for one in learners} - {""})) or "none"
        raise CohortError(f'nobody is in group "{group}"', mend=f"there are: {groups}")
    if not ids and not group:
        return learners
    return [one for one in learners if one.id in ids or (group and one.group == group)]


def checked(learner: Learner) -> Learner:
    """The learner, with single spaces, if somebody can be called so.

    Raises
    ------
    CohortError
        When not: which part, and what to do.
    """
    cells = dict(zip(COLUMNS, vars(learner).values(), strict=True))
    cells = {
        column: unicodedata.normalize("NFC", " ".join(cell.split()))
        for column, cell in cells.items()
    }
    for column, cell in cells.items():
        for what, mend in _faults(column, cell):
            raise CohortError(what, mend=mend)
    return Learner(*cells.values())


def _refuse(path: Path, what: str, mend: str, place: str = "") -> RosterError:
    return RosterError([CohortError(what, where=f"{path}{place}", mend=mend)])


def _decode(path: Path, encoding: str) -> str:
    try:
        data = path.read_bytes()
    except FileNotFoundError:
        raise _refuse(path, "the file is not there", "check its name") from None
    except OSError as error:
        reason = error.strerror or "unknown reason"
        raise _refuse(path, f"it cannot be read ({reason})", "name a file you may read") from None
    if data[:4] == b"PK\x03\x04" or data[:4] == b"\xd0\xcf\x11\xe0":
        raise _refuse(path, "this is a workbook, not a CSV file", 'save it as "CSV UTF-8"')
    if not encoding and data[:2] in (b"\xff\xfe", b"\xfe\xff"):
        raise _refuse(path, "the file is in UTF-16", 'save it as "CSV UTF-8"')
    try:
        text = data.decode(encoding or "utf-8-sig")
    except LookupError:
        raise _refuse(
            path,
            f'no encoding is called "{encoding}"',
            "name one as cp1252, or none for UTF-8",
        ) from None
    except UnicodeDecodeError as error:
        line = data.count(b"\n", 0, error.start) + 1
        word = re.split(rb"[,;\t\r\n]", data[: error.start])[-1]
        word += re.split(rb"[,;\t\r\n]", data[error.start :])[0]
        shown = word.decode("cp1252", errors="replace")
        raise _refuse(
            path,
            f'not UTF-8; read as Windows Western European it says "{shown}"',
            'save it as "CSV UTF-8", or say that its letters are cp1252, if that is so',
            f", line {line}",
        ) from None
    if "\0" in text:
        raise _refuse(path, "the file holds bytes that are no text", 'save it as "CSV UTF-8"')
    return unicodedata.normalize("NFC", text)


def _split(path: Path, text: str) -> tuple[list[str], list[tuple[int, list[str]]]]:
    first = next((line for line in text.splitlines() if line.strip(" \t,;")), "")
    if not first:
        raise _refuse(path, "the file is empty", f"begin with the heading {', '.join(COLUMNS)}")
    delimiter = max(",;\t", key=first.count)
    reader = csv.reader(io.StringIO(text, newline=""), delimiter=delimiter, strict=True)
    rows: list[tuple[int, list[str]]] = []
    before = 0
    try:
        for row in reader:
            if any(cell.strip() for cell in row):
                rows.append((before + 1, [" ".join(cell.split()) for cell in row]))
            before = reader.line_num
    except csv.Error:
        raise _refuse(
            path,
            "a double quote is opened and never closed, or stands inside a cell",
            "close it, or take it out",
            f", line {before + 1}",
        ) from None
    line, heading = rows[0]
    heading = [re.sub(r"[\s_-]+", " ", cell).strip().lower() for cell in heading]
    while heading and not heading[-1]:
        heading.pop()
    for name in _REQUIRED:
        if name not in heading:
            raise _refuse(
                path,
                f'no column is headed "{name}"',
                f"begin with the heading {', '.join(COLUMNS)}",
                f", line {line}",
            )
    for name in COLUMNS:
        if heading.count(name) > 1:
            raise _refuse(
                path, f'two columns are headed "{name}"', "keep one of them", f", line {line}"
            )
    width = len(heading)
    trimmed = []
    for number, cells in rows[1:]:
        while len(cells) > width and not cells[-1]:
            cells.pop()
        trimmed.append((number, cells))
    return heading, trimmed


def _faults(column: str, cell: str) -> list[tuple[str, str]]:
    if column == "group" and not cell:
        return []
    if not cell:
        return [(f"the {column} is missing", "fill it in")]
    if column == "id":
        if len(cell) > _LONGEST_ID:
            return [(f"the id is {len(cell)} letters long", f"use {_LONGEST_ID} at most")]
        if not _ID.fullmatch(cell):
            return [
                (
                    f'the id "{cell}" cannot name a folder',
                    "use letters a to z, digits, hyphen, underscore or point, and begin and end "
                    "with a letter or digit",
                )
            ]
        if cell.casefold().partition(".")[0] in _KEPT:
            return [(f'the id "{cell}" is kept for other use', "choose another id")]
        return []
    if len(cell) > _LONGEST_NAME:
        return [(f"the {column} is {len(cell)} letters long", f"use {_LONGEST_NAME} at most")]
    if any(unicodedata.category(letter).startswith("C") for letter in cell):
        return [(f"the {column} holds a sign that cannot be printed", "type it again")]
    return []
