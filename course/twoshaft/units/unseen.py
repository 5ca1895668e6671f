"""What may not stand in the texts of a unit file, since they are shown on pages and terminals."""

from __future__ import annotations

import re
import unicodedata
from collections.abc import Iterator

from twoshaft.units.findings import Finding
from twoshaft.units.source import Node

_PLAIN = re.compile(r"[\x20-\x7e\xa1-\xac\xae-\u024f\u0370-\u03ff\u2010-\u2027\u2030-\u205e]*")
"""Texts that need no look at each character: nearly all."""
_MARKUP = re.compile(r"<[A-Za-z/!?]")
_UNSEEN = frozenset({"Cc", "Cf", "Cs", "Co", "Cn", "Zl", "Zp"})
_ALLOWED = "\n\t"


def unseen_characters(root: Node) -> Iterator[Finding]:
    """Findings about control characters, marks that turn the direction of reading, and markup.

    Whoever reads a name on a page or in a terminal must read what the file says, and nothing of it
    may act there.
    """
    if isinstance(root.value, dict):
        for key, node in root.value.items():
            yield from _about(str(key), node)
            yield from unseen_characters(node)
    elif isinstance(root.value, list):
        for node in root.value:
            yield from unseen_characters(node)
    elif isinstance(root.value, str):
        yield from _about(root.value, root)


def _about(text: str, node: Node) -> Iterator[Finding]:
    if not _PLAIN.fullmatch(text):
        for one in text:
            if one not in _ALLOWED and unicodedata.category(one) in _UNSEEN:
                yield Finding(
                    node.where,
                    f"a text holds a character that cannot be seen (U+{ord(one):04X})",
                    "delete the text there and type it again",
                )
                return
    if _MARKUP.search(text):
        yield Finding(
            node.where,
            "a text holds markup (a '<' with a letter after it)",
            "write it in words, or leave a space after '<'",
        )
