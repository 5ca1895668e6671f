"""The apprentice kit: a lesson and an exercise work from it alone, and no answer is in it."""

import json
import os
import re
import subprocess
import sys
import zipfile
from pathlib import Path

import nbformat
import pytest

from twoshaft.errors import CohortError
from twoshaft.readings import MODULES
from twoshaft.units.loader import SHIPPED
from twoshaft_grader.cohort.content import Content
from twoshaft_grader.cohort.folder import make_cohort
from twoshaft_grader.desk.commands import main
from twoshaft_grader.kit import kit_files

ROOT = Path(__file__).resolve().parents[2]
RUN = """
import ast, json, sys
import twoshaft
assert twoshaft.__file__.startswith(sys.argv[1]), twoshaft.__file__
try:
    import twoshaft_grader
    sys.exit("the grader is here")
except ModuleNotFoundError:
    pass
names = {}
for cell in json.load(open(sys.argv[2]))["cells"]:
    if cell["cell_type"] == "code" and cell["source"]:
        exec(compile("".join(cell["source"]), sys.argv[2], "exec"), names)
print(names["unit"].identity.id)
"""


@pytest.fixture(scope="module")
def kit(tmp_path_factory):
    """The kit, unzipped into an empty folder."""
    out = tmp_path_factory.mktemp("packed") / "kit.zip"
    assert main(["kit", "--out", str(out)]) == 0
    place = tmp_path_factory.mktemp("machine")
    with zipfile.ZipFile(out) as packed:
        packed.extractall(place)
    (folder,) = place.iterdir()
    return folder


def texts(kit):
    return {path: path.read_text("utf-8", "replace") for path in kit.rglob("*") if path.is_file()}


@pytest.mark.slow
def test_it_holds_what_is_needed_and_nothing_of_the_staffs(kit):
    names = {path.relative_to(kit).as_posix() for path in kit.rglob("*") if path.is_file()}
    assert {
        "README.md",
        "course/start/__main__.py",
        "work/exercises/02-order-of-work.ipynb",
    } <= names
    lessons = {path.name for path in (ROOT / "course/lessons").glob("*.ipynb")}
    assert {path.name for path in (kit / "work/lessons").iterdir()} == lessons
    staff = re.compile(r"solutions|grader|issued|marks|gradebook|\.pyc|tests/|jobsheet\.json$")
    assert not [name for name in names if staff.search(name)]


@pytest.mark.slow
def test_no_working_and_no_reference_is_in_it(kit):
    everything = texts(kit)
    workings = []
    for path in sorted((ROOT / "solutions").glob("*.ipynb")):
        cells = nbformat.read(path, as_version=4).cells
        workings += [c.source for c in cells if "reference" in c.metadata.get("tags", ())]
    lines = {line.strip() for text in workings for line in text.splitlines() if "ref(" in line}
    assert len(workings) > 60 and len(lines) > 200
    # `deref(` is JavaScript's own, and no call of ours
    held = "\n".join(everything.values()).replace("deref(", "")
    # A notebook holds its lines in quotes, with quotes in them escaped.
    found = [one for one in lines if one in held or json.dumps(one)[1:-1] in held]
    assert not found
    assert not [path for path, text in everything.items() if "import twoshaft_grader" in text]


@pytest.mark.slow
def test_a_lesson_and_an_exercise_run_from_the_kit_alone(kit):
    for notebook in (
        "lessons/01-measuring-and-tools.ipynb",
        "exercises/05-shims-and-preload.ipynb",
    ):
        path = kit / "work" / notebook
        # -S and an empty folder: neither this source nor what is installed in step with it is seen.
        packages = [p for p in sys.path if p.endswith("site-packages")]
        only = f"import sys; sys.path += {packages!r}\n"
        done = subprocess.run(
            [sys.executable, "-S", "-c", only + RUN, str(kit), str(path)],
            cwd=path.parent, env={**os.environ, "PYTHONPATH": str(kit / "course"), "MPLBACKEND": "agg"},
            capture_output=True, text=True,
        )  # fmt: skip
        assert done.returncode == 0, done.stderr
        assert done.stdout.splitlines()[-1] == "tarnbeck-b5"


