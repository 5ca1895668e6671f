"""One notebook from one text source, byte for byte the same at every build.

The text is in jupytext's percent form. Short markers stand for the long metadata:

``# %% tags=["setup"]``, ``tags=["rig"]``, ``tags=["form"]``
    Run on opening, shown without their code, locked.
``# %% tags=["predict"]``
    ``lesson.predict("name")``: a prediction of a lesson.
``# %% tags=["then"]``, ``# %% [markdown] tags=["then"]``
    What answers the prediction above, code or text: becomes a cell that shows it when it is given.
``# %% [markdown] tags=["task"]``
    The text of the task whose form comes next; nbgrader keeps its comments here.
``# %% tags=["mark"] task="main-case" points=4``
    nbgrader's grade cell of a task; its code is written here, not in the source.
``tags=["reference"]``
    In solutions only, code or text: never released.
``needs="spring-pin"``
    In lessons only: what the unit must have for the paragraph under this heading, or for this cell
    (``units/carried.py``); it is left out where the unit has none.
"""

from __future__ import annotations

import ast
import hashlib
import json
import re
from collections import Counter
from pathlib import Path

import nbformat
from nbformat import NotebookNode

from twoshaft import __version__
from twoshaft.errors import CourseError
from twoshaft.units.carried import NEEDED

OPENED_TAGS = ("setup", "rig", "form")
"""Tags of the cells that are run when a notebook is opened."""

KERNELSPEC = {"display_name": "Python 3", "language": "python", "name": "python3"}

MARK_CELL = """\
# Points for this task are worked out here. Leave this cell as it is.
### BEGIN HIDDEN TESTS
from twoshaft_grader.marking import mark_task
mark_task("{task}")
### END HIDDEN TESTS"""

_GRADE_ID = re.compile(r"[A-Za-z0-9_-]{1,50}")


def module_of(path: Path) -> str:
    """Return the module id of a source or notebook: its file name without the number.

    Examples
    --------
    >>> module_of(Path("solutions/02-order-of-work.py"))
    'order-of-work'
    """
    return re.sub(r"^\d+-", "", Path(path).stem)


def form_task(source: str) -> str | None:
    """Return the task id in a form cell's ``sheet.form("task", …)``, None when there is none."""
    return _first_argument(source, "form")


def predicted(source: str) -> str | None:
    """Return the name in a cell's ``lesson.predict("name", …)``, None when there is none."""
    return _first_argument(source, "predict")


def _first_argument(source: str, method: str) -> str | None:
    """The text that is the first argument of a method's call in a cell."""
    try:
        tree = ast.parse(source)
    except SyntaxError:
        return None
    for node in ast.walk(tree):
        if (
            isinstance(node, ast.Call)
            and isinstance(node.func, ast.Attribute)
            and node.func.attr == method
            and node.args
            and isinstance(node.args[0], ast.Constant)
        ):
            return str(node.args[0].value)
    return None


def _shut_answers(cells: list[NotebookNode], path: Path) -> None:
    """Put what answers a prediction into cells that show it when the prediction was given."""
    name = None
    for index, cell in enumerate(cells):
        tags = cell.metadata.get("tags", [])
        if "predict" in tags:
            name = predicted(cell.source)
            cell.metadata["tags"] = [*tags, "rig"]
        if "then" not in tags:
            continue
        if name is None:
            raise CourseError(
                "it answers a prediction, and none stands above",
                where=f"{path}, cell {index + 1}",
                mend="write lesson.predict(…) into a cell above",
            )
        source = cell.source
        if cell.cell_type == "markdown":
            source = f"lesson.then({json.dumps(name)}, {json.dumps(source, ensure_ascii=False)})"
        else:
            source = _shut(source, name)
        cells[index] = nbformat.v4.new_code_cell(source)
        cells[index].metadata.update({**cell.metadata, "tags": [*tags, "rig"]})


def _shut(source: str, name: str) -> str:
    """Code whose last expression is shown when a prediction was given."""
    last = ast.parse(source).body[-1]
    if not isinstance(last, ast.Expr):
        return source  # it only works something out
    lines = source.splitlines()
    above, shown = lines[: last.lineno - 1], lines[last.lineno - 1 :]
    shown[0] = f"lesson.then({json.dumps(name)}, {shown[0]}"
    return "\n".join([*above, *shown]) + ")"


