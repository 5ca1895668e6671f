"""A process that has the course loaded and turns copies of itself into notebook kernels.

A kernel of its own loads the course for some seconds; a copy (fork) is there at once, and all
copies share the memory of what was loaded. JupyterLab starts this process with the server and
writes one line for each kernel, ``{"arguments": [...], "cwd": "...", "env": {...}}``; the answer is
one line with the kernel's process id. It ends when the server does.
"""

from __future__ import annotations

import gc
import json
import os
import runpy
import select
import signal
import sys
import time
from collections.abc import Callable
from contextlib import suppress
from functools import partial
from typing import Any

import psutil

_DRAWING = "module://matplotlib_inline.backend_inline"  # as every IPython kernel has it
_QUIET_S = 1.0  # for so long nobody asks for a kernel before anything is worked out ahead
_LOOK_S = 0.05  # so often what is worked out ahead looks whether it is in anybody's way
_WINDOW_S = 0.2  # over so long it is measured how busy others are; a shorter time tells little
_BUSY = 0.5  # processors: a page that opens takes more, an open page that nobody touches much less


def load() -> None:
    """Load what the notebooks of the course use, and the unit that most of them have."""
    os.environ.setdefault("MPLBACKEND", _DRAWING)
    os.environ.setdefault("PYDEVD_DISABLE_FILE_VALIDATION", "1")  # it would only warn
    import ipykernel.debugger  # 130 modules that a kernel loads as it starts, as the next ones
    import ipykernel.ipkernel
    import ipykernel.kernelapp  # noqa: F401
    import scipy.ndimage
    import scipy.spatial
    import scipy.special  # noqa: F401

    import twoshaft.jobsheet.startpage
    import twoshaft.practice
    import twoshaft.rigs  # noqa: F401
    from twoshaft import DEFAULT_UNIT
    from twoshaft.jobsheet import sheet  # noqa: F401
    from twoshaft.plots.figure import Picture, new_axes
    from twoshaft.units import load_unit

    load_unit(DEFAULT_UNIT)
    # The first figure loads fonts and writers of pictures.
    Picture(new_axes("", "", "").figure, "").png()
    _leave_alone()


def ahead(module: str) -> None:
    """Work out what the exercise of a module asks of that unit, whoever opens it."""
    from twoshaft import DEFAULT_UNIT
    from twoshaft.errors import CourseError
    from twoshaft.readings import draw
    from twoshaft.units import load_unit

    with suppress(CourseError):  # a notebook of the module says so in its place
        draw(module, load_unit(DEFAULT_UNIT), salt="", learner="", attempt=0)
    _leave_alone()


def _leave_alone() -> None:
    """What is there stays as it is: a copy's collector would write to it, and share it no more."""
    gc.collect()
    gc.freeze()


class _Asked(BaseException):
    """Somebody asks for a kernel. Not an Exception: nothing that is worked out may catch it."""


class Others:
    """How busy others keep the machine."""

    def __init__(self) -> None:
        self._then = self._now()
        self._busy = True

    @property
    def busy(self) -> bool:
        """Whether others needed more than ``_BUSY`` processors in the last window."""
        wall, machine, own = (now - then for now, then in zip(self._now(), self._then, strict=True))
        if wall >= _WINDOW_S:
            self._then = self._now()
            self._busy = machine - own > _BUSY * wall
        return self._busy

    def _now(self) -> tuple[float, float, float]:
        """The time, the machine's processor time and this process's own [s]."""
        times = psutil.cpu_times()._asdict()
        idle = times.get("idle", 0.0) + times.get("iowait", 0.0)
        twice = times.get("guest", 0.0) + times.get("guest_nice", 0.0)  # user time counts it too
        return time.monotonic(), sum(times.values()) - idle - twice, time.process_time()


def work(call: Callable[[], None], asked: Callable[[float], bool]) -> bool:
    """Do something that is in nobody's way: stop while others are busy, give up for a request.

    Parameters
    ----------
    call : callable
        What is done; given up, it leaves nothing behind but what it had kept.
    asked : callable
        Waits for so many seconds at most, and says whether somebody asks for a kernel.

    Returns
    -------
    bool
        Whether it is done.
    """
    others = Others()

    def look(*_: object) -> None:
        while True:
            if asked(_LOOK_S if others.busy else 0.0):
                raise _Asked
            if not others.busy:
                break
        # Each look sets the next: one that takes long is not looked into by another.
        signal.setitimer(signal.ITIMER_REAL, _LOOK_S)

    before = signal.signal(signal.SIGALRM, look)
    try:
        try:
            look()
            call()
        finally:
            signal.setitimer(signal.ITIMER_REAL, 0)
    except _Asked:
        return False
    finally:
        signal.signal(signal.SIGALRM, before)
    return True


def serve() -> None:
    """Make a kernel for each line on standard input, until it ends."""
    signal.signal(signal.SIGINT, signal.SIG_IGN)  # Ctrl C is for the server
    signal.signal(signal.SIGCHLD, signal.SIG_IGN)  # kernels that ended leave nothing behind
    load()
    from twoshaft.readings import MODULES

    def asked(seconds: float) -> bool:
        return bool(select.select([sys.stdin], [], [], seconds)[0])

    left = list(MODULES)
    while True:
        if left and not asked(_QUIET_S):
            if work(partial(ahead, left[0]), asked):
                del left[0]
            continue
        line = sys.stdin.buffer.readline()
        if not line:
            return
        wanted = json.loads(line)
        child = os.fork()
        if not child:
            _become_kernel(wanted)
        print(child, flush=True)


def _become_kernel(wanted: dict[str, Any]) -> None:
    """Be the kernel that was asked for; does not return."""
    parent = os.getppid()
    os.setsid()  # interrupts go to the whole group of a kernel
    signal.signal(signal.SIGINT, signal.default_int_handler)
    signal.signal(signal.SIGCHLD, signal.SIG_DFL)
    nothing = os.open(os.devnull, os.O_RDWR)
    os.dup2(nothing, 0)
    os.dup2(2, 1)  # the pipe to the server is not the kernel's
    os.environ.clear()
    os.environ.update(wanted["env"])
    os.chdir(wanted["cwd"])
    code = 1
    try:
        # Ends with the process that it was copied from, which ends with the server.
        sys.argv = ["ipykernel_launcher", *wanted["arguments"]]
        sys.argv.append(f"--IPKernelApp.parent_handle={parent}")
        runpy.run_module("ipykernel_launcher", run_name="__main__", alter_sys=True)
        code = 0
    except SystemExit as end:
        code = end.code if isinstance(end.code, int) else 1
    finally:
        sys.stdout.flush()
        sys.stderr.flush()
        os._exit(code)


if __name__ == "__main__":
    serve()
