"""The trail: who did what at the desk, when, and why; lines are added and never changed.

Each line of ``log/trail.jsonl`` holds the digest of the line before it, so one that is taken away,
changed or moved shows. A cut-off end shows by the head, number and digest of the last line, which
is kept apart: beside the trail, with the exports, and on what is handed over.

An act that is under way has a file in ``log/under-way``, and a lock that the system ends with its
program: what was killed half-way is written down by the next act.
"""

from __future__ import annotations

import contextlib
import getpass
import hashlib
import json
import re
import secrets
from collections.abc import Callable, Iterator
from dataclasses import dataclass, replace
from pathlib import Path

from filelock import FileLock, Timeout

from twoshaft.errors import CohortError, CourseError
from twoshaft.stored.writing import append_text
from twoshaft_grader.cohort import files
from twoshaft_grader.cohort.clock import now, stamp
from twoshaft_grader.stored.trail import CUT_SHORT, HEAD, REDACTED, TRAIL, UNDER_WAY, Act, Head

FILE, HEAD_FILE, EXPORTED = "log/trail.jsonl", "log/trail-head.json", "exports/trail-head.json"
_UNDER_WAY, _LOCK = "log/under-way", "log/trail.lock"
_PATIENCE_S = 30


@dataclass
class Told:
    """What is to be said of an act that is under way; it may be filled in as it goes.

    ``keep()`` writes down what it says so far: a kill after that leaves a line that says it.
    """

    what: str = ""
    before: str = ""
    after: str = ""
    keep: Callable[[], None] = lambda: None


@dataclass(frozen=True)
class Line:
    """A line of the trail: its act, its digest, and where in the file it stands, from 1."""

    act: Act
    digest: str
    place: int


@dataclass(frozen=True)
class Checked:
    """What a check of the trail found.

    Attributes
    ----------
    acts : tuple of Act
    head : Head
    faults : tuple of str
        What shows that lines were taken away, changed or moved; a sentence each.
    told : tuple of str
        What is no fault of anybody: a cut, a clock that was put back.
    """

    acts: tuple[Act, ...]
    head: Head
    faults: tuple[str, ...]
    told: tuple[str, ...]


@contextlib.contextmanager
def act(
    root: Path, did: str, what: str = "", *, by: str = "", before: str = "", why: str = ""
) -> Iterator[Told]:
    """Do something at the desk, and write it down once it is done.

    What is refused (:class:`CourseError`) has no line; what the machine stops has one that says so.

    Parameters
    ----------
    root : Path
        The cohort folder.
    by : str
        Who; the account's name where empty.
    """
    told = Told(what, before)
    name = account()

    def so_far(ended: str = "") -> Act:
        return Act(
            at=stamp(now()), by=_clean(by) or name, account=name, did=did,
            what=_clean(told.what), before=_clean(told.before), after=_clean(told.after),
            why=_clean(why), ended=ended,
        )  # fmt: skip

    file = root / _UNDER_WAY / f"{secrets.token_hex(8)}.json"
    file.parent.mkdir(parents=True, exist_ok=True)
    lock = FileLock(file.with_suffix(".lock"))
    with lock:
        UNDER_WAY.write(file, so_far())
        told.keep = lambda: UNDER_WAY.write(file, so_far())
        try:
            yield told
        except CourseError:
            file.unlink(missing_ok=True)
            if any(_is_dead(path) for path, _ in _begun(root)):
                _append(root)
            raise
        except BaseException as error:
            with contextlib.suppress(OSError):  # else the next act writes it down
                _append(root, so_far(f"stopped: {type(error).__name__}"))
                file.unlink(missing_ok=True)
            raise
        else:
            _append(root, so_far())
            file.unlink(missing_ok=True)
        finally:
            if not file.exists():
                file.with_suffix(".lock").unlink(missing_ok=True)


def account() -> str:
    """The name of this account of the system."""
    try:
        return getpass.getuser()
    except (OSError, KeyError, ImportError):  # a machine that has no name for it
        return "unknown"


