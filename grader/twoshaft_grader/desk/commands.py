"""The ``twoshaft`` command."""

from __future__ import annotations

import gc
import os
import sys
from collections.abc import Iterator, Sequence
from contextlib import contextmanager
from enum import StrEnum
from pathlib import Path
from typing import TYPE_CHECKING, Annotated

import typer
from rich.console import Console

from twoshaft import DEFAULT_UNIT
from twoshaft.errors import CohortError
from twoshaft.stored.assignment import UNIT
from twoshaft_grader.desk.bar import Bar
from twoshaft_grader.desk.call import command
from twoshaft_grader.desk.errors import SOME_LEFT, run_quietly
from twoshaft_grader.desk.shown import shown

if TYPE_CHECKING:  # the library behind a command is loaded when it is used: --help stays quick
    from twoshaft_grader.cohort.assign import Assigned
    from twoshaft_grader.cohort.folder import Cohort
    from twoshaft_grader.cohort.marking_run import Marking
    from twoshaft_grader.cohort.not_done import NotDone

TRACE = "--trace"
LOADED = 50_000
"""So many objects are made before it is looked for what can go; Python's own measure is 700."""

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
app.add_typer(unit_app, name="unit")
app.add_typer(gradebook_app, name="gradebook")
app.add_typer(hub_app, name="hub")


class Role(StrEnum):
    """For whom JupyterLab is opened."""

    APPRENTICE = "apprentice"
    STAFF = "staff"


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
    os.umask(before := os.umask(0o077))  # it can only be asked by setting it
    often = gc.get_threshold()
    # What a command loads stays until it ends: looking through it for what can go finds nothing.
    gc.set_threshold(LOADED)
    try:
        return run_quietly(
            lambda: app(arguments, prog_name="twoshaft", standalone_mode=False), trace=trace
        )
    finally:
        gc.set_threshold(*often)
        os.umask(before)  # what a command writes privately says nothing of what comes after it


def _cohort(folder: Path | None) -> Cohort:
    from twoshaft_grader.cohort.folder import (
        CONFIG_FILE,
        config_is_ours,
        find_cohort,
        open_cohort,
    )

    _privately()
    found = open_cohort(folder) if folder else find_cohort(Path.cwd())
    if not config_is_ours(found.root):
        text = f'{found.root / CONFIG_FILE} is of an earlier version: "{command()} cohort renew".'
        print(shown(text), file=sys.stderr)
    return found


def _privately() -> None:
    """Let what is written from now on be for this account alone, if nothing else is said of it."""
    os.umask(0o077)


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
    _console().print(shown(text), markup=False, soft_wrap=True)


def _console() -> Console:
    """The terminal; into a file or pipe, lines are as long as they need to be."""
    plain = Console(highlight=False)
    return plain if plain.is_terminal else Console(highlight=False, width=140)


def _not_done(title: str, left: Sequence[NotDone]) -> None:
    from twoshaft_grader.desk.tables import not_done_table

    if left:
        _console().print(not_done_table(title, left))


def _status(*left: NotDone) -> int:
    return SOME_LEFT if left else 0


def _names(ids: tuple[str, ...] | list[str]) -> str:
    return ", ".join(ids)


