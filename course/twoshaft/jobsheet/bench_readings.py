"""Figures from the real bench and the maker's manual, as a job sheet holds them.

All or nothing for each task: a set that is half filled, or that a model refuses, is not used, and
says why. Reading a set never raises; what is wrong with it comes back as sentences.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any, TypeVar

from twoshaft.errors import AnswerError, CourseError
from twoshaft.jobsheet.measures import named
from twoshaft.jobsheet.numbers import read_quantity, say_quantity
from twoshaft.readings.own_bench import bench_figures, bench_tasks, put_in
from twoshaft.readings.own_figure import Figure
from twoshaft.records import Record
from twoshaft.stored.job_sheet import Answer
from twoshaft.units.unit import Unit

G = TypeVar("G", bound=Record)
IN_USE, PAGE, READ_BY = "in-use", "page", "read-by"
MAX_WORDS = 80


@dataclass(frozen=True)
class BenchSet:
    """The figures of one task.

    Attributes
    ----------
    task : str
    figures : tuple of Figure
        What is asked for.
    texts : dict of str to str
        What was typed, by entry: each figure's name, ``page`` and ``read-by``.
    wanted : bool
        Whether the learner asked for them to be used.
    """

    task: str
    figures: tuple[Figure, ...]
    texts: dict[str, str]
    wanted: bool

    @classmethod
    def of(cls, task: str, figures: tuple[Figure, ...], entries: Mapping[str, Answer]) -> BenchSet:
        """A task's set out of a sheet's entries, whatever they hold."""
        texts = {}
        names = (*(figure.name for figure in figures), PAGE, READ_BY)
        for name in names:
            value = entries.get(entry_name(task, name), Answer()).value
            texts[name] = " ".join(value.split()) if isinstance(value, str) else ""
        return cls(task, figures, texts, entries.get(entry_name(task, IN_USE)) is not None
                   and entries[entry_name(task, IN_USE)].value == "yes")  # fmt: skip

    @classmethod
    def all_of(
        cls, module: str, unit: Unit, drawn: Any, entries: Mapping[str, Answer]
    ) -> dict[str, BenchSet]:
        """The sets of all tasks of a module that take figures of one's own, by task."""
        return {
            task: cls.of(task, bench_figures(module, task, unit, drawn), entries)
            for task in bench_tasks(module)
            if getattr(drawn, task) is not None
        }

    @property
    def asks_page(self) -> bool:
        """Whether one of the figures is a limit from the manual."""
        return any(figure.kind == "manual limit" for figure in self.figures)

    @property
    def extras(self) -> tuple[tuple[str, str], ...]:
        """Entry and prompt of what is asked for besides the figures."""
        page = ((PAGE, "Manual page"),) if self.asks_page else ()
        return (*page, (READ_BY, "Read by"))

    def value(self, figure: Figure) -> float | str:
        """A figure in its unit, or the key of what was chosen.

        AnswerError when it cannot be read or is not plausible.
        """
        if figure.options:
            if fault := figure.fault(self.texts[figure.name]):
                raise AnswerError(fault)
            return self.texts[figure.name]
        quantity = read_quantity(self.texts[figure.name], figure.unit)
        value = float(quantity.m_as(named(figure.unit).pint))
        value = round(value, 9)
        if fault := figure.fault(value):
            raise AnswerError(fault)
        return value

    def words(self, figure: Figure) -> str:
        """A figure as it was read, in words; the text itself where it cannot be read."""
        text = self.texts[figure.name]
        if figure.options:
            return dict(figure.options).get(text, text)
        try:
            return say_quantity(read_quantity(text, figure.unit))
        except AnswerError:
            return text

    def fault(self, figure: Figure) -> str:
        """What is wrong with a figure; empty if nothing, or if it is blank."""
        if not self.texts[figure.name]:
            return ""
        try:
            self.value(figure)
        except AnswerError as error:
            return error.sentence
        return ""

    @property
    def missing(self) -> tuple[str, ...]:
        """Prompts of what is still blank."""
        figures = [f.prompt for f in self.figures if not self.texts[f.name]]
        return (*figures, *(prompt for name, prompt in self.extras if not self.texts[name]))

    @property
    def trouble(self) -> str:
        """Why the set cannot be used, as a sentence; empty if each of its entries is well."""
        if self.missing:
            return f"Still missing: {', '.join(self.missing)}."
        for figure in self.figures:
            if fault := self.fault(figure):
                return fault
        long = [prompt for name, prompt in self.extras if len(self.texts[name]) > MAX_WORDS]
        return f"{long[0]} is longer than {MAX_WORDS} characters." if long else ""

    @property
    def source(self) -> str:
        """Where the figures come from, for the head of a table."""
        page = f", limits from the manual, page {self.texts[PAGE]}" if self.asks_page else ""
        readings = any(figure.kind == "reading" for figure in self.figures)
        return f" (from the bench{page})" if readings else f" ({page.removeprefix(', ')})"

    def origin(self, figure: Figure) -> str:
        """Where one figure comes from."""
        limit = figure.kind == "manual limit"
        return f"from the manual, page {self.texts[PAGE]}" if limit else "from the bench"

    def put_into(self, module: str, unit: Unit, given: G) -> G:
        """What is given with this set in it. CourseError when the set cannot be used."""
        if self.trouble:
            raise CourseError(self.trouble)
        values = {figure.name: self.value(figure) for figure in self.figures}
        return put_in(module, self.task, unit, given, values, self.source)


