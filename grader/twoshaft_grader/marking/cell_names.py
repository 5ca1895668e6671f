"""Which names a solution's cell deals with: what has to be known to leave it out of a pass."""

from __future__ import annotations

import ast
from collections.abc import Iterator
from dataclasses import dataclass

_CHANGING = frozenset(
    {
        *("add", "append", "clear", "difference_update", "discard", "extend", "insert"),
        *("intersection_update", "pop", "popitem", "remove", "reverse", "setdefault", "sort"),
        *("symmetric_difference_update", "update"),
    }
)
"""Methods that change a list, dict or set in place."""


@dataclass(frozen=True)
class CellNames:
    """Names in a cell.

    Attributes
    ----------
    reads, sets : frozenset of str
        Looked up, and bound; those of comprehensions and functions in it are among both.
    changes : frozenset of str
        Bound elsewhere and changed in place here.
    passes_on : bool
        Whether it goes on with what a ``ref`` gives back.
    """

    reads: frozenset[str]
    sets: frozenset[str]
    changes: frozenset[str]
    passes_on: bool

    @classmethod
    def of(cls, source: str) -> CellNames:
        """Read a cell; SyntaxError when it is no Python."""
        tree = ast.parse(source)
        names = [node for node in ast.walk(tree) if isinstance(node, ast.Name)]
        reads = {name.id for name in names if isinstance(name.ctx, ast.Load)}
        sets = {name.id for name in names if not isinstance(name.ctx, ast.Load)}
        for node in ast.walk(tree):
            if isinstance(node, ast.Import | ast.ImportFrom):
                sets |= {(each.asname or each.name).split(".")[0] for each in node.names}
        changed = set(_changed(tree))
        named = [name for name in names if name.id == "ref"]
        dropped = [
            node
            for node in ast.walk(tree)
            if isinstance(node, ast.Expr)
            and isinstance(node.value, ast.Call)
            and isinstance(node.value.func, ast.Name)
            and node.value.func.id == "ref"
        ]
        return cls(
            frozenset(reads | changed),
            frozenset(sets),
            frozenset(changed - _made_first(tree)),
            len(named) > len(dropped),
        )


def _made_first(tree: ast.Module) -> set[str]:
    """Names that the cell binds, by itself, to something new before anything else is done."""
    fresh = ast.List | ast.Dict | ast.Set | ast.ListComp | ast.DictComp | ast.SetComp
    made: set[str] = set()
    for statement in tree.body:
        if not isinstance(statement, ast.Assign):
            continue
        for target in statement.targets:
            pairs = (
                zip(target.elts, statement.value.elts, strict=False)
                if isinstance(target, ast.Tuple) and isinstance(statement.value, ast.Tuple)
                else [(target, statement.value)]
            )
            for name, value in pairs:
                if isinstance(name, ast.Name) and isinstance(value, fresh):
                    made.add(name.id)
    return made


def _changed(tree: ast.Module) -> Iterator[str]:
    for node in ast.walk(tree):
        target: ast.expr | None = None
        if isinstance(node, ast.Subscript | ast.Attribute) and not isinstance(node.ctx, ast.Load):
            target = node
        elif isinstance(node, ast.AugAssign):
            target = node.target
        elif isinstance(node, ast.Call) and isinstance(node.func, ast.Attribute):
            target = node.func.value if node.func.attr in _CHANGING else None
        while isinstance(target, ast.Subscript | ast.Attribute):
            target = target.value
        if isinstance(target, ast.Name):
            yield target.id