@cohort_app.command("make")
def cohort_make(
    folder: Annotated[Path, typer.Argument(help="The folder to make.")],
    id: Annotated[str, typer.Option(help="Short id; made from the folder's name.")] = "",
    name: Annotated[str, typer.Option(help="What people call the cohort.")] = "",
    college: Annotated[str, typer.Option(help="The college's name.")] = "",
    unit: Annotated[str, typer.Option(help="Shipped unit, or path of a unit file.")] = DEFAULT_UNIT,
    timezone: Annotated[
        str, typer.Option(help="As Europe/Dublin; without it, this machine's.")
    ] = "",
    content: Annotated[
        str, typer.Option(help="Folder with the solutions, where the program brings none.")
    ] = "",
    shared: Annotated[
        Path | None,
        typer.Option(
            help="Where learners reach their work from accounts of their own, as "
            "/srv/evening-group; without it, all work in your account, and FOLDER-shared is made."
        ),
    ] = None,
    gradebook: Annotated[
        str,
        typer.Option(
            help="An empty database on a PostgreSQL server, as postgresql://holm@db/evening; "
            "without it, a file in the folder."
        ),
    ] = "",
) -> None:
    """Make the folder that holds a cohort's work and marks, and the one that learners reach."""
    from twoshaft.models.audit import sound_unit
    from twoshaft.units import load_unit
    from twoshaft_grader.cohort.content import find_content
    from twoshaft_grader.cohort.folder import make_cohort
    from twoshaft_grader.cohort.shared import OPENER, close_keys

    _privately()
    if Path(unit).is_file():
        with Bar("checking the unit"):
            sound_unit(unit)
    elif "." not in unit:  # a file may still be put into the folder; an id is known now or never
        load_unit(unit)
    source = find_content(content, base=folder).root if shared else None
    if gradebook:
        from twoshaft_grader.cohort.database import database_of
        from twoshaft_grader.cohort.gradebook_move import see_that_empty

        see_that_empty(database_of(folder, gradebook))
    cohort = make_cohort(
        folder,
        id=id,
        name=name,
        college=college,
        unit=unit,
        timezone=timezone,
        content=content,
        shared=shared,
        gradebook=gradebook,
    )
    _say(f"Made the cohort {cohort.id} in {cohort.root}, which opens to your account alone.")
    if cohort.unit == UNIT:
        _say(f"Its unit is kept in it: {cohort.root / UNIT}")
    if source:
        if closed := close_keys(source):
            _say(f"Closed to other accounts, since answers are in it: {_names(closed)} of {source}")
        _say(f"Learners open the course from accounts of their own: {cohort.shared / OPENER}")
    else:
        _say(f"What learners use is in {cohort.shared}: all of them work in your account.")
    _say(f"Next: {command()} roster take FILE --cohort {cohort.root}")


@cohort_app.command("back-up")
def cohort_back_up(
    file: Annotated[Path, typer.Argument(help="The file to make, as autumn-2026-11-29.zip.")],
    cohort: CohortOption = None,
) -> int:
    """Keep the whole cohort in one file; others may work in it meanwhile."""
    from twoshaft_grader.cohort.back_up import back_up

    place = _cohort(cohort)
    with Bar("backing up"):
        made = back_up(place, file)
    _say(f"Kept {made.count} files in {made.file}, which opens to your account alone.")
    _not_done("Left out", made.left)
    return _status(*made.left)


@cohort_app.command("restore")
def cohort_restore(
    file: Annotated[Path, typer.Argument(help="As the back-up command made it.")],
    folder: Annotated[Path, typer.Argument(help="The cohort folder to make.")],
    shared: Annotated[
        Path | None,
        typer.Option(help="Where learners reach their work from accounts of their own."),
    ] = None,
) -> None:
    """Make a cohort again from its back-up, after seeing that nothing in it has changed."""
    from twoshaft_grader.cohort.restore import OWN_FOLDERS, restore

    _privately()
    with Bar("restoring"):
        made = restore(file, folder, shared=shared)
    root = made.cohort.root
    _say(f"Restored {made.count} files to {root} and {made.cohort.shared}.")
    if made.apart:
        _say(
            f"Their own folders are in {root / OWN_FOLDERS}, since only the machine's keeper can "
            f"give them to accounts: {_names(made.apart)}."
        )
    if made.other_config:
        _say("nbgrader_config.py was another one, and is written anew: it would be run.")
    if made.content:
        _say(f"It had its solutions from {made.content}; name that again with --content.")
    if made.other_source:
        _say(
            "Look at their solutions in source/ before you mark, which runs them: they are not "
            f"this course's: {_names(made.other_source)}."
        )


@cohort_app.command("anonymous")
def cohort_anonymous(
    folder: Annotated[Path, typer.Argument(help="The folder to make.")],
    cohort: CohortOption = None,
) -> int:
    """Copy the cohort for study: equal marks, invented ids, no names, notes or true times."""
    from twoshaft_grader.cohort.anonymous import anonymous

    place = _cohort(cohort)
    with Bar("copying"):
        made = anonymous(place, folder)
    _say(f"Copied {made.learners} learners without their names to {made.cohort.root}.")
    _not_done("Could not be taken into it", made.left)
    return _status(*made.left)


