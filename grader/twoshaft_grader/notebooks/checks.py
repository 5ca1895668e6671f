"""What must hold for every built notebook; each finding is one sentence."""

from __future__ import annotations

import ast
from pathlib import Path

from nbformat import NotebookNode

from twoshaft_grader.notebooks.text import form_task

MAX_LINES = 15


def _has(cell: NotebookNode, tag: str) -> bool:
    return tag in cell.metadata.get("tags", [])


def _common(nb: NotebookNode, path: Path) -> list[str]:
    findings = []
    for number, cell in enumerate(nb.cells, 1):
        if cell.cell_type != "code":
            continue
        where = f"{path}, cell {number}"
        lines = len(cell.source.splitlines())
        if lines > MAX_LINES:
            findings.append(f"{where}: has {lines} lines; keep it to {MAX_LINES}.")
        if cell.get("outputs") or cell.get("execution_count"):
            findings.append(f"{where}: holds an output; notebooks are stored without.")
        try:
            tree = ast.parse(cell.source)
        except SyntaxError as error:
            findings.append(f"{where}, line {error.lineno}: is not Python: {error.msg}.")
            continue
        findings += [
            f"{where}, line {node.lineno}: defines a function; put it in the library."
            for node in ast.walk(tree)
            if isinstance(node, ast.FunctionDef | ast.AsyncFunctionDef | ast.ClassDef)
        ]
    return findings


def check_lesson(nb: NotebookNode, path: Path) -> list[str]:
    """Return the findings on a lesson."""
    return _common(nb, path)


def check_solution(nb: NotebookNode, path: Path) -> list[str]:
    """Return the findings on a solution that can be seen without running it."""
    findings = _common(nb, path)
    forms = [form_task(c.source) for c in nb.cells if _has(c, "form")]
    marks = [c.metadata.nbgrader.grade_id for c in nb.cells if _has(c, "mark")]
    texts = [c.metadata.nbgrader.grade_id for c in nb.cells if _has(c, "task")]
    for task in forms:
        if task not in marks:
            findings.append(f"{path}: task {task} has no mark cell; add one with its points.")
        if f"{task}-task" not in texts:
            findings.append(
                f'{path}: task {task} has no task text; tag the text before its form ["task"].'
            )
    findings += [
        f"{path}: task {task} is marked but has no form." for task in marks if task not in forms
    ]
    findings += check_reference_code(nb, path)
    return findings


def check_reference_code(nb: NotebookNode, path: Path) -> list[str]:
    """Return where reference cells reach for a field other than through ``ref``.

    Two ways round follow-through are found: using ``sheet`` in a reference cell, and going on
    with the value that was handed to ``ref`` in place of the one it gave back.
    """
    findings = []
    handed: dict[str, str] = {}  # variable -> field whose reference it is
    for number, cell in enumerate(nb.cells, 1):
        if cell.cell_type != "code" or not _has(cell, "reference"):
            continue
        where = f"{path}, cell {number}"
        try:
            tree = ast.parse(cell.source)
        except SyntaxError:
            continue  # _common says so
        for statement in tree.body:
            stores = {
                n.id
                for n in ast.walk(statement)
                if isinstance(n, ast.Name) and isinstance(n.ctx, ast.Store)
            }
            loads = {
                n.id: n.lineno
                for n in ast.walk(statement)
                if isinstance(n, ast.Name) and isinstance(n.ctx, ast.Load)
            }
            if "sheet" in loads:
                findings.append(
                    f"{where}, line {loads['sheet']}: uses the sheet; use what ref gave back."
                )
            findings += [
                f"{where}, line {loads[name]}: goes on with {name}, handed to ref as "
                f"{field}; use what ref gave back."
                for name, field in handed.items()
                if name in loads
            ]
            for name in stores:
                handed.pop(name, None)
            for call in ast.walk(statement):
                if (
                    isinstance(call, ast.Call)
                    and isinstance(call.func, ast.Name)
                    and call.func.id == "ref"
                    and len(call.args) == 2
                    and isinstance(call.args[1], ast.Name)
                    and call.args[1].id not in stores
                ):
                    field = ast.unparse(call.args[0])
                    handed[call.args[1].id] = field
    return findings


def check_release(nb: NotebookNode, path: Path) -> list[str]:
    """Return the findings on a released exercise: nothing of the answer may be left."""
    findings = _common(nb, path)
    for number, cell in enumerate(nb.cells, 1):
        where = f"{path}, cell {number}"
        if _has(cell, "reference"):
            findings.append(f"{where}: is a reference cell.")
        for left in ("BEGIN SOLUTION", "HIDDEN TESTS", "MARK SCHEME", "mark_task", "ref("):
            if left in cell.source:
                findings.append(f"{where}: still holds {left!r}.")
    return findings
