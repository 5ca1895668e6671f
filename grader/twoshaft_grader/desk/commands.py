"""The ``twoshaft`` command."""

from __future__ import annotations

import sys
from pathlib import Path
from typing import TYPE_CHECKING, Annotated

import typer
from rich.console import Console

from twoshaft.errors import CohortError
from twoshaft_grader.desk.bar import Bar
from twoshaft_grader.desk.errors import run_quietly

if TYPE_CHECKING:  # the library behind a command is loaded when it is used: --help stays quick
    from twoshaft_grader.cohort.assign import Assigned
    from twoshaft_grader.cohort.folder import Cohort

TRACE = "--trace"

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
app.add_typer(cohort_app, name="cohort")
app.add_typer(roster_app, name="roster")
app.add_typer(module_app, name="module")
app.add_typer(unit_app, name="unit")

CohortOption = Annotated[
    Path | None,
    typer.Option("--cohort", help="The cohort folder; without it, the one you stand in."),
]
AssignmentArgument = Annotated[
    str | None,
    typer.Argument(help="As order-of-work-1; without it, everything that is handed out."),
]


def main(arguments: list[str] | None = None) -> int:
    """Run the command line; returns the exit code."""
    arguments = list(sys.argv[1:] if arguments is None else arguments)
    trace = TRACE in arguments
    arguments = [argument for argument in arguments if argument != TRACE]
    return run_quietly(
        lambda: app(arguments, prog_name="twoshaft", standalone_mode=False), trace=trace
    )


def _cohort(folder: Path | None) -> Cohort:
    from twoshaft_grader.cohort.folder import find_cohort, open_cohort

    return open_cohort(folder) if folder else find_cohort(Path.cwd())


def _assignments(cohort: Cohort, name: str | None) -> list[Assigned]:
    from twoshaft_grader.cohort.assign import assignments_of, read_assigned

    if name:
        return [read_assigned(cohort, name)]
    found = assignments_of(cohort)
    if not found:
        raise CohortError(
            "nothing is handed out yet", mend='begin with "twoshaft module assign MODULE"'
        )
    return found


def _say(text: str = "") -> None:
    Console(soft_wrap=True, highlight=False).print(text, markup=False)


def _names(ids: tuple[str, ...] | list[str]) -> str:
    return ", ".join(ids)


@cohort_app.command("make")
def cohort_make(
    folder: Annotated[Path, typer.Argument(help="The folder to make.")],
    id: Annotated[str, typer.Option(help="Short id; made from the folder's name.")] = "",
    name: Annotated[str, typer.Option(help="What people call the cohort.")] = "",
    college: Annotated[str, typer.Option(help="The college's name.")] = "",
    unit: Annotated[
        str, typer.Option(help="Shipped unit, or path of a unit file.")
    ] = "tarnbeck-b5",
    timezone: Annotated[
        str, typer.Option(help="As Europe/Dublin; without it, this machine's.")
    ] = "",
    content: Annotated[
        str, typer.Option(help="Folder with the solutions, where the program brings none.")
    ] = "",
) -> None:
    """Make the folder that holds a cohort's work and marks."""
    from twoshaft_grader.cohort.folder import make_cohort

    cohort = make_cohort(
        folder,
        id=id,
        name=name,
        college=college,
        unit=unit,
        timezone=timezone,
        content=content,
    )
    _say(f"Made the cohort {cohort.id} in {cohort.root}.")
    _say(f"Next: twoshaft roster take FILE --cohort {cohort.root}")


@roster_app.command("take")
def roster_take(
    file: Annotated[Path, typer.Argument(help="CSV: id, family name, given name, group.")],
    cohort: CohortOption = None,
    encoding: Annotated[str, typer.Option(help="Of the file, if it is not UTF-8.")] = "",
) -> None:
    """Take learners in from a CSV file; later files add to it and correct names."""
    from twoshaft_grader.cohort.intake import take_in
    from twoshaft_grader.cohort.roster import read_roster

    place = _cohort(cohort)
    learners = read_roster(file, encoding=encoding)
    with Bar("taking in the roster"):
        taken = take_in(place, learners)
    same = len(learners) - len(taken.added) - len(taken.changed)
    _say(f"{len(taken.added)} added, {len(taken.changed)} corrected, {same} as before.")
    if taken.kept:
        _say(f"Not in this file, and still on the roster: {_names(taken.kept)}.")
    if taken.issued:
        _say(f"{taken.issued} sets of readings issued for what is handed out already.")
    if taken.added:
        _say(f"Sign-in words to hand over, one to each: {place.root / 'sign-in-slips.csv'}")


