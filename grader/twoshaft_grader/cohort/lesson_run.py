"""A lesson run cell by cell, to see whether a unit carries it."""

from __future__ import annotations

import multiprocessing
import os
import subprocess
from dataclasses import dataclass
from multiprocessing.connection import Connection
from pathlib import Path

from nbclient import NotebookClient
from nbclient.exceptions import CellTimeoutError, DeadKernelError
from nbformat import NotebookNode

from twoshaft import errors
from twoshaft.practice.lesson import OPEN_ALL
from twoshaft.stored.assignment import UNIT
from twoshaft.units.loader import share_unit
from twoshaft.units.unit import Unit

CELL_S = 300


@dataclass(frozen=True)
class Stopped:
    """What stops a lesson first.

    Attributes
    ----------
    sentence : str
        Empty where nothing does.
    unexpected : bool
        Whether the course has no sentence of its own for it.
    """

    sentence: str
    unexpected: bool


WELL = Stopped("", unexpected=False)


class LessonRun:
    """A lesson that runs beside this process.

    Parameters
    ----------
    notebook : nbformat.NotebookNode
    name : str
        Of its file.
    folder : pathlib.Path
        In which it runs, in a workplace.
    unit : Unit
        The unit of that workplace, loaded already.
    """

    def __init__(self, notebook: NotebookNode, name: str, folder: Path, unit: Unit) -> None:
        self._name = name
        if not hasattr(os, "fork"):
            self._found = _in_kernel(notebook, name, folder)
            return
        # A copy of this process has the course loaded, and keeps what was worked out of the unit.
        self._here, there = multiprocessing.Pipe(duplex=False)
        self._child = multiprocessing.get_context("fork").Process(
            target=_run, args=(there, notebook, name, folder, unit), daemon=True
        )
        self._child.start()
        there.close()

    def stopped(self) -> Stopped:
        """What stops the lesson first. Waits for it."""
        if not hasattr(self, "_here"):
            return self._found
        try:
            if not self._here.poll(CELL_S):
                return Stopped(f"{self._name}: it runs for more than {CELL_S} seconds.", True)
            told: Stopped = self._here.recv()
            return told
        except EOFError:
            return Stopped(f"{self._name}: its process ended before the lesson did.", True)
        finally:
            self._child.kill()
            self._child.join()
            self._here.close()


def _run(told: Connection, notebook: NotebookNode, name: str, folder: Path, unit: Unit) -> None:
    """Run the cells in this process and tell what stopped one."""
    from IPython.core.interactiveshell import InteractiveShell

    os.chdir(folder)
    os.environ |= {OPEN_ALL: "1", "MPLBACKEND": "Agg"}
    nothing = os.open(os.devnull, os.O_RDWR)
    for stream in range(3):
        os.dup2(nothing, stream)
    share_unit(folder.parent / UNIT, unit)
    shell = InteractiveShell.instance()
    for number, cell in enumerate(notebook.cells, 1):
        if cell.cell_type == "code":
            done = shell.run_cell(cell.source, store_history=False)
            if error := done.error_before_exec or done.error_in_exec:
                said = error.args[0] if error.args else ""
                told.send(_sentence(name, number, type(error).__name__, str(said)))
                return
    told.send(WELL)


def _in_kernel(notebook: NotebookNode, name: str, folder: Path) -> Stopped:
    client = NotebookClient(
        notebook,
        timeout=CELL_S,
        kernel_name="python3",
        allow_errors=True,
        resources={"metadata": {"path": str(folder)}},
    )
    try:
        client.execute(stderr=subprocess.DEVNULL, env={**os.environ, OPEN_ALL: "1"})
    except (CellTimeoutError, DeadKernelError) as error:
        return Stopped(f"{name}: {str(error).splitlines()[0].rstrip('.')}.", unexpected=True)
    for number, cell in enumerate(notebook.cells, 1):
        for output in cell.get("outputs", ()):
            if output.output_type == "error":
                return _sentence(name, number, output.ename, output.evalue)
    return WELL


def _sentence(name: str, number: int, kind: str, said: str) -> Stopped:
    known = hasattr(errors, kind)  # one of ours is a sentence already
    what = (said if known else f"{kind}: {said}").rstrip(".")
    return Stopped(f"{name}, cell {number}: {what}.", unexpected=not known)
