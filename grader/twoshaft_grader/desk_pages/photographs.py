"""The page *Photographs*: the college's own pictures of parts and operations."""

from __future__ import annotations

from collections.abc import Sequence

from twoshaft.errors import CohortError
from twoshaft.stored.photographs import FOLDER
from twoshaft.units import load_unit
from twoshaft_grader.cohort.photographs import (
    add_photograph,
    drop_photograph,
    frame_named,
    own_photographs,
    without_home,
)
from twoshaft_grader.desk_pages.page import Page, Work
from twoshaft_grader.desk_pages.parts import Act, Cell, Field, Form, Link, Part, Row, Table, Values


class PhotographsPage(Page):
    """Add pictures of the unit that stands on the bench, and take them away."""

    id, title = "photographs", "Photographs"

    def show(self) -> Sequence[Part]:
        """What there is, and the form to add one."""
        cohort = self.desk.cohort
        unit, own = load_unit(cohort.unit_source), own_photographs(cohort)
        lost = without_home(own, unit)
        names = {one.id: one.name for one in unit.parts}
        names |= {one.id: one.name for one in unit.operations}
        choices = [(one.id, f"part: {one.name}") for one in unit.parts]
        choices += [(one.id, f"step: {one.name}") for one in unit.operations]
        rows, links = [], []
        for number, one in enumerate(own.album.photographs, 1):
            name = names.get(one.id, one.id)
            note = "the unit does not have it any more" if one in lost else ""
            note = note if own.read(one) else "its file is gone: add it again"
            away = Cell("Take away", act="drop", of=str(number), label=f"Take away {number}")
            rows.append(Row(str(number), (str(number), name, one.alt, note, away)))
            links.append(Link(f"Look at {number}, {name}", f"{FOLDER}/{one.file}"))
        return (
            Table(
                "photographs", "Your photographs",
                ("no.", "part or step", "what it shows", "", ""), tuple(rows),
                empty="None yet. Lessons and bench sheets show the drawn unit alone.",
            ),
            *links,
            Form(
                "Add a photograph",
                (
                    Field("picture", "Picture", "file", hint="JPEG, PNG or WebP"),
                    Field("of", "What it shows", "choice", options=tuple(choices)),
                    Field("words", "What can be seen, in words", "long",
                          hint="for those who do not see it; it stands below the picture too"),
                    Field("frame", "Frame around what matters, in %",
                          hint="left, top, width, height, as 20 30 25 40; empty: none"),
                ),
                (Act("add", "Add it", first=True),),
                hint="It is made small, and place and date are taken out. Show parts and hands, no "
                "faces and no number plates.",
            ),
        )  # fmt: skip

    def do(self, act: str, values: Values, work: Work) -> str:
        """Do what a button says."""
        cohort = self.desk.cohort
        if act == "drop":
            if not values.of.isdecimal():
                raise CohortError("there is no such photograph", mend="look again")
            one = drop_photograph(cohort, int(values.of[:6]))
            return f"Taken away: {one.alt}"
        unit = load_unit(cohort.unit_source)
        id, picture = values.need("of", "the part or step"), values.file("picture")
        words = values.need("words", "what can be seen")
        add_photograph(cohort, unit, id, picture, words, frame_named(values.text("frame")))
        return "Added: lessons show it from now on, bench sheets when they are printed again."
