"""What every measuring instrument on the screen has: a state asked for, and what it then shows."""

from __future__ import annotations

from html import escape
from typing import Any

import traitlets

from twoshaft.errors import CourseError
from twoshaft.jobsheet.screen import Screen


class Instrument(Screen):
    """Base of the instruments.

    A subclass gives ``name`` (of the instrument), ``asks`` (its question, where the browser has
    none of its own) and :meth:`look`, which says what a state shows: at least ``words`` (where
    pointer and marks stand) and ``finding``.
    """

    name = ""
    asks = ""

    about = traitlets.Dict().tag(sync=True)
    shown = traitlets.Dict().tag(sync=True)

    def __init__(self, about: dict[str, Any], start: dict[str, Any]) -> None:
        super().__init__(about={**about, "name": self.name, "asks": self.asks}, shown={})
        self.show(start)

    def hear(self, message: dict[str, Any]) -> None:
        """Take the state that the browser asks for."""
        if message.get("type") == "set":
            self.show(message["state"], message.get("turn"))

    def show(self, state: dict[str, Any], turn: str | None = None) -> None:
        """Show the instrument in a state."""
        self.shown = {"turn": turn, "state": state, **self.look(state)}

    def look(self, state: dict[str, Any]) -> dict[str, Any]:
        """What a state shows."""
        raise NotImplementedError

    @property
    def finding(self) -> str:
        """What the instrument shows, as a sentence."""
        return self.shown["finding"]

    def plain_copy(self) -> str:
        """The instrument in words, as HTML."""
        return (
            f"<p>{escape(self.name)}. {escape(self.shown['words'])}</p>"
            f"<p><b>{escape(self.finding)}</b></p>"
        )


def one_of(state: dict[str, Any], key: str, pairs: list[list[str]]) -> str:
    """A chosen key; CourseError if the list does not have it."""
    known = [k for k, _ in pairs]
    if state.get(key) not in known:
        raise CourseError(
            f"read no known choice for {key}", mend=f"choose one of: {', '.join(known)}"
        )
    return state[key]


def within(state: dict[str, Any], key: str, low: float, high: float) -> float:
    """A number that a slider asked for, kept within its ends."""
    return min(high, max(low, float(state[key])))
