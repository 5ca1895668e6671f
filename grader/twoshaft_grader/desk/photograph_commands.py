"""Commands for the college's own photographs of parts and operations."""

from __future__ import annotations

from pathlib import Path
from typing import Annotated

import typer

from twoshaft_grader.desk.app import CohortOption, app, cohort_at, say

photograph_app = typer.Typer(
    no_args_is_help=True,
    help="Your own photographs of parts and operations.",
    rich_markup_mode=None,
)
app.add_typer(photograph_app, name="photograph")


@photograph_app.command("add")
def photograph_add(
    picture: Annotated[Path, typer.Argument(help="A JPEG, PNG or WebP file.")],
    of: Annotated[str, typer.Option("--of", help="Id of the part or operation that it shows.")],
    words: Annotated[
        str, typer.Option("--words", help="What can be seen, for those who do not see it.")
    ],
    frame: Annotated[
        str,
        typer.Option(
            "--frame",
            help="Left, top, width and height of what matters, in per cent, as 20 30 25 40.",
        ),
    ] = "",
    cohort: CohortOption = None,
) -> None:
    """Show a photograph in lessons and on bench sheets; it is made small, place and date go."""
    from twoshaft.units import load_unit
    from twoshaft_grader.cohort.photographs import add_photograph, frame_named

    place = cohort_at(cohort)
    unit = load_unit(place.unit_source)
    one = add_photograph(place, unit, of, picture, words, frame_named(frame))
    say(f"Shown with {one.of} {one.id}, at {one.width} by {one.height} pixels.")


@photograph_app.command("list")
def photograph_list(cohort: CohortOption = None) -> None:
    """List the photographs by number, and bring the lessons up to date."""
    from twoshaft.units import load_unit
    from twoshaft_grader.cohort.photographs import bring_photographs, own_photographs, without_home

    place = cohort_at(cohort)
    own = own_photographs(place)
    lost = without_home(own, load_unit(place.unit_source))
    bring_photographs(place)
    for number, one in enumerate(own.album.photographs, 1):
        gone = "" if own.read(one) else " Its file is gone: take it away and add it again."
        away = " The unit does not have it any more." if one in lost else ""
        say(f"{number}. {one.of} {one.id}: {one.alt}{away}{gone}")
    if not own.album.photographs:
        say("There are no photographs yet.")


@photograph_app.command("drop")
def photograph_drop(
    number: Annotated[int, typer.Argument(help="Its number in the list.")],
    cohort: CohortOption = None,
) -> None:
    """Take a photograph away."""
    from twoshaft_grader.cohort.photographs import drop_photograph

    one = drop_photograph(cohort_at(cohort), number)
    say(f"Taken away: {one.of} {one.id}, {one.alt}")