@gradebook_app.command("move")
def gradebook_move(
    to: Annotated[
        str,
        typer.Argument(
            help="An empty database on a PostgreSQL server, as postgresql://holm@db/evening; "
            "or file, for the one in the cohort folder."
        ),
    ],
    cohort: CohortOption = None,
) -> None:
    """Move the gradebook to a server, or back; every row is compared before it counts."""
    from twoshaft_grader.cohort.gradebook_move import move_gradebook

    place = _cohort(cohort)
    with Bar("moving the gradebook"):
        moved = move_gradebook(place, to)
    _say(f"{sum(moved.rows.values())} rows in {len(moved.rows)} tables are now at {moved.to}.")
    _say(f"As it was until now, it is kept: {moved.kept}")


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


@roster_app.command("take-out")
def roster_take_out(
    learner: Annotated[str, typer.Argument(help="Learner's id.")],
    yes: Annotated[bool, typer.Option("--yes", help="Ask nothing.")] = False,
    cohort: CohortOption = None,
) -> int:
    """Take a learner out for good: work, readings, marks, feedback, and what logs say of them."""
    from twoshaft_grader.cohort.take_out import take_out

    place = _cohort(cohort)
    if not yes:
        typer.confirm(f"All that {place.root} holds of {learner} goes for good. Go on?", abort=True)
    with Bar(f"taking out {learner}"):
        out = take_out(place, learner)
    _not_done("Could not be taken away; the same command goes on", out.left)
    if not out.left:
        _say(f"{learner} is taken out.")
    if out.still:
        _say("The id or a part of the name stands still, as in a note about somebody else, in:")
        for path in out.still:
            _say(f"  {path}")
    if out.back_ups:
        _say("Back-ups hold everything as it was; do with them as your college says:")
        for path in out.back_ups:
            _say(f"  {path}")
    return _status(*out.left)


@roster_app.command("word")
def roster_word(
    learner: Annotated[str, typer.Argument(help="Learner's id.")], cohort: CohortOption = None
) -> None:
    """Give a learner another sign-in word."""
    from twoshaft_grader.cohort.intake import roster_of
    from twoshaft_grader.cohort.workplace import renew_word

    place = _cohort(cohort)
    _say(f"The sign-in word of {learner} is now {renew_word(place, roster_of(place), learner)}.")


@roster_app.command("free")
def roster_free(
    learner: Annotated[str, typer.Argument(help="Learner's id.")], cohort: CohortOption = None
) -> None:
    """Set aside the folder that an account made under a learner's id without the sign-in word."""
    from twoshaft_grader.cohort.first_come import set_aside

    place = _cohort(cohort)
    name = set_aside(place, learner)
    _say(f"{learner} can sign in now; the other folder is {place.work / name}.")


@cohort_app.command("renew")
def cohort_renew(cohort: CohortOption = None) -> None:
    """Bring a cohort of an earlier version up to date; it can be said again at any time."""
    from twoshaft_grader.cohort.renew import renew

    place = _cohort(cohort)
    done = renew(place)
    for what in done or ("There was nothing to renew.",):
        _say(what)


@roster_app.command("list")
def roster_list(cohort: CohortOption = None) -> None:
    """List the learners."""
    from twoshaft_grader.cohort.intake import roster_of

    for learner in roster_of(_cohort(cohort)):
        _say(f"{learner.id}: {learner.name}{f', {learner.group}' if learner.group else ''}")


@module_app.command("assign")
def module_assign(
    module: Annotated[str, typer.Argument(help="As order-of-work; see module list.")],
    due: Annotated[str, typer.Option(help="As 2026-12-04 or 2026-12-04T16:00.")] = "",
    attempt: Annotated[int, typer.Option(help="2 and more are resits, with fresh readings.")] = 1,
    supervised_by: Annotated[str, typer.Option(help="Who watches the work, if anybody.")] = "",
    bench_readings: Annotated[
        bool,
        typer.Option(
            "--bench-readings",
            help="Apprentices may use readings from the real bench instead of the drawn ones.",
        ),
    ] = False,
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
            place,
            source,
            module,
            attempt=attempt,
            due=moment,
            learners=roster_of(place),
            supervised_by=supervised_by,
            bench_readings=bench_readings,
        )
    until = f", due {moment:%Y-%m-%d %H:%M}" if moment else ", with no due date"
    _say(f"{assigned.name} is handed out{until}.")


