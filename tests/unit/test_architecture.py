"""The direction of imports, stated once and proven on every file of both packages and notebooks.

What counts as an import: every import statement, inside functions and under ``TYPE_CHECKING`` too,
and every text that is the dotted name of a module. A method called by a computed name hides where
it goes, so there is none.
"""

import ast
import re
from functools import cache
from graphlib import CycleError, TopologicalSorter
from pathlib import Path

import pytest

ROOT = Path(__file__).resolve().parents[2]
PACKAGES = {
    "twoshaft": ROOT / "course/twoshaft",
    "twoshaft_grader": ROOT / "grader/twoshaft_grader",
}

# Each part and what it may import besides itself. Every part may import ``errors`` and the
# version. Colours and type sizes (``plots.style``) are for screens as well as for plots.
UNITS = {"units"}
FACTS = {"outcomes", "safety", "glossary"}
LISTS = {"modules", "stored"}
STYLE = {"plots.style"}
MAY_IMPORT = {
    "errors": set(),
    "system": set(),
    "modules": set(),
    "stored": {"modules", "system"},
    "units": set(),
    "outcomes": UNITS,
    "safety": UNITS | {"stored"},
    "glossary": UNITS,
    "plots.style": set(),
    "jupyter": {"stored", "kernels", "system"},
    "models": UNITS,
    "records": set(),
    "questions": {"records"},
    "readings": UNITS | LISTS | {"models", "safety", "records", "questions"},
    "plots": UNITS | STYLE | {"models", "glossary"},
    "jobsheet": UNITS | STYLE | LISTS | {"models", "readings", "records", "outcomes", "system"},
    "practice": UNITS | LISTS | {"models", "jobsheet", "system"},
    "kernels": UNITS | {"jobsheet", "plots", "readings", "rigs", "practice"},
    "rigs": UNITS | STYLE | {"models", "readings", "safety", "plots", "jobsheet"},
}

_MODULE_NAME = re.compile(r"twoshaft(_grader)?(\.\w+)+")


@cache
def modules() -> dict[str, Path]:
    """Every file of both packages by its dotted name."""
    found = {}
    for package, folder in PACKAGES.items():
        for path in sorted(folder.rglob("*.py")):
            parts = [package, *path.relative_to(folder).with_suffix("").parts]
            found[".".join(parts[:-1] if parts[-1] == "__init__" else parts)] = path
    return found


@cache
def tree(path: Path) -> ast.Module:
    """A file's code, read once."""
    return ast.parse(path.read_text("utf-8"))


def named(code: ast.AST, base: str) -> set[str]:
    """Dotted names that code imports or spells out; ``base`` is the package it stands in."""
    names = set()
    for node in ast.walk(code):
        if isinstance(node, ast.Import):
            names |= {one.name for one in node.names}
        elif isinstance(node, ast.ImportFrom):
            above = base.split(".")[: len(base.split(".")) - node.level + 1] if node.level else []
            origin = ".".join([*above, *filter(None, [node.module])])
            names |= {f"{origin}.{one.name}" for one in node.names}
        elif isinstance(node, ast.Constant) and _MODULE_NAME.fullmatch(str(node.value)):
            # A file may name the package it stands in: its pictures and scripts lie there.
            names |= set() if f"{base}.".startswith(f"{node.value}.") else {node.value}
    return names


def file_of(name: str) -> str | None:
    """The module that a dotted name lies in; None for what is not ours."""
    while name and name not in modules():
        name = name.rpartition(".")[0]
    return name or None


@cache
def imports() -> dict[str, set[str]]:
    """What each module imports, as modules."""
    graph = {}
    for module, path in modules().items():
        package = module if path.name == "__init__.py" else module.rpartition(".")[0]
        graph[module] = {file_of(name) for name in named(tree(path), package)} - {None, module}
    return graph


def runs(module: str) -> set[str]:
    """What must have run before a module: its imports, and the first files of their packages."""
    found = imports()[module]
    around = {".".join(parts[:k]) for parts in map(lambda one: one.split("."), found)
              for k in range(2, len(parts))}  # fmt: skip
    return found | {one for one in around if not f"{module}.".startswith(f"{one}.")}


def part_of(module: str) -> str:
    """The part that a module belongs to; empty for the root of the library."""
    if module.startswith("twoshaft_grader"):
        return "grader"
    inside = module.partition(".")[2]
    return inside if inside in MAY_IMPORT else inside.partition(".")[0]


def test_every_part_of_the_library_has_its_place():
    assert {part_of(module) for module in modules()} - {"", "grader"} == set(MAY_IMPORT)


@pytest.mark.parametrize("part", MAY_IMPORT)
def test_imports_go_one_way(part):
    allowed = MAY_IMPORT[part] | {part, "errors", ""}
    wrong = [
        f"{module} imports {other}"
        for module, others in imports().items()
        for other in others
        if part_of(module) == part and part_of(other) not in allowed
    ]
    assert wrong == []


def test_the_parts_themselves_stand_in_a_row():
    order = list(TopologicalSorter(MAY_IMPORT).static_order())
    row = ["units", "models", "readings", "jobsheet", "rigs"]
    assert sorted(row, key=order.index) == row


def test_the_library_never_imports_the_grader():
    assert not [m for m, others in imports().items() if part_of(m) != "grader"
                and any(part_of(other) == "grader" for other in others)]  # fmt: skip


def test_no_two_files_need_each_other():
    graph = {module: runs(module) for module in modules()}
    try:
        TopologicalSorter(graph).prepare()
    except CycleError as error:
        pytest.fail(" -> ".join(reversed(error.args[1])))


def by_computed_name(path: Path) -> bool:
    """Whether a file calls ``getattr(thing, name)(…)`` with a name that is worked out, or imports
    what is not written down."""
    called = [node.func for node in ast.walk(tree(path)) if isinstance(node, ast.Call)]
    return any(
        isinstance(func, ast.Call)
        and ast.unparse(func.func) == "getattr"
        and not isinstance(func.args[1], ast.Constant)
        for func in called
    ) or any(
        ast.unparse(func).rpartition(".")[2] in {"import_module", "__import__"} for func in called
    )


def test_nothing_is_called_or_imported_by_a_computed_name():
    assert not {module for module, path in modules().items() if by_computed_name(path)}


def cells(path: Path) -> list[tuple[set[str], str]]:
    """Tags and code of each code cell of a notebook's text source."""
    pieces = re.split(r"^# %%(.*)$", path.read_text("utf-8"), flags=re.M)
    heads = zip(pieces[1::2], pieces[2::2], strict=True)
    return [(set(re.findall(r'"(\w+)"', h.partition("tags=")[2].partition("]")[0])), code)
            for h, code in heads if "[markdown]" not in h]  # fmt: skip


@pytest.mark.parametrize("path", sorted((ROOT / "solutions").glob("*.py")), ids=lambda p: p.stem)
def test_a_solution_takes_nothing_from_a_rig_but_the_rig(path):
    shown = [cell for cell in cells(path) if cell[0] & {"setup", "rig", "form"}]
    assert shown
    for tags, code in cells(path):
        names = named(ast.parse(code), "")
        rigs = {name for name in names if name.startswith("twoshaft.rigs")}
        assert not rigs or tags & {"setup", "rig"}, f"{path.name}: {rigs}"


@pytest.mark.parametrize("part", ["units", "models", "readings", "jobsheet"])
def test_nothing_below_reads_a_rig(part):
    assert "rigs" not in MAY_IMPORT[part]