def read_trail(root: Path) -> list[Line]:
    """The lines of the trail that can be read, as they stand.

    Raises
    ------
    CohortError
        When a line is of a newer format.
    """
    path = root / FILE
    if not path.exists():
        return []
    found = []
    for place, text in enumerate(path.read_bytes().split(b"\n"), 1):
        with contextlib.suppress(ValueError):
            data = json.loads(text)
            try:
                line = TRAIL.of(data, f"{path}, line {place}")
            except CohortError:
                if isinstance(data, dict) and data.get("format", 1) != TRAIL.format:
                    raise
                continue
            digest = line.digest if line.did == REDACTED else hashlib.sha256(text).hexdigest()
            found.append(Line(line, digest, place))
    return found


def head_of(root: Path) -> Head:
    """How far the trail has come."""
    return _end(read_trail(root), HEAD.read_if_any(root / HEAD_FILE))


def keep_head(root: Path) -> Head:
    """Keep the head with the exports, and say what it is."""
    head = head_of(root)
    HEAD.write(root / EXPORTED, head)
    return head


def read_head(text: str) -> Head:
    """A head as it is printed, number and digest with a colon between.

    Raises
    ------
    CohortError
        When it is none.
    """
    number, _, digest = text.strip().partition(":")
    if not number.isdecimal() or not set(digest) <= set("0123456789abcdef") or len(digest) != 64:
        raise CohortError(
            f'"{text[:80]}" is no head of a trail',
            mend="write number and digest with a colon between, as they stand in the export",
        )
    return Head(int(number), digest)


def check_trail(root: Path, *heads: Head) -> Checked:
    """Look whether the trail is as it was written.

    Parameters
    ----------
    heads : Head
        From exports and papers, beside those that the folder keeps.

    Raises
    ------
    CohortError
        When a line or a kept head is of a newer format.
    """
    lines = read_trail(root)
    faults: list[str] = []
    told: list[str] = []
    number, digest, at = 0, "", ""
    for line in lines:
        one = line.act
        where = f"line {line.place} of the trail (act {one.number})"
        if one.number != number + 1:
            faults.append(f"{where} comes after act {number}: {_what_of(number, one.number)}.")
        elif one.previous != digest:
            faults.append(f"{where} does not follow from act {number}: act {number} was changed.")
        if one.at < at:
            told.append(f"{where} is dated {one.at}, before the act above it: the clock went back.")
        if one.ended:
            told.append(f"{where}, {one.did} {one.what} by {one.by}: {one.ended}.")
        number, digest, at = one.number, line.digest, one.at
    known = {line.act.number: line.digest for line in lines}
    kept = [(path, HEAD.read_if_any(root / path)) for path in (HEAD_FILE, EXPORTED)]
    for where, head in [*kept, *(("the head that was given", head) for head in heads)]:
        if head is None or head.number == 0:
            continue
        if head.number > number:
            faults.append(f"the trail ends at act {number}, and {where} knows act {head.number}: "
                          "its end was cut off.")  # fmt: skip
        elif known.get(head.number) != head.digest:
            faults.append(f"act {head.number} is not the one that {where} knows.")
    blank = sum(line.act.did == REDACTED for line in lines)
    cut = [one for path, one in _begun(root) if _is_dead(path)]
    if blank:
        acts = (*(line.act for line in lines), *cut)
        said = [one.after for one in acts if one.did == TAKE_OUT and one.after]
        if said[-1:] == [_redacted(blank)]:
            told.append(f"{_redacted(blank)}, with learners who were taken out.")
        else:
            faults.append(f"{_redacted(blank)}, and no act of taking a learner out says so many.")
    if lines and kept[0][1] is None:
        faults.append(f"{HEAD_FILE} is not there, so a cut-off end would not show.")
    torn = _torn(root, lines)
    told += [f"line {place} of the trail was torn by a cut." for place in torn]
    for one in cut:
        told.append(f"{one.did} {one.what} by {one.by}, begun {one.at}, was cut short; "
                    "the next act writes it down.")  # fmt: skip
    return Checked(tuple(line.act for line in lines), _end(lines, kept[0][1]), tuple(faults),
                   tuple(told))  # fmt: skip


