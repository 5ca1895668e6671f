"""Run cells of a notebook where they reach nothing: no network, no file of ours, no other program.

bubblewrap (Debian's ``bubblewrap``) makes the place: Python and its packages to be read, an empty
disk of 16 MB in memory, no network, no environment, no keys; a filter of system calls lets no
process be started in it. Out of it come lines that are looked at as data, and nothing else.

What it cannot do: a learner's code and the test that looks at it run in one process. Code that
takes that process apart can find what the test says and answer for it. It gains points by that, and
nothing else; the notebook handed in, which is kept, shows it.
"""

from __future__ import annotations

import contextlib
import json
import os
import platform
import secrets
import select
import shutil
import struct
import subprocess
import sys
import sysconfig
import tempfile
import time
from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from functools import cache
from pathlib import Path

from twoshaft.errors import CohortError

CELL_S, WHOLE_S, CPU_S = 20.0, 60.0, 60
MEMORY, DISK, FILES, LINE = 1_000_000_000, 16_000_000, 64, 4_096
"""Limits of one notebook, in seconds, bytes and files, and of a line that comes out: our choice."""
_LIMITS = {
    "RLIMIT_AS": MEMORY, "RLIMIT_CPU": CPU_S, "RLIMIT_FSIZE": DISK, "RLIMIT_NOFILE": FILES,
    "RLIMIT_CORE": 0, "RLIMIT_NPROC": 64,
}  # fmt: skip
INSIDE = Path(__file__).with_name("inside.py")
_SYSTEM = ("/usr", "/lib", "/lib32", "/lib64", "/bin", "/etc/ld.so.cache", "/etc/alternatives")
# Numbers of system calls and of the machine: Linux's own tables (asm/unistd_64.h, asm-generic).
_CALLS = {
    "x86_64": (
        0xC000003E,
        56,
        435,
        (57, 58, 101, 165, 248, 249, 250, 272, 298, 308, 310, 311, 321, 323, 425),
    ),
    "aarch64": (
        0xC00000B7,
        220,
        435,
        (40, 97, 117, 217, 218, 219, 241, 268, 270, 271, 280, 282, 425),
    ),
}
"""The machine, clone, clone3, and what nobody may: fork, vfork, ptrace, another's memory, keys,
mount, places of one's own (unshare, setns), and the kernel's own programs (bpf, perf, io_uring)."""
_THREAD = 0x00010000  # CLONE_THREAD
_OTHER_NUMBERS = 0x40000000  # the same calls once more, of the x32 kind


@dataclass(frozen=True)
class Ran:
    """How a cell ended.

    ``error``: name of the error that ended it; empty if it went well. ``number``: the number in
    which it ended; None if in none. ``more``: whether it ended in anything.
    """

    error: str
    number: float | None = None


NOT_RUN = Ran("the program had ended")


def run_cells(cells: Sequence[str]) -> list[Ran]:
    """Run the cells of one notebook, one after the other, in a sandbox of its own.

    Cells after one that ended the program, took too long, or came with an answer that nobody asked
    for are not run.

    Raises
    ------
    CohortError
        When no sandbox can be made here.
    """
    check_sandbox()
    ran: list[Ran] = []
    with tempfile.TemporaryDirectory() as folder, _started(Path(folder)) as (process, out):
        until = time.monotonic() + WHOLE_S
        rest = b""
        for text in cells:
            word = secrets.token_hex(16)
            one, rest = _one(process, out, text, word, rest, min(until, time.monotonic() + CELL_S))
            ran.append(one)
            if one.error in _ENDED:
                break
    return ran + [NOT_RUN] * (len(cells) - len(ran))


TOO_LONG, GONE, FORGED = "it took too long", "the program ended", "an answer came out of turn"
_ENDED = {TOO_LONG, GONE, FORGED}


def _one(
    process: subprocess.Popen[bytes], out: int, text: str, word: str, rest: bytes, until: float
) -> tuple[Ran, bytes]:
    if rest or select.select([out], [], [], 0)[0]:
        # Between two cells nothing may come: nobody was asked.
        early = rest or os.read(out, LINE)
        return Ran(FORGED if early else GONE), b""
    assert process.stdin is not None
    line = json.dumps({"word": word, "text": text}).encode() + b"\n"
    if not _sent(process.stdin.fileno(), line, until):
        return Ran(GONE if process.poll() is not None else TOO_LONG), b""
    while b"\n" not in rest:
        left = until - time.monotonic()
        if left <= 0 or not select.select([out], [], [], left)[0]:
            return Ran(TOO_LONG), b""
        chunk = os.read(out, LINE)
        if not chunk:
            return Ran(GONE), b""
        rest += chunk
        if len(rest) > LINE:
            return Ran(FORGED), b""
    told, _, rest = rest.partition(b"\n")
    return _read(told, word), rest


def _sent(into: int, line: bytes, until: float) -> bool:
    """Write a cell to where it may not be read."""
    while line:
        left = until - time.monotonic()
        if left <= 0 or not select.select([], [into], [], left)[1]:
            return False
        try:
            line = line[os.write(into, line[:LINE]) :]
        except BrokenPipeError:
            return False
    return True


