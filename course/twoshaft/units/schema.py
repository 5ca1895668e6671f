"""The JSON Schema of unit files, for editors that complete and check while one types."""

from __future__ import annotations

from typing import Any

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
    sections: dict[str, Any] = {
        "variant of": {
            "type": "string",
            "description": "Id of a shipped unit, or a file beside this one.",
        }
    }
    for name, section in whole["properties"].items():
        sections[name] = _changes(section, definitions)
    return {
        "type": "object",
        "description": "A unit told by what differs from its base.",
        "properties": sections,
        "required": ["variant of", "identity"],
        "additionalProperties": False,
    }


def _changes(section: dict[str, Any], definitions: dict[str, Any]) -> dict[str, Any]:
    if section.get("type") != "array":
        return _loosened(section, definitions)
    entry = section["items"]
    verbs = {
        "remove": {
            "type": "array",
            "items": {"type": "string"},
            "description": "Ids to leave out.",
        },
        "replace": {"type": "array", "items": entry, "description": "Whole entries, by id."},
        "change": {
            "type": "array",
            "items": {**_loosened(entry, definitions), "required": ["id"]},
            "description": "Entries with only the keys that differ.",
        },
        "add": {"type": "array", "items": _placed(entry, definitions)},
    }
    assert set(verbs) == set(VERBS)
    return {"type": "object", "properties": verbs, "additionalProperties": False}


def _placed(entry: dict[str, Any], definitions: dict[str, Any]) -> dict[str, Any]:
    """A new entry, which may say after which other one it stands."""
    whole = _resolved(entry, definitions)
    after = {"type": "string", "description": "Id of the entry to stand after; else the end."}
    return {**whole, "properties": {**whole["properties"], "after": after}}


def _loosened(schema: dict[str, Any], definitions: dict[str, Any]) -> dict[str, Any]:
    """The same keys with none required; null leaves the section out."""
    return {
        key: value for key, value in _resolved(schema, definitions).items() if key != "required"
    }


def _resolved(schema: dict[str, Any], definitions: dict[str, Any]) -> dict[str, Any]:
    return definitions.get(str(schema.get("$ref", "")).rpartition("/")[2], {})