@module_app.command("add-notebook")
def module_add_notebook(
    file: Annotated[Path, typer.Argument(help="A notebook with nbgrader's cells, of your own.")],
    outcome: Annotated[str, typer.Option(help="What it shows, as read-scales.")],
    due: Annotated[str, typer.Option(help="As 2026-12-04 or 2026-12-04T16:00.")] = "",
    name: Annotated[str, typer.Option(help="What it is called; made from the file's name.")] = "",
    attempt: Annotated[int, typer.Option(help="2 and more are resits.")] = 1,
    supervised_by: Annotated[str, typer.Option(help="Who watches the work, if anybody.")] = "",
    cohort: CohortOption = None,
) -> None:
    """Hand out a notebook of your own that is marked by running code, in a sandbox."""
    from twoshaft_grader.code_tasks.hand_out import add_notebook
    from twoshaft_grader.code_tasks.sandbox import check_sandbox
    from twoshaft_grader.cohort.due import read_due
    from twoshaft_grader.cohort.intake import roster_of

    place = _cohort(cohort)
    check_sandbox()
    moment = read_due(due, place.zone) if due else None
    with Bar(f"handing out {file.name}"):
        assigned = add_notebook(
            place,
            file,
            outcome=outcome,
            due=moment,
            learners=roster_of(place),
            name=name,
            attempt=attempt,
            supervised_by=supervised_by,
        )
    _say(f"{assigned.name} is handed out. It is marked by running code, and says so.")


@module_app.command("due")
def module_due(
    assignment: Annotated[str, typer.Argument(help="As order-of-work-1.")],
    due: Annotated[str, typer.Argument(help="As 2026-12-04 or 2026-12-04T16:00.")],
    learner: Annotated[str, typer.Option(help="Only for this learner's id.")] = "",
    cohort: CohortOption = None,
) -> None:
    """Change the due date of what is handed out, for everybody or for one learner."""
    from twoshaft_grader.cohort.assign import change_due, read_assigned
    from twoshaft_grader.cohort.due import read_due
    from twoshaft_grader.cohort.extensions import extend_due
    from twoshaft_grader.cohort.intake import roster_of

    place = _cohort(cohort)
    moment = read_due(due, place.zone)
    if learner:
        assigned = read_assigned(place, assignment)
        extend_due(place, assigned, roster_of(place), learner, moment)
    else:
        change_due(place, assignment, moment)
    whom = f" for {learner}" if learner else ""
    _say(f"{assignment} is now due {moment:%Y-%m-%d %H:%M}{whom}.")


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
    for own in out:
        if own.code_outcome:
            _say(f"{own.module}: {own.name}, your own, marked by running code")


@app.command("collect")
def collect_work(
    assignment: AssignmentArgument = None,
    cohort: CohortOption = None,
    take: Annotated[
        list[str] | None,
        typer.Option(help="Take the last hand-in of this learner's id, though it is asked about."),
    ] = None,
) -> int:
    """Take in what was handed in; later work replaces earlier."""
    from twoshaft_grader.cohort.collect import collect
    from twoshaft_grader.cohort.intake import roster_of

    place = _cohort(cohort)
    learners = roster_of(place)
    wanted = _assignments(place, assignment)
    unknown = sorted(set(take or ()) - {learner.id for learner in learners})
    if unknown:
        raise CohortError(f'nobody on the roster has the id "{unknown[0]}"', mend="check the id")
    found = []
    with Bar("collecting", len(wanted)) as bar:
        for assigned in wanted:
            found.append(collect(place, assigned, learners, take=take or ()))
            bar.step()
    for result in found:
        _say(f"{result.assignment}: {len(result.new)} new, {len(result.newer)} newer.")
        if result.missing:
            _say(f"  Not handed in: {_names(result.missing)}.")
        if result.placed:
            _say(f"  Placed by hand, so with no time of handing in: {_names(result.placed)}.")
        if result.strangers:
            _say(f"  Not on the roster, and left in the exchange: {_names(result.strangers)}.")
        if result.restored:
            _say(f"  Not as collected, and put back: {_names(result.restored)}.")
        for one in result.later:
            _say(f"  {one.learner}: {one.why}")
        _not_done("Kept, and not taken unless you say --take ID", result.asked)
        _not_done("Could not be collected", result.left)
    return _status(*(one for result in found for one in (*result.asked, *result.left)))


