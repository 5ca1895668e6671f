"""The ``twoshaft`` command."""

from __future__ import annotations

import gc
import os
import sys
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path
from typing import TYPE_CHECKING, Annotated

import typer

from twoshaft import DEFAULT_UNIT
from twoshaft.errors import CohortError
from twoshaft.stored.assignment import UNIT
from twoshaft_grader.desk import (
    assessor_commands,
    attempt_commands,
    correction_commands,
    hand_over_commands,
    moderation_commands,
    module_commands,
    photograph_commands,
    roster_commands,
    rule_commands,
    unit_commands,
)
from twoshaft_grader.desk.app import (
    TRACE,
    AssignmentArgument,
    ByOption,
    CohortOption,
    Role,
    app,
    assignments_named,
    cohort_app,
    cohort_at,
    console,
    gradebook_app,
    hub_app,
    names,
    privately,
    say,
    say_findings,
    status,
    tell_not_done,
    unit_app,
)
from twoshaft_grader.desk.bar import Bar
from twoshaft_grader.desk.call import command
from twoshaft_grader.desk.errors import SOME_LEFT, run_quietly

if TYPE_CHECKING:  # the library behind a command is loaded when it is used: --help stays quick
    from twoshaft_grader.cohort.marking_run import Marking
    from twoshaft_grader.cohort.not_done import NotDone

LOADED = 50_000
"""So many objects are made before it is looked for what can go; Python's own measure is 700."""

__all__ = [
    "app",
    "assessor_commands",
    "attempt_commands",
    "correction_commands",
    "hand_over_commands",
    "main",
    "moderation_commands",
    "module_commands",
    "photograph_commands",
    "roster_commands",
    "rule_commands",
    "unit_commands",
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
    by: ByOption = "",
) -> None:
    """Make the folder that holds a cohort's work and marks, and the one that learners reach."""
    from twoshaft_grader.cohort.founding import found
    from twoshaft_grader.cohort.shared import OPENER

    privately()
    with Bar("making the cohort"):
        made = found(
            folder,
            id=id,
            name=name,
            college=college,
            unit=unit,
            timezone=timezone,
            content=content,
            shared=shared,
            gradebook=gradebook,
            by=by,
        )
    cohort = made.cohort
    say(f"Made the cohort {cohort.id} in {cohort.root}, which opens to your account alone.")
    if cohort.unit == UNIT:
        say(f"Its unit is kept in it: {cohort.root / UNIT}")
    if made.content:
        if made.closed:
            closed = f"{names(made.closed)} of {made.content}"
            say(f"Closed to other accounts, since answers are in it: {closed}")
        say(f"Learners open the course from accounts of their own: {cohort.shared / OPENER}")
    else:
        say(f"What learners use is in {cohort.shared}: all of them work in your account.")
    say(f"Next: {command()} roster take FILE --cohort {cohort.root}")


@cohort_app.command("back-up")
def cohort_back_up(
    file: Annotated[Path, typer.Argument(help="The file to make, as autumn-2026-11-29.zip.")],
    cohort: CohortOption = None,
) -> int:
    """Keep the whole cohort in one file; others may work in it meanwhile."""
    from twoshaft_grader.cohort.back_up import back_up

    place = cohort_at(cohort)
    with Bar("backing up"):
        made = back_up(place, file)
    say(f"Kept {made.count} files in {made.file}, which opens to your account alone.")
    tell_not_done("Left out", made.left)
    return status(*made.left)


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

    privately()
    with Bar("restoring"):
        made = restore(file, folder, shared=shared)
    root = made.cohort.root
    say(f"Restored {made.count} files to {root} and {made.cohort.shared}.")
    if made.apart:
        say(
            f"Their own folders are in {root / OWN_FOLDERS}, since only root can give them to "
            "their accounts, by the same command, to accounts of the same name and number: "
            f"{names(made.apart)}."
        )
    if made.other_config:
        say("nbgrader_config.py was another one, and is written anew: it would be run.")
    if made.content:
        say(f"It had its solutions from {made.content}; name that again with --content.")
    if made.other_source:
        say(
            "Look at their solutions in source/ before you mark, which runs them: they are not "
            f"this course's: {names(made.other_source)}."
        )