def build_notebook(text: str, path: Path) -> NotebookNode:
    """Build a notebook from percent text.

    Parameters
    ----------
    text : str
        The source.
    path : pathlib.Path
        Its file: names the module; notebooks under ``solutions`` get nbgrader's cells.

    Returns
    -------
    nbformat.NotebookNode

    Raises
    ------
    CourseError
        When a marker is incomplete or a task is marked twice.
    """
    import jupytext

    nb = jupytext.reads(text, fmt="py:percent")
    graded = "solutions" in Path(path).parts
    if not graded:
        _shut_answers(nb.cells, path)
    nb.metadata = NotebookNode(
        kernelspec=NotebookNode(KERNELSPEC),
        language_info=NotebookNode(name="python"),
        twoshaft=NotebookNode(open=True, module=module_of(path), version=__version__),
    )
    seen: Counter[str] = Counter()
    for index, cell in enumerate(nb.cells):
        where = f"{path}, cell {index + 1}"
        name = _expand(cell, nb.cells[index + 1 :], graded, where)
        if name is not None:
            if seen[name]:
                raise CourseError(f"the name {name!r} is used twice", where=where)
            identity = name
        else:
            digest = hashlib.sha256(f"{cell.cell_type}\n{cell.source}".encode()).hexdigest()
            identity = f"t-{digest[:16]}"
        seen[identity] += 1
        cell.id = identity if seen[identity] == 1 else f"{identity}-{seen[identity]}"
        cell.metadata = _sorted(cell.metadata)
    nb.nbformat, nb.nbformat_minor = 4, 5
    nbformat.validate(nb)
    return nb


def notebook_text(nb: NotebookNode) -> str:
    """Return a notebook as the text of its file: sorted keys, LF, one trailing newline."""
    return nbformat.writes(nb).replace("\r\n", "\n").rstrip("\n") + "\n"


def _expand(cell: NotebookNode, later: list, graded: bool, where: str) -> str | None:
    """Write out a cell's markers; return its grade id, None for an ordinary cell."""
    meta = cell.metadata
    tags = list(meta.get("tags", []))
    task, points = meta.pop("task", None), meta.pop("points", None)
    kept = ("tags",) if graded else ("tags", "needs")
    for key in [key for key in meta if key not in kept]:
        del meta[key]  # jupytext's own keys (spacing, markdown form)
    if meta.get("needs", "") not in ("", *NEEDED):
        raise CourseError(
            f"nothing of a unit is called {meta['needs']!r}",
            where=where,
            mend=f"use one of: {', '.join(NEEDED)}",
        )
    hidden = [tag for tag in tags if tag in OPENED_TAGS]
    if hidden or "mark" in tags:
        meta["jupyter"] = {"source_hidden": True}
    if not graded:
        if hidden:
            meta.update(editable=False, deletable=False)
        return None
    if "mark" in tags:
        if not isinstance(task, str) or not isinstance(points, int | float) or points <= 0:
            raise CourseError(
                "a mark cell needs a task and points",
                where=where,
                mend='write # %% tags=["mark"] task="main-case" points=4',
            )
        if cell.source.strip():
            raise CourseError("a mark cell holds no code of its own", where=where)
        cell.source = MARK_CELL.format(task=task)
        return _nbgrader(cell, task, where, grade=True, points=points)
    if "task" in tags:
        task = task or next(
            (found for c in later if c.cell_type == "code" and (found := form_task(c.source))), None
        )
        if cell.cell_type != "markdown" or task is None:
            raise CourseError("a task text is a text cell with a form after it", where=where)
        return _nbgrader(cell, f"{task}-task", where, task=True, points=0)
    if "form" in tags:
        task = form_task(cell.source)
        if task is None:
            raise CourseError('a form cell calls sheet.form("task", …) once', where=where)
        return _nbgrader(cell, f"{task}-form", where)
    if hidden:
        digest = hashlib.sha256(cell.source.encode()).hexdigest()[:12]
        return _nbgrader(cell, f"{hidden[0]}-{digest}", where)
    return None


def _nbgrader(
    cell: NotebookNode,
    grade_id: str,
    where: str,
    *,
    grade: bool = False,
    task: bool = False,
    points: float | None = None,
) -> str:
    if not _GRADE_ID.fullmatch(grade_id):
        raise CourseError(
            f"{grade_id!r} cannot name a cell",
            where=where,
            mend="use up to 50 letters, digits and hyphens",
        )
    data = {
        "schema_version": 3,
        "grade_id": grade_id,
        "grade": grade,
        "solution": False,
        "locked": True,
        "task": task,
        "cell_type": cell.cell_type,
    }
    if points is not None:
        data["points"] = points
    cell.metadata["nbgrader"] = data
    return grade_id


def _sorted(value):
    """Plain dicts and lists with sorted keys, as NotebookNodes."""
    if isinstance(value, dict):
        return NotebookNode({key: _sorted(value[key]) for key in sorted(value)})
    if isinstance(value, list):
        return [_sorted(item) for item in value]
    return value
