"""The job sheet as a notebook uses it."""

from __future__ import annotations

import contextlib
import hashlib
import html
import json
from collections.abc import Callable, Iterable
from dataclasses import dataclass
from datetime import UTC, datetime
from functools import cached_property
from pathlib import Path
from typing import TYPE_CHECKING, Any

from twoshaft import DEFAULT_UNIT, __version__
from twoshaft.errors import SheetError
from twoshaft.jobsheet.bench_readings import BenchSet, given_with, mark_of, panel_state
from twoshaft.jobsheet.bench_unit import unit_source
from twoshaft.jobsheet.kinds import Asker, Field, fields_by_name, well_named
from twoshaft.jobsheet.store import Saved, Store
from twoshaft.jobsheet.workplace import Place, find_place
from twoshaft.readings.own_bench import bench_tasks
from twoshaft.records import to_json
from twoshaft.stored.adjustments import own_adjustment
from twoshaft.stored.asked import ASKED, Asked
from twoshaft.stored.job_sheet import FILE as SHEET
from twoshaft.stored.job_sheet import Answer, SheetData, read_sheet

if TYPE_CHECKING:
    from twoshaft.units import Unit

PRACTICE = "practice"


def open_sheet(module: str, folder: str | Path | None = None) -> Sheet:
    """Open the job sheet of an exercise.

    Parameters
    ----------
    module : str
        Module id, as ``order-of-work``.
    folder : path, optional
        The notebook's folder; the working folder if not given.

    Returns
    -------
    Sheet
        The learner's own where an assignment lies beside the notebook in a learner's folder;
        one that is only read in a folder that is being marked; else a practice copy.

    Raises
    ------
    SheetError
        If the notebook stands in another assignment's folder, or the folder's files are damaged.
    """
    place = find_place(folder)
    if place.assignment and place.assignment.module != module:
        raise SheetError(
            f"this folder holds “{place.assignment.name}”, and this notebook is “{module}”",
            mend="open the notebook from start-here",
        )
    sheet = Sheet(module, place)
    _say_typical(sheet)
    return sheet


def _say_typical(sheet: Sheet) -> None:
    """Say on the page that figures of its unit are typical ones, as long as some are."""
    from IPython.core.getipython import get_ipython
    from IPython.display import HTML, display

    if get_ipython() is None:
        return
    entries = len(sheet.unit.typical())
    if entries:
        display(
            HTML(
                f'<p role="note"><b>Typical figures.</b> {entries} entries of this unit still hold '
                "typical figures, which nobody has looked up yet. They are good for practice and "
                "for no bench: the maker's manual decides.</p>"
            )
        )


