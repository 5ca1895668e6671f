"""Commands of supervised attempts."""

from __future__ import annotations

from typing import Annotated

import typer

from twoshaft_grader.cohort.roster import chosen
from twoshaft_grader.desk.app import CohortOption, app, cohort_at, names, say, tell_not_done

supervised_app = typer.Typer(
    no_args_is_help=True,
    help="Supervised attempts: only what is handed in between opening and closing counts as such.",
    rich_markup_mode=None,
)
app.add_typer(supervised_app, name="supervised")

AssessorOption = Annotated[
    str, typer.Option("--by", help="Assessor on the register, by id or name.")
]


@supervised_app.command("open")
def supervised_open(
    assignment: Annotated[str, typer.Argument(help="As order-of-work-1.")],
    room: Annotated[str, typer.Option(help="Where they sit.")],
    by: AssessorOption,
    to: Annotated[
        list[str] | None, typer.Option(help="For this learner's id; may be given again.")
    ] = None,
    group: Annotated[str, typer.Option(help="For this group.")] = "",
    cohort: CohortOption = None,
) -> None:
    """Open a supervised attempt for the learners who are in a room."""
    from twoshaft_grader.cohort.assign import read_assigned
    from twoshaft_grader.cohort.intake import roster_of
    from twoshaft_grader.cohort.supervised import BEFORE, counted, open_sitting

    place = cohort_at(cohort)
    ids = [one.id for one in chosen(roster_of(place), to or (), group)] if to or group else []
    one = open_sitting(place, read_assigned(place, assignment), ids, room=room, by=by)
    say(f"Supervised attempt {one.number} at {assignment} is open for {names(one.learners)}.")
    if one.saved:
        say(f"Saved already: {counted(one.saved)}. {BEFORE}")


@supervised_app.command("close")
def supervised_close(
    number: Annotated[int, typer.Argument(help="Of the attempt, as supervised list says it.")],
    by: AssessorOption,
    note: Annotated[str, typer.Option(help="What happened that is to be known.")] = "",
    cohort: CohortOption = None,
) -> None:
    """Close a supervised attempt; what was handed in since it was opened counts as supervised."""
    from twoshaft_grader.cohort.supervised import BEFORE, close_sitting, counted

    done = close_sitting(cohort_at(cohort), number, by=by, note=note)
    one = done.sitting
    say(f"Supervised attempt {number} is closed. Handed in: {names(list(one.handed_in))}.")
    if one.before:
        say(f"Saved before it was opened: {counted(one.before)}. {BEFORE}")
    tell_not_done("Of whom nothing counts as supervised", done.left)


@supervised_app.command("list")
def supervised_list(cohort: CohortOption = None) -> None:
    """List supervised attempts."""
    from twoshaft_grader.cohort.supervised import counted, sittings_of

    found = sittings_of(cohort_at(cohort))
    for one in found:
        state = f"closed {one.closed_at} by {one.closed_by}" if one.closed_at else "open"
        say(
            f"{one.number}: {one.assignment}, {one.room}, opened {one.opened_at} by "
            f"{one.opened_by}, {state}; {names(one.learners)}; handed in: "
            f"{names(list(one.handed_in)) or 'nobody'}"
            + (f"; saved before: {counted(one.before)}" if one.before else "")
        )
    if not found:
        say("There is no supervised attempt.")


@app.command("adjust")
def adjust_for(
    learner: Annotated[str, typer.Argument(help="The learner's id.")],
    why: Annotated[str, typer.Option(help="The reason; the learner never sees it.")],
    by: AssessorOption,
    more_days: Annotated[int, typer.Option(help="Days later for each date.")] = 0,
    reader: Annotated[bool, typer.Option("--reader", help="Somebody reads to them.")] = False,
    large_print: Annotated[
        bool, typer.Option("--large-print", help="Their pages are in large print.")
    ] = False,
    colour: Annotated[str, typer.Option(help="Ground of their pages: cream, blue or rose.")] = "",
    cohort: CohortOption = None,
) -> None:
    """Arrange more time, a reader, large print or another colour for a learner."""
    from twoshaft.stored.adjustments import OwnAdjustment
    from twoshaft_grader.cohort.adjustments import adjust, in_words
    from twoshaft_grader.cohort.intake import roster_of

    place = cohort_at(cohort)
    wanted = OwnAdjustment(
        more_days=more_days, reader=reader, large_print=large_print, colour=colour
    )
    one = adjust(place, roster_of(place), learner, wanted, by=by, why=why)
    say(f"Arranged for {learner}: {in_words(one)}.")


@app.command("adjustments")
def list_adjustments(cohort: CohortOption = None) -> None:
    """List what is arranged for whom."""
    from twoshaft_grader.cohort.adjustments import adjustments_of, in_words

    known = adjustments_of(cohort_at(cohort))
    for id, one in sorted(known.items()):
        say(f"{id}: {in_words(one)}, by {one.by} on {one.at[:10]}: {one.why}")
    if not known:
        say("Nothing is arranged for anybody.")
