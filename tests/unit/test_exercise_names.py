"""What a learner's exercise uses, it has: nothing of it stands in the cells that were taken out."""

import builtins
import json
import symtable
from pathlib import Path

import pytest

EXERCISES = sorted((Path(__file__).parents[2] / "exercises").glob("*.ipynb"))
SHELL = {"get_ipython", "__name__"}


def scopes(table):
    yield table
    for inner in table.get_children():
        yield from scopes(inner)


def missing(cells):
    """Names that a cell uses and neither it nor an earlier one makes."""
    known, wanting = {*dir(builtins), *SHELL}, []
    for source in cells:
        top = symtable.symtable(source, "cell", "exec")
        known |= {s.get_name() for s in top.get_symbols() if s.is_assigned() or s.is_imported()}
        wanting += [
            one.get_name()
            for scope in scopes(top)
            for one in scope.get_symbols()
            if one.is_referenced() and (scope is top or one.is_global())
            if one.get_name() not in known
        ]
    return wanting


def code(path):
    cells = json.loads(path.read_text(encoding="utf-8"))["cells"]
    return ["".join(one["source"]) for one in cells if one["cell_type"] == "code"]


@pytest.mark.parametrize("path", EXERCISES, ids=lambda path: path.stem)
def test_every_name_is_there(path):
    cells = code(path)
    assert len(cells) > 5 and missing(cells) == []


def test_a_name_of_a_cell_that_was_taken_out_is_seen():
    assert missing(["import math", "[math.pi for one in range(3)]", "shown = one.letter"]) == [
        "one"
    ]
    assert missing(["tuple(inspect.worn(x) for x in (1, 2))"]) == ["inspect"]
    assert missing(["def two(a):\n    return a + b"]) == ["b"]
    assert missing(["x = 1", "{k: x for k in 'ab'}"]) == []
