"""The page *Group*: who is in the cohort."""

from __future__ import annotations

from collections.abc import Sequence

from twoshaft_grader.cohort.first_come import set_aside, strange_folder
from twoshaft_grader.cohort.intake import Change, roster_of, take_in, would_change
from twoshaft_grader.cohort.roster import Learner, read_roster
from twoshaft_grader.cohort.roster_changes import bring_back, move, rename, withdraw
from twoshaft_grader.cohort.withdrawn import withdrawn_of
from twoshaft_grader.cohort.workplace import SLIPS_PAGE, renew_word
from twoshaft_grader.desk_pages.page import Desk, Page, Work
from twoshaft_grader.desk_pages.parts import Act, Cell, Field, Form, Link, Part, Row, Table, Values
from twoshaft_grader.records.sign_in_slips import print_slips

_ENCODINGS = (("", "UTF-8 (usual)"), ("cp1252", "Windows Western European"))


class Group(Page):
    """Take in a roster, print slips, move, rename, withdraw and bring back."""

    id, title = "group", "Group"

    def __init__(self, desk: Desk) -> None:
        super().__init__(desk)
        self._read: list[Learner] = []
        self._changes: tuple[list[Change], list[Learner]] = ([], [])

    def show(self) -> Sequence[Part]:
        """The roster, and what would change where a file was read."""
        if self._read:
            return self._what_would_change()
        people = roster_of(self.desk.cohort)
        groups = sorted({one.group for one in people} - {""})
        parts: list[Part] = [
            Table(
                "group",
                "Learners",
                ("id", "family name", "given name", "group"),
                tuple(_row(one) for one in people),
                pick=True,
                empty="Nobody yet. Take in a roster below.",
            )
        ]
        if people:
            parts += [
                Form(
                    "With the ticked learners",
                    (
                        Field("group", "Move to group", hint=_groups(groups)),
                        Field("why", "Reason to withdraw"),
                    ),
                    (
                        Act("move", "Move"),
                        Act("word", "Give a new sign-in word"),
                        Act(
                            "withdraw",
                            "Withdraw",
                            sure="They leave every list and can sign in no more; what they did "
                            "stays, and you can bring them back. Withdraw them?",
                        ),
                    ),
                ),
                Form(
                    "Correct a name",
                    (
                        Field("who", "Learner", "choice", options=_choices(people)),
                        Field("given", "Given name", hint="empty: as it is"),
                        Field("family", "Family name", hint="empty: as it is"),
                    ),
                    (Act("rename", "Correct the name"),),
                ),
                Form(
                    "Sign-in slips",
                    (
                        Field(
                            "slips-of", "For", "choice",
                            options=(("", "everybody"), *((one, f"group {one}") for one in groups)),
                        ),
                    ),
                    (Act("slips", "Make slips to print"),),
                ),
            ]  # fmt: skip
            if (self.desk.root / SLIPS_PAGE).exists():
                parts.append(Link("Open the slips (PDF)", SLIPS_PAGE))
        if out := withdrawn_of(self.desk.cohort):
            heading = ("id", "family name", "given name", "group")
            rows = tuple(_row(one) for one in out)
            parts += [
                Table("withdrawn", "Withdrawn", heading, rows, pick=True),
                Form("", (), (Act("bring-back", "Bring the ticked back"),)),
            ]
        if strange := [one for one in people if strange_folder(self.desk.cohort, one.id)]:
            rows = tuple(Row(o.id, (o.id, strange_folder(self.desk.cohort, o.id))) for o in strange)
            parts += [
                Table("strange", "Folders that somebody else made", ("id", "why"), rows, pick=True),
                Form("", (), (Act("free", "Set the ticked folders aside"),)),
            ]
        parts.append(
            Form(
                "Take in a roster",
                (
                    Field(
                        "file", "File", "file",
                        hint="CSV with the columns id, family name, given name, group",
                    ),
                    Field("encoding", "Its letters are", "choice", options=_ENCODINGS),
                ),
                (Act("read", "Show what would change", first=True),),
                hint="Nothing is written before you have seen it.",
            )
        )  # fmt: skip
        return parts

    def do(self, act: str, values: Values, work: Work) -> str:
        """Do what a button says."""
        cohort, by = self.desk.cohort, self.desk.by
        if act == "read":
            learners = read_roster(values.file("file"), encoding=values.text("encoding"))
            self._changes = would_change(cohort, learners)
            self._read = learners
            return "Nothing is written yet. This is what would change."
        if act == "leave":
            self._read = []
            return "The roster stays as it was."
        if act == "take":
            work.begin("taking in the roster")
            taken = take_in(cohort, self._read, by=by)
            count, self._read = len(self._read), []
            same = count - len(taken.added) - len(taken.changed)
            issued = f" {taken.issued} sets of readings issued." if taken.issued else ""
            return (
                f"{len(taken.added)} added, {len(taken.changed)} corrected, {same} as before."
                f"{issued}"
            )
        if act == "move":
            ids, group = values.some("group"), values.text("group")
            work.begin("moving")
            move(cohort, ids, group, by=by)
            return f"{', '.join(ids)}: now in {f'group {group}' if group else 'no group'}."
        if act == "word":
            ids = values.some("group")
            work.begin("giving new words", len(ids))
            told = []
            for id in ids:
                told.append(f"{id} {renew_word(cohort, roster_of(cohort), id, by=by)}")
                work.step()
            return f"The new sign-in words: {', '.join(told)}."
        if act == "withdraw":
            ids, why = values.some("group"), values.need("why", "the reason")
            withdraw(cohort, ids, why=why, by=by)
            return f"Withdrawn: {', '.join(ids)}. Their work and marks stay where they are."
        if act == "bring-back":
            ids = values.some("withdrawn")
            work.begin("bringing back")
            bring_back(cohort, ids, by=by)
            return f"Back in the group, each with a new sign-in word: {', '.join(ids)}."
        if act == "free":
            told = [f"{one} in {set_aside(cohort, one, by=by)}" for one in values.some("strange")]
            return f"Set aside: {', '.join(told)}. They can sign in now."
        if act == "rename":
            who = values.need("who", "the learner")
            family, given = values.text("family"), values.text("given")
            new = rename(cohort, who, family_name=family, given_name=given, by=by)
            return f"{who} is now {new.name}."
        if act == "slips":
            work.begin("making the slips")
            print_slips(cohort, group=values.text("slips-of"), by=by)
            return "The slips are made; open and print them below."
        return ""

    def _what_would_change(self) -> Sequence[Part]:
        changes, staying = self._changes
        rows = [
            Row(
                one.learner.id,
                (
                    one.learner.id, one.learner.name, one.learner.group,
                    Cell(one.words, "○" if one.words == "as before" else "●"),
                ),
            )
            for one in changes
        ]  # fmt: skip
        rows += [
            Row(one.id, (one.id, one.name, one.group, Cell("not in the file, stays", "○")))
            for one in staying
        ]
        heading = ("id", "name", "group", "what happens")
        return (
            Table("roster-changes", "What would change", heading, tuple(rows)),
            Form(
                "",
                (),
                (Act("take", "Take it in", first=True), Act("leave", "Leave everything as it is")),
            ),
        )


def _row(one: Learner) -> Row:
    return Row(one.id, (one.id, one.family_name, one.given_name, one.group))


def _choices(people: list[Learner]) -> tuple[tuple[str, str], ...]:
    return (("", "Choose"), *((one.id, f"{one.name} ({one.id})") for one in people))


def _groups(groups: list[str]) -> str:
    return f"there are: {', '.join(groups)}" if groups else "a name such as A; empty: no group"
