"""The course's modules: the one table of them, in the course's order.

What belongs to a module is found by its id: its readings (``readings/issue.py``), its questions
(``questions/ID.toml``), its bench sheet (``bench_sheets/modules.py`` of the grader); lesson,
exercise and solution by :attr:`Module.name`.
"""

from __future__ import annotations

from dataclasses import dataclass


@dataclass(frozen=True)
class Module:
    """One module.

    Attributes
    ----------
    number : int
        Its place in the course.
    id : str
        As ``order-of-work``; kept in every file that names the module.
    title : str
        As its lesson has it.
    """

    number: int
    id: str
    title: str

    @property
    def name(self) -> str:
        """Name of its lesson, exercise and solution, without an ending.

        >>> COURSE["order-of-work"].name
        '02-order-of-work'
        """
        return f"{self.number:02}-{self.id}"


_TITLES = {
    "course-and-safety": "How the course works, and bench safety",
    "measuring-and-tools": "Measuring and tools",
    "order-of-work": "Order of work",
    "threaded-joints": "Threaded joints",
    "pressed-and-driven": "Pressed and driven parts",
    "shims-and-preload": "Shims, end play and preload",
    "sealant-film": "Sealant film",
    "shift-and-lockout": "Shift mechanism and lockout",
    "gear-train-and-checks": "Gear train, differential and function checks",
    "reading-faults": "Reading faults backwards",
    "whole-build": "The whole build",
    "strip-mark-clean": "Strip, mark, clean",
    "inspect-and-decide": "Inspect and decide",
    "close-out": "Close out",
}

COURSE = {id: Module(number, id, title) for number, (id, title) in enumerate(_TITLES.items())}
"""Modules by id, in the course's order."""
