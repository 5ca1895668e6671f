"""Tables of a spreadsheet, as somebody saved it: XLSX, or a folder of CSV.

Read as data, nothing is worked out: of a formula the value counts that was stored with it. What
cannot be read as it was meant (a merged cell, a date made of a figure, an error of a formula) is
told with row and column; nothing is guessed and nothing left off in silence.
"""

from __future__ import annotations

import csv
import datetime
import io
import re
import zipfile
from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass
from difflib import get_close_matches
from pathlib import Path
from typing import Any

from twoshaft.errors import UnitFileError
from twoshaft.units.findings import Finding, error_of

MOST_ROWS = 5000
MOST_COLUMNS = 64
_MOST_BYTES = 20_000_000
GUARD = "'"  # before a text that a spreadsheet would take for a formula
FORMULA = ("=", "+", "-", "@", GUARD)
_ERRORS = ("#REF!", "#N/A", "#NAME?", "#VALUE!", "#DIV/0!", "#NUM!", "#NULL!", "#SPILL!", "#CALC!")
_MERGED = re.compile(
    rb'<(?:\w+:)?mergeCell\s[^>]*?ref="([A-Z]{1,3})(\d{1,7}):([A-Z]{1,3})(\d{1,7})"'
)
_SEPARATOR = re.compile("sep=(.)")  # a first line that some spreadsheets write
_BOTH = (True, False)
_DATES = (datetime.date, datetime.time, datetime.timedelta)


@dataclass(frozen=True)
class Table:
    """A table: what findings call it, and its rows that hold anything, each with its number."""

    name: str
    rows: tuple[tuple[int, tuple[str, ...]], ...]


@dataclass(frozen=True)
class Tables:
    """The tables that were looked for, by name, and the names of all else that is there."""

    found: dict[str, Table]
    others: tuple[str, ...]


def read_tables(place: Path, names: Sequence[str]) -> Tables:
    """Read tables of a workbook or a folder.

    Parameters
    ----------
    place : Path
        An ``.xlsx`` file, or a folder of CSV files.
    names : sequence of str
        What they are called; capitals do not matter.

    Raises
    ------
    UnitFileError
        If there is nothing to read, or a cell cannot be taken as it was meant.
    """
    if place.is_dir():
        return _of_folder(place, names)
    if place.suffix.lower() in (".csv", ".tsv", ".txt"):
        raise UnitFileError(
            "this is one table", where=place.name, mend="name the folder that it lies in"
        )
    return _of_workbook(place, names)


def letter(number: int) -> str:
    """The letters of a column, counted from 0.

    Examples
    --------
    >>> letter(0), letter(27)
    ('A', 'AB')
    """
    letters = ""
    number += 1
    while number:
        number, rest = divmod(number - 1, 26)
        letters = chr(ord("A") + rest) + letters
    return letters


def at(table: str, row: int, column: int | None = None) -> str:
    """Where a cell stands, as ``work.xlsx, reasons, row 7, column C``."""
    return f"{table}, row {row}" + ("" if column is None else f", column {letter(column)}")


def _matched(place: Path, there: Iterable[str], names: Sequence[str]) -> dict[str, str]:
    """The names that are looked for, each with what it is called here."""
    found: dict[str, str] = {}
    others = []
    for called in there:
        name = " ".join(called.split()).casefold()
        if name in found:
            raise UnitFileError(
                f"two tables are called '{name}'", where=place.name, mend="keep one of them"
            )
        if name in names:
            found[name] = called
        else:
            others.append(called)
    for called in others:
        near = _nearest(called.strip().casefold(), names)
        if near is not None and near not in found:
            raise UnitFileError(
                f"the table '{called}' is none of {', '.join(names)}",
                where=place.name,
                mend=f"did you mean '{near}'?",
            )
    if not found:
        raise UnitFileError(
            f"none of the tables {', '.join(names)} is in it",
            where=place.name,
            mend="keep their names",
        )
    return found


def _nearest(called: str, names: Sequence[str]) -> str | None:
    """The name that is meant: one that is spelt nearly so, or that stands in it, as part list."""
    near = get_close_matches(called, names, n=1, cutoff=0.75)
    return near[0] if near else next((one for one in names if one.rstrip("s") in called), None)


def _of_folder(place: Path, names: Sequence[str]) -> Tables:
    paths = {path.stem: path for path in sorted(place.iterdir()) if path.suffix.lower() == ".csv"}
    called = _matched(place, paths, names)
    found = {}
    for name, stem in called.items():
        found[name] = _table(paths[stem].name, _csv_rows(paths[stem]))
    return Tables(found, tuple(paths[stem].name for stem in paths if stem not in called.values()))


def _csv_rows(path: Path) -> Iterator[list[str]]:
    if path.stat().st_size > _MOST_BYTES:
        raise UnitFileError(
            "the file is too large", where=path.name, mend="keep only the table in it"
        )
    whole = path.read_bytes()
    try:
        text = whole.decode("utf-8-sig")
    except UnicodeDecodeError as trouble:
        raise UnitFileError(
            "the file is not UTF-8 text",
            where=at(path.name, whole[: trouble.start].count(b"\n") + 1),
            mend="save it as CSV UTF-8",
        ) from None
    first = text.partition("\n")[0].rstrip("\r")
    says = _SEPARATOR.fullmatch(first)
    rows = csv.reader(
        io.StringIO(text, newline=""),
        delimiter=says[1] if says else max(",;\t", key=first.count),
        strict=True,
    )
    try:
        for number, row in enumerate(rows):
            yield [] if says and number == 0 else [_unguarded(value) for value in row]
    except csv.Error as trouble:
        raise UnitFileError(
            f"the CSV cannot be read ({trouble})",
            where=at(path.name, rows.line_num),
            mend="save it again as CSV",
        ) from None


