"""Commands of moderation: draw, list, show, enter, agree."""

from __future__ import annotations

from typing import TYPE_CHECKING, Annotated

import typer

from twoshaft_grader.desk.app import CohortOption, app, cohort_at, console, say
from twoshaft_grader.desk.assessor_commands import AssessorOption, LearnerArgument

if TYPE_CHECKING:
    pass

moderate_app = typer.Typer(
    no_args_is_help=True, help="Second marks, and how far they agree.", rich_markup_mode=None
)
app.add_typer(moderate_app, name="moderate")
TaskArgument = Annotated[str, typer.Argument(help="As main-case.")]
NamedAssignment = Annotated[str, typer.Argument(help="As order-of-work-1.")]


@moderate_app.command("draw")
def moderate_draw(
    seed: Annotated[str, typer.Option(help="Any text; the same draws the same again.")],
    by: AssessorOption,
    share: Annotated[float, typer.Option(help="Part of all marked tasks, as 0.1.")] = 0.1,
    again: Annotated[bool, typer.Option("--again", help="Give up the sample there is.")] = False,
    cohort: CohortOption = None,
) -> None:
    """Draw what is marked a second time, by a stated rule and a seed."""
    from twoshaft_grader.records.moderation import draw_sample

    drawn = draw_sample(cohort_at(cohort), share=share, seed=seed, by=by, again=again)
    say(f"{len(drawn.sample)} tasks, seed {drawn.seed}: {drawn.rule}.")


@moderate_app.command("list")
def moderate_list(cohort: CohortOption = None) -> None:
    """List the sample, and what has a second mark; no mark is shown."""
    from twoshaft_grader.desk.tables import sample_table
    from twoshaft_grader.records.moderation import the_sample

    drawn = the_sample(cohort_at(cohort))
    say(f"Drawn on {drawn.drawn_at[:10]} by {drawn.drawn_by}, seed {drawn.seed}: {drawn.rule}.")
    console().print(sample_table("To be marked a second time", drawn))


@moderate_app.command("show")
def moderate_show(
    learner: LearnerArgument,
    assignment: NamedAssignment,
    task: TaskArgument,
    cohort: CohortOption = None,
) -> None:
    """Show what was asked and answered in a task of the sample, without its mark."""
    from twoshaft_grader.records.moderation import work_to_mark
    from twoshaft_grader.stored.moderation import Picked

    picked = Picked(learner=learner, assignment=assignment, task=task, because="")
    work = work_to_mark(cohort_at(cohort), picked)
    say(f"{work.title}, of {work.maximum:g} points")
    for field in work.fields:
        say(f"  {field.prompt}")
        say(f"    {field.answer or 'no answer'}")


@moderate_app.command("enter")
def moderate_enter(
    learner: LearnerArgument,
    assignment: NamedAssignment,
    task: TaskArgument,
    points: Annotated[float, typer.Argument(help="Points, without knowing the first mark.")],
    by: AssessorOption,
    note: Annotated[str, typer.Option(help="What spoke for it.")] = "",
    cohort: CohortOption = None,
) -> None:
    """Enter a second mark; the first is not shown."""
    from twoshaft_grader.records.moderation import enter_second_mark

    enter_second_mark(cohort_at(cohort), learner, assignment, task, points, by=by, note=note)
    say(f"The second mark of {task} of {learner} in {assignment} is kept.")


@moderate_app.command("agree")
def moderate_agree(
    assignment: Annotated[str, typer.Option(help="Only this one.")] = "",
    cohort: CohortOption = None,
) -> None:
    """Tell how far first and second marks agree, and list the differences."""
    from twoshaft_grader.desk.figures import kappa_words
    from twoshaft_grader.desk.tables import differences_table
    from twoshaft_grader.records.moderation import agreement

    found = agreement(cohort_at(cohort), [assignment] if assignment else [])
    count = len(found.counted)
    say(f"{count} tasks have two marks; {len(found.open)} of the sample wait for the second.")
    if stale := len(found.both) - count:
        say(f"{stale} are of work that was handed in again since, and are not counted.")
    say("Compared in bands: nothing, less than enough, enough (60 %), all.")
    for words, one in (
        ("Cohen's kappa", found.plain),
        ("weighted, linear", found.linear),
        ("weighted, quadratic", found.quadratic),
    ):
        say(f"  {words}: {kappa_words(one, count)}")
    if found.differences:
        console().print(differences_table("To decide", found.differences))