@cohort_app.command("anonymous")
def cohort_anonymous(
    folder: Annotated[Path, typer.Argument(help="The folder to make.")],
    cohort: CohortOption = None,
) -> int:
    """Copy the cohort for study: equal marks, invented ids, no names, notes or true times."""
    from twoshaft_grader.cohort.anonymous import anonymous

    place = cohort_at(cohort)
    with Bar("copying"):
        made = anonymous(place, folder)
    say(f"Copied {made.learners} learners without their names to {made.cohort.root}.")
    tell_not_done("Could not be taken into it", made.left)
    return status(*made.left)


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
    by: ByOption = "",
) -> None:
    """Move the gradebook to a server, or back; every row is compared before it counts."""
    from twoshaft_grader.cohort.gradebook_move import move_gradebook

    place = cohort_at(cohort)
    with Bar("moving the gradebook"):
        moved = move_gradebook(place, to, by=by)
    say(f"{sum(moved.rows.values())} rows in {len(moved.rows)} tables are now at {moved.to}.")
    say(f"As it was until now, it is kept: {moved.kept}")


@cohort_app.command("renew")
def cohort_renew(cohort: CohortOption = None, by: ByOption = "") -> None:
    """Bring a cohort of an earlier version up to date; it can be said again at any time."""
    from twoshaft_grader.cohort.renew import renew

    place = cohort_at(cohort)
    done = renew(place, by=by)
    for what in done or ("There was nothing to renew.",):
        say(what)


@app.command("collect")
def collect_work(
    assignment: AssignmentArgument = None,
    cohort: CohortOption = None,
    take: Annotated[
        list[str] | None,
        typer.Option(help="Take the last hand-in of this learner's id, though it is asked about."),
    ] = None,
    place_from: Annotated[
        Path | None,
        typer.Option(
            "--from",
            help="A folder, a zip or a memory stick that holds hand-ins, or a hub's folder of "
            "learners' work.",
        ),
    ] = None,
    by: ByOption = "",
) -> int:
    """Take in what was handed in; later work replaces earlier."""
    from twoshaft_grader.cohort.bring_in import bring_in
    from twoshaft_grader.cohort.collect import collect
    from twoshaft_grader.cohort.intake import roster_of

    place = cohort_at(cohort)
    learners = roster_of(place)
    wanted = assignments_named(place, assignment)
    unknown = sorted(set(take or ()) - {learner.id for learner in learners})
    if unknown:
        raise CohortError(f'nobody on the roster has the id "{unknown[0]}"', mend="check the id")
    if place_from:
        with Bar(f"looking through {place_from}"):
            brought = bring_in(place, place_from, learners, by=by)
        say(f"{place_from}: {len(brought.taken)} new, {len(brought.known)} known already.")
        tell_not_done("Could not be taken from there", brought.left)
    found = []
    with Bar("collecting", len(wanted)) as bar:
        for assigned in wanted:
            found.append(collect(place, assigned, assigned.among(learners), take=take or (), by=by))
            bar.step()
    for result in found:
        say(f"{result.assignment}: {len(result.new)} new, {len(result.newer)} newer.")
        if result.missing:
            say(f"  Not handed in: {names(result.missing)}.")
        if result.placed:
            say(f"  Placed by hand, so with no time of handing in: {names(result.placed)}.")
        if result.strangers:
            say(f"  Not on the roster, and left in the exchange: {names(result.strangers)}.")
        if result.restored:
            say(f"  Not as collected, and put back: {names(result.restored)}.")
        for one in result.later:
            say(f"  {one.learner}: {one.why}")
        tell_not_done("Kept, and not taken unless you say --take ID", result.asked)
        tell_not_done("Could not be collected", result.left)
    outside = brought.left if place_from else ()
    return status(*outside, *(one for r in found for one in (*r.asked, *r.left)))


