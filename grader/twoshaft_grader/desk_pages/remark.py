"""The page *Re-mark*: whose marks a corrected solution changes, and changing them."""

from __future__ import annotations

from collections.abc import Sequence

from twoshaft.errors import CohortError
from twoshaft_grader.cohort.assign import assignments_of, read_assigned
from twoshaft_grader.cohort.content import find_content
from twoshaft_grader.cohort.intake import roster_of
from twoshaft_grader.cohort.marking_run import marked_apart
from twoshaft_grader.cohort.remark import WouldRemark, remark, would_remark
from twoshaft_grader.desk.figures import figure
from twoshaft_grader.desk_pages.page import Desk, Page, Work
from twoshaft_grader.desk_pages.parts import Act, Field, Form, Part, Row, Say, Table, Values


class Remark(Page):
    """Choose an assignment, see whose marks would change, say the word."""

    id, title = "re-mark", "Re-mark"

    def __init__(self, desk: Desk) -> None:
        super().__init__(desk)
        self._found: tuple[str, WouldRemark] | None = None

    def show(self) -> Sequence[Part]:
        """A choice of assignment; or what marking it again would do."""
        if self._found:
            return self._what_would_change(*self._found)
        out = [one for one in assignments_of(self.desk.cohort) if not one.code_outcome]
        if not out:
            return (Say("Nothing is handed out yet: begin on the page Hand out."),)
        which = tuple((one.name, one.name) for one in out)
        return (
            Say(
                "When a solution was wrong and is corrected in the course, what is marked already "
                "can be marked again with it."
            ),
            Form(
                "Mark again with the corrected solution",
                (Field("name", "Assignment", "choice", options=which),),
                (Act("look", "Show whose marks would change", first=True),),
                hint="Nothing is written before you have seen it.",
            ),
        )

    def do(self, act: str, values: Values, work: Work) -> str:
        """Do what a button says."""
        cohort = self.desk.cohort
        content = find_content(cohort.content, base=cohort.root)
        if act == "look":
            assigned = read_assigned(cohort, values.need("name", "the assignment"))
            mine = assigned.among(roster_of(cohort))
            work.begin(f"marking {assigned.name} with the corrected solution", len(mine))
            found = would_remark(
                cohort, assigned, content, mine, marked=marked_apart, step=work.step
            )
            self._found = assigned.name, found
            return "Nothing is written yet. This is what would change."
        if act == "leave":
            self._found = None
            return "All marks stay as they were."
        if self._found is None:
            raise CohortError("nobody has looked yet whose marks would change", mend="look first")
        name = self._found[0]
        assigned = read_assigned(cohort, name)
        by, why = values.need("by", "the assessor"), values.need("why", "the reason")
        mine = assigned.among(roster_of(cohort))
        work.begin(f"re-marking {assigned.name}", len(mine))
        done = remark(
            cohort, assigned, content, mine, by=by, why=why, marked=marked_apart, step=work.step
        )
        self._found = None
        told = f"Re-marked: {', '.join(done.moved) or 'nobody'}."
        if done.left:
            told += f" Not marked: {', '.join(f'{o.learner} ({o.why})' for o in done.left)}."
        return f"{told} Give {assigned.name} back to show it to them." if done.moved else told

    def _what_would_change(self, name: str, found: WouldRemark) -> Sequence[Part]:
        rows = tuple(
            Row(one.learner, (one.learner, figure(one.before), figure(one.after), one.words))
            for one in found.changed
        )
        left = tuple(Row(one.learner, (one.learner, one.why)) for one in found.left)
        same = f"The mark stays for: {', '.join(found.same) or 'nobody'}."
        said = "is another than the one" if found.another else "is the one"
        keep = Act("leave", "Leave all marks as they are")
        fields = (self.assessor("by"), Field("why", "What was wrong; the learner reads it"))
        write = bool(found.changed) or found.another
        return (
            Say(f"{name}: the course's solution {said} that it was marked with. {same}"),
            Table(
                "would-change", "Whose marks would change", ("id", "from", "to", "what"), rows,
                numbers=(1, 2), empty="Nobody's.",
            ),
            *((Table("left-out", "Could not be marked", ("id", "why"), left),) if left else ()),
            Form(
                "",
                fields if write else (),
                (Act("write", "Re-mark", first=True), keep) if write else (keep,),
                hint="What each mark was is kept, and told to the learner." if write else "",
            ),
        )  # fmt: skip
