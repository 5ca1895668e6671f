"""The form of one task as a learner sees it in a notebook, and its plain copy for paper.

The browser sends what was typed; the sheet keeps it; what the sheet said goes back. Nothing
here knows what is right.
"""

from __future__ import annotations

import html
from collections.abc import Callable, Iterable, Mapping
from typing import Any, Protocol

import traitlets
from IPython.display import HTML, display

from twoshaft.jobsheet.bench_readings import IN_USE, entry_name
from twoshaft.jobsheet.kinds import Field
from twoshaft.jobsheet.screen import Screen, fault_sentence
from twoshaft.jobsheet.store import Saved
from twoshaft.stored.job_sheet import Answer, SheetData


class Kept(Protocol):
    """What a form needs of the sheet that keeps its answers; :class:`Sheet` says what each is."""

    # ruff: noqa: D102 - said there
    @property
    def notice(self) -> str: ...
    @property
    def read_only(self) -> bool: ...
    @property
    def browser_key(self) -> str: ...
    @property
    def look(self) -> dict[str, str]: ...
    @property
    def data(self) -> SheetData: ...
    def header(self) -> str: ...
    def refresh(self) -> tuple[str, ...]: ...
    def bench_panel(self, task: str) -> dict[str, Any]: ...
    def save(self, name: str, value: Any, *, base: int | None = None) -> Saved: ...
    def save_bench(self, name: str, value: Any) -> Saved: ...
    def on_answer(self, listener: Callable[[tuple[str, ...]], None]) -> None: ...


def describe(field: Field) -> dict[str, Any]:
    """A field as the browser needs it.

    Parameters
    ----------
    field : Field
        Any field of a job sheet.

    Returns
    -------
    dict
        Kind, name, prompt, and the options, steps or units to choose from; nothing of any answer.
    """
    return {"kind": field.kind, "name": field.name, "prompt": field.prompt, **field.told()}


def field_state(field: Field, answer: Answer | None, note: str = "") -> dict[str, Any]:
    """What the form shows of a field: its stored value and how it was read.

    Parameters
    ----------
    field : Field
        The field.
    answer : Answer or None
        What the sheet holds for it.
    note : str
        What else the learner should know about the last save.

    Returns
    -------
    dict
        ``value``, ``saved`` (ISO time), ``revision``, ``blank``, ``read`` or ``error`` (texts),
        ``note`` and ``short`` (answered in part); empty if the field was never saved.
    """
    if answer is None or not answer.revision:
        return {}
    blank, error = field.is_blank(answer.value), field.unreadable(answer.value)
    short = field.shortfall(answer.value) if field.in_part(answer.value) else ""
    return {
        "value": answer.value,
        "saved": answer.saved,
        "revision": answer.revision,
        "blank": blank,
        "read": "" if blank or error else field.read_as(field.read(answer.value)),
        "error": error,
        "note": "; ".join(filter(None, (short, note))),
        "short": bool(short),
    }


def sheet_states(sheet: Kept, fields: Iterable[Field]) -> dict[str, dict[str, Any]]:
    """State of each field by name, from the sheet as last read."""
    answers = sheet.data.answers
    return {field.name: field_state(field, answers.get(field.name)) for field in fields}


def plain_copy(
    header: str,
    task_id: str,
    fields: Iterable[Field],
    states: Mapping[str, Mapping[str, Any]],
    bench: Mapping[str, Any] | None = None,
) -> str:
    """The answers of a task as plain HTML, for paper, feedback pages and staff.

    Parameters
    ----------
    header : str
        Whose work it is.
    task_id : str
        The task.
    fields : iterable of Field
        Its fields in order.
    states : mapping
        State of each field by name, as :func:`field_state` gives it.
    bench : mapping, optional
        The task's figures from the bench, as ``panel_state`` gives them.

    Returns
    -------
    str
        HTML without script or style sheet.
    """
    rows = []
    for field in fields:
        state = states.get(field.name) or {}
        rows.append(f"<dt><b>{html.escape(field.prompt)}</b></dt><dd>{_answer(field, state)}</dd>")
    return (
        f'<div data-task="{html.escape(task_id, quote=True)}">'
        f"<p>{html.escape(header)}</p>{bench_copy(bench or {})}<dl>{''.join(rows)}</dl></div>"
    )


def bench_copy(bench: Mapping[str, Any]) -> str:
    """The figures from the bench that are in use, as plain HTML; empty if there are none."""
    if not bench.get("used"):
        return ""
    lines = (
        f"<li>{html.escape(row['prompt'])}: {html.escape(row['read'] or row['text'])}"
        f"{' ' if row['origin'] else ''}{html.escape(row['origin'])}</li>"
        for row in bench["rows"]
    )
    return f"<p>Figures from the bench:</p><ul>{''.join(lines)}</ul>"