class Sheet(Asker):
    """A learner's job sheet in a notebook; asks questions of every kind.

    Parameters
    ----------
    module : str
        Module id.
    place : Place
        Where the notebook stands.
    """

    def __init__(self, module: str, place: Place) -> None:
        self.module, self.place = module, place
        self.fields: dict[str, Field] = {}
        self.tasks: dict[str, tuple[str, ...]] = {}
        self._lent: set[str] = set()
        assignment = place.assignment
        self.learner = place.learner.id if place.learner else PRACTICE
        self.attempt = assignment.attempt if assignment else 0
        self.salt = assignment.salt if assignment else PRACTICE
        self._unit_id = assignment.unit if assignment else DEFAULT_UNIT
        name = f"practice-{module}.{SHEET}" if place.practice else SHEET
        path = None if place.shared else place.folder / name
        if place.read_only:
            self.learner = _learner_in(place.folder / SHEET) or PRACTICE
        self._store = Store(
            path,
            SheetData(
                learner=self.learner,
                module=module,
                attempt=self.attempt,
                cohort=assignment.cohort if assignment else "",
                course_version=__version__,
                unit_id=self._unit_id,
                unit_version=assignment.unit_version if assignment else "",
            ),
            read_only=place.read_only,
        )
        self._last = max((a.saved for a in self._store.data.answers.values()), default="")
        self._shown: dict[str, str] = {}
        self._listeners: list[Callable[[tuple[str, ...]], None]] = []

    @cached_property
    def unit(self) -> Unit:  # type: ignore[override]
        """The unit on the bench: the assignment's, in lessons and practice the workplace's.

        UnitFileError when it lacks a section that the module cannot do without.
        """
        from twoshaft.readings import MODULES
        from twoshaft.units import load_unit

        unit = load_unit(unit_source(self.place.folder, self.place.assignment))
        if self.module in MODULES:
            MODULES[self.module].Lot.need(unit)
        return unit

    @cached_property
    def given(self) -> Any:
        """What this learner works from, a record a task: as drawn, or from the bench."""
        if not self.bench_allowed:
            return self.drawn
        sets = self.bench_sets()
        given, refused = given_with(sets, self.module, self.unit, self.drawn)
        self._shown = {
            task: mark_of(one, one.wanted and task not in refused) for task, one in sets.items()
        }
        return given

    @cached_property
    def drawn(self) -> Any:
        """What was drawn for this learner, a record a task."""
        from twoshaft.readings import draw

        given = draw(
            self.module,
            self.unit,
            salt=self.salt,
            learner=self.learner,
            attempt=self.attempt,
            left_out=self.place.assignment.left_out if self.place.assignment else None,
        )
        self._store.describe(
            given_digest=given_digest(given),
            unit_id=self.unit.identity.id,
            unit_version=str(self.unit.identity.version),
        )
        return given

    @property
    def bench_allowed(self) -> bool:
        """Whether figures from the bench may be used: in practice, and where it was assigned so."""
        assignment = self.place.assignment
        return assignment is None or self.place.practice or assignment.bench_readings

    def bench_sets(self) -> dict[str, BenchSet]:
        """The figures from the bench as the sheet holds them, by task that can take them."""
        return BenchSet.all_of(self.module, self.unit, self.drawn, self.data.bench)

    def bench_panel(self, task: str) -> dict[str, Any]:
        """What a task's form shows of its figures from the bench; empty where it takes none."""
        if not self.bench_allowed or task not in bench_tasks(self.module):
            return {}
        self.given  # noqa: B018  what the tables were drawn from
        one = self.bench_sets().get(task)
        shown = self._shown.get(task, "")
        return panel_state(one, self.module, self.unit, self.drawn, shown) if one else {}

    def save_bench(self, name: str, value: Any) -> Saved:
        """Save an entry of the figures from the bench. SheetError if nothing can be saved here."""
        return self._store.save(name, value, bench=True)

    @property
    def read_only(self) -> bool:
        """Whether answers can only be looked at here."""
        return self._store.read_only

    @property
    def browser_key(self) -> str:
        """What a browser keeps unsaved answers under: this learner's, of this very sheet alone.

        Empty where nothing is kept.
        """
        if self._store.path is None or self.read_only:
            return ""
        whose = (self._store.path.resolve(), self.salt, self.learner, self.attempt)
        digest = hashlib.sha256("\n".join(map(str, whose)).encode()).hexdigest()
        return f"{self.learner}/{self.module}-{self.attempt}/{digest[:16]}"

    @property
    def look(self) -> dict[str, str]:
        """How pages are to look for whoever works here; nothing where nobody is known."""
        if self.place.learner is None:
            return {}
        return own_adjustment(self.place.folder.absolute().parent).look

    @property
    def data(self) -> SheetData:
        """The sheet as last read or saved."""
        return self._store.data

    def header(self) -> str:
        """Whose work this is, as one line."""
        if self.place.shared:
            return "Practice. Nothing here is marked, or kept when the notebook is closed."
        if self.place.practice or self.place.assignment is None:
            return "Practice copy. Answers are kept on this machine and nothing here is marked."
        name = self.place.assignment.name
        if self.read_only:
            return f"{name}: the job sheet of {self.learner}, for reading only."
        person = self.place.learner
        assert person is not None  # an assignment that is not only read lies in a learner's folder
        return f"{name}: working as {person.name} ({person.id}). Not you? Go back to start-here."

    @property
    def notice(self) -> str:
        """What the learner should know about the sheet's file; empty if nothing."""
        return self._store.notice

    @property
    def status(self) -> str:
        """The state of saving, as a short line."""
        if self._store.notice:
            return self._store.notice
        if self.read_only:
            return "for reading only"
        if self.place.shared:
            return "not kept when the notebook is closed"
        return f"saved {clock(self._last)}" if self._last else "nothing saved yet"

    def form(self, task: str, *fields: Field) -> Any:
        """Show a task's form.

        Parameters
        ----------
        task : str
            Task id.
        *fields : Field
            What the task asks for.

        Returns
        -------
        object
            Something a notebook displays.
        """
        from twoshaft.jobsheet.form import show_form

        self.register(task, fields)
        self._note_asked(fields)
        return show_form(self, task, fields)

    def register(self, task: str, fields: Iterable[Field], *, lent: bool = False) -> None:
        """Make a task's fields known to the sheet. ValueError if a name is used twice.

        lent: the fields are this task's only until another asks for them, as those of a rig that
        is run before the forms.
        """
        if not well_named(task):
            raise ValueError(f"{task!r} is no task name: small letters, figures, hyphens")
        fields = tuple(fields)
        mine = {field.name for field in fields}
        taken = self._lent & mine
        self.tasks = {
            other: tuple(name for name in names if name not in taken)
            for other, names in self.tasks.items()
        }
        self._lent = self._lent | mine if lent else self._lent - mine
        others = [
            self.fields[name]
            for other, names in self.tasks.items()
            if other != task
            for name in names
        ]
        self.fields = fields_by_name((*others, *fields))
        self.tasks[task] = tuple(field.name for field in fields)

    def value(self, name: str) -> Any:
        """The stored value of a field; None if it was never answered."""
        return self._store.data.value(name)

    def revision(self, name: str) -> int:
        """How often a field has been saved; the ``base`` of the next save."""
        return self._store.data.answers.get(name, Answer()).revision

    def save(self, name: str, value: Any, *, base: int | None = None) -> Saved:
        """Save a stored value, whether or not it can be read yet; used by forms.

        Raises
        ------
        SheetError
            If nothing can be saved here.
        """
        saved = self._store.save(name, value, base=base)
        self._last = max(self._last, saved.saved)
        if name in self.fields:
            self._note_asked([self.fields[name]])
        return saved

    def _note_asked(self, fields: Iterable[Field]) -> None:
        """Note for the start page what is asked, and which of these answers cannot be read."""
        if self.place.practice or self.read_only:
            return
        path = self.place.folder / ASKED.file
        try:
            known = ASKED.read(path) or Asked()
        except SheetError:
            known = Asked()
        fields = tuple(fields)
        unread = known.unread | {f.name: f.unreadable(self.value(f.name)) for f in fields}
        in_part = dict.fromkeys(known.short, True)
        in_part |= {f.name: f.in_part(self.value(f.name)) for f in fields}
        mine = {
            task: {name: self.fields[name].prompt for name in names}
            for task, names in self.tasks.items()
        }
        found = Asked(
            tasks={task: asked for task, asked in (known.tasks | mine).items() if asked},
            unread={name: why for name, why in unread.items() if why},
            short=tuple(name for name, short in in_part.items() if short),
        )
        if found != known:
            with contextlib.suppress(OSError):  # the answers count; this is made again
                ASKED.write(path, found, sync=False)

    def refresh(self) -> tuple[str, ...]:
        """Names of the fields that another window has changed since they were last read.

        Every listener is told of them: the forms of a notebook share one sheet.
        """
        changed = self._store.refresh()
        self._last = max((a.saved for a in self.data.answers.values()), default=self._last)
        if changed:
            self._tell(changed)
        return changed

    def answer(self, name: str, value: Any) -> Report:
        """Answer a field from code.

        Parameters
        ----------
        name : str
            The field.
        value : str, number, quantity, or list of keys
            Text as it would be typed, a quantity with its unit, a key, or keys.

        Returns
        -------
        Report
            One line: what was saved and when.

        Raises
        ------
        AnswerError
            If the value cannot be an answer to this field. Nothing is saved then.
        SheetError
            If no task on the sheet so far asks for such a field, or nothing can be saved here.
        """
        field = self.fields.get(name)
        if field is None:
            known = ", ".join(self.fields) or "none; run the form's cell first"
            raise SheetError(f"no form shown so far asks for “{name}”", mend=f"known: {known}")
        saved = self.save(name, field.store(value))
        self._tell((name,))
        return Report(((name, field.prompt, f"saved {clock(saved.saved)}"),))

    def on_answer(self, listener: Callable[[tuple[str, ...]], None]) -> None:
        """Call ``listener(names)`` when code or another window has answered; used by forms.

        ``bench`` among the names stands for any figure from the bench.
        """
        self._listeners.append(listener)

    def _tell(self, names: tuple[str, ...]) -> None:
        for listener in tuple(self._listeners):
            listener(names)

    def check(self) -> Report:
        """What is missing or cannot be read. Never whether an answer is right."""
        self.refresh()
        return Report(
            tuple(
                (name, field.prompt, shortfall)
                for name, field in self.fields.items()
                if (shortfall := field.shortfall(self.value(name)))
            ),
            "Every answer is there and can be read. Whether it is right is for the marking.",
        )


