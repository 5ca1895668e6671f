"""A progress bar for what takes more than a moment."""

from __future__ import annotations

import sys
import threading
from types import TracebackType

from rich.console import Console
from rich.progress import BarColumn, MofNCompleteColumn, Progress, TextColumn, TimeElapsedColumn

AFTER_S = 1.0  # quicker things need no bar


class Bar:
    """Shows what is being done, on the terminal's standard error, once it takes a second.

    Parameters
    ----------
    doing : str
        What is being done: "marking order-of-work-1".
    total : int, optional
        How many steps; without it the bar only shows that something goes on.
    """

    def __init__(self, doing: str, total: int | None = None) -> None:
        console = Console(stderr=True)
        columns = [TextColumn("{task.description}"), BarColumn()]
        columns += [MofNCompleteColumn()] if total is not None else []
        self._progress = Progress(
            *columns,
            TimeElapsedColumn(),
            console=console,
            transient=True,
            disable=not console.is_terminal,
            redirect_stdout=sys.stdout.isatty(),  # else lines for a file would go to the terminal
        )
        self._task = self._progress.add_task(doing, total=total)
        self._timer = threading.Timer(AFTER_S, self._progress.start)
        self._timer.daemon = True

    def __enter__(self) -> Bar:
        self._timer.start()
        return self

    def __exit__(
        self,
        kind: type[BaseException] | None,
        error: BaseException | None,
        trace: TracebackType | None,
    ) -> None:
        self._timer.cancel()
        self._timer.join()
        self._progress.stop()

    def step(self) -> None:
        """One step is done."""
        self._progress.advance(self._task)
