"""The page *Trail*: who did what at the desk, and whether it stands as it was written."""

from __future__ import annotations

from collections.abc import Sequence

from twoshaft_grader.cohort.clock import as_read, wall_clock
from twoshaft_grader.cohort.trail import check_trail, read_head, read_trail
from twoshaft_grader.desk_pages.page import Desk, Page, Work
from twoshaft_grader.desk_pages.parts import Act, Cell, Field, Form, Part, Row, Table, Values


class Trail(Page):
    """The acts, newest first, and the check of their chain."""

    id, title = "trail", "Trail"

    def __init__(self, desk: Desk) -> None:
        super().__init__(desk)
        self._faults: tuple[str, ...] = ()
        self._told: tuple[str, ...] = ()
        self._about = ""

    def show(self) -> Sequence[Part]:
        """The acts that are looked for."""
        zone = self.desk.cohort.zone
        rows = []
        for line in reversed(read_trail(self.desk.root)):
            one = line.act
            words = " ".join((one.did, one.what, one.by, one.after, one.why)).casefold()
            if self._about not in words:
                continue
            by = one.by if one.by == one.account else f"{one.by} ({one.account})"
            rows.append(
                Row(
                    str(line.place),
                    (
                        str(one.number), wall_clock(one.at, zone), by, one.did, one.what,
                        as_read(one.before, zone), as_read(one.after, zone), one.why, one.ended,
                    ),
                )
            )  # fmt: skip
        found = [("not as written", "▲", one) for one in self._faults]
        found += [("to know", "○", one) for one in self._told]
        heading = ("no.", "when", "by", "did", "what", "from", "to", "why", "ended")
        parts: list[Part] = [
            Form(
                "",
                (
                    Field("about", "Only with this in it", value=self._about, hint="as tb01"),
                    Field("head", "Head from an export or a paper", hint="as 12:5f3a…; or empty"),
                ),
                (Act("look", "Show"), Act("check", "See that it is as written", first=True)),
            ),
            Table("trail", "Done at the desk, newest first", heading, tuple(rows), numbers=(0,)),
        ]
        if found:
            checked = tuple(
                Row(str(number), (Cell(word, sign), text))
                for number, (word, sign, text) in enumerate(found)
            )
            parts.insert(1, Table("checked", "What the check found", ("", "what"), checked))
        return parts

    def do(self, act: str, values: Values, work: Work) -> str:
        """Do what a button says."""
        self._about = values.text("about").casefold()
        if act == "look":
            self._faults = self._told = ()
            return ""
        work.begin("checking")
        heads = [read_head(head)] if (head := values.text("head")) else []
        found = check_trail(self.desk.root, *heads)
        self._faults, self._told = found.faults, found.told
        if found.faults:
            return "The trail is not as it was written: see below."
        return f"{len(found.acts)} acts, as they were written. Head: {found.head}"
