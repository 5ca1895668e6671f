"""What came with this Python environment: programs found without activating it, and nbgrader."""

from __future__ import annotations

import os
import sys
from collections.abc import Callable
from importlib.util import find_spec, module_from_spec
from pathlib import Path
from types import ModuleType
from typing import Any


def tools_on_path() -> None:
    """Put this environment's programs on the search path: nbgrader calls alembic by name."""
    here = str(Path(sys.executable).parent)
    parts = os.environ.get("PATH", "").split(os.pathsep)
    if here not in parts:
        os.environ["PATH"] = os.pathsep.join([here, *parts])


def nbgrader_in_parts() -> None:
    """Have nbgrader's parts loaded without the package's own first lines.

    They load its four server pages, a second of every command that only asks the gradebook. They
    run as soon as something asks the package itself for what they make.
    """
    spec = None if "nbgrader" in sys.modules else find_spec("nbgrader")
    if spec is None or spec.loader is None:
        return
    loader, package = spec.loader, module_from_spec(spec)

    def whole(name: str) -> Any:
        if (name.startswith("__") and name != "__version__") or find_spec(f"nbgrader.{name}"):
            # What the import system asks of any module; and a part, which it then loads itself.
            raise AttributeError(f"module 'nbgrader' has no attribute {name!r}")
        del package.__getattr__
        loader.exec_module(package)
        return getattr(package, name)

    package.__getattr__ = whole  # type: ignore[method-assign]
    sys.modules["nbgrader"] = package
    _archives_when_needed()


def _archives_when_needed() -> None:
    """Have what nbgrader unpacks archives with loaded when it unpacks one.

    It is of the packaging tools, a quarter of a second of every command; nothing of ours hands
    nbgrader an archive.
    """
    name = "setuptools.archive_util"
    if name in sys.modules:
        return
    stand_in = ModuleType(name)

    def later(function: str) -> Callable[..., Any]:
        if function.startswith("__"):  # what the import system asks of any module
            raise AttributeError(f"module {name!r} has no attribute {function!r}")

        def call(*given: Any, **named: Any) -> Any:
            if sys.modules.get(name) is stand_in:
                del sys.modules[name]
            from setuptools import archive_util  # type: ignore[import-untyped]

            unpack = getattr(archive_util, function)
            return unpack(*given, **named)

        return call

    stand_in.__getattr__ = later  # type: ignore[method-assign]
    sys.modules[name] = stand_in