@app.command("mark")
def mark_work(
    assignment: AssignmentArgument = None,
    cohort: CohortOption = None,
    again: Annotated[bool, typer.Option("--again", help="Mark unchanged work too.")] = False,
    workers: Annotated[int, typer.Option(help="Processes at most; 0: one for each core.")] = 0,
    scheduler: Annotated[
        str, typer.Option(help="Mark on the machines of a Dask scheduler, as tcp://10.0.0.5:8786.")
    ] = "",
) -> int:
    """Mark what was collected. Stopped half-way, the same command goes on."""
    from twoshaft_grader.cohort.intake import roster_of
    from twoshaft_grader.cohort.marking_run import (
        AS_BEFORE,
        NOT_DONE,
        NOT_HANDED_IN,
        mark_assignment,
    )
    from twoshaft_grader.cohort.marks import MARKED, UNREADABLE
    from twoshaft_grader.cohort.not_done import NotDone
    from twoshaft_grader.desk.tables import marks_table
    from twoshaft_grader.records.alike import alike

    place = _cohort(cohort)
    learners = roster_of(place)
    every: list[NotDone] = []
    with _marking(scheduler) as marked:
        for assigned in _assignments(place, assignment):
            with Bar(f"marking {assigned.name}", len(learners)) as bar:
                done = mark_assignment(
                    place,
                    assigned,
                    learners,
                    again=again,
                    workers=workers,
                    marked=marked,
                    step=bar.step,
                )
            _console().print(marks_table(assigned.name, learners, done))
            counts = [
                f"{sum(d.state == state for d in done)} {word}"
                for state, word in (
                    (MARKED, "marked"),
                    (AS_BEFORE, "as before"),
                    (UNREADABLE, "cannot be read"),
                    (NOT_HANDED_IN, "not handed in"),
                )
            ]
            _say(f"{assigned.name}: {_names(counts)}.")
            left = [NotDone(d.learner, d.reason) for d in done if d.state in (UNREADABLE, NOT_DONE)]
            _not_done("Could not be marked", left)
            if any(d.state == MARKED for d in done) and alike(place, assigned, learners)[0]:
                _say(
                    f'Some sheets agree more than chance allows: "twoshaft alike {assigned.name}".'
                )
            every += left
    return _status(*every)


@contextmanager
def _marking(scheduler: str) -> Iterator[Marking | None]:
    """What marks: the workers of a scheduler, or this machine (None)."""
    if not scheduler:
        yield None
        return
    from twoshaft_grader.cohort.cluster import Cluster

    with Cluster(scheduler) as cluster:
        yield cluster.marked


@app.command("alike")
def tell_alike(assignment: AssignmentArgument = None, cohort: CohortOption = None) -> int:
    """Tell which marked sheets agree more than chance allows: a fact to ask about, no verdict."""
    from twoshaft_grader.cohort.intake import roster_of
    from twoshaft_grader.records.alike import SELDOM, alike

    place = _cohort(cohort)
    learners = roster_of(place)
    every: list[NotDone] = []
    for assigned in _assignments(place, assignment):
        found, left = alike(place, assigned, learners)
        _say(f"{assigned.name}: {len(found) or 'no'} {'pair' if len(found) == 1 else 'pairs'}.")
        for one in found:
            _say(f"  {one.sentence}")
        _not_done("Could not be compared", left)
        every += left
    _say(
        f"Told is what chance brings about in no more than one of {1 / SELDOM:.0f} groups of this "
        "size. It may have good reasons: learners at one bench, a teacher's example. Ask both."
    )
    return _status(*every)


