"""Commands of the modules: what is handed out, to whom, and until when."""

from __future__ import annotations

from pathlib import Path
from typing import Annotated

import typer

from twoshaft_grader.cohort.roster import chosen
from twoshaft_grader.desk.app import ByOption, CohortOption, cohort_at, module_app, names, say
from twoshaft_grader.desk.bar import Bar


@module_app.command("assign")
def module_assign(
    module: Annotated[str, typer.Argument(help="As order-of-work; see module list.")],
    due: Annotated[str, typer.Option(help="As 2026-12-04 or 2026-12-04T16:00.")] = "",
    attempt: Annotated[int, typer.Option(help="2 and more are resits, with fresh readings.")] = 1,
    bench_readings: Annotated[
        bool,
        typer.Option(
            "--bench-readings",
            help="Apprentices may use readings from the real bench instead of the drawn ones.",
        ),
    ] = False,
    to: Annotated[
        list[str] | None, typer.Option(help="Only to this learner's id; may be given again.")
    ] = None,
    group: Annotated[str, typer.Option(help="Only to this group.")] = "",
    look: Annotated[
        bool, typer.Option("--look", help="Only say what stands in the way; write nothing.")
    ] = False,
    cohort: CohortOption = None,
    content: Annotated[str, typer.Option(help="Folder with the solutions.")] = "",
    by: ByOption = "",
) -> None:
    """Hand a module out to the cohort, a group or chosen learners."""
    from twoshaft_grader.cohort.assign import assign
    from twoshaft_grader.cohort.before_assigning import in_the_way
    from twoshaft_grader.cohort.content import find_content
    from twoshaft_grader.cohort.due import read_due
    from twoshaft_grader.cohort.intake import roster_of

    place = cohort_at(cohort)
    moment = read_due(due, place.zone) if due else None
    source = find_content(content) if content else find_content(place.content, base=place.root)
    learners = chosen(roster_of(place), to or (), group)
    if look:
        with Bar(f"trying {module}"):
            found = in_the_way(
                place, source, module, attempt=attempt, due=moment, learners=learners
            )
        for one in found:
            say(one.text)
        say("Nothing stands in the way." if not found else "Nothing is handed out.")
        return
    with Bar(f"handing out {module}"):
        assigned = assign(
            place,
            source,
            module,
            attempt=attempt,
            due=moment,
            learners=learners,
            bench_readings=bench_readings,
            some=bool(to or group),
            by=by,
        )
    until = f", due {moment:%Y-%m-%d %H:%M}" if moment else ", with no due date"
    say(f"{assigned.name} is handed out{until}.")
    for line in assigned.lacking:
        say(f"  {line}")


@module_app.command("give")
def module_give(
    assignment: Annotated[str, typer.Argument(help="As order-of-work-2.")],
    to: Annotated[
        list[str] | None, typer.Option(help="To this learner's id; may be given again.")
    ] = None,
    group: Annotated[str, typer.Option(help="To this group.")] = "",
    cohort: CohortOption = None,
    by: ByOption = "",
) -> None:
    """Hand what some have out to more learners."""
    from twoshaft_grader.cohort.assign import hand_out_to, read_assigned
    from twoshaft_grader.cohort.intake import roster_of

    place = cohort_at(cohort)
    learners = chosen(roster_of(place), to or (), group)
    with Bar(f"handing out {assignment}"):
        hand_out_to(place, read_assigned(place, assignment), learners, by=by)
    say(f"{assignment} is handed out to {names([one.id for one in learners])}.")


@module_app.command("take-back")
def module_take_back(
    assignment: Annotated[str, typer.Argument(help="As order-of-work-1.")],
    cohort: CohortOption = None,
    why: Annotated[str, typer.Option(help="The reason, for the trail.")] = "",
    by: ByOption = "",
) -> None:
    """Take an assignment back while nobody has begun it; else who has is said."""
    from twoshaft_grader.cohort.assign import read_assigned
    from twoshaft_grader.cohort.intake import roster_of
    from twoshaft_grader.cohort.unassign import take_assignment_back

    place = cohort_at(cohort)
    left = take_assignment_back(
        place, read_assigned(place, assignment), roster_of(place), by=by, why=why
    )
    say(f"{assignment} is taken back.")
    if left:
        say(f"A copy with nothing in it stays in the account of: {names(left)}.")


