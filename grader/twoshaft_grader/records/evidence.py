"""A sealed folder of evidence: work, readings, references, marks, feedback, versions and digests.

Whoever has it and this course marks the work again and sees that the result is the same. It holds
solutions and names, so it is for assessors alone. Its seal is the digest of the list of its files:
kept apart (on the trail, on paper), it shows that nothing in the folder was changed since.
"""

from __future__ import annotations

import hashlib
import json
import platform
import secrets
from collections.abc import Collection, Iterator
from dataclasses import dataclass
from importlib.metadata import PackageNotFoundError, version
from pathlib import Path

import twoshaft
from twoshaft import system
from twoshaft.errors import CohortError
from twoshaft.jobsheet.bench_unit import assigned_unit_source
from twoshaft.stored.assignment import UNIT
from twoshaft_grader.cohort import files
from twoshaft_grader.cohort.assign import Assigned, assigned_unit, assignments_of
from twoshaft_grader.cohort.clock import now, stamp
from twoshaft_grader.cohort.copy_in import copy_in
from twoshaft_grader.cohort.folder import Cohort
from twoshaft_grader.cohort.intake import roster_of
from twoshaft_grader.cohort.marks import MARKED, StoredMark, read_mark
from twoshaft_grader.cohort.not_done import NotDone, going_on
from twoshaft_grader.cohort.one_sheet import Work, mark_one
from twoshaft_grader.cohort.shared import CLOSED
from twoshaft_grader.cohort.trail import act, head_of, keep_head
from twoshaft_grader.records.rows import INVENTED
from twoshaft_grader.stored.assignment import ASSIGNMENT
from twoshaft_grader.stored.evidence import EVIDENCE, Evidence
from twoshaft_grader.stored.issued import read_issued

_README = """\
Evidence of marked work. For assessors alone: names and solutions are in it.

learners/ID/ASSIGNMENT/submitted     the work as it was handed in
                      /issued.json   the readings that the learner was issued
                      /reference.json  one full answer to every question, for these readings
                      /mark.json     the mark, with every answer, verdict and reason
                      /feedback      the page that was given back
assignments/ASSIGNMENT               the solution and the unit
cohort                               the rules of what is enough, the trail, observations, changes
SHA256SUMS                           a digest (SHA-256) of every file, as "sha256sum -c" reads it
evidence.json                        versions, and the digests once more

The seal is the digest of evidence.json: "sha256sum evidence.json" shows it.
"twoshaft verify FOLDER" compares every digest and marks the work again.
"""
SUMS = "SHA256SUMS"
_RESTS_ON = ("numpy", "scipy", "networkx", "pint", "msgspec", "nbgrader")
_OF_COHORT = (
    "rules.yaml", "unit.yaml", "roster.csv", "assessors.json", "appeals.json", "moderation.json",
    "log/trail.jsonl", "log/changes.jsonl", "log/marks.jsonl",
)  # fmt: skip


@dataclass(frozen=True)
class Verified:
    """What a check of an evidence folder found.

    Attributes
    ----------
    files, sheets : int
        How many files it lists, and how many sheets came to the same mark again.
    faults : tuple of str
        What is not as it was, a sentence each.
    told : tuple of str
        What could not be marked again, and why.
    seal : str
    """

    files: int
    sheets: int
    faults: tuple[str, ...]
    told: tuple[str, ...]
    seal: str