@app.command("give-back")
def give_back_work(assignment: AssignmentArgument = None, cohort: CohortOption = None) -> int:
    """Return feedback pages to the learners."""
    from twoshaft_grader.cohort.give_back import give_back
    from twoshaft_grader.cohort.intake import roster_of

    place = _cohort(cohort)
    learners = roster_of(place)
    left: list[NotDone] = []
    for assigned in _assignments(place, assignment):
        with Bar(f"giving back {assigned.name}", len(learners)) as bar:
            given = give_back(place, assigned, learners, step=bar.step)
        _say(f"{assigned.name}: feedback returned to {len(given.returned)} of {len(learners)}.")
        if given.mark_first:
            _say(f"  Newer work, mark it first: {_names(given.mark_first)}.")
        if given.returned:
            _say(f"  Pages: {place.root / 'feedback'}")
        _not_done("Could not be given back", given.left)
        left += given.left
    return _status(*left)


@app.command("change-mark")
def change_one_mark(
    learner: Annotated[str, typer.Argument(help="Learner's id.")],
    assignment: Annotated[str, typer.Argument(help="As order-of-work-1.")],
    task: Annotated[str, typer.Argument(help="As main-case.")],
    points: Annotated[float, typer.Argument(help="The new points of the task.")],
    by: Annotated[str, typer.Option(help="Who changes it.")],
    why: Annotated[str, typer.Option(help="The reason.")],
    cohort: CohortOption = None,
) -> None:
    """Change the mark of one task, with author and reason."""
    from twoshaft_grader.cohort.assign import read_assigned
    from twoshaft_grader.records.hand_changes import change_mark

    place = _cohort(cohort)
    before, most = change_mark(
        place, read_assigned(place, assignment), learner, task, points, by=by, why=why
    )
    _say(f"{task} of {learner} in {assignment}: {before:g} is now {points:g} of {most:g}.")


@app.command("observe")
def observe_one(
    learner: Annotated[str, typer.Argument(help="Learner's id.")],
    outcome: Annotated[str, typer.Argument(help="As plan-order; a module's id lists its own.")],
    by: Annotated[str, typer.Option(help="Who saw it.")],
    met: Annotated[bool, typer.Option("--met/--not-yet", help="Whether it is enough.")],
    note: Annotated[str, typer.Option(help="What was seen, or what is missing.")] = "",
    kind: Annotated[str, typer.Option(help="at-the-bench or supervised.")] = "at-the-bench",
    cohort: CohortOption = None,
) -> None:
    """Record what was seen of one outcome, at the bench or under supervision."""
    from twoshaft_grader.cohort.intake import roster_of
    from twoshaft_grader.cohort.observations import observe
    from twoshaft_grader.cohort.standing import write_standing

    place = _cohort(cohort)
    seen = observe(place, roster_of(place), learner, outcome, by=by, met=met, kind=kind, note=note)
    write_standing(place, learner)
    _say(f"{outcome} of {learner}: {'met' if met else 'not yet'}, {seen.kind}, seen by {seen.by}.")


@app.command("observations")
def show_observations(
    learner: Annotated[str, typer.Option(help="Only this learner's id.")] = "",
    outcome: Annotated[str, typer.Option(help="Only this outcome, as safe-order.")] = "",
    cohort: CohortOption = None,
) -> None:
    """List what was observed: of whom, of which outcome, when, as what, and who saw it."""
    from twoshaft_grader.cohort.intake import roster_of
    from twoshaft_grader.cohort.observations import list_observations
    from twoshaft_grader.desk.tables import observations_table

    place = _cohort(cohort)
    listed = list_observations(place, roster_of(place), learner=learner, outcome=outcome)
    if not listed:
        which = " like this" if learner or outcome else ""
        _say(f'Nothing is observed{which} yet. Record it with "{command()} observe".')
        return
    _console().print(observations_table("Observed, oldest first", listed, place.zone))


@app.command("export")
def export_marks(
    cohort: CohortOption = None,
    to: Annotated[
        Path | None, typer.Option(help="File to write; exports/outcomes.csv if not given.")
    ] = None,
    assignment: Annotated[str, typer.Option(help="Only this one.")] = "",
    learner: Annotated[str, typer.Option(help="Only this one.")] = "",
) -> int:
    """Export marks as CSV: one row for each learner, module, attempt and outcome."""
    from twoshaft_grader.records.export import export_cohort

    place = _cohort(cohort)
    with Bar("exporting"):
        path, count, left = export_cohort(
            place,
            to,
            learners=[learner] if learner else [],
            assignments=[assignment] if assignment else [],
        )
    _say(f"Wrote {count} rows to {path}.")
    _not_done("Could not be exported", left)
    return _status(*left)


