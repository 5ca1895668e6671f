"""Parts, operations and reasons of a unit as a spreadsheet, and back: XLSX, or a folder of CSV.

A table a section, a row an entry, headings in plain words. What a spreadsheet says is put in the
place of the file's own entries and then held to everything that a unit file is held to; each
finding names row and column. What it does not hold (other sections, wrong ways of an operation)
stays as the file has it.
"""

from __future__ import annotations

import csv
import io
import json
import re
import zipfile
from collections.abc import Iterable, Mapping
from dataclasses import dataclass, replace
from pathlib import Path
from typing import Any

from twoshaft.errors import UnitFileError
from twoshaft.stored.writing import write_file
from twoshaft.units.loader import unit_of
from twoshaft.units.source import TYPICAL, Node, parse_nodes
from twoshaft.units.unit import Unit

LISTS = frozenset({"parts", "tools", "consumables", "loses", "any of"})
"""Columns that hold several ids, with semicolons between them."""
NUMBERS = frozenset({"minutes to do", "minutes to undo"})
YES_OR_NO = frozenset({"in place", "single use", "damaged by removal", "safety"})
_YES, _NO = frozenset({"yes", "true", "x", "1"}), frozenset({"no", "false", "0"})
_GUARD = "'"  # before a text that a spreadsheet would take for a formula
_FORMULA = ("=", "+", "-", "@", _GUARD)
_MOST_BYTES = 20_000_000
_MOST_ROWS = 5000


@dataclass(frozen=True, eq=False)
class Sheet:
    """One table: its name, the section it stands for, and its columns by heading."""

    name: str
    section: str
    columns: Mapping[str, str]


SHEETS = (
    Sheet(
        "parts",
        "parts",
        {
            key: key
            for key in ("id", "name", "plain", "in place", "single use", "damaged by removal",
                        "orientation mark")
        },
    ),
    Sheet(
        "operations",
        "operations",
        {
            key: key
            for key in ("id", "name", "plain", "stage", "kind", "parts", "tools", "consumables",
                        "minutes to do", "minutes to undo", "orientation", "caution")
        },
    ),
    Sheet(
        "reasons",
        "rules",
        {
            "id": "id", "step": "later", "must come after": "earlier", "or after one of": "any of",
            "not during": "not during", "kind": "kind", "why": "reason", "loses": "loses",
            "safety": "safety",
        },
    ),
)  # fmt: skip


@dataclass(frozen=True, slots=True)
class Cell(Node):
    """A value of a spreadsheet; its line is a row."""

    column: str = ""

    @property
    def where(self) -> str:
        """Table, row and column, as ``work.xlsx, reasons, row 7, column C``."""
        column = f", column {self.column}" if self.column else ""
        return f"{self.file}, row {self.line}{column}"


def write_sheets(place: Path, unit: Unit | None) -> None:
    """Write a unit's tables; without a unit the headings alone, to be filled in.

    Parameters
    ----------
    place : Path
        ``.xlsx`` for a workbook; anything else is a folder of CSV files.
    unit : Unit, optional
    """
    tables = {sheet: [list(sheet.columns), *_rows(sheet, unit)] for sheet in SHEETS}
    if place.suffix.lower() == ".xlsx":
        write_file(place, _workbook(tables))
        return
    place.mkdir(parents=True, exist_ok=True)
    for sheet, rows in tables.items():
        out = io.StringIO()
        csv.writer(out, lineterminator="\n").writerows(
            [f"{_GUARD}{text}" if text.startswith(_FORMULA) else text for text in row]
            for row in rows
        )
        write_file(place / f"{sheet.name}.csv", out.getvalue())


def _rows(sheet: Sheet, unit: Unit | None) -> Iterable[list[str]]:
    for entry in getattr(unit, sheet.section) if unit is not None else ():
        plain = entry.model_dump(mode="json", by_alias=True)
        yield [_text(plain[key]) for key in sheet.columns.values()]


def _text(value: Any) -> str:
    if value is None or value is False:
        return ""
    if value is True:
        return "yes"
    if isinstance(value, list):
        return "; ".join(value)
    return f"{value:.12g}" if isinstance(value, float) else str(value)


