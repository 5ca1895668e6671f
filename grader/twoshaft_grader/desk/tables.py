"""Tables on the terminal: plain words, figures to the right."""

from __future__ import annotations

from rich.box import SIMPLE
from rich.table import Table

from twoshaft_grader.cohort.marking_run import Done
from twoshaft_grader.cohort.roster import Learner
from twoshaft_grader.records.progress import Standing


def marks_table(title: str, learners: list[Learner], done: list[Done]) -> Table:
    """What a marking run did, one line for each learner."""
    table = _table(title)
    for heading in ("id", "name", "what"):
        table.add_column(heading, no_wrap=heading == "id")
    for heading in ("points", "of"):
        table.add_column(heading, justify="right")
    table.add_column("enough")
    for learner, one in zip(learners, done, strict=True):
        sheet = one.mark.sheet if one.mark else None
        table.add_row(
            learner.id,
            learner.name,
            one.state,
            _figure(sheet.points if sheet else None),
            _figure(sheet.maximum if sheet else None),
            ("yes" if sheet.met else "not yet") if sheet else "",
        )
    return table


def progress_table(title: str, standings: list[Standing]) -> Table:
    """Where everybody stands with one assignment, one line for each learner."""
    table = _table(title)
    for heading in ("id", "name", "group", "stage"):
        table.add_column(heading, no_wrap=heading == "id")
    for heading in ("answered", "points", "of"):
        table.add_column(heading, justify="right")
    for heading in ("late", "given back"):
        table.add_column(heading)
    for one in standings:
        table.add_row(
            one.learner.id,
            one.learner.name,
            one.learner.group,
            one.stage,
            f"{one.answered}/{one.asked}" if one.answered else "",
            _figure(one.points),
            _figure(one.maximum),
            "late" if one.late else "",
            "yes" if one.given_back else "",
        )
    return table


def _table(title: str) -> Table:
    return Table(title=title, title_justify="left", box=SIMPLE, pad_edge=False)


def _figure(value: float | None) -> str:
    return "" if value is None else f"{value:.2f}".rstrip("0").rstrip(".")
