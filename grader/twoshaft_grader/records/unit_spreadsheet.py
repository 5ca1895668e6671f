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
from collections.abc import Iterable, Mapping
from dataclasses import dataclass, replace
from pathlib import Path
from typing import Any

from twoshaft.errors import UnitFileError
from twoshaft.stored.writing import write_file
from twoshaft.units.findings import Finding, error_of
from twoshaft.units.loader import unit_of
from twoshaft.units.nearest import meant
from twoshaft.units.source import TYPICAL, Node, parse_nodes
from twoshaft.units.unit import Unit
from twoshaft_grader.records.spreadsheet_tables import (
    FORMULA,
    GUARD,
    MOST_ROWS,
    Table,
    at,
    letter,
    read_tables,
)

LISTS = frozenset({"parts", "tools", "consumables", "loses", "any of"})
"""Columns that hold several ids, with semicolons between them."""
NUMBERS = frozenset({"minutes to do", "minutes to undo"})
YES_OR_NO = frozenset({"in place", "single use", "damaged by removal", "safety"})
_YES, _NO = frozenset({"yes", "true", "x", "1"}), frozenset({"no", "false", "0"})
_NUMBER = re.compile(r"[+-]?[0-9]{1,9}([.,][0-9]{1,9})?")


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
            [f"{GUARD}{text}" if text.startswith(FORMULA) else text for text in row] for row in rows
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
                page.data_validation(1, column, MOST_ROWS, column,
                                     {"validate": "list", "source": ["yes", "no"]})  # fmt: skip
    book.close()
    return out.getvalue()


@dataclass(frozen=True)
class Sheets:
    """What a spreadsheet holds.

    Attributes
    ----------
    entries : dict of Node
        Lists of entries by section; a table without rows is not in it.
    columns : dict of frozenset
        The keys of an entry that a section's table has a column for.
    others : tuple of str
        Tables that are none of ours, and were not read.
    """

    entries: Mapping[str, Node]
    columns: Mapping[str, frozenset[str]]
    others: tuple[str, ...] = ()

    def in_words(self) -> str:
        """What it holds, what it lacks, and what was not read."""
        held = {
            sheet.name: len(self.entries[sheet.section].value)
            for sheet in SHEETS
            if sheet.section in self.entries
        }
        told = ", ".join(f"{name} {count}" for name, count in held.items())
        lacking = [sheet.name for sheet in SHEETS if sheet.name not in held]
        if lacking:
            told += f"; {' and '.join(lacking)} stay as they were"
        if self.others:
            told += f"; not read: {', '.join(self.others)}"
        return told


def read_sheets(place: Path) -> Sheets:
    """Read the tables of a workbook or folder.

    Raises
    ------
    UnitFileError
        If there is nothing to read, or a heading or a cell is not understood.
    """
    tables = read_tables(place, [sheet.name for sheet in SHEETS])
    entries, columns = {}, {}
    for sheet in SHEETS:
        table = tables.found.get(sheet.name)
        if table is not None and table.rows:
            keys = _keys(sheet, table)
            if node := _entries(sheet, table, keys):
                entries[sheet.section], columns[sheet.section] = node, frozenset(keys.values())
    if not entries:
        raise UnitFileError(
            "no table has a row below its headings", where=place.name, mend="write entries in it"
        )
    return Sheets(entries, columns, tables.others)


def _keys(sheet: Sheet, table: Table) -> dict[int, str]:
    """The key of an entry that each column stands for."""
    known = {**sheet.columns, **{key: key for key in sheet.columns.values()}}
    row, headings = table.rows[0]
    keys: dict[int, str] = {}
    found = []
    for number, text in enumerate(headings):
        heading = " ".join(text.split()).lower()
        where = at(table.name, row, number)
        if heading and heading not in known:
            mend = meant(heading, sheet.columns)
            if not mend.endswith("?"):
                mend = f"the headings are {', '.join(sheet.columns)}"
            found.append(Finding(where, f"the heading '{text}' is not known", mend))
        elif heading and known[heading] in keys.values():
            what = f"the heading '{text}' stands there a second time"
            found.append(Finding(where, what, "keep one of the two columns"))
        elif heading:
            keys[number] = known[heading]
    if sheet.section != "rules" and "id" not in keys.values() and not found:
        found.append(Finding(at(table.name, row), "no column is headed 'id'", "add it"))
    if found:
        raise error_of(found)
    return keys


def _entries(sheet: Sheet, table: Table, keys: Mapping[int, str]) -> Node | None:
    entries, found = [], []
    for line, row in table.rows[1:]:
        entry: dict[str, Node] = {}
        for number, text in enumerate(row):
            cell = Cell(None, table.name, line, column=letter(number))
            if not text:
                continue
            if number not in keys:
                found.append(
                    Finding(cell.where, "there is no heading above it", _no_heading(table))
                )
                continue
            key = keys[number]
            entry[key] = _cell(key, text, cell)
            if key in YES_OR_NO and not isinstance(entry[key].value, bool):
                what = f"'{key}' is '{text}', which is neither yes nor no"
                found.append(Finding(cell.where, what, "write yes, or leave it empty"))
        if sheet.section == "rules" and "id" not in entry:
            before, after = entry.get("earlier"), entry.get("later")
            if before is not None and after is not None:
                made = f"{before.value}-then-{after.value}"[-60:].strip("-")
                entry["id"] = Cell(made, table.name, line)
        entries.append(Cell(entry, table.name, line))
    if found:
        raise error_of(found)
    return Cell(entries, table.name, 1) if entries else None


def _no_heading(table: Table) -> str:
    if table.name.endswith(".csv"):
        return "put a text that has commas in it between double quotes, or add the heading"
    return "add the heading, or delete what stands there"


def _cell(key: str, text: str, empty: Cell) -> Node:
    text = text.strip()
    if key in LISTS:
        ids = [one.strip() for one in re.split(r"[;,\n]", text)]
        return replace(empty, value=[replace(empty, value=one) for one in ids if one])
    if key in NUMBERS:
        if not _NUMBER.fullmatch(text):
            return replace(empty, value=text)
        number = float(text.replace(",", "."))
        return replace(empty, value=int(number) if number.is_integer() else number)
    if key in YES_OR_NO and text.lower() in _YES | _NO:
        return replace(empty, value=text.lower() in _YES)
    return replace(empty, value=text)


def taken_in(file: Path, sheets: Sheets) -> str:
    """A unit file with the entries of a spreadsheet in place of its own.

    Comments outside those sections stay, and so does what the spreadsheet has no column for; a
    figure keeps its mark of a typical one until it is another.

    Parameters
    ----------
    file : Path
        The unit file, no variant.
    sheets : Sheets

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
    for section, node in sheets.entries.items():
        before = {
            entry.identifier(): entry for entry in _list(root.value.get(section)) if entry.value
        }
        columns = sheets.columns[section]
        entries = [_with_the_rest(entry, before, columns) for entry in node.value]
        merged[section] = replace(node, value=entries)
    unit_of(replace(root, value=merged))
    for section in sheets.entries:
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


def _with_the_rest(entry: Node, before: Mapping[str | None, Node], columns: frozenset[str]) -> Node:
    """The entry, what only the file holds of it, and the marks of figures that stayed."""
    old = before.get(entry.identifier())
    if old is None:
        return entry
    rest = {
        key: node
        for key, node in old.value.items()
        if key not in columns and key not in entry.value
    }
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
