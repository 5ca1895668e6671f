"""The JSON Schema of unit files, for editors that complete and check while one types."""

from __future__ import annotations

from collections.abc import Iterable
from typing import Any

from pydantic import BaseModel

from twoshaft.units.described import descriptions, sections_of
from twoshaft.units.unit import Unit
from twoshaft.units.variants import VERBS

DIALECT = "https://json-schema.org/draft/2020-12/schema"


def unit_json_schema() -> dict[str, Any]:
    """JSON Schema (2020-12) of a whole unit file or a variant, keys spelled as in the file.

    Returns
    -------
    dict
        Ready for ``json.dump``. A file with ``variant of`` is held to the variant's form.
    """
    whole = Unit.model_json_schema(by_alias=True)
    definitions = whole.pop("$defs")
    for model in sections_of(Unit):
        entry = whole if model is Unit else definitions[model.__name__]
        _need_less_with_standard(model, entry)
        for name, text in descriptions(model).items():
            key = model.model_fields[name].alias or name
            entry["properties"][key]["description"] = text
    _accept_single_words(whole)
    _accept_single_words(definitions)
    definitions["WholeUnit"] = whole
    definitions["Variant"] = _variant(whole, definitions)
    return {
        "$schema": DIALECT,
        "title": "Twoshaft unit file",
        "description": "A transaxle on the bench, or a variant of one.",
        "if": {"type": "object", "required": ["variant of"]},
        "then": {"$ref": "#/$defs/Variant"},
        "else": {"$ref": "#/$defs/WholeUnit"},
        "$defs": definitions,
    }


def _need_less_with_standard(model: type[BaseModel], entry: dict[str, Any]) -> None:
    """What a standard part or a round face fills in is needed only where none is given."""
    filled: frozenset[str] = getattr(model, "FILLED", frozenset())
    keys = {model.model_fields[name].alias or name for name in filled}
    made = {model.model_fields[name].alias or name for name in getattr(model, "MADE", ())}
    needed = [key for key in entry.get("required", ()) if key in keys - made]
    if keys:
        entry["required"] = [key for key in entry["required"] if key not in keys]
        by = getattr(model, "FILLED_BY", "standard")
        entry["anyOf"] = [{"required": [by]}, {"required": needed}]


def _accept_single_words(schema: Any) -> None:
    """Let a list of ids also be one id, as the loader does."""
    if isinstance(schema, list):
        for item in schema:
            _accept_single_words(item)
    elif isinstance(schema, dict):
        for value in schema.values():
            _accept_single_words(value)
        if schema.get("type") == "array" and "pattern" in schema.get("items", {}):
            kept = {key: schema.pop(key) for key in ("items", "type", "minItems") if key in schema}
            ways = [kept]
            if kept.get("minItems", 0) <= 1:
                ways.append(kept["items"])
            schema["anyOf"] = ways


def _variant(whole: dict[str, Any], definitions: dict[str, Any]) -> dict[str, Any]:
    base = {"type": "string", "description": "Id of a shipped unit, or a file beside this one."}
    sections = {
        name: _change(entry, definitions) | {"description": entry["description"]}
        for name, entry in whole["properties"].items()
    }
    return {
        "type": "object",
        "description": "A unit told by what differs from its base.",
        "properties": {"variant of": base, **sections},
        "required": ["variant of", "identity"],
        "additionalProperties": False,
    }


def _change(schema: dict[str, Any], definitions: dict[str, Any]) -> dict[str, Any]:
    """The form in which a variant changes what `schema` describes."""
    inner = _resolved(schema, definitions)
    if inner.get("type") == "object" and "properties" in inner:
        loose = {key: value for key, value in inner.items() if key != "required"}
        properties = inner["properties"].items()
        loose["properties"] = {name: _change(entry, definitions) for name, entry in properties}
        return {"anyOf": [loose, {"type": "null"}]} if schema is not inner else loose
    return _by_id(inner, definitions) or schema


def _by_id(schema: dict[str, Any], definitions: dict[str, Any]) -> dict[str, Any] | None:
    """The form in which a list of entries with ids is changed; None of what is none."""
    if isinstance(schema.get("items"), dict):  # fixed-length lists have none
        ways = schema["items"].get("oneOf", [schema["items"]])  # entries of one kind or of several
        entries = [_resolved(way, definitions) for way in ways]
        if all("id" in entry.get("properties", {}) for entry in entries):
            return _verbs(schema["items"], entries, definitions)
    return None


def _verbs(
    item: dict[str, Any], entries: list[dict[str, Any]], definitions: dict[str, Any]
) -> dict[str, Any]:
    after = {"type": "string", "description": "Id of the entry to stand after; else the end."}
    changed = _any_of(
        {key: value for key, value in entry.items() if key not in ("required", "anyOf")}
        | {
            "required": ["id"],
            "properties": {
                key: {"anyOf": [value, verbs]}
                if (verbs := _by_id(_resolved(value, definitions), definitions))
                else value
                for key, value in entry["properties"].items()
            },
        }
        for entry in entries
    )
    added = _any_of(
        entry | {"properties": entry["properties"] | {"after": after}} for entry in entries
    )
    forms = {
        "remove": ({"type": "string"}, "Ids to leave out."),
        "replace": (item, "Whole entries, by id."),
        "change": (changed, "Entries with only the keys that differ."),
        "add": (added, "New entries."),
    }
    properties = {
        verb: {"type": "array", "items": forms[verb][0], "description": forms[verb][1]}
        for verb in VERBS
    }
    return {"type": "object", "properties": properties, "additionalProperties": False}


def _any_of(schemas: Iterable[dict[str, Any]]) -> dict[str, Any]:
    ways = list(schemas)
    return ways[0] if len(ways) == 1 else {"anyOf": ways}


def _resolved(schema: dict[str, Any], definitions: dict[str, Any]) -> dict[str, Any]:
    """The schema itself, behind a reference and behind a choice of it or null."""
    if "anyOf" in schema:
        ways = [way for way in schema["anyOf"] if way.get("type") != "null"]
        if len(ways) == 1:
            return _resolved(ways[0], definitions)
    if "$ref" in schema:
        return _resolved(definitions[schema["$ref"].rpartition("/")[2]], definitions)
    return schema