def write_evidence(
    cohort: Cohort,
    to: Path,
    *,
    learners: Collection[str] = (),
    assignments: Collection[str] = (),
    by: str = "",
) -> tuple[str, int, list[NotDone]]:
    """Write a sealed evidence folder; it appears under its name when it is whole.

    Parameters
    ----------
    learners, assignments : collection of str
        Only these; empty means all.

    Returns
    -------
    str, int, list of NotDone
        The seal, how many sheets are in it, and whose are not and why.

    Raises
    ------
    CohortError
        When the folder is there already, or nothing is marked.
    """
    to = to.expanduser().resolve()
    if to.exists():
        raise CohortError(f"{to} is there already", mend="give the name of a new folder")
    aside = to.with_name(f".{to.name}.{secrets.token_hex(4)}.part")
    left: list[NotDone] = []
    sheets: list[tuple[str, str]] = []
    with act(cohort.root, "seal evidence", to.name, by=by) as told:
        try:
            aside.mkdir(parents=True)
            system.make_closed(aside, CLOSED)
            for assigned in assignments_of(cohort):
                if assignments and assigned.name not in assignments:
                    continue
                _of_assignment(cohort, assigned, aside)
                for person in roster_of(cohort):
                    if not learners or person.id in learners:
                        with going_on(person.id, left):
                            if _of_sheet(cohort, assigned, person.id, aside):
                                sheets.append((person.id, assigned.name))
            if not sheets:
                raise CohortError("nothing like this is marked", mend="mark it first")
            _of_cohort(cohort, aside, {learner for learner, _ in sheets})
            files.write_whole(aside / "README.txt", _README)
            sums = "".join(f"{digest}  {name}\n" for name, digest in _digests(aside))
            files.write_whole(aside / SUMS, sums)
            about = Evidence(
                cohort=cohort.id, name=cohort.name, college=cohort.college, made=stamp(now()),
                people=INVENTED if cohort.invented else "", versions=_versions(),
                trail=str(head_of(cohort.root)), sheets=sheets, files=dict(_digests(aside)),
            )  # fmt: skip
            EVIDENCE.write(aside / EVIDENCE.file, about)
            seal = _digest(aside / EVIDENCE.file)
            files.move_into_place(aside, to)
        finally:
            files.remove(aside)
        told.after = f"{len(sheets)} sheets, seal {seal}"
    keep_head(cohort.root)
    return seal, len(sheets), left


def _of_assignment(cohort: Cohort, assigned: Assigned, aside: Path) -> None:
    source, target = cohort.source(assigned.name), aside / "assignments" / assigned.name
    for name in (assigned.notebook, ASSIGNMENT.file, UNIT):
        if (source / name).is_file():
            files.write_whole(target / name, (source / name).read_bytes())


def _of_sheet(cohort: Cohort, assigned: Assigned, learner: str, aside: Path) -> bool:
    """Copy what belongs to one marked sheet; whether there is one."""
    mark = read_mark(cohort.mark_file(learner, assigned.name))
    folder = cohort.submitted(learner, assigned.name)
    if mark is None or mark.sheet is None or not folder.is_dir():
        return False
    if files.folder_digest(folder) != mark.submission:
        raise CohortError(
            f"the work in {assigned.name} is not what the mark is of", mend="mark it first"
        )
    target = aside / "learners" / learner / assigned.name
    copy_in(folder, target / "submitted", without=frozenset(("feedback", ".ipynb_checkpoints")))
    for path, name in (
        (cohort.issued(learner, assigned.name), "issued.json"),
        (cohort.mark_file(learner, assigned.name), "mark.json"),
    ):
        if path.is_file():
            files.write_whole(target / name, path.read_bytes())
    for page in sorted(cohort.feedback(learner, assigned.name).glob("*.html")):
        files.write_whole(target / "feedback" / page.name, page.read_bytes())
    if not assigned.code_outcome:
        _reference(cohort, assigned, learner, target)
    return True


def _reference(cohort: Cohort, assigned: Assigned, learner: str, target: Path) -> None:
    from twoshaft_grader.marking import load_solution, solve

    source = cohort.source(assigned.name)
    unit = assigned_unit(cohort, assigned)
    issued = read_issued(cohort.issued(learner, assigned.name))
    full = solve(load_solution(source / assigned.notebook), issued, unit)
    text = json.dumps(full, ensure_ascii=False, indent=1)
    files.write_whole(target / "reference.json", text + "\n")


def _of_cohort(cohort: Cohort, aside: Path, learners: Collection[str]) -> None:
    seen = (f"observations/{learner}.json" for learner in learners)
    for name in (*_OF_COHORT, *seen):
        if (cohort.root / name).is_file():
            files.write_whole(aside / "cohort" / name, (cohort.root / name).read_bytes())


