"""Kernels that have the course loaded: the same as any other, and gone when they should be."""

from __future__ import annotations

import asyncio
import os
import signal
import sys
import time

import psutil
import pytest
from jupyter_client.manager import AsyncKernelManager
from jupyter_client.provisioning import KernelProvisionerFactory

from twoshaft import DEFAULT_UNIT, kernels
from twoshaft.jupyter import warm_kernels
from twoshaft.readings import MODULES, draw
from twoshaft.units import load_unit

pytestmark = pytest.mark.skipif(not hasattr(os, "fork"), reason="processes cannot be copied here")
PATIENCE = 120


@pytest.fixture(scope="module")
def warm():
    """The process that makes kernels, started as the server's extension starts it."""
    KernelProvisionerFactory.clear_instance()
    warm_kernels._load_jupyter_server_extension(None)
    process = warm_kernels._kernels._process
    yield process
    process.stdin.close()
    process.wait(PATIENCE)
    process.stdout.close()
    warm_kernels._kernels = None
    KernelProvisionerFactory.clear_instance()


async def started(folder):
    manager = AsyncKernelManager()
    await manager.start_kernel(cwd=str(folder), env={**os.environ, "TWOSHAFT_TEST": "here"})
    client = manager.client()
    client.start_channels()
    await client.wait_for_ready(PATIENCE)
    return manager, client


async def ask(client, code):
    """What a cell prints, and how it ended."""
    said = []

    def hear(message):
        said.append(message["content"].get("text", ""))

    reply = await client.execute_interactive(code, output_hook=hear, timeout=PATIENCE)
    return "".join(said).strip(), reply["content"]


def gone(pid):
    return not psutil.pid_exists(pid) or psutil.Process(pid).status() == psutil.STATUS_ZOMBIE


async def wait_until(true):
    async with asyncio.timeout(PATIENCE):
        while not true():
            await asyncio.sleep(0.05)


@pytest.mark.slow
def test_a_kernel_is_a_copy_with_the_course_loaded_and_a_place_of_its_own(warm, tmp_path):
    async def use():
        manager, client = await started(tmp_path)
        said, _ = await ask(
            client,
            "import os, sys; print(os.getppid(), os.getcwd(), os.environ['TWOSHAFT_TEST'], "
            "'twoshaft.rigs' in sys.modules, 'twoshaft.kernels' in sys.modules)",
        )
        assert said.split() == [str(warm.pid), str(tmp_path), "here", "True", "False"]
        first = manager.provisioner.pid
        await manager.restart_kernel(now=True)
        await client.wait_for_ready(PATIENCE)
        assert manager.provisioner.pid != first and gone(first)
        assert await manager.is_alive()
        await manager.shutdown_kernel()
        assert not await manager.is_alive()
        client.stop_channels()

    asyncio.run(use())


@pytest.mark.slow
def test_it_can_be_interrupted_and_its_end_is_seen(warm, tmp_path):
    async def use():
        manager, client = await started(tmp_path)
        code = "import pathlib, time; pathlib.Path('begun').touch(); time.sleep(600)"
        busy = asyncio.ensure_future(ask(client, code))
        await wait_until((tmp_path / "begun").exists)
        await manager.interrupt_kernel()
        _, content = await busy
        assert content["ename"] == "KeyboardInterrupt"
        os.kill(manager.provisioner.pid, signal.SIGKILL)
        async with asyncio.timeout(PATIENCE):
            while await manager.is_alive():
                await asyncio.sleep(0.05)
        client.stop_channels()
        await manager.shutdown_kernel(now=True)

    asyncio.run(use())


def test_another_kernel_starts_as_it_always_does():
    assert warm_kernels._is_ours([sys.executable, "-m", "ipykernel_launcher", "-f", "x"])
    assert not warm_kernels._is_ours(["/usr/bin/other", "-m", "ipykernel_launcher", "-f", "x"])
    assert not warm_kernels._is_ours([sys.executable, "-m", "another_kernel", "-f", "x"])


@pytest.mark.slow
def test_kernels_end_with_their_server_and_start_without_that_process_too(tmp_path, warm):
    """The last test of this file: it ends the process that makes kernels."""

    async def use():
        manager, client = await started(tmp_path)
        copied = manager.provisioner.pid
        warm.stdin.close()
        await wait_until(lambda: gone(copied) and warm.poll() is not None)
        client.stop_channels()
        await manager.shutdown_kernel(now=True)
        manager, client = await started(tmp_path)
        said, _ = await ask(client, "import os; print(os.getppid())")
        assert said == str(os.getpid())
        await manager.shutdown_kernel(now=True)
        client.stop_channels()

    asyncio.run(use())


def busy_for(monkeypatch, answers):
    """Let others seem busy as they are said to be, one answer a look, then the last for good."""
    said = iter(answers)
    last = [answers[-1]]

    def busy(self):
        return next(said, last[0])

    monkeypatch.setattr(kernels.Others, "busy", property(busy))


def test_work_ahead_stops_at_once_for_whoever_asks(monkeypatch):
    busy_for(monkeypatch, [False])
    looks, done = [], []

    def endless():
        try:
            while True:
                sum(range(1000))
        except Exception:
            done.append("swallowed")

    assert not kernels.work(endless, lambda _: looks.append(1) or len(looks) > 3)
    assert len(looks) == 4 and not done
    assert signal.getsignal(signal.SIGALRM) is signal.SIG_DFL
    assert signal.getitimer(signal.ITIMER_REAL) == (0.0, 0.0)


def test_a_look_that_takes_long_is_not_looked_into_by_another(monkeypatch):
    monkeypatch.setattr(kernels, "_LOOK_S", 0.001)
    monkeypatch.setattr(kernels.Others, "busy", False)
    begun, ended = [], []

    def asked(_):
        begun.append(len(ended))
        time.sleep(0.02)
        ended.append(1)
        return len(begun) == 4

    assert not kernels.work(endless, asked)
    assert begun == [0, 1, 2, 3]
    time.sleep(0.02)  # and no alarm comes later


def endless():
    while True:
        sum(range(100))


def test_work_ahead_waits_while_others_are_busy(monkeypatch):
    busy_for(monkeypatch, [True, True, True, True, False])
    waited, done = [], []
    assert kernels.work(lambda: done.append(len(waited)), lambda s: waited.append(s) or False)
    assert [s > 0 for s in waited[:3]] == [True, True, False] and done[0] >= 3


def test_others_are_told_from_this_process(monkeypatch):
    now = [(0.0, 0.0, 0.0)]
    monkeypatch.setattr(kernels.Others, "_now", lambda self: now[0])
    others = kernels.Others()
    assert others.busy  # nothing is known yet
    now[0] = (1.0, 1.1, 1.0)
    assert not others.busy
    now[0] = (1.05, 1.3, 1.0)
    assert not others.busy  # too short a time to tell
    now[0] = (2.0, 3.0, 2.0)
    assert others.busy


@pytest.mark.slow
def test_what_exercises_ask_of_the_unit_is_worked_out_ahead(monkeypatch):
    for module in MODULES:
        kernels.ahead(module)
    monkeypatch.setattr("twoshaft.models.shift.proof.reach", None)  # no search is left to do
    drawn = draw("reading-faults", load_unit(DEFAULT_UNIT), salt="x", learner="a01", attempt=1)
    assert isinstance(drawn, MODULES["reading-faults"].Given)