@app.command("mark")
def mark_work(
    assignment: AssignmentArgument = None,
    cohort: CohortOption = None,
    again: Annotated[bool, typer.Option("--again", help="Mark unchanged work too.")] = False,
    workers: Annotated[int, typer.Option(help="Processes at most; 0: one for each core.")] = 0,
    scheduler: Annotated[
        str, typer.Option(help="Mark on the machines of a Dask scheduler, as tcp://10.0.0.5:8786.")
    ] = "",
    by: ByOption = "",
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

    place = cohort_at(cohort)
    learners = roster_of(place)
    every: list[NotDone] = []
    with _marking(scheduler) as marked:
        for assigned in assignments_named(place, assignment):
            given = assigned.among(learners)
            with Bar(f"marking {assigned.name}", len(given)) as bar:
                done = mark_assignment(
                    place,
                    assigned,
                    given,
                    again=again,
                    workers=workers,
                    marked=marked,
                    step=bar.step,
                    by=by,
                )
            console().print(marks_table(assigned.name, given, done))
            counts = [
                f"{sum(d.state == state for d in done)} {word}"
                for state, word in (
                    (MARKED, "marked"),
                    (AS_BEFORE, "as before"),
                    (UNREADABLE, "cannot be read"),
                    (NOT_HANDED_IN, "not handed in"),
                )
            ]
            say(f"{assigned.name}: {names(counts)}.")
            left = [NotDone(d.learner, d.reason) for d in done if d.state in (UNREADABLE, NOT_DONE)]
            tell_not_done("Could not be marked", left)
            if any(d.state == MARKED for d in done) and alike(place, assigned, learners)[0]:
                say(f'Some sheets agree more than chance allows: "twoshaft alike {assigned.name}".')
            every += left
    return status(*every)


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

    place = cohort_at(cohort)
    learners = roster_of(place)
    every: list[NotDone] = []
    for assigned in assignments_named(place, assignment):
        found, left = alike(place, assigned, learners)
        say(f"{assigned.name}: {len(found) or 'no'} {'pair' if len(found) == 1 else 'pairs'}.")
        for one in found:
            say(f"  {one.sentence}")
        tell_not_done("Could not be compared", left)
        every += left
    say(
        f"Told is what chance brings about in no more than one of {1 / SELDOM:.0f} groups of this "
        "size. It may have good reasons: learners at one bench, a teacher's example. Ask both."
    )
    return status(*every)


@app.command("give-back")
def give_back_work(
    assignment: AssignmentArgument = None, cohort: CohortOption = None, by: ByOption = ""
) -> int:
    """Return feedback pages to the learners."""
    from twoshaft_grader.cohort.give_back import give_back
    from twoshaft_grader.cohort.intake import roster_of

    place = cohort_at(cohort)
    learners = roster_of(place)
    left: list[NotDone] = []
    for assigned in assignments_named(place, assignment):
        mine = assigned.among(learners)
        with Bar(f"giving back {assigned.name}", len(mine)) as bar:
            given = give_back(place, assigned, mine, step=bar.step, by=by)
        say(f"{assigned.name}: feedback returned to {len(given.returned)} of {len(mine)}.")
        if given.mark_first:
            say(f"  Newer work, mark it first: {names(given.mark_first)}.")
        if given.returned:
            say(f"  Pages: {place.root / 'feedback'}")
        tell_not_done("Could not be given back", given.left)
        left += given.left
    return status(*left)


@app.command("export")
def export_marks(
    cohort: CohortOption = None,
    to: Annotated[
        Path | None, typer.Option(help="File to write; exports/outcomes.csv if not given.")
    ] = None,
    assignment: Annotated[str, typer.Option(help="Only this one.")] = "",
    learner: Annotated[str, typer.Option(help="Only this one.")] = "",
    by: ByOption = "",
) -> int:
    """Export marks as CSV: one row for each learner, module, attempt and outcome."""
    from twoshaft_grader.records.export import export_cohort

    place = cohort_at(cohort)
    with Bar("exporting"):
        path, count, left = export_cohort(
            place,
            to,
            learners=[learner] if learner else [],
            assignments=[assignment] if assignment else [],
            by=by,
        )
    say(f"Wrote {count} rows to {path}.")
    tell_not_done("Could not be exported", left)
    return status(*left)


@app.command("progress")
def show_progress(assignment: AssignmentArgument = None, cohort: CohortOption = None) -> int:
    """Show where everybody stands."""
    from twoshaft_grader.cohort.not_done import NotDone
    from twoshaft_grader.desk.tables import progress_table
    from twoshaft_grader.records.progress import progress

    place = cohort_at(cohort)
    with Bar("looking"):
        standings = progress(place, assignments_named(place, assignment))
    for name in dict.fromkeys(standing.assignment for standing in standings):
        mine = [standing for standing in standings if standing.assignment == name]
        console().print(progress_table(name, mine))
        counts: dict[str, int] = {}
        for standing in mine:
            counts[standing.stage] = counts.get(standing.stage, 0) + 1
        say(f"{name}: {'; '.join(f'{count} {stage}' for stage, count in counts.items())}.")
    left = [NotDone(one.learner.id, one.trouble) for one in standings if one.trouble]
    tell_not_done("Could not be told", left)
    return status(*left)


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
    say(f"Wrote {count} files to {out.resolve()}. README.md in it says how to start.")


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
    from twoshaft.jobsheet.photographs import Photographs
    from twoshaft.units import load_unit
    from twoshaft_grader.bench_sheets import modules_named, paper_named, write_sheets
    from twoshaft_grader.cohort.photographs import own_photographs

    size, modules = paper_named(paper), modules_named(module)
    if unit and cohort:
        raise CohortError(
            "both a unit and a cohort are named", mend="leave one out; a cohort has its own unit"
        )
    place = None if unit else cohort_at(cohort)
    written = write_sheets(
        modules,
        load_unit(place.unit_source if place else unit),
        out or (place.root if place else Path.cwd()) / "bench-sheets",
        paper=size,
        cohort=place.name if place else "",
        college=place.college if place else "",
        photographs=own_photographs(place) if place else Photographs(),
    )
    for pdf, _ in written:
        say(f"Wrote {pdf}, and the same as HTML.")
    say("No figure stands on them: torques and clearances come from the maker's manual.")


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
        say_findings(error)
        return 2
    name = unit.identity.name
    say(f"{name}: {len(unit.operations)} operations, {len(unit.rules)} rules, nothing to correct.")
    unit_commands.say_typical(unit)
    return 0


@unit_app.command("try")
def unit_try(
    file: Annotated[str, typer.Argument(help="A unit file, or the id of a shipped unit.")],
    module: Annotated[
        list[str] | None, typer.Option("--module", help="Try only this one; may be repeated.")
    ] = None,
    content: Annotated[str, typer.Option(help="Folder with the solutions.")] = "",
) -> int:
    """Try every lesson and exercise on a unit; which modules can be given with it."""
    from twoshaft.models.audit import sound_unit
    from twoshaft_grader.cohort.content import find_content
    from twoshaft_grader.cohort.trial import try_modules
    from twoshaft_grader.records.unit_files import told_of

    place = find_content(content)
    with Bar("checking the unit"):
        unit = sound_unit(file)
    trials = []
    with Bar("trying the modules", total=len(set(module or place.modules))) as bar:
        for trial in try_modules(unit, file, place, module or ()):
            trials.append(told_of(trial))
            unit_commands.say_tried(trials[-1])
            bar.step()
    good = sum(one.given for one in trials)
    say(f"{unit.identity.name}: {good} of {len(trials)} modules can be given.")
    return SOME_LEFT if any(one.unexpected for one in trials) else 0


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

    return open_jupyter(cohort_at(cohort), role.value, port=port, browser=browser)


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
    from twoshaft_grader.desk.hub import hub_settings, memory_is_limited

    place = cohort_at(cohort)
    hub_settings(place, roster_of(place), out, staff=staff or [], port=port)
    say(f"Wrote {out.resolve()}. Start a hub with it on the server, as root.")
    if not memory_is_limited():
        say("This machine does not keep to a limit of memory: one learner can use all of it.")
    if not staff:
        say("Nobody is named as staff: they come to the desk once they are, with --staff NAME.")


@app.command("demo")
def demo(
    folder: Annotated[Path, typer.Argument(help="The folder to make.")],
    content: Annotated[str, typer.Option(help="Folder with the solutions.")] = "",
) -> None:
    """Make a cohort of twelve invented apprentices, from assigning to the export."""
    from twoshaft_grader.desk.demo import make_demo

    privately()
    make_demo(folder, content=content, say=say)
