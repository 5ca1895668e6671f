"""A variant of a unit: its base file with entries replaced, changed, added or removed.

A variant file begins with ``variant of: <id or file>``. Below it stands, section by section,
only what differs::

    variant of: base-unit
    identity:
      id: my-variant            # keys given here take the place of the base's
    operations:
      remove: [fit-breather]
      replace:                  # the whole entry with this id
        - {id: fit-magnet, ...}
      change:                   # only the keys given; a list in it takes the verbs as well
        - {id: fit-oil-guide, minutes to do: 4}
      add:                      # at the end, or right after another entry
        - {id: fit-filter, after: fit-oil-guide, ...}

The same works in every section, whatever it holds: a list of entries with ids takes the four
verbs, a set of keys is merged key by key, anything else is replaced. A set of keys inside an entry
that is changed is given whole. ``section: null`` leaves
a section out.
"""

from __future__ import annotations

from dataclasses import replace
from difflib import get_close_matches

from twoshaft.errors import UnitFileError
from twoshaft.units.source import Node

VERBS = ("remove", "replace", "change", "add")


def apply_variant(base: Node, variant: Node) -> Node:
    """Return the tree of `base` with the changes of `variant` made.

    Every node keeps the file and line it came from.

    Raises
    ------
    UnitFileError
        If an entry to be changed is not in the base, or one to be added is already there.
    """
    changes = {key: node for key, node in variant.value.items() if key != "variant of"}
    return _merge(base, replace(variant, value=changes), "file")


def _merge(base: Node, change: Node, name: str) -> Node:
    if isinstance(base.value, dict) and isinstance(change.value, dict):
        merged = dict(base.value)
        for key, node in change.value.items():
            if node.value is None:
                merged.pop(key, None)
            elif key in merged:
                merged[key] = _merge(merged[key], node, key)
            else:
                merged[key] = _only_added(node, key)
        return replace(base, value=merged)
    if _is_list_of_entries(base) and _holds_verbs(change):
        return replace(base, value=_edit(base.value, change, name))
    if _is_list_of_entries(base) and base.value:
        raise UnitFileError(
            f"'{name}' of a variant does not say what to do with its entries",
            where=change.where,
            mend="put them under remove, replace, change or add",
        )
    return change


def _only_added(node: Node, name: str) -> Node:
    """A section that the base lacks: nothing in it can be changed, only added."""
    if _holds_verbs(node):
        return replace(node, value=_edit([], node, name))
    return node


def _is_list_of_entries(node: Node) -> bool:
    return isinstance(node.value, list) and all(entry.identifier() for entry in node.value)


def _holds_verbs(node: Node) -> bool:
    return isinstance(node.value, dict) and bool(node.value) and set(node.value) <= set(VERBS)


def _edit(entries: list[Node], change: Node, name: str) -> list[Node]:
    result = list(entries)
    touched: dict[str, Node] = {}
    for verb in VERBS:
        if verb not in change.value:
            continue
        listed = change.value[verb]
        if not isinstance(listed.value, list):
            raise UnitFileError(
                f"'{verb}' in '{name}' is not a list",
                where=listed.where,
                mend="begin each entry with a dash",
            )
        for item in listed.value:
            identifier = item.value if verb == "remove" else item.identifier()
            if not isinstance(identifier, str):
                raise UnitFileError(
                    f"an entry under '{verb}' in '{name}' has no id",
                    where=item.where,
                    mend="give the ids only" if verb == "remove" else "give it an id",
                )
            if identifier in touched:
                raise UnitFileError(
                    f"'{identifier}' in '{name}' is changed twice "
                    f"(first on line {touched[identifier].line})",
                    where=item.where,
                    mend="keep one of the two",
                )
            touched[identifier] = item
            _apply_verb(result, verb, identifier, item, name)
    return result


def _apply_verb(result: list[Node], verb: str, identifier: str, item: Node, name: str) -> None:
    ids = [entry.identifier() for entry in result]
    if verb == "add":
        if identifier in ids:
            raise UnitFileError(
                f"'{identifier}' cannot be added: it is already in '{name}' of the base",
                where=item.where,
                mend="put it under replace, or give it another id",
            )
        place, entry = _taken_in(ids, item, name)
        result.insert(place, entry)
        return
    if identifier not in ids:
        raise UnitFileError(
            f"there is no '{identifier}' in '{name}' of the base to {verb}",
            where=item.where,
            mend=_near(identifier, ids),
        )
    index = ids.index(identifier)
    if verb == "remove":
        del result[index]
    elif verb == "replace":
        result[index] = item
    else:
        result[index] = _changed(result[index], item)


def _changed(base: Node, item: Node) -> Node:
    """An entry with only some keys changed; lists of entries in it are changed by id.

    It points at the variant for what is changed and at the base for the rest.
    """
    merged = dict(base.value)
    for key, node in item.value.items():
        old = merged.get(key)
        if old is not None and _is_list_of_entries(old) and _holds_verbs(node):
            merged[key] = replace(old, value=_edit(old.value, node, key))
        else:
            merged[key] = node
    return replace(base, value=merged)


def _taken_in(ids: list[str | None], item: Node, name: str) -> tuple[int, Node]:
    """Where an added entry goes, and the entry without the word that says so."""
    if "after" not in item.value:
        return len(ids), item
    before = item.value["after"]
    if before.value not in ids:
        raise UnitFileError(
            f"there is no '{before.value}' in '{name}' to put '{item.identifier()}' after",
            where=before.where,
            mend=_near(str(before.value), ids),
        )
    entry = {key: node for key, node in item.value.items() if key != "after"}
    return ids.index(before.value) + 1, replace(item, value=entry)


def _near(identifier: str, ids: list[str | None]) -> str:
    near = get_close_matches(identifier, [known for known in ids if known], n=1)
    return f"did you mean '{near[0]}'?" if near else "check the id in the base file"
