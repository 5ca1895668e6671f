"""How the command line ends: one sentence and exit code 2 for what a person can mend."""

from __future__ import annotations

import errno
import sys
import traceback
from collections.abc import Callable
from pathlib import Path

from twoshaft.errors import CourseError, UnitFileError
from twoshaft_grader.desk.shown import shown

SOME_LEFT, FAILED, STOPPED = 1, 2, 130
_AGAIN = "then run the same command again, which goes on where this one ended"
_REPORT = "run the same command with --trace and send what it prints to the course's authors"
_MENDS = {
    errno.ENOSPC: ("the disk is full", "make room"),
    errno.EDQUOT: ("this account may use no more of the disk", "make room"),
    errno.EFBIG: ("the file may grow no more", "make room"),
    errno.EBUSY: ("another program has it open", "close it there"),
    errno.EROFS: ("this place is read-only", "let it be written to"),
    errno.EACCES: ("this account may not read or write it", "see whose it is"),
    errno.EPERM: ("this account may not change it", "see whose it is"),
}
_STOPPED = "Stopped; the same command goes on where this one ended."


def run_quietly(call: Callable[[], object], *, trace: bool) -> int:
    """Call a command; turn what it raises into a sentence on standard error.

    Parameters
    ----------
    trace : bool
        Show Python's traceback as well.

    Returns
    -------
    int
        0, or 1 when somebody could not be done, or 2 after an error, or 130 when it was stopped
        from the keyboard.
    """
    try:
        code = call()
    except Exception as error:
        if trace:
            traceback.print_exc()
        print(shown(sentence_of(error)), file=sys.stderr)
        return STOPPED if type(error).__name__ == "Abort" else FAILED
    except KeyboardInterrupt:
        code = STOPPED
    if code == STOPPED:
        print(_STOPPED, file=sys.stderr)
    return code if isinstance(code, int) else 0


def sentence_of(error: Exception, *, again: str = _AGAIN, report: str = _REPORT) -> str:
    """What to tell a person about an error.

    Parameters
    ----------
    again : str
        How what was stopped by the machine is done again.
    report : str
        What to do about an error that nobody expected.
    """
    if isinstance(error, UnitFileError) and error.findings:
        return "\n".join(finding.sentence for finding in error.findings)
    if isinstance(error, CourseError):
        return error.sentence
    if type(error).__name__ == "Abort":
        return _STOPPED
    format_message = getattr(error, "format_message", None)
    if callable(format_message):  # the command line itself was not right
        context = getattr(error, "ctx", None)
        command = context.command_path if context else "twoshaft"
        what = " ".join(format_message().split()).rstrip(".")
        return f'{what or "A command is missing"}; see "{command} --help".'
    if isinstance(error, OSError):
        place = f"{_known_place(str(error.filename))}: " if error.filename else ""
        what, mend = _MENDS.get(error.errno or 0, ("", ""))
        mend = f"{mend}, {again}" if mend else ""
        return CourseError(f"{place}{what or error.strerror or error}", mend=mend).sentence
    return f"The program did not expect this ({type(error).__name__}: {error}); {report}."


def _known_place(name: str) -> str:
    """A path as people know it: what is put together aside is named by where it will stand."""
    parts = Path(name).parts
    aside = next((i for i, part in enumerate(parts) if part.endswith(".part")), len(parts))
    return str(Path(*parts[:aside])) if aside else name