@app.command("progress")
def show_progress(assignment: AssignmentArgument = None, cohort: CohortOption = None) -> int:
    """Show where everybody stands."""
    from twoshaft_grader.cohort.not_done import NotDone
    from twoshaft_grader.desk.tables import progress_table
    from twoshaft_grader.records.progress import progress

    place = _cohort(cohort)
    with Bar("looking"):
        standings = progress(place, _assignments(place, assignment))
    for name in dict.fromkeys(standing.assignment for standing in standings):
        mine = [standing for standing in standings if standing.assignment == name]
        _console().print(progress_table(name, mine))
        counts: dict[str, int] = {}
        for standing in mine:
            counts[standing.stage] = counts.get(standing.stage, 0) + 1
        _say(f"{name}: {'; '.join(f'{count} {stage}' for stage, count in counts.items())}.")
    left = [NotDone(one.learner.id, one.trouble) for one in standings if one.trouble]
    _not_done("Could not be told", left)
    return _status(*left)


@app.command("kit")
def pack_kit(
    out: Annotated[Path, typer.Option(help="File to write.")] = Path("kit.zip"),
    cohort: Annotated[
        Path | None, typer.Option(help="A cohort whose unit is on the bench; else the shipped one.")
    ] = None,
    content: Annotated[str, typer.Option(help="The course's source folder.")] = "",
) -> None:
    """Pack what an apprentice's own machine needs, without solutions, marks or the grader."""
    from twoshaft_grader.cohort.content import find_content
    from twoshaft_grader.cohort.folder import open_cohort
    from twoshaft_grader.kit import write_kit

    place = open_cohort(cohort) if cohort else None
    count = write_kit(out, find_content(content), place)
    _say(f"Wrote {count} files to {out.resolve()}. README.md in it says how to start.")


@app.command("bench-sheet")
def print_bench_sheet(
    module: Annotated[str, typer.Argument(help="As threaded-joints; all for every module.")],
    cohort: CohortOption = None,
    unit: Annotated[
        str, typer.Option(help="Without a cohort: a unit file, or the id of a shipped unit.")
    ] = "",
    paper: Annotated[str, typer.Option(help="a4 or letter.")] = "a4",
    out: Annotated[
        Path | None, typer.Option(help="Folder to write to; bench-sheets if not given.")
    ] = None,
) -> None:
    """Print what an apprentice takes to the real unit: PDF, and HTML beside it."""
    from twoshaft.units import load_unit
    from twoshaft_grader.bench_sheets import modules_named, paper_named, write_sheets

    size, modules = paper_named(paper), modules_named(module)
    if unit and cohort:
        raise CohortError(
            "both a unit and a cohort are named", mend="leave one out; a cohort has its own unit"
        )
    place = None if unit else _cohort(cohort)
    written = write_sheets(
        modules,
        load_unit(place.unit_source if place else unit),
        out or (place.root if place else Path.cwd()) / "bench-sheets",
        paper=size,
        cohort=place.name if place else "",
        college=place.college if place else "",
    )
    for pdf, _ in written:
        _say(f"Wrote {pdf}, and the same as HTML.")
    _say("No figure stands on them: torques and clearances come from the maker's manual.")


@unit_app.command("check")
def unit_check(
    file: Annotated[str, typer.Argument(help="A unit file, or the id of a shipped unit.")],
) -> int:
    """Check a unit file; one sentence for each thing to mend."""
    from twoshaft.errors import UnitFileError
    from twoshaft.models.audit import sound_unit

    try:
        with Bar("checking the unit"):
            unit = sound_unit(file)
    except UnitFileError as error:
        for finding in error.findings or (error,):
            print(finding.sentence, file=sys.stderr)
        return 2
    name = unit.identity.name
    _say(f"{name}: {len(unit.operations)} operations, {len(unit.rules)} rules, nothing to mend.")
    return 0