@module_app.command("assign")
def module_assign(
    module: Annotated[str, typer.Argument(help="As order-of-work; see module list.")],
    due: Annotated[str, typer.Option(help="As 2026-12-04 or 2026-12-04T16:00.")] = "",
    attempt: Annotated[int, typer.Option(help="2 and more are resits, with fresh readings.")] = 1,
    cohort: CohortOption = None,
    content: Annotated[str, typer.Option(help="Folder with the solutions.")] = "",
) -> None:
    """Hand a module out to the cohort."""
    from twoshaft_grader.cohort.assign import assign
    from twoshaft_grader.cohort.content import find_content
    from twoshaft_grader.cohort.due import read_due
    from twoshaft_grader.cohort.intake import roster_of

    place = _cohort(cohort)
    moment = read_due(due, place.zone) if due else None
    source = find_content(content) if content else find_content(place.content, base=place.root)
    with Bar(f"handing out {module}"):
        assigned = assign(
            place, source, module, attempt=attempt, due=moment, learners=roster_of(place)
        )
    until = f", due {moment:%Y-%m-%d %H:%M}" if moment else ", with no due date"
    _say(f"{assigned.name} is handed out{until}.")


@module_app.command("due")
def module_due(
    assignment: Annotated[str, typer.Argument(help="As order-of-work-1.")],
    due: Annotated[str, typer.Argument(help="As 2026-12-04 or 2026-12-04T16:00.")],
    cohort: CohortOption = None,
) -> None:
    """Change the due date of what is handed out."""
    from twoshaft_grader.cohort.assign import change_due
    from twoshaft_grader.cohort.due import read_due

    place = _cohort(cohort)
    moment = read_due(due, place.zone)
    change_due(place, assignment, moment)
    _say(f"{assignment} is now due {moment:%Y-%m-%d %H:%M}.")


@module_app.command("list")
def module_list(
    cohort: CohortOption = None,
    content: Annotated[str, typer.Option(help="Folder with the solutions.")] = "",
) -> None:
    """List the modules, and what is handed out."""
    from twoshaft_grader.cohort.assign import assignments_of
    from twoshaft_grader.cohort.content import find_content

    place = _cohort(cohort)
    out = assignments_of(place)
    source = find_content(content) if content else find_content(place.content, base=place.root)
    for module in source.modules:
        given = [
            f"{a.name} (due {a.due.astimezone(place.zone):%Y-%m-%d %H:%M})" if a.due else a.name
            for a in out
            if a.module == module
        ]
        _say(f"{module}: {_names(given) or 'not handed out'}")


@app.command("collect")
def collect_work(assignment: AssignmentArgument = None, cohort: CohortOption = None) -> None:
    """Take in what was handed in; later work replaces earlier."""
    from twoshaft_grader.cohort.collect import collect
    from twoshaft_grader.cohort.intake import roster_of

    place = _cohort(cohort)
    learners = roster_of(place)
    wanted = _assignments(place, assignment)
    found = []
    with Bar("collecting", len(wanted)) as bar:
        for assigned in wanted:
            found.append(collect(place, assigned, learners))
            bar.step()
    for result in found:
        _say(f"{result.assignment}: {len(result.new)} new, {len(result.newer)} newer.")
        if result.missing:
            _say(f"  Not handed in: {_names(result.missing)}.")
        if result.placed:
            _say(f"  Placed by hand, so with no time of handing in: {_names(result.placed)}.")
        if result.strangers:
            _say(f"  Not on the roster, and left unmarked: {_names(result.strangers)}.")
        for error in result.refused:
            _say(f"  {error.sentence}")
