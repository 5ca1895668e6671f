"""Loading a unit file: read, merge with its base, fit to the schema, check."""

from __future__ import annotations

from functools import cache
from pathlib import Path

from pydantic import ValidationError

from twoshaft.errors import UnitFileError
from twoshaft.units.checks import check_unit
from twoshaft.units.complaints import findings_of
from twoshaft.units.findings import error_of
from twoshaft.units.source import Node, read_nodes
from twoshaft.units.unit import Unit
from twoshaft.units.unseen import unseen_characters
from twoshaft.units.variants import apply_variant

SHIPPED = Path(__file__).parent / "files"
LONGEST_CHAIN = 8  # variants of variants of ...
_SHARED: dict[Path, Unit] = {}


def shipped_units() -> tuple[str, ...]:
    """Ids of the unit files that ship with the course, in alphabetical order."""
    return tuple(sorted(path.stem for path in SHIPPED.glob("*.yaml")))


def load_unit(path_or_id: str | Path, *, called: str = "") -> Unit:
    """Load a unit.

    Parameters
    ----------
    path_or_id : str or Path
        The id of a shipped unit (:func:`shipped_units`), or the path of a unit file.
    called : str
        What sentences call the file; by default as it is given here.

    Returns
    -------
    Unit
        The unit, with nothing left to complain about. A shipped one is read once: whoever asks
        for its id shares it, with all that was worked out of it.

    Raises
    ------
    UnitFileError
        With one sentence (file, line, what, mend) for each thing that is wrong; ``findings``
        holds them one by one.
    """
    path, name = _locate(path_or_id)
    if path in _SHARED:
        return _SHARED[path]
    return _shipped(path, name) if path.parent == SHIPPED else _loaded(path, called or name)


def share_unit(path: Path, unit: Unit) -> None:
    """Let whoever loads this file, in this process, have a unit that was loaded from it already."""
    _SHARED[path] = unit


@cache
def _shipped(path: Path, name: str) -> Unit:
    return _loaded(path, name)


def _loaded(path: Path, name: str) -> Unit:
    return unit_of(_read_with_base(path, name, []))


def read_whole(path_or_id: str | Path) -> tuple[Node, tuple[Path, ...]]:
    """The tree of a unit file with its bases worked in, and the files that it was read from.

    Raises
    ------
    UnitFileError
        When a file is missing, is not well-formed YAML, or a variant does not fit its base.
    """
    read: list[Path] = []
    return _read_with_base(*_locate(path_or_id), read), tuple(read)


def unit_of(root: Node) -> Unit:
    """The unit that a tree of values describes, checked.

    Raises
    ------
    UnitFileError
        With one sentence for each thing that is wrong, at the place that its node names.
    """
    unseen = list(unseen_characters(root))
    if unseen:
        raise error_of(unseen)
    try:
        unit = Unit.model_validate(root.plain())
    except ValidationError as trouble:
        raise error_of(findings_of(trouble, root, Unit)) from None
    unit = unit.with_source(root)
    findings = check_unit(unit)
    if findings:
        raise error_of(findings)
    return unit


def _locate(path_or_id: str | Path, beside: Path | None = None) -> tuple[Path, str]:
    """Find the file of an id or path, and what to call it in sentences."""
    text = str(path_or_id)
    if isinstance(path_or_id, str) and "/" not in text and "\\" not in text:
        shipped = SHIPPED / f"{text}.yaml"
        if "." not in text:
            if not shipped.is_file():
                raise UnitFileError(
                    f"there is no shipped unit '{text}'",
                    mend=f"choose one of {', '.join(shipped_units())}, or give the path of a file",
                )
            return shipped, shipped.name
    path = Path(path_or_id)
    if beside is not None and not path.is_absolute():
        path = beside / path
    return path, path.name if beside is not None else text


def _read_with_base(path: Path, name: str, read: list[Path]) -> Node:
    root = read_nodes(path, name)
    base = root.value.get("variant of")
    if base is None:
        read.append(path.resolve())
        return root
    if not isinstance(base.value, str):
        raise UnitFileError(
            "'variant of' is not a name",
            where=base.where,
            mend="give the id of a shipped unit or the name of a file beside this one",
        )
    if path.resolve() in read or len(read) >= LONGEST_CHAIN:
        raise UnitFileError(
            "a variant refers back to itself",
            where=base.where,
            mend="let one of the files stand alone",
        )
    read.append(path.resolve())
    try:
        base_path, base_name = _locate(base.value, beside=path.parent)
    except UnitFileError as trouble:
        raise UnitFileError(trouble.what, where=base.where, mend=trouble.mend) from None
    if not base_path.is_file():
        raise UnitFileError(
            f"there is no file '{base.value}'",
            where=base.where,
            mend="check the name; a path counts from the folder of this file",
        )
    base_root = _read_with_base(base_path, base_name, read)
    merged = apply_variant(base_root, root)
    return _named_as_variant(merged, base_root, base, root)


def _named_as_variant(merged: Node, base_root: Node, base: Node, root: Node) -> Node:
    """Note the base's id in the identity; a variant needs an id of its own."""
    identity, before = merged.value.get("identity"), base_root.value.get("identity")
    if identity is None or before is None or not isinstance(identity.value, dict):
        return merged
    if identity.identifier() == before.identifier():
        raise UnitFileError(
            f"the variant has the same id as its base, '{before.identifier()}'",
            where=root.value["identity"].where if "identity" in root.value else base.where,
            mend="give it an id of its own under identity",
        )
    named = dict(identity.value)
    named["variant of"] = Node(before.identifier(), base.file, base.line)
    sections = dict(merged.value)
    sections["identity"] = Node(named, identity.file, identity.line)
    return Node(sections, merged.file, merged.line)