@dataclass(frozen=True)
class Report:
    """Lines about fields, shown as a plain list.

    Parameters
    ----------
    lines : tuple of (name, prompt, sentence)
    otherwise : str
        What to say when there are none.
    """

    lines: tuple[tuple[str, str, str], ...]
    otherwise: str = ""

    def __bool__(self) -> bool:
        return bool(self.lines)

    def __str__(self) -> str:
        return "\n".join(f"{name}: {text}" for name, _, text in self.lines) or self.otherwise

    __repr__ = __str__

    def _repr_html_(self) -> str:
        if not self.lines:
            return f"<p>{html.escape(self.otherwise)}</p>"
        rows = (f"<li>{html.escape(p)} <b>{html.escape(t)}</b></li>" for _, p, t in self.lines)
        return f"<ul>{''.join(rows)}</ul>"


def given_digest(given: Any) -> str:
    """A short mark of what was given, to see later whether it is still the same.

    >>> given_digest({"gap": 1.0}) == given_digest({"gap": 1.0})
    True
    """
    text = json.dumps(to_json(given), sort_keys=True, ensure_ascii=True, separators=(",", ":"))
    return hashlib.sha256(text.encode()).hexdigest()[:16]


def clock(saved: str) -> str:
    """The time of day here, as ``10:42``, of a time in UTC."""
    then = datetime.strptime(saved, "%Y-%m-%dT%H:%M:%SZ").replace(tzinfo=UTC)
    return then.astimezone().strftime("%H:%M")


def _learner_in(path: Path) -> str:
    """The learner a sheet names; empty if there is none, or it cannot be read."""
    try:
        return read_sheet(path).learner
    except SheetError:
        return ""