def entry_name(task: str, name: str) -> str:
    """Name under which a sheet keeps an entry of a task's set."""
    return f"{task}-{name}"


def given_with(
    sets: Mapping[str, BenchSet], module: str, unit: Unit, drawn: G
) -> tuple[G, dict[str, str]]:
    """What is given with every set that is wanted and can be used.

    Returns
    -------
    given : Record
        ``drawn`` itself where there is none.
    refused : dict of str to str
        Why a set that is wanted is not used, by task.
    """
    given, refused = drawn, {}
    for task, one in sets.items():
        if not one.wanted:
            continue
        try:
            given = one.put_into(module, unit, given)
        except CourseError as error:
            refused[task] = error.sentence
    return given, refused


def panel_state(one: BenchSet, module: str, unit: Unit, drawn: Any, shown: str) -> dict[str, Any]:
    """What the browser shows of a task's set.

    Parameters
    ----------
    one : BenchSet
    module : str
    unit : Unit
    drawn : Record
    shown : str
        Mark of the set that the task's tables were drawn from.
    """
    refused = given_with({one.task: one}, module, unit, drawn)[1].get(one.task, "")
    used = one.wanted and not refused
    rows = [
        {
            "name": figure.name,
            "prompt": figure.prompt,
            "hint": _hint(figure),
            "options": [list(pair) for pair in figure.options],
            "text": one.texts[figure.name],
            "read": one.words(figure) if one.texts[figure.name] else "",
            "error": one.fault(figure),
            "origin": one.origin(figure) if used else "",
        }
        for figure in one.figures
    ]
    rows += [
        {"name": name, "prompt": prompt, "hint": "", "options": [], "text": one.texts[name],
         "read": "", "error": "", "origin": ""}
        for name, prompt in one.extras
    ]  # fmt: skip
    return {
        "rows": rows,
        "wanted": one.wanted,
        "used": used,
        "refused": refused,
        "stale": mark_of(one, used) != shown,
    }


def mark_of(one: BenchSet, used: bool) -> str:
    """A text that differs whenever the task's tables differ."""
    return repr(sorted(one.texts.items())) if used else ""


def _hint(figure: Figure) -> str:
    """What is plausible, and that the manual has it."""
    if figure.options:
        return ""
    unit = figure.unit if figure.unit == "°" else f" {figure.unit}"
    reach = f"{figure.low:g} to {figure.high:g}{unit}".strip()
    return f"manual: {reach}" if figure.kind == "manual limit" else reach
