"""What a notebook's kernel does that gets no more memory: it says so and ends, alone.

An extension of IPython; JupyterLab then starts the kernel again.
"""

from __future__ import annotations

import sys
from types import TracebackType
from typing import Any

NAME = "twoshaft.jupyter.out_of_memory"
SENTENCE = (
    "This notebook needed more memory than it may have here, and its work was ended; what you "
    "answered is saved, and it starts again by itself."
)
_KEPT_BACK = 4_000_000  # bytes, so that there is room to say it


def load_ipython_extension(shell: Any) -> None:
    """See to it in a kernel's shell."""
    room = [bytearray(_KEPT_BACK)]

    def end(
        shell: Any,
        kind: type[BaseException],
        error: BaseException,
        trace: TracebackType | None,
        tb_offset: int | None = None,
    ) -> list[str]:
        room.clear()
        print(SENTENCE, file=sys.stderr, flush=True)
        shell.exit_now = True
        return []

    shell.set_custom_exc((MemoryError,), end)