def _versions() -> dict[str, str]:
    found = {"twoshaft": twoshaft.__version__, "python": platform.python_version()}
    for name in _RESTS_ON:
        try:
            found[name] = version(name)
        except PackageNotFoundError:
            continue
    return found


def _digests(folder: Path) -> Iterator[tuple[str, str]]:
    for path in sorted(folder.rglob("*")):
        name = path.relative_to(folder).as_posix()
        if name != EVIDENCE.file and (path.is_symlink() or not path.is_dir()):
            yield name, "a link" if path.is_symlink() else _digest(path)


def _digest(path: Path) -> str:
    return hashlib.sha256(path.read_bytes()).hexdigest()


def is_evidence(folder: Path) -> bool:
    """Whether a folder is one of sealed evidence."""
    return (folder / EVIDENCE.file).is_file()


def verify_evidence(folder: Path, *, seal: str = "") -> Verified:
    """Compare every digest of an evidence folder, and mark its work again.

    Parameters
    ----------
    seal : str
        As it was told when the folder was made; without, only what is in the folder is compared.

    Raises
    ------
    CohortError
        When it is no evidence folder.
    """
    folder = folder.expanduser().resolve()
    if not is_evidence(folder):
        raise CohortError(f"{folder} is no evidence folder", mend="name the one that was sealed")
    about = EVIDENCE.read(folder / EVIDENCE.file)
    faults: list[str] = []
    own = _digest(folder / EVIDENCE.file)
    if seal and seal != own:
        faults.append(f"the seal of the folder is {own}, not the one that was given.")
    there = dict(_digests(folder))
    for name, digest in about.files.items():
        if name not in there:
            faults.append(f"{name} is not there.")
        elif there[name] != digest:
            faults.append(f"{name} was changed.")
    faults += [f"{name} was put into it." for name in there if name not in about.files]
    told: list[str] = []
    same = 0
    for learner, name in about.sheets if not faults else ():
        why = _marked_again(folder, learner, name)
        if not why:
            same += 1
        elif why.startswith("not marked again"):
            told.append(f"{learner} {name}: {why}.")
        else:
            faults.append(f"{learner} {name}: {why}.")
    if faults and not same and about.sheets:
        told.append("nothing was marked again, since the folder is not as it was sealed.")
    return Verified(len(about.files), same, tuple(faults), tuple(told), own)


def _marked_again(folder: Path, learner: str, name: str) -> str:
    """How a sheet's mark differs from the one that it earns now; empty where it is the same."""
    source, mine = folder / "assignments" / name, folder / "learners" / learner / name
    stored = read_mark(mine / "mark.json")
    about = ASSIGNMENT.read(source / ASSIGNMENT.file)
    if about.code_outcome:
        return "not marked again: it is marked by running the learner's code"
    if stored is None or stored.sheet is None or stored.state != MARKED:
        return "not marked again: the work cannot be read"
    [notebook] = source.glob("*.ipynb")
    result = mark_one(
        Work(
            learner,
            str(mine / "submitted"),
            str(mine / "issued.json"),
            str(notebook),
            assigned_unit_source(source, about.unit, about.unit_digest),
            str(folder / "cohort" / "rules.yaml"),
        )
    )
    if result.sheet is None:
        return f"it cannot be marked: {result.trouble}"
    return _difference(stored, result.sheet)


def _difference(stored: StoredMark, sheet: object) -> str:
    from twoshaft_grader.marking.result import SheetMark

    before = stored.sheet
    assert before is not None and isinstance(sheet, SheetMark)
    if before == sheet:
        return ""
    if before.points != sheet.points:
        return f"it earns {sheet.points:g} points, and {before.points:g} were given"
    fields = [
        one.name for one, other in zip(before.fields, sheet.fields, strict=False) if one != other
    ]
    if fields:
        return f"the points are the same, and what is said of {fields[0]} is not"
    if before.outcomes != sheet.outcomes:
        return "the points are the same, and the rules of what is enough are not"
    return "points and fields are the same, and what else the mark says is not"
