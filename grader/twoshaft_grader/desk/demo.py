"""The demo cohort: twelve invented apprentices, from the roster to the export."""

from __future__ import annotations

import shutil
from collections.abc import Callable
from dataclasses import replace
from datetime import datetime, time, timedelta
from pathlib import Path

from twoshaft import system
from twoshaft.errors import CohortError
from twoshaft.jobsheet import handin
from twoshaft.jobsheet.receipts import read_receipts
from twoshaft.stored.job_sheet import FILE as SHEET
from twoshaft.stored.own_work import OWN_WORK
from twoshaft.stored.person import Person
from twoshaft.stored.receipts import RECEIPTS, Receipts
from twoshaft_grader.cohort import files
from twoshaft_grader.cohort.assign import Assigned, assign, assigned_unit
from twoshaft_grader.cohort.clock import now, stamp
from twoshaft_grader.cohort.collect import collect
from twoshaft_grader.cohort.content import find_content
from twoshaft_grader.cohort.extensions import extend_due
from twoshaft_grader.cohort.folder import DEMO_SALT, Cohort, make_cohort, open_cohort
from twoshaft_grader.cohort.give_back import give_back
from twoshaft_grader.cohort.intake import take_in
from twoshaft_grader.cohort.marking_run import NOT_HANDED_IN, Done, mark_assignment
from twoshaft_grader.cohort.workplace import sign_in_words
from twoshaft_grader.desk.bar import Bar
from twoshaft_grader.desk.call import command
from twoshaft_grader.desk.demo_answers import demo_answers, sheet_text
from twoshaft_grader.desk.demo_people import APPRENTICES, COHORT, COLLEGE, FREE, Apprentice, Way
from twoshaft_grader.marking import load_solution
from twoshaft_grader.records.export import export_cohort
from twoshaft_grader.stored.cohort import FILE as COHORT_FILE
from twoshaft_grader.stored.cohort import read_cohort, write_cohort
from twoshaft_grader.stored.handed_in import TIMESTAMP
from twoshaft_grader.stored.issued import read_issued

MODULE = "order-of-work"
_EXTENSION = timedelta(days=14)
_RENAMED = "my answers.ipynb"


def make_demo(folder: Path, *, content: str = "", say: Callable[[str], None] = print) -> Cohort:
    """Make the demo cohort; it appears under its name only when all of it is there.

    Parameters
    ----------
    folder : Path
        The folder to make.
    content : str
        Folder with the solutions; empty: the source checkout.
    say : callable
        Prints a line.

    Raises
    ------
    CohortError
        When the folder is in use or the solutions are not found.
    """
    folder = folder.expanduser().resolve()
    for place in (folder, folder.with_name(f"{folder.name}-shared")):
        if place.exists() and (not place.is_dir() or any(place.iterdir())):
            raise CohortError(f"{place} is not empty", mend="give the name of a new folder")
    source = find_content(content)
    source.solution(MODULE)
    folder.parent.mkdir(parents=True, exist_ok=True)
    building = folder.with_name(f".{folder.name}.part")
    shutil.rmtree(building, ignore_errors=True)  # what an earlier, stopped run left
    cohort = make_cohort(
        building / folder.name,
        id="tarnbeck-autumn",
        name=COHORT,
        college=COLLEGE,
        salt=DEMO_SALT,
        content=str(source.root) if content else "",
    )
    learners = [one.learner for one in APPRENTICES]
    with Bar("making the demo cohort", 6 + len(APPRENTICES)) as bar:
        take_in(cohort, learners)
        bar.step()
        assigned = assign(cohort, source, MODULE, attempt=1, due=_due(cohort), learners=learners)
        bar.step()
        for one in APPRENTICES:
            _work(cohort, assigned, one)
            bar.step()
        collect(cohort, assigned, learners)
        bar.step()
        done = mark_assignment(cohort, assigned, learners)
        bar.step()
        give_back(cohort, assigned, learners)
        bar.step()
        _, rows, _ = export_cohort(cohort)
        bar.step()
    _say_where_it_will_be(cohort, folder)
    # The cohort folder last: with it, all is there.
    for part in (cohort.shared, cohort.root):
        place = folder.with_name(part.name)
        if place.exists():
            place.rmdir()
        system.rename(part, place)
    building.rmdir()
    cohort = open_cohort(folder)
    words = sign_in_words(cohort)
    say(f"Made {COHORT} of {COLLEGE} in {folder}: every name and figure in it is invented.")
    say(f"{MODULE}-1 went out to {len(learners)} apprentices; {_count(done)} job sheets came back.")
    say("")
    say(f"  Marks     {command()} progress --cohort {folder}")
    say(f"  Feedback  {cohort.feedback('tb04', assigned.name) / assigned.notebook_id}.html")
    say(f"  Export    {folder / 'exports' / 'outcomes.csv'} ({rows} rows)")
    say("")
    say(f"To work as an apprentice: {command()} open --cohort {folder}")
    for one in APPRENTICES:
        if one.way in FREE:
            word = words[one.learner.id]
            say(f"  sign in as {one.learner.name} ({one.way}) with the word {word}")
    say(f"Then, as the instructor, each with --cohort {folder}:")
    say(
        "  "
        + ", ".join(f"{command()} {verb}" for verb in ("collect", "mark", "give-back", "export"))
    )
    return cohort


