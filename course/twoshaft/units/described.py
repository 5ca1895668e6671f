"""What stands below each field of a section in its source: the field's description.

Read from the source only where it is shown. pydantic would read it for every class on import,
a sixth of a second for every command and kernel.
"""

from __future__ import annotations

import ast
import inspect
from collections.abc import Iterator
from functools import cache
from itertools import pairwise
from textwrap import dedent
from typing import get_args

from pydantic import BaseModel


@cache
def descriptions(model: type[BaseModel]) -> dict[str, str]:
    """Description of each field that has one, by the field's name in Python; inherited ones too."""
    found = {name: text for base in model.__bases__ if issubclass(base, BaseModel)
             for name, text in descriptions(base).items()}  # fmt: skip
    if model is not BaseModel:
        found |= dict(_written(model))
    given = {name: field.description for name, field in model.model_fields.items()}
    return found | {name: text for name, text in given.items() if text}


def _written(model: type[BaseModel]) -> Iterator[tuple[str, str]]:
    (tree,) = ast.parse(dedent(inspect.getsource(model))).body
    assert isinstance(tree, ast.ClassDef)
    for line, below in pairwise(tree.body):
        match line, below:
            case (
                ast.AnnAssign(target=ast.Name(id=name)),
                ast.Expr(value=ast.Constant(value=str(text))),
            ):
                yield name, inspect.cleandoc(text)


def sections_of(root: type[BaseModel]) -> list[type[BaseModel]]:
    """Every model that a field of another can hold, each once, as a reader meets them."""
    found = [root]
    for model in found:
        for field in model.model_fields.values():
            found += [inner for inner in held_in(field.annotation) if inner not in found]
    return found


def held_in(annotation: object) -> Iterator[type[BaseModel]]:
    """The models in an annotation."""
    if isinstance(annotation, type) and issubclass(annotation, BaseModel):
        yield annotation
    for inner in get_args(annotation):
        yield from held_in(inner)
