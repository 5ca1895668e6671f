"""Figures of a unit file that are still typical ones: assumed for a start, not of this unit.

A line is marked by a comment at its end (``source.TYPICAL``). Whoever puts in the unit's own
figure takes the words away; a variant's own figure takes the place of the base's, mark and all.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from twoshaft.units.source import Node

FIGURES_IN_WORDS = frozenset({"standard", "thread", "strength", "hole", "shaft"})
"""Keys whose value is a size though it is no number, as M8 or H7."""


@dataclass(frozen=True, slots=True)
class Typical:
    """An entry with typical figures.

    Attributes
    ----------
    section : str
        Of the file, as ``gear train``.
    entry : str
        Its id; empty where the section itself holds the figures.
    where : str
        File and line of the first of them.
    keys : tuple of str
        What they say, as ``bore mm``.
    """

    section: str
    entry: str
    where: str
    keys: tuple[str, ...]

    @property
    def sentence(self) -> str:
        """As one line: place, entry and keys."""
        entry = f" '{self.entry}'" if self.entry else ""
        return f"{self.where}: {self.section}{entry}: {', '.join(self.keys)}"


def typical_figures(root: Node) -> tuple[Typical, ...]:
    """Entries of a unit file that hold marked figures, in the order of the file."""
    found: dict[tuple[str, str], list[tuple[str, str]]] = {}
    for section, node in root.value.items():
        for entry, key, where in _marked(node, "", section):
            found.setdefault((section, entry), []).append((key, where))
    return tuple(
        Typical(section, entry, marks[0][1], tuple(dict.fromkeys(key for key, _ in marks)))
        for (section, entry), marks in found.items()
    )


def _marked(node: Node, entry: str, key: str) -> Iterator[tuple[str, str, str]]:
    """Entry, key and place of each marked figure at or below a node."""
    if isinstance(node.value, dict):
        entry = entry or node.identifier() or ""
        for name, inner in node.value.items():
            yield from _marked(inner, entry, name)
    elif isinstance(node.value, list):
        for inner in node.value:
            yield from _marked(inner, entry, key)
    elif node.typical and (_is_number(node.value) or key in FIGURES_IN_WORDS):
        yield entry, key, node.where


def _is_number(value: object) -> bool:
    return isinstance(value, int | float) and not isinstance(value, bool)