def _workbook(tables: Mapping[Sheet, list[list[str]]]) -> bytes:
    from xlsxwriter import Workbook

    out = io.BytesIO()
    book = Workbook(out, {"strings_to_formulas": False, "strings_to_urls": False})
    head = book.add_format({"bold": True, "bottom": 1})
    for sheet, rows in tables.items():
        page = book.add_worksheet(sheet.name)
        page.freeze_panes(1, 1)
        for number, row in enumerate(rows):
            for column, text in enumerate(row):
                if text:
                    page.write_string(number, column, text, head if number == 0 else None)
        for column, heading in enumerate(sheet.columns):
            page.set_column(column, column, 40 if heading in ("name", "why", "plain") else 20)
            if heading in YES_OR_NO:
                page.data_validation(1, column, _MOST_ROWS, column,
                                     {"validate": "list", "source": ["yes", "no"]})  # fmt: skip
    book.close()
    return out.getvalue()


def read_sheets(place: Path) -> dict[str, Node]:
    """Read the tables of a workbook or folder.

    Returns
    -------
    dict of Node
        Lists of entries by section; a table that is not there is not in it.

    Raises
    ------
    UnitFileError
        If there is nothing to read, or a heading or a cell is not understood.
    """
    found = {}
    for sheet in SHEETS:
        rows, name = _read(place, sheet)
        if rows is not None:
            found[sheet.section] = _entries(sheet, rows, name)
    if not found:
        names = ", ".join(sheet.name for sheet in SHEETS)
        raise UnitFileError(
            f"none of the tables {names} is in it", where=place.name, mend="keep their names"
        )
    return found


def _read(place: Path, sheet: Sheet) -> tuple[list[list[Any]] | None, str]:
    if place.is_dir():
        path = place / f"{sheet.name}.csv"
        if not path.is_file():
            return None, path.name
        try:
            text = path.read_text(encoding="utf-8-sig")
        except UnicodeDecodeError:
            raise UnitFileError(
                "the file is not UTF-8 text", where=path.name, mend="save it as CSV UTF-8"
            ) from None
        first = text.partition("\n")[0]
        between = ";" if first.count(";") > first.count(",") else ","
        try:
            rows = csv.reader(io.StringIO(text, newline=""), delimiter=between, strict=True)
            return [[_unguarded(value) for value in row] for row in rows], path.name
        except csv.Error as trouble:
            raise UnitFileError(
                f"the CSV cannot be read ({trouble})", where=path.name, mend="save it again as CSV"
            ) from None
    return _read_workbook(place, sheet), f"{place.name}, {sheet.name}"


def _read_workbook(place: Path, sheet: Sheet) -> list[list[Any]] | None:
    from openpyxl import load_workbook

    try:
        with zipfile.ZipFile(place) as packed:
            size = sum(one.file_size for one in packed.infolist())
        if size > _MOST_BYTES:
            raise UnitFileError(
                "the workbook is too large", where=place.name, mend="keep only the tables in it"
            )
        book = load_workbook(place, read_only=True, data_only=True)
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
    try:
        if sheet.name not in book.sheetnames:
            return None
        rows = book[sheet.name].iter_rows(max_row=_MOST_ROWS, values_only=True)
        return [list(row) for row in rows]
    finally:
        book.close()


def _entries(sheet: Sheet, rows: list[list[Any]], file: str) -> Node:
    headings = [_said(value).lower() for value in rows[0]] if rows else []
    known = {**sheet.columns, **{key: key for key in sheet.columns.values()}}
    for number, heading in enumerate(headings):
        if heading and heading not in known:
            raise UnitFileError(
                f"the heading '{heading}' is not known",
                where=Cell(heading, file, 1, column=_letter(number)).where,
                mend=f"the headings are {', '.join(sheet.columns)}",
            )
    entries = []
    for line, row in enumerate(rows[1:], 2):
        entry: dict[str, Node] = {}
        for number, (heading, value) in enumerate(zip(headings, row, strict=False)):
            text = _said(value)
            if text and heading:
                key = known[heading]
                entry[key] = _cell(key, text, Cell(None, file, line, column=_letter(number)))
        if not entry:
            continue
        if sheet.section == "rules" and "id" not in entry:
            before, after = entry.get("earlier"), entry.get("later")
            if before is not None and after is not None:
                made = f"{before.value}-then-{after.value}"[-60:].strip("-")
                entry["id"] = Cell(made, file, line)
        entries.append(Cell(entry, file, line))
    return Cell(entries, file, 1)


def _said(value: Any) -> str:
    if value is None:
        return ""
    if isinstance(value, bool):
        return "yes" if value else "no"
    if isinstance(value, float):
        return f"{value:.12g}"
    return str(value).strip()