def _answer(field: Field, state: Mapping[str, Any]) -> str:
    if not state or state["blank"]:
        return "not answered yet"
    answer = field.paper(state["value"])
    if state.get("read"):
        answer += f" (read as {html.escape(state['read'])})"
    how = "saved"
    if state.get("error"):
        answer += f" (cannot be read: {html.escape(state['error'])})"
        how = "kept"
    saved = str(state.get("saved", ""))[:16].replace("T", " ")
    return f"{answer} <small>{how} {html.escape(saved)} UTC</small>" if saved else answer


class FormWidget(Screen):
    """The form of one task.

    Parameters
    ----------
    sheet : Kept
        The job sheet that keeps the answers.
    task_id : str
        The task.
    fields : iterable of Field
        Its fields, in the order shown.
    """

    screen = "form"

    task_id = traitlets.Unicode().tag(sync=True)
    sheet = traitlets.Unicode().tag(sync=True)
    header = traitlets.Unicode().tag(sync=True)
    fields: traitlets.List[Any] = traitlets.List().tag(sync=True)
    states = traitlets.Dict().tag(sync=True)
    notice = traitlets.Unicode().tag(sync=True)
    bench = traitlets.Dict().tag(sync=True)
    look = traitlets.Dict().tag(sync=True)

    def __init__(self, sheet: Kept, task_id: str, fields: Iterable[Field]) -> None:
        self._sheet = sheet
        self._fields = {field.name: field for field in fields}
        super().__init__(
            task_id=task_id,
            sheet=sheet.browser_key,
            header=sheet.header(),
            fields=[describe(field) for field in self._fields.values()],
            states=sheet_states(sheet, self._fields.values()),
            notice=sheet.notice,
            bench=sheet.bench_panel(task_id),
            look=sheet.look,
        )
        sheet.on_answer(self._answered_elsewhere)

    def hear(self, message: dict[str, Any]) -> None:
        """Save an answer, or look whether another window has saved one."""
        if message.get("type") == "look":
            self._sheet.refresh()
        elif message.get("type") == "bench" and self.bench:
            self._save_bench(str(message.get("name")), message.get("value"))
        elif message.get("type") == "save" and message.get("name") in self._fields:
            self._save(message["name"], message.get("value"), message.get("turn", 0))

    def _save(self, name: str, value: Any, turn: int) -> None:
        base = self.states.get(name, {}).get("revision", 0)
        try:
            saved = self._sheet.save(name, value, base=base)
        except Exception as error:
            reason = fault_sentence(error)
            self.send({"type": "refused", "name": name, "turn": turn, "reason": reason})
            return
        note = "it replaced an answer from another window" if saved.replaced is not None else ""
        state = field_state(self._fields[name], self._sheet.data.answers[name], note)
        self.send({"type": "saved", "name": name, "turn": turn, "state": state})
        if saved.notice:
            self.tell_trouble(saved.notice)
        self.states = {**self.states, name: state}

    def _save_bench(self, name: str, value: Any) -> None:
        """Save an entry of the figures from the bench, and show what follows."""
        known = {row["name"] for row in self.bench["rows"]} | {IN_USE}
        if name in known:
            saved = self._sheet.save_bench(entry_name(self.task_id, name), value)
            if saved.notice:
                self.tell_trouble(saved.notice)
            self.bench = self._sheet.bench_panel(self.task_id)
            self.send({"type": "bench-saved", "name": name})

    def _answered_elsewhere(self, names: tuple[str, ...]) -> None:
        if any(name in self._fields for name in names):
            self.states = sheet_states(self._sheet, self._fields.values())
            self.renew_copy()
        if "bench" in names:
            self.bench = self._sheet.bench_panel(self.task_id)

    def plain_copy(self) -> str:
        """The answers as plain HTML."""
        fields = self._fields.values()
        return plain_copy(self.header, self.task_id, fields, self.states, self.bench)


def show_form(sheet: Kept, task_id: str, fields: Iterable[Field]) -> None:
    """Show the form of a task in the notebook.

    Parameters
    ----------
    sheet : Kept
        The job sheet that keeps the answers. A read-only one is shown as plain text.
    task_id : str
        The task.
    fields : iterable of Field
        The task's fields, in the order shown.
    """
    fields = tuple(fields)
    if sheet.read_only:
        states = sheet_states(sheet, fields)
        bench = sheet.bench_panel(task_id)
        display(HTML(plain_copy(sheet.header(), task_id, fields, states, bench)))
    else:
        display(FormWidget(sheet, task_id, fields))