@pytest.mark.slow
def test_the_start_makes_the_environment_of_the_kit(kit):
    """All but installing: the same commands on a stand-in for the environment."""
    code = (
        "import sys; sys.path.insert(0, 'course/start'); sys.argv = ['start', '--no-open']\n"
        "import environment, runpy\n"
        "environment.make = lambda: 'PYTHON'\n"
        "assert environment._stamp('')\n"
        "runpy.run_path('course/start/__main__.py', run_name='__main__')\n"
    )
    done = subprocess.run([sys.executable, "-c", code], cwd=kit, capture_output=True, text=True)
    assert done.stdout.endswith(f"PYTHON -m twoshaft.jupyter {kit / 'work'}\n"), done.stderr


@pytest.mark.slow
def test_its_project_can_be_built_and_asks_for_no_staff_package(kit, tmp_path):
    subprocess.run(
        [sys.executable, "-m", "hatchling", "build", "-t", "wheel", "-d", str(tmp_path)],
        cwd=kit, check=True, capture_output=True,
    )  # fmt: skip
    (wheel,) = tmp_path.glob("*.whl")
    names = zipfile.ZipFile(wheel).namelist()
    assert "twoshaft/labextension/static/screens.js" in names and not [
        n for n in names if "grader" in n
    ]
    assert [n for n in names if n.endswith("labextensions/twoshaft-opener/package.json")]
    meta = next(n for n in names if n.endswith("METADATA"))
    needs = zipfile.ZipFile(wheel).read(meta).decode()
    assert "Requires-Dist: anywidget" in needs and "typst" not in needs


@pytest.mark.slow
def test_a_cohorts_unit_comes_along_and_its_secrets_do_not(tmp_path):
    unit = tmp_path / "mine.yaml"
    shipped = (SHIPPED / "tarnbeck-b5.yaml").read_text(encoding="utf-8")
    unit.write_text(shipped.replace("id: tarnbeck-b5\n", "id: evening-unit\n", 1), "utf-8")
    own = make_cohort(tmp_path / "own", unit=str(unit), salt="very-secret-salt", timezone="UTC")
    early = make_cohort(tmp_path / "early", unit="tarnbeck-b5-early", timezone="UTC")
    files = kit_files(Content(ROOT), own)
    assert b"evening-unit" in files["work/unit.yaml"]
    assert not [name for name, data in files.items() if b"very-secret-salt" in data]
    files = kit_files(Content(ROOT), early)
    assert json.loads(files["work/workplace.json"])["unit"] == "tarnbeck-b5-early"


@pytest.mark.slow
def test_what_the_cohorts_unit_has_nothing_for_is_not_in_its_kit(tmp_path):
    small = make_cohort(tmp_path / "small", unit="tarnbeck-c4", timezone="UTC")
    files = kit_files(Content(ROOT), small)
    pressed = files["work/exercises/04-pressed-and-driven.ipynb"].decode()
    said = "This task is left out: the unit on the bench has no spring pin."
    assert said in pressed and '"grade_id": "spring"' not in pressed and "ref(" not in pressed
    assert "Left out: the unit on the bench has no" in files[
        "work/lessons/08-gear-train-and-checks.ipynb"
    ].decode("utf-8")
    assert len([name for name in files if name.startswith("work/exercises/")]) == len(MODULES)


def test_an_exercise_that_holds_its_working_is_not_packed(tmp_path):
    for folder in ("solutions", "course/lessons", "exercises", "course/start", ".ci"):
        (tmp_path / folder).mkdir(parents=True)
    for name in ("pyproject.toml", ".ci/constraints.txt", "course/start/environment.py"):
        (tmp_path / name).write_bytes((ROOT / name).read_bytes())
    with pytest.raises(CohortError, match="no lessons or exercises"):
        kit_files(Content(tmp_path))
    name = "02-order-of-work.ipynb"
    (tmp_path / "course/lessons" / name).write_bytes((ROOT / "course/lessons" / name).read_bytes())
    (tmp_path / "exercises" / name).write_bytes((ROOT / "solutions" / name).read_bytes())
    with pytest.raises(CohortError, match="holds its own working"):
        kit_files(Content(tmp_path))


@pytest.mark.slow
def test_a_place_that_cannot_be_written_is_one_sentence(tmp_path, capsys):
    assert main(["kit", "--out", str(tmp_path / "nowhere" / "kit.zip")]) == 2
    said = capsys.readouterr().err
    assert said.count("\n") == 1 and "name another place" in said
