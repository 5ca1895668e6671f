"""A lesson as its notebook uses it: predictions, and what opens once they are given.

What answers a prediction is made with the notebook and shown when the learner has said something.
It lies in cells of its own, ``lesson.then("name", thing)``, which stand empty until then.
"""

from __future__ import annotations

import os
from dataclasses import replace
from datetime import UTC, datetime
from functools import partial
from pathlib import Path
from typing import Any
from uuid import uuid4

from IPython.display import HTML, DisplayHandle, Markdown, display

from twoshaft.jobsheet.form import FormWidget
from twoshaft.jobsheet.kinds import Field
from twoshaft.jobsheet.screen import Screen
from twoshaft.jobsheet.sheet import Sheet, open_sheet
from twoshaft.modules import COURSE
from twoshaft.practice.again import RULE, choose
from twoshaft.practice.asked import Asked, asked, standing_alone
from twoshaft.practice.calculations import CALCULATIONS
from twoshaft.practice.drill import Drill
from twoshaft.practice.keep import Keep
from twoshaft.practice.screen import OTHER, RIGHT, Question, Told
from twoshaft.units import Unit

OPEN_ALL = "TWOSHAFT_OPEN_ALL"
"""Names the environment variable that opens every answer, for tests and for printing a lesson."""

AGAIN = 3
"""Questions from earlier lessons at the beginning of one."""

_SHUT = HTML('<span class="twoshaft-shut"></span>')


def open_lesson(module: str, folder: str | Path | None = None) -> Lesson:
    """Open a lesson.

    Parameters
    ----------
    module : str
        Module id, as ``order-of-work``.
    folder : path, optional
        The notebook's folder; the working folder if not given.

    Returns
    -------
    Lesson
    """
    return Lesson(module, open_sheet(module, folder), Keep(folder))


