"""``course/start``: what the environment is made from suits every Python that is supported."""

from __future__ import annotations

import importlib.util
import subprocess
import tomllib
from importlib.metadata import PackageNotFoundError, metadata
from pathlib import Path

import pytest
from packaging.requirements import Requirement
from packaging.specifiers import SpecifierSet

ROOT = Path(__file__).resolve().parents[2]
EXACT = [
    Requirement(line) for line in (ROOT / ".ci/constraints.txt").read_text("utf-8").splitlines()
]


@pytest.fixture
def environment(tmp_path, monkeypatch):
    """The module as it stands in a source folder of its own, with a Python that is there already."""
    for name in ("pyproject.toml", ".ci/constraints.txt", "course/start/environment.py"):
        (tmp_path / name).parent.mkdir(parents=True, exist_ok=True)
        (tmp_path / name).write_bytes((ROOT / name).read_bytes())
    file = tmp_path / "course/start/environment.py"
    spec = importlib.util.spec_from_file_location("environment_of_a_copy", file)
    module = importlib.util.module_from_spec(spec)
    spec.loader.exec_module(module)
    module.PYTHON.parent.mkdir(parents=True)
    module.PYTHON.touch()
    return module


def asked(environment, monkeypatch, fails=""):
    """What pip is asked for, one list a call; the call that holds ``fails`` ends in an error."""
    calls = []

    def run(command):
        assert command[:4] == [str(environment.PYTHON), "-m", "pip", "install"]
        calls.append(command[4:])
        return subprocess.CompletedProcess(command, int(bool(fails) and fails in command))

    monkeypatch.setattr(environment.subprocess, "run", run)
    return calls


def test_pip_itself_is_brought_up_to_date_before_anything_is_installed(environment, monkeypatch):
    calls = asked(environment, monkeypatch)
    assert environment.make("[dev]") == environment.PYTHON
    first, second = calls
    assert first[-2:] == ["--upgrade", "pip"]
    assert second[-2:] == ["--editable", f"{environment.ROOT}[dev]"]
    exact = ["--constraint", str(environment.ROOT / ".ci/constraints.txt")]
    for call in calls:
        assert exact == call[call.index("--constraint") :][:2]
    assert environment.make("[dev]") == environment.PYTHON
    assert len(calls) == 2, "made once, nothing is asked for again"


@pytest.mark.parametrize("fails", ["--upgrade", "--editable"])
def test_an_environment_that_could_not_be_made_is_tried_again(environment, monkeypatch, fails):
    asked(environment, monkeypatch, fails)
    with pytest.raises(SystemExit, match="run the same command again"):
        environment.make()
    calls = asked(environment, monkeypatch)
    environment.make()
    assert len(calls) == 2


def test_the_exact_version_of_pip_is_written_down():
    """A list made anew by pip freeze leaves pip out."""
    assert [str(one) for one in EXACT if one.name == "pip" and str(one.specifier).startswith("==")]


def test_every_exact_version_is_one_for_the_oldest_python_that_is_supported():
    """One that asks for 3.11.5 is not there for Debian 12, whose Python is 3.11.2."""
    supported = tomllib.loads((ROOT / "pyproject.toml").read_text("utf-8"))["project"]
    oldest = supported["requires-python"].removeprefix(">=") + ".0"
    wants = {}
    for one in EXACT:
        try:
            about = metadata(one.name)
        except PackageNotFoundError:  # of another platform
            continue
        if one.specifier.contains(about["Version"]):
            wants[one.name] = about.get("Requires-Python") or ""
    assert len(wants) > 100, "install by .ci/constraints.txt: python3 course/start"
    assert not [name for name, need in wants.items() if not SpecifierSet(need).contains(oldest)]
