"""How long the course takes to start, beside Python with numpy and matplotlib in the same run.

Prints ratios, asserts no time.
"""

from __future__ import annotations

import importlib.util
import resource
import shutil
import statistics
import subprocess
import sys
import time
from pathlib import Path

import nbformat
import psutil
import pytest
from nbformat.v4 import new_markdown_cell, new_notebook

pytestmark = pytest.mark.bench

ROOT = Path(__file__).resolve().parents[2]
PEER = [sys.executable, "-c", "import numpy, matplotlib.pyplot"]
TWOSHAFT = [sys.executable, "-m", "twoshaft_grader.desk"]
READ = ["progress", "observations", "roster list", "module list", "export --help"]
NOTEBOOKS = {
    "02-order-of-work.ipynb": "course/lessons",
    "05-shims-and-preload.ipynb": "exercises",
    "06-sealant-film.ipynb": "course/lessons",
}

_spec = importlib.util.spec_from_file_location("browser_tools", ROOT / "tests/browser/conftest.py")
tools = importlib.util.module_from_spec(_spec)
sys.modules["browser_tools"] = tools  # its records look themselves up there
_spec.loader.exec_module(tools)
chromium, start_lab = tools.chromium, tools.start_lab


@pytest.fixture
def compiled(monkeypatch):
    """Python keeps what it has compiled, as it does for everybody."""
    monkeypatch.delenv("PYTHONDONTWRITEBYTECODE", raising=False)
    subprocess.run(PEER, check=True)


def processor(command, times=3):
    """Processor seconds of a program, the least of some runs."""
    seconds = []
    for _ in range(times):
        before = resource.getrusage(resource.RUSAGE_CHILDREN)
        subprocess.run(command, check=True, stdout=subprocess.DEVNULL)
        after = resource.getrusage(resource.RUSAGE_CHILDREN)
        seconds.append(after.ru_utime + after.ru_stime - before.ru_utime - before.ru_stime)
    return min(seconds)


def elapsed(command, times=3):
    """Seconds on the wall that a program takes, the least of some runs."""
    seconds = []
    for _ in range(times):
        begin = time.perf_counter()
        subprocess.run(command, check=True)
        seconds.append(time.perf_counter() - begin)
    return min(seconds)


def test_commands_that_only_read(compiled, tmp_path, capsys):
    folder = tmp_path / "demo"
    subprocess.run([*TWOSHAFT, "demo", str(folder)], check=True, stdout=subprocess.DEVNULL)
    peer = processor(PEER)
    lines = []
    for words in READ:
        command = [*TWOSHAFT, *words.split(), "--cohort", str(folder)]
        lines.append(f"twoshaft {words}: ratio {processor(command) / peer:.2f}")
    assert len(lines) == len(READ)
    with capsys.disabled():
        print(f"\nprocessor time beside numpy and matplotlib ({peer:.2f} s)", *lines, sep="\n  ")


def memory_mb(pid):
    """Its fair share, what it has alone, and all that it can see [MB]."""
    found = psutil.Process(pid).memory_full_info()
    return found.pss / 1e6, found.uss / 1e6, found.rss / 1e6


def peer_memory_mb():
    """Of Python with numpy and matplotlib."""
    code = f"{PEER[2]}; print(flush=True); input()"
    pipes = {"stdin": subprocess.PIPE, "stdout": subprocess.PIPE}
    with subprocess.Popen([sys.executable, "-c", code], **pipes) as peer:
        peer.stdout.readline()
        found = memory_mb(peer.pid)
        peer.communicate(b"\n")
    return found


def kernels_of(server):
    """Processes of notebook kernels under a server: copies of the one that has the course loaded."""
    (loaded,) = (one for one in server.children() if "twoshaft.kernels" in one.cmdline())
    return loaded.children()


@pytest.mark.parametrize("name", NOTEBOOKS)
def test_the_first_form(compiled, start_lab, tmp_path, name, capsys):
    root = tmp_path / "work"
    root.mkdir()
    shutil.copyfile(ROOT / NOTEBOOKS[name] / name, root / name)
    lab = start_lab(root, released=tools.digests_of(root / name))
    nbformat.write(
        new_notebook(
            cells=[new_markdown_cell(f"[Open it]({name})")],
            metadata={"kernelspec": {"name": "python3", "display_name": "Python 3"}},
        ),
        root / "a.ipynb",
    )
    server, waits = psutil.Process(lab.process.pid), []
    for _ in range(3):
        page = lab.open_notebook("a.ipynb", ready=None)
        link = page.locator(f"{tools.FRONT} a", has_text="Open it").first
        link.wait_for()
        page.wait_for_load_state("networkidle")
        begin = time.perf_counter()
        link.click()
        page.wait_for_selector(f"{tools.FRONT} .twoshaft")
        waits.append(time.perf_counter() - begin)
        page.wait_for_selector(tools.IDLE)
        held = max(memory_mb(one.pid) for one in kernels_of(server))
        lab.clear()
    peer, alone = elapsed(PEER), peer_memory_mb()
    with capsys.disabled():
        print(
            f"\n{name}: first form {waits[0]:.2f} s, then {statistics.median(waits[1:]):.2f} s; "
            f"beside numpy and matplotlib ({peer:.2f} s): ratio {waits[0] / peer:.1f}\n"
            f"  kernel: share {held[0]:.0f} MB, alone {held[1]:.0f} MB, seen {held[2]:.0f} MB; "
            f"peer {alone[0]:.0f} MB: ratio {held[0] / alone[0]:.2f}"
        )
    assert held[1] <= held[0] <= held[2]