class Lesson:
    """A lesson in a notebook.

    Parameters
    ----------
    module : str
        Module id.
    sheet : Sheet
        The practice sheet, for forms to try.
    keep : Keep
        The learner's practice.
    """

    def __init__(self, module: str, sheet: Sheet, keep: Keep) -> None:
        self.module, self.sheet, self._keep = module, sheet, keep
        self._asked: dict[str, Asked] = {}
        self._passed: set[str] = set()
        self._screens: dict[str, Question] = {}
        self._shut: dict[str, list[Shut]] = {}
        self._all = bool(os.environ.get(OPEN_ALL))
        self._again: dict[str, Asked] = {}
        self._again_screen: Question | None = None
        keep.on_change(self._renew)

    @property
    def unit(self) -> Unit:
        """The unit on the bench."""
        return self.sheet.unit

    def predict(self, name: str, **facts: Any) -> Question:
        """Ask for a prediction; what stands in ``then`` under this name opens when it is given.

        Parameters
        ----------
        name : str
            A question of the module's file.
        **facts : object
            What of it follows from the unit on the bench: ``right``, ``choice``, ``ask``, ``told``.
        """
        question = asked(self.module, name, **facts)
        if question.right is None:
            raise ValueError(f"nothing says what is right of the prediction {name!r}")
        self._asked[name] = question
        screen = Question(
            self._keep,
            partial(self._give, name),
            give="Show the answer",
            all="" if self._screens else "Teacher: open every answer on this page",
        )
        screen.on_all = self._open_all
        self._screens[name] = screen
        self._show(name)
        return screen

    def pass_over(self, name: str) -> None:
        """Ask nothing, and show nothing of what stands in ``then`` under this name: the unit on the
        bench has nothing for it."""
        self._passed.add(name)

    def then(self, name: str, thing: Any) -> Shut | None:
        """Show something once a prediction was given; a text is Markdown.

        Raises
        ------
        KeyError
            When nothing of that name was predicted above.
        """
        if thing is None or name in self._passed:
            return None
        self._asked[name]
        shut = Shut(Markdown(thing) if isinstance(thing, str) else thing, self.is_given(name))
        self._shut.setdefault(name, []).append(shut)
        return shut

    def asked_again(self) -> Question:
        """Three questions from earlier lessons, as the learner needs them."""
        screen = Question(self._keep, self._answer_again, give="Tell me")
        screen.on_fresh = partial(self._ask_again, screen)
        screen.fresh = "Three more"
        self._again_screen = screen
        self._ask_again(screen)
        return screen

    def _ask_again(self, screen: Question) -> None:
        number = COURSE[self.module].number
        earlier = [module for module in COURSE.values() if module.number < number]
        keys = [f"{module.id}/{name}" for module in earlier for name in standing_alone(module.id)]
        chosen = choose(keys, self._keep.known(), datetime.now(UTC), AGAIN)
        self._again = {key.replace("/", "-"): asked(*key.split("/")) for key in chosen}
        fields = [replace(one.field, name=name) for name, one in self._again.items()]
        screen.ask(fields, lead=RULE)

    def _answer_again(self, values: dict[str, Any]) -> dict[str, Told]:
        for name, value in values.items():
            question = self._again[name]
            self._keep.note(question.key, value, question.agrees(value))
        return {name: _told(self._again[name], value) for name, value in values.items()}

    def calculation(self, name: str) -> Question:
        """A calculation: worked, with steps left out, alone, and then as often as wanted."""
        one = next(one for one in CALCULATIONS[self.module] if one.name == name)
        return Drill(self._keep, self.module, one).screen

    def form(self, task: str, *fields: Field) -> FormWidget:
        """A form to try, of which nothing is marked."""
        self.sheet.register(task, fields)
        return FormWidget(self.sheet, task, fields)

    def is_given(self, name: str) -> bool:
        """Whether a prediction was given, or everything is open."""
        question = self._asked.get(name)
        return self._all or question is None or bool(self._keep.tries(question.key))

    def _give(self, name: str, values: dict[str, Any]) -> dict[str, Told]:
        question, value = self._asked[name], values[name]
        self._keep.note(question.key, value, question.agrees(value))
        self._open(name)
        return {name: _told(question, value)}

    def _show(self, name: str) -> None:
        question, tries = self._asked[name], self._keep.tries(self._asked[name].key)
        value = tries[0].value if tries else None
        if tries and question.field.unreadable(value):
            value = None  # the question is not what it was when it was answered
        told = {} if value is None else {name: _told(question, value)}
        values = {} if value is None else {name: value}
        self._screens[name].ask([question.field], values=values, told=told)

    def _open(self, name: str) -> None:
        for shut in self._shut.get(name, ()):
            shut.show(self.is_given(name))

    def _open_all(self) -> None:
        self._all = True
        for name in self._asked:
            self._open(name)

    def _renew(self) -> None:
        if self._again_screen is not None:
            self._ask_again(self._again_screen)
        for name in self._asked:
            self._show(name)
            self._open(name)


def _told(question: Asked, value: Any) -> Told:
    how = RIGHT if question.agrees(value) else OTHER
    return Told(how, question.reply(value), question.told)


class Shut:
    """Something that is shown when it is time.

    Parameters
    ----------
    thing : object
        What a notebook can show.
    is_open : bool
        Whether it is time already.
    """

    def __init__(self, thing: Any, is_open: bool) -> None:
        self.thing, self.is_open = thing, is_open
        self._places: list[tuple[DisplayHandle, ...]] = []

    def show(self, is_open: bool) -> None:
        """Open it, or shut it again for another learner."""
        if is_open == self.is_open:
            return
        self.is_open = is_open
        for place in self._places:
            self._fill(place)

    def _ipython_display_(self) -> None:
        count = 2 if isinstance(self.thing, Screen) else 1
        place = tuple(DisplayHandle(uuid4().hex) for _ in range(count))
        for handle in place:
            display(_SHUT, display_id=handle.display_id)
        self._places = [place]
        if self.is_open:
            self._fill(place)

    def _fill(self, place: tuple[DisplayHandle, ...]) -> None:
        if not self.is_open:
            for handle in place:
                handle.update(_SHUT)
        elif isinstance(self.thing, Screen):
            self.thing.put_into(*place)
        else:
            place[0].update(self.thing)
