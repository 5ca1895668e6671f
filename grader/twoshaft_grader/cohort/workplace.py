"""The workplace: what apprentices open, with a folder and a sign-in word for each."""

from __future__ import annotations

import csv
import io
import os
from pathlib import Path

from twoshaft.errors import CohortError, SheetError
from twoshaft.jobsheet.people import Listed, read_people, word_check, write_people
from twoshaft.jupyter.startpage import START, write_start_here
from twoshaft.stored.assignment import UNIT
from twoshaft.stored.people import PEOPLE
from twoshaft.stored.person import PERSON, Person
from twoshaft.stored.workplace import WORKPLACE, Workplace
from twoshaft.stored.writing import FOR_ALL, write_file, write_inside
from twoshaft_grader.cohort import files
from twoshaft_grader.cohort.content import Content, find_content
from twoshaft_grader.cohort.folder import Cohort
from twoshaft_grader.cohort.photographs import bring_photographs
from twoshaft_grader.cohort.roster import Learner
from twoshaft_grader.cohort.safety_sources import bring_sources
from twoshaft_grader.cohort.shared import write_opener
from twoshaft_grader.cohort.trail import act
from twoshaft_grader.cohort.words import new_word

SLIPS, SLIPS_PAGE = "sign-in-slips.csv", "sign-in-slips.pdf"


def prepare_workplace(cohort: Cohort, learners: list[Learner]) -> None:
    """Give everybody a folder and a sign-in word; those who have one keep it.

    Raises
    ------
    SheetError
        When the list of people was damaged.
    """
    own_unit = Path(cohort.unit_source).is_file()
    about = Workplace(
        cohort=cohort.name,
        course_id=cohort.id,
        exchange=os.path.relpath(cohort.exchange, cohort.workplace),
        unit="" if own_unit else cohort.unit,
    )
    WORKPLACE.write(cohort.workplace / WORKPLACE.file, about, mode=FOR_ALL)
    if own_unit:  # for lessons and practice copies; an assignment brings its own
        unit = Path(cohort.unit_source).read_bytes()
        files.write_whole(cohort.workplace / UNIT, unit, mode=FOR_ALL)
    if not (cohort.workplace / START).exists():
        write_start_here(cohort.workplace)
    _lessons_if_any(cohort)
    if cohort.own_accounts:
        write_opener(cohort.shared)
    for learner in learners:
        _own_folder(cohort, learner)
    list_people(cohort, learners)


def list_people(cohort: Cohort, learners: list[Learner]) -> None:
    """Write slips and list: these learners and nobody else; those who have a word keep it."""
    checks = _checks(cohort)
    words = {learner.id: new_word() for learner in learners if learner.id not in checks}
    # The slips first: a word that nobody has on paper would lock its owner out.
    _write_slips(cohort, learners, words)
    checks |= {id: word_check(word) for id, word in words.items()}
    write_people(
        cohort.workplace,
        [
            Listed(Person(learner.id, learner.family_name, learner.given_name), checks[learner.id])
            for learner in learners
        ],
    )


def _own_folder(cohort: Cohort, learner: Learner) -> None:
    """A learner's folder; with accounts of their own, the way to the one that theirs will make."""
    if cohort.own_accounts:
        way = cohort.workplace / learner.id
        if not way.is_symlink():
            way.symlink_to(os.path.relpath(cohort.work / learner.id, cohort.workplace))
        if not way.is_dir():
            return
    person = Person(learner.id, learner.family_name, learner.given_name)
    write_inside(cohort.work, f"{learner.id}/{PERSON.file}", PERSON.text(person))


def renew_word(cohort: Cohort, learners: list[Learner], id: str, *, by: str = "") -> str:
    """Give a learner another sign-in word; returns it.

    Raises
    ------
    CohortError
        When nobody has this id.
    """
    if id not in {learner.id for learner in learners}:
        raise CohortError(f'nobody on the roster has the id "{id}"', mend="check the id")
    word = new_word()
    with act(cohort.root, "give another sign-in word", id, by=by):
        _write_slips(cohort, learners, {id: word})
        write_people(
            cohort.workplace,
            [
                Listed(listed.person, word_check(word)) if listed.person.id == id else listed
                for listed in read_people(cohort.workplace)
            ],
        )
    return word


def sign_in_words(cohort: Cohort) -> dict[str, str]:
    """The words on the slips, by learner id; empty once the slips were taken away."""
    try:
        text = (cohort.root / SLIPS).read_text(encoding="utf-8")
    except FileNotFoundError:
        return {}
    return {row["id"]: row["sign-in word"] for row in csv.DictReader(io.StringIO(text))}


def _checks(cohort: Cohort) -> dict[str, str]:
    if not (cohort.workplace / PEOPLE.file).exists():
        return {}
    try:
        return {listed.person.id: listed.word_check for listed in read_people(cohort.workplace)}
    except SheetError as error:
        raise CohortError(
            error.what,
            where=str(cohort.workplace / PEOPLE.file),
            mend="take the file away and take the roster in again; everybody gets a new word",
        ) from None


def _write_slips(cohort: Cohort, learners: list[Learner], words: dict[str, str]) -> None:
    """Keep the slips of those who are there, and add or renew the given words."""
    known = sign_in_words(cohort) | words
    out = io.StringIO()
    writer = csv.writer(out, lineterminator="\n")
    writer.writerow(["id", "name", "sign-in word"])
    for learner in learners:
        if learner.id in known:
            writer.writerow([learner.id, learner.name, known[learner.id]])
    write_file(cohort.root / SLIPS, out.getvalue(), mode=0o600)
    files.remove(cohort.root / SLIPS_PAGE)  # what was printed before is of other words


def copy_lessons(cohort: Cohort, content: Content) -> None:
    """Bring the lessons in the workplace up to date, without what the unit has nothing for.

    Raises
    ------
    UnitFileError
        When there is something to mend in the college's own safety sources.
    CohortError
        When the list of its photographs is damaged.
    """
    from twoshaft.units import load_unit
    from twoshaft_grader.notebooks.shrink import for_unit

    bring_sources(cohort)
    bring_photographs(cohort)
    unit = load_unit(cohort.unit_source)
    for lesson in content.lessons:
        place = f"lessons/{lesson.name}"
        text = for_unit(lesson.read_text(encoding="utf-8"), unit)
        write_inside(cohort.workplace, place, text.encode(), sync=False)


def _lessons_if_any(cohort: Cohort) -> None:
    try:
        content = find_content(cohort.content, base=cohort.root)
    except CohortError:
        return  # they come with the first assignment
    copy_lessons(cohort, content)
