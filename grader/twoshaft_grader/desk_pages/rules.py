"""The page *Rules*: what is enough for each outcome, and what the college says of it itself."""

from __future__ import annotations

from collections.abc import Sequence

from twoshaft.outcomes import Evidence, load_outcomes
from twoshaft_grader.cohort.own_rules import (
    EVERYWHERE,
    Rule,
    drop_rule,
    rule_in_words,
    rules_of,
    set_attempts,
    set_evidence,
    set_number,
    set_rule,
)
from twoshaft_grader.desk_pages.page import Page, Work
from twoshaft_grader.desk_pages.parts import Act, Field, Form, Part, Row, Say, Table, Values


class RulesPage(Page):
    """See the rules that hold; set the college's own, its numbers, and which attempt counts."""

    id, title = "rules", "Rules"

    def show(self) -> Sequence[Part]:
        """Every outcome's rule, and the forms to change them."""
        rules = rules_of(self.desk.cohort)
        outcomes = rules.asked(load_outcomes())
        rows = tuple(
            Row(
                one.id,
                (
                    rules.number(one.id), one.id, one.statement, str(one.evidence),
                    rule_in_words(rules.of(one.id)), rules.of(one.id).source,
                ),
            )
            for one in outcomes.values()
        )  # fmt: skip
        which = tuple((one.id, f"{one.id}: {one.statement}") for one in outcomes.values())
        counts = "latest" if rules.latest else "best"
        return (
            Say(f"Of the attempts at a module the {counts} counts."),
            Say(
                "Deciding answers stand above every rule: one that is wrong or missing, and the "
                "outcome is not met whatever the points.",
                "hint",
            ),
            Table(
                "rules", "What is enough",
                ("no.", "outcome", "what it is", "asks for", "enough is", "who says so"), rows,
            ),
            Form(
                "Set the college's own rule",
                (
                    Field(
                        "about", "For", "choice",
                        options=((EVERYWHERE, "every outcome without a rule of its own"), *which),
                    ),
                    Field("points", "Part of its points, in %", value="60"),
                    Field("each", "Part of each criterion, in %", value="40"),
                    Field(
                        "bench", "What is seen at the bench is enough by itself", "tick",
                        hint="for outcomes that are to be shown there",
                    ),
                    Field("source", "Who says so", hint="a standard, a page of your own rules"),
                    self.assessor("by"),
                ),
                (Act("set", "Set the rule", first=True), Act("drop", "Take the own rule away")),
                hint="What is marked keeps its rule until it is marked again.",
            ),
            Form(
                "Number an outcome as the college does",
                (
                    Field("numbered", "Outcome", "choice", options=which),
                    Field("number", "Number", hint="empty: none"),
                    self.assessor("number-by"),
                ),
                (Act("number", "Set the number"),),
            ),
            Form(
                "Which evidence an outcome asks for",
                (
                    Field("asking", "Outcome", "choice", options=which),
                    Field(
                        "kind", "Evidence", "choice",
                        options=(("", "as the course has it"), *((one, one) for one in Evidence)),
                    ),
                    self.assessor("kind-by"),
                    Field("kind-why", "Who says so"),
                ),
                (Act("evidence", "Set the evidence"),),
            ),
            Form(
                "Which attempt counts",
                (
                    Field(
                        "attempts", "Of several attempts", "choice", value=counts,
                        options=(("best", "the best"), ("latest", "the latest")),
                    ),
                    self.assessor("attempts-by"),
                    Field("attempts-why", "Who says so"),
                ),
                (Act("attempts", "Set it"),),
            ),
        )  # fmt: skip

    def do(self, act: str, values: Values, work: Work) -> str:
        """Do what a button says."""
        cohort = self.desk.cohort
        if act == "number":
            outcome = values.need("numbered", "the outcome")
            by = values.need("number-by", "the assessor")
            set_number(cohort, outcome, values.text("number"), by=by)
            return f"{outcome} is now {values.text('number') or 'without a number'}."
        if act == "evidence":
            outcome, kind = values.need("asking", "the outcome"), values.text("kind")
            by = values.need("kind-by", "the assessor")
            why = values.need("kind-why", "who says so")
            set_evidence(cohort, outcome, kind, by=by, why=why)
            return f"{outcome} asks for evidence {kind or 'as the course has it'} now."
        if act == "attempts":
            by = values.need("attempts-by", "the assessor")
            why = values.need("attempts-why", "who says so")
            set_attempts(cohort, values.text("attempts"), by=by, why=why)
            return f"Of the attempts at a module the {values.text('attempts')} counts now."
        about, by = values.need("about", "the outcome"), values.need("by", "the assessor")
        source = values.need("source", "who says so")
        if act == "drop":
            drop_rule(cohort, about, by=by, why=source)
            return f"The college has no rule of its own for {about} any more."
        rule = Rule(
            values.number("points", "part"), values.number("each", "part"), values.tick("bench"),
            source,
        )  # fmt: skip
        set_rule(cohort, about, rule, by=by)
        kept = "What is marked keeps its rule until it is marked again."
        return f"The rule for {about} is set. {kept}"
