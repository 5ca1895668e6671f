"""The command line: its app, what several commands take, and how they speak."""

from __future__ import annotations

import os
import sys
from collections.abc import Sequence
from enum import StrEnum
from pathlib import Path
from typing import TYPE_CHECKING, Annotated

import typer
from rich.console import Console

from twoshaft.errors import CohortError, UnitFileError
from twoshaft_grader.desk.call import command
from twoshaft_grader.desk.errors import SOME_LEFT
from twoshaft_grader.desk.shown import shown

if TYPE_CHECKING:  # the library behind a command is loaded when it is used: --help stays quick
    from twoshaft_grader.cohort.assign import Assigned
    from twoshaft_grader.cohort.folder import Cohort
    from twoshaft_grader.cohort.not_done import NotDone

TRACE = "--trace"
MOST_TOLD = 60
"""Findings of one file that are told; who has more corrects these first."""

app = typer.Typer(
    name="twoshaft",
    help="Run a cohort through the course: hand out modules, collect, mark, give back, export.",
    epilog=f"Add {TRACE} to any command to see where an error comes from.",
    no_args_is_help=True,
    add_completion=False,
    rich_markup_mode=None,
    pretty_exceptions_enable=False,
)
cohort_app = typer.Typer(no_args_is_help=True, help="The cohort's folder.", rich_markup_mode=None)
roster_app = typer.Typer(no_args_is_help=True, help="Who is in the cohort.", rich_markup_mode=None)
module_app = typer.Typer(no_args_is_help=True, help="What is handed out.", rich_markup_mode=None)
unit_app = typer.Typer(no_args_is_help=True, help="The unit on the bench.", rich_markup_mode=None)
hub_app = typer.Typer(no_args_is_help=True, help="A JupyterHub.", rich_markup_mode=None)
gradebook_app = typer.Typer(
    no_args_is_help=True, help="The cohort's gradebook.", rich_markup_mode=None
)
app.add_typer(cohort_app, name="cohort")
app.add_typer(roster_app, name="roster")
app.add_typer(module_app, name="module")
assessor_app = typer.Typer(
    no_args_is_help=True, help="The register of assessors.", rich_markup_mode=None
)
app.add_typer(unit_app, name="unit")
app.add_typer(gradebook_app, name="gradebook")
app.add_typer(hub_app, name="hub")
app.add_typer(assessor_app, name="assessor")
appeal_app = typer.Typer(no_args_is_help=True, help="The appeal log.", rich_markup_mode=None)
app.add_typer(appeal_app, name="appeal")


class Role(StrEnum):
    """For whom JupyterLab is opened."""

    APPRENTICE = "apprentice"
    STAFF = "staff"


CohortOption = Annotated[
    Path | None,
    typer.Option("--cohort", help="The cohort folder; without it, the one you stand in."),
]
ByOption = Annotated[
    str, typer.Option("--by", help="Who does it, for the trail; without it, your account's name.")
]
AssignmentArgument = Annotated[
    str | None,
    typer.Argument(help="As order-of-work-1; without it, everything that is handed out."),
]


def say_findings(error: UnitFileError) -> None:
    """Say what is wrong in a file, one sentence each, where errors are said."""
    found = error.findings or (error,)
    for finding in found[:MOST_TOLD]:
        print(finding.sentence, file=sys.stderr)
    if len(found) > MOST_TOLD:
        print(f"And {len(found) - MOST_TOLD} more; correct these first.", file=sys.stderr)


def cohort_at(folder: Path | None) -> Cohort:
    """The cohort that is named, or the one that this folder stands in."""
    from twoshaft_grader.cohort.folder import (
        CONFIG_FILE,
        config_is_ours,
        find_cohort,
        open_cohort,
    )

    privately()
    found = open_cohort(folder) if folder else find_cohort(Path.cwd())
    if not config_is_ours(found.root):
        text = f'{found.root / CONFIG_FILE} is of an earlier version: "{command()} cohort renew".'
        print(shown(text), file=sys.stderr)
    return found


def privately() -> None:
    """Let what is written from now on be for this account alone, if nothing else is said of it."""
    os.umask(0o077)


def assignments_named(cohort: Cohort, name: str | None) -> list[Assigned]:
    """One assignment, or everything that is handed out."""
    from twoshaft_grader.cohort.assign import assignments_of, read_assigned

    if name:
        return [read_assigned(cohort, name)]
    found = assignments_of(cohort)
    if not found:
        raise CohortError(
            "nothing is handed out yet", mend='begin with "twoshaft module assign MODULE"'
        )
    return found


def say(text: str = "") -> None:
    """Print a line."""
    console().print(shown(text), markup=False, soft_wrap=True)


def console() -> Console:
    """The terminal; into a file or pipe, lines are as long as they need to be."""
    plain = Console(highlight=False)
    return plain if plain.is_terminal else Console(highlight=False, width=140)


def tell_not_done(title: str, left: Sequence[NotDone]) -> None:
    """Print a table of who could not be done."""
    from twoshaft_grader.desk.tables import not_done_table

    if left:
        console().print(not_done_table(title, left))


def status(*left: NotDone) -> int:
    """The exit code."""
    return SOME_LEFT if left else 0


def names(ids: tuple[str, ...] | list[str]) -> str:
    """Names in a row."""
    return ", ".join(ids)
