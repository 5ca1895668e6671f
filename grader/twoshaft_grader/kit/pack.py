"""Pack the kit: library, lessons and exercises as released; no solution, no grader, no mark."""

from __future__ import annotations

import io
import json
import tomllib
import zipfile
from collections.abc import Iterator
from pathlib import Path

import twoshaft
from twoshaft.errors import CohortError, CourseError
from twoshaft.readings import cannot_be_drawn, not_carried
from twoshaft.safety import load_own_sources
from twoshaft.stored.assignment import UNIT
from twoshaft.stored.safety_sources import OWN_SOURCES
from twoshaft.stored.workplace import WORKPLACE, Workplace
from twoshaft.stored.writing import write_file
from twoshaft.units import Unit, load_unit
from twoshaft_grader.cohort.content import Content
from twoshaft_grader.cohort.fit import TOO_LITTLE
from twoshaft_grader.cohort.folder import Cohort
from twoshaft_grader.cohort.photographs import photograph_files
from twoshaft_grader.notebooks.release import release
from twoshaft_grader.notebooks.shrink import for_unit, missing_heart, shrunk

TOP = "twoshaft-kit"
_HERE = Path(__file__).parent / "files"
_STAFF_ONLY = ("jinja2", "typer", "rich", "typst", "python-dateutil")
"""Packages of the project that only marking and printing use."""
_STAFF_TAGS = frozenset({"reference"})
_MOMENT = (2020, 1, 1, 0, 0, 0)  # the same kit is the same file, whenever it is packed

_PROJECT = """\
[build-system]
requires = {requires}
build-backend = "hatchling.build"

[project]
name = "twoshaft"
version = "{version}"
requires-python = "{python}"
dependencies = {dependencies}

[tool.hatch.build.targets.wheel]
packages = ["course/twoshaft"]

[tool.hatch.build.targets.wheel.shared-data]
"course/twoshaft/labextension" = "share/jupyter/labextensions/twoshaft-opener"
"""


def kit_files(content: Content, cohort: Cohort | None = None) -> dict[str, bytes]:
    """What goes into the kit, by path in it.

    Parameters
    ----------
    content : Content
        The course's source folder.
    cohort : Cohort, optional
        Whose unit stands on the bench; the shipped one without.

    Raises
    ------
    CohortError
        When something is missing, or an exercise holds what only the instructor may see.
    UnitFileError
        When there is something to mend in the college's own safety sources.
    """
    root, library = content.root, Path(twoshaft.__file__).parent
    files = {
        "README.md": (_HERE / "README.md").read_bytes(),
        "pyproject.toml": _project(root).encode(),
        ".ci/constraints.txt": _read(root / ".ci" / "constraints.txt"),
        "start.cmd": (_HERE / "start.cmd").read_bytes(),
        "course/start/__main__.py": (_HERE / "start.py").read_bytes(),
        "course/start/environment.py": _read(root / "course" / "start" / "environment.py"),
    }
    for path in _sources(library):
        files[f"course/twoshaft/{path.relative_to(library).as_posix()}"] = path.read_bytes()
    exercises = sorted((root / "exercises").glob("*.ipynb"))
    if not content.lessons or not exercises:
        raise CohortError(
            "there are no lessons or exercises", where=str(root), mend="build the notebooks first"
        )
    for path in exercises:
        _check_exercise(path)
    unit = load_unit(cohort.unit_source) if cohort else None
    for path in content.lessons:
        text = path.read_text(encoding="utf-8")
        files[f"work/lessons/{path.name}"] = (for_unit(text, unit) if unit else text).encode()
    for name, text in _practice(content, exercises, unit).items():
        files[f"work/exercises/{name}.ipynb"] = text.encode()
    own = Path(cohort.unit_source) if cohort else None
    own = own if own and own.is_file() else None
    about = Workplace(unit=cohort.unit if cohort and not own else "")
    files[f"work/{WORKPLACE.file}"] = WORKPLACE.text(about).encode()
    if own:
        files[f"work/{UNIT}"] = own.read_bytes()
    if cohort and cohort.safety_sources.is_file():
        load_own_sources(cohort.safety_sources)
        files[f"work/{OWN_SOURCES}"] = cohort.safety_sources.read_bytes()
    for name, data in (photograph_files(cohort) if cohort else {}).items():
        files[f"work/{name}"] = data
    return files


def write_kit(out: Path, content: Content, cohort: Cohort | None = None) -> int:
    """Write the kit as a zip, whole or not at all; returns how many files it holds.

    Raises
    ------
    CohortError
        As :func:`kit_files`; also when the file cannot be written.
    """
    files = kit_files(content, cohort)
    packed = io.BytesIO()
    with zipfile.ZipFile(packed, "w", zipfile.ZIP_DEFLATED) as kit:
        for name, data in sorted(files.items()):
            entry = zipfile.ZipInfo(f"{TOP}/{name}", _MOMENT)
            entry.compress_type = zipfile.ZIP_DEFLATED
            kit.writestr(entry, data)
    try:
        write_file(out, packed.getvalue())
    except OSError as error:
        reason = (error.strerror or "no reason given").lower()
        raise CohortError(
            f"the kit cannot be written ({reason})", where=str(out), mend="name another place"
        ) from None
    return len(files)


def _practice(content: Content, exercises: list[Path], unit: Unit | None) -> dict[str, str]:
    """The exercises by name: without tasks, or whole modules, that the unit has nothing for."""
    texts = {path.stem: path.read_text(encoding="utf-8") for path in exercises}
    if unit is None:
        return texts
    smaller: dict[str, str] = {}
    for module, path in content.modules.items():
        if path.stem not in texts:
            continue
        whole = path.read_text(encoding="utf-8")
        try:
            told = {task: lack.sentence for task, lack in not_carried(module, unit).items()}
            undrawn = cannot_be_drawn(
                module, unit, salt="practice", learner="practice", attempt=0, left_out=set(told)
            )
            told |= {task: TOO_LITTLE for task, _ in undrawn}
        except CourseError:
            del texts[path.stem]
            continue
        if missing_heart(whole, told) is not None:
            del texts[path.stem]
        elif told:
            smaller[path.stem] = shrunk(whole, told)
    return texts | (release(smaller) if smaller else {})


def _project(root: Path) -> str:
    """The kit's own project file: the library, with the packages that it uses."""
    project = tomllib.loads(_read(root / "pyproject.toml").decode())
    about = project["project"]
    used = [one for one in about["dependencies"] if not one.startswith(_STAFF_ONLY)]
    return _PROJECT.format(
        requires=json.dumps(project["build-system"]["requires"]),
        version=about["version"],
        python=about["requires-python"],
        dependencies=json.dumps(used, indent=4),
    )


def _sources(folder: Path) -> Iterator[Path]:
    for path in sorted(folder.rglob("*")):
        if path.is_file() and not {"__pycache__", ".ipynb_checkpoints"} & set(path.parts):
            yield path


def _check_exercise(path: Path) -> None:
    notebook = json.loads(_read(path))
    for cell in notebook["cells"]:
        if _STAFF_TAGS & set(cell["metadata"].get("tags", ())):
            raise CohortError(
                "an exercise holds its own working", where=str(path), mend="build the notebooks"
            )


def _read(path: Path) -> bytes:
    try:
        return path.read_bytes()
    except OSError:
        raise CohortError(
            "it cannot be read", where=str(path), mend="pack the kit from the course's source"
        ) from None
