"""Commands of the roster: who is in the cohort."""

from __future__ import annotations

from pathlib import Path
from typing import Annotated

import typer

from twoshaft_grader.desk.app import (
    ByOption,
    CohortOption,
    cohort_at,
    names,
    roster_app,
    say,
    status,
    tell_not_done,
)
from twoshaft_grader.desk.bar import Bar
from twoshaft_grader.desk.call import command


@roster_app.command("take")
def roster_take(
    file: Annotated[Path, typer.Argument(help="CSV: id, family name, given name, group.")],
    cohort: CohortOption = None,
    encoding: Annotated[str, typer.Option(help="Of the file, if it is not UTF-8.")] = "",
    show: Annotated[bool, typer.Option("--show", help="Only show what would change.")] = False,
    by: ByOption = "",
) -> None:
    """Take learners in from a CSV file; later files add to it and correct names."""
    from twoshaft_grader.cohort.intake import take_in, would_change
    from twoshaft_grader.cohort.roster import read_roster

    place = cohort_at(cohort)
    learners = read_roster(file, encoding=encoding)
    if show:
        changes, staying = would_change(place, learners)
        for one in changes:
            say(f"{one.learner.id}: {one.learner.name}, {one.words}")
        if staying:
            say(f"Not in this file, and still on the roster: {names([s.id for s in staying])}.")
        say("Nothing is written.")
        return
    with Bar("taking in the roster"):
        taken = take_in(place, learners, by=by)
    same = len(learners) - len(taken.added) - len(taken.changed)
    say(f"{len(taken.added)} added, {len(taken.changed)} corrected, {same} as before.")
    if taken.kept:
        say(f"Not in this file, and still on the roster: {names(taken.kept)}.")
    if taken.issued:
        say(f"{taken.issued} sets of readings issued for what is handed out already.")
    if taken.added:
        say(f"Sign-in words to hand over, one to each: {place.root / 'sign-in-slips.csv'}")
        say(f'To print them: "{command()} roster slips".')


@roster_app.command("slips")
def roster_slips(
    cohort: CohortOption = None,
    group: Annotated[str, typer.Option(help="Only of this group.")] = "",
    paper: Annotated[str, typer.Option(help="a4 or letter.")] = "a4",
    by: ByOption = "",
) -> None:
    """Write the sign-in slips as PDF, to print and cut out."""
    from twoshaft_grader.bench_sheets import paper_named
    from twoshaft_grader.records.sign_in_slips import print_slips

    say(f"Wrote {print_slips(cohort_at(cohort), group=group, paper=paper_named(paper), by=by)}")


@roster_app.command("move")
def roster_move(
    learners: Annotated[list[str], typer.Argument(help="Learners' ids.")],
    group: Annotated[str, typer.Option(help="The new group; empty: none.")],
    cohort: CohortOption = None,
    by: ByOption = "",
) -> None:
    """Let learners be of another group."""
    from twoshaft_grader.cohort.roster_changes import move

    move(cohort_at(cohort), learners, group, by=by)
    say(f"{names(learners)}: now in {f'group {group}' if group else 'no group'}.")


@roster_app.command("rename")
def roster_rename(
    learner: Annotated[str, typer.Argument(help="Learner's id, which stays.")],
    family_name: Annotated[str, typer.Option("--family-name", help="The new one.")] = "",
    given_name: Annotated[str, typer.Option("--given-name", help="The new one.")] = "",
    cohort: CohortOption = None,
    by: ByOption = "",
) -> None:
    """Correct a learner's name."""
    from twoshaft_grader.cohort.roster_changes import rename

    place = cohort_at(cohort)
    new = rename(place, learner, family_name=family_name, given_name=given_name, by=by)
    say(f"{learner} is now {new.name}.")


@roster_app.command("withdraw")
def roster_withdraw(
    learners: Annotated[list[str], typer.Argument(help="Learners' ids.")],
    why: Annotated[str, typer.Option(help="The reason, for the trail.")] = "",
    cohort: CohortOption = None,
    by: ByOption = "",
) -> None:
    """Take learners off every list; what they did stays, and they can be brought back."""
    from twoshaft_grader.cohort.roster_changes import withdraw

    withdraw(cohort_at(cohort), learners, why=why, by=by)
    say(f"Withdrawn: {names(learners)}. Their work and marks stay where they are.")


@roster_app.command("bring-back")
def roster_bring_back(
    learners: Annotated[list[str], typer.Argument(help="Learners' ids.")],
    cohort: CohortOption = None,
    by: ByOption = "",
) -> None:
    """Bring back learners who were withdrawn; each gets a new sign-in word."""
    from twoshaft_grader.cohort.roster_changes import bring_back

    bring_back(cohort_at(cohort), learners, by=by)
    say(f"Back on the roster, each with a new sign-in word: {names(learners)}.")


@roster_app.command("take-out")
def roster_take_out(
    learner: Annotated[str, typer.Argument(help="Learner's id.")],
    yes: Annotated[bool, typer.Option("--yes", help="Ask nothing.")] = False,
    cohort: CohortOption = None,
    by: ByOption = "",
) -> int:
    """Take a learner out for good: work, readings, marks, feedback, and what logs say of them."""
    from twoshaft_grader.cohort.take_out import take_out

    place = cohort_at(cohort)
    if not yes:
        typer.confirm(f"All that {place.root} holds of {learner} goes for good. Go on?", abort=True)
    with Bar(f"taking out {learner}"):
        out = take_out(place, learner, by=by)
    tell_not_done("Could not be taken away; the same command goes on", out.left)
    if not out.left:
        say(f"{learner} is taken out.")
    if out.still:
        say("The id or a part of the name stands still, as in a note about somebody else, in:")
        for path in out.still:
            say(f"  {path}")
    if out.back_ups:
        say("Back-ups hold everything as it was; do with them as your college says:")
        for path in out.back_ups:
            say(f"  {path}")
    return status(*out.left)


@roster_app.command("word")
def roster_word(
    learner: Annotated[str, typer.Argument(help="Learner's id.")],
    cohort: CohortOption = None,
    by: ByOption = "",
) -> None:
    """Give a learner another sign-in word."""
    from twoshaft_grader.cohort.intake import roster_of
    from twoshaft_grader.cohort.workplace import renew_word

    place = cohort_at(cohort)
    word = renew_word(place, roster_of(place), learner, by=by)
    say(f"The sign-in word of {learner} is now {word}.")


@roster_app.command("free")
def roster_free(
    learner: Annotated[str, typer.Argument(help="Learner's id.")],
    cohort: CohortOption = None,
    by: ByOption = "",
) -> None:
    """Set aside the folder that an account made under a learner's id without the sign-in word."""
    from twoshaft_grader.cohort.first_come import set_aside

    place = cohort_at(cohort)
    name = set_aside(place, learner, by=by)
    say(f"{learner} can sign in now; the other folder is {place.work / name}.")


@roster_app.command("list")
def roster_list(cohort: CohortOption = None) -> None:
    """List the learners."""
    from twoshaft_grader.cohort.intake import roster_of
    from twoshaft_grader.cohort.withdrawn import withdrawn_of

    place = cohort_at(cohort)
    for learner in roster_of(place):
        say(f"{learner.id}: {learner.name}{f', {learner.group}' if learner.group else ''}")
    for learner in withdrawn_of(place):
        say(f"{learner.id}: {learner.name}, withdrawn")
