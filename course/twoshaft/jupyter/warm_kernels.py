"""Kernels that have the course loaded already: an extension of the Jupyter server.

It starts the process of ``twoshaft.kernels`` beside the server, and has kernels made by it. Where
processes cannot be copied (Windows), and whenever that process is not there, a kernel starts as
it does without this extension.
"""

from __future__ import annotations

import asyncio
import json
import os
import subprocess
import sys
from contextlib import suppress
from importlib.metadata import EntryPoint
from threading import Lock
from typing import Any, cast

import psutil
from jupyter_client.connect import KernelConnectionInfo
from jupyter_client.provisioning import KernelProvisionerFactory, LocalProvisioner

NAME = "twoshaft-warm"
UMASK = "TWOSHAFT_KERNELS_UMASK"
"""Names the environment variable that says for whom kernels write: a umask in decimal figures."""
_LAUNCHER = "ipykernel_launcher"


class _Kernels:
    """The process that makes kernels; started once, with the server."""

    def __init__(self) -> None:
        self._lock = Lock()
        self._process = subprocess.Popen(
            [sys.executable, "-P", "-m", "twoshaft.kernels"],
            stdin=subprocess.PIPE,
            stdout=subprocess.PIPE,
            text=True,
            start_new_session=True,
            umask=_umask(),
        )

    def make(self, arguments: list[str], cwd: str, env: dict[str, str]) -> int | None:
        """The process id of a new kernel; None where there is none to be had."""
        with self._lock:
            try:
                wanted = {"arguments": arguments, "cwd": cwd, "env": env}
                asked, told = self._process.stdin, self._process.stdout
                assert asked is not None and told is not None  # both are pipes
                asked.write(json.dumps(wanted) + "\n")
                asked.flush()
                return int(told.readline())
            except (OSError, ValueError):
                return None


_kernels: _Kernels | None = None


class _Copied:
    """A kernel that another process started, with what jupyter_client asks of a process."""

    stdin = stdout = stderr = None

    def __init__(self, pid: int) -> None:
        self.pid = pid
        self._process = psutil.Process(pid)  # never another process that got the same id

    def poll(self) -> int | None:
        """None while it runs; how it ended is not known."""
        return None if self._process.is_running() else 0

    def wait(self) -> int:
        """Wait until it has ended."""
        self._process.wait()
        return 0

    def send_signal(self, signum: int) -> None:
        """Send a signal to it; one that has ended does not mind."""
        with suppress(psutil.NoSuchProcess):
            self._process.send_signal(signum)

    def kill(self) -> None:
        """End it at once."""
        self.send_signal(9)

    def terminate(self) -> None:
        """Ask it to end."""
        self.send_signal(15)


class WarmProvisioner(LocalProvisioner):
    """Starts a kernel as a copy of a process that has the course loaded."""

    async def launch_kernel(self, cmd: list[str], **kwargs: Any) -> KernelConnectionInfo:
        """Start a kernel; one that is no Python of ours starts as it always does."""
        if _kernels is not None and _is_ours(cmd):
            arguments = cmd[cmd.index(_LAUNCHER) + 1 :]
            cwd, env = str(kwargs.get("cwd") or os.getcwd()), kwargs.get("env") or {**os.environ}
            pid = await asyncio.to_thread(_kernels.make, arguments, cwd, env)
            if pid is not None:
                try:
                    self.process = cast(Any, _Copied(pid))
                except psutil.NoSuchProcess:
                    pass
                else:
                    self.pid = self.pgid = pid
                    self.cwd = cwd
                    return self.connection_info
        return await super().launch_kernel(cmd, **kwargs, umask=_umask())


def _umask() -> int:
    """With what a kernel's process is started; -1: as the server's own."""
    own = os.environ.get(UMASK, "")
    return int(own) if os.name == "posix" and own.isdecimal() else -1


def _is_ours(cmd: list[str]) -> bool:
    """Whether a command starts an IPython kernel with this very Python."""
    return _LAUNCHER in cmd and cmd[0] == sys.executable


def use_warm_kernels(parent: Any = None) -> None:
    """Start the process that makes kernels, and have this process's kernels made by it.

    parent: what jupyter_client's provisioners take their configuration from.
    """
    global _kernels
    if not hasattr(os, "fork"):
        return
    _kernels = _Kernels()
    factory = KernelProvisionerFactory.instance(parent=parent)
    factory.provisioners[NAME] = EntryPoint(
        NAME, f"{__name__}:{WarmProvisioner.__name__}", factory.GROUP_NAME
    )
    factory.default_provisioner_name = NAME


def _load_jupyter_server_extension(app: Any) -> None:
    """Let the notebooks of a server have such kernels."""
    use_warm_kernels(app)
