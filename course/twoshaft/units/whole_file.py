"""A unit as one file that stands alone, whatever becomes of the files it was written from."""

from __future__ import annotations

import hashlib
from functools import cache
from pathlib import Path

import yaml

from twoshaft.units.loader import read_whole, shipped_units


def whole_text(path_or_id: str | Path) -> str:
    """The text of a unit file that needs no other: a variant with its base worked in.

    Parameters
    ----------
    path_or_id : str or Path
        As :func:`twoshaft.units.load_unit` takes it.

    Returns
    -------
    str
        A file that is its own base already as it stands; anything else written anew, without its
        comments.

    Raises
    ------
    UnitFileError
        As :func:`twoshaft.units.load_unit` raises it.

    Examples
    --------
    >>> "variant of: base" in whole_text(unit.identity.id)
    False
    """
    root, files = read_whole(path_or_id)
    if len(files) == 1:
        return files[0].read_text(encoding="utf-8")
    dumper = yaml.CSafeDumper if yaml.__with_libyaml__ else yaml.SafeDumper
    return yaml.dump(root.plain(), Dumper=dumper, sort_keys=False, allow_unicode=True, width=100)


@cache
def shipped_digest(id: str) -> str:
    """A digest (SHA-256, hexadecimal) of the files that a shipped unit is made of; empty where
    this course ships no such unit.

    Examples
    --------
    >>> len(shipped_digest(unit.identity.id)), shipped_digest("no-such-unit")
    (64, '')
    """
    if id not in shipped_units():
        return ""
    found = hashlib.sha256()
    for path in read_whole(id)[1]:
        found.update(path.read_bytes())
    return found.hexdigest()