def _unguarded(text: str) -> str:
    return text[1:] if text.startswith(GUARD) and text[1:].startswith(FORMULA) else text


def _of_workbook(place: Path, names: Sequence[str]) -> Tables:
    from openpyxl.reader.excel import ExcelReader

    try:
        whole = place.read_bytes()  # read at once: whatever goes wrong, no file stays open
        with zipfile.ZipFile(io.BytesIO(whole)) as packed:
            size = sum(one.file_size for one in packed.infolist())
        if size > _MOST_BYTES:
            raise UnitFileError(
                f"the workbook holds {size // 1_000_000} MB unpacked",
                where=place.name,
                mend="keep only the tables in it, and no formats below their last rows",
            )
        values, formulas = (
            ExcelReader(io.BytesIO(whole), read_only=True, data_only=one) for one in _BOTH
        )
        values.read()
        formulas.read()
        sheets = values.wb.sheetnames
        called = _matched(place, sheets, names)
        sources = {sheet.name: rel.target for sheet, rel in values.parser.find_sheets()}
        found = {}
        for name, sheet in called.items():
            title = f"{place.name}, {name}"
            rows = _checked(
                title, zip(*(_rows(one.wb[sheet]) for one in (values, formulas)), strict=False)
            )
            found[name] = _table(title, rows)
            _refuse_merged(found[name], values.archive.read(sources[sheet]))
    except FileNotFoundError:
        raise UnitFileError(
            "there is no such file or folder", where=place.name, mend="check the name"
        ) from None
    except UnitFileError:
        raise
    except Exception:  # whatever a damaged workbook makes the library say
        raise UnitFileError(
            "the workbook cannot be read", where=place.name, mend="save it again as XLSX"
        ) from None
    return Tables(found, tuple(one for one in sheets if one not in called.values()))


def _rows(page: Any) -> Iterator[tuple[Any, ...]]:
    page.reset_dimensions()  # what a file says of its size is not always true
    yield from page.iter_rows(values_only=True)


def _checked(
    title: str, rows: Iterable[tuple[tuple[Any, ...], tuple[Any, ...]]]
) -> Iterator[list[Any]]:
    """The values of rows; a formula whose value was never stored is refused."""
    found = []
    for number, (stored, written) in enumerate(rows, 1):
        if _empty(stored) and _empty(written):
            yield []
            continue
        for column, (value, formula) in enumerate(zip(stored, written, strict=False)):
            if value is None and formula is not None:
                found.append(
                    Finding(
                        at(title, number, column),
                        "a formula stands there, and its value was never stored",
                        "type the value, or open and save the file in your spreadsheet program",
                    )
                )
        yield list(stored)
    if found:
        raise error_of(found)


def _empty(row: tuple[Any, ...]) -> bool:
    """Quickly: a table may have a million rows with formats alone."""
    return row.count(None) == len(row)


def _table(title: str, rows: Iterable[Sequence[Any]]) -> Table:
    """The rows that hold anything, as texts."""
    told, found = [], []
    for number, row in enumerate(rows, 1):
        texts = []
        for column, value in enumerate(row):
            texts.append(text := _said(value))
            if isinstance(value, _DATES):
                what = f"the spreadsheet made a date or time of it ({text})"
                mend = "format the column as text, and type it again"
            elif text in _ERRORS:
                what, mend = f"a formula went wrong there ({text})", "type the value"
            else:
                continue
            found.append(Finding(at(title, number, column), what, mend))
        while texts and not texts[-1]:
            texts.pop()
        if not texts:
            continue
        if len(texts) > MOST_COLUMNS or number > MOST_ROWS:
            raise UnitFileError(
                f"the table has more than {MOST_ROWS} rows or {MOST_COLUMNS} columns",
                where=at(title, number, len(texts) - 1),
                mend="keep a row for each entry, and nothing beside or below",
            )
        told.append((number, tuple(texts)))
    if found:
        raise error_of(found)
    return Table(title, tuple(told))


def _refuse_merged(table: Table, source: bytes) -> None:
    """See that no text stands for several cells: only the first of them would have it."""
    texts = {(row, letter(k)): text for row, told in table.rows for k, text in enumerate(told)}
    found = []
    for first, top, last, bottom in _MERGED.findall(source):
        row, column = int(top), first.decode()
        if texts.get((row, column)):
            ends = f"{column}{row} to {last.decode()}{int(bottom)}"
            found.append(
                Finding(
                    f"{at(table.name, row)}, column {column}",
                    f"the cells {ends} are merged into one",
                    "split them, and write into each what it holds",
                )
            )
    if found:
        raise error_of(found)


def _said(value: Any) -> str:
    if value is None:
        return ""
    if isinstance(value, bool):
        return "yes" if value else "no"
    if isinstance(value, float):
        return f"{value:.12g}"
    return str(value).strip()