def _say_where_it_will_be(cohort: Cohort, folder: Path) -> None:
    path = cohort.root / COHORT_FILE
    shared = str(folder.with_name(cohort.shared.name))
    write_cohort(path, replace(read_cohort(path), shared=shared))


def _count(done: list[Done]) -> int:
    return sum(one.state != NOT_HANDED_IN for one in done)


def _due(cohort: Cohort) -> datetime:
    """Yesterday at four in the afternoon."""
    yesterday = (now().astimezone(cohort.zone) - timedelta(days=1)).date()
    return datetime.combine(yesterday, time(16), tzinfo=cohort.zone)


def _work(cohort: Cohort, assigned: Assigned, one: Apprentice) -> None:
    """Fetch, answer and hand in, as this apprentice does."""
    learner, due = one.learner, assigned.due
    assert due is not None  # the demo's assignments all have one
    if one.way in FREE:
        everybody = [apprentice.learner for apprentice in APPRENTICES]
        extend_due(cohort, assigned, everybody, learner.id, due + _EXTENSION)
    if one.way == Way.AWAY:
        return
    counter = handin.find_counter(cohort.workplace)
    assert counter is not None  # the cohort was made with an exchange
    person = Person(learner.id, learner.family_name, learner.given_name)
    place = handin.fetch(counter, person, assigned.name)
    issued = read_issued(cohort.issued(learner.id, assigned.name))
    solution = load_solution(cohort.source(assigned.name) / assigned.notebook)
    unit = assigned_unit(cohort, assigned)
    moment = due + timedelta(hours=one.hours)
    answers = demo_answers(one.way, solution, issued, unit)
    files.write_whole(place / SHEET, sheet_text(answers, issued, cohort, moment))
    if one.way == Way.BEGUN:
        return
    handin.hand_in(counter, person, assigned.name, own_work=True)
    arrived = _move_clock(cohort, learner.id, assigned.name, moment)
    if one.way == Way.DAMAGED:
        text = (arrived / SHEET).read_bytes()
        files.write_whole(arrived / SHEET, text[: len(text) // 2])
    if one.way == Way.RENAMED:
        (arrived / assigned.notebook).rename(arrived / _RENAMED)


def _move_clock(cohort: Cohort, learner: str, assignment: str, moment: datetime) -> Path:
    """Let what was just handed in have been handed in at ``moment``; returns where it arrived."""
    when = f"{moment.astimezone(now().tzinfo):%Y-%m-%d %H:%M:%S.%f} UTC"
    own = cohort.workplace / learner
    cached = own / handin.CACHE / cohort.id
    moved = []
    for place in (cohort.inbound, cached):
        [path] = place.glob(f"{learner}+{assignment}+*")
        files.write_whole(path / TIMESTAMP, when)
        if stated := OWN_WORK.read(path / OWN_WORK.file):
            OWN_WORK.write(path / OWN_WORK.file, replace(stated, stated=stamp(moment)))
        parts = path.name.split("+")
        parts[2] = when
        moved.append(path.rename(path.with_name("+".join(parts))))
    *earlier, last = read_receipts(own)
    told = Receipts((*earlier, replace(last, handed_in=stamp(moment))))
    RECEIPTS.write(own / RECEIPTS.file, told)
    return moved[0]
