"""What every bench sheet has: cautions, what is watched, signatures."""

from __future__ import annotations

from collections.abc import Iterable

from twoshaft.outcomes import Evidence, load_outcomes
from twoshaft.safety import Caution, load_safety
from twoshaft.units import Unit
from twoshaft_grader.bench_sheets.content import (
    Column,
    Point,
    Points,
    Table,
    without_figures,
)

ALWAYS = ("eyes-struck", "pinch-points", "manual-wins")
_FOR_INVENTED = "invented-figures"
_EVIDENCE = {
    Evidence.AT_THE_BENCH: "seen at the bench by an assessor",
    Evidence.SUPERVISED: "supervised",
}


def cautions(ids: Iterable[str], unit: Unit) -> Points:
    """The cautions of the jobs on a sheet, each with its why."""
    wanted = {*ids, *ALWAYS, *([_FOR_INVENTED] if unit.identity.invented else [])}
    return Points(
        "Before you begin",
        tuple(Point(one.text, _why(one)) for one in load_safety().cautions if one.id in wanted),
        "Read these aloud to each other. If one of them is not in place, stop and ask.",
    )


def _why(caution: Caution) -> str:
    """The reason; where it is told with figures, one of its hazards' reasons that is not."""
    hazards = load_safety().hazard_by_id.values()
    reasons = [caution.why, *(one.what for one in hazards if one.caution == caution.id)]
    return next((why for why in reasons if without_figures(why) == why), "")


def watched(module: str) -> tuple[Table, ...]:
    """Outcomes of a module that paper and notebook cannot prove; none where there are none."""
    rows = []
    for outcome in load_outcomes(module=module).values():
        if outcome.evidence is Evidence.OPEN_BOOK:
            continue
        must = ", must be passed" if outcome.must_pass else ""
        rows.append((f"{outcome.statement}\n{_EVIDENCE[outcome.evidence]}{must}",))
        rows += [(f"– {criterion}",) for criterion in outcome.criteria.values()]
    columns = (
        Column("What has to be shown", 4.2),
        Column("Seen", 0.6, tick=True),
        Column("Not yet", 0.7, tick=True),
        Column("Remark", 2.0),
        Column("By, date", 1.2),
    )
    say = (
        "For the person who watches. Write down what you saw. Ask before you help, and write that "
        "down too."
    )
    return (Table.begun("What the assessor watches", columns, rows, say),) if rows else ()


def signatures() -> Table:
    """Who answers for the sheet."""
    columns = (
        Column("", 1.2),
        Column("Name", 2.2),
        Column("Signature", 2.6),
        Column("Date", 1.2),
    )
    rows = [(who,) for who in ("Apprentice", "Instructor", "Assessor")]
    return Table.begun("Signatures", columns, rows, "Sign for what you did or saw yourself.")