def _read(line: bytes, word: str) -> Ran:
    """What a line says: plain data of known kinds, or nothing."""
    try:
        told = json.loads(line)
    except (ValueError, RecursionError):
        return Ran(FORGED)
    if not isinstance(told, dict) or told.get("word") != word:
        return Ran(FORGED)
    error, number = told.get("error"), told.get("number")
    if not isinstance(error, str) or not (
        error == "" or (error.isidentifier() and error.isascii())
    ):
        return Ran(FORGED)
    if number is not None and type(number) is not float:
        return Ran(FORGED)
    return Ran(error[:40], number)


@contextlib.contextmanager
def _started(folder: Path) -> Iterator[tuple[subprocess.Popen[bytes], int]]:
    shutil.copyfile(INSIDE, folder / "inside.py")
    ours, theirs = os.pipe()
    rules = _filter_file(folder)
    try:
        words = [*_place(folder, rules), str(theirs)]
        process = subprocess.Popen(
            words, stdin=subprocess.PIPE, stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL,
            pass_fds=(theirs, rules), env={}, start_new_session=True,
        )  # fmt: skip
    finally:
        os.close(theirs)
        os.close(rules)
    try:
        os.set_blocking(process.stdin.fileno(), False)  # type: ignore[union-attr]
        yield process, ours
    finally:
        process.kill()  # all in it ends with it
        with contextlib.suppress(BrokenPipeError):
            process.stdin.close()  # type: ignore[union-attr]
        process.wait()
        os.close(ours)


def _place(folder: Path, rules: int) -> list[str]:
    """bubblewrap's words: what there is in the place, and what runs in it."""
    words = [
        str(_bubblewrap()), "--unshare-all", "--unshare-user", "--die-with-parent", "--new-session",
        "--clearenv", "--cap-drop", "ALL", "--uid", "65534", "--gid", "65534",
        "--hostname", "bench", "--seccomp", str(rules),
        "--proc", "/proc", "--dev", "/dev", "--size", str(DISK), "--tmpfs", "/tmp",
        "--setenv", "HOME", "/tmp", "--setenv", "LANG", "C.UTF-8", "--setenv", "PATH", "/usr/bin",
        "--setenv", "OPENBLAS_NUM_THREADS", "1", "--setenv", "MPLCONFIGDIR", "/tmp",
    ]  # fmt: skip
    for place in _to_read():
        words += ["--ro-bind-try", place, place]
    words += ["--ro-bind", str(folder / "inside.py"), "/run/inside.py", "--chdir", "/tmp"]
    words += ["--remount-ro", "/"]
    limits = json.dumps(_LIMITS)
    return [*words, sys.executable, "-I", "-B", "/run/inside.py", limits]


def _to_read() -> list[str]:
    """The system's programs, Python, and its packages; of a course's folder nothing but these."""
    own = [sys.prefix, sys.base_prefix, sys.exec_prefix, sysconfig.get_path("purelib")]
    found = dict.fromkeys([*_SYSTEM, *own, os.path.dirname(os.path.realpath(sys.executable))])
    return [place for place in found if not (Path(place) / "solutions").exists()]


def _filter_file(folder: Path) -> int:
    """A filter of system calls: threads may begin, processes may not."""
    path = folder / "filter"
    path.write_bytes(_filter())
    return os.open(path, os.O_RDONLY)


@cache
def _filter() -> bytes:
    """The filter as the kernel reads it (linux/filter.h: code, two jumps, a number each)."""
    known = _CALLS.get(platform.machine())
    if known is None:
        raise CohortError(
            f"this machine ({platform.machine()}) has no sandbox for code",
            mend="mark on a machine with x86-64 or 64-bit ARM",
        )
    machine, clone, clone3, never = known
    load, equal, least, has, end = 0x20, 0x15, 0x35, 0x45, 0x06
    allow, refuse, unknown, kill = 0x7FFF0000, 0x00050001, 0x00050026, 0x80000000
    number, arch, flags = 0, 4, 16
    steps = [(load, 0, 0, arch), (equal, 1, 0, machine), (end, 0, 0, kill), (load, 0, 0, number)]
    steps += [(least, 0, 1, _OTHER_NUMBERS), (end, 0, 0, refuse)]
    for call in never:
        steps += [(equal, 0, 1, call), (end, 0, 0, refuse)]
    steps += [(equal, 0, 1, clone3), (end, 0, 0, unknown)]  # then the library takes clone
    steps += [(equal, 0, 4, clone), (load, 0, 0, flags), (has, 1, 0, _THREAD)]
    steps += [(end, 0, 0, refuse), (end, 0, 0, allow), (end, 0, 0, allow)]
    return b"".join(struct.pack("HBBI", *step) for step in steps)


def _bubblewrap() -> str | None:
    return shutil.which("bwrap", path="/usr/bin:/usr/local/bin:/bin")


@cache
def check_sandbox() -> None:
    """See that a sandbox can be made here.

    Raises
    ------
    CohortError
        With one sentence: what is missing.
    """
    if sys.platform != "linux" or not _bubblewrap():
        raise CohortError(
            "notebooks with code are run in a sandbox, and there is none here",
            mend="mark on Linux with bubblewrap (Debian: apt install bubblewrap)",
        )
    with tempfile.TemporaryDirectory() as folder:
        try:
            with _started(Path(folder)) as (process, out):
                word = "here"
                one, _ = _one(process, out, "1.0", word, b"", time.monotonic() + CELL_S)
        except OSError as error:
            one = Ran(str(error))
    if one.number != 1.0:
        raise CohortError(
            "notebooks with code are run in a sandbox, which this machine does not let be made "
            f"({one.error})",
            mend="ask who looks after it to allow user namespaces to bubblewrap",
        )
