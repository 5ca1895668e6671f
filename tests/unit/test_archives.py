"""What the two archives hold: all of the library, no solution."""

import subprocess
import sys
import tarfile
import zipfile
from pathlib import Path

import pytest

ROOT = Path(__file__).resolve().parents[2]


@pytest.fixture(scope="module")
def archives(tmp_path_factory):
    out = tmp_path_factory.mktemp("dist")
    subprocess.run(
        [sys.executable, "-m", "hatchling", "build", "-d", str(out)],
        cwd=ROOT, check=True, capture_output=True,
    )  # fmt: skip
    (wheel,) = out.glob("*.whl")
    (sdist,) = out.glob("*.tar.gz")
    with tarfile.open(sdist) as tar:
        return zipfile.ZipFile(wheel).namelist(), tar.getnames()


@pytest.mark.slow
def test_no_archive_holds_a_solution(archives):
    for names in archives:
        assert names
        assert not [name for name in names if name.startswith("solutions/")]
        assert not [name for name in names if name.split("/", 1)[-1].startswith("solutions/")]


@pytest.mark.slow
def test_the_wheel_holds_both_packages_and_the_opener(archives):
    wheel, _ = archives
    for wanted in (
        "twoshaft/__init__.py",
        "twoshaft/labextension/static/screens.js",
        "twoshaft/units/files/tarnbeck-b5.yaml",
        "twoshaft_grader/__init__.py",
    ):
        assert wanted in wheel
    assert [
        n for n in wheel if n.endswith("share/jupyter/labextensions/twoshaft-opener/package.json")
    ]
    assert not [n for n in wheel if n.startswith(("course/", "grader/", "tests/"))]


@pytest.mark.slow
def test_the_sdist_holds_what_a_build_needs(archives):
    _, sdist = archives
    for wanted in ("pyproject.toml", "README.md", "course/twoshaft/__init__.py"):
        assert [name for name in sdist if name.endswith("/" + wanted)]
