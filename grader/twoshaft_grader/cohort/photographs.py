"""A college's own photographs of parts and operations: kept in the cohort folder, and shown from
the workplace.
"""

from __future__ import annotations

import hashlib
from pathlib import Path
from typing import TYPE_CHECKING, Literal

from twoshaft.errors import CohortError, SheetError
from twoshaft.jobsheet.photographs import Photographs, photographs_in
from twoshaft.stored.photographs import ALBUM, FOLDER, Album, Photograph
from twoshaft.stored.writing import write_inside
from twoshaft_grader.cohort import files
from twoshaft_grader.cohort.folder import Cohort
from twoshaft_grader.cohort.trail import act

if TYPE_CHECKING:
    from twoshaft.units.unit import Unit

MOST, LONGEST_ALT = 200, 300
"""Photographs of a unit, and letters that say what one shows: our choice."""
Box = tuple[float, float, float, float]


def own_photographs(cohort: Cohort) -> Photographs:
    """The cohort's photographs.

    Raises
    ------
    CohortError
        When the list of them is damaged.
    """
    folder = cohort.root / FOLDER
    try:
        return photographs_in(folder)
    except SheetError as error:
        raise CohortError(
            error.what, where=str(folder / ALBUM.file), mend="put the file back from a copy"
        ) from None


def add_photograph(
    cohort: Cohort, unit: Unit, id: str, picture: Path, alt: str, box: Box | None = None
) -> Photograph:
    """Take a picture of a part or operation, and show it in the lessons.

    Parameters
    ----------
    id : str
        Of a part or operation of the unit.
    alt : str
        What can be seen, for those who do not see it.
    box : tuple of float, optional
        Left, top, width and height of what matters, as shares of the picture.

    Raises
    ------
    CohortError
        With one sentence, when the picture, the words, the box or the id will not do; nothing is
        changed then.
    """
    from twoshaft_grader.cohort.photograph_file import reduced

    of = _kind(unit, id)
    alt = " ".join(alt.split())
    if not alt or not alt.isprintable():
        raise CohortError(
            "what the picture shows is not said in words",
            mend="write a sentence that says what can be seen",
        )
    if len(alt) > LONGEST_ALT:
        raise CohortError(
            f"the words of the picture are {len(alt)} letters long",
            mend=f"say it in {LONGEST_ALT} at most",
        )
    if box is not None and not _inside(box):
        raise CohortError(
            "the frame does not lie in the picture",
            mend="give left, top, width and height in per cent, as 20 30 25 40",
        )
    known = own_photographs(cohort).album.photographs
    if len(known) >= MOST:
        raise CohortError(f"there are {MOST} photographs already", mend="take some away first")
    small = reduced(picture)
    name = hashlib.sha256(small.data).hexdigest()[:16]
    one = Photograph(
        of=of, id=id, file=f"{name}.jpg", alt=alt, width=small.width, height=small.height, box=box
    )
    with act(cohort.root, "add a photograph", id):
        files.write_whole(cohort.root / FOLDER / one.file, small.data)
        _keep(cohort, Album(photographs=(*known, one)))
    return one


def frame_named(text: str) -> Box | None:
    """A frame in per cent as shares; None where nothing is said.

    Raises
    ------
    CohortError
        When it is not four figures.
    """
    parts = text.replace("%", " ").replace(";", " ").split()
    if not parts:
        return None
    try:
        left, top, wide, high = (float(one.replace(",", ".")) / 100 for one in parts)
    except ValueError:
        raise CohortError(
            f'"{text[:40]}" is no frame',
            mend="give left, top, width and height in per cent, as 20 30 25 40",
        ) from None
    return left, top, wide, high


def drop_photograph(cohort: Cohort, number: int) -> Photograph:
    """Take a photograph away by its number in the list, from 1; returns it.

    Raises
    ------
    CohortError
        When there is none of this number.
    """
    known = own_photographs(cohort).album.photographs
    if not 1 <= number <= len(known):
        raise CohortError(
            f"there is no photograph {number}", mend=f"the list has {len(known) or 'none'}"
        )
    one = known[number - 1]
    with act(cohort.root, "take a photograph away", one.id):
        left = (*known[: number - 1], *known[number:])
        _keep(cohort, Album(photographs=left))
        if one.file not in {other.file for other in left}:
            files.remove(cohort.root / FOLDER / one.file)
    return one


def without_home(photographs: Photographs, unit: Unit) -> list[Photograph]:
    """Those of parts and operations that the unit does not have, or not any more."""
    return [
        one
        for one in photographs.album.photographs
        if one.id not in (unit.part_by_id if one.of == "part" else unit.operation_by_id)
    ]


def bring_photographs(cohort: Cohort) -> None:
    """Let the lessons show what stands in the cohort folder.

    Raises
    ------
    CohortError
        When the list is damaged; what the lessons showed before stays.
    """
    shown, place = photograph_files(cohort), cohort.workplace / FOLDER
    if not shown:
        files.remove(place)
        return
    for name, data in shown.items():  # the list last: it names nothing that is not there
        write_inside(cohort.workplace, name, data, sync=False)
    for path in place.glob("*.jpg"):
        if f"{FOLDER}/{path.name}" not in shown:
            files.remove(path)


def photograph_files(cohort: Cohort) -> dict[str, bytes]:
    """What workplace and kit show, by its path, the list last; nothing where there are none."""
    own = own_photographs(cohort)
    read = {one: data for one in own.album.photographs if (data := own.read(one))}
    if not read:
        return {}
    shown = {f"{FOLDER}/{one.file}": data for one, data in read.items()}
    return shown | {f"{FOLDER}/{ALBUM.file}": ALBUM.text(Album(photographs=tuple(read))).encode()}


def _keep(cohort: Cohort, album: Album) -> None:
    (cohort.root / FOLDER).mkdir(exist_ok=True)
    ALBUM.write(cohort.root / FOLDER / ALBUM.file, album)
    bring_photographs(cohort)


def _kind(unit: Unit, id: str) -> Literal["part", "operation"]:
    if id in unit.part_by_id:
        return "part"
    if id in unit.operation_by_id:
        return "operation"
    from twoshaft.units.nearest import meant

    raise CohortError(
        f"the unit has no part or operation '{id[:60]}'",
        mend=meant(id, [*unit.part_by_id, *unit.operation_by_id]),
    )


def _inside(box: Box) -> bool:
    left, top, wide, high = box
    return (
        all(0 <= one <= 1 for one in box)
        and min(wide, high) > 0
        and max(left + wide, top + high) <= 1.001
    )