@unit_app.command("try")
def unit_try(
    file: Annotated[str, typer.Argument(help="A unit file, or the id of a shipped unit.")],
    content: Annotated[str, typer.Option(help="Folder with the solutions.")] = "",
) -> None:
    """Try every lesson and exercise on a unit; which modules can be given with it."""
    from twoshaft.models.audit import sound_unit
    from twoshaft_grader.cohort.content import find_content
    from twoshaft_grader.cohort.trial import try_modules

    place = find_content(content)
    with Bar("checking the unit"):
        unit = sound_unit(file)
    trials = []
    with Bar("trying the modules", total=len(place.modules)) as bar:
        for trial in try_modules(unit, file, place):
            trials.append(trial)
            bar.step()
    good = [trial.module for trial in trials if not trial.exercise and not trial.lesson]
    _say(f"{unit.identity.name}: {len(good)} of {len(trials)} modules can be given.")
    for trial in trials:
        if trial.module not in good:
            _say(f"Leave out {trial.module}, or mend the file:")
            for words, why in (("exercise", trial.exercise), ("lesson", trial.lesson)):
                if why:
                    _say(f"  {words}: {why}")


@unit_app.command("draw")
def unit_draw(
    file: Annotated[str, typer.Argument(help="A unit file, or the id of a shipped unit.")],
    svg: Annotated[
        Path | None, typer.Option("--svg", help="Also write the picture to this file.")
    ] = None,
) -> None:
    """Print the shapes of a unit as a section to correct; a schematic where it has none."""
    from twoshaft.models.shape.draft import draft
    from twoshaft.plots.unit_section import unit_figure
    from twoshaft.stored.writing import write_file
    from twoshaft.units import load_unit

    unit = load_unit(file)
    print(draft(unit), end="")
    if svg is not None:
        write_file(svg, unit_figure(unit, f"{unit.identity.name} in section"))
        print(f"The picture is in {svg}.", file=sys.stderr)


@unit_app.command("fields")
def unit_fields() -> None:
    """Print what every field of a unit file says, with its unit and an example."""
    from twoshaft.units.fields_page import fields_page

    print(fields_page())


@unit_app.command("schema")
def unit_schema() -> None:
    """Print the JSON Schema of unit files, for editors."""
    import json

    from twoshaft.units import unit_json_schema

    print(json.dumps(unit_json_schema(), indent=2, ensure_ascii=False))


@app.command("open")
def open_desk(
    cohort: CohortOption = None,
    role: Annotated[
        Role, typer.Option("--as", help="What apprentices see, or what staff see.")
    ] = Role.APPRENTICE,
    port: Annotated[int, typer.Option(help="0: the first free one from 8888.")] = 0,
    browser: Annotated[bool, typer.Option(help="Open a browser window.")] = True,
) -> int:
    """Open the cohort in JupyterLab; end it with Ctrl C."""
    from twoshaft_grader.desk.jupyter import open_jupyter

    return open_jupyter(_cohort(cohort), role.value, port=port, browser=browser)


@hub_app.command("settings")
def write_hub_settings(
    cohort: CohortOption = None,
    out: Annotated[Path, typer.Option(help="File to write.")] = Path("jupyterhub_config.py"),
    staff: Annotated[
        list[str] | None,
        typer.Option(help="Name under which an instructor signs in; may be given again."),
    ] = None,
    port: Annotated[int, typer.Option(help="Of this machine, for the desk's server.")] = 9999,
) -> None:
    """Write the settings of a JupyterHub: a server for each learner, the desk for staff."""
    from twoshaft_grader.cohort.intake import roster_of
    from twoshaft_grader.desk.hub import hub_settings

    place = _cohort(cohort)
    hub_settings(place, roster_of(place), out, staff=staff or [], port=port)
    _say(f"Wrote {out.resolve()}. Whoever looks after the server starts a hub with it, as root.")
    if not staff:
        _say("Nobody is named as staff: they come to the desk once they are, with --staff NAME.")


@app.command("demo")
def demo(
    folder: Annotated[Path, typer.Argument(help="The folder to make.")],
    content: Annotated[str, typer.Option(help="Folder with the solutions.")] = "",
) -> None:
    """Make a cohort of twelve invented apprentices, from assigning to the export."""
    from twoshaft_grader.desk.demo import make_demo

    _privately()
    make_demo(folder, content=content, say=_say)
