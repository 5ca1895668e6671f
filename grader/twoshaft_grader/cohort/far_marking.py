"""Marking on another machine: what a worker of the cluster does, and as what it makes itself known.

A worker has no cohort folder and keeps nothing. It gets the job sheet's text, the readings and the
solution as JSON, and gives the mark as JSON. The marking itself runs in a process of its own
beside the worker, in which the limits of time and memory hold as they do in the command, and
which a sheet can end without harm to the worker.
"""

from __future__ import annotations

import hashlib
import json
import os
import platform
import subprocess
import sys
import threading
from collections.abc import Mapping
from functools import lru_cache
from importlib.metadata import version
from pathlib import Path

import twoshaft
import twoshaft_grader
from twoshaft_grader.cohort.far_parcel import RESULT
from twoshaft_grader.cohort.one_sheet import Result

ENDS = "Marking it makes the program end."
# On these a figure's last digit may depend.
_CAN_DIFFER = ("numpy", "scipy", "networkx", "pint", "distributed")


@lru_cache(maxsize=1)
def this_machine() -> dict[str, str]:
    """What must be the same wherever a cohort is marked: versions, and a digest of the code."""
    digest = hashlib.sha256()
    for package in (twoshaft, twoshaft_grader):
        root = Path(package.__file__ or "").parent
        for path in sorted(root.rglob("*")):
            if path.suffix in {".py", ".toml", ".yaml"}:
                digest.update(f"{path.relative_to(root).as_posix()}\n".encode())
                digest.update(path.read_bytes())
    python = ".".join(platform.python_version_tuple()[:2])
    return {
        "course": twoshaft.__version__,
        "course's code": digest.hexdigest()[:12],
        "Python": python,
    } | {name: version(name) for name in _CAN_DIFFER}


def difference(theirs: Mapping[str, str]) -> str:
    """In what another machine is not as this one, in words; empty where it is."""
    ours = this_machine()
    other = [name for name in ours if theirs.get(name) != ours[name]]
    return ", ".join(f"{name} {theirs.get(name, 'none')} (here {ours[name]})" for name in other)


def mark_parcel(common: str, sheet: str) -> str:
    """Mark one sheet: its result as JSON, with what this machine is. Runs on a worker."""
    told = _CHILDREN.ask(json.dumps([common, sheet]))
    if told is None:
        learner = json.loads(sheet)["learner"]
        told = json.dumps(RESULT.plain(Result(learner, None, ENDS)))
    return json.dumps([this_machine(), json.loads(told)])


class _Children:
    """Processes beside a worker, each marking one sheet at a time; kept for the next."""

    def __init__(self) -> None:
        self._lock, self._idle = threading.Lock(), list[subprocess.Popen[str]]()

    def ask(self, line: str) -> str | None:
        """What a process answers; None where it ended over it."""
        with self._lock:
            child = self._idle.pop() if self._idle else None
        child = child or self._new()
        asked, told = child.stdin, child.stdout
        assert asked is not None and told is not None  # both are pipes
        try:
            asked.write(line + "\n")
            asked.flush()
            answer = told.readline()
        except OSError:
            answer = ""
        if not answer.endswith("\n"):
            child.kill()
            child.wait()
            return None
        with self._lock:
            self._idle.append(child)
        return answer

    def _new(self) -> subprocess.Popen[str]:
        # It ends when its worker is gone, even if that was killed: nobody holds the pipe then.
        return subprocess.Popen(
            [sys.executable, "-P", "-m", "twoshaft_grader.cohort.far_child"],
            stdin=subprocess.PIPE,
            stdout=subprocess.PIPE,
            text=True,
            encoding="utf-8",
            env=os.environ | dict.fromkeys(("OPENBLAS_NUM_THREADS", "OMP_NUM_THREADS"), "1"),
        )


_CHILDREN = _Children()
