import subprocess
import sys
from pathlib import Path

import twoshaft.units

SHIPPED = Path(twoshaft.units.__file__).parent / "files" / "tarnbeck-b5.yaml"


def check(file):
    return subprocess.run(
        [sys.executable, "-m", "twoshaft_grader.desk", "unit", "check", str(file)],
        capture_output=True,
        text=True,
    )


def test_a_sound_unit_has_nothing_to_mend():
    done = check("tarnbeck-b5")
    assert done.returncode == 0
    assert "nothing to mend" in done.stdout


def test_what_only_a_model_can_find_is_told_with_its_line(tmp_path):
    text = SHIPPED.read_text()
    odd = tmp_path / "odd.yaml"
    odd.write_text(text.replace("teeth: 47}", "teeth: 57}"))
    line = next(n for n, row in enumerate(text.splitlines(), 1) if "id: mesh-first" in row)
    done = check(odd)
    assert done.returncode == 2
    assert "do not fit shafts 75 mm apart" in done.stderr
    assert f"line {line}" in done.stderr
