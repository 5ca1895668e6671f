"""``course/start``: the environment is made with the pip that any supported Python brings."""

from __future__ import annotations

import importlib.util
import subprocess
from pathlib import Path

import pytest

ROOT = Path(__file__).resolve().parents[2]


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
    lines = (ROOT / ".ci/constraints.txt").read_text().splitlines()
    (pip,) = [line for line in lines if line.startswith("pip==")]
    assert int(pip.removeprefix("pip==").split(".")[0]) >= 24
