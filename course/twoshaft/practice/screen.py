"""A question of a lesson on the screen: answer, give it, and be told at once."""

from __future__ import annotations

import html
from collections.abc import Callable, Iterable, Sequence
from dataclasses import dataclass
from typing import Any

import traitlets

from twoshaft.jobsheet.form import describe
from twoshaft.jobsheet.kinds import Field
from twoshaft.jobsheet.screen import Screen
from twoshaft.practice.keep import Keep

RIGHT, OTHER, UNREAD = "right", "other", "unread"


@dataclass(frozen=True)
class Told:
    """What is said to one answer.

    Parameters
    ----------
    how : str
        ``right``, ``other`` or ``unread`` (cannot be read, so that nothing is given away).
    said : str
        The answer and what is so, side by side.
    why : str
        Why it is so.
    """

    how: str
    said: str
    why: str = ""


Judge = Callable[[dict[str, Any]], dict[str, Told]]


class Question(Screen):
    """One or several questions that are given together.

    Parameters
    ----------
    keep : Keep
        Whose practice it is.
    judge : callable
        Takes what was answered by name, keeps it, and says what is told of each.
    """

    screen = "question"

    place = traitlets.Unicode().tag(sync=True)
    title = traitlets.Unicode().tag(sync=True)
    lead = traitlets.Unicode().tag(sync=True)
    facts: traitlets.List[Any] = traitlets.List().tag(sync=True)
    fields: traitlets.List[Any] = traitlets.List().tag(sync=True)
    values = traitlets.Dict().tag(sync=True)
    told = traitlets.Dict().tag(sync=True)
    give = traitlets.Unicode().tag(sync=True)
    fresh = traitlets.Unicode().tag(sync=True)
    all = traitlets.Unicode().tag(sync=True)
    notice = traitlets.Unicode().tag(sync=True)
    turn = traitlets.Int().tag(sync=True)

    def __init__(self, keep: Keep, judge: Judge, *, give: str, all: str = "") -> None:
        self._keep, self._judge = keep, judge
        self._fields: dict[str, Field] = {}
        self.on_fresh: Callable[[], None] = lambda: None
        self.on_all: Callable[[], None] = lambda: None
        super().__init__(place=keep.place, give=give, all=all)

    def ask(
        self,
        fields: Iterable[Field],
        *,
        title: str = "",
        lead: str = "",
        facts: Sequence[tuple[str, str]] = (),
        values: dict[str, Any] | None = None,
        told: dict[str, Told] | None = None,
    ) -> None:
        """Ask these from now on; what was told of them already stands beside them."""
        self._fields = {field.name: field for field in fields}
        with self.hold_sync():
            self.title, self.lead = title, lead
            self.facts = [list(pair) for pair in facts]
            self.values = dict(values or {})
            self.told = {name: _plain(one) for name, one in (told or {}).items()}
            self.notice = self._keep.notice
            self.fields = [describe(field) for field in self._fields.values()]
            self.turn += 1  # the page draws it anew, even where nothing else has changed
        self.renew_copy()

    def hear(self, message: dict[str, Any]) -> None:
        """Take an answer, say who works here, ask anew, or open everything."""
        doing = message.get("type")
        if doing == "who":
            self._keep.seen_by(str(message.get("id", "")), str(message.get("ticket", "")))
        elif doing == "give" and isinstance(message.get("values"), dict):
            given = message["values"]
            self._give({name: given.get(name) for name in self._fields})
        elif doing == "fresh" and self.fresh:
            self.on_fresh()
        elif doing == "all" and self.all:
            self.on_all()

    def _give(self, values: dict[str, Any]) -> None:
        short = {name: field.shortfall(values[name]) for name, field in self._fields.items()}
        if any(short.values()):
            told = {
                name: Told(UNREAD, f"{text[:1].upper()}{text[1:].rstrip('.')}.")
                for name, text in short.items()
                if text
            }
        else:
            told = self._judge(values)
        with self.hold_sync():
            self.values = values
            self.told = {name: _plain(one) for name, one in told.items()}
            self.notice = self._keep.notice

    def plain_copy(self) -> str:
        """The questions, with what was answered and told."""
        rows = "".join(
            f"<dt><b>{html.escape(field.prompt)}</b></dt><dd>{self._answer(field)}</dd>"
            for field in self._fields.values()
        )
        facts = "".join(f"<li>{html.escape(a)}: {html.escape(b)}</li>" for a, b in self.facts)
        words = (f"<p>{html.escape(text)}</p>" for text in (self.title, self.lead) if text)
        return f"{''.join(words)}{f'<ul>{facts}</ul>' if facts else ''}<dl>{rows}</dl>"

    def _answer(self, field: Field) -> str:
        told = self.told.get(field.name)
        if told and told["how"] != UNREAD:
            return html.escape(f"{told['said']} {told['why']}".strip())
        value = self.values.get(field.name)
        return "not answered yet" if field.is_blank(value) else field.paper(value)


def _sentence(text: str) -> str:
    return f"{text[:1].upper()}{text[1:].rstrip('.')}."


def _plain(told: Told) -> dict[str, str]:
    return {"how": told.how, "said": told.said, "why": told.why}
