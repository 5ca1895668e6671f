"""The command that checks a unit file."""

import subprocess
import sys
from pathlib import Path

import pytest

import twoshaft.units
from twoshaft_grader.desk.commands import main

SHIPPED = Path(twoshaft.units.__file__).parent / "files" / "tarnbeck-b5.yaml"


@pytest.mark.slow
def test_a_sound_unit_has_nothing_to_mend():
    done = subprocess.run(
        [sys.executable, "-m", "twoshaft_grader.desk", "unit", "check", "tarnbeck-b5"],
        capture_output=True,
        text=True,
    )
    assert done.returncode == 0
    assert "nothing to correct" in done.stdout


@pytest.mark.slow
def test_what_only_a_model_can_find_is_told_with_its_line(tmp_path, capsys):
    text = SHIPPED.read_text()
    odd = tmp_path / "odd.yaml"
    odd.write_text(text.replace("teeth: 47}", "teeth: 57}"))
    line = next(n for n, row in enumerate(text.splitlines(), 1) if "id: mesh-first" in row)
    assert main(["unit", "check", str(odd)]) == 2
    said = capsys.readouterr().err
    assert "do not fit shafts 75 mm apart" in said
    assert f"line {line}" in said
