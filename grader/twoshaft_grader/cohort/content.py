"""Where solutions and lessons are: they are content, not part of the program."""

from __future__ import annotations

import re
from dataclasses import dataclass
from pathlib import Path

from twoshaft.errors import CohortError

_NUMBERED = re.compile(r"\d\d-(?P<module>[a-z0-9-]+)\.ipynb")


@dataclass(frozen=True)
class Content:
    """A folder that holds ``solutions/`` and perhaps ``course/lessons/``."""

    root: Path

    @property
    def modules(self) -> dict[str, Path]:
        """Solution notebooks by module id, in the order of their numbers."""
        return {
            match["module"]: path
            for path in sorted((self.root / "solutions").glob("*.ipynb"))
            if (match := _NUMBERED.fullmatch(path.name))
        }

    @property
    def lessons(self) -> list[Path]:
        """Lesson notebooks, in order."""
        return sorted((self.root / "course" / "lessons").glob("*.ipynb"))

    def solution(self, module: str) -> Path:
        """The solution notebook of a module.

        Raises
        ------
        CohortError
            When there is none.
        """
        modules = self.modules
        if module not in modules:
            known = ", ".join(modules) or "none"
            raise CohortError(
                f'no module is called "{module}" in {self.root / "solutions"}',
                mend=f"choose one of these: {known}",
            )
        return modules[module]


def find_content(named: str = "", *, base: Path | None = None) -> Content:
    """Find the content folder.

    Parameters
    ----------
    named : str
        The folder if it is named; relative to ``base``.

    Raises
    ------
    CohortError
        When no ``solutions/`` is found.
    """
    if named:
        root = ((base or Path.cwd()) / Path(named).expanduser()).resolve()
        if (root / "solutions").is_dir():
            return Content(root)
        raise CohortError(
            f"{root} holds no folder solutions", mend="name the course's source folder"
        )
    for root in Path(__file__).resolve().parents:
        if (root / "solutions").is_dir() and (root / "pyproject.toml").is_file():
            return Content(root)
    raise CohortError(
        "the installed program brings no solutions",
        mend="put solutions beside it, or name the course's source folder",
    )