def _unguarded(text: str) -> str:
    return text[1:] if text.startswith(_GUARD) and text[1:].startswith(_FORMULA) else text


def _cell(key: str, text: str, empty: Cell) -> Node:
    text = text.strip()
    if key in LISTS:
        ids = [one.strip() for one in re.split(r"[;,\n]", text)]
        return replace(empty, value=[replace(empty, value=one) for one in ids if one])
    if key in NUMBERS:
        try:
            number = float(text.replace(",", ".") if text.count(",") == 1 else text)
            return replace(empty, value=int(number) if number.is_integer() else number)
        except (ValueError, OverflowError):
            return replace(empty, value=text)
    if key in YES_OR_NO and text.lower() in _YES | _NO:
        return replace(empty, value=text.lower() in _YES)
    return replace(empty, value=text)


def _letter(number: int) -> str:
    letters = ""
    number += 1
    while number:
        number, rest = divmod(number - 1, 26)
        letters = chr(ord("A") + rest) + letters
    return letters


def taken_in(file: Path, sheets: Mapping[str, Node]) -> str:
    """A unit file with the entries of a spreadsheet in place of its own.

    Comments outside those sections stay; a figure keeps its mark of a typical one until it is
    another.

    Parameters
    ----------
    file : Path
        The unit file, no variant.
    sheets : mapping
        From :func:`read_sheets`.

    Raises
    ------
    UnitFileError
        With everything that would be wrong, by row and column; nothing was written.
    """
    text = file.read_text(encoding="utf-8")
    root = parse_nodes(text, file.name)
    if "variant of" in root.value:
        raise UnitFileError(
            "a variant names only what differs", where=root.where, mend="take it into its base"
        )
    merged = dict(root.value)
    for section, node in sheets.items():
        before = {
            entry.identifier(): entry for entry in _list(root.value.get(section)) if entry.value
        }
        columns = next(s.columns.values() for s in SHEETS if s.section == section)
        entries = [_with_the_rest(entry, before, columns) for entry in node.value]
        merged[section] = replace(node, value=entries)
    unit_of(replace(root, value=merged))
    for section in sheets:
        text = _with_section(text, section, _written(merged[section]))
    if parse_nodes(text, file.name).plain() != {key: node.plain() for key, node in merged.items()}:
        raise UnitFileError(
            "its sections are written in a way that cannot be changed in place",
            where=root.where,
            mend="begin each section at the left margin, its entries below it with a dash",
        )
    return text


def _list(node: Node | None) -> list[Node]:
    return node.value if node is not None and isinstance(node.value, list) else []


def _with_the_rest(entry: Node, before: Mapping[str | None, Node], columns: Iterable[str]) -> Node:
    """The entry, what only the file holds of it, and the marks of figures that stayed."""
    old = before.get(entry.identifier())
    if old is None:
        return entry
    known = set(columns)
    rest = {key: node for key, node in old.value.items() if key not in known}
    new = {
        key: replace(node, typical=True)
        if key in old.value and old.value[key].typical and old.value[key].value == node.value
        else node
        for key, node in entry.value.items()
    }
    return replace(entry, value={**new, **rest})


def _written(section: Node) -> str:
    lines = []
    for entry in section.value:
        for number, (key, node) in enumerate(entry.value.items()):
            mark = f"  # {TYPICAL}" if node.typical and key in NUMBERS else ""
            start = "  - " if number == 0 else "    "
            lines.append(f"{start}{key}: {json.dumps(node.plain(), ensure_ascii=False)}{mark}")
    return "\n".join(lines) if lines else "  []"


def _with_section(text: str, section: str, written: str) -> str:
    """The text with the entries of one section replaced; a section it lacks comes at its end."""
    lines = text.splitlines()
    head = re.compile(rf"""^(["']?){re.escape(section)}\1\s*:""")
    start = next((n for n, line in enumerate(lines) if head.match(line)), None)
    if start is None:
        return "\n".join([*lines, "", f"{section}:", written, ""])
    end = start + 1
    while end < len(lines) and (not lines[end] or lines[end][0] in " \t#-]}"):
        end += 1
    # comments at the margin before the next section belong to it
    while end > start + 1 and (not lines[end - 1] or lines[end - 1].startswith("#")):
        end -= 1
    return "\n".join([*lines[:start], f"{section}:", written, *lines[end:], ""])
