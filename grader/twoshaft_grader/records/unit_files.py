"""Unit files that staff work on: begun, changed by a spreadsheet, tried; and standard parts."""

from __future__ import annotations

import multiprocessing
import re
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass
from multiprocessing.connection import Connection
from pathlib import Path
from typing import TYPE_CHECKING

from twoshaft.errors import CohortError
from twoshaft.models.fit.pins import SPRING_PINS
from twoshaft.stored.writing import write_file
from twoshaft.units.new_unit import Wishes, new_unit
from twoshaft.units.standard_parts import TABLES, table
from twoshaft_grader.records.unit_spreadsheet import read_sheets, taken_in

if TYPE_CHECKING:
    from twoshaft_grader.cohort.trial import Trial


@dataclass(frozen=True)
class StandardPart:
    """A standard part: which kind, what ``standard:`` calls it, and its sizes in words."""

    kind: str
    name: str
    sizes: str


def begin_unit(file: Path, wishes: Wishes) -> None:
    """Begin a unit file from a few answers.

    Raises
    ------
    CohortError
        When there is a file of this name.
    """
    not_there(file)
    write_file(file, new_unit(wishes))


def not_there(file: Path) -> None:
    """See that nothing is written over.

    Raises
    ------
    CohortError
        When there is a file of this name.
    """
    if file.exists():
        raise CohortError(f"{file} is there already", mend="give another name, or move it away")


def take_sheets(place: Path, into: Path) -> tuple[Path, str]:
    """Take parts, operations and reasons from a spreadsheet into a unit file.

    Returns
    -------
    tuple of Path and str
        Where the file is kept as it was before, and what was taken, in words.

    Raises
    ------
    UnitFileError
        With everything that would be wrong, by row and column; nothing was written.
    """
    sheets = read_sheets(place)
    text = taken_in(into, sheets)
    kept = into.with_name(f"{into.name}.before")
    write_file(kept, into.read_bytes())
    write_file(into, text)
    return kept, sheets.in_words()


def _is_meant(word: str, row: Mapping[str, str]) -> bool:
    """Whether a row is asked for by a part of its name, by its kind, or by its first sizes."""
    if word in row["name"] or word == row.get("kind"):
        return True
    asked = re.sub(r"^[Mm](?=\d)", "", word).lower().split("x")
    sizes = [size for key, size in row.items() if key.endswith(" mm") and size]
    try:
        return [float(one) for one in asked] == [float(one) for one in sizes[: len(asked)]]
    except ValueError:
        return False


def standard_parts(words: Sequence[str] = ()) -> list[StandardPart]:
    """Standard parts by their published sizes.

    Parameters
    ----------
    words : sequence of str
        Each is part of a name, a kind, sizes in mm (``35x62``, ``M8``), or a table: bearings,
        bolts, seals, circlips, pins.

    Examples
    --------
    >>> standard_parts(["pins"])[0].kind
    'pin'
    >>> [one.name for one in standard_parts(["taper", "30x62"])]
    ['30206', '32206', '33206']
    """
    found = []
    for which in TABLES:
        for row in table(which):
            if all(word == which or _is_meant(word, row) for word in words):
                sizes = ", ".join(
                    f"{key} {size}" for key, size in row.items() if size and key != "name"
                )
                found.append(StandardPart(which[:-1], row["name"], sizes))
    for pin in SPRING_PINS.values():
        if all(word in ("pins", f"{pin.nominal_mm:g}") for word in words):
            low, high = pin.hole_mm
            sizes = f"spring pin, hole mm {low:g} to {high:g}, source ISO 8752"
            found.append(StandardPart("pin", f"{pin.nominal_mm:g}", sizes))
    return found


@dataclass(frozen=True)
class Tried:
    """What a module came to on a unit: given with so many of its tasks, or why it cannot be.

    ``unexpected`` says that no unit file is at fault.
    """

    module: str
    given: bool
    tasks: str
    why: tuple[str, ...]
    unexpected: bool = False


def told_of(trial: Trial) -> Tried:
    """A trial in words."""
    if not trial.exercise and not trial.lesson:
        return Tried(trial.module, True, f"{trial.given} of {trial.tasks}", trial.lacking)
    told = (("exercise", trial.exercise), ("lesson", trial.lesson))
    return Tried(
        trial.module,
        False,
        "",
        tuple(f"{what}: {why}" for what, why in told if why),
        trial.unexpected,
    )


def tried_apart(source: str, content: Path, only: Sequence[str] = ()) -> Iterator[Tried]:
    """Try modules on a unit in a process of its own.

    For a program with threads, which must not be forked: lessons run in copies of a process.

    Parameters
    ----------
    source : str
        Id of a shipped unit, or path of a unit file.
    content : Path
        The folder that holds ``solutions/``.
    only : sequence of str
        Ids of the modules to try; all of them if empty.

    Raises
    ------
    CohortError
        When the process ends before all are tried.
    """
    here, there = multiprocessing.Pipe(duplex=False)
    child = multiprocessing.get_context("spawn").Process(
        target=_try, args=(there, source, str(content), tuple(only))
    )
    child.start()
    there.close()
    try:
        while (one := here.recv()) is not None:
            yield one
    except EOFError:
        raise CohortError(
            "trying the modules ended before it was done", mend="look the unit over and try again"
        ) from None
    finally:
        child.terminate()
        child.join()
        here.close()


def _try(told: Connection, source: str, content: str, only: tuple[str, ...]) -> None:
    from twoshaft.models.audit import sound_unit
    from twoshaft_grader.cohort.content import find_content
    from twoshaft_grader.cohort.trial import try_modules

    for one in try_modules(sound_unit(source), source, find_content(content), only):
        told.send(told_of(one))
    told.send(None)
