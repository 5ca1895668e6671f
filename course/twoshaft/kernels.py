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
from collections.abc import Iterator
from contextlib import suppress
from typing import Any

_DRAWING = "module://matplotlib_inline.backend_inline"  # as every IPython kernel has it
_QUIET_S = 1.0  # for so long nobody asks for a kernel, and the next thing is worked out ahead


def load() -> None:
    """Load what the notebooks of the course use, and the unit that most of them have."""
    os.environ.setdefault("MPLBACKEND", _DRAWING)
    import ipykernel.ipkernel
    import ipykernel.kernelapp  # noqa: F401
    import scipy.ndimage
    import scipy.spatial
    import scipy.special  # noqa: F401

    import twoshaft.jobsheet.startpage
    import twoshaft.rigs  # noqa: F401
    from twoshaft import DEFAULT_UNIT
    from twoshaft.jobsheet import sheet  # noqa: F401
    from twoshaft.plots.figure import Picture, new_axes
    from twoshaft.units import load_unit

    load_unit(DEFAULT_UNIT)
    # The first figure loads fonts and writers of pictures.
    Picture(new_axes("", "", "").figure, "").png()
    _leave_alone()


def ahead() -> Iterator[str]:
    """Work out what the exercises ask of that unit, whoever opens them: a module at a time.

    Yields
    ------
    str
        The module that is done.
    """
    from twoshaft import DEFAULT_UNIT
    from twoshaft.errors import CourseError
    from twoshaft.readings import MODULES, draw
    from twoshaft.units import load_unit

    for module in MODULES:
        with suppress(CourseError):  # a notebook of the module says so in its place
            draw(module, load_unit(DEFAULT_UNIT), salt="", learner="", attempt=0)
        _leave_alone()
        yield module


def _leave_alone() -> None:
    """What is there stays as it is: a copy's collector would write to it, and share it no more."""
    gc.collect()
    gc.freeze()


def serve() -> None:
    """Make a kernel for each line on standard input, until it ends."""
    signal.signal(signal.SIGINT, signal.SIG_IGN)  # Ctrl C is for the server
    signal.signal(signal.SIGCHLD, signal.SIG_IGN)  # kernels that ended leave nothing behind
    load()
    steps: Iterator[str] | None = ahead()
    while True:
        if steps and not select.select([sys.stdin], [], [], _QUIET_S)[0]:
            steps = steps if next(steps, None) else None
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
