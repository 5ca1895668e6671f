"""The page of every field of the unit file, made from the schema; examples from a shipped unit."""

from __future__ import annotations

import enum
import types
from typing import Annotated, Any, Literal, Union, get_args, get_origin

import annotated_types as limits
from pydantic import BaseModel
from pydantic.fields import FieldInfo

from twoshaft import DEFAULT_UNIT
from twoshaft.units.described import descriptions, held_in, sections_of
from twoshaft.units.loader import load_unit, shipped_units
from twoshaft.units.unit import Unit

MOST = 60  # characters of an example
UNITS = {
    "mm": "mm", "um": "µm", "nm": "N·m", "kn": "kN", "n": "N", "deg": "degrees", "c": "°C",
    "k": "K", "mpa": "MPa", "gpa": "GPa", "rpm": "1/min", "minutes": "minutes", "hours": "hours",
    "turns": "turns", "litre": "litres", "mbar": "mbar",
}  # fmt: skip
"""The unit that the last word of a key stands for."""
LONGER = {
    "per k": "1/K", "um per m k": "µm/(m·K)", "n per mm": "N/mm", "n per um": "N/µm",
    "n per mm3": "N/mm³", "pa s": "Pa·s", "stress pa": "Pa", "minutes to do": "minutes",
    "minutes to undo": "minutes", "kg per litre": "kg/l", "mm2 per s": "mm²/s",
    "ml per min": "mL/min", "litre per mm": "l/mm", "kg m2": "kg·m²",
}  # fmt: skip
"""The same, where it takes several words."""


def fields_page() -> str:
    """The page, as Markdown.

    Returns
    -------
    str
        A table for the file as a whole and for every kind of entry, in the order in which a
        reader of the file meets them.
    """
    examples: dict[tuple[type, str], str] = {}
    for id in reversed((DEFAULT_UNIT, *shipped_units())):  # the first that says it
        examples |= _examples(load_unit(id))
    parts = [
        "# Every field of a unit file\n\n"
        "Made from the schema by the notebook build; correct the text there, beside each field "
        "under `course/twoshaft/units/`. Examples are from the shipped units, which are "
        "**invented, for teaching**: none of their figures belongs on a bench. A list of one may "
        "be written as a single word. *must* says that a field cannot be left out, *else* what is "
        "taken where it is.\n"
    ]
    for model in sections_of(Unit):
        title = "The file as a whole" if model is Unit else f"`{model.__name__}`"
        about = " ".join((model.__doc__ or "").split("\n\n")[0].split())
        rows = [_row(model, name, field, examples) for name, field in model.model_fields.items()]
        head = "| key | what it says | unit, values | | example |\n|---|---|---|---|---|"
        parts.append("\n".join([f"## {title}\n", f"{about}\n", head, *rows, ""]))
    return "\n".join(parts)


def _row(
    model: type[BaseModel], name: str, field: FieldInfo, examples: dict[tuple[type, str], str]
) -> str:
    key = field.alias or name
    holds = [inner.__name__ for inner in held_in(field.annotation)]
    values = _unit(key) or _values(field.annotation)
    if holds:
        values = ", ".join(f"`{held}`" for held in dict.fromkeys(holds))
    allowed = _range(field)
    cells = (
        f"`{key}`",
        " ".join(descriptions(model).get(name, "").split()),
        " ".join(filter(None, (values, allowed))),
        _needed(model, name, field),
        "" if holds else examples.get((model, name), ""),
    )
    return f"| {' | '.join(cell.replace('|', '/') for cell in cells)} |"


def _needed(model: type[BaseModel], name: str, field: FieldInfo) -> str:
    if name in getattr(model, "MADE", ()):
        return "else as usual"
    if not field.is_required():
        number = isinstance(field.default, int | float) and not isinstance(field.default, bool)
        return f"else {field.default:g}" if number else ""
    by = getattr(model, "FILLED_BY", "standard")
    return f"must, or `{by}`" if name in getattr(model, "FILLED", ()) else "must"


def _unit(key: str) -> str:
    """The unit that a key's last words name; empty if none."""
    longer = next((unit for words, unit in LONGER.items() if key.endswith(words)), "")
    return longer or ("" if " " not in key and key != "minutes" else UNITS.get(key.split()[-1], ""))


def _values(annotation: Any) -> str:
    """What may stand there, in words."""
    origin, inner = get_origin(annotation), get_args(annotation)
    if origin is Annotated:
        return _values(inner[0])
    if origin is Literal:
        return ", ".join(f"`{value}`" for value in inner)
    if origin in (Union, types.UnionType):
        return " or ".join(dict.fromkeys(_values(one) for one in inner if one is not type(None)))
    if origin is tuple:
        kinds = [_values(one) for one in inner if one is not Ellipsis]
        return f"list of {kinds[0]}" if Ellipsis in inner else f"{len(kinds)} of {kinds[0]}"
    if isinstance(annotation, type) and issubclass(annotation, enum.StrEnum):
        return ", ".join(f"`{member.value}`" for member in annotation)
    words = {str: "text", float: "number", int: "whole number", bool: "true or false"}
    return words.get(annotation, "")


def _range(field: FieldInfo) -> str:
    low, high = "", ""
    for one in field.metadata:
        if isinstance(one, limits.Ge):
            low = f"from {one.ge:g}"
        elif isinstance(one, limits.Gt):
            low = f"above {one.gt:g}"
        elif isinstance(one, limits.Le):
            high = f"to {one.le:g}"
        elif isinstance(one, limits.Lt):
            high = f"below {one.lt:g}"
    return f"{low} {high}".strip()


def _examples(unit: Unit) -> dict[tuple[type, str], str]:
    """The first value that the unit gives each field, by model and field."""
    found: dict[tuple[type, str], str] = {}
    waiting: list[Any] = [unit]
    for entry in waiting:
        for name in type(entry).model_fields:
            value = getattr(entry, name)
            waiting += [
                one
                for one in (value if isinstance(value, tuple) else (value,))
                if isinstance(one, BaseModel)
            ]
            if value not in (None, (), False, "") and (type(entry), name) not in found:
                found[type(entry), name] = _shown(value)
    return found


def _shown(value: Any) -> str:
    text = _plain(value)
    return f"`{text if len(text) <= MOST else text[: MOST - 2] + ' …'}`"


def _plain(value: Any) -> str:
    if isinstance(value, tuple):
        return f"[{', '.join(map(_plain, value))}]"
    if isinstance(value, bool):
        return str(value).lower()
    return f"{value:g}" if isinstance(value, float) else str(value)
