"""Pydantic's complaints, said in plain words with file and line."""

from __future__ import annotations

import re
from collections.abc import Sequence
from difflib import get_close_matches
from typing import Any

from pydantic import BaseModel, ValidationError

from twoshaft.units.findings import Finding
from twoshaft.units.source import Node

_DECIMAL_COMMA = re.compile(r"[+-]?\d+,\d+")
_WITH_UNIT = re.compile(r"(?P<number>[+-]?\d+([.,]\d+)?)\s*[^\W\d_].*")
ID_HINT = "use lower-case words joined by hyphens, such as fit-oil-guide"


def findings_of(trouble: ValidationError, root: Node, model: type[BaseModel]) -> list[Finding]:
    """One finding for each thing that does not fit the schema `model`."""
    errors = trouble.errors()
    missing: dict[tuple[str | int, ...], list[str]] = {}
    for error in errors:
        if error["type"] == "missing":
            *entry, key = error["loc"]
            missing.setdefault(tuple(entry), []).append(str(key))
    return [
        _finding(error, root, model, missing.get(tuple(error["loc"][:-1]), ())) for error in errors
    ]


def _finding(error: Any, root: Node, model: type[BaseModel], missing: Sequence[str]) -> Finding:
    place: Sequence[str | int] = error["loc"]
    nodes = list(root.path(place))
    subject = _subject(place, nodes)
    what, mend = _words(error, place, model)
    if error["type"] == "extra_forbidden":
        unit = str(place[-1]).rpartition(" ")[2]
        meant = [key for key in missing if " " in key and key.rpartition(" ")[2] == unit]
        if len(meant) == 1:  # a name of one's own for what is asked for, in the same unit
            mend = f"is '{meant[0]}' meant, which is missing here?"
    return Finding(nodes[-1].where, f"{subject}{what}", mend)


def _subject(place: Sequence[str | int], nodes: list[Node]) -> str:
    """Name the entry that the complaint is about: ``in operations 'fit-magnet', ``."""
    for depth in range(len(nodes) - 1, 0, -1):
        identifier = nodes[depth].identifier()
        if identifier:
            return f"in {place[0]} '{identifier}', "
    if len(place) > 1:
        entry = f", entry {place[1] + 1}" if isinstance(place[1], int) else ""
        return f"in {place[0]}{entry}, "
    return ""


def _shown(given: object) -> str:
    """What was written, as a sentence shows it."""
    match given:
        case str() | int() | float():
            return f"{given!r}"
        case list() | tuple():
            return "a list"
        case None:
            return "left empty"
    return "a group of keys"


def _words(error: Any, place: Sequence[str | int], model: type[BaseModel]) -> tuple[str, str]:
    key = next((str(step) for step in reversed(place) if isinstance(step, str)), "the file")
    given = error["input"]
    shown = _shown(given)
    if len(shown) > 60:
        shown = f"{shown[:56]}...'"
    context = error.get("ctx", {})
    match error["type"]:
        case "missing":
            return f"'{key}' is missing", f"add a line '{key}: ...'"
        case "extra_forbidden" if given is None and key.isdecimal():
            return (
                f"'{key}' stands alone behind a comma, as a decimal comma leaves it",
                f"write the number with a point, as 0.{key}",
            )
        case "extra_forbidden":
            near = get_close_matches(key, _known_keys(model, place), n=1)
            return (
                f"'{key}' is not a known key",
                f"did you mean '{near[0]}'?" if near else "remove it or check the spelling",
            )
        case "string_pattern_mismatch":
            return f"'{key}' is {shown}, which is not an id", ID_HINT
        case "string_type":
            return f"'{key}' is {shown}, which is not text", "put it in quotes"
        case "string_too_short":
            return (
                f"'{key}' is too short",
                f"write at least {context['min_length']} letters",
            )
        case "string_too_long":
            return f"'{key}' is too long", f"keep it to {context['max_length']} letters"
        case "enum" | "literal_error":
            return f"'{key}' is {shown}", f"choose {context['expected']}"
        case "union_tag_invalid":
            told = str(context["discriminator"]).strip("'")
            return f"'{told}' is {str(context['tag'])!r}", f"choose {context['expected_tags']}"
        case "union_tag_not_found":
            told = str(context["discriminator"]).strip("'")
            return f"'{told}' is missing", f"add a line '{told}: ...'"
        case "bool_parsing" | "bool_type":
            return f"'{key}' is {shown}", "write true or false"
        case "float_parsing" | "int_parsing" if _DECIMAL_COMMA.fullmatch(str(given).strip()):
            point = str(given).strip().replace(",", ".")
            return f"'{key}' is {shown}, with a decimal comma", f"write {point}"
        case "float_parsing" | "int_parsing" if alone := _WITH_UNIT.fullmatch(str(given).strip()):
            point = alone["number"].replace(",", ".")
            return f"'{key}' is {shown}, with its unit", f"write {point}, the key names the unit"
        case "float_parsing" | "float_type" | "int_parsing" | "int_type" | "finite_number":
            return f"'{key}' is {shown}, which is not a number", "write a number, as 2.5"
        case "int_from_float":
            return f"'{key}' is {shown}", "write a whole number"
        case "greater_than":
            return f"'{key}' is {shown}", f"give a number above {context['gt']:g}"
        case "greater_than_equal":
            return f"'{key}' is {shown}", f"give a number of at least {context['ge']:g}"
        case "less_than":
            return f"'{key}' is {shown}", f"give a number below {context['lt']:g}"
        case "less_than_equal":
            return f"'{key}' is {shown}", f"give a number of at most {context['le']:g}"
        case "tuple_type" | "list_type":
            return f"'{key}' is not a list", "begin each entry with a dash, or use [ ]"
        case "model_type" | "model_attributes_type" | "dict_type":
            return f"'{key}' is {shown} where keys with values belong", "write 'key: value' lines"
        case "too_short":
            return (
                f"'{key}' has too few entries",
                f"give at least {context['min_length']}",
            )
        case "too_long":
            return (
                f"'{key}' has too many entries",
                f"give at most {context['max_length']}, each with a decimal point",
            )
        case "value_error":
            # a validator writes "what; mend"
            what, _, mend = str(context["error"]).partition("; ")
            return what, mend or "correct the entry"
    return f"'{key}' is {shown}: {error['msg'].lower()}", "correct it"


def _known_keys(model: type[BaseModel], place: Sequence[str | int]) -> list[str]:
    """Keys that the schema knows at the entry which holds the last key of `place`."""
    current: type[BaseModel] | None = model
    for step in place[:-1]:
        if isinstance(step, str) and current is not None:
            field = next(
                (
                    field
                    for name, field in current.model_fields.items()
                    if step in (name, field.alias)
                ),
                None,
            )
            current = _model_in(field.annotation) if field is not None else None
    if current is None:
        return []
    return [field.alias or name for name, field in current.model_fields.items()]


def _model_in(annotation: Any) -> type[BaseModel] | None:
    if isinstance(annotation, type) and issubclass(annotation, BaseModel):
        return annotation
    for inner in getattr(annotation, "__args__", ()):
        found = _model_in(inner)
        if found is not None:
            return found
    return None
