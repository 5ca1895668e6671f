"""What a command or a server loads before it can answer."""

import os
import subprocess
import sys

import pytest

HEAVY = ("pint", "numpy", "twoshaft.units.unit", "nbgrader.api", "sqlalchemy", "nbformat", "nbconvert", "scipy.optimize", "networkx", "matplotlib",
         "IPython", "ipywidgets", "twoshaft.readings", "twoshaft.rigs", "twoshaft_grader.marking.task")  # fmt: skip


def loaded(statement):
    code = f"import sys\n{statement}\nprint(*[name for name in {HEAVY} if name in sys.modules])"
    done = subprocess.run([sys.executable, "-c", code], capture_output=True, text=True, check=True)
    return done.stdout.strip()


@pytest.mark.slow
@pytest.mark.parametrize(
    "statement",
    [
        "import twoshaft_grader.desk.commands",
        "import twoshaft_grader.records.progress, twoshaft_grader.desk.tables",
        "import twoshaft_grader.cohort.observations, twoshaft_grader.cohort.intake",
    ],
)
def test_what_only_reads_loads_nothing_heavy(statement):
    assert loaded(statement) == ""


@pytest.mark.slow
def test_no_grammar_of_web_addresses_is_compiled():
    code = "import twoshaft, nbformat, jsonschema, sys; print(sys.modules['rfc3987_syntax'])"
    done = subprocess.run([sys.executable, "-c", code], capture_output=True, text=True, check=True)
    assert done.stdout.strip() == "None"


def test_a_sheet_and_marking_are_loaded_when_they_are_asked_for():
    import twoshaft.jobsheet
    import twoshaft_grader.marking

    assert twoshaft.jobsheet.open_sheet.__name__ == "open_sheet"
    assert all(hasattr(twoshaft.jobsheet, name) for name in twoshaft.jobsheet.__all__)
    assert all(hasattr(twoshaft_grader.marking, name) for name in twoshaft_grader.marking.__all__)
    for package in (twoshaft.jobsheet, twoshaft_grader.marking):
        with pytest.raises(AttributeError, match="no attribute 'nothing'"):
            _ = package.nothing


@pytest.mark.slow
def test_the_gradebook_is_asked_without_nbgraders_pages():
    code = (
        "import sys, twoshaft_grader\n"
        "from nbgrader.api import Gradebook\n"
        "assert 'nbgrader.server_extensions' not in sys.modules\n"
        "import nbgrader\n"
        "assert nbgrader._jupyter_server_extension_points() == [{'module': 'nbgrader'}]\n"
        "assert nbgrader.__version__ and nbgrader.api.Gradebook is Gradebook\n"
        "assert 'nbgrader.server_extensions.formgrader' in sys.modules\n"
        "print(hasattr(nbgrader, 'nothing'))"
    )
    done = subprocess.run([sys.executable, "-c", code], capture_output=True, text=True, check=True)
    assert done.stdout.strip() == "False"


@pytest.mark.slow
def test_the_packaging_tools_are_loaded_when_nbgrader_unpacks_an_archive(tmp_path):
    code = (
        "import sys, zipfile, twoshaft_grader\n"
        "from nbgrader.utils import unpack_archive\n"
        "assert 'setuptools' not in sys.modules\n"
        "with zipfile.ZipFile('a.zip', 'w') as archive: archive.writestr('inside.txt', 'said')\n"
        "unpack_archive('a.zip', 'out')\n"
        "from setuptools.archive_util import UnrecognizedFormat\n"
        "print(open('out/inside.txt').read(), UnrecognizedFormat.__name__)"
    )
    done = subprocess.run(
        [sys.executable, "-c", code], capture_output=True, text=True, check=True, cwd=tmp_path
    )
    assert done.stdout.split() == ["said", "UnrecognizedFormat"]


def test_a_command_leaves_the_setting_of_new_files_as_it_was(tmp_path, capsys):
    from twoshaft_grader.desk.commands import main

    before = os.umask(0o022)
    try:
        assert main(["progress", "--cohort", str(tmp_path)]) != 0
        assert os.umask(0o022) == 0o022
    finally:
        os.umask(before)
    assert "is no cohort folder" in capsys.readouterr().err