@module_app.command("needs")
def module_needs(
    module: Annotated[str, typer.Argument(help="As order-of-work.")],
    cohort: CohortOption = None,
) -> None:
    """Say who needs a further attempt at a module, and why."""
    from twoshaft_grader.cohort.before_assigning import who_needs

    found = who_needs(cohort_at(cohort), module)
    for person, why in found:
        say(f"{person.id}: {person.name}, {why}")
    if not found:
        say(f"Nobody needs a further attempt at {module}.")


@module_app.command("add-notebook")
def module_add_notebook(
    file: Annotated[Path, typer.Argument(help="A notebook with nbgrader's cells, of your own.")],
    outcome: Annotated[str, typer.Option(help="What it shows, as read-scales.")],
    due: Annotated[str, typer.Option(help="As 2026-12-04 or 2026-12-04T16:00.")] = "",
    name: Annotated[str, typer.Option(help="What it is called; made from the file's name.")] = "",
    attempt: Annotated[int, typer.Option(help="2 and more are resits.")] = 1,
    cohort: CohortOption = None,
    by: ByOption = "",
) -> None:
    """Hand out a notebook of your own that is marked by running code, in a sandbox."""
    from twoshaft_grader.code_tasks.hand_out import add_notebook
    from twoshaft_grader.code_tasks.sandbox import check_sandbox
    from twoshaft_grader.cohort.due import read_due
    from twoshaft_grader.cohort.intake import roster_of

    place = cohort_at(cohort)
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
            by=by,
        )
    say(f"{assigned.name} is handed out. It is marked by running code, and says so.")


@module_app.command("due")
def module_due(
    assignment: Annotated[str, typer.Argument(help="As order-of-work-1.")],
    due: Annotated[str, typer.Argument(help="As 2026-12-04 or 2026-12-04T16:00.")],
    learner: Annotated[str, typer.Option(help="Only for this learner's id.")] = "",
    group: Annotated[str, typer.Option(help="Only for this group.")] = "",
    cohort: CohortOption = None,
    by: ByOption = "",
    why: Annotated[str, typer.Option(help="The reason, for the trail.")] = "",
) -> None:
    """Change the due date of what is handed out, for everybody, a group or one learner."""
    from twoshaft_grader.cohort.assign import change_due, read_assigned
    from twoshaft_grader.cohort.due import read_due
    from twoshaft_grader.cohort.extensions import extend_all
    from twoshaft_grader.cohort.intake import roster_of

    place = cohort_at(cohort)
    moment = read_due(due, place.zone)
    if learner or group:
        assigned = read_assigned(place, assignment)
        people = roster_of(place)
        mine = [learner] if learner else [one.id for one in chosen(people, (), group)]
        extend_all(place, assigned, people, mine, moment, by=by, why=why)
    else:
        change_due(place, assignment, moment, by=by, why=why)
    whom = f" for {learner or f'group {group}'}" if learner or group else ""
    say(f"{assignment} is now due {moment:%Y-%m-%d %H:%M}{whom}.")


@module_app.command("list")
def module_list(
    cohort: CohortOption = None,
    content: Annotated[str, typer.Option(help="Folder with the solutions.")] = "",
) -> None:
    """List the modules, and what is handed out."""
    from twoshaft_grader.cohort.assign import assignments_of
    from twoshaft_grader.cohort.content import find_content

    place = cohort_at(cohort)
    out = assignments_of(place)
    source = find_content(content) if content else find_content(place.content, base=place.root)
    for module in source.modules:
        given = [
            f"{a.name} (due {a.due.astimezone(place.zone):%Y-%m-%d %H:%M})" if a.due else a.name
            for a in out
            if a.module == module
        ]
        say(f"{module}: {names(given) or 'not handed out'}")
    for own in out:
        if own.code_outcome:
            say(f"{own.module}: {own.name}, your own, marked by running code")
