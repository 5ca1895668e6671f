"""What differs between systems: accounts and rights, which Unix has, and files in use, which
Windows will not let be replaced.
"""

from __future__ import annotations

import errno
import os
import sys
import time
from pathlib import Path
from typing import Any

WINDOWS = sys.platform == "win32"
PATIENCE_S = 2.0
"""How long a file in use is waited for; a virus scanner lets go in less: our choice."""
_STEP_S = 0.05
IN_USE = "another program has it open"
_LISTS = ("system.posix_acl_default", "system.posix_acl_access")
# There is none, or the disk knows of none.
_NO_LIST = {errno.ENODATA, errno.EOPNOTSUPP, errno.EINVAL}


def account() -> int:
    """Number of the account that this program runs in; 0 where accounts have none."""
    return os.geteuid() if hasattr(os, "geteuid") else 0


def account_name(number: int) -> str:
    """Name of an account of this machine; empty where it has none."""
    try:
        import pwd

        return pwd.getpwuid(number).pw_name
    except (ImportError, KeyError):
        return ""


def is_root() -> bool:
    """Whether this account may do all on a system that has such a one."""
    return hasattr(os, "geteuid") and os.geteuid() == 0


def has_rights() -> bool:
    """Whether the system has accounts and rights as Unix does."""
    return not WINDOWS and os.name == "posix"


def limit_memory(most: int) -> None:
    """Let no program that this one becomes or starts have more memory of its own [bytes].

    It may hold for nothing: a system may know the limit and not keep to it.
    """
    import resource

    _, hard = resource.getrlimit(resource.RLIMIT_DATA)
    if hard != resource.RLIM_INFINITY:
        most = min(most, hard)
    resource.setrlimit(resource.RLIMIT_DATA, (most, most))


def make_closed(path: Path, mode: int) -> None:
    """Give a file or folder rights, where there are any; elsewhere the folder around it decides.

    On Linux lists of further accounts (ACL) go: a folder hands its own on to all that is made in
    it, whatever rights that asks for.
    """
    if not has_rights():
        return
    if hasattr(os, "removexattr"):
        for name in _LISTS:
            try:
                os.removexattr(path, name)
            except OSError as error:
                if error.errno not in _NO_LIST:
                    raise
    path.chmod(mode)


def replace(source: str | Path, target: str | Path, **folders: Any) -> None:
    """``os.replace`` that waits for a file in use.

    Raises
    ------
    OSError
        When it cannot be done; EBUSY where another program has one of the two open.
    """
    _patiently(os.replace, source, target, **folders)


def rename(source: str | Path, target: str | Path) -> None:
    """``os.rename`` that waits for a file in use; see :func:`replace`."""
    _patiently(os.rename, source, target)


def _patiently(do: Any, source: str | Path, target: str | Path, **folders: Any) -> None:
    until = time.monotonic() + PATIENCE_S
    while True:
        try:
            do(source, target, **folders)
            return
        except PermissionError:
            if not WINDOWS:
                raise
            if time.monotonic() > until:
                raise OSError(errno.EBUSY, IN_USE, str(target)) from None
        time.sleep(_STEP_S)