def forget(root: Path) -> None:
    """Take the trail away: of a copy for study, which says of nobody what they did."""
    for name in (FILE, HEAD_FILE, _UNDER_WAY, _LOCK):
        files.remove(root / name)


TAKE_OUT = "take a learner out"


def redact(root: Path, named: re.Pattern[str]) -> str:
    """Take the words out of every line that names somebody; number and digests stay, so that the
    chain still holds. Returns how many lines are redacted now, as the act of taking out says it.
    """
    with FileLock(root / _LOCK, timeout=_PATIENCE_S):
        lines, texts = read_trail(root), []
        for line in lines:
            one = line.act
            said = " ".join((one.what, one.before, one.after, one.why, one.by))
            if one.did != REDACTED and named.search(said):
                one = Act(
                    number=one.number, at=one.at, by="", account="", did=REDACTED,
                    previous=one.previous, digest=line.digest,
                )  # fmt: skip
            texts.append((one, line))
        if any(one is not line.act for one, line in texts):
            kept = (root / FILE).read_bytes().split(b"\n")
            for one, line in texts:
                if one is not line.act:
                    kept[line.place - 1] = files.json_line(TRAIL.plain(one)).encode()
            files.write_whole(root / FILE, b"\n".join(kept))
        for path, one in _begun(root):
            if named.search(" ".join((one.what, one.after, one.why))) and _is_dead(path):
                files.remove(path)
    return _redacted(sum(one.did == REDACTED for one, _ in texts))


def _redacted(count: int) -> str:
    return f"{count} lines of the trail redacted"


def _what_of(before: int, number: int) -> str:
    if number <= before:
        return "lines were moved, or stand there twice"
    missing = number - before - 1
    return "an act was taken away" if missing == 1 else f"{missing} acts were taken away"


def _append(root: Path, *acts: Act) -> None:
    """Add acts, after those that were killed half-way."""
    with FileLock(root / _LOCK, timeout=_PATIENCE_S):
        dead = [(path, one) for path, one in _begun(root) if _is_dead(path)]
        lines = read_trail(root)
        # A cut-off end stays to be seen: the chain goes on from the head that is kept.
        head = _end(lines, HEAD.read_if_any(root / HEAD_FILE))
        texts = []
        for one in [*(replace(one, ended=CUT_SHORT) for _, one in dead), *acts]:
            one = replace(one, number=head.number + 1, previous=head.digest)
            texts.append(files.json_line(TRAIL.plain(one)))
            head = Head(one.number, hashlib.sha256(texts[-1].encode()).hexdigest())
        append_text(root / FILE, texts)
        HEAD.write(root / HEAD_FILE, head)
        for path, _ in dead:
            path.unlink(missing_ok=True)
            path.with_suffix(".lock").unlink(missing_ok=True)


def _end(lines: list[Line], kept: Head | None) -> Head:
    """The last act that is known: in the file, or by the head that is kept."""
    last = Head(lines[-1].act.number, lines[-1].digest) if lines else Head(0, "")
    return kept if kept and kept.number >= last.number else last


def _torn(root: Path, lines: list[Line]) -> list[int]:
    read = {line.place for line in lines}
    if not (root / FILE).exists():
        return []
    texts = (root / FILE).read_bytes().split(b"\n")
    return [place for place, text in enumerate(texts, 1) if text.strip() and place not in read]


def _begun(root: Path) -> Iterator[tuple[Path, Act]]:
    """Acts that are under way, or were when their program ended."""
    for path in sorted((root / _UNDER_WAY).glob("*.json")):
        with contextlib.suppress(CohortError):  # its program is writing or removing it just now
            yield path, UNDER_WAY.read(path)


def _is_dead(path: Path) -> bool:
    lock = FileLock(path.with_suffix(".lock"))
    try:
        lock.acquire(timeout=0)
    except Timeout:
        return False
    except OSError:  # a folder that is only to be read
        return False
    lock.release()
    return path.exists()


def _clean(text: str) -> str:
    """One line of text that can be written in UTF-8."""
    return " ".join(text.encode("utf-8", "replace").decode().split())
