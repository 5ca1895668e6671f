"""The page *Adjustments*: more time, a reader, large print, another colour for single learners."""

from __future__ import annotations

from collections.abc import Sequence

from twoshaft.errors import CohortError
from twoshaft.stored.adjustments import COLOURS, OwnAdjustment
from twoshaft_grader.cohort.adjustments import adjust, adjustments_of, in_words
from twoshaft_grader.cohort.intake import roster_of
from twoshaft_grader.desk_pages.page import Page, Work
from twoshaft_grader.desk_pages.parts import Act, Field, Form, Part, Row, Say, Table, Values


class Adjustments(Page):
    """See what is arranged, and arrange it for the ticked learners."""

    id, title = "adjustments", "Adjustments"

    def show(self) -> Sequence[Part]:
        """Everybody, with what is arranged for them."""
        cohort = self.desk.cohort
        people = roster_of(cohort)
        if not people:
            return (Say("Nobody is in the group yet: take a roster in on the page Group."),)
        known = adjustments_of(cohort)
        rows = []
        for one in people:
            mine = known.get(one.id)
            told = (in_words(mine), mine.by, mine.at[:10], mine.why) if mine else ("",) * 4
            rows.append(Row(one.id, (one.id, one.name, one.group, *told)))
        heading = ("id", "name", "group", "arranged", "by", "since", "why")
        colours = (("", "the usual"), *((one, one) for one in COLOURS))
        return (
            Table("adjustments", "Learners", heading, tuple(rows), pick=True),
            Form(
                "Arrange for the ticked learners",
                (
                    Field("days", "Days more for every date", value="0"),
                    Field("colour", "Ground of their pages", "choice", options=colours),
                    Field("large", "Large print", "tick"),
                    Field("reader", "A reader", "tick"),
                    self.assessor("by"),
                    Field("why", "Reason"),
                ),
                (Act("adjust", "Arrange it", first=True),),
                hint="It takes the place of what was arranged before. Learners never see the "
                "reason; their pages change when they next open them.",
            ),
        )

    def do(self, act: str, values: Values, work: Work) -> str:
        """Do what the button says."""
        cohort = self.desk.cohort
        people = roster_of(cohort)
        ids = values.some("adjustments")
        days = values.text("days") or "0"
        if not days.isdecimal() or len(days) > 4:
            raise CohortError(f'"{days[:20]}" is no number of days', mend="write it as 7")
        wanted = OwnAdjustment(
            more_days=int(days), reader=values.tick("reader"), large_print=values.tick("large"),
            colour=values.text("colour"),
        )  # fmt: skip
        by = values.text("by") or self.desk.by
        why = values.need("why", "the reason")
        for id in ids:
            adjust(cohort, people, id, wanted, by=by, why=why)
        return f"Arranged for {', '.join(ids)}: {in_words(wanted)}."
